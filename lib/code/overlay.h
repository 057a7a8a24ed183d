/* Local amendments: rows that stand in place of what the book says, matched by the fields of a question. */
#ifndef FRAME_LIB_CODE_OVERLAY_H
#define FRAME_LIB_CODE_OVERLAY_H

#include <frame/code.h>

#include "base/answer.h"
#include "base/memory.h"
#include "code/book.h"

/* One cell that is not empty: a condition on what was asked, or a figure of the answer. */
typedef struct overlay_cell {
    const frame_field *field;
    int is_figure;
    double low, high; /* a condition's bounds; a figure's value is low */
    const char *text; /* of a condition or figure in words */
} overlay_cell;

typedef struct overlay_row {
    const frame_calculation *of;
    const char *source, *table, *note;
    overlay_cell *cells;
    size_t count;
} overlay_row;

struct frame_code_overlay {
    frame_arena arena;
    frame_array rows; /* of overlay_row */
};

/* One line of CSV. */
typedef struct overlay_line {
    const char *cells[64];
    int columns[64]; /* where each cell begins in its line, from 1 */
    int count, number;
    const char *why; /* what is wrong with the quotes of a cell; NULL for nothing */
    int wrong;       /* which */
} overlay_line;

/* The next line that is not empty nor a remark; 0 past the last. Its cells live in the arena. */
int frame_code_overlay_next_line(const char **csv, int *number, overlay_line *line, frame_arena *arena);

/* The look-up by this name that takes amendments; NULL for none. */
const frame_calculation *frame_code_overlay_look_up(const char *name);
/* The names of all that do, for a message. */
void frame_code_overlay_look_ups(char *text, size_t size);
/* The field a column names for this look-up, and whether it is of the answer; NULL for none. */
const frame_field *frame_code_overlay_field(const frame_calculation *of, const char *name, int *is_figure);
/* Reads a number of the cell's field, or for a condition two parted by "..". */
int frame_code_overlay_bounds(const frame_field *field, const char *text, overlay_cell *cell);
/* Whether a row is for this calculation and its conditions hold for the question. */
int frame_code_overlay_matches(const overlay_row *row, const frame_calculation *of, const void *in);
/* Sets a figure of an out-struct or item. */
void frame_code_overlay_set(const overlay_cell *cell, void *object);

/* The text of a cell by its field's name; "" without one. */
const char *frame_code_overlay_text(const overlay_row *row, const char *field);
/* Whether code_stairs lists a limit by this name. */
int frame_code_is_stair_item(const char *item);

/* Whether the fastening schedule has a joint by this name. */
int frame_code_is_joint(const char *joint);
/* The next row from *i on that is for this calculation and question; NULL past the last. Moves *i past it. */
const overlay_row *frame_code_overlay_next(const frame_code_overlay *overlay, const frame_calculation *of,
                                           const void *in, size_t *i);
/* An item of an answer as a row has it: its texts, owned by the answer, and its numbers. */
void frame_code_overlay_item(const overlay_row *row, frame_answer *answer, const frame_struct *facts, void *item);

/* What a look-up came to, with the amendments over it: the first row that matches gives its figures, whatever the book
 * said or refused. */
frame_status frame_code_overlaid(const frame_code_overlay *overlay, const frame_calculation *of, const void *in,
                                 void *out, frame_status status, frame_working *w);

/* As FRAME_IMPLEMENT, for a look-up with a field overlay. */
#define FRAME_CODE_IMPLEMENT(X, compute)                                                                          \
    static frame_status with_overlay(const frame_##X##_in *in, frame_##X##_out *out, frame_working *w) {          \
        frame_status status = compute(in, out, w);                                                                \
        if (in->overlay) status = frame_code_overlaid(in->overlay, &frame_##X##_calculation, in, out, status, w); \
        if (!status && FRAME_RECORDING(w)) frame_code_record_known(out->known, out->note, w);                     \
        return status;                                                                                            \
    }                                                                                                             \
    FRAME_IMPLEMENT(X, with_overlay)

#endif
