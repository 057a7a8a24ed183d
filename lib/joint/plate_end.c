/* The end of a member on a plate: nails loaded across and along themselves at once, or a metal part. */
#include "joint/plate_end.h"

#include "base/error.h"
#include "base/facts.h"
#include "base/number.h"
#include "joint/shear_end.h"
#include "working/record.h"

static frame_status some_load(const frame_plate_end *end) {
    if (end->lateral_lb > 0 || end->uplift_lb > 0) return FRAME_OK;
    return frame_fail(FRAME_REQUIRED, "uplift_lb", "0", "lateral_lb or uplift_lb above 0",
                      "uplift_lb: neither it nor lateral_lb is above 0");
}

/* Shares of one fastener's or part's value, both directions. */
static void settle(const frame_plate_end *end, double lateral, double uplift, int counted, frame_plate_result *result) {
    result->needed_count = frame_count_for(lateral + uplift);
    const double count = end->count != FRAME_NOT_GIVEN_INT ? end->count : (counted ? 1 : result->needed_count);
    result->lateral_ratio = lateral / count;
    result->uplift_ratio = uplift / count;
    result->ratio = result->lateral_ratio + result->uplift_ratio;
    if (counted || end->count != FRAME_NOT_GIVEN_INT) result->passes = frame_within(result->ratio);
}

static frame_status by_metal(const frame_plate_end *end, const frame_nailing *nailing, frame_plate_result *result,
                             frame_working *w) {
    frame_status status = frame_metal_needed(end->lateral_lb, end->metal_lb, "metal_lb");
    if (!status) status = frame_metal_needed(end->uplift_lb, end->metal_uplift_lb, "metal_uplift_lb");
    if (status) return status;
    double shares[2] = {0, 0};
    const double loads[] = {end->lateral_lb, end->uplift_lb}, given[] = {end->metal_lb, end->metal_uplift_lb};
    for (int i = 0; i < 2; i++) {
        if (loads[i] <= 0) continue;
        const double value = frame_metal_value(given[i], end->may_be_raised, nailing->load_duration_factor, w);
        shares[i] = loads[i] / value;
        *(i ? &result->each_withdrawal_lb : &result->each_lb) = value;
    }
    settle(end, shares[0], shares[1], 1, result);
    result->known = FRAME_KNOWN_USER;
    result->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_MAKER);
    if (end->may_be_raised && nailing->load_duration_factor > 1)
        result->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_RAISED);
    result->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_MEMBER) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_PATH) |
                          FRAME_BIT(FRAME_FASTENING_UNCHECKED_CORROSION);
    return FRAME_OK;
}

static frame_status end_nails_hold_nothing(double uplift_lb) {
    char text[32];
    frame_number_print(uplift_lb, 6, text, sizeof text);
    return frame_fail(FRAME_REFUSED, "uplift_lb", text, "0, or way \"metal\" or \"toe nails\"",
                      "uplift_lb: %s lb; nails in end grain hold nothing against being pulled out (NDS 12.2.3): use a "
                      "strap, or toe-nails",
                      text);
}

static frame_status by_nails(const frame_plate_end *end, const frame_nailing *nailing, frame_plate_result *result,
                             frame_working *w) {
    frame_dowel_lateral_out value;
    frame_known known = FRAME_KNOWN_READ;
    double along = 0;
    if (nailing->end_grain && end->uplift_lb > 0) return end_nails_hold_nothing(end->uplift_lb);
    frame_status status = frame_nailing_lateral(nailing, &value, w);
    if (!status && end->uplift_lb > 0) status = frame_nailing_withdrawal(nailing, &along, &known, w);
    if (status) return status;
    FRAME_HEADING(w, "The end");
    FRAME_TABLE(w, Z_prime, value.adjusted_lb, "lb", "adjusted lateral value of one", "above");
    FRAME_GIVEN(w, P_Z, end->lateral_lb, "lb", "load across the nails");
    FRAME_STEP(w, n_Z, P_Z / Z_prime, "", "nails for the load across them", "NDS 2018 11.2.2");
    double n_both = n_Z, n_along = 0;
    if (end->uplift_lb > 0) {
        FRAME_TABLE(w, W_prime, along, "lb", "adjusted withdrawal value of one", "above");
        FRAME_GIVEN(w, P_W, end->uplift_lb, "lb", "load along the nails");
        FRAME_STEP(w, n_W, P_W / W_prime, "", "nails for the load along them", "NDS 2018 11.2.2");
        FRAME_STEP(w, n_sum, n_Z + n_W, "", "for both at once, the parts add", "NDS 2018 12.4.2, from memory");
        n_along = n_W, n_both = n_sum;
    }
    settle(end, n_both - n_along, n_along, 0, result);
    result->each_lb = Z_prime;
    result->each_withdrawal_lb = end->uplift_lb > 0 || nailing->end_grain ? along : FRAME_NOT_GIVEN;
    result->known = frame_known_worse(value.known, end->uplift_lb > 0 ? FRAME_KNOWN_MEMORY : known);
    result->cautions = frame_nailing_cautions(nailing, &value);
    if (end->uplift_lb > 0)
        result->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_NAILS_PULL) | FRAME_BIT(FRAME_FASTENING_CAUTION_MEMORY);
    result->not_checked = frame_nailing_unchecked();
    return FRAME_OK;
}

frame_status frame_plate_end_find(const frame_plate_end *end, frame_nailing *nailing, frame_plate_result *result,
                                  frame_working *w) {
    *result = (frame_plate_result){
        .passes = FRAME_NOT_GIVEN_INT, .each_lb = FRAME_NOT_GIVEN, .each_withdrawal_lb = FRAME_NOT_GIVEN};
    const frame_status status = some_load(end);
    if (status) return status;
    if (end->way == FRAME_END_WAY_METAL) return by_metal(end, nailing, result, w);
    nailing->toe_nail = end->way == FRAME_END_WAY_TOE_NAILS;
    nailing->end_grain = end->way == FRAME_END_WAY_END_NAILS;
    nailing->side_angle_deg = nailing->main_angle_deg = 90;
    return by_nails(end, nailing, result, w);
}
