/* Jack and king studs beside an opening. */
#include "base/error.h"
#include "base/number.h"
#include "load/cases.h"
#include "load/combination.h"
#include "material/lumber.h"
#include "strength/bending.h"
#include "strength/plate.h"
#include "strength_facts.h"
#include "working/calculation.h"

enum { MOST_STUDS = 5 };

typedef struct studs {
    const frame_opening_studs_in *in;
    double thickness, width, header_width;
    frame_plate header, plate;
    frame_load_case cases[FRAME_LOAD_CASES];
    int case_count, lrfd;
} studs;

/* Studs side by side as a column, and what they were given to carry. */
typedef struct stack {
    frame_column_check_out found;
    frame_load_combination combination;
    int32_t count;
    double load_lb, wind_plf;
} stack;

static int is_named(int32_t value) {
    return value != FRAME_NOT_GIVEN_INT;
}

/* The kinds of load that are there, as a set of bits. */
static unsigned kinds_of(const frame_opening_studs_in *in) {
    return (in->dead_plf + in->dead_lb > 0 ? 1u << FRAME_LOAD_DEAD : 0) |
           (in->live_plf + in->live_lb > 0 ? 1u << FRAME_LOAD_LIVE : 0) |
           (in->roof_live_plf + in->roof_live_lb > 0 ? 1u << FRAME_LOAD_ROOF_LIVE : 0) |
           (in->snow_plf + in->snow_lb > 0 ? 1u << FRAME_LOAD_SNOW : 0) |
           (in->wind_psf > 0 ? 1u << FRAME_LOAD_WIND : 0);
}

static frame_status jacks_too_long(const frame_opening_studs_in *in) {
    char jack[32], wall[32];
    frame_number_print(in->jack_length_in, 6, jack, sizeof jack);
    frame_number_print(in->wall_height_in, 6, wall, sizeof wall);
    return frame_fail(FRAME_CONFLICT, "jack_length_in", jack, "at most wall_height_in",
                      "jack_length_in: %s is longer than the wall; valid is at most wall_height_in, %s in", jack, wall);
}

static frame_status begin(const frame_opening_studs_in *in, studs *s) {
    const frame_load_rules rules = {in->method, in->load_edition, in->live_duration};
    *s = (studs){.in = in, .lrfd = in->method == FRAME_METHOD_LRFD};
    if (!kinds_of(in)) return frame_lacks("dead_plf", "a load on the wall, in the header's reaction, or wind");
    if (in->jack_length_in > in->wall_height_in) return jacks_too_long(in);
    frame_status status = frame_size_dressed(in->size, 0, &s->thickness, &s->width);
    if (!status)
        status = frame_plate_find(in->header_species, in->header_fc_perp_psi, "header_species", "header_fc_perp_psi",
                                  &s->header);
    if (!status)
        status =
            frame_plate_find(in->plate_species, in->plate_fc_perp_psi, "plate_species", "plate_fc_perp_psi", &s->plate);
    s->header_width = fmin(frame_or(in->header_width_in, s->width), s->width);
    s->case_count = frame_load_cases_by(kinds_of(in), &rules, s->cases);
    return status;
}

static void record_factors(const frame_load_case *k, frame_working *record) {
    FRAME_TABLE(record, k_D, k->factor[FRAME_LOAD_DEAD], "", "factor of dead load", k->source);
    FRAME_TABLE(record, k_L, k->factor[FRAME_LOAD_LIVE], "", "factor of live load", k->source);
    FRAME_TABLE(record, k_Lr, k->factor[FRAME_LOAD_ROOF_LIVE], "", "factor of roof live load", k->source);
    FRAME_TABLE(record, k_S, k->factor[FRAME_LOAD_SNOW], "", "factor of snow", k->source);
    FRAME_TABLE(record, k_W, k->factor[FRAME_LOAD_WIND], "", "factor of wind", k->source);
    (void)k_D, (void)k_L, (void)k_Lr, (void)k_S, (void)k_W;
}

/* The load on a foot of the wall. */
static double record_line(const studs *s, const frame_load_case *k, frame_working *record) {
    const double k_D = k->factor[FRAME_LOAD_DEAD], k_L = k->factor[FRAME_LOAD_LIVE],
                 k_Lr = k->factor[FRAME_LOAD_ROOF_LIVE], k_S = k->factor[FRAME_LOAD_SNOW];
    record_factors(k, record);
    FRAME_GIVEN(record, w_D, s->in->dead_plf, "plf", "dead load on the wall");
    FRAME_GIVEN(record, w_L, s->in->live_plf, "plf", "live load on the wall");
    FRAME_GIVEN(record, w_Lr, s->in->roof_live_plf, "plf", "roof live load on the wall");
    FRAME_GIVEN(record, w_S, s->in->snow_plf, "plf", "snow on the wall");
    FRAME_STEP(record, w, k_D * w_D + k_L * w_L + k_Lr * w_Lr + k_S * w_S, "plf", "load on the wall", k->source);
    return w;
}

/* The header's reaction: half of what lies over it, out to the king studs, and what was given. */
static double header_load(const studs *s, const frame_load_case *k, int32_t count, frame_working *record) {
    const double k_D = k->factor[FRAME_LOAD_DEAD], k_L = k->factor[FRAME_LOAD_LIVE],
                 k_Lr = k->factor[FRAME_LOAD_ROOF_LIVE], k_S = k->factor[FRAME_LOAD_SNOW];
    const double w = record_line(s, k, record);
    FRAME_GIVEN(record, P_D, s->in->dead_lb, "lb", "dead load given in the reaction");
    FRAME_GIVEN(record, P_L, s->in->live_lb, "lb", "live load given in it");
    FRAME_GIVEN(record, P_Lr, s->in->roof_live_lb, "lb", "roof live load given in it");
    FRAME_GIVEN(record, P_S, s->in->snow_lb, "lb", "snow given in it");
    FRAME_GIVEN(record, l_o, s->in->opening_in, "in", "clear width of the opening");
    FRAME_GIVEN(record, n_j, count, "", "jack studs at each end");
    FRAME_TABLE(record, t, s->thickness, "in", "thickness of a stud", "PS 20");
    FRAME_STEP(record, l_h, l_o + 2 * n_j * t, "in", "length of the header", "");
    FRAME_STEP(record, R, w / 12 * l_h / 2 + k_D * P_D + k_L * P_L + k_Lr * P_Lr + k_S * P_S, "lb",
               "reaction of the header", "");
    return R;
}

/* What studs side by side share as a column. */
static void set_column(const studs *s, const frame_load_case *k, int32_t count, double length,
                       frame_column_check_in *c) {
    frame_column_check_in_init(c);
    c->size = s->in->size, c->species = s->in->species, c->grade = s->in->grade, c->service = s->in->service;
    c->plies = count, c->length_in = length, c->weak_axis_held = s->in->weak_axis_held;
    if (count > 1) c->fastening = s->in->fastening;
    c->method = s->in->method;
    c->load_duration = s->lrfd ? FRAME_DURATION_TEN_YEARS : frame_duration_of(k->duration_factor);
    if (s->lrfd) c->time_effect_factor = k->time_effect;
}

static frame_status jacks_under(const studs *s, const frame_load_case *k, stack *jacks, frame_working *record) {
    frame_column_check_in c;
    FRAME_HEADING(record, "Jack studs as a column, in the combination that governs them");
    jacks->load_lb = header_load(s, k, jacks->count, record);
    jacks->combination = k->which;
    set_column(s, k, jacks->count, s->in->jack_length_in, &c);
    c.axial_lb = jacks->load_lb;
    if (record) FRAME_ENTER(record);
    const frame_status status = frame_column_check(&c, &jacks->found, record);
    if (record) FRAME_LEAVE(record);
    return status;
}

/* King studs carry the wall to the middle of the next space, and the wind from there to the middle of the opening. */
static frame_status kings_under(const studs *s, int32_t jacks, const frame_load_case *k, stack *kings,
                                double *wind_width, frame_working *record) {
    frame_column_check_in c;
    const double k_W = k->factor[FRAME_LOAD_WIND];
    FRAME_HEADING(record, "King studs, in the combination that governs them");
    const double w = record_line(s, k, record);
    FRAME_GIVEN(record, l_o, s->in->opening_in, "in", "clear width of the opening");
    FRAME_GIVEN(record, n_j, jacks, "", "jack studs at each end");
    FRAME_GIVEN(record, n_k, kings->count, "", "king studs at each end");
    FRAME_TABLE(record, t, s->thickness, "in", "thickness of a stud", "PS 20");
    FRAME_GIVEN(record, l_s, s->in->spacing_in, "in", "spacing of the studs");
    FRAME_GIVEN(record, q_W, s->in->wind_psf, "psf", "wind");
    FRAME_STEP(record, l_k, (n_k - 0.5) * t + l_s / 2, "in", "length of wall over the king studs", "");
    FRAME_STEP(record, P_k, w / 12 * l_k, "lb", "load along the king studs", "");
    FRAME_STEP(record, l_w, l_o / 2 + n_j * t + l_k, "in", "width whose wind comes to the king studs",
               "common practice");
    FRAME_STEP(record, w_k, k_W * q_W * l_w / 12, "plf", "wind on a foot of their height", "");
    kings->load_lb = P_k, kings->wind_plf = w_k, kings->combination = k->which, *wind_width = l_w;
    set_column(s, k, kings->count, s->in->wall_height_in, &c);
    c.axial_lb = P_k, c.lateral_plf = w_k;
    if (record) FRAME_ENTER(record);
    const frame_status status = frame_column_check(&c, &kings->found, record);
    if (record) FRAME_LEAVE(record);
    return status;
}

/* Of all combinations the one that uses the most. jacks: 0 for the jack studs themselves. */
static frame_status find_worst(const studs *s, int32_t jacks, stack *of, double *wind_width, int *at) {
    double most = -1;
    stack worst = *of;
    for (int i = 0; i < s->case_count; i++) {
        const frame_status status =
            jacks ? kings_under(s, jacks, &s->cases[i], of, wind_width, NULL) : jacks_under(s, &s->cases[i], of, NULL);
        if (status) return status;
        if (of->found.ratio > most) most = of->found.ratio, worst = *of, *at = i;
    }
    *of = worst;
    return FRAME_OK;
}

/* F_c-perp' over what the jack studs press; the ratio of header or plate. */
static double crush(const studs *s, const frame_plate *what, int32_t count, double width, double load, const char *name,
                    frame_working *record) {
    const double t = s->thickness;
    const frame_plate_lie lie = {
        .length = count * t, .temperature_factor = 1, .wet = s->in->service == FRAME_SERVICE_WET, .lrfd = s->lrfd};
    if (!frame_given(what->F_c_perp)) return FRAME_NOT_GIVEN;
    FRAME_HEADING(record, name);
    const double F_c_perp_prime = frame_plate_allowed(what, &lie, record);
    FRAME_GIVEN(record, l_b, lie.length, "in", "length of bearing");
    FRAME_GIVEN(record, b_b, width, "in", "width of bearing");
    FRAME_GIVEN(record, R, load, "lb", "reaction of the header, in the combination that presses the most");
    FRAME_STEP(record, f_c_perp, R / (l_b * b_b), "psi", "stress across the grain", "NDS 2018 3.10.2");
    FRAME_STEP(record, ratio, f_c_perp / F_c_perp_prime, "", "share of the strength across the grain used",
               "NDS 2018 3.10.2");
    return ratio;
}

/* The largest reaction: neither C_D nor lambda is on F_c-perp. */
static double find_crushing(const studs *s, int32_t count, int *at) {
    double most = -1;
    for (int i = 0; i < s->case_count; i++) {
        const double load = header_load(s, &s->cases[i], count, NULL);
        if (load > most) most = load, *at = i;
    }
    return most;
}

static double crushing_ratio(const studs *s, int32_t count, double load) {
    const double header = crush(s, &s->header, count, s->header_width, load, "", NULL),
                 plate = crush(s, &s->plate, count, s->width, load, "", NULL);
    return fmax(frame_given(header) ? header : 0, frame_given(plate) ? plate : 0);
}

static frame_status too_few(const char *field, frame_status status) {
    const char *valid = "a larger size, more studs, or studs held along their length: l_e/d and R_B of at most 50";
    if (status != FRAME_OUTSIDE_SCOPE) return status;
    return frame_fail(status, field, "", valid, "%s: the studs are too slender; valid is %s", field, valid);
}

/* The fewest that hold, or the number given; the most where none hold. */
static frame_status choose(const studs *s, int32_t given, int32_t jacks, const char *field, stack *of,
                           double *wind_width, int *at) {
    const int32_t from = is_named(given) ? given : 1, to = is_named(given) ? given : MOST_STUDS;
    frame_status status = FRAME_OK;
    for (of->count = from;; of->count++) {
        int crushing;
        status = find_worst(s, jacks, of, wind_width, at);
        if (status && status != FRAME_OUTSIDE_SCOPE) return status;
        if (of->count == to) break;
        if (status || !frame_holds(of->found.ratio)) continue;
        if (jacks || frame_holds(crushing_ratio(s, of->count, find_crushing(s, of->count, &crushing)))) break;
    }
    return too_few(is_named(given) ? field : "size", status);
}

static void lead(frame_opening_studs_out *out, double ratio, frame_opening_part part) {
    if (frame_given(ratio) && ratio > out->ratio) out->ratio = ratio, out->governs = part;
}

static void give(const studs *s, const stack *jacks, const stack *kings, frame_opening_studs_out *out,
                 frame_working *record) {
    int at = 0;
    out->crushing_load_lb = find_crushing(s, jacks->count, &at);
    out->header_combination = s->cases[at].which;
    out->header_ratio = crush(s, &s->header, jacks->count, s->header_width, out->crushing_load_lb,
                              "The header over the jack studs", record);
    out->plate_ratio =
        crush(s, &s->plate, jacks->count, s->width, out->crushing_load_lb, "The plate under the jack studs", record);
    out->jacks = jacks->count, out->kings = kings->count;
    out->jack_combination = jacks->combination, out->king_combination = kings->combination;
    out->jack_ratio = jacks->found.ratio, out->king_ratio = kings->found.ratio;
    out->jack_load_lb = jacks->load_lb, out->jack_capacity_lb = jacks->found.capacity_lb;
    out->king_load_lb = kings->load_lb, out->king_wind_plf = kings->wind_plf;
    out->ratio = -1;
    lead(out, out->jack_ratio, FRAME_OPENING_JACKS);
    lead(out, out->header_ratio, FRAME_OPENING_HEADER);
    lead(out, out->plate_ratio, FRAME_OPENING_PLATE);
    lead(out, out->king_ratio, FRAME_OPENING_KINGS);
    out->passes = frame_holds(out->ratio);
}

static frame_known worst_of(const studs *s, const stack *jacks, const stack *kings) {
    const frame_load_rules rules = {s->in->method, s->in->load_edition, s->in->live_duration};
    const frame_known each[] = {jacks->found.known, kings->found.known, frame_load_cases_known_by(&rules),
                                frame_given(s->header.F_c_perp) ? s->header.known : FRAME_KNOWN_READ,
                                frame_given(s->plate.F_c_perp) ? s->plate.known : FRAME_KNOWN_READ};
    frame_known worst = FRAME_KNOWN_READ;
    for (size_t i = 0; i < sizeof each / sizeof each[0]; i++)
        if (each[i] > worst) worst = each[i];
    return worst;
}

#define PASS_ON(bits, name) \
    ((bits)&FRAME_BIT(FRAME_COLUMN_CAUTION_##name) ? FRAME_BIT(FRAME_OPENING_STUDS_CAUTION_##name) : 0)

static void remark(const studs *s, const stack *jacks, const stack *kings, frame_opening_studs_out *out) {
    const uint64_t both = jacks->found.cautions | kings->found.cautions;
    const int snow = (kinds_of(s->in) >> FRAME_LOAD_SNOW) & 1;
    out->known = worst_of(s, jacks, kings);
    out->cautions = FRAME_BIT(FRAME_OPENING_STUDS_CAUTION_SHORING) | FRAME_BIT(FRAME_OPENING_STUDS_CAUTION_LOADS) |
                    PASS_ON(both, STAMP) | PASS_ON(both, DOUBTFUL) | PASS_ON(both, SUPERSEDED);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_OPENING_STUDS_CAUTION_MEMORY);
    if (!s->in->weak_axis_held) out->cautions |= PASS_ON(both, PLIES);
    if (s->in->wind_psf > 0) out->cautions |= FRAME_BIT(FRAME_OPENING_STUDS_CAUTION_SPREAD);
    if (snow && s->in->load_edition != FRAME_LOADS_ASCE_7_22)
        out->cautions |= FRAME_BIT(FRAME_OPENING_STUDS_CAUTION_SNOW_BASIS);
    if (!out->passes && (out->jacks == MOST_STUDS || out->kings == MOST_STUDS))
        out->cautions |= FRAME_BIT(FRAME_OPENING_STUDS_CAUTION_NONE);
    out->not_checked = FRAME_BIT(FRAME_OPENING_STUDS_UNCHECKED_CODE) | FRAME_BIT(FRAME_OPENING_STUDS_UNCHECKED_HEADER) |
                       FRAME_BIT(FRAME_OPENING_STUDS_UNCHECKED_UPLIFT) |
                       FRAME_BIT(FRAME_OPENING_STUDS_UNCHECKED_NAILS) | FRAME_BIT(FRAME_OPENING_STUDS_UNCHECKED_BELOW);
    if (!frame_given(s->header.F_c_perp)) out->not_checked |= FRAME_BIT(FRAME_OPENING_STUDS_UNCHECKED_CRUSHING);
    if (!frame_given(s->plate.F_c_perp)) out->not_checked |= FRAME_BIT(FRAME_OPENING_STUDS_UNCHECKED_PLATE);
    out->not_checked |=
        FRAME_BIT(s->in->wind_psf > 0 ? FRAME_OPENING_STUDS_UNCHECKED_DEFLECTION : FRAME_OPENING_STUDS_UNCHECKED_WIND);
}

static frame_status compute(const frame_opening_studs_in *in, frame_opening_studs_out *out, frame_working *record) {
    studs s;
    stack jacks, kings;
    int jack_case = 0, king_case = 0;
    double wind_width = 0;
    frame_status status = begin(in, &s);
    memset(&jacks, 0, sizeof jacks), memset(&kings, 0, sizeof kings);
    if (!status) status = choose(&s, in->jacks, 0, "jacks", &jacks, &wind_width, &jack_case);
    if (!status) status = choose(&s, in->kings, jacks.count, "kings", &kings, &wind_width, &king_case);
    if (!status) status = jacks_under(&s, &s.cases[jack_case], &jacks, record);
    if (status) return status;
    give(&s, &jacks, &kings, out, record);
    status = kings_under(&s, jacks.count, &s.cases[king_case], &kings, &out->wind_width_in, record);
    if (!status) remark(&s, &jacks, &kings, out);
    return status;
}
FRAME_IMPLEMENT(opening_studs, compute);
