/* Parts may overlap; one after the other is moved to where it overlaps least, each overlap weighed by how long it has
 * resisted (guided local search), until none is left or the work is used up. */
#include "takeoff/sheet_squeeze.h"

#include <math.h>
#include <string.h>

#include "takeoff/sheet_depth.h"

enum { MOST_PARTS = 400, FINALISTS = 3, IDLE = 150 };

typedef struct spot {
    int bin, shape;
    double x, y;
    double weighed; /* its overlaps, weighed */
} spot;

typedef struct squeeze {
    frame_sheet_search *search;
    const frame_sheet_job *job;
    frame_sheet_depths depths;
    int count, bin_count;
    int *kinds, *stocks, *order;
    spot *spots, *best, *elite; /* best since the last swap; best of all */
    double elite_total;
    frame_sheet_box *boxes; /* of the spots */
    double *weights;        /* of each pair */
    double *own;            /* of each part with the outside of its sheet */
    double best_total;
    int64_t end; /* of the work */
} squeeze;

static double chance(squeeze *q) {
    return (double)frame_sheet_random(q->search, UINT64_C(1) << 30) / (double)(UINT64_C(1) << 30);
}

static double between(const squeeze *q, int i, const spot *a, int j, const spot *b) {
    (void)i, (void)j;
    const frame_sheet_clashes *c = frame_sheet_clashes_of((frame_sheet_depths *)&q->depths, a->shape, b->shape);
    return c ? frame_sheet_depth(c, b->x - a->x, b->y - a->y) : 1;
}

static double outside(squeeze *q, const spot *at) {
    const int stock = q->stocks[at->bin];
    if (!q->job->stocks[stock].outside.count) return 0;
    const frame_sheet_clashes *c = frame_sheet_clashes_outside(&q->depths, stock, at->shape);
    return c ? frame_sheet_depth(c, at->x, at->y) : 1;
}

static frame_sheet_box box_at(const squeeze *q, const spot *at) {
    const frame_sheet_box *b = &q->job->shapes[at->shape].fat_box;
    return (frame_sheet_box){at->x + b->x0, at->y + b->y0, at->x + b->x1, at->y + b->y1};
}

static int apart(const frame_sheet_box *a, const frame_sheet_box *b) {
    return a->x1 <= b->x0 || b->x1 <= a->x0 || a->y1 <= b->y0 || b->y1 <= a->y0;
}

static void set_boxes(squeeze *q) {
    for (int i = 0; i < q->count; i++) q->boxes[i] = box_at(q, &q->spots[i]);
}

/* What a part at a spot overlaps, weighed; given up when it comes to more than a limit. */
static double weigh(squeeze *q, int part, const spot *at, double limit) {
    double sum = q->own[part] * outside(q, at);
    const double *weights = q->weights + (size_t)part * (size_t)q->count;
    const frame_sheet_box box = box_at(q, at);
    q->search->fitter.work += 1 + q->count / 8;
    for (int j = 0; j < q->count && sum < limit; j++) {
        if (apart(&box, &q->boxes[j]) || j == part || q->spots[j].bin != at->bin) continue;
        sum += weights[j] * between(q, part, at, j, &q->spots[j]);
    }
    return sum;
}

static int range_of(const squeeze *q, const spot *at, double *w, double *h) {
    const frame_sheet_stock *stock = &q->job->stocks[q->stocks[at->bin]];
    *w = stock->width - q->job->shapes[at->shape].width;
    *h = stock->height - q->job->shapes[at->shape].height;
    if (*w < -1e-6 || *h < -1e-6) return 0;
    *w = fmax(*w, 0), *h = fmax(*h, 0);
    return 1;
}

static void keep_within(const squeeze *q, spot *at) {
    double w, h;
    range_of(q, at, &w, &h);
    at->x = fmin(fmax(at->x, 0), w);
    at->y = fmin(fmax(at->y, 0), h);
}

/* A turn and a sheet by lot; 0 when the part does not fit it so. */
static int draw_shape(squeeze *q, int part, spot *at) {
    const frame_sheet_kind *kind = &q->job->kinds[q->kinds[part]];
    double w, h;
    at->bin = q->bin_count > 1 ? (int)frame_sheet_random(q->search, (uint64_t)q->bin_count) : 0;
    at->shape = kind->first_shape + (int)frame_sheet_random(q->search, (uint64_t)kind->shape_count);
    return range_of(q, at, &w, &h);
}

static int draw_anywhere(squeeze *q, int part, spot *at) {
    double w, h;
    if (!draw_shape(q, part, at)) return 0;
    range_of(q, at, &w, &h);
    at->x = w * chance(q), at->y = h * chance(q);
    return 1;
}

static int draw_near(squeeze *q, int part, spot *at) {
    const frame_sheet_shape *shape = &q->job->shapes[q->spots[part].shape];
    const double reach = 0.5 * (shape->width + shape->height) * chance(q);
    *at = q->spots[part];
    at->x += reach * (chance(q) - 0.5), at->y += reach * (chance(q) - 0.5);
    keep_within(q, at);
    return 1;
}

/* Where the part just touches another. */
static int draw_touching(squeeze *q, int part, spot *at) {
    if (!draw_shape(q, part, at) || q->count < 2) return 0;
    const int other = (int)frame_sheet_random(q->search, (uint64_t)q->count);
    const spot *o = &q->spots[other];
    if (other == part || o->bin != at->bin) return 0;
    const frame_sheet_clashes *c = frame_sheet_clashes_of(&q->depths, o->shape, at->shape);
    if (!c || !c->corner_count) return 0;
    const frame_sheet_point p = c->corners[frame_sheet_random(q->search, (uint64_t)c->corner_count)];
    at->x = o->x + p.x, at->y = o->y + p.y;
    keep_within(q, at);
    return 1;
}

/* Keeps the best few spots, the best first. */
static void enter(spot *finalists, int *count, const spot *at) {
    int place = *count < FINALISTS ? (*count)++ : FINALISTS - 1;
    if (*count == FINALISTS && place == FINALISTS - 1 && finalists[place].weighed <= at->weighed &&
        finalists[place].bin >= 0)
        return;
    while (place > 0 && finalists[place - 1].weighed > at->weighed) {
        finalists[place] = finalists[place - 1];
        place--;
    }
    finalists[place] = *at;
}

/* Steps along the axes and slantwise, longer after a success, shorter after a failure. */
static void refine(squeeze *q, int part, spot *at) {
    const frame_sheet_shape *shape = &q->job->shapes[at->shape];
    double step_x = shape->width / 8, step_y = shape->height / 8;
    const double least = 1e-5 * fmin(shape->width, shape->height);
    const double finest = 1e-4 * least, nearly = 1e3 * least; /* what is nearly free is worth a closer look */
    while (at->weighed > 0 && fmax(step_x, step_y) > (at->weighed < nearly ? finest : least)) {
        const int way = (int)frame_sheet_random(q->search, 3);
        const double dx = way == 1 ? 0 : step_x, dy = way == 0 ? 0 : step_y;
        const double sx = chance(q) < 0.5 ? -1 : 1, sy = chance(q) < 0.5 ? -1 : 1;
        int better = 0;
        for (int turn = 0; turn < 2 && !better; turn++) {
            spot tried = *at;
            tried.x += (turn ? -dx : dx) * sx, tried.y += (turn ? -dy : dy) * sy;
            keep_within(q, &tried);
            tried.weighed = weigh(q, part, &tried, at->weighed);
            if (tried.weighed < at->weighed) *at = tried, better = 1;
        }
        if (way != 1) step_x *= better ? 1.1 : 0.5;
        if (way != 0) step_y *= better ? 1.1 : 0.5;
    }
}

static void move_part(squeeze *q, int part) {
    spot finalists[FINALISTS] = {{.bin = -1}, {.bin = -1}, {.bin = -1}};
    int count = 0;
    q->spots[part].weighed = weigh(q, part, &q->spots[part], 1e300);
    enter(finalists, &count, &q->spots[part]);
    for (int i = 0; i < 90 && finalists[0].weighed > 0; i++) {
        spot at;
        const int drawn = i % 3 == 0   ? draw_anywhere(q, part, &at)
                          : i % 3 == 1 ? draw_near(q, part, &at)
                                       : draw_touching(q, part, &at);
        if (!drawn) continue;
        at.weighed = weigh(q, part, &at, finalists[count - 1].weighed);
        enter(finalists, &count, &at);
    }
    for (int i = 0; i < count && finalists[0].weighed > 0; i++) {
        refine(q, part, &finalists[i]);
        if (finalists[i].weighed < finalists[0].weighed) finalists[0] = finalists[i];
    }
    q->spots[part] = finalists[0];
    q->boxes[part] = box_at(q, &finalists[0]);
}

static double part_overlap(squeeze *q, int part) {
    double sum = outside(q, &q->spots[part]);
    for (int j = 0; j < q->count; j++)
        if (j != part && !apart(&q->boxes[part], &q->boxes[j]) && q->spots[j].bin == q->spots[part].bin)
            sum += between(q, part, &q->spots[part], j, &q->spots[j]);
    return sum;
}

/* Adds up all overlaps and makes those that are left weigh more, the others less again. */
static double settle_weights(squeeze *q) {
    double total = 0, most = 0;
    const size_t n = (size_t)q->count;
    for (int pass = 0; pass < 2; pass++)
        for (int i = 0; i < q->count; i++) {
            const double off = outside(q, &q->spots[i]);
            if (!pass)
                total += off, most = fmax(most, off);
            else
                q->own[i] = off > 0 ? q->own[i] * (1.2 + 0.8 * off / most) : fmax(1, q->own[i] * 0.95);
            for (int j = 0; j < i; j++) {
                const int near = q->spots[i].bin == q->spots[j].bin && !apart(&q->boxes[i], &q->boxes[j]);
                const double deep = near ? between(q, i, &q->spots[i], j, &q->spots[j]) : 0;
                double *w = &q->weights[(size_t)i * n + (size_t)j];
                if (!pass)
                    total += deep, most = fmax(most, deep);
                else
                    *w = deep > 0 ? fmin(*w * (1.2 + 0.8 * deep / most), 1e12) : fmax(1, *w * 0.95);
                q->weights[(size_t)j * n + (size_t)i] = *w;
            }
        }
    q->search->fitter.work += (int64_t)q->count * q->count / 4;
    return total;
}

static void sweep(squeeze *q) {
    for (int i = q->count - 1; i > 0; i--) {
        const int k = (int)frame_sheet_random(q->search, (uint64_t)i + 1), kept = q->order[i];
        q->order[i] = q->order[k], q->order[k] = kept;
    }
    for (int i = 0; i < q->count && !q->depths.failed; i++)
        if (part_overlap(q, q->order[i]) > 0) move_part(q, q->order[i]);
}

/* Stuck: two larger parts change places. */
static void swap_two(squeeze *q) {
    const int i = (int)frame_sheet_random(q->search, (uint64_t)q->count);
    const int k = (int)frame_sheet_random(q->search, (uint64_t)q->count);
    const spot one = q->spots[i], other = q->spots[k];
    double w, h;
    spot a = {other.bin, one.shape, other.x, other.y, 0}, b = {one.bin, other.shape, one.x, one.y, 0};
    if (!range_of(q, &a, &w, &h) || !range_of(q, &b, &w, &h)) return;
    keep_within(q, &a), keep_within(q, &b);
    q->spots[i] = a, q->spots[k] = b;
}

static int is_out(squeeze *q) {
    if (q->depths.failed) return 1;
    if (frame_sheet_is_stopped(q->search, FRAME_NOT_GIVEN)) return 1;
    if (q->search->fitter.work >= q->end) q->search->ended = FRAME_STOCK_END_EFFORT;
    return q->search->ended > 0;
}

static void copy_spots(const squeeze *q, spot *to, const spot *from) {
    memcpy(to, from, (size_t)q->count * sizeof *to);
}

/* Begins again from the best there was since the last time, or of all, with some parts changed about. */
static void shake(squeeze *q) {
    copy_spots(q, q->spots, frame_sheet_random(q->search, 2) ? q->best : q->elite);
    const int swaps = 1 + (int)frame_sheet_random(q->search, 3);
    for (int i = 0; i < swaps; i++) swap_two(q);
    for (size_t i = 0; i < (size_t)q->count * (size_t)q->count; i++) q->weights[i] = 1;
    for (int i = 0; i < q->count; i++) q->own[i] = 1;
    q->best_total = 1e300;
}

static void note_total(squeeze *q, double total) {
    if (total < q->best_total) q->best_total = total, copy_spots(q, q->best, q->spots);
    if (total < q->elite_total) q->elite_total = total, copy_spots(q, q->elite, q->spots);
}

/* Gives 1 when no overlap is left. */
static int drive_out(squeeze *q) {
    int idle = 0;
    q->best_total = q->elite_total = 1e300;
    while (!is_out(q)) {
        set_boxes(q);
        const double total = settle_weights(q);
        if (total == 0) return 1;
        idle = total < q->best_total * 0.98 ? 0 : idle + 1;
        note_total(q, total);
        if (idle > IDLE) shake(q), set_boxes(q), idle = 0;
        sweep(q);
    }
    return 0;
}

static frame_status begin(squeeze *q, const frame_sheet_layout *from) {
    const size_t n = (size_t)q->count;
    int at = 0;
    q->kinds = frame_take_zeroed(n, sizeof *q->kinds);
    q->order = frame_take_zeroed(n, sizeof *q->order);
    q->spots = frame_take_zeroed(n, sizeof *q->spots);
    q->best = frame_take_zeroed(n, sizeof *q->best);
    q->boxes = frame_take_zeroed(n, sizeof *q->boxes);
    q->elite = frame_take_zeroed(n, sizeof *q->elite);
    q->own = frame_take_zeroed(n, sizeof *q->own);
    q->weights = frame_take_zeroed(n * n, sizeof *q->weights);
    q->stocks = frame_take_zeroed(from->bins.count, sizeof *q->stocks);
    if (!q->kinds || !q->order || !q->spots || !q->best || !q->boxes || !q->elite || !q->own || !q->weights ||
        !q->stocks)
        return FRAME_NO_MEMORY;
    for (size_t b = 0; b < from->bins.count; b++) {
        const frame_sheet_bin *bin = &FRAME_ITEM(frame_sheet_bin, from->bins, b);
        q->stocks[b] = bin->stock;
        for (int i = 0; i < bin->count; i++, at++) {
            q->kinds[at] = bin->placed[i].kind;
            q->spots[at] = (spot){(int)b, bin->placed[i].shape, bin->placed[i].at.x, bin->placed[i].at.y, 0};
        }
    }
    for (size_t i = 0; i < from->left.count; i++, at++) {
        q->kinds[at] = FRAME_ITEM(int, from->left, i);
        for (int tries = 0; tries < 200 && !draw_anywhere(q, at, &q->spots[at]); tries++) continue;
        keep_within(q, &q->spots[at]);
    }
    for (size_t i = 0; i < n; i++) q->order[i] = (int)i, q->own[i] = 1;
    for (size_t i = 0; i < n * n; i++) q->weights[i] = 1;
    return frame_sheet_depths_begin(&q->depths, q->job);
}

static void give(squeeze *q) {
    frame_sheet_depths_give(&q->depths);
    frame_give(q->kinds), frame_give(q->order), frame_give(q->spots), frame_give(q->best), frame_give(q->boxes),
        frame_give(q->elite);
    frame_give(q->own), frame_give(q->weights), frame_give(q->stocks);
}

static frame_status write_bins(const squeeze *q, frame_sheet_layout *kept) {
    for (int b = 0; b < q->bin_count; b++) {
        frame_sheet_bin bin = {.stock = q->stocks[b]};
        int good = 1;
        for (int i = 0; i < q->count && good; i++) {
            if (q->spots[i].bin != b) continue;
            const frame_sheet_placed placed = {q->kinds[i], q->spots[i].shape, {q->spots[i].x, q->spots[i].y}};
            good = frame_sheet_bin_add(&bin, q->job, placed);
        }
        if (good && bin.count) good = frame_array_push(&kept->bins, &bin) != NULL;
        if (!good || !bin.count) frame_sheet_bin_give(&bin);
        if (!good) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

frame_status frame_sheet_squeeze(frame_sheet_search *s, const frame_sheet_layout *from, int64_t work,
                                 frame_sheet_layout *kept, int *done) {
    squeeze q = {.search = s, .job = s->job, .bin_count = (int)from->bins.count, .end = s->fitter.work + work};
    size_t parts = from->left.count;
    *done = 0;
    for (size_t b = 0; b < from->bins.count; b++) parts += (size_t)FRAME_ITEM(frame_sheet_bin, from->bins, b).count;
    if (parts > MOST_PARTS || !from->bins.count || s->job->straight) return FRAME_OK;
    q.count = (int)parts;
    frame_status status = begin(&q, from);
    if (!status && !q.depths.failed && drive_out(&q)) {
        *done = 1;
        status = write_bins(&q, kept);
    }
    give(&q);
    return status;
}
