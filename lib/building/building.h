/* What the packet needs of a building beside its public lists: the working of each check, the stick of each member. */
#ifndef FRAME_LIB_BUILDING_BUILDING_H
#define FRAME_LIB_BUILDING_BUILDING_H

#include <frame/building.h>
#include <frame/timber.h>
#include <frame/working.h>

#include "base/answer.h"

enum {
    FRAME_BUILDING_MEMBERS,
    FRAME_BUILDING_CHECKS,
    FRAME_BUILDING_MARKS,
    FRAME_BUILDING_BOARDS,
    FRAME_BUILDING_CUTS,
    FRAME_BUILDING_PURCHASES,
    FRAME_BUILDING_NOTES
};

/* Behind each check and each member, in the order of their lists. */
typedef struct frame_building_inside {
    frame_array workings; /* frame_working * */
    frame_array sticks;   /* frame_stick * */
} frame_building_inside;

/* Owned by the building; NULL when there is none. */
const frame_working *frame_building_working(const frame_building *building, size_t check);
const frame_stick *frame_building_stick(const frame_building *building, size_t member);

#endif
