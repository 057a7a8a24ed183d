/* The members along ridges, hips, valleys and breaks: one for each straight run of lines, and their pieces. */
#include <stdlib.h>

#include "base/error.h"
#include "roof/members.h"

/* -- one for each line -- */

static int32_t section_of(frame_roof_line_kind kind) {
    return kind == FRAME_LINE_HIP ? MEMBERS_HIPS : kind == FRAME_LINE_VALLEY ? MEMBERS_VALLEYS : MEMBERS_RIDGES;
}

/* Which way a level line runs is chance; the member along it always begins at the same end, so that its splices stay
 * where they are when the plan changes a little. */
static void turn_level(members_run *run) {
    const members_run was = *run;
    if (was.slope != 0 || was.dir.x > 1e-9 || (was.dir.x > -1e-9 && was.dir.y > 0)) return;
    for (int i = 0; i < 2; i++)
        run->point[i] = was.point[1 - i], run->at[i] = was.at[1 - i], run->face[i] = was.face[1 - i];
    run->dir = v2_times(was.dir, -1);
}

static frame_status add_run(members *m, members_side *side, int32_t *run_of) {
    const frame_roof_solve_line *line = MEMBERS_LINE(m, side->of);
    if (run_of[side->of] < 0) {
        const int upward = side->from == line->from_point;
        members_run run = {.kind = line->kind, .of = side->of, .point = {line->from_point, line->to_point}};
        run.at[0] = upward ? side->p : side->q, run.at[1] = upward ? side->q : side->p;
        run.length = v2_length(v2_less(run.at[1], run.at[0]));
        run.dir = v2_unit(v2_less(run.at[1], run.at[0]));
        run.slope = line->rise_in > 1e-9 * line->length_in ? line->rise_in / line->run_in : 0;
        run.z = members_plane(MEMBERS_FACE(m, m->face_of[side->face]), run.at[0]);
        run.section = section_of(line->kind);
        run.face[0] = m->face_of[line->right_face], run.face[1] = m->face_of[line->left_face];
        turn_level(&run);
        run_of[side->of] = (int32_t)m->runs.count;
        if (!frame_array_push(&m->runs, &run)) return FRAME_NO_MEMORY;
    }
    side->run = run_of[side->of];
    return FRAME_OK;
}

frame_status members_find_runs(members *m) {
    const size_t lines = MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_LINES);
    int32_t *run_of = frame_take((lines + 1) * sizeof *run_of);
    frame_status status = run_of ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t i = 0; i < lines && !status; i++) run_of[i] = -1;
    for (size_t i = 0; i < m->sides.count && !status; i++)
        if (members_is_run(MEMBERS_SIDE(m, i)->kind)) status = add_run(m, MEMBERS_SIDE(m, i), run_of);
    frame_give(run_of);
    return status;
}

/* -- ends, and runs that go on straight -- */

static int by_point(const void *a, const void *b) {
    const members_end *x = a, *y = b;
    if (x->point != y->point) return x->point < y->point ? -1 : 1;
    return x->run != y->run ? (x->run < y->run ? -1 : 1) : x->which - y->which;
}

/* A run shorter than it is thick is no member: what meets at its ends leaves it no room. Those at corners of the plan
 * stay. */
static void drop_short(members *m) {
    const int32_t corners = (int32_t)(m->in->corner_count + m->in->hole_count);
    for (size_t i = 0; i < m->runs.count; i++) {
        members_run *run = MEMBERS_RUN(m, i);
        run->gone = run->length < run->half && run->point[0] >= corners && run->point[1] >= corners;
    }
}

static frame_status add_ends(members *m) {
    for (size_t i = 0; i < m->runs.count; i++)
        for (int which = 0; which < 2; which++) {
            const members_run *run = MEMBERS_RUN(m, i);
            if (run->gone) continue;
            members_end end = {.run = (int32_t)i, .which = which, .point = run->point[which]};
            end.away = v2_times(run->dir, which ? -1 : 1);
            if (!frame_array_push(&m->ends, &end)) return FRAME_NO_MEMORY;
        }
    if (m->ends.count) qsort(m->ends.items, m->ends.count, sizeof(members_end), by_point);
    return FRAME_OK;
}

static int runs_on(const members *m, const members_end *a, const members_end *b) {
    const members_run *x = MEMBERS_RUN(m, a->run), *y = MEMBERS_RUN(m, b->run);
    if (a->which == 2 || b->which == 2 || a->run == b->run || x->kind != y->kind) return 0;
    if (v2_dot(a->away, b->away) > -1 + 1e-12 || fabs(x->slope - y->slope) > 1e-9) return 0;
    return x->slope == 0 || a->which != b->which;
}

/* The second run becomes part of the first. Its end here is no end any more: of the two one is left, a point it runs
 * through. */
static void join(members *m, members_end *a, members_end *b) {
    members_run *x = MEMBERS_RUN(m, a->run), *y = MEMBERS_RUN(m, b->run);
    const int32_t gone = b->run, which = a->which, other = 1 - b->which;
    x->at[which] = y->at[other], x->point[which] = y->point[other];
    x->length += y->length;
    if (!which) x->z = y->z;
    y->gone = 1;
    for (size_t i = 0; i < m->ends.count; i++) {
        members_end *end = MEMBERS_END(m, i);
        if (end->run != gone || end == b) continue;
        end->run = a->run;
        if (end->which != 2) end->which = which;
    }
    for (size_t i = 0; i < m->sides.count; i++)
        if (MEMBERS_SIDE(m, i)->run == gone) MEMBERS_SIDE(m, i)->run = a->run;
    a->which = 2;
    b->run = -1;
}

static void join_at(members *m, size_t first, size_t end) {
    for (size_t i = first; i < end; i++)
        for (size_t k = i + 1; k < end; k++) {
            members_end *a = MEMBERS_END(m, i), *b = MEMBERS_END(m, k);
            if (a->run < 0 || b->run < 0 || !runs_on(m, a, b)) continue;
            join(m, a, b);
            return; /* one runs through; others end there */
        }
}

frame_status members_find_ends(members *m) {
    drop_short(m);
    const frame_status status = add_ends(m);
    for (size_t i = 0, next; !status && i < m->ends.count; i = next) {
        for (next = i; next < m->ends.count && MEMBERS_END(m, next)->point == MEMBERS_END(m, i)->point;) next++;
        join_at(m, i, next);
    }
    return status;
}

/* -- pieces -- */

static frame_roof_member kind_of(frame_roof_line_kind kind) {
    return kind == FRAME_LINE_HIP      ? FRAME_MEMBER_HIP
           : kind == FRAME_LINE_VALLEY ? FRAME_MEMBER_VALLEY
           : kind == FRAME_LINE_BREAK  ? FRAME_MEMBER_BREAK
                                       : FRAME_MEMBER_RIDGE;
}

static frame_status cut_end(members *m, const members_run *run, const members_end *end) {
    for (int32_t i = 0; i < end->stop_count; i++) {
        const members_stop *stop = &end->stops[i];
        if (!members_add_upright(m, stop->line, v2_left(run->dir), stop->label, stop->required)) return FRAME_NO_MEMORY;
    }
    if (end->notched) members_make_notch(m, end->stop_count, FRAME_STICK_NOTCH);
    return FRAME_OK;
}

int32_t members_end_of(const members *m, int32_t run, int which) {
    for (size_t i = 0; i < m->ends.count; i++)
        if (MEMBERS_END(m, i)->run == run && MEMBERS_END(m, i)->which == which) return (int32_t)i;
    return -1;
}

static const members_end *end_of(const members *m, int32_t run, int which) {
    const int32_t end = members_end_of(m, run, which);
    return end < 0 ? NULL : MEMBERS_END(m, end);
}

/* The eaves that meet at its lower point; of plates of unequal height first that of the one it crosses: a hip the
 * higher, a valley the lower. */
static int eaves_at(const members *m, int32_t point, int valley, const members_side *eaves[2]) {
    int count = 0;
    for (size_t i = 0; i < m->sides.count && count < 2; i++) {
        const members_side *side = MEMBERS_SIDE(m, i);
        if (side->kind != FRAME_LINE_EAVE || (side->from != point && side->to != point)) continue;
        if (count && v2_dot(eaves[0]->line.n, side->line.n) > 1 - 1e-9) continue;
        eaves[count++] = side;
    }
    if (count < 2 || (eaves[0]->plate <= eaves[1]->plate) == valley) return count;
    const members_side *const first = eaves[1];
    eaves[1] = eaves[0], eaves[0] = first;
    return count;
}

static frame_status add_seat(members *m, double plate, const line2 *walls, int count, double area, const char *label) {
    members_cut *seat = members_add_cut(m, FRAME_STICK_SEAT, (vec3){0, 0, plate}, (vec3){0, 0, -1}, label);
    if (!seat) return FRAME_NO_MEMORY;
    seat->area = area;
    for (int i = 0; i < count; i++) {
        const v2 point = v2_times(walls[i].n, walls[i].at);
        if (!members_add_cut(m, FRAME_STICK_HEEL_CUT, (vec3){point.x, point.y, 0},
                             (vec3){walls[i].n.x, walls[i].n.y, 0}, "heel"))
            return FRAME_NO_MEMORY;
    }
    members_make_notch(m, 1 + count, FRAME_STICK_BIRDSMOUTH);
    return FRAME_OK;
}

/* Plates of another height than the one it sits on. */
static frame_status clear_plates(members *m, const members_run *run, double own) {
    polygon2 strip = {.count = 4};
    const double plumb = m->sections[run->section].depth * sqrt(1 + run->slope * run->slope);
    for (int i = 0; i < 4; i++)
        strip.corners[i] =
            v2_add(run->at[i > 1], v2_times(v2_left(run->dir), i == 1 || i == 2 ? run->half : -run->half));
    for (size_t i = 0; i < m->plates.count; i++) {
        const members_plate *plate = &FRAME_ITEM(members_plate, m->plates, i);
        const line2 lines[3] = {plate->wall, plate->ends[0], plate->ends[1]};
        double low, high;
        if (fabs(plate->z - own) < 1e-9 || members_common_area(&strip, &plate->plan) < 1e-6) continue;
        polygon2_range(&plate->plan, run->dir, &low, &high);
        const double from = fmax(0, low - v2_dot(run->dir, run->at[0]));
        if (run->z - run->drop + run->slope * from - plumb > plate->z - 1e-9) continue;
        const frame_status status = add_seat(m, plate->z, lines, 3, 0, "seat on the other plate");
        if (status) return status;
    }
    return FRAME_OK;
}

/* A hip's birdsmouth is bounded by both walls; a valley has two, one on each wall. With plates of unequal height it
 * sits on one. */
static frame_status add_seats(members *m, const members_run *run) {
    const members_side *eaves[2];
    line2 walls[2];
    const int valley = run->kind == FRAME_LINE_VALLEY, found = eaves_at(m, run->point[0], valley, eaves);
    const int level = found < 2 || fabs(eaves[0]->plate - eaves[1]->plate) < 1e-9, count = level ? found : 1;
    const double area = 1.5 * 2 * run->half;
    for (int i = 0; i < count; i++) walls[i] = members_wall(eaves[i]);
    if (!count) return FRAME_OK;
    frame_status status = add_seat(m, eaves[0]->plate, walls, valley ? 1 : count, area, "seat");
    if (valley && count == 2 && !status) /* what is left of it beside the first */
        status = add_seat(m, eaves[0]->plate, &walls[1], 1, 0, "second seat");
    return status || level ? status : clear_plates(m, run, eaves[0]->plate);
}

/* Whether the cuts at its ends leave anything of it. */
static int is_left(const members_run *run, const members_end *lower, const members_end *upper) {
    polygon2 strip = {.count = 4};
    for (int i = 0; i < 4; i++) {
        const v2 end = v2_add(run->at[i > 1], v2_times(run->dir, i > 1 ? 20 : -20));
        strip.corners[i] = v2_add(end, v2_times(v2_left(run->dir), i == 1 || i == 2 ? run->half : -run->half));
    }
    for (int32_t i = 0; lower && !lower->notched && i < lower->stop_count; i++)
        polygon2_keep(&strip, lower->stops[i].line);
    for (int32_t i = 0; upper && i < upper->stop_count; i++) polygon2_keep(&strip, upper->stops[i].line);
    return polygon2_area(&strip) > 1e-3;
}

/* The part of a run between two places along it, with some to spare at both ends. */
static frame_status add_part(members *m, const members_run *run, const members_end *lower, const members_end *upper,
                             double start, double stop) {
    const double past = 40 + 4 * run->half;
    if (!is_left(run, lower, upper)) {
        m->left_out++;
        return FRAME_OK;
    }
    const v2 from = v2_add(run->at[0], v2_times(run->dir, start - past));
    const v2 to = v2_add(run->at[0], v2_times(run->dir, stop + past));
    const double z = run->z - run->drop + (start - past) * run->slope, rise = (stop - start + 2 * past) * run->slope;
    members_piece *piece =
        members_add_piece(m, kind_of(run->kind), run->section, (vec3){from.x, from.y, z}, (vec3){to.x, to.y, z + rise});
    if (!piece) return FRAME_NO_MEMORY;
    piece->line = run->of;
    /* Cuts of their own come before notches. */
    frame_status status = FRAME_OK;
    if (lower && !lower->notched) status = cut_end(m, run, lower);
    if (!status && upper) status = cut_end(m, run, upper);
    if (!status && lower && lower->notched) status = cut_end(m, run, lower);
    return status || run->slope == 0 ? status : add_seats(m, run);
}

/* Where a run of more than one piece of stock is spliced: on a rafter, at 3/4 to all of the stock. */
static int find_splice(const members *m, const members_run *run, double from, double *at) {
    const members_face *face = MEMBERS_FACE(m, run->face[0]);
    if (run->slope != 0 || run->length - from <= m->in->stock_in) return 0;
    const double turn = v2_dot(face->along, run->dir), start = v2_dot(face->along, run->at[0]);
    const double limit = from + m->in->stock_in, step = m->in->spacing_in, first = v2_dot(face->along, m->origin);
    *at = limit;
    if (fabs(turn) < 0.999) return 1;
    const double place = (start + turn * limit - first) / step;
    *at = turn * (first + step * (turn > 0 ? floor(place) : ceil(place)) - start);
    if (*at < from + 0.5 * m->in->stock_in) *at = limit;
    return 1;
}

static frame_status add_pieces(members *m, int32_t index) {
    const members_run *run = MEMBERS_RUN(m, index);
    const members_end *upper = end_of(m, index, 1);
    members_end splice = {.stop_count = 1}, next = splice;
    const members_end *lower = end_of(m, index, 0);
    double from = 0, at = 0;
    for (; find_splice(m, run, from, &at); from = at) {
        const v2 point = v2_add(run->at[0], v2_times(run->dir, at));
        splice.stops[0] = (members_stop){line2_through(point, v2_times(run->dir, -1)), "splice", 0.95};
        const frame_status status = add_part(m, run, lower, &splice, from, at);
        if (status) return status;
        next = splice;
        next.stops[0].line = line2_turned(splice.stops[0].line);
        lower = &next;
    }
    return add_part(m, run, lower, upper, from, run->length);
}

frame_status members_add_runs(members *m) {
    for (int32_t i = 0; i < (int32_t)m->runs.count; i++) {
        if (MEMBERS_RUN(m, i)->gone) continue;
        const frame_status status = add_pieces(m, i);
        if (status) return status;
    }
    return FRAME_OK;
}
