/* The loads that lie evenly on a roof: flat, sloped, minimum, rain on snow. ASCE 7, 7.3, 7.4, 7.10. */
#include "load/snow.h"
#include "table_snow_slope_curves.h"

enum { CURVES_OF_A_ROOF = 2 };

/* Warm, cool or cold roof; a slippery warm roof needs its insulation. */
static const frame_snow_slope_curves_row *curve_of(const frame_roof_snow_in *in, double C_t) {
    const int roof = C_t < 1.1 ? 0 : C_t < 1.2 ? 1 : 2;
    const int slips = in->slippery && (roof > 0 || in->insulated);
    return &frame_snow_slope_curves_table[roof * CURVES_OF_A_ROOF + slips];
}

static double sloped(const frame_roof_snow_in *in, frame_snow *snow, double p_f, frame_roof_snow_out *out,
                     frame_working *record) {
    const frame_snow_slope_curves_row *curve = curve_of(in, snow->C_t);
    FRAME_GIVEN(record, m, in->slope, "", "slope, rise over run");
    FRAME_STEP(record, theta, atan(m) / FRAME_DEG, "deg", "slope", "geometry");
    FRAME_TABLE(record, theta_1, curve->full_to_deg, "deg", "slope up to which all snow stays", curve->source);
    FRAME_STEP(record, C_s, fmax(0, fmin(1, 1 - (theta - theta_1) / (70 - theta_1))), "", "slope factor",
               "ASCE 7-16 figure 7.4-1" FRAME_FROM_MEMORY);
    FRAME_STEP(record, p_s, C_s * p_f, "psf", "sloped roof snow load, the balanced load", "ASCE 7-16 7.4");
    snow->theta = theta;
    out->roof_slope_deg = theta;
    out->roof_slope_factor = C_s;
    return p_s;
}

/* Flat and sloped roof load. */
static void balanced(const frame_roof_snow_in *in, frame_snow *snow, frame_roof_snow_out *out, frame_working *record) {
    const double C_e = snow->C_e, C_t = snow->C_t, I_s = snow->I_s, p_g = snow->p_g;
    if (snow->edition == FRAME_SNOW_ASCE_7_22) {
        FRAME_STEP(record, p_f, 0.7 * C_e * C_t * p_g, "psf", "flat roof snow load", "ASCE 7-22 7.3" FRAME_FROM_MEMORY);
        snow->p_f = p_f;
    } else {
        FRAME_STEP(record, p_f, 0.7 * C_e * C_t * I_s * p_g, "psf", "flat roof snow load", "ASCE 7-16 equation 7.3-1");
        snow->p_f = p_f;
    }
    snow->p_s = sloped(in, snow, snow->p_f, out, record);
}

static double minimum(const frame_snow *snow, frame_working *record) {
    const double I_s = snow->I_s, p_g = snow->p_g, theta = snow->theta;
    if (!(theta < 15)) {
        FRAME_CASE(record, "theta >= 15", "no minimum load for steeper roofs", "ASCE 7-16 7.3.4" FRAME_FROM_MEMORY);
        return 0;
    }
    FRAME_CASE(record, "theta < 15", "a roof of low slope: the minimum load counts",
               "ASCE 7-16 7.3.4" FRAME_FROM_MEMORY);
    if (snow->edition == FRAME_SNOW_ASCE_7_22) {
        FRAME_TABLE(record, p_m_max, snow->p_m_max, "psf", "most that the minimum load is",
                    "ASCE 7-22 table 7.3-4" FRAME_FROM_MEMORY);
        FRAME_STEP(record, p_m, fmin(p_g, p_m_max), "psf", "minimum load", "ASCE 7-22 7.3.3" FRAME_FROM_MEMORY);
        return p_m;
    }
    FRAME_STEP(record, p_m, I_s * fmin(p_g, 20), "psf", "minimum load", "ASCE 7-16 7.3.4");
    return p_m;
}

/* Rain that falls on snow and drains slowly. */
static double rain(const frame_snow *snow, frame_working *record) {
    const int is_22 = snow->edition == FRAME_SNOW_ASCE_7_22;
    const double p_g = snow->p_g, W = snow->W, theta = snow->theta, most = is_22 ? snow->p_m_max : 20;
    if (!(p_g > 0 && p_g <= most && theta < W / 50)) return 0;
    FRAME_CASE(record, "theta < W / 50", "little ground snow and a low slope: rain on snow counts",
               "ASCE 7-16 7.10" FRAME_FROM_MEMORY);
    FRAME_TABLE(record, p_r, is_22 ? 8 : 5, "psf", "surcharge for rain on snow",
                is_22 ? "ASCE 7-22 7.10" FRAME_FROM_MEMORY : "ASCE 7-16 7.10" FRAME_FROM_MEMORY);
    return p_r;
}

void frame_snow_uniform(const frame_roof_snow_in *in, frame_snow *snow, frame_roof_snow_out *out,
                        frame_working *record) {
    FRAME_HEADING(record, "Balanced snow");
    FRAME_GIVEN(record, W, in->run_in / 12, "ft", "level distance from eave to ridge");
    snow->W = W;
    balanced(in, snow, out, record);
    out->minimum_psf = minimum(snow, record);
    out->rain_psf = rain(snow, record);
    out->uniform_psf = fmax(snow->p_s + out->rain_psf, out->minimum_psf);
    const double p_g = snow->p_g;
    FRAME_STEP(record, gamma_s, fmin(30, 0.13 * p_g + 14), "pcf", "density of snow",
               "ASCE 7-16 equation 7.7-1" FRAME_FROM_MEMORY);
    snow->gamma_s = gamma_s;
    out->flat_psf = snow->p_f;
    out->balanced_psf = snow->p_s;
    out->density_pcf = gamma_s;
}
