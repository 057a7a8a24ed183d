/* Quick ways of packing sticks. Lengths are compared with a millionth of an inch of grace, so that eight 12 in blocks
 * of a 96 in board without kerf do fit. */
#include "takeoff/packing.h"

#include <math.h>
#include <string.h>

static const double grace = 1e-6;

frame_status frame_packing_new(frame_packing *packing, const frame_packing_job *job) {
    memset(packing, 0, sizeof *packing);
    packing->boards.item_size = sizeof(frame_packing_board);
    packing->board_of = frame_take(job->piece_count * sizeof *packing->board_of);
    return packing->board_of ? FRAME_OK : FRAME_NO_MEMORY;
}

void frame_packing_give(frame_packing *packing) {
    frame_give(packing->board_of);
    packing->board_of = NULL;
    frame_array_give(&packing->boards);
}

static void reset(frame_packing *packing, const frame_packing_job *job) {
    packing->boards.count = 0;
    packing->cost = 0;
    packing->found = 0;
    for (size_t i = 0; i < job->piece_count; i++) packing->board_of[i] = -1;
}

static int fits(const frame_packing_job *job, double used, double length, size_t stock) {
    return used + length <= job->stock[stock].length + grace;
}

static int64_t count_of(const frame_packing *packing, int32_t stock) {
    int64_t count = 0;
    for (size_t i = 0; i < packing->boards.count; i++)
        count += FRAME_ITEM(frame_packing_board, packing->boards, i).stock == stock;
    return count;
}

static int left(const frame_packing_job *job, const frame_packing *packing, size_t stock) {
    return count_of(packing, (int32_t)stock) < job->stock[stock].available;
}

/* The cheapest kind that holds so much and is not used up; the kind already in use counts as there. -1: none. */
static int32_t cheapest(const frame_packing_job *job, const frame_packing *packing, double used, int32_t in_use) {
    int32_t best = -1;
    for (size_t s = 0; s < job->stock_count; s++) {
        if (!fits(job, 0, used, s) || ((int32_t)s != in_use && !left(job, packing, s))) continue;
        if (best < 0 || job->stock[s].price < job->stock[best].price ||
            (job->stock[s].price == job->stock[best].price && job->stock[s].length < job->stock[best].length))
            best = (int32_t)s;
    }
    return best;
}

/* Each board becomes the cheapest kind that holds what lies on it. */
static void exchange(const frame_packing_job *job, frame_packing *packing) {
    packing->cost = 0;
    for (size_t b = 0; b < packing->boards.count; b++) {
        frame_packing_board *board = &FRAME_ITEM(frame_packing_board, packing->boards, b);
        board->stock = cheapest(job, packing, board->used - job->kerf, board->stock);
        packing->cost += job->stock[board->stock].price;
    }
}

static int32_t open_board(const frame_packing_job *job, frame_packing *packing, int32_t stock) {
    (void)job;
    const frame_packing_board board = {stock, 0, 0};
    return frame_array_push(&packing->boards, &board) ? (int32_t)packing->boards.count - 1 : -1;
}

static int32_t new_stock(const frame_packing_job *job, const frame_packing *packing, double length, size_t kind,
                         int strict) {
    if (fits(job, 0, length, kind) && left(job, packing, kind)) return (int32_t)kind;
    return strict ? -1 : cheapest(job, packing, length, -1);
}

frame_status frame_pack_first_fit(const frame_packing_job *job, size_t kind, int strict, frame_packing *packing) {
    reset(packing, job);
    for (size_t i = 0; i < job->piece_count; i++) {
        int32_t place = -1;
        for (size_t b = 0; b < packing->boards.count && place < 0; b++) {
            const frame_packing_board *board = &FRAME_ITEM(frame_packing_board, packing->boards, b);
            if (fits(job, board->used, job->lengths[i], (size_t)board->stock)) place = (int32_t)b;
        }
        if (place < 0) {
            const int32_t stock = new_stock(job, packing, job->lengths[i], kind, strict);
            if (stock < 0) return FRAME_OK; /* not found */
            place = open_board(job, packing, stock);
            if (place < 0) return FRAME_NO_MEMORY;
        }
        packing->board_of[i] = place;
        FRAME_ITEM(frame_packing_board, packing->boards, place).used += job->lengths[i] + job->kerf;
    }
    packing->found = 1;
    if (strict)
        packing->cost = (double)packing->boards.count * job->stock[kind].price;
    else
        exchange(job, packing);
    return FRAME_OK;
}

/* How much of a kind the pieces not yet placed fill, longest first; marks them with a board when it is not -1. */
static double fill(const frame_packing_job *job, frame_packing *packing, size_t stock, int32_t board) {
    double used = 0, length = 0;
    for (size_t i = 0; i < job->piece_count; i++) {
        if (packing->board_of[i] >= 0 || !fits(job, used, job->lengths[i], stock)) continue;
        used += job->lengths[i] + job->kerf;
        length += job->lengths[i];
        if (board >= 0) packing->board_of[i] = board;
    }
    if (board >= 0) FRAME_ITEM(frame_packing_board, packing->boards, board).used = used;
    return length;
}

frame_status frame_pack_by_value(const frame_packing_job *job, frame_packing *packing) {
    reset(packing, job);
    for (size_t placed = 0; placed < job->piece_count;) {
        int32_t best = -1;
        double best_value = 0;
        for (size_t s = 0; s < job->stock_count; s++) {
            const double length = left(job, packing, s) ? fill(job, packing, s, -1) : 0;
            if (length <= 0) continue;
            const double value = job->stock[s].price / length;
            if (best < 0 || value < best_value) best = (int32_t)s, best_value = value;
        }
        if (best < 0) return FRAME_OK; /* not found */
        const int32_t board = open_board(job, packing, best);
        if (board < 0) return FRAME_NO_MEMORY;
        fill(job, packing, (size_t)best, board);
        placed = 0;
        for (size_t i = 0; i < job->piece_count; i++) placed += packing->board_of[i] >= 0;
    }
    packing->found = 1;
    exchange(job, packing);
    return FRAME_OK;
}

/* A piece and a kerf take their share of (board and kerf) whatever else is on the board, so each costs at least its
 * share of the kind that is cheapest by length among those that hold it. With one kind only, whole boards are bought.
 */
double frame_packing_bound(const frame_packing_job *job) {
    double bound = 0, share = 0;
    for (size_t i = 0; i < job->piece_count; i++) {
        double least = INFINITY;
        for (size_t s = 0; s < job->stock_count; s++)
            if (job->stock[s].available > 0 && fits(job, 0, job->lengths[i], s))
                least = fmin(least, job->stock[s].price / (job->stock[s].length + job->kerf));
        bound += least * (job->lengths[i] + job->kerf);
        share += (job->lengths[i] + job->kerf) / (job->stock[0].length + job->kerf);
    }
    if (job->stock_count == 1) bound = ceil(share - 1e-9) * job->stock[0].price;
    return bound;
}
