/* A strap over the ridge or a collar tie under it, against wind that lifts the rafters. */
#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

static frame_status sensible(const frame_ridge_tie_in *in) {
    const double rise = in->slope * in->span_in / 2;
    if (in->drop_in <= rise / 3 + 1e-9) return FRAME_OK;
    return frame_fail_number(FRAME_OUTSIDE_SCOPE, "drop_in", in->drop_in,
                             "the upper third of the rise, where a collar tie belongs (IRC R802.4.6)");
}

static double force(const frame_ridge_tie_in *in, frame_working *w) {
    FRAME_HEADING(w, "Force in the tie");
    FRAME_GIVEN(w, w_up, in->uplift_psf, "psf", "net uplift, on plan");
    FRAME_GIVEN(w, L, in->span_in / 12, "ft", "span of the roof");
    FRAME_GIVEN(w, spacing, in->spacing_in, "in", "centres of the ties");
    FRAME_GIVEN(w, slope, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, drop, in->drop_in / 12, "ft", "ridge above the tie");
    FRAME_STEP(w, lever, slope * L / 2 - drop, "ft", "tie above the plates", "geometry");
    FRAME_STEP(w, T_level, w_up * spacing / 12 * pow(L, 2) / (8 * lever), "lb", "level force",
               "moments about the plate");
    if (in->drop_in > 0) return T_level;
    FRAME_STEP(w, T_strap, T_level * sqrt(1 + pow(slope, 2)), "lb", "force in the strap, along the slope", "statics");
    return T_strap;
}

static frame_status compute(const frame_ridge_tie_in *in, frame_ridge_tie_out *out, frame_working *w) {
    frame_nailing nailing = FRAME_NAILING_OF(in);
    frame_dowel_lateral_out value;
    nailing.steel_side = in->drop_in <= 0;
    nailing.side_angle_deg = 0;
    nailing.main_angle_deg = in->drop_in > 0 ? atan(in->slope) / FRAME_DEG : 0;
    frame_status status = sensible(in);
    if (!status) status = frame_nailing_lateral(&nailing, &value, w);
    if (status) return status;
    const int counted = in->count != FRAME_NOT_GIVEN_INT;
    const double tie_lb = force(in, w);
    FRAME_TABLE(w, T, tie_lb, "lb", "force in the tie", "above");
    FRAME_TABLE(w, Z_prime, value.adjusted_lb, "lb", "adjusted lateral value of one", "above");
    FRAME_STEP(w, n_needed, ceil(T / Z_prime - 1e-9), "", "nails needed at each end", "NDS 2018 11.2.2");
    out->needed_count = frame_count_for(n_needed);
    FRAME_GIVEN(w, n, counted ? in->count : out->needed_count, "", "nails at each end");
    FRAME_GIVEN(w, T_given, in->strap_lb != FRAME_NOT_GIVEN ? in->strap_lb : n * Z_prime, "lb",
                "allowable tension of the tie, or again that of the nails");
    FRAME_STEP(w, ratio, T / fmin(n * Z_prime, T_given), "", "force over capacity", "at most 1");
    out->tie_lb = T;
    out->each_lb = Z_prime;
    out->ratio = ratio;
    if (counted) {
        out->capacity_lb = fmin(n * Z_prime, T_given);
        out->passes = frame_within(ratio);
    }
    out->known = value.known;
    out->cautions = frame_nailing_cautions(&nailing, &value) | FRAME_BIT(FRAME_FASTENING_CAUTION_CODE_TABLE);
    out->not_checked = frame_nailing_unchecked() | FRAME_BIT(FRAME_FASTENING_UNCHECKED_RAFTER);
    if (in->strap_lb == FRAME_NOT_GIVEN) out->not_checked |= FRAME_BIT(FRAME_FASTENING_UNCHECKED_METAL);
    FRAME_NAILING_FORGET(RIDGE_TIE, &nailing, 1, 0, out->assumed);
    return FRAME_OK;
}

FRAME_IMPLEMENT(ridge_tie, compute);
