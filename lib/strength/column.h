/* Column stability, C_P: NDS 2018 3.7.1, and 15.3.2 for plies. */
#ifndef FRAME_LIB_STRENGTH_COLUMN_H
#define FRAME_LIB_STRENGTH_COLUMN_H

#include "strength/member.h"
#include "strength/refusals.h"
#include "working/record.h"

#include "working/plain_math.h"

/* What the steps of a column hand on. */
typedef struct frame_column_state {
    double area, slender_strong, slender_weak; /* slender_weak 0 where it is held */
    double F_c_star, E_min_prime, F_c_prime;
    double F_cE_1, F_cE_2; /* F_cE_2 0 where the weak axis is held */
    double F_bE;           /* 0 where C_L is 1 by rule */
    double E;
    frame_known plate_known;
    int32_t spare;
} frame_column_state;

/* Compression with bending about both axes, of loads on both faces and of the load off the axis: NDS 15.4. */
frame_status frame_column_combine(const frame_column_check_in *in, const frame_member *m, const frame_column_state *of,
                                  frame_column_check_out *out, frame_working *record);
/* Whether a bracket is wholly given, and stands where NDS 15.4.2 speaks of it. */
frame_status frame_column_bracket_given(const frame_column_check_in *in);
/* The bending moment at mid-height of the side load that stands for the bracket. */
double frame_column_bracket_moment(const frame_column_check_in *in, frame_column_check_out *out, frame_working *record);
/* Crushing of the plate that it stands on. */
frame_status frame_column_plate(const frame_column_check_in *in, const frame_member *m, frame_column_state *of,
                                frame_column_check_out *out, frame_working *record);

/* NDS 2018 3.7.1.5 (from memory): sawn lumber. */
#define FRAME_COLUMN_C 0.8

/* About the strong axis. F_c_star, E_min_prime and c are recorded. */
FRAME_ALWAYS_INLINE double frame_column_strong(double s_1, double E_min_prime, double F_c_star, double *buckling,
                                               frame_working *record) {
    const double c = FRAME_COLUMN_C;
    FRAME_STEP(record, F_cE_1, 0.822 * E_min_prime / pow(s_1, 2), "psi", "critical buckling value across the width",
               "NDS 2018 3.7.1.5 (from memory)");
    FRAME_STEP(record, a_1, F_cE_1 / F_c_star, "", "buckling over compression, across the width", "NDS 2018 3.7.1.5");
    FRAME_STEP(record, C_P_1, (1 + a_1) / (2 * c) - sqrt(pow((1 + a_1) / (2 * c), 2) - a_1 / c), "",
               "column stability factor across the width", "NDS 2018 3.7.1.5, equation 3.7-1 (from memory)");
    *buckling = F_cE_1;
    return C_P_1;
}

/* About the weak axis, of all plies: K_f. */
FRAME_ALWAYS_INLINE double frame_column_weak(double s_2, double E_min_prime, double F_c_star, double ply_factor,
                                             double *buckling, frame_working *record) {
    const double c = FRAME_COLUMN_C;
    FRAME_STEP(record, F_cE_2, 0.822 * E_min_prime / pow(s_2, 2), "psi", "critical buckling value across the thickness",
               "NDS 2018 3.7.1.5 (from memory)");
    FRAME_STEP(record, a_2, F_cE_2 / F_c_star, "", "buckling over compression, across the thickness",
               "NDS 2018 3.7.1.5");
    FRAME_TABLE(record, K_f, ply_factor, "", "factor of plies fastened together", "NDS 2018 15.3.2 (from memory)");
    FRAME_STEP(record, C_P_2, K_f * ((1 + a_2) / (2 * c) - sqrt(pow((1 + a_2) / (2 * c), 2) - a_2 / c)), "",
               "column stability factor across the thickness", "NDS 2018 3.7.1.5 and 15.3.2 (from memory)");
    *buckling = F_cE_2;
    return C_P_2;
}

#endif
