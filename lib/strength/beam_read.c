/* Reads a beam: its nodes and spans, and what holds them. The loads are placed by beam_place.c. */
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "strength/beam_place.h"
#include "strength/refusals.h"
#include "strength_facts.h"

static int is_given(double value) {
    return value != FRAME_NOT_GIVEN;
}

static frame_status count_refused(const char *field, size_t count, size_t wanted, const char *what) {
    char value[24], valid[64];
    snprintf(value, sizeof value, "%zu", count);
    snprintf(valid, sizeof valid, "%zu, %s", wanted, what);
    return frame_fail(FRAME_CONFLICT, field, value, valid, "%s: %s items; valid is %s", field, value, valid);
}

static frame_status check_counts(const frame_beam_solve_in *in) {
    if (in->support_count && in->support_count != in->span_count + 1)
        return count_refused("supports", in->support_count, in->span_count + 1, "one more than spans");
    if (in->span_inertia_count && in->span_inertia_count != in->span_count)
        return count_refused("span_inertias_in4", in->span_inertia_count, in->span_count, "one for each span");
    return FRAME_OK;
}

/* Deflections mean something with both E and I; without them the moments of a beam on level supports are the same for
 * any stiffness. */
static frame_status check_elastic(const frame_beam_solve_in *in, frame_beam *beam) {
    beam->elastic = is_given(in->e_psi) && (is_given(in->inertia_in4) || in->span_inertia_count);
    if (!beam->elastic && is_given(in->shear_stiffness_lb))
        return frame_lacks(is_given(in->e_psi) ? "inertia_in4" : "e_psi", "E and I, with shear_stiffness_lb");
    beam->shear_flexibility = is_given(in->shear_stiffness_lb) ? 1 / in->shear_stiffness_lb : 0;
    return FRAME_OK;
}

static frame_status support_refused(size_t i, frame_status status, const char *field, const char *given,
                                    const char *valid) {
    char path[64];
    snprintf(path, sizeof path, "supports[%zu].%s", i, field);
    return frame_fail(status, path, given, valid, "%s: %s; valid is %s", path, given, valid);
}

static frame_status check_support(const frame_beam *beam, size_t i, const frame_beam_support *s, size_t last) {
    const int springs = is_given(s->spring_lb_per_in), turns = is_given(s->turning_spring_lb_in);
    const int within = i > 0 && i < last;
    if (s->kind == FRAME_SUPPORT_SPRING && !springs)
        return support_refused(i, FRAME_REQUIRED, "spring_lb_per_in", "not given", "the stiffness of the spring");
    if (s->kind != FRAME_SUPPORT_SPRING && springs)
        return support_refused(i, FRAME_CONFLICT, "spring_lb_per_in", "given for what is no spring", "kind \"spring\"");
    if (s->kind == FRAME_SUPPORT_FIXED && turns)
        return support_refused(i, FRAME_CONFLICT, "turning_spring_lb_in", "given for a fixed support",
                               "another kind, or no spring");
    if (s->kind == FRAME_SUPPORT_NONE && s->offset_in != 0)
        return support_refused(i, FRAME_CONFLICT, "offset_in", "given where nothing holds the beam", "0");
    if (s->hinge && within && (s->kind == FRAME_SUPPORT_FIXED || turns))
        return support_refused(i, FRAME_CONFLICT, "hinge", "yes where the support resists turning",
                               "no, or a pinned support");
    if (!beam->elastic && (springs || turns || s->offset_in != 0))
        return support_refused(i, FRAME_REQUIRED, "e_psi", "not given",
                               "e_psi and inertia_in4, with springs or offsets");
    return FRAME_OK;
}

static void hold(frame_beam_node *node, const frame_beam_support *s, int within) {
    node->kind = s->kind;
    node->held = s->kind == FRAME_SUPPORT_PINNED || s->kind == FRAME_SUPPORT_FIXED;
    node->clamped = s->kind == FRAME_SUPPORT_FIXED;
    node->hinge = s->hinge && within; /* at an end it would change nothing */
    node->spring = is_given(s->spring_lb_per_in) ? s->spring_lb_per_in : 0;
    node->turning = is_given(s->turning_spring_lb_in) ? s->turning_spring_lb_in : 0;
    node->offset = -s->offset_in;
}

static frame_status read_supports(const frame_beam_solve_in *in, frame_beam *beam) {
    frame_beam_support pinned = {
        .kind = FRAME_SUPPORT_PINNED, .spring_lb_per_in = FRAME_NOT_GIVEN, .turning_spring_lb_in = FRAME_NOT_GIVEN};
    for (size_t i = 0; i <= in->span_count; i++) {
        frame_beam_support support = pinned;
        if (in->support_count) frame_beam_support_item(in->supports, i, &support);
        frame_status status = check_support(beam, i, &support, in->span_count);
        if (status) return status;
        const size_t at = i + beam->left;
        hold(&beam->nodes[at], &support, at > 0 && at + 1 < beam->node_count);
        beam->nodes[at].numbered = 1;
    }
    return FRAME_OK;
}

static double inertia_of(const frame_beam_solve_in *in, size_t span) {
    if (in->span_inertia_count) return in->span_inertias_in4[span];
    return is_given(in->inertia_in4) ? in->inertia_in4 : 1;
}

static void add_span(frame_beam *beam, size_t i, double length, double stiffness) {
    frame_beam_span *span = &beam->spans[i];
    span->at = beam->nodes[i].at;
    span->length = length;
    span->stiffness = stiffness;
    span->shear_ratio = 12 * stiffness * beam->shear_flexibility / (length * length);
    beam->nodes[i + 1].at = span->at + length;
}

static void read_spans(const frame_beam_solve_in *in, frame_beam *beam) {
    const double e = beam->elastic ? in->e_psi : 1;
    size_t at = 0;
    if (beam->left) add_span(beam, at++, in->left_overhang_in, e * inertia_of(in, 0));
    for (size_t i = 0; i < in->span_count; i++) add_span(beam, at++, in->spans_in[i], e * inertia_of(in, i));
    if (at < beam->span_count) add_span(beam, at, in->right_overhang_in, e * inertia_of(in, in->span_count - 1));
}

static void *take(frame_beam *beam, size_t count, size_t size) {
    if (count > SIZE_MAX / 2 / size) return frame_take(SIZE_MAX); /* which fails */
    void *block = frame_arena_take(&beam->arena, count * size);
    if (block) memset(block, 0, count * size);
    return block;
}

frame_status frame_beam_read(const frame_beam_solve_in *in, frame_beam *beam) {
    frame_status status = check_counts(in);
    if (!status) status = check_elastic(in, beam);
    if (status) return status;
    beam->left = in->left_overhang_in > 0;
    beam->span_count = in->span_count + beam->left + (in->right_overhang_in > 0);
    beam->node_count = beam->span_count + 1;
    beam->nodes = take(beam, beam->node_count, sizeof *beam->nodes);
    beam->spans = take(beam, beam->span_count, sizeof *beam->spans);
    if (!beam->nodes || !beam->spans) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < beam->node_count; i++) beam->nodes[i].kind = FRAME_SUPPORT_NONE;
    read_spans(in, beam);
    if ((status = read_supports(in, beam))) return status;
    beam->creep = in->creep_factor;
    beam->pattern = in->pattern;
    beam->rules = (frame_load_rules){in->method, in->load_edition, in->live_duration};
    beam->gives_drops = beam->elastic && in->method == FRAME_METHOD_ASD;
    return frame_beam_place_loads(in, beam);
}

void frame_beam_end(void *object) {
    frame_beam *beam = object;
    frame_array_give(&beam->groups);
    frame_arena_give(&beam->arena);
    frame_give(beam);
}
