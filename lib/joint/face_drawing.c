/* The face of a member with its fasteners: end, edge and row distances on one tape from the near end and one from the
 * lower edge. */
#include <math.h>

#include "joint/geometry.h"

enum { MOST_MARKS = 60 };

/* Marks in order, none twice. */
typedef struct marks {
    double at[MOST_MARKS];
    int count;
} marks;

static void mark(marks *list, double at) {
    int i = list->count;
    for (int k = 0; k < list->count; k++)
        if (fabs(list->at[k] - at) < 1e-6) return;
    if (list->count == MOST_MARKS) return;
    for (; i > 0 && list->at[i - 1] > at; i--) list->at[i] = list->at[i - 1];
    list->at[i] = at;
    list->count++;
}

static frame_status cross(frame_drawing *drawing, const frame_spot *at, double radius) {
    const double arm = 1.8 * radius;
    frame_status status = frame_drawing_circle(drawing, at->x, at->y, radius, FRAME_PEN_OUTLINE, FRAME_HATCH_BLANK);
    if (!status) status = frame_drawing_line(drawing, at->x - arm, at->y, at->x + arm, at->y, FRAME_PEN_THIN);
    if (!status) status = frame_drawing_line(drawing, at->x, at->y - arm, at->x, at->y + arm, FRAME_PEN_THIN);
    return status;
}

static frame_status run(frame_drawing *drawing, const marks *list, double across, int level) {
    frame_status status = FRAME_OK;
    if (list->count < 2) return FRAME_OK;
    for (int i = 0; i < list->count && !status; i++)
        status = frame_drawing_mark(drawing, level ? list->at[i] : across, level ? across : list->at[i], "");
    if (status) return status;
    return frame_drawing_dimension_running(drawing, level ? FRAME_DIMENSION_BELOW : FRAME_DIMENSION_LEFT);
}

/* A member whose far end is not given is broken off beyond the last fastener. */
static frame_status member(frame_drawing *drawing, const frame_face *face, double last, double *end) {
    const double h = face->width_in, open = last + fmax(2, h / 2), wave = h / 24;
    *end = face->far_in != FRAME_NOT_GIVEN ? face->far_in : open;
    if (face->far_in != FRAME_NOT_GIVEN)
        return frame_drawing_rectangle(drawing, 0, 0, face->far_in, h, FRAME_PEN_CUT, FRAME_HATCH_NONE);
    const double at[][2] = {{open, 0}, {0, 0}, {0, h}, {open, h}};
    frame_status status = FRAME_OK;
    for (int i = 0; i < 4 && !status; i++) status = frame_drawing_point(drawing, at[i][0], at[i][1]);
    if (!status) status = frame_drawing_polyline(drawing, FRAME_PEN_CUT);
    const double broken[][2] = {{open, 0},        {open, 0.42 * h}, {open + wave, 0.46 * h}, {open - wave, 0.54 * h},
                                {open, 0.58 * h}, {open, h}};
    for (int i = 0; i < 6 && !status; i++) status = frame_drawing_point(drawing, broken[i][0], broken[i][1]);
    return status ? status : frame_drawing_polyline(drawing, FRAME_PEN_THIN);
}

frame_status frame_face_draw(frame_drawing *drawing, const frame_face *face, const frame_spot *spots, size_t count,
                             const char *title) {
    marks level = {{0}, 1}, plumb = {{0}, 1};
    double last = 0, end;
    for (size_t i = 0; i < count; i++) {
        last = fmax(last, spots[i].x);
        mark(&level, spots[i].x);
        mark(&plumb, spots[i].y);
    }
    mark(&plumb, face->width_in);
    if (face->far_in != FRAME_NOT_GIVEN) mark(&level, face->far_in);
    frame_status status = frame_drawing_title(drawing, title);
    if (!status) status = member(drawing, face, last, &end);
    const double radius = fmax(face->diameter_in / 2, face->width_in / 60);
    for (size_t i = 0; i < count && !status; i++) status = cross(drawing, &spots[i], radius);
    if (!status)
        status = frame_drawing_label(drawing, fmin(end, last + 1) / 2, face->width_in * 0.85, "grain runs level");
    if (!status) status = run(drawing, &level, 0, 1);
    return status ? status : run(drawing, &plumb, 0, 0);
}
