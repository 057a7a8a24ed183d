/** @file joint.h
 * Joints with dowel-type fasteners: nails, wood screws, lag screws and bolts, one alone across the grain of the joint, in
 * withdrawal, both at once, whether it reaches; groups, their layout and patterns, eccentric loads; the joints of a frame, from
 * ledger to ridge; sheathing as structure. National Design Specification for Wood Construction, 2018 edition, allowable stress
 * design or load and resistance factor design; Special Design Provisions for Wind and Seismic, 2008 to 2021.
 */
#ifndef FRAME_JOINT_H
#define FRAME_JOINT_H

#include <frame/joint/dowels.h>
#include <frame/joint/groups.h>
#include <frame/joint/frames.h>
#include <frame/joint/sheathing.h>

#endif
