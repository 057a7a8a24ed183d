/* The outlines of the faces, from the lines between them: each line bounds the faces on both its sides, and round a
 * face one leads to the next. */
#include <math.h>

#include "base/error.h"
#include "roof/roof_plan.h"

/* -- nodes at one place -- */

static int32_t stand_in(int32_t *same, int32_t node) {
    while (same[node] != node) {
        same[node] = same[same[node]];
        node = same[node];
    }
    return node;
}

static double arc_length(const wave *w, const wave_arc *arc) {
    const wave_node *a = WAVE_NODE(w, arc->start), *b = WAVE_NODE(w, arc->end);
    return hypot(hypot(b->x - a->x, b->y - a->y), b->z - a->z);
}

/* The ends of a line of no length are one; the corner of the plan, or the older node, stands for both. */
static void find_same(const wave *w, int32_t *same) {
    for (size_t i = 0; i < w->nodes.count; i++) same[i] = (int32_t)i;
    for (size_t i = 0; i < w->arcs.count; i++) {
        const wave_arc *arc = &FRAME_ITEM(wave_arc, w->arcs, i);
        if (arc_length(w, arc) > 2 * w->touch) continue;
        const int32_t a = stand_in(same, arc->start), b = stand_in(same, arc->end);
        same[a < b ? b : a] = a < b ? a : b;
    }
    for (size_t i = 0; i < w->nodes.count; i++) same[i] = stand_in(same, (int32_t)i);
}

/* -- steps round the faces -- */

typedef struct step {
    int32_t from, to, used, next; /* next: another step from the same node round the same face */
} step;

typedef struct tracing {
    const wave *wave;
    roof_outlines *of;
    step *steps;
    int32_t *filled;  /* of each face */
    int32_t *leaving; /* of each node a step that leaves it, round the face being traced; -1: none */
} tracing;

static void count_steps(const wave *w, roof_outlines *of) {
    for (size_t i = 0; i < w->arcs.count; i++) {
        const wave_arc *arc = &FRAME_ITEM(wave_arc, w->arcs, i);
        if (of->same[arc->start] == of->same[arc->end]) continue;
        if (arc->left_face >= 0) of->first[arc->left_face + 1]++;
        if (arc->right_face >= 0) of->first[arc->right_face + 1]++;
    }
    for (size_t i = 0; i < of->faces; i++) of->first[i + 1] += of->first[i];
}

static void put_step(tracing *t, int32_t face, int32_t from, int32_t to) {
    if (face >= 0) t->steps[t->of->first[face] + t->filled[face]++] = (step){from, to, 0, -1};
}

static void put_steps(tracing *t) {
    for (size_t i = 0; i < t->wave->arcs.count; i++) {
        const wave_arc *arc = &FRAME_ITEM(wave_arc, t->wave->arcs, i);
        const int32_t a = t->of->same[arc->start], b = t->of->same[arc->end];
        if (a == b) continue;
        put_step(t, arc->left_face, a, b);
        put_step(t, arc->right_face, b, a);
    }
}

static int32_t next_step(const tracing *t, int32_t node) {
    int32_t at = t->leaving[node];
    while (at >= 0 && t->steps[at].used) at = t->steps[at].next;
    return at;
}

static frame_status not_closed(void) {
    return frame_fail(FRAME_INTERNAL, "roof_solve", "", "",
                      "roof_solve: a face of the roof is not closed; please report the plan");
}

static frame_status trace_face(tracing *t, size_t face) {
    const int32_t first = t->of->first[face], last = t->of->first[face + 1];
    int32_t loop = 0, at = first;
    for (int32_t i = first; i < last; i++) t->leaving[t->steps[i].from] = -1;
    for (int32_t i = first; i < last; i++) {
        t->steps[i].next = t->leaving[t->steps[i].from];
        t->leaving[t->steps[i].from] = i;
    }
    for (int32_t i = first; i < last; i++) {
        if (t->steps[i].used) continue;
        for (int32_t k = i;; k = next_step(t, t->steps[k].to)) {
            if (k < 0) return not_closed();
            t->steps[k].used = 1;
            t->of->steps[at] = t->steps[k].from;
            t->of->loops[at++] = loop;
            if (t->steps[k].to == t->steps[i].from) break;
        }
        loop++;
    }
    return FRAME_OK;
}

static frame_status trace(const wave *w, roof_outlines *of) {
    tracing t = {w, of, NULL, NULL, NULL};
    const size_t steps = (size_t)of->first[of->faces];
    t.steps = frame_take((steps + 1) * sizeof *t.steps);
    t.filled = frame_take_zeroed(of->faces, sizeof *t.filled);
    t.leaving = frame_take(w->nodes.count * sizeof *t.leaving);
    of->steps = frame_take((steps + 1) * sizeof *of->steps);
    of->loops = frame_take((steps + 1) * sizeof *of->loops);
    frame_status status = t.steps && t.filled && t.leaving && of->steps && of->loops ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status) {
        for (size_t i = 0; i < w->nodes.count; i++) t.leaving[i] = -1;
        put_steps(&t);
    }
    for (size_t i = 0; i < of->faces && !status; i++) status = trace_face(&t, i);
    frame_give(t.steps);
    frame_give(t.filled);
    frame_give(t.leaving);
    return status;
}

frame_status roof_outlines_find(const wave *w, size_t faces, roof_outlines *outlines) {
    *outlines = (roof_outlines){.faces = faces};
    outlines->same = frame_take(w->nodes.count * sizeof *outlines->same);
    outlines->first = frame_take_zeroed(faces + 1, sizeof *outlines->first);
    if (!outlines->same || !outlines->first) return FRAME_NO_MEMORY;
    find_same(w, outlines->same);
    count_steps(w, outlines);
    return trace(w, outlines);
}

void roof_outlines_give(roof_outlines *outlines) {
    frame_give(outlines->first);
    frame_give(outlines->steps);
    frame_give(outlines->loops);
    frame_give(outlines->same);
}

/* -- measures -- */

/* Sums of an outline in a plane: area, and area times centre. */
typedef struct sums {
    double area, x, y;
} sums;

static void add_triangle(sums *of, double ax, double ay, double bx, double by) {
    const double cross = ax * by - ay * bx;
    of->area += cross / 2;
    of->x += (ax + bx) * cross / 6;
    of->y += (ay + by) * cross / 6;
}

roof_measure roof_face_measure(const wave *w, const roof_face *face, const roof_outlines *outlines, size_t index) {
    const int32_t first = outlines->first[index], last = outlines->first[index + 1];
    const int slopes = roof_face_slopes(face);
    roof_measure of = {0, 0, HUGE_VAL, -HUGE_VAL};
    sums sum = {0, 0, 0};
    if (first == last) return (roof_measure){0, 0, 0, 0};
    const wave_node *origin = WAVE_NODE(w, outlines->steps[first]);
    for (int32_t i = first, begin = first; i < last; i++) {
        if (outlines->loops[i] != outlines->loops[begin]) begin = i;
        const int32_t next = i + 1 < last && outlines->loops[i + 1] == outlines->loops[i] ? i + 1 : begin;
        const wave_node *a = WAVE_NODE(w, outlines->steps[i]), *b = WAVE_NODE(w, outlines->steps[next]);
        of.low = fmin(of.low, a->z), of.high = fmax(of.high, a->z);
        const double ax = a->x - origin->x, ay = a->y - origin->y, bx = b->x - origin->x, by = b->y - origin->y;
        if (slopes)
            add_triangle(&sum, ax, ay, bx, by);
        else /* along the face, its normal turned to the right, and up */
            add_triangle(&sum, face->ny * ax - face->nx * ay, a->z - origin->z, face->ny * bx - face->nx * by,
                         b->z - origin->z);
    }
    of.area = slopes ? sum.area : fabs(sum.area);
    if (!slopes) return of;
    const double over = face->nx * origin->x + face->ny * origin->y - face->at;
    of.volume = (face->from + over * face->slope) * sum.area + (face->nx * sum.x + face->ny * sum.y) * face->slope;
    return of;
}

/* The places of a loop that begins at one. */
static int32_t loop_end(const roof_outlines *of, int32_t begin, int32_t last) {
    int32_t end = begin;
    while (end < last && of->loops[end] == of->loops[begin]) end++;
    return end;
}

static int loop_turns_once(const wave *w, const int32_t *steps, int32_t count, double little) {
    double turns = 0, area = 0;
    const wave_node *origin = WAVE_NODE(w, steps[0]);
    for (int32_t i = 0; i < count; i++) {
        const wave_node *a = WAVE_NODE(w, steps[i]), *b = WAVE_NODE(w, steps[(i + 1) % count]);
        const wave_node *c = WAVE_NODE(w, steps[(i + 2) % count]);
        const double ax = b->x - a->x, ay = b->y - a->y, bx = c->x - b->x, by = c->y - b->y;
        turns += atan2(ax * by - ay * bx, ax * bx + ay * by);
        area += ((a->x - origin->x) * (b->y - origin->y) - (a->y - origin->y) * (b->x - origin->x)) / 2;
    }
    return fabs(area) < little || fabs(turns - 2 * acos(-1.0)) < 1e-3;
}

int roof_face_turns_once(const wave *w, const roof_outlines *outlines, size_t index, double little) {
    const int32_t last = outlines->first[index + 1];
    for (int32_t i = outlines->first[index], end; i < last; i = end) {
        end = loop_end(outlines, i, last);
        if (!loop_turns_once(w, outlines->steps + i, end - i, little)) return 0;
    }
    return 1;
}
