/** @file joint/dowels.h
 * One dowel-type fastener: sideways, pulled out, through its head, both at once; whether it reaches; its three figures.
 */
#ifndef FRAME_JOINT_DOWELS_H
#define FRAME_JOINT_DOWELS_H

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
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for. */
    int32_t spare2;
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
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for. */
    int32_t spare2;
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
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for; that of 2015 has no such value. */
    int32_t spare;
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

FRAME_END

#endif
