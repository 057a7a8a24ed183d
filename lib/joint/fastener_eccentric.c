/* What an eccentric load does to a group of fasteners. */
#include <math.h>
#include <stdio.h>

#include "joint/eccentric.h"
#include "joint_facts.h"
#include "working/calculation.h"

enum { SHARES = 0 };

#define STATICS "statics of a rigid plate on equal springs"

/* What the steps hand on to one another. */
typedef struct job {
    frame_eccentric group;
    frame_slip slip;
    frame_instant instant;
} job;

static frame_status sensible(const frame_fastener_eccentric_in *in) {
    const int curve = in->law == FRAME_SLIP_CURVE;
    const double fields[] = {in->curve_rate_per_in, in->curve_power, in->curve_slip_in};
    static const char *const names[] = {"curve_rate_per_in", "curve_power", "curve_slip_in"};
    for (int i = 0; i < 3 && curve; i++)
        if (fields[i] == FRAME_NOT_GIVEN)
            return frame_fail(FRAME_REQUIRED, names[i], "", "a figure of the test that the curve is from",
                              "%s: not given; law \"curve\" needs it, from a test of the joint", names[i]);
    if (in->force_x_lb != 0 || in->force_y_lb != 0 || in->moment_lb_in != 0) return FRAME_OK;
    return frame_fail(FRAME_REQUIRED, "force_y_lb", "0", "a load: force_x_lb, force_y_lb or moment_lb_in",
                      "force_y_lb: no load is given");
}

/* The fasteners, moved so that their elastic centre is the origin. */
static frame_status read_group(const frame_fastener_eccentric_in *in, frame_eccentric *group) {
    double x = 0, y = 0;
    group->count = in->place_count;
    group->weights = group->polar = 0;
    for (size_t i = 0; i < group->count; i++) {
        frame_fastener_place place;
        frame_fastener_place_item(in->places, i, &place);
        group->x[i] = place.x_in, group->y[i] = place.y_in, group->weight[i] = place.weight;
        group->weights += place.weight, x += place.weight * place.x_in, y += place.weight * place.y_in;
    }
    group->centre_x = x / group->weights, group->centre_y = y / group->weights;
    for (size_t i = 0; i < group->count; i++) {
        group->x[i] -= group->centre_x, group->y[i] -= group->centre_y;
        group->polar += group->weight[i] * (group->x[i] * group->x[i] + group->y[i] * group->y[i]);
    }
    if (group->polar > 1e-12 * group->weights) return FRAME_OK;
    return frame_fail(FRAME_IMPOSSIBLE, "places", "", "fasteners at different places",
                      "places: all fasteners stand at one place");
}

static void load(const frame_fastener_eccentric_in *in, frame_eccentric *group, frame_working *w) {
    FRAME_TABLE(w, x_c, group->centre_x, "in", "elastic centre, x: weighted mean", "geometry");
    FRAME_TABLE(w, y_c, group->centre_y, "in", "elastic centre, y: weighted mean", "geometry");
    FRAME_TABLE(w, n_w, group->weights, "", "sum of weights: the count where all are alike", "geometry");
    FRAME_TABLE(w, I_p, group->polar, "in2", "sum of weights times distances squared", "geometry");
    FRAME_GIVEN(w, P_x, in->force_x_lb, "lb", "load along x");
    FRAME_GIVEN(w, P_y, in->force_y_lb, "lb", "load along y");
    FRAME_GIVEN(w, x_P, in->at_x_in, "in", "where it acts, x");
    FRAME_GIVEN(w, y_P, in->at_y_in, "in", "where it acts, y");
    FRAME_GIVEN(w, M_0, in->moment_lb_in, "lb-in", "a couple beside it");
    FRAME_STEP(w, M, M_0 + (x_P - x_c) * P_y - (y_P - y_c) * P_x, "lb-in", "moment about the elastic centre", STATICS);
    group->force_x = P_x, group->force_y = P_y, group->moment = M;
}

/* What a fastener of the group carries elastically. */
static void share(const frame_eccentric *group, size_t i, double *x, double *y) {
    const double k = group->weight[i], turn = group->moment / group->polar;
    *x = k * (group->force_x / group->weights - turn * group->y[i]);
    *y = k * (group->force_y / group->weights + turn * group->x[i]);
}

static frame_status shares(const frame_fastener_eccentric_in *in, const job *j, frame_answer *answer,
                           frame_fastener_eccentric_out *out) {
    out->ratio = -1;
    for (size_t i = 0; i < j->group.count; i++) {
        frame_fastener_eccentric_share *line = frame_answer_add(answer, SHARES);
        if (!line) return FRAME_NO_MEMORY;
        share(&j->group, i, &line->x_lb, &line->y_lb);
        line->force_lb = sqrt(line->x_lb * line->x_lb + line->y_lb * line->y_lb);
        line->ratio = line->force_lb / (j->group.weight[i] * in->each_lb);
        frame_instant_share(&j->group, &j->instant, i, &line->instant_x_lb, &line->instant_y_lb);
        line->instant_x_lb *= in->each_lb, line->instant_y_lb *= in->each_lb;
        if (line->ratio <= out->ratio) continue;
        out->ratio = line->ratio;
        out->largest_lb = line->force_lb;
        out->worst = (int32_t)i;
    }
    return FRAME_OK;
}

static void record_worst(const frame_fastener_eccentric_in *in, const job *j, const frame_fastener_eccentric_out *out,
                         frame_working *w) {
    if (!w) return;
    const frame_eccentric *group = &j->group;
    const size_t i = (size_t)out->worst;
    const double P_x = group->force_x, P_y = group->force_y, M = group->moment, n_w = group->weights,
                 I_p = group->polar;
    FRAME_TABLE(w, k_i, group->weight[i], "", "weight of the fastener that carries most of its value", "given");
    FRAME_TABLE(w, x_i, group->x[i], "in", "its place from the centre, x", "geometry");
    FRAME_TABLE(w, y_i, group->y[i], "in", "its place from the centre, y", "geometry");
    FRAME_STEP(w, R_x, k_i * (P_x / n_w - M * y_i / I_p), "lb", "what it carries along x", STATICS);
    FRAME_STEP(w, R_y, k_i * (P_y / n_w + M * x_i / I_p), "lb", "what it carries along y", STATICS);
    FRAME_STEP(w, R, hypot(R_x, R_y), "lb", "both together", STATICS);
    FRAME_GIVEN(w, Z_one, in->each_lb, "lb", "adjusted value of one of weight 1");
    FRAME_STEP(w, ratio, R / (k_i * Z_one), "", "over its value", "at most 1");
    FRAME_TABLE(w, ratio_ic, out->instant_ratio, "", "the same by the instantaneous centre",
                "balance of forces, found by iteration");
    (void)ratio;
    (void)ratio_ic;
}

static void remarks(const frame_fastener_eccentric_in *in, const job *j, frame_fastener_eccentric_out *out) {
    const frame_instant *found = &j->instant;
    out->centre_x_in = j->group.centre_x, out->centre_y_in = j->group.centre_y;
    out->polar_in2 = j->group.polar;
    out->moment_lb_in = j->group.moment;
    out->passes = out->ratio <= 1 + 1e-9;
    out->rounds = found->rounds;
    out->instant_ratio = 1 / (found->factor * in->each_lb);
    const double reach = sqrt(found->a * found->a + found->b * found->b) / fmax(fabs(found->turn), 1e-300);
    if (reach < 1e7) {
        out->instant_x_in = j->group.centre_x - found->b / found->turn;
        out->instant_y_in = j->group.centre_y + found->a / found->turn;
    }
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_ADJUSTED) | FRAME_BIT(FRAME_FASTENING_CAUTION_ELASTIC) |
                    FRAME_BIT(FRAME_FASTENING_CAUTION_DUCTILE);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPACING) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_MEMBER) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPLITTING) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_METAL);
}

static frame_status solve(const frame_fastener_eccentric_in *in, frame_answer *answer,
                          frame_fastener_eccentric_out *out, frame_working *w) {
    job j;
    frame_status status = sensible(in);
    if (!status) status = read_group(in, &j.group);
    if (status) return status;
    load(in, &j.group, w);
    j.slip = (frame_slip){in->law == FRAME_SLIP_CURVE, in->curve_rate_per_in, in->curve_power, in->curve_slip_in};
    frame_instant_find(&j.group, &j.slip, &j.instant);
    status = shares(in, &j, answer, out);
    if (status) return status;
    remarks(in, &j, out);
    record_worst(in, &j, out, w);
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(fastener_eccentric, solve);
