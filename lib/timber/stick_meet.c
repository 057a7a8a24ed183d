/* Two sticks cell by cell. Most pairs of cells lie on two sides of one of their faces: then they share no space, and
 * they touch only if they come up to that face from both sides. Only the others are cut by each other. */
#include "timber/meet.h"

#include <string.h>

/* Inches that two faces may be apart and still count as touching: far above rounding, within the 1e-7 promised. */
static const double near_in = 1e-7;

typedef struct pair {
    const frame_stick *sticks[2];
    frame_cell_view cells[2]; /* both in the first stick's axes */
    frame_meeting *meeting;
} pair;

/* A plane of a stick's cell, the way that points out of it, in the first stick's axes. */
static frame_plane face_plane(const pair *p, int of, int face) {
    const frame_cell_face *at = &p->cells[of].faces[face];
    const frame_plane *plane = frame_solid_plane_at(&p->sticks[of]->solid, at->plane);
    if (of) return frame_plane_brought(p->sticks[0], p->sticks[1], plane, at->side);
    return (frame_plane){vec_times(plane->normal, at->side), at->side * plane->at};
}

/* How far the nearest vertex of a cell lies beyond a plane. */
static double nearest_beyond(const frame_cell_view *cell, const frame_plane *plane) {
    double least = HUGE_VAL;
    for (int i = 0; i < cell->vertex_count; i++) least = fmin(least, vec_beyond(plane, cell->vertices[i]));
    return least;
}

static double farthest_beyond(const frame_cell_view *cell, int face, const frame_plane *plane) {
    const frame_cell_corner *corner = cell->corners + cell->faces[face].first;
    double most = 0;
    for (int i = 0; i < cell->faces[face].count; i++)
        most = fmax(most, fabs(vec_beyond(plane, cell->vertices[corner[i].vertex])));
    return most;
}

/* The part of a face that lies within another one of the same plane. */
static void cut_to_face(frame_polygon *polygon, vec3 normal, const frame_cell_view *cell, int face) {
    const frame_cell_corner *corner = cell->corners + cell->faces[face].first;
    const int count = cell->faces[face].count;
    for (int i = 0; i < count && polygon->count > 2; i++) {
        const vec3 from = cell->vertices[corner[i].vertex],
                   to = cell->vertices[corner[i + 1 < count ? i + 1 : 0].vertex];
        frame_plane edge = {vec_cross(normal, vec_less(to, from)), 0};
        edge.at = vec_dot(edge.normal, from);
        frame_polygon_cut(polygon, &edge, 1);
    }
}

static void touch_faces(const pair *p, int first, int second, const frame_plane *out) {
    frame_polygon shared;
    frame_polygon_of_face(&p->cells[0], first, &shared);
    cut_to_face(&shared, vec_times(out->normal, -1), &p->cells[1], second);
    const double area = shared.count > 2 ? frame_polygon_area(&shared, out->normal) : 0;
    if (!(area > 1e-9)) return;
    p->meeting->contact += area;
    if (!p->meeting->tell) return;
    const frame_cell_face *a = &p->cells[0].faces[first], *b = &p->cells[1].faces[second];
    const frame_touching part = {&shared, out->normal, area, {a->plane, b->plane}, {a->side, b->side}};
    p->meeting->tell(p->meeting->whom, &part);
}

/* Along a face of the first cell that the second one comes up to. */
static void touch(const pair *p, int face, const frame_plane *out) {
    for (int i = 0; i < p->cells[1].face_count; i++) {
        const frame_plane other = face_plane(p, 1, i);
        if (vec_dot(other.normal, out->normal) > -0.999999) continue;
        if (farthest_beyond(&p->cells[1], i, out) < near_in) touch_faces(p, face, i, out);
    }
}

static frame_status meet_cells(pair *p) {
    frame_moments sum = {0, {0, 0, 0}};
    for (int of = 0; of < 2; of++)
        for (int i = 0; i < p->cells[of].face_count; i++) {
            const frame_plane out = face_plane(p, of, i);
            const double beyond = nearest_beyond(&p->cells[1 - of], &out);
            if (beyond < -near_in) continue;
            /* A touching face of the second cell alone has only an edge or a corner of the first on it. */
            if (beyond < near_in && !of) touch(p, i, &out);
            return FRAME_OK;
        }
    frame_cell_view by;
    memcpy(&by, &p->cells[1], sizeof by);
    const frame_status status = frame_cells_shared(p->sticks[0], &p->cells[0], p->sticks[1], &by, &sum);
    p->meeting->overlap += fmax(0, sum.volume);
    return status;
}

/* All vertices of the second stick in the first one's axes. */
static void bring_vertices(const pair *p, vec3 *brought) {
    const frame_placement *to = &p->sticks[0]->placement, *from = &p->sticks[1]->placement;
    const vec3 x = frame_to_stick_direction(to, from->x), y = frame_to_stick_direction(to, from->y);
    const vec3 z = frame_to_stick_direction(to, from->z);
    const vec3 origin = frame_to_stick_direction(to, vec_less(from->origin, to->origin));
    const vec3 *vertices = p->sticks[1]->solid.vertices.items;
    for (size_t i = 0; i < p->sticks[1]->solid.vertices.count; i++) {
        const vec3 v = vertices[i];
        brought[i] = vec_add(vec_add(origin, vec_times(x, v.x)), vec_add(vec_times(y, v.y), vec_times(z, v.z)));
    }
}

static frame_status meet_all(pair *p, const vec3 *brought) {
    const frame_solid *a = &p->sticks[0]->solid, *b = &p->sticks[1]->solid;
    for (size_t i = 0; i < frame_solid_cell_count(a); i++) {
        if (!frame_solid_look(a, i, &p->cells[0])) continue;
        for (size_t k = 0; k < frame_solid_cell_count(b); k++) {
            if (!frame_solid_look(b, k, &p->cells[1])) continue;
            p->cells[1].vertices = brought + (p->cells[1].vertices - (const vec3 *)b->vertices.items);
            const frame_status status = meet_cells(p);
            if (status) return status;
        }
    }
    return FRAME_OK;
}

frame_status frame_stick_meet(const frame_stick *first, const frame_stick *second, frame_meeting *meeting) {
    vec3 few[96], *brought = few;
    pair p = {.sticks = {first, second}, .meeting = meeting};
    if (!frame_sticks_near(first, second, near_in)) return FRAME_OK;
    const size_t count = second->solid.vertices.count;
    if (count > sizeof few / sizeof *few && !(brought = frame_take(count * sizeof *brought))) return FRAME_NO_MEMORY;
    bring_vertices(&p, brought);
    const frame_status status = meet_all(&p, brought);
    if (brought != few) frame_give(brought);
    return status;
}
