/* The end of a stud at its plate. */
#include "joint/plate_end.h"

FRAME_PLATE_END_IMPLEMENT(stud_end, STUD_END);
