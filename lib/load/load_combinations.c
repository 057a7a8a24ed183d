/* The combinations of loads as a calculation of their own. */
#include "load/cases.h"
#include "load/combination.h"
#include "load_facts.h"
#include "working/calculation.h"

static void record_loads(const frame_loads *loads, double wind, frame_working *record) {
    FRAME_HEADING(record, "Loads");
    FRAME_GIVEN(record, w_D, loads->dead, "plf", "dead load");
    FRAME_GIVEN(record, w_L, loads->live, "plf", "live load");
    FRAME_GIVEN(record, w_Lr, loads->roof_live, "plf", "roof live load");
    FRAME_GIVEN(record, w_S, loads->snow, "plf", "snow");
    FRAME_GIVEN(record, w_W, wind, "plf", "wind at strength level");
    (void)w_D, (void)w_L, (void)w_Lr, (void)w_S, (void)w_W;
}

static frame_status add_row(frame_answer *answer, const frame_load_case *c, double total) {
    frame_load_combinations_row *row = frame_answer_add(answer, 0);
    if (!row) return FRAME_NO_MEMORY;
    row->combination = c->which;
    row->total_plf = total;
    row->load_duration_factor = c->duration_factor;
    row->time_effect_factor = c->time_effect;
    row->equivalent_plf = total / (c->duration_factor * c->time_effect);
    return FRAME_OK;
}

/* What the strengths of wood are multiplied by under a combination. */
static double strength_of(const frame_load_case *c) {
    return c->duration_factor * c->time_effect;
}

/* One combination, its factors as steps. */
static double record_case(const frame_load_case *c, const frame_loads *loads, double wind, int lrfd,
                          frame_working *record) {
    const double w_D = loads->dead, w_L = loads->live, w_Lr = loads->roof_live, w_S = loads->snow, w_W = wind;
    FRAME_HEADING(record, frame_word_text("load_combination", c->which));
    FRAME_TABLE(record, k_D, c->factor[FRAME_LOAD_DEAD], "", "factor of dead load", c->source);
    FRAME_TABLE(record, k_L, c->factor[FRAME_LOAD_LIVE], "", "factor of live load", c->source);
    FRAME_TABLE(record, k_Lr, c->factor[FRAME_LOAD_ROOF_LIVE], "", "factor of roof live load", c->source);
    FRAME_TABLE(record, k_S, c->factor[FRAME_LOAD_SNOW], "", "factor of snow", c->source);
    FRAME_TABLE(record, k_W, c->factor[FRAME_LOAD_WIND], "", "factor of wind", c->source);
    FRAME_STEP(record, w, k_D * w_D + k_L * w_L + k_Lr * w_Lr + k_S * w_S + k_W * w_W, "plf", "total", c->source);
    if (lrfd) {
        FRAME_TABLE(record, lambda, c->time_effect, "", "time effect factor", "NDS 2018 table N3 (from memory)");
        FRAME_STEP(record, q, w / lambda, "plf", "over the time effect factor", "NDS 2018 N.3.3");
        (void)q;
        return w;
    }
    FRAME_TABLE(record, C_D, c->duration_factor, "", "load duration factor of its shortest load",
                FRAME_DURATION_SOURCE);
    FRAME_STEP(record, q, w / C_D, "plf", "as a load of ten years", "NDS 2018 2.3.2");
    (void)q;
    return w;
}

static void take_lead(const frame_load_case *c, double total, frame_load_combinations_out *out) {
    out->greatest_plf = fmax(out->greatest_plf, total);
    out->least_plf = fmin(out->least_plf, total);
    if (total / strength_of(c) <= out->governing_plf / (out->load_duration_factor * out->time_effect_factor)) return;
    out->governs = c->which;
    out->governing_plf = total;
    out->load_duration_factor = c->duration_factor;
    out->time_effect_factor = c->time_effect;
}

static unsigned kinds_of(const frame_loads *loads, double wind) {
    return (wind != 0 ? 1u << FRAME_LOAD_WIND : 0) | (loads->dead > 0 ? 1u << FRAME_LOAD_DEAD : 0) |
           (loads->live > 0 ? 1u << FRAME_LOAD_LIVE : 0) | (loads->roof_live > 0 ? 1u << FRAME_LOAD_ROOF_LIVE : 0) |
           (loads->snow > 0 ? 1u << FRAME_LOAD_SNOW : 0);
}

/* The combinations with wind after those without; the largest over C_D may govern, the least tells of uplift. */
static frame_status add_wind(const frame_loads *loads, const frame_load_rules *rules, double wind, frame_answer *answer,
                             frame_load_combinations_out *out, frame_working *record) {
    frame_load_case cases[FRAME_LOAD_CASES];
    const int count = frame_load_cases_by(kinds_of(loads, wind), rules, cases);
    for (int i = 0; i < count; i++) {
        if (cases[i].factor[FRAME_LOAD_WIND] == 0) continue;
        const double total = record_case(&cases[i], loads, wind, 0, record);
        if (add_row(answer, &cases[i], total)) return FRAME_NO_MEMORY;
        take_lead(&cases[i], total, out);
    }
    if (frame_load_cases_known_by(rules) > out->known) out->known = frame_load_cases_known_by(rules);
    return FRAME_OK;
}

static int is_service(frame_load_combination which) {
    return which == FRAME_COMBINATION_D || which > FRAME_COMBINATION_D_W_UPLIFT || which < FRAME_COMBINATION_D_W;
}

/* The largest load of the service combinations without the dead load and without wind. */
static double transient_of(const frame_loads *loads, const frame_load_rules *rules) {
    frame_load_case cases[FRAME_LOAD_CASES];
    const frame_load_rules service = {FRAME_METHOD_ASD, rules->edition, rules->live_duration};
    const int count = frame_load_cases_by(kinds_of(loads, 0), &service, cases);
    double most = 0;
    for (int i = 0; i < count; i++) {
        const double *f = cases[i].factor;
        if (!is_service(cases[i].which)) continue;
        most = fmax(most, f[FRAME_LOAD_LIVE] * loads->live + f[FRAME_LOAD_ROOF_LIVE] * loads->roof_live +
                              f[FRAME_LOAD_SNOW] * loads->snow);
    }
    return most;
}

/* All combinations by their rows: LRFD, and ASCE 7-22. */
static frame_status add_cases(const frame_loads *loads, const frame_load_rules *rules, double wind,
                              frame_answer *answer, frame_load_combinations_out *out, frame_working *record) {
    frame_load_case cases[FRAME_LOAD_CASES];
    const int count = frame_load_cases_by(kinds_of(loads, wind), rules, cases),
              lrfd = rules->method == FRAME_METHOD_LRFD;
    out->governing_plf = out->greatest_plf = -HUGE_VAL;
    out->least_plf = HUGE_VAL;
    out->load_duration_factor = out->time_effect_factor = 1;
    for (int i = 0; i < count; i++) {
        const double total = record_case(&cases[i], loads, wind, lrfd, record);
        if (add_row(answer, &cases[i], total)) return FRAME_NO_MEMORY;
        take_lead(&cases[i], total, out);
    }
    out->known = frame_load_cases_known_by(rules);
    out->transient_plf = transient_of(loads, rules);
    return FRAME_OK;
}

/* The usual combinations, ASD by ASCE 7-16, in the one place where they are formed for all checks of members. */
static frame_status add_usual(const frame_loads *loads, const frame_load_rules *rules, double wind,
                              frame_answer *answer, frame_load_combinations_out *out, frame_working *record) {
    frame_combinations c;
    frame_combine(loads, &c, record);
    for (int i = 0; i < FRAME_COMBINATIONS; i++) {
        const frame_load_case row = {.which = i + 1, .duration_factor = c.factor[i], .time_effect = 1};
        if ((i == 0 || c.total[i] > 0) && add_row(answer, &row, c.total[i])) return FRAME_NO_MEMORY;
    }
    out->known = frame_duration_known();
    out->governs = c.governs;
    out->governing_plf = c.governing_total;
    out->load_duration_factor = c.governing_factor;
    out->time_effect_factor = 1;
    out->greatest_plf = c.greatest;
    out->transient_plf = c.transient;
    out->least_plf = c.total[0];
    return wind != 0 ? add_wind(loads, rules, wind, answer, out, record) : FRAME_OK;
}

static void remark(const frame_load_combinations_in *in, frame_load_combinations_out *out) {
    out->not_checked = FRAME_BIT(FRAME_COMBINATIONS_UNCHECKED_WIND) | FRAME_BIT(FRAME_COMBINATIONS_UNCHECKED_LIVE);
    if (out->least_plf < 0) out->cautions |= FRAME_BIT(FRAME_COMBINATIONS_CAUTION_UPLIFT);
    if (!(in->snow_plf > 0)) return;
    out->not_checked |= FRAME_BIT(FRAME_COMBINATIONS_UNCHECKED_SNOW);
    if (in->load_edition == FRAME_LOADS_ASCE_7_16) out->cautions |= FRAME_BIT(FRAME_COMBINATIONS_CAUTION_BASIS);
}

static frame_status solve(const frame_load_combinations_in *in, frame_answer *answer, frame_load_combinations_out *out,
                          frame_working *record) {
    const frame_loads loads = {in->dead_plf, in->live_plf, in->roof_live_plf, in->snow_plf, in->live_duration, 0};
    const frame_load_rules rules = {in->method, in->load_edition, in->live_duration};
    const int usual = in->method == FRAME_METHOD_ASD && in->load_edition == FRAME_LOADS_ASCE_7_16;
    record_loads(&loads, in->wind_plf, record);
    const frame_status status = usual ? add_usual(&loads, &rules, in->wind_plf, answer, out, record)
                                      : add_cases(&loads, &rules, in->wind_plf, answer, out, record);
    if (!status) remark(in, out);
    return status;
}
FRAME_IMPLEMENT_ANSWER(load_combinations, solve);
