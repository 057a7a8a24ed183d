/* Wood crushed across its grain by a post or stud that bears on it: NDS 2018 3.10.2. */
#ifndef FRAME_LIB_STRENGTH_PLATE_H
#define FRAME_LIB_STRENGTH_PLATE_H

#include <frame/strength.h>
#include <frame/working.h>

typedef struct frame_plate {
    double F_c_perp; /* not given without species and value */
    const char *source;
    frame_known known;
    int32_t spare;
} frame_plate;

/* By its species, as dimension lumber, or by the value given; at most one of them. Fields are named for refusals. */
frame_status frame_plate_find(frame_species species, double given_psi, const char *species_field,
                              const char *given_field, frame_plate *plate);

/* How it is borne on. length: of bearing along its grain; away: 3 in and more from its end. */
typedef struct frame_plate_lie {
    double length, temperature_factor;
    int away, wet, lrfd;
    int32_t spare;
} frame_plate_lie;

/* F_c-perp'; the length of bearing is recorded as l_b. */
double frame_plate_allowed(const frame_plate *plate, const frame_plate_lie *lie, frame_working *record);

#endif
