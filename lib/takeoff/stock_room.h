/* The stock room: rows of stock with texts, defects and outlines of their own. */
#ifndef FRAME_LIB_TAKEOFF_STOCK_ROOM_H
#define FRAME_LIB_TAKEOFF_STOCK_ROOM_H

#include <frame/takeoff.h>

#include "base/memory.h"

/* Corners of a polygon: x and y in turn. */
typedef struct frame_room_outline {
    const double *numbers;
    size_t count; /* of numbers */
} frame_room_outline;

typedef struct frame_room_row {
    frame_stock_length
        of; /* a stick; of a sheet its length, price, number and name, of an offcut of one all but the length */
    double width_in;            /* of a sheet; FRAME_NOT_GIVEN of all else */
    frame_room_outline corners; /* of an offcut of a sheet; none of all else */
    frame_room_outline *holes;
    size_t hole_count;
} frame_room_row;

struct frame_stock_room {
    frame_arena arena; /* names, defects and outlines */
    frame_array rows;  /* frame_room_row */
};

/* What a row is of. */
typedef enum frame_room_what { FRAME_ROOM_STICK, FRAME_ROOM_SHEET, FRAME_ROOM_OFFCUT } frame_room_what;
static inline frame_room_what frame_room_what_of(const frame_room_row *row) {
    return row->corners.count                 ? FRAME_ROOM_OFFCUT
           : row->width_in != FRAME_NOT_GIVEN ? FRAME_ROOM_SHEET
                                              : FRAME_ROOM_STICK;
}

/* What the columns of a file are, in CSV and JSON alike. */
typedef enum frame_room_kind {
    FRAME_ROOM_TEXT,
    FRAME_ROOM_NUMBER,
    FRAME_ROOM_WHOLE,
    FRAME_ROOM_SIZE,
    FRAME_ROOM_SPECIES,
    FRAME_ROOM_GRADE,
    FRAME_ROOM_PRICE_BY,
    FRAME_ROOM_DEFECTS,
    FRAME_ROOM_CORNERS,
    FRAME_ROOM_HOLES
} frame_room_kind;

typedef struct frame_room_column {
    const char *name;
    frame_room_kind kind;
    uint32_t place; /* of the field in frame_room_row */
} frame_room_column;

enum { FRAME_ROOM_COLUMNS = 13 };
extern const frame_room_column frame_room_columns[FRAME_ROOM_COLUMNS];

/* The column of a name; -1 without one. */
int frame_room_column_find(const char *name);
/* A row of nothing. */
void frame_room_row_init(frame_room_row *row);
/* Sets a field from its text; "" leaves it not given. */
frame_status frame_room_set(frame_stock_room *room, frame_room_row *row, int column, const char *text);
/* A row as it is to stand: lengths, prices and outlines there and in their ranges. */
frame_status frame_room_check(const frame_room_row *row);
/* Says where in a file the failure just recorded was: "line 3, column 12: ". */
frame_status frame_room_fail_at(frame_status status, int line, int column);
/* Adds a row with copies of its texts; rows alike are counted together. */
frame_status frame_room_add(frame_stock_room *room, const frame_room_row *row);
frame_status frame_room_copy(const frame_stock_room *from, frame_stock_room **to);
/* Rows of nothing go. */
void frame_room_close_up(frame_stock_room *room);
int frame_room_same_text(const char *one, const char *other);
/* FRAME_OK, or that something is missing. */
frame_status frame_room_need(const void *what, const char *field);
/* Refuses a plan for which short_of, a line each, is missing; FRAME_OK when nothing is. */
frame_status frame_room_refuse_short(frame_text *short_of, const char *lists_all);

#endif
