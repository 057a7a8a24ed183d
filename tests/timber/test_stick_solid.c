/* Volumes, lengths and centres of gravity against closed forms. */
#include "make_stick.h"

static const double near = 1e-9;

START_TEST(a_square_prism) {
    const frame_stick_in in = stick_in(1.5, 9.25, 120);
    frame_stick *stick = stick_of(&in);
    const frame_stick_solid_out solid = solid_of(stick);
    ck_assert_double_eq_tol(solid.volume_in3, 1.5 * 9.25 * 120, near);
    ck_assert_double_eq_tol(solid.stock_volume_in3, 1.5 * 9.25 * 120, near);
    ck_assert_double_eq_tol(solid.centre_x_in, 60, near);
    ck_assert_double_eq_tol(solid.centre_y_in, 0, near);
    ck_assert_double_eq_tol(solid.centre_z_in, 0, near);
    double weight;
    ck_assert_int_eq(frame_stick_weight(stick, 27, &weight), FRAME_OK);
    ck_assert_double_eq_tol(weight, 27 * 1.5 * 9.25 * 120 / 1728, near);
    const frame_stick_lengths_out lengths = lengths_of(stick);
    ck_assert_double_eq_tol(lengths.long_point_in, 120, near);
    ck_assert_double_eq_tol(lengths.short_point_in, 120, near);
    ck_assert_double_eq_tol(lengths.top_left_in, 120, near);
    ck_assert_uint_eq(frame_stick_saw_count(stick), 2);
    frame_stick_free(stick);
    frame_stick_free(NULL);
}
END_TEST

/* A rafter between two plumb cuts, its top edge from 0 to 100: a parallelogram. Going up, a plumb line leans towards
 * the end, over the depth by depth times slope. */
static frame_stick *parallelogram(double slope, double thickness, double depth) {
    const frame_stick_in in = stick_in(thickness, depth, 50);
    frame_stick *stick = stick_of(&in);
    const double angle = atan(slope);
    cut(stick, FRAME_STICK_PLUMB_CUT, 0, 0, depth / 2, -cos(angle), 0, sin(angle));
    cut(stick, FRAME_STICK_PLUMB_CUT, 100, 0, depth / 2, cos(angle), 0, -sin(angle));
    return stick;
}

START_TEST(plumb_cuts_at_every_slope) {
    for (double slope = 0.1; slope <= 2.001; slope += 0.05) {
        const double depth = 7.25;
        frame_stick *stick = parallelogram(slope, 1.5, depth);
        const frame_stick_lengths_out lengths = lengths_of(stick);
        ck_assert_double_eq_tol(volume_of(stick), 1.5 * depth * 100, 1e-8);
        ck_assert_double_eq_tol(lengths.top_edge_in, 100, near);
        ck_assert_double_eq_tol(lengths.bottom_edge_in, 100, near);
        ck_assert_double_eq_tol(lengths.centre_line_in, 100, near);
        ck_assert_double_eq_tol(lengths.long_point_in, 100 + depth * slope, near);
        ck_assert_double_eq_tol(lengths.short_point_in, 100 - depth * slope, near);
        ck_assert_double_eq_tol(lengths.start_long_point_x_in, -depth * slope, near);
        ck_assert_double_eq_tol(solid_of(stick).centre_x_in, 50 - depth / 2 * slope, near);
        for (size_t i = 0; i < 2; i++) {
            const frame_stick_saw saw = saw_of(stick, i);
            ck_assert_double_eq_tol(saw.mitre_deg, atan(slope) / degree, near);
            ck_assert_double_eq(saw.bevel_deg, 0);
            ck_assert_double_eq(saw.across_top_deg, 0);
            ck_assert_double_eq_tol(saw.area_in2, 1.5 * depth / cos(atan(slope)), near);
            ck_assert_int_eq(saw.at_end, i ? FRAME_STICK_END : FRAME_STICK_START);
            ck_assert_int_eq(saw.mitre_end, FRAME_STICK_END);
            ck_assert_int_eq(saw.mitre_face, FRAME_STICK_TOP);
            ck_assert_int_eq(saw.bevel_end, FRAME_NOT_GIVEN_INT);
            ck_assert_uint_eq(saw.cautions, 0);
        }
        frame_stick_free(stick);
    }
}
END_TEST

/* A tail cut plumb and level: the level cut takes a triangle off the lower corner of the plumb one. The plumb line's
 * whole length is depth / cos; where the level line meets it a part p stays, and the triangle's sides along plumb and
 * level are (whole - p) and (whole - p) / tan. */
START_TEST(a_plumb_and_level_tail) {
    const double angle = atan(0.5), depth = 9.25, part = 4;
    frame_stick *stick = parallelogram(0.5, 1.5, depth);
    const double whole = depth / cos(angle), leg = whole - part;
    const double x = 0 - part * sin(angle), z = depth / 2 - part * cos(angle);
    cut(stick, FRAME_STICK_LEVEL_CUT, x, 0, z, -sin(angle), 0, -cos(angle));
    ck_assert_double_eq_tol(volume_of(stick), 1.5 * (depth * 100 - leg * leg / tan(angle) / 2), near);
    const frame_stick_lengths_out lengths = lengths_of(stick);
    ck_assert_double_eq_tol(lengths.top_edge_in, 100, near);
    ck_assert_double_eq_tol(lengths.bottom_edge_in, 100 - leg / sin(angle), near);
    ck_assert_double_eq_tol(lengths.start_long_point_x_in, x, near);
    ck_assert_double_eq_tol(saw_of(stick, 2).mitre_deg, 90 - angle / degree, near);
    ck_assert_int_eq(saw_of(stick, 2).at_end, FRAME_STICK_START);
    ck_assert_double_eq_tol(saw_of(stick, 0).area_in2, 1.5 * part, near);
    ck_assert_double_eq_tol(saw_of(stick, 2).area_in2, 1.5 * leg / tan(angle), near);
    frame_stick_free(stick);
}
END_TEST

/* A birdsmouth with a seat s takes a right triangle off: level leg s, plumb leg s tan, so area s^2 tan / 2. Its depth
 * square to the edge is s sin. */
START_TEST(a_birdsmouth) {
    for (double slope = 0.1; slope <= 2.001; slope += 0.1) {
        const double angle = atan(slope), depth = 9.25, seat = 3.5, deep = seat * sin(angle);
        frame_stick *stick = parallelogram(slope, 1.5, depth);
        const double before = volume_of(stick);
        birdsmouth(stick, 30, -depth / 2 + deep, angle);
        ck_assert_double_eq_tol(before - volume_of(stick), 1.5 * seat * seat * slope / 2, 1e-8);
        const frame_stick_saw level = saw_of(stick, 2), heel = saw_of(stick, 3);
        ck_assert_double_eq_tol(level.area_in2, 1.5 * seat, near);
        ck_assert_double_eq_tol(heel.area_in2, 1.5 * seat * slope, near);
        ck_assert_double_eq_tol(level.mitre_deg, 90 - angle / degree, 1e-7);
        ck_assert_double_eq_tol(heel.mitre_deg, angle / degree, 1e-7);
        ck_assert_int_eq(level.notch, 1);
        ck_assert_int_eq(level.notch_kind, FRAME_STICK_BIRDSMOUTH);
        ck_assert_int_eq(level.at_end, FRAME_NOT_GIVEN_INT);
        ck_assert_double_eq_tol(outline_area(stick, FRAME_STICK_LEFT), depth * 100 - seat * seat * slope / 2, 1e-8);
        ck_assert_double_eq_tol(outline_area(stick, FRAME_STICK_RIGHT), depth * 100 - seat * seat * slope / 2, 1e-8);
        ck_assert_double_eq_tol(outline_area(stick, FRAME_STICK_BOTTOM), 1.5 * (100 - seat / cos(angle)), 1e-8);
        frame_stick_free(stick);
    }
}
END_TEST

/* A hip backed by an angle on both sides loses two triangles of its section: half thickness by half thickness times the
 * tangent. */
START_TEST(a_backed_hip) {
    const double t = 3.5, depth = 11.25, length = 200, back = 20 * degree;
    const frame_stick_in in = stick_in(t, depth, length);
    frame_stick *stick = stick_of(&in);
    cut(stick, FRAME_STICK_BACKING, 0, 0, depth / 2, 0, sin(back), cos(back));
    cut(stick, FRAME_STICK_BACKING, 0, 0, depth / 2, 0, -sin(back), cos(back));
    ck_assert_double_eq_tol(volume_of(stick), length * (t * depth - t / 2 * t / 2 * tan(back)), 1e-8);
    ck_assert_double_eq(outline_area(stick, FRAME_STICK_TOP), 0);
    ck_assert_double_eq_tol(outline_area(stick, FRAME_STICK_LEFT), length * (depth - t / 2 * tan(back)), 1e-8);
    const frame_stick_saw left = saw_of(stick, 2), right = saw_of(stick, 3);
    ck_assert_double_eq_tol(left.bevel_deg, 20, near);
    ck_assert_double_eq(left.mitre_deg, 90);
    ck_assert_int_eq(left.base_face, FRAME_STICK_LEFT);
    ck_assert_int_eq(right.base_face, FRAME_STICK_RIGHT);
    ck_assert_double_eq_tol(left.area_in2, length * t / 2 / cos(back), 1e-8);
    ck_assert_double_eq_tol(lengths_of(stick).top_left_in, length, near);
    frame_stick_free(stick);
}
END_TEST

/* Laps on the flat: two halves cut at the same depth, one of them at the end. Their bottoms lie in one plane. */
START_TEST(two_laps_in_one_plane) {
    const frame_stick_in in = stick_in(1.5, 3.5, 100);
    frame_stick *stick = stick_of(&in);
    const frame_stick_plane middle[3] = {plane_at(FRAME_STICK_SHOULDER, 20, 0, 0, 1, 0, 0),
                                         plane_at(FRAME_STICK_SHOULDER, 23.5, 0, 0, -1, 0, 0),
                                         plane_at(FRAME_STICK_LAP_FACE, 0, 0.25, 0, 0, 1, 0)};
    const frame_stick_plane end[2] = {plane_at(FRAME_STICK_SHOULDER, 90, 0, 0, 1, 0, 0),
                                      plane_at(FRAME_STICK_LAP_FACE, 0, 0.25, 0, 0, 1, 0)};
    ck_assert_int_eq(frame_stick_notch(stick, middle, 3, FRAME_STICK_LAP), FRAME_OK);
    ck_assert_int_eq(frame_stick_notch(stick, end, 2, FRAME_STICK_LAP), FRAME_OK);
    ck_assert_double_eq_tol(volume_of(stick), 3.5 * (1.5 * 100 - 0.5 * 3.5 - 0.5 * 10), near);
    ck_assert_double_eq_tol(saw_of(stick, 4).area_in2, 3.5 * 3.5, near);
    ck_assert_double_eq_tol(saw_of(stick, 6).area_in2, 3.5 * 10, near);
    ck_assert_double_eq_tol(saw_of(stick, 2).area_in2, 3.5 * 0.5, near);
    ck_assert_double_eq_tol(outline_area(stick, FRAME_STICK_LEFT), 3.5 * (100 - 3.5 - 10), near);
    ck_assert_double_eq_tol(outline_area(stick, FRAME_STICK_RIGHT), 350, near);
    ck_assert_double_eq_tol(outline_area(stick, FRAME_STICK_TOP), 1.5 * 100 - 0.5 * 3.5 - 0.5 * 10, near);
    ck_assert_double_eq_tol(lengths_of(stick).long_point_in, 100, near);
    frame_stick_free(stick);
}
END_TEST

/* A mortise through the stick is a hole in both faces. */
START_TEST(a_hole_through) {
    const frame_stick_in in = stick_in(3.5, 5.5, 60);
    frame_stick *stick = stick_of(&in);
    const frame_stick_plane hole[4] = {
        plane_at(FRAME_STICK_SHOULDER, 20, 0, 0, 1, 0, 0), plane_at(FRAME_STICK_SHOULDER, 24, 0, 0, -1, 0, 0),
        plane_at(FRAME_STICK_LAP_FACE, 0, 0, -1, 0, 0, 1), plane_at(FRAME_STICK_LAP_FACE, 0, 0, 1, 0, 0, -1)};
    ck_assert_int_eq(frame_stick_notch(stick, hole, 4, FRAME_STICK_NOTCH), FRAME_OK);
    ck_assert_double_eq_tol(volume_of(stick), 3.5 * (5.5 * 60 - 4 * 2), near);
    ck_assert_double_eq_tol(outline_area(stick, FRAME_STICK_LEFT), 5.5 * 60 - 8, near);
    int corners = 0, loops = 0;
    for (size_t i = 0; i < frame_stick_corner_count(stick); i++) {
        frame_stick_corner corner;
        ck_assert_int_eq(frame_stick_corner_at(stick, i, &corner), FRAME_OK);
        if (corner.face != FRAME_STICK_LEFT) continue;
        corners++;
        if (corner.loop + 1 > loops) loops = corner.loop + 1;
    }
    ck_assert_int_eq(corners, 8);
    ck_assert_int_eq(loops, 2);
    ck_assert_double_eq_tol(saw_of(stick, 4).area_in2, 3.5 * 4, near);
    frame_stick_free(stick);
}
END_TEST

/* A stair stringer: treads and risers as notches one after the other, each a triangle. */
START_TEST(a_stair_stringer) {
    const double riser = 7.5, tread = 10, angle = atan(riser / tread), step = hypot(riser, tread);
    const frame_stick_in in = stick_in(1.5, 11.25, 14 * step);
    frame_stick *stick = stick_of(&in);
    for (int i = 0; i < 14; i++) {
        /* The tread runs level from the riser's foot to the edge; in the stick's axes level is turned down by the
         * angle. */
        const double x = (i + 1) * step - riser * sin(angle), z = 11.25 / 2 - riser * cos(angle);
        const frame_stick_plane planes[2] = {plane_at(FRAME_STICK_SHOULDER, x, 0, z, sin(angle), 0, cos(angle)),
                                             plane_at(FRAME_STICK_SHOULDER, x, 0, z, -cos(angle), 0, sin(angle))};
        ck_assert_msg(frame_stick_notch(stick, planes, 2, FRAME_STICK_NOTCH) == FRAME_OK, "%s", frame_error_text());
    }
    ck_assert_double_eq_tol(volume_of(stick), 1.5 * (11.25 * 14 * step - 14 * riser * tread / 2), 1e-8);
    ck_assert_double_eq_tol(outline_area(stick, FRAME_STICK_LEFT), 11.25 * 14 * step - 14 * riser * tread / 2, 1e-8);
    ck_assert_double_eq_tol(outline_area(stick, FRAME_STICK_TOP), 0, 1e-8);
    for (size_t i = 2; i < frame_stick_saw_count(stick); i++)
        ck_assert_double_eq_tol(saw_of(stick, i).area_in2, 1.5 * (i % 2 ? riser : tread), 1e-8);
    frame_stick_free(stick);
}
END_TEST

static void add(TCase *tests) {
    tcase_add_test(tests, a_square_prism);
    tcase_add_test(tests, plumb_cuts_at_every_slope);
    tcase_add_test(tests, a_plumb_and_level_tail);
    tcase_add_test(tests, a_birdsmouth);
    tcase_add_test(tests, a_backed_hip);
    tcase_add_test(tests, two_laps_in_one_plane);
    tcase_add_test(tests, a_hole_through);
    tcase_add_test(tests, a_stair_stringer);
}

int main(void) {
    return run("stick solid", add);
}
