/* Where members meet at a point of the roof: which runs on, and what the others are cut against.
 *
 * With a level member (a ridge, a break) the highest rank is its: the others are cut against its sides, and when it
 * ends there it runs on until those behind it bear whole. A hip that comes straight against its end is cut against the
 * end. Without one, all are mitred, along the upright planes through the point and through where their sides meet. */
#include <stdlib.h>

#include "base/error.h"
#include "roof/members.h"
#include "working/record.h"

static const double behind_deg = 168; /* from here on what comes to a ridge's end is cut against the end */

static void add_stop(members_end *end, line2 line, const char *label, double required) {
    for (int32_t i = 0; i < end->stop_count; i++) {
        const line2 had = end->stops[i].line;
        if (v2_dot(had.n, line.n) > 1 - 1e-12 && fabs(had.at - line.at) < 1e-9) return;
    }
    if (end->stop_count < MEMBERS_STOPS) end->stops[end->stop_count++] = (members_stop){line, label, required};
}

static v2 point_at(const members *m, const members_end *end) {
    const members_run *run = MEMBERS_RUN(m, end->run);
    if (end->which < 2) return run->at[end->which];
    const frame_roof_solve_point *point = MEMBERS_POINT(m, end->point);
    return (v2){point->x_in, point->y_in};
}

static double top_at(const members_run *run, v2 p) {
    return run->z - run->drop + run->slope * v2_dot(run->dir, v2_less(p, run->at[0]));
}

static double plumb_of(const members *m, const members_run *run) {
    return m->sections[run->section].depth * sqrt(1 + run->slope * run->slope);
}

/* Not what stands above the other one's top; where both slope, nor what hangs below its bottom. */
double members_share_on(const members *m, const members_run *run, const members_run *other, line2 cut) {
    const line2 own = line2_through(run->at[0], v2_left(run->dir));
    const double plumb = plumb_of(m, run), below = plumb_of(m, other);
    double proud = 0;
    for (int i = -1; i < 2; i += 2) {
        v2 corner;
        if (!line2_meet(cut, line2_moved(own, i * run->half), &corner)) continue;
        const double above = top_at(run, corner) - top_at(other, corner);
        proud += fmax(0, above) / 2;
        if (run->slope > 0 && other->slope > 0) proud += fmax(0, plumb - above - below) / 2;
    }
    return fmax(0, 1 - proud / plumb);
}

/* Of those that slope less is asked: they meet at unequal slopes and depths. */
static double share_on(const members *m, const members_end *end, const members_end *on, line2 cut) {
    const members_run *run = MEMBERS_RUN(m, end->run), *other = MEMBERS_RUN(m, on->run);
    const double least = run->slope == 0 ? 0.95 : other->slope == 0 ? 0.85 : 0.75;
    return least * members_share_on(m, run, other, cut);
}

/* -- ends at gables, walls and eaves -- */

static size_t first_end_at(const members *m, int32_t point) {
    size_t low = 0, high = m->ends.count;
    while (low < high) {
        const size_t middle = (low + high) / 2;
        if (MEMBERS_END(m, middle)->point < point)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

int members_wall_goes_on(const members *m, const members_side *side, int32_t point) {
    for (size_t i = 0; i < m->sides.count; i++) {
        const members_side *other = MEMBERS_SIDE(m, i);
        if (other == side || other->run >= 0 || (other->from != point && other->to != point)) continue;
        if (other->kind == FRAME_LINE_EAVE || other->off > 0) continue;
        if (v2_dot(other->line.n, side->line.n) > 1 - 1e-9) return 1;
    }
    return 0;
}

/* A ridge runs on to a wall that goes on beyond the ledger: what comes along that wall ends at the ridge's side, and so
 * does the ledger. */
static void close_at(members *m, int32_t point, const members_side *side) {
    for (size_t i = first_end_at(m, point); i < m->ends.count && MEMBERS_END(m, i)->point == point; i++) {
        members_end *end = MEMBERS_END(m, i);
        const int eave = side->kind == FRAME_LINE_EAVE;
        if (end->run < 0 || end->which == 2 || (eave && end->which)) continue;
        const double leads = v2_dot(side->line.n, end->away);
        if (leads < 1e-6) continue;
        const char *label = eave                            ? "tail cheek cut"
                            : side->kind == FRAME_LINE_WALL ? "cut at the wall"
                                                            : "cut at the gable";
        const int through =
            side->off > 0 && MEMBERS_RUN(m, end->run)->slope == 0 && members_wall_goes_on(m, side, point);
        const double off = through ? 0 : side->off;
        add_stop(end, line2_moved(side->line, off), label, off > 0 && !eave ? 0.85 : 0);
        end->closed = 1;
        if (eave && MEMBERS_RUN(m, end->run)->kind == FRAME_LINE_VALLEY) end->notched = 1;
    }
}

static void close_ends(members *m) {
    for (size_t i = 0; i < m->sides.count; i++) {
        const members_side *side = MEMBERS_SIDE(m, i);
        if (side->run >= 0 || side->kind == FRAME_LINE_SEAM) continue;
        close_at(m, side->from, side);
        close_at(m, side->to, side);
    }
}

/* -- the rank -- */

static int outranks(const members *m, const members_end *a, const members_end *b) {
    const members_run *x = MEMBERS_RUN(m, a->run), *y = MEMBERS_RUN(m, b->run);
    if ((x->slope == 0) != (y->slope == 0)) return x->slope == 0;
    if ((a->which == 2) != (b->which == 2)) return a->which == 2;
    if (fabs(x->half - y->half) > 1e-9) return x->half > y->half;
    if (fabs(x->length - y->length) > 1e-6) return x->length > y->length;
    return a->run < b->run;
}

static void sort_by_rank(const members *m, members_end **ends, size_t count) {
    for (size_t i = 1; i < count; i++)
        for (size_t k = i; k && outranks(m, ends[k], ends[k - 1]); k--) {
            members_end *const passed = ends[k];
            ends[k] = ends[k - 1];
            ends[k - 1] = passed;
        }
}

/* The side of one member that another comes to. */
static line2 side_facing(const members *m, const members_end *of, const members_end *comer) {
    const v2 left = v2_left(of->away);
    const v2 n = v2_dot(left, comer->away) > 0 ? left : v2_times(left, -1);
    return line2_moved(line2_through(point_at(m, of), n), MEMBERS_RUN(m, of->run)->half);
}

static int is_behind(const members_end *first, const members_end *end) {
    return first->which != 2 && v2_dot(first->away, end->away) < cos(behind_deg * FRAME_DEG);
}

/* How far past the point a member reaches along the side it is cut against. */
static double reach_past(const members *m, const members_end *first, const members_end *end) {
    const line2 side = side_facing(m, first, end), own = line2_through(point_at(m, end), v2_left(end->away));
    const double half = MEMBERS_RUN(m, end->run)->half;
    double past = 0;
    for (int i = -1; i < 2; i += 2) {
        v2 corner;
        if (!line2_meet(side, line2_moved(own, i * half), &corner)) continue;
        past = fmax(past, -v2_dot(first->away, v2_less(corner, point_at(m, first))));
    }
    return past;
}

static line2 end_facing(const members *m, const members_end *first) {
    const v2 back = v2_times(first->away, -1);
    return line2_moved(line2_through(point_at(m, first), back), first->past);
}

static frame_status end_first(members *m, members_end *first) {
    if (first->which == 2 || first->closed) return FRAME_OK;
    add_stop(first, line2_turned(end_facing(m, first)), "end cut", 0);
    const members_run *run = MEMBERS_RUN(m, first->run);
    const members_head head = {point_at(m, first), first->away, first->past, run->half,
                               top_at(run, point_at(m, first))};
    return first->past <= 1e-9 || frame_array_push(&m->heads, &head) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status cut_by_rank(members *m, members_end **ends, size_t count) {
    members_end *first = ends[0];
    for (size_t i = 1; i < count; i++)
        if (first->which != 2 && !first->closed && !is_behind(first, ends[i]))
            first->past = fmax(first->past, reach_past(m, first, ends[i]));
    const frame_status status = end_first(m, first);
    if (status) return status;
    for (size_t i = 1; i < count; i++) {
        const int behind = is_behind(first, ends[i]);
        if (ends[i]->which == 2) continue;
        const line2 against = behind ? end_facing(m, first) : side_facing(m, first, ends[i]);
        add_stop(ends[i], against, "cheek cut", behind ? 0 : share_on(m, ends[i], first, against));
        for (size_t k = 1; k < i; k++) {
            const int across =
                v2_dot(v2_left(first->away), ends[i]->away) * v2_dot(v2_left(first->away), ends[k]->away) < 0;
            if (across && !behind && !is_behind(first, ends[k])) continue;
            const line2 side = side_facing(m, ends[k], ends[i]);
            add_stop(ends[i], side, "cheek cut", share_on(m, ends[i], ends[k], side));
        }
    }
    return FRAME_OK;
}

/* -- mitres -- */

static int by_angle(const void *a, const void *b) {
    const members_end *x = *(members_end *const *)a, *y = *(members_end *const *)b;
    const double p = atan2(x->away.y, x->away.x), q = atan2(y->away.y, y->away.x);
    return (p > q) - (p < q);
}

/* The direction from the point in which a member and the next one counterclockwise part. */
static v2 parting(const members *m, const members_end *a, const members_end *b) {
    const line2 left = line2_moved(line2_through(point_at(m, a), v2_left(a->away)), MEMBERS_RUN(m, a->run)->half);
    const line2 right =
        line2_moved(line2_through(point_at(m, b), v2_times(v2_left(b->away), -1)), MEMBERS_RUN(m, b->run)->half);
    v2 corner;
    if (fabs(v2_cross(a->away, b->away)) > 0.1 && line2_meet(left, right, &corner))
        return v2_unit(v2_less(corner, point_at(m, a)));
    const v2 sum = v2_add(a->away, b->away);
    return v2_length(sum) > 0.2 ? v2_unit(sum) : v2_left(a->away);
}

static void mitre(members *m, members_end **ends, size_t count) {
    qsort(ends, count, sizeof *ends, by_angle);
    for (size_t i = 0; i < count; i++) {
        members_end *a = ends[i], *b = ends[(i + 1) % count];
        if (a == b || (count == 2 && i)) break;
        const v2 along = parting(m, a, b), n = v2_left(along);
        const line2 of_a = line2_through(point_at(m, a), v2_dot(n, a->away) > 0 ? n : v2_times(n, -1));
        const line2 of_b = line2_through(point_at(m, b), v2_dot(n, b->away) > 0 ? n : v2_times(n, -1));
        add_stop(a, of_a, "cheek cut", share_on(m, a, b, of_a));
        add_stop(b, of_b, "cheek cut", share_on(m, b, a, of_b));
    }
}

static frame_status end_at_point(members *m, size_t first, size_t next) {
    enum { MOST = 64 };
    members_end *ends[MOST];
    size_t count = 0;
    for (size_t i = first; i < next; i++) {
        if (MEMBERS_END(m, i)->run < 0) continue;
        if (count == MOST)
            return frame_fail(FRAME_TOO_LARGE, "corners", "", "at most 64 lines that meet in a point",
                              "corners: more than 64 lines of the roof meet in one point");
        ends[count++] = MEMBERS_END(m, i);
    }
    if (!count) return FRAME_OK;
    sort_by_rank(m, ends, count);
    if (count == 1) return end_first(m, ends[0]);
    if (MEMBERS_RUN(m, ends[0]->run)->slope == 0 || ends[0]->which == 2) return cut_by_rank(m, ends, count);
    mitre(m, ends, count);
    return FRAME_OK;
}

frame_status members_end_runs(members *m) {
    close_ends(m);
    for (size_t i = 0, next; i < m->ends.count; i = next) {
        for (next = i; next < m->ends.count && MEMBERS_END(m, next)->point == MEMBERS_END(m, i)->point;) next++;
        const frame_status status = end_at_point(m, i, next);
        if (status) return status;
    }
    return members_clear_runs(m);
}
