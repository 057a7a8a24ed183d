/* What a pair of rafters pushes apart, and what holds it: statics of two straight members and a tie. */
#include <stdio.h>

#include "base/error.h"
#include "base/number.h"
#include "load/cases.h"
#include "load/combination.h"
#include "load_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

/* Above this share of the rise a tie is a collar tie, which counts for no thrust (common practice, and R802.5.2's notes
 * from memory). */
#define COLLAR (2.0 / 3)
/* The share of the rise at which the code's tables of raised ties end (R802.5.2, from memory). */
#define RAISED (1.0 / 3)

static frame_status check_tie(const frame_rafter_thrust_in *in) {
    char given[32], most[32], valid[96];
    const double rise = in->run_in * in->slope;
    if (in->tie_height_in <= COLLAR * rise) return FRAME_OK;
    frame_number_print(in->tie_height_in, 6, given, sizeof given);
    frame_number_print(COLLAR * rise, 6, most, sizeof most);
    snprintf(valid, sizeof valid, "at most %s, two thirds of the rise: above it a tie holds no thrust", most);
    return frame_fail(FRAME_REFUSED, "tie_height_in", given, valid, "tie_height_in: %s; valid is %s", given, valid);
}

typedef struct thrust_loads {
    double dead, roof_live, snow; /* plf of plan on one rafter */
} thrust_loads;

static thrust_loads find_loads(const frame_rafter_thrust_in *in, frame_working *record) {
    FRAME_HEADING(record, "Loads on a foot of plan of one rafter");
    FRAME_GIVEN(record, s, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(record, s_c, in->spacing_in, "in", "spacing, centre to centre");
    FRAME_GIVEN(record, p_D, in->dead_psf, "psf", "dead load on the slope");
    FRAME_GIVEN(record, p_Lr, in->roof_live_psf, "psf", "roof live load on plan");
    FRAME_GIVEN(record, p_S, in->snow_psf, "psf", "snow on plan");
    FRAME_STEP(record, w_D, p_D * sqrt(1 + pow(s, 2)) * s_c / 12, "plf", "dead load, more of it on plan by the slope",
               "");
    FRAME_STEP(record, w_Lr, p_Lr * s_c / 12, "plf", "roof live load", "");
    FRAME_STEP(record, w_S, p_S * s_c / 12, "plf", "snow", "");
    return (thrust_loads){w_D, w_Lr, w_S};
}

static double total_of(const frame_load_case *c, const thrust_loads *loads) {
    return c->factor[FRAME_LOAD_DEAD] * loads->dead + c->factor[FRAME_LOAD_ROOF_LIVE] * loads->roof_live +
           c->factor[FRAME_LOAD_SNOW] * loads->snow;
}

/* The combination that governs wood and nails: the largest total over C_D, or over lambda. */
static frame_load_case find_case(const frame_rafter_thrust_in *in, const thrust_loads *loads) {
    frame_load_case cases[FRAME_LOAD_CASES];
    const frame_load_rules rules = {in->method, in->load_edition, FRAME_DURATION_TEN_YEARS};
    const unsigned kinds = 1u << FRAME_LOAD_DEAD | (loads->roof_live > 0 ? 1u << FRAME_LOAD_ROOF_LIVE : 0) |
                           (loads->snow > 0 ? 1u << FRAME_LOAD_SNOW : 0);
    const int count = frame_load_cases_by(kinds, &rules, cases);
    int best = 0;
    for (int i = 1; i < count; i++) {
        const double here = total_of(&cases[i], loads) / (cases[i].duration_factor * cases[i].time_effect);
        if (here > total_of(&cases[best], loads) / (cases[best].duration_factor * cases[best].time_effect)) best = i;
    }
    return cases[best];
}

static double find_total(const frame_load_case *c, const thrust_loads *loads, frame_working *record) {
    const double w_D = loads->dead, w_Lr = loads->roof_live, w_S = loads->snow;
    FRAME_HEADING(record, "The combination that governs wood and nails");
    FRAME_TABLE(record, k_D, c->factor[FRAME_LOAD_DEAD], "", "factor of dead load", c->source);
    FRAME_TABLE(record, k_Lr, c->factor[FRAME_LOAD_ROOF_LIVE], "", "factor of roof live load", c->source);
    FRAME_TABLE(record, k_S, c->factor[FRAME_LOAD_SNOW], "", "factor of snow", c->source);
    FRAME_STEP(record, w, k_D * w_D + k_Lr * w_Lr + k_S * w_S, "plf", "its load",
               frame_word_text("load_combination", c->which));
    return w;
}

/* No thrust goes into the wall: the tie takes it all, at its height. */
static double find_tie(const frame_rafter_thrust_in *in, double w, frame_rafter_thrust_out *out,
                       frame_working *record) {
    const double s = in->slope, s_c = in->spacing_in;
    FRAME_HEADING(record, "Thrust and tie");
    FRAME_GIVEN(record, R, in->run_in, "in", "run");
    FRAME_STEP(record, r, s * R, "in", "rise", "");
    FRAME_STEP(record, H, w / 12 * pow(R, 2) / (2 * r), "lb", "thrust of one rafter, the tie at the plate",
               "moments about the ridge");
    FRAME_STEP(record, H_plf, H / (s_c / 12), "plf", "thrust on a foot of wall", "");
    FRAME_GIVEN(record, h_C, in->tie_height_in, "in", "height of the tie above the plate");
    FRAME_STEP(record, T_1, H / (1 - h_C / r), "lb", "tension at the height of the tie, of one rafter",
               "moments about the ridge");
    FRAME_GIVEN(record, s_T, in->tie_spacing_in != FRAME_NOT_GIVEN ? in->tie_spacing_in : in->spacing_in, "in",
                "spacing of the ties");
    FRAME_STEP(record, T, T_1 * s_T / s_c, "lb", "tension in one tie", "");
    FRAME_GIVEN(record, o, in->overhang_in, "in", "overhang");
    FRAME_STEP(record, V, w / 12 * (R + o), "lb", "load on the plate of one rafter", "");
    out->thrust_lb = H, out->thrust_plf = H_plf, out->tie_lb = T, out->reaction_lb = V;
    out->ridge_lb = T_1;
    return T_1;
}

/* Bending of the rafter: from plate to tie nothing pulls it inward; from there to the ridge the tie does. */
static void find_rafter(const frame_rafter_thrust_in *in, double w, double T_1, frame_rafter_thrust_out *out,
                        frame_working *record) {
    const double s = in->slope, R = in->run_in, h_C = in->tie_height_in;
    FRAME_HEADING(record, "The rafter");
    FRAME_STEP(record, x_C, h_C / s, "in", "level distance from the plate to the tie", "");
    FRAME_STEP(record, x_0, R - T_1 * s / (w / 12), "in", "where no shear is left between tie and ridge", "");
    FRAME_STEP(record, x_M, fmax(x_C, x_0), "in", "where the moment is largest", "");
    FRAME_STEP(record, M, w / 12 * (R * x_M - pow(x_M, 2) / 2) - T_1 * (s * x_M - h_C), "lb-in",
               "largest moment in the rafter", "statics");
    FRAME_STEP(record, N_1, w / 12 * R * s / sqrt(1 + pow(s, 2)), "lb",
               "push along the rafter at the plate, raised tie", "statics");
    FRAME_STEP(record, N_2, (w / 12 * (R - x_C) * s + T_1) / sqrt(1 + pow(s, 2)), "lb",
               "push along the rafter just above the tie", "statics");
    FRAME_STEP(record, N, fmax(N_1, N_2), "lb", "largest push along the rafter", "");
    out->moment_lb_in = M, out->moment_at_in = x_M, out->axial_lb = N;
}

static void remark(const frame_rafter_thrust_in *in, frame_rafter_thrust_out *out) {
    const frame_load_rules rules = {in->method, in->load_edition, FRAME_DURATION_TEN_YEARS};
    out->known = frame_load_cases_known_by(&rules);
    out->cautions = FRAME_BIT(FRAME_THRUST_CAUTION_TIES_FIRST);
    if (in->slope < 0.25) out->cautions |= FRAME_BIT(FRAME_THRUST_CAUTION_LOW_SLOPE);
    if (in->tie_height_in > RAISED * in->run_in * in->slope) out->cautions |= FRAME_BIT(FRAME_THRUST_CAUTION_RAISED);
    if (in->tie_height_in > 0) out->cautions |= FRAME_BIT(FRAME_THRUST_CAUTION_RAFTER);
    if (in->snow_psf > 0 && in->load_edition == FRAME_LOADS_ASCE_7_16)
        out->cautions |= FRAME_BIT(FRAME_THRUST_CAUTION_SNOW_BASIS);
    out->not_checked = FRAME_BIT(FRAME_THRUST_UNCHECKED_UNBALANCED) | FRAME_BIT(FRAME_THRUST_UNCHECKED_WIND) |
                       FRAME_BIT(FRAME_THRUST_UNCHECKED_JOINTS) | FRAME_BIT(FRAME_THRUST_UNCHECKED_MEMBERS) |
                       FRAME_BIT(FRAME_THRUST_UNCHECKED_HIPS);
}

static frame_status compute(const frame_rafter_thrust_in *in, frame_rafter_thrust_out *out, frame_working *record) {
    const frame_status status = check_tie(in);
    if (status) return status;
    const thrust_loads loads = find_loads(in, record);
    const frame_load_case c = find_case(in, &loads);
    const double w = find_total(&c, &loads, record);
    if (!(w > 0))
        return frame_fail(FRAME_IMPOSSIBLE, "dead_psf", "0", "a load above 0",
                          "dead_psf: 0 with no other load; valid is a load above 0");
    const double T_1 = find_tie(in, w, out, record);
    find_rafter(in, w, T_1, out, record);
    out->combination = c.which, out->load_plf = w;
    out->load_duration_factor = c.duration_factor, out->time_effect_factor = c.time_effect;
    remark(in, out);
    return FRAME_OK;
}
FRAME_IMPLEMENT(rafter_thrust, compute);
