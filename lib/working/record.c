/* The record itself: entries in the order they were made. */
#include "working/record.h"

#include <string.h>

#include "base/error.h"
#include "working/entries.h"

frame_status frame_working_new(frame_working **working) {
    if (!working) return frame_fail(FRAME_REQUIRED, "working", "", "a place for it", "working: no place was given");
    frame_working *made = frame_take_zeroed(1, sizeof *made);
    if (!made) return FRAME_NO_MEMORY;
    made->entries.item_size = sizeof(frame_entry);
    *working = made;
    return FRAME_OK;
}

void frame_working_free(frame_working *working) {
    if (!working) return;
    frame_shown_drop(working);
    frame_array_give(&working->entries);
    frame_arena_give(&working->texts);
    frame_give(working);
}

void frame_working_clear(frame_working *working) {
    if (!working) return;
    frame_shown_drop(working);
    working->entries.count = 0;
    frame_arena_give(&working->texts);
    working->state = FRAME_OK;
}

frame_status frame_working_state(const frame_working *working) {
    if (!working || !working->state) return FRAME_OK;
    return frame_fail(working->state, "working", "", "a working that was cleared",
                      "working: memory gave out while it was recorded; clear it, or take another");
}

/* The level and the count that an entry made now would have. */
static int32_t level_now(const frame_working *w) {
    return w->entries.count ? frame_entry_at(w, w->entries.count - 1)->level : 0;
}

static size_t seen_so_far(const frame_working *w) {
    if (!w->entries.count) return 0;
    const frame_entry *last = frame_entry_at(w, w->entries.count - 1);
    return last->shown_before + (size_t)frame_entry_is_seen(last);
}

size_t frame_working_step_count(const frame_working *working) {
    return working ? seen_so_far(working) : 0;
}

static const char *keep_text(frame_working *w, const char *chars) {
    if (!chars || !*chars) return "";
    int failed = 0;
    const char *copy = frame_arena_text(&w->texts, chars, &failed);
    if (failed) w->state = FRAME_NO_MEMORY;
    return failed ? "" : copy;
}

static void keep(frame_working *w, frame_entry entry) {
    if (!w) return;
    frame_shown_drop(w);
    entry.unit = keep_text(w, entry.unit);
    entry.meaning = keep_text(w, entry.meaning);
    entry.source = keep_text(w, entry.source);
    entry.shown_before = seen_so_far(w);
    /* After a failure nothing more is kept: a record with a hole would be a wrong record. */
    if (w->state || !frame_array_push(&w->entries, &entry)) w->state = FRAME_NO_MEMORY;
}

void frame_record(frame_working *w, frame_step_kind kind, const char *name, const char *expression, double value,
                  const char *unit, const char *meaning, const char *source) {
    if (!w) return;
    keep(w, (frame_entry){.name = name,
                          .expression = expression ? expression : "",
                          .unit = unit,
                          .meaning = meaning,
                          .source = source,
                          .value = value,
                          .kind = kind,
                          .level = level_now(w)});
}

void frame_record_case(frame_working *w, const char *condition, const char *taken, const char *source) {
    if (!w) return;
    keep(w, (frame_entry){.name = "",
                          .expression = keep_text(w, condition),
                          .meaning = taken,
                          .source = source,
                          .value = FRAME_NOT_GIVEN,
                          .kind = FRAME_STEP_CASE,
                          .level = level_now(w)});
}

static void keep_mark(frame_working *w, frame_step_kind kind, const char *title, int32_t level) {
    keep(w, (frame_entry){.name = "",
                          .expression = "",
                          .meaning = title,
                          .value = FRAME_NOT_GIVEN,
                          .kind = kind,
                          .level = level < 0 ? 0 : level});
}

void frame_record_heading(frame_working *w, const char *title) {
    if (w) keep_mark(w, FRAME_STEP_HEADING, title, level_now(w));
}
void frame_record_enter(frame_working *w) {
    if (w) keep_mark(w, FRAME_ENTRY_ENTER, "", level_now(w) + 1);
}
void frame_record_leave(frame_working *w) {
    if (w) keep_mark(w, FRAME_ENTRY_LEAVE, "", level_now(w) - 1);
}

size_t frame_working_mark_position(const frame_working *w) {
    return w ? w->entries.count : 0;
}

void frame_working_roll_back(frame_working *w, size_t position) {
    if (!w || position >= w->entries.count) return;
    frame_shown_drop(w);
    w->entries.count = position;
}

size_t frame_entry_find_seen(const frame_working *w, size_t index) {
    size_t low = 0, high = w->entries.count;
    while (low < high) {
        const size_t middle = low + (high - low) / 2;
        const frame_entry *entry = frame_entry_at(w, middle);
        if (entry->shown_before + (size_t)frame_entry_is_seen(entry) <= index)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

static int is_named(const frame_entry *entry, const char *name, size_t length) {
    return frame_entry_has_value(entry) && strncmp(entry->name, name, length) == 0 && entry->name[length] == 0;
}

/* Walking back past an entry: a calculation that has ended hides its names, one that began opens the outer one's. */
static int32_t level_before(const frame_entry *entry, int32_t level) {
    const int32_t bound = entry->kind == FRAME_ENTRY_ENTER ? entry->level - 1 : entry->level;
    return !frame_entry_is_seen(entry) && bound < level ? bound : level;
}

size_t frame_entry_find_name(const frame_working *w, size_t before, const char *name, size_t length) {
    size_t hidden = before;
    int32_t level = before < w->entries.count ? frame_entry_at(w, before)->level : level_now(w);
    for (size_t at = before; at-- > 0;) {
        const frame_entry *entry = frame_entry_at(w, at);
        level = level_before(entry, level);
        if (!is_named(entry, name, length)) continue;
        if (entry->level <= level) return at;
        if (hidden == before) hidden = at;
    }
    return hidden;
}
