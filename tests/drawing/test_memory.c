/* Memory that runs out at any point: a status, no crash, nothing kept. */
#include <check.h>
#include <stdlib.h>

#include <frame/frame.h>

static long left, taken;

static void *give(void *user, size_t size) {
    (void)user;
    if (left-- <= 0) return NULL;
    taken++;
    return malloc(size);
}

static void *give_more(void *user, void *block, size_t size) {
    (void)user;
    if (left-- <= 0) return NULL;
    if (!block) taken++;
    return realloc(block, size);
}

static void take_back(void *user, void *block) {
    (void)user;
    if (block) taken--;
    free(block);
}

/* The first status that is not FRAME_OK. */
#define TRY(call)                     \
    do {                              \
        if (!status) status = (call); \
    } while (0)

static frame_status draw(frame_drawing *d, frame_text *svg) {
    frame_status status = FRAME_OK;
    TRY(frame_drawing_view(d, "a stick, shortened"));
    TRY(frame_drawing_rectangle(d, 0, 0, 192, 5.5, FRAME_PEN_OUTLINE, FRAME_HATCH_SIDE_GRAIN));
    TRY(frame_drawing_point(d, 0, 7));
    TRY(frame_drawing_point(d, 5, 7));
    TRY(frame_drawing_polyline(d, FRAME_PEN_HIDDEN));
    TRY(frame_drawing_circle(d, 4, 3, 1, FRAME_PEN_CUT, FRAME_HATCH_SOLID));
    TRY(frame_drawing_text(d, 8, 3, "face", FRAME_ANCHOR_START, 0, FRAME_LETTERING_NAME));
    TRY(frame_drawing_label(d, 4, 3, "hole"));
    TRY(frame_drawing_angle(d, 0, 0, 0, 90, NULL));
    for (int i = 0; i < 4; i++) TRY(frame_drawing_mark(d, 0.5 * i, 0, NULL));
    TRY(frame_drawing_mark(d, 192, 0, NULL));
    TRY(frame_drawing_dimension_running(d, FRAME_DIMENSION_BELOW));
    TRY(frame_drawing_dimension(d, 0, 0, 0, 5.5, FRAME_DIMENSION_LEFT, NULL));
    TRY(frame_drawing_shorten(d, 6));
    TRY(frame_drawing_svg(d, svg));
    return status;
}

static frame_status attempt(long allocations) {
    frame_drawing *d = NULL;
    frame_text *svg = NULL;
    left = allocations;
    frame_status status = frame_text_new(&svg);
    TRY(frame_drawing_new(&d));
    if (!status) status = draw(d, svg);
    if (status && svg) ck_assert_uint_eq(frame_text_length(svg), 0);
    frame_drawing_free(d);
    frame_text_free(svg);
    return status;
}

START_TEST(every_allocation_may_fail) {
    long allocations = 0;
    for (; attempt(allocations); allocations++) {
        ck_assert_int_eq(frame_error_status(), FRAME_NO_MEMORY);
        ck_assert_msg(taken == 0, "%ld blocks left after %ld allocations", taken, allocations);
        ck_assert_int_lt(allocations, 100000);
    }
    ck_assert_int_eq(taken, 0);
    ck_assert_int_gt(allocations, 20);
}
END_TEST

int main(void) {
    const frame_allocator allocator = {give, give_more, take_back, NULL};
    if (frame_allocator_set(&allocator)) return 1;
    Suite *suite = suite_create("memory");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 60);
    tcase_add_test(tests, every_allocation_may_fail);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
