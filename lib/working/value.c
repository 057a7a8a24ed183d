/* The functions a formula may call, and the value of a formula. */
#include <math.h>

#include "working/expression.h"
#include "working/record.h"

static const struct {
    const char *name;
    int values;
} functions[FRAME_FN_COUNT] = {
    [FRAME_FN_POW] = {"pow", 2},     [FRAME_FN_SQRT] = {"sqrt", 1},   [FRAME_FN_CBRT] = {"cbrt", 1},
    [FRAME_FN_HYPOT] = {"hypot", 2}, [FRAME_FN_FABS] = {"fabs", 1},   [FRAME_FN_FMIN] = {"fmin", 2},
    [FRAME_FN_FMAX] = {"fmax", 2},   [FRAME_FN_SIN] = {"sin", 1},     [FRAME_FN_COS] = {"cos", 1},
    [FRAME_FN_TAN] = {"tan", 1},     [FRAME_FN_ASIN] = {"asin", 1},   [FRAME_FN_ACOS] = {"acos", 1},
    [FRAME_FN_ATAN] = {"atan", 1},   [FRAME_FN_ATAN2] = {"atan2", 2}, [FRAME_FN_EXP] = {"exp", 1},
    [FRAME_FN_LOG] = {"log", 1},     [FRAME_FN_LOG10] = {"log10", 1}, [FRAME_FN_FLOOR] = {"floor", 1},
    [FRAME_FN_CEIL] = {"ceil", 1},   [FRAME_FN_ROUND] = {"round", 1},
};

const char *frame_function_name(frame_function function) {
    return functions[function].name;
}
int frame_function_values(frame_function function) {
    return functions[function].values;
}

int frame_node_parts(const frame_node *node) {
    int count = 0;
    while (count < 3 && node->parts[count]) count++;
    return count;
}

static double call(frame_function function, double a, double b) {
    switch (function) {
        case FRAME_FN_POW:
            return pow(a, b);
        case FRAME_FN_SQRT:
            return sqrt(a);
        case FRAME_FN_CBRT:
            return cbrt(a);
        case FRAME_FN_HYPOT:
            return hypot(a, b);
        case FRAME_FN_FABS:
            return fabs(a);
        case FRAME_FN_FMIN:
            return fmin(a, b);
        case FRAME_FN_FMAX:
            return fmax(a, b);
        case FRAME_FN_SIN:
            return sin(a);
        case FRAME_FN_COS:
            return cos(a);
        case FRAME_FN_TAN:
            return tan(a);
        case FRAME_FN_ASIN:
            return asin(a);
        case FRAME_FN_ACOS:
            return acos(a);
        case FRAME_FN_ATAN:
            return atan(a);
        case FRAME_FN_ATAN2:
            return atan2(a, b);
        case FRAME_FN_EXP:
            return exp(a);
        case FRAME_FN_LOG:
            return log(a);
        case FRAME_FN_LOG10:
            return log10(a);
        case FRAME_FN_FLOOR:
            return floor(a);
        case FRAME_FN_CEIL:
            return ceil(a);
        case FRAME_FN_ROUND:
            return round(a);
        case FRAME_FN_COUNT:
            break;
    }
    return 0;
}

static double combine(const frame_node *node, double a, double b) {
    switch (node->operation) {
        case FRAME_OP_NUMBER:
            return node->number;
        case FRAME_OP_PI:
            return FRAME_PI;
        case FRAME_OP_DEG:
            return FRAME_DEG;
        case FRAME_OP_NEGATE:
            return -a;
        case FRAME_OP_NOT:
            return a == 0;
        case FRAME_OP_ADD:
            return a + b;
        case FRAME_OP_SUBTRACT:
            return a - b;
        case FRAME_OP_MULTIPLY:
            return a * b;
        case FRAME_OP_DIVIDE:
            return a / b;
        case FRAME_OP_LESS:
            return a < b;
        case FRAME_OP_LESS_EQUAL:
            return a <= b;
        case FRAME_OP_GREATER:
            return a > b;
        case FRAME_OP_GREATER_EQUAL:
            return a >= b;
        case FRAME_OP_EQUAL:
            return a == b;
        case FRAME_OP_UNEQUAL:
            return a != b;
        case FRAME_OP_AND:
            return a != 0 && b != 0;
        case FRAME_OP_OR:
            return a != 0 || b != 0;
        case FRAME_OP_CALL:
            return call(node->function, a, b);
        case FRAME_OP_NAME:
        case FRAME_OP_CHOOSE:
            break;
    }
    return 0;
}

/* Only the choice that is taken is worked out, as in C: the other may not have a value. */
frame_status frame_node_value(const frame_node *node, frame_name_value find, void *context, double *value,
                              const frame_node **missing) {
    if (node->operation == FRAME_OP_NAME) {
        if (find(context, node, value)) return FRAME_OK;
        if (missing) *missing = node;
        return FRAME_NO_VALUE;
    }
    double of[2] = {0, 0};
    for (int i = 0; i < 2 && node->parts[i]; i++) {
        if (node->operation == FRAME_OP_CHOOSE && i) break;
        const frame_status status = frame_node_value(node->parts[i], find, context, &of[i], missing);
        if (status) return status;
        if (i == 0 && node->operation == FRAME_OP_AND && of[0] == 0) break;
        if (i == 0 && node->operation == FRAME_OP_OR && of[0] != 0) break;
    }
    if (node->operation == FRAME_OP_CHOOSE)
        return frame_node_value(node->parts[of[0] != 0 ? 1 : 2], find, context, value, missing);
    *value = combine(node, of[0], of[1]);
    return FRAME_OK;
}
