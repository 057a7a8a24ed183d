/* Hips and valleys: the handbook's formulas, the regular cases everybody knows, and the kernel's stick, all of one
 * mind. */
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

static const double degree = 0.017453292519943295;

static frame_hip_in hip(double slope_a, double slope_b, double run) {
    frame_hip_in in;
    frame_hip_in_init(&in);
    in.slope_a = slope_a;
    in.slope_b = slope_b;
    in.run_in = run;
    return in;
}

static frame_valley_in valley(double slope_a, double slope_b, double run) {
    frame_valley_in in;
    frame_valley_in_init(&in);
    in.slope_a = slope_a;
    in.slope_b = slope_b;
    in.run_in = run;
    return in;
}

static frame_hip_out solve(const frame_hip_in *in) {
    frame_hip_out out;
    ck_assert_msg(frame_hip(in, &out, NULL) == FRAME_OK, "%s", frame_error_text());
    return out;
}

static frame_valley_out solve_valley(const frame_valley_in *in) {
    frame_valley_out out;
    ck_assert_msg(frame_valley(in, &out, NULL) == FRAME_OK, "%s", frame_error_text());
    return out;
}

/* A regular hip: the square's 17, cheeks of 45 degrees, and backing whose tangent is the sine of its own angle. */
START_TEST(a_regular_hip) {
    for (int rise = 1; rise <= 24; rise++) {
        frame_hip_in in = hip(rise / 12.0, rise / 12.0, 144);
        in.thickness_in = 1.5;
        const frame_hip_out out = solve(&in);
        ck_assert_double_eq_tol(out.per_foot_in, sqrt(288 + rise * rise), 1e-12);
        ck_assert_double_eq_tol(out.line_length_in, 12 * sqrt(288 + rise * rise), 1e-9);
        ck_assert_double_eq_tol(out.run_per_foot_in, 12 * sqrt(2), 1e-12);
        ck_assert_double_eq_tol(out.cheek_a_deg, 45, 1e-12);
        ck_assert_double_eq_tol(out.cheek_b_deg, 45, 1e-12);
        const double theta = atan(rise / 12.0 / sqrt(2));
        ck_assert_double_eq_tol(out.plumb_cut_deg, theta / degree, 1e-12);
        ck_assert_double_eq_tol(tan(out.backing_a_deg * degree), sin(theta), 1e-12);
        ck_assert_double_eq_tol(out.drop_a_in, 0.75 * tan(theta), 1e-12);
        ck_assert_double_eq_tol(tan(out.top_edge_a_deg * degree), cos(theta), 1e-12);
        ck_assert_double_eq_tol(out.side_cut_a_in, 12 * cos(theta), 1e-11);
        ck_assert_int_eq(out.full_steps, 12);
    }
}
END_TEST

/* Stepping off: whole steps and the odd one, each along the slope, reach the head's cut. */
START_TEST(stepping_off_reaches_the_head) {
    for (int i = 1; i <= 500; i++) {
        frame_hip_in in = hip(0.1 + i % 17 / 10.0, 0.2 + i % 13 / 10.0, 20 + i * 0.77);
        in.against_thickness_in = i % 3 * 0.75;
        const frame_hip_out out = solve(&in);
        const double step = hypot(out.square_blade_in, out.square_tongue_in);
        const double length = out.full_steps * step + out.odd_step_in / out.square_blade_in * step;
        ck_assert_double_eq_tol(length, out.shortened_length_in, 1e-8);
        ck_assert_double_eq_tol(step, out.per_foot_in, 1e-11);
    }
}
END_TEST

/* The two roof planes rise alike along the hip, whatever the slopes and the corner. */
START_TEST(both_planes_hold_the_hip) {
    for (int i = 0; i < 400; i++) {
        frame_hip_in in = hip(0.1 + i % 19 / 10.0, 0.15 + i % 11 / 6.0, 100 + i);
        in.corner_deg = 40 + i % 14 * 10;
        in.overhang_in = 10;
        in.eaves = 1 + i % 2;
        const frame_hip_out out = solve(&in);
        ck_assert_double_eq_tol(out.run_b_in * in.slope_b, in.run_in * in.slope_a, 1e-9);
        ck_assert_double_eq_tol(out.rise_in, in.run_in * in.slope_a, 1e-9);
        ck_assert_double_eq_tol(in.slope_b * out.overhang_b_in - out.plate_b_in, in.slope_a * in.overhang_in, 1e-9);
    }
}
END_TEST

static double random_in(double low, double high) {
    return low + (high - low) * (rand() / (double)RAND_MAX);
}

static frame_hip_in any_hip(void) {
    frame_hip_in in = hip(random_in(0.1, 1.9), random_in(0.1, 1.9), random_in(60, 140));
    in.corner_deg = random_in(50, 130);
    in.thickness_in = random_in(1, 4);
    in.depth_in = random_in(9, 16);
    in.overhang_in = rand() % 2 ? random_in(4, 24) : 0;
    in.against_thickness_in = rand() % 2 ? random_in(1, 4) : 0;
    in.head = 1 + rand() % 3;
    in.top = 1 + rand() % 2;
    in.tail = 1 + rand() % 2;
    return in;
}

/* One that leans to neither eave so far that a cheek there runs along it. */
static frame_hip_in random_hip(void) {
    for (;;) {
        const frame_hip_in in = any_hip();
        const double corner = in.corner_deg * degree;
        const double alpha = atan2(in.slope_b * sin(corner), in.slope_a + in.slope_b * cos(corner)) / degree;
        if (fmin(alpha, in.corner_deg - alpha) > 10 && fmax(alpha, in.corner_deg - alpha) < 80) return in;
    }
}

static frame_valley_in as_valley(const frame_hip_in *like) {
    frame_valley_in in = valley(like->slope_a, like->slope_b, like->run_in);
    in.corner_deg = like->corner_deg;
    in.thickness_in = like->thickness_in;
    in.depth_in = like->depth_in;
    in.overhang_in = like->overhang_in;
    in.against_thickness_in = like->against_thickness_in;
    in.head = like->head;
    in.tail = like->tail;
    in.height_above_plate_in = like->height_above_plate_in;
    in.eaves = like->eaves;
    return in;
}

static double top_edge_of(const frame_stick *stick) {
    frame_stick_lengths_out lengths;
    ck_assert_int_eq(frame_stick_lengths(stick, &lengths), FRAME_OK);
    return lengths.top_edge_in;
}

static double volume_of(const frame_stick *stick) {
    frame_stick_solid_out solid;
    ck_assert_int_eq(frame_stick_solid(stick, &solid), FRAME_OK);
    return solid.volume_in3;
}

/* Every cheek of the stick has the bevel, the mitre and the side cut that the formulas give. */
static void check_cheeks(const frame_hip_in *in, const frame_hip_out *out, const frame_stick *stick) {
    int heads = 0;
    for (size_t i = 0; i < frame_stick_saw_count(stick); i++) {
        frame_stick_saw saw;
        frame_stick_saw_at(stick, i, &saw);
        if (saw.role == FRAME_STICK_BACKING) {
            const double backing = strstr(saw.label, "side a") ? out->backing_a_deg : out->backing_b_deg;
            ck_assert_double_eq_tol(saw.bevel_deg, backing, 1e-7);
            ck_assert_double_eq_tol(saw.mitre_deg, 90, 1e-7);
        }
        if (saw.role == FRAME_STICK_PLUMB_CUT) {
            ck_assert_double_eq_tol(saw.mitre_deg, out->plumb_cut_deg, 1e-7);
            ck_assert_double_eq_tol(saw.bevel_deg, 0, 1e-7);
        }
        if (saw.role != FRAME_STICK_CHEEK_CUT) continue;
        const int a = strstr(saw.label, "side a") || strstr(saw.label, "ridge");
        const int along_eave = strstr(saw.label, "tail") || in->head == FRAME_HIP_HEAD_RIDGE;
        const double cheek = a ? out->cheek_a_deg : out->cheek_b_deg;
        const double expected = along_eave ? (a ? out->ridge_cheek_a_deg : out->ridge_cheek_b_deg) : cheek;
        heads += !strstr(saw.label, "tail");
        ck_assert_double_eq_tol(saw.bevel_deg, expected, 1e-7);
        ck_assert_double_eq_tol(saw.mitre_deg, out->plumb_cut_deg, 1e-7);
        if (!along_eave) ck_assert_double_eq_tol(saw.top_edge_deg, a ? out->top_edge_a_deg : out->top_edge_b_deg, 1e-7);
    }
    ck_assert_int_eq(heads, in->head == FRAME_HIP_HEAD_COMMONS ? 2 : in->head == FRAME_HIP_HEAD_RIDGE ? 1 : 0);
}

START_TEST(the_kernel_agrees_on_hips) {
    for (int i = 0; i < 400; i++) {
        const frame_hip_in in = random_hip();
        const frame_hip_out out = solve(&in);
        frame_stick *stick;
        ck_assert_msg(frame_hip_stick(&in, &stick) == FRAME_OK, "%s", frame_error_text());
        ck_assert_double_eq_tol(top_edge_of(stick), out.length_in, 1e-7);
        check_cheeks(&in, &out, stick);
        frame_stick_free(stick);
    }
}
END_TEST

START_TEST(the_kernel_agrees_on_valleys) {
    for (int i = 0; i < 400; i++) {
        const frame_hip_in like = random_hip();
        const frame_valley_in in = as_valley(&like);
        const frame_valley_out out = solve_valley(&in);
        frame_stick *stick;
        ck_assert_msg(frame_valley_stick(&in, &stick) == FRAME_OK, "%s", frame_error_text());
        /* The hollow of the tail is a notch, which lengths between end cuts leave out. */
        if (in.tail == FRAME_HIP_TAIL_PLUMB) ck_assert_double_eq_tol(top_edge_of(stick), out.length_in, 1e-7);
        for (size_t k = 0; k < frame_stick_saw_count(stick); k++) {
            frame_stick_saw saw;
            frame_stick_saw_at(stick, k, &saw);
            if (saw.role != FRAME_STICK_CHEEK_CUT) continue;
            const int a = strstr(saw.label, "side a") || strstr(saw.label, "ridge");
            ck_assert_double_eq_tol(saw.bevel_deg, a ? out.ridge_cheek_a_deg : out.ridge_cheek_b_deg, 1e-7);
        }
        frame_stick_free(stick);
    }
}
END_TEST

/* What the birdsmouth over a corner takes: under the plates' top, inside both building lines. Across the thickness each
 * slice is a triangle from where the nearer heel cut stands to the seat's end; the slices add up to a difference of
 * cubes. */
START_TEST(the_birdsmouth_is_what_the_corner_takes) {
    int seen = 0;
    for (int i = 0; i < 400; i++) {
        frame_hip_in in = random_hip();
        in.top = FRAME_HIP_TOP_DROPPED;
        frame_hip_out out = solve(&in);
        frame_stick *stick;
        ck_assert_int_eq(frame_hip_stick(&in, &stick), FRAME_OK);
        const double whole = volume_of(stick), half = in.thickness_in / 2;
        frame_stick_free(stick);
        in.height_above_plate_in = in.depth_in * 0.7 + fmax(out.drop_a_in, out.drop_b_in);
        out = solve(&in);
        const double at[2] = {half / tan(out.cheek_a_deg * degree), half / tan(out.cheek_b_deg * degree)};
        if (out.seat_in <= fmax(at[0], at[1]) || out.seat_in > out.plan_run_in / 3) continue;
        double taken = 0;
        for (int side = 0; side < 2; side++)
            taken += half / at[side] * (pow(out.seat_in, 3) - pow(out.seat_in - at[side], 3)) * out.slope / 6;
        ck_assert_msg(frame_hip_stick(&in, &stick) == FRAME_OK, "%s", frame_error_text());
        ck_assert_double_eq_tol(whole - volume_of(stick), taken, 1e-7 * whole);
        frame_stick_free(stick);
        seen++;
    }
    ck_assert_int_gt(seen, 50);
}
END_TEST

/* Backed or dropped, nothing of a hip stands over either roof plane, and one top edge touches. */
START_TEST(nothing_stands_over_the_roof) {
    for (int i = 0; i < 100; i++) {
        frame_hip_in in = random_hip();
        in.top = FRAME_HIP_TOP_DROPPED;
        const frame_hip_out out = solve(&in);
        const double lowered = fmax(out.drop_a_in, out.drop_b_in), half = in.thickness_in / 2;
        /* The plane of side a over the right top edge, as high as the hip's own top there or higher. */
        const double fall_a = in.slope_a * cos(out.cheek_a_deg * degree),
                     fall_b = in.slope_b * cos(out.cheek_b_deg * degree);
        ck_assert_double_ge(-half * fall_a, -lowered - 1e-12);
        ck_assert_double_ge(-half * fall_b, -lowered - 1e-12);
        ck_assert_double_eq_tol(fmax(half * fall_a, half * fall_b), lowered, 1e-12);
    }
}
END_TEST

/* A hip and its mirror image: sides change places, lengths stay. */
START_TEST(a_mirrored_hip) {
    for (int i = 0; i < 200; i++) {
        const frame_hip_in in = random_hip();
        const frame_hip_out out = solve(&in);
        frame_hip_in mirror = in;
        mirror.slope_a = in.slope_b;
        mirror.slope_b = in.slope_a;
        mirror.run_in = out.run_b_in;
        mirror.overhang_in = out.overhang_b_in;
        if (mirror.run_in > 1200 || mirror.overhang_in > 120 || in.head == FRAME_HIP_HEAD_RIDGE) continue;
        const frame_hip_out other = solve(&mirror);
        ck_assert_double_eq_tol(other.length_in, out.length_in, 1e-8);
        ck_assert_double_eq_tol(other.cheek_a_deg, out.cheek_b_deg, 1e-9);
        ck_assert_double_eq_tol(other.backing_b_deg, out.backing_a_deg, 1e-9);
        ck_assert_double_eq_tol(other.sheathing_b_deg, out.sheathing_a_deg, 1e-9);
        ck_assert_double_eq_tol(other.planes_deg, out.planes_deg, 1e-9);
    }
}
END_TEST

/* The angle between the planes by their normals. */
START_TEST(the_angle_between_the_planes) {
    for (int i = 0; i < 200; i++) {
        const frame_hip_in in = random_hip();
        const frame_hip_out out = solve(&in);
        const double corner = in.corner_deg * degree;
        /* Normals (-slope n, 1); the directions n into the building make an angle of 180 degrees less the corner. */
        const double dot = 1 - in.slope_a * in.slope_b * cos(corner);
        const double between = acos(dot / sqrt((1 + in.slope_a * in.slope_a) * (1 + in.slope_b * in.slope_b)));
        ck_assert_double_eq_tol(out.planes_deg, 180 - between / degree, 1e-7);
    }
}
END_TEST

static void refused(const frame_hip_in *in, frame_status status, const char *field) {
    frame_hip_out out, before;
    memset(&out, 7, sizeof out);
    before = out;
    ck_assert_int_eq(frame_hip(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_mem_eq(&out, &before, sizeof out);
}

START_TEST(what_cannot_be_is_refused) {
    frame_hip_in in = hip(0.5, 0.5, 100);
    frame_stick *stick = NULL;
    ck_assert_int_eq(frame_hip_stick(&in, &stick), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "depth_in");
    in.height_above_plate_in = 4;
    refused(&in, FRAME_REQUIRED, "depth_in");
    in.depth_in = 3;
    refused(&in, FRAME_IMPOSSIBLE, "height_above_plate_in");
    in.depth_in = 9.25;
    in.height_above_plate_in = 0.01;
    refused(&in, FRAME_IMPOSSIBLE, "height_above_plate_in");
    in.height_above_plate_in = 4;
    in.slope_b = 2.1;
    refused(&in, FRAME_OUT_OF_RANGE, "slope_b");
    in.slope_b = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "slope_b");
    in.slope_b = 0.5;
    in.corner_deg = 180;
    refused(&in, FRAME_OUT_OF_RANGE, "corner_deg");
    in.corner_deg = 90;
    in.size = FRAME_SIZE(2, 12);
    refused(&in, FRAME_CONFLICT, "depth_in");
    in.depth_in = FRAME_NOT_GIVEN;
    in.run_in = 1;
    in.against_thickness_in = 3.5;
    refused(&in, FRAME_IMPOSSIBLE, "run_in");
}
END_TEST

/* Plates of unequal height: the seats lie on each plate, and neither wall is cut into by the hip. */
START_TEST(overhangs_equal) {
    frame_hip_in in = hip(6.0 / 12, 9.0 / 12, 120);
    in.depth_in = 9.25;
    in.overhang_in = 16;
    in.height_above_plate_in = 5;
    in.eaves = FRAME_EAVES_OVERHANGS_EQUAL;
    const frame_hip_out out = solve(&in);
    ck_assert_double_eq_tol(out.plate_b_in, 16 * 0.25, 1e-12);
    ck_assert_double_eq_tol(out.overhang_b_in, 16, 1e-12);
    frame_stick *stick;
    ck_assert_msg(frame_hip_stick(&in, &stick) == FRAME_OK, "%s", frame_error_text());
    frame_stick_free(stick);
}
END_TEST

static void check_working(frame_working *working) {
    frame_text *problems;
    ck_assert_int_eq(frame_text_new(&problems), FRAME_OK);
    ck_assert_msg(frame_working_check(working, problems) == FRAME_OK, "%s", frame_text_chars(problems));
    ck_assert_uint_gt(frame_working_step_count(working), 40);
    frame_text_free(problems);
}

/* What the working shows of the stick beside the formulas differs by nothing; how many such lines there are. */
static int apart_lines(const frame_working *working) {
    int lines = 0;
    for (size_t i = 0; i < frame_working_step_count(working); i++) {
        frame_working_step step;
        ck_assert_int_eq(frame_working_step_at(working, i, &step), FRAME_OK);
        if (strcmp(step.meaning, "what they differ by")) continue;
        ck_assert_msg(step.value < 1e-7, "%s: %g", step.symbol, step.value);
        lines++;
    }
    return lines;
}

START_TEST(the_working_re_evaluates) {
    for (int i = 0; i < 60; i++) {
        frame_working *working;
        frame_hip_in in = random_hip();
        frame_hip_out out;
        frame_valley_out valley_out;
        in.eaves = 1 + i % 2;
        in.top = FRAME_HIP_TOP_BACKED;
        in.height_above_plate_in = in.depth_in / 2;
        ck_assert_int_eq(frame_working_new(&working), FRAME_OK);
        ck_assert_msg(frame_hip(&in, &out, working) == FRAME_OK, "%s", frame_error_text());
        check_working(working);
        ck_assert_int_ge(apart_lines(working), 4); /* length, mitre and bevel of the head, backing */
        frame_working_clear(working);
        const frame_valley_in as = as_valley(&in);
        ck_assert_int_eq(frame_valley(&as, &valley_out, working), FRAME_OK);
        check_working(working);
        ck_assert_int_ge(apart_lines(working), 2);
        frame_working_free(working);
    }
}
END_TEST

START_TEST(they_can_be_drawn) {
    const frame_hip_in in = random_hip();
    const frame_valley_in as = as_valley(&in);
    frame_drawing *drawing;
    ck_assert_int_eq(frame_hip_drawing(&in, &drawing), FRAME_OK);
    frame_drawing_free(drawing);
    ck_assert_int_eq(frame_valley_drawing(&as, &drawing), FRAME_OK);
    frame_drawing_free(drawing);
}
END_TEST

int main(void) {
    srand(6);
    Suite *suite = suite_create("hip");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, a_regular_hip);
    tcase_add_test(tests, stepping_off_reaches_the_head);
    tcase_add_test(tests, both_planes_hold_the_hip);
    tcase_add_test(tests, the_kernel_agrees_on_hips);
    tcase_add_test(tests, the_kernel_agrees_on_valleys);
    tcase_add_test(tests, the_birdsmouth_is_what_the_corner_takes);
    tcase_add_test(tests, nothing_stands_over_the_roof);
    tcase_add_test(tests, a_mirrored_hip);
    tcase_add_test(tests, the_angle_between_the_planes);
    tcase_add_test(tests, what_cannot_be_is_refused);
    tcase_add_test(tests, overhangs_equal);
    tcase_add_test(tests, the_working_re_evaluates);
    tcase_add_test(tests, they_can_be_drawn);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
