/* What the verdicts on holes and notches share. */
#include "code/cuts.h"

#include <math.h>

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

int frame_cut_keep_away(const frame_cut_stretch *may, int count, double other, double reach, frame_cut_stretch *left) {
    int kept = 0;
    for (int i = 0; i < count; i++) {
        const double before = fmin(may[i].to, other - reach), after = fmax(may[i].from, other + reach);
        if (before >= may[i].from) left[kept++] = (frame_cut_stretch){may[i].from, before};
        if (after <= may[i].to) left[kept++] = (frame_cut_stretch){after, may[i].to};
    }
    return kept;
}

double frame_cut_nearest(const frame_cut_stretch *may, int count, double at) {
    double best = FRAME_NOT_GIVEN;
    for (int i = 0; i < count; i++) {
        const double place = fmin(fmax(at, may[i].from), may[i].to);
        if (best == FRAME_NOT_GIVEN || fabs(place - at) < fabs(best - at)) best = place;
    }
    return best;
}

frame_status frame_cut_required(const char *field, const char *what) {
    return frame_fail(FRAME_REQUIRED, field, "", what, "%s: is required: %s", field, what);
}

frame_status frame_cut_within_span(const frame_code_hole_in *in) {
    if (in->span_in == FRAME_NOT_GIVEN || in->position_in == FRAME_NOT_GIVEN || in->position_in <= in->span_in)
        return FRAME_OK;
    return frame_fail(FRAME_IMPOSSIBLE, "position_in", frame_code_number(in->position_in).text, "within the span",
                      "position_in: %s lies beyond the span of %s in; valid is within the span",
                      frame_code_number(in->position_in).text, frame_code_number(in->span_in).text);
}

void frame_cut_verdict(frame_code_hole_out *out, frame_code_verdict verdict, const char *reason, frame_working *w) {
    out->verdict = verdict;
    out->reason = reason;
    FRAME_CASE(w, reason, frame_word_text("code_verdict", verdict), out->source);
}
