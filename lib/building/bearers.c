/* Bearers: walls, beams and posts as lines in plan, each with its tier; what stands under what; loads handed from one
 * to the next. */
#include "building/framing.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "material/lumber.h"

void frame_by_kind_add(frame_by_kind *sum, const frame_by_kind *more, double times) {
    for (int kind = 1; kind < FRAME_LOAD_KINDS; kind++) sum->k[kind] += times * more->k[kind];
}

static unsigned kinds_of(const frame_by_kind *load) {
    unsigned kinds = 0;
    for (int kind = 1; kind < FRAME_LOAD_KINDS; kind++)
        if (load->k[kind] != 0) kinds |= 1u << kind;
    return kinds;
}

static double combined(const frame_by_kind *load, const frame_load_case *by) {
    double sum = 0;
    for (int kind = 1; kind < FRAME_LOAD_KINDS; kind++) sum += by->factor[kind] * load->k[kind];
    return sum;
}

double frame_by_kind_most(const frame_by_kind *load, frame_load_combination *which, double *duration) {
    frame_load_case cases[FRAME_LOAD_CASES];
    const int count = frame_load_cases_find(kinds_of(load), FRAME_DURATION_TEN_YEARS, cases);
    double most = -1e300;
    for (int i = 0; i < count; i++) {
        const double sum = combined(load, &cases[i]);
        if (sum <= most) continue;
        most = sum;
        if (which) *which = cases[i].which;
        if (duration) *duration = cases[i].duration_factor;
    }
    return most;
}

double frame_by_kind_least(const frame_by_kind *load) {
    frame_load_case cases[FRAME_LOAD_CASES];
    const int count = frame_load_cases_find(kinds_of(load), FRAME_DURATION_TEN_YEARS, cases);
    double least = 1e300;
    for (int i = 0; i < count; i++) least = fmin(least, combined(load, &cases[i]));
    return least;
}

int32_t frame_framing_tier(const frame_framing_job *job, size_t level, int32_t in_level) {
    return (int32_t)job->level_rank[level] * FRAME_TIERS + in_level;
}

frame_status frame_bearer_add(frame_framing_job *job, const frame_bearer *bearer, size_t *place) {
    frame_bearer *kept = frame_array_push(&job->bearers, bearer);
    if (!kept) return FRAME_NO_MEMORY;
    kept->length = hypot(kept->x[1] - kept->x[0], kept->y[1] - kept->y[0]);
    kept->points.item_size = sizeof(frame_at_point);
    if (place) *place = job->bearers.count - 1;
    return FRAME_OK;
}

static double top_of_level(const frame_framing_job *job, size_t level) {
    return job->levels[level].base_in + job->levels[level].height_in;
}

/* A wall bears on the middle of its plates: half its depth to the left of its line. */
static frame_status add_wall(frame_framing_job *job, size_t i) {
    const frame_part_wall *wall = &job->walls[i];
    double thickness, depth;
    frame_status status = frame_size_dressed(wall->size, 0, &thickness, &depth);
    if (status) return status;
    const double dx = wall->to_x_in - wall->from_x_in, dy = wall->to_y_in - wall->from_y_in, length = hypot(dx, dy);
    const double left_x = -dy / length * depth / 2, left_y = dx / length * depth / 2;
    return frame_bearer_add(job,
                            &(frame_bearer){.kind = FRAME_BEARER_WALL,
                                            .tier = frame_framing_tier(job, job->level_of_wall[i], FRAME_TIER_WALL),
                                            .name = wall->name,
                                            .part = i,
                                            .x = {wall->from_x_in + left_x, wall->to_x_in + left_x},
                                            .y = {wall->from_y_in + left_y, wall->to_y_in + left_y},
                                            .reach = depth / 2 + 1,
                                            .bottom = job->levels[job->level_of_wall[i]].base_in,
                                            .top = top_of_level(job, job->level_of_wall[i]),
                                            .top_known = 1,
                                            .existing = wall->existing},
                            NULL);
}

static frame_status add_beam(frame_framing_job *job, size_t i) {
    const frame_part_beam *beam = &job->beams[i];
    const size_t level = job->level_of_beam[i];
    const double height = beam->at_top ? top_of_level(job, level) : job->levels[level].base_in;
    return frame_bearer_add(
        job,
        &(frame_bearer){.kind = FRAME_BEARER_BEAM,
                        .tier = frame_framing_tier(job, job->level_of_beam[i],
                                                   beam->at_top ? FRAME_TIER_TOP_BEAM : FRAME_TIER_BEAM),
                        .name = beam->name,
                        .part = i,
                        .x = {beam->from_x_in, beam->to_x_in},
                        .y = {beam->from_y_in, beam->to_y_in},
                        .top = height,
                        .foot = height,
                        .top_known = 1,
                        .reach = 4},
        NULL);
}

/* The distance of a point from a bearer's line, and where along it. */
static double away(const frame_bearer *bearer, double x, double y, double *s) {
    const double dx = x - bearer->x[0], dy = y - bearer->y[0];
    if (!(bearer->length > 0)) {
        *s = 0;
        return hypot(dx, dy);
    }
    const double ux = (bearer->x[1] - bearer->x[0]) / bearer->length,
                 uy = (bearer->y[1] - bearer->y[0]) / bearer->length;
    const double along = dx * ux + dy * uy;
    *s = fmin(fmax(along, 0), bearer->length);
    return hypot(dx * uy - dy * ux, along - *s);
}

/* A post under a beam at the top of walls stands as high as they do; under a roof, higher; else under the floor. */
static int32_t tier_of_post(const frame_framing_job *job, size_t i) {
    const frame_part_post *post = &job->posts[i];
    double s;
    int32_t in_level = FRAME_TIER_POST;
    for (size_t b = 0; b < job->bearers.count; b++) {
        const frame_bearer *bearer = FRAME_BEARER(job, b);
        if (bearer->kind == FRAME_BEARER_BEAM && job->beams[bearer->part].at_top &&
            job->level_of_beam[bearer->part] == job->level_of_post[i] &&
            away(bearer, post->x_in, post->y_in, &s) <= bearer->reach)
            in_level = FRAME_TIER_TOP_POST;
    }
    return post->to_roof ? FRAME_TIER_ROOF_POST : in_level;
}

static frame_status add_post(frame_framing_job *job, size_t i) {
    const frame_part_post *post = &job->posts[i];
    const size_t level = job->level_of_post[i];
    const int32_t tier = tier_of_post(job, i);
    return frame_bearer_add(
        job,
        &(frame_bearer){.kind = FRAME_BEARER_POST,
                        .tier = frame_framing_tier(job, level, tier),
                        .top = tier == FRAME_TIER_POST ? job->levels[level].base_in : top_of_level(job, level),
                        .top_known = tier != FRAME_TIER_ROOF_POST,
                        .name = post->name,
                        .part = i,
                        .x = {post->x_in, post->x_in},
                        .y = {post->y_in, post->y_in},
                        .reach = 6},
        NULL);
}

frame_status frame_framing_bearers(frame_framing_job *job) {
    frame_status status = FRAME_OK;
    job->bearers.item_size = sizeof(frame_bearer);
    for (size_t i = 0; i < job->wall_count && !status; i++) status = add_wall(job, i);
    for (size_t i = 0; i < job->beam_count && !status; i++) status = add_beam(job, i);
    for (size_t i = 0; i < job->post_count && !status; i++) status = add_post(job, i);
    return status;
}

/* Partitions carry nothing. */
static int can_bear(const frame_framing_job *job, const frame_bearer *bearer) {
    return bearer->kind != FRAME_BEARER_WALL || job->walls[bearer->part].bearing;
}

/* Whether a bearer's top is near what is to be carried: what lies a storey below carries nothing without a post. */
static int reaches(const frame_bearer *under, double foot, double down) {
    return !under->top_known || (under->top <= foot + 1 && under->top >= foot - down);
}

/* Of two, the higher; of equals the nearer; of those, the first by name. */
static int is_better(const frame_bearer *one, double distance, const frame_bearer *than, double than_distance) {
    if (one->tier != than->tier) return one->tier > than->tier;
    if (fabs(distance - than_distance) > 1e-6) return distance < than_distance;
    return strcmp(one->name, than->name) < 0;
}

size_t frame_bearer_under(const frame_framing_job *job, double x, double y, const frame_below *below, double *at) {
    size_t best = FRAME_NOBODY;
    double best_distance = 0, s;
    for (size_t i = 0; i < job->bearers.count; i++) {
        const frame_bearer *bearer = FRAME_BEARER(job, i);
        if (bearer->tier >= below->below || bearer->tier < below->least || !can_bear(job, bearer)) continue;
        if (!reaches(bearer, below->foot, below->reach_down)) continue;
        const double distance = away(bearer, x, y, &s);
        if (distance > bearer->reach) continue;
        if (best != FRAME_NOBODY && !is_better(bearer, distance, FRAME_BEARER(job, best), best_distance)) continue;
        best = i;
        best_distance = distance;
        *at = s;
    }
    return best;
}

size_t frame_bearer_beside(const frame_framing_job *job, double x, double y, double *at) {
    size_t best = FRAME_NOBODY;
    double best_distance = 0, s;
    for (size_t i = 0; i < job->bearers.count; i++) {
        const frame_bearer *bearer = FRAME_BEARER(job, i);
        if (bearer->kind != FRAME_BEARER_WALL || !can_bear(job, bearer)) continue;
        const double distance = away(bearer, x, y, &s);
        if (distance > bearer->reach + 2) continue;
        if (best != FRAME_NOBODY &&
            (distance > best_distance + 1e-6 ||
             (distance > best_distance - 1e-6 && strcmp(bearer->name, FRAME_BEARER(job, best)->name) > 0)))
            continue;
        best = i;
        best_distance = distance;
        *at = s;
    }
    return best;
}

void frame_bearer_point(const frame_bearer *bearer, double s, double *x, double *y) {
    const double t = bearer->length > 0 ? s / bearer->length : 0;
    *x = bearer->x[0] + t * (bearer->x[1] - bearer->x[0]);
    *y = bearer->y[0] + t * (bearer->y[1] - bearer->y[0]);
}

/* Where two lines cross in plan, within what each reaches past its ends. */
static int crossing(const frame_bearer *one, const frame_bearer *two, double *s, double *at) {
    if (!(two->length > 0)) {
        double x = two->x[0], y = two->y[0];
        *at = 0;
        return away(one, x, y, s) <= two->reach;
    }
    const double ux = (one->x[1] - one->x[0]) / one->length, uy = (one->y[1] - one->y[0]) / one->length;
    const double vx = (two->x[1] - two->x[0]) / two->length, vy = (two->y[1] - two->y[0]) / two->length;
    const double across = ux * vy - uy * vx;
    if (fabs(across) < 0.05) return 0; /* side by side */
    const double dx = two->x[0] - one->x[0], dy = two->y[0] - one->y[0];
    const double along = (dx * vy - dy * vx) / across, other = (dx * uy - dy * ux) / across;
    if (along < -two->reach || along > one->length + two->reach) return 0;
    if (other < -two->reach || other > two->length + two->reach) return 0;
    *s = fmin(fmax(along, 0), one->length);
    *at = fmin(fmax(other, 0), two->length);
    return 1;
}

static int by_place(const void *a, const void *b) {
    const frame_support *one = a, *two = b;
    if (one->s != two->s) return one->s < two->s ? -1 : 1;
    return one->bearer < two->bearer ? -1 : one->bearer > two->bearer;
}

/* Of supports that stand together only the highest counts. */
void frame_supports_merge(const frame_framing_job *job, frame_array *supports) {
    size_t kept = 0;
    if (supports->count) qsort(supports->items, supports->count, sizeof(frame_support), by_place);
    for (size_t i = 0; i < supports->count; i++) {
        const frame_support *next = &FRAME_ITEM(frame_support, *supports, i);
        frame_support *last = kept ? &FRAME_ITEM(frame_support, *supports, kept - 1) : NULL;
        if (!last || next->s - last->s > 8) {
            FRAME_ITEM(frame_support, *supports, kept++) = *next;
        } else if (is_better(FRAME_BEARER(job, next->bearer), 0, FRAME_BEARER(job, last->bearer), 0)) {
            *last = *next;
        }
    }
    supports->count = kept;
}

/* Trimmers and header joists carry what stands on them, and the tails that end there: no joist or beam that crosses. */
static int is_floor_edge(const frame_bearer *bearer) {
    return bearer->kind == FRAME_BEARER_TRIMMER || bearer->kind == FRAME_BEARER_HEADER_JOIST;
}

frame_status frame_bearer_supports(const frame_framing_job *job, const frame_bearer *bearer, frame_array *supports) {
    frame_support found;
    for (size_t i = 0; i < job->bearers.count; i++) {
        const frame_bearer *under = FRAME_BEARER(job, i);
        if (under->tier >= bearer->tier || !can_bear(job, under) || is_floor_edge(under) ||
            !reaches(under, bearer->foot, FRAME_STOREY_GAP) || !crossing(bearer, under, &found.s, &found.at))
            continue;
        found.bearer = i;
        if (!frame_array_push(supports, &found)) return FRAME_NO_MEMORY;
    }
    frame_supports_merge(job, supports);
    return FRAME_OK;
}

static frame_status list_load(frame_framing_job *job, frame_bearer_kind of_kind, const char *of,
                              frame_bearer_kind on_kind, const char *on, double x, double y,
                              const frame_by_kind *load) {
    frame_framing_load *listed = frame_answer_add(job->answer, FRAME_FRAMING_LOADS);
    if (!listed) return FRAME_NO_MEMORY;
    const char *kept_of = frame_answer_text(job->answer, of), *kept_on = frame_answer_text(job->answer, on);
    if (!kept_of || !kept_on) return FRAME_NO_MEMORY;
    *listed = (frame_framing_load){.struct_size = listed->struct_size,
                                   .struct_id = listed->struct_id,
                                   .of = kept_of,
                                   .on = kept_on,
                                   .x_in = x,
                                   .y_in = y,
                                   .dead_lb = load->k[FRAME_LOAD_DEAD],
                                   .live_lb = load->k[FRAME_LOAD_LIVE],
                                   .roof_live_lb = load->k[FRAME_LOAD_ROOF_LIVE],
                                   .snow_lb = load->k[FRAME_LOAD_SNOW],
                                   .wind_lb = load->k[FRAME_LOAD_WIND],
                                   .of_kind = of_kind,
                                   .on_kind = on_kind};
    return FRAME_OK;
}

frame_status frame_deliver_down(frame_framing_job *job, frame_bearer_kind of_kind, const char *of, frame_bearer_kind to,
                                const char *on, double x, double y, const frame_by_kind *load) {
    frame_by_kind_add(&job->down, load, 1);
    if (to == FRAME_BEARER_NOTHING) job->beside_fails = 1;
    if (to == FRAME_BEARER_EXISTING) job->existing_loads = 1;
    return list_load(job, of_kind, of, to, on, x, y, load);
}

frame_status frame_deliver(frame_framing_job *job, frame_bearer_kind of_kind, const char *of, size_t to, double at,
                           double x, double y, const frame_by_kind *load) {
    if (to == FRAME_NOBODY) return frame_deliver_down(job, of_kind, of, FRAME_BEARER_NOTHING, "nothing", x, y, load);
    frame_bearer *bearer = FRAME_BEARER(job, to);
    if (bearer->existing) return frame_deliver_down(job, of_kind, of, FRAME_BEARER_EXISTING, bearer->name, x, y, load);
    if (!frame_array_push(&bearer->points, &(frame_at_point){at, *load})) return FRAME_NO_MEMORY;
    return list_load(job, of_kind, of, bearer->kind, bearer->name, x, y, load);
}

void frame_bearer_lower(frame_framing_job *job, size_t place, double height) {
    if (place == FRAME_NOBODY) return;
    frame_bearer *bearer = FRAME_BEARER(job, place);
    if (bearer->kind == FRAME_BEARER_POST && (bearer->line == 0 || height < bearer->bottom)) {
        bearer->bottom = height; /* of a post: the height of what it carries */
        bearer->line = 1;
    }
}
