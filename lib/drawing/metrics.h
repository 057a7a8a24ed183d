/* How much room a text takes on the paper, on the safe side. */
#ifndef FRAME_LIB_DRAWING_METRICS_H
#define FRAME_LIB_DRAWING_METRICS_H

#include "base/memory.h"

/* In ems: how far the tallest letters rise above the base line and the deepest fall below it, with air; together the
 * pitch of lines. The middle of capitals and figures lies in the middle of that. */
#define METRICS_RISE 0.95
#define METRICS_FALL 0.25
#define METRICS_LINE (METRICS_RISE + METRICS_FALL)

double metrics_width(const char *chars, size_t length, double points);

typedef struct metrics_line {
    const char *chars; /* within the text it was made from */
    size_t length;
    double width;
} metrics_line;

/* A text in lines. Zero it to begin, reuse it, give lines back with frame_array_give. */
typedef struct metrics_block {
    frame_array lines;
    double points, width, height;
    frame_status status;
} metrics_block;

/* Breaks a text at its line feeds, and at spaces where a line would become wider than widest. */
void metrics_set(metrics_block *block, const char *text, double points, double widest);

#endif
