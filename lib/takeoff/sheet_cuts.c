/* Straight cuts: a line along an edge of some part, half a kerf off it, that crosses none parts the parts in two
 * groups; so on with each group. Where one such line is taken, all others still do, so the first found is as good as
 * any. */
#include "takeoff/sheet_cuts.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"

typedef struct region { /* the piece being cut: convex */
    frame_sheet_point points[64];
    int count, spare;
} region;

typedef struct parting {
    frame_sheet_fitter *fitter;
    const frame_sheet_placed *placed;
    frame_array *cuts; /* NULL: only asked whether */
    char *side;
    int *order;
} parting;

static int by_place(const void *a, const void *b) {
    const frame_sheet_point *p = a, *q = b;
    if (p->x != q->x) return p->x < q->x ? -1 : 1;
    return (p->y > q->y) - (p->y < q->y);
}

int frame_sheet_hull(const frame_sheet_point *points, int count, frame_sheet_point *hull) {
    frame_sheet_point *sorted = hull + count + 2;
    int n = 0;
    memcpy(sorted, points, (size_t)count * sizeof *points);
    qsort(sorted, (size_t)count, sizeof *sorted, by_place);
    for (int pass = 0; pass < 2; pass++) {
        const int floor_at = n;
        for (int k = 0; k < count; k++) {
            const frame_sheet_point p = sorted[pass ? count - 1 - k : k];
            while (n >= floor_at + 2 && frame_sheet_cross(hull[n - 2], hull[n - 1], p) <= 0) n--;
            hull[n++] = p;
        }
        n--;
    }
    return n;
}

/* Where a part lies to a line: 1 to its left, -1 to its right, 0 across it. */
static int side_of(const parting *p, int part, frame_sheet_point a, double nx, double ny) {
    const frame_sheet_placed *placed = &p->placed[part];
    const frame_sheet_shape *shape = &p->fitter->job->shapes[placed->shape];
    const double near = p->fitter->job->tolerance * 100;
    int left = 1, right = 1;
    for (int i = 0; i < shape->hull_count && (left || right); i++) {
        const double d = (shape->hull[i].x + placed->at.x - a.x) * nx + (shape->hull[i].y + placed->at.y - a.y) * ny;
        if (d < -near) left = 0;
        if (d > near) right = 0;
    }
    return left ? 1 : right ? -1 : 0;
}

/* Tries a line; fills side for the parts from..to and tells whether it parts them. */
static int parts_them(parting *p, int from, int to, frame_sheet_point a, frame_sheet_point b) {
    const double length = hypot(b.x - a.x, b.y - a.y);
    if (!(length > 0)) return 0;
    const double nx = (a.y - b.y) / length, ny = (b.x - a.x) / length;
    int left = 0, right = 0;
    p->fitter->work += to - from;
    for (int i = from; i < to; i++) {
        const int side = side_of(p, p->order[i], a, nx, ny);
        if (!side) return 0;
        p->side[p->order[i]] = (char)side;
        if (side > 0)
            left++;
        else
            right++;
    }
    return left && right;
}

/* The four sides of a part's bounding box. */
static int find_box_line(parting *p, int from, int to, frame_sheet_point *a, frame_sheet_point *b) {
    for (int i = from; i < to; i++) {
        const frame_sheet_placed *placed = &p->placed[p->order[i]];
        const frame_sheet_box *box = &p->fitter->job->shapes[placed->shape].fat_box;
        const double xs[2] = {box->x0 + placed->at.x, box->x1 + placed->at.x};
        const double ys[2] = {box->y0 + placed->at.y, box->y1 + placed->at.y};
        for (int k = 0; k < 4; k++) {
            *a = k < 2 ? (frame_sheet_point){xs[k], ys[0]} : (frame_sheet_point){xs[0], ys[k - 2]};
            *b = k < 2 ? (frame_sheet_point){xs[k], ys[1]} : (frame_sheet_point){xs[1], ys[k - 2]};
            if (parts_them(p, from, to, *a, *b)) return 1;
        }
    }
    return 0;
}

/* Lines along the sheet's sides are looked for first: they are the easiest to saw. Then lines along the parts' edges.
 */
static int find_line(parting *p, int from, int to, frame_sheet_point *a, frame_sheet_point *b) {
    if (find_box_line(p, from, to, a, b)) return 1;
    for (int i = from; i < to; i++) {
        const frame_sheet_placed *placed = &p->placed[p->order[i]];
        const frame_sheet_shape *shape = &p->fitter->job->shapes[placed->shape];
        for (int k = 0; k < shape->hull_count; k++) {
            const frame_sheet_point u = shape->hull[k], v = shape->hull[(k + 1) % shape->hull_count];
            *a = (frame_sheet_point){u.x + placed->at.x, u.y + placed->at.y};
            *b = (frame_sheet_point){v.x + placed->at.x, v.y + placed->at.y};
            if (parts_them(p, from, to, *a, *b)) return 1;
        }
    }
    return 0;
}

/* Clips a region to one side of a line. Gives the two points where the line runs through it. */
static int clip(const region *r, frame_sheet_point a, frame_sheet_point b, double side, region *kept,
                frame_sheet_point ends[2]) {
    const double length = hypot(b.x - a.x, b.y - a.y);
    int found = 0;
    kept->count = 0;
    for (int i = 0; i < r->count; i++) {
        const frame_sheet_point u = r->points[i], v = r->points[(i + 1) % r->count];
        const double here = side * frame_sheet_cross(a, b, u) / length,
                     there = side * frame_sheet_cross(a, b, v) / length;
        if (here >= 0 && kept->count < 64) kept->points[kept->count++] = u;
        if ((here >= 0) == (there >= 0)) continue;
        const double part = here / (here - there);
        const frame_sheet_point cut = {u.x + part * (v.x - u.x), u.y + part * (v.y - u.y)};
        if (kept->count < 64) kept->points[kept->count++] = cut;
        if (found < 2) ends[found++] = cut;
    }
    return found == 2;
}

static int emit(parting *p, const region *r, frame_sheet_point a, frame_sheet_point b, int trims) {
    frame_sheet_cut cut = {.trims = trims};
    frame_sheet_point ends[2];
    region kept;
    if (!clip(r, a, b, 1, &kept, ends) || hypot(ends[1].x - ends[0].x, ends[1].y - ends[0].y) < 1e-6) return 1;
    cut.from = ends[0], cut.to = ends[1];
    return frame_array_push(p->cuts, &cut) != NULL;
}

/* Trims a piece to its part: every side of the part that is not one of the piece's own yet. */
static int trim(parting *p, const region *r, int part) {
    const frame_sheet_placed *placed = &p->placed[part];
    const frame_sheet_shape *shape = &p->fitter->job->shapes[placed->shape];
    region left = *r, kept;
    for (int k = 0; k < shape->hull_count; k++) {
        const frame_sheet_point u = shape->hull[k], v = shape->hull[(k + 1) % shape->hull_count];
        const frame_sheet_point a = {u.x + placed->at.x, u.y + placed->at.y},
                                b = {v.x + placed->at.x, v.y + placed->at.y};
        const double length = hypot(b.x - a.x, b.y - a.y);
        double beyond = 0;
        frame_sheet_point ends[2];
        for (int i = 0; i < left.count; i++) beyond = fmax(beyond, -frame_sheet_cross(a, b, left.points[i]) / length);
        if (beyond < 1e-6 || length < p->fitter->job->kerf / 2)
            continue; /* the short ones are where a corner is cut square */
        if (!emit(p, &left, a, b, placed->kind)) return 0;
        clip(&left, a, b, 1, &kept, ends);
        if (kept.count >= 3) left = kept;
    }
    return 1;
}

static int part_group(parting *p, int from, int to, const region *r) {
    frame_sheet_point a, b, ends[2];
    region left, right;
    if (to - from == 0) return 1;
    if (to - from == 1) return !p->cuts || trim(p, r, p->order[from]);
    if (!find_line(p, from, to, &a, &b)) return 0;
    if (p->cuts && !emit(p, r, a, b, -1)) return 0;
    int middle = from;
    for (int i = from; i < to; i++)
        if (p->side[p->order[i]] > 0) {
            const int kept = p->order[middle];
            p->order[middle++] = p->order[i];
            p->order[i] = kept;
        }
    if (p->cuts) clip(r, a, b, 1, &left, ends), clip(r, a, b, -1, &right, ends);
    return part_group(p, from, middle, p->cuts ? &left : NULL) && part_group(p, middle, to, p->cuts ? &right : NULL);
}

static int begin(parting *p, const frame_sheet_bin *bin, const frame_sheet_placed *more, frame_array *room) {
    const size_t count = (size_t)bin->count + (more != NULL);
    const size_t bytes = count * (sizeof(frame_sheet_placed) + sizeof(int) + 1);
    room->item_size = 1;
    if (frame_array_reserve(room, bytes)) return 0;
    frame_sheet_placed *placed = room->items;
    if (bin->count) memcpy(placed, bin->placed, (size_t)bin->count * sizeof *placed);
    if (more) placed[bin->count] = *more;
    p->placed = placed;
    p->order = (int *)(void *)(placed + count);
    p->side = (char *)(p->order + count);
    for (size_t i = 0; i < count; i++) p->order[i] = (int)i;
    return 1;
}

int frame_sheet_can_cut(frame_sheet_fitter *f, const frame_sheet_bin *bin, const frame_sheet_placed *more) {
    parting p = {.fitter = f};
    if (!begin(&p, bin, more, &f->parting_room)) {
        f->failed = 1;
        return 0;
    }
    return part_group(&p, 0, bin->count + (more != NULL), NULL);
}

frame_status frame_sheet_cuts_of(frame_sheet_fitter *f, const frame_sheet_bin *bin, frame_array *cuts) {
    const frame_sheet_stock *stock = &f->job->stocks[bin->stock];
    parting p = {.fitter = f, .cuts = cuts};
    const region sheet = {{{0, 0}, {stock->width, 0}, {stock->width, stock->height}, {0, stock->height}}, 4, 0};
    cuts->count = 0;
    if (!begin(&p, bin, NULL, &f->parting_room)) return FRAME_NO_MEMORY;
    if (part_group(&p, 0, bin->count, &sheet)) return FRAME_OK;
    return frame_fail(FRAME_INTERNAL, "cuts", "", "",
                      "cuts: straight cuts do not part a sheet that was laid out for them");
}
