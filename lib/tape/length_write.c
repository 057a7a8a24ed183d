/* Writing a length: feet and inches, inches, decimal, metric. */
#include <math.h>

#include "base/error.h"
#include "base/number.h"
#include "tape/marks.h"
#include "tape/style.h"
#include "tape/tape.h"

static const double on_the_mark =
    1e-9; /* inches; far under any mark, far over what a calculation's last bits add up to */

/* How far the length is from what the marks say, in words. */
static char *put_strength(char *at, double left_over) {
    const double finest_told = 1.0 / 128, greatest_told = 1.0 / 16; /* inches: half a 64th, and more than a hair */
    if (fabs(left_over) < finest_told || fabs(left_over) > greatest_told) return at;
    return frame_put_text(at, left_over > 0 ? " strong" : " light");
}

static char *put_feet(char *at, uint64_t marks, uint32_t denominator) {
    const uint64_t per_foot = 12 * (uint64_t)denominator;
    if (marks >= per_foot) {
        at = frame_put_whole(at, marks / per_foot);
        at = frame_put_text(at, "' ");
        marks %= per_foot;
        if (marks && marks < denominator) at = frame_put_text(at, "0-"); /* 7' 0-3/4": no inch is dropped in silence */
    }
    return frame_put_fraction(at, marks, denominator);
}

static char *put_marks(char *at, double inches, const frame_tape_style *style) {
    const double per_inch = style->denominator;
    const int64_t marks = frame_marks_round(inches * per_inch, on_the_mark * per_inch, style->rounding);
    const uint64_t size = (uint64_t)(marks < 0 ? -marks : marks);
    if (marks < 0) *at++ = '-';
    if (style->style == FRAME_TAPE_FEET)
        at = put_feet(at, size, (uint32_t)style->denominator);
    else
        at = frame_put_fraction(at, size, (uint32_t)style->denominator);
    *at++ = '"';
    return style->strength ? put_strength(at, fabs(inches) - (double)size / per_inch) : at;
}

/* Digits that hold the denominator: all of it in inches, half a mark in millimetres. */
static int usual_decimals(const frame_tape_style *style) {
    int digits = 0;
    if (style->style == FRAME_TAPE_METRIC) return style->denominator > 16;
    for (int part = style->denominator; part > 1; part /= 2) digits++;
    return digits;
}

static char *put_decimal(char *at, double inches, const frame_tape_style *style) {
    static const double tens[] = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};
    const int asked = style->decimals != FRAME_NOT_GIVEN_INT, metric = style->style == FRAME_TAPE_METRIC;
    const int decimals = asked ? style->decimals : usual_decimals(style);
    const double per_inch = (metric ? 25.4 : 1) * tens[decimals];
    const int64_t marks = frame_marks_round(inches * per_inch, on_the_mark * per_inch, style->rounding);
    if (marks < 0) *at++ = '-';
    at = frame_put_decimal(at, (uint64_t)(marks < 0 ? -marks : marks), decimals, !asked && !metric);
    return frame_put_text(at, metric ? " mm" : " in");
}

static size_t write(double inches, const frame_tape_style *style, char *chars) {
    const int by_marks = style->style == FRAME_TAPE_FEET || style->style == FRAME_TAPE_INCHES;
    char *end = by_marks ? put_marks(chars, inches, style) : put_decimal(chars, inches, style);
    *end = 0;
    return (size_t)(end - chars);
}

frame_status frame_tape_format(double inches, const frame_tape_style *style, char *text, size_t size) {
    frame_tape_style resolved;
    char chars[FRAME_TAPE_TEXT];
    if (!isfinite(inches)) return frame_fail_number(FRAME_NOT_A_NUMBER, "inches", inches, "-1e6..1e6 in");
    if (!(fabs(inches) <= FRAME_TAPE_LONGEST))
        return frame_fail_number(FRAME_OUT_OF_RANGE, "inches", inches, "-1e6..1e6 in");
    const frame_status status = frame_tape_style_resolve(style, &resolved);
    if (status) return status;
    return frame_tape_hand_over(chars, write(inches, &resolved, chars), text, size);
}

static size_t write_plainly(double inches, int denominator, frame_tape_units units, char *chars) {
    const frame_tape_style style = {.denominator = denominator, .style = units, .rounding = FRAME_ROUND_NEAREST};
    if (fabs(inches) <= FRAME_TAPE_LONGEST) return write(inches, &style, chars);
    const size_t length = frame_number_print(inches, 6, chars, FRAME_TAPE_TEXT);
    return (size_t)(frame_put_text(chars + length, " in") - chars);
}

size_t frame_tape_write(double inches, int denominator, char *chars) {
    return write_plainly(inches, denominator, FRAME_TAPE_FEET, chars);
}

size_t frame_inches_write(double inches, int denominator, char *chars) {
    return write_plainly(inches, denominator, FRAME_TAPE_INCHES, chars);
}
