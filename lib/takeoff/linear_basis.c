/* The basis of a linear program and its inverse. */
#include <math.h>
#include <string.h>

#include "takeoff/linear.h"

enum { PIVOTS_BETWEEN_RENEWALS = 400 };
static const double SMALLEST_PIVOT = 1e-9;

void frame_linear_through(frame_linear *linear, int32_t entering) {
    const size_t rows = linear->rows;
    memset(linear->work, 0, rows * sizeof *linear->work);
    if (entering < 0) {
        const size_t at = (size_t)(-1 - entering);
        for (size_t r = 0; r < rows; r++) linear->work[r] = linear->inverse[r * rows + at] * linear->slack_sign[at];
        return;
    }
    const frame_linear_column *column = &FRAME_ITEM(frame_linear_column, linear->columns, entering);
    const frame_linear_entry *entries = &FRAME_ITEM(frame_linear_entry, linear->entries, column->first);
    for (size_t r = 0; r < rows; r++) {
        const double *row = &linear->inverse[r * rows];
        double sum = 0;
        for (uint32_t i = 0; i < column->count; i++) sum += row[entries[i].row] * entries[i].value;
        linear->work[r] = sum;
    }
}

static void set_place(frame_linear *linear, int32_t column, int32_t place) {
    if (column < 0)
        linear->slack_place[-1 - column] = place;
    else
        FRAME_ITEM(frame_linear_column, linear->columns, column).place = place;
}

/* Clears a column of the inverse's tableau with one row; only where the row is not 0. */
static void eliminate(frame_linear *linear, size_t row) {
    const size_t rows = linear->rows;
    double *pivot_row = &linear->inverse[row * rows];
    const double pivot = linear->work[row];
    size_t filled = 0;
    for (size_t c = 0; c < rows; c++) {
        if (pivot_row[c] == 0) continue;
        pivot_row[c] /= pivot;
        linear->filled[filled++] = (uint32_t)c;
    }
    for (size_t r = 0; r < rows; r++) {
        const double factor = linear->work[r];
        if (r == row || fabs(factor) < 1e-14) continue;
        double *other = &linear->inverse[r * rows];
        if (filled * 2 > rows)
            for (size_t c = 0; c < rows; c++) other[c] -= factor * pivot_row[c];
        else
            for (size_t i = 0; i < filled; i++) other[linear->filled[i]] -= factor * pivot_row[linear->filled[i]];
    }
}

frame_linear_state frame_linear_exchange(frame_linear *linear, size_t row, int32_t entering) {
    if (fabs(linear->work[row]) < SMALLEST_PIVOT) return FRAME_LINEAR_STOPPED;
    const double level = linear->levels[row] / linear->work[row];
    for (size_t r = 0; r < linear->rows; r++)
        if (r != row) linear->levels[r] -= level * linear->work[r];
    linear->levels[row] = level;
    eliminate(linear, row);
    set_place(linear, linear->basis[row], -1);
    linear->basis[row] = entering;
    set_place(linear, entering, (int32_t)row);
    linear->steps++;
    if (linear->most_steps && linear->steps > linear->most_steps) return FRAME_LINEAR_STOPPED;
    if (++linear->pivots >= PIVOTS_BETWEEN_RENEWALS) return frame_linear_renew(linear);
    return FRAME_LINEAR_SOLVED;
}

/* Makes the inverse anew: each column of the basis is brought into the basis of slacks, the largest pivot first. */
frame_linear_state frame_linear_renew(frame_linear *linear) {
    const size_t rows = linear->rows;
    memset(linear->inverse, 0, rows * rows * sizeof *linear->inverse);
    int32_t *waiting = frame_take(rows * sizeof *waiting);
    if (!waiting) return FRAME_LINEAR_STOPPED;
    memcpy(waiting, linear->basis, rows * sizeof *waiting);
    for (size_t r = 0; r < rows; r++) {
        linear->inverse[r * rows + r] = linear->slack_sign[r];
        linear->basis[r] = -1 - (int32_t)r;
        linear->slack_place[r] = -1;
    }
    for (size_t r = 0; r < rows; r++)
        if (waiting[r] < 0) linear->slack_place[-1 - waiting[r]] = -1 - waiting[r]; /* stays in its own row */
    frame_linear_state state = FRAME_LINEAR_SOLVED;
    for (size_t i = 0; i < rows && state == FRAME_LINEAR_SOLVED; i++) {
        if (waiting[i] < 0) continue;
        frame_linear_through(linear, waiting[i]);
        size_t best = rows;
        for (size_t r = 0; r < rows; r++) {
            const int free_row = linear->basis[r] < 0 && linear->slack_place[r] < 0;
            if (free_row && (best == rows || fabs(linear->work[r]) > fabs(linear->work[best]))) best = r;
        }
        if (best == rows || fabs(linear->work[best]) < SMALLEST_PIVOT) {
            state = FRAME_LINEAR_STOPPED;
            break;
        }
        eliminate(linear, best);
        linear->basis[best] = waiting[i];
        set_place(linear, waiting[i], (int32_t)best);
    }
    frame_give(waiting);
    linear->pivots = 0;
    frame_linear_relevel(linear);
    frame_linear_reprice(linear);
    return state;
}
