/* The header of an opening: its jacks by the bearing it needs, its size by what comes down on it. */
#include <math.h>

#include "base/error.h"
#include "building/framing.h"
#include "material/lumber.h"

static frame_grade grade_of(const frame_part_opening *opening) {
    frame_grade grade = opening->grade;
    if (grade == FRAME_NOT_GIVEN_INT) frame_grade_find("No.2", &grade);
    return grade;
}

/* Jacks whose bearing the larger end needs, under a header of two plies. */
static int32_t jacks_for(const frame_part_opening *opening, frame_species species, const frame_by_kind ends[2]) {
    frame_lumber lumber;
    if (opening->jacks != FRAME_NOT_GIVEN_INT) return opening->jacks;
    if (frame_lumber_find(species, grade_of(opening), FRAME_SIZE(2, 10), &lumber)) return 1;
    const double most = fmax(frame_by_kind_most(&ends[0], NULL, NULL), frame_by_kind_most(&ends[1], NULL, NULL));
    const double needed = ceil(most / (lumber.fc_perp_psi * 2 * 1.5 * 1.5) - 1e-9);
    return (int32_t)fmin(fmax(needed, 1), 3);
}

static void place(const frame_part_opening *opening, int32_t jacks, frame_line_beam *beam, frame_support supports[2],
                  frame_at_point *points) {
    const double before = beam->length;
    beam->length = opening->width_in + 3.0 * jacks;
    supports[0] = (frame_support){0.75 * jacks, 0, 0};
    supports[1] = (frame_support){beam->length - 0.75 * jacks, 0, 0};
    const double shift = before > 0 ? (beam->length - before) / 2 : 1.5 * jacks - opening->at_in;
    for (size_t i = 0; i < beam->point_count; i++) points[i].s = fmin(fmax(points[i].s + shift, 0), beam->length);
    beam->bearing_in = 1.5 * jacks;
    beam->unbraced_in = supports[1].s - supports[0].s;
}

/* A wall that bears nothing has a stud laid flat. */
static void lay_flat(const frame_framing_job *job, size_t wall, frame_chosen *chosen) {
    chosen->size = job->walls[wall].size;
    chosen->plies = 1;
    chosen->jacks = 1;
}

frame_status frame_framing_header(frame_framing_job *job, size_t w, size_t i, const frame_at_point *over, size_t count,
                                  frame_by_kind ends[2]) {
    const frame_part_opening *opening = &job->openings[i];
    const frame_part_wall *wall = &job->walls[w];
    frame_chosen *chosen = &job->chosen_headers[i];
    frame_support supports[2];
    frame_line_result result;
    ends[0] = ends[1] = (frame_by_kind){{0}};
    if (!wall->bearing) {
        lay_flat(job, w, chosen);
        return FRAME_OK;
    }
    frame_at_point *points = frame_take(sizeof *points * (count + 1));
    if (!points) return FRAME_NO_MEMORY;
    for (size_t p = 0; p < count; p++) points[p] = over[p];
    const char *name = frame_framing_text(job, "%s, header", opening->name);
    frame_line_beam beam = {.name = name ? name : "",
                            .kind = FRAME_BEARER_WALL,
                            .points = points,
                            .point_count = count,
                            .supports = supports,
                            .support_count = 2,
                            .size = opening->header_size,
                            .plies = opening->plies,
                            .most_plies = wall->size >= FRAME_SIZE(2, 6) ? 3 : 2,
                            .most_depth = job->levels[job->level_of_wall[w]].height_in - 3 - opening->head_in,
                            .species = opening->species == FRAME_NOT_GIVEN_INT ? wall->species : opening->species,
                            .grade = grade_of(opening),
                            .live_limit = 360,
                            .total_limit = 240,
                            .header = 1,
                            .clear_span = opening->width_in};
    place(opening, 1, &beam, supports, points);
    frame_status status = frame_line_reactions(&beam, 0, ends);
    if (!status) {
        chosen->jacks = jacks_for(opening, beam.species, ends);
        place(opening, chosen->jacks, &beam, supports, points);
        status = frame_line_choose(job, &beam, &result);
    }
    if (!status) {
        chosen->size = result.size;
        chosen->plies = result.plies;
        /* Its own weight is part of the wall's. */
        status = frame_line_reactions(&beam, 0, ends);
    }
    frame_give(points);
    return status;
}
