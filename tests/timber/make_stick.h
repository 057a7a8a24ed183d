/* Short ways to make sticks in the tests. Each stops the test when the library refuses. */
#ifndef FRAME_TESTS_MAKE_STICK_H
#define FRAME_TESTS_MAKE_STICK_H

#include <check.h>
#include <frame/timber.h>
#include <math.h>
#include <string.h>

static const double degree = 0.017453292519943295;

static inline frame_stick_in stick_in(double thickness, double depth, double length) {
    frame_stick_in in;
    ck_assert_int_eq(frame_stick_in_init(&in), FRAME_OK);
    in.thickness_in = thickness;
    in.depth_in = depth;
    in.length_in = length;
    return in;
}

static inline frame_stick *stick_of(const frame_stick_in *in) {
    frame_stick *stick = NULL;
    ck_assert_msg(frame_stick_new(in, &stick) == FRAME_OK, "%s", frame_error_text());
    return stick;
}

/* A plane in the stick's own axes. */
static inline frame_stick_plane plane_at(frame_stick_role role, double x, double y, double z, double wx, double wy,
                                         double wz) {
    frame_stick_plane plane;
    ck_assert_int_eq(frame_stick_plane_init(&plane), FRAME_OK);
    plane.role = role;
    plane.point_x_in = x, plane.point_y_in = y, plane.point_z_in = z;
    plane.waste_x = wx, plane.waste_y = wy, plane.waste_z = wz;
    return plane;
}

static inline void cut(frame_stick *stick, frame_stick_role role, double x, double y, double z, double wx, double wy,
                       double wz) {
    const frame_stick_plane plane = plane_at(role, x, y, z, wx, wy, wz);
    ck_assert_msg(frame_stick_cut(stick, &plane) == FRAME_OK, "%s", frame_error_text());
}

/* A birdsmouth seen in the side of a rafter whose slope is an angle: its corner at x, z; the plate is uphill of it. */
static inline void birdsmouth(frame_stick *stick, double x, double z, double angle) {
    const frame_stick_plane planes[2] = {
        plane_at(FRAME_STICK_SEAT, x, 0, z, -sin(angle), 0, -cos(angle)),
        plane_at(FRAME_STICK_HEEL_CUT, x, 0, z, cos(angle), 0, -sin(angle)),
    };
    ck_assert_msg(frame_stick_notch(stick, planes, 2, FRAME_STICK_BIRDSMOUTH) == FRAME_OK, "%s", frame_error_text());
}

static inline frame_stick_solid_out solid_of(const frame_stick *stick) {
    frame_stick_solid_out solid;
    ck_assert_int_eq(frame_stick_solid(stick, &solid), FRAME_OK);
    return solid;
}

static inline double volume_of(const frame_stick *stick) {
    return solid_of(stick).volume_in3;
}

static inline frame_stick_lengths_out lengths_of(const frame_stick *stick) {
    frame_stick_lengths_out lengths;
    ck_assert_int_eq(frame_stick_lengths(stick, &lengths), FRAME_OK);
    return lengths;
}

static inline frame_stick_saw saw_of(const frame_stick *stick, size_t index) {
    frame_stick_saw saw;
    ck_assert_msg(frame_stick_saw_at(stick, index, &saw) == FRAME_OK, "%s", frame_error_text());
    return saw;
}

static inline double overlap_of(const frame_stick *a, const frame_stick *b) {
    frame_stick_fit_out fit;
    ck_assert_int_eq(frame_stick_fit(a, b, &fit), FRAME_OK);
    return fit.overlap_in3;
}

/* The area within the outline of a face: holes take away. */
static inline double outline_area(const frame_stick *stick, frame_stick_face face) {
    double twice = 0;
    frame_stick_corner first = {0}, from = {0}, to;
    int open = 0;
    for (size_t i = 0; i <= frame_stick_corner_count(stick); i++) {
        const int more = i < frame_stick_corner_count(stick);
        if (more) ck_assert_int_eq(frame_stick_corner_at(stick, i, &to), FRAME_OK);
        if (open && (!more || to.face != from.face || to.loop != from.loop)) {
            twice += from.along_in * first.across_in - first.along_in * from.across_in;
            open = 0;
        }
        if (!more || to.face != face) continue;
        if (open)
            twice += from.along_in * to.across_in - to.along_in * from.across_in;
        else
            first = to;
        from = to;
        open = 1;
    }
    return twice / 2;
}

static inline int run(const char *name, void (*add)(TCase *)) {
    Suite *suite = suite_create(name);
    TCase *tests = tcase_create("all");
    add(tests);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}

#endif
