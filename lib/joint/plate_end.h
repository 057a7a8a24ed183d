/* The end of a member on a plate, pushed along or across it and lifted. */
#ifndef FRAME_LIB_JOINT_PLATE_END_H
#define FRAME_LIB_JOINT_PLATE_END_H

#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

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

/* The calculation X of such an end, whose in- and out-structs name these fields alike. A macro, because they are
 * structs of their own. */
#define FRAME_PLATE_END_IMPLEMENT(X, NAME)                                                                            \
    static frame_status compute(const frame_##X##_in *in, frame_##X##_out *out, frame_working *w) {                   \
        const frame_plate_end end = {in->way,      in->metal_may_be_raised, in->count, in->lateral_lb, in->uplift_lb, \
                                     in->metal_lb, in->metal_uplift_lb};                                              \
        frame_nailing nailing = FRAME_NAILING_OF(in);                                                                 \
        frame_plate_result result;                                                                                    \
        const frame_status status = frame_plate_end_find(&end, &nailing, &result, w);                                 \
        if (status) return status;                                                                                    \
        out->known = result.known;                                                                                    \
        out->passes = result.passes;                                                                                  \
        out->cautions = result.cautions;                                                                              \
        out->not_checked = result.not_checked;                                                                        \
        out->needed_count = result.needed_count;                                                                      \
        out->each_lb = result.each_lb;                                                                                \
        out->each_withdrawal_lb = result.each_withdrawal_lb;                                                          \
        out->ratio = result.ratio;                                                                                    \
        out->lateral_ratio = result.lateral_ratio;                                                                    \
        out->uplift_ratio = result.uplift_ratio;                                                                      \
        FRAME_NAILING_FORGET(NAME, &nailing, in->way != FRAME_END_WAY_METAL,                                          \
                             FRAME_BIT(FRAME_ASSUMED_##NAME##_IN_SIDE_THICKNESS_IN), out->assumed);                   \
        return FRAME_OK;                                                                                              \
    }                                                                                                                 \
    FRAME_IMPLEMENT(X, compute)

#endif
