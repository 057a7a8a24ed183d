/* Saw settings against the handbooks' formulas for plumb, cheek, hopper and backing cuts (handbook geometry). */
#include "make_stick.h"

static const double near = 1e-9;

/* A rafter from the origin uphill along the world's x, with its crown up. */
static frame_stick *rafter(double slope, double thickness, double depth) {
    frame_stick_in in = stick_in(thickness, depth, FRAME_NOT_GIVEN);
    in.end_x_in = 100, in.end_y_in = 0, in.end_z_in = 100 * slope;
    return stick_of(&in);
}

/* A plumb plane across the world's x at a place, turned in plan by an angle to the left. */
static frame_stick_plane plumb_plane(frame_stick_role role, double x, double turn) {
    frame_stick_plane plane = plane_at(role, x, 0, 0, cos(turn), sin(turn), 0);
    plane.axes = FRAME_STICK_AXES_WORLD;
    return plane;
}

static void world_cut(frame_stick *stick, frame_stick_plane plane) {
    ck_assert_msg(frame_stick_cut(stick, &plane) == FRAME_OK, "%s", frame_error_text());
}

/* The saw's base along the plumb line on the wide face: the bevel is the angle in plan, whatever the slope. Across the
 * top edge the line runs cos(slope) to 1 for a regular hip: the square's 12 and unit length. */
START_TEST(cheek_of_a_jack) {
    for (double slope = 0.1; slope <= 2.001; slope += 0.1)
        for (double plan = 5; plan <= 70; plan += 5) {
            frame_stick *stick = rafter(slope, 1.5, 7.25);
            world_cut(stick, plumb_plane(FRAME_STICK_CHEEK_CUT, 80, plan * degree));
            const frame_stick_saw saw = saw_of(stick, 1);
            ck_assert_double_eq_tol(saw.mitre_deg, atan(slope) / degree, near);
            ck_assert_double_eq_tol(saw.bevel_deg, plan, near);
            ck_assert_double_eq_tol(saw.across_top_deg, atan(tan(plan * degree) / cos(atan(slope))) / degree, near);
            ck_assert_double_eq_tol(saw.top_edge_deg, 90 - saw.across_top_deg, near);
            if (plan == 45) ck_assert_double_eq_tol(saw.top_edge_deg, atan(cos(atan(slope))) / degree, near);
            /* The wood goes on to the right of the waste, so the long point is on the right face. */
            ck_assert_int_eq(saw.base_face, FRAME_STICK_RIGHT);
            ck_assert_int_eq(saw.mitre_end, FRAME_STICK_END);
            ck_assert_int_eq(saw.bevel_end, FRAME_STICK_START);
            ck_assert_int_eq(saw.at_end, FRAME_STICK_END);
            ck_assert_uint_eq(FRAME_HAS(saw.cautions, FRAME_STICK_SAW_COMPOUND), 1);
            ck_assert_uint_eq(FRAME_HAS(saw.cautions, FRAME_STICK_SAW_PAST_TILT), plan > 45);
            const frame_stick_lengths_out lengths = lengths_of(stick);
            ck_assert_double_eq_tol(lengths.top_right_in - lengths.top_left_in,
                                    1.5 * tan(plan * degree) / cos(atan(slope)), near);
            frame_stick_free(stick);
        }
}
END_TEST

/* A regular hip runs at 45 degrees in plan: its slope is the common's over the root of 2, and the two cheeks at its
 * head against the ridge's end or two commons make 45 degrees each with it. */
START_TEST(double_cheek_of_a_hip) {
    for (double slope = 0.25; slope <= 1.501; slope += 0.25) {
        const double hip_slope = slope / sqrt(2), t = 1.5, angle = atan(hip_slope);
        frame_stick *stick = rafter(hip_slope, t, 9.25);
        world_cut(stick, plumb_plane(FRAME_STICK_CHEEK_CUT, 80, 45 * degree));
        world_cut(stick, plumb_plane(FRAME_STICK_CHEEK_CUT, 80, -45 * degree));
        const frame_stick_saw left = saw_of(stick, 1), right = saw_of(stick, 2);
        ck_assert_double_eq_tol(left.mitre_deg, angle / degree, near);
        ck_assert_double_eq_tol(left.bevel_deg, 45, near);
        ck_assert_double_eq_tol(left.top_edge_deg, atan(cos(angle)) / degree, near);
        ck_assert_double_eq(left.mitre_deg, right.mitre_deg);
        ck_assert_double_eq(left.bevel_deg, right.bevel_deg);
        /* Each has its line on one face only, short of the point in the middle: the blade leans out to it. */
        ck_assert_int_eq(left.base_face, FRAME_STICK_LEFT);
        ck_assert_int_eq(right.base_face, FRAME_STICK_RIGHT);
        ck_assert_int_eq(left.bevel_end, FRAME_STICK_END);
        ck_assert_int_eq(right.bevel_end, FRAME_STICK_END);
        /* The edge of the point is in the middle; each face is half a thickness, drawn out, times the plumb depth. */
        const frame_stick_lengths_out lengths = lengths_of(stick);
        ck_assert_double_eq_tol(lengths.top_edge_in - lengths.top_left_in, t / 2 / cos(angle), near);
        ck_assert_double_eq_tol(left.area_in2, t / 2 * sqrt(2) * 9.25 / cos(angle), near);
        ck_assert_double_eq_tol(right.area_in2, left.area_in2, near);
        frame_stick_free(stick);
    }
}
END_TEST

/* Boards round a hopper of n sides that stand at a slope: mitre atan(tan(180/n) cos(slope)), bevel asin(sin(180/n)
 * sin(slope)). The same angles are a fascia's mitre square to a sloping roof. */
START_TEST(boards_of_a_hopper) {
    for (int n = 3; n <= 8; n++)
        for (double slope = 10; slope <= 90; slope += 10) {
            const double half = 180.0 / n * degree, a = slope * degree;
            frame_stick_in in = stick_in(0.75, 7.25, 40);
            in.crown_x = 0, in.crown_y = cos(a), in.crown_z = sin(a);
            frame_stick *stick = stick_of(&in);
            world_cut(stick, plumb_plane(FRAME_STICK_MITRE_CUT, 30, half));
            const frame_stick_saw saw = saw_of(stick, 1);
            ck_assert_double_eq_tol(saw.mitre_deg, atan(tan(half) * cos(a)) / degree, near);
            ck_assert_double_eq_tol(saw.bevel_deg, asin(sin(half) * sin(a)) / degree, near);
            frame_stick_free(stick);
        }
}
END_TEST

/* Backing of a regular hip: tan(backing) = sin(hip's slope) tan(45) in the section square to it. The plane is the
 * common roof plane; the kernel finds the angle from that alone. */
START_TEST(backing_of_a_regular_hip) {
    for (double slope = 0.25; slope <= 2.001; slope += 0.25) {
        frame_stick *stick = rafter(slope / sqrt(2), 3.5, 11.25);
        /* Roof planes rise by slope along (1, 1)/sqrt 2 and (1, -1)/sqrt 2 in plan; both hold the hip's line. */
        frame_stick_plane left = plane_at(FRAME_STICK_BACKING, 0, 0, 0, -slope / sqrt(2), slope / sqrt(2), 1);
        frame_stick_plane right = plane_at(FRAME_STICK_BACKING, 0, 0, 0, -slope / sqrt(2), -slope / sqrt(2), 1);
        left.axes = right.axes = FRAME_STICK_AXES_WORLD;
        left.point_z_in = right.point_z_in = 3;
        world_cut(stick, left);
        world_cut(stick, right);
        const double hip = atan(slope / sqrt(2));
        for (size_t i = 2; i < 4; i++) {
            const frame_stick_saw saw = saw_of(stick, i);
            ck_assert_double_eq_tol(saw.bevel_deg, atan(sin(hip)) / degree, near);
            ck_assert_double_eq(saw.mitre_deg, 90);
            ck_assert_int_eq(saw.bevel_end, FRAME_NOT_GIVEN_INT);
            ck_assert_int_eq(saw.base_face, i == 2 ? FRAME_STICK_LEFT : FRAME_STICK_RIGHT);
        }
        frame_stick_free(stick);
    }
}
END_TEST

/* Turned flat, the wide faces are top and bottom: a gable stud on the flat is cut by the slope as a bevel. */
START_TEST(a_stud_on_the_flat) {
    for (int flat = 0; flat < 2; flat++) {
        frame_stick_in in = stick_in(flat ? 3.5 : 1.5, flat ? 1.5 : 3.5, FRAME_NOT_GIVEN);
        in.end_x_in = 0, in.end_y_in = 0, in.end_z_in = 40;
        in.crown_x = 1, in.crown_z = 0;
        frame_stick *stick = stick_of(&in);
        frame_stick_plane roof = plane_at(FRAME_STICK_MITRE_CUT, 0, 0, 40, -0.5, 0, 1);
        roof.axes = FRAME_STICK_AXES_WORLD;
        world_cut(stick, roof);
        const frame_stick_saw saw = saw_of(stick, 1);
        ck_assert_double_eq_tol(flat ? saw.bevel_deg : saw.mitre_deg, atan(0.5) / degree, near);
        ck_assert_double_eq(flat ? saw.mitre_deg : saw.bevel_deg, 0);
        ck_assert_int_eq(saw.base_face, flat ? FRAME_STICK_TOP : FRAME_STICK_LEFT);
        frame_stick_free(stick);
    }
}
END_TEST

static frame_stick_face mirrored(frame_stick_face face) {
    return face == FRAME_STICK_LEFT ? FRAME_STICK_RIGHT : face == FRAME_STICK_RIGHT ? FRAME_STICK_LEFT : face;
}

START_TEST(a_mirrored_stick_gives_mirrored_settings) {
    frame_stick *jacks[2];
    for (int hand = 0; hand < 2; hand++) {
        jacks[hand] = rafter(7.0 / 12, 1.5, 7.25);
        world_cut(jacks[hand], plumb_plane(FRAME_STICK_CHEEK_CUT, 80, (hand ? -37 : 37) * degree));
        world_cut(jacks[hand], plumb_plane(FRAME_STICK_TAPER, 300, (hand ? -60 : 60) * degree));
        birdsmouth(jacks[hand], 30, -1.5, atan(7.0 / 12));
    }
    ck_assert_uint_eq(frame_stick_saw_count(jacks[0]), frame_stick_saw_count(jacks[1]));
    for (size_t i = 0; i < frame_stick_saw_count(jacks[0]); i++) {
        const frame_stick_saw a = saw_of(jacks[0], i), b = saw_of(jacks[1], i);
        ck_assert_double_eq_tol(a.mitre_deg, b.mitre_deg, near);
        ck_assert_double_eq_tol(a.bevel_deg, b.bevel_deg, near);
        ck_assert_int_eq(a.mitre_end, b.mitre_end);
        ck_assert_int_eq(a.bevel_end, b.bevel_end);
        if (a.bevel_deg > 0) ck_assert_int_eq(a.base_face, mirrored(b.base_face));
        ck_assert_double_eq_tol(a.area_in2, b.area_in2, near);
    }
    ck_assert_uint_eq(frame_stick_mark_count(jacks[0]), frame_stick_mark_count(jacks[1]));
    for (int hand = 0; hand < 2; hand++) frame_stick_free(jacks[hand]);
}
END_TEST

/* A jack's cheek: plumb, turned out of square in plan. The plane the way describes is the plane of the cut. */
START_TEST(ways_past_the_tilt) {
    for (int turn = 0; turn < 80; turn += 5)
        for (double slope = 0; slope <= 1; slope += 0.25) {
            frame_stick_in in = stick_in(1.5, 7.25, FRAME_NOT_GIVEN);
            in.end_x_in = 100, in.end_y_in = 0, in.end_z_in = 100 * slope;
            frame_stick *stick = stick_of(&in);
            frame_stick_plane plane =
                plane_at(FRAME_STICK_CHEEK_CUT, 60, 0, 0, cos(turn * degree), sin(turn * degree), 0);
            plane.axes = FRAME_STICK_AXES_WORLD;
            ck_assert_int_eq(frame_stick_cut(stick, &plane), FRAME_OK);
            frame_stick_saw saw;
            frame_stick_way_out way;
            frame_stick_saw_at(stick, 1, &saw);
            const frame_status status = frame_stick_way(stick, 1, 45, 2.5, &way);
            ck_assert_int_eq(status, FRAME_OK);
            ck_assert_double_le(way.bevel_deg, 45 + 1e-9);
            if (saw.bevel_deg <= 45 + 1e-9) {
                ck_assert_int_eq(way.making, FRAME_STICK_MAKING_AS_SET);
                ck_assert_double_eq_tol(way.mitre_deg, saw.mitre_deg, 1e-12);
            } else {
                ck_assert_int_eq(way.base_face, FRAME_STICK_TOP);
                ck_assert_double_eq_tol(way.mitre_deg, saw.across_top_deg, 1e-9);
                /* The part of the normal along the depth. */
                ck_assert_double_eq_tol(sin(way.bevel_deg * degree), cos(turn * degree) * slope / hypot(1, slope),
                                        1e-9);
                ck_assert_double_eq_tol(way.passes * way.depth_in + way.by_hand_in, 7.25 / cos(way.bevel_deg * degree),
                                        1e-9);
                ck_assert_double_le(way.depth_in, 2.5);
            }
            frame_stick_free(stick);
        }
}
END_TEST

START_TEST(ways_refused) {
    frame_stick_in in = stick_in(1.5, 7.25, 100);
    frame_stick *stick = stick_of(&in);
    frame_stick_way_out way;
    ck_assert_int_eq(frame_stick_way(stick, 7, 45, 2.5, &way), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_stick_way(stick, 0, 0, 2.5, &way), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_stick_way(stick, 0, 45, NAN, &way), FRAME_NOT_A_NUMBER);
    ck_assert_int_eq(frame_stick_way(NULL, 0, 45, 2.5, &way), FRAME_REQUIRED);
    frame_stick_free(stick);
}
END_TEST

/* A piece with a cheek, laid anywhere, its mirror image, and it turned end for end. */
static frame_stick *cheeked(double turn_deg, double far, int end_for_end) {
    frame_stick_in in = stick_in(1.5, 5.5, FRAME_NOT_GIVEN);
    in.start_x_in = far, in.end_x_in = far + 80, in.end_y_in = 30, in.end_z_in = 0;
    frame_stick *stick = stick_of(&in);
    const int way = end_for_end ? -1 : 1;
    cut(stick, FRAME_STICK_CHEEK_CUT, end_for_end ? 20 : 60, 0, 0, way * cos(turn_deg * degree),
        way * sin(turn_deg * degree), 0);
    cut(stick, FRAME_STICK_SQUARE_END, end_for_end ? 70 : 10, 0, 0, -way, 0, 0);
    return stick;
}

START_TEST(alike_and_opposite) {
    frame_stick_likeness likeness;
    frame_stick *stick = cheeked(40, 0, 0);
    for (int i = 0; i < 2; i++) {
        frame_stick *alike = cheeked(40, 500, i), *opposite = cheeked(-40, 300, i), *other = cheeked(40.001, 0, i);
        ck_assert_int_eq(frame_stick_compare(stick, alike, &likeness), FRAME_OK);
        ck_assert_int_eq(likeness, FRAME_STICK_ALIKE);
        ck_assert_int_eq(frame_stick_compare(opposite, stick, &likeness), FRAME_OK);
        ck_assert_int_eq(likeness, FRAME_STICK_OPPOSITE);
        ck_assert_int_eq(frame_stick_compare(stick, other, &likeness), FRAME_OK);
        ck_assert_int_eq(likeness, FRAME_STICK_DIFFERENT);
        frame_stick_free(alike), frame_stick_free(opposite), frame_stick_free(other);
    }
    ck_assert_int_eq(frame_stick_compare(stick, NULL, &likeness), FRAME_REQUIRED);
    frame_stick_free(stick);
}
END_TEST

static void add(TCase *tests) {
    tcase_add_test(tests, ways_past_the_tilt);
    tcase_add_test(tests, ways_refused);
    tcase_add_test(tests, alike_and_opposite);
    tcase_add_test(tests, cheek_of_a_jack);
    tcase_add_test(tests, double_cheek_of_a_hip);
    tcase_add_test(tests, boards_of_a_hopper);
    tcase_add_test(tests, backing_of_a_regular_hip);
    tcase_add_test(tests, a_stud_on_the_flat);
    tcase_add_test(tests, a_mirrored_stick_gives_mirrored_settings);
}

int main(void) {
    return run("stick saw", add);
}
