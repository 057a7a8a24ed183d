/* A joist or rafter on a simple span: NDS 2018, allowable stress design. */
#include "strength/joist_body.h"
#include "strength_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

FRAME_ALWAYS_INLINE frame_status check_given(const frame_joist_check_in *given) {
    if (given->live_psf == FRAME_NOT_GIVEN && given->snow_psf == FRAME_NOT_GIVEN)
        return frame_lacks("live_psf", "a live load or snow, 0 if there is none");
    if (given->slope != FRAME_NOT_GIVEN && given->use != FRAME_USE_RAFTER) return frame_slope_refused(given->slope);
    if (given->bearing_in * 2 > given->span_in) return frame_bearing_too_long(given->bearing_in, given->span_in);
    if (given->unbraced_length_in != FRAME_NOT_GIVEN && given->compression_edge == FRAME_EDGE_HELD)
        return frame_edge_conflict(given->unbraced_length_in);
    if (given->compression_edge == FRAME_EDGE_FREE && given->fb_psi != FRAME_NOT_GIVEN &&
        given->e_min_psi == FRAME_NOT_GIVEN)

        return frame_lacks("e_min_psi", "E_min, for a free compression edge");
    return FRAME_OK;
}

FRAME_ALWAYS_INLINE void give(const frame_bending *r, const frame_bending_ask *ask, const frame_member *m,
                              frame_joist_check_out *out) {
    out->passes = frame_bending_passes(r);
    out->governs = r->governs;
    out->combination = r->combination;
    out->ratio = r->ratio;
    out->bending_ratio = r->bending_ratio;
    out->shear_ratio = r->shear_ratio;
    out->bearing_ratio = r->bearing_ratio;
    out->deflection_ratio = r->deflection_ratio;
    out->deflection_live_ratio = r->live_ratio;
    out->deflection_total_ratio = r->total_ratio;
    out->moment_lb_in = r->moment;
    out->shear_lb = r->shear;
    out->reaction_lb = r->reaction;
    out->fb_actual_psi = r->fb;
    out->fb_adjusted_psi = r->fb_adjusted;
    out->fv_actual_psi = r->fv;
    out->fv_adjusted_psi = r->fv_adjusted;
    out->fc_perp_actual_psi = r->fc_perp;
    out->fc_perp_adjusted_psi = r->fc_perp_adjusted;
    out->e_adjusted_psi = r->e_adjusted;
    out->deflection_live_in = r->deflection_live;
    out->deflection_total_in = r->deflection_total;
    out->bearing_needed_in = r->bearing_needed;
    out->load_duration_factor = ask->lrfd ? 1 : r->load_duration;
    out->time_effect_factor = ask->lrfd ? r->load_duration : 1;
    out->wet_service_factor = m->wet->fb;
    out->temperature_factor = m->temperature_stress;
    out->beam_stability_factor = r->stability;
    out->size_factor = m->size_factor;
    out->incising_factor = m->incised->fb;
    out->repetitive_member_factor = ask->repetitive;
    out->slenderness_ratio = r->slenderness;
}

FRAME_ALWAYS_INLINE void remark(const frame_joist_check_in *in, const frame_joist_defaults *by_use,
                                const frame_member *m, int plain, frame_joist_check_out *out) {
    out->known = m->known > frame_duration_known() ? m->known : frame_duration_known();
    if (!plain) out->known = FRAME_KNOWN_MEMORY;
    out->cautions = frame_joist_cautions(m, in->use, in->snow_psf, in->load_edition);
    if (!plain) out->cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_MEMORY);
    out->not_checked = frame_joist_not_checked(in->use, in->snow_psf, in->slope);
    if (!(by_use->total_limit > 0)) out->not_checked |= FRAME_BIT(FRAME_BENDING_UNCHECKED_TOTAL);
}

/* Whether the check is of the usual kind, for which there is a quicker way to the same result. */
FRAME_ALWAYS_INLINE int is_usual(const frame_joist_check_in *in, const frame_joist_defaults *by_use) {
    return by_use->service == FRAME_SERVICE_DRY && !by_use->incised && in->temperature == FRAME_TEMPERATURE_100F &&
           in->compression_edge == FRAME_EDGE_HELD && in->repetitive == FRAME_NOT_GIVEN_INT &&
           !frame_given(in->slope) && in->edition == FRAME_NDS_2018 && in->method == FRAME_METHOD_ASD &&
           in->load_edition == FRAME_LOADS_ASCE_7_16 &&
           frame_joist_is_plain(in->width_in, in->depth_in, in->fb_psi, in->fv_psi, in->fc_perp_psi, in->e_psi,
                                in->e_min_psi);
}

FRAME_ALWAYS_INLINE frame_status find_member(const frame_joist_check_in *in, const frame_joist_defaults *by_use,
                                             frame_member *m, double *C_r) {
    const frame_status status = FRAME_JOIST_MEMBER(in, *by_use, in->e_min_psi, m);
    return status ? status : frame_member_load_sharing(m, in->repetitive, in->spacing_in, C_r);
}

/* The body of all: record and usual are known when it is compiled, so that with record NULL nothing of the recording is
 * left, and of the usual check no factor that is 1. */
FRAME_ALWAYS_INLINE frame_status check(const frame_joist_check_in *in, const frame_joist_defaults *by_use,
                                       frame_member *m, double C_r, frame_joist_check_out *out,
                                       frame_joist_plainness how, frame_working *record) {
    frame_bending_ask ask = {.repetitive = C_r};
    frame_bending result;
    frame_bending_section(m, &result, record);
    const frame_status status = frame_joist_body(in, by_use, m, &ask, &result, how, record);
    if (status) return status;
    give(&result, &ask, m, out);
    remark(in, by_use, m, !ask.lrfd && ask.edition == FRAME_LOADS_ASCE_7_16, out);
    return FRAME_OK;
}

static FRAME_RECORDED frame_status recorded(const frame_joist_check_in *in, const frame_joist_defaults *by_use,
                                            frame_joist_check_out *out, frame_working *record) {
    frame_member member;
    double C_r;
    const frame_status status = find_member(in, by_use, &member, &C_r);
    return status ? status : check(in, by_use, &member, C_r, out, FRAME_JOIST_ANY, record);
}

static FRAME_RECORD_COLD frame_status unusual(const frame_joist_check_in *in, const frame_joist_defaults *by_use,
                                              frame_joist_check_out *out) {
    frame_member member;
    double C_r;
    const frame_status status = find_member(in, by_use, &member, &C_r);
    return status ? status : check(in, by_use, &member, C_r, out, FRAME_JOIST_ANY, NULL);
}

/* The bit of a default that was used. */
#define BIT_OF(FIELD) (UINT64_C(1) << FRAME_ASSUMED_JOIST_CHECK_IN_##FIELD)
#define ASSUMED(in, field, FIELD) ((in)->field == FRAME_NOT_GIVEN_INT ? BIT_OF(FIELD) : 0)
#define ASSUMED_NUMBER(in, field, FIELD) (frame_given((in)->field) ? 0 : BIT_OF(FIELD))

FRAME_ALWAYS_INLINE uint64_t assumed_of(const frame_joist_check_in *in) {
    return BIT_OF(SERVICE) | BIT_OF(INCISED) | BIT_OF(REPETITIVE) | ASSUMED(in, plies, PLIES) |
           ASSUMED(in, compression_edge, COMPRESSION_EDGE) | ASSUMED(in, temperature, TEMPERATURE) |
           ASSUMED(in, method, METHOD) | ASSUMED(in, load_edition, LOAD_EDITION) | ASSUMED(in, edition, EDITION) |
           ASSUMED_NUMBER(in, spacing_in, SPACING_IN) | ASSUMED_NUMBER(in, dead_psf, DEAD_PSF) |
           ASSUMED_NUMBER(in, bearing_in, BEARING_IN) | ASSUMED_NUMBER(in, deflection_limit, DEFLECTION_LIMIT) |
           ASSUMED_NUMBER(in, total_deflection_limit, TOTAL_DEFLECTION_LIMIT) |
           ASSUMED_NUMBER(in, creep_factor, CREEP_FACTOR);
}

/* The check that is asked most, straight from the caller's struct: what it looks at, with its defaults, and nothing
 * else. */
static int usual_way(const frame_joist_check_in *in, frame_joist_check_out *out) {
    frame_joist_check_in read;
    frame_joist_defaults by_use;
    frame_member member;
    if (!frame_joist_in_order(in)) return 0;
    frame_joist_read_usual(in, &read);
    if (read.bearing_in * 2 > read.span_in) return 0;
    if (!frame_member_quick(in->size, in->species, in->grade, 1, &member)) return 0;
    FRAME_JOIST_DEFAULTS(&read, read.total_deflection_limit, &by_use);
    check(&read, &by_use, &member, frame_member_quick_sharing(1, read.spacing_in), out, FRAME_JOIST_USUAL, NULL);
    out->assumed = assumed_of(in);
    return 1;
}

static frame_status compute(const frame_joist_check_in *in, frame_joist_check_out *out, frame_working *record) {
    frame_joist_defaults by_use;
    frame_member member;
    const frame_status status = check_given(in);
    if (status) return status;
    FRAME_JOIST_DEFAULTS(in, in->total_deflection_limit, &by_use);
    if (FRAME_RECORDING(record)) return recorded(in, &by_use, out, record);
    if (!is_usual(in, &by_use) || !frame_member_quick(in->size, in->species, in->grade, in->plies, &member))
        return unusual(in, &by_use, out);
    return check(in, &by_use, &member, frame_member_quick_sharing(in->plies, in->spacing_in), out, FRAME_JOIST_USUAL,
                 NULL);
}
FRAME_IMPLEMENT_USUAL(joist_check, compute, usual_way);
