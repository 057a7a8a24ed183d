/* Rim joists and blocks on a plate, with shear along them. */
#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

static frame_status sensible(const frame_rim_joint_in *in) {
    const int block = in->block_length_in != FRAME_NOT_GIVEN, centres = in->block_spacing_in != FRAME_NOT_GIVEN;
    if (centres && !block)
        return frame_fail(FRAME_REQUIRED, "block_length_in", "", ">0..240 in",
                          "block_length_in: not given; block_spacing_in is for blocks of a length");
    if (centres && in->block_spacing_in < in->block_length_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "block_spacing_in", in->block_spacing_in,
                                 "centres at least as wide as a block is long");
    return FRAME_OK;
}

static void blocks(const frame_rim_joint_in *in, double Z_prime, frame_rim_joint_out *out, frame_working *w) {
    if (in->block_length_in == FRAME_NOT_GIVEN) return;
    const double centres = in->block_spacing_in != FRAME_NOT_GIVEN ? in->block_spacing_in : in->block_length_in;
    FRAME_GIVEN(w, v, in->shear_plf, "plf", "shear");
    FRAME_GIVEN(w, s_block, centres, "in", "centres of the blocks");
    FRAME_STEP(w, V_block, v * s_block / 12, "lb", "shear that each block takes", "statics");
    FRAME_STEP(w, n_block, ceil(V_block / Z_prime - 1e-9), "", "nails for each block", "NDS 2018 11.2.2");
    out->per_block = frame_count_for(n_block);
}

static frame_status compute(const frame_rim_joint_in *in, frame_rim_joint_out *out, frame_working *w) {
    frame_nailing nailing = FRAME_NAILING_OF(in);
    frame_dowel_lateral_out value;
    nailing.toe_nail = in->toe_nailed;
    nailing.side_angle_deg = nailing.main_angle_deg = 0;
    frame_status status = sensible(in);
    if (!status) status = frame_nailing_lateral(&nailing, &value, w);
    if (status) return status;
    FRAME_HEADING(w, "The rim");
    FRAME_TABLE(w, Z_prime, value.adjusted_lb, "lb", "adjusted lateral value of one", "above");
    FRAME_GIVEN(w, v_rim, in->shear_plf, "plf", "shear along it");
    out->each_lb = Z_prime;
    if (v_rim > 0) {
        FRAME_STEP(w, s_needed, 12 * Z_prime / v_rim, "in", "widest centres that carry it", "NDS 2018 11.2.2");
        out->needed_spacing_in = s_needed;
    }
    if (in->spacing_in != FRAME_NOT_GIVEN) {
        FRAME_GIVEN(w, s, in->spacing_in, "in", "centres of the nails");
        FRAME_STEP(w, v_held, 12 * Z_prime / s, "plf", "what they carry", "NDS 2018 11.2.2");
        FRAME_STEP(w, ratio, v_rim / v_held, "", "shear over capacity", "at most 1");
        out->capacity_plf = v_held;
        out->ratio = ratio;
        out->passes = frame_within(ratio);
    }
    blocks(in, Z_prime, out, w);
    if (in->block_length_in == FRAME_NOT_GIVEN) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_RIM_JOINT_IN_BLOCK_SPACING_IN);
    out->known = value.known;
    out->cautions = frame_nailing_cautions(&nailing, &value) | FRAME_BIT(FRAME_FASTENING_CAUTION_CODE_TABLE);
    out->not_checked = frame_nailing_unchecked() | FRAME_BIT(FRAME_FASTENING_UNCHECKED_OTHER_WAY);
    FRAME_NAILING_FORGET(RIM_JOINT, &nailing, 1, FRAME_BIT(FRAME_ASSUMED_RIM_JOINT_IN_SIDE_THICKNESS_IN), out->assumed);
    return FRAME_OK;
}

FRAME_IMPLEMENT(rim_joint, compute);
