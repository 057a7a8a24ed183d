/* The cutting plan: the order made a job of whole numbers, searched component by component, written out. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "takeoff/boards.h"
#include "takeoff/component.h"
#include "takeoff/sharing_match.h"
#include "takeoff/simple.h"
#include "takeoff/stock_answer.h"
#include "takeoff/stock_room.h"
#include "takeoff_facts.h"
#include "working/calculation.h"

enum { MOST_STOCK = 1000, SEARCHES = 5 };
/* What a search takes without a time limit: some seconds. */
static const double MOST_STEPS = 3e9;

typedef struct solving {
    frame_order order;
    frame_cut_plan plan;
    frame_effort effort;
    int64_t bound; /* in the smallest unit of money */
    int proven;
    int fewest;       /* not 0: of plans as cheap, none has fewer boards */
    int full_lengths; /* not 0: no search counted on shared cuts, though they might save something */
    double lowest;    /* no plan costs less, cuts shared or not; FRAME_NOT_GIVEN when the search itself says */
    double limit_s;   /* of this search; FRAME_NOT_GIVEN without one */
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
    of->fewest = of->fewest && boards.fewest;
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
    of->proven = of->fewest = 1;
    frame_effort_begin(&of->effort, of->limit_s, of->order.share > 0 ? MOST_STEPS / (SEARCHES - 1) : MOST_STEPS);
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
    if (of->order.in->share_cuts && !of->effort.over) return FRAME_STOCK_END_SHARING;
    return of->order.in->time_limit_s == FRAME_NOT_GIVEN ? FRAME_STOCK_END_EFFORT : FRAME_STOCK_END_TIME;
}

/* With shared cuts a plan is proven when it costs no more than the bound of the pieces made less by all they could
 * save.
 */
static void judge_shared(solving *of, const frame_stock_plan_out *out) {
    if (of->lowest == FRAME_NOT_GIVEN) return;
    of->proven = out->net_cost <= of->lowest + 1e-6;
    of->bound = (int64_t)floor(of->lowest * of->order.money + 1e-6);
}

static void judge(solving *of, frame_stock_plan_out *out) {
    judge_shared(of, out);
    out->optimal = of->proven;
    out->fewest_boards = of->proven && of->fewest && !of->order.in->share_cuts;
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

static frame_status find(solving *of) {
    frame_status status = of->order.in->method == FRAME_STOCK_METHOD_LEAST_COST ? search_all(of) : plan_simply(of);
    return status ? status : frame_cut_plan_merge(&of->plan, &of->order.job);
}

static void solving_begin(solving *of, double limit_s) {
    memset(of, 0, sizeof *of);
    of->lowest = FRAME_NOT_GIVEN;
    of->limit_s = limit_s;
    frame_cut_plan_begin(&of->plan);
}

static void solving_give(solving *of) {
    frame_cut_plan_give(&of->plan);
    frame_order_give(&of->order);
}

/* What a plan costs as it is laid out; *fits is 0 when a board does not hold its pieces. */
static frame_status lay_out(const solving *of, const frame_answer *answer, double *cost, int *fits) {
    frame_answer *laid = frame_answer_new(answer->calculation);
    frame_stock_plan_out figures;
    memset(&figures, 0, sizeof figures);
    if (!laid) return FRAME_NO_MEMORY;
    const frame_status status = frame_stock_answer(&of->order, &of->plan, laid, fits);
    if (!status) frame_stock_answer_figures(&of->order, &of->plan, laid, &figures);
    *cost = figures.net_cost;
    frame_answer_free(laid);
    return status;
}

/* The same, with like pieces laid with like where the plan as it is holds not all of them. */
static frame_status lay_out_matched(solving *of, const frame_answer *answer, double *cost, int *fits) {
    frame_status status = lay_out(of, answer, cost, fits);
    if (status || *fits) return status;
    status = frame_share_match(&of->order.job, &of->plan);
    return status ? status : lay_out(of, answer, cost, fits);
}

/* A search that counts on a share of what shared cuts could save at most: its plan takes the place of the best so far
 * when its boards hold their pieces all the same, for less. */
static frame_status try_share(solving *best, const frame_stock_plan_in *in, const frame_answer *answer, double share,
                              double limit_s, double *cost) {
    solving tried;
    double costs = 0;
    int fits = 0;
    solving_begin(&tried, limit_s);
    frame_status status = frame_order_make(&tried.order, in, share);
    if (!status) status = find(&tried);
    const int none = status == FRAME_IMPOSSIBLE;
    if (!status) status = lay_out_matched(&tried, answer, &costs, &fits);
    if (!status && share == 1)
        best->lowest =
            tried.proven ? frame_order_money(&tried.order, &tried.plan) : (double)tried.bound / tried.order.money;
    tried.lowest = best->lowest;
    best->effort.over |= tried.effort.over;
    best->effort.cancelled |= tried.effort.cancelled;
    if (!status && fits && costs < *cost - 1e-6) {
        const solving before = *best;
        tried.effort = best->effort;
        tried.limit_s = best->limit_s;
        *best = tried, tried = before;
        *cost = costs;
    }
    solving_give(&tried);
    return none ? FRAME_OK : status;
}

/* The plan on full lengths is safe, and has had all the time it would have had without sharing, so asking to share
 * never makes a plan dearer; those that count on shared cuts have what time it left, and are cheaper when they can be
 * laid so. What they count on at first is all that could be saved, which gives the bound too; then what chains of four,
 * three and two pieces save. */
static frame_status share_cuts(solving *best, const frame_stock_plan_in *in, const frame_answer *answer) {
    static const double shares[SEARCHES - 1] = {1, 3.0 / 4, 2.0 / 3, 1.0 / 2};
    double cost = 0;
    int fits = 0;
    best->lowest = 0;
    frame_status status = lay_out(best, answer, &cost, &fits);
    best->full_lengths = cost > 1e-6; /* nothing can be saved of nothing */
    for (size_t s = 0; !status && s < SEARCHES - 1 && !best->effort.cancelled && cost > best->lowest + 1e-6; s++) {
        const double left_s = frame_effort_left(&best->effort);
        const int limited = left_s != FRAME_NOT_GIVEN;
        if (limited && left_s <= 0) {
            best->effort.over = 1;
            break;
        }
        best->full_lengths = 0;
        status = try_share(best, in, answer, shares[s], limited ? left_s / (double)(SEARCHES - 1 - s) : left_s, &cost);
    }
    return status;
}

static frame_status write_out(solving *of, frame_answer *answer, frame_stock_plan_out *out, frame_working *w) {
    int fits = 0;
    const frame_status status = frame_stock_answer(&of->order, &of->plan, answer, &fits);
    if (status) return status;
    if (!fits) return FRAME_INTERNAL;
    frame_stock_answer_figures(&of->order, &of->plan, answer, out);
    judge(of, out);
    if (of->full_lengths) out->not_checked |= FRAME_BIT(FRAME_STOCK_UNCHECKED_ENDS);
    if (w) record(of->order.in, out, w);
    return FRAME_OK;
}

static frame_status solve_with(solving *of, frame_answer *answer, frame_stock_plan_out *out, frame_working *w) {
    const frame_stock_plan_in *in = of->order.in;
    frame_status status = find(of);
    of->full_lengths = in->share_cuts == 1;
    if (!status) status = compare(of, out);
    if (!status && in->share_cuts && in->method == FRAME_STOCK_METHOD_LEAST_COST) status = share_cuts(of, in, answer);
    return status ? status : write_out(of, answer, out, w);
}

/* The list of stock with the rows of the room behind it. */
static frame_status join_stock(frame_stock_plan_in *in, frame_stock_length **joined) {
    const size_t rows = in->room ? in->room->rows.count : 0;
    size_t count = in->stock_count;
    for (size_t r = 0; r < rows; r++)
        count += frame_room_what_of(&FRAME_ITEM(frame_room_row, in->room->rows, r)) == FRAME_ROOM_STICK;
    if (!count)
        return frame_fail(FRAME_REQUIRED, "stock", "", "a list of stock lengths, or a room with sticks in it",
                          "stock: not given, and no room with a stick in it");
    if (count > MOST_STOCK)
        return frame_fail_number(FRAME_TOO_LARGE, "stock", (double)count, "1..1000 kinds of stock with the room's");
    *joined = frame_take(count * sizeof **joined);
    if (!*joined) return FRAME_NO_MEMORY;
    size_t at = 0;
    for (; at < in->stock_count; at++) frame_stock_length_item(in->stock, at, &(*joined)[at]);
    for (size_t r = 0; r < rows; r++) {
        const frame_room_row *row = &FRAME_ITEM(frame_room_row, in->room->rows, r);
        if (frame_room_what_of(row) == FRAME_ROOM_STICK) (*joined)[at++] = row->of;
    }
    in->stock = *joined;
    in->stock_count = count;
    return FRAME_OK;
}

static frame_status solve(const frame_stock_plan_in *in, frame_answer *answer, frame_stock_plan_out *out,
                          frame_working *w) {
    solving of;
    frame_stock_plan_in from = *in;
    frame_stock_length *joined = NULL;
    solving_begin(&of, from.time_limit_s);
    frame_status status = join_stock(&from, &joined);
    if (!status) status = frame_order_make(&of.order, &from, 0);
    if (!status) status = solve_with(&of, answer, out, w);
    frame_give(joined);
    solving_give(&of);
    return status;
}

FRAME_IMPLEMENT_ANSWER(stock_plan, solve);
