/* One fastener pulled out: the part of it that holds, and the factors. The printed tables are checked in
 * tests/verification. */
#include <check.h>
#include <frame/joint.h>
#include <math.h>

#define CLOSE(a, b) ck_assert_double_eq_tol((a) / (b), 1, 1e-9)

static frame_dowel_withdrawal_in fastener_of(frame_dowel_kind kind, const char *size) {
    frame_dowel_withdrawal_in in;
    frame_dowel_withdrawal_in_init(&in);
    in.kind = kind, in.size = size, in.specific_gravity = 0.5;
    return in;
}

static frame_dowel_withdrawal_out withdrawal_of(const frame_dowel_withdrawal_in *in) {
    frame_dowel_withdrawal_out out;
    ck_assert_msg(!frame_dowel_withdrawal(in, &out, NULL), "%s", frame_error_text());
    return out;
}

static void refused(const frame_dowel_withdrawal_in *in, frame_status status, const char *field) {
    frame_dowel_withdrawal_out out = {.w_lb = 4.25};
    ck_assert_int_eq(frame_dowel_withdrawal(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_double_eq(out.w_lb, 4.25);
}

START_TEST(an_inch_of_each) {
    frame_dowel_withdrawal_in in = fastener_of(FRAME_DOWEL_BOX_NAIL, "10d");
    CLOSE(withdrawal_of(&in).w_lb_per_in, 1380 * pow(0.5, 2.5) * 0.128);
    ck_assert_int_eq(withdrawal_of(&in).known, FRAME_KNOWN_SECONDARY);
    in = fastener_of(FRAME_DOWEL_RING_SHANK_NAIL, "0.148x3");
    CLOSE(withdrawal_of(&in).w_lb_per_in, 1800 * 0.25 * 0.148);
    ck_assert_int_eq(withdrawal_of(&in).known, FRAME_KNOWN_MEMORY);
    ck_assert(FRAME_HAS(withdrawal_of(&in).cautions, FRAME_DOWEL_WITHDRAWAL_CAUTION_MEMORY));
    in = fastener_of(FRAME_DOWEL_WOOD_SCREW, "No.10");
    in.penetration_in = 1;
    CLOSE(withdrawal_of(&in).w_lb_per_in, 2850 * 0.25 * 0.19);
    in = fastener_of(FRAME_DOWEL_LAG_SCREW, "1/2");
    in.penetration_in = 2;
    const frame_dowel_withdrawal_out lag = withdrawal_of(&in);
    CLOSE(lag.w_lb_per_in, 1800 * pow(0.5, 1.5) * pow(0.5, 0.75));
    CLOSE(lag.w_lb, 2 * lag.w_lb_per_in);
    ck_assert_int_eq(lag.known, FRAME_KNOWN_SECONDARY); /* its dimensions */
}
END_TEST

/* The thread is at the far end: what of it lies before the member does not hold. */
START_TEST(thread_in_the_member) {
    frame_dowel_withdrawal_in in = fastener_of(FRAME_DOWEL_LAG_SCREW, "3/8");
    in.length_in = 4, in.side_thickness_in = 0.5; /* T 2.5, so thread from 1.5 on */
    CLOSE(withdrawal_of(&in).penetration_in, 2.5 - 0.21875);
    in.side_thickness_in = 2;
    CLOSE(withdrawal_of(&in).penetration_in, 2 - 0.21875);
    in.main_thickness_in = 1.5;
    const frame_dowel_withdrawal_out through = withdrawal_of(&in);
    CLOSE(through.penetration_in, 1.5);
    CLOSE(through.point_out_in, 0.5);
    in.main_thickness_in = 1.9;
    CLOSE(withdrawal_of(&in).penetration_in, 1.9 - 0.11875);
    in.side_thickness_in = 3.9;
    refused(&in, FRAME_OUTSIDE_SCOPE, "penetration_in");
    in = fastener_of(FRAME_DOWEL_WOOD_SCREW, "No.12");
    in.length_in = 3, in.side_thickness_in = 0.75;
    CLOSE(withdrawal_of(&in).penetration_in, 2);
    ck_assert(FRAME_HAS(withdrawal_of(&in).cautions, FRAME_DOWEL_WITHDRAWAL_CAUTION_THREAD));
    in.thread_in = 1.5;
    CLOSE(withdrawal_of(&in).penetration_in, 1.5);
    in = fastener_of(FRAME_DOWEL_RING_SHANK_NAIL, "0.148x3");
    in.side_thickness_in = 0.5;
    CLOSE(withdrawal_of(&in).penetration_in, 2.25);
    in.size = NULL, in.diameter_in = 0.148, in.length_in = 3;
    refused(&in, FRAME_REQUIRED, "thread_in");
}
END_TEST

/* The lengths of thread that NDS table L2 prints. */
START_TEST(lag_threads) {
    static const double lengths[][2] = {{1, 0.75}, {1.5, 1.25}, {2, 1.5}, {2.5, 1.75}, {3, 2},
                                        {4, 2.5},  {6, 3.5},    {9, 5},   {11, 6},     {12, 6}};
    for (size_t i = 0; i < sizeof lengths / sizeof *lengths; i++) {
        frame_dowel_withdrawal_in in = fastener_of(FRAME_DOWEL_LAG_SCREW, "1/4");
        in.length_in = lengths[i][0];
        CLOSE(withdrawal_of(&in).penetration_in, lengths[i][1] - 0.15625);
    }
}
END_TEST

START_TEST(adjustment) {
    frame_dowel_withdrawal_in in = fastener_of(FRAME_DOWEL_COMMON_NAIL, "16d");
    in.penetration_in = 2, in.load_duration_factor = 1.6, in.service = FRAME_SERVICE_WET, in.temperature_f = 120;
    frame_dowel_withdrawal_out out = withdrawal_of(&in);
    CLOSE(out.adjusted_lb, out.w_lb * 1.6 * 0.25 * 0.7);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_WITHDRAWAL_CAUTION_DRYING));
    in.made = FRAME_SERVICE_WET;
    ck_assert_double_eq(withdrawal_of(&in).wet_factor, 1);
    in.service = FRAME_SERVICE_DRY;
    ck_assert_double_eq(withdrawal_of(&in).wet_factor, 0.25);
    in.toe_nail = 1;
    out = withdrawal_of(&in);
    CLOSE(out.adjusted_lb, out.w_lb * 1.6 * 0.67 * 0.8);
    in = fastener_of(FRAME_DOWEL_LAG_SCREW, "1/2");
    in.penetration_in = 3, in.end_grain = 1, in.service = FRAME_SERVICE_WET;
    out = withdrawal_of(&in);
    CLOSE(out.adjusted_lb, out.w_lb * 0.75 * 0.7);
}
END_TEST

START_TEST(toe_nails) {
    frame_dowel_withdrawal_in in = fastener_of(FRAME_DOWEL_COMMON_NAIL, "8d");
    in.toe_nail = 1;
    CLOSE(withdrawal_of(&in).penetration_in, 2.5 * sqrt(0.75) - 2.5 / 3);
}
END_TEST

START_TEST(what_holds_nothing) {
    frame_dowel_withdrawal_in in = fastener_of(FRAME_DOWEL_COMMON_NAIL, "16d");
    in.end_grain = 1;
    refused(&in, FRAME_OUTSIDE_SCOPE, "end_grain");
    in.end_grain = 0, in.side_thickness_in = 3.5;
    refused(&in, FRAME_OUTSIDE_SCOPE, "penetration_in");
    in = fastener_of(FRAME_DOWEL_BOLT, "1/2");
    refused(&in, FRAME_OUTSIDE_SCOPE, "kind");
    in = fastener_of(FRAME_DOWEL_OTHER_DRIVEN, NULL);
    refused(&in, FRAME_OUTSIDE_SCOPE, "kind");
    in = fastener_of(FRAME_DOWEL_WOOD_SCREW, "No.8");
    refused(&in, FRAME_REQUIRED, "penetration_in");
    in.toe_nail = 1;
    refused(&in, FRAME_CONFLICT, "toe_nail");
    in.toe_nail = 0, in.specific_gravity = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "species");
}
END_TEST

START_TEST(more_never_holds_less) {
    for (int kind = FRAME_DOWEL_COMMON_NAIL; kind <= FRAME_DOWEL_LAG_SCREW; kind++) {
        double before = 0;
        for (double length = 1; length < 9; length += 0.05) {
            frame_dowel_withdrawal_in in = fastener_of(kind, NULL);
            in.diameter_in = kind == FRAME_DOWEL_LAG_SCREW ? 0.25 : 0.19, in.length_in = length;
            if (kind == FRAME_DOWEL_RING_SHANK_NAIL) in.thread_in = 2.25 < length ? 2.25 : length;
            const double holds = withdrawal_of(&in).w_lb;
            ck_assert_double_ge(holds, before - 1e-9);
            before = holds;
        }
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("dowel_withdrawal");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, an_inch_of_each);
    tcase_add_test(tests, thread_in_the_member);
    tcase_add_test(tests, lag_threads);
    tcase_add_test(tests, adjustment);
    tcase_add_test(tests, toe_nails);
    tcase_add_test(tests, what_holds_nothing);
    tcase_add_test(tests, more_never_holds_less);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
