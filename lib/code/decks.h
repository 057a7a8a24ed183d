/* What the deck tables share: which load column, which group of woods, which grade. */
#ifndef FRAME_LIB_CODE_DECKS_H
#define FRAME_LIB_CODE_DECKS_H

#include "code/book.h"

/* The words of the column woods. */
enum { FRAME_WOODS_SP = 1, FRAME_WOODS_DFL_HF_SPF, FRAME_WOODS_RW_WC_PP_RP, FRAME_WOODS_ANY };

/* The load asked for: the greater of live load and ground snow; live loads over 40 psf are read at 70 psf, as decks of
 * 60 psf are. */
typedef struct frame_deck_load {
    double psf;
    int by_snow;
    int by_live_over_40;
} frame_deck_load;
frame_status frame_deck_load_of(double live_psf, double ground_snow_psf, frame_deck_load *load);

/* Finds the load of a table: loads are those it has, ascending. */
frame_status frame_deck_column(const char *table, const frame_deck_load *load, const double *loads, int count,
                               int covering, int *place, int *covered);
/* The group of a species. */
frame_status frame_deck_woods(frame_species species, int *woods);
/* No.2 or better. */
frame_status frame_deck_grade(frame_grade grade);
/* What every deck figure warns of. */
uint64_t frame_deck_cautions(void);

/* The size is not in the table. */
frame_status frame_deck_no_size(int plies, frame_size size, const char *table, const char *has);

/* Finds the row of an edition and load among the rows of a group: first the rows of the edition, then the load. Rows
 * are told by a function, so that each table keeps its own struct: gives the editions and the load of row i, 0 past the
 * end. */
typedef int (*frame_deck_row)(const void *table, int i, unsigned *editions, int *load, const char **number);
frame_status frame_deck_find(const void *table, frame_deck_row row, frame_code_edition edition,
                             const frame_deck_load *load, int covering, int *found, int *covered);

#endif
