/* The value of one fastener in a frame's joint. */
#include "joint/nailing.h"

#include <math.h>

#include "base/error.h"
#include "base/facts.h"
#include "working/record.h"

static frame_status kind_needed(const frame_nailing *nailing) {
    if (nailing->kind != FRAME_NOT_GIVEN_INT) return FRAME_OK;
    return frame_fail(FRAME_REQUIRED, "kind", "", "a kind of fastener", "kind: not given; the nails or screws need it");
}

frame_status frame_nailing_lateral(const frame_nailing *nailing, frame_dowel_lateral_out *value, frame_working *w) {
    frame_dowel_lateral_in in;
    frame_status status = kind_needed(nailing);
    if (status) return status;
    frame_dowel_lateral_in_init(&in);
    in.kind = nailing->kind;
    in.method = nailing->method;
    in.side_material = nailing->steel_side ? FRAME_JOINT_STEEL : FRAME_JOINT_WOOD;
    in.side_species = nailing->side_species;
    in.main_species = nailing->main_species;
    in.service = nailing->service;
    in.made = nailing->made;
    in.size = nailing->size;
    in.diameter_in = nailing->diameter_in;
    in.length_in = nailing->length_in;
    in.root_diameter_in = nailing->root_diameter_in;
    in.bending_yield_psi = nailing->bending_yield_psi;
    in.side_thickness_in = nailing->side_thickness_in;
    in.main_thickness_in = nailing->main_thickness_in;
    in.side_specific_gravity = nailing->side_specific_gravity;
    in.main_specific_gravity = nailing->main_specific_gravity;
    in.load_duration_factor = nailing->method == FRAME_METHOD_LRFD ? FRAME_NOT_GIVEN : nailing->load_duration_factor;
    in.time_effect_factor = nailing->time_effect_factor;
    in.toe_nail = nailing->toe_nail;
    in.end_grain = nailing->end_grain;
    in.gap_in = nailing->gap_in;
    in.side_angle_deg = nailing->steel_side ? FRAME_NOT_GIVEN : nailing->side_angle_deg;
    in.main_angle_deg = nailing->main_angle_deg;
    FRAME_HEADING(w, "One fastener across the joint");
    FRAME_ENTER(w);
    status = frame_dowel_lateral(&in, value, w);
    FRAME_LEAVE(w);
    return status;
}

frame_status frame_nailing_withdrawal(const frame_nailing *nailing, double *value_lb, frame_known *known,
                                      frame_working *w) {
    frame_dowel_withdrawal_in in;
    frame_dowel_withdrawal_out out;
    *value_lb = 0;
    *known = FRAME_KNOWN_READ;
    if (nailing->end_grain) return FRAME_OK;
    frame_dowel_withdrawal_in_init(&in);
    in.kind = nailing->kind;
    in.method = nailing->method;
    in.species = nailing->main_species;
    in.specific_gravity = nailing->main_specific_gravity;
    in.service = nailing->service;
    in.made = nailing->made;
    in.size = nailing->size;
    in.diameter_in = nailing->diameter_in;
    in.length_in = nailing->length_in;
    in.side_thickness_in = nailing->toe_nail ? FRAME_NOT_GIVEN : nailing->side_thickness_in;
    in.main_thickness_in = nailing->main_thickness_in;
    in.load_duration_factor = nailing->method == FRAME_METHOD_LRFD ? FRAME_NOT_GIVEN : nailing->load_duration_factor;
    in.time_effect_factor = nailing->time_effect_factor;
    in.toe_nail = nailing->toe_nail;
    FRAME_HEADING(w, "One fastener along itself");
    FRAME_ENTER(w);
    const frame_status status = frame_dowel_withdrawal(&in, &out, w);
    FRAME_LEAVE(w);
    if (status) return status;
    *value_lb = out.adjusted_lb;
    *known = out.known;
    return FRAME_OK;
}

uint64_t frame_nailing_cautions(const frame_nailing *nailing, const frame_dowel_lateral_out *value) {
    uint64_t cautions = 0;
    if (value->known == FRAME_KNOWN_MEMORY) cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_MEMORY);
    if (nailing->toe_nail) cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_TOE_NAIL);
    if (nailing->gap_in > 0) cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_GAP);
    if (nailing->method == FRAME_METHOD_LRFD) cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_LRFD);
    if (value->hold == FRAME_HOLD_BY_EQUATIONS || value->hold == FRAME_HOLD_BY_TABLE)
        cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_SHORT);
    if (FRAME_HAS(value->cautions, FRAME_DOWEL_LATERAL_CAUTION_GEOMETRY))
        cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_GEOMETRY) | FRAME_BIT(FRAME_FASTENING_CAUTION_GROUP);
    return cautions;
}

uint64_t frame_nailing_unchecked(void) {
    return FRAME_BIT(FRAME_FASTENING_UNCHECKED_MEMBER) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPLITTING) |
           FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPACING) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_CORROSION) |
           FRAME_BIT(FRAME_FASTENING_UNCHECKED_PATH);
}

uint64_t frame_nailing_unused(const frame_nailing *nailing, int used, uint64_t root, uint64_t side, uint64_t driven) {
    if (!used) return root | side | driven;
    return (frame_dowel_is_threaded(nailing->kind) ? 0 : root) | (nailing->toe_nail ? 0 : side);
}

int32_t frame_count_for(double shares) {
    const double count = ceil(shares - 1e-9);
    if (!(count < INT32_MAX)) return INT32_MAX;
    return count < 1 ? 1 : (int32_t)count;
}
