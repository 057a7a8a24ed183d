/* Beam stability, C_L: NDS 2018 3.3.3. */
#ifndef FRAME_LIB_STRENGTH_STABILITY_H
#define FRAME_LIB_STRENGTH_STABILITY_H

#include "table_effective_lengths.h"
#include "working/record.h"

#include "working/plain_math.h"

/* The rows of effective_lengths, in their order. */
enum { FRAME_LENGTH_UNIFORM, FRAME_LENGTH_POINT_FREE, FRAME_LENGTH_POINT_HELD, FRAME_LENGTH_ANY = 11 };

/* The effective length and the slenderness R_B of a beam of breadth b_n (all plies) and depth d, both recorded. */
FRAME_ALWAYS_INLINE double frame_beam_slenderness(double unbraced, double b_n, double d, int row,
                                                  frame_working *record) {
    FRAME_GIVEN(record, l_u, unbraced, "in", "unbraced length of the compression edge");
    const frame_effective_lengths_row *lengths = &frame_effective_lengths_table[row];
    const int is_short = l_u / d<7, is_far = lengths->far_k_u> 0 && l_u / d > 14.3;
    FRAME_CASE(record,
               is_short ? "l_u / d < 7"
               : is_far ? "l_u / d > 14.3"
                        : "l_u / d >= 7",
               "effective length for this slenderness of the span", lengths->source);
    FRAME_TABLE(record, k_u,
                is_short ? lengths->short_k_u
                : is_far ? lengths->far_k_u
                         : lengths->long_k_u,
                "", "coefficient of the unbraced length", lengths->source);
    FRAME_TABLE(record, k_d, is_short || is_far ? 0 : lengths->long_k_d, "", "coefficient of the depth",
                lengths->source);
    FRAME_STEP(record, l_e, k_u * l_u + k_d * d, "in", "effective length", "NDS 2018 3.3.3.5");
    FRAME_STEP(record, R_B, sqrt(l_e * d / pow(b_n, 2)), "", "slenderness ratio", "NDS 2018 3.3.3.6");
    return R_B;
}

/* The critical buckling value. */
FRAME_ALWAYS_INLINE double frame_beam_buckling(double R_B, double E_min_prime, frame_working *record) {
    FRAME_STEP(record, F_bE, 1.20 * E_min_prime / pow(R_B, 2), "psi", "critical buckling design value",
               "NDS 2018 3.3.3.8");
    return F_bE;
}

/* C_L, for F_b_star: all factors but C_fu, C_V and C_L itself. */
FRAME_ALWAYS_INLINE double frame_beam_stability(double F_bE, double F_b_star, frame_working *record) {
    FRAME_STEP(record, a, F_bE / F_b_star, "", "buckling over bending", "NDS 2018 3.3.3.8");
    FRAME_STEP(record, C_L, (1 + a) / 1.9 - sqrt(pow((1 + a) / 1.9, 2) - a / 0.95), "", "beam stability factor",
               "NDS 2018 3.3.3.8, equation 3.3-6 (from memory)");
    return C_L;
}

#endif
