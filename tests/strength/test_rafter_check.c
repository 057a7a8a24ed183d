/* A sloped rafter: loads by the cosine and its square, what statics says by hand about span, overhang, birdsmouth and
 * seat; a member_check of the same beam; refusals. */
#include "lumber_names.h"

static const double cosine = 0.894427190999915879, sine = 0.447213595499957939; /* of 6 in 12 */

static frame_rafter_check_in rafter_of(frame_size size, double overhang) {
    frame_rafter_check_in in;
    frame_rafter_check_in_init(&in);
    in.size = size, in.species = species("DFL"), in.grade = grade("No.2"), in.repetitive = 1;
    in.slope = 0.5, in.run_in = 120, in.overhang_in = overhang, in.spacing_in = 16;
    in.dead_psf = 12, in.snow_psf = 30, in.seat_in = 3.5;
    return in;
}

static frame_rafter_check_out check(const frame_rafter_check_in *in) {
    frame_rafter_check_out out;
    frame_working *working;
    ck_assert(!frame_working_new(&working));
    ck_assert_msg(!frame_rafter_check(in, &out, working), "%s", frame_error_text());
    working_is_sound(working);
    frame_working_free(working);
    return out;
}

#define NEAR(a, b) ck_assert_double_eq_tol(a, b, 1e-9 * fabs(b))

/* 12 psf on the slope by the cosine, 30 psf on plan by its square: 14.31 and 32 plf. */
START_TEST(loads_and_moments) {
    frame_rafter_check_in in = rafter_of(FRAME_SIZE(2, 8), 16);
    in.lower_edge = FRAME_EDGE_HELD;
    const frame_rafter_check_out out = check(&in);
    const double w = (16 * cosine + 32) / 12, L = 120 / cosine, tail = 16 / cosine;
    NEAR(out.dead_plf, 16 * cosine);
    NEAR(out.snow_plf, 40 * 0.8);
    NEAR(out.length_in, 134.164078649987382);
    NEAR(out.overhang_length_in, 17.8885438199983176);
    NEAR(out.plate_moment_lb_in, -w * 160); /* tail squared is 320 */
    const double ridge = w * (L * L - tail * tail) / (2 * L), allowed = 900 * 1.15 * 1.2 * 1.15;
    NEAR(out.span_moment_lb_in, ridge * ridge / (2 * w));
    NEAR(out.bending_ratio, ridge * ridge / (2 * w) / (1.5 * 7.25 * 7.25 / 6) / allowed);
    ck_assert_int_eq(out.combination, FRAME_COMBINATION_D_S);
    const double net = 7.25 - 3.5 * sine, modulus = 1.5 * net * net / 6;
    NEAR(out.net_depth_in, net);
    NEAR(out.notch_bending_ratio, w * 160 / modulus / allowed);
    /* The lower edge is pressed all over this birdsmouth: NDS 3.4.3.2(e), past the middle of the seat. */
    const double force = w * (L + tail) * (L + tail) / (2 * L) - w * tail;
    const double depth = 7.25 - 3.5 * sine / net * (1.75 / cosine);
    NEAR(out.notch_shear_ratio, 1.5 * force / (1.5 * depth) / (180 * 1.15));
}
END_TEST

/* The load on the seat is what lies on plan, by moments about the ridge; Hankinson at 63.4 degrees. */
START_TEST(seat) {
    const frame_rafter_check_in in = rafter_of(FRAME_SIZE(2, 8), 16);
    const frame_rafter_check_out out = check(&in);
    const double on_plan = (16 / cosine + 40) / 12, load = on_plan * 136 * 136 / (2 * 120);
    NEAR(out.seat_load_lb, load);
    NEAR(out.seat_angle_deg, 63.4349488229220107);
    const double along = 1350 * 1.05 * 1.15, allowed = along * 625 / (along * 0.8 + 625 * 0.2);
    NEAR(out.bearing_ratio, load / (1.5 * 3.5) / allowed);
    NEAR(out.seat_needed_in, 3.5 * out.bearing_ratio);
    ck_assert_int_eq(out.bearing_combination, FRAME_COMBINATION_D_S);
}
END_TEST

/* Without an overhang the birdsmouth is in the edge in tension: NDS 3.4.3.2(a). */
START_TEST(no_overhang) {
    const frame_rafter_check_in in = rafter_of(FRAME_SIZE(2, 8), 0);
    const frame_rafter_check_out out = check(&in);
    const double w = (16 * cosine + 32) / 12, L = 120 / cosine, net = 7.25 - 3.5 * sine;
    NEAR(out.notch_shear_ratio, 1.5 * (w * L / 2) / (1.5 * net * net * net / (7.25 * 7.25)) / (180 * 1.15));
    ck_assert_double_eq(out.overhang_deflection_ratio, FRAME_NOT_GIVEN);
    ck_assert_double_eq(out.plate_moment_lb_in, 0);
    const double stiff = 1.6e6 * 1.5 * pow(7.25, 3) / 12, snow = 32.0 / 12;
    NEAR(out.live_deflection_in, 5 * snow * pow(L, 4) / (384 * stiff));
}
END_TEST

/* Each method: the whole section as member_check sees the level beam, the ratio the largest of all. */
START_TEST(as_member_check) {
    for (int method = FRAME_METHOD_ASD; method <= FRAME_METHOD_LRFD; method++) {
        frame_rafter_check_in in = rafter_of(FRAME_SIZE(2, 8), 24);
        in.method = method, in.roof_live_psf = 20, in.plies = 2, in.repetitive = 0;
        const frame_rafter_check_out out = check(&in);
        frame_member_check_in m;
        frame_member_check_out found;
        frame_member_check *answer;
        frame_member_check_in_init(&m);
        const double length = 120 / cosine;
        m.spans_in = &length, m.span_count = 1, m.left_overhang_in = 24 / cosine;
        m.size = in.size, m.species = in.species, m.grade = in.grade, m.plies = 2, m.method = method;
        m.upper_edge = FRAME_EDGE_HELD, m.deflection_limit = m.total_deflection_limit = 180;
        m.dead_plf = 16 * cosine, m.roof_live_plf = 20 * 16.0 / 12 * 0.8, m.snow_plf = 32;
        ck_assert(!frame_member_check_solve(&m, &answer, NULL) && !frame_member_check_result(answer, &found));
        frame_member_check_free(answer);
        NEAR(out.bending_ratio, found.bending_ratio);
        NEAR(out.shear_ratio, found.shear_ratio);
        NEAR(out.deflection_ratio, found.deflection_ratio);
        NEAR(out.seat_load_lb * cosine, found.max_reaction_lb);
        NEAR(out.ratio,
             fmax(found.ratio, fmax(fmax(out.notch_bending_ratio, out.notch_shear_ratio), out.bearing_ratio)));
        ck_assert_int_eq(out.not_checked, 0x7ff);
    }
}
END_TEST

START_TEST(more_is_never_less) {
    frame_rafter_check_in in = rafter_of(FRAME_SIZE(2, 8), 16);
    const double before = check(&in).ratio;
    in.snow_psf = 50;
    const frame_rafter_check_out snowed = check(&in);
    ck_assert_double_gt(snowed.ratio, before);
    in.notch_depth_in = 1.8;
    ck_assert_double_gt(check(&in).notch_bending_ratio, snowed.notch_bending_ratio);
    ck_assert(!FRAME_HAS(snowed.cautions, FRAME_RAFTER_CHECK_CAUTION_UPLIFT));
    in.overhang_in = 150;
    ck_assert(FRAME_HAS(check(&in).cautions, FRAME_RAFTER_CHECK_CAUTION_UPLIFT));
}
END_TEST

/* Wind square to the roof: 20 psf presses, 40 psf lifts, 60 psf lifts the overhang; the moments by hand. */
START_TEST(wind) {
    frame_rafter_check_in in = rafter_of(FRAME_SIZE(2, 8), 0);
    const double L = 120 / cosine, w_D = 16 * cosine, S = 1.5 * 7.25 * 7.25 / 6, F = 900 * 1.2 * 1.15;
    in.snow_psf = 0, in.wind_down_psf = 20;
    frame_rafter_check_out out = check(&in);
    NEAR(out.wind_down_plf, 20 * 16 / 12.0);
    const double pressed = (w_D + 0.6 * 20 * 16 / 12) / 12;
    NEAR(out.bending_ratio, fmax(pressed * L * L / 8 / S / (1.6 * F), w_D / 12 * L * L / 8 / S / (0.9 * F)));
    NEAR(out.seat_load_lb, (out.bearing_combination == FRAME_COMBINATION_D ? w_D / 12 : pressed) * L / 2 / cosine);
    ck_assert(out.seat_uplift_lb == 0 && out.lifted_ratio == FRAME_NOT_GIVEN);
    ck_assert(FRAME_HAS(out.not_checked, FRAME_RAFTER_CHECK_UNCHECKED_WIND));
    in.wind_up_psf = 80, in.lower_edge = FRAME_EDGE_HELD;
    out = check(&in);
    const double lifted = (0.6 * 80 * 16 / 12 - 0.6 * w_D) / 12;
    NEAR(out.bending_ratio, lifted * L * L / 8 / S / (1.6 * F));
    NEAR(out.seat_uplift_lb, lifted * L / 2 / cosine);
    NEAR(out.ridge_uplift_lb, lifted * L / 2 / cosine);
    ck_assert(FRAME_HAS(out.cautions, FRAME_RAFTER_CHECK_CAUTION_TIE_DOWN));
    ck_assert(!FRAME_HAS(out.not_checked, FRAME_RAFTER_CHECK_UNCHECKED_WIND));
    const double held = out.bending_ratio;
    in.lower_edge = FRAME_EDGE_FREE; /* pressed by what lifts, and nothing holds it */
    out = check(&in);
    ck_assert_double_gt(out.bending_ratio, 1.2 * held);
    NEAR(out.lifted_ratio, out.ratio);
    in.overhang_in = 24, in.overhang_wind_up_psf = 120;
    out = check(&in);
    const double l = 24 / cosine, w_o = (0.6 * 120 * 16 / 12 - 0.6 * w_D) / 12;
    NEAR(out.seat_uplift_lb, (lifted * L / 2 + w_o * l * (L + l / 2) / L) / cosine);
    NEAR(out.ridge_uplift_lb, (lifted * L / 2 - w_o * l * l / 2 / L) / cosine);
}
END_TEST

static void refused(const frame_rafter_check_in *in, frame_status status, const char *field) {
    frame_rafter_check_out out;
    ck_assert_int_eq(frame_rafter_check(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
}

START_TEST(refusals) {
    frame_rafter_check_in in = rafter_of(FRAME_SIZE(2, 6), 16); /* the seat cuts 1.57 in, a quarter is 1.375 */
    refused(&in, FRAME_OUTSIDE_SCOPE, "notch_depth_in");
    in = rafter_of(FRAME_SIZE(2, 8), 16);
    in.notch_depth_in = 1.5;
    refused(&in, FRAME_CONFLICT, "notch_depth_in");
    in = rafter_of(FRAME_SIZE(2, 8), 16);
    in.run_in = 3;
    refused(&in, FRAME_IMPOSSIBLE, "seat_in");
    in = rafter_of(FRAME_SIZE(2, 8), 16);
    in.spacing_in = 32;
    refused(&in, FRAME_REFUSED, "repetitive");
    in = rafter_of(FRAME_SIZE(2, 14), 16);
    in.run_in = 480;
    refused(&in, FRAME_OUTSIDE_SCOPE, "lower_edge");
    in.lower_edge = FRAME_EDGE_HELD;
    ck_assert(!check(&in).passes);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("rafter_check");
    TCase *all = tcase_create("all");
    tcase_add_test(all, loads_and_moments);
    tcase_add_test(all, seat);
    tcase_add_test(all, no_overhang);
    tcase_add_test(all, as_member_check);
    tcase_add_test(all, more_is_never_less);
    tcase_add_test(all, wind);
    tcase_add_test(all, refusals);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
