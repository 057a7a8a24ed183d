/* Lengths, slopes and angles for the other rooms' texts, and what the files of this room share. */
#ifndef FRAME_LIB_TAPE_TAPE_H
#define FRAME_LIB_TAPE_TAPE_H

#include <frame/tape.h>
#include <frame/text.h>

#define FRAME_TAPE_LONGEST 1e6     /* inches */
#define FRAME_SLOPE_STEEPEST 100.0 /* rise over run */
#define FRAME_DEGREES_PER_RADIAN 57.295779513082320877

enum { FRAME_TAPE_TEXT = 32 }; /* bytes that hold anything the writers below write, with the ending zero */

/* Each writes into chars (FRAME_TAPE_TEXT bytes) and gives the length. None fails: a value beyond what can be read back
 * is written as a plain number with its unit. denominator: a power of two from 1 to 64. */
size_t frame_tape_write(double inches, int denominator, char *chars);   /* 7' 10-3/4" */
size_t frame_inches_write(double inches, int denominator, char *chars); /* 94-3/4" */
size_t frame_slope_write(double slope, char *chars);                    /* 8 in 12 */
size_t frame_angle_write(double degrees, int decimals,
                         char *chars); /* 33.69 with the degree sign; no zeros at the end */

/* The same, appended to a text. */
void frame_tape_add(frame_text *text, double inches, int denominator);
void frame_inches_add(frame_text *text, double inches, int denominator);
void frame_slope_add(frame_text *text, double slope);
void frame_angle_add(frame_text *text, double degrees, int decimals);

#endif
