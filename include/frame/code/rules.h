/** @file code/rules.h
 * Stairs, and rules found by their words.
 */
#ifndef FRAME_CODE_RULES_H
#define FRAME_CODE_RULES_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/code/book.h>

FRAME_BEGIN

/** A stair, its handrail and its guard, as measured: give what you measured. */
typedef struct frame_code_stairs_in {
    uint32_t struct_size, struct_id;
    frame_code_edition edition;   /**< required. Which edition. */
    frame_bool spiral;            /**< no. Whether it is a spiral stair. */
    double riser_in;              /**< optional : >0..48. Highest riser. */
    double riser_variation_in;    /**< optional : 0..48. Highest riser less the lowest of the flight. */
    double tread_in;              /**< optional : >0..120. Shallowest tread, nosing to nosing; of a spiral stair at the walkline. */
    double tread_variation_in;    /**< optional : 0..120. Deepest tread less the shallowest of the flight. */
    double winder_walkline_in;    /**< optional : >0..120. Shallowest winder at the walkline, 12 in from the inside. */
    double winder_least_in;       /**< optional : 0..120. Shallowest winder anywhere in the clear width. */
    double winder_variation_in;   /**< optional : 0..120. Deepest winder less the shallowest, at the walkline. */
    double nosing_in;             /**< optional : 0..24. Nosing projection. */
    double nosing_variation_in;   /**< optional : 0..24. Largest nosing projection less the smallest. */
    double nosing_radius_in;      /**< optional : 0..24. Radius of the nosings. */
    double headroom_in;           /**< optional : >0..600. Headroom, plumb above the line of the nosings. */
    double width_in;              /**< optional : >0..600. Clear width above the handrails. */
    double width_at_rail_in;      /**< optional : >0..600. Clear width at and below the handrails. */
    double rise_in;               /**< optional : >0..1200. Rise of the flight between floors or landings. */
    double landing_in;            /**< optional : >0..600. Depth of the landing in the direction of travel. */
    double slope_percent;         /**< optional : 0..100. Slope of treads and landings. */
    double handrail_height_in;    /**< optional : >0..120. Height of the handrail above the nosings. */
    double handrail_projection_in; /**< optional : 0..60. How far the handrail stands into the stair. */
    double handrail_clearance_in; /**< optional : 0..60. Space between handrail and wall. */
    double grip_diameter_in;      /**< optional : >0..24. Diameter of a round handrail. */
    double grip_perimeter_in;     /**< optional : >0..96. Perimeter of a handrail that is not round. */
    double grip_section_in;       /**< optional : >0..48. Its greatest cross section. */
    double guard_height_in;       /**< optional : 0..240. Height of the guard; 0 for none. */
    double opening_in;            /**< optional : 0..240. Largest opening in the guard, as the sphere that passes it. */
    double triangle_in;           /**< optional : 0..240. Triangle between riser, tread and bottom rail, as the sphere that passes it. */
    double open_riser_in;         /**< optional : 0..48. Opening of open risers more than 30 in above the floor, as the sphere that passes it. */
    double walkline_radius_in;    /**< optional : >0..240. Radius of the walkline of a spiral stair. */
    double drop_in;               /**< optional : 0..12000. Drop to the floor or grade within 36 in of the open side. */
    int32_t risers;               /**< optional : 1..200. Risers of the flight. */
    int32_t rails;                /**< optional : 0..2. Sides with a handrail. */
    frame_bool on_stairs;         /**< no. Whether the guard stands on the open side of the stair, not at a floor or landing. */
    frame_bool guard_is_rail;     /**< no. Whether the top of that guard is the handrail. */
    frame_bool open_risers;       /**< no. Whether the risers are open. */
    int32_t spare;
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_stairs_in;

/** How the stair stands. */
typedef struct frame_code_stairs_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */

    frame_bool holds;         /**< Whether all that was measured holds; not given when nothing was measured. */
    int32_t measured;         /**< Limits that were checked. */
    int32_t failed;           /**< Limits that do not hold. */
    frame_bool guard_needed;  /**< Whether the open side needs a guard; not given without its drop. */
    frame_bool handrail_needed; /**< Whether the flight needs a handrail; not given without its risers. */
    int32_t spare2;
    const char *reason;       /**< The first limit that does not hold; empty when all do. */
} frame_code_stairs_out;

/** A limit, and how the stair stands to it. */
typedef struct frame_code_stairs_limit {
    uint32_t struct_size, struct_id;
    const char *item;   /**< What is limited. */
    const char *clause; /**< Clause. */
    const char *unit;   /**< Unit of its figures: in, percent or risers. */
    const char *source; /**< Where it was seen. */
    double least;       /**< Least allowed; not given where there is no such limit. */
    double most;        /**< Greatest allowed; not given where there is no such limit. */
    double under;       /**< What it must stay below; not given where there is no such limit. */
    double measured;    /**< What was measured; not given when it was not. */
    frame_bool holds;   /**< Whether it holds; not given when it was not measured. */
    frame_known known;  /**< How it is known. */
} frame_code_stairs_limit;

/** Checks stairs, handrails and guards by the code (IRC R311.7 and R312; in 2024 R318.7, R320 and R321): what was measured against its limit.
 * Every limit of the edition is listed, measured or not: give nothing and you get the list. */
FRAME_ANSWER(code_stairs);
/** The limits. */
FRAME_ANSWER_LIST(code_stairs, limit, limits);

/** What to look for among the rules. */
typedef struct frame_code_rules_in {
    uint32_t struct_size, struct_id;
    const char *words;          /**< required. Words that the rule must have, or its clause: "joist bearing", "collar tie", "R602.7". */
    frame_code_edition edition; /**< required. Which edition. */
    frame_bool elsewhere;       /**< no. Whether rules of single states and cities, and of other editions, are given as well. */
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_rules_in;

/** What was found. */
typedef struct frame_code_rules_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */

    int32_t rule_count; /**< Rules found. */
    int32_t spare2;
} frame_code_rules_out;

/** A rule. */
typedef struct frame_code_rules_rule {
    uint32_t struct_size, struct_id;
    const char *item;      /**< What is ruled. */
    const char *condition; /**< Where it holds, and what it may be besides; empty for most. */
    const char *text;      /**< What stands in place of a number; empty where there is one. */
    const char *unit;      /**< Unit, and whether it is the least or the most. */
    const char *clause;    /**< Clause or table. */
    const char *book;      /**< Which book and edition it was seen in. */
    const char *source;    /**< Where it was seen. */
    const char *note;      /**< What is odd about it; empty for most. */
    double value;          /**< Its number; not given where it has none. */
    frame_known known;     /**< How it is known. */
    frame_bool elsewhere;  /**< Whether it is of another place or edition. */
} frame_code_rules_rule;

/** Finds rules of framing by their words: headers and trimmers, bearing, blocking and bridging, lateral support, ties, plates, studs, decks, stairs.
 * Spans, fasteners, bracing, holes and the like have look-ups of their own. The result is known as well as the worst of its rules. */
FRAME_ANSWER(code_rules);
/** The rules, those best known first. */
FRAME_ANSWER_LIST(code_rules, rule, rules);

FRAME_END

#endif
