/* Rows of columns: each as a call of its own, those that are refused among those that are not. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/fields.h>
#include <frame/strength.h>

#include "lumber_names.h"

enum { ROWS = 240 };

typedef struct columns {
    double span[ROWS], live[ROWS], snow[ROWS], ratio[ROWS], bending[ROWS];
    int32_t kind[ROWS], edge[ROWS], governs[ROWS];
    uint64_t assumed[ROWS];
    frame_status status[ROWS];
} columns;

/* Every seventh row has something that is not plainly in order. */
static void vary(columns *c) {
    const frame_species kinds[] = {species("DFL"), species("HF"), species("SPF"), species("SP")};
    for (int i = 0; i < ROWS; i++) {
        c->span[i] = 90 + i % 83, c->live[i] = 30 + i % 11, c->snow[i] = i % 3 ? 5.0 * (i % 5) : FRAME_NOT_GIVEN;
        c->kind[i] = kinds[i % 4];
        c->edge[i] = i % 5 ? FRAME_EDGE_HELD : FRAME_NOT_GIVEN_INT;
        if (i % 7 == 3) c->span[i] = i % 2 ? -1 : NAN;
        if (i % 7 == 5) c->live[i] = i % 2 ? 1e9 : FRAME_NOT_GIVEN;
        if (i % 35 == 6) c->kind[i] = 12345;
        if (i % 35 == 13) c->edge[i] = 9;
    }
}

static frame_joist_check_in base_of(void) {
    frame_joist_check_in in;
    frame_joist_check_in_init(&in);
    in.use = FRAME_USE_FLOOR, in.size = FRAME_SIZE(2, 10), in.grade = grade("No.2");
    in.spacing_in = 16, in.dead_psf = 10;
    return in;
}

static void run_rows(columns *c) {
    const frame_joist_check_in base = base_of();
    const frame_batch_column in[] = {{"span_in", c->span, 8},
                                     {"live_psf", c->live, 8},
                                     {"snow_psf", c->snow, 8},
                                     {"species", c->kind, 4},
                                     {"compression_edge", c->edge, 4}};
    const frame_batch_column out[] = {{"ratio", c->ratio, 8},
                                      {"bending_ratio", c->bending, 8},
                                      {"governs", c->governs, 4},
                                      {"assumed", c->assumed, 8}};
    ck_assert(!frame_batch(frame_calculation_find("joist_check"), &base, in, 5, out, 4, ROWS, c->status));
}

START_TEST(each_as_a_call) {
    static columns c;
    int failed = 0;
    vary(&c);
    run_rows(&c);
    for (int i = 0; i < ROWS; i++) {
        frame_joist_check_in in = base_of();
        frame_joist_check_out one;
        in.span_in = c.span[i], in.live_psf = c.live[i], in.snow_psf = c.snow[i], in.species = c.kind[i];
        in.compression_edge = c.edge[i];
        const frame_status status = frame_joist_check(&in, &one, NULL);
        ck_assert_int_eq(c.status[i], status);
        failed += status != 0;
        if (status) {
            ck_assert_double_eq(c.ratio[i], FRAME_NOT_GIVEN);
            ck_assert_int_eq(c.governs[i], FRAME_NOT_GIVEN_INT);
            continue;
        }
        ck_assert_double_eq(c.ratio[i], one.ratio);
        ck_assert_double_eq(c.bending[i], one.bending_ratio);
        ck_assert_int_eq(c.governs[i], one.governs);
        ck_assert_uint_eq(c.assumed[i], one.assumed);
    }
    ck_assert_int_gt(failed, ROWS / 7);
    ck_assert_int_lt(failed, ROWS / 2);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("rows of columns");
    TCase *all = tcase_create("all");
    tcase_add_test(all, each_as_a_call);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
