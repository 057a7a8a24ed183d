/* A ledger on wall framing, through whatever covers the wall. */
#include "base/number.h"
#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

static frame_status sensible(const frame_ledger_joint_in *in) {
    if (in->backing == FRAME_LEDGER_BACKING_VENEER)
        return frame_fail(
            FRAME_REFUSED, "backing", "veneer", "band or studs",
            "backing: veneer and stucco never carry a ledger (IRC R507.9.1); stand the deck on its own posts");
    if (in->backing == FRAME_LEDGER_BACKING_CANTILEVER)
        return frame_fail(
            FRAME_REFUSED, "backing", "cantilever", "band or studs",
            "backing: a floor that stands out over its wall carries no ledger without a design (IRC R507.9.1)");
    return FRAME_OK;
}

/* Lateral ties of a deck: two of 1,500 lb or four of 750 lb (IRC R507.9.2). */
static frame_status ties(const frame_ledger_joint_in *in, frame_ledger_joint_out *out, frame_working *w) {
    const int counted = in->ties != FRAME_NOT_GIVEN_INT, valued = in->tie_lb != FRAME_NOT_GIVEN;
    out->two_ties_lb = 1500;
    out->four_ties_lb = 750;
    if (counted != valued)
        return frame_fail(FRAME_REQUIRED, counted ? "tie_lb" : "ties", "", "ties and tie_lb",
                          "%s: not given; lateral ties need their count and what one holds",
                          counted ? "tie_lb" : "ties");
    if (!counted) return FRAME_OK;
    FRAME_HEADING(w, "Lateral ties");
    FRAME_GIVEN(w, n_ties, in->ties, "", "lateral ties");
    FRAME_GIVEN(w, T_tie, in->tie_lb, "lb", "allowable tension of one");
    FRAME_TABLE(w, T_two, out->two_ties_lb, "lb", "each of two", "IRC R507.9.2");
    FRAME_TABLE(w, T_four, out->four_ties_lb, "lb", "each of four", "IRC R507.9.2");
    out->ties_pass = (n_ties >= 2 && T_tie >= T_two) || (n_ties >= 4 && T_tie >= T_four);
    return FRAME_OK;
}

static double load(const frame_ledger_joint_in *in, frame_working *w) {
    FRAME_HEADING(w, "Load on the ledger");
    FRAME_GIVEN(w, D_psf, in->dead_psf, "psf", "dead load");
    FRAME_GIVEN(w, L_psf, in->live_psf, "psf", "live load");
    FRAME_GIVEN(w, S_psf, in->snow_psf, "psf", "snow");
    FRAME_GIVEN(w, span, in->joist_span_in, "in", "span of the joists");
    FRAME_STEP(w, w_psf, fmax(fmax(D_psf + L_psf, D_psf + S_psf), D_psf + 0.75 * (L_psf + S_psf)), "psf",
               "load that counts", "ASCE 7-16 2.4.1: D + L, D + S, D + 0.75 L + 0.75 S");
    FRAME_STEP(w, q, w_psf * span / 24, "plf", "load on the ledger", "half of the joists' span");
    return q;
}

static void places(const frame_ledger_joint_in *in, double q, double Z_prime, frame_ledger_joint_out *out,
                   frame_working *w) {
    FRAME_GIVEN(w, rows, in->rows, "", "fasteners at each place");
    out->needed_spacing_in = FRAME_NOT_GIVEN;
    if (q > 0) {
        FRAME_GIVEN(w, q_ledger, q, "plf", "load on the ledger");
        FRAME_STEP(w, s_needed, 12 * rows * Z_prime / q_ledger, "in", "widest centres that carry it",
                   "NDS 2018 11.2.2");
        out->needed_spacing_in = s_needed;
        if (in->length_of_ledger_in != FRAME_NOT_GIVEN)
            out->needed_count = frame_count_for(in->length_of_ledger_in / s_needed) + 1;
    }
    if (in->spacing_in == FRAME_NOT_GIVEN) return;
    FRAME_GIVEN(w, s, in->spacing_in, "in", "centres of the fasteners");
    FRAME_STEP(w, q_held, 12 * rows * Z_prime / s, "plf", "what they carry", "NDS 2018 11.2.2");
    out->capacity_plf = q_held;
    out->ratio = q / q_held;
    out->passes = frame_within(out->ratio);
}

static frame_status compute(const frame_ledger_joint_in *in, frame_ledger_joint_out *out, frame_working *w) {
    frame_nailing nailing = FRAME_NAILING_OF(in);
    frame_dowel_lateral_out value;
    frame_status status = sensible(in);
    if (status) return status;
    nailing.gap_in = in->sheathing_in + in->foam_in + in->space_in;
    nailing.side_angle_deg = 90;
    nailing.main_angle_deg = in->backing == FRAME_LEDGER_BACKING_STUDS ? 0 : 90;
    const double q = load(in, w);
    status = frame_nailing_lateral(&nailing, &value, w);
    if (status) return status;
    FRAME_HEADING(w, "The ledger");
    FRAME_TABLE(w, Z_prime, value.adjusted_lb, "lb", "adjusted lateral value of one", "above");
    out->load_plf = q;
    out->each_lb = Z_prime;
    out->gap_in = nailing.gap_in;
    out->penetration_in = value.penetration_in;
    places(in, q, Z_prime, out, w);
    if ((status = ties(in, out, w))) return status;
    out->known = frame_known_worse(value.known, FRAME_KNOWN_SECONDARY);
    out->cautions = frame_nailing_cautions(&nailing, &value) | FRAME_BIT(FRAME_FASTENING_CAUTION_FLASHING) |
                    FRAME_BIT(FRAME_FASTENING_CAUTION_DECK) | FRAME_BIT(FRAME_FASTENING_CAUTION_CODE_TABLE);
    out->not_checked = frame_nailing_unchecked() | FRAME_BIT(FRAME_FASTENING_UNCHECKED_OTHER_WAY);
    FRAME_NAILING_FORGET(LEDGER_JOINT, &nailing, 1, 0, out->assumed);
    return FRAME_OK;
}

FRAME_IMPLEMENT(ledger_joint, compute);
