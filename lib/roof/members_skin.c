/* The faces of the roof as they are framed: those that lie in one plane beside each other are one, and each knows its
 * sides in order. */
#include <stdlib.h>

#include "base/error.h"
#include "roof/members.h"
#include "working/record.h"

/* -- finding a line by its points -- */

typedef struct line_key {
    int32_t low, high, line;
} line_key;

static int by_points(const void *a, const void *b) {
    const line_key *x = a, *y = b;
    return x->low != y->low ? (x->low < y->low ? -1 : 1) : (x->high > y->high) - (x->high < y->high);
}

static line_key key_of(int32_t a, int32_t b, int32_t line) {
    return (line_key){a < b ? a : b, a < b ? b : a, line};
}

static line_key *sorted_lines(const members *m) {
    const size_t count = MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_LINES);
    line_key *keys = frame_take((count + 1) * sizeof *keys);
    for (size_t i = 0; keys && i < count; i++)
        keys[i] = key_of(MEMBERS_LINE(m, i)->from_point, MEMBERS_LINE(m, i)->to_point, (int32_t)i);
    if (keys) qsort(keys, count, sizeof *keys, by_points);
    return keys;
}

static int32_t find_line(const members *m, const line_key *keys, int32_t a, int32_t b) {
    const line_key wanted = key_of(a, b, 0);
    const line_key *found = bsearch(&wanted, keys, MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_LINES), sizeof wanted, by_points);
    return found ? found->line : -1;
}

/* -- faces in one plane -- */

static int32_t root(int32_t *of, int32_t face) {
    while (of[face] != face) face = of[face] = of[of[face]];
    return face;
}

/* The lower number stands for both. */
static void join_seams(const members *m, int32_t *of) {
    for (size_t i = 0; i < MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_LINES); i++) {
        const frame_roof_solve_line *line = MEMBERS_LINE(m, i);
        if (line->kind != FRAME_LINE_SEAM || line->left_face < 0 || line->right_face < 0) continue;
        const int32_t a = root(of, line->left_face), b = root(of, line->right_face);
        of[a > b ? a : b] = a < b ? a : b;
    }
}

static int is_sloping(const frame_roof_solve_face *face) {
    return face->kind == FRAME_FACE_ROOF || face->kind == FRAME_FACE_UPPER_ROOF;
}

static int32_t other_face(const frame_roof_solve_line *line, int32_t face) {
    return line->left_face == face ? line->right_face : line->left_face;
}

/* Where a roof meets the wall under a higher plate, beside its own eave: from there both roofs run down to one fascia,
 * and the wall's side is none. */
static int is_plate_step(const members *m, const frame_roof_solve_line *line, int32_t face) {
    const int32_t beyond = other_face(line, face);
    if (beyond < 0 || MEMBERS_ROOF_FACE(m, beyond)->kind != FRAME_FACE_PLATE_WALL || line->kind != FRAME_LINE_WALL)
        return 0;
    if (!(line->rise_in > 0)) return 0;
    for (size_t i = 0; i < MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_LINES); i++) {
        const frame_roof_solve_line *eave = MEMBERS_LINE(m, i);
        if (eave->kind != FRAME_LINE_EAVE || (eave->left_face != beyond && eave->right_face != beyond)) continue;
        if (eave->from_point == line->to_point || eave->to_point == line->to_point) return 1;
    }
    return 0;
}

/* The point at which a side of a face ends: past a step of plates, the upper end of the step. */
static int32_t end_of(const members *m, const line_key *keys, int32_t face, int32_t from, int32_t at, int32_t to) {
    const int32_t lines[2] = {find_line(m, keys, from, at), find_line(m, keys, at, to)};
    for (int i = 0; i < 2; i++)
        if (lines[i] >= 0 && MEMBERS_LINE(m, lines[i])->from_point == at &&
            is_plate_step(m, MEMBERS_LINE(m, lines[i]), face))
            return MEMBERS_LINE(m, lines[i])->to_point;
    return at;
}

static int add_side(members *m, int32_t face, int32_t from, int32_t to, int32_t of) {
    const frame_roof_solve_line *line = MEMBERS_LINE(m, of);
    const frame_roof_solve_point *a = MEMBERS_POINT(m, from), *b = MEMBERS_POINT(m, to);
    members_side side = {.p = {a->x_in, a->y_in}, .q = {b->x_in, b->y_in}, .kind = line->kind, .of = of};
    const int32_t beyond = other_face(line, face);
    const int upright = beyond >= 0 && !is_sloping(MEMBERS_ROOF_FACE(m, beyond));
    side.line = line2_through(side.p, v2_left(v2_unit(v2_less(side.q, side.p))));
    side.edge = MEMBERS_ROOF_FACE(m, upright ? beyond : face)->edge;
    if (upright && line->kind == FRAME_LINE_RIDGE) side.kind = FRAME_LINE_WALL; /* the top of a shed */
    side.on_gable = upright && line->kind == FRAME_LINE_EAVE && MEMBERS_ROOF_FACE(m, beyond)->kind == FRAME_FACE_GABLE;
    side.plate = a->z_in;
    side.run = side.prev = side.next = -1;
    side.from = from, side.to = to;
    side.face = face;
    return frame_array_push(&m->sides, &side) != NULL;
}

/* Adds the side from one corner of a loop to the next; a step of plates is none, and what it stands between meet at its
 * upper end. */
static frame_status add_corner(members *m, const line_key *keys, int32_t face, const int32_t points[4]) {
    const int32_t line = find_line(m, keys, points[1], points[2]);
    if (line < 0)
        return frame_fail(FRAME_INTERNAL, "roof_members", "", "a line along each side of a face",
                          "roof_members: a side of face %d is no line of the roof; please report the plan", (int)face);
    if (MEMBERS_LINE(m, line)->kind == FRAME_LINE_SEAM || is_plate_step(m, MEMBERS_LINE(m, line), face))
        return FRAME_OK;
    if (!add_side(m, face, points[1], points[2], line)) return FRAME_NO_MEMORY;
    members_side *side = MEMBERS_SIDE(m, m->sides.count - 1);
    if (m->in->plate_count < 2 || side->kind != FRAME_LINE_EAVE) return FRAME_OK;
    side->from = end_of(m, keys, face, points[0], points[1], points[2]);
    side->to = end_of(m, keys, face, points[1], points[2], points[3]);
    return FRAME_OK;
}

static frame_status add_outline(members *m, const line_key *keys, int32_t face) {
    const frame_roof_solve_face *of = MEMBERS_ROOF_FACE(m, face);
    const frame_roof_solve_outline *corner =
        &MEMBERS_ROOF(m, frame_roof_solve_outline, MEMBERS_ROOF_OUTLINES, of->outline_first);
    for (uint32_t first = 0, count; first < of->outline_count; first += count) {
        for (count = 1; first + count < of->outline_count && corner[first + count].loop == corner[first].loop;) count++;
        for (uint32_t i = 0; i < count; i++) {
            int32_t points[4];
            for (uint32_t k = 0; k < 4; k++) points[k] = corner[first + (i + k + count - 1) % count].point;
            const frame_status status = add_corner(m, keys, face, points);
            if (status) return status;
        }
    }
    return FRAME_OK;
}

/* Each side is followed by the one that starts where it ends; of several by the one that turns most to the left. */
static void link_sides(members *m, const members_face *face) {
    for (int32_t i = face->first; i < face->first + face->count; i++) {
        members_side *side = MEMBERS_SIDE(m, i), *best = NULL;
        double most = -4;
        for (int32_t k = face->first; k < face->first + face->count; k++) {
            members_side *next = MEMBERS_SIDE(m, k);
            if (next->from != side->to) continue;
            const double turn = atan2(v2_cross(side->line.n, next->line.n), v2_dot(side->line.n, next->line.n));
            if (turn > most) most = turn, best = next, side->next = k;
        }
        if (best) best->prev = i;
    }
}

/* Along a face the same way for opposite faces, so that they share one layout. */
static v2 along_of(v2 up) {
    const v2 along = {up.y, -up.x};
    return along.x < -1e-9 || (along.x < 1e-9 && along.y < 0) ? v2_times(along, -1) : along;
}

static frame_status add_face(members *m, const line_key *keys, int32_t *of, int32_t first) {
    const frame_roof_solve_face *solved = MEMBERS_ROOF_FACE(m, first);
    const double toward = solved->toward_deg * FRAME_DEG;
    members_face face = {.first = (int32_t)m->sides.count, .face = first, .up = {cos(toward), sin(toward)}};
    for (int32_t i = first; i < (int32_t)MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_FACES); i++) {
        if (!is_sloping(MEMBERS_ROOF_FACE(m, i)) || root(of, i) != first) continue;
        m->face_of[i] = (int32_t)m->faces.count;
        const frame_status status = add_outline(m, keys, i);
        if (status) return status;
    }
    const frame_roof_solve_outline *corner =
        &MEMBERS_ROOF(m, frame_roof_solve_outline, MEMBERS_ROOF_OUTLINES, solved->outline_first);
    face.count = (int32_t)m->sides.count - face.first;
    face.along = along_of(face.up);
    face.slope = solved->slope;
    face.base = m->height + corner->z_in - face.slope * v2_dot(face.up, (v2){corner->x_in, corner->y_in});
    link_sides(m, &face);
    return frame_array_push(&m->faces, &face) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status add_faces(members *m, const line_key *keys, int32_t *of) {
    const int32_t count = (int32_t)MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_FACES);
    for (int32_t i = 0; i < count; i++) of[i] = i, m->face_of[i] = -1;
    join_seams(m, of);
    for (int32_t i = 0; i < count; i++) {
        if (!is_sloping(MEMBERS_ROOF_FACE(m, i)) || root(of, i) != i) continue;
        const frame_status status = add_face(m, keys, of, i);
        if (status) return status;
    }
    return FRAME_OK;
}

frame_status members_find_skin(members *m) {
    const size_t count = MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_FACES);
    line_key *keys = sorted_lines(m);
    int32_t *of = frame_take(count * sizeof *of);
    m->face_of = frame_take(count * sizeof *m->face_of);
    const frame_status status = keys && of && m->face_of ? add_faces(m, keys, of) : FRAME_NO_MEMORY;
    frame_give(of);
    frame_give(keys);
    return status;
}
