/* Convex polygons cut by planes. */
#include "timber/polygon.h"

void frame_polygon_of_face(const frame_cell_view *cell, int face, frame_polygon *polygon) {
    const frame_cell_corner *corner = cell->corners + cell->faces[face].first;
    polygon->count = cell->faces[face].count;
    for (int i = 0; i < polygon->count; i++) polygon->corners[i] = cell->vertices[corner[i].vertex];
}

void frame_polygon_cut(frame_polygon *polygon, const frame_plane *plane, int side) {
    frame_polygon kept;
    kept.count = 0;
    for (int i = 0; i < polygon->count && kept.count + 2 <= POLYGON_CORNERS; i++) {
        const vec3 a = polygon->corners[i], b = polygon->corners[i + 1 < polygon->count ? i + 1 : 0];
        const double da = side * vec_beyond(plane, a), db = side * vec_beyond(plane, b);
        if (da >= 0) kept.corners[kept.count++] = a;
        if ((da < 0) != (db < 0)) kept.corners[kept.count++] = vec_between(a, b, da / (da - db));
    }
    polygon->count = kept.count;
    for (int i = 0; i < kept.count; i++) polygon->corners[i] = kept.corners[i];
}

double frame_polygon_area(const frame_polygon *polygon, vec3 direction) {
    vec3 sum = {0, 0, 0};
    for (int i = 2; i < polygon->count; i++)
        sum = vec_add(sum, vec_cross(vec_less(polygon->corners[i - 1], polygon->corners[0]),
                                     vec_less(polygon->corners[i], polygon->corners[0])));
    return vec_dot(sum, direction) / 2;
}
