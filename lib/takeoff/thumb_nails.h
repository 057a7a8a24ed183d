/* Pounds of nails, size by size. */
#ifndef FRAME_LIB_TAKEOFF_THUMB_NAILS_H
#define FRAME_LIB_TAKEOFF_THUMB_NAILS_H

#include <frame/takeoff.h>

/* Steel wire, pounds in a cubic inch: 7,850 kg/m3 (EN 1991-1-1 table A.4; from memory). */
#define FRAME_THUMB_STEEL_LB_PER_IN3 0.2836

/* The nails of one element of a nailing; refuses what is no nail or no size. */
frame_status frame_thumb_nails(const frame_thumb_nailing *of, frame_rules_of_thumb_nail *nails);

#endif
