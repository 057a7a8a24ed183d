/* Random beams, as the library takes them and as the other solver does. */
#ifndef FRAME_TESTS_STRENGTH_BEAM_RANDOM_H
#define FRAME_TESTS_STRENGTH_BEAM_RANDOM_H

#include <check.h>

#include <frame/strength.h>

#include "beam_reference.h"

enum { RANDOM_SPANS = 6, RANDOM_LOADS = 8, RANDOM_SAMPLES = 6 };

typedef struct random_beam {
    frame_beam_solve_in in;
    double spans[RANDOM_SPANS], inertias[RANDOM_SPANS], samples[RANDOM_SAMPLES], length;
    frame_beam_support supports[RANDOM_SPANS + 1];
    frame_beam_load loads[RANDOM_LOADS];
    reference other;
} random_beam;

/* The same numbers on every machine. */
static inline double chance(uint64_t *seed) {
    *seed ^= *seed << 13, *seed ^= *seed >> 7, *seed ^= *seed << 17;
    return (double)(*seed >> 11) / 9007199254740992.0;
}
static inline double between(uint64_t *seed, double low, double high) {
    return low + (high - low) * chance(seed);
}
static inline int one_in(uint64_t *seed, int count) {
    return chance(seed) * count < 1;
}

/* In half inches: the other solver's matrix must not hold needles. */
static inline double place(uint64_t *seed, double low, double high) {
    return floor(2 * between(seed, low, high)) / 2;
}

static inline void random_supports(random_beam *b, uint64_t *seed) {
    const size_t count = b->in.span_count + 1;
    for (size_t i = 0; i < count; i++) {
        frame_beam_support *s = &b->supports[i];
        frame_beam_support_init(s);
        s->kind = FRAME_SUPPORT_PINNED;
        if (one_in(seed, 6)) s->kind = FRAME_SUPPORT_NONE;
        if (one_in(seed, 7)) s->kind = FRAME_SUPPORT_FIXED;
        if (one_in(seed, 6)) s->kind = FRAME_SUPPORT_SPRING, s->spring_lb_per_in = pow(10, between(seed, 2, 6));
        if (one_in(seed, 8) && s->kind != FRAME_SUPPORT_FIXED) s->turning_spring_lb_in = pow(10, between(seed, 4, 8));
        if (one_in(seed, 5) && s->kind != FRAME_SUPPORT_NONE) s->offset_in = between(seed, -0.5, 0.5);
        if (one_in(seed, 8) && s->kind != FRAME_SUPPORT_FIXED && s->turning_spring_lb_in == FRAME_NOT_GIVEN)
            s->hinge = 1;
    }
    b->in.supports = b->supports;
    b->in.support_count = count;
}

static inline void random_load(random_beam *b, frame_beam_load *l, uint64_t *seed) {
    frame_beam_load_init(l);
    l->kind = FRAME_LOAD_DEAD;
    l->at_in = place(seed, 0, b->length);
    switch ((int)(chance(seed) * 4)) {
        case 0:
            l->force_lb = between(seed, -500, 1500);
            break;
        case 1:
            l->moment_lb_in = between(seed, -20000, 20000);
            break;
        default:
            l->to_in = fmin(l->at_in + 0.5 + place(seed, 0, b->length - l->at_in), b->length);
            l->plf = between(seed, -50, 300);
            if (one_in(seed, 2)) l->to_plf = between(seed, -50, 300);
    }
}

static inline reference_load other_load(const frame_beam_load *l) {
    reference_load o = {.a = l->at_in};
    if (l->force_lb != FRAME_NOT_GIVEN) o.force = l->force_lb;
    if (l->moment_lb_in != FRAME_NOT_GIVEN) o.couple = l->moment_lb_in;
    if (l->plf == FRAME_NOT_GIVEN) return o;
    o.b = l->to_in;
    o.w_a = (real)l->plf / 12;
    o.w_b = (l->to_plf != FRAME_NOT_GIVEN ? (real)l->to_plf : (real)l->plf) / 12;
    return o;
}

/* The other solver's beam: supports first, then every place where something begins or is asked. */
static inline void other_beam(random_beam *b) {
    reference *o = &b->other;
    const frame_beam_solve_in *in = &b->in;
    memset(o, 0, sizeof *o);
    real x = in->left_overhang_in;
    if (x > 0) o->stiffness[0] = (real)in->e_psi * b->inertias[0], o->nodes[o->node_count++] = (reference_node){.x = 0};
    for (size_t i = 0; i <= in->span_count; i++) {
        const frame_beam_support *s = &b->supports[i];
        const int within = (i > 0 || in->left_overhang_in > 0) && (i < in->span_count || in->right_overhang_in > 0);
        const int at = o->node_count++;
        o->nodes[at] =
            (reference_node){.x = x,
                             .held = s->kind == FRAME_SUPPORT_PINNED || s->kind == FRAME_SUPPORT_FIXED,
                             .clamped = s->kind == FRAME_SUPPORT_FIXED,
                             .hinge = s->hinge == 1 && within,
                             .spring = s->spring_lb_per_in != FRAME_NOT_GIVEN ? (real)s->spring_lb_per_in : 0,
                             .turning = s->turning_spring_lb_in != FRAME_NOT_GIVEN ? (real)s->turning_spring_lb_in : 0,
                             .offset = s->offset_in != FRAME_NOT_GIVEN ? -(real)s->offset_in : 0};
        o->stiffness[at] = (real)in->e_psi * b->inertias[i < in->span_count ? i : in->span_count - 1];
        if (i < in->span_count) x += b->spans[i];
    }
    if (in->right_overhang_in > 0) o->nodes[o->node_count++] = (reference_node){.x = x + in->right_overhang_in};
    o->shear = in->shear_stiffness_lb != FRAME_NOT_GIVEN ? 1 / (real)in->shear_stiffness_lb : 0;
    o->loads[o->load_count++] = (reference_load){
        .b = o->nodes[o->node_count - 1].x, .w_a = (real)in->dead_plf / 12, .w_b = (real)in->dead_plf / 12};
    for (size_t i = 0; i < in->load_count; i++) {
        o->loads[o->load_count] = other_load(&b->loads[i]);
        reference_split(o, o->loads[o->load_count].a);
        if (o->loads[o->load_count].b > 0) reference_split(o, o->loads[o->load_count].b);
        o->load_count++;
    }
    for (int i = 0; i < RANDOM_SAMPLES; i++) reference_split(o, b->samples[i]);
}

static inline void random_beam_make(random_beam *b, uint64_t *seed) {
    frame_beam_solve_in_init(&b->in);
    b->in.span_count = 1 + (size_t)(chance(seed) * RANDOM_SPANS);
    b->length = b->in.left_overhang_in = b->in.right_overhang_in = 0;
    for (size_t i = 0; i < b->in.span_count; i++) {
        b->length += b->spans[i] = place(seed, 20, 300);
        b->inertias[i] = between(seed, 20, 400);
    }
    if (one_in(seed, 3)) b->length += b->in.left_overhang_in = place(seed, 5, 80);
    if (one_in(seed, 3)) b->length += b->in.right_overhang_in = place(seed, 5, 80);
    b->in.spans_in = b->spans;
    b->in.span_inertias_in4 = b->inertias;
    b->in.span_inertia_count = b->in.span_count;
    b->in.e_psi = 1.4e6;
    b->in.dead_plf = one_in(seed, 3) ? 0 : between(seed, 10, 200);
    if (one_in(seed, 4)) b->in.shear_stiffness_lb = pow(10, between(seed, 5, 7));
    random_supports(b, seed);
    b->in.load_count = (size_t)(chance(seed) * (RANDOM_LOADS + 1));
    b->in.loads = b->loads;
    for (size_t i = 0; i < b->in.load_count; i++) random_load(b, &b->loads[i], seed);
    for (int i = 0; i < RANDOM_SAMPLES; i++) b->samples[i] = place(seed, 0, b->length) + 0.25;
}

#endif
