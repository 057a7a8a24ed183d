/* The figures of docs/conventions.md that show a roof: run, height and overhang, slope, hand, hip. */
#ifndef FRAME_TESTS_FIGURES_ROOF_H
#define FRAME_TESTS_FIGURES_ROOF_H

#include "figure.h"

static const double slope = 0.5, rafter_depth = 7.25;

/* Run and deductions: to the centre of a ridge. */
static inline void figure_run(frame_drawing *d) {
    const double height = 6, run = 56, ridge = 1.5, angle = atan(slope);
    frame_stick *rafter = common_rafter(slope, height, rafter_depth, -14, run - ridge / 2, 0);
    elevation(d, rafter, -14, height - 14 * slope, angle, rafter_depth, FRAME_HATCH_NONE);
    frame_stick_free(rafter);
    wall(d, 0, 5.5, 12, 1);
    const double top = height + slope * (run - ridge / 2);
    box(d, run - ridge / 2, top - 9.25, run + ridge / 2, top, FRAME_HATCH_END_GRAIN);
    line(d, run, top - 22, run, top + 5, FRAME_PEN_CENTRE);
    line(d, 0, -14, 0, height, FRAME_PEN_CENTRE);
    label(d, 0, -12, "outside of the plate's framing");
    label(d, run, top - 20, "centre of the ridge");
    measure(d, -14, height - 14 * slope, 0, -12, FRAME_DIMENSION_BELOW, "overhang");
    measure(d, 0, -12, run, -12, FRAME_DIMENSION_BELOW, "run");
    measure(d, run - ridge / 2, top, run, top, FRAME_DIMENSION_ABOVE, "deduction: half the ridge, level");
    measure(d, 0, height, run, height + slope * run, FRAME_DIMENSION_ALONG, "line length");
}

/* Run and deductions: against a wall. */
static inline void figure_run_wall(frame_drawing *d) {
    const double height = 6, run = 44, ledger = 1.5, angle = atan(slope);
    frame_stick *rafter = common_rafter(slope, height, rafter_depth, -12, run - ledger, 0);
    elevation(d, rafter, -12, height - 12 * slope, angle, rafter_depth, FRAME_HATCH_NONE);
    frame_stick_free(rafter);
    wall(d, 0, 3.5, 12, 1);
    const double top = height + slope * (run - ledger);
    box(d, run - ledger, top - 9.25, run, top, FRAME_HATCH_END_GRAIN);
    line(d, run, -12, run, top + 8, FRAME_PEN_OUTLINE);
    line(d, run + 5.5, -12, run + 5.5, top + 8, FRAME_PEN_OUTLINE);
    label(d, run, 4, "face of the wall's framing");
    measure(d, 0, -12, run, -12, FRAME_DIMENSION_BELOW, "run");
    measure(d, run - ledger, top, run, top, FRAME_DIMENSION_ABOVE, "deduction: the ledger");
}

/* The heel: height above plate, seat, and the birdsmouth's depth square to the edge. */
static inline void figure_heel(frame_drawing *d) {
    const double angle = atan(slope), secant = 1 / cos(angle), seat = 3.5;
    const double height = rafter_depth * secant - seat * slope;
    frame_stick *rafter = common_rafter(slope, height, rafter_depth, -9, 12, 0);
    elevation(d, rafter, -9, height - 9 * slope, angle, rafter_depth, FRAME_HATCH_NONE);
    frame_stick_free(rafter);
    wall(d, 0, 5.5, 6, 1);
    line(d, 0, 0, 0, height, FRAME_PEN_CENTRE);
    line(d, -11, height - 11 * slope, 14, height + 14 * slope, FRAME_PEN_CENTRE);
    label(d, 9, height + 9 * slope, "roof plane: top of the rafters");
    label(d, 0, -4.5, "building line");
    measure(d, 0, 0, 0, height, FRAME_DIMENSION_RIGHT, "height above plate");
    measure(d, 0, 0, seat, 0, FRAME_DIMENSION_BELOW, "seat");
    measure(d, -9, height - 9 * slope, 0, -6, FRAME_DIMENSION_BELOW, "overhang");
    /* From the corner of the birdsmouth square to the lower edge. */
    const double depth = seat * sin(angle), foot_x = depth * sin(angle), foot_z = -depth * cos(angle);
    line(d, 0, 0, foot_x, foot_z, FRAME_PEN_THIN);
    label(d, foot_x / 2, foot_z / 2, "depth of the birdsmouth,\nsquare to the edge");
}

/* Slope: rise over run. */
static inline void figure_slope(frame_drawing *d) {
    static const double triangle[3][2] = {{0, 0}, {12, 0}, {12, 7}};
    area(d, triangle, 3, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    measure(d, 0, 0, 12, 0, FRAME_DIMENSION_BELOW, "run 12");
    measure(d, 12, 0, 12, 7, FRAME_DIMENSION_RIGHT, "rise 7");
    must(frame_drawing_angle(d, 0, 0, 0, atan(7.0 / 12) / degree, NULL));
    measure(d, 0, 0, 12, 7, FRAME_DIMENSION_ALONG, "slope 7 in 12: 0.583");
}

/* A member in plan, between two points of its centre line. */
static inline void in_plan(frame_drawing *d, double x1, double y1, double x2, double y2, double thickness) {
    const double length = hypot(x2 - x1, y2 - y1), nx = -(y2 - y1) / length * thickness / 2,
                 ny = (x2 - x1) / length * thickness / 2;
    const double corners[4][2] = {{x1 + nx, y1 + ny}, {x2 + nx, y2 + ny}, {x2 - nx, y2 - ny}, {x1 - nx, y1 - ny}};
    area(d, corners, 4, FRAME_PEN_OUTLINE, FRAME_HATCH_BLANK);
}

/* Hand: seen from the eave, crown up. Two hips bound a hip end; jacks lean on each. */
static inline void figure_hand(frame_drawing *d) {
    const double t = 3, side = t / 2 * sqrt(2), half = 60;
    line(d, -half, 0, half, 0, FRAME_PEN_CENTRE);
    in_plan(d, -half, 0, 0, half, t);
    in_plan(d, half, 0, 0, half, t);
    for (int hand = -1; hand <= 1; hand += 2) /* y of the hip's line: half - |x| */
        for (int i = 1; i <= 2; i++) {
            const double x = hand * (half - 18.0 * i), top = half - fabs(x) - side;
            const double corners[4][2] = {
                {x - t / 2, -8}, {x + t / 2, -8}, {x + t / 2, top - hand * t / 2}, {x - t / 2, top + hand * t / 2}};
            area(d, corners, 4, FRAME_PEN_OUTLINE, FRAME_HATCH_BLANK);
        }
    arrow(d, 0, -26, 0, -10, 5);
    words(d, 4, -24, "seen from the eave, crown up", FRAME_ANCHOR_START);
    label(d, -24, 10, "jack 2 left");
    label(d, 24, 10, "jack 2 right");
    label(d, -24 - t / 2, half - 24 - side - t / 2, "cheek on the left");
    label(d, 24 + t / 2, half - 24 - side - t / 2, "cheek on the right");
    label(d, 8, 0, "eave");
}

/* A hip in the section square to it: backed on the left of the figure, dropped on the right. */
static inline void figure_hip(frame_drawing *d) {
    const double t = 3.5, depth = 9, fall = 0.55, angle = atan(fall) / degree;
    const double backed[5][2] = {
        {-t / 2, -depth}, {t / 2, -depth}, {t / 2, -t / 2 * fall}, {0, 0}, {-t / 2, -t / 2 * fall}};
    area(d, backed, 5, FRAME_PEN_OUTLINE, FRAME_HATCH_END_GRAIN);
    line(d, -6, -6 * fall, 0, 0, FRAME_PEN_CENTRE);
    line(d, 6, -6 * fall, 0, 0, FRAME_PEN_CENTRE);
    line(d, 0, 0, 5, 0, FRAME_PEN_HIDDEN);
    must(frame_drawing_angle(d, 0, 0, -angle, 0, "backing"));
    label(d, -5, -5 * fall, "roof plane");
    const double x = 18, drop = t / 2 * fall;
    box(d, x - t / 2, -depth - drop, x + t / 2, -drop, FRAME_HATCH_END_GRAIN);
    line(d, x - 6, -6 * fall, x, 0, FRAME_PEN_CENTRE);
    line(d, x + 6, -6 * fall, x, 0, FRAME_PEN_CENTRE);
    line(d, x, 2, x, -depth - drop - 2, FRAME_PEN_CENTRE);
    measure(d, x, 0, x + t / 2, -drop, FRAME_DIMENSION_RIGHT, "drop");
    measure(d, x, -depth - drop, x + t / 2, -depth - drop, FRAME_DIMENSION_BELOW, "half the thickness");
}

/* Unequal slopes at the eave: plates level, or overhangs equal. */
static inline void eave(frame_drawing *d, double at, double rise, double overhang, double plate, int hand) {
    const double lift = overhang * rise; /* the fascia's top is at 0 for both */
    line(d, at + hand * -overhang, 0, at + hand * 16, lift + 16 * rise, FRAME_PEN_OUTLINE);
    box(d, at, plate - 3, at + hand * 3.5, plate, FRAME_HATCH_END_GRAIN);
    line(d, at, plate - 3, at, -14, FRAME_PEN_OUTLINE);
    line(d, at + hand * 3.5, plate - 3, at + hand * 3.5, -14, FRAME_PEN_OUTLINE);
    box(d, at - hand * overhang, -5.5, at - hand * (overhang + 0.75), 0, FRAME_HATCH_END_GRAIN);
}

static inline void figure_eaves(frame_drawing *d, int plates_level) {
    const double steep = 0.75, flat = 0.375, over = 12, height = 3;
    const double over_flat = plates_level ? over * steep / flat : over;
    eave(d, 0, steep, over, over * steep - height, 1);
    eave(d, 70, flat, over_flat, over_flat * flat - height, -1);
    line(d, -over - 3, 0, 73 + over_flat, 0, FRAME_PEN_CENTRE);
    label(d, 20, 0, "fascias level");
    measure(d, -over, -5.5, 0, -14, FRAME_DIMENSION_BELOW, "overhang");
    measure(d, 70, -14, 70 + over_flat, -5.5, FRAME_DIMENSION_BELOW,
            plates_level ? "overhang times the ratio of slopes" : "overhang, the same");
    if (plates_level)
        line(d, 0, over * steep - height, 70, over * steep - height, FRAME_PEN_HIDDEN);
    else
        measure(d, 70, over_flat * flat - height, 3.5, over * steep - height, FRAME_DIMENSION_RIGHT,
                "difference of plates");
}

static inline void figure_eaves_plates_level(frame_drawing *d) {
    figure_eaves(d, 1);
}
static inline void figure_eaves_overhangs_equal(frame_drawing *d) {
    figure_eaves(d, 0);
}

#endif
