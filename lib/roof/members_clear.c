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

static int meets_another_ridge(const members *m, const members_part *part, const members_part *but) {
    for (size_t i = 0; i < m->parts.count; i++) {
        const members_part *other = MEMBERS_PART(m, i);
        if (other == but || other->run == part->run || MEMBERS_RUN(m, other->run)->slope != 0) continue;
        if (!other->plan.count || members_parts_apart(part, other)) continue;
        if (members_common_area(&part->plan, &other->plan) > touching_in2) return 1;
    }
    return 0;
}

/* Moves the end of a ridge farther past its point. */
static void move_end(members_end *end, v2 at, double past) {
    const line2 before = line2_moved(line2_through(at, end->away), -end->past);
    for (int32_t k = 0; k < end->stop_count; k++)
        if (v2_dot(end->stops[k].line.n, before.n) > 1 - 1e-12 && fabs(end->stops[k].line.at - before.at) < 1e-9)
            end->stops[k].line.at -= past - end->past;
    end->past = past;
}

/* A ridge that another one is cut against beside its end runs on until that one bears whole, and what was cut against
 * that one's side bears on its end; unless a third one is in the way. */
static frame_status reach_over(members *m, members_part *higher, const members_part *lower, line2 side) {
    const members_run *run = MEMBERS_RUN(m, higher->run), *other = MEMBERS_RUN(m, lower->run);
    if (run->slope != 0 || other->slope != 0) return FRAME_OK;
    for (int i = 0; i < 4; i++) {
        const int which = i & 1;
        members_end *end = higher->end[which] < 0 ? NULL : MEMBERS_END(m, higher->end[which]);
        const line2 own = line2_through(other->at[0], v2_left(other->dir));
        v2 corner;
        if (!end || end->closed || !line2_meet(side, line2_moved(own, i & 2 ? other->half : -other->half), &corner))
            continue;
        const double was = end->past, past = -v2_dot(end->away, v2_less(corner, run->at[which]));
        if (past <= was + 1e-9 || past > was + 4 * other->half) continue;
        move_end(end, run->at[which], past);
        const members_part again = part_of(m, higher->run);
        if (meets_another_ridge(m, &again, lower)) {
            move_end(end, run->at[which], was);
            continue;
        }
        higher->plan = again.plan, higher->low = again.low, higher->high = again.high;
        const members_head head = {run->at[which], end->away, past, run->half, run->z - run->drop};
        if (!frame_array_push(&m->heads, &head)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status clear_pair(members *m, members_part *higher, members_part *lower) {
    if (!higher->plan.count || !lower->plan.count || members_parts_apart(higher, lower)) return FRAME_OK;
    if (members_common_area(&higher->plan, &lower->plan) < touching_in2) return FRAME_OK;
    members_clearing of_higher = {.loss = HUGE_VAL}, of_lower = {.loss = HUGE_VAL};
    members_best_side(&higher->plan, MEMBERS_RUN(m, higher->run)->dir, &lower->plan, &of_higher);
    members_best_side(&lower->plan, MEMBERS_RUN(m, lower->run)->dir, &higher->plan, &of_lower);
    if (of_lower.loss > dear * of_higher.loss) {
        cut_part(m, higher, lower, &of_higher);
        return FRAME_OK;
    }
    if (of_lower.loss == HUGE_VAL) return FRAME_OK;
    cut_part(m, lower, higher, &of_lower);
    return reach_over(m, higher, lower, of_lower.line);
}

/* Level ones first, then the thicker, then the longer. */
static int by_rank(const void *a, const void *b) {
    const members_part *x = a, *y = b;
    for (int i = 0; i < 3; i++)
        if (fabs(x->rank[i] - y->rank[i]) > 1e-6) return x->rank[i] > y->rank[i] ? -1 : 1;
    return x->run - y->run;
}

/* From the highest rank down, so that each is cut against what stays of those above it. */
frame_status members_clear_runs(members *m) {
    for (int32_t i = 0; i < (int32_t)m->runs.count; i++) {
        const members_run *run = MEMBERS_RUN(m, i);
        if (run->gone) continue;
        members_part part = part_of(m, i);
        part.rank[0] = run->slope == 0, part.rank[1] = run->half, part.rank[2] = run->length;
        if (part.plan.count && !frame_array_push(&m->parts, &part)) return FRAME_NO_MEMORY;
    }
    if (m->parts.count) qsort(m->parts.items, m->parts.count, sizeof(members_part), by_rank);
    for (size_t i = 1; i < m->parts.count; i++)
        for (size_t k = 0; k < i; k++) {
            const frame_status status = clear_pair(m, MEMBERS_PART(m, k), MEMBERS_PART(m, i));
            if (status) return status;
        }
    return FRAME_OK;
}
