/* Uplift of rafters and trusses from the code's table. */
#include <math.h>

#include "code/book.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_uplift.h"
#include "working/calculation.h"

enum { WINDS = 5, SPANS = 8 };
static const double winds[WINDS] = {110, 115, 120, 130, 140}, spacings[] = {12, 16, 24};
static const double spans[SPANS] = {144, 216, 288, 336, 384, 432, 504, 576};
static const char number[] = "R802.11", notes[] = "IRC Table R802.11, notes";

static int cell_of(const frame_code_uplift_row *row, int wind) {
    const int16_t cells[WINDS] = {row->v110, row->v115, row->v120, row->v130, row->v140};
    return cells[wind];
}

static frame_status check(const frame_code_uplift_in *in) {
    if (in->roof_height_in > 33 * 12)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "roof_height_in", in->roof_height_in, "0..396 in (33 ft)");
    if (in->overhang_in > 24) return frame_fail_number(FRAME_OUTSIDE_SCOPE, "overhang_in", in->overhang_in, "0..24 in");
    if (in->hip && in->slope < 5 / 12.0 * (1 - 1e-9))
        return frame_fail(FRAME_OUTSIDE_SCOPE, "hip", "yes", "no under 5 in 12",
                          "hip: the reduction for hip roofs is for 5 in 12 and steeper");
    return FRAME_OK;
}

/* The wind column: exposure D takes the next of exposure C. */
static frame_status wind_of(const frame_code_uplift_in *in, int *wind, double *part, int *lighter) {
    const frame_code_columns columns = {number, "wind_mph", "mph", winds, WINDS, 1};
    const frame_status status = frame_code_between(&columns, in->wind_mph, wind, part, lighter);
    if (status || in->exposure != FRAME_CODE_EXPOSURE_D) return status;
    *wind += 1 + (*part > 0), *part = 0;
    if (*wind < WINDS) return FRAME_OK;
    return frame_fail(FRAME_OUTSIDE_SCOPE, "wind_mph", frame_code_number(in->wind_mph).text, "0..130 mph in exposure D",
                      "wind_mph: %s mph in exposure D is beyond Table R802.11: the next column of exposure C is read",
                      frame_code_number(in->wind_mph).text);
}

/* The rows of a spacing, one a span. */
static frame_status rows_of(const frame_code_uplift_in *in, const frame_code_uplift_row **row, int *covered) {
    const frame_code_columns columns = {number, "spacing_in", "in", spacings, 3, 0};
    const int exposure = in->exposure == FRAME_CODE_EXPOSURE_B ? 1 : 2,
              pitch = in->slope < 5 / 12.0 * (1 - 1e-9) ? 1 : 2;
    int spacing;
    const frame_status status = frame_code_column(&columns, in->spacing_in, in->covering, &spacing, covered);
    if (status) return status;
    *row = &frame_code_uplift_table[frame_code_uplift_at[exposure][pitch] - 1 + spacing * SPANS];
    if ((*row)->editions & frame_code_bit(in->edition)) return FRAME_OK;
    return frame_code_no_edition(number, in->edition, (*row)->editions);
}

static double at_wind(const frame_code_uplift_row *row, int wind, double part) {
    const double here = cell_of(row, wind);
    return part > 0 ? here + part * (cell_of(row, wind + 1) - here) : here;
}

static void adjust(const frame_code_uplift_in *in, double spacing, frame_code_uplift_out *out, frame_working *w) {
    FRAME_TABLE(w, F,
                in->hip           ? 0.7
                : in->near_corner ? 1
                                  : 0.75,
                "", "factor for a hip roof, or away from the corners", notes);
    FRAME_GIVEN(w, U_table, out->table_lb, "lb", "uplift of the table");
    FRAME_GIVEN(w, s, spacing, "in", "spacing of the rafters in the table");
    FRAME_GIVEN(w, N_above, in->walls_above, "", "full walls above");
    FRAME_STEP(w, u, fmax(U_table * F * 12 / s - 60 * N_above, 0), "plf", "uplift a foot of wall", notes);
    FRAME_STEP(w, U, u * s / 12, "lb", "uplift of one rafter on its connection", notes);
    out->uplift_plf = u;
    out->uplift_lb = U;
}

static int nailing_holds(const frame_code_uplift_in *in, double uplift_lb) {
    const int low_force = in->wall_gravity != FRAME_NOT_GIVEN && in->wall_gravity >= 0.42 && uplift_lb <= 200;
    const int low_wind = in->wind_mph <= 115 && in->exposure == FRAME_CODE_EXPOSURE_B &&
                         in->slope >= 5 / 12.0 * (1 - 1e-9) && in->roof_span_in <= 384 && in->spacing_in <= 24;
    return low_force || low_wind;
}

static frame_status compute(const frame_code_uplift_in *in, frame_code_uplift_out *out, frame_working *w) {
    const frame_code_columns columns = {number, "roof_span_in", "in", spans, SPANS, 1};
    const frame_code_uplift_row *row;
    int covered, place, wind, shorter, slower;
    double part, fraction;
    frame_status status = check(in);
    if (!status) status = rows_of(in, &row, &covered);
    if (!status) status = wind_of(in, &wind, &part, &slower);
    if (!status) status = frame_code_between(&columns, in->roof_span_in, &place, &fraction, &shorter);
    if (status) return status;
    row += place;
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source), "", row->known);
    if (covered || shorter || slower) FRAME_CODE_WARN(out, COVERED);
    if (part > 0 || fraction > 0) FRAME_CODE_WARN(out, BETWEEN);
    FRAME_CODE_UNCHECKED(out, CONNECTIONS);
    FRAME_HEADING(w, "Uplift by the code's table");
    FRAME_TABLE(w, U_1, at_wind(row, wind, part), "lb", "uplift at the shorter span", out->source);
    FRAME_TABLE(w, U_2, fraction > 0 ? at_wind(row + 1, wind, part) : U_1, "lb", "uplift at the longer span",
                out->source);
    FRAME_GIVEN(w, t, fraction, "", "part of the way between the spans");
    FRAME_STEP(w, U_12, U_1 + t * (U_2 - U_1), "lb", "uplift interpolated", notes);
    out->table_lb = U_12;
    adjust(in, row->spacing, out, w);
    out->nailing_holds = nailing_holds(in, out->uplift_lb);
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_uplift, compute);
