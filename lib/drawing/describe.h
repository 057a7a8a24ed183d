/* The picture in words. */
#ifndef FRAME_LIB_DRAWING_DESCRIBE_H
#define FRAME_LIB_DRAWING_DESCRIBE_H

#include "drawing/list.h"

/* Writes the drawing's description, escaped for XML: the caller's, or what is measured and named in it. */
void drawing_describe(const frame_drawing *drawing, frame_text *into);

#endif
