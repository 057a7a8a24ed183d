/* The nails that make plies one column: NDS 15.3.3. */
#include "material/lumber.h"
#include "strength_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

#define RULE "NDS 2018 15.3.3 (from memory)"

static void find_limits(const frame_column_nailing_in *in, double t_given, frame_column_nailing_out *out,
                        frame_working *record) {
    FRAME_HEADING(record, "Limits");
    FRAME_GIVEN(record, D, in->nail_diameter_in, "in", "diameter of the nail");
    FRAME_GIVEN(record, n, in->plies, "", "number of plies");
    FRAME_TABLE(record, t, t_given, "in", "thickness of one ply", "PS 20 dressed dry size");
    FRAME_STEP(record, l_needed, (n - 1) * t + 0.75 * t, "in", "length of nail: all plies, three quarters of the last",
               RULE);
    FRAME_STEP(record, s_least, 20 * D, "in", "least spacing along a row", RULE);
    FRAME_STEP(record, s_most, 6 * t, "in", "most spacing along a row", RULE);
    FRAME_STEP(record, e_least, 15 * D, "in", "least end distance", RULE);
    FRAME_STEP(record, e_most, 18 * D, "in", "most end distance", RULE);
    FRAME_STEP(record, r_least, 10 * D, "in", "least spacing between rows", RULE);
    FRAME_STEP(record, r_most, 20 * D, "in", "most spacing between rows", RULE);
    FRAME_STEP(record, a_least, 5 * D, "in", "least edge distance", RULE);
    FRAME_STEP(record, a_most, 20 * D, "in", "most edge distance", RULE);
    out->nail_needed_in = l_needed;
    out->least_spacing_in = s_least, out->most_spacing_in = s_most;
    out->least_end_in = e_least, out->most_end_in = e_most;
    out->least_row_spacing_in = r_least, out->most_row_spacing_in = r_most;
    out->least_edge_in = a_least, out->most_edge_in = a_most;
}

/* Whether so many rows fit the width within all limits; then where they lie: as far apart as they may, edges the rest.
 */
static int rows_fit(int rows, double width, frame_column_nailing_out *out) {
    const double gaps = rows - 1;
    const double apart = gaps > 0 ? fmin(out->most_row_spacing_in, (width - 2 * out->least_edge_in) / gaps) : 0;
    const double edge = (width - gaps * apart) / 2;
    if (gaps > 0 && apart < out->least_row_spacing_in - 1e-9) return 0;
    if (edge < out->least_edge_in - 1e-9 || edge > out->most_edge_in + 1e-9) return 0;
    out->row_spacing_in = gaps > 0 ? apart : FRAME_NOT_GIVEN;
    out->edge_in = edge;
    return 1;
}

static int find_rows(double width, double thickness, frame_column_nailing_out *out, frame_working *record) {
    const int wide = width > 3 * thickness;
    FRAME_HEADING(record, "Rows");
    FRAME_GIVEN(record, d, width, "in", "width of the plies");
    FRAME_TABLE(record, t, thickness, "in", "thickness of one ply", "PS 20 dressed dry size");
    FRAME_CASE(record, wide ? "d > 3 * t" : "d <= 3 * t", wide ? "two rows and more" : "one row may do", RULE);
    (void)d, (void)t;
    for (int rows = wide ? 2 : 1; rows <= 40; rows++)
        if (rows_fit(rows, width, out)) return rows;
    return 0;
}

static void lay_out(const frame_column_nailing_in *in, int rows, frame_column_nailing_out *out, frame_working *record) {
    const double e_most = out->most_end_in, s_most = out->most_spacing_in;
    FRAME_HEADING(record, "Nails");
    FRAME_GIVEN(record, L, in->length_in, "in", "height of the column");
    FRAME_STEP(record, gaps, fmax(ceil((L - 2 * e_most) / s_most - 1e-9), 0), "", "spaces in a row", RULE);
    FRAME_STEP(record, per_row, gaps + 1, "", "nails in a row", "");
    FRAME_GIVEN(record, n_r, rows, "", "rows");
    FRAME_STEP(record, nails, n_r * per_row, "", "nails in all", "");
    out->nail_rows = rows, out->per_row = (int32_t)per_row, out->nails = (int32_t)nails;
    if (gaps > 0) out->spacing_in = (L - 2 * e_most) / gaps;
}

static frame_status compute(const frame_column_nailing_in *in, frame_column_nailing_out *out, frame_working *record) {
    double thickness, width;
    const frame_status status = frame_size_dressed(in->size, 0, &thickness, &width);
    if (status) return status;
    find_limits(in, thickness, out, record);
    const int rows = find_rows(width, thickness, out, record);
    if (rows) lay_out(in, rows, out, record);
    const int spaced = out->least_spacing_in <= out->most_spacing_in + 1e-9 &&
                       (!frame_given(out->spacing_in) || out->spacing_in >= out->least_spacing_in - 1e-9);
    out->passes = rows > 0 && spaced && in->nail_length_in >= out->nail_needed_in - 1e-9 && thickness >= 1.5 - 1e-9;
    FRAME_CASE(record, out->passes ? "the nail keeps all limits" : "the nail is too short, or its size breaks a limit",
               out->passes ? "the plies may count as one column" : "they may not", RULE);
    out->known = FRAME_KNOWN_MEMORY;
    out->cautions = FRAME_BIT(FRAME_COLUMN_NAILING_CAUTION_SIDES) | FRAME_BIT(FRAME_COLUMN_NAILING_CAUTION_FULL) |
                    FRAME_BIT(FRAME_COLUMN_NAILING_CAUTION_MEMORY);
    out->not_checked =
        FRAME_BIT(FRAME_COLUMN_NAILING_UNCHECKED_COLUMN) | FRAME_BIT(FRAME_COLUMN_NAILING_UNCHECKED_SIDE);
    return FRAME_OK;
}
FRAME_IMPLEMENT(column_nailing, compute);
