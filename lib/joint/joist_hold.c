/* The end of a joist at a beam. */
#include "joint/shear_end.h"

FRAME_SHEAR_END_IMPLEMENT(joist_hold, JOIST_HOLD);
