/* A deck while it is being laid out: the platform of its joists, and what stands on and under it. */
#ifndef FRAME_LIB_LAYOUT_DECK_H
#define FRAME_LIB_LAYOUT_DECK_H

#include "layout/platform.h"

enum { FRAME_DECK_MARKS, FRAME_DECK_HANGERS, FRAME_DECK_PIECES, FRAME_DECK_GANGS, FRAME_DECK_FOOTINGS };

typedef struct frame_deck_plan {
    const frame_deck_in *in;
    frame_platform platform;
    frame_answer *answer;
    double top; /* of the joists: the boards' underside */
    int guard;
    frame_layout_section guard_post, rail;
    const double *stock; /* lengths of boards, ascending */
    int stock_count;
    uint64_t cautions;
    /* What it came to. */
    int rows, posts, guard_posts, balusters;
    double last_board, bought, laid, post_length, baluster_gap;
} frame_deck_plan;

frame_status frame_deck_add_supports(frame_deck_plan *plan);
frame_status frame_deck_add_boards(frame_deck_plan *plan);
frame_status frame_deck_add_guard(frame_deck_plan *plan);

/* The stretch that boards fill. */
typedef struct frame_deck_field {
    double x0, x1, y0, y1, z; /* z: their middle */
    frame_layout_section section;
    int number;
} frame_deck_field;

/* The section of a board of a width. */
frame_layout_section frame_deck_board_of(frame_deck_plan *plan, double width);
void frame_deck_add_diagonal(frame_deck_plan *plan, frame_deck_field *field);

/* The shortest board that can be had for a length; the longest when none is long enough. */
double frame_deck_board_for(const frame_deck_plan *plan, double length);
/* Counts a board that is laid. */
void frame_deck_buy(frame_deck_plan *plan, double length);

/* Where the boards of a row are joined, between two ends: the joints over joists' middles with which the stock is
 * least, none of them at a joint of the row beside. Gives how many, or -1 when no stock reaches from joist to joist. */
int frame_deck_joints(const frame_deck_plan *plan, const double *joists, int joist_count, double from, double to,
                      const frame_array *beside, frame_array *joints);

#endif
