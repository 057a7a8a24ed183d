/* A floor's pieces as sticks, whether they fit, and its plan. */
#include <math.h>

#include "layout/plan.h"
#include "layout_facts.h"
#include "tape/tape.h"
#include "text/writer.h"

enum { MARKS, HANGERS, PIECES, GANGS };

frame_status frame_floor_stick(const frame_floor *floor, size_t index, frame_stick **stick) {
    if (!floor || !stick) return frame_layout_no_answer();
    return frame_layout_stick(frame_layout_set_of(floor), index, stick);
}

frame_status frame_floor_fit_sized(const frame_floor *floor, frame_fit_out *out, size_t out_size) {
    if (!floor || !out || out_size < 2 * sizeof(uint32_t)) return frame_layout_no_answer();
    return frame_layout_give_fit(frame_layout_set_of(floor), out, out_size);
}

/* Marks along the layout on one tape, at one end of the joists. */
static frame_status measure(const frame_answer *answer, frame_drawing *drawing, int far_end, double x) {
    frame_status status = frame_drawing_mark(drawing, x, 0, NULL);
    double last = 0, far = 0;
    for (size_t i = 0; !status && i < answer->lists[MARKS].count; i++) {
        const frame_floor_mark *mark = &FRAME_ANSWER_ITEM(frame_floor_mark, answer, MARKS, i);
        far = fmax(far, mark->to_in);
        if (!(far_end ? mark->far_end : mark->near_end) || mark->mark_in < last + 1e-6) continue;
        status = frame_drawing_mark(drawing, x, mark->mark_in, NULL);
        last = mark->mark_in;
    }
    if (!status && far > last + 1e-6) status = frame_drawing_mark(drawing, x, far, NULL);
    return status ? status
                  : frame_drawing_dimension_running(drawing, far_end ? FRAME_DIMENSION_RIGHT : FRAME_DIMENSION_LEFT);
}

/* Whether the two ends are marked alike. */
static int ends_alike(const frame_answer *answer) {
    for (size_t i = 0; i < answer->lists[MARKS].count; i++) {
        const frame_floor_mark *mark = &FRAME_ANSWER_ITEM(frame_floor_mark, answer, MARKS, i);
        int found = mark->near_end && mark->far_end;
        for (size_t k = 0; k < answer->lists[MARKS].count && !found; k++) {
            const frame_floor_mark *other = &FRAME_ANSWER_ITEM(frame_floor_mark, answer, MARKS, k);
            found = k != i && fabs(other->mark_in - mark->mark_in) < 1e-6;
        }
        if (!found) return 0;
    }
    return 1;
}

/* Where beams, headers and the far end lie along the joists. */
static frame_status measure_along(const frame_layout_set *set, frame_drawing *drawing, double *span) {
    frame_status status = frame_drawing_mark(drawing, 0, 0, NULL);
    double last = 0, far = 0;
    for (double next = 0; !status; last = next) {
        next = INFINITY;
        for (size_t i = 0; i < set->pieces.count; i++) {
            const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, i);
            far = fmax(far, fmax(piece->start.x, piece->end.x));
            if (piece->kind != FRAME_PIECE_BEAM && piece->kind != FRAME_PIECE_HEADER_JOIST) continue;
            const double face = piece->start.x - piece->thickness / 2;
            if (face > last + 1e-6) next = fmin(next, face);
        }
        if (isinf(next)) break;
        status = frame_drawing_mark(drawing, next, 0, NULL);
    }
    for (size_t i = 0; i < set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, i);
        if (piece->kind == FRAME_PIECE_RIM || piece->kind == FRAME_PIECE_LEDGER)
            far = fmax(far, piece->start.x + piece->thickness / 2);
    }
    if (!status) status = frame_drawing_mark(drawing, far, 0, NULL);
    *span = far;
    return status ? status : frame_drawing_dimension_running(drawing, FRAME_DIMENSION_BELOW);
}

static frame_status label_joists(const frame_layout_set *set, frame_drawing *drawing, frame_text *words) {
    const frame_layout_piece *longest = NULL;
    for (size_t i = 0; i < set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, i);
        if (piece->kind == FRAME_PIECE_JOIST && (!longest || piece->length > longest->length + 1e-9)) longest = piece;
    }
    if (!longest) return FRAME_OK;
    frame_text_clear(words);
    frame_text_addf(words, "%s ", longest->section);
    frame_tape_add(words, longest->length, 16);
    return frame_drawing_label(drawing, (longest->start.x + longest->end.x) / 2, longest->start.y,
                               frame_text_chars(words));
}

static frame_status draw(const frame_floor *floor, frame_drawing *drawing, frame_text *words) {
    const frame_layout_set *set = frame_layout_set_of(floor);
    const frame_answer *answer = (const frame_answer *)(const void *)floor;
    double span = 0;
    frame_status status = frame_drawing_title(drawing, set->name);
    frame_text_addf(words, "%s, in plan", set->name);
    if (!status) status = frame_drawing_view(drawing, frame_text_chars(words));
    for (size_t i = 0; !status && i < set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, i);
        const int under = piece->kind == FRAME_PIECE_BEAM || piece->kind == FRAME_PIECE_POST;
        status = frame_layout_draw_plan(set, piece, drawing, under ? FRAME_PEN_HIDDEN : FRAME_PEN_OUTLINE);
    }
    if (!status) status = label_joists(set, drawing, words);
    if (!status) status = measure(answer, drawing, 0, 0);
    if (!status) status = measure_along(set, drawing, &span);
    if (!status && !ends_alike(answer)) status = measure(answer, drawing, 1, span);
    return status ? status : frame_text_state(words);
}

frame_status frame_floor_drawing(const frame_floor *floor, frame_drawing **given) {
    frame_drawing *drawing = NULL;
    frame_text *words = NULL;
    if (!floor || !given) return frame_layout_no_answer();
    frame_status status = frame_drawing_new(&drawing);
    if (!status) status = frame_text_new(&words);
    if (!status) status = draw(floor, drawing, words);
    frame_text_free(words);
    if (status) {
        frame_drawing_free(drawing);
        return status;
    }
    *given = drawing;
    return FRAME_OK;
}
