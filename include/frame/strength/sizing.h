/** @file strength/sizing.h
 * Which joist, post or header to buy, and whole tables of spans.
 */
#ifndef FRAME_STRENGTH_SIZING_H
#define FRAME_STRENGTH_SIZING_H

#include <frame/base.h>
#include <frame/load.h>
#include <frame/material.h>
#include <frame/tape.h>
#include <frame/strength/columns.h>
#include <frame/strength/joists.h>

FRAME_BEGIN

/* ---- joist_sizes: which joist or rafter to buy ------------------------------------------------------------------ */

/** A choice of lumber for joists. Without a size, give its design values and its true size. As a tuple or array: size, species, grade,
 * spacing_in, price_per_ft. */
typedef struct frame_joist_choice {
    uint32_t struct_size, struct_id;
    frame_size size;       /**< optional. Nominal size. */
    frame_species species; /**< optional. Species; that of the call without it. */
    frame_grade grade;     /**< optional. Visual grade; that of the call without it. */
    int32_t spare;
    double spacing_in;     /**< optional : >0..48. Centre to centre; without it each of the call's spacings is tried. */
    double price_per_ft;   /**< optional : 0..1e6. Price of a foot, in the user's money. */
    double width_in;       /**< optional : >0..60. True thickness, instead of size. */
    double depth_in;       /**< optional : >0..60. True depth, instead of size. */
    double fb_psi;         /**< optional : >0..20000. F_b, instead of species and grade. */
    double fv_psi;         /**< optional : >0..5000. F_v, with fb_psi. */
    double fc_perp_psi;    /**< optional : >0..10000. F_c-perp, with fb_psi. */
    double e_psi;          /**< optional : >0..1e7. E, with fb_psi. */
    const char *name;      /**< optional. Name of the lumber. */
} frame_joist_choice;
/** Sets up a choice: every field not given. */
FRAME_ELEMENT(joist_choice);

/** Cautions that go with the choice of joists. */
typedef int32_t frame_joist_sizes_caution;
enum frame_joist_sizes_caution_values {
    FRAME_JOIST_SIZES_CAUTION_BOARD_FEET = 0, /**< "board_feet". Ranked by board feet, as not every choice had its price. */
    FRAME_JOIST_SIZES_CAUTION_NONE = 1,       /**< "none_holds". None of the choices holds. */
    FRAME_JOIST_SIZES_CAUTION_MEMORY = 2,     /**< "from_memory". The best choice rests on values recalled, no text seen. */
    FRAME_JOIST_SIZES_CAUTION_CODE = 3,       /**< "span_tables". The code's span tables and the building official decide; where they give less, build to that. */
    FRAME_JOIST_SIZES_CAUTION_SHEATHING = 4,  /**< "sheathing". A wider spacing may need thicker sheathing: its price is not in the ranking. */
    FRAME_JOIST_SIZES_CAUTION_SNOW_BASIS = 5  /**< "snow_basis". Snow is taken as a 50-year load (ASCE 7-16 and the code tables): say load_edition "ASCE 7-22" for a strength-level one. */
};
/** What the choice of joists leaves unchecked. */
typedef int32_t frame_joist_sizes_not_checked;
enum frame_joist_sizes_not_checked_values {
    FRAME_JOIST_SIZES_UNCHECKED_LOCAL = 0,    /**< "local_loads". Point loads, walls, tubs, wind, drifted and sliding snow. */
    FRAME_JOIST_SIZES_UNCHECKED_CUTS = 1,     /**< "cuts". Notches, holes and birdsmouths. */
    FRAME_JOIST_SIZES_UNCHECKED_SUPPORTS = 2, /**< "supports". What carries the reactions, and the thrust of rafters. */
    FRAME_JOIST_SIZES_UNCHECKED_VIBRATION = 3 /**< "vibration". Whether a floor feels lively underfoot. */
};

/** A span, its loads and what may cross it. */
typedef struct frame_joist_sizes_in {
    uint32_t struct_size, struct_id;
    const frame_joist_choice *choices; /**< optional. What to try; without it 2x6 to 2x12. */
    size_t choice_count;     /**< count : 0..500. */
    const double *spacings_in; /**< optional : >0..48. Spacings to try; without it 12, 16, 19.2 and 24 in. */
    size_t spacing_count;    /**< count : 0..20. */
    frame_joist_use use;     /**< required. What the joists are part of. */
    frame_species species;   /**< optional. Species of the choices that name none. */
    frame_grade grade;       /**< optional. Visual grade of the choices that name none. */
    frame_service service;   /**< "wet for a deck, otherwise dry". Moisture in service. */
    frame_bool incised;      /**< "yes for a deck but of Southern Pine, otherwise no". Incised for pressure treatment. */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    int32_t spare;
    double span_in;          /**< required : >0..1200. Clear span, on plan. */
    double live_psf;         /**< optional : 0..1000. Live load; for a rafter, roof live load on plan. */
    double dead_psf;         /**< "10 for a floor, rafter or deck, 5 for a ceiling" : 0..1000. Dead load; on the slope where a slope is given. */
    double snow_psf;         /**< optional : 0..1000. Snow, on plan. */
    double slope;            /**< optional : 0..4. Slope of a rafter, rise over run. */
    double bearing_in;       /**< 1.5 : >0..48. Length of bearing at each end. */
    double most_depth_in;    /**< optional : >0..60. Most depth. */
    double deflection_limit; /**< "360 for a floor or deck, 240 for a ceiling, 180 for a rafter" : 1..10000. Span over this is the most it may sag under live load or snow. */
    double total_deflection_limit; /**< "240 for a floor or deck, otherwise none" : 1..10000. Span over this is the most it may sag in all, with creep. */
} frame_joist_sizes_in;

/** The best choice. */
typedef struct frame_joist_sizes_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : joist_sizes_caution. Cautions. */
    uint64_t not_checked; /**< bits : joist_sizes_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values of the best choice; of the nearest where none holds. */
    frame_bool passes;    /**< Whether any choice holds. */
    frame_size size;      /**< Nominal size of the best; not given where none holds, or where it came by its true size. */
    int32_t passing_count; /**< How many choices hold. */
    int32_t tried_count;  /**< How many were tried. */
    int32_t spare;
    double spacing_in;    /**< Spacing of the best. */
    double board_feet_per_ft2; /**< Its board feet on a square foot of plan. */
    double cost_per_ft2;  /**< Its cost on a square foot of plan; not given where not every choice has its price. */
    double ratio;         /**< Its ratio. */
} frame_joist_sizes_out;

/** A choice, as checked. */
typedef struct frame_joist_sizes_option {
    uint32_t struct_size, struct_id;
    frame_size size;          /**< Nominal size. */
    frame_species species;    /**< Species. */
    frame_grade grade;        /**< Visual grade. */
    int32_t choice;           /**< Its place in choices, from 0. */
    frame_bool passes;        /**< Whether it holds. */
    frame_governing governs;  /**< The check with the largest ratio. */
    double spacing_in;        /**< Centre to centre. */
    double ratio;             /**< The largest of its ratios; not given where it could not be checked. */
    double bending_ratio;     /**< f_b over F_b'. */
    double shear_ratio;       /**< f_v over F_v'. */
    double bearing_ratio;     /**< f_c-perp over F_c-perp'. */
    double deflection_ratio;  /**< The larger of the two ratios of deflection. */
    double bearing_needed_in; /**< Length of bearing that would just do. */
    double board_feet_per_ft2; /**< Board feet on a square foot of plan, by nominal size. */
    double cost_per_ft2;      /**< Cost on a square foot of plan; not given without a price. */
    const char *reason;       /**< Why it loses to the best, or that it is the best. */
    const char *name;         /**< Name of the lumber. */
} frame_joist_sizes_option;

/** Tries joists, rafters, ceiling or deck joists for a span and ranks them: those that hold by cost where every choice has its price, else by board
 * feet, on a square foot of plan; then those that do not, the nearest to holding first, each with the check that it fails. Each is a
 * joist_check. FRAME_REQUIRED where loads, or species and grade, are missing; FRAME_NO_VALUE when no choice is left within most_depth_in. */
FRAME_ANSWER(joist_sizes);
/** The choices, best first. */
FRAME_ANSWER_LIST(joist_sizes, option, options);

/* ---- post_sizes: which post, stud or column to buy -------------------------------------------------------------- */

/** A choice of lumber for a post. As a tuple or array: size, plies, species, grade, price_per_ft. */
typedef struct frame_post_choice {
    uint32_t struct_size, struct_id;
    frame_size size;       /**< required. Nominal size of one ply. */
    int32_t plies;         /**< 1 : 1..5. Plies. */
    frame_species species; /**< optional. Species; that of the call without it. */
    frame_grade grade;     /**< optional. Visual grade; that of the call without it. */
    double price_per_ft;   /**< optional : 0..1e6. Price of a foot of one ply, in the user's money. */
    const char *name;      /**< optional. Name of the lumber. */
} frame_post_choice;
/** Sets up a choice: every field not given. */
FRAME_ELEMENT(post_choice);

/** Cautions that go with the choice of a post. */
typedef int32_t frame_post_caution;
enum frame_post_caution_values {
    FRAME_POST_CAUTION_BOARD_FEET = 0, /**< "board_feet". Ranked by board feet, as not every choice had its price. */
    FRAME_POST_CAUTION_NONE = 1,       /**< "none_holds". None of the choices holds. */
    FRAME_POST_CAUTION_MEMORY = 2,     /**< "from_memory". The best choice rests on values recalled, no text seen. */
    FRAME_POST_CAUTION_ENDS = 3,       /**< "ends". A post needs a base and a cap that hold it in place, against sideways load and uplift too. */
    FRAME_POST_CAUTION_PLIES = 4       /**< "plies". Plies must be fastened together as NDS 15.3 asks for. */
};
/** What the choice of a post leaves unchecked. */
typedef int32_t frame_post_not_checked;
enum frame_post_not_checked_values {
    FRAME_POST_UNCHECKED_PLATE = 0,        /**< "plate". What it stands on: no plate was given. */
    FRAME_POST_UNCHECKED_COMBINATIONS = 1, /**< "combinations". Other combinations of loads: give each with its own duration. */
    FRAME_POST_UNCHECKED_UPLIFT = 2,       /**< "uplift". Uplift and the ties against it. */
    FRAME_POST_UNCHECKED_CODE = 3          /**< "code_table". The code's own tables of posts and studs, which may ask for more. */
};

/** A post's loads and what may carry them. */
typedef struct frame_post_sizes_in {
    uint32_t struct_size, struct_id;
    const frame_post_choice *choices; /**< optional. What to try; without it 4x4, 4x6, 6x6, 6x8, 8x8 and two or three 2x4 and 2x6 nailed together. */
    size_t choice_count;     /**< count : 0..500. */
    frame_species species;   /**< optional. Species of the choices that name none. */
    frame_grade grade;       /**< optional. Visual grade of the choices that name none. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_load_duration load_duration; /**< ten years. The duration of the shortest load in this combination. */
    frame_bool weak_axis_held; /**< no. Sheathing on both edges holds it along its length against buckling across its thickness. */
    frame_column_fastening fastening; /**< nailed. How plies are fastened. */
    frame_species plate_species; /**< optional. Species of the plate that it stands on, to check its crushing. */
    double length_in;        /**< required : >0..1200. Clear height between supports. */
    double axial_lb;         /**< required : 0..1e6. Load along the axis, of one combination. */
    double lateral_plf;      /**< 0 : 0..1e5. Sideways load on a foot of its narrow face, of the same combination. */
    double effective_length_factor; /**< 1 : 0.5..2.4. K_e by how the ends are held (NDS appendix G). */
    double eccentricity_in;  /**< 0 : 0..48. How far from the axis the load stands, along its width. */
    double most_width_in;    /**< optional : >0..60. Most breadth of all plies. */
    double most_depth_in;    /**< optional : >0..60. Most width of a ply. */
    frame_design_method method; /**< ASD. How safety is brought in: with LRFD give loads as factored, and time_effect_factor. */
    int32_t spare;
    double time_effect_factor;  /**< optional : 0.6..1.25. Time effect factor, lambda, of this combination (NDS table N3); needed with LRFD. */
} frame_post_sizes_in;

/** The best choice. */
typedef struct frame_post_sizes_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : post_caution. Cautions. */
    uint64_t not_checked; /**< bits : post_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values of the best choice; of the nearest where none holds. */
    frame_bool passes;    /**< Whether any choice holds. */
    frame_size size;      /**< Nominal size of the best; not given where none holds. */
    int32_t plies;        /**< Plies of the best. */
    int32_t passing_count; /**< How many choices hold. */
    int32_t tried_count;  /**< How many were tried. */
    double board_feet;    /**< Board feet of the best. */
    double cost;          /**< Cost of the best; not given where not every choice has its price. */
    double ratio;         /**< Ratio of the best. */
} frame_post_sizes_out;

/** A choice, as checked. */
typedef struct frame_post_sizes_option {
    uint32_t struct_size, struct_id;
    frame_size size;          /**< Nominal size of one ply. */
    int32_t plies;            /**< Plies. */
    frame_species species;    /**< Species. */
    frame_grade grade;        /**< Visual grade. */
    int32_t choice;           /**< Its place in choices, from 0. */
    frame_bool passes;        /**< Whether it holds. */
    frame_governing governs;  /**< The check with the largest ratio. */
    int32_t spare;
    double ratio;             /**< The largest of its ratios; not given where it could not be checked. */
    double compression_ratio; /**< f_c over F_c'. */
    double combined_ratio;    /**< Bending and compression together; not given without either. */
    double bearing_ratio;     /**< Crushing of the plate; not given without a plate. */
    double capacity_lb;       /**< Load along the axis that it would just carry without sideways load. */
    double board_feet;        /**< Board feet of all plies, by nominal size and clear height. */
    double cost;              /**< Cost of all plies; not given without a price. */
    const char *reason;       /**< Why it loses to the best, or that it is the best. */
    const char *name;         /**< Name of the lumber. */
} frame_post_sizes_option;

/** Tries posts for a load and ranks them: those that hold by cost where every choice has its price, else by board feet; then those that do not,
 * the nearest to holding first, each with the check that it fails. Each is a column_check. */
FRAME_ANSWER(post_sizes);
/** The choices, best first. */
FRAME_ANSWER_LIST(post_sizes, option, options);

/* ---- span_table: a whole table of longest spans ---------------------------------------------------------------- */

/** Cautions that go with a table of spans. */
typedef int32_t frame_span_table_caution;
enum frame_span_table_caution_values {
    FRAME_SPAN_TABLE_CAUTION_CODE = 0,    /**< "span_tables". The code's span tables and the building official decide; where they give less, build to that. */
    FRAME_SPAN_TABLE_CAUTION_MEMORY = 1,  /**< "from_memory". Some spans rest on values recalled, no text seen. */
    FRAME_SPAN_TABLE_CAUTION_EMPTY = 2,   /**< "empty". Some cells are empty: no such lumber is in the tables. */
    FRAME_SPAN_TABLE_CAUTION_SNOW_BASIS = 3, /**< "snow_basis". Snow is taken as a 50-year load on plan: a strength-level one belongs to load_edition "ASCE 7-22". */
    FRAME_SPAN_TABLE_CAUTION_RAFTER = 4   /**< "ties_first". Rafters push the walls apart without ties or a ridge beam. */
};
/** What a table of spans leaves unchecked: as joist_span. */
typedef int32_t frame_span_table_not_checked;
enum frame_span_table_not_checked_values {
    FRAME_SPAN_TABLE_UNCHECKED_BEARING = 0,  /**< "bearing". Bearing: each cell says what it needs. */
    FRAME_SPAN_TABLE_UNCHECKED_LOCAL = 1,    /**< "local_loads". Point loads, walls, tubs, wind, drifted and sliding snow. */
    FRAME_SPAN_TABLE_UNCHECKED_CUTS = 2,     /**< "cuts". Notches, holes and birdsmouths. */
    FRAME_SPAN_TABLE_UNCHECKED_SUPPORTS = 3  /**< "supports". What carries the reactions, and thrust of rafters. */
};

/** What to fill a table of spans with: every species with every grade, spacing and size. */
typedef struct frame_span_table_in {
    uint32_t struct_size, struct_id;
    const frame_species *species; /**< required. Species, a group of rows each. */
    size_t species_count;    /**< count : 1..100. */
    const frame_grade *grades; /**< optional. Visual grades, a row each; without it Select Structural, No.1, No.2 and No.3. */
    size_t grade_count;      /**< count : 0..30. */
    const frame_size *sizes; /**< optional. Nominal sizes, a column each; without it 2x6, 2x8, 2x10 and 2x12. */
    size_t size_count;       /**< count : 0..50. */
    const double *spacings_in; /**< optional : >0..48. Spacings, centre to centre; without it 12, 16, 19.2 and 24 in. */
    size_t spacing_count;    /**< count : 0..50. */
    frame_joist_use use;     /**< required. What the joists are part of. */
    frame_service service;   /**< "wet for a deck, otherwise dry". Moisture in service. */
    frame_bool incised;      /**< "yes for a deck but of Southern Pine, otherwise no". Incised for pressure treatment. */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
    frame_rounding rounding; /**< down. How the page and the CSV round spans to the inch; the cells are not rounded. */
    double live_psf;         /**< optional : 0..1000. Live load; for a rafter, roof live load on plan. */
    double dead_psf;         /**< "10 for a floor, rafter or deck, 5 for a ceiling" : 0..1000. Dead load. */
    double snow_psf;         /**< optional : 0..1000. Snow, on plan. */
    double slope;            /**< optional : 0..4. Slope of a rafter, rise over run. */
    double deflection_limit; /**< "360 for a floor or deck, 240 for a ceiling, 180 for a rafter" : 1..10000. Span over this is the most it may sag under live load or snow. */
    double total_deflection_limit; /**< optional : 1..10000. Span over this is the most it may sag in all, with creep. */
    double most_span_in;     /**< optional : >0..1200. Longest span to show, as the code's tables end at 26 ft; longer ones are cut to it. */
} frame_span_table_in;

/** The table in all. */
typedef struct frame_span_table_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : span_table_caution. Cautions. */
    uint64_t not_checked; /**< bits : span_table_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    int32_t filled_count; /**< Cells with a span. */
    int32_t empty_count;  /**< Cells of lumber that the tables do not have. */
    int32_t spare;
    double shortest_in;   /**< Shortest span of all. */
    double longest_in;    /**< Longest span of all. */
} frame_span_table_out;

/** A cell. */
typedef struct frame_span_table_cell {
    uint32_t struct_size, struct_id;
    frame_species species; /**< Species. */
    frame_grade grade;     /**< Grade. */
    frame_size size;       /**< Size. */
    frame_governing governs; /**< What makes the span no longer. */
    frame_known known;     /**< Worst source of its values. */
    frame_bool cut_off;    /**< Whether it would be longer than most_span_in. */
    double spacing_in;     /**< Spacing. */
    double span_in;        /**< Longest span, not rounded; not given for lumber that the tables do not have. */
    double bearing_needed_in; /**< Length of bearing needed at this span. */
} frame_span_table_cell;

/** Fills a table of longest spans, each a joist_span, for any species, grades, sizes, spacings and loads. FRAME_REQUIRED when neither live load nor snow
 * is given; FRAME_TOO_LARGE beyond a million cells. */
FRAME_ANSWER(span_table);
/** The cells: by species, then grade, then spacing, then size. */
FRAME_ANSWER_LIST(span_table, cell, cells);
/** Writes the table as CSV: species, grade, spacing, then a column for each size, in inches rounded as asked. */
FRAME_API frame_status frame_span_table_csv(const frame_span_table *answer, frame_text *into);
/** Writes the table as an HTML page to print: a block for each spacing, a row for each species and grade, spans in feet and inches, a letter
 * where something other than deflection governs, and below it what it assumes. */
FRAME_API frame_status frame_span_table_page(const frame_span_table *answer, frame_text *into);

/* ---- header_sizes: which header to buy -------------------------------------------------------------------------- */

/** A choice of lumber for a header. Without a size, give its design values and its true size. As a tuple or array: size, plies,
 * species, grade, turned, price_per_ft. */
typedef struct frame_header_choice {
    uint32_t struct_size, struct_id;
    frame_size size;       /**< optional. Nominal size of one ply. */
    int32_t plies;         /**< optional : 1..8. Plies; without it every number up to most_plies is tried. */
    frame_species species; /**< optional. Species; that of the call without it. */
    frame_grade grade;     /**< optional. Visual grade; that of the call without it. */
    frame_turned turned;   /**< on edge. How it is turned to the load. */
    int32_t spare;
    double price_per_ft;   /**< optional : 0..1e6. Price of a foot of one ply, in the user's money. */
    double width_in;       /**< optional : >0..60. True thickness of one ply, instead of size. */
    double depth_in;       /**< optional : >0..60. True width of one ply, instead of size. */
    double fb_psi;         /**< optional : >0..20000. F_b, instead of species and grade. */
    double fv_psi;         /**< optional : >0..5000. F_v, with fb_psi. */
    double fc_perp_psi;    /**< optional : >0..10000. F_c-perp, with fb_psi. */
    double e_psi;          /**< optional : >0..1e7. E, with fb_psi. */
    double e_min_psi;      /**< optional : >0..1e7. E_min, with fb_psi, for a free compression edge. */
    double specific_gravity; /**< optional : >0..1.5. Specific gravity, with fb_psi, for self_weight. */
    const char *name;      /**< optional. Name of the lumber. */
} frame_header_choice;
/** Sets up a choice: every field not given. */
FRAME_ELEMENT(header_choice);

/** Cautions that go with the choice of a header. */
typedef int32_t frame_header_caution;
enum frame_header_caution_values {
    FRAME_HEADER_CAUTION_POINT_LOADS = 0, /**< "point_loads". No load but those given: a post, truss or other header that lands on this one must be checked. */
    FRAME_HEADER_CAUTION_EDGE = 1,        /**< "edge". Cripples and a loose plate do not hold the compression edge. */
    FRAME_HEADER_CAUTION_PLIES = 2,       /**< "plies". Plies must be fastened together, and each must bear. */
    FRAME_HEADER_CAUTION_SHORING = 3,     /**< "shoring". In a standing wall shore both sides before it is opened. */
    FRAME_HEADER_CAUTION_BOARD_FEET = 4,  /**< "board_feet". Ranked by board feet, as not every choice had its price. */
    FRAME_HEADER_CAUTION_NONE = 5,        /**< "none_holds". None of the choices holds. */
    FRAME_HEADER_CAUTION_MEMORY = 6,      /**< "from_memory". The best choice rests on values recalled, no text seen. */
    FRAME_HEADER_CAUTION_SNOW_BASIS = 7   /**< "snow_basis". Snow is taken as a 50-year load (ASCE 7-16 and the code tables): say load_edition "ASCE 7-22" for a strength-level one. */
};

/** What the choice of a header leaves unchecked. */
typedef int32_t frame_header_not_checked;
enum frame_header_not_checked_values {
    FRAME_HEADER_UNCHECKED_SUPPORTS = 0, /**< "supports". Jack and king studs, and what stands below them. */
    FRAME_HEADER_UNCHECKED_BEARING = 1,  /**< "bearing". Bearing: no length was given; what each choice needs is in its line. */
    FRAME_HEADER_UNCHECKED_CODE = 2      /**< "code_table". The code's own table of headers, which may ask for more. */
};

/** An opening, its loads and what may span it. */
typedef struct frame_header_sizes_in {
    uint32_t struct_size, struct_id;
    const frame_header_choice *choices; /**< optional. What to try; without it 2x4 to 2x12 on edge. */
    size_t choice_count;     /**< count : 0..500. */
    frame_species species;   /**< optional. Species of the choices that name none. */
    frame_grade grade;       /**< optional. Visual grade of the choices that name none. */
    int32_t most_plies;      /**< 3 : 1..8. Most plies to try where a choice leaves them open. */
    frame_service service;   /**< dry. Moisture in service. */
    frame_bool incised;      /**< no. Incised for pressure treatment. */
    frame_compression_edge compression_edge; /**< free. What holds the edge in compression. */
    frame_load_duration live_duration; /**< ten years. How long the live load lasts. */
    frame_bool self_weight;  /**< yes. Add each choice's own weight. */
    double span_in;          /**< required : >0..1200. Span: clear span and half the bearing needed at each end. */
    double dead_plf;         /**< optional : 0..1e5. Dead load on a foot of header; 0 must be said. */
    double live_plf;         /**< optional : 0..1e5. Live load. */
    double roof_live_plf;    /**< optional : 0..1e5. Roof live load, on plan. */
    double snow_plf;         /**< optional : 0..1e5. Snow, on plan. */
    double spacing_in;       /**< optional : >0..480. Width that it carries, for loads in psf. */
    double dead_psf;         /**< optional : 0..1000. Dead load over spacing_in. */
    double live_psf;         /**< optional : 0..1000. Live load over spacing_in. */
    double roof_live_psf;    /**< optional : 0..1000. Roof live load on plan, over spacing_in. */
    double snow_psf;         /**< optional : 0..1000. Snow on plan, over spacing_in. */
    double bearing_in;       /**< optional : >0..48. Length of bearing at each end; without it bearing is not checked. */
    double unbraced_length_in; /**< optional : >0..1200. Distance between braces of a free compression edge; the span without it. */
    double most_width_in;    /**< optional : >0..60. Most breadth, as the wall's thickness allows. */
    double most_depth_in;    /**< optional : >0..60. Most depth, as the height above the opening allows. */
    double deflection_limit; /**< 360 : 1..10000. Span over this is the most it may sag under live load or snow. */
    double total_deflection_limit; /**< 240 : 1..10000. Span over this is the most it may sag in all, with creep. */
    double creep_factor;     /**< "1.5 dry, 2.0 wet" : 1..3. Long-term growth of the sag under dead load (NDS 3.5.2). */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
} frame_header_sizes_in;

/** The best choice. */
typedef struct frame_header_sizes_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : header_caution. Cautions. */
    uint64_t not_checked; /**< bits : header_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values of the best choice; of the first where none holds. */
    frame_bool passes;    /**< Whether any choice holds. */
    frame_size size;      /**< Nominal size of the best; not given where none holds, or where it came by its true size. */
    int32_t plies;        /**< Plies of the best. */
    int32_t passing_count; /**< How many choices hold. */
    int32_t tried_count;  /**< How many were tried. */
    double board_feet;    /**< Board feet of the best. */
    double cost;          /**< Cost of the best; not given where not every choice has its price. */
    double ratio;         /**< Ratio of the best. */
} frame_header_sizes_out;

/** A choice, as checked. */
typedef struct frame_header_sizes_option {
    uint32_t struct_size, struct_id;
    frame_size size;          /**< Nominal size of one ply. */
    int32_t plies;            /**< Plies. */
    frame_species species;    /**< Species. */
    frame_grade grade;        /**< Visual grade. */
    frame_turned turned;      /**< How it is turned to the load. */
    int32_t choice;           /**< Its place in choices, from 0. */
    frame_bool passes;        /**< Whether it holds. */
    frame_governing governs;  /**< The check with the largest ratio. */
    frame_load_combination combination; /**< The combination of loads that governs bending. */
    int32_t spare;
    double ratio;             /**< The largest of its ratios; not given where it could not be checked. */
    double bending_ratio;     /**< f_b over F_b'. */
    double shear_ratio;       /**< f_v over F_v'. */
    double bearing_ratio;     /**< f_c-perp over F_c-perp'; not given without a length of bearing. */
    double deflection_ratio;  /**< The larger of the two ratios of deflection. */
    double bearing_needed_in; /**< Length of bearing that would just do. */
    double width_in;          /**< Breadth of all plies. */
    double depth_in;          /**< Depth along the load. */
    double length_in;         /**< Length to buy: the span and the bearing that reaches past it. */
    double board_feet;        /**< Board feet of all plies, by nominal size. */
    double cost;              /**< Cost of all plies; not given without a price. */
    const char *reason;       /**< Why it loses to the best, or that it is the best. */
    const char *name;         /**< Name of the lumber. */
} frame_header_sizes_option;

/** Tries headers for an opening and ranks them: those that hold by cost where every choice has its price, else by board feet; then those
 * that do not, the nearest to holding first, each with the check that it fails. Each is a beam_check. FRAME_REQUIRED where loads, or
 * species and grade, are missing; FRAME_NO_VALUE when no choice is left within most_width_in and most_depth_in. */
FRAME_ANSWER(header_sizes);
/** The choices, best first. */
FRAME_ANSWER_LIST(header_sizes, option, options);

FRAME_END

#endif
