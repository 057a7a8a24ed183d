/* Broken hips, ripped ridges, purlins and their braces, soffits, blocks: the formulas against the kernel's sticks. */
#include <check.h>
#include <math.h>
#include <stdlib.h>

#include <frame/frame.h>

static const double degree = 0.017453292519943295;

static frame_stick_lengths_out lengths_of(const frame_stick *stick) {
    frame_stick_lengths_out lengths;
    ck_assert_int_eq(frame_stick_lengths(stick, &lengths), FRAME_OK);
    return lengths;
}

/* The saw's setting with a label. */
static frame_stick_saw saw_for(const frame_stick *stick, const char *label) {
    frame_stick_saw saw;
    for (size_t i = 0; i < frame_stick_saw_count(stick); i++) {
        frame_stick_saw_at(stick, i, &saw);
        if (!strcmp(saw.label, label)) return saw;
    }
    ck_abort_msg("no cut is called %s", label);
    return saw;
}

static double volume_of(const frame_stick *stick) {
    frame_stick_solid_out solid;
    ck_assert_int_eq(frame_stick_solid(stick, &solid), FRAME_OK);
    return solid.volume_in3;
}

START_TEST(broken_hips) {
    for (int i = 0; i < 60; i++) {
        frame_broken_hip_in in;
        frame_broken_hip_out out;
        frame_stick *stick;
        frame_broken_hip_in_init(&in);
        in.slope_a = 0.3 + 0.02 * (i % 17), in.slope_b = 0.25 + 0.03 * (i % 13), in.corner_deg = 75 + i % 31;
        in.rise_in = 40 + i, in.depth_in = 9.25, in.ridge_thickness_in = 1.5, in.lower_ridge_thickness_in = i % 4;
        in.foot = i & 1 ? FRAME_BROKEN_HIP_END_PLUMB : FRAME_BROKEN_HIP_END_RIDGE;
        in.head = i & 2 ? FRAME_BROKEN_HIP_END_PLUMB : FRAME_BROKEN_HIP_END_RIDGE;
        in.top = i & 4 ? FRAME_HIP_TOP_BACKED : FRAME_HIP_TOP_DROPPED;
        ck_assert_msg(frame_broken_hip(&in, &out, NULL) == FRAME_OK, "%s", frame_error_text());
        ck_assert_msg(frame_broken_hip_stick(&in, &stick) == FRAME_OK, "%s", frame_error_text());
        ck_assert_double_eq_tol(lengths_of(stick).top_edge_in, out.length_in, 1e-9);
        const frame_stick_saw head = saw_for(stick, i & 2 ? "head plumb cut" : "ridge cheek");
        const frame_stick_saw foot = saw_for(stick, i & 1 ? "foot plumb cut" : "foot cheek");
        ck_assert_double_eq_tol(head.bevel_deg, out.head_cheek_deg, 1e-9);
        ck_assert_double_eq_tol(foot.bevel_deg, out.foot_cheek_deg, 1e-9);
        ck_assert_double_eq_tol(head.mitre_deg, out.plumb_cut_deg, 1e-9);
        ck_assert_double_eq_tol(foot.mitre_deg, out.plumb_cut_deg, 1e-9);
        ck_assert_int_eq(foot.at_end, FRAME_STICK_START);
        if (i & 4) ck_assert_double_eq_tol(saw_for(stick, "backing, side b").bevel_deg, out.backing_b_deg, 1e-9);
        /* Stepped off one foot of common run at a time, it comes out as long. */
        const double steps =
            out.full_steps * out.step_length_in + out.odd_step_in * out.step_length_in / out.square_blade_in;
        ck_assert_double_eq_tol(steps, out.length_in, 1e-9);
        /* Between the ridges' centres it rises as the ridges do. */
        ck_assert_double_eq_tol(out.plan_run_in * out.slope, in.rise_in, 1e-9);
        frame_stick_free(stick);
    }
}
END_TEST

/* A hip up to the lower ridge, and the broken hip on from there, rise as far as one roof; both have a regular hip's
 * cuts. */
START_TEST(a_broken_hip_goes_on_where_the_lower_ridge_ends) {
    frame_hip_in whole;
    frame_hip_out to_top;
    frame_broken_hip_in in;
    frame_broken_hip_out out;
    frame_hip_in_init(&whole), frame_broken_hip_in_init(&in);
    whole.slope_a = whole.slope_b = in.slope_a = in.slope_b = 8.0 / 12;
    whole.run_in = 168, in.rise_in = (168 - 96) * 8.0 / 12;
    in.head = in.foot = FRAME_BROKEN_HIP_END_PLUMB, whole.head = FRAME_HIP_HEAD_PLUMB;
    ck_assert_int_eq(frame_hip(&whole, &to_top, NULL), FRAME_OK);
    ck_assert_int_eq(frame_broken_hip(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq_tol(out.line_length_in, to_top.per_foot_in * (168 - 96) / 12, 1e-9);
    ck_assert_double_eq_tol(out.plumb_cut_deg, to_top.plumb_cut_deg, 1e-12);
    in.lower_ridge_thickness_in = 24, in.rise_in = 5;
    ck_assert_int_eq(frame_broken_hip(&in, &out, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "rise_in");
}
END_TEST

START_TEST(ripped_ridges) {
    for (int i = 0; i < 30; i++) {
        frame_ridge_rip_in in;
        frame_ridge_rip_out out;
        frame_stick *stick;
        frame_ridge_rip_in_init(&in);
        in.slope_a = 0.1 + 0.05 * i, in.thickness_in = 1.5 + i % 3, in.depth_in = 9.25, in.rafter_depth_in = 7.25;
        if (i & 1) in.slope_b = 1.6 - 0.05 * i;
        ck_assert_int_eq(frame_ridge_rip(&in, &out, NULL), FRAME_OK);
        ck_assert_int_eq(frame_ridge_rip_stick(&in, &stick), FRAME_OK);
        const double t = in.thickness_in, m_b = i & 1 ? in.slope_b : in.slope_a;
        /* What is ripped off: two right triangles over half the thickness each. */
        ck_assert_double_eq_tol(volume_of(stick), 96 * (t * 9.25 - t / 2 * (out.fall_a_in + out.fall_b_in) / 2), 1e-8);
        ck_assert_double_eq_tol(tan(out.bevel_b_deg * degree), m_b, 1e-12);
        ck_assert_double_eq_tol(out.drop_in, t / 2 * fmax(in.slope_a, m_b), 1e-12);
        const int shallow = out.least_depth_in > 9.25;
        ck_assert_int_eq((int)(out.cautions & 1), shallow);
        frame_stick_free(stick);
    }
}
END_TEST

START_TEST(purlins) {
    for (int i = 0; i < 64; i++) {
        frame_purlin_in in;
        frame_purlin_out out;
        frame_stick *stick;
        frame_purlin_in_init(&in);
        in.slope = 0.2 + 0.02 * i, in.depth_in = 7.25, in.corner_deg = 60 + i, in.hip_thickness_in = i % 4;
        in.stands = i & 1 ? FRAME_PURLIN_PLUMB : FRAME_PURLIN_SQUARE;
        in.against = i & 2 ? FRAME_PURLIN_AGAINST_VALLEY : FRAME_PURLIN_AGAINST_HIP;
        if (i & 4) in.other_slope = 0.9;
        in.run_in = 72;
        ck_assert_int_eq(frame_purlin(&in, &out, NULL), FRAME_OK);
        ck_assert_msg(frame_purlin_stick(&in, &stick) == FRAME_OK, "%s", frame_error_text());
        const frame_stick_saw saw = saw_for(stick, i & 2 ? "cut at the valley" : "cut at the hip");
        ck_assert_double_eq_tol(saw.mitre_deg, out.mitre_deg, 1e-9);
        ck_assert_double_eq_tol(saw.bevel_deg, out.bevel_deg, 1e-9);
        ck_assert_double_eq_tol(saw.across_top_deg, out.across_edge_deg, 1e-9);
        if (in.stands == FRAME_PURLIN_PLUMB) ck_assert_double_eq(out.mitre_deg, 0);
        frame_stick_free(stick);
    }
    /* The handbook's setting for a regular hip: the sheathing's angle is the side cut's, rise over rafter the down
     * cut's. */
    frame_purlin_in in;
    frame_purlin_out out;
    frame_purlin_in_init(&in);
    in.slope = 9.0 / 12, in.depth_in = 5.5, in.run_in = 60;
    ck_assert_int_eq(frame_purlin(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq_tol(out.down_cut_in, 12 * 9.0 / 15, 1e-9);
    ck_assert_double_eq_tol(out.side_cut_in, 12 * 12.0 / 15, 1e-9);
    ck_assert_double_eq_tol(out.corner_offset_in, 60, 1e-9);
}
END_TEST

START_TEST(braces_of_purlins) {
    for (int i = 0; i < 48; i++) {
        frame_purlin_brace_in in;
        frame_purlin_brace_out out;
        frame_stick *stick;
        frame_purlin_brace_in_init(&in);
        in.rise_in = 40 + i, in.run_in = i, in.slope = 0.2 + 0.01 * i;
        in.leans = i & 1 ? FRAME_BRACE_LEANS_RIDGE : FRAME_BRACE_LEANS_EAVE;
        in.head = i & 2 ? FRAME_BRACE_HEAD_LEVEL : FRAME_BRACE_HEAD_ROOF;
        ck_assert_int_eq(frame_purlin_brace(&in, &out, NULL), FRAME_OK);
        ck_assert_msg(frame_purlin_brace_stick(&in, &stick) == FRAME_OK, "%s", frame_error_text());
        ck_assert_double_eq_tol(lengths_of(stick).centre_line_in, out.length_in, 1e-9);
        ck_assert_double_eq_tol(lengths_of(stick).long_point_in, out.long_point_in, 1e-9);
        ck_assert_double_eq_tol(saw_for(stick, "head cut").mitre_deg, out.head_cut_deg, 1e-9);
        ck_assert_double_eq_tol(saw_for(stick, "foot level cut").mitre_deg, out.foot_cut_deg, 1e-9);
        frame_stick_free(stick);
    }
    frame_purlin_brace_in in;
    frame_purlin_brace_out out;
    frame_purlin_brace_in_init(&in);
    in.rise_in = 72, in.run_in = 48, in.slope = 48.0 / 72; /* square to the roof */
    ck_assert_int_eq(frame_purlin_brace(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq_tol(out.head_cut_deg, 0, 1e-9);
    ck_assert(!FRAME_HAS(out.cautions, FRAME_PURLIN_BRACE_CAUTION_FLAT));
    in.run_in = 80;
    ck_assert_int_eq(frame_purlin_brace(&in, &out, NULL), FRAME_OK);
    ck_assert(FRAME_HAS(out.cautions, FRAME_PURLIN_BRACE_CAUTION_FLAT));
    ck_assert(FRAME_HAS(out.cautions, FRAME_PURLIN_BRACE_CAUTION_LONG));
    in.rise_in = 1, in.run_in = 60;
    ck_assert_int_eq(frame_purlin_brace(&in, &out, NULL), FRAME_IMPOSSIBLE);
}
END_TEST

/* The lookout lies level with the rafter's lowest point, beside it, and under the roof plane. */
START_TEST(soffits) {
    for (int i = 0; i < 40; i++) {
        frame_soffit_in in;
        frame_soffit_out out;
        frame_rafter_in rafter;
        frame_stick *stick, *tail;
        frame_soffit_in_init(&in), frame_rafter_in_init(&rafter);
        in.slope = rafter.slope = 0.2 + 0.02 * i, in.overhang_in = rafter.overhang_in = 14 + i % 9;
        in.rafter_depth_in = rafter.depth_in = 7.25, in.height_above_plate_in = rafter.height_above_plate_in = 5;
        in.wall_cladding_in = 0.5, in.depth_in = i & 1 ? 3.5 : 9.25;
        rafter.run_in = 120;
        if (i & 2) {
            in.fascia_depth_in = rafter.fascia_depth_in = 5.5;
            rafter.tail = FRAME_RAFTER_TAIL_PLUMB_AND_LEVEL;
        }
        ck_assert_msg(frame_soffit(&in, &out, NULL) == FRAME_OK, "%s", frame_error_text());
        ck_assert_int_eq(frame_soffit_stick(&in, &stick), FRAME_OK);
        ck_assert_int_eq(frame_rafter_stick(&rafter, &tail), FRAME_OK);
        const frame_stick_lengths_out lengths = lengths_of(stick);
        ck_assert_double_eq_tol(lengths.long_point_in, out.lookout_length_in, 1e-9);
        ck_assert_double_eq_tol(out.soffit_width_in, in.overhang_in - 0.5, 1e-12);
        /* Its underside is level with the lowest corner of the rafter's tail: both touch a board laid under them. */
        frame_stick_in board_in;
        frame_stick *board;
        frame_stick_fit_out fit;
        frame_stick_in_init(&board_in);
        board_in.thickness_in = 1, board_in.depth_in = 1, board_in.axis_at = FRAME_STICK_AXIS_TOP;
        board_in.start_x_in = -40, board_in.end_x_in = 0, board_in.end_y_in = 0;
        board_in.start_z_in = board_in.end_z_in = -out.soffit_drop_in;
        ck_assert_int_eq(frame_stick_new(&board_in, &board), FRAME_OK);
        ck_assert_int_eq(frame_stick_fit(tail, board, &fit), FRAME_OK);
        ck_assert_double_eq_tol(fit.overlap_in3, 0, 1e-9);
        ck_assert_double_eq_tol(fit.gap_in, 0, 1e-9);
        ck_assert_int_eq(frame_stick_fit(stick, board, &fit), FRAME_OK);
        ck_assert_double_eq_tol(fit.contact_in2, out.lookout_length_in, 1e-9);
        frame_stick_free(board);
        if (out.clip_in > 0) {
            const frame_stick_saw clip = saw_for(stick, "clip to the slope");
            ck_assert_double_gt(in.depth_in, out.tail_height_in);
            if (out.clip_in < out.lookout_length_in)
                ck_assert_double_eq_tol(
                    volume_of(stick),
                    1.5 * (in.depth_in * out.lookout_length_in - out.clip_in * (in.depth_in - out.tail_height_in) / 2),
                    1e-8);
            ck_assert_double_eq_tol(clip.mitre_deg, out.clip_mitre_deg, 1e-9);
        }
        frame_stick_free(stick), frame_stick_free(tail);
    }
}
END_TEST

/* Blocks lie on the plate, under the roof plane, between the rafters: in volume and against the rafter's stick. */
START_TEST(blocks_at_the_eave) {
    for (int i = 0; i < 40; i++) {
        frame_eave_block_in in;
        frame_eave_block_out out;
        frame_stick *stick, *plate;
        frame_stick_in plate_in;
        frame_stick_fit_out fit;
        frame_eave_block_in_init(&in);
        in.slope = 0.2 + 0.03 * i, in.spacing_in = 24, in.height_above_plate_in = 3 + 0.2 * i;
        in.stands = i & 1 ? FRAME_EAVE_BLOCK_SQUARE : FRAME_EAVE_BLOCK_PLUMB;
        if (!(i & 1)) in.set_back_in = i % 3;
        ck_assert_int_eq(frame_eave_block(&in, &out, NULL), FRAME_OK);
        ck_assert_msg(frame_eave_block_stick(&in, &stick) == FRAME_OK, "%s", frame_error_text());
        ck_assert_double_eq(out.length_in, 22.5);
        ck_assert_double_eq_tol(volume_of(stick), 22.5 * 1.5 * (out.outer_depth_in + out.inner_depth_in) / 2, 1e-8);
        frame_stick_in_init(&plate_in);
        plate_in.thickness_in = 12, plate_in.depth_in = 1.5, plate_in.axis_at = FRAME_STICK_AXIS_TOP;
        plate_in.start_x_in = -10, plate_in.end_x_in = 40, plate_in.end_y_in = plate_in.end_z_in = 0;
        plate_in.start_y_in = plate_in.end_y_in = 6;
        ck_assert_int_eq(frame_stick_new(&plate_in, &plate), FRAME_OK);
        ck_assert_int_eq(frame_stick_fit(stick, plate, &fit), FRAME_OK);
        ck_assert_double_eq_tol(fit.overlap_in3, 0, 1e-9);
        const double across = i & 1 ? 1.5 * sqrt(1 + in.slope * in.slope) : 1.5;
        ck_assert_double_eq_tol(fit.contact_in2, 22.5 * across, 1e-7);
        frame_stick_free(stick), frame_stick_free(plate);
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("roof_details");
    TCase *tests = tcase_create("roof_details");
    tcase_add_test(tests, broken_hips);
    tcase_add_test(tests, a_broken_hip_goes_on_where_the_lower_ridge_ends);
    tcase_add_test(tests, ripped_ridges);
    tcase_add_test(tests, purlins);
    tcase_add_test(tests, braces_of_purlins);
    tcase_add_test(tests, soffits);
    tcase_add_test(tests, blocks_at_the_eave);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
