/* Choosing whole boards from a list of patterns. */
#include "takeoff/selection.h"

#include <math.h>
#include <string.h>

static const double NEARLY_WHOLE = 1e-6;
enum { DEEPEST = 400 };

/* -- the program -- */

static size_t first_least_row(const frame_selection *selection) {
    return selection->job->item_count + selection->job->kind_count;
}

static size_t first_set_row(const frame_selection *selection) {
    return first_least_row(selection) + selection->job->kind_count;
}

static size_t count_rows(frame_selection *selection) {
    const frame_cut_job *job = selection->job;
    size_t rows = first_set_row(selection) + job->set_count;
    for (size_t s = 0; s < job->supply_count; s++) {
        size_t kinds = 0;
        for (size_t k = 0; k < job->kind_count; k++) kinds += job->kinds[k].supply == (int32_t)s;
        selection->shared[s] = kinds > 1 ? (uint32_t)rows++ : 0;
    }
    return rows;
}

static frame_status begin_rows(frame_selection *selection, const int64_t *at_least, const int64_t *limits) {
    const frame_cut_job *job = selection->job;
    const size_t rows = count_rows(selection), least = first_least_row(selection);
    double *values = frame_take_zeroed(rows, sizeof *values), *signs = frame_take_zeroed(rows, sizeof *signs);
    frame_status status = values && signs ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t r = 0; !status && r < rows; r++)
        signs[r] = r < job->item_count || (r >= least && r < first_set_row(selection) + job->set_count) ? -1 : 1;
    for (size_t i = 0; !status && i < job->item_count; i++) values[i] = job->items[i].wanted;
    for (size_t k = 0; !status && k < job->kind_count; k++) {
        values[job->item_count + k] = (double)limits[k];
        values[least + k] = (double)at_least[k];
    }
    for (size_t s = 0; !status && s < job->set_count; s++) values[first_set_row(selection) + s] = job->set_wanted[s];
    for (size_t s = 0; !status && s < job->supply_count; s++)
        if (selection->shared[s]) values[selection->shared[s]] = (double)job->supplies[s];
    if (!status) status = frame_linear_begin(&selection->linear, rows, values, signs);
    frame_give(values);
    frame_give(signs);
    return status;
}

static frame_status add_pattern(frame_selection *selection, const frame_cut_pattern *pattern,
                                frame_linear_entry *entries) {
    const frame_cut_job *job = selection->job;
    const frame_cut_part *parts = &selection->parts[pattern->part_first];
    const uint32_t kind = (uint32_t)pattern->kind, shared = selection->shared[job->kinds[kind].supply];
    size_t used = 0;
    for (uint32_t p = 0; p < pattern->part_count; p++) {
        size_t e = 0;
        while (e < used && entries[e].row != parts[p].item) e++;
        if (e == used) entries[used++] = (frame_linear_entry){parts[p].item, 0, 0};
        entries[e].value += parts[p].count;
    }
    entries[used++] = (frame_linear_entry){(uint32_t)job->item_count + kind, 0, 1};
    entries[used++] = (frame_linear_entry){(uint32_t)first_least_row(selection) + kind, 0, 1};
    if (shared) entries[used++] = (frame_linear_entry){shared, 0, 1};
    const double cost = (double)frame_cut_cost(job, pattern->kind, parts, pattern->part_count);
    return frame_linear_add(&selection->linear, cost, entries, used) < 0 ? FRAME_NO_MEMORY : FRAME_OK;
}

static frame_status add_choice(frame_selection *selection, size_t choice, frame_linear_entry *entries) {
    const frame_cut_choice *of = &selection->job->choices[choice];
    size_t used = 0;
    for (uint32_t p = 0; p < of->part_count; p++) {
        const frame_cut_part *part = &selection->job->choice_parts[of->part_first + p];
        entries[used++] = (frame_linear_entry){part->item, 0, -(double)part->count};
    }
    entries[used++] = (frame_linear_entry){(uint32_t)(first_set_row(selection) + (size_t)of->set), 0, 1};
    return frame_linear_add(&selection->linear, (double)of->cost, entries, used) < 0 ? FRAME_NO_MEMORY : FRAME_OK;
}

frame_status frame_selection_begin(frame_selection *selection, const frame_cut_job *job, frame_effort *effort,
                                   const frame_cut_pattern *patterns, size_t pattern_count, const frame_cut_part *parts,
                                   const int64_t *least, const int64_t *limits) {
    memset(selection, 0, sizeof *selection);
    frame_cut_plan_begin(&selection->plan);
    selection->job = job;
    selection->effort = effort;
    selection->patterns = patterns;
    selection->pattern_count = pattern_count;
    selection->parts = parts;
    selection->shared = frame_take_zeroed(job->supply_count, sizeof *selection->shared);
    selection->fixed = frame_take_zeroed(pattern_count + job->choice_count + 1, sizeof *selection->fixed);
    frame_linear_entry *entries = frame_take_zeroed(job->item_count + 4, sizeof *entries);
    frame_status status = selection->shared && selection->fixed && entries ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status) status = begin_rows(selection, least, limits);
    double dearest = 1;
    for (size_t k = 0; k < job->kind_count; k++) dearest = fmax(dearest, (double)job->kinds[k].cost);
    selection->linear.tolerance = 1e-9 * dearest;
    for (size_t p = 0; !status && p < pattern_count; p++) status = add_pattern(selection, &patterns[p], entries);
    for (size_t c = 0; !status && c < job->choice_count; c++) status = add_choice(selection, c, entries);
    frame_give(entries);
    return status;
}

void frame_selection_give(frame_selection *selection) {
    frame_linear_give(&selection->linear);
    frame_cut_plan_give(&selection->plan);
    frame_give(selection->shared);
    frame_give(selection->fixed);
    memset(selection, 0, sizeof *selection);
}

/* -- what the relaxed selection says -- */

static double level(const frame_selection *selection, size_t pattern) {
    return frame_linear_level(&selection->linear, (int32_t)pattern);
}

static double boards_of(const frame_selection *selection, size_t kind) {
    double boards = 0;
    for (size_t r = 0; r < selection->linear.rows; r++) {
        const int32_t column = selection->linear.basis[r];
        if (column < 0 || (size_t)column >= selection->pattern_count) continue;
        if (selection->patterns[column].kind == (int32_t)kind) boards += selection->linear.levels[r];
    }
    return boards;
}

/* Solves from wherever the basis is; 0 when there is nothing below the cost looked for. */
static int relax(frame_selection *selection) {
    frame_linear *linear = &selection->linear;
    frame_linear_relevel(linear);
    frame_linear_state state = frame_linear_dual(linear);
    if (state == FRAME_LINEAR_STOPPED) {
        frame_linear_restart(linear);
        state = frame_linear_dual(linear);
    }
    if (state == FRAME_LINEAR_SOLVED) state = frame_linear_primal(linear);
    const double rows = (double)linear->rows;
    const double spent = (double)linear->steps * (rows * rows * 0.5 + 4 * (double)linear->entries.count) + rows * rows;
    linear->steps = 0;
    selection->steps_left -= spent;
    if (frame_effort_spend(selection->effort, spent) || selection->steps_left < 0) selection->complete = 0;
    if (state == FRAME_LINEAR_IMPOSSIBLE) return 0;
    if (state != FRAME_LINEAR_SOLVED) selection->complete = 0;
    const double cost = (double)selection->fixed_cost + frame_linear_cost(linear);
    return frame_cut_round_up(selection->job, cost) < selection->below;
}

/* -- a plan found -- */

/* So many boards of a pattern, without what is cut beyond what is wanted. */
static frame_status keep_pattern(frame_selection *selection, size_t p, const frame_cut_rest *rest,
                                 frame_cut_part *parts) {
    const frame_cut_pattern *pattern = &selection->patterns[p];
    frame_status status = FRAME_OK;
    for (int64_t n = selection->fixed[p] + llround(level(selection, p)); !status && n > 0; n--) {
        size_t count = 0;
        for (uint32_t q = 0; q < pattern->part_count; q++) {
            frame_cut_part part = selection->parts[pattern->part_first + q];
            if ((int32_t)part.count > rest->wanted[part.item]) part.count = (uint32_t)rest->wanted[part.item];
            rest->wanted[part.item] -= (int32_t)part.count;
            if (part.count) parts[count++] = part;
        }
        if (count) status = frame_cut_plan_add(&selection->plan, selection->job, pattern->kind, 1, parts, count);
    }
    return status;
}

static frame_status keep_all(frame_selection *selection, const frame_cut_rest *rest, frame_cut_part *parts) {
    const frame_cut_job *job = selection->job;
    frame_status status = FRAME_OK;
    frame_cut_plan_clear(&selection->plan);
    frame_cut_rest_of(job, rest);
    for (size_t c = 0; !status && c < job->choice_count; c++) {
        const size_t column = selection->pattern_count + c;
        const int64_t times = selection->fixed[column] + llround(level(selection, column));
        if (times > 0) status = frame_cut_plan_choose(&selection->plan, job, rest, c, (int32_t)times);
    }
    for (size_t p = 0; !status && p < selection->pattern_count; p++) status = keep_pattern(selection, p, rest, parts);
    return status;
}

static frame_status keep(frame_selection *selection) {
    const frame_cut_job *job = selection->job;
    frame_cut_rest rest;
    frame_cut_part *parts = frame_take(job->item_count * job->most_rooms * sizeof *parts);
    frame_status status = frame_cut_rest_begin(&rest, job);
    if (!status && !parts) status = FRAME_NO_MEMORY;
    if (!status) status = keep_all(selection, &rest, parts);
    selection->plan.found = !status;
    selection->below = selection->plan.cost;
    frame_cut_rest_give(&rest);
    frame_give(parts);
    return status;
}

/* -- branching -- */

static void search(frame_selection *selection, int depth);

static int over(const frame_selection *selection) {
    return !selection->complete || selection->status;
}

/* One side of a branch on the boards of a kind: a row's limit is another for the time being. */
static void try_limit(frame_selection *selection, size_t row, double limit, int depth) {
    double *place = &selection->linear.limits[row];
    const double before = *place;
    if (over(selection)) return;
    *place = limit;
    search(selection, depth + 1);
    *place = before;
}

static int branch_on_kind(frame_selection *selection, int depth) {
    const frame_cut_job *job = selection->job;
    size_t best = job->kind_count;
    double most = NEARLY_WHOLE, boards = 0;
    for (size_t k = 0; k < job->kind_count; k++) {
        const double n = boards_of(selection, k), apart = fabs(n - round(n));
        if (apart > most) best = k, most = apart, boards = n;
    }
    if (best == job->kind_count) return 0;
    const size_t at_most = job->item_count + best, at_least = first_least_row(selection) + best;
    const int up_first = boards - floor(boards) > 0.5;
    for (int side = 0; side < 2; side++) {
        if ((side == 0) == up_first)
            try_limit(selection, at_least, ceil(boards), depth);
        else
            try_limit(selection, at_most, floor(boards), depth);
    }
    return 1;
}

static void shift(frame_selection *selection, size_t pattern, int64_t times) {
    const frame_linear_column *column = &FRAME_ITEM(frame_linear_column, selection->linear.columns, pattern);
    const frame_linear_entry *entries = &FRAME_ITEM(frame_linear_entry, selection->linear.entries, column->first);
    for (uint32_t e = 0; e < column->count; e++)
        selection->linear.limits[entries[e].row] -= entries[e].value * (double)times;
    selection->fixed[pattern] += times;
    selection->fixed_cost += (int64_t)column->cost * times;
}

/* Cuts exactly so many boards to a pattern; 0 when that leaves nothing of interest. */
static int try_times(frame_selection *selection, size_t pattern, int64_t times, int depth) {
    frame_linear_column *columns = selection->linear.columns.items;
    if (over(selection)) return 0;
    columns[pattern].barred++;
    shift(selection, pattern, times);
    const int of_interest = relax(selection);
    if (of_interest && !over(selection)) search(selection, depth + 1);
    columns[pattern].barred--;
    shift(selection, pattern, -times);
    return of_interest;
}

/* The cost is convex in the number of boards of a pattern: away from where it is least, each side ends at the first
 * number that leaves nothing of interest. */
static void branch_on_pattern(frame_selection *selection, size_t pattern, double times, int depth) {
    int64_t up = (int64_t)ceil(times), down = up - 1;
    int try_up = 1, try_down = 1;
    int go_up = times - floor(times) > 0.3;
    while ((try_up || try_down) && !over(selection)) {
        if (go_up && try_up)
            try_up = try_times(selection, pattern, up++, depth);
        else if (!go_up && try_down)
            try_down = try_times(selection, pattern, down--, depth) && down >= 0;
        go_up = !go_up;
    }
}

static void search(frame_selection *selection, int depth) {
    if (over(selection) || !relax(selection) || over(selection)) return;
    if (depth >= DEEPEST) {
        selection->complete = 0;
        return;
    }
    if (branch_on_kind(selection, depth)) return;
    size_t best = SIZE_MAX;
    double most = NEARLY_WHOLE, times = 0;
    for (size_t r = 0; r < selection->linear.rows; r++) {
        const int32_t column = selection->linear.basis[r];
        const double n = selection->linear.levels[r], apart = n - floor(n + NEARLY_WHOLE);
        if (column < 0 || apart <= most) continue;
        best = (size_t)column, most = apart, times = n;
    }
    if (best == SIZE_MAX)
        selection->status = keep(selection);
    else
        branch_on_pattern(selection, best, times, depth);
}

frame_status frame_selection_search(frame_selection *selection, int64_t below, double most_steps) {
    selection->below = below;
    selection->steps_left = most_steps;
    selection->complete = 1;
    search(selection, 0);
    return selection->status;
}
