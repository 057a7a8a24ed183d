/* Ledgers: where the upper edge of a roof is level against a wall. */
#include "roof/members_board.h"

static line2 ledger_end(const members *m, const members_side *side, int at_start) {
    const v2 way = v2_unit(v2_less(side->q, side->p)), keep = at_start ? way : v2_times(way, -1);
    const members_side *beside = MEMBERS_SIDE(m, at_start ? side->prev : side->next);
    const v2 at = at_start ? side->p : side->q;
    if (beside->kind == FRAME_LINE_WALL && beside->off > 0)
        return members_mitre(side->line, beside->line, -side->off, -beside->off, at, keep);
    if (beside->run >= 0 || beside->kind == FRAME_LINE_EAVE) return line2_through(at, keep);
    return v2_dot(beside->line.n, keep) > 0 ? beside->line : line2_turned(beside->line);
}

/* Whether nothing stands in the way of a ledger that runs on past its end. */
static int is_free_beyond(const members *m, const members_side *side, int32_t point) {
    if (members_wall_goes_on(m, side, point)) return 1;
    for (size_t i = 0; i < m->sides.count; i++) {
        const members_side *other = MEMBERS_SIDE(m, i);
        if (other == side || other->run >= 0 || (other->from != point && other->to != point)) continue;
        const v2 way = v2_unit(v2_less(other->q, other->p));
        if (v2_dot(other->from == point ? way : v2_times(way, -1), side->line.n) < -0.1) return 1; /* it turns away */
    }
    return 0;
}

/* Where the wall goes on, or turns away, past a hip or valley that comes to the ledger's end, the ledger runs on until
 * that one bears whole, and what comes along the wall beyond bears on the ledger's end: how far. */
static double past_run(const members *m, const members_side *side, int at_start) {
    const members_side *beside = MEMBERS_SIDE(m, at_start ? side->prev : side->next);
    const int32_t point = at_start ? side->from : side->to;
    const v2 at = at_start ? side->p : side->q, way = v2_unit(v2_less(side->q, side->p));
    const v2 out = at_start ? v2_times(way, -1) : way;
    double past = 0;
    if (beside->run < 0 || !is_free_beyond(m, side, point)) return 0;
    const double half = MEMBERS_RUN(m, beside->run)->half;
    for (int k = 0; k < 4; k++) {
        v2 corner;
        if (line2_meet(line2_moved(side->line, k & 1 ? side->off : 0), line2_moved(beside->line, k & 2 ? half : -half),
                       &corner))
            past = fmax(past, v2_dot(out, v2_less(corner, at)));
    }
    return past;
}

/* Ends it; 0 where it does not run on. */
static double run_on(const members *m, const members_side *side, int at_start, line2 *end) {
    const double past = past_run(m, side, at_start);
    const v2 at = at_start ? side->p : side->q, way = v2_unit(v2_less(side->q, side->p));
    *end = past > 1e-9 ? line2_moved(line2_through(at, at_start ? way : v2_times(way, -1)), -past)
                       : ledger_end(m, side, at_start);
    return past;
}

/* What else comes there leaves the ledger's end room. */
static frame_status add_head(members *m, const members_side *side, int at_start, double past, double top) {
    const v2 at = at_start ? side->p : side->q, way = v2_unit(v2_less(side->q, side->p));
    const members_head head = {v2_add(at, v2_times(side->line.n, side->off / 2)), at_start ? way : v2_times(way, -1),
                               past, side->off / 2, top};
    return past <= 1e-9 || frame_array_push(&m->heads, &head) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* It leaves other members room, and others leave it room. */
static frame_status clear_ledger(members *m, members_board *b, double past[2]) {
    const v2 way = v2_unit(v2_less(b->q, b->p)), in = v2_times(b->in, 2 * b->from_in);
    members_part part = {.run = -1, .plan = {.count = 4}};
    const v2 from = v2_less(b->p, v2_times(way, 40)), to = v2_add(b->q, v2_times(way, 40));
    const v2 corners[4] = {from, to, v2_add(to, in), v2_add(from, in)};
    for (int i = 0; i < 4; i++) part.plan.corners[i] = corners[i];
    for (int end = 0; end < 2; end++) polygon2_keep(&part.plan, b->ends[end]);
    if (!part.plan.count) return FRAME_OK;
    members_find_box(&part);
    for (size_t i = 0; i < m->parts.count; i++) {
        const members_part *other = MEMBERS_PART(m, i);
        members_clearing found;
        if (members_parts_apart(&part, other) || members_common_area(&part.plan, &other->plan) < 1e-3) continue;
        if (!members_best_side(&part.plan, way, &other->plan, &found)) continue;
        polygon2_keep(&part.plan, found.line);
        b->ends[v2_dot(found.line.n, way) < 0] = found.line;
        past[v2_dot(found.line.n, way) < 0] = 0;
    }
    return frame_array_push(&m->parts, &part) ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status members_add_ledgers(members *m) {
    for (size_t i = 0; i < m->sides.count; i++) {
        const members_side *side = MEMBERS_SIDE(m, i);
        if (side->kind != FRAME_LINE_WALL || !(side->off > 0)) continue;
        const members_face *face = MEMBERS_FACE(m, m->face_of[side->face]);
        members_board b = {
            .kind = FRAME_MEMBER_LEDGER, .section = MEMBERS_RIDGES, .edge = side->edge, .face = side->face};
        b.p = side->p, b.q = side->q, b.in = side->line.n, b.from_in = side->off / 2;
        b.top = members_plane(face, v2_add(side->p, v2_times(side->line.n, side->off)));
        b.label = "ledger end";
        double past[2] = {run_on(m, side, 1, &b.ends[0]), run_on(m, side, 0, &b.ends[1])};
        frame_status status = clear_ledger(m, &b, past);
        for (int end = 0; end < 2 && !status; end++) status = add_head(m, side, !end, past[end], b.top);
        if (!status) status = members_add_board(m, &b);
        if (status) return status;
    }
    return FRAME_OK;
}
