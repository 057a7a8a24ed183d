/* A formula as a line of MathML elements: browsers do not break a line within one. A wide sum under a root or over a
 * fraction is taken apart, too, and written in parentheses. */
#include "text/writer.h"
#include "working/mathml.h"

/* What stands around the pieces of a sum that was taken apart: the root before it, what it is divided by after it. */
typedef struct edge {
    const struct edge *outer;
    const frame_formula *to;
    const frame_node *root, *fraction; /* one of the two */
} edge;

static void add(const frame_formula *to, const char *chars) {
    frame_text_add(to->into, chars);
}

static void write_open(const edge *e) {
    if (!e) return;
    write_open(e->outer);
    if (e->root) add(e->to, "<mo lspace=\"0\" rspace=\"0\">√</mo>");
    add(e->to, "<mo stretchy=\"false\">(</mo>");
}

static void write_close(const edge *e) {
    if (!e) return;
    add(e->to, "<mo stretchy=\"false\">)</mo>");
    if (e->fraction) {
        frame_formula_sign(e->to, FRAME_OP_DIVIDE);
        frame_formula_enclosed(e->to, e->fraction->parts[1],
                               frame_formula_right_needs(e->to, e->fraction, e->fraction->parts[1]));
    }
    write_close(e->outer);
}

static int is_sum(const frame_node *node) {
    return node->operation == FRAME_OP_ADD || node->operation == FRAME_OP_SUBTRACT;
}

static int leaves(const frame_node *node) {
    int count = frame_node_parts(node) == 0;
    for (int i = 0; i < frame_node_parts(node); i++) count += leaves(node->parts[i]);
    return count;
}

/* Too wide a sum to stand in one piece on a narrow page. */
static int is_wide(const frame_formula *to, const frame_node *node) {
    enum { MOST_LEAVES = 6 };
    node = frame_formula_taken(to, node);
    return is_sum(node) && leaves(node) > MOST_LEAVES;
}

/* sign: the one before the first piece; FRAME_OP_NUMBER for none. open and close: what stands around. */
static void write_line(const frame_formula *to, const frame_node *node, frame_operation sign, const edge *open,
                       const edge *close);

/* One more piece of the line, with the sign before it. */
static void write_piece(const frame_formula *to, const frame_node *node, int parentheses, frame_operation sign,
                        const edge *open, const edge *close) {
    const frame_formula flat = frame_formula_flat(to);
    node = frame_formula_taken(to, node);
    const int root = node->operation == FRAME_OP_CALL && node->function == FRAME_FN_SQRT;
    if ((root || (node->operation == FRAME_OP_DIVIDE && !parentheses)) && is_wide(to, node->parts[0])) {
        const edge opened = {open, &flat, root ? node : NULL, root ? NULL : node};
        const edge closed = {close, &flat, root ? node : NULL, root ? NULL : node};
        write_line(&flat, node->parts[0], sign, &opened, &closed);
        return;
    }
    add(to, sign == FRAME_OP_NUMBER ? "<math displaystyle=\"true\">" : "<wbr><math displaystyle=\"true\">");
    if (sign != FRAME_OP_NUMBER) frame_formula_sign(to, sign);
    write_open(open);
    frame_formula_enclosed(to, node, parentheses);
    write_close(close);
    add(to, "</math>");
}

static void write_line(const frame_formula *to, const frame_node *node, frame_operation sign, const edge *open,
                       const edge *close) {
    node = frame_formula_taken(to, node);
    const frame_node *left = node->parts[0] ? frame_formula_taken(to, node->parts[0]) : NULL;
    const int sum = is_sum(node), product = node->operation == FRAME_OP_MULTIPLY && !frame_formula_degrees(node);
    if (!sum && !product) {
        write_piece(to, node, 0, sign, open, close);
        return;
    }
    if (sum ? is_sum(left) : left->operation == FRAME_OP_MULTIPLY)
        write_line(to, left, sign, open, NULL);
    else
        write_piece(to, left, frame_formula_left_needs_mathml(to, node), sign, open, NULL);
    write_piece(to, node->parts[1], frame_formula_right_needs_mathml(to, node), node->operation, NULL, close);
}

void frame_formula_mathml_line(const frame_formula *to, const frame_node *node) {
    write_line(to, node, FRAME_OP_NUMBER, NULL, NULL);
}
