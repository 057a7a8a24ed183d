/* Pieces as long that differ in their ends, put on boards so that like lies with like. */
#ifndef FRAME_LIB_TAKEOFF_SHARING_MATCH_H
#define FRAME_LIB_TAKEOFF_SHARING_MATCH_H

#include "takeoff/plan.h"

/* Exchanges items of one size between the boards of a plan, so that each board has as many of one item as can be. The
 * plan costs what it did. */
frame_status frame_share_match(const frame_cut_job *job, frame_cut_plan *plan);

#endif
