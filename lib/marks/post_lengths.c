/* Posts under a beam, from a string stretched where its underside comes at the ends. */
#include <math.h>

#include "base/error.h"
#include "marks_facts.h"
#include "working/calculation.h"

/* A string hangs in a parabola, near enough. */
static double sag_at(const frame_post_lengths_in *in, double at, double from, double to) {
    const double span = to - from;
    return 4 * in->sag_in * (at - from) * (to - at) / (span * span);
}

static frame_status add_post(const frame_post_lengths_in *in, size_t index, double from, double to,
                             frame_answer *answer, frame_post_lengths_out *out) {
    frame_post_station post;
    frame_post_station_item(in->posts, index, &post);
    frame_post_lengths_post *item = frame_answer_add(answer, 0);
    if (!item) return FRAME_NO_MEMORY;
    item->at_in = post.at_in;
    item->sag_in = sag_at(in, post.at_in, from, to);
    item->length_in = post.drop_in + item->sag_in + (in->straighten ? 0 : post.hump_in) - in->cap_in - in->base_in;
    item->pull_in = in->straighten ? post.hump_in : 0;
    item->name = frame_answer_text(answer, post.name ? post.name : "");
    out->longest_in = index ? fmax(out->longest_in, item->length_in) : item->length_in;
    out->shortest_in = index ? fmin(out->shortest_in, item->length_in) : item->length_in;
    out->most_hump_in = index ? fmax(out->most_hump_in, fabs(post.hump_in)) : fabs(post.hump_in);
    if (item->length_in > 0) return FRAME_OK;
    frame_fail_number(FRAME_IMPOSSIBLE, "drop_in", post.drop_in,
                      "more than cap and base: the post would have no length");
    return frame_fail_within("posts[%zu].", index);
}

static frame_status check_order(const frame_post_lengths_in *in, double *from, double *to) {
    frame_post_station before, here;
    frame_post_station_item(in->posts, 0, &before);
    *from = before.at_in;
    for (size_t i = 1; i < in->post_count; i++, before = here) {
        frame_post_station_item(in->posts, i, &here);
        *to = here.at_in;
        if (here.at_in > before.at_in) continue;
        frame_fail_number(FRAME_IMPOSSIBLE, "at_in", here.at_in,
                          "farther along than the one before: posts go in order");
        return frame_fail_within("posts[%zu].", i);
    }
    return FRAME_OK;
}

static frame_status solve(const frame_post_lengths_in *in, frame_answer *answer, frame_post_lengths_out *out,
                          frame_working *w) {
    double from = 0, to = 0;
    frame_status status = check_order(in, &from, &to);
    for (size_t i = 0; !status && i < in->post_count; i++) status = add_post(in, i, from, to, answer, out);
    if (status) return status;
    FRAME_HEADING(w, "The longest post's like: drop + sag + hump - cap - base");
    FRAME_GIVEN(w, sag, in->sag_in, "in", "sag of the string at its middle");
    FRAME_GIVEN(w, cap, in->cap_in, "in", "between post and beam");
    FRAME_GIVEN(w, base, in->base_in, "in", "under the post");
    FRAME_STEP(w, off, cap + base, "in", "taken off each", "common practice");
    (void)sag, (void)off;
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_LINE_CAUTION_MEASURE);
    if (in->sag_in == 0) out->cautions |= FRAME_BIT(FRAME_LINE_CAUTION_SAG);
    if (out->most_hump_in > 0 && !in->straighten) out->cautions |= FRAME_BIT(FRAME_LINE_CAUTION_HUMP);
    out->not_checked = FRAME_BIT(FRAME_LINE_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_LINE_UNCHECKED_SETTLING);
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(post_lengths, solve);
