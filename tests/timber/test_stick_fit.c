/* What two placed sticks share. */
#include "make_stick.h"

static const double near = 1e-8;

/* A stick along a direction in the world from a point. */
static frame_stick *placed(double thickness, double depth, double x, double y, double z, double ex, double ey,
                           double ez) {
    frame_stick_in in = stick_in(thickness, depth, FRAME_NOT_GIVEN);
    in.start_x_in = x, in.start_y_in = y, in.start_z_in = z;
    in.end_x_in = ex, in.end_y_in = ey, in.end_z_in = ez;
    return stick_of(&in);
}

START_TEST(crossing_sticks) {
    frame_stick *along = placed(1.5, 5.5, 0, 0, 0, 100, 0, 0), *across = placed(3.5, 3.5, 40, -30, 0, 40, 30, 0);
    ck_assert_double_eq_tol(overlap_of(along, across), 1.5 * 3.5 * 3.5, near);
    ck_assert_double_eq_tol(overlap_of(across, along), 1.5 * 3.5 * 3.5, near);
    frame_stick_free(across);
    across = placed(3.5, 3.5, 40, -30, 5.5 / 2 + 3.5 / 2, 40, 30, 5.5 / 2 + 3.5 / 2);
    ck_assert_double_eq(overlap_of(along, across), 0);
    frame_stick_free(across);
    across = placed(3.5, 3.5, 40, -30, 4, 40, 30, 4);
    ck_assert_double_eq_tol(overlap_of(along, across), 1.5 * 3.5 * 0.5, near);
    frame_stick_free(across);
    across = placed(3.5, 3.5, 400, -30, 4, 400, 30, 4);
    ck_assert_double_eq(overlap_of(along, across), 0);
    frame_stick_free(across);
    frame_stick_free(along);
}
END_TEST

/* Two sticks halved over one another where they cross fit. */
START_TEST(halved_sticks_fit) {
    frame_stick *along = placed(3.5, 5.5, 0, 0, 0, 100, 0, 0), *across = placed(3.5, 5.5, 40, -30, 0, 40, 30, 0);
    ck_assert_double_eq_tol(overlap_of(along, across), 3.5 * 3.5 * 5.5, near);
    for (int i = 0; i < 2; i++) {
        const double middle = i ? 30 : 40;
        const frame_stick_plane planes[3] = {plane_at(FRAME_STICK_SHOULDER, middle - 1.75, 0, 0, 1, 0, 0),
                                             plane_at(FRAME_STICK_SHOULDER, middle + 1.75, 0, 0, -1, 0, 0),
                                             plane_at(FRAME_STICK_LAP_FACE, 0, 0, 0.25, 0, 0, i ? 1 : -1)};
        ck_assert_double_gt(overlap_of(along, across), 1);
        ck_assert_int_eq(frame_stick_notch(i ? across : along, planes, 3, FRAME_STICK_LAP), FRAME_OK);
    }
    ck_assert_double_eq(overlap_of(along, across), 0);
    frame_stick_free(along);
    frame_stick_free(across);
}
END_TEST

/* A rafter on a plate: the birdsmouth clears it, an inch further in it does not. */
START_TEST(a_birdsmouth_clears_the_plate) {
    for (double slope = 0.2; slope <= 1.5; slope += 0.1)
        for (int shifted = 0; shifted < 2; shifted++) {
            /* Plate: outside face at world x 0, top at z 0, 5.5 wide. */
            frame_stick *plate = placed(5.5, 1.5, 2.75, -50, -0.75, 2.75, 50, -0.75);
            const double a = atan(slope), height = 4;
            frame_stick_in in = stick_in(1.5, 7.25, FRAME_NOT_GIVEN);
            in.axis_at = FRAME_STICK_AXIS_TOP;
            in.start_x_in = -20, in.start_z_in = height - 20 * slope;
            in.end_x_in = 120, in.end_y_in = 0, in.end_z_in = height + 120 * slope;
            frame_stick *rafter = stick_of(&in);
            frame_stick_plane planes[2] = {plane_at(FRAME_STICK_SEAT, -shifted, 0, 0, 0, 0, -1),
                                           plane_at(FRAME_STICK_HEEL_CUT, shifted, 0, 0, 1, 0, 0)};
            planes[0].axes = planes[1].axes = FRAME_STICK_AXES_WORLD;
            const double before = overlap_of(rafter, plate);
            ck_assert_int_eq(frame_stick_notch(rafter, planes, 2, FRAME_STICK_BIRDSMOUTH), FRAME_OK);
            /* Without it, the plate's corner stands in the rafter by a triangle; plumb leg: rafter's plumb depth -
             * height. */
            const double plumb = 7.25 / cos(a) - height, level = plumb / slope;
            if (plumb > 0 && level < 5.5 && plumb < 1.5) ck_assert_double_eq_tol(before, 1.5 * plumb * level / 2, near);
            if (!shifted) ck_assert_double_eq_tol(overlap_of(rafter, plate), 0, 1e-12);
            if (shifted && plumb > 0) ck_assert_double_gt(overlap_of(rafter, plate), 0.01);
            frame_stick_free(rafter);
            frame_stick_free(plate);
        }
}
END_TEST

static frame_stick_fit_out fit_of(const frame_stick *stick, const frame_stick *other) {
    frame_stick_fit_out fit;
    ck_assert_int_eq(frame_stick_fit(stick, other, &fit), FRAME_OK);
    return fit;
}

/* Far from the origin and turned in plan, sticks touch by as much as at it. */
START_TEST(touching_sticks) {
    for (int i = 0; i < 24; i++) {
        const double turn = i * 15 * degree, c = cos(turn), s = sin(turn), far = i % 3 * 400;
        frame_stick *post, *beam;
        frame_stick_in in = stick_in(3.5, 5.5, FRAME_NOT_GIVEN);
        in.start_x_in = far, in.start_y_in = far, in.start_z_in = 0;
        in.end_x_in = far, in.end_y_in = far, in.end_z_in = 96;
        in.crown_x = c, in.crown_y = s, in.crown_z = 0;
        post = stick_of(&in);
        /* A beam 2.75 in deep lies on it, along the crown, reaching 1 in past the middle. */
        beam = placed(1.5, 2.75, far - c, far - s, 96 + 2.75 / 2, far + 80 * c, far + 80 * s, 96 + 2.75 / 2);
        ck_assert_double_eq_tol(fit_of(post, beam).contact_in2, 1.5 * (2.75 + 1), 1e-7);
        ck_assert_double_eq_tol(fit_of(beam, post).contact_in2, 1.5 * (2.75 + 1), 1e-7);
        ck_assert_double_eq(fit_of(post, beam).gap_in, 0);
        ck_assert_double_eq_tol(fit_of(post, beam).overlap_in3, 0, 1e-9);
        frame_stick_free(beam);
        frame_stick_free(post);
    }
}
END_TEST

START_TEST(sticks_that_miss) {
    frame_stick *along = placed(1.5, 5.5, 0, 0, 0, 100, 0, 0);
    /* Over its face, past its end's edge, past its corner, and crossing in the air. */
    frame_stick *over = placed(1.5, 5.5, 20, 0, 8.5, 80, 0, 8.5), *past = placed(1.5, 5.5, 103, 0, 9.5, 160, 0, 9.5);
    frame_stick *corner = placed(1.5, 5.5, 103, 5.5, 11.5, 160, 5.5, 11.5);
    frame_stick *crossing = placed(1.5, 5.5, 20, -60, -40, 90, 60, -30);
    ck_assert_double_eq_tol(fit_of(along, over).gap_in, 3, 1e-9);
    ck_assert_double_eq_tol(fit_of(along, past).gap_in, 5, 1e-9);
    ck_assert_double_eq_tol(fit_of(along, corner).gap_in, sqrt(3 * 3 + 4 * 4 + 6 * 6), 1e-9);
    ck_assert_double_gt(fit_of(along, crossing).gap_in, 20);
    ck_assert_double_eq_tol(fit_of(along, crossing).gap_in, fit_of(crossing, along).gap_in, 1e-9);
    ck_assert_double_eq(fit_of(along, over).contact_in2, 0);
    frame_stick_free(along), frame_stick_free(over), frame_stick_free(past);
    frame_stick_free(corner), frame_stick_free(crossing);
}
END_TEST

static void add(TCase *tests) {
    tcase_add_test(tests, touching_sticks);
    tcase_add_test(tests, sticks_that_miss);
    tcase_add_test(tests, crossing_sticks);
    tcase_add_test(tests, halved_sticks_fit);
    tcase_add_test(tests, a_birdsmouth_clears_the_plate);
}

int main(void) {
    return run("stick fit", add);
}
