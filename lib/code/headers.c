/* Finding the row of a header, and saying why there is none. */
#include "code/headers.h"

#include "base/error.h"

enum { ANY_NO_2 = 1, ANY_SP_NO_1, SPF_ALONE, HF_ALONE, DFL_OR_SP }; /* the words of the column lumber */
enum { DFL = 1, HF, SPF, SP };                                      /* the ids of species */
enum { SELECT = 1, NO_1_BTR, NO_1, NO_2 };                          /* the ids of grades, best first */
enum { INTERIOR_1 = 6, INTERIOR_2, PORCH_ROOF, PORCH_FLOOR };       /* the words of the column carries */

static frame_status carries_of(const frame_code_header_span_in *in, int *carries) {
    const frame_code_supports what = in->supports;
    static const char *const wheres[] = {"", "exterior", "interior", "porch"};
    if (in->location == FRAME_CODE_PORCH &&
        (what == FRAME_CODE_SUPPORTS_PORCH_ROOF || what == FRAME_CODE_SUPPORTS_ROOF ||
         what == FRAME_CODE_SUPPORTS_ONE_FLOOR)) {
        *carries = what == FRAME_CODE_SUPPORTS_ONE_FLOOR ? PORCH_FLOOR : PORCH_ROOF;
    } else if ((in->location == FRAME_CODE_EXTERIOR && what <= FRAME_CODE_SUPPORTS_ROOF_2_CLEAR) ||
               (in->location == FRAME_CODE_INTERIOR &&
                (what == FRAME_CODE_SUPPORTS_ONE_FLOOR || what == FRAME_CODE_SUPPORTS_TWO_FLOORS))) {
        *carries = what;
    } else {
        const char *const asked = frame_word_text("code_supports", what);
        return frame_fail(
            FRAME_NO_VALUE, "supports", asked ? asked : "",
            "exterior: roof and ceiling, with or without floors; interior: one or two floors; porch: roof or floor",
            "supports: no table for %s, location %s", asked ? asked : "?", wheres[in->location]);
    }
    return FRAME_OK;
}

/* Whether a row's lumber covers what was asked for. */
static int covers(int lumber, frame_species species) {
    switch (lumber) {
        case SPF_ALONE:
            return species == SPF;
        case HF_ALONE:
            return species == HF;
        case DFL_OR_SP:
            return species == DFL || species == SP;
        default:
            return species == FRAME_NOT_GIVEN_INT || (species >= DFL && species <= SP);
    }
}

static frame_status no_lumber(const frame_code_header_span_in *in) {
    const char *name = in->species == FRAME_NOT_GIVEN_INT ? "not given" : frame_species_name(in->species);
    return frame_fail(in->species == FRAME_NOT_GIVEN_INT ? FRAME_REQUIRED : FRAME_NO_VALUE, "species", name ? name : "",
                      "Douglas Fir-Larch, Hem-Fir, Southern Pine or Spruce-Pine-Fir",
                      "species: %s: the header tables are for Douglas Fir-Larch, Hem-Fir, Southern Pine and "
                      "Spruce-Pine-Fir",
                      name ? name : "?");
}

static frame_status check_grade(const frame_code_header_span_in *in, const frame_code_headers_row *row) {
    const int least = row->lumber == ANY_SP_NO_1 && in->species == SP ? NO_1 : NO_2;
    if (in->grade == FRAME_NOT_GIVEN_INT || (in->grade >= SELECT && in->grade <= least)) return FRAME_OK;
    const char *const name = frame_grade_name(in->grade);
    return frame_fail(FRAME_OUTSIDE_SCOPE, "grade", name ? name : "",
                      least == NO_1 ? "No.1 or better" : "No.2 or better",
                      "grade: %s is below what Table %s is for: %s or better", name ? name : "?", row->table,
                      least == NO_1 ? "southern pine No.1" : "No.2");
}

static const frame_code_headers_row *end_of_group(const frame_code_headers_row *row) {
    const frame_code_headers_row *last = frame_code_headers_table + frame_code_headers_rows, *at = row;
    while (at < last && at->carries == row->carries && at->plies == row->plies && at->size == row->size) at++;
    return at;
}

/* Nothing of this size: which plies and sizes there are is said in general, the tables being printed so. */
static frame_status no_size(const frame_code_header_span_in *in, int carries) {
    const char *name = frame_size_name(in->size);
    return frame_fail(
        FRAME_NO_VALUE, "size", name ? name : "", "1-2x6 to 1-2x12, 2-2x4 to 2-2x12, 3- and 4-2x8 to 2x12",
        "size: %d-%s is not in Table %s, which has %s", (int)in->plies, name ? name : "?",
        carries >= PORCH_ROOF   ? "R602.7(3)"
        : carries >= INTERIOR_1 ? "R602.7(2)"
                                : "R602.7(1)",
        carries >= PORCH_ROOF   ? "2-2x6 to 2-2x12"
        : carries >= INTERIOR_1 ? "2-2x4 to 2-2x12 and 3- and 4-2x8 to 2x12"
                                : "1-2x6 to 1-2x12 (2015: 1-2x8 to 1-2x12 under one floor at most), 2-2x4 "
                                  "to 2-2x12, 3- and 4-2x8 to 2x12");
}

/* The snow column of the rows of one edition and lumber. */
static frame_status pick_snow(const frame_code_header_span_in *in, const frame_code_headers_row *const *rows, int count,
                              int *place, int *heavier) {
    double at[4];
    for (int i = 0; i < count; i++) at[i] = rows[i]->snow;
    const frame_code_columns columns = {rows[0]->table, "ground_snow_psf", "psf", at, count, 1};
    *place = *heavier = 0;
    if (rows[0]->snow == FRAME_NO_CELL) return FRAME_OK;
    if (in->ground_snow_psf == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "ground_snow_psf", "", "a ground snow load, 0 for none",
                          "ground_snow_psf: is required where a roof is carried");
    if (in->ground_snow_psf < at[0] && in->roof_live_psf != FRAME_NOT_GIVEN && in->roof_live_psf > 20)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "roof_live_psf", in->roof_live_psf,
                                 "0..20 psf where ground snow is under 30 psf");
    return frame_code_column(&columns, in->ground_snow_psf, in->covering, place, heavier);
}

frame_status frame_code_header_row(const frame_code_header_span_in *in, const frame_code_headers_row **found,
                                   int *heavier) {
    const frame_code_headers_row *of_edition[4];
    const int size = frame_code_size_2x(in->size);
    int carries, count = 0, place, other_lumber = 0;
    unsigned known = 0;
    frame_status status = carries_of(in, &carries);
    if (status) return status;
    const int first = in->plies < frame_code_headers_at_second ? frame_code_headers_at[carries][in->plies][size] : 0;
    if (!first) return no_size(in, carries);
    const frame_code_headers_row *row = &frame_code_headers_table[first - 1], *end = end_of_group(row);
    for (; row < end; row++) {
        known |= row->editions;
        if (!(row->editions & frame_code_bit(in->edition))) continue;
        if (!covers(row->lumber, in->species))
            other_lumber = 1;
        else if (count < 4)
            of_edition[count++] = row;
    }
    if (!count) return other_lumber ? no_lumber(in) : frame_code_no_edition(end[-1].table, in->edition, known);
    if ((status = check_grade(in, of_edition[0])) || (status = pick_snow(in, of_edition, count, &place, heavier)))
        return status;
    *found = of_edition[place];
    return FRAME_OK;
}

frame_status frame_code_header_place(const frame_code_headers_row *row, const frame_code_header_span_in *in, int *place,
                                     double *fraction, int *narrower) {
    double at[3];
    int count = 0;
    for (; count < 3 && frame_code_header_width(row, count) != FRAME_NO_CELL; count++)
        at[count] = 12 * frame_code_header_width(row, count);
    const frame_code_columns columns = {
        row->table, in->porch_depth_in != FRAME_NOT_GIVEN ? "porch_depth_in" : "building_width_in", "in", at, count, 1};
    *fraction = 0;
    if (row->editions == frame_code_bit(FRAME_CODE_2012_PROPOSAL)) /* its notes were not seen */
        return frame_code_column(&columns, in->building_width_in, in->covering, place, narrower);
    return frame_code_between(&columns, in->building_width_in, place, fraction, narrower);
}
