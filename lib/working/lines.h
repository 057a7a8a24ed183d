/* The lines an entry is shown by: in symbols, and with numbers. */
#ifndef FRAME_LIB_WORKING_LINES_H
#define FRAME_LIB_WORKING_LINES_H

#include "working/entries.h"
#include "working/expression.h"

/* Whether the entry's expression can be read: a case's condition only if it is a comparison, otherwise it is a
 * sentence. Gives FRAME_OK and an expression to be given back, FRAME_UNREADABLE (with the trouble in it) or
 * FRAME_NO_MEMORY. */
frame_status frame_entry_read(const frame_entry *entry, frame_expression *expression);

/* The formula, or a case's condition, as a line of text; what cannot be read is shown as it was recorded, and has no
 * line with numbers. numbers: 0 in symbols, 1 with numbers. */
void frame_entry_line(const frame_working *w, size_t at, int numbers, frame_text *into);
/* The same as a line of MathML elements. */
void frame_entry_mathml(const frame_working *w, size_t at, int numbers, frame_text *into);
/* A value with its unit: "599.1 psi". */
void frame_entry_value(double value, const char *unit, frame_text *into);
/* Empties a scratch text for its next use; if it failed, what was to be made of it fails. */
void frame_scratch_clear(frame_text *scratch, frame_text *into);

#endif
