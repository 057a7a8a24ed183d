/* Pieces drawn in plan. */
#include "layout/plan.h"

#include <math.h>

typedef struct outline {
    double x[16], y[16];
    int count;
} outline;

static void add_corner(outline *o, double x, double y) {
    if (o->count == 16) return;
    o->x[o->count] = x;
    o->y[o->count++] = y;
}

static void cut(outline *o, const frame_layout_cut *by) {
    outline kept = {.count = 0};
    for (int i = 0; i < o->count; i++) {
        const int next = (i + 1) % o->count;
        const double here = (o->x[i] - by->point.x) * by->waste.x + (o->y[i] - by->point.y) * by->waste.y;
        const double there = (o->x[next] - by->point.x) * by->waste.x + (o->y[next] - by->point.y) * by->waste.y;
        if (here <= 1e-9) add_corner(&kept, o->x[i], o->y[i]);
        if ((here < -1e-9 && there > 1e-9) || (here > 1e-9 && there < -1e-9)) {
            const double part = here / (here - there);
            add_corner(&kept, o->x[i] + part * (o->x[next] - o->x[i]), o->y[i] + part * (o->y[next] - o->y[i]));
        }
    }
    *o = kept;
}

/* What stands upright shows its section. */
static outline standing(const frame_layout_piece *piece) {
    outline o = {.count = 0};
    const int along_x = fabs(piece->crown.x) > 0.5;
    const double a = (along_x ? piece->depth : piece->thickness) / 2,
                 b = (along_x ? piece->thickness : piece->depth) / 2;
    add_corner(&o, piece->start.x - a, piece->start.y - b);
    add_corner(&o, piece->start.x + a, piece->start.y - b);
    add_corner(&o, piece->start.x + a, piece->start.y + b);
    add_corner(&o, piece->start.x - a, piece->start.y + b);
    return o;
}

static outline lying(const frame_layout_piece *piece) {
    outline o = {.count = 0};
    const double dx = piece->end.x - piece->start.x, dy = piece->end.y - piece->start.y, length = hypot(dx, dy);
    const double half = (fabs(piece->crown.z) > 0.5 ? piece->thickness : piece->depth) / 2;
    const double nx = -dy / length * half, ny = dx / length * half;
    add_corner(&o, piece->start.x + nx, piece->start.y + ny);
    add_corner(&o, piece->start.x - nx, piece->start.y - ny);
    add_corner(&o, piece->end.x - nx, piece->end.y - ny);
    add_corner(&o, piece->end.x + nx, piece->end.y + ny);
    return o;
}

frame_status frame_layout_draw_plan(const frame_layout_set *set, const frame_layout_piece *piece,
                                    frame_drawing *drawing, frame_pen pen) {
    const double level = hypot(piece->end.x - piece->start.x, piece->end.y - piece->start.y);
    outline o = level < 1e-9 ? standing(piece) : lying(piece);
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < piece->cut_count; i++) {
        const frame_layout_cut *by = &FRAME_ITEM(frame_layout_cut, set->cuts, piece->cut_first + i);
        if (fabs(by->waste.z) < 1e-9) cut(&o, by);
    }
    if (o.count < 3) return FRAME_OK;
    for (int i = 0; !status && i < o.count; i++) status = frame_drawing_point(drawing, o.x[i], o.y[i]);
    return status ? status : frame_drawing_polygon(drawing, pen, FRAME_HATCH_NONE);
}
