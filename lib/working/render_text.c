/* A working as plain text, to be read at 100 columns: the formulas on the left, what they mean on the right. */
#include <string.h>

#include "text/writer.h"
#include "working/columns.h"
#include "working/lines.h"
#include "working/render.h"
#include "working/symbol.h"

enum { LEFT = 60, RIGHT_AT = 62, RIGHT = 38, WIDEST_SYMBOL = 10 };

typedef struct page {
    const frame_working *w;
    frame_text *into, *left, *right, *piece, *numbers, *value;
    size_t symbols; /* the width of the widest symbol of the section */
} page;

static void add_spaces(frame_text *text, size_t count) {
    while (count--) frame_text_add(text, " ");
}

static size_t indent_of(const frame_entry *entry) {
    const size_t indent = 2 + 2 * (size_t)entry->level;
    return indent < 20 ? indent : 20;
}

/* The widest symbol from an entry to the next heading. */
static size_t widest_symbol(const page *p, size_t at) {
    size_t widest = 1;
    for (; at < p->w->entries.count && frame_entry_at(p->w, at)->kind != FRAME_STEP_HEADING; at++) {
        const frame_entry *entry = frame_entry_at(p->w, at);
        frame_scratch_clear(p->piece, p->into);
        frame_symbol_display(entry->name, strlen(entry->name), p->piece);
        const size_t width = frame_columns_width(frame_text_chars(p->piece), frame_text_length(p->piece));
        if (width > widest && width <= WIDEST_SYMBOL) widest = width;
    }
    return widest;
}

static void write_heading(page *p, const frame_entry *entry) {
    const size_t indent = indent_of(entry) - 2;
    if (frame_text_length(p->into)) frame_text_add(p->into, "\n");
    add_spaces(p->into, indent);
    frame_text_add(p->into, entry->meaning);
    frame_text_add(p->into, "\n");
    add_spaces(p->into, indent);
    for (size_t i = frame_columns_width(entry->meaning, strlen(entry->meaning)); i-- > 0;) frame_text_add(p->into, "-");
    frame_text_add(p->into, "\n");
}

/* What an entry means, and where it comes from. */
static void write_right(page *p, const frame_entry *entry) {
    frame_columns_words(p->right, entry->meaning, RIGHT);
    if (!*entry->source) return;
    frame_scratch_clear(p->piece, p->into);
    frame_text_add(p->piece, "[");
    frame_text_add(p->piece, entry->source);
    frame_text_add(p->piece, "]");
    const char *source = frame_text_chars(p->piece);
    const size_t both =
        frame_columns_width(entry->meaning, strlen(entry->meaning)) + 2 + frame_columns_width(source, strlen(source));
    if (frame_text_length(p->right) && both > RIGHT) frame_text_add(p->right, "\n");
    frame_columns_words(p->right, source, RIGHT);
}

/* Goes on with a line that begins with "= ". */
static void add_equals(page *p, const char *formula, size_t indent) {
    frame_text_add(p->left, "= ");
    frame_columns_formula(p->left, formula, indent + 2, LEFT);
}

static void next_line(page *p, size_t indent) {
    frame_text_add(p->left, "\n");
    add_spaces(p->left, indent);
}

/* The value, on the line of the numbers when there is room. */
static void write_value(page *p, size_t indent) {
    const char *left = frame_text_chars(p->left), *line = strrchr(left, '\n');
    const size_t used = line ? frame_columns_width(line + 1, strlen(line + 1)) : LEFT;
    if (used + 3 + frame_columns_width(frame_text_chars(p->value), frame_text_length(p->value)) <= LEFT)
        frame_text_add(p->left, " ");
    else
        next_line(p, indent);
    add_equals(p, frame_text_chars(p->value), indent);
}

/* In symbols, with numbers, the value; nothing twice. */
static void write_formula(page *p, size_t at, size_t indent) {
    frame_scratch_clear(p->numbers, p->into);
    frame_entry_line(p->w, at, 0, p->piece);
    frame_entry_line(p->w, at, 1, p->numbers);
    const char *symbols = frame_text_chars(p->piece), *numbers = frame_text_chars(p->numbers);
    add_equals(p, symbols, indent);
    const size_t length = strlen(numbers);
    const int is_value =
        strncmp(numbers, frame_text_chars(p->value), length) == 0 && strchr(" ", frame_text_chars(p->value)[length]);
    if (length && !is_value && strcmp(symbols, numbers) != 0) {
        next_line(p, indent);
        add_equals(p, numbers, indent);
    }
    write_value(p, indent);
}

static void write_valued(page *p, size_t at) {
    const frame_entry *entry = frame_entry_at(p->w, at);
    const size_t begin = indent_of(entry), indent = begin + p->symbols + 1;
    add_spaces(p->left, begin);
    frame_symbol_display(entry->name, strlen(entry->name), p->left);
    frame_text_pad(p->left, indent);
    frame_scratch_clear(p->piece, p->into);
    frame_scratch_clear(p->value, p->into);
    frame_entry_value(entry->value, entry->unit, p->value);
    if (entry->kind == FRAME_STEP_COMPUTED)
        write_formula(p, at, indent);
    else
        add_equals(p, frame_text_chars(p->value), indent);
}

static void write_case(page *p, size_t at) {
    const size_t indent = indent_of(frame_entry_at(p->w, at));
    frame_scratch_clear(p->piece, p->into);
    frame_entry_line(p->w, at, 0, p->piece);
    const size_t length = frame_text_length(p->piece);
    frame_text_add(p->piece, ": ");
    frame_entry_line(p->w, at, 1, p->piece);
    if (frame_text_length(p->piece) == length + 2) frame_text_cut(p->piece, length);
    add_spaces(p->left, indent);
    frame_text_add(p->left, "since ");
    frame_columns_formula(p->left, frame_text_chars(p->piece), indent + 6, LEFT);
}

static void write_entry(page *p, size_t at) {
    const frame_entry *entry = frame_entry_at(p->w, at);
    if (!frame_entry_is_seen(entry)) return;
    if (entry->kind == FRAME_STEP_HEADING) {
        write_heading(p, entry);
        p->symbols = widest_symbol(p, at + 1);
        return;
    }
    frame_scratch_clear(p->left, p->into);
    frame_scratch_clear(p->right, p->into);
    if (entry->kind == FRAME_STEP_CASE)
        write_case(p, at);
    else
        write_valued(p, at);
    write_right(p, entry);
    frame_columns_join(frame_text_chars(p->left), frame_text_chars(p->right), RIGHT_AT, p->into);
}

/* The scratch texts; gives whether each of them is there and whole. */
static int each_text(page *p, int (*act)(frame_text **text)) {
    frame_text **const texts[] = {&p->left, &p->right, &p->piece, &p->numbers, &p->value};
    int well = 1;
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++) well = act(texts[i]) && well;
    return well;
}

static int make_text(frame_text **text) {
    return frame_text_new(text) == FRAME_OK;
}
static int give_text(frame_text **text) {
    const int well = *text && frame_text_state(*text) == FRAME_OK;
    frame_text_free(*text);
    return well;
}

static void write_entries(page *p) {
    p->symbols = widest_symbol(p, 0);
    for (size_t i = 0; i < p->w->entries.count; i++) write_entry(p, i);
    if (!frame_working_step_count(p->w)) frame_text_add(p->into, "Nothing is recorded.\n");
    if (p->w->state) frame_text_add(p->into, "The record is not whole: there was no memory for the rest.\n");
}

void frame_working_text(const frame_working *w, frame_text *into) {
    page p = {.w = w, .into = into};
    if (each_text(&p, make_text)) write_entries(&p);
    if (!each_text(&p, give_text)) frame_text_fail(into);
}
