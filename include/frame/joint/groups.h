/** @file joint/groups.h
 * Fasteners together: sums, rows, their distances, patterns for a demand, groups loaded off their centre.
 */
#ifndef FRAME_JOINT_GROUPS_H
#define FRAME_JOINT_GROUPS_H

#include <frame/base.h>
#include <frame/drawing.h>
#include <frame/load.h>
#include <frame/material.h>
#include <frame/joint/dowels.h>

FRAME_BEGIN

/** What to do with fasteners that are not alike. */
typedef int32_t frame_unlike_fasteners;
enum frame_unlike_fasteners_values {
    FRAME_UNLIKE_REFUSE = 1,   /**< "refuse". Refuse to add them, and name the strongest group (NDS 11.1.4). */
    FRAME_UNLIKE_STRONGEST = 2, /**< "strongest alone". Count the strongest group alone; the others count for nothing. */
    FRAME_UNLIKE_STIFFNESS = 3 /**< "by stiffness" | "stiffness". All slip alike, each by its stated stiffness, until the first reaches its value. */
};

/** Fasteners of one kind and size in a joint. */
typedef struct frame_fastener_group {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind; /**< required. Kind of fastener. */
    int32_t spare;
    const char *size;      /**< optional. Size by its usual name, or diameter_in. */
    int32_t count;         /**< required : 1..10000. How many. */
    int32_t spare2;
    double each_lb;        /**< required : >0..1e6. Adjusted value of one, as dowel_lateral or dowel_withdrawal give it. */
    double diameter_in;    /**< optional : >0..1.25. Nominal diameter, instead of size. */
    frame_yield_mode mode; /**< optional. Yield mode that governs one of them; groups whose modes differ are not alike. */
    int32_t spare3;
    double stiffness_lb_per_in; /**< optional : >0..1e8. Load of one at an inch of slip, as far as it is straight; unlike "by stiffness" needs it. */
} frame_fastener_group;
FRAME_ELEMENT(fastener_group);

/** Cautions that go with a sum of fasteners. */
typedef int32_t frame_fastener_sum_caution;
enum frame_fastener_sum_caution_values {
    FRAME_FASTENER_SUM_CAUTION_ADJUSTED = 0,  /**< "adjusted". The values of one were taken as adjusted already: duration, moisture, penetration, end grain. */
    FRAME_FASTENER_SUM_CAUTION_STRONGEST = 1, /**< "strongest_alone". Unlike fasteners: only the strongest group was counted, since the stiffer ones fail before the others carry. */
    FRAME_FASTENER_SUM_CAUTION_GROUP = 2,     /**< "group_action". From 1/4 in up, several in a row share the load unevenly: C_g was taken as given, 1 unless said. */
    FRAME_FASTENER_SUM_CAUTION_MODES = 3,     /**< "modes". Fasteners add up only when they give in the same yield mode; it was not given for all groups. */
    FRAME_FASTENER_SUM_CAUTION_STIFFNESS = 4  /**< "stiffness". Unlike fasteners were added by the stiffnesses stated: NDS 11.1.4 lets that stand only with tests or analysis of this joint, and holes with play make the stiff one carry late. */
};
/** What a sum of fasteners leaves unchecked. */
typedef int32_t frame_fastener_sum_not_checked;
enum frame_fastener_sum_not_checked_values {
    FRAME_FASTENER_SUM_UNCHECKED_SPACING = 0,   /**< "spacing". End and edge distances and spacing, and whether so many fit. */
    FRAME_FASTENER_SUM_UNCHECKED_SPLITTING = 1, /**< "splitting". Splitting. */
    FRAME_FASTENER_SUM_UNCHECKED_MEMBER = 2,    /**< "member". The members at the joint: net section, row and group tear-out, tension across the grain. */
    FRAME_FASTENER_SUM_UNCHECKED_CENTRE = 3     /**< "eccentricity". A load that does not pass through the centre of the group. */
};

/** A joint's fasteners and what they must carry. Give demand_lb, or demand_plf with spacing_in. */
typedef struct frame_fastener_sum_in {
    uint32_t struct_size, struct_id;
    const frame_fastener_group *groups; /**< required. The groups of fasteners. */
    size_t group_count;                 /**< count : 1..100. */
    frame_unlike_fasteners unlike;      /**< refuse. What to do with fasteners that are not alike. */
    int32_t spare;
    double demand_lb;    /**< optional : >0..1e7. What the joint must carry. */
    double demand_plf;   /**< optional : >0..1e6. What a run of like joints must carry for each foot. */
    double spacing_in;   /**< optional : >0..1200. Centres at which the joint repeats along demand_plf. */
    double group_factor; /**< 1 : >0..1. Group action factor C_g. */
} frame_fastener_sum_in;

/** The sum of a joint's fasteners against its demand. */
typedef struct frame_fastener_sum_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastener_sum_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastener_sum_not_checked. What was not checked. */
    frame_known known;       /**< Worst source of the figures: the values of one are the caller's. */
    frame_bool passes;       /**< Whether the demand is within the capacity. */
    int32_t count;           /**< Fasteners counted. */
    int32_t needed_count;    /**< Fasteners needed, each at the least value of those counted. */
    int32_t strongest_group; /**< Place of the group that holds most by itself, from 0. */
    int32_t spare;
    double capacity_lb;  /**< What the fasteners counted hold together. */
    double demand_lb;    /**< What they must carry. */
    double ratio;        /**< Demand over capacity. */
    double strongest_lb; /**< What the strongest group holds by itself. */
    double least_each_lb;     /**< The least value of one fastener of those counted. */
    double needed_spacing_in; /**< Centres at which the joint would just carry demand_plf; not given without it. */
} frame_fastener_sum_out;

/** Adds the fasteners of a joint up against a demand (NDS 2018 11.2.2). Only like ones add: one kind, one diameter, one yield
 * mode; FRAME_REFUSED for others, with the strongest group named (NDS 11.1.4), unless that alone, or a sum by stated stiffness, is asked for. */
FRAME_CALCULATION(fastener_sum);

/** A row of fasteners along the load. Give the stiffnesses as modulus and area of each side. */
typedef struct frame_group_action_in {
    uint32_t struct_size, struct_id;
    int32_t per_row;               /**< required : 1..200. Fasteners in a row, along the load. */
    frame_bool metal_side;         /**< no. The side members are metal plates. */
    double diameter_in;            /**< required : >0..1. Diameter of a fastener. */
    double spacing_in;             /**< required : >0..120. Centres in a row. */
    double main_modulus_psi;       /**< required : >0..4e7. Modulus of elasticity of the main member. */
    double side_modulus_psi;       /**< "main_modulus_psi, for metal it must be given" : >0..4e7. Modulus of elasticity of the side members. */
    double main_area_in2;          /**< required : >0..1000. Gross cross-section of the main member; loaded across its grain, its thickness times the width that the group takes up. */
    double side_area_in2;          /**< required : >0..1000. Gross cross-sections of all side members together. */
} frame_group_action_in;

/** How unevenly a row shares its load. */
typedef struct frame_group_action_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    int32_t spare;
    double group_factor;           /**< Group action factor C_g: what group_factor of dowel_lateral and fastener_sum wants. */
    double load_slip_lb_per_in;    /**< Load-slip modulus gamma of one fastener. */
    double stiffness_ratio;        /**< R_EA, the softer member over the stiffer. */
    double u;                      /**< u of the formula. */
    double m;                      /**< m of the formula. */
    double effective_count;        /**< What the row is worth: C_g times the fasteners in it. */
} frame_group_action_out;

/** Finds the group action factor C_g of a row of fasteners by the exact formula (NDS 2018 equation 11.3-1). Under 1/4 in diameter
 * it is 1. */
FRAME_CALCULATION(group_action);

/** Where a fastener stands in a member. As a tuple or array: x, y, weight. */
typedef struct frame_fastener_place {
    uint32_t struct_size, struct_id;
    double x_in;   /**< required : -1200..1200. Along the grain, from the near end. */
    double y_in;   /**< required : -1200..1200. Across the grain, from the lower edge. */
    double weight; /**< 1 : >0..1000. Its stiffness and value against the others', for eccentric loads. */
} frame_fastener_place;
FRAME_ELEMENT(fastener_place);

/** What pulls on the near end of a member. */
typedef int32_t frame_end_pull;
enum frame_end_pull_values {
    FRAME_PULL_TOWARD_END = 1, /**< "toward the end" | "tension". The fasteners press toward the member's end. */
    FRAME_PULL_FROM_END = 2    /**< "away from the end" | "compression". They press away from it. */
};

/** Which edge the fasteners press against, under a load across the grain. */
typedef int32_t frame_loaded_edge;
enum frame_loaded_edge_values {
    FRAME_EDGE_LOADED_UPPER = 1, /**< "upper". The upper edge. */
    FRAME_EDGE_LOADED_LOWER = 2, /**< "lower". The lower edge. */
    FRAME_EDGE_LOADED_BOTH = 3   /**< "both" | "either". Now this, now that. */
};

/** What to do about distances under the least allowed. */
typedef int32_t frame_under_least;
enum frame_under_least_values {
    FRAME_UNDER_LEAST_REFUSE = 1, /**< "refuse". Fail, and say which and by how much. */
    FRAME_UNDER_LEAST_REPORT = 2  /**< "report". Answer with the findings and a factor of 0. */
};

/** A distance in a layout of fasteners. */
typedef int32_t frame_layout_distance;
enum frame_layout_distance_values {
    FRAME_DISTANCE_NEAR_END = 1,     /**< "near end". To the member's near end. */
    FRAME_DISTANCE_FAR_END = 2,      /**< "far end". To its far end. */
    FRAME_DISTANCE_LOWER_EDGE = 3,   /**< "lower edge". To the lower edge. */
    FRAME_DISTANCE_UPPER_EDGE = 4,   /**< "upper edge". To the upper edge. */
    FRAME_DISTANCE_IN_ROW = 5,       /**< "spacing in a row". Between neighbours in a row, along the load. */
    FRAME_DISTANCE_BETWEEN_ROWS = 6  /**< "between rows". Between rows, across the load. */
};

/** Fasteners in one member: places, or a pattern of rows. Give size, or diameter_in. */
typedef struct frame_fastener_layout_in {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;           /**< required. Kind of fastener. */
    frame_end_pull pull;             /**< toward the end. Which way the fasteners press, along the grain. */
    frame_loaded_edge loaded_edge;   /**< both. Which edge they press against, across the grain. */
    frame_under_least under_least;   /**< refuse. What to do about distances under the least allowed. */
    frame_bool hardwood;             /**< no. The member is a hardwood. */
    frame_bool prebored;             /**< no. Nails and screws go into drilled holes. */
    frame_bool withdrawal_only;      /**< no. Lag screws loaded along themselves only; the angle does not count then. */
    int32_t spare;
    const frame_fastener_place *places; /**< optional. Where each fastener stands, instead of a pattern. */
    size_t place_count;                 /**< count : 0..500. */
    const char *size;                /**< optional. Size by its usual name ("16d", "No.10", "1/2"). */
    double diameter_in;              /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double width_in;                 /**< required : >0..48. Width of the member across the grain. */
    double length_in;                /**< optional : >0..1200. Length of the member along the grain; without it the far end is far away. */
    double angle_deg;                /**< required : 0..90. Angle of the load to the grain: 0 along, 90 across; between them both rules hold. */
    double main_thickness_in;        /**< optional : >0..48. Length of the fastener in the main member; needed from 1/4 in up. */
    double side_thickness_in;        /**< optional : >0..48. Length of the fastener in all side members together; needed from 1/4 in up. */
    int32_t rows;                    /**< 1 : 1..50. Rows of a pattern, side by side across the load. */
    int32_t per_row;                 /**< optional : 1..200. Fasteners in a row of a pattern. */
    double spacing_in;               /**< optional : >0..120. Centres in a row. */
    double row_spacing_in;           /**< optional : >0..48. Centres of rows. */
    double end_distance_in;          /**< optional : >0..120. Near end to the first fastener. */
    double edge_distance_in;         /**< "the pattern stands in the middle" : >0..48. Lower edge to the first fastener. */
} frame_fastener_layout_in;

/** Whether the distances of a layout do. */
typedef struct frame_fastener_layout_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether every distance is at least the least allowed. */
    int32_t count;        /**< Fasteners. */
    frame_layout_distance governs; /**< The distance that decides; not given when all are full. */
    double geometry_factor;        /**< Geometry factor C_Delta of all of them; 0 where a distance is under the least. */
    double short_by_in;            /**< What the distance that decides lacks to its least; 0 where none does. */
} frame_fastener_layout_out;

/** One distance against its rule: the least of its kind in the layout. */
typedef struct frame_fastener_layout_finding {
    uint32_t struct_size, struct_id;
    frame_layout_distance distance; /**< Which distance. */
    frame_bool across_grain;        /**< Whether by the rules for load across the grain. */
    frame_bool met;                 /**< Whether it is at least the least (or recommended) one. */
    int32_t first;                  /**< Place of the fastener, from 0. */
    int32_t second;                 /**< Place of its neighbour; not given for ends and edges. */
    int32_t spare;
    double has_in;   /**< What it is. */
    double least_in; /**< The least allowed; recommended, under 1/4 in. */
    double full_in;  /**< What full value needs. */
    double factor;   /**< Its C_Delta: 0 under the least. */
} frame_fastener_layout_finding;

/** Checks a drawn layout of fasteners for its end, edge and row distances (NDS 2018 12.5.1) and gives C_Delta; for nails and screws
 * under 1/4 in, against what the standard's commentary recommends. A distance under the least is refused, with which and by how much,
 * unless a report is asked for. */
FRAME_ANSWER(fastener_layout);
/** The distances, each against its rule. */
FRAME_ANSWER_LIST(fastener_layout, finding, findings);
/** The member's face with the fasteners and their distances. */
FRAME_VIEW(fastener_layout, drawing);

/** A demand for which a pattern is wanted. Give demand_lb, or demand_plf with length_in. */
typedef struct frame_fastener_pattern_in {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;       /**< required. Kind of fastener. */
    frame_end_pull pull;         /**< toward the end. Which way the fasteners press, along the grain. */
    frame_loaded_edge loaded_edge; /**< both. Which edge they press against, across the grain. */
    frame_bool hardwood;         /**< no. The member is a hardwood. */
    frame_bool prebored;         /**< no. Nails and screws go into drilled holes. */
    frame_bool across_grain;     /**< no. The load is across the grain. */
    frame_bool metal_side;       /**< no. The side members are metal plates. */
    int32_t least_count;         /**< 2 : 1..100. The fewest to use. */
    const char *size;            /**< optional. Size by its usual name ("16d", "No.10", "1/2"). */
    double diameter_in;          /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double each_lb;              /**< required : >0..1e6. Adjusted value of one, with C_g and C_Delta 1. */
    double demand_lb;            /**< optional : >0..1e7. What the joint must carry. */
    double demand_plf;           /**< optional : >0..1e6. What each foot of length_in must carry. */
    double width_in;             /**< required : >0..48. Width of the member across the grain. */
    double length_in;            /**< optional : >0..1200. Room along the grain. */
    double main_thickness_in;    /**< optional : >0..48. Length of the fastener in the main member; needed from 1/4 in up. */
    double side_thickness_in;    /**< optional : >0..48. Length of the fastener in all side members together; needed from 1/4 in up. */
    double modulus_psi;          /**< 1200000 : >0..4e7. Modulus of elasticity of wooden members, for C_g. */
    double side_modulus_psi;     /**< "modulus_psi, for metal it must be given" : >0..4e7. Modulus of the side members, for C_g. */
    double main_area_in2;        /**< "width times thickness" : >0..1000. Gross cross-section of the main member, for C_g. */
    double side_area_in2;        /**< "width times thickness" : >0..1000. Gross cross-sections of all side members, for C_g. */
} frame_fastener_pattern_in;

/** A pattern that carries the demand. */
typedef struct frame_fastener_pattern_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    int32_t count;        /**< Fasteners. */
    int32_t rows;         /**< Rows along the load. */
    int32_t per_row;      /**< Fasteners in a row. */
    double spacing_in;       /**< Centres in a row. */
    double row_spacing_in;   /**< Centres of rows; 0 for one row. */
    double end_distance_in;  /**< Near end to the first fastener. */
    double edge_distance_in; /**< Lower edge to the first fastener. */
    double used_length_in;   /**< Near end to the last fastener's own end distance. */
    double group_factor;     /**< C_g. */
    double demand_lb;        /**< What the joint must carry. */
    double capacity_lb;      /**< What the pattern carries. */
    double ratio;            /**< Demand over capacity. */
} frame_fastener_pattern_out;

/** A fastener of a pattern. */
typedef struct frame_fastener_pattern_place {
    uint32_t struct_size, struct_id;
    double x_in; /**< Along the grain, from the near end. */
    double y_in; /**< Across the grain, from the lower edge. */
} frame_fastener_pattern_place;

/** Finds how many fasteners a demand needs and a pattern with full distances for them: the fewest fasteners, then the shortest joint,
 * with C_g of its rows from 1/4 in diameter up (NDS 2018 11.3.6, 12.5.1). */
FRAME_ANSWER(fastener_pattern);
/** Where each fastener stands. */
FRAME_ANSWER_LIST(fastener_pattern, place, places);
/** The member's face with the pattern and its distances. */
FRAME_VIEW(fastener_pattern, drawing);

/** How a fastener gives before it reaches its value. */
typedef int32_t frame_slip_law;
enum frame_slip_law_values {
    FRAME_SLIP_RIGID = 1, /**< "rigid". Every fastener that moves at all carries its full value. */
    FRAME_SLIP_CURVE = 2  /**< "curve". The share of its value at a slip is (1 - exp(-curve_rate slip)) to the power curve_power. */
};

/** A group of fasteners alike and a load that need not pass through their centre. */
typedef struct frame_fastener_eccentric_in {
    uint32_t struct_size, struct_id;
    const frame_fastener_place *places; /**< required. Where each fastener stands. */
    size_t place_count;                 /**< count : 2..1000. */
    frame_slip_law law;     /**< rigid. How a fastener gives, for the instantaneous centre. */
    int32_t spare;
    double each_lb;         /**< required : >0..1e6. Adjusted value of one of weight 1. */
    double force_x_lb;      /**< 0 : -1e7..1e7. Load along x. */
    double force_y_lb;      /**< 0 : -1e7..1e7. Load along y. */
    double at_x_in;         /**< 0 : -12000..12000. Where the load acts, x. */
    double at_y_in;         /**< 0 : -12000..12000. Where the load acts, y. */
    double moment_lb_in;    /**< 0 : -1e9..1e9. A couple beside it, counterclockwise. */
    double curve_rate_per_in; /**< optional : >0..1e5. Rate of the curve, per inch of slip: from a test of the joint. */
    double curve_power;       /**< optional : >0..10. Power of the curve. */
    double curve_slip_in;     /**< optional : >0..10. The slip that the fastener farthest from the centre may reach. */
} frame_fastener_eccentric_in;

/** What an eccentric load does to a group. */
typedef struct frame_fastener_eccentric_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the elastic ratio is at most 1. */
    int32_t worst;        /**< Place of the fastener that carries most of its value, from 0. */
    int32_t rounds;       /**< Rounds in which the instantaneous centre was found. */
    double centre_x_in;   /**< Elastic centre of the group. */
    double centre_y_in;   /**< The same, y. */
    double moment_lb_in;  /**< Moment of the load about it. */
    double polar_in2;     /**< Sum of weights times distances squared. */
    double largest_lb;    /**< The most that one fastener carries, elastically. */
    double ratio;         /**< The most that one fastener carries over its value, elastically. */
    double instant_x_in;  /**< Instantaneous centre; not given where the group only shifts. */
    double instant_y_in;  /**< The same, y. */
    double instant_ratio; /**< Load over what the group carries by the instantaneous centre; never above ratio. */
} frame_fastener_eccentric_out;

/** What one fastener of the group carries, as the joint pulls on it. */
typedef struct frame_fastener_eccentric_share {
    uint32_t struct_size, struct_id;
    double x_lb;         /**< Elastically, along x. */
    double y_lb;         /**< Elastically, along y. */
    double force_lb;     /**< Elastically, both together. */
    double ratio;        /**< That over its value. */
    double instant_x_lb; /**< By the instantaneous centre at the group's full load, along x. */
    double instant_y_lb; /**< The same along y. */
} frame_fastener_eccentric_share;

/** Shares an eccentric load among the fasteners of a group, by the elastic centre and by the instantaneous centre. The elastic one is what
 * passes; the other shows the reserve where the joint is ductile. */
FRAME_ANSWER(fastener_eccentric);
/** What each fastener carries. */
FRAME_ANSWER_LIST(fastener_eccentric, share, shares);
/** The group with the forces on its fasteners. */
FRAME_VIEW(fastener_eccentric, drawing);

FRAME_END

#endif
