/* Sizes, species and grades: every name leads back to its id, stamps are read, what is unknown is named. */
#include <check.h>
#include <stdio.h>
#include <string.h>

#include <frame/fields.h>
#include <frame/material.h>

#include "material/lumber.h"
#include "table_grades.h"
#include "table_lumber_sizes.h"
#include "table_species.h"

START_TEST(every_name_leads_back) {
    for (size_t i = 0; i < frame_species_count(); i++) {
        frame_species found = 0, id = frame_species_at(i);
        ck_assert_int_eq(frame_species_find(frame_species_name(id), &found), FRAME_OK);
        ck_assert_int_eq(found, id);
    }
    for (size_t i = 0; i < frame_grade_count(); i++) {
        frame_grade found = 0, id = frame_grade_at(i);
        ck_assert_int_eq(frame_grade_find(frame_grade_name(id), &found), FRAME_OK);
        ck_assert_int_eq(found, id);
    }
    for (size_t i = 0; i < frame_size_count(); i++) {
        frame_size found = 0, id = frame_size_at(i);
        ck_assert_int_eq(frame_size_find(frame_size_name(id), &found), FRAME_OK);
        ck_assert_int_eq(found, id);
    }
    ck_assert_int_eq(frame_species_at(frame_species_count()), FRAME_NOT_GIVEN_INT);
    ck_assert_int_eq(frame_grade_at(frame_grade_count()), FRAME_NOT_GIVEN_INT);
    ck_assert_int_eq(frame_size_at(frame_size_count()), FRAME_NOT_GIVEN_INT);
}
END_TEST

/* Every spelling of the tables leads to its own row: no two rows claim the same one. */
static void one_owner(const char *spellings, int32_t id, frame_status (*find)(const char *, int32_t *)) {
    char each[80];
    while (*spellings) {
        const size_t length = strcspn(spellings, "|");
        snprintf(each, sizeof each, "%.*s", (int)length, spellings);
        int32_t found = 0;
        ck_assert_msg(find(each, &found) == FRAME_OK && found == id, "\"%s\" leads to %d, not %d", each, found, id);
        spellings += length + (spellings[length] == '|');
    }
}

START_TEST(every_spelling_has_one_owner) {
    for (size_t i = 0; i < frame_species_rows; i++) {
        one_owner(frame_species_table[i].short_name, frame_species_table[i].id, frame_species_find);
        one_owner(frame_species_table[i].spellings, frame_species_table[i].id, frame_species_find);
    }
    for (size_t i = 0; i < frame_grades_rows; i++)
        one_owner(frame_grades_table[i].spellings, frame_grades_table[i].id, frame_grade_find);
}
END_TEST

static const struct {
    const char *written, *name;
} species_written[] = {
    {"DFL", "Douglas Fir-Larch"},
    {"d fir-l", "Douglas Fir-Larch"},
    {"D FIR-L", "Douglas Fir-Larch"},
    {"HF", "Hem-Fir"},
    {"HEM-FIR", "Hem-Fir"},
    {"Hem Fir", "Hem-Fir"},
    {"SPF", "Spruce-Pine-Fir"},
    {"S-P-F", "Spruce-Pine-Fir"},
    {"spruce pine fir", "Spruce-Pine-Fir"},
    {"SP", "Southern Pine"},
    {"SYP", "Southern Pine"},
    {"southern yellow pine", "Southern Pine"},
    {"SPFs", "Spruce-Pine-Fir (South)"},
    {"SPF-S", "Spruce-Pine-Fir (South)"},
    {"HF(N)", "Hem-Fir (North)"},
    {"DF-S", "Douglas Fir-South"},
    {" W CEDAR ", "Western Cedars"},
    {"DFL (N)", "Douglas Fir-Larch (North)"},
};
static const struct {
    const char *written, *name;
} grades_written[] = {
    {"SS", "Select Structural"},
    {"SEL STR", "Select Structural"},
    {"No.2", "No.2"},
    {"NO. 2", "No.2"},
    {"#2", "No.2"},
    {"2", "No.2"},
    {"no 2", "No.2"},
    {"No.1 & Btr", "No.1 & Btr"},
    {"NO. 1&BTR", "No.1 & Btr"},
    {"No.1/No.2", "No.2"},
    {"2&BTR", "No.2"},
    {"STUD", "Stud"},
    {"CONST", "Construction"},
    {"STAND", "Standard"},
    {"UTIL", "Utility"},
    {"No.2 Dense", "No.2 Dense"},
    {"Dense No.2", "No.2 Dense"},
    {"No.1 Non-Dense", "No.1 Non-Dense"},
    {"DSS", "Dense Select Structural"},
};

START_TEST(stamps_are_read) {
    for (size_t i = 0; i < sizeof species_written / sizeof *species_written; i++) {
        frame_species id = 0;
        ck_assert_msg(!frame_species_find(species_written[i].written, &id), "%s: %s", species_written[i].written,
                      frame_error_text());
        ck_assert_str_eq(frame_species_name(id), species_written[i].name);
    }
    for (size_t i = 0; i < sizeof grades_written / sizeof *grades_written; i++) {
        frame_grade id = 0;
        ck_assert_msg(!frame_grade_find(grades_written[i].written, &id), "%s: %s", grades_written[i].written,
                      frame_error_text());
        ck_assert_str_eq(frame_grade_name(id), grades_written[i].name);
    }
}
END_TEST

START_TEST(sizes_are_read) {
    static const struct {
        const char *written;
        frame_size size;
    } rows[] = {{"2x10", FRAME_SIZE(2, 10)},
                {"2 X 10", FRAME_SIZE(2, 10)},
                {"2\xc3\x97"
                 "10",
                 FRAME_SIZE(2, 10)},
                {"2 by 4", FRAME_SIZE(2, 4)},
                {"5/4x6", FRAME_SIZE(1.25, 6)},
                {"1.25 x 6", FRAME_SIZE(1.25, 6)},
                {" 6X6 ", FRAME_SIZE(6, 6)},
                {"2\" x 4\"", FRAME_SIZE(2, 4)}};
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        frame_size size = 0;
        ck_assert_msg(!frame_size_find(rows[i].written, &size), "%s: %s", rows[i].written, frame_error_text());
        ck_assert_int_eq(size, rows[i].size);
    }
}
END_TEST

START_TEST(what_is_unknown_is_named) {
    int32_t id = 77;
    ck_assert_int_eq(frame_species_find("Hemfur", &id), FRAME_UNKNOWN_NAME);
    ck_assert_str_eq(frame_error_field(), "species");
    ck_assert_str_eq(frame_error_value(), "Hemfur");
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "did you mean \"Hem-Fir\""));
    ck_assert_ptr_nonnull(strstr(frame_error_valid(), "Southern Pine"));
    ck_assert_int_eq(frame_grade_find("No.5", &id), FRAME_UNKNOWN_NAME);
    ck_assert_str_eq(frame_error_field(), "grade");
    ck_assert_ptr_nonnull(strstr(frame_error_valid(), "Select Structural"));
    ck_assert_int_eq(frame_size_find("4x2", &id), FRAME_UNKNOWN_NAME);
    ck_assert_str_eq(frame_error_field(), "size");
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "did you mean \"2x4\""));
    ck_assert_int_eq(frame_species_find(NULL, &id), FRAME_REQUIRED);
    static const char *const wrong[] = {"",         " ",     "2x",      "x4",    "2x4x8", "2x11",
                                        "1.5x9.25", "2/0x4", "nan x 4", "2x1e9", "-2x4",  "2x4.01"};
    for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++)
        ck_assert_msg(frame_size_find(wrong[i], &id) == FRAME_UNKNOWN_NAME, "\"%s\" was read", wrong[i]);
    ck_assert_int_eq(frame_species_find("", &id), FRAME_UNKNOWN_NAME);
    ck_assert_int_eq(frame_grade_find(" . ", &id), FRAME_UNKNOWN_NAME);
    ck_assert_int_eq(id, 77);
}
END_TEST

START_TEST(ids_that_are_none_have_no_name) {
    static const int32_t none[] = {
        0, -1, INT32_MIN, INT32_MAX, 1000, FRAME_SIZE(3, 2), FRAME_SIZE(2, 7), FRAME_SIZE(2, 4) + 1};
    for (size_t i = 0; i < sizeof none / sizeof *none; i++) {
        ck_assert_ptr_null(frame_species_name(none[i]));
        ck_assert_ptr_null(frame_grade_name(none[i]));
        ck_assert_ptr_null(frame_size_name(none[i]));
        ck_assert_double_eq(frame_species_gravity(none[i], NULL), FRAME_NOT_GIVEN);
    }
}
END_TEST

/* The lists serve as word lists too. */
START_TEST(they_are_word_lists) {
    int32_t id = 0;
    ck_assert_uint_eq(frame_word_count("species"), frame_species_count());
    ck_assert_int_eq(frame_word_find("species", "S-P-F", &id), FRAME_OK);
    ck_assert_str_eq(frame_word_text("species", id), "Spruce-Pine-Fir");
    ck_assert_int_eq(frame_word_find("size", "2x10", &id), FRAME_OK);
    ck_assert_int_eq(id, FRAME_SIZE(2, 10));
    ck_assert_str_eq(frame_word_text("grade", frame_word_at("grade", 0)), "Select Structural");
}
END_TEST

/* Ids are the place in the table, so the table may only grow at its end. */
START_TEST(ids_follow_the_table) {
    for (int32_t i = 0; i < frame_species_rows; i++) ck_assert_int_eq(frame_species_table[i].id, i + 1);
    for (int32_t i = 0; i < frame_grades_rows; i++) ck_assert_int_eq(frame_grades_table[i].id, i + 1);
}
END_TEST

START_TEST(sizes_follow_the_rules) {
    for (size_t i = 0; i < frame_lumber_sizes_rows; i++) {
        const frame_lumber_sizes_row *row = &frame_lumber_sizes_table[i];
        ck_assert_msg(row->thickness_in <= row->width_in, "%s", row->name);
        ck_assert_msg(row->dry_thickness_in < row->thickness_in && row->dry_width_in < row->width_in, "%s", row->name);
        ck_assert_msg(row->dry_thickness_in <= row->green_thickness_in && row->dry_width_in <= row->green_width_in,
                      "%s", row->name);
        const int expected = row->thickness_in < 2                    ? FRAME_CLASS_BOARD
                             : row->thickness_in < 5                  ? FRAME_CLASS_DIMENSION
                             : row->width_in - row->thickness_in <= 2 ? FRAME_CLASS_POST
                                                                      : FRAME_CLASS_BEAM;
        ck_assert_msg(row->size_class == expected, "%s", row->name);
    }
    ck_assert_int_eq(frame_size_class_of(FRAME_SIZE(6, 8)), FRAME_CLASS_POST);
    ck_assert_int_eq(frame_size_class_of(FRAME_SIZE(6, 10)), FRAME_CLASS_BEAM);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("names");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, every_name_leads_back);
    tcase_add_test(tests, every_spelling_has_one_owner);
    tcase_add_test(tests, stamps_are_read);
    tcase_add_test(tests, sizes_are_read);
    tcase_add_test(tests, what_is_unknown_is_named);
    tcase_add_test(tests, ids_that_are_none_have_no_name);
    tcase_add_test(tests, they_are_word_lists);
    tcase_add_test(tests, ids_follow_the_table);
    tcase_add_test(tests, sizes_follow_the_rules);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
