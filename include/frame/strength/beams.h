/** @file strength/beams.h
 * Beams and headers of one span, sloped rafters, unlike pieces side by side, and wood that bears.
 */
#ifndef FRAME_STRENGTH_BEAMS_H
#define FRAME_STRENGTH_BEAMS_H

#include <frame/base.h>
#include <frame/load.h>
#include <frame/material.h>
#include <frame/tape.h>
#include <frame/strength/joists.h>

FRAME_BEGIN

/** A beam or header on one simple span under uniform load. Give species, grade and size; or, for lumber the tables do not have,
 * its design values and size or width_in and depth_in. Loads in plf, or in psf over spacing_in, or both: they add. */
typedef struct frame_beam_check_in {
    uint32_t struct_size, struct_id;
    frame_size size;         /**< optional. Nominal size of one ply. */
    frame_species species;   /**< optional. Species or species group. */
    frame_grade grade;       /**< optional. Visual grade. */
    int32_t plies;           /**< 1 : 1..8. Members acting together. */
    frame_turned turned;     /**< on edge. How it is turned to the load. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_bool repetitive;   /**< no. Three or more at most 24 in apart, or three plies and more, share the load through sheathing (NDS 4.3.9). */
    frame_compression_edge compression_edge; /**< free. What holds the edge in compression. */
    frame_temperature temperature;     /**< normal. How hot it gets for long. */
    frame_load_duration live_duration; /**< ten years. How long the live load lasts. */
    frame_bool shear_at_depth; /**< no. Leave the load within the depth of each support out of the shear (NDS 3.4.3.1): only for bearing below and load above. */
    frame_bool self_weight;  /**< no. Add the member's own weight, by its specific gravity. */
    int32_t spare;
    double span_in;          /**< required : >0..1200. Span: clear span and half the bearing needed at each end (NDS 3.2.1). */
    double dead_plf;         /**< optional : 0..1e5. Dead load on a foot of beam; 0 must be said. */
    double live_plf;         /**< optional : 0..1e5. Live load. */
    double roof_live_plf;    /**< optional : 0..1e5. Roof live load, on plan. */
    double snow_plf;         /**< optional : 0..1e5. Snow, on plan. */
    double spacing_in;       /**< optional : >0..480. Width that it carries, for loads in psf; centre to centre, for repetitive use. */
    double dead_psf;         /**< optional : 0..1000. Dead load over spacing_in. */
    double live_psf;         /**< optional : 0..1000. Live load over spacing_in. */
    double roof_live_psf;    /**< optional : 0..1000. Roof live load on plan, over spacing_in. */
    double snow_psf;         /**< optional : 0..1000. Snow on plan, over spacing_in. */
    double bearing_in;       /**< optional : >0..48. Length of bearing at each end; without it bearing is not checked. */
    double unbraced_length_in; /**< optional : >0..1200. Distance between braces of a free compression edge; the span without it. */
    double notch_in;         /**< optional : >0..60. Depth of a notch at the ends in the lower edge, at most a quarter of the depth. */
    double deflection_limit; /**< 360 : 1..10000. Span over this is the most it may sag under live load or snow. */
    double total_deflection_limit; /**< 240 : 1..10000. Span over this is the most it may sag in all, with creep. */
    double creep_factor;     /**< "1.5 dry, 2.0 wet" : 1..3. Long-term growth of the sag under dead load (NDS 3.5.2). */
    double width_in;         /**< optional : >0..60. True thickness of one ply, instead of size. */
    double depth_in;         /**< optional : >0..60. True width of one ply (its depth on edge), instead of size. */
    double fb_psi;           /**< optional : >0..20000. F_b, instead of species and grade. */
    double fv_psi;           /**< optional : >0..5000. F_v, with fb_psi. */
    double fc_perp_psi;      /**< optional : >0..10000. F_c-perp, with fb_psi. */
    double e_psi;            /**< optional : >0..1e7. E, with fb_psi. */
    double e_min_psi;        /**< optional : >0..1e7. E_min, with fb_psi, for a free compression edge. */
    double specific_gravity; /**< optional : >0..1.5. Specific gravity, with fb_psi, for self_weight. */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for. */
    int32_t spare2;
} frame_beam_check_in;

/** How a beam holds. A ratio is the share used of what is allowed: up to 1 it holds. */
typedef struct frame_beam_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : bending_caution. Cautions. */
    uint64_t not_checked; /**< bits : bending_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_bool passes;    /**< Whether the ratio is at most 1. */
    frame_governing governs; /**< The check with the largest ratio. */
    frame_load_combination combination; /**< The combination of loads that governs bending. */
    frame_load_combination shear_combination; /**< The combination of loads that governs shear. */
    int32_t spare;
    double ratio;            /**< The largest of the ratios. */
    double bending_ratio;    /**< f_b over F_b'. */
    double shear_ratio;      /**< f_v over F_v'. */
    double bearing_ratio;    /**< f_c-perp over F_c-perp'; not given without a length of bearing. */
    double deflection_ratio; /**< The larger of the two ratios of deflection. */
    double deflection_live_ratio;  /**< Deflection under live load or snow over its limit. */
    double deflection_total_ratio; /**< Deflection in all, with creep, over its limit. */
    double dead_plf;         /**< Dead load on a foot of beam, own weight included if it was asked for. */
    double transient_plf;    /**< Largest load of the combinations without the dead load. */
    double moment_lb_in;     /**< Largest bending moment of the governing combination, M. */
    double shear_lb;         /**< Shear of the combination that governs shear, V. */
    double reaction_lb;      /**< Largest reaction at each end, R. */
    double fb_actual_psi;    /**< Bending stress, f_b. */
    double fb_adjusted_psi;  /**< Adjusted bending design value, F_b'. */
    double fv_actual_psi;    /**< Shear stress, f_v; at a notch raised by NDS 3.4.3.2. */
    double fv_adjusted_psi;  /**< Adjusted shear design value, F_v'. */
    double fc_perp_actual_psi;   /**< Bearing stress, f_c-perp. */
    double fc_perp_adjusted_psi; /**< Adjusted design value across the grain, F_c-perp'. */
    double e_adjusted_psi;       /**< Adjusted modulus of elasticity, E'. */
    double deflection_live_in;   /**< Deflection under live load or snow. */
    double deflection_total_in;  /**< Deflection in all, with creep. */
    double deflection_live_limit_in;  /**< The most it may sag under live load or snow. */
    double deflection_total_limit_in; /**< The most it may sag in all. */
    double bearing_needed_in;    /**< Length of bearing that would just do. */
    double section_modulus_in3;  /**< Section modulus, S. */
    double inertia_in4;          /**< Moment of inertia, I. */
    double load_duration_factor;  /**< C_D of the combination that governs bending. */
    double shear_load_duration_factor; /**< C_D of the combination that governs shear. */
    double wet_service_factor;    /**< C_M on F_b. */
    double temperature_factor;    /**< C_t on F_b. */
    double beam_stability_factor; /**< C_L. */
    double size_factor;           /**< C_F on F_b. */
    double flat_use_factor;       /**< C_fu on F_b. */
    double incising_factor;       /**< C_i on F_b. */
    double repetitive_member_factor; /**< C_r. */
    double bearing_area_factor;   /**< C_b: 1 at the ends of a member. */
    double slenderness_ratio;     /**< R_B; not given where C_L is 1 by rule. */
    double time_effect_factor; /**< Time effect factor, lambda, of the combination that governs bending; 1 in ASD. */
} frame_beam_check_out;

/** Checks a beam or header of sawn lumber on a simple span under uniform dead, live, roof live and snow load by NDS 2018, ASD or
 * LRFD: bending, shear, bearing, deflection, each under the combination of ASCE 7-16 2.4.1 that is worst for it, dead load
 * alone included, with all factors of table 4.3.1. Plies on edge stand side by side; plies lying flat are summed, never one block.
 * FRAME_REQUIRED without a dead load or without any other load; FRAME_OUTSIDE_SCOPE where the slenderness R_B is over 50 or a notch
 * is over a quarter of the depth; FRAME_REFUSED where repetitive use is claimed outside NDS 4.3.9; FRAME_IMPOSSIBLE where the bearings
 * are longer than the span. */
FRAME_CALCULATION(beam_check);

/* ---- bearing_check: wood that bears, at any angle to its grain --------------------------------------------------- */

/** Cautions that go with bearing. */
typedef int32_t frame_bearing_caution;
enum frame_bearing_caution_values {
    FRAME_BEARING_CAUTION_STAMP = 0,      /**< "stamp". The design values hold for lumber with this grade stamp, not for unstamped, old, ripped or damaged lumber. */
    FRAME_BEARING_CAUTION_MEMORY = 1,     /**< "from_memory". Rests on values recalled, no text seen: check them against the printed standard before relying on them. */
    FRAME_BEARING_CAUTION_USER_VALUES = 2, /**< "user_values". Your design values are taken to include size, service and treatment. */
    FRAME_BEARING_CAUTION_BOTH = 3,       /**< "both_sides". Both sides of a bearing count: check the piece below too, whose grain may lie across the load. */
    FRAME_BEARING_CAUTION_END_PLATE = 4   /**< "end_plate". End grain pressed beyond three quarters of its strength needs a metal plate between (NDS 3.10.1.3). */
};
/** What bearing leaves unchecked. */
typedef int32_t frame_bearing_not_checked;
enum frame_bearing_not_checked_values {
    FRAME_BEARING_UNCHECKED_OTHER_SIDE = 0, /**< "other_side". The other piece. */
    FRAME_BEARING_UNCHECKED_SLIDING = 1,    /**< "sliding". What keeps a sloped piece from sliding off. */
    FRAME_BEARING_UNCHECKED_COMBINATIONS = 2 /**< "combinations". Other combinations of loads: give each with its own duration. */
};

/** A piece of wood and what presses on it. */
typedef struct frame_bearing_check_in {
    uint32_t struct_size, struct_id;
    frame_size size;         /**< optional. Nominal size of one ply. */
    frame_species species;   /**< optional. Species or species group. */
    frame_grade grade;       /**< optional. Visual grade. */
    int32_t plies;           /**< 1 : 1..8. Members side by side that all bear. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_temperature temperature; /**< normal. How hot it gets for long. */
    frame_load_duration load_duration; /**< ten years. The duration of the shortest load in this combination, for the part along the grain. */
    frame_bool at_end;       /**< yes. The bearing ends less than 3 in from the end of the piece: C_b is 1. */
    frame_design_method method; /**< ASD. How safety is brought in: with LRFD give the load as factored, and time_effect_factor. */
    double load_lb;          /**< required : >0..1e6. Load on the bearing. */
    double length_in;        /**< required : >0..240. Length of bearing along the piece; for a sloped rafter its level seat. */
    double angle_deg;        /**< required : 0..90. Angle between load and grain: 90 across the grain, 0 on end grain; for a rafter on a level seat 90 less its slope. */
    double time_effect_factor;  /**< optional : 0.6..1.25. Time effect factor, lambda, of this combination (NDS table N3); needed with LRFD. */
    double width_in;         /**< optional : >0..60. True breadth of one ply that bears, instead of that of size. */
    double depth_in;         /**< optional : >0..60. True width of one ply, with width_in. */
    double fc_psi;           /**< optional : >0..20000. F_c, instead of species and grade. */
    double fc_perp_psi;      /**< optional : >0..10000. F_c-perp, with fc_psi. */
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for. */
    int32_t spare;
} frame_bearing_check_in;

/** How it bears. A ratio is the share used of what is allowed: up to 1 it holds. */
typedef struct frame_bearing_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : bearing_caution. Cautions. */
    uint64_t not_checked; /**< bits : bearing_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_bool passes;    /**< Whether the ratio is at most 1. */
    double ratio;             /**< Bearing stress over what is allowed. */
    double stress_psi;        /**< Bearing stress. */
    double allowed_psi;       /**< What is allowed at this angle, F_theta'. */
    double fc_star_psi;       /**< F_c*: along the grain, all factors but C_P. */
    double fc_perp_adjusted_psi; /**< F_c-perp', C_b included. */
    double bearing_area_factor;  /**< C_b. */
    double length_needed_in;  /**< Length of bearing that would just do, with this C_b. */
    double capacity_lb;       /**< Load that it would just bear. */
} frame_bearing_check_out;

/** Checks bearing at any angle to the grain by NDS 2018 3.10: across the grain with C_b, on end grain, and between the two by Hankinson's formula
 * (3.10.3), as under a rafter's level seat or a brace. ASD or LRFD. */
FRAME_CALCULATION(bearing_check);

/* ---- sistered_check: unlike pieces side by side ------------------------------------------------------------------- */

/** One piece of a sistered joist. Give species, grade and size; or its design values and true size. As a tuple or array: size, species, grade,
 * count. */
typedef struct frame_sister_piece {
    uint32_t struct_size, struct_id;
    frame_size size;         /**< optional. Nominal size. */
    frame_species species;   /**< optional. Species or species group. */
    frame_grade grade;       /**< optional. Visual grade. */
    int32_t count;           /**< 1 : 1..8. How many alike. */
    double width_in;         /**< optional : >0..60. True thickness, instead of size. */
    double depth_in;         /**< optional : >0..60. True depth, instead of size. */
    double fb_psi;           /**< optional : >0..20000. F_b, instead of species and grade. */
    double fv_psi;           /**< optional : >0..5000. F_v, with fb_psi. */
    double fc_perp_psi;      /**< optional : >0..10000. F_c-perp, with fb_psi. */
    double e_psi;            /**< optional : >0..1e7. E, with fb_psi. */
} frame_sister_piece;
/** Sets up a piece: every field not given. */
FRAME_ELEMENT(sister_piece);

/** Cautions that go with sistered joists. */
typedef int32_t frame_sister_caution;
enum frame_sister_caution_values {
    FRAME_SISTER_CAUTION_FULL = 0,     /**< "full_length". Holds for pieces that run the whole span, bear at both ends, are bent alike and fastened together so that all carry. */
    FRAME_SISTER_CAUTION_SAG = 1,      /**< "sag". What the old joist has sagged stays unless it is jacked up first; until the new piece is tight it carries nothing of the load that is there. */
    FRAME_SISTER_CAUTION_STAMP = 2,    /**< "stamp". The design values hold for lumber with a grade stamp: an old joist has an unknown grade. */
    FRAME_SISTER_CAUTION_MEMORY = 3,   /**< "from_memory". Rests on values recalled, no text seen. */
    FRAME_SISTER_CAUTION_USER_VALUES = 4, /**< "user_values". Your design values are taken to include size, service and treatment. */
    FRAME_SISTER_CAUTION_SNOW_BASIS = 5   /**< "snow_basis". Snow is taken as a 50-year load on plan: a strength-level one belongs to load_edition "ASCE 7-22". */
};
/** What sistered joists leave unchecked. */
typedef int32_t frame_sister_not_checked;
enum frame_sister_not_checked_values {
    FRAME_SISTER_UNCHECKED_FASTENERS = 0, /**< "fasteners". The nails or bolts between the pieces: share_plf of each is what they pass on. */
    FRAME_SISTER_UNCHECKED_LOCAL = 1,     /**< "local_loads". Point loads, wind, drifted and sliding snow. */
    FRAME_SISTER_UNCHECKED_CUTS = 2,      /**< "cuts". Notches, holes and rot. */
    FRAME_SISTER_UNCHECKED_SUPPORTS = 3,  /**< "supports". What carries the reactions. */
    FRAME_SISTER_UNCHECKED_EDGE = 4       /**< "edge". Buckling of the compression edge: it is taken as held. */
};

/** Pieces side by side under even load on one simple span. */
typedef struct frame_sistered_check_in {
    uint32_t struct_size, struct_id;
    const frame_sister_piece *pieces; /**< required. The pieces. */
    size_t piece_count;      /**< count : 1..8. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_load_duration live_duration; /**< ten years. How long the live load lasts. */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    int32_t spare;
    double span_in;          /**< required : >0..1200. Span. */
    double dead_plf;         /**< required : 0..1e5. Dead load on a foot of all pieces together; 0 must be said. */
    double live_plf;         /**< 0 : 0..1e5. Live load. */
    double roof_live_plf;    /**< 0 : 0..1e5. Roof live load, on plan. */
    double snow_plf;         /**< 0 : 0..1e5. Snow, on plan. */
    double bearing_in;       /**< 1.5 : >0..48. Length of bearing at each end. */
    double deflection_limit; /**< 360 : 1..10000. Span over this is the most it may sag under live load or snow. */
    double total_deflection_limit; /**< 240 : 1..10000. Span over this is the most it may sag in all, with creep. */
    double creep_factor;     /**< "1.5 dry, 2.0 wet" : 1..3. Long-term growth of the sag under dead load (NDS 3.5.2). */
} frame_sistered_check_in;

/** How they hold together. */
typedef struct frame_sistered_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : sister_caution. Cautions. */
    uint64_t not_checked; /**< bits : sister_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_bool passes;    /**< Whether the ratio is at most 1. */
    frame_governing governs; /**< The check with the largest ratio. */
    int32_t weakest;      /**< The piece with the largest ratio, from 1. */
    double ratio;            /**< The largest of the ratios of all pieces. */
    double stiffness_lb_in2; /**< E'I of all together. */
    double deflection_live_in;  /**< Deflection under live load or snow. */
    double deflection_total_in; /**< Deflection in all, with creep. */
} frame_sistered_check_out;

/** A piece, as checked under its share. */
typedef struct frame_sistered_check_piece {
    uint32_t struct_size, struct_id;
    frame_size size;          /**< Nominal size; not given where it came by its true size. */
    int32_t count;            /**< How many alike. */
    frame_governing governs;  /**< The check with the largest ratio. */
    frame_bool passes;        /**< Whether it holds. */
    double share;             /**< Its part of the load, all alike together: its E'I over that of all. */
    double share_plf;         /**< Load that it carries under the combination that governs its bending. */
    double ratio;             /**< The largest of its ratios. */
    double bending_ratio;     /**< f_b over F_b'. */
    double shear_ratio;       /**< f_v over F_v'. */
    double bearing_ratio;     /**< f_c-perp over F_c-perp'. */
    double deflection_ratio;  /**< The larger of the two ratios of deflection, the same for all. */
} frame_sistered_check_piece;

/** Checks unlike pieces side by side, as an old joist with a new one: they bend alike, so that each carries the load in proportion to its stiffness, and each
 * is checked under its share as a beam_check. */
FRAME_ANSWER(sistered_check);
/** The pieces, as given. */
FRAME_ANSWER_LIST(sistered_check, piece, pieces);

/* ---- rafter_check: a sloped rafter on its birdsmouth, tail and all ------------------------------------------------ */

/** Cautions that go with the check of a rafter. */
typedef int32_t frame_rafter_check_caution;
enum frame_rafter_check_caution_values {
    FRAME_RAFTER_CHECK_CAUTION_AS_ASSUMED = 0, /**< "as_assumed". Holds only with supports, edges, service and loads as given or assumed here: the ridge and the plate each carry their share straight down. */
    FRAME_RAFTER_CHECK_CAUTION_STAMP = 1,      /**< "stamp". The design values hold for lumber with this grade stamp, not for unstamped, old, ripped or damaged lumber. */
    FRAME_RAFTER_CHECK_CAUTION_MEMORY = 2,     /**< "from_memory". Rests on values recalled, no text seen: check them against the printed standard before relying on them. */
    FRAME_RAFTER_CHECK_CAUTION_DOUBTFUL = 3,   /**< "doubtful". Sources differ about a design value used. */
    FRAME_RAFTER_CHECK_CAUTION_SUPERSEDED = 4, /**< "superseded". A later supplement changed the values of this species. */
    FRAME_RAFTER_CHECK_CAUTION_PLIES = 5,      /**< "plies". Plies must be fastened together, run unbroken from tail to ridge, and each must bear. */
    FRAME_RAFTER_CHECK_CAUTION_UPLIFT = 6,     /**< "uplift". A long overhang lifts the ridge end: tie it down, or the answer does not hold. */
    FRAME_RAFTER_CHECK_CAUTION_ROLLING = 7,    /**< "rolling". Over the plate and at the ridge the rafter must be kept from rolling over. */
    FRAME_RAFTER_CHECK_CAUTION_NOTCH = 8,      /**< "notch". A birdsmouth starts splits: do not cut past its corner, cut it in sound wood, and never deeper. */
    FRAME_RAFTER_CHECK_CAUTION_SNOW_BASIS = 9, /**< "snow_basis". Snow is taken as a 50-year load (ASCE 7-16 and the code tables): say load_edition "ASCE 7-22" for a strength-level one. */
    FRAME_RAFTER_CHECK_CAUTION_EDGE_HELD = 10, /**< "edge_held". An edge that is taken as held must be sheathed or tied along its length. */
    FRAME_RAFTER_CHECK_CAUTION_TIE_DOWN = 11   /**< "tie_down". Something lifts the rafter off plate or ridge: it must be tied down for that, and what it is tied to as well. */
};

/** What the check of a rafter leaves unchecked. */
typedef int32_t frame_rafter_check_not_checked;
enum frame_rafter_check_not_checked_values {
    FRAME_RAFTER_CHECK_UNCHECKED_THRUST = 0,     /**< "thrust". How far rafters push the walls apart where no ridge beam carries their upper ends: see rafter_thrust. */
    FRAME_RAFTER_CHECK_UNCHECKED_TIES = 1,       /**< "ties". Rafter ties, collar ties and their nails. */
    FRAME_RAFTER_CHECK_UNCHECKED_WIND = 2,       /**< "wind". Wind that presses, or wind that lifts roof and overhang: not both were given. */
    FRAME_RAFTER_CHECK_UNCHECKED_RIDGE = 3,      /**< "ridge". The upper end: its bearing, its hanger or nails, and the ridge. */
    FRAME_RAFTER_CHECK_UNCHECKED_PLATE = 4,      /**< "plate". The plate under the seat, and what keeps the rafter from sliding off it. */
    FRAME_RAFTER_CHECK_UNCHECKED_AXIAL = 5,      /**< "axial". Force along the rafter. */
    FRAME_RAFTER_CHECK_UNCHECKED_SNOW_FORMS = 6, /**< "snow_forms". Unbalanced, drifted and sliding snow, and ice at the eaves: the snow is taken as given. */
    FRAME_RAFTER_CHECK_UNCHECKED_MOVING = 7,     /**< "concentrated_live". A worker's weight at the worst place, the end of the overhang above all. */
    FRAME_RAFTER_CHECK_UNCHECKED_CUTS = 8,       /**< "cuts". Cuts but the birdsmouth: a tail cut down, notches and holes. */
    FRAME_RAFTER_CHECK_UNCHECKED_EARTHQUAKE = 9, /**< "earthquake". Earthquake and rain. */
    FRAME_RAFTER_CHECK_UNCHECKED_TIE_DOWN = 10   /**< "tie_down". The ties that hold the roof down: rafter_uplift. */
};

/** A rafter from its tail over the plate to the ridge, which carries its upper end. Levels are measured on plan from the middle of the seat. */
typedef struct frame_rafter_check_in {
    uint32_t struct_size, struct_id;
    frame_size size;         /**< required. Nominal size of one ply. */
    frame_species species;   /**< required. Species or species group. */
    frame_grade grade;       /**< required. Visual grade. */
    int32_t plies;           /**< 1 : 1..8. Rafters side by side acting together. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_bool repetitive;   /**< no. Three or more at most 24 in apart share the load through sheathing (NDS 4.3.9). */
    frame_temperature temperature;     /**< normal. How hot it gets for long. */
    frame_compression_edge upper_edge; /**< held. What holds the upper edge, in compression between plate and ridge. */
    frame_compression_edge lower_edge; /**< free. What holds the lower edge, in compression over the plate and in the overhang. */
    frame_design_method method;        /**< ASD. How safety is brought in. */
    frame_load_edition load_edition;   /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    double slope;            /**< required : >0..4. Rise over run. */
    double run_in;           /**< required : >0..600. Level distance from the middle of the seat to where the ridge carries the rafter. */
    double overhang_in;      /**< 0 : 0..240. Level distance from the middle of the seat to the end of the tail. */
    double spacing_in;       /**< required : >0..480. Centre to centre. */
    double dead_psf;         /**< required : >0..200. Dead load on the slope, not on plan, the rafter's own weight with it. */
    double roof_live_psf;    /**< 0 : 0..200. Roof live load on plan. */
    double snow_psf;         /**< 0 : 0..1000. Snow on plan. */
    double seat_in;          /**< required : >0..24. Level length of the seat that bears on the plate. */
    double notch_depth_in;   /**< "by seat and slope" : >0..12. Depth of the birdsmouth square to the rafter; at least what the seat cuts. */
    double deflection_limit; /**< 180 : 1..10000. Length along the slope over this is the most it may sag square to it without its dead load; twice the length counts for the overhang. */
    double total_deflection_limit; /**< 180 : 1..10000. Length over this is the most it may sag in all, with creep (common practice). */
    double creep_factor;     /**< "1.5 dry, 2.0 wet" : 1..3. Long-term growth of the sag under dead load (NDS 3.5.2). */
    double wind_down_psf;    /**< 0 : 0..500. Wind that presses on the roof, square to it, at strength level. */
    double wind_up_psf;      /**< 0 : 0..500. Wind that lifts the roof, square to it, at strength level. */
    double overhang_wind_up_psf; /**< "as on the roof" : 0..500. Wind that lifts the overhang, above and below it together. */
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for. */
    int32_t spare;
} frame_rafter_check_in;

/** How it holds. A ratio is the share used of what is allowed: up to 1 it holds. */
typedef struct frame_rafter_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : rafter_check_caution. Cautions. */
    uint64_t not_checked; /**< bits : rafter_check_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_bool passes;    /**< Whether the ratio is at most 1. */
    frame_governing governs; /**< The check with the largest ratio; "cut" is the birdsmouth. */
    frame_load_combination combination; /**< The combination of loads that governs bending. */
    frame_load_combination bearing_combination; /**< The combination of loads that governs the seat. */
    int32_t spare;
    double ratio;            /**< The largest of the ratios. */
    double bending_ratio;    /**< f_b over F_b' of the whole section, where it is largest. */
    double shear_ratio;      /**< f_v over F_v' of the whole section. */
    double notch_bending_ratio; /**< Bending stress in what the birdsmouth leaves over F_b'. */
    double notch_shear_ratio;   /**< Shear stress in what the birdsmouth leaves over F_v'. */
    double bearing_ratio;    /**< Bearing stress on the seat over what is allowed at its angle to the grain. */
    double deflection_ratio; /**< The larger of span and overhang, live and total. */
    double span_deflection_ratio;     /**< Of the span between plate and ridge. */
    double overhang_deflection_ratio; /**< Of the overhang; not given without one. */
    double length_in;        /**< Length along the slope between plate and ridge. */
    double overhang_length_in; /**< Length along the slope of the overhang. */
    double dead_plf;         /**< Dead load square to the rafter, on a foot of its length. */
    double roof_live_plf;    /**< Roof live load square to the rafter, on a foot of its length. */
    double snow_plf;         /**< Snow square to the rafter, on a foot of its length. */
    double span_moment_lb_in;  /**< Largest moment between plate and ridge. */
    double plate_moment_lb_in; /**< Least moment in the overhang, over the plate; 0 without one. */
    double notch_depth_in;   /**< Depth of the birdsmouth square to the rafter. */
    double net_depth_in;     /**< Depth it leaves. */
    double seat_load_lb;     /**< Load on the seat, straight down, of the combination that governs it. */
    double seat_angle_deg;   /**< Angle between that load and the grain. */
    double seat_needed_in;   /**< Length of seat that would just do. */
    double live_deflection_in;  /**< Sag of the span square to it without its dead load. */
    double total_deflection_in; /**< Sag of the span square to it in all, with creep. */
    double wind_down_plf;    /**< Wind that presses, on a foot of its length; 0 without. */
    double wind_up_plf;      /**< Wind that lifts, on a foot of its length between plate and ridge; 0 without. */
    double lifted_ratio;     /**< The largest of the ratios with the wind that lifts; not given without. */
    double seat_uplift_lb;   /**< What the tie at the plate must hold down, straight up; 0 where nothing lifts. */
    double ridge_uplift_lb;  /**< What the tie at the ridge must hold down, straight up; 0 where nothing lifts. */
} frame_rafter_check_out;

/** Checks a sloped rafter of sawn lumber with its birdsmouth and overhang by NDS 2018, ASD or LRFD: loads resolved square to it, bending,
 * shear and deflection of span and overhang as member_check does them, what the birdsmouth leaves (NDS 3.1.2 and 3.4.3.2), and the
 * level seat at its angle to the grain (3.10.3). FRAME_OUTSIDE_SCOPE where the birdsmouth is deeper than a quarter of the depth (4.4.3)
 * or R_B is over 50; FRAME_CONFLICT where a depth cuts less than the seat; FRAME_IMPOSSIBLE where the seat is longer than the run. */
FRAME_CALCULATION(rafter_check);

FRAME_END

#endif
