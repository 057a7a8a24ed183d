/* Eccentric groups: the elastic centre against a published sheet and closed forms, the instantaneous centre against
 * closed forms and by balance of forces. */
#include <check.h>
#include <frame/drawing.h>
#include <frame/joint.h>
#include <frame/working.h>
#include <math.h>

static frame_fastener_place place_of(double x, double y, double weight) {
    frame_fastener_place place;
    frame_fastener_place_init(&place);
    place.x_in = x, place.y_in = y, place.weight = weight;
    return place;
}

static frame_fastener_eccentric_in group_of(const frame_fastener_place *places, size_t count, double each_lb) {
    frame_fastener_eccentric_in in;
    frame_fastener_eccentric_in_init(&in);
    in.places = places, in.place_count = count, in.each_lb = each_lb;
    return in;
}

static frame_fastener_eccentric *solved(const frame_fastener_eccentric_in *in, frame_fastener_eccentric_out *out) {
    frame_fastener_eccentric *answer;
    ck_assert_msg(!frame_fastener_eccentric_solve(in, &answer, NULL), "%s", frame_error_text());
    ck_assert(!frame_fastener_eccentric_result(answer, out));
    return answer;
}

static frame_fastener_eccentric_out result_of(const frame_fastener_eccentric_in *in) {
    frame_fastener_eccentric_out out;
    frame_fastener_eccentric_free(solved(in, &out));
    return out;
}

/* R. Abbott, Bolt group, sheet AA-SM-004 (2008): weights are the bolts' areas; what is printed, at its precision. */
START_TEST(published_sheet) {
    static const double at[][3] = {{1, 1, .375}, {-1, 1, .25}, {-1, -1, .25}, {1, 5, .375}, {0, 5, .25}, {10, 2, .375}};
    static const double fx[] = {157, 70, 172, -305, -135, 41}, fy[] = {-2488, -1208, -1208, -2488, -1157, -1450},
                        force[] = {2493, 1210, 1220, 2507, 1165, 1451};
    frame_fastener_place places[6];
    for (int i = 0; i < 6; i++)
        places[i] = place_of(at[i][0], at[i][1], 3.14159265358979323846 / 4 * at[i][2] * at[i][2]);
    frame_fastener_eccentric_in in = group_of(places, 6, 20000);
    frame_fastener_eccentric_out out;
    in.force_y_lb = -10000, in.at_x_in = 0.3, in.moment_lb_in = -12000;
    frame_fastener_eccentric *answer = solved(&in, &out);
    ck_assert_double_eq_tol(out.centre_x_in, 2.6, 0.05);
    ck_assert_double_eq_tol(out.centre_y_in, 2.4, 0.05);
    ck_assert_double_eq_tol(out.moment_lb_in, 10641, 0.5);
    ck_assert_double_eq_tol(out.polar_in2, 10.193, 0.0005);
    for (size_t i = 0; i < 6; i++) {
        frame_fastener_eccentric_share share;
        ck_assert(!frame_fastener_eccentric_share_at(answer, i, &share));
        ck_assert_double_eq_tol(share.x_lb, fx[i], 0.501);
        ck_assert_double_eq_tol(share.y_lb, fy[i], 0.501);
        ck_assert_double_eq_tol(share.force_lb, force[i], 0.501);
    }
    frame_fastener_eccentric_free(answer);
}
END_TEST

/* Through the centre: all carry alike, by both ways. A couple on a ring: all carry alike again. */
START_TEST(closed_forms) {
    frame_fastener_place ring[12];
    for (int i = 0; i < 12; i++)
        ring[i] = place_of(5 * cos(i * 0.5235987755982988), 5 * sin(i * 0.5235987755982988), 1);
    frame_fastener_eccentric_in in = group_of(ring, 12, 100);
    in.force_x_lb = 600;
    frame_fastener_eccentric_out out = result_of(&in);
    ck_assert_double_eq_tol(out.ratio, 0.5, 1e-9);
    ck_assert_double_eq_tol(out.instant_ratio, 0.5, 1e-6);
    ck_assert_double_eq(out.instant_x_in, FRAME_NOT_GIVEN);
    in.force_x_lb = 0, in.moment_lb_in = 3000;
    out = result_of(&in);
    ck_assert_double_eq_tol(out.ratio, 0.5, 1e-9);
    ck_assert_double_eq_tol(out.instant_ratio, 0.5, 1e-6);
    ck_assert_double_eq_tol(out.instant_x_in, 0, 1e-6);
}
END_TEST

/* Two in a line under a couple: the elastic and the plastic are one. Four in a line: 3:1 elastically, all full
 * plastically. */
START_TEST(line_of_four) {
    const frame_fastener_place line[] = {place_of(0, 0, 1), place_of(2, 0, 1), place_of(4, 0, 1), place_of(6, 0, 1)};
    frame_fastener_eccentric_in in = group_of(line, 4, 100);
    in.moment_lb_in = 800;
    const frame_fastener_eccentric_out out = result_of(&in);
    ck_assert_double_eq_tol(out.largest_lb, 800.0 * 3 / 20, 1e-9);
    ck_assert_double_eq_tol(out.instant_ratio, 800.0 / (100 * (3 + 1 + 1 + 3)), 1e-6);
    ck_assert_int_eq(out.passes, 0);
}
END_TEST

static double between(unsigned *seed, double low, double high) {
    *seed = *seed * 1664525u + 1013904223u;
    return low + (high - low) * (*seed >> 8) / 16777216.0;
}

/* At full load the forces by the instantaneous centre balance the load, none is above its value, and the ratio is never
 * above the elastic one. */
START_TEST(balance) {
    unsigned seed = 20261125u;
    frame_fastener_place places[40];
    for (int round = 0; round < 300; round++) {
        const size_t count = 2 + (size_t)between(&seed, 0, 38);
        for (size_t i = 0; i < count; i++)
            places[i] = place_of(between(&seed, 0, 20), between(&seed, 0, 12), round % 3 ? 1 : between(&seed, 0.5, 2));
        frame_fastener_eccentric_in in = group_of(places, count, 130);
        frame_fastener_eccentric_out out;
        in.force_x_lb = between(&seed, -500, 500), in.force_y_lb = between(&seed, -500, 500);
        in.at_x_in = between(&seed, -40, 40), in.at_y_in = between(&seed, -40, 40);
        if (round % 2)
            in.law = FRAME_SLIP_CURVE, in.curve_rate_per_in = 10, in.curve_power = 0.55, in.curve_slip_in = 0.34;
        frame_fastener_eccentric *answer = solved(&in, &out);
        double x = 0, y = 0, moment = 0;
        for (size_t i = 0; i < count; i++) {
            frame_fastener_eccentric_share share;
            ck_assert(!frame_fastener_eccentric_share_at(answer, i, &share));
            ck_assert(hypot(share.instant_x_lb, share.instant_y_lb) <= 130 * places[i].weight * (1 + 1e-9));
            x += share.instant_x_lb, y += share.instant_y_lb;
            moment +=
                (places[i].x_in - in.at_x_in) * share.instant_y_lb - (places[i].y_in - in.at_y_in) * share.instant_x_lb;
        }
        const double full = 1 / out.instant_ratio, scale = 130.0 * (double)count;
        ck_assert_msg(fabs(x - in.force_x_lb * full) < 1e-4 * scale && fabs(y - in.force_y_lb * full) < 1e-4 * scale,
                      "round %d: %g %g, wanted %g %g", round, x, y, in.force_x_lb * full, in.force_y_lb * full);
        ck_assert_double_eq_tol(moment / scale / 40, 0, 1e-4);
        if (!(round % 2)) ck_assert(out.instant_ratio <= out.ratio * (1 + 1e-6));
        frame_fastener_eccentric_free(answer);
    }
}
END_TEST

START_TEST(refusals) {
    const frame_fastener_place one_spot[] = {place_of(1, 1, 1), place_of(1, 1, 1)},
                               two[] = {place_of(0, 0, 1), place_of(3, 0, 1)};
    frame_fastener_eccentric_in in = group_of(one_spot, 2, 100);
    frame_fastener_eccentric *answer;
    in.force_y_lb = 5;
    ck_assert_int_eq(frame_fastener_eccentric_solve(&in, &answer, NULL), FRAME_IMPOSSIBLE);
    in = group_of(two, 2, 100);
    ck_assert_int_eq(frame_fastener_eccentric_solve(&in, &answer, NULL), FRAME_REQUIRED);
    in.force_y_lb = 5, in.law = FRAME_SLIP_CURVE;
    ck_assert_int_eq(frame_fastener_eccentric_solve(&in, &answer, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "curve_rate_per_in");
    frame_drawing *drawing;
    in.law = FRAME_NOT_GIVEN_INT;
    ck_assert(!frame_fastener_eccentric_drawing(&in, &drawing));
    frame_drawing_free(drawing);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("eccentric groups");
    TCase *cases = tcase_create("all");
    tcase_add_test(cases, published_sheet);
    tcase_add_test(cases, closed_forms);
    tcase_add_test(cases, line_of_four);
    tcase_add_test(cases, balance);
    tcase_add_test(cases, refusals);
    suite_add_tcase(suite, cases);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
