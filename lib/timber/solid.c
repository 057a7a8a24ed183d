/* The solid as a list of convex cells: keeping them, and taking notches out of them. */
#include "timber/solid.h"

#include <string.h>

#include "base/error.h"

void frame_solid_begin(frame_solid *solid) {
    frame_pool_begin(&solid->planes, solid->plane_room, sizeof solid->plane_room, sizeof(frame_plane));
    frame_pool_begin(&solid->vertices, solid->vertex_room, sizeof solid->vertex_room, sizeof(vec3));
    frame_pool_begin(&solid->faces, solid->face_room, sizeof solid->face_room, sizeof(frame_cell_face));
    frame_pool_begin(&solid->corners, solid->corner_room, sizeof solid->corner_room, sizeof(frame_cell_corner));
    frame_pool_begin(&solid->cells, solid->cell_room, sizeof solid->cell_room, sizeof(frame_solid_cell));
}

void frame_solid_give(frame_solid *solid) {
    frame_pool_give(&solid->planes);
    frame_pool_give(&solid->vertices);
    frame_pool_give(&solid->faces);
    frame_pool_give(&solid->corners);
    frame_pool_give(&solid->cells);
}

/* The normals must agree so well that the planes still do at the far end of a long stick. */
static int coincide(const frame_plane *a, const frame_plane *b, int side) {
    return fabs(a->at - side * b->at) < FRAME_TOUCH &&
           vec_length(vec_less(a->normal, vec_times(b->normal, side))) < 1e-12;
}

int frame_solid_plane(frame_solid *solid, const frame_plane *plane, int *side) {
    for (size_t i = 0; i < solid->planes.count; i++) {
        *side = vec_dot(frame_solid_plane_at(solid, (int)i)->normal, plane->normal) < 0 ? -1 : 1;
        if (coincide(frame_solid_plane_at(solid, (int)i), plane, *side)) return (int)i;
    }
    frame_plane *place = solid->planes.count < SOLID_PLANES ? frame_pool_add(&solid->planes, 1) : NULL;
    if (!place) return -1;
    *place = *plane;
    *side = 1;
    return (int)solid->planes.count - 1;
}

static frame_status keep(frame_solid *solid, const frame_cell *cell) {
    frame_solid_cell record = {.vertex = (uint32_t)solid->vertices.count, .face = (uint32_t)solid->faces.count};
    record.corner = (uint32_t)solid->corners.count;
    record.vertex_count = (uint16_t)cell->vertex_count;
    record.face_count = (uint16_t)cell->face_count;
    record.corner_count = (uint16_t)cell->corner_count;
    void *vertices = frame_pool_add(&solid->vertices, record.vertex_count);
    void *faces = frame_pool_add(&solid->faces, record.face_count);
    void *corners = frame_pool_add(&solid->corners, record.corner_count);
    frame_solid_cell *place = frame_pool_add(&solid->cells, 1);
    if (!vertices || !faces || !corners || !place) return FRAME_NO_MEMORY;
    memcpy(vertices, cell->vertices, record.vertex_count * sizeof *cell->vertices);
    memcpy(faces, cell->faces, record.face_count * sizeof *cell->faces);
    memcpy(corners, cell->corners, record.corner_count * sizeof *cell->corners);
    *place = record;
    return FRAME_OK;
}

frame_status frame_solid_start(frame_solid *solid, const frame_cell *cell) {
    solid->vertices.count = solid->faces.count = solid->corners.count = solid->cells.count = 0;
    return keep(solid, cell);
}

size_t frame_solid_cell_count(const frame_solid *solid) {
    return solid->cells.count;
}

int frame_solid_look(const frame_solid *solid, size_t place, frame_cell_view *view) {
    const frame_solid_cell *cell = &FRAME_POOL_ITEM(const frame_solid_cell, solid->cells, place);
    *view = (frame_cell_view){&FRAME_POOL_ITEM(const vec3, solid->vertices, cell->vertex),
                              &FRAME_POOL_ITEM(const frame_cell_face, solid->faces, cell->face),
                              &FRAME_POOL_ITEM(const frame_cell_corner, solid->corners, cell->corner),
                              cell->vertex_count,
                              cell->face_count,
                              cell->corner_count};
    return !cell->gone;
}

void frame_solid_measure(const frame_solid *solid, frame_moments *sum) {
    frame_cell_view view;
    for (size_t i = 0; i < solid->cells.count; i++)
        if (frame_solid_look(solid, i, &view)) frame_cell_measure(&view, sum);
}

void frame_solid_extent(const frame_solid *solid, double *low, double *high) {
    frame_cell_view view;
    *low = HUGE_VAL;
    *high = -HUGE_VAL;
    for (size_t i = 0; i < solid->cells.count; i++)
        for (int k = 0; frame_solid_look(solid, i, &view) && k < view.vertex_count; k++) {
            *low = fmin(*low, view.vertices[k].x);
            *high = fmax(*high, view.vertices[k].x);
        }
}

frame_status frame_solid_split_failed(frame_cell_parts found) {
    if (found == CELL_TOO_LARGE)
        return frame_fail(FRAME_TOO_LARGE, "planes", "", "at most 60 planes round one convex part of a stick",
                          "planes: more than 60 of them bound one convex part of the stick");
    return frame_fail(FRAME_INTERNAL, "planes", "", "", "planes: a piece of the stick does not close");
}

static frame_status remove_cell(frame_solid *solid, size_t place) {
    FRAME_POOL_ITEM(frame_solid_cell, solid->cells, place).gone = 1;
    return FRAME_OK;
}

/* One cell against the notch: what lies under a bound stays, what lies over it meets the next. A notch that misses the
 * cell after all leaves it whole. */
static frame_status notch_cell(frame_solid *solid, size_t place, const frame_solid_bound *bounds, size_t count) {
    frame_cell work[3];
    frame_cell_view view;
    int rest = 1; /* which of work[1], work[2] is free to take what lies over */
    const size_t before[4] = {solid->vertices.count, solid->faces.count, solid->corners.count, solid->cells.count};
    if (!frame_solid_look(solid, place, &view)) return FRAME_OK;
    for (size_t i = 0; i < count; i++) {
        const frame_plane *plane = frame_solid_plane_at(solid, bounds[i].plane);
        const int last = i + 1 == count; /* what lies inside all bounds is the waste: nobody wants it */
        frame_cell *out = &work[0], *in = last ? NULL : &work[rest];
        frame_cell *under = bounds[i].side > 0 ? out : in, *over = bounds[i].side > 0 ? in : out;
        const frame_cell_parts found = frame_cell_split(&view, plane, (uint8_t)bounds[i].plane, under, over);
        if (found < 0) return frame_solid_split_failed(found);
        if (found == (bounds[i].side > 0 ? CELL_UNDER : CELL_OVER)) {
            solid->vertices.count = before[0], solid->faces.count = before[1];
            solid->corners.count = before[2], solid->cells.count = before[3];
            return FRAME_OK;
        }
        if (found != CELL_BOTH) continue;
        const frame_status status = keep(solid, out);
        if (status || last) return status ? status : remove_cell(solid, place);
        view = frame_cell_look(in);
        rest = 3 - rest;
    }
    return remove_cell(solid, place);
}

frame_status frame_solid_notch(frame_solid *solid, const frame_solid_bound *bounds, size_t count) {
    const size_t cells = solid->cells.count;
    for (size_t i = 0; i < cells; i++) {
        const frame_status status = notch_cell(solid, i, bounds, count);
        if (status) return status;
    }
    return FRAME_OK;
}
