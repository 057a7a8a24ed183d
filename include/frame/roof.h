/** @file roof.h
 * Roofs: the common rafter, the hip, the valley and their jacks from run and slope; the whole roof from a plan.
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
    double shortened_run_in;      /**< Run to the plumb cut, level. */
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

/** How roofs of unequal slopes share a level fascia. */
typedef int32_t frame_unequal_eaves;
enum frame_unequal_eaves_values {
    FRAME_EAVES_PLATES_LEVEL = 1,   /**< "plates level". Plates level; the overhangs are in inverse ratio of the slopes. */
    FRAME_EAVES_OVERHANGS_EQUAL = 2 /**< "overhangs equal". Overhangs equal; the plates differ in height by the overhang times the difference of slopes. */
};

/** How the head of a hip is cut. */
typedef int32_t frame_hip_head;
enum frame_hip_head_values {
    FRAME_HIP_HEAD_COMMONS = 1, /**< "commons" | "double cheek". Double cheek, between the end common rafters of both sides. */
    FRAME_HIP_HEAD_RIDGE = 2,   /**< "ridge" | "single cheek". Single cheek, against a ridge parallel to the eave of side a. */
    FRAME_HIP_HEAD_PLUMB = 3    /**< "plumb". Plumb and square to its run. */
};
/** How the square top of a hip is kept under the roof planes. */
typedef int32_t frame_hip_top;
enum frame_hip_top_values {
    FRAME_HIP_TOP_DROPPED = 1, /**< "dropped". Set lower by the larger of the two drops. */
    FRAME_HIP_TOP_BACKED = 2   /**< "backed". Bevelled along both top edges. */
};
/** How the tail of a hip or valley is cut. */
typedef int32_t frame_hip_tail;
enum frame_hip_tail_values {
    FRAME_HIP_TAIL_FASCIA = 1, /**< "fascia" | "double cheek". To meet the fascias of both sides: a point on a hip, a hollow in a valley. */
    FRAME_HIP_TAIL_PLUMB = 2   /**< "plumb". Plumb and square to its run. */
};
/** Cautions that go with a hip. */
typedef int32_t frame_hip_caution;
enum frame_hip_caution_values {
    FRAME_HIP_CAUTION_BEAM = 0, /**< "beam". A hip carries its jacks: it is a beam with a load that grows towards the ridge, and its ridge end needs support. */
    FRAME_HIP_CAUTION_COMPOUND = 1, /**< "compound". Cheeks are compound cuts: guard, support the piece, make a test cut. */
    FRAME_HIP_CAUTION_PAST_TILT = 2, /**< "past_tilt". A cheek is past the 45 degrees most saws tilt to: cut it another way. */
    FRAME_HIP_CAUTION_NOTCH = 3, /**< "notch". The birdsmouth is deeper than a quarter of the depth (NDS 4.4.3, IRC R802.7.1.1). */
    FRAME_HIP_CAUTION_SLOPE = 4, /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
    FRAME_HIP_CAUTION_MEASURE = 5 /**< "measure". Measure the building again before cutting: the plan is not the plate. */
};
/** What a hip leaves unchecked. */
typedef int32_t frame_hip_not_checked;
enum frame_hip_not_checked_values {
    FRAME_HIP_UNCHECKED_STRENGTH = 0, /**< "strength". Whether the hip holds its loads, and what carries its ridge end. */
    FRAME_HIP_UNCHECKED_THRUST = 1 /**< "thrust". Whether the thrust of hip and jacks is tied. */
};

/** A hip: the two roofs that meet in it, and how it is cut. Seen from the eave, side a is on the right. */
typedef struct frame_hip_in {
    uint32_t struct_size, struct_id;
    double slope_a;              /**< required : >0..2. Slope of the roof on side a, rise over run. */
    double slope_b;              /**< required : >0..2. Slope of the roof on side b. */
    double corner_deg;           /**< 90 : >0..<180. Angle of the corner of the walls, inside the building. */
    double run_in;               /**< required : >0..1200. The common rafter's run on side a, level, from the building line to the centre of the ridge. */
    double thickness_in;         /**< "1-1/2 in, or the size's" : >0..24. True thickness; of doubled pieces that of both. */
    double depth_in;             /**< optional : >0..24. True depth; needed for its birdsmouth, stick and drawing. */
    double overhang_in;          /**< 0 : 0..120. Overhang on side a, level, square to the building line. */
    double height_above_plate_in; /**< optional : >0..48. Height above plate of the common rafters, plumb at the building line; without it there is no birdsmouth. */
    double against_thickness_in; /**< 0 : 0..24. Thickness of what the head is cut against; half of it is taken off, level and square to it. */
    double plate_width_in;       /**< 3.5 : >0..24. Width of the plates, for the birdsmouth over plates of different heights. */
    frame_size size;             /**< optional. Nominal size, instead of depth and thickness. */
    frame_hip_head head;         /**< commons. How the head is cut. */
    frame_hip_top top;           /**< dropped. How its square top is kept under the roof planes. */
    frame_hip_tail tail;         /**< fascia. How the tail is cut. */
    frame_unequal_eaves eaves;   /**< plates level. How unequal slopes share a level fascia. */
    int32_t spare;
    const char *name;            /**< optional. Name of the piece, for its drawing. */
} frame_hip_in;

/** A hip: lengths by name, cuts, backing, drop, birdsmouth, and the steps of a square. */
typedef struct frame_hip_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : hip_caution. Cautions. */
    uint64_t not_checked; /**< bits : hip_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    int32_t spare2;
    double length_in;            /**< Along the slope on the centre line, tail to head: tail and shortened length. */
    double line_length_in;       /**< Line length: from the building line of side a to the point where the centre lines meet, unshortened. */
    double shortened_length_in;  /**< The same to the head's cut on the centre line. */
    double tail_length_in;       /**< Along the slope from the building line of side a to the tail's cut on the centre line. */
    double per_foot_in;          /**< Length for each foot of the common rafter's run on side a. */
    double run_per_foot_in;      /**< Its own run for each foot of that run; 16.97 in, called 17, of a regular one. */
    double plan_run_in;          /**< Its run, level. */
    double rise_in;              /**< Its rise over the run. */
    double slope;                /**< Its slope, rise over run. */
    double plumb_cut_deg;        /**< Plumb cuts: the saw's mitre, 0 being square. */
    double level_cut_deg;        /**< Level cuts: their angle from square. */
    double cheek_a_deg;          /**< Cheek on side a: the saw's bevel with the line plumb. It is the angle in plan to the eave of side a, so that the cut lies against a common rafter of side a; side a's jacks have the same bevel. */
    double cheek_b_deg;          /**< Cheek on side b, in the same way. */
    double top_edge_a_deg;       /**< That cheek on side a across the top edge, counted from the edge: the handbooks' side cut. */
    double top_edge_b_deg;       /**< The side cut of side b across the top edge, from the edge. */
    double side_cut_a_in;        /**< The side cut of side a on a square: this on one arm and 12 in on the other; the mark is along the 12. */
    double side_cut_b_in;        /**< The side cut of side b on a square, against 12 in. */
    double ridge_cheek_a_deg;    /**< Bevel of a cheek that lies against a ridge or fascia parallel to the eave of side a. */
    double ridge_cheek_b_deg;    /**< Bevel of a cheek that lies against a ridge or fascia parallel to the eave of side b. */
    double backing_a_deg;        /**< Angle on side a between its square top and the roof plane, in the section square to it: the backing of a hip. */
    double backing_b_deg;        /**< The same on side b. */
    double drop_a_in;            /**< Half the thickness times the roof plane's fall across it on side a, plumb: what a hip is dropped by, what the jacks of a valley stand proud by. */
    double drop_b_in;            /**< The same on side b. */
    double deduction_in;         /**< Level deduction at the head, along its run on the centre line. */
    double deduction_along_in;   /**< The same along the slope. */
    double run_b_in;             /**< The common rafter's run on side b that reaches the same height. */
    double overhang_b_in;        /**< Overhang on side b, level and square to its building line. */
    double plate_b_in;           /**< How much higher than side a's the plate of side b lies; negative when lower. */
    double planes_deg;           /**< Angle between the two roof planes, 180 being flat. */
    double sheathing_a_deg;      /**< Angle between it and the eave in the roof plane of side a: for cutting sheathing boards and courses. */
    double sheathing_b_deg;      /**< The same in the roof plane of side b. */
    double height_in;            /**< Height of its top centre line above the plate at the building line of side a; not given without a height above plate. */
    double seat_in;              /**< Length of its level seat, along its run; not given without a birdsmouth. */
    double heel_in;              /**< Height of its heel cuts on the centre line, plumb; not given without a birdsmouth. */
    double notch_depth_in;       /**< Depth of the birdsmouth, square to the edge; not given without a birdsmouth. */
    double notch_limit_in;       /**< Depth allowed: a quarter of the depth; not given without a birdsmouth. */
    double square_blade_in;      /**< To be held on the square's blade for each step. */
    double square_tongue_in;     /**< To be held on its tongue. */
    double odd_step_in;          /**< The odd step, held on the blade after the whole steps. */
    int32_t full_steps;          /**< Whole steps of a square from the building line to the head: one for each foot of the common run. */
    int32_t spare;
} frame_hip_out;

/** Finds every length, cut and mark of a hip between two roofs of any slopes over a corner of any angle. FRAME_CONFLICT when
 * depth or thickness and size differ; FRAME_IMPOSSIBLE when the head's deduction takes the whole run, or the birdsmouth would
 * cut the hip through or miss it. */
FRAME_CALCULATION(hip);
/** The hip as a stick of the timber room: it runs along x in plan, side a to the right (-y), with the building line of side a
 * at x = 0 and the top of side a's plate at z = 0. Needs depth_in or size. Free it with frame_stick_free. */
FRAME_VIEW(hip, stick);
/** Draws the hip with its cuts and marks. Free the drawing with frame_drawing_free. */
FRAME_VIEW(hip, drawing);

/** How the head of a valley is cut. */
typedef int32_t frame_valley_head;
enum frame_valley_head_values {
    FRAME_VALLEY_HEAD_RIDGES = 1, /**< "ridges" | "double cheek". Double cheek, into the corner between the ridges of both sides. */
    FRAME_VALLEY_HEAD_RIDGE = 2,  /**< "ridge" | "single cheek". Single cheek, against a ridge parallel to the eave of side a. */
    FRAME_VALLEY_HEAD_PLUMB = 3   /**< "plumb" | "supporting valley". Plumb and square to its run, as against a supporting valley. */
};
/** Cautions that go with a valley. */
typedef int32_t frame_valley_caution;
enum frame_valley_caution_values {
    FRAME_VALLEY_CAUTION_BEAM = 0, /**< "beam". A valley carries its jacks: it is a beam with a load that grows towards the ridge, and its ridge end needs support. */
    FRAME_VALLEY_CAUTION_COMPOUND = 1, /**< "compound". Cheeks are compound cuts: guard, support the piece, make a test cut. */
    FRAME_VALLEY_CAUTION_PAST_TILT = 2, /**< "past_tilt". A cheek is past the 45 degrees most saws tilt to: cut it another way. */
    FRAME_VALLEY_CAUTION_NOTCH = 3, /**< "notch". The birdsmouth is deeper than a quarter of the depth (NDS 4.4.3, IRC R802.7.1.1). */
    FRAME_VALLEY_CAUTION_SLOPE = 4, /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
    FRAME_VALLEY_CAUTION_MEASURE = 5, /**< "measure". Measure the building again before cutting: the plan is not the plate. */
    FRAME_VALLEY_CAUTION_PROUD = 6 /**< "proud". Jacks stand proud of the valley's edges by the drop of their side, so that sheathing meets over its centre line. */
};
/** What a valley leaves unchecked. */
typedef int32_t frame_valley_not_checked;
enum frame_valley_not_checked_values {
    FRAME_VALLEY_UNCHECKED_STRENGTH = 0, /**< "strength". Whether the valley holds its loads, and what carries its ridge end. */
    FRAME_VALLEY_UNCHECKED_SNOW = 1 /**< "snow". Snow that slides and drifts into the valley. */
};

/** A valley: the two roofs that meet in it, and how it is cut. Seen from the eave, the roof of side a is on the right. */
typedef struct frame_valley_in {
    uint32_t struct_size, struct_id;
    double slope_a;              /**< required : >0..2. Slope of the roof on side a, rise over run. */
    double slope_b;              /**< required : >0..2. Slope of the roof on side b. */
    double corner_deg;           /**< 90 : >0..<180. Angle of the corner of the walls, outside the building. */
    double run_in;               /**< required : >0..1200. The common rafter's run on side a, level, from the building line to the centre of the ridge. */
    double thickness_in;         /**< "1-1/2 in, or the size's" : >0..24. True thickness; of doubled pieces that of both. */
    double depth_in;             /**< optional : >0..24. True depth; needed for its birdsmouth, stick and drawing. */
    double overhang_in;          /**< 0 : 0..120. Overhang on side a, level, square to the building line. */
    double height_above_plate_in; /**< optional : >0..48. Height above plate of the common rafters, plumb at the building line; without it there is no birdsmouth. */
    double against_thickness_in; /**< 0 : 0..24. Thickness of what the head is cut against; half of it is taken off, level and square to it. */
    double plate_width_in;       /**< 3.5 : >0..24. Width of the plates, for the birdsmouth over plates of different heights. */
    frame_size size;             /**< optional. Nominal size, instead of depth and thickness. */
    frame_valley_head head;      /**< ridges. How the head is cut. */
    frame_hip_tail tail;         /**< fascia. How the tail is cut. */
    frame_unequal_eaves eaves;   /**< plates level. How unequal slopes share a level fascia. */
    const char *name;            /**< optional. Name of the piece, for its drawing. */
} frame_valley_in;

/** A valley: lengths by name, cuts, birdsmouth, and the steps of a square. */
typedef struct frame_valley_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : valley_caution. Cautions. */
    uint64_t not_checked; /**< bits : valley_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    int32_t spare2;
    double length_in;            /**< Along the slope on the centre line, tail to head: tail and shortened length. */
    double line_length_in;       /**< Line length: from the building line of side a to the point where the centre lines meet, unshortened. */
    double shortened_length_in;  /**< The same to the head's cut on the centre line. */
    double tail_length_in;       /**< Along the slope from the building line of side a to the tail's cut on the centre line. */
    double per_foot_in;          /**< Length for each foot of the common rafter's run on side a. */
    double run_per_foot_in;      /**< Its own run for each foot of that run; 16.97 in, called 17, of a regular one. */
    double plan_run_in;          /**< Its run, level. */
    double rise_in;              /**< Its rise over the run. */
    double slope;                /**< Its slope, rise over run. */
    double plumb_cut_deg;        /**< Plumb cuts: the saw's mitre, 0 being square. */
    double level_cut_deg;        /**< Level cuts: their angle from square. */
    double cheek_a_deg;          /**< Cheek on side a: the saw's bevel with the line plumb. It is the angle in plan to the eave of side a, so that the cut lies against a common rafter of side a; side a's jacks have the same bevel. */
    double cheek_b_deg;          /**< Cheek on side b, in the same way. */
    double top_edge_a_deg;       /**< That cheek on side a across the top edge, counted from the edge: the handbooks' side cut. */
    double top_edge_b_deg;       /**< The side cut of side b across the top edge, from the edge. */
    double side_cut_a_in;        /**< The side cut of side a on a square: this on one arm and 12 in on the other; the mark is along the 12. */
    double side_cut_b_in;        /**< The side cut of side b on a square, against 12 in. */
    double ridge_cheek_a_deg;    /**< Bevel of a cheek that lies against a ridge or fascia parallel to the eave of side a. */
    double ridge_cheek_b_deg;    /**< Bevel of a cheek that lies against a ridge or fascia parallel to the eave of side b. */
    double backing_a_deg;        /**< Angle on side a between its square top and the roof plane, in the section square to it: the backing of a hip. */
    double backing_b_deg;        /**< The same on side b. */
    double drop_a_in;            /**< Half the thickness times the roof plane's fall across it on side a, plumb: what a hip is dropped by, what the jacks of a valley stand proud by. */
    double drop_b_in;            /**< The same on side b. */
    double deduction_in;         /**< Level deduction at the head, along its run on the centre line. */
    double deduction_along_in;   /**< The same along the slope. */
    double run_b_in;             /**< The common rafter's run on side b that reaches the same height. */
    double overhang_b_in;        /**< Overhang on side b, level and square to its building line. */
    double plate_b_in;           /**< How much higher than side a's the plate of side b lies; negative when lower. */
    double planes_deg;           /**< Angle between the two roof planes, 180 being flat. */
    double sheathing_a_deg;      /**< Angle between it and the eave in the roof plane of side a: for cutting sheathing boards and courses. */
    double sheathing_b_deg;      /**< The same in the roof plane of side b. */
    double height_in;            /**< Height of its top centre line above the plate at the building line of side a; not given without a height above plate. */
    double seat_in;              /**< Length of its level seat, along its run; not given without a birdsmouth. */
    double heel_in;              /**< Height of its heel cuts on the centre line, plumb; not given without a birdsmouth. */
    double notch_depth_in;       /**< Depth of the birdsmouth, square to the edge; not given without a birdsmouth. */
    double notch_limit_in;       /**< Depth allowed: a quarter of the depth; not given without a birdsmouth. */
    double square_blade_in;      /**< To be held on the square's blade for each step. */
    double square_tongue_in;     /**< To be held on its tongue. */
    double odd_step_in;          /**< The odd step, held on the blade after the whole steps. */
    int32_t full_steps;          /**< Whole steps of a square from the building line to the head: one for each foot of the common run. */
    int32_t spare;
} frame_valley_out;

/** Finds every length, cut and mark of a valley between two roofs of any slopes over a corner of any angle. Its top centre line
 * lies on the line in which the roof planes meet. Refuses what hip refuses. */
FRAME_CALCULATION(valley);
/** The valley as a stick of the timber room, placed as a hip is. Needs depth_in or size. Free it with frame_stick_free. */
FRAME_VIEW(valley, stick);
/** Draws the valley with its cuts and marks. Free the drawing with frame_drawing_free. */
FRAME_VIEW(valley, drawing);

/** Which jacks. */
typedef int32_t frame_jack_kind;
enum frame_jack_kind_values {
    FRAME_JACK_HIP = 1,    /**< "hip". From the plate up to a hip. */
    FRAME_JACK_VALLEY = 2, /**< "valley". From a valley up to the ridge. */
    FRAME_JACK_CRIPPLE = 3 /**< "cripple" | "hip-valley cripple". From a valley up to a hip that runs alongside: all are alike. */
};
/** The hand of a piece, seen from the eave with the crown up: the side its cheek's waste is on. */
typedef int32_t frame_hand;
enum frame_hand_values {
    FRAME_HAND_LEFT = 1, /**< "left". The waste of its upper cheek, or of its only one, is on the left. */
    FRAME_HAND_RIGHT = 2 /**< "right". On the right. */
};
/** Cautions that go with jacks. */
typedef int32_t frame_jacks_caution;
enum frame_jacks_caution_values {
    FRAME_JACKS_CAUTION_COMPOUND = 0, /**< "compound". Cheeks are compound cuts: guard, support the piece, make a test cut. */
    FRAME_JACKS_CAUTION_PAST_TILT = 1, /**< "past_tilt". The cheek is past the 45 degrees most saws tilt to: cut it another way. */
    FRAME_JACKS_CAUTION_PAIRS = 2, /**< "pairs". Set jacks in opposite pairs, so that they do not push the hip or valley out of line. */
    FRAME_JACKS_CAUTION_SLOPE = 3, /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
    FRAME_JACKS_CAUTION_NOTCH = 4 /**< "notch". The birdsmouth is deeper than a quarter of the depth (NDS 4.4.3, IRC R802.7.1.1). */
};
/** What jacks leave unchecked. */
typedef int32_t frame_jacks_not_checked;
enum frame_jacks_not_checked_values {
    FRAME_JACKS_UNCHECKED_STRENGTH = 0, /**< "strength". Whether they hold their loads: the longest is loaded as a common rafter. */
    FRAME_JACKS_UNCHECKED_THRUST = 1 /**< "thrust". Whether the thrust of hip-end jacks is tied. */
};

/** The jacks of one side of a hip or valley. Without run_in (of a cripple: between_in) only what they have in common is found. */
typedef struct frame_jacks_in {
    uint32_t struct_size, struct_id;
    double slope;                /**< required : >0..2. Slope of the roof they lie in, rise over run. */
    double spacing_in;           /**< required : >0..96. Spacing on centres along the eave. */
    double other_slope;          /**< "the same slope" : >0..2. Slope of the roof on the other side of the hip or valley. */
    double corner_deg;           /**< 90 : >0..<180. Angle of the corner: inside the building under a hip, outside of it at a valley. */
    double run_in;               /**< optional : >0..1200. The common rafter's run: jacks are laid as long as theirs is shorter. */
    double between_in;           /**< optional : >0..1200. Of a cripple: along the eave from the hip's corner to the valley's. */
    double first_in;             /**< "the spacing" : >0..96. From the corner along the eave, or from the ridges' meeting along the ridge, to the centre of the first jack. */
    double hip_thickness_in;     /**< 0 : 0..24. Thickness of the hip or valley; half of it is taken off, square to it. */
    double valley_thickness_in;  /**< 0 : 0..24. Of a cripple: thickness of the valley. */
    double ridge_thickness_in;   /**< 0 : 0..24. Of valley jacks: thickness of the ridge; half of it is taken off, level. */
    double overhang_in;          /**< 0 : 0..120. Of hip jacks: overhang, level. */
    double height_above_plate_in; /**< optional : >0..48. Of hip jacks: height above plate; without it there is no birdsmouth. */
    double thickness_in;         /**< "1-1/2 in, or the size's" : >0..24. True thickness. */
    double depth_in;             /**< optional : >0..24. True depth; needed for the stick and the drawing. */
    frame_size size;             /**< optional. Nominal size, instead of depth and thickness. */
    frame_jack_kind kind;        /**< hip. Which jacks. */
    frame_hand hand;             /**< left. The hand that the stick and the drawing show. */
    int32_t piece;               /**< 1 : 1..1000. Number of the jack that the stick and the drawing show. */
} frame_jacks_in;

/** What the jacks have in common. */
typedef struct frame_jacks_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : jacks_caution. Cautions. */
    uint64_t not_checked; /**< bits : jacks_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    int32_t count;               /**< Jacks on this side. */
    double difference_in;        /**< Common difference: what each jack is longer than the one before. */
    double run_difference_in;    /**< The same in run, level. */
    double first_length_in;      /**< Line length of the first jack, to the centre line of the hip or valley. */
    double plumb_cut_deg;        /**< Plumb cuts: the saw's mitre, 0 being square. */
    double cheek_deg;            /**< Cheek: the saw's bevel with the line plumb. */
    double top_edge_deg;         /**< The cheek across the top edge, counted from the edge: the handbooks' side cut. */
    double side_cut_in;          /**< The side cut on a square: this on one arm and 12 in on the other; the mark is along the 12. */
    double square_tongue_in;     /**< Another setting of the side cut: the tangent for 12 in of run on the tongue, the common rafter's length for 12 in of run on the blade; the mark is along the blade. */
    double square_blade_in;      /**< The common rafter's length for 12 in of run, on the blade of that setting. */
    double deduction_in;         /**< Level deduction at the hip (of valley jacks, at the valley). */
    double deduction_along_in;   /**< The same along the slope. */
    double long_point_more_in;   /**< What the long point of a cheek is beyond its centre line, along the slope. */
} frame_jacks_out;

/** A jack. Lengths are along the slope, on the centre line of its top edge. */
typedef struct frame_jacks_piece {
    uint32_t struct_size, struct_id;
    const char *name;      /**< Name of the piece; add the hand. */
    double distance_in;    /**< From the corner (or from the ridges' meeting) to its centre, level; of a cripple not given. */
    double run_in;         /**< Run to the centre lines, unshortened. */
    double line_length_in; /**< Line length, unshortened, without tail. */
    double length_in;      /**< From cut to cut: shortened, with the tail. */
    double long_point_in;  /**< From the long point of its end to that of the other, along the top edge. */
} frame_jacks_piece;

/** Finds the common difference of jacks, their cuts, and each one's length. FRAME_REQUIRED without between_in for a cripple's
 * stick or run_in for any other's; FRAME_IMPOSSIBLE when deductions leave nothing of a jack or a birdsmouth would cut it
 * through; FRAME_TOO_LARGE beyond 1000 jacks. A jack that would be shorter than nothing is left out. */
FRAME_ANSWER(jacks);
/** The jacks, shortest first; both hands have the same. */
FRAME_ANSWER_LIST(jacks, piece, pieces);
/** One jack as a stick of the timber room, running along x: of hip jacks the building line is at x = 0 and the plate's top at
 * z = 0; of the others the valley's centre line is at x = 0 and the roof plane there at z = 0. Free it with frame_stick_free. */
FRAME_VIEW(jacks, stick);
/** Draws one jack with its cuts and marks. Free the drawing with frame_drawing_free. */
FRAME_VIEW(jacks, drawing);

/** What a brace leaves unchecked. */
typedef int32_t frame_brace_not_checked;
enum frame_brace_not_checked_values {
    FRAME_BRACE_UNCHECKED_STRENGTH = 0 /**< "strength". Whether brace and joints hold their force. */
};
/** Cautions that go with a brace. */
typedef int32_t frame_brace_caution;
enum frame_brace_caution_values {
    FRAME_BRACE_CAUTION_SQUARE = 0 /**< "square". Post and beam must stand square to each other before the brace is measured. */
};

/** A brace between a post and a beam that stand square to each other, or a purlin's. */
typedef struct frame_brace_in {
    uint32_t struct_size, struct_id;
    double run_in;       /**< required : >0..1200. Along the beam, from the post's face to the outer toe of the brace. */
    double rise_in;      /**< required : >0..1200. Along the post, from the beam's face to the outer toe of the brace. */
    double depth_in;     /**< optional : >0..24. Depth of the brace, seen from the side; needed for its inner length, stick and drawing. */
    double thickness_in; /**< 1.5 : >0..24. Thickness of the brace. */
    const char *name;    /**< optional. Name of the piece, for its drawing. */
} frame_brace_in;

/** A brace: lengths and cuts. */
typedef struct frame_brace_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : brace_caution. Cautions. */
    uint64_t not_checked; /**< bits : brace_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double length_in;       /**< Brace measure: along its outer edge, toe to toe. */
    double inner_length_in; /**< Along its inner edge; not given without a depth. */
    double post_cut_deg;    /**< Cut at the post: the saw's mitre. */
    double beam_cut_deg;    /**< Cut at the beam: the saw's mitre. */
} frame_brace_out;

/** Finds length and cuts of a brace. FRAME_IMPOSSIBLE when it is too short for its depth. */
FRAME_CALCULATION(brace);
/** The brace as a stick: the post's face is at x = 0, the beam's under face at z = rise_in. Free it with frame_stick_free. */
FRAME_VIEW(brace, stick);
/** Draws the brace. Free the drawing with frame_drawing_free. */
FRAME_VIEW(brace, drawing);

/** Cautions that go with a regular polygon. */
typedef int32_t frame_polygon_plan_caution;
enum frame_polygon_plan_caution_values {
    FRAME_POLYGON_CAUTION_DIAGONALS = 0 /**< "diagonals". Check the layout by its diagonals before framing on it. */
};
/** What the plan of a regular polygon leaves unchecked. */
typedef int32_t frame_polygon_plan_not_checked;
enum frame_polygon_plan_not_checked_values {
    FRAME_POLYGON_UNCHECKED_AS_BUILT = 0 /**< "as_built". Whether what stands is as regular as the plan. */
};
/** A regular polygon, as of a bay or a turret: give one of its four sizes. */
typedef struct frame_polygon_plan_in {
    uint32_t struct_size, struct_id;
    int32_t sides;       /**< required : 3..100. Number of sides. */
    int32_t spare;
    double side_in;      /**< optional : >0..4800. Length of a side. */
    double run_in;       /**< optional : >0..4800. From the centre square to a side: the run of its common rafters. */
    double corner_run_in; /**< optional : >0..4800. From the centre to a corner: the run of its hips. */
    double width_in;     /**< optional : >0..9600. Across the flats: twice the run. */
} frame_polygon_plan_in;

/** The measures of a regular polygon. */
typedef struct frame_polygon_plan_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : polygon_plan_caution. Cautions. */
    uint64_t not_checked; /**< bits : polygon_plan_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double side_in;        /**< Length of a side. */
    double run_in;         /**< From the centre square to a side. */
    double corner_run_in;  /**< From the centre to a corner. */
    double width_in;       /**< Across the flats. */
    double corner_width_in; /**< Across the corners: twice the way from the centre to a corner. */
    double corner_deg;     /**< Angle of each corner. */
    double mitre_deg;      /**< Mitre of plates and fascias that meet at a corner: the saw's, 0 being square. */
    double mitre_on_12_in; /**< The mitre on a square: this against 12 in; also the tangent, half a side for 12 in of run. */
    double corner_run_per_foot_in; /**< Run of the hip for each foot of the common run. */
    double half_side_per_width; /**< Half a side, over the width across the flats. */
    double area_in2;       /**< Area. */
} frame_polygon_plan_out;
/** Finds the measures of a regular polygon. FRAME_REQUIRED unless one size is given, FRAME_CONFLICT when more are. */
FRAME_CALCULATION(polygon_plan);

/** Cautions that go with the place of a ridge. */
typedef int32_t frame_ridge_place_caution;
enum frame_ridge_place_caution_values {
    FRAME_RIDGE_PLACE_CAUTION_SLOPE = 0 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What the place of a ridge leaves unchecked. */
typedef int32_t frame_ridge_place_not_checked;
enum frame_ridge_place_not_checked_values {
    FRAME_RIDGE_PLACE_UNCHECKED_THRUST = 0 /**< "thrust". Whether unequal rafters push the ridge or the walls aside. */
};
/** Two roofs over one span that meet in a ridge: any slopes, plates of any height. */
typedef struct frame_ridge_place_in {
    uint32_t struct_size, struct_id;
    double span_in;    /**< required : >0..2400. Span, level, between the outsides of the plates' framing. */
    double slope_a;    /**< required : >0..2. Slope on side a, rise over run. */
    double slope_b;    /**< "the slope of side a" : >0..2. Slope on side b. */
    double plate_b_in; /**< 0 : -480..480. How much higher than side a's the plate of side b lies. */
} frame_ridge_place_in;
/** Where the ridge lies. */
typedef struct frame_ridge_place_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : ridge_place_caution. Cautions. */
    uint64_t not_checked; /**< bits : ridge_place_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double run_a_in;      /**< Run on side a. */
    double run_b_in;      /**< Run on side b. */
    double rise_a_in;     /**< Rise over side a's plate. */
    double rise_b_in;     /**< Rise over side b's plate. */
    double extra_run_in;  /**< What the run on side a is longer than that on side b. */
    double equivalent_span_a_in; /**< Twice the run on side a: the span of a level gable with the same rafters. */
} frame_ridge_place_out;
/** Finds where the ridge lies. FRAME_IMPOSSIBLE when one roof passes over the other's plate before they meet. */
FRAME_CALCULATION(ridge_place);

/** What an edge of the plan is to the roof. */
typedef int32_t frame_roof_kind;
enum frame_roof_kind_values {
    FRAME_ROOF_HIP = 1,      /**< "hip" | "eave" | "shed". A roof rises from it at its slope. */
    FRAME_ROOF_GABLE = 2,    /**< "gable". A gable stands on it, up to the roofs beside it; its slope is not looked at. */
    FRAME_ROOF_WALL = 3,     /**< "wall" | "abutting wall". A wall that is there already: roofs end at it; its slope is not looked at. */
    FRAME_ROOF_HALF_HIP = 4  /**< "half hip". A gable up to half_hip_in above its plate, from there a roof at its slope. */
};
/** What a face of a roof is. */
typedef int32_t frame_roof_face_kind;
enum frame_roof_face_kind_values {
    FRAME_FACE_ROOF = 1,       /**< "roof". A sloping roof. */
    FRAME_FACE_UPPER_ROOF = 2, /**< "upper roof". The part of it above a break of slope. */
    FRAME_FACE_GABLE = 3,      /**< "gable". Upright: a gable, or the gable under a half hip. */
    FRAME_FACE_WALL = 4,       /**< "wall". Upright: the wall that roofs end at. */
    FRAME_FACE_PLATE_WALL = 5, /**< "plate wall". Upright: the wall up to a higher plate. */
    FRAME_FACE_BREAK_WALL = 6  /**< "break wall". Upright: between roofs of unequal slopes on edges in line. */
};
/** What a line of a roof is. */
typedef int32_t frame_roof_line_kind;
enum frame_roof_line_kind_values {
    FRAME_LINE_RIDGE = 1,  /**< "ridge". Level, along the top of a roof. */
    FRAME_LINE_HIP = 2,    /**< "hip". Sloping; both roofs fall away from it. */
    FRAME_LINE_VALLEY = 3, /**< "valley". Both roofs fall towards it. */
    FRAME_LINE_EAVE = 4,   /**< "eave". Where a roof begins. */
    FRAME_LINE_RAKE = 5,   /**< "rake". Where a roof ends at a gable. */
    FRAME_LINE_BREAK = 6,  /**< "break". Where a roof changes its slope. */
    FRAME_LINE_WALL = 7,   /**< "wall line". Where a roof ends at a wall. */
    FRAME_LINE_SEAM = 8,   /**< "seam". Between roofs that lie in one plane. */
    FRAME_LINE_BASE = 9,   /**< "base". The foot of a gable or wall. */
    FRAME_LINE_CORNER = 10 /**< "corner". Between upright faces. */
};
/** Cautions that go with a roof. */
typedef int32_t frame_roof_caution;
enum frame_roof_caution_values {
    FRAME_ROOF_CAUTION_CLOCKWISE = 0, /**< "clockwise". The corners were given clockwise: edges keep their numbers and are read the other way. */
    FRAME_ROOF_CAUTION_SLOPE = 1, /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
    FRAME_ROOF_CAUTION_LOW = 2, /**< "low_slope". Under 3 in 12 the ridge must be designed as a beam (IRC R802). */
    FRAME_ROOF_CAUTION_BREAK_WALL = 3, /**< "break_wall". Edges in line have unequal slopes: an upright wall stands between their roofs. */
    FRAME_ROOF_CAUTION_VALLEY = 4, /**< "valley". Valleys gather water and snow: flashing, and snow that drifts and slides. */
    FRAME_ROOF_CAUTION_MEASURE = 5 /**< "measure". Measure the building again before cutting: the plan is not the plate. */
};
/** What a roof from a plan leaves unchecked. */
typedef int32_t frame_roof_not_checked;
enum frame_roof_not_checked_values {
    FRAME_ROOF_UNCHECKED_STRENGTH = 0, /**< "strength". Whether its members hold their loads. */
    FRAME_ROOF_UNCHECKED_OVERHANG = 1  /**< "overhang". Overhangs: areas and lengths are those inside the building lines. */
};

/** A corner of a plan. */
typedef struct frame_roof_corner {
    uint32_t struct_size, struct_id;
    double x_in; /**< required : -1e6..1e6. Its place along x. */
    double y_in; /**< required : -1e6..1e6. Its place along y. */
} frame_roof_corner;
/** Sets up a corner: every field not given. */
FRAME_ELEMENT(roof_corner);

/** A corner of a courtyard. */
typedef struct frame_roof_hole_corner {
    uint32_t struct_size, struct_id;
    int32_t hole; /**< required : 1..1000. Number of the courtyard; its corners stand together in the list. */
    int32_t spare;
    double x_in;  /**< required : -1e6..1e6. The corner's place along x. */
    double y_in;  /**< required : -1e6..1e6. The corner's place along y. */
} frame_roof_hole_corner;
/** Sets up a courtyard's corner: every field not given. */
FRAME_ELEMENT(roof_hole_corner);

/** A plan and the slopes of its roof. Edge i runs from corner i to corner i + 1, the last one back to the first; edges of
 * courtyards are numbered after those of the outline. Lists that say something for each edge have as many items as there
 * are edges, or one for all. */
typedef struct frame_roof_solve_in {
    uint32_t struct_size, struct_id;
    const frame_roof_corner *corners; /**< required. Corners of the building lines, in order; at least 3. */
    size_t corner_count;              /**< count : 1..20000. */
    const double *slopes;             /**< required : 0..2. Slope of each edge's roof, rise over run; more than 0 where a roof rises. */
    size_t slope_count;               /**< count : 1..20000. */
    const frame_roof_kind *kinds;     /**< optional. What each edge is; hip where nothing is said. */
    size_t kind_count;                /**< count : 0..20000. */
    const frame_roof_hole_corner *holes; /**< optional. Corners of courtyards, courtyard by courtyard. */
    size_t hole_count;                /**< count : 0..20000. */
    const double *plates_in;          /**< optional : 0..2400. Height of each edge's plate above the plane of the corners. */
    size_t plate_count;               /**< count : 0..20000. */
    const double *upper_slopes;       /**< optional : >0..2. Slope of each edge's roof above the break. */
    size_t upper_slope_count;         /**< count : 0..20000. */
    double break_in;                  /**< optional : >0..2400. Height above its plate at which each roof breaks to its upper slope. */
    double half_hip_in;               /**< optional : >0..2400. Height above the plate up to which a half hip is a gable. */
} frame_roof_solve_in;

/** The measures of a whole roof. */
typedef struct frame_roof_solve_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;        /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;       /**< bits : roof_caution. Cautions. */
    uint64_t not_checked;    /**< bits : roof_not_checked. What was not checked. */
    frame_known known;       /**< Geometry from what was given. */
    int32_t edges;           /**< Edges of the plan, courtyards among them. */
    double plan_area_in2;    /**< Area of the plan. */
    double surface_area_in2; /**< Area of the sloping roofs. */
    double upright_area_in2; /**< Area of gables and walls, from the plane of the corners, or the lowest plate, up. */
    double volume_in3;       /**< Volume between the plane of the corners and the roof. */
    double height_in;        /**< Greatest height of the roof above the plane of the corners. */
    double ridge_length_in;         /**< Length of all ridges. */
    double hip_length_in;           /**< True length of all hips. */
    double valley_length_in;        /**< True length of all valleys. */
    double eave_length_in;          /**< Length of all eaves. */
    double rake_length_in;          /**< True length of all rakes. */
    double break_length_in;         /**< Length of all breaks of slope. */
} frame_roof_solve_out;

/** A face of a roof. */
typedef struct frame_roof_solve_face {
    uint32_t struct_size, struct_id;
    int32_t edge;              /**< The edge of the plan it rises from; -1 for a break wall. */
    frame_roof_face_kind kind; /**< What it is. */
    double slope;              /**< Its slope, rise over run; not given when it is upright. */
    double toward_deg;         /**< The direction up the slope in plan, counterclockwise from x; of an upright face, into the building. */
    double area_in2;           /**< Its area. */
    double plan_area_in2;      /**< Its area in plan; 0 when it is upright. */
    double volume_in3;         /**< Volume under it, down to the plane of the corners. */
    double low_in;             /**< Its lowest height. */
    double high_in;            /**< Its greatest height. */
    uint32_t outline_first;    /**< range : outlines. Its corners, counterclockwise seen from outside. */
    uint32_t outline_count;    /**< count. */
} frame_roof_solve_face;

/** A line of a roof. It runs upward. */
typedef struct frame_roof_solve_line {
    uint32_t struct_size, struct_id;
    frame_roof_line_kind kind; /**< What it is. */
    int32_t from_point;        /**< The point it begins at, from 0; the lower one. */
    int32_t to_point;          /**< The point it ends at. */
    int32_t right_face;        /**< The face on the right going up it, from 0; -1 for none. */
    int32_t left_face;         /**< The face on the left; -1 for none. */
    int32_t spare;
    double length_in;          /**< True length. */
    double run_in;             /**< Length in plan. */
    double rise_in;            /**< Height from its lower to its upper end. */
    double plan_deg;           /**< Its direction in plan, counterclockwise from x; not given when it is upright. */
} frame_roof_solve_line;

/** A point where lines of a roof meet. The first ones are the corners of the plan, in order. */
typedef struct frame_roof_solve_point {
    uint32_t struct_size, struct_id;
    double x_in; /**< Its place along x. */
    double y_in; /**< Its place along y. */
    double z_in; /**< Its height above the plane of the corners. */
} frame_roof_solve_point;

/** A corner of a face's outline. */
typedef struct frame_roof_solve_outline {
    uint32_t struct_size, struct_id;
    int32_t point; /**< The point it lies at, from 0. */
    int32_t face;  /**< The face, from 0. */
    int32_t loop;  /**< Number of the loop in that face, from 0; a face has more than one where it lies in several parts, as above a break. */
    int32_t spare;
    double x_in;   /**< Its place along x. */
    double y_in;   /**< Its place along y. */
    double z_in;   /**< Its height above the plane of the corners. */
} frame_roof_solve_outline;

/** Finds the roof over a plan: every face, every line, true heights, areas and volume. All edges rise at once, each at its
 * slope; where two roofs meet, there is a line. Any simple plan with courtyards; each edge its own slope, kind and plate.
 * FRAME_IMPOSSIBLE when edges cross or touch (both are named), corners coincide or fold back, a courtyard lies outside, or
 * the roof does not close because nothing but gables and walls stand around a part of it; FRAME_CONFLICT when a list has
 * neither one item nor one for each edge; FRAME_REQUIRED without half_hip_in for a half hip. */
FRAME_ANSWER(roof_solve);
/** The faces, edge by edge; then upper roofs, plate walls and what stands on half hips; then break walls. */
FRAME_ANSWER_LIST(roof_solve, face, faces);
/** The lines. */
FRAME_ANSWER_LIST(roof_solve, line, lines);
/** The points. */
FRAME_ANSWER_LIST(roof_solve, point, points);
/** The outlines of the faces, face by face. */
FRAME_ANSWER_LIST(roof_solve, outline, outlines);
/** Draws the roof in plan: lines, faces with slope and area, building lines on tapes. Free the drawing with frame_drawing_free. */
FRAME_API frame_status frame_roof_solve_drawing(const frame_roof_solve *roof, frame_drawing **drawing);

/** What a member of a roof is. */
typedef int32_t frame_roof_member;
enum frame_roof_member_values {
    FRAME_MEMBER_RIDGE = 1,        /**< "ridge". Along a ridge. */
    FRAME_MEMBER_HIP = 2,          /**< "hip" | "hip rafter". Along a hip. */
    FRAME_MEMBER_VALLEY = 3,       /**< "valley" | "valley rafter". Along a valley. */
    FRAME_MEMBER_BREAK = 4,        /**< "break purlin". Along a break of slope. */
    FRAME_MEMBER_LEDGER = 5,       /**< "ledger". On a wall that a roof ends at. */
    FRAME_MEMBER_COMMON = 6,       /**< "common rafter". From the eave, or a break, up to a ridge, a ledger or a break. */
    FRAME_MEMBER_END_RAFTER = 7,   /**< "end rafter" | "gable rafter". The rafter at a gable, or beside a wall. */
    FRAME_MEMBER_HIP_JACK = 8,     /**< "hip jack". From the eave up to a hip. */
    FRAME_MEMBER_VALLEY_JACK = 9,  /**< "valley jack". From a valley up to the ridge. */
    FRAME_MEMBER_CRIPPLE_JACK = 10, /**< "cripple jack". From a valley up to a hip. */
    FRAME_MEMBER_RAFTER = 11,      /**< "rafter". Any other rafter. */
    FRAME_MEMBER_SUBFASCIA = 12,   /**< "sub-fascia". Along the tails. */
    FRAME_MEMBER_PLATE = 13,       /**< "plate". The upper plate of the wall, which carries the roof; the walls' own, here to prove the seats by. */
    FRAME_MEMBER_FLY_RAFTER = 14,  /**< "fly rafter" | "barge rafter". The outermost rafter of a gable overhang. */
    FRAME_MEMBER_LOOKOUT = 15,     /**< "lookout". Between the end rafter and the fly rafter. */
    FRAME_MEMBER_CEILING_JOIST = 16, /**< "ceiling joist" | "tie". Beside a pair of common rafters, from plate to plate; it ties them. */
    FRAME_MEMBER_BLOCK = 17        /**< "block". Between rafters, on the plate. */
};
/** Cautions that go with the members of a roof. */
typedef int32_t frame_roof_members_caution;
enum frame_roof_members_caution_values {
    FRAME_MEMBERS_CAUTION_FAULTS = 0, /**< "faults". Members share wood, or a cut bears on too little: see joints and overlaps. */
    FRAME_MEMBERS_CAUTION_NOTCH = 1, /**< "notch". A birdsmouth is deeper than a quarter of the rafter's depth (NDS 4.4.3, IRC R802.7.1.1). */
    FRAME_MEMBERS_CAUTION_BRACE = 2, /**< "brace". Ties and bracing stand before the roof is loaded; work with fall protection. */
    FRAME_MEMBERS_CAUTION_TRY_ONE = 3, /**< "try_one". Cut one of each kind, try it in place, then cut the gang. */
    FRAME_MEMBERS_CAUTION_MEASURE = 4, /**< "measure". Measure the building again before cutting: the plan is not the plate. */
    FRAME_MEMBERS_CAUTION_BEAM = 5, /**< "beam". Hips and valleys carry their jacks: they are beams, and their upper ends need support. */
    FRAME_MEMBERS_CAUTION_LOW = 6, /**< "low_slope". Under 3 in 12 the ridge must be designed as a beam (IRC R802). */
    FRAME_MEMBERS_CAUTION_LEFT_OUT = 7 /**< "left_out". Pieces of the layout were left out: too short, without a seat, or where another member stands. */
};
/** What the members of a roof leave unchecked. */
typedef int32_t frame_roof_members_not_checked;
enum frame_roof_members_not_checked_values {
    FRAME_MEMBERS_UNCHECKED_STRENGTH = 0, /**< "strength". Whether the members hold their loads. */
    FRAME_MEMBERS_UNCHECKED_THRUST = 1, /**< "thrust". Whether the thrust of the rafters is tied. */
    FRAME_MEMBERS_UNCHECKED_PROOF = 2 /**< "proof". Whether the pieces fit: the proof was not asked for. */
};

/** A plan, the slopes of its roof, and what it is framed of. Corners, slopes, kinds, courtyards and breaks are those of roof_solve; the
 * plates are level, all at one height, and the fascia is level all round: overhangs are in inverse ratio of the slopes. */
typedef struct frame_roof_members_in {
    uint32_t struct_size, struct_id;
    const frame_roof_corner *corners; /**< required. Corners of the building lines, in order; at least 3. */
    size_t corner_count;              /**< count : 1..2000. */
    const double *slopes;             /**< required : 0..2. Slope of each edge's roof, rise over run, or one for all. */
    size_t slope_count;               /**< count : 1..2000. */
    const frame_roof_kind *kinds;     /**< optional. What each edge is: hip, gable or wall; hip where nothing is said. */
    size_t kind_count;                /**< count : 0..2000. */
    const frame_roof_hole_corner *holes; /**< optional. Corners of courtyards, courtyard by courtyard. */
    size_t hole_count;                /**< count : 0..2000. */
    frame_size rafter_size;           /**< required. Nominal size of rafters and jacks. */
    frame_size ridge_size;            /**< "the least that covers what is cut against it". Nominal size of ridges and ledgers. */
    frame_size hip_size;              /**< "the least that covers the jacks' cuts". Nominal size of hips. */
    frame_size valley_size;           /**< "the least that covers the jacks' cuts". Nominal size of valleys. */
    frame_size fascia_size;           /**< "the rafters' size". Nominal size of the sub-fascia. */
    frame_bool prove;                 /**< yes. Whether every pair of neighbours is tried. */
    int32_t hip_plies;                /**< 1 : 1..4. Plies of each hip. */
    int32_t valley_plies;             /**< 1 : 1..4. Plies of each valley. */
    double spacing_in;                /**< 16 : >0..96. Spacing of rafters on centres. */
    double overhang_in;               /**< 0 : 0..120. Overhang of the first edge that a roof rises from, level, to the outer face of the tail cut. */
    double seat_in;                   /**< "3-1/2 in" : >0..24. Level seat of the rafters on that edge; the others follow from the height above plate, which is one all round. */
    double height_above_plate_in;     /**< optional : >0..48. Height above plate, plumb at the building line, instead of the seat. */
    double plate_width_in;            /**< 3.5 : >0..24. Width of the plates. */
    double stock_in;                  /**< 240 : 48..1200. Longest piece of ridge or sub-fascia; longer ones are spliced on a rafter. */
    double layout_x_in;               /**< optional : -1e6..1e6. A point that all layouts start from; the first corner where it is not given. */
    double layout_y_in;               /**< optional : -1e6..1e6. That point along y. */
    double rake_overhang_in;          /**< 0 : 0..48. Overhang at gables, level, to the outer face of the fly rafter. */
    frame_size joist_size;            /**< optional. Nominal size of ceiling joists; without it none are laid out. */
    frame_bool blocking;              /**< no. Whether blocks stand between the rafters on the plates. */
    const double *upper_slopes;       /**< optional : >0..2. Slope of each edge's roof above the break, or one for all: a gambrel, a mansard. */
    size_t upper_slope_count;         /**< count : 0..2000. */
    double break_in;                  /**< optional : >0..2400. Height above its plate at which each roof breaks to its upper slope. */
} frame_roof_members_in;

/** The figures of a framed roof. */
typedef struct frame_roof_members_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : roof_members_caution. Cautions. */
    uint64_t not_checked; /**< bits : roof_members_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    frame_bool fits;      /**< No pieces share wood, and every cut bears as its joint's rule asks; not given without the proof. */
    int32_t left_out;     /**< Pieces of the layout that were left out: too short, without a seat, or where another stands. */
    int32_t pairs;        /**< Pairs of neighbours that were tried. */
    double height_above_plate_in; /**< Height above plate, plumb at the building lines. */
    double fascia_height_in;      /**< Height of the roof plane at the tail cuts above the plates; negative below. */
    double ridge_height_in;       /**< Greatest height of the roof planes above the plates. */
    double board_feet;            /**< Lumber of all pieces but the plates, by nominal size and by the stock each is cut from. */
    double overlap_in3;           /**< The largest volume that two pieces share. */
    double least_share;           /**< Of all joints, the least contact over what its rule asks; 1 or more where all hold. */
} frame_roof_members_out;

/** A piece of a roof. Its axis runs along the middle of its top; from the eave up, or from the line's lower end to its upper. */
typedef struct frame_roof_members_piece {
    uint32_t struct_size, struct_id;
    frame_roof_member kind; /**< What it is. */
    int32_t face;           /**< The roof face it lies in, as roof_solve numbers them; -1 for one between faces. */
    int32_t line;           /**< The roof line it follows, as roof_solve numbers them; -1 for one that lies in a face. */
    int32_t edge;           /**< The edge of the plan it stands on or runs along; -1 for none. */
    frame_size size;        /**< Nominal size; of doubled pieces that of one ply. Not given for a plate. */
    int32_t plies;          /**< Plies. */
    frame_hand hand;        /**< The hand of a piece with a cheek at its upper end, or at its only one; not given without one. */
    int32_t gang;           /**< Number of its gang, from 1: pieces cut alike. */
    double thickness_in;    /**< True thickness. */
    double depth_in;        /**< True depth. */
    double length_in;       /**< Long point to long point: the stock it is cut from. */
    double top_length_in;   /**< Along the middle of its top edge. */
    double start_x_in;      /**< Where its axis starts: level with its lower long point. */
    double start_y_in;      /**< The start along y. */
    double start_z_in;      /**< The start's height above the plates. */
    double end_x_in;        /**< Where its axis ends: level with its upper long point. */
    double end_y_in;        /**< The end along y. */
    double end_z_in;        /**< The end's height above the plates. */
    double crown_x;         /**< Direction of its crown, square to the axis; length 1. */
    double crown_y;         /**< The crown's direction along y. */
    double crown_z;         /**< The crown's direction upward. */
    const char *name;       /**< Name of the piece. */
    const char *section;    /**< Name of its section ("2x10"). */
} frame_roof_members_piece;

/** A cut that must bear on another piece, and what it bears on. */
typedef struct frame_roof_members_joint {
    uint32_t struct_size, struct_id;
    int32_t piece;       /**< The piece, from 0. */
    int32_t saw;         /**< Number of the cut among the saw settings of its stick, from 0. */
    int32_t on;          /**< The piece it bears on most; -1 for none. */
    frame_bool holds;    /**< Whether it bears as its rule asks. */
    double area_in2;     /**< Area of the cut face. */
    double contact_in2;  /**< Area of it that bears on other pieces. */
    double required_in2; /**< Area that the joint's rule asks for. */
    const char *label;   /**< The cut. */
} frame_roof_members_joint;

/** Two pieces that share wood. */
typedef struct frame_roof_members_overlap {
    uint32_t struct_size, struct_id;
    int32_t first;      /**< A piece, from 0. */
    int32_t second;     /**< The other one. */
    double overlap_in3; /**< The volume they share. */
} frame_roof_members_overlap;

/** Pieces that are cut alike, with those of the opposite hand. */
typedef struct frame_roof_members_gang {
    uint32_t struct_size, struct_id;
    frame_roof_member kind; /**< What they are. */
    int32_t count;          /**< How many are cut as the first one is. */
    int32_t opposite;       /**< How many are cut opposite to it, left for right. */
    int32_t first;          /**< The first piece of the gang, from 0. */
    double length_in;       /**< Long point to long point. */
    const char *section;    /**< Name of the section. */
} frame_roof_members_gang;

/** Frames a roof: lays out every member on centres, places it in space, and cuts it where it meets the others. Layouts of all faces
 * are counted from one point, so that rafters of opposite faces stand in pairs. Where members meet, the rank decides: ridges before
 * hips, valleys and breaks, then the thicker, then the longer; a lower one is cut against the sides of a higher one, and a ridge that
 * ends at hips runs on until they bear whole; where no ridge is, all are mitred. End rafters go before those of the layout.
 * The proof finds the neighbours by a sweep: no two may share 0.001 cubic inch, and an end cut must bear on 95 % of its face, less
 * what stands proud of the other's top; a seat on 1-1/2 in of its length (IRC R802.6), a tail on 95 % of what it has in common with
 * the sub-fascia's height, the ends of hips and valleys on 85 %, on each other 75 %, as their slopes and depths differ. Refuses what roof_solve refuses; FRAME_OUTSIDE_SCOPE for half
 * hips and edges in line with unequal slopes; FRAME_IMPOSSIBLE when the birdsmouth would cut a rafter through or miss it, or an
 * overhang takes an eave away. */
FRAME_ANSWER(roof_members);
/** The pieces: plates, ridges, hips, valleys, ledgers, rafters with fly rafters and lookouts, ceiling joists, blocks, sub-fascia. */
FRAME_ANSWER_LIST(roof_members, piece, pieces);
/** Every cut that must bear on something. */
FRAME_ANSWER_LIST(roof_members, joint, joints);
/** Pairs of pieces that share 0.001 cubic inch or more; none when all fit. */
FRAME_ANSWER_LIST(roof_members, overlap, overlaps);
/** The gangs: pieces cut alike, in the order of their first pieces. */
FRAME_ANSWER_LIST(roof_members, gang, gangs);
/** Gives a piece of a roof as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_roof_members_stick(const frame_roof_members *members, size_t index, frame_stick **stick);
/** Draws the roof framing in plan, with the marks of its layout. Free the drawing with frame_drawing_free. */
FRAME_API frame_status frame_roof_members_drawing(const frame_roof_members *members, frame_drawing **drawing);
/** Draws the frame as it stands, hidden lines removed, seen isometrically from a side (turn_deg: counterclockwise from x, -360 to
 * 360). Free the drawing with frame_drawing_free. */
FRAME_API frame_status frame_roof_members_isometric(const frame_roof_members *members, double turn_deg, frame_drawing **drawing);

/** What the edge of a part of sheathing lies along. */
typedef int32_t frame_sheathing_edge;
enum frame_sheathing_edge_values {
    FRAME_SHEATHING_COURSE = 1, /**< "course". The next course, or the eave. */
    FRAME_SHEATHING_JOINT = 2,  /**< "joint". The next part of the course. */
    FRAME_SHEATHING_SKEW = 3    /**< "skew". A hip, a valley, a ridge, a rake, or a wall. */
};
/** Cautions that go with sheathing. */
typedef int32_t frame_roof_sheathing_caution;
enum frame_roof_sheathing_caution_values {
    FRAME_SHEATHING_CAUTION_NAILERS = 0, /**< "nailers". Joints without a member behind them need a nailer: see nailers. */
    FRAME_SHEATHING_CAUTION_EDGES = 1, /**< "edges". Edges between courses are held at the rafters only: see courses. */
    FRAME_SHEATHING_CAUTION_SUPPORTS = 2, /**< "supports". Parts lie on fewer than three members: their strip is weak and needs edge support. */
    FRAME_SHEATHING_CAUTION_FALL = 3 /**< "fall". Sheets slide: stops at the eave and fall protection before the first one is laid. */
};
/** What sheathing leaves unchecked. */
typedef int32_t frame_roof_sheathing_not_checked;
enum frame_roof_sheathing_not_checked_values {
    FRAME_SHEATHING_UNCHECKED_SPAN = 0, /**< "span". Whether the panels span the rafters under the loads: see code_panel_span. */
    FRAME_SHEATHING_UNCHECKED_NAILING = 1 /**< "nailing". Fasteners, and the diaphragm that the sheathing makes. */
};

/** The sheathing of a roof framed as roof_members frames it: the fields of that name mean the same. */
typedef struct frame_roof_sheathing_in {
    uint32_t struct_size, struct_id;
    const frame_roof_corner *corners; /**< required. Corners of the building lines, in order; at least 3. */
    size_t corner_count;              /**< count : 1..2000. */
    const double *slopes;             /**< required : 0..2. Slope of each edge's roof, rise over run, or one for all. */
    size_t slope_count;               /**< count : 1..2000. */
    const frame_roof_kind *kinds;     /**< optional. What each edge is: hip, gable or wall; hip where nothing is said. */
    size_t kind_count;                /**< count : 0..2000. */
    const frame_roof_hole_corner *holes; /**< optional. Corners of courtyards, courtyard by courtyard. */
    size_t hole_count;                /**< count : 0..2000. */
    frame_size rafter_size;           /**< required. Nominal size of rafters and jacks. */
    frame_size fascia_size;           /**< "the rafters' size". Nominal size of the sub-fascia, which the first course covers. */
    double spacing_in;                /**< 16 : >0..96. Spacing of rafters on centres. */
    double overhang_in;               /**< 0 : 0..120. Overhang of the first edge that a roof rises from, level, to the outer face of the tail cut. */
    double rake_overhang_in;          /**< 0 : 0..48. Overhang at gables, level. */
    double layout_x_in;               /**< optional : -1e6..1e6. A point that all layouts start from; the first corner where it is not given. */
    double layout_y_in;               /**< optional : -1e6..1e6. That point along y. */
    double sheet_length_in;           /**< 96 : 24..288. Length of a sheet, its strong way, along the eave. */
    double sheet_width_in;            /**< 48 : 12..96. Width of a sheet, up the slope. */
    double gap_in;                    /**< 0.125 : 0..1. Gap between sheets. */
    frame_bool edges_held;            /**< no. Whether clips, tongues or blocks hold the edges between rafters. */
    int32_t spare;
} frame_roof_sheathing_in;

/** The figures of the sheathing. */
typedef struct frame_roof_sheathing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : roof_sheathing_caution. Cautions. */
    uint64_t not_checked; /**< bits : roof_sheathing_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    int32_t whole;        /**< Parts that are whole sheets, or sheets cut to the layout. */
    double area_in2;        /**< Area of all faces, overhangs among them. */
    double parts_area_in2;  /**< Area of all parts: less by the gaps. */
    double unheld_in;       /**< Length of the edges between courses that nothing holds between rafters. */
    double nailers_in;      /**< Length of all nailers. */
} frame_roof_sheathing_out;

/** A part of the sheathing: a sheet or what is cut of one. Its corners lie in the face, along the eave and up the slope. */
typedef struct frame_roof_sheathing_part {
    uint32_t struct_size, struct_id;
    int32_t face;        /**< The roof face, as roof_solve numbers them. */
    int32_t course;      /**< Course, from 1 at the eave. */
    frame_bool whole;    /**< A whole rectangle of the course. */
    int32_t supports;    /**< Rafters it lies on. */
    double length_in;    /**< Greatest length, along the eave. */
    double width_in;     /**< Greatest width, up the slope. */
    double area_in2;     /**< Area. */
    uint32_t corner_first; /**< range : corners. Its corners, counterclockwise seen from above. */
    uint32_t corner_count; /**< count. */
} frame_roof_sheathing_part;

/** A corner of a part, and the edge from it to the next. */
typedef struct frame_roof_sheathing_corner {
    uint32_t struct_size, struct_id;
    frame_sheathing_edge edge; /**< What the edge from here lies along. */
    int32_t spare;
    double along_in;  /**< Its place in the part: along the eave from the part's end. */
    double up_in;     /**< Up the slope from the part's lower edge. */
    double angle_deg; /**< Angle of the edge from here to the next corner, from the courses: 90 for a square joint. */
    double bevel_deg; /**< Tilt of the saw from square to the face, so that the sheathing of two faces meets in the plane that halves them; 0 where no other face is. */
} frame_roof_sheathing_corner;

/** An edge between two courses of a face. */
typedef struct frame_roof_sheathing_course {
    uint32_t struct_size, struct_id;
    int32_t face;     /**< The roof face. */
    int32_t course;   /**< The lower of the two courses, from 1. */
    double length_in; /**< Length of the edge. */
    double unheld_in; /**< What of it lies between rafters with nothing that holds it. */
} frame_roof_sheathing_course;

/** A nailer: where a joint has no member behind it. */
typedef struct frame_roof_sheathing_nailer {
    uint32_t struct_size, struct_id;
    int32_t face;     /**< The roof face. */
    int32_t course;   /**< The course of the joint, from 1. */
    double length_in; /**< Its length, up the slope. */
    double from_x_in; /**< Its lower end in plan, along x. */
    double from_y_in; /**< The lower end along y. */
    double to_x_in;   /**< Its upper end in plan, along x. */
    double to_y_in;   /**< The upper end along y. */
} frame_roof_sheathing_nailer;

/** Lays out the sheathing of a roof: courses from the eave, joints on rafters and staggered by half a sheet from course to course, every
 * part with its outline and the angles of its edges; where a joint has no rafter behind it (near hips and valleys) a nailer is named,
 * and so is every edge between courses that nothing holds. Refuses what roof_members refuses; FRAME_IMPOSSIBLE when a sheet is
 * shorter than twice the spacing of the rafters. */
FRAME_ANSWER(roof_sheathing);
/** The parts, face by face, course by course. */
FRAME_ANSWER_LIST(roof_sheathing, part, parts);
/** The corners of the parts, part by part. */
FRAME_ANSWER_LIST(roof_sheathing, corner, corners);
/** The edges between courses. */
FRAME_ANSWER_LIST(roof_sheathing, course, courses);
/** The nailers. */
FRAME_ANSWER_LIST(roof_sheathing, nailer, nailers);

/** Which of the two roofs that meet. */
typedef int32_t frame_meeting_roof;
enum frame_meeting_roof_values {
    FRAME_MEETING_MAIN = 1, /**< "main" | "house". The main roof. */
    FRAME_MEETING_OTHER = 2 /**< "other" | "addition" | "dormer" | "porch". The roof that runs into it. */
};
/** Cautions that go with roofs that meet. */
typedef int32_t frame_roof_meet_caution;
enum frame_roof_meet_caution_values {
    FRAME_ROOF_MEET_CAUTION_APART = 0, /**< "apart". The roofs do not meet in a line: one lies wholly over the other, or they miss. */
    FRAME_ROOF_MEET_CAUTION_WALL = 1, /**< "wall". Upright faces of one roof stand in the other: a wall meets a slope there, which needs its flashing and a cricket where water is held. */
    FRAME_ROOF_MEET_CAUTION_SNOW = 2, /**< "snow". Snow drifts and slides where roofs of different heights meet: see roof_snow. */
    FRAME_ROOF_MEET_CAUTION_MEASURE = 3 /**< "measure". Measure both roofs again before cutting. */
};
/** What is left unchecked where roofs meet. */
typedef int32_t frame_roof_meet_not_checked;
enum frame_roof_meet_not_checked_values {
    FRAME_ROOF_MEET_UNCHECKED_STRENGTH = 0 /**< "strength". Whether the rafters below hold what now stands on them. */
};

/** Two roofs over plans that overlap: each as for roof_solve. */
typedef struct frame_roof_meet_in {
    uint32_t struct_size, struct_id;
    const frame_roof_corner *corners; /**< required. Corners of the main roof's building lines. */
    size_t corner_count;              /**< count : 1..2000. */
    const double *slopes;             /**< required : 0..2. Slope of each edge of it, or one for all. */
    size_t slope_count;               /**< count : 1..2000. */
    const frame_roof_kind *kinds;     /**< optional. What each edge of it is: hip, gable or wall. */
    size_t kind_count;                /**< count : 0..2000. */
    const frame_roof_corner *other_corners; /**< required. Corners of the other roof's building lines, in the same axes; it may reach as far under the main roof as you like. */
    size_t other_corner_count;              /**< count : 1..2000. */
    const double *other_slopes;             /**< required : 0..2. Slope of each edge of the other roof, or one for all. */
    size_t other_slope_count;               /**< count : 1..2000. */
    const frame_roof_kind *other_kinds;     /**< optional. What each edge of the other roof is: hip, gable or wall. */
    size_t other_kind_count;                /**< count : 0..2000. */
    double other_height_in;                 /**< required : -2400..2400. How much higher than the main roof's the other's plane of the corners lies. */
} frame_roof_meet_in;

/** The figures of two roofs that meet. */
typedef struct frame_roof_meet_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : roof_meet_caution. Cautions. */
    uint64_t not_checked; /**< bits : roof_meet_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double meeting_length_in;  /**< True length of all lines in which sloping roofs meet: the valleys on the main roof. */
    double main_area_in2;      /**< Area of the main roof. */
    double main_covered_in2;   /**< What of it the other roof covers. */
    double other_area_in2;     /**< Area of the other roof. */
    double other_buried_in2;   /**< What of that lies under the main roof, and is not built. */
    double seen_area_in2;      /**< Area of what is seen of both: what water runs over. */
} frame_roof_meet_out;

/** A line in which a face of each roof meet. */
typedef struct frame_roof_meet_line {
    uint32_t struct_size, struct_id;
    int32_t main_face;  /**< The face of the main roof, as roof_solve numbers them. */
    int32_t other_face; /**< The face of the other roof. */
    double from_x_in;   /**< Its lower end, along x. */
    double from_y_in;   /**< The lower end along y. */
    double from_z_in;   /**< Its height above the main roof's plane of the corners. */
    double to_x_in;     /**< Its upper end, along x. */
    double to_y_in;     /**< The upper end along y. */
    double to_z_in;     /**< Its height. */
    double length_in;   /**< True length. */
    double run_in;      /**< Length in plan. */
    double rise_in;     /**< Height from the lower end to the upper. */
    double main_deg;    /**< Angle on the main roof's face between the line and the eave. */
    double other_deg;   /**< Angle on the other roof's face between the line and the eave. */
} frame_roof_meet_line;

/** A face of either roof, and what is seen of it. */
typedef struct frame_roof_meet_face {
    uint32_t struct_size, struct_id;
    frame_meeting_roof roof; /**< Which roof. */
    int32_t face;            /**< The face, as roof_solve numbers them. */
    double area_in2;         /**< Its area. */
    double under_in2;        /**< What of it lies under the other roof. */
    double seen_in2;         /**< What remains. */
} frame_roof_meet_face;

/** Finds where two roofs meet: an addition against the house, a dormer on a face, a porch under an eave. Each is solved over its own plan;
 * of both, the higher is seen. Lines in which they meet, faces and areas covered, buried and seen. FRAME_IMPOSSIBLE as for
 * roof_solve, its field named for the roof at fault. */
FRAME_ANSWER(roof_meet);
/** The lines in which faces of both roofs meet. */
FRAME_ANSWER_LIST(roof_meet, line, lines);
/** The sloping faces, those of the main roof first. */
FRAME_ANSWER_LIST(roof_meet, face, faces);

/** How a gable stud is turned. */
typedef int32_t frame_stud_turned;
enum frame_stud_turned_values {
    FRAME_STUD_ON_EDGE = 1, /**< "on edge". Its narrow face in the wall's plane, as in any wall: the top is a bevel. */
    FRAME_STUD_FLAT = 2     /**< "flat". Its wide face in the wall's plane: the top is a mitre. */
};
/** Cautions that go with gable studs. */
typedef int32_t frame_gable_studs_caution;
enum frame_gable_studs_caution_values {
    FRAME_GABLE_STUDS_CAUTION_TALL = 0, /**< "tall". A gable wall over a tall space needs studs that run through to the roof, or a braced joint. */
    FRAME_GABLE_STUDS_CAUTION_SLOPE = 1 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What gable studs leave unchecked. */
typedef int32_t frame_gable_studs_not_checked;
enum frame_gable_studs_not_checked_values {
    FRAME_GABLE_STUDS_UNCHECKED_WIND = 0 /**< "wind". Whether they hold the wind on the gable: see column_check. */
};
/** The studs of a gable, from the plate up to the end rafters. */
typedef struct frame_gable_studs_in {
    uint32_t struct_size, struct_id;
    double span_in;    /**< required : >0..2400. Width of the gable, level, between the outsides of the walls. */
    double slope;      /**< required : >0..2. Slope of both roofs, rise over run. */
    double spacing_in; /**< 16 : >0..96. Spacing on centres. */
    double first_in;   /**< "the spacing" : >0..2400. From the outside of the wall to the centre of the first stud. */
    double under_in;   /**< 0 : -48..480. Height above the plate, at the outside of the wall, of the plane the studs reach: the rafters' under side. */
    double thickness_in; /**< 1.5 : >0..24. Thickness of the studs. */
    double depth_in;   /**< 3.5 : >0..24. Depth of the studs. */
    frame_stud_turned turned; /**< on edge. How they are turned. */
    int32_t spare;
} frame_gable_studs_in;
/** What gable studs have in common. */
typedef struct frame_gable_studs_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : gable_studs_caution. Cautions. */
    uint64_t not_checked; /**< bits : gable_studs_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t count;        /**< Studs. */
    double difference_in; /**< Common difference: what each is longer than the one before. */
    double point_in;      /**< What the long point of a top is above its short point. */
    double mitre_deg;     /**< The saw's mitre for the tops; 0 on edge. */
    double bevel_deg;     /**< The saw's bevel for the tops; 0 flat. */
} frame_gable_studs_out;
/** A gable stud. */
typedef struct frame_gable_studs_piece {
    uint32_t struct_size, struct_id;
    double distance_in;    /**< From the outside of the wall to its centre. */
    double long_point_in;  /**< From the plate to the long point of its top. */
    double short_point_in; /**< From the plate to the short point. */
    frame_bool peak;       /**< It stands under the ridge, its top cut on both sides. */
    frame_hand hand;       /**< The side its top falls to, seen from the first stud's wall looking along the gable's inside: left on the first half. Not given for one under the ridge. */
} frame_gable_studs_piece;
/** Finds the studs of a gable: lengths, common difference, and the cut of their tops. A stud that would be shorter than nothing is left out. */
FRAME_ANSWER(gable_studs);
/** The studs, from the first wall to the other. */
FRAME_ANSWER_LIST(gable_studs, piece, pieces);
/** Gives a stud as a stick, by its place in the list: upright, the gable along x. Free it with frame_stick_free. */
FRAME_API frame_status frame_gable_studs_stick(const frame_gable_studs *studs, size_t index, frame_stick **stick);

/** Cautions that go with a collar tie. */
typedef int32_t frame_collar_tie_caution;
enum frame_collar_tie_caution_values {
    FRAME_COLLAR_TIE_CAUTION_NO_TIE = 0, /**< "no_tie". In the upper third it holds the ridge together against uplift, and never counts as a tie against thrust. */
    FRAME_COLLAR_TIE_CAUTION_RAISED = 1, /**< "raised". A tie above the plate bends the rafters and carries more thrust than one at the plate: thrust_factor. */
    FRAME_COLLAR_TIE_CAUTION_SLOPE = 2 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a collar tie leaves unchecked. */
typedef int32_t frame_collar_tie_not_checked;
enum frame_collar_tie_not_checked_values {
    FRAME_COLLAR_TIE_UNCHECKED_STRENGTH = 0 /**< "strength". Whether tie, nails and rafters hold: see code_heel_nails. */
};
/** A level tie between a pair of rafters, nailed to their sides, its ends cut to the slope. */
typedef struct frame_collar_tie_in {
    uint32_t struct_size, struct_id;
    double run_in;      /**< required : >0..1200. Run of the rafters, from the outside of the plate's framing to the centre of the ridge. */
    double slope;       /**< required : >0..2. Slope of the roof, rise over run. */
    double height_in;   /**< required : 0..1200. Height of the tie's lower edge above the plates. */
    double depth_in;    /**< required : >0..24. Depth of the tie. */
    double thickness_in; /**< 1.5 : >0..24. Thickness of the tie. */
    double height_above_plate_in; /**< 0 : 0..48. Height above plate of the roof plane at the building line. */
    const char *name;   /**< optional. Name of the piece, for its drawing. */
} frame_collar_tie_in;
/** A collar tie: lengths, cut, and how it bears thrust. */
typedef struct frame_collar_tie_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : collar_tie_caution. Cautions. */
    uint64_t not_checked; /**< bits : collar_tie_not_checked. What was not checked. */
    frame_known known;    /**< The factor for thrust is recalled; the rest is geometry. */
    int32_t spare;
    double length_in;     /**< Along its lower edge, long point to long point. */
    double top_length_in; /**< Along its upper edge. */
    double mitre_deg;     /**< The saw's mitre for both ends: from square. */
    double height_share;  /**< Height of its lower edge over that of the ridge, both above the plates. */
    double thrust_factor; /**< What the thrust at the plate is multiplied by in a tie so high: 1 / (1 - share). Not given in the upper third. */
} frame_collar_tie_out;
/** Finds lengths and cuts of a collar tie. FRAME_IMPOSSIBLE when it would stand above the roof, or be cut to nothing. */
FRAME_CALCULATION(collar_tie);
/** The tie as a stick: level along x, the ridge at x = run_in, the plates' top at z = 0. Free it with frame_stick_free. */
FRAME_VIEW(collar_tie, stick);
/** Draws the tie. Free the drawing with frame_drawing_free. */
FRAME_VIEW(collar_tie, drawing);

/** How a fascia stands. */
typedef int32_t frame_fascia_stands;
enum frame_fascia_stands_values {
    FRAME_FASCIA_PLUMB = 1, /**< "plumb". Upright, on plumb-cut tails. */
    FRAME_FASCIA_SQUARE = 2 /**< "square to the roof" | "square". On tails cut square. */
};
/** Cautions that go with the mitre of a fascia. */
typedef int32_t frame_fascia_mitre_caution;
enum frame_fascia_mitre_caution_values {
    FRAME_FASCIA_MITRE_CAUTION_COMPOUND = 0, /**< "compound". Mitre and bevel at once: guard, support the piece, try a test cut. */
    FRAME_FASCIA_MITRE_CAUTION_PAST_TILT = 1 /**< "past_tilt". A bevel over the 45 degrees many saws tilt to: cut another way. */
};
/** What the mitre of a fascia leaves unchecked. */
typedef int32_t frame_fascia_mitre_not_checked;
enum frame_fascia_mitre_not_checked_values {
    FRAME_FASCIA_MITRE_UNCHECKED_AS_BUILT = 0 /**< "as_built". Whether the tails stand in line and the corner is what was given. */
};
/** Where two fascias of roofs of one slope meet at a corner. */
typedef struct frame_fascia_mitre_in {
    uint32_t struct_size, struct_id;
    double slope;        /**< required : >0..2. Slope of both roofs, rise over run. */
    double corner_deg;   /**< 90 : >0..<180. Angle of the corner of the walls, inside the building; of an inner corner, outside. */
    double depth_in;     /**< 5.5 : >0..24. Depth of the board, for its stick. */
    double thickness_in; /**< 1.5 : >0..24. Thickness of the board, for its stick. */
    frame_fascia_stands stands; /**< plumb. How the board stands. */
    int32_t spare;
} frame_fascia_mitre_in;
/** The saw's setting for a fascia's corner. */
typedef struct frame_fascia_mitre_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fascia_mitre_caution. Cautions. */
    uint64_t not_checked; /**< bits : fascia_mitre_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double tilt_deg;      /**< How far the board leans from plumb. */
    double mitre_deg;     /**< The saw's mitre, on the board's face, from square. */
    double bevel_deg;     /**< The saw's bevel. */
} frame_fascia_mitre_out;
/** Finds mitre and bevel of fascias that meet at a corner. */
FRAME_CALCULATION(fascia_mitre);
/** The end of such a board as a stick, along x, its corner at x = 0. Free it with frame_stick_free. */
FRAME_VIEW(fascia_mitre, stick);

/** What became of a piece. */
typedef int32_t frame_as_found;
enum frame_as_found_values {
    FRAME_AS_FOUND_SAME = 1,    /**< "same". Cut as planned, to 1/64 in. */
    FRAME_AS_FOUND_CHANGED = 2, /**< "changed". The same piece, cut otherwise. */
    FRAME_AS_FOUND_NEW = 3,     /**< "new". Only what was found needs it. */
    FRAME_AS_FOUND_GONE = 4     /**< "gone". Only the plan had it. */
};
/** Cautions that go with a roof as found. */
typedef int32_t frame_roof_as_found_caution;
enum frame_roof_as_found_caution_values {
    FRAME_ROOF_AS_FOUND_CAUTION_CHANGED = 0, /**< "changed". Pieces are cut otherwise than planned: do not cut them by the plan. */
    FRAME_ROOF_AS_FOUND_CAUTION_NUMBER = 1, /**< "number". Other pieces are needed than planned: buy and lay out by what was found. */
    FRAME_ROOF_AS_FOUND_CAUTION_FAULTS = 2, /**< "faults". The roof as found does not close everywhere: frame it by roof_members and see its joints. */
    FRAME_ROOF_AS_FOUND_CAUTION_MEASURE = 3 /**< "measure". Readings that disagree are never averaged: see readings. */
};
/** What a roof as found leaves unchecked. */
typedef int32_t frame_roof_as_found_not_checked;
enum frame_roof_as_found_not_checked_values {
    FRAME_ROOF_AS_FOUND_UNCHECKED_LEVEL = 0 /**< "level". Whether the plates are level: see levels. */
};
/** A planned roof and the corners that were found; the fields of roof_members of the same name mean the same. */
typedef struct frame_roof_as_found_in {
    uint32_t struct_size, struct_id;
    const frame_roof_corner *corners; /**< required. The corners as planned, in order; at least 3. */
    size_t corner_count;              /**< count : 1..2000. */
    const frame_roof_corner *found;   /**< required. The same corners as found, in the same order: from survey, for one. */
    size_t found_count;               /**< count : 1..2000. */
    const double *slopes;             /**< required : 0..2. Slope of each edge's roof, rise over run, or one for all. */
    size_t slope_count;               /**< count : 1..2000. */
    const frame_roof_kind *kinds;     /**< optional. What each edge is: hip, gable or wall; hip where nothing is said. */
    size_t kind_count;                /**< count : 0..2000. */
    frame_size rafter_size;           /**< required. Nominal size of rafters and jacks. */
    int32_t spare;
    double spacing_in;                /**< 16 : >0..96. Spacing of rafters on centres. */
    double overhang_in;               /**< 0 : 0..120. Overhang of the first edge that a roof rises from, level. */
    double seat_in;                   /**< "3-1/2 in" : >0..24. Level seat of the rafters on that edge. */
} frame_roof_as_found_in;
/** How a roof as found differs from the planned one. */
typedef struct frame_roof_as_found_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : roof_as_found_caution. Cautions. */
    uint64_t not_checked; /**< bits : roof_as_found_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    int32_t changed;      /**< Pieces that are cut otherwise. */
    int32_t added;        /**< Pieces that only what was found needs. */
    int32_t gone;         /**< Pieces that only the plan had. */
    double largest_in;    /**< The largest difference of length. */
    double moved_in;      /**< The farthest that a corner was found from where it was planned. */
    double ridge_change_in; /**< What the highest ridge lies higher than planned; negative lower. */
} frame_roof_as_found_out;
/** A piece, as planned and as found. */
typedef struct frame_roof_as_found_piece {
    uint32_t struct_size, struct_id;
    frame_roof_member kind;   /**< What it is. */
    frame_as_found became;    /**< What became of it. */
    int32_t planned;          /**< Its place in the list of roof_members for the plan; -1 for none. */
    int32_t found;            /**< Its place in that list for the corners found; -1 for none. */
    double planned_length_in; /**< Long point to long point as planned; not given for a new one. */
    double found_length_in;   /**< The same as found; not given for one that is gone. */
    double difference_in;     /**< What it is longer than planned; not given where there is nothing to compare. */
    const char *name;         /**< Its name as found; of one that is gone as planned. */
} frame_roof_as_found_piece;
/** Frames a roof over the corners as planned and again over those found, and tells piece by piece what changed. Refuses what roof_members
 * refuses; FRAME_CONFLICT when there are not as many corners found as planned. */
FRAME_ANSWER(roof_as_found);
/** The pieces that roof_members lists for what was found, then those that are gone. */
FRAME_ANSWER_LIST(roof_as_found, piece, pieces);

/** Cautions that go with a valley laid over sheathing. */
typedef int32_t frame_overlay_valley_caution;
enum frame_overlay_valley_caution_values {
    FRAME_OVERLAY_VALLEY_CAUTION_LOAD = 0, /**< "load". The rafters below carry the addition's roof from now on: sleepers are nailed through into each of them. */
    FRAME_OVERLAY_VALLEY_CAUTION_STRIP = 1, /**< "strip". Roofing comes off down to the sheathing under the sleepers; leave openings for air between the attics. */
    FRAME_OVERLAY_VALLEY_CAUTION_COMPOUND = 2, /**< "compound". The jacks' seats are compound cuts: guard, support the piece, make a test cut. */
    FRAME_OVERLAY_VALLEY_CAUTION_PAST_TILT = 3, /**< "past_tilt". The bevel is past the 45 degrees most saws tilt to: cut it another way. */
    FRAME_OVERLAY_VALLEY_CAUTION_SLOPE = 4 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a valley laid over sheathing leaves unchecked. */
typedef int32_t frame_overlay_valley_not_checked;
enum frame_overlay_valley_not_checked_values {
    FRAME_OVERLAY_VALLEY_UNCHECKED_STRENGTH = 0 /**< "strength". Whether the roof below holds what now stands on it. */
};
/** A gable addition laid over a sheathed roof: its ridge runs square to the main eave, its jacks stand on sleepers on the sheathing. */
typedef struct frame_overlay_valley_in {
    uint32_t struct_size, struct_id;
    double slope_main;   /**< required : >0..2. Slope of the roof below, rise over run. */
    double slope;        /**< required : >0..2. Slope of the addition's roof. */
    double run_in;       /**< required : >0..1200. The addition's run: half its width, to the outside of its plates' framing. */
    double spacing_in;   /**< 16 : >0..96. Spacing of the jacks along the ridge. */
    double sleeper_thickness_in; /**< 1.5 : 0..6. Thickness of the sleepers, flat on the sheathing. */
    double ridge_thickness_in;   /**< 0 : 0..24. Thickness of the addition's ridge; half of it is taken off each jack, level. */
    double first_in;     /**< "the spacing" : >0..1200. From where the ridge dies into the roof, along it, to the first jack. */
} frame_overlay_valley_in;
/** A valley laid over sheathing. Heights are those of the jacks' top lines above the sheathing, so that the roof planes meet on top of it. */
typedef struct frame_overlay_valley_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : overlay_valley_caution. Cautions. */
    uint64_t not_checked; /**< bits : overlay_valley_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double reach_in;          /**< How far the ridge reaches over the roof, level, from the line of the addition's eaves to where it dies. */
    double valley_length_in;  /**< The valley, on the sheathing, from an eave of the addition to where the ridge dies. */
    double valley_deg;        /**< Angle on the sheathing between the valley and the main eave: for snapping its line. */
    double difference_in;     /**< Common difference of the jacks, along their slope. */
    double first_length_in;   /**< Line length of the first jack, from the valley's line to the ridge's centre. */
    double sleeper_drop_in;   /**< Plumb height of the sleeper's top above the sheathing. */
    double seat_deduction_in; /**< Level deduction at a jack's foot for the sleeper. */
    double seat_deduction_along_in; /**< The same along the slope. */
    double ridge_deduction_along_in; /**< Half the ridge, along the slope. */
    double seat_mitre_deg;    /**< The saw's mitre for a jack's seat on the sleeper: its level cut. */
    double seat_bevel_deg;    /**< The saw's bevel for that seat: the slope of the roof below. */
    double plumb_cut_deg;     /**< Plumb cuts of the jacks: the saw's mitre. */
} frame_overlay_valley_out;
/** Finds lines, lengths and cuts of a valley laid over existing sheathing. FRAME_IMPOSSIBLE when the sleeper takes a whole jack. */
FRAME_CALCULATION(overlay_valley);
/** The first jack as a stick: along x from its foot up to the ridge, the valley's line at x = 0, the sheathing there at z = 0, the main eave to
 * the right (-y). Its depth is 5-1/2 in, its thickness 1-1/2. Free it with frame_stick_free. */
FRAME_VIEW(overlay_valley, stick);

FRAME_END

#endif
