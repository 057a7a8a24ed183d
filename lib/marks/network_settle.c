/* Least squares: corners moved until the weighed squares of the residuals are least, by Gauss and Newton; then what
 * each measurement's own error would show, from the inverse of the normal equations. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "marks/network.h"

enum { ROUNDS = 100 };

/* The unknown that moves a corner along x (0) or y (1); -1 for what is fixed. */
static int unknown(int corner, int axis) {
    if (corner == 0) return -1;
    if (corner == 1) return axis == 0 ? 0 : -1;
    return 2 * corner - 3 + axis;
}

/* How a line's length changes with the unknowns: at most four of them. */
typedef struct slopes {
    int index[4], count;
    double value[4];
} slopes;

static slopes slopes_of(const frame_network *network, const frame_network_line *line) {
    const double dx = network->x[line->to] - network->x[line->from], dy = network->y[line->to] - network->y[line->from];
    const double found = fmax(hypot(dx, dy), 1e-9), at[4] = {-dx / found, -dy / found, dx / found, dy / found};
    slopes s = {.count = 0};
    for (int i = 0; i < 4; i++) {
        const int index = unknown(i < 2 ? line->from : line->to, i % 2);
        if (index < 0) continue;
        s.index[s.count] = index;
        s.value[s.count++] = at[i];
    }
    return s;
}

static void build(frame_network *network) {
    const int n = network->unknowns;
    memset(network->normal, 0, sizeof(double) * (size_t)n * (size_t)n);
    memset(network->right, 0, sizeof(double) * (size_t)n);
    for (int i = 0; i < network->lines; i++) {
        const frame_network_line *line = &network->line[i];
        const slopes s = slopes_of(network, line);
        const double weight = 1 / (line->error * line->error), off = line->length - frame_network_found(network, line);
        for (int a = 0; a < s.count; a++) {
            network->right[s.index[a]] += weight * s.value[a] * off;
            for (int b = 0; b < s.count; b++)
                network->normal[s.index[a] * n + s.index[b]] += weight * s.value[a] * s.value[b];
        }
    }
}

/* The lower triangle of the normal equations becomes its root (Cholesky); gives the unknown that is not held, or -1. */
static int factor(frame_network *network) {
    const int n = network->unknowns;
    double *m = network->normal;
    for (int k = 0; k < n; k++) {
        const double whole = m[k * n + k];
        for (int i = 0; i < k; i++) m[k * n + k] -= m[k * n + i] * m[k * n + i];
        if (!(m[k * n + k] > 1e-10 * whole) || whole <= 0) return k;
        m[k * n + k] = sqrt(m[k * n + k]);
        for (int row = k + 1; row < n; row++) {
            for (int i = 0; i < k; i++) m[row * n + k] -= m[row * n + i] * m[k * n + i];
            m[row * n + k] /= m[k * n + k];
        }
    }
    return -1;
}

static void solve(const double *m, int n, double *right) {
    for (int i = 0; i < n; i++) {
        for (int k = 0; k < i; k++) right[i] -= m[i * n + k] * right[k];
        right[i] /= m[i * n + i];
    }
    for (int i = n - 1; i >= 0; i--) {
        for (int k = i + 1; k < n; k++) right[i] -= m[k * n + i] * right[k];
        right[i] /= m[i * n + i];
    }
}

static frame_status not_held(int index) {
    return frame_fail_number(FRAME_IMPOSSIBLE, "distances", index == 0 ? 2 : (index + 3) / 2 + 1,
                             "enough distances to hold this corner: as it is, it can move while all of them stay");
}

static double misfit(const frame_network *network) {
    double sum = 0;
    for (int i = 0; i < network->lines; i++) {
        const frame_network_line *line = &network->line[i];
        const double off = (line->length - frame_network_found(network, line)) / line->error;
        sum += off * off;
    }
    return sum;
}

static void move(frame_network *network, double part) {
    for (int corner = 1; corner < network->corners; corner++) {
        network->x[corner] += part * network->right[unknown(corner, 0)];
        if (corner > 1) network->y[corner] += part * network->right[unknown(corner, 1)];
    }
}

/* One step, shortened while it makes things worse; gives how far the farthest unknown moved. */
static double step(frame_network *network) {
    double part = 1, most = 0;
    const double before = misfit(network);
    for (int i = 0; i < network->unknowns; i++) most = fmax(most, fabs(network->right[i]));
    move(network, 1);
    while (part > 1e-6 && misfit(network) > before * (1 + 1e-12) + 1e-12) {
        move(network, -part / 2);
        part /= 2;
    }
    return most * part;
}

static double share_of(const frame_network *network, const frame_network_line *line, double *column) {
    const slopes s = slopes_of(network, line);
    const int n = network->unknowns;
    double used = 0;
    memset(column, 0, sizeof(double) * (size_t)n);
    for (int i = 0; i < s.count; i++) column[s.index[i]] = s.value[i];
    solve(network->normal, n, column);
    for (int i = 0; i < s.count; i++) used += s.value[i] * column[s.index[i]];
    return fmin(fmax(1 - used / (line->error * line->error), 0), 1);
}

static void find_errors(frame_network *network, double *column) {
    const int n = network->unknowns;
    for (int corner = 0; corner < network->corners; corner++) {
        double square = 0;
        for (int axis = 0; axis < 2; axis++) {
            const int index = unknown(corner, axis);
            if (index < 0) continue;
            memset(column, 0, sizeof(double) * (size_t)n);
            column[index] = 1;
            solve(network->normal, n, column);
            square += column[index];
        }
        network->error[corner] = sqrt(fmax(square, 0));
    }
}

frame_status frame_network_settle(frame_network *network) {
    for (int round = 0; round < ROUNDS; round++) {
        build(network);
        const int loose = factor(network);
        if (loose >= 0) return not_held(loose);
        solve(network->normal, network->unknowns, network->right);
        if (step(network) < 1e-10) break;
    }
    build(network);
    const int loose = factor(network);
    if (loose >= 0) return not_held(loose);
    for (int i = 0; i < network->lines; i++) {
        frame_network_line *line = &network->line[i];
        line->residual = line->length - frame_network_found(network, line);
        line->share = share_of(network, line, network->right);
    }
    find_errors(network, network->right);
    return FRAME_OK;
}
