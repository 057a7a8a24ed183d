/* Gambrels, dormers, gable overhangs, stepping off: the formulas against the kernel's sticks, and against each other.
 */
#include <check.h>
#include <math.h>
#include <stdlib.h>

#include <frame/frame.h>

static frame_stick_lengths_out lengths_of(const frame_stick *stick) {
    frame_stick_lengths_out lengths;
    ck_assert_int_eq(frame_stick_lengths(stick, &lengths), FRAME_OK);
    return lengths;
}

static frame_stick_fit_out fit_of(const frame_stick *a, const frame_stick *b) {
    frame_stick_fit_out fit;
    ck_assert_int_eq(frame_stick_fit(a, b, &fit), FRAME_OK);
    return fit;
}

static frame_stick_saw saw_for(const frame_stick *stick, const char *label) {
    frame_stick_saw saw;
    for (size_t i = 0; i < frame_stick_saw_count(stick); i++) {
        frame_stick_saw_at(stick, i, &saw);
        if (!strcmp(saw.label, label)) return saw;
    }
    ck_abort_msg("no cut is called %s", label);
    return saw;
}

/* The two rafters of a gambrel meet in the whole of a mitre, and miss by the purlin otherwise. */
START_TEST(gambrels) {
    for (int i = 0; i < 48; i++) {
        frame_gambrel_in in;
        frame_gambrel_out out;
        frame_stick *lower, *upper;
        frame_gambrel_in_init(&in);
        in.run_in = 120 + i, in.lower_slope = 1 + 0.05 * i, in.upper_slope = 0.3 + 0.01 * i;
        in.ridge_thickness_in = i % 3, in.height_above_plate_in = i % 4;
        if (i & 1) in.knee_run_in = 40 + i;
        in.joint = i & 2 ? FRAME_GAMBREL_JOINT_PURLIN : FRAME_GAMBREL_JOINT_MITRE;
        in.purlin_thickness_in = 1.5;
        ck_assert_msg(frame_gambrel(&in, &out, NULL) == FRAME_OK, "%s", frame_error_text());
        ck_assert_msg(frame_gambrel_stick(&in, &lower) == FRAME_OK, "%s", frame_error_text());
        in.piece = FRAME_GAMBREL_UPPER;
        ck_assert_msg(frame_gambrel_stick(&in, &upper) == FRAME_OK, "%s", frame_error_text());
        const frame_stick_saw knee = saw_for(lower, "knee cut"), other = saw_for(upper, "knee cut");
        ck_assert_double_eq_tol(knee.mitre_deg, out.knee_cut_lower_deg, 1e-9);
        ck_assert_double_eq_tol(other.mitre_deg, out.knee_cut_upper_deg, 1e-9);
        ck_assert_double_eq_tol(lengths_of(upper).top_edge_in, out.upper_length_in, 1e-9);
        /* At the foot the top edge begins over the building line, or where the level cut meets it when there is no
         * plumb part. */
        ck_assert_double_eq_tol(lengths_of(lower).top_edge_in, out.lower_length_in, 1e-9);
        ck_assert_double_eq_tol(saw_for(lower, "foot level cut").area_in2, 1.5 * out.seat_in, 1e-8);
        const frame_stick_fit_out fit = fit_of(lower, upper);
        ck_assert_double_eq_tol(fit.overlap_in3, 0, 1e-9);
        if (in.joint == FRAME_GAMBREL_JOINT_MITRE) {
            ck_assert_double_eq_tol(fit.contact_in2, knee.area_in2, 1e-6);
            ck_assert_double_eq_tol(other.area_in2, knee.area_in2, 1e-6);
        } else {
            ck_assert_double_eq_tol(fit.gap_in, 1.5, 1e-9);
        }
        if (!(i & 1)) ck_assert_double_eq_tol(out.lower_line_length_in, out.upper_line_length_in, 1e-9);
        ck_assert_double_eq_tol(12 * out.lower_full_steps + out.lower_odd_step_in, out.knee_run_in - (i & 2 ? 0.75 : 0),
                                1e-9);
        frame_stick_free(lower), frame_stick_free(upper);
    }
    frame_gambrel_in in;
    frame_gambrel_out out;
    frame_gambrel_in_init(&in);
    in.run_in = 100, in.lower_slope = 1.5, in.upper_slope = 0.5, in.knee_run_in = 100;
    ck_assert_int_eq(frame_gambrel(&in, &out, NULL), FRAME_IMPOSSIBLE);
    in.knee_run_in = 99;
    ck_assert_int_eq(frame_gambrel(&in, &out, NULL), FRAME_IMPOSSIBLE);
}
END_TEST

/* Old rules of proportion. A gambrel of 60 and 30 degrees rises half the span (A Treatise on Architecture and Building
 * Construction, gambrel roof). A mansard by the semicircle on the span cut in five equal arcs, its side the first
 * chord, its top the chord from there to the apex: slopes of 72 and 27 degrees (Building Construction vol. 2, The
 * Framing of Roofs). */
START_TEST(old_rules_of_proportion) {
    const double degree = acos(-1.0) / 180;
    frame_gambrel_in in;
    frame_gambrel_out out;
    frame_gambrel_in_init(&in);
    in.run_in = 144, in.lower_slope = tan(60 * degree), in.upper_slope = tan(30 * degree);
    ck_assert_int_eq(frame_gambrel(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq_tol(out.ridge_rise_in, 144, 1e-9);
    ck_assert_double_eq_tol(out.knee_cut_lower_deg, 15, 1e-9);
    in.lower_slope = tan(72 * degree), in.upper_slope = tan(27 * degree);
    in.knee_run_in = 144 * (1 - cos(36 * degree));
    ck_assert_int_eq(frame_gambrel(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq_tol(out.knee_rise_in, 144 * sin(36 * degree), 1e-9);
    ck_assert_double_eq_tol(out.ridge_rise_in, 144, 1e-9);
}
END_TEST

/* A board thick and wide enough to stand for the main roof, its top in the main roof's plane. */
static frame_stick *main_roof(const frame_dormer_in *in) {
    frame_stick_in board;
    frame_stick *stick;
    frame_stick_in_init(&board);
    board.thickness_in = 40, board.depth_in = 20, board.axis_at = FRAME_STICK_AXIS_TOP;
    board.start_x_in = -100, board.end_x_in = 600, board.end_y_in = 0;
    board.start_z_in = -in->wall_height_in - 100 * in->slope_main;
    board.end_z_in = -in->wall_height_in + 600 * in->slope_main;
    ck_assert_int_eq(frame_stick_new(&board, &stick), FRAME_OK);
    return stick;
}

START_TEST(dormers) {
    for (int i = 0; i < 40; i++) {
        frame_dormer_in in;
        frame_dormer_out out;
        frame_dormer *dormer;
        frame_dormer_piece piece;
        frame_stick *stick;
        frame_dormer_in_init(&in);
        in.slope_main = 0.6 + 0.02 * i, in.slope = 0.2 + 0.005 * i, in.width_in = 60 + i,
        in.wall_height_in = 40 + i % 20;
        in.kind = i & 1 ? FRAME_DORMER_SHED : FRAME_DORMER_GABLE;
        in.overhang_in = i % 5, in.ridge_thickness_in = 1.5;
        if (i & 2) in.sole_thickness_in = 0;
        ck_assert_msg(frame_dormer_solve(&in, &dormer, NULL) == FRAME_OK, "%s", frame_error_text());
        frame_dormer_result(dormer, &out);
        frame_stick *roof = main_roof(&in);
        ck_assert_uint_eq(frame_dormer_piece_count(dormer), (size_t)out.studs + 1);
        ck_assert_int_eq(frame_dormer_stick(dormer, 0, &stick), FRAME_OK);
        ck_assert_double_eq_tol(lengths_of(stick).top_edge_in, out.rafter_length_in, 1e-9);
        if (in.kind == FRAME_DORMER_SHED) {
            const frame_stick_saw head = saw_for(stick, "head, along the main roof");
            ck_assert_double_eq_tol(head.mitre_deg, out.head_cut_deg, 1e-9);
            const frame_stick_fit_out fit = fit_of(stick, roof);
            ck_assert_double_eq_tol(fit.overlap_in3, 0, 1e-8);
            ck_assert_double_eq_tol(fit.contact_in2, head.area_in2, 1e-6);
        }
        frame_stick_free(stick);
        double before = 0;
        for (size_t k = 1; k <= (size_t)out.studs; k++) {
            frame_dormer_piece_at(dormer, k, &piece);
            ck_assert_int_eq(frame_dormer_stick(dormer, k, &stick), FRAME_OK);
            const frame_stick_saw foot = saw_for(stick, "foot, along the main roof");
            ck_assert_double_eq_tol(lengths_of(stick).long_point_in, piece.long_point_in, 1e-9);
            ck_assert_double_eq_tol(lengths_of(stick).short_point_in, piece.short_point_in, 1e-9);
            ck_assert_double_eq_tol(foot.bevel_deg, out.stud_bevel_deg, 1e-9);
            if (k > 1) ck_assert_double_eq_tol(before - piece.long_point_in, out.stud_difference_in, 1e-9);
            before = piece.long_point_in;
            const frame_stick_fit_out fit = fit_of(stick, roof);
            ck_assert_double_eq_tol(fit.overlap_in3, 0, 1e-8);
            ck_assert_double_eq_tol(fit.gap_in, i & 2 ? 0 : 1.5, 1e-8); /* the sole lies between */
            frame_stick_free(stick);
        }
        frame_stick_free(roof);
        frame_dormer_free(dormer);
    }
}
END_TEST

/* The valley of a gable dormer is the one that two whole roofs make where they meet. */
START_TEST(a_dormers_valley_is_that_of_a_roof_laid_over) {
    frame_dormer_in in;
    frame_dormer_out out;
    frame_dormer *dormer;
    frame_overlay_valley_in over;
    frame_overlay_valley_out laid;
    frame_dormer_in_init(&in), frame_overlay_valley_in_init(&over);
    in.slope_main = over.slope_main = 0.8, in.slope = over.slope = 0.5, in.width_in = 96, over.run_in = 48;
    in.wall_height_in = 50, over.spacing_in = 16;
    ck_assert_int_eq(frame_dormer_solve(&in, &dormer, NULL), FRAME_OK);
    frame_dormer_result(dormer, &out);
    ck_assert_int_eq(frame_overlay_valley(&over, &laid, NULL), FRAME_OK);
    ck_assert_double_eq_tol(out.valley_length_in, laid.valley_length_in, 1e-9);
    ck_assert_double_eq_tol(out.valley_deg, laid.valley_deg, 1e-9);
    ck_assert_double_eq_tol(out.jack_difference_in, laid.difference_in, 1e-9);
    frame_dormer_free(dormer);
    in.kind = FRAME_DORMER_SHED, in.slope = 0.79;
    ck_assert_int_eq(frame_dormer_solve(&in, &dormer, NULL), FRAME_IMPOSSIBLE);
    in.slope = 0.3, in.wall_height_in = 4;
    ck_assert_int_eq(frame_dormer_solve(&in, &dormer, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "wall_height_in");
}
END_TEST

START_TEST(gable_overhangs) {
    for (int i = 0; i < 30; i++) {
        frame_rake_in in;
        frame_rake_out out;
        frame_rake *rake;
        frame_stick *stick;
        frame_rake_in_init(&in);
        in.slope = 0.2 + 0.05 * i, in.overhang_in = 8 + i, in.rafter_length_in = 100 + 7 * i;
        in.laid = i & 1 ? FRAME_LOOKOUT_FLAT : FRAME_LOOKOUT_EDGE;
        ck_assert_msg(frame_rake_solve(&in, &rake, NULL) == FRAME_OK, "%s", frame_error_text());
        frame_rake_result(rake, &out);
        ck_assert_int_eq(frame_rake_stick(&in, &stick), FRAME_OK);
        ck_assert_double_eq_tol(lengths_of(stick).long_point_in, out.lookout_length_in, 1e-9);
        /* Its under side lies the notch below the roof plane, square to it: the drop, plumb. */
        ck_assert_double_eq_tol(out.gable_drop_in / sqrt(1 + in.slope * in.slope), i & 1 ? 1.5 : 3.5, 1e-12);
        size_t count;
        const double *marks = frame_rake_marks_in(rake, &count);
        ck_assert_uint_eq(count, (size_t)out.count);
        ck_assert_double_le(marks[count - 1], in.rafter_length_in);
        ck_assert_double_gt(marks[count - 1] + 24, in.rafter_length_in - 4);
        ck_assert_int_eq(FRAME_HAS(out.cautions, FRAME_RAKE_CAUTION_LEVER), in.overhang_in > 23.25);
        frame_stick_free(stick);
        frame_rake_free(rake);
    }
}
END_TEST

/* One step at a time adds up to the length that rafter and hip compute, and the table is theirs. */
START_TEST(steps_add_up) {
    for (int i = 0; i < 60; i++) {
        frame_square_steps_in in;
        frame_square_steps_out out;
        frame_square_steps *steps;
        frame_square_steps_mark mark, last = {.along_in = 0};
        frame_hip_in hip;
        frame_hip_out of_hip;
        frame_jacks_in jacks;
        frame_jacks_out of_jacks;
        frame_jacks *set;
        frame_square_steps_in_init(&in), frame_hip_in_init(&hip), frame_jacks_in_init(&jacks);
        in.slope = hip.slope_a = hip.slope_b = jacks.slope = 0.1 + 0.03 * i, in.run_in = hip.run_in = 60 + 4.3 * i;
        in.overhang_in = hip.overhang_in = i % 7 * 4,
        in.corner_deg = hip.corner_deg = jacks.corner_deg = 60 + 2 * (i % 31);
        in.spacing_in = jacks.spacing_in = 19.2;
        in.member = i & 1 ? FRAME_SQUARE_HIP : FRAME_SQUARE_COMMON;
        ck_assert_int_eq(frame_square_steps_solve(&in, &steps, NULL), FRAME_OK);
        frame_square_steps_result(steps, &out);
        ck_assert_int_eq(frame_hip(&hip, &of_hip, NULL), FRAME_OK);
        ck_assert_int_eq(frame_jacks_solve(&jacks, &set, NULL), FRAME_OK);
        frame_jacks_result(set, &of_jacks);
        ck_assert_double_eq_tol(out.hip_per_foot_in, of_hip.per_foot_in, 1e-9);
        ck_assert_double_eq_tol(out.hip_side_cut_in, of_hip.side_cut_a_in, 1e-9);
        ck_assert_double_eq_tol(out.jack_difference_in, of_jacks.difference_in, 1e-9);
        ck_assert_double_eq_tol(out.jack_side_cut_in, of_jacks.side_cut_in, 1e-9);
        const double common = in.run_in * sqrt(1 + in.slope * in.slope);
        ck_assert_double_eq_tol(out.length_in, i & 1 ? of_hip.line_length_in : common, 1e-9);
        double walked = 0;
        for (size_t k = 0; k < frame_square_steps_mark_count(steps); k++) {
            frame_square_steps_mark_at(steps, k, &mark);
            if (k && mark.along_in > 1e-9) walked += hypot(mark.blade_in, mark.tongue_in);
            if (k) ck_assert_double_gt(mark.along_in, last.along_in);
            last = mark;
        }
        ck_assert_double_eq_tol(walked, out.length_in, 1e-8);
        ck_assert_double_eq_tol(last.along_in, out.length_in, 1e-9);
        ck_assert_double_eq_tol(last.rise_in, in.run_in * in.slope, 1e-9);
        frame_square_steps_mark_at(steps, 0, &mark);
        ck_assert_double_eq_tol(mark.along_in, -out.tail_length_in, 1e-9);
        frame_square_steps_free(steps), frame_jacks_free(set);
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("roof_shapes");
    TCase *tests = tcase_create("roof_shapes");
    tcase_add_test(tests, gambrels);
    tcase_add_test(tests, old_rules_of_proportion);
    tcase_add_test(tests, dormers);
    tcase_add_test(tests, a_dormers_valley_is_that_of_a_roof_laid_over);
    tcase_add_test(tests, gable_overhangs);
    tcase_add_test(tests, steps_add_up);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
