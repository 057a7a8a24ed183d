/* What is given of a floor or deck, and the bays its joists are cut into. */
#include "layout/platform.h"

#include <math.h>

#include "base/error.h"

void frame_platform_begin(frame_platform *p, frame_layout_set *set) {
    p->set = set;
    p->beams.item_size = sizeof(frame_platform_beam);
    p->holes.item_size = sizeof(frame_platform_hole);
    p->walls.item_size = sizeof(frame_floor_wall);
    p->bays.item_size = sizeof(frame_platform_bay);
    p->groups.item_size = sizeof(frame_platform_group);
    p->members.item_size = sizeof(frame_platform_member);
    p->stages.item_size = sizeof(int32_t);
    p->hangers.item_size = sizeof(frame_floor_hanger);
}

void frame_platform_give(frame_platform *p) {
    frame_array_give(&p->beams);
    frame_array_give(&p->holes);
    frame_array_give(&p->walls);
    frame_array_give(&p->bays);
    frame_array_give(&p->groups);
    frame_array_give(&p->members);
    frame_array_give(&p->stages);
    frame_array_give(&p->hangers);
}

double frame_platform_end(const frame_platform *p, int far) {
    return p->ends[far] == FRAME_JOIST_END_LEDGER ? p->ledger : p->rim;
}

double frame_platform_gap(const frame_platform *p, int far) {
    return p->ends[far] == FRAME_JOIST_END_LEDGER ? p->gap : 0;
}

frame_layout_piece *frame_platform_add(frame_platform *p, int stage, frame_piece_kind kind, int number,
                                       const frame_layout_section *section, vec3 start, vec3 end, vec3 crown) {
    const int32_t when = stage;
    frame_layout_piece *piece =
        frame_layout_add(p->set, kind, frame_layout_kind_name(kind), number, section, start, end, crown);
    if (!piece || !frame_array_push(&p->stages, &when)) {
        p->failed = 1;
        return NULL;
    }
    return piece;
}

/* A joint may lie over a beam that carries on both sides: not over the last one before a free end. */
static int may_join(const frame_platform *p, size_t beam) {
    if (p->ends[0] == FRAME_JOIST_END_FREE && beam == 0) return 0;
    return !(p->ends[1] == FRAME_JOIST_END_FREE && beam == p->beams.count - 1);
}

static frame_status add_bay(frame_platform *p, double from, double to, int before, int after) {
    const frame_platform_bay bay = {from, to, before, after};
    return frame_array_push(&p->bays, &bay) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status check_supports(const frame_platform *p) {
    const size_t firm = (p->ends[0] != FRAME_JOIST_END_FREE) + (size_t)(p->ends[1] != FRAME_JOIST_END_FREE);
    double last = 0;
    for (size_t i = 0; i < p->beams.count; i++) {
        const double at = FRAME_PLATFORM_BEAM(p, i)->at;
        if (at <= last || at >= p->span) {
            frame_fail_number(FRAME_IMPOSSIBLE, "at_in", at, "in order, and within the span");
            return frame_fail_within("beams[%zu].", i);
        }
        last = at;
    }
    if (firm + p->beams.count >= 2) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "beams", (double)p->beams.count,
                             "enough beams: joists need two supports, free ends are none");
}

frame_status frame_platform_find_bays(frame_platform *p) {
    const double near = frame_platform_end(p, 0) + frame_platform_gap(p, 0);
    const double far = p->span - frame_platform_end(p, 1) - frame_platform_gap(p, 1), half = p->lap / 2;
    frame_status status = check_supports(p);
    double from = near;
    int before = 0;
    if (!status && far - near <= 0)
        return frame_fail_number(FRAME_IMPOSSIBLE, "span_in", p->span, "more than its rims and ledgers");
    while (!status && far - from + (before ? half : 0) > p->stock + 1e-9) {
        size_t best = p->beams.count;
        for (size_t i = 0; i < p->beams.count; i++) {
            const double reach = FRAME_PLATFORM_BEAM(p, i)->at - from + half * (before ? 2 : 1);
            if (may_join(p, i) && FRAME_PLATFORM_BEAM(p, i)->at > from + 1e-9 && reach <= p->stock + 1e-9) best = i;
        }
        if (best == p->beams.count)
            return frame_fail_number(FRAME_IMPOSSIBLE, "stock_in", p->stock,
                                     "longer, or a beam to join the joists over: they do not reach");
        const double at = FRAME_PLATFORM_BEAM(p, best)->at;
        FRAME_PLATFORM_BEAM(p, best)->joint = 1;
        status = add_bay(p, from, at, before, 1);
        from = at;
        before = 1;
    }
    return status ? status : add_bay(p, from, far, before, 0);
}
