/* The cutting plan: the order made a job of whole numbers, searched component by component, written out. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "takeoff/boards.h"
#include "takeoff/component.h"
#include "takeoff/simple.h"
#include "takeoff/stock_answer.h"
#include "takeoff/stock_room.h"
#include "takeoff_facts.h"
#include "working/calculation.h"

enum { MOST_STOCK = 1000 };
/* What a search takes without a time limit: some seconds. */
static const double MOST_STEPS = 3e9;

typedef struct solving {
    frame_order order;
    frame_cut_plan plan;
    frame_effort effort;
    int64_t bound; /* in the smallest unit of money */
    int proven, spare;
} solving;

static frame_status not_enough(const solving *of, const frame_boards *boards, const frame_component *component) {
    const frame_relaxed *relaxed = &boards->relaxed;
    size_t worst = 0;
    double most = -1;
    for (size_t i = 0; i < component->job.item_count; i++) {
        const double missing = frame_linear_level(&relaxed->linear, (int32_t)i);
        if (missing > most) worst = i, most = missing;
    }
    const int32_t item = (int32_t)FRAME_ITEM(uint32_t, component->item_of, worst);
    for (size_t c = 0; c < of->order.claims.count; c++) {
        const frame_order_claim *claim = &FRAME_ITEM(frame_order_claim, of->order.claims, c);
        if (claim->item != item) continue;
        frame_stock_piece piece;
        char length[32];
        frame_stock_piece_item(of->order.in->pieces, (size_t)claim->piece, &piece);
        frame_number_print(claim->length_in, 10, length, sizeof length);
        return frame_fail(
            FRAME_IMPOSSIBLE, "stock", "", "more boards available",
            "stock: the boards available do not suffice for all pieces; short of %s (pieces[%d], %s in) among others",
            piece.name ? piece.name : "a piece", (int)claim->piece, length);
    }
    return FRAME_INTERNAL;
}

static frame_status search(solving *of, frame_component *component) {
    frame_boards boards;
    int impossible = 0;
    frame_status status = frame_boards_begin(&boards, &component->job, &of->effort);
    boards.money = of->order.money;
    boards.cost_before = frame_order_money(&of->order, &of->plan);
    boards.bound_before = (double)of->bound / of->order.money;
    if (!status) status = frame_cut_simplest(&component->job, &boards.best);
    if (!status) status = frame_boards_search(&boards, &impossible);
    if (!status && impossible) status = not_enough(of, &boards, component);
    if (!status && !boards.best.found)
        status = frame_fail(FRAME_IMPOSSIBLE, "stock", "", "more boards available",
                            "stock: no plan was found that makes do with the boards available");
    if (!status) status = frame_component_add(component, &of->order.job, &boards.best, &of->plan);
    of->bound += boards.bound / of->order.job.money_unit;
    of->proven = of->proven && boards.proven;
    frame_boards_give(&boards);
    return status;
}

/* Each component may take its share of what effort is left. */
static frame_status search_all(solving *of) {
    const frame_cut_job *job = &of->order.job;
    const frame_stock_plan_in *in = of->order.in;
    int32_t *component_of = frame_take((size_t)job->group_count * sizeof *component_of);
    if (!component_of) return FRAME_NO_MEMORY;
    const int32_t count = frame_component_count(job, component_of);
    frame_status status = FRAME_OK;
    of->proven = 1;
    frame_effort_begin(&of->effort, in->time_limit_s, MOST_STEPS);
    of->effort.watch = in->watch;
    for (int32_t c = 0; !status && c < count; c++) {
        frame_component component;
        frame_effort_share(&of->effort, count - c);
        status = frame_component_take(&component, job, component_of, c);
        if (!status) status = search(of, &component);
        frame_component_give(&component);
    }
    frame_give(component_of);
    return status;
}

static frame_status plan_simply(solving *of) {
    const frame_status status = frame_cut_simple(&of->order.job, of->order.in->method, &of->plan);
    if (status || of->plan.found) return status;
    return frame_fail(FRAME_IMPOSSIBLE, "method", frame_word_text("stock_method", of->order.in->method),
                      "a method that may choose between stock lengths",
                      "method: the boards this method may take do not suffice for all pieces");
}

static frame_status compare(const solving *of, frame_stock_plan_out *out) {
    double *const costs[] = {&out->first_fit_cost, &out->one_length_cost, &out->by_value_cost};
    static const frame_stock_method methods[] = {FRAME_STOCK_METHOD_LONGEST, FRAME_STOCK_METHOD_ONE_LENGTH,
                                                 FRAME_STOCK_METHOD_BY_VALUE};
    frame_cut_plan plan;
    frame_status status = FRAME_OK;
    frame_cut_plan_begin(&plan);
    for (size_t m = 0; !status && m < 3; m++) {
        status = frame_cut_simple(&of->order.job, methods[m], &plan);
        if (!status && plan.found) *costs[m] = frame_order_money(&of->order, &plan);
    }
    frame_cut_plan_give(&plan);
    return status;
}

static frame_stock_end end_of(const solving *of) {
    if (of->order.in->method != FRAME_STOCK_METHOD_LEAST_COST) return FRAME_STOCK_END_SIMPLE;
    if (of->proven) return FRAME_STOCK_END_PROVEN;
    if (of->effort.cancelled) return FRAME_STOCK_END_CANCELLED;
    return of->order.in->time_limit_s == FRAME_NOT_GIVEN ? FRAME_STOCK_END_EFFORT : FRAME_STOCK_END_TIME;
}

static void judge(const solving *of, frame_stock_plan_out *out) {
    out->optimal = of->proven;
    out->ended = end_of(of);
    out->bound = of->proven ? out->net_cost : fmin((double)of->bound / of->order.money, out->net_cost);
    out->gap_share = out->net_cost > 0 ? (out->net_cost - out->bound) / out->net_cost : 0;
    if (!out->optimal) out->cautions |= FRAME_BIT(FRAME_STOCK_CAUTION_NOT_PROVEN);
}

static void record(const frame_stock_plan_in *in, const frame_stock_plan_out *out, frame_working *w) {
    FRAME_HEADING(w, "Cutting plan");
    FRAME_GIVEN(w, n, (double)out->pieces_cut, "", "pieces");
    FRAME_GIVEN(w, kerf, in->kerf_in, "in", "kerf");
    FRAME_GIVEN(w, L_pieces, out->piece_length_in, "in", "length of all pieces");
    FRAME_GIVEN(w, L_stock, out->stock_length_in, "in", "length of all boards");
    FRAME_STEP(w, rest, L_stock - L_pieces, "in", "offcuts and what the saw turned to dust", "arithmetic");
    FRAME_GIVEN(w, price, out->cost, "", "price of the boards of this plan");
    FRAME_GIVEN(w, splices, out->splice_price, "", "price of the splices");
    FRAME_GIVEN(w, offcuts, out->offcut_price, "", "worth of the offcuts that are kept");
    FRAME_STEP(w, cost, price + splices - offcuts, "", "net cost: what the plan makes least", "arithmetic");
    FRAME_GIVEN(w, bound, out->bound, "",
                "no plan costs less: plans that cut boards in fractions, and whole boards counted");
    FRAME_STEP(w, gap, cost - bound, "", "what a better plan could save at most", "arithmetic");
    (void)n, (void)kerf, (void)rest, (void)gap;
}

static frame_status solve_with(solving *of, frame_answer *answer, frame_stock_plan_out *out, frame_working *w) {
    frame_status status = of->order.in->method == FRAME_STOCK_METHOD_LEAST_COST ? search_all(of) : plan_simply(of);
    if (!status) status = frame_cut_plan_merge(&of->plan, &of->order.job);
    if (!status) status = frame_stock_answer(&of->order, &of->plan, answer);
    if (!status) status = compare(of, out);
    if (status) return status;
    frame_stock_answer_figures(&of->order, &of->plan, answer, out);
    judge(of, out);
    if (w) record(of->order.in, out, w);
    return FRAME_OK;
}

/* The list of stock with the rows of the room behind it. */
static frame_status join_stock(frame_stock_plan_in *in, frame_stock_length **joined) {
    const size_t rows = in->room ? in->room->rows.count : 0, count = in->stock_count + rows;
    if (!count)
        return frame_fail(FRAME_REQUIRED, "stock", "", "a list of stock lengths, or a room with something in it",
                          "stock: not given, and no room with anything in it");
    if (count > MOST_STOCK)
        return frame_fail_number(FRAME_TOO_LARGE, "stock", (double)count, "1..1000 kinds of stock with the room's");
    *joined = frame_take(count * sizeof **joined);
    if (!*joined) return FRAME_NO_MEMORY;
    for (size_t s = 0; s < in->stock_count; s++) frame_stock_length_item(in->stock, s, &(*joined)[s]);
    for (size_t r = 0; r < rows; r++)
        (*joined)[in->stock_count + r] = FRAME_ITEM(frame_stock_length, in->room->rows, r);
    in->stock = *joined;
    in->stock_count = count;
    return FRAME_OK;
}

static frame_status solve(const frame_stock_plan_in *in, frame_answer *answer, frame_stock_plan_out *out,
                          frame_working *w) {
    solving of;
    frame_stock_plan_in from = *in;
    frame_stock_length *joined = NULL;
    memset(&of, 0, sizeof of);
    frame_cut_plan_begin(&of.plan);
    frame_status status = join_stock(&from, &joined);
    if (!status) status = frame_order_make(&of.order, &from);
    if (!status) status = solve_with(&of, answer, out, w);
    frame_give(joined);
    frame_cut_plan_give(&of.plan);
    frame_order_give(&of.order);
    return status;
}

FRAME_IMPLEMENT_ANSWER(stock_plan, solve);
