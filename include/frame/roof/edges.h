/** @file roof/edges.h
 * Members at the edges of a roof: soffits, blocks at the eave.
 */
#ifndef FRAME_ROOF_EDGES_H
#define FRAME_ROOF_EDGES_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/timber.h>
#include <frame/roof/rafters.h>

FRAME_BEGIN

/** Cautions that go with a soffit. */
typedef int32_t frame_soffit_caution;
enum frame_soffit_caution_values {
    FRAME_SOFFIT_CAUTION_CLIPPED = 0, /**< "clipped". The lookouts are deeper than the tail's plumb cut: their outer upper corner is clipped to the slope. */
    FRAME_SOFFIT_CAUTION_BELOW = 1, /**< "below". The soffit lies below the plate by soffit_drop_in: heads of windows and doors must lie under it. */
    FRAME_SOFFIT_CAUTION_SHALLOW = 2, /**< "shallow". The lookouts' clip leaves less than half of their depth at the fascia: take shallower lookouts or a level tail. */
    FRAME_SOFFIT_CAUTION_SLOPE = 3 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a soffit leaves unchecked. */
typedef int32_t frame_soffit_not_checked;
enum frame_soffit_not_checked_values {
    FRAME_SOFFIT_UNCHECKED_VENT = 0 /**< "vent". Air into the roof: openings of the soffit and the way over the plate. */
};
/** A level soffit under rafter tails: nailers on the wall, level lookouts beside the tails. */
typedef struct frame_soffit_in {
    uint32_t struct_size, struct_id;
    double slope; /**< required : >0..2. Slope of the roof, rise over run. */
    double overhang_in; /**< required : >0..120. Overhang, level, from the building line to the outer face of the tail's plumb cut. */
    double rafter_depth_in; /**< required : >0..24. True depth of the rafters. */
    double height_above_plate_in; /**< required : >0..48. Height above plate, plumb at the building line. */
    double fascia_depth_in; /**< "the tail's whole plumb cut" : >0..24. Height of the upright part of a plumb and level tail. */
    double wall_cladding_in; /**< 0 : 0..12. Thickness of sheathing and what else lies between the building line and the nailer. */
    double nailer_thickness_in; /**< 1.5 : 0..6. Thickness of the nailer on the wall; 0 for lookouts fastened to the wall themselves. */
    double nailer_depth_in; /**< 3.5 : >0..24. Depth of the nailer. */
    double thickness_in; /**< 1.5 : >0..24. True thickness. */
    double depth_in; /**< 3.5 : >0..24. True depth of the lookouts. */
} frame_soffit_in;
/** What a soffit measures. */
typedef struct frame_soffit_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : soffit_caution. Cautions. */
    uint64_t not_checked; /**< bits : soffit_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double lookout_length_in; /**< Length of a level lookout, from the tail's plumb cut to the nailer. */
    double soffit_width_in; /**< From the back of the fascia to the face of the cladding. */
    double soffit_drop_in; /**< How far below the plate's top the underside of lookouts and nailer lies; negative above it. */
    double nailer_top_in; /**< Height of the nailer's top over the plate's top; negative below it: the line to snap on the wall. */
    double tail_height_in; /**< Plumb height of the tail's cut: of the fascia's back. */
    double clip_in; /**< What the clip takes off the lookout's upper edge, level; 0 without one. */
    double clip_height_in; /**< Depth left of the lookout at the fascia. */
    double clip_mitre_deg; /**< The clip's angle: the saw's mitre from square, as the rafter's level cut; not given without one. */
} frame_soffit_out;
/** Finds where a level soffit lies, its nailer's line, and the lookouts that carry it, level with the lowest point of the tails. FRAME_IMPOSSIBLE when cladding and nailer take the whole overhang, the fascia is higher than the tail, or the clip takes a lookout's whole end. */
FRAME_CALCULATION(soffit);
/** A lookout as a stick along x, towards the wall: the tail's cut at x = -overhang_in, the plate's top at z = 0. Free it with frame_stick_free. */
FRAME_VIEW(soffit, stick);
/** Draws a lookout. Free the drawing with frame_drawing_free. */
FRAME_VIEW(soffit, drawing);

/** How a block between rafters stands. */
typedef int32_t frame_eave_block_stands;
enum frame_eave_block_stands_values {
    FRAME_EAVE_BLOCK_PLUMB = 1, /**< "plumb". Upright on the plate; its top is ripped to the slope. */
    FRAME_EAVE_BLOCK_SQUARE = 2 /**< "square to the roof" | "square". Square to the rafters; its bottom is ripped level, to lie on the plate. */
};
/** Cautions that go with a block between rafters. */
typedef int32_t frame_eave_block_caution;
enum frame_eave_block_caution_values {
    FRAME_EAVE_BLOCK_CAUTION_AIR = 0, /**< "air". It closes the way of air over the plate: leave holes or a gap where the roof is vented. */
    FRAME_EAVE_BLOCK_CAUTION_RIPPED = 1, /**< "ripped". Its long edge is a rip with the blade tilted: guard, push stick, a test piece. */
    FRAME_EAVE_BLOCK_CAUTION_SLOPE = 2 /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
};
/** What a block between rafters leaves unchecked. */
typedef int32_t frame_eave_block_not_checked;
enum frame_eave_block_not_checked_values {
    FRAME_EAVE_BLOCK_UNCHECKED_LATERAL = 0 /**< "lateral". Whether it must carry shear from the roof to the wall: see diaphragm. */
};
/** A block between rafters over the plate. */
typedef struct frame_eave_block_in {
    uint32_t struct_size, struct_id;
    double slope; /**< required : >0..2. Slope of the roof, rise over run. */
    double spacing_in; /**< required : >0..96. Spacing of the rafters on centres. */
    double height_above_plate_in; /**< required : >0..48. Height above plate of the rafters, plumb at the building line. */
    double rafter_thickness_in; /**< 1.5 : >0..24. Thickness of the rafters. */
    double thickness_in; /**< 1.5 : >0..24. True thickness. */
    double set_back_in; /**< 0 : 0..24. Of a plumb one: from the building line in to its outer face, level. */
    frame_eave_block_stands stands; /**< plumb. How it stands. */
    int32_t spare;
} frame_eave_block_in;
/** What a block between rafters measures. */
typedef struct frame_eave_block_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : eave_block_caution. Cautions. */
    uint64_t not_checked; /**< bits : eave_block_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double length_in; /**< Between the rafters. */
    double outer_depth_in; /**< Depth of its outer face. */
    double inner_depth_in; /**< Depth of its inner face: the board it is ripped from is as wide. */
    double bevel_deg; /**< Tilt of the blade for the rip. */
} frame_eave_block_out;
/** Finds the blocks between rafters at the eave, reaching from the plate up to the roof plane. */
FRAME_CALCULATION(eave_block);
/** A block as a stick along x from its left end, the building line at y = 0, the building towards +y, the plate's top at z = 0. Free it with frame_stick_free. */
FRAME_VIEW(eave_block, stick);

FRAME_END

#endif
