/* A block between rafters over the plate: along x between them, the building line at y = 0, the building towards +y. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char triangle[] = "right triangle";

static frame_status refuse(const frame_eave_block_in *in) {
    if (in->spacing_in > in->rafter_thickness_in) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "spacing_in", in->spacing_in,
                             "more than the rafters' thickness: there is no room for a block");
}

static void find_depths(const frame_eave_block_in *in, frame_eave_block_out *out, frame_working *w) {
    FRAME_GIVEN(w, m, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, h, in->height_above_plate_in, "in", "height above plate");
    FRAME_GIVEN(w, t, in->thickness_in, "in", "thickness of the block");
    FRAME_STEP(w, theta, atan(m) / FRAME_DEG, "deg", "tilt of the rip", triangle);
    out->bevel_deg = theta;
    if (in->stands == FRAME_EAVE_BLOCK_PLUMB) {
        FRAME_CASE(w, "plumb", "its top is ripped to the slope", "common practice");
        FRAME_GIVEN(w, set_back, in->set_back_in, "in", "from the building line in to its outer face");
        FRAME_STEP(w, d_outer, h + m * set_back, "in", "depth of the outer face", triangle);
        FRAME_STEP(w, d_inner, d_outer + m * t, "in", "depth of the inner face", triangle);
        out->outer_depth_in = d_outer, out->inner_depth_in = d_inner;
    } else {
        FRAME_CASE(w, "square to the roof", "its bottom is ripped level", "common practice");
        FRAME_STEP(w, d_outer, h * cos(theta * FRAME_DEG), "in", "depth of the outer face", triangle);
        FRAME_STEP(w, d_inner, d_outer + m * t, "in", "depth of the inner face", triangle);
        out->outer_depth_in = d_outer, out->inner_depth_in = d_inner;
    }
}

static frame_status compute(const frame_eave_block_in *in, frame_eave_block_out *out, frame_working *w) {
    const frame_status status = refuse(in);
    if (status) return status;
    FRAME_GIVEN(w, s, in->spacing_in, "in", "spacing of the rafters");
    FRAME_GIVEN(w, t_rafter, in->rafter_thickness_in, "in", "thickness of the rafters");
    FRAME_STEP(w, length, s - t_rafter, "in", "between the rafters", "common practice");
    out->length_in = length;
    find_depths(in, out, w);
    out->cautions = FRAME_BIT(FRAME_EAVE_BLOCK_CAUTION_AIR) | FRAME_BIT(FRAME_EAVE_BLOCK_CAUTION_RIPPED);
    if (in->slope > 1.5) out->cautions |= FRAME_BIT(FRAME_EAVE_BLOCK_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_EAVE_BLOCK_UNCHECKED_LATERAL);
    out->known = FRAME_KNOWN_USER;
    return FRAME_OK;
}

FRAME_IMPLEMENT(eave_block, compute);

frame_status frame_eave_block_stick(const frame_eave_block_in *given, frame_stick **stick) {
    frame_eave_block_in in;
    uint64_t assumed = 0;
    frame_status status = frame_eave_block_in_read(given, &in, &assumed);
    if (!status) status = refuse(&in);
    if (status) return status;
    const int plumb = in.stands == FRAME_EAVE_BLOCK_PLUMB;
    const double m = in.slope, t = in.thickness_in, h = in.height_above_plate_in,
                 length = in.spacing_in - in.rafter_thickness_in;
    const double secant = sqrt(1 + m * m), outer = plumb ? h + m * in.set_back_in : h / secant, deep = outer + m * t;
    frame_cut_list cuts = {.count = 0};
    frame_cut_list_body body = {.name = "eave block", .thickness = t, .depth = deep};
    if (plumb) {
        const double roof[3] = {0, 0, h}, over[3] = {0, -m, 1};
        frame_cut_list_add(&cuts, FRAME_STICK_TAPER, roof, over, "top rip");
        body.axis_at = FRAME_STICK_AXIS_BOTTOM;
        body.from[1] = in.set_back_in + t / 2;
    } else {
        /* The middle of its top lies half a thickness up the slope from the point over the building line's corner. */
        const double plate[3] = {0, 0, 0}, under[3] = {0, 0, -1};
        frame_cut_list_add(&cuts, FRAME_STICK_TAPER, plate, under, "bottom rip");
        body.axis_at = FRAME_STICK_AXIS_TOP;
        body.from[1] = -outer * m / secant + t / 2 / secant;
        body.from[2] = outer / secant + t / 2 * m / secant;
        body.crown[1] = -m, body.crown[2] = 1;
    }
    body.to[0] = length, body.to[1] = body.from[1], body.to[2] = body.from[2];
    return frame_cut_list_stick(&cuts, &body, stick);
}
