/* One engine for every calculation over columns. */
#include <string.h>

#include "base/error.h"
#include "base/facts.h"

const frame_calculation *frame_calculation_find(const char *name) {
    for (size_t i = 0; name && i < frame_all.calculation_count; i++)
        if (!strcmp(frame_all.calculations[i]->name, name)) return frame_all.calculations[i];
    return NULL;
}

size_t frame_calculation_count(void) {
    return frame_all.calculation_count;
}
const frame_calculation *frame_calculation_at(size_t index) {
    return index < frame_all.calculation_count ? frame_all.calculations[index] : NULL;
}
const char *frame_calculation_name(const frame_calculation *calculation) {
    return calculation->name;
}
const frame_struct *frame_calculation_in(const frame_calculation *calculation) {
    return calculation->in;
}
const frame_struct *frame_calculation_out(const frame_calculation *calculation) {
    return calculation->out;
}

enum { MOST_COLUMNS = 64, MOST_BYTES = 2048 };

typedef struct plan_column {
    char *data;
    size_t stride;
    uint32_t offset, size;
} plan_column;

static frame_status plan(const frame_struct *facts, const frame_batch_column *columns, size_t count,
                         plan_column *planned) {
    if (count > MOST_COLUMNS) return frame_fail_number(FRAME_TOO_LARGE, "columns", (double)count, "0..64");
    for (size_t i = 0; i < count; i++) {
        const frame_field *field = columns[i].field ? frame_field_find(facts, columns[i].field) : NULL;
        const char *name = columns[i].field ? columns[i].field : "";
        if (!field) {
            const char *near = frame_field_nearest(facts, name);
            return frame_fail(FRAME_UNKNOWN_FIELD, name, "", near ? near : "", "%s: frame_%s has no such field%s%s",
                              name, facts->name, near ? "; the nearest is " : "", near ? near : "");
        }
        const int wide = field->kind == FRAME_FIELD_NUMBER || field->kind == FRAME_FIELD_BITS;
        if (!wide && field->kind != FRAME_FIELD_INTEGER && field->kind != FRAME_FIELD_WORD &&
            field->kind != FRAME_FIELD_BOOL)
            return frame_fail(FRAME_WRONG_TYPE, name, "", "a number, integer, word or yes/no", "%s: cannot be a column",
                              name);
        if (!columns[i].data) return frame_fail(FRAME_REQUIRED, name, "NULL", "its values", "%s: no data", name);
        planned[i] = (plan_column){columns[i].data, columns[i].stride, field->offset, wide ? 8 : 4};
    }
    return FRAME_OK;
}

frame_status frame_batch(const frame_calculation *calculation, const void *in, const frame_batch_column *in_columns,
                         size_t in_count, const frame_batch_column *out_columns, size_t out_count, size_t rows,
                         frame_status *statuses) {
    union {
        double align;
        unsigned char bytes[MOST_BYTES];
    } row_in, row_out;
    plan_column ins[MOST_COLUMNS], outs[MOST_COLUMNS];
    if (!calculation || !calculation->run)
        return frame_fail(FRAME_REQUIRED, "calculation", "", "one with a fixed answer",
                          "calculation: has no batch form");
    const uint32_t size = calculation->in->size, out_size = calculation->out->size;
    if (size > MOST_BYTES || out_size > MOST_BYTES)
        return frame_fail(FRAME_INTERNAL, "in", "", "", "in: too large a struct");
    frame_status status = frame_struct_widen(calculation->in, in, row_in.bytes);
    if (status) return status;
    if ((status = plan(calculation->in, in_columns, in_count, ins))) return status;
    if ((status = plan(calculation->out, out_columns, out_count, outs))) return status;
    for (size_t row = 0; row < rows; row++) {
        for (size_t i = 0; i < in_count; i++)
            memcpy(row_in.bytes + ins[i].offset, ins[i].data + row * ins[i].stride, ins[i].size);
        status = calculation->run(row_in.bytes, row_out.bytes, out_size, NULL);
        if (status) frame_struct_blank(calculation->out, row_out.bytes);
        if (statuses) statuses[row] = status;
        for (size_t i = 0; i < out_count; i++)
            memcpy(outs[i].data + row * outs[i].stride, row_out.bytes + outs[i].offset, outs[i].size);
    }
    return FRAME_OK;
}
