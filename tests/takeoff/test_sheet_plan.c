/* Plans of sheets: counts that are known, offcuts, holes, turns; every plan is verified anew. */
#include "sheet_check.h"

#include "takeoff/sheet_bound.h"

static frame_sheet_plan_out solved(const sheet_job *job) {
    frame_sheet_plan *plan = plan_sheets(job);
    const frame_sheet_plan_out out = verify_sheets(job, plan);
    frame_sheet_plan_free(plan);
    return out;
}

static double any(double low, double high) {
    return low + (high - low) * (rand() % 1001) / 1000.0;
}

/* A star about a point: any simple polygon round one. */
static void want_star(sheet_job *job) {
    double xy[2 * 8];
    const int n = 3 + rand() % 5;
    for (int i = 0; i < n; i++) {
        const double angle = (i + any(-0.3, 0.3)) * 2 * acos(-1.0) / n, reach = any(6, 23);
        xy[2 * i] = reach * cos(angle);
        xy[2 * i + 1] = reach * sin(angle);
    }
    want_polygon(job, 1 + rand() % 3, xy, (size_t)n);
}

START_TEST(full_sheets) {
    static sheet_job job;
    sheets_begin(&job);
    want_rectangle(&job, 7, 48, 96);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    const frame_sheet_plan_out out = solved(&job);
    ck_assert_int_eq(out.sheets_used, 7);
    ck_assert_int_eq(out.optimal, 1);
    ck_assert_double_eq_tol(out.cost, 140, 1e-9);
    ck_assert_double_eq_tol(out.waste_share, 0, 1e-12);
    ck_assert_int_eq(FRAME_HAS(out.cautions, FRAME_SHEET_CAUTION_NOT_PROVEN), 0);
}
END_TEST

/* Two halves of a sheet need a kerf between them. */
START_TEST(the_kerf_counts) {
    static sheet_job job;
    sheets_begin(&job);
    want_rectangle(&job, 2, 48, 48);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    ck_assert_int_eq(solved(&job).sheets_used, 2);
    job.in.kerf_in = 0;
    ck_assert_int_eq(solved(&job).sheets_used, 1);
    job.in.kerf_in = 0.125;
    put_corners(job.corners[0], (const double[]){0, 0, 48, 0, 48, 47.9375, 0, 47.9375}, 4);
    ck_assert_int_eq(solved(&job).sheets_used, 1);
}
END_TEST

/* Two right triangles make a rectangle when one may be turned by half; the cut between them needs its kerf. */
START_TEST(triangles_in_pairs) {
    static sheet_job job;
    sheets_begin(&job);
    want_polygon(&job, 8, (const double[]){0, 0, 47.5, 0, 0, 95}, 3);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    const frame_sheet_plan_out out = solved(&job);
    ck_assert_int_eq(out.sheets_used, 4);
    ck_assert_int_eq(out.optimal, 1);
    job.in.turns = FRAME_SHEET_TURNS_NONE;
    ck_assert_int_eq(solved(&job).sheets_used, 8);
    job.in.reversible = 1; /* mirrored they lie the other way, but still do not pair without a turn */
    ck_assert_int_eq(solved(&job).sheets_used, 8);
}
END_TEST

START_TEST(turns) {
    static sheet_job job;
    sheets_begin(&job);
    want_rectangle(&job, 2, 90, 23);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    job.in.turns = FRAME_SHEET_TURNS_QUARTER;
    frame_sheet_plan_out out = solved(&job);
    ck_assert_int_eq(out.sheets_used, 1);
    ck_assert(FRAME_HAS(out.cautions, FRAME_SHEET_CAUTION_AXIS_TURNED));
    job.in.turns = FRAME_SHEET_TURNS_HALF; /* x then runs along the length */
    out = solved(&job);
    ck_assert_int_eq(out.sheets_used, 1);
    ck_assert(FRAME_HAS(out.cautions, FRAME_SHEET_CAUTION_ALONG_LENGTH));
    job.in.x_along = FRAME_SHEET_SIDE_WIDTH;
    frame_sheet_plan *plan = NULL;
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "parts[0]");
    ck_assert_ptr_null(plan);
    put_corners(job.corners[0], (const double[]){0, 0, 70, 70, 54, 86, -16, 16}, 4); /* 99 by 22.6, leaning */
    job.sheets[0].length_in = 100;
    job.in.turns = FRAME_SHEET_TURNS_ANY;
    ck_assert_int_eq(solved(&job).sheets_used, 1);
}
END_TEST

/* What is left of one job is what the next is cut from. */
START_TEST(offcuts_go_on) {
    static sheet_job job, next;
    sheets_begin(&job);
    want_polygon(&job, 1, (const double[]){0, 0, 40, 0, 40, 60, 0, 90}, 4);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    frame_sheet_plan *plan = plan_sheets(&job);
    verify_sheets(&job, plan);
    sheets_begin(&next);
    for (size_t o = 0; o < frame_sheet_plan_offcut_count(plan); o++) {
        frame_sheet_plan_offcut kept;
        frame_sheet_plan_offcut_at(plan, o, &kept);
        ck_assert_int_eq(kept.hole_of, -1);
        const shape s = corners_of(plan, kept.corner_first, kept.corner_count);
        ck_assert_double_eq_tol(area_of(&s), kept.area_in2, 1e-6);
        double xy[2 * MOST_CORNERS];
        for (int i = 0; i < s.count; i++) xy[2 * i] = s.x[i], xy[2 * i + 1] = s.y[i];
        have_offcut(&next, 1, xy, (size_t)s.count);
    }
    frame_sheet_plan_free(plan);
    ck_assert_uint_gt(next.in.offcut_count, 0);
    have_sheet(&next, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    want_rectangle(&next, 1, 7, 90);
    want_rectangle(&next, 1, 48, 90);
    const frame_sheet_plan_out out = solved(&next);
    ck_assert_int_eq(out.offcuts_used, 1);
    ck_assert_int_eq(out.sheets_used, 1);
    ck_assert_double_eq_tol(out.cost, 20, 1e-9);
}
END_TEST

START_TEST(holes_are_kept_clear) {
    static sheet_job job;
    sheets_begin(&job);
    have_offcut(&job, 1, (const double[]){0, 0, 48, 0, 48, 60, 20, 60, 0, 40}, 5);
    have_hole(&job, 0, (const double[]){20, 20, 28, 20, 28, 28, 20, 28}, 4);
    want_rectangle(&job, 4, 19.5, 19.5);
    job.in.kerf_in = 0;
    ck_assert_int_eq(solved(&job).offcuts_used, 1);
    frame_sheet_plan *plan = NULL;
    want_rectangle(&job, 1, 33, 33);
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "parts[1]");
}
END_TEST

START_TEST(inner_corners) {
    static sheet_job job;
    sheets_begin(&job);
    want_polygon(&job, 4, (const double[]){0, 0, 40, 0, 40, 10, 10, 10, 10, 40, 0, 40}, 6);
    want_rectangle(&job, 4, 20, 20);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    const frame_sheet_plan_out out = solved(&job);
    ck_assert_int_le(out.sheets_used, 2);
}
END_TEST

START_TEST(several_sizes) {
    static sheet_job job;
    sheets_begin(&job);
    want_rectangle(&job, 3, 47, 119);
    want_rectangle(&job, 4, 47, 47);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    have_sheet(&job, 48, 120, 30, 5);
    const frame_sheet_plan_out out = solved(&job);
    ck_assert_double_eq_tol(out.cost, 3 * 30 + 2 * 20, 1e-9);
    job.sheets[1].available = 2;
    frame_sheet_plan *plan = NULL;
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "sheets");
}
END_TEST

START_TEST(spans_and_strips) {
    static sheet_job job;
    frame_sheet_plan *plan = NULL;
    sheets_begin(&job);
    want_rectangle(&job, 2, 20, 48);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    job.in.support_spacing_in = 24;
    job.in.least_strip_in = 20;
    ck_assert_int_eq(solved(&job).sheets_used, 1);
    job.in.least_strip_in = 24;
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "parts[0]");
    job.in.least_strip_in = FRAME_NOT_GIVEN;
    job.in.support_spacing_in = 24.5;
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_IMPOSSIBLE);
}
END_TEST

START_TEST(bad_polygons) {
    static sheet_job job;
    frame_sheet_plan *plan = NULL;
    sheets_begin(&job);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    want_polygon(&job, 1, (const double[]){0, 0, 10, 10, 10, 0, 0, 10}, 4);
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "parts[0].corners");
    ck_assert_str_eq(frame_error_value(), "edges 0 and 2");
    put_corners(job.corners[0], (const double[]){0, 0, 10, 0, 20, 0, 5, 0}, 4);
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_IMPOSSIBLE);
    job.parts[0].corner_count = 2;
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "parts[0].corners");
    job.parts[0].corner_count = 4;
    put_corners(job.corners[0], (const double[]){0, 0, 10, 0, 10, 10, 0, 10}, 4);
    job.parts[0].count = 20001;
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_TOO_LARGE);
    job.parts[0].count = 1000001;
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_OUT_OF_RANGE);
    job.parts[0].count = 1;
    job.in.kerf_in = -0.125;
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_OUT_OF_RANGE);
    job.in.kerf_in = FRAME_NOT_GIVEN;
    job.in.sheet_count = 0;
    ck_assert_int_eq(frame_sheet_plan_solve(&job.in, &plan, NULL), FRAME_REQUIRED);
    ck_assert_ptr_null(plan);
}
END_TEST

/* Five rectangles round a pinwheel: free cuts lay them on one sheet, straight ones cannot. */
START_TEST(straight_cuts) {
    static sheet_job job;
    sheets_begin(&job);
    want_rectangle(&job, 2, 20, 40);
    want_rectangle(&job, 2, 40, 20);
    want_rectangle(&job, 1, 20, 20);
    have_sheet(&job, 60, 60, 20, FRAME_NOT_GIVEN_INT);
    job.in.kerf_in = 0;
    job.in.turns = FRAME_SHEET_TURNS_NONE;
    frame_sheet_plan_out out = solved(&job);
    ck_assert_int_eq(out.sheets_used, 1);
    ck_assert_double_eq_tol(out.waste_share, 0, 1e-12);
    job.in.cuts = FRAME_SHEET_CUTS_STRAIGHT;
    ck_assert_int_eq(solved(&job).sheets_used, 2);
    job.parts[0].corner_count = put_corners(job.corners[0], (const double[]){0, 0, 40, 0, 0, 28}, 3);
    job.in.kerf_in = 0.125;
    job.in.turns = FRAME_SHEET_TURNS_HALF;
    frame_sheet_plan *plan = plan_sheets(&job);
    verify_sheets(&job, plan);
    ck_assert_uint_ge(frame_sheet_plan_cut_count(plan), 5);
    frame_sheet_plan_free(plan);
}
END_TEST

/* Parts that fit the one sheet there is only close together. */
START_TEST(pressed_in) {
    static sheet_job job;
    sheets_begin(&job);
    want_polygon(&job, 3, (const double[]){0, 0, 30, 0, 30, 10, 10, 10, 10, 30, 0, 30}, 6);
    want_polygon(&job, 3, (const double[]){0, 0, 19, 0, 19, 19, 9, 9, 0, 19}, 5);
    want_rectangle(&job, 6, 9, 18);
    have_sheet(&job, 62, 62, 20, 1);
    job.in.turns = FRAME_SHEET_TURNS_QUARTER;
    job.in.kerf_in = 0;
    job.in.time_limit_s = 20;
    ck_assert_int_eq(solved(&job).sheets_used, 1);
}
END_TEST

START_TEST(random_jobs) {
    static sheet_job job;
    srand(11);
    for (int n = 0; n < 30; n++) {
        sheets_begin(&job);
        const int kinds = 1 + rand() % 6;
        for (int i = 0; i < kinds; i++)
            if (rand() % 2)
                want_star(&job);
            else
                want_rectangle(&job, 1 + rand() % 4, any(4, 48), any(4, 48));
        have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
        if (n % 3 == 0) have_sheet(&job, 60, 60, 14, 2);
        if (n % 4 == 0) have_offcut(&job, 2, (const double[]){5, 5, 60, 9, 50, 60, 30, 20, 7, 50}, 5);
        if (n % 8 == 0) have_hole(&job, 0, (const double[]){40, 20, 44, 21, 41, 25}, 3);
        job.in.turns = 1 + n % 4;
        job.in.reversible = n % 5 == 0;
        job.in.kerf_in = n % 2 * 0.125;
        job.in.cuts = n % 3 == 1 ? FRAME_SHEET_CUTS_STRAIGHT : FRAME_NOT_GIVEN_INT;
        job.in.time_limit_s = 0.02;
        solved(&job);
    }
}
END_TEST

/* Many rectangles go by patterns; by straight cuts they still part. */
START_TEST(many_rectangles) {
    static sheet_job job;
    srand(21);
    for (int n = 0; n < 4; n++) {
        sheets_begin(&job);
        for (int i = 0; i < 6; i++)
            want_rectangle(&job, 10 + rand() % 25, 6 + rand() % 160 / 8.0, 6 + rand() % 160 / 8.0);
        have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
        job.in.kerf_in = n % 2 * 0.125;
        job.in.cuts = FRAME_SHEET_CUTS_STRAIGHT;
        job.in.turns = n < 2 ? FRAME_SHEET_TURNS_QUARTER : FRAME_SHEET_TURNS_NONE;
        const frame_sheet_plan_out out = solved(&job);
        ck_assert_int_le(out.sheets_used, out.sheets_by_area + 2 + out.sheets_by_area / 10);
    }
}
END_TEST

static int32_t look(void *user, double best, double bound) {
    int *seen = user;
    ck_assert(best == FRAME_NOT_GIVEN || best >= bound - 1e-9);
    return ++*seen < 3;
}

/* Whoever watches may stop the search; the plan is whole all the same. */
START_TEST(watched_and_stopped) {
    static sheet_job job;
    int seen = 0;
    frame_watch *watch = NULL;
    const frame_watcher watcher = {look, &seen};
    sheets_begin(&job);
    srand(4);
    for (int i = 0; i < 8; i++) want_star(&job);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    ck_assert_int_eq(frame_watch_new(&watcher, &watch), FRAME_OK);
    job.in.watch = watch;
    job.in.time_limit_s = 60;
    const frame_sheet_plan_out out = solved(&job);
    frame_watch_free(watch);
    ck_assert(out.optimal || (seen == 3 && out.ended == FRAME_STOCK_END_CANCELLED));
    ck_assert(out.optimal || FRAME_HAS(out.cautions, FRAME_SHEET_CAUTION_STOPPED));
}
END_TEST

/* No plan is dearer than the usual way. */
START_TEST(beside_shelves) {
    static sheet_job job;
    srand(9);
    for (int n = 0; n < 8; n++) {
        sheets_begin(&job);
        for (int i = 0; i < 5; i++) want_rectangle(&job, 1 + rand() % 9, any(5, 47), any(5, 47));
        if (n % 2) want_star(&job);
        have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
        job.in.cuts = n % 3 ? FRAME_SHEET_CUTS_FREE : FRAME_SHEET_CUTS_STRAIGHT;
        job.in.time_limit_s = 0.001;
        const frame_sheet_plan_out out = solved(&job);
        ck_assert_int_gt(out.sheets_on_shelves, 0);
        ck_assert_double_le(out.cost, out.shelves_cost + 1e-9);
        ck_assert_int_le(out.sheets_used, out.sheets_on_shelves);
    }
}
END_TEST

START_TEST(drawings) {
    static sheet_job job;
    frame_drawing *drawing = NULL;
    frame_text *text = NULL;
    sheets_begin(&job);
    want_polygon(&job, 3, (const double[]){0, 0, 40, 0, 0, 44}, 3);
    job.parts[0].name = "boathouse gable";
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    job.in.cuts = FRAME_SHEET_CUTS_STRAIGHT;
    frame_sheet_plan *plan = plan_sheets(&job);
    verify_sheets(&job, plan);
    ck_assert_int_eq(frame_sheet_plan_drawing(plan, 0, &drawing), FRAME_OK);
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    ck_assert_int_eq(frame_drawing_svg(drawing, text), FRAME_OK);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "boathouse gable"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "cut 1"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "turned 180"));
    frame_drawing_free(drawing);
    frame_text_free(text);
    drawing = NULL;
    ck_assert_int_eq(frame_sheet_plan_drawing(plan, 9, &drawing), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_sheet_plan_drawing(NULL, 0, &drawing), FRAME_REQUIRED);
    ck_assert_ptr_null(drawing);
    frame_sheet_plan_free(plan);
}
END_TEST

/* Under a dual feasible function, sizes that fit within a whole add up to no more than one. */
START_TEST(dual_functions) {
    srand(3);
    for (int n = 0; n < 20000; n++) {
        const double whole = 1 + rand() % 96, unit = (1 + rand() % 48) / 96.0;
        double left = whole, sum[3] = {0, 0, 0};
        while (left >= 1) {
            const double part = 1 + rand() % (int)left;
            for (int kind = 0; kind < 3; kind++)
                sum[kind] +=
                    frame_sheet_dual(part / whole, (frame_sheet_dual_kind)kind, kind ? fmin(unit, 0.5) : 1 + n % 7);
            left -= part;
        }
        for (int kind = 0; kind < 3; kind++) ck_assert_double_le(sum[kind], 1 + 1e-9);
    }
}
END_TEST

START_TEST(the_same_every_time) {
    static sheet_job job;
    sheets_begin(&job);
    for (int i = 1; i <= 3; i++) want_rectangle(&job, 5, 9 + 5 * i, 31 - 4 * i);
    have_sheet(&job, 48, 96, 20, FRAME_NOT_GIVEN_INT);
    job.in.time_limit_s = FRAME_NOT_GIVEN;
    frame_sheet_plan *one = plan_sheets(&job), *two = plan_sheets(&job);
    ck_assert_uint_eq(frame_sheet_plan_placement_count(one), frame_sheet_plan_placement_count(two));
    for (size_t i = 0; i < frame_sheet_plan_placement_count(one); i++) {
        frame_sheet_plan_placement a, b;
        frame_sheet_plan_placement_at(one, i, &a);
        frame_sheet_plan_placement_at(two, i, &b);
        ck_assert(a.x_in == b.x_in && a.y_in == b.y_in && a.part == b.part && a.turn_deg == b.turn_deg);
    }
    frame_sheet_plan_free(one);
    frame_sheet_plan_free(two);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("sheet_plan");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 60);
    tcase_add_test(tests, full_sheets);
    tcase_add_test(tests, the_kerf_counts);
    tcase_add_test(tests, triangles_in_pairs);
    tcase_add_test(tests, turns);
    tcase_add_test(tests, offcuts_go_on);
    tcase_add_test(tests, holes_are_kept_clear);
    tcase_add_test(tests, inner_corners);
    tcase_add_test(tests, several_sizes);
    tcase_add_test(tests, spans_and_strips);
    tcase_add_test(tests, straight_cuts);
    tcase_add_test(tests, pressed_in);
    tcase_add_test(tests, bad_polygons);
    tcase_add_test(tests, random_jobs);
    tcase_add_test(tests, many_rectangles);
    tcase_add_test(tests, watched_and_stopped);
    tcase_add_test(tests, beside_shelves);
    tcase_add_test(tests, drawings);
    tcase_add_test(tests, dual_functions);
    tcase_add_test(tests, the_same_every_time);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
