/* Panels and nail patterns that carry a unit shear. */
#include "joint/panel_pattern.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "joint/nailing.h"
#include "joint_facts.h"
#include "table_sdpws_diaphragms.h"
#include "table_sdpws_walls.h"
#include "working/calculation.h"

enum { CHOICES = 0 };

static const double sheet_width_in = 48, sheet_height_in = 96;

/* Nails in a line of such a length, both ends included. */
static int in_line(double length_in, double spacing_in) {
    return (int)ceil(length_in / spacing_in - 1e-9) + 1;
}

/* Round the sheet at the edge spacing, and 12 in along the supports within it. */
static int nails_of(double edge_in, double support_in) {
    const int round_it = 2 * (in_line(sheet_width_in, edge_in) + in_line(sheet_height_in, edge_in)) - 4;
    const int supports = (int)ceil(sheet_width_in / support_in - 1e-9) - 1;
    return round_it + (supports > 0 ? supports : 0) * (in_line(sheet_height_in, FRAME_FIELD_NAILS_IN) - 2);
}

static frame_panel_shear_in ask_of(const frame_panel_pattern_in *in, const frame_pattern_row *row) {
    frame_panel_shear_in ask;
    frame_panel_shear_in_init(&ask);
    ask.use = in->use;
    ask.load = in->load;
    ask.edition = in->edition;
    ask.method = in->method;
    ask.blocked = in->blocked;
    ask.both_sides = in->both_sides;
    ask.long_edge_across = in->long_edge_across;
    ask.framing_species = in->framing_species;
    ask.framing_specific_gravity = in->framing_specific_gravity;
    ask.framing_nominal_in = in->framing_nominal_in;
    ask.stud_spacing_in = in->support_spacing_in;
    ask.sheathing = row->sheathing;
    ask.nail = row->nail;
    ask.panel_in = row->panel_in;
    ask.edge_spacing_in = row->edge_in;
    return ask;
}

/* The rows of the table that may be asked for. */
static int row_at(const frame_panel_pattern_in *in, int i, frame_pattern_row *row) {
    if (in->use == FRAME_PANEL_USE_WALL) {
        const frame_sdpws_walls_row *r = &frame_sdpws_walls_table[i];
        *row = (frame_pattern_row){!strcmp(r->sheathing, "sheathing") ? FRAME_PANEL_SHEATHING : FRAME_PANEL_STRUCTURAL,
                                   r->nail, r->panel_in, r->spacing_in};
        return in->blocked || r->spacing_in == 6;
    }
    const frame_sdpws_diaphragms_row *r = &frame_sdpws_diaphragms_table[i];
    *row = (frame_pattern_row){!strcmp(r->sheathing, "sheathing") ? FRAME_PANEL_SHEATHING : FRAME_PANEL_STRUCTURAL,
                               r->nail, r->panel_in, r->spacing_in};
    return r->blocked == in->blocked && r->framing_in == in->framing_nominal_in &&
           r->layout == (in->blocked ? 0 : (in->long_edge_across ? 1 : 2));
}

static int wanted(const frame_panel_pattern_in *in, const frame_pattern_row *row) {
    if (in->sheathing != FRAME_NOT_GIVEN_INT && in->sheathing != row->sheathing) return 0;
    return in->panel_in == FRAME_NOT_GIVEN || fabs(in->panel_in - row->panel_in) < 1e-3;
}

/* The fewest nails, then the thinner panel, the smaller nail, the plainer grade. */
static int order(const void *a, const void *b) {
    const frame_pattern_found *one = a, *other = b;
    if (one->nails != other->nails) return one->nails < other->nails ? -1 : 1;
    if (one->row.panel_in != other->row.panel_in) return one->row.panel_in < other->row.panel_in ? -1 : 1;
    const size_t l = strlen(one->row.nail), m = strlen(other->row.nail);
    if (l != m) return l < m ? -1 : 1;
    const int nail = strcmp(one->row.nail, other->row.nail);
    return nail ? nail : other->row.sheathing - one->row.sheathing;
}

frame_status frame_patterns_find(const frame_panel_pattern_in *in, frame_patterns *patterns) {
    const int rows = in->use == FRAME_PANEL_USE_WALL ? frame_sdpws_walls_rows : frame_sdpws_diaphragms_rows;
    patterns->count = 0;
    for (int i = 0; i < rows; i++) {
        frame_pattern_row row;
        frame_panel_shear_out value;
        if (!row_at(in, i, &row) || !wanted(in, &row)) continue;
        const frame_panel_shear_in ask = ask_of(in, &row);
        const frame_status status = frame_panel_shear(&ask, &value, NULL);
        if (status) return status;
        if (value.unit_plf < in->demand_plf * (1 - 1e-9) || patterns->count == FRAME_MOST_PATTERNS) continue;
        patterns->items[patterns->count++] = (frame_pattern_found){row,
                                                                   nails_of(row.edge_in, in->support_spacing_in),
                                                                   value.unit_plf,
                                                                   value.known,
                                                                   value.cautions,
                                                                   value.not_checked};
    }
    if (!patterns->count)
        return frame_fail_number(FRAME_IMPOSSIBLE, "demand_plf", in->demand_plf,
                                 "what a row of the SDPWS tables carries; sheathe both sides, or lengthen the wall");
    qsort(patterns->items, patterns->count, sizeof *patterns->items, order);
    return FRAME_OK;
}

static frame_status list(const frame_panel_pattern_in *in, const frame_patterns *patterns, frame_answer *answer) {
    for (size_t i = 0; i < patterns->count; i++) {
        const frame_pattern_found *found = &patterns->items[i];
        frame_panel_pattern_choice *line = frame_answer_add(answer, CHOICES);
        if (!line) return FRAME_NO_MEMORY;
        line->sheathing = found->row.sheathing;
        line->nails_per_sheet = found->nails;
        line->nail = found->row.nail;
        line->panel_in = found->row.panel_in;
        line->edge_spacing_in = found->row.edge_in;
        line->unit_plf = found->unit_plf;
        line->ratio = in->demand_plf / found->unit_plf;
    }
    return FRAME_OK;
}

static frame_status solve(const frame_panel_pattern_in *in, frame_answer *answer, frame_panel_pattern_out *out,
                          frame_working *w) {
    frame_patterns patterns;
    frame_panel_shear_out value;
    frame_status status = frame_patterns_find(in, &patterns);
    if (!status) status = list(in, &patterns, answer);
    if (status) return status;
    const frame_pattern_found *first = &patterns.items[0];
    const frame_panel_shear_in ask = ask_of(in, &first->row);
    FRAME_HEADING(w, "The pattern with the fewest nails");
    status = frame_panel_shear(&ask, &value, w);
    if (status) return status;
    FRAME_TABLE(w, v_held, value.unit_plf, "plf", "what it carries", "above");
    FRAME_GIVEN(w, v_asked, in->demand_plf, "plf", "what it must carry");
    FRAME_STEP(w, ratio, v_asked / v_held, "", "demand over that", "at most 1");
    out->count = (int32_t)patterns.count;
    out->nails_per_sheet = first->nails;
    out->sheathing = first->row.sheathing;
    out->nail = first->row.nail;
    out->panel_in = first->row.panel_in;
    out->edge_spacing_in = first->row.edge_in;
    out->unit_plf = v_held;
    out->ratio = ratio;
    out->known = first->known;
    out->cautions = first->cautions;
    out->not_checked = first->not_checked;
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(panel_pattern, solve);
