/* The relaxed job: its linear program, and what is read from its solution. */
#include "takeoff/relaxed.h"

#include <math.h>
#include <string.h>

/* What one unit of money is worth, as a share of the dearest board: sums of a million pieces stay exact in a double. */
static const double WORTH_OF_DEAREST = 4294967296.0;

static double shortfall_cost(const frame_relaxed *relaxed, size_t item, int costless) {
    if (!costless) return 4 * relaxed->dearest;
    return relaxed->dearest * (double)relaxed->job->items[item].size / (double)relaxed->longest;
}

static size_t first_kind_row(const frame_cut_job *job) {
    return job->item_count;
}
static size_t first_set_row(const frame_cut_job *job) {
    return first_kind_row(job) + 2 * job->kind_count;
}
static size_t first_pattern_column(const frame_cut_job *job) {
    return job->item_count + job->choice_count;
}

static frame_status begin_rows(frame_relaxed *relaxed, size_t rows) {
    const frame_cut_job *job = relaxed->job;
    double *limits = frame_take_zeroed(rows, sizeof *limits), *signs = frame_take_zeroed(rows, sizeof *signs);
    frame_status status = limits && signs ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t r = 0; !status && r < rows; r++) {
        const int of_kind = r >= first_kind_row(job) && r < first_set_row(job);
        const int of_supply = r >= first_set_row(job) + job->set_count;
        const int at_most = of_supply || (of_kind && (r - first_kind_row(job)) % 2 == 0);
        signs[r] = at_most ? 1 : -1;
    }
    if (!status) status = frame_linear_begin(&relaxed->linear, rows, limits, signs);
    frame_give(limits);
    frame_give(signs);
    return status;
}

/* A row for each supply that more than one kind draws on. */
static size_t count_shared(frame_relaxed *relaxed) {
    const frame_cut_job *job = relaxed->job;
    size_t next = first_set_row(job) + job->set_count;
    for (size_t s = 0; s < job->supply_count; s++) {
        size_t kinds = 0;
        for (size_t k = 0; k < job->kind_count; k++) kinds += job->kinds[k].supply == (int32_t)s;
        relaxed->shared[s] = kinds > 1 ? (uint32_t)next++ : 0;
    }
    return next;
}

static frame_status begin_shortfalls(frame_relaxed *relaxed) {
    for (size_t i = 0; i < relaxed->job->item_count; i++) {
        const frame_linear_entry entry = {(uint32_t)i, 0, 1};
        if (frame_linear_add(&relaxed->linear, shortfall_cost(relaxed, i, 0), &entry, 1) < 0) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status begin_choices(frame_relaxed *relaxed) {
    const frame_cut_job *job = relaxed->job;
    for (size_t c = 0; c < job->choice_count; c++) {
        const frame_cut_choice *choice = &job->choices[c];
        size_t used = 0;
        for (uint32_t p = 0; p < choice->part_count; p++) {
            const frame_cut_part *part = &job->choice_parts[choice->part_first + p];
            relaxed->entries[used++] = (frame_linear_entry){part->item, 0, -(double)part->count};
        }
        relaxed->entries[used++] = (frame_linear_entry){(uint32_t)(first_set_row(job) + (size_t)choice->set), 0, 1};
        if (frame_linear_add(&relaxed->linear, (double)choice->cost, relaxed->entries, used) < 0)
            return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status begin_fillings(frame_relaxed *relaxed) {
    const frame_cut_job *job = relaxed->job;
    frame_status status = FRAME_OK;
    for (size_t r = 0; !status && r < job->room_count; r++) {
        frame_filling *filling = frame_relaxed_filling(relaxed, &job->rooms[r]);
        if (!filling->job) status = frame_filling_begin(filling, job, job->rooms[r].group, job->rooms[r].way);
        if (job->rooms[r].size > relaxed->longest) relaxed->longest = job->rooms[r].size;
    }
    return status;
}

static frame_status begin_lists(frame_relaxed *relaxed) {
    const frame_cut_job *job = relaxed->job;
    relaxed->patterns.item_size = sizeof(frame_cut_pattern);
    relaxed->parts.item_size = sizeof(frame_cut_part);
    relaxed->fillings = frame_take_zeroed((size_t)job->group_count * FRAME_CUT_WAYS, sizeof *relaxed->fillings);
    relaxed->wanted = frame_take_zeroed(job->item_count, sizeof *relaxed->wanted);
    relaxed->allowed = frame_take_zeroed(job->item_count, sizeof *relaxed->allowed);
    relaxed->sets = frame_take_zeroed(job->set_count, sizeof *relaxed->sets);
    relaxed->limits = frame_take_zeroed(job->kind_count, sizeof *relaxed->limits);
    relaxed->least = frame_take_zeroed(job->kind_count, sizeof *relaxed->least);
    relaxed->worth = frame_take_zeroed(job->item_count, sizeof *relaxed->worth);
    relaxed->shared = frame_take_zeroed(job->supply_count, sizeof *relaxed->shared);
    relaxed->entries = frame_take_zeroed(job->item_count + 4, sizeof *relaxed->entries);
    relaxed->found = frame_take_zeroed(job->item_count * job->most_rooms, sizeof *relaxed->found);
    return relaxed->fillings && relaxed->wanted && relaxed->allowed && relaxed->sets && relaxed->limits &&
                   relaxed->least && relaxed->worth && relaxed->shared && relaxed->entries && relaxed->found
               ? FRAME_OK
               : FRAME_NO_MEMORY;
}

frame_status frame_relaxed_begin(frame_relaxed *relaxed, const frame_cut_job *job, frame_effort *effort) {
    memset(relaxed, 0, sizeof *relaxed);
    relaxed->job = job;
    relaxed->effort = effort;
    frame_status status = begin_lists(relaxed);
    if (status) return status;
    relaxed->dearest = 1;
    relaxed->enough = -INFINITY;
    for (size_t k = 0; k < job->kind_count; k++) relaxed->dearest = fmax(relaxed->dearest, (double)job->kinds[k].cost);
    relaxed->scale = WORTH_OF_DEAREST / relaxed->dearest;
    status = begin_fillings(relaxed);
    if (!status) status = begin_rows(relaxed, count_shared(relaxed));
    relaxed->linear.tolerance = 1e-9 * relaxed->dearest;
    if (!status) status = begin_shortfalls(relaxed);
    if (!status) status = begin_choices(relaxed);
    if (!status) frame_relaxed_ask(relaxed, NULL, NULL, NULL, NULL);
    return status;
}

frame_filling *frame_relaxed_filling(const frame_relaxed *relaxed, const frame_cut_room *room) {
    return &relaxed->fillings[room->group * FRAME_CUT_WAYS + room->way];
}

void frame_relaxed_give(frame_relaxed *relaxed) {
    for (int32_t f = 0; relaxed->fillings && f < relaxed->job->group_count * FRAME_CUT_WAYS; f++)
        frame_filling_give(&relaxed->fillings[f]);
    frame_linear_give(&relaxed->linear);
    frame_array_give(&relaxed->patterns);
    frame_array_give(&relaxed->parts);
    frame_give(relaxed->fillings);
    frame_give(relaxed->wanted);
    frame_give(relaxed->allowed);
    frame_give(relaxed->sets);
    frame_give(relaxed->limits);
    frame_give(relaxed->least);
    frame_give(relaxed->worth);
    frame_give(relaxed->shared);
    frame_give(relaxed->entries);
    frame_give(relaxed->found);
    memset(relaxed, 0, sizeof *relaxed);
}

/* How often a pattern may hold an item: as often as it is wanted, and as choices may yet ask for it. */
static void allow(frame_relaxed *relaxed) {
    const frame_cut_job *job = relaxed->job;
    memcpy(relaxed->allowed, relaxed->wanted, job->item_count * sizeof *relaxed->allowed);
    for (size_t c = 0; c < job->choice_count; c++)
        for (uint32_t p = 0; p < job->choices[c].part_count; p++) {
            const frame_cut_part *part = &job->choice_parts[job->choices[c].part_first + p];
            const int64_t sum =
                relaxed->allowed[part->item] + (int64_t)relaxed->sets[job->choices[c].set] * part->count;
            relaxed->allowed[part->item] =
                sum > job->items[part->item].most ? job->items[part->item].most : (int32_t)sum;
        }
}

void frame_relaxed_ask(frame_relaxed *relaxed, const int32_t *wanted, const int32_t *sets, const int64_t *limits,
                       const int64_t *least) {
    const frame_cut_job *job = relaxed->job;
    double *rows = relaxed->linear.limits;
    for (size_t i = 0; i < job->item_count; i++) {
        relaxed->wanted[i] = wanted ? wanted[i] : job->items[i].wanted;
        rows[i] = relaxed->wanted[i];
    }
    for (size_t s = 0; s < job->set_count; s++) {
        relaxed->sets[s] = sets ? sets[s] : job->set_wanted[s];
        rows[first_set_row(job) + s] = relaxed->sets[s];
    }
    for (size_t k = 0; k < job->kind_count; k++) {
        relaxed->limits[k] = limits ? limits[k] : job->supplies[job->kinds[k].supply];
        relaxed->least[k] = least ? least[k] : 0;
        rows[first_kind_row(job) + 2 * k] = (double)relaxed->limits[k];
        rows[first_kind_row(job) + 2 * k + 1] = (double)relaxed->least[k];
    }
    for (size_t s = 0; s < job->supply_count; s++)
        if (relaxed->shared[s]) rows[relaxed->shared[s]] = (double)job->supplies[s];
    allow(relaxed);
    frame_linear_relevel(&relaxed->linear);
}

void frame_relaxed_ask_supplies(frame_relaxed *relaxed, const int64_t *supplies) {
    for (size_t s = 0; s < relaxed->job->supply_count; s++)
        if (relaxed->shared[s]) relaxed->linear.limits[relaxed->shared[s]] = (double)supplies[s];
    frame_linear_relevel(&relaxed->linear);
}

/* The column of a pattern: parts of one item in several rooms are one entry. */
static size_t make_column(frame_relaxed *relaxed, int32_t kind, const frame_cut_part *parts, size_t count) {
    const frame_cut_job *job = relaxed->job;
    size_t used = 0;
    for (size_t p = 0; p < count; p++) {
        size_t e = 0;
        while (e < used && relaxed->entries[e].row != parts[p].item) e++;
        if (e == used) relaxed->entries[used++] = (frame_linear_entry){parts[p].item, 0, 0};
        relaxed->entries[e].value += parts[p].count;
    }
    relaxed->entries[used++] = (frame_linear_entry){(uint32_t)(first_kind_row(job) + 2 * (size_t)kind), 0, 1};
    relaxed->entries[used++] = (frame_linear_entry){(uint32_t)(first_kind_row(job) + 2 * (size_t)kind + 1), 0, 1};
    const uint32_t shared = relaxed->shared[job->kinds[kind].supply];
    if (shared) relaxed->entries[used++] = (frame_linear_entry){shared, 0, 1};
    return used;
}

frame_status frame_relaxed_add(frame_relaxed *relaxed, int32_t kind, const frame_cut_part *parts, size_t count) {
    const size_t entries = make_column(relaxed, kind, parts, count);
    const double cost = relaxed->costless ? 0 : (double)frame_cut_cost(relaxed->job, kind, parts, count);
    const frame_cut_pattern pattern = {kind, 0, (uint32_t)relaxed->parts.count, (uint32_t)count};
    if (frame_array_reserve(&relaxed->parts, relaxed->parts.count + count)) return FRAME_NO_MEMORY;
    if (!frame_array_push(&relaxed->patterns, &pattern)) return FRAME_NO_MEMORY;
    for (size_t p = 0; p < count; p++) (void)frame_array_push(&relaxed->parts, &parts[p]);
    return frame_linear_add(&relaxed->linear, cost, relaxed->entries, entries) < 0 ? FRAME_NO_MEMORY : FRAME_OK;
}

double frame_relaxed_cost(const frame_relaxed *relaxed) {
    return frame_linear_cost(&relaxed->linear);
}

double frame_relaxed_shortfall(const frame_relaxed *relaxed) {
    double sum = 0;
    for (size_t i = 0; i < relaxed->job->item_count; i++)
        sum += fmax(frame_linear_level(&relaxed->linear, (int32_t)i), 0) * shortfall_cost(relaxed, i, 1);
    return sum / relaxed->dearest;
}

size_t frame_relaxed_count(const frame_relaxed *relaxed) {
    return relaxed->patterns.count;
}

double frame_relaxed_times(const frame_relaxed *relaxed, size_t pattern) {
    return frame_linear_level(&relaxed->linear, (int32_t)(first_pattern_column(relaxed->job) + pattern));
}

double frame_relaxed_choice(const frame_relaxed *relaxed, size_t choice) {
    return frame_linear_level(&relaxed->linear, (int32_t)(relaxed->job->item_count + choice));
}

/* Costs of all columns, for boards that cost what they cost or nothing. */
void frame_relaxed_charge(frame_relaxed *relaxed, int costless) {
    if (relaxed->costless == costless) return;
    const frame_cut_job *job = relaxed->job;
    frame_linear_column *columns = relaxed->linear.columns.items;
    for (size_t i = 0; i < job->item_count; i++) columns[i].cost = shortfall_cost(relaxed, i, costless);
    for (size_t c = 0; c < job->choice_count; c++)
        columns[job->item_count + c].cost = costless ? 0 : (double)job->choices[c].cost;
    for (size_t p = 0; p < relaxed->patterns.count; p++) {
        const frame_cut_pattern *pattern = &FRAME_ITEM(frame_cut_pattern, relaxed->patterns, p);
        const frame_cut_part *parts = &FRAME_ITEM(frame_cut_part, relaxed->parts, pattern->part_first);
        columns[first_pattern_column(job) + p].cost =
            costless ? 0 : (double)frame_cut_cost(job, pattern->kind, parts, pattern->part_count);
    }
    relaxed->costless = costless;
}
