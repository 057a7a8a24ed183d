/* The usual ways of buying, for comparison and as a start: what a search must not be dearer than. */
#ifndef FRAME_LIB_TAKEOFF_SIMPLE_H
#define FRAME_LIB_TAKEOFF_SIMPLE_H

#include <frame/takeoff.h>

#include "takeoff/plan.h"

/* Plans by one of the simple methods; plan->found is 0 where it fails. */
frame_status frame_cut_simple(const frame_cut_job *job, frame_stock_method method, frame_cut_plan *plan);
/* The cheapest of them all. */
frame_status frame_cut_simplest(const frame_cut_job *job, frame_cut_plan *plan);

#endif
