/** @file roof/details.h
 * Members of details: broken hips, ripped ridges, purlins and their braces, soffits, blocks at the eave.
 */
#ifndef FRAME_ROOF_DETAILS_H
#define FRAME_ROOF_DETAILS_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/timber.h>
#include <frame/roof/rafters.h>

FRAME_BEGIN

/** How an end of a broken hip is cut. */
typedef int32_t frame_broken_hip_end;
enum frame_broken_hip_end_values {
    FRAME_BROKEN_HIP_END_RIDGE = 1, /**< "ridge" | "single cheek". Single cheek, against the face of the ridge there. */
    FRAME_BROKEN_HIP_END_PLUMB = 2 /**< "plumb". Plumb and square to its run. */
};
/** Cautions that go with a broken hip. */
typedef int32_t frame_broken_hip_caution;
enum frame_broken_hip_caution_values {
    FRAME_BROKEN_HIP_CAUTION_BEAM = 0, /**< "beam". It carries jacks: it is a beam, and both its ends need support; the lower ridge's end is not support by itself. */
    FRAME_BROKEN_HIP_CAUTION_COMPOUND = 1, /**< "compound". Cheeks are compound cuts: guard, support the piece, make a test cut. */
    FRAME_BROKEN_HIP_CAUTION_PAST_TILT = 2, /**< "past_tilt". A cheek is past the 45 degrees most saws tilt to: cut it another way. */
    FRAME_BROKEN_HIP_CAUTION_SLOPE = 3 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a broken hip leaves unchecked. */
typedef int32_t frame_broken_hip_not_checked;
enum frame_broken_hip_not_checked_values {
    FRAME_BROKEN_HIP_UNCHECKED_STRENGTH = 0 /**< "strength". Whether it holds its loads, and what carries its ends. */
};
/** A broken hip: where a lower ridge ends against a higher roof, the hip that climbs on from its end to the higher ridge. Seen from its foot, side a is on the right: the roof that the higher ridge belongs to; side b is the lower ridge's. */
typedef struct frame_broken_hip_in {
    uint32_t struct_size, struct_id;
    double slope_a; /**< required : >0..2. Slope of the higher roof, rise over run. */
    double slope_b; /**< required : >0..2. Slope of the lower ridge's roof. */
    double rise_in; /**< required : >0..1200. How much higher than the lower ridge the higher one lies, centre to centre, in the roof planes. */
    double corner_deg; /**< 90 : >0..<180. Angle between the eaves of the two roofs, inside the building. */
    double ridge_thickness_in; /**< 0 : 0..24. Thickness of the higher ridge; half of it is taken off at the head. */
    double lower_ridge_thickness_in; /**< 0 : 0..24. Thickness of the lower ridge; half of it is taken off at the foot. */
    double thickness_in; /**< "1-1/2 in, or the size's" : >0..24. True thickness. */
    double depth_in; /**< optional : >0..24. True depth; needed for its stick and drawing. */
    frame_size size; /**< optional. Nominal size, instead of depth and thickness. */
    frame_broken_hip_end head; /**< ridge. How the head is cut: its ridge runs along side a's eave. */
    frame_broken_hip_end foot; /**< ridge. How the foot is cut: its ridge runs along side b's eave. */
    frame_hip_top top; /**< dropped. How its square top is kept under the roof planes. */
    const char *name; /**< optional. Name of the piece, for its drawing. */
} frame_broken_hip_in;
/** What a broken hip measures. */
typedef struct frame_broken_hip_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : broken_hip_caution. Cautions. */
    uint64_t not_checked; /**< bits : broken_hip_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    int32_t spare;
    double length_in; /**< Along the slope on the centre line, from cut to cut. */
    double line_length_in; /**< Line length: between the centre lines of the two ridges, unshortened. */
    double plan_run_in; /**< Its run, level, unshortened. */
    double slope; /**< Its slope, rise over run. */
    double plumb_cut_deg; /**< Plumb cuts: the saw's mitre, 0 being square. */
    double level_cut_deg; /**< Level cuts: their angle from square. */
    double head_deduction_in; /**< Level deduction at the head, along its run. */
    double head_deduction_along_in; /**< The same along the slope. */
    double foot_deduction_in; /**< Level deduction at the foot, along its run. */
    double foot_deduction_along_in; /**< The same along the slope. */
    double head_cheek_deg; /**< Bevel of the head's cheek, the line plumb; 0 for a plumb cut. */
    double foot_cheek_deg; /**< Bevel of the foot's cheek; 0 for a plumb cut. */
    double cheek_a_deg; /**< Bevel of side a's jacks that lie against it, the line plumb. */
    double cheek_b_deg; /**< Bevel of side b's jacks. */
    double backing_a_deg; /**< Backing on side a, in the section square to it. */
    double backing_b_deg; /**< Backing on side b. */
    double drop_a_in; /**< Drop on side a, plumb. */
    double drop_b_in; /**< Drop on side b. */
    double sheathing_a_deg; /**< Angle between it and the eave in the roof plane of side a. */
    double sheathing_b_deg; /**< The same in the roof plane of side b. */
    double square_blade_in; /**< To be held on the square's blade for each step: its run for each foot of the common run on side a. */
    double square_tongue_in; /**< To be held on its tongue: that foot's rise. */
    double step_length_in; /**< Length of one step along it. */
    double odd_step_in; /**< The odd step, held on the blade after the whole steps, from the foot's cut to the head's on the centre line. */
    int32_t full_steps; /**< Whole steps of a square, from the foot's cut to the head's. */
    int32_t spare2;
} frame_broken_hip_out;
/** Finds every length and cut of a broken hip. FRAME_CONFLICT when depth or thickness and size differ; FRAME_IMPOSSIBLE when the deductions take the whole of it. */
FRAME_CALCULATION(broken_hip);
/** The broken hip as a stick of the timber room: it runs along x in plan, side a to the right (-y), the lower ridge's centre at x = 0 and the roof planes there at z = 0. Needs depth_in or size. Free it with frame_stick_free. */
FRAME_VIEW(broken_hip, stick);
/** Draws it with its cuts and marks. Free the drawing with frame_drawing_free. */
FRAME_VIEW(broken_hip, drawing);

/** Cautions that go with a ripped ridge. */
typedef int32_t frame_ridge_rip_caution;
enum frame_ridge_rip_caution_values {
    FRAME_RIDGE_RIP_CAUTION_SHALLOW = 0, /**< "shallow". The ridge is less deep than the rafters' plumb cuts, which it must cover (IRC R802.3). */
    FRAME_RIDGE_RIP_CAUTION_RIPPED = 1, /**< "ripped". Ripping voids the grade stamp (NDS 4.1.7): a ridge that must carry load is regraded or built of another piece. */
    FRAME_RIDGE_RIP_CAUTION_SLOPE = 2 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a ripped ridge leaves unchecked. */
typedef int32_t frame_ridge_rip_not_checked;
enum frame_ridge_rip_not_checked_values {
    FRAME_RIDGE_RIP_UNCHECKED_STRENGTH = 0 /**< "strength". Whether it carries load: below 3 in 12, or without ties, a ridge is a beam. */
};
/** A ridge whose top is ripped to the roof planes, so that sheathing lies on it from both sides. */
typedef struct frame_ridge_rip_in {
    uint32_t struct_size, struct_id;
    double slope_a; /**< required : >0..2. Slope of the roof on side a, rise over run. */
    double slope_b; /**< "the slope of side a" : >0..2. Slope on side b. */
    double thickness_in; /**< "1-1/2 in, or the size's" : >0..24. True thickness of the ridge. */
    double depth_in; /**< optional : >0..48. True depth before ripping; needed for its stick. */
    double rafter_depth_in; /**< optional : >0..24. True depth of the rafters, to find the depth the ridge needs. */
    double length_in; /**< 96 : >0..1200. Length of the stick that is shown. */
    frame_size size; /**< optional. Nominal size, instead of depth and thickness. */
    int32_t spare;
} frame_ridge_rip_in;
/** What a ripped ridge measures. */
typedef struct frame_ridge_rip_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : ridge_rip_caution. Cautions. */
    uint64_t not_checked; /**< bits : ridge_rip_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    int32_t spare;
    double bevel_a_deg; /**< Tilt of the blade for the rip on side a, the saw's base on the narrow face. */
    double bevel_b_deg; /**< The same on side b. */
    double fall_a_in; /**< How far below the crest, plumb, the top of its face on side a lies; what the rip takes off there. */
    double fall_b_in; /**< The same on side b. */
    double drop_in; /**< What a ridge left square is set lower by instead, so that its edges stay under the roof planes: the larger fall. */
    double planes_deg; /**< Angle between the roof planes over it, 180 being flat. */
    double least_depth_in; /**< Depth from the crest that covers the plumb cuts of the rafters; not given without their depth. */
    double crest_to_bottom_in; /**< Depth at the crest after ripping; not given without a depth. */
} frame_ridge_rip_out;
/** Finds the rips of a ridge. Its crest is on its centre line, where the roof planes meet. FRAME_IMPOSSIBLE when a rip takes the whole depth. */
FRAME_CALCULATION(ridge_rip);
/** The ridge as a stick along x, side a to the right (-y), the crest at z = 0. Needs depth_in or size. Free it with frame_stick_free. */
FRAME_VIEW(ridge_rip, stick);
/** Draws it with its rips. Free the drawing with frame_drawing_free. */
FRAME_VIEW(ridge_rip, drawing);

/** How a purlin stands. */
typedef int32_t frame_purlin_stands;
enum frame_purlin_stands_values {
    FRAME_PURLIN_SQUARE = 1, /**< "square to the roof" | "square". Its depth square to the rafters, which rest on its edge. */
    FRAME_PURLIN_PLUMB = 2 /**< "plumb". Upright; rafters are notched over it or rest on one edge. */
};
/** What the end of a purlin lies against. */
typedef int32_t frame_purlin_against;
enum frame_purlin_against_values {
    FRAME_PURLIN_AGAINST_HIP = 1, /**< "hip". A hip: the edge of the purlin nearer to the eave is the longer. */
    FRAME_PURLIN_AGAINST_VALLEY = 2 /**< "valley". A valley: the edge nearer to the ridge is the longer. */
};
/** Cautions that go with a purlin. */
typedef int32_t frame_purlin_caution;
enum frame_purlin_caution_values {
    FRAME_PURLIN_CAUTION_COMPOUND = 0, /**< "compound". Mitre and bevel at once: guard, support the piece, try a test cut. */
    FRAME_PURLIN_CAUTION_PAST_TILT = 1, /**< "past_tilt". A bevel over the 45 degrees many saws tilt to: cut another way. */
    FRAME_PURLIN_CAUTION_SIZE = 2, /**< "size". A purlin is at least as deep as the rafters it carries, runs on unbroken over its braces, and is braced every 4 ft at most (IRC R802.4.5, R802.5.1 before 2018). */
    FRAME_PURLIN_CAUTION_SLOPE = 3 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a purlin leaves unchecked. */
typedef int32_t frame_purlin_not_checked;
enum frame_purlin_not_checked_values {
    FRAME_PURLIN_UNCHECKED_STRENGTH = 0 /**< "strength". Whether purlin and braces hold what they carry, and the wall below. */
};
/** A purlin under rafters, cut to lie against the side of a hip or valley. */
typedef struct frame_purlin_in {
    uint32_t struct_size, struct_id;
    double slope; /**< required : >0..2. Slope of the roof it lies under, rise over run. */
    double other_slope; /**< "the same slope" : >0..2. Slope of the roof on the other side of the hip or valley. */
    double corner_deg; /**< 90 : >0..<180. Angle of the corner: inside the building under a hip, outside of it at a valley. */
    double depth_in; /**< required : >0..24. True depth of the purlin. */
    double thickness_in; /**< 1.5 : >0..24. True thickness. */
    double hip_thickness_in; /**< 0 : 0..24. Thickness of the hip or valley; half of it is taken off, square to it. */
    double run_in; /**< optional : >0..1200. Level, from the building line to the purlin's centre line; for where it meets the hip. */
    frame_purlin_stands stands; /**< square to the roof. How it stands. */
    frame_purlin_against against; /**< hip. What its end lies against. */
    const char *name; /**< optional. Name of the piece, for its drawing. */
} frame_purlin_in;
/** What a purlin measures. */
typedef struct frame_purlin_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : purlin_caution. Cautions. */
    uint64_t not_checked; /**< bits : purlin_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double tilt_deg; /**< How far it leans from plumb. */
    double mitre_deg; /**< The saw's mitre, on the wide face, from square: the handbooks' down cut. */
    double bevel_deg; /**< The saw's bevel with that line. */
    double across_edge_deg; /**< The cut across its narrow edge, from square: the handbooks' side cut. */
    double down_cut_in; /**< The down cut on a square: this on one arm and 12 in on the other; the mark is along the first. */
    double side_cut_in; /**< The side cut on a square, in the same way. */
    double deduction_in; /**< Half the hip or valley, along the purlin. */
    double corner_offset_in; /**< Along the eave, from the corner to where the centre lines meet; not given without a run. */
} frame_purlin_out;
/** Finds the cut of a purlin's end against a hip or valley. The cut is a plumb plane along the side of the hip or valley. */
FRAME_CALCULATION(purlin);
/** The end of such a purlin as a stick, running along x to its end, where the centre line of hip or valley is at x = 0; the roof rises to +y. Free it with frame_stick_free. */
FRAME_VIEW(purlin, stick);
/** Draws it with its cut. Free the drawing with frame_drawing_free. */
FRAME_VIEW(purlin, drawing);

/** Which way a purlin's brace leans on its way up. */
typedef int32_t frame_brace_leans;
enum frame_brace_leans_values {
    FRAME_BRACE_LEANS_EAVE = 1, /**< "to the eave". Away from the ridge, towards square to the rafters. */
    FRAME_BRACE_LEANS_RIDGE = 2 /**< "to the ridge". Towards the ridge. */
};
/** What the head of a purlin's brace is cut to. */
typedef int32_t frame_brace_head;
enum frame_brace_head_values {
    FRAME_BRACE_HEAD_ROOF = 1, /**< "along the roof" | "slope". Parallel to the roof: under a purlin square to it. */
    FRAME_BRACE_HEAD_LEVEL = 2 /**< "level". Level: under a plumb purlin. */
};
/** Cautions that go with a purlin's brace. */
typedef int32_t frame_purlin_brace_caution;
enum frame_purlin_brace_caution_values {
    FRAME_PURLIN_BRACE_CAUTION_FLAT = 0, /**< "flat". Less than 45 degrees from level: steeper is required of braces that carry purlins (IRC R802.4.5, R802.5.1 before 2018). */
    FRAME_PURLIN_BRACE_CAUTION_LONG = 1, /**< "long". Longer than 8 ft: it needs bracing of its own (IRC R802.4.5, R802.5.1 before 2018). */
    FRAME_PURLIN_BRACE_CAUTION_WALL = 2, /**< "wall". It must stand on a bearing wall, with the load followed to the ground; not on ceiling joists. */
    FRAME_PURLIN_BRACE_CAUTION_SLOPE = 3 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a purlin's brace leaves unchecked. */
typedef int32_t frame_purlin_brace_not_checked;
enum frame_purlin_brace_not_checked_values {
    FRAME_PURLIN_BRACE_UNCHECKED_STRENGTH = 0 /**< "strength". Whether brace, joints and wall hold the load. */
};
/** A brace from a bearing wall up to a purlin. */
typedef struct frame_purlin_brace_in {
    uint32_t struct_size, struct_id;
    double rise_in; /**< required : >0..1200. Plumb, from the bearing plate to the middle of its head. */
    double run_in; /**< required : 0..1200. Level, from the middle of its foot to the middle of its head. */
    double slope; /**< required : >0..2. Slope of the roof, rise over run. */
    double depth_in; /**< 3.5 : >0..24. Depth of the brace, seen from the side. */
    double thickness_in; /**< 1.5 : >0..24. True thickness. */
    frame_brace_leans leans; /**< to the eave. Which way it leans. */
    frame_brace_head head; /**< along the roof. What its head is cut to. */
    const char *name; /**< optional. Name of the piece, for its drawing. */
} frame_purlin_brace_in;
/** What a purlin's brace measures. */
typedef struct frame_purlin_brace_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : purlin_brace_caution. Cautions. */
    uint64_t not_checked; /**< bits : purlin_brace_not_checked. What was not checked. */
    frame_known known;    /**< The limits are of the code's text; the rest is geometry. */
    int32_t spare;
    double length_in; /**< Along its centre line. */
    double long_point_in; /**< From the long point of one end to that of the other: the stock it needs. */
    double angle_deg; /**< Its angle from level. */
    double foot_cut_deg; /**< Level cut at the foot: the saw's mitre. */
    double head_cut_deg; /**< Cut at the head: the saw's mitre; 0 when the brace is square to it. */
    double square_blade_in; /**< The foot's cut on a square: this on the blade, for the rise of the brace. */
    double square_tongue_in; /**< The run of the brace for that rise, on the tongue; the mark is along it. */
} frame_purlin_brace_out;
/** Finds lengths and cuts of a purlin's brace. FRAME_IMPOSSIBLE when its cuts would cross. */
FRAME_CALCULATION(purlin_brace);
/** The brace as a stick: the middle of its foot at x = 0, z = 0, the ridge towards +x. Free it with frame_stick_free. */
FRAME_VIEW(purlin_brace, stick);
/** Draws the brace. Free the drawing with frame_drawing_free. */
FRAME_VIEW(purlin_brace, drawing);

FRAME_END

#endif
