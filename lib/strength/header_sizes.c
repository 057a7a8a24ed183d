/* Which header to buy: every choice is a beam_check, then they are ranked. */
#include "base/error.h"
#include "material/lumber.h"
#include "strength/refusals.h"
#include "strength/trials.h"
#include "strength_facts.h"
#include "working/calculation.h"

typedef struct header_trial {
    frame_trial trial;
    frame_beam_check_in check;
    frame_header_sizes_option option;
} header_trial;

enum { USUAL_SIZES = 5 };

/* Tried where the caller names no choices: common practice for headers. */
static const frame_size usual[USUAL_SIZES] = {FRAME_SIZE(2, 4), FRAME_SIZE(2, 6), FRAME_SIZE(2, 8), FRAME_SIZE(2, 10),
                                              FRAME_SIZE(2, 12)};

static int is_given(double value) {
    return value != FRAME_NOT_GIVEN;
}

/* What all choices share. */
static void set_loads(const frame_header_sizes_in *in, frame_beam_check_in *check) {
    check->span_in = in->span_in;
    check->dead_plf = in->dead_plf, check->live_plf = in->live_plf;
    check->roof_live_plf = in->roof_live_plf, check->snow_plf = in->snow_plf;
    check->spacing_in = in->spacing_in, check->dead_psf = in->dead_psf, check->live_psf = in->live_psf;
    check->roof_live_psf = in->roof_live_psf, check->snow_psf = in->snow_psf;
    check->bearing_in = in->bearing_in;
    check->unbraced_length_in = in->unbraced_length_in;
    check->deflection_limit = in->deflection_limit;
    check->total_deflection_limit = in->total_deflection_limit;
    check->creep_factor = in->creep_factor;
    check->service = in->service;
    check->incised = in->incised;
    check->compression_edge = in->compression_edge;
    check->live_duration = in->live_duration;
    check->method = in->method, check->load_edition = in->load_edition;
}

static void set_choice(const frame_header_sizes_in *in, const frame_header_choice *choice, int32_t plies,
                       frame_beam_check_in *check) {
    const int own = is_given(choice->fb_psi);
    check->size = choice->size;
    check->plies = plies;
    check->turned = choice->turned;
    check->species = frame_trial_has(choice->species) || own ? choice->species : in->species;
    check->grade = frame_trial_has(choice->grade) || own ? choice->grade : in->grade;
    check->width_in = choice->width_in, check->depth_in = choice->depth_in;
    check->fb_psi = choice->fb_psi, check->fv_psi = choice->fv_psi, check->fc_perp_psi = choice->fc_perp_psi;
    check->e_psi = choice->e_psi, check->e_min_psi = choice->e_min_psi;
    check->specific_gravity = choice->specific_gravity;
    check->self_weight = in->self_weight && (!own || is_given(choice->specific_gravity));
}

/* True thickness and width of one ply. */
static frame_status ply_of(const frame_header_choice *choice, double *thickness, double *width) {
    if (frame_trial_has(choice->size)) return frame_size_dressed(choice->size, 0, thickness, width);
    if (!is_given(choice->width_in) || !is_given(choice->depth_in))
        return frame_lacks("size", "a nominal size, or width_in and depth_in");
    *thickness = choice->width_in, *width = choice->depth_in;
    return FRAME_OK;
}

static void set_option(const frame_header_choice *choice, size_t place, double thickness, double width,
                       header_trial *t) {
    frame_header_sizes_option *o = &t->option;
    const int flat = choice->turned == FRAME_TURNED_FLAT;
    o->size = t->check.size;
    o->plies = t->check.plies;
    o->species = t->check.species, o->grade = t->check.grade;
    o->turned = choice->turned;
    o->choice = (int32_t)place;
    o->width_in = flat ? width : thickness * o->plies;
    o->depth_in = flat ? thickness * o->plies : width;
    o->name = choice->name;
}

/* Board feet by nominal size, by true size without one; the length is the span and the bearing that reaches past it. */
static void price(const frame_header_choice *choice, const frame_header_sizes_in *in, double thickness, double width,
                  header_trial *t) {
    frame_header_sizes_option *o = &t->option;
    double b = thickness, d = width;
    if (frame_trial_has(choice->size)) frame_size_nominal(choice->size, &b, &d);
    const double bearing = is_given(in->bearing_in) ? in->bearing_in : o->bearing_needed_in;
    o->length_in = in->span_in + (is_given(bearing) ? bearing : 0);
    frame_trial_price(b * d / 12, o->length_in / 12 * o->plies, choice->price_per_ft, &t->trial);
    o->board_feet = t->trial.board_feet, o->cost = t->trial.cost;
}

static void take_result(const frame_beam_check_out *f, header_trial *t) {
    frame_header_sizes_option *o = &t->option;
    t->trial.known = f->known;
    t->trial.passes = o->passes = f->passes;
    t->trial.governs = o->governs = f->governs;
    t->trial.ratio = o->ratio = f->ratio;
    o->combination = f->combination;
    o->bending_ratio = f->bending_ratio, o->shear_ratio = f->shear_ratio;
    o->bearing_ratio = f->bearing_ratio, o->deflection_ratio = f->deflection_ratio;
    o->bearing_needed_in = f->bearing_needed_in;
}

static frame_status try_one(const frame_header_sizes_in *in, const frame_header_choice *choice, size_t place,
                            int32_t plies, frame_array *trials) {
    header_trial t;
    frame_beam_check_out found;
    double thickness, width;
    frame_struct_blank(&frame_header_sizes_option_facts, &t.option);
    frame_beam_check_in_init(&t.check);
    set_loads(in, &t.check);
    set_choice(in, choice, plies, &t.check);
    frame_status status = ply_of(choice, &thickness, &width);
    if (status) return status;
    set_option(choice, place, thickness, width, &t);
    if (is_given(in->most_width_in) && t.option.width_in > in->most_width_in) return FRAME_OK;
    if (is_given(in->most_depth_in) && t.option.depth_in > in->most_depth_in) return FRAME_OK;
    status = frame_beam_check(&t.check, &found, NULL);
    t.option.passes = 0;
    frame_trial_begin(plies, &t.trial);
    if (!status) take_result(&found, &t);
    if (frame_trial_refused(status, &t.trial)) return status;
    price(choice, in, thickness, width, &t);
    return frame_array_push(trials, &t) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status try_choice(const frame_header_sizes_in *in, const frame_header_choice *choice, size_t place,
                               frame_array *trials) {
    const int32_t from = frame_trial_has(choice->plies) ? choice->plies : 1,
                  to = frame_trial_has(choice->plies) ? choice->plies : in->most_plies;
    frame_status status = FRAME_OK;
    for (int32_t plies = from; plies <= to && !status; plies++) status = try_one(in, choice, place, plies, trials);
    return status;
}

static frame_status try_all(const frame_header_sizes_in *in, frame_array *trials) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < in->choice_count && !status; i++) {
        frame_header_choice choice;
        frame_header_choice_item(in->choices, i, &choice);
        status = try_choice(in, &choice, i, trials);
        if (status) return frame_trial_within(status, &frame_header_choice_facts, i);
    }
    for (size_t i = 0; i < USUAL_SIZES && !in->choice_count && !status; i++) {
        frame_header_choice choice;
        frame_header_choice_init(&choice);
        choice.size = usual[i];
        choice.turned = FRAME_TURNED_ON_EDGE;
        status = try_choice(in, &choice, i, trials);
    }
    if (!status && !trials->count)
        status = frame_fail(FRAME_NO_VALUE, "choices", "", "a choice within most_width_in and most_depth_in",
                            "choices: none is left; valid is a choice within most_width_in and most_depth_in");
    return status;
}

static frame_status give_options(const frame_trials_sum *sum, const frame_array *trials, frame_answer *answer) {
    const header_trial *all = trials->items;
    for (size_t i = 0; i < trials->count; i++) {
        frame_header_sizes_option *option = frame_answer_add(answer, 0);
        if (!option) return FRAME_NO_MEMORY;
        *option = all[i].option;
        option->reason = frame_trial_reason(sum, &all[i].trial, &all[0].trial, "", answer);
        option->name = frame_answer_text(answer, all[i].option.name);
    }
    return FRAME_OK;
}

static void give_best(const frame_trials_sum *sum, const frame_header_sizes_in *in, const header_trial *first,
                      frame_header_sizes_out *out) {
    const frame_header_sizes_option *best = &first->option;
    out->tried_count = sum->tried, out->passing_count = sum->passing;
    out->passes = sum->passing > 0;
    out->known = first->trial.known;
    out->cautions = FRAME_BIT(FRAME_HEADER_CAUTION_POINT_LOADS) | FRAME_BIT(FRAME_HEADER_CAUTION_SHORING);
    if ((in->snow_plf > 0 || in->snow_psf > 0) && in->load_edition != FRAME_LOADS_ASCE_7_22)
        out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_SNOW_BASIS);
    if (!sum->by_cost) out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_BOARD_FEET);
    if (in->compression_edge == FRAME_EDGE_HELD) out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_EDGE);
    if (!out->passes) out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_NONE);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_MEMORY);
    out->not_checked = FRAME_BIT(FRAME_HEADER_UNCHECKED_SUPPORTS) | FRAME_BIT(FRAME_HEADER_UNCHECKED_CODE);
    if (!is_given(in->bearing_in)) out->not_checked |= FRAME_BIT(FRAME_HEADER_UNCHECKED_BEARING);
    if (!out->passes) return;
    if (best->plies > 1) out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_PLIES);
    out->size = best->size;
    out->plies = best->plies;
    out->board_feet = best->board_feet;
    out->cost = sum->by_cost ? best->cost : FRAME_NOT_GIVEN;
    out->ratio = best->ratio;
}

/* The check of the best, or of the nearest, step by step. */
static frame_status record_best(const header_trial *best, frame_working *record) {
    frame_beam_check_out again;
    if (!frame_trial_heading(&best->trial, record)) return FRAME_OK;
    FRAME_ENTER(record);
    const frame_status status = frame_beam_check(&best->check, &again, record);
    FRAME_LEAVE(record);
    return status;
}

static frame_status solve(const frame_header_sizes_in *in, frame_answer *answer, frame_header_sizes_out *out,
                          frame_working *record) {
    frame_array trials = {.item_size = sizeof(header_trial)};
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
FRAME_IMPLEMENT_ANSWER(header_sizes, solve);
