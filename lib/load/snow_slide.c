/* Snow that slides from a roof above, and ice at the eaves. ASCE 7, 7.9 and 7.4.5. */
#include "load/snow.h"

#define SLIDING "ASCE 7-16 7.9" FRAME_FROM_MEMORY
#define EAVES "ASCE 7-16 7.4.5" FRAME_FROM_MEMORY

static frame_status check_roof_above(const frame_roof_snow_in *in) {
    const int above = frame_snow_given(in->upper_slope);
    if (!above && (frame_snow_given(in->upper_run_in) || frame_snow_given(in->upper_flat_psf) ||
                   frame_snow_given(in->sliding_width_in) || in->upper_slippery != FRAME_NOT_GIVEN_INT))
        return frame_snow_lacks("upper_slope", "the slope of the roof above, with its other facts");
    if (above && !frame_snow_given(in->upper_run_in))
        return frame_snow_lacks("upper_run_in", "the level distance from eave to ridge of the roof above");
    if (above && in->upper_slippery == FRAME_NOT_GIVEN_INT)
        return frame_snow_lacks("upper_slippery", "whether the roof above is slippery");
    return FRAME_OK;
}

frame_status frame_snow_slide(const frame_roof_snow_in *in, const frame_snow *snow, frame_roof_snow_out *out,
                              frame_working *record) {
    const frame_status status = check_roof_above(in);
    if (status || !frame_snow_given(in->upper_slope)) return status;
    FRAME_HEADING(record, "Snow sliding from the roof above");
    if (in->upper_slope <= (in->upper_slippery ? 0.25 : 2.0) / 12) {
        FRAME_CASE(record, in->upper_slippery ? "its slope is at most 1/4 in 12" : "its slope is at most 2 in 12",
                   "no snow slides", SLIDING);
        out->sliding_plf = out->sliding_psf = out->sliding_strip_in = 0;
        return FRAME_OK;
    }
    const int own = frame_snow_given(in->upper_flat_psf);
    FRAME_GIVEN(record, p_fu, own ? in->upper_flat_psf : snow->p_f, "psf", "flat roof snow load of the roof above");
    FRAME_GIVEN(record, W_u, in->upper_run_in / 12, "ft", "its level distance from eave to ridge");
    FRAME_GIVEN(record, w_l, frame_snow_given(in->sliding_width_in) ? in->sliding_width_in / 12 : 15, "ft",
                "width of the roof below its eave");
    FRAME_STEP(record, w_s, fmin(15, w_l), "ft", "strip that it lies on", SLIDING);
    FRAME_STEP(record, p_sl, 0.4 * p_fu * W_u / 15, "psf", "load on the strip, on top of the balanced load", SLIDING);
    FRAME_STEP(record, q_sl, p_sl * w_s, "plf", "load on a foot of eave", SLIDING);
    out->sliding_psf = p_sl;
    out->sliding_plf = q_sl;
    out->sliding_strip_in = w_s * 12;
    return FRAME_OK;
}

void frame_snow_eaves(const frame_roof_snow_in *in, const frame_snow *snow, frame_roof_snow_out *out,
                      frame_working *record) {
    const double p_f = snow->p_f;
    if (!frame_snow_given(in->overhang_in)) return;
    FRAME_HEADING(record, "Ice at the eaves");
    if (in->insulated) {
        FRAME_CASE(record, "the roof is insulated", "no ice to count", EAVES);
        out->eaves_psf = out->eaves_width_in = 0;
        return;
    }
    FRAME_GIVEN(record, o, in->overhang_in / 12, "ft", "level overhang");
    FRAME_STEP(record, w_e, fmin(o, 5), "ft", "so far up from the eave", EAVES);
    FRAME_STEP(record, p_e, 2 * p_f, "psf", "ice and snow there, alone with the dead load", EAVES);
    out->eaves_psf = p_e;
    out->eaves_width_in = w_e * 12;
}
