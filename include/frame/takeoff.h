/** @file takeoff.h
 * What to buy and how to cut it: sticks from stock lengths, parts from sheets.
 */
#ifndef FRAME_TAKEOFF_H
#define FRAME_TAKEOFF_H

#include <frame/base.h>
#include <frame/drawing.h>
#include <frame/joint.h>
#include <frame/material.h>
#include <frame/text.h>

FRAME_BEGIN

/** What a price is the price of. */
typedef int32_t frame_price_by;
enum frame_price_by_values {
    FRAME_PRICE_BY_BOARD = 1,     /**< "board" | "piece" | "each". One board of the length. */
    FRAME_PRICE_BY_FOOT = 2,      /**< "foot" | "ft" | "linear foot". A foot of its length. */
    FRAME_PRICE_BY_BOARD_FOOT = 3, /**< "board foot" | "bf". A board foot by the nominal size: the size must be given. */
    FRAME_PRICE_BY_METRE = 4      /**< "metre" | "meter" | "m". A metre of its length. */
};

/** How a cutting plan is made. */
typedef int32_t frame_stock_method;
enum frame_stock_method_values {
    FRAME_STOCK_METHOD_LEAST_COST = 1,   /**< "least cost" | "best". The least money, by search and proof. */
    FRAME_STOCK_METHOD_BY_VALUE = 2,     /**< "by value". Board by board: of all stock filled longest pieces first, the one that costs least for what it holds; then each board exchanged for the cheapest that holds its pieces. */
    FRAME_STOCK_METHOD_LONGEST = 3,      /**< "longest" | "longest stock". The longest stock only, longest pieces first into the first board that takes them. */
    FRAME_STOCK_METHOD_ONE_LENGTH = 4    /**< "one length". One stock length for all, the cheapest that will do, filled in the same way. */
};

/** Why a search ended. */
typedef int32_t frame_stock_end;
enum frame_stock_end_values {
    FRAME_STOCK_END_PROVEN = 1,    /**< "proven". No plan can be cheaper. */
    FRAME_STOCK_END_EFFORT = 2,    /**< "effort". The search had taken its fill of steps, the same on every machine; a time limit lets it go on longer. */
    FRAME_STOCK_END_TIME = 3,      /**< "time". The time limit was reached. */
    FRAME_STOCK_END_CANCELLED = 4, /**< "cancelled". Whoever watched it had it stop. */
    FRAME_STOCK_END_SIMPLE = 5,    /**< "simple". A simple method was asked for; nothing was searched. */
    FRAME_STOCK_END_SHARING = 6    /**< "sharing". All searches are done; whether cuts could be shared to save more is not proven. */
};

/** Which hand a piece is, where its cuts are to be shared. */
typedef int32_t frame_stock_hand;
enum frame_stock_hand_values {
    FRAME_STOCK_HAND_EITHER = 1, /**< "either". Both faces are alike: it may be rolled over as well as turned end for end. */
    FRAME_STOCK_HAND_LEFT = 2,   /**< "left". Its cuts are given with its face up, and it is cut so: turned end for end, never rolled over. */
    FRAME_STOCK_HAND_RIGHT = 3   /**< "right". The mirror image: both its cuts slant the other way, and it is never rolled over either. */
};

/** A kind of piece wanted. As a tuple or array: length, count, name. */
typedef struct frame_stock_piece {
    uint32_t struct_size, struct_id;
    double length_in; /**< required : >0..1e6. Length over all, long point to long point. Longer than any stock only where it may be spliced. */
    int32_t count;    /**< 1 : 1..1000000. How many. */
    int32_t spare;
    const char *name; /**< optional. Name of the piece ("rafter"). */
    frame_size size;  /**< optional. Section: it is cut from stock of the same size, species and grade. */
    frame_species species; /**< optional. Species. */
    frame_grade grade; /**< optional. Grade. */
    frame_bool may_rip; /**< no. Whether it may be ripped from wider stock of its thickness and species. Ripping voids the grade stamp (NDS 4.1.7): such a piece is marked non-structural. */
    const double *splices_in; /**< optional : >0..1e6. Where it may be joined over a bearing, from one end; the lengths between are pieces of their own. */
    size_t splice_count;      /**< count : 0..8. */
    double left_cut_in;       /**< 0 : -48..48. How far the cut of its left end runs along the board: the far edge's end less the near edge's, both measured to the right; 0 of a square end. */
    double right_cut_in;      /**< 0 : -48..48. The same of its right end. */
    double cut_across_in;     /**< optional : >0..48. Across what the cuts run: the width of the board for mitres, its thickness for bevels. Required to share a cut. */
    frame_bool crowned;       /**< no. Whether its crown tells how it lies: then it is neither turned end for end nor rolled over to share a cut. */
    frame_stock_hand hand;    /**< either. Its hand. Of a left and a right hand the cuts are given alike, those of the left. */
} frame_stock_piece;
/** Sets up a piece: every field not given. */
FRAME_ELEMENT(stock_piece);

/** A length of stock that can be had. As a tuple or array: length, price, available, name. */
typedef struct frame_stock_length {
    uint32_t struct_size, struct_id;
    double length_in;  /**< required : >0..1200. Length of the board. */
    double price;      /**< required : 0..1e6. Price, in the user's money; 0 for one on hand. */
    int32_t available; /**< optional : 0..1e6. How many there are; without it, as many as are needed. */
    int32_t spare;
    const char *name;  /**< optional. Name of the stock. */
    frame_size size;   /**< optional. Section. */
    frame_species species; /**< optional. Species. */
    frame_grade grade; /**< optional. Grade. */
    frame_price_by price_by; /**< board. What the price is the price of. */
    double weight_plf; /**< optional : >0..1000. Weight of a foot of it, for the shopping list. */
    const double *defects_from_to_in; /**< optional : 0..1200. Where each defect (a knot, a split) begins and ends, from one end, in pairs; what lies between stays usable. */
    size_t defect_count;              /**< count : 0..200. */
} frame_stock_length;
/** Sets up a stock length: every field not given. */
FRAME_ELEMENT(stock_length);

/** A stock room: what is on hand or may be had, sticks and sheets, as a value. Opaque; made by frame_stock_room_new, _from_csv or _from_json. A plan may
 * cut from it; taking a plan out of it takes the boards and puts in the offcuts that are kept, so the next job finds them. */
typedef struct frame_stock_room frame_stock_room;

/** Makes an empty stock room. Free it with frame_stock_room_free. */
FRAME_API frame_status frame_stock_room_new(frame_stock_room **room);
/** Reads a stock room from CSV text: the first line names columns out of name, length_in, price, price_by, available, size, species, grade,
 * weight_plf, defects_from_to_in (numbers in pairs, parted by spaces), width_in, corners_in, holes_in. A row with a width is a sheet; one
 * with corners (x and y in turn, parted by spaces) is what is left of a sheet, its holes likewise, parted by semicolons. Errors name line
 * and column; nothing is half read. */
FRAME_API frame_status frame_stock_room_from_csv(const char *csv, frame_stock_room **room);
/** Reads a stock room from JSON text: an array of objects with the same names; numbers in a row are an array, holes_in an array of them.
 * Errors name line and column; nothing is half read. */
FRAME_API frame_status frame_stock_room_from_json(const char *json, frame_stock_room **room);
/** Frees a stock room. NULL is allowed. */
FRAME_API void frame_stock_room_free(frame_stock_room *room);
/** Counts the rows: stock of one kind, price and defects each, sheets of one kind, offcuts of one outline. */
FRAME_API size_t frame_stock_room_rows(const frame_stock_room *room);
/** Puts stock in, all or nothing: what was bought, with its count; without a count, as much as is needed can be had. */
FRAME_API frame_status frame_stock_room_put(frame_stock_room *room, const frame_stock_length *stock, size_t stock_count);
/** Writes the stock room as CSV, to the last digit: what reads it gets the same room. */
FRAME_API frame_status frame_stock_room_csv(const frame_stock_room *room, frame_text *into);
/** The same as JSON. */
FRAME_API frame_status frame_stock_room_json(const frame_stock_room *room, frame_text *into);

/** A function that looks at a long search now and then, some twenty times a second, on the thread that called it. best: cost of the best
 * plan so far, bound: no plan costs less; FRAME_NOT_GIVEN while there is none. It gives 0 to have the search stop: then the best plan so
 * far is the answer, and says so. */
typedef struct frame_watcher {
    int32_t (*look)(void *user, double best, double bound); /**< 0 stops the search. */
    void *user;                                             /**< Handed to it. */
} frame_watcher;
/** Who watches a search. Opaque; in Python and Lua a function is given in its place. */
typedef struct frame_watch frame_watch;
/** Makes a watch of a function. Free it with frame_watch_free when the search is over. */
FRAME_API frame_status frame_watch_new(const frame_watcher *watcher, frame_watch **watch);
/** Frees a watch. NULL is allowed. */
FRAME_API void frame_watch_free(frame_watch *watch);

/** Cautions that go with a cutting plan. */
typedef int32_t frame_stock_caution;
enum frame_stock_caution_values {
    FRAME_STOCK_CAUTION_TRUE_STOCK = 0, /**< "true_stock". Look at defects, grade and true length of the stock in hand before cutting to this plan. */
    FRAME_STOCK_CAUTION_NOT_PROVEN = 1, /**< "not_proven". Not proven to be the cheapest: one may exist down to the bound. */
    FRAME_STOCK_CAUTION_RIPPED = 2,     /**< "ripped". Pieces ripped from wider stock have lost their grade stamp: not for structural use unless regraded (NDS 4.1.7). */
    FRAME_STOCK_CAUTION_SPLICED = 3     /**< "spliced". Splices belong over a bearing, and a spliced member is not continuous there: check it so. */
};
/** What a cutting plan leaves unchecked. */
typedef int32_t frame_stock_not_checked;
enum frame_stock_not_checked_values {
    FRAME_STOCK_UNCHECKED_ENDS = 0 /**< "ends". Whether neighbours' angled ends could share a cut: each piece takes its full length over all. */
};

/** Pieces wanted and stock to cut them from. Pieces and stock of several sections, species and grades may be given at once: what is
 * cut from what goes by size, species and grade. */
typedef struct frame_stock_plan_in {
    uint32_t struct_size, struct_id;
    const frame_stock_piece *pieces; /**< required. The pieces wanted. */
    size_t piece_count;              /**< count : 1..10000. */
    const frame_stock_length *stock; /**< optional. The stock lengths; required without a room. */
    size_t stock_count;              /**< count : 0..1000. */
    double kerf_in;                  /**< 0.125 : 0..2. What one cut turns to dust. */
    double end_trim_in;              /**< 0 : 0..24. What is cut off one end of each board before the first piece. */
    double time_limit_s;             /**< optional : >0..1e6. Time the search may take. Without it the search ends after so many steps, the same on every machine. */
    double rip_kerf_in;              /**< "the kerf" : 0..2. What one rip along the board turns to dust. */
    double kept_offcut_in;           /**< optional : >0..1200. Shortest offcut that is worth keeping. */
    double kept_foot_price;          /**< 0 : 0..1e5. What a foot of a kept offcut of bought stock is worth; no more than what the stock costs by the foot. */
    double splice_price;             /**< 0 : 0..1e5. What one splice costs. */
    frame_stock_method method;       /**< least cost. How the plan is made. */
    int32_t spare;
    const frame_stock_room *room;    /**< optional. A stock room to cut from besides; its rows count as stock behind the list. */
    const frame_watch *watch;        /**< optional. Who is told of the search now and then, and may stop it: a function of best cost and bound. */
    frame_bool share_cuts;           /**< no. Whether neighbours may share an angled cut. Several searches are made then, and who watches is told of each. Ends of spliced pieces are not shared. */
    int32_t spare2;
} frame_stock_plan_in;

/** Figures of a cutting plan. */
typedef struct frame_stock_plan_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : stock_caution. Cautions. */
    uint64_t not_checked; /**< bits : stock_not_checked. What was not checked. */
    frame_known known;    /**< Prices and lengths from the caller. */
    frame_bool optimal;   /**< Whether no plan can be cheaper: the net cost has met the bound. */
    double cost;          /**< Price of all boards of the plan. */
    double bound;         /**< No plan's net cost is less than this. */
    double first_fit_cost; /**< What first-fit into the longest stock would have cost, longest pieces first; not given where there is not enough of it. */
    double piece_length_in; /**< Length of all pieces. */
    double stock_length_in; /**< Length of all boards. */
    double offcut_length_in; /**< Length of what is left over, the dust of the saw not counted. */
    double waste_share;   /**< Share of the stock's length that is not in a piece; of ripped boards, of the area. */
    int32_t boards_used;  /**< Boards to buy or take. */
    int32_t pieces_cut;   /**< Pieces cut from them. */
    double net_cost;      /**< Cost, with what splices cost, less what kept offcuts are worth: what the plan makes least. */
    double offcut_price;  /**< What the kept offcuts are worth. */
    double splice_price;  /**< What the splices cost. */
    double gap_share;     /**< By how large a share of the net cost a cheaper plan could be cheaper at most. */
    double one_length_cost; /**< What buying one stock length only would have cost, the cheapest that will do; not given where none will. */
    double by_value_cost; /**< What choosing board by board would have cost; not given where it fails. */
    double board_feet;    /**< Board feet of all boards with a size, by the nominal size. */
    double weight_lb;     /**< Weight of all boards whose weight was given. */
    int32_t patterns;     /**< Distinct ways in which boards are cut. */
    int32_t splices;      /**< Splices made. */
    frame_stock_end ended; /**< Why the search ended. */
    int32_t shared_cuts;  /**< Angled cuts that two neighbours share. */
    double shared_cut_in; /**< Length of board that sharing them saves. */
    frame_bool fewest_boards; /**< Whether it is proven, besides, that no plan of this net cost uses fewer boards. */
    int32_t spare;
} frame_stock_plan_out;

/** A board of the plan. */
typedef struct frame_stock_plan_board {
    uint32_t struct_size, struct_id;
    double length_in;     /**< Length of the board. */
    double price;         /**< Its price. */
    double offcut_in;     /**< What is left of it, the longest piece of it where there are several. */
    int32_t stock;        /**< Place of its kind in the list of stock, from 0. */
    int32_t spare;
    uint32_t piece_first; /**< range : pieces. The pieces cut from it, in order from the hooked end. */
    uint32_t piece_count; /**< count. */
    const char *name;     /**< Name of the stock. */
    frame_size size;      /**< Section. */
    int32_t alike;        /**< Boards of the same number are cut alike. */
    frame_bool ripped;    /**< Whether it is ripped into strips first. */
    int32_t spare2;
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
    double part_from_in; /**< Of a spliced piece: where this part of it begins, from its end; 0 of a whole one. */
    int32_t copy;      /**< Which of its kind it is, from 0; the parts of a spliced piece have the same number. */
    int32_t strip;     /**< Of a ripped board: the strip it lies on, from 0 at the reference edge; -1 otherwise. */
    frame_bool non_structural; /**< Whether ripping has voided its grade. */
    frame_bool shares_cut; /**< Whether the cut that ends the piece before it begins this one. */
    double left_cut_in;  /**< Run of the cut where it begins, as it lies, where cuts may be shared. */
    double right_cut_in; /**< Run of the cut where it ends, as it lies. */
} frame_stock_plan_piece;

/** A line of the shopping list: so many boards of a kind. */
typedef struct frame_stock_plan_purchase {
    uint32_t struct_size, struct_id;
    const char *name;  /**< Name of the stock. */
    double length_in;  /**< Length of a board. */
    double price;      /**< Price of a board. */
    double total;      /**< Price of all. */
    double board_feet; /**< Board feet of all, by the nominal size; not given without a size. */
    double weight_lb;  /**< Weight of all; not given without a weight. */
    frame_size size;   /**< Section. */
    frame_species species; /**< Species. */
    frame_grade grade; /**< Grade. */
    int32_t count;     /**< How many. */
    int32_t stock;     /**< Place in the list of stock, from 0. */
    int32_t spare;
} frame_stock_plan_purchase;

/** A length that is left over. */
typedef struct frame_stock_plan_offcut {
    uint32_t struct_size, struct_id;
    double length_in; /**< Its length. */
    double from_in;   /**< Where it begins on its board, from the hooked end. */
    double width_in;  /**< Width of the strip of a ripped board; not given of a whole one. */
    double price;     /**< What it is worth; 0 when it is not kept, was on hand before, or is left of a strip or of a board with defects. */
    frame_size size;  /**< Section of the board or, of a ripped one, of the strip; not given where no size fits. */
    int32_t board;    /**< The board it is left of, from 0. */
    frame_bool kept;  /**< Whether it is long enough to keep. */
    int32_t strip;    /**< The strip it is left of, from 0; -1 of a whole board. */
} frame_stock_plan_offcut;

/** A strip of a ripped board. */
typedef struct frame_stock_plan_strip {
    uint32_t struct_size, struct_id;
    double width_in; /**< Its width. */
    double from_in;  /**< Where it begins, from the reference edge. */
    int32_t board;   /**< The board it is ripped from, from 0. */
    int32_t strip;   /**< Its number on that board, from 0. */
} frame_stock_plan_strip;

/** Cuts pieces from stock lengths for the least money. A board of length L holds pieces when their lengths, the kerfs between them
 * and the end trim are no more than L; between two defects likewise. The search bounds the cost by plans that cut boards in
 * fractions, made pattern by pattern, searches over how many boards there are of each kind, and says optimal only when the bound
 * is met. Of plans of equal cost it looks for the fewest boards (fewest_boards says when they are proven), then, among as many boards,
 * for few distinct patterns, then for long leftovers, stock of no price that stays uncut counted with them: those two by exchanges that
 * leave cost and boards as they are, a bounded search that proves nothing. FRAME_IMPOSSIBLE when a piece
 * is longer than every stock (it is named) or the stock available does not suffice; FRAME_TOO_LARGE beyond 1,000,000 pieces. */
FRAME_ANSWER(stock_plan);
/** The usual ways by name, for comparison: as frame_stock_plan_solve with the method of the name. In Python and Lua: method="longest". */
static inline frame_status frame_stock_plan_by_longest(const frame_stock_plan_in *in, frame_stock_plan **answer) {
    frame_stock_plan_in way = *in;
    way.method = FRAME_STOCK_METHOD_LONGEST;
    return frame_stock_plan_solve(&way, answer, 0);
}
/** One stock length for all, the cheapest that will do. */
static inline frame_status frame_stock_plan_by_one_length(const frame_stock_plan_in *in, frame_stock_plan **answer) {
    frame_stock_plan_in way = *in;
    way.method = FRAME_STOCK_METHOD_ONE_LENGTH;
    return frame_stock_plan_solve(&way, answer, 0);
}
/** Board by board what costs least for what it holds, each then exchanged for the cheapest that holds its pieces. */
static inline frame_status frame_stock_plan_by_value(const frame_stock_plan_in *in, frame_stock_plan **answer) {
    frame_stock_plan_in way = *in;
    way.method = FRAME_STOCK_METHOD_BY_VALUE;
    return frame_stock_plan_solve(&way, answer, 0);
}
/** The boards, by stock, those cut alike together. */
FRAME_ANSWER_LIST(stock_plan, board, boards);
/** The pieces, board by board. */
FRAME_ANSWER_LIST(stock_plan, piece, pieces);
/** The shopping list, by stock. */
FRAME_ANSWER_LIST(stock_plan, purchase, purchases);
/** What is left over, board by board; slivers under 1/16 in are not listed. */
FRAME_ANSWER_LIST(stock_plan, offcut, offcuts);
/** The strips of ripped boards, board by board. */
FRAME_ANSWER_LIST(stock_plan, strip, strips);
/** Writes the cutting plan, boards cut alike a line: the marks to strike, all measured from one end with the kerfs in them, in tape
 * notation, each with its piece; and what is left. */
FRAME_API frame_status frame_stock_plan_cuts(const frame_stock_plan *answer, frame_text *into);
/** Writes the shopping list, section by section: boards, board feet, weight, money; the share that ends in no piece; and what the usual
 * ways would have cost. */
FRAME_API frame_status frame_stock_plan_shopping(const frame_stock_plan *answer, frame_text *into);
/** Writes the plan as CSV (RFC 4180): a line for each piece and each offcut, with its board. */
FRAME_API frame_status frame_stock_plan_csv(const frame_stock_plan *answer, frame_text *into);
/** Writes the plan as JSON: the figures, then the boards with their pieces and offcuts. */
FRAME_API frame_status frame_stock_plan_json(const frame_stock_plan *answer, frame_text *into);
/** Draws a board, from 0: its pieces with their names, the marks on one tape. Free it with frame_drawing_free. */
FRAME_API frame_status frame_stock_plan_drawing(const frame_stock_plan *answer, int32_t board, frame_drawing **drawing);
/** Writes what a stock room is short of for a plan, a line each; nothing when it has all. */
FRAME_API frame_status frame_stock_room_short(const frame_stock_room *room, const frame_stock_plan *plan, frame_text *into);
/** Takes a plan's boards out of a stock room and puts the offcuts that are kept in, at no price. FRAME_IMPOSSIBLE when it is short of
 * something, and then nothing is taken. */
FRAME_API frame_status frame_stock_room_take(frame_stock_room *room, const frame_stock_plan *plan);

/* -- sheets -- */

/** A corner of a polygon on a sheet. As a tuple or array: x, y. */
typedef struct frame_sheet_corner {
    uint32_t struct_size, struct_id;
    double x_in; /**< required : -1e5..1e5. Distance to the right. */
    double y_in; /**< required : -1e5..1e5. Distance up. */
} frame_sheet_corner;
/** Sets up a corner: every field not given. */
FRAME_ELEMENT(sheet_corner);

/** A kind of part wanted: any polygon whose edges do not cross or touch. As a tuple or array: corners, count. */
typedef struct frame_sheet_part {
    uint32_t struct_size, struct_id;
    const frame_sheet_corner *corners; /**< required. Its corners in order, either way round. */
    size_t corner_count;               /**< count : 1..500. At least 3. */
    int32_t count;                     /**< 1 : 1..1000000. How many. */
    int32_t spare;
    const char *name; /**< optional. Name of the part ("lake side, third course"). */
} frame_sheet_part;
/** Sets up a part: every field not given. */
FRAME_ELEMENT(sheet_part);

/** A rectangular sheet that can be had. As a tuple or array: width, length, price, available. */
typedef struct frame_sheet_size {
    uint32_t struct_size, struct_id;
    double width_in;   /**< required : >0..1e5. Width of the sheet. */
    double length_in;  /**< required : >0..1e5. Length of the sheet. */
    double price;      /**< required : 0..1e6. Price of one sheet, in the user's money. */
    int32_t available; /**< optional : 0..1000000. How many there are; without it, as many as are needed. */
    int32_t spare;
    const char *name;  /**< optional. Name of the sheet. */
} frame_sheet_size;
/** Sets up a sheet size: every field not given. */
FRAME_ELEMENT(sheet_size);

/** A polygon on hand, as an earlier plan left it. As a tuple or array: corners, count, price. */
typedef struct frame_sheet_offcut {
    uint32_t struct_size, struct_id;
    const frame_sheet_corner *corners; /**< required. Its corners in order, either way round; x runs as on the sheet it came from. */
    size_t corner_count;               /**< count : 1..500. At least 3. */
    int32_t count;                     /**< 1 : 0..1000000. How many there are. */
    int32_t spare;
    double price;                      /**< 0 : 0..1e6. What using one costs. */
    const char *name;                  /**< optional. Name of the offcut. */
} frame_sheet_offcut;
/** Sets up an offcut: every field not given. */
FRAME_ELEMENT(sheet_offcut);

/** A hole, knot or other spot of an offcut that no part may touch. As a tuple or array: offcut, corners. */
typedef struct frame_sheet_hole {
    uint32_t struct_size, struct_id;
    int32_t offcut; /**< required : 0..1000. Place of the offcut in the list of offcuts, from 0. */
    int32_t spare;
    const frame_sheet_corner *corners; /**< required. Its corners in order, either way round, in the offcut's own distances. */
    size_t corner_count;               /**< count : 1..500. At least 3. */
} frame_sheet_hole;
/** Sets up a hole: every field not given. */
FRAME_ELEMENT(sheet_hole);

/** How a part may be turned on a sheet. */
typedef int32_t frame_sheet_turns;
enum frame_sheet_turns_values {
    FRAME_SHEET_TURNS_NONE = 1,    /**< "none". Only as it is drawn. */
    FRAME_SHEET_TURNS_HALF = 2,    /**< "half". As drawn or by 180 degrees: the strength axis stays. */
    FRAME_SHEET_TURNS_QUARTER = 3, /**< "quarter". By any number of right angles: the strength axis does not count. */
    FRAME_SHEET_TURNS_ANY = 4      /**< "any". By any angle; angles that lay an edge along a side of the sheet are tried. */
};

/** How sheets are cut. */
typedef int32_t frame_sheet_cuts;
enum frame_sheet_cuts_values {
    FRAME_SHEET_CUTS_FREE = 1,    /**< "free". Cuts may end anywhere, as a plunged saw or a jigsaw makes them. */
    FRAME_SHEET_CUTS_STRAIGHT = 2 /**< "straight" | "through". Every cut that parts one piece from another runs straight from side to side of what is left. */
};

/** A side of a sheet. */
typedef int32_t frame_sheet_side;
enum frame_sheet_side_values {
    FRAME_SHEET_SIDE_WIDTH = 1, /**< "width". Along the sheet's width. */
    FRAME_SHEET_SIDE_LENGTH = 2 /**< "length". Along the sheet's length. */
};

/** Cautions that go with a plan of sheets. */
typedef int32_t frame_sheet_caution;
enum frame_sheet_caution_values {
    FRAME_SHEET_CAUTION_TRUE_SHEET = 0,   /**< "true_sheet". Measure the sheets and offcuts in hand, their squareness and edges, before cutting to this plan. */
    FRAME_SHEET_CAUTION_NOT_PROVEN = 1,   /**< "not_proven". A better plan may exist, down to the bound. */
    FRAME_SHEET_CAUTION_ALONG_LENGTH = 2, /**< "along_length". The parts' x runs along the sheet's length: along its width they do not fit. */
    FRAME_SHEET_CAUTION_AXIS_TURNED = 3,  /**< "axis_turned". Some parts lie turned against the strength axis they were drawn with. */
    FRAME_SHEET_CAUTION_MIRRORED = 4,     /**< "mirrored". Some parts are cut with the sheet's face down. */
    FRAME_SHEET_CAUTION_INNER_CORNER = 5, /**< "inner_corner". Some parts have inner corners, which a straight cut cannot finish: stop short and end the cut with a narrow blade. */
    FRAME_SHEET_CAUTION_STOPPED = 6       /**< "stopped". The search was stopped by the time limit: another run may come to another plan. */
};
/** What a plan of sheets leaves unchecked. */
typedef int32_t frame_sheet_not_checked;
enum frame_sheet_not_checked_values {
    FRAME_SHEET_UNCHECKED_EDGES = 0,   /**< "edges". Whether tongued, grooved or sealed edges lie where they are needed. */
    FRAME_SHEET_UNCHECKED_SUPPORTS = 1 /**< "supports". Whether each part spans two or more spaces and is wide enough: the spacing of supports and the least strip were not given. */
};

/** Parts wanted, and sheets and offcuts to cut them from. */
typedef struct frame_sheet_plan_in {
    uint32_t struct_size, struct_id;
    const frame_sheet_part *parts;     /**< required. The parts wanted. */
    size_t part_count;                 /**< count : 1..1000. */
    const frame_sheet_size *sheets;    /**< optional. The sheets that can be had. */
    size_t sheet_count;                /**< count : 0..100. */
    const frame_sheet_offcut *offcuts; /**< optional. Polygons on hand; parts that fit go there first. */
    size_t offcut_count;               /**< count : 0..1000. */
    const frame_sheet_hole *holes;     /**< optional. Holes in the offcuts. */
    size_t hole_count;                 /**< count : 0..1000. */
    frame_sheet_turns turns;           /**< half. How a part may be turned. */
    frame_sheet_cuts cuts;             /**< free. How sheets are cut. */
    frame_sheet_side x_along;          /**< "width, or length when parts fit only so". Which side of a sheet the parts' x runs along. */
    frame_sheet_side strength;         /**< "the longer side". Which side of a sheet its strength axis runs along. */
    frame_bool reversible;             /**< no. Whether a part may be cut with the sheet's face down, mirrored. */
    int32_t spare;
    double kerf_in;                    /**< 0.125 : 0..2. What one cut turns to dust: parts lie at least so far apart. */
    double support_spacing_in;         /**< optional : >0..96. Spacing of the supports across the strength axis: every part must reach over two spaces along the axis. */
    double least_strip_in;             /**< optional : >0..96. Least width of a part across the strength axis. */
    double least_offcut_in;            /**< 3 : 0..1e4. What is left is kept as an offcut where it is somewhere at least so wide both ways (common practice). */
    double time_limit_s;               /**< optional : >0..1e6. Time the search may take; without it a fixed amount of work is done, the same on every machine. */
    const frame_watch *watch;          /**< optional. Who is told of the search now and then, and may stop it: a function of best cost and bound. */
    const frame_stock_room *room;      /**< optional. A stock room to cut from besides: its sheets and offcuts count behind the lists. */
    const char *room_name;             /**< optional. Name of the room's sheets and offcuts that may be cut; without it, all of them. */
} frame_sheet_plan_in;

/** Figures of a plan of sheets. */
typedef struct frame_sheet_plan_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : sheet_caution. Cautions. */
    uint64_t not_checked; /**< bits : sheet_not_checked. What was not checked. */
    frame_known known;    /**< Prices and sizes from the caller. */
    frame_bool optimal;   /**< Whether it is proven that no plan costs less, nor uses fewer sheets at that cost. */
    int32_t sheets_used;  /**< Sheets to buy; offcuts on hand do not count. */
    int32_t bound;        /**< No plan uses fewer sheets. */
    double cost;          /**< Price of all sheets and offcuts of the plan. */
    double cost_bound;    /**< No plan costs less than this. */
    int32_t offcuts_used; /**< Offcuts on hand that are cut. */
    int32_t parts_cut;    /**< Parts cut. */
    int32_t sheets_by_area;    /**< Sheets by area alone: the parts' area over that of the largest sheet, rounded up. */
    int32_t sheets_one_a_part; /**< Parts that need a sheet each when every part gets its own: the dearest way. */
    double part_area_in2;      /**< Area of all parts. */
    double sheet_area_in2;     /**< Area of all sheets and offcuts of the plan. */
    double offcut_area_in2;    /**< Area of the offcuts that are kept. */
    double waste_share;        /**< Share of the sheets' area that is not in a part. */
    double lost_share;         /**< Share of the sheets' area that is neither in a part nor in an offcut that is kept. */
    double shelves_cost;       /**< What the usual way would have cost: bounding boxes on shelves, the highest first, one size of sheet; not given where no one size takes all parts. */
    int32_t sheets_on_shelves; /**< Sheets of that way; not given where there is none. */
    frame_stock_end ended;     /**< Why the search ended. */
} frame_sheet_plan_out;

/** A sheet or offcut of the plan. */
typedef struct frame_sheet_plan_sheet {
    uint32_t struct_size, struct_id;
    double x_in;          /**< How far it reaches along x. */
    double y_in;          /**< How far it reaches along y. */
    double price;         /**< Its price. */
    double part_area_in2; /**< Area of the parts on it. */
    double waste_share;   /**< Share of its area that is not in a part. */
    int32_t sheet;        /**< Place of its kind in the list of sheets, from 0; -1 for an offcut. */
    int32_t offcut;       /**< Place of its kind in the list of offcuts, from 0; -1 for a sheet. */
    int32_t same_as;      /**< The first sheet of the plan that is cut alike: its own place when it is the first. */
    int32_t spare;
    const char *name;         /**< Name of the sheet or offcut. */
    uint32_t placement_first; /**< range : placements. The parts on it. */
    uint32_t placement_count; /**< count. */
    uint32_t cut_first;       /**< range : cuts. Its straight cuts, in order. */
    uint32_t cut_count;       /**< count. */
    uint32_t outline_first;   /**< range : corners. Of an offcut on hand: its outline as it was given. */
    uint32_t outline_count;   /**< count. */
    int32_t holes;            /**< Holes in the offcut. */
    int32_t spare2;
} frame_sheet_plan_sheet;

/** A part on a sheet: mirrored (x to the left) if it says so, then turned counterclockwise, then moved. */
typedef struct frame_sheet_plan_placement {
    uint32_t struct_size, struct_id;
    double x_in;     /**< Where the point 0, 0 of the part's drawing comes to lie, along x. */
    double y_in;     /**< Where it comes to lie, along y. */
    double turn_deg; /**< How far the part is turned, counterclockwise. */
    int32_t part;    /**< Place of its kind in the list of parts, from 0. */
    int32_t sheet;   /**< The sheet of the plan it lies on, from 0. */
    frame_bool mirrored; /**< Whether it is cut with the sheet's face down. */
    int32_t spare;
    const char *name;      /**< Name of the part. */
    uint32_t corner_first; /**< range : corners. Its corners on the sheet, in the part's own order. */
    uint32_t corner_count; /**< count. */
} frame_sheet_plan_placement;

/** What is left of a sheet and kept. */
typedef struct frame_sheet_plan_offcut {
    uint32_t struct_size, struct_id;
    double area_in2; /**< Its area, holes taken off. */
    double wide_in;  /**< The side of the widest square found in it, along the sheet's sides. */
    int32_t sheet;   /**< The sheet of the plan it is left of, from 0. */
    int32_t hole_of; /**< -1 for an offcut; for a hole in one, the place of that offcut in this list. */
    uint32_t corner_first; /**< range : corners. Its corners on the sheet, counterclockwise. */
    uint32_t corner_count; /**< count. */
} frame_sheet_plan_offcut;

/** A straight cut, where straight cuts were asked for: the middle of its kerf. */
typedef struct frame_sheet_plan_cut {
    uint32_t struct_size, struct_id;
    double from_x_in; /**< Where it begins, from the left side of the sheet. */
    double from_y_in; /**< Where it begins, from the lower side. */
    double to_x_in;   /**< Where it ends, from the left side. */
    double to_y_in;   /**< Where it ends, from the lower side. */
    int32_t sheet;    /**< The sheet of the plan, from 0. */
    int32_t trims;    /**< Place of the part's kind that the cut trims, from 0; -1 for a cut that parts two pieces. */
} frame_sheet_plan_cut;

/** A point of an outline. */
typedef struct frame_sheet_plan_corner {
    uint32_t struct_size, struct_id;
    double x_in; /**< Distance from the left side of the sheet. */
    double y_in; /**< Distance from its lower side. */
} frame_sheet_plan_corner;

/** Cuts parts from sheets for little money: offcuts on hand first, then the cheapest set of sheets that was found, with a
 * bound below which no plan can go. Parts lie at least a kerf apart and may touch the sheet's sides. FRAME_IMPOSSIBLE when
 * a part's edges cross (both are named), a part fits no sheet however it is turned, or the sheets available do not suffice;
 * FRAME_TOO_LARGE beyond 20,000 parts. */
FRAME_ANSWER(sheet_plan);
/** The sheets, offcuts on hand first. */
FRAME_ANSWER_LIST(sheet_plan, sheet, sheets);
/** The parts, sheet by sheet. */
FRAME_ANSWER_LIST(sheet_plan, placement, placements);
/** What is left and kept. */
FRAME_ANSWER_LIST(sheet_plan, offcut, offcuts);
/** The corners of parts and offcuts. */
FRAME_ANSWER_LIST(sheet_plan, corner, corners);
/** The straight cuts in the order in which they are made: each runs from side to side of the piece it cuts. */
FRAME_ANSWER_LIST(sheet_plan, cut, cuts);
/** Draws one sheet of the plan: its parts with their names and turns, what is kept, straight cuts in their order, and the
 * corners of the parts measured along two sides. */
FRAME_API frame_status frame_sheet_plan_drawing(const frame_sheet_plan *plan, size_t sheet, frame_drawing **drawing);
/** Writes the shopping list: sheets of one kind a line, with money; what is cut from offcuts on hand; the share that ends in no part. */
FRAME_API frame_status frame_sheet_plan_shopping(const frame_sheet_plan *plan, frame_text *into);
/** Writes the plan as CSV (RFC 4180): a line for each sheet, part, offcut kept, hole in one and straight cut, with its corners (x and y in
 * turn, parted by spaces) to the last digit. */
FRAME_API frame_status frame_sheet_plan_csv(const frame_sheet_plan *plan, frame_text *into);
/** Writes the plan as JSON: the figures, then the sheets with their parts, offcuts and cuts, to the last digit. */
FRAME_API frame_status frame_sheet_plan_json(const frame_sheet_plan *plan, frame_text *into);

/** Puts sheets into a stock room, all or nothing: what was bought, with its count; without a count, as much as is needed can be had. */
FRAME_API frame_status frame_stock_room_put_sheets(frame_stock_room *room, const frame_sheet_size *sheets, size_t sheet_count);
/** Puts polygons left of sheets into a stock room with the holes in them, all or nothing. */
FRAME_API frame_status frame_stock_room_put_offcuts(frame_stock_room *room, const frame_sheet_offcut *offcuts, size_t offcut_count,
                                                    const frame_sheet_hole *holes, size_t hole_count);
/** Writes what a stock room is short of for a plan of sheets, a line each; nothing when it has all. */
FRAME_API frame_status frame_stock_room_short_sheets(const frame_stock_room *room, const frame_sheet_plan *plan, frame_text *into);
/** Takes a plan's sheets and offcuts out of a stock room and puts what is left of them in, at no price, under the name of what it is left
 * of. FRAME_IMPOSSIBLE when it is short of something, and then nothing is taken. */
FRAME_API frame_status frame_stock_room_take_sheets(frame_stock_room *room, const frame_sheet_plan *plan);

/** Cautions that go with rules of thumb. */
typedef int32_t frame_thumb_caution;
enum frame_thumb_caution_values {
    FRAME_THUMB_CAUTION_ESTIMATE = 0 /**< "estimate". A rule of thumb is for an estimate: the pieces of the job, counted, may be more or fewer. */
};
/** What rules of thumb leave unchecked. */
typedef int32_t frame_thumb_not_checked;
enum frame_thumb_not_checked_values {
    FRAME_THUMB_UNCHECKED_JOB = 0 /**< "job". Whether the job is like those the rule was made for: openings, corners, waste. */
};

/** Nails of one kind and size in a job. As a tuple or array: kind, count, size. */
typedef struct frame_thumb_nailing {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind; /**< required. Kind of nail: common, box, sinker or ring-shank. */
    int32_t count;         /**< required : 0..1e8. How many the job takes. */
    const char *size;      /**< required. Its size: "16d". */
} frame_thumb_nailing;
/** Sets up nails: every field not given. */
FRAME_ELEMENT(thumb_nailing);

/** What rules of thumb are asked for: each of those whose measure is given. */
typedef struct frame_rules_of_thumb_in {
    uint32_t struct_size, struct_id;
    double length_in;   /**< optional : 0..1e6. Length of the walls, or of the room along which joists are counted. */
    double area_in2;    /**< optional : 0..1e9. Area to be covered. */
    double spacing_in;  /**< 16 : 4..96. On centres; rules for other spacings are left out. */
    double thickness_in; /**< 1.5 : 0..12. Thickness of a stud or joist, for the count on centres. */
    double sheet_in2;   /**< 4608 : >0..1e5. Area of one sheet, for the count of sheets: 4608 is 4 ft by 8 ft. */
    double board_feet;  /**< optional : 0..1e7. Board feet to be nailed. */
    double penny;       /**< optional : 2..60. Penny size of the nails. */
    int32_t corners;    /**< optional : 0..1000. Corners of the walls. */
    int32_t pieces;     /**< optional : 0..1e6. Pieces to which waste is added. */
    int32_t nails;      /**< "those of the nailing, where it is given" : 0..1e8. Nails of the job, from its nailing. */
    int32_t spare;
    double nail_length_in;   /**< optional : >0..12. Length of a nail, for the pounds of the job's nails. */
    double nail_diameter_in; /**< optional : >0..1. Its diameter. */
    const frame_thumb_nailing *nailing; /**< optional. The nailing of the job, kind by kind and size by size: its pounds are reckoned from so many to a pound. */
    size_t nailing_count;               /**< count : 0..1000. */
} frame_rules_of_thumb_in;

/** What stands beside the rules: the same counted. */
typedef struct frame_rules_of_thumb_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : thumb_caution. Cautions. */
    uint64_t not_checked; /**< bits : thumb_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the rules. */
    int32_t spare;
    double counted_studs;  /**< Studs or joists of one straight run, counted on centres with one at each end; not given without a length. */
    double counted_sheets; /**< Sheets by area alone, rounded up: no fewer will do; not given without an area. */
    double counted_nail_lb; /**< Pounds of the job's nails as wire of their length and diameter; not given without them. */
    double nailing_lb;      /**< Pounds of the nailing, by how many of each go to a pound; not given without it. */
    double nailing_wire_lb; /**< The same as wire of their length and diameter, heads and points not counted; not given without it. */
} frame_rules_of_thumb_out;

/** Nails of the nailing, in pounds. */
typedef struct frame_rules_of_thumb_nail {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind; /**< Kind of nail. */
    int32_t count;         /**< How many. */
    const char *size;      /**< Its size. */
    const char *source;    /**< Where the count to a pound is from. */
    double per_lb;         /**< So many go to a pound. */
    double nail_lb;        /**< Pounds of them. */
    double wire_lb;        /**< Pounds of as much wire. */
    frame_known known;     /**< How the count to a pound is known. */
    int32_t spare;
} frame_rules_of_thumb_nail;

/** A rule and what comes of it. */
typedef struct frame_rules_of_thumb_rule {
    uint32_t struct_size, struct_id;
    const char *topic;  /**< What it is for. */
    const char *rule;   /**< The rule in words. */
    const char *unit;   /**< Unit of the quantity. */
    const char *source; /**< Where it is from. */
    double quantity;    /**< What comes of it. */
    frame_known known;  /**< How the source is known. */
    int32_t spare;
} frame_rules_of_thumb_rule;

/** Lists what published rules of thumb say for the measures given, each with its source, beside the same counted: studs and joists on
 * centres, sheets by area, pounds of nails from the job's own nailing, size by size. An estimator sees how far the rules are apart. */
FRAME_ANSWER(rules_of_thumb);
/** The rules, by topic. */
FRAME_ANSWER_LIST(rules_of_thumb, rule, rules);
/** The nailing in pounds, in its order. */
FRAME_ANSWER_LIST(rules_of_thumb, nail, nails);

FRAME_END

#endif
