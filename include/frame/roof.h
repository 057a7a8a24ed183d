/** @file roof.h
 * Roofs: the common rafter, the hip, the valley and their jacks from run and slope; the whole roof from a plan.
 */
#ifndef FRAME_ROOF_H
#define FRAME_ROOF_H

#include <frame/roof/rafters.h>
#include <frame/roof/plans.h>
#include <frame/roof/framing.h>
#include <frame/roof/singles.h>
#include <frame/roof/details.h>
#include <frame/roof/edges.h>
#include <frame/roof/shapes.h>

#endif
