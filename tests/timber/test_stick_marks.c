/* Marks and outlines. */
#include "make_stick.h"

static const double near = 1e-9;

static frame_stick_mark mark_of(const frame_stick *stick, size_t index) {
    frame_stick_mark mark;
    ck_assert_msg(frame_stick_mark_at(stick, index, &mark) == FRAME_OK, "%s", frame_error_text());
    return mark;
}

/* A rafter at 6 in 12, depth 8, top edge from 0 to 96, birdsmouth with its corner 20 from the start, 2 deep. */
static frame_stick *rafter(frame_stick_end measure_from) {
    frame_stick_in in = stick_in(1.5, 8, 96);
    in.axis_at = FRAME_STICK_AXIS_TOP;
    in.measure_from = measure_from;
    frame_stick *stick = stick_of(&in);
    const double a = atan(0.5);
    cut(stick, FRAME_STICK_PLUMB_CUT, 0, 0, 0, -cos(a), 0, sin(a));
    cut(stick, FRAME_STICK_PLUMB_CUT, 96, 0, 0, cos(a), 0, -sin(a));
    birdsmouth(stick, 20, -6, a);
    return stick;
}

typedef struct expected {
    frame_stick_face face;
    double along, across;
    frame_stick_edge edge;
    const char *label;
} expected;

static void check_marks(const frame_stick *stick, const expected *marks, size_t count) {
    ck_assert_uint_eq(frame_stick_mark_count(stick), count);
    for (size_t i = 0; i < count; i++) {
        const frame_stick_mark mark = mark_of(stick, i);
        ck_assert_int_eq(mark.face, marks[i].face);
        ck_assert_double_eq_tol(mark.along_in, marks[i].along, near);
        ck_assert_double_eq_tol(mark.across_in, marks[i].across, near);
        ck_assert_int_eq(mark.edge, marks[i].edge);
        ck_assert_str_eq(mark.label, marks[i].label);
        ck_assert_str_eq(mark.label, saw_of(stick, (size_t)mark.saw).label);
    }
}

enum { L = FRAME_STICK_LEFT, R = FRAME_STICK_RIGHT, T = FRAME_STICK_TOP, B = FRAME_STICK_BOTTOM };
enum {
    TL = FRAME_STICK_TOP_LEFT,
    TR = FRAME_STICK_TOP_RIGHT,
    BL = FRAME_STICK_BOTTOM_LEFT,
    BR = FRAME_STICK_BOTTOM_RIGHT
};
enum { WITHIN = FRAME_NOT_GIVEN_INT };

/* Down the depth of 8 a plumb line moves 4 towards the start, so the start's long point is its lower corner, at -4.
 * From the birdsmouth's corner, 2 up from the lower edge, the heel meets that edge 1 back and the seat 4 on. */
START_TEST(marks_of_a_rafter) {
    const expected marks[] = {
        {L, 0, 0, BL, "plumb cut"},     {L, 4, 8, TL, "plumb cut"},     {L, 23, 0, BL, "heel cut"},
        {L, 24, 2, WITHIN, "seat"},     {L, 24, 2, WITHIN, "heel cut"}, {L, 28, 0, BL, "seat"},
        {L, 96, 0, BL, "plumb cut"},    {L, 100, 8, TL, "plumb cut"},   {R, 0, 0, BR, "plumb cut"},
        {R, 4, 8, TR, "plumb cut"},     {R, 23, 0, BR, "heel cut"},     {R, 24, 2, WITHIN, "seat"},
        {R, 24, 2, WITHIN, "heel cut"}, {R, 28, 0, BR, "seat"},         {R, 96, 0, BR, "plumb cut"},
        {R, 100, 8, TR, "plumb cut"},   {T, 4, 0, TR, "plumb cut"},     {T, 4, 1.5, TL, "plumb cut"},
        {T, 100, 0, TR, "plumb cut"},   {T, 100, 1.5, TL, "plumb cut"}, {B, 0, 0, BR, "plumb cut"},
        {B, 0, 1.5, BL, "plumb cut"},   {B, 23, 0, BR, "heel cut"},     {B, 23, 1.5, BL, "heel cut"},
        {B, 28, 0, BR, "seat"},         {B, 28, 1.5, BL, "seat"},       {B, 96, 0, BR, "plumb cut"},
        {B, 96, 1.5, BL, "plumb cut"},
    };
    frame_stick *stick = rafter(FRAME_STICK_START);
    check_marks(stick, marks, sizeof marks / sizeof *marks);
    frame_stick_free(stick);
}
END_TEST

START_TEST(measured_from_the_other_end) {
    frame_stick *from_start = rafter(FRAME_STICK_START), *from_end = rafter(FRAME_STICK_END);
    const frame_stick_mark first = mark_of(from_end, 0);
    ck_assert_int_eq(first.face, L);
    ck_assert_int_eq(first.edge, TL);
    ck_assert_double_eq_tol(first.along_in, 0, near);
    ck_assert_double_eq_tol(mark_of(from_end, 1).along_in, 4, near);
    ck_assert_double_eq_tol(mark_of(from_end, 2).along_in, 100 - 28, near);
    ck_assert_double_eq_tol(outline_area(from_end, L), outline_area(from_start, L), near);
    ck_assert_double_eq_tol(outline_area(from_end, L), 8 * 96 - 5 * 2 / 2.0, near);
    frame_stick_free(from_start);
    frame_stick_free(from_end);
}
END_TEST

START_TEST(lines_come_in_pairs) {
    frame_stick *stick = rafter(FRAME_STICK_START);
    const size_t count = frame_stick_mark_count(stick);
    int ends[40] = {0}, next = 0;
    for (size_t i = 0; i < count; i++) {
        const frame_stick_mark mark = mark_of(stick, i);
        ck_assert_int_le(mark.line, next);
        if (mark.line == next) next++;
        ends[mark.line]++;
    }
    for (int i = 0; i < next; i++) ck_assert_int_eq(ends[i], 2);
    ck_assert_uint_eq(2 * (size_t)next, count);
    frame_stick_free(stick);
}
END_TEST

/* The outline's corners are those of the cuts alone: where cells meet there is none. */
START_TEST(outline_of_a_rafter) {
    static const double corners[][2] = {{100, 8}, {4, 8}, {0, 0}, {23, 0}, {24, 2}, {28, 0}, {96, 0}};
    frame_stick *stick = rafter(FRAME_STICK_START);
    size_t found = 0;
    for (size_t i = 0; i < frame_stick_corner_count(stick); i++) {
        frame_stick_corner corner;
        ck_assert_int_eq(frame_stick_corner_at(stick, i, &corner), FRAME_OK);
        if (corner.face != FRAME_STICK_RIGHT) continue;
        ck_assert_double_eq_tol(corner.along_in, corners[found][0], near);
        ck_assert_double_eq_tol(corner.across_in, corners[found][1], near);
        ck_assert_int_eq(corner.loop, 0);
        found++;
    }
    ck_assert_uint_eq(found, 7);
    frame_stick_free(stick);
}
END_TEST

/* Two notches in the left half of the thickness, from above and below, that meet in a point leave the left face in two
 * loops that touch, not one that crosses. */
START_TEST(parts_that_touch_in_a_point) {
    const frame_stick_in in = stick_in(1.5, 8, 60);
    frame_stick *stick = stick_of(&in);
    for (int up = -1; up <= 1; up += 2) {
        const frame_stick_plane notch[3] = {plane_at(FRAME_STICK_SHOULDER, 30, 0, 0, 1, 0, up),
                                            plane_at(FRAME_STICK_SHOULDER, 30, 0, 0, -1, 0, up),
                                            plane_at(FRAME_STICK_LAP_FACE, 30, 0, 0, 0, 1, 0)};
        ck_assert_int_eq(frame_stick_notch(stick, notch, 3, FRAME_STICK_NOTCH), FRAME_OK);
    }
    ck_assert_double_eq_tol(volume_of(stick), 1.5 * 8 * 60 - 0.75 * 2 * 4 * 4, near);
    ck_assert_double_eq_tol(outline_area(stick, L), 8 * 60 - 2 * 4 * 4, near);
    ck_assert_double_eq_tol(outline_area(stick, R), 8 * 60, near);
    int loops = 0;
    for (size_t i = 0; i < frame_stick_corner_count(stick); i++) {
        frame_stick_corner corner;
        ck_assert_int_eq(frame_stick_corner_at(stick, i, &corner), FRAME_OK);
        if (corner.face == FRAME_STICK_LEFT && corner.loop + 1 > loops) loops = corner.loop + 1;
    }
    ck_assert_int_eq(loops, 2);
    frame_stick_free(stick);
}
END_TEST

START_TEST(labels_are_kept) {
    frame_stick_in in = stick_in(1.5, 5.5, 40);
    char label[] = "tail plumb cut";
    frame_stick_plane plane = plane_at(FRAME_STICK_PLUMB_CUT, 0, 0, 0, -1, 0, 0.5);
    plane.label = label;
    in.planes = &plane;
    in.plane_count = 1;
    frame_stick *stick = stick_of(&in);
    label[0] = 'X';
    ck_assert_str_eq(saw_of(stick, 0).label, "square end");
    ck_assert_str_eq(saw_of(stick, 1).label, "tail plumb cut");
    frame_stick_free(stick);
}
END_TEST

static void add(TCase *tests) {
    tcase_add_test(tests, marks_of_a_rafter);
    tcase_add_test(tests, measured_from_the_other_end);
    tcase_add_test(tests, lines_come_in_pairs);
    tcase_add_test(tests, outline_of_a_rafter);
    tcase_add_test(tests, parts_that_touch_in_a_point);
    tcase_add_test(tests, labels_are_kept);
}

int main(void) {
    return run("stick marks", add);
}
