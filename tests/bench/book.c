/* Speed of the code book's look-ups through the C interface, a call at a time. The spans of joists stand beside bsearch
 * over a flat sorted array of the same cells, in the same run; the others are given alone. With --check only the
 * answers are compared. */
#define _POSIX_C_SOURCE 200809L
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <frame/frame.h>

enum { JOBS = 1024, ROUNDS = 40, REPEATS = 20 };

static volatile double sink;

static double now(void) {
    struct timespec time;
    clock_gettime(CLOCK_MONOTONIC, &time);
    return (double)time.tv_sec + 1e-9 * (double)time.tv_nsec;
}

/* A cell of the flat array: all that picks it, and its span. */
typedef struct cell {
    int32_t use, size, species, grade, spacing, load;
    double span;
} cell;

static frame_code_joist_span_in joists[JOBS];
static cell cells[JOBS], keys[JOBS];

static int by_key(const void *a, const void *b) {
    return memcmp(a, b, offsetof(cell, span));
}

static void must(frame_status status) {
    if (!status) return;
    printf("%s\n", frame_error_text());
    exit(1);
}

/* Every 2x6 to 2x12 of four species and two grades at four spacings, under the loads of eight half tables. */
static void prepare_joists(void) {
    static const char *const species[] = {"DFL", "HF", "SPF", "SP"}, *const grades[] = {"No.1", "No.2"};
    static const double spacings[] = {12, 16, 19.2, 24};
    static const struct load {
        frame_code_use use;
        double live, snow, dead, limit;
    } loads[] = {{FRAME_CODE_USE_FLOOR, 40, 0, 10, 360},   {FRAME_CODE_USE_FLOOR, 30, 0, 20, 360},
                 {FRAME_CODE_USE_CEILING, 20, 0, 10, 240}, {FRAME_CODE_USE_RAFTER, 20, 0, 10, 180},
                 {FRAME_CODE_USE_RAFTER, 0, 30, 10, 180},  {FRAME_CODE_USE_RAFTER, 0, 50, 20, 240},
                 {FRAME_CODE_USE_RAFTER, 0, 70, 10, 240},  {FRAME_CODE_USE_RAFTER, 0, 70, 20, 180}};
    for (int i = 0; i < JOBS; i++) {
        frame_code_joist_span_in *in = &joists[i];
        frame_code_joist_span_out out;
        const int k = i * 389 % JOBS; /* in no order */
        const struct load *load = &loads[k >> 7];
        must(frame_code_joist_span_in_init(in));
        in->use = load->use;
        in->size = FRAME_SIZE(2, (load->use == FRAME_CODE_USE_CEILING ? 4 : 6) + 2 * (k & 3));
        must(frame_species_find(species[k >> 2 & 3], &in->species));
        must(frame_grade_find(grades[k >> 4 & 1], &in->grade));
        in->spacing_in = spacings[k >> 5 & 3];
        in->dead_psf = load->dead;
        if (load->live > 0) in->live_psf = load->live;
        if (load->snow > 0) in->snow_psf = load->snow;
        in->deflection_limit = load->limit;
        in->edition = FRAME_CODE_2021;
        in->doubtful = 1;
        must(frame_code_joist_span(in, &out, NULL));
        keys[i] =
            (cell){in->use, in->size, in->species, in->grade, (int32_t)(10 * in->spacing_in), k >> 7, out.span_in};
    }
    memcpy(cells, keys, sizeof keys);
    qsort(cells, JOBS, sizeof *cells, by_key);
}

static double run_joists(void) {
    double sum = 0;
    frame_code_joist_span_out out;
    for (int i = 0; i < JOBS; i++) {
        if (frame_code_joist_span(&joists[i], &out, NULL)) exit(1);
        sum += out.span_in;
    }
    return sum;
}

static double run_bsearch(void) {
    double sum = 0;
    for (int i = 0; i < JOBS; i++) {
        const cell *found = bsearch(&keys[i], cells, JOBS, sizeof *cells, by_key);
        if (!found) exit(1);
        sum += found->span;
    }
    return sum;
}

static double spans[JOBS];

static double run_batch(void) {
    static int32_t sizes[JOBS], species[JOBS], grades[JOBS];
    static double spacings[JOBS];
    for (int i = 0; i < JOBS; i++) {
        sizes[i] = joists[i].size, species[i] = joists[i].species, grades[i] = joists[i].grade;
        spacings[i] = joists[i].spacing_in;
    }
    frame_code_joist_span_in base = joists[0];
    base.use = FRAME_CODE_USE_FLOOR, base.live_psf = 40, base.dead_psf = 10, base.deflection_limit = 360;
    base.snow_psf = FRAME_NOT_GIVEN;
    const frame_batch_column in[] = {
        {"size", sizes, 4}, {"species", species, 4}, {"grade", grades, 4}, {"spacing_in", spacings, 8}};
    const frame_batch_column out[] = {{"span_in", spans, 8}};
    if (frame_batch(frame_calculation_find("code_joist_span"), &base, in, 4, out, 1, JOBS, NULL)) exit(1);
    return spans[JOBS - 1];
}

static frame_code_header_span_in headers[JOBS];
static frame_code_heel_nails_in heels[JOBS];
static frame_code_deck_beam_span_in beams[JOBS];
static frame_code_hole_in holes[JOBS];

static void prepare_others(void) {
    static const double widths[] = {144, 200, 288, 432}, slopes[] = {3, 4, 5, 7, 9, 12},
                        roofs[] = {144, 240, 288, 336, 432};
    for (int i = 0; i < JOBS; i++) {
        must(frame_code_header_span_in_init(&headers[i]));
        headers[i].supports = 1 + i % 5;
        headers[i].size = FRAME_SIZE(2, 8 + 2 * (i % 3));
        headers[i].plies = 2 + i / 3 % 3;
        headers[i].ground_snow_psf = i % 2 ? 30 : 50;
        headers[i].building_width_in = widths[i / 7 % 4];
        headers[i].edition = i % 11 ? FRAME_CODE_2021 : FRAME_CODE_2018;
        must(frame_code_heel_nails_in_init(&heels[i]));
        heels[i].slope = slopes[i % 6] / 12;
        heels[i].spacing_in = i % 2 ? 16 : 24;
        heels[i].roof_span_in = roofs[i % 5];
        if (heels[i].roof_span_in == 288) heels[i].roof_span_in = 240;
        heels[i].ground_snow_psf = i % 3 ? 30 : 0;
        heels[i].edition = FRAME_CODE_2021;
        heels[i].covering = 1;
        must(frame_code_deck_beam_span_in_init(&beams[i]));
        must(frame_species_find(i % 2 ? "SP" : "SPF", &beams[i].species));
        beams[i].size = FRAME_SIZE(2, 8 + 2 * (i % 3));
        beams[i].plies = 2 + i % 2;
        beams[i].joist_span_in = 72 + i % 100;
        beams[i].joist_cantilever_in = i % 5;
        beams[i].live_psf = 40;
        beams[i].edition = FRAME_CODE_2021;
        beams[i].doubtful = 1;
        must(frame_code_hole_in_init(&holes[i]));
        holes[i].member = i % 2 ? FRAME_CODE_MEMBER_JOIST : FRAME_CODE_MEMBER_STUD;
        holes[i].size = FRAME_SIZE(2, 6 + 2 * (i % 4));
        holes[i].diameter_in = 0.5 + i % 16 * 0.25;
        holes[i].edition = FRAME_CODE_2021;
    }
}

#define RUN(NAME, X, FIELD)                             \
    static double NAME(void) {                          \
        double sum = 0;                                 \
        frame_##X##_out out;                            \
        for (int i = 0; i < JOBS; i++) {                \
            must(frame_##X(&NAME##_of[i], &out, NULL)); \
            sum += (double)out.FIELD;                   \
        }                                               \
        return sum;                                     \
    }
#define run_headers_of headers
#define run_heels_of heels
#define run_beams_of beams
#define run_holes_of holes
RUN(run_headers, code_header_span, span_in)
RUN(run_heels, code_heel_nails, nails)
RUN(run_beams, code_deck_beam_span, span_in)
RUN(run_holes, code_hole, verdict)

/* One question of each of the others, over and over. */
#define SAME(NAME, X, FIELD)                         \
    static frame_##X##_in NAME##_in;                 \
    static double NAME(void) {                       \
        double sum = 0;                              \
        frame_##X##_out out;                         \
        for (int i = 0; i < JOBS; i++) {             \
            must(frame_##X(&NAME##_in, &out, NULL)); \
            sum += (double)out.FIELD;                \
        }                                            \
        return sum;                                  \
    }
SAME(run_deck_joist, code_deck_joist_span, span_in)
SAME(run_deck_post, code_deck_post, height_in)
SAME(run_footing, code_deck_footing, round_diameter_in)
SAME(run_ledger, code_ledger_spacing, spacing_in)
SAME(run_uplift, code_uplift, uplift_lb)
SAME(run_cantilever, code_floor_cantilever, cantilever_in)
SAME(run_stud, code_stud, spacing_in)
SAME(run_kings, code_king_studs, full_height_studs)
SAME(run_panel, code_panel_span, floor_span_in)
SAME(run_bracing, code_bracing, table_wind_in)

#define SET(NAME, X)                       \
    must(frame_##X##_in_init(&NAME##_in)); \
    NAME##_in.edition = FRAME_CODE_2021

static void prepare_same(void) {
    SET(run_deck_joist, code_deck_joist_span);
    run_deck_joist_in.size = FRAME_SIZE(2, 8), run_deck_joist_in.spacing_in = 16, run_deck_joist_in.live_psf = 40;
    must(frame_species_find("SP", &run_deck_joist_in.species));
    SET(run_deck_post, code_deck_post);
    run_deck_post_in.size = FRAME_SIZE(6, 6), run_deck_post_in.tributary_ft2 = 70, run_deck_post_in.live_psf = 40;
    run_deck_post_in.species = run_deck_joist_in.species;
    SET(run_footing, code_deck_footing);
    run_footing_in.tributary_ft2 = 70, run_footing_in.soil_psf = 1500, run_footing_in.live_psf = 40;
    SET(run_ledger, code_ledger_spacing);
    run_ledger_in.fastener = FRAME_CODE_LEDGER_LAG, run_ledger_in.joist_span_in = 130, run_ledger_in.sheathing_in = 0.5;
    run_ledger_in.live_psf = 40;
    SET(run_uplift, code_uplift);
    run_uplift_in.slope = 0.5, run_uplift_in.spacing_in = 24, run_uplift_in.roof_span_in = 300,
    run_uplift_in.wind_mph = 118;
    run_uplift_in.exposure = FRAME_CODE_EXPOSURE_B, run_uplift_in.roof_height_in = 300, run_uplift_in.overhang_in = 12;
    SET(run_cantilever, code_floor_cantilever);
    run_cantilever_in.carries = FRAME_CODE_CANTILEVER_WALL, run_cantilever_in.size = FRAME_SIZE(2, 10);
    run_cantilever_in.spacing_in = 16, run_cantilever_in.ground_snow_psf = 25, run_cantilever_in.roof_width_in = 300;
    SET(run_stud, code_stud);
    run_stud_in.size = FRAME_SIZE(2, 6), run_stud_in.supports = FRAME_CODE_ON_STUDS_FLOOR_ROOF,
    run_stud_in.height_in = 97;
    SET(run_kings, code_king_studs);
    run_kings_in.header_span_in = 80, run_kings_in.wind_mph = 120, run_kings_in.exposure = FRAME_CODE_EXPOSURE_B;
    SET(run_panel, code_panel_span);
    run_panel_in.rating = FRAME_CODE_PANEL_32_16;
    SET(run_bracing, code_bracing);
    run_bracing_in.method = FRAME_CODE_BRACING_WSP, run_bracing_in.stories = 2, run_bracing_in.story = 1;
    run_bracing_in.wind_mph = 118, run_bracing_in.exposure = FRAME_CODE_EXPOSURE_C,
    run_bracing_in.seismic = FRAME_CODE_SEISMIC_B;
    run_bracing_in.line_spacing_in = 300, run_bracing_in.lines = 2, run_bracing_in.eave_to_ridge_in = 100;
    run_bracing_in.wall_height_in = 108, run_bracing_in.gypsum_inside = 1, run_bracing_in.blocked = 1;
}

static const struct {
    const char *name;
    double (*run)(void);
} others[] = {{"code_header_span, C", run_headers},
              {"code_heel_nails, C", run_heels},
              {"code_deck_beam_span, C", run_beams},
              {"code_hole, C", run_holes},
              {"code_deck_joist_span, C", run_deck_joist},
              {"code_deck_post, C", run_deck_post},
              {"code_deck_footing, C", run_footing},
              {"code_ledger_spacing, C", run_ledger},
              {"code_uplift, C", run_uplift},
              {"code_floor_cantilever, C", run_cantilever},
              {"code_stud, C", run_stud},
              {"code_king_studs, C", run_kings},
              {"code_panel_span, C", run_panel},
              {"code_bracing, C", run_bracing}};
enum { OTHERS = sizeof others / sizeof *others };

static double one_round(double (*run)(void)) {
    const double begun = now();
    for (int i = 0; i < REPEATS; i++) sink = run();
    return (now() - begun) / REPEATS / JOBS * 1e9;
}

/* Ours and the rival take turns; the best round of each counts. */
static void measure(const char *what, double (*ours)(void), double (*theirs)(void)) {
    double ns = HUGE_VAL, rival_ns = HUGE_VAL;
    for (int round = 0; round < ROUNDS; round++) {
        ns = fmin(ns, one_round(ours));
        if (theirs) rival_ns = fmin(rival_ns, one_round(theirs));
    }
    printf("%-42s %9.1f ns", what, ns);
    if (theirs) printf("   %6.2f x bsearch over the same cells (%.1f ns)", ns / rival_ns, rival_ns);
    printf("\n");
}

int main(int count, char **words) {
    prepare_joists();
    prepare_others();
    prepare_same();
    if (fabs(run_joists() - run_bsearch()) > 1e-6)
        return printf("spans: %.17g, bsearch %.17g\n", run_joists(), run_bsearch()), 1;
    run_batch();
    for (int i = 0; i < OTHERS; i++) others[i].run();
    if (count > 1 && !strcmp(words[1], "--check")) return 0;
    measure("code_joist_span, C", run_joists, run_bsearch);
    measure("code_joist_span, C, batch", run_batch, run_bsearch);
    for (int i = 0; i < OTHERS; i++) measure(others[i].name, others[i].run, NULL);
    return 0;
}
