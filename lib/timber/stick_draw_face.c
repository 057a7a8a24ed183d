/* The lines of one view of a stick: the face itself, the cuts seen behind it, and where to saw. */
#include "timber/outline.h"
#include "timber/stick_drawing.h"

static frame_status draw_outline(const frame_stick_view *view) {
    const frame_stick *stick = view->stick;
    const frame_stick_point *corners = stick->corners.items;
    frame_status status = FRAME_OK;
    for (size_t i = 0; !status && i < stick->corners.count; i++) {
        if (corners[i].face != frame_stick_face_of[view->face]) continue;
        status = frame_drawing_point(view->drawing, frame_stick_running(stick, corners[i].x),
                                     frame_stick_up(view, corners[i].across));
        const int last = i + 1 == stick->corners.count || corners[i + 1].face != corners[i].face ||
                         corners[i + 1].group != corners[i].group;
        if (!status && last) status = frame_drawing_polygon(view->drawing, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    }
    return status;
}

/* The point of a record's plane that is seen at a point of the face. */
static vec3 behind(const frame_stick_view *view, const frame_stick_record *record, vec3 outward, double x,
                   double across) {
    const vec3 point = frame_stick_point_on(view->stick, view->face, x, across);
    const double depth = -vec_beyond(&record->plane, point) / vec_dot(record->plane.normal, outward);
    return vec_add(point, vec_times(outward, depth));
}

/* The lines round the face that a plane leaves, where it is seen from the view's side. */
static frame_status draw_cut_face(const frame_stick_view *view, frame_outline *outline,
                                  const frame_stick_record *record) {
    const frame_stick *stick = view->stick;
    const vec3 outward = frame_solid_plane_at(&stick->solid, view->face)->normal;
    if (vec_dot(record->plane.normal, outward) < 1e-9) return FRAME_OK;
    frame_status status =
        frame_outline_lines(outline, &stick->solid, record->number, view->face, stick->y[0], stick->z[0]);
    const frame_outline_line *lines = outline->lines.items;
    for (size_t i = 0; !status && i < outline->lines.count; i++) {
        const double x = (lines[i].x[0] + lines[i].x[1]) / 2, across = (lines[i].across[0] + lines[i].across[1]) / 2;
        if (!frame_stick_in_notch(stick, record, behind(view, record, outward, x, across))) continue;
        status = frame_drawing_line(view->drawing, frame_stick_running(stick, lines[i].x[0]),
                                    frame_stick_up(view, lines[i].across[0]), frame_stick_running(stick, lines[i].x[1]),
                                    frame_stick_up(view, lines[i].across[1]), FRAME_PEN_OUTLINE);
    }
    return status;
}

static frame_status draw_cut_faces(const frame_stick_view *view) {
    frame_outline outline;
    frame_status status = FRAME_OK;
    frame_outline_begin(&outline);
    for (size_t i = 0; !status && i < frame_stick_saw_count(view->stick); i++)
        status = draw_cut_face(view, &outline, frame_stick_record_at(view->stick, i));
    frame_outline_give(&outline);
    return status;
}

/* The lines to saw: the two ends of each stand somewhere in the list of marks. */
static frame_status draw_saw_lines(const frame_stick_view *view) {
    const frame_stick_point *marks = view->stick->marks.items;
    const size_t count = view->stick->marks.count;
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < count; i++) {
        if (marks[i].face != frame_stick_face_of[view->face]) continue;
        for (size_t k = i + 1; !status && k < count; k++)
            if (marks[k].group == marks[i].group)
                status = frame_drawing_line(
                    view->drawing, frame_stick_running(view->stick, marks[i].x), frame_stick_up(view, marks[i].across),
                    frame_stick_running(view->stick, marks[k].x), frame_stick_up(view, marks[k].across), FRAME_PEN_CUT);
    }
    return status;
}

frame_status frame_stick_draw_face(const frame_stick_view *view) {
    frame_status status = draw_outline(view);
    if (!status) status = draw_cut_faces(view);
    return status ? status : draw_saw_lines(view);
}

/* One edge's marks on one tape, hooked at the long point that all are measured from. Points within the face are read at
 * the edge they are nearer to. */
static frame_status draw_running(const frame_stick_view *view, int upper) {
    const frame_stick *stick = view->stick;
    const frame_stick_point *marks = stick->marks.items;
    frame_status status = frame_drawing_mark(view->drawing, 0, upper ? view->height : 0, NULL);
    double last = 0;
    for (size_t i = 0; !status && i < stick->marks.count; i++) {
        const double along = frame_stick_running(stick, marks[i].x), up = frame_stick_up(view, marks[i].across);
        if (marks[i].face != frame_stick_face_of[view->face] || (up > view->height / 2) != upper) continue;
        if (along < last + 1e-6) continue;
        status = frame_drawing_mark(view->drawing, along, up, NULL);
        last = along;
    }
    if (status) return status;
    if (last == 0) status = frame_drawing_mark(view->drawing, stick->high - stick->low, upper ? view->height : 0, NULL);
    return status
               ? status
               : frame_drawing_dimension_running(view->drawing, upper ? FRAME_DIMENSION_ABOVE : FRAME_DIMENSION_BELOW);
}

/* Whether every mark has one straight across from it, so that one tape says it all. */
static int edges_alike(const frame_stick_view *view) {
    const frame_stick_point *marks = view->stick->marks.items;
    for (size_t i = 0; i < view->stick->marks.count; i++) {
        int found = 0;
        for (size_t k = 0; k < view->stick->marks.count && !found; k++)
            found = k != i && marks[k].face == marks[i].face && marks[k].group == marks[i].group &&
                    fabs(marks[k].x - marks[i].x) < 1e-6;
        if (!found && marks[i].face == frame_stick_face_of[view->face]) return 0;
    }
    return 1;
}

frame_status frame_stick_draw_running(const frame_stick_view *view) {
    const frame_status status = draw_running(view, 0);
    return status || edges_alike(view) ? status : draw_running(view, 1);
}
