/* The places where a part touches what lies on a sheet, and the best of them. A part at t overlaps another when t lies
 * in the sum of the other's pieces and its own turned about: convex polygons. The best place lies at a corner of the
 * free ground: a corner of the range of t, a corner of a polygon, or where two edges meet. */
#include "takeoff/sheet_fit.h"

#include <math.h>
#include <string.h>

#include "takeoff/sheet_cuts.h"

/* Beyond so many polygons only their corners are tried, not where their edges meet: those would be millions. */
enum { MOST_CROSSED = 250 };

/* The range of t, and the best place so far. */
typedef struct quest {
    frame_sheet_fitter *fitter;
    frame_sheet_box range;
    frame_sheet_pull pull;
    double reach; /* what the shape's size adds to the key */
    double key;
    frame_sheet_point at;
    int found, shape;
    const frame_sheet_bin *straight; /* the sheet, when straight cuts must still part everything on it */
} quest;

void frame_sheet_fitter_begin(frame_sheet_fitter *fitter, const frame_sheet_job *job) {
    memset(fitter, 0, sizeof *fitter);
    fitter->job = job;
    fitter->points.item_size = sizeof(frame_sheet_point);
    fitter->grounds.item_size = sizeof(frame_sheet_ground);
}

void frame_sheet_fitter_give(frame_sheet_fitter *fitter) {
    frame_array_give(&fitter->points);
    frame_array_give(&fitter->parting_room);
    frame_array_give(&fitter->grounds);
}

int frame_sheet_bin_add(frame_sheet_bin *bin, const frame_sheet_job *job, frame_sheet_placed placed) {
    if (bin->count == bin->capacity) {
        const int more = bin->capacity ? 2 * bin->capacity : 8;
        frame_sheet_placed *room = frame_retake(bin->placed, (size_t)more * sizeof *room);
        if (!room) return 0;
        bin->placed = room;
        bin->capacity = more;
    }
    bin->placed[bin->count++] = placed;
    bin->used += job->kinds[placed.kind].area;
    bin->fat_used += job->kinds[placed.kind].fat_area;
    return 1;
}

void frame_sheet_bin_give(frame_sheet_bin *bin) {
    frame_give(bin->placed);
    frame_array_give(&bin->spaces);
    bin->placed = NULL;
}

static int lowest(const frame_sheet_point *p, int count) {
    int least = 0;
    for (int i = 1; i < count; i++)
        if (p[i].y < p[least].y || (p[i].y == p[least].y && p[i].x < p[least].x)) least = i;
    return least;
}

/* The sum of two convex polygons, the first moved by an offset: their edges in the order of their directions. */
int frame_sheet_sum(const frame_sheet_point *a, int a_count, frame_sheet_point offset, const frame_sheet_point *b,
                    int b_count, frame_sheet_point *sum) {
    int i = lowest(a, a_count), j = lowest(b, b_count), count = 0;
    frame_sheet_point at = {a[i].x + b[j].x + offset.x, a[i].y + b[j].y + offset.y};
    for (int a_left = a_count, b_left = b_count; a_left || b_left;) {
        const frame_sheet_point *p = &a[i], *p2 = &a[i + 1 == a_count ? 0 : i + 1];
        const frame_sheet_point *q = &b[j], *q2 = &b[j + 1 == b_count ? 0 : j + 1];
        const double turn = (p2->x - p->x) * (q2->y - q->y) - (p2->y - p->y) * (q2->x - q->x);
        const int of_a = a_left && (!b_left || turn >= 0), of_b = b_left && (!a_left || turn <= 0);
        sum[count++] = at;
        if (of_a) at.x += p2->x - p->x, at.y += p2->y - p->y, i = i + 1 == a_count ? 0 : i + 1, a_left--;
        if (of_b) at.x += q2->x - q->x, at.y += q2->y - q->y, j = j + 1 == b_count ? 0 : j + 1, b_left--;
    }
    return count;
}

static int overlap(const frame_sheet_box *a, const frame_sheet_box *b) {
    return a->x0 < b->x1 && b->x0 < a->x1 && a->y0 < b->y1 && b->y0 < a->y1;
}

static void add_grounds(quest *q, const frame_sheet_pieces *fixed, frame_sheet_point offset,
                        const frame_sheet_pieces *anti) {
    frame_sheet_fitter *f = q->fitter;
    for (int i = 0; i < fixed->count; i++)
        for (int j = 0; j < anti->count; j++) {
            const int a = fixed->start[i + 1] - fixed->start[i], b = anti->start[j + 1] - anti->start[j];
            if (frame_array_reserve(&f->points, f->points.count + (size_t)(a + b))) {
                f->failed = 1;
                return;
            }
            frame_sheet_ground g = {.first = (int)f->points.count};
            frame_sheet_point *sum = &FRAME_ITEM(frame_sheet_point, f->points, g.first);
            g.count =
                frame_sheet_sum(fixed->points + fixed->start[i], a, offset, anti->points + anti->start[j], b, sum);
            g.box = frame_sheet_box_of(sum, g.count);
            if (!overlap(&g.box, &q->range)) continue;
            f->points.count += (size_t)g.count;
            if (!frame_array_push(&f->grounds, &g)) f->failed = 1;
        }
}

/* Whether t lies inside a forbidden polygon by more than the tolerance. */
static int forbids(const frame_sheet_fitter *f, const frame_sheet_ground *g, frame_sheet_point t) {
    const double near = f->job->tolerance;
    if (t.x <= g->box.x0 + near || t.x >= g->box.x1 - near || t.y <= g->box.y0 + near || t.y >= g->box.y1 - near)
        return 0;
    const frame_sheet_point *p = &FRAME_ITEM(frame_sheet_point, f->points, g->first);
    for (int i = 0, j = g->count - 1; i < g->count; j = i++) {
        const double dx = p[i].x - p[j].x, dy = p[i].y - p[j].y;
        if (dx * (t.y - p[j].y) - dy * (t.x - p[j].x) <= near * (fabs(dx) + fabs(dy))) return 0;
    }
    return 1;
}

static void try_place(quest *q, double x, double y) {
    const double near = q->fitter->job->tolerance;
    if (x < q->range.x0 - near || x > q->range.x1 + near || y < q->range.y0 - near || y > q->range.y1 + near) return;
    const frame_sheet_point t = {fmin(fmax(x, q->range.x0), q->range.x1), fmin(fmax(y, q->range.y0), q->range.y1)};
    const double key = q->pull.x * t.x + q->pull.y * t.y + q->reach;
    if (q->found ? key >= q->key - 1e-9 : key >= q->key) return;
    const size_t count = q->fitter->grounds.count;
    q->fitter->work += (int64_t)count + 1;
    for (size_t g = 0; g < count; g++)
        if (forbids(q->fitter, &FRAME_ITEM(frame_sheet_ground, q->fitter->grounds, g), t)) return;
    if (q->straight && !frame_sheet_can_cut(q->fitter, q->straight, &(frame_sheet_placed){0, q->shape, t})) return;
    q->at = t;
    q->key = key;
    q->found = 1;
}

/* Where an edge of forbidden ground meets the sides of the range. */
static void try_sides(quest *q, frame_sheet_point a, frame_sheet_point b) {
    const double xs[2] = {q->range.x0, q->range.x1}, ys[2] = {q->range.y0, q->range.y1};
    for (int i = 0; i < 2; i++) {
        if ((a.x - xs[i]) * (b.x - xs[i]) < 0) try_place(q, xs[i], a.y + (b.y - a.y) * ((xs[i] - a.x) / (b.x - a.x)));
        if ((a.y - ys[i]) * (b.y - ys[i]) < 0) try_place(q, a.x + (b.x - a.x) * ((ys[i] - a.y) / (b.y - a.y)), ys[i]);
    }
}

static void try_crossing(quest *q, frame_sheet_point a, frame_sheet_point b, frame_sheet_point c, frame_sheet_point d) {
    const double rx = b.x - a.x, ry = b.y - a.y, sx = d.x - c.x, sy = d.y - c.y, det = rx * sy - ry * sx;
    const double u = (c.x - a.x) * sy - (c.y - a.y) * sx, v = (c.x - a.x) * ry - (c.y - a.y) * rx;
    if (det > 0 ? u < 0 || u > det || v < 0 || v > det : u > 0 || u < det || v > 0 || v < det) return;
    if (det == 0) return;
    try_place(q, a.x + rx * (u / det), a.y + ry * (u / det));
}

static void try_pair(quest *q, const frame_sheet_ground *one, const frame_sheet_ground *other) {
    const frame_sheet_point *p = &FRAME_ITEM(frame_sheet_point, q->fitter->points, one->first);
    const frame_sheet_point *r = &FRAME_ITEM(frame_sheet_point, q->fitter->points, other->first);
    q->fitter->work += one->count;
    for (int i = 0; i < one->count; i++) {
        const frame_sheet_point a = p[i], b = p[i + 1 == one->count ? 0 : i + 1];
        const frame_sheet_box box = {fmin(a.x, b.x), fmin(a.y, b.y), fmax(a.x, b.x), fmax(a.y, b.y)};
        if (box.x1 < other->box.x0 || box.x0 > other->box.x1 || box.y1 < other->box.y0 || box.y0 > other->box.y1)
            continue;
        q->fitter->work += other->count;
        for (int k = 0; k < other->count; k++) try_crossing(q, a, b, r[k], r[k + 1 == other->count ? 0 : k + 1]);
    }
}

static void try_all(quest *q) {
    const frame_array *grounds = &q->fitter->grounds;
    try_place(q, q->range.x0, q->range.y0);
    try_place(q, q->range.x1, q->range.y0);
    try_place(q, q->range.x0, q->range.y1);
    try_place(q, q->range.x1, q->range.y1);
    for (size_t g = 0; g < grounds->count; g++) {
        const frame_sheet_ground *one = &FRAME_ITEM(frame_sheet_ground, *grounds, g);
        const frame_sheet_point *p = &FRAME_ITEM(frame_sheet_point, q->fitter->points, one->first);
        for (int i = 0; i < one->count; i++) {
            try_place(q, p[i].x, p[i].y);
            try_sides(q, p[i], p[i + 1 == one->count ? 0 : i + 1]);
        }
        for (size_t h = 0; h < g && grounds->count <= MOST_CROSSED; h++) {
            const frame_sheet_ground *other = &FRAME_ITEM(frame_sheet_ground, *grounds, h);
            if (overlap(&one->box, &other->box)) try_pair(q, one, other);
        }
    }
}

int frame_sheet_fit(frame_sheet_fitter *f, const frame_sheet_bin *bin, int shape, frame_sheet_pull pull,
                    frame_sheet_point *at, double *key) {
    const frame_sheet_shape *s = &f->job->shapes[shape];
    const frame_sheet_stock *stock = &f->job->stocks[bin->stock];
    if (s->width > stock->width + 1e-6 || s->height > stock->height + 1e-6) return 0;
    quest q = {.fitter = f,
               .pull = pull,
               .key = *key,
               .shape = shape,
               .reach = fmax(pull.x, 0) * s->width + fmax(pull.y, 0) * s->height};
    if (f->job->straight && bin->count) q.straight = bin;
    q.range = (frame_sheet_box){0, 0, fmax(stock->width - s->width, 0), fmax(stock->height - s->height, 0)};
    f->points.count = f->grounds.count = 0;
    /* boxes are compared with a range that has some width, so that a part as long as the sheet meets its neighbours */
    const frame_sheet_box range = q.range;
    q.range = (frame_sheet_box){range.x0 - 1e-6, range.y0 - 1e-6, range.x1 + 1e-6, range.y1 + 1e-6};
    add_grounds(&q, &stock->outside, (frame_sheet_point){0, 0}, &s->anti_plain);
    for (int i = 0; i < bin->count && !f->failed; i++)
        add_grounds(&q, &f->job->shapes[bin->placed[i].shape].fat, bin->placed[i].at, &s->anti_fat);
    q.range = range;
    if (!f->failed) try_all(&q);
    *at = q.at;
    *key = q.key;
    return q.found && !f->failed;
}

int frame_sheet_pair_fits(frame_sheet_fitter *f, int stock, int one, int other) {
    const frame_sheet_shape *a = &f->job->shapes[one], *b = &f->job->shapes[other];
    const frame_sheet_stock *sheet = &f->job->stocks[stock];
    /* b lies at t from a: both lie within the sheet when t is in this range */
    quest q = {.fitter = f, .key = 1e300, .pull = {1, 1}};
    q.range = (frame_sheet_box){a->width - sheet->width, a->height - sheet->height, sheet->width - b->width,
                                sheet->height - b->height};
    if (q.range.x1 < q.range.x0 - 1e-6 || q.range.y1 < q.range.y0 - 1e-6) return 0;
    q.range.x1 = fmax(q.range.x1, q.range.x0), q.range.y1 = fmax(q.range.y1, q.range.y0);
    const frame_sheet_box range = q.range;
    q.range = (frame_sheet_box){range.x0 - 1e-6, range.y0 - 1e-6, range.x1 + 1e-6, range.y1 + 1e-6};
    f->points.count = f->grounds.count = 0;
    add_grounds(&q, &a->lean, (frame_sheet_point){0, 0}, &b->anti_lean);
    q.range = range;
    if (!f->failed) try_all(&q);
    return q.found || f->failed;
}
