/* The formulas behind a step, and working them out again with a slip in them. */
#include "working/slip.h"

#include <string.h>

#include "working/lines.h"

static int has_symbol(const frame_slip *slip, size_t entry) {
    for (size_t i = 0; i < slip->symbols.count; i++)
        if (FRAME_ITEM(size_t, slip->symbols, i) == entry) return 1;
    return 0;
}

/* The symbols of a formula; those already there are passed over. */
static frame_status add_symbols(frame_slip *slip, size_t entry, const frame_expression *expression) {
    for (size_t i = 0; i < expression->count; i++) {
        const frame_node *node = &expression->nodes[i];
        if (node->operation != FRAME_OP_NAME) continue;
        const size_t found = frame_entry_find_name(slip->student->w, entry, node->name, node->length);
        if (found == entry || has_symbol(slip, found)) continue;
        if (!frame_array_push(&slip->symbols, &found)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

/* Takes the formula of an entry, if it has one that can be read. */
static frame_status add_formula(frame_slip *slip, size_t entry) {
    const frame_entry *of = frame_entry_at(slip->student->w, entry);
    frame_slip_formula formula = {.entry = entry};
    if (of->kind != FRAME_STEP_COMPUTED) return FRAME_OK;
    frame_status status = frame_entry_read(of, &formula.expression);
    if (status) return status == FRAME_NO_MEMORY ? status : FRAME_OK;
    status = add_symbols(slip, entry, &formula.expression);
    if (!status && frame_array_push(&slip->formulas, &formula)) return FRAME_OK;
    frame_expression_give(&formula.expression);
    return FRAME_NO_MEMORY;
}

/* A step stands after all it is computed from. */
static void put_in_order(frame_slip *slip) {
    for (size_t i = 1; i < slip->formulas.count; i++)
        for (size_t j = i; j > 0; j--) {
            frame_slip_formula *a = &FRAME_ITEM(frame_slip_formula, slip->formulas, j - 1), *b = a + 1;
            if (a->entry < b->entry) break;
            const frame_slip_formula kept = *a;
            *a = *b;
            *b = kept;
        }
}

frame_status frame_slip_begin(frame_slip *slip, const frame_student *student, size_t at) {
    *slip = (frame_slip){.student = student, .at = at, .replaced = {FRAME_NO_ROOT, FRAME_NO_ROOT}};
    slip->formulas.item_size = sizeof(frame_slip_formula);
    slip->symbols.item_size = sizeof(size_t);
    slip->values = frame_take_zeroed(student->w->entries.count, sizeof *slip->values);
    if (!slip->values) return FRAME_NO_MEMORY;
    frame_status status = add_formula(slip, at);
    slip->direct = slip->symbols.count;
    for (size_t i = 0; i < slip->symbols.count && !status; i++) {
        const size_t entry = FRAME_ITEM(size_t, slip->symbols, i);
        if (student->answered[entry] == FRAME_NO_ROOT) status = add_formula(slip, entry);
    }
    put_in_order(slip);
    return status;
}

void frame_slip_end(frame_slip *slip) {
    for (size_t i = 0; i < slip->formulas.count; i++)
        frame_expression_give(&FRAME_ITEM(frame_slip_formula, slip->formulas, i).expression);
    frame_array_give(&slip->formulas);
    frame_array_give(&slip->symbols);
    frame_give(slip->values);
}

typedef struct place {
    const frame_slip *slip;
    size_t entry;
} place;

static int value_of(void *context, const frame_node *name, double *value) {
    const place *in = context;
    const size_t found = frame_entry_find_name(in->slip->student->w, in->entry, name->name, name->length);
    if (found == in->entry) return 0;
    *value = in->slip->values[found];
    for (int i = 0; i < 2; i++)
        if (in->slip->replaced[i] == found) *value = in->slip->values_replaced[i];
    return 1;
}

int frame_slip_work_out(frame_slip *slip, double *value) {
    if (!slip->formulas.count) return 0;
    memcpy(slip->values, slip->student->values, slip->student->w->entries.count * sizeof *slip->values);
    for (size_t i = 0; i < slip->formulas.count; i++) {
        const frame_slip_formula *formula = &FRAME_ITEM(frame_slip_formula, slip->formulas, i);
        place in = {slip, formula->entry};
        if (frame_node_value(formula->expression.root, value_of, &in, &slip->values[formula->entry], NULL)) return 0;
    }
    *value = slip->values[slip->at];
    return 1;
}
