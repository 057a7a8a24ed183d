/* The search for the least cost. */
#include "takeoff/boards.h"

#include <math.h>
#include <string.h>

enum { FIRST_BY_VALUES = 4, TRIES_AT_ROOT = 3, LISTED_AT_MOST = 20000 };
static const double SHARE_OF_VALUES = 0.3;
static const double SELECTION_STEPS = 3e7, POLISHING_STEPS = 5e7, NEARLY_WHOLE = 1e-6;

frame_status frame_boards_begin(frame_boards *boards, const frame_cut_job *job, frame_effort *effort) {
    memset(boards, 0, sizeof *boards);
    boards->job = job;
    boards->effort = effort;
    boards->nodes.item_size = boards->aside.item_size = sizeof(frame_boards_node);
    boards->ranges.item_size = sizeof(int64_t);
    boards->free_places.item_size = sizeof(uint32_t);
    frame_cut_plan_begin(&boards->best);
    frame_listing_begin(&boards->listing, job);
    boards->least = frame_take_zeroed(job->kind_count, sizeof *boards->least);
    boards->limits = frame_take_zeroed(job->kind_count, sizeof *boards->limits);
    boards->whole = frame_take_zeroed(job->kind_count, sizeof *boards->whole);
    boards->boards = frame_take_zeroed(job->kind_count, sizeof *boards->boards);
    if (!boards->least || !boards->limits || !boards->whole || !boards->boards) return FRAME_NO_MEMORY;
    frame_status status = frame_relaxed_begin(&boards->relaxed, job, effort);
    if (!status) status = frame_rounding_begin(&boards->rounding, &boards->relaxed);
    return status ? status : frame_values_begin(&boards->values, &boards->relaxed);
}

void frame_boards_give(frame_boards *boards) {
    frame_rounding_give(&boards->rounding);
    frame_values_give(&boards->values);
    frame_relaxed_give(&boards->relaxed);
    frame_listing_give(&boards->listing);
    frame_cut_plan_give(&boards->best);
    frame_array_give(&boards->nodes);
    frame_array_give(&boards->aside);
    frame_array_give(&boards->ranges);
    frame_array_give(&boards->free_places);
    frame_give(boards->least);
    frame_give(boards->limits);
    frame_give(boards->whole);
    frame_give(boards->boards);
    memset(boards, 0, sizeof *boards);
}

/* -- the heap of nodes -- */

static int before(const frame_boards_node *a, const frame_boards_node *b) {
    if (a->key != b->key) return a->key < b->key;
    if (a->tried != b->tried) return a->tried < b->tried;
    if (a->depth != b->depth) return a->depth > b->depth;
    return a->place < b->place;
}

static void sift_up(frame_boards_node *nodes, size_t at) {
    while (at && before(&nodes[at], &nodes[(at - 1) / 2])) {
        const frame_boards_node kept = nodes[at];
        nodes[at] = nodes[(at - 1) / 2];
        nodes[at = (at - 1) / 2] = kept;
    }
}

static void sift_down(frame_boards_node *nodes, size_t count) {
    for (size_t at = 0;;) {
        size_t least = at;
        for (size_t child = 2 * at + 1; child <= 2 * at + 2 && child < count; child++)
            if (before(&nodes[child], &nodes[least])) least = child;
        if (least == at) return;
        const frame_boards_node kept = nodes[at];
        nodes[at] = nodes[least];
        nodes[at = least] = kept;
    }
}

static int64_t *ranges_of(frame_boards *boards, uint32_t place) {
    return &FRAME_ITEM(int64_t, boards->ranges, place * 2 * boards->job->kind_count);
}

/* Adds a node with the ranges at hand. */
static frame_status push(frame_boards *boards, int64_t bound, uint32_t depth, int32_t tried) {
    const size_t kinds = boards->job->kind_count;
    uint32_t place;
    if (boards->free_places.count) {
        place = FRAME_ITEM(uint32_t, boards->free_places, --boards->free_places.count);
    } else {
        place = (uint32_t)(boards->ranges.count / (2 * kinds));
        if (frame_array_reserve(&boards->ranges, boards->ranges.count + 2 * kinds)) return FRAME_NO_MEMORY;
        boards->ranges.count += 2 * kinds;
    }
    const int64_t apart = boards->best.found ? (boards->best.cost - bound) / 8 : bound / 1000;
    const frame_boards_node node = {bound, bound + (tried > 100 ? 100 : tried) * apart, depth, place, tried, 0};
    if (!frame_array_push(&boards->nodes, &node)) return FRAME_NO_MEMORY;
    memcpy(ranges_of(boards, place), boards->least, kinds * sizeof(int64_t));
    memcpy(ranges_of(boards, place) + kinds, boards->limits, kinds * sizeof(int64_t));
    sift_up(boards->nodes.items, boards->nodes.count - 1);
    return FRAME_OK;
}

static frame_status pop(frame_boards *boards, frame_boards_node *node) {
    frame_boards_node *nodes = boards->nodes.items;
    const size_t kinds = boards->job->kind_count;
    *node = nodes[0];
    nodes[0] = nodes[--boards->nodes.count];
    sift_down(nodes, boards->nodes.count);
    memcpy(boards->least, ranges_of(boards, node->place), kinds * sizeof(int64_t));
    memcpy(boards->limits, ranges_of(boards, node->place) + kinds, kinds * sizeof(int64_t));
    return frame_array_push(&boards->free_places, &node->place) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* -- one node -- */

/* What a plan must cost less than: less money; while polishing, as much money for fewer boards. */
static int64_t below(const frame_boards *boards) {
    if (!boards->best.found) return INT64_MAX / 4 / boards->job->money_unit * boards->job->money_unit;
    return boards->polishing ? boards->best.cost
                             : boards->best.cost / boards->job->money_unit * boards->job->money_unit;
}

/* For whoever watches: in the caller's money, with what the searches before came to. */
static void show(const frame_boards *boards) {
    const double unit = (double)boards->job->money_unit * boards->money;
    if (!boards->money || !boards->best.found) return;
    boards->effort->best =
        boards->cost_before + floor((double)boards->best.cost / (double)boards->job->money_unit) / boards->money;
    boards->effort->bound = fmin(boards->bound_before + (double)boards->bound / unit, boards->effort->best);
}

static frame_status keep_if_cheaper(frame_boards *boards, const frame_cut_plan *plan) {
    if (!plan->found || (boards->best.found && plan->cost >= boards->best.cost)) return FRAME_OK;
    const frame_status status = frame_cut_plan_copy(&boards->best, plan);
    show(boards);
    return status;
}

/* Rounds the relaxed plan off a few times, each time shaking the preferences more; whole: to the boards in whole. */
static frame_status round_off(frame_boards *boards, int whole, int first, int tries) {
    frame_status status = FRAME_OK;
    for (int t = first; !status && t < first + tries && !boards->effort->over; t++) {
        if (below(boards) <= boards->bound) return FRAME_OK;
        status = frame_rounding_try(&boards->rounding, whole ? boards->whole : NULL, below(boards), 0.15 * t);
        if (status || !boards->rounding.plan.found) continue;
        status = keep_if_cheaper(boards, &boards->rounding.plan);
        if (whole) break;
    }
    return status;
}

static frame_status add_patterns(frame_boards *boards, const frame_cut_plan *plan) {
    frame_status status = FRAME_OK;
    for (size_t p = 0; !status && p < plan->patterns.count; p++) {
        const frame_cut_pattern *pattern = &FRAME_ITEM(frame_cut_pattern, plan->patterns, p);
        status = frame_relaxed_add(&boards->relaxed, pattern->kind,
                                   &FRAME_ITEM(frame_cut_part, plan->parts, pattern->part_first), pattern->part_count);
    }
    return status;
}

/* A few plans by values before all else: a good start, and patterns that the relaxed job need not look for. */
static frame_status begin_by_values(frame_boards *boards) {
    frame_status status = boards->best.found ? add_patterns(boards, &boards->best) : FRAME_OK;
    for (int t = 0; !status && t < FIRST_BY_VALUES && !boards->effort->over; t++) {
        status = frame_values_try(&boards->values, INT64_MAX);
        if (!status && boards->values.plan.found) status = add_patterns(boards, &boards->values.plan);
        if (!status) status = keep_if_cheaper(boards, &boards->values.plan);
    }
    boards->by_values = boards->effort->spent;
    return status;
}

/* More of them, as long as they have had less than their share of the effort. */
static frame_status go_on_by_values(frame_boards *boards) {
    frame_status status = FRAME_OK;
    while (!status && !boards->effort->over && below(boards) > boards->bound &&
           boards->by_values < SHARE_OF_VALUES * boards->effort->spent) {
        const double before = boards->effort->spent;
        status = frame_values_try(&boards->values, below(boards));
        if (!status) status = keep_if_cheaper(boards, &boards->values.plan);
        boards->by_values += boards->effort->spent - before;
    }
    return status;
}

static frame_status relax(frame_boards *boards, int costless) {
    frame_relaxed_ask(&boards->relaxed, NULL, NULL, boards->limits, boards->least);
    return frame_relaxed_solve(&boards->relaxed, costless);
}

/* Whether no boards within the node's ranges suffice. */
static frame_status is_impossible(frame_boards *boards, int *impossible) {
    double proven = 0;
    frame_status status = relax(boards, 1);
    if (!status && !boards->effort->over) status = frame_relaxed_prove(&boards->relaxed, below(boards), NULL, &proven);
    *impossible = proven > 0;
    return status || boards->effort->over ? status : relax(boards, 0);
}

/* Whether the ranges of the node leave no number of boards to a kind, or ask for more than a supply has. */
static int is_empty(const frame_boards *boards) {
    const frame_cut_job *job = boards->job;
    for (size_t k = 0; k < job->kind_count; k++) {
        int64_t least = 0;
        if (boards->least[k] > boards->limits[k]) return 1;
        for (size_t other = 0; other < job->kind_count; other++)
            if (job->kinds[other].supply == job->kinds[k].supply) least += boards->least[other];
        if (least > job->supplies[job->kinds[k].supply]) return 1;
    }
    return 0;
}

/* The bound of the node at hand; INT64_MAX when no boards within its ranges suffice. */
static frame_status bound_node(frame_boards *boards, int64_t *bound) {
    frame_relaxed *relaxed = &boards->relaxed;
    double proven;
    int impossible = 0;
    if (is_empty(boards)) {
        *bound = INT64_MAX;
        return FRAME_OK;
    }
    frame_status status = relax(boards, 0);
    if (status || boards->effort->over) return status;
    if (frame_relaxed_shortfall(relaxed) > NEARLY_WHOLE) status = is_impossible(boards, &impossible);
    if (impossible) *bound = INT64_MAX;
    if (status || impossible || boards->effort->over) return status;
    if ((status = frame_relaxed_prove(relaxed, below(boards), NULL, &proven))) return status;
    const int64_t whole = frame_cut_round_up(boards->job, proven / relaxed->scale);
    if (whole > *bound) *bound = whole;
    return FRAME_OK;
}

static void count_boards(frame_boards *boards) {
    memset(boards->boards, 0, boards->job->kind_count * sizeof *boards->boards);
    for (size_t p = 0; p < frame_relaxed_count(&boards->relaxed); p++) {
        const double times = frame_relaxed_times(&boards->relaxed, p);
        boards->boards[FRAME_ITEM(frame_cut_pattern, boards->relaxed.patterns, p).kind] += times;
    }
    /* Rounding may put a number a little outside its range; a split there would give the same node again. */
    for (size_t k = 0; k < boards->job->kind_count; k++)
        boards->boards[k] = fmin(fmax(boards->boards[k], (double)boards->least[k]), (double)boards->limits[k]);
}

/* The kind whose number of boards is farthest from whole; kind_count when all are whole. */
static size_t farthest_from_whole(const frame_boards *boards) {
    size_t best = boards->job->kind_count;
    double most = NEARLY_WHOLE;
    for (size_t k = 0; k < boards->job->kind_count; k++) {
        const double apart = fabs(boards->boards[k] - round(boards->boards[k]));
        if (apart > most && boards->least[k] < boards->limits[k]) best = k, most = apart;
    }
    return best;
}

static frame_status split(frame_boards *boards, size_t kind, double at, int64_t bound, uint32_t depth) {
    const int64_t least = boards->least[kind], limit = boards->limits[kind];
    boards->limits[kind] = (int64_t)floor(at);
    frame_status status = push(boards, bound, depth + 1, 0);
    boards->limits[kind] = limit;
    boards->least[kind] = (int64_t)floor(at) + 1;
    if (!status) status = push(boards, bound, depth + 1, 0);
    boards->least[kind] = least;
    return status;
}

/* Lists what a cheaper plan within the node's ranges can use. What must be bought at least may hide what the items are
 * worth: then the duals without it tell more. */
static frame_status list_patterns(frame_boards *boards) {
    frame_status status = relax(boards, 0);
    if (status || boards->effort->over) return status;
    status = frame_listing_make(&boards->listing, &boards->relaxed, below(boards), LISTED_AT_MOST);
    if (status || boards->listing.complete) return status;
    frame_relaxed_ask(&boards->relaxed, NULL, NULL, boards->limits, NULL);
    status = frame_relaxed_solve(&boards->relaxed, 0);
    if (status || boards->effort->over) return status;
    return frame_listing_make(&boards->listing, &boards->relaxed, below(boards), LISTED_AT_MOST);
}

/* Lets the selection decide the node at hand; *decided tells whether it could. */
static frame_status decide(frame_boards *boards, double most_steps, int *decided) {
    *decided = 0;
    frame_status status = list_patterns(boards);
    if (status || boards->effort->over || !boards->listing.complete) return status;
    frame_selection selection;
    const frame_listing *listed = &boards->listing;
    status = frame_selection_begin(&selection, boards->job, boards->effort, listed->patterns.items,
                                   listed->patterns.count, listed->parts.items, boards->least, boards->limits);
    if (!status) status = frame_selection_search(&selection, below(boards), most_steps);
    if (!status) status = keep_if_cheaper(boards, &selection.plan);
    *decided = selection.complete;
    frame_selection_give(&selection);
    return status;
}

/* Whole boards: rounding, then the selection. A node that neither could decide comes back later, with more effort; one
 * in which there is nothing for less money, to be polished. */
static frame_status look_at_leaf(frame_boards *boards, const frame_boards_node *node, int64_t bound) {
    for (size_t k = 0; k < boards->job->kind_count; k++) boards->whole[k] = llround(boards->boards[k]);
    const int more = node->tried < 10 ? 1 << node->tried : 1024;
    const int64_t money = boards->best.found ? below(boards) : 0;
    frame_status status = round_off(boards, 1, 3 * (more - 1), 3 * more);
    int decided = 0;
    if (status || boards->effort->over) return status;
    if (bound < below(boards)) status = decide(boards, SELECTION_STEPS * more, &decided);
    if (status || boards->effort->over || (decided && boards->polishing)) return status;
    if (decided && bound < money) bound = money;
    return push(boards, bound, node->depth, decided ? 0 : node->tried + 1);
}

static frame_status look_at(frame_boards *boards, const frame_boards_node *node) {
    int64_t bound = node->bound;
    frame_status status = bound_node(boards, &bound);
    if (status || boards->effort->over || bound == INT64_MAX) return status;
    if (bound >= below(boards))
        return bound < boards->best.cost ? push(boards, bound, node->depth, node->tried) : FRAME_OK;
    boards->looked_at++;
    count_boards(boards);
    const size_t kind = farthest_from_whole(boards);
    if (kind < boards->job->kind_count) return split(boards, kind, boards->boards[kind], bound, node->depth);
    return look_at_leaf(boards, node, bound);
}

/* No plan that is still to be looked for costs less. */
static int64_t least_bound(const frame_boards *boards) {
    int64_t least = below(boards);
    for (size_t n = 0; n < boards->nodes.count; n++) {
        const int64_t bound = FRAME_ITEM(frame_boards_node, boards->nodes, n).bound;
        if (bound < least) least = bound;
    }
    return least;
}

/* A node that can hold nothing cheaper may yet hold as cheap a plan of fewer boards: it waits for the polishing. */
static frame_status set_aside(frame_boards *boards, const frame_boards_node *node) {
    if (boards->polishing || node->bound >= boards->best.cost) return FRAME_OK;
    memcpy(ranges_of(boards, node->place), boards->least, boards->job->kind_count * sizeof(int64_t));
    boards->free_places.count--; /* its place was the last to be given back */
    return frame_array_push(&boards->aside, node) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* Takes the nodes one by one, the least bound first (one that was tried in vain lets others go before it), until none
 * can hold a plan of interest or the effort is over. */
static frame_status look_through(frame_boards *boards, double most_steps) {
    frame_status status = FRAME_OK;
    while (!status && boards->nodes.count && !boards->effort->over && boards->effort->spent < most_steps) {
        frame_boards_node node;
        if (!boards->polishing) boards->bound = least_bound(boards);
        show(boards);
        if ((status = pop(boards, &node))) return status;
        if (node.bound >= below(boards)) {
            status = set_aside(boards, &node);
            continue;
        }
        status = look_at(boards, &node);
        if (!status && !boards->polishing) status = go_on_by_values(boards);
    }
    return status;
}

static frame_status polish(frame_boards *boards) {
    const double spent = boards->effort->spent;
    boards->polishing = 1;
    for (size_t n = 0; n < boards->aside.count; n++) {
        if (!frame_array_push(&boards->nodes, &FRAME_ITEM(frame_boards_node, boards->aside, n))) return FRAME_NO_MEMORY;
        sift_up(boards->nodes.items, boards->nodes.count - 1);
    }
    const frame_status status = look_through(boards, spent + fmax(POLISHING_STEPS, spent / 4));
    boards->fewest = boards->job->money_unit > 1 && !boards->nodes.count && !boards->effort->over;
    return status;
}

/* Any duals prove a bound: those at which the effort ran out too. */
static frame_status bound_so_far(frame_boards *boards) {
    double proven = 0;
    const frame_status status = frame_relaxed_prove(&boards->relaxed, below(boards), NULL, &proven);
    const int64_t whole = frame_cut_round_up(boards->job, proven / boards->relaxed.scale);
    if (!status && whole > boards->bound) boards->bound = whole < below(boards) ? whole : below(boards);
    return status;
}

/* What the wood alone costs: the size of all items at the price of the cheapest. */
static int64_t bound_by_size(const frame_boards *boards) {
    const frame_cut_job *job = boards->job;
    double least = INFINITY, size = 0;
    if (job->credit > 0) return 0;
    for (size_t k = 0; k < job->kind_count; k++) {
        double room = 0;
        for (uint32_t r = 0; r < job->kinds[k].room_count; r++)
            room += (double)job->rooms[job->kinds[k].room_first + r].size;
        least = fmin(least, (double)job->kinds[k].cost / room);
    }
    for (size_t i = 0; i < job->item_count; i++) size += (double)job->items[i].size * job->items[i].wanted;
    return size * least < 1e18 ? frame_cut_round_up(job, size * least * (1 - 1e-12)) : 0;
}

static frame_status search_all(frame_boards *boards, int *impossible) {
    const frame_cut_job *job = boards->job;
    for (size_t k = 0; k < job->kind_count; k++) boards->limits[k] = job->supplies[job->kinds[k].supply];
    int64_t bound = bound_by_size(boards);
    boards->bound = bound;
    show(boards);
    frame_status status = begin_by_values(boards);
    if (!status) status = bound_node(boards, &bound);
    if (!status && boards->effort->over) return bound_so_far(boards);
    if (status) return status;
    *impossible = bound == INT64_MAX;
    if (*impossible) return FRAME_OK;
    boards->bound = bound;
    status = push(boards, bound, 0, 0);
    if (!status) status = round_off(boards, 0, 0, TRIES_AT_ROOT);
    if (!status) status = look_through(boards, INFINITY);
    if (status || boards->effort->over) return status;
    boards->bound = below(boards);
    boards->proven = 1;
    return polish(boards);
}

frame_status frame_boards_search(frame_boards *boards, int *impossible) {
    const frame_status status = search_all(boards, impossible);
    return status || *impossible || !boards->best.found ? status : frame_boards_tidy(boards);
}
