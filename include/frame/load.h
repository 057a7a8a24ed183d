/** @file load.h
 * Loads: their kinds, how long they last, how they combine.
 */
#ifndef FRAME_LOAD_H
#define FRAME_LOAD_H

#include <frame/base.h>
#include <frame/material.h>

FRAME_BEGIN

/** A kind of load. */
typedef int32_t frame_load_kind;
enum frame_load_kind_values {
    FRAME_LOAD_DEAD = 1,      /**< "dead" | "D". What is built: lasts as long as the building. */
    FRAME_LOAD_LIVE = 2,      /**< "live" | "floor live" | "L". People, furniture, stored goods on a floor. */
    FRAME_LOAD_ROOF_LIVE = 3, /**< "roof live" | "Lr". People and material on a roof while it is built or mended. */
    FRAME_LOAD_SNOW = 4,      /**< "snow" | "S". Snow on the roof, on plan. */
    FRAME_LOAD_WIND = 5       /**< "wind" | "W". Wind, toward or away. */
};

/** How long a load stands on the wood in all its life: the rows of NDS table 2.3.2. */
typedef int32_t frame_load_duration;
enum frame_load_duration_values {
    FRAME_DURATION_PERMANENT = 1,   /**< "permanent". Dead load, or goods stored for good: C_D 0.9. */
    FRAME_DURATION_TEN_YEARS = 2,   /**< "ten years" | "normal". Live load of occupancy: C_D 1.0. */
    FRAME_DURATION_TWO_MONTHS = 3,  /**< "two months". Snow: C_D 1.15. */
    FRAME_DURATION_SEVEN_DAYS = 4,  /**< "seven days". Roof live and construction load: C_D 1.25. */
    FRAME_DURATION_TEN_MINUTES = 5, /**< "ten minutes". Wind and earthquake: C_D 1.6. */
    FRAME_DURATION_IMPACT = 6       /**< "impact". Impact: C_D 2.0; never for connections or pressure-treated wood. */
};

/** How safety is brought in. */
typedef int32_t frame_design_method;
enum frame_design_method_values {
    FRAME_METHOD_ASD = 1, /**< "ASD" | "allowable stress design". Allowable stress design: loads as they are, strengths reduced, C_D by the shortest load. */
    FRAME_METHOD_LRFD = 2 /**< "LRFD" | "load and resistance factor design" | "strength design". Load and resistance factor design: loads factored, K_F, phi and lambda on strengths, no C_D. */
};

/** The standard whose combinations of loads are formed. */
typedef int32_t frame_load_edition;
enum frame_load_edition_values {
    FRAME_LOADS_ASCE_7_16 = 1, /**< "ASCE 7-16" | "7-16". Of 2016: snow once in 50 years. */
    FRAME_LOADS_ASCE_7_22 = 2  /**< "ASCE 7-22" | "7-22". Of 2022: snow at strength level, 0.7 of it in allowable stress design. */
};

/** A combination of loads: ASCE 7-16 and 7-22, 2.4.1 for allowable stress design and 2.3.1 for strength design. */
typedef int32_t frame_load_combination;
enum frame_load_combination_values {
    FRAME_COMBINATION_D = 1,        /**< "D". Dead load alone. */
    FRAME_COMBINATION_D_L = 2,      /**< "D + L". Dead and live load. */
    FRAME_COMBINATION_D_LR = 3,     /**< "D + Lr". Dead and roof live load. */
    FRAME_COMBINATION_D_S = 4,      /**< "D + S". Dead load and snow. */
    FRAME_COMBINATION_D_L_LR = 5,   /**< "D + 0.75L + 0.75Lr". Dead load, three quarters of live and roof live load. */
    FRAME_COMBINATION_D_L_S = 6,    /**< "D + 0.75L + 0.75S". Dead load, three quarters of live load and snow. */
    FRAME_COMBINATION_D_W = 7,      /**< "D + 0.6W". Dead load and wind; wind of ASCE 7-16 is at strength level. */
    FRAME_COMBINATION_D_L_W_LR = 8, /**< "D + 0.75L + 0.45W + 0.75Lr". Dead load, three quarters of live load, of six tenths of the wind, and of roof live load. */
    FRAME_COMBINATION_D_L_W_S = 9,  /**< "D + 0.75L + 0.45W + 0.75S". Dead load, three quarters of live load, of six tenths of the wind, and of snow. */
    FRAME_COMBINATION_D_W_UPLIFT = 10, /**< "0.6D + 0.6W". Wind against six tenths of the dead load: uplift and overturning. */
    FRAME_COMBINATION_D_7S = 11,       /**< "D + 0.7S". Dead load and snow of strength level brought down (ASCE 7-22). */
    FRAME_COMBINATION_D_L_7S = 12,     /**< "D + 0.75L + 0.525S". Dead load, three quarters of live load and of 0.7 of the snow (ASCE 7-22). */
    FRAME_COMBINATION_D_L_W_7S = 13,   /**< "D + 0.75L + 0.45W + 0.525S". The same with three quarters of 0.6 of the wind (ASCE 7-22). */
    FRAME_COMBINATION_LRFD_D = 14,     /**< "1.4D". Strength design: dead load alone. */
    FRAME_COMBINATION_LRFD_L = 15,     /**< "1.2D + 1.6L". Strength design: live load leads, nothing on the roof. */
    FRAME_COMBINATION_LRFD_L_LR = 16,  /**< "1.2D + 1.6L + 0.5Lr". Strength design: live load leads, roof live load follows. */
    FRAME_COMBINATION_LRFD_L_S = 17,   /**< "1.2D + 1.6L + 0.5S". Strength design: live load leads, snow follows (ASCE 7-16). */
    FRAME_COMBINATION_LRFD_LR = 18,    /**< "1.2D + 1.6Lr + L". Strength design: roof live load leads. */
    FRAME_COMBINATION_LRFD_S = 19,     /**< "1.2D + 1.6S + L". Strength design: snow leads (ASCE 7-16). */
    FRAME_COMBINATION_LRFD_LR_W = 20,  /**< "1.2D + 1.6Lr + 0.5W". Strength design: roof live load leads, wind follows. */
    FRAME_COMBINATION_LRFD_S_W = 21,   /**< "1.2D + 1.6S + 0.5W". Strength design: snow leads, wind follows (ASCE 7-16). */
    FRAME_COMBINATION_LRFD_W_LR = 22,  /**< "1.2D + W + L + 0.5Lr". Strength design: wind leads. */
    FRAME_COMBINATION_LRFD_W_S = 23,   /**< "1.2D + W + L + 0.5S". Strength design: wind leads, snow follows (ASCE 7-16). */
    FRAME_COMBINATION_LRFD_W_UPLIFT = 24, /**< "0.9D + W". Strength design: wind against nine tenths of the dead load. */
    FRAME_COMBINATION_LRFD_L_3S = 25,  /**< "1.2D + 1.6L + 0.3S". Strength design: live load leads, snow of strength level follows (ASCE 7-22). */
    FRAME_COMBINATION_LRFD_1S = 26,    /**< "1.2D + S + L". Strength design: snow of strength level leads (ASCE 7-22). */
    FRAME_COMBINATION_LRFD_1S_W = 27,  /**< "1.2D + S + 0.5W". Strength design: snow of strength level leads, wind follows (ASCE 7-22). */
    FRAME_COMBINATION_LRFD_W_3S = 28   /**< "1.2D + W + L + 0.3S". Strength design: wind leads, snow of strength level follows (ASCE 7-22). */
};

/** What combinations of loads leave unchecked. */
typedef int32_t frame_combinations_not_checked;
enum frame_combinations_not_checked_values {
    FRAME_COMBINATIONS_UNCHECKED_WIND = 0,  /**< "wind". Wind, uplift: their combinations are not formed without a wind load; earthquake, rain, earth and water never. */
    FRAME_COMBINATIONS_UNCHECKED_SNOW = 1,  /**< "snow_forms". Unbalanced, drifted and sliding snow: the snow given is taken as it is. */
    FRAME_COMBINATIONS_UNCHECKED_LIVE = 2   /**< "live_load_patterns". Live load on some spans only, concentrated live loads and the reduction for large areas. */
};
/** Cautions that go with combinations of loads. */
typedef int32_t frame_combinations_caution;
enum frame_combinations_caution_values {
    FRAME_COMBINATIONS_CAUTION_BASIS = 0, /**< "snow_basis". Snow is taken as a 50-year load (ASCE 7-16 and the code tables); a strength-level snow load of ASCE 7-22 is 0.7 of itself here. */
    FRAME_COMBINATIONS_CAUTION_UPLIFT = 1 /**< "uplift". Wind lifts more than six tenths of the dead load hold down: tie it down. */
};

/** The loads to combine, all in one unit: pounds per foot here, but any unit will do. */
typedef struct frame_load_combinations_in {
    uint32_t struct_size, struct_id;
    double dead_plf;      /**< required : 0..1e6. Dead load. */
    double live_plf;      /**< 0 : 0..1e6. Live load. */
    double roof_live_plf; /**< 0 : 0..1e6. Roof live load, on plan. */
    double snow_plf;      /**< 0 : 0..1e6. Snow on the roof, on plan. */
    frame_load_duration live_duration; /**< ten years. How long the live load lasts. */
    int32_t spare;
    double wind_plf;      /**< 0 : -1e6..1e6. Wind at strength level, as ASCE 7-16 gives it; negative away from the member, as uplift. */
    frame_design_method method;  /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard; with ASCE 7-22 the snow given is at strength level. */
} frame_load_combinations_in;

/** What the combinations come to. */
typedef struct frame_load_combinations_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : combinations_caution. Cautions. */
    uint64_t not_checked; /**< bits : combinations_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the factors. */
    frame_load_combination governs; /**< The combination that governs wood under stress: the largest total over C_D, or over lambda in LRFD. */
    double governing_plf;        /**< Its total. */
    double load_duration_factor; /**< Its load duration factor, C_D; 1 in LRFD. */
    double greatest_plf;         /**< The largest total of all, as for bearing and for what carries the member. */
    double transient_plf;        /**< The largest load without the dead load, as for deflection under live load; wind left out. */
    double least_plf;            /**< The least total of all: negative where wind lifts. */
    double time_effect_factor;   /**< Time effect factor, lambda, of the one that governs; 1 in allowable stress design. */
} frame_load_combinations_out;

/** One combination. */
typedef struct frame_load_combinations_row {
    uint32_t struct_size, struct_id;
    frame_load_combination combination; /**< Which. */
    int32_t spare;
    double total_plf;            /**< Its total. */
    double load_duration_factor; /**< C_D: that of the shortest load in it; 1 in LRFD. */
    double equivalent_plf;       /**< Total over C_D, or over lambda: what governs wood under stress. */
    double time_effect_factor;   /**< Time effect factor, lambda; 1 in allowable stress design. */
} frame_load_combinations_row;

/** Combines dead, live, roof live, snow and wind loads by ASCE 7-16 or 7-22. In allowable stress design (2.4.1) each combination
 * has the load duration factor of its shortest load (NDS 2018 table 2.3.2), dead load alone included; in LRFD (2.3.1) its time
 * effect factor (NDS 2018 table N3). Live load that follows is taken whole, though 2.3.1 lets most of it be halved. Only combinations
 * whose loads are not zero are listed. */
FRAME_ANSWER(load_combinations);
/** The combinations, in the order of the standard. */
FRAME_ANSWER_LIST(load_combinations, row, rows);

/* ---- roof_snow: snow on a roof from snow on the ground ---------------------------------------------------------- */

/** What a ground snow load means. */
typedef int32_t frame_snow_basis;
enum frame_snow_basis_values {
    FRAME_SNOW_50_YEAR = 1, /**< "50-year" | "nominal". Once in 50 years, as on the maps up to ASCE 7-16 and in the code's tables. */
    FRAME_SNOW_STRENGTH = 2 /**< "strength-level" | "strength". At strength level, as on the maps of ASCE 7-22. */
};

/** The standard that roof snow goes by. */
typedef int32_t frame_snow_edition;
enum frame_snow_edition_values {
    FRAME_SNOW_ASCE_7_10 = 1, /**< "ASCE 7-10". Of 2010. */
    FRAME_SNOW_ASCE_7_16 = 2, /**< "ASCE 7-16". Of 2016. */
    FRAME_SNOW_ASCE_7_22 = 3  /**< "ASCE 7-22". Of 2022, with ground snow at strength level. */
};

/** The form of a roof. */
typedef int32_t frame_snow_roof;
enum frame_snow_roof_values {
    FRAME_SNOW_GABLE = 1, /**< "gable". Two slopes that meet at a ridge. */
    FRAME_SNOW_HIP = 2,   /**< "hip". Slopes on all sides. */
    FRAME_SNOW_SHED = 3,  /**< "shed" | "monoslope" | "lean-to". One slope. */
    FRAME_SNOW_FLAT = 4   /**< "flat". No slope to speak of. */
};

/** The country around a building. */
typedef int32_t frame_snow_terrain;
enum frame_snow_terrain_values {
    FRAME_TERRAIN_B = 1, /**< "B" | "wooded" | "suburban". Towns, suburbs, woods: many close obstructions. */
    FRAME_TERRAIN_C = 2, /**< "C" | "open". Open country with scattered obstructions. */
    FRAME_TERRAIN_D = 3, /**< "D" | "shore". Flat ground and water, unobstructed. */
    FRAME_TERRAIN_ABOVE_TREES = 4, /**< "above the tree line" | "windswept mountain". In windswept mountains above the tree line. */
    FRAME_TERRAIN_TREELESS = 5 /**< "treeless Alaska". Where no trees stand within two miles. */
};

/** How the wind comes to a roof. */
typedef int32_t frame_roof_exposure;
enum frame_roof_exposure_values {
    FRAME_ROOF_FULLY_EXPOSED = 1, /**< "fully exposed". On all sides, with no shelter by terrain, higher buildings or trees. */
    FRAME_ROOF_PARTLY_EXPOSED = 2, /**< "partially exposed" | "partly exposed". Neither of the others. */
    FRAME_ROOF_SHELTERED = 3 /**< "sheltered". Close among conifers that count as obstructions. */
};

/** How warm a roof is. */
typedef int32_t frame_snow_thermal;
enum frame_snow_thermal_values {
    FRAME_THERMAL_HEATED = 1,  /**< "heated" | "other". Heated, and none of the others. */
    FRAME_THERMAL_COLD_VENTILATED = 2, /**< "cold ventilated". Just above freezing, or a cold ventilated roof with R 25 or more over heated space. */
    FRAME_THERMAL_UNHEATED = 3, /**< "unheated" | "open air". Unheated or open to the air. */
    FRAME_THERMAL_FREEZER = 4, /**< "freezer". Kept below freezing. */
    FRAME_THERMAL_GREENHOUSE = 5 /**< "greenhouse". Heated at all times, roof under R 2, watched or with an alarm. */
};

/** Risk category of a building. */
typedef int32_t frame_risk_category;
enum frame_risk_category_values {
    FRAME_RISK_I = 1,   /**< "I". Low hazard to life: sheds, barns. */
    FRAME_RISK_II = 2,  /**< "II". All others: dwellings. */
    FRAME_RISK_III = 3, /**< "III". Many people. */
    FRAME_RISK_IV = 4   /**< "IV". Essential. */
};

/** Cautions that go with snow on a roof. */
typedef int32_t frame_snow_caution;
enum frame_snow_caution_values {
    FRAME_SNOW_CAUTION_SITE = 0,     /**< "site". The building official's ground snow load decides, and site studies where the map asks for them. */
    FRAME_SNOW_CAUTION_STRENGTH = 1, /**< "strength_level". These loads are at strength level: multiply by asd_factor before combining them for allowable stress design, as snow_psf is. */
    FRAME_SNOW_CAUTION_MEMORY = 2,   /**< "from_memory". Rests on clauses and factors recalled, no text seen: check them against the printed standard before relying on them. */
    FRAME_SNOW_CAUTION_CASES = 3,    /**< "cases". Unbalanced, drifted and sliding snow are cases of their own: the worst of all cases governs each member, not their sum, but drift and sliding snow lie on top of the balanced snow. */
    FRAME_SNOW_CAUTION_SLIPPERY = 4, /**< "slippery". The slope factor of a slippery roof holds only while nothing stops the snow from sliding off: no guard, no lower roof at the eave, no room taken by fallen snow. */
    FRAME_SNOW_CAUTION_EAVES = 5     /**< "eaves". The load of ice at the eaves acts alone with the dead load, on the overhang only. */
};

/** What snow on a roof leaves unchecked. */
typedef int32_t frame_snow_not_checked;
enum frame_snow_not_checked_values {
    FRAME_SNOW_UNCHECKED_DRIFT = 0,   /**< "drift". Drift against a higher wall or roof (7.7): none was given. */
    FRAME_SNOW_UNCHECKED_SLIDING = 1, /**< "sliding". Snow that slides off a higher roof (7.9): none was given. */
    FRAME_SNOW_UNCHECKED_PARTIAL = 2, /**< "partial". Snow taken off some spans of a continuous beam (7.5). */
    FRAME_SNOW_UNCHECKED_VALLEYS = 3, /**< "valleys". Valleys, several ridges, sawtooth and curved roofs (7.4.3, 7.6.2, 7.6.3). */
    FRAME_SNOW_UNCHECKED_PROJECTIONS = 4, /**< "projections". Drift around chimneys, dormers, parapets and solar panels (7.8, 7.12, 7.13). */
    FRAME_SNOW_UNCHECKED_NEIGHBOURS = 5, /**< "neighbours". Drift from buildings near by but apart (7.7.2), and drift where two steps meet (7.7.3). */
    FRAME_SNOW_UNCHECKED_PONDING = 6, /**< "ponding". Ponding of rain and melted snow (7.11). */
    FRAME_SNOW_UNCHECKED_EAVES = 7    /**< "eaves". Ice at the eaves (7.4.5): no overhang was given. */
};

/** A roof and the snow on the ground around it. */
typedef struct frame_roof_snow_in {
    uint32_t struct_size, struct_id;
    frame_snow_basis basis;     /**< required. What the ground snow load means. */
    frame_snow_edition edition; /**< "ASCE 7-16 for a 50-year load, ASCE 7-22 for one at strength level". The standard. */
    frame_snow_roof roof;       /**< required. Form of the roof. */
    frame_snow_terrain terrain; /**< optional. The country around, for C_e. */
    frame_roof_exposure roof_exposure; /**< optional. How the wind comes to the roof, for C_e. */
    frame_snow_thermal thermal; /**< optional. How warm the roof is, for C_t of ASCE 7-10 and 7-16. */
    frame_risk_category risk_category; /**< II. Risk category of the building. */
    frame_bool slippery;        /**< no. Smooth metal, slate, glass or membrane that snow slides off unobstructed. */
    frame_bool insulated;       /**< no. R 30 or more without ventilation, R 20 or more with: the roof is not warmed from below. */
    frame_bool simple_rafters;  /**< yes. Narrow roofs: simple rafters from eave to ridge, not trusses or rigid frames. */
    frame_bool upper_slippery;  /**< optional. Whether the roof above is slippery; needed with upper_slope. */
    int32_t spare;
    double ground_snow_psf;     /**< required : 0..1000. Ground snow load, p_g. */
    double slope;               /**< required : 0..4. Slope of the roof. */
    double run_in;              /**< required : >0..12000. Level distance from eave to ridge, W; the whole width of a shed or flat roof. */
    double exposure_factor;     /**< optional : 0.5..2. C_e, instead of terrain and roof_exposure. */
    double thermal_factor;      /**< optional : 0.5..2. C_t, instead of thermal; needed for ASCE 7-22, whose tables go by insulation. */
    double importance_factor;   /**< optional : 0.5..2. I_s, instead of that of the risk category; not for ASCE 7-22. */
    double winter_wind;         /**< optional : 0.1..0.9. Winter wind parameter W_2 of ASCE 7-22, for drifts. */
    double overhang_in;         /**< optional : 0..240. Level length of the overhang at the eaves, for ice. */
    double step_height_in;      /**< optional : >0..12000. Height of a wall or roof above this roof where they meet, for drift. */
    double upper_length_in;     /**< optional : >0..120000. Length of the roof above, square to the step; needed with step_height_in. */
    double lower_length_in;     /**< optional : >0..120000. Length of this roof, square to the step; needed with step_height_in. */
    double upper_slope;         /**< optional : 0..4. Slope of a roof above, falling toward this one, whose snow slides down. */
    double upper_run_in;        /**< optional : >0..12000. Level distance from eave to ridge of that roof; needed with upper_slope. */
    double upper_flat_psf;      /**< optional : 0..1000. Flat roof snow load of that roof; that of this roof without it. */
    double sliding_width_in;    /**< optional : >0..12000. Width of this roof below the eave above; 15 ft or more without it. */
} frame_roof_snow_in;

/** Snow on the roof, on its plan, in the basis of the standard; snow_psf alone is as the other calculations take it. */
typedef struct frame_roof_snow_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : snow_caution. Cautions. */
    uint64_t not_checked; /**< bits : snow_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the factors. */
    frame_snow_edition edition; /**< The standard it went by. */
    double snow_psf;        /**< The uniform load as the combinations here take it: a 50-year load, or 0.7 of one at strength level. */
    double asd_factor;      /**< What every load here is multiplied by before it is combined for allowable stress design. */
    double flat_psf;        /**< Flat roof snow load, p_f. */
    double balanced_psf;    /**< Sloped roof snow load, p_s: the balanced load. */
    double minimum_psf;     /**< Minimum load of a low-slope roof, p_m; 0 for steeper ones. */
    double rain_psf;        /**< Surcharge for rain on snow, on the balanced load only. */
    double uniform_psf;     /**< The larger of balanced load with rain, and minimum load. */
    double roof_slope_deg;  /**< Slope in degrees. */
    double exposure_factor; /**< C_e. */
    double thermal_factor;  /**< C_t. */
    double importance_factor; /**< I_s. */
    double roof_slope_factor; /**< C_s. */
    double density_pcf;     /**< Weight of the snow. */
    double windward_psf;    /**< Unbalanced load on the windward side; not given where the standard asks for none. */
    double leeward_psf;     /**< Unbalanced load on the whole leeward side. */
    double surcharge_psf;   /**< Surcharge on the leeward side, from the ridge down; 0 for narrow roofs of simple rafters. */
    double surcharge_width_in; /**< How far from the ridge it reaches, level. */
    double ridge_drift_in;  /**< Height of the drift that it stands for. */
    double balanced_depth_in; /**< Depth of the balanced snow below a step; not given without one. */
    double clear_height_in; /**< From there to the top of the step. */
    double leeward_drift_in; /**< Height of a drift of snow from the roof above. */
    double windward_drift_in; /**< Height of a drift of snow from this roof: three quarters of the formula's. */
    double drift_in;        /**< Height of the drift that governs, no higher than the step; 0 where the step is too low for one. */
    double drift_psf;       /**< Its load at the step, falling evenly to 0 over its width; on top of the balanced load. */
    double drift_width_in;  /**< Its width. */
    double sliding_plf;     /**< Snow that slides off the roof above, on a foot of its eave; not given without such a roof. */
    double sliding_psf;     /**< The same as a load on the strip below; on top of the balanced load. */
    double sliding_strip_in; /**< Width of that strip. */
    double eaves_psf;       /**< Ice and snow on the overhang; 0 where the roof is insulated, not given without an overhang. */
    double eaves_width_in;  /**< How far up from the eave it reaches. */
    double greatest_psf;    /**< The largest load anywhere on the roof, of all cases. */
} frame_roof_snow_out;

/** Finds snow on a roof from snow on the ground by ASCE 7-10, 7-16 or 7-22 chapter 7: flat and sloped roof load with exposure, thermal,
 * importance and slope factor, the minimum of low-slope roofs, rain on snow, unbalanced snow on gables and hips, drift against a higher wall or
 * roof, snow that slides from a roof above, and ice at the eaves. The basis of the ground snow load is required, as a load of ASCE 7-22
 * is at strength level. FRAME_CONFLICT where basis and edition do not belong together; FRAME_REQUIRED where a load that the standard asks
 * for cannot be found without more. */
FRAME_CALCULATION(roof_snow);

/* ---- assembly_weight: what usual roofs, floors and walls weigh -------------------------------------------------- */

/** A whole assembly, or a layer of one. */
typedef int32_t frame_assembly_material;
enum frame_assembly_material_values {
    FRAME_ASSEMBLY_ROOF_SHINGLES = 1, /**< "roof with asphalt shingles". A whole roof: rafters, panel, 1/2 in gypsum ceiling, asphalt shingles. */
    FRAME_ASSEMBLY_ROOF_CLAY_TILE = 2, /**< "roof with clay tile". The same with conventional clay tile. */
    FRAME_ASSEMBLY_ROOF_LIGHT_TILE = 3, /**< "roof with light tile". The same with light-weight tile. */
    FRAME_ASSEMBLY_ROOF_METAL = 4, /**< "roof with metal". The same with metal roofing. */
    FRAME_ASSEMBLY_ROOF_SHAKES = 5, /**< "roof with wood shakes". The same with wood shakes. */
    FRAME_ASSEMBLY_ROOF_GRAVEL = 6, /**< "roof with tar and gravel". The same with tar and gravel. */
    FRAME_ASSEMBLY_FLOOR_CARPET = 7, /**< "floor with carpet or vinyl". A whole floor: 2x12 joists, 3/4 in panel, 1/2 in gypsum ceiling, carpet or vinyl. */
    FRAME_ASSEMBLY_FLOOR_WOOD = 8, /**< "floor with wood flooring". The same with wood flooring. */
    FRAME_ASSEMBLY_FLOOR_TILE = 9, /**< "floor with ceramic tile". The same with ceramic tile. */
    FRAME_ASSEMBLY_FLOOR_SLATE = 10, /**< "floor with slate". The same with slate. */
    FRAME_ASSEMBLY_WALL = 11, /**< "wall without siding". A whole wall: 2x4 studs, 1/2 in panel, 1/2 in gypsum. */
    FRAME_ASSEMBLY_WALL_VINYL = 12, /**< "wall with vinyl or metal siding". The same with vinyl or aluminium siding. */
    FRAME_ASSEMBLY_WALL_LAP = 13, /**< "wall with lap siding". The same with lap wood siding. */
    FRAME_ASSEMBLY_WALL_STUCCO = 14, /**< "wall with stucco". The same with 7/8 in stucco. */
    FRAME_ASSEMBLY_WALL_THIN_STUCCO = 15, /**< "wall with thin stucco". The same with thin-coat stucco on insulation board. */
    FRAME_ASSEMBLY_WALL_BRICK = 16, /**< "wall with brick veneer". The same with 3-1/2 in brick veneer. */
    FRAME_ASSEMBLY_PARTITION = 17, /**< "partition". A whole interior partition: 2x4 studs, 1/2 in gypsum on both sides. */
    FRAME_ASSEMBLY_STUDS_2X6 = 18, /**< "2x6 studs". What 2x6 studs add to a wall of 2x4 studs. */
    FRAME_ASSEMBLY_ASPHALT_SHINGLES = 19, /**< "asphalt shingles". Asphalt shingles. */
    FRAME_ASSEMBLY_WOOD_SHINGLES = 20, /**< "wood shingles". Wood shingles. */
    FRAME_ASSEMBLY_SLATE_3_16 = 21, /**< "3/16 slate". Slate, 3/16 in. */
    FRAME_ASSEMBLY_SLATE_1_4 = 22, /**< "1/4 slate". Slate, 1/4 in. */
    FRAME_ASSEMBLY_CEMENT_TILE = 23, /**< "cement tile". Cement tile. */
    FRAME_ASSEMBLY_CLAY_TILE_ROMAN = 24, /**< "Roman clay tile". Clay tile, Roman. */
    FRAME_ASSEMBLY_CLAY_TILE_SPANISH = 25, /**< "Spanish clay tile". Clay tile, Spanish. */
    FRAME_ASSEMBLY_READY_ROOFING = 26, /**< "ready roofing". Three-ply ready roofing. */
    FRAME_ASSEMBLY_FOUR_PLY_GRAVEL = 27, /**< "four-ply felt and gravel". Four-ply felt and gravel. */
    FRAME_ASSEMBLY_FIVE_PLY_GRAVEL = 28, /**< "five-ply felt and gravel". Five-ply felt and gravel. */
    FRAME_ASSEMBLY_SHEET_METAL = 29, /**< "copper or tin". Copper or tin. */
    FRAME_ASSEMBLY_SINGLE_PLY = 30, /**< "single-ply membrane". Single-ply sheet membrane. */
    FRAME_ASSEMBLY_BITUMINOUS = 31, /**< "smooth bituminous membrane". Bituminous membrane, smooth. */
    FRAME_ASSEMBLY_RIGID_INSULATION = 32, /**< "rigid insulation". Rigid insulation, by its thickness. */
    FRAME_ASSEMBLY_PLYWOOD = 33, /**< "plywood" | "panel". Plywood or like panels, by their thickness. */
    FRAME_ASSEMBLY_WOOD_SHEATHING = 34, /**< "wood sheathing" | "boards". Boards, by their thickness. */
    FRAME_ASSEMBLY_GYPSUM = 35, /**< "gypsum board" | "drywall". Gypsum board, by its thickness. */
    FRAME_ASSEMBLY_FIBERBOARD = 36, /**< "fiberboard". Fiberboard, by its thickness. */
    FRAME_ASSEMBLY_DECKING_2 = 37, /**< "2 in decking". Decking of Douglas Fir, 2 in. */
    FRAME_ASSEMBLY_DECKING_3 = 38, /**< "3 in decking". Decking of Douglas Fir, 3 in. */
    FRAME_ASSEMBLY_WOOD_FURRING = 39, /**< "wood furring". Suspended wood furring. */
    FRAME_ASSEMBLY_STEEL_CHANNELS = 40, /**< "steel channels". Suspended steel channels. */
    FRAME_ASSEMBLY_PLASTER_CEILING = 41, /**< "hung plaster ceiling". Suspended metal lath and gypsum plaster. */
    FRAME_ASSEMBLY_WINDOWS = 42 /**< "windows". Glass, frame and sash, on the area of the window. */
};

/** A layer. As a tuple or array: material, thickness_in, count. */
typedef struct frame_assembly_layer {
    uint32_t struct_size, struct_id;
    frame_assembly_material material; /**< required. What it is. */
    int32_t spare;
    double thickness_in; /**< optional : >0..24. Its thickness, for what weighs by thickness. */
    int32_t count;       /**< 1 : 1..20. How many of them. */
    int32_t spare2;
} frame_assembly_layer;
/** Sets up a layer: every field not given. */
FRAME_ELEMENT(assembly_layer);

/** Cautions that go with the weight of an assembly. */
typedef int32_t frame_assembly_caution;
enum frame_assembly_caution_values {
    FRAME_ASSEMBLY_CAUTION_USUAL = 0, /**< "usual". Weights of usual materials: weigh or look up what is really used, and what was laid over it since. */
    FRAME_ASSEMBLY_CAUTION_MEMORY = 1, /**< "from_memory". Rests on weights recalled, no text seen. */
    FRAME_ASSEMBLY_CAUTION_RELIEF = 2 /**< "relief". Where dead load helps, against uplift, take what is surely there and not this. */
};
/** What the weight of an assembly leaves unchecked. */
typedef int32_t frame_assembly_not_checked;
enum frame_assembly_not_checked_values {
    FRAME_ASSEMBLY_UNCHECKED_OTHERS = 0 /**< "others". Insulation, ducts, pipes, lamps, stored goods and whatever was not listed. */
};

/** An assembly: its layers, and its framing where they are single layers. */
typedef struct frame_assembly_weight_in {
    uint32_t struct_size, struct_id;
    const frame_assembly_layer *layers; /**< required. Its layers: one whole assembly, or single layers. */
    size_t layer_count;      /**< count : 1..50. */
    frame_size size;         /**< optional. Nominal size of the framing. */
    frame_species species;   /**< optional. Species of the framing; needed with size. */
    frame_service service;   /**< dry. Moisture of the framing in service. */
    int32_t plies;           /**< 1 : 1..8. Members side by side as one. */
    double spacing_in;       /**< optional : >0..480. Centre to centre of the framing; needed with size. */
    double specific_gravity; /**< optional : >0..1.5. Specific gravity of the framing, instead of species. */
    double slope;            /**< 0 : 0..4. Slope: the weight lies along it, and more of it on a square foot of plan. */
} frame_assembly_weight_in;

/** What an assembly weighs. */
typedef struct frame_assembly_weight_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : assembly_caution. Cautions. */
    uint64_t not_checked; /**< bits : assembly_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the weights. */
    int32_t spare;
    double weight_psf;  /**< Weight on a square foot of the assembly itself. */
    double plan_psf;    /**< Weight on a square foot of plan. */
    double framing_psf; /**< Part of the framing; 0 where it is in a whole assembly. */
} frame_assembly_weight_out;

/** A layer and its weight. */
typedef struct frame_assembly_weight_layer {
    uint32_t struct_size, struct_id;
    frame_assembly_material material; /**< What it is. */
    int32_t count;       /**< How many of them. */
    double weight_psf;   /**< Weight of all of them. */
    const char *source;  /**< Where the weight is from. */
} frame_assembly_weight_layer;

/** Adds up what usual roofs, floors and walls weigh, layer by layer, with the framing by its specific gravity (NDS Supplement 3.1.3) and
 * its spacing. FRAME_CONFLICT where framing is given with a whole assembly, which has its own; FRAME_REQUIRED for a layer that weighs by
 * thickness and has none. */
FRAME_ANSWER(assembly_weight);
/** The layers, as given. */
FRAME_ANSWER_LIST(assembly_weight, layer, layers);

/* ---- rafter_thrust: what a pair of rafters pushes and pulls ------------------------------------------------------ */

/** Cautions that go with the thrust of rafters. */
typedef int32_t frame_thrust_caution;
enum frame_thrust_caution_values {
    FRAME_THRUST_CAUTION_TIES_FIRST = 0, /**< "ties_first". Ties and bracing come before the load; every tie needs its nails at both ends and at every lap. */
    FRAME_THRUST_CAUTION_LOW_SLOPE = 1,  /**< "low_slope". Under 3 in 12 the ridge must be a beam (R802): such thrust is not for ties. */
    FRAME_THRUST_CAUTION_RAISED = 2,     /**< "raised". A tie above the lower third of the roof bends the rafters hard: the code's own tables end there. */
    FRAME_THRUST_CAUTION_SNOW_BASIS = 3, /**< "snow_basis". Snow is taken as a 50-year load on plan: a strength-level one belongs to load_edition "ASCE 7-22". */
    FRAME_THRUST_CAUTION_RAFTER = 4      /**< "check_rafter". Above the plate the tie's force bends the rafter: check it for moment_lb_in together with axial_lb. */
};
/** What the thrust of rafters leaves unchecked. */
typedef int32_t frame_thrust_not_checked;
enum frame_thrust_not_checked_values {
    FRAME_THRUST_UNCHECKED_UNBALANCED = 0, /**< "unbalanced". Load on one side only or more on one side, drifted and sliding snow. */
    FRAME_THRUST_UNCHECKED_WIND = 1,       /**< "wind". Wind and uplift. */
    FRAME_THRUST_UNCHECKED_JOINTS = 2,     /**< "joints". The joints of ties, heels and ridge, and splices of ties. */
    FRAME_THRUST_UNCHECKED_MEMBERS = 3,    /**< "members". Whether the rafters and the ties hold. */
    FRAME_THRUST_UNCHECKED_HIPS = 4        /**< "hips". Hip ends, whose jacks thrust too. */
};

/** A pair of rafters alike on both sides of a ridge board, with its tie. */
typedef struct frame_rafter_thrust_in {
    uint32_t struct_size, struct_id;
    double run_in;        /**< required : >0..600. Level distance from plate to ridge. */
    double slope;         /**< required : >0..4. Slope, rise over run. */
    double spacing_in;    /**< required : >0..96. Centre to centre of the rafters. */
    double tie_spacing_in; /**< optional : >0..480. Centre to centre of the ties, where not every rafter has one. */
    double tie_height_in; /**< 0 : 0..1200. Height of the tie above the plate. */
    double dead_psf;      /**< required : 0..1000. Dead load, on the slope. */
    double roof_live_psf; /**< 0 : 0..1000. Roof live load, on plan. */
    double snow_psf;      /**< 0 : 0..1000. Snow, on plan. */
    double overhang_in;   /**< 0 : 0..120. Level length of the overhang: its load goes down at the plate and relieves the thrust, which is left out. */
    frame_design_method method;      /**< ASD. How safety is brought in. */
    frame_load_edition load_edition; /**< 7-16. The standard of the combinations; with ASCE 7-22 snow is given at strength level. */
} frame_rafter_thrust_in;

/** What it pushes and pulls, under the combination with the largest total. */
typedef struct frame_rafter_thrust_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : thrust_caution. Cautions. */
    uint64_t not_checked; /**< bits : thrust_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the values used. */
    frame_load_combination combination; /**< The combination with the largest total over C_D, or over lambda: it governs wood and nails. */
    double load_plf;      /**< Its load on a foot of plan of one rafter. */
    double load_duration_factor; /**< Its C_D; 1 in LRFD. */
    double time_effect_factor;   /**< Its lambda; 1 in ASD. */
    double thrust_plf;    /**< Thrust on a foot of wall were the tie at the plate, H. */
    double thrust_lb;     /**< The same of one rafter. */
    double tie_lb;        /**< Tension in one tie, at its height and spacing. */
    double ridge_lb;      /**< Level push of the two rafters against each other at the ridge. */
    double reaction_lb;   /**< Load on the plate of one rafter, overhang included. */
    double moment_lb_in;  /**< Largest bending moment in the rafter, its tie's pull included. */
    double moment_at_in;  /**< Where it is, level from the plate. */
    double axial_lb;      /**< Push along the rafter, largest. */
} frame_rafter_thrust_out;

/** Finds the thrust of a pair of rafters under even load on both sides: H = w L^2 / (8 r) of a foot, w on plan, L the whole span, r the rise; and the tension of a
 * tie at the plate, or above it, where it is greater by 1 / (1 - H_C / H_R) and bends the rafter. FRAME_REFUSED for a tie in the upper third
 * of the roof: that is a collar tie, which holds no thrust. */
FRAME_CALCULATION(rafter_thrust);

FRAME_END

#endif
