/* What a deck stands on: beams, their posts evenly spaced, and a footing under each with the area it carries. */
#include <math.h>

#include "base/error.h"
#include "layout/deck.h"
#include "layout_facts.h"

typedef struct line {
    frame_deck_beam beam;
    frame_layout_section ply, post;
    double from, to, posts[400];
    int count;
} line;

static frame_status place_posts(const frame_deck_plan *plan, line *l) {
    l->from = l->beam.inset_in;
    l->to = plan->in->width_in - l->beam.inset_in;
    const double wide = l->post.thickness, between = l->to - l->from - wide;
    if (between <= 0)
        return frame_fail_number(FRAME_IMPOSSIBLE, "inset_in", l->beam.inset_in, "less: the beam needs two posts");
    const double spaces = fmax(ceil(between / l->beam.post_spacing_in - 1e-9), 1);
    if (spaces > 399)
        return frame_fail_number(FRAME_TOO_LARGE, "post_spacing_in", l->beam.post_spacing_in, "at most 400 posts");
    l->count = (int)spaces + 1;
    for (int i = 0; i < l->count; i++) l->posts[i] = l->from + wide / 2 + i * between / spaces;
    return FRAME_OK;
}

/* How much of the joists a beam carries: half the way to the supports beside it, and all of a cantilever. */
static double strip(const frame_platform *p, size_t beam) {
    const double at = FRAME_PLATFORM_BEAM(p, beam)->at;
    const double before = beam ? FRAME_PLATFORM_BEAM(p, beam - 1)->at : 0;
    const double after = beam + 1 < p->beams.count ? FRAME_PLATFORM_BEAM(p, beam + 1)->at : p->span;
    const double near = beam == 0 && p->ends[0] == FRAME_JOIST_END_FREE ? at : (at - before) / 2;
    return near + (beam + 1 < p->beams.count ? (after - at) / 2 : after - at);
}

static frame_status add_posts(frame_deck_plan *plan, const line *l, size_t beam) {
    frame_platform *p = &plan->platform;
    const frame_deck_in *in = plan->in;
    const double low = plan->top + in->board_thickness_in - in->height_in + in->base_in;
    const double high = -l->ply.depth - in->cap_in, carried = strip(p, beam);
    for (int i = 0; i < l->count; i++) {
        frame_deck_footing *footing = frame_answer_add(plan->answer, FRAME_DECK_FOOTINGS);
        if (!footing) return FRAME_NO_MEMORY;
        const double before = i ? (l->posts[i] - l->posts[i - 1]) / 2 : l->posts[i];
        const double after = i + 1 < l->count ? (l->posts[i + 1] - l->posts[i]) / 2 : in->width_in - l->posts[i];
        footing->x_in = l->beam.at_in;
        footing->y_in = l->posts[i];
        footing->area_in2 = carried * (before + after);
        footing->beam = (int32_t)beam + 1;
        footing->post = i + 1;
        plan->posts++;
        if (in->height_in == FRAME_NOT_GIVEN) continue;
        if (high - low <= 0)
            return frame_fail_number(FRAME_IMPOSSIBLE, "height_in", in->height_in,
                                     "more than boards, joists, beams, caps and bases: no post is left");
        frame_platform_add(p, FRAME_STAGE_SUPPORTS, FRAME_PIECE_POST, plan->posts, &l->post,
                           (vec3){l->beam.at_in, l->posts[i], low}, (vec3){l->beam.at_in, l->posts[i], high},
                           (vec3){1, 0, 0});
        if (plan->post_length == FRAME_NOT_GIVEN) plan->post_length = high - low;
    }
    return FRAME_OK;
}

static frame_status add_line(frame_deck_plan *plan, size_t index, double *half) {
    static const frame_layout_section_fields fields = {"size", "size", "size"},
                                             posts = {"post_size", "post_size", "post_size"};
    line l;
    frame_platform *p = &plan->platform;
    frame_deck_beam_item(plan->in->beams, index, &l.beam);
    l.ply = (frame_layout_section){FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, l.beam.size, NULL, 0};
    l.post = (frame_layout_section){FRAME_NOT_GIVEN, FRAME_NOT_GIVEN,
                                    plan->in->post_size == FRAME_NOT_GIVEN_INT ? FRAME_SIZE(6, 6) : plan->in->post_size,
                                    NULL, 0};
    frame_status status = frame_layout_take_section(plan->answer, &fields, &l.ply);
    if (!status) status = frame_layout_take_section(plan->answer, &posts, &l.post);
    if (!status) status = place_posts(plan, &l);
    if (!status) status = add_posts(plan, &l, index);
    if (status) return status;
    *half = fmax(l.beam.plies * l.ply.thickness, l.post.depth) / 2;
    const size_t before = p->set->pieces.count;
    status = frame_platform_add_beam(p, &l.ply, l.beam.plies, l.beam.at_in, l.from, l.to, l.posts, (size_t)l.count);
    if (!status && p->set->pieces.count - before > (size_t)l.beam.plies)
        plan->cautions |= FRAME_BIT(FRAME_DECK_CAUTION_SPLICE);
    return status;
}

frame_status frame_deck_add_supports(frame_deck_plan *plan) {
    double half[50] = {0}; /* the most beams there may be */
    for (size_t i = 0; i < plan->in->beam_count; i++)
        if (add_line(plan, i, &half[i])) return frame_fail_within("beams[%zu].", i);
    return frame_platform_check_beams(&plan->platform, half);
}
