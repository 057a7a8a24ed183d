/* Sheathing: areas and angles against closed forms and the hip, and what random roofs must keep to. */
#include "plans.h"

static frame_roof_sheathing_in *sheathing_of(const plan *p, double overhang) {
    static frame_roof_sheathing_in in;
    frame_roof_sheathing_in_init(&in);
    in.corners = p->in.corners, in.corner_count = p->in.corner_count;
    in.slopes = p->in.slopes, in.slope_count = p->in.slope_count;
    in.kinds = p->in.kinds, in.kind_count = p->in.kind_count;
    in.holes = p->in.holes, in.hole_count = p->in.hole_count;
    in.rafter_size = FRAME_SIZE(2, 8);
    in.overhang_in = overhang;
    return &in;
}

static frame_roof_sheathing *solve(const frame_roof_sheathing_in *in, frame_roof_sheathing_out *out) {
    frame_roof_sheathing *sheathing;
    ck_assert_msg(frame_roof_sheathing_solve(in, &sheathing, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_roof_sheathing_result(sheathing, out), FRAME_OK);
    return sheathing;
}

static void rectangle(plan *p, double length, double width, double slope) {
    p->corner_count = p->hole_count = 0;
    plan_add(p, 0, 0), plan_add(p, length, 0), plan_add(p, length, width), plan_add(p, 0, width);
    plan_finish(p, slope);
}

static frame_roof_sheathing_part part_at(const frame_roof_sheathing *sheathing, size_t i) {
    frame_roof_sheathing_part part;
    ck_assert_int_eq(frame_roof_sheathing_part_at(sheathing, i, &part), FRAME_OK);
    return part;
}

static frame_roof_sheathing_corner corner_at(const frame_roof_sheathing *sheathing, size_t i) {
    frame_roof_sheathing_corner corner;
    ck_assert_int_eq(frame_roof_sheathing_corner_at(sheathing, i, &corner), FRAME_OK);
    return corner;
}

/* The shoelace formula over a part's own corners; its sign tells which way round they run. */
static double area_by_corners(const frame_roof_sheathing *sheathing, const frame_roof_sheathing_part *part) {
    double twice = 0;
    for (uint32_t i = 0; i < part->corner_count; i++) {
        const frame_roof_sheathing_corner a = corner_at(sheathing, part->corner_first + i);
        const frame_roof_sheathing_corner b = corner_at(sheathing, part->corner_first + (i + 1) % part->corner_count);
        twice += a.along_in * b.up_in - a.up_in * b.along_in;
    }
    return fabs(twice) / 2;
}

START_TEST(a_hip_roof) {
    static plan p;
    frame_roof_sheathing_out out;
    frame_hip_in hip_in;
    frame_hip_out hip;
    rectangle(&p, 360, 240, 0.5);
    frame_roof_sheathing *sheathing = solve(sheathing_of(&p, 16), &out);
    ck_assert_double_eq_tol(out.area_in2, (360 + 35) * (240 + 35) * sqrt(1.25), 1e-6);
    frame_hip_in_init(&hip_in);
    hip_in.slope_a = hip_in.slope_b = 0.5, hip_in.run_in = 120;
    ck_assert_int_eq(frame_hip(&hip_in, &hip, NULL), FRAME_OK);
    size_t skew = 0;
    for (size_t i = 0; i < frame_roof_sheathing_corner_count(sheathing); i++) {
        const frame_roof_sheathing_corner corner = corner_at(sheathing, i);
        if (corner.edge != FRAME_SHEATHING_SKEW || corner.angle_deg < 1) continue;
        ck_assert_double_eq_tol(corner.angle_deg, hip.sheathing_a_deg, 1e-9);
        ck_assert_double_eq_tol(corner.bevel_deg, (180 - hip.planes_deg) / 2, 1e-9);
        skew++;
    }
    ck_assert_uint_gt(skew, 16);
    ck_assert_uint_gt(out.nailers_in, 0);
    frame_roof_sheathing_free(sheathing);
}
END_TEST

START_TEST(a_gable_roof) {
    static plan p;
    frame_roof_sheathing_out out;
    rectangle(&p, 384, 240, 0.75);
    p.kinds[1] = p.kinds[3] = FRAME_ROOF_GABLE;
    frame_roof_sheathing_in *in = sheathing_of(&p, 0);
    frame_roof_sheathing *sheathing = solve(in, &out);
    ck_assert_double_eq_tol(out.area_in2, 384 * (240 + 3) * 1.25, 1e-6);
    ck_assert_double_eq_tol(out.nailers_in, 0, 1e-9);
    ck_assert_double_gt(out.unheld_in, 0);
    for (size_t i = 0; i < frame_roof_sheathing_part_count(sheathing); i++) {
        const frame_roof_sheathing_part part = part_at(sheathing, i);
        ck_assert_uint_eq(part.corner_count, 4);
        if (part.whole) ck_assert_int_eq(part.supports, 7);
    }
    frame_roof_sheathing_free(sheathing);
    in->edges_held = 1;
    sheathing = solve(in, &out);
    ck_assert_double_eq_tol(out.unheld_in, 0, 1e-12);
    frame_roof_sheathing_free(sheathing);
    in->sheet_length_in = 24;
    ck_assert_int_eq(frame_roof_sheathing_solve(in, &sheathing, NULL), FRAME_IMPOSSIBLE);
}
END_TEST

/* No part is larger than a sheet, its figures are those of its corners, and without gaps the parts cover the faces. */
START_TEST(random_roofs) {
    static plan p;
    frame_roof_sheathing_out out;
    const int plans = getenv("FRAME_LONG") ? 1000 : 40;
    for (int i = 0; i < plans; i++) {
        srand((unsigned)i);
        plan_cells(&p, 3 + rand() % 6, 144, 0);
        plan_finish(&p, random_in(0.3, 1.1));
        frame_roof_sheathing_in *in = sheathing_of(&p, i & 1 ? 16 : 0);
        in->gap_in = i & 2 ? 0.125 : 0;
        in->spacing_in = i & 4 ? 24 : 16;
        frame_roof_sheathing *sheathing = solve(in, &out);
        double sum = 0;
        for (size_t k = 0; k < frame_roof_sheathing_part_count(sheathing); k++) {
            const frame_roof_sheathing_part part = part_at(sheathing, k);
            ck_assert_double_le(part.length_in, 96 + 1e-9);
            ck_assert_double_le(part.width_in, 48 + 1e-9);
            ck_assert_double_eq_tol(area_by_corners(sheathing, &part), part.area_in2, 1e-6);
            sum += part.area_in2;
        }
        ck_assert_double_eq_tol(sum, out.parts_area_in2, 1e-6);
        ck_assert_double_le(out.parts_area_in2, out.area_in2 + 1e-6);
        const double splinters = 1.0 * (double)frame_roof_sheathing_part_count(sheathing);
        if (in->gap_in == 0) ck_assert_double_ge(out.parts_area_in2, out.area_in2 - splinters);
        frame_roof_sheathing_free(sheathing);
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("roof_sheathing");
    TCase *tests = tcase_create("roof_sheathing");
    tcase_set_timeout(tests, 600);
    tcase_add_test(tests, a_hip_roof);
    tcase_add_test(tests, a_gable_roof);
    tcase_add_test(tests, random_roofs);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed ? EXIT_FAILURE : EXIT_SUCCESS;
}
