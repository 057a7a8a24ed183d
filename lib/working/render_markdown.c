/* A working as Markdown: a heading for each section, a table for its entries. */
#include <string.h>

#include "text/writer.h"
#include "working/lines.h"
#include "working/render.h"
#include "working/symbol.h"

void frame_markdown_add(frame_text *into, const char *chars) {
    for (const char *c = chars; *c; c++) {
        if (strchr("\\`*_{}[]<>#|~&$", *c)) frame_text_add(into, "\\");
        frame_text_add_bytes(into, *c == '\n' || *c == '\r' ? " " : c, 1);
    }
}

/* Within code only the bar of a table is special, and the backquote that would end it. */
void frame_markdown_code(frame_text *into, const char *chars) {
    if (!*chars) return;
    frame_text_add(into, "`");
    for (const char *c = chars; *c; c++) {
        if (*c == '|') frame_text_add(into, "\\");
        frame_text_add_bytes(into, *c == '`' ? "'" : *c == '\n' ? " " : c, 1);
    }
    frame_text_add(into, "`");
}

typedef struct page {
    const frame_working *w;
    frame_text *into, *symbols, *numbers;
    int in_table;
} page;

static void begin_table(page *p) {
    if (p->in_table) return;
    if (frame_text_length(p->into)) frame_text_add(p->into, "\n");
    frame_text_add(p->into, "| symbol | formula | value | meaning | source |\n|---|---|--:|---|---|\n");
    p->in_table = 1;
}

static void write_heading(page *p, const frame_entry *entry) {
    if (frame_text_length(p->into)) frame_text_add(p->into, "\n");
    for (int32_t i = -3; i < entry->level && i < 3; i++) frame_text_add(p->into, "#");
    frame_text_add(p->into, " ");
    frame_markdown_add(p->into, entry->meaning);
    frame_text_add(p->into, "\n");
    p->in_table = 0;
}

static void write_symbol(page *p, const frame_entry *entry) {
    frame_scratch_clear(p->symbols, p->into);
    frame_symbol_display(entry->name, strlen(entry->name), p->symbols);
    frame_markdown_code(p->into, frame_text_chars(p->symbols));
}

static void write_formula(page *p, size_t at) {
    const int is_case = frame_entry_at(p->w, at)->kind == FRAME_STEP_CASE;
    frame_scratch_clear(p->symbols, p->into);
    frame_scratch_clear(p->numbers, p->into);
    frame_entry_line(p->w, at, 0, p->symbols);
    frame_entry_line(p->w, at, 1, p->numbers);
    const char *symbols = frame_text_chars(p->symbols), *numbers = frame_text_chars(p->numbers);
    if (is_case) frame_text_add(p->into, "since ");
    if (is_case && !*numbers)
        frame_markdown_add(p->into, symbols); /* a sentence */
    else
        frame_markdown_code(p->into, symbols);
    if (!*numbers || strcmp(symbols, numbers) == 0) return;
    frame_text_add(p->into, is_case ? ": " : " = ");
    frame_markdown_code(p->into, numbers);
}

static void write_row(page *p, size_t at) {
    const frame_entry *entry = frame_entry_at(p->w, at);
    begin_table(p);
    frame_text_add(p->into, "| ");
    write_symbol(p, entry);
    frame_text_add(p->into, " | ");
    write_formula(p, at);
    frame_text_add(p->into, " | ");
    if (entry->kind != FRAME_STEP_CASE) {
        frame_scratch_clear(p->symbols, p->into);
        frame_entry_value(entry->value, entry->unit, p->symbols);
        frame_markdown_add(p->into, frame_text_chars(p->symbols));
    }
    frame_text_add(p->into, " | ");
    frame_markdown_add(p->into, entry->meaning);
    frame_text_add(p->into, " | ");
    frame_markdown_add(p->into, entry->source);
    frame_text_add(p->into, " |\n");
}

static void write_entries(page *p) {
    for (size_t i = 0; i < p->w->entries.count; i++) {
        const frame_entry *entry = frame_entry_at(p->w, i);
        if (entry->kind == FRAME_STEP_HEADING)
            write_heading(p, entry);
        else if (frame_entry_is_seen(entry))
            write_row(p, i);
    }
    if (!frame_working_step_count(p->w)) frame_text_add(p->into, "Nothing is recorded.\n");
    if (p->w->state) frame_text_add(p->into, "\nThe record is not whole: there was no memory for the rest.\n");
}

void frame_working_markdown(const frame_working *w, frame_text *into) {
    page p = {.w = w, .into = into};
    const int made = !frame_text_new(&p.symbols) && !frame_text_new(&p.numbers);
    if (made) write_entries(&p);
    if (!made || frame_text_state(p.symbols) || frame_text_state(p.numbers)) frame_text_fail(into);
    frame_text_free(p.symbols);
    frame_text_free(p.numbers);
}
