/* From the reference value to the adjusted one: NDS 11.3 and 12.5. */
#include "joint/lateral_factors.h"

#include "base/error.h"
#include "joint/fastener.h"
#include "working/record.h"

double frame_connection_temperature(double temperature_f, int wet) {
    if (temperature_f <= 100) return 1;
    if (temperature_f <= 125) return wet ? 0.7 : 0.8;
    return wet ? 0.5 : 0.7;
}

frame_status frame_method_factors_of(frame_design_method method, double load_duration_factor, double time_effect_factor,
                                     frame_method_factors *factors) {
    const int timed = time_effect_factor != FRAME_NOT_GIVEN;
    if (method == FRAME_METHOD_ASD) {
        if (timed)
            return frame_fail_number(FRAME_CONFLICT, "time_effect_factor", time_effect_factor,
                                     "left out in ASD: lambda is for LRFD, where C_D is for ASD");
        *factors = (frame_method_factors){1, 1, 1};
        return FRAME_OK;
    }
    if (!timed)
        return frame_fail(FRAME_REQUIRED, "time_effect_factor", "", "0.6..1",
                          "time_effect_factor: not given; LRFD needs lambda (NDS table N3: 0.6 dead load alone, 0.7 "
                          "storage, 0.8 occupancy, snow and roof live, 1.0 wind and earthquake)");
    if (load_duration_factor != 1)
        return frame_fail_number(FRAME_CONFLICT, "load_duration_factor", load_duration_factor,
                                 "left out in LRFD: C_D is for ASD, where lambda is for LRFD");
    *factors = (frame_method_factors){3.32, 0.65, time_effect_factor};
    return FRAME_OK;
}

/* NDS table 11.3.3. Lumber that dries after the joint is made is held apart by fasteners across the grain. */
static double wet_factor(const frame_dowel_lateral_in *in, double nominal_in) {
    if (in->service == FRAME_SERVICE_WET) return 0.7;
    if (in->made == FRAME_SERVICE_DRY || nominal_in < 0.25 || in->shrinks_freely) return 1;
    return 0.4;
}

static frame_status only_nails(const frame_dowel_lateral_in *in) {
    if (!in->diaphragm || frame_dowel_is_nail(in->kind)) return FRAME_OK;
    return frame_fail(FRAME_CONFLICT, "diaphragm", "yes", "no", "diaphragm: C_di is for nails only (NDS 12.5.3)");
}

/* Z' by either method; out has the factors, recorded here. */
static double adjusted(const frame_dowel_lateral_in *in, const frame_dowel_lateral_out *out, frame_working *w) {
    const double Z = out->z_lb;
    FRAME_HEADING(w, "Adjustment");
    FRAME_TABLE(w, C_M, out->wet_factor, "", "wet service factor", "NDS 2018 table 11.3.3");
    FRAME_TABLE(w, C_t, out->temperature_factor, "", "temperature factor", "NDS 2018 table 11.3.4");
    FRAME_GIVEN(w, C_g, in->group_factor, "", "group action factor, NDS 11.3.6");
    FRAME_GIVEN(w, C_Delta, in->geometry_factor, "", "geometry factor, NDS 12.5.1");
    FRAME_TABLE(w, C_eg, out->end_grain_factor, "", "end grain factor", "NDS 2018 12.5.2");
    FRAME_TABLE(w, C_di, out->diaphragm_factor, "", "diaphragm factor", "NDS 2018 12.5.3");
    FRAME_TABLE(w, C_tn, out->toe_nail_factor, "", "toe-nail factor", "NDS 2018 12.5.4");
    if (in->method == FRAME_METHOD_LRFD) {
        FRAME_TABLE(w, K_F, out->format_factor, "", "format conversion factor", "NDS 2018 table N1, from memory");
        FRAME_TABLE(w, phi_z, out->resistance_factor, "", "resistance factor", "NDS 2018 table N2, from memory");
        FRAME_GIVEN(w, lambda, out->time_effect_factor, "", "time effect factor, NDS table N3");
        FRAME_STEP(w, Z_prime, Z * C_M * C_t * C_g * C_Delta * C_eg * C_di * C_tn * K_F * phi_z * lambda, "lb",
                   "adjusted lateral design value, factored", "NDS 2018 table 11.3.1");
        return Z_prime;
    }
    FRAME_GIVEN(w, C_D, out->duration_factor, "", "load duration factor, NDS 2.3.2");
    FRAME_STEP(w, Z_prime, Z * C_D * C_M * C_t * C_g * C_Delta * C_eg * C_di * C_tn, "lb",
               "adjusted lateral design value", "NDS 2018 table 11.3.1");
    return Z_prime;
}

/* A pin without a head is held by its depth alone. */
static double of_drift_pin(double Z_prime, frame_working *w) {
    FRAME_STEP(w, Z_pin, 0.75 * Z_prime, "lb", "adjusted value of a drift pin, at most 75 % of a bolt's",
               "NDS 2018 12.3, drift bolts and drift pins, from memory");
    return Z_pin;
}

frame_status frame_lateral_adjust(const frame_dowel_lateral_in *in, double nominal_in, frame_dowel_lateral_out *out,
                                  frame_working *w) {
    frame_method_factors factors = {1, 1, 1};
    frame_status status = only_nails(in);
    if (!status)
        status = frame_method_factors_of(in->method, in->load_duration_factor, in->time_effect_factor, &factors);
    if (status) return status;
    out->duration_factor = in->load_duration_factor;
    out->wet_factor = wet_factor(in, nominal_in);
    out->temperature_factor = frame_connection_temperature(in->temperature_f, in->service == FRAME_SERVICE_WET);
    out->end_grain_factor = in->end_grain ? 0.67 : 1;
    out->toe_nail_factor = in->toe_nail ? 0.83 : 1;
    out->diaphragm_factor = in->diaphragm ? 1.1 : 1;
    out->format_factor = factors.format;
    out->resistance_factor = factors.resistance;
    out->time_effect_factor = factors.time_effect;
    out->drift_pin_factor = in->kind == FRAME_DOWEL_DRIFT_PIN ? 0.75 : 1;
    const double value = adjusted(in, out, w);
    out->adjusted_lb = in->kind == FRAME_DOWEL_DRIFT_PIN ? of_drift_pin(value, w) : value;
    return FRAME_OK;
}
