/* Speed of layouts, each beside a rival in the same run: a wall of 60 ft with six openings and a floor of two hundred
 * pieces beside snprintf of the same cut lists (name and length of each piece); the proof that a floor fits beside the
 * kernel asked for every pair of its pieces. The best of several rounds counts, since the machine is shared. With
 * --check only the answers are compared. */
#define _POSIX_C_SOURCE 200809L
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <frame/frame.h>

enum { ROUNDS = 300, MOST = 1000 };

static double now(void) {
    struct timespec time;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
    return (double)time.tv_sec + 1e-9 * (double)time.tv_nsec;
}

static void must(frame_status status) {
    if (!status) return;
    fprintf(stderr, "bench: %s\n", frame_error_text());
    exit(1);
}

static frame_wall_opening openings[6];

static frame_wall *solve_wall(void) {
    frame_wall_in in;
    frame_wall *wall = NULL;
    frame_wall_in_init(&in);
    in.length_in = 720;
    in.stud_length_in = 92.625;
    in.size = FRAME_SIZE(2, 6);
    in.openings = openings;
    in.opening_count = 6;
    must(frame_wall_solve(&in, &wall, NULL));
    return wall;
}

static void prepare_wall(void) {
    for (int i = 0; i < 6; i++) {
        frame_wall_opening_init(&openings[i]);
        openings[i].at_in = 30 + 118 * i;
        openings[i].width_in = i % 2 ? 36 : 60;
        openings[i].head_in = 82;
        openings[i].sill_in = i % 2 ? 0 : 30;
        openings[i].header_size = FRAME_SIZE(2, 10);
    }
}

/* Joists, rims, blocking, bridging that crosses, and two openings: a little over two hundred pieces. */
static frame_floor *solve_floor(void) {
    static const double rows[] = {90, 264}, struts[] = {130};
    frame_floor_in in;
    frame_floor_opening holes[2];
    frame_floor_beam beam;
    frame_floor *floor_made = NULL;
    frame_floor_in_init(&in);
    frame_floor_beam_init(&beam);
    for (int i = 0; i < 2; i++) {
        frame_floor_opening_init(&holes[i]);
        holes[i].x_in = 24;
        holes[i].y_in = 100 + 200 * i;
        holes[i].length_in = 40;
        holes[i].width_in = 38;
    }
    beam.at_in = 168;
    in.span_in = 336;
    in.width_in = 600;
    in.size = FRAME_SIZE(2, 10);
    in.beams = &beam;
    in.beam_count = 1;
    in.openings = holes;
    in.opening_count = 2;
    in.blocking_in = rows;
    in.blocking_count = 2;
    in.bridging_in = struts;
    in.bridging_count = 1;
    must(frame_floor_solve(&in, &floor_made, NULL));
    return floor_made;
}

static char page[MOST * 80];

static double time_walls(void) {
    double best = HUGE_VAL;
    for (int i = 0; i < ROUNDS; i++) {
        const double begun = now();
        frame_wall *wall = solve_wall();
        best = fmin(best, now() - begun);
        frame_wall_free(wall);
    }
    return best;
}

static double time_floors(void) {
    double best = HUGE_VAL;
    for (int i = 0; i < ROUNDS; i++) {
        const double begun = now();
        frame_floor *made = solve_floor();
        best = fmin(best, now() - begun);
        frame_floor_free(made);
    }
    return best;
}

static double time_list(size_t count, const char *const *names, const double *lengths) {
    double best = HUGE_VAL;
    for (int i = 0; i < ROUNDS; i++) {
        const double begun = now();
        char *at = page;
        for (size_t k = 0; k < count; k++) at += snprintf(at, 80, "%s, %.4f\n", names[k], lengths[k]);
        best = fmin(best, now() - begun);
    }
    return best;
}

static const char *names[MOST];
static double lengths[MOST];

static double list_of_wall(const frame_wall *wall) {
    const size_t count = frame_wall_piece_count(wall);
    for (size_t i = 0; i < count && i < MOST; i++) {
        frame_wall_piece piece;
        must(frame_wall_piece_at(wall, i, &piece));
        names[i] = piece.name;
        lengths[i] = piece.length_in;
    }
    return time_list(count, names, lengths);
}

static double list_of_floor(const frame_floor *made) {
    const size_t count = frame_floor_piece_count(made);
    for (size_t i = 0; i < count && i < MOST; i++) {
        frame_floor_piece piece;
        must(frame_floor_piece_at(made, i, &piece));
        names[i] = piece.name;
        lengths[i] = piece.length_in;
    }
    return time_list(count, names, lengths);
}

static double time_fit(const frame_floor *made, int rounds, frame_fit_out *fit) {
    double best = HUGE_VAL;
    for (int i = 0; i < rounds; i++) {
        const double begun = now();
        must(frame_floor_fit(made, fit));
        best = fmin(best, now() - begun);
    }
    return best;
}

/* The rival: every pair, by the same kernel; of every so many pieces. */
static double time_pairs(const frame_floor *made, size_t step, int *overlaps) {
    static frame_stick *sticks[MOST];
    const double begun = now();
    const size_t count = frame_floor_piece_count(made);
    *overlaps = 0;
    for (size_t i = 0; i < count; i++) must(frame_floor_stick(made, i, &sticks[i]));
    for (size_t i = 0; i < count; i += step)
        for (size_t k = i + 1; k < count; k++) {
            frame_stick_fit_out found;
            must(frame_stick_fit(sticks[i], sticks[k], &found));
            *overlaps += found.overlap_in3 >= 1e-6;
        }
    for (size_t i = 0; i < count; i++) frame_stick_free(sticks[i]);
    return now() - begun;
}

int main(int count, char **arguments) {
    const int check = count > 1 && !strcmp(arguments[1], "--check");
    prepare_wall();
    frame_wall *wall = solve_wall();
    frame_floor *made = solve_floor();
    frame_fit_out fit;
    int overlaps;
    const double proof = time_fit(made, check ? 1 : 20, &fit), pairs = time_pairs(made, check ? 12 : 1, &overlaps);
    const int alike = fit.overlaps == overlaps && fit.fits && frame_floor_piece_count(made) >= 200;
    if (!alike) fprintf(stderr, "bench: the floor's fit is not what every pair says\n");
    if (!check) {
        const double walls = time_walls(), floors = time_floors();
        const double wall_list = list_of_wall(wall), floor_list = list_of_floor(made);
        printf("%-44s %9.1f us, %.1f times snprintf of its %zu pieces (%.1f us)\n",
               "wall, 60 ft, 6 openings (limit 100 us)", walls * 1e6, walls / wall_list, frame_wall_piece_count(wall),
               wall_list * 1e6);
        printf("%-44s %9.1f us, %.1f times snprintf of its %zu pieces (%.1f us)\n",
               "floor, 2 bays, 2 openings (limit 1000 us)", floors * 1e6, floors / floor_list,
               frame_floor_piece_count(made), floor_list * 1e6);
        printf("%-44s %9.2f ms, %.0f times faster than the kernel on every pair (%.1f ms)\n",
               "that floor's fit (limit 20 ms)", proof * 1e3, pairs / proof, pairs * 1e3);
    }
    frame_wall_free(wall);
    frame_floor_free(made);
    return !alike;
}
