/* The faces of a roof in strips, one for each rafter: each carries what lies on its strip to whatever holds its two
 * ends. The strips tile their face, and each is a simple beam: so nothing is lost and nothing is counted twice. */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "building/roof_face.h"

static void to_plan(const frame_roof_face *f, double u, double v, double *x, double *y) {
    *x = u * f->ux + v * f->vx;
    *y = u * f->uy + v * f->vy;
}

size_t frame_roof_clip(const frame_roof_at *in, size_t count, double nu, double nv, double at, frame_roof_at *out) {
    size_t kept = 0;
    for (size_t i = 0; i < count && kept + 2 < 2 * FRAME_ROOF_FACE_CORNERS; i++) {
        const frame_roof_at a = in[i], b = in[(i + 1) % count];
        const double da = nu * a.u + nv * a.v - at, db = nu * b.u + nv * b.v - at;
        if (da >= 0) out[kept++] = a;
        if ((da > 0 && db < 0) || (da < 0 && db > 0)) {
            const double t = da / (da - db);
            out[kept++] = (frame_roof_at){a.u + (b.u - a.u) * t, a.v + (b.v - a.v) * t};
        }
    }
    return kept;
}

static double area_of(const frame_roof_at *c, size_t count, frame_roof_at *centre) {
    double area = 0, u = 0, v = 0;
    for (size_t i = 0; i < count; i++) {
        const frame_roof_at a = c[i], b = c[(i + 1) % count];
        const double cross = a.u * b.v - b.u * a.v;
        area += cross / 2;
        u += (a.u + b.u) * cross / 6;
        v += (a.v + b.v) * cross / 6;
    }
    *centre = area != 0 ? (frame_roof_at){u / area, v / area} : (frame_roof_at){0, 0};
    return area;
}

frame_roof_crossing frame_roof_face_cross(const frame_roof_face *f, frame_roof_at at) {
    frame_roof_crossing c = {-1e300, 1e300, 0, 0, 0};
    for (size_t i = 0; i < f->count; i++) {
        const frame_roof_at a = f->corners[i], b = f->corners[(i + 1) % f->count];
        if ((a.u > at.u) == (b.u > at.u)) continue;
        const double v = a.v + (b.v - a.v) * (at.u - a.u) / (b.u - a.u);
        if (v <= at.v && v > c.low) c.low = v, c.low_edge = i, c.found |= 1;
        if (v > at.v && v < c.high) c.high = v, c.high_edge = i, c.found |= 2;
    }
    return c;
}

/* The line of the roof that an edge of the face is; SIZE_MAX when it is none. */
static size_t line_of(const frame_roof_face *f, size_t edge, frame_roof_solve_line *line) {
    const int32_t a = f->points[edge], b = f->points[(edge + 1) % f->count];
    for (size_t i = 0; i < frame_roof_solve_line_count(f->shape->solved); i++) {
        frame_roof_solve_line_at(f->shape->solved, i, line);
        if ((line->from_point == a && line->to_point == b) || (line->from_point == b && line->to_point == a)) return i;
    }
    return FRAME_NOBODY;
}

/* Hands a strip's reaction to what holds its end at a point of an edge. */
frame_status frame_roof_face_hand(const frame_roof_face *f, const char *name, size_t edge, frame_roof_at at,
                                  const frame_by_kind *load) {
    frame_roof_solve_line line;
    double x, y, s = 0;
    size_t bearer = FRAME_NOBODY;
    const size_t found = line_of(f, edge, &line);
    to_plan(f, at.u, at.v, &x, &y);
    if (found != FRAME_NOBODY && f->shape->line_bearers[found] != FRAME_NOBODY) {
        bearer = f->shape->line_bearers[found];
        const frame_bearer *on = FRAME_BEARER(f->job, bearer);
        s = fmin(fmax(hypot(x - on->x[0], y - on->y[0]), 0), on->length);
    } else if (found != FRAME_NOBODY && line.kind == FRAME_LINE_WALL) {
        bearer = frame_bearer_beside(f->job, x, y, &s);
    } else {
        const frame_part_level *level = &f->job->levels[f->shape->level];
        const frame_below below = {frame_framing_tier(f->job, f->shape->level, FRAME_TIER_TOP_POST),
                                   frame_framing_tier(f->job, f->shape->level, FRAME_TIER_ROOF_POST),
                                   level->base_in + level->height_in, FRAME_STOREY_GAP};
        bearer = frame_bearer_under(f->job, x, y, &below, &s);
    }
    return frame_deliver(f->job, FRAME_BEARER_RAFTERS, name, bearer, s, x, y, load);
}

static frame_by_kind times(const frame_by_kind *load, double factor) {
    frame_by_kind made = {{0}};
    frame_by_kind_add(&made, load, factor);
    return made;
}

/* What hangs out past the eave under a strip: its width there times the overhang. */
static double eave_width(const frame_roof_face *f, const frame_roof_at *strip, size_t count) {
    double width = 0;
    for (size_t i = 0; i < count; i++) {
        const frame_roof_at a = strip[i], b = strip[(i + 1) % count];
        for (size_t e = 0; e < f->count; e++) {
            const frame_roof_at p = f->corners[e], q = f->corners[(e + 1) % f->count];
            frame_roof_solve_line line;
            if (fabs(a.v - p.v) > 1e-7 || fabs(b.v - p.v) > 1e-7 || fabs(p.v - q.v) > 1e-7) continue;
            if (fmin(a.u, b.u) < fmin(p.u, q.u) - 1e-7 || fmax(a.u, b.u) > fmax(p.u, q.u) + 1e-7) continue;
            if (line_of(f, e, &line) != FRAME_NOBODY && line.kind == FRAME_LINE_EAVE) width += fabs(a.u - b.u);
        }
    }
    return width;
}

static frame_status strip(frame_roof_face *f, double from, double to) {
    frame_roof_at half[2 * FRAME_ROOF_FACE_CORNERS], piece[2 * FRAME_ROOF_FACE_CORNERS], centre;
    size_t count = frame_roof_clip(f->corners, f->count, 1, 0, from, half);
    count = frame_roof_clip(half, count, -1, 0, -to, piece);
    const double area = area_of(piece, count, &centre);
    if (!(area > 1e-9)) return FRAME_OK;
    const char *name = f->shape->roof.name;
    const frame_roof_crossing c = frame_roof_face_cross(f, centre);
    const double out_area = f->overhang * eave_width(f, piece, count);
    const frame_by_kind on = times(&f->psf, area / 144), over = times(&f->psf, out_area / 144);
    double v_drift;
    const double drift = frame_roof_surcharge(f, piece, count, &v_drift);
    frame_by_kind_add(&f->job->put, &on, 1);
    frame_by_kind_add(&f->job->put, &over, 1);
    f->job->put.k[FRAME_LOAD_SNOW] += drift;
    if (c.found != 3) { /* its middle lies outside its own corners: numerically nothing, given to the first edge */
        frame_by_kind all = on;
        frame_by_kind_add(&all, &over, 1);
        all.k[FRAME_LOAD_SNOW] += drift;
        return frame_roof_face_hand(f, name, 0, centre, &all);
    }
    const double run = c.high - c.low;
    f->longest = fmax(f->longest, run);
    frame_by_kind low = times(&on, (c.high - centre.v) / run), high = times(&on, (centre.v - c.low) / run);
    frame_by_kind_add(&low, &over, 1 + f->overhang / 2 / run);
    frame_by_kind_add(&high, &over, -f->overhang / 2 / run);
    low.k[FRAME_LOAD_SNOW] += drift * (c.high - v_drift) / run;
    high.k[FRAME_LOAD_SNOW] += drift * (v_drift - c.low) / run;
    if (drift > 0) f->drift = fmax(f->drift, frame_roof_even_surcharge(f, centre.u, c.low, c.high));
    const frame_status status = frame_roof_face_hand(f, name, c.low_edge, (frame_roof_at){centre.u, c.low}, &low);
    return status ? status : frame_roof_face_hand(f, name, c.high_edge, (frame_roof_at){centre.u, c.high}, &high);
}

/* Rafters are counted from the roof's first corner, so that those of opposite faces stand in pairs. */
static frame_status strips(frame_roof_face *f) {
    const double spacing = f->shape->roof.spacing_in;
    double first = 1e300, last = -1e300;
    const double origin = f->shape->roof.corners[0].x_in * f->ux + f->shape->roof.corners[0].y_in * f->uy;
    for (size_t i = 0; i < f->count; i++) first = fmin(first, f->corners[i].u), last = fmax(last, f->corners[i].u);
    double from = first;
    double k = floor((first - origin) / spacing + 0.5);
    frame_status status = FRAME_OK;
    while (!status && from < last - 1e-9) {
        double to = fmin(origin + (k + 0.5) * spacing, last);
        if (last - to < 1e-6) to = last;
        if (to > from + 1e-9) status = strip(f, from, to), from = to;
        k += 1;
    }
    return status;
}

int frame_roof_face_read(frame_roof_face *f) {
    const double angle = f->facts.toward_deg * acos(-1) / 180;
    f->vx = cos(angle), f->vy = sin(angle);
    if (fabs(f->vx) < 1e-12) f->vx = 0, f->vy = f->vy > 0 ? 1 : -1;
    if (fabs(f->vy) < 1e-12) f->vy = 0, f->vx = f->vx > 0 ? 1 : -1;
    f->ux = f->vy, f->uy = -f->vx;
    if (f->facts.outline_count > FRAME_ROOF_FACE_CORNERS) return 0;
    f->count = f->facts.outline_count;
    for (size_t i = 0; i < f->count; i++) {
        frame_roof_solve_outline outline;
        frame_roof_solve_outline_at(f->shape->solved, f->facts.outline_first + i, &outline);
        if (outline.loop > 0) return 0;
        f->corners[i].u = outline.x_in * f->ux + outline.y_in * f->uy;
        f->corners[i].v = outline.x_in * f->vx + outline.y_in * f->vy;
        f->points[i] = outline.point;
    }
    frame_roof_at centre;
    if (area_of(f->corners, f->count, &centre) < 0) { /* turned: the strips want it counterclockwise */
        for (size_t i = 0; i < f->count / 2; i++) {
            const frame_roof_at swap = f->corners[i];
            const int32_t point = f->points[i];
            f->corners[i] = f->corners[f->count - 1 - i], f->points[i] = f->points[f->count - 1 - i];
            f->corners[f->count - 1 - i] = swap, f->points[f->count - 1 - i] = point;
        }
    }
    return 1;
}

static double longest_run(const frame_roof_face *f) {
    double low = 1e300, high = -1e300;
    for (size_t i = 0; i < f->count; i++) low = fmin(low, f->corners[i].v), high = fmax(high, f->corners[i].v);
    return high - low;
}

static frame_status one_face(frame_framing_job *job, size_t r, size_t i, frame_array *rafters) {
    frame_roof_face f = {.job = job, .shape = &job->roofs[r], .roof = r, .index = i};
    const frame_part_roof *roof = &f.shape->roof;
    frame_roof_solve_face_at(f.shape->solved, i, &f.facts);
    const int upper = f.facts.kind == FRAME_FACE_UPPER_ROOF;
    if ((f.facts.kind != FRAME_FACE_ROOF && !upper) || !(f.facts.plan_area_in2 > 0)) return FRAME_OK;
    if (!frame_roof_face_read(&f))
        return frame_fail(FRAME_OUTSIDE_SCOPE, "corners", "", "faces of one part with at most 64 corners",
                          "roof %.60s: its face from edge %d has several parts, or more than 64 corners", roof->name,
                          (int)f.facts.edge);
    frame_status status = frame_framing_roof_snow(job, f.shape, f.facts.slope, longest_run(&f), &f.snow, &f.unbalanced);
    if (status) return status;
    f.secant = sqrt(1 + f.facts.slope * f.facts.slope);
    f.overhang = roof->overhang_in * f.shape->first_slope / f.facts.slope;
    f.psf.k[FRAME_LOAD_DEAD] = roof->dead_psf * f.secant;
    f.psf.k[FRAME_LOAD_ROOF_LIVE] = roof->roof_live_psf;
    f.psf.k[FRAME_LOAD_SNOW] = f.snow;
    f.psf.k[FRAME_LOAD_WIND] = -roof->wind_uplift_psf;
    status = strips(&f);
    if (status) return status;
    const frame_rafter_face made = {f.longest, f.facts.slope, f.snow, f.unbalanced, f.drift, f.facts.edge, upper};
    return frame_array_push(rafters, &made) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* -- corners: what hangs out beyond both building lines -- */

/* The face that rises from an edge of the plan. */
static int face_of_edge(const frame_roof_shape *shape, int32_t edge, frame_roof_solve_face *found) {
    for (size_t i = 0; i < frame_roof_solve_face_count(shape->solved); i++) {
        frame_roof_solve_face_at(shape->solved, i, found);
        if (found->edge == edge && found->kind == FRAME_FACE_ROOF) return 1;
    }
    return 0;
}

/* The hip or valley that rises from a corner. */
static size_t line_from(const frame_framing_job *job, const frame_roof_shape *shape, double x, double y) {
    for (size_t i = 0; i < frame_roof_solve_line_count(shape->solved); i++) {
        const size_t place = shape->line_bearers[i];
        if (place == FRAME_NOBODY) continue;
        const frame_bearer *bearer = FRAME_BEARER(job, place);
        if (bearer->kind != FRAME_BEARER_RIDGE && hypot(bearer->x[0] - x, bearer->y[0] - y) < 1e-6) return place;
    }
    return FRAME_NOBODY;
}

static frame_roof_kind kind_of(const frame_part_roof *roof, size_t edge) {
    if (!roof->kind_count) return FRAME_ROOF_HIP;
    return roof->kinds[roof->kind_count == 1 ? 0 : edge];
}

/* At a frame_roof_at of the plan two overhangs meet: at an outer frame_roof_at the kite beyond both lies on nobody's
 * strip and hangs on the hip; at an inner frame_roof_at it lies on two strips, and once is taken off where the valley's
 * tail is. */
static frame_status one_corner(frame_framing_job *job, size_t r, size_t i) {
    frame_roof_shape *shape = &job->roofs[r];
    const frame_part_roof *roof = &shape->roof;
    const size_t count = roof->corner_count, before = (i + count - 1) % count, after = (i + 1) % count;
    frame_roof_solve_face one, two;
    /* Beside a half hip there is a gable: its rake has no eave to go round the corner with. */
    if (kind_of(roof, before) == FRAME_ROOF_HALF_HIP || kind_of(roof, i) == FRAME_ROOF_HALF_HIP) return FRAME_OK;
    if (!(roof->overhang_in > 0) || !face_of_edge(shape, (int32_t)before, &one) ||
        !face_of_edge(shape, (int32_t)i, &two))
        return FRAME_OK;
    const frame_roof_corner *c = roof->corners;
    const double ax = c[i].x_in - c[before].x_in, ay = c[i].y_in - c[before].y_in, bx = c[after].x_in - c[i].x_in,
                 by = c[after].y_in - c[i].y_in;
    const double la = hypot(ax, ay), lb = hypot(bx, by), sine = (ax * by - ay * bx) / la / lb,
                 cosine = (ax * bx + ay * by) / la / lb;
    frame_roof_solve_out solved;
    frame_roof_solve_result(shape->solved, &solved);
    const double turn = FRAME_HAS(solved.cautions, FRAME_ROOF_CAUTION_CLOCKWISE) ? -1 : 1;
    if (fabs(sine) < 1e-6) return FRAME_OK;
    const double oa = roof->overhang_in * shape->first_slope / one.slope,
                 ob = roof->overhang_in * shape->first_slope / two.slope;
    /* The kite's area: of two right-angled triangles on the corner's diagonal. */
    const double area = (2 * oa * ob - (oa * oa + ob * ob) * cosine) / (2 * fabs(sine));
    const double sign = turn * sine > 0 ? 1 : -1;
    double snow_one, snow_two, unbalanced;
    frame_status status =
        frame_framing_roof_snow(job, shape, one.slope, one.high_in / one.slope, &snow_one, &unbalanced);
    if (!status)
        status = frame_framing_roof_snow(job, shape, two.slope, two.high_in / two.slope, &snow_two, &unbalanced);
    if (status) return status;
    frame_by_kind load = {{0}};
    const double secant = (sqrt(1 + one.slope * one.slope) + sqrt(1 + two.slope * two.slope)) / 2;
    load.k[FRAME_LOAD_DEAD] = roof->dead_psf * secant * sign * area / 144;
    load.k[FRAME_LOAD_ROOF_LIVE] = roof->roof_live_psf * sign * area / 144;
    load.k[FRAME_LOAD_SNOW] = (snow_one + snow_two) / 2 * sign * area / 144;
    load.k[FRAME_LOAD_WIND] = -roof->wind_uplift_psf * sign * area / 144;
    frame_by_kind_add(&job->put, &load, 1);
    const size_t line = line_from(job, shape, c[i].x_in, c[i].y_in);
    return frame_deliver(job, FRAME_BEARER_RAFTERS, roof->name, line, 0, c[i].x_in, c[i].y_in, &load);
}

/* Every part of the plan lies under a face that is followed: else a load would be lost before it is put on. */
static frame_status refuse_gaps(const frame_framing_job *job, size_t r) {
    const frame_roof_shape *shape = &job->roofs[r];
    frame_roof_solve_out solved;
    double followed = 0;
    frame_roof_solve_result(shape->solved, &solved);
    for (size_t i = 0; i < frame_roof_solve_face_count(shape->solved); i++) {
        frame_roof_solve_face face;
        frame_roof_solve_face_at(shape->solved, i, &face);
        if (face.kind == FRAME_FACE_ROOF || face.kind == FRAME_FACE_UPPER_ROOF) followed += face.plan_area_in2;
    }
    if (fabs(followed - solved.plan_area_in2) <= 1e-9 * solved.plan_area_in2) return FRAME_OK;
    return frame_fail(FRAME_OUTSIDE_SCOPE, "corners", "", "a roof whose faces cover its plan",
                      "roof %.60s: its faces do not cover its plan; it is not followed down", shape->roof.name);
}

frame_status frame_framing_roof_strips(frame_framing_job *job, size_t r) {
    frame_array rafters = {.item_size = sizeof(frame_rafter_face)};
    frame_status status = refuse_gaps(job, r);
    for (size_t i = 0; i < frame_roof_solve_face_count(job->roofs[r].solved) && !status; i++)
        status = one_face(job, r, i, &rafters);
    for (size_t i = 0; i < job->roofs[r].roof.corner_count && !status; i++) status = one_corner(job, r, i);
    if (!status) status = frame_framing_rafters(job, r, rafters.items, rafters.count);
    frame_array_give(&rafters);
    return status;
}
