/* Whole powers, the larger and the smaller of two, for formulas that are recorded. The text of a step still says
 * pow(d, 3) or fmax(a, b), as the reader expects, but the code multiplies or compares: many times faster than libm's
 * calls, and the same on every machine. Only for numbers that are none of NaN. Include it last. */
#ifndef FRAME_LIB_WORKING_PLAIN_MATH_H
#define FRAME_LIB_WORKING_PLAIN_MATH_H

#include <math.h>

#if defined(__GNUC__)
#define FRAME_ALWAYS_INLINE static inline __attribute__((always_inline))
#else
#define FRAME_ALWAYS_INLINE static inline
#endif

FRAME_ALWAYS_INLINE double frame_power(double x, double n) {
    if (n == 2) return x * x;
    if (n == 3) return x * x * x;
    if (n == 4) return (x * x) * (x * x);
    return (pow)(x, n);
}

FRAME_ALWAYS_INLINE double frame_larger(double a, double b) {
    return a > b ? a : b;
}
FRAME_ALWAYS_INLINE double frame_smaller(double a, double b) {
    return a < b ? a : b;
}

#define pow(x, n) frame_power((x), (n))
#define fmax(a, b) frame_larger((a), (b))
#define fmin(a, b) frame_smaller((a), (b))

#endif
