/* Two roofs over one ground: where their faces overlap in plan, the line of equal heights parts what is seen of each.
 * Faces are taken apart into triangles, so that every overlap is convex; what the triangles find is put together again
 * face by face. */
#include <stdio.h>
#include <stdlib.h>

#include "base/error.h"
#include "roof/triangles.h"
#include "roof_facts.h"
#include "working/calculation.h"

enum { LIST_LINES, LIST_FACES };

/* A stretch of the line in which two faces meet. */
typedef struct stretch {
    int32_t face[2];
    double from, to; /* along the line, from the point on it that is nearest to 0, 0 */
} stretch;

typedef struct meeting {
    frame_roof_solve *roofs[2];
    frame_array triangles[2], stretches;
    roof_slope *slopes[2];
    double *under[2]; /* of each face in plan */
} meeting;

static const frame_answer *roof_of(const meeting *m, int which) {
    return (const frame_answer *)m->roofs[which];
}

static void give_meeting(meeting *m) {
    for (int i = 0; i < 2; i++) {
        frame_roof_solve_free(m->roofs[i]);
        frame_array_give(&m->triangles[i]);
        frame_give(m->slopes[i]);
        frame_give(m->under[i]);
    }
    frame_array_give(&m->stretches);
}

static frame_status solve_roofs(const frame_roof_meet_in *in, meeting *m) {
    frame_roof_solve_in roof;
    frame_roof_solve_in_init(&roof);
    roof.corners = in->corners, roof.corner_count = in->corner_count;
    roof.slopes = in->slopes, roof.slope_count = in->slope_count;
    roof.kinds = in->kinds, roof.kind_count = in->kind_count;
    if (frame_roof_solve_solve(&roof, &m->roofs[0], NULL)) return frame_error_status();
    roof.corners = in->other_corners, roof.corner_count = in->other_corner_count;
    roof.slopes = in->other_slopes, roof.slope_count = in->other_slope_count;
    roof.kinds = in->other_kinds, roof.kind_count = in->other_kind_count;
    return frame_roof_solve_solve(&roof, &m->roofs[1], NULL) ? frame_fail_within("other_") : FRAME_OK;
}

static frame_status prepare(const frame_roof_meet_in *in, meeting *m) {
    for (int i = 0; i < 2; i++) {
        const size_t faces = frame_roof_solve_face_count(m->roofs[i]);
        m->triangles[i].item_size = sizeof(roof_triangle);
        m->slopes[i] = frame_take((faces + 1) * sizeof(roof_slope));
        m->under[i] = frame_take_zeroed(faces + 1, sizeof(double));
        if (!m->slopes[i] || !m->under[i]) return FRAME_NO_MEMORY;
        for (size_t k = 0; k < faces; k++)
            m->slopes[i][k] = roof_slope_of(roof_of(m, i), k, i ? in->other_height_in : 0);
        const frame_status status = roof_triangles(roof_of(m, i), &m->triangles[i]);
        if (status) return status;
    }
    m->stretches.item_size = sizeof(stretch);
    return FRAME_OK;
}

/* -- one pair of triangles -- */

static polygon2 overlap_of(const roof_triangle *a, const roof_triangle *b) {
    polygon2 shared = {{a->corners[0], a->corners[1], a->corners[2]}, 3};
    for (int i = 0; i < 3 && shared.count > 2; i++) {
        const v2 from = b->corners[i], way = v2_less(b->corners[(i + 1) % 3], from);
        if (v2_length(way) < 1e-12) continue;
        polygon2_keep(&shared, line2_through(from, v2_left(v2_unit(way))));
    }
    return shared;
}

/* Where the other face is the higher one; 0 when they are parallel. */
static int parting(const roof_slope *main_slope, const roof_slope *other, line2 *higher) {
    const v2 n = v2_less(other->rise, main_slope->rise);
    const double length = v2_length(n);
    if (length < 1e-9) return 0;
    *higher = (line2){v2_times(n, 1 / length), (main_slope->base - other->base) / length};
    return 1;
}

/* The stretch of the line within the overlap. */
static frame_status add_stretch(meeting *m, const polygon2 *shared, line2 line, const int32_t face[2]) {
    const v2 along = v2_left(line.n);
    stretch found = {{face[0], face[1]}, HUGE_VAL, -HUGE_VAL};
    for (int i = 0; i < shared->count; i++) {
        const v2 a = shared->corners[i], b = shared->corners[(i + 1) % shared->count];
        const double from = line2_within(line, a), to = line2_within(line, b);
        if ((from < 0) == (to < 0) && fabs(from) > 1e-9) continue;
        const double share = fabs(from - to) > 1e-12 ? from / (from - to) : 0;
        const double at = v2_dot(along, v2_add(a, v2_times(v2_less(b, a), fmin(1, fmax(0, share)))));
        found.from = fmin(found.from, at), found.to = fmax(found.to, at);
    }
    if (found.to - found.from < 1e-7) return FRAME_OK;
    return frame_array_push(&m->stretches, &found) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status meet(meeting *m, const roof_triangle *a, const roof_triangle *b) {
    const polygon2 shared = overlap_of(a, b);
    const roof_slope *main_slope = &m->slopes[0][a->face], *other = &m->slopes[1][b->face];
    const double area = shared.count > 2 ? polygon2_area(&shared) : 0;
    line2 higher;
    if (area < 1e-9) return FRAME_OK;
    if (!parting(main_slope, other, &higher)) {
        const int over = other->base > main_slope->base;
        m->under[!over][over ? a->face : b->face] += area;
        return FRAME_OK;
    }
    polygon2 covered = shared;
    polygon2_keep(&covered, higher);
    const double cover = covered.count > 2 ? polygon2_area(&covered) : 0;
    m->under[0][a->face] += cover;
    m->under[1][b->face] += area - cover;
    const int32_t face[2] = {a->face, b->face};
    return add_stretch(m, &shared, higher, face);
}

static frame_status meet_all(meeting *m) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < m->triangles[0].count && !status; i++)
        for (size_t k = 0; k < m->triangles[1].count && !status; k++)
            status =
                meet(m, &FRAME_ITEM(roof_triangle, m->triangles[0], i), &FRAME_ITEM(roof_triangle, m->triangles[1], k));
    return status;
}

/* -- the answer -- */

static int by_face(const void *a, const void *b) {
    const stretch *x = a, *y = b;
    for (int i = 0; i < 2; i++)
        if (x->face[i] != y->face[i]) return x->face[i] < y->face[i] ? -1 : 1;
    return (x->from > y->from) - (x->from < y->from);
}

/* Between a line of a face and its eave. */
static double to_eave(const roof_slope *slope, const frame_roof_meet_line *line) {
    const v2 way = {line->to_x_in - line->from_x_in, line->to_y_in - line->from_y_in};
    const double steep = v2_length(slope->rise);
    const double up = steep > 0 ? fabs(v2_dot(way, slope->rise)) / steep * slope->secant : 0;
    return asin(fmin(1, up / line->length_in)) * 180 / acos(-1.0);
}

static frame_status give_line(const meeting *m, frame_answer *answer, frame_roof_meet_out *out, const stretch *found) {
    const roof_slope *main_slope = &m->slopes[0][found->face[0]], *other = &m->slopes[1][found->face[1]];
    frame_roof_meet_line *line = frame_answer_add(answer, LIST_LINES);
    line2 higher;
    if (!line) return FRAME_NO_MEMORY;
    parting(main_slope, other, &higher);
    const v2 foot = v2_times(higher.n, higher.at), along = v2_left(higher.n);
    v2 a = v2_add(foot, v2_times(along, found->from)), b = v2_add(foot, v2_times(along, found->to));
    if (roof_slope_at(main_slope, b) < roof_slope_at(main_slope, a)) {
        const v2 kept = a;
        a = b, b = kept;
    }
    line->main_face = found->face[0], line->other_face = found->face[1];
    line->from_x_in = a.x, line->from_y_in = a.y, line->from_z_in = roof_slope_at(main_slope, a);
    line->to_x_in = b.x, line->to_y_in = b.y, line->to_z_in = roof_slope_at(main_slope, b);
    line->run_in = found->to - found->from;
    line->rise_in = line->to_z_in - line->from_z_in;
    line->length_in = hypot(line->run_in, line->rise_in);
    line->main_deg = to_eave(main_slope, line);
    line->other_deg = to_eave(other, line);
    out->meeting_length_in += line->length_in;
    return FRAME_OK;
}

/* Stretches of one pair of faces that follow each other are one line. */
static frame_status give_lines(meeting *m, frame_answer *answer, frame_roof_meet_out *out) {
    const size_t count = m->stretches.count;
    frame_status status = FRAME_OK;
    if (count) qsort(m->stretches.items, count, sizeof(stretch), by_face);
    for (size_t i = 0, next; i < count && !status; i = next) {
        stretch line = FRAME_ITEM(stretch, m->stretches, i);
        for (next = i + 1; next < count; next++) {
            const stretch *more = &FRAME_ITEM(stretch, m->stretches, next);
            if (more->face[0] != line.face[0] || more->face[1] != line.face[1] || more->from > line.to + 1e-6) break;
            line.to = fmax(line.to, more->to);
        }
        status = give_line(m, answer, out, &line);
    }
    return status;
}

static frame_status give_faces(const meeting *m, frame_answer *answer, frame_roof_meet_out *out) {
    for (int which = 0; which < 2; which++)
        for (size_t i = 0; i < frame_roof_solve_face_count(m->roofs[which]); i++) {
            frame_roof_solve_face solved;
            frame_roof_solve_face_at(m->roofs[which], i, &solved);
            if (!roof_face_is_sloping(&solved)) continue;
            frame_roof_meet_face *face = frame_answer_add(answer, LIST_FACES);
            if (!face) return FRAME_NO_MEMORY;
            face->roof = which ? FRAME_MEETING_OTHER : FRAME_MEETING_MAIN;
            face->face = (int32_t)i;
            face->area_in2 = solved.area_in2;
            face->under_in2 = m->under[which][i] * m->slopes[which][i].secant;
            face->seen_in2 = fmax(0, face->area_in2 - face->under_in2);
            *(which ? &out->other_area_in2 : &out->main_area_in2) += face->area_in2;
            *(which ? &out->other_buried_in2 : &out->main_covered_in2) += face->under_in2;
            out->seen_area_in2 += face->seen_in2;
        }
    return FRAME_OK;
}

static int has_upright(const frame_roof_solve *roof) {
    frame_roof_solve_face face;
    for (size_t i = 0; i < frame_roof_solve_face_count(roof); i++)
        if (!frame_roof_solve_face_at(roof, i, &face) && !roof_face_is_sloping(&face)) return 1;
    return 0;
}

static void note(const meeting *m, frame_roof_meet_out *out) {
    out->cautions = FRAME_BIT(FRAME_ROOF_MEET_CAUTION_SNOW) | FRAME_BIT(FRAME_ROOF_MEET_CAUTION_MEASURE);
    if (!m->stretches.count) out->cautions |= FRAME_BIT(FRAME_ROOF_MEET_CAUTION_APART);
    if (has_upright(m->roofs[1])) out->cautions |= FRAME_BIT(FRAME_ROOF_MEET_CAUTION_WALL);
    out->not_checked = FRAME_BIT(FRAME_ROOF_MEET_UNCHECKED_STRENGTH);
    out->known = FRAME_KNOWN_USER;
}

static void record(const frame_roof_meet_out *out, frame_working *w) {
    if (!w) return;
    FRAME_HEADING(w, "What is seen of two roofs");
    FRAME_TABLE(w, A_main, out->main_area_in2, "in2", "area of the main roof", "sum of its faces");
    FRAME_TABLE(w, A_covered, out->main_covered_in2, "in2", "what of it the other roof covers",
                "overlaps in plan, part by part");
    FRAME_TABLE(w, A_other, out->other_area_in2, "in2", "area of the other roof", "sum of its faces");
    FRAME_TABLE(w, A_buried, out->other_buried_in2, "in2", "what of it lies under the main roof",
                "overlaps in plan, part by part");
    FRAME_STEP(w, A_seen, A_main - A_covered + A_other - A_buried, "in2", "what is seen of both", "sum");
}

static frame_status solve(const frame_roof_meet_in *in, frame_answer *answer, frame_roof_meet_out *out,
                          frame_working *w) {
    meeting m = {.roofs = {NULL, NULL}};
    out->meeting_length_in = out->main_area_in2 = out->main_covered_in2 = 0;
    out->other_area_in2 = out->other_buried_in2 = out->seen_area_in2 = 0;
    frame_status status = solve_roofs(in, &m);
    if (!status) status = prepare(in, &m);
    if (!status) status = meet_all(&m);
    if (!status) status = give_lines(&m, answer, out);
    if (!status) status = give_faces(&m, answer, out);
    if (!status) note(&m, out);
    if (!status) record(out, w);
    give_meeting(&m);
    return status;
}

FRAME_IMPLEMENT_ANSWER(roof_meet, solve);
