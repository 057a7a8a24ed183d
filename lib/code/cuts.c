/* What the verdicts on holes and notches share. */
#include "code/cuts.h"

#include "base/error.h"

frame_status frame_cut_rule(int member, frame_code_edition edition, const frame_code_cuts_row **rule) {
    unsigned known = 0;
    for (int i = frame_code_cuts_at[member] - 1; i < frame_code_cuts_rows; i++) {
        const frame_code_cuts_row *row = &frame_code_cuts_table[i];
        if (row->member != member) break;
        known |= row->editions;
        if (!(row->editions & frame_code_bit(edition))) continue;
        *rule = row;
        return FRAME_OK;
    }
    return frame_code_no_edition(frame_code_cuts_table[frame_code_cuts_at[member] - 1].table, edition, known);
}

frame_status frame_cut_required(const char *field, const char *what) {
    return frame_fail(FRAME_REQUIRED, field, "", what, "%s: is required: %s", field, what);
}

void frame_cut_verdict(frame_code_hole_out *out, frame_code_verdict verdict, const char *reason, frame_working *w) {
    out->verdict = verdict;
    out->reason = reason;
    FRAME_CASE(w, reason, frame_word_text("code_verdict", verdict), out->source);
}
