/* Section properties against the formulas, and the trap of flat plies. */
#include <check.h>
#include <string.h>

#include <frame/material.h>
#include <frame/text.h>
#include <frame/working.h>

#include "base/facts.h"
#include "material/lumber.h"
#include "table_lumber_sizes.h"

static frame_section_out section_of(frame_size size, int32_t plies, frame_turned turned) {
    frame_section_in in;
    frame_section_out out;
    frame_section_in_init(&in);
    in.size = size, in.plies = plies, in.turned = turned;
    ck_assert_msg(!frame_section(&in, &out, NULL), "%s", frame_error_text());
    return out;
}

START_TEST(a_2x10) {
    const frame_section_out one = section_of(FRAME_SIZE(2, 10), 1, FRAME_TURNED_ON_EDGE);
    ck_assert_double_eq(one.width_in, 1.5);
    ck_assert_double_eq(one.depth_in, 9.25);
    ck_assert_double_eq(one.area_in2, 13.875);
    ck_assert_double_eq_tol(one.section_modulus_in3, 21.390625, 1e-12);
    ck_assert_double_eq_tol(one.inertia_in4, 98.931640625, 1e-12);
    ck_assert_double_eq_tol(one.board_feet_per_foot, 20.0 / 12, 1e-12);
    ck_assert_int_eq(one.known, FRAME_KNOWN_READ);
}
END_TEST

/* Three 2x4s lying flat bend each by itself: S is 3 b t^2 / 6 = 3.94, not 11.8 as for one block. */
START_TEST(flat_plies_are_not_one_block) {
    const frame_section_out flat = section_of(FRAME_SIZE(2, 4), 3, FRAME_TURNED_FLAT);
    ck_assert_double_eq_tol(flat.section_modulus_in3, 3.9375, 1e-12);
    ck_assert_double_eq_tol(flat.inertia_in4, 3 * 3.5 * 1.5 * 1.5 * 1.5 / 12, 1e-12);
    ck_assert_double_eq(flat.width_in, 3.5);
    ck_assert_double_eq(flat.depth_in, 1.5);
    ck_assert(FRAME_HAS(flat.cautions, FRAME_SECTION_CAUTION_FLAT_PLIES));
    const frame_section_out edge = section_of(FRAME_SIZE(2, 4), 3, FRAME_TURNED_ON_EDGE);
    ck_assert_double_eq_tol(edge.section_modulus_in3, 3 * 1.5 * 3.5 * 3.5 / 6, 1e-12);
    ck_assert(!FRAME_HAS(edge.cautions, FRAME_SECTION_CAUTION_FLAT_PLIES));
    const frame_section_out one = section_of(FRAME_SIZE(2, 4), 1, FRAME_TURNED_FLAT);
    ck_assert(!FRAME_HAS(one.cautions, FRAME_SECTION_CAUTION_FLAT_PLIES));
    ck_assert_double_eq_tol(flat.section_modulus_in3, 3 * one.section_modulus_in3, 1e-12);
}
END_TEST

START_TEST(every_size_by_the_formula) {
    for (size_t i = 0; i < frame_lumber_sizes_rows; i++)
        for (int32_t plies = 1; plies <= 8; plies++) {
            const frame_lumber_sizes_row *row = &frame_lumber_sizes_table[i];
            const double t = row->dry_thickness_in, f = row->dry_width_in;
            const frame_section_out edge = section_of(frame_size_at(i), plies, FRAME_TURNED_ON_EDGE);
            const frame_section_out flat = section_of(frame_size_at(i), plies, FRAME_TURNED_FLAT);
            ck_assert_double_eq_tol(edge.section_modulus_in3 / (plies * t * f * f / 6), 1, 1e-12);
            ck_assert_double_eq_tol(edge.inertia_in4 / (plies * t * f * f * f / 12), 1, 1e-12);
            ck_assert_double_eq_tol(flat.section_modulus_in3 / (plies * f * t * t / 6), 1, 1e-12);
            ck_assert_double_eq_tol(flat.inertia_in4 / (plies * f * t * t * t / 12), 1, 1e-12);
            ck_assert_double_eq_tol(edge.area_in2, plies * t * f, 1e-9);
            ck_assert_double_eq_tol(edge.area_in2, flat.area_in2, 1e-9);
        }
}
END_TEST

START_TEST(green_and_true_sizes) {
    frame_section_in in;
    frame_section_out out;
    frame_section_in_init(&in);
    in.size = FRAME_SIZE(2, 10), in.green = 1;
    ck_assert_int_eq(frame_section(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq(out.width_in, 1.5625);
    ck_assert_double_eq(out.depth_in, 9.5);
    ck_assert(FRAME_HAS(out.cautions, FRAME_SECTION_CAUTION_GREEN));
    frame_section_in_init(&in);
    in.width_in = 1.75, in.depth_in = 9;
    ck_assert_int_eq(frame_section(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq_tol(out.section_modulus_in3, 1.75 * 81 / 6, 1e-12);
    ck_assert_int_eq(out.known, FRAME_KNOWN_USER);
    const frame_section_out timber = section_of(FRAME_SIZE(8, 12), 1, FRAME_TURNED_ON_EDGE);
    ck_assert(FRAME_HAS(timber.cautions, FRAME_SECTION_CAUTION_TIMBER));
    ck_assert(!FRAME_HAS(section_of(FRAME_SIZE(6, 6), 1, FRAME_TURNED_ON_EDGE).cautions, FRAME_SECTION_CAUTION_TIMBER));
}
END_TEST

/* Every formula recorded comes out as its value, and the trap is told. */
START_TEST(the_working_holds) {
    frame_working *working;
    frame_text *text;
    frame_section_in in;
    frame_section_out out;
    ck_assert(!frame_working_new(&working) && !frame_text_new(&text));
    frame_section_in_init(&in);
    in.size = FRAME_SIZE(2, 4), in.plies = 3, in.turned = FRAME_TURNED_FLAT;
    ck_assert_int_eq(frame_section(&in, &out, working), FRAME_OK);
    ck_assert_uint_ge(frame_working_step_count(working), 7);
    ck_assert_msg(!frame_working_check(working, text), "%s", frame_text_chars(text));
    ck_assert_int_eq(frame_working_render(working, FRAME_RENDER_TEXT, text), FRAME_OK);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "not of one block"));
    in.size = FRAME_SIZE(2, 7);
    const size_t steps = frame_working_step_count(working);
    ck_assert_int_ne(frame_section(&in, &out, working), FRAME_OK);
    ck_assert_uint_eq(frame_working_step_count(working), steps);
    frame_text_free(text);
    frame_working_free(working);
}
END_TEST

START_TEST(contradictions_are_refused) {
    frame_section_in in;
    frame_section_out out = {.area_in2 = 7};
    frame_section_in_init(&in);
    ck_assert_int_eq(frame_section(&in, &out, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "size");
    in.width_in = 1.5;
    ck_assert_int_eq(frame_section(&in, &out, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "depth_in");
    in.size = FRAME_SIZE(2, 4);
    ck_assert_int_eq(frame_section(&in, &out, NULL), FRAME_CONFLICT);
    frame_section_in_init(&in);
    in.depth_in = 5;
    ck_assert_int_eq(frame_section(&in, &out, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "width_in");
    in.width_in = 5, in.green = 1;
    ck_assert_int_eq(frame_section(&in, &out, NULL), FRAME_CONFLICT);
    frame_section_in_init(&in);
    in.size = FRAME_SIZE(2, 7);
    ck_assert_int_eq(frame_section(&in, &out, NULL), FRAME_UNKNOWN_NAME);
    in.size = FRAME_SIZE(2, 4), in.plies = 0;
    ck_assert_int_eq(frame_section(&in, &out, NULL), FRAME_OUT_OF_RANGE);
    ck_assert_double_eq(out.area_in2, 7);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("section");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, a_2x10);
    tcase_add_test(tests, flat_plies_are_not_one_block);
    tcase_add_test(tests, every_size_by_the_formula);
    tcase_add_test(tests, green_and_true_sizes);
    tcase_add_test(tests, the_working_holds);
    tcase_add_test(tests, contradictions_are_refused);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
