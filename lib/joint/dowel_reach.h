/* The parts of dowel_reach that share a job: the finding, its words, its drawing. */
#ifndef FRAME_LIB_JOINT_DOWEL_REACH_H
#define FRAME_LIB_JOINT_DOWEL_REACH_H

#include "base/answer.h"
#include "joint/layers.h"

/* What dowel_reach finds, for its drawing. in is validated. */
frame_status frame_dowel_reach_find(const frame_dowel_reach_in *in, frame_layers *layers, frame_drive *drive,
                                    frame_reached *reached);

/* The finding as a sentence that lives as long as the answer. */
const char *frame_reach_in_words(const frame_layers *layers, const frame_drive *drive, const frame_reached *reached,
                                 frame_answer *answer);

#endif
