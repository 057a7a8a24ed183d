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

static frame_status add_row(frame_answer *answer, frame_load_combination which, double total, double factor) {
    frame_load_combinations_row *row = frame_answer_add(answer, 0);
    if (!row) return FRAME_NO_MEMORY;
    row->combination = which;
    row->total_plf = total;
    row->load_duration_factor = factor;
    row->equivalent_plf = total / factor;
    return FRAME_OK;
}

/* One combination with wind, its factors as steps. */
static double record_wind(const frame_load_case *c, const frame_loads *loads, double wind, frame_working *record) {
    const double w_D = loads->dead, w_L = loads->live, w_Lr = loads->roof_live, w_S = loads->snow, w_W = wind;
    FRAME_HEADING(record, frame_word_text("load_combination", c->which));
    FRAME_TABLE(record, k_D, c->factor[FRAME_LOAD_DEAD], "", "factor of dead load", c->source);
    FRAME_TABLE(record, k_L, c->factor[FRAME_LOAD_LIVE], "", "factor of live load", c->source);
    FRAME_TABLE(record, k_Lr, c->factor[FRAME_LOAD_ROOF_LIVE], "", "factor of roof live load", c->source);
    FRAME_TABLE(record, k_S, c->factor[FRAME_LOAD_SNOW], "", "factor of snow", c->source);
    FRAME_TABLE(record, k_W, c->factor[FRAME_LOAD_WIND], "", "factor of wind", c->source);
    FRAME_STEP(record, w, k_D * w_D + k_L * w_L + k_Lr * w_Lr + k_S * w_S + k_W * w_W, "plf", "total", c->source);
    FRAME_TABLE(record, C_D, c->duration_factor, "", "load duration factor of wind", FRAME_DURATION_SOURCE);
    FRAME_STEP(record, q, w / C_D, "plf", "as a load of ten years", "NDS 2018 2.3.2");
    (void)q;
    return w;
}

/* The combinations with wind; the largest over C_D may govern, the least tells of uplift. */
static frame_status add_wind(const frame_loads *loads, double wind, frame_answer *answer,
                             frame_load_combinations_out *out, frame_working *record) {
    frame_load_case cases[FRAME_LOAD_CASES];
    const unsigned kinds = 1u << FRAME_LOAD_WIND | (loads->dead > 0 ? 1u << FRAME_LOAD_DEAD : 0) |
                           (loads->live > 0 ? 1u << FRAME_LOAD_LIVE : 0) |
                           (loads->roof_live > 0 ? 1u << FRAME_LOAD_ROOF_LIVE : 0) |
                           (loads->snow > 0 ? 1u << FRAME_LOAD_SNOW : 0);
    const int count = frame_load_cases_find(kinds, loads->live_duration, cases);
    for (int i = 0; i < count; i++) {
        if (cases[i].factor[FRAME_LOAD_WIND] == 0) continue;
        const double total = record_wind(&cases[i], loads, wind, record), factor = cases[i].duration_factor;
        if (add_row(answer, cases[i].which, total, factor)) return FRAME_NO_MEMORY;
        out->least_plf = fmin(out->least_plf, total);
        out->greatest_plf = fmax(out->greatest_plf, total);
        if (total / factor <= out->governing_plf / out->load_duration_factor) continue;
        out->governs = cases[i].which;
        out->governing_plf = total;
        out->load_duration_factor = factor;
    }
    if (out->least_plf < 0) out->cautions |= FRAME_BIT(FRAME_COMBINATIONS_CAUTION_UPLIFT);
    if (frame_load_cases_known() > out->known) out->known = frame_load_cases_known();
    return FRAME_OK;
}

static void sum_up(const frame_load_combinations_in *in, const frame_combinations *c,
                   frame_load_combinations_out *out) {
    out->known = frame_duration_known();
    out->governs = c->governs;
    out->governing_plf = c->governing_total;
    out->load_duration_factor = c->governing_factor;
    out->greatest_plf = c->greatest;
    out->transient_plf = c->transient;
    out->least_plf = c->total[0];
    out->not_checked = FRAME_BIT(FRAME_COMBINATIONS_UNCHECKED_WIND) | FRAME_BIT(FRAME_COMBINATIONS_UNCHECKED_LIVE);
    if (!(in->snow_plf > 0)) return;
    out->not_checked |= FRAME_BIT(FRAME_COMBINATIONS_UNCHECKED_SNOW);
    out->cautions |= FRAME_BIT(FRAME_COMBINATIONS_CAUTION_BASIS);
}

static frame_status solve(const frame_load_combinations_in *in, frame_answer *answer, frame_load_combinations_out *out,
                          frame_working *record) {
    const frame_loads loads = {in->dead_plf, in->live_plf, in->roof_live_plf, in->snow_plf, in->live_duration};
    frame_combinations c;
    record_loads(&loads, in->wind_plf, record);
    frame_combine(&loads, &c, record);
    for (int i = 0; i < FRAME_COMBINATIONS; i++)
        if ((i == 0 || c.total[i] > 0) && add_row(answer, i + 1, c.total[i], c.factor[i])) return FRAME_NO_MEMORY;
    sum_up(in, &c, out);
    return in->wind_plf != 0 ? add_wind(&loads, in->wind_plf, answer, out, record) : FRAME_OK;
}
FRAME_IMPLEMENT_ANSWER(load_combinations, solve);
