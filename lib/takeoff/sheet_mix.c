/* The cheapest mix of patterns: a linear programme of which only the patterns that help are made (after Gilmore and
 * Gomory). A row for each kind: the patterns used must give its demand. The basis's inverse is kept whole. */
#include <math.h>
#include <string.h>

#include "takeoff/sheet_cutter.h"

typedef struct mix {
    frame_sheet_cutter *cutter;
    int rows, spare;
    double *inverse;  /* row by row */
    double *amounts;  /* how much of each pattern of the basis is used */
    double *entering; /* the new pattern seen from the basis */
    double *duals;
    frame_sheet_pattern **basis;
    int *left, *need;
} mix;

static frame_sheet_pattern *new_pattern(void) {
    frame_sheet_pattern *p = frame_take_zeroed(1, sizeof *p);
    if (p) p->chosen.item_size = sizeof(int);
    return p;
}

static void give_pattern(frame_sheet_pattern *p) {
    if (p) frame_array_give(&p->chosen);
    frame_give(p);
}

/* Begins with patterns of one kind each. */
static frame_status begin_basis(mix *m) {
    for (int i = 0; i < m->rows; i++) {
        if (!(m->basis[i] = new_pattern())) return FRAME_NO_MEMORY;
        for (int k = 0; k < m->rows; k++) m->duals[k] = k == i;
        if (frame_sheet_pattern_make(m->cutter, m->duals, m->left, m->basis[i])) return FRAME_NO_MEMORY;
        frame_sheet_pattern_times(m->cutter, m->basis[i], m->need);
        const double each = m->need[i] > 0 ? m->need[i] : 1;
        m->inverse[(size_t)i * (size_t)m->rows + (size_t)i] = 1 / each;
        m->amounts[i] = m->cutter->demand[i] / each;
    }
    return FRAME_OK;
}

static void find_duals(mix *m) {
    const size_t n = (size_t)m->rows;
    for (size_t k = 0; k < n; k++) m->duals[k] = 0;
    for (size_t i = 0; i < n; i++)
        for (size_t k = 0; k < n; k++) m->duals[k] += m->inverse[i * n + k];
    m->cutter->search->fitter.work += m->rows * m->rows / 8;
}

/* The row that runs out first when the new pattern is used; -1 when none does. */
static int leaving_row(mix *m) {
    const size_t n = (size_t)m->rows;
    int leaving = -1;
    double least = 1e300;
    for (size_t i = 0; i < n; i++) {
        m->entering[i] = 0;
        for (size_t k = 0; k < n; k++)
            if (m->need[k]) m->entering[i] += m->inverse[i * n + k] * m->need[k];
        if (m->entering[i] < 1e-9) continue;
        const double ratio = m->amounts[i] / m->entering[i];
        if (ratio < least - 1e-12) least = ratio, leaving = (int)i;
    }
    return leaving;
}

static void exchange(mix *m, int row) {
    const size_t n = (size_t)m->rows, r = (size_t)row;
    const double pivot = m->entering[r], amount = m->amounts[r] / pivot;
    for (size_t k = 0; k < n; k++) m->inverse[r * n + k] /= pivot;
    for (size_t i = 0; i < n; i++) {
        if (i == r || m->entering[i] == 0) continue;
        for (size_t k = 0; k < n; k++) m->inverse[i * n + k] -= m->entering[i] * m->inverse[r * n + k];
        m->amounts[i] = fmax(0, m->amounts[i] - m->entering[i] * amount);
    }
    m->amounts[r] = amount;
    m->cutter->search->fitter.work += m->rows * m->rows / 8;
}

static int is_out(const mix *m, int64_t end) {
    frame_sheet_search *s = m->cutter->search;
    if (frame_sheet_is_stopped(s, FRAME_NOT_GIVEN)) return 1;
    return s->limits.until <= 0 && s->fitter.work >= end;
}

/* Adds patterns for as long as one is worth more than the sheet it takes. */
static frame_status improve(mix *m) {
    const int64_t end = m->cutter->search->fitter.work + m->cutter->search->limits.work / 4;
    while (!is_out(m, end)) {
        find_duals(m);
        for (int k = 0; k < m->rows; k++) m->duals[k] = fmax(m->duals[k], 0);
        frame_sheet_pattern *p = new_pattern();
        if (!p || frame_sheet_pattern_make(m->cutter, m->duals, m->left, p)) {
            give_pattern(p);
            return FRAME_NO_MEMORY;
        }
        frame_sheet_pattern_times(m->cutter, p, m->need);
        const int row = p->price > 1 + 1e-6 ? leaving_row(m) : -1;
        if (row < 0) {
            give_pattern(p);
            return FRAME_OK;
        }
        exchange(m, row);
        give_pattern(m->basis[row]);
        m->basis[row] = p;
    }
    return FRAME_OK;
}

/* Uses a pattern so often, or as often as the demand lets it; left counts what is taken. */
static frame_status use(mix *m, int row, int times, frame_sheet_layout *layout) {
    frame_sheet_cutter *c = m->cutter;
    frame_status status = FRAME_OK;
    frame_sheet_pattern_times(c, m->basis[row], m->need);
    for (int n = 0; n < times && !status; n++) {
        int enough = 1;
        for (int k = 0; k < m->rows; k++) enough &= m->left[k] + m->need[k] <= c->demand[k];
        if (!enough) break;
        for (int k = 0; k < m->rows; k++) m->left[k] += m->need[k];
        status = frame_sheet_pattern_add(c, m->basis[row], layout);
    }
    return status;
}

static int most_used(const mix *m) {
    int best = 0;
    for (int i = 1; i < m->rows; i++)
        if (m->amounts[i] > m->amounts[best]) best = i;
    return best;
}

/* Whole sheets of each pattern, the fractions cut off; where all are fractions, one sheet of the largest. The columns
 * are listed anew as the demand had them, so that the numbers in the patterns hold; sheets are taken off the demand at
 * the end. */
static frame_status round_down(mix *m, frame_sheet_layout *layout) {
    const int most = most_used(m);
    frame_status status = FRAME_OK;
    memset(m->left, 0, (size_t)m->rows * sizeof *m->left);
    for (int sideways = 0; sideways < 2 && !status; sideways++) {
        status = frame_sheet_columns_list(m->cutter, m->duals, sideways);
        for (int i = 0; i < m->rows && !status; i++) {
            const double times = floor(m->amounts[i] + 1e-6);
            if (m->basis[i]->sideways == sideways && m->basis[i]->chosen.count)
                status = use(m, i, i == most ? (int)fmax(times, 1) : (int)times, layout);
        }
    }
    for (int k = 0; k < m->rows; k++) m->cutter->demand[k] -= m->left[k];
    return status;
}

frame_status frame_sheet_mix(frame_sheet_cutter *c, double *prices, frame_sheet_layout *layout) {
    const size_t n = (size_t)c->job->kind_count;
    mix m = {.cutter = c, .rows = c->job->kind_count};
    m.inverse = frame_take_zeroed(n * n, sizeof *m.inverse);
    m.amounts = frame_take_zeroed(n, sizeof *m.amounts);
    m.entering = frame_take_zeroed(n, sizeof *m.entering);
    m.duals = frame_take_zeroed(n, sizeof *m.duals);
    m.basis = frame_take_zeroed(n, sizeof(void *));
    m.left = frame_take_zeroed(n, sizeof *m.left);
    m.need = frame_take_zeroed(n, sizeof *m.need);
    frame_status status =
        m.inverse && m.amounts && m.entering && m.duals && m.basis && m.left && m.need ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status) status = begin_basis(&m);
    if (!status) status = improve(&m);
    if (!status) status = round_down(&m, layout);
    for (size_t k = 0; k < n && !status; k++) prices[k] = fmax(m.duals[k], 1e-9) * c->job->stocks[c->stock].area;
    for (size_t i = 0; i < n && m.basis; i++) give_pattern(m.basis[i]);
    frame_give(m.inverse), frame_give(m.amounts), frame_give(m.entering), frame_give(m.duals);
    frame_give(m.basis), frame_give(m.left), frame_give(m.need);
    return status;
}
