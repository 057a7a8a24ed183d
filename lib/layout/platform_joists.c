/* Joists on centres, bay by bay. One that would run into something fixed is set against it on the free side; one that
 * laps another over a beam lies beside it, and one that would lap into something fixed ends on the beam's middle. */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout/platform.h"

#define SAME 1e-9 /* inches */
enum { MOST_JOISTS = 1000 };

/* A free stretch across the layout, and how far it is filled. */
typedef struct stretch {
    double from, to, last;
    int bay, hole;
} stretch;

/* Whether a joist of a neighbouring bay laps into this one. */
static int reaches(const frame_platform *p, const stretch *s, const frame_platform_member *other) {
    const frame_platform_bay *bay = FRAME_PLATFORM_BAY(p, s->bay);
    if (p->joint != FRAME_JOIST_JOINT_LAPPED) return 0;
    if (other->bay == s->bay - 1) return bay->joint_before && other->to > bay->from + SAME;
    return other->bay == s->bay + 1 && bay->joint_after && other->from < bay->to - SAME;
}

/* How far a joist laps past an end of its bay (1 the far one): not at all where something of the neighbouring bay lies.
 */
static double lap_at(const frame_platform *p, const stretch *s, double y, int far) {
    const frame_platform_bay *bay = FRAME_PLATFORM_BAY(p, s->bay);
    if (p->joint != FRAME_JOIST_JOINT_LAPPED || !(far ? bay->joint_after : bay->joint_before)) return 0;
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *other = FRAME_PLATFORM_MEMBER(p, i);
        if (other->bay != s->bay + (far ? 1 : -1) || other->y >= y + p->t - SAME || other->y <= y - p->t + SAME)
            continue;
        if (far ? other->from < bay->to + p->lap / 2 - SAME : other->to > bay->from - p->lap / 2 + SAME) return 0;
    }
    return p->lap / 2;
}

static const frame_platform_member *in_the_way(const frame_platform *p, const stretch *s, double y) {
    if (p->bays.count == 1) return NULL;
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *other = FRAME_PLATFORM_MEMBER(p, i);
        if (other->y < y + p->t - SAME && other->y > y - p->t + SAME && reaches(p, s, other)) return other;
    }
    return NULL;
}

/* Moves a place one way until nothing is in the way; not given when it leaves the stretch. */
static double clear(const frame_platform *p, const stretch *s, double y, int up) {
    for (int tries = 0; tries < 50; tries++) {
        if (y < s->last - SAME || y < s->from - SAME || y + p->t > s->to + SAME) return FRAME_NOT_GIVEN;
        const frame_platform_member *other = in_the_way(p, s, y);
        if (!other) return y;
        y = up ? other->y + p->t : other->y - p->t;
    }
    return FRAME_NOT_GIVEN;
}

static double settle(const frame_platform *p, const stretch *s, double y) {
    if (y + p->t <= s->from + SAME || y >= s->to - SAME) return FRAME_NOT_GIVEN;
    const double at = fmin(fmax(y, s->from), s->to - p->t);
    const double up = clear(p, s, at, 1), down = clear(p, s, at, 0);
    if (up == FRAME_NOT_GIVEN || down == FRAME_NOT_GIVEN) return up == FRAME_NOT_GIVEN ? down : up;
    return at - down <= up - at + SAME ? down : up;
}

/* A joist from joint to joint, lapping over; or the tails that an opening leaves of it. */
static int add_joist(frame_platform *p, const stretch *s, double y) {
    const frame_platform_bay *bay = FRAME_PLATFORM_BAY(p, s->bay);
    const double from = bay->from - lap_at(p, s, y, 0), to = bay->to + lap_at(p, s, y, 1);
    frame_platform_member member = {y, from, to, FRAME_PIECE_JOIST, s->bay, s->hole};
    if (s->hole < 0) return frame_array_push(&p->members, &member) != NULL;
    const frame_platform_hole *hole = FRAME_PLATFORM_HOLE(p, s->hole);
    const double beside = hole->headers * p->t + p->gap;
    int kept = 1;
    member.kind = FRAME_PIECE_TAIL;
    member.to = hole->x - beside;
    if (hole->x > bay->from + SAME) kept &= frame_array_push(&p->members, &member) != NULL;
    member.from = hole->x + hole->length + beside;
    member.to = to;
    if (hole->x + hole->length < bay->to - SAME) kept &= frame_array_push(&p->members, &member) != NULL;
    return kept;
}

/* More of them where the space up to the next is wider than the spacing: set against it, if that is near enough. prev
 * and next: middles. */
static int close_up(frame_platform *p, stretch *s, double prev, double next) {
    while (next - prev > p->spacing + SAME) {
        const double y = clear(p, s, fmin(next - 1.5 * p->t, prev + p->spacing - p->t / 2), 0);
        if (y == FRAME_NOT_GIVEN) return 1;
        if (!add_joist(p, s, y)) return 0;
        s->last = y + p->t;
        prev = y + p->t / 2;
    }
    return 1;
}

static int fill(frame_platform *p, stretch *s) {
    const frame_positions *at = &p->positions;
    double prev = s->from - p->t / 2;
    int i = (int)fmax(floor((s->from - p->t - at->base) / at->spacing) - (double)at->nearest, 0);
    for (; i < at->count && frame_position(at, i) < s->to; i++) {
        const double y = settle(p, s, frame_position(at, i));
        if (y == FRAME_NOT_GIVEN) continue;
        if (!close_up(p, s, prev, y + p->t / 2) || !add_joist(p, s, y)) return 0;
        s->last = y + p->t;
        prev = y + p->t / 2;
    }
    return close_up(p, s, prev, s->to + p->t / 2);
}

/* Between two groups of a bay, and within an opening. */
static int fill_bay(frame_platform *p, int bay) {
    double from = FRAME_NOT_GIVEN;
    int kept = 1;
    for (size_t i = 0; i < p->groups.count; i++) {
        const frame_platform_group *group = FRAME_PLATFORM_GROUP(p, i);
        if (group->bay != bay) continue;
        stretch s = {from, group->from, from, bay, -1};
        if (from != FRAME_NOT_GIVEN) kept &= fill(p, &s);
        from = group->to;
        if (group->hole < 0) continue;
        const frame_platform_hole *hole = FRAME_PLATFORM_HOLE(p, group->hole);
        s = (stretch){hole->y, hole->y + hole->width, hole->y, bay, group->hole};
        kept &= fill(p, &s);
    }
    return kept;
}

frame_status frame_platform_place_joists(frame_platform *p) {
    p->positions = (frame_positions){.length = p->width + 2 * p->t, /* those that reach past an end too */
                                     .spacing = p->spacing,
                                     .thickness = p->t,
                                     .datum = p->datum + p->t,
                                     .first = p->first};
    const frame_status status = frame_positions_find(&p->positions);
    if (status) return status;
    p->positions.base -= p->t;
    if (p->positions.count > MOST_JOISTS)
        return frame_fail_number(FRAME_TOO_LARGE, "spacing_in", p->spacing, "wider: at most 1,000 joists");
    for (size_t i = 0; i < p->bays.count; i++)
        if (!fill_bay(p, (int)i)) return FRAME_NO_MEMORY;
    return FRAME_OK;
}
