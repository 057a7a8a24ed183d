/* Every recorded formula of the room, worked out anew from its text, comes to its value: over all kinds, routes and
 * materials. A refused call leaves nothing behind. */
#include <frame/working.h>
#include <string.h>

#include "lateral.h"
#include "text/writer.h"

static frame_working *working;
static frame_text *text;

static void begin(void) {
    ck_assert(!frame_working_new(&working));
    ck_assert(!frame_text_new(&text));
}
static void end(void) {
    frame_working_free(working);
    frame_text_free(text);
}

/* That the working is sound, and that the answer is the same without one. */
static double checked(const frame_dowel_lateral_in *in) {
    frame_dowel_lateral_out with, without;
    frame_working_clear(working);
    frame_text_clear(text);
    ck_assert_msg(!frame_dowel_lateral(in, &with, working), "%s", frame_error_text());
    ck_assert_msg(!frame_working_check(working, text), "%s", frame_text_chars(text));
    ck_assert(!frame_dowel_lateral(in, &without, NULL));
    ck_assert_mem_eq(&with, &without, sizeof with);
    return with.adjusted_lb;
}

/* The value that the working came to last under a symbol. */
static double recorded(const char *symbol) {
    double value = FRAME_NOT_GIVEN;
    for (size_t i = 0; i < frame_working_step_count(working); i++) {
        frame_working_step step;
        ck_assert(!frame_working_step_at(working, i, &step));
        if (!strcmp(step.symbol, symbol)) value = step.value;
    }
    return value;
}

START_TEST(driven_fasteners) {
    for (int kind = FRAME_DOWEL_COMMON_NAIL; kind <= FRAME_DOWEL_OTHER_DRIVEN; kind++)
        for (int route = FRAME_SHORT_BY_EQUATIONS; route <= FRAME_SHORT_BY_TABLE; route++)
            for (int planes = 1; planes <= (route == FRAME_SHORT_BY_EQUATIONS ? 2 : 1); planes++)
                for (double length = 3; length < 8; length += 0.4) {
                    if (kind == FRAME_DOWEL_BOLT) continue;
                    frame_dowel_lateral_in in = nail_of(kind == FRAME_DOWEL_LAG_SCREW ? 0.25 : 0.19);
                    in.kind = kind, in.short_penetration = route, in.shear_planes = planes;
                    in.side_thickness_in = 0.5, in.main_thickness_in = planes == 2 ? 1 : 2;
                    in.second_side_thickness_in = 1.5;
                    in.length_in = length, in.side_angle_deg = 35, in.main_angle_deg = 90;
                    if (kind == FRAME_DOWEL_OTHER_DRIVEN) in.bending_yield_psi = 150000;
                    ck_assert_double_eq(checked(&in), recorded("Z'"));
                }
}
END_TEST

START_TEST(bolts) {
    static const char *const sizes[] = {"1/4", "1/2", "1"};
    for (size_t i = 0; i < 3; i++)
        for (int planes = 1; planes <= 2; planes++)
            for (int gap = 0; gap <= 1; gap++)
                for (int threads = 0; threads <= 1; threads++)
                    for (double angle = 0; angle <= 90; angle += 45) {
                        frame_dowel_lateral_in in = bolt_of(sizes[i], 1.5, 3.5);
                        in.shear_planes = planes, in.gap_in = gap * 0.25, in.threads_in_plane = threads;
                        in.main_angle_deg = angle, in.side_angle_deg = 90 - angle;
                        in.bearing_rounding = gap ? FRAME_BEARING_TO_50 : FRAME_BEARING_EXACT;
                        ck_assert_double_eq(checked(&in), recorded("Z'"));
                    }
}
END_TEST

START_TEST(materials) {
    for (int material = FRAME_JOINT_STEEL; material <= FRAME_JOINT_OSB; material++) {
        frame_dowel_lateral_in in = nail_of(0.148);
        in.side_material = material, in.side_specific_gravity = FRAME_NOT_GIVEN, in.side_thickness_in = 0.25;
        in.toe_nail = 0, in.diaphragm = 1, in.service = FRAME_SERVICE_WET;
        ck_assert_double_eq(checked(&in), recorded("Z'"));
    }
    frame_dowel_lateral_in in = nail_of(FRAME_NOT_GIVEN);
    in.size = "16d", in.toe_nail = 1, in.side_thickness_in = FRAME_NOT_GIVEN;
    checked(&in);
    in = nail_of(FRAME_NOT_GIVEN);
    in.size = "10d", in.shear_planes = 2, in.side_thickness_in = 0.5, in.main_thickness_in = 1.5, in.clinched = 1;
    checked(&in);
}
END_TEST

START_TEST(withdrawal) {
    for (int kind = FRAME_DOWEL_COMMON_NAIL; kind <= FRAME_DOWEL_LAG_SCREW; kind++)
        for (int nailed = 0; nailed <= (kind <= FRAME_DOWEL_RING_SHANK_NAIL); nailed++)
            for (double length = 2.5; length < 6; length += 0.5) {
                frame_dowel_withdrawal_in in;
                frame_dowel_withdrawal_out out;
                frame_dowel_withdrawal_in_init(&in);
                in.kind = kind, in.diameter_in = kind == FRAME_DOWEL_LAG_SCREW ? 0.25 : 0.19, in.length_in = length;
                in.specific_gravity = 0.43, in.side_thickness_in = 0.75, in.main_thickness_in = 3, in.toe_nail = nailed;
                if (kind == FRAME_DOWEL_RING_SHANK_NAIL) in.thread_in = 2;
                frame_working_clear(working);
                ck_assert_msg(!frame_dowel_withdrawal(&in, &out, working), "%s", frame_error_text());
                ck_assert_msg(!frame_working_check(working, text), "%s", frame_text_chars(text));
                ck_assert_double_eq(out.adjusted_lb, recorded("W'"));
            }
}
END_TEST

START_TEST(sums) {
    frame_fastener_group groups[3];
    for (int i = 0; i < 3; i++) {
        frame_fastener_group_init(&groups[i]);
        groups[i].kind = i == 2 ? FRAME_DOWEL_LAG_SCREW : FRAME_DOWEL_COMMON_NAIL;
        groups[i].size = i == 2 ? "1/2" : "16d", groups[i].count = i + 2, groups[i].each_lb = 100 + i;
    }
    frame_fastener_sum_in in;
    frame_fastener_sum_out out;
    frame_fastener_sum_in_init(&in);
    in.groups = groups, in.group_count = 3, in.demand_plf = 300, in.spacing_in = 16;
    ck_assert_int_eq(frame_fastener_sum(&in, &out, working), FRAME_REFUSED);
    ck_assert_uint_eq(frame_working_step_count(working), 0);
    in.unlike = FRAME_UNLIKE_STRONGEST;
    ck_assert_msg(!frame_fastener_sum(&in, &out, working), "%s", frame_error_text());
    ck_assert_msg(!frame_working_check(working, text), "%s", frame_text_chars(text));
    ck_assert_double_eq(out.capacity_lb, 2 * 100 + 3 * 101);
    ck_assert_double_eq(out.ratio, recorded("ratio"));
}
END_TEST

START_TEST(a_refusal_leaves_nothing) {
    frame_dowel_lateral_in in = nail_of(0.162);
    frame_dowel_lateral_out out;
    in.penetration_in = 0.9;
    ck_assert_int_eq(frame_dowel_lateral(&in, &out, working), FRAME_OUTSIDE_SCOPE);
    ck_assert_uint_eq(frame_working_step_count(working), 0);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("joint workings");
    TCase *tests = tcase_create("all");
    tcase_add_checked_fixture(tests, begin, end);
    tcase_add_test(tests, driven_fasteners);
    tcase_add_test(tests, bolts);
    tcase_add_test(tests, materials);
    tcase_add_test(tests, withdrawal);
    tcase_add_test(tests, sums);
    tcase_add_test(tests, a_refusal_leaves_nothing);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
