/* Drawing of lines, areas, lettering: each call checks its facts and adds one item to the list. */
#include <math.h>

#include "base/error.h"
#include "drawing/list.h"

static frame_status check_pen(frame_pen pen) {
    if (pen >= FRAME_PEN_CUT && pen <= FRAME_PEN_DIMENSION) return FRAME_OK;
    return frame_fail_number(FRAME_UNKNOWN_NAME, "pen", pen, "cut, outline, thin, hidden, centre, dimension");
}

static frame_status check_hatch(frame_hatch hatch) {
    if (hatch >= FRAME_HATCH_NONE && hatch <= FRAME_HATCH_EARTH) return FRAME_OK;
    return frame_fail_number(FRAME_UNKNOWN_NAME, "hatch", hatch,
                             "none, blank, solid, end grain, side grain, panel, concrete, steel, insulation, earth");
}

static frame_status check_radius(double radius_in) {
    if (isfinite(radius_in) && radius_in <= 0)
        return frame_fail_number(FRAME_OUT_OF_RANGE, "radius_in", radius_in, ">0..1000000");
    return drawing_check("radius_in", radius_in, 0, DRAWING_REACH_IN, ">0..1000000");
}

frame_status frame_drawing_line(frame_drawing *drawing, double x1_in, double y1_in, double x2_in, double y2_in,
                                frame_pen pen) {
    const drawing_point ends[] = {{x1_in, y1_in, NULL}, {x2_in, y2_in, NULL}};
    frame_status status = drawing_check_point("x1_in", x1_in, "y1_in", y1_in);
    if (!status) status = drawing_check_point("x2_in", x2_in, "y2_in", y2_in);
    if (!status) status = check_pen(pen);
    return status ? status : drawing_add(drawing, (drawing_item){.kind = DRAWING_PATH, .pen = pen}, ends, 2);
}

frame_status frame_drawing_point(frame_drawing *drawing, double x_in, double y_in) {
    const drawing_point corner = {x_in, y_in, NULL};
    const frame_status status = drawing_check_point("x_in", x_in, "y_in", y_in);
    if (status) return status;
    return frame_array_push(&drawing->path, &corner) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* Ends the path as an item. A path too short is dropped all the same, so that it does not run into the next. */
static frame_status end_path(frame_drawing *drawing, drawing_item item, size_t least) {
    const size_t count = drawing->path.count;
    drawing->path.count = 0;
    if (count < least)
        return frame_fail_number(FRAME_IMPOSSIBLE, "path", (double)count,
                                 least == 2 ? "2 points or more" : "3 points or more");
    return drawing_add(drawing, item, drawing->path.items, count);
}

frame_status frame_drawing_polyline(frame_drawing *drawing, frame_pen pen) {
    const frame_status status = check_pen(pen);
    return status ? status : end_path(drawing, (drawing_item){.kind = DRAWING_PATH, .pen = pen}, 2);
}

frame_status frame_drawing_polygon(frame_drawing *drawing, frame_pen pen, frame_hatch hatch) {
    frame_status status = check_pen(pen);
    if (!status) status = check_hatch(hatch);
    return status ? status : end_path(drawing, (drawing_item){.kind = DRAWING_AREA, .pen = pen, .hatch = hatch}, 3);
}

frame_status frame_drawing_rectangle(frame_drawing *drawing, double x1_in, double y1_in, double x2_in, double y2_in,
                                     frame_pen pen, frame_hatch hatch) {
    const drawing_point corners[] = {
        {x1_in, y1_in, NULL}, {x2_in, y1_in, NULL}, {x2_in, y2_in, NULL}, {x1_in, y2_in, NULL}};
    frame_status status = drawing_check_point("x1_in", x1_in, "y1_in", y1_in);
    if (!status) status = drawing_check_point("x2_in", x2_in, "y2_in", y2_in);
    if (!status) status = check_pen(pen);
    if (!status) status = check_hatch(hatch);
    if (status) return status;
    return drawing_add(drawing, (drawing_item){.kind = DRAWING_AREA, .pen = pen, .hatch = hatch}, corners, 4);
}

frame_status frame_drawing_circle(frame_drawing *drawing, double x_in, double y_in, double radius_in, frame_pen pen,
                                  frame_hatch hatch) {
    const drawing_point centre = {x_in, y_in, NULL};
    frame_status status = drawing_check_point("x_in", x_in, "y_in", y_in);
    if (!status) status = check_radius(radius_in);
    if (!status) status = check_pen(pen);
    if (!status) status = check_hatch(hatch);
    if (status) return status;
    const drawing_item item = {.kind = DRAWING_CIRCLE, .pen = pen, .hatch = hatch, .radius = radius_in};
    return drawing_add(drawing, item, &centre, 1);
}

frame_status frame_drawing_arc(frame_drawing *drawing, double x_in, double y_in, double radius_in, double from_deg,
                               double to_deg, frame_pen pen) {
    const drawing_point centre = {x_in, y_in, NULL};
    frame_status status = drawing_check_point("x_in", x_in, "y_in", y_in);
    if (!status) status = check_radius(radius_in);
    if (!status) status = drawing_check_directions(from_deg, to_deg);
    if (!status) status = check_pen(pen);
    if (status) return status;
    const drawing_item item = {.kind = DRAWING_ARC,
                               .pen = pen,
                               .radius = radius_in,
                               .from_deg = from_deg,
                               .to_deg = from_deg + drawing_sweep(from_deg, to_deg)};
    return drawing_add(drawing, item, &centre, 1);
}

frame_status frame_drawing_text(frame_drawing *drawing, double x_in, double y_in, const char *text, frame_anchor anchor,
                                double angle_deg, frame_lettering lettering) {
    drawing_item item = {.kind = DRAWING_TEXT, .anchor = anchor, .from_deg = angle_deg, .lettering = lettering};
    const drawing_point at = {x_in, y_in, NULL};
    frame_status status = drawing_check_point("x_in", x_in, "y_in", y_in);
    if (!status) status = drawing_check("angle_deg", angle_deg, -3600, 3600, "-3600..3600");
    if (status) return status;
    if (anchor < FRAME_ANCHOR_START || anchor > FRAME_ANCHOR_BELOW)
        return frame_fail_number(FRAME_UNKNOWN_NAME, "anchor", anchor, "start, middle, end, above, below");
    if (lettering < FRAME_LETTERING_NOTE || lettering > FRAME_LETTERING_HEADING)
        return frame_fail_number(FRAME_UNKNOWN_NAME, "lettering", lettering, "note, name, heading");
    status = drawing_keep_text(drawing, "text", text, &item.text);
    if (!status && !item.text) status = frame_fail(FRAME_REQUIRED, "text", "", "a text", "text: none was given");
    return status ? status : drawing_add(drawing, item, &at, 1);
}

frame_status frame_drawing_label(frame_drawing *drawing, double x_in, double y_in, const char *text) {
    drawing_item item = {.kind = DRAWING_LABEL, .lettering = FRAME_LETTERING_NOTE};
    const drawing_point at = {x_in, y_in, NULL};
    frame_status status = drawing_check_point("x_in", x_in, "y_in", y_in);
    if (!status) status = drawing_keep_text(drawing, "text", text, &item.text);
    if (!status && !item.text) status = frame_fail(FRAME_REQUIRED, "text", "", "a text", "text: none was given");
    return status ? status : drawing_add(drawing, item, &at, 1);
}
