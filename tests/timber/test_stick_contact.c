/* The polygons in which two placed sticks touch. */
#include "make_stick.h"

/* Where the sticks of a test stand: turned in plan, and far out. */
typedef struct site {
    double x, y, z, c, s;
} site;

static site site_at(double x, double y, double z, double turn_deg) {
    return (site){x, y, z, cos(turn_deg * degree), sin(turn_deg * degree)};
}

/* A stick by its axis on the site; z up, crown by default up. */
static frame_stick *on_site(const site *at, double thickness, double depth, const double from[3], const double to[3]) {
    frame_stick_in in = stick_in(thickness, depth, FRAME_NOT_GIVEN);
    in.start_x_in = at->x + at->c * from[0] - at->s * from[1], in.end_x_in = at->x + at->c * to[0] - at->s * to[1];
    in.start_y_in = at->y + at->s * from[0] + at->c * from[1], in.end_y_in = at->y + at->s * to[0] + at->c * to[1];
    in.start_z_in = at->z + from[2], in.end_z_in = at->z + to[2];
    return stick_of(&in);
}

static frame_contact *contact_of(const frame_stick *a, const frame_stick *b) {
    frame_contact *contact = NULL;
    ck_assert_msg(frame_stick_contact(a, b, &contact) == FRAME_OK, "%s", frame_error_text());
    return contact;
}

static frame_contact_corner corner_at(const frame_contact *contact, size_t i) {
    frame_contact_corner corner;
    ck_assert_int_eq(frame_contact_corner_at(contact, i, &corner), FRAME_OK);
    return corner;
}

/* The area within a face's loops, holes taken away, from the corners in the world alone. */
static double area_of(const frame_contact *contact, int32_t face) {
    frame_contact_face of;
    double twice = 0;
    ck_assert_int_eq(frame_contact_face_at(contact, (size_t)face, &of), FRAME_OK);
    const size_t count = frame_contact_corner_count(contact);
    for (size_t i = 0, first = 0; i < count; i++) {
        const frame_contact_corner a = corner_at(contact, i);
        if (i && (corner_at(contact, i - 1).face != a.face || corner_at(contact, i - 1).loop != a.loop)) first = i;
        const int last =
            i + 1 == count || corner_at(contact, i + 1).face != a.face || corner_at(contact, i + 1).loop != a.loop;
        if (a.face != face) continue;
        const frame_contact_corner b = corner_at(contact, last ? first : i + 1), o = corner_at(contact, 0);
        const double ax = a.x_in - o.x_in, ay = a.y_in - o.y_in, az = a.z_in - o.z_in;
        const double bx = b.x_in - o.x_in, by = b.y_in - o.y_in, bz = b.z_in - o.z_in;
        twice +=
            of.normal_x * (ay * bz - az * by) + of.normal_y * (az * bx - ax * bz) + of.normal_z * (ax * by - ay * bx);
    }
    ck_assert_double_eq_tol(twice / 2, of.area_in2, 1e-6);
    return twice / 2;
}

static double all_areas(const frame_contact *contact) {
    double sum = 0;
    for (size_t i = 0; i < frame_contact_face_count(contact); i++) sum += area_of(contact, (int32_t)i);
    return sum;
}

static double fit_area(const frame_stick *a, const frame_stick *b) {
    frame_stick_fit_out fit;
    ck_assert_int_eq(frame_stick_fit(a, b, &fit), FRAME_OK);
    return fit.contact_in2;
}

/* A joist over a beam, anywhere on a building of 60 ft and turned by any angle, a hair's breadth apart, touching, or
 * into each other: the polygon is theirs to 1e-7 in. */
START_TEST(robust_on_a_large_building) {
    for (int i = 0; i < 180; i++) {
        const site at = site_at(i % 7 * 120, i % 5 * 180, i % 3 * 240, i * 7.3);
        const double apart = (i % 3 - 1) * 5e-8;
        frame_stick *beam = on_site(&at, 3.5, 9.25, (double[3]){0, -360, 0}, (double[3]){0, 360, 0});
        frame_stick *joist =
            on_site(&at, 1.5, 7.25, (double[3]){-360, 20, 8.25 + apart}, (double[3]){360, 20, 8.25 + apart});
        frame_contact *contact = contact_of(joist, beam);
        ck_assert_uint_eq(frame_contact_face_count(contact), 1);
        ck_assert_uint_eq(frame_contact_corner_count(contact), 4);
        ck_assert_double_eq_tol(all_areas(contact), 3.5 * 1.5, 1e-6);
        for (size_t k = 0; k < 4; k++) {
            const frame_contact_corner corner = corner_at(contact, k);
            const double x = corner.x_in - at.x, y = corner.y_in - at.y;
            ck_assert_double_eq_tol(fabs(at.c * x + at.s * y), 1.75, 1e-7);
            ck_assert_double_eq_tol(fabs(at.c * y - at.s * x - 20), 0.75, 1e-7);
            ck_assert_double_eq_tol(corner.z_in, at.z + 4.625, 2e-7);
            ck_assert_double_eq_tol(fabs(corner.along_in - 360), 1.75, 1e-7);
            ck_assert_double_eq_tol(fabs(corner.other_along_in - 380), 0.75, 1e-7);
            ck_assert_double_eq_tol(fabs(corner.across_in - 0.75), 0.75, 1e-7);
            ck_assert_double_eq_tol(fabs(corner.other_across_in - 1.75), 1.75, 1e-7);
        }
        frame_contact_free(contact);
        frame_stick_free(joist);
        joist = on_site(&at, 1.5, 7.25, (double[3]){-360, 20, 8.25 + 1e-6}, (double[3]){360, 20, 8.25 + 1e-6});
        contact = contact_of(joist, beam);
        ck_assert_uint_eq(frame_contact_face_count(contact), 0);
        ck_assert_uint_eq(frame_contact_corner_count(contact), 0);
        frame_contact_free(contact);
        frame_stick_free(joist), frame_stick_free(beam);
    }
}
END_TEST

/* A rafter sits on its plate by the seat and leans on it by the heel: two faces, both cuts of the rafter's. */
START_TEST(a_birdsmouth_on_its_plate) {
    for (double slope = 0.2; slope <= 1.2; slope += 0.1) {
        const site at = site_at(300, 40, 100, 31);
        frame_stick *plate = on_site(&at, 5.5, 1.5, (double[3]){2.75, -50, -0.75}, (double[3]){2.75, 50, -0.75});
        frame_stick_in in = stick_in(1.5, 9.25, FRAME_NOT_GIVEN);
        const double seat = 3.5, height = 9.25 * sqrt(1 + slope * slope) - seat * slope;
        in.axis_at = FRAME_STICK_AXIS_TOP;
        in.start_x_in = at.x - 30 * at.c, in.start_y_in = at.y - 30 * at.s, in.start_z_in = at.z + height - 30 * slope;
        in.end_x_in = at.x + 100 * at.c, in.end_y_in = at.y + 100 * at.s, in.end_z_in = at.z + height + 100 * slope;
        frame_stick *rafter = stick_of(&in);
        frame_stick_plane planes[2] = {plane_at(FRAME_STICK_SEAT, at.x, at.y, at.z, 0, 0, -1),
                                       plane_at(FRAME_STICK_HEEL_CUT, at.x, at.y, at.z, at.c, at.s, 0)};
        planes[0].axes = planes[1].axes = FRAME_STICK_AXES_WORLD;
        ck_assert_int_eq(frame_stick_notch(rafter, planes, 2, FRAME_STICK_BIRDSMOUTH), FRAME_OK);
        frame_contact *contact = contact_of(rafter, plate), *turned = contact_of(plate, rafter);
        ck_assert_uint_eq(frame_contact_face_count(contact), 2);
        ck_assert_uint_eq(frame_contact_corner_count(contact), 8);
        ck_assert_double_eq_tol(all_areas(contact), fit_area(rafter, plate), 1e-9);
        ck_assert_double_eq_tol(all_areas(turned), all_areas(contact), 1e-9);
        for (size_t i = 0; i < 2; i++) {
            frame_contact_face face, other;
            frame_contact_face_at(contact, i, &face), frame_contact_face_at(turned, i, &other);
            const int level = fabs(face.normal_z) > 0.5;
            ck_assert_int_eq(saw_of(rafter, (size_t)face.saw).role, level ? FRAME_STICK_SEAT : FRAME_STICK_HEEL_CUT);
            ck_assert_int_eq(face.face, FRAME_NOT_GIVEN_INT);
            ck_assert_int_eq(face.other_face, level ? FRAME_STICK_TOP : FRAME_STICK_LEFT);
            ck_assert_double_eq_tol(face.area_in2, 1.5 * (level ? seat : fmin(1.5, seat * slope)), 1e-7);
            ck_assert_int_eq(face.other_saw, FRAME_NOT_GIVEN_INT);
            ck_assert_double_eq_tol(face.normal_z, level ? -1 : 0, 1e-12);
            ck_assert_int_eq(other.saw, FRAME_NOT_GIVEN_INT);
        }
        frame_contact_free(contact), frame_contact_free(turned);
        frame_stick_free(rafter), frame_stick_free(plate);
    }
}
END_TEST

/* Cells are joined: a board over a comb of notches, and one over a closed trench, whose rim has a hole. */
START_TEST(loops_and_holes) {
    const site at = site_at(700, -20, 0, 0);
    frame_stick *comb = on_site(&at, 5.5, 7.25, (double[3]){0, 0, 0}, (double[3]){96, 0, 0});
    frame_stick *board = on_site(&at, 11.25, 1.5, (double[3]){-5, 0, 4.375}, (double[3]){90, 0, 4.375});
    for (int i = 0; i < 2; i++) {
        const double x = 24 + 40 * i;
        const frame_stick_plane trench[5] = {plane_at(FRAME_STICK_SHOULDER, x, 0, 0, 1, 0, 0),
                                             plane_at(FRAME_STICK_SHOULDER, x + 10, 0, 0, -1, 0, 0),
                                             plane_at(FRAME_STICK_LAP_FACE, 0, 0, 3, 0, 0, 1),
                                             plane_at(FRAME_STICK_SHOULDER, 0, i ? -9 : -2, 0, 0, 1, 0),
                                             plane_at(FRAME_STICK_SHOULDER, 0, i ? 9 : 2, 0, 0, -1, 0)};
        ck_assert_int_eq(frame_stick_notch(comb, trench, 5, FRAME_STICK_HOUSING), FRAME_OK);
    }
    frame_contact *contact = contact_of(comb, board);
    /* The notch right across parts the top in two; the closed trench is a hole in the first part. */
    ck_assert_uint_eq(frame_contact_face_count(contact), 1);
    ck_assert_uint_eq(frame_contact_corner_count(contact), 12);
    ck_assert_int_eq(corner_at(contact, 11).loop, 2);
    ck_assert_double_eq_tol(all_areas(contact), 5.5 * 90 - 10 * 4 - 10 * 5.5, 1e-9);
    ck_assert_double_eq_tol(all_areas(contact), fit_area(comb, board), 1e-9);
    frame_contact_free(contact);
    frame_stick_free(board), frame_stick_free(comb);
}
END_TEST

/* Two scarfed ends touch on one slanting face; crossing edges touch in nothing. */
START_TEST(cut_on_cut) {
    const site at = site_at(0, 0, 0, 0);
    frame_stick *first = on_site(&at, 1.5, 5.5, (double[3]){0, 0, 0}, (double[3]){60, 0, 0});
    frame_stick *second = on_site(&at, 1.5, 5.5, (double[3]){40, 0, 0}, (double[3]){120, 0, 0});
    cut(first, FRAME_STICK_MITRE_CUT, 50, 0, 0, 0.6, 0, 0.8);
    cut(second, FRAME_STICK_MITRE_CUT, 10, 0, 0, -0.6, 0, -0.8);
    frame_contact *contact = contact_of(first, second);
    frame_contact_face face;
    ck_assert_uint_eq(frame_contact_face_count(contact), 1);
    frame_contact_face_at(contact, 0, &face);
    ck_assert_double_eq_tol(face.area_in2, 1.5 * 5.5 / 0.6, 1e-9);
    ck_assert_double_eq_tol(face.normal_x, 0.6, 1e-12);
    ck_assert_int_eq(saw_of(first, (size_t)face.saw).at_end, FRAME_STICK_END);
    ck_assert_int_eq(saw_of(second, (size_t)face.other_saw).at_end, FRAME_STICK_START);
    ck_assert_double_eq(corner_at(contact, 0).across_in, FRAME_NOT_GIVEN);
    frame_contact_free(contact);
    frame_stick *edge = on_site(&at, 1.5, 5.5, (double[3]){20, 1.5, 5.5}, (double[3]){30, 1.5, 5.5});
    contact = contact_of(first, edge);
    ck_assert_uint_eq(frame_contact_face_count(contact), 0);
    frame_contact_free(contact);
    frame_stick_free(edge), frame_stick_free(first), frame_stick_free(second);
}
END_TEST

START_TEST(bad_calls) {
    frame_contact *contact = NULL;
    frame_contact_face face;
    frame_contact_corner corner;
    const frame_stick_in in = stick_in(1.5, 5.5, 10);
    frame_stick *stick = stick_of(&in);
    ck_assert_int_eq(frame_stick_contact(stick, NULL, &contact), FRAME_REQUIRED);
    ck_assert_int_eq(frame_stick_contact(NULL, stick, &contact), FRAME_REQUIRED);
    ck_assert_int_eq(frame_stick_contact(stick, stick, NULL), FRAME_REQUIRED);
    ck_assert_ptr_null(contact);
    contact = contact_of(stick, stick);
    ck_assert_int_eq(frame_contact_face_at(contact, 0, &face), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_contact_corner_at(contact, 0, &corner), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_contact_face_at(NULL, 0, &face), FRAME_REQUIRED);
    ck_assert_int_eq(frame_contact_corner_at(NULL, 0, &corner), FRAME_REQUIRED);
    ck_assert_uint_eq(frame_contact_face_count(NULL), 0);
    ck_assert_uint_eq(frame_contact_corner_count(NULL), 0);
    frame_contact_free(contact);
    frame_contact_free(NULL);
    frame_stick_free(stick);
}
END_TEST

static void add(TCase *tests) {
    tcase_add_test(tests, robust_on_a_large_building);
    tcase_add_test(tests, a_birdsmouth_on_its_plate);
    tcase_add_test(tests, loops_and_holes);
    tcase_add_test(tests, cut_on_cut);
    tcase_add_test(tests, bad_calls);
}

int main(void) {
    return run("stick contact", add);
}
