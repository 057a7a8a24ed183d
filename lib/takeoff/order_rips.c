/* Boards ripped into strips: for each stock the ways to lay narrower sections side by side on its width. */
#include <math.h>
#include <string.h>

#include "material/lumber.h"
#include "takeoff/order.h"
#include "takeoff_facts.h"

enum { MOST_STRIPS = 8, MOST_WAYS = 40 };

/* A narrower section that is wanted and may be ripped. */
typedef struct strip {
    int32_t group;
    frame_size size;
    double width_in;
} strip;

typedef struct ripping {
    frame_order *order;
    const frame_stock_length *of;
    size_t stock;
    double price, width_in;
    strip strips[16];
    size_t strip_count;
    size_t chosen[MOST_STRIPS];
    size_t chosen_count, ways;
} ripping;

static int wants_rip(const frame_order *order, int32_t group) {
    for (size_t c = 0; c < order->claims.count; c++) {
        const frame_order_claim *claim = &FRAME_ITEM(frame_order_claim, order->claims, c);
        if (claim->group == group && claim->may_rip) return 1;
    }
    return 0;
}

/* Sections of the same thickness and species, the widest first. Grade does not matter: the rip voids it. */
static void find_strips(ripping *of) {
    double thickness, width;
    if (frame_size_dressed(of->of->size, 0, &thickness, &of->width_in)) return;
    for (size_t g = 0; g < of->order->groups.count && of->strip_count < 16; g++) {
        const frame_order_group *group = &FRAME_ITEM(frame_order_group, of->order->groups, g);
        double other;
        if (group->size == FRAME_NOT_GIVEN_INT || group->species != of->of->species) continue;
        if (!wants_rip(of->order, (int32_t)g) || frame_size_dressed(group->size, 0, &other, &width)) continue;
        if (fabs(other - thickness) > 1e-6 || width >= of->width_in - 1e-6) continue;
        size_t at = of->strip_count++;
        for (; at && of->strips[at - 1].width_in < width; at--) of->strips[at] = of->strips[at - 1];
        of->strips[at] = (strip){(int32_t)g, group->size, width};
    }
}

static frame_status keep_way(ripping *of) {
    const frame_stock_plan_in *in = of->order->in;
    const size_t first = of->order->rooms.count;
    double edge = 0;
    frame_status status = FRAME_OK;
    for (size_t s = 0; !status && s < of->chosen_count; s++) {
        const strip *laid = &of->strips[of->chosen[s]];
        const frame_order_room place = {in->end_trim_in, of->of->length_in, laid->width_in, edge,
                                        laid->size,      (int32_t)s};
        const double clear = of->of->length_in - in->end_trim_in + in->kerf_in + 1e-6;
        status = frame_order_add_room(of->order, frame_order_length(clear), laid->group, FRAME_CUT_RIPPED, &place);
        edge += laid->width_in + of->order->rip_kerf_in;
    }
    of->ways++;
    return status ? status : frame_order_add_kind(of->order, of->stock, of->price, first);
}

/* Lays further strips, none wider than the last; a way is kept when no further strip fits beside it. */
static frame_status lay(ripping *of, double left, size_t from) {
    int full = 1;
    for (size_t s = 0; s < of->strip_count; s++) full = full && of->strips[s].width_in > left + 1e-6;
    if (full || of->chosen_count == MOST_STRIPS) return of->chosen_count ? keep_way(of) : FRAME_OK;
    frame_status status = FRAME_OK;
    for (size_t s = from; !status && s < of->strip_count && of->ways < MOST_WAYS; s++) {
        if (of->strips[s].width_in > left + 1e-6) continue;
        of->chosen[of->chosen_count++] = s;
        status = lay(of, left - of->strips[s].width_in - of->order->rip_kerf_in, s);
        of->chosen_count--;
    }
    return status;
}

frame_status frame_order_rips(frame_order *order, size_t stock, const frame_stock_length *of) {
    ripping made = {.order = order, .of = of, .stock = stock, .price = frame_order_price(of)};
    if (of->size == FRAME_NOT_GIVEN_INT || of->length_in <= order->in->end_trim_in) return FRAME_OK;
    find_strips(&made);
    return made.strip_count ? lay(&made, made.width_in, 0) : FRAME_OK;
}
