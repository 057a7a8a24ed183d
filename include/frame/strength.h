/** @file strength.h
 * Does it hold: joists, rafters, beams, columns and ties by the National Design Specification for Wood Construction
 * (NDS 2018, by allowable stress or by load and resistance factors), the longest span they may have, and which to take.
 */
#ifndef FRAME_STRENGTH_H
#define FRAME_STRENGTH_H

#include <frame/strength/joists.h>
#include <frame/strength/analysis.h>
#include <frame/strength/members.h>
#include <frame/strength/beams.h>
#include <frame/strength/columns.h>
#include <frame/strength/openings.h>
#include <frame/strength/sizing.h>

#endif
