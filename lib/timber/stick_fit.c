/* How two placed sticks fit: what space they share. Each cell of the one is cut down to each cell of the other. */
#include "base/error.h"
#include "timber/meet.h"
#include "timber_facts.h"

frame_plane frame_plane_brought(const frame_stick *to, const frame_stick *from, const frame_plane *plane, int side) {
    const vec3 world = frame_to_world_direction(&from->placement, vec_times(plane->normal, side));
    const vec3 apart = vec_less(to->placement.origin, from->placement.origin);
    return (frame_plane){frame_to_stick_direction(&to->placement, world), side * plane->at - vec_dot(world, apart)};
}

/* A copy of a cell with its planes numbered by its faces, so that numbers from its face count on are free. */
static void copy_cell(const frame_cell_view *view, frame_cell *cell) {
    uint8_t face_of[256];
    for (int i = 0; i < view->face_count; i++) {
        face_of[view->faces[i].plane] = (uint8_t)i;
        cell->faces[i] = view->faces[i];
        cell->faces[i].plane = (uint8_t)i;
    }
    for (int i = 0; i < view->corner_count; i++)
        cell->corners[i] = (frame_cell_corner){view->corners[i].vertex, face_of[view->corners[i].beyond]};
    for (int i = 0; i < view->vertex_count; i++) cell->vertices[i] = view->vertices[i];
    cell->vertex_count = view->vertex_count;
    cell->face_count = view->face_count;
    cell->corner_count = view->corner_count;
}

frame_status frame_cells_shared(const frame_stick *stick, const frame_cell_view *cell, const frame_stick *other,
                                const frame_cell_view *by, frame_moments *sum) {
    frame_cell work[2];
    int here = 0;
    copy_cell(cell, &work[0]);
    for (int i = 0; i < by->face_count; i++) {
        const frame_plane plane = frame_plane_brought(
            stick, other, frame_solid_plane_at(&other->solid, by->faces[i].plane), by->faces[i].side);
        const frame_cell_view view = frame_cell_look(&work[here]);
        const frame_cell_parts found =
            frame_cell_split(&view, &plane, (uint8_t)(cell->face_count + i), &work[1 - here], NULL);
        if (found < 0) return frame_solid_split_failed(found);
        if (found == CELL_OVER) return FRAME_OK;
        if (found == CELL_BOTH) here = 1 - here;
    }
    const frame_cell_view view = frame_cell_look(&work[here]);
    frame_cell_measure(&view, sum);
    return FRAME_OK;
}

/* The middle of a stick in the world, and how far its corners are from it at most. */
static vec3 middle(const frame_stick *stick, double *reach) {
    const vec3 half = {(stick->high - stick->low) / 2, (stick->y[1] - stick->y[0]) / 2,
                       (stick->z[1] - stick->z[0]) / 2};
    *reach = vec_length(half);
    return frame_to_world(&stick->placement, (vec3){stick->low + half.x, stick->y[0] + half.y, stick->z[0] + half.z});
}

int frame_sticks_near(const frame_stick *first, const frame_stick *second, double least) {
    double reach, reach_other;
    const vec3 a = middle(first, &reach), b = middle(second, &reach_other);
    return vec_length(vec_less(a, b)) < reach + reach_other + least;
}

frame_status frame_stick_fit_sized(const frame_stick *stick, const frame_stick *other, frame_stick_fit_out *out,
                                   size_t out_size) {
    if (!stick || !other || !out || out_size < 2 * sizeof(uint32_t)) return frame_no_stick();
    frame_meeting meeting = {0, 0, NULL, NULL};
    frame_stick_fit_out fit = frame_stick_fit_out_blank;
    frame_status status = frame_stick_meet(stick, other, &meeting);
    if (status) return status;
    fit.overlap_in3 = meeting.overlap;
    fit.contact_in2 = meeting.contact;
    fit.gap_in = meeting.overlap > 0 || meeting.contact > 0 ? 0 : frame_stick_gap(stick, other);
    frame_struct_give(&frame_stick_fit_out_facts, &fit, out, out_size);
    return FRAME_OK;
}
