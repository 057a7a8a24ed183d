/* Laying the pieces of a board so that equal parallel cuts meet. */
#include "takeoff/sharing.h"

#include <math.h>
#include <string.h>

enum { TURNS = 4, MOST_STARTS = 64 };
static const double SAME_IN = 1e-9;

double frame_share_saving(double run_in, double across_in, double kerf_in) {
    const double run = fabs(run_in);
    if (run <= SAME_IN || !(across_in > 0)) return 0;
    return fmax(0, run + kerf_in - kerf_in * hypot(1, run / across_in));
}

double frame_share_between(const frame_share_piece *before, const frame_share_piece *after, double kerf_in) {
    if (fabs(before->right_in - after->left_in) > SAME_IN) return 0;
    if (fabs(before->across_in - after->across_in) > SAME_IN) return 0;
    return frame_share_saving(before->right_in, before->across_in, kerf_in);
}

/* The four ways a piece may lie, none of which mirrors it: as it is; end for end flat on the bench; rolled over, which
 * slants both cuts the other way; both. One whose face is to stay up takes the first two, a crowned one the first. */
static frame_share_piece turned(const frame_share_piece *of, int turn) {
    frame_share_piece lying = *of;
    const double sign = turn & 2 ? -1 : 1;
    lying.left_in = sign * (turn & 1 ? of->right_in : of->left_in) + 0.0; /* no -0 */
    lying.right_in = sign * (turn & 1 ? of->left_in : of->right_in) + 0.0;
    return lying;
}

static int turns_of(const frame_share_piece *of) {
    return of->crowned ? 1 : of->handed ? 2 : TURNS;
}

/* The piece that goes behind the last one: the most saved; of those the one that offers the most to the next. */
static size_t choose(const frame_share_piece *pieces, size_t count, const frame_share_piece *last, double kerf_in,
                     frame_share_piece *chosen, double *saved) {
    size_t best = count;
    double most = 0, offer = 0;
    for (size_t i = 0; i < count; i++) {
        if (pieces[i].used) continue;
        for (int turn = 0; turn < turns_of(&pieces[i]); turn++) {
            const frame_share_piece lying = turned(&pieces[i], turn);
            const double saving = frame_share_between(last, &lying, kerf_in);
            const double next = frame_share_saving(lying.right_in, lying.across_in, kerf_in);
            if (best < count && (saving < most || (saving == most && next <= offer))) continue;
            best = i, most = saving, offer = next, *chosen = lying;
        }
    }
    *saved += most;
    return best;
}

static double lay_from(frame_share_piece *pieces, size_t count, size_t start, int turn, double kerf_in,
                       frame_share_piece *laid) {
    double saved = 0;
    for (size_t i = 0; i < count; i++) pieces[i].used = i == start;
    laid[0] = turned(&pieces[start], turn);
    for (size_t n = 1; n < count; n++) pieces[choose(pieces, count, &laid[n - 1], kerf_in, &laid[n], &saved)].used = 1;
    return saved;
}

static int any_cut(const frame_share_piece *pieces, size_t count) {
    size_t cut = 0;
    for (size_t i = 0; i < count; i++) cut += pieces[i].left_in != 0 || pieces[i].right_in != 0;
    return cut > 1;
}

void frame_share_lay(frame_share_piece *pieces, size_t count, double kerf_in, frame_share_piece *work) {
    frame_share_piece *laid = work, *best = work + count;
    double most = 0;
    int found = 0, starts = 0;
    if (!any_cut(pieces, count)) return;
    for (size_t start = 0; start < count && starts < MOST_STARTS; start++)
        for (int turn = 0; turn < turns_of(&pieces[start]); turn++, starts++) {
            const double saved = lay_from(pieces, count, start, turn, kerf_in, laid);
            if (saved <= most) continue;
            most = saved, found = 1;
            memcpy(best, laid, count * sizeof *best);
        }
    if (found) memcpy(pieces, best, count * sizeof *pieces);
}
