/* From a number to whole marks and from marks to characters; the writers' own tools. */
#ifndef FRAME_LIB_TAPE_MARKS_H
#define FRAME_LIB_TAPE_MARKS_H

#include <frame/tape.h>

/* Rounds a number of marks (at most 1e15). One that is within so near of a mark is on it. */
int64_t frame_marks_round(double marks, double so_near, frame_rounding rounding);

/* Each puts characters at a place and gives the place behind them; no zero at the end. */
char *frame_put_whole(char *at, uint64_t value);
char *frame_put_text(char *at, const char *text);
/* A whole and a fraction of marks: "10-3/4", "3/4", "10", "0". denominator: a power of two, the marks of a whole. */
char *frame_put_fraction(char *at, uint64_t marks, uint32_t denominator);
/* marks / 10^decimals: "94.75". With trim, no zeros at the end. */
char *frame_put_decimal(char *at, uint64_t marks, int decimals, int trim);

/* Hands a finished text to the caller: whole, or not at all. */
frame_status frame_tape_hand_over(const char *chars, size_t length, char *text, size_t size);

#endif
