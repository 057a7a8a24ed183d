/* Another solver for beams, to check the library's by: every load and support is a node of its own, the whole stiffness
 * matrix is written out and eliminated in long double. It shares no code and no method with the library's
 * (blocks of two, spans that carry their loads between their ends). Loads spread evenly or in trapezoids are put on the
 * nodes by their exact fixed-end forces, found by Gauss quadrature over the influence of a point load. */
#ifndef FRAME_TESTS_STRENGTH_BEAM_REFERENCE_H
#define FRAME_TESTS_STRENGTH_BEAM_REFERENCE_H

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { REFERENCE_NODES = 64, REFERENCE_LOADS = 40 };

typedef long double real;

typedef struct reference_node {
    real x, spring, turning, offset; /* offset: down */
    int held, clamped, hinge;
} reference_node;

/* Spread from a to b (b > a), or a force and a couple at a. */
typedef struct reference_load {
    real a, b, w_a, w_b, force, couple;
} reference_load;

typedef struct reference {
    reference_node nodes[REFERENCE_NODES];
    reference_load loads[REFERENCE_LOADS];
    int node_count, load_count;
    real stiffness[REFERENCE_NODES], shear; /* E I of each element; 1 / (G A') */
    real u[3 * REFERENCE_NODES];            /* drop, turn to the right of the node, turn to its left */
    real least_pivot;                       /* beside what it was before elimination: rounding for a mechanism */
    real reaction[REFERENCE_NODES], couple[REFERENCE_NODES];
} reference;

typedef struct reference_state {
    real shear, moment, drop;
} reference_state;

static inline void reference_split(reference *r, real x) {
    for (int i = 0; i < r->node_count; i++)
        if (fabsl(r->nodes[i].x - x) < 1e-12L * (1 + x)) return;
    int at = r->node_count++;
    for (; at > 0 && r->nodes[at - 1].x > x; at--) {
        r->nodes[at] = r->nodes[at - 1];
        r->stiffness[at] = r->stiffness[at - 1];
    }
    r->nodes[at] = (reference_node){.x = x};
    r->stiffness[at] = r->stiffness[at - 1];
}

/* Load per length on an element's point: no load begins or ends inside an element. */
static inline real reference_w(const reference *r, real x) {
    real w = 0;
    for (int i = 0; i < r->load_count; i++) {
        const reference_load *l = &r->loads[i];
        if (l->b > l->a && x > l->a && x < l->b) w += l->w_a + (l->w_b - l->w_a) * (x - l->a) / (l->b - l->a);
    }
    return w;
}

static inline void reference_element(const reference *r, int e, real k[4][4], real f[4]) {
    const real L = r->nodes[e + 1].x - r->nodes[e].x, EI = r->stiffness[e], g = 12 * EI * r->shear / (L * L);
    const real c = EI / (L * L * L * (1 + g));
    const real full[4][4] = {{12 * c, 6 * c * L, -12 * c, 6 * c * L},
                             {6 * c * L, (4 + g) * c * L * L, -6 * c * L, (2 - g) * c * L * L},
                             {-12 * c, -6 * c * L, 12 * c, -6 * c * L},
                             {6 * c * L, (2 - g) * c * L * L, -6 * c * L, (4 + g) * c * L * L}};
    memcpy(k, full, sizeof full);
    /* Gauss points of the fifth degree and more; the shape functions of the bending and shearing element. */
    static const real points[4] = {-0.861136311594052575224L, -0.339981043584856264803L, 0.339981043584856264803L,
                                   0.861136311594052575224L};
    static const real weights[4] = {0.347854845137453857373L, 0.652145154862546142627L, 0.652145154862546142627L,
                                    0.347854845137453857373L};
    memset(f, 0, 4 * sizeof *f);
    for (int i = 0; i < 4; i++) {
        const real s = (1 + points[i]) / 2, w = reference_w(r, r->nodes[e].x + s * L) * weights[i] * L / 2 / (1 + g);
        f[0] += w * (1 - 3 * s * s + 2 * s * s * s + g * (1 - s));
        f[1] += w * L * (s - 2 * s * s + s * s * s + g / 2 * (s - s * s));
        f[2] += w * (3 * s * s - 2 * s * s * s + g * s);
        f[3] += w * L * (-s * s + s * s * s - g / 2 * (s - s * s));
    }
}

/* Where an end of an element stands among the unknowns: a hinge has a turn of its own on its left. */
static inline void reference_places(const reference *r, int e, int place[4]) {
    place[0] = 3 * e, place[1] = 3 * e + 1, place[2] = 3 * e + 3;
    place[3] = r->nodes[e + 1].hinge ? 3 * e + 5 : 3 * e + 4;
}

static inline void reference_solve(reference *r) {
    const int n = 3 * r->node_count;
    real *K = calloc((size_t)(n * n), sizeof *K), *f = calloc((size_t)n, sizeof *f);
    real *whole = malloc((size_t)(n * n) * sizeof *K), *loads = malloc((size_t)n * sizeof *f);
    for (int e = 0; e + 1 < r->node_count; e++) {
        real k[4][4], load[4];
        int place[4];
        reference_element(r, e, k, load);
        reference_places(r, e, place);
        for (int i = 0; i < 4; i++) {
            f[place[i]] += load[i];
            for (int j = 0; j < 4; j++) K[place[i] * n + place[j]] += k[i][j];
        }
    }
    for (int i = 0; i < r->load_count; i++)
        for (int m = 0; m < r->node_count; m++)
            if (!(r->loads[i].b > r->loads[i].a) && fabsl(r->nodes[m].x - r->loads[i].a) < 1e-12L * (1 + r->nodes[m].x))
                f[3 * m] += r->loads[i].force, f[3 * m + 1] += r->loads[i].couple;
    for (int m = 0; m < r->node_count; m++) {
        K[(3 * m) * n + 3 * m] += r->nodes[m].spring;
        f[3 * m] += r->nodes[m].spring * r->nodes[m].offset;
        K[(3 * m + 1) * n + 3 * m + 1] += r->nodes[m].turning;
    }
    memcpy(whole, K, (size_t)(n * n) * sizeof *K);
    memcpy(loads, f, (size_t)n * sizeof *f);
    for (int m = 0; m < n; m++) {
        const reference_node *node = &r->nodes[m / 3];
        const int fixed = m % 3 == 0 ? node->held : m % 3 == 1 ? node->clamped : !node->hinge;
        if (!fixed) continue;
        const real value = m % 3 == 0 ? node->offset : 0;
        for (int i = 0; i < n; i++) {
            f[i] -= K[i * n + m] * value;
            K[i * n + m] = K[m * n + i] = 0;
        }
        K[m * n + m] = 1;
        f[m] = value;
    }
    /* held rows were changed by later ones: set them again */
    for (int m = 0; m < r->node_count; m++) {
        if (r->nodes[m].held) f[3 * m] = r->nodes[m].offset;
        if (r->nodes[m].clamped) f[3 * m + 1] = 0;
        if (!r->nodes[m].hinge) f[3 * m + 2] = 0;
    }
    r->least_pivot = 1;
    for (int c = 0; c < n; c++) { /* positive definite: no pivoting */
        const real before = c % 3 == 2 && !r->nodes[c / 3].hinge ? 1 : whole[c * n + c];
        if (K[c * n + c] < r->least_pivot * before) r->least_pivot = K[c * n + c] / before;
        for (int i = c + 1; i < n; i++) {
            const real ratio = K[i * n + c] / K[c * n + c];
            if (ratio == 0) continue;
            for (int j = c; j < n; j++) K[i * n + j] -= ratio * K[c * n + j];
            f[i] -= ratio * f[c];
        }
    }
    for (int i = n - 1; i >= 0; i--) {
        real sum = f[i];
        for (int j = i + 1; j < n; j++) sum -= K[i * n + j] * r->u[j];
        r->u[i] = sum / K[i * n + i];
    }
    for (int m = 0; m < r->node_count; m++) {
        real force = -loads[3 * m], couple = -loads[3 * m + 1];
        for (int j = 0; j < n; j++) {
            force += whole[3 * m * n + j] * r->u[j];
            couple += whole[(3 * m + 1) * n + j] * r->u[j];
        }
        r->reaction[m] = -force; /* what holds the node pushes up where the beam would push it down */
        r->couple[m] = couple;
        if (r->nodes[m].spring > 0) r->reaction[m] = r->nodes[m].spring * (r->u[3 * m] - r->nodes[m].offset);
        if (r->nodes[m].turning > 0) r->couple[m] = -r->nodes[m].turning * r->u[3 * m + 1];
    }
    free(K);
    free(f);
    free(whole);
    free(loads);
}

/* The state a little to the right of a node. */
static inline reference_state reference_at_node(const reference *r, int node) {
    real k[4][4], load[4], ends[4];
    int place[4];
    const int e = node + 1 < r->node_count ? node : node - 1, right = e != node;
    reference_element(r, e, k, load);
    reference_places(r, e, place);
    for (int i = 0; i < 4; i++) {
        ends[i] = -load[i];
        for (int j = 0; j < 4; j++) ends[i] += k[i][j] * r->u[place[j]];
    }
    return (reference_state){right ? ends[2] : -ends[0], right ? -ends[3] : ends[1], r->u[3 * node]};
}

#endif
