/* The end of a member held in shear: a joist at a beam, a jack at its hip. */
#ifndef FRAME_LIB_JOINT_SHEAR_END_H
#define FRAME_LIB_JOINT_SHEAR_END_H

#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

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

/* The calculation X of such an end, whose in- and out-structs name these fields alike. A macro, because they are
 * structs of their own. */
#define FRAME_SHEAR_END_IMPLEMENT(X, NAME)                                                                             \
    static frame_status compute(const frame_##X##_in *in, frame_##X##_out *out, frame_working *w) {                    \
        const frame_shear_end end = {in->way,      in->metal_may_be_raised, in->count, in->reaction_lb, in->uplift_lb, \
                                     in->metal_lb, in->metal_uplift_lb};                                               \
        frame_nailing nailing = FRAME_NAILING_OF(in);                                                                  \
        frame_end_result result;                                                                                       \
        const frame_status status = frame_shear_end_find(&end, &nailing, &result, w);                                  \
        if (status) return status;                                                                                     \
        out->known = result.known;                                                                                     \
        out->passes = result.passes;                                                                                   \
        out->cautions = result.cautions;                                                                               \
        out->not_checked = result.not_checked;                                                                         \
        out->needed_count = result.needed_count;                                                                       \
        out->each_lb = result.each_lb;                                                                                 \
        out->demand_lb = result.demand_lb;                                                                             \
        out->capacity_lb = result.capacity_lb;                                                                         \
        out->ratio = result.ratio;                                                                                     \
        FRAME_NAILING_FORGET(NAME, &nailing, in->way != FRAME_END_WAY_METAL,                                           \
                             FRAME_BIT(FRAME_ASSUMED_##NAME##_IN_SIDE_THICKNESS_IN), out->assumed);                    \
        return FRAME_OK;                                                                                               \
    }                                                                                                                  \
    FRAME_IMPLEMENT(X, compute)

#endif
