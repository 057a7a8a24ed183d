/* Short ways to draw the figures of docs/conventions.md. Each stops the test when the library refuses. */
#ifndef FRAME_TESTS_FIGURE_H
#define FRAME_TESTS_FIGURE_H

#include <frame/drawing.h>

#include "make_stick.h"

static inline void must(frame_status status) {
    ck_assert_msg(status == FRAME_OK, "%s", frame_error_text());
}

static inline void line(frame_drawing *d, double x1, double y1, double x2, double y2, frame_pen pen) {
    must(frame_drawing_line(d, x1, y1, x2, y2, pen));
}

static inline void box(frame_drawing *d, double x1, double y1, double x2, double y2, frame_hatch hatch) {
    must(frame_drawing_rectangle(d, x1, y1, x2, y2, FRAME_PEN_OUTLINE, hatch));
}

static inline void area(frame_drawing *d, const double (*points)[2], int count, frame_pen pen, frame_hatch hatch) {
    for (int i = 0; i < count; i++) must(frame_drawing_point(d, points[i][0], points[i][1]));
    must(frame_drawing_polygon(d, pen, hatch));
}

static inline void label(frame_drawing *d, double x, double y, const char *text) {
    must(frame_drawing_label(d, x, y, text));
}

static inline void words(frame_drawing *d, double x, double y, const char *text, frame_anchor anchor) {
    must(frame_drawing_text(d, x, y, text, anchor, 0, FRAME_LETTERING_NOTE));
}

static inline void measure(frame_drawing *d, double x1, double y1, double x2, double y2, frame_dimension_side side,
                           const char *text) {
    must(frame_drawing_dimension(d, x1, y1, x2, y2, side, text));
}

/* A line with a head of two strokes at its end. */
static inline void arrow(frame_drawing *d, double x1, double y1, double x2, double y2, double head) {
    const double angle = atan2(y2 - y1, x2 - x1);
    line(d, x1, y1, x2, y2, FRAME_PEN_THIN);
    for (int side = -1; side <= 1; side += 2)
        line(d, x2, y2, x2 - head * cos(angle + side * 0.35), y2 - head * sin(angle + side * 0.35), FRAME_PEN_THIN);
}

/* A rafter in elevation as the kernel cuts it, its axis in the roof plane from x, z uphill; the outline of its right
 * face, which is the one seen with the eave on the left. */
static inline void elevation(frame_drawing *d, const frame_stick *stick, double x, double z, double angle, double depth,
                             frame_hatch hatch) {
    const double low = lengths_of(stick).start_long_point_x_in;
    for (size_t i = 0; i < frame_stick_corner_count(stick); i++) {
        frame_stick_corner corner;
        must(frame_stick_corner_at(stick, i, &corner));
        if (corner.face != FRAME_STICK_RIGHT) continue;
        const double along = corner.along_in + low, up = corner.across_in - depth;
        must(
            frame_drawing_point(d, x + along * cos(angle) - up * sin(angle), z + along * sin(angle) + up * cos(angle)));
    }
    must(frame_drawing_polygon(d, FRAME_PEN_OUTLINE, hatch));
}

/* A common rafter in the building's axes: roof plane z = height + slope x, plumb cuts at two places, and a birdsmouth
 * over a plate whose outside is at x 0 and top at z 0. */
static inline frame_stick *common_rafter(double slope, double height, double depth, double tail, double head,
                                         double turn) {
    frame_stick_in in = stick_in(1.5, depth, FRAME_NOT_GIVEN);
    in.name = turn != 0 ? "jack 1 left" : "common rafter";
    in.axis_at = FRAME_STICK_AXIS_TOP;
    in.start_x_in = tail, in.start_z_in = height + slope * tail;
    in.end_x_in = head, in.end_y_in = 0, in.end_z_in = height + slope * head;
    frame_stick_plane planes[4] = {plane_at(FRAME_STICK_PLUMB_CUT, tail, 0, 0, -1, 0, 0),
                                   plane_at(FRAME_STICK_PLUMB_CUT, head, 0, 0, 1, tan(turn), 0),
                                   plane_at(FRAME_STICK_SEAT, 0, 0, 0, 0, 0, -1),
                                   plane_at(FRAME_STICK_HEEL_CUT, 0, 0, 0, 1, 0, 0)};
    if (turn != 0) planes[1].role = FRAME_STICK_CHEEK_CUT;
    for (int i = 0; i < 4; i++) planes[i].axes = FRAME_STICK_AXES_WORLD;
    planes[2].notch = planes[3].notch = 1;
    planes[2].notch_kind = planes[3].notch_kind = FRAME_STICK_BIRDSMOUTH;
    in.planes = planes;
    in.plane_count = 4;
    return stick_of(&in);
}

/* A wall of studs under a double plate, its framing's outside at x. into: 1 when the building is to the right. */
static inline void wall(frame_drawing *d, double x, double width, double down, int into) {
    const double inside = x + into * width;
    box(d, x, -1.5, inside, 0, FRAME_HATCH_END_GRAIN);
    box(d, x, -3, inside, -1.5, FRAME_HATCH_END_GRAIN);
    line(d, x, -3, x, -down, FRAME_PEN_OUTLINE);
    line(d, inside, -3, inside, -down, FRAME_PEN_OUTLINE);
}

#endif
