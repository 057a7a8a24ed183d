/* Numbers as a reader of a formula wants them: whole ones in full, others to five digits, none as zero that is not. */
#ifndef FRAME_LIB_WORKING_FIGURE_H
#define FRAME_LIB_WORKING_FIGURE_H

#include <frame/base.h>

/* "510000", "26.464", "0.00012346", "1.2346·10⁻⁷". In MathML a group of elements. */
void frame_figure_display(double value, frame_text *into);
void frame_figure_mathml(double value, frame_text *into);
/* Tells whether it is written with a power of ten: then it binds like a product. */
int frame_figure_is_product(double value);
/* A whole number as superscript digits: "²", "⁻¹²". */
void frame_figure_superscript(int value, frame_text *into);
/* In full: the shortest text that reads back the same; null for what JSON cannot say. */
void frame_figure_json(double value, frame_text *into);
/* A unit, its digits as superscripts: in2 becomes in². */
void frame_unit_display(const char *unit, frame_text *into);

#endif
