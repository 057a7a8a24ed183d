/* Where the point of a driven fastener ends up. */
#include "base/error.h"
#include "joint/reach.h"
#include "working/record.h"

#define LENGTHS "NDS 2018 12.3.5"

frame_status frame_length_needed(const char *field, const char *why) {
    return frame_fail(FRAME_REQUIRED, field, "", "a length in inches", "%s: not given; %s", field, why);
}

/* The member that holds the point: the main one in single shear, the second side member in double shear. */
double frame_last_thickness(const frame_dowel_lateral_in *in) {
    if (in->shear_planes == 1) return in->main_thickness_in;
    return in->second_side_thickness_in != FRAME_NOT_GIVEN ? in->second_side_thickness_in : in->side_thickness_in;
}

double frame_driven_length(const frame_dowel_lateral_in *in, const frame_fastener *fastener) {
    return in->length_in != FRAME_NOT_GIVEN ? in->length_in : fastener->length_in;
}

/* A drift pin is blunt. */
static double tip_of(const frame_dowel_lateral_in *in, const frame_fastener *fastener) {
    if (in->kind == FRAME_DOWEL_DRIFT_PIN) return 0;
    if (in->tip_in != FRAME_NOT_GIVEN) return in->tip_in;
    return fastener->tip_in != FRAME_NOT_GIVEN ? fastener->tip_in : 2 * fastener->nominal_in;
}

/* The length past the last shear plane, from the length of the fastener and what lies before. */
static double length_past(const frame_dowel_lateral_in *in, double length_in, double t_s, frame_working *w) {
    FRAME_TABLE(w, L, length_in, "in", "length under the head",
                in->length_in != FRAME_NOT_GIVEN ? "given" : "NDS 2018 appendix L");
    FRAME_GIVEN(w, g, in->gap_in, "in", "gap at each shear plane");
    if (in->toe_nail) {
        FRAME_STEP(w, p_past, L * cos(30 * FRAME_DEG) - t_s - g, "in",
                   "length past the shear plane, driven at 30 degrees", "NDS 2018 12.1.6, from memory");
        return p_past;
    }
    if (in->shear_planes == 2) {
        FRAME_GIVEN(w, t_m, in->main_thickness_in, "in", "thickness of the main member");
        FRAME_STEP(w, p_past, L - t_s - t_m - 2 * g, "in", "length past the second shear plane", LENGTHS);
        return p_past;
    }
    FRAME_STEP(w, p_past, L - t_s - g, "in", "length past the shear plane", LENGTHS);
    return p_past;
}

static double depth_given(double given, const char *meaning, frame_working *w) {
    FRAME_GIVEN(w, p_past, given, "in", meaning);
    return p_past;
}

/* As far as the member is thick; last not given: thick enough. */
static double within(double p_past, double last, frame_working *w) {
    if (last == FRAME_NOT_GIVEN) {
        FRAME_STEP(w, p_in, p_past, "in", "length in the member at the point", LENGTHS);
        return p_in;
    }
    FRAME_GIVEN(w, t_p, last, "in", "thickness of the member at the point");
    FRAME_STEP(w, p_in, fmin(p_past, t_p), "in", "length in the member at the point", LENGTHS);
    return p_in;
}

/* The penetration that the least and the full depth are measured by. */
static double penetration(int lag, double p_in, double E, frame_working *w) {
    if (lag) {
        FRAME_STEP(w, p, p_in - E, "in", "penetration, without the tip", "NDS 2018 12.1.4");
        return p;
    }
    FRAME_STEP(w, p, p_in, "in", "penetration, with the tip", "NDS 2018 12.1.5 and 12.1.6");
    return p;
}

/* Where the point ends up. */
frame_status frame_find_point(const frame_dowel_lateral_in *in, const frame_fastener *fastener, double t_s,
                              frame_point *found, frame_working *w) {
    const double length = frame_driven_length(in, fastener), last = frame_last_thickness(in);
    const int lag = in->kind == FRAME_DOWEL_LAG_SCREW;
    double past, tip = tip_of(in, fastener);
    if (in->penetration_in != FRAME_NOT_GIVEN) {
        past = depth_given(in->penetration_in, lag ? "penetration given, without the tip" : "penetration given", w);
        if (lag) tip = 0;
    } else if (length != FRAME_NOT_GIVEN) {
        past = length_past(in, length, t_s, w);
    } else if (last != FRAME_NOT_GIVEN) {
        past = depth_given(last, "through the member at the point", w);
        tip = 0;
    } else {
        return frame_length_needed("penetration_in",
                                   "give it, length_in, or main_thickness_in for a fastener that goes through");
    }
    const double p_in = within(past, last, w);
    found->out = past - p_in;
    FRAME_GIVEN(w, E, fmax(0, tip - found->out), "in", "tapered tip within that member");
    found->tip = E;
    found->penetration = penetration(lag, p_in, E, w);
    return FRAME_OK;
}
