/* Roots of polynomials on a stretch: between the extremes, which are the roots of the slope, each change of sign holds
 * exactly one. */
#include "strength/beam_roots.h"

#include <math.h>

/* On the stretch from 0 to 1; what the highest terms add there beside the others' rounding is nothing. */
static int degree_of(const double *c) {
    double most = 0;
    for (int i = 0; i <= FRAME_POLYNOMIAL_DEGREE; i++) most = fabs(c[i]) > most ? fabs(c[i]) : most;
    int degree = FRAME_POLYNOMIAL_DEGREE;
    while (degree > 0 && fabs(c[degree]) <= most * 1e-16) degree--;
    return degree;
}

static double value_at(const double *c, int degree, double t) {
    double value = c[degree];
    for (int i = degree - 1; i >= 0; i--) value = value * t + c[i];
    return value;
}

/* A step of Newton's as small as this leaves an error of its square. */
#define LAST_STEP 1e-11

/* The one root between a and b, where the signs differ: Newton's steps, halving where they leave the bracket or are
 * slow. */
static double root_between(const double *c, int degree, double a, double b, double at_a) {
    double t = (a + b) / 2, last = b - a;
    for (int i = 0; i < 200; i++) {
        double value = c[degree], slope = 0;
        for (int k = degree - 1; k >= 0; k--) slope = slope * t + value, value = value * t + c[k];
        if ((value > 0) == (at_a > 0))
            a = t;
        else
            b = t;
        const double step = -value / slope, next = t + step;
        if (fabs(step) <= LAST_STEP && next >= a && next <= b) return next;
        if (next > a && next < b && fabs(step) <= last / 2) {
            last = fabs(step);
            t = next;
        } else {
            last = (b - a) / 2;
            t = a + last;
            if (!(last > 1e-17)) return t;
        }
    }
    return t;
}

static int keep(double t, double *roots, int count) {
    if (t > 0 && t < 1) roots[count++] = t;
    return count;
}

static int quadratic(const double *c, double *roots) {
    const double half = -c[1] / 2, square = half * half - c[2] * c[0];
    if (!(square > 0)) return 0;
    const double q = half + (half >= 0 ? sqrt(square) : -sqrt(square));
    const double one = q / c[2], other = q != 0 ? c[0] / q : one;
    const int count = keep(fmin(one, other), roots, 0);
    return one == other ? count : keep(fmax(one, other), roots, count);
}

static int roots_of(const double *c, int degree, double *roots) {
    if (degree == 0) return 0;
    if (degree == 1) return keep(-c[0] / c[1], roots, 0);
    if (degree == 2) return quadratic(c, roots);
    double slope[FRAME_POLYNOMIAL_DEGREE], turns[FRAME_POLYNOMIAL_DEGREE + 1];
    for (int i = 1; i <= degree; i++) slope[i - 1] = i * c[i];
    const int count = roots_of(slope, degree - 1, turns);
    turns[count] = 1;
    int found = 0;
    double from = 0, at_from = c[0];
    for (int i = 0; i <= count; i++) {
        const double at_turn = value_at(c, degree, turns[i]);
        if ((at_from > 0 && at_turn < 0) || (at_from < 0 && at_turn > 0))
            found = keep(root_between(c, degree, from, turns[i], at_from), roots, found);
        else if (at_from == 0 && from > 0)
            found = keep(from, roots, found);
        from = turns[i];
        at_from = at_turn;
    }
    return found;
}

int frame_polynomial_roots(const frame_polynomial *p, double length, double roots[FRAME_POLYNOMIAL_DEGREE]) {
    double c[FRAME_POLYNOMIAL_DEGREE + 1], power = 1;
    for (int i = 0; i <= FRAME_POLYNOMIAL_DEGREE; i++, power *= length) c[i] = p->c[i] * power;
    const int count = roots_of(c, degree_of(c), roots);
    for (int i = 0; i < count; i++) roots[i] *= length;
    return count;
}
