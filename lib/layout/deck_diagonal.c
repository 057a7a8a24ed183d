/* Deck boards laid at 45 degrees, each with its own length and cuts. */
#include <math.h>

#include "layout/deck.h"

/* How far along a diagonal a field reaches for a strip about offset, to the longest and the shortest edge. */
typedef struct reach {
    double low, high; /* of the whole strip */
} reach;

static reach reach_of(const frame_deck_field *f, double offset) {
    const double root = sqrt(0.5);
    /* A point at along s and offset c: x = (s - c) root, y = (s + c) root. */
    return (reach){fmax(f->x0 / root + offset, f->y0 / root - offset),
                   fmin(f->x1 / root + offset, f->y1 / root - offset)};
}

/* The planes of the field's sides that cut a strip's end. */
static void cut_diagonal(frame_deck_plan *plan, const frame_deck_field *f, double offset, double half) {
    const double root = sqrt(0.5);
    const vec3 points[4] = {{f->x0, 0, 0}, {0, f->y0, 0}, {f->x1, 0, 0}, {0, f->y1, 0}};
    const vec3 wastes[4] = {{-1, 0, 0}, {0, -1, 0}, {1, 0, 0}, {0, 1, 0}};
    for (int end = 0; end < 2; end++) {
        /* Of the two sides at an end, those that bound the strip somewhere over its width. */
        int needed[2] = {0, 0};
        for (int edge = -1; edge <= 1; edge++) {
            const double c = offset + edge * half;
            const double x_at = end ? f->x1 / root + c : f->x0 / root + c,
                         y_at = end ? f->y1 / root - c : f->y0 / root - c;
            needed[0] |= end ? x_at < y_at + 1e-9 : x_at > y_at - 1e-9;
            needed[1] |= end ? y_at < x_at + 1e-9 : y_at > x_at - 1e-9;
        }
        for (int side = 0; side < 2; side++)
            if (needed[side])
                frame_layout_add_cut(plan->platform.set, FRAME_STICK_MITRE_CUT, points[2 * end + side],
                                     wastes[2 * end + side], "diagonal cut");
    }
}

static void add_diagonal_board(frame_deck_plan *plan, frame_deck_field *f, double offset, double width) {
    const double root = sqrt(0.5), half = width / 2, margin = width + 1;
    double low = INFINITY, high = -INFINITY, inner_low = -INFINITY, inner_high = INFINITY;
    for (int edge = -1; edge <= 1; edge++) {
        const reach r = reach_of(f, offset + edge * half);
        if (edge == 0 && r.high - r.low < 1e-6) return; /* the tip of a corner */
        low = fmin(low, r.low);
        high = fmax(high, r.high);
        inner_low = fmax(inner_low, r.low);
        inner_high = fmin(inner_high, r.high);
    }
    const frame_layout_section section =
        width < plan->in->board_width_in - 1e-6 ? frame_deck_board_of(plan, width) : f->section;
    const double s0 = low - margin, s1 = high + margin;
    frame_layout_piece *piece =
        frame_platform_add(&plan->platform, FRAME_STAGE_BOARDS, FRAME_PIECE_BOARD, ++f->number, &section,
                           (vec3){(s0 - offset) * root, (s0 + offset) * root, f->z},
                           (vec3){(s1 - offset) * root, (s1 + offset) * root, f->z}, (vec3){-root, root, 0});
    if (!piece) return;
    /* A corner of the field within the strip is farther than its edges. */
    const double corners[2] = {(f->y0 - f->x0) * root, (f->y1 - f->x1) * root};
    if (fabs(corners[0] - offset) < half) low = reach_of(f, corners[0]).low;
    if (fabs(corners[1] - offset) < half) high = reach_of(f, corners[1]).high;
    piece->length = high - low;
    piece->short_point = inner_high - inner_low;
    piece->start_deg = piece->end_deg = 45;
    cut_diagonal(plan, f, offset, half);
    frame_deck_buy(plan, piece->length);
    if (piece->length > plan->stock[plan->stock_count - 1] + 1e-9) plan->cautions |= FRAME_BIT(FRAME_DECK_CAUTION_LONG);
    plan->rows++;
}

void frame_deck_add_diagonal(frame_deck_plan *plan, frame_deck_field *f) {
    const double width = plan->in->board_width_in, step = width + plan->in->board_gap_in, root = sqrt(0.5);
    const double least = (f->y0 - f->x1) * root, most = (f->y1 - f->x0) * root;
    for (double from = least; from < most - 0.5; from += step)
        add_diagonal_board(plan, f, from + fmin(width, most - from) / 2, fmin(width, most - from));
}
