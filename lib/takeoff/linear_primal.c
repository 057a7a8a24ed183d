/* The primal simplex method: the column that promises most enters, the first level to reach 0 leaves. */
#include <math.h>

#include "takeoff/linear.h"

static const double PIVOT_TOLERANCE = 1e-8, LEVEL_TOLERANCE = 1e-9;
enum { STALLED_AFTER = 200, NOTHING = INT32_MIN };

/* The columns that promised most when all were last looked at. Most steps look at these alone. */
typedef struct candidates {
    int32_t columns[32];
    double reduced[32];
    int count, spare;
} candidates;
enum { MOST_CANDIDATES = 32 };

/* Keeps a column if it is among the best so far; the least promising makes room. */
static void consider(candidates *of, int32_t column, double reduced) {
    int at = of->count;
    if (at == MOST_CANDIDATES) {
        at = 0;
        for (int i = 1; i < of->count; i++)
            if (of->reduced[i] > of->reduced[at]) at = i;
        if (reduced >= of->reduced[at]) return;
    } else {
        of->count++;
    }
    of->columns[at] = column;
    of->reduced[at] = reduced;
}

static double reduced_cost(const frame_linear *linear, int32_t column) {
    return column < 0 ? frame_linear_slack_reduced(linear, (size_t)(-1 - column))
                      : frame_linear_reduced(linear, &FRAME_ITEM(frame_linear_column, linear->columns, column));
}

static int is_basic(const frame_linear *linear, int32_t column) {
    return column < 0 ? linear->slack_place[-1 - column] >= 0
                      : FRAME_ITEM(frame_linear_column, linear->columns, column).place >= 0;
}

/* Looks at all columns; first_only: the first one that promises anything (which cannot go in circles). */
static void look_at_all(const frame_linear *linear, candidates *of, int first_only) {
    const frame_linear_column *columns = linear->columns.items;
    of->count = 0;
    for (size_t j = 0; j < linear->columns.count && !(first_only && of->count); j++) {
        if (columns[j].place >= 0 || columns[j].barred) continue;
        const double reduced = frame_linear_reduced(linear, &columns[j]);
        if (reduced < -linear->tolerance) consider(of, (int32_t)j, reduced);
    }
    for (size_t r = 0; r < linear->rows && !(first_only && of->count); r++)
        if (linear->slack_place[r] < 0 && frame_linear_slack_reduced(linear, r) < -linear->tolerance)
            consider(of, -1 - (int32_t)r, frame_linear_slack_reduced(linear, r));
}

/* The best of the candidates by today's duals; NOTHING when none promises anything. */
static int32_t best_candidate(const frame_linear *linear, candidates *of) {
    int32_t best = NOTHING;
    double least = -linear->tolerance;
    for (int i = 0; i < of->count; i++) {
        if (is_basic(linear, of->columns[i])) continue;
        of->reduced[i] = reduced_cost(linear, of->columns[i]);
        if (of->reduced[i] < least) best = of->columns[i], least = of->reduced[i];
    }
    return best;
}

static int32_t entering_column(const frame_linear *linear, candidates *of, int stalled) {
    int32_t best = stalled ? NOTHING : best_candidate(linear, of);
    if (best != NOTHING) return best;
    look_at_all(linear, of, stalled);
    return best_candidate(linear, of);
}

/* The row whose level is the first to reach 0; of equals the one with the largest pivot, or, stalled, the first. */
static size_t leaving_row(const frame_linear *linear, int stalled) {
    size_t best = linear->rows;
    double least = INFINITY;
    for (size_t r = 0; r < linear->rows; r++) {
        const double pivot = linear->work[r];
        if (pivot <= PIVOT_TOLERANCE) continue;
        const double ratio = fmax(linear->levels[r], 0) / pivot;
        const int equal = best < linear->rows && fabs(ratio - least) <= 1e-12 * (1 + fabs(least));
        const int preferred =
            stalled ? equal && linear->basis[r] < linear->basis[best] : equal && pivot > linear->work[best];
        if ((!equal && ratio < least) || preferred) best = r, least = equal ? fmin(least, ratio) : ratio;
    }
    return best;
}

frame_linear_state frame_linear_primal(frame_linear *linear) {
    size_t without_gain = 0;
    candidates of = {.count = 0};
    double cost = frame_linear_cost(linear);
    frame_linear_reprice(linear);
    const size_t most = linear->steps + 20 * linear->rows + 2000; /* rounding could make it go in circles */
    while (linear->steps < most) {
        const int stalled = without_gain > STALLED_AFTER;
        const int32_t entering = entering_column(linear, &of, stalled);
        if (entering == NOTHING) return FRAME_LINEAR_SOLVED;
        frame_linear_through(linear, entering);
        const size_t row = leaving_row(linear, stalled);
        if (row == linear->rows) return FRAME_LINEAR_UNBOUNDED;
        if (linear->levels[row] < 0 && linear->levels[row] > -LEVEL_TOLERANCE) linear->levels[row] = 0;
        const double reduced = reduced_cost(linear, entering);
        const double step = reduced / linear->work[row];
        const double *old_row = &linear->inverse[row * linear->rows];
        for (size_t r = 0; r < linear->rows; r++) linear->duals[r] += step * old_row[r];
        const frame_linear_state state = frame_linear_exchange(linear, row, entering);
        if (state) return state;
        const double now = frame_linear_cost(linear);
        without_gain = now < cost - 1e-12 * fabs(cost) ? 0 : without_gain + 1;
        cost = now;
    }
    return FRAME_LINEAR_STOPPED;
}
