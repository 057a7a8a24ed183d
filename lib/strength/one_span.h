/* What the checks of a member on one simple span under uniform load go by, and what they find. */
#ifndef FRAME_LIB_STRENGTH_ONE_SPAN_H
#define FRAME_LIB_STRENGTH_ONE_SPAN_H

#include "base/facts.h"
#include "load/combination.h"
#include "material/edition.h"
#include "strength/member.h"

#include "working/plain_math.h"

/* What the checks go by besides the member and its loads. */
typedef struct frame_bending_ask {
    double span;         /* in, on plan */
    double slope_cosine; /* 1 for a level member */
    double unbraced;     /* in; 0 where the compression edge is held */
    double bearing;      /* in; 0 where bearing is not checked */
    double notch;        /* in, at the ends, on the edge in tension */
    double repetitive;   /* C_r */
    double live_limit;   /* span over deflection; 0 where it is not checked */
    double total_limit;
    double creep;
    int shear_reduced; /* leave out what lies within d of the supports, NDS 3.4.3.1 */
    int lrfd;          /* strength design; then factors are lambda */
    int in_line;       /* bearing and both limits are known to be given: no branch on them, for rows side by side */
    frame_load_edition edition;
} frame_bending_ask;

typedef struct frame_bending {
    double area, section_modulus, inertia;
    double moment, shear, reaction;
    double fb, fb_adjusted, fv, fv_adjusted, fc_perp, fc_perp_adjusted, e_adjusted;
    double deflection_live, deflection_total, live_limit, total_limit, bearing_needed;
    double bending_ratio, shear_ratio, bearing_ratio, live_ratio, total_ratio, deflection_ratio, ratio;
    double load_duration, shear_load_duration, stability, slenderness, transient;
    frame_load_combination combination, shear_combination;
    frame_governing governs;
} frame_bending;

/* A ratio of 1 stands as 1 whatever the rounding of the arithmetic made of it. */
FRAME_ALWAYS_INLINE frame_bool frame_holds(double ratio) {
    return ratio <= 1 + 1e-9;
}

/* The end of every check's working. */
FRAME_ALWAYS_INLINE void frame_record_result(double largest, frame_governing governs, frame_working *record) {
    const int holds = frame_holds(largest);
    FRAME_HEADING(record, "Result");
    FRAME_TABLE(record, ratio, largest, "", "the largest of the ratios", frame_word_text("governing", governs));
    FRAME_CASE(record, holds ? "ratio <= 1" : "ratio > 1", holds ? "it holds" : "it does not hold", "");
    (void)ratio, (void)holds;
}

FRAME_ALWAYS_INLINE double frame_or(double value, double otherwise) {
    return frame_given(value) ? value : otherwise;
}
FRAME_ALWAYS_INLINE int32_t frame_or_int(int32_t value, int32_t otherwise) {
    return value != FRAME_NOT_GIVEN_INT ? value : otherwise;
}

/* NDS 3.5.2 (from memory): 1.5 for seasoned lumber, 2.0 for lumber that is or stays wet. */
FRAME_ALWAYS_INLINE double frame_creep_factor(double value, frame_service service) {
    return frame_or(value, service == FRAME_SERVICE_WET ? 2.0 : 1.5);
}

/* The word of a combination that stands at a place from 1. */
#define FRAME_COMBINATION_WORD(ask, slot)                            \
    ((ask)->lrfd || (ask)->edition == FRAME_LOADS_ASCE_7_22          \
         ? frame_combination_word(slot, (ask)->lrfd, (ask)->edition) \
         : (slot))

#define FRAME_COMBINATION_NAME(which) frame_word_text("load_combination", which)

#endif
