/* The stretches of a beam between the places where its edges are held, and their slenderness: NDS 3.3.3. */
#include <math.h>

#include "base/error.h"
#include "base/number.h"
#include "strength/member_beam.h"

#include "working/plain_math.h"

/* Rows of effective_lengths beyond those of stability.h. */
enum {
    CANTILEVER_UNIFORM = 3,
    CANTILEVER_POINT = 4,
    POINTS_HELD = 5, /* of two points; three and more follow */
    SEVEN_POINTS = 10,
    ANY_OTHER = FRAME_LENGTH_ANY
};

/* Nearer than this share of the beam two places are one. */
#define SAME 1e-9

static int is_held(const frame_beam_node *node) {
    return node->numbered && node->kind != FRAME_SUPPORT_NONE;
}

static int add_place(frame_array *places, double at, double same) {
    for (size_t i = 0; i < places->count; i++)
        if (fabs(FRAME_ITEM(double, *places, i) - at) <= same) return 1;
    return frame_array_push(places, &at) != NULL;
}

static void in_order(double *places, size_t count) {
    for (size_t i = 1; i < count; i++) {
        const double moved = places[i];
        size_t at = i;
        for (; at > 0 && places[at - 1] > moved; at--) places[at] = places[at - 1];
        places[at] = moved;
    }
}

/* Where an edge is held, with both ends of the beam. */
static frame_status find_places(const frame_checked *c, frame_member_edge edge, frame_array *places) {
    const frame_member_check_in *in = c->in;
    const double length = frame_checked_length(in), same = SAME * length;
    const int upper = edge == FRAME_MEMBER_UPPER;
    const double *braces = upper ? in->upper_braces_in : in->lower_braces_in;
    const size_t count = upper ? in->upper_brace_count : in->lower_brace_count;
    int kept = add_place(places, 0, same) && add_place(places, length, same);
    for (size_t i = 0; i < c->beam->node_count; i++)
        if (is_held(&c->beam->nodes[i])) kept &= add_place(places, c->beam->nodes[i].at, same);
    for (size_t i = 0; i < count; i++) kept &= add_place(places, braces[i], same);
    if (!kept) return FRAME_NO_MEMORY;
    in_order(places->items, places->count);
    return FRAME_OK;
}

/* Whether an end of the beam hangs free, unbraced. */
static int hangs_free(const frame_checked *c, frame_member_edge edge, double at) {
    const frame_member_check_in *in = c->in;
    const int upper = edge == FRAME_MEMBER_UPPER;
    const double *braces = upper ? in->upper_braces_in : in->lower_braces_in;
    const size_t count = upper ? in->upper_brace_count : in->lower_brace_count;
    const double length = frame_checked_length(in), same = SAME * length;
    const frame_beam_node *node = at <= same ? &c->beam->nodes[0] : &c->beam->nodes[c->beam->node_count - 1];
    if (at > same && at < length - same) return 0;
    for (size_t i = 0; i < count; i++)
        if (fabs(braces[i] - at) <= same) return 0;
    return !is_held(node);
}

static int is_simple(const frame_checked *c) {
    const frame_beam *b = c->beam;
    return b->span_count == 1 && b->nodes[0].kind == FRAME_SUPPORT_PINNED && b->nodes[1].kind == FRAME_SUPPORT_PINNED;
}

static int is_spread_even(const frame_checked *c) {
    return c->in->load_count == 0;
}

/* How many equal point loads stand evenly over one span and are all the load there is; 0 where it is not so. */
static size_t even_points(const frame_checked *c) {
    const frame_member_check_in *in = c->in;
    double first = 0, sum[32] = {0};
    const double length = frame_checked_length(in), same = SAME * length;
    size_t points = 0;
    if (c->dead_plf || in->live_plf || in->roof_live_plf || in->snow_plf || in->wind_plf || !in->load_count) return 0;
    for (size_t i = 0; i < in->load_count; i++) { /* the first from the left tells how far apart they stand */
        frame_beam_load load;
        frame_beam_load_item(in->loads, i, &load);
        if (!frame_given(load.force_lb) || !(load.at_in > same && load.at_in < length - same)) return 0;
        if (first == 0 || load.at_in < first) first = load.at_in;
    }
    points = (size_t)(length / first + 0.5) - 1;
    if (points < 1 || points > 31 || fabs(first * (double)(points + 1) - length) > same * 32) return 0;
    for (size_t i = 0; i < in->load_count; i++) {
        frame_beam_load load;
        frame_beam_load_item(in->loads, i, &load);
        const double place = load.at_in / first;
        const size_t k = (size_t)(place + 0.5);
        if (fabs(place - (double)k) > 1e-6 || k < 1 || k > points) return 0;
        sum[k] += load.force_lb;
    }
    for (size_t k = 1; k <= points; k++)
        if (fabs(sum[k] - sum[1]) > 1e-9 * fabs(sum[1])) return 0;
    return points;
}

static int point_at_free_end(const frame_checked *c, double from, double to) {
    const frame_member_check_in *in = c->in;
    const double length = frame_checked_length(in), end = from <= SAME * length ? 0 : length;
    if (c->dead_plf || in->live_plf || in->roof_live_plf || in->snow_plf || in->wind_plf) return 0;
    for (size_t i = 0; i < in->load_count; i++) {
        frame_beam_load load;
        frame_beam_load_item(in->loads, i, &load);
        if (load.span != FRAME_NOT_GIVEN_INT || !frame_given(load.force_lb)) return 0;
        if (load.at_in > from && load.at_in < to && fabs(load.at_in - end) > SAME * length) return 0;
    }
    return 1;
}

/* The row of the table of effective lengths; whatever fits none is "any other". stretches: how many the edge has. */
static int row_of(const frame_checked *c, frame_member_edge edge, double from, double to, size_t stretches) {
    if (hangs_free(c, edge, from) || hangs_free(c, edge, to)) {
        if (is_spread_even(c)) return CANTILEVER_UNIFORM;
        return point_at_free_end(c, from, to) ? CANTILEVER_POINT : ANY_OTHER;
    }
    if (!is_simple(c)) return ANY_OTHER;
    if (is_spread_even(c)) return FRAME_LENGTH_UNIFORM;
    const size_t points = even_points(c);
    if (points == 1 && stretches == 1) return FRAME_LENGTH_POINT_FREE;
    const double share = frame_checked_length(c->in) / (double)(points + 1);
    if (!points || stretches != points + 1 || fabs(to - from - share) > 1e-6 * share) return ANY_OTHER;
    if (points == 1) return FRAME_LENGTH_POINT_HELD;
    return points >= 7 ? SEVEN_POINTS : (int)points + POINTS_HELD - 2;
}

static void find_slenderness(frame_checked *c, frame_stretch *s) {
    const frame_compression_edge edge = s->edge == FRAME_MEMBER_UPPER ? c->in->upper_edge : c->in->lower_edge;
    const double n = c->m.plies, b = c->m.breadth, d = c->m.depth;
    s->slenderness = s->effective = FRAME_NOT_GIVEN;
    s->buckling = 0;
    if (edge == FRAME_EDGE_HELD || d <= b || (!c->m.flat && d <= n * b)) return;
    s->slenderness = frame_beam_slenderness(s->to - s->from, n * b, d, s->row, NULL);
    s->effective = s->slenderness * s->slenderness * pow(n * b, 2) / d;
    s->buckling = frame_beam_buckling(s->slenderness, c->E_min_prime, NULL);
}

/* The length between places of no moment is at most that of the longest span where the beam sags, and at most that of
 * the spans on both sides where it hogs. */
static double longest_near(const frame_checked *c, double from, double to, frame_member_edge edge) {
    double sum = 0, most = 0;
    for (size_t i = 0; i < c->beam->span_count; i++) {
        const frame_beam_span *span = &c->beam->spans[i];
        if (span->at > to || span->at + span->length < from) continue;
        sum += span->length;
        if (span->at < to && span->at + span->length > from) most = fmax(most, span->length);
    }
    return edge == FRAME_MEMBER_UPPER ? most : sum;
}

static frame_status add_edge(frame_checked *c, frame_member_edge edge, frame_array *all) {
    frame_array places = {.item_size = sizeof(double)};
    frame_status status = find_places(c, edge, &places);
    for (size_t i = 0; i + 1 < places.count && !status; i++) {
        frame_stretch s = {.edge = edge};
        s.from = FRAME_ITEM(double, places, i);
        s.to = FRAME_ITEM(double, places, i + 1);
        s.row = row_of(c, edge, s.from, s.to, places.count - 1);
        s.volume_length = longest_near(c, s.from, s.to, edge);
        find_slenderness(c, &s);
        if (!frame_array_push(all, &s)) status = FRAME_NO_MEMORY;
    }
    frame_array_give(&places);
    return status;
}

frame_status frame_checked_stretches(frame_checked *c) {
    frame_array all = {.item_size = sizeof(frame_stretch)};
    frame_status status = add_edge(c, FRAME_MEMBER_UPPER, &all);
    c->upper_count = all.count;
    if (!status) status = add_edge(c, FRAME_MEMBER_LOWER, &all);
    if (!status) {
        c->stretches = frame_arena_take(&c->answer->arena, all.count * sizeof *c->stretches);
        if (!c->stretches) status = FRAME_NO_MEMORY;
    }
    for (size_t i = 0; i < all.count && !status; i++) c->stretches[i] = FRAME_ITEM(frame_stretch, all, i);
    c->stretch_count = all.count;
    frame_array_give(&all);
    return status;
}

frame_stretch *frame_checked_stretch_at(const frame_checked *c, frame_member_edge edge, double x) {
    const size_t from = edge == FRAME_MEMBER_UPPER ? 0 : c->upper_count,
                 to = edge == FRAME_MEMBER_UPPER ? c->upper_count : c->stretch_count;
    for (size_t i = from; i + 1 < to; i++)
        if (x <= c->stretches[i].to) return &c->stretches[i];
    return &c->stretches[to - 1];
}
