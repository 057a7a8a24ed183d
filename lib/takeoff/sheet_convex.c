/* Any simple polygon as few convex pieces: ears are cut off into triangles, then pieces are joined over the edges
 * between them for as long as they stay convex. */
#include <string.h>

#include "takeoff/sheet_polygon.h"

/* A convex piece as places in the polygon's list of corners. */
typedef struct piece {
    int *corner;
    int count, spare;
} piece;

typedef struct cutting {
    const frame_sheet_point *points;
    int count;
    piece *pieces;
    int piece_count;
    int *room; /* for a joined piece */
} cutting;

static int in_triangle(frame_sheet_point a, frame_sheet_point b, frame_sheet_point c, frame_sheet_point p) {
    return frame_sheet_cross(a, b, p) >= 0 && frame_sheet_cross(b, c, p) >= 0 && frame_sheet_cross(c, a, p) >= 0;
}

static int same_point(frame_sheet_point a, frame_sheet_point b) {
    return a.x == b.x && a.y == b.y;
}

/* Whether the corner at place i of what is left can be cut off: nothing else of the polygon lies in the triangle. */
static int is_ear(const cutting *c, const int *left, int count, int i) {
    const frame_sheet_point before = c->points[left[(i + count - 1) % count]], here = c->points[left[i]];
    const frame_sheet_point after = c->points[left[(i + 1) % count]];
    if (frame_sheet_cross(before, here, after) <= 0) return 0;
    for (int k = 0; k < count; k++) {
        const frame_sheet_point p = c->points[left[k]];
        if (same_point(p, before) || same_point(p, here) || same_point(p, after)) continue;
        if (in_triangle(before, here, after, p)) return 0;
    }
    return 1;
}

/* The ear with the fattest triangle, so that slivers are left for last; the most convex corner when there is none. */
static int best_ear(const cutting *c, const int *left, int count) {
    int best = -1, widest = 0;
    double most = 0, turn = -1e300;
    for (int i = 0; i < count; i++) {
        const frame_sheet_point a = c->points[left[(i + count - 1) % count]], b = c->points[left[i]];
        const frame_sheet_point d = c->points[left[(i + 1) % count]];
        const double area = frame_sheet_cross(a, b, d);
        const double edge = (d.x - a.x) * (d.x - a.x) + (d.y - a.y) * (d.y - a.y);
        if (area > turn) turn = area, widest = i;
        const double fat = edge > 0 ? area / edge : 0;
        if (fat > most && is_ear(c, left, count, i)) best = i, most = fat;
    }
    return best < 0 ? widest : best;
}

static void cut_ears(cutting *c, int *left) {
    int count = c->count;
    for (int i = 0; i < count; i++) left[i] = i;
    while (count >= 3) {
        const int i = count == 3 ? 1 : best_ear(c, left, count);
        piece *p = &c->pieces[c->piece_count++];
        p->count = 3;
        p->corner[0] = left[(i + count - 1) % count];
        p->corner[1] = left[i];
        p->corner[2] = left[(i + 1) % count];
        memmove(left + i, left + i + 1, (size_t)(count - i - 1) * sizeof *left);
        if (count-- == 3) break;
    }
}

static int is_convex(const cutting *c, const int *corner, int count) {
    for (int i = 0; i < count; i++)
        if (frame_sheet_cross(c->points[corner[i]], c->points[corner[(i + 1) % count]],
                              c->points[corner[(i + 2) % count]]) < 0)
            return 0;
    return 1;
}

/* Joins piece b to piece a over the edge that a has at place i and b has, the other way round, at place j. */
static int join(cutting *c, piece *a, const piece *b, int i, int j) {
    int count = 0;
    for (int k = 0; k < a->count; k++) c->room[count++] = a->corner[(i + 1 + k) % a->count];
    for (int k = 1; k + 1 < b->count; k++) c->room[count++] = b->corner[(j + 1 + k) % b->count];
    if (!is_convex(c, c->room, count)) return 0;
    memcpy(a->corner, c->room, (size_t)count * sizeof *c->room);
    a->count = count;
    return 1;
}

static int join_pair(cutting *c, piece *a, const piece *b) {
    for (int i = 0; i < a->count; i++)
        for (int j = 0; j < b->count; j++)
            if (a->corner[i] == b->corner[(j + 1) % b->count] && a->corner[(i + 1) % a->count] == b->corner[j] &&
                join(c, a, b, i, j))
                return 1;
    return 0;
}

static void join_pieces(cutting *c) {
    for (int a = 0; a < c->piece_count; a++)
        for (int b = a + 1; b < c->piece_count; b++) {
            if (!join_pair(c, &c->pieces[a], &c->pieces[b])) continue;
            int *spare = c->pieces[b].corner;
            c->pieces[b] = c->pieces[--c->piece_count];
            c->pieces[c->piece_count].corner = spare;
            b = a;
        }
}

static frame_status write_pieces(const cutting *c, frame_arena *arena, frame_sheet_pieces *pieces) {
    int corners = 0;
    for (int i = 0; i < c->piece_count; i++) corners += c->pieces[i].count;
    pieces->points = frame_arena_take(arena, (size_t)corners * sizeof *pieces->points);
    pieces->real = frame_arena_take(arena, (size_t)corners);
    pieces->start = frame_arena_take(arena, (size_t)(c->piece_count + 1) * sizeof *pieces->start);
    if (!pieces->points || !pieces->real || !pieces->start) return FRAME_NO_MEMORY;
    int at = 0;
    for (int i = 0; i < c->piece_count; i++) {
        const piece *p = &c->pieces[i];
        pieces->start[i] = at;
        for (int k = 0; k < p->count; k++, at++) {
            pieces->points[at] = c->points[p->corner[k]];
            pieces->real[at] = p->corner[(k + 1) % p->count] == (p->corner[k] + 1) % c->count;
        }
    }
    pieces->start[c->piece_count] = at;
    pieces->count = c->piece_count;
    return FRAME_OK;
}

frame_status frame_sheet_pieces_of(const frame_sheet_point *points, int count, frame_arena *arena,
                                   frame_sheet_pieces *pieces) {
    cutting c = {.points = points, .count = count};
    const size_t most = (size_t)count;
    c.pieces = frame_take_zeroed(most, sizeof *c.pieces);
    int *room = frame_take_zeroed(most * most + 2 * most, sizeof *room);
    frame_status status = c.pieces && room ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status) {
        for (size_t i = 0; i < most; i++) c.pieces[i].corner = room + 2 * most + i * most;
        c.room = room + most;
        cut_ears(&c, room);
        join_pieces(&c);
        status = write_pieces(&c, arena, pieces);
    }
    frame_give(room);
    frame_give(c.pieces);
    return status;
}
