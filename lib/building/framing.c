/* A description worked out: read, loaded, followed from the top tier down to the ground, placed, bought. */
#include "building/framing.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <frame/drawing.h>

#include "base/error.h"
#include "building_facts.h"
#include "working/calculation.h"

static void release_inside(void *object) {
    frame_framing_inside *inside = object;
    for (size_t i = 0; i < inside->workings.count; i++)
        frame_working_free(FRAME_ITEM(frame_working *, inside->workings, i));
    for (size_t i = 0; i < inside->sticks.count; i++) frame_stick_free(FRAME_ITEM(frame_stick *, inside->sticks, i));
    for (size_t i = 0; i < inside->views.count; i++)
        frame_drawing_free(FRAME_ITEM(frame_framing_view, inside->views, i).drawing);
    frame_array_give(&inside->views);
    frame_array_give(&inside->workings);
    frame_array_give(&inside->sticks);
    frame_give(inside->name);
    frame_give(inside);
}

frame_framing_inside *frame_framing_inside_of(const frame_framing *framing) {
    const frame_answer *answer = (const frame_answer *)framing;
    return FRAME_ITEM(frame_owned, answer->owned, 0).object;
}

static frame_status make_inside(frame_framing_job *job) {
    frame_framing_inside *inside = frame_take_zeroed(1, sizeof *inside);
    if (!inside) return FRAME_NO_MEMORY;
    inside->workings.item_size = inside->sticks.item_size = sizeof(void *);
    inside->views.item_size = sizeof(frame_framing_view);
    job->inside = inside;
    return frame_answer_own(job->answer, inside, release_inside) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status make_room(frame_framing_job *job) {
    job->chosen_lines.item_size = sizeof(frame_chosen);
    job->chosen_beams = frame_arena_take(&job->arena, (job->beam_count + 1) * sizeof(frame_chosen));
    job->chosen_headers = frame_arena_take(&job->arena, (job->opening_count + 1) * sizeof(frame_chosen));
    job->post_tops = frame_arena_take(&job->arena, (job->post_count + 1) * sizeof(double));
    job->post_feet = frame_arena_take(&job->arena, (job->post_count + 1) * sizeof(double));
    if (!job->chosen_beams || !job->chosen_headers || !job->post_tops || !job->post_feet) return FRAME_NO_MEMORY;
    memset(job->chosen_beams, 0, (job->beam_count + 1) * sizeof(frame_chosen));
    memset(job->chosen_headers, 0, (job->opening_count + 1) * sizeof(frame_chosen));
    for (size_t i = 0; i <= job->post_count; i++) job->post_tops[i] = job->post_feet[i] = FRAME_NOT_GIVEN;
    return FRAME_OK;
}

frame_status frame_framing_chosen(frame_framing_job *job, const frame_bearer *bearer, frame_size size, int32_t plies) {
    if (bearer->kind == FRAME_BEARER_BEAM) {
        job->chosen_beams[bearer->part] = (frame_chosen){.size = size, .plies = plies, .length = bearer->length};
        return FRAME_OK;
    }
    const frame_chosen line = {.size = size,
                               .plies = plies,
                               .roof = bearer->part,
                               .is_ridge = (int32_t)bearer->kind,
                               .length = bearer->length};
    return frame_array_push(&job->chosen_lines, &line) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* -- down, tier by tier -- */

typedef struct turn {
    int32_t tier;
    const char *name;
    size_t place;
} turn;

static int by_turn(const void *a, const void *b) {
    const turn *one = a, *two = b;
    if (one->tier != two->tier) return one->tier > two->tier ? -1 : 1;
    return strcmp(one->name, two->name);
}

static frame_status one_bearer(frame_framing_job *job, size_t place) {
    const frame_bearer_kind kind = FRAME_BEARER(job, place)->kind;
    if (kind == FRAME_BEARER_WALL) return frame_framing_wall(job, place);
    if (kind == FRAME_BEARER_POST) return frame_framing_post(job, place);
    return frame_framing_line(job, place);
}

static frame_status go_down(frame_framing_job *job) {
    const size_t count = job->bearers.count;
    turn *order = frame_take(sizeof *order * (count + 1));
    if (!order) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < count; i++) {
        const frame_bearer *bearer = FRAME_BEARER(job, i);
        order[i] = (turn){bearer->tier, bearer->name, i};
    }
    if (count) qsort(order, count, sizeof *order, by_turn);
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < count && !status; i++) status = one_bearer(job, order[i].place);
    frame_give(order);
    return status;
}

/* -- summing up -- */

static double balance_of(const frame_framing_job *job) {
    double put = 0, off = 0;
    for (int kind = 1; kind < FRAME_LOAD_KINDS; kind++) {
        put = fmax(put, fabs(job->put.k[kind]));
        off = fmax(off, fabs(job->put.k[kind] - job->down.k[kind]));
    }
    return put > 0 ? off / put : 0;
}

static void give_loads(const frame_framing_job *job) {
    frame_framing_out *out = job->out;
    const double *put = job->put.k, *down = job->down.k;
    out->dead_lb = put[FRAME_LOAD_DEAD], out->ground_dead_lb = down[FRAME_LOAD_DEAD];
    out->live_lb = put[FRAME_LOAD_LIVE], out->ground_live_lb = down[FRAME_LOAD_LIVE];
    out->roof_live_lb = put[FRAME_LOAD_ROOF_LIVE], out->ground_roof_live_lb = down[FRAME_LOAD_ROOF_LIVE];
    out->snow_lb = put[FRAME_LOAD_SNOW], out->ground_snow_lb = down[FRAME_LOAD_SNOW];
    out->wind_lb = put[FRAME_LOAD_WIND], out->ground_wind_lb = down[FRAME_LOAD_WIND];
    out->balance = balance_of(job);
}

static uint64_t not_checked_of(const frame_framing_job *job) {
    uint64_t bits = FRAME_BIT(FRAME_FRAMING_UNCHECKED_LATERAL) | FRAME_BIT(FRAME_FRAMING_UNCHECKED_FOUNDATION) |
                    FRAME_BIT(FRAME_FRAMING_UNCHECKED_CONNECTORS) | FRAME_BIT(FRAME_FRAMING_UNCHECKED_SNOW_FORMS) |
                    FRAME_BIT(FRAME_FRAMING_UNCHECKED_WEATHER) | FRAME_BIT(FRAME_FRAMING_UNCHECKED_FIRE) |
                    FRAME_BIT(FRAME_FRAMING_UNCHECKED_VENTILATION) | FRAME_BIT(FRAME_FRAMING_UNCHECKED_SHEATHING) |
                    FRAME_BIT(FRAME_FRAMING_UNCHECKED_PATTERN) | FRAME_BIT(FRAME_FRAMING_UNCHECKED_RAKES) |
                    FRAME_BIT(FRAME_FRAMING_UNCHECKED_UNBALANCED);
    if (job->conditions.wind_wall_psf == FRAME_NOT_GIVEN) bits |= FRAME_BIT(FRAME_FRAMING_UNCHECKED_WIND_STUDS);
    if (job->conditions.ground_snow_psf > 0 && (job->step_untold || (!job->snow_step_count && job->roof_count)))
        bits |= FRAME_BIT(FRAME_FRAMING_UNCHECKED_DRIFT);
    if (job->uplift) bits |= FRAME_BIT(FRAME_FRAMING_UNCHECKED_RAFTERS_UP);
    if (!job->wind_given) bits |= FRAME_BIT(FRAME_FRAMING_UNCHECKED_UPLIFT);
    if (!job->in->sticks || job->not_placed) bits |= FRAME_BIT(FRAME_FRAMING_UNCHECKED_PLACED);
    return bits;
}

static frame_status sum_up(frame_framing_job *job) {
    frame_framing_out *out = job->out;
    give_loads(job);
    out->known = job->known;
    const int overlaps = out->fits == 0;
    out->passes = !out->failed_total && !job->beside_fails && !job->footing_fails && !overlaps;
    out->cautions = FRAME_BIT(FRAME_FRAMING_CAUTION_LOCAL) | FRAME_BIT(FRAME_FRAMING_CAUTION_MEASURE) |
                    FRAME_BIT(FRAME_FRAMING_CAUTION_BRACE);
    if (out->failed_total || job->footing_fails) out->cautions |= FRAME_BIT(FRAME_FRAMING_CAUTION_FAILS);
    if (job->beside_fails) out->cautions |= FRAME_BIT(FRAME_FRAMING_CAUTION_NOTHING);
    if (overlaps) out->cautions |= FRAME_BIT(FRAME_FRAMING_CAUTION_OVERLAP);
    if (job->uplift) out->cautions |= FRAME_BIT(FRAME_FRAMING_CAUTION_UPLIFT);
    if (job->existing_loads) out->cautions |= FRAME_BIT(FRAME_FRAMING_CAUTION_EXISTING);
    out->not_checked = not_checked_of(job);
    return frame_framing_notes(job, job->conditions.name, out);
}

static frame_status follow(frame_framing_job *job) {
    frame_status status = frame_framing_read(job);
    if (!status) status = make_room(job);
    if (!status) status = frame_framing_bearers(job);
    if (!status) status = frame_floor_openings(job);
    if (!status) status = frame_framing_floors(job); /* first: beams lie under their joists */
    if (!status) status = frame_framing_roofs(job);
    if (!status) status = frame_framing_stairs(job);
    if (!status) status = frame_framing_loads(job);
    if (!status) status = go_down(job);
    return status ? status : frame_framing_uplift(job);
}

static frame_status keep_name(frame_framing_job *job) {
    const size_t length = strlen(job->conditions.name) + 1;
    job->inside->name = frame_take(length);
    if (!job->inside->name) return FRAME_NO_MEMORY;
    memcpy(job->inside->name, job->conditions.name, length);
    return FRAME_OK;
}

/* With one size for all that is open, the largest that the cheapest choice came to is found first: what is larger holds
 * too. */
static frame_status find_only_size(const frame_framing_in *in, frame_size *only) {
    frame_framing_in cheapest = *in;
    frame_framing *answer;
    frame_framing_out out;
    cheapest.choose = FRAME_SITE_CHEAPEST;
    cheapest.sticks = 0;
    const frame_status status = frame_framing_solve(&cheapest, &answer, NULL);
    if (status) return status;
    frame_framing_result(answer, &out);
    *only = frame_framing_inside_of(answer)->largest;
    frame_framing_free(answer);
    return FRAME_OK;
}

frame_status frame_framing_work(const frame_framing_in *in, const char *removed_wall, double removed_at,
                                frame_answer *answer, frame_framing_out *out) {
    frame_framing_job job = {.in = in,
                             .answer = answer,
                             .out = out,
                             .known = FRAME_KNOWN_READ,
                             .removed_wall = removed_wall,
                             .removed_at = removed_at};
    out->worst_ratio = 0;
    out->check_total = out->failed_total = out->stick_total = out->boards_used = 0;
    out->passes = 1;
    job.doubled.item_size = sizeof(frame_doubled);
    frame_status status = in->choose == FRAME_SITE_FEWEST_SIZES ? find_only_size(in, &job.only_size) : FRAME_OK;
    if (!status) status = frame_text_new(&job.text);
    if (!status) status = make_inside(&job);
    if (!status) status = follow(&job);
    if (!status) status = keep_name(&job);
    if (!status && in->sticks) status = frame_framing_place(&job);
    if (!status && in->sticks) status = frame_framing_buy(&job);
    if (!status) status = sum_up(&job);
    if (!status) job.inside->largest = job.largest_chosen;
    frame_framing_give(&job);
    return status;
}

static frame_status solve(const frame_framing_in *in, frame_answer *answer, frame_framing_out *out, frame_working *w) {
    (void)w; /* each check has a working of its own, in the packet */
    return frame_framing_work(in, NULL, 0, answer, out);
}
FRAME_IMPLEMENT_ANSWER(framing, solve);
