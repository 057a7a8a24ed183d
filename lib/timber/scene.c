/* Hidden lines removed. A point of an edge is hidden by a convex cell when the way from it to the eye passes through
 * the cell. With t along the edge and s towards the eye that is a half plane of (t, s) for each face of the cell: what
 * of the strip 0 <= t <= 1 lies in all of them is a polygon, and its range of t is hidden. Nothing is sampled, nothing
 * sorted by depth. */
#include "timber/scene.h"

#include <stdlib.h>

#include "timber/outline.h"
#include "timber/plane2.h"

/* Inches that an edge must lie behind a face to be hidden by it. */
static const double behind_in = 1e-3;

typedef struct scene_edge {
    vec3 from, to;
} scene_edge;

typedef struct scene_cell {
    vec3 low, high;
    size_t first, count; /* planes, their normals outward */
} scene_cell;

void frame_scene_begin(frame_scene *scene, double turn_deg, double rise_deg) {
    const double degree = acos(-1.0) / 180, turn = turn_deg * degree, rise = rise_deg * degree;
    const double flat = rise_deg > 89.999 ? -acos(-1.0) / 2 : turn; /* straight down the page is turned as a plan is */
    const vec3 right = {-sin(flat), cos(flat), 0};
    const vec3 toward = {cos(rise) * cos(flat), cos(rise) * sin(flat), sin(rise)};
    scene->eye = (frame_placement){{0, 0, 0}, right, vec_cross(toward, right), toward};
    scene->edges = (frame_array){.item_size = sizeof(scene_edge)};
    scene->cells = (frame_array){.item_size = sizeof(scene_cell)};
    scene->planes = (frame_array){.item_size = sizeof(frame_plane)};
}

void frame_scene_give(frame_scene *scene) {
    frame_array_give(&scene->edges);
    frame_array_give(&scene->cells);
    frame_array_give(&scene->planes);
}

/* -- cells -- */

static vec3 seen(const frame_scene *scene, const frame_stick *stick, vec3 point) {
    return frame_scene_see(scene, frame_to_world(&stick->placement, point));
}

static frame_plane seen_plane(const frame_scene *scene, const frame_stick *stick, const frame_plane *plane, int side) {
    const vec3 world = frame_to_world_direction(&stick->placement, vec_times(plane->normal, side));
    const vec3 on = seen(scene, stick, vec_times(plane->normal, plane->at));
    frame_plane found = {frame_to_stick_direction(&scene->eye, world), 0};
    found.at = vec_dot(found.normal, on);
    return found;
}

static int add_cell(frame_scene *scene, const frame_stick *stick, const frame_cell_view *view) {
    scene_cell cell = {{HUGE_VAL, HUGE_VAL, HUGE_VAL}, {-HUGE_VAL, -HUGE_VAL, -HUGE_VAL}, scene->planes.count, 0};
    for (int i = 0; i < view->vertex_count; i++) {
        const vec3 at = seen(scene, stick, view->vertices[i]);
        cell.low = (vec3){fmin(cell.low.x, at.x), fmin(cell.low.y, at.y), fmin(cell.low.z, at.z)};
        cell.high = (vec3){fmax(cell.high.x, at.x), fmax(cell.high.y, at.y), fmax(cell.high.z, at.z)};
    }
    for (int i = 0; i < view->face_count; i++, cell.count++) {
        const frame_plane plane =
            seen_plane(scene, stick, frame_solid_plane_at(&stick->solid, view->faces[i].plane), view->faces[i].side);
        if (!frame_array_push(&scene->planes, &plane)) return 0;
    }
    return frame_array_push(&scene->cells, &cell) != NULL;
}

/* -- edges: the lines round the faces of every plane -- */

/* The side face on which a plane's lines are seen best; -1 for a plane square to the stick, whose lines are the
 * others'. */
static int face_for(const frame_stick *stick, int plane) {
    const vec3 n = frame_solid_plane_at(&stick->solid, plane)->normal;
    if (fmax(fabs(n.y), fabs(n.z)) < 1e-6) return -1;
    return plane <= PLANE_BOTTOM ? plane : fabs(n.y) > fabs(n.z) ? PLANE_LEFT : PLANE_TOP;
}

/* The point of a plane that is seen on a side face at a place. */
static vec3 on_plane(const frame_stick *stick, int number, int face, double x, double across) {
    const frame_plane *plane = frame_solid_plane_at(&stick->solid, number);
    const vec3 outward = frame_solid_plane_at(&stick->solid, face)->normal;
    const vec3 point = frame_stick_point_on(stick, face, x, across);
    return vec_less(point, vec_times(outward, vec_beyond(plane, point) / vec_dot(plane->normal, outward)));
}

static frame_status add_lines(frame_scene *scene, const frame_stick *stick, frame_outline *outline, int plane) {
    const int face = face_for(stick, plane);
    if (face < 0) return FRAME_OK;
    const frame_status status = frame_outline_lines(outline, &stick->solid, plane, face, stick->y[0], stick->z[0]);
    const frame_outline_line *lines = outline->lines.items;
    for (size_t i = 0; !status && i < outline->lines.count; i++) {
        if (lines[i].beyond < plane && face_for(stick, lines[i].beyond) >= 0) continue; /* found from there */
        const vec3 from = on_plane(stick, plane, face, lines[i].x[0], lines[i].across[0]);
        const vec3 to = on_plane(stick, plane, face, lines[i].x[1], lines[i].across[1]);
        const scene_edge edge = {seen(scene, stick, from), seen(scene, stick, to)};
        if (!frame_array_push(&scene->edges, &edge)) return FRAME_NO_MEMORY;
    }
    return status;
}

frame_status frame_scene_add(frame_scene *scene, const frame_stick *stick) {
    frame_outline outline;
    frame_cell_view view;
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < frame_solid_cell_count(&stick->solid); i++)
        if (frame_solid_look(&stick->solid, i, &view) && !add_cell(scene, stick, &view)) return FRAME_NO_MEMORY;
    frame_outline_begin(&outline);
    for (size_t i = 0; !status && i < stick->solid.planes.count; i++)
        status = add_lines(scene, stick, &outline, (int)i);
    frame_outline_give(&outline);
    return status;
}

/* -- what is seen -- */

typedef struct span {
    double from, to;
} span;

static int by_from(const void *a, const void *b) {
    const span *x = a, *y = b;
    return (x->from > y->from) - (x->from < y->from);
}

static int may_hide(const scene_cell *cell, const scene_edge *edge) {
    return cell->low.x <= fmax(edge->from.x, edge->to.x) && cell->high.x >= fmin(edge->from.x, edge->to.x) &&
           cell->low.y <= fmax(edge->from.y, edge->to.y) && cell->high.y >= fmin(edge->from.y, edge->to.y) &&
           cell->high.z > fmin(edge->from.z, edge->to.z) + behind_in;
}

/* The part of an edge that a cell hides; 0 when it is none. */
static int hidden_by(const frame_scene *scene, const scene_cell *cell, const scene_edge *edge, span *hidden) {
    const vec3 way = vec_less(edge->to, edge->from);
    const double far = cell->high.z - fmin(edge->from.z, edge->to.z) + 1;
    polygon2 part = {{{0, behind_in}, {1, behind_in}, {1, far}, {0, far}}, 4};
    for (size_t i = 0; i < cell->count && part.count > 2; i++) {
        const frame_plane *plane = &FRAME_ITEM(frame_plane, scene->planes, cell->first + i);
        const v2 n = {-vec_dot(plane->normal, way), -plane->normal.z};
        polygon2_keep(&part, (line2){n, vec_dot(plane->normal, edge->from) - plane->at});
    }
    if (part.count < 3) return 0;
    polygon2_range(&part, (v2){1, 0}, &hidden->from, &hidden->to);
    return hidden->to > hidden->from;
}

static frame_status draw_part(frame_drawing *drawing, const scene_edge *edge, double from, double to) {
    const vec3 a = vec_between(edge->from, edge->to, from), b = vec_between(edge->from, edge->to, to);
    if (hypot(b.x - a.x, b.y - a.y) < 0.02) return FRAME_OK;
    return frame_drawing_line(drawing, a.x, a.y, b.x, b.y, FRAME_PEN_THIN);
}

static frame_status draw_edge(const frame_scene *scene, frame_drawing *drawing, const scene_edge *edge,
                              frame_array *spans) {
    frame_status status = FRAME_OK;
    double from = 0;
    spans->count = 0;
    for (size_t i = 0; i < scene->cells.count; i++) {
        const scene_cell *cell = &FRAME_ITEM(scene_cell, scene->cells, i);
        span hidden;
        if (!may_hide(cell, edge) || !hidden_by(scene, cell, edge, &hidden)) continue;
        if (!frame_array_push(spans, &hidden)) return FRAME_NO_MEMORY;
        if (hidden.from <= 0 && hidden.to >= 1) return FRAME_OK;
    }
    if (spans->count) qsort(spans->items, spans->count, sizeof(span), by_from);
    for (size_t i = 0; i < spans->count && !status; i++) {
        const span *hidden = &FRAME_ITEM(span, *spans, i);
        if (hidden->from > from) status = draw_part(drawing, edge, from, hidden->from);
        from = fmax(from, hidden->to);
    }
    return !status && from < 1 ? draw_part(drawing, edge, from, 1) : status;
}

frame_status frame_scene_draw(const frame_scene *scene, frame_drawing *drawing) {
    frame_array spans = {.item_size = sizeof(span)};
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < scene->edges.count && !status; i++)
        status = draw_edge(scene, drawing, &FRAME_ITEM(scene_edge, scene->edges, i), &spans);
    frame_array_give(&spans);
    return status;
}
