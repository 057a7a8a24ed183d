/* Drifts: over a ridge, and against a step. ASCE 7, 7.6.1 and 7.7.1. */
#include "load/snow.h"

#define DRIFT_16 "ASCE 7-16 figure 7.6-1" FRAME_FROM_MEMORY
#define DRIFT_22 "ASCE 7-22 equation 7.6-1" FRAME_FROM_MEMORY

/* The figure's formula; snow from less than 20 ft counts as from 20 ft. */
frame_status frame_snow_drift(const frame_snow *snow, double length_ft, double *height, frame_working *record) {
    const double p_g = snow->p_g, gamma_s = snow->gamma_s;
    FRAME_GIVEN(record, l_0, length_ft, "ft", "length that the snow comes from");
    FRAME_STEP(record, l_u, fmax(20, l_0), "ft", "the same, at least 20 ft", DRIFT_16);
    if (snow->edition == FRAME_SNOW_ASCE_7_22) {
        if (!frame_snow_given(snow->W_2))
            return frame_snow_lacks("winter_wind",
                                    "W_2 of ASCE 7-22 figure 7.6-2, for the drift there is on this roof");
        FRAME_GIVEN(record, W_2, snow->W_2, "", "winter wind parameter");
        FRAME_STEP(record, h, 1.5 * sqrt(pow(p_g, 0.74) * pow(l_u, 0.7) * pow(W_2, 1.7) / gamma_s), "ft",
                   "height of the drift", DRIFT_22);
        *height = h;
    } else if (snow->edition == FRAME_SNOW_ASCE_7_16) {
        const double I_s = snow->I_s;
        FRAME_STEP(record, h, fmax(0, sqrt(I_s) * (0.43 * cbrt(l_u) * pow(p_g + 10, 0.25) - 1.5)), "ft",
                   "height of the drift", DRIFT_16);
        *height = h;
    } else {
        FRAME_STEP(record, h, fmax(0, 0.43 * cbrt(l_u) * pow(p_g + 10, 0.25) - 1.5), "ft", "height of the drift",
                   "ASCE 7-10 figure 7-9" FRAME_FROM_MEMORY);
        *height = h;
    }
    return FRAME_OK;
}

/* Narrow roofs of simple rafters: all the snow on one side. */
static void narrow(const frame_snow *snow, frame_roof_snow_out *out, frame_working *record) {
    const double I_s = snow->I_s, p_g = snow->p_g;
    FRAME_CASE(record, "W <= 20", "simple rafters from eave to ridge: all snow on one side, none on the other",
               "ASCE 7-16 7.6.1" FRAME_FROM_MEMORY);
    if (snow->edition == FRAME_SNOW_ASCE_7_22) {
        FRAME_STEP(record, p_lee, p_g, "psf", "leeward side, evenly", "ASCE 7-22 7.6.1" FRAME_FROM_MEMORY);
        out->leeward_psf = p_lee;
    } else {
        FRAME_STEP(record, p_lee, I_s * p_g, "psf", "leeward side, evenly", "ASCE 7-16 7.6.1" FRAME_FROM_MEMORY);
        out->leeward_psf = p_lee;
    }
    out->windward_psf = 0;
    out->surcharge_psf = out->surcharge_width_in = out->ridge_drift_in = 0;
}

static void wide(const frame_snow *snow, double m, double height, frame_roof_snow_out *out, frame_working *record) {
    const double p_s = snow->p_s, gamma_s = snow->gamma_s, W = snow->W;
    FRAME_TABLE(record, h_d, height, "ft", "height of the drift over the ridge", "the formula above");
    FRAME_STEP(record, S, 1 / m, "", "run for a rise of one", "geometry");
    FRAME_STEP(record, p_wind, 0.3 * p_s, "psf", "windward side, evenly", "ASCE 7-16 7.6.1");
    FRAME_STEP(record, p_lee, p_s, "psf", "leeward side, evenly", "ASCE 7-16 7.6.1");
    FRAME_STEP(record, p_add, h_d * gamma_s / sqrt(S), "psf", "and on top of it from the ridge down",
               "ASCE 7-16 7.6.1");
    FRAME_STEP(record, w_add, fmin(W, 8 * h_d * sqrt(S) / 3), "ft", "so far from the ridge", "ASCE 7-16 7.6.1");
    out->windward_psf = p_wind;
    out->leeward_psf = p_lee;
    out->surcharge_psf = p_add;
    out->surcharge_width_in = w_add * 12;
    out->ridge_drift_in = h_d * 12;
}

/* From 1/2 in 12 to 7 in 12. */
frame_status frame_snow_unbalanced(const frame_roof_snow_in *in, const frame_snow *snow, frame_roof_snow_out *out,
                                   frame_working *record) {
    if (in->roof != FRAME_SNOW_GABLE && in->roof != FRAME_SNOW_HIP) return FRAME_OK;
    FRAME_HEADING(record, "Unbalanced snow");
    if (in->slope < 0.5 / 12 || in->slope > 7.0 / 12 || !(snow->p_g > 0)) {
        FRAME_CASE(record, "the slope is outside 1/2 in 12 to 7 in 12, or there is no snow", "no unbalanced load",
                   "ASCE 7-16 7.6.1" FRAME_FROM_MEMORY);
        return FRAME_OK;
    }
    if (snow->W <= 20 && in->simple_rafters) {
        narrow(snow, out, record);
        return FRAME_OK;
    }
    double height;
    FRAME_ENTER(record);
    const frame_status status = frame_snow_drift(snow, snow->W, &height, record);
    FRAME_LEAVE(record);
    if (!status) wide(snow, in->slope, height, out, record);
    return status;
}

static frame_status check_step(const frame_roof_snow_in *in) {
    if (!frame_snow_given(in->upper_length_in))
        return frame_snow_lacks("upper_length_in", "the length of the roof above, with step_height_in");
    if (!frame_snow_given(in->lower_length_in))
        return frame_snow_lacks("lower_length_in", "the length of this roof, with step_height_in");
    return FRAME_OK;
}

/* The two drifts in feet: from the roof above, and from this one. */
static frame_status both_drifts(const frame_roof_snow_in *in, const frame_snow *snow, double heights[2],
                                frame_working *record) {
    FRAME_HEADING(record, "Drift of snow from the roof above");
    FRAME_ENTER(record);
    frame_status status = frame_snow_drift(snow, in->upper_length_in / 12, &heights[0], record);
    FRAME_LEAVE(record);
    if (status) return status;
    FRAME_HEADING(record, "Drift of snow from this roof");
    FRAME_ENTER(record);
    status = frame_snow_drift(snow, in->lower_length_in / 12, &heights[1], record);
    FRAME_LEAVE(record);
    return status;
}

static void no_drift(frame_roof_snow_out *out) {
    out->drift_in = out->drift_psf = out->drift_width_in = 0;
}

static void governing(double h_lee, double h_wind, double h_c, double gamma_s, frame_roof_snow_out *out,
                      frame_working *record) {
    FRAME_STEP(record, h_d, fmax(h_lee, h_wind), "ft", "the larger", "ASCE 7-16 7.7.1" FRAME_FROM_MEMORY);
    FRAME_STEP(record, h_t, fmin(h_d, h_c), "ft", "no higher than the step", "ASCE 7-16 7.7.1" FRAME_FROM_MEMORY);
    FRAME_STEP(record, w_d, h_d <= h_c ? 4 * h_d : fmin(4 * pow(h_d, 2) / h_c, 8 * h_c), "ft", "width of the drift",
               "ASCE 7-16 7.7.1" FRAME_FROM_MEMORY);
    FRAME_STEP(record, p_d, h_t * gamma_s, "psf", "load of the drift at the step, on top of the balanced load",
               "ASCE 7-16 7.7.1" FRAME_FROM_MEMORY);
    out->drift_in = h_t * 12;
    out->drift_width_in = w_d * 12;
    out->drift_psf = p_d;
}

frame_status frame_snow_step(const frame_roof_snow_in *in, const frame_snow *snow, frame_roof_snow_out *out,
                             frame_working *record) {
    if (!frame_snow_given(in->step_height_in)) return FRAME_OK;
    frame_status status = check_step(in);
    double heights[2] = {0, 0};
    if (!status && snow->p_g > 0) status = both_drifts(in, snow, heights, record);
    if (status) return status;
    const double p_s = snow->p_s, gamma_s = snow->gamma_s;
    FRAME_HEADING(record, "Drift against the step");
    FRAME_GIVEN(record, h_0, in->step_height_in / 12, "ft", "height of the step");
    FRAME_STEP(record, h_b, p_s / gamma_s, "ft", "depth of the balanced snow", "ASCE 7-16 7.7.1" FRAME_FROM_MEMORY);
    FRAME_STEP(record, h_c, h_0 - h_b, "ft", "clear height above it", "ASCE 7-16 7.7.1" FRAME_FROM_MEMORY);
    FRAME_TABLE(record, h_lee, heights[0], "ft", "drift from the roof above", "the formula above");
    FRAME_TABLE(record, h_w, heights[1], "ft", "drift from this roof by the formula", "the formula above");
    FRAME_STEP(record, h_wind, 0.75 * h_w, "ft", "three quarters of it", "ASCE 7-16 7.7.1" FRAME_FROM_MEMORY);
    out->balanced_depth_in = h_b * 12;
    out->clear_height_in = h_c * 12;
    out->leeward_drift_in = h_lee * 12;
    out->windward_drift_in = h_wind * 12;
    if (!(snow->p_g > 0) || h_c < 0.2 * h_b) {
        FRAME_CASE(record, "the step is too low for a drift, or there is no snow", "no drift",
                   "ASCE 7-16 7.7.1" FRAME_FROM_MEMORY);
        no_drift(out);
        return FRAME_OK;
    }
    governing(h_lee, h_wind, h_c, gamma_s, out, record);
    return FRAME_OK;
}
