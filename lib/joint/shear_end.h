/* The end of a member held in shear: a joist at a beam, a jack at its hip. */
#ifndef FRAME_LIB_JOINT_SHEAR_END_H
#define FRAME_LIB_JOINT_SHEAR_END_H

#include "joint/nailing.h"

typedef struct frame_shear_end {
    frame_end_way way;
    int may_be_raised;
    int32_t count;
    double reaction_lb, uplift_lb, metal_lb, metal_uplift_lb;
} frame_shear_end;

typedef struct frame_end_result {
    frame_known known;
    frame_bool passes;
    int32_t needed_count;
    double each_lb, demand_lb, capacity_lb, ratio;
    uint64_t cautions, not_checked;
} frame_end_result;

frame_status frame_shear_end_find(const frame_shear_end *end, frame_nailing *nailing, frame_end_result *result,
                                  frame_working *w);
/* What a metal part's given value becomes. */
double frame_metal_value(double given_lb, int may_be_raised, double load_duration_factor, frame_working *w);
/* FRAME_REQUIRED where a load acts that the maker gives nothing for. */
frame_status frame_metal_needed(double load_lb, double given_lb, const char *field);

#endif
