/* The eaves: how far out the tails are cut, and the pieces along the edge of the roof: plates, sub-fascia, ledgers. */
#include <stdio.h>

#include "base/error.h"
#include "roof/members.h"
#include "roof_facts.h"
#include "working/record.h"

/* -- moving the eaves out -- */

typedef struct eave_point {
    int32_t side[2]; /* eaves that meet there, -1 */
    int32_t rake;    /* where there is none, a rake that ends there, -1 */
    v2 to;
} eave_point;

static void gather_eaves(members *m, eave_point *points) {
    for (size_t i = 0; i < MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_POINTS); i++)
        points[i] = (eave_point){.side = {-1, -1}, .rake = -1};
    for (size_t i = 0; i < m->sides.count; i++) {
        members_side *side = MEMBERS_SIDE(m, i);
        if (side->kind == FRAME_LINE_RAKE) {
            side->line.at -= m->in->rake_overhang_in;
            points[side->from].rake = points[side->to].rake = (int32_t)i;
        }
        if (side->kind != FRAME_LINE_EAVE) continue;
        const members_face *face = MEMBERS_FACE(m, m->face_of[side->face]);
        const double a = v2_dot(face->along, side->p), b = v2_dot(face->along, side->q);
        side->low = fmin(a, b), side->high = fmax(a, b);
        side->overhang = m->fall / face->slope;
        side->line.at -= side->overhang;
        points[side->from].side[points[side->from].side[0] >= 0] = (int32_t)i;
        points[side->to].side[points[side->to].side[0] >= 0] = (int32_t)i;
    }
}

/* The line that ends a side at a point. */
static line2 line_beside(const members *m, const members_side *of, int32_t point) {
    const int32_t beside = of->from == point ? of->prev : of->next;
    return MEMBERS_SIDE(m, beside)->line;
}

static frame_status move_point(const members *m, int32_t point, eave_point *at) {
    const frame_roof_solve_point *of = MEMBERS_POINT(m, point);
    at->to = (v2){of->x_in, of->y_in};
    if (at->side[0] < 0 && at->rake >= 0) {
        const members_side *rake = MEMBERS_SIDE(m, at->rake);
        line2_meet(rake->line, line_beside(m, rake, point), &at->to);
    }
    if (at->side[0] < 0) return FRAME_OK;
    const members_side *eave = MEMBERS_SIDE(m, at->side[0]);
    const line2 other = at->side[1] >= 0 ? MEMBERS_SIDE(m, at->side[1])->line : line_beside(m, eave, point);
    if (!line2_meet(eave->line, other, &at->to)) at->to = v2_less(at->to, v2_times(eave->line.n, eave->overhang));
    return FRAME_OK;
}

static frame_status refuse_overhang(const members *m, const members_side *side) {
    char valid[64];
    snprintf(valid, sizeof valid, "less: it takes the whole eave of edge %d away", (int)side->edge);
    return frame_fail_number(FRAME_IMPOSSIBLE, "overhang_in", m->in->overhang_in, valid);
}

static frame_status move_sides(members *m, const eave_point *points) {
    for (size_t i = 0; i < m->sides.count; i++) {
        members_side *side = MEMBERS_SIDE(m, i);
        const v2 way = v2_left(v2_times(side->line.n, -1));
        side->p = points[side->from].to, side->q = points[side->to].to;
        if (side->kind == FRAME_LINE_EAVE && v2_dot(v2_less(side->q, side->p), way) < 1e-6)
            return refuse_overhang(m, side);
    }
    return FRAME_OK;
}

frame_status members_move_eaves(members *m) {
    const size_t count = MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_POINTS);
    eave_point *points = frame_take((count + 1) * sizeof *points);
    frame_status status = points ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status) gather_eaves(m, points);
    for (size_t i = 0; i < count && !status; i++) status = move_point(m, (int32_t)i, &points[i]);
    if (!status) status = move_sides(m, points);
    frame_give(points);
    return status;
}

/* -- pieces along lines -- */

/* A board along a line from p to q, its inner face on the line or thickness outside it; cut by lines at both ends. */
typedef struct board {
    frame_roof_member kind;
    int32_t section, edge, face;
    v2 p, q, in;    /* in: square to it, to the side the ends are counted from */
    double from_in; /* where the middle of its thickness lies, to that side */
    double top;
    line2 ends[2];
    const char *label;
} board;

static frame_status add_board(members *m, const board *b) {
    const v2 way = v2_unit(v2_less(b->q, b->p)), middle = v2_times(b->in, b->from_in);
    const v2 from = v2_add(v2_less(b->p, way), middle), to = v2_add(v2_add(b->q, way), middle);
    members_piece *piece =
        members_add_piece(m, b->kind, b->section, (vec3){from.x, from.y, b->top}, (vec3){to.x, to.y, b->top});
    if (!piece) return FRAME_NO_MEMORY;
    piece->edge = b->edge;
    piece->face = b->face;
    for (int end = 0; end < 2; end++)
        if (!members_add_upright(m, b->ends[end], v2_left(way), b->label, 0)) return FRAME_NO_MEMORY;
    return FRAME_OK;
}

/* The line a board is mitred along where it meets the next one: through where their inner faces meet and where the
 * outer ones do; square where they run on. keep: a direction into the board. */
static line2 mitre(line2 a, line2 b, double out_a, double out_b, v2 at, v2 keep) {
    v2 inner, outer, n = v2_unit(keep);
    if (line2_meet(a, b, &inner) && line2_meet(line2_moved(a, -out_a), line2_moved(b, -out_b), &outer)) {
        n = v2_left(v2_unit(v2_less(outer, inner)));
        at = inner;
    }
    if (v2_dot(n, keep) < 0) n = v2_times(n, -1);
    return line2_through(at, n);
}

/* The end of a sub-fascia: at a corner it is mitred with the next one, at a gable it ends with the wall. */
static line2 fascia_end(const members *m, int32_t index, int at_start) {
    const members_side *side = MEMBERS_SIDE(m, index);
    const double out = m->sections[MEMBERS_FASCIA].thickness;
    const v2 way = v2_unit(v2_less(side->q, side->p)), keep = at_start ? way : v2_times(way, -1);
    const int32_t point = at_start ? side->from : side->to, beside = at_start ? side->prev : side->next;
    for (size_t i = 0; i < m->sides.count; i++) {
        const members_side *other = MEMBERS_SIDE(m, i);
        if (other == side || other->kind != FRAME_LINE_EAVE || (at_start ? other->to : other->from) != point) continue;
        return mitre(side->line, other->line, out, out, at_start ? side->p : side->q, keep);
    }
    const line2 wall = MEMBERS_SIDE(m, beside)->line;
    return v2_dot(wall.n, keep) > 0 ? wall : line2_turned(wall);
}

static int32_t next_splice(const members *m, const members_face *face, double from, double to, double *at) {
    const double first = v2_dot(face->along, m->origin), step = m->in->spacing_in, stock = m->in->stock_in;
    if (fabs(to - from) <= stock) return 0;
    const double limit = to > from ? from + stock - 24 : from - stock + 24;
    const double number = to > from ? floor((limit - first) / step) : ceil((limit - first) / step);
    *at = first + number * step;
    return 1;
}

/* One sub-fascia is spliced on rafters where it is longer than the stock. */
static frame_status add_fascia(members *m, int32_t index) {
    const members_side *side = MEMBERS_SIDE(m, index);
    const members_face *face = MEMBERS_FACE(m, m->face_of[side->face]);
    const double thickness = m->sections[MEMBERS_FASCIA].thickness;
    double steepest = 0;
    for (size_t i = 0; i < m->faces.count; i++) steepest = fmax(steepest, MEMBERS_FACE(m, i)->slope);
    board b = {.kind = FRAME_MEMBER_SUBFASCIA, .section = MEMBERS_FASCIA, .edge = side->edge, .face = side->face};
    b.p = side->p, b.q = side->q, b.in = side->line.n, b.from_in = -thickness / 2;
    b.top = m->height - m->fall - steepest * thickness;
    b.label = "sub-fascia end";
    const line2 last = fascia_end(m, index, 0);
    b.ends[0] = fascia_end(m, index, 1);
    const v2 way = v2_unit(v2_less(side->q, side->p));
    const double turn = v2_dot(face->along, way);
    double from = v2_dot(face->along, side->p), to = v2_dot(face->along, side->q), at;
    for (; next_splice(m, face, from, to, &at); from = at) {
        b.q = v2_add(b.p, v2_times(way, (at - from) * turn));
        b.ends[1] = line2_through(b.q, v2_times(way, -1));
        const frame_status status = add_board(m, &b);
        if (status) return status;
        b.p = b.q;
        b.ends[0] = line2_turned(b.ends[1]);
    }
    b.q = side->q;
    b.ends[1] = last;
    return add_board(m, &b);
}

frame_status members_add_eaves(members *m) {
    for (size_t i = 0; i < m->sides.count; i++) {
        if (MEMBERS_SIDE(m, i)->kind != FRAME_LINE_EAVE) continue;
        const frame_status status = add_fascia(m, (int32_t)i);
        if (status) return status;
    }
    return FRAME_OK;
}

/* -- ledgers -- */

static line2 ledger_end(const members *m, const members_side *side, int at_start) {
    const v2 way = v2_unit(v2_less(side->q, side->p)), keep = at_start ? way : v2_times(way, -1);
    const members_side *beside = MEMBERS_SIDE(m, at_start ? side->prev : side->next);
    const v2 at = at_start ? side->p : side->q;
    if (beside->kind == FRAME_LINE_WALL && beside->off > 0)
        return mitre(side->line, beside->line, -side->off, -beside->off, at, keep);
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
static frame_status clear_ledger(members *m, board *b, double past[2]) {
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
        board b = {.kind = FRAME_MEMBER_LEDGER, .section = MEMBERS_RIDGES, .edge = side->edge, .face = side->face};
        b.p = side->p, b.q = side->q, b.in = side->line.n, b.from_in = side->off / 2;
        b.top = members_plane(face, v2_add(side->p, v2_times(side->line.n, side->off)));
        b.label = "ledger end";
        double past[2] = {run_on(m, side, 1, &b.ends[0]), run_on(m, side, 0, &b.ends[1])};
        frame_status status = clear_ledger(m, &b, past);
        for (int end = 0; end < 2 && !status; end++) status = add_head(m, side, !end, past[end], b.top);
        if (!status) status = add_board(m, &b);
        if (status) return status;
    }
    return FRAME_OK;
}

/* -- plates -- */

/* The corners of a ring as lines with the building within. */
typedef struct ring {
    int32_t first, count;
} ring;

static v2 corner_at(const members *m, int32_t i) {
    const frame_roof_solve_point *point = MEMBERS_POINT(m, i);
    return (v2){point->x_in, point->y_in};
}

static line2 wall_line(const members *m, ring of, int32_t i) {
    const int32_t next = of.first + (i - of.first + 1) % of.count;
    const v2 p = corner_at(m, i), n = v2_left(v2_unit(v2_less(corner_at(m, next), p)));
    const double toward = MEMBERS_ROOF_FACE(m, i)->toward_deg * FRAME_DEG;
    const v2 in = {cos(toward), sin(toward)};
    return line2_through(p, v2_dot(n, in) > 0 ? n : v2_times(n, -1));
}

/* A plate longer than the stock is butted, in equal parts. */
static frame_status add_plate_pieces(members *m, board *b) {
    const v2 all = v2_less(b->q, b->p), way = v2_unit(all);
    const int parts = (int)ceil(v2_length(all) / m->in->stock_in);
    const line2 last = b->ends[1];
    for (int i = 0; i < parts; i++) {
        b->q = v2_add(b->p, v2_times(all, 1.0 / parts));
        b->ends[1] = i + 1 == parts ? last : line2_through(b->q, v2_times(way, -1));
        const frame_status status = add_board(m, b);
        if (status) return status;
        members_piece *piece = &FRAME_ITEM(members_piece, m->set->pieces, m->set->pieces.count - 1);
        piece->section = -1;
        piece->thickness = m->in->plate_width_in, piece->depth = 1.5;
        b->p = b->q;
        b->ends[0] = line2_turned(b->ends[1]);
    }
    return FRAME_OK;
}

/* A plate is mitred with the next one; at a wall the roof ends at there is none, and it runs on to that wall. */
static line2 plate_end(const members *m, ring of, int32_t i, int32_t beside, v2 at, v2 keep) {
    const double width = m->in->plate_width_in;
    const line2 next = wall_line(m, of, beside);
    if (MEMBERS_ROOF_FACE(m, beside)->kind != FRAME_FACE_WALL)
        return mitre(wall_line(m, of, i), next, -width, -width, at, keep);
    return v2_dot(next.n, keep) > 0 ? next : line2_turned(next);
}

static frame_status add_plate(members *m, ring of, int32_t i) {
    const double width = m->in->plate_width_in;
    const int32_t next = of.first + (i - of.first + 1) % of.count;
    const int32_t before = of.first + (i - of.first + of.count - 1) % of.count;
    const line2 own = wall_line(m, of, i);
    const v2 p = corner_at(m, i), q = corner_at(m, next), way = v2_unit(v2_less(q, p));
    board b = {.kind = FRAME_MEMBER_PLATE, .section = MEMBERS_RAFTERS, .edge = i, .face = -1};
    b.p = p, b.q = q, b.in = own.n, b.from_in = width / 2;
    b.ends[0] = plate_end(m, of, i, before, p, way);
    b.ends[1] = plate_end(m, of, i, next, q, v2_times(way, -1));
    b.label = "plate end";
    return add_plate_pieces(m, &b);
}

frame_status members_add_plates(members *m) {
    const frame_roof_members_in *in = m->in;
    ring of = {0, (int32_t)in->corner_count};
    for (size_t hole = 0;;) {
        for (int32_t i = of.first; i < of.first + of.count; i++) {
            const int wall = MEMBERS_ROOF_FACE(m, i)->kind == FRAME_FACE_WALL;
            const frame_status status = wall ? FRAME_OK : add_plate(m, of, i);
            if (status) return status;
        }
        if (hole >= in->hole_count) return FRAME_OK;
        frame_roof_hole_corner corner, next;
        of = (ring){of.first + of.count, 0};
        frame_roof_hole_corner_item(in->holes, hole, &corner);
        for (; hole < in->hole_count; hole++, of.count++) {
            frame_roof_hole_corner_item(in->holes, hole, &next);
            if (next.hole != corner.hole) break;
        }
    }
}
