/* The entries one by one, with their display texts: made all at once when first asked for. */
#include <stdatomic.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/facts.h"
#include "text/writer.h"
#include "working/entries.h"
#include "working/lines.h"
#include "working/symbol.h"
#include "working_facts.h"

typedef struct frame_shown {
    frame_text *texts; /* one after the other, each ended by a zero */
    size_t starts[];   /* of symbol, formula and numbers of each entry */
} frame_shown;
enum { SYMBOL, FORMULA, NUMBERS, PER_ENTRY };

static void shown_free(frame_shown *shown) {
    if (!shown) return;
    frame_text_free(shown->texts);
    frame_give(shown);
}

void frame_shown_drop(frame_working *w) {
    shown_free(atomic_exchange(&w->shown, NULL));
}

static void show_entry(const frame_working *w, size_t at, frame_shown *shown) {
    const frame_entry *entry = frame_entry_at(w, at);
    frame_text *texts = shown->texts;
    for (int i = 0; i < PER_ENTRY; i++) {
        shown->starts[at * PER_ENTRY + (size_t)i] = frame_text_length(texts);
        if (i == SYMBOL)
            frame_symbol_ascii(entry->name, strlen(entry->name), texts);
        else
            frame_entry_line(w, at, i == NUMBERS, texts);
        frame_text_add_bytes(texts, "", 1);
    }
}

static frame_shown *show(const frame_working *w) {
    frame_shown *shown = frame_take(sizeof *shown + w->entries.count * PER_ENTRY * sizeof(size_t));
    if (!shown) return NULL;
    shown->texts = NULL;
    if (frame_text_new(&shown->texts) == FRAME_OK) {
        for (size_t i = 0; i < w->entries.count; i++) show_entry(w, i, shown);
        if (frame_text_state(shown->texts) == FRAME_OK) return shown;
    }
    shown_free(shown);
    return NULL;
}

/* Two threads may find nothing and both make it; the second one's work is thrown away. */
static const frame_shown *shown_of(const frame_working *working) {
    frame_working *w = (frame_working *)(uintptr_t)working;
    frame_shown *there = atomic_load(&w->shown);
    if (there) return there;
    frame_shown *made = show(w);
    if (made && !atomic_compare_exchange_strong(&w->shown, &there, made)) {
        shown_free(made);
        return there;
    }
    return made;
}

frame_status frame_working_step_at_sized(const frame_working *working, size_t index, frame_working_step *item,
                                         size_t item_size) {
    if (!working || !item || item_size < 2 * sizeof(uint32_t))
        return frame_fail(FRAME_REQUIRED, working ? "item" : "working", "NULL", "a working and a place for its step",
                          "working: a working and a place for its step are needed");
    const size_t count = frame_working_step_count(working);
    if (index >= count) {
        char valid[48];
        snprintf(valid, sizeof valid, "0..%zu (count %zu)", count ? count - 1 : 0, count);
        return frame_fail_number(FRAME_OUT_OF_RANGE, "index", (double)index, valid);
    }
    const frame_shown *shown = shown_of(working);
    if (!shown) return FRAME_NO_MEMORY;
    const size_t at = frame_entry_find_seen(working, index);
    const frame_entry *entry = frame_entry_at(working, at);
    const char *texts = frame_text_chars(shown->texts);
    const size_t *starts = shown->starts + at * PER_ENTRY;
    const frame_working_step step = {.value = entry->value,
                                     .symbol = texts + starts[SYMBOL],
                                     .formula = texts + starts[FORMULA],
                                     .numbers = texts + starts[NUMBERS],
                                     .unit = entry->unit,
                                     .meaning = entry->meaning,
                                     .source = entry->source,
                                     .kind = entry->kind,
                                     .level = entry->level};
    frame_struct_give(&frame_working_step_facts, &step, item, item_size);
    return FRAME_OK;
}
