/* Convex cells stay closed and lose nothing, whatever plane splits them. */
#include <stdlib.h>

#include "make_stick.h"
#include "timber/cell.h"

/* Asked so often that Check's own note of each would take the most time. */
#define demand(condition)                                 \
    do {                                                  \
        if (!(condition)) ck_abort_msg("%s", #condition); \
    } while (0)

static unsigned seed = 20261125;
static double random_between(double low, double high) {
    seed = seed * 1664525u + 1013904223u;
    return low + (high - low) * (seed >> 8) / 16777216.0;
}

static double volume(const frame_cell *cell) {
    frame_moments sum = {0, {0, 0, 0}};
    const frame_cell_view view = frame_cell_look(cell);
    frame_cell_measure(&view, &sum);
    return sum.volume;
}

/* The corner that runs along the edge from one vertex to another; checks that there is just one. */
static const frame_cell_face *face_with_edge(const frame_cell *cell, int from, int to, int *beyond) {
    const frame_cell_face *found = NULL;
    for (int f = 0; f < cell->face_count; f++)
        for (int i = 0; i < cell->faces[f].count; i++) {
            const frame_cell_corner *corner = cell->corners + cell->faces[f].first;
            if (corner[i].vertex != from || corner[(i + 1) % cell->faces[f].count].vertex != to) continue;
            demand(!found);
            found = &cell->faces[f];
            *beyond = corner[i].beyond;
        }
    return found;
}

/* Every edge has its twin in the face across it, and the counts obey Euler. */
static void check_closed(const frame_cell *cell) {
    demand(cell->corner_count % 2 == 0);
    demand(cell->vertex_count - cell->corner_count / 2 + cell->face_count == 2);
    for (int f = 0; f < cell->face_count; f++)
        for (int i = 0; i < cell->faces[f].count; i++) {
            const frame_cell_corner *corner = cell->corners + cell->faces[f].first;
            const int next = corner[(i + 1) % cell->faces[f].count].vertex;
            int beyond = -1;
            const frame_cell_face *twin = face_with_edge(cell, next, corner[i].vertex, &beyond);
            demand(twin);
            demand(twin->plane == corner[i].beyond);
            demand(beyond == cell->faces[f].plane);
        }
}

static frame_plane plane_through(vec3 point, vec3 direction) {
    const vec3 normal = vec_times(direction, 1 / vec_length(direction));
    return (frame_plane){normal, vec_dot(normal, point)};
}

static vec3 random_vertex(const frame_cell *cell) {
    return cell->vertices[(int)random_between(0, cell->vertex_count - 0.001)];
}

/* Planes of all kinds: anywhere, along a face, through one, two or three vertices, and past those by next to nothing.
 */
static frame_plane random_plane(const frame_cell *cell, int kind) {
    const vec3 anywhere = {random_between(-1, 1), random_between(-1, 1), random_between(-1, 1)};
    const vec3 a = random_vertex(cell), b = random_vertex(cell), c = random_vertex(cell);
    frame_plane plane =
        plane_through(vec_between(a, vec_between(b, c, random_between(0, 1)), random_between(0, 1)), anywhere);
    const vec3 square = vec_cross(vec_less(b, a), kind % 3 ? vec_less(c, a) : anywhere);
    if (kind % 3 && vec_length(square) > 1e-3) plane = plane_through(a, square);
    if (kind % 4 == 3) plane = plane_through(a, (vec3){kind & 4 ? 1 : 0, kind & 8 ? 1 : 0, 1});
    if (kind % 5 >= 3) plane.at += pow(10, random_between(-11, -4)) * (kind & 1 ? 1 : -1);
    return plane;
}

#ifndef ROUNDS
#define ROUNDS 1000
#endif

START_TEST(random_splits) {
    static frame_cell cell, under, over;
    int splits = 0;
    for (int round = 0; round < ROUNDS; round++) {
        const double x[2] = {-3, random_between(1, 240)}, y[2] = {-0.75, 0.75}, z[2] = {0, 9.25};
        frame_cell_prism(&cell, x, y, z);
        check_closed(&cell);
        for (int number = PLANE_FIRST_CUT; number < PLANE_FIRST_CUT + 20; number++) {
            const frame_plane plane = random_plane(&cell, (int)random_between(0, 60));
            const frame_cell_view view = frame_cell_look(&cell);
            const double whole = volume(&cell);
            const frame_cell_parts found = frame_cell_split(&view, &plane, (uint8_t)number, &under, &over);
            demand(found >= CELL_UNDER);
            if (found != CELL_BOTH) continue;
            check_closed(&under);
            check_closed(&over);
            /* Each piece may differ by what counts as touching, times its surface. */
            demand(fabs(volume(&under) + volume(&over) - whole) < 1e-6);
            demand(volume(&under) > -1e-6);
            demand(volume(&over) > -1e-6);
            cell = volume(&under) > volume(&over) ? under : over;
            splits++;
        }
    }
    ck_assert_int_gt(splits, 2000);
}
END_TEST

/* A ball of planes has as many faces as planes: past the limit it is refused, and nothing is written past the end. */
START_TEST(the_limit_holds) {
    static frame_cell cell, under;
    const double side[2] = {-10, 10};
    frame_cell_prism(&cell, side, side, side);
    frame_cell_parts found = CELL_BOTH;
    for (int i = 0; i < 200 && found > 0; i++) {
        const double z = 1 - 2 * (i + 0.5) / 200, around = i * 2.399963;
        const frame_plane plane = {{sqrt(1 - z * z) * cos(around), sqrt(1 - z * z) * sin(around), z}, 9};
        const frame_cell_view view = frame_cell_look(&cell);
        found = frame_cell_split(&view, &plane, (uint8_t)(PLANE_FIRST_CUT + i), &under, NULL);
        if (found == CELL_BOTH) cell = under;
        check_closed(&cell);
    }
    ck_assert_int_eq(found, CELL_TOO_LARGE);
    ck_assert_int_ge(cell.face_count, 60);
}
END_TEST

static void add(TCase *tests) {
    tcase_add_test(tests, random_splits);
    tcase_add_test(tests, the_limit_holds);
}

int main(void) {
    return run("cell", add);
}
