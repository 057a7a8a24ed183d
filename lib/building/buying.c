/* Buying: the members gathered by section, species and grade, each group cut from the stock of its section. */
#include <string.h>

#include "base/error.h"
#include "building/job.h"
#include "building_facts.h"
#include "text/writer.h"

typedef struct group {
    frame_array pieces; /* frame_stock_piece */
    frame_array stock;  /* frame_stock_length */
    const char *section, *grade;
    frame_size size;
    int32_t spare;
} group;

static int same_group(const group *one, const frame_building_member *member) {
    return one->size == member->size && !strcmp(one->grade, member->grade);
}

static frame_status gather(const frame_job *job, size_t first, group *into) {
    const frame_array *members = &job->answer->lists[FRAME_BUILDING_MEMBERS];
    for (size_t i = first; i < members->count; i++) {
        const frame_building_member *member = &FRAME_ITEM(frame_building_member, *members, i);
        frame_stock_piece piece;
        if (!same_group(into, member)) continue;
        frame_stock_piece_init(&piece);
        piece.length_in = member->length_in;
        piece.count = member->count;
        piece.name = member->name;
        if (!frame_array_push(&into->pieces, &piece)) return FRAME_NO_MEMORY;
    }
    for (size_t i = 0; i < job->in->stock_count; i++) {
        frame_building_stock stock;
        frame_stock_length length;
        frame_building_stock_item(job->in->stock, i, &stock);
        if (stock.size != into->size) continue;
        frame_stock_length_init(&length);
        length.length_in = stock.length_in;
        length.price = stock.price;
        length.available = stock.available;
        if (!frame_array_push(&into->stock, &length)) return FRAME_NO_MEMORY;
    }
    if (into->stock.count) return FRAME_OK;
    return frame_fail(FRAME_IMPOSSIBLE, "stock", into->section, "a stock of every size that is needed",
                      "stock: no %s is in the stock, but pieces are to be cut from it", into->section);
}

static frame_status plan(const frame_job *job, const group *of, frame_stock_plan **made) {
    frame_stock_plan_in in;
    frame_stock_plan_in_init(&in);
    in.pieces = of->pieces.items;
    in.piece_count = of->pieces.count;
    in.stock = of->stock.items;
    in.stock_count = of->stock.count;
    in.kerf_in = job->in->kerf_in;
    return frame_stock_plan_solve(&in, made, NULL);
}

static const char *section_text(frame_job *job, const group *of) {
    frame_text_clear(job->text);
    frame_text_addf(job->text, "%s %s", of->section, of->grade);
    return frame_answer_text(job->answer, frame_text_chars(job->text));
}

static double board_feet(const group *of, double length_in) {
    const double thickness = of->size / 65536 / 16.0, width = of->size % 65536 / 16.0; /* nominal */
    return thickness * width * length_in / 144;
}

static frame_status write_boards(frame_job *job, const frame_stock_plan *made, const char *section) {
    for (size_t b = 0; b < frame_stock_plan_board_count(made); b++) {
        frame_stock_plan_board from;
        frame_stock_plan_board_at(made, b, &from);
        frame_building_board *board = frame_answer_add(job->answer, FRAME_BUILDING_BOARDS);
        if (!board) return FRAME_NO_MEMORY;
        board->section = section;
        board->length_in = from.length_in;
        board->price = from.price;
        board->offcut_in = from.offcut_in;
        board->cut_first = (uint32_t)job->answer->lists[FRAME_BUILDING_CUTS].count;
        board->cut_count = from.piece_count;
        for (uint32_t c = 0; c < from.piece_count; c++) {
            frame_stock_plan_piece piece;
            frame_stock_plan_piece_at(made, from.piece_first + c, &piece);
            frame_building_cut *cut = frame_answer_add(job->answer, FRAME_BUILDING_CUTS);
            if (!cut) return FRAME_NO_MEMORY;
            cut->name = frame_answer_text(job->answer, piece.name);
            cut->length_in = piece.length_in;
            cut->from_in = piece.from_in;
            cut->to_in = piece.to_in;
        }
    }
    return FRAME_OK;
}

static frame_status write_purchases(frame_job *job, const group *of, const frame_stock_plan *made,
                                    const char *section) {
    for (size_t s = 0; s < of->stock.count; s++) {
        const frame_stock_length *stock = &FRAME_ITEM(frame_stock_length, of->stock, s);
        int32_t count = 0;
        for (size_t b = 0; b < frame_stock_plan_board_count(made); b++) {
            frame_stock_plan_board board;
            frame_stock_plan_board_at(made, b, &board);
            count += board.stock == (int32_t)s;
        }
        if (!count) continue;
        frame_building_purchase *line = frame_answer_add(job->answer, FRAME_BUILDING_PURCHASES);
        if (!line) return FRAME_NO_MEMORY;
        line->section = section;
        line->length_in = stock->length_in;
        line->price = stock->price;
        line->count = count;
        line->total = count * stock->price;
        line->board_feet = count * board_feet(of, stock->length_in);
        job->out->board_feet += line->board_feet;
    }
    return FRAME_OK;
}

static frame_status buy_group(frame_job *job, group *of, size_t first) {
    frame_stock_plan *made;
    frame_stock_plan_out figures;
    frame_status status = gather(job, first, of);
    if (!status) status = plan(job, of, &made);
    if (status) return status;
    const char *section = section_text(job, of);
    status = section ? frame_stock_plan_result(made, &figures) : FRAME_NO_MEMORY;
    if (!status) status = write_boards(job, made, section);
    if (!status) status = write_purchases(job, of, made, section);
    if (!status) status = frame_job_notes(job, section, &figures);
    frame_stock_plan_free(made);
    if (status) return status;
    job->out->cost += figures.cost;
    job->out->boards_used += figures.boards_used;
    return FRAME_OK;
}

/* Board feet of the members themselves, where nothing is bought. */
static void measure(frame_job *job) {
    const frame_array *members = &job->answer->lists[FRAME_BUILDING_MEMBERS];
    for (size_t i = 0; i < members->count; i++) {
        const frame_building_member *member = &FRAME_ITEM(frame_building_member, *members, i);
        const group of = {.size = member->size};
        job->out->board_feet += member->count * board_feet(&of, member->length_in);
    }
}

frame_status frame_job_buying(frame_job *job) {
    const frame_array *members = &job->answer->lists[FRAME_BUILDING_MEMBERS];
    job->out->board_feet = 0;
    if (!job->in->stock_count) {
        measure(job);
        return FRAME_OK;
    }
    job->out->cost = 0;
    job->out->boards_used = 0;
    for (size_t i = 0; i < members->count; i++) {
        const frame_building_member *member = &FRAME_ITEM(frame_building_member, *members, i);
        group of = {.pieces = {.item_size = sizeof(frame_stock_piece)},
                    .stock = {.item_size = sizeof(frame_stock_length)},
                    .section = member->section,
                    .grade = member->grade,
                    .size = member->size};
        int begun = 0;
        for (size_t before = 0; before < i && !begun; before++)
            begun = same_group(&of, &FRAME_ITEM(frame_building_member, *members, before));
        if (begun) continue;
        const frame_status status = buy_group(job, &of, i);
        frame_array_give(&of.pieces);
        frame_array_give(&of.stock);
        if (status) return status;
    }
    return FRAME_OK;
}
