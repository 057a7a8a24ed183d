/* The withdrawal value of one nail or screw. */
#include "base/number.h"
#include "joint/bearing.h"
#include "joint/fastener.h"
#include "joint/lateral_factors.h"
#include "joint/thread.h"
#include "joint_facts.h"
#include "material/edition.h"
#include "working/calculation.h"

/* Where along the fastener, from under its head, the part that holds begins and ends. */
typedef struct hold {
    double length, out;
} hold;

static frame_status outside(const char *field, const char *valid, const char *why) {
    return frame_fail(FRAME_OUTSIDE_SCOPE, field, "", valid, "%s: %s", field, why);
}

static frame_status sensible(const frame_dowel_withdrawal_in *in) {
    const int lag = in->kind == FRAME_DOWEL_LAG_SCREW, nail = frame_dowel_is_nail(in->kind);
    if (in->kind == FRAME_DOWEL_BOLT)
        return outside("kind", "nails and screws", "a bolt is held by its nut and washer, not by withdrawal");
    if (in->kind == FRAME_DOWEL_DRIFT_PIN)
        return outside("kind", "nails and screws", "a drift pin's hold along its length is found by test only");
    if (in->kind == FRAME_DOWEL_OTHER_DRIVEN)
        return outside("kind", "nails, wood screws, lag screws",
                       "for a fastener of another make the maker's report has the value");
    if (in->end_grain && !lag)
        return outside("end_grain", "no", "nails and wood screws hold nothing in end grain (NDS 12.2.2, 12.2.3)");
    if (in->toe_nail && !nail)
        return frame_fail(FRAME_CONFLICT, "toe_nail", "yes", "no", "toe_nail: only a nail is toe-nailed (NDS 12.5.4)");
    return FRAME_OK;
}

/* The value of an inch: NDS equations 12.2-1 to 12.2-5. */
static double per_inch(const frame_dowel_withdrawal_in *in, double D, double G, frame_working *w) {
    if (in->kind == FRAME_DOWEL_LAG_SCREW) {
        FRAME_STEP(w, W, 1800 * pow(G, 1.5) * pow(D, 0.75), "lb/in", "withdrawal value of an inch of thread",
                   "NDS 2018 12.2.1");
        return W;
    }
    if (in->kind == FRAME_DOWEL_WOOD_SCREW) {
        FRAME_STEP(w, W, 2850 * pow(G, 2) * D, "lb/in", "withdrawal value of an inch of thread",
                   "NDS 2018 12.2.2, from memory");
        return W;
    }
    if (in->kind == FRAME_DOWEL_RING_SHANK_NAIL) {
        FRAME_STEP(w, W, 1800 * pow(G, 2) * D, "lb/in", "withdrawal value of an inch of rings",
                   "NDS 2018 12.2.3, from memory");
        return W;
    }
    FRAME_STEP(w, W, 1380 * pow(G, 2.5) * D, "lb/in", "withdrawal value of an inch of nail", "NDS 2018 12.2.3");
    return W;
}

static frame_known known_of(const frame_dowel_withdrawal_in *in) {
    if (in->edition != FRAME_NDS_2018) return FRAME_KNOWN_MEMORY;
    if (in->kind == FRAME_DOWEL_LAG_SCREW) return FRAME_KNOWN_COMPUTED;
    return in->kind == FRAME_DOWEL_WOOD_SCREW || in->kind == FRAME_DOWEL_RING_SHANK_NAIL ? FRAME_KNOWN_MEMORY
                                                                                         : FRAME_KNOWN_SECONDARY;
}

static frame_status missing(const char *field, const char *why) {
    return frame_fail(FRAME_REQUIRED, field, "", "a length in inches", "%s: not given%s", field, why);
}

/* What lies before the member; a toe-nail enters it a third of its length down, at 30 degrees. */
static double length_before(const frame_dowel_withdrawal_in *in, double L, frame_working *w) {
    if (in->toe_nail) {
        FRAME_STEP(w, t_s, L - (L * cos(30 * FRAME_DEG) - L / 3), "in", "what does not hold of a toe-nail",
                   "NDS 2018 12.1.6, from memory");
        return t_s;
    }
    FRAME_GIVEN(w, t_s, in->side_thickness_in, "in", "what lies before the member");
    return t_s;
}

static double length_reached(const frame_dowel_withdrawal_in *in, double L, double t_s, frame_working *w) {
    if (in->main_thickness_in == FRAME_NOT_GIVEN) {
        FRAME_STEP(w, L_in, L, "in", "from under the head to the point", "NDS 2018 12.2");
        return L_in;
    }
    FRAME_GIVEN(w, t_m, in->main_thickness_in, "in", "thickness of the member");
    FRAME_STEP(w, L_in, fmin(L, t_s + t_m), "in", "from under the head to the point, or to the far side",
               "NDS 2018 12.2");
    return L_in;
}

/* The part of the thread within the member. */
static frame_status from_length(const frame_dowel_withdrawal_in *in, const frame_fastener *fastener, double length_in,
                                hold *found, frame_working *w) {
    double tip = 0;
    if (in->kind == FRAME_DOWEL_LAG_SCREW) tip = in->tip_in != FRAME_NOT_GIVEN ? in->tip_in : fastener->tip_in;
    if (tip == FRAME_NOT_GIVEN) return missing("tip_in", ", and no table has it for this diameter");
    if (in->kind == FRAME_DOWEL_RING_SHANK_NAIL && in->thread_in == FRAME_NOT_GIVEN &&
        fastener->thread_in == FRAME_NOT_GIVEN)
        return missing("thread_in", "; the length of the rings is needed where the size is not named");
    FRAME_GIVEN(w, L, length_in, "in", "length under the head");
    const double T = frame_thread_length(in->kind, in->thread_in, fastener, L, w), t_s = length_before(in, L, w),
                 L_in = length_reached(in, L, t_s, w);
    found->out = L - L_in;
    FRAME_GIVEN(w, E, fmax(0, tip - found->out), "in", "tapered tip in the member, which holds nothing");
    FRAME_STEP(w, p_t, L_in - fmax(t_s, L - T) - E, "in", "length that holds", "NDS 2018 12.2");
    found->length = p_t;
    return FRAME_OK;
}

static frame_status find_hold(const frame_dowel_withdrawal_in *in, const frame_fastener *fastener, hold *found,
                              frame_working *w) {
    const double length = in->length_in != FRAME_NOT_GIVEN ? in->length_in : fastener->length_in;
    *found = (hold){in->penetration_in, 0};
    if (in->penetration_in != FRAME_NOT_GIVEN) return FRAME_OK;
    if (length == FRAME_NOT_GIVEN) return missing("penetration_in", "; give it or length_in");
    const frame_status status = from_length(in, fastener, length, found, w);
    if (status || found->length > 0) return status;
    char written[32];
    frame_number_print(found->length, 5, written, sizeof written);
    return frame_fail(FRAME_OUTSIDE_SCOPE, "penetration_in", written, "above 0",
                      "penetration_in: no part that holds lies in the member; the fastener counts for nothing");
}

/* NDS table 11.3.3; not on toe-nails (12.5.4). */
static double wet_factor(const frame_dowel_withdrawal_in *in) {
    if (!frame_dowel_is_nail(in->kind)) return in->service == FRAME_SERVICE_WET ? 0.7 : 1;
    return in->toe_nail || in->made == in->service ? 1 : 0.25;
}

/* W' by either method; out has the factors, recorded here. */
static double adjusted(const frame_dowel_withdrawal_in *in, const frame_dowel_withdrawal_out *out, frame_working *w) {
    const double W_all = out->w_lb;
    FRAME_HEADING(w, "Adjustment");
    FRAME_TABLE(w, C_M, out->wet_factor, "", "wet service factor", "NDS 2018 table 11.3.3");
    FRAME_TABLE(w, C_t, out->temperature_factor, "", "temperature factor", "NDS 2018 table 11.3.4");
    FRAME_TABLE(w, C_eg, out->end_grain_factor, "", "end grain factor", "NDS 2018 12.5.2");
    FRAME_TABLE(w, C_tn, out->toe_nail_factor, "", "toe-nail factor", "NDS 2018 12.5.4");
    if (in->method == FRAME_METHOD_LRFD) {
        FRAME_TABLE(w, K_F, out->format_factor, "", "format conversion factor", "NDS 2018 table N1, from memory");
        FRAME_TABLE(w, phi_z, out->resistance_factor, "", "resistance factor", "NDS 2018 table N2, from memory");
        FRAME_GIVEN(w, lambda, out->time_effect_factor, "", "time effect factor, NDS table N3");
        FRAME_STEP(w, W_prime, W_all * C_M * C_t * C_eg * C_tn * K_F * phi_z * lambda, "lb",
                   "adjusted withdrawal value of the fastener, factored", "NDS 2018 table 11.3.1");
        return W_prime;
    }
    FRAME_GIVEN(w, C_D, out->duration_factor, "", "load duration factor, NDS 2.3.2");
    FRAME_STEP(w, W_prime, W_all * C_D * C_M * C_t * C_eg * C_tn, "lb", "adjusted withdrawal value of the fastener",
               "NDS 2018 table 11.3.1");
    return W_prime;
}

static frame_status adjust(const frame_dowel_withdrawal_in *in, frame_dowel_withdrawal_out *out, frame_working *w) {
    frame_method_factors factors = {1, 1, 1};
    const frame_status status =
        frame_method_factors_of(in->method, in->load_duration_factor, in->time_effect_factor, &factors);
    if (status) return status;
    out->duration_factor = in->load_duration_factor;
    out->wet_factor = wet_factor(in);
    out->temperature_factor = frame_connection_temperature(in->temperature_f, in->service == FRAME_SERVICE_WET);
    out->end_grain_factor = in->end_grain ? 0.75 : 1;
    out->toe_nail_factor = in->toe_nail ? 0.67 : 1;
    out->format_factor = factors.format;
    out->resistance_factor = factors.resistance;
    out->time_effect_factor = factors.time_effect;
    out->adjusted_lb = adjusted(in, out, w);
    return FRAME_OK;
}

static void also(frame_dowel_withdrawal_out *out, int bit) {
    out->cautions |= FRAME_BIT(bit);
}

static void remarks(const frame_dowel_withdrawal_in *in, const hold *found, frame_dowel_withdrawal_out *out) {
    const int depth = in->penetration_in != FRAME_NOT_GIVEN, lag = in->kind == FRAME_DOWEL_LAG_SCREW,
              screw = in->kind == FRAME_DOWEL_WOOD_SCREW || lag;
    out->not_checked = FRAME_BIT(FRAME_DOWEL_WITHDRAWAL_UNCHECKED_CORROSION + 1) - 1;
    also(out, FRAME_DOWEL_WITHDRAWAL_CAUTION_REACH);
    if (!screw) also(out, FRAME_DOWEL_WITHDRAWAL_CAUTION_NAILS);
    if (out->wet_factor == 0.25) also(out, FRAME_DOWEL_WITHDRAWAL_CAUTION_DRYING);
    if (found->out > 0) also(out, FRAME_DOWEL_WITHDRAWAL_CAUTION_POINT_OUT);
    if (in->toe_nail) also(out, FRAME_DOWEL_WITHDRAWAL_CAUTION_TOE_NAIL);
    if (screw && !depth && in->thread_in == FRAME_NOT_GIVEN) also(out, FRAME_DOWEL_WITHDRAWAL_CAUTION_THREAD);
    if (in->method == FRAME_METHOD_LRFD) also(out, FRAME_DOWEL_WITHDRAWAL_CAUTION_LRFD);
    if (in->toe_nail || in->method == FRAME_METHOD_LRFD) out->known = FRAME_KNOWN_MEMORY;
    if (out->known == FRAME_KNOWN_MEMORY) also(out, FRAME_DOWEL_WITHDRAWAL_CAUTION_MEMORY);
    if (depth)
        out->assumed &= ~(FRAME_BIT(FRAME_ASSUMED_DOWEL_WITHDRAWAL_IN_LENGTH_IN) |
                          FRAME_BIT(FRAME_ASSUMED_DOWEL_WITHDRAWAL_IN_THREAD_IN) |
                          FRAME_BIT(FRAME_ASSUMED_DOWEL_WITHDRAWAL_IN_SIDE_THICKNESS_IN));
    if (in->method == FRAME_METHOD_ASD)
        out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_DOWEL_WITHDRAWAL_IN_TIME_EFFECT_FACTOR);
    if (depth || !lag) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_DOWEL_WITHDRAWAL_IN_TIP_IN);
}

static frame_status compute(const frame_dowel_withdrawal_in *in, frame_dowel_withdrawal_out *out, frame_working *w) {
    frame_fastener fastener;
    hold found;
    double gravity;
    frame_known known;
    frame_record_edition(in->edition, w);
    frame_status status = sensible(in);
    if (!status) status = frame_fastener_find(in->kind, in->size, in->diameter_in, &fastener);
    if (!status) status = frame_joint_gravity("", in->species, in->specific_gravity, &gravity, &known, w);
    if (status) return status;
    out->known = frame_known_worse(frame_known_worse(known, fastener.known), known_of(in));
    FRAME_TABLE(w, D, fastener.nominal_in, "in", "nominal diameter", fastener.source);
    const double W = per_inch(in, D, gravity, w);
    status = find_hold(in, &fastener, &found, w);
    if (status) return status;
    FRAME_GIVEN(w, p, found.length, "in", "length that holds");
    FRAME_STEP(w, W_all, W * p, "lb", "withdrawal value of the fastener", "NDS 2018 12.2");
    out->w_lb_per_in = W;
    out->penetration_in = p;
    out->w_lb = W_all;
    out->point_out_in = found.out;
    status = adjust(in, out, w);
    if (!status) remarks(in, &found, out);
    return status;
}

FRAME_IMPLEMENT(dowel_withdrawal, compute);
