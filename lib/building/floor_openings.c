/* Openings in floors: the header joists at their ends and the trimmers beside them as bearers of their own, so that the
 * loads of tail joists, stairs and walls go round the opening and down. */
#include <math.h>

#include "base/error.h"
#include "building/floor_plane.h"

static const char *name_of(const frame_framing_job *job, size_t i) {
    return job->floor_openings[i].name;
}

static frame_status find_rectangle(frame_framing_job *job, size_t i) {
    const frame_part_floor_opening *part = &job->floor_openings[i];
    const frame_floor_plane p = frame_floor_plane_of(&job->floors[job->floor_of_opening[i]]);
    frame_floor_edges *e = &job->floor_edges[i];
    const double x[2] = {fmin(part->from_x_in, part->to_x_in), fmax(part->from_x_in, part->to_x_in)},
                 y[2] = {fmin(part->from_y_in, part->to_y_in), fmax(part->from_y_in, part->to_y_in)};
    for (int k = 0; k < 2; k++) e->u[k] = p.along_x ? y[k] : x[k], e->v[k] = p.along_x ? x[k] : y[k];
    if (!(e->u[1] - e->u[0] >= 3) || !(e->v[1] - e->v[0] >= 3))
        return frame_fail(FRAME_IMPOSSIBLE, "to_x_in", "", "at least 3 in each way",
                          "floor opening %.60s: it is less than 3 in long or wide", part->name);
    if (e->u[0] < p.u0 + 1.5 || e->u[1] > p.u1 - 1.5 || e->v[0] < p.v0 + 1.5 || e->v[1] > p.v1 - 1.5)
        return frame_fail(FRAME_IMPOSSIBLE, "from_x_in", "", "inside its floor, 1-1/2 in from each edge at least",
                          "floor opening %.60s: it does not lie inside floor %.60s, 1-1/2 in from each of its edges",
                          part->name, job->floors[job->floor_of_opening[i]].name);
    return FRAME_OK;
}

/* Two openings of a floor: apart, and neither in the way of the other's trimmers. */
static frame_status refuse_clash(const frame_framing_job *job, size_t i, size_t k) {
    const frame_floor_edges *a = &job->floor_edges[i], *b = &job->floor_edges[k];
    if (job->floor_of_opening[i] != job->floor_of_opening[k]) return FRAME_OK;
    if (a->u[0] < b->u[1] && b->u[0] < a->u[1] && a->v[0] < b->v[1] && b->v[0] < a->v[1])
        return frame_fail(FRAME_CONFLICT, "from_x_in", "", "openings apart",
                          "floor openings %.60s and %.60s lie one over the other", name_of(job, i), name_of(job, k));
    for (int side = 0; side < 2; side++)
        if ((a->u[side] > b->u[0] + 1.5 && a->u[side] < b->u[1] - 1.5) ||
            (b->u[side] > a->u[0] + 1.5 && b->u[side] < a->u[1] - 1.5))
            return frame_fail(FRAME_OUTSIDE_SCOPE, "from_x_in", "", "openings beside each other, or in line",
                              "floor openings %.60s and %.60s: a trimmer of one would run through the other; set them "
                              "in line or apart",
                              name_of(job, i), name_of(job, k));
    return FRAME_OK;
}

static frame_status add_bearer(frame_framing_job *job, size_t i, int is_header, const double u[2], const double v[2],
                               size_t *place) {
    const size_t floor = job->floor_of_opening[i], level = job->level_of_floor[floor];
    const frame_floor_plane p = frame_floor_plane_of(&job->floors[floor]);
    const char *side = is_header ? (v[0] == job->floor_edges[i].v[0] ? "near" : "far")
                                 : (u[0] == job->floor_edges[i].u[0] ? "near" : "far");
    frame_bearer made = {
        .kind = is_header ? FRAME_BEARER_HEADER_JOIST : FRAME_BEARER_TRIMMER,
        .tier = frame_framing_tier(job, level, is_header ? FRAME_TIER_HEADER_JOIST : FRAME_TIER_TRIMMER),
        .name = frame_framing_text(job, is_header ? "%s, header joist, %s end" : "%s, trimmer, %s side",
                                   name_of(job, i), side),
        .part = i,
        .reach = 2,
        .top = job->levels[level].base_in,
        .foot = job->levels[level].base_in,
        .top_known = 1};
    if (!made.name) return FRAME_NO_MEMORY;
    for (int end = 0; end < 2; end++) frame_floor_to_plan(&p, u[end], v[end], &made.x[end], &made.y[end]);
    return frame_bearer_add(job, &made, place);
}

/* Openings in line share their trimmers. */
static size_t trimmer_there(const frame_framing_job *job, size_t i, double u) {
    for (size_t k = 0; k < i; k++)
        for (int side = 0; side < 2 && job->floor_of_opening[k] == job->floor_of_opening[i]; side++)
            if (fabs(job->floor_edges[k].u[side] - u) <= 1.5) return job->floor_edges[k].trimmers[side];
    return FRAME_NOBODY;
}

static frame_status add_edges(frame_framing_job *job, size_t i) {
    const frame_floor_plane p = frame_floor_plane_of(&job->floors[job->floor_of_opening[i]]);
    frame_floor_edges *e = &job->floor_edges[i];
    frame_status status = FRAME_OK;
    for (int side = 0; side < 2 && !status; side++) {
        const double u[2] = {e->u[side], e->u[side]}, v[2] = {p.v0, p.v1};
        const double hu[2] = {e->u[0], e->u[1]}, hv[2] = {e->v[side], e->v[side]};
        e->trimmers[side] = trimmer_there(job, i, u[0]);
        if (e->trimmers[side] == FRAME_NOBODY) status = add_bearer(job, i, 0, u, v, &e->trimmers[side]);
        if (!status) status = add_bearer(job, i, 1, hu, hv, &e->headers[side]);
    }
    return status;
}

frame_status frame_floor_openings(frame_framing_job *job) {
    job->floor_edges = frame_arena_take(&job->arena, (job->floor_opening_count + 1) * sizeof *job->floor_edges);
    if (!job->floor_edges) return FRAME_NO_MEMORY;
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < job->floor_opening_count && !status; i++) {
        job->floor_edges[i] = (frame_floor_edges){.header_plies = 1, .trimmer_plies = 1};
        status = find_rectangle(job, i);
        for (size_t k = 0; k < i && !status; k++) status = refuse_clash(job, i, k);
    }
    for (size_t i = 0; i < job->floor_opening_count && !status; i++) status = add_edges(job, i);
    return status;
}

/* -- checked and handed on -- */

/* A header joist ends at its trimmers; a trimmer lies on whatever its floor's joists lie on there. */
static frame_status find_supports(const frame_framing_job *job, const frame_bearer *bearer, frame_array *supports) {
    const frame_floor_edges *e = &job->floor_edges[bearer->part];
    const frame_floor_plane p = frame_floor_plane_of(&job->floors[job->floor_of_opening[bearer->part]]);
    if (bearer->kind == FRAME_BEARER_TRIMMER) {
        const double u = p.along_x ? bearer->y[0] : bearer->x[0];
        const frame_joist_piece whole = {u, p.v0, p.v1, {FRAME_NOBODY, FRAME_NOBODY}};
        return frame_joist_supports(job, bearer, &whole, supports);
    }
    *supports = (frame_array){.item_size = sizeof(frame_support)};
    const double v = p.along_x ? bearer->x[0] : bearer->y[0];
    for (int side = 0; side < 2; side++) {
        const frame_support trimmer = {side ? bearer->length : 0, e->trimmers[side], v - p.v0};
        if (!frame_array_push(supports, &trimmer)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static void describe(const frame_framing_job *job, const frame_bearer *bearer, frame_line_beam *beam) {
    const frame_part_floor_opening *part = &job->floor_openings[bearer->part];
    const size_t floor = job->floor_of_opening[bearer->part];
    const frame_floor_edges *e = &job->floor_edges[bearer->part];
    beam->size = job->floor_sizes[floor];
    beam->plies = bearer->kind == FRAME_BEARER_TRIMMER ? part->trimmer_plies : part->header_plies;
    beam->least_plies = e->u[1] - e->u[0] > 48 ? 2 : 1;
    beam->most_plies = 4;
    beam->species = job->floors[floor].species;
    beam->grade = job->floors[floor].grade;
    beam->bearing_in = bearer->kind == FRAME_BEARER_TRIMMER ? 3 : 2; /* a hanger's seat */
    beam->live_limit = 360;
    beam->total_limit = 240;
    beam->joist = 1;
    beam->spacing_in = FRAME_NOT_GIVEN;
    beam->wet = job->floors[floor].deck;
}

static void keep_plies(frame_framing_job *job, const frame_bearer *bearer, size_t place, int32_t plies) {
    for (size_t i = 0; i < job->floor_opening_count; i++) {
        frame_floor_edges *e = &job->floor_edges[i];
        for (int side = 0; side < 2; side++) {
            if (e->headers[side] == place && plies > e->header_plies) e->header_plies = plies;
            if (e->trimmers[side] == place && plies > e->trimmer_plies) e->trimmer_plies = plies;
        }
    }
    (void)bearer;
}

/* Its own strip of the floor was handed on with the floor's; for the check it lies on it with the rest. */
static frame_status choose(frame_framing_job *job, const frame_bearer *bearer, size_t place, frame_line_beam beam) {
    const frame_part_floor *floor = &job->floors[job->floor_of_opening[bearer->part]];
    const frame_by_kind psf = frame_floor_psf(floor);
    frame_line_result result;
    if (bearer->kind == FRAME_BEARER_TRIMMER) frame_by_kind_add(&beam.uniform_plf, &psf, floor->spacing_in / 12);
    const frame_status status = frame_line_choose(job, &beam, &result);
    if (!status) keep_plies(job, bearer, place, result.plies);
    return status;
}

static frame_status hand_on(frame_framing_job *job, const frame_bearer *bearer, const frame_line_beam *beam) {
    frame_by_kind *reactions = frame_take(sizeof *reactions * beam->support_count);
    if (!reactions) return FRAME_NO_MEMORY;
    frame_status status = frame_line_reactions(beam, 0, reactions);
    for (size_t i = 0; i < beam->support_count && !status; i++) {
        const frame_support *support = &beam->supports[i];
        double x, y;
        frame_bearer_point(bearer, support->s, &x, &y);
        status = frame_deliver(job, bearer->kind, bearer->name, support->bearer, support->at, x, y, &reactions[i]);
    }
    frame_give(reactions);
    return status;
}

frame_status frame_floor_edge(frame_framing_job *job, size_t place) {
    const frame_bearer bearer = *FRAME_BEARER(job, place);
    frame_array supports;
    frame_status status = find_supports(job, &bearer, &supports);
    frame_line_beam beam = {.name = bearer.name,
                            .kind = bearer.kind,
                            .length = bearer.length,
                            .points = bearer.points.items,
                            .point_count = bearer.points.count,
                            .supports = supports.items,
                            .support_count = supports.count};
    describe(job, &bearer, &beam);
    if (!status && supports.count < 2)
        status = frame_line_fall(job, &bearer);
    else if (!status && job->floor_spans[job->floor_of_opening[bearer.part]] > 0) {
        status = choose(job, &bearer, place, beam);
        if (!status && bearer.points.count) status = hand_on(job, &bearer, &beam);
    }
    frame_array_give(&supports);
    return status;
}
