/* What fasteners measure and how strong their steel is. */
#ifndef FRAME_LIB_JOINT_FASTENER_H
#define FRAME_LIB_JOINT_FASTENER_H

#include <frame/joint.h>

/* One fastener; what is not known is FRAME_NOT_GIVEN. */
typedef struct frame_fastener {
    double nominal_in, root_in, length_in, tip_in, thread_in;
    frame_known known;
    const char *source;
} frame_fastener;

/* Finds a fastener by its size's name or, for kinds whose sizes go by diameter, by that. Just one of size (not NULL)
 * and diameter_in must be given. */
frame_status frame_fastener_find(frame_dowel_kind kind, const char *size, double diameter_in, frame_fastener *fastener);

/* Bending yield strength by kind and nominal diameter. */
frame_status frame_fastener_yield(frame_dowel_kind kind, double nominal_in, double *yield_psi, frame_known *known,
                                  const char **source);

/* The same without a word on failure; they give 1 where there is one. */
int frame_fastener_find_quietly(frame_dowel_kind kind, const char *size, frame_fastener *fastener);
int frame_fastener_yield_quietly(frame_dowel_kind kind, double nominal_in, double *yield_psi, frame_known *known,
                                 const char **source);

static inline int frame_dowel_is_nail(frame_dowel_kind kind) {
    return kind >= FRAME_DOWEL_COMMON_NAIL && kind <= FRAME_DOWEL_RING_SHANK_NAIL;
}
/* Bears in a drilled hole all along, without a point that must be held. */
static inline int frame_dowel_is_bolt(frame_dowel_kind kind) {
    return kind == FRAME_DOWEL_BOLT || kind == FRAME_DOWEL_DRIFT_PIN;
}
static inline int frame_dowel_is_threaded(frame_dowel_kind kind) {
    return kind == FRAME_DOWEL_WOOD_SCREW || kind == FRAME_DOWEL_LAG_SCREW || kind == FRAME_DOWEL_BOLT;
}
/* The word of a kind: "common nail". */
const char *frame_dowel_word(frame_dowel_kind kind);

/* The worse of two sources. */
static inline frame_known frame_known_worse(frame_known a, frame_known b) {
    return a > b ? a : b;
}

#endif
