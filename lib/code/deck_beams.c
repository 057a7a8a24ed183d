/* Finding the column of a deck beam table. */
#include "code/deck_beams.h"

#include <stdio.h>

#include "base/error.h"

static const double joist_spans[] = {72, 96, 120, 144, 168, 192, 216};

/* What the columns of 2024 are for, feet: joist span and cantilever; a column is for each pair beneath it. The tables
 * for 40 and 50 psf have no joists of 16 ft with 4 ft of cantilever; that for 70 psf prints 18 and 1 for 18 and 1.5. */
static const struct pair {
    double span_ft, cantilever_ft;
    int column, least_load, most_load;
} pairs[] = {{6, 0, 0, 0, 99},    {6, 1.5, 1, 0, 99}, {8, 0, 1, 0, 99},   {8, 1, 2, 0, 99},    {10, 0, 2, 0, 99},
             {8, 2, 3, 0, 99},    {10, 1, 3, 0, 99},  {12, 0, 3, 0, 99},  {10, 2.5, 4, 0, 99}, {12, 1, 4, 0, 99},
             {14, 0, 4, 0, 99},   {12, 2, 5, 0, 99},  {14, 1, 5, 0, 99},  {16, 0, 5, 0, 99},   {12, 3, 6, 0, 99},
             {14, 2, 6, 0, 99},   {16, 1, 6, 0, 99},  {18, 0, 6, 0, 99},  {14, 3.5, 7, 0, 99}, {16, 2.5, 7, 0, 99},
             {18, 1.5, 7, 0, 69}, {18, 1, 7, 70, 99}, {16, 4, 8, 60, 99}, {18, 3, 8, 0, 99},   {18, 4.5, 9, 0, 99}};
enum { PAIRS = sizeof pairs / sizeof *pairs };

frame_status frame_deck_beam_by_span(const frame_code_deck_beams_row *row, double span_in, int interpolates, int *place,
                                     double *fraction, int *covered) {
    const frame_code_columns columns = {row->table, "joist_span_in", "in", joist_spans, 7, 1};
    *fraction = 0;
    if (interpolates) return frame_code_between(&columns, span_in, place, fraction, covered);
    const frame_status status = frame_code_column(&columns, span_in, 1, place, covered);
    *covered = 0; /* the columns are for joists up to so much */
    return status;
}

static frame_status no_pair(const frame_code_deck_beams_row *row, double span_in, double cantilever_in, int beyond) {
    const char *const field = span_in > 216 ? "joist_span_in" : "joist_cantilever_in";
    const double value = span_in > 216 ? span_in : cantilever_in;
    return frame_fail(
        beyond ? FRAME_OUTSIDE_SCOPE : FRAME_NO_VALUE, field, frame_code_number(value).text,
        "6 and 1.5, 8 and 1 or 2, 10 and 1 or 2.5, 12 and 1, 2 or 3, 14 and 1, 2 or 3.5, 16 and 1 or 2.5, 18 "
        "and 1.5, 3 or 4.5 ft",
        "%s: Table %s has no column for joists of %s in with a cantilever of %s in%s", field, row->table,
        frame_code_number(span_in).text, frame_code_number(cantilever_in).text,
        beyond ? "; its last is for 18 ft and 4.5 ft" : " and no interpolation with a cantilever");
}

frame_status frame_deck_beam_by_both(const frame_code_deck_beams_row *row, double span_in, double cantilever_in,
                                     int covering, int *place, double *fraction, int *covered) {
    const double slack = 1e-6;
    int best = FRAME_DECK_BEAM_COLUMNS, exact = 0;
    if (cantilever_in <= 0) return frame_deck_beam_by_span(row, span_in, 1, place, fraction, covered);
    for (int i = 0; i < PAIRS; i++) {
        const struct pair *pair = &pairs[i];
        const double span = 12 * pair->span_ft, cantilever = 12 * pair->cantilever_ft;
        if (row->load < pair->least_load || row->load > pair->most_load || pair->column > best) continue;
        if (span_in > span + slack || cantilever_in > cantilever + slack) continue;
        if (pair->column < best) exact = 0;
        best = pair->column;
        exact |= span_in > span - slack && cantilever_in > cantilever - slack;
    }
    if (best == FRAME_DECK_BEAM_COLUMNS) return no_pair(row, span_in, cantilever_in, 1);
    if (!exact && !covering) return no_pair(row, span_in, cantilever_in, 0);
    *place = best, *fraction = 0, *covered = !exact;
    return FRAME_OK;
}
