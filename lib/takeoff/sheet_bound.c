/* Bounds: by area, by dual feasible functions of area, and by parts that cannot share a sheet. All hold for every
 * layout with the parts a kerf apart: a convex part grown by half a kerf takes its area, half a kerf along its edges
 * and a full circle at its corners from the sheet grown alike. */
#include "takeoff/sheet_bound.h"

#include <math.h>
#include <stdlib.h>

#define SLACK 1e-7

typedef struct stock_order {
    double value;
    int stock, spare;
} stock_order;

static int smaller_value(const void *a, const void *b) {
    const stock_order *one = a, *two = b;
    if (one->value != two->value) return one->value < two->value ? -1 : 1;
    return one->stock - two->stock;
}

static double total_area(const frame_sheet_job *job) {
    double total = 0;
    for (int i = 0; i < job->item_count; i++) total += job->kinds[job->items[i]].fat_area;
    return total * (1 - 1e-9);
}

static double on_hand_area(const frame_sheet_job *job) {
    double area = 0;
    for (int i = 0; i < job->stock_count; i++)
        if (job->stocks[i].offcut >= 0) area += job->stocks[i].fat_area * (double)job->stocks[i].available;
    return area;
}

/* The least sheets, then the least money, that have the parts' area: by parts of sheets. */
static int sheets_by_area(const frame_sheet_job *job, stock_order *order) {
    double left = total_area(job) - on_hand_area(job);
    int count = 0, sheets = 0;
    for (int i = 0; i < job->stock_count; i++)
        if (job->stocks[i].sheet >= 0) order[count++] = (stock_order){-job->stocks[i].fat_area, i, 0};
    qsort(order, (size_t)count, sizeof *order, smaller_value);
    for (int i = 0; i < count && left > SLACK; i++) {
        const frame_sheet_stock *stock = &job->stocks[order[i].stock];
        const double wanted = ceil(left / stock->fat_area - SLACK);
        const double taken = fmin(wanted, (double)stock->available);
        sheets += (int)fmin(taken, 1e9);
        left -= taken * stock->fat_area;
    }
    return sheets;
}

static double cost_by_area(const frame_sheet_job *job, stock_order *order) {
    double left = total_area(job), cost = 0;
    for (int i = 0; i < job->stock_count; i++)
        order[i] = (stock_order){job->stocks[i].price / job->stocks[i].fat_area, i, 0};
    qsort(order, (size_t)job->stock_count, sizeof *order, smaller_value);
    for (int i = 0; i < job->stock_count && left > 0; i++) {
        const frame_sheet_stock *stock = &job->stocks[order[i].stock];
        const double taken = fmin(left / stock->fat_area, (double)stock->available);
        cost += taken * stock->price;
        left -= taken * stock->fat_area;
    }
    return cost * (1 - 1e-12);
}

/* Parts of more than 1 - q of a sheet each take one; those of q to a half share the rest (Martello and Toth's bound).
 */
static int sheets_by_halves(const frame_sheet_job *job, double whole) {
    double best = 0;
    for (int t = 0; t <= job->kind_count; t++) {
        const double q = t < job->kind_count ? job->kinds[t].fat_area : 0;
        if (q > whole / 2) continue;
        double alone = 0, half = 0, half_room = 0, rest = 0;
        for (int i = 0; i < job->kind_count; i++) {
            const double area = job->kinds[i].fat_area, copies = job->kinds[i].copies;
            if (area > whole - q + SLACK)
                alone += copies;
            else if (area > whole / 2 + SLACK)
                half += copies, half_room += copies * (whole - area);
            else if (area >= q)
                rest += copies * area;
        }
        best = fmax(best, alone + half + fmax(0, ceil((rest - half_room) / whole - SLACK)));
    }
    return (int)fmin(best, 1e9);
}

/* -- parts that cannot share a sheet -- */

/* Kinds of a clique: no two parts of it can lie on one sheet. */
typedef struct clique {
    int *kinds;
    int count, spare;
} clique;

static int conflicts_with_all(frame_sheet_search *s, const clique *c, int kind) {
    for (int i = 0; i < c->count; i++)
        if (frame_sheet_kinds_pair(s, c->kinds[i], kind)) return 0;
    return s->job->kinds[kind].copies == 1 || !frame_sheet_kinds_pair(s, kind, kind);
}

static int is_in(const clique *c, int kind) {
    for (int i = 0; i < c->count; i++)
        if (c->kinds[i] == kind) return 1;
    return 0;
}

/* What can lie beside one part of the clique: no more than the room it leaves, nor than there is that fits with it. */
static double room_beside(frame_sheet_search *s, const clique *c, int kind, double whole) {
    double others = 0;
    const double room = whole - s->job->kinds[kind].fat_area;
    for (int i = 0; i < s->job->kind_count && others < room; i++)
        if (!is_in(c, i) && s->job->kinds[i].fat_area <= room + SLACK && frame_sheet_kinds_pair(s, kind, i))
            others += s->job->kinds[i].fat_area * s->job->kinds[i].copies;
    return fmin(room, others);
}

static double sheets_of_clique(frame_sheet_search *s, const clique *c, double whole) {
    double parts = 0, others = 0, room = 0;
    for (int i = 0; i < s->job->kind_count; i++)
        if (!is_in(c, i)) others += s->job->kinds[i].fat_area * s->job->kinds[i].copies;
    for (int i = 0; i < c->count; i++) {
        const int copies = s->job->kinds[c->kinds[i]].copies;
        parts += copies;
        room += copies * room_beside(s, c, c->kinds[i], whole);
    }
    return parts + fmax(0, ceil((others - room) / whole - SLACK));
}

/* Cliques grown from each kind on, the largest parts first; every beginning of one is a clique too. */
static int sheets_by_conflict(frame_sheet_search *s, double whole, int *room) {
    const frame_sheet_job *job = s->job;
    clique c = {.kinds = room};
    double best = 0;
    for (int first = 0; first < job->kind_count && first < 40; first++) {
        int last = -1;
        c.count = 0;
        for (int i = 0; i < job->item_count; i++) {
            const int kind = job->items[i];
            if (kind == last) continue;
            last = kind;
            if ((c.count || kind == job->items[0] || first == 0 || kind == first) && conflicts_with_all(s, &c, kind)) {
                if (!c.count && first && kind != first) continue;
                c.kinds[c.count++] = kind;
                best = fmax(best, sheets_of_clique(s, &c, whole));
            }
        }
    }
    return (int)fmin(best, 1e9);
}

static frame_status bound_sheets(frame_sheet_search *s, frame_sheet_bounds *b, stock_order *order) {
    const frame_sheet_job *job = s->job;
    b->by_area = sheets_by_area(job, order);
    b->by_halves = b->by_conflict = b->by_dual = 0;
    if (on_hand_area(job) == 0) {
        double whole = 0, wide = 0, high = 0;
        for (int i = 0; i < job->stock_count; i++) {
            if (job->stocks[i].sheet < 0) continue;
            whole = fmax(whole, job->stocks[i].fat_area);
            wide = fmax(wide, job->stocks[i].width), high = fmax(high, job->stocks[i].height);
        }
        const frame_sheet_stock *widest = &job->stocks[s->widest];
        b->by_halves = sheets_by_halves(job, whole);
        int *room = frame_take_zeroed((size_t)job->kind_count + 1, sizeof *room);
        if (!room) return FRAME_NO_MEMORY;
        if (s->pairs && job->kind_count <= 300 && widest->width >= wide && widest->height >= high)
            b->by_conflict = sheets_by_conflict(s, whole, room);
        frame_give(room);
        if (frame_sheet_bound_rectangles(job, wide, high, &b->by_dual)) return FRAME_NO_MEMORY;
    }
    b->sheets = b->by_area;
    if (b->by_halves > b->sheets) b->sheets = b->by_halves;
    if (b->by_conflict > b->sheets) b->sheets = b->by_conflict;
    if (b->by_dual > b->sheets) b->sheets = b->by_dual;
    return s->fitter.failed ? FRAME_NO_MEMORY : FRAME_OK;
}

frame_status frame_sheet_bounds_of(frame_sheet_search *s, frame_sheet_bounds *b) {
    const frame_sheet_job *job = s->job;
    stock_order *order = frame_take_zeroed((size_t)job->stock_count, sizeof *order);
    if (!order) return FRAME_NO_MEMORY;
    const frame_status status = bound_sheets(s, b, order);
    double cheapest = 1e300;
    for (int i = 0; i < job->stock_count; i++)
        if (job->stocks[i].sheet >= 0) cheapest = fmin(cheapest, job->stocks[i].price);
    b->cost = cost_by_area(job, order);
    if (b->sheets > 0 && cheapest < 1e300) b->cost = fmax(b->cost, b->sheets * cheapest);
    frame_give(order);
    return status;
}
