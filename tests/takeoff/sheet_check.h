/* The independent verifier of plans of sheets: corners, distances, counts and money, all anew from the lists, with
 * plain arithmetic of its own. */
#ifndef FRAME_TESTS_SHEET_CHECK_H
#define FRAME_TESTS_SHEET_CHECK_H

#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

enum { MOST_KINDS = 64, MOST_CORNERS = 24, MOST_ON_SHEET = 400 };

typedef struct sheet_job {
    frame_sheet_corner corners[MOST_KINDS][MOST_CORNERS], on_hand[MOST_KINDS][MOST_CORNERS],
        gaps[MOST_KINDS][MOST_CORNERS];
    frame_sheet_part parts[MOST_KINDS];
    frame_sheet_size sheets[MOST_KINDS];
    frame_sheet_offcut offcuts[MOST_KINDS];
    frame_sheet_hole holes[MOST_KINDS];
    frame_sheet_plan_in in;
} sheet_job;

static inline void sheets_begin(sheet_job *job) {
    memset(job, 0, sizeof *job);
    frame_sheet_plan_in_init(&job->in);
    job->in.time_limit_s = 0.2; /* of a slow build; where it matters a test takes it off */
    job->in.parts = job->parts;
    job->in.sheets = job->sheets;
    job->in.offcuts = job->offcuts;
    job->in.holes = job->holes;
}

static inline size_t put_corners(frame_sheet_corner *to, const double *xy, size_t count) {
    for (size_t i = 0; i < count; i++) {
        frame_sheet_corner_init(&to[i]);
        to[i].x_in = xy[2 * i];
        to[i].y_in = xy[2 * i + 1];
    }
    return count;
}

static inline void want_polygon(sheet_job *job, int32_t count, const double *xy, size_t corners) {
    const size_t at = job->in.part_count++;
    frame_sheet_part_init(&job->parts[at]);
    job->parts[at].corners = job->corners[at];
    job->parts[at].corner_count = put_corners(job->corners[at], xy, corners);
    job->parts[at].count = count;
}

static inline void want_rectangle(sheet_job *job, int32_t count, double width, double height) {
    const double xy[] = {0, 0, width, 0, width, height, 0, height};
    want_polygon(job, count, xy, 4);
}

static inline void have_sheet(sheet_job *job, double width, double length, double price, int32_t available) {
    frame_sheet_size *size = &job->sheets[job->in.sheet_count++];
    frame_sheet_size_init(size);
    size->width_in = width;
    size->length_in = length;
    size->price = price;
    size->available = available;
}

static inline void have_offcut(sheet_job *job, int32_t count, const double *xy, size_t corners) {
    const size_t at = job->in.offcut_count++;
    frame_sheet_offcut_init(&job->offcuts[at]);
    job->offcuts[at].corners = job->on_hand[at];
    job->offcuts[at].corner_count = put_corners(job->on_hand[at], xy, corners);
    job->offcuts[at].count = count;
}

static inline void have_hole(sheet_job *job, int32_t offcut, const double *xy, size_t corners) {
    const size_t at = job->in.hole_count++;
    frame_sheet_hole_init(&job->holes[at]);
    job->holes[at].offcut = offcut;
    job->holes[at].corners = job->gaps[at];
    job->holes[at].corner_count = put_corners(job->gaps[at], xy, corners);
}

/* -- plain plane geometry -- */

typedef struct shape {
    double x[MOST_CORNERS], y[MOST_CORNERS];
    int count;
} shape;

static inline double area_of(const shape *s) {
    double twice = 0;
    for (int i = 0, j = s->count - 1; i < s->count; j = i++) twice += s->x[j] * s->y[i] - s->x[i] * s->y[j];
    return twice / 2;
}

/* Distance of a point from a segment. */
static inline double apart(double px, double py, double ax, double ay, double bx, double by) {
    const double dx = bx - ax, dy = by - ay, length2 = dx * dx + dy * dy;
    double t = length2 > 0 ? ((px - ax) * dx + (py - ay) * dy) / length2 : 0;
    t = t < 0 ? 0 : t > 1 ? 1 : t;
    return hypot(px - ax - t * dx, py - ay - t * dy);
}

static inline double side_of(double ax, double ay, double bx, double by, double px, double py) {
    return ((bx - ax) * (py - ay) - (by - ay) * (px - ax)) / hypot(bx - ax, by - ay);
}

/* Whether the two outlines cross by more than a hair. */
static inline int outlines_cross(const shape *a, const shape *b) {
    const double hair = 1e-6;
    for (int i = 0; i < a->count; i++)
        for (int k = 0; k < b->count; k++) {
            const int j = (i + 1) % a->count, l = (k + 1) % b->count;
            const double p = side_of(a->x[i], a->y[i], a->x[j], a->y[j], b->x[k], b->y[k]);
            const double q = side_of(a->x[i], a->y[i], a->x[j], a->y[j], b->x[l], b->y[l]);
            const double r = side_of(b->x[k], b->y[k], b->x[l], b->y[l], a->x[i], a->y[i]);
            const double s = side_of(b->x[k], b->y[k], b->x[l], b->y[l], a->x[j], a->y[j]);
            if (((p > hair && q < -hair) || (p < -hair && q > hair)) &&
                ((r > hair && s < -hair) || (r < -hair && s > hair)))
                return 1;
        }
    return 0;
}

/* Distance between outlines, from the corners of each to the edges of the other. */
static inline double distance(const shape *a, const shape *b) {
    double least = 1e300;
    for (int i = 0; i < a->count; i++)
        for (int k = 0; k < b->count; k++) {
            const int j = (i + 1) % a->count, l = (k + 1) % b->count;
            least = fmin(least, apart(a->x[i], a->y[i], b->x[k], b->y[k], b->x[l], b->y[l]));
            least = fmin(least, apart(b->x[k], b->y[k], a->x[i], a->y[i], a->x[j], a->y[j]));
        }
    return least;
}

static inline int holds_point(const shape *s, double x, double y) {
    int inside = 0;
    for (int i = 0, j = s->count - 1; i < s->count; j = i++)
        if ((s->y[i] > y) != (s->y[j] > y) && x < s->x[i] + (y - s->y[i]) * (s->x[j] - s->x[i]) / (s->y[j] - s->y[i]))
            inside = !inside;
    return inside;
}

/* A point well inside: the middle of the widest gap between crossings of a level line half way between two corners. */
static inline void inner_point(const shape *s, double *x, double *y) {
    double most = 0;
    for (int i = 0; i < s->count; i++)
        for (int k = 0; k < i; k++) {
            const double level = (s->y[i] + s->y[k]) / 2 + 1e-4;
            for (int e = 0; e < s->count; e++)
                for (int f = 0; f < s->count; f++) {
                    const int g = (e + 1) % s->count, h = (f + 1) % s->count;
                    if ((s->y[e] > level) == (s->y[g] > level) || (s->y[f] > level) == (s->y[h] > level)) continue;
                    const double p = s->x[e] + (level - s->y[e]) * (s->x[g] - s->x[e]) / (s->y[g] - s->y[e]);
                    const double q = s->x[f] + (level - s->y[f]) * (s->x[h] - s->x[f]) / (s->y[h] - s->y[f]);
                    if (q - p > most && holds_point(s, (p + q) / 2, level)) most = q - p, *x = (p + q) / 2, *y = level;
                }
        }
}

static inline int overlap_shapes(const shape *a, const shape *b) {
    double x = 0, y = 0;
    if (outlines_cross(a, b)) return 1;
    inner_point(a, &x, &y);
    if (holds_point(b, x, y)) return 1;
    inner_point(b, &x, &y);
    return holds_point(a, x, y);
}

static inline shape shape_of(const frame_sheet_corner *corners, size_t count) {
    shape s = {.count = (int)count};
    for (size_t i = 0; i < count; i++) s.x[i] = corners[i].x_in, s.y[i] = corners[i].y_in;
    return s;
}

static inline shape corners_of(const frame_sheet_plan *plan, uint32_t first, uint32_t count) {
    shape s = {.count = (int)count};
    ck_assert_uint_le(count, MOST_CORNERS);
    for (uint32_t i = 0; i < count; i++) {
        frame_sheet_plan_corner corner;
        ck_assert_int_eq(frame_sheet_plan_corner_at(plan, first + i, &corner), FRAME_OK);
        s.x[i] = corner.x_in, s.y[i] = corner.y_in;
    }
    return s;
}

/* The part as it is drawn, mirrored, turned and moved as the plan says. */
static inline shape moved(const sheet_job *job, const frame_sheet_plan_placement *p) {
    shape s = shape_of(job->parts[p->part].corners, job->parts[p->part].corner_count);
    const double turn = p->turn_deg * acos(-1.0) / 180;
    for (int i = 0; i < s.count; i++) {
        const double x = p->mirrored ? -s.x[i] : s.x[i], y = s.y[i];
        s.x[i] = p->x_in + x * cos(turn) - y * sin(turn);
        s.y[i] = p->y_in + x * sin(turn) + y * cos(turn);
    }
    return s;
}

static inline shape outline_of_sheet(const sheet_job *job, const frame_sheet_plan_sheet *sheet) {
    if (sheet->offcut >= 0)
        return shape_of(job->offcuts[sheet->offcut].corners, job->offcuts[sheet->offcut].corner_count);
    return (shape){{0, sheet->x_in, sheet->x_in, 0}, {0, 0, sheet->y_in, sheet->y_in}, 4};
}

static inline void check_inside(const shape *part, const shape *sheet) {
    ck_assert_msg(!outlines_cross(part, sheet), "a part crosses the side of its sheet");
    for (int i = 0; i < part->count; i++) {
        double near = 1e300;
        for (int k = 0; k < sheet->count; k++) {
            const int l = (k + 1) % sheet->count;
            near = fmin(near, apart(part->x[i], part->y[i], sheet->x[k], sheet->y[k], sheet->x[l], sheet->y[l]));
        }
        ck_assert_msg(near < 1e-6 || holds_point(sheet, part->x[i], part->y[i]), "a corner at %g, %g is off the sheet",
                      part->x[i], part->y[i]);
    }
}

static inline void check_turn(const sheet_job *job, const frame_sheet_plan_placement *p) {
    const frame_sheet_turns turns = job->in.turns == FRAME_NOT_GIVEN_INT ? FRAME_SHEET_TURNS_HALF : job->in.turns;
    if (turns == FRAME_SHEET_TURNS_NONE) ck_assert_double_eq(p->turn_deg, 0);
    if (turns == FRAME_SHEET_TURNS_HALF) ck_assert(p->turn_deg == 0 || p->turn_deg == 180);
    if (turns == FRAME_SHEET_TURNS_QUARTER) ck_assert_double_eq(fmod(p->turn_deg, 90), 0);
    ck_assert(!p->mirrored || job->in.reversible == 1);
}

static inline void check_holes(const sheet_job *job, const frame_sheet_plan_sheet *sheet, const shape *part) {
    for (size_t h = 0; h < job->in.hole_count; h++) {
        const shape hole = shape_of(job->holes[h].corners, job->holes[h].corner_count);
        if (job->holes[h].offcut == sheet->offcut)
            ck_assert_msg(!overlap_shapes(part, &hole), "a part lies over a hole");
    }
}

/* What is kept lies clear of every part by a kerf. */
static inline void check_kept(const sheet_job *job, const frame_sheet_plan *plan, int sheet, const shape *parts,
                              int count, double kerf) {
    (void)job;
    for (size_t o = 0; o < frame_sheet_plan_offcut_count(plan); o++) {
        frame_sheet_plan_offcut kept;
        frame_sheet_plan_offcut_at(plan, o, &kept);
        if (kept.sheet != sheet || kept.hole_of >= 0 || kept.corner_count > MOST_CORNERS) continue;
        const shape outline = corners_of(plan, kept.corner_first, kept.corner_count);
        ck_assert_double_gt(area_of(&outline), 0);
        for (int i = 0; i < count; i++) {
            ck_assert_msg(!outlines_cross(&parts[i], &outline), "an offcut crosses a part");
            ck_assert_double_ge(distance(&parts[i], &outline), kerf - 1e-5);
        }
    }
}

/* Puts a group's parts to the left or right of a line; 0 when one lies across it, or all on one side. */
static inline int parted(const shape *parts, const int *group, int count, const double line[4], int *left, int *right,
                         int *lefts) {
    int rights = 0;
    *lefts = 0;
    for (int i = 0; i < count; i++) {
        double low = 1e300, high = -1e300;
        const shape *s = &parts[group[i]];
        for (int k = 0; k < s->count; k++) {
            const double d = side_of(line[0], line[1], line[2], line[3], s->x[k], s->y[k]);
            low = fmin(low, d), high = fmax(high, d);
        }
        if (low >= -1e-6)
            left[(*lefts)++] = group[i];
        else if (high <= 1e-6)
            right[rights++] = group[i];
        else
            return 0;
    }
    return *lefts && rights;
}

/* Whether straight lines part the parts one from another, group by group: an own reading of straight cuts. Where any
 * line parts two groups, one through two of their corners does. */
static inline int parts_straight(const shape *parts, const int *group, int count) {
    int left[MOST_ON_SHEET], right[MOST_ON_SHEET], lefts;
    if (count < 2) return 1;
    for (int g = 0; g < count; g++)
        for (int h = 0; h <= g; h++)
            for (int e = 0; e < parts[group[g]].count; e++)
                for (int f = 0; f < parts[group[h]].count; f++) {
                    const shape *a = &parts[group[g]], *b = &parts[group[h]];
                    const double line[4] = {a->x[e], a->y[e], b->x[f], b->y[f]};
                    if (hypot(line[2] - line[0], line[3] - line[1]) < 1e-9) continue;
                    if (parted(parts, group, count, line, left, right, &lefts))
                        return parts_straight(parts, left, lefts) && parts_straight(parts, right, count - lefts);
                }
    return 0;
}

static inline void check_straight(const sheet_job *job, const frame_sheet_plan_sheet *sheet, const shape *parts) {
    int group[MOST_ON_SHEET];
    if (job->in.cuts != FRAME_SHEET_CUTS_STRAIGHT) {
        ck_assert_uint_eq(sheet->cut_count, 0);
        return;
    }
    for (uint32_t i = 0; i < sheet->placement_count; i++) group[i] = (int)i;
    ck_assert_msg(parts_straight(parts, group, (int)sheet->placement_count), "straight cuts do not part the parts");
}

/* No cut runs through a part: its middle line keeps half a kerf off all of them. */
static inline void check_cuts(const frame_sheet_plan *plan, const frame_sheet_plan_sheet *sheet, const shape *parts,
                              double kerf) {
    for (uint32_t c = 0; c < sheet->cut_count; c++) {
        frame_sheet_plan_cut cut;
        ck_assert_int_eq(frame_sheet_plan_cut_at(plan, sheet->cut_first + c, &cut), FRAME_OK);
        const shape line = {{cut.from_x_in, cut.to_x_in}, {cut.from_y_in, cut.to_y_in}, 2};
        for (uint32_t i = 0; i < sheet->placement_count; i++) {
            ck_assert_msg(!outlines_cross(&line, &parts[i]), "a cut runs through a part");
            ck_assert_double_ge(distance(&line, &parts[i]), kerf / 2 - 1e-5);
        }
    }
}

/* Of an offcut on hand its outline stands in the plan, corner by corner as it was given. */
static inline void check_on_hand(const sheet_job *job, const frame_sheet_plan *plan,
                                 const frame_sheet_plan_sheet *sheet) {
    int32_t holes = 0;
    if (sheet->offcut < 0) {
        ck_assert_uint_eq(sheet->outline_count, 0);
        ck_assert_int_eq(sheet->holes, 0);
        return;
    }
    const frame_sheet_offcut *of = &job->offcuts[sheet->offcut];
    ck_assert_uint_eq(sheet->outline_count, of->corner_count);
    for (uint32_t i = 0; i < sheet->outline_count; i++) {
        frame_sheet_plan_corner corner;
        ck_assert_int_eq(frame_sheet_plan_corner_at(plan, sheet->outline_first + i, &corner), FRAME_OK);
        ck_assert(corner.x_in == of->corners[i].x_in && corner.y_in == of->corners[i].y_in);
    }
    for (size_t h = 0; h < job->in.hole_count; h++) holes += job->holes[h].offcut == sheet->offcut;
    ck_assert_int_eq(sheet->holes, holes);
}

static inline void check_sheet(const sheet_job *job, const frame_sheet_plan *plan, int number, double kerf, int *cut) {
    static shape parts[MOST_ON_SHEET];
    frame_sheet_plan_sheet sheet;
    ck_assert_int_eq(frame_sheet_plan_sheet_at(plan, (size_t)number, &sheet), FRAME_OK);
    const shape outline = outline_of_sheet(job, &sheet);
    check_on_hand(job, plan, &sheet);
    ck_assert_uint_gt(sheet.placement_count, 0);
    ck_assert_uint_le(sheet.placement_count, MOST_ON_SHEET);
    for (uint32_t i = 0; i < sheet.placement_count; i++) {
        frame_sheet_plan_placement p;
        ck_assert_int_eq(frame_sheet_plan_placement_at(plan, sheet.placement_first + i, &p), FRAME_OK);
        ck_assert_int_eq(p.sheet, number);
        cut[p.part]++;
        check_turn(job, &p);
        parts[i] = moved(job, &p);
        const shape listed = corners_of(plan, p.corner_first, p.corner_count);
        for (int k = 0; k < listed.count; k++) {
            ck_assert_double_eq_tol(listed.x[k], parts[i].x[k], 1e-6);
            ck_assert_double_eq_tol(listed.y[k], parts[i].y[k], 1e-6);
        }
        check_inside(&parts[i], &outline);
        check_holes(job, &sheet, &parts[i]);
        for (uint32_t k = 0; k < i; k++) {
            ck_assert_msg(!overlap_shapes(&parts[i], &parts[k]), "two parts overlap");
            ck_assert_double_ge(distance(&parts[i], &parts[k]), kerf - 1e-6);
        }
    }
    check_straight(job, &sheet, parts);
    check_cuts(plan, &sheet, parts, kerf);
    check_kept(job, plan, number, parts, (int)sheet.placement_count, kerf);
}

static inline frame_sheet_plan_out verify_sheets(const sheet_job *job, const frame_sheet_plan *plan) {
    int cut[MOST_KINDS] = {0}, used[MOST_KINDS] = {0}, taken[MOST_KINDS] = {0}, bought = 0;
    double cost = 0;
    frame_sheet_plan_out out;
    const double kerf = job->in.kerf_in == FRAME_NOT_GIVEN ? 0.125 : job->in.kerf_in;
    ck_assert_int_eq(frame_sheet_plan_result(plan, &out), FRAME_OK);
    for (size_t s = 0; s < frame_sheet_plan_sheet_count(plan); s++) {
        frame_sheet_plan_sheet sheet;
        frame_sheet_plan_sheet_at(plan, s, &sheet);
        check_sheet(job, plan, (int)s, kerf, cut);
        cost += sheet.price;
        bought += sheet.sheet >= 0;
        if (sheet.sheet >= 0) used[sheet.sheet]++;
        if (sheet.offcut >= 0) taken[sheet.offcut]++;
    }
    for (size_t i = 0; i < job->in.part_count; i++)
        ck_assert_int_eq(cut[i], job->parts[i].count == FRAME_NOT_GIVEN_INT ? 1 : job->parts[i].count);
    for (size_t i = 0; i < job->in.sheet_count; i++)
        if (job->sheets[i].available != FRAME_NOT_GIVEN_INT) ck_assert_int_le(used[i], job->sheets[i].available);
    for (size_t i = 0; i < job->in.offcut_count; i++)
        ck_assert_int_le(taken[i], job->offcuts[i].count == FRAME_NOT_GIVEN_INT ? 1 : job->offcuts[i].count);
    ck_assert_int_eq(bought, out.sheets_used);
    ck_assert_double_eq_tol(cost, out.cost, 1e-6);
    ck_assert_int_le(out.bound, out.sheets_used);
    ck_assert_double_le(out.cost_bound, out.cost + 1e-9);
    ck_assert(!out.optimal || (out.bound == out.sheets_used && out.cost_bound >= out.cost - 1e-6));
    return out;
}

static inline frame_sheet_plan *plan_sheets(const sheet_job *job) {
    frame_sheet_plan *plan = NULL;
    ck_assert_msg(frame_sheet_plan_solve(&job->in, &plan, NULL) == FRAME_OK, "%s", frame_error_text());
    return plan;
}

#endif
