/* One fastener loaded across and along itself at once. */
#include "joint/fastening.h"
#include "joint_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

static frame_status sensible(const frame_dowel_combined_in *in) {
    if (frame_dowel_is_bolt(in->kind))
        return frame_fail(FRAME_OUTSIDE_SCOPE, "kind", frame_dowel_word(in->kind), "nails, wood screws, lag screws",
                          "kind: a %s is held along its length by head and nut, or by test, not by withdrawal",
                          frame_dowel_word(in->kind));
    if (in->lateral_lb > 0 || in->withdrawal_lb > 0) return FRAME_OK;
    return frame_fail(FRAME_IMPOSSIBLE, "lateral_lb", "0", "a load across or along the fastener",
                      "lateral_lb: neither load is above 0");
}

/* What it carries in the load's direction. */
static double value_at(const frame_dowel_combined_in *in, double W_p, double alpha, frame_working *w) {
    FRAME_GIVEN(w, Z_prime, in->lateral_value_lb, "lb", "adjusted lateral value");
    if (in->kind == FRAME_DOWEL_LAG_SCREW) {
        FRAME_STEP(w, Z_alpha,
                   W_p * Z_prime / (W_p * pow(cos(alpha * FRAME_DEG), 2) + Z_prime * pow(sin(alpha * FRAME_DEG), 2)),
                   "lb", "value in the load's direction", "NDS 2018 equation 12.4-1, from memory");
        return Z_alpha;
    }
    FRAME_STEP(w, Z_alpha, W_p * Z_prime / (W_p * cos(alpha * FRAME_DEG) + Z_prime * sin(alpha * FRAME_DEG)), "lb",
               "value in the load's direction", "NDS 2018 equation 12.4-2, from memory");
    return Z_alpha;
}

static frame_status compute(const frame_dowel_combined_in *in, frame_dowel_combined_out *out, frame_working *w) {
    const frame_status status = sensible(in);
    if (status) return status;
    const double head = in->pull_through_value_lb;
    FRAME_GIVEN(w, P_Z, in->lateral_lb, "lb", "load across the fastener");
    FRAME_GIVEN(w, P_W, in->withdrawal_lb, "lb", "load along the fastener");
    FRAME_GIVEN(w, W_held, in->withdrawal_value_lb, "lb", "adjusted withdrawal value");
    FRAME_GIVEN(w, W_head, head != FRAME_NOT_GIVEN ? head : W_held, "lb",
                "adjusted pull-through value, or again that of withdrawal");
    FRAME_STEP(w, W_p, fmin(W_held, W_head), "lb", "what holds along the fastener", "the lesser");
    FRAME_STEP(w, P, hypot(P_Z, P_W), "lb", "the load", "statics");
    FRAME_STEP(w, alpha, atan2(P_W, P_Z) / FRAME_DEG, "deg", "its angle from the face of the wood", "statics");
    const double Z_alpha = value_at(in, W_p, alpha, w);
    FRAME_STEP(w, ratio, P / Z_alpha, "", "load over value", "at most 1");
    out->load_lb = P;
    out->angle_deg = alpha;
    out->value_lb = Z_alpha;
    out->ratio = ratio;
    out->passes = ratio <= 1 + 1e-9;
    out->known = FRAME_KNOWN_MEMORY;
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_ADJUSTED) | FRAME_BIT(FRAME_FASTENING_CAUTION_MEMORY);
    if (frame_dowel_is_nail(in->kind)) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_NAILS_PULL);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPLITTING) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPACING) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_MEMBER) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_METAL);
    return FRAME_OK;
}

FRAME_IMPLEMENT(dowel_combined, compute);
