/* The row of the tables for a species, grade and size, with its size factors. */
#include "material/lumber.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "material/lumber_rows.h"
#include "material_facts.h"

/* NDS 4.3.6.2 and table 4B for Dense Structural grades: on F_b of depths over 12 in. */
static void size_by_depth(frame_lumber *lumber) {
    if (lumber->width_in <= 12) return;
    lumber->size_factor_fb = pow(12 / lumber->width_in, 1.0 / 9);
    lumber->size_source = "NDS 2018 4.3.6.2 (from memory)";
    lumber->known = FRAME_KNOWN_MEMORY; /* the formula is recalled, no text seen */
}

static void size_factors(frame_lumber *lumber, const frame_lumber_values_row *values,
                         const frame_lumber_sizes_row *size) {
    const frame_lumber_size_factors_row *row = frame_lumber_size_factors(values, size);
    if (!row) {
        size_by_depth(lumber);
        return;
    }
    lumber->size_factor_fb = row->fb;
    lumber->size_factor_ft = row->ft;
    lumber->size_factor_fc = row->fc;
    lumber->size_source = row->source;
    if (row->known > lumber->known) lumber->known = row->known;
}

static void join(char *list, size_t size, const char *name) {
    const size_t used = strlen(list);
    if (used + strlen(name) + 3 <= size) snprintf(list + used, size - used, "%s%s", used ? ", " : "", name);
}

/* The grades a species has for a size, or all of its grades. */
static void list_grades(frame_species species, const frame_lumber_sizes_row *size, char *list, size_t list_size) {
    *list = 0;
    for (frame_grade grade = 1; grade <= frame_grades_rows; grade++)
        if (frame_lumber_row(species, grade, size)) join(list, list_size, frame_grade_name(grade));
}

static frame_status no_such_id(const char *field, int32_t id) {
    char text[24];
    snprintf(text, sizeof text, "%ld", (long)id);
    return frame_fail(FRAME_UNKNOWN_NAME, field, text, "an id found by name", "%s: %s is no %s known", field, text,
                      field);
}

/* Says what is missing: the species has no values at all, none of this size in any grade, or none of this grade. */
static frame_status no_value(frame_species species, frame_grade grade, const frame_lumber_sizes_row *size) {
    char grades[600];
    const char *name = frame_species_name(species), *grade_name = frame_grade_name(grade);
    list_grades(species, size, grades, sizeof grades);
    if (*grades)
        return frame_fail(FRAME_NO_VALUE, "grade", grade_name, grades,
                          "grade: %s of %s in %s has no design values; valid is %s", grade_name, name, size->name,
                          grades);
    if (size->size_class == FRAME_CLASS_BOARD)
        return frame_fail(FRAME_NO_VALUE, "size", size->name, "2x2 to 4x16, 5x5 to 24x24",
                          "size: %s is a board, which has no design values; valid is 2x2 and larger", size->name);
    int any = 0;
    for (frame_grade other = 1; other <= frame_grades_rows; other++)
        any |= frame_lumber_first_row(species, other) != NULL;
    if (any)
        return frame_fail(FRAME_NO_VALUE, "size", size->name, "2x2 to 4x16",
                          "size: %s has no design values in %s; valid is 2x2 to 4x16", name, size->name);
    return frame_fail(FRAME_NO_VALUE, "species", name, "a species with design values, as DFL, HF, SPF, SP",
                      "species: %s has no design values here, only a specific gravity; valid is a species with design "
                      "values, as DFL, HF, SPF, SP",
                      name);
}

static void fill(frame_lumber *lumber, const frame_lumber_values_row *row) {
    lumber->fb_psi = row->fb_psi;
    lumber->ft_psi = row->ft_psi;
    lumber->fv_psi = row->fv_psi;
    lumber->fc_perp_psi = row->fc_perp_psi;
    lumber->fc_psi = row->fc_psi;
    lumber->e_psi = row->e_psi;
    lumber->e_min_psi = row->e_min_psi;
    lumber->specific_gravity = row->specific_gravity;
    lumber->size_factor_fb = lumber->size_factor_ft = lumber->size_factor_fc = 1;
    lumber->known = row->known;
    lumber->table_id = row->id;
    lumber->source = lumber->size_source = row->source;
    lumber->table = row->table_name;
    lumber->doubtful = row->doubtful != 0;
    lumber->superseded = row->superseded != 0;
    lumber->wet_included = row->wet_included != 0;
}

frame_status frame_lumber_find(frame_species species, frame_grade grade, frame_size size, frame_lumber *lumber) {
    const frame_lumber_sizes_row *made = frame_size_row(size);
    if (!frame_species_valid(species)) return no_such_id("species", species);
    if (!frame_grade_valid(grade)) return no_such_id("grade", grade);
    if (!made) return no_such_id("size", size);
    const frame_lumber_values_row *row = frame_lumber_row(species, grade, made);
    if (!row) return no_value(species, grade, made);
    fill(lumber, row);
    lumber->thickness_in = made->dry_thickness_in;
    lumber->width_in = made->dry_width_in;
    lumber->size_class = (frame_size_class)made->size_class;
    lumber->species = species;
    lumber->grade = grade;
    lumber->size = size;
    size_factors(lumber, row, made);
    return FRAME_OK;
}
