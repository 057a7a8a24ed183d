/* For the working of a hip or valley: what its stick of planes in space measures, beside the handbook's formulas.
 * Nothing of the formulas is used to make the stick. */
#include <math.h>

#include "roof/hip.h"

static const char kernel[] = "the stick of planes in space";

/* The saw's setting for the head's cut, or a cheek of it. */
static int find_head(const frame_stick *stick, frame_stick_saw *saw) {
    for (size_t i = 0; i < frame_stick_saw_count(stick); i++)
        if (!frame_stick_saw_at(stick, i, saw) && saw->at_end == FRAME_STICK_END && saw->area_in2 > 0) return 1;
    return 0;
}

frame_status frame_hip_beside_stick(const frame_hip_facts *facts, const frame_hip_figures *figures, frame_working *w) {
    frame_stick *stick;
    frame_stick_lengths_out lengths;
    frame_stick_saw saw;
    if (!w || facts->depth_in == FRAME_NOT_GIVEN) return FRAME_OK;
    frame_status status = frame_hip_make_stick(facts, &stick);
    if (status) return status;
    status = frame_stick_lengths(stick, &lengths);
    FRAME_HEADING(w, "The same from planes in space");
    if (!status && (!facts->valley || facts->tail == FRAME_HIP_TAIL_PLUMB)) {
        FRAME_GIVEN(w, L_formulas, figures->length_in, "in", "length, tail to head, by the formulas above");
        FRAME_TABLE(w, L_stick, lengths.top_edge_in, "in", "along the middle of the stick's top edge", kernel);
        FRAME_STEP(w, L_apart, fabs(L_formulas - L_stick), "in", "what they differ by", kernel);
    }
    if (!status && find_head(stick, &saw)) {
        FRAME_GIVEN(w, theta_formulas, figures->plumb_cut_deg, "deg", "the plumb cut's mitre by the formulas above");
        FRAME_TABLE(w, theta_stick, saw.mitre_deg, "deg", "mitre of the head's cut on the stick", kernel);
        FRAME_STEP(w, theta_apart, fabs(theta_formulas - theta_stick), "deg", "what they differ by", kernel);
    }
    frame_stick_free(stick);
    return status;
}
