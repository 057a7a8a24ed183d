/* Floors and decks: joists in strips on whatever crosses under them; and what stands on the joists themselves. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "building/framing.h"
#include "material/lumber.h"

/* A floor in axes of its own: u across the joists, v along them. */
typedef struct plane {
    double u0, u1, v0, v1;
    int along_x;
} plane;

static plane plane_of(const frame_part_floor *floor) {
    const double x0 = fmin(floor->from_x_in, floor->to_x_in), x1 = fmax(floor->from_x_in, floor->to_x_in);
    const double y0 = fmin(floor->from_y_in, floor->to_y_in), y1 = fmax(floor->from_y_in, floor->to_y_in);
    return floor->along == FRAME_SITE_ALONG_X ? (plane){y0, y1, x0, x1, 1} : (plane){x0, x1, y0, y1, 0};
}

static void to_plan(const plane *p, double u, double v, double *x, double *y) {
    *x = p->along_x ? v : u;
    *y = p->along_x ? u : v;
}

static frame_bearer joist_line(const frame_framing_job *job, size_t i, const plane *p, double u) {
    frame_bearer line = {.kind = FRAME_BEARER_JOISTS,
                         .tier = frame_framing_tier(job, job->level_of_floor[i], FRAME_TIER_JOISTS),
                         .name = job->floors[i].name,
                         .length = p->v1 - p->v0};
    to_plan(p, u, p->v0, &line.x[0], &line.y[0]);
    to_plan(p, u, p->v1, &line.x[1], &line.y[1]);
    return line;
}

/* At an end with nothing under it joists may hang from a ledger on a wall beside it. */
static frame_status add_ledger(const frame_framing_job *job, const frame_bearer *line, int end, frame_array *supports) {
    frame_support support = {end ? line->length : 0, FRAME_NOBODY, 0};
    for (size_t i = 0; i < supports->count; i++)
        if (fabs(FRAME_ITEM(frame_support, *supports, i).s - support.s) < 12) return FRAME_OK;
    support.bearer = frame_bearer_beside(job, line->x[end], line->y[end], &support.at);
    if (support.bearer == FRAME_NOBODY) return FRAME_OK;
    return frame_array_push(supports, &support) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status find_supports(const frame_framing_job *job, const frame_bearer *line, frame_array *supports) {
    supports->item_size = sizeof(frame_support);
    frame_status status = frame_bearer_supports(job, line, supports);
    if (!status) status = add_ledger(job, line, 0, supports);
    if (!status) status = add_ledger(job, line, 1, supports);
    if (!status) frame_supports_merge(job, supports);
    return status;
}

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
    double longest, cantilever;
} shared;

static frame_by_kind psf_of(const frame_part_floor *floor) {
    frame_by_kind psf = {{0}};
    psf.k[FRAME_LOAD_DEAD] = floor->dead_psf;
    psf.k[FRAME_LOAD_LIVE] = floor->live_psf;
    psf.k[FRAME_LOAD_SNOW] = floor->snow_psf;
    return psf;
}

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
    const frame_by_kind psf = psf_of(floor);
    frame_give(s->reactions);
    s->reactions = frame_take(sizeof *s->reactions * s->supports.count);
    if (!s->reactions) return FRAME_NO_MEMORY;
    frame_by_kind_add(&beam.uniform_plf, &psf, 1.0 / 12);
    return frame_line_reactions(&beam, 0, s->reactions);
}

static frame_status strip(frame_framing_job *job, size_t i, const plane *p, double from, double to, shared *s) {
    const frame_part_floor *floor = &job->floors[i];
    const frame_bearer line = joist_line(job, i, p, (from + to) / 2);
    frame_array found = {0};
    const double width = to - from;
    const frame_by_kind psf = psf_of(floor);
    frame_by_kind all = {{0}};
    frame_by_kind_add(&all, &psf, width * line.length / 144);
    frame_by_kind_add(&job->put, &all, 1);
    frame_status status = find_supports(job, &line, &found);
    if (!status && found.count < 2) {
        frame_array_give(&found);
        double x, y;
        frame_bearer_point(&line, line.length / 2, &x, &y);
        return frame_deliver_down(job, FRAME_BEARER_JOISTS, floor->name, FRAME_BEARER_NOTHING, "nothing", x, y, &all);
    }
    const int known = s->reactions && same_places(&found, &s->supports);
    frame_array_give(&s->supports);
    s->supports = found;
    if (!status && !known) {
        measure(s, line.length);
        status = share(floor, line.length, s);
    }
    for (size_t k = 0; k < s->supports.count && !status; k++) {
        const frame_support *support = &FRAME_ITEM(frame_support, s->supports, k);
        frame_by_kind load = {{0}};
        double x, y;
        frame_by_kind_add(&load, &s->reactions[k], width);
        frame_bearer_point(&line, support->s, &x, &y);
        status = frame_deliver(job, FRAME_BEARER_JOISTS, floor->name, support->bearer, support->at, x, y, &load);
    }
    return status;
}

frame_status frame_floor_depth(const frame_framing_job *job, size_t i, double *thickness, double *depth) {
    return frame_size_dressed(job->floor_sizes[i], 0, thickness, depth);
}

static frame_status one_floor(frame_framing_job *job, size_t i) {
    const frame_part_floor *floor = &job->floors[i];
    const plane p = plane_of(floor);
    shared s = {0};
    frame_status status = FRAME_OK;
    double from = p.u0;
    for (double k = 0; from < p.u1 - 1e-9 && !status; k++) {
        double to = fmin(p.u0 + (k + 0.5) * floor->spacing_in, p.u1);
        if (p.u1 - to < 1e-6) to = p.u1;
        status = strip(job, i, &p, from, to, &s);
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

size_t frame_floor_over(const frame_framing_job *job, size_t level, double x, double y, double within) {
    for (size_t i = 0; i < job->floor_count; i++) {
        const plane p = plane_of(&job->floors[i]);
        const double u = p.along_x ? y : x, v = p.along_x ? x : y;
        if (job->level_of_floor[i] == level && u >= p.u0 + within && u <= p.u1 - within && v >= p.v0 + within &&
            v <= p.v1 - within)
            return i;
    }
    return FRAME_NOBODY;
}

/* What a joist in the middle of the floor bears on. */
frame_status frame_floor_supports(const frame_framing_job *job, size_t i, frame_array *supports) {
    const plane p = plane_of(&job->floors[i]);
    const frame_bearer line = joist_line(job, i, &p, (p.u0 + p.u1) / 2);
    return find_supports(job, &line, supports);
}

/* -- what stands on joists -- */

typedef struct placed {
    double u;
    frame_at_point point;
} placed;

static int by_u(const void *a, const void *b) {
    const placed *one = a, *two = b;
    if (one->u != two->u) return one->u < two->u ? -1 : 1;
    return one->point.s < two->point.s ? -1 : one->point.s > two->point.s;
}

static frame_status joist_under(frame_framing_job *job, size_t i, const char *name, const plane *p, double u,
                                const frame_at_point *points, size_t count, int check) {
    const frame_part_floor *floor = &job->floors[i];
    const frame_bearer line = joist_line(job, i, p, u);
    frame_array supports = {0};
    frame_status status = find_supports(job, &line, &supports);
    const char *title = frame_framing_text(job, "%s, joists under %s", floor->name, name);
    if (!title) status = FRAME_NO_MEMORY;
    frame_line_beam beam = {.name = title,
                            .kind = FRAME_BEARER_JOISTS,
                            .length = line.length,
                            .points = points,
                            .point_count = count,
                            .supports = supports.items,
                            .support_count = supports.count,
                            .size = job->floor_sizes[i],
                            .plies = FRAME_NOT_GIVEN_INT,
                            .most_plies = 4,
                            .species = floor->species,
                            .grade = floor->grade,
                            .bearing_in = 3,
                            .live_limit = 360,
                            .total_limit = 240,
                            .joist = 1,
                            .spacing_in = FRAME_NOT_GIVEN,
                            .wet = floor->deck};
    frame_by_kind *reactions = status ? NULL : frame_take(sizeof *reactions * (supports.count + 1));
    if (!status && !reactions) status = FRAME_NO_MEMORY;
    if (!status && supports.count >= 2) status = frame_line_reactions(&beam, 0, reactions);
    for (size_t k = 0; k < count && !status && supports.count < 2; k++) {
        double x, y;
        frame_bearer_point(&line, points[k].s, &x, &y);
        status =
            frame_deliver_down(job, FRAME_BEARER_WALL, name, FRAME_BEARER_NOTHING, "nothing", x, y, &points[k].load);
    }
    for (size_t k = 0; k < supports.count && supports.count >= 2 && !status; k++) {
        const frame_support *support = &FRAME_ITEM(frame_support, supports, k);
        double x, y;
        frame_bearer_point(&line, support->s, &x, &y);
        status = frame_deliver(job, FRAME_BEARER_JOISTS, title, support->bearer, support->at, x, y, &reactions[k]);
    }
    const frame_by_kind psf = psf_of(floor);
    frame_by_kind_add(&beam.uniform_plf, &psf,
                      floor->spacing_in / 12); /* checked with the floor's own strip; handed on before */
    frame_line_result result;
    if (!status && check && supports.count >= 2) status = frame_line_choose(job, &beam, &result);
    if (!status && check && supports.count >= 2 && result.plies > 1) {
        const frame_doubled doubled = {i, u - p->u0, result.plies, 0};
        if (!frame_array_push(&job->doubled, &doubled)) status = FRAME_NO_MEMORY;
    }
    frame_give(reactions);
    frame_array_give(&supports);
    return status;
}

static double weight_of(const placed *at, size_t count) {
    double sum = 0;
    for (size_t i = 0; i < count; i++) sum += frame_by_kind_most(&at[i].point.load, NULL, NULL);
    return sum;
}

frame_status frame_floor_carry(frame_framing_job *job, size_t i, const char *name, const frame_on_floor *loads,
                               size_t count) {
    const plane p = plane_of(&job->floors[i]);
    placed *at = frame_take(sizeof *at * (count + 1));
    frame_at_point *points = frame_take(sizeof *points * (count + 1));
    frame_status status = at && points ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t k = 0; k < count && !status; k++)
        at[k] = (placed){p.along_x ? loads[k].y : loads[k].x,
                         {(p.along_x ? loads[k].x : loads[k].y) - p.v0, loads[k].load}};
    if (!status && count) qsort(at, count, sizeof *at, by_u);
    /* One joist, or one gang of them, for all that stands within its thickness; the heaviest laden is checked. */
    size_t heaviest = 0;
    double most = -1e300;
    for (size_t first = 0, next; first < count && !status; first = next) {
        for (next = first + 1; next < count && at[next].u - at[first].u < 3; next++) {
        }
        const double weight = weight_of(at + first, next - first);
        if (weight > most) most = weight, heaviest = first;
    }
    for (size_t first = 0, next; first < count && !status; first = next) {
        for (next = first + 1; next < count && at[next].u - at[first].u < 3; next++) {
        }
        for (size_t k = first; k < next; k++) points[k - first] = at[k].point;
        status = joist_under(job, i, name, &p, at[first].u, points, next - first, first == heaviest);
    }
    frame_give(points);
    frame_give(at);
    return status;
}

/* -- loads of others -- */

frame_status frame_framing_loads(frame_framing_job *job) {
    for (size_t i = 0; i < job->load_count; i++) {
        const frame_part_load *part = &job->loads[i];
        const frame_by_kind load = {
            {0, part->dead_lb, part->live_lb, part->roof_live_lb, part->snow_lb, part->wind_lb}};
        const size_t level = job->level_of_load[i];
        double at = 0;
        frame_by_kind_add(&job->put, &load, 1);
        if (part->wind_lb != 0) job->wind_given = 1;
        const size_t on = frame_bearer_under(
            job, part->x_in, part->y_in,
            frame_framing_tier(job, level, part->on_floor ? FRAME_TIER_JOISTS : FRAME_TIER_RAFTERS), -1, &at);
        const size_t floor = frame_floor_over(job, level, part->x_in, part->y_in, 0);
        frame_status status;
        if (on == FRAME_NOBODY && part->on_floor && floor != FRAME_NOBODY) {
            const frame_on_floor one = {part->x_in, part->y_in, load};
            status = frame_floor_carry(job, floor, part->name, &one, 1);
        } else {
            status = frame_deliver(job, FRAME_BEARER_GIVEN, part->name, on, at, part->x_in, part->y_in, &load);
        }
        if (status) return status;
    }
    return FRAME_OK;
}
