/* One engine for every calculation over columns. */
#include <math.h>
#include <string.h>

#include "base/columns.h"
#include "base/error.h"

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

enum { MOST_COLUMNS = 64, MOST_BYTES = 2048, MOST_SINGLY = 8192 };

/* Ends that are left out become the next number inside. */
static void plan_range(const frame_field *field, frame_column *p) {
    p->number = field->kind == FRAME_FIELD_NUMBER;
    if (p->number) {
        p->low = field->low_open ? nextafter(field->low, field->high) : field->low;
        p->high = field->high_open ? nextafter(field->high, field->low) : field->high;
    } else if (field->kind == FRAME_FIELD_INTEGER) {
        p->least = (int32_t)field->low + (field->low_open ? 1 : 0);
        p->most = (int32_t)field->high - (field->high_open ? 1 : 0);
    } else if (field->kind == FRAME_FIELD_BOOL) {
        p->most = 1;
    } else {
        p->words = frame_words_find(field->words);
    }
}

static frame_status plan(const frame_struct *facts, const frame_batch_column *columns, size_t count,
                         frame_column *planned) {
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
        planned[i] = (frame_column){
            .data = columns[i].data, .stride = columns[i].stride, .offset = field->offset, .size = wide ? 8 : 4};
        plan_range(field, &planned[i]);
    }
    return FRAME_OK;
}

/* Whether a value is given and in range, so that a row need not be read anew for it. */
static int is_plain(const frame_column *c, const char *value) {
    if (c->number) {
        double number;
        memcpy(&number, value, sizeof number);
        return number >= c->low && number <= c->high;
    }
    int32_t integer;
    memcpy(&integer, value, sizeof integer);
    if (!c->words) return integer >= c->least && integer <= c->most;
    if (c->words->table) return integer >= 1 && (size_t)integer <= c->words->table_count;
    return c->words->text(integer) != NULL;
}

typedef union row_struct {
    double align;
    unsigned char bytes[MOST_BYTES];
} row_struct;

typedef struct batch {
    const frame_calculation *of;
    frame_column ins[MOST_COLUMNS], outs[MOST_COLUMNS];
    size_t in_count, out_count;
    row_struct in, read, out;
    uint64_t assumed;
    int has_read; /* read is that of a row with every column given: only the columns of another differ */
    int alone;    /* the calculation has a short way of its own: every row is a call */
} batch;

static void copy_value(char *to, const char *from, uint32_t size) {
    if (size == 8)
        memcpy(to, from, 8);
    else
        memcpy(to, from, 4);
}

static int load(const batch *b, size_t row, row_struct *into) {
    int plain = 1;
    for (size_t i = 0; i < b->in_count; i++) {
        const frame_column *c = &b->ins[i];
        const char *value = c->data + row * c->stride;
        plain &= is_plain(c, value);
        copy_value((char *)into->bytes + c->offset, value, c->size);
    }
    return plain;
}

/* A row as a call of its own. */
static frame_status run_alone(batch *b, size_t row) {
    for (size_t i = 0; i < b->in_count; i++)
        copy_value((char *)b->in.bytes + b->ins[i].offset, b->ins[i].data + row * b->ins[i].stride, b->ins[i].size);
    return b->of->run(b->in.bytes, b->out.bytes, b->of->out->size, NULL);
}

/* A row whose values are plainly in order goes by what was read of an earlier one. */
static frame_status run_row(batch *b, size_t row) {
    if (b->alone) return run_alone(b, row);
    if (b->has_read && load(b, row, &b->read)) {
        const frame_status status = b->of->checked(b->read.bytes, b->assumed, b->out.bytes);
        if (status != FRAME_RUN_ALONE) return status;
        b->alone = 1;
    }
    if (!b->has_read && load(b, row, &b->in)) {
        b->assumed = 0;
        b->has_read = !b->of->read(b->in.bytes, b->read.bytes, &b->assumed);
    }
    return run_alone(b, row);
}

static void give_row(const batch *b, size_t row) {
    for (size_t i = 0; i < b->out_count; i++) {
        const frame_column *c = &b->outs[i];
        copy_value(c->data + row * c->stride, (const char *)b->out.bytes + c->offset, c->size);
    }
}

static frame_status run_one(batch *b, size_t row) {
    const frame_status status = run_row(b, row);
    if (status) frame_struct_blank(b->of->out, b->out.bytes);
    give_row(b, row);
    return status;
}

/* The rows from one on that go through many at once; what stops them goes a row at a time. */
static size_t run_columns(const batch *b, size_t row, size_t rows) {
    const frame_columns all = {b->in.bytes, b->ins, b->outs, b->in_count, b->out_count, rows};
    return b->of->columns ? b->of->columns(&all, row) : 0;
}

static frame_status plan_all(batch *b, const void *in, const frame_batch_column *in_columns,
                             const frame_batch_column *out_columns) {
    if (b->of->in->size > MOST_BYTES || b->of->out->size > MOST_BYTES)
        return frame_fail(FRAME_INTERNAL, "in", "", "", "in: too large a struct");
    frame_status status = frame_struct_widen(b->of->in, in, b->in.bytes);
    if (!status) status = plan(b->of->in, in_columns, b->in_count, b->ins);
    return status ? status : plan(b->of->out, out_columns, b->out_count, b->outs);
}

frame_status frame_batch(const frame_calculation *calculation, const void *in, const frame_batch_column *in_columns,
                         size_t in_count, const frame_batch_column *out_columns, size_t out_count, size_t rows,
                         frame_status *statuses) {
    batch b;
    if (!calculation || !calculation->run)
        return frame_fail(FRAME_REQUIRED, "calculation", "", "one with a fixed answer",
                          "calculation: has no batch form");
    b.of = calculation, b.in_count = in_count, b.out_count = out_count, b.has_read = b.alone = 0;
    frame_status status = plan_all(&b, in, in_columns, out_columns);
    if (status) return status;
    for (size_t row = 0, singly = FRAME_LANE; row < rows;) {
        const size_t done = run_columns(&b, row, rows);
        for (size_t i = 0; statuses && i < done; i++) statuses[row + i] = FRAME_OK;
        row += done;
        singly = done                   ? FRAME_LANE
                 : singly < MOST_SINGLY ? 2 * singly
                                        : singly; /* do not try in vain again and again */
        for (size_t i = 0; i < singly && row < rows; i++, row++) {
            status = run_one(&b, row);
            if (statuses) statuses[row] = status;
        }
    }
    return FRAME_OK;
}
