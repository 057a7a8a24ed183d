/* The span tables of joists and rafters: which one a case belongs to, and its row. */
#ifndef FRAME_LIB_CODE_JOISTS_H
#define FRAME_LIB_CODE_JOISTS_H

#include "code/book.h"
#include "table_code_joist_sets.h"
#include "table_code_joist_spans.h"

/* The table, or the half of it for one dead load, that a case belongs to; *covered when it is a heavier one than asked
 * for.
 */
frame_status frame_code_joist_set(const frame_code_joist_span_in *in, const frame_code_joist_sets_row **set,
                                  int *covered);
/* The row of a species, grade and size that has a figure in a column. */
frame_status frame_code_joist_row(const frame_code_joist_span_in *in, const frame_code_joist_sets_row *set, int column,
                                  const frame_code_joist_spans_row **row);

/* The figure of a row at 12, 16, 19.2 or 24 in on centres. */
static inline int frame_code_joist_cell(const frame_code_joist_spans_row *row, int column) {
    return column == 0 ? row->s12 : column == 1 ? row->s16 : column == 2 ? row->s19 : row->s24;
}

#endif
