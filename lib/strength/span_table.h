/* A table of spans: what it was asked, behind its answer. */
#ifndef FRAME_LIB_STRENGTH_SPAN_TABLE_H
#define FRAME_LIB_STRENGTH_SPAN_TABLE_H

#include <frame/strength.h>

#include "base/answer.h"

typedef struct frame_span_table_plan {
    frame_joist_span_in base; /* loads and limits of every cell */
    const frame_species *species;
    const frame_grade *grades;
    const frame_size *sizes;
    const double *spacings;
    size_t species_count, grade_count, size_count, spacing_count;
    double most_span;
    frame_rounding rounding;
    int32_t spare;
} frame_span_table_plan;

/* The plan behind an answer, NULL for NULL. */
const frame_span_table_plan *frame_span_table_plan_of(const frame_span_table *answer);
/* A cell by its place in the four lists. */
const frame_span_table_cell *frame_span_table_cell_of(const frame_span_table *answer, size_t species, size_t grade,
                                                      size_t spacing, size_t size);
/* A span to the inch, as asked. */
double frame_span_table_rounded(const frame_span_table_plan *plan, double span_in);

#endif
