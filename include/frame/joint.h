/** @file joint.h
 * Joints with dowel-type fasteners: nails, wood screws, lag screws and bolts, one alone across the grain of the joint, in
 * withdrawal, both at once, whether it reaches; groups, their layout and patterns, eccentric loads; the joints of a frame, from
 * ledger to ridge; sheathing as structure. National Design Specification for Wood Construction, 2018 edition, allowable stress
 * design or load and resistance factor design; Special Design Provisions for Wind and Seismic, 2008 to 2021.
 */
#ifndef FRAME_JOINT_H
#define FRAME_JOINT_H

#include <frame/base.h>
#include <frame/drawing.h>
#include <frame/load.h>
#include <frame/material.h>

FRAME_BEGIN

/** A kind of dowel-type fastener. */
typedef int32_t frame_dowel_kind;
enum frame_dowel_kind_values {
    FRAME_DOWEL_COMMON_NAIL = 1,     /**< "common nail" | "common" | "common wire nail". Smooth common wire nail, by pennyweight. */
    FRAME_DOWEL_BOX_NAIL = 2,        /**< "box nail" | "box". Box nail: thinner than a common nail of the same pennyweight. */
    FRAME_DOWEL_SINKER_NAIL = 3,     /**< "sinker nail" | "sinker". Sinker nail: shorter and thinner than a common nail of the same pennyweight. */
    FRAME_DOWEL_RING_SHANK_NAIL = 4, /**< "ring-shank nail" | "ring shank nail" | "post-frame ring shank nail". Hardened nail with rings (post-frame ring shank), by diameter and length. */
    FRAME_DOWEL_WOOD_SCREW = 5,      /**< "wood screw". Wood screw with cut or rolled thread, by number. */
    FRAME_DOWEL_LAG_SCREW = 6,       /**< "lag screw" | "lag bolt" | "lag". Lag screw in a lead hole, by nominal diameter. */
    FRAME_DOWEL_BOLT = 7,            /**< "bolt" | "machine bolt". Bolt through a drilled hole, by nominal diameter. */
    FRAME_DOWEL_OTHER_DRIVEN = 8,    /**< "other driven fastener" | "other nail or screw" | "structural screw". A nail or screw that is none of these, by its own diameter and bending yield strength. */
    FRAME_DOWEL_DRIFT_PIN = 9        /**< "drift pin" | "drift bolt". Plain pin driven into a lead hole of its own diameter, without head or nut. */
};

/** What a member of a joint is made of. */
typedef int32_t frame_joint_material;
enum frame_joint_material_values {
    FRAME_JOINT_WOOD = 1,         /**< "wood" | "lumber" | "sawn lumber". Sawn lumber, by species or specific gravity. */
    FRAME_JOINT_STEEL = 2,        /**< "steel" | "steel plate". Steel by its thickness: ASTM A653 Grade 33 below 1/4 in, ASTM A36 from 1/4 in. */
    FRAME_JOINT_STEEL_A653 = 3,   /**< "steel A653" | "ASTM A653 SS Grade 33". Steel sheet ASTM A653 SS Grade 33. */
    FRAME_JOINT_STEEL_A36 = 4,    /**< "steel A36" | "ASTM A36". Steel plate ASTM A36. */
    FRAME_JOINT_PLYWOOD = 5,      /**< "plywood". Plywood of any grade whose species is not known. */
    FRAME_JOINT_PLYWOOD_ONE = 6,  /**< "structural 1 plywood" | "marine plywood" | "plywood structural 1". Plywood of Structural 1 or Marine grade. */
    FRAME_JOINT_OSB = 7,          /**< "oriented strand board" | "OSB". Oriented strand board of any grade. */
    FRAME_JOINT_CONCRETE = 8      /**< "concrete". Concrete of 2,500 psi or more that a bolt is cast into. */
};

/** A yield mode of the yield-limit equations. */
typedef int32_t frame_yield_mode;
enum frame_yield_mode_values {
    FRAME_MODE_IM = 1,   /**< "Im" | "I_m" | "mode Im". The main member crushes along its whole length. */
    FRAME_MODE_IS = 2,   /**< "Is" | "I_s" | "mode Is". The side member crushes along its whole thickness. */
    FRAME_MODE_II = 3,   /**< "II" | "mode II". The fastener stays straight and turns in both members; single shear only. */
    FRAME_MODE_IIIM = 4, /**< "IIIm" | "III_m" | "mode IIIm". The fastener bends once and turns in the main member; single shear only. */
    FRAME_MODE_IIIS = 5, /**< "IIIs" | "III_s" | "mode IIIs". The fastener bends once and turns in the side member. */
    FRAME_MODE_IV = 6    /**< "IV" | "mode IV". The fastener bends twice at each shear plane. */
};

/** How a driven fastener's short penetration is dealt with. */
typedef int32_t frame_short_penetration;
enum frame_short_penetration_values {
    FRAME_SHORT_BY_EQUATIONS = 1, /**< "equations". The length that bears goes into the yield-limit equations, half of the tapered tip left out below 10 D (NDS 12.3.5.3). */
    FRAME_SHORT_BY_TABLE = 2      /**< "table". As the printed tables: the value at 10 D (lag screws 8 D), times p/10D (p/8D) below that. */
};

/** Whether dowel bearing strengths are rounded before they are used. */
typedef int32_t frame_bearing_rounding;
enum frame_bearing_rounding_values {
    FRAME_BEARING_EXACT = 1, /**< "none" | "exact". As the formulas give them. */
    FRAME_BEARING_TO_50 = 2  /**< "50 psi" | "nearest 50 psi". To the nearest 50 psi, as the printed tables of NDS chapter 12 have them. */
};

/** How far a fastener reaches into the member that holds its point. */
typedef int32_t frame_dowel_hold;
enum frame_dowel_hold_values {
    FRAME_HOLD_FULL = 1,         /**< "full". Deep enough to count in full. */
    FRAME_HOLD_BY_EQUATIONS = 2, /**< "short, by the equations". Short: half of the tip was left out of the bearing length. */
    FRAME_HOLD_BY_TABLE = 3,     /**< "short, by the table". Short: the value was reduced in proportion to the penetration. */
    FRAME_HOLD_THROUGH = 4       /**< "through". Through all members, its tip outside the wood: the whole thickness bears. */
};

/** Cautions that go with a fastener's lateral value. */
typedef int32_t frame_dowel_lateral_caution;
enum frame_dowel_lateral_caution_values {
    FRAME_DOWEL_LATERAL_CAUTION_REACH = 0,      /**< "reach". Only the layers given were counted: foam, sheathing and gaps that were not listed shorten the penetration. */
    FRAME_DOWEL_LATERAL_CAUTION_SHORT = 1,      /**< "short_penetration". The point reaches less than the full depth; a little less and the fastener counts for nothing. */
    FRAME_DOWEL_LATERAL_CAUTION_POINT_OUT = 2,  /**< "point_out". The point comes through the far side. */
    FRAME_DOWEL_LATERAL_CAUTION_GROUP = 3,      /**< "group_action". From 1/4 in up, several in a row share the load unevenly: C_g was taken as given, 1 unless said. */
    FRAME_DOWEL_LATERAL_CAUTION_GEOMETRY = 4,   /**< "geometry". From 1/4 in up, the value needs the full end, edge and row distances of NDS 12.5.1. */
    FRAME_DOWEL_LATERAL_CAUTION_THREADS = 5,    /**< "threads". The full shank was taken: threads must keep out of the shear plane, and fill at most a quarter of the bearing length of the member that holds them (NDS 12.3.7.2). */
    FRAME_DOWEL_LATERAL_CAUTION_SHRINKAGE = 6,  /**< "shrinkage". Made with wet lumber that dries in place: several fasteners across the grain split it; C_M 0.4 was applied unless the joint is free to shrink. */
    FRAME_DOWEL_LATERAL_CAUTION_GAP = 7,        /**< "gap". Members apart: by the general dowel equations of Technical Report 12, which the NDS itself does not print; the fastener bends further before it yields. */
    FRAME_DOWEL_LATERAL_CAUTION_REPORT = 8,     /**< "report". For a fastener of its own make the maker's evaluation report rules, not these equations. */
    FRAME_DOWEL_LATERAL_CAUTION_TOE_NAIL = 9,   /**< "toe_nail". Driven at about 30 degrees to the member and started a third of its length from the end (NDS 12.1.6), without splitting it. */
    FRAME_DOWEL_LATERAL_CAUTION_CLINCHED = 10,  /**< "clinched". The points must stand out by at least 3 D and be clinched. */
    FRAME_DOWEL_LATERAL_CAUTION_MEMORY = 11,    /**< "from_memory". A figure or rule was recalled, no text seen: check it against the printed standard. */
    FRAME_DOWEL_LATERAL_CAUTION_LRFD = 12,      /**< "lrfd". A factored strength: compare it with factored loads only. */
    FRAME_DOWEL_LATERAL_CAUTION_DRIFT_PIN = 13  /**< "drift_pin". Three quarters of a bolt's value, and deeper by what head, washer and nut would hold (NDS 12.1.7). */
};
/** What a fastener's lateral value leaves unchecked. */
typedef int32_t frame_dowel_lateral_not_checked;
enum frame_dowel_lateral_not_checked_values {
    FRAME_DOWEL_LATERAL_UNCHECKED_SPACING = 0,    /**< "spacing". End and edge distances and spacing. */
    FRAME_DOWEL_LATERAL_UNCHECKED_SPLITTING = 1,  /**< "splitting". Lead holes and splitting (NDS 12.1.4 to 12.1.6). */
    FRAME_DOWEL_LATERAL_UNCHECKED_MEMBER = 2,     /**< "member". The members at the joint: net section, row and group tear-out, tension across the grain (NDS 3.1.2, 3.4.3.3, appendix E). */
    FRAME_DOWEL_LATERAL_UNCHECKED_METAL = 3,      /**< "metal". Strength of steel plates and of the fastener in shear. */
    FRAME_DOWEL_LATERAL_UNCHECKED_WITHDRAWAL = 4, /**< "withdrawal". Load along the fastener, alone or together with the lateral load (NDS 12.4). */
    FRAME_DOWEL_LATERAL_UNCHECKED_CORROSION = 5   /**< "corrosion". Coating or alloy for treated lumber and weather. */
};

/** One fastener across the joint. Give size, or diameter_in; for each wooden member its species or its specific gravity. */
typedef struct frame_dowel_lateral_in {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;              /**< required. Kind of fastener. */
    frame_joint_material side_material; /**< wood. What the side member (next to the head) is made of. */
    frame_joint_material main_material; /**< wood. What the main member (holding the point; the middle one in double shear) is made of. */
    int32_t shear_planes;               /**< 1 : 1..2. 1 is single shear; 2 is double shear: main member between two side members alike. */
    frame_species side_species;         /**< optional. Species of a wooden side member. */
    frame_species main_species;         /**< optional. Species of a wooden main member. */
    frame_short_penetration short_penetration; /**< equations. How short penetration is dealt with. */
    frame_bearing_rounding bearing_rounding;   /**< none. Rounding of the dowel bearing strengths. */
    frame_service service;              /**< dry. Moisture of the lumber in use. */
    frame_service made;                 /**< dry. Moisture of the lumber when the joint is made. */
    frame_bool shrinks_freely;          /**< no. A joint of one fastener, of one row along the grain, or with a splice plate of its own for each row, so that drying lumber is not held. */
    frame_bool end_grain;               /**< no. The fastener is driven into the end grain of the main member. */
    frame_bool toe_nail;                /**< no. The nail is toe-nailed. */
    frame_bool diaphragm;               /**< no. The nail holds the sheathing of a diaphragm or shear wall. */
    frame_bool clinched;                /**< no. A nail of 12d or smaller in double shear whose point is clinched. */
    frame_bool threads_in_plane;        /**< "yes for wood screws and lag screws, no for bolts". Threads lie in a shear plane, so that the root diameter bears. */
    const char *size;                   /**< optional. Size by its usual name: "16d" for nails, "No.10" for wood screws, "1/2" for lag screws and bolts. */
    double diameter_in;                 /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double root_diameter_in;            /**< "of the size" : >0..1.25. Diameter at the root of the thread. */
    double length_in;                   /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double tip_in;                      /**< "2 D for nails and wood screws, of the size for lag screws" : 0..4. Length of the tapered tip. */
    double bending_yield_psi;           /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;           /**< "a third of the length for toe-nails, else it must be given" : >0..24. Thickness of the side member. */
    double second_side_thickness_in;    /**< "side_thickness_in" : >0..24. Thickness of the other side member in double shear. */
    double main_thickness_in;           /**< optional : >0..48. Thickness of the main member along the fastener; bolts and double shear need it. */
    double penetration_in;              /**< "length_in less what lies before, at most main_thickness_in" : >0..48. Depth in the member that holds the point: nails and wood screws with the tip, lag screws without it. */
    double gap_in;                      /**< 0 : 0..12. Space between the members at each shear plane, or filling that holds nothing (foam, sheathing). */
    double side_specific_gravity;       /**< optional : 0.2..1.2. Specific gravity of a wooden side member, instead of its species. */
    double main_specific_gravity;       /**< optional : 0.2..1.2. Specific gravity of a wooden main member, instead of its species. */
    double side_bearing_psi;            /**< optional : >0..200000. Dowel bearing strength of the side member, instead of its species or material's. */
    double main_bearing_psi;            /**< optional : >0..200000. Dowel bearing strength of the main member, instead of its species or material's. */
    double side_angle_deg;              /**< optional : 0..90. Angle of the load to the grain of a wooden side member; needed from 1/4 in diameter up. */
    double main_angle_deg;              /**< optional : 0..90. Angle of the load to the grain of a wooden main member; needed from 1/4 in diameter up. */
    double load_duration_factor;        /**< 1 : 0.9..1.6. Load duration factor C_D; the impact factor 2 is not for joints. */
    double temperature_f;               /**< 100 : -100..150. Highest temperature the joint keeps for long, degrees Fahrenheit. */
    double group_factor;                /**< 1 : >0..1. Group action factor C_g. */
    double geometry_factor;             /**< 1 : >0..1. Geometry factor C_Delta. */
    double time_effect_factor;          /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3); 1.25 for impact is not for joints. */
    frame_design_method method;         /**< ASD. Allowable stress design, or load and resistance factor design. */
    int32_t spare;
} frame_dowel_lateral_in;

/** The lateral design value of one fastener, by every yield mode. */
typedef struct frame_dowel_lateral_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : dowel_lateral_caution. Cautions. */
    uint64_t not_checked; /**< bits : dowel_lateral_not_checked. What was not checked. */
    frame_known known;     /**< Worst source of the figures used. */
    frame_yield_mode mode; /**< The yield mode that governs. */
    frame_dowel_hold hold; /**< How the point is held. */
    int32_t spare;
    double z_lb;        /**< Reference design value Z of one fastener, before adjustment. */
    double adjusted_lb; /**< Z', times the adjustment factors. */
    double z_im_lb;     /**< Value by mode I_m. */
    double z_is_lb;     /**< Value by mode I_s. */
    double z_ii_lb;     /**< Value by mode II; none in double shear. */
    double z_iiim_lb;   /**< Value by mode III_m; none in double shear. */
    double z_iiis_lb;   /**< Value by mode III_s. */
    double z_iv_lb;     /**< Value by mode IV. */
    double reduction_i;   /**< Reduction term R_d of mode I. */
    double reduction_ii;  /**< Reduction term R_d of mode II. */
    double reduction_iii; /**< Reduction term R_d of modes III and IV. */
    double diameter_in;     /**< Diameter that bears, D: the root where threads lie in the plane. */
    double fe_main_psi;     /**< Dowel bearing strength of the main member. */
    double fe_side_psi;     /**< Dowel bearing strength of the side member. */
    double fyb_psi;         /**< Bending yield strength of the fastener. */
    double main_bearing_in; /**< Bearing length in the main member, l_m. */
    double side_bearing_in; /**< Bearing length in the side member, l_s. */
    double penetration_in;  /**< Depth in the member that holds the point (see the field of the same name); not given for bolts. */
    double least_penetration_in; /**< The least depth that counts at all; not given for bolts. */
    double penetration_factor;   /**< Factor p/10D (lag screws p/8D) of the table route, contained in z_lb; 1 else. */
    double point_out_in;         /**< How far the point stands out beyond the last member, 0 where it does not or is not known. */
    double duration_factor;    /**< C_D. */
    double wet_factor;         /**< C_M. */
    double temperature_factor; /**< C_t. */
    double end_grain_factor;   /**< C_eg. */
    double toe_nail_factor;    /**< C_tn. */
    double diaphragm_factor;   /**< C_di. */
    double format_factor;      /**< K_F of LRFD; 1 in ASD. */
    double resistance_factor;  /**< phi_z of LRFD; 1 in ASD. */
    double time_effect_factor; /**< lambda of LRFD; 1 in ASD. */
    double drift_pin_factor;   /**< 0.75 for drift pins, 1 else. */
    double yield_lb;           /**< The yield value that z_lb comes from: z_lb times the reduction term of its mode. */
} frame_dowel_lateral_out;

/** Finds the lateral design value of one dowel-type fastener by the yield-limit equations (NDS 2018 12.3): all six modes in
 * single shear, four in double shear, with penetration, gap and all adjustment factors. FRAME_OUTSIDE_SCOPE when the fastener
 * does not reach deep enough to count at all (NDS 12.1.4 to 12.1.6). */
FRAME_CALCULATION(dowel_lateral);

/** Cautions that go with a fastener's withdrawal value. */
typedef int32_t frame_dowel_withdrawal_caution;
enum frame_dowel_withdrawal_caution_values {
    FRAME_DOWEL_WITHDRAWAL_CAUTION_REACH = 0,    /**< "reach". Only the layers given were counted: foam, sheathing and gaps that were not listed shorten the penetration. */
    FRAME_DOWEL_WITHDRAWAL_CAUTION_NAILS = 1,    /**< "nails". Nails loaded along their length loosen as the wood moves; choose screws where the load is lasting. */
    FRAME_DOWEL_WITHDRAWAL_CAUTION_DRYING = 2,   /**< "drying". Moisture that changes after the joint is made takes three quarters of a nail's hold (C_M 0.25). */
    FRAME_DOWEL_WITHDRAWAL_CAUTION_POINT_OUT = 3, /**< "point_out". The point comes through the far side. */
    FRAME_DOWEL_WITHDRAWAL_CAUTION_TOE_NAIL = 4, /**< "toe_nail". Driven at about 30 degrees to the member and started a third of its length from the end (NDS 12.1.6), without splitting it. */
    FRAME_DOWEL_WITHDRAWAL_CAUTION_THREAD = 5,   /**< "thread". The length of thread was taken as usual for the kind; measure the screw in hand. */
    FRAME_DOWEL_WITHDRAWAL_CAUTION_MEMORY = 6,   /**< "from_memory". A figure or rule was recalled, no text seen: check it against the printed standard. */
    FRAME_DOWEL_WITHDRAWAL_CAUTION_LRFD = 7      /**< "lrfd". A factored strength: compare it with factored loads only. */
};
/** What a fastener's withdrawal value leaves unchecked. */
typedef int32_t frame_dowel_withdrawal_not_checked;
enum frame_dowel_withdrawal_not_checked_values {
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_HEAD = 0,      /**< "head". The head pulled through the side member. */
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_TENSION = 1,   /**< "tension". The fastener's own tensile strength (NDS 11.2.3). */
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_SPACING = 2,   /**< "spacing". End and edge distances and spacing. */
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_SPLITTING = 3, /**< "splitting". Lead holes and splitting. */
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_LATERAL = 4,   /**< "lateral". Load across the fastener at the same time (NDS 12.4). */
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_CORROSION = 5  /**< "corrosion". Coating or alloy for treated lumber and weather. */
};

/** One fastener pulled along its length. Give size, or diameter_in; species or specific gravity of the member that holds it. */
typedef struct frame_dowel_withdrawal_in {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;   /**< required. Kind of fastener. */
    frame_species species;   /**< optional. Species of the member that holds the point. */
    frame_service service;   /**< dry. Moisture of the lumber in use. */
    frame_service made;      /**< dry. Moisture of the lumber when the joint is made. */
    frame_bool end_grain;    /**< no. The fastener is driven into end grain. */
    frame_bool toe_nail;     /**< no. The nail is toe-nailed. */
    const char *size;        /**< optional. Size by its usual name: "16d" for nails, "No.10" for wood screws, "1/2" for lag screws. */
    double diameter_in;      /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double specific_gravity; /**< optional : 0.2..1.2. Specific gravity of that member, instead of its species. */
    double length_in;        /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double thread_in;        /**< "by kind and length" : >0..48. Length of the thread or rings, tip included. */
    double tip_in;           /**< "of the size (lag screws)" : 0..4. Length of a lag screw's tapered tip. */
    double side_thickness_in; /**< 0 : 0..24. Thickness of all that lies before the member that holds the point. */
    double main_thickness_in; /**< optional : >0..48. Thickness of that member. */
    double penetration_in;   /**< "from the length" : >0..48. Length that holds: of a nail its depth with the tip, of a wood screw the thread in the member, of a lag screw that thread without the tip. */
    double load_duration_factor; /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double temperature_f;    /**< 100 : -100..150. Highest temperature the joint keeps for long, degrees Fahrenheit. */
    double time_effect_factor; /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3); 1.25 for impact is not for joints. */
    frame_design_method method; /**< ASD. Allowable stress design, or load and resistance factor design. */
    int32_t spare;
} frame_dowel_withdrawal_in;

/** The withdrawal design value of one fastener. */
typedef struct frame_dowel_withdrawal_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : dowel_withdrawal_caution. Cautions. */
    uint64_t not_checked; /**< bits : dowel_withdrawal_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    int32_t spare;
    double w_lb_per_in;    /**< Reference value W for each inch that holds, before adjustment. */
    double penetration_in; /**< Length that holds (see the field of the same name). */
    double w_lb;           /**< W times that length. */
    double adjusted_lb;    /**< W', times the adjustment factors: what one fastener holds. */
    double point_out_in;   /**< How far the point stands out, 0 where it does not or is not known. */
    double duration_factor;    /**< C_D. */
    double wet_factor;         /**< C_M. */
    double temperature_factor; /**< C_t. */
    double end_grain_factor;   /**< C_eg. */
    double toe_nail_factor;    /**< C_tn. */
    double format_factor;      /**< K_F of LRFD; 1 in ASD. */
    double resistance_factor;  /**< phi_z of LRFD; 1 in ASD. */
    double time_effect_factor; /**< lambda of LRFD; 1 in ASD. */
} frame_dowel_withdrawal_out;

/** Finds what one nail, wood screw or lag screw holds against being pulled out (NDS 2018 12.2). FRAME_OUTSIDE_SCOPE for nails and
 * wood screws in end grain, which hold nothing, and for bolts. */
FRAME_CALCULATION(dowel_withdrawal);

/** What a fastener passes through. Only wood holds it. */
typedef int32_t frame_layer_material;
enum frame_layer_material_values {
    FRAME_LAYER_WOOD = 1,     /**< "wood" | "lumber" | "sawn lumber" | "timber" | "glulam" | "ledger" | "band" | "rim" | "joist" | "stud" | "plate" | "rafter" | "header" | "beam" | "post" | "blocking". Sawn lumber: what can hold a fastener. */
    FRAME_LAYER_PANEL = 2,    /**< "sheathing" | "panel" | "plywood" | "OSB" | "oriented strand board". Wood panels: too thin to hold a point. */
    FRAME_LAYER_FOAM = 3,     /**< "foam" | "rigid foam" | "foam board" | "insulation". Foam: holds nothing. */
    FRAME_LAYER_GAP = 4,      /**< "gap" | "air" | "space" | "cavity" | "shim" | "shims" | "spacer" | "drainage mat". Air, or what only keeps members apart: holds nothing. */
    FRAME_LAYER_STEEL = 5,    /**< "steel" | "steel plate" | "metal" | "strap" | "washer" | "bracket" | "hanger". Steel: passed through a hole. */
    FRAME_LAYER_GYPSUM = 6,   /**< "gypsum" | "drywall" | "gypsum board" | "wallboard" | "plaster". Gypsum: holds nothing. */
    FRAME_LAYER_CLADDING = 7, /**< "siding" | "cladding" | "trim" | "shingles" | "roofing" | "membrane" | "flashing". Siding, trim, roofing: counted as holding nothing. */
    FRAME_LAYER_MASONRY = 8,  /**< "masonry" | "veneer" | "brick" | "brick veneer" | "stone" | "stucco". Masonry or stucco: holds nothing here. */
    FRAME_LAYER_CONCRETE = 9  /**< "concrete". Concrete: nails and screws for wood are not held by it. */
};

/** What is wanted of a fastener's depth. */
typedef int32_t frame_reach_wanted;
enum frame_reach_wanted_values {
    FRAME_REACH_FULL = 1, /**< "full" | "full depth". Deep enough to count in full: 10 D, lag screws 8 D. */
    FRAME_REACH_LEAST = 2 /**< "least" | "least depth" | "minimum". Just deep enough to count: 6 D, lag screws 4 D. */
};

/** What a fastener's reach comes to. */
typedef int32_t frame_reach_verdict;
enum frame_reach_verdict_values {
    FRAME_REACH_HOLDS = 1,       /**< "holds". Deep enough to count in full. */
    FRAME_REACH_SHORT = 2,       /**< "short". Deep enough to count, with a reduced value. */
    FRAME_REACH_TOO_SHORT = 3,   /**< "too short". In the member, but by less than the least depth: it counts for nothing. */
    FRAME_REACH_NOT_REACHED = 4, /**< "not reached". The point does not reach the member that should hold it: it counts for nothing. */
    FRAME_REACH_NO_WOOD = 5      /**< "no wood". No layer listed can hold it: it counts for nothing. */
};

/** Cautions that go with a fastener's reach. */
typedef int32_t frame_dowel_reach_caution;
enum frame_dowel_reach_caution_values {
    FRAME_DOWEL_REACH_CAUTION_LAYERS = 0,    /**< "layers". Only the layers listed were counted: measure what is really there, paper and shims too. */
    FRAME_DOWEL_REACH_CAUTION_NOTHING = 1,   /**< "counts_for_nothing". The fastener does not hold: count it as if it were not there. */
    FRAME_DOWEL_REACH_CAUTION_SHORT = 2,     /**< "short_penetration". The point reaches less than the full depth; a little less and the fastener counts for nothing. */
    FRAME_DOWEL_REACH_CAUTION_POINT_OUT = 3, /**< "point_out". The point comes through the far side of the member that holds it. */
    FRAME_DOWEL_REACH_CAUTION_STANDS_OUT = 4, /**< "stands_out". The point stands out of the last layer listed, where it can hurt, rust, or meet a pipe. */
    FRAME_DOWEL_REACH_CAUTION_GAP = 5,       /**< "gap". Foam, sheathing or air lies between the members: the fastener bends across it and carries less (gap_in of dowel_lateral). */
    FRAME_DOWEL_REACH_CAUTION_MASONRY = 6,   /**< "masonry". Nothing structural is hung through masonry veneer or stucco (IRC R507.9.1). */
    FRAME_DOWEL_REACH_CAUTION_ROOT = 7,      /**< "root". Threads fill more than a quarter of the bearing length, so that the root diameter bears (NDS 12.3.7.2). */
    FRAME_DOWEL_REACH_CAUTION_THREAD = 8,    /**< "thread". The length of thread was taken as usual for the kind; measure the fastener in hand. */
    FRAME_DOWEL_REACH_CAUTION_CHOSEN = 9,    /**< "length_chosen". No length was given: the figures are those of the length chosen. */
    FRAME_DOWEL_REACH_CAUTION_NONE = 10,     /**< "none_reaches". No standard length reaches as deep as wanted. */
    FRAME_DOWEL_REACH_CAUTION_COUNTERSUNK = 11, /**< "countersunk". What is sunk is taken off the side member: less is left for the head to bear on. */
    FRAME_DOWEL_REACH_CAUTION_LENGTHS = 12,  /**< "lengths". Which lengths are sold is common practice: ask what the yard has. */
    FRAME_DOWEL_REACH_CAUTION_BOLT = 13      /**< "bolt". A bolt must pass everything with a washer at each end and its nut full of thread; one diameter was left for nut and washer. */
};
/** What a fastener's reach leaves unchecked. */
typedef int32_t frame_dowel_reach_not_checked;
enum frame_dowel_reach_not_checked_values {
    FRAME_DOWEL_REACH_UNCHECKED_STRENGTH = 0,  /**< "strength". What the fastener carries: dowel_lateral and dowel_withdrawal. */
    FRAME_DOWEL_REACH_UNCHECKED_BEHIND = 1,    /**< "behind". Wires, pipes and whatever else lies behind the last layer. */
    FRAME_DOWEL_REACH_UNCHECKED_SPLITTING = 2, /**< "splitting". Lead holes, edge and end distances. */
    FRAME_DOWEL_REACH_UNCHECKED_SOUND = 3      /**< "sound_wood". Whether the wood is sound, and the member where it was drawn. */
};

/** A layer that a fastener passes through. As a tuple or array: material, thickness, name. */
typedef struct frame_dowel_layer {
    uint32_t struct_size, struct_id;
    frame_layer_material material; /**< required. What it is. */
    int32_t spare;
    double thickness_in; /**< required : >0..60. How thick it is, square to the face the fastener is driven into. */
    const char *name;    /**< optional. What it is called ("band"). */
} frame_dowel_layer;
/** Sets up a layer: every field not given. */
FRAME_ELEMENT(dowel_layer);

/** A fastener and all that it passes through, from the head inward. Give size, or diameter_in with length_in. */
typedef struct frame_dowel_reach_in {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;           /**< required. Kind of fastener. */
    frame_reach_wanted wanted;       /**< full. How deep a chosen length must reach. */
    const frame_dowel_layer *layers; /**< required. The layers, from the head inward, down to the member that should hold the point and what lies behind it. */
    size_t layer_count;              /**< count : 1..100. */
    const double *lengths_in;        /**< optional : >0..48. Lengths that can be had, instead of the usual ones. */
    size_t length_count;             /**< count : 0..100. */
    const char *size;                /**< optional. Size by its usual name: "16d" for nails, "No.10" for wood screws, "1/2" for lag screws and bolts. */
    double diameter_in;              /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;                /**< "the length of the size (nails), else the one chosen" : >0..48. Length under the head. */
    double thread_in;                /**< "by kind and length" : >0..48. Length of the thread or rings, tip included. */
    double tip_in;                   /**< "2 D for nails and wood screws, of the size for lag screws" : 0..4. Length of the tapered tip. */
    double countersink_in;           /**< 0 : 0..12. How far the underside of the head is sunk below the first layer's face. */
    double angle_deg;                /**< 0 : 0..60. Angle of drive, from square to the face. */
    int32_t holding_layer;           /**< "the last layer of wood" : 0..99. Place in the list, from 0, of the layer that should hold the point. */
    int32_t spare;
} frame_dowel_reach_in;

/** How far a fastener reaches. */
typedef struct frame_dowel_reach_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : dowel_reach_caution. Cautions. */
    uint64_t not_checked; /**< bits : dowel_reach_not_checked. What was not checked. */
    frame_known known;           /**< Worst source of the figures used. */
    frame_reach_verdict verdict; /**< What it comes to. */
    frame_bool counts;           /**< Whether it counts at all. */
    frame_bool root_bears;       /**< Whether threads fill so much of the bearing length that the root diameter counts. */
    int32_t holding_layer;       /**< Place of the layer that should hold the point, from 0; not given where none can. */
    int32_t point_layer;         /**< Place of the layer in which the point ends; not given where it stands out of all. */
    const char *says;            /**< The finding in plain words. */
    double penetration_in;       /**< Depth in the member that holds the point, square to its face: nails and wood screws with the tip, lag screws without it. */
    double held_length_in;       /**< Length of the fastener in that member, along it. */
    double held_thread_in;       /**< Of that, thread (of lag screws without the tip): what withdrawal counts. */
    double least_penetration_in; /**< The least depth that counts at all. */
    double full_penetration_in;  /**< The depth from which it counts in full. */
    double penetration_factor;   /**< Depth over full depth, at most 1: the factor of the printed tables; 0 where it counts for nothing. */
    double point_out_in;         /**< How far the point comes out of the member that holds it. */
    double stands_out_in;        /**< How far it stands out of the last layer listed. */
    double side_thickness_in;    /**< Thickness of the member that bears next to the head (side_thickness_in of dowel_lateral). */
    double gap_in;               /**< What lies between that and the member that holds (gap_in of dowel_lateral). */
    double length_in;            /**< Length of the fastener that the figures are for. */
    double diameter_in;          /**< Its nominal diameter. */
    double tip_in;               /**< Its tip. */
    double thread_in;            /**< Its thread, tip included. */
    double least_length_in;      /**< The length that would just reach the least depth. */
    double full_length_in;       /**< The length that would just reach the full depth; not given where the member is thinner than that. */
    double chosen_length_in;     /**< The shortest usual length that reaches as wanted. */
    double chosen_point_out_in;  /**< How far its point comes out of the member that holds it. */
    const char *chosen_size;     /**< Its size, for nails ("16d"). */
} frame_dowel_reach_out;

/** One layer and how much of the fastener lies in it. */
typedef struct frame_dowel_reach_layer {
    uint32_t struct_size, struct_id;
    frame_layer_material material; /**< What it is. */
    frame_bool holds;              /**< Whether it is the layer that should hold the point. */
    double from_in;     /**< Depth of its near face. */
    double to_in;       /**< Depth of its far face. */
    double occupied_in; /**< Length of the fastener in it, along the fastener. */
    double thread_in;   /**< Of that, thread. */
    const char *name;   /**< What it is called. */
} frame_dowel_reach_layer;

/** A usual length and what it would come to. */
typedef struct frame_dowel_reach_choice {
    uint32_t struct_size, struct_id;
    frame_reach_verdict verdict; /**< What it comes to. */
    frame_bool counts;           /**< Whether it counts at all. */
    double length_in;      /**< Length under the head. */
    double diameter_in;    /**< Nominal diameter. */
    double penetration_in; /**< Depth in the member that holds the point. */
    double point_out_in;   /**< How far its point comes out of that member. */
    const char *size;      /**< Its size, for nails. */
} frame_dowel_reach_choice;

/** Finds how deep a fastener reaches into the member that should hold it, layer by layer, whether it counts (NDS 2018 12.1.4 to
 * 12.1.6), and the shortest usual length that reaches. A fastener that does not hold counts for nothing, and the answer says so:
 * that is no failure. */
FRAME_ANSWER(dowel_reach);
/** The layers, with how much of the fastener lies in each. */
FRAME_ANSWER_LIST(dowel_reach, layer, layers);
/** The usual lengths, the shortest first. */
FRAME_ANSWER_LIST(dowel_reach, choice, choices);
/** The section through the layers with the fastener in it. */
FRAME_VIEW(dowel_reach, drawing);

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

/** Cautions that go with joints of several fasteners and the joints of a frame. */
typedef int32_t frame_fastening_caution;
enum frame_fastening_caution_values {
    FRAME_FASTENING_CAUTION_MEMORY = 0,      /**< "from_memory". A figure or rule was recalled, no text seen: check it against the printed standard. */
    FRAME_FASTENING_CAUTION_ADJUSTED = 1,    /**< "adjusted". The values of one were taken as adjusted already: duration, moisture, penetration, end grain. */
    FRAME_FASTENING_CAUTION_STAGGERED = 2,   /**< "staggered". Rows that are staggered and closer than a quarter of the spacing in a row count as one row (NDS 11.3.6.2). */
    FRAME_FASTENING_CAUTION_NAILS_PULL = 3,  /**< "nails_pull". Nails loaded along their length loosen as the wood moves; choose screws or a metal tie where the load is lasting. */
    FRAME_FASTENING_CAUTION_LRFD = 4,        /**< "lrfd". A factored strength: compare it with factored loads only. */
    FRAME_FASTENING_CAUTION_ADVICE = 5,      /**< "advice". Under 1/4 in the standard asks only that the wood does not split; the distances are those its commentary recommends. */
    FRAME_FASTENING_CAUTION_ULTIMATE = 6,    /**< "ultimate_unknown". No test was cited: what breaks the joint is unknown, and no multiple of a design value stands in for it. */
    FRAME_FASTENING_CAUTION_CLAIM = 7,       /**< "above_design". The figure claimed is above the design value: no joint is laid out by it. */
    FRAME_FASTENING_CAUTION_TEST = 8,        /**< "one_test". A test speaks for its own wood, nails and moisture; it is no design value. */
    FRAME_FASTENING_CAUTION_ELASTIC = 9,     /**< "elastic". The fasteners were taken as springs alike in all directions; the standard gives no rule for eccentric groups. */
    FRAME_FASTENING_CAUTION_DUCTILE = 10,    /**< "ductile". The instantaneous centre lets all fasteners reach their values together: only where each can slip without splitting the wood. */
    FRAME_FASTENING_CAUTION_MAKER = 11,      /**< "maker". A value given for a metal part holds only with every fastener its maker asks for, and no load before they are in. */
    FRAME_FASTENING_CAUTION_RAISED = 12,     /**< "raised". The given value was raised for the duration of load, since its maker allows that. */
    FRAME_FASTENING_CAUTION_FLASHING = 13,   /**< "flashing". What lies behind the ledger decides: a sound band, flashed so that it stays dry. */
    FRAME_FASTENING_CAUTION_DECK = 14,       /**< "deck_lateral". A deck also needs its lateral ties: two of 1,500 lb or four of 750 lb (IRC R507.9.2). */
    FRAME_FASTENING_CAUTION_TIE_RAISED = 15, /**< "tie_raised". A tie above the plate carries more and bends the rafter: check the rafter with that moment. */
    FRAME_FASTENING_CAUTION_LAPS = 16,       /**< "laps". Every lap and splice of the tie carries the same force: nail it the same. */
    FRAME_FASTENING_CAUTION_HIP_END = 17,    /**< "hip_end". Jacks of a hip end thrust too; they need ties of their own. */
    FRAME_FASTENING_CAUTION_CODE_TABLE = 18, /**< "code_table". The building code has a table of its own for this joint; it may ask for more. */
    FRAME_FASTENING_CAUTION_TOE_NAIL = 19,   /**< "toe_nail". Driven at about 30 degrees to the member and started a third of its length from the end (NDS 12.1.6), without splitting it. */
    FRAME_FASTENING_CAUTION_GAP = 20,        /**< "gap". Members apart: by the general dowel equations of Technical Report 12; the fastener bends further before it yields. */
    FRAME_FASTENING_CAUTION_SHORT = 21,      /**< "short_penetration". The point reaches less than the full depth; a little less and the fastener counts for nothing. */
    FRAME_FASTENING_CAUTION_LEAST = 22,      /**< "least_count". Fewer would do by the numbers; the least that is usual was taken. */
    FRAME_FASTENING_CAUTION_WEAKEST = 23,    /**< "weakest_link". A chain holds what its weakest link holds; only the links listed were looked at. */
    FRAME_FASTENING_CAUTION_FIGURE = 24,     /**< "figure_only". A figure to know, not a way to build: the code does not count it, and nothing passes by it. */
    FRAME_FASTENING_CAUTION_PANELS = 25,     /**< "panels". Panels as the table has them: every edge on framing or blocking, nails flush, 1/8 in gaps, sheets straight on the studs without foam or board between. */
    FRAME_FASTENING_CAUTION_ASPECT = 26,     /**< "aspect". A narrow piece of wall is soft: its value was cut, or it counts for nothing. */
    FRAME_FASTENING_CAUTION_HOLD_DOWN = 27,  /**< "hold_down". The hold-down force is without the dead load that stands on the wall, and goes on to the foundation. */
    FRAME_FASTENING_CAUTION_THICK_FRAMING = 28, /**< "thick_framing". Nails so close at panel joints need framing 3 in thick by name, or two studs nailed together, staggered (SDPWS 4.3.7.1). */
    FRAME_FASTENING_CAUTION_SIDE_LOADED = 29, /**< "side_loaded". A load on one side reaches the other plies only through the fasteners. */
    FRAME_FASTENING_CAUTION_GEOMETRY = 30,   /**< "geometry". From 1/4 in up, the value needs the full end, edge and row distances of NDS 12.5.1. */
    FRAME_FASTENING_CAUTION_GROUP = 31,      /**< "group_action". From 1/4 in up, several in a row share the load unevenly: C_g was taken as 1. */
    FRAME_FASTENING_CAUTION_DRYING = 32,     /**< "drying". Moisture that changes after the joint is made takes three quarters of a driven nail's hold; toe-nails are spared (NDS 12.5.4). */
    FRAME_FASTENING_CAUTION_SHRINKAGE = 33   /**< "shrinkage". Wood dries across the grain and not along it: rows far apart across the grain split it (NDS 11.1.3). */
};
/** What joints of several fasteners and the joints of a frame leave unchecked. */
typedef int32_t frame_fastening_not_checked;
enum frame_fastening_not_checked_values {
    FRAME_FASTENING_UNCHECKED_MEMBER = 0,    /**< "member". The members at the joint: net section, row and group tear-out, tension across the grain (NDS 3.1.2, 3.4.3.3, appendix E). */
    FRAME_FASTENING_UNCHECKED_SPLITTING = 1, /**< "splitting". Lead holes and splitting. */
    FRAME_FASTENING_UNCHECKED_SPACING = 2,   /**< "spacing". End and edge distances and spacing: fastener_layout. */
    FRAME_FASTENING_UNCHECKED_CORROSION = 3, /**< "corrosion". Coating or alloy for treated lumber and weather. */
    FRAME_FASTENING_UNCHECKED_METAL = 4,     /**< "metal". Steel of plates, straps and of the fastener itself. */
    FRAME_FASTENING_UNCHECKED_PATH = 5,      /**< "rest_of_the_path". Where the force goes on from here. */
    FRAME_FASTENING_UNCHECKED_OTHER_WAY = 6, /**< "other_directions". Load in directions that were not given. */
    FRAME_FASTENING_UNCHECKED_ANCHOR = 7,    /**< "anchor". Anchors in concrete and the footing. */
    FRAME_FASTENING_UNCHECKED_STRENGTH = 8,  /**< "strength". What the fasteners carry. */
    FRAME_FASTENING_UNCHECKED_DEFLECTION = 9, /**< "deflection". How far the wall or floor moves. */
    FRAME_FASTENING_UNCHECKED_SEISMIC = 10,  /**< "seismic_rules". What the code asks beside strength where earthquakes are designed for. */
    FRAME_FASTENING_UNCHECKED_COLLECTOR = 11, /**< "collectors". Chords, struts and the wall or floor the shear comes from. */
    FRAME_FASTENING_UNCHECKED_BEARING = 12,  /**< "bearing". Wood crushed under the member or the plate. */
    FRAME_FASTENING_UNCHECKED_RAFTER = 13    /**< "rafter". The rafter and the tie themselves. */
};

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

/** A round head on its member. Give size, or head_diameter_in; species or specific gravity of the member under the head. */
typedef struct frame_head_pull_through_in {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;        /**< optional. Kind of fastener, with size. */
    frame_species side_species;   /**< optional. Species of the member under the head. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_design_method method;   /**< ASD. Allowable stress design, or load and resistance factor design. */
    const char *size;             /**< optional. Size by its usual name ("16d"). */
    double head_diameter_in;      /**< "of the size (nails)" : >0..6. Diameter of the round head or washer. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of that member, instead of its species. */
    double side_thickness_in;     /**< required : >0..12. Thickness of wood left under the head. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double temperature_f;         /**< 100 : -100..150. Highest temperature the joint keeps for long, degrees Fahrenheit. */
    double time_effect_factor;    /**< "for LRFD it must be given" : 0.6..1. Time effect factor lambda (NDS table N3). */
} frame_head_pull_through_in;

/** What pulls a head through. */
typedef struct frame_head_pull_through_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    int32_t spare;
    double w_lb;               /**< Reference value W_H of one head. */
    double adjusted_lb;        /**< W_H', times the adjustment factors. */
    double head_diameter_in;   /**< Diameter of the head. */
    double wet_factor;         /**< C_M. */
    double temperature_factor; /**< C_t. */
} frame_head_pull_through_out;

/** Finds what pulls the round head of a nail or screw, or its washer, through the member under it (NDS 2018 12.2.5). */
FRAME_CALCULATION(head_pull_through);

/** One fastener loaded across and along itself at once. */
typedef struct frame_dowel_combined_in {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;   /**< required. Kind of fastener. */
    int32_t spare;
    double lateral_lb;       /**< required : 0..1e6. Load across the fastener. */
    double withdrawal_lb;    /**< required : 0..1e6. Load along the fastener, outward. */
    double lateral_value_lb; /**< required : >0..1e6. Adjusted lateral value Z' of one, as dowel_lateral gives it. */
    double withdrawal_value_lb;   /**< required : >0..1e6. Adjusted withdrawal value W'p of one, as dowel_withdrawal gives it. */
    double pull_through_value_lb; /**< optional : >0..1e6. Adjusted value of its head, as head_pull_through gives it; the lesser counts. */
} frame_dowel_combined_in;

/** Whether one fastener carries both. */
typedef struct frame_dowel_combined_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_bool passes;    /**< Whether the load is within the value. */
    double ratio;         /**< Load over what the fastener carries in its direction. */
    double load_lb;       /**< The load, both parts together. */
    double angle_deg;     /**< Its angle from the face of the wood. */
    double value_lb;      /**< Z'_alpha, what the fastener carries in that direction. */
} frame_dowel_combined_out;

/** Checks one nail or screw under lateral and withdrawal load at once: lag screws by Hankinson's curve, nails and wood screws by a
 * straight line (NDS 2018 12.4). */
FRAME_CALCULATION(dowel_combined);

/** What a claimed figure for one fastener amounts to. */
typedef int32_t frame_claim_verdict;
enum frame_claim_verdict_values {
    FRAME_CLAIM_WITHIN = 1,     /**< "within the design value". It may be used. */
    FRAME_CLAIM_ABOVE = 2,      /**< "above the design value". More than the code allows, less than the yield value: the margin is being spent. */
    FRAME_CLAIM_YIELDS = 3,     /**< "above the yield value". At such a load the fastener has bent or the wood is crushed. */
    FRAME_CLAIM_ABOVE_TEST = 4  /**< "above the tested ultimate". The test that was cited broke at less. */
};

/** One nail or screw across the joint, with a rule of thumb or a test to set beside it. Wood to wood, single shear. */
typedef struct frame_dowel_figures_in {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;        /**< required. Kind of fastener. */
    frame_species side_species;   /**< optional. Species of the side member. */
    frame_species main_species;   /**< optional. Species of the main member. */
    frame_service service;        /**< dry. Moisture of the lumber in use. */
    frame_bool toe_nail;          /**< no. The nail is toe-nailed. */
    frame_bool end_grain;         /**< no. The fastener is driven into the end grain of the main member. */
    const char *size;             /**< optional. Size by its usual name: "16d" for nails, "No.10" for wood screws. */
    const char *test_source;      /**< optional. Where the test is published: author, title, year, table; needed with test_lb. */
    double diameter_in;           /**< optional : >0..1.25. Nominal diameter, instead of size. */
    double length_in;             /**< "the length of the size (nails)" : >0..48. Length under the head. */
    double bending_yield_psi;     /**< "by kind and diameter" : >0..300000. Bending yield strength of the fastener. */
    double side_thickness_in;     /**< "a third of the length for toe-nails, else it must be given" : >0..24. Thickness of the side member. */
    double main_thickness_in;     /**< optional : >0..48. Thickness of the main member along the fastener. */
    double side_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the side member, instead of its species. */
    double main_specific_gravity; /**< optional : 0.2..1.2. Specific gravity of the main member, instead of its species. */
    double angle_deg;             /**< optional : 0..90. Angle of the load to the grain of both; needed from 1/4 in diameter up. */
    double load_duration_factor;  /**< 1 : 0.9..1.6. Load duration factor C_D. */
    double claim_lb;              /**< optional : >0..1e5. A rule of thumb for one fastener, to be set against its figures. */
    double test_lb;               /**< optional : >0..1e5. Mean ultimate load of one fastener in a published test of this joint. */
} frame_dowel_figures_in;

/** Three figures for one fastener. */
typedef struct frame_dowel_figures_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : fastening_caution. Cautions. */
    uint64_t not_checked; /**< bits : fastening_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the figures used. */
    frame_yield_mode mode; /**< The yield mode that governs. */
    frame_bool ultimate_is_known; /**< Whether a cited test gives an ultimate; else it is unknown. */
    frame_claim_verdict verdict;  /**< What the claim amounts to; not given without one. */
    double design_lb;      /**< Design value Z', adjusted: what a joint may be laid out by. */
    double yield_lb;       /**< The yield value it comes from, before the reduction term R_d: where the wood crushes or the fastener bends for good. */
    double ultimate_lb;    /**< What broke the joint in the cited test; not given where none is cited: unknown. */
    double reduction;      /**< R_d, yield value over the reference value. */
    double claim_over_design;   /**< The claim over the design value. */
    double claim_over_yield;    /**< The claim over the yield value. */
    double ultimate_over_design; /**< The tested ultimate over the design value. */
} frame_dowel_figures_out;

/** Gives the three figures of one nail or screw: the design value, the yield value behind it, and an ultimate only where a cited test
 * gives one; and says where a rule of thumb stands among them (NDS 2018 12.3). */
FRAME_CALCULATION(dowel_figures);

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
