/* Which post to buy: every choice is a column_check; then they are ranked, and each says why it loses. */
#include <stdio.h>
#include <string.h>

#include "base/answer.h"
#include "base/error.h"
#include "base/number.h"
#include "material/lumber.h"
#include "strength_facts.h"
#include "working/calculation.h"

typedef struct usual_post {
    frame_size size;
    int32_t plies;
} usual_post;

/* Tried where the caller names no choices: common practice. */
static const usual_post usual[] = {{FRAME_SIZE(4, 4), 1}, {FRAME_SIZE(4, 6), 1}, {FRAME_SIZE(6, 6), 1},
                                   {FRAME_SIZE(6, 8), 1}, {FRAME_SIZE(8, 8), 1}, {FRAME_SIZE(2, 4), 2},
                                   {FRAME_SIZE(2, 4), 3}, {FRAME_SIZE(2, 6), 2}, {FRAME_SIZE(2, 6), 3}};
enum { USUAL_POSTS = sizeof usual / sizeof usual[0] };

typedef struct post_trial {
    frame_column_check_in check;
    frame_post_sizes_option option;
    frame_known known;
    int32_t spare;
    char refusal[200]; /* why it could not be checked; empty when it was */
} post_trial;

static int has(int32_t value) {
    return value != FRAME_NOT_GIVEN_INT;
}
static int is_given(double value) {
    return value != FRAME_NOT_GIVEN;
}

static void set_check(const frame_post_sizes_in *in, const frame_post_choice *choice, frame_column_check_in *check) {
    frame_column_check_in_init(check);
    check->size = choice->size, check->plies = choice->plies;
    check->species = has(choice->species) ? choice->species : in->species;
    check->grade = has(choice->grade) ? choice->grade : in->grade;
    if (choice->plies > 1) check->fastening = in->fastening;
    check->service = in->service, check->incised = in->incised, check->load_duration = in->load_duration;
    check->weak_axis_held = in->weak_axis_held;
    check->length_in = in->length_in, check->axial_lb = in->axial_lb, check->lateral_plf = in->lateral_plf;
    check->effective_length_factor = in->effective_length_factor;
    check->strong_eccentricity_in = in->eccentricity_in;
    check->plate_species = in->plate_species;
    check->method = in->method, check->time_effect_factor = in->time_effect_factor;
}

static void price(const frame_post_sizes_in *in, const frame_post_choice *choice, frame_post_sizes_option *o) {
    double thickness, width;
    frame_size_nominal(choice->size, &thickness, &width);
    o->board_feet = thickness * width / 12 * in->length_in / 12 * choice->plies;
    if (is_given(choice->price_per_ft)) o->cost = choice->price_per_ft * in->length_in / 12 * choice->plies;
}

static void take(const frame_column_check_out *found, post_trial *t) {
    frame_post_sizes_option *o = &t->option;
    t->known = found->known;
    o->passes = found->passes, o->governs = found->governs, o->ratio = found->ratio;
    o->compression_ratio = found->compression_ratio, o->combined_ratio = found->combined_ratio;
    o->bearing_ratio = found->bearing_ratio, o->capacity_lb = found->capacity_lb;
}

/* What is missing or contradictory is the caller's to mend; what one lumber cannot do is that choice's reason. */
static int is_of_choice(frame_status status) {
    return status == FRAME_NO_VALUE || status == FRAME_OUTSIDE_SCOPE || status == FRAME_REFUSED;
}

static int fits(const frame_post_sizes_in *in, const frame_post_choice *choice) {
    double thickness, width;
    if (frame_size_dressed(choice->size, 0, &thickness, &width)) return 1; /* the check says what is wrong */
    if (is_given(in->most_width_in) && thickness * choice->plies > in->most_width_in) return 0;
    return !is_given(in->most_depth_in) || width <= in->most_depth_in;
}

static frame_status try_one(const frame_post_sizes_in *in, const frame_post_choice *choice, size_t place,
                            frame_array *trials) {
    post_trial t = {.known = FRAME_KNOWN_MEMORY};
    frame_column_check_out found;
    if (!fits(in, choice)) return FRAME_OK;
    frame_struct_blank(&frame_post_sizes_option_facts, &t.option);
    set_check(in, choice, &t.check);
    t.option.size = choice->size, t.option.plies = choice->plies, t.option.choice = (int32_t)place;
    t.option.species = t.check.species, t.option.grade = t.check.grade, t.option.name = choice->name;
    t.option.passes = 0;
    price(in, choice, &t.option);
    const frame_status status = frame_column_check(&t.check, &found, NULL);
    if (status && !is_of_choice(status)) return status;
    if (status)
        snprintf(t.refusal, sizeof t.refusal, "%s", frame_error_text());
    else
        take(&found, &t);
    return frame_array_push(trials, &t) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* A failure of a choice's own field gets its place in the list before its name. */
static frame_status within_choice(frame_status status, size_t place) {
    if (status == FRAME_NO_MEMORY || !frame_field_find(&frame_post_choice_facts, frame_error_field())) return status;
    return frame_fail_within("choices[%zu].", place);
}

static frame_status try_all(const frame_post_sizes_in *in, frame_array *trials) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < in->choice_count; i++) {
        frame_post_choice choice;
        frame_post_choice_item(in->choices, i, &choice);
        if ((status = try_one(in, &choice, i, trials))) return within_choice(status, i);
    }
    for (size_t i = 0; i < USUAL_POSTS && !in->choice_count && !status; i++) {
        frame_post_choice choice;
        frame_post_choice_init(&choice);
        choice.size = usual[i].size, choice.plies = usual[i].plies;
        status = try_one(in, &choice, i, trials);
    }
    if (!status && !trials->count)
        return frame_fail(FRAME_NO_VALUE, "choices", "", "a choice within most_width_in and most_depth_in",
                          "choices: none is left; valid is a choice within most_width_in and most_depth_in");
    return status;
}

static double measure(int by_cost, const frame_post_sizes_option *o) {
    return by_cost ? o->cost : o->board_feet;
}

static int comes_before(int by_cost, const frame_post_sizes_option *x, const frame_post_sizes_option *y) {
    if (x->passes != y->passes) return x->passes;
    if (x->passes && measure(by_cost, x) != measure(by_cost, y)) return measure(by_cost, x) < measure(by_cost, y);
    if (is_given(x->ratio) != is_given(y->ratio)) return is_given(x->ratio);
    return x->ratio < y->ratio;
}

/* Insertion: stable, and choices are few. */
static void rank(int by_cost, post_trial *trials, size_t count) {
    for (size_t i = 1; i < count; i++) {
        const post_trial moved = trials[i];
        size_t at = i;
        for (; at > 0 && comes_before(by_cost, &moved.option, &trials[at - 1].option); at--)
            trials[at] = trials[at - 1];
        trials[at] = moved;
    }
}

static const char *reason_of(int by_cost, const post_trial *t, const post_trial *best, frame_answer *answer) {
    char words[300], number[32];
    const frame_post_sizes_option *o = &t->option;
    if (t->refusal[0]) {
        snprintf(words, sizeof words, "not checked: %s", t->refusal);
    } else if (!o->passes) {
        frame_number_print(o->ratio, 3, number, sizeof number);
        snprintf(words, sizeof words, "fails in %s: %s of what is allowed", frame_word_text("governing", o->governs),
                 number);
    } else if (t == best) {
        snprintf(words, sizeof words, "%s of those that hold", by_cost ? "the cheapest" : "the fewest board feet");
    } else {
        frame_number_print(measure(by_cost, o) - measure(by_cost, &best->option), 3, number, sizeof number);
        snprintf(words, sizeof words, "holds, and %s %s more than the best%s", by_cost ? "costs" : "takes", number,
                 by_cost ? "" : " in board feet");
    }
    return frame_answer_text(answer, words);
}

static frame_status give_options(int by_cost, const frame_array *trials, frame_answer *answer) {
    const post_trial *all = trials->items;
    for (size_t i = 0; i < trials->count; i++) {
        frame_post_sizes_option *option = frame_answer_add(answer, 0);
        if (!option) return FRAME_NO_MEMORY;
        *option = all[i].option;
        option->reason = reason_of(by_cost, &all[i], &all[0], answer);
        option->name = frame_answer_text(answer, all[i].option.name);
    }
    return FRAME_OK;
}

static void give_best(int by_cost, const frame_post_sizes_in *in, const frame_array *trials,
                      frame_post_sizes_out *out) {
    const post_trial *all = trials->items;
    const frame_post_sizes_option *best = &all[0].option;
    out->tried_count = (int32_t)trials->count;
    out->passing_count = 0;
    for (size_t i = 0; i < trials->count; i++) out->passing_count += all[i].option.passes;
    out->passes = out->passing_count > 0;
    out->known = all[0].known;
    out->cautions = FRAME_BIT(FRAME_POST_CAUTION_ENDS);
    if (!by_cost) out->cautions |= FRAME_BIT(FRAME_POST_CAUTION_BOARD_FEET);
    if (!out->passes) out->cautions |= FRAME_BIT(FRAME_POST_CAUTION_NONE);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_POST_CAUTION_MEMORY);
    out->not_checked = FRAME_BIT(FRAME_POST_UNCHECKED_COMBINATIONS) | FRAME_BIT(FRAME_POST_UNCHECKED_UPLIFT) |
                       FRAME_BIT(FRAME_POST_UNCHECKED_CODE);
    if (!has(in->plate_species)) out->not_checked |= FRAME_BIT(FRAME_POST_UNCHECKED_PLATE);
    if (!out->passes) return;
    if (best->plies > 1) out->cautions |= FRAME_BIT(FRAME_POST_CAUTION_PLIES);
    out->size = best->size, out->plies = best->plies, out->ratio = best->ratio;
    out->board_feet = best->board_feet;
    out->cost = by_cost ? best->cost : FRAME_NOT_GIVEN;
}

static frame_status record_best(const post_trial *best, frame_working *record) {
    frame_column_check_out again;
    if (!record || best->refusal[0]) return FRAME_OK;
    FRAME_HEADING(record, best->option.passes ? "The best choice" : "The choice that is nearest to holding");
    FRAME_ENTER(record);
    const frame_status status = frame_column_check(&best->check, &again, record);
    FRAME_LEAVE(record);
    return status;
}

static frame_status solve(const frame_post_sizes_in *in, frame_answer *answer, frame_post_sizes_out *out,
                          frame_working *record) {
    frame_array trials = {.item_size = sizeof(post_trial)};
    int by_cost = 1;
    frame_status status = try_all(in, &trials);
    if (!status) {
        for (size_t i = 0; i < trials.count; i++) by_cost &= is_given(FRAME_ITEM(post_trial, trials, i).option.cost);
        rank(by_cost, trials.items, trials.count);
        give_best(by_cost, in, &trials, out);
        status = give_options(by_cost, &trials, answer);
        if (!status) status = record_best(trials.items, record);
    }
    frame_array_give(&trials);
    return status;
}
FRAME_IMPLEMENT_ANSWER(post_sizes, solve);
