/* A pattern: shelves one over the other, on each shelf columns side by side, in each column parts of one kind; or all
 * that lying on its side. The best one for given prices is found by two knapsacks, over the width of a shelf and over
 * the height of the sheet (after Gilmore and Gomory). Prices of parts that end in badly filled patterns rise for the
 * next round (sequential value correction, after Mukhacheva; both from memory). */
#include "takeoff/sheet_cutter.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

typedef frame_sheet_column column;
typedef frame_sheet_shelf shelf;
typedef frame_sheet_pattern pattern;
typedef frame_sheet_cutter cutter;

static int only_sheet(const frame_sheet_job *job) {
    int found = -1;
    for (int i = 0; i < job->stock_count; i++) {
        if (!job->stocks[i].available) continue;
        if (job->stocks[i].offcut >= 0 || found >= 0) return -1;
        found = i;
    }
    return found;
}

int frame_sheet_patterns_apply(const frame_sheet_search *s) {
    const frame_sheet_job *job = s->job;
    const int stock = only_sheet(job);
    return job->all_rectangles && stock >= 0 && job->stocks[stock].available >= job->item_count &&
           job->item_count > 30 && job->kind_count <= 400;
}

/* The largest step all sizes are whole multiples of; else one that is small enough, sizes being rounded up. */
static double step_for(const frame_sheet_job *job, double side) {
    for (double step = 1; step > 1.0 / 64; step /= 2) {
        if (side / step > MOST_STEPS) break;
        int whole = fabs(side / step - floor(side / step + 0.5)) < 1e-7;
        for (int i = 0; i < job->shape_count && whole; i++) {
            const double w = (job->shapes[i].width + job->kerf) / step, h = (job->shapes[i].height + job->kerf) / step;
            whole = fabs(w - floor(w + 0.5)) < 1e-7 && fabs(h - floor(h + 0.5)) < 1e-7;
        }
        if (whole) return step;
    }
    return side / COARSE_STEPS;
}

static int steps_up(const cutter *c, double size) {
    return (int)ceil((size + c->job->kerf) / c->step - 1e-7);
}

static int by_height(const void *a, const void *b) {
    const column *one = a, *two = b;
    if (one->height != two->height) return one->height - two->height;
    if (one->shape != two->shape) return one->shape - two->shape;
    return one->copies - two->copies;
}

/* The steps along a shelf and up the sheet. */
static void sides(const cutter *c, int sideways, int *wide, int *high) {
    const frame_sheet_stock *stock = &c->job->stocks[c->stock];
    const int across = (int)floor((stock->width + c->job->kerf) / c->step + 1e-7);
    const int up = (int)floor((stock->height + c->job->kerf) / c->step + 1e-7);
    *wide = sideways ? up : across, *high = sideways ? across : up;
}

frame_status frame_sheet_columns_list(cutter *c, const double *prices, int sideways) {
    int wide, high;
    sides(c, sideways, &wide, &high);
    c->columns.count = 0;
    for (int s = 0; s < c->job->shape_count; s++) {
        const frame_sheet_shape *shape = &c->job->shapes[s];
        column one = {.kind = shape->kind, .shape = s};
        one.width = steps_up(c, sideways ? shape->height : shape->width);
        const int height = steps_up(c, sideways ? shape->width : shape->height);
        if (one.width > wide) continue;
        for (int n = 1; n <= c->demand[one.kind] && n * height <= high; n++) {
            one.copies = n, one.height = n * height, one.price = n * prices[one.kind];
            if (!frame_array_push(&c->columns, &one)) return FRAME_NO_MEMORY;
        }
    }
    if (c->columns.count) qsort(c->columns.items, c->columns.count, sizeof(column), by_height);
    return FRAME_OK;
}

/* Lets a column, or a shelf, be used any number of times: in runs as long as it is wide, which do not hang on each
 * other. */
static void allow(cutter *c, double *best, int width, double price, int wide) {
    c->search->fitter.work += wide / 32 + 1;
    for (int from = width; from <= wide; from += width) {
        const int count = from + width <= wide + 1 ? width : wide + 1 - from;
        const double *restrict before = best + from - width;
        double *restrict here = best + from;
        for (int i = 0; i < count; i++) {
            const double with = before[i] + price;
            here[i] = with > here[i] ? with : here[i];
        }
    }
}

/* How often a column may stand on one shelf; 0: as often as it fits, the demand is no matter. */
static int uses_of(const frame_sheet_column *col, const int *left, int wide) {
    const int uses = left[col->kind] / col->copies;
    return uses > 3 || uses * col->width > wide ? 0 : uses;
}

static void allow_few(cutter *c, double *best, const column *col, int uses, int wide) {
    for (int n = 0; n < uses; n++)
        for (int x = wide; x >= col->width; x--)
            if (best[x - col->width] + col->price > best[x]) best[x] = best[x - col->width] + col->price;
    c->search->fitter.work += uses * (wide / 8) + 1;
}

/* What a whole shelf of each column's height is worth, then what a sheet of each height is. */
static void fill_knapsacks(cutter *c, const int *left, int wide, int high) {
    const int count = (int)c->columns.count;
    memset(c->best, 0, (size_t)(wide + 1) * sizeof *c->best);
    memset(c->sheet_best, 0, (size_t)(high + 1) * sizeof *c->sheet_best);
    for (int i = 0; i < count; i++) {
        const column *col = &FRAME_ITEM(column, c->columns, i);
        const int uses = uses_of(col, left, wide), can = col->copies <= left[col->kind];
        if (can && !uses) allow(c, c->best, col->width, col->price, wide);
        if (can && uses) allow_few(c, c->best, col, uses, wide);
        c->worth[i] = c->best[wide];
    }
    for (int i = 0; i < count; i++) {
        const int height = FRAME_ITEM(column, c->columns, i).height;
        if (height <= high && (i + 1 == count || FRAME_ITEM(column, c->columns, i + 1).height != height))
            allow(c, c->sheet_best, height, c->worth[i], high);
    }
}

/* Whether an amount is what comes of a smaller one and something more. */
static int comes_of(double whole, double less, double more) {
    return fabs(less + more - whole) <= 1e-9 * fmax(1, fabs(whole));
}

/* The shelf on top of the best sheet so high. */
static int top_shelf(const cutter *c, int y) {
    if (c->sheet_best[y] <= 0 || c->sheet_best[y] == c->sheet_best[y - 1]) return -1;
    for (int i = (int)c->columns.count - 1; i >= 0; i--) {
        const int height = FRAME_ITEM(column, c->columns, i).height;
        const int shelf_end = i + 1 == (int)c->columns.count || FRAME_ITEM(column, c->columns, i + 1).height != height;
        if (shelf_end && height <= y && comes_of(c->sheet_best[y], c->sheet_best[y - height], c->worth[i])) return i;
    }
    return -1;
}

/* Rows of a table that says where taking a column made a shelf worth more. */
typedef struct taking {
    char *table;
    int *column_of; /* of each row */
    char *often;    /* whether the row's column may be taken again */
    int rows, wide;
} taking;

static void take_row(cutter *c, taking *t, int number, int often) {
    const column *col = &FRAME_ITEM(column, c->columns, number);
    char *row = t->table + (size_t)t->rows * (size_t)(t->wide + 1);
    t->column_of[t->rows] = number;
    t->often[t->rows++] = (char)often;
    c->search->fitter.work += t->wide / 8 + 1;
    for (int k = col->width; k <= t->wide; k++) {
        const int x = often ? k : t->wide + col->width - k;
        if (c->best[x - col->width] + col->price > c->best[x] + 1e-9)
            c->best[x] = c->best[x - col->width] + col->price, row[x] = 1;
    }
}

static int count_rows(const cutter *c, const int *left, int top, int wide) {
    int rows = 0;
    for (int i = 0; i <= top; i++) {
        const column *col = &FRAME_ITEM(column, c->columns, i);
        const int uses = uses_of(col, left, wide);
        if (col->copies <= left[col->kind]) rows += uses ? uses : 1;
    }
    return rows;
}

/* Puts what the table says on the shelf, as far as the demand goes. */
static frame_status put_columns(cutter *c, pattern *p, const taking *t, int *left) {
    shelf *s = &p->shelves[p->shelf_count];
    for (int row = t->rows - 1, x = t->wide; row >= 0;) {
        const column *col = &FRAME_ITEM(column, c->columns, t->column_of[row]);
        const int taken = t->table[(size_t)row * (size_t)(t->wide + 1) + (size_t)x];
        if (taken) x -= col->width;
        if (taken && left[col->kind] >= col->copies) {
            left[col->kind] -= col->copies;
            p->price += col->price, p->area += col->copies * c->job->kinds[col->kind].area;
            s->count++;
            if (!frame_array_push(&p->chosen, &t->column_of[row])) return FRAME_NO_MEMORY;
        }
        if (!taken || !t->often[row]) row--;
    }
    if (s->count) p->shelf_count++;
    return FRAME_OK;
}

/* Puts the best columns on a shelf of a height, as far as the demand goes. */
static frame_status fill_shelf(cutter *c, pattern *p, int top, int wide, int *left) {
    const size_t rows = (size_t)count_rows(c, left, top, wide) + 1;
    taking t = {.wide = wide};
    p->shelves[p->shelf_count] = (shelf){FRAME_ITEM(column, c->columns, top).height, (int)p->chosen.count, 0};
    t.table = frame_take_zeroed(rows, (size_t)(wide + 1));
    t.column_of = frame_take_zeroed(rows, sizeof *t.column_of);
    t.often = frame_take_zeroed(rows, 1);
    frame_status status = t.table && t.column_of && t.often ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status) {
        memset(c->best, 0, (size_t)(wide + 1) * sizeof *c->best);
        for (int i = 0; i <= top; i++) {
            const column *col = &FRAME_ITEM(column, c->columns, i);
            const int uses = uses_of(col, left, wide);
            if (col->copies > left[col->kind]) continue;
            for (int n = 0; n < (uses ? uses : 1); n++) take_row(c, &t, i, !uses);
        }
        status = put_columns(c, p, &t, left);
    }
    frame_give(t.table), frame_give(t.column_of), frame_give(t.often);
    return status;
}

/* The best pattern one way round. left: the demand that stays while it is made. */
static frame_status make_pattern(cutter *c, const double *prices, int sideways, int *left, pattern *p) {
    int wide, high;
    sides(c, sideways, &wide, &high);
    frame_status status = frame_sheet_columns_list(c, prices, sideways);
    p->shelf_count = 0, p->chosen.count = 0, p->price = p->area = 0, p->sideways = sideways;
    c->worth = frame_take_zeroed(c->columns.count + 1, sizeof *c->worth);
    if (!status && !c->worth) status = FRAME_NO_MEMORY;
    for (int y = high; !status && y > 0 && p->shelf_count < MOST_SHELVES;) { /* shelf by shelf, with what is left */
        const int before = p->shelf_count;
        fill_knapsacks(c, left, wide, y);
        int top = -1, at = y;
        while (at > 0 && (top = top_shelf(c, at)) < 0) at--;
        if (top < 0) break;
        status = fill_shelf(c, p, top, wide, left);
        if (p->shelf_count == before) break;
        y -= FRAME_ITEM(column, c->columns, top).height;
    }
    frame_give(c->worth);
    c->worth = NULL;
    return status;
}

/* -- patterns into sheets -- */

static frame_sheet_point put_round(const pattern *p, double along, double up) {
    return p->sideways ? (frame_sheet_point){up, along} : (frame_sheet_point){along, up};
}

static int add_space(frame_sheet_bin *bin, const pattern *p, double x0, double y0, double x1, double y1) {
    const frame_sheet_box space = p->sideways ? (frame_sheet_box){y0, x0, y1, x1} : (frame_sheet_box){x0, y0, x1, y1};
    return x1 - x0 < 1e-7 || y1 - y0 < 1e-7 || frame_array_push(&bin->spaces, &space) != NULL;
}

static int add_column(const cutter *c, const pattern *p, const column *col, double x, double y, double top,
                      frame_sheet_bin *bin) {
    int good = 1;
    const double height = c->step * col->height / col->copies;
    for (int n = 0; n < col->copies && good; n++) {
        const frame_sheet_placed placed = {col->kind, col->shape, put_round(p, x, y + n * height)};
        good = frame_sheet_bin_add(bin, c->job, placed);
    }
    return good && add_space(bin, p, x, y + c->step * col->height, x + c->step * col->width, top);
}

frame_status frame_sheet_pattern_add(const cutter *c, const pattern *p, frame_sheet_layout *layout) {
    const frame_sheet_stock *stock = &c->job->stocks[c->stock];
    const double wide = (p->sideways ? stock->height : stock->width) + c->job->kerf;
    const double high = (p->sideways ? stock->width : stock->height) + c->job->kerf;
    frame_sheet_bin bin = {.stock = c->stock, .spaces.item_size = sizeof(frame_sheet_box)};
    double y = 0;
    int good = 1;
    for (int s = 0; s < p->shelf_count && good; s++) {
        const double top = y + c->step * p->shelves[s].height;
        double x = 0;
        for (int k = 0; k < p->shelves[s].count && good; k++) {
            const column *col = &FRAME_ITEM(column, c->columns, FRAME_ITEM(int, p->chosen, p->shelves[s].first + k));
            good = add_column(c, p, col, x, y, top, &bin);
            x += c->step * col->width;
        }
        good = good && add_space(&bin, p, x, y, wide, top);
        y = top;
    }
    good = good && add_space(&bin, p, 0, y, wide, high) && frame_array_push(&layout->bins, &bin);
    if (!good) frame_sheet_bin_give(&bin);
    c->search->used[c->stock] += good;
    return good ? FRAME_OK : FRAME_NO_MEMORY;
}

/* How often the demand lets a pattern be used. */
int frame_sheet_pattern_times(const cutter *c, const pattern *p, int *need) {
    int most = 1 << 30;
    memset(need, 0, (size_t)c->job->kind_count * sizeof *need);
    for (size_t i = 0; i < p->chosen.count; i++) {
        const column *col = &FRAME_ITEM(column, c->columns, FRAME_ITEM(int, p->chosen, i));
        need[col->kind] += col->copies;
    }
    for (int k = 0; k < c->job->kind_count; k++)
        if (need[k] && c->demand[k] / need[k] < most) most = c->demand[k] / need[k];
    return most;
}

static void correct_prices(const cutter *c, double *prices, const int *need, int used, double area) {
    const double fill = area / c->job->stocks[c->stock].area;
    for (int k = 0; k < c->job->kind_count; k++) {
        if (!need[k]) continue;
        const double share = 0.5 * need[k] * used / c->job->kinds[k].copies;
        prices[k] += share * (pow(c->job->kinds[k].area, 1.02) / fmax(fill, 0.05) - prices[k]);
    }
}

frame_status frame_sheet_pattern_make(cutter *c, const double *prices, int *left, pattern *p) {
    double price[2] = {0, 0};
    frame_status status = FRAME_OK;
    for (int pass = 0; pass < 3 && !status; pass++) {
        const int sideways = pass < 2 ? pass : price[1] > price[0];
        if (pass == 2 && sideways) break; /* it is the one just made */
        memcpy(left, c->demand, (size_t)c->job->kind_count * sizeof *left);
        status = make_pattern(c, prices, sideways, left, p);
        if (pass < 2) price[pass] = p->price;
    }
    return status;
}

/* Uses the best pattern as often as it can be. Gives 0 in *used when nothing more fits one. */
static frame_status use_pattern(cutter *c, double *prices, pattern *p, int *left, int *need, frame_sheet_layout *layout,
                                int *used) {
    *used = 0;
    frame_status status = frame_sheet_pattern_make(c, prices, left, p);
    if (status || !p->chosen.count) return status;
    const int most = frame_sheet_pattern_times(c, p, need);
    for (int n = 0; n < most && !status; n++) status = frame_sheet_pattern_add(c, p, layout);
    for (int k = 0; k < c->job->kind_count; k++) c->demand[k] -= most * need[k];
    correct_prices(c, prices, need, most, p->area);
    *used = most;
    return status;
}

static int parts_left(const cutter *c) {
    int64_t left = 0;
    for (int k = 0; k < c->job->kind_count; k++) left += c->demand[k];
    return (int)left;
}

/* What is left of the demand goes the common way, onto sheets that have room too. */
static frame_status pack_rest(cutter *c, frame_sheet_layout *layout) {
    int count = 0;
    int *kinds = frame_take((size_t)(parts_left(c) + 1) * sizeof *kinds);
    const frame_sheet_rule rule = {.pull = {1, 1}, .way = 1};
    if (!kinds) return FRAME_NO_MEMORY;
    for (int i = 0; i < c->job->item_count; i++) {
        const int kind = c->job->items[i];
        if (c->demand[kind] > 0) c->demand[kind]--, kinds[count++] = kind;
    }
    const frame_status status = frame_sheet_pack(c->search, kinds, count, &rule, layout);
    frame_give(kinds);
    return status;
}

static frame_status cut_all(cutter *c, double *prices, int mixed, int *room, frame_sheet_layout *layout) {
    pattern *p = frame_take_zeroed(1, sizeof *p);
    frame_status status = p ? FRAME_OK : FRAME_NO_MEMORY;
    const int64_t end = c->search->fitter.work + c->search->limits.work / 2;
    for (int before = -1;
         !status && mixed && parts_left(c) > 0 && parts_left(c) != before && c->search->fitter.work < end;) {
        before = parts_left(c);
        status = frame_sheet_mix(c, prices, layout);
    }
    int used = 1;
    if (p) p->chosen.item_size = sizeof(int);
    while (!status && used && parts_left(c) > 0)
        status = use_pattern(c, prices, p, room, room + c->job->kind_count, layout, &used);
    if (p) frame_array_give(&p->chosen);
    frame_give(p);
    return status ? status : pack_rest(c, layout);
}

frame_status frame_sheet_pack_patterns(frame_sheet_search *s, double *prices, int mixed, frame_sheet_layout *layout) {
    const size_t kinds = (size_t)s->job->kind_count, steps = MOST_STEPS + 2;
    cutter c = {.search = s, .job = s->job, .stock = only_sheet(s->job), .columns.item_size = sizeof(column)};
    const frame_sheet_stock *stock = &s->job->stocks[c.stock];
    c.step = step_for(s->job, fmax(stock->width, stock->height) + s->job->kerf);
    c.demand = frame_take_zeroed(3 * kinds, sizeof *c.demand);
    c.best = frame_take_zeroed(steps, sizeof *c.best);
    c.sheet_best = frame_take_zeroed(steps, sizeof *c.sheet_best);
    frame_status status = c.demand && c.best && c.sheet_best ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t k = 0; k < kinds && !status; k++) c.demand[k] = s->job->kinds[k].copies;
    if (!status) status = cut_all(&c, prices, mixed, c.demand + kinds, layout);
    frame_give(c.demand), frame_give(c.best), frame_give(c.sheet_best);
    frame_array_give(&c.columns);
    return status;
}
