/* Roofs that meet: an addition and a dormer against closed forms, and what random pairs must keep to. */
#include "plans.h"

static void rectangle(plan *p, double x, double y, double length, double width, double slope) {
    p->corner_count = p->hole_count = 0;
    plan_add(p, x, y), plan_add(p, x + length, y), plan_add(p, x + length, y + width), plan_add(p, x, y + width);
    plan_finish(p, slope);
}

static frame_roof_meet_in *meet_of(const plan *house, const plan *other, double height) {
    static frame_roof_meet_in in;
    frame_roof_meet_in_init(&in);
    in.corners = house->in.corners, in.corner_count = house->in.corner_count;
    in.slopes = house->in.slopes, in.slope_count = house->in.slope_count;
    in.kinds = house->in.kinds, in.kind_count = house->in.kind_count;
    in.other_corners = other->in.corners, in.other_corner_count = other->in.corner_count;
    in.other_slopes = other->in.slopes, in.other_slope_count = other->in.slope_count;
    in.other_kinds = other->in.kinds, in.other_kind_count = other->in.kind_count;
    in.other_height_in = height;
    return &in;
}

static frame_roof_meet *solve(const frame_roof_meet_in *in, frame_roof_meet_out *out) {
    frame_roof_meet *met;
    ck_assert_msg(frame_roof_meet_solve(in, &met, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_roof_meet_result(met, out), FRAME_OK);
    return met;
}

static frame_roof_meet_line line_at(const frame_roof_meet *met, size_t i) {
    frame_roof_meet_line line;
    ck_assert_int_eq(frame_roof_meet_line_at(met, i, &line), FRAME_OK);
    return line;
}

/* A gable addition with plates level with the house's and its slope: two regular valleys of its own run. */
START_TEST(an_addition) {
    static plan house, addition;
    frame_roof_meet_out out;
    frame_valley_in valley_in;
    frame_valley_out valley;
    rectangle(&house, 0, 0, 480, 288, 8 / 12.0);
    house.kinds[1] = house.kinds[3] = FRAME_ROOF_GABLE;
    rectangle(&addition, 168, 144, 192, 288, 8 / 12.0);
    addition.kinds[0] = addition.kinds[2] = FRAME_ROOF_GABLE;
    frame_roof_meet *met = solve(meet_of(&house, &addition, 0), &out);
    frame_valley_in_init(&valley_in);
    valley_in.slope_a = valley_in.slope_b = 8 / 12.0, valley_in.run_in = 96;
    ck_assert_int_eq(frame_valley(&valley_in, &valley, NULL), FRAME_OK);
    ck_assert_uint_eq(frame_roof_meet_line_count(met), 2);
    for (size_t i = 0; i < 2; i++) {
        const frame_roof_meet_line line = line_at(met, i);
        ck_assert_double_eq_tol(line.length_in, valley.line_length_in, 1e-7);
        ck_assert_double_eq_tol(line.main_deg, valley.sheathing_a_deg, 1e-7);
        ck_assert_double_eq_tol(line.other_deg, valley.sheathing_b_deg, 1e-7);
        ck_assert_double_eq_tol(line.from_z_in, 0, 1e-7);
        ck_assert_double_eq_tol(line.to_x_in, 264, 1e-7);
        ck_assert_double_eq_tol(line.to_y_in, 288 - 96, 1e-7);
    }
    /* It covers a triangle of the house's back slope: 192 wide, 96 deep in plan. */
    ck_assert_double_eq_tol(out.main_covered_in2, 192 * 96 / 2.0 * sqrt(1 + 4 / 9.0), 1e-6);
    ck_assert_double_eq_tol(out.seen_area_in2,
                            out.main_area_in2 - out.main_covered_in2 + out.other_area_in2 - out.other_buried_in2, 1e-6);
    frame_roof_meet_free(met);
}
END_TEST

/* A gable dormer on a face: its plates at a height, of any slope. */
START_TEST(a_dormer) {
    static plan house, dormer;
    frame_roof_meet_out out;
    for (int i = 0; i < 20; i++) {
        const double slope = 0.5 + 0.03 * i, own = 0.9 - 0.02 * i, half = 36, plates = 72, front = 60;
        rectangle(&house, 0, 0, 480, 400, slope);
        house.kinds[1] = house.kinds[3] = FRAME_ROOF_GABLE;
        rectangle(&dormer, 200, front, 2 * half, 200 - front, own);
        dormer.kinds[0] = dormer.kinds[2] = FRAME_ROOF_GABLE;
        const double eave = plates / slope, ridge = (plates + own * half) / slope; /* where its eaves and ridge die */
        if (ridge > 200) continue;
        frame_roof_meet *met = solve(meet_of(&house, &dormer, plates), &out);
        ck_assert_uint_eq(frame_roof_meet_line_count(met), 2);
        ck_assert_double_eq_tol(line_at(met, 0).run_in, hypot(half, ridge - eave), 1e-7);
        ck_assert_double_eq_tol(line_at(met, 0).rise_in, own * half, 1e-7);
        const double covered = 2 * half * (eave - front) + half * (ridge - eave);
        ck_assert_double_eq_tol(out.main_covered_in2, covered * sqrt(1 + slope * slope), 1e-6);
        ck_assert_double_eq_tol(out.other_area_in2 - out.other_buried_in2, covered * sqrt(1 + own * own), 1e-6);
        frame_roof_meet_free(met);
    }
}
END_TEST

/* In plan, what one covers and what lies under it make up the overlap; swapped roofs swap what is covered and buried.
 */
START_TEST(random_pairs) {
    static plan house, other;
    frame_roof_meet_out out, swapped;
    const int pairs = getenv("FRAME_LONG") ? 2000 : 100;
    for (int i = 0; i < pairs; i++) {
        srand((unsigned)i);
        const double a = random_in(0.2, 1), b = random_in(0.2, 1), height = random_in(-60, 60);
        const double x = random_in(-100, 300), y = random_in(-100, 200), length = random_in(50, 400),
                     width = random_in(50, 300);
        rectangle(&house, 0, 0, 400, 260, a);
        rectangle(&other, x, y, length, width, b);
        if (i & 1) other.kinds[0] = other.kinds[2] = FRAME_ROOF_GABLE;
        frame_roof_meet_free(solve(meet_of(&house, &other, height), &out));
        frame_roof_meet_free(solve(meet_of(&other, &house, -height), &swapped));
        const double across = fmax(0, fmin(400, x + length) - fmax(0, x)),
                     deep = fmax(0, fmin(260, y + width) - fmax(0, y));
        ck_assert_double_eq_tol(out.main_covered_in2 / sqrt(1 + a * a) + out.other_buried_in2 / sqrt(1 + b * b),
                                across * deep, 1e-5);
        ck_assert_double_eq_tol(out.main_covered_in2, swapped.other_buried_in2, 1e-6);
        ck_assert_double_eq_tol(out.meeting_length_in, swapped.meeting_length_in, 1e-6);
    }
}
END_TEST

START_TEST(what_is_refused) {
    static plan house, other;
    frame_roof_meet *met;
    rectangle(&house, 0, 0, 400, 260, 0.5);
    rectangle(&other, 0, 0, 100, 100, 0.5);
    for (int i = 0; i < 4; i++) other.kinds[i] = FRAME_ROOF_GABLE;
    ck_assert_int_eq(frame_roof_meet_solve(meet_of(&house, &other, 0), &met, NULL), FRAME_IMPOSSIBLE);
    ck_assert_int_eq(strncmp(frame_error_field(), "other_", 6), 0);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("roof_meet");
    TCase *tests = tcase_create("roof_meet");
    tcase_set_timeout(tests, 600);
    tcase_add_test(tests, an_addition);
    tcase_add_test(tests, a_dormer);
    tcase_add_test(tests, random_pairs);
    tcase_add_test(tests, what_is_refused);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed ? EXIT_FAILURE : EXIT_SUCCESS;
}
