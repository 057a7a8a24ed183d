/** @file strength/openings.h
 * The studs beside an opening: jacks under its header, kings beside them.
 */
#ifndef FRAME_STRENGTH_OPENINGS_H
#define FRAME_STRENGTH_OPENINGS_H

#include <frame/base.h>
#include <frame/load.h>
#include <frame/material.h>
#include <frame/tape.h>
#include <frame/strength/columns.h>
#include <frame/strength/joists.h>

FRAME_BEGIN

/** Which of the parts beside an opening. */
typedef int32_t frame_opening_part;
enum frame_opening_part_values {
    FRAME_OPENING_JACKS = 1,  /**< "jack studs". The jack studs as a column under the header. */
    FRAME_OPENING_HEADER = 2, /**< "header". The header, crushed across its grain over the jack studs. */
    FRAME_OPENING_PLATE = 3,  /**< "plate". The bottom plate, crushed across its grain under the jack studs. */
    FRAME_OPENING_KINGS = 4   /**< "king studs". The king studs, bent by wind on half of the opening and pressed by the wall above. */
};

/** Cautions that go with the studs beside an opening. */
typedef int32_t frame_opening_studs_caution;
enum frame_opening_studs_caution_values {
    FRAME_OPENING_STUDS_CAUTION_SHORING = 0,    /**< "shoring". Before a wall that carries is opened, shore both of its sides; past the code's tables a licensed design is needed. */
    FRAME_OPENING_STUDS_CAUTION_LOADS = 1,      /**< "loads". Holds only for the loads given: point loads over the opening, and loads of other storeys, come in by the header's reaction. */
    FRAME_OPENING_STUDS_CAUTION_STAMP = 2,      /**< "stamp". The design values hold for lumber with this grade stamp, not for unstamped, old, ripped or damaged lumber. */
    FRAME_OPENING_STUDS_CAUTION_MEMORY = 3,     /**< "from_memory". Rests on values recalled, no text seen: check them against the printed standard before relying on them. */
    FRAME_OPENING_STUDS_CAUTION_DOUBTFUL = 4,   /**< "doubtful". Sources differ about a design value used. */
    FRAME_OPENING_STUDS_CAUTION_SUPERSEDED = 5, /**< "superseded". A later supplement changed the values of this species. */
    FRAME_OPENING_STUDS_CAUTION_PLIES = 6,      /**< "plies". Holds only with studs side by side nailed or bolted together as NDS 15.3 asks for, over their whole length. */
    FRAME_OPENING_STUDS_CAUTION_NONE = 7,       /**< "none_holds". Even five jack studs, or five king studs, do not hold: a larger size or better lumber is needed. */
    FRAME_OPENING_STUDS_CAUTION_SNOW_BASIS = 8, /**< "snow_basis". Snow is taken as a 50-year load (ASCE 7-16 and the code tables): say load_edition "ASCE 7-22" for a strength-level one. */
    FRAME_OPENING_STUDS_CAUTION_SPREAD = 9      /**< "spread". Wind on the opening is taken as spread evenly over the height of the king studs (common practice). */
};
/** What the check of the studs beside an opening leaves unchecked. */
typedef int32_t frame_opening_studs_not_checked;
enum frame_opening_studs_not_checked_values {
    FRAME_OPENING_STUDS_UNCHECKED_CODE = 0,       /**< "code_tables". The code's own numbers of jack and king studs, which may be more. */
    FRAME_OPENING_STUDS_UNCHECKED_HEADER = 1,     /**< "header". Whether the header holds, and bends under wind on the opening: header_sizes, member_check. */
    FRAME_OPENING_STUDS_UNCHECKED_CRUSHING = 2,   /**< "header_crushing". The header's crushing over the jack studs: neither its species nor its F_c-perp was given. */
    FRAME_OPENING_STUDS_UNCHECKED_PLATE = 3,      /**< "plate_crushing". The plate's crushing under the jack studs: neither its species nor its F_c-perp was given. */
    FRAME_OPENING_STUDS_UNCHECKED_WIND = 4,       /**< "wind". Wind on the wall: none was given. */
    FRAME_OPENING_STUDS_UNCHECKED_UPLIFT = 5,     /**< "uplift". Uplift, and the ties that hold header and studs down. */
    FRAME_OPENING_STUDS_UNCHECKED_DEFLECTION = 6, /**< "deflection". How far the king studs bend under wind. */
    FRAME_OPENING_STUDS_UNCHECKED_NAILS = 7,      /**< "nails". The nails of header to king studs, and of king studs to plates. */
    FRAME_OPENING_STUDS_UNCHECKED_BELOW = 8       /**< "below". What stands below the plate: blocking in the floor, posts, footings. */
};

/** An opening in a wall, what the wall carries there, and wind on it. Loads are given as a load on a foot of the wall, as the header's
 * reaction at this end by kind, or both: they add. */
typedef struct frame_opening_studs_in {
    uint32_t struct_size, struct_id;
    frame_size size;         /**< required. Nominal size of the studs. */
    frame_species species;   /**< required. Species or species group of the studs. */
    frame_grade grade;       /**< required. Visual grade of the studs. */
    int32_t jacks;           /**< optional : 1..5. Jack studs at each end; without it the fewest that hold. */
    int32_t kings;           /**< optional : 1..5. King studs at each end; without it the fewest that hold. */
    frame_service service;   /**< dry. Moisture in service, of studs, header and plate. */
    frame_bool weak_axis_held; /**< no. Sheathing on both edges holds every stud along its length against buckling across its thickness. */
    frame_column_fastening fastening; /**< nailed. How studs side by side are fastened into one, where nothing holds them along their length. */
    frame_species header_species; /**< optional. Species of the header of dimension lumber, to check its crushing. */
    frame_species plate_species;  /**< optional. Species of the bottom plate of dimension lumber, to check its crushing. */
    frame_load_duration live_duration; /**< ten years. How long the live load lasts. */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    int32_t spare;
    double opening_in;       /**< required : >0..480. Clear width between the jack studs. */
    double wall_height_in;   /**< required : >0..480. Clear height of the king studs, between the plates. */
    double jack_length_in;   /**< required : >0..480. Length of the jack studs, from bottom plate to header. */
    double spacing_in;       /**< 16 : >0..48. Centre to centre, from the outer king stud to the next stud. */
    double dead_plf;         /**< 0 : 0..1e5. Dead load on a foot of the wall. */
    double live_plf;         /**< 0 : 0..1e5. Live load on a foot of the wall. */
    double roof_live_plf;    /**< 0 : 0..1e5. Roof live load on a foot of the wall. */
    double snow_plf;         /**< 0 : 0..1e5. Snow on a foot of the wall. */
    double dead_lb;          /**< 0 : 0..1e6. Dead load in the header's reaction at this end, besides that of the wall. */
    double live_lb;          /**< 0 : 0..1e6. Live load in that reaction. */
    double roof_live_lb;     /**< 0 : 0..1e6. Roof live load in that reaction. */
    double snow_lb;          /**< 0 : 0..1e6. Snow in that reaction. */
    double wind_psf;         /**< 0 : 0..500. Wind square to wall and opening, at strength level. */
    double header_width_in;  /**< "the width of the studs" : >0..60. Thickness of the header that bears on the jack studs, all plies. */
    double header_fc_perp_psi; /**< optional : >0..10000. F_c-perp of the header, instead of header_species. */
    double plate_fc_perp_psi;  /**< optional : >0..10000. F_c-perp of the plate, instead of plate_species. */
} frame_opening_studs_in;

/** The studs needed, or how those given hold. A ratio is the share used of what is allowed: up to 1 it holds. */
typedef struct frame_opening_studs_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : opening_studs_caution. Cautions. */
    uint64_t not_checked; /**< bits : opening_studs_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_bool passes;    /**< Whether the ratio is at most 1. */
    frame_opening_part governs; /**< The part with the largest ratio. */
    int32_t jacks;        /**< Jack studs at each end. */
    int32_t kings;        /**< King studs at each end. */
    frame_load_combination jack_combination;   /**< Combination that governs the jack studs as a column. */
    frame_load_combination header_combination; /**< Combination that crushes header and plate the most. */
    frame_load_combination king_combination;   /**< Combination that governs the king studs. */
    double ratio;            /**< The largest of the ratios. */
    double jack_ratio;       /**< f_c over F_c' of the jack studs. */
    double header_ratio;     /**< f_c-perp over F_c-perp' of the header; not given without its species or F_c-perp. */
    double plate_ratio;      /**< f_c-perp over F_c-perp' of the plate; not given without its species or F_c-perp. */
    double king_ratio;       /**< Of the king studs: compression, or compression and bending together. */
    double jack_load_lb;     /**< Load on the jack studs in their combination. */
    double jack_capacity_lb; /**< Load that the jack studs would just carry as a column in it. */
    double crushing_load_lb; /**< Load that presses header and plate. */
    double king_load_lb;     /**< Load along the king studs in their combination. */
    double king_wind_plf;    /**< Wind on a foot of their height in it. */
    double wind_width_in;    /**< Width of wall and opening whose wind comes to them. */
} frame_opening_studs_out;

/** Finds how many jack and king studs an opening needs at each end, or checks those given, by NDS 2018 3.6, 3.7, 3.9, 3.10 and 15.3: the jack
 * studs as a column under the header's reaction, header and bottom plate crushed across their grain (C_b 1), the king studs under the wall beside
 * the opening and the wind on half of it, in every combination that applies. Header and wind reach the middle of the opening; jack
 * studs carry no wind. FRAME_REQUIRED without any load; FRAME_CONFLICT where jack studs are longer than the wall is high;
 * FRAME_OUTSIDE_SCOPE where l_e/d or R_B is over 50. */
FRAME_CALCULATION(opening_studs);

FRAME_END

#endif
