/* A stock room's sheets for a plan. */
#ifndef FRAME_LIB_TAKEOFF_STOCK_ROOM_SHEETS_H
#define FRAME_LIB_TAKEOFF_STOCK_ROOM_SHEETS_H

#include "takeoff/stock_room.h"

/* Puts the room's sheets, offcuts and holes behind the lists of a plan; the lists are the arena's. */
frame_status frame_room_join_sheets(frame_sheet_plan_in *in, frame_arena *arena);

#endif
