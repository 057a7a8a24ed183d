/* Spans and cantilevers of deck joists from the code's tables. */
#include <math.h>

#include "code/decks.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_deck_cantilevers.h"
#include "table_code_deck_joists.h"
#include "working/calculation.h"

enum { SECOND_IS_SPAN = 1, SECOND_IS_CANTILEVER = 2 };

static const double spacings[] = {12, 16, 24}, back_spans[] = {48, 72, 96, 120, 144, 168, 192, 216};
static const char quarter[] = "IRC R507.5 (2015), R507.6 (2018): a quarter of the joists' span";

static int joist_row(const void *table, int i, unsigned *editions, int *load, const char **number) {
    const frame_code_deck_joists_row *first = table, *row = first + i;
    if (row >= frame_code_deck_joists_table + frame_code_deck_joists_rows || row->woods != first->woods ||
        row->size != first->size)
        return 0;
    *editions = row->editions, *load = row->load, *number = row->table;
    return 1;
}

static int cantilever_row(const void *table, int i, unsigned *editions, int *load, const char **number) {
    const frame_code_deck_cantilevers_row *first = table, *row = first + i;
    if (row >= frame_code_deck_cantilevers_table + frame_code_deck_cantilevers_rows || row->woods != first->woods ||
        row->size != first->size)
        return 0;
    *editions = row->editions, *load = row->load, *number = row->table;
    return 1;
}

static int span_at(const frame_code_deck_joists_row *row, int place) {
    return place == 0 ? row->s12 : place == 1 ? row->s16 : row->s24;
}
static int second_at(const frame_code_deck_joists_row *row, int place) {
    return place == 0 ? row->c12 : place == 1 ? row->c16 : row->c24;
}
static int cantilever_at(const frame_code_deck_cantilevers_row *row, int place) {
    const int16_t cells[] = {row->b4, row->b6, row->b8, row->b10, row->b12, row->b14, row->b16, row->b18};
    return cells[place];
}

/* The cantilever of 2021 and after: by the back span. Beside a cell that permits none there is none. */
static frame_status by_back_span(const frame_code_deck_joist_span_in *in, int woods, double back,
                                 frame_code_deck_joist_span_out *out, frame_working *w) {
    const int size = frame_code_size_2x(in->size);
    const int first = frame_code_deck_cantilevers_at[woods][size];
    const frame_code_deck_cantilevers_row *rows = &frame_code_deck_cantilevers_table[first - 1];
    const frame_code_columns columns = {rows->table, "back_span_in", "in", back_spans, 8, 0};
    frame_deck_load load;
    int found, covered, place;
    double fraction;
    frame_status status = frame_deck_load_of(in->live_psf, in->ground_snow_psf, &load);
    if (!status) status = frame_deck_find(rows, cantilever_row, in->edition, &load, in->covering, &found, &covered);
    if (!status) status = frame_code_between(&columns, back, &place, &fraction, &covered);
    if (status) return status;
    const int near = cantilever_at(&rows[found], place),
              far = fraction > 0 ? cantilever_at(&rows[found], place + 1) : near;
    if (near == FRAME_CELL_NOT_PERMITTED || far == FRAME_CELL_NOT_PERMITTED) {
        FRAME_CASE(w, "this back span permits no cantilever", "none is permitted", out->source);
        out->cantilever_in = 0;
        return FRAME_OK;
    }
    FRAME_TABLE(w, C_1, near, "in", "cantilever in the column of the shorter back span", out->source);
    FRAME_TABLE(w, C_2, far, "in", "cantilever in the column of the longer back span", out->source);
    FRAME_GIVEN(w, t, fraction, "", "part of the way between the columns");
    FRAME_STEP(w, C_max, C_1 + t * (C_2 - C_1), "in", "longest cantilever", out->source);
    out->cantilever_in = C_max;
    if (fraction > 0) FRAME_CODE_WARN(out, BETWEEN);
    return FRAME_OK;
}

static void by_quarter(const frame_code_deck_joists_row *row, int place, double back,
                       frame_code_deck_joist_span_out *out, frame_working *w) {
    FRAME_GIVEN(w, J, back, "in", "span of the joists behind the cantilever");
    if (row->second == SECOND_IS_SPAN) {
        FRAME_STEP(w, C_max, J / 4, "in", "longest cantilever", quarter);
        out->cantilever_in = C_max;
        return;
    }
    FRAME_TABLE(w, C_table, second_at(row, place), "in", "longest cantilever of the table", out->source);
    FRAME_STEP(w, C_max, fmin(J / 4, C_table), "in", "longest cantilever", quarter);
    out->cantilever_in = C_max;
}

static frame_status cantilever(const frame_code_deck_joist_span_in *in, const frame_code_deck_joists_row *row,
                               int place, frame_code_deck_joist_span_out *out, frame_working *w) {
    const double back = in->back_span_in == FRAME_NOT_GIVEN ? out->span_in : in->back_span_in;
    if (back > out->span_in * (1 + 1e-9))
        return frame_fail(FRAME_OUTSIDE_SCOPE, "back_span_in", frame_code_number(back).text,
                          frame_code_number(out->span_in).text,
                          "back_span_in: %s in is more than the longest span of Table %s, %s in",
                          frame_code_number(back).text, row->table, frame_code_number(out->span_in).text);
    FRAME_CODE_WARN(out, UPLIFT);
    if (!row->second) return by_back_span(in, row->woods, back, out, w);
    by_quarter(row, place, back, out, w);
    return FRAME_OK;
}

static frame_status find(const frame_code_deck_joist_span_in *in, const frame_code_deck_joists_row **row, int *place,
                         int *covered) {
    const int size = frame_code_size_2x(in->size);
    frame_deck_load load;
    int woods, found, more;
    frame_status status = frame_deck_woods(in->species, &woods);
    if (!status) status = frame_deck_grade(in->grade);
    if (!status) status = frame_deck_load_of(in->live_psf, in->ground_snow_psf, &load);
    if (status) return status;
    const int first = frame_code_deck_joists_at[woods][size];
    if (!first) return frame_deck_no_size(1, in->size, "R507.6", "2x6, 2x8, 2x10 and 2x12");
    *row = &frame_code_deck_joists_table[first - 1];
    if ((status = frame_deck_find(*row, joist_row, in->edition, &load, in->covering, &found, covered))) return status;
    *row += found;
    const frame_code_columns columns = {(*row)->table, "spacing_in", "in", spacings, 3, 0};
    status = frame_code_column(&columns, in->spacing_in, in->covering, place, &more);
    *covered |= more | load.by_live_over_40;
    return status;
}

static frame_status compute(const frame_code_deck_joist_span_in *in, frame_code_deck_joist_span_out *out,
                            frame_working *w) {
    const frame_code_deck_joists_row *row;
    int place, covered;
    const frame_status status = find(in, &row, &place, &covered);
    if (status) return status;
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source),
                   row->odd >> place & 1 ? frame_code_note_text(row->note) : "", row->known);
    out->cautions |= frame_deck_cautions();
    if (covered) FRAME_CODE_WARN(out, COVERED);
    FRAME_CODE_UNCHECKED(out, BEARING);
    FRAME_CODE_UNCHECKED(out, CONNECTIONS);
    FRAME_CODE_UNCHECKED(out, NOTCHES);
    FRAME_CODE_UNCHECKED(out, CALCULATED);
    FRAME_HEADING(w, "Deck joist by the code's table");
    const int shorter = in->cantilevered && row->second == SECOND_IS_SPAN;
    if (shorter)
        FRAME_CASE(w, "the joists run on past the beam", "the table's span for joists with a cantilever", out->source);
    FRAME_TABLE(w, L_max, shorter ? second_at(row, place) : span_at(row, place), "in", "longest span", out->source);
    out->span_in = L_max;
    return cantilever(in, row, place, out, w);
}

FRAME_CODE_IMPLEMENT(code_deck_joist_span, compute);
