/** @file roof/shapes.h
 * Gambrels, dormers, gable overhangs, and stepping off with a square.
 */
#ifndef FRAME_ROOF_SHAPES_H
#define FRAME_ROOF_SHAPES_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/timber.h>
#include <frame/roof/rafters.h>

FRAME_BEGIN

/** How the two rafters of a gambrel meet. */
typedef int32_t frame_gambrel_joint;
enum frame_gambrel_joint_values {
    FRAME_GAMBREL_JOINT_MITRE = 1, /**< "mitre" | "miter". End on end, both cut alike along the plane that halves the angle, with gussets. */
    FRAME_GAMBREL_JOINT_PURLIN = 2 /**< "purlin" | "plumb". Both cut plumb against a purlin that runs along the knee. */
};
/** Which rafter of a gambrel is shown. */
typedef int32_t frame_gambrel_piece;
enum frame_gambrel_piece_values {
    FRAME_GAMBREL_LOWER = 1, /**< "lower". The steep one, from the plate to the knee. */
    FRAME_GAMBREL_UPPER = 2 /**< "upper". From the knee to the ridge. */
};
/** Cautions that go with a gambrel. */
typedef int32_t frame_gambrel_caution;
enum frame_gambrel_caution_values {
    FRAME_GAMBREL_CAUTION_KNEE = 0, /**< "knee". The knee is a joint that opens: gussets on both sides, or a purlin with posts, by calculation. */
    FRAME_GAMBREL_CAUTION_STEEP = 1, /**< "steep". The upper slope is not the flatter one: this is no gambrel. */
    FRAME_GAMBREL_CAUTION_SLOPE = 2 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a gambrel leaves unchecked. */
typedef int32_t frame_gambrel_not_checked;
enum frame_gambrel_not_checked_values {
    FRAME_GAMBREL_UNCHECKED_STRENGTH = 0 /**< "strength". Whether rafters, knees and ties hold their loads and the thrust. */
};
/** A gambrel: two rafters on each side, a steep lower and a flatter upper one, that meet at the knee. */
typedef struct frame_gambrel_in {
    uint32_t struct_size, struct_id;
    double run_in; /**< required : >0..1200. Run, level, from the outside of the plate's framing to the centre of the ridge. */
    double lower_slope; /**< required : >0..6. Slope of the lower rafters, rise over run. */
    double upper_slope; /**< required : >0..2. Slope of the upper rafters. */
    double knee_run_in; /**< "such that both rafters are equally long" : >0..1200. Level, from the building line to the knee. */
    double height_above_plate_in; /**< 0 : 0..48. Height of the lower roof plane above the plate, plumb at the building line; the lower rafter's foot is cut plumb so high, then level. */
    double ridge_thickness_in; /**< 0 : 0..24. Thickness of the ridge; half of it is taken off, level. */
    double purlin_thickness_in; /**< 0 : 0..24. Thickness of the purlin at the knee; half of it is taken off each rafter, level. */
    double depth_in; /**< 5.5 : >0..24. True depth of both rafters. */
    double thickness_in; /**< 1.5 : >0..24. True thickness of both rafters. */
    frame_gambrel_joint joint; /**< mitre. How the rafters meet. */
    frame_gambrel_piece piece; /**< lower. Which rafter the stick and the drawing show. */
} frame_gambrel_in;
/** What a gambrel measures. */
typedef struct frame_gambrel_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : gambrel_caution. Cautions. */
    uint64_t not_checked; /**< bits : gambrel_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double knee_run_in; /**< Level, from the building line to the knee. */
    double knee_rise_in; /**< Rise of the lower roof plane from the building line to the knee. */
    double ridge_rise_in; /**< Rise of both to the centre of the ridge. */
    double lower_length_in; /**< Lower rafter: along its top edge, from the building line to the knee's cut. */
    double upper_length_in; /**< Upper rafter: along its top edge, from the knee's cut to the ridge's. */
    double lower_line_length_in; /**< Lower rafter: line length to the knee, unshortened. */
    double upper_line_length_in; /**< Upper rafter: line length from the knee to the centre of the ridge, unshortened. */
    double lower_plumb_cut_deg; /**< Plumb cuts of the lower rafter: the saw's mitre, 0 being square. */
    double lower_level_cut_deg; /**< Level cut of its foot: from square. */
    double upper_plumb_cut_deg; /**< Plumb cuts of the upper rafter. */
    double knee_cut_lower_deg; /**< The lower rafter's cut at the knee: the saw's mitre. */
    double knee_cut_upper_deg; /**< The upper rafter's. */
    double planes_deg; /**< Angle between the two roof planes at the knee, 180 being flat. */
    double seat_in; /**< Length of the level cut at the foot. */
    double lower_tongue_in; /**< Lower rafter: the rise for 12 in of run, held on the square's tongue. */
    double lower_odd_step_in; /**< Lower rafter: the odd step, on the blade. */
    double upper_tongue_in; /**< Upper rafter: on the tongue. */
    double upper_odd_step_in; /**< Upper rafter: the odd step, on the blade. */
    int32_t lower_full_steps; /**< Lower rafter: whole steps, from the building line to the knee's cut. */
    int32_t upper_full_steps; /**< Upper rafter: whole steps, from the knee's cut to the ridge's. */
} frame_gambrel_out;
/** Finds lengths and cuts of a gambrel's rafters. FRAME_IMPOSSIBLE when the knee lies beyond the ridge, deductions take a whole rafter, or cuts would cross. */
FRAME_CALCULATION(gambrel);
/** One of the rafters as a stick: the building line at x = 0, the plate's top at z = 0, the ridge towards +x. Free it with frame_stick_free. */
FRAME_VIEW(gambrel, stick);
/** Draws one of the rafters with its cuts and marks. Free the drawing with frame_drawing_free. */
FRAME_VIEW(gambrel, drawing);

/** What roof a dormer has. */
typedef int32_t frame_dormer_kind;
enum frame_dormer_kind_values {
    FRAME_DORMER_GABLE = 1, /**< "gable". A ridge square to the main eave, rafters down to the cheeks. */
    FRAME_DORMER_SHED = 2 /**< "shed". Rafters from the front wall back to the main roof, flatter than it. */
};
/** Cautions that go with a dormer. */
typedef int32_t frame_dormer_caution;
enum frame_dormer_caution_values {
    FRAME_DORMER_CAUTION_OPENING = 0, /**< "opening". The main rafters that are cut hang in headers between doubled rafters, which carry the dormer: by calculation, before the roof is opened. */
    FRAME_DORMER_CAUTION_FLASHING = 1, /**< "flashing". Cheeks and valleys need flashing from the main roof up the walls. */
    FRAME_DORMER_CAUTION_FLAT_CUT = 2, /**< "flat_cut". The shed rafter's head is past the 60 degrees a saw's base turns to: mark it from the roof and cut it along the line. */
    FRAME_DORMER_CAUTION_SLOPE = 3 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a dormer leaves unchecked. */
typedef int32_t frame_dormer_not_checked;
enum frame_dormer_not_checked_values {
    FRAME_DORMER_UNCHECKED_STRENGTH = 0, /**< "strength". Whether rafters, headers and doubled rafters hold their loads. */
    FRAME_DORMER_UNCHECKED_SNOW = 1 /**< "snow". Snow that drifts behind the dormer and slides in its valleys. */
};
/** A dormer on a roof: a front wall, two cheek walls that die into the roof, and its own roof, gable or shed. Heights are of roof planes and of the top of its plates. */
typedef struct frame_dormer_in {
    uint32_t struct_size, struct_id;
    double slope_main; /**< required : >0..2. Slope of the roof it stands on, rise over run. */
    double slope; /**< required : >0..2. Slope of the dormer's own roof. */
    double width_in; /**< required : >0..1200. Width, level, between the outsides of the cheeks' framing. */
    double wall_height_in; /**< required : >0..480. Height of the top of its plates above the main roof plane, plumb at the front wall's outside. */
    double spacing_in; /**< 16 : >0..96. Spacing of studs and rafters on centres. */
    double rafter_depth_in; /**< 5.5 : >0..24. True depth of the dormer's rafters. */
    double rafter_seat_in; /**< 3.5 : >0..24. Length of their seat. */
    double overhang_in; /**< 0 : 0..120. Overhang of their tails, level. */
    double ridge_thickness_in; /**< 0 : 0..24. Thickness of a gable dormer's ridge. */
    double plates_in; /**< 3 : 0..24. Thickness of the cheeks' top plates together. */
    double sole_thickness_in; /**< 1.5 : 0..24. Thickness of the sole that lies on the main roof. */
    double thickness_in; /**< 1.5 : >0..24. True thickness of studs and rafters. */
    double depth_in; /**< 3.5 : >0..24. True depth of the studs. */
    frame_dormer_kind kind; /**< gable. What roof it has. */
    int32_t spare;
} frame_dormer_in;
/** What a dormer measures. */
typedef struct frame_dormer_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : dormer_caution. Cautions. */
    uint64_t not_checked; /**< bits : dormer_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double height_above_plate_in; /**< Height above plate of its rafters: from the seat to its roof plane. */
    double cheek_plate_in; /**< Length of a cheek's top plate, level, from the front wall's outside to where its top dies into the main roof. */
    double cheek_sole_in; /**< Length of a cheek's foot along the main roof, in the same way. */
    double reach_in; /**< How far its roof reaches over the main roof, level, from the front wall's outside: a gable's ridge, a shed's rafters. */
    double rise_in; /**< Rise of its roof plane: over half the width of a gable, over the reach of a shed. */
    double rafter_length_in; /**< Its rafter along the top edge, tail to head; of a gable shortened for the ridge. */
    double rafter_plumb_cut_deg; /**< Plumb cuts of its rafters: the saw's mitre. */
    double head_cut_deg; /**< Of a shed: the cut of a rafter's head along the main roof, from square; not given for a gable. */
    double valley_length_in; /**< Of a gable: each valley on the main roof plane; not given for a shed. */
    double valley_deg; /**< Of a gable: its angle to the main eave on that plane; not given for a shed. */
    double jack_difference_in; /**< Of a gable: common difference of its valley jacks, along their slope; not given for a shed. */
    double stud_difference_in; /**< Common difference of the cheeks' studs. */
    double stud_bevel_deg; /**< The saw's bevel for the studs' feet: the main roof's angle. */
    int32_t studs; /**< Studs of one cheek. */
    int32_t spare2;
} frame_dormer_out;
/** A piece of a dormer. */
typedef struct frame_dormer_piece {
    uint32_t struct_size, struct_id;
    const char *name;      /**< Name of the piece. */
    double distance_in;    /**< Of a stud: from the front wall's outside to its centre, level; of a rafter not given. */
    double long_point_in;  /**< From long point to long point: the stock it needs. */
    double short_point_in; /**< Of a stud: to the short point of its foot; of a rafter along its bottom edge. */
} frame_dormer_piece;
/** Finds the members of a dormer. FRAME_IMPOSSIBLE for a shed that is not flatter than the main roof, when plates and sole leave no wall, and where the rafter refuses. */
FRAME_ANSWER(dormer);
/** The rafter, then the studs of one cheek from the front to the back. */
FRAME_ANSWER_LIST(dormer, piece, pieces);
/** Gives a piece as a stick, by its place in the list; a rafter with the front wall's building line (of a gable dormer: the cheek's) at x = 0 and the
 * plate's top at z = 0, a stud upright at its distance along x, the foot of the cheek's long side at the front. Free it with frame_stick_free. */
FRAME_API frame_status frame_dormer_stick(const frame_dormer *dormer, size_t index, frame_stick **stick);

/** How lookouts lie. */
typedef int32_t frame_lookout_laid;
enum frame_lookout_laid_values {
    FRAME_LOOKOUT_EDGE = 1, /**< "on edge". On edge, over a gable rafter or wall as much lower. */
    FRAME_LOOKOUT_FLAT = 2 /**< "flat". Flat, let into a full gable rafter or over a lower one. */
};
/** Cautions that go with a gable overhang. */
typedef int32_t frame_rake_caution;
enum frame_rake_caution_values {
    FRAME_RAKE_CAUTION_LEVER = 0, /**< "lever". The overhang is longer than the lookouts reach back: wind lifts them; tie them down by calculation, or begin at the second rafter. */
    FRAME_RAKE_CAUTION_FLY = 1, /**< "fly". Fly rafters are commons without a birdsmouth: cut them from the same pattern. */
    FRAME_RAKE_CAUTION_SLOPE = 2 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a gable overhang leaves unchecked. */
typedef int32_t frame_rake_not_checked;
enum frame_rake_not_checked_values {
    FRAME_RAKE_UNCHECKED_STRENGTH = 0 /**< "strength". Whether lookouts hold snow, and uplift at the gable and at the first common. */
};
/** The overhang of a gable: fly rafters carried by lookouts that run over the gable to the first common rafter. */
typedef struct frame_rake_in {
    uint32_t struct_size, struct_id;
    double slope; /**< required : >0..2. Slope of the roof, rise over run. */
    double overhang_in; /**< required : >0..60. Level, from the outside of the gable's framing to the outer face of the fly rafter. */
    double rafter_length_in; /**< required : >0..1200. Along the top edge of the rafters, tail to plumb cut. */
    double first_in; /**< "24 in" : >0..96. From the outside of the gable's framing to the centre of the first common rafter. */
    double spacing_in; /**< 24 : >0..96. Spacing of the lookouts along the slope. */
    double rafter_thickness_in; /**< 1.5 : >0..24. Thickness of rafters and fly rafters. */
    double thickness_in; /**< 1.5 : >0..24. True thickness of the lookouts. */
    double depth_in; /**< 3.5 : >0..24. True depth of the lookouts. */
    frame_lookout_laid laid; /**< on edge. How they lie. */
    int32_t spare;
} frame_rake_in;
/** What a gable overhang measures. */
typedef struct frame_rake_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : rake_caution. Cautions. */
    uint64_t not_checked; /**< bits : rake_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double lookout_length_in; /**< From the first common rafter to the fly rafter, square ends. */
    double notch_in; /**< Depth of a notch for it in a full gable rafter, square to the edge. */
    double gable_drop_in; /**< How much lower than the roof plane the gable's rafter or wall ends instead, plumb. */
    double back_in; /**< What a lookout reaches back from the gable's outside. */
    double lever; /**< Overhang over what it reaches back. */
    int32_t count; /**< Lookouts of one slope. */
    int32_t spare2;
} frame_rake_out;
/** Finds lookouts of a gable overhang and where they lie. FRAME_IMPOSSIBLE when nothing is left of a lookout. */
FRAME_ANSWER(rake);
/** Where the lookouts lie: from the tail along the slope to their centres. */
FRAME_ANSWER_NUMBERS(rake, marks_in);
/** A lookout as a stick along x from the first common rafter to the fly rafter. Free it with frame_stick_free. */
FRAME_VIEW(rake, stick);

/** What is stepped off. */
typedef int32_t frame_square_member;
enum frame_square_member_values {
    FRAME_SQUARE_COMMON = 1, /**< "common" | "common rafter". A common rafter, or a jack. */
    FRAME_SQUARE_HIP = 2 /**< "hip" | "valley" | "hip or valley". A hip or valley between roofs of one slope. */
};
/** Cautions that go with stepping off. */
typedef int32_t frame_square_steps_caution;
enum frame_square_steps_caution_values {
    FRAME_SQUARE_STEPS_CAUTION_SUM = 0, /**< "sum". Every step adds the error of a pencil: check the last mark with a tape against the line length. */
    FRAME_SQUARE_STEPS_CAUTION_SLOPE = 1 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What stepping off leaves unchecked. */
typedef int32_t frame_square_steps_not_checked;
enum frame_square_steps_not_checked_values {
    FRAME_SQUARE_STEPS_UNCHECKED_DEDUCTIONS = 0 /**< "deductions". What ridge, ledger or commons take off at the head: level, from the last mark. */
};
/** Stepping off a common rafter, hip or valley with a framing square, and what the square's rafter table would say for its slope. */
typedef struct frame_square_steps_in {
    uint32_t struct_size, struct_id;
    double slope; /**< required : >0..2. Slope of the roofs, rise over run. */
    double run_in; /**< required : >0..1200. The common rafter's run, level, to be stepped. */
    double overhang_in; /**< 0 : 0..120. Overhang, level and square to the building line, stepped the other way. */
    double corner_deg; /**< 90 : >0..<180. Angle of the corner, for hips, valleys and jacks. */
    double spacing_in; /**< 16 : >0..96. Spacing of the jacks, for their difference. */
    frame_square_member member; /**< common. What is stepped off. */
    int32_t spare;
} frame_square_steps_in;
/** What stepping off measures. */
typedef struct frame_square_steps_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : square_steps_caution. Cautions. */
    uint64_t not_checked; /**< bits : square_steps_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double common_per_foot_in; /**< Length of a common rafter for each foot of run. */
    double hip_per_foot_in; /**< Length of a hip or valley for each foot of the common run. */
    double hip_run_per_foot_in; /**< Its own run for that foot. */
    double jack_difference_in; /**< Difference in length of jacks at the spacing given. */
    double jack_difference_16_in; /**< Difference in length of jacks 16 in apart. */
    double jack_difference_24_in; /**< Difference in length of jacks 24 in apart. */
    double jack_side_cut_in; /**< Side cut of jacks: this on one arm and 12 in on the other; the mark is along the 12. */
    double hip_side_cut_in; /**< Side cut of hips and valleys, in the same way. */
    double blade_in; /**< Held on the blade for each whole step of the member. */
    double tongue_in; /**< Held on the tongue. */
    double step_length_in; /**< Length of a step along the member's edge. */
    double odd_step_in; /**< The odd step, on the blade. */
    double tail_odd_step_in; /**< The tail's odd step. */
    double length_in; /**< Line length that the steps add up to, from the building line. */
    double tail_length_in; /**< Length of the tail. */
    int32_t full_steps; /**< Whole steps from the building line up. */
    int32_t tail_full_steps; /**< Whole steps of the tail. */
} frame_square_steps_out;
/** A step of the square. */
typedef struct frame_square_steps_mark {
    uint32_t struct_size, struct_id;
    double along_in;  /**< Along the edge from the building line to the mark; the tail's are negative. */
    double run_in;    /**< Level, of the member's own run. */
    double rise_in;   /**< Plumb. */
    double blade_in;  /**< Held on the blade for this step: the whole one, or the odd one. */
    double tongue_in; /**< Held on the tongue. */
} frame_square_steps_mark;
/** Steps off a member and reads the square's table for any slope and corner. FRAME_IMPOSSIBLE where a corner hardly turns. */
FRAME_ANSWER(square_steps);
/** The marks, from the tail's end to the head. */
FRAME_ANSWER_LIST(square_steps, mark, marks);

FRAME_END

#endif
