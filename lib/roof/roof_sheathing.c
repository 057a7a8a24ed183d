/* The sheathing of a roof: its faces out to the faces of the sub-fascias and fly rafters, loop by loop. */
#include "base/error.h"
#include "roof/sheathing.h"
#include "roof_facts.h"
#include "working/calculation.h"

static void as_members(const frame_roof_sheathing_in *in, frame_roof_members_in *framed) {
    frame_roof_members_in_init(framed);
    framed->corners = in->corners, framed->corner_count = in->corner_count;
    framed->slopes = in->slopes, framed->slope_count = in->slope_count;
    framed->kinds = in->kinds, framed->kind_count = in->kind_count;
    framed->holes = in->holes, framed->hole_count = in->hole_count;
    framed->rafter_size = in->rafter_size, framed->fascia_size = in->fascia_size;
    framed->spacing_in = in->spacing_in, framed->overhang_in = in->overhang_in;
    framed->rake_overhang_in = in->rake_overhang_in;
    framed->plates_in = in->plates_in, framed->plate_count = in->plate_count, framed->half_hip_in = in->half_hip_in;
    framed->layout_x_in = in->layout_x_in, framed->layout_y_in = in->layout_y_in;
}

/* The line that ends the sheathing at a side. */
static line2 edge_of(const members *m, const members_side *side) {
    const double out = side->kind == FRAME_LINE_EAVE ? m->sections[MEMBERS_FASCIA].thickness : 0;
    return line2_moved(side->line, -out);
}

static v2 corner_between(const members *m, const members_side *a, const members_side *b) {
    v2 corner = a->q;
    line2_meet(edge_of(m, a), edge_of(m, b), &corner);
    return corner;
}

static frame_status refuse_corners(const members_face *face) {
    return frame_fail(FRAME_TOO_LARGE, "corners", "", "faces of at most 23 corners",
                      "corners: face %d of the roof has more than 23 corners, too many to lay its sheathing out",
                      (int)face->face);
}

/* Follows the sides round from one of them; those passed are marked. */
static frame_status lay_loop(const sheathing *s, const members_face *face, int32_t first, uint8_t *passed) {
    sheathing_loop loop = {.face = face, .secant = sqrt(1 + face->slope * face->slope), .low = HUGE_VAL};
    for (int32_t i = first; !passed[i - face->first]; i = MEMBERS_SIDE(s->m, i)->next) {
        const members_side *side = MEMBERS_SIDE(s->m, i);
        passed[i - face->first] = 1;
        if (side->next < 0 || loop.outline.count + 8 >= POLYGON2_CORNERS) return refuse_corners(face);
        const v2 at = corner_between(s->m, side, MEMBERS_SIDE(s->m, side->next));
        const v2 own = {v2_dot(face->along, at), v2_dot(face->up, at) * loop.secant};
        loop.outline.corners[loop.outline.count++] = own;
        loop.low = fmin(loop.low, own.y);
    }
    s->out->area_in2 += polygon2_area(&loop.outline);
    return sheathing_lay(s, &loop);
}

static frame_status lay_face(const sheathing *s, const members_face *face) {
    uint8_t *passed = frame_take_zeroed((size_t)face->count + 1, 1);
    frame_status status = passed ? FRAME_OK : FRAME_NO_MEMORY;
    for (int32_t i = 0; i < face->count && !status; i++)
        if (!passed[i]) status = lay_loop(s, face, face->first + i, passed);
    frame_give(passed);
    return status;
}

static frame_status lay_faces(sheathing *s) {
    const double steps = floor((s->in->sheet_length_in + 1e-9) / s->in->spacing_in);
    s->step = steps * s->in->spacing_in;
    if (steps < 2)
        return frame_fail_number(FRAME_IMPOSSIBLE, "sheet_length_in", s->in->sheet_length_in,
                                 "at least twice the spacing of the rafters");
    frame_status status = members_find_shape(s->m);
    if (!status) status = members_lay_out(s->m);
    for (size_t i = 0; i < s->m->faces.count && !status; i++) status = lay_face(s, MEMBERS_FACE(s->m, i));
    return status;
}

static void note(sheathing *s) {
    frame_roof_sheathing_out *out = s->out;
    out->cautions |= FRAME_BIT(FRAME_SHEATHING_CAUTION_FALL);
    if (out->nailers_in > 0) out->cautions |= FRAME_BIT(FRAME_SHEATHING_CAUTION_NAILERS);
    if (out->unheld_in > 0) out->cautions |= FRAME_BIT(FRAME_SHEATHING_CAUTION_EDGES);
    out->not_checked = FRAME_BIT(FRAME_SHEATHING_UNCHECKED_SPAN) | FRAME_BIT(FRAME_SHEATHING_UNCHECKED_NAILING);
}

static void record(const sheathing *s, frame_working *w) {
    if (!w) return;
    const frame_roof_sheathing_out *out = s->out;
    FRAME_HEADING(w, "Sheathing");
    FRAME_TABLE(w, A_faces, out->area_in2, "in2", "area of the faces, overhangs among them", "the roof in its planes");
    FRAME_TABLE(w, A_parts, out->parts_area_in2, "in2", "area of the parts", "sum");
    FRAME_STEP(w, A_gaps, A_faces - A_parts, "in2", "area of the gaps between them", "difference");
    FRAME_GIVEN(w, A_sheet, s->in->sheet_length_in * s->in->sheet_width_in, "in2", "area of a sheet");
    FRAME_STEP(w, n_least, ceil(A_parts / A_sheet), "", "sheets, if nothing were wasted: no plan needs fewer", "area");
}

static frame_status solve(const frame_roof_sheathing_in *in, frame_answer *answer, frame_roof_sheathing_out *out,
                          frame_working *w) {
    frame_roof_members_in framed, read;
    frame_roof_members_out figures;
    uint64_t assumed;
    members m = {.in = NULL};
    as_members(in, &framed);
    frame_status status = frame_roof_members_in_read(&framed, &read, &assumed);
    if (status) return status;
    figures = frame_roof_members_out_blank;
    sheathing s = {.m = &m, .in = in, .answer = answer, .out = out};
    out->whole = 0;
    out->cautions = 0;
    out->area_in2 = out->parts_area_in2 = out->unheld_in = out->nailers_in = 0;
    status = members_begin(&m, &read, answer, &figures);
    if (!status) status = lay_faces(&s);
    status = members_outcome(&m, status);
    if (!status) note(&s);
    if (!status) record(&s, w);
    out->known = figures.known;
    members_end_work(&m);
    return status;
}

FRAME_IMPLEMENT_ANSWER(roof_sheathing, solve);
