/* Usual lengths: nails by their sizes, the others by table, or those that the caller can get. */
#include "joint/lengths.h"

#include <math.h>
#include <string.h>

#include "table_fastener.h"
#include "table_fastener_lengths.h"

static const double near = 1e-6;

typedef struct list {
    frame_usual_length *items;
    size_t count;
} list;

/* Keeps the list in order; a length that is there already is not added again. */
static void add(list *lengths, const char *size, double nominal_in, double length_in) {
    size_t at = lengths->count;
    while (at > 0 && lengths->items[at - 1].length_in > length_in + near) at--;
    const int known = at > 0 && !size && lengths->items[at - 1].length_in > length_in - near;
    if (known || lengths->count == FRAME_MOST_LENGTHS) return;
    memmove(lengths->items + at + 1, lengths->items + at, (lengths->count - at) * sizeof *lengths->items);
    lengths->items[at] = (frame_usual_length){size, nominal_in, length_in};
    lengths->count++;
}

static void nails(const frame_dowel_reach_in *in, const frame_fastener *fastener, list *lengths) {
    const int one_diameter = in->diameter_in != FRAME_NOT_GIVEN || in->kind == FRAME_DOWEL_RING_SHANK_NAIL;
    for (int i = 0; i < frame_fastener_rows; i++) {
        const frame_fastener_row *row = &frame_fastener_table[i];
        if (row->kind != in->kind || row->length_in == FRAME_NOT_GIVEN) continue;
        if (one_diameter && fabs(row->diameter_in - fastener->nominal_in) > near) continue;
        add(lengths, row->size, row->diameter_in, row->length_in);
    }
}

static void by_table(const frame_dowel_reach_in *in, const frame_fastener *fastener, list *lengths) {
    for (int i = 0; i < frame_fastener_lengths_rows; i++) {
        const frame_fastener_lengths_row *row = &frame_fastener_lengths_table[i];
        const int other = fastener->nominal_in < row->least_in - near || fastener->nominal_in > row->most_in + near;
        if (row->kind != in->kind || other) continue;
        const int steps = (int)floor((row->to_in - row->from_in) / row->step_in + 0.5);
        for (int n = 0; n <= steps; n++) add(lengths, NULL, fastener->nominal_in, row->from_in + n * row->step_in);
    }
}

size_t frame_usual_lengths(const frame_dowel_reach_in *in, const frame_fastener *fastener,
                           frame_usual_length items[FRAME_MOST_LENGTHS]) {
    list lengths = {items, 0};
    for (size_t i = 0; i < in->length_count; i++) add(&lengths, NULL, fastener->nominal_in, in->lengths_in[i]);
    if (in->length_count) return lengths.count;
    if (frame_dowel_is_nail(in->kind))
        nails(in, fastener, &lengths);
    else
        by_table(in, fastener, &lengths);
    return lengths.count;
}
