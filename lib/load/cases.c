/* Which combinations of loads apply, and with which factors. */
#include "load/cases.h"

#include "load/combination.h"
#include "table_load_cases.h"

#define HAS(kinds, kind) (((kinds) >> (kind)) & 1u)

static int strength_applies(unsigned kinds, frame_load_combination which) {
    const int live = HAS(kinds, FRAME_LOAD_LIVE), roof = HAS(kinds, FRAME_LOAD_ROOF_LIVE),
              snow = HAS(kinds, FRAME_LOAD_SNOW), wind = HAS(kinds, FRAME_LOAD_WIND);
    switch (which) {
        case FRAME_COMBINATION_LRFD_D:
            return HAS(kinds, FRAME_LOAD_DEAD) || !(live || roof || snow || wind);
        case FRAME_COMBINATION_LRFD_L:
            return live && !roof && !snow;
        case FRAME_COMBINATION_LRFD_L_LR:
            return live && roof;
        case FRAME_COMBINATION_LRFD_L_S:
        case FRAME_COMBINATION_LRFD_L_3S:
            return live && snow;
        case FRAME_COMBINATION_LRFD_LR:
            return roof;
        case FRAME_COMBINATION_LRFD_S:
        case FRAME_COMBINATION_LRFD_1S:
            return snow;
        case FRAME_COMBINATION_LRFD_LR_W:
            return roof && wind;
        case FRAME_COMBINATION_LRFD_S_W:
        case FRAME_COMBINATION_LRFD_1S_W:
        case FRAME_COMBINATION_LRFD_W_S:
        case FRAME_COMBINATION_LRFD_W_3S:
            return snow && wind;
        case FRAME_COMBINATION_LRFD_W_LR:
            return wind && (roof || !snow);
        default:
            return wind && HAS(kinds, FRAME_LOAD_DEAD);
    }
}

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
        case FRAME_COMBINATION_D_7S:
            return snow;
        case FRAME_COMBINATION_D_L_LR:
            return live && roof;
        case FRAME_COMBINATION_D_L_S:
        case FRAME_COMBINATION_D_L_7S:
            return live && snow;
        case FRAME_COMBINATION_D_W:
            return wind;
        case FRAME_COMBINATION_D_L_W_LR:
            return wind && (live || roof);
        case FRAME_COMBINATION_D_L_W_S:
        case FRAME_COMBINATION_D_L_W_7S:
            return wind && snow;
        case FRAME_COMBINATION_D_W_UPLIFT:
            return wind && HAS(kinds, FRAME_LOAD_DEAD);
        default:
            return strength_applies(kinds, which);
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

/* NDS 2018 table N3 (from memory): where live load leads, by what it is. */
static double time_effect(const frame_load_cases_row *row, frame_load_duration live_duration) {
    if (row->lambda > 0) return row->lambda;
    if (live_duration == FRAME_DURATION_PERMANENT) return 0.7;
    return live_duration == FRAME_DURATION_IMPACT ? 1.25 : 0.8;
}

static int is_in(const frame_load_cases_row *row, const frame_load_rules *rules) {
    if ((int)row->method != rules->method) return 0;
    return rules->edition == FRAME_LOADS_ASCE_7_22 ? row->in_22 != 0 : row->in_16 != 0;
}

int frame_load_cases_by(unsigned kinds, const frame_load_rules *rules, frame_load_case cases[FRAME_LOAD_CASES]) {
    int count = 0;
    for (size_t i = 0; i < frame_load_cases_rows && count < FRAME_LOAD_CASES; i++) {
        const frame_load_cases_row *row = &frame_load_cases_table[i];
        if (!is_in(row, rules) || !applies(kinds, row->id)) continue;
        frame_load_case *found = &cases[count++];
        *found = (frame_load_case){.which = row->id,
                                   .factor = {1, row->dead, row->live, row->roof_live, row->snow, row->wind},
                                   .duration_factor = 1,
                                   .time_effect = 1,
                                   .source = row->source};
        if (rules->method == FRAME_METHOD_LRFD)
            found->time_effect = time_effect(row, rules->live_duration);
        else
            found->duration_factor = duration_factor(kinds, rules->live_duration, found->factor);
    }
    return count;
}

frame_known frame_load_cases_known_by(const frame_load_rules *rules) {
    frame_known worst = rules->method == FRAME_METHOD_LRFD ? FRAME_KNOWN_MEMORY : frame_duration_known();
    for (size_t i = 0; i < frame_load_cases_rows; i++) {
        const frame_load_cases_row *row = &frame_load_cases_table[i];
        if (is_in(row, rules) && row->known > worst) worst = row->known;
    }
    return worst;
}

int frame_load_cases_find(unsigned kinds, frame_load_duration live_duration, frame_load_case cases[FRAME_LOAD_CASES]) {
    const frame_load_rules rules = {FRAME_METHOD_ASD, FRAME_LOADS_ASCE_7_16, live_duration};
    return frame_load_cases_by(kinds, &rules, cases);
}

frame_known frame_load_cases_known(void) {
    const frame_load_rules rules = {FRAME_METHOD_ASD, FRAME_LOADS_ASCE_7_16, FRAME_DURATION_TEN_YEARS};
    return frame_load_cases_known_by(&rules);
}
