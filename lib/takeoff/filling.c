/* Filling a room: the table, and the best filling read from it. */
#include "takeoff/filling.h"

#include <math.h>
#include <string.h>

/* Numbers a table may hold when it is exact, and how finely sizes are told apart when it is not. */
enum { MOST_NUMBERS = 4 << 20, COARSE_CELLS = 4096 };
static const double MOST_BRANCHES = 2e6;

static void choose_unit(frame_filling *filling) {
    int64_t unit = 0;
    for (size_t i = 0; i < filling->count; i++)
        unit = frame_cut_common_divisor(filling->job->items[filling->first + i].size, unit);
    if (unit < 1) unit = 1;
    const int64_t rows = (int64_t)filling->count + 1;
    filling->exact = filling->largest / unit < MOST_NUMBERS / rows;
    if (!filling->exact) {
        int64_t cells = MOST_NUMBERS / rows - 1;
        if (cells > COARSE_CELLS) cells = COARSE_CELLS;
        unit = filling->largest / cells + 1;
    }
    filling->unit = unit;
    filling->cells = (size_t)(filling->largest / unit);
}

frame_status frame_filling_begin(frame_filling *filling, const frame_cut_job *job, int32_t group, int32_t way) {
    memset(filling, 0, sizeof *filling);
    filling->job = job;
    filling->way = way;
    filling->most_branches = MOST_BRANCHES;
    while (filling->first < job->item_count && job->items[filling->first].group != group) filling->first++;
    while (filling->first + filling->count < job->item_count &&
           job->items[filling->first + filling->count].group == group)
        filling->count++;
    for (size_t r = 0; r < job->room_count; r++)
        if (job->rooms[r].group == group && job->rooms[r].way == way && job->rooms[r].size > filling->largest)
            filling->largest = job->rooms[r].size;
    choose_unit(filling);
    filling->stage = frame_take_zeroed(filling->count + 1, sizeof *filling->stage);
    filling->table = frame_take_zeroed((filling->count + 1) * (filling->cells + 1), sizeof *filling->table);
    filling->spare = frame_take_zeroed(filling->cells + 1, sizeof *filling->spare);
    filling->counts = frame_take_zeroed(filling->count + 1, sizeof *filling->counts);
    filling->trial = frame_take_zeroed(filling->count + 1, sizeof *filling->trial);
    return filling->stage && filling->table && filling->spare && filling->counts && filling->trial ? FRAME_OK
                                                                                                   : FRAME_NO_MEMORY;
}

void frame_filling_give(frame_filling *filling) {
    frame_give(filling->stage);
    frame_give(filling->table);
    frame_give(filling->spare);
    frame_give(filling->counts);
    frame_give(filling->trial);
    memset(filling, 0, sizeof *filling);
}

/* So many of an item or none: one row from another. */
static void take_or_leave(double *restrict to, const double *restrict from, size_t cells, size_t size, double worth) {
    const size_t count = cells + 1 - size;
    double *restrict above = to + size;
    const double *restrict as_is = from + size;
    memcpy(to, from, size * sizeof *to);
    for (size_t c = 0; c < count; c++) above[c] = as_is[c] > from[c] + worth ? as_is[c] : from[c] + worth;
}

/* One row of the table from the next: any number of the item up to most, and the best of the rest. Any number up to n
 * is the sum of some of 1, 2, 4, ... and a remainder, so few passes do; they go to and fro between the row and a spare
 * one, the last into the row. */
static double work_out(double *row, const double *next, double *spare, size_t cells, const frame_filling_stage *stage) {
    const size_t size = (size_t)stage->cells;
    if (!size) {
        for (size_t c = 0; c <= cells; c++) row[c] = next[c] + fmax(stage->worth * stage->most, 0);
        return (double)cells;
    }
    size_t left = cells / size < (size_t)stage->most ? cells / size : (size_t)stage->most, passes = 0, part = 1;
    for (size_t rest = left, one = 1; rest; rest -= one < rest ? one : rest, one *= 2) passes++;
    if (!passes) memcpy(row, next, (cells + 1) * sizeof *row);
    const double *from = next;
    for (size_t pass = passes; pass; pass--, part *= 2) {
        const size_t taken = part < left ? part : left;
        double *to = pass % 2 ? row : spare;
        take_or_leave(to, from, cells, taken * size, stage->worth * (double)taken);
        from = to;
        left -= taken;
    }
    return (double)cells * (double)passes;
}

void frame_filling_price(frame_filling *filling, const double *worth, const int32_t *most, double scale, int all) {
    const size_t width = filling->cells + 1;
    const double credit = filling->way & FRAME_CUT_KEPT ? filling->job->credit * scale : 0;
    filling->stages = 0;
    for (size_t i = 0; i < filling->count; i++) {
        const size_t item = filling->first + i;
        const int64_t size = filling->job->items[item].size;
        const double net = worth[item] - floor(credit * (double)size);
        if (most[item] <= 0 || size > filling->largest) continue;
        if ((filling->way & FRAME_CUT_RIPPED) && !filling->job->items[item].may_rip) continue;
        if (net <= 0 && !all) continue;
        const int64_t fit = filling->largest / size;
        filling->stage[filling->stages++] = (frame_filling_stage){
            size, net, (uint32_t)item, fit < most[item] ? (int32_t)fit : most[item], size / filling->unit};
    }
    memset(filling->table + filling->stages * width, 0, width * sizeof *filling->table);
    for (size_t s = filling->stages; s-- > 0;)
        filling->steps += work_out(filling->table + s * width, filling->table + (s + 1) * width, filling->spare,
                                   filling->cells, &filling->stage[s]);
}

double frame_filling_bound(const frame_filling *filling, int64_t room) {
    return filling->table[room / filling->unit];
}

/* In an exact table the best filling of what is left can be followed without trying. */
static void follow(frame_filling *filling, size_t cell, size_t from) {
    const size_t width = filling->cells + 1;
    for (size_t s = from; s < filling->stages; s++) {
        const frame_filling_stage *stage = &filling->stage[s];
        const double *row = filling->table + s * width, *next = row + width;
        int64_t n = (int64_t)cell / stage->cells;
        if (n > stage->most) n = stage->most;
        while (n > 0 && next[cell - (size_t)(n * stage->cells)] + stage->worth * (double)n < row[cell]) n--;
        filling->counts[stage->item - filling->first] = (uint32_t)n;
        cell -= (size_t)(n * stage->cells);
    }
}

/* A search through the fillings worth at least least. Worths are whole numbers: a filling worth more than one that was
 * found is worth at least one more. */
typedef struct walk {
    frame_filling *filling;
    uint32_t *trial; /* counts of the filling at hand; all 0 to begin */
    double least;    /* a visit may raise it */
    double branches, most_branches;
    frame_filling_visit visit;
    void *user;
} walk;

/* Tries the most of an item first, and no branch that the table says cannot do. Gives 0 when it was stopped. */
static int walk_stage(walk *of, size_t s, int64_t room, double worth) {
    const frame_filling *filling = of->filling;
    if (s == filling->stages) return of->visit(of->user, of->trial, worth);
    const frame_filling_stage *stage = &filling->stage[s];
    const double *next = filling->table + (s + 1) * (filling->cells + 1);
    int64_t n = room / stage->size;
    if (n > stage->most) n = stage->most;
    for (; n >= 0; n--) {
        const int64_t rest = room - n * stage->size;
        const double reached = worth + stage->worth * (double)n;
        if (reached + next[rest / filling->unit] < of->least) continue;
        if (++of->branches > of->most_branches) return 0;
        of->trial[stage->item - filling->first] = (uint32_t)n;
        if (!walk_stage(of, s + 1, rest, reached)) return 0;
    }
    of->trial[stage->item - filling->first] = 0;
    return 1;
}

/* A walk to the filling worth most: each one found is kept, and only those worth more are of interest. */
static int keep_best(void *user, const uint32_t *counts, double worth) {
    walk *of = user;
    memcpy(of->filling->counts, counts, of->filling->count * sizeof *counts);
    of->least = worth + 1;
    return 1;
}

/* Ready to walk to the filling worth most, when it is worth more than more_than; user is still to be the walk. */
static walk walk_to_best(frame_filling *filling, double more_than) {
    memset(filling->trial, 0, filling->count * sizeof *filling->trial);
    return (walk){.filling = filling,
                  .trial = filling->trial,
                  .least = floor(more_than) + 1,
                  .most_branches = filling->most_branches,
                  .visit = keep_best};
}

/* What a walk to the best has come to. */
static double best_of(const walk *of, double more_than) {
    of->filling->steps += of->branches;
    return of->least > floor(more_than) + 1 ? of->least - 1 : more_than;
}

double frame_filling_best(frame_filling *filling, int64_t room, double more_than) {
    filling->complete = 1;
    if (frame_filling_bound(filling, room) <= more_than) return more_than;
    if (filling->exact) {
        memset(filling->counts, 0, filling->count * sizeof *filling->counts);
        follow(filling, (size_t)(room / filling->unit), 0);
        return frame_filling_bound(filling, room);
    }
    walk of = walk_to_best(filling, more_than);
    of.user = &of;
    filling->complete = walk_stage(&of, 0, room, 0);
    return best_of(&of, more_than);
}

/* As frame_filling_best with the first item given; in an exact table without trying. */
static double follow_from(frame_filling *filling, int64_t room, size_t stage) {
    const frame_filling_stage *of = &filling->stage[stage];
    const double *next = filling->table + (stage + 1) * (filling->cells + 1);
    const size_t cell = (size_t)(room / filling->unit);
    double best = 0;
    size_t most = 0;
    for (size_t n = 1; n <= (size_t)of->most && n * (size_t)of->cells <= cell; n++) {
        const double worth = of->worth * (double)n + next[cell - n * (size_t)of->cells];
        if (worth > best) best = worth, most = n;
    }
    memset(filling->counts, 0, filling->count * sizeof *filling->counts);
    filling->counts[of->item - filling->first] = (uint32_t)most;
    if (most) follow(filling, cell - most * (size_t)of->cells, stage + 1);
    return best;
}

double frame_filling_from(frame_filling *filling, int64_t room, size_t stage, double more_than) {
    const frame_filling_stage *of = &filling->stage[stage];
    if (filling->exact) return follow_from(filling, room, stage);
    walk from = walk_to_best(filling, more_than);
    from.user = &from;
    for (int32_t n = 1; n <= of->most && n * of->size <= room; n++) {
        const int64_t rest = room - n * of->size;
        const double *next = filling->table + (stage + 1) * (filling->cells + 1);
        if (of->worth * n + next[rest / filling->unit] < from.least) continue;
        filling->trial[of->item - filling->first] = (uint32_t)n;
        if (!walk_stage(&from, stage + 1, rest, of->worth * n)) break;
    }
    return best_of(&from, more_than);
}

int frame_filling_walk(frame_filling *filling, int64_t room, double least, uint32_t *trial, frame_filling_visit visit,
                       void *user) {
    walk of = {filling, trial, least, 0, INFINITY, visit, user};
    memset(trial, 0, filling->count * sizeof *trial);
    const int complete = walk_stage(&of, 0, room, 0);
    filling->steps += of.branches;
    return complete;
}
