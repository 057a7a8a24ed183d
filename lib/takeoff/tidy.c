/* Exchanging pieces between boards at no cost. */
#include "takeoff/tidy.h"

#include <string.h>

/* A table of patterns by items holds no more numbers; and comparisons made for one plan. */
enum { MOST_NUMBERS = 1 << 20 };
static const double MOST_STEPS = 2e7, NOTHING = 1e-9;

typedef struct cut_way {
    int64_t left; /* of its room */
    int32_t kind;
    int32_t times;
    int32_t plain; /* one room, not ripped, nothing counted on what is left: others stay as they are */
    int32_t first; /* the first item it has any of */
} cut_way;

typedef struct tidying {
    const frame_cut_job *job;
    cut_way *ways;
    uint32_t *counts;        /* of each way, by item */
    size_t count;            /* ways; no change makes them more */
    int64_t *spare;          /* boards that each supply has left */
    uint32_t *taken, *given; /* what two ways are to become */
    double longest, steps;
} tidying;

static uint32_t *row_of(const tidying *of, size_t way) {
    return &of->counts[way * of->job->item_count];
}

static const frame_cut_room *room_of(const tidying *of, int32_t kind) {
    return &of->job->rooms[of->job->kinds[kind].room_first];
}

static int is_plain(const tidying *of, int32_t kind) {
    return of->job->kinds[kind].room_count == 1 && room_of(of, kind)->way == 0;
}

/* Boards on hand cost nothing: one that is not cut stays on hand. */
static double spared(const tidying *of, int32_t kind) {
    const double size = (double)room_of(of, kind)->size / of->longest;
    return of->job->kinds[kind].cost / of->job->money_unit <= 0 ? size * size : 0;
}

static double worth_of_left(const tidying *of, int32_t kind, int64_t left) {
    const double share = (double)left / of->longest;
    return share * share - spared(of, kind);
}

static int64_t left_by(const tidying *of, int32_t kind, const uint32_t *counts) {
    int64_t left = room_of(of, kind)->size;
    for (size_t i = 0; i < of->job->item_count; i++) left -= of->job->items[i].size * counts[i];
    return left;
}

static int32_t first_of(const tidying *of, const uint32_t *counts) {
    size_t i = 0;
    while (i < of->job->item_count && !counts[i]) i++;
    return (int32_t)i;
}

static int same_counts(const tidying *of, const uint32_t *one, const uint32_t *other) {
    return !memcmp(one, other, of->job->item_count * sizeof *one);
}

/* The way that cuts a kind so; of->count when there is none. */
static size_t find(tidying *of, int32_t kind, const uint32_t *counts, int64_t left) {
    size_t w = 0;
    of->steps += (double)of->count;
    while (w < of->count && !(of->ways[w].times && of->ways[w].plain && of->ways[w].kind == kind &&
                              of->ways[w].left == left && same_counts(of, row_of(of, w), counts)))
        w++;
    return w;
}

static size_t empty_row(const tidying *of) {
    size_t w = 0;
    while (w < of->count && of->ways[w].times) w++;
    return w;
}

/* So many boards more of a kind cut so. */
static void put(tidying *of, int32_t kind, const uint32_t *counts, int32_t times) {
    const int64_t left = left_by(of, kind, counts);
    size_t w = find(of, kind, counts, left);
    if (w == of->count) {
        w = empty_row(of);
        if (w == of->count) of->count++;
        of->ways[w] = (cut_way){left, kind, 0, 1, first_of(of, counts)};
        memcpy(row_of(of, w), counts, of->job->item_count * sizeof *counts);
    }
    of->ways[w].times += times;
}

/* -- a change: so many boards of two ways cut as taken (of p's kind) and given (of q's) instead -- */

typedef struct change {
    size_t p, q;
    int32_t times_p, times_q;
} change;

static double gain(const tidying *of, size_t changed, int64_t left) {
    return worth_of_left(of, of->ways[changed].kind, left) -
           worth_of_left(of, of->ways[changed].kind, of->ways[changed].left);
}

/* Whether a way has no boards left after a change that makes patterns of these places. */
static int goes(const tidying *of, size_t changed, int32_t times, size_t as_p, size_t as_q) {
    return of->ways[changed].times == times && as_p != changed && as_q != changed;
}

/* Makes the change when it leaves fewer patterns, or as many and longer leftovers. */
static int try_change(tidying *of, const change *is) {
    const int32_t kind_p = of->ways[is->p].kind, kind_q = of->ways[is->q].kind;
    const int64_t left_p = left_by(of, kind_p, of->taken), left_q = left_by(of, kind_q, of->given);
    of->steps += 2 * (double)of->job->item_count;
    if (left_p < 0 || left_q < 0) return 0;
    const size_t as_p = find(of, kind_p, of->taken, left_p), as_q = find(of, kind_q, of->given, left_q);
    const int alike = kind_p == kind_q && same_counts(of, of->taken, of->given);
    const int more = (as_p == of->count) + (as_q == of->count && !alike) - goes(of, is->p, is->times_p, as_p, as_q) -
                     goes(of, is->q, is->times_q, as_p, as_q);
    const double longer = is->times_p * gain(of, is->p, left_p) + is->times_q * gain(of, is->q, left_q);
    if (more > 0 || (more == 0 && longer <= NOTHING)) return 0;
    of->ways[is->p].times -= is->times_p;
    of->ways[is->q].times -= is->times_q;
    put(of, kind_p, of->taken, is->times_p);
    put(of, kind_q, of->given, is->times_q);
    return 1;
}

/* p's boards cut as a way that there is already, the rest from as many of q's. */
static int try_copies(tidying *of, size_t p, size_t q) {
    const uint32_t *from_p = row_of(of, p), *from_q = row_of(of, q);
    const size_t items = of->job->item_count;
    const int32_t times = of->ways[p].times < of->ways[q].times ? of->ways[p].times : of->ways[q].times;
    for (size_t s = 0; s < of->count; s++) {
        const cut_way *model = &of->ways[s];
        size_t i = (size_t)model->first;
        if (s == p || s == q || !model->times || !model->plain || model->kind != of->ways[p].kind) continue;
        const uint32_t *like = row_of(of, s);
        while (i < items && like[i] <= from_p[i] + from_q[i]) i++;
        of->steps += (double)(i - (size_t)model->first) + 1;
        if (i < items) continue;
        for (i = 0; i < items; i++) of->taken[i] = like[i], of->given[i] = from_p[i] + from_q[i] - like[i];
        if (try_change(of, &(change){p, q, times, times})) return 1;
    }
    return 0;
}

/* An item moved from each of p's boards to q's, another or none moved back. Of p's boards there may be more than of
 * q's: so_many go from each of p's, as_many come to each of q's, and all boards of both change. */
static int try_exchanges(tidying *of, size_t p, size_t q) {
    const size_t items = of->job->item_count;
    const uint32_t *from_p = row_of(of, p), *from_q = row_of(of, q);
    const cut_way *one = &of->ways[p], *other = &of->ways[q];
    const int64_t common = frame_cut_common_divisor(one->times, other->times);
    const uint32_t so_many = (uint32_t)(other->times / common), as_many = (uint32_t)(one->times / common);
    memcpy(of->taken, from_p, items * sizeof *from_p);
    memcpy(of->given, from_q, items * sizeof *from_q);
    for (size_t i = (size_t)one->first; i < items; i++) {
        if (from_p[i] < so_many) continue;
        for (size_t j = i + 1; j <= items; j++) {
            if (j < items && from_q[j] < as_many) continue;
            const int64_t size = of->job->items[i].size - (j < items ? of->job->items[j].size : 0);
            of->steps++;
            if (size > other->left / as_many) continue;
            of->taken[i] -= so_many, of->given[i] += as_many;
            if (j < items) of->taken[j] += so_many, of->given[j] -= as_many;
            if (try_change(of, &(change){p, q, one->times, other->times})) return 1;
            of->taken[i] += so_many, of->given[i] -= as_many;
            if (j < items) of->taken[j] -= so_many, of->given[j] += as_many;
        }
    }
    return 0;
}

/* Boards of one kind in two ways, all cut in one. */
static int try_joining(tidying *of, size_t p, size_t q) {
    const cut_way *one = &of->ways[p], *other = &of->ways[q];
    const uint32_t boards = (uint32_t)(one->times + other->times);
    if (one->kind != other->kind) return 0;
    for (size_t i = 0; i < of->job->item_count; i++) {
        const uint64_t all =
            (uint64_t)row_of(of, p)[i] * (uint32_t)one->times + (uint64_t)row_of(of, q)[i] * (uint32_t)other->times;
        of->steps++;
        if (all % boards) return 0;
        of->taken[i] = (uint32_t)(all / boards);
    }
    if (left_by(of, one->kind, of->taken) < 0) return 0;
    const int32_t kind = one->kind;
    of->ways[p].times = of->ways[q].times = 0;
    put(of, kind, of->taken, (int32_t)boards);
    return 1;
}

/* Boards of another kind that cost the same and leave more. */
static int try_kinds(tidying *of, size_t p) {
    const frame_cut_job *job = of->job;
    const cut_way now = of->ways[p];
    const frame_cut_kind *kind = &job->kinds[now.kind];
    const int64_t size = room_of(of, now.kind)->size - now.left;
    for (int32_t k = 0; k < (int32_t)job->kind_count; k++) {
        const frame_cut_room *room = room_of(of, k);
        if (k == now.kind || !is_plain(of, k) || room->group != room_of(of, now.kind)->group || room->size < size ||
            room->way != room_of(of, now.kind)->way || job->kinds[k].cost != kind->cost ||
            of->spare[job->kinds[k].supply] < now.times ||
            worth_of_left(of, k, room->size - size) <= worth_of_left(of, now.kind, now.left) + NOTHING)
            continue;
        memcpy(of->taken, row_of(of, p), job->item_count * sizeof *of->taken);
        of->ways[p].times = 0;
        of->spare[kind->supply] += now.times;
        of->spare[job->kinds[k].supply] -= now.times;
        put(of, k, of->taken, now.times);
        return 1;
    }
    return 0;
}

/* One round; 0 when nothing could be bettered. */
static int improve(tidying *of) {
    int better = 0;
    for (size_t p = 0; p < of->count; p++) {
        if (!of->ways[p].times || !of->ways[p].plain) continue;
        better |= try_kinds(of, p);
        for (size_t q = 0; q < of->count && of->steps < MOST_STEPS; q++) {
            if (q == p || !of->ways[p].times || !of->ways[q].times || !of->ways[q].plain ||
                room_of(of, of->ways[p].kind)->group != room_of(of, of->ways[q].kind)->group)
                continue;
            better |= try_joining(of, p, q) || try_copies(of, p, q) || try_exchanges(of, p, q);
        }
    }
    return better && of->steps < MOST_STEPS;
}

/* -- from a plan and back -- */

static void read_plan(tidying *of, const frame_cut_plan *plan) {
    const frame_cut_job *job = of->job;
    for (size_t s = 0; s < job->supply_count; s++) of->spare[s] = job->supplies[s];
    for (size_t w = 0; w < plan->patterns.count; w++) {
        const frame_cut_pattern *pattern = &FRAME_ITEM(frame_cut_pattern, plan->patterns, w);
        cut_way *made = &of->ways[of->count++];
        *made = (cut_way){0, pattern->kind, pattern->times, is_plain(of, pattern->kind), 0};
        of->spare[job->kinds[pattern->kind].supply] -= pattern->times;
        for (uint32_t p = 0; p < pattern->part_count; p++) {
            const frame_cut_part *part = &FRAME_ITEM(frame_cut_part, plan->parts, pattern->part_first + p);
            row_of(of, w)[part->item] += part->count;
        }
        made->left = left_by(of, made->kind, row_of(of, w));
        made->first = first_of(of, row_of(of, w));
    }
}

/* Ways that are not plain are as they were, and stand where they stood. */
static frame_status write_plan(const tidying *of, const frame_cut_plan *from, frame_cut_plan *to,
                               frame_cut_part *parts) {
    frame_status status = FRAME_OK;
    for (size_t w = 0; !status && w < of->count; w++) {
        const cut_way *is = &of->ways[w];
        if (!is->times) continue;
        size_t count = 0;
        if (!is->plain) {
            const frame_cut_pattern *as = &FRAME_ITEM(frame_cut_pattern, from->patterns, w);
            const frame_cut_part *first = &FRAME_ITEM(frame_cut_part, from->parts, as->part_first);
            status = frame_cut_plan_add(to, of->job, is->kind, is->times, first, as->part_count);
            continue;
        }
        for (size_t i = 0; i < of->job->item_count; i++)
            if (row_of(of, w)[i]) parts[count++] = (frame_cut_part){(uint32_t)i, 0, row_of(of, w)[i]};
        status = frame_cut_plan_add(to, of->job, is->kind, is->times, parts, count);
    }
    return status;
}

static void measure(const tidying *of, frame_tidiness *is) {
    *is = (frame_tidiness){0, 0};
    for (size_t w = 0; w < of->count; w++) {
        const cut_way *one = &of->ways[w];
        is->patterns += one->times > 0;
        if (one->times && one->plain) is->left += one->times * worth_of_left(of, one->kind, one->left);
    }
}

static frame_status write_back(const tidying *of, frame_cut_plan *plan) {
    frame_cut_plan next;
    frame_cut_part *parts = frame_take((of->job->item_count + 1) * sizeof *parts);
    frame_cut_plan_begin(&next);
    const frame_status status = parts ? write_plan(of, plan, &next, parts) : FRAME_NO_MEMORY;
    if (!status) { /* cost and boards are as they were */
        const frame_cut_plan before = *plan;
        plan->patterns = next.patterns, plan->parts = next.parts;
        next.patterns = before.patterns, next.parts = before.parts;
    }
    frame_cut_plan_give(&next);
    frame_give(parts);
    return status;
}

static double longest_of(const frame_cut_job *job) {
    double longest = 1;
    for (size_t r = 0; r < job->room_count; r++)
        if ((double)job->rooms[r].size > longest) longest = (double)job->rooms[r].size;
    return longest;
}

frame_status frame_tidy(const frame_cut_job *job, frame_cut_plan *plan, frame_tidiness *is) {
    tidying of = {.job = job, .longest = longest_of(job)};
    frame_status status = frame_cut_plan_merge(plan, job);
    const size_t ways = plan->patterns.count;
    *is = (frame_tidiness){ways, 0};
    if (status || ways * job->item_count > MOST_NUMBERS) return status;
    of.ways = frame_take_zeroed(ways + 1, sizeof *of.ways);
    of.counts = frame_take_zeroed((ways + 2) * job->item_count, sizeof *of.counts);
    of.spare = frame_take_zeroed(job->supply_count + 1, sizeof *of.spare);
    if (!of.ways || !of.counts || !of.spare) status = FRAME_NO_MEMORY;
    of.taken = of.counts ? row_of(&of, ways) : NULL;
    of.given = of.counts ? row_of(&of, ways + 1) : NULL;
    if (!status) {
        read_plan(&of, plan);
        while (improve(&of)) continue;
        measure(&of, is);
        status = write_back(&of, plan);
    }
    frame_give(of.ways);
    frame_give(of.counts);
    frame_give(of.spare);
    return status;
}

int frame_tidier(const frame_tidiness *one, const frame_tidiness *other) {
    return one->patterns != other->patterns ? one->patterns < other->patterns : one->left > other->left + NOTHING;
}
