/* Speed of beam_solve: the whole call for a beam of a thousand spans and of a hundred thousand, and its equations alone
 * beside LAPACK's banded Cholesky solver (dpbsv) on the same system with the same right-hand sides. With --check only
 * the answers are compared. */
#define _POSIX_C_SOURCE 200809L
#include <dlfcn.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "strength/beam_blocks.h"

enum { BAND = 4 }; /* the diagonal and three below it */

typedef void banded_solver(const char *, const int *, const int *, const int *, double *, const int *, double *,
                           const int *, int *, size_t);

static double now(void) {
    struct timespec time;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
    return (double)time.tv_sec + 1e-9 * (double)time.tv_nsec;
}

static frame_beam_solve_in beam_of(double *spans, size_t count) {
    frame_beam_solve_in in;
    for (size_t i = 0; i < count; i++) spans[i] = 100 + (double)(i % 7);
    frame_beam_solve_in_init(&in);
    in.spans_in = spans;
    in.span_count = count;
    in.dead_plf = 20, in.live_plf = 100, in.e_psi = 1.4e6, in.inertia_in4 = 100, in.pattern = 0;
    return in;
}

static double time_call(const frame_beam_solve_in *in, int rounds) {
    double best = HUGE_VAL;
    for (int i = 0; i < rounds; i++) {
        frame_beam_solve *answer;
        const double begun = now();
        if (frame_beam_solve_solve(in, &answer, NULL)) return HUGE_VAL;
        best = fmin(best, now() - begun);
        frame_beam_solve_free(answer);
    }
    return best;
}

/* The library's own model of the beam, up to its equations. */
static frame_beam *model_of(frame_beam_solve_in in) {
    frame_beam *beam = frame_take_zeroed(1, sizeof *beam);
    in.left_overhang_in = in.right_overhang_in = in.roof_live_plf = in.snow_plf = in.wind_plf = 0;
    in.creep_factor = 1;
    if (!beam || frame_beam_read(&in, beam) || frame_beam_cut(beam) || frame_beam_balance(beam)) exit(1);
    return beam;
}

/* The lower band of the stiffness, and the loads, as LAPACK wants them. */
static void as_banded(const frame_beam *beam, double *band, double *loads, int n) {
    memset(band, 0, sizeof(double) * BAND * (size_t)n);
    for (size_t i = 0; i < beam->node_count; i++) {
        static double none[2][2];
        const frame_beam_block block = beam->blocks[i];
        double *column = &band[2 * i * BAND], (*B)[2] = i < beam->span_count ? beam->links[i] : none;
        column[0] = block.a, column[1] = block.b, column[2] = B[0][0], column[3] = B[0][1];
        column[BAND] = block.d, column[BAND + 1] = B[1][0], column[BAND + 2] = B[1][1];
        for (int k = 0; k < beam->kind_count; k++) {
            const double *here = i < beam->span_count ? beam->fixed[frame_beam_place_of(beam, i, k)] : NULL;
            const double *before = i > 0 ? beam->fixed[frame_beam_place_of(beam, i - 1, k)] : NULL;
            loads[(size_t)k * (size_t)n + 2 * i] = 0; /* held */
            loads[(size_t)k * (size_t)n + 2 * i + 1] = -(here ? here[1] : 0) - (before ? before[3] : 0);
        }
    }
}

static int same_moves(const frame_beam *beam, const double *solution, int n) {
    double most = 0, worst = 0;
    for (size_t i = 0; i < beam->node_count; i++)
        for (int k = 0; k < beam->kind_count; k++) {
            const double turn = beam->moved[frame_beam_place_of(beam, i, k)][1];
            most = fmax(most, fabs(turn));
            worst = fmax(worst, fabs(turn - solution[(size_t)k * (size_t)n + 2 * i + 1]));
        }
    if (worst <= 1e-12 * most) return 1;
    printf("beams: LAPACK's turns differ by %g of %g\n", worst, most);
    return 0;
}

/* Times both on copies; 0 when their answers differ. */
static int race(frame_beam *beam, banded_solver *rival, int rounds, double *ours, double *theirs) {
    const int n = 2 * (int)beam->node_count, below = BAND - 1, kinds = beam->kind_count, width = BAND;
    double *band = malloc(sizeof(double) * BAND * (size_t)n), *loads = malloc(sizeof(double) * (size_t)(n * kinds));
    int info = 0, same = 0;
    *ours = *theirs = HUGE_VAL;
    for (int i = 0; i < rounds; i++) {
        as_banded(beam, band, loads, n);
        double begun = now();
        rival("L", &n, &below, &kinds, band, &width, loads, &n, &info, 1);
        *theirs = fmin(*theirs, now() - begun);
        begun = now();
        if (frame_beam_equations(beam)) info = 1;
        *ours = fmin(*ours, now() - begun);
    }
    same = !info && same_moves(beam, loads, n);
    free(band);
    free(loads);
    return same;
}

int main(int count, char **words) {
    const int quick = count > 1 && !strcmp(words[1], "--check");
    const size_t sizes[] = {1000, 100000};
    void *lapack = dlopen("liblapack.so.3", RTLD_NOW);
    banded_solver *rival = NULL;
    if (lapack) *(void **)&rival = dlsym(lapack, "dpbsv_");
    if (quick && !rival) return 77;
    for (int i = 0; i < (quick ? 1 : 2); i++) {
        double *spans = malloc(sizes[i] * sizeof *spans), ours = 0, theirs = 0;
        frame_beam_solve_in in = beam_of(spans, sizes[i]);
        frame_beam *beam = model_of(in);
        if (rival && !race(beam, rival, quick ? 1 : i ? 5 : 200, &ours, &theirs)) return 1;
        if (!quick) {
            static double few[2]; /* of the first size: work is to grow as the spans do, a hundredfold */
            for (int pattern = 0; pattern <= 1; pattern++) {
                in.pattern = pattern;
                const double time = time_call(&in, i ? 3 : 100);
                printf("beam_solve, C, %6zu spans%s %24.3f ms", sizes[i], pattern ? ", patterns" : "", 1e3 * time);
                if (i) printf("   %6.1f x the time of %zu spans", time / few[pattern], sizes[0]);
                printf("\n");
                if (!i) few[pattern] = time;
            }
            if (rival)
                printf("   its equations alone %28.3f ms   %6.2f x LAPACK dpbsv (%.3f ms)\n", 1e3 * ours, ours / theirs,
                       1e3 * theirs);
        }
        frame_beam_end(beam);
        free(spans);
    }
    if (lapack) dlclose(lapack);
    return 0;
}
