/* What the writers of a plan of sheets share. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_WRITE_H
#define FRAME_LIB_TAKEOFF_SHEET_WRITE_H

#include <frame/takeoff.h>

#include "text/writer.h"

/* FRAME_OK, or what is missing. */
frame_status frame_sheet_need_text(const frame_sheet_plan *plan, const frame_text *into);
#endif
