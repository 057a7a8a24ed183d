/* A ridge ripped to the roof planes: along x, side a at -y, the crest in the middle of its top. */
#include <math.h>

#include "base/error.h"
#include "material/lumber.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char triangle[] = "right triangle";

static frame_status take_section(frame_ridge_rip_in *in, frame_known *known) {
    *known = FRAME_KNOWN_USER;
    if (in->size != FRAME_NOT_GIVEN_INT) {
        double thickness, depth;
        const frame_status status = frame_size_dressed(in->size, 0, &thickness, &depth);
        if (status) return status;
        if (in->depth_in != FRAME_NOT_GIVEN && fabs(in->depth_in - depth) > 1e-9)
            return frame_fail_number(FRAME_CONFLICT, "depth_in", in->depth_in,
                                     "the depth of the size, or size left out");
        in->depth_in = depth;
        if (in->thickness_in == FRAME_NOT_GIVEN) in->thickness_in = thickness;
        *known = FRAME_KNOWN_READ; /* PS 20 */
    }
    if (in->thickness_in == FRAME_NOT_GIVEN) in->thickness_in = 1.5;
    if (in->slope_b == FRAME_NOT_GIVEN) in->slope_b = in->slope_a;
    if (in->depth_in != FRAME_NOT_GIVEN && in->depth_in <= in->thickness_in / 2 * fmax(in->slope_a, in->slope_b))
        return frame_fail_number(FRAME_IMPOSSIBLE, "depth_in", in->depth_in, "more: a rip would take the whole depth");
    return FRAME_OK;
}

static void find_depths(const frame_ridge_rip_in *in, double m_a_of, double m_b_of, frame_ridge_rip_out *out,
                        frame_working *w) {
    if (in->rafter_depth_in == FRAME_NOT_GIVEN) return;
    FRAME_GIVEN(w, m_a, m_a_of, "", "slope on side a");
    FRAME_GIVEN(w, m_b, m_b_of, "", "slope on side b");
    FRAME_GIVEN(w, t, in->thickness_in, "in", "thickness");
    FRAME_GIVEN(w, d_r, in->rafter_depth_in, "in", "depth of the rafters");
    FRAME_STEP(w, cut_a, t / 2 * m_a + d_r * sqrt(1 + pow(m_a, 2)), "in",
               "from the crest to the lower end of side a's plumb cuts", triangle);
    FRAME_STEP(w, cut_b, t / 2 * m_b + d_r * sqrt(1 + pow(m_b, 2)), "in", "the same on side b", triangle);
    FRAME_STEP(w, d_least, fmax(cut_a, cut_b), "in", "depth that covers both", "IRC 2021 R802.3 (from memory)");
    out->least_depth_in = d_least;
}

static frame_status compute(const frame_ridge_rip_in *given, frame_ridge_rip_out *out, frame_working *w) {
    frame_ridge_rip_in in = *given;
    const frame_status status = take_section(&in, &out->known);
    if (status) return status;
    FRAME_GIVEN(w, m_a, in.slope_a, "", "slope on side a, rise over run");
    FRAME_GIVEN(w, m_b, in.slope_b, "", "slope on side b, rise over run");
    FRAME_GIVEN(w, t, in.thickness_in, "in", "thickness");
    FRAME_STEP(w, theta_a, atan(m_a) / FRAME_DEG, "deg", "tilt of the rip on side a", triangle);
    FRAME_STEP(w, theta_b, atan(m_b) / FRAME_DEG, "deg", "tilt of the rip on side b", triangle);
    FRAME_STEP(w, fall_a, t / 2 * m_a, "in", "fall from the crest to the face on side a", triangle);
    FRAME_STEP(w, fall_b, t / 2 * m_b, "in", "fall from the crest to the face on side b", triangle);
    FRAME_STEP(w, drop, fmax(fall_a, fall_b), "in", "drop of a ridge left square", "common practice");
    FRAME_STEP(w, planes, 180 - theta_a - theta_b, "deg", "angle between the roof planes", triangle);
    find_depths(&in, m_a, m_b, out, w);
    out->bevel_a_deg = theta_a, out->bevel_b_deg = theta_b;
    out->fall_a_in = fall_a, out->fall_b_in = fall_b;
    out->drop_in = drop;
    out->planes_deg = planes;
    out->crest_to_bottom_in = in.depth_in;
    out->cautions = FRAME_BIT(FRAME_RIDGE_RIP_CAUTION_RIPPED);
    if (in.rafter_depth_in != FRAME_NOT_GIVEN && in.depth_in != FRAME_NOT_GIVEN &&
        in.depth_in < out->least_depth_in - 1e-9)
        out->cautions |= FRAME_BIT(FRAME_RIDGE_RIP_CAUTION_SHALLOW);
    if (m_a > 1.5 || m_b > 1.5) out->cautions |= FRAME_BIT(FRAME_RIDGE_RIP_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_RIDGE_RIP_UNCHECKED_STRENGTH);
    if (in.size != FRAME_NOT_GIVEN_INT) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_RIDGE_RIP_IN_THICKNESS_IN);
    return FRAME_OK;
}

FRAME_IMPLEMENT(ridge_rip, compute);

frame_status frame_ridge_rip_stick(const frame_ridge_rip_in *given, frame_stick **stick) {
    frame_ridge_rip_in in;
    frame_known known;
    uint64_t assumed = 0;
    frame_status status = frame_ridge_rip_in_read(given, &in, &assumed);
    if (!status) status = take_section(&in, &known);
    if (status) return status;
    if (in.depth_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "depth_in", "", "depth_in or size",
                          "depth_in: not given; depth_in or size is required");
    const double crest[3] = {0, 0, 0}, to_a[3] = {0, -in.slope_a, 1}, to_b[3] = {0, in.slope_b, 1};
    frame_cut_list cuts = {.count = 0};
    frame_cut_list_add(&cuts, FRAME_STICK_TAPER, crest, to_a, "rip, side a");
    frame_cut_list_add(&cuts, FRAME_STICK_TAPER, crest, to_b, "rip, side b");
    const frame_cut_list_body body = {.name = "ridge",
                                      .thickness = in.thickness_in,
                                      .depth = in.depth_in,
                                      .to = {in.length_in, 0, 0},
                                      .axis_at = FRAME_STICK_AXIS_TOP};
    return frame_cut_list_stick(&cuts, &body, stick);
}

FRAME_DRAW_STICK(ridge_rip);
