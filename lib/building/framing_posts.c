/* Posts: their height from what they stand on to what they carry, their check as a column, their footing. */
#include <math.h>

#include <frame/tape.h>

#include "base/error.h"
#include "building/framing.h"
#include "material/lumber.h"

/* What it stands on: the height of its foot. */
static double foot_of(const frame_framing_job *job, size_t i, size_t under) {
    const frame_part_post *post = &job->posts[i];
    if (post->bottom_in != FRAME_NOT_GIVEN) return post->bottom_in;
    const frame_part_level *level = &job->levels[job->level_of_post[i]];
    if (under != FRAME_NOBODY && FRAME_BEARER(job, under)->kind == FRAME_BEARER_WALL) {
        const frame_part_level *below = &job->levels[job->level_of_wall[FRAME_BEARER(job, under)->part]];
        return below->base_in + below->height_in;
    }
    return level->base_in;
}

static frame_status check(frame_framing_job *job, size_t i, const frame_by_kind *load, double length) {
    const frame_part_post *post = &job->posts[i];
    frame_column_check_in in;
    double ratio;
    frame_column_check_in_init(&in);
    in.size = post->size;
    in.species = post->species;
    in.grade = post->grade;
    in.length_in = length;
    if (post->wet) in.service = FRAME_SERVICE_WET, in.incised = 0;
    const frame_status status = frame_column_worst(load, 0, &in, &ratio);
    if (status) return frame_fail_within("post %.60s, ", post->name);
    frame_beside_code beside = {FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, "", FRAME_KNOWN_READ};
    const size_t deck = frame_floor_deck_of(job, job->level_of_post[i]);
    if (deck != FRAME_NOBODY && !post->to_roof && load->k[FRAME_LOAD_LIVE] > 0)
        frame_code_beside_deck_post(job, deck, post->size, post->species, load->k[FRAME_LOAD_LIVE], &beside);
    return frame_column_list(job, frame_framing_text(job, "%s, %s", post->name, frame_size_name(post->size)), &in,
                             FRAME_BEARER_POST, length, &beside);
}

frame_status frame_framing_pad(frame_framing_job *job, const char *name, double x, double y, double given_in2,
                               const frame_by_kind *load, size_t deck) {
    frame_load_combination which = FRAME_COMBINATION_D;
    frame_framing_footing *footing = frame_answer_add(job->answer, FRAME_FRAMING_FOOTINGS);
    if (!footing) return FRAME_NO_MEMORY;
    footing->name = frame_answer_text(job->answer, name);
    footing->x_in = x;
    footing->y_in = y;
    footing->service_lb = frame_by_kind_most(load, &which, NULL);
    footing->combination = which;
    footing->needed_in2 = fmax(144 * footing->service_lb / job->conditions.soil_psf, 0);
    footing->needed_width_in = sqrt(footing->needed_in2);
    frame_beside_code beside = {FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, "", FRAME_KNOWN_READ};
    if (deck != FRAME_NOBODY && load->k[FRAME_LOAD_LIVE] > 0)
        frame_code_beside_deck_footing(job, deck, load->k[FRAME_LOAD_LIVE], &beside);
    footing->code = beside.words;
    footing->code_width_in = beside.allowed;
    if (beside.known > job->known) job->known = beside.known;
    if (given_in2 == FRAME_NOT_GIVEN) return FRAME_OK;
    const double by_table = beside.allowed == FRAME_NOT_GIVEN ? 0 : beside.allowed * beside.allowed;
    footing->given_in2 = given_in2;
    footing->passes = given_in2 >= fmax(footing->needed_in2, by_table) - 1e-9;
    if (!footing->passes) job->footing_fails = 1;
    return FRAME_OK;
}

/* The weight of the post itself goes along. */
static double weight_of(const frame_part_post *post, double length) {
    double thickness, width;
    frame_lumber lumber;
    if (frame_size_dressed(post->size, 0, &thickness, &width) ||
        frame_lumber_find(post->species, post->grade, post->size, &lumber))
        return 0;
    return frame_wood_weight(thickness * width * length, lumber.specific_gravity);
}

static frame_status hand_down(frame_framing_job *job, const frame_bearer *bearer, const frame_by_kind *load,
                              size_t under, double at) {
    const frame_part_post *post = &job->posts[bearer->part];
    const size_t level = job->level_of_post[bearer->part];
    const size_t floor = frame_floor_over(job, level, post->x_in, post->y_in, 0);
    if (under != FRAME_NOBODY)
        return frame_deliver(job, FRAME_BEARER_POST, post->name, under, at, post->x_in, post->y_in, load);
    if (post->bottom_in == FRAME_NOT_GIVEN && bearer->tier % FRAME_TIERS != FRAME_TIER_POST && floor != FRAME_NOBODY) {
        const frame_on_floor one = {post->x_in, post->y_in, *load};
        return frame_floor_carry(job, floor, post->name, &one, 1);
    }
    const frame_status status = frame_deliver_down(job, FRAME_BEARER_POST, post->name, FRAME_BEARER_FOOTING, post->name,
                                                   post->x_in, post->y_in, load);
    return status ? status
                  : frame_framing_pad(job, post->name, post->x_in, post->y_in, post->footing_in2, load,
                                      post->to_roof ? FRAME_NOBODY : frame_floor_deck_of(job, level));
}

frame_status frame_framing_post(frame_framing_job *job, size_t place) {
    const frame_bearer bearer = *FRAME_BEARER(job, place);
    const frame_part_post *post = &job->posts[bearer.part];
    frame_by_kind load = {{0}};
    double at = 0;
    for (size_t i = 0; i < bearer.points.count; i++)
        frame_by_kind_add(&load, &FRAME_ITEM(frame_at_point, bearer.points, i).load, 1);
    if (!bearer.line)
        return frame_framing_note_add(job, FRAME_NOTE_CAUTION, post->name,
                                      "A post with nothing on it: nothing described reaches it.");
    /* One that was measured to its own foot goes down past whatever lies there. */
    const frame_below below = {-1, bearer.tier, job->levels[job->level_of_post[bearer.part]].base_in,
                               bearer.tier % FRAME_TIERS == FRAME_TIER_POST ? HUGE_VAL : FRAME_STOREY_GAP};
    const size_t under = post->bottom_in != FRAME_NOT_GIVEN
                             ? FRAME_NOBODY
                             : frame_bearer_under(job, post->x_in, post->y_in, &below, &at);
    const double length = bearer.bottom - foot_of(job, bearer.part, under);
    if (!(length > 0))
        return frame_fail(FRAME_IMPOSSIBLE, "bottom_in", "", "a foot below what it carries",
                          "post %.60s: its foot lies above what it carries", post->name);
    job->post_tops[bearer.part] = bearer.bottom;
    job->post_feet[bearer.part] = bearer.bottom - length;
    const double own = weight_of(post, length);
    load.k[FRAME_LOAD_DEAD] += own;
    job->put.k[FRAME_LOAD_DEAD] += own;
    frame_status status = check(job, bearer.part, &load, length);
    return status ? status : hand_down(job, &bearer, &load, under, at);
}
