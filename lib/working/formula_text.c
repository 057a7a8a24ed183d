/* A formula as one line of text. */
#include <math.h>

#include "text/writer.h"
#include "working/figure.h"
#include "working/formula.h"
#include "working/symbol.h"

static void add(const frame_formula *to, const char *chars) {
    frame_text_add(to->into, chars);
}

static void in_parentheses(const frame_formula *to, const frame_node *node, int needed) {
    if (needed) add(to, "(");
    frame_formula_text(to, node);
    if (needed) add(to, ")");
}

static void write_pair(const frame_formula *to, const frame_node *node, const char *sign) {
    in_parentheses(to, node->parts[0], frame_formula_left_needs(to, node));
    add(to, sign);
    in_parentheses(to, node->parts[1], frame_formula_right_needs(to, node, node->parts[1]));
}

/* Products with the degree: where an angle in degrees is turned into radians, or back. */
static int write_degrees(const frame_formula *to, const frame_node *node) {
    const frame_node *angle = frame_formula_degrees(node);
    const int back = node->operation == FRAME_OP_DIVIDE && node->parts[1]->operation == FRAME_OP_DEG;
    if (!angle && !back) return 0;
    if (back) angle = node->parts[0];
    in_parentheses(to, angle, frame_formula_binds(to, angle) < FRAME_BINDS_PRODUCT);
    add(to, back ? "·180/π" : "·π/180");
    return 1;
}

/* x², x⁻¹, x^0.3, x^(1/9) */
static void write_power(const frame_formula *to, const frame_node *node) {
    const frame_node *base = frame_formula_taken(to, node->parts[0]),
                     *exponent = frame_formula_taken(to, node->parts[1]);
    double value;
    const int marked = frame_formula_is_marked(to, base);
    in_parentheses(to, base, frame_formula_binds(to, base) <= FRAME_BINDS_POWER || marked);
    if (frame_formula_number(to, exponent, &value) && value == floor(value) && fabs(value) < 100) {
        frame_figure_superscript((int)value, to->into);
        return;
    }
    add(to, "^");
    in_parentheses(to, exponent, frame_formula_binds(to, exponent) < FRAME_BINDS_WHOLE);
}

static void write_root(const frame_formula *to, const frame_node *of, const char *sign) {
    of = frame_formula_taken(to, of);
    const int plain = frame_formula_binds(to, of) == FRAME_BINDS_WHOLE && of->operation != FRAME_OP_CALL;
    add(to, sign);
    in_parentheses(to, of, !plain);
}

static void write_hypotenuse(const frame_formula *to, const frame_node *node) {
    add(to, "√(");
    for (int i = 0; i < 2; i++) {
        if (i) add(to, " + ");
        in_parentheses(to, node->parts[i], frame_formula_binds(to, node->parts[i]) <= FRAME_BINDS_POWER);
        add(to, "²");
    }
    add(to, ")");
}

/* The values of a call; the least of a least is one list. */
static void write_values(const frame_formula *to, const frame_node *node, const frame_node *call) {
    for (int i = 0; i < frame_node_parts(call); i++) {
        if (i) add(to, ", ");
        const frame_node *part = frame_formula_taken(to, call->parts[i]);
        if (part->operation == FRAME_OP_CALL && part->function == node->function &&
            (node->function == FRAME_FN_FMIN || node->function == FRAME_FN_FMAX))
            write_values(to, node, part);
        else
            frame_formula_text(to, part);
    }
}

/* An angle given in degrees is shown in degrees. */
static void write_angle(const frame_formula *to, const frame_node *of) {
    const frame_node *degrees = frame_formula_degrees(of);
    if (!degrees) {
        frame_formula_text(to, of);
        return;
    }
    degrees = frame_formula_taken(to, degrees);
    in_parentheses(to, degrees, frame_formula_binds(to, degrees) < FRAME_BINDS_WHOLE);
    double value;
    if (degrees->operation != FRAME_OP_NAME || frame_formula_number(to, degrees, &value)) add(to, "°");
}

static void write_call(const frame_formula *to, const frame_node *node) {
    static const char *const shown[FRAME_FN_COUNT] = {
        [FRAME_FN_FABS] = "abs", [FRAME_FN_FMIN] = "min", [FRAME_FN_FMAX] = "max", [FRAME_FN_LOG] = "ln"};
    switch (node->function) {
        case FRAME_FN_POW:
            write_power(to, node);
            return;
        case FRAME_FN_SQRT:
            write_root(to, node->parts[0], "√");
            return;
        case FRAME_FN_CBRT:
            write_root(to, node->parts[0], "∛");
            return;
        case FRAME_FN_HYPOT:
            write_hypotenuse(to, node);
            return;
        default:
            break;
    }
    add(to, shown[node->function] ? shown[node->function] : frame_function_name(node->function));
    add(to, "(");
    if (node->function >= FRAME_FN_SIN && node->function <= FRAME_FN_TAN)
        write_angle(to, node->parts[0]);
    else
        write_values(to, node, node);
    add(to, ")");
}

static void write_choice(const frame_formula *to, const frame_node *node) {
    in_parentheses(to, node->parts[1], frame_formula_binds(to, node->parts[1]) == FRAME_BINDS_CHOICE);
    add(to, " if ");
    in_parentheses(to, node->parts[0], frame_formula_binds(to, node->parts[0]) == FRAME_BINDS_CHOICE);
    add(to, ", else ");
    frame_formula_text(to, node->parts[2]);
}

static const char *const signs[] = {
    [FRAME_OP_ADD] = " + ",     [FRAME_OP_SUBTRACT] = " - ",      [FRAME_OP_MULTIPLY] = "·",
    [FRAME_OP_DIVIDE] = "/",    [FRAME_OP_LESS] = " < ",          [FRAME_OP_LESS_EQUAL] = " ≤ ",
    [FRAME_OP_GREATER] = " > ", [FRAME_OP_GREATER_EQUAL] = " ≥ ", [FRAME_OP_EQUAL] = " = ",
    [FRAME_OP_UNEQUAL] = " ≠ ", [FRAME_OP_AND] = " and ",         [FRAME_OP_OR] = " or ",
};

void frame_formula_text(const frame_formula *to, const frame_node *node) {
    double value;
    node = frame_formula_taken(to, node);
    if (frame_formula_number(to, node, &value)) {
        frame_figure_display(value, to->into);
        return;
    }
    switch (node->operation) {
        case FRAME_OP_NAME:
            frame_symbol_display(node->name, node->length, to->into);
            return;
        case FRAME_OP_PI:
            add(to, "π");
            return;
        case FRAME_OP_DEG:
            add(to, "π/180");
            return;
        case FRAME_OP_NEGATE:
        case FRAME_OP_NOT:
            add(to, node->operation == FRAME_OP_NOT ? "not " : "-");
            in_parentheses(to, node->parts[0], frame_formula_negated_needs(to, node));
            return;
        case FRAME_OP_CALL:
            write_call(to, node);
            return;
        case FRAME_OP_CHOOSE:
            write_choice(to, node);
            return;
        default:
            if (!write_degrees(to, node)) write_pair(to, node, signs[node->operation]);
    }
}
