/* Combinations of loads as lists of factors, wind included: for whatever carries loads that are kept apart by kind. */
#ifndef FRAME_LIB_LOAD_CASES_H
#define FRAME_LIB_LOAD_CASES_H

#include <frame/load.h>

/* The most that apply at once; kinds by the number of their word, place 0 is free. */
enum { FRAME_LOAD_CASES = 12, FRAME_LOAD_KINDS = 6 };

typedef struct frame_load_case {
    frame_load_combination which;
    int32_t spare;
    double factor[FRAME_LOAD_KINDS]; /* by frame_load_kind; factor[0] is 1, for what is always there */
    double duration_factor;          /* C_D: that of the shortest load in it, NDS 2.3.2; 1 in LRFD */
    double time_effect;              /* lambda, NDS table N3; 1 in ASD */
    const char *source;
} frame_load_case;

/* What combinations are formed for. */
typedef struct frame_load_rules {
    frame_design_method method;
    frame_load_edition edition;
    frame_load_duration live_duration;
} frame_load_rules;

/* Finds the combinations that apply where the kinds of a set (a bit by the number of its word) are there; always at
 * least one. Gives their count. */
int frame_load_cases_by(unsigned kinds, const frame_load_rules *rules, frame_load_case cases[FRAME_LOAD_CASES]);
/* The same for allowable stress design by ASCE 7-16. */
int frame_load_cases_find(unsigned kinds, frame_load_duration live_duration, frame_load_case cases[FRAME_LOAD_CASES]);
/* The worst source of their factors. */
frame_known frame_load_cases_known_by(const frame_load_rules *rules);
frame_known frame_load_cases_known(void);

#endif
