/* A post base or cap against its published allowable loads. */
#include "joint/shear_end.h"
#include "joint_facts.h"
#include "working/calculation.h"

static frame_status one(double load_lb, double given_lb, const char *field, const frame_post_end_in *in, double *ratio,
                        frame_working *w) {
    *ratio = 0;
    const frame_status status = frame_metal_needed(load_lb, given_lb, field);
    if (status || load_lb <= 0) return status;
    *ratio = load_lb / frame_metal_value(given_lb, in->metal_may_be_raised, in->load_duration_factor, w);
    return FRAME_OK;
}

static frame_status compute(const frame_post_end_in *in, frame_post_end_out *out, frame_working *w) {
    if (in->down_lb <= 0 && in->uplift_lb <= 0 && in->lateral_lb <= 0)
        return frame_fail(FRAME_REQUIRED, "down_lb", "0", "a load above 0", "down_lb: no load is above 0");
    frame_status status = one(in->down_lb, in->metal_down_lb, "metal_down_lb", in, &out->down_ratio, w);
    if (!status) status = one(in->uplift_lb, in->metal_uplift_lb, "metal_uplift_lb", in, &out->uplift_ratio, w);
    if (!status) status = one(in->lateral_lb, in->metal_lateral_lb, "metal_lateral_lb", in, &out->lateral_ratio, w);
    if (status) return status;
    FRAME_TABLE(w, r_down, out->down_ratio, "", "down, over its allowable", "above");
    FRAME_TABLE(w, r_up, out->uplift_ratio, "", "up, over its allowable", "above");
    FRAME_TABLE(w, r_side, out->lateral_ratio, "", "sideways, over its allowable", "above");
    FRAME_STEP(w, r_both, r_up + r_side, "", "up and sideways together",
               "a straight line between them; common practice");
    FRAME_STEP(w, ratio, fmax(r_down, r_both), "", "what governs", "at most 1");
    out->together_ratio = r_both;
    out->ratio = ratio;
    out->passes = frame_within(ratio);
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_MAKER);
    if (in->metal_may_be_raised && in->load_duration_factor > 1)
        out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_RAISED);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_ANCHOR) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_BEARING) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_MEMBER) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_CORROSION) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_PATH);
    return FRAME_OK;
}

FRAME_IMPLEMENT(post_end, compute);
