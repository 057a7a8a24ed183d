/* Jack and king studs: each part against column_check and by hand, the fewest that hold, what is refused. */
#include "lumber_names.h"

#include <frame/frame.h>

static frame_opening_studs_in opening(double width) {
    frame_opening_studs_in in;
    frame_opening_studs_in_init(&in);
    in.size = FRAME_SIZE(2, 6), in.species = species("SPF"), in.grade = grade("No.2");
    in.opening_in = width, in.wall_height_in = 97.125, in.jack_length_in = 81;
    in.dead_plf = 250, in.live_plf = 120, in.snow_plf = 360, in.wind_psf = 28;
    in.header_species = in.species, in.plate_species = in.species, in.header_width_in = 3;
    in.weak_axis_held = 1;
    return in;
}

static frame_opening_studs_out run(const frame_opening_studs_in *in) {
    frame_opening_studs_out out;
    frame_working *working;
    ck_assert(!frame_working_new(&working));
    ck_assert_msg(!frame_opening_studs(in, &out, working), "%s", frame_error_text());
    working_is_sound(working);
    frame_working_free(working);
    return out;
}

static void refused(const frame_opening_studs_in *in, frame_status status, const char *field) {
    frame_opening_studs_out out;
    ck_assert_int_eq(frame_opening_studs(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_str_ne(frame_error_valid(), "");
}

static frame_column_check_out column_of(const frame_opening_studs_in *in, int32_t plies, double length, double axial,
                                        double lateral, frame_load_duration duration) {
    frame_column_check_in c;
    frame_column_check_out out;
    frame_column_check_in_init(&c);
    c.size = in->size, c.species = in->species, c.grade = in->grade, c.plies = plies;
    c.weak_axis_held = in->weak_axis_held;
    if (plies > 1) c.fastening = FRAME_COLUMN_NAILED;
    c.length_in = length, c.axial_lb = axial, c.lateral_plf = lateral, c.load_duration = duration;
    ck_assert_msg(!frame_column_check(&c, &out, NULL), "%s", frame_error_text());
    return out;
}

/* One combination after the other, by hand. */
START_TEST(parts_by_hand) {
    frame_opening_studs_in in = opening(72);
    const frame_opening_studs_out out = run(&in);
    ck_assert_int_eq(out.jacks, 1);
    ck_assert_int_eq(out.kings, 1);
    const double half = (72 + 2 * 1.5) / 2 / 12, R_S = (250 + 360) * half;
    SAME(out.crushing_load_lb, R_S);
    ck_assert_int_eq(out.header_combination, FRAME_COMBINATION_D_S);
    SAME(out.header_ratio, R_S / (1.5 * 3) / 425);
    SAME(out.plate_ratio, R_S / (1.5 * 5.5) / 425);
    SAME(out.jack_load_lb, R_S);
    SAME(out.jack_ratio, column_of(&in, 1, 81, R_S, 0, FRAME_DURATION_TWO_MONTHS).ratio);
    const double beside = 0.5 * 1.5 + 16 / 2., wide = 72 / 2. + 1.5 + beside;
    SAME(out.wind_width_in, wide);
    ck_assert_int_eq(out.king_combination, FRAME_COMBINATION_D_W);
    SAME(out.king_load_lb, 250 * beside / 12);
    SAME(out.king_wind_plf, 0.6 * 28 * wide / 12);
    SAME(out.king_ratio,
         column_of(&in, 1, 97.125, out.king_load_lb, out.king_wind_plf, FRAME_DURATION_TEN_MINUTES).ratio);
    ck_assert_int_eq(out.governs, FRAME_OPENING_HEADER);
    SAME(out.ratio, out.header_ratio);
}
END_TEST

/* The number found holds; one fewer does not. More studs never use more. */
START_TEST(fewest_that_hold) {
    for (int width = 24; width <= 240; width += 24) {
        frame_opening_studs_in in = opening(width);
        const frame_opening_studs_out out = run(&in);
        ck_assert(out.passes);
        for (int part = 0; part < 2; part++) {
            in.jacks = out.jacks, in.kings = out.kings;
            SAME(run(&in).ratio, out.ratio);
            int32_t *fewer = part ? &in.kings : &in.jacks;
            if (*fewer == 1) continue;
            *fewer -= 1;
            const frame_opening_studs_out less = run(&in);
            ck_assert(!less.passes);
            ck_assert(part ? less.king_ratio > 1 : fmax(less.jack_ratio, less.header_ratio) > 1);
        }
    }
}
END_TEST

START_TEST(reaction_given_or_found) {
    frame_opening_studs_in in = opening(72), point = in;
    in.jacks = point.jacks = 2;
    const double half = (72 + 4 * 1.5) / 2 / 12;
    point.dead_plf = point.live_plf = point.snow_plf = 0;
    point.dead_lb = 250 * half, point.live_lb = 120 * half, point.snow_lb = 360 * half;
    const frame_opening_studs_out a = run(&in), b = run(&point);
    SAME(a.jack_ratio, b.jack_ratio);
    SAME(a.header_ratio, b.header_ratio);
    ck_assert_double_eq(b.king_load_lb, 0);
}
END_TEST

START_TEST(strength_design_and_plies) {
    frame_opening_studs_in in = opening(96);
    in.method = FRAME_METHOD_LRFD;
    const frame_opening_studs_out out = run(&in);
    const double half = (96 + 2 * out.jacks * 1.5) / 2 / 12;
    SAME(out.crushing_load_lb, (1.2 * 250 + 120 + 1.6 * 360) * half);
    SAME(out.header_ratio, out.crushing_load_lb / (1.5 * out.jacks * 3) / (425 * 1.67 * 0.9));
    ck_assert_int_eq(out.king_combination, FRAME_COMBINATION_LRFD_W_S);
    in.weak_axis_held = 0; /* one stud is too slender: 97.125/1.5 is over 50 */
    in.method = FRAME_METHOD_ASD;
    const frame_opening_studs_out nailed = run(&in);
    ck_assert_int_ge(nailed.kings, 2);
    ck_assert(FRAME_HAS(nailed.cautions, FRAME_OPENING_STUDS_CAUTION_PLIES));
    in.kings = 1;
    refused(&in, FRAME_OUTSIDE_SCOPE, "kings");
    in.kings = FRAME_NOT_GIVEN_INT, in.jacks = 1;
    refused(&in, FRAME_OUTSIDE_SCOPE, "jacks");
}
END_TEST

START_TEST(says_what_it_leaves) {
    frame_opening_studs_in in = opening(72);
    in.header_species = in.plate_species = FRAME_NOT_GIVEN_INT, in.wind_psf = 0;
    frame_opening_studs_out out = run(&in);
    ck_assert_double_eq(out.header_ratio, FRAME_NOT_GIVEN);
    ck_assert_double_eq(out.plate_ratio, FRAME_NOT_GIVEN);
    ck_assert(FRAME_HAS(out.not_checked, FRAME_OPENING_STUDS_UNCHECKED_CRUSHING));
    ck_assert(FRAME_HAS(out.not_checked, FRAME_OPENING_STUDS_UNCHECKED_PLATE));
    ck_assert(FRAME_HAS(out.not_checked, FRAME_OPENING_STUDS_UNCHECKED_WIND));
    in.dead_plf = 30000; /* nothing of 2x6 holds that */
    out = run(&in);
    ck_assert(!out.passes);
    ck_assert_int_eq(out.jacks, 5);
    ck_assert(FRAME_HAS(out.cautions, FRAME_OPENING_STUDS_CAUTION_NONE));
}
END_TEST

START_TEST(nonsense) {
    frame_opening_studs_in in = opening(72);
    in.jack_length_in = 100;
    refused(&in, FRAME_CONFLICT, "jack_length_in");
    in = opening(72);
    in.header_fc_perp_psi = 700;
    refused(&in, FRAME_CONFLICT, "header_fc_perp_psi");
    in = opening(72);
    in.dead_plf = in.live_plf = in.snow_plf = in.wind_psf = 0;
    refused(&in, FRAME_REQUIRED, "dead_plf");
    in = opening(72);
    in.jacks = 6;
    refused(&in, FRAME_OUT_OF_RANGE, "jacks");
}
END_TEST

int main(void) {
    Suite *suite = suite_create("opening_studs");
    TCase *tests = tcase_create("opening_studs");
    tcase_add_test(tests, parts_by_hand);
    tcase_add_test(tests, fewest_that_hold);
    tcase_add_test(tests, reaction_given_or_found);
    tcase_add_test(tests, strength_design_and_plies);
    tcase_add_test(tests, says_what_it_leaves);
    tcase_add_test(tests, nonsense);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
