/* Pieces drawn in plan. */
#include "layout/plan.h"

#include <math.h>

typedef struct outline {
    double x[40], y[40];
    int count;
} outline;

static void add_corner(outline *o, double x, double y) {
    if (o->count == 40) return;
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

/* A notch out of one edge of a board that runs along y: three planes, the first across its width. */
static int next_notch(const frame_layout_set *set, const frame_layout_piece *piece, double after, int out,
                      const frame_layout_cut **notch) {
    *notch = NULL;
    for (size_t i = 0; i + 2 < piece->cut_count; i++) {
        const frame_layout_cut *cuts = &FRAME_ITEM(frame_layout_cut, set->cuts, piece->cut_first + i);
        if (cuts->role != FRAME_STICK_LAP_FACE || (cuts->waste.x > 0) != out || cuts[1].point.y < after - 1e-9)
            continue;
        if (!*notch || cuts[1].point.y < (*notch)[1].point.y) *notch = cuts;
    }
    return *notch != NULL;
}

/* A board along y with its notches: up one edge, back down the other. */
static outline notched(const frame_layout_set *set, const frame_layout_piece *piece) {
    outline o = {.count = 0};
    const double half = piece->depth / 2, x = piece->start.x;
    const frame_layout_cut *notch;
    double found[2][8][3];
    int counts[2] = {0, 0};
    for (int out = 0; out < 2; out++)
        for (double y = -1e9; counts[out] < 8 && next_notch(set, piece, y, out, &notch); y = notch[2].point.y) {
            found[out][counts[out]][0] = notch[0].point.x;
            found[out][counts[out]][1] = notch[1].point.y;
            found[out][counts[out]++][2] = notch[2].point.y;
        }
    add_corner(&o, x - half, piece->start.y);
    for (int i = 0; i < counts[0]; i++) {
        add_corner(&o, x - half, found[0][i][1]);
        add_corner(&o, found[0][i][0], found[0][i][1]);
        add_corner(&o, found[0][i][0], found[0][i][2]);
        add_corner(&o, x - half, found[0][i][2]);
    }
    add_corner(&o, x - half, piece->end.y);
    add_corner(&o, x + half, piece->end.y);
    for (int i = counts[1]; i-- > 0;) {
        add_corner(&o, x + half, found[1][i][2]);
        add_corner(&o, found[1][i][0], found[1][i][2]);
        add_corner(&o, found[1][i][0], found[1][i][1]);
        add_corner(&o, x + half, found[1][i][1]);
    }
    add_corner(&o, x + half, piece->start.y);
    return o;
}

static int has_notch(const frame_layout_set *set, const frame_layout_piece *piece) {
    return piece->kind == FRAME_PIECE_BOARD && piece->cut_count &&
           FRAME_ITEM(frame_layout_cut, set->cuts, piece->cut_first).notch > 0;
}

frame_status frame_layout_draw_plan(const frame_layout_set *set, const frame_layout_piece *piece,
                                    frame_drawing *drawing, frame_pen pen) {
    const double level = hypot(piece->end.x - piece->start.x, piece->end.y - piece->start.y);
    outline o = level < 1e-9 ? standing(piece) : has_notch(set, piece) ? notched(set, piece) : lying(piece);
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < piece->cut_count; i++) {
        const frame_layout_cut *by = &FRAME_ITEM(frame_layout_cut, set->cuts, piece->cut_first + i);
        if (fabs(by->waste.z) < 1e-9 && !by->notch) cut(&o, by);
    }
    if (o.count < 3) return FRAME_OK;
    for (int i = 0; !status && i < o.count; i++) status = frame_drawing_point(drawing, o.x[i], o.y[i]);
    return status ? status : frame_drawing_polygon(drawing, pen, FRAME_HATCH_NONE);
}
