/* From the reference value to the adjusted one: NDS 11.3 and 12.5, allowable stress design. */
#include "joint/lateral_factors.h"

#include "base/error.h"
#include "joint/fastener.h"
#include "working/record.h"

double frame_connection_temperature(double temperature_f, int wet) {
    if (temperature_f <= 100) return 1;
    if (temperature_f <= 125) return wet ? 0.7 : 0.8;
    return wet ? 0.5 : 0.7;
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

frame_status frame_lateral_adjust(const frame_dowel_lateral_in *in, double nominal_in, frame_dowel_lateral_out *out,
                                  frame_working *w) {
    const frame_status status = only_nails(in);
    if (status) return status;
    const double Z = out->z_lb;
    FRAME_HEADING(w, "Adjustment");
    FRAME_GIVEN(w, C_D, in->load_duration_factor, "", "load duration factor, NDS 2.3.2");
    FRAME_TABLE(w, C_M, wet_factor(in, nominal_in), "", "wet service factor", "NDS 2018 table 11.3.3");
    FRAME_TABLE(w, C_t, frame_connection_temperature(in->temperature_f, in->service == FRAME_SERVICE_WET), "",
                "temperature factor", "NDS 2018 table 11.3.4");
    FRAME_GIVEN(w, C_g, in->group_factor, "", "group action factor, NDS 11.3.6");
    FRAME_GIVEN(w, C_Delta, in->geometry_factor, "", "geometry factor, NDS 12.5.1");
    FRAME_TABLE(w, C_eg, in->end_grain ? 0.67 : 1, "", "end grain factor", "NDS 2018 12.5.2");
    FRAME_TABLE(w, C_di, in->diaphragm ? 1.1 : 1, "", "diaphragm factor", "NDS 2018 12.5.3");
    FRAME_TABLE(w, C_tn, in->toe_nail ? 0.83 : 1, "", "toe-nail factor", "NDS 2018 12.5.4");
    FRAME_STEP(w, Z_prime, Z * C_D * C_M * C_t * C_g * C_Delta * C_eg * C_di * C_tn, "lb",
               "adjusted lateral design value", "NDS 2018 table 11.3.1");
    out->adjusted_lb = Z_prime;
    out->duration_factor = C_D;
    out->wet_factor = C_M;
    out->temperature_factor = C_t;
    out->end_grain_factor = C_eg;
    out->diaphragm_factor = C_di;
    out->toe_nail_factor = C_tn;
    return FRAME_OK;
}
