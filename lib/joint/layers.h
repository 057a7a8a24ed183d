/* A fastener driven through layers: what lies where, and how deep the point gets. */
#ifndef FRAME_LIB_JOINT_LAYERS_H
#define FRAME_LIB_JOINT_LAYERS_H

#include <frame/working.h>

#include "joint/fastener.h"

enum { FRAME_MOST_LAYERS = 100, FRAME_NO_LAYER = -1 }; /* as the header has it */

/* The layers by depth below the first one's face, inches square to it. */
typedef struct frame_layers {
    frame_dowel_layer items[FRAME_MOST_LAYERS];
    double from[FRAME_MOST_LAYERS], to[FRAME_MOST_LAYERS];
    int count;
    int side;    /* the member next to the head that bears; FRAME_NO_LAYER where there is none */
    int holding; /* the member that should hold the point; FRAME_NO_LAYER where none can */
    int last;    /* the last layer that is not air */
} frame_layers;

/* What is driven, and how. Lengths along the fastener; thread FRAME_NOT_GIVEN where it is not known. */
typedef struct frame_drive {
    frame_dowel_kind kind;
    double nominal, length, tip, thread;
    double countersink, angle_deg;
} frame_drive;

typedef struct frame_reached {
    double penetration; /* as the standard counts it, square to the face */
    double held;        /* along the fastener */
    double held_thread; /* FRAME_NOT_GIVEN where the thread is not known */
    double point;       /* depth of the point below the first face */
    double out;         /* beyond the member that holds it, along the fastener */
    double stands_out;  /* beyond the last layer */
    double least, full; /* depths that count at all and in full */
    frame_reach_verdict verdict;
} frame_reached;

frame_status frame_layers_read(const frame_dowel_reach_in *in, frame_layers *layers);

/* L, the length under the head, is recorded already. */
void frame_reach_layers(const frame_layers *layers, const frame_drive *drive, frame_reached *reached, frame_working *w);

/* The length under the head that would just reach so deep into the member that holds, and its tip where that does not
 * count. */
double frame_length_for(const frame_layers *layers, const frame_drive *drive, double depth);

/* The part of a stretch [from, to] of the fastener, measured from under its head, that lies in a layer. */
double frame_part_in_layer(const frame_layers *layers, const frame_drive *drive, int layer, double from, double to);

static inline int frame_reach_counts(frame_reach_verdict verdict) {
    return verdict == FRAME_REACH_HOLDS || verdict == FRAME_REACH_SHORT;
}

#endif
