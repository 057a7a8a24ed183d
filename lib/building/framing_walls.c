/* A wall: what stands on it goes over the plates to studs, or over headers to jacks; and from their feet down. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "building/framing.h"
#include "material/lumber.h"

/* -- its layout -- */

void frame_framing_wall_describe(const frame_framing_job *job, size_t w, frame_wall_opening *openings,
                                 frame_wall_in *in) {
    const frame_part_wall *wall = &job->walls[w];
    frame_wall_in_init(in);
    in->name = wall->name;
    in->length_in = hypot(wall->to_x_in - wall->from_x_in, wall->to_y_in - wall->from_y_in);
    in->height_in = job->levels[job->level_of_wall[w]].height_in;
    in->size = wall->size;
    in->spacing_in = wall->spacing_in;
    in->bearing = wall->bearing;
    in->start_end = wall->start_end;
    in->end_end = wall->end_end;
    size_t count = 0;
    for (size_t i = 0; i < job->opening_count; i++) {
        const frame_part_opening *part = &job->openings[i];
        if (job->wall_of_opening[i] != w) continue;
        frame_wall_opening *made = &openings[count++];
        frame_wall_opening_init(made);
        made->name = part->name;
        made->at_in = part->at_in;
        made->width_in = part->width_in;
        made->head_in = part->head_in;
        made->sill_in = part->sill_in;
        made->jacks = job->chosen_headers[i].jacks;
        if (!wall->bearing) continue;
        made->header_size = job->chosen_headers[i].size;
        made->header_plies = job->chosen_headers[i].plies;
    }
    in->openings = count ? openings : NULL;
    in->opening_count = count;
}

static frame_status lay_out(frame_framing_job *job, size_t w, frame_wall **layout) {
    frame_wall_in in;
    frame_wall_opening *openings = frame_take(sizeof *openings * (job->opening_count + 1));
    if (!openings) return FRAME_NO_MEMORY;
    frame_framing_wall_describe(job, w, openings, &in);
    const frame_status status = frame_wall_solve(&in, layout, NULL);
    frame_give(openings);
    return status ? frame_fail_within("wall %.60s, ", job->walls[w].name) : FRAME_OK;
}

static int by_s(const void *a, const void *b) {
    const frame_upright *one = a, *two = b;
    return one->s < two->s ? -1 : one->s > two->s;
}

static int is_removed(const frame_framing_job *job, size_t w, double from, double to) {
    return job->removed_wall && !strcmp(job->removed_wall, job->walls[w].name) && job->removed_at >= from - 0.75 &&
           job->removed_at <= to + 0.75;
}

/* The openings of a wall in the order of the layout: the n-th, from 1. */
static size_t opening_of(const frame_framing_job *job, size_t w, int32_t number) {
    for (size_t i = 0; i < job->opening_count; i++)
        if (job->wall_of_opening[i] == w && --number == 0) return i;
    return FRAME_NOBODY;
}

static frame_status add_jacks(const frame_framing_job *job, size_t w, frame_array *uprights) {
    for (int32_t n = 1;; n++) {
        const size_t i = opening_of(job, w, n);
        if (i == FRAME_NOBODY) return FRAME_OK;
        const double reach = 1.5 * job->chosen_headers[i].jacks / 2;
        const double at[2] = {job->openings[i].at_in - reach,
                              job->openings[i].at_in + job->openings[i].width_in + reach};
        for (int side = 0; side < 2; side++) {
            const frame_upright jacks = {
                .s = at[side], .plies = job->chosen_headers[i].jacks, .is_jack = 1, .opening = n};
            if (!frame_array_push(uprights, &jacks)) return FRAME_NO_MEMORY;
        }
    }
}

frame_status frame_framing_uprights(frame_framing_job *job, size_t w, frame_array *uprights) {
    frame_wall *layout;
    frame_status status = lay_out(job, w, &layout);
    if (status) return status;
    for (size_t i = 0; i < frame_wall_mark_count(layout) && !status; i++) {
        frame_wall_mark mark;
        frame_wall_mark_at(layout, i, &mark);
        if (mark.kind != FRAME_PIECE_STUD && mark.kind != FRAME_PIECE_KING) continue;
        if (!mark.top || !mark.bottom || is_removed(job, w, mark.mark_in, mark.to_in)) continue;
        const frame_upright stud = {.s = (mark.mark_in + mark.to_in) / 2,
                                    .plies = 1,
                                    .opening = mark.opening,
                                    .king = mark.kind == FRAME_PIECE_KING};
        if (!frame_array_push(uprights, &stud)) status = FRAME_NO_MEMORY;
    }
    frame_wall_free(layout);
    if (!status) status = add_jacks(job, w, uprights);
    if (uprights->count) qsort(uprights->items, uprights->count, sizeof(frame_upright), by_s);
    return status;
}

/* -- what stands on it -- */

/* Between two uprights the plates share a load by the lever. Jacks do not reach the plates. */
static void on_plates(frame_array *uprights, double s, const frame_by_kind *load) {
    frame_upright *before = NULL, *after = NULL;
    for (size_t i = 0; i < uprights->count; i++) {
        frame_upright *upright = &FRAME_ITEM(frame_upright, *uprights, i);
        if (upright->is_jack) continue;
        if (upright->s <= s) before = upright;
        if (upright->s > s && !after) after = upright;
    }
    if (!before || !after) {
        frame_upright *only = before ? before : after;
        if (only) frame_by_kind_add(&only->load, load, 1);
        return;
    }
    const double share = (s - before->s) / (after->s - before->s);
    frame_by_kind_add(&before->load, load, 1 - share);
    frame_by_kind_add(&after->load, load, share);
}

/* Over an opening, between the outer faces of its jacks, a load comes to the header. */
static size_t opening_at(const frame_framing_job *job, size_t w, double s, int32_t *number) {
    int32_t n = 0;
    for (size_t i = 0; i < job->opening_count; i++) {
        if (job->wall_of_opening[i] != w) continue;
        n++;
        const double reach = 1.5 * job->chosen_headers[i].jacks;
        if (s <= job->openings[i].at_in - reach || s >= job->openings[i].at_in + job->openings[i].width_in + reach)
            continue;
        *number = n;
        return i;
    }
    return FRAME_NOBODY;
}

static void on_jacks(frame_array *uprights, int32_t opening, const frame_by_kind ends[2]) {
    int side = 0;
    for (size_t i = 0; i < uprights->count; i++) {
        frame_upright *upright = &FRAME_ITEM(frame_upright, *uprights, i);
        if (!upright->is_jack || upright->opening != opening) continue;
        upright->load = ends[side++ ? 1 : 0];
    }
}

/* Headers first: their jacks are part of the layout. */
static frame_status headers(frame_framing_job *job, size_t w, const frame_array *points, frame_by_kind (*ends)[2]) {
    frame_at_point *over = frame_take(sizeof *over * (points->count + 1));
    frame_status status = over ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t i = 0; i < job->opening_count && !status; i++) {
        if (job->wall_of_opening[i] != w) continue;
        size_t count = 0;
        int32_t number;
        if (job->chosen_headers[i].jacks < 1) job->chosen_headers[i].jacks = 1;
        for (size_t p = 0; p < points->count; p++) {
            const frame_at_point *point = &FRAME_ITEM(frame_at_point, *points, p);
            if (opening_at(job, w, point->s, &number) == i) over[count++] = *point;
        }
        status = frame_framing_header(job, w, i, over, count, ends[i]);
    }
    frame_give(over);
    return status;
}

/* Its own weight: each upright takes that of half the way to its neighbours. */
static void add_weight(frame_framing_job *job, size_t w, frame_array *uprights, double length) {
    const frame_part_wall *wall = &job->walls[w];
    const double plf = wall->dead_psf * job->levels[job->level_of_wall[w]].height_in / 12;
    frame_by_kind own = {{0}};
    size_t last = FRAME_NOBODY;
    for (size_t i = 0; i < uprights->count; i++)
        if (!FRAME_ITEM(frame_upright, *uprights, i).is_jack) last = i;
    double from = 0;
    for (size_t i = 0; i < uprights->count; i++) {
        frame_upright *upright = &FRAME_ITEM(frame_upright, *uprights, i);
        if (upright->is_jack) continue;
        double to = length;
        for (size_t k = i + 1; k < uprights->count && i != last; k++) {
            const frame_upright *next = &FRAME_ITEM(frame_upright, *uprights, k);
            if (next->is_jack) continue;
            to = (upright->s + next->s) / 2;
            break;
        }
        own.k[FRAME_LOAD_DEAD] = plf * (to - from) / 12;
        frame_by_kind_add(&upright->load, &own, 1);
        from = to;
    }
    job->put.k[FRAME_LOAD_DEAD] += plf * length / 12;
}

/* -- down -- */

/* Over a footing the load is spread along 4 ft: its rise with the wall's stiffness is not gone into. */
static frame_status strip_footing(frame_framing_job *job, const frame_bearer *bearer, const frame_array *uprights,
                                  const char *on_ground) {
    const frame_part_wall *wall = &job->walls[bearer->part];
    frame_by_kind all = {{0}};
    double heaviest = 0, from = 1e300, to = -1e300;
    frame_load_combination which = FRAME_COMBINATION_D;
    for (size_t i = 0; i < uprights->count; i++) {
        const frame_upright *one = &FRAME_ITEM(frame_upright, *uprights, i);
        frame_by_kind window = {{0}};
        if (!on_ground[i]) continue;
        frame_by_kind_add(&all, &one->load, 1);
        from = fmin(from, one->s), to = fmax(to, one->s);
        for (size_t k = 0; k < uprights->count; k++) {
            const frame_upright *two = &FRAME_ITEM(frame_upright, *uprights, k);
            if (on_ground[k] && two->s >= one->s && two->s < one->s + 48) frame_by_kind_add(&window, &two->load, 1);
        }
        heaviest = fmax(heaviest, frame_by_kind_most(&window, NULL, NULL) / fmin(4, fmax(bearer->length, 12) / 12));
    }
    if (to < from) return FRAME_OK;
    frame_framing_footing *footing = frame_answer_add(job->answer, FRAME_FRAMING_FOOTINGS);
    if (!footing) return FRAME_NO_MEMORY;
    footing->name = frame_answer_text(job->answer, wall->name);
    footing->code = "";
    frame_bearer_point(bearer, (from + to) / 2, &footing->x_in, &footing->y_in);
    footing->length_in = to - from;
    footing->service_lb = frame_by_kind_most(&all, &which, NULL);
    footing->service_plf = heaviest;
    footing->combination = which;
    footing->needed_width_in = 12 * heaviest / job->conditions.soil_psf;
    if (wall->footing_width_in == FRAME_NOT_GIVEN) return FRAME_OK;
    footing->given_width_in = wall->footing_width_in;
    footing->passes = wall->footing_width_in >= footing->needed_width_in - 1e-9;
    if (!footing->passes) job->footing_fails = 1;
    return FRAME_OK;
}

/* Each foot to what lies under it: a beam or wall, else the joists of the floor it stands on, else the ground. */
static frame_status go_down(frame_framing_job *job, const frame_bearer *bearer, const frame_array *uprights) {
    const size_t level = job->level_of_wall[bearer->part];
    frame_on_floor *loads = frame_take(sizeof *loads * (uprights->count + 1));
    char *on_ground = frame_take_zeroed(uprights->count + 1, 1);
    frame_status status = loads && on_ground ? FRAME_OK : FRAME_NO_MEMORY;
    size_t count = 0, floor = FRAME_NOBODY;
    for (size_t i = 0; i < uprights->count && !status; i++) {
        const frame_upright *upright = &FRAME_ITEM(frame_upright, *uprights, i);
        double x, y, at;
        frame_bearer_point(bearer, upright->s, &x, &y);
        const frame_below below = {-1, bearer->tier, bearer->bottom, FRAME_STOREY_GAP};
        const size_t under = frame_bearer_under(job, x, y, &below, &at);
        const size_t over = frame_floor_over(job, level, x, y, 0);
        if (under != FRAME_NOBODY) {
            status = frame_deliver(job, FRAME_BEARER_WALL, bearer->name, under, at, x, y, &upright->load);
        } else if (over != FRAME_NOBODY && (floor == FRAME_NOBODY || over == floor)) {
            floor = over;
            loads[count++] = (frame_on_floor){x, y, upright->load};
        } else {
            on_ground[i] = 1;
            status = frame_deliver_down(job, FRAME_BEARER_WALL, bearer->name, FRAME_BEARER_FOOTING, bearer->name, x, y,
                                        &upright->load);
        }
    }
    if (!status) status = strip_footing(job, bearer, uprights, on_ground);
    if (!status && count) status = frame_floor_carry(job, floor, bearer->name, loads, count);
    frame_give(on_ground);
    frame_give(loads);
    return status;
}

/* A partition on a floor: its weight is taken to be part of the floor's dead load, as is usual. */
static int is_in_floor(const frame_framing_job *job, const frame_bearer *bearer) {
    double x, y;
    frame_bearer_point(bearer, bearer->length / 2, &x, &y);
    return !job->walls[bearer->part].bearing &&
           frame_floor_over(job, job->level_of_wall[bearer->part], x, y, 0) != FRAME_NOBODY;
}

static frame_status stand(frame_framing_job *job, const frame_bearer *bearer, frame_array *uprights,
                          frame_by_kind (*ends)[2]) {
    const size_t w = bearer->part;
    frame_status status = frame_framing_uprights(job, w, uprights);
    if (status) return status;
    for (size_t i = 0; i < bearer->points.count; i++) {
        const frame_at_point *point = &FRAME_ITEM(frame_at_point, bearer->points, i);
        int32_t number;
        if (opening_at(job, w, point->s, &number) == FRAME_NOBODY) on_plates(uprights, point->s, &point->load);
    }
    for (int32_t n = 1; opening_of(job, w, n) != FRAME_NOBODY; n++) on_jacks(uprights, n, ends[opening_of(job, w, n)]);
    add_weight(job, w, uprights, bearer->length);
    if (job->walls[w].bearing) status = frame_framing_uprights_check(job, w, uprights);
    return status ? status : go_down(job, bearer, uprights);
}

frame_status frame_framing_wall(frame_framing_job *job, size_t place) {
    const frame_bearer bearer = *FRAME_BEARER(job, place);
    if (bearer.existing) return FRAME_OK;
    if (is_in_floor(job, &bearer))
        return frame_framing_note_add(job, FRAME_NOTE_ASSUMED, bearer.name,
                                      "A partition: its weight is part of the dead load of the floor under it.");
    frame_array uprights = {.item_size = sizeof(frame_upright)};
    frame_by_kind(*ends)[2] = frame_take_zeroed(job->opening_count + 1, sizeof *ends);
    if (!ends) return FRAME_NO_MEMORY;
    frame_status status = headers(job, bearer.part, &bearer.points, ends);
    if (!status) status = stand(job, &bearer, &uprights, ends);
    frame_array_give(&uprights);
    frame_give(ends);
    return status;
}
