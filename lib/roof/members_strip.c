/* A rafter in plan. It is a strip; each side it reaches takes away what lies beyond the face of the member there. At a
 * corner of the face that points inward (the meeting of two valleys) it keeps what lies within either side: a notch.
 * What other members reach of it is theirs. */
#include "roof/members_rafter.h"

/* Takes away what lies beyond a line, if that is anything. 0 when nothing is left, or no room for more cuts. */
static int cut_by(members_rafter *r, line2 line, int32_t side) {
    polygon2 left = r->strip;
    const double before = polygon2_area(&left);
    polygon2_keep(&left, line);
    if (polygon2_area(&left) > before - 1e-9) return 1;
    if (polygon2_area(&left) < 1e-6 || r->cut_count == 8) return 0;
    if (fabs(v2_dot(line.n, r->face->up)) < 1e-3) return 0; /* along the rafter: there is no room for it */
    r->strip = left;
    r->cuts[r->cut_count++] = (struct members_rafter_cut){line, side, 0, 1};
    return 1;
}

static double place_of(const members_rafter *r, v2 p) {
    return v2_dot(r->face->along, p) - r->place;
}

/* Whether the face's corner between two sides points inward. */
static int is_reflex(const members_side *a, const members_side *b) {
    return v2_cross(a->line.n, b->line.n) < -1e-9;
}

static int32_t neighbour(const members *m, int32_t side, int forward) {
    return forward ? MEMBERS_SIDE(m, side)->next : MEMBERS_SIDE(m, side)->prev;
}

/* Whether the strip reaches the corner of the face between a side and the next one. */
static int reaches(const members_rafter *r, int32_t from, int forward, int32_t *next) {
    *next = neighbour(r->m, from, forward);
    if (*next < 0) return 0;
    const members_side *a = MEMBERS_SIDE(r->m, from), *b = MEMBERS_SIDE(r->m, *next);
    return fabs(place_of(r, forward ? a->q : a->p)) <= r->half + 2 * (a->off + b->off);
}

static int is_reflex_beside(const members_rafter *r, int32_t from, int32_t next, int forward) {
    const members_side *a = MEMBERS_SIDE(r->m, from), *b = MEMBERS_SIDE(r->m, next);
    return forward ? is_reflex(a, b) : is_reflex(b, a);
}

/* A side whose end is a corner that points inward cuts it only together with the other one there. */
static int cut_end(members_rafter *r, int32_t side) {
    int32_t next;
    for (int forward = 0; forward < 2; forward++) {
        if (!reaches(r, side, forward, &next) || !is_reflex_beside(r, side, next, forward)) continue;
        if (r->notch_count == 4) return 0;
        r->notches[r->notch_count++] = (struct members_rafter_notch){
            {line2_turned(members_line_of(r->m, side)), line2_turned(members_line_of(r->m, next))}, side, 2};
        return 1;
    }
    return cut_by(r, members_line_of(r->m, side), side);
}

/* The sides beside the one it ends at, as far as the strip reaches. */
static int cut_beside(members_rafter *r, int32_t from, int forward) {
    int32_t next;
    for (int step = 0; step < 4 && reaches(r, from, forward, &next); step++, from = next) {
        if (is_reflex_beside(r, from, next, forward)) return 1;
        if (!cut_by(r, members_line_of(r->m, next), next)) return 0;
    }
    return 1;
}

static int cut_ends(members_rafter *r, int32_t lower, int32_t upper) {
    return cut_end(r, lower) && cut_end(r, upper) && cut_beside(r, lower, 0) && cut_beside(r, lower, 1) &&
           cut_beside(r, upper, 0) && cut_beside(r, upper, 1);
}

/* -- the ends of ridges that run on past their points -- */

static int crosses(const polygon2 *strip, const line2 *lines, int count, line2 within) {
    polygon2 rest = *strip;
    for (int i = 0; i < count; i++) polygon2_keep(&rest, lines[i]);
    polygon2_keep(&rest, within);
    return polygon2_area(&rest) > 1e-6;
}

/* What stands proud of the head does not bear on it. */
static int end_at_head(members_rafter *r, const members_head *head, line2 end) {
    const int before = r->cut_count;
    v2 at;
    if (!cut_by(r, end, -1)) return 0;
    if (r->cut_count == before || !line2_meet(end, (line2){r->face->along, r->place}, &at)) return 1;
    const double plumb = r->m->sections[MEMBERS_RAFTERS].depth * sqrt(1 + r->face->slope * r->face->slope);
    r->cuts[before].part = 1 - fmin(1, fmax(0, members_plane(r->face, at) - head->top) / plumb);
    return 1;
}

static int avoid_head(members_rafter *r, const members_head *head) {
    const line2 end = line2_moved(line2_through(head->at, head->away), -head->past); /* within: in the head */
    const line2 left = line2_moved(line2_through(head->at, v2_left(head->away)), -head->half);
    const line2 right = line2_moved(line2_through(head->at, v2_times(v2_left(head->away), -1)), -head->half);
    const line2 ahead = line2_moved(line2_through(head->at, v2_times(head->away, -1)), -head->half);
    const line2 round[3] = {left, right, ahead}; /* behind its point lies the ridge itself */
    if (!crosses(&r->strip, round, 3, end)) return 1;
    struct members_rafter_notch notch = {{end}, -1, 1};
    if (crosses(&r->strip, &end, 1, line2_turned(left))) notch.lines[notch.count++] = left;
    if (crosses(&r->strip, &end, 1, line2_turned(right))) notch.lines[notch.count++] = right;
    if (notch.count == 1) return end_at_head(r, head, line2_turned(end));
    if (r->notch_count == 4) return 0;
    r->notches[r->notch_count++] = notch;
    return 1;
}

static int avoid_heads(members_rafter *r) {
    for (size_t i = 0; i < r->m->heads.count; i++) {
        const members_head *head = &FRAME_ITEM(members_head, r->m->heads, i);
        if (fabs(place_of(r, head->at)) > r->half + head->past + head->half) continue;
        if (!avoid_head(r, head)) return 0;
    }
    return 1;
}

/* -- members that reach into it from beside -- */

static int avoid_run(members_rafter *r, const members_part *own, const members_part *part) {
    members_clearing clearing;
    if (members_parts_apart(own, part) || members_common_area(&r->strip, &part->plan) < 1e-3) return 1;
    if (!members_best_side(&r->strip, r->face->up, &part->plan, &clearing)) return 0;
    if (!cut_by(r, clearing.line, -1)) return 0;
    r->cuts[r->cut_count - 1].beside = 1;
    r->cuts[r->cut_count - 1].part = clearing.share;
    return 1;
}

static int avoid_runs(members_rafter *r) {
    members_part own = {.plan = r->strip};
    members_find_box(&own);
    for (size_t i = 0; i < r->m->parts.count; i++)
        if (!avoid_run(r, &own, MEMBERS_PART(r->m, i))) return 0;
    return 1;
}

int members_cut_strip(members_rafter *r, int32_t lower, int32_t upper) {
    return cut_ends(r, lower, upper) && avoid_heads(r) && avoid_runs(r);
}
