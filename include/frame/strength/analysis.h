/** @file strength/analysis.h
 * Beams of any spans, supports and loads, solved exactly.
 */
#ifndef FRAME_STRENGTH_ANALYSIS_H
#define FRAME_STRENGTH_ANALYSIS_H

#include <frame/base.h>
#include <frame/load.h>
#include <frame/material.h>
#include <frame/tape.h>

FRAME_BEGIN

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

FRAME_END

#endif
