/* Where a passage lies among the pieces, and where it could lie. */
#include <math.h>
#include <stdlib.h>

#include "layout/passage.h"
#include "timber/meet.h"

typedef struct bounds {
    double low[3], high[3];
} bounds;

/* The box round a piece; the axis of one that is cut reaches an inch or so past its cuts. */
static bounds bounds_of(const frame_layout_piece *piece) {
    const vec3 axis = vec_less(piece->end, piece->start);
    const vec3 along = vec_times(axis, 1 / vec_length(axis)), across = vec_cross(piece->crown, along);
    const vec3 left = vec_times(across, piece->thickness / 2 / vec_length(across));
    const vec3 up = vec_times(vec_cross(along, left), piece->depth / piece->thickness);
    const double start[3] = {piece->start.x, piece->start.y, piece->start.z};
    const double end[3] = {piece->end.x, piece->end.y, piece->end.z};
    const double reach[3] = {fabs(left.x) + fabs(up.x), fabs(left.y) + fabs(up.y), fabs(left.z) + fabs(up.z)};
    bounds b;
    for (int a = 0; a < 3; a++) {
        b.low[a] = fmin(start[a], end[a]) - reach[a];
        b.high[a] = fmax(start[a], end[a]) + reach[a];
    }
    return b;
}

int frame_passage_near(const frame_layout_piece *piece, const frame_passage_box *box) {
    const bounds b = bounds_of(piece);
    for (int a = 0; a < 3; a++) {
        if (a == box->way) continue;
        if (b.low[a] > box->at[a] + box->half[a] - 1e-9 || b.high[a] < box->at[a] - box->half[a] + 1e-9) return 0;
    }
    return 1;
}

static bounds bounds_of_all(const frame_layout_set *set) {
    bounds all = {{INFINITY, INFINITY, INFINITY}, {-INFINITY, -INFINITY, -INFINITY}};
    for (size_t i = 0; i < set->pieces.count; i++) {
        const bounds b = bounds_of(FRAME_LAYOUT_PIECE(set, i));
        for (int a = 0; a < 3; a++) {
            all.low[a] = fmin(all.low[a], b.low[a]);
            all.high[a] = fmax(all.high[a], b.high[a]);
        }
    }
    return all;
}

/* The round passage is taken as the square round it: what clears that is clear. */
frame_status frame_passage_pipe(const frame_layout_set *set, const frame_passage_box *box, frame_stick **stick) {
    const bounds all = bounds_of_all(set);
    frame_stick_in in;
    double start[3], end[3];
    for (int a = 0; a < 3; a++) {
        start[a] = a == box->way ? all.low[a] - 1 : box->at[a];
        end[a] = a == box->way ? all.high[a] + 1 : box->at[a];
    }
    frame_stick_in_init(&in);
    const int upright = box->way == 2 ? 1 : 2, level = box->way == 0 ? 1 : 0; /* the depth lies along upright */
    in.thickness_in = 2 * box->half[level];
    in.depth_in = 2 * box->half[upright];
    in.start_x_in = start[0];
    in.start_y_in = start[1];
    in.start_z_in = start[2];
    in.end_x_in = end[0];
    in.end_y_in = end[1];
    in.end_z_in = end[2];
    in.crown_x = 0;
    in.crown_y = upright == 1;
    in.crown_z = upright == 2;
    return frame_stick_new(&in, stick);
}

frame_status frame_passage_share(const frame_layout_set *set, size_t index, const frame_stick *pipe, double *overlap) {
    frame_stick *stick = NULL;
    frame_meeting found = {0, 0, NULL, NULL};
    frame_status status = frame_layout_stick(set, index, &stick);
    if (!status) status = frame_stick_meet(stick, pipe, &found);
    frame_stick_free(stick);
    if (!status) *overlap = found.overlap;
    return status;
}

/* Places a middle may not lie between, along an axis. */
typedef struct span {
    double low, high;
} span;

static int by_low(const void *a, const void *b) {
    const span *first = a, *second = b;
    return (first->low > second->low) - (first->low < second->low);
}

static void consider(double at, double wanted, double low, double high, double *best) {
    if (at < low - 1e-9 || at > high + 1e-9) return;
    if (*best == FRAME_NOT_GIVEN || fabs(at - wanted) < fabs(*best - wanted)) *best = at;
}

frame_status frame_passage_clear(const frame_layout_set *set, const frame_passage_box *box, int axis, double *clear) {
    const bounds all = bounds_of_all(set);
    const int other = 3 - axis - box->way;
    const double half = box->half[axis], wanted = box->at[axis];
    const double low = all.low[axis] + half, high = all.high[axis] - half;
    frame_array spans = {.item_size = sizeof(span)};
    double best = FRAME_NOT_GIVEN, from = low;
    for (size_t i = 0; i < set->pieces.count; i++) {
        const bounds b = bounds_of(FRAME_LAYOUT_PIECE(set, i));
        const span s = {b.low[axis] - half, b.high[axis] + half};
        if (b.low[other] > box->at[other] + box->half[other] - 1e-9 ||
            b.high[other] < box->at[other] - box->half[other] + 1e-9)
            continue;
        if (frame_array_push(&spans, &s)) continue;
        frame_array_give(&spans);
        return FRAME_NO_MEMORY; /* a place clear of some of the pieces is none */
    }
    if (spans.count) qsort(spans.items, spans.count, sizeof(span), by_low);
    for (size_t i = 0; i <= spans.count; i++) {
        const double to = i < spans.count ? FRAME_ITEM(span, spans, i).low : high;
        if (to >= from - 1e-9) {
            consider(fmin(fmax(wanted, from), fmax(to, from)), wanted, low, high, &best);
        }
        if (i < spans.count) from = fmax(from, FRAME_ITEM(span, spans, i).high);
    }
    frame_array_give(&spans);
    *clear = best;
    return FRAME_OK;
}
