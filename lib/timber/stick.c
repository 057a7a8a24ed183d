/* Making a stick, and adding cuts and notches to it. */
#include "timber/stick.h"

#include <string.h>

#include "base/error.h"
#include "timber_facts.h"

frame_status frame_no_stick(void) {
    return frame_fail(FRAME_REQUIRED, "stick", "NULL", "a stick", "stick: NULL is not a stick");
}

static void begin_results(frame_stick *stick) {
    frame_solid_begin(&stick->solid);
    frame_pool_begin(&stick->corners, stick->corner_room, sizeof stick->corner_room, sizeof(frame_stick_point));
    frame_pool_begin(&stick->marks, stick->mark_room, sizeof stick->mark_room, sizeof(frame_stick_point));
}

static void give_results(frame_stick *stick) {
    frame_solid_give(&stick->solid);
    frame_pool_give(&stick->corners);
    frame_pool_give(&stick->marks);
}

void frame_stick_free(frame_stick *stick) {
    if (!stick) return;
    give_results(stick);
    frame_pool_give(&stick->records);
    frame_arena_give(&stick->texts);
    frame_give(stick);
}

/* A place for one more record at an index; the later ones move up. */
static frame_stick_record *insert_record(frame_stick *stick, size_t index) {
    if (stick->records.count >= 202) {
        frame_fail(FRAME_TOO_LARGE, "planes", "", "0..200 planes", "planes: a stick takes at most 200");
        return NULL;
    }
    if (!frame_pool_add(&stick->records, 1)) return NULL;
    memmove(FRAME_RECORD(stick, index + 1), FRAME_RECORD(stick, index),
            (stick->records.count - 1 - index) * sizeof(frame_stick_record));
    return FRAME_RECORD(stick, index);
}

static void remove_records(frame_stick *stick, size_t index, size_t count) {
    memmove(FRAME_RECORD(stick, index), FRAME_RECORD(stick, index + count),
            (stick->records.count - index - count) * sizeof(frame_stick_record));
    stick->records.count -= count;
}

/* plane has been read and found good. */
static frame_status add_cut(frame_stick *stick, const frame_stick_plane *plane) {
    frame_stick_record record;
    frame_status status = frame_stick_read_plane(stick, plane, &record);
    if (!status) status = frame_stick_find_end(&record);
    if (status) return status;
    frame_stick_record *place = insert_record(stick, 2 + (size_t)stick->cuts);
    if (!place) return frame_error_status();
    *place = record;
    stick->cuts++;
    return FRAME_OK;
}

static frame_status add_notch_plane(frame_stick *stick, const frame_stick_plane *plane, int32_t notch,
                                    frame_stick_notch_kind kind) {
    frame_stick_record record;
    const frame_status status = frame_stick_read_plane(stick, plane, &record);
    if (status) return status;
    frame_stick_record *place = insert_record(stick, stick->records.count);
    if (!place) return frame_error_status();
    record.closes = 0;
    record.notch = notch;
    record.kind = kind;
    *place = record;
    return FRAME_OK;
}

/* One notch of the list of planes: all that carry a number. */
static frame_status add_listed_notch(frame_stick *stick, const frame_stick_in *in, int32_t number) {
    frame_stick_notch_kind kind = FRAME_NOT_GIVEN_INT;
    stick->notches++;
    for (size_t i = 0; i < in->plane_count; i++) {
        frame_stick_plane plane;
        frame_stick_plane_item(in->planes, i, &plane);
        if (plane.notch != number) continue;
        if (kind == FRAME_NOT_GIVEN_INT)
            kind = plane.notch_kind == FRAME_NOT_GIVEN_INT ? FRAME_STICK_NOTCH : plane.notch_kind;
        if (add_notch_plane(stick, &plane, stick->notches, kind)) return frame_fail_within("planes[%zu].", i);
    }
    return FRAME_OK;
}

static frame_status add_planes(frame_stick *stick, const frame_stick_in *in) {
    uint8_t seen[101] = {0};
    frame_stick_plane plane;
    for (size_t i = 0; i < in->plane_count; i++) {
        frame_stick_plane_item(in->planes, i, &plane);
        if (plane.notch == FRAME_NOT_GIVEN_INT && add_cut(stick, &plane)) return frame_fail_within("planes[%zu].", i);
    }
    for (size_t i = 0; i < in->plane_count; i++) {
        frame_stick_plane_item(in->planes, i, &plane);
        if (plane.notch == FRAME_NOT_GIVEN_INT || seen[plane.notch]) continue;
        seen[plane.notch] = 1;
        const frame_status status = add_listed_notch(stick, in, plane.notch);
        if (status) return status;
    }
    return FRAME_OK;
}

/* The two ends left square, which stand until an end is cut. */
static void begin_records(frame_stick *stick) {
    frame_stick_record *square = frame_pool_add(&stick->records, 2); /* there is room for these */
    for (int end = 0; end < 2; end++)
        square[end] = (frame_stick_record){{{end ? 1 : -1, 0, 0}, end ? stick->length : 0},
                                           frame_stick_role_words.table[FRAME_STICK_SQUARE_END - 1].word,
                                           FRAME_STICK_SQUARE_END,
                                           FRAME_NOT_GIVEN_INT,
                                           0,
                                           end ? FRAME_STICK_END : FRAME_STICK_START,
                                           0,
                                           1};
}

static frame_status begin(frame_stick *stick, const frame_stick_in *in) {
    int failed = 0;
    stick->texts.first = NULL;
    stick->cuts = stick->notches = 0;
    begin_results(stick);
    frame_pool_begin(&stick->records, stick->record_room, sizeof stick->record_room, sizeof(frame_stick_record));
    stick->name = frame_arena_text(&stick->texts, in->name, &failed);
    stick->section = frame_arena_text(&stick->texts, in->section, &failed);
    stick->count = in->count;
    stick->measure_from = in->measure_from == FRAME_STICK_END ? FRAME_STICK_END : FRAME_STICK_START;
    stick->y[1] = in->thickness_in / 2;
    stick->y[0] = -stick->y[1];
    stick->z[0] = in->axis_at == FRAME_STICK_AXIS_BOTTOM ? 0
                  : in->axis_at == FRAME_STICK_AXIS_TOP  ? -in->depth_in
                                                         : -in->depth_in / 2;
    stick->z[1] = stick->z[0] + in->depth_in;
    const frame_status status = frame_stick_place(in, &stick->placement, &stick->length);
    begin_records(stick);
    return failed ? FRAME_NO_MEMORY : status;
}

frame_status frame_stick_new(const frame_stick_in *in, frame_stick **given) {
    frame_stick_in read;
    uint64_t assumed = 0;
    if (!given) return frame_no_stick();
    frame_status status = frame_stick_in_read(in, &read, &assumed);
    if (status) return status;
    frame_stick *stick = frame_take(sizeof *stick);
    if (!stick) return FRAME_NO_MEMORY;
    status = begin(stick, &read);
    if (!status) status = add_planes(stick, &read);
    if (!status) status = frame_stick_solve(stick);
    if (status) {
        frame_stick_free(stick);
        return status;
    }
    *given = stick;
    return FRAME_OK;
}

/* Solves with the records just added. If that fails they go again and the results from before come back: they are kept
 * aside, so that this takes no memory. */
static frame_status solve_or_restore(frame_stick *stick, size_t index, size_t count) {
    frame_stick *before = frame_take(sizeof *before);
    frame_status status = before ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status) {
        memcpy(before, stick, sizeof *before);
        begin_results(stick);
        status = frame_stick_solve(stick);
        give_results(status ? stick : before);
        if (status) memcpy(stick, before, sizeof *stick);
    }
    frame_give(before);
    if (!status) return FRAME_OK;
    remove_records(stick, index, count);
    (void)frame_stick_number_planes(stick);
    return status;
}

frame_status frame_stick_cut(frame_stick *stick, const frame_stick_plane *plane) {
    frame_stick_plane read;
    uint64_t assumed = 0;
    if (!stick) return frame_no_stick();
    frame_status status = frame_stick_plane_read(plane, &read, &assumed);
    if (!status) status = add_cut(stick, &read);
    if (status) return status;
    status = solve_or_restore(stick, 1 + (size_t)stick->cuts, 1);
    if (status) stick->cuts--;
    return status;
}

static frame_status read_notch(frame_stick *stick, const frame_stick_plane *planes, size_t count,
                               frame_stick_notch_kind kind) {
    for (size_t i = 0; i < count; i++) {
        frame_stick_plane read;
        uint64_t assumed = 0;
        const void *place = (const char *)planes + i * planes->struct_size;
        frame_status status = frame_stick_plane_read(place, &read, &assumed);
        if (!status) status = add_notch_plane(stick, &read, stick->notches + 1, kind);
        if (status) return frame_fail_within("planes[%zu].", i);
    }
    return FRAME_OK;
}

frame_status frame_stick_notch(frame_stick *stick, const frame_stick_plane *planes, size_t count,
                               frame_stick_notch_kind kind) {
    if (!stick) return frame_no_stick();
    if (!planes || !count || count > 200)
        return frame_fail_number(FRAME_OUT_OF_RANGE, "plane_count", planes ? (double)count : 0, "1..200 planes");
    if (kind < FRAME_STICK_BIRDSMOUTH || kind > FRAME_STICK_NOTCH)
        return frame_fail_number(FRAME_UNKNOWN_NAME, "kind", kind, "a kind of notch: birdsmouth, lap, housing, notch");
    const size_t before = stick->records.count;
    frame_status status = read_notch(stick, planes, count, kind);
    if (status) {
        stick->records.count = before;
        return status;
    }
    stick->notches++;
    status = solve_or_restore(stick, before, count);
    if (status) stick->notches--;
    return status;
}
