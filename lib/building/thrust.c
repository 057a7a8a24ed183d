/* The thrust of a pair of rafters with a tie at the plate, and what they set on the wall. */
#include <math.h>

#include "building/job.h"
#include "working/record.h"

double frame_job_thrust(const frame_building_roof *roof, frame_working *w) {
    FRAME_HEADING(w, "Thrust of the roof at each rafter");
    FRAME_GIVEN(w, slope, roof->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, w_dead, roof->dead_psf, "psf", "dead load along the slope");
    FRAME_GIVEN(w, w_snow, roof->snow_psf, "psf", "snow, on plan");
    FRAME_GIVEN(w, w_live, roof->roof_live_psf, "psf", "roof live load, on plan");
    FRAME_GIVEN(w, run, roof->run_in, "in", "run of a rafter");
    FRAME_GIVEN(w, spacing, roof->spacing_in, "in", "spacing on centres");
    FRAME_STEP(w, load, w_dead * sqrt(1 + pow(slope, 2)) + fmax(w_snow, w_live), "psf", "load on plan",
               "ASCE 7-16 2.4.1");
    FRAME_STEP(w, L, 2 * run / 12, "ft", "span of the roof between the walls", "geometry");
    FRAME_STEP(w, s, 12 * slope, "in", "rise in 12", "geometry");
    FRAME_STEP(w, H, 3 * load * L / s, "plf", "thrust along the eave, tie at the plate",
               "statics of the three-hinged arch, w L^2 / (8 rise); so IRC 2021 table R802.5.2(1)");
    FRAME_STEP(w, demand, H * spacing / 12, "lb", "thrust at each rafter", "geometry");
    return demand;
}

void frame_job_hand_on(frame_job_roof *made) {
    const frame_building_roof *roof = &made->roof;
    const double secant = sqrt(1 + roof->slope * roof->slope);
    const double width_ft = ((roof->faces == 2 ? roof->run_in : roof->run_in / 2) + roof->overhang_in) / 12;
    made->eave_dead_plf = roof->dead_psf * secant * width_ft;
    made->eave_snow_plf = roof->snow_psf * width_ft;
    made->eave_roof_live_plf = roof->roof_live_psf * width_ft;
}
