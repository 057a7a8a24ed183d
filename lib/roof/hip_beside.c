/* For the working of a hip or valley: what its stick of planes in space measures, beside the handbook's formulas.
 * Nothing of the formulas is used to make the stick. */
#include <math.h>
#include <string.h>

#include "roof/hip.h"

static const char kernel[] = "the stick of planes in space";

/* The first setting of the saw that leaves a face, for a role at an end; an end of 0 is any. */
static int find_saw(const frame_stick *stick, frame_stick_end at_end, int backing, frame_stick_saw *saw) {
    for (size_t i = 0; i < frame_stick_saw_count(stick); i++)
        if (!frame_stick_saw_at(stick, i, saw) && saw->area_in2 > 0 &&
            (backing ? saw->role == FRAME_STICK_BACKING : saw->at_end == at_end))
            return 1;
    return 0;
}

/* The bevel that the formulas have for the head's cut that was found. */
static double head_bevel(const frame_hip_facts *facts, const frame_hip_figures *figures, const frame_stick_saw *saw) {
    const int b = strstr(saw->label, "side b") != NULL;
    if (facts->head == FRAME_HIP_HEAD_PLUMB) return 0;
    if (facts->head == FRAME_HIP_HEAD_RIDGE) return figures->ridge_cheek_a_deg;
    if (facts->valley) return b ? figures->ridge_cheek_b_deg : figures->ridge_cheek_a_deg;
    return b ? figures->cheek_b_deg : figures->cheek_a_deg;
}

static void beside_head(const frame_hip_facts *facts, const frame_hip_figures *figures, const frame_stick *stick,
                        frame_working *w) {
    frame_stick_saw saw;
    if (!find_saw(stick, FRAME_STICK_END, 0, &saw)) return;
    FRAME_GIVEN(w, theta_formulas, figures->plumb_cut_deg, "deg", "the plumb cut's mitre by the formulas above");
    FRAME_TABLE(w, theta_stick, saw.mitre_deg, "deg", "mitre of the head's cut on the stick", kernel);
    FRAME_STEP(w, theta_apart, fabs(theta_formulas - theta_stick), "deg", "what they differ by", kernel);
    FRAME_GIVEN(w, bevel_formulas, head_bevel(facts, figures, &saw), "deg",
                "the head's bevel by the formulas above, of side a where both are cut");
    FRAME_TABLE(w, bevel_stick, saw.bevel_deg, "deg", "bevel of that cut on the stick", kernel);
    FRAME_STEP(w, bevel_apart, fabs(bevel_formulas - bevel_stick), "deg", "what they differ by", kernel);
}

static void beside_backing(const frame_hip_figures *figures, const frame_stick *stick, frame_working *w) {
    frame_stick_saw saw;
    if (!find_saw(stick, 0, 1, &saw)) return;
    FRAME_GIVEN(w, backing_formulas, strstr(saw.label, "side b") ? figures->backing_b_deg : figures->backing_a_deg,
                "deg", "the backing by the formulas above");
    FRAME_TABLE(w, backing_stick, saw.bevel_deg, "deg", "tilt of the blade for the backing on the stick", kernel);
    FRAME_STEP(w, backing_apart, fabs(backing_formulas - backing_stick), "deg", "what they differ by", kernel);
}

frame_status frame_hip_beside_stick(const frame_hip_facts *facts, const frame_hip_figures *figures, frame_working *w) {
    frame_stick *stick;
    frame_stick_lengths_out lengths;
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
    if (!status) beside_head(facts, figures, stick, w);
    if (!status) beside_backing(figures, stick, w);
    frame_stick_free(stick);
    return status;
}
