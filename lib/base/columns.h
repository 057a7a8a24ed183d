/* Many rows of a calculation at once: for those that have a way of their own over columns, besides that of a row at a
 * time. Such a way works on lanes, a few rows of one field after the other, in loops without branches that compilers
 * turn into vector instructions; a row comes out to the last bit as if asked for alone. */
#ifndef FRAME_LIB_BASE_COLUMNS_H
#define FRAME_LIB_BASE_COLUMNS_H

#include "base/facts.h"

/* Rows that go through together: their lanes lie in the nearest cache. */
enum { FRAME_LANE = 128 };
/* Longer than needed, so that lanes side by side do not begin at like places of pages: stores to one would hold up
 * loads from another. */
typedef double frame_lane[FRAME_LANE + 8];

typedef struct frame_column {
    char *data;
    size_t stride;
    uint32_t offset, size;
    int number;
    int32_t least, most; /* of a field that is no number: both 0 where a list of words decides */
    double low, high;    /* of a number, both ends in */
    const frame_words *words;
} frame_column;

typedef struct frame_columns {
    const void *in; /* the caller's struct, of today's size and not checked: what no column gives */
    const frame_column *ins, *outs;
    size_t in_count, out_count, rows;
} frame_columns;

#if defined(__GNUC__)
#define FRAME_COLUMN_INLINE static inline __attribute__((always_inline)) /* in the loops of either width */
#else
#define FRAME_COLUMN_INLINE static inline
#endif

/* The column of a field, NULL where there is none. */
const frame_column *frame_column_of(const frame_column *columns, size_t count, size_t offset);
/* Whether every column is of one of these fields. */
int frame_columns_within(const frame_column *columns, size_t count, const size_t *offsets, size_t offset_count);
/* A copy of in with the columns' values of one row. */
void frame_columns_row(const frame_columns *all, size_t row, void *in, size_t size);
/* Puts values into an out column, if that is wanted. */
void frame_columns_give(const frame_columns *all, size_t offset, size_t row, size_t count, const double *values);
void frame_columns_give_words(const frame_columns *all, size_t offset, size_t row, size_t count, const int32_t *values);

static inline int32_t frame_column_word(const frame_column *column, size_t row) {
    int32_t value;
    memcpy(&value, column->data + row * column->stride, sizeof value);
    return value;
}

/* A column's values from a row on: where they lie, or copied to room. NULL where one is out of range. */
FRAME_COLUMN_INLINE const double *frame_column_lane(const frame_column *column, size_t row, size_t count,
                                                    double *room) {
    const char *from = column->data + row * column->stride;
    const double low = column->low, high = column->high, *lane = room;
    int64_t outside = 0; /* as wide as the numbers, for the sake of the loop */
    if (column->stride == sizeof *lane && (uintptr_t)from % sizeof *lane == 0)
        lane = (const void *)from;
    else
        for (size_t i = 0; i < count; i++) memcpy(&room[i], from + i * column->stride, sizeof *room);
    for (size_t i = 0; i < count; i++) outside |= lane[i] >= low && lane[i] <= high ? 0 : 1;
    return outside ? NULL : lane;
}

static inline void frame_lane_fill(double *lane, double value) {
    for (int i = 0; i < FRAME_LANE; i++) lane[i] = value;
}

/* Before a loop of which no row writes what another reads. */
#if defined(__clang__)
#define FRAME_ROWS_APART _Pragma("clang loop vectorize(assume_safety)")
#elif defined(__GNUC__)
#define FRAME_ROWS_APART _Pragma("GCC ivdep")
#else
#define FRAME_ROWS_APART
#endif

/* Machines with wider vectors than the least of their kind get a second copy of a loop, with the same arithmetic. */
#if defined(__x86_64__) && defined(__GNUC__)
#define FRAME_WIDE __attribute__((target("avx2")))
#define FRAME_IS_WIDE() __builtin_cpu_supports("avx2")
#else
#define FRAME_WIDE
#define FRAME_IS_WIDE() 0
#endif

#endif
