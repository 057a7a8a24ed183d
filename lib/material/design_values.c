/* Reference design values for a species, grade and size, as the supplement's tables give them. */
#include "material/lumber.h"
#include "material_facts.h"
#include "working/calculation.h"

static void give(const frame_lumber *lumber, frame_design_values_out *out) {
    out->known = lumber->known;
    out->table_id = lumber->table_id;
    out->fb_psi = lumber->fb_psi;
    out->ft_psi = lumber->ft_psi;
    out->fv_psi = lumber->fv_psi;
    out->fc_perp_psi = lumber->fc_perp_psi;
    out->fc_psi = lumber->fc_psi;
    out->e_psi = lumber->e_psi;
    out->e_min_psi = lumber->e_min_psi;
    out->specific_gravity = lumber->specific_gravity;
    out->size_factor_bending = lumber->size_factor_fb;
    out->size_factor_tension = lumber->size_factor_ft;
    out->size_factor_compression = lumber->size_factor_fc;
    out->source = lumber->source;
}

static void warn(const frame_lumber *lumber, frame_design_values_out *out) {
    const double gravity = frame_species_gravity(lumber->species, NULL);
    out->not_checked |= FRAME_BIT(FRAME_DESIGN_UNCHECKED_FACTORS);
    out->cautions |= FRAME_BIT(FRAME_DESIGN_CAUTION_STAMP);
    if (lumber->doubtful) out->cautions |= FRAME_BIT(FRAME_DESIGN_CAUTION_DOUBTFUL);
    if (lumber->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_DESIGN_CAUTION_MEMORY);
    if (lumber->superseded) out->cautions |= FRAME_BIT(FRAME_DESIGN_CAUTION_SUPERSEDED);
    if (gravity != lumber->specific_gravity) out->cautions |= FRAME_BIT(FRAME_DESIGN_CAUTION_GRAVITY);
}

static void record(const frame_lumber *lumber, frame_working *w) {
    FRAME_HEADING(w, "Reference design values");
    FRAME_TABLE(w, F_b, lumber->fb_psi, "psi", "bending", lumber->source);
    FRAME_TABLE(w, F_t, lumber->ft_psi, "psi", "tension along the grain", lumber->source);
    FRAME_TABLE(w, F_v, lumber->fv_psi, "psi", "shear along the grain", lumber->source);
    FRAME_TABLE(w, F_c_perp, lumber->fc_perp_psi, "psi", "compression across the grain", lumber->source);
    FRAME_TABLE(w, F_c, lumber->fc_psi, "psi", "compression along the grain", lumber->source);
    FRAME_TABLE(w, E, lumber->e_psi, "psi", "modulus of elasticity", lumber->source);
    FRAME_TABLE(w, E_min, lumber->e_min_psi, "psi", "modulus of elasticity for stability", lumber->source);
    FRAME_TABLE(w, G, lumber->specific_gravity, "", "specific gravity", lumber->source);
    FRAME_TABLE(w, C_F_b, lumber->size_factor_fb, "", "size factor on bending", lumber->size_source);
    FRAME_TABLE(w, C_F_t, lumber->size_factor_ft, "", "size factor on tension", lumber->size_source);
    FRAME_TABLE(w, C_F_c, lumber->size_factor_fc, "", "size factor on compression along the grain",
                lumber->size_source);
    (void)F_b, (void)F_t, (void)F_v, (void)F_c_perp, (void)F_c, (void)E, (void)E_min, (void)G;
    (void)C_F_b, (void)C_F_t, (void)C_F_c;
}

static frame_status compute(const frame_design_values_in *in, frame_design_values_out *out, frame_working *w) {
    frame_lumber lumber;
    const frame_status status = frame_lumber_find(in->species, in->grade, in->size, &lumber);
    if (status) return status;
    give(&lumber, out);
    warn(&lumber, out);
    if (w) record(&lumber, w);
    return FRAME_OK;
}

FRAME_IMPLEMENT(design_values, compute);
