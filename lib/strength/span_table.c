/* A whole table of longest spans. */
#include "strength/span_table.h"

#include <math.h>
#include <string.h>

#include "base/error.h"
#include "strength_facts.h"
#include "working/calculation.h"

#define CELLS_MOST 1000000.0

static const double usual_spacings[] = {12, 16, 19.2, 24};
static const frame_size usual_sizes[] = {FRAME_SIZE(2, 6), FRAME_SIZE(2, 8), FRAME_SIZE(2, 10), FRAME_SIZE(2, 12)};
static const char *const usual_grades[] = {"SS", "No.1", "No.2", "No.3"};

static const void *kept(frame_answer *answer, const void *items, size_t count, size_t size) {
    void *copy = frame_arena_take(&answer->arena, count * size);
    if (copy) memcpy(copy, items, count * size);
    return copy;
}

/* What was asked, in memory of the answer's own. */
static frame_status make_plan(const frame_span_table_in *in, frame_answer *answer, frame_span_table_plan *plan) {
    frame_grade grades[4];
    for (size_t i = 0; i < 4; i++) frame_grade_find(usual_grades[i], &grades[i]);
    plan->species_count = in->species_count;
    plan->grade_count = in->grade_count ? in->grade_count : 4;
    plan->size_count = in->size_count ? in->size_count : 4;
    plan->spacing_count = in->spacing_count ? in->spacing_count : 4;
    plan->species = kept(answer, in->species, plan->species_count, sizeof *plan->species);
    plan->grades = kept(answer, in->grade_count ? in->grades : grades, plan->grade_count, sizeof *plan->grades);
    plan->sizes = kept(answer, in->size_count ? in->sizes : usual_sizes, plan->size_count, sizeof *plan->sizes);
    plan->spacings =
        kept(answer, in->spacing_count ? in->spacings_in : usual_spacings, plan->spacing_count, sizeof(double));
    plan->most_span = in->most_span_in;
    plan->rounding = in->rounding;
    return plan->species && plan->grades && plan->sizes && plan->spacings ? FRAME_OK : FRAME_NO_MEMORY;
}

static void set_base(const frame_span_table_in *in, frame_joist_span_in *base) {
    frame_joist_span_in_init(base);
    base->use = in->use, base->service = in->service, base->incised = in->incised;
    base->live_psf = in->live_psf, base->dead_psf = in->dead_psf, base->snow_psf = in->snow_psf;
    base->slope = in->slope;
    base->deflection_limit = in->deflection_limit;
    base->total_deflection_limit = in->total_deflection_limit;
    base->method = in->method, base->load_edition = in->load_edition;
}

/* Gathers what is said of the whole. */
typedef struct filling {
    const frame_span_table_plan *plan;
    frame_answer *answer;
    frame_span_table_out *out;
} filling;

static void take_span(const filling *f, const frame_joist_span_out *found, frame_span_table_cell *cell) {
    const int cut = f->plan->most_span != FRAME_NOT_GIVEN && found->span_in > f->plan->most_span;
    frame_span_table_out *out = f->out;
    cell->governs = found->governs, cell->known = found->known, cell->cut_off = cut;
    cell->span_in = cut ? f->plan->most_span : found->span_in;
    cell->bearing_needed_in = found->bearing_needed_in * (cell->span_in / found->span_in);
    out->filled_count++;
    if (found->known > out->known) out->known = found->known;
    if (out->shortest_in == FRAME_NOT_GIVEN || cell->span_in < out->shortest_in) out->shortest_in = cell->span_in;
    if (out->longest_in == FRAME_NOT_GIVEN || cell->span_in > out->longest_in) out->longest_in = cell->span_in;
}

/* A cell of lumber that the tables do not have stays empty; whatever else fails is the caller's to mend. */
static frame_status fill(const filling *f, const frame_joist_span_in *in) {
    frame_joist_span_out found;
    frame_span_table_cell *cell = frame_answer_add(f->answer, 0);
    if (!cell) return FRAME_NO_MEMORY;
    cell->species = in->species, cell->grade = in->grade, cell->size = in->size, cell->spacing_in = in->spacing_in;
    cell->cut_off = 0;
    const frame_status status = frame_joist_span(in, &found, NULL);
    if (!status) take_span(f, &found, cell);
    if (status == FRAME_NO_VALUE) f->out->empty_count++;
    return status == FRAME_NO_VALUE ? FRAME_OK : status;
}

static frame_status fill_all(const filling *f) {
    const frame_span_table_plan *p = f->plan;
    frame_joist_span_in in = p->base;
    frame_status status = FRAME_OK;
    for (size_t s = 0; s < p->species_count; s++)
        for (size_t g = 0; g < p->grade_count; g++)
            for (size_t c = 0; c < p->spacing_count; c++)
                for (size_t w = 0; w < p->size_count && !status; w++) {
                    in.species = p->species[s], in.grade = p->grades[g], in.size = p->sizes[w];
                    in.spacing_in = p->spacings[c];
                    status = fill(f, &in);
                }
    return status;
}

static void remark(const frame_span_table_in *in, frame_span_table_out *out) {
    out->cautions = FRAME_BIT(FRAME_SPAN_TABLE_CAUTION_CODE);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_SPAN_TABLE_CAUTION_MEMORY);
    if (out->empty_count) out->cautions |= FRAME_BIT(FRAME_SPAN_TABLE_CAUTION_EMPTY);
    if (in->snow_psf > 0 && in->load_edition == FRAME_LOADS_ASCE_7_16)
        out->cautions |= FRAME_BIT(FRAME_SPAN_TABLE_CAUTION_SNOW_BASIS);
    if (in->use == FRAME_USE_RAFTER) out->cautions |= FRAME_BIT(FRAME_SPAN_TABLE_CAUTION_RAFTER);
    out->not_checked = FRAME_BIT(FRAME_SPAN_TABLE_UNCHECKED_BEARING) | FRAME_BIT(FRAME_SPAN_TABLE_UNCHECKED_LOCAL) |
                       FRAME_BIT(FRAME_SPAN_TABLE_UNCHECKED_CUTS) | FRAME_BIT(FRAME_SPAN_TABLE_UNCHECKED_SUPPORTS);
}

static frame_status check_size(const frame_span_table_plan *p) {
    const double cells =
        (double)p->species_count * (double)p->grade_count * (double)p->spacing_count * (double)p->size_count;
    if (cells <= CELLS_MOST) return FRAME_OK;
    return frame_fail_number(FRAME_TOO_LARGE, "species", cells, "lists that make at most a million cells");
}

/* The working of a table is that of its first cell: the others differ in their numbers alone. */
static frame_status record_first(const frame_span_table_plan *p, frame_answer *answer, frame_working *record) {
    frame_joist_span_in in = p->base;
    frame_joist_span_out found;
    const frame_span_table_cell *cells = answer->lists[0].items;
    for (size_t i = 0; i < answer->lists[0].count; i++) {
        if (cells[i].span_in == FRAME_NOT_GIVEN) continue;
        in.species = cells[i].species, in.grade = cells[i].grade, in.size = cells[i].size;
        in.spacing_in = cells[i].spacing_in;
        FRAME_HEADING(record, "The first cell of the table; the others differ in their numbers alone");
        FRAME_ENTER(record);
        const frame_status status = frame_joist_span(&in, &found, record);
        FRAME_LEAVE(record);
        return status;
    }
    return FRAME_OK;
}

/* The plan goes with the answer's own memory. */
static void leave(void *plan) {
    (void)plan;
}

static frame_status solve(const frame_span_table_in *in, frame_answer *answer, frame_span_table_out *out,
                          frame_working *record) {
    frame_span_table_plan *plan = frame_arena_take(&answer->arena, sizeof *plan);
    if (!plan || make_plan(in, answer, plan)) return FRAME_NO_MEMORY;
    if (!frame_answer_own(answer, plan, leave)) return FRAME_NO_MEMORY; /* where the texts find it */
    set_base(in, &plan->base);
    out->known = FRAME_KNOWN_READ, out->filled_count = out->empty_count = 0;
    const filling f = {plan, answer, out};
    frame_status status = check_size(plan);
    if (!status) status = fill_all(&f);
    if (!status) remark(in, out);
    return status || !record ? status : record_first(plan, answer, record);
}
FRAME_IMPLEMENT_ANSWER(span_table, solve);

const frame_span_table_plan *frame_span_table_plan_of(const frame_span_table *answer) {
    return answer ? ((const frame_owned *)((const frame_answer *)answer)->owned.items)[0].object : NULL;
}

const frame_span_table_cell *frame_span_table_cell_of(const frame_span_table *answer, size_t species, size_t grade,
                                                      size_t spacing, size_t size) {
    const frame_span_table_plan *p = frame_span_table_plan_of(answer);
    const size_t i = ((species * p->grade_count + grade) * p->spacing_count + spacing) * p->size_count + size;
    return &FRAME_ANSWER_ITEM(const frame_span_table_cell, (const frame_answer *)answer, 0, i);
}

double frame_span_table_rounded(const frame_span_table_plan *plan, double span_in) {
    if (plan->rounding == FRAME_ROUND_UP) return ceil(span_in - 1e-9);
    return plan->rounding == FRAME_ROUND_DOWN ? floor(span_in + 1e-9) : floor(span_in + 0.5);
}
