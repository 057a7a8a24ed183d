/* A brace: the brace measure of a square, and its cuts. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char triangle[] = "right triangle";

static frame_status refuse_short(double depth, double inner) {
    if (inner > 0) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "depth_in", depth,
                             "less: so deep a brace has no inner edge between post and beam");
}

static frame_status compute(const frame_brace_in *in, frame_brace_out *out, frame_working *w) {
    FRAME_GIVEN(w, run, in->run_in, "in", "along the beam, to the outer toe");
    FRAME_GIVEN(w, rise, in->rise_in, "in", "along the post, to the outer toe");
    FRAME_STEP(w, length, sqrt(pow(run, 2) + pow(rise, 2)), "in", "brace measure, toe to toe", triangle);
    FRAME_STEP(w, theta, atan(rise / run) / FRAME_DEG, "deg",
               "the brace's angle with the beam: mitre of the cut at the post", triangle);
    FRAME_STEP(w, theta_beam, 90 - theta, "deg", "mitre of the cut at the beam", triangle);
    out->length_in = length;
    out->post_cut_deg = theta;
    out->beam_cut_deg = theta_beam;
    if (in->depth_in != FRAME_NOT_GIVEN) {
        FRAME_GIVEN(w, d, in->depth_in, "in", "depth");
        FRAME_STEP(w, inner, length - d * (rise / run + run / rise), "in", "along the inner edge", triangle);
        const frame_status status = refuse_short(d, inner);
        if (status) return status;
        out->inner_length_in = inner;
    }
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_BRACE_CAUTION_SQUARE);
    out->not_checked = FRAME_BIT(FRAME_BRACE_UNCHECKED_STRENGTH);
    return FRAME_OK;
}

FRAME_IMPLEMENT(brace, compute);

frame_status frame_brace_stick(const frame_brace_in *given, frame_stick **stick) {
    frame_brace_in in;
    uint64_t assumed = 0;
    frame_status status = frame_brace_in_read(given, &in, &assumed);
    if (status) return status;
    if (in.depth_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "depth_in", "", ">0..24 in", "depth_in: not given; the stick needs it");
    const double length = hypot(in.run_in, in.rise_in);
    status = refuse_short(in.depth_in, length - in.depth_in * (in.rise_in / in.run_in + in.run_in / in.rise_in));
    if (status) return status;
    /* The outer edge runs from the toe at the post's face up to the toe under the beam. The inner side is up and back.
     */
    const double u[2] = {in.run_in / length, in.rise_in / length},
                 spare = in.depth_in * (u[0] / u[1] + u[1] / u[0]) + 1;
    const double origin[3] = {0, 0, 0}, top[3] = {0, 0, in.rise_in}, back[3] = {-1, 0, 0}, up[3] = {0, 0, 1};
    frame_cut_list cuts = {.count = 0};
    frame_cut_list_add(&cuts, FRAME_STICK_PLUMB_CUT, origin, back, "cut at the post");
    frame_cut_list_add(&cuts, FRAME_STICK_LEVEL_CUT, top, up, "cut at the beam");
    frame_stick_in facts;
    frame_stick_in_init(&facts);
    facts.name = in.name ? in.name : "brace";
    facts.thickness_in = in.thickness_in;
    facts.depth_in = in.depth_in;
    facts.start_x_in = -spare * u[0];
    facts.start_z_in = -spare * u[1];
    facts.end_x_in = in.run_in + spare * u[0];
    facts.end_y_in = 0;
    facts.end_z_in = in.rise_in + spare * u[1];
    facts.axis_at = FRAME_STICK_AXIS_BOTTOM;
    facts.planes = cuts.planes;
    facts.plane_count = cuts.count;
    return frame_stick_new(&facts, stick);
}

FRAME_DRAW_STICK(brace);
