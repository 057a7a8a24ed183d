/* A deck's pieces as sticks, whether they fit, and its two plans. */
#include <math.h>

#include "layout/deck.h"
#include "layout/plan.h"
#include "layout_facts.h"
#include "text/writer.h"

frame_status frame_deck_stick(const frame_deck *deck, size_t index, frame_stick **stick) {
    if (!deck || !stick) return frame_layout_no_answer();
    return frame_layout_stick(frame_layout_set_of(deck), index, stick);
}

frame_status frame_deck_fit_sized(const frame_deck *deck, frame_fit_out *out, size_t out_size) {
    if (!deck || !out || out_size < 2 * sizeof(uint32_t)) return frame_layout_no_answer();
    return frame_layout_give_fit(frame_layout_set_of(deck), out, out_size);
}

static int is_board(const frame_layout_piece *piece) {
    return piece->kind == FRAME_PIECE_BOARD || piece->kind == FRAME_PIECE_BORDER;
}

static int is_guard(const frame_layout_piece *piece) {
    return piece->kind == FRAME_PIECE_GUARD_POST || piece->kind == FRAME_PIECE_RAIL;
}

static frame_status draw_pieces(const frame_layout_set *set, frame_drawing *drawing, int boards) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; !status && i < set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, i);
        if (boards ? !is_board(piece) && !is_guard(piece) : is_board(piece) || is_guard(piece)) continue;
        const int under = piece->kind == FRAME_PIECE_BEAM || piece->kind == FRAME_PIECE_POST;
        status = frame_layout_draw_plan(set, piece, drawing, under ? FRAME_PEN_HIDDEN : FRAME_PEN_OUTLINE);
    }
    return status;
}

/* The joists' marks on one tape. */
static frame_status measure_joists(const frame_answer *answer, frame_drawing *drawing) {
    frame_status status = frame_drawing_mark(drawing, 0, 0, NULL);
    double last = 0, far = 0;
    for (size_t i = 0; !status && i < answer->lists[FRAME_DECK_MARKS].count; i++) {
        const frame_deck_mark *mark = &FRAME_ANSWER_ITEM(frame_deck_mark, answer, FRAME_DECK_MARKS, i);
        far = fmax(far, mark->to_in);
        if (!mark->near_end || mark->mark_in < last + 1e-6) continue;
        status = frame_drawing_mark(drawing, 0, mark->mark_in, NULL);
        last = mark->mark_in;
    }
    if (!status && far > last + 1e-6) status = frame_drawing_mark(drawing, 0, far, NULL);
    return status ? status : frame_drawing_dimension_running(drawing, FRAME_DIMENSION_LEFT);
}

/* The beams' middles and the outer edge. */
static frame_status measure_beams(const frame_answer *answer, const frame_layout_set *set, frame_drawing *drawing) {
    frame_status status = frame_drawing_mark(drawing, 0, 0, NULL);
    int32_t beam = 0;
    double far = 0;
    for (size_t i = 0; !status && i < answer->lists[FRAME_DECK_FOOTINGS].count; i++) {
        const frame_deck_footing *footing = &FRAME_ANSWER_ITEM(frame_deck_footing, answer, FRAME_DECK_FOOTINGS, i);
        if (footing->beam != beam) status = frame_drawing_mark(drawing, footing->x_in, 0, NULL);
        beam = footing->beam;
    }
    for (size_t i = 0; i < set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, i);
        if (piece->kind == FRAME_PIECE_RIM) far = fmax(far, piece->start.x + piece->thickness / 2);
    }
    if (!status) status = frame_drawing_mark(drawing, far, 0, NULL);
    return status ? status : frame_drawing_dimension_running(drawing, FRAME_DIMENSION_BELOW);
}

/* The posts' middles along the last beam. */
static frame_status measure_posts(const frame_answer *answer, frame_drawing *drawing) {
    const size_t count = answer->lists[FRAME_DECK_FOOTINGS].count;
    if (count == 0) return FRAME_OK;
    const frame_deck_footing *last = &FRAME_ANSWER_ITEM(frame_deck_footing, answer, FRAME_DECK_FOOTINGS, count - 1);
    frame_status status = frame_drawing_mark(drawing, last->x_in, 0, NULL);
    for (size_t i = 0; !status && i < count; i++) {
        const frame_deck_footing *footing = &FRAME_ANSWER_ITEM(frame_deck_footing, answer, FRAME_DECK_FOOTINGS, i);
        if (footing->beam == last->beam) status = frame_drawing_mark(drawing, footing->x_in, footing->y_in, NULL);
    }
    return status ? status : frame_drawing_dimension_running(drawing, FRAME_DIMENSION_RIGHT);
}

static frame_status draw(const frame_deck *deck, frame_drawing *drawing, frame_text *words) {
    const frame_layout_set *set = frame_layout_set_of(deck);
    const frame_answer *answer = (const frame_answer *)(const void *)deck;
    int boards = 0;
    for (size_t i = 0; i < set->pieces.count; i++) boards |= is_board(FRAME_LAYOUT_PIECE(set, i));
    frame_status status = frame_drawing_title(drawing, set->name);
    frame_text_addf(words, "%s, its frame in plan", set->name);
    if (!status) status = frame_drawing_view(drawing, frame_text_chars(words));
    if (!status) status = draw_pieces(set, drawing, 0);
    if (!status) status = measure_joists(answer, drawing);
    if (!status) status = measure_beams(answer, set, drawing);
    if (!status) status = measure_posts(answer, drawing);
    if (status || !boards) return status;
    frame_text_clear(words);
    frame_text_addf(words, "%s, its boards", set->name);
    status = frame_drawing_view(drawing, frame_text_chars(words));
    if (!status) status = draw_pieces(set, drawing, 1);
    return status ? status : frame_text_state(words);
}

frame_status frame_deck_drawing(const frame_deck *deck, frame_drawing **given) {
    frame_drawing *drawing = NULL;
    frame_text *words = NULL;
    if (!deck || !given) return frame_layout_no_answer();
    frame_status status = frame_drawing_new(&drawing);
    if (!status) status = frame_text_new(&words);
    if (!status) status = draw(deck, drawing, words);
    frame_text_free(words);
    if (status) {
        frame_drawing_free(drawing);
        return status;
    }
    *given = drawing;
    return FRAME_OK;
}
