/* The writers' results, appended to a text. */
#include "tape/tape.h"
#include "text/writer.h"

void frame_tape_add(frame_text *text, double inches, int denominator) {
    char chars[FRAME_TAPE_TEXT];
    frame_text_add_bytes(text, chars, frame_tape_write(inches, denominator, chars));
}

void frame_inches_add(frame_text *text, double inches, int denominator) {
    char chars[FRAME_TAPE_TEXT];
    frame_text_add_bytes(text, chars, frame_inches_write(inches, denominator, chars));
}

void frame_slope_add(frame_text *text, double slope) {
    char chars[FRAME_TAPE_TEXT];
    frame_text_add_bytes(text, chars, frame_slope_write(slope, chars));
}

void frame_angle_add(frame_text *text, double degrees, int decimals) {
    char chars[FRAME_TAPE_TEXT];
    frame_text_add_bytes(text, chars, frame_angle_write(degrees, decimals, chars));
}
