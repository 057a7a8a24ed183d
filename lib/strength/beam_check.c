/* A beam or header on a simple span: NDS 2018, allowable stress design. */
#include "strength/beam_loads.h"
#include "strength_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

FRAME_ALWAYS_INLINE frame_status check_loads(const frame_beam_check_in *in) {
    const int dead_psf = frame_given(in->dead_psf), live_psf = frame_given(in->live_psf),
              roof_psf = frame_given(in->roof_live_psf), snow_psf = frame_given(in->snow_psf);
    if (!dead_psf && !frame_given(in->dead_plf))
        return frame_lacks("dead_plf",
                           "the dead load, by the foot or (dead_psf) by the square foot; 0 if there is none");
    if (!live_psf && !roof_psf && !snow_psf && !frame_given(in->live_plf) && !frame_given(in->roof_live_plf) &&
        !frame_given(in->snow_plf))
        return frame_lacks("live_plf", "a live load, roof live load or snow; 0 if there is none");
    if ((dead_psf || live_psf || roof_psf || snow_psf) && !frame_given(in->spacing_in))
        return frame_lacks("spacing_in", "the width that the beam carries, with loads in psf");
    if (in->incised && in->live_duration == FRAME_DURATION_IMPACT) return frame_impact_refused("live_duration");
    return FRAME_OK;
}

FRAME_ALWAYS_INLINE frame_status check_edge(const frame_beam_check_in *in) {
    if (in->compression_edge == FRAME_EDGE_HELD)
        return frame_given(in->unbraced_length_in) ? frame_edge_conflict(in->unbraced_length_in) : FRAME_OK;
    if (frame_given(in->fb_psi) && !frame_given(in->e_min_psi))
        return frame_lacks("e_min_psi", "E_min, for a free compression edge");
    return FRAME_OK;
}

FRAME_ALWAYS_INLINE frame_status check_ends(const frame_beam_check_in *in, const frame_member *m) {
    if (frame_given(in->bearing_in) && in->bearing_in * 2 > in->span_in)
        return frame_bearing_too_long(in->bearing_in, in->span_in);
    if (!frame_given(in->notch_in)) return FRAME_OK;
    if (in->shear_at_depth) return frame_contradicts("notch_in", "shear_at_depth");
    return in->notch_in > m->depth / 4 ? frame_notch_too_deep(in->notch_in, m->depth) : FRAME_OK;
}

/* The specific gravity that its own weight goes by. */
FRAME_ALWAYS_INLINE frame_status find_gravity(const frame_beam_check_in *in, const frame_member *m, double *gravity) {
    const int is_given = frame_given(in->specific_gravity);
    *gravity = m->user ? in->specific_gravity : m->lumber.specific_gravity;
    if (is_given && !m->user) return frame_contradicts("specific_gravity", "species");
    if (in->self_weight && m->user && !is_given)
        return frame_lacks("specific_gravity", "the specific gravity, for the beam's own weight");
    return FRAME_OK;
}

FRAME_ALWAYS_INLINE frame_bending_ask ask_for(const frame_beam_check_in *in, double repetitive) {
    const int is_free = in->compression_edge == FRAME_EDGE_FREE;
    return (frame_bending_ask){.span = in->span_in,
                               .slope_cosine = 1,
                               .unbraced = is_free ? frame_or(in->unbraced_length_in, in->span_in) : 0,
                               .bearing = frame_or(in->bearing_in, 0),
                               .notch = frame_or(in->notch_in, 0),
                               .repetitive = repetitive,
                               .live_limit = in->deflection_limit,
                               .total_limit = in->total_deflection_limit,
                               .creep = frame_creep_factor(in->creep_factor, in->service),
                               .shear_reduced = in->shear_at_depth,
                               .lrfd = in->method == FRAME_METHOD_LRFD,
                               .edition = in->load_edition};
}

FRAME_ALWAYS_INLINE void give_ratios(const frame_bending *r, frame_beam_check_out *out) {
    out->passes = frame_bending_passes(r);
    out->governs = r->governs;
    out->combination = r->combination;
    out->shear_combination = r->shear_combination;
    out->ratio = r->ratio;
    out->bending_ratio = r->bending_ratio;
    out->shear_ratio = r->shear_ratio;
    out->bearing_ratio = r->bearing_ratio;
    out->deflection_ratio = r->deflection_ratio;
    out->deflection_live_ratio = r->live_ratio;
    out->deflection_total_ratio = r->total_ratio;
}

FRAME_ALWAYS_INLINE void give_stresses(const frame_bending *r, frame_beam_check_out *out) {
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
    out->deflection_live_limit_in = r->live_limit;
    out->deflection_total_limit_in = r->total_limit;
    out->bearing_needed_in = r->bearing_needed;
    out->section_modulus_in3 = r->section_modulus;
    out->inertia_in4 = r->inertia;
}

FRAME_ALWAYS_INLINE void give_factors(const frame_bending *r, const frame_bending_ask *ask, const frame_member *m,
                                      frame_beam_check_out *out) {
    out->load_duration_factor = ask->lrfd ? 1 : r->load_duration;
    out->shear_load_duration_factor = ask->lrfd ? 1 : r->shear_load_duration;
    out->time_effect_factor = ask->lrfd ? r->load_duration : 1;
    out->wet_service_factor = m->wet->fb;
    out->temperature_factor = m->temperature_stress;
    out->beam_stability_factor = r->stability;
    out->size_factor = m->size_factor;
    out->flat_use_factor = m->flat_use->fb;
    out->incising_factor = m->incised->fb;
    out->repetitive_member_factor = ask->repetitive;
    out->bearing_area_factor = 1;
    out->slenderness_ratio = r->slenderness;
}

FRAME_ALWAYS_INLINE void remark(const frame_beam_check_in *in, const frame_member *m, const frame_loads *loads,
                                frame_beam_check_out *out) {
    out->known = m->known > frame_duration_known() ? m->known : frame_duration_known();
    out->cautions = frame_member_cautions(m);
    out->not_checked = FRAME_BIT(FRAME_BENDING_UNCHECKED_SUPPORTS) | FRAME_BIT(FRAME_BENDING_UNCHECKED_CUTS) |
                       FRAME_BIT(FRAME_BENDING_UNCHECKED_CONCENTRATED) | FRAME_BIT(FRAME_BENDING_UNCHECKED_WIND) |
                       FRAME_BIT(FRAME_BENDING_UNCHECKED_ROLLING) | FRAME_BIT(FRAME_BENDING_UNCHECKED_SIDE_HUNG);
    if (in->method == FRAME_METHOD_LRFD || in->load_edition == FRAME_LOADS_ASCE_7_22) {
        out->known = FRAME_KNOWN_MEMORY;
        out->cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_MEMORY);
    }
    if (loads->snow > 0) {
        if (in->load_edition != FRAME_LOADS_ASCE_7_22) out->cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_SNOW_BASIS);
        out->not_checked |= FRAME_BIT(FRAME_BENDING_UNCHECKED_SNOW_FORMS);
    }
    if (in->compression_edge == FRAME_EDGE_HELD) out->cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_EDGE_HELD);
    if (frame_given(in->notch_in)) out->cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_NOTCH);
    if (!frame_given(in->bearing_in)) out->not_checked |= FRAME_BIT(FRAME_BENDING_UNCHECKED_BEARING);
    if (!in->self_weight) out->not_checked |= FRAME_BIT(FRAME_BENDING_UNCHECKED_SELF_WEIGHT);
}

FRAME_ALWAYS_INLINE frame_status prepare(const frame_beam_check_in *in, frame_member *m, double *gravity, double *C_r) {
    const frame_member_ask wanted = {
        in->size,        in->species,     in->grade,     in->plies,    in->turned, in->service,
        in->incised,     in->temperature, in->width_in,  in->depth_in, in->fb_psi, in->fv_psi,
        in->fc_perp_psi, in->e_psi,       in->e_min_psi, in->edition,  0};
    frame_status status = check_loads(in);
    if (!status) status = check_edge(in);
    if (!status) status = frame_member_find(&wanted, m);
    if (!status) status = check_ends(in, m);
    if (!status) status = find_gravity(in, m, gravity);
    return status ? status : frame_member_load_sharing(m, in->repetitive, in->spacing_in, C_r);
}

/* The body for both: with record NULL, known when it is compiled, nothing of the recording is left. */
FRAME_ALWAYS_INLINE frame_status check(const frame_beam_check_in *in, frame_beam_check_out *out,
                                       frame_working *record) {
    frame_member member;
    frame_bending result;
    frame_loads loads = {.anyway = 0};
    double gravity, C_r;
    frame_status status = prepare(in, &member, &gravity, &C_r);
    if (status) return status;
    const frame_bending_ask ask = ask_for(in, C_r);
    frame_bending_section(&member, &result, record);
    FRAME_HEADING(record, "Span and loads");
    FRAME_GIVEN(record, L, ask.span, "in", "span");
    FRAME_STEP(record, L_ft, L / 12, "ft", "span in feet", "");
    (void)L_ft;
    frame_beam_loads(in, gravity, result.area, &loads, record);
    if ((status = frame_bending_check(&member, &ask, &loads, &result, record))) return status;
    give_ratios(&result, out);
    give_stresses(&result, out);
    give_factors(&result, &ask, &member, out);
    out->dead_plf = loads.dead;
    out->transient_plf = result.transient;
    remark(in, &member, &loads, out);
    return FRAME_OK;
}

static FRAME_RECORDED frame_status recorded(const frame_beam_check_in *in, frame_beam_check_out *out,
                                            frame_working *record) {
    return check(in, out, record);
}

static frame_status compute(const frame_beam_check_in *in, frame_beam_check_out *out, frame_working *record) {
    return FRAME_RECORDING(record) ? recorded(in, out, record) : check(in, out, NULL);
}
FRAME_IMPLEMENT(beam_check, compute);
