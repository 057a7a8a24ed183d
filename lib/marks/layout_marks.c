/* Members on centres along a length, their marks, and where sheet edges land. */
#include <math.h>

#include <frame/marks.h>

#include "marks/positions.h"
#include "marks_facts.h"
#include "working/calculation.h"

enum { MARKS, MEMBERS, EDGES };

static const char trade[] = "common practice, layout on centres";

static double mark_of(frame_mark_side side, double near, double thickness) {
    if (side == FRAME_MARK_NEAR) return near + thickness;
    return side == FRAME_MARK_CENTRE ? near + thickness / 2 : near;
}

static int add_member(const frame_layout_marks_in *in, const frame_positions *p, int i, frame_answer *answer) {
    frame_layout_marks_member *member = frame_answer_add(answer, MEMBERS);
    if (!member) return 0;
    member->from_in = frame_position(p, i);
    member->to_in = member->from_in + p->thickness;
    member->centre_in = member->from_in + p->thickness / 2;
    member->mark_in = mark_of(in->side, member->from_in, p->thickness);
    member->kind = frame_position_kind(p, i);
    member->number = i + 1;
    if (i > 0) member->space_in = member->from_in - frame_position(p, i - 1) - p->thickness;
    return frame_answer_add_number(answer, MARKS, member->mark_in);
}

/* The member a sheet edge lands on, if any: members do not overlap, and the edges come in order. */
static void land(const frame_positions *p, frame_layout_marks_edge *edge, int *from) {
    edge->member = 0;
    edge->before_in = edge->after_in = 0;
    while (*from < p->count && frame_position(p, *from) + p->thickness <= edge->at_in) ++*from;
    if (*from == p->count || frame_position(p, *from) >= edge->at_in) return;
    edge->member = *from + 1;
    edge->before_in = edge->at_in - frame_position(p, *from);
    edge->after_in = p->thickness - edge->before_in;
}

static int add_edges(const frame_positions *p, double sheet, frame_answer *answer, frame_layout_marks_out *out) {
    const int64_t first = (int64_t)floor((1e-9 - p->datum) / sheet) + 1;
    int from = 0;
    out->edges_off = 0;
    for (int64_t k = first; p->datum + (double)k * sheet < p->length - 1e-9; k++) {
        frame_layout_marks_edge *edge = frame_answer_add(answer, EDGES);
        if (!edge) return 0;
        edge->at_in = p->datum + (double)k * sheet;
        land(p, edge, &from);
        if (fmin(edge->before_in, edge->after_in) < 0.5 - 1e-9) out->edges_off++;
    }
    return 1;
}

static void record(const frame_layout_marks_in *in, const frame_positions *p, frame_working *w) {
    FRAME_GIVEN(w, L, in->length_in, "in", "length marked");
    FRAME_GIVEN(w, s, in->spacing_in, "in", "spacing on centres");
    FRAME_GIVEN(w, t, in->thickness_in, "in", "thickness of a member");
    FRAME_GIVEN(w, datum, in->datum_in, "in", "where the first sheet begins");
    FRAME_STEP(w, far, L - t, "in", "near side of a member at the far end", trade);
    if (p->on_centres == 0) return;
    FRAME_GIVEN(w, k, (double)p->nearest, "", "spacings from the datum to the first member on centres");
    if (in->first == FRAME_FIRST_MARK_SET_BACK) {
        FRAME_CASE(w, "first mark set back half a thickness", "sheets laid from the datum break on centres", trade);
        FRAME_STEP(w, first, datum + k * s - t / 2, "in", "near side of the first member on centres",
                   "NAVEDTRA 14044 p. 1-23");
        (void)first;
    } else {
        FRAME_STEP(w, first, datum + k * s, "in", "near side of the first member on centres", trade);
        (void)first;
    }
    (void)far;
}

static void find_last(const frame_positions *p, frame_layout_marks_out *out, frame_working *w) {
    if (p->count < 2) return;
    FRAME_GIVEN(w, near_end, frame_position(p, p->count - 2), "in", "near side of the last member but one");
    FRAME_GIVEN(w, last, frame_position(p, p->count - 1), "in", "near side of the last");
    FRAME_GIVEN(w, t, p->thickness, "in", "thickness of a member");
    FRAME_STEP(w, last_space, last - near_end - t, "in", "last space, clear", trade);
    out->last_space_in = last_space;
}

static void sum_up(const frame_layout_marks_in *in, const frame_positions *p, frame_layout_marks_out *out) {
    out->count = p->count;
    out->on_centres = p->on_centres;
    if (p->on_centres) out->first_mark_in = mark_of(in->side, frame_position(p, p->start), p->thickness);
    const double past = in->length_in - in->datum_in;
    out->next_datum_in = floor(past / in->spacing_in + 1e-12) * in->spacing_in - past;
    if (fabs(out->next_datum_in) < 1e-9) out->next_datum_in = 0;
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_MARKS_CAUTION_ONE_HOOK) | FRAME_BIT(FRAME_MARKS_CAUTION_SIDE);
    if (out->edges_off) out->cautions |= FRAME_BIT(FRAME_MARKS_CAUTION_EDGES);
    if (p->left_out) out->cautions |= FRAME_BIT(FRAME_MARKS_CAUTION_CLOSE);
    out->not_checked = FRAME_BIT(FRAME_MARKS_UNCHECKED_OPENINGS);
}

static frame_status solve(const frame_layout_marks_in *in, frame_answer *answer, frame_layout_marks_out *out,
                          frame_working *w) {
    frame_positions p = {.length = in->length_in,
                         .spacing = in->spacing_in,
                         .thickness = in->thickness_in,
                         .datum = in->datum_in,
                         .first = in->first,
                         .start = in->start_member,
                         .end = in->end_member};
    const frame_status status = frame_positions_find(&p);
    if (status) return status;
    out->sheet_in = in->sheet_in == FRAME_NOT_GIVEN ? frame_sheet_for(in->spacing_in) : in->sheet_in;
    if (fmax(in->length_in, fabs(in->datum_in)) / out->sheet_in > 100000)
        return frame_fail_number(FRAME_TOO_LARGE, "sheet_in", out->sheet_in, "at most 100,000 sheets");
    record(in, &p, w);
    find_last(&p, out, w);
    int kept = 1;
    for (int i = 0; i < p.count; i++) kept &= add_member(in, &p, i, answer);
    kept &= add_edges(&p, out->sheet_in, answer, out);
    sum_up(in, &p, out);
    return kept ? FRAME_OK : FRAME_NO_MEMORY;
}

FRAME_IMPLEMENT_ANSWER(layout_marks, solve);
