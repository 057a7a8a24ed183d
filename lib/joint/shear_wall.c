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

static frame_status all_or_none(const frame_shear_wall_in *in, int *all) {
    static const char *const names[] = {"stiffness_kip_per_in", "end_area_in2", "end_modulus_psi", "hold_down_give_in"};
    const double fields[] = {in->stiffness_kip_per_in, in->end_area_in2, in->end_modulus_psi, in->hold_down_give_in};
    int given = 0, missing = 0;
    for (int i = 0; i < 4; i++) {
        if (fields[i] != FRAME_NOT_GIVEN)
            given++;
        else
            missing = i;
    }
    *all = given == 4;
    if (!given || *all) return FRAME_OK;
    return frame_fail(FRAME_REQUIRED, names[missing], "", "a figure beside the others of the deflection",
                      "%s: not given; the deflection needs it beside the others", names[missing]);
}

/* Bending of the ends, shear and nails of the panels, give of the hold-down. */
static void deflection(const frame_shear_wall_in *in, double counted, frame_shear_wall_out *out, frame_working *w) {
    const double shear = in->demand_lb != FRAME_NOT_GIVEN ? in->demand_lb : out->capacity_lb;
    FRAME_HEADING(w, "Deflection");
    FRAME_TABLE(w, v_wall, 12 * shear / (out->opening_factor * counted), "plf", "unit shear in the wall", "above");
    FRAME_GIVEN(w, h_ft, in->height_in / 12, "ft", "height");
    FRAME_GIVEN(w, b_ft, counted / 12, "ft", "length counted");
    FRAME_GIVEN(w, E, in->end_modulus_psi, "psi", "modulus of the end post");
    FRAME_GIVEN(w, A, in->end_area_in2, "in2", "its cross-section");
    FRAME_GIVEN(w, G_a, in->stiffness_kip_per_in, "kip/in", "apparent shear stiffness");
    FRAME_GIVEN(w, Delta_a, in->hold_down_give_in, "in", "give of the hold-down");
    FRAME_STEP(w, delta,
               8 * v_wall * pow(h_ft, 3) / (E * A * b_ft) + v_wall * h_ft / (1000 * G_a) + h_ft * Delta_a / b_ft, "in",
               "movement of the top", "SDPWS equation 4.3-1, from memory");
    out->deflection_in = delta;
    out->not_checked &= ~FRAME_BIT(FRAME_FASTENING_UNCHECKED_DEFLECTION);
}

static frame_status compute(const frame_shear_wall_in *in, frame_shear_wall_out *out, frame_working *w) {
    int left_out = 0, narrow = 0, stiff = 0;
    double counted = 0;
    frame_status status = sensible(in);
    if (!status) status = all_or_none(in, &stiff);
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
    if (stiff && (in->perforated || in->segment_count == 1)) deflection(in, counted, out, w);
    return FRAME_OK;
}

FRAME_IMPLEMENT(shear_wall, compute);
