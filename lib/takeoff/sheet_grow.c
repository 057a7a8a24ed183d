/* Growing a polygon by half a kerf: each convex piece moves its real edges outward. Edges that only part two pieces
 * stay, so that inner corners do not bulge. What is made holds all points within the distance; made lean, it holds no
 * other. */
#include <math.h>

#include "takeoff/sheet_job.h"

/* Corners of up to a right angle are kept sharp, so that rectangles stay rectangles. */
#define SHARPEST 1.4143

typedef struct line {
    double nx, ny, d; /* the points p with n . p = d, seen from the corner */
} line;

static line moved_edge(frame_sheet_point a, frame_sheet_point b, double distance) {
    const double length = hypot(b.x - a.x, b.y - a.y);
    return (line){(b.y - a.y) / length, (a.x - b.x) / length, distance};
}

static frame_sheet_point meeting(line one, line other) {
    const double det = one.nx * other.ny - one.ny * other.nx;
    return (frame_sheet_point){(one.d * other.ny - other.d * one.ny) / det,
                               (one.nx * other.d - other.nx * one.d) / det};
}

static void add(frame_sheet_pieces *to, int *at, frame_sheet_point corner, frame_sheet_point from) {
    to->points[*at] = (frame_sheet_point){corner.x + from.x, corner.y + from.y};
    to->real[(*at)++] = 1;
}

/* One corner becomes one point, or two where it is cut square; a lean one lies within the distance. */
static void grow_corner(frame_sheet_pieces *to, int *at, frame_sheet_point corner, line before, line after,
                        double distance, int lean) {
    if (lean) {
        add(to, at, (frame_sheet_point){before.nx * before.d, before.ny * before.d}, corner);
        add(to, at, (frame_sheet_point){after.nx * after.d, after.ny * after.d}, corner);
        return;
    }
    const double det = before.nx * after.ny - before.ny * after.nx;
    if (fabs(det) < 1e-7) {
        const double reach = fmax(before.d, after.d);
        add(to, at, (frame_sheet_point){before.nx * reach, before.ny * reach}, corner);
        return;
    }
    const frame_sheet_point tip = meeting(before, after);
    /* a real edge that meets a parting one at a blunt angle ends square: its strip must not be cut short */
    const int to_parting = after.d == 0 && before.d > 0, from_parting = before.d == 0 && after.d > 0;
    if (to_parting && tip.x * before.ny - tip.y * before.nx > 0) {
        add(to, at, (frame_sheet_point){before.nx * before.d, before.ny * before.d}, corner);
        return;
    }
    if (from_parting && tip.x * after.ny - tip.y * after.nx < 0) {
        add(to, at, (frame_sheet_point){after.nx * after.d, after.ny * after.d}, corner);
        return;
    }
    const double reach = hypot(tip.x, tip.y);
    if (reach <= SHARPEST * distance) {
        add(to, at, tip, corner);
        return;
    }
    const line square = {tip.x / reach, tip.y / reach, distance};
    add(to, at, meeting(before, square), corner);
    add(to, at, meeting(square, after), corner);
}

static void grow_piece(const frame_sheet_pieces *from, int i, double distance, int lean, frame_sheet_pieces *to,
                       int *at) {
    const frame_sheet_point *p = from->points + from->start[i];
    const char *real = from->real + from->start[i];
    const int n = from->start[i + 1] - from->start[i];
    for (int k = 0; k < n; k++) {
        const int before = (k + n - 1) % n, after = (k + 1) % n;
        grow_corner(to, at, p[k], moved_edge(p[before], p[k], real[before] ? distance : 0),
                    moved_edge(p[k], p[after], real[k] ? distance : 0), distance, lean);
    }
}

frame_status frame_sheet_grow(const frame_sheet_pieces *from, double distance, int lean, frame_arena *arena,
                              frame_sheet_pieces *grown) {
    const size_t corners = (size_t)from->start[from->count] * 2;
    grown->points = frame_arena_take(arena, corners * sizeof *grown->points);
    grown->real = frame_arena_take(arena, corners);
    grown->start = frame_arena_take(arena, (size_t)(from->count + 1) * sizeof *grown->start);
    if (!grown->points || !grown->real || !grown->start) return FRAME_NO_MEMORY;
    int at = 0;
    for (int i = 0; i < from->count; i++) {
        grown->start[i] = at;
        grow_piece(from, i, distance, lean, grown, &at);
    }
    grown->start[from->count] = at;
    grown->count = from->count;
    return FRAME_OK;
}
