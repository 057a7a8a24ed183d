/* Gable studs, collar ties, the mitres of fascias: right triangles against the kernel's sticks. */
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

static const double degree = 0.017453292519943295;

START_TEST(studs_of_a_gable) {
    for (int i = 0; i < 40; i++) {
        frame_gable_studs_in in;
        frame_gable_studs_out out;
        frame_gable_studs *studs;
        frame_gable_studs_in_init(&in);
        in.span_in = 200 + 7 * i, in.slope = 0.2 + 0.03 * i, in.spacing_in = i & 1 ? 16 : 24, in.under_in = i % 5;
        in.turned = i & 2 ? FRAME_STUD_FLAT : FRAME_STUD_ON_EDGE;
        ck_assert_int_eq(frame_gable_studs_solve(&in, &studs, NULL), FRAME_OK);
        frame_gable_studs_result(studs, &out);
        ck_assert_uint_eq(frame_gable_studs_piece_count(studs), (size_t)out.count);
        double before = 0;
        for (size_t k = 0; k < (size_t)out.count; k++) {
            frame_gable_studs_piece piece;
            frame_stick *stick;
            frame_stick_lengths_out lengths;
            frame_gable_studs_piece_at(studs, k, &piece);
            ck_assert_int_eq(frame_gable_studs_stick(studs, k, &stick), FRAME_OK);
            frame_stick_lengths(stick, &lengths);
            ck_assert_double_eq_tol(lengths.long_point_in, piece.long_point_in, 1e-9);
            if (!piece.peak) {
                frame_stick_saw saw;
                ck_assert_double_eq_tol(lengths.short_point_in, piece.short_point_in, 1e-9);
                ck_assert_double_eq_tol(piece.long_point_in - piece.short_point_in, out.point_in, 1e-9);
                frame_stick_saw_at(stick, 1, &saw);
                ck_assert_double_eq_tol(saw.mitre_deg, out.mitre_deg, 1e-9);
                ck_assert_double_eq_tol(saw.bevel_deg, out.bevel_deg, 1e-9);
                if (k && piece.hand == FRAME_HAND_LEFT)
                    ck_assert_double_eq_tol(piece.long_point_in - before, out.difference_in, 1e-9);
                before = piece.long_point_in;
            }
            frame_stick_free(stick);
        }
        frame_gable_studs_free(studs);
    }
}
END_TEST

START_TEST(a_collar_tie) {
    for (int i = 0; i < 40; i++) {
        frame_collar_tie_in in;
        frame_collar_tie_out out;
        frame_stick *stick;
        frame_stick_lengths_out lengths;
        frame_stick_saw saw;
        frame_collar_tie_in_init(&in);
        in.run_in = 120 + i, in.slope = 0.3 + 0.03 * i, in.depth_in = 5.5, in.height_above_plate_in = i % 6;
        in.height_in = (0.2 + 0.01 * i) * in.run_in * in.slope;
        ck_assert_int_eq(frame_collar_tie(&in, &out, NULL), FRAME_OK);
        ck_assert_int_eq(frame_collar_tie_stick(&in, &stick), FRAME_OK);
        frame_stick_lengths(stick, &lengths);
        ck_assert_double_eq_tol(lengths.bottom_edge_in, out.length_in, 1e-9);
        ck_assert_double_eq_tol(lengths.top_edge_in, out.top_length_in, 1e-9);
        for (size_t k = 0; k < 2; k++) {
            frame_stick_saw_at(stick, k, &saw);
            ck_assert_double_eq_tol(saw.mitre_deg, out.mitre_deg, 1e-9);
        }
        frame_stick_free(stick);
    }
    frame_collar_tie_in in;
    frame_collar_tie_out out;
    frame_collar_tie_in_init(&in);
    in.run_in = 120, in.slope = 0.5, in.depth_in = 5.5, in.height_in = 50;
    ck_assert_int_eq(frame_collar_tie(&in, &out, NULL), FRAME_OK);
    ck_assert_uint_eq(out.cautions & 1, 1); /* the upper third: no tie */
    ck_assert_double_eq(out.thrust_factor, FRAME_NOT_GIVEN);
    in.height_in = 20;
    ck_assert_int_eq(frame_collar_tie(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq_tol(out.thrust_factor, 1.5, 1e-12); /* a third up: half as much again */
    in.height_in = 58;
    ck_assert_int_eq(frame_collar_tie(&in, &out, NULL), FRAME_IMPOSSIBLE);
    in.height_above_plate_in = 4, in.height_in = 4; /* its bottom where the roof planes cross the walls */
    ck_assert_int_eq(frame_collar_tie(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq_tol(out.length_in, 240, 1e-9);
    in.height_in = 3.9;
    ck_assert_int_eq(frame_collar_tie(&in, &out, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "height_in");
}
END_TEST

/* What begins beyond the gable, or beyond where the ridge dies, is no answer without pieces. */
START_TEST(what_begins_too_far_is_refused) {
    frame_gable_studs_in studs_in;
    frame_gable_studs *studs = NULL;
    frame_overlay_valley_in valley;
    frame_overlay_valley_out out;
    frame_gable_studs_in_init(&studs_in);
    studs_in.span_in = 240, studs_in.slope = 0.5, studs_in.spacing_in = 16, studs_in.first_in = 240;
    ck_assert_int_eq(frame_gable_studs_solve(&studs_in, &studs, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "first_in");
    ck_assert_ptr_null(studs);
    frame_overlay_valley_in_init(&valley);
    valley.slope_main = 0.5, valley.slope = 0.5, valley.run_in = 100, valley.first_in = 1;
    ck_assert_int_eq(frame_overlay_valley(&valley, &out, NULL), FRAME_IMPOSSIBLE); /* the sleeper takes it whole */
    ck_assert_str_eq(frame_error_field(), "first_in");
    valley.first_in = 99;
    ck_assert_int_eq(frame_overlay_valley(&valley, &out, NULL), FRAME_OK);
    valley.first_in = 100; /* over the eave */
    ck_assert_int_eq(frame_overlay_valley(&valley, &out, NULL), FRAME_IMPOSSIBLE);
    ck_assert_msg(strstr(frame_error_text(), "no farther") != NULL, "%s", frame_error_text());
}
END_TEST

START_TEST(mitres_of_fascias) {
    for (int i = 0; i < 60; i++) {
        frame_fascia_mitre_in in;
        frame_fascia_mitre_out out;
        frame_stick *stick;
        frame_stick_saw saw;
        frame_fascia_mitre_in_init(&in);
        in.slope = 0.1 + 0.03 * i, in.corner_deg = 40 + 2 * i,
        in.stands = i & 1 ? FRAME_FASCIA_SQUARE : FRAME_FASCIA_PLUMB;
        ck_assert_int_eq(frame_fascia_mitre(&in, &out, NULL), FRAME_OK);
        ck_assert_int_eq(frame_fascia_mitre_stick(&in, &stick), FRAME_OK);
        for (size_t k = 0; k < frame_stick_saw_count(stick); k++) {
            frame_stick_saw_at(stick, k, &saw);
            if (saw.at_end != FRAME_STICK_START) continue;
            ck_assert_double_eq_tol(saw.mitre_deg, out.mitre_deg, 1e-9);
            ck_assert_double_eq_tol(saw.bevel_deg, out.bevel_deg, 1e-9);
        }
        if (in.stands == FRAME_FASCIA_PLUMB)
            ck_assert_double_eq_tol(out.bevel_deg, 90 - in.corner_deg / 2, 1e-9);
        else
            ck_assert_double_eq_tol(tan(out.tilt_deg * degree), in.slope, 1e-12);
        frame_stick_free(stick);
    }
}
END_TEST

/* Against the roofs themselves, and the seat against the kernel. */
START_TEST(valleys_over_sheathing) {
    for (int i = 0; i < 40; i++) {
        frame_overlay_valley_in in;
        frame_overlay_valley_out out;
        frame_stick *stick;
        frame_overlay_valley_in_init(&in);
        in.slope_main = 0.3 + 0.03 * i, in.slope = 1.3 - 0.025 * i, in.run_in = 80 + i;
        in.first_in = fmin(40, 0.8 * in.run_in * in.slope / in.slope_main);
        ck_assert_int_eq(frame_overlay_valley(&in, &out, NULL), FRAME_OK);
        /* Heights agree where the ridge dies; the valley's ends lie on both planes. */
        ck_assert_double_eq_tol(out.reach_in * in.slope_main, in.run_in * in.slope, 1e-9);
        ck_assert_double_eq_tol(out.valley_length_in, hypot(hypot(in.run_in, out.reach_in), in.run_in * in.slope),
                                1e-9);
        ck_assert_double_eq_tol(tan(out.valley_deg * degree), out.reach_in * hypot(1, in.slope_main) / in.run_in, 1e-9);
        ck_assert_int_eq(frame_overlay_valley_stick(&in, &stick), FRAME_OK);
        for (size_t k = 0; k < frame_stick_saw_count(stick); k++) {
            frame_stick_saw saw;
            frame_stick_saw_at(stick, k, &saw);
            if (saw.at_end != FRAME_STICK_START) continue;
            ck_assert_double_eq_tol(saw.mitre_deg, out.seat_mitre_deg, 1e-9);
            ck_assert_double_eq_tol(saw.bevel_deg, out.seat_bevel_deg, 1e-9);
        }
        frame_stick_lengths_out lengths;
        frame_stick_lengths(stick, &lengths);
        ck_assert_double_eq_tol(lengths.top_edge_in, out.first_length_in - out.seat_deduction_along_in, 1e-9);
        frame_stick_free(stick);
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("roof_singles");
    TCase *tests = tcase_create("roof_singles");
    tcase_add_test(tests, studs_of_a_gable);
    tcase_add_test(tests, a_collar_tie);
    tcase_add_test(tests, what_begins_too_far_is_refused);
    tcase_add_test(tests, mitres_of_fascias);
    tcase_add_test(tests, valleys_over_sheathing);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed ? EXIT_FAILURE : EXIT_SUCCESS;
}
