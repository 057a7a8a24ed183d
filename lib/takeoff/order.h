/* From what a caller asks for to a cutting job in whole numbers, and what is needed to say the answer in the caller's
 * terms. */
#ifndef FRAME_LIB_TAKEOFF_ORDER_H
#define FRAME_LIB_TAKEOFF_ORDER_H

#include <frame/takeoff.h>

#include "takeoff/cutting.h"

/* What is cut from what goes by section, species and grade. */
typedef struct frame_order_group {
    frame_size size;
    frame_species species;
    frame_grade grade;
    int32_t spare;
} frame_order_group;

/* A kind of piece, or a part of a spliced one, that is cut as an item. */
typedef struct frame_order_claim {
    int64_t size;
    double length_in, part_from_in;
    int32_t group, may_rip;
    int32_t piece;  /* in the caller's list */
    int32_t wanted; /* 0 of the part of a spliced piece: choices say how many */
    int32_t item;
    int32_t own;                                 /* not 0: an item by itself, since its ends are cut as no other's */
    double left_cut_in, right_cut_in, across_in; /* of a piece that may share cuts; 0 otherwise */
    int32_t crowned, handed;
} frame_order_claim;

/* Where a room lies on its board. */
typedef struct frame_order_room {
    double from_in, to_in;
    double width_in, edge_in; /* of a strip; FRAME_NOT_GIVEN otherwise */
    frame_size strip_size;
    int32_t strip; /* -1 of a whole board */
} frame_order_room;

typedef struct frame_order {
    const frame_stock_plan_in *in;
    frame_cut_job job;
    frame_array groups;       /* frame_order_group */
    frame_array claims;       /* frame_order_claim: by item, those of whole pieces first */
    frame_array items;        /* frame_cut_item */
    frame_array kinds;        /* frame_cut_kind */
    frame_array rooms;        /* frame_cut_room */
    frame_array places;       /* frame_order_room, in step with rooms */
    frame_array supplies;     /* int64_t, in step with the caller's stock */
    frame_array choices;      /* frame_cut_choice */
    frame_array choice_parts; /* frame_cut_part: room is the claim; item is it too until the items are made */
    frame_array set_wanted;   /* int32_t */
    frame_array set_pieces;   /* int32_t: the piece of each set */
    double rip_kerf_in;
    double share; /* which share of what cuts could save at most sizes are less by already */
    double money; /* smallest units in one of the caller's */
    int64_t most_boards;
} frame_order;

frame_status frame_order_make(frame_order *order, const frame_stock_plan_in *in, double share);
void frame_order_give(frame_order *order);
/* A length in whole numbers: exact for every fraction of an inch to a thousandth of 1/64 and every tenth of a
 * millimetre. */
int64_t frame_order_length(double length_in);
/* The price of one board, whatever the price was the price of. */
double frame_order_price(const frame_stock_length *stock);
/* What a plan costs, splices and kept offcuts counted. */
double frame_order_money(const frame_order *order, const frame_cut_plan *plan);
double frame_order_board_feet(frame_size size, double length_in);
/* The group of a section, species and grade; -1 when no piece is of it. */
int32_t frame_order_group_find(const frame_order *order, frame_size size, frame_species species, frame_grade grade);

/* The steps of frame_order_make, each in its file. */
frame_status frame_order_pieces(frame_order *order);
frame_status frame_order_items(frame_order *order);
frame_status frame_order_stock(frame_order *order);
frame_status frame_order_rips(frame_order *order, size_t stock, const frame_stock_length *of);
frame_status frame_order_add_room(frame_order *order, int64_t size, int32_t group, int32_t way,
                                  const frame_order_room *place);
frame_status frame_order_add_kind(frame_order *order, size_t stock, double price, size_t first_room);

#endif
