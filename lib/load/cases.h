/* Combinations of loads as lists of factors, wind included: for whatever carries loads that are kept apart by kind. */
#ifndef FRAME_LIB_LOAD_CASES_H
#define FRAME_LIB_LOAD_CASES_H

#include <frame/load.h>

enum { FRAME_LOAD_CASES = 10, FRAME_LOAD_KINDS = 6 }; /* kinds by the number of their word; place 0 is free */

typedef struct frame_load_case {
    frame_load_combination which;
    int32_t spare;
    double factor[FRAME_LOAD_KINDS]; /* by frame_load_kind; factor[0] is 1, for what is always there */
    double duration_factor;          /* C_D: that of the shortest load in it, NDS 2.3.2 */
    const char *source;
} frame_load_case;

/* Finds the combinations that apply where the kinds of a set (a bit by the number of its word) are there; always at
 * least one. Gives their count. */
int frame_load_cases_find(unsigned kinds, frame_load_duration live_duration, frame_load_case cases[FRAME_LOAD_CASES]);
/* The worst source of their factors. */
frame_known frame_load_cases_known(void);

#endif
