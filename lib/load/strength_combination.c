/* Combining dead, live, roof live and snow loads for strength design (LRFD). */
#include "load/combination.h"

#define STRENGTH "ASCE 7 2.3.1 "

/* NDS 2018 table N3 (from memory). */
#define LAMBDA_DEAD 0.6
#define LAMBDA_ROOF 0.8

static double live_effect(frame_load_duration live_duration) {
    if (live_duration == FRAME_DURATION_PERMANENT) return 0.7;
    return live_duration == FRAME_DURATION_IMPACT ? 1.25 : 0.8;
}

static void put(frame_combinations *c, int slot, double total, double lambda) {
    frame_combination_put(c, slot, total, lambda, total / lambda);
}

/* Live load leads; what lies on the roof follows. */
static void live_leads(const frame_loads *loads, double k_follow, frame_combinations *c, frame_working *record) {
    const double w_D = loads->dead, w_L = loads->live, w_Lr = loads->roof_live, w_S = loads->snow;
    if (!(w_L > 0)) return;
    FRAME_TABLE(record, lambda_L, live_effect(loads->live_duration), "", "time effect factor where live load leads",
                "NDS 2018 table N3 (from memory)");
    if (!(w_Lr > 0) && !(w_S > 0)) {
        FRAME_STEP(record, u_2, 1.2 * w_D + 1.6 * w_L, "plf", "1.2D + 1.6L", STRENGTH "(2)");
        put(c, 2, u_2, lambda_L);
    }
    if (w_Lr > 0) {
        FRAME_STEP(record, u_5, 1.2 * w_D + 1.6 * w_L + 0.5 * w_Lr, "plf", "1.2D + 1.6L + 0.5Lr", STRENGTH "(2)");
        put(c, 5, u_5, lambda_L);
    }
    if (w_S > 0) {
        FRAME_TABLE(record, k_S_2, k_follow, "", "factor of snow that follows", STRENGTH "(2)");
        FRAME_STEP(record, u_6, 1.2 * w_D + 1.6 * w_L + k_S_2 * w_S, "plf", "1.2D + 1.6L and snow", STRENGTH "(2)");
        put(c, 6, u_6, lambda_L);
    }
}

static void roof_leads(const frame_loads *loads, double k_lead, frame_combinations *c, frame_working *record) {
    const double w_D = loads->dead, w_L = loads->live, w_Lr = loads->roof_live, w_S = loads->snow;
    if (w_Lr > 0) {
        FRAME_STEP(record, u_3, 1.2 * w_D + 1.6 * w_Lr + w_L, "plf", "1.2D + 1.6Lr + L", STRENGTH "(3)");
        put(c, 3, u_3, LAMBDA_ROOF);
    }
    if (w_S > 0) {
        FRAME_TABLE(record, k_S_1, k_lead, "", "factor of snow that leads", STRENGTH "(3)");
        FRAME_STEP(record, u_4, 1.2 * w_D + k_S_1 * w_S + w_L, "plf", "1.2D, snow and L", STRENGTH "(3)");
        put(c, 4, u_4, LAMBDA_ROOF);
    }
}

void frame_combine_strength(const frame_loads *loads, frame_load_edition edition, frame_combinations *c,
                            frame_working *record) {
    /* Loads are at service level: of ASCE 7-22 the snow stands here as 0.7 of what its maps have. */
    const int strength_level = edition == FRAME_LOADS_ASCE_7_22;
    const double w_D = loads->dead;
    for (int i = 0; i < FRAME_COMBINATIONS; i++) c->total[i] = 0;
    c->greatest = c->governing_equivalent = 0;
    FRAME_HEADING(record, "Load combinations for strength design");
    FRAME_STEP(record, u_1, 1.4 * w_D, "plf", "1.4D", STRENGTH "(1)");
    c->total[0] = c->greatest = u_1;
    c->factor[0] = LAMBDA_DEAD;
    frame_combination_lead(c, 1, u_1, LAMBDA_DEAD, u_1 / LAMBDA_DEAD);
    live_leads(loads, strength_level ? 0.3 / 0.7 : 0.5, c, record);
    roof_leads(loads, strength_level ? 1 / 0.7 : 1.6, c, record);
    c->transient = c->greatest - loads->dead;
}

frame_load_combination frame_combination_word(int slot, int lrfd, frame_load_edition edition) {
    static const frame_load_combination strength[] = {0,
                                                      FRAME_COMBINATION_LRFD_D,
                                                      FRAME_COMBINATION_LRFD_L,
                                                      FRAME_COMBINATION_LRFD_LR,
                                                      FRAME_COMBINATION_LRFD_S,
                                                      FRAME_COMBINATION_LRFD_L_LR,
                                                      FRAME_COMBINATION_LRFD_L_S};
    const int later = edition == FRAME_LOADS_ASCE_7_22;
    if (!lrfd) return !later ? slot : slot == 4 ? FRAME_COMBINATION_D_7S : slot == 6 ? FRAME_COMBINATION_D_L_7S : slot;
    if (later && slot == 4) return FRAME_COMBINATION_LRFD_1S;
    return later && slot == 6 ? FRAME_COMBINATION_LRFD_L_3S : strength[slot];
}
