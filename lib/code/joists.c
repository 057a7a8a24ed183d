/* Finding the table of a joist or rafter by its loads, and saying why there is none. */
#include "code/joists.h"

#include <string.h>

#include "base/error.h"

/* The loads that pick a table: one of live and snow is 0. */
typedef struct loads {
    double live, snow, dead, limit;
} loads;

enum { USES = 3 };
static const double usual_limits[USES + 1] = {0, 360, 240, 180};
static const char *const numbers[USES + 1] = {"", "R502.3.1", "R802.5.1", "R802.4.1"};

static double given(double value) {
    return value == FRAME_NOT_GIVEN ? 0 : value;
}

static frame_status loads_of(const frame_code_joist_span_in *in, loads *of) {
    *of = (loads){given(in->live_psf), given(in->snow_psf), in->dead_psf, in->deflection_limit};
    if (of->limit == FRAME_NOT_GIVEN) of->limit = usual_limits[in->use];
    if (of->snow > 0 && in->use != FRAME_CODE_USE_RAFTER)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "snow_psf", of->snow, "0 for joists under no roof");
    if (of->snow > 0 && of->live > 20)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "live_psf", of->live, "0..20 psf of roof live load with snow");
    if (of->snow > 0) of->live = 0; /* the snow tables hold for roof live loads up to 20 psf */
    if (!(of->live > 0) && !(of->snow > 0))
        return frame_fail(FRAME_REQUIRED, "live_psf", "", "a live load, or ground snow on a rafter",
                          "live_psf: is required: a live load, or snow_psf for a rafter");
    return FRAME_OK;
}

static int no_less(double of_table, double asked, int covering) {
    const double slack = 1e-6 * asked;
    return covering ? of_table >= asked - slack : of_table >= asked - slack && of_table <= asked + slack;
}

/* How much heavier a table is than what was asked, for the lightest that covers it. */
static double excess(const frame_code_joist_sets_row *set, const loads *of) {
    return set->live - of->live + set->snow - of->snow + set->dead - of->dead + (set->limit - of->limit) / 1000;
}

/* What of the loads a table agrees with, from the edition down: the deepest stage says what is at fault. */
static int stage_of(const frame_code_joist_sets_row *set, const frame_code_joist_span_in *in, const loads *of) {
    if (!(set->editions & frame_code_bit(in->edition))) return 0;
    if (!set->snow != !(of->snow > 0)) return 1;
    if (!no_less(set->snow ? set->snow : set->live, of->snow > 0 ? of->snow : of->live, in->covering)) return 2;
    if (!no_less(set->dead, of->dead, in->covering)) return 3;
    return no_less(set->limit, of->limit, in->covering) ? 5 : 4;
}

static double figure_at(const frame_code_joist_sets_row *set, int stage) {
    return stage == 3 ? set->dead : stage == 4 ? set->limit : set->snow ? set->snow : set->live;
}

/* Says which field has no table, and what its tables have. */
static frame_status no_set(const frame_code_joist_span_in *in, const loads *of, int stage) {
    double has[8];
    char list[120];
    int count = 0;
    unsigned known = 0;
    static const char *const units[] = {"", "", " psf", " psf", ""};
    const char *const field = stage == 3     ? "dead_psf"
                              : stage == 4   ? "deflection_limit"
                              : of->snow > 0 ? "snow_psf"
                                             : "live_psf";
    const double asked = stage == 3 ? of->dead : stage == 4 ? of->limit : of->snow > 0 ? of->snow : of->live;
    for (int i = 0; i < frame_code_joist_sets_rows; i++) {
        const frame_code_joist_sets_row *set = &frame_code_joist_sets_table[i];
        if (set->use != in->use) continue;
        known |= set->editions;
        if (stage_of(set, in, of) != stage) continue;
        int at = 0;
        while (at < count && has[at] != figure_at(set, stage)) at++;
        if (at == count && count < 8) has[count++] = figure_at(set, stage);
    }
    if (!stage) return frame_code_no_edition(numbers[in->use], in->edition, known);
    if (stage == 1)
        return frame_fail(FRAME_NO_VALUE, field, frame_code_number(asked).text, "a load of another kind",
                          "%s: %s psf: no table %s of this edition is for a load of this kind", field,
                          frame_code_number(asked).text, numbers[in->use]);
    frame_code_list(has, count, list, sizeof list);
    return frame_fail(asked > has[count - 1] ? FRAME_OUTSIDE_SCOPE : FRAME_NO_VALUE, field,
                      frame_code_number(asked).text, list,
                      "%s: %s%s has no column in the tables %s, which have %s and no interpolation", field,
                      frame_code_number(asked).text, units[stage], numbers[in->use], list);
}

frame_status frame_code_joist_set(const frame_code_joist_span_in *in, const frame_code_joist_sets_row **found,
                                  int *covered) {
    loads of;
    int deepest = 0;
    const frame_status status = loads_of(in, &of);
    if (status) return status;
    *found = NULL;
    for (int i = frame_code_joist_sets_at[in->use] - 1; i < frame_code_joist_sets_rows; i++) {
        const frame_code_joist_sets_row *set = &frame_code_joist_sets_table[i];
        if (set->use != in->use) break;
        const int stage = stage_of(set, in, &of);
        if (stage > deepest) deepest = stage;
        if (stage == 5 && (!*found || excess(set, &of) < excess(*found, &of))) *found = set;
    }
    if (!*found) return no_set(in, &of, deepest);
    *covered = excess(*found, &of) > 1e-6;
    return FRAME_OK;
}

static frame_status no_row(const frame_code_joist_span_in *in, const frame_code_joist_sets_row *set, const char *field,
                           const char *valid) {
    const char *value = !strcmp(field, "size")      ? frame_size_name(in->size)
                        : !strcmp(field, "species") ? frame_species_name(in->species)
                                                    : frame_grade_name(in->grade);
    return frame_fail(FRAME_NO_VALUE, field, value ? value : "", valid, "%s: %s is not in Table %s, which has %s",
                      field, value ? value : "it", set->table, valid);
}

static int has_species(int set, int species) {
    for (int grade = 0; grade < frame_code_joist_spans_at_third; grade++)
        if (frame_code_joist_spans_at[set][species][grade]) return 1;
    return 0;
}

frame_status frame_code_joist_row(const frame_code_joist_span_in *in, const frame_code_joist_sets_row *set, int column,
                                  const frame_code_joist_spans_row **found) {
    const int size = frame_code_size_2x(in->size);
    const int set_place = (int)(set - frame_code_joist_sets_table) + 1;
    const int species = in->species < frame_code_joist_spans_at_second ? in->species : 0;
    const int grade = in->grade < frame_code_joist_spans_at_third ? in->grade : 0;
    const int first = frame_code_joist_spans_at[set_place][species][grade];
    if (!has_species(set_place, species))
        return no_row(in, set, "species", "Douglas Fir-Larch, Hem-Fir, Southern Pine and Spruce-Pine-Fir");
    if (!first) return no_row(in, set, "grade", "Select Structural, No.1, No.2 and No.3");
    for (const frame_code_joist_spans_row *row = &frame_code_joist_spans_table[first - 1];
         row < frame_code_joist_spans_table + frame_code_joist_spans_rows && row->set == set_place &&
         row->species == species && row->grade == grade;
         row++)
        if (row->size == size && frame_code_joist_cell(row, column) != FRAME_NO_CELL) {
            *found = row;
            return FRAME_OK;
        }
    return no_row(in, set, "size",
                  set->use == FRAME_CODE_USE_FLOOR     ? "2x6, 2x8, 2x10 and 2x12"
                  : set->use == FRAME_CODE_USE_CEILING ? "2x4, 2x6, 2x8 and 2x10"
                                                       : "2x4, 2x6, 2x8, 2x10 and 2x12");
}
