/* Pieces drawn in plan. */
#ifndef FRAME_LIB_LAYOUT_PLAN_H
#define FRAME_LIB_LAYOUT_PLAN_H

#include <frame/drawing.h>

#include "layout/piece.h"

/* The outline of a piece seen from above, cut by its upright planes; drawn with a pen. */
frame_status frame_layout_draw_plan(const frame_layout_set *set, const frame_layout_piece *piece,
                                    frame_drawing *drawing, frame_pen pen);

#endif
