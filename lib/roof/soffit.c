/* A level soffit: the building line is x = 0, the plate's top z = 0, the roof plane z = height above plate + slope x.
 */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char triangle[] = "right triangle";
static const char trade[] = "common practice";

/* Where things lie: the tail's plumb height, and what of a lookout's depth is left at the fascia. */
typedef struct soffit_shape {
    double tail, underside, length, left;
} soffit_shape;

static frame_status find_shape(const frame_soffit_in *in, soffit_shape *shape) {
    const double whole = in->rafter_depth_in * sqrt(1 + in->slope * in->slope);
    shape->tail = in->fascia_depth_in == FRAME_NOT_GIVEN ? whole : in->fascia_depth_in;
    shape->underside = in->height_above_plate_in - in->slope * in->overhang_in - shape->tail;
    shape->length = in->overhang_in - in->wall_cladding_in - in->nailer_thickness_in;
    shape->left = fmin(in->depth_in, shape->tail);
    if (shape->tail > whole + 1e-9)
        return frame_fail_number(FRAME_IMPOSSIBLE, "fascia_depth_in", in->fascia_depth_in,
                                 "at most the rafter's plumb depth");
    if (!(shape->length > 0))
        return frame_fail_number(FRAME_IMPOSSIBLE, "overhang_in", in->overhang_in,
                                 "more than the cladding and the nailer: nothing is left for a lookout");
    return FRAME_OK;
}

static void find_clip(const frame_soffit_in *in, const soffit_shape *shape, frame_soffit_out *out, frame_working *w) {
    out->clip_in = 0;
    out->clip_height_in = shape->left;
    if (in->depth_in <= shape->tail) return;
    FRAME_HEADING(w, "Clip");
    FRAME_GIVEN(w, d, in->depth_in, "in", "depth of the lookout");
    FRAME_GIVEN(w, tail, shape->tail, "in", "plumb height of the tail");
    FRAME_GIVEN(w, m, in->slope, "", "slope");
    FRAME_STEP(w, clip, (d - tail) / m, "in", "what the clip takes off the upper edge", triangle);
    FRAME_STEP(w, theta_clip, 90 - atan(m) / FRAME_DEG, "deg", "its angle from square", triangle);
    out->clip_in = fmin(clip, shape->length);
    out->clip_mitre_deg = theta_clip;
    out->cautions |= FRAME_BIT(FRAME_SOFFIT_CAUTION_CLIPPED);
    if (tail < d / 2) out->cautions |= FRAME_BIT(FRAME_SOFFIT_CAUTION_SHALLOW);
}

static frame_status compute(const frame_soffit_in *in, frame_soffit_out *out, frame_working *w) {
    soffit_shape shape;
    const frame_status status = find_shape(in, &shape);
    if (status) return status;
    FRAME_GIVEN(w, m, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, overhang, in->overhang_in, "in", "overhang, level");
    FRAME_GIVEN(w, h, in->height_above_plate_in, "in", "height above plate");
    FRAME_GIVEN(w, tail, shape.tail, "in", "plumb height of the tail's cut");
    FRAME_GIVEN(w, cladding, in->wall_cladding_in, "in", "cladding behind the nailer");
    FRAME_GIVEN(w, nailer, in->nailer_thickness_in, "in", "thickness of the nailer");
    FRAME_GIVEN(w, d_nailer, in->nailer_depth_in, "in", "depth of the nailer");
    FRAME_STEP(w, soffit_drop, tail + m * overhang - h, "in", "underside below the plate's top", triangle);
    FRAME_STEP(w, nailer_top, d_nailer - soffit_drop, "in", "the nailer's top over the plate's top", trade);
    FRAME_STEP(w, width, overhang - cladding, "in", "back of the fascia to the cladding", trade);
    FRAME_STEP(w, length, width - nailer, "in", "length of a lookout", trade);
    out->lookout_length_in = length;
    out->soffit_width_in = width;
    out->soffit_drop_in = soffit_drop;
    out->nailer_top_in = nailer_top;
    out->tail_height_in = tail;
    out->cautions = soffit_drop > 0 ? FRAME_BIT(FRAME_SOFFIT_CAUTION_BELOW) : 0;
    if (m > 1.5) out->cautions |= FRAME_BIT(FRAME_SOFFIT_CAUTION_SLOPE);
    find_clip(in, &shape, out, w);
    out->not_checked = FRAME_BIT(FRAME_SOFFIT_UNCHECKED_VENT);
    out->known = FRAME_KNOWN_USER;
    return FRAME_OK;
}

FRAME_IMPLEMENT(soffit, compute);

frame_status frame_soffit_stick(const frame_soffit_in *given, frame_stick **stick) {
    frame_soffit_in in;
    soffit_shape shape;
    uint64_t assumed = 0;
    frame_status status = frame_soffit_in_read(given, &in, &assumed);
    if (!status) status = find_shape(&in, &shape);
    if (status) return status;
    const double eave = -in.overhang_in;
    const double roof[3] = {eave, 0, shape.underside + shape.tail}, over[3] = {-in.slope, 0, 1};
    frame_cut_list cuts = {.count = 0};
    if (in.depth_in > shape.tail) frame_cut_list_add(&cuts, FRAME_STICK_TAPER, roof, over, "clip to the slope");
    const frame_cut_list_body body = {.name = "soffit lookout",
                                      .thickness = in.thickness_in,
                                      .depth = in.depth_in,
                                      .from = {eave, 0, shape.underside},
                                      .to = {eave + shape.length, 0, shape.underside},
                                      .axis_at = FRAME_STICK_AXIS_BOTTOM};
    return frame_cut_list_stick(&cuts, &body, stick);
}

FRAME_DRAW_STICK(soffit);
