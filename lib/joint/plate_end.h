/* The end of a member on a plate, pushed along or across it and lifted. */
#ifndef FRAME_LIB_JOINT_PLATE_END_H
#define FRAME_LIB_JOINT_PLATE_END_H

#include "joint/nailing.h"

typedef struct frame_plate_end {
    frame_end_way way;
    int may_be_raised;
    int32_t count;
    double lateral_lb, uplift_lb, metal_lb, metal_uplift_lb;
} frame_plate_end;

typedef struct frame_plate_result {
    frame_known known;
    frame_bool passes;
    int32_t needed_count;
    double each_lb, each_withdrawal_lb, ratio, lateral_ratio, uplift_ratio;
    uint64_t cautions, not_checked;
} frame_plate_result;

frame_status frame_plate_end_find(const frame_plate_end *end, frame_nailing *nailing, frame_plate_result *result,
                                  frame_working *w);

#endif
