/* The order of headers that were tried, and why each but the first loses. */
#include "strength/header_sizes.h"

#include <stdio.h>
#include <string.h>

#include "base/number.h"
#include "strength_facts.h"

static int is_given(double value) {
    return value != FRAME_NOT_GIVEN;
}

/* What ranks a choice: those that hold by cost or board feet, the others by how far they are from holding. */
typedef struct ranking {
    int by_cost;
} ranking;

static double measure(const ranking *r, const frame_header_sizes_option *o) {
    return r->by_cost ? o->cost : o->board_feet;
}

static int comes_before(const ranking *r, const frame_header_trial *a, const frame_header_trial *b) {
    const frame_header_sizes_option *x = &a->option, *y = &b->option;
    if (x->passes != y->passes) return x->passes;
    if (!x->passes) {
        if (is_given(x->ratio) != is_given(y->ratio)) return is_given(x->ratio);
        return x->ratio < y->ratio;
    }
    if (measure(r, x) != measure(r, y)) return measure(r, x) < measure(r, y);
    if (x->plies != y->plies) return x->plies < y->plies;
    return x->ratio < y->ratio;
}

/* Insertion: stable, and choices are few. */
static void rank(const ranking *r, frame_header_trial *trials, size_t count) {
    for (size_t i = 1; i < count; i++) {
        const frame_header_trial moved = trials[i];
        size_t at = i;
        for (; at > 0 && comes_before(r, &moved, &trials[at - 1]); at--) trials[at] = trials[at - 1];
        trials[at] = moved;
    }
}

static const char *const check_names[] = {"", "bending", "shear", "bearing", "deflection"};

/* Why a choice loses. */
static const char *reason_of(const ranking *r, const frame_header_trial *t, const frame_header_trial *best,
                             frame_answer *answer) {
    char words[300], number[32];
    const frame_header_sizes_option *o = &t->option;
    if (t->refusal[0]) {
        snprintf(words, sizeof words, "not checked: %s", t->refusal);
    } else if (!o->passes) {
        frame_number_print(o->ratio, 3, number, sizeof number);
        snprintf(words, sizeof words, "fails in %s: %s of what is allowed", check_names[o->governs], number);
    } else if (t == best) {
        snprintf(words, sizeof words, "%s of those that hold", r->by_cost ? "the cheapest" : "the fewest board feet");
    } else {
        frame_number_print(measure(r, o) - measure(r, &best->option), 3, number, sizeof number);
        snprintf(words, sizeof words, "holds, and %s %s more than the best", r->by_cost ? "costs" : "takes", number);
        if (!r->by_cost) strncat(words, " in board feet", sizeof words - strlen(words) - 1);
    }
    return frame_answer_text(answer, words);
}

static frame_status give_options(const ranking *r, const frame_array *trials, frame_answer *answer) {
    const frame_header_trial *all = trials->items;
    for (size_t i = 0; i < trials->count; i++) {
        frame_header_sizes_option *option = frame_answer_add(answer, 0);
        if (!option) return FRAME_NO_MEMORY;
        *option = all[i].option;
        option->reason = reason_of(r, &all[i], &all[0], answer);
        option->name = frame_answer_text(answer, all[i].option.name);
    }
    return FRAME_OK;
}

static void give_best(const ranking *r, const frame_array *trials, const frame_header_sizes_in *in,
                      frame_header_sizes_out *out) {
    const frame_header_trial *all = trials->items;
    out->tried_count = (int32_t)trials->count;
    out->passing_count = 0;
    for (size_t i = 0; i < trials->count; i++) out->passing_count += all[i].option.passes;
    out->passes = out->passing_count > 0;
    out->known = all[0].refusal[0] ? FRAME_KNOWN_MEMORY : all[0].found.known;
    out->cautions = FRAME_BIT(FRAME_HEADER_CAUTION_POINT_LOADS) | FRAME_BIT(FRAME_HEADER_CAUTION_SHORING);
    if (!r->by_cost) out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_BOARD_FEET);
    if (in->compression_edge == FRAME_EDGE_HELD) out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_EDGE);
    if (!out->passes) out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_NONE);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_MEMORY);
    out->not_checked = FRAME_BIT(FRAME_HEADER_UNCHECKED_SUPPORTS) | FRAME_BIT(FRAME_HEADER_UNCHECKED_CODE);
    if (!is_given(in->bearing_in)) out->not_checked |= FRAME_BIT(FRAME_HEADER_UNCHECKED_BEARING);
    if (!out->passes) return;
    const frame_header_sizes_option *best = &all[0].option;
    if (best->plies > 1) out->cautions |= FRAME_BIT(FRAME_HEADER_CAUTION_PLIES);
    out->size = best->size;
    out->plies = best->plies;
    out->board_feet = best->board_feet;
    out->cost = r->by_cost ? best->cost : FRAME_NOT_GIVEN;
    out->ratio = best->ratio;
}

frame_status frame_header_rank(const frame_header_sizes_in *in, frame_array *trials, frame_answer *answer,
                               frame_header_sizes_out *out) {
    ranking r = {1};
    for (size_t i = 0; i < trials->count; i++)
        r.by_cost &= is_given(FRAME_ITEM(frame_header_trial, *trials, i).option.cost);
    rank(&r, trials->items, trials->count);
    give_best(&r, trials, in, out);
    return give_options(&r, trials, answer);
}
