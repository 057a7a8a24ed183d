/* The overhang of a gable: x runs out from the gable's outside, which is x = 0; the first common rafter lies inside. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

enum { MARKS };

static const char trade[] = "common practice";

static double first_of(const frame_rake_in *in) {
    return in->first_in == FRAME_NOT_GIVEN ? 24 : in->first_in;
}

static frame_status find_reach(const frame_rake_in *in, double *back, double *length) {
    *back = first_of(in) - in->rafter_thickness_in / 2;
    *length = *back + in->overhang_in - in->rafter_thickness_in;
    if (*back > 0 && in->overhang_in > in->rafter_thickness_in) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "overhang_in", in->overhang_in,
                             "such that lookouts reach past the gable and back to the first common rafter");
}

static frame_status add_marks(const frame_rake_in *in, frame_answer *answer) {
    const double half = (in->laid == FRAME_LOOKOUT_FLAT ? in->depth_in : in->thickness_in) / 2;
    for (int i = 0; i <= 1000; i++) {
        const double at = half + i * in->spacing_in;
        if (at > in->rafter_length_in - half) return FRAME_OK;
        if (!frame_answer_add_number(answer, MARKS, at)) return FRAME_NO_MEMORY;
    }
    return frame_fail_number(FRAME_TOO_LARGE, "spacing_in", in->spacing_in,
                             "such that there are at most 1000 lookouts");
}

static frame_status solve(const frame_rake_in *in, frame_answer *answer, frame_rake_out *out, frame_working *w) {
    double reach, whole;
    frame_status status = find_reach(in, &reach, &whole);
    if (!status) status = add_marks(in, answer);
    if (status) return status;
    FRAME_GIVEN(w, first, first_of(in), "in", "from the gable's outside to the first common rafter");
    FRAME_GIVEN(w, overhang, in->overhang_in, "in", "overhang, level");
    FRAME_GIVEN(w, t_rafter, in->rafter_thickness_in, "in", "thickness of rafters and fly rafters");
    FRAME_GIVEN(w, m, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, notch, in->laid == FRAME_LOOKOUT_FLAT ? in->thickness_in : in->depth_in, "in",
                "what a lookout takes of the height, square to the slope");
    FRAME_STEP(w, back, first - t_rafter / 2, "in", "what it reaches back", trade);
    FRAME_STEP(w, length, back + overhang - t_rafter, "in", "length of a lookout", trade);
    FRAME_STEP(w, drop, notch * sqrt(1 + pow(m, 2)), "in", "the gable's top below the roof plane, plumb",
               "right triangle");
    FRAME_STEP(w, lever, overhang / back, "", "overhang over what it reaches back", trade);
    out->lookout_length_in = length;
    out->notch_in = notch;
    out->gable_drop_in = drop;
    out->back_in = back;
    out->lever = lever;
    out->count = (int32_t)frame_answer_count(answer, MARKS);
    out->cautions = FRAME_BIT(FRAME_RAKE_CAUTION_FLY);
    if (lever > 1) out->cautions |= FRAME_BIT(FRAME_RAKE_CAUTION_LEVER);
    if (m > 1.5) out->cautions |= FRAME_BIT(FRAME_RAKE_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_RAKE_UNCHECKED_STRENGTH);
    out->known = FRAME_KNOWN_USER;
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(rake, solve);

frame_status frame_rake_stick(const frame_rake_in *given, frame_stick **stick) {
    frame_rake_in in;
    double back, length;
    uint64_t assumed = 0;
    frame_status status = frame_rake_in_read(given, &in, &assumed);
    if (!status) status = find_reach(&in, &back, &length);
    if (status) return status;
    const frame_cut_list cuts = {.count = 0};
    frame_cut_list_body body = {.name = "lookout",
                                .thickness = in.thickness_in,
                                .depth = in.depth_in,
                                .from = {-back, 0, 0},
                                .to = {length - back, 0, 0},
                                .axis_at = FRAME_STICK_AXIS_TOP};
    body.crown[1] = -in.slope, body.crown[2] = 1; /* on edge its depth is square to the roof, which rises to +y */
    if (in.laid == FRAME_LOOKOUT_FLAT)
        body.crown[1] = 1, body.crown[2] = in.slope, body.axis_at = FRAME_STICK_AXIS_CENTRE;
    return frame_cut_list_stick(&cuts, &body, stick);
}
