/* Which header to buy: every choice is a beam_check, then they are ranked. */
#include "strength/header_sizes.h"

#include <stdio.h>

#include "material/lumber.h"
#include "strength/refusals.h"
#include "strength_facts.h"
#include "working/calculation.h"

enum { USUAL_SIZES = 5 };

/* Tried where the caller names no choices: common practice for headers. */
static const frame_size usual[USUAL_SIZES] = {FRAME_SIZE(2, 4), FRAME_SIZE(2, 6), FRAME_SIZE(2, 8), FRAME_SIZE(2, 10),
                                              FRAME_SIZE(2, 12)};

static int has(int32_t value) {
    return value != FRAME_NOT_GIVEN_INT;
}

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
    check->species = has(choice->species) || own ? choice->species : in->species;
    check->grade = has(choice->grade) || own ? choice->grade : in->grade;
    check->width_in = choice->width_in, check->depth_in = choice->depth_in;
    check->fb_psi = choice->fb_psi, check->fv_psi = choice->fv_psi, check->fc_perp_psi = choice->fc_perp_psi;
    check->e_psi = choice->e_psi, check->e_min_psi = choice->e_min_psi;
    check->specific_gravity = choice->specific_gravity;
    check->self_weight = in->self_weight && (!own || is_given(choice->specific_gravity));
}

/* True thickness and width of one ply. */
static frame_status ply_of(const frame_header_choice *choice, double *thickness, double *width) {
    if (has(choice->size)) return frame_size_dressed(choice->size, 0, thickness, width);
    if (!is_given(choice->width_in) || !is_given(choice->depth_in))
        return frame_lacks("size", "a nominal size, or width_in and depth_in");
    *thickness = choice->width_in, *width = choice->depth_in;
    return FRAME_OK;
}

static void set_option(const frame_header_choice *choice, size_t place, double thickness, double width,
                       frame_header_trial *t) {
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
                  frame_header_trial *t) {
    frame_header_sizes_option *o = &t->option;
    double b = thickness, d = width;
    if (has(choice->size)) frame_size_nominal(choice->size, &b, &d);
    const double bearing = is_given(in->bearing_in) ? in->bearing_in : o->bearing_needed_in;
    o->length_in = in->span_in + (is_given(bearing) ? bearing : 0);
    o->board_feet = b * d / 12 * o->length_in / 12 * o->plies;
    if (is_given(choice->price_per_ft)) o->cost = choice->price_per_ft * o->length_in / 12 * o->plies;
}

static void take_result(frame_header_trial *t) {
    frame_header_sizes_option *o = &t->option;
    const frame_beam_check_out *f = &t->found;
    o->passes = f->passes;
    o->governs = f->governs;
    o->combination = f->combination;
    o->ratio = f->ratio;
    o->bending_ratio = f->bending_ratio, o->shear_ratio = f->shear_ratio;
    o->bearing_ratio = f->bearing_ratio, o->deflection_ratio = f->deflection_ratio;
    o->bearing_needed_in = f->bearing_needed_in;
}

/* What is missing or contradictory is the caller's to mend; what one lumber cannot do is that choice's reason. */
static int is_of_choice(frame_status status) {
    return status == FRAME_NO_VALUE || status == FRAME_OUTSIDE_SCOPE || status == FRAME_REFUSED;
}

static frame_status try_one(const frame_header_sizes_in *in, const frame_header_choice *choice, size_t place,
                            int32_t plies, frame_array *trials) {
    frame_header_trial t = {0};
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
    status = frame_beam_check(&t.check, &t.found, NULL);
    if (status && !is_of_choice(status)) return status;
    t.option.passes = 0;
    if (status)
        snprintf(t.refusal, sizeof t.refusal, "%s", frame_error_text());
    else
        take_result(&t);
    price(choice, in, thickness, width, &t);
    return frame_array_push(trials, &t) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status try_choice(const frame_header_sizes_in *in, const frame_header_choice *choice, size_t place,
                               frame_array *trials) {
    const int32_t from = has(choice->plies) ? choice->plies : 1,
                  to = has(choice->plies) ? choice->plies : in->most_plies;
    frame_status status = FRAME_OK;
    for (int32_t plies = from; plies <= to && !status; plies++) status = try_one(in, choice, place, plies, trials);
    return status;
}

/* A failure of a choice's own field gets its place in the list before its name. */
static frame_status within_choice(frame_status status, size_t place) {
    if (status == FRAME_NO_MEMORY || !frame_field_find(&frame_header_choice_facts, frame_error_field())) return status;
    return frame_fail_within("choices[%zu].", place);
}

static frame_status try_all(const frame_header_sizes_in *in, frame_array *trials) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < in->choice_count && !status; i++) {
        frame_header_choice choice;
        frame_header_choice_item(in->choices, i, &choice);
        status = try_choice(in, &choice, i, trials);
        if (status) return within_choice(status, i);
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

/* The check of the best, or of the nearest, step by step. */
static frame_status record_best(const frame_header_trial *best, frame_working *record) {
    frame_beam_check_out again;
    if (!record || best->refusal[0]) return FRAME_OK;
    FRAME_HEADING(record, best->option.passes ? "The best choice" : "The choice that is nearest to holding");
    FRAME_ENTER(record);
    const frame_status status = frame_beam_check(&best->check, &again, record);
    FRAME_LEAVE(record);
    return status;
}

static frame_status solve(const frame_header_sizes_in *in, frame_answer *answer, frame_header_sizes_out *out,
                          frame_working *record) {
    frame_array trials = {.item_size = sizeof(frame_header_trial)};
    frame_status status = try_all(in, &trials);
    if (!status) status = frame_header_rank(in, &trials, answer, out);
    if (!status) status = record_best(trials.items, record);
    frame_array_give(&trials);
    return status;
}
FRAME_IMPLEMENT_ANSWER(header_sizes, solve);
