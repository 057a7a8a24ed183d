/* How long the thread of a fastener is. */
#ifndef FRAME_LIB_JOINT_THREAD_H
#define FRAME_LIB_JOINT_THREAD_H

#include <frame/working.h>

#include "joint/fastener.h"

/* Length of the part that can hold in withdrawal, tip included: given, or as usual for the kind; all of a smooth nail.
 * L, the length under the head, is recorded already. FRAME_NOT_GIVEN where it is known of no table. */
double frame_thread_length(frame_dowel_kind kind, double given_in, const frame_fastener *fastener, double L,
                           frame_working *w);

#endif
