/* The drawing of a beam: what is common to its views, and its loads. */
#include "strength/beam_drawing.h"

#include <math.h>
#include <stdio.h>

#include "base/answer.h"
#include "base/error.h"
#include "text/writer.h"

/* More than this is no drawing any more. */
enum { SPANS_MOST = 24, SEGMENTS_MOST = 120 };

static const char *const kind_names[FRAME_BEAM_KINDS] = {"", "dead", "live", "roof live", "snow", "wind"};

void frame_beam_words(const frame_beam_page *p, double value, const char *unit) {
    char digits[32], shown[48];
    const int length = snprintf(digits, sizeof digits, "%lld", llround(fabs(value)));
    size_t at = 0;
    frame_text_clear(p->words);
    if (value <= -0.5) frame_text_add(p->words, "-");
    for (int i = 0; i < length && at + 2 < sizeof shown; i++) {
        if (i && (length - i) % 3 == 0) shown[at++] = ',';
        shown[at++] = digits[i];
    }
    shown[at] = 0;
    frame_text_add(p->words, shown);
    frame_text_add(p->words, unit);
}

static frame_status corners(const frame_beam_page *p, const double (*at)[2], size_t count, frame_pen pen,
                            frame_hatch hatch) {
    for (size_t i = 0; i < count; i++) {
        const frame_status status = frame_drawing_point(p->drawing, at[i][0], at[i][1]);
        if (status) return status;
    }
    return frame_drawing_polygon(p->drawing, pen, hatch);
}

/* A wedge under a pin, a block at a fixed end, a coil under a spring. */
static frame_status draw_support(const frame_beam_page *p, const frame_beam_node *node, double below) {
    const double s = p->height * 0.28, x = node->at, y = -below;
    const double wedge[3][2] = {{x, y}, {x - s * 0.6, y - s}, {x + s * 0.6, y - s}};
    if (node->kind == FRAME_SUPPORT_NONE) return FRAME_OK;
    if (node->kind == FRAME_SUPPORT_PINNED) return corners(p, wedge, 3, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    if (node->kind == FRAME_SUPPORT_FIXED) {
        const double side = x < p->length / 2 ? -1 : 1;
        return frame_drawing_rectangle(p->drawing, x, y - s, x + side * s * 0.5, s, FRAME_PEN_OUTLINE,
                                       FRAME_HATCH_CONCRETE);
    }
    for (int i = 0; i <= 6; i++) {
        const double side = i == 0 || i == 6 ? 0 : i % 2 ? 0.4 : -0.4;
        const frame_status status = frame_drawing_point(p->drawing, x + side * s, y - s * i / 6);
        if (status) return status;
    }
    const frame_status status = frame_drawing_polyline(p->drawing, FRAME_PEN_OUTLINE);
    return status ? status : frame_drawing_line(p->drawing, x - s * 0.6, y - s, x + s * 0.6, y - s, FRAME_PEN_OUTLINE);
}

static frame_status draw_beam(const frame_beam_page *p, double half) {
    frame_status status =
        frame_drawing_rectangle(p->drawing, 0, -half, p->length, half, FRAME_PEN_CUT, FRAME_HATCH_NONE);
    for (size_t i = 0; !status && i < p->beam->node_count; i++) {
        const frame_beam_node *node = &p->beam->nodes[i];
        status = draw_support(p, node, half);
        if (!status && node->hinge)
            status = frame_drawing_circle(p->drawing, node->at, 0, 2 * half, FRAME_PEN_OUTLINE, FRAME_HATCH_BLANK);
    }
    return status;
}

static double largest_spread(const frame_beam *beam, int kind) {
    double most = 0;
    for (size_t i = 0; i < beam->segment_count; i++) {
        const frame_beam_line *line = frame_beam_line_at(beam, i, kind);
        most = fmax(most, fmax(fabs(line->w), fabs(line->w + line->slope * beam->segments[i].length)));
    }
    return most;
}

static frame_status label_spread(const frame_beam_page *p, double x, double y, double w, int kind) {
    char unit[40];
    snprintf(unit, sizeof unit, " plf %s", kind_names[p->beam->kind_of[kind]]);
    frame_beam_words(p, 12 * w, unit);
    return frame_drawing_text(p->drawing, x, y, frame_text_chars(p->words), FRAME_ANCHOR_ABOVE, 0,
                              FRAME_LETTERING_NOTE);
}

/* One segment of a spread load, as an area over its lane's floor with a stroke at its ends. */
static frame_status draw_spread(const frame_beam_page *p, const frame_beam_line *line, double from, double length,
                                double floor, double scale) {
    const double end = line->w + line->slope * length;
    const double area[4][2] = {{from, floor},
                               {from, floor + scale * fabs(line->w)},
                               {from + length, floor + scale * fabs(end)},
                               {from + length, floor}};
    return corners(p, area, 4, FRAME_PEN_THIN, FRAME_HATCH_NONE);
}

static int same_even(const frame_beam_line *a, const frame_beam_line *b) {
    return a->slope == 0 && b->slope == 0 && fabs(a->w - b->w) <= 1e-9 * fabs(a->w);
}

/* The spread loads of one kind: runs of even load are drawn and labelled as one. */
static frame_status draw_lane(const frame_beam_page *p, int kind, double floor) {
    const frame_beam *beam = p->beam;
    const double most = largest_spread(beam, kind), scale = most > 0 ? 0.3 * p->height / most : 0;
    frame_status status = FRAME_OK;
    for (size_t i = 0, span = 0; !status && i < beam->segment_count;) {
        const frame_beam_line *line = frame_beam_line_at(beam, i, kind);
        while (i >= beam->spans[span].first + beam->spans[span].count) span++;
        const double from = beam->spans[span].at + beam->segments[i].at;
        double length = beam->segments[i].length;
        size_t next = i + 1;
        for (; next < beam->segment_count && same_even(line, frame_beam_line_at(beam, next, kind)); next++)
            length += beam->segments[next].length;
        const double end = line->w + line->slope * length;
        i = next;
        if (!(length > 0) || (line->w == 0 && fabs(end) <= 1e-9 * most)) continue;
        status = draw_spread(p, line, from, length, floor, scale);
        const double top = floor + scale * fmax(fabs(line->w), fabs(end));
        if (!status && line->slope == 0) status = label_spread(p, from + length / 2, top, line->w, kind);
        if (!status && line->slope != 0) status = label_spread(p, from, floor + scale * fabs(line->w), line->w, kind);
        if (!status && line->slope != 0) status = label_spread(p, from + length, floor + scale * fabs(end), end, kind);
    }
    return status;
}

static frame_status arrow(const frame_beam_page *p, double x, double from, double to) {
    const double s = p->height * 0.09, way = to < from ? 1 : -1;
    const double head[3][2] = {{x, to}, {x - s * 0.5, to + way * s}, {x + s * 0.5, to + way * s}};
    const frame_status status = frame_drawing_line(p->drawing, x, from, x, to, FRAME_PEN_OUTLINE);
    return status ? status : corners(p, head, 3, FRAME_PEN_OUTLINE, FRAME_HATCH_SOLID);
}

static frame_status draw_force(const frame_beam_page *p, double x, double force, const char *kind, double half) {
    const double top = half + 0.55 * p->height;
    char unit[40];
    const frame_status status = force > 0 ? arrow(p, x, top, half) : arrow(p, x, half, top);
    snprintf(unit, sizeof unit, " lb %s", kind);
    frame_beam_words(p, fabs(force), unit);
    return status ? status : frame_drawing_label(p->drawing, x, top, frame_text_chars(p->words));
}

/* An arc around the place with its head on the way it turns. */
static frame_status draw_couple(const frame_beam_page *p, double x, double couple, const char *kind) {
    const double r = 0.16 * p->height, s = 0.1 * p->height, pi = acos(-1), way = couple > 0 ? 1 : -1;
    const double angle = (couple > 0 ? 30 : 150) * pi / 180, along[2] = {way * sin(angle), -way * cos(angle)};
    const double at[2] = {x + r * cos(angle), r * sin(angle)};
    const double head[3][2] = {{at[0] + s * along[0], at[1] + s * along[1]},
                               {at[0] + 0.5 * s * cos(angle), at[1] + 0.5 * s * sin(angle)},
                               {at[0] - 0.5 * s * cos(angle), at[1] - 0.5 * s * sin(angle)}};
    char unit[48];
    frame_status status = couple > 0 ? frame_drawing_arc(p->drawing, x, 0, r, 30, 290, FRAME_PEN_OUTLINE)
                                     : frame_drawing_arc(p->drawing, x, 0, r, 250, 510, FRAME_PEN_OUTLINE);
    if (!status) status = corners(p, head, 3, FRAME_PEN_OUTLINE, FRAME_HATCH_SOLID);
    snprintf(unit, sizeof unit, " lb-in %s %s", couple > 0 ? "clockwise" : "counterclockwise", kind);
    frame_beam_words(p, fabs(couple), unit);
    return status ? status : frame_drawing_label(p->drawing, x, r, frame_text_chars(p->words));
}

static frame_status draw_point(const frame_beam_page *p, double x, const frame_beam_line *line, int kind, double half) {
    const char *name = kind_names[p->beam->kind_of[kind]];
    frame_status status = line->force != 0 ? draw_force(p, x, line->force, name, half) : FRAME_OK;
    return status || line->couple == 0 ? status : draw_couple(p, x, line->couple, name);
}

static frame_status draw_points(const frame_beam_page *p, int kind, double half) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; !status && i < p->beam->span_count; i++) {
        const frame_beam_span *span = &p->beam->spans[i];
        for (size_t s = span->first; !status && s < span->first + span->count; s++)
            status =
                draw_point(p, span->at + p->beam->segments[s].at, frame_beam_line_at(p->beam, s, kind), kind, half);
    }
    return status;
}

static frame_status measure(const frame_beam_page *p) {
    frame_status status = frame_drawing_mark(p->drawing, 0, 0, NULL);
    for (size_t i = 0; !status && i < p->beam->node_count; i++)
        if (p->beam->nodes[i].at > 0) status = frame_drawing_mark(p->drawing, p->beam->nodes[i].at, 0, NULL);
    return status ? status : frame_drawing_dimension_running(p->drawing, FRAME_DIMENSION_BELOW);
}

frame_status frame_beam_draw_loads(const frame_beam_page *p) {
    const double half = 0.05 * p->height;
    double floor = half + 0.75 * p->height;
    frame_status status = frame_drawing_view(p->drawing, "Loads");
    if (!status) status = draw_beam(p, half);
    int points = 0;
    for (int k = 0; !status && k < p->beam->kind_count; k++) {
        for (size_t i = 0; i < p->beam->segment_count; i++) points |= frame_beam_line_at(p->beam, i, k)->force != 0;
        status = draw_points(p, k, half);
    }
    if (!points) floor = half + 0.1 * p->height;
    for (int k = 0; !status && k < p->beam->kind_count; k++) {
        if (!(largest_spread(p->beam, k) > 0)) continue;
        status = draw_lane(p, k, floor);
        floor += 0.62 * p->height;
    }
    return status ? status : measure(p);
}

static frame_status check(const frame_beam *beam) {
    if (beam->span_count <= SPANS_MOST && beam->segment_count <= SEGMENTS_MOST) return FRAME_OK;
    return frame_fail(FRAME_TOO_LARGE, "spans_in", "", "at most 24 spans and 120 pieces for a drawing",
                      "spans_in: too many to draw; valid is at most 24 spans and 120 pieces for a drawing");
}

static frame_status draw(frame_beam_page *p) {
    frame_status status = frame_drawing_title(p->drawing, "Beam: loads, shear, moment and deflection");
    if (!status) status = frame_beam_draw_loads(p);
    if (!status) status = frame_beam_draw_diagrams(p);
    return status ? status : frame_text_state(p->words);
}

frame_status frame_beam_solve_drawing(const frame_beam_solve *answer, frame_drawing **drawing) {
    if (!answer || !drawing)
        return frame_fail(FRAME_REQUIRED, answer ? "drawing" : "answer", "NULL",
                          "an answer and a place for its drawing",
                          "%s: NULL; valid is an answer and a place for its drawing", answer ? "drawing" : "answer");
    const frame_beam *beam = ((const frame_owned *)((const frame_answer *)answer)->owned.items)[0].object;
    frame_beam_page p = {.beam = beam, .length = beam->nodes[beam->node_count - 1].at};
    p.height = 0.14 * p.length;
    frame_status status = check(beam);
    if (status || (status = frame_drawing_new(&p.drawing))) return status;
    if (!(status = frame_text_new(&p.words))) status = draw(&p);
    frame_text_free(p.words);
    if (status)
        frame_drawing_free(p.drawing);
    else
        *drawing = p.drawing;
    return status;
}
