/* What a working is made of. */
#ifndef FRAME_LIB_WORKING_ENTRIES_H
#define FRAME_LIB_WORKING_ENTRIES_H

#include <frame/working.h>

#include "base/memory.h"

/* Two kinds of entry that nobody sees: the begin and the end of a calculation within a calculation. */
enum { FRAME_ENTRY_ENTER = -1, FRAME_ENTRY_LEAVE = -2 };

typedef struct frame_entry {
    const char *name;       /* As in C: "F_b_prime"; "" for what has none. */
    const char *expression; /* As in C; of a case, its condition; "" for what has none. */
    const char *unit, *meaning, *source;
    double value;
    size_t shown_before; /* How many entries before this one are seen. */
    frame_step_kind kind;
    int32_t level; /* Of the entry itself; of an enter or a leave, that of what comes after it. */
} frame_entry;

struct frame_working {
    frame_array entries;
    frame_arena texts;
    /* The display texts of all entries, made when first asked for; dropped at the next change. A pointer set by compare
     * and exchange, so that threads may read one working at once. */
    _Atomic(struct frame_shown *) shown;
    frame_status state;
};

static inline const frame_entry *frame_entry_at(const frame_working *w, size_t index) {
    return &FRAME_ITEM(const frame_entry, w->entries, index);
}
static inline int frame_entry_is_seen(const frame_entry *entry) {
    return entry->kind > 0;
}
static inline int frame_entry_has_value(const frame_entry *entry) {
    return entry->kind == FRAME_STEP_GIVEN || entry->kind == FRAME_STEP_TABLE || entry->kind == FRAME_STEP_COMPUTED;
}

/* The place among all entries of the index-th that is seen; the count of all entries past the end. */
size_t frame_entry_find_seen(const frame_working *w, size_t index);
/* The latest entry before a place that records a name (of so many bytes), and can be seen from there: names within a
 * calculation that has ended come last. Gives before itself when there is none. */
size_t frame_entry_find_name(const frame_working *w, size_t before, const char *name, size_t length);

/* Drops the display texts. */
void frame_shown_drop(frame_working *w);

#endif
