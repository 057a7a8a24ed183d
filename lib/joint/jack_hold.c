/* The end of a jack or hip rafter at a hip, valley or ridge. */
#include "joint/shear_end.h"

FRAME_SHEAR_END_IMPLEMENT(jack_hold, JACK_HOLD);
