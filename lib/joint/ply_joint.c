/* Plies of a beam or header nailed together. */
#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

static double transfer(const frame_ply_joint_in *in, frame_working *w) {
    FRAME_GIVEN(w, q, in->load_plf, "plf", in->side_loaded ? "load on one side" : "load on all plies");
    if (!in->side_loaded) {
        FRAME_CASE(w, "loaded on all plies", "nothing passes through the nails; they keep the plies together",
                   "statics");
        return 0;
    }
    FRAME_GIVEN(w, n_plies, in->plies, "", "plies");
    FRAME_STEP(w, q_pass, q * (n_plies - 1) / n_plies, "plf", "what passes from the loaded ply to the others",
               "statics");
    return q_pass;
}

static void spacing(const frame_ply_joint_in *in, double Z_prime, double pass, frame_ply_joint_out *out,
                    frame_working *w) {
    FRAME_GIVEN(w, rows, in->rows, "", "rows");
    FRAME_GIVEN(w, s_most, in->most_spacing_in, "in", "widest centres allowed");
    out->needed_spacing_in = s_most;
    if (pass > 0) {
        FRAME_TABLE(w, q_passed, pass, "plf", "what passes", "above");
        FRAME_STEP(w, s_needed, fmin(s_most, 12 * rows * Z_prime / q_passed), "in", "centres in each row",
                   "NDS 2018 11.2.2");
        out->needed_spacing_in = s_needed;
    }
    if (in->spacing_in == FRAME_NOT_GIVEN) return;
    FRAME_GIVEN(w, s, in->spacing_in, "in", "centres in each row");
    FRAME_STEP(w, q_held, 12 * rows * Z_prime / s, "plf", "what they pass on", "NDS 2018 11.2.2");
    out->capacity_plf = q_held;
    out->ratio = pass / q_held;
    out->passes = frame_within(out->ratio) && in->spacing_in <= in->most_spacing_in + 1e-9;
}

static frame_status compute(const frame_ply_joint_in *in, frame_ply_joint_out *out, frame_working *w) {
    frame_nailing nailing = FRAME_NAILING_OF(in);
    frame_dowel_lateral_out value;
    nailing.side_angle_deg = nailing.main_angle_deg = 90;
    if (nailing.main_thickness_in == FRAME_NOT_GIVEN) nailing.main_thickness_in = nailing.side_thickness_in;
    const frame_status status = frame_nailing_lateral(&nailing, &value, w);
    if (status) return status;
    FRAME_HEADING(w, "The plies");
    FRAME_TABLE(w, Z_prime, value.adjusted_lb, "lb", "adjusted lateral value of one", "above");
    out->each_lb = Z_prime;
    out->transfer_plf = transfer(in, w);
    spacing(in, Z_prime, out->transfer_plf, out, w);
    out->known = value.known;
    out->cautions = frame_nailing_cautions(&nailing, &value) | FRAME_BIT(FRAME_FASTENING_CAUTION_CODE_TABLE);
    if (in->side_loaded) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_SIDE_LOADED);
    out->not_checked = frame_nailing_unchecked();
    FRAME_NAILING_FORGET(PLY_JOINT, &nailing, 1, 0, out->assumed);
    return FRAME_OK;
}

FRAME_IMPLEMENT(ply_joint, compute);
