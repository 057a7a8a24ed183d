/* Trying a slip: the formula of a step, and those of the steps before it that the student has not answered, worked out
 * with one or two symbols replaced by what they might have been mistaken for. */
#ifndef FRAME_LIB_WORKING_SLIP_H
#define FRAME_LIB_WORKING_SLIP_H

#include "working/expression.h"
#include "working/marking.h"

typedef struct frame_slip_formula {
    size_t entry;
    frame_expression expression;
} frame_slip_formula;

typedef struct frame_slip {
    const frame_student *student;
    size_t at;
    frame_array formulas; /* of frame_slip_formula, in the order of the working; the last is the step's own */
    frame_array symbols;  /* of size_t, entries: first those of the step's own formula, each once */
    size_t direct;        /* how many of them are of the step's own formula */
    double *values;       /* of each entry, while a slip is worked out */
    size_t replaced[2];   /* entries; NO_ROOT for none */
    double values_replaced[2];
} frame_slip;

/* For an entry without a formula that can be read there are neither formulas nor symbols. Always to be ended. */
frame_status frame_slip_begin(frame_slip *slip, const frame_student *student, size_t at);
void frame_slip_end(frame_slip *slip);
/* Works the step out with the replacements that are set; gives 0 when it has no value. */
int frame_slip_work_out(frame_slip *slip, double *value);

#endif
