/* A marking in each of the formats: the first line that differs, then every answer. */
#include <string.h>

#include "base/facts.h"
#include "text/writer.h"
#include "working/columns.h"
#include "working/figure.h"
#include "working/lines.h"
#include "working/marking.h"
#include "working/render.h"

enum { WIDTH = 100, WIDEST = 14 };

static const frame_marking_line *line_at(const frame_marking *m, size_t index) {
    return &FRAME_ITEM(const frame_marking_line, m->lines, index);
}

static int differs(const frame_marking *m) {
    return m->first < m->lines.count;
}

/* What stands at the head; with its line where one differs. */
static const char *head(const frame_marking *m) {
    if (differs(m)) return "First that differs: ";
    if (!m->lines.count) return "No answers were given.";
    for (size_t i = 0; i < m->lines.count; i++)
        if (line_at(m, i)->verdict == FRAME_MARKING_UNKNOWN) return "No answer differs, but not every symbol is known.";
    return "No answer differs.";
}

static void add_given(const frame_marking_line *line, frame_text *into) {
    frame_text_add_number(into, line->given, 15);
}

static size_t widest(const frame_marking *m, int given, frame_text *piece, frame_text *into) {
    size_t most = 1;
    for (size_t i = 0; i < m->lines.count; i++) {
        frame_scratch_clear(piece, into);
        if (given)
            add_given(line_at(m, i), piece);
        else
            frame_text_add(piece, line_at(m, i)->symbol);
        const size_t width = frame_columns_width(frame_text_chars(piece), frame_text_length(piece));
        if (width > most && width <= WIDEST) most = width;
    }
    return most;
}

static void write_line(const frame_marking_line *line, size_t symbols, size_t column, frame_text *const scratch[2],
                       frame_text *into) {
    frame_scratch_clear(scratch[0], into);
    frame_scratch_clear(scratch[1], into);
    frame_text_add(scratch[0], "  ");
    frame_text_add(scratch[0], line->symbol);
    frame_text_pad(scratch[0], symbols + 4);
    add_given(line, scratch[0]);
    frame_columns_words(scratch[1], line->explanation, WIDTH - column);
    frame_columns_join(frame_text_chars(scratch[0]), frame_text_chars(scratch[1]), column, into);
}

void frame_marking_text(const frame_marking *m, frame_text *into) {
    frame_text *scratch[2] = {NULL, NULL};
    frame_text_add(into, head(m));
    if (differs(m)) frame_text_add(into, line_at(m, m->first)->symbol);
    frame_text_add(into, differs(m) ? ".\n" : "\n");
    if (!frame_text_new(&scratch[0]) && !frame_text_new(&scratch[1])) {
        const size_t symbols = widest(m, 0, scratch[0], into), column = symbols + 6 + widest(m, 1, scratch[0], into);
        for (size_t i = 0; i < m->lines.count; i++) write_line(line_at(m, i), symbols, column, scratch, into);
        if (frame_text_state(scratch[0]) || frame_text_state(scratch[1])) frame_text_fail(into);
    } else {
        frame_text_fail(into);
    }
    frame_text_free(scratch[0]);
    frame_text_free(scratch[1]);
}

void frame_marking_markdown(const frame_marking *m, frame_text *into) {
    frame_text_add(into, head(m));
    if (differs(m)) frame_markdown_code(into, line_at(m, m->first)->symbol);
    frame_text_add(into, "\n");
    if (m->lines.count) frame_text_add(into, "\n| symbol | answer | mark |\n|---|--:|---|\n");
    for (size_t i = 0; i < m->lines.count; i++) {
        frame_text_add(into, "| ");
        frame_markdown_code(into, line_at(m, i)->symbol);
        frame_text_add(into, " | ");
        add_given(line_at(m, i), into);
        frame_text_add(into, " | ");
        frame_markdown_add(into, line_at(m, i)->explanation);
        frame_text_add(into, " |\n");
    }
}

static void write_html_row(const frame_marking_line *line, int first, frame_text *into) {
    frame_text_addf(into, "<tr class=\"frame-%s%s\"><td>", frame_word_text("marking_verdict", line->verdict),
                    first ? " frame-first" : "");
    frame_text_add_xml(into, line->symbol);
    frame_text_add(into, "</td><td>");
    add_given(line, into);
    frame_text_add(into, "</td><td>");
    frame_text_add_xml(into, line->explanation);
    frame_text_add(into, "</td></tr>\n");
}

void frame_marking_html(const frame_marking *m, frame_text *into) {
    frame_text_add(into, "<div class=\"frame-marking\">\n<p>");
    frame_text_add(into, head(m));
    if (differs(m)) frame_text_add_xml(into, line_at(m, m->first)->symbol);
    frame_text_add(into, "</p>\n");
    if (m->lines.count) frame_text_add(into, "<table>\n<tr><th>symbol</th><th>answer</th><th>mark</th></tr>\n");
    for (size_t i = 0; i < m->lines.count; i++) write_html_row(line_at(m, i), i == m->first, into);
    frame_text_add(into, m->lines.count ? "</table>\n</div>\n" : "</div>\n");
}

static void add_number(const char *key, double value, frame_text *into) {
    frame_text_addf(into, ", \"%s\": ", key);
    frame_figure_json(value, into);
}

static void add_text(const char *key, const char *chars, frame_text *into) {
    frame_text_addf(into, ", \"%s\": ", key);
    frame_text_add_json(into, chars);
}

static void write_json_line(const frame_marking_line *line, frame_text *into) {
    frame_text_addf(into, "{\"step\": %d", (int)line->step);
    add_text("symbol", line->symbol, into);
    add_text("verdict", frame_word_text("marking_verdict", line->verdict), into);
    add_number("given", line->given, into);
    add_number("expected", line->expected, into);
    add_number("follows", line->follows, into);
    add_number("ratio", line->ratio, into);
    add_text("unit", line->unit, into);
    add_text("cause", frame_word_text("marking_cause", line->cause), into);
    add_text("cause_symbol", line->cause_symbol, into);
    add_number("factor", line->factor, into);
    add_text("explanation", line->explanation, into);
    frame_text_add(into, "}");
}

void frame_marking_json(const frame_marking *m, frame_text *into) {
    frame_text_add(into, "{\"first\": ");
    if (differs(m))
        frame_text_addf(into, "%zu", m->first);
    else
        frame_text_add(into, "null");
    frame_text_add(into, ", \"lines\": [");
    for (size_t i = 0; i < m->lines.count; i++) {
        frame_text_add(into, i ? ",\n " : "\n ");
        write_json_line(line_at(m, i), into);
    }
    frame_text_add(into, "\n]}\n");
}
