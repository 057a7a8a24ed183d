/* roof_snow: published examples at their printed precision, closed forms, kinks, what is refused. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/load.h>
#include <frame/text.h>
#include <frame/working.h>

#define CLOSE(value, wanted) ck_assert_double_eq_tol(value, wanted, 1e-11 * (fabs((double)(wanted)) + 1e-3))

static void printed(double value, double figure, double last_place, const char *what) {
    ck_assert_msg(fabs(value - figure) <= 0.501 * last_place, "%s: %.12g, printed %.12g", what, value, figure);
}

static frame_roof_snow_in roof(double ground, double slope, double run_ft) {
    frame_roof_snow_in in;
    frame_roof_snow_in_init(&in);
    in.basis = FRAME_SNOW_50_YEAR;
    in.edition = FRAME_SNOW_ASCE_7_10;
    in.roof = FRAME_SNOW_GABLE;
    in.ground_snow_psf = ground;
    in.slope = slope;
    in.run_in = 12 * run_ft;
    in.exposure_factor = in.thermal_factor = in.importance_factor = 1;
    return in;
}

static frame_roof_snow_out run(const frame_roof_snow_in *in) {
    frame_roof_snow_out out;
    ck_assert_msg(!frame_roof_snow(in, &out, NULL), "%s", frame_error_text());
    return out;
}

static void refused(const frame_roof_snow_in *in, frame_status status, const char *field) {
    frame_roof_snow_out out;
    ck_assert_int_eq(frame_roof_snow(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_str_ne(frame_error_valid(), "");
}

/* O'Rourke, Snow Loads: Guide to the Snow Load Provisions of ASCE 7-10, example 4-3. Read. */
START_TEST(low_slope_roof) {
    frame_roof_snow_in in = roof(30, 0.5 / 12, 100);
    in.roof = FRAME_SNOW_SHED;
    in.thermal_factor = 1.2;
    const frame_roof_snow_out out = run(&in);
    printed(out.roof_slope_deg, 2.39, 0.01, "slope");
    printed(out.balanced_psf, 25.2, 0.1, "p_s");
    printed(out.minimum_psf, 20, 1, "minimum");
    ck_assert_double_eq(out.rain_psf, 0); /* as the guide says: p_g is over 20 */
    CLOSE(out.uniform_psf, 25.2);
    ck_assert_double_eq(out.windward_psf, FRAME_NOT_GIVEN);
}
END_TEST

/* The same guide, example 6-2. Read. The guide carries p_s as 25, which C_t of 25/21 gives, and cuts h_d to 3.97. */
START_TEST(wide_gable) {
    frame_roof_snow_in in = roof(30, 1.0 / 24, 130);
    in.thermal_factor = 25.0 / 21;
    const frame_roof_snow_out out = run(&in);
    printed(out.windward_psf, 7.5, 0.1, "windward");
    ck_assert(fabs(out.ridge_drift_in / 12 - 3.97) > 0.005);
    printed(out.ridge_drift_in / 12, 3.978, 0.001, "h_d");
    printed(out.density_pcf, 17.9, 0.1, "density");
    printed(out.surcharge_psf, 14.5, 0.1, "surcharge");
    CLOSE(out.surcharge_width_in, 12 * 8 * out.ridge_drift_in / 12 * sqrt(24) / 3);
}
END_TEST

/* Published test values of ASCE 7-05 equations: the minimum governs at 15, 20 and 25 psf, not at 30. Secondary. */
START_TEST(minimum_load) {
    const double ground[] = {15, 20, 25, 30, 30}, factor[] = {1, 1, 1, 1, 1.15}, loads[] = {15, 20, 20, 21, 24.15},
                 places[] = {1, 1, 1, 1, 0.01};
    for (int i = 0; i < 5; i++) {
        frame_roof_snow_in in = roof(ground[i], 0.05, 30);
        in.roof = FRAME_SNOW_FLAT;
        in.importance_factor = factor[i];
        const frame_roof_snow_out out = run(&in);
        printed(fmax(out.balanced_psf, out.minimum_psf), loads[i], places[i], "flat roof load");
    }
    frame_roof_snow_in in = roof(30, 0.05, 30);
    printed(run(&in).density_pcf, 17.9, 0.1, "density");
    in.ground_snow_psf = 1000;
    printed(run(&in).density_pcf, 30, 1, "density");
}
END_TEST

/* An engineer's posted calculation by ASCE 7-16. Read. It takes the whole 31 ft as h_c; 7.7 takes h_b off. */
START_TEST(drift_against_a_wall) {
    frame_roof_snow_in in = roof(20, 0.02, 35);
    in.edition = FRAME_SNOW_ASCE_7_16;
    in.roof = FRAME_SNOW_FLAT;
    in.exposure_factor = 0.9;
    in.thermal_factor = 1.2;
    in.step_height_in = 31 * 12;
    in.upper_length_in = 300 * 12;
    in.lower_length_in = 35 * 12;
    const frame_roof_snow_out out = run(&in);
    printed(out.flat_psf, 15.12, 0.01, "p_f");
    printed(out.density_pcf, 16.6, 0.1, "density");
    printed(out.balanced_depth_in / 12, 0.91, 0.01, "h_b");
    printed((out.clear_height_in + out.balanced_depth_in) / out.balanced_depth_in, 34.034, 0.001, "31 ft over h_b");
    printed(out.leeward_drift_in / 12, 5.237, 0.001, "leeward");
    printed(out.windward_drift_in / 12, 1.344, 0.001, "windward");
    printed(out.drift_width_in / 12, 20.947, 0.001, "width");
    CLOSE(out.drift_psf, out.leeward_drift_in / 12 * 16.6);
    ck_assert(!FRAME_HAS(out.not_checked, FRAME_SNOW_UNCHECKED_DRIFT));
}
END_TEST

/* An engineer's posted calculation by ASCE 7-10. Read. */
START_TEST(steep_gable) {
    frame_roof_snow_in in = roof(20, 5.0 / 12, 50);
    in.exposure_factor = 1.1;
    in.thermal_factor = 1.2;
    in.importance_factor = 0.8;
    const frame_roof_snow_out out = run(&in);
    printed(out.roof_slope_deg, 22.6, 0.1, "slope");
    printed(out.flat_psf, 14.8, 0.1, "p_f");
    printed(out.roof_slope_factor, 1, 0.01, "C_s");
    printed(out.balanced_psf, 14.8, 0.1, "p_s");
    printed(out.density_pcf, 16.6, 0.1, "density");
    printed(out.windward_psf, 4.4, 0.1, "windward");
    printed(out.leeward_psf, 14.8, 0.1, "leeward");
    printed(out.ridge_drift_in / 12, 2.21, 0.01, "h_d");
    printed(out.surcharge_psf, 23.7, 0.1, "surcharge");
    printed(out.surcharge_width_in / 12, 9.12, 0.01, "extent");
    in.edition = FRAME_SNOW_ASCE_7_16; /* from 2016 on the drift goes with the root of I_s */
    CLOSE(run(&in).ridge_drift_in, sqrt(0.8) * out.ridge_drift_in);
}
END_TEST

/* Trap 11: C_s alone is not enough. A narrow roof of simple rafters has full I p_g on one side and none on the other.
 */
START_TEST(narrow_roof_of_rafters) {
    frame_roof_snow_in in = roof(50, 6.0 / 12, 12);
    frame_roof_snow_out out = run(&in);
    CLOSE(out.leeward_psf, 50);
    ck_assert_double_eq(out.windward_psf, 0);
    ck_assert_double_eq(out.surcharge_psf, 0);
    CLOSE(out.greatest_psf, 50);
    ck_assert_double_lt(out.uniform_psf, 50);
    in.simple_rafters = 0; /* trusses: drifted as wide roofs are, with 20 ft at least */
    out = run(&in);
    CLOSE(out.windward_psf, 0.3 * out.balanced_psf);
    CLOSE(out.ridge_drift_in, 12 * (0.43 * cbrt(20) * pow(60, 0.25) - 1.5));
    in.slope = 7.01 / 12;
    ck_assert_double_eq(run(&in).leeward_psf, FRAME_NOT_GIVEN);
    in.slope = 0.49 / 12;
    ck_assert_double_eq(run(&in).leeward_psf, FRAME_NOT_GIVEN);
    in.slope = 0.5 / 12;
    ck_assert_double_ne(run(&in).leeward_psf, FRAME_NOT_GIVEN);
}
END_TEST

/* Snow stays up to a slope and is gone at 70 degrees; a slippery warm roof needs its insulation. */
START_TEST(slope_factors) {
    const double factors[] = {1.0, 1.1, 1.2}, full[] = {30, 37.5, 45}, slips[] = {5, 10, 15};
    for (int i = 0; i < 3; i++)
        for (int slippery = 0; slippery <= 1; slippery++) {
            const double from = slippery ? slips[i] : full[i];
            frame_roof_snow_in in = roof(40, tan(from * atan(1) / 45), 30);
            in.thermal_factor = factors[i];
            in.slippery = slippery;
            in.insulated = 1;
            CLOSE(run(&in).roof_slope_factor, 1);
            in.slope = tan((from + 70) / 2 * atan(1) / 45);
            CLOSE(run(&in).roof_slope_factor, 0.5);
            in.slope = 3;
            ck_assert_double_eq(run(&in).balanced_psf, 0);
        }
    frame_roof_snow_in in = roof(40, tan(20 * atan(1) / 45), 30);
    in.slippery = 1;
    CLOSE(run(&in).roof_slope_factor, 1);
    in.insulated = 1;
    CLOSE(run(&in).roof_slope_factor, 1 - 15.0 / 65);
}
END_TEST

START_TEST(rain_on_snow) {
    frame_roof_snow_in in = roof(20, 0.25 / 12, 100);
    frame_roof_snow_out out = run(&in);
    ck_assert_double_eq(out.rain_psf, 5);
    CLOSE(out.uniform_psf, fmax(14 + 5, 20));
    in.run_in = 12 * 50; /* W/50 is 1 degree, the slope 1.19 */
    ck_assert_double_eq(run(&in).rain_psf, 0);
    in.run_in = 12 * 100;
    in.ground_snow_psf = 21;
    ck_assert_double_eq(run(&in).rain_psf, 0);
    in.ground_snow_psf = 0;
    out = run(&in);
    ck_assert_double_eq(out.rain_psf, 0);
    ck_assert_double_eq(out.greatest_psf, 0);
}
END_TEST

/* A step lower than the drift: as high as the step, and wider; lower than a fifth of the snow: none. */
START_TEST(low_steps) {
    frame_roof_snow_in in = roof(50, 0.02, 40);
    in.roof = FRAME_SNOW_FLAT;
    in.upper_length_in = in.lower_length_in = 12 * 100;
    in.step_height_in = 12 * 4;
    frame_roof_snow_out out = run(&in);
    const double h_b = 35 / 20.5, h_c = 4 - h_b, h_d = 0.43 * cbrt(100) * pow(60, 0.25) - 1.5;
    CLOSE(out.drift_in, 12 * h_c);
    CLOSE(out.drift_width_in, 12 * fmin(4 * h_d * h_d / h_c, 8 * h_c));
    CLOSE(out.drift_psf, h_c * 20.5);
    CLOSE(out.greatest_psf, 35 + h_c * 20.5);
    in.step_height_in = 12 * h_b * 1.19;
    ck_assert_double_eq(run(&in).drift_psf, 0);
    in.step_height_in = 6; /* the snow is higher than the step */
    ck_assert_double_eq(run(&in).drift_psf, 0);
}
END_TEST

START_TEST(sliding_and_ice) {
    frame_roof_snow_in in = roof(50, 3.0 / 12, 20);
    in.upper_slope = 6.0 / 12;
    in.upper_run_in = 12 * 18;
    in.upper_slippery = 0;
    in.overhang_in = 72;
    frame_roof_snow_out out = run(&in);
    CLOSE(out.sliding_plf, 0.4 * 35 * 18);
    CLOSE(out.sliding_psf, 0.4 * 35 * 18 / 15);
    CLOSE(out.sliding_strip_in, 180);
    CLOSE(out.eaves_psf, 70);
    CLOSE(out.eaves_width_in, 60);
    in.sliding_width_in = 120;
    in.upper_flat_psf = 40;
    out = run(&in);
    CLOSE(out.sliding_plf, 0.4 * 40 * 18 * 10 / 15);
    in.upper_slope = 2.0 / 12;
    ck_assert_double_eq(run(&in).sliding_plf, 0);
    in.upper_slippery = 1;
    ck_assert_double_gt(run(&in).sliding_plf, 0);
    in.upper_slope = 0.25 / 12;
    ck_assert_double_eq(run(&in).sliding_plf, 0);
    in.insulated = 1;
    ck_assert_double_eq(run(&in).eaves_psf, 0);
}
END_TEST

START_TEST(strength_level) {
    frame_roof_snow_in in = roof(60, 5.0 / 12, 30);
    in.basis = FRAME_SNOW_STRENGTH;
    refused(&in, FRAME_CONFLICT, "edition");
    in.edition = FRAME_NOT_GIVEN_INT;
    refused(&in, FRAME_CONFLICT, "importance_factor");
    in.importance_factor = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "winter_wind");
    in.winter_wind = 0.45;
    const frame_roof_snow_out out = run(&in);
    ck_assert_int_eq(out.edition, FRAME_SNOW_ASCE_7_22);
    CLOSE(out.flat_psf, 42);
    CLOSE(out.snow_psf, 0.7 * 42);
    CLOSE(out.asd_factor, 0.7);
    CLOSE(out.ridge_drift_in, 12 * 1.5 * sqrt(pow(60, 0.74) * pow(30, 0.7) * pow(0.45, 1.7) / 21.8));
    ck_assert(FRAME_HAS(out.cautions, FRAME_SNOW_CAUTION_STRENGTH));
    in.thermal_factor = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "thermal_factor");
}
END_TEST

START_TEST(nonsense) {
    frame_roof_snow_in in = roof(50, 6.0 / 12, 12);
    in.basis = FRAME_NOT_GIVEN_INT;
    refused(&in, FRAME_REQUIRED, "basis");
    in = roof(50, 6.0 / 12, 12);
    in.exposure_factor = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "terrain");
    in.terrain = FRAME_TERRAIN_C;
    refused(&in, FRAME_REQUIRED, "roof_exposure");
    in.roof_exposure = FRAME_ROOF_SHELTERED;
    CLOSE(run(&in).exposure_factor, 1.1);
    in.terrain = FRAME_TERRAIN_ABOVE_TREES;
    refused(&in, FRAME_NO_VALUE, "roof_exposure");
    in = roof(50, 6.0 / 12, 12);
    in.terrain = FRAME_TERRAIN_C;
    refused(&in, FRAME_CONFLICT, "exposure_factor");
    in = roof(50, 6.0 / 12, 12);
    in.roof = FRAME_SNOW_FLAT;
    refused(&in, FRAME_CONFLICT, "slope");
    in = roof(50, 6.0 / 12, 12);
    in.upper_length_in = 100;
    refused(&in, FRAME_REQUIRED, "step_height_in");
    in.step_height_in = 100;
    refused(&in, FRAME_REQUIRED, "lower_length_in");
    in = roof(50, 6.0 / 12, 12);
    in.upper_slope = 0.5;
    refused(&in, FRAME_REQUIRED, "upper_run_in");
    in.upper_run_in = 100;
    refused(&in, FRAME_REQUIRED, "upper_slippery");
    in.upper_slope = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "upper_slope");
}
END_TEST

/* More snow on the ground never makes any load less. */
START_TEST(more_snow_is_more) {
    frame_roof_snow_out before = {0};
    for (double ground = 0; ground < 120; ground += 0.5) {
        frame_roof_snow_in in = roof(ground, 4.0 / 12, 25);
        in.step_height_in = 120, in.upper_length_in = 600, in.lower_length_in = 300;
        const frame_roof_snow_out out = run(&in);
        ck_assert_double_ge(out.uniform_psf, before.uniform_psf);
        ck_assert_double_ge(out.greatest_psf + 1e-12, before.greatest_psf);
        before = out;
    }
}
END_TEST

START_TEST(workings_are_sound) {
    for (int i = 0; i < 8; i++) {
        frame_roof_snow_in in = roof(i & 1 ? 15 : 50, i & 2 ? 0.5 / 12 : 6.0 / 12, i & 4 ? 60 : 14);
        in.edition = FRAME_NOT_GIVEN_INT;
        in.step_height_in = 90, in.upper_length_in = 600, in.lower_length_in = 300;
        in.upper_slope = 0.5, in.upper_run_in = 200, in.upper_slippery = 1, in.overhang_in = 20;
        for (int strength = 0; strength <= 1; strength++) {
            frame_working *w;
            frame_text *text;
            frame_roof_snow_out out;
            in.basis = strength ? FRAME_SNOW_STRENGTH : FRAME_SNOW_50_YEAR;
            in.importance_factor = FRAME_NOT_GIVEN;
            in.winter_wind = 0.4;
            ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
            ck_assert_msg(!frame_roof_snow(&in, &out, w), "%s", frame_error_text());
            ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
            frame_text_free(text);
            frame_working_free(w);
        }
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("roof_snow");
    TCase *tests = tcase_create("roof_snow");
    tcase_add_test(tests, low_slope_roof);
    tcase_add_test(tests, wide_gable);
    tcase_add_test(tests, minimum_load);
    tcase_add_test(tests, drift_against_a_wall);
    tcase_add_test(tests, steep_gable);
    tcase_add_test(tests, narrow_roof_of_rafters);
    tcase_add_test(tests, slope_factors);
    tcase_add_test(tests, rain_on_snow);
    tcase_add_test(tests, low_steps);
    tcase_add_test(tests, sliding_and_ice);
    tcase_add_test(tests, strength_level);
    tcase_add_test(tests, nonsense);
    tcase_add_test(tests, more_snow_is_more);
    tcase_add_test(tests, workings_are_sound);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
