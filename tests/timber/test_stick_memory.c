/* A stick when memory runs out: at each allocation in turn the call fails cleanly, and nothing is left behind. */
#include <frame/drawing.h>
#include <stdlib.h>

#include "make_stick.h"

static long granted, blocks; /* how many more allocations are granted; how many blocks are out */

static void *give(void *user, size_t size) {
    (void)user;
    if (granted-- <= 0) return NULL;
    blocks++;
    return malloc(size);
}

static void *resize(void *user, void *block, size_t size) {
    if (!block) return give(user, size);
    return granted-- <= 0 ? NULL : realloc(block, size);
}

static void release(void *user, void *block) {
    (void)user;
    if (block) blocks--;
    free(block);
}

/* The contact of a stick with a board against its side. */
static frame_status find_contact(const frame_stick *stick) {
    frame_stick_in in = stick_in(1.5, 11.25, FRAME_NOT_GIVEN);
    in.start_y_in = 1.5, in.end_x_in = 300, in.end_y_in = 1.5, in.end_z_in = 0;
    frame_stick *board = NULL;
    frame_contact *contact = NULL;
    frame_status status = frame_stick_new(&in, &board);
    if (!status) status = frame_stick_contact(stick, board, &contact);
    if (!status) ck_assert_uint_gt(frame_contact_corner_count(contact), 40);
    frame_contact_free(contact);
    frame_stick_free(board);
    return status;
}

/* Enough notches to outgrow the room a stick sets aside. */
static frame_status make_stringer(void) {
    static frame_stick_plane planes[40];
    frame_stick_in in = stick_in(1.5, 11.25, 300);
    in.name = "stringer";
    for (int i = 0; i < 20; i++) {
        const double x = 12.5 * (i + 1);
        planes[2 * i] = plane_at(FRAME_STICK_SHOULDER, x, 0, 2, 0.6, 0, 0.8);
        planes[2 * i + 1] = plane_at(FRAME_STICK_SHOULDER, x, 0, 2, -0.8, 0, 0.6);
        planes[2 * i].notch = planes[2 * i + 1].notch = i + 1;
    }
    in.planes = planes;
    in.plane_count = 40;
    frame_stick *stick = NULL;
    frame_drawing *drawing = NULL;
    frame_status status = frame_stick_new(&in, &stick);
    if (!status) status = frame_stick_drawing(stick, &drawing);
    if (!status) status = find_contact(stick);
    frame_drawing_free(drawing);
    frame_stick_free(stick);
    return status;
}

START_TEST(making_fails_cleanly) {
    frame_status status = FRAME_NO_MEMORY;
    int tries = 0;
    for (; status == FRAME_NO_MEMORY; tries++) {
        granted = tries;
        status = make_stringer();
        ck_assert_int_eq(blocks, 0);
        ck_assert_int_lt(tries, 5000);
        if (status) ck_assert_int_eq(frame_error_status(), FRAME_NO_MEMORY);
    }
    ck_assert_msg(status == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_gt(tries, 10);
}
END_TEST

/* A notch that finds no memory leaves the stick as it was; when there is some again, it works. */
START_TEST(a_stick_outlives_a_failed_notch) {
    const frame_stick_in in = stick_in(1.5, 11.25, 300);
    granted = 1000000;
    frame_stick *stick = stick_of(&in);
    int failed = 0;
    for (int i = 0; i < 20; i++) {
        const frame_stick_plane planes[2] = {plane_at(FRAME_STICK_SHOULDER, 12.5 * (i + 1), 0, 2, 0.6, 0, 0.8),
                                             plane_at(FRAME_STICK_SHOULDER, 12.5 * (i + 1), 0, 2, -0.8, 0, 0.6)};
        const double before = volume_of(stick);
        const size_t marks = frame_stick_mark_count(stick);
        frame_status status = FRAME_NO_MEMORY;
        for (int grants = 0; status == FRAME_NO_MEMORY; grants++) {
            granted = grants;
            status = frame_stick_notch(stick, planes, 2, FRAME_STICK_NOTCH);
            if (!status) break;
            ck_assert_double_eq(volume_of(stick), before);
            ck_assert_uint_eq(frame_stick_mark_count(stick), marks);
            failed++;
        }
        ck_assert_double_lt(volume_of(stick), before);
    }
    ck_assert_int_gt(failed, 5);
    frame_stick_free(stick);
    ck_assert_int_eq(blocks, 0);
}
END_TEST

static void add(TCase *tests) {
    tcase_add_test(tests, making_fails_cleanly);
    tcase_add_test(tests, a_stick_outlives_a_failed_notch);
}

int main(void) {
    const frame_allocator allocator = {give, resize, release, NULL};
    if (frame_allocator_set(&allocator)) return 1;
    return run("stick memory", add);
}
