/* How far two sticks miss each other: the least distance between their convex cells. It lies between a corner and a
 * face, or between two edges; all are tried. */
#include "timber/meet.h"

typedef struct segment {
    vec3 from, to;
} segment;

static double clamp(double t) {
    return t < 0 ? 0 : t > 1 ? 1 : t;
}

/* Between two segments: each in turn gives the point of the other it is nearest to. */
static double apart(segment a, segment b) {
    const vec3 u = vec_less(a.to, a.from), v = vec_less(b.to, b.from), w = vec_less(a.from, b.from);
    const double uu = vec_dot(u, u), uv = vec_dot(u, v), vv = vec_dot(v, v), uw = vec_dot(u, w), vw = vec_dot(v, w);
    const double turn = uu * vv - uv * uv;
    double s = turn > 1e-12 * uu * vv ? clamp((uv * vw - vv * uw) / turn) : 0;
    const double t = vv > 0 ? clamp((uv * s + vw) / vv) : 0;
    s = uu > 0 ? clamp((uv * t - uw) / uu) : 0;
    return vec_length(vec_less(vec_add(a.from, vec_times(u, s)), vec_add(b.from, vec_times(v, t))));
}

static vec3 placed(const frame_stick *stick, const frame_cell_view *cell, int corner) {
    return frame_to_world(&stick->placement, cell->vertices[cell->corners[corner].vertex]);
}

static segment edge_of(const frame_stick *stick, const frame_cell_view *cell, const frame_cell_face *face, int i) {
    return (segment){placed(stick, cell, face->first + i),
                     placed(stick, cell, face->first + (i + 1 < face->count ? i + 1 : 0))};
}

/* From the corners of one cell to the face of another that they lie over. */
static double corners_to_face(const frame_stick *a, const frame_cell_view *from, const frame_stick *b,
                              const frame_cell_view *to, const frame_cell_face *face) {
    const frame_plane *own = frame_solid_plane_at(&b->solid, face->plane);
    const vec3 normal = frame_to_world_direction(&b->placement, vec_times(own->normal, face->side));
    double least = HUGE_VAL;
    for (int i = 0; i < from->vertex_count; i++) {
        const vec3 point = frame_to_world(&a->placement, from->vertices[i]);
        const double beyond = vec_dot(normal, vec_less(point, placed(b, to, face->first)));
        int over = beyond >= 0 && beyond < least;
        for (int k = 0; over && k < face->count; k++) {
            const segment edge = edge_of(b, to, face, k);
            const vec3 inward = vec_cross(normal, vec_less(edge.to, edge.from));
            over = vec_dot(inward, vec_less(point, edge.from)) >= 0;
        }
        if (over) least = beyond;
    }
    return least;
}

static double edges_apart(const frame_stick *a, const frame_cell_view *x, const frame_cell_face *f,
                          const frame_stick *b, const frame_cell_view *y, const frame_cell_face *g) {
    double least = HUGE_VAL;
    for (int i = 0; i < f->count; i++)
        for (int k = 0; k < g->count; k++) least = fmin(least, apart(edge_of(a, x, f, i), edge_of(b, y, g, k)));
    return least;
}

static double cells_apart(const frame_stick *a, const frame_cell_view *x, const frame_stick *b,
                          const frame_cell_view *y) {
    double least = HUGE_VAL;
    for (int i = 0; i < x->face_count; i++) least = fmin(least, corners_to_face(b, y, a, x, &x->faces[i]));
    for (int k = 0; k < y->face_count; k++) least = fmin(least, corners_to_face(a, x, b, y, &y->faces[k]));
    for (int i = 0; i < x->face_count; i++)
        for (int k = 0; k < y->face_count; k++)
            least = fmin(least, edges_apart(a, x, &x->faces[i], b, y, &y->faces[k]));
    return least;
}

double frame_stick_gap(const frame_stick *first, const frame_stick *second) {
    frame_cell_view a, b;
    double least = HUGE_VAL;
    for (size_t i = 0; i < frame_solid_cell_count(&first->solid); i++)
        for (size_t k = 0; frame_solid_look(&first->solid, i, &a) && k < frame_solid_cell_count(&second->solid); k++)
            if (frame_solid_look(&second->solid, k, &b)) least = fmin(least, cells_apart(first, &a, second, &b));
    return least < 1e-9 ? 0 : least;
}
