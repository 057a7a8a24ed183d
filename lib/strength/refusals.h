/* How the checks of members refuse what cannot be, or what would need more than was given. */
#ifndef FRAME_LIB_STRENGTH_REFUSALS_H
#define FRAME_LIB_STRENGTH_REFUSALS_H

#include <frame/load.h>

/* R_B over 50, NDS 3.3.3.7. */
frame_status frame_too_slender(double slenderness, double unbraced_length_in);
/* All loads are zero where a span is wanted. */
frame_status frame_no_weight(void);
/* A slope for what is no rafter. */
frame_status frame_slope_refused(double slope);
/* Two bearings longer than the span. */
frame_status frame_bearing_too_long(double bearing_in, double span_in);
/* An unbraced length for an edge that is held. */
frame_status frame_edge_conflict(double unbraced_length_in);
/* The duration of impact for pressure-treated wood, NDS table 2.3.2. */
frame_status frame_impact_refused(const char *field);
/* l_e / d over 50, NDS 3.7.1.4. */
frame_status frame_column_too_slender(const char *field, double length_in, double slenderness);
/* Something needed was not given, or two things contradict each other. */
frame_status frame_lacks(const char *field, const char *valid);
frame_status frame_contradicts(const char *field, const char *other);
/* LRFD without a time effect factor, or the factor without LRFD. */
frame_status frame_time_effect_given(frame_design_method method, double time_effect_factor);
/* A notch over a quarter of the depth, NDS 4.4.3. */
frame_status frame_notch_too_deep(double notch_in, double depth_in);

#endif
