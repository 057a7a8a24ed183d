/* Blocks between what stands upright: rows where sheets' level edges meet, ladders behind partitions, and those of a
 * three-stud corner. */
#include <math.h>

#include "base/error.h"
#include "layout/wall.h"
#include "layout_facts.h"

#define LEAST 1.0 /* inches: no block fills less */

/* Where blocks are wanted: at a height, over a stretch of the wall. */
typedef struct row {
    double z, from, to;
    int upright; /* their wide face in the wall's inner face, as in a ladder, instead of across the wall */
} row;

static double half_of(const frame_wall_plan *plan, const row *r) {
    return (r->upright ? plan->d : plan->t) / 2;
}

/* Whether an upright is there at the height of a row. */
static int stands_at(const frame_wall_plan *plan, const frame_wall_upright *upright, const row *r) {
    const double middle = upright->from + upright->width / 2, half = half_of(plan, r);
    const double low = upright->low == FRAME_NOT_GIVEN ? frame_wall_stud_bottom(plan, middle, 0) : upright->low;
    const double high = upright->high == FRAME_NOT_GIVEN ? frame_wall_stud_top(plan, middle) : upright->high;
    return r->z + half > low + 1e-9 && r->z - half < high - 1e-9;
}

static int meet(double low, double high, double other_low, double other_high) {
    return low < other_high - 1e-9 && other_low < high - 1e-9;
}

/* Whether a bay is an opening's own at this height: its void, its header, sill or head plate. */
static int in_hole(const frame_wall_plan *plan, const row *r, double from, double to) {
    const double half = half_of(plan, r), low = r->z - half, high = r->z + half;
    for (size_t i = 0; i < plan->holes.count; i++) {
        const frame_wall_hole *hole = FRAME_WALL_HOLE(plan, i);
        const double beside = hole->jacks * plan->t, sill = hole->bottom + hole->low;
        if (!meet(from, to, hole->from - beside, hole->to + beside)) continue;
        if (meet(low, high, hole->header_low, hole->header_top)) return 1;
        if (!meet(from, to, hole->from, hole->to)) continue;
        const double under = hole->door ? hole->bottom : sill - hole->sills * plan->t;
        const double head = hole->bottom + hole->head;
        if (meet(low, high, under, hole->header_low > head + 1e-9 ? head + plan->t : head)) return 1;
    }
    return 0;
}

static int between_plates(const frame_wall_plan *plan, const row *r, double from, double to) {
    const double half = half_of(plan, r);
    const double low = fmax(frame_wall_stud_bottom(plan, from, 1), frame_wall_stud_bottom(plan, to, -1));
    const double high = fmin(frame_wall_stud_top(plan, from), frame_wall_stud_top(plan, to));
    return r->z - half >= low - 1e-9 && r->z + half <= high + 1e-9;
}

/* Whether a block of another row or ladder is there already. */
static int taken(const frame_wall_plan *plan, const row *r, double from, double to) {
    const double half = half_of(plan, r);
    for (size_t i = plan->set->pieces.count; i-- > 0;) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(plan->set, i);
        if (piece->kind != FRAME_PIECE_BLOCK) return 0; /* they come last */
        const double tall = piece->crown.z > 0.5 ? plan->d / 2 : plan->t / 2;
        const double low = fmin(piece->start.z, piece->end.z) - (piece->start.x == piece->end.x ? 0 : tall);
        const double high = fmax(piece->start.z, piece->end.z) + (piece->start.x == piece->end.x ? 0 : tall);
        const double wide = piece->start.x == piece->end.x ? plan->t / 2 : 0;
        if (meet(from, to, piece->start.x - wide, piece->end.x + wide) && meet(r->z - half, r->z + half, low, high))
            return 1;
    }
    return 0;
}

static void add_block(frame_wall_plan *plan, const row *r, double from, double to, int *number) {
    const double y = r->upright ? plan->d - plan->t / 2 : plan->d / 2;
    if (to - from < LEAST || in_hole(plan, r, from, to) || !between_plates(plan, r, from, to)) return;
    if (taken(plan, r, from, to)) return;
    frame_layout_add(plan->set, FRAME_PIECE_BLOCK, "block", ++*number, &plan->stud, (vec3){from, y, r->z},
                     (vec3){to, y, r->z}, r->upright ? (vec3){0, 0, 1} : (vec3){0, 1, 0});
}

static void add_row(frame_wall_plan *plan, const row *r, int *number) {
    double far = FRAME_NOT_GIVEN;
    for (size_t i = 0; i < plan->uprights.count; i++) {
        const frame_wall_upright *upright = FRAME_WALL_UPRIGHT(plan, i);
        if (!stands_at(plan, upright, r)) continue;
        if (far != FRAME_NOT_GIVEN && meet(far, upright->from, r->from, r->to))
            add_block(plan, r, far, upright->from, number);
        far = fmax(far, upright->from + upright->width);
    }
}

/* Every 24 in from the bottom: IRC and gypsum makers say nothing of it; common practice. */
static void add_ladder(frame_wall_plan *plan, double from, double to, int *number) {
    const double low = frame_wall_stud_bottom(plan, from, 1), high = frame_wall_stud_top(plan, from);
    for (int i = 1; low + i * 24.0 < high - 6; i++) {
        const row r = {low + i * 24.0, from, to, 1};
        add_row(plan, &r, number);
    }
}

/* Three blocks between the studs of a corner: upright where they are a stud's thickness apart, else level. */
static void add_corner(frame_wall_plan *plan, double from, double to, int *number) {
    const double low = frame_wall_stud_bottom(plan, from, 1), high = frame_wall_stud_top(plan, to), x = (from + to) / 2;
    const double least = fmin(high, frame_wall_stud_top(plan, from));
    if (to - from < LEAST) return;
    for (int i = 1; i <= 3; i++) {
        const double z = low + i * (least - low) / 4;
        const row r = {z, from, to, 0};
        if (fabs(to - from - plan->t) > 1e-6)
            add_block(plan, &r, from, to, number);
        else if (least - low > 66)
            frame_layout_add(plan->set, FRAME_PIECE_BLOCK, "block", ++*number, &plan->stud,
                             (vec3){x, plan->d / 2, z - 8}, (vec3){x, plan->d / 2, z + 8}, (vec3){0, 1, 0});
        else
            add_block(plan, &r, from, to, number);
    }
}

frame_status frame_wall_add_blocks(frame_wall_plan *plan) {
    const frame_wall_in *in = plan->in;
    const double t = plan->t, length = in->length_in;
    int number = 0;
    if (in->start_end == FRAME_WALL_END_CORNER_THREE)
        add_corner(plan, t, fmax(2 * t, plan->start_other + 1 - t), &number);
    if (in->end_end == FRAME_WALL_END_CORNER_THREE)
        add_corner(plan, length - fmax(2 * t, plan->end_other + 1 - t), length - t, &number);
    for (size_t i = 0; i < in->crossing_count; i++) {
        frame_wall_crossing crossing;
        frame_wall_crossing_item(in->crossings, i, &crossing);
        const double width = crossing.width_in == FRAME_NOT_GIVEN ? plan->d : crossing.width_in;
        if (crossing.backing == FRAME_WALL_BACKING_LADDER)
            add_ladder(plan, crossing.at_in, crossing.at_in + width, &number);
    }
    for (size_t i = 0; i < in->blocking_count; i++) {
        for (size_t k = 0; k < i; k++)
            if (fabs(in->blocking_in[i] - in->blocking_in[k]) < t - 1e-9)
                return frame_fail_number(FRAME_IMPOSSIBLE, "blocking_in", in->blocking_in[i],
                                         "rows at least a thickness apart");
        const row r = {in->blocking_in[i], 0, length, 0};
        add_row(plan, &r, &number);
    }
    return FRAME_OK;
}
