/* A face of a roof with its sheets, seen square to it from outside: x to the right along the eave, y up the slope. */
#include <frame/drawing.h>
#include <math.h>

#include "base/answer.h"
#include "base/error.h"
#include "roof/sheathing.h"
#include "roof_facts.h"
#include "tape/tape.h"
#include "text/writer.h"

typedef struct picture {
    const frame_answer *answer;
    frame_drawing *drawing;
    frame_text *words;
    int32_t face;
    double turn;       /* -1 where the face's own axes are left-handed seen from outside */
    size_t first, end; /* its parts; parts of other faces may lie between */
    size_t parts;
} picture;

static const frame_roof_sheathing_part *part_at(const picture *p, size_t i) {
    return &FRAME_ANSWER_ITEM(const frame_roof_sheathing_part, p->answer, SHEATHING_PARTS, i);
}

static const frame_roof_sheathing_corner *corner_at(const picture *p, const frame_roof_sheathing_part *part,
                                                    uint32_t i) {
    return &FRAME_ANSWER_ITEM(const frame_roof_sheathing_corner, p->answer, SHEATHING_CORNERS, part->corner_first + i);
}

static v2 place_of(const picture *p, const frame_roof_sheathing_part *part, uint32_t i) {
    const frame_roof_sheathing_corner *corner = corner_at(p, part, i % part->corner_count);
    return (v2){p->turn * (part->along_in + corner->along_in), part->up_in + corner->up_in};
}

/* Corners run counterclockwise seen from above: in the face's own axes they tell its hand. */
static double hand_of(const picture *p, const frame_roof_sheathing_part *part) {
    double twice = 0;
    for (uint32_t i = 0; i < part->corner_count; i++) {
        const frame_roof_sheathing_corner *a = corner_at(p, part, i),
                                          *b = corner_at(p, part, (i + 1) % part->corner_count);
        twice += a->along_in * b->up_in - a->up_in * b->along_in;
    }
    return twice < 0 ? -1 : 1;
}

static frame_status find_parts(picture *p) {
    const size_t count = frame_answer_count(p->answer, SHEATHING_PARTS);
    p->turn = 1;
    for (size_t i = 0; i < count; i++) {
        if (part_at(p, i)->face != p->face) continue;
        if (!p->parts++) p->first = i, p->turn = hand_of(p, part_at(p, i));
        p->end = i + 1;
    }
    if (p->parts) return FRAME_OK;
    return frame_fail_number(FRAME_OUT_OF_RANGE, "face", p->face, "the number of a face that has parts");
}

/* -- the parts -- */

static v2 middle_of(const picture *p, const frame_roof_sheathing_part *part) {
    const v2 from = place_of(p, part, 0);
    v2 sum = {0, 0};
    double twice = 0;
    for (uint32_t i = 1; i + 1 < part->corner_count; i++) {
        const v2 a = v2_less(place_of(p, part, i), from), b = v2_less(place_of(p, part, i + 1), from);
        sum = v2_add(sum, v2_times(v2_add(a, b), v2_cross(a, b) / 3));
        twice += v2_cross(a, b);
    }
    return twice != 0 ? v2_add(from, v2_times(sum, 1 / twice)) : from;
}

static frame_status number_part(picture *p, size_t index) {
    const v2 middle = middle_of(p, part_at(p, index));
    frame_text_clear(p->words);
    frame_text_addf(p->words, "%zu", index + 1);
    return frame_drawing_text(p->drawing, middle.x, middle.y, frame_text_chars(p->words), FRAME_ANCHOR_MIDDLE, 0,
                              FRAME_LETTERING_NOTE);
}

/* What a part that is not whole is cut to: its size, and the angles of edges that are not square to the courses. */
static void list_part(picture *p, size_t index) {
    const frame_roof_sheathing_part *part = part_at(p, index);
    double last = 0;
    frame_text_addf(p->words, "\n%zu: ", index + 1);
    frame_tape_add(p->words, part->length_in, 16);
    frame_text_add(p->words, " x ");
    frame_tape_add(p->words, part->width_in, 16);
    for (uint32_t i = 0; i < part->corner_count; i++) {
        const frame_roof_sheathing_corner *corner = corner_at(p, part, i);
        const double angle = corner->angle_deg;
        if (angle < 0.01 || angle > 89.99 || fabs(angle - last) < 0.01) continue;
        frame_text_add(p->words, ", ");
        frame_text_add_fixed(p->words, angle, 1);
        frame_text_add(p->words, " deg");
        last = angle;
    }
}

static frame_status draw_part(picture *p, size_t index) {
    const frame_roof_sheathing_part *part = part_at(p, index);
    frame_status status = FRAME_OK;
    for (uint32_t i = 0; i < part->corner_count && !status; i++) {
        const v2 at = place_of(p, part, i);
        status = frame_drawing_point(p->drawing, at.x, at.y);
    }
    if (!status) status = frame_drawing_polygon(p->drawing, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    return status;
}

static frame_status draw_nailers(picture *p) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < frame_answer_count(p->answer, SHEATHING_NAILERS) && !status; i++) {
        const frame_roof_sheathing_nailer *nailer =
            &FRAME_ANSWER_ITEM(const frame_roof_sheathing_nailer, p->answer, SHEATHING_NAILERS, i);
        const double x = p->turn * nailer->along_in, half = 0.75;
        for (int side = -1; side < 2 && !status && nailer->face == p->face; side += 2)
            status = frame_drawing_line(p->drawing, x + side * half, nailer->up_in, x + side * half,
                                        nailer->up_in + nailer->length_in, FRAME_PEN_HIDDEN);
    }
    return status;
}

/* -- tapes: the joints of the first course, and the courses -- */

/* The nearest end of a part beyond a place: of the first course's, or of all up the slope. */
static double next_mark(const picture *p, int upright, double beyond) {
    double next = HUGE_VAL;
    for (size_t i = p->first; i < p->end; i++) {
        const frame_roof_sheathing_part *part = part_at(p, i);
        if (part->face != p->face || (!upright && part->course != 1)) continue;
        for (uint32_t k = 0; k < part->corner_count; k++) {
            const v2 a = place_of(p, part, k), b = place_of(p, part, k + 1);
            const double at = upright ? a.y : a.x;
            const int counts = upright ? fabs(a.y - b.y) < 1e-9 : fabs(a.x - b.x) < 1e-9 || fabs(a.y - b.y) < 1e-9;
            if (counts && at > beyond + 0.5) next = fmin(next, at);
        }
    }
    return next;
}

static frame_status measure(picture *p, int upright) {
    const double low_x = next_mark(p, 0, -HUGE_VAL), low_y = next_mark(p, 1, -HUGE_VAL);
    double next = upright ? low_y : low_x;
    frame_status status = FRAME_OK;
    int marks = 0;
    for (; next != HUGE_VAL && !status; next = next_mark(p, upright, next), marks++)
        status = frame_drawing_mark(p->drawing, upright ? low_x : next, upright ? next : low_y, NULL);
    if (status || marks < 2) return status;
    return frame_drawing_dimension_running(p->drawing, upright ? FRAME_DIMENSION_LEFT : FRAME_DIMENSION_BELOW);
}

static frame_status draw(picture *p) {
    frame_status status = find_parts(p);
    if (!status) status = frame_drawing_title(p->drawing, "Sheathing of a roof face");
    frame_text_addf(p->words, "face %d from outside: %zu parts, nailers dashed; whole but for these:", (int)p->face,
                    p->parts);
    for (size_t i = p->first; i < p->end && !status; i++)
        if (part_at(p, i)->face == p->face && !part_at(p, i)->whole) list_part(p, i);
    if (!status) status = frame_drawing_view(p->drawing, frame_text_chars(p->words));
    for (size_t i = p->first; i < p->end && !status; i++)
        if (part_at(p, i)->face == p->face) status = draw_part(p, i);
    if (!status) status = draw_nailers(p);
    for (size_t i = p->first; i < p->end && !status; i++)
        if (part_at(p, i)->face == p->face) status = number_part(p, i);
    if (!status) status = measure(p, 0);
    if (!status) status = measure(p, 1);
    return status ? status : frame_text_state(p->words);
}

frame_status frame_roof_sheathing_drawing(const frame_roof_sheathing *laid, int32_t face, frame_drawing **given) {
    picture p = {.answer = (const frame_answer *)laid, .face = face};
    if (!laid || !given)
        return frame_fail(FRAME_REQUIRED, "sheathing", "NULL", "a sheathing, and where to put the drawing",
                          "sheathing: NULL is not a sheathing, or there is nowhere to put the drawing");
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
