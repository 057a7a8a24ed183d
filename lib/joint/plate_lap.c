/* The lap of a double top plate. */
#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

static frame_status compute(const frame_plate_lap_in *in, frame_plate_lap_out *out, frame_working *w) {
    frame_nailing nailing = FRAME_NAILING_OF(in);
    frame_dowel_lateral_out value;
    nailing.side_angle_deg = nailing.main_angle_deg = 0;
    const frame_status status = frame_nailing_lateral(&nailing, &value, w);
    if (status) return status;
    const int counted = in->count != FRAME_NOT_GIVEN_INT;
    FRAME_HEADING(w, "The lap");
    FRAME_TABLE(w, Z_prime, value.adjusted_lb, "lb", "adjusted lateral value of one", "above");
    FRAME_GIVEN(w, T, in->tension_lb, "lb", "force along the plate");
    FRAME_STEP(w, n_needed, ceil(T / Z_prime - 1e-9), "", "nails needed on each side of the joint", "NDS 2018 11.2.2");
    out->needed_count = frame_count_for(n_needed);
    FRAME_GIVEN(w, n, counted ? in->count : out->needed_count, "", "nails on each side of the joint");
    FRAME_STEP(w, ratio, T / (n * Z_prime), "", "force over capacity", "at most 1");
    out->each_lb = Z_prime;
    out->ratio = ratio;
    if (counted) {
        out->capacity_lb = n * Z_prime;
        out->passes = frame_within(ratio);
    }
    out->known = value.known;
    out->cautions = frame_nailing_cautions(&nailing, &value) | FRAME_BIT(FRAME_FASTENING_CAUTION_CODE_TABLE);
    out->not_checked = frame_nailing_unchecked();
    FRAME_NAILING_FORGET(PLATE_LAP, &nailing, 1, 0, out->assumed);
    return FRAME_OK;
}

FRAME_IMPLEMENT(plate_lap, compute);
