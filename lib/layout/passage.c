/* A pipe, duct or vent through a frame: which members it meets, what the code says of each, and where it would meet
 * none. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "layout/passage.h"
#include "layout_facts.h"

struct frame_passage {
    frame_passage_out out;
    frame_array meets; /* frame_passage_meet */
    frame_arena texts;
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
    int failed = 0;
    frame_passage_meet *meet = frame_array_push(&passage->meets, NULL);
    if (!meet) return FRAME_NO_MEMORY;
    frame_struct_blank(&frame_passage_meet_facts, meet);
    meet->piece = (int32_t)index;
    meet->kind = piece->kind;
    meet->verdict = v->verdict;
    meet->name = frame_arena_text(&passage->texts, piece->name, &failed);
    meet->reason = frame_arena_text(&passage->texts, v->reason, &failed);
    meet->needs = frame_arena_text(&passage->texts, v->needs, &failed);
    meet->overlap_in3 = v->overlap;
    meet->limit_in = v->limit;
    if (v->verdict > passage->out.verdict) passage->out.verdict = v->verdict;
    if (v->known > passage->out.known) passage->out.known = v->known;
    passage->out.box_out |= v->cuts_off;
    return failed ? FRAME_NO_MEMORY : FRAME_OK;
}

static frame_status judge_all(const frame_layout_set *set, const frame_passage_in *in, frame_passage_box *box,
                              frame_passage *passage) {
    frame_stick *pipe = NULL;
    frame_status status = frame_passage_stick(set, box, &pipe);
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

static void sum_up(const frame_layout_set *set, const frame_passage_in *in, const frame_passage_box *box,
                   frame_passage *passage) {
    frame_passage_out *out = &passage->out;
    double *const clear[3] = {&out->clear_x_in, &out->clear_y_in, &out->clear_z_in};
    for (int a = 0; a < 3; a++)
        if (a != box->way) *clear[a] = frame_passage_clear(set, box, a);
    const int level = box->way == 0 ? 1 : 0, other = box->way == 2 ? 1 : 2;
    out->opening_low_in = box->at[level] - box->half[level];
    out->opening_high_in = box->at[level] + box->half[level];
    out->opening_from_in = box->at[other] - box->half[other];
    out->opening_to_in = box->at[other] + box->half[other];
    out->meet_total = (int32_t)passage->meets.count;
    out->cautions = FRAME_BIT(FRAME_PASSAGE_CAUTION_LOCAL) | FRAME_BIT(FRAME_PASSAGE_CAUTION_FIRE);
    if (out->meet_total) out->cautions |= FRAME_BIT(FRAME_PASSAGE_CAUTION_OTHERS);
    if (out->box_out)
        out->cautions |= FRAME_BIT(in->bearing ? FRAME_PASSAGE_CAUTION_SHORE : FRAME_PASSAGE_CAUTION_IDLE);
    out->not_checked = FRAME_BIT(FRAME_PASSAGE_UNCHECKED_TRADE);
    if (out->meet_total) out->not_checked |= FRAME_BIT(FRAME_PASSAGE_UNCHECKED_STRENGTH);
}

static frame_status make(const void *answer, const frame_passage_in *given, frame_passage **made) {
    frame_passage_in in;
    frame_passage_box box;
    uint64_t assumed = 0;
    memset(&box, 0, sizeof box);
    if (!answer || !made) return frame_layout_no_answer();
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
    passage->out.box_out = 0;
    status = judge_all(frame_layout_set_of(answer), &in, &box, passage);
    if (status) {
        frame_passage_free(passage);
        return status;
    }
    sum_up(frame_layout_set_of(answer), &in, &box, passage);
    *made = passage;
    return FRAME_OK;
}

frame_status frame_wall_passage(const frame_wall *wall, const frame_passage_in *in, frame_passage **passage) {
    return make(wall, in, passage);
}

frame_status frame_floor_passage(const frame_floor *floor, const frame_passage_in *in, frame_passage **passage) {
    return make(floor, in, passage);
}

frame_status frame_deck_passage(const frame_deck *deck, const frame_passage_in *in, frame_passage **passage) {
    return make(deck, in, passage);
}

void frame_passage_free(frame_passage *passage) {
    if (!passage) return;
    frame_array_give(&passage->meets);
    frame_arena_give(&passage->texts);
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
    char valid[48];
    if (!passage || !item) return frame_layout_no_answer();
    const size_t count = passage->meets.count;
    snprintf(valid, sizeof valid, "0..%zu (count %zu)", count ? count - 1 : 0, count);
    if (index >= count) return frame_fail_number(FRAME_OUT_OF_RANGE, "index", (double)index, valid);
    frame_struct_give(&frame_passage_meet_facts, &FRAME_ITEM(frame_passage_meet, passage->meets, index), item,
                      item_size);
    return FRAME_OK;
}
