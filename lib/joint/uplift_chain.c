/* Uplift from the roof to the foundation, link by link. */
#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

enum { LINKS = 0 };

/* One link less the dead load that stands on it; what arrives is what it hands on. */
static double follow(const frame_uplift_link *link, double arriving, double dead_factor, frame_working *w) {
    FRAME_HEADING(w, link->name);
    FRAME_TABLE(w, U_above, arriving, "lb", "uplift from above", "above");
    FRAME_GIVEN(w, D_link, link->dead_lb, "lb", "dead load that stands on it");
    FRAME_GIVEN(w, k_D, dead_factor, "", "part of it that counts");
    FRAME_STEP(w, U, fmax(0, U_above - k_D * D_link), "lb", "what the link must hold",
               "ASCE 7-16 2.4.1: 0.6 D + 0.6 W");
    return U;
}

static frame_status solve(const frame_uplift_chain_in *in, frame_answer *answer, frame_uplift_chain_out *out,
                          frame_working *w) {
    double U = in->uplift_lb, relief = 0;
    out->ratio = -1;
    out->capacity_lb = HUGE_VAL;
    for (size_t i = 0; i < in->link_count; i++) {
        frame_uplift_link link;
        frame_uplift_link_item(in->links, i, &link);
        frame_uplift_chain_link *line = frame_answer_add(answer, LINKS);
        if (!line) return FRAME_NO_MEMORY;
        U = follow(&link, U, in->dead_factor, w);
        relief += in->dead_factor * link.dead_lb;
        FRAME_GIVEN(w, U_link, U, "lb", "what the link must hold");
        FRAME_GIVEN(w, n, link.count, "", "how many share it");
        FRAME_GIVEN(w, P_one, link.allowable_lb, "lb", "what one holds");
        FRAME_STEP(w, ratio, U_link / (n * P_one), "", "over what it holds", "at most 1");
        line->name = frame_answer_text(answer, link.name);
        line->demand_lb = U_link;
        line->capacity_lb = n * P_one;
        line->ratio = ratio;
        out->capacity_lb = fmin(out->capacity_lb, line->capacity_lb + relief);
        if (ratio <= out->ratio) continue;
        out->ratio = ratio;
        out->weakest = (int32_t)i;
        out->weakest_name = line->name;
    }
    out->foundation_lb = U;
    out->passes = frame_within(out->ratio);
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_WEAKEST) | FRAME_BIT(FRAME_FASTENING_CAUTION_ADJUSTED);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_ANCHOR) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_OTHER_WAY) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_MEMBER);
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(uplift_chain, solve);
