/* joist_check over columns of the usual kind goes through many rows at once: each comes out, to the last bit, as a call
 * of its own, whichever columns there are and wherever a row that is not in order stands. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/fields.h>
#include <frame/strength.h>

#include "lumber_names.h"

enum { ROWS = 700 };

typedef struct row {
    double span, spacing, live, dead, snow, bearing;
    int32_t size, species, grade;
} row;
typedef struct came {
    double ratio, bending, shear, bearing, deflection;
    int32_t passes, spare;
} came;

static row rows[ROWS];
static came results[ROWS];
static frame_status statuses[ROWS];

static uint32_t seed = 1;
static uint32_t below(uint32_t most) {
    seed = seed * 1664525u + 1013904223u;
    return (seed >> 8) % most;
}

/* stray: one row in that many is out of order; 0: none. */
static void make_rows(uint32_t stray) {
    const frame_species kinds[] = {species("DFL"), species("HF"), species("SPF"), species("SP")};
    const frame_size sizes[] = {FRAME_SIZE(2, 4), FRAME_SIZE(2, 6), FRAME_SIZE(2, 8), FRAME_SIZE(2, 10),
                                FRAME_SIZE(2, 12)};
    const frame_grade grades[] = {grade("No.1"), grade("No.2"), grade("SS")};
    for (int i = 0; i < ROWS; i++) {
        row *r = &rows[i];
        *r = (row){.span = 24 + below(2400) / 10.0,
                   .spacing = (double[]){12, 16, 19.2, 24, 32}[below(5)],
                   .live = below(3) ? below(100) : 0,
                   .dead = below(4) ? 5 + below(40) / 2.0 : 0,
                   .snow = below(2) ? below(90) : 0,
                   .bearing = 1 + below(5) / 2.0,
                   .size = sizes[below(5)],
                   .species = kinds[below(4)],
                   .grade = grades[below(3)]};
        if (!stray || below(stray)) continue;
        double *const numbers[] = {&r->span, &r->spacing, &r->live, &r->dead, &r->snow, &r->bearing};
        const double odd[] = {NAN, -1, 1e9, FRAME_NOT_GIVEN, INFINITY, r->span};
        *numbers[below(6)] = odd[below(6)];
        if (!below(4)) r->grade = 999;
        if (!below(4)) r->size = FRAME_SIZE(6, 6);
    }
}

static frame_joist_check_in base_of(frame_joist_use use) {
    frame_joist_check_in in;
    frame_joist_check_in_init(&in);
    in.use = use, in.size = FRAME_SIZE(2, 10), in.species = species("SPF"), in.grade = grade("No.2");
    in.span_in = 150, in.live_psf = 40;
    return in;
}

/* Columns by the bits of a mask. */
static size_t columns_of(unsigned mask, frame_batch_column *columns) {
    const frame_batch_column all[] = {
        {"span_in", &rows->span, sizeof *rows},  {"spacing_in", &rows->spacing, sizeof *rows},
        {"live_psf", &rows->live, sizeof *rows}, {"dead_psf", &rows->dead, sizeof *rows},
        {"snow_psf", &rows->snow, sizeof *rows}, {"bearing_in", &rows->bearing, sizeof *rows},
        {"size", &rows->size, sizeof *rows},     {"species", &rows->species, sizeof *rows},
        {"grade", &rows->grade, sizeof *rows}};
    size_t count = 0;
    for (size_t i = 0; i < sizeof all / sizeof *all; i++)
        if (mask >> i & 1) columns[count++] = all[i];
    return count;
}

static void fill(frame_joist_check_in *in, unsigned mask, const row *r) {
    double *const numbers[] = {&in->span_in,  &in->spacing_in, &in->live_psf,
                               &in->dead_psf, &in->snow_psf,   &in->bearing_in};
    const double given[] = {r->span, r->spacing, r->live, r->dead, r->snow, r->bearing};
    for (int i = 0; i < 6; i++)
        if (mask >> i & 1) *numbers[i] = given[i];
    if (mask >> 6 & 1) in->size = r->size;
    if (mask >> 7 & 1) in->species = r->species;
    if (mask >> 8 & 1) in->grade = r->grade;
}

static void compare(frame_joist_use use, unsigned mask) {
    frame_batch_column in[9];
    const frame_joist_check_in base = base_of(use);
    const frame_batch_column out[] = {
        {"ratio", &results->ratio, sizeof *results},       {"bending_ratio", &results->bending, sizeof *results},
        {"shear_ratio", &results->shear, sizeof *results}, {"bearing_ratio", &results->bearing, sizeof *results},
        {"passes", &results->passes, sizeof *results},     {"deflection_ratio", &results->deflection, sizeof *results}};
    const size_t count = columns_of(mask, in);
    memset(results, 0, sizeof results);
    ck_assert(!frame_batch(frame_calculation_find("joist_check"), &base, in, count, out, 6, ROWS, statuses));
    for (int i = 0; i < ROWS; i++) {
        frame_joist_check_in one = base;
        frame_joist_check_out found;
        fill(&one, mask, &rows[i]);
        const frame_status status = frame_joist_check(&one, &found, NULL);
        ck_assert_msg(statuses[i] == status, "row %d, columns %x: %d, alone %d", i, mask, statuses[i], status);
        if (status) {
            ck_assert(results[i].ratio == FRAME_NOT_GIVEN && results[i].passes == FRAME_NOT_GIVEN_INT);
            continue;
        }
        const came alone = {found.ratio,
                            found.bending_ratio,
                            found.shear_ratio,
                            found.bearing_ratio,
                            found.deflection_ratio,
                            found.passes,
                            0};
        ck_assert_msg(!memcmp(&alone, &results[i], sizeof alone), "row %d, columns %x: %.17g, alone %.17g", i, mask,
                      results[i].ratio, found.ratio);
    }
}

START_TEST(as_a_call_of_its_own) {
    static const frame_joist_use uses[] = {FRAME_USE_FLOOR, FRAME_USE_CEILING, FRAME_USE_RAFTER, FRAME_USE_DECK};
    static const uint32_t strays[] = {0, 300, 9};
    make_rows(strays[_i % 3]);
    for (int use = 0; use < 4; use++)
        for (int k = 0; k < 12; k++) compare(uses[use], k ? below(512) : 0x1ff);
}
END_TEST

/* Values side by side are read where they lie. */
START_TEST(where_they_lie) {
    static double spans[ROWS], ratios[ROWS];
    const frame_joist_check_in base = base_of(FRAME_USE_FLOOR);
    const frame_batch_column in = {"span_in", spans, 8}, out = {"ratio", ratios, 8};
    for (int i = 0; i < ROWS; i++) spans[i] = 60 + i / 4.0;
    ck_assert(!frame_batch(frame_calculation_find("joist_check"), &base, &in, 1, &out, 1, ROWS, NULL));
    for (int i = 0; i < ROWS; i++) {
        frame_joist_check_in one = base;
        frame_joist_check_out found;
        one.span_in = spans[i];
        ck_assert(!frame_joist_check(&one, &found, NULL));
        ck_assert_double_eq(ratios[i], found.ratio);
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("joists over columns");
    TCase *all = tcase_create("all");
    tcase_add_loop_test(all, as_a_call_of_its_own, 0, 6);
    tcase_add_test(all, where_they_lie);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
