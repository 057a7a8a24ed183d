/* The plan of sheets as the lists of an answer. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_ANSWER_H
#define FRAME_LIB_TAKEOFF_SHEET_ANSWER_H

#include "base/answer.h"
#include "takeoff/sheet_search.h"

/* Puts the layout in order, writes its lists and adds up its figures. */
frame_status frame_sheet_answer_write(const frame_sheet_plan_in *in, const frame_sheet_job *job,
                                      frame_sheet_search *search, frame_answer *answer, frame_sheet_plan_out *out);

#endif
