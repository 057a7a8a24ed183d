/* Packing parts one after the other, in an order given: each onto a sheet that takes it, else onto a new one. */
#include <math.h>

#include "takeoff/sheet_search.h"

enum { MOST_TRIES = 24 };

void frame_sheet_layout_give(frame_sheet_layout *layout) {
    for (size_t b = 0; b < layout->bins.count; b++) frame_sheet_bin_give(&FRAME_ITEM(frame_sheet_bin, layout->bins, b));
    frame_array_give(&layout->bins);
    frame_array_give(&layout->left);
}

static int pair_on_widest(frame_sheet_search *s, int one, int other) {
    const frame_sheet_kind *a = &s->job->kinds[one], *b = &s->job->kinds[other];
    if (a->fat_area + b->fat_area > s->job->stocks[s->widest].fat_area + 1e-6) return 0;
    for (int i = 0; i < a->shape_count; i++)
        for (int k = 0; k < b->shape_count; k++)
            if (frame_sheet_pair_fits(&s->fitter, s->widest, a->first_shape + i, b->first_shape + k)) return 1;
    return 0;
}

int frame_sheet_kinds_pair(frame_sheet_search *s, int one, int other) {
    if (!s->pairs) return 1;
    signed char *known = &s->pairs[(size_t)one * (size_t)s->job->kind_count + (size_t)other];
    if (!*known) {
        *known = pair_on_widest(s, one, other) ? 1 : -1;
        s->pairs[(size_t)other * (size_t)s->job->kind_count + (size_t)one] = *known;
    }
    return *known > 0;
}

/* Whether a part can possibly lie on a sheet beside what is there. */
static int may_hold(frame_sheet_search *s, const frame_sheet_bin *bin, int kind) {
    const frame_sheet_stock *stock = &s->job->stocks[bin->stock];
    if (bin->fat_used + s->job->kinds[kind].fat_area > stock->fat_area + 1e-6) return 0;
    if (stock->width > s->job->stocks[s->widest].width + 1e-9 ||
        stock->height > s->job->stocks[s->widest].height + 1e-9)
        return 1;
    for (int i = 0; i < bin->count; i++)
        if (!frame_sheet_kinds_pair(s, kind, bin->placed[i].kind)) return 0;
    return 1;
}

static int place(frame_sheet_search *s, frame_sheet_bin *bin, int kind, const frame_sheet_rule *rule) {
    if (frame_sheet_is_rectangular(s->job, bin->stock)) return frame_sheet_rect_place(&s->fitter, bin, kind, rule->way);
    const frame_sheet_kind *k = &s->job->kinds[kind];
    frame_sheet_placed best = {.kind = kind, .shape = -1};
    double key = 1e300;
    for (int i = 0; i < k->shape_count; i++) {
        frame_sheet_point at;
        if (frame_sheet_fit(&s->fitter, bin, k->first_shape + i, rule->pull, &at, &key))
            best.shape = k->first_shape + i, best.at = at;
    }
    if (best.shape < 0) return 0;
    if (!frame_sheet_bin_add(bin, s->job, best)) s->fitter.failed = 1;
    return 1;
}

/* How gladly a sheet is filled further: offcuts on hand first, then those with the least room. */
static double gladness(const frame_sheet_search *s, const frame_sheet_bin *bin, const frame_sheet_rule *rule,
                       size_t number) {
    const frame_sheet_stock *stock = &s->job->stocks[bin->stock];
    const double room = rule->first_fit ? (double)number : stock->fat_area - bin->fat_used;
    return stock->offcut >= 0 ? room - 1e12 : room;
}

/* Tries sheets from the gladdest on. */
static int place_in_layout(frame_sheet_search *s, frame_sheet_layout *layout, int kind, const frame_sheet_rule *rule) {
    double last = -1e300;
    size_t last_bin = 0;
    for (int tries = 0; tries < MOST_TRIES; tries++) {
        size_t best = layout->bins.count;
        double least = 1e300;
        for (size_t b = 0; b < layout->bins.count; b++) {
            const frame_sheet_bin *bin = &FRAME_ITEM(frame_sheet_bin, layout->bins, b);
            const double glad = gladness(s, bin, rule, b);
            if (glad >= least || glad < last || (glad == last && b <= last_bin)) continue;
            if (may_hold(s, bin, kind)) least = glad, best = b;
        }
        if (best == layout->bins.count) return 0;
        if (place(s, &FRAME_ITEM(frame_sheet_bin, layout->bins, best), kind, rule)) return 1;
        last = least, last_bin = best;
    }
    return 0;
}

static int place_on_newest(frame_sheet_search *s, frame_sheet_layout *layout, int kind, const frame_sheet_rule *rule) {
    if (!layout->bins.count) return 0;
    frame_sheet_bin *bin = &FRAME_ITEM(frame_sheet_bin, layout->bins, layout->bins.count - 1);
    return may_hold(s, bin, kind) && place(s, bin, kind, rule);
}

static double dearness(const frame_sheet_stock *stock, const frame_sheet_rule *rule) {
    if (stock->offcut >= 0) return -1e12 + stock->price * 1e6 + stock->area; /* small ones first */
    return rule->cheapest ? stock->price + stock->area * 1e-9 : stock->price / stock->area - stock->area * 1e-12;
}

/* Opens a new sheet for a part: the best stock that is left and takes it; a rule may pass over some. */
static frame_status open_for(frame_sheet_search *s, frame_sheet_layout *layout, int kind, const frame_sheet_rule *rule,
                             int *placed) {
    double last = -1e300;
    int skip = rule->choice, last_stock = -1;
    frame_sheet_bin kept = {.stock = -1};
    *placed = 0;
    for (;;) {
        int best = -1;
        double least = 1e300;
        for (int i = 0; i < s->job->stock_count; i++) {
            const frame_sheet_stock *stock = &s->job->stocks[i];
            const double dear = dearness(stock, rule);
            if (s->used[i] >= stock->available || dear >= least || dear < last || (dear == last && i <= last_stock))
                continue;
            least = dear, best = i;
        }
        if (best < 0) break;
        last = least, last_stock = best;
        frame_sheet_bin bin = {.stock = best};
        if (!place(s, &bin, kind, rule)) {
            frame_sheet_bin_give(&bin);
            continue;
        }
        frame_sheet_bin_give(&kept);
        kept = bin;
        if (s->job->stocks[best].offcut >= 0 || !skip--) break;
    }
    if (kept.stock < 0) return FRAME_OK;
    if (!frame_array_push(&layout->bins, &kept)) {
        frame_sheet_bin_give(&kept);
        return FRAME_NO_MEMORY;
    }
    s->used[kept.stock]++;
    *placed = 1;
    return FRAME_OK;
}

frame_status frame_sheet_pack(frame_sheet_search *s, const int *kinds, int count, const frame_sheet_rule *rule,
                              frame_sheet_layout *layout) {
    int barren = -1; /* a kind that found no room: the next of it need look at the newest sheet only */
    for (int i = 0; i < count; i++) {
        int placed = kinds[i] == barren ? place_on_newest(s, layout, kinds[i], rule)
                                        : place_in_layout(s, layout, kinds[i], rule);
        if (!placed) barren = kinds[i];
        if (!placed && open_for(s, layout, kinds[i], rule, &placed)) return FRAME_NO_MEMORY;
        if (!placed && !frame_array_push(&layout->left, &kinds[i])) return FRAME_NO_MEMORY;
        if (s->fitter.failed) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

frame_sheet_worth frame_sheet_worth_of(const frame_sheet_job *job, const frame_sheet_layout *layout) {
    frame_sheet_worth worth = {0};
    for (size_t i = 0; i < layout->left.count; i++) worth.left += job->kinds[FRAME_ITEM(int, layout->left, i)].area;
    for (size_t b = 0; b < layout->bins.count; b++) {
        const frame_sheet_bin *bin = &FRAME_ITEM(frame_sheet_bin, layout->bins, b);
        const frame_sheet_stock *stock = &job->stocks[bin->stock];
        worth.cost += stock->price;
        worth.sheets += stock->sheet >= 0;
        if (stock->offcut >= 0) worth.on_hand += bin->used;
        worth.dense += bin->used * bin->used;
    }
    return worth;
}

int frame_sheet_better(const frame_sheet_worth *one, const frame_sheet_worth *other) {
    if (fabs(one->left - other->left) > 1e-9) return one->left < other->left;
    if (fabs(one->cost - other->cost) > 1e-9) return one->cost < other->cost;
    if (one->sheets != other->sheets) return one->sheets < other->sheets;
    if (fabs(one->on_hand - other->on_hand) > 1e-6) return one->on_hand > other->on_hand;
    return one->dense >= other->dense;
}
