/* The shape of a stair once its risers and treads are settled: flights, run, and the line of its nosings. */
#include <math.h>

#include "base/error.h"
#include "layout/stair.h"

/* As even as whole risers allow, the longer flights first. */
static void deal_out(frame_stair *stair, int flights) {
    stair->flights = flights;
    for (int i = 0; i < flights; i++) stair->risers_of[i] = stair->risers / flights + (i < stair->risers % flights);
}

frame_status frame_stair_deal(frame_stair *stair, int risers) {
    stair->risers = risers;
    stair->riser = stair->rise / risers;
    int flights = stair->landings_given >= 0 ? stair->landings_given + 1 : 1;
    if (flights > risers)
        return frame_fail_number(FRAME_IMPOSSIBLE, "landings", stair->landings_given, "fewer than the risers");
    deal_out(stair, flights);
    while (stair->landings_given < 0 && flights < FRAME_STAIR_FLIGHTS && flights < risers &&
           stair->risers_of[0] * stair->riser > stair->limits.at[FRAME_STAIR_FLIGHT_RISE] + 1e-9)
        deal_out(stair, ++flights);
    if (stair->risers_of[0] > FRAME_STAIR_FLIGHT_RISERS)
        return frame_fail_number(FRAME_TOO_LARGE, "risers", risers, "at most 90 risers in a flight");
    return FRAME_OK;
}

static double nosing_of(const frame_stair *stair, double tread) {
    if (stair->nosing_given != FRAME_NOT_GIVEN) return stair->nosing_given;
    return stair->riser_thickness > 0 && tread < stair->limits.at[FRAME_STAIR_NOSING_TREAD] ? 1 : 0;
}

void frame_stair_set_tread(frame_stair *stair, double tread) {
    stair->tread = tread;
    stair->nosing = nosing_of(stair, tread);
    stair->step = sqrt(stair->riser * stair->riser + tread * tread);
    stair->angle = atan2(stair->riser, tread);
}

int frame_stair_treads_of(const frame_stair *stair, int flight) {
    const int last = flight == stair->flights - 1;
    return stair->risers_of[flight] - (last && stair->top == FRAME_STAIR_TOP_TREAD ? 0 : 1);
}

int frame_stair_treads(const frame_stair *stair) {
    return stair->risers - stair->flights + (stair->top == FRAME_STAIR_TOP_TREAD);
}

double frame_stair_run(const frame_stair *stair) {
    return frame_stair_treads(stair) * stair->tread + (stair->flights - 1) * stair->landing;
}

/* What landings take of a leg: the one it arrives at, and the one it leaves from, which it crosses by its width or its
 * length. */
static double landings_in_leg(const frame_stair *stair, int flight) {
    const double below = stair->turn == FRAME_STAIR_QUARTER ? stair->width : stair->landing;
    return (flight > 0 ? below : 0) + (flight < stair->flights - 1 ? stair->landing : 0);
}

double frame_stair_leg(const frame_stair *stair) {
    double longest = 0;
    if (stair->turn == FRAME_STAIR_STRAIGHT) return frame_stair_run(stair);
    for (int i = 0; i < stair->flights; i++)
        longest = fmax(longest, frame_stair_treads_of(stair, i) * stair->tread + landings_in_leg(stair, i));
    return longest;
}

/* Walks down from the head. of_flight: the level distance of its top riser's face; top: the height it climbs to. */
typedef struct descent {
    int flight;
    double face, top, foot; /* foot: the distance of its first tread's nosing */
} descent;

static descent begin_descent(const frame_stair *stair) {
    descent d = {stair->flights - 1, stair->top == FRAME_STAIR_TOP_TREAD ? stair->tread : 0, stair->rise, 0};
    d.foot = d.face + stair->nosing + (stair->risers_of[d.flight] - 1) * stair->tread;
    return d;
}

static void descend(const frame_stair *stair, descent *d) {
    d->face += (stair->risers_of[d->flight] - 1) * stair->tread + stair->landing;
    d->top -= stair->risers_of[d->flight] * stair->riser;
    d->flight--;
    d->foot = d->face + stair->nosing + (stair->risers_of[d->flight] - 1) * stair->tread;
}

double frame_stair_line(const frame_stair *stair, double distance) {
    for (descent d = begin_descent(stair);; descend(stair, &d)) {
        if (distance <= d.face + stair->nosing) return d.top;
        if (distance <= d.foot) return d.top - (distance - d.face - stair->nosing) * stair->riser / stair->tread;
        if (d.flight == 0) return 0;
    }
}

/* Past a turn the line of the flights below is not under the well's edge. */
static int past_turn(const frame_stair *stair, double distance) {
    const descent d = begin_descent(stair);
    return stair->turn != FRAME_STAIR_STRAIGHT && stair->flights > 1 && distance > d.foot;
}

double frame_stair_headroom(const frame_stair *stair) {
    if (stair->well == FRAME_NOT_GIVEN || stair->ceiling == FRAME_NOT_GIVEN) return FRAME_NOT_GIVEN;
    if (past_turn(stair, stair->well)) return FRAME_NOT_GIVEN;
    return stair->ceiling - frame_stair_line(stair, stair->well);
}

double frame_stair_well_needed(const frame_stair *stair) {
    if (stair->ceiling == FRAME_NOT_GIVEN) return FRAME_NOT_GIVEN;
    const double line = stair->ceiling - stair->limits.at[FRAME_STAIR_HEADROOM]; /* the line must lie no higher */
    double above = 0; /* where the flight above has its foot */
    if (line < 0) return FRAME_NOT_GIVEN;
    for (descent d = begin_descent(stair);; descend(stair, &d)) {
        const double low = d.top - (stair->risers_of[d.flight] - 1) * stair->riser;
        if (line >= d.top) return above;
        if (line >= low) return d.face + stair->nosing + (d.top - line) * stair->tread / stair->riser;
        above = d.foot;
        if (d.flight == 0) return above;
        if (stair->turn != FRAME_STAIR_STRAIGHT) return FRAME_NOT_GIVEN;
    }
}
