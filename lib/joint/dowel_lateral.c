/* The lateral design value of one nail, screw or bolt. */
#include "joint/bearing.h"
#include "joint/fastener.h"
#include "joint/lateral_factors.h"
#include "joint/lateral_usual.h"
#include "joint/reach.h"
#include "joint/yield.h"
#include "joint_facts.h"
#include "material/edition.h"
#include "working/calculation.h"

/* What the steps hand on to one another. */
typedef struct lateral {
    frame_fastener fastener;
    frame_reach reach;
    frame_bearing main, side;
    frame_yield yield;
    frame_yield_values values;
    int root; /* the root diameter bears */
} lateral;

static void also(frame_dowel_lateral_out *out, int bit) {
    out->cautions |= FRAME_BIT(bit);
}

/* The diameter that bears, NDS 12.3.7: the root where threads lie in the plane. */
static frame_status diameter(const frame_dowel_lateral_in *in, lateral *l, frame_working *w) {
    const int threaded = frame_dowel_is_threaded(in->kind);
    l->root =
        in->threads_in_plane != FRAME_NOT_GIVEN_INT ? in->threads_in_plane : threaded && in->kind != FRAME_DOWEL_BOLT;
    FRAME_TABLE(w, D_nom, l->fastener.nominal_in, "in", "nominal diameter", l->fastener.source);
    if (!l->root) {
        FRAME_STEP(w, D, D_nom, "in", "diameter that bears: the shank", "NDS 2018 12.3.7");
        l->yield.D = D;
        return FRAME_OK;
    }
    const double root = in->root_diameter_in != FRAME_NOT_GIVEN ? in->root_diameter_in : l->fastener.root_in;
    if (root == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "root_diameter_in", "", "a diameter in inches",
                          "root_diameter_in: not given, and no table has it for this diameter");
    if (root > D_nom)
        return frame_fail_number(FRAME_IMPOSSIBLE, "root_diameter_in", root, "a diameter of at most the nominal one");
    FRAME_TABLE(w, D_r, root, "in", "root diameter",
                in->root_diameter_in != FRAME_NOT_GIVEN ? "given" : l->fastener.source);
    FRAME_STEP(w, D, D_r, "in", "diameter that bears: threads lie in the plane", "NDS 2018 12.3.7");
    l->yield.D = D;
    return FRAME_OK;
}

static frame_status steel(const frame_dowel_lateral_in *in, lateral *l, frame_dowel_lateral_out *out,
                          frame_working *w) {
    FRAME_HEADING(w, "Fastener");
    frame_status status = frame_fastener_find(in->kind, in->size, in->diameter_in, &l->fastener);
    if (!status) status = diameter(in, l, w);
    if (status) return status;
    out->known = frame_known_worse(out->known, l->fastener.known);
    if (l->yield.D > 1)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "diameter_in", l->fastener.nominal_in,
                                 "diameters that bear of at most 1 in (NDS table 12.3.1B)");
    if (in->bending_yield_psi != FRAME_NOT_GIVEN) {
        FRAME_GIVEN(w, F_yb, in->bending_yield_psi, "psi", "bending yield strength");
        l->yield.F_yb = F_yb;
        out->known = frame_known_worse(out->known, FRAME_KNOWN_USER);
        return FRAME_OK;
    }
    double yield_psi;
    const char *source;
    frame_known known;
    status = frame_fastener_yield(in->kind, l->fastener.nominal_in, &yield_psi, &known, &source);
    if (status) return status;
    FRAME_TABLE(w, F_yb, yield_psi, "psi", "bending yield strength", source);
    l->yield.F_yb = F_yb;
    out->known = frame_known_worse(out->known, known);
    return FRAME_OK;
}

static frame_status bearings(const frame_dowel_lateral_in *in, lateral *l, frame_dowel_lateral_out *out,
                             frame_working *w) {
    const frame_joint_member main = {"main_",
                                     in->main_material,
                                     in->main_species,
                                     in->main_specific_gravity,
                                     in->main_bearing_psi,
                                     in->end_grain ? 90 : in->main_angle_deg,
                                     in->main_thickness_in};
    const frame_joint_member side = {"side_",
                                     in->side_material,
                                     in->side_species,
                                     in->side_specific_gravity,
                                     in->side_bearing_psi,
                                     in->side_angle_deg,
                                     in->side_thickness_in};
    FRAME_HEADING(w, "Dowel bearing strength of the main member");
    FRAME_ENTER(w);
    frame_status status = frame_joint_bearing(&main, l->fastener.nominal_in, in->bearing_rounding, &l->main, w);
    FRAME_LEAVE(w);
    if (status) return status;
    FRAME_TABLE(w, F_em, l->main.strength_psi, "psi", "dowel bearing strength of the main member", "above");
    FRAME_HEADING(w, "Dowel bearing strength of the side member");
    FRAME_ENTER(w);
    status = frame_joint_bearing(&side, l->fastener.nominal_in, in->bearing_rounding, &l->side, w);
    FRAME_LEAVE(w);
    if (status) return status;
    FRAME_TABLE(w, F_es, l->side.strength_psi, "psi", "dowel bearing strength of the side member", "above");
    l->yield.F_em = F_em;
    l->yield.F_es = F_es;
    out->known = frame_known_worse(out->known, frame_known_worse(l->main.known, l->side.known));
    return FRAME_OK;
}

static void reduction(lateral *l, frame_working *w) {
    const double largest = l->main.angle_deg > l->side.angle_deg ? l->main.angle_deg : l->side.angle_deg;
    if (l->fastener.nominal_in >= 0.25) {
        FRAME_TABLE(w, theta, largest, "deg", "largest angle of the load to the grain of a member", "above");
        frame_yield_reduction(&l->yield, l->fastener.nominal_in, theta, w);
    } else {
        frame_yield_reduction(&l->yield, l->fastener.nominal_in, 0, w);
    }
}

static void modes(const frame_dowel_lateral_in *in, lateral *l, frame_working *w) {
    l->yield.l_m = l->reach.l_m;
    l->yield.l_s = l->reach.l_s;
    l->yield.g = in->gap_in;
    if (in->gap_in > 0)
        frame_yield_apart(&l->yield, in->shear_planes, &l->values, w);
    else if (in->shear_planes == 1)
        frame_yield_single(&l->yield, &l->values, w);
    else
        frame_yield_double(&l->yield, &l->values, w);
}

/* The least of the modes, times the table route's factor: for the reader, the number is found already. */
static void record_reference(const frame_dowel_lateral_in *in, const lateral *l, frame_working *w) {
    const double Z_Im = l->values.im, Z_Is = l->values.is, Z_II = l->values.ii, Z_IIIm = l->values.iiim,
                 Z_IIIs = l->values.iiis, Z_IV = l->values.iv, r_p = l->reach.factor;
    if (in->short_penetration == FRAME_SHORT_BY_TABLE && !frame_dowel_is_bolt(in->kind)) {
        FRAME_STEP(w, Z, r_p * fmin(fmin(fmin(Z_Im, Z_Is), fmin(Z_II, Z_IIIm)), fmin(Z_IIIs, Z_IV)), "lb",
                   "reference value: the least, times the penetration factor", "NDS 2018 12.3.1");
    } else if (in->shear_planes == 1) {
        FRAME_STEP(w, Z, fmin(fmin(fmin(Z_Im, Z_Is), fmin(Z_II, Z_IIIm)), fmin(Z_IIIs, Z_IV)), "lb",
                   "reference value: the least", "NDS 2018 12.3.1");
    } else {
        FRAME_STEP(w, Z, fmin(fmin(Z_Im, Z_Is), fmin(Z_IIIs, Z_IV)), "lb", "reference value: the least",
                   "NDS 2018 12.3.1");
    }
}

static void cautions(const frame_dowel_lateral_in *in, const lateral *l, frame_dowel_lateral_out *out) {
    const int large = l->fastener.nominal_in >= 0.25, bolt = in->kind == FRAME_DOWEL_BOLT;
    out->not_checked = FRAME_BIT(FRAME_DOWEL_LATERAL_UNCHECKED_CORROSION + 1) - 1;
    if (!bolt) also(out, FRAME_DOWEL_LATERAL_CAUTION_REACH);
    if (l->reach.hold == FRAME_HOLD_BY_EQUATIONS || l->reach.hold == FRAME_HOLD_BY_TABLE)
        also(out, FRAME_DOWEL_LATERAL_CAUTION_SHORT);
    if (l->reach.point_out > 0) also(out, FRAME_DOWEL_LATERAL_CAUTION_POINT_OUT);
    if (large) {
        also(out, FRAME_DOWEL_LATERAL_CAUTION_GROUP);
        also(out, FRAME_DOWEL_LATERAL_CAUTION_GEOMETRY);
    }
    if (frame_dowel_is_threaded(in->kind) && !l->root) also(out, FRAME_DOWEL_LATERAL_CAUTION_THREADS);
    if (in->made == FRAME_SERVICE_WET && in->service == FRAME_SERVICE_DRY && large)
        also(out, FRAME_DOWEL_LATERAL_CAUTION_SHRINKAGE);
    if (in->gap_in > 0) also(out, FRAME_DOWEL_LATERAL_CAUTION_GAP);
    if (in->kind == FRAME_DOWEL_OTHER_DRIVEN) also(out, FRAME_DOWEL_LATERAL_CAUTION_REPORT);
    if (in->toe_nail) also(out, FRAME_DOWEL_LATERAL_CAUTION_TOE_NAIL);
    if (in->clinched) also(out, FRAME_DOWEL_LATERAL_CAUTION_CLINCHED);
    if (in->method == FRAME_METHOD_LRFD) also(out, FRAME_DOWEL_LATERAL_CAUTION_LRFD);
    if (in->kind == FRAME_DOWEL_DRIFT_PIN) also(out, FRAME_DOWEL_LATERAL_CAUTION_DRIFT_PIN);
    if (out->known == FRAME_KNOWN_MEMORY) also(out, FRAME_DOWEL_LATERAL_CAUTION_MEMORY);
}

/* Rules recalled without a text: other editions, toe-nails, clinched points, the tip of short fasteners, gaps, pins,
 * LRFD. */
static int by_memory(const frame_dowel_lateral_in *in, const lateral *l) {
    return in->edition != FRAME_NDS_2018 || in->toe_nail || in->clinched || in->gap_in > 0 ||
           in->method == FRAME_METHOD_LRFD || in->kind == FRAME_DOWEL_DRIFT_PIN ||
           (l->reach.hold == FRAME_HOLD_BY_EQUATIONS && in->kind != FRAME_DOWEL_BOLT);
}

/* The reduction term of the mode that governs. */
static double governing_reduction(const lateral *l) {
    if (l->values.mode <= FRAME_MODE_IS) return l->yield.R_d_I;
    return l->values.mode == FRAME_MODE_II ? l->yield.R_d_II : l->yield.R_d_III;
}

static void give(const lateral *l, frame_dowel_lateral_out *out) {
    out->yield_lb = out->z_lb * governing_reduction(l);
    out->mode = l->values.mode;
    out->hold = l->reach.hold;
    out->z_im_lb = l->values.im;
    out->z_is_lb = l->values.is;
    out->z_ii_lb = l->values.ii;
    out->z_iiim_lb = l->values.iiim;
    out->z_iiis_lb = l->values.iiis;
    out->z_iv_lb = l->values.iv;
    out->reduction_i = l->yield.R_d_I;
    out->reduction_ii = l->yield.R_d_II;
    out->reduction_iii = l->yield.R_d_III;
    out->diameter_in = l->yield.D;
    out->fe_main_psi = l->yield.F_em;
    out->fe_side_psi = l->yield.F_es;
    out->fyb_psi = l->yield.F_yb;
    out->main_bearing_in = l->reach.l_m;
    out->side_bearing_in = l->reach.l_s;
    out->penetration_in = l->reach.penetration;
    out->least_penetration_in = l->reach.least;
    out->penetration_factor = l->reach.factor;
    out->point_out_in = l->reach.point_out;
}

/* A default in quotes that this fastener has no use for was not assumed. */
static void forget(uint64_t *assumed, int bit, int used) {
    if (!used) *assumed &= ~FRAME_BIT(bit);
}

static void assumed(const frame_dowel_lateral_in *in, const lateral *l, uint64_t *bits) {
    const int bolt = frame_dowel_is_bolt(in->kind), depth = in->penetration_in != FRAME_NOT_GIVEN;
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_ROOT_DIAMETER_IN, l->root);
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_LENGTH_IN, !bolt && !depth && l->fastener.length_in != FRAME_NOT_GIVEN);
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_TIP_IN,
           l->reach.hold == FRAME_HOLD_BY_EQUATIONS || (in->kind == FRAME_DOWEL_LAG_SCREW && !depth));
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_THREADS_IN_PLANE, frame_dowel_is_threaded(in->kind));
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_SIDE_THICKNESS_IN, in->toe_nail);
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_SECOND_SIDE_THICKNESS_IN, in->shear_planes == 2);
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_PENETRATION_IN, !bolt);
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_SHORT_PENETRATION, !bolt);
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_SHRINKS_FREELY,
           in->made == FRAME_SERVICE_WET && in->service == FRAME_SERVICE_DRY);
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_TIME_EFFECT_FACTOR, 0);
    forget(bits, FRAME_ASSUMED_DOWEL_LATERAL_IN_CLINCHED, 0);
}

static frame_status compute(const frame_dowel_lateral_in *in, frame_dowel_lateral_out *out, frame_working *w) {
    lateral l;
    out->known = FRAME_KNOWN_READ;
    frame_record_edition(in->edition, w);
    frame_status status = steel(in, &l, out, w);
    if (!status) status = bearings(in, &l, out, w);
    if (!status) status = frame_joint_reach(in, &l.fastener, &l.reach, w);
    if (status) return status;
    reduction(&l, w);
    modes(in, &l, w);
    out->z_lb = l.values.z * l.reach.factor;
    if (FRAME_RECORDING(w)) record_reference(in, &l, w);
    status = frame_lateral_adjust(in, l.fastener.nominal_in, out, w);
    if (status) return status;
    if (by_memory(in, &l)) out->known = FRAME_KNOWN_MEMORY;
    give(&l, out);
    cautions(in, &l, out);
    assumed(in, &l, &out->assumed);
    return FRAME_OK;
}

FRAME_IMPLEMENT_USUAL(dowel_lateral, compute, frame_lateral_usual);
