/* The tables' own adjustment factors: wet service, incising, flat use, repetitive members. */
#include "material/lumber_rows.h"
#include "table_lumber_flat_use.h"

static void set_all(frame_stress_factors *factors, double value) {
    factors->fb = factors->ft = factors->fv = factors->fc_perp = factors->fc = factors->e = factors->e_min = value;
}

static void set_row(frame_stress_factors *factors, const frame_lumber_factors_row *row) {
    *factors = (frame_stress_factors){row->fb, row->ft,    row->fv,    row->fc_perp, row->fc,
                                      row->e,  row->e_min, row->known, row->source};
}

/* The table's footnotes: low values are not lowered further. */
static void wet_limits(const frame_lumber *lumber, frame_stress_factors *factors) {
    const frame_lumber_factors_row *limit = &frame_lumber_factors_table[FRAME_FACTORS_WET_LIMIT];
    const int bending = lumber->fb_psi * lumber->size_factor_fb <= limit->fb;
    const int compression = lumber->fc_psi * lumber->size_factor_fc <= limit->fc;
    if (bending) factors->fb = 1;
    if (compression) factors->fc = 1;
    if ((bending || compression) && limit->known > factors->known) {
        factors->known = limit->known;
        factors->source = limit->source;
    }
}

void frame_wet_factors(const frame_lumber *lumber, frame_stress_factors *factors) {
    if (lumber->size_class != FRAME_CLASS_DIMENSION) {
        set_row(factors, &frame_lumber_factors_table[FRAME_FACTORS_WET_TIMBER]);
        if (!lumber->wet_included) return;
        set_all(factors, 1);
        factors->known = lumber->known;
        factors->source = lumber->source;
        return;
    }
    set_row(factors, &frame_lumber_factors_table[FRAME_FACTORS_WET_DIMENSION]);
    wet_limits(lumber, factors);
}

void frame_incising_factors(const frame_lumber *lumber, frame_stress_factors *factors) {
    set_row(factors, &frame_lumber_factors_table[FRAME_FACTORS_INCISED]);
    if (lumber->size_class != FRAME_CLASS_DIMENSION) set_all(factors, 1);
}

/* For a grade the table of Beams and Stringers does not list, the row of No.1: the lowest. */
static int flat_group(const frame_lumber *lumber) {
    if (lumber->size_class == FRAME_CLASS_DIMENSION) return 0;
    const int group = (int)frame_grades_table[lumber->grade - 1].flat_group;
    return group ? group : 2;
}

void frame_flat_use_factors(const frame_lumber *lumber, frame_stress_factors *factors) {
    const frame_lumber_sizes_row *size = frame_size_row(lumber->size);
    const int group = flat_group(lumber), thick = !group && size->thickness_in >= 4;
    const frame_lumber_flat_use_row *row = &frame_lumber_flat_use_table[frame_lumber_flat_use_at[group][thick] - 1];
    while (size->width_in > row->most_width_in) row++;
    set_all(factors, 1);
    factors->known = row->known;
    factors->source = row->source;
    if (lumber->size_class == FRAME_CLASS_POST) return; /* listed for Beams and Stringers alone */
    factors->fb = row->fb;
    factors->e = factors->e_min = row->e;
}

double frame_flat_use_factor(const frame_lumber *lumber) {
    frame_stress_factors factors;
    frame_flat_use_factors(lumber, &factors);
    return factors.fb;
}

double frame_repetitive_factor(const frame_lumber *lumber, frame_known *known, const char **source) {
    const frame_lumber_factors_row *row = &frame_lumber_factors_table[FRAME_FACTORS_REPETITIVE];
    if (known) *known = row->known;
    if (source) *source = row->source;
    return lumber->size_class == FRAME_CLASS_DIMENSION ? row->fb : 1;
}
