/* A job of several sections falls apart into jobs that share neither boards nor pieces: each is searched by itself. */
#ifndef FRAME_LIB_TAKEOFF_COMPONENT_H
#define FRAME_LIB_TAKEOFF_COMPONENT_H

#include "takeoff/plan.h"

typedef struct frame_component {
    frame_cut_job job; /* of its own lists */
    frame_array items, kinds, rooms, supplies, choices, choice_parts, set_wanted;
    frame_array item_of, kind_of, choice_of; /* uint32_t: the place in the whole job */
} frame_component;

/* Numbers the components: of[group] is the component of each group. Gives how many there are. */
int32_t frame_component_count(const frame_cut_job *job, int32_t *of);
/* The job of one component. */
frame_status frame_component_take(frame_component *component, const frame_cut_job *job, const int32_t *of,
                                  int32_t which);
void frame_component_give(frame_component *component);
/* Adds a component's plan to that of the whole job. */
frame_status frame_component_add(const frame_component *component, const frame_cut_job *job, const frame_cut_plan *part,
                                 frame_cut_plan *whole);

#endif
