/* tension_check: a worked example step by step, closed forms, the net section, what is refused. */
#include "lumber_names.h"

#define NEAR(value, wanted) ck_assert_double_eq_tol(value, wanted, 1e-11 * (fabs((double)(wanted)) + 1e-3))
#define AS_PRINTED(value, figure, last_place) ck_assert_double_eq_tol(value, figure, 0.501 * (last_place))

static frame_tension_check_in chord(double tension, frame_load_duration duration) {
    frame_tension_check_in in;
    frame_tension_check_in_init(&in);
    in.size = FRAME_SIZE(2, 8);
    in.species = species("HF");
    in.grade = grade("No.2");
    in.length_in = 144;
    in.tension_lb = tension;
    in.lateral_plf = 8 * 4;
    in.load_duration = duration;
    return in;
}

static frame_tension_check_out run(const frame_tension_check_in *in) {
    frame_tension_check_out out;
    ck_assert_msg(!frame_tension_check(in, &out, NULL), "%s", frame_error_text());
    return out;
}

static void refused(const frame_tension_check_in *in, frame_status status, const char *field) {
    frame_tension_check_out out;
    ck_assert_int_eq(frame_tension_check(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_str_ne(frame_error_valid(), "");
}

/* Structural Wood Design Examples 2015/2018 (AWC), E1.6: a bottom chord, 2x8 Hem-Fir No.2, 12 ft, held at its ends, 8
 * psf of ceiling on 4 ft; tension 1,420 lb dead, 880 lb roof live, 880 lb wind. Secondary; every step. */
START_TEST(bottom_chord) {
    const double tension[] = {1420 + 880 + 880, 1420 + 880, 1420};
    const frame_load_duration duration[] = {FRAME_DURATION_TEN_MINUTES, FRAME_DURATION_SEVEN_DAYS,
                                            FRAME_DURATION_PERMANENT};
    const double f_t[] = {292.41, 211.49, 130.57}, F_t[] = {1008, 787.5, 567}, F_t_place[] = {1, 0.1, 1};
    const double star[] = {1632, 1275, 918}, C_L[] = {0.4044, 0.5089, 0.6738}, two[] = {660, 649, 619};
    const double ratio[] = {0.612, 0.681, 0.803};
    for (int i = 0; i < 3; i++) {
        const frame_tension_check_in in = chord(tension[i], duration[i]);
        const frame_tension_check_out out = run(&in);
        AS_PRINTED(out.ft_actual_psi, f_t[i], 0.01);
        AS_PRINTED(out.ft_adjusted_psi, F_t[i], F_t_place[i]);
        AS_PRINTED(out.fb_star_psi, star[i], 1);
        AS_PRINTED(out.beam_stability_factor, C_L[i], 0.0001);
        AS_PRINTED(out.fb_adjusted_psi, two[i], 1);
        AS_PRINTED(out.combined_ratio, ratio[i], 0.001);
        NEAR(out.compressed_ratio, fmax(0, (out.fb_actual_psi - out.ft_actual_psi) / out.fb_adjusted_psi));
        ck_assert(out.ratio >= out.combined_ratio);
        ck_assert_int_eq(out.passes, 1);
    }
}
END_TEST

START_TEST(tie_without_sideways_load) {
    frame_tension_check_in in = chord(4000, FRAME_DURATION_TWO_MONTHS);
    in.lateral_plf = 0;
    in.length_in = FRAME_NOT_GIVEN;
    frame_tension_check_out out = run(&in);
    NEAR(out.ratio, 4000 / (1.5 * 7.25) / (525 * 1.2 * 1.15));
    NEAR(out.capacity_lb, 525 * 1.2 * 1.15 * 1.5 * 7.25);
    ck_assert_double_eq(out.combined_ratio, FRAME_NOT_GIVEN);
    ck_assert_int_eq(out.governs, FRAME_GOVERNS_TENSION);
    ck_assert(FRAME_HAS(out.cautions, FRAME_TENSION_CAUTION_HOLES));
    in.plies = 2;
    in.hole_diameter_in = 0.8125;
    in.holes_across = 2;
    out = run(&in);
    NEAR(out.net_area_in2, 2 * 1.5 * (7.25 - 2 * 0.8125));
    ck_assert(!FRAME_HAS(out.cautions, FRAME_TENSION_CAUTION_HOLES));
    in.holes_across = 9;
    refused(&in, FRAME_IMPOSSIBLE, "hole_diameter_in");
}
END_TEST

/* Much bending and little tension: the edge in compression governs, with its C_L. */
START_TEST(the_other_edge) {
    frame_tension_check_in in = chord(100, FRAME_DURATION_TEN_MINUTES);
    frame_tension_check_out out = run(&in);
    ck_assert_int_eq(out.governs, FRAME_GOVERNS_BENDING);
    NEAR(out.ratio, (out.fb_actual_psi - out.ft_actual_psi) / out.fb_adjusted_psi);
    in.compression_edge = FRAME_EDGE_HELD;
    out = run(&in);
    NEAR(out.beam_stability_factor, 1);
    NEAR(out.fb_star_psi, out.fb_adjusted_psi);
    ck_assert_int_eq(out.governs, FRAME_GOVERNS_BENDING_TENSION);
}
END_TEST

START_TEST(by_its_values) {
    frame_tension_check_in in;
    frame_tension_check_in_init(&in);
    in.width_in = 3.5, in.depth_in = 9.25;
    in.ft_psi = 1000;
    in.tension_lb = 8000;
    NEAR(run(&in).ratio, 8000 / (3.5 * 9.25) / 1000);
    in.lateral_plf = 100;
    refused(&in, FRAME_REQUIRED, "length_in");
    in.length_in = 120;
    refused(&in, FRAME_REQUIRED, "fb_psi");
    in.fb_psi = 2000;
    refused(&in, FRAME_REQUIRED, "e_min_psi");
    in.e_min_psi = 800000;
    NEAR(run(&in).fb_actual_psi, 100.0 / 12 * 120 * 120 / 8 / (3.5 * 9.25 * 9.25 / 6));
    in.ft_psi = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "ft_psi");
}
END_TEST

START_TEST(nonsense) {
    frame_tension_check_in in = chord(1000, FRAME_DURATION_PERMANENT);
    in.compression_edge = FRAME_EDGE_HELD;
    in.unbraced_length_in = 24;
    refused(&in, FRAME_CONFLICT, "unbraced_length_in");
    in = chord(1000, FRAME_DURATION_PERMANENT);
    in.length_in = 1200;
    refused(&in, FRAME_OUTSIDE_SCOPE, "unbraced_length_in");
    in = chord(1000, FRAME_DURATION_IMPACT);
    in.incised = 1;
    refused(&in, FRAME_REFUSED, "load_duration");
    in = chord(FRAME_NOT_GIVEN, FRAME_DURATION_PERMANENT);
    refused(&in, FRAME_REQUIRED, "tension_lb");
}
END_TEST

START_TEST(more_tension_never_lowers_a_ratio) {
    double before = 0;
    for (double tension = 0; tension < 12000; tension += 100) {
        frame_tension_check_in in = chord(tension, FRAME_DURATION_TEN_YEARS);
        in.compression_edge = FRAME_EDGE_HELD;
        const double ratio = run(&in).ratio;
        ck_assert_double_ge(ratio, before);
        before = ratio;
    }
}
END_TEST

START_TEST(working_holds) {
    for (int i = 0; i < 8; i++) {
        frame_working *w;
        frame_tension_check_out out;
        frame_tension_check_in in = chord(1500, FRAME_DURATION_TEN_YEARS);
        if (i & 1) in.compression_edge = FRAME_EDGE_HELD;
        if (i & 2) in.hole_diameter_in = 0.6;
        if (i & 4) in.lateral_plf = 0;
        ck_assert(!frame_working_new(&w));
        ck_assert(!frame_tension_check(&in, &out, w));
        working_is_sound(w);
        frame_working_free(w);
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("tension_check");
    TCase *tests = tcase_create("tension_check");
    tcase_add_test(tests, bottom_chord);
    tcase_add_test(tests, tie_without_sideways_load);
    tcase_add_test(tests, the_other_edge);
    tcase_add_test(tests, by_its_values);
    tcase_add_test(tests, nonsense);
    tcase_add_test(tests, more_tension_never_lowers_a_ratio);
    tcase_add_test(tests, working_holds);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
