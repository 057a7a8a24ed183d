/* Splitting a convex cell by a plane. */
#include <string.h>

#include "timber/cell.h"

/* What is known of one split: on which side each vertex lies, and where the plane meets the edges. */
typedef struct split {
    const frame_cell_view *cell;
    uint8_t number;
    int crossing_count;
    double beyond[CELL_VERTICES];
    int8_t side[CELL_VERTICES]; /* -1 under, 0 on, 1 over */
    struct crossing {
        uint8_t under, over; /* the edge's vertices */
        vec3 point;
    } crossings[CELL_FACES];
} split;

/* Where the plane meets the edge from a vertex under it to one over it: the crossing's number, -1 without room. */
static int crossing_of(split *s, uint8_t under, uint8_t over) {
    for (int i = 0; i < s->crossing_count; i++)
        if (s->crossings[i].under == under && s->crossings[i].over == over) return i;
    if (s->crossing_count == CELL_FACES) return -1;
    const double fraction = s->beyond[under] / (s->beyond[under] - s->beyond[over]);
    s->crossings[s->crossing_count] =
        (struct crossing){under, over, vec_between(s->cell->vertices[under], s->cell->vertices[over], fraction)};
    return s->crossing_count++;
}

/* One piece in the making: which of its vertices stand for those of the cell and for the crossings, and the edges of
 * the new face, each from the vertex it starts at. */
typedef struct piece {
    frame_cell *out;
    int8_t keep; /* the side that is kept */
    int cap_edges, cap_start;
    uint8_t of_vertex[CELL_VERTICES], of_crossing[CELL_FACES];
    uint8_t cap_next[CELL_VERTICES], cap_beyond[CELL_VERTICES];
    uint8_t stays[256]; /* by the number of a face's plane: whether the face stays, in part or whole */
} piece;

enum { NO_VERTEX = 255 };

static int add_vertex(piece *p, uint8_t *number, vec3 point) {
    if (*number != NO_VERTEX) return *number;
    if (p->out->vertex_count == CELL_VERTICES) return -1;
    p->out->vertices[p->out->vertex_count] = point;
    p->cap_next[p->out->vertex_count] = NO_VERTEX;
    return *number = (uint8_t)p->out->vertex_count++;
}

static int add_corner(frame_cell *out, int vertex, uint8_t beyond) {
    if (vertex < 0 || out->corner_count == CELL_CORNERS) return 0;
    out->corners[out->corner_count++] = (frame_cell_corner){(uint8_t)vertex, beyond};
    return 1;
}

static int add_crossing(split *s, piece *p, uint8_t from, uint8_t to, uint8_t beyond) {
    const int i = s->side[from] < 0 ? crossing_of(s, from, to) : crossing_of(s, to, from);
    return i >= 0 && add_corner(p->out, add_vertex(p, &p->of_crossing[i], s->crossings[i].point), beyond);
}

/* The corners of one face that are kept, with those where the plane crosses it. */
static int keep_corners(split *s, piece *p, const frame_cell_face *face) {
    const frame_cell_corner *corner = s->cell->corners + face->first;
    for (int i = 0; i < face->count; i++) {
        const uint8_t here = corner[i].vertex, next = corner[i + 1 < face->count ? i + 1 : 0].vertex;
        const int side = s->side[here] * p->keep, side_next = s->side[next] * p->keep;
        if (side >= 0) {
            /* The new face begins where the kept side is left from the plane, and along an edge in the plane whose
             * other face goes. */
            const int along = side == 0 && (side_next < 0 || (side_next == 0 && !p->stays[corner[i].beyond]));
            const int vertex = add_vertex(p, &p->of_vertex[here], s->cell->vertices[here]);
            if (!add_corner(p->out, vertex, along ? s->number : corner[i].beyond)) return 0;
        }
        if (side * side_next < 0 && !add_crossing(s, p, here, next, side > 0 ? s->number : corner[i].beyond)) return 0;
    }
    return 1;
}

/* The edges of a face that border on the new one are edges of the new one, the other way round. */
static void keep_cap_edges(const split *s, piece *p, const frame_cell_face *face) {
    for (int i = 0; i < face->count; i++) {
        const frame_cell_corner *corner = p->out->corners + face->first;
        if (corner[i].beyond != s->number) continue;
        const uint8_t from = corner[i + 1 < face->count ? i + 1 : 0].vertex;
        p->cap_next[from] = corner[i].vertex;
        p->cap_beyond[from] = face->plane;
        p->cap_start = from;
        p->cap_edges++;
    }
}

/* The new face must be one closed loop of all the edges found for it. */
static int close_cap(const split *s, piece *p) {
    frame_cell *out = p->out;
    if (p->cap_edges < 3 || out->corner_count + p->cap_edges > CELL_CORNERS) return 0;
    out->faces[out->face_count++] =
        (frame_cell_face){s->number, (int8_t)-p->keep, (uint16_t)out->corner_count, (uint16_t)p->cap_edges};
    uint8_t vertex = (uint8_t)p->cap_start;
    for (int i = 0; i < p->cap_edges; i++) {
        if (vertex == NO_VERTEX || (i && vertex == p->cap_start)) return 0;
        add_corner(out, vertex, p->cap_beyond[vertex]);
        vertex = p->cap_next[vertex];
    }
    return vertex == p->cap_start;
}

static int has_side(const split *s, const frame_cell_face *face, int8_t side) {
    const frame_cell_corner *corner = s->cell->corners + face->first;
    for (int i = 0; i < face->count; i++)
        if (s->side[corner[i].vertex] == side) return 1;
    return 0;
}

/* Whether a face that lies in the plane stays: when all round it do, it is a speck on what is kept. */
static int stays_round(const split *s, const piece *p, const frame_cell_face *face) {
    const frame_cell_corner *corner = s->cell->corners + face->first;
    for (int i = 0; i < face->count; i++)
        if (!p->stays[corner[i].beyond]) return 0;
    return 1;
}

static void find_staying(const split *s, piece *p) {
    const frame_cell_face *faces = s->cell->faces;
    for (int i = 0; i < s->cell->face_count; i++) p->stays[faces[i].plane] = (uint8_t)has_side(s, &faces[i], p->keep);
    for (int i = 0; i < s->cell->face_count; i++)
        if (!p->stays[faces[i].plane] && !has_side(s, &faces[i], (int8_t)-p->keep))
            p->stays[faces[i].plane] = (uint8_t)stays_round(s, p, &faces[i]);
}

static frame_cell_parts make_piece(split *s, int8_t keep, frame_cell *out) {
    piece p;
    p.out = out;
    p.keep = keep;
    p.cap_edges = p.cap_start = 0;
    memset(p.of_vertex, NO_VERTEX, (size_t)s->cell->vertex_count);
    memset(p.of_crossing, NO_VERTEX, sizeof p.of_crossing);
    out->vertex_count = out->face_count = out->corner_count = 0;
    find_staying(s, &p);
    for (int i = 0; i < s->cell->face_count; i++) {
        if (!p.stays[s->cell->faces[i].plane]) continue;
        if (out->face_count + 1 == CELL_FACES) return CELL_TOO_LARGE;
        frame_cell_face *face = &out->faces[out->face_count++];
        *face = s->cell->faces[i];
        face->first = (uint16_t)out->corner_count;
        if (!keep_corners(s, &p, &s->cell->faces[i])) return CELL_TOO_LARGE;
        face->count = (uint16_t)(out->corner_count - face->first);
        keep_cap_edges(s, &p, face);
    }
    return close_cap(s, &p) ? CELL_BOTH : CELL_BROKEN;
}

static frame_cell_parts sides(split *s, double touch) {
    int parts = 0;
    for (int i = 0; i < s->cell->vertex_count; i++) {
        s->side[i] = (int8_t)((s->beyond[i] > touch) - (s->beyond[i] < -touch));
        parts |= s->side[i] < 0 ? CELL_UNDER : s->side[i] > 0 ? CELL_OVER : 0;
    }
    return parts == 0 ? CELL_UNDER : (frame_cell_parts)parts;
}

/* A plane that grazes a corner or edge within the rounding may leave vertices with signs no convex cell has. Then a
 * little more counts as touching, still within what is promised. */
frame_cell_parts frame_cell_split(const frame_cell_view *cell, const frame_plane *plane, uint8_t number,
                                  frame_cell *under, frame_cell *over) {
    split s;
    s.cell = cell;
    s.number = number;
    for (int i = 0; i < cell->vertex_count; i++) s.beyond[i] = vec_beyond(plane, cell->vertices[i]);
    frame_cell_parts found = CELL_BROKEN;
    for (double touch = FRAME_TOUCH; found == CELL_BROKEN && touch < 2e-7; touch *= 10) {
        s.crossing_count = 0;
        found = sides(&s, touch);
        if (found == CELL_BOTH && under) found = make_piece(&s, -1, under);
        if (found == CELL_BOTH && over) found = make_piece(&s, 1, over);
    }
    return found;
}
