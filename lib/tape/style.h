/* A style, checked and with its defaults. */
#ifndef FRAME_LIB_TAPE_STYLE_H
#define FRAME_LIB_TAPE_STYLE_H

#include <frame/tape.h>

/* decimals stays FRAME_NOT_GIVEN_INT when not given: the notation resolves it. */
frame_status frame_tape_style_resolve(const frame_tape_style *style, frame_tape_style *resolved);

#endif
