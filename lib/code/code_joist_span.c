/* Spans of joists and rafters from the code's tables. */
#include "code/joists.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "working/calculation.h"

static const double spacings[] = {12, 16, 19.2, 24};

/* Notes of the rafter tables: where the ties stand above the plate the span is less. Ratio H_C / H_R of the rows. */
static const double tie_ratios[] = {1 / 7.5, 1 / 6.0, 1 / 5.0, 1 / 4.0, 1 / 3.0};
static const double tie_factors[] = {1, 0.9, 0.83, 0.76, 0.67};
static const char tie_source[] = "IRC 2018 R802.4.1 tables, note on ties; IRC 2024 Table R802.4.1(9)";

static frame_status tie_factor(const frame_code_joist_span_in *in, double *factor) {
    const frame_code_columns ratios = {"R802.4.1, note on ties", "tie_height_ratio", "", tie_ratios, 5, 1};
    int place, covered;
    const frame_status status = frame_code_column(&ratios, in->tie_height_ratio, 1, &place, &covered);
    if (!status) *factor = tie_factors[place];
    return status;
}

static frame_status rafter(const frame_code_joist_span_in *in, frame_code_joist_span_out *out, frame_working *w) {
    double factor = 1;
    const frame_status status = tie_factor(in, &factor);
    if (status) return status;
    FRAME_CODE_WARN(out, TIES);
    FRAME_CODE_UNCHECKED(out, UPLIFT);
    if (in->snow_psf > 0)
        FRAME_CODE_UNCHECKED(out, DRIFT);
    else
        FRAME_CODE_WARN(out, NO_SNOW);
    if (factor == 1) return FRAME_OK;
    FRAME_GIVEN(w, L_table, out->span_in, "in", "span of the table");
    FRAME_TABLE(w, F, factor, "", "factor for ties above the plate", tie_source);
    FRAME_STEP(w, L, L_table * F, "in", "longest span", tie_source);
    out->span_in = L;
    return FRAME_OK;
}

static void record(const frame_code_joist_span_in *in, const frame_code_joist_sets_row *set,
                   const frame_code_joist_span_out *out, frame_working *w) {
    FRAME_HEADING(w, "Span by the code's table");
    FRAME_GIVEN(w, s, in->spacing_in, "in", "spacing on centres");
    FRAME_GIVEN(w, w_D, set->dead, "psf", "dead load of the table");
    FRAME_GIVEN(w, w_L, set->snow ? set->snow : set->live, "psf",
                set->snow ? "ground snow load of the table" : "live load of the table");
    FRAME_TABLE(w, L_max, out->span_in, "in", "longest clear span", out->source);
    (void)s, (void)w_D, (void)w_L, (void)L_max;
    if (FRAME_HAS(out->cautions, FRAME_CODE_CAUTION_COVERED))
        FRAME_CASE(w, "the table has no column for what was asked", "read in the next heavier one, which covers it",
                   out->source);
    if (*out->note) FRAME_CASE(w, out->note, "as printed", out->source);
}

static frame_status compute(const frame_code_joist_span_in *in, frame_code_joist_span_out *out, frame_working *w) {
    const frame_code_joist_sets_row *set;
    const frame_code_joist_spans_row *row;
    int column, covered, more;
    frame_status status = frame_code_joist_set(in, &set, &covered);
    if (status) return status;
    const frame_code_columns columns = {set->table, "spacing_in", "in", spacings, 4, 0};
    if ((status = frame_code_column(&columns, in->spacing_in, in->covering, &column, &more))) return status;
    if ((status = frame_code_joist_row(in, set, column, &row))) return status;
    const char *note = row->odd >> column & 1 ? frame_code_note_text(row->note) : "";
    if (row->refused >> column & 1) {
        if (!in->doubtful) return frame_code_doubtful(set->table, note);
        FRAME_CODE_WARN(out, DOUBTFUL);
    }
    const int cell = frame_code_joist_cell(row, column);
    FRAME_CODE_SAY(out, in->edition, set->table, set->source, note, row->known);
    out->span_in = out->table_span_in = cell == FRAME_CELL_OVER ? 312 : cell;
    if (cell == FRAME_CELL_OVER) FRAME_CODE_WARN(out, OVER_26);
    if (covered || more) FRAME_CODE_WARN(out, COVERED);
    FRAME_CODE_WARN(out, STAMP);
    FRAME_CODE_UNCHECKED(out, BEARING);
    FRAME_CODE_UNCHECKED(out, LATERAL);
    FRAME_CODE_UNCHECKED(out, NOTCHES);
    FRAME_CODE_UNCHECKED(out, CALCULATED);
    if (w) record(in, set, out, w);
    return in->use == FRAME_CODE_USE_RAFTER ? rafter(in, out, w) : FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_joist_span, compute);
