/* What plain and MathML writing have in common: how tightly things bind, what number stands for a name. */
#include "working/formula.h"

#include <string.h>

#include "working/figure.h"

int frame_formula_value_of(void *formula, const frame_node *name, double *value) {
    const frame_formula *to = formula;
    const size_t found = frame_entry_find_name(to->working, to->at, name->name, name->length);
    if (found == to->at) return 0;
    *value = frame_entry_at(to->working, found)->value;
    return 1;
}

const frame_node *frame_formula_taken(const frame_formula *to, const frame_node *node) {
    double holds;
    frame_formula copy = *to;
    while (to->numbers && node->operation == FRAME_OP_CHOOSE &&
           !frame_node_value(node->parts[0], frame_formula_value_of, &copy, &holds, NULL))
        node = node->parts[holds != 0 ? 1 : 2];
    return node;
}

int frame_formula_number(const frame_formula *to, const frame_node *node, double *value) {
    frame_formula copy = *to;
    if (node->operation == FRAME_OP_NUMBER) return *value = node->number, 1;
    if (node->operation == FRAME_OP_NEGATE && node->parts[0]->operation == FRAME_OP_NUMBER)
        return *value = -node->parts[0]->number, 1;
    return to->numbers && node->operation == FRAME_OP_NAME && frame_formula_value_of(&copy, node, value);
}

const frame_node *frame_formula_degrees(const frame_node *node) {
    if (node->operation != FRAME_OP_MULTIPLY) return NULL;
    if (node->parts[1]->operation == FRAME_OP_DEG) return node->parts[0];
    return node->parts[0]->operation == FRAME_OP_DEG ? node->parts[1] : NULL;
}

int frame_formula_binds(const frame_formula *to, const frame_node *node) {
    double value;
    node = frame_formula_taken(to, node);
    if (frame_formula_number(to, node, &value)) {
        if (value < 0) return frame_figure_is_product(value) ? FRAME_BINDS_PRODUCT : FRAME_BINDS_SIGN;
        return frame_figure_is_product(value) ? FRAME_BINDS_PRODUCT : FRAME_BINDS_WHOLE;
    }
    switch (node->operation) {
        case FRAME_OP_CHOOSE:
            return FRAME_BINDS_CHOICE;
        case FRAME_OP_OR:
            return FRAME_BINDS_OR;
        case FRAME_OP_AND:
            return FRAME_BINDS_AND;
        case FRAME_OP_LESS:
        case FRAME_OP_LESS_EQUAL:
        case FRAME_OP_GREATER:
        case FRAME_OP_GREATER_EQUAL:
        case FRAME_OP_EQUAL:
        case FRAME_OP_UNEQUAL:
            return FRAME_BINDS_COMPARISON;
        case FRAME_OP_ADD:
        case FRAME_OP_SUBTRACT:
            return FRAME_BINDS_SUM;
        case FRAME_OP_MULTIPLY:
        case FRAME_OP_DIVIDE:
        case FRAME_OP_DEG:
            return FRAME_BINDS_PRODUCT;
        case FRAME_OP_NEGATE:
        case FRAME_OP_NOT:
            return FRAME_BINDS_SIGN;
        case FRAME_OP_CALL:
            return node->function == FRAME_FN_POW ? FRAME_BINDS_POWER : FRAME_BINDS_WHOLE;
        default:
            return FRAME_BINDS_WHOLE;
    }
}

/* Tells whether a tree is written with a minus first. */
static int begins_with_sign(const frame_formula *to, const frame_node *node) {
    double value;
    for (;; node = node->parts[0]) {
        node = frame_formula_taken(to, node);
        if (frame_formula_number(to, node, &value)) return value < 0;
        if (node->operation == FRAME_OP_NEGATE) return 1;
        if (node->operation < FRAME_OP_ADD || node->operation > FRAME_OP_DIVIDE) return 0;
    }
}

int frame_formula_right_needs(const frame_formula *to, const frame_node *node, const frame_node *right) {
    const int own = frame_formula_binds(to, node), of_right = frame_formula_binds(to, right);
    if (begins_with_sign(to, right)) return 1;
    if (of_right != own) return of_right < own;
    /* a + (b - c) and a·(b·c) read the same without */
    if (node->operation == FRAME_OP_ADD) return 0;
    return node->operation != FRAME_OP_MULTIPLY || frame_formula_taken(to, right)->operation != FRAME_OP_MULTIPLY;
}

int frame_formula_left_needs(const frame_formula *to, const frame_node *node) {
    const frame_node *left = frame_formula_taken(to, node->parts[0]);
    /* a/b·c would be read in two ways */
    const int fraction = left->operation == FRAME_OP_DIVIDE && frame_formula_binds(to, node) == FRAME_BINDS_PRODUCT;
    return fraction || frame_formula_binds(to, left) < frame_formula_binds(to, node);
}

int frame_formula_negated_needs(const frame_formula *to, const frame_node *node) {
    const int binds = frame_formula_binds(to, node->parts[0]);
    return binds == FRAME_BINDS_SIGN ||
           binds < (node->operation == FRAME_OP_NOT ? FRAME_BINDS_POWER : FRAME_BINDS_PRODUCT);
}

int frame_formula_is_marked(const frame_formula *to, const frame_node *node) {
    const char *end = node->name + node->length;
    if (to->numbers || node->operation != FRAME_OP_NAME) return 0;
    return (node->length > 6 && strncmp(end - 6, "_prime", 6) == 0) ||
           (node->length > 5 && strncmp(end - 5, "_star", 5) == 0);
}
