/* Drawing a solved beam: its loads, and the diagrams below them. */
#ifndef FRAME_LIB_STRENGTH_BEAM_DRAWING_H
#define FRAME_LIB_STRENGTH_BEAM_DRAWING_H

#include <frame/drawing.h>
#include <frame/text.h>

#include "strength/beam_envelope.h"

typedef struct frame_beam_page {
    const frame_beam *beam;
    frame_drawing *drawing;
    frame_text *words;
    double length, height; /* height: what a lane or half a diagram takes, in inches of the beam's scale */
} frame_beam_page;

/* The beam on its supports with its loads above. */
frame_status frame_beam_draw_loads(const frame_beam_page *page);
/* Shear, moment and, where there is a stiffness, deflection, each a view. */
frame_status frame_beam_draw_diagrams(const frame_beam_page *page);

/* Begins a text with a whole number, its thousands parted by commas. */
void frame_beam_words(const frame_beam_page *page, double value, const char *unit);

#endif
