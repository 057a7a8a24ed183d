/* What the look-ups of this room share: the words of their tables, their columns, how they refuse, and what every
 * result says beside its figures. Tables are constant arrays made from the CSV files of this room; nothing here
 * allocates. */
#ifndef FRAME_LIB_CODE_BOOK_H
#define FRAME_LIB_CODE_BOOK_H

#include <frame/code.h>

#include "base/facts.h"
#include "working/record.h"

/* What stands in cells besides numbers (the #mark remarks of the tables). */
#define FRAME_CELL_NOT_PERMITTED (-1) /* NP */
#define FRAME_CELL_OVER (-2)          /* more than 26 ft */
#define FRAME_CELL_DESIGN (-3)        /* design required */

/* The bit of an edition in a table's set of editions. */
static inline unsigned frame_code_bit(frame_code_edition edition) {
    return 1u << (edition - 1);
}

/* The text of a source or note by its id; "" for 0. */
const char *frame_code_source_text(int id);
const char *frame_code_note_text(int id);

/* The place of a 2x4, 2x6, 2x8, 2x10 or 2x12 in the size words of the tables, 1 to 5; 0 for any other size. */
static inline int frame_code_size_2x(frame_size size) {
    const int width = (size & 0xffff) / 16;
    if (size >> 16 != 2 * 16 || (size & 0xffff) % 32 || width < 4 || width > 12) return 0;
    return width / 2 - 1;
}

/* The columns (or rows) of a table by one number, from light to heavy. */
typedef struct frame_code_columns {
    const char *table; /* its number */
    const char *field; /* the in-struct's field that picks the column */
    const char *unit;
    const double *at; /* ascending; more is heavier */
    int count;
    int lighter; /* nonzero: what is less than the first column may be read in it */
} frame_code_columns;

/* Finds the column: *place, and whether it is a heavier one than asked for. FRAME_NO_VALUE between columns unless
 * covering, FRAME_OUTSIDE_SCOPE past the last. */
frame_status frame_code_column(const frame_code_columns *columns, double value, int covering, int *place, int *covered);
/* The same where the table's notes allow interpolation: *place and the fraction of the way to the next. */
frame_status frame_code_between(const frame_code_columns *columns, double value, int *place, double *fraction,
                                int *covered);

/* "2018, 2021": the names of a set of editions. */
void frame_code_editions(unsigned set, char *text, size_t size);
/* The table is not known for this edition; known is the set of those it is known for. */
frame_status frame_code_no_edition(const char *table, frame_code_edition edition, unsigned known);
/* The cell is doubtful and was not asked for. */
frame_status frame_code_doubtful(const char *table, const char *note);
/* A figure for a message, up to 24 bytes. */
typedef struct frame_code_figure {
    char text[24];
} frame_code_figure;
frame_code_figure frame_code_number(double value);
/* "12, 16, 19.2, 24", cut to fit. */
void frame_code_list(const double *values, int count, char *text, size_t size);

/* The cautions that follow from how a figure is known, besides those every look-up has. */
uint64_t frame_code_cautions(frame_known known);

/* Says in the working how the figure is known where that is not at first hand, and what note there is on it. */
void frame_code_record_known(frame_known known, const char *note, frame_working *w);

/* What every result says beside its figures. */
#define FRAME_CODE_SAY(out, edition_asked, table_text, source_text, note_text, how_known) \
    do {                                                                                  \
        (out)->known = (how_known);                                                       \
        (out)->edition = (edition_asked);                                                 \
        (out)->table = (table_text);                                                      \
        (out)->source = (source_text);                                                    \
        (out)->note = (note_text);                                                        \
        (out)->cautions |= frame_code_cautions(how_known);                                \
        if (*(out)->note) (out)->cautions |= FRAME_BIT(FRAME_CODE_CAUTION_NOTE);          \
    } while (0)

#define FRAME_CODE_WARN(out, bit) ((out)->cautions |= FRAME_BIT(FRAME_CODE_CAUTION_##bit))
#define FRAME_CODE_UNCHECKED(out, bit) ((out)->not_checked |= FRAME_BIT(FRAME_CODE_UNCHECKED_##bit))

#endif
