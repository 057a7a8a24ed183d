/* The recorded text of a formula, read back: a small part of C's expressions as a tree. */
#ifndef FRAME_LIB_WORKING_EXPRESSION_H
#define FRAME_LIB_WORKING_EXPRESSION_H

#include <frame/base.h>

typedef enum frame_operation {
    FRAME_OP_NUMBER,
    FRAME_OP_NAME,
    FRAME_OP_PI,
    FRAME_OP_DEG,
    FRAME_OP_NEGATE,
    FRAME_OP_NOT,
    FRAME_OP_ADD,
    FRAME_OP_SUBTRACT,
    FRAME_OP_MULTIPLY,
    FRAME_OP_DIVIDE,
    FRAME_OP_LESS,
    FRAME_OP_LESS_EQUAL,
    FRAME_OP_GREATER,
    FRAME_OP_GREATER_EQUAL,
    FRAME_OP_EQUAL,
    FRAME_OP_UNEQUAL,
    FRAME_OP_AND,
    FRAME_OP_OR,
    FRAME_OP_CHOOSE,
    FRAME_OP_CALL
} frame_operation;

typedef enum frame_function {
    FRAME_FN_POW,
    FRAME_FN_SQRT,
    FRAME_FN_CBRT,
    FRAME_FN_HYPOT,
    FRAME_FN_FABS,
    FRAME_FN_FMIN,
    FRAME_FN_FMAX,
    FRAME_FN_SIN,
    FRAME_FN_COS,
    FRAME_FN_TAN,
    FRAME_FN_ASIN,
    FRAME_FN_ACOS,
    FRAME_FN_ATAN,
    FRAME_FN_ATAN2,
    FRAME_FN_EXP,
    FRAME_FN_LOG,
    FRAME_FN_LOG10,
    FRAME_FN_FLOOR,
    FRAME_FN_CEIL,
    FRAME_FN_ROUND,
    FRAME_FN_COUNT
} frame_function;

typedef struct frame_node frame_node;
struct frame_node {
    frame_operation operation;
    frame_function function; /* of a call */
    double number;
    const char *name; /* into the text that was read */
    size_t length;
    const frame_node *parts[3];
};

typedef struct frame_expression {
    frame_node *nodes;
    size_t count;
    const frame_node *root;
    size_t trouble_at;   /* where the text stops making sense */
    const char *trouble; /* and why */
} frame_expression;

/* Reads a text, which must outlive the expression. FRAME_UNREADABLE sets trouble; FRAME_NO_MEMORY. Nothing need be
 * given back unless it returns FRAME_OK; giving back is harmless in any case. */
frame_status frame_expression_read(const char *chars, frame_expression *expression);
void frame_expression_give(frame_expression *expression);

/* What the function is called in C, and how many values it takes. */
const char *frame_function_name(frame_function function);
int frame_function_values(frame_function function);
/* The number of parts of a node. */
int frame_node_parts(const frame_node *node);

/* Finds the value of a name; gives 0 when there is none. */
typedef int (*frame_name_value)(void *context, const frame_node *name, double *value);
/* The value of a tree. FRAME_NO_VALUE when a name has none: *missing (unless NULL) is then its node. */
frame_status frame_node_value(const frame_node *node, frame_name_value find, void *context, double *value,
                              const frame_node **missing);

static inline int frame_node_is_comparison(const frame_node *node) {
    return node->operation >= FRAME_OP_LESS && node->operation <= FRAME_OP_OR;
}

#endif
