/* The end of a jack or hip rafter at a hip, valley or ridge. */
#include "joint/shear_end.h"
#include "joint_facts.h"
#include "working/calculation.h"

static frame_status compute(const frame_jack_hold_in *in, frame_jack_hold_out *out, frame_working *w) {
    const frame_shear_end end = {in->way,      in->metal_may_be_raised, in->count, in->reaction_lb, in->uplift_lb,
                                 in->metal_lb, in->metal_uplift_lb};
    frame_nailing nailing = FRAME_NAILING_OF(in);
    frame_end_result result;
    const frame_status status = frame_shear_end_find(&end, &nailing, &result, w);
    if (status) return status;
    out->known = result.known;
    out->passes = result.passes;
    out->cautions = result.cautions;
    out->not_checked = result.not_checked;
    out->needed_count = result.needed_count;
    out->each_lb = result.each_lb;
    out->demand_lb = result.demand_lb;
    out->capacity_lb = result.capacity_lb;
    out->ratio = result.ratio;
    FRAME_NAILING_FORGET(JACK_HOLD, &nailing, in->way != FRAME_END_WAY_METAL,
                         FRAME_BIT(FRAME_ASSUMED_JACK_HOLD_IN_SIDE_THICKNESS_IN), out->assumed);
    return FRAME_OK;
}

FRAME_IMPLEMENT(jack_hold, compute);
