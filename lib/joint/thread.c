/* Lengths of thread: lag screws by NDS table L2, wood screws by L3, ring-shank nails by the size, bolts by L1. */
#include "joint/thread.h"

#include "working/record.h"

static double smooth(double L, frame_working *w) {
    FRAME_STEP(w, T, L, "in", "length that can hold: all of a smooth nail", "NDS 2018 12.2.3");
    return T;
}

static double of_lag_screw(double L, frame_working *w) {
    FRAME_STEP(w, T, fmin(6, fmin(L - 0.25, L / 2 + 0.5)), "in", "length of the thread", "NDS 2018 table L2");
    return T;
}

static double of_wood_screw(double L, frame_working *w) {
    FRAME_STEP(w, T, 2 * L / 3, "in", "length of the thread", "NDS 2018 table L3");
    return T;
}

static double of_bolt(double nominal_in, double L, frame_working *w) {
    FRAME_GIVEN(w, D_bolt, nominal_in, "in", "diameter of the bolt");
    FRAME_STEP(w, T, fmin(L, 2 * D_bolt + (L <= 6 ? 0.25 : 0.5)), "in", "length of the thread", "NDS 2018 table L1");
    return T;
}

static double of_rings(const frame_fastener *fastener, frame_working *w) {
    if (fastener->thread_in == FRAME_NOT_GIVEN) return FRAME_NOT_GIVEN;
    FRAME_TABLE(w, T, fastener->thread_in, "in", "length of the rings", fastener->source);
    return T;
}

double frame_thread_length(frame_dowel_kind kind, double given_in, const frame_fastener *fastener, double L,
                           frame_working *w) {
    if (frame_dowel_is_nail(kind) && kind != FRAME_DOWEL_RING_SHANK_NAIL) return smooth(L, w);
    if (given_in != FRAME_NOT_GIVEN) {
        FRAME_GIVEN(w, T, given_in, "in", "length of the thread");
        return T;
    }
    if (kind == FRAME_DOWEL_LAG_SCREW) return of_lag_screw(L, w);
    if (kind == FRAME_DOWEL_WOOD_SCREW) return of_wood_screw(L, w);
    if (kind == FRAME_DOWEL_BOLT) return of_bolt(fastener->nominal_in, L, w);
    return of_rings(fastener, w);
}
