/* The upper plates of the walls: to prove the seats by, and for what lies over them to leave them room. */
#include "roof/members_board.h"
#include "roof_facts.h"
#include "working/record.h"

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
static frame_status add_plate_pieces(members *m, members_board *b) {
    const v2 all = v2_less(b->q, b->p), way = v2_unit(all);
    const int parts = (int)ceil(v2_length(all) / m->in->stock_in);
    const line2 last = b->ends[1];
    for (int i = 0; i < parts; i++) {
        b->q = v2_add(b->p, v2_times(all, 1.0 / parts));
        b->ends[1] = i + 1 == parts ? last : line2_through(b->q, v2_times(way, -1));
        const frame_status status = members_add_board(m, b);
        if (status) return status;
        members_piece *piece = &FRAME_ITEM(members_piece, m->set->pieces, m->set->pieces.count - 1);
        piece->section = -1;
        piece->thickness = m->in->plate_width_in, piece->depth = 1.5;
        b->p = b->q;
        b->ends[0] = line2_turned(b->ends[1]);
    }
    return FRAME_OK;
}

/* The eave over a wall, NULL for none. */
static const members_side *eave_over(const members *m, int32_t edge) {
    for (size_t i = 0; i < m->sides.count; i++) {
        const members_side *side = MEMBERS_SIDE(m, i);
        if (side->kind == FRAME_LINE_EAVE && side->edge == edge && !side->on_gable) return side;
    }
    return NULL;
}

/* A gable has the height that was given for it, for nothing stands on its plate. */
static double height_of(const members *m, int32_t edge) {
    const members_side *eave = eave_over(m, edge);
    if (eave) return eave->plate;
    return m->in->plate_count == 0 ? 0 : m->in->plates_in[m->in->plate_count == 1 ? 0 : edge];
}

/* A plate is mitred with the next one; at a wall the roof ends at there is none, and it runs on to that wall. Beside a
 * gable of another height it runs on to the corner too, under the end rafter, and the gable's plate ends at it. */
static line2 plate_end(const members *m, ring of, int32_t i, int32_t beside, v2 at, v2 keep) {
    const double width = m->in->plate_width_in;
    line2 next = wall_line(m, of, beside);
    const int outer = v2_dot(next.n, keep) > 0;
    const frame_roof_face_kind own = MEMBERS_ROOF_FACE(m, i)->kind, other = MEMBERS_ROOF_FACE(m, beside)->kind;
    const int step = outer && fabs(height_of(m, i) - height_of(m, beside)) > 1e-9;
    if (!outer) next = line2_turned(next);
    if (other == FRAME_FACE_WALL || (step && other == FRAME_FACE_GABLE && own != FRAME_FACE_GABLE)) return next;
    if (step && own == FRAME_FACE_GABLE && other != FRAME_FACE_GABLE) return line2_moved(next, width);
    return members_mitre(wall_line(m, of, i), wall_line(m, of, beside), -width, -width, at, keep);
}

static ring ring_of(const members *m, int32_t edge) {
    const frame_roof_members_in *in = m->in;
    ring of = {0, (int32_t)in->corner_count};
    for (size_t hole = 0; edge >= of.first + of.count && hole < in->hole_count;) {
        frame_roof_hole_corner corner, next;
        of = (ring){of.first + of.count, 0};
        frame_roof_hole_corner_item(in->holes, hole, &corner);
        for (; hole < in->hole_count; hole++, of.count++) {
            frame_roof_hole_corner_item(in->holes, hole, &next);
            if (next.hole != corner.hole) break;
        }
    }
    return of;
}

void members_edge(const members *m, int32_t edge, v2 *p, v2 *q) {
    const ring of = ring_of(m, edge);
    *p = corner_at(m, edge);
    *q = corner_at(m, of.first + (edge - of.first + 1) % of.count);
}

/* Adds a plate, and remembers where it lies. */
static frame_status add_plate(members *m, members_board *b, int on_gable) {
    const double width = m->in->plate_width_in;
    const v2 way = v2_unit(v2_less(b->q, b->p)), in = v2_times(b->in, width);
    members_plate plate = {.wall = line2_through(b->p, b->in),
                           .ends = {b->ends[0], b->ends[1]},
                           .z = b->top,
                           .edge = b->edge,
                           .on_gable = on_gable};
    const v2 from = v2_less(b->p, v2_times(way, 2 * width)), to = v2_add(b->q, v2_times(way, 2 * width));
    const v2 corners[4] = {from, to, v2_add(to, in), v2_add(from, in)};
    plate.plan.count = 4;
    for (int i = 0; i < 4; i++) plate.plan.corners[i] = corners[i];
    for (int end = 0; end < 2; end++) polygon2_keep(&plate.plan, plate.ends[end]);
    if (!frame_array_push(&m->plates, &plate)) return FRAME_NO_MEMORY;
    return add_plate_pieces(m, b);
}

/* Under a higher plate than its neighbour's the roof of that one runs on: the higher plate begins where its own eave
 * does. */
static void clip_to_eave(const members *m, const members_side *eave, members_board *b) {
    const members_face *face = MEMBERS_FACE(m, m->face_of[eave->face]);
    const v2 way = v2_unit(v2_less(b->q, b->p));
    const int forward = v2_dot(face->along, way) > 0;
    const double from = v2_dot(face->along, b->p), to = v2_dot(face->along, b->q), width = m->in->plate_width_in;
    const double low = forward ? eave->low - from : from - eave->high,
                 high = forward ? eave->high - from : from - eave->low;
    const v2 p = b->p;
    if (low > width) b->p = v2_add(p, v2_times(way, low)), b->ends[0] = line2_through(b->p, way);
    if (fabs(to - from) - high > width)
        b->q = v2_add(p, v2_times(way, high)), b->ends[1] = line2_through(b->q, v2_times(way, -1));
}

static frame_status add_edge_plate(members *m, int32_t i) {
    const ring of = ring_of(m, i);
    const int32_t next = of.first + (i - of.first + 1) % of.count;
    const int32_t before = of.first + (i - of.first + of.count - 1) % of.count;
    const line2 own = wall_line(m, of, i);
    const v2 p = corner_at(m, i), q = corner_at(m, next), way = v2_unit(v2_less(q, p));
    const members_side *eave = eave_over(m, i);
    members_board b = {.kind = FRAME_MEMBER_PLATE, .section = MEMBERS_RAFTERS, .edge = i, .face = -1};
    b.p = p, b.q = q, b.in = own.n, b.from_in = m->in->plate_width_in / 2;
    b.ends[0] = plate_end(m, of, i, before, p, way);
    b.ends[1] = plate_end(m, of, i, next, q, v2_times(way, -1));
    b.label = "plate end";
    b.top = height_of(m, i);
    if (eave) clip_to_eave(m, eave, &b);
    return add_plate(m, &b, 0);
}

/* The plate on a gable that ends under a half hip. */
static frame_status add_gable_plate(members *m, const members_side *eave) {
    const members_face *face = MEMBERS_FACE(m, m->face_of[eave->face]);
    const line2 wall = members_wall(eave);
    members_board b = {.kind = FRAME_MEMBER_PLATE, .section = MEMBERS_RAFTERS, .edge = eave->edge, .face = -1};
    b.p = v2_add(v2_times(face->along, eave->low), v2_times(wall.n, wall.at));
    b.q = v2_add(v2_times(face->along, eave->high), v2_times(wall.n, wall.at));
    b.in = wall.n, b.from_in = m->in->plate_width_in / 2, b.top = eave->plate;
    b.ends[0] = line2_through(b.p, face->along), b.ends[1] = line2_through(b.q, v2_times(face->along, -1));
    b.label = "plate end";
    return add_plate(m, &b, 1);
}

frame_status members_add_plates(members *m) {
    const int32_t edges = (int32_t)(m->in->corner_count + m->in->hole_count);
    frame_status status = FRAME_OK;
    for (int32_t i = 0; i < edges && !status; i++)
        if (MEMBERS_ROOF_FACE(m, i)->kind != FRAME_FACE_WALL) status = add_edge_plate(m, i);
    for (size_t i = 0; i < m->sides.count && !status; i++)
        if (MEMBERS_SIDE(m, i)->on_gable) status = add_gable_plate(m, MEMBERS_SIDE(m, i));
    return status;
}
