/** @file layout.h
 * Walls, floors, decks and stairs: from a plan and from what was measured to every piece, where it goes and how it is cut.
 *
 * Every answer here lists its pieces in the order they go up. Each is a stick of the timber room, placed in one set of axes:
 * x along the wall, the joists' span or the run, y to the left of it, z up, 0 at the level named with the calculation. Ask
 * for a piece by its place in the list to get it as a stick, to draw it, to see its cuts, or to prove that it fits.
 */
#ifndef FRAME_LAYOUT_H
#define FRAME_LAYOUT_H

#include <frame/layout/pieces.h>
#include <frame/layout/stairs.h>
#include <frame/layout/walls.h>
#include <frame/layout/platforms.h>
#include <frame/layout/passages.h>
#include <frame/layout/assembly.h>

#endif
