/* Drawing a stick: what the parts of it share. */
#ifndef FRAME_LIB_TIMBER_STICK_DRAWING_H
#define FRAME_LIB_TIMBER_STICK_DRAWING_H

#include <frame/drawing.h>

#include "timber/stick.h"

/* One face as it is drawn: the distance from the datum to the right. */
typedef struct frame_stick_view {
    const frame_stick *stick;
    frame_drawing *drawing;
    frame_text *words; /* room to put texts together */
    int face;          /* its plane's number */
    int rolled;        /* 1: drawn with the edge up that across is counted from */
    int place;         /* 0: the wide face that comes first, 1: the edge, 2: the other wide face */
    double height;     /* of the face */
} frame_stick_view;

/* How high a point of the face stands in its view. */
static inline double frame_stick_up(const frame_stick_view *view, double across) {
    return view->rolled ? view->height - across : across;
}

/* The outline of the face and of the cuts that are seen behind it, and the lines to saw. */
frame_status frame_stick_draw_face(const frame_stick_view *view);
/* Running distances along both edges. */
frame_status frame_stick_draw_running(const frame_stick_view *view);
/* What each line is, and how the saw is set for it: with a bevel on the face its base bears on, else on the first. */
frame_status frame_stick_draw_notes(const frame_stick_view *view);
/* Writes name, section, number of pieces and stock into view->words. */
frame_status frame_stick_write_title(const frame_stick *stick, frame_text *words);

#endif
