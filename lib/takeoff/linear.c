/* A linear program: its rows and columns, and what can be read from it. */
#include "takeoff/linear.h"

#include <string.h>

frame_status frame_linear_begin(frame_linear *linear, size_t rows, const double *limits, const double *slack_sign) {
    memset(linear, 0, sizeof *linear);
    linear->tolerance = 1e-9;
    linear->rows = rows;
    linear->columns.item_size = sizeof(frame_linear_column);
    linear->entries.item_size = sizeof(frame_linear_entry);
    linear->limits = frame_take_zeroed(rows, sizeof *linear->limits);
    linear->slack_sign = frame_take_zeroed(rows, sizeof *linear->slack_sign);
    linear->basis = frame_take_zeroed(rows, sizeof *linear->basis);
    linear->inverse = frame_take_zeroed(rows * rows, sizeof *linear->inverse);
    linear->levels = frame_take_zeroed(rows, sizeof *linear->levels);
    linear->duals = frame_take_zeroed(rows, sizeof *linear->duals);
    linear->slack_extra = frame_take_zeroed(rows, sizeof *linear->slack_extra);
    linear->work = frame_take_zeroed(rows, sizeof *linear->work);
    linear->slack_place = frame_take_zeroed(rows, sizeof *linear->slack_place);
    linear->filled = frame_take_zeroed(rows, sizeof *linear->filled);
    if (!linear->limits || !linear->slack_sign || !linear->basis || !linear->inverse || !linear->levels ||
        !linear->duals || !linear->slack_extra || !linear->work || !linear->slack_place || !linear->filled)
        return FRAME_NO_MEMORY;
    memcpy(linear->limits, limits, rows * sizeof *limits);
    memcpy(linear->slack_sign, slack_sign, rows * sizeof *slack_sign);
    frame_linear_restart(linear);
    return FRAME_OK;
}

void frame_linear_restart(frame_linear *linear) {
    const size_t rows = linear->rows;
    memset(linear->inverse, 0, rows * rows * sizeof *linear->inverse);
    memset(linear->duals, 0, rows * sizeof *linear->duals);
    for (size_t j = 0; j < linear->columns.count; j++) FRAME_ITEM(frame_linear_column, linear->columns, j).place = -1;
    for (size_t r = 0; r < rows; r++) {
        linear->basis[r] = -1 - (int32_t)r;
        linear->slack_place[r] = (int32_t)r;
        linear->inverse[r * rows + r] = linear->slack_sign[r]; /* of +1 or -1: itself */
        linear->levels[r] = linear->slack_sign[r] * linear->limits[r];
    }
    linear->pivots = 0;
}

void frame_linear_give(frame_linear *linear) {
    frame_array_give(&linear->columns);
    frame_array_give(&linear->entries);
    frame_give(linear->limits);
    frame_give(linear->slack_sign);
    frame_give(linear->basis);
    frame_give(linear->inverse);
    frame_give(linear->levels);
    frame_give(linear->duals);
    frame_give(linear->slack_extra);
    frame_give(linear->work);
    frame_give(linear->slack_place);
    frame_give(linear->filled);
    memset(linear, 0, sizeof *linear);
}

int32_t frame_linear_add(frame_linear *linear, double cost, const frame_linear_entry *entries, size_t count) {
    if (frame_array_reserve(&linear->entries, linear->entries.count + count)) return -1;
    const frame_linear_column column = {cost, 0, (uint32_t)linear->entries.count, (uint32_t)count, -1, 0};
    if (!frame_array_push(&linear->columns, &column)) return -1;
    for (size_t i = 0; i < count; i++) (void)frame_array_push(&linear->entries, &entries[i]);
    return (int32_t)linear->columns.count - 1;
}

void frame_linear_drop(frame_linear *linear, const unsigned char *kept) {
    frame_linear_column *columns = linear->columns.items;
    frame_linear_entry *entries = linear->entries.items;
    size_t left = 0, used = 0;
    for (size_t j = 0; j < linear->columns.count; j++) {
        if (!kept[j] && columns[j].place < 0) continue;
        memmove(&entries[used], &entries[columns[j].first], columns[j].count * sizeof *entries);
        columns[left] = columns[j];
        columns[left].first = (uint32_t)used;
        used += columns[left].count;
        if (columns[left].place >= 0) linear->basis[columns[left].place] = (int32_t)left;
        left++;
    }
    linear->columns.count = left;
    linear->entries.count = used;
}

void frame_linear_relevel(frame_linear *linear) {
    const size_t rows = linear->rows;
    for (size_t r = 0; r < rows; r++) {
        double level = 0;
        for (size_t c = 0; c < rows; c++) level += linear->inverse[r * rows + c] * linear->limits[c];
        linear->levels[r] = level;
    }
}

static double basic_cost(const frame_linear *linear, size_t row) {
    const int32_t column = linear->basis[row];
    if (column < 0) return linear->slack_extra[-1 - column];
    const frame_linear_column *of = &FRAME_ITEM(frame_linear_column, linear->columns, column);
    return of->cost + of->extra;
}

double frame_linear_cost(const frame_linear *linear) {
    double cost = 0;
    for (size_t r = 0; r < linear->rows; r++) cost += basic_cost(linear, r) * linear->levels[r];
    return cost;
}

double frame_linear_level(const frame_linear *linear, int32_t column) {
    const int32_t place = FRAME_ITEM(frame_linear_column, linear->columns, column).place;
    return place < 0 ? 0 : linear->levels[place];
}

double frame_linear_reduced(const frame_linear *linear, const frame_linear_column *column) {
    const frame_linear_entry *entries = &FRAME_ITEM(frame_linear_entry, linear->entries, column->first);
    double reduced = column->cost + column->extra;
    for (uint32_t i = 0; i < column->count; i++) reduced -= linear->duals[entries[i].row] * entries[i].value;
    return reduced;
}

double frame_linear_slack_reduced(const frame_linear *linear, size_t row) {
    return linear->slack_extra[row] - linear->duals[row] * linear->slack_sign[row];
}

void frame_linear_part_ties(frame_linear *linear) {
    const double unit = linear->tolerance * 1000;
    uint64_t luck = 88172645463325252u;
    frame_linear_column *columns = linear->columns.items;
    for (size_t c = 0; c < linear->columns.count + linear->rows; c++) {
        luck ^= luck << 13;
        luck ^= luck >> 7;
        luck ^= luck << 17;
        const double extra = unit * (0.5 + (double)(luck >> 12) / 4503599627370496.0);
        if (c < linear->columns.count) {
            if (columns[c].place < 0) columns[c].extra = extra;
        } else if (linear->slack_place[c - linear->columns.count] < 0) {
            linear->slack_extra[c - linear->columns.count] = extra;
        }
    }
}

void frame_linear_no_extra(frame_linear *linear) {
    frame_linear_column *columns = linear->columns.items;
    for (size_t c = 0; c < linear->columns.count; c++) columns[c].extra = 0;
    memset(linear->slack_extra, 0, linear->rows * sizeof *linear->slack_extra);
    frame_linear_reprice(linear);
}

void frame_linear_reprice(frame_linear *linear) {
    const size_t rows = linear->rows;
    memset(linear->duals, 0, rows * sizeof *linear->duals);
    for (size_t r = 0; r < rows; r++) {
        const double cost = basic_cost(linear, r);
        if (cost == 0) continue;
        for (size_t c = 0; c < rows; c++) linear->duals[c] += cost * linear->inverse[r * rows + c];
    }
}
