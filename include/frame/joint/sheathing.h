/** @file joint/sheathing.h
 * Sheathing that works: shear walls, diaphragms, and what holds where a stud was cut.
 */
#ifndef FRAME_JOINT_SHEATHING_H
#define FRAME_JOINT_SHEATHING_H

#include <frame/base.h>
#include <frame/drawing.h>
#include <frame/load.h>
#include <frame/material.h>
#include <frame/joint/dowels.h>

FRAME_BEGIN

/** Sheathing whose unit shears are tabulated. */
typedef int32_t frame_panel_sheathing;
enum frame_panel_sheathing_values {
    FRAME_PANEL_STRUCTURAL = 1, /**< "structural 1" | "structural I". Wood structural panels, Structural I. */
    FRAME_PANEL_SHEATHING = 2, /**< "sheathing" | "plywood" | "OSB" | "single floor". Wood structural panels, sheathing grade, or single floor in diaphragms. */
    FRAME_PANEL_GYPSUM = 3 /**< "gypsum wallboard" | "gypsum" | "drywall". Gypsum wallboard, 1/2 or 5/8 in, on walls. */
};

/** What the sheathing is part of. */
typedef int32_t frame_panel_use;
enum frame_panel_use_values {
    FRAME_PANEL_USE_WALL = 1, /**< "wall" | "shear wall". A shear wall, SDPWS table 4.3A. */
    FRAME_PANEL_USE_DIAPHRAGM = 2 /**< "diaphragm" | "roof" | "floor". A roof or floor, SDPWS tables 4.2A and 4.2C. */
};

/** What pushes sideways. */
typedef int32_t frame_lateral_load;
enum frame_lateral_load_values {
    FRAME_LATERAL_WIND = 1, /**< "wind". Wind. */
    FRAME_LATERAL_SEISMIC = 2 /**< "seismic" | "earthquake". Earthquake. */
};

/** Edition of the wind and seismic provisions. */
typedef int32_t frame_sdpws_edition;
enum frame_sdpws_edition_values {
    FRAME_SDPWS_2015 = 1, /**< "2015" | "2008". Two nominal values, wind and seismic; ASD halves either. */
    FRAME_SDPWS_2021 = 2 /**< "2021". One nominal value, the former wind column; ASD divides by 2.0 for wind and 2.8 for earthquake. */
};

/** Panels nailed to framing, as the tables have them. */
typedef struct frame_panel_shear_in {
    uint32_t struct_size, struct_id;
    frame_panel_use use;          /**< required. Wall or diaphragm. */
    frame_panel_sheathing sheathing; /**< required. Grade of the panels. */
    frame_lateral_load load;      /**< required. Wind or earthquake. */
    frame_sdpws_edition edition;  /**< 2015. Edition. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_bool blocked;           /**< required. All panel edges on framing or blocking. */
    frame_bool both_sides;        /**< no. A wall sheathed alike on both sides. */
    frame_bool long_edge_across;  /**< no. An unblocked diaphragm of case 1: no continuous panel joint along the load, nor unblocked edges across it. */
    frame_species framing_species; /**< optional. Species of the framing. */
    int32_t framing_nominal_in;   /**< 2 : 2..3. Nominal thickness of framing at panel edges, of diaphragms. */
    const char *nail;             /**< required. Common nail "6d", "8d", "10d"; for gypsum "5d cooler", "6d cooler", "No.6 screw". */
    double panel_in;              /**< required : >0..1. Thickness of the panels: 5/16, 3/8, 7/16, 15/32 or 19/32; of gypsum 1/2 or 5/8. */
    double edge_spacing_in;       /**< required : 2..8. Nails at panel edges (of diaphragms, at their boundary): walls 6, 4, 3, 2; blocked diaphragms 6, 4, 2.5, 2; unblocked ones 6; gypsum 7, 4, its screws 8, 6, 4. */
    double field_spacing_in;      /**< 12 : 6..16. Nails within panels, for unblocked walls; screws within gypsum. */
    double stud_spacing_in;       /**< optional : >0..24. Centres of the studs; unblocked walls and gypsum need it. */
    double framing_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the framing, instead of its species. */
} frame_panel_shear_in;

/** What they carry. */
typedef struct frame_panel_shear_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    int32_t spare;
    double nominal_plf;     /**< Nominal unit shear of the table. */
    double unit_plf;        /**< Design unit shear, by ASD or LRFD. */
    double gravity_factor;  /**< What lighter framing takes off, 1 - (0.5 - G). */
    double unblocked_factor; /**< C_ub of unblocked walls; 1 else. */
    double stiffness_osb_kip_per_in;     /**< Apparent shear stiffness G_a with OSB; walls only. */
    double stiffness_plywood_kip_per_in; /**< The same with plywood. */
} frame_panel_shear_out;

/** Finds the unit shear of nailed wood panels in shear walls and diaphragms (SDPWS 2008 to 2021, tables 4.2A, 4.2C, 4.3A, 4.3C). */
FRAME_CALCULATION(panel_shear);

/** A unit shear for which panels and their nails are wanted. */
typedef struct frame_panel_pattern_in {
    uint32_t struct_size, struct_id;
    frame_panel_use use;          /**< required. Wall or diaphragm. */
    frame_lateral_load load;      /**< required. Wind or earthquake. */
    frame_sdpws_edition edition;  /**< 2015. Edition. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_bool blocked;           /**< required. All panel edges on framing or blocking. */
    frame_bool both_sides;        /**< no. A wall sheathed alike on both sides. */
    frame_bool long_edge_across;  /**< no. An unblocked diaphragm of case 1. */
    frame_panel_sheathing sheathing; /**< optional. Grade of the panels, where only that will do; gypsum is not looked at. */
    frame_species framing_species; /**< optional. Species of the framing. */
    int32_t framing_nominal_in;   /**< 2 : 2..3. Nominal thickness of framing at panel edges, of diaphragms. */
    double demand_plf;            /**< required : >0..5000. Unit shear that they must carry, by the same method. */
    double panel_in;              /**< optional : >0..1. Thickness of the panels, where only that will do. */
    double support_spacing_in;    /**< 16 : 6..24. Centres of studs, joists or rafters. */
    double framing_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the framing, instead of its species. */
} frame_panel_pattern_in;

/** The choice with the fewest nails. */
typedef struct frame_panel_pattern_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    int32_t count;        /**< Choices that carry it. */
    int32_t nails_per_sheet; /**< Its nails in a sheet of 4 by 8 ft. */
    frame_panel_sheathing sheathing; /**< Its grade. */
    const char *nail;        /**< Its nail. */
    double panel_in;         /**< Its thickness. */
    double edge_spacing_in;  /**< Its nails at panel edges. */
    double unit_plf;         /**< What it carries. */
    double ratio;            /**< Demand over that. */
} frame_panel_pattern_out;

/** A pattern that carries it. */
typedef struct frame_panel_pattern_choice {
    uint32_t struct_size, struct_id;
    frame_panel_sheathing sheathing; /**< Grade. */
    int32_t nails_per_sheet;         /**< Nails in a sheet of 4 by 8 ft. */
    const char *nail;       /**< Nail. */
    double panel_in;        /**< Thickness. */
    double edge_spacing_in; /**< Nails at panel edges; at the boundary of a diaphragm. */
    double unit_plf;        /**< What it carries. */
    double ratio;           /**< Demand over that. */
} frame_panel_pattern_choice;

/** Lists the panels and nail patterns of the tables that carry a unit shear, the fewest nails first, and draws the first (SDPWS tables 4.2A, 4.2C, 4.3A). FRAME_IMPOSSIBLE where none does. */
FRAME_ANSWER(panel_pattern);
/** The patterns, the fewest nails first. */
FRAME_ANSWER_LIST(panel_pattern, choice, choices);
/** A sheet of 4 by 8 ft with the nails of the first. */
FRAME_VIEW(panel_pattern, drawing);

/** A wall line sheathed with panels: full-height segments, each held down, or the whole line with openings. */
typedef struct frame_shear_wall_in {
    uint32_t struct_size, struct_id;
    frame_bool perforated;        /**< required. One wall with openings, held down at its two ends; else segments, each held down. */
    frame_bool blocked;           /**< yes. All panel edges on framing or blocking. */
    const double *segments_in;    /**< required : >0..2400. Lengths of the full-height segments. */
    size_t segment_count;         /**< count : 1..100. */
    double unit_plf;              /**< required : >0..5000. Design unit shear, as panel_shear gives it. */
    double height_in;             /**< required : >0..480. Height of the wall. */
    double length_in;             /**< optional : >0..2400. Length of the whole wall; a perforated wall needs it. */
    double opening_height_in;     /**< optional : >0..480. Height of its tallest opening, for C_o by the table. */
    double opening_area_in2;      /**< optional : >0..1e6. Area of its openings, for C_o by the formula, instead. */
    double demand_lb;             /**< optional : >0..1e6. Shear in the wall. */
    double stiffness_kip_per_in;  /**< optional : >0..1000. Apparent shear stiffness G_a, as panel_shear gives it; with the next three, for the deflection. */
    double end_area_in2;          /**< optional : >0..200. Cross-section of the post at an end. */
    double end_modulus_psi;       /**< optional : >0..4e7. Its modulus of elasticity. */
    double hold_down_give_in;     /**< optional : 0..4. What the hold-down gives at its force. */
} frame_shear_wall_in;

/** What the wall carries. */
typedef struct frame_shear_wall_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    int32_t left_out;      /**< Segments too narrow to count. */
    int32_t spare;
    double counted_in;     /**< Lengths counted together, narrow ones weighted. */
    double opening_factor; /**< C_o; 1 for segments. */
    double capacity_lb;    /**< Shear that the wall carries. */
    double ratio;          /**< Demand over capacity; not given without one. */
    double hold_down_lb;   /**< Force in the hold-down at an end, of the demand, else of the capacity; without dead load. */
    double uplift_plf;     /**< Uplift along the bottom plate between hold-downs; perforated walls only. */
    double deflection_in;  /**< How far the top moves under the shear in the wall; not given without the four figures it needs, or with several segments. */
} frame_shear_wall_out;

/** Finds what a shear wall carries: segments by their own lengths, those narrower than half their height weighted by 2 b/h and left out past 3.5 to 1; or a wall with openings by the perforated method with C_o; and its hold-down forces (SDPWS 4.3.3 to 4.3.6). */
FRAME_CALCULATION(shear_wall);

/** A roof or floor that carries a uniform sideways load to two walls. */
typedef struct frame_diaphragm_in {
    uint32_t struct_size, struct_id;
    frame_bool blocked;           /**< required. All panel edges on framing or blocking. */
    int32_t spare;
    double length_in;             /**< required : >0..6000. Span between the walls that hold it. */
    double width_in;              /**< required : >0..6000. Its depth, along the load. */
    double load_plf;              /**< required : >0..1e5. Load along the span. */
    double unit_plf;              /**< required : >0..5000. Design unit shear, as panel_shear gives it. */
} frame_diaphragm_in;

/** What it carries. */
typedef struct frame_diaphragm_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the joint carries its load. */
    double shear_plf;   /**< Unit shear at the walls. */
    double reaction_lb; /**< Shear that each wall takes. */
    double chord_lb;    /**< Largest force in its chords. */
    double aspect;      /**< Length over width. */
    double most_aspect; /**< The most allowed. */
    double ratio;       /**< Unit shear over what the panels carry. */
} frame_diaphragm_out;

/** Checks a diaphragm on two walls: unit shear, chord force, aspect ratio (SDPWS 4.2.4). Too long a shape is refused. */
FRAME_CALCULATION(diaphragm);

/** A stud that was cut, and the sheathing nailed to what is left of it and to its neighbours. */
typedef struct frame_cut_stud_in {
    uint32_t struct_size, struct_id;
    int32_t nails_stud;           /**< required : 1..200. Nails of the sheathing in the cut stud, above the cut. */
    int32_t nails_neighbours;     /**< required : 1..400. Nails of the sheathing in both neighbours, within the same height. */
    double load_lb;               /**< optional : >0..1e6. What the stud carried. */
    frame_dowel_kind kind;        /**< required. Kind of fastener. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    frame_species side_species;   /**< optional. Species of the sheathing, as of its equivalent specific gravity. */
    frame_species main_species;   /**< optional. Species of the studs. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_service made;           /**< dry. Moisture of the lumber when the joint is made. */
    const char *size;             /**< optional. Size by its usual name: "16d", "No.10", "1/2". */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double root_diameter_in;      /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< required : >0..2. Thickness of the sheathing. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of that member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the sheathing, as of its equivalent specific gravity, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the studs, instead of its species. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_cut_stud_in;

/** A figure, never a pass. */
typedef struct frame_cut_stud_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    int32_t spare;
    double each_lb;       /**< Adjusted lateral value of one nail. */
    double stud_lb;       /**< What the nails in the cut stud could hand to the sheathing. */
    double neighbours_lb; /**< What the nails in the neighbours could take from it. */
    double figure_lb;     /**< The lesser: what the nails alone would hold. */
    double load_over_figure; /**< The load over it; not given without one. */
    const char *reason;   /**< Why the code does not count it. */
} frame_cut_stud_out;

/** Shows what the nails of the sheathing would hold up of a cut stud, with the reason why the code does not count it. It is a figure to know while shores are set, and there is nothing in the answer that passes. */
FRAME_CALCULATION(cut_stud);

FRAME_END

#endif
