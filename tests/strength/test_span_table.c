/* A whole table of spans: each cell a joist_span, empty cells, cuts, CSV and page, refusals. */
#include <check.h>
#include <string.h>

#include <frame/strength.h>
#include <frame/text.h>
#include <frame/working.h>

#include "lumber_names.h"

static frame_span_table_in table_of(const frame_species *kinds, size_t count) {
    frame_span_table_in in;
    frame_span_table_in_init(&in);
    in.use = FRAME_USE_FLOOR;
    in.species = kinds, in.species_count = count;
    in.live_psf = 40, in.dead_psf = 10;
    return in;
}

static frame_span_table *fill(const frame_span_table_in *in, frame_span_table_out *out) {
    frame_span_table *table;
    frame_working *working;
    ck_assert(!frame_working_new(&working));
    ck_assert_msg(!frame_span_table_solve(in, &table, working), "%s", frame_error_text());
    working_is_sound(working);
    frame_working_free(working);
    ck_assert(!frame_span_table_result(table, out));
    return table;
}

START_TEST(cells_are_spans) {
    const frame_species kinds[] = {species("DFL"), species("SP")};
    const frame_span_table_in in = table_of(kinds, 2);
    frame_span_table_out out;
    frame_span_table *table = fill(&in, &out);
    ck_assert_uint_eq(frame_span_table_cell_count(table), 2 * 4 * 4 * 4);
    ck_assert_int_eq(out.filled_count, 128);
    for (size_t i = 0; i < 128; i++) {
        frame_span_table_cell cell;
        frame_joist_span_in one;
        frame_joist_span_out found;
        ck_assert(!frame_span_table_cell_at(table, i, &cell));
        frame_joist_span_in_init(&one);
        one.use = in.use, one.live_psf = 40, one.dead_psf = 10;
        one.species = cell.species, one.grade = cell.grade, one.size = cell.size, one.spacing_in = cell.spacing_in;
        ck_assert(!frame_joist_span(&one, &found, NULL));
        ck_assert_double_eq(cell.span_in, found.span_in);
        ck_assert_int_eq(cell.governs, found.governs);
    }
    frame_span_table_free(table);
}
END_TEST

/* IRC table R502.3.1(2), 40 psf live, 10 dead, 16 in: SPF No.2 2x8 12-3, 2x10 15-5. */
START_TEST(text_forms) {
    const frame_species kinds[] = {species("SPF")};
    const frame_size sizes[] = {FRAME_SIZE(2, 8), FRAME_SIZE(2, 10)};
    const frame_grade grades[] = {grade("No.2")};
    const double spacings[] = {16};
    frame_span_table_in in = table_of(kinds, 1);
    frame_span_table_out out;
    frame_text *text;
    in.sizes = sizes, in.size_count = 2, in.grades = grades, in.grade_count = 1;
    in.spacings_in = spacings, in.spacing_count = 1, in.rounding = FRAME_ROUND_NEAREST;
    frame_span_table *table = fill(&in, &out);
    ck_assert(!frame_text_new(&text));
    ck_assert(!frame_span_table_csv(table, text));
    ck_assert_str_eq(frame_text_chars(text),
                     "species,grade,spacing_in,span_in 2x8,span_in 2x10\nSpruce-Pine-Fir,No.2,16,147,185\n");
    frame_text_clear(text);
    ck_assert(!frame_span_table_page(table, text));
    ck_assert_ptr_nonnull(
        strstr(frame_text_chars(text), "<td>12&prime; 3&Prime;</td><td>15&prime; 5&Prime;<sup>b</sup></td>"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "live 40 psf"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "Dry in service (assumed). Allowable"));
    frame_span_table_free(table);
    in.use = FRAME_USE_DECK; /* wet and incised, and the page says so */
    table = fill(&in, &out);
    frame_text_clear(text);
    ck_assert(!frame_span_table_page(table, text));
    ck_assert_ptr_nonnull(
        strstr(frame_text_chars(text), "Wet in service (assumed), incised but Southern Pine (assumed)."));
    in.service = FRAME_SERVICE_WET, in.incised = 0;
    frame_span_table_free(table);
    table = fill(&in, &out);
    frame_text_clear(text);
    ck_assert(!frame_span_table_page(table, text));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "Wet in service. Allowable"));
    frame_text_free(text);
    frame_span_table_free(table);
}
END_TEST

START_TEST(empty_and_cut) {
    const frame_species kinds[] = {species("DFL")};
    const frame_size sizes[] = {FRAME_SIZE(1, 8), FRAME_SIZE(2, 12)}; /* boards have no stress grades */
    frame_span_table_in in = table_of(kinds, 1);
    frame_span_table_out out;
    frame_span_table_cell cell;
    in.sizes = sizes, in.size_count = 2, in.most_span_in = 200;
    frame_span_table *table = fill(&in, &out);
    ck_assert_int_eq(out.empty_count, 16);
    ck_assert(out.cautions >> FRAME_SPAN_TABLE_CAUTION_EMPTY & 1);
    ck_assert_double_eq(out.longest_in, 200);
    ck_assert(!frame_span_table_cell_at(table, 1, &cell));
    ck_assert_int_eq(cell.cut_off, 1);
    ck_assert(!frame_span_table_cell_at(table, 0, &cell));
    ck_assert_double_eq(cell.span_in, FRAME_NOT_GIVEN);
    frame_span_table_free(table);
}
END_TEST

START_TEST(refusals) {
    const frame_species kinds[] = {species("DFL")};
    frame_span_table_in in = table_of(kinds, 1);
    frame_span_table *table;
    in.live_psf = FRAME_NOT_GIVEN;
    ck_assert_int_eq(frame_span_table_solve(&in, &table, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "live_psf");
    in.live_psf = 40, in.slope = 0.5;
    ck_assert_int_eq(frame_span_table_solve(&in, &table, NULL), FRAME_CONFLICT);
    ck_assert_int_eq(frame_span_table_csv(NULL, NULL), FRAME_REQUIRED);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("span_table");
    TCase *all = tcase_create("all");
    tcase_add_test(all, cells_are_spans);
    tcase_add_test(all, text_forms);
    tcase_add_test(all, empty_and_cut);
    tcase_add_test(all, refusals);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
