/* Cantilevered floor joists from the code's tables. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "code/book.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_floor_cantilevers.h"
#include "working/calculation.h"

enum { WIDTHS = 3, SNOWS = 4 };
static const double widths[WIDTHS] = {288, 384, 480};
static const char notes[] = "IRC Tables R502.3.3(1) and (2), notes";

/* The four cells around a case, and how far it lies between them. */
typedef struct square {
    const frame_code_floor_cantilevers_row *low, *high; /* rows of less and more snow */
    int column;
    double across, down; /* toward the wider roof, toward more snow */
} square;

static int length_at(const frame_code_floor_cantilevers_row *row, int column) {
    return column == 0 ? row->c24 : column == 1 ? row->c32 : row->c40;
}
static int uplift_at(const frame_code_floor_cantilevers_row *row, int column) {
    return column == 0 ? row->u24 : column == 1 ? row->u32 : row->u40;
}

static frame_status no_size(const frame_code_floor_cantilever_in *in, const char *table) {
    const char *const name = frame_size_name(in->size);
    return frame_fail(FRAME_NO_VALUE, "size", name ? name : "", "2x8 at 12, 2x10 at 12 or 16, 2x12 at 8, 12 or 16 in",
                      "size: %s at %s in is not in Table %s", name ? name : "?", frame_code_number(in->spacing_in).text,
                      table);
}

static frame_status rows_of(const frame_code_floor_cantilever_in *in, square *of, int *lighter) {
    const frame_code_floor_cantilevers_row *rows[SNOWS],
        *end = frame_code_floor_cantilevers_table + frame_code_floor_cantilevers_rows;
    const int size = frame_code_size_2x(in->size), balcony = in->carries == FRAME_CODE_CANTILEVER_BALCONY;
    const char *const table = balcony ? "R502.3.3(2)" : "R502.3.3(1)";
    double snows[SNOWS];
    int count = 0, place;
    const int first = frame_code_floor_cantilevers_at[in->carries][size];
    if (!first) return no_size(in, table);
    for (const frame_code_floor_cantilevers_row *row = &frame_code_floor_cantilevers_table[first - 1];
         row < end && row->carries == in->carries && row->size == size && count < SNOWS; row++)
        if (fabs(row->spacing - in->spacing_in) < 1e-6) rows[count] = row, snows[count++] = row->snow;
    if (!count) return no_size(in, table);
    if (!(rows[0]->editions & frame_code_bit(in->edition)))
        return frame_code_no_edition(table, in->edition, rows[0]->editions);
    const frame_code_columns columns = {table, "ground_snow_psf", "psf", snows, count, 1};
    const frame_status status = frame_code_between(&columns, in->ground_snow_psf, &place, &of->down, lighter);
    if (status) return status;
    of->low = rows[place];
    of->high = of->down > 0 ? rows[place + 1] : rows[place];
    return FRAME_OK;
}

static frame_status width_of(const frame_code_floor_cantilever_in *in, square *of, int *lighter) {
    const frame_code_columns columns = {of->low->table, "roof_width_in", "in", widths, WIDTHS, 1};
    of->column = 0, of->across = 0;
    if (in->carries == FRAME_CODE_CANTILEVER_BALCONY) return FRAME_OK;
    if (in->roof_width_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "roof_width_in", "", "the width of the roof, 40 ft at most",
                          "roof_width_in: is required under a wall and roof");
    return frame_code_between(&columns, in->roof_width_in, &of->column, &of->across, lighter);
}

static double mix(double a, double b, double part) {
    return a + part * (b - a);
}

/* Interpolated over both; 0 when one of the cells that counts is empty. */
static int read(const square *of, double *length, double *uplift) {
    const int next = of->column + (of->across > 0);
    const int cells[] = {length_at(of->low, of->column), length_at(of->low, next), length_at(of->high, of->column),
                         length_at(of->high, next)};
    for (int i = 0; i < 4; i++)
        if (cells[i] == FRAME_NO_CELL) return 0;
    *length = mix(mix(cells[0], cells[1], of->across), mix(cells[2], cells[3], of->across), of->down);
    *uplift = mix(mix(uplift_at(of->low, of->column), uplift_at(of->low, next), of->across),
                  mix(uplift_at(of->high, of->column), uplift_at(of->high, next), of->across), of->down);
    return 1;
}

static void back_span(const frame_code_floor_cantilever_in *in, double least, double length, double uplift,
                      frame_code_floor_cantilever_out *out, frame_working *w) {
    FRAME_TABLE(w, C_table, length, "in", "cantilever of the table", out->source);
    FRAME_TABLE(w, U_table, uplift, "lb", "uplift at the support behind, at the least back span", out->source);
    FRAME_TABLE(w, R_least, least, "", "least ratio of back span to cantilever", notes);
    FRAME_GIVEN(w, B, in->back_span_in == FRAME_NOT_GIVEN ? C_table * R_least : in->back_span_in, "in",
                "span behind the support");
    FRAME_STEP(w, C_max, fmin(C_table, B / R_least), "in", "longest cantilever", notes);
    FRAME_STEP(w, R, B / C_max, "", "ratio of back span to cantilever", notes);
    FRAME_STEP(w, U, U_table * R_least / R, "lb", "uplift at the support behind", notes);
    out->cantilever_in = C_max;
    out->uplift_lb = U;
}

/* The cells around a case; FRAME_NO_VALUE where one of them is empty. */
static frame_status cells_of(const frame_code_floor_cantilever_in *in, square *of, int *covered, double *length,
                             double *uplift) {
    int narrower = 0;
    frame_status status = rows_of(in, of, covered);
    if (!status) status = width_of(in, of, &narrower);
    if (status) return status;
    *covered |= narrower;
    if (read(of, length, uplift)) return FRAME_OK;
    return frame_fail(FRAME_NO_VALUE, "ground_snow_psf", frame_code_number(in->ground_snow_psf).text,
                      "less snow, a narrower roof, deeper or closer joists",
                      "ground_snow_psf: Table %s has no cantilever for %s psf and this roof on these joists",
                      of->low->table, frame_code_number(in->ground_snow_psf).text);
}

/* Beside an empty cell: the longest of what covers the case, more snow or a wider roof. The table leaves some of its
 * lightest cells empty, too. */
static frame_status covering(const frame_code_floor_cantilever_in *in, square *of, double *length, double *uplift) {
    static const double snows[SNOWS] = {20, 30, 50, 70};
    frame_status status = FRAME_NO_VALUE;
    for (int i = -1; i < SNOWS; i++)
        for (int k = -1; k < WIDTHS; k++) {
            frame_code_floor_cantilever_in heavier = *in;
            square found;
            int covered;
            double longest, held;
            if (i >= 0) heavier.ground_snow_psf = snows[i];
            if (k >= 0) heavier.roof_width_in = widths[k];
            if (heavier.ground_snow_psf < in->ground_snow_psf || heavier.roof_width_in < in->roof_width_in) continue;
            if (cells_of(&heavier, &found, &covered, &longest, &held)) continue;
            if (!status && longest <= *length) continue;
            *of = found, *length = longest, *uplift = held;
            status = FRAME_OK;
        }
    return status;
}

static void warn(const frame_code_floor_cantilever_in *in, const square *of, int covered,
                 frame_code_floor_cantilever_out *out) {
    FRAME_CODE_WARN(out, UPLIFT);
    FRAME_CODE_WARN(out, POINT_LOADS);
    if (in->edition <= FRAME_CODE_2018) FRAME_CODE_WARN(out, PINE);
    FRAME_CODE_WARN(out, STAMP);
    if (covered) FRAME_CODE_WARN(out, COVERED);
    if (of->across > 0 || of->down > 0) FRAME_CODE_WARN(out, BETWEEN);
    FRAME_CODE_UNCHECKED(out, LATERAL);
    FRAME_CODE_UNCHECKED(out, SEISMIC);
}

static frame_status compute(const frame_code_floor_cantilever_in *in, frame_code_floor_cantilever_out *out,
                            frame_working *w) {
    square of;
    int covered = 0;
    double length = 0, uplift = 0;
    frame_status status = cells_of(in, &of, &covered, &length, &uplift);
    if (status == FRAME_NO_VALUE && !strcmp(frame_error_field(), "ground_snow_psf")) {
        if (covering(in, &of, &length, &uplift)) return cells_of(in, &of, &covered, &length, &uplift);
        covered = 1;
    } else if (status) {
        return status;
    }
    FRAME_CODE_SAY(out, in->edition, of.low->table, frame_code_source_text(of.low->source), "", of.low->known);
    warn(in, &of, covered, out);
    FRAME_HEADING(w, "Cantilevered floor by the code's table");
    if (covered) FRAME_CASE(w, "the table has no cell for this case", "read in a heavier one that covers it", notes);
    if (of.across > 0 || of.down > 0) FRAME_CASE(w, "between the table's columns", "interpolated", notes);
    back_span(in, in->carries == FRAME_CODE_CANTILEVER_BALCONY ? 2 : 3, length, uplift, out, w);
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_floor_cantilever, compute);
