/* Pieces alike, gathered to be cut in one gang: the same kind, section, lengths and end cuts. A single bevel across the
 * thickness has no hand: turned end about its axis the piece is its own opposite. */
#include <math.h>

#include "layout/piece.h"
#include "layout_facts.h"

#define ALIKE (1.0 / 128) /* inches: half of what a sixteenth's mark tells apart */

const char *frame_layout_kind_name(frame_piece_kind kind) {
    return frame_piece_kind_words.table[kind - 1].word;
}

static int near(double a, double b, double within) {
    return fabs(a - b) <= within;
}

/* Two bevels that lean the same way are another shape than two that lean together. */
static int leans_alike(const frame_layout_piece *a, const frame_layout_piece *b) {
    const double here = a->start_deg * a->end_deg, there = b->start_deg * b->end_deg;
    return (here > 0) == (there > 0);
}

static int alike(const frame_layout_piece *a, const frame_layout_piece *b) {
    return a->kind == b->kind && a->size == b->size && near(a->thickness, b->thickness, 1e-6) &&
           near(a->depth, b->depth, 1e-6) && near(a->length, b->length, ALIKE) &&
           near(a->short_point, b->short_point, ALIKE) && near(fabs(a->start_deg), fabs(b->start_deg), 1e-6) &&
           near(fabs(a->end_deg), fabs(b->end_deg), 1e-6) && leans_alike(a, b) && a->cut_count == b->cut_count;
}

frame_status frame_layout_gather(frame_layout_set *set, frame_array *gangs) {
    gangs->item_size = sizeof(frame_layout_gang);
    for (size_t i = 0; i < set->pieces.count; i++) {
        frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, i);
        size_t g = gangs->count; /* most often one of the last */
        while (g > 0 && !alike(piece, FRAME_LAYOUT_PIECE(set, FRAME_ITEM(frame_layout_gang, *gangs, g - 1).first))) g--;
        if (g == 0) {
            const frame_layout_gang gang = {i, 0};
            if (!frame_array_push(gangs, &gang)) return FRAME_NO_MEMORY;
            g = gangs->count;
        }
        FRAME_ITEM(frame_layout_gang, *gangs, g - 1).count++;
        piece->gang = (int32_t)g;
    }
    return FRAME_OK;
}
