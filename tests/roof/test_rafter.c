/* The common rafter: the handbook's triangles, the trade's step-off, and the kernel's stick, all three of one mind. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

static frame_rafter_in rafter(double run, double slope, double depth) {
    frame_rafter_in in;
    frame_rafter_in_init(&in);
    in.run_in = run;
    in.slope = slope;
    in.depth_in = depth;
    return in;
}

static frame_rafter_out solve(const frame_rafter_in *in) {
    frame_rafter_out out;
    ck_assert_msg(frame_rafter(in, &out, NULL) == FRAME_OK, "%s", frame_error_text());
    return out;
}

/* 12 in of run at 8 in 12: 14.42 in, the framing square's line (geometry of a right triangle). */
START_TEST(the_squares_figure) {
    const frame_rafter_in in = rafter(144, 8.0 / 12, 5.5);
    const frame_rafter_out out = solve(&in);
    ck_assert_double_eq_tol(out.step_length_in, sqrt(144 + 64), 1e-12);
    ck_assert_double_eq_tol(out.line_length_in, 12 * sqrt(144 + 64), 1e-9);
    ck_assert_double_eq_tol(out.square_tongue_in, 8, 1e-12);
}
END_TEST

/* One foot of run at a time, then the odd step: the trade's step-off reaches the same point. */
START_TEST(stepping_off_reaches_the_plumb_cut) {
    for (int i = 1; i <= 500; i++) {
        frame_rafter_in in = rafter(10 + i * 0.83, i % 24 / 12.0 + 0.05, 7.25);
        in.ridge_thickness_in = i % 2 ? 1.5 : 0;
        in.overhang_in = i % 40;
        const frame_rafter_out out = solve(&in);
        double along = 0;
        for (int step = 0; step < out.full_steps; step++) along += out.step_length_in;
        along += out.odd_step_in / 12 * out.step_length_in;
        ck_assert_double_eq_tol(along, out.shortened_length_in, 1e-9);
        ck_assert_double_lt(out.odd_step_in, 12);
        const double tail = (out.tail_full_steps + out.tail_odd_step_in / 12) * out.step_length_in;
        ck_assert_double_eq_tol(tail, out.tail_length_in, 1e-9);
    }
}
END_TEST

/* Every length, the birdsmouth and the volume, from the stick in space and nothing else. */
START_TEST(the_kernel_agrees) {
    for (int i = 0; i < 300; i++) {
        frame_rafter_in in = rafter(60 + i * 0.7, 0.1 + i % 19 / 10.0, 5.5 + i % 3 * 1.75);
        frame_rafter_out out;
        in.tail = 1 + i % 4;
        in.fascia_depth_in = 3;
        in.overhang_in = 14 + i % 5;
        in.seat_in = 1.5;
        in.ridge_thickness_in = i % 5 ? 1.5 : 0;
        in.ledger_thickness_in = i % 5 ? 0 : 3;
        ck_assert_msg(frame_rafter(&in, &out, NULL) == FRAME_OK, "%s", frame_error_text());
        frame_stick *stick;
        ck_assert_msg(frame_rafter_stick(&in, &stick) == FRAME_OK, "%s", frame_error_text());
        frame_stick_lengths_out lengths;
        frame_stick_solid_out solid;
        ck_assert_int_eq(frame_stick_lengths(stick, &lengths), FRAME_OK);
        ck_assert_int_eq(frame_stick_solid(stick, &solid), FRAME_OK);
        ck_assert_double_eq_tol(lengths.long_point_in, out.stock_length_in, 1e-7);
        ck_assert_double_eq_tol(lengths.top_edge_in, out.length_in, 1e-7);
        /* The side's area: a parallelogram between plumb cuts, less the tail's corner, less the birdsmouth's triangle.
         */
        if (in.tail == FRAME_RAFTER_TAIL_PLUMB) {
            const double area =
                (in.run_in - out.deduction_in + in.overhang_in) * out.plumb_depth_in - out.seat_in * out.heel_in / 2;
            ck_assert_double_eq_tol(solid.volume_in3, area * 1.5, 1e-6 * area);
        }
        int seat = 0;
        for (size_t s = 0; s < frame_stick_saw_count(stick); s++) {
            frame_stick_saw saw;
            frame_stick_saw_at(stick, s, &saw);
            ck_assert_double_eq_tol(saw.bevel_deg, 0, 1e-9);
            if (saw.role == FRAME_STICK_PLUMB_CUT || saw.role == FRAME_STICK_HEEL_CUT)
                ck_assert_double_eq_tol(saw.mitre_deg, out.plumb_cut_deg, 1e-9);
            if (saw.role != FRAME_STICK_SEAT) continue;
            seat = 1;
            ck_assert_double_eq_tol(saw.mitre_deg, out.level_cut_deg, 1e-9);
        }
        ck_assert_int_eq(seat, 1);
        frame_stick_free(stick);
    }
}
END_TEST

/* Seat and height above plate are two names of one thing. */
START_TEST(seat_and_height_above_plate) {
    frame_rafter_in in = rafter(75.5, 7.0 / 12, 5.5);
    in.seat_in = 3.5;
    const frame_rafter_out by_seat = solve(&in);
    in.seat_in = FRAME_NOT_GIVEN;
    in.height_above_plate_in = by_seat.height_above_plate_in;
    const frame_rafter_out by_height = solve(&in);
    ck_assert_double_eq_tol(by_height.seat_in, 3.5, 1e-12);
    ck_assert_double_eq_tol(by_height.notch_depth_in, by_seat.notch_depth_in, 1e-12);
    /* Depth square to the edge: seat times the sine of the slope. */
    ck_assert_double_eq_tol(by_seat.notch_depth_in, 3.5 * sin(atan(7.0 / 12)), 1e-12);
    /* The default seat is listed as assumed only where neither was given. */
    const frame_field *seat = frame_field_find(frame_struct_find("rafter_in"), "seat_in");
    in.height_above_plate_in = FRAME_NOT_GIVEN;
    const frame_rafter_out by_default = solve(&in);
    ck_assert(FRAME_HAS(by_default.assumed, seat->assumed_bit));
    ck_assert(!FRAME_HAS(by_height.assumed, seat->assumed_bit) && !FRAME_HAS(by_seat.assumed, seat->assumed_bit));
}
END_TEST

START_TEST(cautions_say_what_to_mind) {
    frame_rafter_in in = rafter(100, 1, 3.5);
    in.seat_in = 3.5;
    frame_rafter_out out = solve(&in);
    ck_assert(FRAME_HAS(out.cautions, FRAME_RAFTER_CAUTION_NOTCH));
    in.depth_in = 11.25;
    out = solve(&in);
    ck_assert(!FRAME_HAS(out.cautions, FRAME_RAFTER_CAUTION_NOTCH));
    ck_assert(!FRAME_HAS(out.cautions, FRAME_RAFTER_CAUTION_SLOPE));
    in.slope = 2;
    in.seat_in = 1;
    out = solve(&in);
    ck_assert(FRAME_HAS(out.cautions, FRAME_RAFTER_CAUTION_SLOPE));
    ck_assert(FRAME_HAS(out.cautions, FRAME_RAFTER_CAUTION_BEARING));
    in.slope = 0.2;
    out = solve(&in);
    ck_assert(FRAME_HAS(out.cautions, FRAME_RAFTER_CAUTION_LOW));
}
END_TEST

static void refused(const frame_rafter_in *in, frame_status status, const char *field) {
    frame_rafter_out out, before;
    memset(&out, 7, sizeof out);
    before = out;
    ck_assert_int_eq(frame_rafter(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_mem_eq(&out, &before, sizeof out);
}

START_TEST(what_cannot_be_is_refused) {
    frame_rafter_in in = rafter(100, 0.5, FRAME_NOT_GIVEN);
    refused(&in, FRAME_REQUIRED, "depth_in");
    in.depth_in = 5.5;
    in.slope = 2.01;
    refused(&in, FRAME_OUT_OF_RANGE, "slope");
    in.slope = 0;
    refused(&in, FRAME_OUT_OF_RANGE, "slope");
    in.slope = 1;
    in.seat_in = 9;
    refused(&in, FRAME_IMPOSSIBLE, "seat_in");
    in.seat_in = FRAME_NOT_GIVEN;
    in.height_above_plate_in = 8;
    refused(&in, FRAME_IMPOSSIBLE, "height_above_plate_in");
    in.seat_in = 2;
    refused(&in, FRAME_CONFLICT, "height_above_plate_in");
    in.height_above_plate_in = FRAME_NOT_GIVEN;
    in.ridge_thickness_in = 1.5;
    in.ledger_thickness_in = 1.5;
    refused(&in, FRAME_CONFLICT, "ledger_thickness_in");
    in.ledger_thickness_in = 0;
    in.ridge_thickness_in = 24;
    in.run_in = 12;
    refused(&in, FRAME_IMPOSSIBLE, "run_in");
    in.run_in = 100;
    in.tail = FRAME_RAFTER_TAIL_PLUMB_AND_LEVEL;
    refused(&in, FRAME_REQUIRED, "fascia_depth_in");
    in.size = FRAME_SIZE(2, 10);
    refused(&in, FRAME_CONFLICT, "depth_in");
}
END_TEST

/* Every formula of the working, evaluated again from its text, gives its value. */
START_TEST(the_working_re_evaluates) {
    frame_working *working;
    frame_text *problems;
    frame_rafter_in in = rafter(75.5, 7.0 / 12, 5.5);
    frame_rafter_out out;
    in.ridge_thickness_in = 1.5;
    in.overhang_in = 14;
    ck_assert_int_eq(frame_working_new(&working), FRAME_OK);
    ck_assert_int_eq(frame_text_new(&problems), FRAME_OK);
    ck_assert_int_eq(frame_rafter(&in, &out, working), FRAME_OK);
    ck_assert_msg(frame_working_check(working, problems) == FRAME_OK, "%s", frame_text_chars(problems));
    ck_assert_uint_gt(frame_working_step_count(working), 20);
    frame_text_free(problems);
    frame_working_free(working);
}
END_TEST

/* Over a ridge beam the rafter sits on its top and touches its side, and shares no wood with it. */
START_TEST(over_a_ridge_beam) {
    for (int i = 0; i < 20; i++) {
        frame_rafter_in in;
        frame_rafter_out out;
        frame_stick_in beam_in;
        frame_stick *stick, *beam;
        frame_stick_fit_out fit;
        frame_rafter_in_init(&in), frame_stick_in_init(&beam_in);
        in.run_in = 140 + i, in.slope = 0.2 + 0.04 * i, in.depth_in = 9.25, in.ridge_seat_in = 1.5 + i % 3;
        ck_assert_msg(frame_rafter(&in, &out, NULL) == FRAME_OK, "%s", frame_error_text());
        ck_assert_int_eq(frame_rafter_stick(&in, &stick), FRAME_OK);
        beam_in.thickness_in = 2 * in.ridge_seat_in, beam_in.depth_in = 11.25, beam_in.axis_at = FRAME_STICK_AXIS_TOP;
        beam_in.start_x_in = beam_in.end_x_in = in.run_in, beam_in.start_y_in = -20, beam_in.end_y_in = 20;
        beam_in.start_z_in = beam_in.end_z_in = out.beam_top_in;
        ck_assert_int_eq(frame_stick_new(&beam_in, &beam), FRAME_OK);
        ck_assert_int_eq(frame_stick_fit(stick, beam, &fit), FRAME_OK);
        ck_assert_double_eq_tol(fit.overlap_in3, 0, 1e-9);
        ck_assert_double_eq_tol(fit.contact_in2, 1.5 * (in.ridge_seat_in + out.ridge_heel_in), 1e-7);
        ck_assert_double_eq_tol(out.ridge_height_in - out.beam_top_in, out.plumb_depth_in, 1e-9);
        frame_stick_free(stick), frame_stick_free(beam);
        in.ridge_thickness_in = 1.5;
        ck_assert_int_eq(frame_rafter(&in, &out, NULL), FRAME_CONFLICT);
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("rafter");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, over_a_ridge_beam);
    tcase_add_test(tests, the_squares_figure);
    tcase_add_test(tests, stepping_off_reaches_the_plumb_cut);
    tcase_add_test(tests, the_kernel_agrees);
    tcase_add_test(tests, seat_and_height_above_plate);
    tcase_add_test(tests, cautions_say_what_to_mind);
    tcase_add_test(tests, what_cannot_be_is_refused);
    tcase_add_test(tests, the_working_re_evaluates);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
