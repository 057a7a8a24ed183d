/* Whole buildings run out of memory: at every single allocation in turn. Each time a status, nothing kept, nothing
 * lost. */
#include <check.h>
#include <stdlib.h>

#include "random_site.h"

static long left = -1, live;
static int refused; /* whether an allocation was */

static void *take(void *user, size_t size) {
    (void)user;
    if (left == 0) {
        refused = 1;
        return NULL;
    }
    if (left > 0) left--;
    void *block = malloc(size);
    live += block != NULL;
    return block;
}
static void *retake(void *user, void *block, size_t size) {
    (void)user;
    if (left == 0) {
        refused = 1;
        return NULL;
    }
    if (left > 0) left--;
    void *moved = realloc(block, size);
    if (!block) live += moved != NULL;
    return moved;
}
static void give(void *user, void *block) {
    (void)user;
    live -= block != NULL;
    free(block);
}

static frame_status once(const frame_site *site) {
    frame_framing_in in;
    frame_framing *framing = NULL;
    frame_packet *packet = NULL;
    frame_building_stock stock;
    frame_building_stock_init(&stock);
    stock.size = FRAME_SIZE(2, 10), stock.length_in = 240, stock.price = 30;
    frame_framing_in_init(&in);
    in.site = site, in.stock = &stock, in.stock_count = 1;
    frame_status status = frame_framing_solve(&in, &framing, NULL);
    if (!status) status = frame_framing_packet(framing, &packet);
    frame_packet_free(packet);
    frame_framing_free(framing);
    return status;
}

START_TEST(every_allocation_fails_once) {
    dice d = {1};
    const plan p = {.width = 72,
                    .depth = 96,
                    .height = 96,
                    .snow = 30,
                    .slope = 0.5,
                    .overhang = 12,
                    .roof_dead = 10,
                    .windows = 0,
                    .on_posts = 1};
    const frame_allocator allocator = {take, retake, give, NULL};
    frame_site *site;
    ck_assert_int_eq(frame_allocator_set(&allocator), FRAME_OK);
    ck_assert_int_eq(random_site(&d, &p, &site), 0);
    const long before = live;
    ck_assert_msg(once(site) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(live, before);
    const long step = getenv("FRAME_LONG") ? 1 : 61;
    long tried = 0;
    for (long n = 0;; n += n < 200 ? 1 : step, tried++) {
        left = n;
        refused = 0;
        const frame_status status = once(site);
        const int done = !refused;
        left = -1;
        ck_assert_msg(live == before, "allocation %ld: %ld blocks are lost", n, live - before);
        if (done && !status) break;
        ck_assert_msg(status == FRAME_NO_MEMORY || done, "allocation %ld: status %d, %s", n, (int)status,
                      frame_error_text());
    }
    ck_assert_int_gt(tried, 100);
    frame_site_free(site);
    ck_assert_int_eq(live, 0);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("framing memory");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 1000);
    tcase_add_test(tests, every_allocation_fails_once);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
