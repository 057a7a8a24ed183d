/* A diaphragm on two walls. */
#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

static frame_status compute(const frame_diaphragm_in *in, frame_diaphragm_out *out, frame_working *w) {
    FRAME_GIVEN(w, L, in->length_in / 12, "ft", "span between the walls");
    FRAME_GIVEN(w, W, in->width_in / 12, "ft", "its depth");
    FRAME_TABLE(w, most, in->blocked ? 4 : 3, "", "most length over width", "SDPWS table 4.2.4, from memory");
    FRAME_STEP(w, aspect, L / W, "", "length over width", "SDPWS 4.2.4");
    if (aspect > most * (1 + 1e-9))
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "length_in", in->length_in,
                                 in->blocked ? "at most 4 times width_in for blocked diaphragms (SDPWS 4.2.4)"
                                             : "at most 3 times width_in for unblocked diaphragms (SDPWS 4.2.4)");
    FRAME_GIVEN(w, q, in->load_plf, "plf", "load along the span");
    FRAME_GIVEN(w, v_design, in->unit_plf, "plf", "design unit shear of the panels");
    FRAME_STEP(w, R, q * L / 2, "lb", "shear each wall takes", "statics");
    FRAME_STEP(w, v, R / W, "plf", "unit shear at the walls", "statics");
    FRAME_STEP(w, T, q * pow(L, 2) / (8 * W), "lb", "largest force in the chords", "statics");
    FRAME_STEP(w, ratio, v / v_design, "", "unit shear over what the panels carry", "at most 1");
    out->shear_plf = v;
    out->reaction_lb = R;
    out->chord_lb = T;
    out->aspect = aspect;
    out->most_aspect = most;
    out->ratio = ratio;
    out->passes = frame_within(ratio);
    out->known = FRAME_KNOWN_MEMORY;
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_PANELS) | FRAME_BIT(FRAME_FASTENING_CAUTION_MEMORY);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_DEFLECTION) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_COLLECTOR) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_SEISMIC);
    return FRAME_OK;
}

FRAME_IMPLEMENT(diaphragm, compute);
