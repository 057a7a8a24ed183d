/* Choices that were tried: what ranks them, why each but the first loses, and what is to say of all. Whatever tries
 * sizes keeps its trials in an array of structs that begin with a frame_trial. */
#ifndef FRAME_LIB_STRENGTH_TRIALS_H
#define FRAME_LIB_STRENGTH_TRIALS_H

#include <frame/fields.h>
#include <frame/strength.h>
#include <frame/working.h>

#include "base/answer.h"

typedef struct frame_trial {
    frame_known known;
    frame_bool passes;
    frame_governing governs;
    int32_t plies;
    double ratio;            /* not given where it could not be checked */
    double board_feet, cost; /* of one, or of a square foot; cost not given without a price */
    double measure;          /* which of the two ranks it, and its place before: set by frame_trials_rank */
    size_t place;
    char refusal[200]; /* why it could not be checked; empty when it was */
} frame_trial;

typedef struct frame_trials_sum {
    int by_cost; /* all have a cost: they are ranked by it, else by board feet */
    int32_t tried, passing;
} frame_trials_sum;

static inline int frame_trial_has(int32_t value) {
    return value != FRAME_NOT_GIVEN_INT;
}

/* A trial before its check. */
void frame_trial_begin(int32_t plies, frame_trial *trial);
/* What so many feet take and cost, of lumber of so many board feet and such a price a foot. */
void frame_trial_price(double board_feet, double feet, double price_per_ft, frame_trial *trial);
/* Keeps what the check says against one choice (no such lumber, too slender, refused) as that choice's refusal. What is
 * missing or contradictory is the caller's to mend: it is given back. */
frame_status frame_trial_refused(frame_status status, frame_trial *trial);
/* A failure of a choice's own field gets its place in the list before its name. */
frame_status frame_trial_within(frame_status status, const frame_struct *choice, size_t place);

/* Puts the trials in their order: those that hold by cost or board feet, then the fewest plies; the others by how far
 * they are from holding. */
void frame_trials_rank(frame_array *trials, frame_trials_sum *sum);
/* Why a trial loses to the best; per: "" or what its cost and board feet stand for. */
const char *frame_trial_reason(const frame_trials_sum *sum, const frame_trial *trial, const frame_trial *best,
                               const char *per, frame_answer *answer);
/* The heading over the working of the best; 0 where it has none. */
int frame_trial_heading(const frame_trial *best, frame_working *record);

#endif
