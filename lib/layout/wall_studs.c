/* Studs on centres, and cripples, which keep the same layout in the openings. One that would run into something fixed
 * is set against it on the free side: so no spacing grows, and a sheet edge on its middle still finds as much wood on
 * both sides. */
#include <math.h>

#include "base/error.h"
#include "layout/wall.h"

#define SAME 1e-9 /* inches */

/* A run of the layout between two bounds: places are set against the bounds they straddle. */
typedef struct stretch {
    double from, to, last; /* last: how far it is filled */
    double first;          /* where its first one stands; not given while there is none */
} stretch;

/* Where one on centres with its near side at p stands in a stretch; not given when it does not. */
static double settle(const stretch *s, double p, double width) {
    if (p + width <= s->from + SAME || p >= s->to - SAME) return FRAME_NOT_GIVEN;
    const double at = fmin(fmax(p, s->from), s->to - width);
    return at < s->last - SAME || at < s->from - SAME ? FRAME_NOT_GIVEN : at;
}

static int stand(frame_wall_plan *plan, frame_piece_kind kind, double at, double low, double high, int hole) {
    const frame_wall_upright upright = {at, plan->along, 0, plan->across, low, high, kind, hole, plan->in->studs_flat};
    return frame_wall_stand(plan, &upright);
}

static int fill(frame_wall_plan *plan, stretch *s, frame_piece_kind kind, double low, double high, int hole) {
    const frame_positions *p = &plan->positions;
    /* Only the places that may reach into the stretch. */
    int i = (int)fmax(floor((s->from - plan->along - p->base) / p->spacing) - (double)p->nearest, 0);
    for (; i < p->count && frame_position(p, i) < s->to; i++) {
        const double at = settle(s, frame_position(p, i), plan->along);
        if (at == FRAME_NOT_GIVEN) continue;
        if (!stand(plan, kind, at, low, high, hole)) return 0;
        if (s->first == FRAME_NOT_GIVEN) s->first = at;
        s->last = at + plan->along;
    }
    return 1;
}

/* Under a sill: one at each end, the layout between. */
static int under_sill(frame_wall_plan *plan, int index) {
    const frame_wall_hole *hole = FRAME_WALL_HOLE(plan, index);
    const double high = hole->bottom + hole->low - hole->sills * plan->t, far = hole->to - plan->along;
    const double plates = frame_wall_plates(plan, plan->in->bottom_plates, plan->in->bottom_slope);
    if (hole->door || hole->low - hole->sills * plan->t - plates < SAME) return 1;
    int kept = stand(plan, FRAME_PIECE_CRIPPLE, hole->from, FRAME_NOT_GIVEN, high, index);
    if (far < hole->from + plan->along - SAME) return kept;
    stretch s = {hole->from + plan->along, far, hole->from + plan->along, FRAME_NOT_GIVEN};
    kept &= fill(plan, &s, FRAME_PIECE_CRIPPLE, FRAME_NOT_GIVEN, high, index);
    return kept & stand(plan, FRAME_PIECE_CRIPPLE, far, FRAME_NOT_GIVEN, high, index);
}

/* On a header, between the kings; or under one that lies high, on the head plate. */
static int over_opening(frame_wall_plan *plan, int index) {
    const frame_wall_hole *hole = FRAME_WALL_HOLE(plan, index);
    const double beside = hole->jacks * plan->t;
    stretch s = {hole->from - beside, hole->to + beside, hole->from - beside, FRAME_NOT_GIVEN};
    if (hole->at == FRAME_HEADER_AT_OPENING) {
        const double room = fmin(frame_wall_stud_top(plan, s.from), frame_wall_stud_top(plan, s.to)) - hole->header_top;
        const double most = fmax(frame_wall_stud_top(plan, s.from), frame_wall_stud_top(plan, s.to)) - hole->header_top;
        if (room > SAME && room < 1.5 - SAME) plan->cautions |= FRAME_BIT(FRAME_WALL_CAUTION_PACK);
        if (most < 1.5 - SAME) return 1;
        return fill(plan, &s, FRAME_PIECE_CRIPPLE, hole->header_top, FRAME_NOT_GIVEN, index);
    }
    const double low = hole->bottom + hole->head + plan->t;
    s = (stretch){hole->from, hole->to, hole->from, FRAME_NOT_GIVEN};
    if (hole->header_low - low < SAME) return 1;
    return fill(plan, &s, FRAME_PIECE_CRIPPLE, low, hole->header_low, index);
}

/* The backing of a corner stands at the inner face alone: where the outer face would be left without a stud for more
 * than a spacing, one is set against the backing. */
static int beside_corners(frame_wall_plan *plan, size_t group, const stretch *s) {
    const double half = plan->t / 2, w = plan->along, spacing = plan->in->spacing_in + SAME;
    const int any = s->first != FRAME_NOT_GIVEN;
    int kept = 1;
    const double next = any ? s->first + w / 2 : s->to + half;
    const double first_from = any ? s->first : s->to;
    int at_start = 0;
    if (group == 1 && plan->in->start_end == FRAME_WALL_END_CORNER && next - half > spacing &&
        s->from + w <= first_from) {
        kept &= stand(plan, FRAME_PIECE_STUD, s->from, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, -1);
        at_start = 1;
    }
    if (group + 1 < plan->groups.count || plan->in->end_end != FRAME_WALL_END_CORNER) return kept;
    const double before = any ? s->last - w / 2 : at_start ? s->from + w / 2 : s->from - half;
    const double filled = any ? s->last : at_start ? s->from + w : s->from;
    if (plan->in->length_in - half - before > spacing && s->to - w >= filled)
        kept &= stand(plan, FRAME_PIECE_STUD, s->to - w, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, -1);
    return kept;
}

/* Studs on centres from the group before to this one. */
static int between_groups(frame_wall_plan *plan, size_t group) {
    const double from = FRAME_WALL_GROUP(plan, group - 1)->to, to = FRAME_WALL_GROUP(plan, group)->from;
    stretch s = {from, to, from, FRAME_NOT_GIVEN};
    if (to - from < plan->along - SAME) return 1;
    if (!fill(plan, &s, FRAME_PIECE_STUD, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, -1)) return 0;
    return beside_corners(plan, group, &s);
}

frame_status frame_wall_place_studs(frame_wall_plan *plan) {
    const frame_wall_in *in = plan->in;
    plan->positions =
        (frame_positions){.length = in->length_in + 2 * plan->along, /* those that reach past an end too */
                          .spacing = in->spacing_in,
                          .thickness = plan->along,
                          .datum = in->datum_in + plan->along,
                          .first = in->first};
    const frame_status status = frame_positions_find(&plan->positions);
    if (status) return status;
    plan->positions.base -= plan->along;
    int kept = 1;
    for (size_t i = 1; i < plan->groups.count; i++) kept &= between_groups(plan, i);
    for (size_t i = 0; i < plan->holes.count; i++) kept &= under_sill(plan, (int)i) & over_opening(plan, (int)i);
    return kept ? FRAME_OK : FRAME_NO_MEMORY;
}
