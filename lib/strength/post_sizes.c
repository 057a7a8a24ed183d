/* Which post to buy: every choice is a column_check; then they are ranked, and each says why it loses. */
#include "base/error.h"
#include "material/lumber.h"
#include "strength/trials.h"
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
    frame_trial trial;
    frame_column_check_in check;
    frame_post_sizes_option option;
} post_trial;

static int is_given(double value) {
    return value != FRAME_NOT_GIVEN;
}

static void set_check(const frame_post_sizes_in *in, const frame_post_choice *choice, frame_column_check_in *check) {
    frame_column_check_in_init(check);
    check->size = choice->size, check->plies = choice->plies;
    check->species = frame_trial_has(choice->species) ? choice->species : in->species;
    check->grade = frame_trial_has(choice->grade) ? choice->grade : in->grade;
    if (choice->plies > 1) check->fastening = in->fastening;
    check->service = in->service, check->incised = in->incised, check->load_duration = in->load_duration;
    check->weak_axis_held = in->weak_axis_held;
    check->length_in = in->length_in, check->axial_lb = in->axial_lb, check->lateral_plf = in->lateral_plf;
    check->effective_length_factor = in->effective_length_factor;
    check->strong_eccentricity_in = in->eccentricity_in;
    check->plate_species = in->plate_species;
    check->method = in->method, check->time_effect_factor = in->time_effect_factor;
}

static void price(const frame_post_sizes_in *in, const frame_post_choice *choice, post_trial *t) {
    double thickness, width;
    frame_size_nominal(choice->size, &thickness, &width);
    frame_trial_price(thickness * width / 12, in->length_in / 12 * choice->plies, choice->price_per_ft, &t->trial);
    t->option.board_feet = t->trial.board_feet, t->option.cost = t->trial.cost;
}

static void take(const frame_column_check_out *found, post_trial *t) {
    frame_post_sizes_option *o = &t->option;
    t->trial.known = found->known;
    t->trial.passes = o->passes = found->passes, t->trial.governs = o->governs = found->governs;
    t->trial.ratio = o->ratio = found->ratio;
    o->compression_ratio = found->compression_ratio, o->combined_ratio = found->combined_ratio;
    o->bearing_ratio = found->bearing_ratio, o->capacity_lb = found->capacity_lb;
}

static int fits(const frame_post_sizes_in *in, const frame_post_choice *choice) {
    double thickness, width;
    if (frame_size_dressed(choice->size, 0, &thickness, &width)) return 1; /* the check says what is wrong */
    if (is_given(in->most_width_in) && thickness * choice->plies > in->most_width_in) return 0;
    return !is_given(in->most_depth_in) || width <= in->most_depth_in;
}

static frame_status try_one(const frame_post_sizes_in *in, const frame_post_choice *choice, size_t place,
                            frame_array *trials) {
    post_trial t;
    frame_column_check_out found;
    if (!fits(in, choice)) return FRAME_OK;
    frame_struct_blank(&frame_post_sizes_option_facts, &t.option);
    set_check(in, choice, &t.check);
    t.option.size = choice->size, t.option.plies = choice->plies, t.option.choice = (int32_t)place;
    t.option.species = t.check.species, t.option.grade = t.check.grade, t.option.name = choice->name;
    t.option.passes = 0;
    frame_trial_begin(choice->plies, &t.trial);
    price(in, choice, &t);
    const frame_status status = frame_column_check(&t.check, &found, NULL);
    if (!status) take(&found, &t);
    if (frame_trial_refused(status, &t.trial)) return status;
    return frame_array_push(trials, &t) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status try_all(const frame_post_sizes_in *in, frame_array *trials) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < in->choice_count; i++) {
        frame_post_choice choice;
        frame_post_choice_item(in->choices, i, &choice);
        if ((status = try_one(in, &choice, i, trials))) return frame_trial_within(status, &frame_post_choice_facts, i);
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

static frame_status give_options(const frame_trials_sum *sum, const frame_array *trials, frame_answer *answer) {
    const post_trial *all = trials->items;
    for (size_t i = 0; i < trials->count; i++) {
        frame_post_sizes_option *option = frame_answer_add(answer, 0);
        if (!option) return FRAME_NO_MEMORY;
        *option = all[i].option;
        option->reason = frame_trial_reason(sum, &all[i].trial, &all[0].trial, "", answer);
        option->name = frame_answer_text(answer, all[i].option.name);
    }
    return FRAME_OK;
}

static void give_best(const frame_trials_sum *sum, const frame_post_sizes_in *in, const post_trial *first,
                      frame_post_sizes_out *out) {
    const frame_post_sizes_option *best = &first->option;
    out->tried_count = sum->tried, out->passing_count = sum->passing;
    out->passes = sum->passing > 0;
    out->known = first->trial.known;
    out->cautions = FRAME_BIT(FRAME_POST_CAUTION_ENDS);
    if (!sum->by_cost) out->cautions |= FRAME_BIT(FRAME_POST_CAUTION_BOARD_FEET);
    if (!out->passes) out->cautions |= FRAME_BIT(FRAME_POST_CAUTION_NONE);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_POST_CAUTION_MEMORY);
    out->not_checked = FRAME_BIT(FRAME_POST_UNCHECKED_COMBINATIONS) | FRAME_BIT(FRAME_POST_UNCHECKED_UPLIFT) |
                       FRAME_BIT(FRAME_POST_UNCHECKED_CODE);
    if (!frame_trial_has(in->plate_species)) out->not_checked |= FRAME_BIT(FRAME_POST_UNCHECKED_PLATE);
    if (!out->passes) return;
    if (best->plies > 1) out->cautions |= FRAME_BIT(FRAME_POST_CAUTION_PLIES);
    out->size = best->size, out->plies = best->plies, out->ratio = best->ratio;
    out->board_feet = best->board_feet;
    out->cost = sum->by_cost ? best->cost : FRAME_NOT_GIVEN;
}

static frame_status record_best(const post_trial *best, frame_working *record) {
    frame_column_check_out again;
    if (!frame_trial_heading(&best->trial, record)) return FRAME_OK;
    FRAME_ENTER(record);
    const frame_status status = frame_column_check(&best->check, &again, record);
    FRAME_LEAVE(record);
    return status;
}

static frame_status solve(const frame_post_sizes_in *in, frame_answer *answer, frame_post_sizes_out *out,
                          frame_working *record) {
    frame_array trials = {.item_size = sizeof(post_trial)};
    frame_trials_sum sum;
    frame_status status = try_all(in, &trials);
    if (!status) {
        frame_trials_rank(&trials, &sum);
        give_best(&sum, in, trials.items, out);
        status = give_options(&sum, &trials, answer);
    }
    if (!status) status = record_best(trials.items, record);
    frame_array_give(&trials);
    return status;
}
FRAME_IMPLEMENT_ANSWER(post_sizes, solve);
