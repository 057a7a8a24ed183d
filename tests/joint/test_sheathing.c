/* Sheathing as structure: unit shears, shear walls, diaphragms, and the figure that never passes. */
#include <frame/drawing.h>

#include "checked.h"

static frame_panel_shear_in panels(void) {
    frame_panel_shear_in in;
    frame_panel_shear_in_init(&in);
    in.use = FRAME_PANEL_USE_WALL, in.sheathing = FRAME_PANEL_SHEATHING, in.load = FRAME_LATERAL_WIND;
    in.panel_in = 7.0 / 16, in.nail = "8d", in.edge_spacing_in = 6, in.blocked = 1, in.framing_specific_gravity = 0.42;
    return in;
}

START_TEST(unit_shears) {
    frame_panel_shear_in in = panels();
    frame_panel_shear_out out;
    CHECKED(panel_shear, in, out);
    ck_assert_double_eq(out.nominal_plf, 670);
    CLOSE(out.unit_plf, 670 * 0.92 / 2);
    in.load = FRAME_LATERAL_SEISMIC;
    CHECKED(panel_shear, in, out);
    CLOSE(out.unit_plf, 480 * 0.92 / 2);
    in.edition = FRAME_SDPWS_2021; /* one column; 2.8 for earthquake */
    CHECKED(panel_shear, in, out);
    CLOSE(out.unit_plf, 670 * 0.92 / 2.8);
    in.method = FRAME_METHOD_LRFD;
    CHECKED(panel_shear, in, out);
    CLOSE(out.unit_plf, 670 * 0.92 * 0.5);
    in = panels(), in.both_sides = 1, in.edge_spacing_in = 2;
    CHECKED(panel_shear, in, out);
    CLOSE(out.unit_plf, 2 * 1640 * 0.92 / 2);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENING_CAUTION_THICK_FRAMING));
    in = panels(), in.edge_spacing_in = 5;
    REFUSED(panel_shear, in, FRAME_NO_VALUE, "nail");
    in = panels(), in.blocked = 0;
    REFUSED(panel_shear, in, FRAME_REQUIRED, "stud_spacing_in");
    in.stud_spacing_in = 16;
    CHECKED(panel_shear, in, out);
    CLOSE(out.unblocked_factor, 0.6);
    in.edge_spacing_in = 4;
    REFUSED(panel_shear, in, FRAME_OUTSIDE_SCOPE, "edge_spacing_in");
    in = panels(), in.sheathing = FRAME_PANEL_GYPSUM, in.nail = "5d cooler", in.panel_in = 0.5, in.edge_spacing_in = 7;
    REFUSED(panel_shear, in, FRAME_REQUIRED, "stud_spacing_in");
    in.stud_spacing_in = 16, in.framing_specific_gravity = FRAME_NOT_GIVEN;
    CHECKED(panel_shear, in, out);
    CLOSE(out.unit_plf, 250.0 / 2);
    in.edition = FRAME_SDPWS_2021;
    REFUSED(panel_shear, in, FRAME_NO_VALUE, "edition");
    in = panels(), in.use = FRAME_PANEL_USE_DIAPHRAGM, in.both_sides = 1;
    REFUSED(panel_shear, in, FRAME_CONFLICT, "both_sides");
}
END_TEST

static frame_shear_wall_in wall_of(const double *segments, size_t count) {
    frame_shear_wall_in in;
    frame_shear_wall_in_init(&in);
    in.perforated = 0, in.segments_in = segments, in.segment_count = count, in.unit_plf = 300, in.height_in = 96;
    return in;
}

START_TEST(segments) {
    const double segments[] = {96, 36, 24};
    frame_shear_wall_in in = wall_of(segments, 3);
    frame_shear_wall_out out;
    CHECKED(shear_wall, in, out);
    ck_assert_int_eq(out.left_out, 1); /* 4 to 1 */
    CLOSE(out.counted_in, 96 + 36 * (2 * 36.0 / 96));
    CLOSE(out.capacity_lb, 300 * out.counted_in / 12);
    CLOSE(out.hold_down_lb, 300 * 8.0);
    in.demand_lb = out.capacity_lb / 2;
    CHECKED(shear_wall, in, out);
    CLOSE(out.ratio, 0.5);
    CLOSE(out.hold_down_lb, 150 * 8.0);
    in = wall_of(segments, 1);
    in.stiffness_kip_per_in = 15, in.end_area_in2 = 10.5, in.end_modulus_psi = 1.4e6;
    REFUSED(shear_wall, in, FRAME_REQUIRED, "hold_down_give_in");
    in.hold_down_give_in = 0.1;
    CHECKED(shear_wall, in, out);
    CLOSE(out.deflection_in, 8 * 300 * 512 / (1.4e6 * 10.5 * 8) + 300 * 8 / 15000.0 + 0.1);
    in = wall_of(segments + 2, 1);
    REFUSED(shear_wall, in, FRAME_IMPOSSIBLE, "segments_in");
    in = wall_of(segments + 1, 1), in.blocked = 0;
    REFUSED(shear_wall, in, FRAME_IMPOSSIBLE, "segments_in"); /* 2 to 1 unblocked */
}
END_TEST

/* Opening by height and by the same openings' area come to one factor; taller openings never help. */
START_TEST(perforated) {
    const double segments[] = {60, 60};
    frame_shear_wall_in in = wall_of(segments, 2);
    frame_shear_wall_out by_height, by_area;
    in.perforated = 1;
    REFUSED(shear_wall, in, FRAME_REQUIRED, "length_in");
    in.length_in = 240;
    REFUSED(shear_wall, in, FRAME_REQUIRED, "opening_height_in");
    double before = 2;
    for (double height = 32; height <= 96; height += 8) {
        in.opening_height_in = height, in.opening_area_in2 = FRAME_NOT_GIVEN;
        CHECKED(shear_wall, in, by_height);
        in.opening_area_in2 = height * 120, in.opening_height_in = FRAME_NOT_GIVEN;
        CHECKED(shear_wall, in, by_area);
        ck_assert_double_eq_tol(by_height.opening_factor, by_area.opening_factor, 1e-12);
        ck_assert(by_height.opening_factor < before);
        before = by_height.opening_factor;
        CLOSE(by_height.uplift_plf, 300);
        CLOSE(by_height.hold_down_lb, by_height.capacity_lb * 96 / (by_height.opening_factor * 120));
    }
    in.opening_height_in = 100, in.opening_area_in2 = FRAME_NOT_GIVEN;
    REFUSED(shear_wall, in, FRAME_IMPOSSIBLE, "opening_height_in");
}
END_TEST

START_TEST(diaphragms) {
    frame_diaphragm_in in;
    frame_diaphragm_out out;
    frame_diaphragm_in_init(&in);
    in.blocked = 0, in.length_in = 480, in.width_in = 240, in.load_plf = 200, in.unit_plf = 215;
    CHECKED(diaphragm, in, out);
    CLOSE(out.shear_plf, 200);
    CLOSE(out.chord_lb, 200 * 40 * 40 / (8 * 20.0));
    ck_assert_int_eq(out.passes, 1);
    in.length_in = 800;
    REFUSED(diaphragm, in, FRAME_OUTSIDE_SCOPE, "length_in");
    in.blocked = 1;
    CHECKED(diaphragm, in, out);
}
END_TEST

/* Every pattern listed carries the demand by panel_shear; more nails come later; what no row carries is refused. */
START_TEST(patterns) {
    frame_panel_pattern_in in;
    frame_panel_pattern_in_init(&in);
    in.use = FRAME_PANEL_USE_WALL, in.load = FRAME_LATERAL_WIND, in.blocked = 1, in.framing_specific_gravity = 0.42;
    for (double demand = 200; demand < 1100; demand += 150) {
        frame_panel_pattern *answer;
        frame_panel_pattern_out out;
        int before = 0;
        in.demand_plf = demand;
        ck_assert_msg(!frame_panel_pattern_solve(&in, &answer, NULL), "%s", frame_error_text());
        ck_assert(!frame_panel_pattern_result(answer, &out));
        ck_assert_uint_eq(frame_panel_pattern_choice_count(answer), (size_t)out.count);
        for (size_t i = 0; i < (size_t)out.count; i++) {
            frame_panel_pattern_choice choice;
            frame_panel_shear_in ask = panels();
            frame_panel_shear_out value;
            ck_assert(!frame_panel_pattern_choice_at(answer, i, &choice));
            ask.sheathing = choice.sheathing, ask.panel_in = choice.panel_in, ask.nail = choice.nail;
            ask.edge_spacing_in = choice.edge_spacing_in;
            ck_assert(!frame_panel_shear(&ask, &value, NULL));
            CLOSE(choice.unit_plf, value.unit_plf);
            ck_assert(choice.ratio <= 1 + 1e-9);
            ck_assert_int_ge(choice.nails_per_sheet, before);
            before = choice.nails_per_sheet;
        }
        frame_panel_pattern_free(answer);
    }
    in.demand_plf = 3000;
    frame_panel_pattern *none;
    ck_assert_int_eq(frame_panel_pattern_solve(&in, &none, NULL), FRAME_IMPOSSIBLE);
    frame_drawing *drawing;
    in.use = FRAME_PANEL_USE_DIAPHRAGM, in.blocked = 0, in.demand_plf = 180;
    ck_assert(!frame_panel_pattern_drawing(&in, &drawing));
    frame_drawing_free(drawing);
}
END_TEST

/* Nothing in the answer passes, however many nails there are. */
START_TEST(cut_studs) {
    frame_cut_stud_in in;
    frame_cut_stud_out out;
    frame_cut_stud_in_init(&in);
    in.kind = FRAME_DOWEL_COMMON_NAIL, in.size = "8d", in.side_specific_gravity = in.main_specific_gravity = 0.5;
    in.side_thickness_in = 7.0 / 16, in.nails_stud = 8, in.nails_neighbours = 12, in.load_lb = 900;
    CHECKED(cut_stud, in, out);
    CLOSE(out.figure_lb, 8 * out.each_lb);
    CLOSE(out.load_over_figure, 900 / out.figure_lb);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENING_CAUTION_FIGURE));
    ck_assert(strstr(out.reason, "no table or test") != NULL);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("sheathing as structure");
    TCase *cases = tcase_create("all");
    tcase_add_test(cases, unit_shears);
    tcase_add_test(cases, segments);
    tcase_add_test(cases, perforated);
    tcase_add_test(cases, diaphragms);
    tcase_add_test(cases, patterns);
    tcase_add_test(cases, cut_studs);
    suite_add_tcase(suite, cases);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
