/* What stands on a floor's joists: carried by the joist under it, or by a gang of them. */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "building/floor_plane.h"

typedef struct placed {
    double u;
    frame_at_point point;
    frame_joist_piece piece;
} placed;

static int by_u(const void *a, const void *b) {
    const placed *one = a, *two = b;
    if (one->u != two->u) return one->u < two->u ? -1 : 1;
    return one->point.s < two->point.s ? -1 : one->point.s > two->point.s;
}

static frame_status joist_under(frame_framing_job *job, size_t i, const char *name, const frame_floor_plane *p,
                                const frame_joist_piece *piece, const frame_at_point *points, size_t count, int check) {
    const frame_part_floor *floor = &job->floors[i];
    const frame_bearer line = frame_joist_line(job, i, p, piece);
    frame_array supports;
    frame_status status = frame_joist_supports(job, &line, piece, &supports);
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
    const frame_by_kind psf = frame_floor_psf(floor);
    frame_by_kind_add(&beam.uniform_plf, &psf,
                      floor->spacing_in / 12); /* checked with the floor's own strip; handed on before */
    frame_line_result result;
    if (!status && check && supports.count >= 2) status = frame_line_choose(job, &beam, &result);
    if (!status && check && supports.count >= 2 && result.plies > 1) {
        const frame_doubled doubled = {i, piece->u - p->u0, result.plies, 0};
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

/* The piece of a joist that a point lies on. */
static frame_joist_piece piece_at(const frame_framing_job *job, size_t i, const frame_floor_plane *p, double u,
                                  double v) {
    frame_joist_piece piece = {u, p->v0, p->v1, {FRAME_NOBODY, FRAME_NOBODY}}, next;
    for (double from = p->v0; frame_joist_piece_from(job, i, p, u, from, &next); from = next.v1) {
        piece = next;
        if (v <= next.v1) break;
    }
    return piece;
}

/* One joist, or one gang of them, for all that stands within its thickness, on one piece of it. */
static size_t next_group(const placed *at, size_t first, size_t count) {
    size_t next = first + 1;
    while (next < count && at[next].u - at[first].u < 3 && at[next].piece.v0 == at[first].piece.v0) next++;
    return next;
}

/* Of the groups the heaviest laden is checked. */
static frame_status groups(frame_framing_job *job, size_t i, const char *name, const frame_floor_plane *p,
                           const placed *at, frame_at_point *points, size_t count) {
    size_t heaviest = 0;
    double most = -1e300;
    frame_status status = FRAME_OK;
    for (size_t first = 0, next; first < count; first = next) {
        next = next_group(at, first, count);
        const double weight = weight_of(at + first, next - first);
        if (weight > most) most = weight, heaviest = first;
    }
    for (size_t first = 0, next; first < count && !status; first = next) {
        next = next_group(at, first, count);
        for (size_t k = first; k < next; k++) {
            points[k - first] = at[k].point;
            points[k - first].s -= at[first].piece.v0 - p->v0;
        }
        status = joist_under(job, i, name, p, &at[first].piece, points, next - first, first == heaviest);
    }
    return status;
}

frame_status frame_floor_carry(frame_framing_job *job, size_t i, const char *name, const frame_on_floor *loads,
                               size_t count) {
    const frame_floor_plane p = frame_floor_plane_of(&job->floors[i]);
    placed *at = frame_take(sizeof *at * (count + 1));
    frame_at_point *points = frame_take(sizeof *points * (count + 1));
    frame_status status = at && points ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t k = 0; k < count && !status; k++) {
        const double u = p.along_x ? loads[k].y : loads[k].x, v = p.along_x ? loads[k].x : loads[k].y;
        at[k] = (placed){u, {v - p.v0, loads[k].load}, piece_at(job, i, &p, u, v)};
    }
    if (!status && count) qsort(at, count, sizeof *at, by_u);
    if (!status) status = groups(job, i, name, &p, at, points, count);
    frame_give(points);
    frame_give(at);
    return status;
}
