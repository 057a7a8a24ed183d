/* Snow on a roof from snow on the ground. */
#include "load/snow.h"
#include "load_facts.h"
#include "working/calculation.h"

/* A load at strength level is 0.7 of itself in the combinations for allowable stress design. */
#define STRENGTH_TO_ASD 0.7

static frame_status check_roof(const frame_roof_snow_in *in) {
    if (in->roof == FRAME_SNOW_FLAT && in->slope > 1.0 / 12)
        return frame_snow_conflict("slope", "more than 1 in 12 for a flat roof", "at most 1 in 12, or another roof");
    if ((frame_snow_given(in->upper_length_in) || frame_snow_given(in->lower_length_in)) &&
        !frame_snow_given(in->step_height_in))
        return frame_snow_lacks("step_height_in", "the height of the step, with the lengths of its roofs");
    return FRAME_OK;
}

static void give_factors(const frame_snow *snow, frame_roof_snow_out *out, frame_working *record) {
    const double p_u = out->uniform_psf;
    const int strength = snow->edition == FRAME_SNOW_ASCE_7_22;
    FRAME_HEADING(record, "For the combinations");
    FRAME_TABLE(record, p_even, p_u, "psf", "the larger of balanced load with rain, and minimum load", "above");
    FRAME_TABLE(record, k_S, strength ? STRENGTH_TO_ASD : 1, "", "factor of snow in allowable stress design",
                strength ? "ASCE 7-22 2.4.1" FRAME_FROM_MEMORY : "ASCE 7-16 2.4.1");
    FRAME_STEP(record, S_snow, k_S * p_even, "psf", "snow as the combinations take it", "ASCE 7-16 2.4.1");
    out->edition = snow->edition;
    out->exposure_factor = snow->C_e;
    out->thermal_factor = snow->C_t;
    out->importance_factor = snow->I_s;
    out->asd_factor = k_S;
    out->snow_psf = S_snow;
}

static double or_zero(double value) {
    return frame_snow_given(value) ? value : 0;
}

static double greatest(const frame_roof_snow_out *out) {
    double most = fmax(out->uniform_psf, or_zero(out->leeward_psf) + or_zero(out->surcharge_psf));
    most = fmax(most, out->balanced_psf + or_zero(out->drift_psf));
    most = fmax(most, out->balanced_psf + or_zero(out->sliding_psf));
    return fmax(most, or_zero(out->eaves_psf));
}

static void remark(const frame_roof_snow_in *in, const frame_snow *snow, frame_roof_snow_out *out) {
    out->known = FRAME_KNOWN_MEMORY; /* slope factor and density at the least */
    out->cautions =
        FRAME_BIT(FRAME_SNOW_CAUTION_SITE) | FRAME_BIT(FRAME_SNOW_CAUTION_MEMORY) | FRAME_BIT(FRAME_SNOW_CAUTION_CASES);
    if (snow->edition == FRAME_SNOW_ASCE_7_22) out->cautions |= FRAME_BIT(FRAME_SNOW_CAUTION_STRENGTH);
    if (in->slippery) out->cautions |= FRAME_BIT(FRAME_SNOW_CAUTION_SLIPPERY);
    if (or_zero(out->eaves_psf) > 0) out->cautions |= FRAME_BIT(FRAME_SNOW_CAUTION_EAVES);
    out->not_checked = FRAME_BIT(FRAME_SNOW_UNCHECKED_PARTIAL) | FRAME_BIT(FRAME_SNOW_UNCHECKED_VALLEYS) |
                       FRAME_BIT(FRAME_SNOW_UNCHECKED_PROJECTIONS) | FRAME_BIT(FRAME_SNOW_UNCHECKED_NEIGHBOURS) |
                       FRAME_BIT(FRAME_SNOW_UNCHECKED_PONDING);
    if (!frame_snow_given(in->step_height_in)) out->not_checked |= FRAME_BIT(FRAME_SNOW_UNCHECKED_DRIFT);
    if (!frame_snow_given(in->upper_slope)) out->not_checked |= FRAME_BIT(FRAME_SNOW_UNCHECKED_SLIDING);
    if (!frame_snow_given(in->overhang_in)) out->not_checked |= FRAME_BIT(FRAME_SNOW_UNCHECKED_EAVES);
}

static frame_status compute(const frame_roof_snow_in *in, frame_roof_snow_out *out, frame_working *record) {
    frame_snow snow = {.known = FRAME_KNOWN_READ, .W_2 = in->winter_wind};
    frame_status status = check_roof(in);
    if (!status) status = frame_snow_factors(in, &snow, record);
    if (status) return status;
    frame_snow_uniform(in, &snow, out, record);
    status = frame_snow_unbalanced(in, &snow, out, record);
    if (!status) status = frame_snow_step(in, &snow, out, record);
    if (!status) status = frame_snow_slide(in, &snow, out, record);
    if (status) return status;
    frame_snow_eaves(in, &snow, out, record);
    give_factors(&snow, out, record);
    out->greatest_psf = greatest(out);
    remark(in, &snow, out);
    return FRAME_OK;
}
FRAME_IMPLEMENT(roof_snow, compute);
