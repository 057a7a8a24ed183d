/* beam_check: closed forms written out, worked examples, the traps of the trade, what is refused. */
#include "lumber_names.h"
#include "strength/stability.h"

static frame_beam_check_in header(void) {
    frame_beam_check_in in;
    frame_beam_check_in_init(&in);
    in.size = FRAME_SIZE(2, 10);
    in.plies = 3;
    in.species = species("SPF");
    in.grade = grade("No.2");
    in.span_in = 90;
    in.dead_plf = 120;
    in.snow_plf = 310;
    in.bearing_in = 3;
    in.compression_edge = FRAME_EDGE_HELD;
    return in;
}

static frame_beam_check_out run(const frame_beam_check_in *in) {
    frame_beam_check_out out;
    ck_assert_msg(!frame_beam_check(in, &out, NULL), "%s", frame_error_text());
    return out;
}

static void refused(const frame_beam_check_in *in, frame_status status, const char *field) {
    frame_beam_check_out out, before;
    memset(&out, 0x5a, sizeof out);
    before = out;
    ck_assert_int_eq(frame_beam_check(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert(strlen(frame_error_valid()) > 0);
    ck_assert(!memcmp(&out, &before, sizeof out));
}

/* NDS Supplement 4A: SPF No.2 F_b 875, F_v 135, F_c-perp 425, E 1,400,000; C_F 1.1 for a 2x10, C_D 1.15 for snow. */
START_TEST(header_by_hand) {
    const frame_beam_check_in in = header();
    const frame_beam_check_out out = run(&in);
    const double w = 430.0 / 12, L = 90, b = 4.5, d = 9.25, S = b * d * d / 6, I = b * d * d * d / 12;
    SAME(out.section_modulus_in3, S);
    SAME(out.inertia_in4, I);
    SAME(out.moment_lb_in, w * L * L / 8);
    SAME(out.bending_ratio, w * L * L / 8 / S / (875 * 1.15 * 1.1));
    SAME(out.shear_ratio, 1.5 * w * L / 2 / (b * d) / (135 * 1.15));
    SAME(out.bearing_ratio, w * L / 2 / (b * 3) / 425);
    SAME(out.bearing_needed_in, w * L / 2 / b / 425);
    SAME(out.deflection_live_in, 5 * 310.0 / 12 * L * L * L * L / (384 * 1.4e6 * I));
    SAME(out.deflection_total_in, 5 * (310 + 1.5 * 120) / 12 * L * L * L * L / (384 * 1.4e6 * I));
    SAME(out.deflection_ratio, fmax(out.deflection_live_in / (L / 360), out.deflection_total_in / (L / 240)));
    ck_assert_int_eq(out.combination, FRAME_COMBINATION_D_S);
    ck_assert_double_eq(out.repetitive_member_factor, 1);
    SAME(out.ratio, fmax(fmax(out.bending_ratio, out.shear_ratio), fmax(out.bearing_ratio, out.deflection_ratio)));
    ck_assert_int_eq(out.governs, FRAME_GOVERNS_BENDING);
    ck_assert_int_eq(out.passes, 1);
    ck_assert(FRAME_HAS(out.cautions, FRAME_BENDING_CAUTION_PLIES));
    ck_assert(FRAME_HAS(out.cautions, FRAME_BENDING_CAUTION_EDGE_HELD));
}
END_TEST

/* Trap 1: three 2x4 flat have S = 3 b t^2 / 6 = 3.94 in3, not 11.8. */
START_TEST(flat_plies_are_summed) {
    frame_beam_check_in in = header();
    in.size = FRAME_SIZE(2, 4);
    in.turned = FRAME_TURNED_FLAT;
    in.span_in = 30;
    const frame_beam_check_out out = run(&in);
    SAME(out.section_modulus_in3, 3 * 3.5 * 1.5 * 1.5 / 6);
    SAME(out.inertia_in4, 3 * 3.5 * 1.5 * 1.5 * 1.5 / 12);
    SAME(out.flat_use_factor, 1.1);
    SAME(out.fb_adjusted_psi, 875 * 1.15 * 1.5 * 1.1);
    SAME(out.bearing_ratio, 430.0 / 12 * 30 / 2 / (3.5 * 3) / 425); /* only the lowest ply bears */
    ck_assert(FRAME_HAS(out.cautions, FRAME_BENDING_CAUTION_FLAT));
    in.compression_edge = FRAME_EDGE_FREE; /* broader than deep: C_L is 1 all the same */
    SAME(run(&in).beam_stability_factor, 1);
}
END_TEST

/* Trap 3: F_b* leaves out C_fu, and C_L of a free edge over the whole span by default. */
START_TEST(free_edge_over_the_span) {
    frame_beam_check_in in = header();
    in.plies = 1;
    in.compression_edge = FRAME_NOT_GIVEN_INT;
    const frame_beam_check_out out = run(&in);
    const double l_e = 1.63 * 90 + 3 * 9.25, R_B = sqrt(l_e * 9.25 / 2.25), F_bE = 1.2 * 510000 / (R_B * R_B);
    const double r = F_bE / (875 * 1.15 * 1.1), a = (1 + r) / 1.9;
    SAME(out.slenderness_ratio, R_B);
    SAME(out.beam_stability_factor, a - sqrt(a * a - r / 0.95));
    ck_assert(out.assumed != 0);
}
END_TEST

/* With C_L, the largest total over C_D need not govern: all combinations are tried. */
START_TEST(stability_may_choose_another_combination) {
    frame_beam_check_in in = header();
    in.plies = 1;
    in.size = FRAME_SIZE(2, 12);
    in.compression_edge = FRAME_EDGE_FREE;
    in.unbraced_length_in = 200;
    in.span_in = 200;
    in.dead_plf = 20;
    in.live_plf = 60;
    in.snow_plf = 71; /* (20 + 60)/1.0 = 80 is more than 91/1.15 = 79.1, but buckling hardly cares for C_D */
    const frame_beam_check_out out = run(&in);
    ck_assert_int_eq(out.combination, FRAME_COMBINATION_D_L_S);
    in.compression_edge = FRAME_EDGE_HELD;
    in.unbraced_length_in = FRAME_NOT_GIVEN;
    in.live_plf = 60;
    in.snow_plf = 40; /* 0.75 of both: 95, over 1.15 is 82.6 */
    ck_assert_int_eq(run(&in).combination, FRAME_COMBINATION_D_L_S);
    in.snow_plf = 20; /* 80 over 1.15 is less than 80 */
    ck_assert_int_eq(run(&in).combination, FRAME_COMBINATION_D_L);
    in.compression_edge = FRAME_EDGE_FREE;
    ck_assert_int_eq(run(&in).combination, FRAME_COMBINATION_D_L);
}
END_TEST

/* Trap 4. */
START_TEST(durations) {
    frame_beam_check_in in = header();
    in.snow_plf = 1;
    in.dead_plf = 300;
    const frame_beam_check_out out = run(&in);
    ck_assert_int_eq(out.combination, FRAME_COMBINATION_D);
    SAME(out.load_duration_factor, 0.9);
    SAME(out.fc_perp_adjusted_psi, 425);
    SAME(out.e_adjusted_psi, 1.4e6);
    in.snow_plf = FRAME_NOT_GIVEN;
    in.live_plf = 300;
    in.live_duration = FRAME_DURATION_PERMANENT;
    SAME(run(&in).load_duration_factor, 0.9);
    in.live_duration = FRAME_DURATION_IMPACT;
    in.dead_plf = 10;
    SAME(run(&in).load_duration_factor, 2);
    in.incised = 1;
    refused(&in, FRAME_REFUSED, "live_duration");
}
END_TEST

/* Trap 5. */
START_TEST(shear_within_the_depth) {
    frame_beam_check_in in = header();
    const double full = run(&in).shear_lb;
    in.shear_at_depth = 1;
    SAME(run(&in).shear_lb, full - 430.0 / 12 * 9.25);
    in.span_in = 18;
    ck_assert_double_eq(run(&in).shear_lb, 0);
    in.notch_in = 1;
    refused(&in, FRAME_CONFLICT, "notch_in");
}
END_TEST

/* Trap 6: at a notch two thirds F_v' b d_n (d_n / d)^2. */
START_TEST(notch_at_the_ends) {
    frame_beam_check_in in = header();
    in.notch_in = 2;
    const frame_beam_check_out out = run(&in);
    const double d_n = 7.25, V_r = 2.0 / 3 * 135 * 1.15 * 4.5 * d_n * (d_n / 9.25) * (d_n / 9.25);
    SAME(out.shear_ratio, 430.0 / 12 * 45 / V_r);
    ck_assert(FRAME_HAS(out.cautions, FRAME_BENDING_CAUTION_NOTCH));
    in.notch_in = 9.25 / 4;
    run(&in);
    in.notch_in = 9.25 / 4 + 0.001;
    refused(&in, FRAME_OUTSIDE_SCOPE, "notch_in");
}
END_TEST

/* Trap 7: C_b is 1 at the ends, however short the bearing. */
START_TEST(bearing_at_the_ends) {
    frame_beam_check_in in = header();
    in.bearing_in = 1.5;
    SAME(run(&in).fc_perp_adjusted_psi, 425);
    ck_assert_double_eq(run(&in).bearing_area_factor, 1);
    in.bearing_in = FRAME_NOT_GIVEN;
    const frame_beam_check_out out = run(&in);
    ck_assert_double_eq(out.bearing_ratio, FRAME_NOT_GIVEN);
    ck_assert(FRAME_HAS(out.not_checked, FRAME_BENDING_UNCHECKED_BEARING));
    ck_assert(out.ratio > 0 && out.bearing_needed_in > 0);
    in.bearing_in = 46;
    refused(&in, FRAME_IMPOSSIBLE, "bearing_in");
}
END_TEST

/* Trap 8 and table 4D: a timber goes by its own table, C_F by its depth. */
START_TEST(timber) {
    frame_beam_check_in in = header();
    in.size = FRAME_SIZE(6, 14);
    in.plies = 1;
    in.species = species("DFL");
    in.grade = grade("No.1");
    in.repetitive = 1;
    in.spacing_in = 24;
    const frame_beam_check_out out = run(&in);
    SAME(out.size_factor, pow(12 / 13.25, 1.0 / 9));
    SAME(out.repetitive_member_factor, 1);
    ck_assert_int_eq(out.known, FRAME_KNOWN_MEMORY);
    ck_assert(FRAME_HAS(out.cautions, FRAME_BENDING_CAUTION_MEMORY));
}
END_TEST

START_TEST(loads_by_the_square_foot) {
    frame_beam_check_in in = header(), other = header();
    in.dead_plf = FRAME_NOT_GIVEN;
    in.snow_plf = 50;
    in.spacing_in = 96;
    in.dead_psf = 15;
    in.snow_psf = 32.5;
    const frame_beam_check_out out = run(&in), same_out = run(&other);
    SAME(out.dead_plf, 120);
    SAME(out.transient_plf, 310);
    SAME(out.ratio, same_out.ratio);
    in.spacing_in = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "spacing_in");
}
END_TEST

/* SPF, G 0.42, at 19 % water: 62.4 (0.42/(1 + 0.42 x 0.009 x 19)) 1.19 = 29.1 pcf. */
START_TEST(own_weight) {
    frame_beam_check_in in = header();
    in.self_weight = 1;
    const frame_beam_check_out out = run(&in);
    SAME(out.dead_plf, 120 + 62.4 * (0.42 / (1 + 0.42 * 0.009 * 19)) * 1.19 * 4.5 * 9.25 / 144);
    ck_assert(!FRAME_HAS(out.not_checked, FRAME_BENDING_UNCHECKED_SELF_WEIGHT));
    in.specific_gravity = 0.5;
    refused(&in, FRAME_CONFLICT, "specific_gravity");
}
END_TEST

START_TEST(repetitive_use) {
    frame_beam_check_in in = header();
    ck_assert_double_eq(run(&in).repetitive_member_factor, 1);
    in.repetitive = 1;
    ck_assert_double_eq(run(&in).repetitive_member_factor, 1.15);
    in.plies = 2;
    refused(&in, FRAME_REFUSED, "repetitive");
    in.plies = 1;
    refused(&in, FRAME_REFUSED, "repetitive");
    in.spacing_in = 24;
    ck_assert_double_eq(run(&in).repetitive_member_factor, 1.15);
    in.spacing_in = 24.5;
    refused(&in, FRAME_REFUSED, "repetitive");
    in.spacing_in = 16;
    in.turned = FRAME_TURNED_FLAT;
    refused(&in, FRAME_REFUSED, "repetitive");
}
END_TEST

/* AWC Structural Wood Design Examples 2015/2018, E1.2a: a 4x16 DFL Select Structural, 20 ft, load at mid-span, braced
 * at the ends only. The effective length is that of the load at mid-span. */
START_TEST(design_example_of_stability) {
    const double R_B = frame_beam_slenderness(240, 3.5, 15.25, FRAME_LENGTH_POINT_FREE, NULL);
    const double F_bE = frame_beam_buckling(R_B, 690000, NULL), C_L = frame_beam_stability(F_bE, 1500, NULL);
    PRINTED(R_B, 21.6, 0.1);
    PRINTED(F_bE, 1776, 1);
    PRINTED(C_L, 0.876, 0.001);
    PRINTED(1500 * C_L, 1313, 1);
}
END_TEST

/* CE 479 Wood Design Example (Purdue University, 2006): 2x8 DFL No.1, wet, dead load and snow. F_b C_F is 1,200 psi,
 * over the limit of 1,150 psi, so that C_M is 0.85. */
START_TEST(wet_service_example) {
    frame_beam_check_in in = header();
    in.plies = 1;
    in.size = FRAME_SIZE(2, 8);
    in.species = species("DFL");
    in.grade = grade("No.1");
    in.service = FRAME_SERVICE_WET;
    const frame_beam_check_out out = run(&in);
    PRINTED(out.fb_adjusted_psi, 1173, 1);
    PRINTED(out.fv_adjusted_psi, 201, 1);
    ck_assert_double_eq(out.size_factor, 1.2);
    ck_assert_double_eq(out.wet_service_factor, 0.85);
}
END_TEST

/* Mechanics of Materials (Gere, Goodno, 7th), problem 5.6-7: 120 psf on joists at 16 in, 10.5 ft: M = 26,460 lb-in, and
 * with 1,350 psi S = 19.6 in3. The chosen 2x10 is full 2x10 less 3/8 and 1/2 in: S 21.39. */
START_TEST(required_section_modulus_example) {
    frame_beam_check_in in;
    frame_beam_check_in_init(&in);
    in.width_in = 1.5;
    in.depth_in = 9.25;
    in.fb_psi = 1350;
    in.fv_psi = 180;
    in.fc_perp_psi = 625;
    in.e_psi = 1.6e6;
    in.compression_edge = FRAME_EDGE_HELD;
    in.span_in = 126;
    in.spacing_in = 16;
    in.dead_psf = 0;
    in.live_psf = 120;
    const frame_beam_check_out out = run(&in);
    PRINTED(out.moment_lb_in, 26460, 1);
    PRINTED(out.section_modulus_in3, 21.39, 0.01);
    PRINTED(out.bending_ratio * out.section_modulus_in3, 19.6, 0.1);
    ck_assert_int_eq(out.known, FRAME_KNOWN_SECONDARY);
}
END_TEST

/* Let's Design a Roof, part 2 (2015): 228 plf on 20 ft: reaction 2,280 lb, moment 11,400 ft-lb. */
START_TEST(rafter_forces_example) {
    frame_beam_check_in in = header();
    in.span_in = 240;
    in.dead_plf = 0;
    in.snow_plf = 228;
    PRINTED(run(&in).reaction_lb, 2280, 1);
    PRINTED(run(&in).moment_lb_in / 12, 11400, 1);
}
END_TEST

START_TEST(what_is_missing_or_contradicts) {
    frame_beam_check_in in = header();
    in.dead_plf = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "dead_plf");
    in = header();
    in.snow_plf = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "live_plf");
    in = header();
    in.species = FRAME_NOT_GIVEN_INT;
    refused(&in, FRAME_REQUIRED, "species");
    in = header();
    in.unbraced_length_in = 24;
    refused(&in, FRAME_CONFLICT, "unbraced_length_in");
    in = header();
    in.species = in.grade = FRAME_NOT_GIVEN_INT;
    in.fb_psi = 2600;
    refused(&in, FRAME_REQUIRED, "fv_psi");
    in.fv_psi = 285;
    refused(&in, FRAME_REQUIRED, "fc_perp_psi");
    in.fc_perp_psi = 750;
    refused(&in, FRAME_REQUIRED, "e_psi");
    in.e_psi = 1.9e6;
    run(&in);
    in.compression_edge = FRAME_EDGE_FREE;
    refused(&in, FRAME_REQUIRED, "e_min_psi");
    in.e_min_psi = 1e6;
    run(&in);
    in.self_weight = 1;
    refused(&in, FRAME_REQUIRED, "specific_gravity");
}
END_TEST

/* Trap 3: R_B at most 50. */
START_TEST(too_slender) {
    frame_beam_check_in in = header();
    in.plies = 1;
    in.size = FRAME_SIZE(2, 14);
    in.compression_edge = FRAME_EDGE_FREE;
    in.span_in = 100;
    run(&in);
    in.span_in = 400;
    refused(&in, FRAME_OUTSIDE_SCOPE, "unbraced_length_in");
    in.unbraced_length_in = 100;
    run(&in);
}
END_TEST

static void compare_with_working(const frame_beam_check_in *in) {
    frame_beam_check_out with, without = run(in);
    frame_working *working;
    ck_assert_int_eq(frame_working_new(&working), FRAME_OK);
    ck_assert_msg(!frame_beam_check(in, &with, working), "%s", frame_error_text());
    ck_assert(!memcmp(&with, &without, sizeof with));
    working_is_sound(working);
    SAME(value_of(working, "ratio"), with.ratio);
    frame_working_free(working);
}

START_TEST(working_holds_in_every_branch) {
    frame_beam_check_in in = header();
    compare_with_working(&in);
    in.compression_edge = FRAME_EDGE_FREE;
    in.live_plf = 100;
    in.roof_live_plf = 80;
    compare_with_working(&in);
    in.self_weight = 1;
    in.spacing_in = 24;
    in.snow_psf = 20;
    in.dead_psf = 10;
    compare_with_working(&in);
    in.notch_in = 2;
    compare_with_working(&in);
    in.notch_in = FRAME_NOT_GIVEN;
    in.shear_at_depth = 1;
    in.bearing_in = FRAME_NOT_GIVEN;
    compare_with_working(&in);
    in.turned = FRAME_TURNED_FLAT;
    in.service = FRAME_SERVICE_WET;
    compare_with_working(&in);
    in.size = FRAME_SIZE(6, 12);
    in.species = species("DFL");
    in.grade = grade("No.1");
    in.plies = 1;
    compare_with_working(&in);
}
END_TEST

static void rises(const frame_beam_check_in *in, double before[5], double at) {
    const frame_beam_check_out out = run(in);
    const double now[5] = {out.ratio, out.bending_ratio, out.shear_ratio, out.bearing_ratio, out.deflection_ratio};
    for (int k = 0; k < 5; k++) {
        ck_assert_msg(now[k] >= before[k] * (1 - 1e-12), "ratio %d falls to %.17g at %g", k, now[k], at);
        before[k] = now[k];
    }
}

#define NEVER_FALLS(in, field, from, to)                           \
    do {                                                           \
        frame_beam_check_in varied = in;                           \
        double before[5] = {0};                                    \
        for (int step = 0; step <= 40; step++) {                   \
            varied.field = (from) + ((to) - (from)) * step / 40.0; \
            rises(&varied, before, varied.field);                  \
        }                                                          \
    } while (0)

START_TEST(more_load_or_span_never_lowers_a_ratio) {
    frame_beam_check_in in = header();
    in.plies = 1 + _i % 3;
    in.live_plf = _i % 4 * 50;
    in.roof_live_plf = _i % 2 * 60;
    if (_i % 3) in.compression_edge = FRAME_EDGE_FREE;
    if (_i % 5 == 1) in.turned = FRAME_TURNED_FLAT;
    NEVER_FALLS(in, live_plf, 0, 800);
    NEVER_FALLS(in, dead_plf, 0, 800);
    NEVER_FALLS(in, snow_plf, 0, 800);
    NEVER_FALLS(in, roof_live_plf, 0, 800);
    NEVER_FALLS(in, span_in, 24, 240);
}
END_TEST

START_TEST(another_ply_never_raises_a_ratio) {
    double before = INFINITY;
    for (int plies = 1; plies <= 8; plies++) {
        frame_beam_check_in in = header();
        in.plies = plies;
        const double ratio = run(&in).ratio;
        ck_assert(ratio <= before);
        before = ratio;
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("beam_check");
    TCase *tests = tcase_create("beam_check");
    tcase_add_test(tests, header_by_hand);
    tcase_add_test(tests, flat_plies_are_summed);
    tcase_add_test(tests, free_edge_over_the_span);
    tcase_add_test(tests, stability_may_choose_another_combination);
    tcase_add_test(tests, durations);
    tcase_add_test(tests, shear_within_the_depth);
    tcase_add_test(tests, notch_at_the_ends);
    tcase_add_test(tests, bearing_at_the_ends);
    tcase_add_test(tests, timber);
    tcase_add_test(tests, loads_by_the_square_foot);
    tcase_add_test(tests, own_weight);
    tcase_add_test(tests, repetitive_use);
    tcase_add_test(tests, design_example_of_stability);
    tcase_add_test(tests, wet_service_example);
    tcase_add_test(tests, required_section_modulus_example);
    tcase_add_test(tests, rafter_forces_example);
    tcase_add_test(tests, what_is_missing_or_contradicts);
    tcase_add_test(tests, too_slender);
    tcase_add_test(tests, working_holds_in_every_branch);
    tcase_add_loop_test(tests, more_load_or_span_never_lowers_a_ratio, 0, 15);
    tcase_add_test(tests, another_ply_never_raises_a_ratio);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
