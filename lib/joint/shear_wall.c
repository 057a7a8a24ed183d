/* What a shear wall carries: by segments, or with openings by the perforated method. */
#include "base/number.h"
#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

#define PERFORATED "SDPWS 4.3.3.5"

static frame_status needs(const char *field, const char *valid) {
    return frame_fail(FRAME_REQUIRED, field, "", valid, "%s: not given; a perforated wall needs it", field);
}

static frame_status sensible(const frame_shear_wall_in *in) {
    double sum = 0;
    const int height = in->opening_height_in != FRAME_NOT_GIVEN, area = in->opening_area_in2 != FRAME_NOT_GIVEN;
    for (size_t i = 0; i < in->segment_count; i++) sum += in->segments_in[i];
    if (in->length_in != FRAME_NOT_GIVEN && sum > in->length_in * (1 + 1e-9))
        return frame_fail_number(FRAME_IMPOSSIBLE, "length_in", in->length_in, "at least the segments together");
    if (!in->perforated) return FRAME_OK;
    if (in->length_in == FRAME_NOT_GIVEN) return needs("length_in", ">0..2400 in");
    if (height == area)
        return frame_fail(
            height ? FRAME_CONFLICT : FRAME_REQUIRED, "opening_height_in", "", "opening_height_in or opening_area_in2",
            "opening_height_in: %s",
            height ? "opening_area_in2 is given too; give one" : "neither it nor opening_area_in2 is given");
    if (height && in->opening_height_in > in->height_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "opening_height_in", in->opening_height_in,
                                 "at most the wall's height");
    return FRAME_OK;
}

/* What a segment counts: past 2 to 1 only 2 b/h of itself, past the limit nothing. */
static double weighed(const frame_shear_wall_in *in, double b_in, int *left_out, frame_working *w) {
    FRAME_GIVEN(w, b, b_in, "in", "length of a segment");
    FRAME_GIVEN(w, h, in->height_in, "in", "height of the wall");
    const double limit = in->blocked ? 3.5 : 2;
    if (h > limit * b * (1 + 1e-9)) {
        FRAME_CASE(w, "too narrow for its height", "left out",
                   in->blocked ? "SDPWS table 4.3.4: 3.5 to 1" : "SDPWS table 4.3.4: 2 to 1 unblocked, from memory");
        (*left_out)++;
        return 0;
    }
    FRAME_STEP(w, b_eff, b * fmin(1, 2 * b / h), "in", "what it counts", "SDPWS 2015 4.3.3.4.1, 4.3.4, from memory");
    return b_eff;
}

static double opening_factor(const frame_shear_wall_in *in, double counted, frame_working *w) {
    FRAME_GIVEN(w, L_tot, in->length_in, "in", "length of the wall");
    FRAME_GIVEN(w, h, in->height_in, "in", "height of the wall");
    FRAME_GIVEN(w, L_i, counted, "in", "full-height lengths counted");
    if (in->opening_area_in2 != FRAME_NOT_GIVEN) {
        FRAME_GIVEN(w, A_o, in->opening_area_in2, "in2", "area of the openings");
        FRAME_STEP(w, r, 1 / (1 + A_o / (h * L_i)), "", "sheathing area ratio", PERFORATED);
        FRAME_STEP(w, C_o, fmin(1, r / (3 - 2 * r) * L_tot / L_i), "", "opening factor",
                   "SDPWS equation 4.3-5, from memory");
        return C_o;
    }
    FRAME_GIVEN(w, h_o, fmax(in->opening_height_in, in->height_in / 3), "in",
                "tallest opening, at least a third of the wall");
    FRAME_STEP(w, B, L_i / L_tot, "", "part of full height", "SDPWS table 4.3.3.5");
    FRAME_STEP(w, A, h_o / h, "", "height of openings over the wall's", "SDPWS table 4.3.3.5");
    FRAME_STEP(w, C_o, 1 / (B * (1 - 3 * A) + 3 * A), "", "opening factor", "SDPWS table 4.3.3.5 in closed form");
    return C_o;
}

static void forces(const frame_shear_wall_in *in, double counted, frame_shear_wall_out *out, frame_working *w) {
    const int asked = in->demand_lb != FRAME_NOT_GIVEN;
    FRAME_GIVEN(w, v, in->unit_plf, "plf", "design unit shear");
    FRAME_GIVEN(w, C_o, out->opening_factor, "", "opening factor");
    FRAME_GIVEN(w, L_i, counted, "in", "lengths counted");
    FRAME_GIVEN(w, h, in->height_in, "in", "height of the wall");
    FRAME_STEP(w, V_held, v * C_o * L_i / 12, "lb", "shear the wall carries", PERFORATED);
    FRAME_GIVEN(w, V, asked ? in->demand_lb : V_held, "lb", "shear in the wall, or again what it carries");
    FRAME_STEP(w, T, V * h / (C_o * L_i), "lb", "force in the hold-down at an end", "SDPWS 4.3.6.1");
    out->capacity_lb = V_held;
    out->hold_down_lb = T;
    if (in->perforated) {
        FRAME_STEP(w, t, 12 * V / (C_o * L_i), "plf", "uplift along the plate between hold-downs", "SDPWS 4.3.6.4.2.1");
        out->uplift_plf = t;
    }
    if (!asked) return;
    out->ratio = V / V_held;
    out->passes = frame_within(out->ratio);
}

static frame_status compute(const frame_shear_wall_in *in, frame_shear_wall_out *out, frame_working *w) {
    int left_out = 0, narrow = 0;
    double counted = 0;
    const frame_status status = sensible(in);
    if (status) return status;
    for (size_t i = 0; i < in->segment_count; i++) {
        const double one = weighed(in, in->segments_in[i], &left_out, w);
        narrow |= one < in->segments_in[i];
        counted += one;
    }
    if (counted <= 0)
        return frame_fail(FRAME_IMPOSSIBLE, "segments_in", "", "a segment at least as long as its height over 3.5",
                          "segments_in: every segment is too narrow for the wall's height; none counts");
    out->left_out = left_out;
    out->counted_in = counted;
    out->opening_factor = in->perforated ? opening_factor(in, counted, w) : 1;
    forces(in, counted, out, w);
    out->known = FRAME_KNOWN_MEMORY;
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_PANELS) | FRAME_BIT(FRAME_FASTENING_CAUTION_HOLD_DOWN) |
                    FRAME_BIT(FRAME_FASTENING_CAUTION_MEMORY);
    if (narrow) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_ASPECT);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_DEFLECTION) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_COLLECTOR) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_ANCHOR) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_SEISMIC);
    return FRAME_OK;
}

FRAME_IMPLEMENT(shear_wall, compute);
