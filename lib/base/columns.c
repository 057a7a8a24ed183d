/* What the ways over columns share. */
#include "base/columns.h"

const frame_column *frame_column_of(const frame_column *columns, size_t count, size_t offset) {
    const frame_column *found = NULL; /* the last one counts, as where rows are filled one column after the other */
    for (size_t i = 0; i < count; i++)
        if (columns[i].offset == offset) found = &columns[i];
    return found;
}

int frame_columns_within(const frame_column *columns, size_t count, const size_t *offsets, size_t offset_count) {
    for (size_t i = 0; i < count; i++) {
        size_t k = 0;
        while (k < offset_count && offsets[k] != columns[i].offset) k++;
        if (k == offset_count) return 0;
    }
    return 1;
}

void frame_columns_row(const frame_columns *all, size_t row, void *in, size_t size) {
    memcpy(in, all->in, size);
    for (size_t i = 0; i < all->in_count; i++)
        memcpy((char *)in + all->ins[i].offset, all->ins[i].data + row * all->ins[i].stride, all->ins[i].size);
}

static void give(const frame_columns *all, size_t offset, size_t row, size_t count, const void *values, size_t size) {
    for (size_t k = 0; k < all->out_count; k++) {
        const frame_column *out = &all->outs[k];
        char *to = out->data + row * out->stride;
        if (out->offset != offset) continue;
        if (out->stride == size)
            memcpy(to, values, count * size);
        else
            for (size_t i = 0; i < count; i++) memcpy(to + i * out->stride, (const char *)values + i * size, size);
    }
}

void frame_columns_give(const frame_columns *all, size_t offset, size_t row, size_t count, const double *values) {
    give(all, offset, row, count, values, sizeof *values);
}

void frame_columns_give_words(const frame_columns *all, size_t offset, size_t row, size_t count,
                              const int32_t *values) {
    give(all, offset, row, count, values, sizeof *values);
}
