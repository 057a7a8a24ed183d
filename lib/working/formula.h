/* Writing a formula for people: in symbols, or with the numbers recorded before it. */
#ifndef FRAME_LIB_WORKING_FORMULA_H
#define FRAME_LIB_WORKING_FORMULA_H

#include "working/entries.h"
#include "working/expression.h"

typedef struct frame_formula {
    frame_text *into;
    const frame_working *working;
    size_t at;   /* the entry the formula belongs to: names mean what they meant there */
    int numbers; /* 1: numbers for names, and of a choice only what is taken */
    int flat;    /* MathML: 1 where a fraction is written with a slash: within fractions, powers, parentheses */
} frame_formula;

/* One line of UTF-8: "0.822·E_min/(l_e/d)²". */
void frame_formula_text(const frame_formula *to, const frame_node *node);
/* MathML without the math element around it. */
void frame_formula_mathml(const frame_formula *to, const frame_node *node);
/* MathML as several math elements where a long line may be broken: before the signs of the outermost sum or product. */
void frame_formula_mathml_line(const frame_formula *to, const frame_node *node);

/* A name's value where the formula stands; the shape frame_node_value wants, its context a frame_formula. */
int frame_formula_value_of(void *formula, const frame_node *name, double *value);

/* Looks through what is not written: of a choice, with numbers, the part that is taken. */
const frame_node *frame_formula_taken(const frame_formula *to, const frame_node *node);
/* How tightly a tree binds when written: sums loosest. A number's power of ten and its sign count. */
enum {
    FRAME_BINDS_CHOICE,
    FRAME_BINDS_OR,
    FRAME_BINDS_AND,
    FRAME_BINDS_COMPARISON,
    FRAME_BINDS_SUM,
    FRAME_BINDS_PRODUCT,
    FRAME_BINDS_SIGN,
    FRAME_BINDS_POWER,
    FRAME_BINDS_WHOLE
};
int frame_formula_binds(const frame_formula *to, const frame_node *node);
/* Tells whether a tree is x * FRAME_DEG: an angle in degrees, and gives x. */
const frame_node *frame_formula_degrees(const frame_node *node);
/* The number a leaf is written as, if it is one. */
int frame_formula_number(const frame_formula *to, const frame_node *node, double *value);
/* Tells whether a sum's or product's right side needs parentheses: a - (b + c), a/(b·c), a·(-b). */
int frame_formula_right_needs(const frame_formula *to, const frame_node *node, const frame_node *right);
/* Tells whether what a minus or a not stands before needs parentheses. */
int frame_formula_negated_needs(const frame_formula *to, const frame_node *node);
/* Tells whether a sum's or product's left side needs parentheses, where fractions are written with a slash. */
int frame_formula_left_needs(const frame_formula *to, const frame_node *node);
/* Tells whether a tree is a symbol that ends in a prime or a star, which a power would run into. */
int frame_formula_is_marked(const frame_formula *to, const frame_node *node);

#endif
