/* The instantaneous centre of a group of fasteners. Among all small movements of the plate on which the load does work
 * 1, the group follows the one whose inner work is least; the forces that go with it hold the load in balance. A convex
 * problem in two unknowns: Newton's method with a step that is halved until the imbalance falls. */
#include <math.h>

#include "joint/eccentric.h"

enum { ROUNDS = 80, HALVINGS = 30 };

static const double small_slip = 1e-7, balanced = 1e-7;

/* Movements are (a, b, turn times size): three of one unit. Along c the load does work; z moves in the plane square to
 * it. */
typedef struct plane {
    double c[3], one[3], two[3];
    double work; /* the load's work on c */
    double size;
} plane;

typedef struct state {
    double q[3], g[2], h[3]; /* movement, its imbalance in the plane, and that one's derivatives (11, 12, 22) */
    double along, scale;     /* the group's force along c; inches of a unit of slip */
} state;

static double dot(const double *a, const double *b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/* Two directions square to c and to each other. */
static void plane_of(const frame_eccentric *group, plane *p) {
    p->size = sqrt(group->polar / group->weights);
    if (!(p->size > 0)) p->size = 1;
    const double load[3] = {group->force_x, group->force_y, group->moment / p->size};
    p->work = sqrt(dot(load, load));
    for (int i = 0; i < 3; i++) p->c[i] = load[i] / p->work;
    const int least = fabs(p->c[0]) < fabs(p->c[1]) ? (fabs(p->c[0]) < fabs(p->c[2]) ? 0 : 2)
                                                    : (fabs(p->c[1]) < fabs(p->c[2]) ? 1 : 2);
    double length = 0;
    for (int i = 0; i < 3; i++) p->one[i] = (i == least) - p->c[least] * p->c[i];
    length = sqrt(dot(p->one, p->one));
    for (int i = 0; i < 3; i++) p->one[i] /= length;
    p->two[0] = p->c[1] * p->one[2] - p->c[2] * p->one[1];
    p->two[1] = p->c[2] * p->one[0] - p->c[0] * p->one[2];
    p->two[2] = p->c[0] * p->one[1] - p->c[1] * p->one[0];
}

/* Force over slip, and what its slope adds along the slip: of value 1. */
static void law(const frame_slip *slip, double r, double scale, double *over, double *slope) {
    if (!slip->curved) {
        *over = 1 / r;
        *slope = 0;
        return;
    }
    const double steep = slip->rate * scale, e = exp(-steep * r), force = exp(slip->power * log(1 - e));
    *over = force / r;
    *slope = slip->power * force / (1 - e) * e * steep;
}

static double farthest(const frame_eccentric *group, const double *q, double size) {
    const double turn = q[2] / size;
    double most = 0;
    for (size_t i = 0; i < group->count; i++) {
        const double u = q[0] - turn * group->y[i], v = q[1] + turn * group->x[i];
        most = fmax(most, u * u + v * v);
    }
    return sqrt(most);
}

/* The imbalance at a movement and its derivatives. */
static void look(const frame_eccentric *group, const frame_slip *slip, const plane *p, state *s, double *overs) {
    double f[3] = {0, 0, 0}, h00 = 0, h01 = 0, h11 = 0, h02 = 0, h12 = 0, h22 = 0;
    const double per_size = 1 / p->size;
    s->scale = slip->curved ? slip->most / farthest(group, s->q, p->size) : 1;
    for (size_t i = 0; i < group->count; i++) {
        const double x = group->x[i] * per_size, y = group->y[i] * per_size, weight = group->weight[i];
        const double u = s->q[0] - s->q[2] * y, v = s->q[1] + s->q[2] * x;
        const double r = sqrt(u * u + v * v + small_slip * small_slip);
        double over, slope;
        law(slip, r, s->scale, &over, &slope);
        overs[i] = over;
        const double k = weight * over, inverse = 1 / r, n = weight * (slope - over) * inverse * inverse;
        const double kuu = k + n * u * u, kuv = n * u * v, kvv = k + n * v * v;
        f[0] += k * u, f[1] += k * v, f[2] += k * (v * x - u * y);
        h00 += kuu, h01 += kuv, h11 += kvv;
        h02 += kuv * x - kuu * y, h12 += kvv * x - kuv * y;
        h22 += kvv * x * x - 2 * kuv * x * y + kuu * y * y;
    }
    const double h[3][3] = {{h00, h01, h02}, {h01, h11, h12}, {h02, h12, h22}};
    double one[3], two[3];
    for (int i = 0; i < 3; i++) one[i] = dot(h[i], p->one), two[i] = dot(h[i], p->two);
    s->along = dot(f, p->c);
    s->g[0] = dot(f, p->one), s->g[1] = dot(f, p->two);
    s->h[0] = dot(p->one, one), s->h[1] = dot(p->one, two), s->h[2] = dot(p->two, two);
}

/* The elastic movement, which is the place to begin. */
static void begin(const frame_eccentric *group, const plane *p, state *s) {
    const double turn = group->polar > 0 ? group->moment / group->polar : 0;
    s->q[0] = group->force_x / group->weights;
    s->q[1] = group->force_y / group->weights;
    s->q[2] = turn * p->size;
    const double work = dot(s->q, p->c);
    for (int i = 0; i < 3; i++) s->q[i] /= work;
}

static double imbalance(const state *s) {
    return s->g[0] * s->g[0] + s->g[1] * s->g[1];
}

/* One step; 0 when none makes it better. */
static int step(const frame_eccentric *group, const frame_slip *slip, const plane *p, state *s, double *overs) {
    const double add = 1e-12 * (s->h[0] + s->h[2]), h11 = s->h[0] + add, h22 = s->h[2] + add;
    const double det = h11 * h22 - s->h[1] * s->h[1];
    if (!(det > 0)) return 0;
    const double d1 = -(h22 * s->g[0] - s->h[1] * s->g[1]) / det, d2 = -(h11 * s->g[1] - s->h[1] * s->g[0]) / det;
    double part = 1;
    for (int i = 0; i < HALVINGS; i++, part /= 2) {
        state next = *s;
        for (int k = 0; k < 3; k++) next.q[k] += part * (d1 * p->one[k] + d2 * p->two[k]);
        look(group, slip, p, &next, overs);
        if (imbalance(&next) >= imbalance(s) * (1 - 1e-4 * part)) continue;
        *s = next;
        return 1;
    }
    return 0;
}

void frame_instant_find(const frame_eccentric *group, const frame_slip *slip, frame_instant *found) {
    plane p;
    state s;
    plane_of(group, &p);
    begin(group, &p, &s);
    look(group, slip, &p, &s, found->over);
    found->rounds = 0;
    while (found->rounds < ROUNDS && imbalance(&s) > balanced * balanced * s.along * s.along) {
        if (!step(group, slip, &p, &s, found->over)) {
            look(group, slip, &p, &s, found->over); /* the steps that were tried left theirs there */
            break;
        }
        found->rounds++;
    }
    found->a = s.q[0], found->b = s.q[1], found->turn = s.q[2] / p.size;
    found->factor = s.along / p.work;
}

void frame_instant_share(const frame_eccentric *group, const frame_instant *found, size_t i, double *x, double *y) {
    const double force = group->weight[i] * found->over[i];
    *x = force * (found->a - found->turn * group->y[i]);
    *y = force * (found->b + found->turn * group->x[i]);
}
