/* The lines round the faces on a plane. Every inner face between two cells came from one split and has the same plane
 * on both its sides, so edges that cancel always carry the same number: they are summed up along their common line. */
#include "timber/outline.h"

void frame_outline_begin(frame_outline *outline) {
    frame_pool_begin(&outline->edges, outline->edge_room, sizeof outline->edge_room, sizeof(frame_outline_line));
    frame_pool_begin(&outline->lines, outline->line_room, sizeof outline->line_room, sizeof(frame_outline_line));
    frame_pool_begin(&outline->events, outline->event_room, sizeof outline->event_room, sizeof(frame_outline_event));
}

void frame_outline_give(frame_outline *outline) {
    frame_pool_give(&outline->edges);
    frame_pool_give(&outline->lines);
    frame_pool_give(&outline->events);
}

/* Appends an edge behind those with the same plane beyond it, so that each plane's stand together. */
int frame_outline_add_edge(frame_outline *outline, const frame_outline_line *edge) {
    if (!frame_pool_add(&outline->edges, 1)) return 0;
    frame_outline_line *edges = outline->edges.items;
    size_t i = outline->edges.count - 1;
    for (; i && edges[i - 1].beyond > edge->beyond; i--) edges[i] = edges[i - 1];
    edges[i] = *edge;
    return 1;
}

static int add_face_edges(frame_outline *outline, const frame_cell_view *cell, const frame_cell_face *face, int on,
                          double y0, double z0) {
    const frame_cell_corner *corner = cell->corners + face->first;
    /* Seen from outside, x runs to the right on the right and the top face, and to the left on the others. */
    const int turned = on == PLANE_LEFT || on == PLANE_BOTTOM;
    const int upright = on == PLANE_LEFT || on == PLANE_RIGHT;
    for (int i = 0; i < face->count; i++) {
        const vec3 a = cell->vertices[corner[i].vertex];
        const vec3 b = cell->vertices[corner[i + 1 < face->count ? i + 1 : 0].vertex];
        const double across_a = upright ? a.z - z0 : a.y - y0, across_b = upright ? b.z - z0 : b.y - y0;
        const frame_outline_line edge = {{turned ? b.x : a.x, turned ? a.x : b.x},
                                         {turned ? across_b : across_a, turned ? across_a : across_b},
                                         corner[i].beyond,
                                         0};
        if (!frame_outline_add_edge(outline, &edge)) return 0;
    }
    return 1;
}

static int collect(frame_outline *outline, const frame_solid *solid, int plane, int on, double y0, double z0) {
    frame_cell_view view;
    for (size_t i = 0; i < frame_solid_cell_count(solid); i++) {
        if (!frame_solid_look(solid, i, &view)) continue;
        for (int k = 0; k < view.face_count; k++)
            if (view.faces[k].plane == plane && !add_face_edges(outline, &view, &view.faces[k], on, y0, z0)) return 0;
    }
    return 1;
}

static int add_line(frame_outline *outline, const frame_outline_event *from, const frame_outline_event *to,
                    int beyond) {
    const double dx = to->x - from->x, dacross = to->across - from->across;
    if (dx * dx + dacross * dacross < FRAME_TOUCH * FRAME_TOUCH) return 1;
    frame_outline_line *line = frame_pool_add(&outline->lines, 1);
    if (!line) return 0;
    *line = (frame_outline_line){{from->x, to->x}, {from->across, to->across}, beyond, 0};
    return 1;
}

static int add_event(frame_outline *outline, double at, double x, double across, int step) {
    if (!frame_pool_add(&outline->events, 1)) return 0;
    frame_outline_event *events = outline->events.items;
    size_t i = outline->events.count - 1;
    for (; i && events[i - 1].at > at; i--) events[i] = events[i - 1];
    events[i] = (frame_outline_event){at, x, across, step};
    return 1;
}

/* The starts and ends of edges along the direction of the longest. */
static int add_events(frame_outline *outline, const frame_outline_line *edges, size_t count) {
    double dx = 0, dacross = 0;
    for (size_t i = 0; i < count; i++) {
        const double ex = edges[i].x[1] - edges[i].x[0], eacross = edges[i].across[1] - edges[i].across[0];
        if (ex * ex + eacross * eacross > dx * dx + dacross * dacross) dx = ex, dacross = eacross;
    }
    const double length = sqrt(dx * dx + dacross * dacross);
    outline->events.count = 0;
    if (!(length > 0)) return 1;
    for (size_t i = 0; i < count; i++)
        for (int end = 0; end < 2; end++) {
            const double at = (edges[i].x[end] * dx + edges[i].across[end] * dacross) / length;
            if (!add_event(outline, at, edges[i].x[end], edges[i].across[end], end ? -1 : 1)) return 0;
        }
    return 1;
}

/* Goes along the events: where the sum is not 0 there is an edge that nothing cancels. */
static int sum_up(frame_outline *outline, int beyond) {
    const frame_outline_event *events = outline->events.items, *from = events;
    int sum = 0;
    for (size_t i = 0; i < outline->events.count;) {
        const frame_outline_event *here = &events[i];
        int step = 0;
        for (; i < outline->events.count && events[i].at < here->at + FRAME_TOUCH; i++) step += events[i].step;
        if (!step) continue;
        if (sum > 0 && !add_line(outline, from, here, beyond)) return 0;
        if (sum < 0 && !add_line(outline, here, from, beyond)) return 0;
        sum += step;
        from = here;
    }
    return 1;
}

static int add_lines(frame_outline *outline, const frame_outline_line *edges, size_t count) {
    if (count == 1) {
        const frame_outline_event from = {0, edges->x[0], edges->across[0], 0},
                                  to = {0, edges->x[1], edges->across[1], 0};
        return add_line(outline, &from, &to, edges->beyond);
    }
    return add_events(outline, edges, count) && sum_up(outline, edges->beyond);
}

frame_status frame_outline_cancel(frame_outline *outline) {
    const frame_outline_line *edges = outline->edges.items;
    outline->lines.count = 0;
    for (size_t i = 0, next; i < outline->edges.count; i = next) {
        for (next = i + 1; next < outline->edges.count && edges[next].beyond == edges[i].beyond; next++) continue;
        if (!add_lines(outline, edges + i, next - i)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

frame_status frame_outline_lines(frame_outline *outline, const frame_solid *solid, int plane, int face, double y0,
                                 double z0) {
    outline->edges.count = 0;
    if (!collect(outline, solid, plane, face, y0, z0)) return FRAME_NO_MEMORY;
    return frame_outline_cancel(outline);
}
