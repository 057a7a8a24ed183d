/** @file takeoff.h
 * What to buy and how to cut it: sticks from stock lengths.
 */
#ifndef FRAME_TAKEOFF_H
#define FRAME_TAKEOFF_H

#include <frame/base.h>

FRAME_BEGIN

/** A kind of piece wanted. As a tuple or array: length, count. */
typedef struct frame_stock_piece {
    uint32_t struct_size, struct_id;
    double length_in; /**< required : >0..1200. Length over all, long point to long point. */
    int32_t count;    /**< 1 : 1..10000. How many. */
    int32_t spare;
    const char *name; /**< optional. Name of the piece ("rafter"). */
} frame_stock_piece;
/** Sets up a piece: every field not given. */
FRAME_ELEMENT(stock_piece);

/** A length of stock that can be had. As a tuple or array: length, price, available. */
typedef struct frame_stock_length {
    uint32_t struct_size, struct_id;
    double length_in;  /**< required : >0..1200. Length of the board. */
    double price;      /**< required : 0..1e6. Price of one board, in the user's money; 0 for one on hand. */
    int32_t available; /**< optional : 0..1e6. How many there are; without it, as many as are needed. */
    int32_t spare;
    const char *name;  /**< optional. Name of the stock. */
} frame_stock_length;
/** Sets up a stock length: every field not given. */
FRAME_ELEMENT(stock_length);

/** Cautions that go with a cutting plan. */
typedef int32_t frame_stock_caution;
enum frame_stock_caution_values {
    FRAME_STOCK_CAUTION_TRUE_STOCK = 0, /**< "true_stock". Look at defects, grade and true length of the stock in hand before cutting to this plan. */
    FRAME_STOCK_CAUTION_NOT_PROVEN = 1  /**< "not_proven". Found by a quick method: a cheaper plan may exist down to the bound. */
};
/** What a cutting plan leaves unchecked. */
typedef int32_t frame_stock_not_checked;
enum frame_stock_not_checked_values {
    FRAME_STOCK_UNCHECKED_ENDS = 0 /**< "ends". Whether neighbours' angled ends could share a cut: each piece takes its full length over all. */
};

/** Pieces wanted and stock to cut them from, all of one section and grade. */
typedef struct frame_stock_plan_in {
    uint32_t struct_size, struct_id;
    const frame_stock_piece *pieces; /**< required. The pieces wanted. */
    size_t piece_count;              /**< count : 1..1000. */
    const frame_stock_length *stock; /**< required. The stock lengths. */
    size_t stock_count;              /**< count : 1..100. */
    double kerf_in;                  /**< 0.125 : 0..2. What one cut turns to dust. */
    double end_trim_in;              /**< 0 : 0..24. What is cut off one end of each board before the first piece. */
    double time_limit_s;             /**< optional : >0..1e6. Time the search may take; the quick method of today never needs it. */
} frame_stock_plan_in;

/** Figures of a cutting plan. */
typedef struct frame_stock_plan_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : stock_caution. Cautions. */
    uint64_t not_checked; /**< bits : stock_not_checked. What was not checked. */
    frame_known known;    /**< Prices and lengths from the caller. */
    frame_bool optimal;   /**< Whether no plan can be cheaper: the cost has met the bound. */
    double cost;          /**< Price of all boards of the plan. */
    double bound;         /**< No plan costs less than this. */
    double first_fit_cost; /**< What first-fit into the longest stock would have cost, longest pieces first; not given where there is not enough of it. */
    double piece_length_in; /**< Length of all pieces. */
    double stock_length_in; /**< Length of all boards. */
    double offcut_length_in; /**< Length of what is left over, the dust of the saw not counted. */
    double waste_share;   /**< Share of the stock's length that is not in a piece. */
    int32_t boards_used;  /**< Boards to buy or take. */
    int32_t pieces_cut;   /**< Pieces cut from them. */
} frame_stock_plan_out;

/** A board of the plan. */
typedef struct frame_stock_plan_board {
    uint32_t struct_size, struct_id;
    double length_in;     /**< Length of the board. */
    double price;         /**< Its price. */
    double offcut_in;     /**< What is left of it. */
    int32_t stock;        /**< Place of its kind in the list of stock, from 0. */
    int32_t spare;
    uint32_t piece_first; /**< range : pieces. The pieces cut from it, in order from the hooked end. */
    uint32_t piece_count; /**< count. */
} frame_stock_plan_board;

/** A piece on a board. */
typedef struct frame_stock_plan_piece {
    uint32_t struct_size, struct_id;
    double length_in;  /**< Length of the piece. */
    double from_in;    /**< Where it begins, from the hooked end. */
    double to_in;      /**< Where it ends: strike the mark here and cut on its far side. */
    int32_t piece;     /**< Place of its kind in the list of pieces, from 0. */
    int32_t board;     /**< The board it lies on, from 0. */
    const char *name;  /**< Name of the piece. */
} frame_stock_plan_piece;

/** Cuts pieces from stock lengths for little money by a quick method: longest pieces first, each of several ways tried, each
 * board then exchanged for the cheapest that holds its pieces. A board of length L holds pieces when their lengths, the
 * kerfs between them and the end trim are no more than L. FRAME_IMPOSSIBLE when a piece is longer than every stock (it is
 * named) or the stock available does not suffice; FRAME_TOO_LARGE beyond 20,000 pieces. */
FRAME_ANSWER(stock_plan);
/** The boards, longest pieces first. */
FRAME_ANSWER_LIST(stock_plan, board, boards);
/** The pieces, board by board. */
FRAME_ANSWER_LIST(stock_plan, piece, pieces);

FRAME_END

#endif
