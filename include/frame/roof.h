/** @file roof.h
 * Roofs: the common rafter from its run and slope.
 */
#ifndef FRAME_ROOF_H
#define FRAME_ROOF_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/timber.h>

FRAME_BEGIN

/** How the tail of a rafter is cut. Of every kind the outermost point is the upper one, the overhang away from the
 * building line. */
typedef int32_t frame_rafter_tail;
enum frame_rafter_tail_values {
    FRAME_RAFTER_TAIL_PLUMB = 1, /**< "plumb". Upright, for a fascia. */
    FRAME_RAFTER_TAIL_SQUARE = 2, /**< "square". Square to the rafter. */
    FRAME_RAFTER_TAIL_LEVEL = 3, /**< "level". Level, through the whole depth, for a soffit alone. */
    FRAME_RAFTER_TAIL_PLUMB_AND_LEVEL = 4 /**< "plumb and level" | "boxed". Upright for a fascia of the height given, then level for a soffit. */
};

/** Cautions that go with a rafter. */
typedef int32_t frame_rafter_caution;
enum frame_rafter_caution_values {
    FRAME_RAFTER_CAUTION_BRACE = 0, /**< "brace". Ties and bracing stand before the roof is loaded; work with fall protection. */
    FRAME_RAFTER_CAUTION_TRY_ONE = 1, /**< "try_one". Cut one, try it in place, then cut the gang. */
    FRAME_RAFTER_CAUTION_NOTCH = 2, /**< "notch". The birdsmouth is deeper than a quarter of the rafter's depth (NDS 4.4.3, IRC R802.7.1.1): raise the rafter or take a deeper one. */
    FRAME_RAFTER_CAUTION_BEARING = 3, /**< "bearing". The seat is shorter than the 1-1/2 in of bearing on wood that IRC R802.6 asks for. */
    FRAME_RAFTER_CAUTION_SLOPE = 4, /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
    FRAME_RAFTER_CAUTION_LOW = 5, /**< "low_slope". Under 3 in 12 the ridge must be designed as a beam (IRC R802). */
    FRAME_RAFTER_CAUTION_MEASURE = 6 /**< "measure". Measure the building again before cutting: the plan is not the plate. */
};
/** What a rafter leaves unchecked. */
typedef int32_t frame_rafter_not_checked;
enum frame_rafter_not_checked_values {
    FRAME_RAFTER_UNCHECKED_STRENGTH = 0, /**< "strength". Whether the rafter holds its loads: see joist_check. */
    FRAME_RAFTER_UNCHECKED_THRUST = 1 /**< "thrust". Whether its thrust is tied, or its ridge carried. */
};

/** A common rafter: what it spans and how it is cut. Give depth_in, or size. */
typedef struct frame_rafter_in {
    uint32_t struct_size, struct_id;
    double run_in;               /**< required : >0..1200. Run, level, from the outside of the plate's framing to the centre of the ridge; against a wall, to the face of the wall's framing. */
    double slope;                /**< required : >0..2. Slope of the roof, rise over run: 24 in 12 at most. */
    double ridge_thickness_in;   /**< 0 : 0..24. Thickness of the ridge; half of it is taken off, level. */
    double ledger_thickness_in;  /**< 0 : 0..24. Thickness of the ledger or band on the wall; all of it is taken off, level. */
    double overhang_in;          /**< 0 : 0..120. Overhang, level, from the building line to the outer face of the tail cut. */
    double depth_in;             /**< optional : >0..24. True depth of the rafter, square to its edges. */
    double seat_in;              /**< "3-1/2 in" : >0..24. Length of the level seat of the birdsmouth; unless the height above the plate is given. */
    double height_above_plate_in; /**< optional : >0..48. Height above plate, plumb at the building line from the seat to the roof plane, instead of the seat. */
    double fascia_depth_in;      /**< optional : >0..24. Height of the upright part of a plumb and level tail. */
    double thickness_in;         /**< optional : >0..24. True thickness of the rafter; from the size, else 1-1/2 in. */
    frame_size size;             /**< optional. Nominal size, instead of depth and thickness. */
    frame_rafter_tail tail;      /**< plumb. How the tail is cut. */
    const char *name;            /**< optional. Name of the piece, for its drawing. */
} frame_rafter_in;

/** A common rafter: lengths by name, cuts, birdsmouth, heights, and the steps of a square. */
typedef struct frame_rafter_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : rafter_caution. Cautions. */
    uint64_t not_checked; /**< bits : rafter_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    int32_t full_steps;   /**< Whole steps of a square, 12 in of run each, from the building line to the shortened plumb cut. */
    double rise_in;               /**< Rise of the roof plane over the run. */
    double line_length_in;        /**< Line length: along the slope from the building line to the centre of the ridge, unshortened. */
    double shortened_length_in;   /**< The same to the plumb cut, shortened for ridge or ledger. */
    double tail_length_in;        /**< Along the slope from the building line to the tail's long point. */
    double length_in;             /**< Along the top edge from the tail's long point to the plumb cut: tail and shortened length. */
    double stock_length_in;       /**< Length of stock it is cut from: over all, square to square. */
    double deduction_in;          /**< Level deduction at the top: half the ridge or all of the ledger, square to the plumb cut. */
    double deduction_along_in;    /**< The same along the slope. */
    double plumb_cut_deg;         /**< Plumb cuts: the saw's mitre, 0 being square. */
    double level_cut_deg;         /**< Level cuts: their angle from square. */
    double depth_in;              /**< Depth of the rafter used. */
    double plumb_depth_in;        /**< Depth of the rafter measured plumb. */
    double seat_in;               /**< Length of the seat. */
    double heel_in;               /**< Height of the birdsmouth's heel cut, plumb. */
    double notch_depth_in;        /**< Depth of the birdsmouth, square to the edge. */
    double notch_limit_in;        /**< Depth allowed: a quarter of the rafter's depth. */
    double height_above_plate_in; /**< Height above plate: plumb at the building line, from the seat to the roof plane. */
    double ridge_height_in;       /**< Height of the roof plane above the plate at the centre of the ridge; the rafters' own tops at the ridge's face lie lower by deduction times slope. */
    double square_blade_in;       /**< To be held on the square's blade for the run: always 12. */
    double square_tongue_in;      /**< To be held on its tongue for the rise. */
    double step_length_in;        /**< Length of one step along the rafter, the square's own figure for each foot of run. */
    double odd_step_in;           /**< The odd step: what is left of the run to the plumb cut after the whole steps, held on the blade. */
    double tail_odd_step_in;      /**< The tail's odd step, after its whole steps. */
    int32_t tail_full_steps;      /**< Whole steps in the overhang. */
    int32_t spare;
} frame_rafter_out;

/** Finds every length, cut and mark of a common rafter. Lengths along the slope are of its top edge, which lies in the roof
 * plane, and equal those of the line through the birdsmouth. FRAME_REQUIRED without depth_in and size; FRAME_CONFLICT when
 * both are given and differ, when seat and height above plate are both given, or ridge and ledger; FRAME_IMPOSSIBLE when the
 * birdsmouth would cut the rafter through or miss it, or when ridge or ledger take the whole run. */
FRAME_CALCULATION(rafter);
/** The rafter as a stick of the timber room, placed with the building line at x = 0 and the plate's top at z = 0. Free it
 * with frame_stick_free. */
FRAME_VIEW(rafter, stick);
/** Draws the rafter with its cuts and marks. Free the drawing with frame_drawing_free. */
FRAME_VIEW(rafter, drawing);

FRAME_END

#endif
