/* Buying: the sticks of each section and grade cut from the stock, and the nails counted. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "building/framing.h"
#include "material/lumber.h"

/* Sticks that are bought from one kind of stock, in order: of one size and grade. */
typedef struct group {
    frame_framing_job *job;
    const frame_framing_stick **sticks;
    size_t count;
    frame_stock_piece *pieces;
    size_t piece_count;
    frame_stock_length *stock;
    size_t stock_count;
} group;

static int by_stock(const void *a, const void *b) {
    const frame_framing_stick *const *one = a, *const *two = b;
    if ((*one)->size != (*two)->size) return (*one)->size < (*two)->size ? -1 : 1;
    const int order = strcmp((*one)->grade, (*two)->grade);
    if (order) return order;
    if ((*one)->gang != (*two)->gang) return (*one)->gang < (*two)->gang ? -1 : 1;
    const int part = strcmp((*one)->of, (*two)->of);
    return part ? part : *one < *two ? -1 : 1;
}

static const frame_building_stock *stock_at(const frame_framing_job *job, size_t i) {
    return (const void *)((const char *)job->in->stock + i * job->in->stock->struct_size);
}

/* Pieces alike of one part are one kind. */
static frame_status gather_pieces(group *g) {
    g->pieces = frame_take(sizeof *g->pieces * (g->count + 1));
    if (!g->pieces) return FRAME_NO_MEMORY;
    g->piece_count = 0;
    for (size_t i = 0; i < g->count; i++) {
        const frame_framing_stick *stick = g->sticks[i], *before = i ? g->sticks[i - 1] : NULL;
        if (before && before->gang == stick->gang && !strcmp(before->of, stick->of)) {
            g->pieces[g->piece_count - 1].count += stick->plies;
            continue;
        }
        frame_stock_piece *piece = &g->pieces[g->piece_count++];
        frame_stock_piece_init(piece);
        piece->length_in = stick->length_in;
        piece->count = stick->plies;
        piece->name = frame_framing_text(g->job, "%s, %s", stick->name, stick->of);
        if (!piece->name) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status gather_stock(group *g) {
    g->stock = frame_take(sizeof *g->stock * (g->job->in->stock_count + 1));
    if (!g->stock) return FRAME_NO_MEMORY;
    g->stock_count = 0;
    for (size_t i = 0; i < g->job->in->stock_count; i++) {
        const frame_building_stock *from = stock_at(g->job, i);
        if (from->size != g->sticks[0]->size) continue;
        frame_stock_length *length = &g->stock[g->stock_count++];
        frame_stock_length_init(length);
        length->length_in = from->length_in;
        length->price = from->price;
        length->available = from->available;
    }
    return FRAME_OK;
}

static frame_status list_boards(group *g, const frame_stock_plan *plan) {
    frame_answer *answer = g->job->answer;
    const char *section = frame_framing_text(g->job, "%s %s", g->sticks[0]->section, g->sticks[0]->grade);
    for (size_t i = 0; i < frame_stock_plan_board_count(plan); i++) {
        frame_stock_plan_board from;
        frame_stock_plan_board_at(plan, i, &from);
        frame_framing_board *board = frame_answer_add(answer, FRAME_FRAMING_BOARDS);
        if (!board || !section) return FRAME_NO_MEMORY;
        board->section = section;
        board->length_in = from.length_in;
        board->price = from.price;
        board->offcut_in = from.offcut_in;
        board->cut_first = (uint32_t)answer->lists[FRAME_FRAMING_CUTS].count;
        board->cut_count = from.piece_count;
        for (uint32_t c = 0; c < from.piece_count; c++) {
            frame_stock_plan_piece piece;
            frame_stock_plan_piece_at(plan, from.piece_first + c, &piece);
            frame_framing_cut *cut = frame_answer_add(answer, FRAME_FRAMING_CUTS);
            if (!cut) return FRAME_NO_MEMORY;
            cut->name = frame_answer_text(answer, piece.name);
            cut->length_in = piece.length_in;
            cut->from_in = piece.from_in;
            cut->to_in = piece.to_in;
        }
    }
    return FRAME_OK;
}

static frame_status list_purchases(group *g, const frame_stock_plan *plan) {
    const char *section = frame_framing_text(g->job, "%s %s", g->sticks[0]->section, g->sticks[0]->grade);
    for (size_t s = 0; s < g->stock_count; s++) {
        int32_t count = 0;
        for (size_t i = 0; i < frame_stock_plan_board_count(plan); i++) {
            frame_stock_plan_board board;
            frame_stock_plan_board_at(plan, i, &board);
            if ((size_t)board.stock == s) count++;
        }
        if (!count) continue;
        frame_framing_purchase *line = frame_answer_add(g->job->answer, FRAME_FRAMING_PURCHASES);
        if (!line || !section) return FRAME_NO_MEMORY;
        double thickness, width;
        frame_size_nominal(g->sticks[0]->size, &thickness, &width);
        line->section = section;
        line->length_in = g->stock[s].length_in;
        line->price = g->stock[s].price;
        line->total = count * g->stock[s].price;
        line->board_feet = count * thickness * width / 12 * g->stock[s].length_in / 12;
        line->count = count;
        g->job->out->cost += line->total;
        g->job->out->boards_used += count;
    }
    return FRAME_OK;
}

static frame_status plan_group(group *g) {
    frame_stock_plan_in in;
    frame_stock_plan *plan;
    frame_stock_plan_in_init(&in);
    in.pieces = g->pieces, in.piece_count = g->piece_count;
    in.stock = g->stock, in.stock_count = g->stock_count;
    in.kerf_in = g->job->in->kerf_in;
    frame_status status = frame_stock_plan_solve(&in, &plan, NULL);
    if (status) return status;
    frame_stock_plan_out out;
    frame_stock_plan_result(plan, &out);
    status = list_boards(g, plan);
    if (!status) status = list_purchases(g, plan);
    if (!status) status = frame_framing_notes(g->job, g->job->conditions.name, &out);
    frame_stock_plan_free(plan);
    return status;
}

/* What the stock does not have is told, and the rest is planned. */
static frame_status one_group(group *g) {
    frame_status status = gather_pieces(g);
    if (!status) status = gather_stock(g);
    if (!status && !g->stock_count) {
        const char *text = frame_framing_text(
            g->job, "No stock of %s is given: its pieces are not planned to be bought.", g->sticks[0]->section);
        status = text ? frame_framing_note_add(g->job, FRAME_NOTE_NOT_CHECKED, "buying", text) : FRAME_NO_MEMORY;
    } else if (!status) {
        status = plan_group(g);
        if (status && status != FRAME_NO_MEMORY) {
            const char *text = frame_framing_text(g->job, "%s is not planned to be bought: %.300s",
                                                  g->sticks[0]->section, frame_error_text());
            status = text ? frame_framing_note_add(g->job, FRAME_NOTE_NOT_CHECKED, "buying", text) : FRAME_NO_MEMORY;
        }
    }
    frame_give(g->pieces);
    frame_give(g->stock);
    return status;
}

static frame_status count_nails(frame_framing_job *job) {
    int32_t nails = 0;
    const frame_array *joints = &job->answer->lists[FRAME_FRAMING_JOINTS];
    for (size_t i = 0; i < joints->count; i++) {
        const frame_framing_joint *joint = &FRAME_ITEM(frame_framing_joint, *joints, i);
        if (joint->capacity_lb != FRAME_NOT_GIVEN) nails += joint->count * joint->places;
    }
    if (!nails) return FRAME_OK;
    frame_framing_purchase *line = frame_answer_add(job->answer, FRAME_FRAMING_PURCHASES);
    if (!line) return FRAME_NO_MEMORY;
    line->section = "16d common nails, for the joints listed; 3-1/2 in by 0.162 in";
    line->count = nails;
    return FRAME_OK;
}

frame_status frame_framing_buy(frame_framing_job *job) {
    const frame_array *sticks = &job->answer->lists[FRAME_FRAMING_STICKS];
    frame_status status = count_nails(job);
    if (status || !job->in->stock_count || !sticks->count) return status;
    const frame_framing_stick **order = frame_take(sizeof *order * sticks->count);
    if (!order) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < sticks->count; i++) order[i] = &FRAME_ITEM(frame_framing_stick, *sticks, i);
    qsort(order, sticks->count, sizeof *order, by_stock);
    job->out->cost = 0;
    for (size_t first = 0, next; first < sticks->count && !status; first = next) {
        for (next = first + 1; next < sticks->count && order[next]->size == order[first]->size &&
                               !strcmp(order[next]->grade, order[first]->grade);
             next++) {
        }
        if (order[first]->size == FRAME_NOT_GIVEN_INT) {
            const char *text = frame_framing_text(
                job, "%d pieces of no nominal size are not planned to be bought: the list of sticks has them.",
                (int)(next - first));
            status = text ? frame_framing_note_add(job, FRAME_NOTE_NOT_CHECKED, "buying", text) : FRAME_NO_MEMORY;
            continue;
        }
        group g = {.job = job, .sticks = order + first, .count = next - first};
        status = one_group(&g);
    }
    frame_give(order);
    return status;
}
