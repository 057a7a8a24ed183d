/* Ranking what was tried, and saying why each loses. */
#include "strength/trials.h"

#include <stdio.h>
#include <stdlib.h>

#include "base/error.h"
#include "base/number.h"
#include "working/record.h"

void frame_trial_begin(int32_t plies, frame_trial *trial) {
    *trial = (frame_trial){.known = FRAME_KNOWN_MEMORY,
                           .governs = FRAME_NOT_GIVEN_INT,
                           .plies = plies,
                           .ratio = FRAME_NOT_GIVEN,
                           .cost = FRAME_NOT_GIVEN};
}

void frame_trial_price(double board_feet, double feet, double price_per_ft, frame_trial *trial) {
    trial->board_feet = board_feet * feet;
    if (price_per_ft != FRAME_NOT_GIVEN) trial->cost = price_per_ft * feet;
}

frame_status frame_trial_refused(frame_status status, frame_trial *trial) {
    if (status != FRAME_NO_VALUE && status != FRAME_OUTSIDE_SCOPE && status != FRAME_REFUSED) return status;
    snprintf(trial->refusal, sizeof trial->refusal, "%s", frame_error_text());
    return FRAME_OK;
}

frame_status frame_trial_within(frame_status status, const frame_struct *choice, size_t place) {
    if (status == FRAME_NO_MEMORY || !frame_field_find(choice, frame_error_field())) return status;
    return frame_fail_within("choices[%zu].", place);
}

static int comes_before(const frame_trial *x, const frame_trial *y) {
    if (x->passes != y->passes) return x->passes;
    if (x->passes && x->measure != y->measure) return x->measure < y->measure;
    if (x->passes && x->plies != y->plies) return x->plies < y->plies;
    if ((x->ratio != FRAME_NOT_GIVEN) != (y->ratio != FRAME_NOT_GIVEN)) return x->ratio != FRAME_NOT_GIVEN;
    return x->ratio != y->ratio ? x->ratio < y->ratio : x->place < y->place;
}

static int in_order(const void *x, const void *y) {
    return comes_before(x, y) ? -1 : comes_before(y, x);
}

void frame_trials_rank(frame_array *trials, frame_trials_sum *sum) {
    char *items = trials->items;
    *sum = (frame_trials_sum){.by_cost = 1, .tried = (int32_t)trials->count};
    for (size_t i = 0; i < trials->count; i++) {
        const frame_trial *trial = (const frame_trial *)(const void *)&items[i * trials->item_size];
        sum->by_cost &= trial->cost != FRAME_NOT_GIVEN;
        sum->passing += trial->passes;
    }
    for (size_t i = 0; i < trials->count; i++) {
        frame_trial *trial = (frame_trial *)(void *)&items[i * trials->item_size];
        trial->measure = sum->by_cost ? trial->cost : trial->board_feet;
        trial->place = i;
    }
    qsort(items, trials->count, trials->item_size, in_order);
}

const char *frame_trial_reason(const frame_trials_sum *sum, const frame_trial *trial, const frame_trial *best,
                               const char *per, frame_answer *answer) {
    char words[300], number[32];
    if (trial->refusal[0]) {
        snprintf(words, sizeof words, "not checked: %s", trial->refusal);
    } else if (!trial->passes) {
        frame_number_print(trial->ratio, 3, number, sizeof number);
        snprintf(words, sizeof words, "fails in %s: %s of what is allowed",
                 frame_word_text("governing", trial->governs), number);
    } else if (trial == best) {
        snprintf(words, sizeof words, "%s of those that hold", sum->by_cost ? "the cheapest" : "the fewest board feet");
    } else {
        frame_number_print(trial->measure - best->measure, 3, number, sizeof number);
        snprintf(words, sizeof words, "holds, and %s %s more than the best%s%s", sum->by_cost ? "costs" : "takes",
                 number, per, sum->by_cost ? "" : ", in board feet");
    }
    return frame_answer_text(answer, words);
}

int frame_trial_heading(const frame_trial *best, frame_working *record) {
    if (!record || best->refusal[0]) return 0;
    FRAME_HEADING(record, best->passes ? "The best choice" : "The choice that is nearest to holding");
    return 1;
}
