/* The figures of docs/conventions.md that show one stick: its axes, faces and edges, lengths, saw settings, tape. */
#ifndef FRAME_TESTS_FIGURES_STICK_H
#define FRAME_TESTS_FIGURES_STICK_H

#include "figure.h"

/* A box seen from the right and above: x runs right, y away to the upper right, z up. */
static inline void seen(double x, double y, double z, double *h, double *v) {
    *h = x + 0.5 * y;
    *v = z + 0.35 * y;
}

static inline void edge(frame_drawing *d, const double *a, const double *b, frame_pen pen) {
    double h1, v1, h2, v2;
    seen(a[0], a[1], a[2], &h1, &v1);
    seen(b[0], b[1], b[2], &h2, &v2);
    line(d, h1, v1, h2, v2, pen);
}

static inline void axis(frame_drawing *d, double x, double y, double z, const char *name) {
    double h0, v0, h, v;
    seen(0, 0, 0, &h0, &v0);
    seen(x, y, z, &h, &v);
    arrow(d, h0, v0, h, v, 0.9);
    words(d, h + 0.6, v + 0.3, name, FRAME_ANCHOR_START);
}

static inline void figure_axes(frame_drawing *d) {
    const double l = 30, t = 6, w = 9;
    double corner[8][3];
    for (int i = 0; i < 8; i++) {
        corner[i][0] = i & 1 ? l : 0;
        corner[i][1] = i & 2 ? t / 2 : -t / 2;
        corner[i][2] = i & 4 ? w / 2 : -w / 2;
    }
    for (int i = 0; i < 8; i++)
        for (int bit = 1; bit < 8; bit *= 2) {
            const int hidden = i == 2 || (i ^ bit) == 2; /* the corner at the start, left and bottom */
            if (!(i & bit)) edge(d, corner[i], corner[i ^ bit], hidden ? FRAME_PEN_HIDDEN : FRAME_PEN_OUTLINE);
        }
    axis(d, l + 8, 0, 0, "x, to the end");
    axis(d, 0, 11, 0, "y, to the left");
    axis(d, 0, 0, w / 2 + 6, "z, to the crown");
    double h, v;
    seen(l * 0.62, 0, w / 2, &h, &v);
    label(d, h, v, "top face");
    seen(l * 0.4, -t / 2, -w / 10, &h, &v);
    label(d, h, v, "right face");
    seen(0, -t / 8, -w / 3, &h, &v);
    label(d, h, v, "start");
}

/* Lengths by name: a stick with a cheek cut at the end and a plumb cut at the start, its wide face and its top. */
static inline void figure_lengths(frame_drawing *d) {
    frame_stick_in in = stick_in(3.5, 7.25, 60);
    frame_stick *stick = stick_of(&in);
    cut(stick, FRAME_STICK_PLUMB_CUT, 5, 0, 0, -1, 0, 0.6);
    cut(stick, FRAME_STICK_CHEEK_CUT, 55, 0, 0, 1, 1, -0.6);
    static const frame_stick_face faces[2] = {FRAME_STICK_TOP, FRAME_STICK_RIGHT};
    const frame_stick_lengths_out lengths = lengths_of(stick);
    const double low = lengths.start_long_point_x_in, high = lengths.end_long_point_x_in - low;
    for (int view = 0; view < 2; view++) {
        must(frame_drawing_view(d, view ? "right face" : "top face"));
        for (size_t i = 0; i < frame_stick_corner_count(stick); i++) {
            frame_stick_corner corner;
            must(frame_stick_corner_at(stick, i, &corner));
            if (corner.face == faces[view]) must(frame_drawing_point(d, corner.along_in, corner.across_in));
        }
        must(frame_drawing_polygon(d, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE));
        if (view == 0) {
            const double x = 5 + 0.6 * 7.25 / 2 - low; /* where the start's plumb cut meets the top */
            measure(d, x, 3.5, x + lengths.top_left_in, 3.5, FRAME_DIMENSION_ABOVE, "top left edge");
            measure(d, x, 1.75, x + lengths.top_edge_in, 1.75, FRAME_DIMENSION_ABOVE, "top edge");
            continue;
        }
        const double middle = 7.25 / 2, start = 5 - low;
        line(d, -2, middle, high + 2, middle, FRAME_PEN_CENTRE);
        measure(d, start, middle, start + lengths.centre_line_in, middle, FRAME_DIMENSION_BELOW, "centre line");
        measure(d, 0, 0, high, 7.25, FRAME_DIMENSION_BELOW, "long point to long point: the stock it needs");
        const double inner = 5 + 0.6 * 7.25 / 2 - low;
        measure(d, inner, 7.25, inner + lengths.short_point_in, 0, FRAME_DIMENSION_ABOVE, "short point to short point");
    }
    frame_stick_free(stick);
}

/* One saw setting: the line on the wide face, and the tilt in the section square to it. */
static inline void figure_mitre(frame_drawing *d) {
    static const double face[4][2] = {{0, 0}, {26, 0}, {30.2, 7.25}, {0, 7.25}};
    area(d, face, 4, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    line(d, 26, 0, 30.2, 7.25, FRAME_PEN_CUT);
    line(d, 26, 0, 26, 9, FRAME_PEN_CENTRE);
    must(frame_drawing_angle(d, 26, 0, atan2(7.25, 4.2) / degree, 90, "mitre"));
    label(d, 26, 8.5, "square across");
    label(d, 29, 7.25 * 3 / 4.2, "line on the base face,\nleaning to the end at the top");
    words(d, 1, 3.6, "base face", FRAME_ANCHOR_START);
    words(d, 0, 8, "top", FRAME_ANCHOR_START);
}

static inline void figure_bevel(frame_drawing *d) {
    static const double section[4][2] = {{0, 0}, {22, 0}, {20.5, 1.5}, {0, 1.5}};
    area(d, section, 4, FRAME_PEN_OUTLINE, FRAME_HATCH_SIDE_GRAIN);
    line(d, 23.2, -1.2, 19, 3, FRAME_PEN_CUT);
    line(d, 22, 0, 22, 4, FRAME_PEN_CENTRE);
    must(frame_drawing_angle(d, 22, 0, 90, 135, "bevel"));
    label(d, 8, 0, "base face: on the table, or under the saw's base");
    label(d, 22, 0, "long point");
    label(d, 19.4, 2.6, "blade, leaning to the start");
}

/* The compound cut of a jack, as the library draws it. */
static inline frame_drawing *figure_cheek(void) {
    frame_drawing *drawing;
    frame_stick *stick = common_rafter(7.0 / 12, 6, rafter_depth, -12, 46, 45 * degree);
    must(frame_stick_drawing(stick, &drawing));
    frame_stick_free(stick);
    return drawing;
}

/* Running distances: one tape, hooked at the long point. */
static inline void figure_tape(frame_drawing *d) {
    box(d, 0, 0, 110, 5.5, FRAME_HATCH_NONE);
    static const double marks[] = {15.25, 31.25, 47.25, 94.75};
    must(frame_drawing_mark(d, 0, 0, NULL));
    for (int i = 0; i < 4; i++) {
        line(d, marks[i], 0, marks[i], 5.5, FRAME_PEN_CUT);
        must(frame_drawing_mark(d, marks[i], 0, NULL));
    }
    must(frame_drawing_mark(d, 110, 0, NULL));
    must(frame_drawing_dimension_running(d, FRAME_DIMENSION_BELOW));
    label(d, 0, 2, "the tape is hooked here");
}

#endif
