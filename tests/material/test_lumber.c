/* Design values: every species, grade and size looked up, the tables' own factors and their footnotes. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/material.h>
#include <frame/text.h>
#include <frame/working.h>

#include "base/facts.h"
#include "material/lumber.h"
#include "table_lumber_sizes.h"
#include "table_lumber_values.h"

static frame_lumber find(const char *species, const char *grade, frame_size size) {
    frame_lumber lumber;
    frame_species species_id = 0;
    frame_grade grade_id = 0;
    ck_assert_msg(!frame_species_find(species, &species_id) && !frame_grade_find(grade, &grade_id), "%s",
                  frame_error_text());
    ck_assert_msg(!frame_lumber_find(species_id, grade_id, size, &lumber), "%s", frame_error_text());
    return lumber;
}

static frame_status status_of(const char *species, const char *grade, frame_size size) {
    frame_lumber lumber;
    frame_species species_id = 0;
    frame_grade grade_id = 0;
    ck_assert_msg(!frame_species_find(species, &species_id) && !frame_grade_find(grade, &grade_id), "%s",
                  frame_error_text());
    return frame_lumber_find(species_id, grade_id, size, &lumber);
}

/* What a plain search of the whole table finds; two rows for one piece would be a mistake of the table. */
static const frame_lumber_values_row *search(frame_species species, frame_grade grade,
                                             const frame_lumber_sizes_row *size) {
    const frame_lumber_values_row *found = NULL;
    for (size_t i = 0; i < frame_lumber_values_rows; i++) {
        const frame_lumber_values_row *row = &frame_lumber_values_table[i];
        if (row->species != species || row->grade != grade || row->size_class != size->size_class) continue;
        if (size->width_in < row->least_width_in || size->width_in > row->most_width_in) continue;
        if (size->thickness_in < row->least_thickness_in || size->thickness_in > row->most_thickness_in) continue;
        ck_assert_msg(!found, "rows %d and %d both hold for %s", found ? found->id : 0, row->id, size->name);
        found = row;
    }
    return found;
}

static void is_sound(const frame_lumber *lumber, const frame_lumber_values_row *row, const char *size) {
    ck_assert_int_eq(lumber->table_id, row->id);
    ck_assert_double_eq(lumber->fb_psi, row->fb_psi);
    ck_assert_double_eq(lumber->e_min_psi, row->e_min_psi);
    ck_assert_msg(lumber->size_factor_fb >= 0.4 && lumber->size_factor_fb <= 1.5, "%s %s",
                  frame_species_name(row->species), size);
    ck_assert_msg(lumber->size_factor_ft >= 0.4 && lumber->size_factor_ft <= 1.5, "%s %s",
                  frame_species_name(row->species), size);
    ck_assert_msg(lumber->size_factor_fc >= 0.6 && lumber->size_factor_fc <= 1.15, "%s %s",
                  frame_species_name(row->species), size);
    ck_assert(lumber->known >= row->known);
    ck_assert(lumber->source && lumber->size_source && lumber->table);
}

START_TEST(every_species_grade_and_size) {
    size_t found = 0;
    for (size_t s = 0; s < frame_species_count(); s++)
        for (size_t g = 0; g < frame_grade_count(); g++)
            for (size_t z = 0; z < frame_size_count(); z++) {
                frame_lumber lumber = {.table_id = -7};
                const frame_species species = frame_species_at(s);
                const frame_grade grade = frame_grade_at(g);
                const frame_lumber_values_row *row = search(species, grade, &frame_lumber_sizes_table[z]);
                const frame_status status = frame_lumber_find(species, grade, frame_size_at(z), &lumber);
                ck_assert_int_eq(status, row ? FRAME_OK : FRAME_NO_VALUE);
                if (row)
                    is_sound(&lumber, row, frame_lumber_sizes_table[z].name), found++;
                else
                    ck_assert(lumber.table_id == -7 && *frame_error_field() && *frame_error_valid());
            }
    ck_assert_uint_gt(found, 7000);
}
END_TEST

/* No row of the table is out of reach, and its values are in the order that wood keeps. */
START_TEST(every_row_is_reached_and_plausible) {
    for (size_t i = 0; i < frame_lumber_values_rows; i++) {
        const frame_lumber_values_row *row = &frame_lumber_values_table[i];
        int reached = 0;
        for (size_t z = 0; z < frame_lumber_sizes_rows && !reached; z++)
            reached = search((frame_species)row->species, (frame_grade)row->grade, &frame_lumber_sizes_table[z]) == row;
        ck_assert_msg(reached, "row %d", row->id);
        ck_assert_msg(row->ft_psi < row->fb_psi && row->fv_psi < row->fc_perp_psi, "row %d", row->id);
        ck_assert_msg(row->e_psi >= 600000 && row->e_psi <= 2000000, "row %d", row->id);
        /* E_min = 1.03 E (1 - 1.645 x 0.25) / 1.66, NDS appendix D, to the next 10,000 */
        const double e_min = 1.03 * row->e_psi * (1 - 1.645 * 0.25) / 1.66;
        ck_assert_msg(fabs(row->e_min_psi - e_min) <= 5100, "row %d: E_min %g, by its formula %g", row->id,
                      row->e_min_psi, e_min);
        ck_assert_msg(row->specific_gravity >= 0.3 && row->specific_gravity <= 0.75, "row %d", row->id);
    }
}
END_TEST

START_TEST(size_factors_of_4a) {
    ck_assert_double_eq(find("DFL", "No.2", FRAME_SIZE(2, 4)).size_factor_fb, 1.5);
    ck_assert_double_eq(find("DFL", "No.2", FRAME_SIZE(2, 4)).size_factor_fc, 1.15);
    ck_assert_double_eq(find("DFL", "No.2", FRAME_SIZE(2, 8)).size_factor_fb, 1.2);
    ck_assert_double_eq(find("DFL", "No.2", FRAME_SIZE(4, 8)).size_factor_fb, 1.3);
    ck_assert_double_eq(find("DFL", "No.2", FRAME_SIZE(4, 12)).size_factor_fb, 1.1);
    ck_assert_double_eq(find("DFL", "No.2", FRAME_SIZE(4, 12)).size_factor_ft, 1.0);
    ck_assert_double_eq(find("DFL", "No.2", FRAME_SIZE(2, 14)).size_factor_fb, 0.9);
    ck_assert_double_eq(find("DFL", "Stud", FRAME_SIZE(2, 4)).size_factor_fb, 1.1);
    ck_assert_double_eq(find("DFL", "Stud", FRAME_SIZE(2, 6)).size_factor_fb, 1.0);
    ck_assert_double_eq(find("DFL", "Construction", FRAME_SIZE(2, 4)).size_factor_fb, 1.0);
    ck_assert_double_eq(find("DFL", "Utility", FRAME_SIZE(2, 3)).size_factor_fc, 0.6);
    ck_assert_int_eq(status_of("DFL", "Construction", FRAME_SIZE(2, 6)), FRAME_NO_VALUE);
}
END_TEST

/* Stud grade of 8 in and wider takes both the values and the size factors of No.3. */
START_TEST(wide_studs_are_no_3) {
    const frame_lumber stud = find("HF", "Stud", FRAME_SIZE(2, 8)), three = find("HF", "No.3", FRAME_SIZE(2, 8));
    ck_assert_double_eq(stud.fb_psi, three.fb_psi);
    ck_assert_double_eq(stud.size_factor_fb, three.size_factor_fb);
    ck_assert_double_ne(find("HF", "Stud", FRAME_SIZE(2, 6)).fb_psi, three.fb_psi);
}
END_TEST

START_TEST(southern_pine_goes_by_width) {
    ck_assert_double_eq(find("SP", "No.2", FRAME_SIZE(2, 4)).fb_psi, 1100);
    ck_assert_double_eq(find("SP", "No.2", FRAME_SIZE(2, 10)).fb_psi, 800);
    ck_assert_double_eq(find("SP", "No.2", FRAME_SIZE(2, 10)).size_factor_fb, 1.0);
    ck_assert_double_eq(find("SP", "No.2", FRAME_SIZE(2, 12)).fb_psi, 750);
    ck_assert_double_eq(find("SP", "No.2", FRAME_SIZE(2, 14)).size_factor_fb, 0.9);
    ck_assert_double_eq(find("SP", "No.2", FRAME_SIZE(4, 10)).size_factor_fb, 1.1);
    ck_assert_double_eq(find("SP", "No.2", FRAME_SIZE(4, 14)).size_factor_fb, 0.99);
    ck_assert_str_eq(find("SP", "No.2", FRAME_SIZE(2, 10)).table, "4B");
    ck_assert_int_eq(status_of("SP", "Dense Structural 72", FRAME_SIZE(2, 8)), FRAME_NO_VALUE);
    ck_assert_double_eq(find("SP", "Dense Structural 72", FRAME_SIZE(4, 8)).fb_psi, 2200);
}
END_TEST

/* 6x6 and 6x8 are Posts and Timbers, 6x10 is Beams and Stringers. */
START_TEST(timbers_go_by_shape) {
    ck_assert_double_eq(find("DFL", "No.1", FRAME_SIZE(6, 6)).fb_psi, 1200);
    ck_assert_double_eq(find("DFL", "No.1", FRAME_SIZE(6, 8)).fb_psi, 1200);
    ck_assert_double_eq(find("DFL", "No.1", FRAME_SIZE(6, 10)).fb_psi, 1350);
    const frame_lumber deep = find("DFL", "No.1", FRAME_SIZE(6, 16));
    ck_assert_double_eq_tol(deep.size_factor_fb, pow(12 / 15.0, 1.0 / 9), 1e-15);
    ck_assert_double_eq(deep.size_factor_ft, 1);
    ck_assert_int_eq(deep.known, FRAME_KNOWN_MEMORY);
    ck_assert_int_eq(status_of("DFL", "Stud", FRAME_SIZE(6, 6)), FRAME_NO_VALUE);
    ck_assert_str_eq(frame_error_field(), "grade");
    ck_assert_ptr_nonnull(strstr(frame_error_valid(), "Select Structural"));
    ck_assert_int_eq(status_of("Aspen", "No.2", FRAME_SIZE(6, 6)), FRAME_NO_VALUE);
    ck_assert_str_eq(frame_error_field(), "size");
    ck_assert_int_eq(status_of("DFL", "No.2", FRAME_SIZE(1.25, 6)), FRAME_NO_VALUE);
    ck_assert_str_eq(frame_error_field(), "size");
    ck_assert_int_eq(status_of("Sitka Spruce", "No.2", FRAME_SIZE(2, 6)), FRAME_NO_VALUE);
    ck_assert_str_eq(frame_error_field(), "species");
}
END_TEST

START_TEST(wet_service_has_limits) {
    frame_stress_factors wet;
    const frame_lumber high = find("DFL", "No.2", FRAME_SIZE(2, 4)); /* 900 x 1.5 = 1350 */
    frame_wet_factors(&high, &wet);
    ck_assert_double_eq(wet.fb, 0.85);
    ck_assert_double_eq(wet.fc, 0.8);
    ck_assert_double_eq(wet.fc_perp, 0.67);
    ck_assert_double_eq(wet.e, 0.9);
    ck_assert_int_eq(wet.known, FRAME_KNOWN_SECONDARY);
    const frame_lumber low = find("DFL", "No.2", FRAME_SIZE(2, 8)); /* 900 x 1.2 = 1080 */
    frame_wet_factors(&low, &wet);
    ck_assert_double_eq(wet.fb, 1);
    ck_assert_double_eq(wet.fv, 0.97);
    ck_assert_int_eq(wet.known, FRAME_KNOWN_MEMORY);
    const frame_lumber weak = find("SPF", "No.3", FRAME_SIZE(2, 4)); /* F_c 650 x 1.15 = 747.5 */
    frame_wet_factors(&weak, &wet);
    ck_assert_double_eq(wet.fc, 1);
    const frame_lumber timber = find("DFL", "No.1", FRAME_SIZE(6, 6));
    frame_wet_factors(&timber, &wet);
    ck_assert_double_eq(wet.fb, 1);
    ck_assert_double_eq(wet.fc, 0.91);
    const frame_lumber pine = find("SP", "No.1", FRAME_SIZE(6, 6));
    frame_wet_factors(&pine, &wet);
    ck_assert(wet.fc == 1 && wet.fc_perp == 1);
}
END_TEST

START_TEST(flat_use_incising_and_sharing) {
    frame_stress_factors factors;
    const frame_lumber joist = find("DFL", "No.2", FRAME_SIZE(2, 10)), thick = find("DFL", "No.2", FRAME_SIZE(4, 10));
    const frame_lumber beam = find("DFL", "No.1", FRAME_SIZE(6, 12)), post = find("DFL", "No.1", FRAME_SIZE(6, 8));
    ck_assert_double_eq(frame_flat_use_factor(&joist), 1.2);
    ck_assert_double_eq(frame_flat_use_factor(&thick), 1.1);
    ck_assert_double_eq(frame_flat_use_factor(&post), 1);
    frame_flat_use_factors(&beam, &factors);
    ck_assert(factors.fb == 0.74 && factors.e == 0.9 && factors.e_min == 0.9 && factors.fv == 1);
    frame_incising_factors(&joist, &factors);
    ck_assert(factors.fb == 0.8 && factors.fc == 0.8 && factors.fc_perp == 1 && factors.e_min == 0.95);
    frame_incising_factors(&beam, &factors);
    ck_assert(factors.fb == 1 && factors.e == 1);
    ck_assert_double_eq(frame_repetitive_factor(&joist, NULL, NULL), 1.15);
    ck_assert_double_eq(frame_repetitive_factor(&beam, NULL, NULL), 1);
}
END_TEST

START_TEST(the_calculation_says_what_it_rests_on) {
    frame_design_values_in in;
    frame_design_values_out out;
    frame_design_values_in_init(&in);
    ck_assert_int_eq(frame_design_values(&in, &out, NULL), FRAME_REQUIRED);
    ck_assert_int_eq(frame_species_find("SPF", &in.species), FRAME_OK);
    ck_assert_int_eq(frame_grade_find("No.2", &in.grade), FRAME_OK);
    in.size = FRAME_SIZE(2, 10);
    ck_assert_int_eq(frame_design_values(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq(out.fb_psi, 875);
    ck_assert_double_eq(out.e_min_psi, 510000);
    ck_assert_double_eq(out.size_factor_bending, 1.1);
    ck_assert_int_eq(out.known, FRAME_KNOWN_SECONDARY);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DESIGN_CAUTION_STAMP) &&
              !FRAME_HAS(out.cautions, FRAME_DESIGN_CAUTION_MEMORY));
    ck_assert(FRAME_HAS(out.not_checked, FRAME_DESIGN_UNCHECKED_FACTORS));
    ck_assert_ptr_nonnull(strstr(out.source, "4A"));
    ck_assert_int_eq(frame_species_find("Redwood", &in.species), FRAME_OK);
    ck_assert_int_eq(frame_design_values(&in, &out, NULL), FRAME_OK);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DESIGN_CAUTION_GRAVITY));
    ck_assert_int_eq(frame_species_find("HF(N)", &in.species), FRAME_OK);
    ck_assert_int_eq(frame_design_values(&in, &out, NULL), FRAME_OK);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DESIGN_CAUTION_SUPERSEDED));
}
END_TEST

START_TEST(the_working_names_its_tables) {
    frame_working *working;
    frame_text *text;
    frame_design_values_in in;
    frame_design_values_out out;
    ck_assert(!frame_working_new(&working) && !frame_text_new(&text));
    frame_design_values_in_init(&in);
    ck_assert(!frame_species_find("SPF", &in.species) && !frame_grade_find("No.2", &in.grade));
    in.size = FRAME_SIZE(2, 10);
    ck_assert_int_eq(frame_design_values(&in, &out, working), FRAME_OK);
    ck_assert_msg(!frame_working_check(working, text), "%s", frame_text_chars(text));
    ck_assert_int_eq(frame_working_render(working, FRAME_RENDER_TEXT, text), FRAME_OK);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "Table 4A"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "875"));
    frame_text_free(text);
    frame_working_free(working);
}
END_TEST

START_TEST(gravity_of_a_species) {
    frame_known known = 0;
    frame_species species = 0;
    ck_assert_int_eq(frame_species_find("Sitka Spruce", &species), FRAME_OK);
    ck_assert_double_eq(frame_species_gravity(species, &known), 0.43);
    ck_assert_int_eq(known, FRAME_KNOWN_SECONDARY);
    ck_assert_int_eq(frame_species_find("Baldcypress", &species), FRAME_OK);
    ck_assert_double_eq(frame_species_gravity(species, &known), FRAME_NOT_GIVEN);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("lumber");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 60);
    tcase_add_test(tests, every_species_grade_and_size);
    tcase_add_test(tests, every_row_is_reached_and_plausible);
    tcase_add_test(tests, size_factors_of_4a);
    tcase_add_test(tests, wide_studs_are_no_3);
    tcase_add_test(tests, southern_pine_goes_by_width);
    tcase_add_test(tests, timbers_go_by_shape);
    tcase_add_test(tests, wet_service_has_limits);
    tcase_add_test(tests, flat_use_incising_and_sharing);
    tcase_add_test(tests, the_calculation_says_what_it_rests_on);
    tcase_add_test(tests, the_working_names_its_tables);
    tcase_add_test(tests, gravity_of_a_species);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
