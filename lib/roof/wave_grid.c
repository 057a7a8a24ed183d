/* Where to look for what runs into what. With few vertices everything is compared with everything. With many, the plan
 * is laid out in square cells for a stretch of height so short that most things stay near their cell; in each cell
 * stand the edges and the reflex vertices that pass through it within that stretch. Then everything is looked at again.
 */
#include <math.h>

#include "roof/wave.h"

typedef struct entry {
    int32_t vertex, next;
} entry;

struct wave_grid {
    double x, y, cell;
    int32_t columns, rows, query;
    int32_t *edges, *reflex; /* of each cell the first entry; -1: none */
    frame_array entries;
    frame_array asked; /* int32_t: of each vertex the last query that has met it */
};

enum { FEW_PAIRS = 4096, MOST_TRIES = 8, MOST_HALVINGS = 5, SPREAD = 16, CROWDED = 24 };

void wave_grid_give(wave_grid *grid) {
    if (!grid) return;
    frame_give(grid->edges);
    frame_array_give(&grid->entries);
    frame_array_give(&grid->asked);
    frame_give(grid);
}

/* -- the cells something passes through -- */

typedef struct span {
    double low, high;
} span;

/* fmin and fmax are calls, for the sake of what is no number; here all are. */
static inline double lesser(double a, double b) {
    return a < b ? a : b;
}
static inline double greater(double a, double b) {
    return a > b ? a : b;
}

/* The part of a line between two points that lies between two heights of the page adds to a span of x. */
static void widen(span *x, const double a[2], const double b[2], double low, double high) {
    const double *from = a[1] <= b[1] ? a : b, *to = a[1] <= b[1] ? b : a;
    if (from[1] > high || to[1] < low) return;
    const double rise = to[1] - from[1], run = to[0] - from[0];
    const double start = from[1] < low ? from[0] + run * ((low - from[1]) / rise) : from[0];
    const double stop = to[1] > high ? from[0] + run * ((high - from[1]) / rise) : to[0];
    x->low = lesser(x->low, lesser(start, stop));
    x->high = greater(x->high, greater(start, stop));
}

static int32_t within(double place, int32_t count) {
    return place < 0 ? 0 : place >= count ? count - 1 : (int32_t)place;
}

typedef void cell_visit(wave *w, int32_t vertex, int32_t cell);

/* Visits every cell that the hull of some points meets. */
static void visit_cells(wave *w, double points[][2], int count, int32_t vertex, cell_visit *visit) {
    const wave_grid *g = w->grid;
    double low = points[0][1], high = points[0][1];
    for (int i = 1; i < count; i++) low = lesser(low, points[i][1]), high = greater(high, points[i][1]);
    const int32_t first = within((low - g->y) / g->cell, g->rows), last = within((high - g->y) / g->cell, g->rows);
    for (int32_t row = first; row <= last; row++) {
        const double from = row == 0 ? -HUGE_VAL : g->y + row * g->cell;
        const double to = row == g->rows - 1 ? HUGE_VAL : g->y + (row + 1) * g->cell;
        span x = {HUGE_VAL, -HUGE_VAL};
        for (int i = 0; i < count; i++)
            for (int k = i + 1; k < count; k++) widen(&x, points[i], points[k], from, to);
        if (x.low > x.high) continue;
        const int32_t left = within((x.low - g->x) / g->cell, g->columns);
        const int32_t right = within((x.high - g->x) / g->cell, g->columns);
        for (int32_t column = left; column <= right; column++) visit(w, vertex, row * g->columns + column);
    }
}

static void ends_of(const wave *w, int32_t vertex, double points[2][2]) {
    const wave_vertex *v = WAVE_VERTEX(w, vertex);
    points[0][0] = wave_x(v, w->z), points[0][1] = wave_y(v, w->z);
    points[1][0] = wave_x(v, w->horizon), points[1][1] = wave_y(v, w->horizon);
}

static void visit_edge(wave *w, int32_t from, cell_visit *visit) {
    double points[4][2];
    ends_of(w, from, points);
    ends_of(w, WAVE_VERTEX(w, from)->next, points + 2);
    visit_cells(w, points, 4, from, visit);
}

static void visit_way(wave *w, int32_t vertex, cell_visit *visit) {
    double points[2][2];
    ends_of(w, vertex, points);
    visit_cells(w, points, 2, vertex, visit);
}

/* -- what stands in the cells -- */

static void enter(wave *w, int32_t *first, int32_t vertex) {
    const entry new = {vertex, *first};
    *first = (int32_t)w->grid->entries.count;
    if (!frame_array_push(&w->grid->entries, &new)) w->failed = FRAME_NO_MEMORY;
}

static void enter_edge(wave *w, int32_t from, int32_t cell) {
    enter(w, &w->grid->edges[cell], from);
}
static void enter_way(wave *w, int32_t vertex, int32_t cell) {
    enter(w, &w->grid->reflex[cell], vertex);
}

/* Whether a query meets a living vertex for the first time. */
static int is_new(wave *w, int32_t vertex) {
    int32_t *asked = &WAVE_INDEX(w->grid->asked, vertex);
    if (*asked == w->grid->query || WAVE_VERTEX(w, vertex)->end >= 0) return 0;
    *asked = w->grid->query;
    return 1;
}

static void meet_edges(wave *w, int32_t vertex, int32_t cell) {
    for (int32_t i = w->grid->edges[cell]; i >= 0 && !w->failed;) {
        const entry at = FRAME_ITEM(entry, w->grid->entries, i);
        if (is_new(w, at.vertex)) wave_expect_hit(w, vertex, at.vertex);
        i = at.next;
    }
}

static void meet_ways(wave *w, int32_t from, int32_t cell) {
    for (int32_t i = w->grid->reflex[cell]; i >= 0 && !w->failed;) {
        const entry at = FRAME_ITEM(entry, w->grid->entries, i);
        if (is_new(w, at.vertex) && WAVE_VERTEX(w, at.vertex)->reflex >= 0) wave_expect_hit(w, at.vertex, from);
        i = at.next;
    }
}

/* Begins a query: no vertex has been met yet. */
static void ask(wave *w) {
    static const int32_t never = 0;
    w->grid->query++;
    while (w->grid->asked.count < w->vertices.count && !w->failed)
        if (!frame_array_push(&w->grid->asked, &never)) w->failed = FRAME_NO_MEMORY;
}

static void ask_edge(wave *w, int32_t from) {
    ask(w);
    if (w->failed) return;
    visit_edge(w, from, enter_edge);
    visit_edge(w, from, meet_ways);
}

static void ask_way(wave *w, int32_t vertex) {
    ask(w);
    if (w->failed) return;
    visit_way(w, vertex, enter_way);
    visit_way(w, vertex, meet_edges);
}

static void compare_all(wave *w, int32_t vertex) {
    for (size_t i = 0; i < w->living.count && !w->failed; i++) wave_expect_hit(w, vertex, WAVE_INDEX(w->living, i));
}

void wave_look_around(wave *w, int32_t vertex) {
    const int32_t prev = WAVE_VERTEX(w, vertex)->prev;
    if (!w->ready) return; /* the first look finds everything */
    if (w->grid) {
        ask_edge(w, vertex);
        ask_edge(w, prev);
        if (WAVE_VERTEX(w, vertex)->reflex >= 0) ask_way(w, vertex);
        return;
    }
    for (size_t i = 0; i < w->reflex.count && !w->failed; i++) {
        wave_expect_hit(w, WAVE_INDEX(w->reflex, i), vertex);
        wave_expect_hit(w, WAVE_INDEX(w->reflex, i), prev);
    }
    if (WAVE_VERTEX(w, vertex)->reflex >= 0) compare_all(w, vertex);
}

/* -- a new stretch -- */

typedef struct extent {
    span x, y;
    double speed; /* of the edges, on average */
} extent;

static extent measure(const wave *w) {
    extent of = {{HUGE_VAL, -HUGE_VAL}, {HUGE_VAL, -HUGE_VAL}, 0};
    for (size_t i = 0; i < w->living.count; i++) {
        const wave_vertex *v = WAVE_VERTEX(w, WAVE_INDEX(w->living, i));
        const double x = wave_x(v, w->z), y = wave_y(v, w->z);
        of.x.low = fmin(of.x.low, x), of.x.high = fmax(of.x.high, x);
        of.y.low = fmin(of.y.low, y), of.y.high = fmax(of.y.high, y);
        of.speed += WAVE_EDGE(w, v->right)->speed / (double)w->living.count;
    }
    return of;
}

static wave_grid *lay_out(const extent *of, double cell) {
    const double wide = of->x.high - of->x.low, deep = of->y.high - of->y.low;
    wave_grid *g = frame_take_zeroed(1, sizeof *g);
    if (!g) return NULL;
    g->x = of->x.low, g->y = of->y.low;
    g->cell = cell;
    g->columns = (int32_t)(wide / g->cell) + 1, g->rows = (int32_t)(deep / g->cell) + 1;
    g->entries.item_size = sizeof(entry);
    g->asked.item_size = sizeof(int32_t);
    const size_t cells = (size_t)g->columns * (size_t)g->rows;
    g->edges = frame_take(2 * cells * sizeof *g->edges);
    if (!g->edges) {
        frame_give(g);
        return NULL;
    }
    g->reflex = g->edges + cells;
    for (size_t i = 0; i < 2 * cells; i++) g->edges[i] = -1;
    return g;
}

static double count_pairs(const wave_grid *g) {
    double pairs = 0;
    for (int32_t cell = 0; cell < g->columns * g->rows; cell++) {
        double edges = 0, reflex = 0;
        for (int32_t i = g->reflex[cell]; i >= 0; i = FRAME_ITEM(entry, g->entries, i).next) reflex++;
        for (int32_t i = g->edges[cell]; reflex > 0 && i >= 0; i = FRAME_ITEM(entry, g->entries, i).next) edges++;
        pairs += edges * reflex;
    }
    return pairs;
}

typedef enum fit { FITS, TOO_LONG, TOO_COARSE } fit;

/* Lays the grid out for a stretch of height. Too long is one in which things move over many cells; too coarse are cells
 * in which too many meet. */
static fit try_cells(wave *w, const extent *of, double cell, size_t most) {
    const size_t living = w->living.count;
    wave_grid_give(w->grid);
    w->grid = lay_out(of, cell);
    if (!w->grid) {
        w->failed = FRAME_NO_MEMORY;
        return FITS;
    }
    const frame_array *entries = &w->grid->entries;
    w->horizon = w->z + w->stretch;
    for (size_t i = 0; i < living && !w->failed; i++) {
        visit_edge(w, WAVE_INDEX(w->living, i), enter_edge);
        if (entries->count > most) return TOO_LONG;
    }
    for (size_t i = 0; i < w->reflex.count && !w->failed; i++) visit_way(w, WAVE_INDEX(w->reflex, i), enter_way);
    return count_pairs(w->grid) > CROWDED * (double)living ? TOO_COARSE : FITS;
}

/* Begins with cells so large that there is one for each vertex, halved as often as it took the last time, and with
 * twice the last stretch. */
static void find_cells(wave *w) {
    const extent of = measure(w);
    const double wide = of.x.high - of.x.low, deep = of.y.high - of.y.low;
    double cell = fmax(sqrt(wide * deep / (double)w->living.count), (wide + deep) / 1000) / (1 << w->halvings);
    w->stretch = w->stretch > 0 ? 2 * w->stretch : cell / of.speed / 8;
    for (int i = 0; i <= MOST_TRIES; i++) {
        const fit found = try_cells(w, &of, cell, i < MOST_TRIES ? SPREAD * w->living.count : SIZE_MAX);
        if (w->failed || found == FITS || i == MOST_TRIES) return;
        w->stretch /= found == TOO_LONG ? 4 : 2;
        if (found == TOO_COARSE && w->halvings < MOST_HALVINGS) w->halvings++, cell /= 2;
        if (found == TOO_LONG && i % 4 == 3 && w->halvings > 0) w->halvings--, cell *= 2;
    }
}

static void compare_cells(wave *w) {
    for (size_t i = 0; i < w->reflex.count && !w->failed; i++) {
        ask(w);
        if (!w->failed) visit_way(w, WAVE_INDEX(w->reflex, i), meet_edges);
    }
}

void wave_look_again(wave *w) {
    w->ready = 1;
    if (w->reflex.count * w->living.count <= FEW_PAIRS) {
        wave_grid_give(w->grid);
        w->grid = NULL;
        w->horizon = HUGE_VAL;
        for (size_t i = 0; i < w->reflex.count && !w->failed; i++) compare_all(w, WAVE_INDEX(w->reflex, i));
        return;
    }
    find_cells(w);
    if (w->failed) return;
    compare_cells(w);
    const wave_event again = {w->horizon, WAVE_LOOK, 0, 0, 0};
    wave_push(w, &again);
}
