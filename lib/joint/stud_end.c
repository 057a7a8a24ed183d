/* The end of a stud at its plate. */
#include "joint/plate_end.h"
#include "joint_facts.h"
#include "working/calculation.h"

static frame_status compute(const frame_stud_end_in *in, frame_stud_end_out *out, frame_working *w) {
    const frame_plate_end end = {in->way,      in->metal_may_be_raised, in->count, in->lateral_lb, in->uplift_lb,
                                 in->metal_lb, in->metal_uplift_lb};
    frame_nailing nailing = FRAME_NAILING_OF(in);
    frame_plate_result result;
    const frame_status status = frame_plate_end_find(&end, &nailing, &result, w);
    if (status) return status;
    out->known = result.known;
    out->passes = result.passes;
    out->cautions = result.cautions;
    out->not_checked = result.not_checked;
    out->needed_count = result.needed_count;
    out->each_lb = result.each_lb;
    out->each_withdrawal_lb = result.each_withdrawal_lb;
    out->ratio = result.ratio;
    out->lateral_ratio = result.lateral_ratio;
    out->uplift_ratio = result.uplift_ratio;
    FRAME_NAILING_FORGET(STUD_END, &nailing, in->way != FRAME_END_WAY_METAL,
                         FRAME_BIT(FRAME_ASSUMED_STUD_END_IN_SIDE_THICKNESS_IN), out->assumed);
    return FRAME_OK;
}

FRAME_IMPLEMENT(stud_end, compute);
