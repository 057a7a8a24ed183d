/** @file joint/frames.h
 * The joints of a frame: joists, jacks, studs, rafters, plates, rims, plies, ledgers, heels, ridges, posts, and the chain of uplift.
 */
#ifndef FRAME_JOINT_FRAMES_H
#define FRAME_JOINT_FRAMES_H

#include <frame/base.h>
#include <frame/drawing.h>
#include <frame/load.h>
#include <frame/material.h>
#include <frame/joint/dowels.h>

FRAME_BEGIN

/** How the end of a member is held. */
typedef int32_t frame_end_way;
enum frame_end_way_values {
    FRAME_END_WAY_TOE_NAILS = 1, /**< "toe nails" | "toe-nails". Nails slanting through the member into what carries it. */
    FRAME_END_WAY_END_NAILS = 2, /**< "end nails" | "end-nails". Nails through what carries it, or the plate, into the end grain of the member. */
    FRAME_END_WAY_METAL = 3 /**< "metal" | "hanger" | "strap" | "tie" | "clip". A metal part with the allowable loads its maker publishes. */
};

/** The end of a joist on the side of a beam, held by nails or a hanger. */
typedef struct frame_joist_hold_in {
    uint32_t struct_size, struct_id;
    frame_end_way way;            /**< required. How the end is held. */
    frame_bool metal_may_be_raised; /**< no. The maker lets the given values be raised for the duration of load. */
    int32_t spare;
    int32_t count;                /**< optional : 1..1000. Nails or screws at the end; of metal parts, 1. */
    double reaction_lb;           /**< required : 0..1e6. What the end bears down with. */
    double uplift_lb;             /**< 0 : 0..1e6. What lifts it. */
    double metal_lb;              /**< optional : >0..1e6. Allowable load down of the metal part. */
    double metal_uplift_lb;       /**< optional : >0..1e6. Allowable uplift of the metal part. */
    frame_dowel_kind kind;        /**< optional. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the member nailed through. */
    frame_species main_species;   /**< optional. Species of the member nailed into. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< "a third of the length for toe-nails, else it must be given" : >0..24. Thickness of the member nailed through. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of that member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the member nailed through, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the member nailed into, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_joist_hold_in;

/** Whether that end is held. */
typedef struct frame_joist_hold_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t needed_count; /**< Nails or screws needed, or metal parts. */
    int32_t spare;
    double each_lb;       /**< Adjusted lateral value of one, or what the metal part carries down. */
    double demand_lb;     /**< What the end must carry, the larger of both ways. */
    double capacity_lb;   /**< What the count given carries; not given without one. */
    double ratio;         /**< Demand over capacity; with no count, of the count needed. */
} frame_joist_hold_out;

/** Holds the end of a joist at a beam: toe-nails or end nails by the yield-limit equations (NDS 2018 12.3, 12.5), or a hanger by its published allowable load, raised for duration only where its maker allows that. */
FRAME_CALCULATION(joist_hold);

/** The end of a jack or hip rafter at a hip, valley or ridge. */
typedef struct frame_jack_hold_in {
    uint32_t struct_size, struct_id;
    frame_end_way way;            /**< required. How the end is held. */
    frame_bool metal_may_be_raised; /**< no. The maker lets the given values be raised for the duration of load. */
    int32_t spare;
    int32_t count;                /**< optional : 1..1000. Nails or screws at the end; of metal parts, 1. */
    double reaction_lb;           /**< required : 0..1e6. What the end bears down with. */
    double uplift_lb;             /**< 0 : 0..1e6. What lifts it. */
    double metal_lb;              /**< optional : >0..1e6. Allowable load down of the metal part. */
    double metal_uplift_lb;       /**< optional : >0..1e6. Allowable uplift of the metal part. */
    frame_dowel_kind kind;        /**< optional. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the member nailed through. */
    frame_species main_species;   /**< optional. Species of the member nailed into. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< "a third of the length for toe-nails, else it must be given" : >0..24. Thickness of the member nailed through. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of that member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the member nailed through, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the member nailed into, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_jack_hold_in;

/** Whether that end is held. */
typedef struct frame_jack_hold_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t needed_count; /**< Nails or screws needed, or metal parts. */
    int32_t spare;
    double each_lb;       /**< Adjusted lateral value of one, or what the metal part carries down. */
    double demand_lb;     /**< What the end must carry, the larger of both ways. */
    double capacity_lb;   /**< What the count given carries; not given without one. */
    double ratio;         /**< Demand over capacity; with no count, of the count needed. */
} frame_jack_hold_out;

/** Holds the end of a jack at its hip or valley, or of a hip at the ridge, in shear: toe-nails, end nails or a metal part, as joist_hold. */
FRAME_CALCULATION(jack_hold);

/** The end of a stud at its plate. */
typedef struct frame_stud_end_in {
    uint32_t struct_size, struct_id;
    frame_end_way way;            /**< required. How the end is held. */
    frame_bool metal_may_be_raised; /**< no. The maker lets the given values be raised for the duration of load. */
    int32_t count;                /**< optional : 1..1000. Nails or screws at the end; of metal parts, 1. */
    int32_t spare;
    double lateral_lb;            /**< 0 : 0..1e6. Load across the member, along the plate or square to the wall. */
    double uplift_lb;             /**< 0 : 0..1e6. Net load away from the plate. */
    double metal_lb;              /**< optional : >0..1e6. Allowable lateral load of the metal part. */
    double metal_uplift_lb;       /**< optional : >0..1e6. Allowable uplift of the metal part. */
    frame_dowel_kind kind;        /**< optional. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the member nailed through. */
    frame_species main_species;   /**< optional. Species of the member nailed into. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< "a third of the length for toe-nails, else it must be given" : >0..24. Thickness of the member nailed through. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of that member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the member nailed through, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the member nailed into, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_stud_end_in;

/** Whether it is held. */
typedef struct frame_stud_end_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t needed_count; /**< Nails or screws needed, or metal parts. */
    int32_t spare;
    double each_lb;            /**< Adjusted lateral value of one. */
    double each_withdrawal_lb; /**< Adjusted withdrawal value of one; 0 for end nails, which hold nothing. */
    double ratio;              /**< Load over what the joint carries, both directions together; with no count, of the count needed. */
    double lateral_ratio;      /**< The lateral part of it. */
    double uplift_ratio;       /**< The uplift part of it. */
} frame_stud_end_out;

/** Holds the end of a stud at its plate against load across the wall, and uplift where it is toe-nailed or strapped: nails in end grain hold nothing along themselves (NDS 2018 12.2.3). */
FRAME_CALCULATION(stud_end);

/** A rafter or joist on its plate, lifted and pushed by wind. */
typedef struct frame_rafter_uplift_in {
    uint32_t struct_size, struct_id;
    frame_end_way way;            /**< required. How the end is held. */
    frame_bool metal_may_be_raised; /**< no. The maker lets the given values be raised for the duration of load. */
    int32_t count;                /**< optional : 1..1000. Nails or screws at the end; of metal parts, 1. */
    int32_t spare;
    double lateral_lb;            /**< 0 : 0..1e6. Load across the member, along the plate or square to the wall. */
    double uplift_lb;             /**< 0 : 0..1e6. Net load away from the plate. */
    double metal_lb;              /**< optional : >0..1e6. Allowable lateral load of the metal part. */
    double metal_uplift_lb;       /**< optional : >0..1e6. Allowable uplift of the metal part. */
    frame_dowel_kind kind;        /**< optional. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the member nailed through. */
    frame_species main_species;   /**< optional. Species of the member nailed into. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< "a third of the length for toe-nails, else it must be given" : >0..24. Thickness of the member nailed through. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of that member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the member nailed through, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the member nailed into, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_rafter_uplift_in;

/** Whether it is held. */
typedef struct frame_rafter_uplift_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t needed_count; /**< Nails or screws needed, or metal parts. */
    int32_t spare;
    double each_lb;            /**< Adjusted lateral value of one. */
    double each_withdrawal_lb; /**< Adjusted withdrawal value of one; 0 for end nails, which hold nothing. */
    double ratio;              /**< Load over what the joint carries, both directions together; with no count, of the count needed. */
    double lateral_ratio;      /**< The lateral part of it. */
    double uplift_ratio;       /**< The uplift part of it. */
} frame_rafter_uplift_out;

/** Holds a rafter or joist down on its plate: toe-nails in withdrawal and lateral load together (NDS 2018 12.2.3, 12.4, 12.5.4), or a metal tie by its published allowable loads. */
FRAME_CALCULATION(rafter_uplift);

/** A lap of a double top plate that carries the force of a chord or strut. */
typedef struct frame_plate_lap_in {
    uint32_t struct_size, struct_id;
    double tension_lb;            /**< required : 0..1e6. Force along the plate. */
    int32_t count;                /**< optional : 1..1000. Nails on each side of the joint. */
    int32_t spare;
    frame_dowel_kind kind;        /**< required. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the upper plate. */
    frame_species main_species;   /**< optional. Species of the lower plate. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< 1.5 : >0..24. Thickness of a plate. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of that member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the upper plate, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the lower plate, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_plate_lap_in;

/** What the lap carries. */
typedef struct frame_plate_lap_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t needed_count; /**< Nails needed on each side of the joint. */
    int32_t spare;
    double each_lb;       /**< Adjusted lateral value of one. */
    double capacity_lb;   /**< What the count given carries; not given without one. */
    double ratio;         /**< Force over capacity; with no count, of the count needed. */
} frame_plate_lap_out;

/** Nails a lap of a double top plate for the force along it (NDS 2018 12.3): nails on each side of the joint in the lower plate. */
FRAME_CALCULATION(plate_lap);

/** A rim or blocks on a plate, with shear along them. */
typedef struct frame_rim_joint_in {
    uint32_t struct_size, struct_id;
    frame_bool toe_nailed;        /**< yes. Toe-nails; else nails through the plate or sole, square to it. */
    int32_t spare;
    double shear_plf;             /**< required : 0..1e5. Shear along the rim or the row of blocks. */
    double spacing_in;            /**< optional : >0..120. Centres of the nails. */
    double block_length_in;       /**< optional : >0..240. Length of one block, for the nails that each needs. */
    double block_spacing_in;      /**< "block_length_in" : >0..240. Centres of the blocks; those left out leave more to the others. */
    frame_dowel_kind kind;        /**< required. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the member nailed through. */
    frame_species main_species;   /**< optional. Species of the member nailed into. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< "a third of the length for toe-nails, else it must be given" : >0..24. Thickness of the member nailed through. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of that member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the member nailed through, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the member nailed into, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_rim_joint_in;

/** What the rim or the blocks carry. */
typedef struct frame_rim_joint_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t per_block;      /**< Nails that each block needs; not given without its length. */
    int32_t spare;
    double each_lb;         /**< Adjusted lateral value of one. */
    double needed_spacing_in; /**< Widest centres that carry the shear; not given without shear. */
    double capacity_plf;    /**< What the spacing given carries; not given without one. */
    double ratio;           /**< Shear over capacity; not given without a spacing. */
} frame_rim_joint_out;

/** Nails rim joists and blocking to plates for the shear along them (NDS 2018 12.3, 12.5.4): widest centres, and nails for each block. */
FRAME_CALCULATION(rim_joint);

/** Plies of a beam or header nailed together. A load on one side reaches the other plies through the nails. */
typedef struct frame_ply_joint_in {
    uint32_t struct_size, struct_id;
    int32_t plies;                /**< required : 2..5. Plies. */
    int32_t rows;                 /**< 2 : 1..6. Rows of fasteners. */
    frame_bool side_loaded;       /**< required. Joists hang on one side, instead of bearing on all plies. */
    int32_t spare;
    double load_plf;              /**< required : 0..1e5. The load on that side, or on top. */
    double most_spacing_in;       /**< 16 : >0..48. Widest centres allowed, whatever the load. */
    double spacing_in;            /**< optional : >0..48. Centres in each row. */
    frame_dowel_kind kind;        /**< required. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the ply under the heads. */
    frame_species main_species;   /**< optional. Species of the next ply. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< 1.5 : >0..24. Thickness of one ply. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of that member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the ply under the heads, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the next ply, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_ply_joint_in;

/** How the plies are nailed. */
typedef struct frame_ply_joint_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    double each_lb;        /**< Adjusted lateral value of one. */
    double transfer_plf;   /**< What must pass from the loaded ply to the others. */
    double needed_spacing_in; /**< Centres in each row that carry it, at most the widest allowed. */
    double capacity_plf;   /**< What the spacing given passes on; not given without one. */
    double ratio;          /**< Load over capacity; not given without a spacing. */
} frame_ply_joint_out;

/** Nails the plies of a beam or header together: a load on one side of n plies passes (n-1)/n of itself through the first joint (statics), by nails, screws or bolts of NDS 2018 12.3. */
FRAME_CALCULATION(ply_joint);

/** What a ledger is fastened to. */
typedef int32_t frame_ledger_backing;
enum frame_ledger_backing_values {
    FRAME_LEDGER_BACKING_BAND = 1, /**< "band" | "rim" | "band joist" | "rim joist". The band joist of a floor, of sawn lumber. */
    FRAME_LEDGER_BACKING_STUDS = 2, /**< "studs" | "stud". Studs, each fastener on one of them. */
    FRAME_LEDGER_BACKING_VENEER = 3, /**< "veneer" | "masonry veneer" | "brick" | "stone" | "stucco". Veneer or stucco: refused. */
    FRAME_LEDGER_BACKING_CANTILEVER = 4 /**< "cantilever" | "cantilevered floor". The band of a floor that stands out over the wall below: refused. */
};

/** A ledger that carries one side of a deck or floor, through whatever covers the wall. */
typedef struct frame_ledger_joint_in {
    uint32_t struct_size, struct_id;
    frame_ledger_backing backing; /**< required. What the ledger is fastened to. */
    int32_t rows;                 /**< 1 : 1..4. Fasteners side by side, one over the other, at each place. */
    double joist_span_in;         /**< required : >0..480. Span of the joists that bear on the ledger. */
    double live_psf;              /**< required : 0..1000. Live load. */
    double dead_psf;              /**< 10 : 0..1000. Dead load. */
    double snow_psf;              /**< 0 : 0..1000. Snow on it. */
    double sheathing_in;          /**< required : 0..6. Sheathing between ledger and wall framing, which holds nothing; 0 for none. */
    double foam_in;               /**< 0 : 0..12. Foam between them. */
    double space_in;              /**< 0 : 0..6. Space between them, as by washers or a drainage mat. */
    double length_of_ledger_in;   /**< optional : >0..2400. Length of the ledger, for the count. */
    double spacing_in;            /**< optional : >0..120. Centres of the fasteners. */
    int32_t ties;                 /**< optional : 1..100. Lateral ties of a deck to the house. */
    int32_t spare;
    double tie_lb;                /**< optional : >0..1e5. Allowable tension of one of them. */
    frame_dowel_kind kind;        /**< required. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the ledger. */
    frame_species main_species;   /**< optional. Species of the band or the studs. */
    frame_service service;        /**< wet. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< 1.5 : >0..24. Thickness of the ledger. */
    double main_thickness_in;     /**< required : >0..48. Thickness of the band, or depth of the studs. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the ledger, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the band or the studs, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_ledger_joint_in;

/** How the ledger is fastened. */
typedef struct frame_ledger_joint_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t needed_count;   /**< Places along the ledger; not given without its length. */
    frame_bool ties_pass;   /**< Whether the lateral ties given do; not given without them. */
    double load_plf;        /**< Load on the ledger. */
    double each_lb;         /**< Adjusted lateral value of one. */
    double gap_in;          /**< What lies between ledger and framing. */
    double penetration_in;  /**< Depth in the framing; not given for bolts. */
    double needed_spacing_in; /**< Widest centres that carry it. */
    double capacity_plf;    /**< What the spacing given carries; not given without one. */
    double ratio;           /**< Load over capacity; not given without a spacing. */
    double two_ties_lb;     /**< Each of two lateral ties of a deck, one near each end. */
    double four_ties_lb;    /**< Each of four lateral ties, spread along it. */
} frame_ledger_joint_out;

/** Fastens a ledger or band to wall framing for its load down, through sheathing, foam or a space by the general dowel equations, and names the lateral ties a deck needs (IRC R507.9). Veneer, stucco and cantilevered floors are refused; withdrawal and toe-nails never carry a ledger. */
FRAME_CALCULATION(ledger_joint);

/** The heel of a pair of rafters: what the tie holds together. Give the fastener, or each_lb. */
typedef struct frame_heel_joint_in {
    uint32_t struct_size, struct_id;
    int32_t count;                /**< optional : 1..1000. Nails at the heel. */
    int32_t least_count;          /**< 3 : 1..100. The fewest to use (IRC table R802.5.2(1)). */
    double slope;                 /**< required : >0..10. Slope of the roof, rise over run. */
    double span_in;               /**< required : >0..1200. Span of the roof, outside to outside of the walls. */
    double spacing_in;            /**< required : >0..120. Centres of the rafters. */
    double load_psf;              /**< required : >0..1000. Dead load and snow or roof live load together, on plan. */
    double tie_height_in;         /**< 0 : 0..600. Height of the tie above the plate. */
    double each_lb;               /**< optional : >0..1e5. Adjusted value of one, instead of the fastener. */
    frame_dowel_kind kind;        /**< optional. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the rafter. */
    frame_species main_species;   /**< optional. Species of the tie. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< 1.5 : >0..24. Thickness of the rafter. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of that member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the rafter, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the tie, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_heel_joint_in;

/** What the heel must hold. */
typedef struct frame_heel_joint_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t needed_count; /**< Nails needed at each heel and each lap of the tie. */
    int32_t spare;
    double thrust_plf;    /**< Thrust along the wall with the tie at the plate. */
    double raise_factor;  /**< What a raised tie multiplies it by, 1/(1 - H_C/H_R). */
    double tie_lb;        /**< Force in the tie at each pair of rafters. */
    double value_lb;      /**< Adjusted value of one nail. */
    double capacity_lb;   /**< What the count given carries; not given without one. */
    double ratio;         /**< Tie force over capacity; with no count, of the count needed. */
    double rafter_moment_lb_in; /**< Moment that a raised tie puts in each rafter where it meets it; 0 at the plate. */
} frame_heel_joint_out;

/** Finds the thrust of a pair of rafters, H = w L^2/(8 rise), the force in their tie at or above the plate, and the nails that hold it (statics; NDS 2018 12.3; IRC R802.5.2). Slopes under 3 in 12 are refused: there the ridge is a beam. */
FRAME_CALCULATION(heel_joint);

/** A pair of rafters lifted by wind, held together at the ridge by a strap over it or a collar tie under it. */
typedef struct frame_ridge_tie_in {
    uint32_t struct_size, struct_id;
    int32_t count;                /**< optional : 1..1000. Nails at each end. */
    int32_t spare;
    double slope;                 /**< required : >0..10. Slope of the roof, rise over run. */
    double span_in;               /**< required : >0..1200. Span of the roof, outside to outside of the walls. */
    double spacing_in;            /**< required : >0..120. Centres of the straps or ties. */
    double uplift_psf;            /**< required : >0..500. Net uplift, on plan: wind less what of the dead load is counted. */
    double drop_in;               /**< 0 : 0..600. Height of the ridge above the collar tie; 0 for a strap over the ridge. */
    double strap_lb;              /**< optional : >0..1e5. Allowable tension of the strap or tie itself. */
    frame_dowel_kind kind;        /**< optional. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the tie. */
    frame_species main_species;   /**< optional. Species of the rafter. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< required : >0..24. Thickness of the tie, or of the strap's steel. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of that member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the tie, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the rafter, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_ridge_tie_in;

/** What holds the ridge together. */
typedef struct frame_ridge_tie_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t needed_count; /**< Nails needed at each end. */
    int32_t spare;
    double tie_lb;        /**< Force in the tie, level; in a strap, along the slope. */
    double each_lb;       /**< Adjusted lateral value of one. */
    double capacity_lb;   /**< What the count given carries; not given without one. */
    double ratio;         /**< Force over capacity, of nails and strap the larger; with no count, of the count needed. */
} frame_ridge_tie_out;

/** Finds the force that wind puts in a ridge strap or a collar tie, T = w L^2/(8 lever), and its nails (statics; NDS 2018 12.3). */
FRAME_CALCULATION(ridge_tie);

/** A post on its base or under its cap, by the allowable loads that the part's maker publishes. */
typedef struct frame_post_end_in {
    uint32_t struct_size, struct_id;
    frame_bool metal_may_be_raised; /**< no. The maker lets the given values be raised for the duration of load. */
    int32_t spare;
    double down_lb;               /**< 0 : 0..1e6. Load down. */
    double uplift_lb;             /**< 0 : 0..1e6. Load up. */
    double lateral_lb;            /**< 0 : 0..1e6. Load sideways. */
    double metal_down_lb;         /**< optional : >0..1e6. Allowable load down. */
    double metal_uplift_lb;       /**< optional : >0..1e6. Allowable load up. */
    double metal_lateral_lb;      /**< optional : >0..1e6. Allowable load sideways. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
} frame_post_end_in;

/** Whether it is held. */
typedef struct frame_post_end_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    double ratio;         /**< The largest of those below. */
    double down_ratio;    /**< Load down over its allowable. */
    double uplift_ratio;  /**< Load up over its allowable. */
    double lateral_ratio; /**< Load sideways over its allowable. */
    double together_ratio; /**< Load up and sideways together, their ratios added. */
} frame_post_end_out;

/** Checks a post base or cap against the allowable loads given for it; a load without an allowable is refused. Up and sideways at once, the ratios add. */
FRAME_CALCULATION(post_end);

/** A link of a chain. As a tuple or array: name, allowable_lb, count, dead_lb. */
typedef struct frame_uplift_link {
    uint32_t struct_size, struct_id;
    const char *name;    /**< required. What it is ("rafter tie", "stud strap"). */
    double allowable_lb; /**< required : >0..1e6. What one of them holds, adjusted. */
    int32_t count;       /**< 1 : 1..1000. How many of them share the load. */
    int32_t spare;
    double dead_lb;      /**< 0 : 0..1e6. Dead load that stands on this link and helps it, before the factor. */
} frame_uplift_link;
FRAME_ELEMENT(uplift_link);

/** The links that hold a roof down, from the roof to the foundation. */
typedef struct frame_uplift_chain_in {
    uint32_t struct_size, struct_id;
    const frame_uplift_link *links; /**< required. The links, from the roof down. */
    size_t link_count;              /**< count : 1..100. */
    double uplift_lb;    /**< required : >0..1e6. Uplift at the top, on what one chain holds. */
    double dead_factor;  /**< 0.6 : 0..1. Part of the dead load that is counted. */
} frame_uplift_chain_in;

/** The weakest of them. */
typedef struct frame_uplift_chain_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t weakest;      /**< Place of the weakest link, from 0. */
    int32_t spare;
    const char *weakest_name; /**< Its name. */
    double ratio;         /**< Its load over what it holds. */
    double capacity_lb;   /**< The uplift at the top that the chain could hold. */
    double foundation_lb; /**< What arrives below the last link; 0 where dead load has taken it up. */
} frame_uplift_chain_out;

/** A link with what it must hold. */
typedef struct frame_uplift_chain_link {
    uint32_t struct_size, struct_id;
    const char *name;   /**< Its name. */
    double demand_lb;   /**< What it must hold. */
    double capacity_lb; /**< What it holds. */
    double ratio;       /**< One over the other. */
} frame_uplift_chain_link;

/** Follows uplift from the roof to the foundation link by link, each less the dead load above it (ASCE 7-16 2.4.1: 0.6 of it), and names the weakest. */
FRAME_ANSWER(uplift_chain);
/** The links in order. */
FRAME_ANSWER_LIST(uplift_chain, link, links);

FRAME_END

#endif
