/* Fasteners of a deck's ledger from the code's tables. */
#include "code/decks.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_ledger_edges.h"
#include "table_code_ledgers.h"
#include "working/calculation.h"

enum { LEDGER = 0, BAND = 1, BOLT_THROUGH_1_IN = 3 };
static const double joist_spans[] = {72, 96, 120, 144, 168, 192, 216};

static int ledger_row(const void *table, int i, unsigned *editions, int *load, const char **number) {
    const frame_code_ledgers_row *first = table, *row = first + i;
    if (row >= frame_code_ledgers_table + frame_code_ledgers_rows || row->fastener != first->fastener) return 0;
    *editions = row->editions, *load = row->load, *number = row->table;
    return 1;
}

static int cell_of(const frame_code_ledgers_row *row, int place) {
    const int16_t cells[] = {row->j6, row->j8, row->j10, row->j12, row->j14, row->j16, row->j18};
    return cells[place];
}

/* The column of the fastener for the thickness between ledger and band joist. */
static frame_status fastener_of(const frame_code_ledger_spacing_in *in, int *fastener) {
    const double most = in->fastener == FRAME_CODE_LEDGER_BOLT ? 1 : 0.5;
    *fastener = in->sheathing_in > 0.5 ? BOLT_THROUGH_1_IN : in->fastener;
    if (in->sheathing_in <= most) return FRAME_OK;
    return frame_fail(
        FRAME_OUTSIDE_SCOPE, "sheathing_in", frame_code_number(in->sheathing_in).text,
        most < 1 ? "0..0.5 in for lag screws, 0..1 in for bolts" : "0..1 in for bolts",
        "sheathing_in: %s in is more than the tables allow between ledger and band joist: half an inch for "
        "lag screws, 1 in for bolts; more needs a designed connection",
        frame_code_number(in->sheathing_in).text);
}

static frame_status check_ledger(const frame_code_ledger_spacing_in *in) {
    const frame_size size = in->ledger_size == FRAME_NOT_GIVEN_INT ? FRAME_SIZE(2, 8) : in->ledger_size;
    const char *const name = frame_size_name(size);
    if (size >> 16 >= 2 * 16 && (size & 0xffff) >= 8 * 16) return FRAME_OK;
    return frame_fail(FRAME_OUTSIDE_SCOPE, "ledger_size", name ? name : "", "2x8 and larger",
                      "ledger_size: %s: a ledger is 2x8 at least", name ? name : "?");
}

static frame_status find(const frame_code_ledger_spacing_in *in, const frame_code_ledgers_row **row, int *covered) {
    frame_deck_load load;
    int fastener, found;
    frame_status status = check_ledger(in);
    if (!status) status = fastener_of(in, &fastener);
    if (!status) status = frame_deck_load_of(in->live_psf, in->ground_snow_psf, &load);
    if (status) return status;
    *row = &frame_code_ledgers_table[frame_code_ledgers_at[fastener] - 1];
    if ((status = frame_deck_find(*row, ledger_row, in->edition, &load, in->covering, &found, covered))) return status;
    *row += found;
    *covered |= load.by_live_over_40;
    return FRAME_OK;
}

static void edges(frame_code_ledger_spacing_out *out, frame_working *w) {
    const frame_code_ledger_edges_row *ledger = &frame_code_ledger_edges_table[LEDGER],
                                      *band = &frame_code_ledger_edges_table[BAND];
    FRAME_TABLE(w, A_top, ledger->top_edge, "in", "least distance to the ledger's top edge", ledger->source);
    FRAME_TABLE(w, A_bottom, ledger->bottom_edge, "in", "least distance to the ledger's bottom edge", ledger->source);
    FRAME_TABLE(w, B_top, band->top_edge, "in", "least distance to the band joist's top edge", band->source);
    FRAME_TABLE(w, B_bottom, band->bottom_edge, "in", "least distance to the band joist's bottom edge", band->source);
    FRAME_TABLE(w, A_end, ledger->end, "in", "least distance to the ends", ledger->source);
    FRAME_TABLE(w, R_least, ledger->row_spacing, "in", "least distance between the rows", ledger->source);
    FRAME_TABLE(w, R_most, ledger->row_most, "in", "greatest distance between the rows", ledger->source);
    out->ledger_top_in = A_top, out->ledger_bottom_in = A_bottom;
    out->band_top_in = B_top, out->band_bottom_in = B_bottom;
    out->end_in = A_end, out->row_spacing_in = R_least, out->row_spacing_most_in = R_most;
}

static frame_status compute(const frame_code_ledger_spacing_in *in, frame_code_ledger_spacing_out *out,
                            frame_working *w) {
    const frame_code_ledgers_row *row;
    int heavier, place, more;
    double fraction = 0;
    frame_status status = find(in, &row, &heavier);
    if (status) return status;
    const frame_code_columns columns = {row->table, "joist_span_in", "in", joist_spans, 7, 1};
    status = in->edition >= FRAME_CODE_2021
                 ? frame_code_between(&columns, in->joist_span_in, &place, &fraction, &more)
                 : frame_code_column(&columns, in->joist_span_in, 1, &place, &more); /* ranges up to each column */
    if (status) return status;
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source), "", row->known);
    FRAME_CODE_WARN(out, BEHIND);
    FRAME_CODE_WARN(out, TREATED);
    FRAME_CODE_WARN(out, LATERAL);
    FRAME_CODE_WARN(out, POINT_LOADS);
    if (heavier) FRAME_CODE_WARN(out, COVERED);
    if (in->sheathing_in > 0) FRAME_CODE_WARN(out, SHEATHING);
    FRAME_HEADING(w, "Ledger by the code's table");
    FRAME_TABLE(w, s_1, cell_of(row, place), "in", "spacing in the column of the shorter joists", out->source);
    FRAME_TABLE(w, s_2, fraction > 0 ? cell_of(row, place + 1) : s_1, "in",
                "spacing in the column of the longer joists", out->source);
    FRAME_GIVEN(w, t, fraction, "", "part of the way between the columns");
    FRAME_STEP(w, s_max, s_1 + t * (s_2 - s_1), "in", "greatest spacing", out->source);
    if (fraction > 0) FRAME_CODE_WARN(out, BETWEEN);
    out->spacing_in = s_max;
    edges(out, w);
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_ledger_spacing, compute);
