/* Room for members that all but meet. Each point of the roof ends its own members (members_nodes.c); where points lie
 * nearer to each other than the members are thick, those of one point still reach into those of another. In plan every
 * member is a convex part: of two that overlap the lower in rank is cut along that side of the higher one which leaves
 * most of it, or the other way round where that costs much less. */
#include <stdlib.h>

#include "base/error.h"
#include "roof/members.h"

static const double touching_in2 = 1e-3; /* less in common is rounding */
static const double dear = 4;            /* how much more the lower in rank may lose than the higher one would */

/* -- parts in plan -- */

void members_find_box(members_part *part) {
    part->low = part->high = part->plan.corners[0];
    for (int i = 1; i < part->plan.count; i++) {
        const v2 p = part->plan.corners[i];
        part->low = (v2){fmin(part->low.x, p.x), fmin(part->low.y, p.y)};
        part->high = (v2){fmax(part->high.x, p.x), fmax(part->high.y, p.y)};
    }
}

static members_part part_of(members *m, int32_t index) {
    const members_run *run = MEMBERS_RUN(m, index);
    members_part part = {.run = index, .end = {members_end_of(m, index, 0), members_end_of(m, index, 1)}};
    for (int i = 0; i < 4; i++) {
        const members_end *end = part.end[i > 1] < 0 ? NULL : MEMBERS_END(m, part.end[i > 1]);
        const double past = end && end->stop_count && !end->notched ? 40 : 0;
        const v2 at = v2_add(run->at[i > 1], v2_times(run->dir, i > 1 ? past : -past));
        part.plan.corners[i] = v2_add(at, v2_times(v2_left(run->dir), i == 1 || i == 2 ? run->half : -run->half));
    }
    part.plan.count = 4;
    for (int which = 0; which < 2; which++) {
        const members_end *end = part.end[which] < 0 ? NULL : MEMBERS_END(m, part.end[which]);
        for (int32_t i = 0; end && !end->notched && i < end->stop_count; i++)
            polygon2_keep(&part.plan, end->stops[i].line);
    }
    if (part.plan.count) members_find_box(&part);
    return part;
}

int members_parts_apart(const members_part *a, const members_part *b) {
    return a->high.x < b->low.x || b->high.x < a->low.x || a->high.y < b->low.y || b->high.y < a->low.y;
}

/* A side of a part, what lies within on its inner side; 0 for one without length. */
static int side_of(const polygon2 *polygon, int i, line2 *side) {
    const v2 p = polygon->corners[i], q = polygon->corners[(i + 1) % polygon->count];
    double twice = 0;
    if (v2_length(v2_less(q, p)) < 1e-9) return 0;
    for (int k = 2; k < polygon->count; k++)
        twice += v2_cross(v2_less(polygon->corners[k - 1], polygon->corners[0]),
                          v2_less(polygon->corners[k], polygon->corners[0]));
    *side = line2_through(p, v2_left(v2_unit(v2_less(q, p))));
    if (twice < 0) *side = line2_turned(*side);
    return 1;
}

double members_common_area(const polygon2 *a, const polygon2 *b) {
    polygon2 common = *a;
    line2 side;
    for (int i = 0; i < b->count && common.count; i++)
        if (side_of(b, i, &side)) polygon2_keep(&common, side);
    return polygon2_area(&common);
}

/* How much of a line within one part runs along a side of the other. */
static double share_along(const polygon2 *cut, const polygon2 *other, line2 line) {
    const v2 way = v2_left(line.n);
    double of[2][2] = {{HUGE_VAL, -HUGE_VAL}, {HUGE_VAL, -HUGE_VAL}};
    const polygon2 *const both[2] = {cut, other};
    for (int k = 0; k < 2; k++)
        for (int i = 0; i < both[k]->count; i++) {
            if (fabs(line2_within(line, both[k]->corners[i])) > 1e-6) continue;
            of[k][0] = fmin(of[k][0], v2_dot(way, both[k]->corners[i]));
            of[k][1] = fmax(of[k][1], v2_dot(way, both[k]->corners[i]));
        }
    const double common = fmin(of[0][1], of[1][1]) - fmax(of[0][0], of[1][0]);
    return of[0][1] - of[0][0] > 1e-6 ? fmax(0, common) / (of[0][1] - of[0][0]) : 0;
}

int members_best_side(const polygon2 *own, v2 dir, const polygon2 *other, members_clearing *found) {
    const double before = polygon2_area(own);
    line2 side;
    found->loss = HUGE_VAL;
    for (int i = 0; i < other->count; i++) {
        polygon2 left = *own;
        if (!side_of(other, i, &side) || fabs(v2_dot(side.n, dir)) < 0.05) continue; /* along it: it would be ripped */
        polygon2_keep(&left, line2_turned(side));
        const double loss = before - polygon2_area(&left);
        if (loss >= found->loss) continue;
        found->loss = loss, found->line = line2_turned(side);
        found->share = share_along(&left, other, side);
    }
    return found->loss < HUGE_VAL;
}

/* -- pairs -- */

static int outranks(const members_run *x, const members_run *y) {
    if ((x->slope == 0) != (y->slope == 0)) return x->slope == 0;
    if (fabs(x->half - y->half) > 1e-9) return x->half > y->half;
    return x->length > y->length;
}

static void cut_part(members *m, members_part *own, const members_part *other, const members_clearing *by) {
    const members_run *run = MEMBERS_RUN(m, own->run);
    const int which = v2_dot(by->line.n, run->dir) < 0;
    members_end *end = own->end[which] < 0 ? NULL : MEMBERS_END(m, own->end[which]);
    if (!end || end->notched || end->stop_count == MEMBERS_STOPS) return;
    const double share = 0.75 * members_share_on(m, run, MEMBERS_RUN(m, other->run), by->line) * by->share;
    end->stops[end->stop_count++] = (members_stop){by->line, "cheek cut", share};
    polygon2_keep(&own->plan, by->line);
    if (own->plan.count) members_find_box(own);
}

static void clear_pair(members *m, members_part *a, members_part *b) {
    if (!a->plan.count || !b->plan.count || members_parts_apart(a, b)) return;
    if (members_common_area(&a->plan, &b->plan) < touching_in2) return;
    if (outranks(MEMBERS_RUN(m, b->run), MEMBERS_RUN(m, a->run))) {
        members_part *const lower = a;
        a = b, b = lower;
    }
    members_clearing of_a = {.loss = HUGE_VAL}, of_b = {.loss = HUGE_VAL};
    members_best_side(&a->plan, MEMBERS_RUN(m, a->run)->dir, &b->plan, &of_a);
    members_best_side(&b->plan, MEMBERS_RUN(m, b->run)->dir, &a->plan, &of_b);
    if (of_b.loss <= dear * of_a.loss) {
        if (of_b.loss < HUGE_VAL) cut_part(m, b, a, &of_b);
    } else {
        cut_part(m, a, b, &of_a);
    }
}

static int by_low(const void *a, const void *b) {
    const members_part *x = a, *y = b;
    if (x->low.x != y->low.x) return x->low.x < y->low.x ? -1 : 1;
    return x->run - y->run;
}

frame_status members_clear_runs(members *m) {
    for (int32_t i = 0; i < (int32_t)m->runs.count; i++) {
        if (MEMBERS_RUN(m, i)->gone) continue;
        const members_part part = part_of(m, i);
        if (part.plan.count && !frame_array_push(&m->parts, &part)) return FRAME_NO_MEMORY;
    }
    if (m->parts.count) qsort(m->parts.items, m->parts.count, sizeof(members_part), by_low);
    for (size_t i = 0; i < m->parts.count; i++)
        for (size_t k = i + 1; k < m->parts.count; k++) {
            members_part *a = MEMBERS_PART(m, i), *b = MEMBERS_PART(m, k);
            if (b->low.x > a->high.x + 1e-6) break;
            clear_pair(m, a, b);
        }
    return FRAME_OK;
}
