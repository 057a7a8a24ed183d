/* Spans and loads of wood structural panels from the code's table. */
#include "code/book.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_panels.h"
#include "working/calculation.h"

static double or_none(int cell) {
    return cell == FRAME_NO_CELL ? FRAME_NOT_GIVEN : cell;
}

static frame_status compute(const frame_code_panel_span_in *in, frame_code_panel_span_out *out, frame_working *w) {
    const frame_code_panels_row *row = &frame_code_panels_table[frame_code_panels_at[in->rating] - 1];
    if (!(row->editions & frame_code_bit(in->edition)))
        return frame_code_no_edition(row->table, in->edition, row->editions);
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source), "", row->known);
    FRAME_CODE_WARN(out, STAMP);
    FRAME_CODE_UNCHECKED(out, CONNECTIONS);
    FRAME_HEADING(w, "Panel by the code's table");
    FRAME_TABLE(w, L_held, row->roof_held, "in", "longest span on a roof with edges held", out->source);
    FRAME_TABLE(w, L_free, row->roof_free, "in", "longest span on a roof with free edges", out->source);
    FRAME_TABLE(w, w_T, row->total, "psf", "total load at the longest span", out->source);
    FRAME_TABLE(w, w_L, row->live, "psf", "live load at the longest span", out->source);
    FRAME_TABLE(w, L_floor, row->floor, "in", "longest span as a subfloor", out->source);
    out->thickness = row->thickness;
    out->roof_span_held_in = L_held;
    out->roof_span_free_in = L_free;
    out->roof_total_psf = w_T;
    out->roof_live_psf = w_L;
    out->live_16_psf = or_none(row->live16);
    out->live_24_psf = or_none(row->live24);
    out->floor_span_in = L_floor;
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_panel_span, compute);
