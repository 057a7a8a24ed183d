/** @file strength/members.h
 * Any beam under any loads, checked against the National Design Specification.
 */
#ifndef FRAME_STRENGTH_MEMBERS_H
#define FRAME_STRENGTH_MEMBERS_H

#include <frame/base.h>
#include <frame/load.h>
#include <frame/material.h>
#include <frame/tape.h>
#include <frame/strength/analysis.h>
#include <frame/strength/joists.h>

FRAME_BEGIN

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
    FRAME_MEMBER_CAUTION_TURNED_OVER = 14, /**< "turned_over". Glued laminated timber is stronger with its marked upper side up: turned over it holds less. */
    FRAME_MEMBER_CAUTION_CURVED = 15 /**< "curved". A curved member is analysed as a straight one on its plan: one end must be free to slide, or it pushes its supports apart. */
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
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for. */
    frame_bool bowed_up;     /**< yes. A curved glulam is bowed upward: it flattens where it sags. */
    double lamination_in;    /**< optional : >0..2. Thickness of a lamination of a curved glulam; needed with curve_radius_in. */
    double curve_radius_in;  /**< optional : >0..1e6. Radius of the inner face of a glulam that is curved all along. */
    double radial_tension_psi; /**< optional : >0..500. F_rt of a curved glulam; without it a third of F_v of Southern Pine, 15 of others (NDS 5.2.8). */
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
    double curvature_factor;     /**< C_c; not given for a straight member. */
    double radial_ratio;         /**< Stress along the radius over what is allowed; not given for a straight member. */
    double radial_actual_psi;    /**< Stress along the radius, f_r. */
    double radial_allowed_psi;   /**< F_rt' where the moment flattens the curve, else F_rc'. */
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

FRAME_END

#endif
