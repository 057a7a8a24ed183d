/* A pipe, duct or vent through a frame: which members it meets, what the code says of each, and where it would meet
 * none. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "layout/box_out.h"
#include "layout_facts.h"

struct frame_passage {
    frame_passage_out out;
    frame_array meets;     /* frame_passage_meet */
    frame_array cut;       /* size_t: pieces that would have to be cut */
    frame_answer texts;    /* keeps the texts of both lists */
    frame_layout_set made; /* the box-out's pieces */
    frame_array of;        /* int32_t: what each of them is cut from */
};

static const char *const axis_names[3] = {"x_in", "y_in", "z_in"};

static frame_status take_place(const frame_passage_in *in, frame_passage_box *box) {
    const double at[3] = {in->x_in, in->y_in, in->z_in},
                 other = in->height_in == FRAME_NOT_GIVEN ? in->width_in : in->height_in;
    box->way = (int)in->way - 1;
    box->round = in->height_in == FRAME_NOT_GIVEN;
    box->size = fmax(in->width_in, other) + 2 * in->room_in;
    for (int a = 0; a < 3; a++) {
        if (a == box->way) continue;
        if (at[a] == FRAME_NOT_GIVEN)
            return frame_fail(FRAME_REQUIRED, axis_names[a], "", "the middle of the passage",
                              "%s: not given; this way the passage needs it", axis_names[a]);
        /* The side that lies level is the first of the two axes across; of one that goes up, along x. */
        const int level = box->way == 2 ? a == 0 : a != 2;
        box->at[a] = at[a];
        box->half[a] = (level ? in->width_in : other) / 2 + in->room_in;
    }
    return FRAME_OK;
}

static frame_status add_meet(frame_passage *passage, const frame_layout_set *set, size_t index,
                             const frame_passage_verdict *v) {
    const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, index);
    frame_passage_meet *meet = frame_array_push(&passage->meets, NULL);
    if (!meet) return FRAME_NO_MEMORY;
    frame_struct_blank(&frame_passage_meet_facts, meet);
    meet->piece = (int32_t)index;
    meet->kind = piece->kind;
    meet->verdict = v->verdict;
    meet->name = frame_answer_text(&passage->texts, piece->name);
    meet->reason = frame_answer_text(&passage->texts, v->reason);
    meet->needs = frame_answer_text(&passage->texts, v->needs);
    meet->overlap_in3 = v->overlap;
    meet->limit_in = v->limit;
    if (v->verdict > passage->out.verdict) passage->out.verdict = v->verdict;
    if (v->known > passage->out.known) passage->out.known = v->known;
    passage->out.box_out |= v->cuts_off;
    if (v->cuts_off && !frame_array_push(&passage->cut, &index)) return FRAME_NO_MEMORY;
    return passage->texts.failed ? FRAME_NO_MEMORY : FRAME_OK;
}

static frame_status judge_all(const frame_layout_set *set, const frame_passage_in *in, frame_passage_box *box,
                              frame_passage *passage) {
    frame_stick *pipe = NULL;
    frame_status status = frame_passage_pipe(set, box, &pipe);
    for (size_t i = 0; !status && i < set->pieces.count; i++) {
        frame_passage_verdict v;
        if (!frame_passage_near(FRAME_LAYOUT_PIECE(set, i), box)) continue;
        status = frame_passage_share(set, i, pipe, &v.overlap);
        if (status || v.overlap < 1e-6) continue;
        status = frame_passage_judge(FRAME_LAYOUT_PIECE(set, i), in, box, &v);
        if (!status) status = add_meet(passage, set, i, &v);
    }
    frame_stick_free(pipe);
    return status;
}

/* A block or the like where a piece of the box-out goes is met too. */
static frame_status note_in_way(const frame_layout_set *set, const frame_box_out *box, frame_passage *passage) {
    static const frame_passage_verdict idle = {
        FRAME_CODE_ALLOWED,
        FRAME_KNOWN_READ,
        "A piece of the box-out goes where it is; it carries nothing but itself: cut it as the work asks.",
        "",
        0,
        FRAME_NOT_GIVEN,
        0};
    for (size_t i = 0; i < box->in_way.count; i++) {
        const size_t index = FRAME_ITEM(size_t, box->in_way, i);
        int met = 0;
        for (size_t k = 0; k < passage->meets.count; k++)
            met |= FRAME_ITEM(frame_passage_meet, passage->meets, k).piece == (int32_t)index;
        const frame_status status = met ? FRAME_OK : add_meet(passage, set, index, &idle);
        if (status) return status;
    }
    return FRAME_OK;
}

static frame_status box_out(const frame_layout_set *set, const frame_passage_in *in, const frame_passage_box *box,
                            frame_passage *passage) {
    frame_box_out made;
    memset(&made, 0, sizeof made);
    passage->made = (frame_layout_set){.answer = &passage->texts, .name = "box-out"};
    passage->made.pieces.item_size = sizeof(frame_layout_piece);
    passage->made.cuts.item_size = sizeof(frame_layout_cut);
    if (!passage->cut.count) return FRAME_OK;
    made.set = set;
    made.in = in;
    made.box = box;
    made.all = &passage->cut;
    made.of = &passage->of;
    made.made = &passage->made;
    frame_status status = frame_box_out_make(&made);
    if (!status) status = note_in_way(set, &made, passage);
    passage->out.cautions |= made.cautions;
    passage->out.box_out_pieces = (int32_t)passage->made.pieces.count;
    passage->out.cut_total = (int32_t)made.done.count;
    frame_box_out_give(&made);
    return status;
}

static frame_status sum_up(const frame_layout_set *set, const frame_passage_in *in, const frame_passage_box *box,
                           frame_passage *passage) {
    frame_passage_out *out = &passage->out;
    double *const clear[3] = {&out->clear_x_in, &out->clear_y_in, &out->clear_z_in};
    for (int a = 0; a < 3; a++) {
        const frame_status status = a == box->way ? FRAME_OK : frame_passage_clear(set, box, a, clear[a]);
        if (status) return status;
    }
    const int level = box->way == 0 ? 1 : 0, other = box->way == 2 ? 1 : 2;
    out->opening_low_in = box->at[level] - box->half[level];
    out->opening_high_in = box->at[level] + box->half[level];
    out->opening_from_in = box->at[other] - box->half[other];
    out->opening_to_in = box->at[other] + box->half[other];
    out->meet_total = (int32_t)passage->meets.count;
    out->cautions |= FRAME_BIT(FRAME_PASSAGE_CAUTION_LOCAL) | FRAME_BIT(FRAME_PASSAGE_CAUTION_FIRE);
    if (out->meet_total) out->cautions |= FRAME_BIT(FRAME_PASSAGE_CAUTION_OTHERS);
    if (out->box_out)
        out->cautions |= FRAME_BIT(in->bearing ? FRAME_PASSAGE_CAUTION_SHORE : FRAME_PASSAGE_CAUTION_IDLE);
    out->not_checked = FRAME_BIT(FRAME_PASSAGE_UNCHECKED_TRADE);
    if (out->meet_total) out->not_checked |= FRAME_BIT(FRAME_PASSAGE_UNCHECKED_STRENGTH);
    return FRAME_OK;
}

frame_status frame_passage_make(const frame_layout_set *set, const frame_passage_in *given, frame_passage **made) {
    frame_passage_in in;
    frame_passage_box box;
    uint64_t assumed = 0;
    memset(&box, 0, sizeof box);
    if (!set || !made) return frame_layout_no_answer();
    frame_status status = frame_passage_in_read(given, &in, &assumed);
    if (!status) status = take_place(&in, &box);
    if (status) return status;
    frame_passage *passage = frame_take_zeroed(1, sizeof *passage);
    if (!passage) return FRAME_NO_MEMORY;
    passage->meets.item_size = sizeof(frame_passage_meet);
    passage->out = frame_passage_out_blank;
    passage->out.assumed = assumed;
    passage->out.verdict = FRAME_CODE_ALLOWED;
    passage->out.known = FRAME_KNOWN_READ;
    passage->out.box_out = passage->out.box_out_pieces = passage->out.cut_total = 0;
    passage->out.cautions = 0;
    passage->cut.item_size = sizeof(size_t);
    passage->of.item_size = sizeof(int32_t);
    status = judge_all(set, &in, &box, passage);
    if (!status) status = box_out(set, &in, &box, passage);
    if (!status) status = sum_up(set, &in, &box, passage);
    if (status) {
        frame_passage_free(passage);
        return status;
    }
    *made = passage;
    return FRAME_OK;
}

frame_status frame_wall_passage(const frame_wall *wall, const frame_passage_in *in, frame_passage **passage) {
    return frame_passage_make(wall ? frame_layout_set_of(wall) : NULL, in, passage);
}

frame_status frame_floor_passage(const frame_floor *floor, const frame_passage_in *in, frame_passage **passage) {
    return frame_passage_make(floor ? frame_layout_set_of(floor) : NULL, in, passage);
}

frame_status frame_deck_passage(const frame_deck *deck, const frame_passage_in *in, frame_passage **passage) {
    return frame_passage_make(deck ? frame_layout_set_of(deck) : NULL, in, passage);
}

void frame_passage_free(frame_passage *passage) {
    if (!passage) return;
    frame_array_give(&passage->meets);
    frame_array_give(&passage->cut);
    frame_array_give(&passage->of);
    frame_array_give(&passage->made.pieces);
    frame_array_give(&passage->made.cuts);
    frame_arena_give(&passage->texts.arena);
    frame_give(passage);
}

frame_status frame_passage_result_sized(const frame_passage *passage, frame_passage_out *out, size_t out_size) {
    if (!passage || !out || out_size < 2 * sizeof(uint32_t)) return frame_layout_no_answer();
    frame_struct_give(&frame_passage_out_facts, &passage->out, out, out_size);
    return FRAME_OK;
}

size_t frame_passage_meet_count(const frame_passage *passage) {
    return passage ? passage->meets.count : 0;
}

frame_status frame_passage_meet_at_sized(const frame_passage *passage, size_t index, frame_passage_meet *item,
                                         size_t item_size) {
    if (!passage || !item) return frame_layout_no_answer();
    if (index >= passage->meets.count) return frame_layout_no_item(index, passage->meets.count);
    frame_struct_give(&frame_passage_meet_facts, &FRAME_ITEM(frame_passage_meet, passage->meets, index), item,
                      item_size);
    return FRAME_OK;
}

size_t frame_passage_piece_count(const frame_passage *passage) {
    return passage ? passage->made.pieces.count : 0;
}

frame_status frame_passage_piece_at_sized(const frame_passage *passage, size_t index, frame_passage_piece *item,
                                          size_t item_size) {
    frame_passage_piece told;
    if (!passage || !item) return frame_layout_no_answer();
    if (index >= passage->made.pieces.count) return frame_layout_no_item(index, passage->made.pieces.count);
    const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(&passage->made, index);
    frame_struct_blank(&frame_passage_piece_facts, &told);
    FRAME_LAYOUT_TELL(&told, piece);
    told.start_deg = piece->start_deg;
    told.end_deg = piece->end_deg;
    told.of = FRAME_ITEM(int32_t, passage->of, index);
    frame_struct_give(&frame_passage_piece_facts, &told, item, item_size);
    return FRAME_OK;
}

frame_status frame_passage_stick(const frame_passage *passage, size_t index, frame_stick **stick) {
    if (!passage || !stick) return frame_layout_no_answer();
    return frame_layout_stick(&passage->made, index, stick);
}
