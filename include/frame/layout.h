/** @file layout.h
 * Walls, floors, decks and stairs: from a plan and from what was measured to every piece, where it goes and how it is cut.
 *
 * Every answer here lists its pieces in the order they go up. Each is a stick of the timber room, placed in one set of axes:
 * x along the wall, the joists' span or the run, y to the left of it, z up, 0 at the level named with the calculation. Ask
 * for a piece by its place in the list to get it as a stick, to draw it, to see its cuts, or to prove that it fits.
 */
#ifndef FRAME_LAYOUT_H
#define FRAME_LAYOUT_H

#include <frame/base.h>
#include <frame/code.h>
#include <frame/marks.h>
#include <frame/material.h>
#include <frame/timber.h>

FRAME_BEGIN

/** What a piece is called. */
typedef int32_t frame_piece_kind;
enum frame_piece_kind_values {
    FRAME_PIECE_STRINGER = 1, /**< "stringer" | "carriage" | "stair horse". Carries the treads of a stair. */
    FRAME_PIECE_TREAD = 2,    /**< "tread". What one steps on. */
    FRAME_PIECE_RISER = 3,    /**< "riser". The upright board between two treads. */
    FRAME_PIECE_BOTTOM_PLATE = 4, /**< "bottom plate" | "sole plate" | "sole". Lies under the studs. */
    FRAME_PIECE_TOP_PLATE = 5, /**< "top plate". Lies on the studs. */
    FRAME_PIECE_CAP_PLATE = 6, /**< "cap plate" | "double plate" | "upper top plate". Lies on the top plate and laps over other walls. */
    FRAME_PIECE_STUD = 7,     /**< "stud". Stands from plate to plate. */
    FRAME_PIECE_KING = 8,     /**< "king stud" | "king" | "full-height stud". Stands from plate to plate beside an opening. */
    FRAME_PIECE_JACK = 9,     /**< "jack stud" | "trimmer stud". Carries the end of a header. */
    FRAME_PIECE_CRIPPLE = 10, /**< "cripple" | "cripple stud". Stands under a sill, or on a header. */
    FRAME_PIECE_SILL = 11,    /**< "sill" | "rough sill". Lies under a window. */
    FRAME_PIECE_HEADER = 12,  /**< "header" | "lintel". Carries what is over an opening; one ply of it. */
    FRAME_PIECE_FILLER = 13,  /**< "filler". Fills a header up to the wall's depth. */
    FRAME_PIECE_HEAD = 14,    /**< "head plate" | "head". Closes the top of an opening under a header that lies higher. */
    FRAME_PIECE_BLOCK = 15,   /**< "block" | "blocking". Fills a bay. */
    FRAME_PIECE_BACKING = 16, /**< "backing" | "nailer". Gives what meets here something to be nailed to. */
    FRAME_PIECE_LEDGER = 17,  /**< "ledger". Fixed to what stands there; joists hang from it. */
    FRAME_PIECE_RIM = 18,     /**< "rim joist" | "band joist" | "rim" | "band". Closes the ends of the joists. */
    FRAME_PIECE_END_JOIST = 19, /**< "end joist". A joist at the edge of a floor. */
    FRAME_PIECE_JOIST = 20,   /**< "joist". Carries a floor or deck. */
    FRAME_PIECE_TRIMMER = 21, /**< "trimmer joist" | "trimmer". Beside an opening; carries its headers. */
    FRAME_PIECE_HEADER_JOIST = 22, /**< "header joist". Across the end of an opening; carries the tail joists. */
    FRAME_PIECE_TAIL = 23,    /**< "tail joist" | "tail". Between a header joist and a support. */
    FRAME_PIECE_DOUBLE = 24,  /**< "joist under wall" | "doubled joist". One of several under a wall that runs with the joists. */
    FRAME_PIECE_BEAM = 25,    /**< "beam" | "girder". Carries joists; one ply of it. */
    FRAME_PIECE_POST = 26,    /**< "post". Carries a beam. */
    FRAME_PIECE_BOARD = 27,   /**< "deck board" | "board". What one walks on. */
    FRAME_PIECE_BORDER = 28,  /**< "border board" | "picture frame". A deck board round the others. */
    FRAME_PIECE_GUARD_POST = 29, /**< "guard post". Holds a guard's rails. */
    FRAME_PIECE_RAIL = 30,    /**< "rail". Between guard posts. */
    FRAME_PIECE_BRIDGING = 31, /**< "bridging" | "cross bridging" | "strut". One of two struts that cross between two joists. */
    FRAME_PIECE_RAFTER = 32,  /**< "rafter" | "common rafter". Carries a roof, from plate to ridge. */
    FRAME_PIECE_JACK_RAFTER = 33, /**< "jack rafter" | "hip jack" | "valley jack". A rafter that ends at a hip or valley. */
    FRAME_PIECE_CEILING_JOIST = 34, /**< "ceiling joist". Carries a ceiling, and ties rafters. */
    FRAME_PIECE_HIP = 35,     /**< "hip rafter" | "hip". Where two roof planes meet over an outer corner. */
    FRAME_PIECE_VALLEY = 36,  /**< "valley rafter" | "valley". Where two roof planes meet over an inner corner. */
    FRAME_PIECE_RIDGE = 37,   /**< "ridge" | "ridge board" | "ridge beam". Where rafters meet at the top. */
    FRAME_PIECE_BRACE = 38,   /**< "brace" | "knee brace". Stiffens a corner. */
    FRAME_PIECE_OTHER = 39    /**< "other". Anything else. */
};

/** Whether pieces fit where they lie. */
typedef struct frame_fit_out {
    uint32_t struct_size, struct_id;
    frame_bool fits;      /**< No two pieces share wood. */
    int32_t pairs;        /**< Pairs of pieces that were near enough to be tried. */
    int32_t overlaps;     /**< Pairs that share wood. */
    int32_t first;        /**< Place in the list of a piece of the worst pair; -1 when all fit. */
    int32_t second;       /**< Place of the other; -1 when all fit. */
    int32_t spare;
    double overlap_in3;   /**< What the worst pair shares; 0 when all fit. */
} frame_fit_out;

/* ---- stairs ---- */

/** How a stair meets the upper floor. */
typedef int32_t frame_stair_top;
enum frame_stair_top_values {
    FRAME_STAIR_TOP_FLOOR = 1, /**< "floor" | "one riser down". The floor is the last tread: the stringers end a riser below it, at the header. */
    FRAME_STAIR_TOP_TREAD = 2  /**< "tread" | "flush". A last tread lies level with the floor, in front of it. */
};

/** How a stair goes on after a landing. */
typedef int32_t frame_stair_turn;
enum frame_stair_turn_values {
    FRAME_STAIR_STRAIGHT = 1, /**< "straight". Straight on. */
    FRAME_STAIR_QUARTER = 2,  /**< "quarter" | "quarter turn". A quarter turn to the left. */
    FRAME_STAIR_HALF = 3      /**< "half" | "half turn". A half turn to the left, back beside the flight before it. */
};

/** Cautions that go with a stair. */
typedef int32_t frame_stairs_caution;
enum frame_stairs_caution_values {
    FRAME_STAIRS_CAUTION_MEASURE = 0, /**< "measure". Measure the rise plumb above the place where the stair lands, floors being seldom level, and again before cutting. */
    FRAME_STAIRS_CAUTION_LOCAL = 1,   /**< "local". Local amendments govern, and the building official decides: ask which edition is adopted. */
    FRAME_STAIRS_CAUTION_MEMORY = 2,  /**< "from_memory". Some limits are recalled, their text was not seen: look them up in the printed code. */
    FRAME_STAIRS_CAUTION_RISER = 3,   /**< "riser". The riser asked for is higher than the code allows (IRC R311.7.5.1). */
    FRAME_STAIRS_CAUTION_TREAD = 4,   /**< "tread". The tread asked for is shallower than the code allows (IRC R311.7.5.2). */
    FRAME_STAIRS_CAUTION_NOSING = 5,  /**< "nosing". The nosing asked for lies outside what the code allows for this tread (IRC R311.7.5.3). */
    FRAME_STAIRS_CAUTION_RUN = 6,     /**< "run". The stair asked for is longer than the run there is for it. */
    FRAME_STAIRS_CAUTION_HEADROOM = 7, /**< "headroom". The stair asked for has less headroom than the code allows (IRC R311.7.2). */
    FRAME_STAIRS_CAUTION_FLIGHT = 8,  /**< "flight". A flight asked for rises more than the code allows without a landing (IRC R311.7.3). */
    FRAME_STAIRS_CAUTION_LANDING = 9, /**< "landing". A landing asked for is shorter than the stair is wide, or than the code allows (IRC R311.7.6). */
    FRAME_STAIRS_CAUTION_WIDTH = 10,  /**< "width". The width asked for is less than the code allows (IRC R311.7.1). */
    FRAME_STAIRS_CAUTION_OPEN = 11,   /**< "open_risers". The gap of an open riser lets the sphere of IRC R311.7.5.1 pass: close it, or lessen the gap. */
    FRAME_STAIRS_CAUTION_UNEVEN = 12, /**< "uneven_floor". The floor below differs from stringer to stringer by more than two risers of a flight may (IRC R311.7.5.1): level it. */
    FRAME_STAIRS_CAUTION_THROAT = 13, /**< "throat". Less than 5 in is left of the stringer below its notches, the least that the deck guide DCA 6 accepts (from memory): take a deeper one, or carry it between. */
    FRAME_STAIRS_CAUTION_THIN = 14,   /**< "thin_throat". Less than 3-1/2 in is left of the stringer below its notches: common practice calls that too little for any stair. */
    FRAME_STAIRS_CAUTION_LIMITS = 15, /**< "own_limits". Limits that you gave stand in place of the code's. */
    FRAME_STAIRS_CAUTION_ALIKE = 16   /**< "alike". Treads and risers of a flight may differ by no more than 3/8 in: step off with stops on the square, and cut one stringer by the other. */
};
/** What a stair leaves unchecked. */
typedef int32_t frame_stairs_not_checked;
enum frame_stairs_not_checked_values {
    FRAME_STAIRS_UNCHECKED_STRENGTH = 0, /**< "strength". Whether stringers and treads hold 40 psf, or 300 lb on one tread (IRC R301.5, from memory). */
    FRAME_STAIRS_UNCHECKED_TOP = 1,      /**< "top_connection". What holds the stringers at the top: a hanger, ledger or strap, and the header behind it. */
    FRAME_STAIRS_UNCHECKED_LANDING = 2,  /**< "landing_frame". The frames of landings: lay them out as decks. */
    FRAME_STAIRS_UNCHECKED_GUARD = 3,    /**< "guard". Guards and handrails themselves: their posts, infill, grip and ends. */
    FRAME_STAIRS_UNCHECKED_HEADROOM = 4, /**< "headroom". Headroom: the well or the ceiling was not given, or lies past a turn. */
    FRAME_STAIRS_UNCHECKED_DOORS = 5     /**< "doors". Doors at the top and bottom, and the floors or landings they need. */
};

/** A stair: what it climbs, what it must fit, and how it is made. What is given is kept and checked; what is left out is
 * chosen within the code's limits. */
typedef struct frame_stairs_in {
    uint32_t struct_size, struct_id;
    double rise_in;            /**< required : >0..1200. Total rise as measured: plumb, from the floor that is there below to the floor that is there above. */
    double finish_below_in;    /**< 0 : 0..6. Floor still to be laid below; the stringers stand on what is there now. */
    double finish_above_in;    /**< 0 : 0..6. Floor still to be laid above. */
    double usual_riser_in;     /**< 7 : 3..12. Riser to come near to, where the number of risers is left to be chosen. */
    double tread_in;           /**< optional : >0..60. Run of a tread, from the face of one riser to the face of the next. */
    double run_in;             /**< optional : >0..3600. Total run it takes, from the face of the first riser to the face of the last: the treads share it. */
    double run_limit_in;       /**< optional : >0..3600. Total run there is room for; of a stair that turns, for its longest leg. */
    double tread_thickness_in; /**< 1 : 0..6. Thickness of the treads; 0 where the stringer itself is stepped on. */
    double riser_thickness_in; /**< 0.75 : 0..3. Thickness of the riser boards; 0 leaves the risers open. */
    double nosing_in;          /**< "1 in with solid risers and treads under 11 in, else none" : 0..3. How far a tread stands out over the riser below it. */
    double width_in;           /**< 36 : >0..240. Width of the stair, over its treads. */
    double well_length_in;     /**< optional : 0..1200. Length of the well in the upper floor, level, from its edge at the head of the stair to the edge one passes under. */
    double ceiling_in;         /**< optional : >0..1200. Height of that edge's underside above the finished floor below. */
    double landing_length_in;  /**< "the width, at least the code's 36 in" : >0..240. Length of a landing in the direction one arrives. */
    double stringer_depth_in;  /**< optional : >0..60. True depth of the stringers, instead of their size. */
    double stringer_thickness_in; /**< optional : >0..24. True thickness of the stringers, instead of their size. */
    double stringer_spacing_in;   /**< 18 : >0..60. Most from centre to centre of the stringers. */
    double max_riser_in;       /**< "by the code" : >0..24. Highest riser allowed. */
    double min_tread_in;       /**< "by the code" : >0..24. Shallowest tread allowed. */
    double min_headroom_in;    /**< "by the code" : >0..120. Least headroom allowed. */
    double max_flight_rise_in; /**< "by the code" : >0..600. Most a flight may rise without a landing. */
    double min_width_in;       /**< "by the code" : >0..120. Least width allowed. */
    int32_t risers;            /**< optional : 1..300. Number of risers. */
    int32_t landings;          /**< "as the rise needs" : 0..20. Number of landings. */
    int32_t stringers;         /**< "as the width needs" : 2..20. Number of stringers of a flight. */
    frame_size size;           /**< "2x12". Nominal size of the stringers. */
    frame_code_edition edition; /**< 2021. Edition of the residential code whose limits are kept. */
    frame_stair_top top;       /**< floor. How it meets the upper floor. */
    frame_stair_turn turn;     /**< straight. How it goes on after a landing. */
    int32_t spare;
    const double *floor_at_stringers_in; /**< optional : -6..6. How much higher than where the rise was measured the lower floor is under each stringer, from right to left. */
    size_t floor_at_stringers_count;     /**< count : 0..20. */
    const char *name;          /**< optional. Name of the stair, for its drawing. */
} frame_stairs_in;

/** Figures of a stair. */
typedef struct frame_stairs_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : stairs_caution. Cautions. */
    uint64_t not_checked; /**< bits : stairs_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the limits that were kept. */
    frame_bool passes;    /**< Whether what was given keeps every limit that was checked. */
    int32_t risers;       /**< Number of risers, those of all flights. */
    int32_t treads;       /**< Number of treads, floors and landings not counted. */
    int32_t flight_total; /**< Number of flights: landings and one. */
    int32_t stringers;    /**< Number of stringers of each flight. */
    double total_rise_in;      /**< Total rise between the finished floors. */
    double riser_in;           /**< Height of each riser. */
    double tread_in;           /**< Run of each tread, riser face to riser face. */
    double nosing_in;          /**< Nosing. */
    double tread_board_in;     /**< Width of a tread's board: its run and nosing. */
    double total_run_in;       /**< Total run, along the line one walks: treads and landings. */
    double leg_run_in;         /**< Run of the longest leg with its landings; the total run of a straight stair. */
    double angle_deg;          /**< Angle of the stair from level. */
    double two_risers_and_tread_in; /**< Two risers and a tread, which the handbooks want near 24 in. */
    double square_blade_in;    /**< To be held on the square's blade when stepping off: the tread. */
    double square_tongue_in;   /**< To be held on its tongue: the riser. */
    double step_length_in;     /**< From one step mark to the next along the stringer. */
    double stringer_length_in; /**< Along the slope from the floor at the first riser's face to the floor above at the last one's: the hypotenuse of total rise and run, longest flight. */
    double stepped_length_in;  /**< The stringer's steps along the slope, first step mark to last, longest flight. */
    double stringer_stock_in;  /**< Length of stock a stringer is cut from, long point to long point, longest flight. */
    double drop_in;            /**< Cut off the foot so that the first riser equals the others: the tread's thickness less the floor still to be laid. */
    double first_riser_cut_in; /**< Height of the stringer's first riser cut. */
    double top_riser_in;       /**< From the top of the stringer's last tread cut up to the floor that is there now. */
    double notch_depth_in;     /**< Depth of the notches, square to the stringer. */
    double throat_in;          /**< What is left of the stringer below them. */
    double headroom_in;        /**< Headroom, plumb above the line of the nosings; not given when it was not checked. */
    double well_needed_in;     /**< Shortest well that gives the headroom asked for, with this stair; not given without the ceiling. */
    double landing_length_in;  /**< Length of a landing; not given without one. */
    double handrail_low_in;    /**< A handrail's top is at least so high above the line of the nosings. */
    double handrail_high_in;   /**< And at most so high. */
    double handrail_length_in; /**< Length of a handrail from above the first riser to above the last, longest flight. */
    double guard_stair_in;     /**< Height of a guard on an open side, above the line of the nosings. */
    double guard_level_in;     /**< Height of a guard along landings and the floor above. */
    frame_bool handrail_needed; /**< A flight of this many risers needs a handrail. */
    int32_t guard_from_tread;   /**< First tread, counted from below, with more than the allowed drop beside it: from there on an open side needs a guard; 0 for none. */
} frame_stairs_out;

/** A flight. */
typedef struct frame_stairs_flight {
    uint32_t struct_size, struct_id;
    int32_t risers;           /**< Its risers. */
    int32_t treads;           /**< Its treads. */
    double rise_in;           /**< Its rise. */
    double run_in;            /**< Its run. */
    double from_height_in;    /**< Height of its foot above the finished floor below. */
    double stringer_length_in; /**< The hypotenuse of its rise and run. */
    double stringer_stock_in; /**< Length of stock for its stringers. */
    double stepped_length_in; /**< Its steps along the slope. */
} frame_stairs_flight;

/** A step of a stringer, from below; marks are running distances along its top edge. */
typedef struct frame_stairs_step {
    uint32_t struct_size, struct_id;
    int32_t flight;      /**< Its flight, from 1. */
    int32_t number;      /**< Its number in the flight, from 1. */
    double height_in;    /**< Top of its tread above the finished floor below. */
    double run_in;       /**< Level distance of its riser's face from the first riser's of the flight. */
    double mark_in;      /**< Where its corner lies along the stringer's edge, from the first step's corner: set the square here. */
    double from_foot_in; /**< The same from the stringer's long point at the foot. */
} frame_stairs_step;

/** A piece of a stair. */
typedef struct frame_stairs_piece {
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
    const char *name;       /**< Name of the piece. */
    const char *section;    /**< Its section as written. */
    double start_deg;       /**< Angle of the cut at its start from square. */
    double end_deg;         /**< Angle of the cut at its end from square. */
    int32_t gang;           /**< Number of its gang, from 1: pieces alike. */
    int32_t spare;
} frame_stairs_piece;

/** Pieces alike, to be cut in one gang. */
typedef struct frame_stairs_gang {
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
} frame_stairs_gang;

/** Finds the risers and treads of a stair within the code's limits (IRC R311.7), and lays its stringers out: step marks, the
 * drop for the treads' thickness, the throat that is left, headroom, landings, handrail and guard heights.
 *
 * Without risers, as many are taken as bring the riser nearest to the usual one, fewer where the run or the headroom asks
 * for it. Without tread and run, two risers and a tread make 24 in, but no tread is shallower than allowed. What is given is
 * kept: passes and the cautions say what it comes to. Of a turning stair all landings turn alike.
 *
 * z is 0 at the finished floor below, x runs along the first flight from its first riser's face, y to the left from its
 * right side. FRAME_IMPOSSIBLE when nothing within the limits fits: the message names the limit and the closest choices;
 * and when the stringer is cut through, or its first riser cut vanishes. FRAME_CONFLICT when tread and run are both given;
 * FRAME_REQUIRED when the well is given without the ceiling. */
FRAME_ANSWER(stairs);
/** The flights, from below. */
FRAME_ANSWER_LIST(stairs, flight, flights);
/** The steps of a stringer, flight by flight. */
FRAME_ANSWER_LIST(stairs, step, steps);
/** The pieces. */
FRAME_ANSWER_LIST(stairs, piece, pieces);
/** The gangs. */
FRAME_ANSWER_LIST(stairs, gang, gangs);
/** Gives a piece of a stair as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_stairs_stick(const frame_stairs *stairs, size_t index, frame_stick **stick);
/** As frame_stairs_fit, for an answer of a stated size. */
FRAME_API frame_status frame_stairs_fit_sized(const frame_stairs *stairs, frame_fit_out *out, size_t out_size);
/** Proves that no two pieces of a stair share wood. */
static inline frame_status frame_stairs_fit(const frame_stairs *stairs, frame_fit_out *out) {
    return frame_stairs_fit_sized(stairs, out, sizeof *out);
}
/** Draws a stair from its right side, turns laid straight, with running dimensions. Free it with frame_drawing_free. */
FRAME_API frame_status frame_stairs_drawing(const frame_stairs *stairs, frame_drawing **drawing);

/** Cautions that go with winders. */
typedef int32_t frame_winders_caution;
enum frame_winders_caution_values {
    FRAME_WINDERS_CAUTION_WALKLINE = 0, /**< "walkline". A tread is shallower on the walkline than the code allows (IRC R311.7.5.2.1). */
    FRAME_WINDERS_CAUTION_NARROW = 1,   /**< "narrow". A tread is narrower at its narrow side than the code allows (IRC R311.7.5.2.1). */
    FRAME_WINDERS_CAUTION_LOCAL = 2,    /**< "local". Local amendments govern, and the building official decides: ask which edition is adopted. */
    FRAME_WINDERS_CAUTION_MEMORY = 3,   /**< "from_memory". Some limits are recalled, their text was not seen: look them up in the printed code. */
    FRAME_WINDERS_CAUTION_ALIKE = 4     /**< "alike". Winder treads may differ from each other on the walkline by no more than 3/8 in, and need not equal the straight treads. */
};
/** What winders leave unchecked. */
typedef int32_t frame_winders_not_checked;
enum frame_winders_not_checked_values {
    FRAME_WINDERS_UNCHECKED_HEADROOM = 0, /**< "headroom". Headroom over the turn. */
    FRAME_WINDERS_UNCHECKED_STRENGTH = 1, /**< "strength". What carries the winders. */
    FRAME_WINDERS_UNCHECKED_RAIL = 2      /**< "rail". The handrail round the turn. */
};

/** Winders: treads that turn a stair. Their risers radiate from one centre. */
typedef struct frame_winders_in {
    uint32_t struct_size, struct_id;
    double width_in;          /**< 36 : >0..240. Clear width of the stair, from the narrow side to the wide side. */
    double turn_deg;          /**< 90 : >0..360. Angle of the turn. */
    double offset_in;         /**< "the least that keeps the limits" : 0..600. From the centre the risers radiate from to the narrow side. */
    int32_t winders;          /**< 3 : 1..40. Treads that make the turn. */
    frame_code_edition edition; /**< 2021. Edition of the residential code whose limits are kept. */
} frame_winders_in;

/** Winders' measures. A tread's depth is measured straight across between where its riser faces cross a line. */
typedef struct frame_winders_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : winders_caution. Cautions. */
    uint64_t not_checked; /**< bits : winders_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the limits that were kept. */
    frame_bool passes;    /**< Whether both limits are kept. */
    double each_deg;         /**< Angle of a tread. */
    double offset_in;        /**< From the centre to the narrow side. */
    double offset_needed_in; /**< The least offset that keeps both limits. */
    double walkline_radius_in; /**< From the centre to the walkline. */
    double walkline_tread_in;  /**< Depth of a tread on the walkline. */
    double narrow_tread_in;    /**< Depth of a tread at the narrow side. */
    double wide_tread_in;      /**< Depth of a tread at the wide side. */
    double walkline_run_in;    /**< Length of the walkline round the turn. */
} frame_winders_out;

/** Finds the depth of winder treads on the walkline, 12 in from the narrow side, and at the narrow side, and how far the
 * centre must lie behind the narrow side for both to be deep enough (IRC R311.7.4, R311.7.5.2.1). The narrow ends are taken
 * to lie on a circle round the centre: on straight strings, which lie farther out, they are deeper. */
FRAME_CALCULATION(winders);

/* ---- walls ---- */

/** How a wall ends. */
typedef int32_t frame_wall_end;
enum frame_wall_end_values {
    FRAME_WALL_END_PLAIN = 1, /**< "plain" | "end stud". With an end stud. */
    FRAME_WALL_END_CORNER = 2, /**< "corner". Another wall butts against its inner face here: an end stud, and a stud turned flat behind it as backing; the other's cap plate laps over this wall. */
    FRAME_WALL_END_CORNER_THREE = 3, /**< "three-stud corner". The same with an end stud, blocks, and a further stud as backing. */
    FRAME_WALL_END_BUTT = 4   /**< "butt". It butts against another wall, and its cap plate laps over that one. */
};

/** How a partition that meets a wall between its ends finds backing. */
typedef int32_t frame_wall_backing;
enum frame_wall_backing_values {
    FRAME_WALL_BACKING_CHANNEL = 1, /**< "channel". A stud turned flat between two studs. */
    FRAME_WALL_BACKING_LADDER = 2   /**< "ladder". Blocks between the studs on either side, 24 in apart. */
};

/** Where a header lies. */
typedef int32_t frame_header_at;
enum frame_header_at_values {
    FRAME_HEADER_AT_OPENING = 1, /**< "opening". On top of the opening, cripples on it. */
    FRAME_HEADER_AT_PLATES = 2   /**< "plates" | "high". Right under the plates, cripples below it down to a head plate. */
};

/** An opening in a wall. Its measures are those of the rough opening. */
typedef struct frame_wall_opening {
    uint32_t struct_size, struct_id;
    const char *name;       /**< optional. Its name ("lake window"). */
    double at_in;           /**< required : 0..12000. Its near side from the start of the wall. */
    double width_in;        /**< required : >0..600. Its width, between the jacks. */
    double head_in;         /**< required : >0..600. Its top above the underside of the bottom plate. */
    double sill_in;         /**< 0 : 0..600. Its bottom above the underside of the bottom plate; 0 for a door: the bottom plate is cut out. */
    frame_size header_size; /**< "the smallest the code table allows, where supports is given; a stud laid flat in a wall that bears nothing". Nominal size of a ply of the header. */
    int32_t header_plies;   /**< "2 on edge, 1 flat" : 1..6. Plies of the header. */
    frame_turned header_turned; /**< "on edge where the wall bears". How the header lies. */
    frame_header_at header_at; /**< opening. Where the header lies. */
    frame_bool filler;      /**< yes. Fill the header up to the wall's depth, where no more than filler_most_in is missing. */
    int32_t jacks;          /**< "by the code table where supports is given, else 1" : 0..6. Jack studs at each side. */
    int32_t kings;          /**< "by the code table where the wind is given, or the edition is 2015; else 1" : 1..8. King studs at each side. */
    int32_t sills;          /**< 1 : 1..2. Plies of the sill. */
    double filler_most_in;  /**< 1 : 0..24. Most that is filled: a single ply's filler may be as thick as what it leaves of the wall. */
    frame_bool caps;        /**< no. A stud laid flat under a header on edge, and another on it unless plates are: what a single ply takes (IRC R602.7.1, from memory). */
    int32_t spare;
} frame_wall_opening;
/** Sets up an opening: every field not given. */
FRAME_ELEMENT(wall_opening);

/** A partition that meets a wall between its ends. */
typedef struct frame_wall_crossing {
    uint32_t struct_size, struct_id;
    double at_in;          /**< required : 0..12000. Near side of the partition's framing from the start of the wall. */
    double width_in;       /**< "as deep as this wall" : >0..24. Width of the partition's framing. */
    frame_wall_backing backing; /**< channel. How it finds backing. */
    frame_bool lap;        /**< yes. The partition's cap plate laps over this wall: its own is cut out there. */
} frame_wall_crossing;
/** Sets up a partition: every field not given. */
FRAME_ELEMENT(wall_crossing);

/** A step in the foundation or floor under a wall. */
typedef struct frame_wall_step {
    uint32_t struct_size, struct_id;
    double at_in;   /**< required : >0..12000. Where it is, from the start of the wall. */
    double rise_in; /**< required : -240..240. How much higher it goes on; negative for lower. */
} frame_wall_step;
/** Sets up a step: every field not given. */
FRAME_ELEMENT(wall_step);

/** Cautions that go with a wall. */
typedef int32_t frame_wall_caution;
enum frame_wall_caution_values {
    FRAME_WALL_CAUTION_ONE_HOOK = 0, /**< "one_hook". Pull every mark from one hook of the tape; do not carry a spacing from mark to mark. */
    FRAME_WALL_CAUTION_HEADER = 1,   /**< "header". No point loads but those given rest on the headers; cripples do not brace their tops. */
    FRAME_WALL_CAUTION_EDGES = 2,    /**< "sheet_edges". A sheet edge lands off a member, or with less than half an inch on one: add blocking, cut the sheet, or move the datum. */
    FRAME_WALL_CAUTION_SHORT = 3,    /**< "short_header". A header spans more than the code table allows: it does not pass. */
    FRAME_WALL_CAUTION_PACK = 4,     /**< "packing". Less than 1-1/2 in is left over a header: pack it tight instead of cripples. */
    FRAME_WALL_CAUTION_TIE = 5,      /**< "plate_tie". A single top plate needs a steel tie at each joint, corner and intersection (IRC R602.3.2). */
    FRAME_WALL_CAUTION_SINGLE = 6,   /**< "single_plate". Under a single top plate the rafters or joists stand centred over studs within 1 in (IRC R602.3.2, from memory). */
    FRAME_WALL_CAUTION_BRACE = 7,    /**< "brace". Brace the wall both ways as it is stood up, before anything is set on it. */
    FRAME_WALL_CAUTION_CODE = 8,     /**< "code". Headers, jacks or kings by the code table hold within its scope and edition; local amendments govern. */
    FRAME_WALL_CAUTION_CUT_PLATE = 9, /**< "cut_plate". The bottom plate is listed as it is when the doorways are cut out: run it through while the wall is framed and stood. */
    FRAME_WALL_CAUTION_SINGLE_PLY = 10 /**< "single_ply". A header of a single ply takes a flat member under it and one on it (IRC R602.7.1, from memory): see caps. */
};
/** What a wall leaves unchecked. */
typedef int32_t frame_wall_not_checked;
enum frame_wall_not_checked_values {
    FRAME_WALL_UNCHECKED_STUDS = 0,   /**< "studs". Whether the studs and plates hold: see code_stud, column_check. */
    FRAME_WALL_UNCHECKED_HEADERS = 1, /**< "headers". Whether the headers hold: see beam_check or code_header_span. */
    FRAME_WALL_UNCHECKED_BRACING = 2, /**< "bracing". Bracing, uplift and hold-downs. */
    FRAME_WALL_UNCHECKED_PIPES = 3    /**< "pipes". Holes for pipes, wires and ducts. */
};

/** A wall. It is laid out from its start, the outside on its right. */
typedef struct frame_wall_in {
    uint32_t struct_size, struct_id;
    double length_in;      /**< required : >0..12000. Length of its framing. */
    double height_in;      /**< optional : >0..600. Height at its start, from the underside of the bottom plate to the top of the top plates; or the ceiling, or the studs' length. */
    double ceiling_in;     /**< optional : >0..600. Height of the finished ceiling wanted above the finished floor. */
    double stud_length_in; /**< optional : >0..600. Length of the studs at hand (92.625, 104.625). */
    double floor_finish_in; /**< 0 : 0..12. Finish on the floor the wall stands on, counted with ceiling_in. */
    double ceiling_finish_in; /**< 0.5 : 0..12. What hangs under the framing of the ceiling, counted with ceiling_in. */
    double spacing_in;     /**< 16 : >0..48. Spacing of the studs on centres. */
    double datum_in;       /**< 0 : -12000..12000. Where the first sheet begins, from the start of the wall: see layout_marks. */
    double sheet_in;       /**< "the sheet that the spacing divides: 48 or 96 in, 1200 or 2400 mm; else 48 in" : >0..600. From one sheet edge to the next. */
    double slope;          /**< 0 : -2..2. Slope of its top, rise over run: a raked wall, or a gable with a peak. */
    double peak_in;        /**< optional : >0..12000. Where the top turns, from the start. */
    double far_slope;      /**< "minus the slope" : -2..2. Slope of the top beyond the peak. */
    double bottom_slope;   /**< 0 : -1..1. Slope of what it stands on. */
    double plate_stock_in; /**< 192 : 12..600. Longest piece of plate. */
    double joint_offset_in; /**< 24 : 0..120. Joints of the top plates are at least so far from one another (IRC R602.3.2). */
    double start_other_in; /**< "as deep as this wall" : >0..24. Width of the wall that meets it at its start. */
    double end_other_in;   /**< "as deep as this wall" : >0..24. Width of the wall that meets it at its end. */
    double stud_thickness_in; /**< optional : >0..24. True thickness of studs and plates, instead of their size. */
    double stud_depth_in;  /**< optional : >0..24. True depth of studs and plates, instead of their size. */
    double ground_snow_psf; /**< optional : 0..300. Ground snow load, for the code table of headers. */
    double building_width_in; /**< optional : >0..1200. Width of the building square to the ridge, for the code table of headers. */
    double wind_mph;       /**< optional : >0..300. Ultimate design wind speed, for the code table of king studs. */
    frame_size size;       /**< optional. Nominal size of studs and plates. */
    frame_first_mark first; /**< sheet edges on centres. Where the first stud on centres comes. */
    frame_bool bearing;    /**< yes. Whether it carries more than itself. */
    int32_t top_plates;    /**< 2 : 1..3. Top plates. */
    int32_t bottom_plates; /**< 1 : 1..2. Bottom plates. */
    frame_bool studs_flat; /**< no. Studs on centres stand with their wide face in the wall's face, as in thin partitions. */
    frame_wall_end start_end; /**< plain. How it starts. */
    frame_wall_end end_end; /**< plain. How it ends. */
    frame_code_supports supports; /**< optional. What its headers carry, to size them and their jacks by the code table. */
    frame_code_edition edition; /**< optional. Edition of the code table; required with supports. */
    frame_code_exposure exposure; /**< optional. Wind exposure, for the code table of king studs. */
    int32_t spare;
    const frame_wall_opening *openings; /**< optional. Its openings. */
    size_t opening_count;  /**< count : 0..200. */
    const frame_wall_crossing *crossings; /**< optional. Partitions that meet it between its ends. */
    size_t crossing_count; /**< count : 0..200. */
    const frame_wall_step *steps; /**< optional. Steps of what it stands on, in order. */
    size_t step_count;     /**< count : 0..50. */
    const double *blocking_in; /**< optional : >0..600. Heights of the middle of rows of blocking above the underside of the bottom plate at the start: where sheets' level edges meet. */
    size_t blocking_count; /**< count : 0..20. */
    const char *name;      /**< optional. Name of the wall, for its drawing. */
} frame_wall_in;

/** Figures of a wall. */
typedef struct frame_wall_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : wall_caution. Cautions. */
    uint64_t not_checked; /**< bits : wall_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of what was looked up. */
    frame_bool passes;    /**< Whether every header that was looked up is within its table's span. */
    int32_t studs;        /**< Studs, those of ends, corners and channels too. */
    int32_t kings;        /**< King studs. */
    int32_t jacks;        /**< Jack studs. */
    int32_t cripples;     /**< Cripples. */
    int32_t blocks;       /**< Blocks. */
    int32_t edges_off;    /**< Upright sheet edges with less than half an inch on a member, openings not counted. */
    double height_in;     /**< Height at the start, underside of bottom plate to top of top plates. */
    double stud_length_in; /**< Length of the studs of a level wall; not given for one that is raked or stepped. */
    double longest_in;    /**< Longest stud or king, long point to long point. */
    double shortest_in;   /**< Shortest stud or king, long point to long point. */
    double difference_in; /**< How much longer each stud on centres of a raked wall is than the one before it: spacing times slope; 0 for a level one. */
    double top_angle_deg; /**< Angle of the studs' top cut from square, before the peak. */
    double widest_in;     /**< Widest spacing on centres between members that stand side by side. */
    double plates_in;     /**< Length of all plates together. */
} frame_wall_out;

/** A mark on the plates. */
typedef struct frame_wall_mark {
    uint32_t struct_size, struct_id;
    double mark_in; /**< Running distance from the start of the wall to the near side of the member. */
    double to_in;   /**< Its far side. */
    frame_piece_kind kind; /**< What stands there. */
    frame_bool bottom; /**< Whether it is marked on the bottom plate. */
    frame_bool top; /**< Whether it is marked on the top plate. */
    int32_t opening; /**< Number of the opening it belongs to, from 1; 0 for none. */
} frame_wall_mark;

/** A header. */
typedef struct frame_wall_header {
    uint32_t struct_size, struct_id;
    int32_t opening;    /**< Number of its opening, from 1. */
    int32_t plies;      /**< Its plies. */
    frame_size size;    /**< Nominal size of a ply. */
    frame_turned turned; /**< How it lies. */
    double length_in;   /**< Its length: the opening and the jacks. */
    double bottom_in;   /**< Its underside above z = 0. */
    double top_in;      /**< Its top above z = 0. */
    double code_span_in; /**< The code table's span for it; not given when it was not looked up. */
    int32_t jacks;      /**< Jack studs at each side. */
    int32_t kings;      /**< King studs at each side. */
    const char *name;   /**< Name of the opening. */
    const char *source; /**< Where the table was seen; empty when it was not looked up. */
} frame_wall_header;

/** A piece of a wall. */
typedef struct frame_wall_piece {
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
} frame_wall_piece;

/** Pieces alike, to be cut in one gang. */
typedef struct frame_wall_gang {
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
} frame_wall_gang;

/** Lays a wall out: plates with their joints, studs on their marks, corners, partitions, openings with kings, jacks,
 * headers, sills and cripples, blocking; level, raked, with a peak, on a slope or on steps. A stud on centres that would run
 * into a king, a corner or a channel is set against it, so that no spacing grows and each sheet edge keeps its bearing.
 * Sheets are taken to be cut at openings, their edges above and below them on cripples.
 *
 * x runs along the wall from its start, y from its outside to its inside, z up from the underside of the bottom plate at the
 * start. FRAME_IMPOSSIBLE, with the item's name, when openings or partitions overlap, leave the wall, or leave no room for jacks and
 * kings; when a header does not fit under the plates, or no plate joint can be placed; FRAME_REQUIRED without a height or a
 * section, and for a header of a bearing wall without size and supports; FRAME_NO_VALUE when no size of the code table
 * spans an opening. */
FRAME_ANSWER(wall);
/** The marks on the plates, in order. */
FRAME_ANSWER_LIST(wall, mark, marks);
/** The headers. */
FRAME_ANSWER_LIST(wall, header, headers);
/** The pieces, in the order they go up. */
FRAME_ANSWER_LIST(wall, piece, pieces);
/** The gangs. */
FRAME_ANSWER_LIST(wall, gang, gangs);
/** Gives a piece of a wall as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_wall_stick(const frame_wall *wall, size_t index, frame_stick **stick);
/** As frame_wall_fit, for an answer of a stated size. */
FRAME_API frame_status frame_wall_fit_sized(const frame_wall *wall, frame_fit_out *out, size_t out_size);
/** Proves that no two pieces of a wall share wood. */
static inline frame_status frame_wall_fit(const frame_wall *wall, frame_fit_out *out) {
    return frame_wall_fit_sized(wall, out, sizeof *out);
}
/** Draws a wall from its outside, with running dimensions. Free it with frame_drawing_free. */
FRAME_API frame_status frame_wall_drawing(const frame_wall *wall, frame_drawing **drawing);

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

/* ---- holes for other trades ---- */

/** Which way a pipe, duct or vent goes through a frame. */
typedef int32_t frame_passage_way;
enum frame_passage_way_values {
    FRAME_PASSAGE_X = 1, /**< "x" | "along". Along x: along a wall through its studs, along a floor's joists. */
    FRAME_PASSAGE_Y = 2, /**< "y" | "across". Along y: through a wall from outside to inside, across a floor's joists. */
    FRAME_PASSAGE_Z = 3  /**< "z" | "up". Plumb: through a wall's plates, through a floor. */
};

/** Cautions that go with a passage. */
typedef int32_t frame_passage_caution;
enum frame_passage_caution_values {
    FRAME_PASSAGE_CAUTION_SHORE = 0,  /**< "shore". A member that bears would be cut: shore both sides first; past the code's tables it is licensed design. */
    FRAME_PASSAGE_CAUTION_IDLE = 1,   /**< "idle". A member that looks idle may carry live load, snow or wind later: find its load path before cutting it. */
    FRAME_PASSAGE_CAUTION_LOCAL = 2,  /**< "local". Local amendments govern, and the building official decides: ask which edition is adopted. */
    FRAME_PASSAGE_CAUTION_OTHERS = 3, /**< "other_holes". Only this passage was judged: other holes and notches in the same members count too. */
    FRAME_PASSAGE_CAUTION_FIRE = 4,   /**< "fire". Seal what is left round it, and protect pipes and wires near a face with plates, as the code asks. */
    FRAME_PASSAGE_CAUTION_NO_BOX = 5, /**< "no_box_out". No box-out is listed: a member that may not be cut is in the way, or there is no room for headers: move the passage. */
    FRAME_PASSAGE_CAUTION_NO_HEADER = 6, /**< "no_header". No box-out is listed: the wall bears, and no header is known for it: give header_size, or lay the wall out with what its headers support. */
    FRAME_PASSAGE_CAUTION_WIDE = 7    /**< "wide_header". Headers over 48 in, and what carries them, are doubled (IRC R502.10, from memory) and want design. */
};
/** What a passage leaves unchecked. */
typedef int32_t frame_passage_not_checked;
enum frame_passage_not_checked_values {
    FRAME_PASSAGE_UNCHECKED_STRENGTH = 0, /**< "strength". Whether what is left of each member holds. */
    FRAME_PASSAGE_UNCHECKED_TRADE = 1     /**< "trade". Slopes, bends, clearances to what burns, and the trade's own rules. */
};

/** A pipe, duct or vent through a frame. */
typedef struct frame_passage_in {
    uint32_t struct_size, struct_id;
    frame_passage_way way; /**< required. Which way it goes. */
    frame_code_edition edition; /**< required. Edition of the code that judges it. */
    double x_in;         /**< optional : -12000..12000. Its middle along x; not for one that goes that way. */
    double y_in;         /**< optional : -12000..12000. Its middle along y; not for one that goes that way. */
    double z_in;         /**< optional : -12000..12000. Its middle along z; not for one that goes that way. */
    double width_in;     /**< required : >0..60. Its diameter; of a rectangular one the side that lies level. */
    double height_in;    /**< optional : >0..60. Of a rectangular one the other side: along y for one that goes up. */
    double room_in;      /**< 0 : 0..12. Room left all round it. */
    double gap_in;       /**< 0.125 : 0..1. Gap left at each end of a box-out's pieces that hang in hangers. */
    frame_size header_size; /**< "by the code table, where the wall was laid out with it; a stud laid flat in a wall that bears nothing; as the joists". Nominal size of the header of a box-out in a wall. */
    int32_t header_plies; /**< "2 in a wall that bears; of joists and rafters 1 up to 48 in, else 2" : 1..4. Plies of a box-out's headers. */
    frame_bool bearing;  /**< yes. Whether the wall carries more than itself. */
    frame_bool exterior; /**< yes. Whether it is an outer wall. */
} frame_passage_in;
/** Sets up a passage: every field not given. */
FRAME_ELEMENT(passage_in);

/** What a passage comes to. */
typedef struct frame_passage_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : passage_caution. Cautions. */
    uint64_t not_checked; /**< bits : passage_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the rules that were asked. */
    frame_code_verdict verdict; /**< The worst of all members' verdicts. */
    int32_t meet_total;   /**< Members it meets. */
    frame_bool box_out;   /**< Whether a stud, joist or the like would have to be cut: see the box-out's pieces, or lay the frame out anew with the opening below. */
    double clear_x_in;    /**< Nearest middle along x where it meets nothing, the other coordinate kept; not given where there is none. */
    double clear_y_in;    /**< The same along y. */
    double clear_z_in;    /**< The same along z. */
    double opening_low_in; /**< Where an opening for it begins: along x; of one that goes along x, along y. */
    double opening_high_in; /**< Where it ends. */
    double opening_from_in; /**< Where it begins the other way: along z; of one that goes up, along y. */
    double opening_to_in; /**< Where it ends. */
    int32_t box_out_pieces; /**< Pieces of the box-out; 0 when none is needed, or none can be. */
    int32_t cut_total;    /**< Members that the box-out cuts. */
} frame_passage_out;

/** A member that a passage meets. */
typedef struct frame_passage_meet {
    uint32_t struct_size, struct_id;
    int32_t piece;         /**< Its place in the list of pieces. */
    frame_piece_kind kind; /**< What it is. */
    frame_code_verdict verdict; /**< What the code says. */
    int32_t spare;
    const char *name;      /**< Its name. */
    const char *reason;    /**< What the verdict hangs on. */
    const char *needs;     /**< What must be done for it to hold; empty when nothing. */
    double overlap_in3;    /**< Wood it takes. */
    double limit_in;       /**< Largest hole such a member may have; not given where there is none. */
} frame_passage_meet;

/** A piece of the box-out round a passage, in the frame's own axes. */
typedef struct frame_passage_piece {
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
    int32_t of;             /**< Place in the frame's list of the piece that it is cut from; -1 for a new one. */
    int32_t spare;
} frame_passage_piece;

/** A passage through a frame, judged. Made by frame_wall_passage and its like, freed by frame_passage_free. */
typedef struct frame_passage frame_passage;
/** Frees a passage. NULL is allowed. */
FRAME_API void frame_passage_free(frame_passage *passage);
/** As frame_passage_result, for an answer of a stated size. */
FRAME_API frame_status frame_passage_result_sized(const frame_passage *passage, frame_passage_out *out, size_t out_size);
/** Gives what a passage comes to. */
static inline frame_status frame_passage_result(const frame_passage *passage, frame_passage_out *out) {
    return frame_passage_result_sized(passage, out, sizeof *out);
}
/** Counts the members a passage meets. */
FRAME_API size_t frame_passage_meet_count(const frame_passage *passage);
/** As frame_passage_meet_at, for an item of a stated size. */
FRAME_API frame_status frame_passage_meet_at_sized(const frame_passage *passage, size_t index, frame_passage_meet *item,
                                                   size_t item_size);
/** Gives a member by its place in the list. Its texts live as long as the passage. */
static inline frame_status frame_passage_meet_at(const frame_passage *passage, size_t index, frame_passage_meet *item) {
    return frame_passage_meet_at_sized(passage, index, item, sizeof *item);
}

/** Counts the pieces of the box-out. */
FRAME_API size_t frame_passage_piece_count(const frame_passage *passage);
/** As frame_passage_piece_at, for an item of a stated size. */
FRAME_API frame_status frame_passage_piece_at_sized(const frame_passage *passage, size_t index, frame_passage_piece *item,
                                                    size_t item_size);
/** Gives a piece of the box-out by its place in the list. Its texts live as long as the passage. */
static inline frame_status frame_passage_piece_at(const frame_passage *passage, size_t index, frame_passage_piece *item) {
    return frame_passage_piece_at_sized(passage, index, item, sizeof *item);
}
/** Gives a piece of the box-out as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_passage_stick(const frame_passage *passage, size_t index, frame_stick **stick);

/** Finds which members of a wall a pipe, duct or vent meets, what the code says of each (IRC R602.6, R602.6.1), and the
 * nearest places where it meets none. Where studs would have to be cut, the pieces of the box-out are listed: a header on
 * jacks from stud to stud beside the passage (laid flat between them where the wall bears nothing), a sill, and what is left
 * of the studs as cripples. */
FRAME_API frame_status frame_wall_passage(const frame_wall *wall, const frame_passage_in *in, frame_passage **passage);
/** The same of a floor (IRC R502.8.1): headers hang between the joists on either side, and carry what is left of those that
 * are cut. */
FRAME_API frame_status frame_floor_passage(const frame_floor *floor, const frame_passage_in *in, frame_passage **passage);
/** The same of a deck. */
FRAME_API frame_status frame_deck_passage(const frame_deck *deck, const frame_passage_in *in, frame_passage **passage);

/* ---- frames put together ---- */

/** A frame put together of walls, floors, decks, stairs and sticks. Each part is first turned about its own origin,
 * counterclockwise seen from above, and then moved: a point x, y, z of it comes to lie at
 *
 *   x_in + x cos(turn) - y sin(turn),   y_in + x sin(turn) + y cos(turn),   z_in + z.
 *
 * So a wall along the side of a building from one corner to the next, corners counterclockwise, is turned by that side's
 * direction and moved to its first corner: its outside then looks outward. Walls that butt against others begin that wall's
 * depth farther on. A floor's joists run along its x: turn it by 90 degrees for joists along the building's y, and move it
 * to the corner that is then at its right. Parts are copied: they may be freed once added. */
typedef struct frame_assembly frame_assembly;

/** A piece of an assembly, where it stands. */
typedef struct frame_assembly_piece {
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
    double crown_x;         /**< Direction of its crown, along x. */
    double crown_y;         /**< Along y. */
    double crown_z;         /**< Along z. */
    double start_deg;       /**< Angle of the cut at its start from square; not given for a stick that was added as one: see the stick. */
    double end_deg;         /**< Angle of the cut at its end from square; not given for a stick that was added as one. */
    const char *name;       /**< Name of the piece. */
    const char *section;    /**< Its section as written. */
    const char *of;         /**< Name of the part it belongs to. */
    int32_t part;           /**< Number of that part, from 1, in the order they were added. */
    int32_t spare;
} frame_assembly_piece;

/** Makes an assembly of nothing yet. Free it with frame_assembly_free. */
FRAME_API frame_status frame_assembly_new(frame_assembly **assembly);
/** Frees an assembly. NULL is allowed. */
FRAME_API void frame_assembly_free(frame_assembly *assembly);
/** Adds a wall. FRAME_OUT_OF_RANGE for places beyond 12,000 in, or turns beyond 720 degrees. */
FRAME_API frame_status frame_assembly_add_wall(frame_assembly *assembly, const frame_wall *wall, double x_in, double y_in,
                                               double z_in, double turn_deg);
/** Adds a floor. */
FRAME_API frame_status frame_assembly_add_floor(frame_assembly *assembly, const frame_floor *floor, double x_in,
                                                double y_in, double z_in, double turn_deg);
/** Adds a deck. */
FRAME_API frame_status frame_assembly_add_deck(frame_assembly *assembly, const frame_deck *deck, double x_in, double y_in,
                                               double z_in, double turn_deg);
/** Adds a stair. */
FRAME_API frame_status frame_assembly_add_stairs(frame_assembly *assembly, const frame_stairs *stairs, double x_in,
                                                 double y_in, double z_in, double turn_deg);
/** Adds a stick of any room, such as a rafter; kind tells what it is, and so what the code says of holes in it. */
FRAME_API frame_status frame_assembly_add_stick(frame_assembly *assembly, const frame_stick *stick, frame_piece_kind kind,
                                                double x_in, double y_in, double z_in, double turn_deg);
/** Counts the pieces of an assembly. */
FRAME_API size_t frame_assembly_piece_count(const frame_assembly *assembly);
/** As frame_assembly_piece_at, for an item of a stated size. */
FRAME_API frame_status frame_assembly_piece_at_sized(const frame_assembly *assembly, size_t index,
                                                     frame_assembly_piece *item, size_t item_size);
/** Gives a piece by its place in the list. Its texts live as long as the assembly. */
static inline frame_status frame_assembly_piece_at(const frame_assembly *assembly, size_t index,
                                                   frame_assembly_piece *item) {
    return frame_assembly_piece_at_sized(assembly, index, item, sizeof *item);
}
/** Gives a piece of an assembly as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_assembly_stick(const frame_assembly *assembly, size_t index, frame_stick **stick);
/** As frame_assembly_fit, for an answer of a stated size. */
FRAME_API frame_status frame_assembly_fit_sized(const frame_assembly *assembly, frame_fit_out *out, size_t out_size);
/** Proves that no two pieces of an assembly share wood. */
static inline frame_status frame_assembly_fit(const frame_assembly *assembly, frame_fit_out *out) {
    return frame_assembly_fit_sized(assembly, out, sizeof *out);
}
/** The pieces of an assembly gathered for the saw: all of one shape in one gang, however they stand in the building. Made by
 * frame_assembly_saw_list, freed by frame_saw_list_free. */
typedef struct frame_saw_list frame_saw_list;

/** Pieces of one shape, to be cut in one gang. */
typedef struct frame_saw_list_gang {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind; /**< What they are. */
    frame_size size;       /**< Nominal size; not given for a section of no such size. */
    double thickness_in;   /**< Thickness of their section. */
    double depth_in;       /**< Depth of their section. */
    double length_in;      /**< Length over all, long point to long point. */
    double short_point_in; /**< Short point to short point. */
    int32_t count;         /**< How many. */
    int32_t first;         /**< Place among the assembly's pieces of the first of them: its stick has the marks to strike and the saw's settings. */
    int32_t opposite;      /**< Number of the gang of their opposite hands, from 1; 0 for none. */
    int32_t spare;
    const char *name;      /**< What they are called. */
    const char *section;   /**< Their section as written. */
} frame_saw_list_gang;

/** A piece as it is called for, in the order they go up. */
typedef struct frame_saw_list_call {
    uint32_t struct_size, struct_id;
    int32_t piece;  /**< Its place among the assembly's pieces. */
    int32_t gang;   /**< Number of its gang, from 1. */
    int32_t number; /**< Its number within the gang, from 1. */
    int32_t spare;
} frame_saw_list_call;

/** Gathers the pieces of an assembly for the saw. Pieces belong together when one can be turned to lie where the other does,
 * corner by corner within 1/128 in; those with a crown to keep up (joists, rafters, beams, headers) are only turned end for
 * end, never over. Gangs that are each other's mirror image name one another. Free it with frame_saw_list_free. */
FRAME_API frame_status frame_assembly_saw_list(const frame_assembly *assembly, frame_saw_list **saw_list);
/** Frees a saw list. NULL is allowed. */
FRAME_API void frame_saw_list_free(frame_saw_list *saw_list);
/** Counts the gangs. */
FRAME_API size_t frame_saw_list_gang_count(const frame_saw_list *saw_list);
/** As frame_saw_list_gang_at, for an item of a stated size. */
FRAME_API frame_status frame_saw_list_gang_at_sized(const frame_saw_list *saw_list, size_t index, frame_saw_list_gang *item,
                                                    size_t item_size);
/** Gives a gang by its place in the list: in the order their first pieces go up. Its texts live as long as the saw list. */
static inline frame_status frame_saw_list_gang_at(const frame_saw_list *saw_list, size_t index, frame_saw_list_gang *item) {
    return frame_saw_list_gang_at_sized(saw_list, index, item, sizeof *item);
}
/** Counts the calls: the assembly's pieces. */
FRAME_API size_t frame_saw_list_call_count(const frame_saw_list *saw_list);
/** As frame_saw_list_call_at, for an item of a stated size. */
FRAME_API frame_status frame_saw_list_call_at_sized(const frame_saw_list *saw_list, size_t index, frame_saw_list_call *item,
                                                    size_t item_size);
/** Gives a call by its place in the list. */
static inline frame_status frame_saw_list_call_at(const frame_saw_list *saw_list, size_t index, frame_saw_list_call *item) {
    return frame_saw_list_call_at_sized(saw_list, index, item, sizeof *item);
}
/** Finds which members of an assembly a pipe, duct or vent meets, along the assembly's own axes: of a roof's rafters too
 * (IRC R802.7.1). What would have to be cut is boxed out with headers as in a wall or a floor. */
FRAME_API frame_status frame_assembly_passage(const frame_assembly *assembly, const frame_passage_in *in,
                                              frame_passage **passage);

FRAME_END

#endif
