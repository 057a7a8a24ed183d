/* A text in carpenters' notation, taken apart from left to right, one token at a time. Every way of writing the same
 * sign (dashes, spaces, primes, fraction characters) becomes one token here, so that the readers need to know only one.
 */
#ifndef FRAME_LIB_TAPE_SCAN_H
#define FRAME_LIB_TAPE_SCAN_H

#include <frame/base.h>

enum {
    FRAME_SCAN_LONGEST = 100, /* bytes of a text that is read at all: ten times the longest sensible one */
    FRAME_SCAN_DIGITS = 15    /* digits that a double holds whatever they are */
};

extern const double frame_scan_tens[FRAME_SCAN_DIGITS + 1]; /* 10 to the power of the place */

typedef enum frame_scan_kind {
    SCAN_END,
    SCAN_NUMBER,   /* 7, 10.75, .5 */
    SCAN_FRACTION, /* one character: a half, three eighths */
    SCAN_SLASH,
    SCAN_DASH,
    SCAN_PLUS,
    SCAN_COLON,
    SCAN_COMMA,
    SCAN_FEET,
    SCAN_INCHES,
    SCAN_IN, /* the word "in": inches in a length, "8 in 12" in a slope */
    SCAN_ON, /* "on", "over" */
    SCAN_MILLIMETRES,
    SCAN_CENTIMETRES,
    SCAN_METRES,
    SCAN_DEGREES,
    SCAN_RADIANS,
    SCAN_PERCENT,
    SCAN_FLAT,
    SCAN_VERTICAL,
    SCAN_STRENGTH, /* "strong", "light" */
    SCAN_WORD,     /* some other word */
    SCAN_STRANGE   /* anything else */
} frame_scan_kind;

/* What the text is read for; it words the advice. */
typedef enum frame_scan_purpose { SCAN_LENGTH, SCAN_SLOPE, SCAN_ANGLE } frame_scan_purpose;

typedef struct frame_scan {
    const char *text, *begin, *at; /* the whole; the current token; what follows it */
    frame_scan_kind kind;
    frame_scan_purpose purpose;
    double value;                   /* of a number or a fraction character */
    uint64_t digits;                /* of a number: value is digits / 10^decimals when exact */
    int32_t decimals, whole, exact; /* whole: no point was written; exact: at most 15 digits */
} frame_scan;

/* Begins with the first token. Refuses NULL, and a text too long. */
frame_status frame_scan_begin(frame_scan *scan, frame_scan_purpose purpose, const char *text);
void frame_scan_next(frame_scan *scan);

/* Words and signs, for frame_scan_next. Each takes the token that starts at scan->begin and moves scan->at behind it.
 */
void frame_scan_word(frame_scan *scan);
void frame_scan_sign(frame_scan *scan);

/* The code point at a place, and its length in bytes; 0xFFFD and 1 for bytes that are not UTF-8. */
uint32_t frame_scan_code_point(const char *at, size_t *length);
int frame_scan_is_space(uint32_t code);

/* Refuses the text because of what stands at a place in it: "text: 7-10 is ambiguous at character 2: TROUBLE; write
 * INSTEAD". Characters are counted from 1. */
#if defined(__GNUC__)
__attribute__((cold))
#endif
frame_status
frame_scan_refuse(const frame_scan *scan, frame_status status, const char *place, const char *trouble,
                  const char *instead);
/* As above for the current token, as FRAME_UNREADABLE, with the usual advice for the purpose. */
#if defined(__GNUC__)
__attribute__((cold))
#endif
frame_status
frame_scan_unreadable(const frame_scan *scan, const char *trouble);

/* A number with or without a fraction: 7, 7.5, 3/8, 7-3/4, 7 3/4. */
typedef struct frame_quantity {
    double value;
    const char *begin;
    uint64_t digits;
    int32_t decimals, exact; /* as in frame_scan, for a number without a fraction */
    int32_t whole, fraction; /* whole: a whole number alone; fraction: a fraction was written */
    int32_t mixed, spare;    /* a fraction after a whole number */
} frame_quantity;

/* Reads a quantity. For a slope, a number straight before a slash is left alone: there 8/12 is a rise and a run. */
frame_status frame_scan_quantity(frame_scan *scan, frame_quantity *quantity);
/* A quantity times multiple / divisor, rounded once wherever a double can: 240.7 cm and 2407 mm are the same number. */
double frame_scan_scaled(const frame_quantity *quantity, uint32_t multiple, uint32_t divisor);
/* Reads a sign, if one is there: -1 or 1. */
double frame_scan_leading_sign(frame_scan *scan);
/* Refuses whatever is left. */
frame_status frame_scan_finish(const frame_scan *scan);

#endif
