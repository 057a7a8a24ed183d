/* Layouts checked for their distances, and patterns found for a demand. */
#include <check.h>
#include <frame/drawing.h>
#include <frame/joint.h>
#include <frame/text.h>
#include <math.h>
#include <string.h>

/* Half-inch bolts along the grain of a 2x8 in tension. */
static frame_fastener_layout_in bolts(void) {
    frame_fastener_layout_in in;
    frame_fastener_layout_in_init(&in);
    in.kind = FRAME_DOWEL_BOLT, in.size = "1/2", in.width_in = 7.25, in.angle_deg = 0;
    in.main_thickness_in = 1.5, in.side_thickness_in = 3;
    in.rows = 2, in.per_row = 3, in.spacing_in = 2, in.row_spacing_in = 3, in.end_distance_in = 3.5;
    return in;
}

static frame_fastener_layout_out layout_of(const frame_fastener_layout_in *in) {
    frame_fastener_layout *answer;
    frame_fastener_layout_out out;
    ck_assert_msg(!frame_fastener_layout_solve(in, &answer, NULL), "%s", frame_error_text());
    ck_assert(!frame_fastener_layout_result(answer, &out));
    frame_fastener_layout_free(answer);
    return out;
}

static void refused(const frame_fastener_layout_in *in, frame_status status, const char *field, const char *says) {
    frame_fastener_layout *answer = NULL;
    ck_assert_int_eq(frame_fastener_layout_solve(in, &answer, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_msg(strstr(frame_error_text(), says) != NULL, "%s", frame_error_text());
}

START_TEST(factors) {
    frame_fastener_layout_in in = bolts();
    frame_fastener_layout_out out = layout_of(&in);
    ck_assert_double_eq(out.geometry_factor, 1); /* 7 D to the end, 4 D in a row */
    ck_assert_int_eq(out.count, 6);
    ck_assert_int_eq(out.governs, FRAME_NOT_GIVEN_INT);
    in.end_distance_in = 2.8; /* 5.6 D of 7 D */
    out = layout_of(&in);
    ck_assert_double_eq_tol(out.geometry_factor, 0.8, 1e-12);
    ck_assert_int_eq(out.governs, FRAME_DISTANCE_NEAR_END);
    in.pull = FRAME_PULL_FROM_END;
    ck_assert_double_eq(layout_of(&in).geometry_factor, 1); /* 4 D is enough in compression */
    in.spacing_in = 1.75;
    out = layout_of(&in);
    ck_assert_double_eq_tol(out.geometry_factor, 1.75 / 2, 1e-12);
    ck_assert_int_eq(out.governs, FRAME_DISTANCE_IN_ROW);
    in.hardwood = 1, in.pull = FRAME_PULL_TOWARD_END, in.spacing_in = 2, in.end_distance_in = 2.5;
    ck_assert_double_eq(layout_of(&in).geometry_factor, 1); /* 5 D in hardwood */
}
END_TEST

START_TEST(under_the_least) {
    frame_fastener_layout_in in = bolts();
    in.spacing_in = 1.25;
    refused(&in, FRAME_OUTSIDE_SCOPE, "spacing_in", "at least 1.5 in is needed, 0.25 in more");
    in.under_least = FRAME_UNDER_LEAST_REPORT;
    const frame_fastener_layout_out out = layout_of(&in);
    ck_assert_int_eq(out.passes, 0);
    ck_assert_double_eq(out.geometry_factor, 0);
    ck_assert_double_eq_tol(out.short_by_in, 0.25, 1e-12);
    in = bolts(), in.row_spacing_in = 0.6;
    refused(&in, FRAME_OUTSIDE_SCOPE, "row_spacing_in", "0.15 in more");
    in = bolts(), in.edge_distance_in = 0.5;
    refused(&in, FRAME_OUTSIDE_SCOPE, "edge_distance_in", "lower edge of fastener 0");
    in = bolts(), in.end_distance_in = 1;
    refused(&in, FRAME_OUTSIDE_SCOPE, "end_distance_in", "at least 1.75 in");
}
END_TEST

START_TEST(withdrawal_only) {
    frame_fastener_layout_in in = bolts();
    in.withdrawal_only = 1;
    refused(&in, FRAME_CONFLICT, "withdrawal_only", "lag screws");
    in.kind = FRAME_DOWEL_LAG_SCREW, in.main_thickness_in = in.side_thickness_in = FRAME_NOT_GIVEN;
    in.end_distance_in = 2, in.edge_distance_in = 0.75;
    ck_assert_double_eq(layout_of(&in).geometry_factor, 1);
    in.row_spacing_in = 1.9;
    refused(&in, FRAME_OUTSIDE_SCOPE, "row_spacing_in", "at least 2 in");
}
END_TEST

/* Across the grain: 4 D to the loaded edge, row spacing by l/D. */
START_TEST(across_the_grain) {
    frame_fastener_layout_in in = bolts();
    in.angle_deg = 90, in.rows = 1, in.per_row = 2, in.row_spacing_in = FRAME_NOT_GIVEN, in.spacing_in = 3;
    ck_assert_double_eq(layout_of(&in).geometry_factor, 1);
    in.loaded_edge = FRAME_EDGE_LOADED_UPPER, in.edge_distance_in = 0.75, in.spacing_in = 3;
    ck_assert_int_eq(layout_of(&in).passes, 1);
    in.loaded_edge = FRAME_EDGE_LOADED_LOWER;
    refused(&in, FRAME_OUTSIDE_SCOPE, "edge_distance_in", "at least 2 in");
    in = bolts();
    in.angle_deg = 90, in.per_row = 2, in.spacing_in = 2.5,
    in.row_spacing_in = 1.5; /* l/D 3: (5 l + 10 D) / 8 = 1.5625 */
    refused(&in, FRAME_OUTSIDE_SCOPE, "row_spacing_in", "at least 1.5625 in");
    in.row_spacing_in = 1.5625;
    ck_assert_int_eq(layout_of(&in).passes, 1);
    in.angle_deg = 45; /* both sets of rules */
    in.end_distance_in = 3;
    ck_assert_double_eq_tol(layout_of(&in).geometry_factor, 3 / 3.5, 1e-12);
}
END_TEST

START_TEST(places_and_advice) {
    frame_fastener_place places[2];
    frame_fastener_layout_in in = bolts();
    for (int i = 0; i < 2; i++) {
        frame_fastener_place_init(&places[i]);
        places[i].x_in = 4 + 3 * i, places[i].y_in = 3.6;
    }
    in.places = places, in.place_count = 2;
    refused(&in, FRAME_CONFLICT, "places", "per_row");
    in.per_row = FRAME_NOT_GIVEN_INT;
    ck_assert_int_eq(layout_of(&in).count, 2);
    places[1].x_in = -1;
    refused(&in, FRAME_IMPOSSIBLE, "places[1]", "not within the member");
    places[1].x_in = 4.3;
    in.kind = FRAME_DOWEL_COMMON_NAIL, in.size = "16d";
    const frame_fastener_layout_out out = layout_of(&in);
    ck_assert_double_eq(out.geometry_factor, 1); /* a recommendation is no rule */
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENING_CAUTION_ADVICE));
    in.kind = FRAME_DOWEL_LAG_SCREW, in.size = "1/2", in.main_thickness_in = FRAME_NOT_GIVEN, places[1].x_in = 7;
    refused(&in, FRAME_REQUIRED, "main_thickness_in", "not given");
}
END_TEST

static frame_fastener_pattern_in wanted(const char *size, double each_lb, double demand_lb) {
    frame_fastener_pattern_in in;
    frame_fastener_pattern_in_init(&in);
    in.kind = FRAME_DOWEL_BOLT, in.size = size, in.each_lb = each_lb, in.demand_lb = demand_lb;
    in.width_in = 7.25, in.main_thickness_in = 1.5, in.side_thickness_in = 1.5;
    return in;
}

/* A pattern carries its demand, and passes the check of its own layout with full value. */
START_TEST(patterns_hold) {
    static const char *const sizes[] = {"1/4", "3/8", "1/2", "5/8", "3/4"};
    for (int s = 0; s < 5; s++)
        for (double demand = 200; demand < 9000; demand *= 1.6)
            for (int across = 0; across < 2; across++) {
                frame_fastener_pattern_in in = wanted(sizes[s], 400, demand);
                frame_fastener_pattern *answer = NULL;
                frame_fastener_pattern_out out;
                in.across_grain = across;
                if (across) in.length_in = 60;
                if (frame_fastener_pattern_solve(&in, &answer, NULL)) {
                    ck_assert_int_eq(frame_error_status(), FRAME_IMPOSSIBLE);
                    continue;
                }
                ck_assert(!frame_fastener_pattern_result(answer, &out));
                ck_assert(out.ratio <= 1 + 1e-9);
                ck_assert(out.count >= demand / 400 - 1e-9);
                frame_fastener_layout_in check = bolts();
                frame_fastener_place places[500];
                ck_assert_uint_eq(frame_fastener_pattern_place_count(answer), (size_t)out.count);
                for (size_t i = 0; i < (size_t)out.count; i++) {
                    frame_fastener_pattern_place at;
                    ck_assert(!frame_fastener_pattern_place_at(answer, i, &at));
                    frame_fastener_place_init(&places[i]);
                    places[i].x_in = at.x_in, places[i].y_in = at.y_in;
                }
                check.size = sizes[s], check.side_thickness_in = 1.5, check.angle_deg = across ? 90 : 0;
                check.per_row = FRAME_NOT_GIVEN_INT, check.places = places, check.place_count = (size_t)out.count;
                check.end_distance_in = FRAME_NOT_GIVEN;
                ck_assert_double_eq(layout_of(&check).geometry_factor, 1);
                frame_fastener_pattern_free(answer);
            }
}
END_TEST

START_TEST(pattern_along_a_run) {
    frame_fastener_pattern_in in = wanted("1/2", 300, FRAME_NOT_GIVEN);
    frame_fastener_pattern *answer;
    frame_fastener_pattern_out out;
    in.across_grain = 1, in.demand_plf = 250, in.length_in = 144, in.width_in = 9.25, in.side_thickness_in = 1.5;
    ck_assert_msg(!frame_fastener_pattern_solve(&in, &answer, NULL), "%s", frame_error_text());
    ck_assert(!frame_fastener_pattern_result(answer, &out));
    ck_assert_double_eq_tol(out.demand_lb, 3000, 1e-9);
    ck_assert_int_ge(out.count, 10);
    ck_assert_double_eq_tol(out.end_distance_in * 2 + (out.rows - 1) * out.row_spacing_in, 144, 1e-9);
    frame_fastener_pattern_free(answer);
    frame_drawing *drawing;
    ck_assert(!frame_fastener_pattern_drawing(&in, &drawing));
    frame_drawing_free(drawing);
    in.demand_lb = 5;
    ck_assert_int_eq(frame_fastener_pattern_solve(&in, &answer, NULL), FRAME_CONFLICT);
    in = wanted("1", 100, 1e6);
    ck_assert_int_eq(frame_fastener_pattern_solve(&in, &answer, NULL), FRAME_IMPOSSIBLE);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("layouts and patterns");
    TCase *cases = tcase_create("all");
    tcase_add_test(cases, factors);
    tcase_add_test(cases, under_the_least);
    tcase_add_test(cases, across_the_grain);
    tcase_add_test(cases, withdrawal_only);
    tcase_add_test(cases, places_and_advice);
    tcase_add_test(cases, patterns_hold);
    tcase_add_test(cases, pattern_along_a_run);
    suite_add_tcase(suite, cases);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
