/* The sum of a joint's fasteners against a demand. */
#include <stdio.h>

#include "base/number.h"
#include "joint/fastener.h"
#include "joint_facts.h"
#include "working/calculation.h"

enum { MOST_GROUPS = 100 }; /* as the header has it */

/* The groups as read, and which of them add up: the like ones that hold most together. */
typedef struct groups {
    frame_fastener_group items[MOST_GROUPS];
    double nominal_in[MOST_GROUPS];
    size_t count;
    size_t strongest; /* the first of them */
    size_t unlike;    /* the first group that is not like group 0; 0 when all are alike */
    double strongest_lb, largest_in;
    int modes_known;
} groups;

static frame_status read_groups(const frame_fastener_sum_in *in, groups *g) {
    g->count = in->group_count;
    g->largest_in = 0;
    g->modes_known = 1;
    for (size_t i = 0; i < g->count; i++) {
        frame_fastener fastener;
        frame_fastener_group *item = &g->items[i];
        frame_fastener_group_item(in->groups, i, item);
        if (frame_fastener_find(item->kind, item->size, item->diameter_in, &fastener))
            return frame_fail_within("groups[%zu].", i);
        g->nominal_in[i] = fastener.nominal_in;
        g->largest_in = fmax(g->largest_in, fastener.nominal_in);
        g->modes_known &= item->mode != FRAME_NOT_GIVEN_INT;
    }
    return FRAME_OK;
}

/* One kind, one diameter, and no difference in yield mode that is known of. */
static int alike(const groups *g, size_t a, size_t b) {
    const frame_fastener_group *one = &g->items[a], *other = &g->items[b];
    const int modes = one->mode != FRAME_NOT_GIVEN_INT && other->mode != FRAME_NOT_GIVEN_INT;
    return one->kind == other->kind && fabs(g->nominal_in[a] - g->nominal_in[b]) < 1e-6 &&
           (!modes || one->mode == other->mode);
}

/* Groups like this one, none of which differs in mode from another counted before it. */
static int belongs(const groups *g, size_t first, size_t i) {
    for (size_t k = first; k < i; k++)
        if (alike(g, first, k) && !alike(g, k, i)) return 0;
    return alike(g, first, i);
}

static void find_strongest(groups *g) {
    g->unlike = 0;
    g->strongest_lb = 0;
    for (size_t first = 0; first < g->count; first++) {
        double holds = 0;
        for (size_t i = first; i < g->count; i++) {
            if (belongs(g, first, i))
                holds += g->items[i].count * g->items[i].each_lb;
            else if (!first && !g->unlike)
                g->unlike = i;
        }
        if (holds > g->strongest_lb) {
            g->strongest_lb = holds;
            g->strongest = first;
        }
    }
}

static frame_status refuse(const groups *g) {
    char field[48], holds[32];
    snprintf(field, sizeof field, "groups[%zu]", g->unlike);
    frame_number_print(g->strongest_lb, 6, holds, sizeof holds);
    return frame_fail(
        FRAME_REFUSED, field, frame_dowel_word(g->items[g->unlike].kind),
        "fasteners of one kind, diameter and yield mode, or unlike \"strongest alone\"",
        "%s: not like groups[0]; unlike fasteners do not add (NDS 11.1.4). The strongest, groups[%zu], holds "
        "%s lb alone: unlike = \"strongest alone\" counts that",
        field, g->strongest, holds);
}

static frame_status demand(const frame_fastener_sum_in *in, double *demand_lb, frame_working *w) {
    const int total = in->demand_lb != FRAME_NOT_GIVEN, line = in->demand_plf != FRAME_NOT_GIVEN;
    if (total && line)
        return frame_fail(FRAME_CONFLICT, "demand_lb", "", "demand_lb or demand_plf",
                          "demand_lb: demand_plf is given too; give one");
    if (total) {
        FRAME_GIVEN(w, P, in->demand_lb, "lb", "demand");
        *demand_lb = P;
        return FRAME_OK;
    }
    if (!line)
        return frame_fail(FRAME_REQUIRED, "demand_lb", "", "demand_lb, or demand_plf with spacing_in",
                          "demand_lb: neither demand_lb nor demand_plf is given");
    if (in->spacing_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "spacing_in", "", ">0..1200 in",
                          "spacing_in: not given; demand_plf needs it");
    FRAME_GIVEN(w, w_line, in->demand_plf, "plf", "demand along the run");
    FRAME_GIVEN(w, s, in->spacing_in, "in", "centres of the joints");
    FRAME_STEP(w, P, w_line * s / 12, "lb", "demand on one joint", "statics");
    *demand_lb = P;
    return FRAME_OK;
}

/* Adds one group to what those before it hold. */
static double add(double before, const frame_fastener_group *group, frame_working *w) {
    FRAME_TABLE(w, Z_before, before, "lb", "groups before this one", "above");
    FRAME_GIVEN(w, n, group->count, "", frame_dowel_word(group->kind));
    FRAME_GIVEN(w, Z_one, group->each_lb, "lb", "adjusted value of one");
    FRAME_STEP(w, Z_sum, Z_before + n * Z_one, "lb", "together", "NDS 2018 11.2.2");
    return Z_sum;
}

static void add_up(const frame_fastener_sum_in *in, const groups *g, frame_fastener_sum_out *out, frame_working *w) {
    double sum = 0;
    out->count = 0;
    out->least_each_lb = g->items[g->strongest].each_lb;
    for (size_t i = g->strongest; i < g->count; i++) {
        if (!belongs(g, g->strongest, i)) continue;
        sum = add(sum, &g->items[i], w);
        out->count += g->items[i].count;
        out->least_each_lb = fmin(out->least_each_lb, g->items[i].each_lb);
    }
    FRAME_TABLE(w, Z_all, sum, "lb", "all fasteners counted", "above");
    FRAME_GIVEN(w, C_g, in->group_factor, "", "group action factor, NDS 11.3.6");
    FRAME_STEP(w, Z_group, Z_all * C_g, "lb", "capacity of the joint", "NDS 2018 11.2.2");
    out->capacity_lb = Z_group;
}

/* All slip alike: the group that first reaches its value ends it. The statics of springs side by side. */
static frame_status slip_at_first(const groups *g, double *slip_in, frame_working *w) {
    *slip_in = HUGE_VAL;
    for (size_t i = 0; i < g->count; i++) {
        if (g->items[i].stiffness_lb_per_in == FRAME_NOT_GIVEN) {
            char field[48];
            snprintf(field, sizeof field, "groups[%zu].stiffness_lb_per_in", i);
            return frame_fail(FRAME_REQUIRED, field, "", ">0..1e8 lb/in",
                              "%s: not given; unlike \"by stiffness\" needs it", field);
        }
        FRAME_GIVEN(w, Z_one, g->items[i].each_lb, "lb", "adjusted value of one");
        FRAME_GIVEN(w, k_one, g->items[i].stiffness_lb_per_in, "lb/in", "its stiffness");
        FRAME_STEP(w, slip_one, Z_one / k_one, "in", "slip at which it reaches its value", "statics");
        *slip_in = fmin(*slip_in, slip_one);
    }
    return FRAME_OK;
}

static frame_status add_by_stiffness(const frame_fastener_sum_in *in, const groups *g, frame_fastener_sum_out *out,
                                     frame_working *w) {
    double sum = 0, least;
    const frame_status status = slip_at_first(g, &least, w);
    if (status) return status;
    FRAME_TABLE(w, slip, least, "in", "slip of all, the least of these", "above");
    out->count = 0;
    out->least_each_lb = HUGE_VAL;
    for (size_t i = 0; i < g->count; i++) {
        FRAME_TABLE(w, Z_before, sum, "lb", "groups before this one", "above");
        FRAME_GIVEN(w, n, g->items[i].count, "", frame_dowel_word(g->items[i].kind));
        FRAME_GIVEN(w, k_one, g->items[i].stiffness_lb_per_in, "lb/in", "stiffness of one");
        FRAME_STEP(w, Z_sum, Z_before + n * k_one * slip, "lb", "together", "statics of springs side by side");
        sum = Z_sum;
        out->count += g->items[i].count;
        out->least_each_lb = fmin(out->least_each_lb, k_one * slip);
    }
    FRAME_TABLE(w, Z_all, sum, "lb", "all fasteners counted", "above");
    FRAME_GIVEN(w, C_g, in->group_factor, "", "group action factor, NDS 11.3.6");
    FRAME_STEP(w, Z_group, Z_all * C_g, "lb", "capacity of the joint", "NDS 2018 11.1.4, by the stiffnesses stated");
    out->capacity_lb = Z_group;
    return FRAME_OK;
}

static void compare(const frame_fastener_sum_in *in, double P, frame_fastener_sum_out *out, frame_working *w) {
    const double Z_group = out->capacity_lb, C_g = in->group_factor;
    FRAME_STEP(w, ratio, P / Z_group, "", "demand over capacity", "at most 1");
    FRAME_TABLE(w, Z_least, out->least_each_lb, "lb", "least value of one", "above");
    FRAME_STEP(w, n_needed, ceil(P / (Z_least * C_g) - 1e-9), "", "fasteners needed", "NDS 2018 11.2.2");
    out->demand_lb = P;
    out->ratio = ratio;
    out->passes = ratio <= 1 + 1e-9; /* as the count below: an error of the last bit fails nobody */
    out->needed_count = n_needed < INT32_MAX ? (int32_t)n_needed : INT32_MAX;
    if (in->demand_plf == FRAME_NOT_GIVEN) return;
    const double w_line = in->demand_plf;
    FRAME_STEP(w, s_needed, Z_group * 12 / w_line, "in", "centres that just carry the demand", "statics");
    out->needed_spacing_in = s_needed;
}

static void remarks(const frame_fastener_sum_in *in, const groups *g, frame_fastener_sum_out *out, frame_working *w) {
    out->known = FRAME_KNOWN_USER;
    out->not_checked = FRAME_BIT(FRAME_FASTENER_SUM_UNCHECKED_CENTRE + 1) - 1;
    out->cautions = FRAME_BIT(FRAME_FASTENER_SUM_CAUTION_ADJUSTED);
    if (g->largest_in >= 0.25) out->cautions |= FRAME_BIT(FRAME_FASTENER_SUM_CAUTION_GROUP);
    if (g->unlike && in->unlike == FRAME_UNLIKE_STIFFNESS) {
        FRAME_CASE(w, "fasteners that are not alike", "added by the stiffnesses stated", "NDS 2018 11.1.4");
        out->cautions |= FRAME_BIT(FRAME_FASTENER_SUM_CAUTION_STIFFNESS);
    } else if (g->unlike) {
        FRAME_CASE(w, "fasteners that are not alike", "the strongest group alone", "NDS 2018 11.1.4");
        out->cautions |= FRAME_BIT(FRAME_FASTENER_SUM_CAUTION_STRONGEST);
    } else if (in->group_count > 1 && !g->modes_known) {
        out->cautions |= FRAME_BIT(FRAME_FASTENER_SUM_CAUTION_MODES);
    }
}

static frame_status compute(const frame_fastener_sum_in *in, frame_fastener_sum_out *out, frame_working *w) {
    groups g;
    double P = 0;
    frame_status status = read_groups(in, &g);
    if (!status) status = demand(in, &P, w);
    if (status) return status;
    find_strongest(&g);
    if (g.unlike && in->unlike == FRAME_UNLIKE_REFUSE) return refuse(&g);
    remarks(in, &g, out, w);
    if (g.unlike && in->unlike == FRAME_UNLIKE_STIFFNESS)
        status = add_by_stiffness(in, &g, out, w);
    else
        add_up(in, &g, out, w);
    if (status) return status;
    out->strongest_group = (int32_t)g.strongest;
    out->strongest_lb = g.strongest_lb * in->group_factor;
    compare(in, P, out, w);
    return FRAME_OK;
}

FRAME_IMPLEMENT(fastener_sum, compute);
