/* The convex cell: the prism it begins as, and its volume. */
#include "timber/cell.h"

/* Vertex i of the prism has x[i & 1], y[i >> 1 & 1], z[i >> 2]. */
static const uint8_t prism_faces[6][4] = {
    [PLANE_LEFT] = {2, 6, 7, 3},   [PLANE_RIGHT] = {0, 1, 5, 4}, [PLANE_TOP] = {4, 5, 7, 6},
    [PLANE_BOTTOM] = {0, 2, 3, 1}, [PLANE_START] = {0, 4, 6, 2}, [PLANE_END] = {1, 3, 7, 5},
};
static const uint8_t prism_beyond[6][4] = {
    [PLANE_LEFT] = {PLANE_START, PLANE_TOP, PLANE_END, PLANE_BOTTOM},
    [PLANE_RIGHT] = {PLANE_BOTTOM, PLANE_END, PLANE_TOP, PLANE_START},
    [PLANE_TOP] = {PLANE_RIGHT, PLANE_END, PLANE_LEFT, PLANE_START},
    [PLANE_BOTTOM] = {PLANE_START, PLANE_LEFT, PLANE_END, PLANE_RIGHT},
    [PLANE_START] = {PLANE_RIGHT, PLANE_TOP, PLANE_LEFT, PLANE_BOTTOM},
    [PLANE_END] = {PLANE_BOTTOM, PLANE_LEFT, PLANE_TOP, PLANE_RIGHT},
};

void frame_cell_prism(frame_cell *cell, const double x[2], const double y[2], const double z[2]) {
    for (int i = 0; i < 8; i++) cell->vertices[i] = (vec3){x[i & 1], y[i >> 1 & 1], z[i >> 2]};
    for (int face = 0; face < 6; face++) {
        cell->faces[face] = (frame_cell_face){(uint8_t)face, 1, (uint16_t)(4 * face), 4};
        for (int i = 0; i < 4; i++)
            cell->corners[4 * face + i] = (frame_cell_corner){prism_faces[face][i], prism_beyond[face][i]};
    }
    cell->vertex_count = 8;
    cell->face_count = 6;
    cell->corner_count = 24;
}

/* Tetrahedra from the first vertex to the triangles of every face. Coordinates are taken from that vertex, so that a
 * stick far from the origin is measured as well as one at it. */
void frame_cell_measure(const frame_cell_view *cell, frame_moments *sum) {
    const vec3 from = cell->vertices[0];
    double six = 0;
    vec3 first = {0, 0, 0};
    for (int face = 0; face < cell->face_count; face++) {
        const frame_cell_corner *corner = cell->corners + cell->faces[face].first;
        const vec3 a = vec_less(cell->vertices[corner[0].vertex], from);
        vec3 b = vec_less(cell->vertices[corner[1].vertex], from);
        for (int i = 2; i < cell->faces[face].count; i++) {
            const vec3 c = vec_less(cell->vertices[corner[i].vertex], from);
            const double part = vec_dot(a, vec_cross(b, c));
            six += part;
            first = vec_add(first, vec_times(vec_add(a, vec_add(b, c)), part));
            b = c;
        }
    }
    sum->volume += six / 6;
    sum->first = vec_add(sum->first, vec_add(vec_times(first, 1.0 / 24), vec_times(from, six / 6)));
}
