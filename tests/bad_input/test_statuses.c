/* Every status but "internal", which would be a mistake of the library's own, comes out of a call in C at least once.
 */
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

static frame_section_in section(void) {
    frame_section_in in;
    ck_assert_int_eq(frame_section_in_init(&in), FRAME_OK);
    in.size = FRAME_SIZE(2, 10);
    return in;
}

static void gives(frame_status expected, frame_status status, const char *field) {
    ck_assert_msg(status == expected, "%s instead of %s: %s", frame_status_name(status), frame_status_name(expected),
                  frame_error_text());
    ck_assert_int_eq(frame_error_status(), expected);
    ck_assert_msg(strstr(frame_error_text(), field) == frame_error_text(), "%s", frame_error_text());
    ck_assert_ptr_null(strchr(frame_error_text(), '\n'));
}

static void section_gives(frame_status expected, frame_section_in in, const char *field) {
    frame_section_out out;
    memset(&out, 0x5a, sizeof out);
    gives(expected, frame_section(&in, &out, NULL), field);
    for (size_t i = 0; i < sizeof out; i++) ck_assert_uint_eq(((unsigned char *)&out)[i], 0x5a);
}

START_TEST(what_a_field_can_be_refused_for) {
    frame_section_in in = section();
    section_gives(FRAME_NOT_INITIALISED, (frame_section_in){0}, "frame_section_in");
    in.struct_size += 8;
    section_gives(FRAME_NEWER_HEADER, in, "frame_section_in");
    in = section(), in.size = FRAME_NOT_GIVEN_INT;
    section_gives(FRAME_REQUIRED, in, "size");
    in = section(), in.plies = 0;
    section_gives(FRAME_OUT_OF_RANGE, in, "plies");
    in = section(), in.width_in = NAN;
    section_gives(FRAME_NOT_A_NUMBER, in, "width_in");
    in = section(), in.size = FRAME_SIZE(2, 11);
    section_gives(FRAME_UNKNOWN_NAME, in, "size");
    in = section(), in.width_in = 3, in.depth_in = 4;
    section_gives(FRAME_CONFLICT, in, "size");
}
END_TEST

START_TEST(what_a_text_can_be_refused_for) {
    double inches = 5;
    char small[3];
    frame_tape_style style;
    gives(FRAME_UNREADABLE, frame_tape_parse("7 x", &inches), "text");
    gives(FRAME_AMBIGUOUS, frame_tape_parse("13 6", &inches), "text");
    ck_assert_double_eq(inches, 5);
    ck_assert_int_eq(frame_tape_style_init(&style), FRAME_OK);
    ck_assert_int_eq(frame_tape_format(123.5, &style, small, sizeof small), FRAME_BUFFER_TOO_SMALL);
    gives(FRAME_WRONG_TYPE, frame_struct_init(frame_struct_find("section_out"), &inches, sizeof inches), "section_out");
}
END_TEST

START_TEST(what_a_column_can_be_refused_for) {
    const frame_section_in in = section();
    double ratio;
    const frame_batch_column column = {"ratoi", &ratio, 0};
    gives(FRAME_UNKNOWN_FIELD, frame_batch(frame_calculation_find("section"), &in, NULL, 0, &column, 1, 1, NULL),
          "ratoi");
}
END_TEST

START_TEST(what_a_whole_can_be_refused_for) {
    frame_layout_marks_in marks;
    frame_layout_marks *laid = NULL;
    frame_layout_marks_in_init(&marks);
    marks.length_in = 1200, marks.spacing_in = 0.5;
    gives(FRAME_IMPOSSIBLE, frame_layout_marks_solve(&marks, &laid, NULL), "spacing_in");
    marks.spacing_in = 16, marks.sheet_in = 0.001;
    gives(FRAME_TOO_LARGE, frame_layout_marks_solve(&marks, &laid, NULL), "sheet_in");
    ck_assert_ptr_null(laid);

    frame_beam_solve_in beam;
    frame_beam_solve *solved = NULL;
    frame_beam_support supports[2];
    const double span = 100;
    frame_beam_solve_in_init(&beam);
    frame_beam_support_init(&supports[0]), frame_beam_support_init(&supports[1]);
    supports[0].kind = FRAME_SUPPORT_NONE, supports[1].kind = FRAME_SUPPORT_PINNED;
    beam.spans_in = &span, beam.span_count = 1, beam.supports = supports, beam.support_count = 2, beam.dead_plf = 10;
    gives(FRAME_UNSTABLE, frame_beam_solve_solve(&beam, &solved, NULL), "supports");
    ck_assert_ptr_null(solved);

    const double apart[] = {10, 90};
    frame_readings_in readings;
    frame_readings_out mean;
    frame_readings_in_init(&readings);
    readings.readings_in = apart, readings.reading_count = 2, readings.use = FRAME_READING_REACH;
    gives(FRAME_REFUSED, frame_readings(&readings, &mean, NULL), "readings_in");
}
END_TEST

START_TEST(what_a_table_can_be_refused_for) {
    frame_design_values_in values;
    frame_design_values_out found;
    frame_design_values_in_init(&values);
    values.size = FRAME_SIZE(1, 4);
    ck_assert(!frame_species_find("SPF", &values.species) && !frame_grade_find("No.2", &values.grade));
    gives(FRAME_NO_VALUE, frame_design_values(&values, &found, NULL), "size");

    frame_code_joist_span_in joist;
    frame_code_joist_span_out span;
    frame_code_joist_span_in_init(&joist);
    joist.use = FRAME_USE_FLOOR, joist.size = FRAME_SIZE(2, 10), joist.species = values.species,
    joist.grade = values.grade;
    joist.spacing_in = 25, joist.live_psf = 40, joist.dead_psf = 10;
    ck_assert_int_eq(frame_word_find("code_edition", "2021", &joist.edition), FRAME_OK);
    gives(FRAME_OUTSIDE_SCOPE, frame_code_joist_span(&joist, &span, NULL), "spacing_in");
}
END_TEST

START_TEST(what_a_file_can_be_refused_for) {
    frame_text *text = NULL;
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    ck_assert_int_eq(frame_text_save(text, "no such folder/page.html"), FRAME_NOT_WRITTEN);
    frame_text_free(text);
}
END_TEST

static int has_memory;
static void *take(void *user, size_t size) {
    (void)user;
    return has_memory ? malloc(size) : NULL;
}
static void *retake(void *user, void *block, size_t size) {
    (void)user;
    return has_memory ? realloc(block, size) : NULL;
}
static void give(void *user, void *block) {
    (void)user;
    free(block);
}

/* The first of all, as the allocator is set once, before any use. */
START_TEST(what_memory_can_be_refused_for) {
    const frame_allocator allocator = {take, retake, give, NULL};
    frame_text *text = NULL;
    ck_assert_int_eq(frame_allocator_set(&allocator), FRAME_OK);
    ck_assert_int_eq(frame_text_new(&text), FRAME_NO_MEMORY);
    ck_assert_ptr_null(text);
    ck_assert_int_eq(frame_allocator_set(&allocator), FRAME_ALREADY_USED);
    has_memory = 1;
}
END_TEST

int main(void) {
    Suite *suite = suite_create("statuses");
    TCase *tests = tcase_create("statuses");
    tcase_add_test(tests, what_memory_can_be_refused_for);
    tcase_add_test(tests, what_a_field_can_be_refused_for);
    tcase_add_test(tests, what_a_text_can_be_refused_for);
    tcase_add_test(tests, what_a_column_can_be_refused_for);
    tcase_add_test(tests, what_a_whole_can_be_refused_for);
    tcase_add_test(tests, what_a_table_can_be_refused_for);
    tcase_add_test(tests, what_a_file_can_be_refused_for);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
