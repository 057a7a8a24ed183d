/* Whether a stick is still one piece: cells hang together by the faces they share, not by edges or corners. */
#include "timber/polygon.h"
#include "timber/solid.h"

/* The least area that holds two cells together, in square inches. */
static const double hold_in2 = 1e-6;

/* The area that two faces on one plane share: the one is cut along every edge of the other. */
static double shared_area(const frame_cell_view *a, int face_a, const frame_cell_view *b, int face_b, vec3 normal) {
    frame_polygon shared, other;
    frame_polygon_of_face(a, face_a, &shared);
    frame_polygon_of_face(b, face_b, &other);
    for (int i = 0; i < other.count && shared.count > 2; i++) {
        const vec3 from = other.corners[i], to = other.corners[i + 1 < other.count ? i + 1 : 0];
        frame_plane edge = {vec_cross(normal, vec_less(to, from)), 0};
        edge.at = vec_dot(edge.normal, from);
        frame_polygon_cut(&shared, &edge, b->faces[face_b].side);
    }
    return fabs(frame_polygon_area(&shared, normal));
}

static int hold_together(const frame_solid *solid, const frame_cell_view *a, const frame_cell_view *b) {
    for (int i = 0; i < a->face_count; i++)
        for (int k = 0; k < b->face_count; k++) {
            if (a->faces[i].plane != b->faces[k].plane || a->faces[i].side == b->faces[k].side) continue;
            if (shared_area(a, i, b, k, frame_solid_plane_at(solid, a->faces[i].plane)->normal) > hold_in2) return 1;
        }
    return 0;
}

enum { FAR, REACHED, ASKED };

/* Reaches the cells that one reached before holds; how many. */
static size_t ask(frame_solid *solid, size_t place) {
    frame_cell_view a, b;
    size_t found = 0;
    frame_solid_look(solid, place, &a);
    *frame_solid_reach(solid, place) = ASKED;
    for (size_t i = 0; i < frame_solid_cell_count(solid); i++) {
        if (!frame_solid_look(solid, i, &b) || *frame_solid_reach(solid, i) != FAR) continue;
        if (!hold_together(solid, &a, &b)) continue;
        *frame_solid_reach(solid, i) = REACHED;
        found++;
    }
    return found;
}

/* Spreads from the first cell until no other is reached. */
int frame_solid_whole(frame_solid *solid) {
    const size_t cells = frame_solid_cell_count(solid);
    frame_cell_view view;
    size_t alive = 0, reached = 0;
    for (size_t i = 0; i < cells; i++) {
        if (!frame_solid_look(solid, i, &view)) continue;
        *frame_solid_reach(solid, i) = alive++ ? FAR : REACHED;
    }
    for (size_t grown = 1; grown && reached + grown < alive;) {
        reached += grown;
        grown = 0;
        for (size_t i = 0; i < cells; i++)
            if (frame_solid_look(solid, i, &view) && *frame_solid_reach(solid, i) == REACHED) grown += ask(solid, i);
        if (reached + grown == alive) return 1;
    }
    return alive <= 1;
}
