/* Adjustment factors of connections, NDS table 11.3.1. */
#ifndef FRAME_LIB_JOINT_LATERAL_FACTORS_H
#define FRAME_LIB_JOINT_LATERAL_FACTORS_H

#include <frame/joint.h>
#include <frame/working.h>

/* C_t, NDS table 11.3.4, up to 150 F. */
double frame_connection_temperature(double temperature_f, int wet);

/* Fills the factors and the adjusted value of out from its z_lb. */
frame_status frame_lateral_adjust(const frame_dowel_lateral_in *in, double nominal_in, frame_dowel_lateral_out *out,
                                  frame_working *w);

#endif
