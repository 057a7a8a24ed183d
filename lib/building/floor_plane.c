/* Joists of a floor as lines in plan, and what crosses under them. */
#include "building/floor_plane.h"

#include <math.h>

frame_floor_plane frame_floor_plane_of(const frame_part_floor *floor) {
    const double x0 = fmin(floor->from_x_in, floor->to_x_in), x1 = fmax(floor->from_x_in, floor->to_x_in);
    const double y0 = fmin(floor->from_y_in, floor->to_y_in), y1 = fmax(floor->from_y_in, floor->to_y_in);
    return floor->along == FRAME_SITE_ALONG_X ? (frame_floor_plane){y0, y1, x0, x1, 1}
                                              : (frame_floor_plane){x0, x1, y0, y1, 0};
}

void frame_floor_to_plan(const frame_floor_plane *p, double u, double v, double *x, double *y) {
    *x = p->along_x ? v : u;
    *y = p->along_x ? u : v;
}

frame_by_kind frame_floor_psf(const frame_part_floor *floor) {
    frame_by_kind psf = {{0}};
    psf.k[FRAME_LOAD_DEAD] = floor->dead_psf;
    psf.k[FRAME_LOAD_LIVE] = floor->live_psf;
    psf.k[FRAME_LOAD_SNOW] = floor->snow_psf;
    return psf;
}

int frame_joist_piece_from(const frame_framing_job *job, size_t floor, const frame_floor_plane *p, double u, double v,
                           frame_joist_piece *piece) {
    *piece = (frame_joist_piece){u, fmax(v, p->v0), p->v1, {FRAME_NOBODY, FRAME_NOBODY}};
    for (int moved = 1; moved;) { /* past every opening that it would begin in */
        moved = 0;
        for (size_t i = 0; i < job->floor_opening_count; i++) {
            const frame_floor_edges *e = &job->floor_edges[i];
            if (job->floor_of_opening[i] != floor || u <= e->u[0] || u >= e->u[1]) continue;
            if (piece->v0 < e->v[0] - 1e-9 || piece->v0 >= e->v[1] - 1e-9) continue;
            piece->v0 = e->v[1];
            piece->headers[0] = e->headers[1];
            moved = 1;
        }
    }
    for (size_t i = 0; i < job->floor_opening_count; i++) {
        const frame_floor_edges *e = &job->floor_edges[i];
        if (job->floor_of_opening[i] != floor || u <= e->u[0] || u >= e->u[1]) continue;
        if (e->v[0] < piece->v0 || e->v[0] >= piece->v1) continue;
        piece->v1 = e->v[0];
        piece->headers[1] = e->headers[0];
    }
    return piece->v1 > piece->v0 + 1e-9;
}

frame_bearer frame_joist_line(const frame_framing_job *job, size_t i, const frame_floor_plane *p,
                              const frame_joist_piece *piece) {
    frame_bearer line = {.kind = FRAME_BEARER_JOISTS,
                         .tier = frame_framing_tier(job, job->level_of_floor[i], FRAME_TIER_JOISTS),
                         .name = job->floors[i].name,
                         .foot = job->levels[job->level_of_floor[i]].base_in,
                         .length = piece->v1 - piece->v0};
    frame_floor_to_plan(p, piece->u, piece->v0, &line.x[0], &line.y[0]);
    frame_floor_to_plan(p, piece->u, piece->v1, &line.x[1], &line.y[1]);
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

/* At a header joist it hangs there: what lies less than an inch beside that does not count besides. */
static frame_status add_header(const frame_framing_job *job, const frame_bearer *line, const frame_joist_piece *piece,
                               int end, frame_array *supports) {
    const frame_bearer *header = FRAME_BEARER(job, piece->headers[end]);
    const frame_support support = {end ? line->length : 0, piece->headers[end],
                                   hypot(line->x[end] - header->x[0], line->y[end] - header->y[0])};
    size_t kept = 0;
    for (size_t i = 0; i < supports->count; i++)
        if (fabs(FRAME_ITEM(frame_support, *supports, i).s - support.s) >= 1)
            FRAME_ITEM(frame_support, *supports, kept++) = FRAME_ITEM(frame_support, *supports, i);
    supports->count = kept;
    if (!frame_array_push(supports, &support)) return FRAME_NO_MEMORY;
    for (size_t i = supports->count - 1; i && !end; i--)
        FRAME_ITEM(frame_support, *supports, i) = FRAME_ITEM(frame_support, *supports, i - 1);
    if (!end) FRAME_ITEM(frame_support, *supports, 0) = support;
    return FRAME_OK;
}

frame_status frame_joist_supports(const frame_framing_job *job, const frame_bearer *line,
                                  const frame_joist_piece *piece, frame_array *supports) {
    *supports = (frame_array){.item_size = sizeof(frame_support)};
    frame_status status = frame_bearer_supports(job, line, supports);
    for (int end = 0; end < 2 && !status; end++)
        if (piece->headers[end] == FRAME_NOBODY) status = add_ledger(job, line, end, supports);
    if (!status) frame_supports_merge(job, supports);
    for (int end = 0; end < 2 && !status; end++)
        if (piece->headers[end] != FRAME_NOBODY) status = add_header(job, line, piece, end, supports);
    return status;
}
