/* Drawing of what measures: running dimensions, single ones, angles. */
#include <math.h>

#include "base/error.h"
#include "drawing/list.h"
#include "tape/tape.h"

frame_status drawing_check_directions(double from_deg, double to_deg) {
    const frame_status status = drawing_check("from_deg", from_deg, -3600, 3600, "-3600..3600");
    return status ? status : drawing_check("to_deg", to_deg, -3600, 3600, "-3600..3600");
}

double drawing_sweep(double from_deg, double to_deg) {
    const double turn = fmod(to_deg - from_deg, 360);
    return turn <= 0 ? turn + 360 : turn;
}

static frame_status check_side(frame_dimension_side side) {
    if (side >= FRAME_DIMENSION_ABOVE && side <= FRAME_DIMENSION_ALONG) return FRAME_OK;
    return frame_fail_number(FRAME_UNKNOWN_NAME, "side", side, "above, below, left, right, along");
}

/* The direction a dimension measures in: level, plumb, or from its first point to its last. */
static frame_status direction(frame_dimension_side side, const drawing_point *first, const drawing_point *last,
                              double *x, double *y) {
    *x = side == FRAME_DIMENSION_ABOVE || side == FRAME_DIMENSION_BELOW;
    *y = !*x;
    if (side != FRAME_DIMENSION_ALONG) return FRAME_OK;
    const double length = hypot(last->x - first->x, last->y - first->y);
    if (length == 0)
        return frame_fail(FRAME_IMPOSSIBLE, "side", "along", "two points apart",
                          "side: nothing can be measured along two points that are one");
    *x = (last->x - first->x) / length;
    *y = (last->y - first->y) / length;
    return FRAME_OK;
}

static frame_status write_distance(frame_drawing *drawing, double inches, const char **kept) {
    char chars[FRAME_TAPE_TEXT];
    frame_tape_write(inches, drawing->denominator, chars);
    return drawing_keep_text(drawing, "text", chars, kept);
}

frame_status frame_drawing_mark(frame_drawing *drawing, double x_in, double y_in, const char *text) {
    drawing_point mark = {x_in, y_in, NULL};
    frame_status status = drawing_check_point("x_in", x_in, "y_in", y_in);
    if (!status) status = drawing_keep_text(drawing, "text", text, &mark.text);
    if (status) return status;
    return frame_array_push(&drawing->marks, &mark) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* Writes the texts that were left to the library, and makes sure that the hook is an end: a tape reads one way. */
static frame_status read_tape(frame_drawing *drawing, drawing_point *marks, size_t count, frame_dimension_side side) {
    double x, y, low = 0, high = 0;
    frame_status status = direction(side, &marks[0], &marks[count - 1], &x, &y);
    for (size_t i = 0; i < count && !status; i++) {
        const double distance = (marks[i].x - marks[0].x) * x + (marks[i].y - marks[0].y) * y;
        low = fmin(low, distance);
        high = fmax(high, distance);
        if (!marks[i].text) status = write_distance(drawing, fabs(distance), &marks[i].text);
    }
    if (!status && low < 0 && high > 0)
        return frame_fail(FRAME_IMPOSSIBLE, "marks", "", "a first mark at one end",
                          "marks: the tape is hooked between the marks; the first must be an end");
    return status;
}

frame_status frame_drawing_dimension_running(frame_drawing *drawing, frame_dimension_side side) {
    const size_t count = drawing->marks.count;
    drawing_point *marks = drawing->marks.items;
    drawing->marks.count = 0;
    frame_status status = check_side(side);
    if (!status && count < 2) status = frame_fail_number(FRAME_IMPOSSIBLE, "marks", (double)count, "2 marks or more");
    if (!status) status = read_tape(drawing, marks, count, side);
    if (status) return status;
    const drawing_item item = {.kind = DRAWING_RUNNING, .pen = FRAME_PEN_DIMENSION, .side = side};
    return drawing_add(drawing, item, marks, count);
}

frame_status frame_drawing_dimension(frame_drawing *drawing, double x1_in, double y1_in, double x2_in, double y2_in,
                                     frame_dimension_side side, const char *text) {
    drawing_point ends[] = {{x1_in, y1_in, NULL}, {x2_in, y2_in, NULL}};
    double x, y;
    frame_status status = drawing_check_point("x1_in", x1_in, "y1_in", y1_in);
    if (!status) status = drawing_check_point("x2_in", x2_in, "y2_in", y2_in);
    if (!status) status = check_side(side);
    if (!status) status = direction(side, &ends[0], &ends[1], &x, &y);
    if (!status) status = drawing_keep_text(drawing, "text", text, &ends[1].text);
    if (status) return status;
    const double distance = fabs((x2_in - x1_in) * x + (y2_in - y1_in) * y);
    if (!ends[1].text) status = write_distance(drawing, distance, &ends[1].text);
    if (status) return status;
    const drawing_item item = {.kind = DRAWING_DIMENSION, .pen = FRAME_PEN_DIMENSION, .side = side};
    return drawing_add(drawing, item, ends, 2);
}

/* An angle left to the library, in degrees to a tenth: what a saw's scale can be set to. */
static frame_status write_angle(frame_drawing *drawing, double degrees, const char **kept) {
    char chars[FRAME_TAPE_TEXT];
    frame_angle_write(degrees, 1, chars);
    return drawing_keep_text(drawing, "text", chars, kept);
}

frame_status frame_drawing_angle(frame_drawing *drawing, double x_in, double y_in, double from_deg, double to_deg,
                                 const char *text) {
    drawing_item item = {.kind = DRAWING_ANGLE, .pen = FRAME_PEN_DIMENSION, .from_deg = from_deg};
    const drawing_point at = {x_in, y_in, NULL};
    frame_status status = drawing_check_point("x_in", x_in, "y_in", y_in);
    if (!status) status = drawing_check_directions(from_deg, to_deg);
    if (!status) status = drawing_keep_text(drawing, "text", text, &item.text);
    if (status) return status;
    const double turn = drawing_sweep(from_deg, to_deg);
    item.to_deg = from_deg + turn;
    if (!item.text) status = write_angle(drawing, turn, &item.text);
    return status ? status : drawing_add(drawing, item, &at, 1);
}
