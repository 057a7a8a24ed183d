/* A stair while it is being worked out: its limits, its flights, its shape. All lengths in inches. */
#ifndef FRAME_LIB_LAYOUT_STAIR_H
#define FRAME_LIB_LAYOUT_STAIR_H

#include "layout/piece.h"
#include "working/record.h"

/* In the order of the words of stair_limits.csv. */
typedef enum frame_stair_limit {
    FRAME_STAIR_WIDTH = 1,
    FRAME_STAIR_HEADROOM,
    FRAME_STAIR_FLIGHT_RISE,
    FRAME_STAIR_RISER,
    FRAME_STAIR_TREAD,
    FRAME_STAIR_VARIATION,
    FRAME_STAIR_OPEN_RISER,
    FRAME_STAIR_OPEN_RISER_RISE,
    FRAME_STAIR_NOSING_LEAST,
    FRAME_STAIR_NOSING_MOST,
    FRAME_STAIR_NOSING_TREAD,
    FRAME_STAIR_WALKLINE_TREAD,
    FRAME_STAIR_NARROW_TREAD,
    FRAME_STAIR_WALKLINE,
    FRAME_STAIR_LANDING,
    FRAME_STAIR_HANDRAIL_LOW,
    FRAME_STAIR_HANDRAIL_HIGH,
    FRAME_STAIR_HANDRAIL_RISERS,
    FRAME_STAIR_GUARD_DROP,
    FRAME_STAIR_GUARD_LEVEL,
    FRAME_STAIR_GUARD_STAIR,
    FRAME_STAIR_LIMITS
} frame_stair_limit;

typedef struct frame_stair_limits {
    double at[FRAME_STAIR_LIMITS];
    frame_known known[FRAME_STAIR_LIMITS]; /* FRAME_KNOWN_USER where the caller's own stands */
    const char *source[FRAME_STAIR_LIMITS];
} frame_stair_limits;

/* The limits of an edition. FRAME_NO_VALUE for one the table does not know. */
frame_status frame_stair_limits_find(frame_code_edition edition, frame_stair_limits *limits);

enum { FRAME_STAIR_FLIGHTS = 21, FRAME_STAIR_FLIGHT_RISERS = 90, FRAME_STAIR_STRINGERS = 20 };

typedef struct frame_stair {
    frame_stair_limits limits;
    /* As given. */
    double finish_below, finish_above, tread_thickness, riser_thickness, width, well, ceiling;
    frame_stair_top top;
    frame_stair_turn turn;
    int landings_given;                     /* whether the number of landings was */
    double nosing_given;                    /* or FRAME_NOT_GIVEN */
    double floor_at[FRAME_STAIR_STRINGERS]; /* of each stringer of the first flight */
    frame_layout_section stringer;
    int stringers;
    /* As chosen. */
    double rise, riser, tread, nosing, landing;
    int risers, flights, risers_of[FRAME_STAIR_FLIGHTS];
    /* What follows. */
    double step, angle; /* along the slope, in radians */
} frame_stair;

/* Deals so many risers out to the flights: as few flights as the limit of a flight's rise asks for, or as were given.
 */
frame_status frame_stair_deal(frame_stair *stair, int risers);
/* Takes a tread, and with it the nosing. */
void frame_stair_set_tread(frame_stair *stair, double tread);
int frame_stair_treads_of(const frame_stair *stair, int flight);
int frame_stair_treads(const frame_stair *stair);
double frame_stair_run(const frame_stair *stair);
/* The run of the longest leg, with the landings that lie in it. */
double frame_stair_leg(const frame_stair *stair);
/* Height above the floor below of the line of the nosings, or of the landing, at a level distance below the well's edge
 * at the head. */
double frame_stair_line(const frame_stair *stair, double distance);
/* Headroom at the well's far edge; not given when it lies past a turn or was not given. */
double frame_stair_headroom(const frame_stair *stair);
/* The shortest well with the headroom wanted; not given when none has it, or it would reach past a turn. */
double frame_stair_well_needed(const frame_stair *stair);

/* Takes what is given; the limits' worst source and a caution for own limits go to out. */
frame_status frame_stair_take(const frame_stairs_in *in, frame_stair *stair, frame_answer *answer,
                              frame_stairs_out *out);
/* Says which limits what was given breaks, whether it passes, and what was not checked. */
void frame_stair_judge(const frame_stairs_in *in, const frame_stair *stair, frame_stairs_out *out);

/* Picks risers and tread: what is given is kept, the rest is chosen within the limits. */
frame_status frame_stair_choose(const frame_stairs_in *in, frame_stair *stair, frame_working *w);

/* A stringer's foot: how high its first riser cut is; floor: how much higher the floor is under it. */
double frame_stair_first_cut(const frame_stair *stair, int flight, double floor);
/* The stock for a stringer, long point to long point. */
double frame_stair_stock(const frame_stair *stair, int flight, double floor);
/* Adds the pieces of all flights. */
void frame_stair_add_pieces(const frame_stair *stair, frame_layout_set *set);

#endif
