/* Panels and nail patterns that carry a unit shear. */
#ifndef FRAME_LIB_JOINT_PANEL_PATTERN_H
#define FRAME_LIB_JOINT_PANEL_PATTERN_H

#include <stddef.h>

#include <frame/joint.h>

enum { FRAME_MOST_PATTERNS = 128 };

/* Nails along the supports within a sheet; SDPWS 4.2.7.1 and 4.3.7.1: 12 in, 6 in where supports are 24 in apart. */
#define FRAME_FIELD_NAILS_IN 12.0

typedef struct frame_pattern_row {
    frame_panel_sheathing sheathing;
    const char *nail;
    double panel_in, edge_in;
} frame_pattern_row;

typedef struct frame_pattern_found {
    frame_pattern_row row;
    int nails; /* in a sheet of 4 by 8 ft */
    double unit_plf;
    frame_known known;
    uint64_t cautions, not_checked;
} frame_pattern_found;

typedef struct frame_patterns {
    frame_pattern_found items[FRAME_MOST_PATTERNS];
    size_t count;
} frame_patterns;

/* Those that carry the demand, the fewest nails first; FRAME_IMPOSSIBLE where none does. */
frame_status frame_patterns_find(const frame_panel_pattern_in *in, frame_patterns *patterns);

#endif
