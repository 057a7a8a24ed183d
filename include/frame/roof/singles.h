/** @file roof/singles.h
 * Single members and small plans: braces, polygons, ridges over unequal walls, gable studs, collar ties, mitres, valleys laid over.
 */
#ifndef FRAME_ROOF_SINGLES_H
#define FRAME_ROOF_SINGLES_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/timber.h>
#include <frame/roof/rafters.h>

FRAME_BEGIN

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
