/* Bearing across the grain, on end grain, between; the area factor; LRFD; refusals. */
#include "lumber_names.h"

static frame_bearing_check_in seat(double angle_deg) {
    frame_bearing_check_in in;
    frame_bearing_check_in_init(&in);
    in.size = FRAME_SIZE(2, 8), in.species = species("SPF"), in.grade = grade("No.2");
    in.load_lb = 900, in.length_in = 3.5, in.angle_deg = angle_deg;
    return in;
}

static frame_bearing_check_out run(const frame_bearing_check_in *in) {
    frame_bearing_check_out out;
    frame_working *working;
    ck_assert(!frame_working_new(&working));
    ck_assert_msg(!frame_bearing_check(in, &out, working), "%s", frame_error_text());
    working_is_sound(working);
    frame_working_free(working);
    return out;
}

/* SPF No.2 2x8: F_c-perp 425, F_c 1,150 x 1.05. */
START_TEST(angles) {
    const double star = 1150 * 1.05 * 1.15, perp = 425;
    for (int deg = 0; deg <= 90; deg += 15) {
        frame_bearing_check_in in = seat(deg);
        in.load_duration = FRAME_DURATION_TWO_MONTHS;
        const frame_bearing_check_out out = run(&in);
        const double a = deg * acos(-1) / 180;
        ck_assert_double_eq_tol(out.allowed_psi, star * perp / (star * pow(sin(a), 2) + perp * pow(cos(a), 2)), 1e-9);
        ck_assert_double_eq_tol(out.ratio, 900 / (1.5 * 3.5) / out.allowed_psi, 1e-12);
        ck_assert_double_eq_tol(out.capacity_lb * out.ratio, 900, 1e-9);
    }
    frame_bearing_check_in flat = seat(90);
    ck_assert_double_eq_tol(run(&flat).allowed_psi, 425, 1e-9);
}
END_TEST

START_TEST(area_factor_and_plies) {
    frame_bearing_check_in in = seat(90);
    in.at_end = 0, in.plies = 2;
    const frame_bearing_check_out out = run(&in);
    ck_assert_double_eq_tol(out.bearing_area_factor, 3.875 / 3.5, 1e-12);
    ck_assert_double_eq_tol(out.ratio, 900 / (3.0 * 3.5) / (425 * 3.875 / 3.5), 1e-12);
    in.length_in = 6;
    ck_assert_double_eq(run(&in).bearing_area_factor, 1);
}
END_TEST

START_TEST(strength_design_and_values) {
    frame_bearing_check_in in = seat(90);
    frame_bearing_check_out out;
    in.method = FRAME_METHOD_LRFD;
    ck_assert_int_eq(frame_bearing_check(&in, &out, NULL), FRAME_REQUIRED);
    in.time_effect_factor = 0.8;
    ck_assert_double_eq_tol(run(&in).allowed_psi, 425 * 1.67 * 0.9, 1e-9);
    in = seat(0);
    in.species = in.grade = FRAME_NOT_GIVEN_INT, in.fc_psi = 1000;
    ck_assert_int_eq(frame_bearing_check(&in, &out, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "fc_perp_psi");
    in.fc_perp_psi = 500;
    ck_assert_double_eq_tol(run(&in).allowed_psi, 1000, 1e-9);
    in.load_lb = 4500; /* 857 psi of 1,000 on end grain */
    ck_assert(run(&in).cautions >> FRAME_BEARING_CAUTION_END_PLATE & 1);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("bearing_check");
    TCase *all = tcase_create("all");
    tcase_add_test(all, angles);
    tcase_add_test(all, area_factor_and_plies);
    tcase_add_test(all, strength_design_and_values);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
