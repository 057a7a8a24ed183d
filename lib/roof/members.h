/* Framing a roof. It goes through four forms: the faces with their sides as they are framed (members_skin.c); the runs,
 * which are the members along lines, with their ends where several meet (members_runs.c, members_nodes.c); the pieces,
 * each an axis and the planes that cut it; and the sticks the kernel makes of them, which the proof tries against each
 * other.
 *
 * Heights are above the plates. A roof plane is z = base + slope (up . p). */
#ifndef FRAME_LIB_ROOF_MEMBERS_H
#define FRAME_LIB_ROOF_MEMBERS_H

#include <frame/roof.h>

#include "base/answer.h"
#include "timber/plane2.h"
#include "timber/vector.h"

/* What a section is for. */
enum {
    MEMBERS_RAFTERS,
    MEMBERS_RIDGES,
    MEMBERS_HIPS,
    MEMBERS_VALLEYS,
    MEMBERS_FASCIA,
    MEMBERS_JOISTS,
    MEMBERS_SECTIONS
};
typedef struct members_section {
    frame_size size;
    int32_t plies;
    double thickness, depth;
    const char *name;
} members_section;

/* A side of a face as it is framed, the face on the left going from p to q; at eaves it is the tail cut. */
typedef struct members_side {
    v2 p, q;
    line2 line;       /* n . p >= at within the face */
    double off;       /* how far inside what ends at it is cut */
    double overhang;  /* at eaves: how far outside the building line it lies */
    double low, high; /* at eaves: where the building line begins and ends along the face */
    double plate;     /* at eaves: the height of what its rafters stand on */
    frame_roof_line_kind kind;
    int32_t of, edge;   /* roof line; plan edge of the eave, or of the upright face beyond */
    int32_t run;        /* the member along it, -1 without one */
    int32_t from, to;   /* roof points */
    int32_t prev, next; /* sides of the same face */
    int32_t face;
    int32_t on_gable; /* the eave of a half hip */
    int32_t spare;
} members_side;

/* The upper plate of a wall, in plan. */
typedef struct members_plate {
    line2 wall, ends[2]; /* what lies within all of them lies over it, or behind it */
    double z;
    polygon2 plan;
    int32_t edge, on_gable;
} members_plate;

typedef struct members_face {
    int32_t first, count; /* sides */
    int32_t face;         /* roof face; of several in one plane the first */
    v2 up, along;         /* along: the same for opposite faces */
    double slope, base;
} members_face;

/* A member along lines of the roof that follow each other straight. */
typedef struct members_run {
    frame_roof_line_kind kind;
    int32_t of;              /* its first roof line */
    int32_t point[2];        /* lower and upper roof point */
    v2 at[2], dir;           /* in plan, dir from the lower to the upper */
    double length, slope, z; /* in plan; z: height of the roof at the lower point */
    double drop;             /* of its top under the line */
    int32_t section;
    double half;     /* of its thickness */
    int32_t face[2]; /* members_face on the right and on the left */
    int32_t gone;    /* part of another run now, or too short to be a member */
} members_run;

/* A plane that ends a run, in plan: what lies beyond it stays. */
typedef struct members_stop {
    line2 line;
    const char *label;
    double required; /* share of the cut face that must bear; 0 for one that need not */
} members_stop;

enum { MEMBERS_STOPS = 10 };
/* An end of a run at a point of the roof; away: into the run. */
typedef struct members_end {
    int32_t run, which, point;
    v2 away;
    members_stop stops[MEMBERS_STOPS];
    int32_t stop_count;
    int32_t notched; /* the stops leave what lies beyond any of them: the tail of a valley */
    int32_t closed;  /* something else than the point itself ends it */
    double past;     /* how far it runs on past the point */
} members_end;

/* What of a ridge's end lies past its point: other members leave it room. */
typedef struct members_head {
    v2 at, away;
    double past, half, top;
} members_head;

/* A member along a line as it lies in plan, for what must leave it room. */
typedef struct members_part {
    int32_t run, end[2]; /* -1 for a ledger; its ends among all ends, -1 */
    int32_t spare;
    polygon2 plan;
    v2 low, high; /* of its box */
    double rank[3];
} members_part;

/* A line along which one part leaves another room. */
typedef struct members_clearing {
    line2 line;   /* what lies within stays */
    double loss;  /* area it costs */
    double share; /* of the cut runs along the other part */
} members_clearing;

/* A plane that cuts a piece. The cuts of a piece stand before its notches. */
typedef struct members_cut {
    vec3 point, waste;
    const char *label;
    frame_stick_role role;
    int32_t notch; /* from 1; 0 for a cut of its own */
    frame_stick_notch_kind notch_kind;
    double share, area; /* what must bear: of the cut face, and at least so much; 0 for what need not */
} members_cut;

typedef struct members_piece {
    frame_roof_member kind;
    int32_t face, line, edge, section;
    frame_hand hand;
    double thickness, depth;
    vec3 start, end, crown; /* the axis runs along the middle of the top */
    int32_t first_cut, cuts, number;
} members_piece;

/* A set of pieces lives as long as its answer. */
typedef struct members_set {
    frame_array pieces, cuts;
    members_section sections[MEMBERS_SECTIONS];
} members_set;

/* A rafter that sits on a plate, or a joist beside one: what stands on an eave, for what goes between. */
typedef struct members_standing {
    int32_t face, edge; /* members_face; plan edge */
    int32_t common, spare;
    double place, half, top; /* along the face; top: how far up it reaches */
} members_standing;

/* A rafter as it lies in its face. */
typedef struct members_laid {
    int32_t face, spare;
    double place, low, high;
} members_laid;

typedef struct members {
    const frame_roof_members_in *in;
    frame_answer *answer;
    frame_roof_members_out *out;
    frame_roof_solve *roof;
    members_set *set;
    members_section *sections;
    double slope;  /* of the first eave */
    double height; /* above plate */
    double fascia; /* height of the roof planes at the tail cuts */
    v2 origin;
    frame_array faces, sides, runs, ends, heads, parts, plates, standing, laid;
    int32_t *face_of; /* of each roof face its members_face, -1 for an upright one */
    int32_t left_out;
    int32_t counts[24];
} members;

#define MEMBERS_FACE(m, i) (&FRAME_ITEM(members_face, (m)->faces, i))
#define MEMBERS_SIDE(m, i) (&FRAME_ITEM(members_side, (m)->sides, i))
#define MEMBERS_RUN(m, i) (&FRAME_ITEM(members_run, (m)->runs, i))
#define MEMBERS_PART(m, i) (&FRAME_ITEM(members_part, (m)->parts, i))
#define MEMBERS_END(m, i) (&FRAME_ITEM(members_end, (m)->ends, i))

/* The answer of roof_solve, list by list. */
enum { MEMBERS_ROOF_FACES, MEMBERS_ROOF_LINES, MEMBERS_ROOF_POINTS, MEMBERS_ROOF_OUTLINES };
#define MEMBERS_ROOF(m, T, list, i) (((T *)((const frame_answer *)(m)->roof)->lists[list].items)[i])
#define MEMBERS_ROOF_COUNT(m, list) (((const frame_answer *)(m)->roof)->lists[list].count)
#define MEMBERS_LINE(m, i) (&MEMBERS_ROOF(m, frame_roof_solve_line, MEMBERS_ROOF_LINES, i))
#define MEMBERS_POINT(m, i) (&MEMBERS_ROOF(m, frame_roof_solve_point, MEMBERS_ROOF_POINTS, i))
#define MEMBERS_ROOF_FACE(m, i) (&MEMBERS_ROOF(m, frame_roof_solve_face, MEMBERS_ROOF_FACES, i))

static inline double members_plane(const members_face *face, v2 p) {
    return face->base + face->slope * v2_dot(face->up, p);
}
/* The building line of an eave. */
static inline line2 members_wall(const members_side *eave) {
    return line2_moved(eave->line, eave->overhang);
}
static inline int members_is_run(frame_roof_line_kind kind) {
    return kind == FRAME_LINE_RIDGE || kind == FRAME_LINE_HIP || kind == FRAME_LINE_VALLEY || kind == FRAME_LINE_BREAK;
}

/* roof_members.c: room to work in. */
frame_status members_begin(members *m, const frame_roof_members_in *in, frame_answer *answer,
                           frame_roof_members_out *out);
void members_end_work(members *m);
/* Everything up to the ends of the runs. */
frame_status members_find_shape(members *m);
/* members_read.c: the roof, sections, heights; sections that cover what is cut against them. */
frame_status members_read(members *m);
frame_status members_take_sections(members *m);
/* members_skin.c */
frame_status members_find_skin(members *m);
/* members_eaves.c: moves the eaves out to the tail cuts; then the sub-fascias. */
frame_status members_move_eaves(members *m);
frame_status members_add_eaves(members *m);
/* members_plates.c: the plates; the corners of an edge of the plan. */
frame_status members_add_plates(members *m);
void members_edge(const members *m, int32_t edge, v2 *p, v2 *q);
/* members_ledgers.c */
frame_status members_add_ledgers(members *m);
/* members_runs.c, members_nodes.c */
frame_status members_find_runs(members *m);
frame_status members_find_ends(members *m);
frame_status members_end_runs(members *m);
/* Whether, past a side along a wall, the wall goes on without a ledger. */
int members_wall_goes_on(const members *m, const members_side *side, int32_t point);
int32_t members_end_of(const members *m, int32_t run, int which);
/* The share of a cut through a run that must bear on another run. */
double members_share_on(const members *m, const members_run *run, const members_run *other, line2 cut);
/* members_clear.c: cuts what still overlaps; the way one part leaves another room: 0 for none. */
frame_status members_clear_runs(members *m);
void members_find_box(members_part *part);
int members_parts_apart(const members_part *a, const members_part *b);
double members_common_area(const polygon2 *a, const polygon2 *b);
int members_best_side(const polygon2 *own, v2 dir, const polygon2 *other, members_clearing *found);
frame_status members_add_runs(members *m);
/* members_between.c: what goes between rafters. */
frame_status members_add_lookouts(members *m, const members_face *face, const members_side *rake);
frame_status members_add_joists(members *m);
frame_status members_add_blocks(members *m);
/* members_layout.c, members_rafter.c */
frame_status members_lay_out(members *m);
/* Where a line up a face, at a place along it, crosses a side. */
typedef struct members_crossing {
    double up;
    int32_t side;
} members_crossing;
/* Adds the rafter between two sides; *added: 0 when it is left out. */
typedef enum members_standing_at { MEMBERS_ON_CENTRES, MEMBERS_AT_GABLE, MEMBERS_FLYING } members_standing_at;
frame_status members_add_rafter(members *m, const members_face *face, double place, const members_crossing *lower,
                                const members_crossing *upper, members_standing_at where, int *added);
/* members_prove.c: makes every stick; gives the pieces; tries neighbours. */
frame_status members_give(members *m);
/* members_gangs.c: finds which pieces are cut alike. */
frame_status members_find_gangs(members *m, frame_stick *const *sticks);

/* members_piece.c: begins a piece, and cuts the one begun last. */
members_piece *members_add_piece(members *m, frame_roof_member kind, int32_t section, vec3 start, vec3 end);
/* The status of a framing: FRAME_TOO_LARGE where it stopped because there were too many pieces. */
frame_status members_outcome(const members *m, frame_status status);
members_cut *members_add_cut(members *m, frame_stick_role role, vec3 point, vec3 waste, const char *label);
/* Cuts it along a line in plan, upright: what lies beyond the line stays. */
members_cut *members_add_upright(members *m, line2 line, v2 across, const char *label, double share);
/* Makes the last cuts, so many of them, one notch. */
void members_make_notch(members *m, int32_t cuts, frame_stick_notch_kind kind);
void members_take_back(members *m);
frame_status members_stick(const members_set *set, size_t index, const char *name, frame_stick **stick);

#endif
