/* About where the corners of a plan lie: each is placed by two distances to corners placed before, on the side that a
 * third distance, a plan, or the way round says. The settling makes it exact. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "marks/network.h"

typedef struct place {
    double x, y;
} place;

typedef struct arms {
    int corner[2];
    double length[2];
    int count; /* distances to corners that are placed */
} arms;

static arms arms_of(const frame_network *network, const int *placed, int corner) {
    arms found = {.count = 0};
    for (int i = 0; i < network->lines; i++) {
        const frame_network_line *line = &network->line[i];
        const int other = line->from == corner ? line->to : line->to == corner ? line->from : -1;
        if (other < 0 || !placed[other]) continue;
        int again = 0; /* measured twice */
        for (int k = 0; k < found.count && k < 2; k++) again |= found.corner[k] == other;
        if (again) continue;
        if (found.count < 2) {
            found.corner[found.count] = other;
            found.length[found.count] = line->length;
        }
        found.count++;
    }
    return found;
}

/* The two places at the ends of two arms; where the arms do not reach each other, the place between. */
static void swing(const frame_network *network, const arms *by, place found[2]) {
    const int a = by->corner[0], b = by->corner[1];
    const double dx = network->x[b] - network->x[a], dy = network->y[b] - network->y[a], base = hypot(dx, dy);
    const double p = by->length[0], q = by->length[1];
    const double along = base > 0 ? (p * p - q * q + base * base) / (2 * base) : 0;
    const double up = sqrt(fmax(p * p - along * along, 1e-6 * p * p)); /* never quite in line: settling needs a side */
    const double ux = base > 0 ? dx / base : 1, uy = base > 0 ? dy / base : 0;
    found[0] = (place){network->x[a] + along * ux - up * uy, network->y[a] + along * uy + up * ux}; /* to the left */
    found[1] = (place){network->x[a] + along * ux + up * uy, network->y[a] + along * uy - up * ux};
}

/* How badly a place fits the distances to corners placed before. */
static double misfit(const frame_network *network, const int *placed, int corner, place at) {
    double sum = 0;
    for (int i = 0; i < network->lines; i++) {
        const frame_network_line *line = &network->line[i];
        const int other = line->from == corner ? line->to : line->to == corner ? line->from : -1;
        if (other < 0 || !placed[other]) continue;
        const double off = (hypot(at.x - network->x[other], at.y - network->y[other]) - line->length) / line->error;
        sum += off * off;
    }
    return sum;
}

/* Counterclockwise round a plan without reentrant corners: a, b, c turn left when they stand in their order, or in that
 * order begun at another of them. */
static int turns_left(int a, int b, int c) {
    return (a < b && b < c) || (b < c && c < a) || (c < a && a < b);
}

static place choose(frame_network *network, const int *placed, int corner, const arms *by) {
    place found[2];
    swing(network, by, found);
    if (by->count > 2) {
        const double left = misfit(network, placed, corner, found[0]),
                     right = misfit(network, placed, corner, found[1]);
        return left <= right ? found[0] : found[1];
    }
    int count = 0;
    for (int i = 0; i < network->corners; i++) count += placed[i];
    if (count > 2) network->either_side = 1; /* the first triangle has a side only by the way round */
    return turns_left(by->corner[0], by->corner[1], corner) ? found[0] : found[1];
}

/* Places all it can from a first line; gives how many. */
static int place_from(frame_network *network, const frame_network_line *first, int *placed) {
    memset(placed, 0, sizeof *placed * FRAME_NETWORK_CORNERS);
    network->either_side = 0;
    network->x[first->from] = network->y[first->from] = network->y[first->to] = 0;
    network->x[first->to] = first->length;
    placed[first->from] = placed[first->to] = 1;
    int count = 2;
    /* Those that more distances hold first: they say their side themselves. */
    for (int most = network->corners; most >= 2;) {
        int grown = 0;
        for (int corner = 0; corner < network->corners && !grown; corner++) {
            if (placed[corner]) continue;
            const arms by = arms_of(network, placed, corner);
            if (by.count < most || by.count < 2) continue;
            const place at = choose(network, placed, corner, &by);
            network->x[corner] = at.x;
            network->y[corner] = at.y;
            placed[corner] = 1;
            count++;
            grown = 1;
        }
        most = grown ? network->corners : most - 1;
    }
    return count;
}

/* The whole plan moved and turned, so that corner 1 lies at 0 and corner 2 on the x axis. */
static void turn(frame_network *network) {
    const double ox = network->x[0], oy = network->y[0];
    const double dx = network->x[1] - ox, dy = network->y[1] - oy, length = hypot(dx, dy);
    const double cosine = length > 0 ? dx / length : 1, sine = length > 0 ? dy / length : 0;
    for (int i = 0; i < network->corners; i++) {
        const double x = network->x[i] - ox, y = network->y[i] - oy;
        network->x[i] = x * cosine + y * sine;
        network->y[i] = y * cosine - x * sine;
    }
}

static frame_status not_held(const int *placed, int corners) {
    int corner = 0;
    while (corner < corners - 1 && placed[corner]) corner++;
    return frame_fail_number(FRAME_IMPOSSIBLE, "distances", corner + 1,
                             "enough distances to hold this corner: at least two, to corners that are held themselves");
}

frame_status frame_network_place(frame_network *network) {
    int placed[FRAME_NETWORK_CORNERS] = {0}, best = 0, at = -1, told = 1;
    for (int i = 0; i < network->corners; i++) told &= network->near[i];
    if (told) {
        turn(network);
        return FRAME_OK;
    }
    for (int i = 0; i < network->lines && best < network->corners; i++) {
        const int count = place_from(network, &network->line[i], placed);
        if (count > best) best = count, at = i;
    }
    place_from(network, &network->line[at], placed);
    if (best < network->corners) return not_held(placed, network->corners);
    turn(network);
    return FRAME_OK;
}
