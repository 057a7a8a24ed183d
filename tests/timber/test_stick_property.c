/* What must hold for any stick: nothing is lost in cutting, and where a stick lies changes nothing about it. */
#include "make_stick.h"

static unsigned seed = 41;
static double random_between(double low, double high) {
    seed = seed * 1664525u + 1013904223u;
    return low + (high - low) * (seed >> 8) / 16777216.0;
}

/* Which number goes where may differ between compilers, which may ask for them in any order; what must hold, holds. */

/* A stick of random section with a random compound cut at each end. */
static frame_stick_in random_in(void) {
    return stick_in(random_between(0.5, 6), random_between(1, 14), random_between(30, 200));
}

static frame_stick_plane random_end(const frame_stick_in *in, int at_end) {
    return plane_at(FRAME_STICK_MITRE_CUT, at_end ? in->length_in : 0, random_between(-1, 1), random_between(-1, 1),
                    at_end ? 1 : -1, random_between(-1, 1), random_between(-1.5, 1.5));
}

/* A plane through the stick at any angle that closes no end. */
static frame_stick_plane random_plane(const frame_stick_in *in) {
    return plane_at(FRAME_STICK_SHOULDER, random_between(0, in->length_in),
                    random_between(-0.5, 0.5) * in->thickness_in, random_between(-0.5, 0.5) * in->depth_in,
                    random_between(-1, 1), random_between(-1, 1), random_between(-1, 1));
}

static frame_stick_plane reversed(frame_stick_plane plane) {
    plane.waste_x = -plane.waste_x, plane.waste_y = -plane.waste_y, plane.waste_z = -plane.waste_z;
    return plane;
}

/* 0 when nothing is left, APART when it is no longer one piece: such a round says nothing. */
#define APART (-1.0)
static double volume_with(const frame_stick_in *in, const frame_stick_plane *planes, size_t count) {
    frame_stick_in with = *in;
    frame_stick *stick = NULL;
    with.planes = planes;
    with.plane_count = count;
    const frame_status status = frame_stick_new(&with, &stick);
    if (status == FRAME_IMPOSSIBLE) return strstr(frame_error_text(), "apart") ? APART : 0;
    ck_assert_msg(status == FRAME_OK, "%s", frame_error_text());
    const double volume = volume_of(stick);
    frame_stick_free(stick);
    return volume;
}

START_TEST(kept_and_cut_off_make_the_whole) {
    for (int round = 0; round < 1000; round++) {
        const frame_stick_in in = random_in();
        frame_stick_plane planes[4] = {random_end(&in, 0), random_end(&in, 1), random_plane(&in), random_plane(&in)};
        const double whole = volume_with(&in, planes, 3);
        const double kept = volume_with(&in, planes, 4);
        planes[3] = reversed(planes[3]);
        ck_assert_double_eq_tol(kept + volume_with(&in, planes, 4), whole, 1e-8);
    }
}
END_TEST

/* A notch and what it takes away: what is left when all its planes cut from the other side. */
START_TEST(a_notch_and_its_waste_make_the_whole) {
    int rounds = 0;
    for (int round = 0; round < 1000; round++) {
        const frame_stick_in in = random_in();
        const size_t bounds = 2 + (size_t)random_between(0, 2.99);
        frame_stick_plane planes[8] = {random_end(&in, 0), random_end(&in, 1), random_plane(&in), random_plane(&in),
                                       random_plane(&in)};
        planes[3].notch = planes[4].notch = 7; /* an earlier notch */
        for (size_t i = 0; i < bounds; i++) planes[5 + i % 3] = random_plane(&in), planes[5 + i % 3].notch = 2;
        const size_t count = bounds < 3 ? 5 + bounds : 8;
        const double whole = volume_with(&in, planes, 5), left = volume_with(&in, planes, count);
        for (size_t i = 5; i < count; i++) planes[i] = reversed(planes[i]), planes[i].notch = FRAME_NOT_GIVEN_INT;
        const double waste = volume_with(&in, planes, count);
        if (whole == APART || left == APART || waste == APART) continue;
        rounds++;
        ck_assert_double_eq_tol(left + waste, whole, 1e-8);
    }
    ck_assert_int_gt(rounds, 500);
}
END_TEST

/* The order of cuts and notches changes only the cells inside, never the wood. */
START_TEST(order_does_not_matter) {
    for (int round = 0; round < 300; round++) {
        const frame_stick_in in = random_in();
        frame_stick_plane planes[6] = {random_end(&in, 0), random_end(&in, 1), random_plane(&in),
                                       random_plane(&in),  random_plane(&in),  random_plane(&in)};
        planes[2].notch = planes[3].notch = 1;
        planes[4].notch = planes[5].notch = 2;
        const double volume = volume_with(&in, planes, 6);
        const frame_stick_plane turned[6] = {planes[5], planes[4], planes[3], planes[2], planes[1], planes[0]};
        ck_assert_double_eq_tol(volume_with(&in, turned, 6), volume, 1e-8);
    }
}
END_TEST

/* The volume again, by another way: the section parallel to the wide faces changes as a square at most across the
 * thickness while no corner of it comes or goes, so two sections at Gauss's places give the volume exactly. They are
 * the faces of a stick as thin as 1 / sqrt(3) of this one, measured by their outlines. */
START_TEST(volume_by_two_sections) {
    for (int round = 0; round < 500; round++) {
        frame_stick_in in = stick_in(random_between(0.5, 3), random_between(6, 14), random_between(100, 200));
        const double x = in.length_in / 2, z = -in.depth_in / 4, tilt = random_between(-0.3, 0.3);
        const frame_stick_plane planes[5] = {
            random_end(&in, 0),
            random_end(&in, 1),
            plane_at(FRAME_STICK_BACKING, 0, 0, in.depth_in / 3, 0, random_between(-0.2, 0.2), 1),
            plane_at(FRAME_STICK_SEAT, x, 0, z, -0.5, tilt, -1),
            plane_at(FRAME_STICK_HEEL_CUT, x, 0, z, 1, -tilt, -0.5),
        };
        frame_stick *sticks[2];
        for (int thin = 0; thin < 2; thin++) {
            if (thin) in.thickness_in /= sqrt(3);
            sticks[thin] = stick_of(&in);
            for (int i = 0; i < 3; i++) ck_assert_int_eq(frame_stick_cut(sticks[thin], &planes[i]), FRAME_OK);
            ck_assert_int_eq(frame_stick_notch(sticks[thin], planes + 3, 2, FRAME_STICK_BIRDSMOUTH), FRAME_OK);
        }
        const double sections = outline_area(sticks[1], FRAME_STICK_LEFT) + outline_area(sticks[1], FRAME_STICK_RIGHT);
        ck_assert_double_eq_tol(volume_of(sticks[0]), in.thickness_in * sqrt(3) * sections / 2, 1e-7);
        frame_stick_free(sticks[0]);
        frame_stick_free(sticks[1]);
    }
}
END_TEST

/* A turn in space, and a shift of 60 feet and more. */
typedef struct motion {
    double turn[3][3], shift[3];
} motion;

static motion random_motion(void) {
    motion m;
    const double q[4] = {random_between(-1, 1), random_between(-1, 1), random_between(-1, 1), random_between(0.1, 1)};
    const double n = 2 / (q[0] * q[0] + q[1] * q[1] + q[2] * q[2] + q[3] * q[3]);
    for (int i = 0; i < 3; i++) {
        const int j = (i + 1) % 3, k = (i + 2) % 3;
        m.turn[i][i] = 1 - n * (q[j] * q[j] + q[k] * q[k]);
        m.turn[i][j] = n * (q[i] * q[j] - q[k] * q[3]);
        m.turn[i][k] = n * (q[i] * q[k] + q[j] * q[3]);
        m.shift[i] = random_between(600, 900) * (i == 1 ? -1 : 1);
    }
    return m;
}

static void move(const motion *m, double *x, double *y, double *z, int shift) {
    const double from[3] = {*x, *y, *z};
    double to[3];
    for (int i = 0; i < 3; i++)
        to[i] = m->turn[i][0] * from[0] + m->turn[i][1] * from[1] + m->turn[i][2] * from[2] + (shift ? m->shift[i] : 0);
    *x = to[0], *y = to[1], *z = to[2];
}

static frame_stick *moved(frame_stick_in in, frame_stick_plane *planes, size_t count, const motion *m) {
    in.start_x_in = in.start_y_in = in.start_z_in = 0;
    in.end_x_in = in.length_in, in.end_y_in = in.end_z_in = 0;
    in.length_in = FRAME_NOT_GIVEN;
    in.crown_x = in.crown_y = 0, in.crown_z = 1;
    move(m, &in.start_x_in, &in.start_y_in, &in.start_z_in, 1);
    move(m, &in.end_x_in, &in.end_y_in, &in.end_z_in, 1);
    move(m, &in.crown_x, &in.crown_y, &in.crown_z, 0);
    for (size_t i = 0; i < count; i++) {
        planes[i].axes = FRAME_STICK_AXES_WORLD;
        move(m, &planes[i].point_x_in, &planes[i].point_y_in, &planes[i].point_z_in, 1);
        move(m, &planes[i].waste_x, &planes[i].waste_y, &planes[i].waste_z, 0);
    }
    in.planes = planes;
    in.plane_count = count;
    return stick_of(&in);
}

static void check_alike(const frame_stick *a, const frame_stick *b) {
    ck_assert_double_eq_tol(volume_of(a), volume_of(b), 1e-7);
    ck_assert_double_eq_tol(lengths_of(a).long_point_in, lengths_of(b).long_point_in, 1e-7);
    ck_assert_double_eq_tol(lengths_of(a).bottom_left_in, lengths_of(b).bottom_left_in, 1e-7);
    ck_assert_double_eq_tol(solid_of(a).centre_y_in, solid_of(b).centre_y_in, 1e-7);
    ck_assert_uint_eq(frame_stick_mark_count(a), frame_stick_mark_count(b));
    ck_assert_uint_eq(frame_stick_corner_count(a), frame_stick_corner_count(b));
    for (size_t i = 0; i < frame_stick_saw_count(a); i++) {
        ck_assert_double_eq_tol(saw_of(a, i).mitre_deg, saw_of(b, i).mitre_deg, 1e-8);
        ck_assert_double_eq_tol(saw_of(a, i).bevel_deg, saw_of(b, i).bevel_deg, 1e-8);
        ck_assert_double_eq_tol(saw_of(a, i).area_in2, saw_of(b, i).area_in2, 1e-7);
    }
    for (size_t i = 0; i < frame_stick_mark_count(a); i++) {
        frame_stick_mark one, other;
        ck_assert_int_eq(frame_stick_mark_at(a, i, &one), FRAME_OK);
        ck_assert_int_eq(frame_stick_mark_at(b, i, &other), FRAME_OK);
        ck_assert_int_eq(one.face, other.face);
        ck_assert_double_eq_tol(one.along_in, other.along_in, 1e-7);
        ck_assert_double_eq_tol(one.across_in, other.across_in, 1e-7);
    }
}

START_TEST(anywhere_in_a_building_of_60_feet) {
    for (int round = 0; round < 300; round++) {
        frame_stick_in in = random_in();
        frame_stick_plane planes[6] = {random_end(&in, 0), random_end(&in, 1), random_plane(&in),
                                       random_plane(&in),  random_plane(&in),  random_plane(&in)};
        planes[3].notch = planes[4].notch = planes[5].notch = 1;
        const motion m = random_motion();
        in.planes = planes;
        in.plane_count = 6;
        frame_stick *here = NULL, *there;
        if (frame_stick_new(&in, &here) == FRAME_IMPOSSIBLE) continue;
        there = moved(in, planes, 6, &m);
        check_alike(here, there);
        ck_assert_double_eq_tol(overlap_of(there, there), volume_of(here), 1e-7);
        frame_stick_free(here);
        frame_stick_free(there);
    }
}
END_TEST

static void add(TCase *tests) {
    tcase_add_test(tests, kept_and_cut_off_make_the_whole);
    tcase_add_test(tests, a_notch_and_its_waste_make_the_whole);
    tcase_add_test(tests, order_does_not_matter);
    tcase_add_test(tests, volume_by_two_sections);
    tcase_add_test(tests, anywhere_in_a_building_of_60_feet);
}

int main(void) {
    return run("stick property", add);
}
