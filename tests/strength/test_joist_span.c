/* joist_span: closed forms, agreement with joist_check, what is refused. */
#include "lumber_names.h"

static frame_joist_span_in floor_joist(void) {
    frame_joist_span_in in;
    frame_joist_span_in_init(&in);
    in.use = FRAME_USE_FLOOR;
    in.size = FRAME_SIZE(2, 10);
    in.species = species("DFL");
    in.grade = grade("No.2");
    in.spacing_in = 16;
    in.live_psf = 40;
    in.dead_psf = 10;
    return in;
}

static frame_joist_span_out run(const frame_joist_span_in *in) {
    frame_joist_span_out out;
    ck_assert_msg(!frame_joist_span(in, &out, NULL), "%s", frame_error_text());
    return out;
}

static void refused(const frame_joist_span_in *in, frame_status status, const char *field) {
    frame_joist_span_out out, before;
    memset(&out, 0x5a, sizeof out);
    before = out;
    ck_assert_int_eq(frame_joist_span(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert(!memcmp(&out, &before, sizeof out));
}

START_TEST(floor_joist_by_hand) {
    const frame_joist_span_in in = floor_joist();
    const frame_joist_span_out out = run(&in);
    const double w = 50.0 * 16 / 12 / 12, b = 1.5, d = 9.25, S = b * d * d / 6, I = b * d * d * d / 12;
    SAME(out.bending_span_in, sqrt(8 * 900 * 1.1 * 1.15 * S / w));
    SAME(out.shear_span_in, 2 * (180 * b * d / 1.5) / w);
    SAME(out.deflection_span_in, cbrt(384 * 1.6e6 * I / (5 * 0.8 * w * 360)));
    SAME(out.bearing_span_in, 2 * 1.5 * 1.5 * 625 / w);
    SAME(out.bearing_needed_in, w * out.span_in / 2 / 1.5 / 625);
    ck_assert_double_eq(out.total_deflection_span_in, FRAME_NOT_GIVEN);
    ck_assert_double_eq(out.span_in, out.bending_span_in);
    ck_assert_int_eq(out.governs, FRAME_GOVERNS_BENDING);
    ck_assert(FRAME_HAS(out.not_checked, FRAME_BENDING_UNCHECKED_TOTAL));
}
END_TEST

/* Residential Structural Design Guide, 2nd edition (2017), example 5.1, a 2x8 at 16 in: spans in feet. Its design
 * values; shear at 150 psi is its 75 psi times C_H 2.0. */
START_TEST(design_guide_floor_joist) {
    frame_joist_span_in in;
    frame_joist_span_in_init(&in);
    in.use = FRAME_USE_FLOOR;
    in.size = FRAME_SIZE(2, 8);
    in.fb_psi = 975 * 1.2;
    in.fv_psi = 150;
    in.fc_perp_psi = 405;
    in.e_psi = 1.5e6;
    in.repetitive = 1;
    in.live_psf = 30;
    in.dead_psf = 10;
    in.bearing_in = 2;
    const frame_joist_span_out out = run(&in);
    PRINTED(out.bending_span_in / 12, 14.866, 0.001); /* printed 14.865, cut not rounded */
    PRINTED(out.shear_span_in / 12, 40.8, 0.1);
    PRINTED(out.bearing_span_in / 12, 45.6, 0.1);
    PRINTED(out.deflection_span_in / 12, 13.8, 0.1);
    ck_assert_int_eq(out.governs, FRAME_GOVERNS_DEFLECTION);
    in.live_psf = 40; /* the guide's span against vibration: 40 psf at L/360; printed 12.5, cut not rounded */
    PRINTED(run(&in).deflection_span_in / 12, 12.57, 0.01);
}
END_TEST

/* At the span found, the check of it comes to 1. */
static void agrees_with_check(const frame_joist_span_in *in) {
    const frame_joist_span_out span = run(in);
    frame_joist_check_in check;
    frame_joist_check_out out;
    frame_joist_check_in_init(&check);
    check.use = in->use, check.size = in->size, check.species = in->species, check.grade = in->grade,
    check.plies = in->plies;
    check.service = in->service, check.incised = in->incised, check.repetitive = in->repetitive;
    check.spacing_in = in->spacing_in, check.live_psf = in->live_psf, check.dead_psf = in->dead_psf;
    check.snow_psf = in->snow_psf, check.slope = in->slope, check.deflection_limit = in->deflection_limit;
    check.total_deflection_limit = in->total_deflection_limit == FRAME_NOT_GIVEN ? 1 : in->total_deflection_limit;
    check.bearing_in = 0.001;
    check.span_in = span.span_in;
    ck_assert_msg(!frame_joist_check(&check, &out, NULL), "%s", frame_error_text());
    const double most = fmax(out.bending_ratio, fmax(out.shear_ratio, out.deflection_ratio));
    ck_assert_msg(fabs(most - 1) < 1e-9, "ratio %.15g at the longest span", most);
    ck_assert(fabs(out.bearing_ratio * 0.001 / span.bearing_needed_in - 1) < 1e-9);
    SAME(out.fb_adjusted_psi, span.fb_adjusted_psi);
    SAME(out.fv_adjusted_psi, span.fv_adjusted_psi);
    SAME(out.e_adjusted_psi, span.e_adjusted_psi);
}

START_TEST(the_check_of_the_longest_span_is_one) {
    static const frame_size sizes[] = {FRAME_SIZE(2, 4), FRAME_SIZE(2, 6), FRAME_SIZE(2, 12), FRAME_SIZE(4, 10),
                                       FRAME_SIZE(3, 8)};
    static const char *const kinds[] = {"SPF", "HF", "DFL", "SP"};
    for (int i = 0; i < 400; i++) {
        frame_joist_span_in in = floor_joist();
        in.size = sizes[i % 5];
        in.species = species(kinds[i % 4]);
        in.use = 1 + i % 4;
        in.spacing_in = 12 + i % 37;
        in.dead_psf = i % 23 * 3;
        in.live_psf = i % 7 * 15;
        in.snow_psf = i % 5 * 20;
        if (in.use == FRAME_USE_RAFTER && i % 8 < 4) in.slope = i % 11 / 8.0;
        if (i % 3 == 0) in.total_deflection_limit = 240;
        if (in.live_psf + in.snow_psf + in.dead_psf > 0) agrees_with_check(&in);
    }
}
END_TEST

START_TEST(decks_are_wet_and_incised_but_for_southern_pine) {
    frame_joist_span_in in = floor_joist();
    in.use = FRAME_USE_DECK;
    SAME(run(&in).incising_factor, 0.8);
    SAME(run(&in).e_adjusted_psi, 1.6e6 * 0.9 * 0.95);
    in.species = species("SP");
    SAME(run(&in).incising_factor, 1);
    in.incised = 1;
    SAME(run(&in).incising_factor, 0.8);
    in.incised = 0;
    in.species = species("DFL");
    SAME(run(&in).incising_factor, 1);
}
END_TEST

START_TEST(short_bearing_is_said) {
    frame_joist_span_in in = floor_joist();
    ck_assert(!FRAME_HAS(run(&in).cautions, FRAME_BENDING_CAUTION_SHORT_BEARING));
    in.bearing_in = 0.25;
    const frame_joist_span_out out = run(&in);
    ck_assert(FRAME_HAS(out.cautions, FRAME_BENDING_CAUTION_SHORT_BEARING));
    ck_assert(out.bearing_needed_in > 0.25 && out.bearing_span_in < out.span_in);
}
END_TEST

static void has_sound_working(const frame_joist_span_in *in) {
    frame_joist_span_out with, without = run(in);
    frame_working *working;
    ck_assert_int_eq(frame_working_new(&working), FRAME_OK);
    ck_assert_msg(!frame_joist_span(in, &with, working), "%s", frame_error_text());
    ck_assert(!memcmp(&with, &without, sizeof with));
    working_is_sound(working);
    frame_working_free(working);
}

START_TEST(working_holds_in_every_branch) {
    frame_joist_span_in in = floor_joist();
    has_sound_working(&in);
    in.total_deflection_limit = 240;
    in.snow_psf = 30;
    has_sound_working(&in);
    in.use = FRAME_USE_RAFTER;
    in.slope = 1;
    has_sound_working(&in);
    in.live_psf = 0;
    in.snow_psf = 0;
    has_sound_working(&in);
}
END_TEST

START_TEST(what_is_refused) {
    frame_joist_span_in in = floor_joist();
    in.live_psf = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "live_psf");
    in.live_psf = 0;
    in.dead_psf = 0;
    refused(&in, FRAME_IMPOSSIBLE, "dead_psf");
    in = floor_joist();
    in.spacing_in = 0;
    refused(&in, FRAME_OUT_OF_RANGE, "spacing_in");
    in = floor_joist();
    in.size = FRAME_NOT_GIVEN_INT;
    refused(&in, FRAME_REQUIRED, "size");
    in = floor_joist();
    in.slope = 0.3;
    refused(&in, FRAME_CONFLICT, "slope");
}
END_TEST

int main(void) {
    Suite *suite = suite_create("joist_span");
    TCase *tests = tcase_create("joist_span");
    tcase_add_test(tests, floor_joist_by_hand);
    tcase_add_test(tests, design_guide_floor_joist);
    tcase_add_test(tests, the_check_of_the_longest_span_is_one);
    tcase_add_test(tests, decks_are_wet_and_incised_but_for_southern_pine);
    tcase_add_test(tests, short_bearing_is_said);
    tcase_add_test(tests, working_holds_in_every_branch);
    tcase_add_test(tests, what_is_refused);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
