/* The end of a rafter or joist on its plate, lifted by wind. */
#include "joint/plate_end.h"

FRAME_PLATE_END_IMPLEMENT(rafter_uplift, RAFTER_UPLIFT);
