/** @file strength/columns.h
 * Columns, posts and studs; the nails that make plies one column; ties in tension.
 */
#ifndef FRAME_STRENGTH_COLUMNS_H
#define FRAME_STRENGTH_COLUMNS_H

#include <frame/base.h>
#include <frame/load.h>
#include <frame/material.h>
#include <frame/tape.h>
#include <frame/strength/joists.h>

FRAME_BEGIN

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
    double bracket_lb;            /**< 0 : 0..1e6. Load on a bracket at its side, besides axial_lb, of the same combination. */
    double bracket_offset_in;     /**< optional : >0..120. From the axis to that load, level, along its width; needed with bracket_lb. */
    double bracket_height_in;     /**< optional : >0..1200. From the lower end up to the bracket's load, in the upper quarter of the length; needed with bracket_lb. */
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for. */
    int32_t spare4;
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
    double bracket_side_lb;     /**< Side load at mid-height that stands for the bracket, P_s; not given without one. */
} frame_column_check_out;

/** Checks a rectangular column, post or stud of sawn lumber by NDS 2018 3.6, 3.7, 3.9 and 15.3, allowable stress design: buckling
 * about both axes with the column stability factor C_P, plies with K_f on the weak axis, and sideways load on the narrow face
 * together with compression, load on the wide face, load off the axis and load on a side bracket (15.4.2) too, and the plate under it. FRAME_OUTSIDE_SCOPE where l_e/d or R_B is over 50; FRAME_REQUIRED for plies without their fastening. */
FRAME_CALCULATION(column_check);

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
    frame_nds_edition edition; /**< 2018. The edition of the NDS that is asked for. */
    int32_t spare3;
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

FRAME_END

#endif
