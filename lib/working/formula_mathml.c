/* A formula as MathML (the part of it that browsers draw: MathML Core). */
#include <math.h>

#include "text/writer.h"
#include "working/figure.h"
#include "working/formula.h"
#include "working/mathml.h"
#include "working/symbol.h"

static void add(const frame_formula *to, const char *chars) {
    frame_text_add(to->into, chars);
}

/* Where the signs around it would have to grow with a fraction, which they do not in every font, or where it would come
 * out too small to read, a fraction is written with a slash. */
frame_formula frame_formula_flat(const frame_formula *to) {
    frame_formula within = *to;
    within.flat = 1;
    return within;
}

void frame_formula_enclosed(const frame_formula *to, const frame_node *node, int needed) {
    if (!needed) {
        frame_formula_mathml(to, node);
        return;
    }
    const frame_formula within = frame_formula_flat(to);
    add(to, "<mrow><mo stretchy=\"false\">(</mo>");
    frame_formula_mathml(&within, node);
    add(to, "<mo stretchy=\"false\">)</mo></mrow>");
}

static void in_row(const frame_formula *to, const frame_node *node) {
    add(to, "<mrow>");
    frame_formula_mathml(to, node);
    add(to, "</mrow>");
}

static void in_flat_row(const frame_formula *to, const frame_node *node) {
    const frame_formula within = frame_formula_flat(to);
    in_row(&within, node);
}

static void write_fraction(const frame_formula *to, const frame_node *above, const frame_node *below) {
    add(to, "<mfrac>");
    in_flat_row(to, above);
    in_flat_row(to, below);
    add(to, "</mfrac>");
}

static const char *const signs[] = {
    [FRAME_OP_ADD] = "+",           [FRAME_OP_SUBTRACT] = "−",   [FRAME_OP_MULTIPLY] = "·",   [FRAME_OP_DIVIDE] = "/",
    [FRAME_OP_LESS] = "&lt;",       [FRAME_OP_LESS_EQUAL] = "≤", [FRAME_OP_GREATER] = "&gt;", [FRAME_OP_EQUAL] = "=",
    [FRAME_OP_GREATER_EQUAL] = "≥", [FRAME_OP_UNEQUAL] = "≠",    [FRAME_OP_AND] = "and",      [FRAME_OP_OR] = "or",
};

void frame_formula_sign(const frame_formula *to, frame_operation operation) {
    const int word = operation == FRAME_OP_AND || operation == FRAME_OP_OR;
    const int slash = operation == FRAME_OP_DIVIDE;
    add(to, word ? "<mtext>\u00a0" : slash ? "<mo lspace=\"0\" rspace=\"0\">" : "<mo form=\"infix\">");
    add(to, signs[operation]);
    add(to, word ? "\u00a0</mtext>" : "</mo>");
}

/* A stacked fraction needs no parentheses. */
static int is_stacked(const frame_formula *to, const frame_node *node) {
    return !to->flat && frame_formula_taken(to, node)->operation == FRAME_OP_DIVIDE;
}

int frame_formula_left_needs_mathml(const frame_formula *to, const frame_node *node) {
    return !is_stacked(to, node->parts[0]) && frame_formula_left_needs(to, node);
}

int frame_formula_right_needs_mathml(const frame_formula *to, const frame_node *node) {
    return !is_stacked(to, node->parts[1]) && frame_formula_right_needs(to, node, node->parts[1]);
}

static void write_pair(const frame_formula *to, const frame_node *node) {
    if (is_stacked(to, node)) {
        write_fraction(to, node->parts[0], node->parts[1]);
        return;
    }
    frame_formula_enclosed(to, node->parts[0], frame_formula_left_needs_mathml(to, node));
    frame_formula_sign(to, node->operation);
    frame_formula_enclosed(to, node->parts[1], frame_formula_right_needs_mathml(to, node));
}

static int write_degrees(const frame_formula *to, const frame_node *node) {
    const frame_node *angle = frame_formula_degrees(node);
    const int back = node->operation == FRAME_OP_DIVIDE && node->parts[1]->operation == FRAME_OP_DEG;
    if (!angle && !back) return 0;
    if (back) angle = node->parts[0];
    frame_formula_enclosed(to, angle, frame_formula_binds(to, angle) < FRAME_BINDS_PRODUCT);
    add(to, back ? "<mo>·</mo><mn>180</mn><mo lspace=\"0\" rspace=\"0\">/</mo><mi>π</mi>"
                 : "<mo>·</mo><mi>π</mi><mo lspace=\"0\" rspace=\"0\">/</mo><mn>180</mn>");
    return 1;
}

static void write_power(const frame_formula *to, const frame_node *node) {
    const frame_node *base = frame_formula_taken(to, node->parts[0]);
    add(to, "<msup>");
    if (frame_formula_binds(to, base) <= FRAME_BINDS_POWER || frame_formula_is_marked(to, base))
        frame_formula_enclosed(to, base, 1);
    else
        in_row(to, base);
    in_flat_row(to, node->parts[1]);
    add(to, "</msup>");
}

static void write_hypotenuse(const frame_formula *to, const frame_node *node) {
    add(to, "<msqrt>");
    for (int i = 0; i < 2; i++) {
        add(to, i ? "<mo>+</mo><msup><mrow>" : "<msup><mrow>");
        frame_formula_enclosed(to, node->parts[i], frame_formula_binds(to, node->parts[i]) <= FRAME_BINDS_POWER);
        add(to, "</mrow><mn>2</mn></msup>");
    }
    add(to, "</msqrt>");
}

static void write_values(const frame_formula *to, const frame_node *node, const frame_node *call) {
    for (int i = 0; i < frame_node_parts(call); i++) {
        if (i) add(to, "<mo separator=\"true\">,</mo>");
        const frame_node *part = frame_formula_taken(to, call->parts[i]);
        if (part->operation == FRAME_OP_CALL && part->function == node->function &&
            (node->function == FRAME_FN_FMIN || node->function == FRAME_FN_FMAX))
            write_values(to, node, part);
        else
            in_flat_row(to, part);
    }
}

static void write_angle(const frame_formula *to, const frame_node *of) {
    const frame_node *degrees = frame_formula_degrees(of);
    if (!degrees) {
        in_flat_row(to, of);
        return;
    }
    double value;
    degrees = frame_formula_taken(to, degrees);
    frame_formula_enclosed(to, degrees, frame_formula_binds(to, degrees) < FRAME_BINDS_WHOLE);
    if (degrees->operation != FRAME_OP_NAME || frame_formula_number(to, degrees, &value))
        add(to, "<mi mathvariant=\"normal\">°</mi>");
}

/* Functions with a sign of their own: begin and end. */
static int write_enclosed(const frame_formula *to, const frame_node *node) {
    static const char *const around[FRAME_FN_COUNT][2] = {
        [FRAME_FN_SQRT] = {"<msqrt>", "</msqrt>"},
        [FRAME_FN_CBRT] = {"<mroot><mrow>", "</mrow><mn>3</mn></mroot>"},
        [FRAME_FN_FABS] = {"<mrow><mo stretchy=\"false\">|</mo>", "<mo stretchy=\"false\">|</mo></mrow>"},
        [FRAME_FN_FLOOR] = {"<mrow><mo>⌊</mo>", "<mo>⌋</mo></mrow>"},
        [FRAME_FN_CEIL] = {"<mrow><mo>⌈</mo>", "<mo>⌉</mo></mrow>"},
        [FRAME_FN_EXP] = {"<msup><mi>e</mi><mrow>", "</mrow></msup>"},
    };
    if (!around[node->function][0]) return 0;
    const frame_formula within = frame_formula_flat(to);
    add(to, around[node->function][0]);
    frame_formula_mathml(&within, node->parts[0]);
    add(to, around[node->function][1]);
    return 1;
}

static void write_call(const frame_formula *to, const frame_node *node) {
    static const char *const shown[FRAME_FN_COUNT] = {
        [FRAME_FN_FMIN] = "min", [FRAME_FN_FMAX] = "max", [FRAME_FN_LOG] = "ln", [FRAME_FN_LOG10] = "log"};
    if (node->function == FRAME_FN_POW) {
        write_power(to, node);
        return;
    }
    if (node->function == FRAME_FN_HYPOT) {
        write_hypotenuse(to, node);
        return;
    }
    if (write_enclosed(to, node)) return;
    add(to, "<mrow><mi>");
    add(to, shown[node->function] ? shown[node->function] : frame_function_name(node->function));
    add(to, "</mi><mo stretchy=\"false\">(</mo>");
    if (node->function >= FRAME_FN_SIN && node->function <= FRAME_FN_TAN)
        write_angle(to, node->parts[0]);
    else
        write_values(to, node, node);
    add(to, "<mo stretchy=\"false\">)</mo></mrow>");
}

static void write_choice(const frame_formula *to, const frame_node *node) {
    add(to, "<mtable class=\"frame-choice\">");
    for (;; node = node->parts[2]) {
        const int last = node->operation != FRAME_OP_CHOOSE;
        add(to, "<mtr><mtd>");
        in_flat_row(to, last ? node : node->parts[1]);
        add(to, last ? "</mtd><mtd><mtext>otherwise</mtext>" : "</mtd><mtd><mtext>if\u00a0</mtext>");
        if (!last) in_flat_row(to, node->parts[0]);
        add(to, "</mtd></mtr>");
        if (last) break;
    }
    add(to, "</mtable>");
}

void frame_formula_mathml(const frame_formula *to, const frame_node *node) {
    double value;
    node = frame_formula_taken(to, node);
    if (frame_formula_number(to, node, &value)) {
        frame_figure_mathml(value, to->into);
        return;
    }
    switch (node->operation) {
        case FRAME_OP_NAME:
            frame_symbol_mathml(node->name, node->length, to->into);
            return;
        case FRAME_OP_PI:
            add(to, "<mi>π</mi>");
            return;
        case FRAME_OP_DEG:
            add(to, "<mi>π</mi><mo lspace=\"0\" rspace=\"0\">/</mo><mn>180</mn>");
            return;
        case FRAME_OP_NEGATE:
        case FRAME_OP_NOT:
            add(to, node->operation == FRAME_OP_NOT ? "<mtext>not\u00a0</mtext>" : "<mo form=\"prefix\">−</mo>");
            frame_formula_enclosed(to, node->parts[0], frame_formula_negated_needs(to, node));
            return;
        case FRAME_OP_CALL:
            write_call(to, node);
            return;
        case FRAME_OP_CHOOSE:
            write_choice(to, node);
            return;
        default:
            if (!write_degrees(to, node)) write_pair(to, node);
    }
}
