/** @file load.h
 * Loads: their kinds, how long they last, how they combine.
 */
#ifndef FRAME_LOAD_H
#define FRAME_LOAD_H

#include <frame/base.h>

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

/** A combination of loads for allowable stress design, ASCE 7-16 2.4.1. */
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
    FRAME_COMBINATION_D_W_UPLIFT = 10 /**< "0.6D + 0.6W". Wind against six tenths of the dead load: uplift and overturning. */
};

/** What combinations of loads leave unchecked. */
typedef int32_t frame_combinations_not_checked;
enum frame_combinations_not_checked_values {
    FRAME_COMBINATIONS_UNCHECKED_WIND = 0,  /**< "wind". Wind, uplift, earthquake, rain, earth and water: their combinations are not formed. */
    FRAME_COMBINATIONS_UNCHECKED_SNOW = 1,  /**< "snow_forms". Unbalanced, drifted and sliding snow: the snow given is taken as it is. */
    FRAME_COMBINATIONS_UNCHECKED_LIVE = 2   /**< "live_load_patterns". Live load on some spans only, concentrated live loads and the reduction for large areas. */
};
/** Cautions that go with combinations of loads. */
typedef int32_t frame_combinations_caution;
enum frame_combinations_caution_values {
    FRAME_COMBINATIONS_CAUTION_BASIS = 0 /**< "snow_basis". Snow is taken as a 50-year load (ASCE 7-16 and the code tables); a strength-level snow load of ASCE 7-22 is 0.7 of itself here. */
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
} frame_load_combinations_in;

/** What the combinations come to. */
typedef struct frame_load_combinations_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : combinations_caution. Cautions. */
    uint64_t not_checked; /**< bits : combinations_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the factors. */
    frame_load_combination governs; /**< The combination that governs wood under stress: the largest total over C_D. */
    double governing_plf;        /**< Its total. */
    double load_duration_factor; /**< Its load duration factor, C_D. */
    double greatest_plf;         /**< The largest total of all, as for bearing and for what carries the member. */
    double transient_plf;        /**< The largest load without the dead load, as for deflection under live load. */
} frame_load_combinations_out;

/** One combination. */
typedef struct frame_load_combinations_row {
    uint32_t struct_size, struct_id;
    frame_load_combination combination; /**< Which. */
    int32_t spare;
    double total_plf;            /**< Its total. */
    double load_duration_factor; /**< C_D: that of the shortest load in it. */
    double equivalent_plf;       /**< Total over C_D: what governs wood under stress. */
} frame_load_combinations_row;

/** Combines dead, live, roof live and snow loads for allowable stress design (ASCE 7-16 2.4.1) and gives each combination
 * the load duration factor of its shortest load (NDS 2018 table 2.3.2), dead load alone included. Only combinations whose
 * loads are not zero are listed. */
FRAME_ANSWER(load_combinations);
/** The combinations, in the order of the standard. */
FRAME_ANSWER_LIST(load_combinations, row, rows);

FRAME_END

#endif
