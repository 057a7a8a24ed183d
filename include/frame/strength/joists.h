/** @file strength/joists.h
 * Joists, rafters and ceiling joists of sawn lumber: do they hold, and the longest span they may have. The words and cautions that the
 * other checks of this room share.
 */
#ifndef FRAME_STRENGTH_JOISTS_H
#define FRAME_STRENGTH_JOISTS_H

#include <frame/base.h>
#include <frame/load.h>
#include <frame/material.h>
#include <frame/tape.h>

FRAME_BEGIN

/** What limits a member: the check with the largest ratio, or the criterion with the shortest span. */
typedef int32_t frame_governing;
enum frame_governing_values {
    FRAME_GOVERNS_BENDING = 1,   /**< "bending". Bending stress. */
    FRAME_GOVERNS_SHEAR = 2,     /**< "shear". Shear along the grain. */
    FRAME_GOVERNS_BEARING = 3,   /**< "bearing". Compression across the grain over a support. */
    FRAME_GOVERNS_DEFLECTION = 4, /**< "deflection". Deflection, under live load or in all. */
    FRAME_GOVERNS_COMPRESSION = 5, /**< "compression". Compression along the grain, buckling included. */
    FRAME_GOVERNS_COMBINED = 6,   /**< "bending and compression". Bending and compression together. */
    FRAME_GOVERNS_TENSION = 7,    /**< "tension". Tension along the grain. */
    FRAME_GOVERNS_BENDING_TENSION = 8, /**< "bending and tension". Bending and tension together. */
    FRAME_GOVERNS_CUT = 9,        /**< "cut". What a notch or hole leaves. */
    FRAME_GOVERNS_RADIAL = 10     /**< "radial stress". Stress along the radius of a curved glulam. */
};

/** What holds the edge of a member that bending presses together. */
typedef int32_t frame_compression_edge;
enum frame_compression_edge_values {
    FRAME_EDGE_HELD = 1, /**< "held" | "braced" | "sheathed". Held along its length by sheathing or decking, and the ends kept from rolling: C_L is 1. */
    FRAME_EDGE_FREE = 2  /**< "free" | "unbraced". Held at the ends, and between them only at braces unbraced_length_in apart: C_L by NDS 3.3.3. */
};

/** How hot the wood gets for long. */
typedef int32_t frame_temperature;
enum frame_temperature_values {
    FRAME_TEMPERATURE_100F = 1, /**< "normal" | "100 F". Up to 100 F, as in all usual buildings: C_t is 1. */
    FRAME_TEMPERATURE_125F = 2, /**< "125 F". Over 100 F to 125 F. */
    FRAME_TEMPERATURE_150F = 3  /**< "150 F". Over 125 F to 150 F. */
};

/** What a joist is part of. */
typedef int32_t frame_joist_use;
enum frame_joist_use_values {
    FRAME_USE_FLOOR = 1,   /**< "floor" | "floor joist". A floor joist. */
    FRAME_USE_CEILING = 2, /**< "ceiling" | "ceiling joist". A ceiling joist. */
    FRAME_USE_RAFTER = 3,  /**< "rafter" | "roof". A rafter: its live load is roof live load. */
    FRAME_USE_DECK = 4     /**< "deck" | "deck joist". A deck joist, out of doors. */
};

/** Cautions that go with members in bending. */
typedef int32_t frame_bending_caution;
enum frame_bending_caution_values {
    FRAME_BENDING_CAUTION_AS_ASSUMED = 0,  /**< "as_assumed". Holds only with bracing, bearing, service and load sharing as given or assumed here. */
    FRAME_BENDING_CAUTION_LOCAL_LOADS = 1, /**< "local_loads". No load but those given: walls, tubs, stoves, stored goods and drifted snow come on top. */
    FRAME_BENDING_CAUTION_STAMP = 2,       /**< "stamp". The design values hold for lumber with this grade stamp, not for unstamped, old, ripped or damaged lumber. */
    FRAME_BENDING_CAUTION_MEMORY = 3,      /**< "from_memory". Rests on values recalled, no text seen: check them against the printed standard before relying on them. */
    FRAME_BENDING_CAUTION_DOUBTFUL = 4,    /**< "doubtful". Sources differ about a design value used. */
    FRAME_BENDING_CAUTION_SUPERSEDED = 5,  /**< "superseded". A later supplement changed the values of this species. */
    FRAME_BENDING_CAUTION_USER_VALUES = 6, /**< "user_values". Your design values are taken to include size, service and treatment: C_F, C_M and C_i are 1. */
    FRAME_BENDING_CAUTION_PLIES = 7,       /**< "plies". Plies must be fastened together, and each must bear, so that all carry: side loads need their own nailing. */
    FRAME_BENDING_CAUTION_FLAT = 8,        /**< "flat_plies". Plies lying flat on one another do not act as one block unless glued: their strengths are summed. */
    FRAME_BENDING_CAUTION_EDGE_HELD = 9,   /**< "edge_held". Cripples, a loose plate or hung ceilings do not hold the compression edge: it must be sheathed or tied along its length. */
    FRAME_BENDING_CAUTION_RAFTER = 10,     /**< "ties_first". Ties or a ridge beam, and bracing, come before the load; rafters push the walls apart without them. */
    FRAME_BENDING_CAUTION_SHORT_BEARING = 11, /**< "short_bearing". At this span the bearing assumed is crushed: make it at least the length needed. */
    FRAME_BENDING_CAUTION_NOTCH = 12,      /**< "notch". A notch starts splits: cut it with a radius, on a sound piece, and never deeper. */
    FRAME_BENDING_CAUTION_SNOW_BASIS = 13, /**< "snow_basis". Snow is taken as a 50-year load (ASCE 7-16 and the code tables): bring a strength-level snow load of ASCE 7-22 down to 0.7 of itself first. */
    FRAME_BENDING_CAUTION_SPAN_TABLES = 14 /**< "span_tables". The code's span tables and the building official decide; where they give less, build to that. */
};

/** What a check of a member in bending leaves unchecked. */
typedef int32_t frame_bending_not_checked;
enum frame_bending_not_checked_values {
    FRAME_BENDING_UNCHECKED_SUPPORTS = 0,  /**< "supports". What carries the reactions: plates, posts, walls, hangers, footings. */
    FRAME_BENDING_UNCHECKED_CUTS = 1,      /**< "cuts". Notches, holes and birdsmouths but a notch that was given. */
    FRAME_BENDING_UNCHECKED_CONCENTRATED = 2, /**< "concentrated_load". Point loads and partial loads: loads are uniform over one simple span. */
    FRAME_BENDING_UNCHECKED_WIND = 3,      /**< "wind". Wind, uplift and earthquake. */
    FRAME_BENDING_UNCHECKED_VIBRATION = 4, /**< "vibration". Whether a floor feels lively underfoot. */
    FRAME_BENDING_UNCHECKED_SNOW_FORMS = 5, /**< "snow_forms". Unbalanced, drifted and sliding snow, and ice at eaves: the snow given on plan is taken as it is. */
    FRAME_BENDING_UNCHECKED_THRUST = 6,    /**< "thrust". The thrust of rafters, the force along them, and their ties. */
    FRAME_BENDING_UNCHECKED_BEARING = 7,   /**< "bearing". Bearing: no length was given; the length needed is in the answer. */
    FRAME_BENDING_UNCHECKED_TOTAL = 8,     /**< "total_deflection". Deflection in all, with creep: no limit was set for it. */
    FRAME_BENDING_UNCHECKED_SELF_WEIGHT = 9, /**< "self_weight". The member's own weight, unless it is part of the dead load given. */
    FRAME_BENDING_UNCHECKED_SLOPE = 10,    /**< "slope". The slope: the rafter is taken as level, with all loads on plan, as the code's tables do. */
    FRAME_BENDING_UNCHECKED_ROLLING = 11,  /**< "rolling". Bridging, blocking and end restraint by depth to breadth (NDS 4.4.1). */
    FRAME_BENDING_UNCHECKED_SIDE_HUNG = 12     /**< "side_hung". Members hung by fasteners in their sides, where the shear is greater (NDS 3.4.3.3). */
};

/** A joist or rafter on one simple span under uniform load. Give species, grade and size; or, for lumber the tables do not
 * have, its design values and size or width_in and depth_in. */
typedef struct frame_joist_check_in {
    uint32_t struct_size, struct_id;
    frame_joist_use use;     /**< required. What it is part of. */
    frame_size size;         /**< optional. Nominal size. */
    frame_species species;   /**< optional. Species or species group. */
    frame_grade grade;       /**< optional. Visual grade. */
    int32_t plies;           /**< 1 : 1..5. Joists side by side as one. */
    frame_service service;   /**< "wet for a deck, otherwise dry". Moisture in service. */
    frame_bool incised;      /**< "yes for a deck but of Southern Pine, otherwise no". Incised for pressure treatment. */
    frame_bool repetitive;   /**< "yes for single joists at 24 in or closer". Three or more alike share the load through sheathing (NDS 4.3.9). */
    frame_compression_edge compression_edge; /**< held. What holds the edge in compression. */
    frame_temperature temperature; /**< normal. How hot it gets for long. */
    double span_in;          /**< required : >0..1200. Clear span, on plan. */
    double spacing_in;       /**< 16 : >0..48. Centre to centre. */
    double live_psf;         /**< optional : 0..1000. Live load; for a rafter, roof live load on plan. */
    double dead_psf;         /**< "10 for a floor, rafter or deck, 5 for a ceiling" : 0..1000. Dead load; on the slope where a slope is given. */
    double snow_psf;         /**< optional : 0..1000. Snow, on plan. */
    double slope;            /**< optional : 0..4. Slope of a rafter, rise over run. */
    double bearing_in;       /**< 1.5 : >0..48. Length of bearing at each end (at least 1-1/2 on wood or metal by R502.6). */
    double deflection_limit; /**< "360 for a floor or deck, 240 for a ceiling, 180 for a rafter" : 1..10000. Span over this is the most it may sag under live load or snow. */
    double total_deflection_limit; /**< "240 for a floor or deck, otherwise none" : 1..10000. Span over this is the most it may sag in all, with creep. */
    double creep_factor;     /**< "1.5 dry, 2.0 wet" : 1..3. Long-term growth of the sag under dead load (NDS 3.5.2). */
    double unbraced_length_in; /**< optional : >0..1200. Distance between braces of a free compression edge; the span without it. */
    double width_in;         /**< optional : >0..60. True thickness of one ply, instead of size. */
    double depth_in;         /**< optional : >0..60. True depth of one ply, instead of size. */
    double fb_psi;           /**< optional : >0..20000. F_b, instead of species and grade. */
    double fv_psi;           /**< optional : >0..5000. F_v, with fb_psi. */
    double fc_perp_psi;      /**< optional : >0..10000. F_c-perp, with fb_psi. */
    double e_psi;            /**< optional : >0..1e7. E, with fb_psi. */
    double e_min_psi;        /**< optional : >0..1e7. E_min, with fb_psi, for a free compression edge. */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for. */
    int32_t spare;
} frame_joist_check_in;

/** How a joist holds. A ratio is the share used of what is allowed: up to 1 it holds. */
typedef struct frame_joist_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : bending_caution. Cautions. */
    uint64_t not_checked; /**< bits : bending_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_bool passes;    /**< Whether the ratio is at most 1. */
    frame_governing governs; /**< The check with the largest ratio. */
    frame_load_combination combination; /**< The combination of loads that governs bending. */
    double ratio;            /**< The largest of the ratios. */
    double bending_ratio;    /**< f_b over F_b'. */
    double shear_ratio;      /**< f_v over F_v'. */
    double bearing_ratio;    /**< f_c-perp over F_c-perp'. */
    double deflection_ratio; /**< The larger of the two ratios of deflection. */
    double deflection_live_ratio;  /**< Deflection under live load or snow over its limit. */
    double deflection_total_ratio; /**< Deflection in all, with creep, over its limit; not given without a limit. */
    double moment_lb_in;     /**< Largest bending moment of the governing combination, M. */
    double shear_lb;         /**< Shear of the combination that governs shear, V. */
    double reaction_lb;      /**< Largest reaction at each end, R. */
    double fb_actual_psi;    /**< Bending stress, f_b. */
    double fb_adjusted_psi;  /**< Adjusted bending design value, F_b'. */
    double fv_actual_psi;    /**< Shear stress, f_v. */
    double fv_adjusted_psi;  /**< Adjusted shear design value, F_v'. */
    double fc_perp_actual_psi;   /**< Bearing stress, f_c-perp. */
    double fc_perp_adjusted_psi; /**< Adjusted design value across the grain, F_c-perp'. */
    double e_adjusted_psi;       /**< Adjusted modulus of elasticity, E'. */
    double deflection_live_in;   /**< Deflection under live load or snow. */
    double deflection_total_in;  /**< Deflection in all, with creep. */
    double bearing_needed_in;    /**< Length of bearing that would just do. */
    double load_duration_factor;  /**< C_D of the governing combination. */
    double wet_service_factor;    /**< C_M on F_b. */
    double temperature_factor;    /**< C_t on F_b. */
    double beam_stability_factor; /**< C_L. */
    double size_factor;           /**< C_F on F_b. */
    double incising_factor;       /**< C_i on F_b. */
    double repetitive_member_factor; /**< C_r. */
    double slenderness_ratio;     /**< R_B; not given where C_L is 1 by rule. */
    double time_effect_factor; /**< Time effect factor, lambda, of the combination that governs bending; 1 in ASD. */
} frame_joist_check_out;

/** Checks a joist or rafter of sawn lumber on a simple span under uniform dead, live and snow load by NDS 2018, ASD or
 * LRFD: bending, shear, bearing, deflection, each under the combination of ASCE 7-16 2.4.1 that is worst for it, with
 * all factors of table 4.3.1. A rafter with a slope is checked along its true length, dead load on the slope, live load and
 * snow on plan. FRAME_REQUIRED when neither live load nor snow is given; FRAME_OUTSIDE_SCOPE where the slenderness R_B is over 50;
 * FRAME_REFUSED where repetitive use is claimed outside NDS 4.3.9. */
FRAME_CALCULATION(joist_check);

/** A joist or rafter whose longest span is wanted. Give species, grade and size; or design values and size or width_in and
 * depth_in. */
typedef struct frame_joist_span_in {
    uint32_t struct_size, struct_id;
    frame_joist_use use;     /**< required. What it is part of. */
    frame_size size;         /**< optional. Nominal size. */
    frame_species species;   /**< optional. Species or species group. */
    frame_grade grade;       /**< optional. Visual grade. */
    int32_t plies;           /**< 1 : 1..5. Joists side by side as one. */
    frame_service service;   /**< "wet for a deck, otherwise dry". Moisture in service. */
    frame_bool incised;      /**< "yes for a deck but of Southern Pine, otherwise no". Incised for pressure treatment. */
    frame_bool repetitive;   /**< "yes for single joists at 24 in or closer". Three or more alike share the load through sheathing (NDS 4.3.9). */
    frame_temperature temperature; /**< normal. How hot it gets for long. */
    int32_t spare;
    double spacing_in;       /**< 16 : >0..48. Centre to centre. */
    double live_psf;         /**< optional : 0..1000. Live load; for a rafter, roof live load on plan. */
    double dead_psf;         /**< "10 for a floor, rafter or deck, 5 for a ceiling" : 0..1000. Dead load; on the slope where a slope is given. */
    double snow_psf;         /**< optional : 0..1000. Snow, on plan. */
    double slope;            /**< optional : 0..4. Slope of a rafter, rise over run. */
    double bearing_in;       /**< 1.5 : >0..48. Length of bearing at each end, for bearing_span_in (at least 1-1/2 on wood or metal by R502.6). */
    double deflection_limit; /**< "360 for a floor or deck, 240 for a ceiling, 180 for a rafter" : 1..10000. Span over this is the most it may sag under live load or snow. */
    double total_deflection_limit; /**< optional : 1..10000. Span over this is the most it may sag in all, with creep; without it that does not count. */
    double creep_factor;     /**< "1.5 dry, 2.0 wet" : 1..3. Long-term growth of the sag under dead load (NDS 3.5.2). */
    double width_in;         /**< optional : >0..60. True thickness of one ply, instead of size. */
    double depth_in;         /**< optional : >0..60. True depth of one ply, instead of size. */
    double fb_psi;           /**< optional : >0..20000. F_b, instead of species and grade. */
    double fv_psi;           /**< optional : >0..5000. F_v, with fb_psi. */
    double fc_perp_psi;      /**< optional : >0..10000. F_c-perp, with fb_psi. */
    double e_psi;            /**< optional : >0..1e7. E, with fb_psi. */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for. */
    int32_t spare2;
} frame_joist_span_in;

/** The longest span of a joist. */
typedef struct frame_joist_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : bending_caution. Cautions. */
    uint64_t not_checked; /**< bits : bending_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_governing governs; /**< What makes the span no longer. */
    frame_load_combination combination; /**< The combination of loads that governs bending and shear. */
    int32_t spare;
    double span_in;            /**< Longest simple clear span, on plan, not rounded: the shortest of bending, shear and deflection. */
    double bending_span_in;    /**< Span at which bending stress is all that is allowed. */
    double shear_span_in;      /**< Span at which shear stress is all that is allowed. */
    double deflection_span_in; /**< Span at which it sags by its limit under live load or snow; not given without them. */
    double total_deflection_span_in; /**< Span at which it sags by its limit in all, with creep; not given without a limit. */
    double bearing_span_in;    /**< Span at which the bearing given or assumed is just enough: not part of span_in. */
    double bearing_needed_in;  /**< Length of bearing needed at span_in. */
    double fb_adjusted_psi;    /**< Adjusted bending design value, F_b'. */
    double fv_adjusted_psi;    /**< Adjusted shear design value, F_v'. */
    double fc_perp_adjusted_psi; /**< Adjusted design value across the grain, F_c-perp'. */
    double e_adjusted_psi;     /**< Adjusted modulus of elasticity, E'. */
    double load_duration_factor; /**< C_D of the governing combination. */
    double wet_service_factor; /**< C_M on F_b. */
    double size_factor;        /**< C_F on F_b. */
    double incising_factor;    /**< C_i on F_b. */
    double repetitive_member_factor; /**< C_r. */
    double time_effect_factor; /**< Time effect factor, lambda, of the combination that governs bending; 1 in ASD. */
} frame_joist_span_out;

/** Finds the longest simple span of a joist, rafter, ceiling or deck joist by calculation (NDS 2018, allowable stress design,
 * combinations of ASCE 7-16 2.4.1), in closed form for each criterion and not rounded. It goes by the rules of the code's span tables:
 * uniform load, compression edge held, deflection under live load or snow alone with E as tabulated, C_r where spacing is at most 24 in;
 * the tables' own limit of 26 ft is not applied. FRAME_REQUIRED when neither live load nor snow is given. */
FRAME_CALCULATION(joist_span);

FRAME_END

#endif
