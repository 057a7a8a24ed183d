/* A marking as a handle: its lines one by one. */
#include "working/marking.h"

#include <stdio.h>

#include "base/error.h"
#include "base/facts.h"
#include "working_facts.h"

void frame_marking_free(frame_marking *marking) {
    if (!marking) return;
    frame_array_give(&marking->lines);
    frame_arena_give(&marking->texts);
    frame_give(marking);
}

size_t frame_marking_line_count(const frame_marking *marking) {
    return marking ? marking->lines.count : 0;
}
size_t frame_marking_first(const frame_marking *marking) {
    return marking ? marking->first : 0;
}

frame_status frame_marking_line_at_sized(const frame_marking *marking, size_t index, frame_marking_line *item,
                                         size_t item_size) {
    if (!marking || !item || item_size < 2 * sizeof(uint32_t))
        return frame_fail(FRAME_REQUIRED, marking ? "item" : "marking", "NULL", "a marking and a place for its line",
                          "marking: a marking and a place for its line are needed");
    const size_t count = marking->lines.count;
    if (index >= count) {
        char valid[48];
        snprintf(valid, sizeof valid, "0..%zu (count %zu)", count ? count - 1 : 0, count);
        return frame_fail_number(FRAME_OUT_OF_RANGE, "index", (double)index, valid);
    }
    frame_struct_give(&frame_marking_line_facts, &FRAME_ITEM(const frame_marking_line, marking->lines, index), item,
                      item_size);
    return FRAME_OK;
}
