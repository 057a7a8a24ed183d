/* The lists of a stick: its outlines' corners and its marks. */
#include <stdio.h>

#include "base/error.h"
#include "timber/stick.h"
#include "timber_facts.h"

double frame_stick_running(const frame_stick *stick, double x) {
    return stick->measure_from == FRAME_STICK_END ? stick->high - x : x - stick->low;
}

int frame_stick_in_notch(const frame_stick *stick, const frame_stick_record *record, vec3 point) {
    for (size_t i = 2 + (size_t)stick->cuts; record->notch && i < stick->records.count; i++) {
        const frame_stick_record *other = FRAME_RECORD(stick, i);
        if (other != record && other->notch == record->notch && vec_beyond(&other->plane, point) < -1e-7) return 0;
    }
    return 1;
}

size_t frame_stick_saw_count(const frame_stick *stick) {
    return stick ? stick->records.count - 2 + (size_t)(stick->square[0] + stick->square[1]) : 0;
}

/* The place of a record in the list of saw settings: the square ends that do not stand are not in it. */
int32_t frame_stick_saw_of(const frame_stick *stick, int32_t record) {
    if (record == 0) return 0;
    return record == 1 ? stick->square[0] : record - 2 + stick->square[0] + stick->square[1];
}

const frame_stick_record *frame_stick_record_at(const frame_stick *stick, size_t saw) {
    if (saw == 0 && stick->square[0]) return FRAME_RECORD(stick, 0);
    if (saw == (size_t)stick->square[0] && stick->square[1]) return FRAME_RECORD(stick, 1);
    return FRAME_RECORD(stick, saw + 2 - (size_t)(stick->square[0] + stick->square[1]));
}

frame_status frame_stick_no_index(size_t index, size_t count) {
    char valid[64];
    snprintf(valid, sizeof valid, "0..%zu (count %zu)", count ? count - 1 : 0, count);
    return frame_fail_number(FRAME_OUT_OF_RANGE, "index", (double)index, valid);
}

size_t frame_stick_mark_count(const frame_stick *stick) {
    return stick ? stick->marks.count : 0;
}

frame_status frame_stick_mark_at_sized(const frame_stick *stick, size_t index, frame_stick_mark *item,
                                       size_t item_size) {
    if (!stick || !item || item_size < 2 * sizeof(uint32_t)) return frame_no_stick();
    if (index >= stick->marks.count) return frame_stick_no_index(index, stick->marks.count);
    const frame_stick_point *point = &FRAME_POOL_ITEM(const frame_stick_point, stick->marks, index);
    const frame_stick_mark mark = {0,
                                   0,
                                   point->face,
                                   point->edge ? point->edge : FRAME_NOT_GIVEN_INT,
                                   frame_stick_running(stick, point->x),
                                   point->across,
                                   point->group,
                                   frame_stick_saw_of(stick, point->record),
                                   FRAME_RECORD(stick, point->record)->label};
    frame_struct_give(&frame_stick_mark_facts, &mark, item, item_size);
    return FRAME_OK;
}

size_t frame_stick_corner_count(const frame_stick *stick) {
    return stick ? stick->corners.count : 0;
}

/* Measured from the end, along runs the other way; so do the loops then, to keep the wood on their left. */
static size_t turned(const frame_stick *stick, size_t index) {
    const frame_stick_point *points = stick->corners.items;
    size_t first = index, last = index;
    if (stick->measure_from == FRAME_STICK_START) return index;
    while (first && points[first - 1].face == points[index].face && points[first - 1].group == points[index].group)
        first--;
    while (last + 1 < stick->corners.count && points[last + 1].face == points[index].face &&
           points[last + 1].group == points[index].group)
        last++;
    return first + last - index;
}

frame_status frame_stick_corner_at_sized(const frame_stick *stick, size_t index, frame_stick_corner *item,
                                         size_t item_size) {
    if (!stick || !item || item_size < 2 * sizeof(uint32_t)) return frame_no_stick();
    if (index >= stick->corners.count) return frame_stick_no_index(index, stick->corners.count);
    const frame_stick_point *point = &FRAME_POOL_ITEM(const frame_stick_point, stick->corners, turned(stick, index));
    const frame_stick_corner corner = {
        0, 0, point->face, point->group, frame_stick_running(stick, point->x), point->across};
    frame_struct_give(&frame_stick_corner_facts, &corner, item, item_size);
    return FRAME_OK;
}
