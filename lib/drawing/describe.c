/* The picture in words, for those who hear it. */
#include "drawing/describe.h"

#include "text/writer.h"

static void words(frame_text *into, const char *before, const char *text) {
    frame_text_add(into, before);
    frame_text_add_xml(into, text);
}

static void running(const drawing_point *marks, size_t count, frame_text *into) {
    const char *before = "Marks on one tape: ";
    for (size_t i = 0; i < count; i++) {
        if (!marks[i].text) continue;
        words(into, before, marks[i].text);
        before = "; ";
    }
    frame_text_add(into, ". ");
}

static void item_in_words(const frame_drawing *drawing, const drawing_item *item, frame_text *into) {
    const drawing_point *points = (const drawing_point *)drawing->points.items + item->first;
    if (item->kind == DRAWING_RUNNING) running(points, item->count, into);
    if (item->kind == DRAWING_DIMENSION) words(into, "Distance ", points[1].text);
    if (item->kind == DRAWING_ANGLE) words(into, "Angle ", item->text);
    if (item->kind == DRAWING_LABEL) words(into, "Label: ", item->text);
    if (item->kind >= DRAWING_LABEL && item->kind != DRAWING_RUNNING) frame_text_add(into, ". ");
}

void drawing_describe(const frame_drawing *drawing, frame_text *into) {
    if (drawing->description) {
        frame_text_add_xml(into, drawing->description);
        return;
    }
    for (size_t view = 0; view < drawing->views.count; view++) {
        const char *caption = FRAME_ITEM(drawing_view, drawing->views, view).caption;
        if (caption) {
            words(into, "", caption);
            frame_text_add(into, ". ");
        }
        for (size_t i = 0; i < drawing->items.count; i++) {
            const drawing_item *item = &FRAME_ITEM(drawing_item, drawing->items, i);
            if (item->view == view) item_in_words(drawing, item, into);
        }
    }
}
