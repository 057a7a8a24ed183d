/* A group of fasteners, its centre, the load and what each fastener carries. */
#include <math.h>
#include <stdio.h>

#include "base/number.h"
#include "joint_facts.h"
#include "working/calculation.h"

/* Extent of the group, and the length of the largest arrow. */
typedef struct view {
    double low_x, high_x, low_y, high_y, size, per_lb;
} view;

static void extent(const frame_fastener_eccentric_in *in, view *v) {
    *v = (view){HUGE_VAL, -HUGE_VAL, HUGE_VAL, -HUGE_VAL, 0, 0};
    for (size_t i = 0; i < in->place_count; i++) {
        frame_fastener_place place;
        frame_fastener_place_item(in->places, i, &place);
        v->low_x = fmin(v->low_x, place.x_in), v->high_x = fmax(v->high_x, place.x_in);
        v->low_y = fmin(v->low_y, place.y_in), v->high_y = fmax(v->high_y, place.y_in);
    }
    v->size = fmax(v->high_x - v->low_x, v->high_y - v->low_y);
}

/* An arrow from a point, with a head of two strokes. */
static frame_status arrow(frame_drawing *drawing, double x, double y, double dx, double dy, double head,
                          frame_pen pen) {
    const double length = hypot(dx, dy);
    if (length < 1e-9) return FRAME_OK;
    const double ux = dx / length * head, uy = dy / length * head, ex = x + dx, ey = y + dy;
    frame_status status = frame_drawing_line(drawing, x, y, ex, ey, pen);
    if (!status) status = frame_drawing_line(drawing, ex, ey, ex - ux - 0.4 * uy, ey - uy + 0.4 * ux, pen);
    return status ? status : frame_drawing_line(drawing, ex, ey, ex - ux + 0.4 * uy, ey - uy - 0.4 * ux, pen);
}

static frame_status spot(frame_drawing *drawing, const frame_fastener_eccentric *answer, size_t i,
                         const frame_fastener_place *place, const view *v, int worst) {
    frame_fastener_eccentric_share share;
    char label[64], force[32];
    frame_status status = frame_fastener_eccentric_share_at(answer, i, &share);
    if (!status)
        status = frame_drawing_circle(drawing, place->x_in, place->y_in, v->size / 60, FRAME_PEN_OUTLINE,
                                      worst ? FRAME_HATCH_SOLID : FRAME_HATCH_BLANK);
    if (!status)
        status = arrow(drawing, place->x_in, place->y_in, share.x_lb * v->per_lb, share.y_lb * v->per_lb, v->size / 40,
                       FRAME_PEN_THIN);
    if (status || !worst) return status;
    frame_number_print(floor(share.force_lb + 0.5), 8, force, sizeof force);
    snprintf(label, sizeof label, "%s lb, the most", force);
    return frame_drawing_label(drawing, place->x_in, place->y_in, label);
}

static frame_status load(frame_drawing *drawing, const frame_fastener_eccentric_in *in, const view *v) {
    const double force = hypot(in->force_x_lb, in->force_y_lb);
    if (force <= 0) return FRAME_OK;
    const double long_in = v->size / 3, dx = in->force_x_lb / force * long_in, dy = in->force_y_lb / force * long_in;
    const double x = fmin(fmax(in->at_x_in, v->low_x - v->size), v->high_x + v->size),
                 y = fmin(fmax(in->at_y_in, v->low_y - v->size), v->high_y + v->size);
    frame_status status = arrow(drawing, x, y, dx, dy, v->size / 25, FRAME_PEN_CUT);
    const int there = x == in->at_x_in && y == in->at_y_in;
    return status ? status : frame_drawing_label(drawing, x, y, there ? "load" : "load, acting farther out");
}

static frame_status draw(frame_drawing *drawing, const frame_fastener_eccentric_in *in,
                         const frame_fastener_eccentric *answer) {
    frame_fastener_eccentric_out out;
    view v;
    extent(in, &v);
    frame_status status = frame_fastener_eccentric_result(answer, &out);
    v.per_lb = v.size / 4 / out.largest_lb;
    if (!status) status = frame_drawing_title(drawing, "What each fastener carries");
    for (size_t i = 0; i < in->place_count && !status; i++) {
        frame_fastener_place place;
        frame_fastener_place_item(in->places, i, &place);
        status = spot(drawing, answer, i, &place, &v, (int32_t)i == out.worst);
    }
    const double arm = v.size / 30;
    if (!status)
        status = frame_drawing_line(drawing, out.centre_x_in - arm, out.centre_y_in, out.centre_x_in + arm,
                                    out.centre_y_in, FRAME_PEN_OUTLINE);
    if (!status)
        status = frame_drawing_line(drawing, out.centre_x_in, out.centre_y_in - arm, out.centre_x_in,
                                    out.centre_y_in + arm, FRAME_PEN_OUTLINE);
    if (!status) status = frame_drawing_label(drawing, out.centre_x_in, out.centre_y_in, "elastic centre");
    if (!status) status = load(drawing, in, &v);
    if (!status && v.high_x > v.low_x)
        status = frame_drawing_dimension(drawing, v.low_x, v.low_y, v.high_x, v.low_y, FRAME_DIMENSION_BELOW, "");
    if (!status && v.high_y > v.low_y)
        status = frame_drawing_dimension(drawing, v.low_x, v.low_y, v.low_x, v.high_y, FRAME_DIMENSION_LEFT, "");
    return status;
}

frame_status frame_fastener_eccentric_drawing(const frame_fastener_eccentric_in *given, frame_drawing **drawing) {
    frame_fastener_eccentric_in in;
    frame_fastener_eccentric *answer = NULL;
    uint64_t assumed = 0;
    frame_status status = frame_fastener_eccentric_in_read(given, &in, &assumed);
    if (!status) status = frame_fastener_eccentric_solve(given, &answer, NULL);
    if (status) return status;
    frame_drawing *made = NULL;
    status = frame_drawing_new(&made);
    if (!status) status = draw(made, &in, answer);
    frame_fastener_eccentric_free(answer);
    if (status)
        frame_drawing_free(made);
    else
        *drawing = made;
    return status;
}
