/* A whole roof framed: found, laid out, cut, proved. */
#include "base/error.h"
#include "roof/members.h"
#include "roof_facts.h"
#include "working/calculation.h"

static void release_set(void *object) {
    members_set *set = object;
    frame_array_give(&set->pieces);
    frame_array_give(&set->cuts);
    frame_give(set);
}

static members_set *new_set(frame_answer *answer) {
    members_set *set = frame_take_zeroed(1, sizeof *set);
    if (!set) return NULL;
    set->pieces.item_size = sizeof(members_piece);
    set->cuts.item_size = sizeof(members_cut);
    return frame_answer_own(answer, set, release_set);
}

frame_status members_begin(members *m, const frame_roof_members_in *in, frame_answer *answer,
                           frame_roof_members_out *out) {
    frame_roof_corner corner;
    m->in = in, m->answer = answer, m->out = out;
    out->cautions = 0;
    m->set = new_set(answer);
    if (!m->set) return FRAME_NO_MEMORY;
    m->laid.item_size = sizeof(members_laid);
    m->faces.item_size = sizeof(members_face);
    m->sides.item_size = sizeof(members_side);
    m->runs.item_size = sizeof(members_run);
    m->ends.item_size = sizeof(members_end);
    m->heads.item_size = sizeof(members_head);
    m->parts.item_size = sizeof(members_part);
    m->plates.item_size = sizeof(members_plate);
    m->standing.item_size = sizeof(members_standing);
    m->sections = m->set->sections;
    frame_roof_corner_item(m->in->corners, 0, &corner);
    m->origin.x = m->in->layout_x_in == FRAME_NOT_GIVEN ? corner.x_in : m->in->layout_x_in;
    m->origin.y = m->in->layout_y_in == FRAME_NOT_GIVEN ? corner.y_in : m->in->layout_y_in;
    return FRAME_OK;
}

void members_end_work(members *m) {
    frame_roof_solve_free(m->roof);
    frame_give(m->face_of);
    frame_array_give(&m->faces);
    frame_array_give(&m->sides);
    frame_array_give(&m->runs);
    frame_array_give(&m->ends);
    frame_array_give(&m->heads);
    frame_array_give(&m->parts);
    frame_array_give(&m->plates);
    frame_array_give(&m->standing);
    frame_array_give(&m->laid);
}

frame_status members_find_shape(members *m) {
    frame_status status = members_read(m);
    if (!status) status = members_find_skin(m);
    if (!status) status = members_move_eaves(m);
    if (!status) status = members_find_runs(m);
    if (!status) status = members_take_sections(m);
    if (!status) status = members_find_ends(m);
    return status ? status : members_end_runs(m);
}

static frame_status frame_it(members *m) {
    frame_status status = members_find_shape(m);
    if (!status) status = members_add_plates(m);
    if (!status) status = members_add_runs(m);
    if (!status) status = members_add_ledgers(m);
    if (!status) status = members_lay_out(m);
    if (!status) status = members_add_joists(m);
    if (!status) status = members_add_blocks(m);
    if (!status) status = members_add_eaves(m);
    return status ? status : members_give(m);
}

static void note(members *m) {
    frame_roof_members_out *out = m->out;
    frame_roof_solve_out roof;
    frame_roof_solve_result(m->roof, &roof);
    out->height_above_plate_in = m->height;
    out->fascia_height_in = m->fascia;
    out->ridge_height_in = m->height + roof.height_in;
    out->left_out = m->left_out;
    out->cautions |= FRAME_BIT(FRAME_MEMBERS_CAUTION_BRACE) | FRAME_BIT(FRAME_MEMBERS_CAUTION_TRY_ONE) |
                     FRAME_BIT(FRAME_MEMBERS_CAUTION_MEASURE);
    if (roof.hip_length_in > 0 || roof.valley_length_in > 0) out->cautions |= FRAME_BIT(FRAME_MEMBERS_CAUTION_BEAM);
    if (roof.cautions & FRAME_BIT(FRAME_ROOF_CAUTION_LOW)) out->cautions |= FRAME_BIT(FRAME_MEMBERS_CAUTION_LOW);
    if (m->left_out) out->cautions |= FRAME_BIT(FRAME_MEMBERS_CAUTION_LEFT_OUT);
    out->not_checked = FRAME_BIT(FRAME_MEMBERS_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_MEMBERS_UNCHECKED_THRUST);
    if (!m->in->prove)
        out->not_checked |= FRAME_BIT(FRAME_MEMBERS_UNCHECKED_PROOF);
    else if (!out->fits)
        out->cautions |= FRAME_BIT(FRAME_MEMBERS_CAUTION_FAULTS);
}

/* -- the working -- */

static void record(const members *m, frame_working *w) {
    if (!w) return;
    const double plate = m->fascia - m->height + m->in->overhang_in * m->slope;
    FRAME_HEADING(w, "Heights of the roof planes");
    FRAME_GIVEN(w, m_roof, m->slope, "", "slope of the first roof, rise over run");
    FRAME_GIVEN(w, d, m->sections[MEMBERS_RAFTERS].depth, "in", "depth of the rafters");
    FRAME_STEP(w, d_plumb, d * sqrt(1 + pow(m_roof, 2)), "in", "their depth measured plumb", "right triangle");
    FRAME_GIVEN(w, HAP, m->height, "in", "height above plate");
    FRAME_STEP(w, seat, (d_plumb - HAP) / m_roof, "in", "level seat of the birdsmouth", "right triangle");
    FRAME_GIVEN(w, o, m->in->overhang_in, "in", "overhang");
    FRAME_GIVEN(w, z_plate, plate, "in", "height of its plate");
    FRAME_STEP(w, z_fascia, z_plate + HAP - o * m_roof, "in", "height of the roof plane at the tail cut", "right triangle");
    FRAME_TABLE(w, pieces, (double)m->set->pieces.count, "", "pieces, plates among them", "counted");
}

static frame_status solve(const frame_roof_members_in *in, frame_answer *answer, frame_roof_members_out *out,
                          frame_working *w) {
    members m = {.in = in};
    frame_status status = members_begin(&m, in, answer, out);
    if (!status) status = frame_it(&m);
    status = members_outcome(&m, status);
    if (!status) note(&m);
    if (!status) record(&m, w);
    members_end_work(&m);
    return status;
}

FRAME_IMPLEMENT_ANSWER(roof_members, solve);

frame_status frame_roof_members_stick(const frame_roof_members *given, size_t index, frame_stick **stick) {
    const frame_answer *answer = (const frame_answer *)given;
    if (!given || !stick)
        return frame_fail(FRAME_REQUIRED, "members", "NULL", "an answer, and where to put the stick",
                          "members: NULL is not an answer, or there is nowhere to put the stick");
    const members_set *set = FRAME_ITEM(frame_owned, answer->owned, 0).object;
    if (index >= set->pieces.count)
        return frame_fail_number(FRAME_OUT_OF_RANGE, "index", (double)index, "a place in the list of pieces");
    const frame_roof_members_piece *piece = &FRAME_ANSWER_ITEM(const frame_roof_members_piece, answer, 0, index);
    return members_stick(set, index, piece->name, stick);
}
