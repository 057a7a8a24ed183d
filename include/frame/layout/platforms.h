/** @file layout/platforms.h
 * Floors and decks, and joists sorted by crown.
 */
#ifndef FRAME_LAYOUT_PLATFORMS_H
#define FRAME_LAYOUT_PLATFORMS_H

#include <frame/base.h>
#include <frame/code.h>
#include <frame/marks.h>
#include <frame/material.h>
#include <frame/timber.h>
#include <frame/layout/pieces.h>

FRAME_BEGIN

/* ---- floors ---- */

/** What holds the end of joists. */
typedef int32_t frame_joist_end;
enum frame_joist_end_values {
    FRAME_JOIST_END_RIM = 1,    /**< "rim" | "sill". A rim joist, over a wall, sill or beam that bears. */
    FRAME_JOIST_END_LEDGER = 2, /**< "ledger". A ledger, in hangers. */
    FRAME_JOIST_END_FREE = 3    /**< "free" | "cantilever". A rim joist, past the last beam. */
};

/** How joists that do not reach go on over a beam. */
typedef int32_t frame_joist_joint;
enum frame_joist_joint_values {
    FRAME_JOIST_JOINT_LAPPED = 1, /**< "lapped" | "lap". Side by side. */
    FRAME_JOIST_JOINT_BUTTED = 2  /**< "butted" | "butt". End to end on the beam's middle, tied. */
};

/** A beam under a floor's joists. */
typedef struct frame_floor_beam {
    uint32_t struct_size, struct_id;
    double at_in;       /**< required : >0..12000. Its centre line, along the joists from x = 0. */
    frame_size size;    /**< optional. Nominal size of a ply, to list it; without one it is there already. */
    int32_t plies;      /**< 2 : 1..6. Plies. */
} frame_floor_beam;
/** Sets up a beam: every field not given. */
FRAME_ELEMENT(floor_beam);

/** An opening in a floor. Its measures are clear, between trimmers and headers. */
typedef struct frame_floor_opening {
    uint32_t struct_size, struct_id;
    const char *name;     /**< optional. Its name ("boathouse stair"). */
    double x_in;          /**< required : 0..12000. Its near end along the joists. */
    double y_in;          /**< required : 0..12000. Its right side along the layout. */
    double length_in;     /**< required : >0..1200. Its length along the joists. */
    double width_in;      /**< required : >0..1200. Its width across them. */
    int32_t header_plies; /**< "1 up to 48 in of width, else 2" : 1..4. Plies of its headers (IRC R502.10, from memory). */
    int32_t trimmer_plies; /**< "1 up to 48 in of width, else 2" : 1..4. Plies of its trimmers. */
} frame_floor_opening;
/** Sets up an opening: every field not given. */
FRAME_ELEMENT(floor_opening);

/** A wall that runs with the joists and stands on them. */
typedef struct frame_floor_wall {
    uint32_t struct_size, struct_id;
    double y_in;    /**< required : 0..12000. The middle of its thickness along the layout. */
    int32_t plies;  /**< 2 : 1..4. Joists under it. */
    int32_t spare;
} frame_floor_wall;
/** Sets up a wall: every field not given. */
FRAME_ELEMENT(floor_wall);

/** Cautions that go with a floor or deck. */
typedef int32_t frame_floor_caution;
enum frame_floor_caution_values {
    FRAME_FLOOR_CAUTION_ONE_HOOK = 0, /**< "one_hook". Pull every mark from one hook of the tape; do not carry a spacing from mark to mark. */
    FRAME_FLOOR_CAUTION_CROWN = 1,    /**< "crown". Crowns up; sort joists by crown, and use the worst for blocks. */
    FRAME_FLOOR_CAUTION_EDGES = 2,    /**< "sheet_edges". A sheet edge lands off a joist, or with less than half an inch on one: add blocking, cut the sheet, or move the datum. */
    FRAME_FLOOR_CAUTION_CANTILEVER = 3, /**< "cantilever". The cantilever is longer than a quarter of the span behind it, or than the joists are deep: check it, and its uplift (IRC R502.3.3, R507.6). */
    FRAME_FLOOR_CAUTION_HANGER = 4,   /**< "hangers". Every specified fastener in, gaps within the limit, no load until filled. */
    FRAME_FLOOR_CAUTION_LEDGER = 5,   /**< "ledger". Know what lies behind the ledger; never on veneer or a cantilevered floor; flash it. */
    FRAME_FLOOR_CAUTION_HEADER = 6,   /**< "headers". Headers over 48 in, and those that carry more than tail joists, want design; doubled ones are nailed together. */
    FRAME_FLOOR_CAUTION_SPLICE = 7,   /**< "splices". Plies of beams are spliced over posts: that breaks their continuity. */
    FRAME_FLOOR_CAUTION_SUPPORT = 8,  /**< "unsupported". Joists are longer than between two supports without a joint: they bear on every beam. */
    FRAME_FLOOR_CAUTION_LAP = 9,      /**< "lapped". Joists of every second bay lie a thickness nearer to the start: mark the far rim, and begin the sheets there, so much sooner. */
    FRAME_FLOOR_CAUTION_BRIDGING = 10 /**< "bridging". Joists deeper than 2x12 want blocking or bridging no more than 8 ft apart (IRC R502.7.1). */
};
/** What a floor or deck leaves unchecked. */
typedef int32_t frame_floor_not_checked;
enum frame_floor_not_checked_values {
    FRAME_FLOOR_UNCHECKED_STRENGTH = 0, /**< "strength". Whether joists, headers, trimmers and beams hold: see joist_check, beam_check and the code's tables. */
    FRAME_FLOOR_UNCHECKED_POSTS = 1,    /**< "posts". Posts, footings and the ground: see column_check, code_deck_post, code_deck_footing. */
    FRAME_FLOOR_UNCHECKED_LATERAL = 2,  /**< "lateral". Bracing, uplift, and ties to what stands there. */
    FRAME_FLOOR_UNCHECKED_LEDGER = 3,   /**< "ledger". The ledger's fasteners: see code_ledger_spacing. */
    FRAME_FLOOR_UNCHECKED_PIPES = 4     /**< "pipes". Holes for pipes and ducts: see code_hole. */
};

/** A floor: joists along x, laid out along y. Measures are out to out of the framing. */
typedef struct frame_floor_in {
    uint32_t struct_size, struct_id;
    double span_in;        /**< required : >0..12000. Its size along the joists, over rims or ledgers. */
    double width_in;       /**< required : >0..12000. Its size across the joists. */
    double spacing_in;     /**< 16 : >0..48. Spacing of the joists on centres. */
    double datum_in;       /**< 0 : -12000..12000. Where the first sheet begins, along y: see layout_marks. */
    double sheet_in;       /**< "the sheet that the spacing divides: 48 or 96 in, 1200 or 2400 mm; else 48 in" : >0..600. From one sheet edge to the next. */
    double thickness_in;   /**< optional : >0..24. True thickness of the joists, instead of their size. */
    double depth_in;       /**< optional : >0..60. True depth of the joists, instead of their size. */
    double rim_thickness_in; /**< "as thick as the joists" : >0..24. Thickness of the rims. */
    double ledger_thickness_in; /**< "as thick as the joists" : >0..24. Thickness of the ledgers. */
    double hanger_gap_in;  /**< 0.125 : 0..1. Gap left at each end that hangs. */
    double stock_in;       /**< 240 : 24..720. Longest joist, rim or ply of a beam. */
    double lap_in;         /**< 6 : 3..48. Lap of joists over a beam (IRC R502.6.1: at least 3 in). */
    frame_size size;       /**< optional. Nominal size of the joists. */
    frame_first_mark first; /**< sheet edges on centres. Where the first joist on centres comes. */
    frame_joist_end near_end; /**< rim. What holds the joists at x = 0. */
    frame_joist_end far_end; /**< rim. What holds them at the other end. */
    frame_joist_joint joint; /**< lapped. How joists go on over a beam. */
    int32_t end_plies;     /**< 1 : 1..4. Plies of the end joists. */
    const frame_floor_beam *beams; /**< optional. Beams under the joists, in order. */
    size_t beam_count;     /**< count : 0..50. */
    const frame_floor_opening *openings; /**< optional. Openings. */
    size_t opening_count;  /**< count : 0..100. */
    const frame_floor_wall *walls; /**< optional. Walls that run with the joists. */
    size_t wall_count;     /**< count : 0..100. */
    const double *blocking_in; /**< optional : 0..12000. Where rows of blocking lie along the joists. */
    size_t blocking_count; /**< count : 0..50. */
    const char *name;      /**< optional. Name of the floor, for its drawing. */
    const double *bridging_in; /**< optional : 0..12000. Where rows of cross bridging lie along the joists: the middle between its two struts. */
    size_t bridging_count; /**< count : 0..50. */
    frame_size bridging_size; /**< "1x3". Nominal size of the bridging. */
    int32_t spare;
} frame_floor_in;

/** Figures of a floor. */
typedef struct frame_floor_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : floor_caution. Cautions. */
    uint64_t not_checked; /**< bits : floor_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the sizes. */
    int32_t joists;       /**< Joists of all kinds, headers and blocks not counted. */
    int32_t blocks;       /**< Blocks. */
    int32_t hanger_total; /**< Hangers. */
    int32_t edges_off;    /**< Sheet edges with less than half an inch on a joist, openings not counted. */
    int32_t joints;       /**< Joints of joists over beams. */
    double joist_length_in; /**< Longest joist. */
    double widest_in;     /**< Widest spacing on centres. */
    double cantilever_in; /**< Longest cantilever; 0 for none. */
    double longest_span_in; /**< Longest stretch between the middles of two supports, or the faces of ledgers. */
    double area_in2;      /**< Area, openings taken off. */
    int32_t bridging;     /**< Pairs of cross bridging. */
    int32_t spare;
} frame_floor_out;

/** A mark on the rims. */
typedef struct frame_floor_mark {
    uint32_t struct_size, struct_id;
    double mark_in; /**< Running distance along y to the near side of the joist. */
    double to_in;   /**< Its far side. */
    frame_piece_kind kind; /**< What lies there. */
    frame_bool near_end; /**< Whether it reaches the end at x = 0. */
    frame_bool far_end; /**< Whether it reaches the other end. */
    int32_t spare;
} frame_floor_mark;

/** A hanger. */
typedef struct frame_floor_hanger {
    uint32_t struct_size, struct_id;
    double x_in;  /**< Where, along x: the face it is nailed to. */
    double y_in;  /**< Where, along y: the middle of what it carries. */
    double thickness_in; /**< Thickness of what it carries, all plies. */
    double depth_in; /**< Its depth. */
    frame_piece_kind carries; /**< What it carries. */
    frame_piece_kind on; /**< What it is nailed to. */
    int32_t stage; /**< When it is needed: the stage of what it carries. */
    int32_t spare;
} frame_floor_hanger;

/** A piece of a floor. Stages: 1 posts, ledgers and beams, 2 rims, 3 end joists and trimmers, 4 header joists, 5 joists and
 * tail joists, 6 blocks and bridging, 7 boards, 8 guards. */
typedef struct frame_floor_piece {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind;  /**< What it is. */
    frame_size size;        /**< Nominal size; not given for a section of no such size. */
    double thickness_in;    /**< Thickness of its section. */
    double depth_in;        /**< Depth of its section. */
    double length_in;       /**< Length over all, long point to long point. */
    double short_point_in;  /**< Short point to short point. */
    double start_x_in;      /**< Where its axis starts, along x. */
    double start_y_in;      /**< Along y. */
    double start_z_in;      /**< Along z. */
    double end_x_in;        /**< Where its axis ends, along x. */
    double end_y_in;        /**< Along y. */
    double end_z_in;        /**< Along z. */
    double start_deg;       /**< Angle of the cut at its start from square. */
    double end_deg;         /**< Angle of the cut at its end from square. */
    const char *name;       /**< Name of the piece. */
    const char *section;    /**< Its section as written. */
    int32_t opening;        /**< Number of the opening it belongs to, from 1; 0 for none. */
    int32_t gang;           /**< Number of its gang, from 1: pieces alike. */
    int32_t stage;          /**< When it goes in. */
    int32_t spare;
} frame_floor_piece;

/** Pieces alike, to be cut in one gang. */
typedef struct frame_floor_gang {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind; /**< What they are. */
    frame_size size;       /**< Nominal size; not given for a section of no such size. */
    int32_t count;         /**< How many. */
    int32_t first;         /**< Place in the list of pieces of the first of them. */
    double length_in;      /**< Length over all, long point to long point. */
    double short_point_in; /**< Short point to short point. */
    double start_deg;      /**< Angle of the cut at the start from square. */
    double end_deg;        /**< Angle of the cut at the end from square. */
    const char *name;      /**< What they are called. */
    const char *section;   /**< Their section as written. */
} frame_floor_gang;

/** Lays a floor out: rims or ledgers, joists on their marks from support to support, joined over beams where they do not
 * reach, past the last beam where an end is free; joists under walls, openings with trimmers, headers and tail joists,
 * blocking, beams; with the hangers it takes. A joist on centres that would run into a trimmer or a doubled joist is set
 * against it, so that no spacing grows and each sheet edge keeps its bearing.
 *
 * x runs along the joists from the outside of the near rim or ledger, y to the left along the layout, z up from the joists'
 * underside. FRAME_IMPOSSIBLE, with the item's name, when openings or walls overlap, leave the floor or cross a joint of the
 * joists; when the joists do not reach from support to support; FRAME_REQUIRED without a section. */
FRAME_ANSWER(floor);
/** The marks on the rims, in order. */
FRAME_ANSWER_LIST(floor, mark, marks);
/** The hangers. */
FRAME_ANSWER_LIST(floor, hanger, hangers);
/** The pieces, in the order they go in. */
FRAME_ANSWER_LIST(floor, piece, pieces);
/** The gangs. */
FRAME_ANSWER_LIST(floor, gang, gangs);
/** Gives a piece of a floor as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_floor_stick(const frame_floor *floor, size_t index, frame_stick **stick);
/** As frame_floor_fit, for an answer of a stated size. */
FRAME_API frame_status frame_floor_fit_sized(const frame_floor *floor, frame_fit_out *out, size_t out_size);
/** Proves that no two pieces of a floor share wood. */
static inline frame_status frame_floor_fit(const frame_floor *floor, frame_fit_out *out) {
    return frame_floor_fit_sized(floor, out, sizeof *out);
}
/** Draws a floor in plan, with running dimensions. Free it with frame_drawing_free. */
FRAME_API frame_status frame_floor_drawing(const frame_floor *floor, frame_drawing **drawing);

/* ---- decks ---- */

/** How deck boards lie. */
typedef int32_t frame_deck_pattern;
enum frame_deck_pattern_values {
    FRAME_DECK_STRAIGHT = 1, /**< "straight". Across the joists. */
    FRAME_DECK_DIAGONAL = 2, /**< "diagonal". At 45 degrees to the joists. */
    FRAME_DECK_FRAME = 3,    /**< "picture frame" | "frame". Across the joists, with a border board round the three open sides, mitred at its corners. */
    FRAME_DECK_BARE = 4      /**< "none" | "bare". The frame alone. */
};

/** A beam under a deck, on posts. */
typedef struct frame_deck_beam {
    uint32_t struct_size, struct_id;
    double at_in;           /**< required : >0..12000. Its centre line, from the ledger's outside. */
    double post_spacing_in; /**< 96 : 12..600. Most from centre to centre of its posts. */
    double inset_in;        /**< 0 : 0..240. How far its ends, and the outer posts' outsides, lie inside the deck's. */
    frame_size size;        /**< required. Nominal size of a ply. */
    int32_t plies;          /**< 2 : 1..6. Plies. */
} frame_deck_beam;
/** Sets up a beam: every field not given. */
FRAME_ELEMENT(deck_beam);

/** Cautions that go with a deck, besides those of its frame. */
typedef int32_t frame_deck_caution;
enum frame_deck_caution_values {
    FRAME_DECK_CAUTION_ONE_HOOK = 0, /**< "one_hook". Pull every mark from one hook of the tape; do not carry a spacing from mark to mark. */
    FRAME_DECK_CAUTION_CROWN = 1,    /**< "crown". Crowns up; sort joists by crown, and use the worst for blocks. */
    FRAME_DECK_CAUTION_CANTILEVER = 2, /**< "cantilever". The joists' cantilever is longer than a quarter of the span behind it (IRC R507.6): not allowed for decks. */
    FRAME_DECK_CAUTION_HANGER = 3,   /**< "hangers". Every specified fastener in, gaps within the limit, no load until filled. */
    FRAME_DECK_CAUTION_LEDGER = 4,   /**< "ledger". Know what lies behind the ledger; never on veneer or a cantilevered floor; flash it. */
    FRAME_DECK_CAUTION_SPLICE = 5,   /**< "splices". Plies of beams are spliced over posts: that breaks their continuity. */
    FRAME_DECK_CAUTION_WET = 6,      /**< "wet". Decks stand in the wet: treated lumber, fasteners that do not rust, values for wet service. */
    FRAME_DECK_CAUTION_SPACING = 7,  /**< "board_spacing". Joists stand farther apart than the boards may span: 1-1/4 in boards 16 in straight and 12 in diagonal, 2 in boards 24 and 16 in (IRC R507.7). */
    FRAME_DECK_CAUTION_LONG = 8,     /**< "long_boards". Boards are longer than any stock given: joint them over doubled joists or blocking. */
    FRAME_DECK_CAUTION_RIP = 9,      /**< "narrow_rip". The last board along the house is ripped narrower than 2 in: widen the gaps, or begin with a ripped one. */
    FRAME_DECK_CAUTION_FRAME = 10,   /**< "border". Border boards along the joists lie on the end joist and need blocking inside it. */
    FRAME_DECK_CAUTION_GUARD = 11,   /**< "guard". Guard posts are bolted through the rims, which are tied back to the joists; 4x4 posts are never notched there (IRC R507.10). */
    FRAME_DECK_CAUTION_LAP = 12      /**< "lapped". Joists of every second bay lie a thickness nearer to the start: mark the far rim so much sooner. */
};

/** A deck: joists along x away from the house, laid out along y. Measures are out to out of the framing. */
typedef struct frame_deck_in {
    uint32_t struct_size, struct_id;
    double length_in;      /**< required : >0..12000. How far it stands out, along the joists. */
    double width_in;       /**< required : >0..12000. Its size along the house. */
    double spacing_in;     /**< 16 : >0..48. Spacing of the joists on centres. */
    double datum_in;       /**< 0 : -12000..12000. Where spacings begin, along y: see layout_marks. */
    double thickness_in;   /**< optional : >0..24. True thickness of the joists, instead of their size. */
    double depth_in;       /**< optional : >0..60. True depth of the joists, instead of their size. */
    double rim_thickness_in; /**< "as thick as the joists" : >0..24. Thickness of the rims. */
    double ledger_thickness_in; /**< "as thick as the joists" : >0..24. Thickness of the ledger. */
    double hanger_gap_in;  /**< 0.125 : 0..1. Gap left at each end that hangs. */
    double stock_in;       /**< 240 : 24..720. Longest joist, rim, ledger or ply of a beam. */
    double lap_in;         /**< 6 : 3..48. Lap of joists over a beam. */
    double height_in;      /**< optional : >0..1200. Height of the walking surface above the footings' tops; without it posts are not cut. */
    double cap_in;         /**< 0 : 0..12. What lies between post and beam. */
    double base_in;        /**< 1 : 0..12. What lies under a post: its base's stand-off. */
    double board_width_in; /**< 5.5 : >0..24. True width of the boards. */
    double board_thickness_in; /**< 1 : >0..6. True thickness of the boards. */
    double board_gap_in;   /**< 0.125 : 0..1. Gap between boards. */
    double overhang_in;    /**< 0 : 0..6. How far boards stand out over the rims. */
    double guard_height_in; /**< 36 : 12..120. Height of the guard above the boards. */
    double guard_spacing_in; /**< 72 : 12..120. Most from centre to centre of guard posts. */
    double baluster_in;    /**< 1.5 : >0..12. Width of a baluster. */
    double baluster_gap_in; /**< 3.9375 : >0..12. Most between balusters: a 4 in sphere must not pass (IRC R312.1.3). */
    frame_size size;       /**< optional. Nominal size of the joists. */
    frame_size post_size;  /**< "6x6". Nominal size of the posts. */
    frame_size guard_post_size; /**< "4x4". Nominal size of the guard's posts. */
    frame_size rail_size;  /**< "2x4". Nominal size of the guard's rails. */
    frame_first_mark first; /**< sheet edges on centres. Where the first joist on centres comes. */
    frame_joist_end near_end; /**< ledger. What holds the joists at the house. */
    frame_joist_joint joint; /**< lapped. How joists go on over a beam. */
    int32_t end_plies;     /**< 1 : 1..4. Plies of the end joists. */
    frame_deck_pattern pattern; /**< straight. How the boards lie. */
    frame_bool guard;      /**< "where it stands over 30 in above the footings". Whether it has a guard on its three open sides. */
    const frame_deck_beam *beams; /**< required. Beams under the joists, in order. */
    size_t beam_count;     /**< count : 1..50. */
    const frame_floor_opening *openings; /**< optional. Openings in the deck. */
    size_t opening_count;  /**< count : 0..100. */
    const double *blocking_in; /**< optional : 0..12000. Where rows of blocking lie along the joists. */
    size_t blocking_count; /**< count : 0..50. */
    const double *board_stock_in; /**< optional : 24..720. Lengths of boards that can be had; 8 to 20 ft by 2 ft when none is given. */
    size_t board_stock_count; /**< count : 0..40. */
    const char *name;      /**< optional. Name of the deck, for its drawing. */
    const double *bridging_in; /**< optional : 0..12000. Where rows of cross bridging lie along the joists: the middle between its two struts. */
    size_t bridging_count; /**< count : 0..50. */
    frame_size bridging_size; /**< "1x3". Nominal size of the bridging. */
    int32_t spare;
} frame_deck_in;

/** Figures of a deck. */
typedef struct frame_deck_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : deck_caution. Cautions. */
    uint64_t not_checked; /**< bits : floor_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the sizes. */
    int32_t joists;       /**< Joists of all kinds, headers and blocks not counted. */
    int32_t posts;        /**< Posts. */
    int32_t boards;       /**< Rows of boards, borders not counted. */
    int32_t hanger_total; /**< Hangers. */
    int32_t guard_posts;  /**< Guard posts. */
    int32_t balusters;    /**< Balusters. */
    int32_t blocks;       /**< Blocks. */
    double joist_length_in; /**< Longest joist. */
    double widest_in;     /**< Widest spacing on centres. */
    double cantilever_in; /**< Cantilever of the joists; 0 for none. */
    double longest_span_in; /**< Longest stretch of the joists between supports. */
    double post_length_in; /**< Length of the posts under the first beam; not given without a height. */
    double last_board_in; /**< Width the last board, along the house, is ripped to; not given without boards. */
    double board_stock_in; /**< Length of all boards to buy, borders too. */
    double board_waste;   /**< Share of it that is not laid. */
    double baluster_gap_in; /**< Widest gap between balusters; not given without a guard. */
    double area_in2;      /**< Area, openings taken off. */
} frame_deck_out;

/** A mark on the rims. */
typedef struct frame_deck_mark {
    uint32_t struct_size, struct_id;
    double mark_in; /**< Running distance along y to the near side of the joist. */
    double to_in;   /**< Its far side. */
    frame_piece_kind kind; /**< What lies there. */
    frame_bool near_end; /**< Whether it reaches the end at x = 0. */
    frame_bool far_end; /**< Whether it reaches the other end. */
    int32_t spare;
} frame_deck_mark;

/** A hanger. */
typedef struct frame_deck_hanger {
    uint32_t struct_size, struct_id;
    double x_in;  /**< Where, along x: the face it is nailed to. */
    double y_in;  /**< Where, along y: the middle of what it carries. */
    double thickness_in; /**< Thickness of what it carries, all plies. */
    double depth_in; /**< Its depth. */
    frame_piece_kind carries; /**< What it carries. */
    frame_piece_kind on; /**< What it is nailed to. */
    int32_t stage; /**< When it is needed: the stage of what it carries. */
    int32_t spare;
} frame_deck_hanger;

/** A piece of a deck. Stages: 1 posts, ledgers and beams, 2 rims, 3 end joists and trimmers, 4 header joists, 5 joists and
 * tail joists, 6 blocks and bridging, 7 boards, 8 guards. */
typedef struct frame_deck_piece {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind;  /**< What it is. */
    frame_size size;        /**< Nominal size; not given for a section of no such size. */
    double thickness_in;    /**< Thickness of its section. */
    double depth_in;        /**< Depth of its section. */
    double length_in;       /**< Length over all, long point to long point. */
    double short_point_in;  /**< Short point to short point. */
    double start_x_in;      /**< Where its axis starts, along x. */
    double start_y_in;      /**< Along y. */
    double start_z_in;      /**< Along z. */
    double end_x_in;        /**< Where its axis ends, along x. */
    double end_y_in;        /**< Along y. */
    double end_z_in;        /**< Along z. */
    double start_deg;       /**< Angle of the cut at its start from square. */
    double end_deg;         /**< Angle of the cut at its end from square. */
    const char *name;       /**< Name of the piece. */
    const char *section;    /**< Its section as written. */
    int32_t opening;        /**< Number of the opening it belongs to, from 1; 0 for none. */
    int32_t gang;           /**< Number of its gang, from 1: pieces alike. */
    int32_t stage;          /**< When it goes in. */
    int32_t spare;
} frame_deck_piece;

/** Pieces alike, to be cut in one gang. */
typedef struct frame_deck_gang {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind; /**< What they are. */
    frame_size size;       /**< Nominal size; not given for a section of no such size. */
    int32_t count;         /**< How many. */
    int32_t first;         /**< Place in the list of pieces of the first of them. */
    double length_in;      /**< Length over all, long point to long point. */
    double short_point_in; /**< Short point to short point. */
    double start_deg;      /**< Angle of the cut at the start from square. */
    double end_deg;        /**< Angle of the cut at the end from square. */
    const char *name;      /**< What they are called. */
    const char *section;   /**< Their section as written. */
} frame_deck_gang;

/** A footing. */
typedef struct frame_deck_footing {
    uint32_t struct_size, struct_id;
    double x_in;      /**< Middle of its post along x. */
    double y_in;      /**< Along y. */
    double area_in2;  /**< Area of deck that it carries, for code_deck_post and code_deck_footing. */
    int32_t beam;     /**< Number of the beam, from 1. */
    int32_t post;     /**< Number of its post at that beam, from 1. */
} frame_deck_footing;

/** Lays a deck out: its frame as floor does, with a free end past the last beam; posts evenly spaced under each beam, its
 * plies joined over them; boards from the outer edge to the house, joined over joists so that the stock they take is least
 * and joints of neighbours do not meet; a guard round the three open sides, its posts outside the rims.
 *
 * x runs along the joists from the outside of the ledger (or of the near rim), y to the left along the house, z up from the
 * joists' underside. FRAME_IMPOSSIBLE as floor, when posts would have no length, and when boards overhang where guard posts
 * stand; FRAME_OUTSIDE_SCOPE for openings under diagonal boards. */
FRAME_ANSWER(deck);
/** The marks on the rims, in order. */
FRAME_ANSWER_LIST(deck, mark, marks);
/** The hangers. */
FRAME_ANSWER_LIST(deck, hanger, hangers);
/** The pieces, in the order they go in. */
FRAME_ANSWER_LIST(deck, piece, pieces);
/** The gangs. */
FRAME_ANSWER_LIST(deck, gang, gangs);
/** The footings. */
FRAME_ANSWER_LIST(deck, footing, footings);
/** Gives a piece of a deck as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_deck_stick(const frame_deck *deck, size_t index, frame_stick **stick);
/** As frame_deck_fit, for an answer of a stated size. */
FRAME_API frame_status frame_deck_fit_sized(const frame_deck *deck, frame_fit_out *out, size_t out_size);
/** Proves that no two pieces of a deck share wood. */
static inline frame_status frame_deck_fit(const frame_deck *deck, frame_fit_out *out) {
    return frame_deck_fit_sized(deck, out, sizeof *out);
}
/** Draws a deck in two plans, its frame and its boards, with running dimensions. Free it with frame_drawing_free. */
FRAME_API frame_status frame_deck_drawing(const frame_deck *deck, frame_drawing **drawing);

/* ---- crowns ---- */

/** Where the straightest pieces go. */
typedef int32_t frame_crown_order;
enum frame_crown_order_values {
    FRAME_CROWN_RISING = 1, /**< "rising". From the straightest to the most crowned: neighbours differ least. */
    FRAME_CROWN_MIDDLE = 2  /**< "middle". The straightest at both ends, the most crowned in the middle. */
};

/** Cautions that go with crowns. */
typedef int32_t frame_crowns_caution;
enum frame_crowns_caution_values {
    FRAME_CROWNS_CAUTION_UP = 0,     /**< "crown_up". Crowns up; a piece is not turned end for end to suit a cut. */
    FRAME_CROWNS_CAUTION_FEW = 1,    /**< "too_few". Fewer pieces are straight enough than there are places. */
    FRAME_CROWNS_CAUTION_REJECT = 2  /**< "rejects". Pieces over the limit are left over: cut them into blocks and headers. */
};
/** What crowns leave unchecked. */
typedef int32_t frame_crowns_not_checked;
enum frame_crowns_not_checked_values {
    FRAME_CROWNS_UNCHECKED_TWIST = 0 /**< "twist". Twist, bow, splits and wane. */
};

/** Joists or rafters at hand, by their crowns. */
typedef struct frame_crowns_in {
    uint32_t struct_size, struct_id;
    const double *crowns_in; /**< required : -12..12. Crown of each piece as measured, in the order they are numbered; negative where it points down as the piece lies. */
    size_t crown_count;      /**< count : 1..10000. */
    double limit_in;         /**< 0.5 : 0..12. Most crown that is used. */
    int32_t places;          /**< "as many as there are pieces" : 1..10000. Places to fill. */
    frame_crown_order order; /**< middle. Where the straightest go. */
} frame_crowns_in;

/** Figures of the order. */
typedef struct frame_crowns_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : crowns_caution. Cautions. */
    uint64_t not_checked; /**< bits : crowns_not_checked. What was not checked. */
    frame_known known;    /**< What was given. */
    int32_t used;         /**< Pieces used. */
    int32_t rejected;     /**< Pieces over the limit. */
    int32_t spare_pieces; /**< Pieces straight enough that are not needed: the most crowned of them. */
    double most_in;       /**< Most crown that is used. */
    double step_in;       /**< Most that neighbours differ. */
} frame_crowns_out;

/** A place, and the piece that goes there. */
typedef struct frame_crowns_place {
    uint32_t struct_size, struct_id;
    int32_t piece;   /**< Number of the piece, from 1. */
    int32_t number;  /**< Number of the place, from 1. */
    double crown_in; /**< Its crown, up. */
    frame_bool turn; /**< Turn it over: its crown was measured pointing down. */
    int32_t spare;
} frame_crowns_place;

/** Sorts joists by crown: the straightest enough pieces, in the order that makes neighbours differ least. */
FRAME_ANSWER(crowns);
/** The places, in order. */
FRAME_ANSWER_LIST(crowns, place, places);

FRAME_END

#endif
