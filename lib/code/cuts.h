/* Holes and notches: the rule of a member, and the verdicts member by member. */
#ifndef FRAME_LIB_CODE_CUTS_H
#define FRAME_LIB_CODE_CUTS_H

#include "code/book.h"
#include "table_code_cuts.h"
#include "working/record.h"

/* The words of the column member. */
enum { FRAME_CUT_JOIST = 1, FRAME_CUT_RAFTER, FRAME_CUT_BEARING_STUD, FRAME_CUT_STUD, FRAME_CUT_PLATE };

/* The rule of a kind of member in an edition. */
frame_status frame_cut_rule(int member, frame_code_edition edition, const frame_code_cuts_row **rule);
/* No more than a limit, whatever the last digit of a double says. */
static inline int frame_cut_within(double value, double limit) {
    return value <= limit + 1e-9 * (1 + limit);
}
/* A stretch of the member, or of its depth, where the middle of a cut may be. */
typedef struct frame_cut_stretch {
    double from, to;
} frame_cut_stretch;
/* The stretches left when the middle keeps reach from another cut's; returns their count, up to twice as many. */
int frame_cut_keep_away(const frame_cut_stretch *may, int count, double other, double reach, frame_cut_stretch *left);
/* The nearest place to at within the stretches; FRAME_NOT_GIVEN where there is none. */
double frame_cut_nearest(const frame_cut_stretch *may, int count, double at);
/* What a field is for, when it was not given. */
frame_status frame_cut_required(const char *field, const char *what);
/* Refuses a place beyond the span, where both are given. */
frame_status frame_cut_within_span(const frame_code_hole_in *in);
/* Sets the verdict, and the sentence it hangs on. */
void frame_cut_verdict(frame_code_hole_out *out, frame_code_verdict verdict, const char *reason, frame_working *w);

/* The verdicts. out has its depth and source set; *rule is the member's. */
frame_status frame_cut_joist_hole(const frame_code_hole_in *in, const frame_code_cuts_row *rule,
                                  frame_code_hole_out *out, frame_working *w);
frame_status frame_cut_joist_notch(const frame_code_hole_in *in, const frame_code_cuts_row *rule,
                                   frame_code_hole_out *out, frame_working *w);
frame_status frame_cut_tail(const frame_code_hole_in *in, frame_code_hole_out *out, frame_working *w);
frame_status frame_cut_stud(const frame_code_hole_in *in, const frame_code_cuts_row *rule, frame_code_hole_out *out,
                            frame_working *w);
frame_status frame_cut_plate(const frame_code_hole_in *in, const frame_code_cuts_row *rule, frame_code_hole_out *out,
                             frame_working *w);
frame_status frame_cut_by_maker(const frame_code_hole_in *in, frame_code_hole_out *out, frame_working *w);

#endif
