/* Working every recorded formula out anew. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "text/writer.h"
#include "working/figure.h"
#include "working/formula.h"
#include "working/lines.h"
#include "working/symbol.h"

/* The most by which a formula may come out differently, relative: a few roundings, since a compiler may work constant
 * parts out more exactly. */
static const double most = 1e-12;

typedef struct checker {
    const frame_working *w;
    frame_text *into;
    size_t found;
    frame_status status;
} checker;

/* Begins the line on an entry: its number as the reader counts, its symbol. */
static void begin_line(checker *c, size_t at) {
    const frame_entry *entry = frame_entry_at(c->w, at);
    c->found++;
    frame_text_addf(c->into, "step %zu", entry->shown_before + 1);
    if (*entry->name) {
        frame_text_add(c->into, ", ");
        frame_symbol_ascii(entry->name, strlen(entry->name), c->into);
    }
    frame_text_add(c->into, ": ");
}

static void end_line(checker *c, const char *end, size_t at) {
    frame_text_add(c->into, end);
    if (*frame_entry_at(c->w, at)->expression) {
        frame_text_add(c->into, " in \"");
        frame_text_add(c->into, frame_entry_at(c->w, at)->expression);
        frame_text_add(c->into, "\"");
    }
    frame_text_add(c->into, "\n");
}

static int agrees(double value, double recorded) {
    if (value == recorded) return 1;
    return isfinite(value) && isfinite(recorded) && fabs(value - recorded) <= most * fmax(fabs(value), fabs(recorded));
}

static void compare(checker *c, size_t at, double value) {
    const frame_entry *entry = frame_entry_at(c->w, at);
    if (entry->kind == FRAME_STEP_CASE) {
        if (value != 0) return;
        begin_line(c, at);
        end_line(c, "the condition is not true", at);
    } else if (!agrees(value, entry->value)) {
        begin_line(c, at);
        frame_figure_json(value, c->into);
        frame_text_add(c->into, " is not the recorded ");
        frame_figure_json(entry->value, c->into);
        end_line(c, "", at);
    }
}

static void work_out(checker *c, size_t at, const frame_node *root) {
    frame_formula from = {.working = c->w, .at = at};
    const frame_node *missing;
    double value;
    if (frame_node_value(root, frame_formula_value_of, &from, &value, &missing) == FRAME_OK) {
        compare(c, at, value);
        return;
    }
    begin_line(c, at);
    frame_text_add_bytes(c->into, missing->name, missing->length);
    end_line(c, " is not recorded before", at);
}

static void check_formula(checker *c, size_t at) {
    const frame_entry *entry = frame_entry_at(c->w, at);
    frame_expression expression;
    const frame_status status = frame_entry_read(entry, &expression);
    if (status == FRAME_OK) {
        work_out(c, at, expression.root);
        frame_expression_give(&expression);
    } else if (status == FRAME_NO_MEMORY) {
        c->status = status;
    } else if (entry->kind == FRAME_STEP_COMPUTED) {
        begin_line(c, at);
        frame_text_addf(c->into, "at character %zu %s", expression.trouble_at + 1, expression.trouble);
        end_line(c, "", at);
    }
}

static void check_entry(checker *c, size_t at) {
    const frame_entry *entry = frame_entry_at(c->w, at);
    if (frame_entry_has_value(entry) && !isfinite(entry->value)) {
        begin_line(c, at);
        end_line(c, "the value is not a finite number", at);
    } else if (entry->kind == FRAME_STEP_COMPUTED || entry->kind == FRAME_STEP_CASE) {
        check_formula(c, at);
    }
}

frame_status frame_working_check(const frame_working *working, frame_text *into) {
    if (!working) return frame_fail(FRAME_REQUIRED, "working", "NULL", "a handle", "working: NULL is not a working");
    if (!into) return frame_fail(FRAME_REQUIRED, "into", "NULL", "a text", "into: NULL is not a text");
    checker c = {.w = working, .into = into};
    for (size_t i = 0; i < working->entries.count; i++) check_entry(&c, i);
    if (c.status || working->state || frame_text_state(into))
        return frame_fail(FRAME_NO_MEMORY, "", "", "", "no memory");
    if (!c.found) return FRAME_OK;
    return frame_fail(FRAME_INTERNAL, "working", "", "formulas that come to their values",
                      "working: %zu of its steps do not come to their recorded values", c.found);
}
