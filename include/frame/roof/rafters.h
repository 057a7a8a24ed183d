/** @file roof/rafters.h
 * Common rafters, hips, valleys and their jacks, one at a time.
 */
#ifndef FRAME_ROOF_RAFTERS_H
#define FRAME_ROOF_RAFTERS_H

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
    double ridge_seat_in;        /**< optional : >0..24. Over a ridge beam, instead of against a ridge: level seat on its top, half its width where rafters meet over its centre. */
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
    double beam_top_in;           /**< Height of a ridge beam's top above the plate's; not given without a seat on one. */
    double ridge_heel_in;         /**< Height of the heel cut at the ridge beam, plumb; not given without one. */
    double ridge_notch_depth_in;  /**< Depth of the birdsmouth over the ridge beam, square to the edge; not given without one. */
} frame_rafter_out;

/** Finds every length, cut and mark of a common rafter. Lengths along the slope are of its top edge, which lies in the roof
 * plane, and equal those of the line through the birdsmouth. FRAME_REQUIRED without depth_in and size; FRAME_CONFLICT when
 * both are given and differ, when seat and height above plate are both given, or more than one of ridge, ledger and seat on a ridge beam; FRAME_IMPOSSIBLE when the
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

FRAME_END

#endif
