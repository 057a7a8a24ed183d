/* Floors and decks: joists in strips on whatever crosses under them; and what stands on the joists themselves. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "building/floor_plane.h"
#include "material/lumber.h"

static int same_places(const frame_array *one, const frame_array *two) {
    if (one->count != two->count) return 0;
    for (size_t i = 0; i < one->count; i++)
        if (FRAME_ITEM(frame_support, *one, i).s != FRAME_ITEM(frame_support, *two, i).s) return 0;
    return 1;
}

/* What the strips of a floor have in common: found anew only where the supports lie elsewhere. */
typedef struct shared {
    frame_array supports;
    frame_by_kind *reactions; /* of a strip an inch wide */
    double longest, cantilever, length;
} shared;

static void measure(shared *s, double length) {
    double longest = 0;
    const frame_support *at = s->supports.items;
    for (size_t i = 0; i + 1 < s->supports.count; i++) longest = fmax(longest, at[i + 1].s - at[i].s);
    s->cantilever = fmax(s->cantilever, fmax(at[0].s, length - at[s->supports.count - 1].s));
    if (longest > s->longest) s->longest = longest;
}

/* Reactions of a strip an inch wide; strips scale. */
static frame_status share(const frame_part_floor *floor, double length, shared *s) {
    frame_line_beam beam = {.length = length, .supports = s->supports.items, .support_count = s->supports.count};
    const frame_by_kind psf = frame_floor_psf(floor);
    frame_give(s->reactions);
    s->reactions = frame_take(sizeof *s->reactions * s->supports.count);
    if (!s->reactions) return FRAME_NO_MEMORY;
    frame_by_kind_add(&beam.uniform_plf, &psf, 1.0 / 12);
    return frame_line_reactions(&beam, 0, s->reactions);
}

static frame_status hand_out(frame_framing_job *job, const frame_bearer *line, double width, const shared *s) {
    frame_status status = FRAME_OK;
    for (size_t k = 0; k < s->supports.count && !status; k++) {
        const frame_support *support = &FRAME_ITEM(frame_support, s->supports, k);
        frame_by_kind load = {{0}};
        double x, y;
        frame_by_kind_add(&load, &s->reactions[k], width);
        frame_bearer_point(line, support->s, &x, &y);
        status = frame_deliver(job, FRAME_BEARER_JOISTS, line->name, support->bearer, support->at, x, y, &load);
    }
    return status;
}

/* So wide a piece of a joist's strip. */
static frame_status strip(frame_framing_job *job, size_t i, const frame_floor_plane *p, const frame_joist_piece *piece,
                          double width, shared *s) {
    const frame_part_floor *floor = &job->floors[i];
    const frame_bearer line = frame_joist_line(job, i, p, piece);
    frame_array found;
    const frame_by_kind psf = frame_floor_psf(floor);
    frame_by_kind all = {{0}};
    frame_by_kind_add(&all, &psf, width * line.length / 144);
    frame_by_kind_add(&job->put, &all, 1);
    frame_status status = frame_joist_supports(job, &line, piece, &found);
    if (!status && found.count < 2) {
        frame_array_give(&found);
        double x, y;
        frame_bearer_point(&line, line.length / 2, &x, &y);
        return frame_deliver_down(job, FRAME_BEARER_JOISTS, floor->name, FRAME_BEARER_NOTHING, "nothing", x, y, &all);
    }
    const int known = s->reactions && s->length == line.length && same_places(&found, &s->supports);
    frame_array_give(&s->supports);
    s->supports = found;
    s->length = line.length;
    if (!status && !known) {
        measure(s, line.length);
        status = share(floor, line.length, s);
    }
    return status ? status : hand_out(job, &line, width, s);
}

/* All pieces of the joist whose strip lies between two places; at the sides of openings strips are parted. */
static frame_status strips(frame_framing_job *job, size_t i, const frame_floor_plane *p, double from, double to,
                           shared *s) {
    frame_status status = FRAME_OK;
    while (from < to - 1e-9 && !status) {
        double part = to;
        frame_joist_piece piece;
        for (size_t k = 0; k < job->floor_opening_count; k++)
            for (int side = 0; side < 2 && job->floor_of_opening[k] == i; side++)
                if (job->floor_edges[k].u[side] > from + 1e-9 && job->floor_edges[k].u[side] < part)
                    part = job->floor_edges[k].u[side];
        for (double v = p->v0; !status && frame_joist_piece_from(job, i, p, (from + part) / 2, v, &piece); v = piece.v1)
            status = strip(job, i, p, &piece, part - from, s);
        from = part;
    }
    return status;
}

frame_status frame_floor_depth(const frame_framing_job *job, size_t i, double *thickness, double *depth) {
    return frame_size_dressed(job->floor_sizes[i], 0, thickness, depth);
}

static frame_status one_floor(frame_framing_job *job, size_t i) {
    const frame_part_floor *floor = &job->floors[i];
    const frame_floor_plane p = frame_floor_plane_of(floor);
    shared s = {0};
    frame_status status = FRAME_OK;
    double from = p.u0;
    for (double k = 0; from < p.u1 - 1e-9 && !status; k++) {
        double to = fmin(p.u0 + (k + 0.5) * floor->spacing_in, p.u1);
        if (p.u1 - to < 1e-6) to = p.u1;
        status = strips(job, i, &p, from, to, &s);
        from = to;
    }
    job->floor_spans[i] = s.longest;
    job->floor_cantilevers[i] = s.cantilever;
    if (!status && s.longest > 0) status = frame_floor_joists(job, i, s.longest, s.cantilever);
    frame_array_give(&s.supports);
    frame_give(s.reactions);
    return status;
}

frame_status frame_framing_floors(frame_framing_job *job) {
    job->floor_sizes = frame_arena_take(&job->arena, (job->floor_count + 1) * sizeof(frame_size));
    job->floor_spans = frame_arena_take(&job->arena, (job->floor_count + 1) * sizeof(double));
    job->floor_cantilevers = frame_arena_take(&job->arena, (job->floor_count + 1) * sizeof(double));
    if (!job->floor_sizes || !job->floor_spans || !job->floor_cantilevers) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < job->floor_count; i++) {
        job->floor_sizes[i] =
            job->floors[i].size == FRAME_NOT_GIVEN_INT ? FRAME_SIZE(2, 10) : job->floors[i].size; /* until chosen */
        const frame_status status = one_floor(job, i);
        if (status) return status;
    }
    return FRAME_OK;
}

size_t frame_floor_deck_of(const frame_framing_job *job, size_t level) {
    for (size_t i = 0; i < job->floor_count; i++)
        if (job->level_of_floor[i] == level && job->floors[i].deck && job->floor_spans[i] > 0) return i;
    return FRAME_NOBODY;
}

static int in_opening(const frame_framing_job *job, size_t floor, double u, double v) {
    for (size_t i = 0; i < job->floor_opening_count; i++) {
        const frame_floor_edges *e = &job->floor_edges[i];
        if (job->floor_of_opening[i] == floor && u > e->u[0] && u < e->u[1] && v > e->v[0] && v < e->v[1]) return 1;
    }
    return 0;
}

size_t frame_floor_over(const frame_framing_job *job, size_t level, double x, double y, double within) {
    for (size_t i = 0; i < job->floor_count; i++) {
        const frame_floor_plane p = frame_floor_plane_of(&job->floors[i]);
        const double u = p.along_x ? y : x, v = p.along_x ? x : y;
        if (job->level_of_floor[i] == level && u >= p.u0 + within && u <= p.u1 - within && v >= p.v0 + within &&
            v <= p.v1 - within && !in_opening(job, i, u, v))
            return i;
    }
    return FRAME_NOBODY;
}

/* What a joist in the middle of the floor bears on, openings or not. */
frame_status frame_floor_supports(const frame_framing_job *job, size_t i, frame_array *supports) {
    const frame_floor_plane p = frame_floor_plane_of(&job->floors[i]);
    const frame_joist_piece whole = {(p.u0 + p.u1) / 2, p.v0, p.v1, {FRAME_NOBODY, FRAME_NOBODY}};
    const frame_bearer line = frame_joist_line(job, i, &p, &whole);
    return frame_joist_supports(job, &line, &whole, supports);
}
