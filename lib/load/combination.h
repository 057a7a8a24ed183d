/* Combining dead, live, roof live and snow loads for allowable stress design. The one place where it is done. Inline,
 * so that a member check without a working pays a few additions for it. */
#ifndef FRAME_LIB_LOAD_COMBINATION_H
#define FRAME_LIB_LOAD_COMBINATION_H

#include <frame/load.h>

#include "table_load_durations.h"
#include "working/record.h"

#include "working/plain_math.h"

enum { FRAME_COMBINATIONS = 6 };

/* Loads in one unit, none negative, with how long the live load lasts. */
typedef struct frame_loads {
    double dead, live, roof_live, snow;
    frame_load_duration live_duration;
    int anyway; /* of which loads combinations are formed whether they are there or not: for many rows side by side */
} frame_loads;

enum { FRAME_ANYWAY_LIVE = 1, FRAME_ANYWAY_ROOF_LIVE = 2, FRAME_ANYWAY_SNOW = 4 };

/* Combination i of frame_load_combination stands at i - 1; one that lacks a load has a total of zero. */
typedef struct frame_combinations {
    double total[FRAME_COMBINATIONS];
    double factor[FRAME_COMBINATIONS]; /* C_D: that of the shortest load, NDS 2.3.2 */
    double greatest;                   /* the largest total */
    double transient;                  /* the largest load besides the dead load */
    /* Of the largest total over C_D: it governs wood under stress. */
    frame_load_combination governs;
    double governing_total, governing_factor, governing_equivalent;
} frame_combinations;

#define FRAME_ASCE_COMBINATION "ASCE 7-16 2.4.1 "
#define FRAME_DURATION_SOURCE "NDS 2018 table 2.3.2"

/* C_D, by the word. */
FRAME_ALWAYS_INLINE double frame_duration_factor(frame_load_duration duration) {
    return frame_load_durations_factor(duration - 1);
}

/* The word that has this C_D. */
FRAME_ALWAYS_INLINE frame_load_duration frame_duration_of(double factor) {
    for (frame_load_duration d = FRAME_DURATION_PERMANENT; d < FRAME_DURATION_IMPACT; d++)
        if (frame_duration_factor(d) == factor) return d;
    return FRAME_DURATION_IMPACT;
}

FRAME_ALWAYS_INLINE void frame_combination_lead(frame_combinations *c, frame_load_combination which, double total,
                                                double factor, double equivalent) {
    c->governs = which;
    c->governing_total = total;
    c->governing_factor = factor;
    c->governing_equivalent = equivalent;
}

FRAME_ALWAYS_INLINE void frame_combination_put(frame_combinations *c, frame_load_combination which, double total,
                                               double factor, double equivalent) {
    c->total[which - 1] = total;
    c->factor[which - 1] = factor;
    c->greatest = fmax(c->greatest, total);
    if (equivalent > c->governing_equivalent) frame_combination_lead(c, which, total, factor, equivalent);
}

/* Whether to pass by what needs a load that is not there. Formed all the same, it comes to no more than the combination
 * without that load, at no shorter duration, and never leads. */
FRAME_ALWAYS_INLINE int frame_combination_lacks(const frame_loads *loads, int kind, double load) {
    return !(loads->anyway & kind) && !(load > 0);
}

/* How the factors of duration are known. */
FRAME_ALWAYS_INLINE frame_known frame_duration_known(void) {
    return frame_load_durations_table[0].known;
}

/* Combination 1 of the standard. */
FRAME_ALWAYS_INLINE void frame_combine_dead(double w_D, frame_combinations *c, frame_working *record) {
    FRAME_STEP(record, w_1, w_D, "plf", "D", FRAME_ASCE_COMBINATION "(1)");
    FRAME_TABLE(record, C_D_1, frame_duration_factor(FRAME_DURATION_PERMANENT), "", "load duration factor of dead load",
                FRAME_DURATION_SOURCE);
    FRAME_STEP(record, q_1, w_1 * (1 / C_D_1), "plf", "as a load of ten years", "NDS 2018 2.3.2");
    c->total[0] = c->greatest = w_1;
    c->factor[0] = C_D_1;
    frame_combination_lead(c, FRAME_COMBINATION_D, w_1, C_D_1, q_1);
}

/* Combination 2 of the standard. */
FRAME_ALWAYS_INLINE void frame_combine_live(const frame_loads *loads, frame_combinations *c, frame_working *record) {
    const double w_D = loads->dead, w_L = loads->live;
    if (frame_combination_lacks(loads, FRAME_ANYWAY_LIVE, w_L)) return;
    FRAME_STEP(record, w_2, w_D + w_L, "plf", "D + L", FRAME_ASCE_COMBINATION "(2)");
    FRAME_TABLE(record, C_D_2, frame_duration_factor(loads->live_duration), "", "load duration factor of live load",
                FRAME_DURATION_SOURCE);
    FRAME_STEP(record, q_2, w_2 * (1 / C_D_2), "plf", "as a load of ten years", "NDS 2018 2.3.2");
    frame_combination_put(c, FRAME_COMBINATION_D_L, w_2, C_D_2, q_2);
}

/* Combination 3 of the standard: roof live load or snow. */
FRAME_ALWAYS_INLINE void frame_combine_roof(const frame_loads *loads, frame_combinations *c, frame_working *record) {
    const double w_D = loads->dead, w_Lr = loads->roof_live, w_S = loads->snow;
    if (!frame_combination_lacks(loads, FRAME_ANYWAY_ROOF_LIVE, w_Lr)) {
        FRAME_STEP(record, w_3, w_D + w_Lr, "plf", "D + Lr", FRAME_ASCE_COMBINATION "(3)");
        FRAME_TABLE(record, C_D_3, frame_duration_factor(FRAME_DURATION_SEVEN_DAYS), "",
                    "load duration factor of roof live load", FRAME_DURATION_SOURCE);
        FRAME_STEP(record, q_3, w_3 * (1 / C_D_3), "plf", "as a load of ten years", "NDS 2018 2.3.2");
        frame_combination_put(c, FRAME_COMBINATION_D_LR, w_3, C_D_3, q_3);
    }
    if (!frame_combination_lacks(loads, FRAME_ANYWAY_SNOW, w_S)) {
        FRAME_STEP(record, w_4, w_D + w_S, "plf", "D + S", FRAME_ASCE_COMBINATION "(3)");
        FRAME_TABLE(record, C_D_4, frame_duration_factor(FRAME_DURATION_TWO_MONTHS), "", "load duration factor of snow",
                    FRAME_DURATION_SOURCE);
        FRAME_STEP(record, q_4, w_4 * (1 / C_D_4), "plf", "as a load of ten years", "NDS 2018 2.3.2");
        frame_combination_put(c, FRAME_COMBINATION_D_S, w_4, C_D_4, q_4);
    }
}

/* Combination 4 of the standard: two loads besides the dead load, at three quarters; the shorter of the two counts. */
FRAME_ALWAYS_INLINE void frame_combine_two(const frame_loads *loads, frame_combinations *c, frame_working *record) {
    const double w_D = loads->dead, w_L = loads->live, w_Lr = loads->roof_live, w_S = loads->snow;
    const double C_D_2 = frame_duration_factor(loads->live_duration);
    const double C_D_3 = frame_duration_factor(FRAME_DURATION_SEVEN_DAYS);
    const double C_D_4 = frame_duration_factor(FRAME_DURATION_TWO_MONTHS);
    if (frame_combination_lacks(loads, FRAME_ANYWAY_LIVE, w_L)) return;
    if (!frame_combination_lacks(loads, FRAME_ANYWAY_ROOF_LIVE, w_Lr)) {
        FRAME_STEP(record, w_5, w_D + 0.75 * w_L + 0.75 * w_Lr, "plf", "D + 0.75L + 0.75Lr",
                   FRAME_ASCE_COMBINATION "(4)");
        FRAME_STEP(record, C_D_5, fmax(C_D_2, C_D_3), "", "load duration factor of the shorter load", "NDS 2018 2.3.2");
        FRAME_STEP(record, q_5, w_5 * (1 / C_D_5), "plf", "as a load of ten years", "NDS 2018 2.3.2");
        frame_combination_put(c, FRAME_COMBINATION_D_L_LR, w_5, C_D_5, q_5);
    }
    if (!frame_combination_lacks(loads, FRAME_ANYWAY_SNOW, w_S)) {
        FRAME_STEP(record, w_6, w_D + 0.75 * w_L + 0.75 * w_S, "plf", "D + 0.75L + 0.75S",
                   FRAME_ASCE_COMBINATION "(4)");
        FRAME_STEP(record, C_D_6, fmax(C_D_2, C_D_4), "", "load duration factor of the shorter load", "NDS 2018 2.3.2");
        FRAME_STEP(record, q_6, w_6 * (1 / C_D_6), "plf", "as a load of ten years", "NDS 2018 2.3.2");
        frame_combination_put(c, FRAME_COMBINATION_D_L_S, w_6, C_D_6, q_6);
    }
}

/* Forms the combinations. The loads are recorded by the caller as w_D, w_L, w_Lr and w_S. */
FRAME_ALWAYS_INLINE void frame_combine(const frame_loads *loads, frame_combinations *c, frame_working *record) {
    for (int i = 1; i < FRAME_COMBINATIONS; i++) c->total[i] = 0;
    FRAME_HEADING(record, "Load combinations for allowable stress design");
    frame_combine_dead(loads->dead, c, record);
    frame_combine_live(loads, c, record);
    frame_combine_roof(loads, c, record);
    frame_combine_two(loads, c, record);
    c->transient = c->greatest - loads->dead;
}

/* The same for strength design: total i stands for the combination frame_combination_word gives for i + 1, factor is
 * lambda. Loads at service level; recorded as for frame_combine. */
void frame_combine_strength(const frame_loads *loads, frame_load_edition edition, frame_combinations *c,
                            frame_working *record);
/* The word of a combination by its place from 1. */
frame_load_combination frame_combination_word(int slot, int lrfd, frame_load_edition edition);

#endif
