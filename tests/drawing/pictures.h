/* Drawings that are hard to letter, for the tests of the layout and of the writer. */
#ifndef FRAME_TESTS_DRAWING_PICTURES_H
#define FRAME_TESTS_DRAWING_PICTURES_H

#include <check.h>
#include <stdio.h>

#include <frame/drawing.h>

#define DRAWN(call) ck_assert_msg((call) == FRAME_OK, "%s: %s", #call, frame_error_text())

/* A board of 8 ft with 30 marks half an inch apart, twelve at its end, and ten labels at one point. */
static void picture_crowded(frame_drawing *d) {
    char text[40];
    DRAWN(frame_drawing_rectangle(d, 0, 0, 96, 9.25, FRAME_PEN_CUT, FRAME_HATCH_SIDE_GRAIN));
    DRAWN(frame_drawing_mark(d, 0, 0, NULL));
    for (int i = 0; i < 30; i++) {
        DRAWN(frame_drawing_line(d, 24 + i * 0.5, 0, 24 + i * 0.5, 9.25, FRAME_PEN_THIN));
        DRAWN(frame_drawing_mark(d, 24 + i * 0.5, 0, NULL));
    }
    DRAWN(frame_drawing_dimension_running(d, FRAME_DIMENSION_BELOW));
    for (int i = 0; i < 12; i++) DRAWN(frame_drawing_mark(d, 96, i * 0.75, NULL));
    DRAWN(frame_drawing_dimension_running(d, FRAME_DIMENSION_RIGHT));
    for (int i = 0; i < 10; i++) {
        snprintf(text, sizeof text, "label number %d", i);
        DRAWN(frame_drawing_label(d, 48, 5, text));
    }
    for (int i = 0; i < 6; i++)
        DRAWN(frame_drawing_dimension(d, 10 + i * 3, 9.25, 13 + i * 3, 9.25, FRAME_DIMENSION_ABOVE, NULL));
    for (int i = 0; i < 4; i++)
        DRAWN(frame_drawing_text(d, 70, 4, "face A", FRAME_ANCHOR_MIDDLE, 0, FRAME_LETTERING_NAME));
}

/* Two chains on one side, an overall distance, chains above and left, and a caption. */
static void picture_chains(frame_drawing *d) {
    DRAWN(frame_drawing_view(d, "Sole plate and the wall over it, seen from the lake"));
    DRAWN(frame_drawing_rectangle(d, 0, 0, 240, 97.125, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE));
    for (int i = 0; i <= 15; i++) {
        const double x = i == 0 ? 0 : i == 15 ? 238.5 : 16 * i - 0.75;
        DRAWN(frame_drawing_rectangle(d, x, 1.5, x + 1.5, 94.125, FRAME_PEN_OUTLINE, FRAME_HATCH_SIDE_GRAIN));
        DRAWN(frame_drawing_mark(d, x, 0, NULL));
    }
    DRAWN(frame_drawing_dimension_running(d, FRAME_DIMENSION_BELOW));
    for (int i = 0; i < 20; i++) DRAWN(frame_drawing_mark(d, 240 - 9.3 * i, 0, NULL));
    DRAWN(frame_drawing_dimension_running(d, FRAME_DIMENSION_BELOW));
    DRAWN(frame_drawing_dimension(d, 0, 0, 240, 0, FRAME_DIMENSION_BELOW, NULL));
    for (int i = 0; i < 9; i++) DRAWN(frame_drawing_mark(d, 30 + 2 * i, 97.125, NULL));
    DRAWN(frame_drawing_dimension_running(d, FRAME_DIMENSION_ABOVE));
    DRAWN(
        frame_drawing_dimension(d, 100, 97.125, 148, 97.125, FRAME_DIMENSION_ABOVE, "rough opening of the door, 4 ft"));
    DRAWN(frame_drawing_dimension(d, 0, 0, 0, 97.125, FRAME_DIMENSION_LEFT, NULL));
    DRAWN(frame_drawing_dimension(d, 0, 0, 0, 1.5, FRAME_DIMENSION_LEFT, NULL));
    DRAWN(frame_drawing_dimension(d, 0, 94.125, 0, 97.125, FRAME_DIMENSION_LEFT, NULL));
    for (int i = 0; i < 14; i++) DRAWN(frame_drawing_label(d, 8 + 16 * i, 40, "stud 2x6, precut, No.2 or better"));
}

/* A rafter in place: sloping dimensions, a sloping text, angles. */
static void picture_sloping(frame_drawing *d) {
    const double corner[7][2] = {{-14, -8.17}, {0, 0}, {3.5, 0}, {3.5, 2.04}, {96, 56}, {96, 64.4}, {-14, 0.23}};
    for (int i = 0; i < 7; i++) DRAWN(frame_drawing_point(d, corner[i][0], corner[i][1]));
    DRAWN(frame_drawing_polygon(d, FRAME_PEN_OUTLINE, FRAME_HATCH_SIDE_GRAIN));
    DRAWN(frame_drawing_rectangle(d, 0, -3, 3.5, 0, FRAME_PEN_CUT, FRAME_HATCH_END_GRAIN));
    DRAWN(frame_drawing_dimension(d, 0, 8.4, 96, 64.4, FRAME_DIMENSION_ALONG, NULL));
    DRAWN(frame_drawing_dimension(d, -14, 0.23, 96, 64.4, FRAME_DIMENSION_ALONG, NULL));
    for (int i = 0; i < 12; i++) DRAWN(frame_drawing_mark(d, 8 * i, 8.4 + 8 * i * 7 / 12.0, NULL));
    DRAWN(frame_drawing_dimension_running(d, FRAME_DIMENSION_ALONG));
    DRAWN(frame_drawing_text(d, 50, 33, "rafter 2x8 at 16 in", FRAME_ANCHOR_MIDDLE, 30.26, FRAME_LETTERING_HEADING));
    DRAWN(frame_drawing_line(d, 0, 0, 40, 0, FRAME_PEN_CENTRE));
    DRAWN(frame_drawing_angle(d, 3.5, 2.04, 0, 30.26, NULL));
    DRAWN(frame_drawing_angle(d, 3.5, 2.04, 0, 3, NULL));
    DRAWN(frame_drawing_angle(d, 96, 56, 90, 210.26, NULL));
    DRAWN(frame_drawing_label(d, 2, 0, "seat"));
}

/* Every hatch, every pen, round things, in two views with a break. */
static void picture_patterns(frame_drawing *d) {
    for (int i = 0; i < 10; i++) {
        DRAWN(frame_drawing_rectangle(d, 12 * i, 0, 12 * i + 10, 8, 1 + i % 6, FRAME_HATCH_NONE + i));
        DRAWN(frame_drawing_text(d, 12 * i + 5, 4, "here", FRAME_ANCHOR_MIDDLE, 0, FRAME_LETTERING_NOTE));
        DRAWN(frame_drawing_circle(d, 12 * i + 5, 14, 4, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE + i));
    }
    DRAWN(frame_drawing_arc(d, 20, 24, 6, 200, 30, FRAME_PEN_HIDDEN));
    DRAWN(frame_drawing_view(d, "a stick of 16 ft, shortened"));
    DRAWN(frame_drawing_rectangle(d, 0, 0, 192, 5.5, FRAME_PEN_OUTLINE, FRAME_HATCH_SIDE_GRAIN));
    DRAWN(frame_drawing_rectangle(d, 0, 5.5, 192, 7, FRAME_PEN_OUTLINE, FRAME_HATCH_PANEL));
    DRAWN(frame_drawing_line(d, 192, 0, 0, 5.5, FRAME_PEN_CENTRE));
    DRAWN(frame_drawing_dimension(d, 0, 0, 192, 0, FRAME_DIMENSION_BELOW, NULL));
    DRAWN(frame_drawing_mark(d, 0, 0, NULL));
    DRAWN(frame_drawing_mark(d, 150, 0, "in the break"));
    DRAWN(frame_drawing_mark(d, 192, 0, NULL));
    DRAWN(frame_drawing_dimension_running(d, FRAME_DIMENSION_BELOW));
    DRAWN(frame_drawing_break(d, 130, 180));
}

static void (*const pictures[])(frame_drawing *) = {picture_crowded, picture_chains, picture_sloping, picture_patterns};
enum { PICTURES = sizeof pictures / sizeof *pictures };

#endif
