/* Roots and extremes of the polynomials of a beam: up to the fifth degree, on a stretch from 0 on. */
#ifndef FRAME_LIB_STRENGTH_BEAM_ROOTS_H
#define FRAME_LIB_STRENGTH_BEAM_ROOTS_H

enum { FRAME_POLYNOMIAL_DEGREE = 5 };

/* c[0] + c[1] t + ...; unused coefficients are zero. */
typedef struct frame_polynomial {
    double c[FRAME_POLYNOMIAL_DEGREE + 1];
} frame_polynomial;

static inline double frame_polynomial_at(const frame_polynomial *p, double t) {
    const double *c = p->c;
    return c[0] + t * (c[1] + t * (c[2] + t * (c[3] + t * (c[4] + t * c[5]))));
}

static inline frame_polynomial frame_polynomial_slope(const frame_polynomial *p) {
    const double *c = p->c;
    return (frame_polynomial){{c[1], 2 * c[2], 3 * c[3], 4 * c[4], 5 * c[5]}};
}

/* The places inside (0, length) where the sign changes, from left to right; gives their count, at most the degree. */
int frame_polynomial_roots(const frame_polynomial *p, double length, double roots[FRAME_POLYNOMIAL_DEGREE]);

#endif
