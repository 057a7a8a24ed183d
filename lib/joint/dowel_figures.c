/* Three figures for one nail: what the code allows, where it yields, and what broke it in a test that is named. */
#include "joint/fastening.h"
#include "joint_facts.h"
#include "working/calculation.h"

static frame_status sensible(const frame_dowel_figures_in *in) {
    const int test = in->test_lb != FRAME_NOT_GIVEN, source = in->test_source && in->test_source[0];
    if (frame_dowel_is_bolt(in->kind))
        return frame_fail(FRAME_OUTSIDE_SCOPE, "kind", frame_dowel_word(in->kind), "nails and screws",
                          "kind: %s: this is for nails and screws; dowel_lateral has bolts and pins",
                          frame_dowel_word(in->kind));
    if (test && !source)
        return frame_fail(FRAME_REQUIRED, "test_source", "", "author, title, year and table of the test",
                          "test_source: not given; an ultimate counts only where its test is cited");
    if (source && !test)
        return frame_fail(FRAME_REQUIRED, "test_lb", "", ">0..100000 lb",
                          "test_lb: not given; test_source names a test without its figure");
    return FRAME_OK;
}

static frame_status lateral(const frame_dowel_figures_in *in, frame_dowel_lateral_out *value, frame_working *w) {
    frame_dowel_lateral_in one;
    frame_dowel_lateral_in_init(&one);
    one.kind = in->kind;
    one.side_species = in->side_species;
    one.main_species = in->main_species;
    one.service = in->service;
    one.toe_nail = in->toe_nail;
    one.end_grain = in->end_grain;
    one.size = in->size;
    one.diameter_in = in->diameter_in;
    one.length_in = in->length_in;
    one.bending_yield_psi = in->bending_yield_psi;
    one.side_thickness_in = in->side_thickness_in;
    one.main_thickness_in = in->main_thickness_in;
    one.side_specific_gravity = in->side_specific_gravity;
    one.main_specific_gravity = in->main_specific_gravity;
    one.side_angle_deg = one.main_angle_deg = in->angle_deg;
    one.load_duration_factor = in->load_duration_factor;
    FRAME_HEADING(w, "The fastener");
    FRAME_ENTER(w);
    const frame_status status = frame_dowel_lateral(&one, value, w);
    FRAME_LEAVE(w);
    return status;
}

static void test(const frame_dowel_figures_in *in, frame_dowel_figures_out *out, frame_working *w) {
    out->ultimate_is_known = in->test_lb != FRAME_NOT_GIVEN;
    if (!out->ultimate_is_known) {
        FRAME_CASE(w, "no test is cited", "the ultimate is unknown", "no figure is made up for it");
        out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_ULTIMATE);
        return;
    }
    const double Z_prime = out->design_lb;
    FRAME_TABLE(w, P_ult, in->test_lb, "lb", "ultimate in the test", in->test_source);
    FRAME_STEP(w, r_ult, P_ult / Z_prime, "", "ultimate over the design value", "comparison");
    out->ultimate_lb = P_ult;
    out->ultimate_over_design = r_ult;
    out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_TEST);
}

static void claim(const frame_dowel_figures_in *in, frame_dowel_figures_out *out, frame_working *w) {
    if (in->claim_lb == FRAME_NOT_GIVEN) return;
    const double Z_prime = out->design_lb, Z_y = out->yield_lb;
    FRAME_GIVEN(w, P_claim, in->claim_lb, "lb", "figure claimed");
    FRAME_STEP(w, r_design, P_claim / Z_prime, "", "claim over the design value", "comparison");
    FRAME_STEP(w, r_yield, P_claim / Z_y, "", "claim over the yield value", "comparison");
    out->claim_over_design = r_design;
    out->claim_over_yield = r_yield;
    out->verdict = FRAME_CLAIM_WITHIN;
    if (r_design <= 1 + 1e-9) return;
    out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_CLAIM);
    out->verdict = r_yield > 1 ? FRAME_CLAIM_YIELDS : FRAME_CLAIM_ABOVE;
    if (out->ultimate_is_known && P_claim > out->ultimate_lb) out->verdict = FRAME_CLAIM_ABOVE_TEST;
}

static frame_status compute(const frame_dowel_figures_in *in, frame_dowel_figures_out *out, frame_working *w) {
    frame_dowel_lateral_out value;
    frame_status status = sensible(in);
    if (!status) status = lateral(in, &value, w);
    if (status) return status;
    FRAME_HEADING(w, "The figures");
    FRAME_TABLE(w, Z_prime, value.adjusted_lb, "lb", "design value, adjusted", "above");
    FRAME_TABLE(w, Z, value.z_lb, "lb", "reference value", "above");
    FRAME_TABLE(w, R_d, value.yield_lb / value.z_lb, "", "reduction term of the mode that governs", "above");
    FRAME_STEP(w, Z_y, Z * R_d, "lb", "yield value, before the reduction term", "NDS 2018 12.3.1");
    out->cautions = 0;
    out->design_lb = Z_prime;
    out->yield_lb = Z_y;
    out->reduction = R_d;
    out->mode = value.mode;
    out->known = value.known;
    test(in, out, w);
    claim(in, out, w);
    if (value.known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_MEMORY);
    if (value.hold == FRAME_HOLD_BY_EQUATIONS) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_SHORT);
    if (!in->toe_nail) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_DOWEL_FIGURES_IN_SIDE_THICKNESS_IN);
    if (in->toe_nail) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_TOE_NAIL);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPLITTING) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPACING) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_MEMBER) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_CORROSION);
    return FRAME_OK;
}

FRAME_IMPLEMENT(dowel_figures, compute);
