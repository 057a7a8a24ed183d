/* What the working comes to with a student's numbers. */
#include <math.h>
#include <string.h>

#include "working/lines.h"
#include "working/marking.h"

typedef struct place {
    const frame_student *student;
    size_t at;
} place;

static int value_of(void *context, const frame_node *name, double *value) {
    const place *in = context;
    const size_t found = frame_entry_find_name(in->student->w, in->at, name->name, name->length);
    if (found == in->at) return 0;
    *value = in->student->values[found];
    return 1;
}

/* The earliest wrong answer that the symbols of a formula come from. */
static size_t root_of(const frame_student *student, size_t at, const frame_expression *formula) {
    size_t root = FRAME_NO_ROOT;
    for (size_t i = 0; i < formula->count; i++) {
        const frame_node *node = &formula->nodes[i];
        if (node->operation != FRAME_OP_NAME) continue;
        const size_t found = frame_entry_find_name(student->w, at, node->name, node->length);
        if (found != at && student->roots[found] < root) root = student->roots[found];
    }
    return root;
}

static frame_status follow_formula(frame_student *student, size_t at) {
    frame_expression formula;
    const frame_status status = frame_entry_read(frame_entry_at(student->w, at), &formula);
    if (status) return status == FRAME_NO_MEMORY ? status : FRAME_OK;
    place in = {student, at};
    double value;
    student->roots[at] = root_of(student, at, &formula);
    if (student->roots[at] != FRAME_NO_ROOT && !frame_node_value(formula.root, value_of, &in, &value, NULL) &&
        isfinite(value))
        student->values[at] = value;
    frame_expression_give(&formula);
    return FRAME_OK;
}

/* A value handed on from one calculation to another is recorded anew, without a formula: it is known by its digits. */
static void follow_handed_on(frame_student *student, size_t at) {
    const frame_entry *entry = frame_entry_at(student->w, at);
    if (entry->value == floor(entry->value)) return;
    for (size_t i = at; i-- > 0;) {
        const frame_entry *earlier = frame_entry_at(student->w, i);
        if (!frame_entry_has_value(earlier) || earlier->value != entry->value) continue;
        if (strcmp(earlier->unit, entry->unit) != 0) continue;
        student->values[at] = student->values[i];
        student->roots[at] = student->roots[i];
        return;
    }
}

frame_status frame_student_follow(frame_student *student, size_t at) {
    if (frame_entry_at(student->w, at)->kind == FRAME_STEP_COMPUTED) return follow_formula(student, at);
    follow_handed_on(student, at);
    return FRAME_OK;
}
