/* The end of a member held in shear by nails through it, through what carries it, or by a metal part. */
#include "joint/shear_end.h"

#include "base/error.h"
#include "base/facts.h"
#include "working/record.h"

double frame_metal_value(double given_lb, int may_be_raised, double load_duration_factor, frame_working *w) {
    FRAME_GIVEN(w, P_given, given_lb, "lb", "allowable load, as its maker publishes it");
    FRAME_GIVEN(w, C_D, may_be_raised ? load_duration_factor : 1, "",
                "load duration factor, 1 unless its maker allows it");
    FRAME_STEP(w, P_metal, P_given * C_D, "lb", "allowable load", "the maker's value, NDS 2018 11.3.2");
    return P_metal;
}

frame_status frame_metal_needed(double load_lb, double given_lb, const char *field) {
    if (load_lb <= 0 || given_lb != FRAME_NOT_GIVEN) return FRAME_OK;
    return frame_fail(FRAME_REQUIRED, field, "", ">0..1000000 lb",
                      "%s: not given; the metal part has no value for this load", field);
}

static void metal_remarks(const frame_shear_end *end, const frame_nailing *nailing, frame_end_result *result) {
    result->known = FRAME_KNOWN_USER;
    result->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_MAKER);
    if (end->may_be_raised && nailing->load_duration_factor > 1)
        result->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_RAISED);
    result->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_MEMBER) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_CORROSION) |
                          FRAME_BIT(FRAME_FASTENING_UNCHECKED_PATH) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_OTHER_WAY);
}

static frame_status by_metal(const frame_shear_end *end, const frame_nailing *nailing, frame_end_result *result,
                             frame_working *w) {
    frame_status status = frame_metal_needed(end->reaction_lb, end->metal_lb, "metal_lb");
    if (!status) status = frame_metal_needed(end->uplift_lb, end->metal_uplift_lb, "metal_uplift_lb");
    if (status) return status;
    double shares = 0;
    const double loads[] = {end->reaction_lb, end->uplift_lb}, given[] = {end->metal_lb, end->metal_uplift_lb};
    result->each_lb = FRAME_NOT_GIVEN;
    for (int i = 0; i < 2; i++) {
        if (given[i] == FRAME_NOT_GIVEN) continue;
        const double value = frame_metal_value(given[i], end->may_be_raised, nailing->load_duration_factor, w);
        if (!i) result->each_lb = value;
        shares = fmax(shares, loads[i] / value);
    }
    const double count = end->count != FRAME_NOT_GIVEN_INT ? end->count : 1;
    result->demand_lb = fmax(end->reaction_lb, end->uplift_lb);
    result->needed_count = frame_count_for(shares);
    result->ratio = shares / count;
    if (end->metal_lb != FRAME_NOT_GIVEN) result->capacity_lb = count * result->each_lb;
    result->passes = frame_within(result->ratio);
    metal_remarks(end, nailing, result);
    return FRAME_OK;
}

static frame_status by_nails(const frame_shear_end *end, const frame_nailing *nailing, frame_end_result *result,
                             frame_working *w) {
    frame_dowel_lateral_out value;
    const frame_status status = frame_nailing_lateral(nailing, &value, w);
    if (status) return status;
    FRAME_HEADING(w, "The end");
    FRAME_TABLE(w, Z_prime, value.adjusted_lb, "lb", "adjusted lateral value of one", "above");
    FRAME_GIVEN(w, P_down, end->reaction_lb, "lb", "load down");
    FRAME_GIVEN(w, P_up, end->uplift_lb, "lb", "load up");
    FRAME_STEP(w, P, fmax(P_down, P_up), "lb", "what the end must carry", "the larger");
    FRAME_STEP(w, n_needed, ceil(P / Z_prime - 1e-9), "", "nails or screws needed", "NDS 2018 11.2.2");
    const int counted = end->count != FRAME_NOT_GIVEN_INT;
    result->needed_count = frame_count_for(n_needed);
    FRAME_GIVEN(w, n, counted ? end->count : result->needed_count, "", "nails or screws");
    FRAME_STEP(w, ratio, P / (n * Z_prime), "", "load over capacity", "at most 1");
    result->each_lb = Z_prime;
    result->demand_lb = P;
    result->ratio = ratio;
    if (counted) {
        result->capacity_lb = n * Z_prime;
        result->passes = frame_within(ratio);
    }
    result->known = value.known;
    result->cautions = frame_nailing_cautions(nailing, &value);
    result->not_checked = frame_nailing_unchecked() | FRAME_BIT(FRAME_FASTENING_UNCHECKED_OTHER_WAY);
    return FRAME_OK;
}

frame_status frame_shear_end_find(const frame_shear_end *end, frame_nailing *nailing, frame_end_result *result,
                                  frame_working *w) {
    *result = (frame_end_result){.passes = FRAME_NOT_GIVEN_INT,
                                 .each_lb = FRAME_NOT_GIVEN,
                                 .capacity_lb = FRAME_NOT_GIVEN,
                                 .ratio = FRAME_NOT_GIVEN};
    if (end->way == FRAME_END_WAY_METAL) return by_metal(end, nailing, result, w);
    nailing->toe_nail = end->way == FRAME_END_WAY_TOE_NAILS;
    nailing->end_grain = end->way == FRAME_END_WAY_END_NAILS;
    nailing->side_angle_deg = nailing->main_angle_deg = 90;
    return by_nails(end, nailing, result, w);
}
