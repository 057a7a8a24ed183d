/* Snow on a roof: what its parts hand on to each other. Lengths in feet and loads in psf, as the standard writes them.
 */
#ifndef FRAME_LIB_LOAD_SNOW_H
#define FRAME_LIB_LOAD_SNOW_H

#include <frame/load.h>

#include "working/record.h"

#define FRAME_FROM_MEMORY " (from memory)"

typedef struct frame_snow {
    frame_snow_edition edition;
    frame_known known;
    double p_g, C_e, C_t, I_s, W_2; /* W_2: not given unless needed */
    double theta, W, p_f, p_s, gamma_s, p_m_max;
} frame_snow;

/* The factors of the tables, or those given. */
frame_status frame_snow_factors(const frame_roof_snow_in *in, frame_snow *snow, frame_working *record);
/* Flat, sloped, minimum and rain-on-snow load. */
void frame_snow_uniform(const frame_roof_snow_in *in, frame_snow *snow, frame_roof_snow_out *out,
                        frame_working *record);
/* Unbalanced snow on gables and hips. */
frame_status frame_snow_unbalanced(const frame_roof_snow_in *in, const frame_snow *snow, frame_roof_snow_out *out,
                                   frame_working *record);
/* Drift against a step; only where one is given. */
frame_status frame_snow_step(const frame_roof_snow_in *in, const frame_snow *snow, frame_roof_snow_out *out,
                             frame_working *record);
/* Snow sliding from a roof above, and ice at the eaves; each only where given. */
frame_status frame_snow_slide(const frame_roof_snow_in *in, const frame_snow *snow, frame_roof_snow_out *out,
                              frame_working *record);
void frame_snow_eaves(const frame_roof_snow_in *in, const frame_snow *snow, frame_roof_snow_out *out,
                      frame_working *record);

/* The height in feet of a drift from snow on a length l_u of roof or ground upwind. FRAME_REQUIRED where the standard
 * asks for the winter wind and it is not given. */
frame_status frame_snow_drift(const frame_snow *snow, double length_ft, double *height, frame_working *record);

frame_status frame_snow_lacks(const char *field, const char *valid);
frame_status frame_snow_conflict(const char *field, const char *given, const char *valid);

static inline int frame_snow_given(double value) {
    return value != FRAME_NOT_GIVEN;
}

#endif
