/** @file strength.h
 * Does it hold: joists, rafters and beams of sawn lumber by the National Design Specification for Wood Construction
 * (NDS 2018, allowable stress design), and the longest span they may have.
 */
#ifndef FRAME_STRENGTH_H
#define FRAME_STRENGTH_H

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
    FRAME_GOVERNS_CUT = 9         /**< "cut". What a notch or hole leaves. */
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

/** How the plies of a column are fastened into one. */
typedef int32_t frame_column_fastening;
enum frame_column_fastening_values {
    FRAME_COLUMN_NAILED = 1, /**< "nailed". Nailed as NDS 15.3.3 asks for: K_f 0.6. */
    FRAME_COLUMN_BOLTED = 2  /**< "bolted". Bolted as NDS 15.3.4 asks for: K_f 0.75. */
};

/** Cautions that go with columns. */
typedef int32_t frame_column_caution;
enum frame_column_caution_values {
    FRAME_COLUMN_CAUTION_AS_ASSUMED = 0, /**< "as_assumed". Holds only with ends held in place, braces, service and load as given or assumed here, the load on the axis. */
    FRAME_COLUMN_CAUTION_STAMP = 1,      /**< "stamp". The design values hold for lumber with this grade stamp, not for unstamped, old, ripped or damaged lumber. */
    FRAME_COLUMN_CAUTION_MEMORY = 2,     /**< "from_memory". Rests on values recalled, no text seen: check them against the printed standard before relying on them. */
    FRAME_COLUMN_CAUTION_DOUBTFUL = 3,   /**< "doubtful". Sources differ about a design value used. */
    FRAME_COLUMN_CAUTION_SUPERSEDED = 4, /**< "superseded". A later supplement changed the values of this species. */
    FRAME_COLUMN_CAUTION_USER_VALUES = 5, /**< "user_values". Your design values are taken to include size, service and treatment: C_F, C_M and C_i are 1. */
    FRAME_COLUMN_CAUTION_PLIES = 6,      /**< "plies". Holds only with the nails or bolts of NDS 15.3 through all plies, over the whole length. */
    FRAME_COLUMN_CAUTION_POST = 7        /**< "post". A post needs a base and a cap that hold it in place, against sideways load and uplift too. */
};

/** What the check of a column leaves unchecked. */
typedef int32_t frame_column_not_checked;
enum frame_column_not_checked_values {
    FRAME_COLUMN_UNCHECKED_ENDS = 0,       /**< "ends". What it stands on and what it carries: plates and sills crush across the grain long before a column does. */
    FRAME_COLUMN_UNCHECKED_ECCENTRICITY = 1, /**< "eccentricity". Load off the axis, and side brackets. */
    FRAME_COLUMN_UNCHECKED_COMBINATIONS = 2, /**< "combinations". Other combinations of loads: give each with its own duration. */
    FRAME_COLUMN_UNCHECKED_LATERAL = 3,    /**< "lateral". Sideways load: none was given. */
    FRAME_COLUMN_UNCHECKED_UPLIFT = 4,     /**< "uplift". Uplift and the ties against it. */
    FRAME_COLUMN_UNCHECKED_DEFLECTION = 5, /**< "deflection". How far it bends sideways. */
    FRAME_COLUMN_UNCHECKED_CUTS = 6        /**< "cuts". Notches and holes. */
};

/** A column, post or stud with its load along the axis, and wind or other load on its narrow face. */
typedef struct frame_column_check_in {
    uint32_t struct_size, struct_id;
    frame_size size;         /**< optional. Nominal size of one ply. */
    frame_species species;   /**< optional. Species or species group. */
    frame_grade grade;       /**< optional. Visual grade. */
    int32_t plies;           /**< 1 : 1..5. Members fastened side by side into one. */
    frame_column_fastening fastening; /**< optional. How the plies are fastened; needed for two and more. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_bool repetitive;   /**< no. Three or more studs at most 24 in apart share sideways load through sheathing (NDS 4.3.9). */
    frame_temperature temperature; /**< normal. How hot it gets for long. */
    frame_load_duration load_duration; /**< ten years. The duration of the shortest load in this combination. */
    frame_bool weak_axis_held; /**< no. Sheathing on both edges holds it along its length against buckling across its thickness. */
    int32_t spare;
    double length_in;        /**< required : >0..1200. Clear height between supports. */
    double axial_lb;         /**< required : 0..1e6. Load along the axis, of one combination. */
    double lateral_plf;      /**< 0 : 0..1e5. Sideways load on a foot of its narrow face, of the same combination. */
    double weak_braces_in;   /**< optional : >0..1200. Distance between braces against buckling across its thickness; the length without it. */
    double strong_braces_in; /**< optional : >0..1200. Distance between braces against buckling across its width; the length without it. */
    double effective_length_factor; /**< 1 : 0.5..2.4. K_e by how the ends are held (NDS Appendix G): 1 for ends that may turn but not move. */
    double spacing_in;       /**< optional : >0..480. Centre to centre, for repetitive use. */
    double width_in;         /**< optional : >0..60. True thickness of one ply, instead of size. */
    double depth_in;         /**< optional : >0..60. True width of one ply, instead of size. */
    double fc_psi;           /**< optional : >0..20000. F_c, instead of species and grade. */
    double e_min_psi;        /**< optional : >0..1e7. E_min, with fc_psi. */
    double fb_psi;           /**< optional : >0..20000. F_b, with fc_psi, for sideways load. */
    frame_design_method method; /**< ASD. How safety is brought in: with LRFD give loads as factored, and time_effect_factor. */
    int32_t spare2;
    double time_effect_factor;  /**< optional : 0.6..1.25. Time effect factor, lambda, of this combination (NDS table N3); needed with LRFD. */
    double weak_lateral_plf;      /**< 0 : 0..1e5. Sideways load on a foot of its wide face, of the same combination. */
    double strong_eccentricity_in; /**< 0 : 0..48. How far from the axis the load stands, along its width. */
    double weak_eccentricity_in;  /**< 0 : 0..48. How far from the axis the load stands, along its thickness. */
    frame_species plate_species;  /**< optional. Species of the plate or sill of dimension lumber that it stands on, to check its crushing. */
    frame_bool plate_end;         /**< yes. It stands less than 3 in from the end of the plate: C_b is 1. */
    double plate_fc_perp_psi;     /**< optional : >0..10000. F_c-perp of the plate, instead of plate_species. */
    frame_bool truss_chord;       /**< no. A 2x4 or smaller chord in compression, dry, with structural panels of 3/8 in and more nailed to its narrow face: C_T (NDS 4.4.2). */
    int32_t spare3;
} frame_column_check_in;

/** How a column holds. A ratio is the share used of what is allowed: up to 1 it holds. */
typedef struct frame_column_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : column_caution. Cautions. */
    uint64_t not_checked; /**< bits : column_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_bool passes;    /**< Whether the ratio is at most 1. */
    frame_governing governs; /**< The check with the largest ratio. */
    int32_t spare;
    double ratio;             /**< The largest of the ratios. */
    double compression_ratio; /**< f_c over F_c'. */
    double combined_ratio;    /**< Bending and compression together (NDS 3.9.2, 15.4); not given without sideways load or load off the axis, nor for load on the narrow face alone where it would buckle under the load along the axis; else, where it would buckle, the share of that limit. */
    double cp;                /**< Column stability factor, C_P. */
    double fc_adjusted_psi;   /**< Adjusted compression design value, F_c'. */
    double capacity_lb;       /**< Load along the axis that it would just carry without sideways load. */
    double fc_actual_psi;     /**< Compression stress, f_c. */
    double fc_star_psi;       /**< F_c*: all factors but C_P. */
    double fb_actual_psi;     /**< Bending stress, f_b. */
    double fb_adjusted_psi;   /**< Adjusted bending design value, F_b'; not given without sideways load. */
    double slenderness_strong; /**< l_e/d across its width. */
    double slenderness_weak;   /**< l_e/d across its thickness, all plies; not given where that is held. */
    double ply_factor;         /**< K_f of the weak axis: 1 for one ply. */
    double load_duration_factor; /**< C_D. */
    double wet_service_factor; /**< C_M on F_c. */
    double size_factor;        /**< C_F on F_c. */
    double beam_stability_factor; /**< C_L, for the sideways load; not given without. */
    double time_effect_factor;  /**< Time effect factor, lambda; 1 in ASD. */
    double weak_fb_actual_psi;  /**< Bending stress of load on the wide face; not given without. */
    double weak_fb_adjusted_psi; /**< F_b' of load on the wide face; not given without such load or eccentricity. */
    double bearing_ratio;       /**< Crushing of the plate over what it bears; not given without a plate. */
    double plate_fc_perp_adjusted_psi; /**< F_c-perp' of the plate, C_b included; not given without a plate. */
    double buckling_stiffness_factor; /**< C_T on E_min; 1 but for a truss chord. */
} frame_column_check_out;

/** Checks a rectangular column, post or stud of sawn lumber by NDS 2018 3.6, 3.7, 3.9 and 15.3, allowable stress design: buckling
 * about both axes with the column stability factor C_P, plies with K_f on the weak axis, and sideways load on the narrow face
 * together with compression, load on the wide face and load off the axis too, and the plate under it. FRAME_OUTSIDE_SCOPE where l_e/d or R_B is over 50; FRAME_REQUIRED for plies without their fastening. */
FRAME_CALCULATION(column_check);

/* ---- beam_solve: any beam, any loads ---------------------------------------------------------------------------- */

/** What holds a beam where two spans meet or at its end. */
typedef int32_t frame_beam_support_kind;
enum frame_beam_support_kind_values {
    FRAME_SUPPORT_PINNED = 1, /**< "pinned" | "simple" | "roller". Held against moving up or down, free to turn. */
    FRAME_SUPPORT_FIXED = 2,  /**< "fixed" | "clamped". Held against moving and turning. */
    FRAME_SUPPORT_SPRING = 3, /**< "spring". On a spring: give spring_lb_per_in. */
    FRAME_SUPPORT_NONE = 4    /**< "none" | "free". Not held: a free end, or a place where the section changes. */
};

/** One support. As a tuple or array: kind, hinge, offset_in. */
typedef struct frame_beam_support {
    uint32_t struct_size, struct_id;
    frame_beam_support_kind kind; /**< pinned. What holds the beam here. */
    frame_bool hinge;             /**< no. The beam is spliced or hinged here, so that it carries no moment past this place. */
    double offset_in;             /**< 0 : -100..100. How far the support stands above (+) or below (-) the straight line, as measured. */
    double spring_lb_per_in;      /**< optional : >0..1e12. Stiffness of the spring under the beam. */
    double turning_spring_lb_in;  /**< optional : >0..1e15. Moment for a turn of one radian, where something resists turning. */
} frame_beam_support;
/** Sets up a support: every field not given. */
FRAME_ELEMENT(beam_support);

/** One load. Give one of plf (a spread load, even or changing evenly to to_plf), force_lb or moment_lb_in. As a tuple or array:
 * kind, span, at_in, to_in, plf, to_plf, force_lb, moment_lb_in. */
typedef struct frame_beam_load {
    uint32_t struct_size, struct_id;
    frame_load_kind kind; /**< dead. Kind of load; each kind is kept apart until the combinations are formed. */
    int32_t span;         /**< optional : 0..1000001. Span that at_in and to_in are measured in, from its left end: 1 is the first between supports, 0 the left overhang, one past the last the right one. Without it they are measured from the left end of the beam. */
    double at_in;         /**< optional : 0..1e9. Where the load stands or begins; a spread load without it begins at the left end. */
    double to_in;         /**< optional : >0..1e9. Where a spread load ends; without it at the right end of the span or beam. */
    double plf;           /**< optional : -1e7..1e7. Spread load at its beginning, down positive. */
    double to_plf;        /**< optional : -1e7..1e7. Spread load at its end; as at its beginning without it. */
    double force_lb;      /**< optional : -1e9..1e9. Point load, down positive. */
    double moment_lb_in;  /**< optional : -1e12..1e12. Couple, clockwise positive: the bending moment steps up by it. */
} frame_beam_load;
/** Sets up a load: every field not given. */
FRAME_ELEMENT(beam_load);

/** Cautions that go with the analysis of a beam. */
typedef int32_t frame_beam_caution;
enum frame_beam_caution_values {
    FRAME_BEAM_CAUTION_UPLIFT = 0,  /**< "uplift". A support is pulled upward: it must be tied down for that, or the beam lifts off and the answer does not hold. */
    FRAME_BEAM_CAUTION_SPLICES = 1, /**< "splices". Holds for a beam in one piece over its supports; where plies end over a support, say so with a hinge. */
    FRAME_BEAM_CAUTION_SNOW_BASIS = 2, /**< "snow_basis". Snow is taken as a 50-year load (ASCE 7-16 and the code tables): bring a strength-level snow load of ASCE 7-22 down to 0.7 of itself first. */
    FRAME_BEAM_CAUTION_LOWER_EDGE = 3, /**< "lower_edge". Where the moment is negative the lower edge is in compression: brace it, or check it as free. */
    FRAME_BEAM_CAUTION_LOADS = 4    /**< "local_loads". No load but those given. */
};

/** What the analysis of a beam leaves unchecked. */
typedef int32_t frame_beam_not_checked;
enum frame_beam_not_checked_values {
    FRAME_BEAM_UNCHECKED_STRENGTH = 0, /**< "strength". Whether the beam holds: stresses, bearing and limits of deflection. */
    FRAME_BEAM_UNCHECKED_PATTERN = 1,  /**< "live_load_patterns". Live load on some spans only (ASCE 7-16 4.3.3): the live load was left on all of them. */
    FRAME_BEAM_UNCHECKED_SNOW = 2,     /**< "partial_snow". Snow taken off some spans (ASCE 7-16 7.5), unbalanced, drifted and sliding snow: the snow is taken as given. */
    FRAME_BEAM_UNCHECKED_EARTHQUAKE = 3, /**< "earthquake". Earthquake, rain, earth and water: their combinations are not formed. */
    FRAME_BEAM_UNCHECKED_SUPPORTS = 4, /**< "supports". What carries the reactions. */
    FRAME_BEAM_UNCHECKED_DEFLECTION = 5, /**< "deflection". Deflection: e_psi and inertia_in4 were not given. */
    FRAME_BEAM_UNCHECKED_SHEAR_DEFLECTION = 6, /**< "shear_deflection". Deflection by shear: shear_stiffness_lb was not given. */
    FRAME_BEAM_UNCHECKED_SELF_WEIGHT = 7, /**< "self_weight". The beam's own weight, unless it is part of the dead load given. */
    FRAME_BEAM_UNCHECKED_MOVING = 8,   /**< "concentrated_live". The concentrated live load of a floor or roof, wherever it may stand. */
    FRAME_BEAM_UNCHECKED_SERVICE = 9   /**< "service_deflection". Deflection: under factored loads it says nothing; ask again with ASD. */
};

/** A beam of any number of spans. It begins with the left overhang, if any; distances are measured from its left end. */
typedef struct frame_beam_solve_in {
    uint32_t struct_size, struct_id;
    const double *spans_in;  /**< required : >0..1e6. Spans between supports, from left to right, centre to centre. */
    size_t span_count;       /**< count : 1..1e6. */
    const frame_beam_support *supports; /**< optional. Supports from left to right, one more than spans; all pinned without it. */
    size_t support_count;    /**< count : 0..1000001. */
    const frame_beam_load *loads; /**< optional. Loads besides those that lie on the whole beam. */
    size_t load_count;       /**< count : 0..1e6. */
    const double *span_inertias_in4; /**< optional : >0..1e9. Moment of inertia of each span, where they differ; overhangs take that of the span beside them. */
    size_t span_inertia_count; /**< count : 0..1e6. */
    frame_bool pattern;      /**< yes. Live and roof live load on whichever spans and overhangs make it worst (ASCE 7-16 4.3.3), not only on all at once. */
    frame_load_duration live_duration; /**< ten years. How long the live load lasts, for the load duration factors of the combinations. */
    double left_overhang_in; /**< 0 : 0..1e6. Length of beam past the left support. */
    double right_overhang_in; /**< 0 : 0..1e6. Length of beam past the right support. */
    double dead_plf;         /**< 0 : 0..1e7. Dead load on the whole beam. */
    double live_plf;         /**< 0 : 0..1e7. Live load on the whole beam. */
    double roof_live_plf;    /**< 0 : 0..1e7. Roof live load on the whole beam, on plan. */
    double snow_plf;         /**< 0 : 0..1e7. Snow on the whole beam, on plan. */
    double wind_plf;         /**< 0 : -1e7..1e7. Wind on the whole beam at strength level, down positive. */
    double e_psi;            /**< optional : >0..1e9. Modulus of elasticity, E; needed with inertia_in4 for deflections, offsets and springs. */
    double inertia_in4;      /**< optional : >0..1e9. Moment of inertia, I, of all spans that span_inertias_in4 does not name. */
    double shear_stiffness_lb; /**< optional : >0..1e15. G A', to let shear deflect the beam too; A' is 5/6 of the area of a rectangle. */
    double creep_factor;     /**< 1 : 1..3. Long-term growth of the deflection under dead load (NDS 3.5.2: 1.5 seasoned and dry, 2.0 otherwise). */
    frame_design_method method;      /**< ASD. How safety is brought in: with LRFD the loads are factored and no deflections are given. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
} frame_beam_solve_in;

/** What is worst anywhere on the beam, over all combinations and patterns. Moments are positive where they bend the beam
 * downward in the middle; deflections are positive downward, from the straight line; distances from the left end of the beam. */
typedef struct frame_beam_solve_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : beam_caution. Cautions. */
    uint64_t not_checked; /**< bits : beam_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the factors of the combinations. */
    frame_load_combination max_moment_combination; /**< Combination of the largest moment. */
    frame_load_combination min_moment_combination; /**< Combination of the least moment. */
    frame_load_combination shear_combination;      /**< Combination of the largest shear. */
    frame_load_combination full_combination;       /**< Combination with the largest load in all: the functions in pieces are those under it. */
    int32_t max_reaction_support;   /**< The support with the largest reaction, from 1. */
    int32_t min_reaction_support;   /**< The support with the least reaction, from 1. */
    int32_t spare;
    double length_in;               /**< Length of the beam, overhangs included. */
    double max_moment_lb_in;        /**< Largest moment. */
    double max_moment_at_in;        /**< Where it is. */
    double min_moment_lb_in;        /**< Least moment: over supports and in cantilevers it is negative. */
    double min_moment_at_in;        /**< Where it is. */
    double max_shear_lb;            /**< Shear that is largest in size, without its sign. */
    double max_shear_at_in;         /**< Where it is. */
    double max_reaction_lb;         /**< Largest reaction. */
    double min_reaction_lb;         /**< Least reaction; negative pulls the support upward. */
    double max_deflection_in;       /**< Largest deflection downward, dead load included; not given without E and I. */
    double max_deflection_at_in;    /**< Where it is. */
    double min_deflection_in;       /**< Largest deflection upward, as a negative number. */
    double min_deflection_at_in;    /**< Where it is. */
    double transient_deflection_in; /**< Deflection without the dead load that is largest in size: negative upward. */
    double transient_deflection_at_in; /**< Where it is. */
} frame_beam_solve_out;

/** A support of the beam and what it carries. */
typedef struct frame_beam_solve_support {
    uint32_t struct_size, struct_id;
    double at_in;            /**< Where it is. */
    double reaction_lb;      /**< Reaction that is largest in size, upward positive. */
    double max_reaction_lb;  /**< Largest reaction over all combinations and patterns. */
    double min_reaction_lb;  /**< Least reaction. */
    double max_moment_lb_in; /**< Largest moment in the beam here. */
    double min_moment_lb_in; /**< Least moment in the beam here. */
    double max_couple_lb_in; /**< Largest couple the support puts on the beam, clockwise positive: not 0 where it resists turning. */
    double min_couple_lb_in; /**< Least couple. */
    frame_beam_support_kind kind; /**< What it is. */
    int32_t spare;
} frame_beam_solve_support;

/** A span or overhang of the beam. */
typedef struct frame_beam_solve_span {
    uint32_t struct_size, struct_id;
    double from_in;              /**< Where it begins. */
    double length_in;            /**< Its length. */
    double max_moment_lb_in;     /**< Largest moment. */
    double max_moment_at_in;     /**< Where it is. */
    double min_moment_lb_in;     /**< Least moment. */
    double min_moment_at_in;     /**< Where it is. */
    double max_shear_lb;         /**< Largest shear. */
    double max_shear_at_in;      /**< Where it is. */
    double min_shear_lb;         /**< Least shear. */
    double min_shear_at_in;      /**< Where it is. */
    double max_deflection_in;    /**< Largest deflection downward. */
    double max_deflection_at_in; /**< Where it is. */
    double min_deflection_in;    /**< Largest deflection upward, as a negative number. */
    double min_deflection_at_in; /**< Where it is. */
    double transient_deflection_in;    /**< Deflection without the dead load that is largest in size. */
    double transient_deflection_at_in; /**< Where it is. */
    int32_t number;              /**< 1 for the first between supports, 0 for the left overhang, one past the last for the right one. */
    int32_t spare;
} frame_beam_solve_span;

/** A combination of loads and what is worst under it, over all patterns. */
typedef struct frame_beam_solve_combination {
    uint32_t struct_size, struct_id;
    frame_load_combination combination; /**< Which. */
    int32_t spare;
    double load_duration_factor; /**< C_D: that of the shortest load in it (NDS 2.3.2); 1 in LRFD. */
    double load_lb;              /**< All loads of the combination together. */
    double max_moment_lb_in;     /**< Largest moment. */
    double max_moment_at_in;     /**< Where it is. */
    double min_moment_lb_in;     /**< Least moment. */
    double min_moment_at_in;     /**< Where it is. */
    double max_shear_lb;         /**< Shear that is largest in size. */
    double max_shear_at_in;      /**< Where it is. */
    double max_reaction_lb;      /**< Largest reaction. */
    double min_reaction_lb;      /**< Least reaction. */
    double time_effect_factor;   /**< Time effect factor, lambda (NDS table N3); 1 in allowable stress design. */
} frame_beam_solve_combination;

/** A stretch of the beam on which shear, moment and deflection are one polynomial each, of the distance t from its beginning, under
 * the combination with the largest load and with every load on: V = shear_0 + shear_1 t + ... */
typedef struct frame_beam_solve_piece {
    uint32_t struct_size, struct_id;
    double from_in;  /**< Where it begins. */
    double to_in;    /**< Where it ends. */
    double shear_0;  /**< Shear where it begins, lb. */
    double shear_1;  /**< Coefficient of t, lb/in. */
    double shear_2;  /**< Coefficient of t squared. */
    double moment_0; /**< Moment where it begins, lb-in. */
    double moment_1; /**< Coefficient of t, lb. */
    double moment_2; /**< Coefficient of t squared. */
    double moment_3; /**< Coefficient of the cube of t. */
    double deflection_0; /**< Deflection where it begins, in; not given without E and I. */
    double deflection_1; /**< Coefficient of t. */
    double deflection_2; /**< Coefficient of t squared. */
    double deflection_3; /**< Coefficient of the cube of t. */
    double deflection_4; /**< Coefficient of the fourth power of t. */
    double deflection_5; /**< Coefficient of the fifth power of t. */
} frame_beam_solve_piece;

/** Solves a beam exactly by the elastic theory of straight beams: any number of spans, overhangs, hinges and changes of section;
 * supports pinned, fixed, on springs, or standing high or low; loads spread evenly or in trapezoids and triangles, point loads and
 * couples. Loads are kept apart by kind and combined for ASD or LRFD (ASCE 7 2.4.1, 2.3.1); live and roof live load are put
 * on the spans that make each figure worst. Extremes are the roots of the polynomials, not samples. FRAME_UNSTABLE names the place
 * where the beam is a mechanism; FRAME_REQUIRED when an offset, a spring or shear_stiffness_lb is given without e_psi and
 * inertia_in4. */
FRAME_ANSWER(beam_solve);
/** At each support the reaction that is largest in size over all combinations and patterns; negative pulls the support upward. */
FRAME_ANSWER_NUMBERS(beam_solve, reactions_lb);
/** The largest reaction of each support. */
FRAME_ANSWER_NUMBERS(beam_solve, max_reactions_lb);
/** The least reaction of each support. */
FRAME_ANSWER_NUMBERS(beam_solve, min_reactions_lb);
/** The places where the moment is zero between the ends, under the combination with the largest load and with every load on. */
FRAME_ANSWER_NUMBERS(beam_solve, inflections_in);
/** The supports, from left to right. */
FRAME_ANSWER_LIST(beam_solve, support, supports);
/** The spans and overhangs, from left to right. */
FRAME_ANSWER_LIST(beam_solve, span, spans);
/** The combinations that apply, in the order of the standard. */
FRAME_ANSWER_LIST(beam_solve, combination, combinations);
/** Shear, moment and deflection as functions, piece by piece. */
FRAME_ANSWER_LIST(beam_solve, piece, pieces);

/** Shear, moment and deflection at one place of a beam. */
typedef struct frame_beam_solve_point {
    uint32_t struct_size, struct_id;
    double max_shear_lb;      /**< Largest shear, over combinations and patterns; at a load the larger of both sides. */
    double min_shear_lb;      /**< Least shear. */
    double max_moment_lb_in;  /**< Largest moment. */
    double min_moment_lb_in;  /**< Least moment. */
    double max_deflection_in; /**< Largest deflection downward; not given without E and I. */
    double min_deflection_in; /**< Largest deflection upward, as a negative number. */
} frame_beam_solve_point;

/** As frame_beam_solve_at_point, for a point of a stated size. */
FRAME_API frame_status frame_beam_solve_at_point_sized(const frame_beam_solve *answer, double x_in,
                                                       frame_beam_solve_point *point, size_t point_size);
/** Gives the envelopes of shear, moment and deflection at a distance from the left end of the beam. */
static inline frame_status frame_beam_solve_at_point(const frame_beam_solve *answer, double x_in,
                                                     frame_beam_solve_point *point) {
    return frame_beam_solve_at_point_sized(answer, x_in, point, sizeof *point);
}
/** Draws a beam with its loads and, below them, the envelopes of shear, moment and deflection with their extremes. Free the drawing with
 * frame_drawing_free. FRAME_TOO_LARGE beyond 24 spans. */
FRAME_API frame_status frame_beam_solve_drawing(const frame_beam_solve *answer, frame_drawing **drawing);

/* ---- member_check: any beam, any loads, against the NDS -------------------------------------------------------- */

/** What a member is made of. */
typedef int32_t frame_product;
enum frame_product_values {
    FRAME_PRODUCT_SAWN = 1,     /**< "sawn lumber" | "sawn" | "lumber" | "timber". Sawn lumber and timber (NDS chapter 4). */
    FRAME_PRODUCT_GLULAM = 2,   /**< "glulam" | "glued laminated timber". Softwood glued laminated timber, laminations lying flat (NDS chapter 5). */
    FRAME_PRODUCT_COMPOSITE = 3 /**< "structural composite lumber" | "SCL" | "composite". Structural composite lumber, by values given (NDS chapter 8). */
};

/** A published class of glued laminated timber (NDS Supplement table 5A). */
typedef int32_t frame_glulam;
enum frame_glulam_values {
    FRAME_GLULAM_16F_1_3E = 1, /**< "16F-1.3E". Stress class. */
    FRAME_GLULAM_20F_1_5E = 2, /**< "20F-1.5E". Stress class. */
    FRAME_GLULAM_24F_1_7E = 3, /**< "24F-1.7E". Stress class. */
    FRAME_GLULAM_24F_1_8E = 4, /**< "24F-1.8E". Stress class. */
    FRAME_GLULAM_26F_1_9E = 5, /**< "26F-1.9E". Stress class. */
    FRAME_GLULAM_28F_2_1E = 6, /**< "28F-2.1E SP" | "28F-2.1E". Stress class, Southern Pine. */
    FRAME_GLULAM_30F_2_1E = 7, /**< "30F-2.1E SP" | "30F-2.1E". Stress class, Southern Pine. */
    FRAME_GLULAM_24F_V4 = 8,   /**< "24F-V4". Combination of Douglas Fir-Larch, stronger below than above. */
    FRAME_GLULAM_24F_V8 = 9    /**< "24F-V8". Combination of Douglas Fir-Larch, as strong above as below. */
};

/** An edge of a member that lies level. */
typedef int32_t frame_member_edge;
enum frame_member_edge_values {
    FRAME_MEMBER_LOWER = 1, /**< "lower" | "bottom". The lower edge, in tension where the beam sags. */
    FRAME_MEMBER_UPPER = 2  /**< "upper" | "top". The upper edge. */
};

/** What was cut out of a member. As a tuple or array: at_in, depth_in, length_in, edge, hole_in, height_in. */
typedef struct frame_member_cut {
    uint32_t struct_size, struct_id;
    double at_in;        /**< required : 0..1e6. Where it is, by its middle, from the left end of the beam. */
    double depth_in;     /**< optional : >0..60. Depth of a notch. */
    double length_in;    /**< 1 : >0..1200. Length of a notch along the beam. */
    frame_member_edge edge; /**< lower. The edge a notch is cut in. */
    int32_t spare;
    double hole_in;      /**< optional : >0..60. Diameter of a round hole through the breadth, instead of depth_in. */
    double height_in;    /**< optional : >0..60. Height of the hole's centre above the lower edge; without it the middle. */
} frame_member_cut;
/** Sets up a cut: every field not given. */
FRAME_ELEMENT(member_cut);

/** Cautions that go with the check of a member. */
typedef int32_t frame_member_caution;
enum frame_member_caution_values {
    FRAME_MEMBER_CAUTION_AS_ASSUMED = 0,  /**< "as_assumed". Holds only with supports, braces, bearing, service and loads as given or assumed here. */
    FRAME_MEMBER_CAUTION_STAMP = 1,       /**< "stamp". The design values hold for material with this stamp, not for unstamped, old, ripped or damaged pieces. */
    FRAME_MEMBER_CAUTION_MEMORY = 2,      /**< "from_memory". Rests on values recalled, no text seen: check them against the printed standard before relying on them. */
    FRAME_MEMBER_CAUTION_DOUBTFUL = 3,    /**< "doubtful". Sources differ about a design value used. */
    FRAME_MEMBER_CAUTION_SUPERSEDED = 4,  /**< "superseded". A later supplement changed the values of this species. */
    FRAME_MEMBER_CAUTION_USER_VALUES = 5, /**< "user_values". Your design values are taken to include size, service and treatment: C_F, C_M and C_i are 1. */
    FRAME_MEMBER_CAUTION_PLIES = 6,       /**< "plies". Plies must be fastened together, run unbroken over the supports or meet at a hinge, and each must bear. */
    FRAME_MEMBER_CAUTION_FLAT = 7,        /**< "flat_plies". Plies lying flat on one another do not act as one block unless glued: their strengths are summed. */
    FRAME_MEMBER_CAUTION_UPLIFT = 8,      /**< "uplift". A support is pulled upward: tie it down, or the beam lifts off and the answer does not hold. */
    FRAME_MEMBER_CAUTION_ROLLING = 9,     /**< "rolling". At every support the member must be kept from rolling over; the compression edge is taken as held there. */
    FRAME_MEMBER_CAUTION_CUTS = 10,       /**< "cuts". Cuts are checked on what they leave; they start splits all the same: cut with a radius, on sound wood, and never deeper. */
    FRAME_MEMBER_CAUTION_SNOW_BASIS = 11, /**< "snow_basis". Snow is taken as a 50-year load (ASCE 7-16 and the code tables): say load_edition "ASCE 7-22" for a strength-level one. */
    FRAME_MEMBER_CAUTION_LOADS = 12,      /**< "local_loads". No load but those given. */
    FRAME_MEMBER_CAUTION_EDGE_HELD = 13,  /**< "edge_held". Cripples, a loose plate or hung ceilings do not hold a compression edge: it must be sheathed or tied along its length. */
    FRAME_MEMBER_CAUTION_TURNED_OVER = 14 /**< "turned_over". Glued laminated timber is stronger with its marked upper side up: turned over it holds less. */
};

/** What the check of a member leaves unchecked. */
typedef int32_t frame_member_not_checked;
enum frame_member_not_checked_values {
    FRAME_MEMBER_UNCHECKED_SUPPORTS = 0,   /**< "supports". What carries the reactions. */
    FRAME_MEMBER_UNCHECKED_BEARING = 1,    /**< "bearing". Bearing: no length was given; the length needed is in the answer. */
    FRAME_MEMBER_UNCHECKED_CUTS = 2,       /**< "cuts". Notches, holes and tapers but those given. */
    FRAME_MEMBER_UNCHECKED_VIBRATION = 3,  /**< "vibration". Whether a floor feels lively underfoot. */
    FRAME_MEMBER_UNCHECKED_SNOW_FORMS = 4, /**< "snow_forms". Unbalanced, drifted and sliding snow, and snow taken off some spans: the snow is taken as given. */
    FRAME_MEMBER_UNCHECKED_PATTERN = 5,    /**< "live_load_patterns". Live load on some spans only: it was left on all of them. */
    FRAME_MEMBER_UNCHECKED_MOVING = 6,     /**< "concentrated_live". The concentrated live load of a floor or roof, wherever it may stand. */
    FRAME_MEMBER_UNCHECKED_EARTHQUAKE = 7, /**< "earthquake". Earthquake, rain, earth and water. */
    FRAME_MEMBER_UNCHECKED_SELF_WEIGHT = 8, /**< "self_weight". The member's own weight, unless it is part of the dead load given. */
    FRAME_MEMBER_UNCHECKED_AXIAL = 9,      /**< "axial". Force along the member, and load sideways. */
    FRAME_MEMBER_UNCHECKED_SHEAR_DEFLECTION = 10, /**< "shear_deflection". Deflection by shear, but for what E as published has in it. */
    FRAME_MEMBER_UNCHECKED_SIDE_HUNG = 11, /**< "side_hung". Members hung by fasteners in their sides, where the shear is greater (NDS 3.4.3.3). */
    FRAME_MEMBER_UNCHECKED_TOTAL = 12,     /**< "total_deflection". Deflection in all, with creep: no limit was set for it. */
    FRAME_MEMBER_UNCHECKED_WIND = 13       /**< "wind". Wind: none was given. */
};

/** A beam of any number of spans, what it is made of, what holds its edges and what was cut out of it. Distances are measured from
 * its left end. Give species, grade and size; or, for a glulam, its class and its true size; or design values and the true size. */
typedef struct frame_member_check_in {
    uint32_t struct_size, struct_id;
    const double *spans_in;  /**< required : >0..1e5. Spans between supports, from left to right, centre to centre of bearing. */
    size_t span_count;       /**< count : 1..200. */
    const frame_beam_support *supports; /**< optional. Supports from left to right, one more than spans; all pinned without it. */
    size_t support_count;    /**< count : 0..201. */
    const frame_beam_load *loads; /**< optional. Loads besides those that lie on the whole beam. */
    size_t load_count;       /**< count : 0..10000. */
    const double *bearings_in; /**< optional : >0..48. Length of bearing at each support, from left to right, or one for all; without it bearing is not checked. */
    size_t bearing_count;    /**< count : 0..201. */
    const double *upper_braces_in; /**< optional : 0..1e6. Places where a free upper edge is braced; it is held over every support too. */
    size_t upper_brace_count; /**< count : 0..1000. */
    const double *lower_braces_in; /**< optional : 0..1e6. Places where a free lower edge is braced; it is held over every support too. */
    size_t lower_brace_count; /**< count : 0..1000. */
    const frame_member_cut *cuts; /**< optional. Notches and holes. */
    size_t cut_count;        /**< count : 0..100. */
    frame_product product;   /**< "glulam where a class of it is given, otherwise sawn lumber". What it is made of. */
    frame_glulam glulam;     /**< optional. Class of glued laminated timber, with width_in and depth_in. */
    frame_size size;         /**< optional. Nominal size of one ply. */
    frame_species species;   /**< optional. Species or species group. */
    frame_grade grade;       /**< optional. Visual grade. */
    int32_t plies;           /**< 1 : 1..8. Members acting together. */
    frame_turned turned;     /**< on edge. How it is turned to the load. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_bool repetitive;   /**< no. Three or more at most 24 in apart, or three plies and more, share the load through sheathing. */
    frame_temperature temperature;     /**< normal. How hot it gets for long. */
    frame_compression_edge upper_edge; /**< free. What holds the upper edge, in compression where the beam sags. */
    frame_compression_edge lower_edge; /**< free. What holds the lower edge, in compression over inner supports, in cantilevers and under uplift. */
    frame_load_duration live_duration; /**< ten years. How long the live load lasts. */
    frame_design_method method;        /**< ASD. How safety is brought in. */
    frame_load_edition load_edition;   /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    frame_bool pattern;      /**< yes. Live and roof live load on whichever spans make it worst (ASCE 7-16 4.3.3). */
    frame_bool shear_at_depth; /**< no. Leave the spread load within the depth of each support's face out of the shear (NDS 3.4.3.1): only for bearing below and load above. */
    frame_bool self_weight;  /**< no. Add the member's own weight, by its specific gravity. */
    int32_t spare;
    double left_overhang_in; /**< 0 : 0..1e5. Length of beam past the left support. */
    double right_overhang_in; /**< 0 : 0..1e5. Length of beam past the right support. */
    double dead_plf;         /**< required : 0..1e6. Dead load on the whole beam; 0 must be said. */
    double live_plf;         /**< 0 : 0..1e6. Live load on the whole beam. */
    double roof_live_plf;    /**< 0 : 0..1e6. Roof live load on the whole beam, on plan. */
    double snow_plf;         /**< 0 : 0..1e6. Snow on the whole beam, on plan. */
    double wind_plf;         /**< 0 : -1e6..1e6. Wind on the whole beam at strength level, down positive. */
    double spacing_in;       /**< optional : >0..480. Centre to centre, for repetitive use. */
    double deflection_limit; /**< 360 : 1..10000. Span over this is the most it may sag without its dead load; twice the length counts for an overhang. */
    double total_deflection_limit; /**< 240 : 1..10000. Span over this is the most it may sag in all, with creep. */
    double creep_factor;     /**< "1.5 dry, 2.0 wet" : 1..3. Long-term growth of the sag under dead load (NDS 3.5.2). */
    double width_in;         /**< optional : >0..60. True thickness of one ply, instead of size. */
    double depth_in;         /**< optional : >0..120. True width of one ply (its depth on edge), instead of size. */
    double fb_psi;           /**< optional : >0..20000. F_b, instead of species and grade. */
    double fb_negative_psi;  /**< optional : >0..20000. F_b where the upper edge is in tension, for a glulam of unlike sides, with fb_psi. */
    double fv_psi;           /**< optional : >0..5000. F_v, with fb_psi. */
    double fc_perp_psi;      /**< optional : >0..10000. F_c-perp, with fb_psi. */
    double e_psi;            /**< optional : >0..1e7. E, with fb_psi. */
    double e_min_psi;        /**< optional : >0..1e7. E_min against buckling sideways, with fb_psi, for a free compression edge. */
    double specific_gravity; /**< optional : >0..1.5. Specific gravity, with fb_psi, for self_weight. */
    double volume_exponent;  /**< optional : 0.01..1. Exponent of C_V: 0.1 for glulam, 0.05 of Southern Pine; for structural composite lumber the maker's, without which C_V is 1. */
    double volume_depth_in;  /**< 12 : 1..60. Depth at which the volume factor of structural composite lumber is 1. */
} frame_member_check_in;

/** How it holds. A ratio is the share used of what is allowed: up to 1 it holds. */
typedef struct frame_member_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : member_caution. Cautions. */
    uint64_t not_checked; /**< bits : member_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_bool passes;    /**< Whether the ratio is at most 1. */
    frame_governing governs; /**< The check with the largest ratio. */
    frame_load_combination combination; /**< The combination of loads that governs bending. */
    frame_load_combination shear_combination; /**< The combination of loads that governs shear. */
    frame_member_edge compressed; /**< The edge in compression where bending governs. */
    double ratio;            /**< The largest of the ratios. */
    double bending_ratio;    /**< f_b over F_b', where it is largest. */
    double shear_ratio;      /**< f_v over F_v', where it is largest. */
    double bearing_ratio;    /**< f_c-perp over F_c-perp', at the support where it is largest; not given without lengths of bearing. */
    double deflection_ratio; /**< The largest ratio of deflection. */
    double deflection_live_ratio;  /**< Deflection without the dead load over its limit, largest of all spans. */
    double deflection_total_ratio; /**< Deflection in all, with creep, over its limit, largest of all spans. */
    double cut_ratio;        /**< The largest ratio at a notch or hole; not given without any. */
    double bending_at_in;    /**< Where bending governs. */
    double moment_lb_in;     /**< Moment there, M; negative where the upper edge is in tension. */
    double shear_at_in;      /**< Where shear governs. */
    double shear_lb;         /**< Shear there, V, without its sign. */
    double max_reaction_lb;  /**< Largest reaction of any support, as factored. */
    double min_reaction_lb;  /**< Least reaction of any support; negative pulls it upward. */
    double fb_actual_psi;    /**< Bending stress, f_b. */
    double fb_adjusted_psi;  /**< Adjusted bending design value, F_b'. */
    double fv_actual_psi;    /**< Shear stress, f_v. */
    double fv_adjusted_psi;  /**< Adjusted shear design value, F_v'. */
    double fc_perp_adjusted_psi; /**< Adjusted design value across the grain, F_c-perp', without C_b. */
    double e_adjusted_psi;       /**< Adjusted modulus of elasticity, E'. */
    double unbraced_length_in;   /**< Distance between the braces around the place where bending governs; not given where C_L is 1 by rule. */
    double effective_length_in;  /**< Effective length, l_e; not given where C_L is 1 by rule. */
    double slenderness_ratio;    /**< R_B; not given where C_L is 1 by rule. */
    double beam_stability_factor; /**< C_L. */
    double volume_factor;        /**< C_V; 1 for sawn lumber. */
    double load_duration_factor; /**< C_D of the combination that governs bending; 1 in LRFD. */
    double time_effect_factor;   /**< Time effect factor, lambda, of the combination that governs bending; 1 in ASD. */
    double shear_load_duration_factor; /**< C_D of the combination that governs shear; 1 in LRFD. */
    double size_factor;          /**< C_F on F_b. */
    double repetitive_member_factor; /**< C_r. */
    double section_modulus_in3;  /**< Section modulus, S. */
    double inertia_in4;          /**< Moment of inertia, I. */
    double dead_plf;             /**< Dead load on the whole beam, own weight included if it was asked for. */
    double frequency_hz;         /**< First natural frequency under the dead load, of one simple span evenly loaded; no verdict goes with it. */
} frame_member_check_out;

/** A span or overhang, as checked. */
typedef struct frame_member_check_span {
    uint32_t struct_size, struct_id;
    int32_t number;              /**< 1 for the first between supports, 0 for the left overhang, one past the last for the right one. */
    int32_t spare;
    double from_in;              /**< Where it begins. */
    double length_in;            /**< Its length. */
    double max_moment_lb_in;     /**< Largest moment, over the combinations. */
    double min_moment_lb_in;     /**< Least moment. */
    double max_shear_lb;         /**< Largest shear without its sign. */
    double bending_ratio;        /**< f_b over F_b', largest on this span. */
    double shear_ratio;          /**< f_v over F_v'. */
    double deflection_live_in;   /**< Deflection without the dead load that is largest in size. */
    double deflection_total_in;  /**< Deflection in all that is largest in size, with creep; negative upward. */
    double deflection_live_limit_in;  /**< The most it may be without the dead load. */
    double deflection_total_limit_in; /**< The most it may be in all. */
    double deflection_live_ratio;  /**< Deflection without the dead load over its limit. */
    double deflection_total_ratio; /**< Deflection in all over its limit. */
} frame_member_check_span;

/** A support, as checked. */
typedef struct frame_member_check_support {
    uint32_t struct_size, struct_id;
    double at_in;             /**< Where it is. */
    double max_reaction_lb;   /**< Largest reaction, as factored. */
    double min_reaction_lb;   /**< Least reaction; negative pulls it upward. */
    double bearing_in;        /**< Length of bearing; not given without one. */
    double bearing_area_factor; /**< C_b: above 1 for short bearings away from the ends. */
    double fc_perp_actual_psi;   /**< Bearing stress, f_c-perp; not given without a length. */
    double fc_perp_adjusted_psi; /**< F_c-perp', C_b included. */
    double bearing_ratio;     /**< f_c-perp over F_c-perp'; not given without a length. */
    double bearing_needed_in; /**< Length of bearing that would just do, with C_b 1. */
} frame_member_check_support;

/** A stretch of the beam between two places where the edge in compression is held, where there is compression in it. */
typedef struct frame_member_check_stretch {
    uint32_t struct_size, struct_id;
    frame_member_edge edge;   /**< The edge. */
    frame_load_combination combination; /**< The combination that governs it. */
    double from_in;           /**< Where it begins. */
    double to_in;             /**< Where it ends. */
    double at_in;             /**< Where the moment that governs is. */
    double moment_lb_in;      /**< That moment. */
    double effective_length_in; /**< Effective length, l_e; not given where C_L is 1 by rule. */
    double slenderness_ratio; /**< R_B; not given where C_L is 1 by rule. */
    double beam_stability_factor; /**< C_L. */
    double fb_adjusted_psi;   /**< F_b'. */
    double bending_ratio;     /**< f_b over F_b'. */
} frame_member_check_stretch;

/** A notch or hole, as checked. */
typedef struct frame_member_check_cut {
    uint32_t struct_size, struct_id;
    int32_t number;           /**< Its place in cuts, from 1. */
    frame_bool at_support;    /**< Whether it is cut over a support or an end. */
    double at_in;             /**< Where it is. */
    double moment_lb_in;      /**< Moment that governs there. */
    double shear_lb;          /**< Shear that governs there. */
    double net_section_modulus_in3; /**< Section modulus of what it leaves. */
    double net_depth_in;      /**< Depth of what it leaves; of a hole the depth less its diameter. */
    double bending_ratio;     /**< Stress in what it leaves over F_b'. */
    double shear_ratio;       /**< Shear stress in what it leaves over F_v'. */
} frame_member_check_cut;

/** Checks a beam of any spans, supports and loads by NDS 2018, ASD or LRFD: beam_solve's exact envelopes under every combination,
 * bending stretch by stretch between the braces of whichever edge is in compression (C_L by the effective lengths of table 3.3.3),
 * shear, bearing at each support, deflection of each span, and what notches and holes leave. Sawn lumber by the tables, glued
 * laminated timber by published classes, all by values given. FRAME_OUTSIDE_SCOPE where R_B is over 50, a notch or hole is larger than
 * the standard's limits, or a cut would need the maker's word; FRAME_UNSTABLE where it is not supported; FRAME_IMPOSSIBLE where bearings
 * are longer than the beam. */
FRAME_ANSWER(member_check);
/** The spans and overhangs, from left to right. */
FRAME_ANSWER_LIST(member_check, span, spans);
/** The supports, from left to right. */
FRAME_ANSWER_LIST(member_check, support, supports);
/** The stretches between braces, those of the upper edge first. */
FRAME_ANSWER_LIST(member_check, stretch, stretches);
/** The notches and holes. */
FRAME_ANSWER_LIST(member_check, cut, cuts);

/* ---- joist_sizes: which joist or rafter to buy ------------------------------------------------------------------ */

/** A choice of lumber for joists. Without a size, give its design values and its true size. As a tuple or array: size, species, grade,
 * spacing_in, price_per_ft. */
typedef struct frame_joist_choice {
    uint32_t struct_size, struct_id;
    frame_size size;       /**< optional. Nominal size. */
    frame_species species; /**< optional. Species; that of the call without it. */
    frame_grade grade;     /**< optional. Visual grade; that of the call without it. */
    int32_t spare;
    double spacing_in;     /**< optional : >0..48. Centre to centre; without it each of the call's spacings is tried. */
    double price_per_ft;   /**< optional : 0..1e6. Price of a foot, in the user's money. */
    double width_in;       /**< optional : >0..60. True thickness, instead of size. */
    double depth_in;       /**< optional : >0..60. True depth, instead of size. */
    double fb_psi;         /**< optional : >0..20000. F_b, instead of species and grade. */
    double fv_psi;         /**< optional : >0..5000. F_v, with fb_psi. */
    double fc_perp_psi;    /**< optional : >0..10000. F_c-perp, with fb_psi. */
    double e_psi;          /**< optional : >0..1e7. E, with fb_psi. */
    const char *name;      /**< optional. Name of the lumber. */
} frame_joist_choice;
/** Sets up a choice: every field not given. */
FRAME_ELEMENT(joist_choice);

/** Cautions that go with the choice of joists. */
typedef int32_t frame_joist_sizes_caution;
enum frame_joist_sizes_caution_values {
    FRAME_JOIST_SIZES_CAUTION_BOARD_FEET = 0, /**< "board_feet". Ranked by board feet, as not every choice had its price. */
    FRAME_JOIST_SIZES_CAUTION_NONE = 1,       /**< "none_holds". None of the choices holds. */
    FRAME_JOIST_SIZES_CAUTION_MEMORY = 2,     /**< "from_memory". The best choice rests on values recalled, no text seen. */
    FRAME_JOIST_SIZES_CAUTION_CODE = 3,       /**< "span_tables". The code's span tables and the building official decide; where they give less, build to that. */
    FRAME_JOIST_SIZES_CAUTION_SHEATHING = 4   /**< "sheathing". A wider spacing may need thicker sheathing: its price is not in the ranking. */
};
/** What the choice of joists leaves unchecked. */
typedef int32_t frame_joist_sizes_not_checked;
enum frame_joist_sizes_not_checked_values {
    FRAME_JOIST_SIZES_UNCHECKED_LOCAL = 0,    /**< "local_loads". Point loads, walls, tubs, wind, drifted and sliding snow. */
    FRAME_JOIST_SIZES_UNCHECKED_CUTS = 1,     /**< "cuts". Notches, holes and birdsmouths. */
    FRAME_JOIST_SIZES_UNCHECKED_SUPPORTS = 2, /**< "supports". What carries the reactions, and the thrust of rafters. */
    FRAME_JOIST_SIZES_UNCHECKED_VIBRATION = 3 /**< "vibration". Whether a floor feels lively underfoot. */
};

/** A span, its loads and what may cross it. */
typedef struct frame_joist_sizes_in {
    uint32_t struct_size, struct_id;
    const frame_joist_choice *choices; /**< optional. What to try; without it 2x6 to 2x12. */
    size_t choice_count;     /**< count : 0..500. */
    const double *spacings_in; /**< optional : >0..48. Spacings to try; without it 12, 16, 19.2 and 24 in. */
    size_t spacing_count;    /**< count : 0..20. */
    frame_joist_use use;     /**< required. What the joists are part of. */
    frame_species species;   /**< optional. Species of the choices that name none. */
    frame_grade grade;       /**< optional. Visual grade of the choices that name none. */
    frame_service service;   /**< "wet for a deck, otherwise dry". Moisture in service. */
    frame_bool incised;      /**< "yes for a deck but of Southern Pine, otherwise no". Incised for pressure treatment. */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    int32_t spare;
    double span_in;          /**< required : >0..1200. Clear span, on plan. */
    double live_psf;         /**< optional : 0..1000. Live load; for a rafter, roof live load on plan. */
    double dead_psf;         /**< "10 for a floor, rafter or deck, 5 for a ceiling" : 0..1000. Dead load; on the slope where a slope is given. */
    double snow_psf;         /**< optional : 0..1000. Snow, on plan. */
    double slope;            /**< optional : 0..4. Slope of a rafter, rise over run. */
    double bearing_in;       /**< 1.5 : >0..48. Length of bearing at each end. */
    double most_depth_in;    /**< optional : >0..60. Most depth. */
    double deflection_limit; /**< "360 for a floor or deck, 240 for a ceiling, 180 for a rafter" : 1..10000. Span over this is the most it may sag under live load or snow. */
    double total_deflection_limit; /**< "240 for a floor or deck, otherwise none" : 1..10000. Span over this is the most it may sag in all, with creep. */
} frame_joist_sizes_in;

/** The best choice. */
typedef struct frame_joist_sizes_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : joist_sizes_caution. Cautions. */
    uint64_t not_checked; /**< bits : joist_sizes_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values of the best choice; of the nearest where none holds. */
    frame_bool passes;    /**< Whether any choice holds. */
    frame_size size;      /**< Nominal size of the best; not given where none holds, or where it came by its true size. */
    int32_t passing_count; /**< How many choices hold. */
    int32_t tried_count;  /**< How many were tried. */
    int32_t spare;
    double spacing_in;    /**< Spacing of the best. */
    double board_feet_per_ft2; /**< Its board feet on a square foot of plan. */
    double cost_per_ft2;  /**< Its cost on a square foot of plan; not given where not every choice has its price. */
    double ratio;         /**< Its ratio. */
} frame_joist_sizes_out;

/** A choice, as checked. */
typedef struct frame_joist_sizes_option {
    uint32_t struct_size, struct_id;
    frame_size size;          /**< Nominal size. */
    frame_species species;    /**< Species. */
    frame_grade grade;        /**< Visual grade. */
    int32_t choice;           /**< Its place in choices, from 0. */
    frame_bool passes;        /**< Whether it holds. */
    frame_governing governs;  /**< The check with the largest ratio. */
    double spacing_in;        /**< Centre to centre. */
    double ratio;             /**< The largest of its ratios; not given where it could not be checked. */
    double bending_ratio;     /**< f_b over F_b'. */
    double shear_ratio;       /**< f_v over F_v'. */
    double bearing_ratio;     /**< f_c-perp over F_c-perp'. */
    double deflection_ratio;  /**< The larger of the two ratios of deflection. */
    double bearing_needed_in; /**< Length of bearing that would just do. */
    double board_feet_per_ft2; /**< Board feet on a square foot of plan, by nominal size. */
    double cost_per_ft2;      /**< Cost on a square foot of plan; not given without a price. */
    const char *reason;       /**< Why it loses to the best, or that it is the best. */
    const char *name;         /**< Name of the lumber. */
} frame_joist_sizes_option;

/** Tries joists, rafters, ceiling or deck joists for a span and ranks them: those that hold by cost where every choice has its price, else by board
 * feet, on a square foot of plan; then those that do not, the nearest to holding first, each with the check that it fails. Each is a
 * joist_check. FRAME_REQUIRED where loads, or species and grade, are missing; FRAME_NO_VALUE when no choice is left within most_depth_in. */
FRAME_ANSWER(joist_sizes);
/** The choices, best first. */
FRAME_ANSWER_LIST(joist_sizes, option, options);

/* ---- post_sizes: which post, stud or column to buy -------------------------------------------------------------- */

/** A choice of lumber for a post. As a tuple or array: size, plies, species, grade, price_per_ft. */
typedef struct frame_post_choice {
    uint32_t struct_size, struct_id;
    frame_size size;       /**< required. Nominal size of one ply. */
    int32_t plies;         /**< 1 : 1..5. Plies. */
    frame_species species; /**< optional. Species; that of the call without it. */
    frame_grade grade;     /**< optional. Visual grade; that of the call without it. */
    double price_per_ft;   /**< optional : 0..1e6. Price of a foot of one ply, in the user's money. */
    const char *name;      /**< optional. Name of the lumber. */
} frame_post_choice;
/** Sets up a choice: every field not given. */
FRAME_ELEMENT(post_choice);

/** Cautions that go with the choice of a post. */
typedef int32_t frame_post_caution;
enum frame_post_caution_values {
    FRAME_POST_CAUTION_BOARD_FEET = 0, /**< "board_feet". Ranked by board feet, as not every choice had its price. */
    FRAME_POST_CAUTION_NONE = 1,       /**< "none_holds". None of the choices holds. */
    FRAME_POST_CAUTION_MEMORY = 2,     /**< "from_memory". The best choice rests on values recalled, no text seen. */
    FRAME_POST_CAUTION_ENDS = 3,       /**< "ends". A post needs a base and a cap that hold it in place, against sideways load and uplift too. */
    FRAME_POST_CAUTION_PLIES = 4       /**< "plies". Plies must be fastened together as NDS 15.3 asks for. */
};
/** What the choice of a post leaves unchecked. */
typedef int32_t frame_post_not_checked;
enum frame_post_not_checked_values {
    FRAME_POST_UNCHECKED_PLATE = 0,        /**< "plate". What it stands on: no plate was given. */
    FRAME_POST_UNCHECKED_COMBINATIONS = 1, /**< "combinations". Other combinations of loads: give each with its own duration. */
    FRAME_POST_UNCHECKED_UPLIFT = 2,       /**< "uplift". Uplift and the ties against it. */
    FRAME_POST_UNCHECKED_CODE = 3          /**< "code_table". The code's own tables of posts and studs, which may ask for more. */
};

/** A post's loads and what may carry them. */
typedef struct frame_post_sizes_in {
    uint32_t struct_size, struct_id;
    const frame_post_choice *choices; /**< optional. What to try; without it 4x4, 4x6, 6x6, 6x8, 8x8 and two or three 2x4 and 2x6 nailed together. */
    size_t choice_count;     /**< count : 0..500. */
    frame_species species;   /**< optional. Species of the choices that name none. */
    frame_grade grade;       /**< optional. Visual grade of the choices that name none. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_load_duration load_duration; /**< ten years. The duration of the shortest load in this combination. */
    frame_bool weak_axis_held; /**< no. Sheathing on both edges holds it along its length against buckling across its thickness. */
    frame_column_fastening fastening; /**< nailed. How plies are fastened. */
    frame_species plate_species; /**< optional. Species of the plate that it stands on, to check its crushing. */
    double length_in;        /**< required : >0..1200. Clear height between supports. */
    double axial_lb;         /**< required : 0..1e6. Load along the axis, of one combination. */
    double lateral_plf;      /**< 0 : 0..1e5. Sideways load on a foot of its narrow face, of the same combination. */
    double effective_length_factor; /**< 1 : 0.5..2.4. K_e by how the ends are held (NDS appendix G). */
    double eccentricity_in;  /**< 0 : 0..48. How far from the axis the load stands, along its width. */
    double most_width_in;    /**< optional : >0..60. Most breadth of all plies. */
    double most_depth_in;    /**< optional : >0..60. Most width of a ply. */
    frame_design_method method; /**< ASD. How safety is brought in: with LRFD give loads as factored, and time_effect_factor. */
    int32_t spare;
    double time_effect_factor;  /**< optional : 0.6..1.25. Time effect factor, lambda, of this combination (NDS table N3); needed with LRFD. */
} frame_post_sizes_in;

/** The best choice. */
typedef struct frame_post_sizes_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : post_caution. Cautions. */
    uint64_t not_checked; /**< bits : post_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values of the best choice; of the nearest where none holds. */
    frame_bool passes;    /**< Whether any choice holds. */
    frame_size size;      /**< Nominal size of the best; not given where none holds. */
    int32_t plies;        /**< Plies of the best. */
    int32_t passing_count; /**< How many choices hold. */
    int32_t tried_count;  /**< How many were tried. */
    double board_feet;    /**< Board feet of the best. */
    double cost;          /**< Cost of the best; not given where not every choice has its price. */
    double ratio;         /**< Ratio of the best. */
} frame_post_sizes_out;

/** A choice, as checked. */
typedef struct frame_post_sizes_option {
    uint32_t struct_size, struct_id;
    frame_size size;          /**< Nominal size of one ply. */
    int32_t plies;            /**< Plies. */
    frame_species species;    /**< Species. */
    frame_grade grade;        /**< Visual grade. */
    int32_t choice;           /**< Its place in choices, from 0. */
    frame_bool passes;        /**< Whether it holds. */
    frame_governing governs;  /**< The check with the largest ratio. */
    int32_t spare;
    double ratio;             /**< The largest of its ratios; not given where it could not be checked. */
    double compression_ratio; /**< f_c over F_c'. */
    double combined_ratio;    /**< Bending and compression together; not given without either. */
    double bearing_ratio;     /**< Crushing of the plate; not given without a plate. */
    double capacity_lb;       /**< Load along the axis that it would just carry without sideways load. */
    double board_feet;        /**< Board feet of all plies, by nominal size and clear height. */
    double cost;              /**< Cost of all plies; not given without a price. */
    const char *reason;       /**< Why it loses to the best, or that it is the best. */
    const char *name;         /**< Name of the lumber. */
} frame_post_sizes_option;

/** Tries posts for a load and ranks them: those that hold by cost where every choice has its price, else by board feet; then those that do not,
 * the nearest to holding first, each with the check that it fails. Each is a column_check. */
FRAME_ANSWER(post_sizes);
/** The choices, best first. */
FRAME_ANSWER_LIST(post_sizes, option, options);

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

/* ---- column_nailing: the nails that make plies one column ---------------------------------------------------------- */

/** Cautions that go with the nailing of a built-up column. */
typedef int32_t frame_column_nailing_caution;
enum frame_column_nailing_caution_values {
    FRAME_COLUMN_NAILING_CAUTION_SIDES = 0, /**< "both_sides". Drive neighbouring nails from opposite sides of the column. */
    FRAME_COLUMN_NAILING_CAUTION_FULL = 1,  /**< "full_length". Every ply runs the whole height in one piece, of one depth and thickness, its faces in contact (NDS 15.3.1). */
    FRAME_COLUMN_NAILING_CAUTION_MEMORY = 2 /**< "from_memory". The rules of NDS 15.3.3 are recalled, no text seen. */
};
/** What the nailing of a built-up column leaves unchecked. */
typedef int32_t frame_column_nailing_not_checked;
enum frame_column_nailing_not_checked_values {
    FRAME_COLUMN_NAILING_UNCHECKED_COLUMN = 0, /**< "column". Whether the column holds: column_check. */
    FRAME_COLUMN_NAILING_UNCHECKED_SIDE = 1    /**< "side_load". Nails for load that comes into one ply from its side. */
};

/** Plies and the nail at hand. */
typedef struct frame_column_nailing_in {
    uint32_t struct_size, struct_id;
    frame_size size;        /**< required. Nominal size of one ply. */
    int32_t plies;          /**< required : 2..5. Plies. */
    double length_in;       /**< required : >0..1200. Height of the column. */
    double nail_diameter_in; /**< required : >0..1. Diameter of the nail: 0.162 for a 16d common. */
    double nail_length_in;  /**< required : >0..24. Length of the nail: 3-1/2 for a 16d common. */
} frame_column_nailing_in;

/** How the nails go. */
typedef struct frame_column_nailing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : column_nailing_caution. Cautions. */
    uint64_t not_checked; /**< bits : column_nailing_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_bool passes;    /**< Whether this nail can make the plies one column. */
    int32_t nail_rows;    /**< Rows of nails along the column. */
    int32_t per_row;      /**< Nails in a row. */
    int32_t nails;        /**< Nails in all. */
    int32_t spare;
    double nail_needed_in;  /**< Length of nail that passes all plies but a quarter of the last. */
    double spacing_in;      /**< Spacing along a row as laid out, even and at most 6 t. */
    double least_spacing_in; /**< 20 D. */
    double most_spacing_in; /**< 6 t. */
    double least_end_in;    /**< 15 D from the ends. */
    double most_end_in;     /**< 18 D from the ends. */
    double row_spacing_in;  /**< Spacing between rows as laid out; not given for one row. */
    double least_row_spacing_in; /**< 10 D. */
    double most_row_spacing_in; /**< 20 D. */
    double edge_in;         /**< Edge distance as laid out. */
    double least_edge_in;   /**< 5 D. */
    double most_edge_in;    /**< 20 D. */
} frame_column_nailing_out;

/** Lays out the nails that NDS 15.3.3 asks for before plies count as one column with K_f 0.6: 15 to 18 D from the ends, 20 D to 6 t along a row, two rows and more where the plies are
 * wider than three times their thickness, 10 to 20 D between rows, 5 to 20 D from the edges, through all plies and three quarters of the last. It does not pass
 * where the nail is too short, or too thick or too thin for these limits. */
FRAME_CALCULATION(column_nailing);

/* ---- span_table: a whole table of longest spans ---------------------------------------------------------------- */

/** Cautions that go with a table of spans. */
typedef int32_t frame_span_table_caution;
enum frame_span_table_caution_values {
    FRAME_SPAN_TABLE_CAUTION_CODE = 0,    /**< "span_tables". The code's span tables and the building official decide; where they give less, build to that. */
    FRAME_SPAN_TABLE_CAUTION_MEMORY = 1,  /**< "from_memory". Some spans rest on values recalled, no text seen. */
    FRAME_SPAN_TABLE_CAUTION_EMPTY = 2,   /**< "empty". Some cells are empty: no such lumber is in the tables. */
    FRAME_SPAN_TABLE_CAUTION_SNOW_BASIS = 3, /**< "snow_basis". Snow is taken as a 50-year load on plan: a strength-level one belongs to load_edition "ASCE 7-22". */
    FRAME_SPAN_TABLE_CAUTION_RAFTER = 4   /**< "ties_first". Rafters push the walls apart without ties or a ridge beam. */
};
/** What a table of spans leaves unchecked: as joist_span. */
typedef int32_t frame_span_table_not_checked;
enum frame_span_table_not_checked_values {
    FRAME_SPAN_TABLE_UNCHECKED_BEARING = 0,  /**< "bearing". Bearing: each cell says what it needs. */
    FRAME_SPAN_TABLE_UNCHECKED_LOCAL = 1,    /**< "local_loads". Point loads, walls, tubs, wind, drifted and sliding snow. */
    FRAME_SPAN_TABLE_UNCHECKED_CUTS = 2,     /**< "cuts". Notches, holes and birdsmouths. */
    FRAME_SPAN_TABLE_UNCHECKED_SUPPORTS = 3  /**< "supports". What carries the reactions, and thrust of rafters. */
};

/** What to fill a table of spans with: every species with every grade, spacing and size. */
typedef struct frame_span_table_in {
    uint32_t struct_size, struct_id;
    const frame_species *species; /**< required. Species, a group of rows each. */
    size_t species_count;    /**< count : 1..100. */
    const frame_grade *grades; /**< optional. Visual grades, a row each; without it Select Structural, No.1, No.2 and No.3. */
    size_t grade_count;      /**< count : 0..30. */
    const frame_size *sizes; /**< optional. Nominal sizes, a column each; without it 2x6, 2x8, 2x10 and 2x12. */
    size_t size_count;       /**< count : 0..50. */
    const double *spacings_in; /**< optional : >0..48. Spacings, centre to centre; without it 12, 16, 19.2 and 24 in. */
    size_t spacing_count;    /**< count : 0..50. */
    frame_joist_use use;     /**< required. What the joists are part of. */
    frame_service service;   /**< "wet for a deck, otherwise dry". Moisture in service. */
    frame_bool incised;      /**< "yes for a deck but of Southern Pine, otherwise no". Incised for pressure treatment. */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    frame_rounding rounding; /**< down. How the page and the CSV round spans to the inch; the cells are not rounded. */
    double live_psf;         /**< optional : 0..1000. Live load; for a rafter, roof live load on plan. */
    double dead_psf;         /**< "10 for a floor, rafter or deck, 5 for a ceiling" : 0..1000. Dead load. */
    double snow_psf;         /**< optional : 0..1000. Snow, on plan. */
    double slope;            /**< optional : 0..4. Slope of a rafter, rise over run. */
    double deflection_limit; /**< "360 for a floor or deck, 240 for a ceiling, 180 for a rafter" : 1..10000. Span over this is the most it may sag under live load or snow. */
    double total_deflection_limit; /**< optional : 1..10000. Span over this is the most it may sag in all, with creep. */
    double most_span_in;     /**< optional : >0..1200. Longest span to show, as the code's tables end at 26 ft; longer ones are cut to it. */
} frame_span_table_in;

/** The table in all. */
typedef struct frame_span_table_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : span_table_caution. Cautions. */
    uint64_t not_checked; /**< bits : span_table_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    int32_t filled_count; /**< Cells with a span. */
    int32_t empty_count;  /**< Cells of lumber that the tables do not have. */
    int32_t spare;
    double shortest_in;   /**< Shortest span of all. */
    double longest_in;    /**< Longest span of all. */
} frame_span_table_out;

/** A cell. */
typedef struct frame_span_table_cell {
    uint32_t struct_size, struct_id;
    frame_species species; /**< Species. */
    frame_grade grade;     /**< Grade. */
    frame_size size;       /**< Size. */
    frame_governing governs; /**< What makes the span no longer. */
    frame_known known;     /**< Worst source of its values. */
    frame_bool cut_off;    /**< Whether it would be longer than most_span_in. */
    double spacing_in;     /**< Spacing. */
    double span_in;        /**< Longest span, not rounded; not given for lumber that the tables do not have. */
    double bearing_needed_in; /**< Length of bearing needed at this span. */
} frame_span_table_cell;

/** Fills a table of longest spans, each a joist_span, for any species, grades, sizes, spacings and loads. FRAME_REQUIRED when neither live load nor snow
 * is given; FRAME_TOO_LARGE beyond a million cells. */
FRAME_ANSWER(span_table);
/** The cells: by species, then grade, then spacing, then size. */
FRAME_ANSWER_LIST(span_table, cell, cells);
/** Writes the table as CSV: species, grade, spacing, then a column for each size, in inches rounded as asked. */
FRAME_API frame_status frame_span_table_csv(const frame_span_table *answer, frame_text *into);
/** Writes the table as an HTML page to print: a block for each spacing, a row for each species and grade, spans in feet and inches, a letter
 * where something other than deflection governs, and below it what it assumes. */
FRAME_API frame_status frame_span_table_page(const frame_span_table *answer, frame_text *into);

/* ---- header_sizes: which header to buy -------------------------------------------------------------------------- */

/** A choice of lumber for a header. Without a size, give its design values and its true size. As a tuple or array: size, plies,
 * species, grade, turned, price_per_ft. */
typedef struct frame_header_choice {
    uint32_t struct_size, struct_id;
    frame_size size;       /**< optional. Nominal size of one ply. */
    int32_t plies;         /**< optional : 1..8. Plies; without it every number up to most_plies is tried. */
    frame_species species; /**< optional. Species; that of the call without it. */
    frame_grade grade;     /**< optional. Visual grade; that of the call without it. */
    frame_turned turned;   /**< on edge. How it is turned to the load. */
    int32_t spare;
    double price_per_ft;   /**< optional : 0..1e6. Price of a foot of one ply, in the user's money. */
    double width_in;       /**< optional : >0..60. True thickness of one ply, instead of size. */
    double depth_in;       /**< optional : >0..60. True width of one ply, instead of size. */
    double fb_psi;         /**< optional : >0..20000. F_b, instead of species and grade. */
    double fv_psi;         /**< optional : >0..5000. F_v, with fb_psi. */
    double fc_perp_psi;    /**< optional : >0..10000. F_c-perp, with fb_psi. */
    double e_psi;          /**< optional : >0..1e7. E, with fb_psi. */
    double e_min_psi;      /**< optional : >0..1e7. E_min, with fb_psi, for a free compression edge. */
    double specific_gravity; /**< optional : >0..1.5. Specific gravity, with fb_psi, for self_weight. */
    const char *name;      /**< optional. Name of the lumber. */
} frame_header_choice;
/** Sets up a choice: every field not given. */
FRAME_ELEMENT(header_choice);

/** Cautions that go with the choice of a header. */
typedef int32_t frame_header_caution;
enum frame_header_caution_values {
    FRAME_HEADER_CAUTION_POINT_LOADS = 0, /**< "point_loads". No load but those given: a post, truss or other header that lands on this one must be checked. */
    FRAME_HEADER_CAUTION_EDGE = 1,        /**< "edge". Cripples and a loose plate do not hold the compression edge. */
    FRAME_HEADER_CAUTION_PLIES = 2,       /**< "plies". Plies must be fastened together, and each must bear. */
    FRAME_HEADER_CAUTION_SHORING = 3,     /**< "shoring". In a standing wall shore both sides before it is opened. */
    FRAME_HEADER_CAUTION_BOARD_FEET = 4,  /**< "board_feet". Ranked by board feet, as not every choice had its price. */
    FRAME_HEADER_CAUTION_NONE = 5,        /**< "none_holds". None of the choices holds. */
    FRAME_HEADER_CAUTION_MEMORY = 6       /**< "from_memory". The best choice rests on values recalled, no text seen. */
};

/** What the choice of a header leaves unchecked. */
typedef int32_t frame_header_not_checked;
enum frame_header_not_checked_values {
    FRAME_HEADER_UNCHECKED_SUPPORTS = 0, /**< "supports". Jack and king studs, and what stands below them. */
    FRAME_HEADER_UNCHECKED_BEARING = 1,  /**< "bearing". Bearing: no length was given; what each choice needs is in its line. */
    FRAME_HEADER_UNCHECKED_CODE = 2      /**< "code_table". The code's own table of headers, which may ask for more. */
};

/** An opening, its loads and what may span it. */
typedef struct frame_header_sizes_in {
    uint32_t struct_size, struct_id;
    const frame_header_choice *choices; /**< optional. What to try; without it 2x4 to 2x12 on edge. */
    size_t choice_count;     /**< count : 0..500. */
    frame_species species;   /**< optional. Species of the choices that name none. */
    frame_grade grade;       /**< optional. Visual grade of the choices that name none. */
    int32_t most_plies;      /**< 3 : 1..8. Most plies to try where a choice leaves them open. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_compression_edge compression_edge; /**< free. What holds the edge in compression. */
    frame_load_duration live_duration; /**< ten years. How long the live load lasts. */
    frame_bool self_weight;  /**< yes. Add each choice's own weight. */
    double span_in;          /**< required : >0..1200. Span: clear span and half the bearing needed at each end. */
    double dead_plf;         /**< optional : 0..1e5. Dead load on a foot of header; 0 must be said. */
    double live_plf;         /**< optional : 0..1e5. Live load. */
    double roof_live_plf;    /**< optional : 0..1e5. Roof live load, on plan. */
    double snow_plf;         /**< optional : 0..1e5. Snow, on plan. */
    double spacing_in;       /**< optional : >0..480. Width that it carries, for loads in psf. */
    double dead_psf;         /**< optional : 0..1000. Dead load over spacing_in. */
    double live_psf;         /**< optional : 0..1000. Live load over spacing_in. */
    double roof_live_psf;    /**< optional : 0..1000. Roof live load on plan, over spacing_in. */
    double snow_psf;         /**< optional : 0..1000. Snow on plan, over spacing_in. */
    double bearing_in;       /**< optional : >0..48. Length of bearing at each end; without it bearing is not checked. */
    double unbraced_length_in; /**< optional : >0..1200. Distance between braces of a free compression edge; the span without it. */
    double most_width_in;    /**< optional : >0..60. Most breadth, as the wall's thickness allows. */
    double most_depth_in;    /**< optional : >0..60. Most depth, as the height above the opening allows. */
    double deflection_limit; /**< 360 : 1..10000. Span over this is the most it may sag under live load or snow. */
    double total_deflection_limit; /**< 240 : 1..10000. Span over this is the most it may sag in all, with creep. */
    double creep_factor;     /**< "1.5 dry, 2.0 wet" : 1..3. Long-term growth of the sag under dead load (NDS 3.5.2). */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
} frame_header_sizes_in;

/** The best choice. */
typedef struct frame_header_sizes_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : header_caution. Cautions. */
    uint64_t not_checked; /**< bits : header_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values of the best choice; of the first where none holds. */
    frame_bool passes;    /**< Whether any choice holds. */
    frame_size size;      /**< Nominal size of the best; not given where none holds, or where it came by its true size. */
    int32_t plies;        /**< Plies of the best. */
    int32_t passing_count; /**< How many choices hold. */
    int32_t tried_count;  /**< How many were tried. */
    double board_feet;    /**< Board feet of the best. */
    double cost;          /**< Cost of the best; not given where not every choice has its price. */
    double ratio;         /**< Ratio of the best. */
} frame_header_sizes_out;

/** A choice, as checked. */
typedef struct frame_header_sizes_option {
    uint32_t struct_size, struct_id;
    frame_size size;          /**< Nominal size of one ply. */
    int32_t plies;            /**< Plies. */
    frame_species species;    /**< Species. */
    frame_grade grade;        /**< Visual grade. */
    frame_turned turned;      /**< How it is turned to the load. */
    int32_t choice;           /**< Its place in choices, from 0. */
    frame_bool passes;        /**< Whether it holds. */
    frame_governing governs;  /**< The check with the largest ratio. */
    frame_load_combination combination; /**< The combination of loads that governs bending. */
    int32_t spare;
    double ratio;             /**< The largest of its ratios; not given where it could not be checked. */
    double bending_ratio;     /**< f_b over F_b'. */
    double shear_ratio;       /**< f_v over F_v'. */
    double bearing_ratio;     /**< f_c-perp over F_c-perp'; not given without a length of bearing. */
    double deflection_ratio;  /**< The larger of the two ratios of deflection. */
    double bearing_needed_in; /**< Length of bearing that would just do. */
    double width_in;          /**< Breadth of all plies. */
    double depth_in;          /**< Depth along the load. */
    double length_in;         /**< Length to buy: the span and the bearing that reaches past it. */
    double board_feet;        /**< Board feet of all plies, by nominal size. */
    double cost;              /**< Cost of all plies; not given without a price. */
    const char *reason;       /**< Why it loses to the best, or that it is the best. */
    const char *name;         /**< Name of the lumber. */
} frame_header_sizes_option;

/** Tries headers for an opening and ranks them: those that hold by cost where every choice has its price, else by board feet; then those
 * that do not, the nearest to holding first, each with the check that it fails. Each is a beam_check. FRAME_REQUIRED where loads, or
 * species and grade, are missing; FRAME_NO_VALUE when no choice is left within most_width_in and most_depth_in. */
FRAME_ANSWER(header_sizes);
/** The choices, best first. */
FRAME_ANSWER_LIST(header_sizes, option, options);

/* ---- tension_check: ties, chords, hangers ------------------------------------------------------------------------ */

/** Cautions that go with members in tension. */
typedef int32_t frame_tension_caution;
enum frame_tension_caution_values {
    FRAME_TENSION_CAUTION_STAMP = 0,     /**< "stamp". The design values hold for lumber with this grade stamp, not for unstamped, old, ripped or damaged lumber. */
    FRAME_TENSION_CAUTION_MEMORY = 1,    /**< "from_memory". Rests on values recalled, no text seen: check them against the printed standard before relying on them. */
    FRAME_TENSION_CAUTION_DOUBTFUL = 2,  /**< "doubtful". Sources differ about a design value used. */
    FRAME_TENSION_CAUTION_SUPERSEDED = 3, /**< "superseded". A later supplement changed the values of this species. */
    FRAME_TENSION_CAUTION_USER_VALUES = 4, /**< "user_values". Your design values are taken to include size, service and treatment: C_F, C_M and C_i are 1. */
    FRAME_TENSION_CAUTION_JOINTS = 5,    /**< "joints". A tie is as strong as the joints at its ends: their fasteners mostly govern. */
    FRAME_TENSION_CAUTION_HOLES = 6      /**< "holes". No hole was given: bolts and boring take section away. */
};
/** What the check of a member in tension leaves unchecked. */
typedef int32_t frame_tension_not_checked;
enum frame_tension_not_checked_values {
    FRAME_TENSION_UNCHECKED_JOINTS = 0, /**< "joints". The joints at its ends, and splices. */
    FRAME_TENSION_UNCHECKED_TEAR = 1,   /**< "tear_out". Tear-out of rows and groups of bolts (NDS appendix E). */
    FRAME_TENSION_UNCHECKED_COMBINATIONS = 2, /**< "combinations". Other combinations of loads: give each with its own duration. */
    FRAME_TENSION_UNCHECKED_LATERAL = 3, /**< "lateral". Sideways load: none was given. */
    FRAME_TENSION_UNCHECKED_CROSS = 4,  /**< "across_grain". Tension across the grain, which is to be avoided (NDS 3.8.2). */
    FRAME_TENSION_UNCHECKED_DEFLECTION = 5, /**< "deflection". How far it sags. */
    FRAME_TENSION_UNCHECKED_HOLES_BENDING = 6 /**< "holes_in_bending". What holes take from its strength in bending. */
};

/** A tie, chord or hanger with its tension, and load on its narrow face. */
typedef struct frame_tension_check_in {
    uint32_t struct_size, struct_id;
    frame_size size;         /**< optional. Nominal size of one ply. */
    frame_species species;   /**< optional. Species or species group. */
    frame_grade grade;       /**< optional. Visual grade. */
    int32_t plies;           /**< 1 : 1..5. Members side by side. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_bool repetitive;   /**< no. Three or more at most 24 in apart share sideways load through sheathing (NDS 4.3.9). */
    frame_temperature temperature; /**< normal. How hot it gets for long. */
    frame_load_duration load_duration; /**< ten years. The duration of the shortest load in this combination. */
    frame_compression_edge compression_edge; /**< free. What holds the edge that sideways load compresses. */
    int32_t holes_across;    /**< 1 : 1..10. Holes in one cross-section, where hole_diameter_in is given. */
    int32_t spare;
    double tension_lb;       /**< required : 0..1e6. Tension, of one combination. */
    double length_in;        /**< optional : >0..1200. Span for sideways load; needed with it. */
    double lateral_plf;      /**< 0 : 0..1e5. Load on a foot of its narrow face, of the same combination, over a simple span. */
    double unbraced_length_in; /**< optional : >0..1200. Distance between braces of a free compression edge; the length without it. */
    double hole_diameter_in; /**< optional : >0..10. Diameter of holes through its thickness. */
    double spacing_in;       /**< optional : >0..480. Centre to centre, for repetitive use. */
    double width_in;         /**< optional : >0..60. True thickness of one ply, instead of size. */
    double depth_in;         /**< optional : >0..60. True width of one ply, instead of size. */
    double ft_psi;           /**< optional : >0..20000. F_t, instead of species and grade. */
    double fb_psi;           /**< optional : >0..20000. F_b, with ft_psi, for sideways load. */
    double e_min_psi;        /**< optional : >0..1e7. E_min, with ft_psi, for sideways load on a free edge. */
    frame_design_method method; /**< ASD. How safety is brought in: with LRFD give loads as factored, and time_effect_factor. */
    int32_t spare2;
    double time_effect_factor;  /**< optional : 0.6..1.25. Time effect factor, lambda, of this combination (NDS table N3); needed with LRFD. */
} frame_tension_check_in;

/** How it holds. A ratio is the share used of what is allowed: up to 1 it holds. */
typedef struct frame_tension_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : tension_caution. Cautions. */
    uint64_t not_checked; /**< bits : tension_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_bool passes;    /**< Whether the ratio is at most 1. */
    frame_governing governs; /**< The check with the largest ratio. */
    int32_t spare;
    double ratio;            /**< The largest of the ratios. */
    double tension_ratio;    /**< f_t over F_t'. */
    double combined_ratio;   /**< Tension and bending on the edge in tension (NDS 3.9-1); not given without sideways load. */
    double compressed_ratio; /**< Bending less tension on the other edge (NDS 3.9-2), where it may buckle; at least 0. */
    double capacity_lb;      /**< Tension that it would just carry without sideways load. */
    double net_area_in2;     /**< Area less the holes. */
    double ft_actual_psi;    /**< Tension stress, f_t. */
    double ft_adjusted_psi;  /**< Adjusted tension design value, F_t'. */
    double fb_actual_psi;    /**< Bending stress, f_b; not given without sideways load. */
    double fb_star_psi;      /**< F_b*: all factors but C_L. */
    double fb_adjusted_psi;  /**< F_b**: all factors but C_V. */
    double beam_stability_factor; /**< C_L, for the sideways load. */
    double load_duration_factor; /**< C_D. */
    double size_factor;      /**< C_F on F_t. */
} frame_tension_check_out;

/** Checks a tie, chord or hanger of sawn lumber by NDS 2018 3.8 and 3.9.1, allowable stress design: tension on the net section, and
 * sideways load on the narrow face together with tension. FRAME_OUTSIDE_SCOPE where R_B is over 50; FRAME_IMPOSSIBLE where the holes
 * leave nothing. */
FRAME_CALCULATION(tension_check);

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
    FRAME_RAFTER_CHECK_CAUTION_EDGE_HELD = 10  /**< "edge_held". An edge that is taken as held must be sheathed or tied along its length. */
};

/** What the check of a rafter leaves unchecked. */
typedef int32_t frame_rafter_check_not_checked;
enum frame_rafter_check_not_checked_values {
    FRAME_RAFTER_CHECK_UNCHECKED_THRUST = 0,     /**< "thrust". How far rafters push the walls apart where no ridge beam carries their upper ends: see rafter_thrust. */
    FRAME_RAFTER_CHECK_UNCHECKED_TIES = 1,       /**< "ties". Rafter ties, collar ties and their nails. */
    FRAME_RAFTER_CHECK_UNCHECKED_WIND = 2,       /**< "wind". Wind, its uplift on roof and overhang, and the ties that hold the roof down. */
    FRAME_RAFTER_CHECK_UNCHECKED_RIDGE = 3,      /**< "ridge". The upper end: its bearing, its hanger or nails, and the ridge. */
    FRAME_RAFTER_CHECK_UNCHECKED_PLATE = 4,      /**< "plate". The plate under the seat, and what keeps the rafter from sliding off it. */
    FRAME_RAFTER_CHECK_UNCHECKED_AXIAL = 5,      /**< "axial". Force along the rafter. */
    FRAME_RAFTER_CHECK_UNCHECKED_SNOW_FORMS = 6, /**< "snow_forms". Unbalanced, drifted and sliding snow, and ice at the eaves: the snow is taken as given. */
    FRAME_RAFTER_CHECK_UNCHECKED_MOVING = 7,     /**< "concentrated_live". A worker's weight at the worst place, the end of the overhang above all. */
    FRAME_RAFTER_CHECK_UNCHECKED_CUTS = 8,       /**< "cuts". Cuts but the birdsmouth: a tail cut down, notches and holes. */
    FRAME_RAFTER_CHECK_UNCHECKED_EARTHQUAKE = 9  /**< "earthquake". Earthquake and rain. */
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
} frame_rafter_check_out;

/** Checks a sloped rafter of sawn lumber with its birdsmouth and overhang by NDS 2018, ASD or LRFD: loads resolved square to it, bending,
 * shear and deflection of span and overhang as member_check does them, what the birdsmouth leaves (NDS 3.1.2 and 3.4.3.2), and the
 * level seat at its angle to the grain (3.10.3). FRAME_OUTSIDE_SCOPE where the birdsmouth is deeper than a quarter of the depth (4.4.3)
 * or R_B is over 50; FRAME_CONFLICT where a depth cuts less than the seat; FRAME_IMPOSSIBLE where the seat is longer than the run. */
FRAME_CALCULATION(rafter_check);

FRAME_END

#endif
