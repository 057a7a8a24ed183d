/* The faces of a stick's solid. */
#include "packet/export.h"

#include <stdlib.h>

size_t frame_export_cells(const frame_stick *stick) {
    return frame_solid_cell_count(&stick->solid);
}

int frame_export_faces(const frame_stick *stick, size_t cell) {
    frame_cell_view view;
    return frame_solid_look(&stick->solid, cell, &view) ? view.face_count : 0;
}

void frame_export_face(const frame_stick *stick, size_t cell, int face, frame_polygon *polygon) {
    frame_cell_view view;
    polygon->count = 0;
    if (frame_solid_look(&stick->solid, cell, &view)) frame_polygon_of_face(&view, face, polygon);
}

/* Of the face's area, summed over its triangles: sound where three corners lie in line. */
vec3 frame_export_normal(const frame_polygon *polygon) {
    vec3 sum = {0, 0, 0};
    for (int i = 1; i + 1 < polygon->count; i++)
        sum = vec_add(sum, vec_cross(vec_less(polygon->corners[i], polygon->corners[0]),
                                     vec_less(polygon->corners[i + 1], polygon->corners[0])));
    const double length = vec_length(sum);
    return length > 0 ? vec_times(sum, 1 / length) : (vec3){0, 0, 1};
}

static int by_place(const void *a, const void *b) {
    const vec3 *one = a, *two = b;
    if (one->x != two->x) return one->x < two->x ? -1 : 1;
    return one->y < two->y ? -1 : one->y > two->y;
}

static double cross_of(vec3 o, vec3 a, vec3 b) {
    return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
}

int frame_export_hull(const frame_stick *stick, vec3 hull[FRAME_EXPORT_HULL]) {
    vec3 corners[8];
    int count = 0;
    for (int c = 0; c < 8; c++)
        corners[c] = frame_to_world(
            &stick->placement, (vec3){c & 1 ? stick->low : stick->high, stick->y[c >> 1 & 1], stick->z[c >> 2 & 1]});
    qsort(corners, 8, sizeof *corners, by_place);
    for (int pass = 0; pass < 2; pass++) {
        const int start = count;
        for (int i = 0; i < 8; i++) {
            const vec3 next = corners[pass ? 7 - i : i];
            while (count >= start + 2 && cross_of(hull[count - 2], hull[count - 1], next) <= 1e-6) count--;
            hull[count++] = next;
        }
        count--;
    }
    return count;
}
