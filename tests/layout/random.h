/* Numbers that look random and are the same on every machine; and how many rounds a test makes: few, unless FRAME_LONG
 * is set in the environment, as the long tests do. */
#ifndef FRAME_TESTS_LAYOUT_RANDOM_H
#define FRAME_TESTS_LAYOUT_RANDOM_H

#include <stdint.h>
#include <stdlib.h>

static uint64_t random_state = 88172645463325252u;

static inline double random_unit(void) {
    random_state ^= random_state << 13;
    random_state ^= random_state >> 7;
    random_state ^= random_state << 17;
    return (double)(random_state >> 11) / 9007199254740992.0;
}

static inline double random_between(double low, double high) {
    return low + (high - low) * random_unit();
}

/* A whole number from low to high, both included. */
static inline int random_whole(int low, int high) {
    return low + (int)(random_unit() * (high - low + 1));
}

static inline int random_rounds(int few, int many) {
    return getenv("FRAME_LONG") ? many : few;
}

#endif
