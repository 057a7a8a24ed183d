/* Winder treads: their depth on the walkline and at the narrow side. */
#include <math.h>

#include "base/error.h"
#include "layout/stair.h"
#include "layout_facts.h"
#include "working/calculation.h"

static const char chord[] = "chord of a circle";

static void judge(const frame_stair_limits *limits, frame_winders_out *out) {
    const int walkline = out->walkline_tread_in < limits->at[FRAME_STAIR_WALKLINE_TREAD] - 1e-9;
    const int narrow = out->narrow_tread_in < limits->at[FRAME_STAIR_NARROW_TREAD] - 1e-9;
    if (walkline) out->cautions |= FRAME_BIT(FRAME_WINDERS_CAUTION_WALKLINE);
    if (narrow) out->cautions |= FRAME_BIT(FRAME_WINDERS_CAUTION_NARROW);
    out->passes = !walkline && !narrow;
    out->known = FRAME_KNOWN_READ;
    for (int i = FRAME_STAIR_WALKLINE_TREAD; i <= FRAME_STAIR_WALKLINE; i++)
        if (limits->known[i] > out->known) out->known = limits->known[i];
    out->cautions |= FRAME_BIT(FRAME_WINDERS_CAUTION_LOCAL) | FRAME_BIT(FRAME_WINDERS_CAUTION_ALIKE);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_WINDERS_CAUTION_MEMORY);
    out->not_checked = FRAME_BIT(FRAME_WINDERS_UNCHECKED_HEADROOM) | FRAME_BIT(FRAME_WINDERS_UNCHECKED_STRENGTH) |
                       FRAME_BIT(FRAME_WINDERS_UNCHECKED_RAIL);
}

static frame_status compute(const frame_winders_in *in, frame_winders_out *out, frame_working *w) {
    frame_stair_limits limits;
    const frame_status status = frame_stair_limits_find(in->edition, &limits);
    if (status) return status;
    if (in->turn_deg / in->winders > 180)
        return frame_fail_number(FRAME_IMPOSSIBLE, "winders", in->winders, "enough for at most 180 degrees each");
    FRAME_GIVEN(w, turn, in->turn_deg, "deg", "angle of the turn");
    FRAME_GIVEN(w, k, in->winders, "", "winders");
    FRAME_STEP(w, each, turn / k, "deg", "angle of a tread", "arithmetic");
    FRAME_STEP(w, share, 2 * sin(each / 2 * FRAME_DEG), "", "chord of a tread over its radius", chord);
    FRAME_TABLE(w, t_walk, limits.at[FRAME_STAIR_WALKLINE_TREAD], "in", "least depth on the walkline",
                limits.source[FRAME_STAIR_WALKLINE_TREAD]);
    FRAME_TABLE(w, t_narrow, limits.at[FRAME_STAIR_NARROW_TREAD], "in", "least depth at the narrow side",
                limits.source[FRAME_STAIR_NARROW_TREAD]);
    FRAME_TABLE(w, a, limits.at[FRAME_STAIR_WALKLINE], "in", "walkline from the narrow side",
                limits.source[FRAME_STAIR_WALKLINE]);
    FRAME_STEP(w, o_min, fmax(fmax(t_narrow / share, t_walk / share - a), 0), "in", "least offset of the centre",
               chord);
    FRAME_GIVEN(w, o, in->offset_in == FRAME_NOT_GIVEN ? o_min : in->offset_in, "in", "offset of the centre taken");
    FRAME_GIVEN(w, width, in->width_in, "in", "clear width");
    FRAME_STEP(w, at_walk, (o + a) * share, "in", "depth on the walkline", chord);
    FRAME_STEP(w, at_narrow, o * share, "in", "depth at the narrow side", chord);
    FRAME_STEP(w, at_wide, (o + width) * share, "in", "depth at the wide side", chord);
    FRAME_STEP(w, walk, (o + a) * turn * FRAME_DEG, "in", "walkline round the turn", "arc of a circle");
    out->each_deg = each;
    out->offset_in = o;
    out->offset_needed_in = o_min;
    out->walkline_radius_in = o + a;
    out->walkline_tread_in = at_walk;
    out->narrow_tread_in = at_narrow;
    out->wide_tread_in = at_wide;
    out->walkline_run_in = walk;
    judge(&limits, out);
    return FRAME_OK;
}

FRAME_IMPLEMENT(winders, compute);
