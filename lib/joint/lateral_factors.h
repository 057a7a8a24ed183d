/* Adjustment factors of connections, NDS table 11.3.1. */
#ifndef FRAME_LIB_JOINT_LATERAL_FACTORS_H
#define FRAME_LIB_JOINT_LATERAL_FACTORS_H

#include <frame/joint.h>
#include <frame/working.h>

/* C_t, NDS table 11.3.4, up to 150 F. */
double frame_connection_temperature(double temperature_f, int wet);

/* The factors of load and resistance factor design, NDS tables N1 to N3; all 1 in allowable stress design. */
typedef struct frame_method_factors {
    double format, resistance, time_effect;
} frame_method_factors;
/* FRAME_REQUIRED for LRFD without lambda; FRAME_CONFLICT for lambda with ASD, and for C_D with LRFD. */
frame_status frame_method_factors_of(frame_design_method method, double load_duration_factor, double time_effect_factor,
                                     frame_method_factors *factors);

/* Fills the factors and the adjusted value of out from its z_lb. */
frame_status frame_lateral_adjust(const frame_dowel_lateral_in *in, double nominal_in, frame_dowel_lateral_out *out,
                                  frame_working *w);

#endif
