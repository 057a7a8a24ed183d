/* The span tables of headers and girders: the row of a case, and the place among its widths. */
#ifndef FRAME_LIB_CODE_HEADERS_H
#define FRAME_LIB_CODE_HEADERS_H

#include "code/book.h"
#include "table_code_headers.h"

/* The row for what is carried, where, the size, plies, edition, lumber and snow; *heavier when its snow is more than
 * asked for. in has its location and width set. */
frame_status frame_code_header_row(const frame_code_header_span_in *in, const frame_code_headers_row **row,
                                   int *heavier);
/* The place among the row's widths, and how far to the next; *narrower when the building is narrower than the first. */
frame_status frame_code_header_place(const frame_code_headers_row *row, const frame_code_header_span_in *in, int *place,
                                     double *fraction, int *narrower);

static inline int frame_code_header_width(const frame_code_headers_row *row, int place) {
    return place == 0 ? row->w1 : place == 1 ? row->w2 : row->w3;
}
static inline int frame_code_header_length(const frame_code_headers_row *row, int place) {
    return place == 0 ? row->l1 : place == 1 ? row->l2 : row->l3;
}
static inline int frame_code_header_jacks(const frame_code_headers_row *row, int place) {
    return place == 0 ? row->j1 : place == 1 ? row->j2 : row->j3;
}

#endif
