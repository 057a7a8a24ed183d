/* The combinations of loads as a calculation of their own. */
#include "load/combination.h"
#include "load_facts.h"
#include "working/calculation.h"

static void record_loads(const frame_loads *loads, frame_working *record) {
    FRAME_HEADING(record, "Loads");
    FRAME_GIVEN(record, w_D, loads->dead, "plf", "dead load");
    FRAME_GIVEN(record, w_L, loads->live, "plf", "live load");
    FRAME_GIVEN(record, w_Lr, loads->roof_live, "plf", "roof live load");
    FRAME_GIVEN(record, w_S, loads->snow, "plf", "snow");
    (void)w_D, (void)w_L, (void)w_Lr, (void)w_S;
}

static frame_status add_row(frame_answer *answer, const frame_combinations *c, int at) {
    frame_load_combinations_row *row = frame_answer_add(answer, 0);
    if (!row) return FRAME_NO_MEMORY;
    row->combination = at + 1;
    row->total_plf = c->total[at];
    row->load_duration_factor = c->factor[at];
    row->equivalent_plf = c->total[at] / c->factor[at];
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
    out->not_checked = FRAME_BIT(FRAME_COMBINATIONS_UNCHECKED_WIND) | FRAME_BIT(FRAME_COMBINATIONS_UNCHECKED_LIVE);
    if (!(in->snow_plf > 0)) return;
    out->not_checked |= FRAME_BIT(FRAME_COMBINATIONS_UNCHECKED_SNOW);
    out->cautions |= FRAME_BIT(FRAME_COMBINATIONS_CAUTION_BASIS);
}

static frame_status solve(const frame_load_combinations_in *in, frame_answer *answer, frame_load_combinations_out *out,
                          frame_working *record) {
    const frame_loads loads = {in->dead_plf, in->live_plf, in->roof_live_plf, in->snow_plf, in->live_duration};
    frame_combinations c;
    record_loads(&loads, record);
    frame_combine(&loads, &c, record);
    for (int i = 0; i < FRAME_COMBINATIONS; i++)
        if ((i == 0 || c.total[i] > 0) && add_row(answer, &c, i)) return FRAME_NO_MEMORY;
    sum_up(in, &c, out);
    return FRAME_OK;
}
FRAME_IMPLEMENT_ANSWER(load_combinations, solve);
