/* Joists on their marks between supports: what floors and decks share. x along the joists, y along the layout, z up
 * from the joists' underside; all in inches. */
#ifndef FRAME_LIB_LAYOUT_PLATFORM_H
#define FRAME_LIB_LAYOUT_PLATFORM_H

#include "layout/piece.h"
#include "marks/positions.h"

enum {
    FRAME_STAGE_SUPPORTS = 1,
    FRAME_STAGE_RIMS,
    FRAME_STAGE_ENDS,
    FRAME_STAGE_HEADERS,
    FRAME_STAGE_JOISTS,
    FRAME_STAGE_BLOCKS,
    FRAME_STAGE_BOARDS,
    FRAME_STAGE_GUARDS
};

typedef struct frame_platform_hole {
    const char *what; /* the list it was given in, for messages */
    int index;
    double x, y, length, width;
    int headers, trimmers; /* plies */
} frame_platform_hole;

typedef struct frame_platform_beam {
    double at;
    int joint; /* joists are joined over it */
} frame_platform_beam;

/* A stretch of the joists from joint to joint. */
typedef struct frame_platform_bay {
    double from, to; /* at the rims' faces, the ledgers' less the gap, the middle of beams */
    int joint_before, joint_after;
} frame_platform_bay;

/* A joist, or a ply of one: its near side, and from where to where it reaches. */
typedef struct frame_platform_member {
    double y, from, to;
    frame_piece_kind kind;
    int bay, hole; /* hole: its opening, -1 for none */
} frame_platform_member;

/* Stretches across the layout that joists on centres keep out of, in one bay. */
typedef struct frame_platform_group {
    double from, to;
    int bay, hole; /* hole: what lies within is an opening's */
    const char *what;
    int index;
} frame_platform_group;

typedef struct frame_platform {
    /* As given. */
    double span, width, spacing, datum, sheet, rim, ledger, gap, stock, lap;
    frame_first_mark first;
    frame_joist_end ends[2];
    frame_joist_joint joint;
    int end_plies;
    frame_layout_section joist;
    double t, d;
    frame_array beams, holes; /* of the structs above */
    frame_array walls;        /* frame_floor_wall, checked */
    /* As laid out. */
    frame_array bays, groups, members;
    frame_positions positions;
    frame_layout_set *set;
    frame_array stages;  /* int32_t: of each piece */
    frame_array hangers; /* frame_floor_hanger */
    int failed;
} frame_platform;

#define FRAME_PLATFORM_HOLE(p, i) (&FRAME_ITEM(frame_platform_hole, (p)->holes, i))
#define FRAME_PLATFORM_BEAM(p, i) (&FRAME_ITEM(frame_platform_beam, (p)->beams, i))
#define FRAME_PLATFORM_BAY(p, i) (&FRAME_ITEM(frame_platform_bay, (p)->bays, i))
#define FRAME_PLATFORM_GROUP(p, i) (&FRAME_ITEM(frame_platform_group, (p)->groups, i))
#define FRAME_PLATFORM_MEMBER(p, i) (&FRAME_ITEM(frame_platform_member, (p)->members, i))

void frame_platform_begin(frame_platform *platform, frame_layout_set *set);
void frame_platform_give(frame_platform *platform);
/* The thickness of what closes an end (0 near, 1 far), and the gap before it. */
double frame_platform_end(const frame_platform *platform, int far);
double frame_platform_gap(const frame_platform *platform, int far);

/* Steps of laying out, in this order. */
frame_status frame_platform_find_bays(frame_platform *platform);
frame_status frame_platform_place_groups(frame_platform *platform);
frame_status frame_platform_place_joists(frame_platform *platform);
void frame_platform_add_rims(frame_platform *platform);
void frame_platform_add_joists(frame_platform *platform);
void frame_platform_add_headers(frame_platform *platform);
/* Rows of cross bridging, and the rows of blocking they keep off. */
typedef struct frame_platform_bridging {
    const double *rows, *blocks;
    size_t count, block_count;
    frame_size size;
} frame_platform_bridging;
frame_status frame_platform_add_bridging(frame_platform *platform, const frame_platform_bridging *given);
/* Whether a place x, so far to either side, lies at an opening or its headers between two joists. */
int frame_platform_in_hole(const frame_platform *platform, double x, double reach, double from, double to);
int frame_platform_bridged(const frame_platform *platform);
frame_status frame_platform_add_blocks(frame_platform *platform, const double *rows, size_t count);
/* Refuses beams so near to one another that they, or what carries them, would meet. half: of the width of each. */
frame_status frame_platform_check_beams(const frame_platform *platform, const double *half);
/* A beam under the joists from y to y, its plies' joints over the supports given; 0 without memory. */
frame_status frame_platform_add_beam(frame_platform *platform, const frame_layout_section *ply, int plies, double x,
                                     double from, double to, const double *supports, size_t count);

/* Adds a piece with its stage. axis from start to end. */
frame_layout_piece *frame_platform_add(frame_platform *platform, int stage, frame_piece_kind kind, int number,
                                       const frame_layout_section *section, vec3 start, vec3 end, vec3 crown);

/* What the layout came to. */
double frame_platform_widest(const frame_platform *platform);
/* How far nearer to the start the joists of a bay, and with them its sheets, begin: every second bay laps the one
 * before. */
double frame_platform_shift(const frame_platform *platform, int bay);
int frame_platform_edges_off(const frame_platform *platform);
/* The longest cantilever of the joists, 0 for none; and whether any is longer than a quarter of the span behind it, or
 * than a length. */
double frame_platform_cantilever(const frame_platform *platform);
int frame_platform_overreaches(const frame_platform *platform, double most);
double frame_platform_longest_span(const frame_platform *platform);
double frame_platform_area(const frame_platform *platform);
int frame_platform_joists(const frame_platform *platform);
int frame_platform_joints(const frame_platform *platform);

#endif
