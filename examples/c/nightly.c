/* An estimator's night: a million joists checked on all cores.     nightly [JOISTS] [THREADS] */
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>

#include <frame/frame.h>

typedef struct share {
    size_t from, to, hold, refused;
    double worst;
} share;

/* Every joist of its share: spans and spacings as an estimator's file might have them. */
static void *check(void *given) {
    share *s = given;
    frame_joist_check_in in;
    frame_joist_check_out out;
    frame_joist_check_in_init(&in);
    in.use = FRAME_USE_FLOOR, in.live_psf = 40, in.dead_psf = 10;
    if (frame_species_find("SPF", &in.species) || frame_grade_find("No.2", &in.grade)) return NULL;
    for (size_t i = s->from; i < s->to; i++) {
        in.size = FRAME_SIZE(2, i % 3 ? 10 : 12);
        in.spacing_in = i % 2 ? 16 : 24;
        in.span_in = 96 + (double)(i * 7919 % 1200) / 10;
        if (frame_joist_check(&in, &out, NULL)) {
            s->refused++; /* frame_error_text() of this thread says why */
            continue;
        }
        s->hold += out.passes == 1;
        if (out.ratio > s->worst) s->worst = out.ratio;
    }
    return NULL;
}

int main(int argc, char **argv) {
    const size_t joists = argc > 1 ? strtoul(argv[1], NULL, 10) : 1000000, threads = argc > 2 ? strtoul(argv[2], NULL, 10) : 2;
    pthread_t running[64];
    share shares[64] = {{0}};
    share all = {0};
    if (threads < 1 || threads > 64) return puts("1 to 64 threads"), 1;
    for (size_t i = 0; i < threads; i++) {
        shares[i].from = joists * i / threads, shares[i].to = joists * (i + 1) / threads;
        if (pthread_create(&running[i], NULL, check, &shares[i])) return puts("no more threads"), 1;
    }
    for (size_t i = 0; i < threads; i++) {
        pthread_join(running[i], NULL);
        all.hold += shares[i].hold, all.refused += shares[i].refused;
        if (shares[i].worst > all.worst) all.worst = shares[i].worst;
    }
    printf("%zu joists: %zu hold, %zu do not, %zu refused; the worst ratio is %.3f\n", joists, all.hold,
           joists - all.hold - all.refused, all.refused, all.worst);
    return 0;
}
