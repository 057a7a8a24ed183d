/* The columns of the deck beam tables: joist spans until 2021, joist span and cantilever together from 2024 on. */
#ifndef FRAME_LIB_CODE_DECK_BEAMS_H
#define FRAME_LIB_CODE_DECK_BEAMS_H

#include "code/book.h"
#include "table_code_deck_beams.h"

enum { FRAME_DECK_BEAM_COLUMNS = 10 };

static inline int frame_deck_beam_cell(const frame_code_deck_beams_row *row, int place) {
    const int16_t cells[FRAME_DECK_BEAM_COLUMNS] = {row->b1, row->b2, row->b3, row->b4, row->b5,
                                                    row->b6, row->b7, row->b8, row->b9, row->b10};
    return cells[place];
}

/* The place among the columns, the way to the next, whether a heavier one than asked for. span and cantilever in
 * inches. */
frame_status frame_deck_beam_by_span(const frame_code_deck_beams_row *row, double span_in, int interpolates, int *place,
                                     double *fraction, int *covered);
frame_status frame_deck_beam_by_both(const frame_code_deck_beams_row *row, double span_in, double cantilever_in,
                                     int covering, int *place, double *fraction, int *covered);

#endif
