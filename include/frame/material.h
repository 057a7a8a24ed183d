/** @file material.h
 * Lumber: sizes, species, grades, their section properties and reference design values.
 */
#ifndef FRAME_MATERIAL_H
#define FRAME_MATERIAL_H

#include <frame/base.h>

FRAME_BEGIN

/** An edition of the National Design Specification for Wood Construction. Clauses, formulas and values here are those of 2018. */
typedef int32_t frame_nds_edition;
enum frame_nds_edition_values {
    FRAME_NDS_2015 = 1, /**< "NDS 2015" | "2015". That it agrees with NDS 2018 in what is used is from memory: the answer is marked so. */
    FRAME_NDS_2018 = 2, /**< "NDS 2018" | "2018". The edition that everything here is taken from. */
    FRAME_NDS_2024 = 3  /**< "NDS 2024" | "2024". That it agrees with NDS 2018 in what is used is from memory: the answer is marked so; refused for species whose values were changed after 2018. */
};

/** A nominal size of lumber, packed: FRAME_SIZE(2, 10) is a 2x10. */
typedef int32_t frame_size;
/** Packs a nominal thickness and width in inches; quarters are kept: FRAME_SIZE(1.25, 6) is a 5/4x6. */
#define FRAME_SIZE(thickness, width) ((int32_t)((thickness) * 16) * 65536 + (int32_t)((width) * 16))
/** Finds a size by its name: "2x10", "2 x 10", "5/4x6", "6X6". */
FRAME_API frame_status frame_size_find(const char *text, frame_size *size);
/** Gives a size's name ("2x10"), or NULL for a size that is not made. */
FRAME_API const char *frame_size_name(frame_size size);
/** Counts the sizes of the menu: dimension lumber, timbers, boards and 5/4 decking. */
FRAME_API size_t frame_size_count(void);
/** Gives the size at a place of the menu, FRAME_NOT_GIVEN_INT past its end. */
FRAME_API frame_size frame_size_at(size_t index);

/** A species or group of species sold under one name. */
typedef int32_t frame_species;
/** Finds a species by its common short or full name, or a grade stamp's spelling: "SPF", "S-P-F", "D FIR-L", "Hem-Fir". */
FRAME_API frame_status frame_species_find(const char *text, frame_species *species);
/** Gives a species' full name, or NULL. */
FRAME_API const char *frame_species_name(frame_species species);
/** Counts the species known. */
FRAME_API size_t frame_species_count(void);
/** Gives the species at a place of the menu, FRAME_NOT_GIVEN_INT past its end. */
FRAME_API frame_species frame_species_at(size_t index);

/** A visual grade. */
typedef int32_t frame_grade;
/** Finds a grade by its name or a stamp's spelling: "SS", "SEL STR", "No.2", "NO. 2", "#2", "2". */
FRAME_API frame_status frame_grade_find(const char *text, frame_grade *grade);
/** Gives a grade's name ("No.2"), or NULL. */
FRAME_API const char *frame_grade_name(frame_grade grade);
/** Counts the grades known. */
FRAME_API size_t frame_grade_count(void);
/** Gives the grade at a place of the menu, FRAME_NOT_GIVEN_INT past its end. */
FRAME_API frame_grade frame_grade_at(size_t index);

/** How a member is turned to its load. */
typedef int32_t frame_turned;
enum frame_turned_values {
    FRAME_TURNED_ON_EDGE = 1, /**< "on edge" | "edge" | "upright". The load acts on the narrow face: plies stand side by side. */
    FRAME_TURNED_FLAT = 2     /**< "flat" | "flatwise" | "plank". The load acts on the wide face: plies lie on one another. */
};

/** Moisture in service. */
typedef int32_t frame_service;
enum frame_service_values {
    FRAME_SERVICE_DRY = 1, /**< "dry". Moisture content 19 % or less in use, NDS 4.1.4. */
    FRAME_SERVICE_WET = 2  /**< "wet". Above that for longer times, as outdoors and in decks: C_M applies. */
};

/** Cautions that go with a section. */
typedef int32_t frame_section_caution;
enum frame_section_caution_values {
    FRAME_SECTION_CAUTION_FLAT_PLIES = 0, /**< "flat_plies". Plies lying flat on one another do not act as one block unless glued: S and I are the sums of the single plies. */
    FRAME_SECTION_CAUTION_GREEN = 1,      /**< "green". Green lumber is larger when new and shrinks to about the dry size. */
    FRAME_SECTION_CAUTION_TIMBER = 2      /**< "timber". Timbers of 7 in and more are mostly sold green and up to 1/2 in larger than this dry size: measure before cutting. */
};
/** What a section leaves unchecked. */
typedef int32_t frame_section_not_checked;
enum frame_section_not_checked_values {
    FRAME_SECTION_UNCHECKED_TRUE_SIZE = 0 /**< "true_size". The size of the lumber in hand: old, rough or re-sawn lumber differs. */
};

/** The section to find. Give size, or width_in and depth_in. */
typedef struct frame_section_in {
    uint32_t struct_size, struct_id;
    frame_size size;       /**< optional. Nominal size of one ply. */
    int32_t plies;         /**< 1 : 1..8. Members acting together. */
    frame_turned turned;   /**< on edge. How it is turned to the load. */
    frame_bool green;      /**< no. Dressed green size instead of dry (PS 20). */
    double width_in;       /**< optional : >0..60. True thickness of one ply, instead of size. */
    double depth_in;       /**< optional : >0..60. True width of one ply (the larger face), instead of size. */
} frame_section_in;

/** A section about the axis of bending. */
typedef struct frame_section_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : section_caution. Cautions. */
    uint64_t not_checked; /**< bits : section_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the sizes. */
    int32_t spare;
    double width_in;            /**< Breadth across the load, b: of all plies on edge, of one where they lie flat. */
    double depth_in;            /**< Depth along the load, d: of one ply where plies lie flat. */
    double area_in2;            /**< Area of all plies, A. */
    double section_modulus_in3; /**< Section modulus about the axis of bending, S. */
    double inertia_in4;         /**< Moment of inertia about the axis of bending, I. */
    double board_feet_per_foot;   /**< Board feet in a foot of length, by the nominal size (by the true size without one). */
} frame_section_out;

/** Finds the section properties of sawn lumber by its dressed size (PS 20, NDS Supplement table 1B): area, section modulus
 * and moment of inertia. Plies on edge stand side by side and add up; plies flat are summed ply by ply, not as one block.
 * FRAME_CONFLICT when both size and width_in or depth_in are given, FRAME_REQUIRED when neither is. */
FRAME_CALCULATION(section);

/** Cautions that go with design values. */
typedef int32_t frame_design_caution;
enum frame_design_caution_values {
    FRAME_DESIGN_CAUTION_STAMP = 0,      /**< "stamp". The values hold for lumber with this grade stamp; unstamped, old or re-sawn lumber has none. */
    FRAME_DESIGN_CAUTION_DOUBTFUL = 1,   /**< "doubtful". Sources differ about a value of this row. */
    FRAME_DESIGN_CAUTION_MEMORY = 2,     /**< "from_memory". Values recalled, no text seen: check them against the printed supplement before relying on them. */
    FRAME_DESIGN_CAUTION_SUPERSEDED = 3, /**< "superseded". A later supplement changed the values of this species: ask for the new ones. */
    FRAME_DESIGN_CAUTION_GRAVITY = 4     /**< "gravity". Fasteners go by the specific gravity of NDS table 12.3.3A, which differs from this row's or does not list the species. */
};
/** What design values leave unchecked. */
typedef int32_t frame_design_not_checked;
enum frame_design_not_checked_values {
    FRAME_DESIGN_UNCHECKED_FACTORS = 0 /**< "factors". Base values before adjustment: duration, moisture, size and the other factors of NDS table 4.3.1 come after. */
};

/** Whose design values to find. */
typedef struct frame_design_values_in {
    uint32_t struct_size, struct_id;
    frame_species species; /**< required. Species or species group. */
    frame_grade grade;     /**< required. Visual grade. */
    frame_size size;       /**< required. Nominal size: it picks the table (4A, 4B by width, 4D) and the size factors. */
    int32_t spare;
} frame_design_values_in;

/** Reference design values and the size factors of the table. */
typedef struct frame_design_values_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : design_caution. Cautions. */
    uint64_t not_checked; /**< bits : design_not_checked. What was not checked. */
    frame_known known;    /**< How the values are known. */
    int32_t table_id;     /**< The row's id in the library's table. */
    double fb_psi;        /**< Bending, F_b. */
    double ft_psi;        /**< Tension along the grain, F_t. */
    double fv_psi;        /**< Shear along the grain, F_v. */
    double fc_perp_psi;   /**< Compression across the grain, F_c-perp. */
    double fc_psi;        /**< Compression along the grain, F_c. */
    double e_psi;         /**< Modulus of elasticity, E. */
    double e_min_psi;     /**< Modulus for stability, E_min. */
    double specific_gravity; /**< Specific gravity, G. */
    double size_factor_bending; /**< C_F on F_b for this size, the table's own; 1 where the values include it. */
    double size_factor_tension; /**< C_F on F_t. */
    double size_factor_compression; /**< C_F on F_c. */
    const char *source;   /**< Standard, edition and table. */
} frame_design_values_out;

/** Finds the reference design values of visually graded sawn lumber (NDS Supplement tables 4A, 4B, 4D), before adjustment.
 * FRAME_NO_VALUE when the table has no such species, grade and size. */
FRAME_CALCULATION(design_values);

FRAME_END

#endif
