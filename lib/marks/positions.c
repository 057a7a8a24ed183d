/* Where members on centres stand. All places come from the datum by one multiplication, never one from another. */
#include "marks/positions.h"

#include <math.h>

#include "base/error.h"

#define SAME 1e-9 /* inches */

static frame_status refuse(const frame_positions *p) {
    if (p->spacing <= p->thickness)
        return frame_fail_number(FRAME_IMPOSSIBLE, "spacing_in", p->spacing, "more than the thickness");
    if (p->length < 2 * p->thickness)
        return frame_fail_number(FRAME_IMPOSSIBLE, "length_in", p->length, "at least two thicknesses");
    if (p->length / p->spacing > 10000)
        return frame_fail_number(FRAME_TOO_LARGE, "length_in", p->length, "at most 10,000 spacings");
    if (fabs(p->datum) / p->spacing > 1e9)
        return frame_fail_number(FRAME_TOO_LARGE, "datum_in", p->datum, "at most a thousand million spacings");
    return FRAME_OK;
}

/* How many places on centres have their near side between two bounds, and the first of them. */
static int count_between(const frame_positions *p, double low, double high, int64_t *first) {
    *first = (int64_t)ceil((low - SAME - p->base) / p->spacing);
    const int64_t last = (int64_t)floor((high + SAME - p->base) / p->spacing);
    return last < *first ? 0 : (int)(last - *first + 1);
}

frame_status frame_positions_find(frame_positions *p) {
    int64_t ignored;
    const frame_status status = refuse(p);
    if (status) return status;
    p->base = p->datum - (p->first == FRAME_FIRST_MARK_FULL ? 0 : p->thickness / 2);
    p->from = p->start ? p->thickness : 0;
    const double to = p->length - p->thickness * (p->end ? 2 : 1);
    p->on_centres = count_between(p, p->from, to, &p->nearest);
    p->count = p->on_centres + (p->start != 0) + (p->end != 0);
    /* One that begins just where an end's member does is that member. */
    const int within = count_between(p, 2 * SAME, p->length - p->thickness - 2 * SAME, &ignored);
    p->left_out = within > p->on_centres;
    return FRAME_OK;
}

frame_mark_kind frame_position_kind(const frame_positions *p, int i) {
    if (p->start && i == 0) return FRAME_MARK_START;
    return p->end && i == p->count - 1 ? FRAME_MARK_END : FRAME_MARK_ON_CENTRES;
}

double frame_position(const frame_positions *p, int i) {
    const frame_mark_kind kind = frame_position_kind(p, i);
    if (kind == FRAME_MARK_START) return 0;
    if (kind == FRAME_MARK_END) return p->length - p->thickness;
    return p->base + (double)(p->nearest + i - (p->start != 0)) * p->spacing;
}

double frame_sheet_for(double spacing) {
    const double sheets[] = {48, 96, 1200 / 25.4, 2400 / 25.4};
    for (int i = 0; i < 4; i++) {
        const double spaces = sheets[i] / spacing;
        if (spaces > 0.5 && fabs(spaces - round(spaces)) * spacing < 1e-3) return sheets[i];
    }
    return 48;
}
