/* Reads the text of a formula into a tree, by descent through C's levels of precedence. */
#include "working/expression.h"

#include <string.h>

#include "base/memory.h"
#include "base/number.h"

enum { DEEPEST = 100 };

typedef struct reader {
    const char *chars;
    size_t at;
    int depth;
    frame_expression *into;
} reader;

static frame_node *read_choice(reader *r);

static void skip_space(reader *r) {
    while (r->chars[r->at] == ' ' || r->chars[r->at] == '\t' || r->chars[r->at] == '\n') r->at++;
}

static frame_node *trouble(reader *r, const char *why) {
    if (!r->into->trouble) {
        r->into->trouble = why;
        r->into->trouble_at = r->at;
    }
    return NULL;
}

/* There are as many nodes as characters: each node takes at least one. */
static frame_node *make(reader *r, frame_operation operation, const frame_node *a, const frame_node *b,
                        const frame_node *c) {
    frame_node *node = &r->into->nodes[r->into->count++];
    *node = (frame_node){.operation = operation, .parts = {a, b, c}};
    return node;
}

static int is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_';
}
static int is_digit(char c) {
    return c >= '0' && c <= '9';
}

/* Takes a sign if it comes next, and is not the begin of a longer one. */
static int take(reader *r, const char *sign) {
    skip_space(r);
    const size_t length = strlen(sign);
    if (strncmp(r->chars + r->at, sign, length) != 0) return 0;
    if (length == 1 && strchr("<>!", *sign) && r->chars[r->at + 1] == '=') return 0;
    r->at += length;
    return 1;
}

static frame_node *read_number(reader *r) {
    double value;
    const char *end = frame_number_scan(r->chars + r->at, &value);
    r->at = (size_t)(end - r->chars);
    if (is_letter(*end) || *end == '.') return trouble(r, "this number is not understood");
    frame_node *node = make(r, FRAME_OP_NUMBER, NULL, NULL, NULL);
    node->number = value;
    return node;
}

static frame_node *read_call(reader *r, frame_function function) {
    const frame_node *values[2] = {NULL, NULL};
    const int wanted = frame_function_values(function);
    for (int i = 0; i < wanted; i++) {
        if (i && !take(r, ",")) return trouble(r, "a value is missing in this call");
        values[i] = read_choice(r);
        if (!values[i]) return NULL;
    }
    if (!take(r, ")")) return trouble(r, "a closing parenthesis is missing");
    frame_node *node = make(r, FRAME_OP_CALL, values[0], values[1], NULL);
    node->function = function;
    return node;
}

static int is_word(const char *chars, size_t length, const char *word) {
    return strlen(word) == length && strncmp(chars, word, length) == 0;
}

static frame_node *read_name(reader *r) {
    const char *name = r->chars + r->at;
    const size_t begin = r->at;
    while (is_letter(r->chars[r->at]) || is_digit(r->chars[r->at])) r->at++;
    const size_t length = r->at - begin;
    if (take(r, "(")) {
        for (int f = 0; f < FRAME_FN_COUNT; f++)
            if (is_word(name, length, frame_function_name((frame_function)f))) return read_call(r, (frame_function)f);
        r->at = begin;
        return trouble(r, "this function is not known");
    }
    if (is_word(name, length, "FRAME_PI")) return make(r, FRAME_OP_PI, NULL, NULL, NULL);
    if (is_word(name, length, "FRAME_DEG")) return make(r, FRAME_OP_DEG, NULL, NULL, NULL);
    frame_node *node = make(r, FRAME_OP_NAME, NULL, NULL, NULL);
    node->name = name;
    node->length = length;
    return node;
}

static frame_node *read_least(reader *r) {
    skip_space(r);
    const char c = r->chars[r->at];
    if (is_digit(c) || (c == '.' && is_digit(r->chars[r->at + 1]))) return read_number(r);
    if (is_letter(c)) return read_name(r);
    if (!take(r, "(")) return trouble(r, c ? "a value is expected here" : "the formula ends too early");
    frame_node *within = read_choice(r);
    if (within && !take(r, ")")) return trouble(r, "a closing parenthesis is missing");
    return within;
}

static frame_node *read_unary(reader *r) {
    if (r->depth >= DEEPEST) return trouble(r, "the formula is nested too deeply");
    frame_node *node = NULL;
    r->depth++;
    if (take(r, "-")) {
        const frame_node *of = read_unary(r);
        if (of) node = make(r, FRAME_OP_NEGATE, of, NULL, NULL);
    } else if (take(r, "!")) {
        const frame_node *of = read_unary(r);
        if (of) node = make(r, FRAME_OP_NOT, of, NULL, NULL);
    } else {
        take(r, "+");
        node = read_least(r);
    }
    r->depth--;
    return node;
}

/* The operators of two values, level by level, the loosest first. */
typedef struct operator_sign {
    const char *sign;
    frame_operation operation;
    int level;
} operator_sign;
static const operator_sign operators[] = {
    {"||", FRAME_OP_OR, 0},      {"&&", FRAME_OP_AND, 1},        {"==", FRAME_OP_EQUAL, 2},
    {"!=", FRAME_OP_UNEQUAL, 2}, {"<=", FRAME_OP_LESS_EQUAL, 3}, {">=", FRAME_OP_GREATER_EQUAL, 3},
    {"<", FRAME_OP_LESS, 3},     {">", FRAME_OP_GREATER, 3},     {"+", FRAME_OP_ADD, 4},
    {"-", FRAME_OP_SUBTRACT, 4}, {"*", FRAME_OP_MULTIPLY, 5},    {"/", FRAME_OP_DIVIDE, 5},
};
enum { LEVELS = 6 };

static frame_node *read_level(reader *r, int level) {
    if (level == LEVELS) return read_unary(r);
    frame_node *left = read_level(r, level + 1);
    while (left) {
        const operator_sign *found = NULL;
        for (size_t i = 0; i < sizeof operators / sizeof *operators && !found; i++)
            if (operators[i].level == level && take(r, operators[i].sign)) found = &operators[i];
        if (!found) break;
        const frame_node *right = read_level(r, level + 1);
        left = right ? make(r, found->operation, left, right, NULL) : NULL;
    }
    return left;
}

static frame_node *read_choice(reader *r) {
    if (r->depth >= DEEPEST) return trouble(r, "the formula is nested too deeply");
    r->depth++;
    frame_node *node = read_level(r, 0);
    if (node && take(r, "?")) {
        const frame_node *condition = node, *yes = read_choice(r), *no = NULL;
        if (yes && !take(r, ":"))
            trouble(r, "the other choice is missing");
        else if (yes)
            no = read_choice(r);
        node = no ? make(r, FRAME_OP_CHOOSE, condition, yes, no) : NULL;
    }
    r->depth--;
    return node;
}

frame_status frame_expression_read(const char *chars, frame_expression *expression) {
    *expression = (frame_expression){0};
    expression->nodes = frame_take_zeroed(strlen(chars) + 1, sizeof *expression->nodes);
    if (!expression->nodes) return FRAME_NO_MEMORY;
    reader r = {.chars = chars, .into = expression};
    expression->root = read_choice(&r);
    skip_space(&r);
    if (expression->root && !chars[r.at]) return FRAME_OK;
    if (expression->root) trouble(&r, "an operator is expected here");
    frame_expression_give(expression);
    return FRAME_UNREADABLE;
}

void frame_expression_give(frame_expression *expression) {
    frame_give(expression->nodes);
    expression->nodes = NULL;
    expression->count = 0;
    expression->root = NULL;
}
