/* joist_check: closed forms written out, worked examples, what is refused, what never turns round. */
#include "lumber_names.h"

static frame_joist_check_in floor_joist(void) {
    frame_joist_check_in in;
    frame_joist_check_in_init(&in);
    in.use = FRAME_USE_FLOOR;
    in.size = FRAME_SIZE(2, 10);
    in.species = species("DFL");
    in.grade = grade("No.2");
    in.spacing_in = 16;
    in.span_in = 180;
    in.live_psf = 40;
    in.dead_psf = 10;
    return in;
}

static frame_joist_check_out run(const frame_joist_check_in *in) {
    frame_joist_check_out out;
    ck_assert_msg(!frame_joist_check(in, &out, NULL), "%s", frame_error_text());
    return out;
}

static void refused(const frame_joist_check_in *in, frame_status status, const char *field) {
    frame_joist_check_out out, before;
    memset(&out, 0x5a, sizeof out);
    before = out;
    ck_assert_int_eq(frame_joist_check(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert(strlen(frame_error_valid()) > 0);
    ck_assert(!memcmp(&out, &before, sizeof out));
}

/* NDS Supplement 4A: DFL No.2 F_b 900, F_v 180, F_c-perp 625, E 1,600,000; C_F 1.1 for a 2x10. */
START_TEST(floor_joist_by_hand) {
    const frame_joist_check_in in = floor_joist();
    const frame_joist_check_out out = run(&in);
    const double w = 50.0 * 16 / 12 / 12, L = 180, b = 1.5, d = 9.25;
    const double S = b * d * d / 6, I = b * d * d * d / 12;
    SAME(out.moment_lb_in, w * L * L / 8);
    SAME(out.fb_actual_psi, w * L * L / 8 / S);
    SAME(out.fb_adjusted_psi, 900 * 1.1 * 1.15);
    SAME(out.bending_ratio, w * L * L / 8 / S / (900 * 1.1 * 1.15));
    SAME(out.shear_lb, w * L / 2);
    SAME(out.shear_ratio, 1.5 * w * L / 2 / (b * d) / 180);
    SAME(out.reaction_lb, w * L / 2);
    SAME(out.bearing_ratio, w * L / 2 / (1.5 * 1.5) / 625);
    SAME(out.bearing_needed_in, w * L / 2 / 1.5 / 625);
    SAME(out.deflection_live_in, 5 * 0.8 * w * L * L * L * L / (384 * 1.6e6 * I));
    SAME(out.deflection_total_in, (1.5 * 0.2 + 0.8) * 5 * w * L * L * L * L / (384 * 1.6e6 * I));
    SAME(out.deflection_live_ratio, out.deflection_live_in / (L / 360));
    SAME(out.deflection_total_ratio, out.deflection_total_in / (L / 240));
    ck_assert_int_eq(out.combination, FRAME_COMBINATION_D_L);
    ck_assert_double_eq(out.load_duration_factor, 1.0);
    ck_assert_double_eq(out.beam_stability_factor, 1.0);
    ck_assert_double_eq(out.slenderness_ratio, FRAME_NOT_GIVEN);
    ck_assert_int_eq(out.governs, FRAME_GOVERNS_BENDING);
    ck_assert_double_eq(out.ratio, out.bending_ratio);
    ck_assert_int_eq(out.passes, out.ratio <= 1);
}
END_TEST

/* Trap 4: dead load alone has a C_D of 0.9 and may govern. */
START_TEST(dead_load_alone_can_govern) {
    frame_joist_check_in in = floor_joist();
    in.dead_psf = 60;
    in.live_psf = 4;
    const frame_joist_check_out out = run(&in);
    ck_assert_int_eq(out.combination, FRAME_COMBINATION_D);
    SAME(out.load_duration_factor, 0.9);
    SAME(out.fb_adjusted_psi, 900 * 0.9 * 1.1 * 1.15);
    SAME(out.reaction_lb, 64.0 * 16 / 12 / 12 * 180 / 2);
}
END_TEST

/* Trap 4: the shortest load of a combination counts, and C_D never goes on E or F_c-perp. */
START_TEST(snow_counts_with_its_own_duration) {
    frame_joist_check_in in = floor_joist();
    in.snow_psf = 100;
    const frame_joist_check_out out = run(&in);
    ck_assert_int_eq(out.combination, FRAME_COMBINATION_D_L_S);
    SAME(out.load_duration_factor, 1.15);
    SAME(out.moment_lb_in, (10 + 0.75 * 40 + 0.75 * 100) * 16 / 12 / 12 * 180 * 180 / 8);
    SAME(out.fc_perp_adjusted_psi, 625);
    SAME(out.e_adjusted_psi, 1.6e6);
    ck_assert(FRAME_HAS(out.cautions, FRAME_BENDING_CAUTION_SNOW_BASIS));
    ck_assert(FRAME_HAS(out.not_checked, FRAME_BENDING_UNCHECKED_SNOW_FORMS));
}
END_TEST

START_TEST(roof_live_load_and_snow_do_not_add) {
    frame_joist_check_in in = floor_joist();
    in.use = FRAME_USE_RAFTER;
    in.live_psf = 20;
    in.snow_psf = 30;
    const frame_joist_check_out out = run(&in);
    ck_assert_int_eq(out.combination, FRAME_COMBINATION_D_S);
    SAME(out.reaction_lb, 40.0 * 16 / 12 / 12 * 180 / 2);
    in.live_psf = 30;
    in.snow_psf = 20;
    const frame_joist_check_out roof = run(&in);
    ck_assert_int_eq(roof.combination, FRAME_COMBINATION_D_LR);
    SAME(roof.load_duration_factor, 1.25);
}
END_TEST

/* A sloped rafter worked along its own length, with the loads square to it, comes to the same. */
START_TEST(rafter_along_its_true_length) {
    frame_joist_check_in in = floor_joist();
    in.use = FRAME_USE_RAFTER;
    in.live_psf = 20;
    in.slope = 9.0 / 12;
    const frame_joist_check_out out = run(&in);
    const double c = 0.8, length = 180 / c, I = 1.5 * 9.25 * 9.25 * 9.25 / 12;
    const double across =
        (10 * c + 20 * c * c) * 16 / 12 / 12; /* dead load per foot of slope, live load per foot of plan */
    const double across_live = 20 * c * c * 16 / 12 / 12;
    SAME(out.moment_lb_in, across * length * length / 8);
    SAME(out.deflection_live_in, 5 * across_live * pow(length, 4) / (384 * 1.6e6 * I));
    SAME(out.deflection_live_ratio, out.deflection_live_in / (length / 180));
    ck_assert(!FRAME_HAS(out.not_checked, FRAME_BENDING_UNCHECKED_SLOPE));
    ck_assert(FRAME_HAS(out.not_checked, FRAME_BENDING_UNCHECKED_THRUST));
    ck_assert(FRAME_HAS(out.cautions, FRAME_BENDING_CAUTION_RAFTER));
}
END_TEST

/* Trap 3: with F_b* of all factors but C_L and C_fu. 2x10, 48 in between braces: l_u/d = 5.2, l_e = 2.06 l_u. */
START_TEST(free_compression_edge) {
    frame_joist_check_in in = floor_joist();
    in.compression_edge = FRAME_EDGE_FREE;
    in.unbraced_length_in = 48;
    const frame_joist_check_out out = run(&in);
    const double R_B = sqrt(2.06 * 48 * 9.25 / (1.5 * 1.5)), F_bE = 1.2 * 580000 / (R_B * R_B), F = 900 * 1.1 * 1.15;
    const double a = (1 + F_bE / F) / 1.9, C_L = a - sqrt(a * a - F_bE / F / 0.95);
    SAME(out.slenderness_ratio, R_B);
    SAME(out.beam_stability_factor, C_L);
    SAME(out.fb_adjusted_psi, F * C_L);
}
END_TEST

START_TEST(wet_and_incised) {
    frame_joist_check_in in = floor_joist();
    in.service = FRAME_SERVICE_WET;
    in.incised = 1;
    in.temperature = FRAME_TEMPERATURE_125F;
    in.creep_factor = FRAME_NOT_GIVEN;
    const frame_joist_check_out out = run(&in);
    /* F_b C_F = 990 psi is at most 1,150 psi, so that C_M is 1 (table 4A). */
    SAME(out.fb_adjusted_psi, 900 * 1.0 * 0.7 * 1.1 * 0.8 * 1.15);
    SAME(out.fv_adjusted_psi, 180 * 0.97 * 0.7 * 0.8);
    SAME(out.fc_perp_adjusted_psi, 625 * 0.67 * 0.7 * 1.0);
    SAME(out.e_adjusted_psi, 1.6e6 * 0.9 * 0.9 * 0.95);
    SAME(out.deflection_total_in / out.deflection_live_in, (2.0 * 10 + 40) / 40);
}
END_TEST

/* Trap 2. */
START_TEST(repetitive_use) {
    frame_joist_check_in in = floor_joist();
    in.spacing_in = 32;
    ck_assert_double_eq(run(&in).repetitive_member_factor, 1);
    in.repetitive = 1;
    refused(&in, FRAME_REFUSED, "repetitive");
    in.spacing_in = 24;
    ck_assert_double_eq(run(&in).repetitive_member_factor, 1.15);
    in.plies = 2;
    refused(&in, FRAME_REFUSED, "repetitive");
    in.repetitive = FRAME_NOT_GIVEN_INT;
    ck_assert_double_eq(run(&in).repetitive_member_factor, 1);
    in.plies = 3;
    in.repetitive = 1;
    ck_assert_double_eq(run(&in).repetitive_member_factor, 1.15);
    ck_assert(FRAME_HAS(run(&in).cautions, FRAME_BENDING_CAUTION_PLIES));
}
END_TEST

/* Residential Structural Design Guide, 2nd edition (2017), example 5.1: its own values, F_b with C_F 1.2. */
START_TEST(design_guide_floor_joist) {
    frame_joist_check_in in;
    frame_joist_check_in_init(&in);
    in.use = FRAME_USE_FLOOR;
    in.width_in = 1.5;
    in.depth_in = 7.25;
    in.fb_psi = 975 * 1.2;
    in.fv_psi = 150; /* 75 psi times C_H 2.0, a form since withdrawn */
    in.fc_perp_psi = 405;
    in.e_psi = 1.5e6;
    in.repetitive = 1;
    in.live_psf = 30;
    in.dead_psf = 10;
    in.span_in = 120;
    in.bearing_in = 2;
    const frame_joist_check_out out = run(&in);
    PRINTED(out.fb_adjusted_psi, 1345, 1.0 + 1e-6);
    ck_assert_int_eq(out.known, FRAME_KNOWN_SECONDARY); /* the duration factors' */
    ck_assert(FRAME_HAS(out.cautions, FRAME_BENDING_CAUTION_USER_VALUES));
    ck_assert(!FRAME_HAS(out.cautions, FRAME_BENDING_CAUTION_STAMP));
}
END_TEST

START_TEST(what_is_missing_or_contradicts) {
    frame_joist_check_in in = floor_joist();
    in.live_psf = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "live_psf");
    in = floor_joist();
    in.species = FRAME_NOT_GIVEN_INT;
    refused(&in, FRAME_REQUIRED, "species");
    in = floor_joist();
    in.grade = FRAME_NOT_GIVEN_INT;
    refused(&in, FRAME_REQUIRED, "grade");
    in = floor_joist();
    in.size = FRAME_NOT_GIVEN_INT;
    refused(&in, FRAME_REQUIRED, "size");
    in = floor_joist();
    in.width_in = 1.5;
    refused(&in, FRAME_CONFLICT, "width_in");
    in = floor_joist();
    in.fb_psi = 1000;
    refused(&in, FRAME_CONFLICT, "fb_psi");
    in = floor_joist();
    in.fv_psi = 150;
    refused(&in, FRAME_REQUIRED, "fb_psi");
    in = floor_joist();
    in.slope = 0.5;
    refused(&in, FRAME_CONFLICT, "slope");
    in = floor_joist();
    in.unbraced_length_in = 24;
    refused(&in, FRAME_CONFLICT, "unbraced_length_in");
    in = floor_joist();
    in.bearing_in = 48;
    in.span_in = 90;
    refused(&in, FRAME_IMPOSSIBLE, "bearing_in");
    in = floor_joist();
    in.size = FRAME_SIZE(1, 6);
    refused(&in, FRAME_NO_VALUE, "size");
}
END_TEST

/* Trap 3: R_B at most 50. */
START_TEST(too_slender) {
    frame_joist_check_in in = floor_joist();
    in.size = FRAME_SIZE(2, 14);
    in.span_in = 400;
    in.compression_edge = FRAME_EDGE_FREE;
    refused(&in, FRAME_OUTSIDE_SCOPE, "unbraced_length_in");
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "R_B"));
}
END_TEST

static void compare_with_working(const frame_joist_check_in *in) {
    frame_joist_check_out with, without = run(in);
    frame_working *working;
    ck_assert_int_eq(frame_working_new(&working), FRAME_OK);
    ck_assert_msg(!frame_joist_check(in, &with, working), "%s", frame_error_text());
    ck_assert(!memcmp(&with, &without, sizeof with));
    working_is_sound(working);
    SAME(value_of(working, "ratio"), with.ratio);
    frame_working_free(working);
}

START_TEST(working_holds_in_every_branch) {
    frame_joist_check_in in = floor_joist();
    compare_with_working(&in);
    in.snow_psf = 50;
    in.compression_edge = FRAME_EDGE_FREE;
    compare_with_working(&in);
    in.unbraced_length_in = 20;
    compare_with_working(&in);
    in.size = FRAME_SIZE(4, 4);
    compare_with_working(&in);
    in = floor_joist();
    in.use = FRAME_USE_RAFTER;
    in.slope = 0.5;
    in.snow_psf = 25;
    compare_with_working(&in);
    in.total_deflection_limit = 180;
    compare_with_working(&in);
    in = floor_joist();
    in.use = FRAME_USE_DECK;
    compare_with_working(&in);
    in.temperature = FRAME_TEMPERATURE_150F;
    in.plies = 3;
    compare_with_working(&in);
}
END_TEST

/* A refused call leaves the working as it was. */
START_TEST(refusal_leaves_the_working) {
    frame_joist_check_in in = floor_joist();
    frame_joist_check_out out;
    frame_working *working;
    ck_assert_int_eq(frame_working_new(&working), FRAME_OK);
    ck_assert_int_eq(frame_joist_check(&in, &out, working), FRAME_OK);
    const size_t count = frame_working_step_count(working);
    in.size = FRAME_SIZE(2, 14);
    in.span_in = 400;
    in.compression_edge = FRAME_EDGE_FREE;
    ck_assert_int_eq(frame_joist_check(&in, &out, working), FRAME_OUTSIDE_SCOPE);
    ck_assert_uint_eq(frame_working_step_count(working), count);
    frame_working_free(working);
}
END_TEST

/* More of a load or a longer span never lowers a ratio. */
static void rises(const frame_joist_check_in *in, double before[5], double at) {
    const frame_joist_check_out out = run(in);
    const double now[5] = {out.ratio, out.bending_ratio, out.shear_ratio, out.bearing_ratio, out.deflection_ratio};
    for (int k = 0; k < 5; k++) {
        ck_assert_msg(now[k] >= before[k] * (1 - 1e-12), "ratio %d falls to %.17g at %g", k, now[k], at);
        before[k] = now[k];
    }
}

#define NEVER_FALLS(in, field, from, to)                           \
    do {                                                           \
        frame_joist_check_in varied = in;                          \
        double before[5] = {0};                                    \
        for (int step = 0; step <= 40; step++) {                   \
            varied.field = (from) + ((to) - (from)) * step / 40.0; \
            rises(&varied, before, varied.field);                  \
        }                                                          \
    } while (0)

static frame_joist_check_in variant(int i) {
    frame_joist_check_in in = floor_joist();
    in.use = 1 + i % 4;
    in.snow_psf = i % 3 * 25;
    if (i % 2) in.compression_edge = FRAME_EDGE_FREE, in.unbraced_length_in = 60;
    if (in.use == FRAME_USE_RAFTER) in.slope = 0.5;
    return in;
}

START_TEST(more_load_or_span_never_lowers_a_ratio) {
    const frame_joist_check_in in = variant(_i);
    NEVER_FALLS(in, live_psf, 0, 120);
    NEVER_FALLS(in, dead_psf, 0, 120);
    NEVER_FALLS(in, snow_psf, 0, 120);
    NEVER_FALLS(in, span_in, 60, 240);
    NEVER_FALLS(in, spacing_in, 6, 48);
}
END_TEST

/* Southern Pine No.3, No.2, No.1, Select Structural: each value at least that of the grade below. */
START_TEST(better_grade_never_raises_a_ratio) {
    static const char *const grades[] = {"No.3", "No.2", "No.1", "Select Structural"};
    static const char *const kinds[] = {"SPF", "HF", "DFL", "SP"};
    for (size_t s = 0; s < 4; s++) {
        double before = INFINITY;
        for (size_t g = 0; g < 4; g++) {
            frame_joist_check_in in = floor_joist();
            in.species = species(kinds[s]);
            in.grade = grade(grades[g]);
            const double ratio = run(&in).ratio;
            ck_assert_msg(ratio <= before, "%s %s: %g after %g", kinds[s], grades[g], ratio, before);
            before = ratio;
        }
    }
}
END_TEST

START_TEST(assumptions_are_listed) {
    frame_joist_check_in in = floor_joist();
    const frame_joist_check_out some = run(&in);
    in.plies = 1;
    in.service = FRAME_SERVICE_DRY;
    in.incised = 0;
    in.repetitive = 1;
    in.compression_edge = FRAME_EDGE_HELD;
    in.temperature = FRAME_TEMPERATURE_100F;
    in.bearing_in = 1.5;
    in.deflection_limit = 360;
    in.total_deflection_limit = 240;
    in.method = FRAME_METHOD_ASD;
    in.load_edition = FRAME_LOADS_ASCE_7_16;
    in.creep_factor = 1.5;
    in.edition = FRAME_NDS_2018;
    const frame_joist_check_out none = run(&in);
    ck_assert(some.assumed != 0);
    ck_assert_uint_eq(none.assumed, 0);
    ck_assert_double_eq(some.ratio, none.ratio);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("joist_check");
    TCase *tests = tcase_create("joist_check");
    tcase_add_test(tests, floor_joist_by_hand);
    tcase_add_test(tests, dead_load_alone_can_govern);
    tcase_add_test(tests, snow_counts_with_its_own_duration);
    tcase_add_test(tests, roof_live_load_and_snow_do_not_add);
    tcase_add_test(tests, rafter_along_its_true_length);
    tcase_add_test(tests, free_compression_edge);
    tcase_add_test(tests, wet_and_incised);
    tcase_add_test(tests, repetitive_use);
    tcase_add_test(tests, design_guide_floor_joist);
    tcase_add_test(tests, what_is_missing_or_contradicts);
    tcase_add_test(tests, too_slender);
    tcase_add_test(tests, working_holds_in_every_branch);
    tcase_add_test(tests, refusal_leaves_the_working);
    tcase_add_loop_test(tests, more_load_or_span_never_lowers_a_ratio, 0, 12);
    tcase_add_test(tests, better_grade_never_raises_a_ratio);
    tcase_add_test(tests, assumptions_are_listed);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
