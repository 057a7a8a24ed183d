/* Which joist to buy: every choice is a joist_check; then they are ranked, and each says why it loses. */
#include <math.h>

#include "base/error.h"
#include "material/lumber.h"
#include "strength/refusals.h"
#include "strength/trials.h"
#include "strength_facts.h"
#include "working/calculation.h"

static const frame_size usual_sizes[] = {FRAME_SIZE(2, 6), FRAME_SIZE(2, 8), FRAME_SIZE(2, 10), FRAME_SIZE(2, 12)};
static const double usual_spacings[] = {12, 16, 19.2, 24};

typedef struct joist_trial {
    frame_trial trial;
    frame_joist_check_in check;
    frame_joist_sizes_option option;
} joist_trial;

static int is_given(double value) {
    return value != FRAME_NOT_GIVEN;
}

static void set_loads(const frame_joist_sizes_in *in, frame_joist_check_in *check) {
    frame_joist_check_in_init(check);
    check->use = in->use, check->service = in->service, check->incised = in->incised;
    check->span_in = in->span_in, check->slope = in->slope, check->bearing_in = in->bearing_in;
    check->live_psf = in->live_psf, check->dead_psf = in->dead_psf, check->snow_psf = in->snow_psf;
    check->deflection_limit = in->deflection_limit;
    check->total_deflection_limit = in->total_deflection_limit;
    check->method = in->method, check->load_edition = in->load_edition;
}

static void set_choice(const frame_joist_sizes_in *in, const frame_joist_choice *choice, double spacing,
                       frame_joist_check_in *check) {
    const int own = is_given(choice->fb_psi);
    check->size = choice->size, check->spacing_in = spacing;
    check->species = frame_trial_has(choice->species) || own ? choice->species : in->species;
    check->grade = frame_trial_has(choice->grade) || own ? choice->grade : in->grade;
    check->width_in = choice->width_in, check->depth_in = choice->depth_in;
    check->fb_psi = choice->fb_psi, check->fv_psi = choice->fv_psi;
    check->fc_perp_psi = choice->fc_perp_psi, check->e_psi = choice->e_psi;
}

/* True depth, and board feet in a foot of length by nominal size, by true size without one. */
static frame_status find_size(const frame_joist_choice *choice, double *depth, double *board_feet) {
    double thickness, width;
    if (!frame_trial_has(choice->size)) {
        if (!is_given(choice->width_in) || !is_given(choice->depth_in))
            return frame_lacks("size", "a nominal size, or width_in and depth_in");
        *depth = choice->depth_in;
        *board_feet = choice->width_in * choice->depth_in / 12;
        return FRAME_OK;
    }
    const frame_status status = frame_size_dressed(choice->size, 0, &thickness, depth);
    if (status) return status;
    frame_size_nominal(choice->size, &thickness, &width);
    *board_feet = thickness * width / 12;
    return FRAME_OK;
}

/* A foot of joist stands for so many square feet of plan; a rafter is longer than its plan. */
static void price(const frame_joist_choice *choice, const frame_joist_sizes_in *in, double board_feet, joist_trial *t) {
    const double slope = is_given(in->slope) ? in->slope : 0;
    const double feet = sqrt(1 + slope * slope) / (t->option.spacing_in / 12);
    frame_trial_price(board_feet, feet, choice->price_per_ft, &t->trial);
    t->option.board_feet_per_ft2 = t->trial.board_feet, t->option.cost_per_ft2 = t->trial.cost;
}

static void take(const frame_joist_check_out *found, joist_trial *t) {
    frame_joist_sizes_option *o = &t->option;
    t->trial.known = found->known;
    t->trial.passes = o->passes = found->passes, t->trial.governs = o->governs = found->governs;
    t->trial.ratio = o->ratio = found->ratio;
    o->bending_ratio = found->bending_ratio, o->shear_ratio = found->shear_ratio;
    o->bearing_ratio = found->bearing_ratio, o->deflection_ratio = found->deflection_ratio;
    o->bearing_needed_in = found->bearing_needed_in;
}

static frame_status try_one(const frame_joist_sizes_in *in, const frame_joist_choice *choice, size_t place,
                            double spacing, frame_array *trials) {
    joist_trial t;
    frame_joist_check_out found;
    double depth, board_feet;
    frame_struct_blank(&frame_joist_sizes_option_facts, &t.option);
    frame_status status = find_size(choice, &depth, &board_feet);
    if (status || (is_given(in->most_depth_in) && depth > in->most_depth_in)) return status;
    set_loads(in, &t.check);
    set_choice(in, choice, spacing, &t.check);
    t.option.size = choice->size, t.option.spacing_in = spacing, t.option.choice = (int32_t)place;
    t.option.species = t.check.species, t.option.grade = t.check.grade, t.option.name = choice->name;
    t.option.passes = 0;
    frame_trial_begin(1, &t.trial);
    price(choice, in, board_feet, &t);
    status = frame_joist_check(&t.check, &found, NULL);
    if (!status) take(&found, &t);
    if (frame_trial_refused(status, &t.trial)) return status;
    return frame_array_push(trials, &t) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status try_choice(const frame_joist_sizes_in *in, const frame_joist_choice *choice, size_t place,
                               frame_array *trials) {
    const double *spacings = in->spacing_count ? in->spacings_in : usual_spacings;
    const size_t count = in->spacing_count ? in->spacing_count : 4;
    frame_status status = FRAME_OK;
    if (is_given(choice->spacing_in)) return try_one(in, choice, place, choice->spacing_in, trials);
    for (size_t i = 0; i < count && !status; i++) status = try_one(in, choice, place, spacings[i], trials);
    return status;
}

static frame_status try_all(const frame_joist_sizes_in *in, frame_array *trials) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < in->choice_count; i++) {
        frame_joist_choice choice;
        frame_joist_choice_item(in->choices, i, &choice);
        if ((status = try_choice(in, &choice, i, trials)))
            return frame_trial_within(status, &frame_joist_choice_facts, i);
    }
    for (size_t i = 0; i < 4 && !in->choice_count && !status; i++) {
        frame_joist_choice choice;
        frame_joist_choice_init(&choice);
        choice.size = usual_sizes[i];
        status = try_choice(in, &choice, i, trials);
    }
    if (!status && !trials->count)
        return frame_fail(FRAME_NO_VALUE, "choices", "", "a choice within most_depth_in",
                          "choices: none is left; valid is a choice within most_depth_in");
    return status;
}

static frame_status give_options(const frame_trials_sum *sum, const frame_array *trials, frame_answer *answer) {
    const joist_trial *all = trials->items;
    for (size_t i = 0; i < trials->count; i++) {
        frame_joist_sizes_option *option = frame_answer_add(answer, 0);
        if (!option) return FRAME_NO_MEMORY;
        *option = all[i].option;
        option->reason = frame_trial_reason(sum, &all[i].trial, &all[0].trial, " on a square foot", answer);
        option->name = frame_answer_text(answer, all[i].option.name);
    }
    return FRAME_OK;
}

static void give_best(const frame_trials_sum *sum, const frame_joist_sizes_in *in, const joist_trial *first,
                      frame_joist_sizes_out *out) {
    const frame_joist_sizes_option *best = &first->option;
    out->tried_count = sum->tried, out->passing_count = sum->passing;
    out->passes = sum->passing > 0;
    out->known = first->trial.known;
    out->cautions = FRAME_BIT(FRAME_JOIST_SIZES_CAUTION_CODE) | FRAME_BIT(FRAME_JOIST_SIZES_CAUTION_SHEATHING);
    if (in->snow_psf > 0 && in->load_edition != FRAME_LOADS_ASCE_7_22)
        out->cautions |= FRAME_BIT(FRAME_JOIST_SIZES_CAUTION_SNOW_BASIS);
    if (!sum->by_cost) out->cautions |= FRAME_BIT(FRAME_JOIST_SIZES_CAUTION_BOARD_FEET);
    if (!out->passes) out->cautions |= FRAME_BIT(FRAME_JOIST_SIZES_CAUTION_NONE);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_JOIST_SIZES_CAUTION_MEMORY);
    out->not_checked = FRAME_BIT(FRAME_JOIST_SIZES_UNCHECKED_LOCAL) | FRAME_BIT(FRAME_JOIST_SIZES_UNCHECKED_CUTS) |
                       FRAME_BIT(FRAME_JOIST_SIZES_UNCHECKED_SUPPORTS);
    if (in->use == FRAME_USE_FLOOR || in->use == FRAME_USE_DECK)
        out->not_checked |= FRAME_BIT(FRAME_JOIST_SIZES_UNCHECKED_VIBRATION);
    if (!out->passes) return;
    out->size = best->size, out->spacing_in = best->spacing_in, out->ratio = best->ratio;
    out->board_feet_per_ft2 = best->board_feet_per_ft2;
    out->cost_per_ft2 = sum->by_cost ? best->cost_per_ft2 : FRAME_NOT_GIVEN;
}

static frame_status record_best(const joist_trial *best, frame_working *record) {
    frame_joist_check_out again;
    if (!frame_trial_heading(&best->trial, record)) return FRAME_OK;
    FRAME_ENTER(record);
    const frame_status status = frame_joist_check(&best->check, &again, record);
    FRAME_LEAVE(record);
    return status;
}

static frame_status solve(const frame_joist_sizes_in *in, frame_answer *answer, frame_joist_sizes_out *out,
                          frame_working *record) {
    frame_array trials = {.item_size = sizeof(joist_trial)};
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
FRAME_IMPLEMENT_ANSWER(joist_sizes, solve);
