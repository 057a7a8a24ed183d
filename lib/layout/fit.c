/* Whether any two pieces of an answer share wood: boxes round them first, then the kernel for what may meet. */
#include <stdlib.h>

#include "layout/piece.h"
#include "layout_facts.h"
#include "timber/meet.h"

/* Less than this is the rounding of two faces that touch. */
#define SHARED_LEAST 1e-6

typedef struct bounds {
    double low[3], high[3];
    size_t index;
} bounds;

static void widen(bounds *box, vec3 corner) {
    const double at[3] = {corner.x, corner.y, corner.z};
    for (int a = 0; a < 3; a++) {
        if (at[a] < box->low[a]) box->low[a] = at[a];
        if (at[a] > box->high[a]) box->high[a] = at[a];
    }
}

/* The box round a piece before it is cut. */
static bounds bounds_of(const frame_layout_piece *piece, size_t index) {
    bounds box = {{1e300, 1e300, 1e300}, {-1e300, -1e300, -1e300}, index};
    const vec3 axis = vec_less(piece->end, piece->start);
    const vec3 along = vec_times(axis, 1 / vec_length(axis));
    const vec3 across = vec_cross(piece->crown, along);
    const vec3 left = vec_times(across, piece->thickness / 2 / vec_length(across));
    const vec3 up = vec_times(vec_cross(along, left), piece->depth / piece->thickness);
    for (int corner = 0; corner < 8; corner++) {
        vec3 at = corner & 1 ? piece->start : piece->end;
        at = corner & 2 ? vec_add(at, left) : vec_less(at, left);
        widen(&box, corner & 4 ? vec_add(at, up) : vec_less(at, up));
    }
    return box;
}

static int by_low_x(const void *a, const void *b) {
    const bounds *first = a, *second = b;
    if (first->low[0] != second->low[0]) return first->low[0] < second->low[0] ? -1 : 1;
    return first->index < second->index ? -1 : 1;
}

static int apart(const bounds *a, const bounds *b) {
    for (int axis = 0; axis < 3; axis++)
        if (a->high[axis] < b->low[axis] + 1e-9 || b->high[axis] < a->low[axis] + 1e-9) return 1;
    return 0;
}

frame_status frame_layout_shared(const frame_layout_set *set, size_t index, const frame_layout_set *other,
                                 size_t other_index, double *shared) {
    const bounds here = bounds_of(FRAME_LAYOUT_PIECE(set, index), 0);
    const bounds there = bounds_of(FRAME_LAYOUT_PIECE(other, other_index), 0);
    frame_stick *first = NULL, *second = NULL;
    frame_meeting found = {0, 0, NULL, NULL};
    *shared = 0;
    if (apart(&here, &there)) return FRAME_OK;
    frame_status status = frame_layout_stick(set, index, &first);
    if (!status) status = frame_layout_stick(other, other_index, &second);
    if (!status) status = frame_stick_meet(first, second, &found);
    frame_stick_free(first);
    frame_stick_free(second);
    if (!status) *shared = found.overlap;
    return status;
}

typedef struct trial {
    const frame_layout_set *set;
    bounds *boxes;
    frame_stick **sticks;
    size_t count;
} trial;

static frame_status make_stick(const trial *all, size_t index) {
    return all->sticks[index] ? FRAME_OK : frame_layout_stick(all->set, index, &all->sticks[index]);
}

static frame_status try_pair(const trial *all, size_t first, size_t second, frame_fit_out *fit) {
    frame_meeting found = {0, 0, NULL, NULL};
    frame_status status = make_stick(all, first);
    if (!status) status = make_stick(all, second);
    if (!status) status = frame_stick_meet(all->sticks[first], all->sticks[second], &found);
    if (status) return status;
    fit->pairs++;
    if (found.overlap < SHARED_LEAST) return FRAME_OK;
    fit->overlaps++;
    if (found.overlap <= fit->overlap_in3) return FRAME_OK;
    fit->overlap_in3 = found.overlap;
    fit->first = (int32_t)(first < second ? first : second);
    fit->second = (int32_t)(first < second ? second : first);
    return FRAME_OK;
}

/* Along x, each box against those that begin before it ends. */
static frame_status sweep(const trial *all, frame_fit_out *fit) {
    for (size_t i = 0; i < all->count; i++) all->boxes[i] = bounds_of(FRAME_LAYOUT_PIECE(all->set, i), i);
    qsort(all->boxes, all->count, sizeof *all->boxes, by_low_x);
    for (size_t i = 0; i < all->count; i++)
        for (size_t k = i + 1; k < all->count && all->boxes[k].low[0] < all->boxes[i].high[0]; k++) {
            if (apart(&all->boxes[i], &all->boxes[k])) continue;
            const frame_status status = try_pair(all, all->boxes[i].index, all->boxes[k].index, fit);
            if (status) return status;
        }
    return FRAME_OK;
}

frame_status frame_layout_give_fit(const frame_layout_set *set, frame_fit_out *out, size_t out_size) {
    trial all = {set, NULL, NULL, set->pieces.count};
    frame_fit_out fit = frame_fit_out_blank;
    fit.pairs = fit.overlaps = 0;
    fit.first = fit.second = -1;
    fit.overlap_in3 = 0;
    all.boxes = frame_take_zeroed(all.count + 1, sizeof *all.boxes);
    all.sticks = frame_take_zeroed(all.count + 1, sizeof *all.sticks);
    const frame_status status = all.boxes && all.sticks ? sweep(&all, &fit) : FRAME_NO_MEMORY;
    for (size_t i = 0; all.sticks && i < all.count; i++) frame_stick_free(all.sticks[i]);
    frame_give(all.sticks);
    frame_give(all.boxes);
    if (status) return status;
    fit.fits = fit.overlaps == 0;
    frame_struct_give(&frame_fit_out_facts, &fit, out, out_size);
    return FRAME_OK;
}
