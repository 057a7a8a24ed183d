/* Memory that gives out: every public function is fed small inputs, and then fed them again with the first allocation
 * failing, with the second, and so on to the last. Each time the status says so, what was to be filled is left alone
 * (feed.c sees to both), and nothing is left behind.     sweep [INPUTS a function] */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "feed.h"

enum { MOST_FAILURES = 250 };

static size_t asked, fail_at, live;

static int fails(void) {
    if (++asked != fail_at) return 0;
    feed_starved = 1;
    return 1;
}
static void *take(void *user, size_t size) {
    (void)user;
    void *block = fails() ? NULL : malloc(size);
    live += block != NULL;
    return block;
}
static void *retake(void *user, void *block, size_t size) {
    (void)user;
    if (fails()) return NULL;
    void *moved = realloc(block, size);
    live += moved && !block;
    return moved;
}
static void give(void *user, void *block) {
    (void)user;
    live -= block != NULL;
    free(block);
}

static uint64_t next(uint64_t *state) { /* splitmix64 */
    uint64_t z = (*state += 0x9E3779B97F4A7C15u);
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
    return z ^ (z >> 31);
}

/* Runs an input with one allocation failing; gives how many were asked for. */
static size_t run_once(const unsigned char *bytes, size_t size, const char *name, size_t failing, size_t *swallowed) {
    static feed f;
    asked = 0, fail_at = failing;
    feed_run(&f, bytes, size, name);
    const size_t of_run = asked;
    fail_at = 0;
    feed_end(&f);
    if (live) feed_broken("%s: %zu blocks were left when allocation %zu failed", name, live, failing);
    *swallowed += f.swallowed;
    return of_run;
}

int main(int argc, char **argv) {
    const frame_allocator allocator = {take, retake, give, NULL};
    const size_t inputs = argc > 1 ? strtoul(argv[1], NULL, 10) : 2;
    size_t failures = 0, swallowed = 0;
    if (frame_allocator_set(&allocator)) return 1;
    for (size_t which = 0; which < feed_call_count; which++)
        for (size_t input = 0; input < inputs; input++) {
            unsigned char bytes[400];
            uint64_t state = which * 1000003 + input;
            for (size_t k = 0; k < sizeof bytes; k++) bytes[k] = (unsigned char)(next(&state) >> 24);
            feed_input = input;
            const size_t total = run_once(bytes, sizeof bytes, feed_calls[which].name, 0, &swallowed);
            for (size_t n = 1; n <= total && n <= MOST_FAILURES; n++, failures++) {
                run_once(bytes, sizeof bytes, feed_calls[which].name, n, &swallowed);
            }
        }
    printf("%zu functions, %zu allocations made to fail, %zu swallowed, nothing left behind\n", feed_call_count,
           failures, swallowed);
    return !failures || swallowed;
}
