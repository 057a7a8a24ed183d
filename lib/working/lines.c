/* What an entry's expression looks like, whatever state it is in. */
#include "working/lines.h"

#include <string.h>

#include "text/writer.h"
#include "working/figure.h"
#include "working/formula.h"

frame_status frame_entry_read(const frame_entry *entry, frame_expression *expression) {
    frame_status status = frame_expression_read(entry->expression, expression);
    if (status || entry->kind != FRAME_STEP_CASE) return status;
    const frame_operation root = expression->root->operation;
    if (frame_node_is_comparison(expression->root) || root == FRAME_OP_NOT) return FRAME_OK;
    frame_expression_give(expression);
    expression->trouble = "a sentence";
    return FRAME_UNREADABLE;
}

static void add_line(const frame_working *w, size_t at, int numbers, int mathml, frame_text *into) {
    const frame_entry *entry = frame_entry_at(w, at);
    frame_expression expression;
    if (!*entry->expression) return;
    const frame_status status = frame_entry_read(entry, &expression);
    if (status == FRAME_NO_MEMORY) frame_text_fail(into);
    if (status) {
        if (!numbers && mathml) frame_text_add_xml(into, entry->expression);
        if (!numbers && !mathml) frame_text_add(into, entry->expression);
        return;
    }
    const frame_formula to = {.into = into, .working = w, .at = at, .numbers = numbers};
    if (mathml)
        frame_formula_mathml_line(&to, expression.root);
    else
        frame_formula_text(&to, expression.root);
    frame_expression_give(&expression);
}

void frame_entry_line(const frame_working *w, size_t at, int numbers, frame_text *into) {
    add_line(w, at, numbers, 0, into);
}

void frame_entry_mathml(const frame_working *w, size_t at, int numbers, frame_text *into) {
    add_line(w, at, numbers, 1, into);
}

void frame_entry_value(double value, const char *unit, frame_text *into) {
    frame_figure_display(value, into);
    if (*unit) frame_text_add(into, " ");
    frame_unit_display(unit, into);
}

void frame_scratch_clear(frame_text *scratch, frame_text *into) {
    if (frame_text_state(scratch)) frame_text_fail(into);
    frame_text_clear(scratch);
}
