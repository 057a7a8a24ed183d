/* A sloped rafter in one call: loads square to it, a member_check of span, overhang and birdsmouth, and a bearing_check
 * of the seat under every combination. */
#include <stdio.h>

#include "base/error.h"
#include "base/number.h"
#include "load/cases.h"
#include "load/combination.h"
#include "strength/one_span.h"
#include "strength_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

/* The rafter as it lies: along its length but for the seat; loads square to it on a foot of its length. */
typedef struct sloped {
    double cosine, sine;
    double length, tail;              /* along the slope */
    double depth, cut_at, cut_length; /* of the birdsmouth, its place measured from the middle of the seat */
    double dead, roof_live, snow;
    double pressed, lifted, tail_lifted; /* by wind */
} sloped;

static frame_status check_seat(const frame_rafter_check_in *in) {
    char given[32], valid[112], least[32];
    const double sine = in->slope / sqrt(1 + in->slope * in->slope);
    frame_number_print(in->seat_in, 6, given, sizeof given);
    if (in->seat_in > in->run_in)
        return frame_fail(FRAME_IMPOSSIBLE, "seat_in", given, "at most the run",
                          "seat_in: %s; valid is at most the run", given);
    if (in->notch_depth_in == FRAME_NOT_GIVEN || in->notch_depth_in >= in->seat_in * sine * (1 - 1e-6)) return FRAME_OK;
    frame_number_print(in->notch_depth_in, 6, given, sizeof given);
    frame_number_print(in->seat_in * sine, 6, least, sizeof least);
    snprintf(valid, sizeof valid, "at least %s, which a level seat of this length cuts at this slope", least);
    return frame_fail(FRAME_CONFLICT, "notch_depth_in", given, valid, "notch_depth_in: %s; valid is %s", given, valid);
}

static void find_lie(const frame_rafter_check_in *in, sloped *r, frame_working *record) {
    FRAME_HEADING(record, "How the rafter lies");
    FRAME_GIVEN(record, s, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(record, R, in->run_in, "in", "run, level");
    FRAME_GIVEN(record, o, in->overhang_in, "in", "overhang, level");
    FRAME_STEP(record, c, 1 / sqrt(1 + pow(s, 2)), "", "cosine of the slope", "");
    FRAME_STEP(record, s_n, s * c, "", "sine of the slope", "");
    FRAME_STEP(record, L, R / c, "in", "length along the slope between plate and ridge", "");
    FRAME_STEP(record, l_o, o / c, "in", "length along the slope of the overhang", "");
    r->cosine = c, r->sine = s_n, r->length = L, r->tail = l_o;
}

/* The heel of the birdsmouth is plumb, at the outer end of the seat: its depth is the height of a right triangle over
 * its longest side, which lies in the lower edge. */
static void find_birdsmouth(const frame_rafter_check_in *in, sloped *r, frame_working *record) {
    const double c = r->cosine, s_n = r->sine;
    FRAME_HEADING(record, "Birdsmouth");
    FRAME_GIVEN(record, l_s, in->seat_in, "in", "level length of the seat");
    if (in->notch_depth_in == FRAME_NOT_GIVEN) {
        FRAME_STEP(record, h_b, l_s * s_n, "in", "depth of the birdsmouth square to the rafter", "");
        r->depth = h_b;
    } else {
        FRAME_GIVEN(record, h_b, in->notch_depth_in, "in", "depth of the birdsmouth square to the rafter");
        r->depth = h_b;
    }
    const double h_b = r->depth;
    FRAME_STEP(record, l_h, h_b / s_n, "in", "level cut, the seat and what is cut inside the plate", "");
    FRAME_STEP(record, l_c, l_h / c, "in", "length of the cut in the lower edge", "");
    FRAME_STEP(record, x_c, (l_h - l_s) / (2 * c), "in", "its middle, uphill from the middle of the seat", "");
    r->cut_length = l_c, r->cut_at = x_c;
}

static void find_loads(const frame_rafter_check_in *in, sloped *r, frame_working *record) {
    const double c = r->cosine;
    FRAME_HEADING(record, "Loads square to the rafter, on a foot of its length");
    FRAME_GIVEN(record, s_c, in->spacing_in, "in", "spacing, centre to centre");
    FRAME_GIVEN(record, p_D, in->dead_psf, "psf", "dead load on the slope");
    FRAME_GIVEN(record, p_Lr, in->roof_live_psf, "psf", "roof live load on plan");
    FRAME_GIVEN(record, p_S, in->snow_psf, "psf", "snow on plan");
    FRAME_STEP(record, w_D, p_D * s_c / 12 * c, "plf", "dead load, its share square to the rafter", "statics");
    FRAME_STEP(record, w_Lr, p_Lr * s_c / 12 * pow(c, 2), "plf",
               "roof live load: less of it on a foot of slope, and its share square to the rafter", "statics");
    FRAME_STEP(record, w_S, p_S * s_c / 12 * pow(c, 2), "plf", "snow, likewise", "statics");
    r->dead = w_D, r->roof_live = w_Lr, r->snow = w_S;
    r->pressed = r->lifted = r->tail_lifted = 0;
}

/* Wind acts square to the roof, on all of its length. */
static void find_wind(const frame_rafter_check_in *in, sloped *r, frame_working *record) {
    const double s_c = in->spacing_in, on_tail = frame_or(in->overhang_wind_up_psf, in->wind_up_psf);
    if (in->wind_down_psf > 0) {
        FRAME_GIVEN(record, p_W, in->wind_down_psf, "psf", "wind that presses, at strength level");
        FRAME_STEP(record, w_W, p_W * s_c / 12, "plf", "wind that presses", "statics");
        r->pressed = w_W;
    }
    if (!(in->wind_up_psf > 0 || on_tail > 0)) return;
    FRAME_GIVEN(record, p_U, in->wind_up_psf, "psf", "wind that lifts, at strength level");
    FRAME_GIVEN(record, p_o, on_tail, "psf", "wind that lifts the overhang");
    FRAME_STEP(record, w_U, p_U * s_c / 12, "plf", "wind that lifts, between plate and ridge", "statics");
    FRAME_STEP(record, w_o, p_o * s_c / 12, "plf", "wind that lifts the overhang", "statics");
    r->lifted = w_U, r->tail_lifted = w_o;
}

/* What member_check calls otherwise gets the name it has here. */
static frame_status within_rafter(frame_status status) {
    if (!status || status == FRAME_NO_MEMORY || frame_field_find(&frame_rafter_check_in_facts, frame_error_field()))
        return status;
    if (!strncmp(frame_error_field(), "cuts[0]", 7))
        return frame_fail(status, "notch_depth_in", "", "at most a quarter of the depth (NDS 4.4.3)",
                          "notch_depth_in: the birdsmouth is too deep; valid is at most a quarter of the depth of the "
                          "rafter (NDS 4.4.3): a shorter seat or a deeper rafter");
    return frame_fail(
        status, "lower_edge", "", "a held edge, or R_B of at most 50 (NDS 3.3.3.7)",
        "lower_edge: the rafter is too slender; valid is a held edge, or R_B of at most 50 (NDS 3.3.3.7)");
}

static void set_member(const frame_rafter_check_in *in, const sloped *r, int lifted, const frame_member_cut *cut,
                       frame_member_check_in *m) {
    frame_member_check_in_init(m);
    m->spans_in = &r->length, m->span_count = 1, m->left_overhang_in = r->tail;
    m->cuts = cut, m->cut_count = 1;
    m->size = in->size, m->species = in->species, m->grade = in->grade, m->plies = in->plies;
    m->service = in->service, m->incised = in->incised, m->temperature = in->temperature;
    m->repetitive = in->repetitive, m->spacing_in = in->spacing_in;
    m->upper_edge = in->upper_edge, m->lower_edge = in->lower_edge;
    m->edition = in->edition;
    m->method = in->method, m->load_edition = in->load_edition;
    m->dead_plf = r->dead, m->roof_live_plf = r->roof_live, m->snow_plf = r->snow;
    m->wind_plf = lifted ? -r->lifted : r->pressed;
    m->deflection_limit = in->deflection_limit, m->total_deflection_limit = in->total_deflection_limit;
    m->creep_factor = in->creep_factor;
}

static void give_span(const frame_member_check_span *s, int32_t inner, frame_rafter_check_out *out) {
    const double ratio = fmax(s->deflection_live_ratio, s->deflection_total_ratio);
    if (s->number != inner) {
        out->overhang_deflection_ratio = ratio, out->plate_moment_lb_in = s->min_moment_lb_in;
        return;
    }
    out->span_deflection_ratio = ratio, out->span_moment_lb_in = s->max_moment_lb_in;
    out->live_deflection_in = s->deflection_live_in, out->total_deflection_in = s->deflection_total_in;
}

/* What tie-downs must hold: straight up, as the supports push. */
static frame_status give_uplift(const frame_member_check *answer, const sloped *r, frame_rafter_check_out *out) {
    double *const lifts[] = {&out->seat_uplift_lb, &out->ridge_uplift_lb};
    for (size_t i = 0; i < 2; i++) {
        frame_member_check_support support;
        const frame_status status = frame_member_check_support_at(answer, i, &support);
        if (status) return status;
        *lifts[i] = fmax(fmax(*lifts[i], 0), -support.min_reaction_lb / r->cosine);
    }
    return FRAME_OK;
}

static frame_status give_member(const frame_member_check *answer, frame_member_check_out *m,
                                frame_rafter_check_out *out) {
    frame_member_check_cut cut;
    frame_status status = frame_member_check_result(answer, m);
    if (!status) status = frame_member_check_cut_at(answer, 0, &cut);
    out->plate_moment_lb_in = 0;
    for (size_t i = 0; i < frame_member_check_span_count(answer) && !status; i++) {
        frame_member_check_span span;
        status = frame_member_check_span_at(answer, i, &span);
        if (!status) give_span(&span, 1, out);
    }
    if (status) return status;
    out->notch_bending_ratio = cut.bending_ratio, out->notch_shear_ratio = cut.shear_ratio;
    out->net_depth_in = cut.net_depth_in;
    out->bending_ratio = m->bending_ratio, out->shear_ratio = m->shear_ratio;
    out->deflection_ratio = m->deflection_ratio, out->combination = m->combination;
    out->ratio = m->ratio, out->governs = m->governs, out->known = m->known;
    return FRAME_OK;
}

static frame_status check_member(const frame_rafter_check_in *in, const sloped *r, int lifted,
                                 frame_member_check_out *m, frame_rafter_check_out *out, frame_working *record) {
    frame_member_check_in check;
    frame_member_cut cut;
    frame_beam_load tail;
    frame_member_check *answer = NULL;
    frame_member_cut_init(&cut);
    frame_beam_load_init(&tail);
    cut.at_in = fmax(r->tail + r->cut_at, 0), cut.depth_in = r->depth, cut.length_in = r->cut_length;
    set_member(in, r, lifted, &cut, &check);
    tail.kind = FRAME_LOAD_WIND, tail.span = 0, tail.plf = r->lifted - r->tail_lifted;
    if (lifted && r->tail > 0 && tail.plf != 0) check.loads = &tail, check.load_count = 1;
    FRAME_HEADING(record,
                  lifted ? "Span, overhang and birdsmouth under wind that lifts" : "Span, overhang and birdsmouth");
    if (record) FRAME_ENTER(record);
    frame_status status = within_rafter(frame_member_check_solve(&check, &answer, record));
    if (record) FRAME_LEAVE(record);
    if (!status) status = give_member(answer, m, out);
    if (!status) status = give_uplift(answer, r, out);
    frame_member_check_free(answer);
    return status;
}

static void take_larger(double *mine, double other) {
    if (frame_given(other) && !(*mine >= other)) *mine = other;
}

/* The same rafter with the wind that lifts: of every ratio the larger counts. */
static frame_status check_lifted(const frame_rafter_check_in *in, const sloped *r, frame_member_check_out *m,
                                 frame_rafter_check_out *out, frame_working *record) {
    frame_rafter_check_out up = *out;
    frame_member_check_out m_up;
    if (!(r->lifted > 0 || r->tail_lifted > 0)) return FRAME_OK;
    const frame_status status = check_member(in, r, 1, &m_up, &up, record);
    if (status) return status;
    out->lifted_ratio = up.ratio;
    if (up.ratio > out->ratio) out->ratio = up.ratio, out->governs = up.governs;
    if (up.bending_ratio > out->bending_ratio) out->combination = up.combination;
    take_larger(&out->bending_ratio, up.bending_ratio), take_larger(&out->shear_ratio, up.shear_ratio);
    take_larger(&out->notch_bending_ratio, up.notch_bending_ratio);
    take_larger(&out->notch_shear_ratio, up.notch_shear_ratio);
    if (up.span_deflection_ratio > out->span_deflection_ratio)
        out->live_deflection_in = up.live_deflection_in, out->total_deflection_in = up.total_deflection_in;
    take_larger(&out->span_deflection_ratio, up.span_deflection_ratio);
    take_larger(&out->overhang_deflection_ratio, up.overhang_deflection_ratio);
    take_larger(&out->deflection_ratio, up.deflection_ratio);
    take_larger(&out->seat_uplift_lb, up.seat_uplift_lb), take_larger(&out->ridge_uplift_lb, up.ridge_uplift_lb);
    out->plate_moment_lb_in = fmin(out->plate_moment_lb_in, up.plate_moment_lb_in);
    m->cautions |= m_up.cautions;
    return FRAME_OK;
}

/* Wind that presses lies on span and overhang as the rest does. */
static double find_pressed_seat(const sloped *r, const frame_load_case *k, double w, frame_working *record) {
    const double L = r->length, l_o = r->tail, c = r->cosine, w_W = r->pressed;
    FRAME_TABLE(record, k_W, k->factor[FRAME_LOAD_WIND], "", "factor of wind", k->source);
    FRAME_STEP(record, R_n, (w + k_W * w_W) / 12 * pow(L + l_o, 2) / (2 * L), "lb", "reaction square to the rafter",
               "moments about the ridge");
    FRAME_STEP(record, R_s, R_n / c, "lb", "load on the seat, straight down", "");
    return R_s;
}

/* Span and overhang loaded all along: whatever lies anywhere adds to this reaction. The plate pushes straight up, so
 * that its share square to the rafter is what the beam needs. */
static double find_seat_load(const sloped *r, const frame_load_case *k, frame_working *record) {
    const double L = r->length, l_o = r->tail, c = r->cosine, w_D = r->dead, w_Lr = r->roof_live, w_S = r->snow,
                 w_W = r->pressed;
    FRAME_TABLE(record, k_D, k->factor[FRAME_LOAD_DEAD], "", "factor of dead load", k->source);
    FRAME_TABLE(record, k_Lr, k->factor[FRAME_LOAD_ROOF_LIVE], "", "factor of roof live load", k->source);
    FRAME_TABLE(record, k_S, k->factor[FRAME_LOAD_SNOW], "", "factor of snow", k->source);
    FRAME_STEP(record, w, k_D * w_D + k_Lr * w_Lr + k_S * w_S, "plf", "load square to the rafter, but wind", "");
    if (w_W > 0) return find_pressed_seat(r, k, w, record);
    FRAME_STEP(record, R_n, w / 12 * pow(L + l_o, 2) / (2 * L), "lb", "reaction square to the rafter",
               "moments about the ridge");
    FRAME_STEP(record, R_s, R_n / c, "lb", "load on the seat, straight down", "");
    return R_s;
}

static frame_status check_case(const frame_rafter_check_in *in, const sloped *r, const frame_load_case *k,
                               frame_bearing_check_out *found, frame_working *record, double *load) {
    frame_bearing_check_in b;
    frame_bearing_check_in_init(&b);
    FRAME_HEADING(record, "Load on the seat, of the combination that governs it");
    FRAME_GIVEN(record, s, in->slope, "", "slope, rise over run");
    FRAME_STEP(record, theta_s, atan(1 / s) / FRAME_DEG, "deg", "angle between load and grain", "");
    *load = find_seat_load(r, k, record);
    b.size = in->size, b.species = in->species, b.grade = in->grade, b.plies = in->plies;
    b.service = in->service, b.incised = in->incised, b.temperature = in->temperature, b.method = in->method;
    b.edition = in->edition;
    b.load_duration = frame_duration_of(k->duration_factor);
    if (in->method == FRAME_METHOD_LRFD)
        b.load_duration = FRAME_DURATION_TEN_YEARS, b.time_effect_factor = k->time_effect;
    b.load_lb = *load, b.length_in = in->seat_in, b.angle_deg = theta_s;
    if (record) FRAME_ENTER(record);
    const frame_status status = frame_bearing_check(&b, found, record);
    if (record) FRAME_LEAVE(record);
    return status;
}

static frame_status check_bearing(const frame_rafter_check_in *in, const sloped *r, frame_rafter_check_out *out,
                                  frame_working *record) {
    frame_load_case cases[FRAME_LOAD_CASES];
    frame_bearing_check_out found;
    const frame_load_rules rules = {in->method, in->load_edition, FRAME_DURATION_TEN_YEARS};
    const unsigned kinds = 1u << FRAME_LOAD_DEAD | (r->roof_live > 0 ? 1u << FRAME_LOAD_ROOF_LIVE : 0) |
                           (r->snow > 0 ? 1u << FRAME_LOAD_SNOW : 0) | (r->pressed > 0 ? 1u << FRAME_LOAD_WIND : 0);
    const int count = frame_load_cases_by(kinds, &rules, cases);
    double load = 0, worst = -1;
    int at = 0;
    for (int i = 0; i < count; i++) {
        const frame_status status = check_case(in, r, &cases[i], &found, NULL, &load);
        if (status) return status;
        if (found.ratio > worst) worst = found.ratio, at = i;
    }
    const frame_status status = check_case(in, r, &cases[at], &found, record, &load);
    if (status) return status;
    out->bearing_ratio = found.ratio, out->bearing_combination = cases[at].which;
    out->seat_load_lb = load, out->seat_needed_in = found.length_needed_in;
    out->seat_angle_deg = atan(1 / in->slope) / FRAME_DEG;
    if (found.known > out->known) out->known = found.known;
    if (found.ratio > out->ratio) out->ratio = found.ratio, out->governs = FRAME_GOVERNS_BEARING;
    return FRAME_OK;
}

/* The cautions of member_check that pass on, each beside its own here. */
static const struct {
    int member, rafter;
} passed_on[] = {{FRAME_MEMBER_CAUTION_STAMP, FRAME_RAFTER_CHECK_CAUTION_STAMP},
                 {FRAME_MEMBER_CAUTION_DOUBTFUL, FRAME_RAFTER_CHECK_CAUTION_DOUBTFUL},
                 {FRAME_MEMBER_CAUTION_SUPERSEDED, FRAME_RAFTER_CHECK_CAUTION_SUPERSEDED},
                 {FRAME_MEMBER_CAUTION_PLIES, FRAME_RAFTER_CHECK_CAUTION_PLIES},
                 {FRAME_MEMBER_CAUTION_UPLIFT, FRAME_RAFTER_CHECK_CAUTION_UPLIFT},
                 {FRAME_MEMBER_CAUTION_SNOW_BASIS, FRAME_RAFTER_CHECK_CAUTION_SNOW_BASIS},
                 {FRAME_MEMBER_CAUTION_EDGE_HELD, FRAME_RAFTER_CHECK_CAUTION_EDGE_HELD}};

static void remark(const sloped *r, uint64_t cautions, frame_rafter_check_out *out) {
    const int lifts = r->lifted > 0 || r->tail_lifted > 0;
    out->passes = frame_holds(out->ratio);
    out->cautions = FRAME_BIT(FRAME_RAFTER_CHECK_CAUTION_AS_ASSUMED) | FRAME_BIT(FRAME_RAFTER_CHECK_CAUTION_ROLLING) |
                    FRAME_BIT(FRAME_RAFTER_CHECK_CAUTION_NOTCH);
    for (size_t i = 0; i < sizeof passed_on / sizeof passed_on[0]; i++)
        if (cautions & FRAME_BIT(passed_on[i].member)) out->cautions |= FRAME_BIT(passed_on[i].rafter);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_RAFTER_CHECK_CAUTION_MEMORY);
    if (out->seat_uplift_lb > 0 || out->ridge_uplift_lb > 0)
        out->cautions |= FRAME_BIT(FRAME_RAFTER_CHECK_CAUTION_TIE_DOWN);
    out->not_checked = FRAME_BIT(FRAME_RAFTER_CHECK_UNCHECKED_TIE_DOWN + 1) - 1; /* all that the list names */
    if (lifts && r->pressed > 0) out->not_checked &= ~FRAME_BIT(FRAME_RAFTER_CHECK_UNCHECKED_WIND);
}

static frame_status compute(const frame_rafter_check_in *in, frame_rafter_check_out *out, frame_working *record) {
    sloped r;
    frame_member_check_out m;
    frame_status status = check_seat(in);
    if (status) return status;
    find_lie(in, &r, record);
    find_birdsmouth(in, &r, record);
    find_loads(in, &r, record);
    find_wind(in, &r, record);
    out->length_in = r.length, out->overhang_length_in = r.tail, out->notch_depth_in = r.depth;
    out->dead_plf = r.dead, out->roof_live_plf = r.roof_live, out->snow_plf = r.snow;
    out->wind_down_plf = r.pressed, out->wind_up_plf = r.lifted;
    out->seat_uplift_lb = out->ridge_uplift_lb = 0;
    status = check_member(in, &r, 0, &m, out, record);
    if (!status) status = check_lifted(in, &r, &m, out, record);
    if (!status) status = check_bearing(in, &r, out, record);
    if (!status) remark(&r, m.cautions, out);
    return status;
}
FRAME_IMPLEMENT(rafter_check, compute);
