/* Members on centres along a length: one function for walls, floors, roofs and decks. */
#include <frame/marks.h>

#include "marks_facts.h"
#include "working/calculation.h"

static const char trade[] = "common practice, layout on centres";

static frame_status solve(const frame_layout_marks_in *in, frame_answer *answer, frame_layout_marks_out *out,
                          frame_working *w) {
    if (in->spacing_in <= in->thickness_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "spacing_in", in->spacing_in, "more than the thickness");
    if (in->length_in < 2 * in->thickness_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "length_in", in->length_in, "at least two thicknesses");
    if (in->length_in / in->spacing_in > 10000)
        return frame_fail_number(FRAME_TOO_LARGE, "length_in", in->length_in, "at most 10,000 spacings");
    FRAME_GIVEN(w, L, in->length_in, "in", "length marked");
    FRAME_GIVEN(w, s, in->spacing_in, "in", "spacing on centres");
    FRAME_GIVEN(w, t, in->thickness_in, "in", "thickness of a member");
    FRAME_STEP(w, far, L - t, "in", "near side of the member at the far end", trade);
    const int set_back = in->first == FRAME_FIRST_MARK_SET_BACK;
    if (set_back)
        FRAME_CASE(w, "first mark set back half a thickness", "sheets laid from the end break on centres", trade);
    FRAME_GIVEN(w, first, set_back ? s - t / 2 : s, "in", "near side of the first member on centres");
    int failed = !frame_answer_add_number(answer, 0, 0);
    double last = 0;
    for (int i = 0;; i++) {
        const double mark = first + i * s; /* running, never chained */
        /* The last one on centres goes where it does not meet the member at the end. */
        if (in->end_member ? mark > far - t + 1e-9 : mark > far + 1e-9) break;
        failed |= !frame_answer_add_number(answer, 0, mark);
        last = mark;
    }
    if (in->end_member) {
        failed |= !frame_answer_add_number(answer, 0, far);
        FRAME_GIVEN(w, near_end, last, "in", "near side of the last member before the far end");
        FRAME_STEP(w, last_space, far - near_end - t, "in", "last space, clear", trade);
        out->last_space_in = last_space;
    }
    out->count = (int32_t)answer->lists[0].count;
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_MARKS_CAUTION_ONE_HOOK) | FRAME_BIT(FRAME_MARKS_CAUTION_SIDE);
    out->not_checked = FRAME_BIT(FRAME_MARKS_UNCHECKED_OPENINGS);
    return failed ? FRAME_NO_MEMORY : FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(layout_marks, solve);
