/* A job while it is being worked out. */
#ifndef FRAME_LIB_BUILDING_JOB_H
#define FRAME_LIB_BUILDING_JOB_H

#include "building/building.h"

/* What a roof hands on to the headers and nailings that name it. */
typedef struct frame_job_roof {
    frame_building_roof roof;
    frame_rafter_out rafter;
    double eave_dead_plf, eave_snow_plf, eave_roof_live_plf; /* down on the eave's wall, per foot of wall */
} frame_job_roof;

typedef struct frame_job {
    const frame_building_in *in;
    frame_answer *answer;
    frame_building_out *out;
    frame_building_inside *inside;
    frame_job_roof *roofs;
    frame_text *text; /* reused for every text that is written */
    frame_known known;
} frame_job;

/* Each works one kind of item out: members, checks, marks, notes. */
frame_status frame_job_floors(frame_job *job);
frame_status frame_job_roofs(frame_job *job);
frame_status frame_job_headers(frame_job *job);
frame_status frame_job_nailings(frame_job *job);
frame_status frame_job_buying(frame_job *job);

/* What a roof sets on the wall under its eave. With a ridge board and ties each wall carries half the roof's width and
 * the overhang; that the eave of a pair takes the whole of its rafter's load follows from symmetry: the ridge hangs in
 * balance. */
void frame_job_hand_on(frame_job_roof *roof);
/* The level thrust at each rafter of a roof of two faces with a tie at the plate, under dead load and the larger of
 * snow and roof live load. */
double frame_job_thrust(const frame_building_roof *roof, frame_working *w);

/* The roof of a name; fails naming the field when there is none. */
frame_status frame_job_find_roof(const frame_job *job, const char *field, const char *name,
                                 const frame_job_roof **roof);

/* Adds a kind of member; the job takes the stick (NULL: none), also when it fails. */
typedef struct frame_job_piece {
    const char *name, *of, *cuts;
    frame_size size;
    frame_species species;
    frame_grade grade;
    double length_in;
    int32_t count;
    int32_t spare;
    frame_stick *stick;
} frame_job_piece;
frame_status frame_job_member(frame_job *job, const frame_job_piece *piece);

/* Adds a check from a calculation's result (any out-struct): its notes too. The job takes the working, also when it
 * fails. */
typedef struct frame_job_result {
    const char *name, *what, *governs;
    double ratio;
    frame_bool passes;
    frame_known known;
    const void *out;
    frame_working *working;
} frame_job_result;
frame_status frame_job_check(frame_job *job, const frame_job_result *result);

/* The notes that a result's bits stand for; those of a described item's defaults. */
frame_status frame_job_notes(frame_job *job, const char *about, const void *out);
frame_status frame_job_assumed(frame_job *job, const char *about, const frame_struct *facts, uint64_t assumed);

/* Lays members out along a length, adds the marks, and gives how many there are. */
frame_status frame_job_layout(frame_job *job, const char *name, double length_in, double spacing_in,
                              double thickness_in, int32_t *count);

/* The item at a place of the list of the job, with the bits of its defaults. */
#define FRAME_JOB_ITEM(job, kind, list, i, item, assumed)                                                            \
    frame_building_##kind##_read((const void *)((const char *)(job)->in->list + (i) * (job)->in->list->struct_size), \
                                 item, assumed)

#endif
