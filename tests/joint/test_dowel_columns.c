/* dowel_lateral over columns of the usual kind goes through many rows at once: each comes out, to the last bit, as a
 * call of its own, whichever columns there are and wherever a row that is not in order stands. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/fields.h>
#include <frame/joint.h>

enum { ROWS = 700, COLUMNS = 8, VALUES = 8 };

typedef struct row {
    double diameter, length, side, side_gravity, main_gravity, duration;
    int32_t side_species, main_species;
} row;

static row rows[ROWS];
static double results[ROWS][VALUES];
static frame_status statuses[ROWS];

static uint32_t seed = 1;
static uint32_t below(uint32_t most) {
    seed = seed * 1664525u + 1013904223u;
    return (seed >> 8) % most;
}

static frame_species species_at(uint32_t k) {
    frame_species found = FRAME_NOT_GIVEN_INT;
    ck_assert(!frame_species_find((const char *[]){"DFL", "HF", "SPF", "SP"}[k], &found));
    return found;
}

static void make_rows(uint32_t stray) {
    for (int i = 0; i < ROWS; i++) {
        row *r = &rows[i];
        *r = (row){.diameter = (double[]){0.113, 0.131, 0.148, 0.162, 0.192}[below(5)],
                   .length = 2.5 + below(40) / 16.0,
                   .side = 0.5 + below(16) / 16.0,
                   .side_gravity = 0.35 + below(12) / 50.0,
                   .main_gravity = 0.35 + below(12) / 50.0,
                   .duration = (double[]){0.9, 1, 1.15, 1.25, 1.6}[below(5)],
                   .side_species = species_at(below(4)),
                   .main_species = species_at(below(4))};
        if (!stray || below(stray)) continue;
        double *const numbers[] = {&r->diameter,     &r->length,       &r->side,
                                   &r->side_gravity, &r->main_gravity, &r->duration};
        *numbers[below(6)] = (double[]){NAN, -1, 1e9, FRAME_NOT_GIVEN, 0.25, 0}[below(6)];
        if (!below(4)) r->side_species = below(2) ? 999 : FRAME_NOT_GIVEN_INT;
    }
}

static frame_dowel_lateral_in base_of(unsigned mask, int sized) {
    frame_dowel_lateral_in in;
    frame_dowel_lateral_in_init(&in);
    in.kind = FRAME_DOWEL_COMMON_NAIL;
    if (sized) in.size = "16d";
    if (!sized && !(mask & 1)) in.diameter_in = 0.162;
    if (!sized && !(mask & 2)) in.length_in = 3.5;
    in.side_thickness_in = 1.5;
    if (!(mask & 0x48)) in.side_specific_gravity = 0.42;
    if (!(mask & 0x90)) in.main_species = species_at(2);
    return in;
}

static size_t columns_of(unsigned mask, frame_batch_column *columns) {
    const frame_batch_column all[COLUMNS] = {{"diameter_in", &rows->diameter, sizeof *rows},
                                             {"length_in", &rows->length, sizeof *rows},
                                             {"side_thickness_in", &rows->side, sizeof *rows},
                                             {"side_specific_gravity", &rows->side_gravity, sizeof *rows},
                                             {"main_specific_gravity", &rows->main_gravity, sizeof *rows},
                                             {"load_duration_factor", &rows->duration, sizeof *rows},
                                             {"side_species", &rows->side_species, sizeof *rows},
                                             {"main_species", &rows->main_species, sizeof *rows}};
    size_t count = 0;
    for (size_t i = 0; i < COLUMNS; i++)
        if (mask >> i & 1) columns[count++] = all[i];
    return count;
}

static void fill(frame_dowel_lateral_in *in, unsigned mask, const row *r) {
    double *const numbers[] = {&in->diameter_in,           &in->length_in,
                               &in->side_thickness_in,     &in->side_specific_gravity,
                               &in->main_specific_gravity, &in->load_duration_factor};
    const double given[] = {r->diameter, r->length, r->side, r->side_gravity, r->main_gravity, r->duration};
    for (int i = 0; i < 6; i++)
        if (mask >> i & 1) *numbers[i] = given[i];
    if (mask >> 6 & 1) in->side_species = r->side_species;
    if (mask >> 7 & 1) in->main_species = r->main_species;
}

static int compare(unsigned mask, int sized) {
    static const char *const names[VALUES] = {"adjusted_lb", "z_lb",      "z_im_lb",   "z_is_lb",
                                              "z_ii_lb",     "z_iiim_lb", "z_iiis_lb", "z_iv_lb"};
    frame_batch_column in[COLUMNS], out[VALUES];
    const frame_dowel_lateral_in base = base_of(mask, sized);
    const size_t count = columns_of(mask, in);
    int sound = 0;
    for (int k = 0; k < VALUES; k++) out[k] = (frame_batch_column){names[k], &results[0][k], sizeof results[0]};
    ck_assert(!frame_batch(frame_calculation_find("dowel_lateral"), &base, in, count, out, VALUES, ROWS, statuses));
    for (int i = 0; i < ROWS; i++) {
        frame_dowel_lateral_in one = base;
        frame_dowel_lateral_out f;
        fill(&one, mask, &rows[i]);
        const frame_status status = frame_dowel_lateral(&one, &f, NULL);
        ck_assert_msg(statuses[i] == status, "row %d, columns %x: %d, alone %d", i, mask, statuses[i], status);
        if (status) continue;
        sound++;
        const double alone[VALUES] = {f.adjusted_lb, f.z_lb,      f.z_im_lb,   f.z_is_lb,
                                      f.z_ii_lb,     f.z_iiim_lb, f.z_iiis_lb, f.z_iv_lb};
        ck_assert_msg(!memcmp(alone, results[i], sizeof alone), "row %d, columns %x: %.17g, alone %.17g", i, mask,
                      results[i][0], f.adjusted_lb);
    }
    return sound;
}

START_TEST(as_a_call_of_its_own) {
    int sound = 0;
    make_rows((uint32_t[]){0, 300, 9}[_i % 3]);
    sound += compare(0x3f, 0); /* all numbers */
    sound += compare(0xe7, 0); /* species instead of gravities */
    for (int k = 0; k < 24; k++) sound += compare(below(256), below(4) == 0);
    ck_assert_int_gt(sound, 2 * ROWS / 2);
}
END_TEST

/* One row among many: a shank of 1/4 inch goes by other rules, and so does a nail that is not deep enough. */
START_TEST(at_the_edges) {
    make_rows(0);
    rows[350].diameter = 0.25, rows[350].length = 4;
    ck_assert_int_gt(compare(0x3f, 0), ROWS / 2);
    make_rows(0);
    for (int i = 0; i < ROWS; i++) rows[i].side = 0.5;
    rows[130].length = rows[130].side + 5.9 * rows[130].diameter;
    rows[500].length = rows[500].side + 6 * rows[500].diameter;
    ck_assert_int_gt(compare(0x3f, 0), ROWS / 2);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("nails over columns");
    TCase *all = tcase_create("all");
    tcase_add_loop_test(all, as_a_call_of_its_own, 0, 6);
    tcase_add_test(all, at_the_edges);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
