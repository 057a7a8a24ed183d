/* The life of a drawing, its settings, its views, and the ways into its list. */
#include "drawing/list.h"

#include <math.h>
#include <string.h>

#include "base/error.h"
#include "base/utf8.h"

static void set_up(frame_drawing *drawing) {
    drawing->items.item_size = sizeof(drawing_item);
    drawing->points.item_size = drawing->path.item_size = drawing->marks.item_size = sizeof(drawing_point);
    drawing->views.item_size = sizeof(drawing_view);
    drawing->breaks.item_size = sizeof(drawing_break);
    drawing->width_in = 7;
    drawing->height_in = 9;
    drawing->letter_pt = 9;
    drawing->denominator = 16;
}

frame_status frame_drawing_new(frame_drawing **drawing) {
    frame_drawing *made = frame_take_zeroed(1, sizeof *made);
    if (!made) return FRAME_NO_MEMORY;
    set_up(made);
    if (!frame_array_push(&made->views, NULL)) {
        frame_drawing_free(made);
        return FRAME_NO_MEMORY;
    }
    *drawing = made;
    return FRAME_OK;
}

void frame_drawing_free(frame_drawing *drawing) {
    if (!drawing) return;
    frame_arena_give(&drawing->texts);
    frame_array_give(&drawing->items);
    frame_array_give(&drawing->points);
    frame_array_give(&drawing->views);
    frame_array_give(&drawing->breaks);
    frame_array_give(&drawing->path);
    frame_array_give(&drawing->marks);
    frame_give(drawing);
}

frame_status drawing_check(const char *field, double value, double low, double high, const char *valid) {
    if (!isfinite(value)) return frame_fail_number(FRAME_NOT_A_NUMBER, field, value, valid);
    if (value < low || value > high) return frame_fail_number(FRAME_OUT_OF_RANGE, field, value, valid);
    return FRAME_OK;
}

frame_status drawing_check_point(const char *x_field, double x, const char *y_field, double y) {
    frame_status status = drawing_check(x_field, x, -DRAWING_REACH_IN, DRAWING_REACH_IN, "-1000000..1000000");
    return status ? status : drawing_check(y_field, y, -DRAWING_REACH_IN, DRAWING_REACH_IN, "-1000000..1000000");
}

frame_status drawing_keep_text(frame_drawing *drawing, const char *field, const char *text, const char **kept) {
    if (!text || !*text) {
        *kept = NULL;
        return FRAME_OK;
    }
    for (size_t at = 0; text[at];) {
        const size_t length = frame_utf8_length(text + at);
        if (!length || ((unsigned char)text[at] < 0x20 && text[at] != '\n'))
            return frame_fail(FRAME_UNREADABLE, field, "", "UTF-8 without control characters",
                              "%s: byte %zu is no part of a UTF-8 text, or a control character", field, at + 1);
        at += length;
    }
    int failed = 0;
    const char *copy = frame_arena_text(&drawing->texts, text, &failed);
    if (failed) return FRAME_NO_MEMORY;
    *kept = copy;
    return FRAME_OK;
}

frame_status frame_drawing_title(frame_drawing *drawing, const char *title) {
    return drawing_keep_text(drawing, "title", title, &drawing->title);
}

frame_status frame_drawing_description(frame_drawing *drawing, const char *description) {
    return drawing_keep_text(drawing, "description", description, &drawing->description);
}

frame_status frame_drawing_paper(frame_drawing *drawing, double width_in, double height_in) {
    frame_status status = drawing_check("width_in", width_in, 2, 48, "2..48");
    if (!status) status = drawing_check("height_in", height_in, 1, 96, "1..96");
    if (status) return status;
    drawing->width_in = width_in;
    drawing->height_in = height_in;
    return FRAME_OK;
}

frame_status frame_drawing_letter_size(frame_drawing *drawing, double points) {
    frame_status status = drawing_check("points", points, 9, 24, "9..24");
    if (!status) drawing->letter_pt = points;
    return status;
}

frame_status frame_drawing_denominator(frame_drawing *drawing, int32_t denominator) {
    const char *valid = "1, 2, 4, 8, 16, 32 or 64";
    if (denominator < 1 || denominator > 64 || (denominator & (denominator - 1)))
        return frame_fail_number(FRAME_OUT_OF_RANGE, "denominator", denominator, valid);
    drawing->denominator = denominator;
    return FRAME_OK;
}

frame_status frame_drawing_view(frame_drawing *drawing, const char *caption) {
    drawing_view view = {NULL};
    const frame_status status = drawing_keep_text(drawing, "caption", caption, &view.caption);
    if (status) return status;
    if (!drawing->items.count && drawing->views.count == 1) {
        FRAME_ITEM(drawing_view, drawing->views, 0) = view;
        return FRAME_OK;
    }
    return frame_array_push(&drawing->views, &view) ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status drawing_add(frame_drawing *drawing, drawing_item item, const drawing_point *points, size_t count) {
    if (frame_array_reserve(&drawing->points, drawing->points.count + count)) return FRAME_NO_MEMORY;
    item.view = drawing->views.count - 1;
    item.first = drawing->points.count;
    item.count = count;
    if (!frame_array_push(&drawing->items, &item)) return FRAME_NO_MEMORY;
    if (count) memcpy(&FRAME_ITEM(drawing_point, drawing->points, item.first), points, count * sizeof *points);
    drawing->points.count += count;
    return FRAME_OK;
}
