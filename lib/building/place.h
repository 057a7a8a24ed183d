/* Placing sticks in the world of the site. */
#ifndef FRAME_LIB_BUILDING_PLACE_H
#define FRAME_LIB_BUILDING_PLACE_H

#include "building/framing.h"
#include "timber/stick.h"

/* Where a part's own axes lie: turned about the upright and moved. */
typedef struct frame_place {
    double x, y, z, cosine, sine;
} frame_place;

/* A stair laid out, and where it lies: along its run, from the face of its first riser. */
frame_status frame_stair_solve(const frame_framing_job *job, size_t stair, frame_stairs **made);
frame_place frame_stair_place(const frame_framing_job *job, size_t stair, double run);

/* A stick to be kept: the job takes it, also when it fails. */
typedef struct frame_placed_stick {
    frame_stick *stick;
    const char *name, *of, *level, *section;
    frame_size size;
    frame_species species;
    frame_grade grade;
    frame_stage stage;
    int32_t plies, spare; /* more than 1 where one stick stands for plies that are bought singly */
} frame_placed_stick;
frame_status frame_place_stick(frame_framing_job *job, const frame_place *at, const frame_placed_stick *placed);

/* A part that could not be laid out is noted, and the work goes on. */
frame_status frame_place_or_note(frame_framing_job *job, frame_status status, const char *part);

frame_status frame_place_walls(frame_framing_job *job);
frame_status frame_place_floors(frame_framing_job *job);
frame_status frame_place_stairs(frame_framing_job *job);
frame_status frame_place_beams(frame_framing_job *job);
frame_status frame_place_posts(frame_framing_job *job);
frame_status frame_place_roofs(frame_framing_job *job);
/* Proves that no two sticks share wood, by a sweep. */
frame_status frame_place_prove(frame_framing_job *job);
/* Numbers the sticks that are cut alike. */
frame_status frame_place_gangs(frame_framing_job *job);

#endif
