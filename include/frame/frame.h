/** @file frame.h
 * All of libframe: includes every room's header.
 */
#ifndef FRAME_FRAME_H
#define FRAME_FRAME_H

#include <frame/base.h>
#include <frame/fields.h>
#include <frame/text.h>
#include <frame/tape.h>
#include <frame/working.h>
#include <frame/drawing.h>
#include <frame/material.h>
#include <frame/load.h>
#include <frame/marks.h>
#include <frame/timber.h>
#include <frame/strength.h>
#include <frame/joint.h>
#include <frame/code.h>
#include <frame/roof.h>
#include <frame/layout.h>
#include <frame/takeoff.h>
#include <frame/building.h>
#include <frame/packet.h>

#endif
