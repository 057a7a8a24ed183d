/* The verdict on a hole or notch: which rule the member falls under. */
#include "code/cuts.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "material/lumber.h"
#include "working/calculation.h"

static frame_status refuse(frame_code_member member) {
    const char *const name = frame_word_text("code_member", member);
    const char *const needed = member == FRAME_CODE_MEMBER_TRUSS
                                   ? "the approval of a registered design professional (IRC R502.11.3, R802.10.4)"
                               : member == FRAME_CODE_MEMBER_FLAT
                                   ? "a check of the net section by a designer: the code's rule is for members on edge"
                                   : "a check of the net section by a designer, or its maker's word";
    return frame_fail(FRAME_REFUSED, "member", name, needed, "member: no hole or notch through a %s without %s", name,
                      needed);
}

/* The member's true depth and thickness, by its size or as given. */
static frame_status measure(const frame_code_hole_in *in, frame_code_hole_in *of) {
    double thickness, depth;
    *of = *in;
    if (in->size == FRAME_NOT_GIVEN_INT)
        return in->depth_in == FRAME_NOT_GIVEN ? frame_cut_required("size", "the member's size, or its depth_in")
                                               : FRAME_OK;
    if (in->depth_in != FRAME_NOT_GIVEN)
        return frame_fail(FRAME_CONFLICT, "depth_in", frame_code_number(in->depth_in).text, "size or depth_in",
                          "depth_in: give it or size, not both");
    const frame_status status = frame_size_dressed(in->size, 0, &thickness, &depth);
    if (status) return status;
    of->depth_in = depth;
    if (in->thickness_in == FRAME_NOT_GIVEN) of->thickness_in = thickness;
    return FRAME_OK;
}

static int kind_of(const frame_code_hole_in *in) {
    switch (in->member) {
        case FRAME_CODE_MEMBER_JOIST:
            return FRAME_CUT_JOIST;
        case FRAME_CODE_MEMBER_STUD:
            return in->bearing || in->exterior ? FRAME_CUT_BEARING_STUD : FRAME_CUT_STUD;
        case FRAME_CODE_MEMBER_TOP_PLATE:
            return FRAME_CUT_PLATE;
        default:
            return FRAME_CUT_RAFTER;
    }
}

static frame_status by_rule(const frame_code_hole_in *in, frame_code_hole_out *out, frame_working *w) {
    const frame_code_cuts_row *rule;
    const frame_status status = frame_cut_rule(kind_of(in), in->edition, &rule);
    if (status) return status;
    const int tail = in->member == FRAME_CODE_MEMBER_TAIL;
    FRAME_CODE_SAY(out, in->edition, tail ? "R802.7.1.1" : rule->table,
                   !tail ? rule->source
                   : rule->known == FRAME_KNOWN_READ
                       ? "IRC 2018 and 2024 R802.7.1.1, adoption texts of Alaska and a federal agency"
                       : "IRC R802.7.1.1 as in 2018 and 2024; 4 in nominal in 2015",
                   "", rule->known);
    if (tail) return frame_cut_tail(in, out, w);
    if (in->member == FRAME_CODE_MEMBER_STUD) return frame_cut_stud(in, rule, out, w);
    if (in->member == FRAME_CODE_MEMBER_TOP_PLATE) return frame_cut_plate(in, rule, out, w);
    if (in->other_position_in == FRAME_NOT_GIVEN) FRAME_CODE_UNCHECKED(out, OTHER_HOLES);
    if (in->cut == FRAME_CODE_CUT_NOTCH) return frame_cut_joist_notch(in, rule, out, w);
    return frame_cut_joist_hole(in, rule, out, w);
}

static frame_status compute(const frame_code_hole_in *asked, frame_code_hole_out *out, frame_working *w) {
    frame_code_hole_in in;
    if (asked->member >= FRAME_CODE_MEMBER_HEADER && asked->member <= FRAME_CODE_MEMBER_TRUSS)
        return refuse(asked->member);
    const frame_status status = measure(asked, &in);
    if (status) return status;
    FRAME_HEADING(w, "Hole or notch by the code");
    out->depth_in = in.depth_in;
    out->reason = out->needs = "";
    FRAME_CODE_UNCHECKED(out, CALCULATED);
    if (asked->member < FRAME_CODE_MEMBER_HEADER) return by_rule(&in, out, w);
    FRAME_CODE_SAY(out, in.edition, "R502.8.2, R802.7.2", "the maker's rule as given", "", FRAME_KNOWN_USER);
    return frame_cut_by_maker(&in, out, w);
}

/* An amendment gives the verdict: what the book hung its own on does not hold then. */
static frame_status with_overlay(const frame_code_hole_in *in, frame_code_hole_out *out, frame_working *w) {
    frame_status status = compute(in, out, w);
    if (in->overlay) status = frame_code_overlaid(in->overlay, &frame_code_hole_calculation, in, out, status, w);
    if (!status && FRAME_RECORDING(w)) frame_code_record_known(out->known, out->note, w);
    if (status || !FRAME_HAS(out->cautions, FRAME_CODE_CAUTION_OVERLAY)) return status;
    out->reason = "a local amendment gives the verdict";
    out->needs = "";
    out->nearest_position_in = out->nearest_offset_in = FRAME_NOT_GIVEN;
    return FRAME_OK;
}

FRAME_IMPLEMENT(code_hole, with_overlay);
