/* Laying out the rafters of a face on centres. Places are counted along the face from one point of the plan, so that
 * opposite faces have the same. End rafters stand first, flush with the gable; a rafter of the layout that would share
 * their place is left out. */
#include <stdlib.h>

#include "base/error.h"
#include "roof/members.h"

typedef struct placed {
    double place, reach, low, high; /* along the face, to both sides; from and to, up it */
} placed;

typedef struct layout {
    members *m;
    const members_face *face;
    frame_array crossings, placed;
} layout;

static int by_height(const void *a, const void *b) {
    const members_crossing *x = a, *y = b;
    return (x->up > y->up) - (x->up < y->up);
}

static frame_status cross(layout *l, double place) {
    const members_face *face = l->face;
    l->crossings.count = 0;
    for (int32_t i = face->first; i < face->first + face->count; i++) {
        const members_side *side = MEMBERS_SIDE(l->m, i);
        const double p = v2_dot(face->along, side->p), q = v2_dot(face->along, side->q);
        if ((p <= place) == (q <= place)) continue;
        const v2 at = v2_add(side->p, v2_times(v2_less(side->q, side->p), (place - p) / (q - p)));
        const members_crossing crossing = {v2_dot(face->up, at), i};
        if (!frame_array_push(&l->crossings, &crossing)) return FRAME_NO_MEMORY;
    }
    if (l->crossings.count) qsort(l->crossings.items, l->crossings.count, sizeof(members_crossing), by_height);
    return FRAME_OK;
}

static int is_taken(const layout *l, double place, double low, double high) {
    const double thickness = l->m->sections[MEMBERS_RAFTERS].thickness;
    for (size_t i = 0; i < l->placed.count; i++) {
        const placed *other = &FRAME_ITEM(placed, l->placed, i);
        if (fabs(other->place - place) < other->reach + thickness / 2 - 1e-6 && other->low < high && low < other->high)
            return 1;
    }
    return 0;
}

/* What would stand half against a ridge and half against a ledger beside it moves until it stands against one. */
static double moved_to_one(const layout *l, double place, const members_crossing *upper) {
    const members_side *side = MEMBERS_SIDE(l->m, upper->side);
    const double half = l->m->sections[MEMBERS_RAFTERS].thickness / 2;
    if (fabs(v2_dot(side->line.n, l->face->along)) > 1e-9) return place;
    for (int forward = 0; forward < 2; forward++) {
        const int32_t next = forward ? side->next : side->prev;
        if (next < 0 || v2_dot(MEMBERS_SIDE(l->m, next)->line.n, side->line.n) < 1 - 1e-9) continue;
        const double end = v2_dot(l->face->along, forward ? side->q : side->p);
        if (fabs(MEMBERS_SIDE(l->m, next)->off - side->off) < 1e-9 || fabs(end - place) > half - 1e-9) continue;
        return v2_dot(l->face->along, forward ? side->p : side->q) > end ? end + half : end - half;
    }
    return place;
}

/* The rafters at one place; of one that stands at a gable only what lies beside it. */
static frame_status place_rafters(layout *l, double place, const placed *beside, members_standing_at where) {
    frame_status status = cross(l, place);
    for (size_t i = 0; i + 1 < l->crossings.count && !status; i += 2) {
        const members_crossing *lower = &FRAME_ITEM(members_crossing, l->crossings, i), *upper = lower + 1;
        int added = 0;
        if (beside && (upper->up <= beside->low + 1e-6 || lower->up >= beside->high - 1e-6)) continue;
        if (is_taken(l, place, lower->up, upper->up)) {
            l->m->left_out += !beside;
            continue;
        }
        const double moved = moved_to_one(l, place, upper);
        status = members_add_rafter(l->m, l->face, moved, lower, upper, where, &added);
        l->m->left_out += !status && !added;
        const placed taken = {place, l->m->sections[MEMBERS_RAFTERS].thickness / 2, lower->up, upper->up};
        if (added && beside && !frame_array_push(&l->placed, &taken)) status = FRAME_NO_MEMORY;
    }
    return status;
}

/* Beside each gable, and each wall, that runs straight up the face. */
static frame_status place_end_rafters(layout *l) {
    const members_face *face = l->face;
    const double half = l->m->sections[MEMBERS_RAFTERS].thickness / 2;
    for (int32_t i = face->first; i < face->first + face->count; i++) {
        const members_side *side = MEMBERS_SIDE(l->m, i);
        const double inward = v2_dot(face->along, side->line.n);
        if (side->run >= 0 || side->kind == FRAME_LINE_EAVE || fabs(inward) < 1 - 1e-9) continue;
        const double p = v2_dot(face->up, side->p), q = v2_dot(face->up, side->q);
        const placed beside = {0, 0, fmin(p, q), fmax(p, q)};
        const double edge = v2_dot(face->along, side->p), in = inward > 0 ? 1 : -1;
        const double rake = side->kind == FRAME_LINE_RAKE ? l->m->in->rake_overhang_in : 0;
        frame_status status = place_rafters(l, edge + in * (rake + half), &beside, MEMBERS_AT_GABLE);
        if (!status && rake > 0) status = place_rafters(l, edge + in * half, &beside, MEMBERS_FLYING);
        if (!status && rake > 0) status = members_add_lookouts(l->m, face, side);
        /* Nothing of the layout stands beyond the wall. */
        const placed beyond = {edge + in * rake / 2, rake / 2, beside.low, beside.high};
        if (!status && rake > 0 && !frame_array_push(&l->placed, &beyond)) status = FRAME_NO_MEMORY;
        if (status) return status;
    }
    return FRAME_OK;
}

static frame_status place_on_centres(layout *l) {
    const members_face *face = l->face;
    const double step = l->m->in->spacing_in, first = v2_dot(face->along, l->m->origin);
    double low = HUGE_VAL, high = -HUGE_VAL;
    for (int32_t i = face->first; i < face->first + face->count; i++) {
        low = fmin(low, v2_dot(face->along, MEMBERS_SIDE(l->m, i)->p));
        high = fmax(high, v2_dot(face->along, MEMBERS_SIDE(l->m, i)->p));
    }
    for (double number = ceil((low - first) / step); first + number * step <= high; number++) {
        const frame_status status = place_rafters(l, first + number * step, NULL, MEMBERS_ON_CENTRES);
        if (status) return status;
    }
    return FRAME_OK;
}

frame_status members_lay_out(members *m) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < m->faces.count && !status; i++) {
        layout l = {.m = m, .face = MEMBERS_FACE(m, i)};
        l.crossings.item_size = sizeof(members_crossing);
        l.placed.item_size = sizeof(placed);
        status = place_end_rafters(&l);
        if (!status) status = place_on_centres(&l);
        frame_array_give(&l.crossings);
        frame_array_give(&l.placed);
    }
    return status;
}
