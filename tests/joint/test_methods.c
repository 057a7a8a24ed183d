/* Allowable stress design and load and resistance factor design; drift pins; the yield value behind a design value. */
#include <frame/working.h>
#include <string.h>

#include "lateral.h"

#define CLOSE(a, b) ck_assert_double_eq_tol((a) / (b), 1, 1e-12)

static frame_dowel_withdrawal_in pulled(void) {
    frame_dowel_withdrawal_in in;
    frame_dowel_withdrawal_in_init(&in);
    in.kind = FRAME_DOWEL_LAG_SCREW, in.size = "1/2", in.specific_gravity = 0.5, in.penetration_in = 2;
    return in;
}

/* K_F phi is 2.16 for connections (NDS tables N1 and N2): at C_D 1.6 and lambda 1, 1.35 times the allowable value. */
START_TEST(lrfd_beside_asd) {
    frame_dowel_lateral_in in = nail_of(0.162);
    in.load_duration_factor = 1.6;
    const frame_dowel_lateral_out asd = lateral_of(&in);
    in.load_duration_factor = FRAME_NOT_GIVEN, in.method = FRAME_METHOD_LRFD, in.time_effect_factor = 1;
    const frame_dowel_lateral_out lrfd = lateral_of(&in);
    CLOSE(lrfd.adjusted_lb, asd.adjusted_lb * 3.32 * 0.65 / 1.6);
    ck_assert_double_eq(lrfd.z_lb, asd.z_lb);
    ck_assert_double_eq(asd.format_factor, 1);
    ck_assert_double_eq(lrfd.format_factor, 3.32);
    ck_assert_double_eq(lrfd.resistance_factor, 0.65);
    ck_assert(FRAME_HAS(lrfd.cautions, FRAME_DOWEL_LATERAL_CAUTION_LRFD));
    ck_assert_int_eq(lrfd.known, FRAME_KNOWN_MEMORY);
    frame_dowel_withdrawal_in pull = pulled();
    frame_dowel_withdrawal_out one, other;
    ck_assert(!frame_dowel_withdrawal(&pull, &one, NULL));
    pull.method = FRAME_METHOD_LRFD, pull.time_effect_factor = 0.8;
    ck_assert(!frame_dowel_withdrawal(&pull, &other, NULL));
    CLOSE(other.adjusted_lb, one.adjusted_lb * 3.32 * 0.65 * 0.8);
    ck_assert(FRAME_HAS(other.cautions, FRAME_DOWEL_WITHDRAWAL_CAUTION_LRFD));
}
END_TEST

/* Neither method borrows the other's factor, and none is guessed. */
START_TEST(methods_do_not_mix) {
    frame_dowel_lateral_in in = nail_of(0.162);
    in.method = FRAME_METHOD_LRFD;
    refused(&in, FRAME_REQUIRED, "time_effect_factor");
    in.time_effect_factor = 0.8, in.load_duration_factor = 1.15;
    refused(&in, FRAME_CONFLICT, "load_duration_factor");
    in.load_duration_factor = FRAME_NOT_GIVEN, in.time_effect_factor = 1.25;
    refused(&in, FRAME_OUT_OF_RANGE, "time_effect_factor");
    in.method = FRAME_METHOD_ASD, in.time_effect_factor = 0.8;
    refused(&in, FRAME_CONFLICT, "time_effect_factor");
    frame_dowel_withdrawal_in pull = pulled();
    frame_dowel_withdrawal_out out;
    pull.method = FRAME_METHOD_LRFD;
    ck_assert_int_eq(frame_dowel_withdrawal(&pull, &out, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "time_effect_factor");
}
END_TEST

static frame_dowel_lateral_in pin_of(double diameter_in) {
    frame_dowel_lateral_in in = nail_of(diameter_in);
    in.kind = FRAME_DOWEL_DRIFT_PIN;
    in.main_thickness_in = 5.5, in.side_angle_deg = 0, in.main_angle_deg = 90;
    return in;
}

START_TEST(drift_pins) {
    frame_dowel_lateral_in in = pin_of(0.5), bolt = in;
    bolt.kind = FRAME_DOWEL_BOLT;
    const frame_dowel_lateral_out pin = lateral_of(&in), of_bolt = lateral_of(&bolt);
    ck_assert_double_eq(pin.z_lb, of_bolt.z_lb);
    CLOSE(pin.adjusted_lb, 0.75 * of_bolt.adjusted_lb);
    ck_assert_double_eq(pin.drift_pin_factor, 0.75);
    ck_assert_double_eq(of_bolt.drift_pin_factor, 1);
    in.length_in = 5;
    ck_assert_double_eq(lateral_of(&in).main_bearing_in, 3.5); /* blunt: no tip is left out */
    in.length_in = 1.5;
    refused(&in, FRAME_OUTSIDE_SCOPE, "penetration_in");
    in.length_in = 5, in.size = "1/2", in.diameter_in = FRAME_NOT_GIVEN;
    refused(&in, FRAME_CONFLICT, "size");
    in = pin_of(0.5), in.short_penetration = FRAME_SHORT_BY_TABLE;
    refused(&in, FRAME_CONFLICT, "short_penetration");
    frame_dowel_withdrawal_in pull = pulled();
    frame_dowel_withdrawal_out out;
    pull.kind = FRAME_DOWEL_DRIFT_PIN, pull.size = NULL, pull.diameter_in = 0.5;
    ck_assert_int_eq(frame_dowel_withdrawal(&pull, &out, NULL), FRAME_OUTSIDE_SCOPE);
}
END_TEST

/* The yield value is free of R_d: the same whichever K_theta divided it. */
START_TEST(yield_values) {
    frame_dowel_lateral_in in = bolt_of("1/2", 1.5, 1.5);
    in.side_bearing_psi = in.main_bearing_psi = 4800;
    in.side_specific_gravity = in.main_specific_gravity = FRAME_NOT_GIVEN;
    const frame_dowel_lateral_out along = lateral_of(&in);
    in.main_angle_deg = 90;
    const frame_dowel_lateral_out across = lateral_of(&in);
    CLOSE(along.yield_lb, 3.6 * along.z_ii_lb); /* mode II: 414 lb, TR 12 example 3.1 */
    CLOSE(along.yield_lb, across.yield_lb);
    const frame_dowel_lateral_in nail = nail_of(0.162);
    const frame_dowel_lateral_out out = lateral_of(&nail);
    CLOSE(out.yield_lb, 2.2 * out.z_lb);
}
END_TEST

START_TEST(workings) {
    frame_working *working;
    frame_text *text;
    ck_assert(!frame_working_new(&working) && !frame_text_new(&text));
    frame_dowel_lateral_out out;
    frame_dowel_lateral_in in = pin_of(0.75);
    in.method = FRAME_METHOD_LRFD, in.time_effect_factor = 0.6;
    ck_assert(!frame_dowel_lateral(&in, &out, working));
    ck_assert_msg(!frame_working_check(working, text), "%s", frame_text_chars(text));
    frame_dowel_withdrawal_in pull = pulled();
    frame_dowel_withdrawal_out pulled_out;
    pull.method = FRAME_METHOD_LRFD, pull.time_effect_factor = 0.8;
    ck_assert(!frame_dowel_withdrawal(&pull, &pulled_out, working));
    ck_assert_msg(!frame_working_check(working, text), "%s", frame_text_chars(text));
    frame_text_free(text);
    frame_working_free(working);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("methods");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, lrfd_beside_asd);
    tcase_add_test(tests, methods_do_not_mix);
    tcase_add_test(tests, drift_pins);
    tcase_add_test(tests, yield_values);
    tcase_add_test(tests, workings);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
