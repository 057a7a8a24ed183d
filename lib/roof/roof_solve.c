/* The roof over a plan: the wavefront rises, its lines are put together to faces, and what has been found is proved
 * before it is given: the faces cover the plan once. */
#include <math.h>
#include <stdio.h>

#include "base/error.h"
#include "roof/roof_plan.h"
#include "roof_facts.h"
#include "working/calculation.h"

enum { LIST_FACES, LIST_LINES, LIST_POINTS, LIST_OUTLINES };

typedef struct solution {
    roof_plan plan;
    wave wave;
    frame_array faces; /* roof_face */
    roof_outlines outlines;
    int32_t *point; /* of each node that stands for its place its number in the answer */
} solution;

static const char *const coverage = "the faces cover the plan once";

static void give_roof(solution *s) {
    wave_give(&s->wave);
    frame_array_give(&s->faces);
    roof_outlines_give(&s->outlines);
    frame_give(s->point);
    s->point = NULL;
}

/* -- finding and proving -- */

/* The foot of each edge, a line with nothing outside of it. */
static frame_status add_feet(solution *s) {
    for (size_t i = 0; i < s->plan.edges.count; i++) {
        const roof_edge *edge = ROOF_EDGE(&s->plan, i);
        const int turned = ROOF_RING(&s->plan, edge->ring)->turned;
        const int32_t face = (int32_t)i;
        const wave_arc foot = {face, edge->next, turned ? -1 : face, turned ? face : -1, 0, 0};
        if (!frame_array_push(&s->wave.arcs, &foot)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

/* Walls between edges in line are not known before the wavefront has found them. */
static frame_status add_break_walls(solution *s) {
    for (size_t i = s->plan.edges.count; i < s->wave.edges.count; i++) {
        const wave_edge *edge = WAVE_EDGE(&s->wave, i);
        const roof_face face = {-1, FRAME_FACE_BREAK_WALL, edge->nx, edge->ny, edge->at, s->plan.base, 0};
        if (!frame_array_push(&s->faces, &face)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status prove(const solution *s) {
    const double little = 1e-9 * s->plan.area;
    double area = 0, least = 0;
    for (size_t i = 0; i < s->faces.count; i++) {
        const roof_face *face = &FRAME_ITEM(roof_face, s->faces, i);
        if (!roof_face_slopes(face)) continue;
        const roof_measure measure = roof_face_measure(&s->wave, face, &s->outlines, i);
        area += measure.area;
        least = fmin(least, measure.area);
        if (!roof_face_turns_once(&s->wave, &s->outlines, i, little)) least = -s->plan.area;
    }
    if (fabs(area - s->plan.area) <= little && least >= -little) return FRAME_OK;
    return frame_fail(FRAME_INTERNAL, "roof_solve", "", coverage,
                      "roof_solve: the faces found do not cover the plan once; please report the plan");
}

static frame_status try_touch(solution *s, double touch) {
    wave_begin(&s->wave, touch);
    s->faces = (frame_array){.item_size = sizeof(roof_face)};
    frame_status status = roof_plan_start(&s->plan, &s->wave, &s->faces);
    if (!status) status = wave_run(&s->wave);
    if (!status) status = add_feet(s);
    if (!status) status = add_break_walls(s);
    if (!status) status = roof_outlines_find(&s->wave, s->faces.count, &s->outlines);
    return status ? status : prove(s);
}

/* What counts as one point is tried first as rounding asks for it, then wider and narrower: where points are all but
 * one, one of these takes them all alike. */
static frame_status find(solution *s) {
    static const double touches[] = {1e-10, 1e-8, 1e-12, 1e-6};
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < sizeof touches / sizeof *touches; i++) {
        status = try_touch(s, touches[i]);
        if (status != FRAME_INTERNAL && status != FRAME_IMPOSSIBLE) return status;
        if (i + 1 < sizeof touches / sizeof *touches) {
            give_roof(s);
            s->outlines = (roof_outlines){.faces = 0};
        }
    }
    return status;
}

/* -- the answer -- */

static frame_status give_points(solution *s, frame_answer *answer) {
    const size_t nodes = s->wave.nodes.count;
    s->point = frame_take(nodes * sizeof *s->point);
    if (!s->point) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < nodes; i++) s->point[i] = i < s->plan.edges.count ? 0 : -1;
    for (int32_t i = 0; i < s->outlines.first[s->outlines.faces]; i++) s->point[s->outlines.steps[i]] = 0;
    for (size_t i = 0; i < nodes; i++) {
        if (s->point[i] < 0) continue;
        const wave_node *node = WAVE_NODE(&s->wave, i);
        s->point[i] = (int32_t)frame_answer_count(answer, LIST_POINTS);
        frame_roof_solve_point *point = frame_answer_add(answer, LIST_POINTS);
        if (!point) return FRAME_NO_MEMORY;
        point->x_in = s->plan.x + node->x * s->plan.size;
        point->y_in = s->plan.y + node->y * s->plan.size;
        point->z_in = node->z * s->plan.size;
    }
    return FRAME_OK;
}

static frame_status give_outline(solution *s, frame_answer *answer, size_t face) {
    for (int32_t i = s->outlines.first[face]; i < s->outlines.first[face + 1]; i++) {
        const int32_t number = s->point[s->outlines.steps[i]];
        frame_roof_solve_outline *corner = frame_answer_add(answer, LIST_OUTLINES);
        if (!corner) return FRAME_NO_MEMORY;
        const frame_roof_solve_point *point = &FRAME_ANSWER_ITEM(frame_roof_solve_point, answer, LIST_POINTS, number);
        corner->point = number;
        corner->face = (int32_t)face;
        corner->loop = s->outlines.loops[i];
        corner->x_in = point->x_in, corner->y_in = point->y_in, corner->z_in = point->z_in;
    }
    return FRAME_OK;
}

static frame_status give_face(solution *s, frame_answer *answer, frame_roof_solve_out *out, size_t index) {
    const roof_face *face = &FRAME_ITEM(roof_face, s->faces, index);
    const roof_measure measure = roof_face_measure(&s->wave, face, &s->outlines, index);
    const double size = s->plan.size;
    frame_roof_solve_face *given = frame_answer_add(answer, LIST_FACES);
    if (!given) return FRAME_NO_MEMORY;
    given->edge = face->edge;
    given->kind = face->kind;
    given->toward_deg = atan2(face->ny, face->nx) / FRAME_DEG;
    given->low_in = measure.low * size, given->high_in = measure.high * size;
    given->outline_first = (uint32_t)s->outlines.first[index];
    given->outline_count = (uint32_t)(s->outlines.first[index + 1] - s->outlines.first[index]);
    given->plan_area_in2 = roof_face_slopes(face) ? measure.area * size * size : 0;
    given->volume_in3 = measure.volume * size * size * size;
    if (roof_face_slopes(face)) given->slope = face->slope;
    given->area_in2 = measure.area * size * size * sqrt(1 + face->slope * face->slope);
    *(roof_face_slopes(face) ? &out->surface_area_in2 : &out->upright_area_in2) += given->area_in2;
    out->volume_in3 += given->volume_in3;
    out->height_in = fmax(out->height_in, given->high_in);
    return give_outline(s, answer, index);
}

/* What a line is, by the faces on its sides. */
static frame_roof_line_kind kind_between(const roof_face *a, const roof_face *b, const wave_arc *arc, int level) {
    const int sloping = roof_face_slopes(a) + roof_face_slopes(b);
    if (!sloping) return FRAME_LINE_CORNER;
    if (sloping == 1) {
        const roof_face *upright = roof_face_slopes(a) ? b : a;
        if (a->edge == b->edge) return FRAME_LINE_EAVE; /* the roof of a higher plate, or of a half hip, begins */
        if (upright->kind != FRAME_FACE_GABLE) return FRAME_LINE_WALL;
        return level ? FRAME_LINE_RIDGE : FRAME_LINE_RAKE;
    }
    if (a->edge == b->edge) return FRAME_LINE_BREAK;
    if (fabs(a->nx - b->nx) + fabs(a->ny - b->ny) < 1e-9 && fabs(a->slope - b->slope) < 1e-12) return FRAME_LINE_SEAM;
    return arc->valley ? FRAME_LINE_VALLEY : level ? FRAME_LINE_RIDGE : FRAME_LINE_HIP;
}

static frame_roof_line_kind kind_of(const solution *s, const wave_arc *arc, int level) {
    const int32_t left = arc->left_face, right = arc->right_face;
    if (left < 0 || right < 0) {
        const roof_face *face = &FRAME_ITEM(roof_face, s->faces, left < 0 ? right : left);
        return roof_face_slopes(face) ? FRAME_LINE_EAVE : FRAME_LINE_BASE;
    }
    return kind_between(&FRAME_ITEM(roof_face, s->faces, left), &FRAME_ITEM(roof_face, s->faces, right), arc, level);
}

static double *sum_of(frame_roof_solve_out *out, frame_roof_line_kind kind) {
    double *const sums[] = {&out->ridge_length_in, &out->hip_length_in,  &out->valley_length_in,
                            &out->eave_length_in,  &out->rake_length_in, &out->break_length_in};
    return kind <= FRAME_LINE_BREAK ? sums[kind - 1] : NULL;
}

static frame_status give_line(solution *s, frame_answer *answer, frame_roof_solve_out *out, const wave_arc *arc) {
    int32_t from = s->outlines.same[arc->start], to = s->outlines.same[arc->end];
    if (from == to) return FRAME_OK;
    frame_roof_solve_line *line = frame_answer_add(answer, LIST_LINES);
    if (!line) return FRAME_NO_MEMORY;
    const wave_node *a = WAVE_NODE(&s->wave, from), *b = WAVE_NODE(&s->wave, to);
    const int down = b->z < a->z - 1e-12;
    line->right_face = down ? arc->left_face : arc->right_face;
    line->left_face = down ? arc->right_face : arc->left_face;
    line->from_point = s->point[down ? to : from];
    line->to_point = s->point[down ? from : to];
    line->rise_in = fabs(b->z - a->z) * s->plan.size;
    line->run_in = hypot(b->x - a->x, b->y - a->y) * s->plan.size;
    line->length_in = hypot(line->rise_in, line->run_in);
    if (line->run_in > 1e-9 * line->length_in)
        line->plan_deg = atan2(down ? a->y - b->y : b->y - a->y, down ? a->x - b->x : b->x - a->x) / FRAME_DEG;
    line->kind = kind_of(s, arc, line->rise_in <= 1e-9 * line->length_in);
    double *sum = sum_of(out, line->kind);
    if (sum) *sum += line->length_in;
    return FRAME_OK;
}

static void note(const solution *s, frame_roof_solve_out *out) {
    const roof_plan *plan = &s->plan;
    out->cautions = FRAME_BIT(FRAME_ROOF_CAUTION_MEASURE);
    if (ROOF_RING(plan, 0)->turned) out->cautions |= FRAME_BIT(FRAME_ROOF_CAUTION_CLOCKWISE);
    if (s->wave.inner_faces) out->cautions |= FRAME_BIT(FRAME_ROOF_CAUTION_BREAK_WALL);
    if (out->valley_length_in > 0) out->cautions |= FRAME_BIT(FRAME_ROOF_CAUTION_VALLEY);
    for (size_t i = 0; i < s->faces.count; i++) {
        const roof_face *face = &FRAME_ITEM(roof_face, s->faces, i);
        if (face->slope > 1.5) out->cautions |= FRAME_BIT(FRAME_ROOF_CAUTION_SLOPE);
        if (face->slope > 0 && face->slope < 0.25) out->cautions |= FRAME_BIT(FRAME_ROOF_CAUTION_LOW);
    }
    out->not_checked = FRAME_BIT(FRAME_ROOF_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_ROOF_UNCHECKED_OVERHANG);
    out->known = FRAME_KNOWN_USER;
}

static void clear_sums(frame_roof_solve_out *out) {
    double *const sums[] = {&out->surface_area_in2, &out->upright_area_in2, &out->volume_in3,
                            &out->height_in,        &out->ridge_length_in,  &out->hip_length_in,
                            &out->valley_length_in, &out->eave_length_in,   &out->rake_length_in,
                            &out->break_length_in};
    for (size_t i = 0; i < sizeof sums / sizeof *sums; i++) *sums[i] = 0;
}

static frame_status give(solution *s, frame_answer *answer, frame_roof_solve_out *out) {
    clear_sums(out);
    out->edges = (int32_t)s->plan.edges.count;
    out->plan_area_in2 = s->plan.area * s->plan.size * s->plan.size;
    frame_status status = give_points(s, answer);
    for (size_t i = 0; i < s->faces.count && !status; i++) status = give_face(s, answer, out, i);
    for (size_t i = 0; i < s->wave.arcs.count && !status; i++)
        status = give_line(s, answer, out, &FRAME_ITEM(wave_arc, s->wave.arcs, i));
    note(s, out);
    return status;
}

/* -- the working: areas face by face, for plans a person would go through -- */

static void record(const frame_answer *answer, const frame_roof_solve_out *out, frame_working *w) {
    if (!w) return;
    FRAME_HEADING(w, "Roof areas");
    const size_t count = frame_answer_count(answer, LIST_FACES);
    double before = 0;
    for (size_t i = 0; i < count && count <= 60; i++) {
        const frame_roof_solve_face *face = &FRAME_ANSWER_ITEM(frame_roof_solve_face, answer, LIST_FACES, i);
        char meaning[80];
        if (face->slope == FRAME_NOT_GIVEN) continue;
        snprintf(meaning, sizeof meaning, "area in plan of the face on edge %d", (int)face->edge);
        FRAME_TABLE(w, A_plan, face->plan_area_in2, "in2", meaning, "wavefront");
        FRAME_GIVEN(w, m, face->slope, "", "its slope, rise over run");
        FRAME_GIVEN(w, A_before, before, "in2", "area of the roofs before it");
        FRAME_STEP(w, A, A_plan * sqrt(1 + pow(m, 2)), "in2", "its area: in plan, divided by the cosine of the slope",
                   "right triangle");
        FRAME_STEP(w, A_sum, A_before + A, "in2", "area of the roofs with it", "sum");
        before = A_sum;
    }
    FRAME_TABLE(w, A_roof, out->surface_area_in2, "in2", "area of all sloping roofs", "sum of the faces");
    FRAME_TABLE(w, V, out->volume_in3, "in3", "volume between the plane of the corners and the roof",
                "sum of the faces");
    FRAME_TABLE(w, h, out->height_in, "in", "greatest height", "wavefront");
}

static frame_status solve(const frame_roof_solve_in *in, frame_answer *answer, frame_roof_solve_out *out,
                          frame_working *w) {
    solution s = {.point = NULL};
    frame_status status = roof_plan_read(in, &s.plan);
    if (!status) status = find(&s);
    if (!status) status = give(&s, answer, out);
    if (!status) record(answer, out, w);
    give_roof(&s);
    roof_plan_give(&s.plan);
    return status;
}

FRAME_IMPLEMENT_ANSWER(roof_solve, solve);
