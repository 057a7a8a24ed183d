/* Spans of deck beams from the code's tables. */
#include "code/deck_beams.h"
#include "code/decks.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_deck_factors.h"
#include "working/calculation.h"

static int beam_row(const void *table, int i, unsigned *editions, int *load, const char **number) {
    const frame_code_deck_beams_row *first = table, *row = first + i;
    if (row >= frame_code_deck_beams_table + frame_code_deck_beams_rows || row->woods != first->woods ||
        row->plies != first->plies || row->size != first->size)
        return 0;
    *editions = row->editions, *load = row->load, *number = row->table;
    return 1;
}

/* The place of a size in the words of the table: 2x as elsewhere, then 3x and 4x of 6 to 12. */
static int size_word(frame_size size) {
    const int thickness = size >> 16, width = (size & 0xffff) / 16;
    if (thickness == 2 * 16) return frame_code_size_2x(size);
    if ((thickness != 3 * 16 && thickness != 4 * 16) || (size & 0xffff) % 32 || width < 6 || width > 12) return 0;
    return width / 2 + (thickness == 3 * 16 ? 3 : 7);
}

static frame_status find(const frame_code_deck_beam_span_in *in, const frame_code_deck_beams_row **row, int *covered) {
    frame_deck_load load;
    int woods, found;
    frame_status status = frame_deck_woods(in->species, &woods);
    if (!status) status = frame_deck_grade(in->grade);
    if (!status) status = frame_deck_load_of(in->live_psf, in->ground_snow_psf, &load);
    if (status) return status;
    const int first = in->plies < frame_code_deck_beams_at_second
                          ? frame_code_deck_beams_at[woods][in->plies][size_word(in->size)]
                          : 0;
    if (!first)
        return frame_deck_no_size(
            in->plies, in->size, "R507.5",
            "1-, 2- and 3-2x6 to 2x12 (2015: two or three plies; until 2018 also 3x6 to 4x12, not of "
            "southern pine)");
    *row = &frame_code_deck_beams_table[first - 1];
    if ((status = frame_deck_find(*row, beam_row, in->edition, &load, in->covering, &found, covered))) return status;
    *row += found;
    *covered |= load.by_live_over_40;
    return FRAME_OK;
}

/* Table R507.5(5) of 2021: the joists' span counts less with a short cantilever. A ratio between its rows takes the
 * next. */
static frame_status effective(const frame_code_deck_beam_span_in *in, double *span, frame_working *w) {
    double ratios[frame_code_deck_factors_rows];
    int place, covered;
    *span = in->joist_span_in;
    if (in->edition != FRAME_CODE_2021 || in->joist_cantilever_in == FRAME_NOT_GIVEN) return FRAME_OK;
    for (int i = 0; i < frame_code_deck_factors_rows; i++) ratios[i] = frame_code_deck_factors_table[i].ratio;
    const frame_code_columns columns = {"R507.5(5)", "joist_cantilever_in",        "of the joists' span",
                                        ratios,      frame_code_deck_factors_rows, 0};
    const frame_status status =
        frame_code_column(&columns, in->joist_cantilever_in / in->joist_span_in, 1, &place, &covered);
    if (status) return status;
    FRAME_GIVEN(w, J, in->joist_span_in, "in", "span of the joists");
    FRAME_TABLE(w, F, frame_code_deck_factors_table[place].factor, "", "factor for the joists' cantilever",
                frame_code_deck_factors_table[place].source);
    FRAME_STEP(w, J_eff, J * F, "in", "effective span of the joists", "IRC 2021 Table R507.5(1), note j");
    *span = J_eff;
    return FRAME_OK;
}

static frame_status column(const frame_code_deck_beam_span_in *in, const frame_code_deck_beams_row *row, double span,
                           int *place, double *fraction, int *covered) {
    const int unsaid = in->joist_cantilever_in == FRAME_NOT_GIVEN;
    if (row->editions & frame_code_bit(FRAME_CODE_2024))
        return frame_deck_beam_by_both(row, span, unsaid ? span / 4 : in->joist_cantilever_in, in->covering || unsaid,
                                       place, fraction, covered);
    return frame_deck_beam_by_span(row, span, in->edition == FRAME_CODE_2021, place, fraction, covered);
}

static frame_status say(const frame_code_deck_beam_span_in *in, const frame_code_deck_beams_row *row, int place,
                        double fraction, frame_code_deck_beam_span_out *out) {
    const unsigned used = 1u << place | (fraction > 0 ? 2u << place : 0);
    const char *const note = row->odd & used ? frame_code_note_text(row->note) : "";
    if (row->refused & used) {
        if (!in->doubtful) return frame_code_doubtful(row->table, note);
        FRAME_CODE_WARN(out, DOUBTFUL);
    }
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source), note, row->known);
    out->cautions |= frame_deck_cautions();
    FRAME_CODE_WARN(out, POINT_LOADS);
    FRAME_CODE_UNCHECKED(out, BEARING);
    FRAME_CODE_UNCHECKED(out, CONNECTIONS);
    FRAME_CODE_UNCHECKED(out, FOOTINGS);
    FRAME_CODE_UNCHECKED(out, CALCULATED);
    return FRAME_OK;
}

static frame_status compute(const frame_code_deck_beam_span_in *in, frame_code_deck_beam_span_out *out,
                            frame_working *w) {
    const frame_code_deck_beams_row *row = NULL;
    int place, heavier, more;
    double fraction, span;
    frame_status status = find(in, &row, &heavier);
    if (status) return status;
    FRAME_HEADING(w, "Deck beam by the code's table");
    if (!(status = effective(in, &span, w))) status = column(in, row, span, &place, &fraction, &more);
    if (status || (status = say(in, row, place, fraction, out))) return status;
    if (heavier || more) FRAME_CODE_WARN(out, COVERED);
    FRAME_TABLE(w, L_1, frame_deck_beam_cell(row, place), "in", "span in the lighter column", out->source);
    FRAME_TABLE(w, L_2, fraction > 0 ? frame_deck_beam_cell(row, place + 1) : L_1, "in", "span in the heavier column",
                out->source);
    FRAME_GIVEN(w, t, fraction, "", "part of the way between the columns");
    FRAME_STEP(w, L_max, L_1 + t * (L_2 - L_1), "in", "longest span of the beam", out->source);
    FRAME_STEP(w, C_max, L_max / 4, "in", "longest cantilever of the beam",
               "IRC R507.5: a quarter of the span beside it");
    if (fraction > 0) FRAME_CODE_WARN(out, BETWEEN);
    out->span_in = L_max;
    out->cantilever_in = C_max;
    out->effective_joist_span_in = span;
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_deck_beam_span, compute);
