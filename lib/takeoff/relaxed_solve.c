/* Making patterns until none is missing. */
#include <math.h>
#include <string.h>

#include "takeoff/relaxed.h"

enum { MANY_COLUMNS = 6000 };
/* Patterns beside the best that are taken from one pricing. */
enum { BESIDE_THE_BEST = 8 };

static void read_worth(frame_relaxed *relaxed) {
    for (size_t i = 0; i < relaxed->job->item_count; i++)
        relaxed->worth[i] = floor(fmax(relaxed->linear.duals[i], 0) * relaxed->scale);
}

static void price(frame_relaxed *relaxed, int all) {
    for (int32_t f = 0; f < relaxed->job->group_count * FRAME_CUT_WAYS; f++)
        if (relaxed->fillings[f].job)
            frame_filling_price(&relaxed->fillings[f], relaxed->worth, relaxed->allowed,
                                relaxed->costless ? 0 : relaxed->scale, all);
}

/* Tells the effort what the program and the tables have cost since it was last told. */
static int spend(frame_relaxed *relaxed) {
    const double rows = (double)relaxed->linear.rows;
    double spent = (double)relaxed->linear.columns.count +
                   (double)relaxed->linear.steps * (rows * rows * 0.5 + 4 * (double)relaxed->linear.entries.count);
    relaxed->linear.steps = 0;
    for (int32_t f = 0; f < relaxed->job->group_count * FRAME_CUT_WAYS; f++) {
        spent += relaxed->fillings[f].steps;
        relaxed->fillings[f].steps = 0;
    }
    return frame_effort_spend(relaxed->effort, spent);
}

/* The counts of a filling as parts in found, after those already there; how many there are then. */
static size_t list_parts(frame_relaxed *relaxed, const frame_filling *filling, uint32_t room, size_t count) {
    for (size_t i = 0; i < filling->count; i++)
        if (filling->counts[i])
            relaxed->found[count++] = (frame_cut_part){(uint32_t)(filling->first + i), room, filling->counts[i]};
    return count;
}

/* The best pattern of a kind in found; its worth. */
static double best_pattern(frame_relaxed *relaxed, size_t kind, size_t *count) {
    const frame_cut_kind *of = &relaxed->job->kinds[kind];
    double worth = 0;
    *count = 0;
    for (uint32_t r = 0; r < of->room_count; r++) {
        const frame_cut_room *room = &relaxed->job->rooms[of->room_first + r];
        frame_filling *filling = frame_relaxed_filling(relaxed, room);
        const double found = frame_filling_best(filling, room->size, 0);
        if (found <= 0) continue;
        worth += found;
        *count = list_parts(relaxed, filling, r, *count);
    }
    return worth;
}

static double most_worth(const frame_relaxed *relaxed, size_t kind) {
    const frame_cut_kind *of = &relaxed->job->kinds[kind];
    double worth = 0;
    for (uint32_t r = 0; r < of->room_count; r++) {
        const frame_cut_room *room = &relaxed->job->rooms[of->room_first + r];
        worth += frame_filling_bound(frame_relaxed_filling(relaxed, room), room->size);
    }
    return worth;
}

/* What a board of a kind costs, with what the duals charge for its being scarce. */
static double charge_of(const frame_relaxed *relaxed, size_t kind) {
    const frame_cut_job *job = relaxed->job;
    const double *duals = relaxed->linear.duals;
    const uint32_t shared = relaxed->shared[job->kinds[kind].supply];
    const double cost = relaxed->costless ? 0 : (double)job->kinds[kind].cost;
    return cost - duals[job->item_count + 2 * kind] - duals[job->item_count + 2 * kind + 1] -
           (shared ? duals[shared] : 0);
}

/* Further patterns from the same table, each with another largest item, for a kind of one room. */
static frame_status add_beside(frame_relaxed *relaxed, size_t kind, double charge, size_t *added) {
    const frame_cut_room *room = &relaxed->job->rooms[relaxed->job->kinds[kind].room_first];
    frame_filling *filling = frame_relaxed_filling(relaxed, room);
    size_t left = BESIDE_THE_BEST;
    uint32_t largest = 0; /* the stage at which the best pattern begins */
    while (largest < filling->stages && !filling->counts[filling->stage[largest].item - filling->first]) largest++;
    for (size_t s = 0; left && s < filling->stages; s++) {
        if (s == largest) continue;
        left -= !filling->exact; /* there each try costs a search */
        if (frame_filling_from(filling, room->size, s, charge) <= charge) continue;
        const size_t count = list_parts(relaxed, filling, 0, 0);
        const frame_status status = frame_relaxed_add(relaxed, (int32_t)kind, relaxed->found, count);
        if (status) return status;
        ++*added;
        left -= filling->exact != 0;
    }
    return FRAME_OK;
}

/* Adds for each kind the pattern that is worth more than it costs, if there is one. */
static frame_status add_missing(frame_relaxed *relaxed, size_t *added) {
    const double tolerance = 1e-8 * relaxed->dearest;
    frame_status status = FRAME_OK;
    *added = 0;
    read_worth(relaxed);
    price(relaxed, 0);
    for (size_t k = 0; !status && k < relaxed->job->kind_count; k++) {
        size_t count;
        const double charge = (charge_of(relaxed, k) + tolerance) * relaxed->scale;
        if (relaxed->limits[k] <= 0 || most_worth(relaxed, k) <= charge) continue;
        if (best_pattern(relaxed, k, &count) <= charge) continue;
        status = frame_relaxed_add(relaxed, (int32_t)k, relaxed->found, count);
        ++*added;
        if (!status && relaxed->job->kinds[k].room_count == 1) status = add_beside(relaxed, k, charge, added);
    }
    return status;
}

/* From whatever basis to levels that are not negative; from the slacks when the numbers have gone ill. */
static frame_linear_state settle(frame_relaxed *relaxed) {
    frame_linear *linear = &relaxed->linear;
    frame_linear_state state = frame_linear_dual(linear);
    if (state == FRAME_LINEAR_SOLVED) return state;
    frame_linear_restart(linear);
    return frame_linear_dual(linear);
}

/* From levels that are not negative to the least cost; likewise. */
static frame_linear_state improve(frame_relaxed *relaxed) {
    frame_linear *linear = &relaxed->linear;
    frame_linear_state state = frame_linear_primal(linear);
    if (state != FRAME_LINEAR_STOPPED) return state;
    if (!frame_linear_renew(linear) && !frame_linear_dual(linear)) state = frame_linear_primal(linear);
    if (state != FRAME_LINEAR_STOPPED) return state;
    frame_linear_restart(linear);
    if (!frame_linear_dual(linear)) state = frame_linear_primal(linear);
    return state;
}

frame_status frame_relaxed_solve(frame_relaxed *relaxed, int costless) {
    frame_status status = frame_relaxed_tidy(relaxed);
    if (status) return status;
    if (settle(relaxed)) relaxed->effort->over = 1;
    frame_relaxed_charge(relaxed, costless);
    int rounds = 0;
    for (size_t added = 1; added && !spend(relaxed);) {
        if (improve(relaxed)) {
            relaxed->effort->over = 1;
            return FRAME_OK;
        }
        if (frame_linear_cost(&relaxed->linear) <= relaxed->enough) return FRAME_OK;
        /* What rounding alone let seem to be missing changes nothing, and would be found again for ever. */
        if (rounds && !relaxed->linear.steps) return FRAME_OK;
        if (++rounds > relaxed->most_rounds && relaxed->most_rounds) return FRAME_OK;
        if ((status = add_missing(relaxed, &added))) return status;
    }
    return FRAME_OK;
}

double frame_relaxed_most(frame_relaxed *relaxed, size_t kind) {
    const frame_cut_kind *of = &relaxed->job->kinds[kind];
    double worth = 0;
    for (uint32_t r = 0; r < of->room_count; r++) {
        const frame_cut_room *room = &relaxed->job->rooms[of->room_first + r];
        frame_filling *filling = frame_relaxed_filling(relaxed, room);
        const double best = filling->exact ? 0 : frame_filling_best(filling, room->size, 0);
        worth += !filling->exact && filling->complete ? best : frame_filling_bound(filling, room->size);
    }
    return worth;
}

/* The least the items of a set's choices are worth: what each of its pieces adds to any plan. */
static double least_choice(const frame_relaxed *relaxed, size_t set) {
    const frame_cut_job *job = relaxed->job;
    double least = INFINITY;
    for (size_t c = 0; c < job->choice_count; c++) {
        if (job->choices[c].set != (int32_t)set) continue;
        double worth = relaxed->costless ? 0 : floor((double)job->choices[c].cost * relaxed->scale);
        for (uint32_t p = 0; p < job->choices[c].part_count; p++) {
            const frame_cut_part *part = &job->choice_parts[job->choices[c].part_first + p];
            worth += relaxed->worth[part->item] * part->count;
        }
        least = fmin(least, worth);
    }
    return least;
}

/* Boards of a kind there can be at most in a plan below a cost. */
static double most_boards(const frame_relaxed *relaxed, size_t kind, int64_t below) {
    const double cost = (double)relaxed->job->kinds[kind].cost, most = (double)relaxed->limits[kind];
    return cost > 0 ? fmin(most, ceil((double)below / cost)) : most;
}

/* What kinds of one supply are charged beyond their cost counts for as many boards as there can be. */
static double beyond_cost(const frame_relaxed *relaxed, size_t supply, int64_t below, const double *beyond) {
    const frame_cut_job *job = relaxed->job;
    double dearest = 0, sum = 0;
    for (size_t k = 0; k < job->kind_count; k++) {
        if (job->kinds[k].supply != (int32_t)supply || beyond[k] <= 0) continue;
        dearest = fmax(dearest, beyond[k]);
        sum += beyond[k] * most_boards(relaxed, k, below);
    }
    return fmin(sum, dearest * (double)job->supplies[supply]);
}

/* A kind is charged for with its cost and its duals, and more where its best pattern is worth more than that. Where it
 * is given away below its cost, the difference counts for as many boards as there must be. */
frame_status frame_relaxed_prove(frame_relaxed *relaxed, int64_t below, double *charges, double *proven) {
    const frame_cut_job *job = relaxed->job;
    double *beyond = frame_take_zeroed(job->kind_count, sizeof *beyond);
    if (!beyond) return FRAME_NO_MEMORY;
    double sum = 0;
    read_worth(relaxed);
    price(relaxed, 1);
    for (size_t i = 0; i < job->item_count; i++) sum += relaxed->worth[i] * relaxed->wanted[i];
    for (size_t s = 0; s < job->set_count; s++) sum += least_choice(relaxed, s) * relaxed->sets[s];
    for (size_t k = 0; k < job->kind_count; k++) {
        const double cost = relaxed->costless ? 0 : floor((double)job->kinds[k].cost * relaxed->scale);
        const double given = relaxed->least[k] > 0 ? floor(charge_of(relaxed, k) * relaxed->scale) : cost;
        const double charge = fmax(fmin(given, cost), frame_relaxed_most(relaxed, k));
        beyond[k] = charge - cost;
        if (charge < cost) sum += (cost - charge) * (double)relaxed->least[k];
        if (charges) charges[k] = charge;
    }
    for (size_t s = 0; s < job->supply_count; s++) sum -= beyond_cost(relaxed, s, below, beyond);
    frame_give(beyond);
    *proven = sum;
    return FRAME_OK;
}

static void mark_useful(const frame_relaxed *relaxed, double below, unsigned char *kept) {
    const frame_linear_column *columns = relaxed->linear.columns.items;
    for (size_t j = 0; j < relaxed->linear.columns.count; j++)
        kept[j] = j < relaxed->job->item_count + relaxed->job->choice_count || columns[j].place >= 0 ||
                  frame_linear_reduced(&relaxed->linear, &columns[j]) < below;
}

static void close_up(frame_relaxed *relaxed, const unsigned char *kept) {
    frame_cut_pattern *patterns = relaxed->patterns.items;
    frame_cut_part *parts = relaxed->parts.items;
    size_t left = 0, used = 0;
    for (size_t p = 0; p < relaxed->patterns.count; p++) {
        if (!kept[relaxed->job->item_count + relaxed->job->choice_count + p]) continue;
        memmove(&parts[used], &parts[patterns[p].part_first], patterns[p].part_count * sizeof *parts);
        patterns[left] = patterns[p];
        patterns[left].part_first = (uint32_t)used;
        used += patterns[left++].part_count;
    }
    relaxed->patterns.count = left;
    relaxed->parts.count = used;
}

frame_status frame_relaxed_tidy(frame_relaxed *relaxed) {
    if (relaxed->linear.columns.count < MANY_COLUMNS) return FRAME_OK;
    unsigned char *kept = frame_take_zeroed(relaxed->linear.columns.count, 1);
    if (!kept) return FRAME_NO_MEMORY;
    frame_linear_reprice(&relaxed->linear);
    size_t left = MANY_COLUMNS;
    for (double below = relaxed->dearest * 0.05; left > MANY_COLUMNS / 2 && below > 1e-6; below /= 4) {
        mark_useful(relaxed, below, kept);
        left = 0;
        for (size_t j = 0; j < relaxed->linear.columns.count; j++) left += kept[j];
    }
    close_up(relaxed, kept);
    frame_linear_drop(&relaxed->linear, kept);
    frame_give(kept);
    return FRAME_OK;
}
