/* What is refused, with the field at fault, and that a stick refused a cut is as it was. */
#include "make_stick.h"

static void check_refused(const frame_stick_in *in, frame_status status, const char *field) {
    frame_stick *stick = (void *)1;
    ck_assert_int_eq(frame_stick_new(in, &stick), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_ptr_nonnull(strstr(frame_error_text(), field));
    ck_assert_ptr_eq(stick, (void *)1);
}

START_TEST(sticks_that_cannot_be) {
    frame_stick_in in = stick_in(1.5, 5.5, FRAME_NOT_GIVEN);
    check_refused(&in, FRAME_REQUIRED, "length_in");
    in.end_x_in = 10;
    check_refused(&in, FRAME_REQUIRED, "end_y_in");
    in.end_y_in = in.end_z_in = 0;
    in.length_in = 10;
    check_refused(&in, FRAME_CONFLICT, "length_in");
    in.length_in = FRAME_NOT_GIVEN;
    in.end_x_in = 0;
    check_refused(&in, FRAME_CONFLICT, "end_x_in");
    in.end_x_in = 5000;
    check_refused(&in, FRAME_OUT_OF_RANGE, "end_x_in");
    in.end_x_in = 0, in.end_z_in = 96;
    check_refused(&in, FRAME_CONFLICT, "crown_z");
    in.crown_x = 1;
    frame_stick *post = stick_of(&in);
    frame_stick_free(post);
    in.thickness_in = 0;
    check_refused(&in, FRAME_OUT_OF_RANGE, "thickness_in");
    in.thickness_in = NAN;
    check_refused(&in, FRAME_NOT_A_NUMBER, "thickness_in");
}
END_TEST

START_TEST(planes_that_cannot_be) {
    frame_stick_in in = stick_in(1.5, 5.5, 40);
    frame_stick_plane planes[2] = {plane_at(FRAME_STICK_PLUMB_CUT, 0, 0, 0, -1, 0, 0),
                                   plane_at(FRAME_STICK_PLUMB_CUT, 30, 0, 0, 0, 0, 0)};
    in.planes = planes;
    in.plane_count = 2;
    check_refused(&in, FRAME_OUT_OF_RANGE, "planes[1].waste_x");
    planes[1].waste_z = 1;
    check_refused(&in, FRAME_CONFLICT, "planes[1].waste_x");
    planes[1].role = 99;
    planes[1].waste_x = 1;
    ck_assert_int_ne(frame_stick_new(&in, &(frame_stick *){NULL}), FRAME_OK);
    ck_assert_str_eq(frame_error_field(), "planes[1].role");
    planes[1].role = FRAME_STICK_SQUARE_END;
    planes[1].point_x_in = -1, planes[1].waste_z = 0;
    check_refused(&in, FRAME_IMPOSSIBLE, "planes");
    planes[1].role = FRAME_STICK_TAPER;
    planes[1].waste_x = 0, planes[1].waste_y = 1;
    planes[1].point_y_in = -2;
    check_refused(&in, FRAME_IMPOSSIBLE, "planes");
    in.planes = NULL;
    ck_assert_int_ne(frame_stick_new(&in, &(frame_stick *){NULL}), FRAME_OK);
}
END_TEST

START_TEST(a_refused_cut_changes_nothing) {
    const frame_stick_in in = stick_in(1.5, 5.5, 40);
    frame_stick *stick = stick_of(&in);
    cut(stick, FRAME_STICK_PLUMB_CUT, 2, 0, 0, -1, 0.2, 0.5);
    birdsmouth(stick, 20, -2, 0.4);
    const double volume = volume_of(stick);
    const size_t saws = frame_stick_saw_count(stick), marks = frame_stick_mark_count(stick);
    const frame_stick_plane all = plane_at(FRAME_STICK_TAPER, 0, 0, -9, 0, 0, 1);
    ck_assert_int_eq(frame_stick_cut(stick, &all), FRAME_IMPOSSIBLE);
    ck_assert_int_eq(frame_stick_notch(stick, &all, 1, FRAME_STICK_NOTCH), FRAME_IMPOSSIBLE);
    const frame_stick_plane bad[2] = {plane_at(FRAME_STICK_SEAT, 10, 0, 0, 1, 0, 0),
                                      plane_at(FRAME_STICK_SEAT, 10, 0, 0, 0, 0, 0)};
    ck_assert_int_eq(frame_stick_notch(stick, bad, 2, FRAME_STICK_NOTCH), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "planes[1].waste_x");
    ck_assert_int_eq(frame_stick_notch(stick, bad, 0, FRAME_STICK_NOTCH), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_stick_notch(stick, bad, 1, 77), FRAME_UNKNOWN_NAME);
    ck_assert_double_eq(volume_of(stick), volume);
    ck_assert_uint_eq(frame_stick_saw_count(stick), saws);
    ck_assert_uint_eq(frame_stick_mark_count(stick), marks);
    cut(stick, FRAME_STICK_SQUARE_END, 38, 0, 0, 1, 0, 0);
    ck_assert_double_lt(volume_of(stick), volume);
    frame_stick_free(stick);
}
END_TEST

/* A saw cut right through, square or slanting, and notches that leave only an edge in common: no longer one stick. */
START_TEST(a_stick_stays_in_one_piece) {
    const frame_stick_in in = stick_in(1.5, 8, 60);
    frame_stick *stick = stick_of(&in);
    for (double slant = -3; slant <= 3; slant++) {
        const frame_stick_plane kerf[2] = {plane_at(FRAME_STICK_SHOULDER, 30, 0, 0, 1, 0, slant),
                                           plane_at(FRAME_STICK_SHOULDER, 30.2, 0, 0, -1, 0, -slant)};
        ck_assert_int_eq(frame_stick_notch(stick, kerf, 2, FRAME_STICK_NOTCH), FRAME_IMPOSSIBLE);
        ck_assert_ptr_nonnull(strstr(frame_error_text(), "apart"));
    }
    for (int up = -1; up <= 1; up += 2) {
        const frame_stick_plane notch[2] = {plane_at(FRAME_STICK_SHOULDER, 30, 0, 0, 1, 0, up),
                                            plane_at(FRAME_STICK_SHOULDER, 30, 0, 0, -1, 0, up)};
        ck_assert_int_eq(frame_stick_notch(stick, notch, 2, FRAME_STICK_NOTCH), up < 0 ? FRAME_OK : FRAME_IMPOSSIBLE);
    }
    ck_assert_double_eq_tol(volume_of(stick), 1.5 * (8 * 60 - 4 * 4), 1e-9);
    frame_stick_free(stick);
}
END_TEST

START_TEST(the_limits_hold) {
    const frame_stick_in in = stick_in(20, 20, 40);
    frame_stick *stick = stick_of(&in);
    frame_status status = FRAME_OK;
    int cuts = 0;
    for (; !status && cuts < 300; cuts++) {
        const double z = 1 - 2 * (cuts % 150 + 0.5) / 150, around = cuts * 2.399963, w = sqrt(1 - z * z);
        const frame_stick_plane plane = plane_at(FRAME_STICK_SHOULDER, 20 + 9 * w * cos(around), 9 * w * sin(around),
                                                 9 * z, w * cos(around), w * sin(around), z);
        status = frame_stick_cut(stick, &plane);
    }
    ck_assert_int_eq(status, FRAME_TOO_LARGE);
    ck_assert_int_ge(cuts, 55);
    ck_assert_double_gt(volume_of(stick), 9.0 * 9 * 9 * 4);
    frame_stick_free(stick);
    stick = stick_of(&in);
    for (cuts = 0, status = FRAME_OK; !status && cuts < 300; cuts++) {
        const frame_stick_plane plane = plane_at(FRAME_STICK_SHOULDER, 0, 0, 10 - 0.01 * cuts, 0, 0, 1);
        status = frame_stick_cut(stick, &plane);
    }
    ck_assert_int_eq(status, FRAME_TOO_LARGE);
    ck_assert_int_eq(cuts, 201);
    ck_assert_double_eq_tol(volume_of(stick), 20 * 40 * (20 - 1.99), 1e-8);
    frame_stick_free(stick);
}
END_TEST

START_TEST(nothing_is_no_stick) {
    frame_stick_lengths_out lengths;
    frame_stick_solid_out solid;
    frame_stick_mark mark;
    double weight = 3;
    ck_assert_int_eq(frame_stick_new(NULL, &(frame_stick *){NULL}), FRAME_NOT_INITIALISED);
    ck_assert_int_ne(frame_stick_lengths(NULL, &lengths), FRAME_OK);
    ck_assert_int_ne(frame_stick_solid(NULL, &solid), FRAME_OK);
    ck_assert_int_ne(frame_stick_mark_at(NULL, 0, &mark), FRAME_OK);
    ck_assert_uint_eq(frame_stick_mark_count(NULL), 0);
    ck_assert_uint_eq(frame_stick_saw_count(NULL), 0);
    const frame_stick_in in = stick_in(1.5, 5.5, 40);
    frame_stick *stick = stick_of(&in);
    ck_assert_int_eq(frame_stick_mark_at(stick, 1000, &mark), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_stick_weight(stick, 0, &weight), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_stick_weight(stick, NAN, &weight), FRAME_NOT_A_NUMBER);
    ck_assert_double_eq(weight, 3);
    frame_stick_free(stick);
}
END_TEST

static void add(TCase *tests) {
    tcase_add_test(tests, sticks_that_cannot_be);
    tcase_add_test(tests, planes_that_cannot_be);
    tcase_add_test(tests, a_refused_cut_changes_nothing);
    tcase_add_test(tests, a_stick_stays_in_one_piece);
    tcase_add_test(tests, the_limits_hold);
    tcase_add_test(tests, nothing_is_no_stick);
}

int main(void) {
    return run("stick inputs", add);
}
