/** @file layout/stairs.h
 * Stairs and winders.
 */
#ifndef FRAME_LAYOUT_STAIRS_H
#define FRAME_LAYOUT_STAIRS_H

#include <frame/base.h>
#include <frame/code.h>
#include <frame/marks.h>
#include <frame/material.h>
#include <frame/timber.h>
#include <frame/layout/pieces.h>

FRAME_BEGIN

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

FRAME_END

#endif
