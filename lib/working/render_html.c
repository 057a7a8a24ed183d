/* A working as a fragment of HTML; every formula is MathML. */
#include <string.h>

#include "text/writer.h"
#include "working/figure.h"
#include "working/lines.h"
#include "working/render.h"
#include "working/symbol.h"

typedef struct page {
    const frame_working *w;
    frame_text *into, *symbols, *numbers;
    int in_section;
} page;

static void add(page *p, const char *chars) {
    frame_text_add(p->into, chars);
}

static void end_section(page *p) {
    if (p->in_section) add(p, "</section>\n");
    p->in_section = 0;
}

static void begin_section(page *p, int32_t level) {
    end_section(p);
    frame_text_addf(p->into, "<section class=\"frame-section\" data-level=\"%d\">\n", (int)level);
    p->in_section = 1;
}

static void write_heading(page *p, const frame_entry *entry) {
    const int rank = entry->level < 3 ? 3 + (int)entry->level : 6;
    begin_section(p, entry->level);
    frame_text_addf(p->into, "<h%d class=\"frame-heading\">", rank);
    frame_text_add_xml(p->into, entry->meaning);
    frame_text_addf(p->into, "</h%d>\n", rank);
}

static void write_note(page *p, const frame_entry *entry) {
    add(p, "<div class=\"frame-note\"><span class=\"frame-meaning\">");
    frame_text_add_xml(p->into, entry->meaning);
    add(p, "</span>");
    if (*entry->source) {
        add(p, " <span class=\"frame-source\">");
        frame_text_add_xml(p->into, entry->source);
        add(p, "</span>");
    }
    add(p, "</div></div>\n");
}

/* One line of a formula, the sign of equality before it. */
static void write_line(page *p, const char *mathml) {
    add(p, "<div class=\"frame-line\"><span class=\"frame-equals\">=</span>");
    add(p, mathml);
    add(p, "</div>");
}

static void write_value(page *p, const frame_entry *entry) {
    add(p, "<div class=\"frame-line\"><span class=\"frame-equals\">=</span><data class=\"frame-value\" value=\"");
    frame_figure_json(entry->value, p->into);
    add(p, "\"><math>");
    frame_figure_mathml(entry->value, p->into);
    add(p, "</math></data>");
    if (*entry->unit) {
        frame_scratch_clear(p->symbols, p->into);
        frame_unit_display(entry->unit, p->symbols);
        add(p, " <span class=\"frame-unit\">");
        frame_text_add_xml(p->into, frame_text_chars(p->symbols));
        add(p, "</span>");
    }
    add(p, "</div>");
}

/* The formula in both forms; what would say the same thing twice is left out. */
static void write_formula(page *p, size_t at) {
    frame_scratch_clear(p->symbols, p->into);
    frame_scratch_clear(p->numbers, p->into);
    frame_entry_mathml(p->w, at, 0, p->symbols);
    frame_entry_mathml(p->w, at, 1, p->numbers);
    const char *symbols = frame_text_chars(p->symbols), *numbers = frame_text_chars(p->numbers);
    write_line(p, symbols);
    if (!*numbers || strcmp(symbols, numbers) == 0) return;
    frame_scratch_clear(p->symbols, p->into);
    frame_text_add(p->symbols, "<math displaystyle=\"true\">");
    frame_figure_mathml(frame_entry_at(p->w, at)->value, p->symbols);
    frame_text_add(p->symbols, "</math>");
    if (strcmp(frame_text_chars(p->symbols), numbers) != 0) write_line(p, numbers);
}

static void write_valued(page *p, size_t at) {
    const frame_entry *entry = frame_entry_at(p->w, at);
    const char *kind = entry->kind == FRAME_STEP_GIVEN   ? "given"
                       : entry->kind == FRAME_STEP_TABLE ? "table"
                                                         : "computed";
    frame_text_addf(p->into, "<div class=\"frame-step frame-%s\"><div class=\"frame-symbol\"><math>", kind);
    frame_symbol_mathml(entry->name, strlen(entry->name), p->into);
    add(p, "</math></div><div class=\"frame-lines\">");
    if (entry->kind == FRAME_STEP_COMPUTED) write_formula(p, at);
    write_value(p, entry);
    add(p, "</div>");
    write_note(p, entry);
}

static void write_case(page *p, size_t at) {
    add(p, "<div class=\"frame-step frame-case\"><div class=\"frame-symbol\">since</div><div class=\"frame-lines\">");
    add(p, "<div class=\"frame-line\">");
    frame_scratch_clear(p->numbers, p->into);
    frame_entry_mathml(p->w, at, 0, p->into);
    frame_entry_mathml(p->w, at, 1, p->numbers);
    add(p, "</div>");
    if (frame_text_length(p->numbers)) {
        add(p, "<div class=\"frame-line\">");
        add(p, frame_text_chars(p->numbers));
        add(p, "</div>");
    }
    add(p, "</div>");
    write_note(p, frame_entry_at(p->w, at));
}

static void write_entry(page *p, size_t at) {
    const frame_entry *entry = frame_entry_at(p->w, at);
    if (!frame_entry_is_seen(entry)) {
        end_section(p);
        return;
    }
    if (entry->kind == FRAME_STEP_HEADING) {
        write_heading(p, entry);
        return;
    }
    if (!p->in_section) begin_section(p, entry->level);
    if (entry->kind == FRAME_STEP_CASE)
        write_case(p, at);
    else
        write_valued(p, at);
}

static void write_entries(page *p) {
    add(p, "<div class=\"frame-working\">\n");
    for (size_t i = 0; i < p->w->entries.count; i++) write_entry(p, i);
    end_section(p);
    if (!frame_working_step_count(p->w)) add(p, "<p class=\"frame-empty\">Nothing is recorded.</p>\n");
    if (p->w->state)
        add(p, "<p class=\"frame-caution\">The record is not whole: there was no memory for the rest.</p>\n");
    add(p, "</div>\n");
}

void frame_working_html(const frame_working *w, frame_text *into) {
    page p = {.w = w, .into = into};
    const int made = !frame_text_new(&p.symbols) && !frame_text_new(&p.numbers);
    if (made) write_entries(&p);
    if (!made || frame_text_state(p.symbols) || frame_text_state(p.numbers)) frame_text_fail(into);
    frame_text_free(p.symbols);
    frame_text_free(p.numbers);
}
