/* The stock room: rows of stock with texts and defects of their own. */
#ifndef FRAME_LIB_TAKEOFF_STOCK_ROOM_H
#define FRAME_LIB_TAKEOFF_STOCK_ROOM_H

#include <frame/takeoff.h>

#include "base/memory.h"

struct frame_stock_room {
    frame_arena arena; /* names and defects */
    frame_array rows;  /* frame_stock_length */
};

/* What the columns of a file are, in CSV and JSON alike. */
typedef enum frame_room_kind {
    FRAME_ROOM_TEXT,
    FRAME_ROOM_NUMBER,
    FRAME_ROOM_WHOLE,
    FRAME_ROOM_SIZE,
    FRAME_ROOM_SPECIES,
    FRAME_ROOM_GRADE,
    FRAME_ROOM_PRICE_BY,
    FRAME_ROOM_DEFECTS
} frame_room_kind;

typedef struct frame_room_column {
    const char *name;
    frame_room_kind kind;
    uint32_t place; /* of the field in frame_stock_length */
} frame_room_column;

enum { FRAME_ROOM_COLUMNS = 10 };
extern const frame_room_column frame_room_columns[FRAME_ROOM_COLUMNS];

/* The column of a name; -1 without one. */
int frame_room_column_find(const char *name);
/* Sets a field from its text; "" leaves it not given. */
frame_status frame_room_set(frame_stock_room *room, frame_stock_length *row, int column, const char *text);
/* A row as it is to stand: lengths and prices there and in their ranges. */
frame_status frame_room_check(const frame_stock_length *row);
/* Says where in a file the failure just recorded was: "line 3, column 12: ". */
frame_status frame_room_fail_at(frame_status status, int line, int column);
/* Adds a row with copies of its texts; rows alike are counted together. */
frame_status frame_room_add(frame_stock_room *room, const frame_stock_length *row);

#endif
