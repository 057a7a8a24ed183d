/* The roof in plan: its lines, each face with its slope and area, arrows down the slopes, and the building lines on
 * tapes. */
#include <frame/drawing.h>
#include <math.h>

#include "base/answer.h"
#include "base/error.h"
#include "roof_facts.h"
#include "tape/tape.h"
#include "text/writer.h"
#include "working/record.h"

enum { LIST_FACES, LIST_LINES, LIST_POINTS, LIST_OUTLINES, FACES_NAMED = 60 };

typedef struct picture {
    const frame_answer *roof;
    frame_drawing *drawing;
    frame_text *words;
    double size; /* of the plan */
} picture;

#define LINE(p, i) (&FRAME_ANSWER_ITEM(const frame_roof_solve_line, (p)->roof, LIST_LINES, i))
#define POINT(p, i) (&FRAME_ANSWER_ITEM(const frame_roof_solve_point, (p)->roof, LIST_POINTS, i))
#define FACE(p, i) (&FRAME_ANSWER_ITEM(const frame_roof_solve_face, (p)->roof, LIST_FACES, i))

static frame_pen pen_of(frame_roof_line_kind kind) {
    switch (kind) {
        case FRAME_LINE_EAVE:
        case FRAME_LINE_BASE:
        case FRAME_LINE_WALL:
            return FRAME_PEN_CUT;
        case FRAME_LINE_VALLEY:
            return FRAME_PEN_HIDDEN;
        case FRAME_LINE_SEAM:
        case FRAME_LINE_BREAK:
            return FRAME_PEN_THIN;
        default:
            return FRAME_PEN_OUTLINE;
    }
}

static frame_status draw_lines(picture *p) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < frame_answer_count(p->roof, LIST_LINES) && !status; i++) {
        const frame_roof_solve_line *line = LINE(p, i);
        const frame_roof_solve_point *a = POINT(p, line->from_point), *b = POINT(p, line->to_point);
        if (line->run_in < 1e-6) continue;
        status = frame_drawing_line(p->drawing, a->x_in, a->y_in, b->x_in, b->y_in, pen_of(line->kind));
    }
    return status;
}

/* -- faces -- */

/* The centre of a face in plan, and its widest reach across the arrow. */
static void centre_of(const picture *p, const frame_roof_solve_face *face, double centre[2]) {
    const frame_roof_solve_outline *corner =
        &FRAME_ANSWER_ITEM(const frame_roof_solve_outline, p->roof, LIST_OUTLINES, face->outline_first);
    double twice = 0;
    centre[0] = centre[1] = 0;
    for (uint32_t i = 2; i < face->outline_count; i++) {
        if (corner[i].loop || corner[i - 1].loop) continue;
        const double ax = corner[i - 1].x_in - corner[0].x_in, ay = corner[i - 1].y_in - corner[0].y_in;
        const double bx = corner[i].x_in - corner[0].x_in, by = corner[i].y_in - corner[0].y_in;
        const double part = ax * by - ay * bx;
        twice += part;
        centre[0] += part * (ax + bx) / 3;
        centre[1] += part * (ay + by) / 3;
    }
    for (int i = 0; i < 2; i++) centre[i] = twice != 0 ? centre[i] / twice : 0;
    centre[0] += corner[0].x_in, centre[1] += corner[0].y_in;
}

/* How far a face reaches from a place in a direction. */
static double reach_of(const picture *p, const frame_roof_solve_face *face, const double from[2], double x, double y) {
    double reach = 0;
    for (uint32_t i = 0; i < face->outline_count; i++) {
        const frame_roof_solve_outline *corner =
            &FRAME_ANSWER_ITEM(const frame_roof_solve_outline, p->roof, LIST_OUTLINES, face->outline_first + i);
        reach = fmax(reach, (corner->x_in - from[0]) * x + (corner->y_in - from[1]) * y);
    }
    return reach;
}

/* An arrow that water would follow, between the name of the face and its eave. */
static frame_status draw_arrow(picture *p, const frame_roof_solve_face *face, const double centre[2]) {
    const double toward = face->toward_deg * FRAME_DEG, x = -cos(toward), y = -sin(toward);
    const double to = 0.92 * reach_of(p, face, centre, x, y), length = fmin(to / 3, p->size / 14);
    const double from = to - length, barb = length / 4;
    const double tip[2] = {centre[0] + to * x, centre[1] + to * y};
    frame_status status =
        frame_drawing_line(p->drawing, centre[0] + from * x, centre[1] + from * y, tip[0], tip[1], FRAME_PEN_DIMENSION);
    for (int side = -1; side < 2 && !status; side += 2)
        status = frame_drawing_line(p->drawing, tip[0], tip[1], tip[0] - barb * (x + side * y / 2),
                                    tip[1] - barb * (y - side * x / 2), FRAME_PEN_DIMENSION);
    return status;
}

static frame_status name_face(picture *p, size_t index) {
    const frame_roof_solve_face *face = FACE(p, index);
    double centre[2];
    centre_of(p, face, centre);
    frame_text_clear(p->words);
    frame_text_addf(p->words, "face %zu, ", index);
    frame_slope_add(p->words, face->slope);
    frame_text_add(p->words, "\n");
    frame_text_add_fixed(p->words, face->area_in2 / 144, 1);
    frame_text_add(p->words, " sq ft");
    const frame_status status = frame_drawing_text(p->drawing, centre[0], centre[1], frame_text_chars(p->words),
                                                   FRAME_ANCHOR_MIDDLE, 0, FRAME_LETTERING_NOTE);
    return status ? status : draw_arrow(p, face, centre);
}

static frame_status name_faces(picture *p) {
    const size_t count = frame_answer_count(p->roof, LIST_FACES);
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < count && count <= FACES_NAMED && !status; i++)
        if (FACE(p, i)->slope != FRAME_NOT_GIVEN && FACE(p, i)->area_in2 > 1e-3 * p->size * p->size)
            status = name_face(p, i);
    return status;
}

/* -- tapes: every place along x, or y, at which a building line has a corner -- */

static frame_status measure(picture *p, int upright, size_t corners) {
    double low[2] = {HUGE_VAL, HUGE_VAL}, last;
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < corners; i++) {
        low[0] = fmin(low[0], POINT(p, i)->x_in);
        low[1] = fmin(low[1], POINT(p, i)->y_in);
    }
    for (double next = low[upright]; next != HUGE_VAL && !status;) {
        status = frame_drawing_mark(p->drawing, upright ? low[0] : next, upright ? next : low[1], NULL);
        last = next, next = HUGE_VAL;
        for (size_t i = 0; i < corners; i++) {
            const double place = upright ? POINT(p, i)->y_in : POINT(p, i)->x_in;
            if (place > last + 0.5) next = fmin(next, place);
        }
    }
    return status ? status
                  : frame_drawing_dimension_running(p->drawing, upright ? FRAME_DIMENSION_LEFT : FRAME_DIMENSION_BELOW);
}

static void find_size(picture *p, size_t corners) {
    double low[2] = {HUGE_VAL, HUGE_VAL}, high[2] = {-HUGE_VAL, -HUGE_VAL};
    for (size_t i = 0; i < corners; i++) {
        low[0] = fmin(low[0], POINT(p, i)->x_in), high[0] = fmax(high[0], POINT(p, i)->x_in);
        low[1] = fmin(low[1], POINT(p, i)->y_in), high[1] = fmax(high[1], POINT(p, i)->y_in);
    }
    p->size = fmax(high[0] - low[0], high[1] - low[1]);
}

static frame_status draw(picture *p) {
    const frame_roof_solve_out *out = p->roof->out;
    const size_t corners = (size_t)out->edges;
    find_size(p, corners);
    frame_status status = frame_drawing_title(p->drawing, "Roof");
    frame_text_add(p->words, "roof in plan, ");
    frame_tape_add(p->words, out->height_in, 16);
    frame_text_add(p->words, " high, ");
    frame_text_add_fixed(p->words, out->surface_area_in2 / 144, 1);
    frame_text_add(p->words, " sq ft; valleys dashed, arrows downhill");
    if (!status) status = frame_drawing_view(p->drawing, frame_text_chars(p->words));
    if (!status) status = draw_lines(p);
    if (!status) status = name_faces(p);
    if (!status && corners <= FACES_NAMED) status = measure(p, 0, corners);
    if (!status && corners <= FACES_NAMED) status = measure(p, 1, corners);
    return status ? status : frame_text_state(p->words);
}

frame_status frame_roof_solve_drawing(const frame_roof_solve *roof, frame_drawing **given) {
    picture p = {.roof = (const frame_answer *)roof};
    if (!roof || !given)
        return frame_fail(FRAME_REQUIRED, "roof", "NULL", "a roof, and where to put the drawing",
                          "roof: NULL is not a roof, or there is nowhere to put the drawing");
    frame_status status = frame_drawing_new(&p.drawing);
    if (!status) status = frame_text_new(&p.words);
    if (!status) status = draw(&p);
    frame_text_free(p.words);
    if (status) {
        frame_drawing_free(p.drawing);
        return status;
    }
    *given = p.drawing;
    return FRAME_OK;
}
