/* Spans of headers and girders, and their jack studs, from the code's tables. */
#include "code/headers.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "working/calculation.h"

static const char top_note[] = "IRC R602.7(1), note on headers whose top is not braced";

/* Where the header stands, and how wide the building or deep the porch is. */
static frame_status resolve(const frame_code_header_span_in *in, frame_code_header_span_in *of) {
    *of = *in;
    const frame_code_supports what = in->supports;
    if (in->location == FRAME_NOT_GIVEN_INT)
        of->location = what == FRAME_CODE_SUPPORTS_PORCH_ROOF  ? FRAME_CODE_PORCH
                       : what >= FRAME_CODE_SUPPORTS_ONE_FLOOR ? FRAME_CODE_INTERIOR
                                                               : FRAME_CODE_EXTERIOR;
    if (in->porch_depth_in != FRAME_NOT_GIVEN && in->building_width_in != FRAME_NOT_GIVEN)
        return frame_fail(FRAME_CONFLICT, "porch_depth_in", frame_code_number(in->porch_depth_in).text,
                          "building_width_in or porch_depth_in", "porch_depth_in: give it or building_width_in");
    if (in->porch_depth_in != FRAME_NOT_GIVEN) of->building_width_in = in->porch_depth_in;
    if (of->building_width_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "building_width_in", "", "a width, or the depth of a porch",
                          "building_width_in: is required");
    return FRAME_OK;
}

static void warn(const frame_code_header_span_in *in, frame_code_header_span_out *out) {
    FRAME_CODE_WARN(out, POINT_LOADS);
    FRAME_CODE_WARN(out, STAMP);
    if (in->top_braced && in->plies < 5) FRAME_CODE_WARN(out, TOP_BRACED);
    if (in->location == FRAME_CODE_PORCH) FRAME_CODE_WARN(out, TREATED);
    if (in->location != FRAME_CODE_INTERIOR) {
        FRAME_CODE_UNCHECKED(out, DRIFT);
        FRAME_CODE_UNCHECKED(out, UPLIFT);
    }
    FRAME_CODE_UNCHECKED(out, FOOTINGS);
    FRAME_CODE_UNCHECKED(out, CALCULATED);
    FRAME_CODE_UNCHECKED(out, CONNECTIONS);
}

/* The span at a width: the column's, or the way between two. */
static void between(const frame_code_headers_row *row, int place, double fraction, frame_code_header_span_out *out,
                    frame_working *w) {
    FRAME_TABLE(w, L_1, frame_code_header_length(row, place), "in", "span in the narrower column", out->source);
    if (!(fraction > 0)) {
        out->table_span_in = L_1;
        return;
    }
    FRAME_TABLE(w, L_2, frame_code_header_length(row, place + 1), "in", "span in the wider column", out->source);
    FRAME_GIVEN(w, t, fraction, "", "part of the way between the columns");
    FRAME_STEP(w, L_12, L_1 + t * (L_2 - L_1), "in", "span interpolated between the widths",
               "IRC R602.7(1), note on widths between those shown");
    out->table_span_in = L_12;
    FRAME_CODE_WARN(out, BETWEEN);
}

static void brace(const frame_code_header_span_in *in, frame_code_header_span_out *out, frame_working *w) {
    out->span_in = out->table_span_in;
    if (in->top_braced || frame_code_size_2x(in->size) < 3) return;
    FRAME_GIVEN(w, L_table, out->table_span_in, "in", "span of the table");
    FRAME_STEP(w, L, 0.7 * L_table, "in", "span with a top that is not braced", top_note);
    out->span_in = L;
}

static void record(const frame_code_header_span_in *in, frame_working *w) {
    FRAME_HEADING(w, "Header by the code's table");
    FRAME_GIVEN(w, width, in->building_width_in, "in",
                in->location == FRAME_CODE_PORCH ? "depth of the porch" : "width of the building");
    (void)width;
    if (in->location == FRAME_CODE_INTERIOR) return;
    FRAME_GIVEN(w, p_g, in->ground_snow_psf, "psf", "ground snow load");
    (void)p_g;
    if (in->ground_snow_psf < 30 && in->edition != FRAME_CODE_2012_PROPOSAL)
        FRAME_CASE(w, "p_g < 30", "read in the column of 30 psf, for roof live loads up to 20 psf",
                   "IRC R602.7(1), note on ground snow under 30 psf");
}

static frame_status compute(const frame_code_header_span_in *asked, frame_code_header_span_out *out, frame_working *w) {
    frame_code_header_span_in in;
    const frame_code_headers_row *row;
    int place, heavier, narrower;
    double fraction;
    frame_status status = resolve(asked, &in);
    if (!status) status = frame_code_header_row(&in, &row, &heavier);
    if (!status) status = frame_code_header_place(row, &in, &place, &fraction, &narrower);
    if (status) return status;
    FRAME_CODE_SAY(out, in.edition, row->table, frame_code_source_text(row->source), "", row->known);
    if (heavier || narrower) FRAME_CODE_WARN(out, COVERED);
    if (w) record(&in, w);
    between(row, place, fraction, out, w);
    brace(&in, out, w);
    const int jacks = frame_code_header_jacks(row, place + (fraction > 0));
    if (jacks != FRAME_NO_CELL) {
        FRAME_TABLE(w, N_J, jacks, "", "jack studs at each end", out->source);
        out->jack_studs = (int32_t)N_J;
        out->anchor_allowed = jacks == 1;
    }
    warn(&in, out);
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_header_span, compute);
