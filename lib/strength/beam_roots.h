/* Roots and extremes of the polynomials of a beam: up to the fifth degree, on a stretch from 0 on. */
#ifndef FRAME_LIB_STRENGTH_BEAM_ROOTS_H
#define FRAME_LIB_STRENGTH_BEAM_ROOTS_H

enum { FRAME_POLYNOMIAL_DEGREE = 5 };

/* c[0] + c[1] t + ...; unused coefficients are zero. */
typedef struct frame_polynomial {
    double c[FRAME_POLYNOMIAL_DEGREE + 1];
} frame_polynomial;

double frame_polynomial_at(const frame_polynomial *p, double t);
frame_polynomial frame_polynomial_slope(const frame_polynomial *p);
/* The same polynomial of the distance from another place. */
frame_polynomial frame_polynomial_moved(const frame_polynomial *p, double to);
/* The places inside (0, length) where the sign changes, from left to right; gives their count, at most the degree. */
int frame_polynomial_roots(const frame_polynomial *p, double length, double roots[FRAME_POLYNOMIAL_DEGREE]);

#endif
