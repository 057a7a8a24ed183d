/* What the member of member_check is made of: sawn lumber of the tables, a class of glulam, or values given. */
#include "base/error.h"
#include "base/number.h"
#include "strength/format.h"
#include "strength/member_beam.h"
#include "table_glulam_values.h"

#include "working/plain_math.h"

/* NDS Supplement table 5A (from memory): glulam over 16 % water in use. */
static const frame_stress_factors glulam_wet = {
    0.8, 0.8, 0.875, 0.53, 0.73, 0.833, 0.833, FRAME_KNOWN_MEMORY, "NDS Supplement table 5A (from memory)"};
static const frame_stress_factors glulam_dry = {1, 1, 1, 1, 1, 1, 1, FRAME_KNOWN_READ, "dry in use, NDS 2018 5.3.3"};
static const frame_stress_factors none = {1, 1, 1, 1, 1, 1, 1, FRAME_KNOWN_READ, "not for glulam"};

/* NDS 8.3.7 (from memory). */
#define COMPOSITE_REPETITIVE 1.04
/* NDS 5.3.6: the volume factor's exponent for glulam but of Southern Pine. */
#define GLULAM_EXPONENT 0.1

static frame_status glulam_refused(const char *field, const char *valid) {
    return frame_fail(FRAME_REFUSED, field, "", valid, "%s: refused for glued laminated timber; valid is %s", field,
                      valid);
}

static frame_status check_product(const frame_checked *c) {
    const frame_member_check_in *in = c->in;
    const int classed = in->glulam != FRAME_NOT_GIVEN_INT;
    if (classed && c->product != FRAME_PRODUCT_GLULAM) return frame_contradicts("glulam", "product");
    if (classed && frame_given(in->fb_psi)) return frame_contradicts("glulam", "fb_psi");
    if (classed && in->species != FRAME_NOT_GIVEN_INT) return frame_contradicts("glulam", "species");
    if (classed && in->size != FRAME_NOT_GIVEN_INT) return glulam_refused("size", "its true width_in and depth_in");
    if (c->product == FRAME_PRODUCT_SAWN)
        return frame_given(in->fb_negative_psi) ? frame_lacks("product", "\"glulam\", with fb_negative_psi") : FRAME_OK;
    if (in->turned == FRAME_TURNED_FLAT && c->product == FRAME_PRODUCT_GLULAM)
        return glulam_refused("turned", "on edge, laminations lying flat");
    if (c->product == FRAME_PRODUCT_GLULAM && in->repetitive)
        return glulam_refused("repetitive", "no (NDS table 5.3.1 has no C_r)");
    if (!classed && !frame_given(in->fb_psi))
        return c->product == FRAME_PRODUCT_GLULAM ? frame_lacks("glulam", "a class, or design values from fb_psi on")
                                                  : frame_lacks("fb_psi", "the maker's design values");
    return FRAME_OK;
}

static frame_member_ask ask_of(const frame_checked *c) {
    const frame_member_check_in *in = c->in;
    return (frame_member_ask){in->size,        in->species,     in->grade,     in->plies,    in->turned, in->service,
                              in->incised,     in->temperature, in->width_in,  in->depth_in, in->fb_psi, in->fv_psi,
                              in->fc_perp_psi, in->e_psi,       in->e_min_psi, in->edition,  0};
}

static frame_status find_glulam(frame_checked *c) {
    const frame_glulam_values_row *row = &frame_glulam_values_table[c->in->glulam - 1];
    frame_member_ask ask = ask_of(c);
    ask.fb_psi = row->fb_psi, ask.fv_psi = row->fv_psi, ask.fc_perp_psi = row->fc_perp_psi;
    ask.e_psi = row->e_psi, ask.e_min_psi = row->e_min_y_psi;
    const frame_status status = frame_member_find(&ask, &c->m);
    if (status) return status;
    c->m.user = 0;
    c->m.wet = c->in->service == FRAME_SERVICE_WET ? &glulam_wet : &glulam_dry;
    c->m.incised = c->m.flat_use = &none;
    c->m.lumber.source = row->source;
    c->m.lumber.known = row->known;
    c->m.known = row->known > c->m.wet->known ? row->known : c->m.wet->known;
    if (c->m.edition != FRAME_NDS_2018) c->m.known = FRAME_KNOWN_MEMORY;
    c->gravity = row->specific_gravity;
    c->fb_negative = row->fb_negative_psi;
    c->exponent = row->exponent;
    return FRAME_OK;
}

static frame_status find_any(frame_checked *c) {
    const frame_member_check_in *in = c->in;
    const frame_member_ask ask = ask_of(c);
    const frame_status status = frame_member_find(&ask, &c->m);
    if (status) return status;
    c->gravity = c->m.user ? in->specific_gravity : c->m.lumber.specific_gravity;
    c->fb_negative = frame_or(in->fb_negative_psi, c->m.lumber.fb_psi);
    c->exponent = c->product == FRAME_PRODUCT_GLULAM ? frame_or(in->volume_exponent, GLULAM_EXPONENT)
                                                     : frame_or(in->volume_exponent, 0);
    return FRAME_OK;
}

static frame_status check_rest(const frame_checked *c) {
    const frame_member_check_in *in = c->in;
    const int is_free = in->upper_edge == FRAME_EDGE_FREE || in->lower_edge == FRAME_EDGE_FREE;
    if (c->m.user && is_free && c->m.depth > c->m.breadth && !frame_given(in->e_min_psi))
        return frame_lacks("e_min_psi", "E_min, for a free compression edge");
    if (frame_given(in->specific_gravity) && !c->m.user) return frame_contradicts("specific_gravity", "species");
    if (in->self_weight && !frame_given(c->gravity))
        return frame_lacks("specific_gravity", "the specific gravity, for the member's own weight");
    if (in->volume_exponent != FRAME_NOT_GIVEN && c->product == FRAME_PRODUCT_SAWN)
        return frame_lacks("product", "\"glulam\" or \"structural composite lumber\", with volume_exponent");
    if (in->incised && in->live_duration == FRAME_DURATION_IMPACT) return frame_impact_refused("live_duration");
    return frame_checked_curve_given(c);
}

frame_status frame_checked_material(frame_checked *c) {
    const frame_member_check_in *in = c->in;
    const int classed = in->glulam != FRAME_NOT_GIVEN_INT;
    c->product = frame_or_int(in->product, classed ? FRAME_PRODUCT_GLULAM : FRAME_PRODUCT_SAWN);
    frame_status status = check_product(c);
    if (!status) status = classed ? find_glulam(c) : find_any(c);
    if (!status) status = check_rest(c);
    if (status) return status;
    if (c->product == FRAME_PRODUCT_SAWN)
        return frame_member_load_sharing(&c->m, in->repetitive, in->spacing_in, &c->repetitive);
    c->repetitive = 1;
    if (!in->repetitive) return FRAME_OK;
    status = frame_member_load_sharing(&c->m, in->repetitive, in->spacing_in, &c->repetitive);
    c->repetitive = COMPOSITE_REPETITIVE;
    return status;
}

void frame_checked_section(frame_checked *c) {
    frame_bending_section(&c->m, &c->found, c->record);
    c->E_min_prime =
        frame_bending_stiffness_by(&c->m, frame_given(c->m.lumber.e_min_psi), c->lrfd, &c->found, c->record);
}
