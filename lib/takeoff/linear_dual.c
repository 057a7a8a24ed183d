/* The dual simplex method: the level farthest out of bounds leaves, the column whose reduced cost is the first to reach
 * 0 enters. Levels may not be negative; those of barred columns may not be positive either. */
#include <math.h>

#include "takeoff/linear.h"

static const double PIVOT_TOLERANCE = 1e-8;
enum { NOTHING = INT32_MIN };

static double out_of_bounds(const frame_linear *linear, size_t row) {
    const int32_t column = linear->basis[row];
    const int barred = column >= 0 && FRAME_ITEM(frame_linear_column, linear->columns, column).barred;
    return barred ? fabs(linear->levels[row]) : -linear->levels[row];
}

static size_t leaving_row(const frame_linear *linear, double tolerance) {
    size_t best = linear->rows;
    double most = tolerance;
    for (size_t r = 0; r < linear->rows; r++)
        if (out_of_bounds(linear, r) > most) best = r, most = out_of_bounds(linear, r);
    return best;
}

typedef struct choice {
    int32_t entering;
    int32_t spare;
    double ratio, pivot;
} choice;

static void consider(choice *best, int32_t entering, double reduced, double pivot) {
    if (pivot >= -PIVOT_TOLERANCE) return;
    const double ratio = fmax(reduced, 0) / -pivot;
    const int equal = best->entering != NOTHING && fabs(ratio - best->ratio) <= 1e-12 * (1 + fabs(ratio));
    if (equal ? pivot < best->pivot : ratio < best->ratio) *best = (choice){entering, 0, ratio, pivot};
}

static int32_t entering_column(const frame_linear *linear, size_t row) {
    const double *through = &linear->inverse[row * linear->rows];
    const double sign = linear->levels[row] < 0 ? 1 : -1;
    choice best = {NOTHING, 0, INFINITY, 0};
    const frame_linear_column *columns = linear->columns.items;
    const frame_linear_entry *entries = linear->entries.items;
    for (size_t j = 0; j < linear->columns.count; j++) {
        if (columns[j].place >= 0 || columns[j].barred) continue;
        double pivot = 0;
        for (uint32_t i = 0; i < columns[j].count; i++)
            pivot += through[entries[columns[j].first + i].row] * entries[columns[j].first + i].value;
        pivot *= sign;
        if (pivot < -PIVOT_TOLERANCE) consider(&best, (int32_t)j, frame_linear_reduced(linear, &columns[j]), pivot);
    }
    for (size_t r = 0; r < linear->rows; r++)
        if (linear->slack_place[r] < 0)
            consider(&best, -1 - (int32_t)r, frame_linear_slack_reduced(linear, r),
                     sign * through[r] * linear->slack_sign[r]);
    return best.entering;
}

/* Levels are counts of boards; a million of them leaves ten digits behind the point. */
static const double LEVEL_TOLERANCE = 1e-8;

static frame_linear_state step(frame_linear *linear, size_t row, int32_t entering) {
    frame_linear_through(linear, entering);
    const double reduced =
        entering < 0 ? frame_linear_slack_reduced(linear, (size_t)(-1 - entering))
                     : frame_linear_reduced(linear, &FRAME_ITEM(frame_linear_column, linear->columns, entering));
    const double by = reduced / linear->work[row];
    const double *old_row = &linear->inverse[row * linear->rows];
    for (size_t r = 0; r < linear->rows; r++) linear->duals[r] += by * old_row[r];
    return frame_linear_exchange(linear, row, entering);
}

/* Many boards cost the same, so many columns tie, and among ties the method can go in circles: when it goes on for
 * long they are parted. */
frame_linear_state frame_linear_dual(frame_linear *linear) {
    frame_linear_reprice(linear);
    const size_t patience = linear->steps + linear->rows / 2 + 50, most = patience + 50 * linear->rows + 1000;
    frame_linear_state state = FRAME_LINEAR_SOLVED;
    int parted = 0;
    while (!state) {
        const size_t row = leaving_row(linear, LEVEL_TOLERANCE);
        if (row == linear->rows) break;
        if (!parted && linear->steps > patience) frame_linear_part_ties(linear), parted = 1;
        const int32_t entering = entering_column(linear, row);
        state = entering == NOTHING ? FRAME_LINEAR_IMPOSSIBLE : step(linear, row, entering);
        if (!state && linear->steps > most) state = FRAME_LINEAR_STOPPED;
    }
    if (parted) frame_linear_no_extra(linear);
    return state;
}
