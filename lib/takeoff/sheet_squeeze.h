/* Fitting parts on given sheets by letting them overlap at first and driving the overlap out. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_SQUEEZE_H
#define FRAME_LIB_TAKEOFF_SHEET_SQUEEZE_H

#include "takeoff/sheet_search.h"

/* Tries to lay all parts of a layout, those that lie nowhere too, on the sheets it has. kept: the new sheets, only when
 * it succeeds; *done tells. work: the most that is tried; the search's time limit counts too. */
frame_status frame_sheet_squeeze(frame_sheet_search *search, const frame_sheet_layout *from, int64_t work,
                                 frame_sheet_layout *kept, int *done);

#endif
