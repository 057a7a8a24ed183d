/* The parts of MathML writing that single elements and whole lines share. */
#ifndef FRAME_LIB_WORKING_MATHML_H
#define FRAME_LIB_WORKING_MATHML_H

#include "working/formula.h"

/* The same, with fractions written with a slash. */
frame_formula frame_formula_flat(const frame_formula *to);
/* A tree in parentheses if needed. */
void frame_formula_enclosed(const frame_formula *to, const frame_node *node, int needed);
/* The sign of an operation on two values. */
void frame_formula_sign(const frame_formula *to, frame_operation operation);
/* As frame_formula_left_needs and frame_formula_right_needs; a stacked fraction needs no parentheses. */
int frame_formula_left_needs_mathml(const frame_formula *to, const frame_node *node);
int frame_formula_right_needs_mathml(const frame_formula *to, const frame_node *node);

#endif
