/* Speed of the C interface, each beside a rival in the same run: joist checks against the bare formulas as a C loop,
 * tape notation against strtod and snprintf. Prints nanoseconds a call and the ratio; the best of several rounds
 * counts, since the machine is shared. */
#define _POSIX_C_SOURCE 200809L
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <frame/frame.h>

enum { JOBS = 1024, ROUNDS = 60 };

static double now(void) {
    struct timespec time;
    clock_gettime(CLOCK_MONOTONIC, &time);
    return (double)time.tv_sec + 1e-9 * (double)time.tv_nsec;
}

/* What the bare formulas work on: the values looked up beforehand. */
typedef struct bare_joist {
    double b, d, span, spacing, live, dead, snow, bearing;
    double fb, fv, fc_perp, e, limit, total_limit, creep;
    /* The factors of NDS table 4.3.1 but C_D: on F_b, F_v, F_c-perp and E. */
    double c_f, c_r, c_fu, c_m_b, c_t, c_i_b, c_m_v, c_i_v, c_m_p, c_i_p, c_b, c_m_e, c_t_e, c_i_e;
} bare_joist;

static frame_joist_check_in checks[JOBS];
static bare_joist bare[JOBS];
static volatile double sink;

static void prepare(void) {
    static const int widths[] = {6, 8, 10, 12};
    static const char *const species[] = {"DFL", "HF", "SPF"};
    static const double spacings[] = {12, 16, 19.2, 24};
    for (int i = 0; i < JOBS; i++) {
        frame_joist_check_in *in = &checks[i];
        frame_design_values_in wanted;
        frame_design_values_out values;
        frame_section_in shape;
        frame_section_out section;
        frame_joist_check_in_init(in);
        in->use = FRAME_USE_FLOOR;
        in->size = FRAME_SIZE(2, widths[i % 4]);
        frame_species_find(species[i % 3], &in->species);
        frame_grade_find(i % 5 ? "No.2" : "SS", &in->grade);
        in->span_in = 90 + i % 97;
        in->spacing_in = spacings[i % 4];
        in->live_psf = 30 + 10 * (i % 2);
        in->dead_psf = 10 + i % 3;
        in->snow_psf = i % 7 * 5;
        in->bearing_in = 1.5;
        frame_design_values_in_init(&wanted);
        wanted.species = in->species;
        wanted.grade = in->grade;
        wanted.size = in->size;
        frame_section_in_init(&shape);
        shape.size = in->size;
        if (frame_design_values(&wanted, &values, NULL) || frame_section(&shape, &section, NULL)) exit(1);
        bare[i] = (bare_joist){.b = section.width_in,
                               .d = section.depth_in,
                               .span = in->span_in,
                               .spacing = in->spacing_in,
                               .live = in->live_psf,
                               .dead = in->dead_psf,
                               .snow = in->snow_psf,
                               .bearing = 1.5,
                               .fb = values.fb_psi,
                               .fv = values.fv_psi,
                               .fc_perp = values.fc_perp_psi,
                               .e = values.e_psi,
                               .limit = 360,
                               .total_limit = 240,
                               .creep = 1.5,
                               .c_f = values.size_factor_bending,
                               .c_r = 1.15,
                               .c_fu = 1,
                               .c_m_b = 1,
                               .c_t = 1,
                               .c_i_b = 1,
                               .c_m_v = 1,
                               .c_i_v = 1,
                               .c_m_p = 1,
                               .c_i_p = 1,
                               .c_b = 1,
                               .c_m_e = 1,
                               .c_t_e = 1,
                               .c_i_e = 1};
    }
}

static double larger(double a, double b) {
    return a > b ? a : b;
}

/* The figures of a check, as the library's result has them. */
typedef struct bare_result {
    double ratio, bending, shear, bearing, sag_live, sag_total;
    double moment, shear_lb, reaction, fb, fb_adjusted, fv, fv_adjusted, fc_perp, fc_perp_adjusted, e_adjusted;
    double live_in, total_in, bearing_needed, c_d;
} bare_result;

/* The same checks with nothing round them, in straight lines: four combinations, bending, shear, bearing, two
 * deflections, every figure kept. */
static void bare_check(const bare_joist *j, bare_result *r) {
    const double per_in = j->spacing / 144;
    const double dead = j->dead * per_in, live = j->live * per_in, snow = j->snow * per_in;
    const double with_snow = dead + 0.75 * live + 0.75 * snow;
    double equivalent = dead + live, greatest = dead + live, governing = dead + live;
    r->c_d = 1;
    if (dead / 0.9 > equivalent) equivalent = dead / 0.9, governing = dead, r->c_d = 0.9;
    if (snow > 0) {
        const double larger_snow = larger(dead + snow, with_snow);
        if (larger_snow / 1.15 > equivalent) equivalent = larger_snow / 1.15, governing = larger_snow, r->c_d = 1.15;
        greatest = larger(greatest, larger_snow);
    }
    const double area = j->b * j->d, s = area * j->d / 6, i = s * j->d / 2;
    r->moment = governing * j->span * j->span / 8;
    r->shear_lb = governing * (j->span / 2 - j->d);
    r->reaction = greatest * j->span / 2;
    r->fb = r->moment / s;
    r->fb_adjusted = j->fb * r->c_d * j->c_m_b * j->c_t * j->c_f * j->c_fu * j->c_i_b * j->c_r;
    r->fv = 1.5 * r->shear_lb / area;
    r->fv_adjusted = j->fv * r->c_d * j->c_m_v * j->c_t * j->c_i_v;
    r->fc_perp = r->reaction / (j->b * j->bearing);
    r->fc_perp_adjusted = j->fc_perp * j->c_m_p * j->c_t * j->c_i_p * j->c_b;
    r->e_adjusted = j->e * j->c_m_e * j->c_t_e * j->c_i_e;
    r->bearing_needed = r->reaction / (j->b * r->fc_perp_adjusted);
    const double transient = larger(larger(live, snow), 0.75 * (live + snow));
    const double bend = 5 * j->span * j->span * j->span * j->span / (384 * r->e_adjusted * i);
    r->live_in = transient * bend;
    r->total_in = (transient + j->creep * dead) * bend;
    r->bending = r->fb / r->fb_adjusted;
    r->shear = r->fv / r->fv_adjusted;
    r->bearing = r->fc_perp / r->fc_perp_adjusted;
    r->sag_live = r->live_in / (j->span / j->limit);
    r->sag_total = r->total_in / (j->span / j->total_limit);
    r->ratio = larger(larger(larger(r->bending, r->shear), r->bearing), larger(r->sag_live, r->sag_total));
}

static bare_result bare_results[JOBS];
static double run_bare(void) {
    for (int i = 0; i < JOBS; i++) bare_check(&bare[i], &bare_results[i]);
    return bare_results[JOBS - 1].ratio;
}

static double run_checks(frame_working *working) {
    double sum = 0;
    frame_joist_check_out out;
    for (int i = 0; i < JOBS; i++) {
        if (working) frame_working_clear(working);
        if (frame_joist_check(&checks[i], &out, working)) exit(1);
        sum += out.ratio;
    }
    return sum;
}

static double run_plain(void) {
    return run_checks(NULL);
}
static frame_working *shared_working;
static double run_with_working(void) {
    return run_checks(shared_working);
}

static double batch_ratio[JOBS];
/* Rows of one lumber, as the rival over arrays in bench.py has them. */
static double run_batch(void) {
    static double spans[JOBS], spacings[JOBS], lives[JOBS], deads[JOBS], snows[JOBS];
    for (int i = 0; i < JOBS; i++) {
        spans[i] = checks[i].span_in, spacings[i] = checks[i].spacing_in, lives[i] = checks[i].live_psf;
        deads[i] = checks[i].dead_psf, snows[i] = checks[i].snow_psf;
    }
    const frame_batch_column in[] = {{"span_in", spans, 8}, {"spacing_in", spacings, 8}, {"live_psf", lives, 8},
                                     {"dead_psf", deads, 8}, {"snow_psf", snows, 8}};
    const frame_batch_column out[] = {{"ratio", batch_ratio, 8}};
    if (frame_batch(frame_calculation_find("joist_check"), &checks[0], in, 5, out, 1, JOBS, NULL)) exit(1);
    return batch_ratio[JOBS - 1];
}

static double run_mixed_batch(void) {
    static double spans[JOBS], spacings[JOBS], lives[JOBS], deads[JOBS], snows[JOBS];
    static int32_t sizes[JOBS], species[JOBS], grades[JOBS];
    for (int i = 0; i < JOBS; i++) {
        spans[i] = checks[i].span_in, spacings[i] = checks[i].spacing_in, lives[i] = checks[i].live_psf;
        deads[i] = checks[i].dead_psf, snows[i] = checks[i].snow_psf;
        sizes[i] = checks[i].size, species[i] = checks[i].species, grades[i] = checks[i].grade;
    }
    const frame_batch_column in[] = {{"span_in", spans, 8},   {"spacing_in", spacings, 8}, {"live_psf", lives, 8},
                                     {"dead_psf", deads, 8},  {"snow_psf", snows, 8},      {"size", sizes, 4},
                                     {"species", species, 4}, {"grade", grades, 4}};
    const frame_batch_column out[] = {{"ratio", batch_ratio, 8}};
    if (frame_batch(frame_calculation_find("joist_check"), &checks[0], in, 8, out, 1, JOBS, NULL)) exit(1);
    return batch_ratio[JOBS - 1];
}

/* Nails in single shear: what the bare formulas work on. */
typedef struct bare_nail {
    double d, fyb, side_g, main_g, side_in, length, tip;
    /* The factors of NDS table 11.3.1. */
    double c_d, c_m, c_t, c_g, c_delta, c_eg, c_di, c_tn;
} bare_nail;
typedef struct bare_value {
    double fe_main, fe_side, reduction, main_in, penetration, least;
    double im, is, ii, iiim, iiis, iv, z, adjusted;
    int mode;
} bare_value;

static frame_dowel_lateral_in nails[JOBS];
static bare_nail bare_nails[JOBS];
static bare_value bare_values[JOBS];

static void prepare_nails(void) {
    static const char *const sizes[] = {"8d", "10d", "16d", "20d"}, *const species[] = {"DFL", "HF", "SPF", "SP"};
    static const double diameters[] = {0.131, 0.148, 0.162, 0.192}, lengths_in[] = {2.5, 3, 3.5, 4},
                        yields[] = {100000, 90000, 90000, 80000}, gravities[] = {0.5, 0.43, 0.42, 0.55};
    for (int i = 0; i < JOBS; i++) {
        frame_dowel_lateral_in *in = &nails[i];
        frame_dowel_lateral_in_init(in);
        in->kind = FRAME_DOWEL_COMMON_NAIL;
        in->size = sizes[i % 4];
        in->side_thickness_in = 0.75 + i % 7 * 0.125;
        frame_species_find(species[i % 4], &in->side_species);
        frame_species_find(species[i / 4 % 4], &in->main_species);
        in->load_duration_factor = i % 3 ? 1 : 1.6;
        bare_nails[i] = (bare_nail){diameters[i % 4],
                                    yields[i % 4],
                                    gravities[i % 4],
                                    gravities[i / 4 % 4],
                                    in->side_thickness_in,
                                    lengths_in[i % 4],
                                    2 * diameters[i % 4],
                                    in->load_duration_factor,
                                    1,
                                    1,
                                    1,
                                    1,
                                    1,
                                    1,
                                    1};
    }
}

/* All six modes with nothing round them, every figure kept. */
static void bare_lateral(const bare_nail *n, bare_value *v) {
    const double d = n->d, ls = n->side_in;
    v->fe_main = 16600 * pow(n->main_g, 1.84);
    v->fe_side = 16600 * pow(n->side_g, 1.84);
    v->reduction = d <= 0.17 ? 2.2 : 10 * d + 0.5;
    v->penetration = n->length - ls;
    v->least = 6 * d;
    v->main_in = v->penetration < 10 * d ? v->penetration - n->tip / 2 : v->penetration;
    const double lm = v->main_in, re = v->fe_main / v->fe_side, rt = lm / ls;
    const double k1 = (sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) / (1 + re);
    const double k2 = -1 + sqrt(2 * (1 + re) + 2 * n->fyb * (1 + 2 * re) * d * d / (3 * v->fe_main * lm * lm));
    const double k3 = -1 + sqrt(2 * (1 + re) / re + 2 * n->fyb * (2 + re) * d * d / (3 * v->fe_main * ls * ls));
    v->im = d * lm * v->fe_main / v->reduction;
    v->is = d * ls * v->fe_side / v->reduction;
    v->ii = k1 * d * ls * v->fe_side / v->reduction;
    v->iiim = k2 * d * lm * v->fe_main / ((1 + 2 * re) * v->reduction);
    v->iiis = k3 * d * ls * v->fe_main / ((2 + re) * v->reduction);
    v->iv = d * d / v->reduction * sqrt(2 * v->fe_main * n->fyb / (3 * (1 + re)));
    v->z = v->im, v->mode = FRAME_MODE_IM;
    if (v->is < v->z) v->z = v->is, v->mode = FRAME_MODE_IS;
    if (v->ii < v->z) v->z = v->ii, v->mode = FRAME_MODE_II;
    if (v->iiim < v->z) v->z = v->iiim, v->mode = FRAME_MODE_IIIM;
    if (v->iiis < v->z) v->z = v->iiis, v->mode = FRAME_MODE_IIIS;
    if (v->iv < v->z) v->z = v->iv, v->mode = FRAME_MODE_IV;
    v->adjusted = v->z * n->c_d * n->c_m * n->c_t * n->c_g * n->c_delta * n->c_eg * n->c_di * n->c_tn;
}

static double run_bare_nails(void) {
    for (int i = 0; i < JOBS; i++) bare_lateral(&bare_nails[i], &bare_values[i]);
    return bare_values[JOBS - 1].z;
}

static double run_nails(void) {
    double sum = 0;
    frame_dowel_lateral_out out;
    for (int i = 0; i < JOBS; i++) {
        if (frame_dowel_lateral(&nails[i], &out, NULL)) exit(1);
        sum += out.adjusted_lb;
    }
    return sum;
}

static double nail_values[JOBS];
static double run_nail_batch(void) {
    static double thicknesses[JOBS], durations[JOBS], diameters[JOBS], lengths_in[JOBS];
    static int32_t sides[JOBS], mains[JOBS];
    frame_dowel_lateral_in base = nails[0];
    base.size = NULL;
    for (int i = 0; i < JOBS; i++) {
        thicknesses[i] = nails[i].side_thickness_in, durations[i] = nails[i].load_duration_factor;
        diameters[i] = bare_nails[i].d, lengths_in[i] = bare_nails[i].length;
        sides[i] = nails[i].side_species, mains[i] = nails[i].main_species;
    }
    const frame_batch_column in[] = {{"side_thickness_in", thicknesses, 8},
                                     {"load_duration_factor", durations, 8},
                                     {"diameter_in", diameters, 8},
                                     {"length_in", lengths_in, 8},
                                     {"side_species", sides, 4},
                                     {"main_species", mains, 4}};
    const frame_batch_column out[] = {{"adjusted_lb", nail_values, 8}};
    if (frame_batch(frame_calculation_find("dowel_lateral"), &base, in, 6, out, 1, JOBS, NULL)) exit(1);
    return nail_values[JOBS - 1];
}

static int same_nails(void) {
    run_nail_batch();
    for (int i = 0; i < JOBS; i++) {
        frame_dowel_lateral_out out;
        bare_value mine;
        if (frame_dowel_lateral(&nails[i], &out, NULL)) return printf("%s\n", frame_error_text()), 0;
        bare_lateral(&bare_nails[i], &mine);
        if (fabs(mine.adjusted - out.adjusted_lb) > 1e-9 * mine.adjusted || mine.mode != out.mode ||
            fabs(mine.adjusted - nail_values[i]) > 1e-9 * mine.adjusted)
            return printf("nail %d: %.12g, bare %.12g\n", i, out.adjusted_lb, mine.adjusted), 0;
    }
    return 1;
}

static char tape_texts[JOBS][32], plain_texts[JOBS][32];
static double lengths[JOBS];

static void prepare_texts(void) {
    for (int i = 0; i < JOBS; i++) {
        lengths[i] = (i * 37 % 9000) / 16.0;
        frame_tape_format(lengths[i], NULL, tape_texts[i], sizeof tape_texts[i]);
        snprintf(plain_texts[i], sizeof plain_texts[i], "%.4f", lengths[i]);
    }
}

static double run_parse(void) {
    double sum = 0, value;
    for (int i = 0; i < JOBS; i++) {
        if (frame_tape_parse(tape_texts[i], &value)) exit(1);
        sum += value;
    }
    return sum;
}

static double run_strtod(void) {
    double sum = 0;
    for (int i = 0; i < JOBS; i++) sum += strtod(plain_texts[i], NULL);
    return sum;
}

static double run_format(void) {
    char text[32];
    double sum = 0;
    for (int i = 0; i < JOBS; i++) {
        if (frame_tape_format(lengths[i], NULL, text, sizeof text)) exit(1);
        sum += text[0];
    }
    return sum;
}

static double run_snprintf(void) {
    char text[32];
    double sum = 0;
    for (int i = 0; i < JOBS; i++) {
        snprintf(text, sizeof text, "%.4f", lengths[i]);
        sum += text[0];
    }
    return sum;
}

static double one_round(double (*run)(void), int repeats) {
    const double begun = now();
    for (int i = 0; i < repeats; i++) sink = run();
    return (now() - begun) / repeats / JOBS * 1e9;
}

/* Ours and the rival take turns, so that both meet the same neighbours on the machine; the best round of each counts.
 */
static void compare(const char *what, double (*ours)(void), int repeats, const char *rival, double (*theirs)(void),
                    int their_repeats) {
    double ns = INFINITY, rival_ns = INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
        ns = fmin(ns, one_round(ours, repeats));
        rival_ns = fmin(rival_ns, one_round(theirs, their_repeats));
    }
    printf("%-42s %9.1f ns %9.2f million/s   %6.2f x %s (%.1f ns)\n", what, ns, 1e3 / ns, ns / rival_ns, rival,
           rival_ns);
}

/* Longest spans: the same jobs asked the other way round, beside the closed forms. */
static frame_joist_span_in span_jobs[JOBS];
static double bare_spans[JOBS];

static void prepare_spans(void) {
    for (int i = 0; i < JOBS; i++) {
        frame_joist_span_in *in = &span_jobs[i];
        frame_joist_span_in_init(in);
        in->use = FRAME_USE_FLOOR;
        in->size = checks[i].size, in->species = checks[i].species, in->grade = checks[i].grade;
        in->spacing_in = checks[i].spacing_in, in->live_psf = checks[i].live_psf;
        in->dead_psf = checks[i].dead_psf, in->snow_psf = checks[i].snow_psf;
    }
}

static double run_spans(void) {
    double sum = 0;
    frame_joist_span_out out;
    for (int i = 0; i < JOBS; i++) {
        if (frame_joist_span(&span_jobs[i], &out, NULL)) exit(1);
        sum += out.span_in;
    }
    return sum;
}

static double bare_span(const bare_joist *j) {
    const double per_in = j->spacing / 144, dead = j->dead * per_in, live = j->live * per_in, snow = j->snow * per_in;
    const double with_snow = larger(dead + snow, dead + 0.75 * live + 0.75 * snow);
    double governing = dead + live, c_d = 1, greatest = dead + live;
    if (dead / 0.9 > governing) governing = dead, c_d = 0.9;
    if (snow > 0) {
        if (with_snow / 1.15 > governing / c_d) governing = with_snow, c_d = 1.15;
        greatest = larger(greatest, with_snow);
    }
    const double s = j->b * j->d * j->d / 6, i = s * j->d / 2;
    const double bending = sqrt(8 * j->fb * c_d * j->c_f * j->c_r * s / governing);
    const double shear = 2 * (2.0 / 3 * j->fv * c_d * j->b * j->d) / governing;
    const double sag = cbrt(384 * j->e * i / (5 * (greatest - dead) * j->limit));
    return -larger(-bending, larger(-shear, -sag));
}

static double run_bare_spans(void) {
    double sum = 0;
    for (int i = 0; i < JOBS; i++) sum += bare_spans[i] = bare_span(&bare[i]);
    return sum;
}

static int same_spans(void) {
    const double ours = run_spans(), bare_sum = run_bare_spans();
    if (fabs(ours - bare_sum) < 1e-9 * bare_sum) return 1;
    return printf("spans: %.12g, bare %.12g\n", ours, bare_sum), 0;
}

/* A table of 400 cells: five species, five grades by name, four spacings, four sizes. */
static double time_table(void) {
    static const char *const kinds[] = {"DFL", "HF", "SPF", "SP", "DFL"};
    static const char *const grades[] = {"SS", "No.1", "No.2", "No.3", "No.2"};
    frame_species species[5];
    frame_grade named[5];
    frame_span_table_in in;
    double best = INFINITY;
    frame_span_table_in_init(&in);
    for (int i = 0; i < 5; i++)
        if (frame_species_find(kinds[i], &species[i]) || frame_grade_find(grades[i], &named[i])) exit(1);
    in.use = FRAME_USE_FLOOR, in.live_psf = 40, in.dead_psf = 10;
    in.species = species, in.species_count = 5, in.grades = named, in.grade_count = 5;
    for (int round = 0; round < ROUNDS; round++) {
        frame_span_table *table;
        const double start = now();
        if (frame_span_table_solve(&in, &table, NULL) || frame_span_table_cell_count(table) != 400) exit(1);
        best = fmin(best, now() - start);
        frame_span_table_free(table);
    }
    return best * 1e3;
}

/* A group of 200 fasteners under a load beside it: the elastic shares alone as a bare loop. */
enum { GROUP = 200 };
static frame_fastener_place group_places[GROUP];
static frame_fastener_eccentric_in group_load;

static void prepare_group(void) {
    for (int i = 0; i < GROUP; i++) {
        frame_fastener_place_init(&group_places[i]);
        group_places[i].x_in = i % 20 * 1.5, group_places[i].y_in = i / 20 * 1.25 + i % 3 * 0.125;
    }
    frame_fastener_eccentric_in_init(&group_load);
    group_load.places = group_places, group_load.place_count = GROUP;
    group_load.each_lb = 120, group_load.force_y_lb = -4000, group_load.at_x_in = 60, group_load.force_x_lb = 700;
}

static double run_group(void) {
    frame_fastener_eccentric *answer;
    frame_fastener_eccentric_out out;
    if (frame_fastener_eccentric_solve(&group_load, &answer, NULL) || frame_fastener_eccentric_result(answer, &out))
        exit(1);
    frame_fastener_eccentric_free(answer);
    return out.ratio;
}

static double group_forces[GROUP][3];
static double run_bare_group(void) {
    double x = 0, y = 0, polar = 0, most = 0;
    for (int i = 0; i < GROUP; i++) x += group_places[i].x_in / GROUP, y += group_places[i].y_in / GROUP;
    for (int i = 0; i < GROUP; i++) {
        const double dx = group_places[i].x_in - x, dy = group_places[i].y_in - y;
        polar += dx * dx + dy * dy;
    }
    const double moment = (group_load.at_x_in - x) * group_load.force_y_lb + y * group_load.force_x_lb,
                 turn = moment / polar;
    for (int i = 0; i < GROUP; i++) {
        double *force = group_forces[i];
        force[0] = group_load.force_x_lb / GROUP - turn * (group_places[i].y_in - y);
        force[1] = group_load.force_y_lb / GROUP + turn * (group_places[i].x_in - x);
        force[2] = sqrt(force[0] * force[0] + force[1] * force[1]);
        most = larger(most, force[2]);
    }
    return most / group_load.each_lb;
}

static int same_group(void) {
    const double ours = run_group(), bare_ratio = run_bare_group();
    if (fabs(ours - bare_ratio) < 1e-9 * bare_ratio) return 1;
    return printf("eccentric group: %.12g, bare %.12g\n", ours, bare_ratio), 0;
}

static double best_of(double (*run)(void), int calls) {
    double best = INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
        const double start = now();
        for (int i = 0; i < calls; i++) sink = run();
        best = fmin(best, (now() - start) * 1e9 / calls);
    }
    return best;
}

static void compare_group(const char *what) {
    const double ns = best_of(run_group, 20), bare_ns = best_of(run_bare_group, 200);
    printf("%-42s %9.1f us each %30.2f x elastic shares alone (%.2f us)\n", what, ns / 1e3, ns / bare_ns,
           bare_ns / 1e3);
}

/* The bare loop must come to the same ratios, or the comparison is worth nothing. */
static int same_answers(void) {
    for (int i = 0; i < JOBS; i++) {
        frame_joist_check_out out;
        if (frame_joist_check(&checks[i], &out, NULL)) return printf("%s\n", frame_error_text()), 0;
        bare_result mine;
        bare_check(&bare[i], &mine);
        if (fabs(mine.ratio - out.ratio) > 1e-9 * mine.ratio || fabs(mine.fb - out.fb_actual_psi) > 1e-9 * mine.fb)
            return printf("joist %d: %.12g, bare %.12g\n", i, out.ratio, mine.ratio), 0;
    }
    return 1;
}

int main(int count, char **words) {
    const int quick = count > 1 && !strcmp(words[1], "--check"); /* the answers, not the speed */
    prepare();
    prepare_texts();
    prepare_nails();
    prepare_group();
    prepare_spans();
    if (!same_answers() || !same_spans() || !same_nails() || !same_group() || frame_working_new(&shared_working))
        return 1;
    if (quick) return 0;
    compare("joist_check, C", run_plain, 20, "bare formulas", run_bare, 50);
    compare("joist_check, C, batch", run_batch, 50, "bare formulas", run_bare, 50);
    compare("joist_check, C, batch, lumber by the row", run_mixed_batch, 20, "bare formulas", run_bare, 50);
    compare("joist_check, C, with working", run_with_working, 1, "bare formulas", run_bare, 50);
    compare("joist_span, C", run_spans, 20, "closed forms", run_bare_spans, 50);
    printf("%-42s %9.3f ms\n", "span_table, C, 400 cells", time_table());
    compare("dowel_lateral, C", run_nails, 20, "bare formulas", run_bare_nails, 50);
    compare("dowel_lateral, C, batch", run_nail_batch, 20, "bare formulas", run_bare_nails, 50);
    compare_group("fastener_eccentric, 200 fasteners");
    group_load.law = FRAME_SLIP_CURVE, group_load.curve_rate_per_in = 10, group_load.curve_power = 0.55;
    group_load.curve_slip_in = 0.34;
    compare_group("fastener_eccentric, 200 with a slip curve");
    compare("tape_parse", run_parse, 20, "strtod", run_strtod, 20);
    compare("tape_format", run_format, 20, "snprintf", run_snprintf, 20);
    frame_working_free(shared_working);
    return 0;
}
