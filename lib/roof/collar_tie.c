/* A collar tie, or a raised tie: level between a pair of rafters, its ends cut to the slope. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char triangle[] = "right triangle";
static const char thrust_rule[] = "statics of a tie raised above the plate, IRC R802.5.2.2 (from memory)";

static frame_status refuse(const frame_collar_tie_in *in, double top) {
    if (in->height_in < in->height_above_plate_in - 1e-9)
        return frame_fail_number(FRAME_IMPOSSIBLE, "height_in", in->height_in,
                                 "at least the height above plate: lower down the tie would reach out past the walls");
    if (top > 0) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "height_in", in->height_in,
                             "less: the roof leaves the tie no upper edge");
}

static void judge(const frame_collar_tie_in *in, double share, frame_collar_tie_out *out) {
    out->cautions = 0;
    if (share > 2.0 / 3)
        out->cautions |= FRAME_BIT(FRAME_COLLAR_TIE_CAUTION_NO_TIE);
    else if (share > 0)
        out->cautions |= FRAME_BIT(FRAME_COLLAR_TIE_CAUTION_RAISED);
    if (in->slope > 1.5) out->cautions |= FRAME_BIT(FRAME_COLLAR_TIE_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_COLLAR_TIE_UNCHECKED_STRENGTH);
    out->known = FRAME_KNOWN_MEMORY;
}

static frame_status compute(const frame_collar_tie_in *in, frame_collar_tie_out *out, frame_working *w) {
    FRAME_GIVEN(w, run, in->run_in, "in", "run of the rafters");
    FRAME_GIVEN(w, m, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, HAP, in->height_above_plate_in, "in", "height above plate of the roof plane");
    FRAME_GIVEN(w, z, in->height_in, "in", "height of the tie's lower edge above the plates");
    FRAME_GIVEN(w, d, in->depth_in, "in", "depth of the tie");
    FRAME_STEP(w, length, 2 * (run - (z - HAP) / m), "in", "along its lower edge", triangle);
    FRAME_STEP(w, top, length - 2 * d / m, "in", "along its upper edge", triangle);
    FRAME_STEP(w, theta, 90 - atan(m) / FRAME_DEG, "deg", "mitre of its ends, from square", triangle);
    const frame_status status = refuse(in, top);
    if (status) return status;
    FRAME_STEP(w, H_R, HAP + m * run, "in", "height of the ridge above the plates", triangle);
    FRAME_STEP(w, share, z / H_R, "", "height of the tie over that of the ridge", triangle);
    out->length_in = length;
    out->top_length_in = top;
    out->mitre_deg = theta;
    out->height_share = share;
    if (share <= 2.0 / 3) {
        FRAME_STEP(w, factor, 1 / (1 - share), "", "what the thrust is multiplied by", thrust_rule);
        out->thrust_factor = factor;
    }
    judge(in, share, out);
    return FRAME_OK;
}

FRAME_IMPLEMENT(collar_tie, compute);

frame_status frame_collar_tie_stick(const frame_collar_tie_in *given, frame_stick **stick) {
    frame_collar_tie_in in;
    frame_collar_tie_out out;
    uint64_t assumed = 0;
    frame_status status = frame_collar_tie_in_read(given, &in, &assumed);
    if (!status) status = frame_collar_tie(given, &out, NULL);
    if (status) return status;
    const double left[3] = {0, 0, in.height_above_plate_in}, right[3] = {2 * in.run_in, 0, in.height_above_plate_in};
    const double over_left[3] = {-in.slope, 0, 1}, over_right[3] = {in.slope, 0, 1};
    frame_cut_list cuts = {.count = 0};
    frame_cut_list_add(&cuts, FRAME_STICK_MITRE_CUT, left, over_left, "cut to the slope");
    frame_cut_list_add(&cuts, FRAME_STICK_MITRE_CUT, right, over_right, "cut to the slope");
    frame_stick_in facts;
    frame_stick_in_init(&facts);
    facts.name = in.name ? in.name : "collar tie";
    facts.thickness_in = in.thickness_in;
    facts.depth_in = in.depth_in;
    facts.start_x_in = in.run_in - out.length_in / 2;
    facts.end_x_in = in.run_in + out.length_in / 2;
    facts.end_y_in = 0;
    facts.start_z_in = facts.end_z_in = in.height_in;
    facts.axis_at = FRAME_STICK_AXIS_BOTTOM;
    facts.planes = cuts.planes;
    facts.plane_count = cuts.count;
    return frame_stick_new(&facts, stick);
}

frame_status frame_collar_tie_drawing(const frame_collar_tie_in *in, frame_drawing **drawing) {
    frame_stick *stick;
    frame_status status = frame_collar_tie_stick(in, &stick);
    if (status) return status;
    status = frame_stick_drawing(stick, drawing);
    frame_stick_free(stick);
    return status;
}
