/* Nails in heel joints from the code's tables. */
#include <math.h>

#include "code/book.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_heel_factors.h"
#include "table_code_heel_nails.h"
#include "working/calculation.h"

static const double slopes[] = {3, 4, 5, 7, 9, 12}, spacings[] = {12, 16, 19.2, 24}, loads[] = {20, 30, 50, 70};
static const double old_spans[] = {144, 240, 336, 432}, new_spans[] = {144, 288, 432};
static const char numbers[] = "R802.5.2(1) (2018: R802.5.2; 2015: R802.5.1(9))";
enum { SLOPES = 6 };

static int is_old(frame_code_edition edition) {
    return edition <= FRAME_CODE_2018;
}

/* The cell at a place among the spans of the edition. */
static int cell_of(const frame_code_heel_nails_row *row, int place) {
    const int16_t older[] = {row->n12, row->n20, row->n28, row->n36}, newer[] = {row->n12, row->n24, row->n36};
    return row->n20 != FRAME_NO_CELL ? older[place] : newer[place];
}

/* The slope to enter with, rise in 12: in 2015 two thirds where rafter ties stand in for ceiling joists. A flatter row
 * of the table covers a steeper roof. */
static frame_status slope_row(const frame_code_heel_nails_in *in, int *slope, int *covered, frame_working *w) {
    double rise = 12 * in->slope;
    if (in->tie == FRAME_CODE_TIE_RAFTER_TIES && in->edition == FRAME_CODE_2015) {
        FRAME_GIVEN(w, s, rise, "in 12", "rise of the roof in 12");
        FRAME_STEP(w, s_table, s * 2 / 3, "in 12", "rise to enter the table with, for rafter ties",
                   "IRC 2015 Table R802.5.1(9), note on rafter ties");
        rise = s_table;
    }
    int at = SLOPES - 1;
    while (at >= 0 && rise < slopes[at] * (1 - 1e-9)) at--;
    if (at < 0)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "slope", frame_code_number(rise).text, "3 in 12 and steeper",
                          "slope: %s in 12 is flatter than Table %s is for: under 3 in 12 the ridge is a beam",
                          frame_code_number(rise).text, numbers);
    *covered = rise > slopes[at] * (1 + 1e-9);
    if (*covered && at < SLOPES - 1 && !in->covering)
        return frame_fail(
            FRAME_NO_VALUE, "slope", frame_code_number(rise).text, "3, 4, 5, 7, 9, 12 in 12",
            "slope: %s in 12 is no row of Table %s, which has 3, 4, 5, 7, 9 and 12 in 12; the flatter row "
            "covers it",
            frame_code_number(rise).text, numbers);
    *slope = (int)slopes[at];
    return FRAME_OK;
}

static frame_status pick(const char *field, const char *unit, const double *at, int count, int lighter, double value,
                         int covering, int *place, int *covered) {
    const frame_code_columns columns = {numbers, field, unit, at, count, lighter};
    int heavier;
    const frame_status status = frame_code_column(&columns, value, covering, place, &heavier);
    if (!status) *covered |= heavier;
    return status;
}

static frame_status spacing_of(const frame_code_heel_nails_in *in, int *spacing, int *covered) {
    static const double older[] = {12, 16, 24};
    const frame_status status =
        is_old(in->edition) ? pick("spacing_in", "in", older, 3, 0, in->spacing_in, in->covering, spacing, covered)
                            : pick("spacing_in", "in", spacings, 4, 0, in->spacing_in, in->covering, spacing, covered);
    if (is_old(in->edition) && *spacing == 2) *spacing = 3;
    return status;
}

static frame_status find(const frame_code_heel_nails_in *in, const frame_code_heel_nails_row **row, int *place,
                         int *covered, frame_working *w) {
    int slope, spacing, load, lighter = 0;
    unsigned known = 0;
    if (in->edition > FRAME_CODE_2024) return frame_code_no_edition(numbers, in->edition, 0xf);
    frame_status status = slope_row(in, &slope, covered, w);
    if (!status) status = spacing_of(in, &spacing, covered);
    if (!status)
        status = pick("ground_snow_psf", "psf", loads, 4, 1, in->ground_snow_psf, in->covering, &load, &lighter);
    if (!status)
        status = is_old(in->edition)
                     ? pick("roof_span_in", "in", old_spans, 4, 1, in->roof_span_in, in->covering, place, covered)
                     : pick("roof_span_in", "in", new_spans, 3, 1, in->roof_span_in, in->covering, place, covered);
    if (status) return status;
    *covered |= lighter && load > 0;
    *row = &frame_code_heel_nails_table[frame_code_heel_nails_at[slope][spacing + 1] - 1];
    for (; (*row)->slope == slope && (*row)->spacing == spacing + 1; (*row)++) {
        known |= (*row)->editions;
        if ((*row)->editions & frame_code_bit(in->edition) && (*row)->load == loads[load]) return FRAME_OK;
    }
    return frame_code_no_edition(numbers, in->edition, known);
}

static frame_status tie_factor(const frame_code_heel_nails_in *in, const frame_code_heel_factors_row **row) {
    double ratios[frame_code_heel_factors_rows];
    int place, covered;
    *row = 0;
    if (!(in->tie_height_ratio > 0)) return FRAME_OK;
    for (int i = 0; i < frame_code_heel_factors_rows; i++) ratios[i] = frame_code_heel_factors_table[i].ratio;
    const frame_code_columns columns = {numbers, "tie_height_ratio",           "of the ridge's height",
                                        ratios,  frame_code_heel_factors_rows, 1};
    const frame_status status = frame_code_column(&columns, in->tie_height_ratio, 1, &place, &covered);
    if (!status) *row = &frame_code_heel_factors_table[place];
    return status;
}

/* Which of the nails and reductions the edition allows. */
static frame_status check(const frame_code_heel_nails_in *in) {
    if (in->roof_live_psf > 20)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "roof_live_psf", in->roof_live_psf, "0..20 psf");
    if (in->nail == FRAME_CODE_HEEL_10D && is_old(in->edition))
        return frame_fail(FRAME_NO_VALUE, "nail", "10d common", "16d common, 40d box",
                          "nail: 10d common nails are a note of 2021 and 2024 only");
    if (in->nail == FRAME_CODE_HEEL_40D && !is_old(in->edition))
        return frame_fail(FRAME_NO_VALUE, "nail", "40d box", "16d common, 10d common",
                          "nail: 40d box nails are a note of 2015 and 2018 only");
    if (in->clinched && !is_old(in->edition))
        return frame_fail(FRAME_NO_VALUE, "clinched", "yes", "no",
                          "clinched: the reduction for clinched nails is a note of 2015 and 2018 only");
    return FRAME_OK;
}

static void count(const frame_code_heel_nails_in *in, const frame_code_heel_nails_row *row, int place,
                  const frame_code_heel_factors_row *factor, frame_code_heel_nails_out *out, frame_working *w) {
    FRAME_TABLE(w, n_table, cell_of(row, place), "", "16d common nails in the heel joint", out->source);
    FRAME_TABLE(w, F_tie, factor ? factor->factor : 1, "", "factor for ties above the plate",
                factor ? factor->source : "ties at the plate");
    FRAME_GIVEN(w, r, in->span_ratio, "", "span left to the rafters over the whole");
    FRAME_STEP(w, n_16d, ceil(n_table * F_tie * r - 1e-9), "", "16d common nails", out->source);
    FRAME_TABLE(w, F_nail,
                in->nail == FRAME_CODE_HEEL_10D ? 1.2
                : in->clinched                  ? 0.75
                                                : 1,
                "", "factor for the nail, or for clinching", "notes of the table");
    FRAME_STEP(w, n, ceil(n_16d * F_nail - 1e-9), "", "nails in each heel joint and each lap of the ceiling joists",
               "notes of the table");
    out->table_nails = (int32_t)n_table;
    out->nails = (int32_t)n;
}

static frame_status compute(const frame_code_heel_nails_in *in, frame_code_heel_nails_out *out, frame_working *w) {
    const frame_code_heel_nails_row *row;
    const frame_code_heel_factors_row *factor;
    int place, covered;
    FRAME_HEADING(w, "Heel joint by the code's table");
    frame_status status = check(in);
    if (!status) status = find(in, &row, &place, &covered, w);
    if (!status) status = tie_factor(in, &factor);
    if (status) return status;
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source), "", row->known);
    FRAME_CODE_WARN(out, TIES);
    if (covered) FRAME_CODE_WARN(out, COVERED);
    if (!(in->ground_snow_psf > 0)) FRAME_CODE_WARN(out, NO_SNOW);
    FRAME_CODE_UNCHECKED(out, UPLIFT);
    FRAME_CODE_UNCHECKED(out, DRIFT);
    FRAME_CODE_UNCHECKED(out, CALCULATED);
    count(in, row, place, factor, out, w);
    if (in->ridge_carried) {
        FRAME_CASE(w, "a wall, header or ridge beam carries the ridge", "no heel joint is asked for", out->source);
        out->nails = 0;
    }
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_heel_nails, compute);
