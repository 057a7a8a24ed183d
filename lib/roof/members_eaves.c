/* The eaves: how far out the tails are cut, and the sub-fascias along them. */
#include <stdio.h>

#include "base/error.h"
#include "roof/members_board.h"

/* -- moving the eaves out -- */

typedef struct eave_point {
    int32_t side[2]; /* eaves that meet there, -1 */
    int32_t rake;    /* where there is none, a rake that ends there, -1 */
    v2 to;
} eave_point;

/* The height of the fascia is that of the first eave. */
static void find_fascia(members *m) {
    const members_side *first = NULL;
    for (size_t i = 0; i < m->sides.count; i++) {
        const members_side *side = MEMBERS_SIDE(m, i);
        if (side->kind != FRAME_LINE_EAVE || side->on_gable) continue;
        if (!first || side->edge < first->edge) first = side;
    }
    if (!first) return;
    m->fascia = m->height + first->plate - m->in->overhang_in * MEMBERS_FACE(m, m->face_of[first->face])->slope;
}

/* Along the building line, not past the wall: over an inner corner of walls of unequal height the eave begins farther
 * out. */
static void find_extent(const members *m, const members_face *face, members_side *side) {
    v2 p, q;
    members_edge(m, side->edge, &p, &q);
    const double a = v2_dot(face->along, side->p), b = v2_dot(face->along, side->q);
    const double c = v2_dot(face->along, p), d = v2_dot(face->along, q);
    side->low = fmax(fmin(a, b), fmin(c, d)), side->high = fmin(fmax(a, b), fmax(c, d));
}

static frame_status refuse_plate(const members_side *side) {
    char field[40];
    snprintf(field, sizeof field, "plates_in[%d]", (int)side->edge);
    return frame_fail_number(FRAME_IMPOSSIBLE, field, side->plate,
                             "more, or more overhang: the roof would stop short of its wall at the fascia's height");
}

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
        find_extent(m, face, side);
        side->overhang = side->on_gable ? m->in->rake_overhang_in : (m->height + side->plate - m->fascia) / face->slope;
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
    if (!status) find_fascia(m);
    if (!status) gather_eaves(m, points);
    for (size_t i = 0; i < m->sides.count && !status; i++)
        if (MEMBERS_SIDE(m, i)->overhang < -1e-9) status = refuse_plate(MEMBERS_SIDE(m, i));
    for (size_t i = 0; i < count && !status; i++) status = move_point(m, (int32_t)i, &points[i]);
    if (!status) status = move_sides(m, points);
    frame_give(points);
    return status;
}

/* -- sub-fascias -- */

/* The end of a sub-fascia: at a corner it is mitred with the next one, at a gable it ends with the wall. */
static line2 fascia_end(const members *m, int32_t index, int at_start) {
    const members_side *side = MEMBERS_SIDE(m, index);
    const double out = m->sections[MEMBERS_FASCIA].thickness;
    const v2 way = v2_unit(v2_less(side->q, side->p)), keep = at_start ? way : v2_times(way, -1);
    const int32_t point = at_start ? side->from : side->to, beside = at_start ? side->prev : side->next;
    for (size_t i = 0; i < m->sides.count; i++) {
        const members_side *other = MEMBERS_SIDE(m, i);
        if (other == side || other->kind != FRAME_LINE_EAVE || (at_start ? other->to : other->from) != point) continue;
        return members_mitre(side->line, other->line, out, out, at_start ? side->p : side->q, keep);
    }
    const line2 wall = MEMBERS_SIDE(m, beside)->line;
    if (MEMBERS_SIDE(m, beside)->run >= 0) return line2_through(at_start ? side->p : side->q, keep);
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
    members_board b = {
        .kind = FRAME_MEMBER_SUBFASCIA, .section = MEMBERS_FASCIA, .edge = side->edge, .face = side->face};
    b.p = side->p, b.q = side->q, b.in = side->line.n, b.from_in = -thickness / 2;
    b.top = members_plane(face, side->p) - steepest * thickness;
    b.label = "sub-fascia end";
    const line2 last = fascia_end(m, index, 0);
    b.ends[0] = fascia_end(m, index, 1);
    const v2 way = v2_unit(v2_less(side->q, side->p));
    const double turn = v2_dot(face->along, way);
    double from = v2_dot(face->along, side->p), to = v2_dot(face->along, side->q), at;
    for (; next_splice(m, face, from, to, &at); from = at) {
        b.q = v2_add(b.p, v2_times(way, (at - from) * turn));
        b.ends[1] = line2_through(b.q, v2_times(way, -1));
        const frame_status status = members_add_board(m, &b);
        if (status) return status;
        b.p = b.q;
        b.ends[0] = line2_turned(b.ends[1]);
    }
    b.q = side->q;
    b.ends[1] = last;
    return members_add_board(m, &b);
}

frame_status members_add_eaves(members *m) {
    for (size_t i = 0; i < m->sides.count; i++) {
        if (MEMBERS_SIDE(m, i)->kind != FRAME_LINE_EAVE) continue;
        const frame_status status = add_fascia(m, (int32_t)i);
        if (status) return status;
    }
    return FRAME_OK;
}
