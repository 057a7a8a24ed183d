/* Column stability, C_P: NDS 2018 3.7.1, and 15.3.2 for plies. */
#ifndef FRAME_LIB_STRENGTH_COLUMN_H
#define FRAME_LIB_STRENGTH_COLUMN_H

#include "strength/refusals.h"
#include "working/record.h"

#include "working/plain_math.h"

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
                                             frame_working *record) {
    const double c = FRAME_COLUMN_C;
    FRAME_STEP(record, F_cE_2, 0.822 * E_min_prime / pow(s_2, 2), "psi", "critical buckling value across the thickness",
               "NDS 2018 3.7.1.5 (from memory)");
    FRAME_STEP(record, a_2, F_cE_2 / F_c_star, "", "buckling over compression, across the thickness",
               "NDS 2018 3.7.1.5");
    FRAME_TABLE(record, K_f, ply_factor, "", "factor of plies fastened together", "NDS 2018 15.3.2 (from memory)");
    FRAME_STEP(record, C_P_2, K_f * ((1 + a_2) / (2 * c) - sqrt(pow((1 + a_2) / (2 * c), 2) - a_2 / c)), "",
               "column stability factor across the thickness", "NDS 2018 3.7.1.5 and 15.3.2 (from memory)");
    return C_P_2;
}

#endif
