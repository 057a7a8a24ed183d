/* Which combinations of loads apply, and with which factors. */
#include "load/cases.h"

#include "load/combination.h"
#include "table_load_cases.h"

#define HAS(kinds, kind) (((kinds) >> (kind)) & 1u)

/* A combination applies where what makes it more than an earlier one is there. */
static int applies(unsigned kinds, frame_load_combination which) {
    const int live = HAS(kinds, FRAME_LOAD_LIVE), roof = HAS(kinds, FRAME_LOAD_ROOF_LIVE),
              snow = HAS(kinds, FRAME_LOAD_SNOW), wind = HAS(kinds, FRAME_LOAD_WIND);
    switch (which) {
        case FRAME_COMBINATION_D:
            return HAS(kinds, FRAME_LOAD_DEAD) || !(live || roof || snow || wind);
        case FRAME_COMBINATION_D_L:
            return live;
        case FRAME_COMBINATION_D_LR:
            return roof;
        case FRAME_COMBINATION_D_S:
            return snow;
        case FRAME_COMBINATION_D_L_LR:
            return live && roof;
        case FRAME_COMBINATION_D_L_S:
            return live && snow;
        case FRAME_COMBINATION_D_W:
            return wind;
        case FRAME_COMBINATION_D_L_W_LR:
            return wind && (live || roof);
        case FRAME_COMBINATION_D_L_W_S:
            return wind && snow;
        default:
            return wind && HAS(kinds, FRAME_LOAD_DEAD);
    }
}

/* C_D of the shortest of the loads that are there and in the combination. */
static double duration_factor(unsigned kinds, frame_load_duration live_duration, const double *factor) {
    const frame_load_duration durations[FRAME_LOAD_KINDS] = {
        FRAME_DURATION_PERMANENT,  FRAME_DURATION_PERMANENT,  live_duration,
        FRAME_DURATION_SEVEN_DAYS, FRAME_DURATION_TWO_MONTHS, FRAME_DURATION_TEN_MINUTES};
    double most = frame_duration_factor(FRAME_DURATION_PERMANENT);
    for (int kind = FRAME_LOAD_LIVE; kind < FRAME_LOAD_KINDS; kind++)
        if (factor[kind] != 0 && HAS(kinds, kind)) most = fmax(most, frame_duration_factor(durations[kind]));
    return most;
}

int frame_load_cases_find(unsigned kinds, frame_load_duration live_duration, frame_load_case cases[FRAME_LOAD_CASES]) {
    int count = 0;
    for (int i = 0; i < FRAME_LOAD_CASES; i++) {
        const frame_load_cases_row *row = &frame_load_cases_table[i];
        if (!applies(kinds, row->id)) continue;
        frame_load_case *found = &cases[count++];
        *found = (frame_load_case){.which = row->id,
                                   .factor = {1, row->dead, row->live, row->roof_live, row->snow, row->wind},
                                   .source = row->source};
        found->duration_factor = duration_factor(kinds, live_duration, found->factor);
    }
    return count;
}

frame_known frame_load_cases_known(void) {
    frame_known worst = frame_duration_known();
    for (int i = 0; i < FRAME_LOAD_CASES; i++)
        if (frame_load_cases_table[i].known > worst) worst = frame_load_cases_table[i].known;
    return worst;
}
