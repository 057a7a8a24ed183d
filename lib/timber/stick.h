/* The stick inside the library. */
#ifndef FRAME_LIB_TIMBER_STICK_H
#define FRAME_LIB_TIMBER_STICK_H

#include <frame/timber.h>

#include "base/memory.h"
#include "timber/pool.h"
#include "timber/solid.h"

/* Where a stick lies: its own axes and origin, in the world's. */
typedef struct frame_placement {
    vec3 origin, x, y, z;
} frame_placement;

static inline vec3 frame_to_stick_direction(const frame_placement *at, vec3 d) {
    return (vec3){vec_dot(at->x, d), vec_dot(at->y, d), vec_dot(at->z, d)};
}
static inline vec3 frame_to_world_direction(const frame_placement *at, vec3 d) {
    return vec_add(vec_times(at->x, d.x), vec_add(vec_times(at->y, d.y), vec_times(at->z, d.z)));
}
static inline vec3 frame_to_world(const frame_placement *at, vec3 p) {
    return vec_add(at->origin, frame_to_world_direction(at, p));
}

/* A plane that cuts the stick, as it was asked for. The normal points into the waste. */
typedef struct frame_stick_record {
    frame_plane plane;
    const char *label;
    frame_stick_role role;
    frame_stick_notch_kind kind; /* FRAME_NOT_GIVEN_INT for a cut */
    int32_t notch;               /* 0 for a cut */
    frame_stick_end closes;      /* 0 when it closes no end */
    int32_t number, side;        /* the solid's number of the plane, and which way round that one is */
} frame_stick_record;

/* A corner of an outline, and a point of a mark, in the stick's own x and across its face. */
typedef struct frame_stick_point {
    double x, across;
    frame_stick_face face;
    int32_t group; /* the loop or the line */
    int32_t record;
    int32_t edge; /* 0 within the face */
} frame_stick_point;

struct frame_stick {
    const char *name, *section;
    int32_t count;
    frame_stick_end measure_from;
    double length, y[2], z[2]; /* of the stick as placed, before any cut */
    frame_placement placement;
    /* The first two records are the ends left square; they stand only while no end cut has been made there. Then the
     * cuts, then the notches in their order. */
    frame_pool records;
    frame_stick_record record_room[14];
    int32_t square[2]; /* whether the first two records stand */
    int32_t cuts, notches;
    frame_solid solid;
    double low, high; /* the long points along x */
    frame_pool corners, marks;
    frame_stick_point corner_room[40], mark_room[48];
    frame_arena texts;
};

#define FRAME_RECORD(stick, i) (&FRAME_POOL_ITEM(frame_stick_record, (stick)->records, i))

/* Reads where a stick lies. */
frame_status frame_stick_place(const frame_stick_in *in, frame_placement *placement, double *length);
/* Reads a plane into the stick's own axes. */
frame_status frame_stick_read_plane(frame_stick *stick, const frame_stick_plane *plane, frame_stick_record *record);
/* Finds the end that a cut closes, if its role is to close one. */
frame_status frame_stick_find_end(frame_stick_record *record);
/* Cuts the solid anew by all records, and finds outlines and marks again. */
frame_status frame_stick_solve(frame_stick *stick);
/* Finds each record's plane among those of the solid, or adds it. */
frame_status frame_stick_number_planes(frame_stick *stick);
/* Finds the outlines of the side faces and the lines the planes make on them. */
frame_status frame_stick_outline(frame_stick *stick);
/* The word for a side face, by its plane's number. */
extern const frame_stick_face frame_stick_face_of[4];
/* A point of a side face, by its plane's number, in the stick's own axes. */
vec3 frame_stick_point_on(const frame_stick *stick, int face, double x, double across);
/* The record of the i-th saw setting. */
const frame_stick_record *frame_stick_record_at(const frame_stick *stick, size_t saw);
/* The place of a record in the list of saw settings. */
int32_t frame_stick_saw_of(const frame_stick *stick, int32_t record);
/* Whether a point lies in the notch a record belongs to, or on its bounds; always for a cut. */
int frame_stick_in_notch(const frame_stick *stick, const frame_stick_record *record, vec3 point);
/* The area of the face a record's plane leaves, within its own notch. */
double frame_stick_record_area(const frame_stick *stick, const frame_stick_record *record);
/* A distance from the start's x, as measured from the stick's datum. */
double frame_stick_running(const frame_stick *stick, double x);

frame_status frame_no_stick(void);
frame_status frame_stick_no_index(size_t index, size_t count);

#endif
