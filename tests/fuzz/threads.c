/* Everything at once: threads that each run inputs of their own through all functions. Under the thread sanitizer this
 * finds what they share; and every thread must get what one alone gets.     threads [INPUTS a thread] */
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>

#include "feed.h"

enum { THREADS = 4 };

static size_t inputs = 200;

static uint64_t next(uint64_t *state) { /* splitmix64 */
    uint64_t z = (*state += 0x9E3779B97F4A7C15u);
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
    return z ^ (z >> 31);
}

static void *run(void *hash) {
    feed *f = calloc(1, sizeof *f);
    uint64_t *all = hash;
    for (size_t i = 0; f && i < inputs; i++) {
        unsigned char bytes[700];
        uint64_t state = i;
        for (size_t k = 0; k < sizeof bytes; k++) bytes[k] = (unsigned char)(next(&state) >> 24);
        feed_input = i;
        feed_run(f, bytes, sizeof bytes, NULL);
        *all = *all * 1099511628211u ^ f->hash;
        feed_end(f);
    }
    free(f);
    return NULL;
}

int main(int argc, char **argv) {
    pthread_t threads[THREADS];
    uint64_t hashes[THREADS] = {0}, alone = 0;
    if (argc > 1) inputs = strtoul(argv[1], NULL, 10);
    run(&alone);
    for (int i = 0; i < THREADS; i++)
        if (pthread_create(&threads[i], NULL, run, &hashes[i])) return 1;
    for (int i = 0; i < THREADS; i++) pthread_join(threads[i], NULL);
    for (int i = 0; i < THREADS; i++)
        if (hashes[i] != alone || !alone) return printf("thread %d had other answers than one alone\n", i), 1;
    printf("%d threads, %zu inputs each: the answers of one alone\n", THREADS, inputs);
    return 0;
}
