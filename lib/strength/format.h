/* Format conversion and resistance factors of LRFD, by the value they stand for. */
#ifndef FRAME_LIB_STRENGTH_FORMAT_H
#define FRAME_LIB_STRENGTH_FORMAT_H

#include "table_format_factors.h"

/* The rows, in their order. */
enum { FRAME_FORMAT_FB, FRAME_FORMAT_FT, FRAME_FORMAT_FV, FRAME_FORMAT_FC, FRAME_FORMAT_FC_PERP, FRAME_FORMAT_E_MIN };

#define FRAME_FORMAT_KF(which) (frame_format_factors_table[which].k_f)
#define FRAME_FORMAT_PHI(which) (frame_format_factors_table[which].phi)
#define FRAME_FORMAT_SOURCE "NDS 2018 tables N1 and N2"
#define FRAME_LAMBDA_SOURCE "NDS 2018 table N3 (from memory)"

#endif
