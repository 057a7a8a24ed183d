/* Writing a slope as the rise in a run of 12, and an angle in degrees. */
#include <math.h>

#include "base/error.h"
#include "base/number.h"
#include "tape/marks.h"
#include "tape/tape.h"

static size_t finish(char *end, char *chars) {
    *end = 0;
    return (size_t)(end - chars);
}

/* A value no reader would take back: as a plain number. */
static size_t write_number(double value, const char *unit, char *chars) {
    const size_t length = frame_number_print(value, 6, chars, FRAME_TAPE_TEXT);
    return finish(frame_put_text(chars + length, unit), chars);
}

size_t frame_slope_write(double slope, char *chars) {
    if (!(fabs(slope) <= FRAME_SLOPE_STEEPEST)) return write_number(slope, "", chars);
    const int64_t rise = frame_marks_round(slope * 12 * 1e4, 0, FRAME_ROUND_NEAREST);
    const uint64_t size = (uint64_t)(rise < 0 ? -rise : rise);
    char *at = chars;
    if (rise < 0) *at++ = '-';
    at = size % 625 ? frame_put_decimal(at, size, 4, 1) : frame_put_fraction(at, size / 625, 16); /* 1/16 is 0.0625 */
    return finish(frame_put_text(at, " in 12"), chars);
}

frame_status frame_slope_format(double slope, char *text, size_t size) {
    char chars[FRAME_TAPE_TEXT];
    if (!isfinite(slope)) return frame_fail_number(FRAME_NOT_A_NUMBER, "slope", slope, "-100..100");
    if (!(fabs(slope) <= FRAME_SLOPE_STEEPEST))
        return frame_fail_number(FRAME_OUT_OF_RANGE, "slope", slope, "-100..100");
    return frame_tape_hand_over(chars, frame_slope_write(slope, chars), text, size);
}

size_t frame_angle_write(double degrees, int decimals, char *chars) {
    static const char sign[] = "\xC2\xB0";
    if (!(fabs(degrees) <= 1e6) || decimals < 0 || decimals > 6) return write_number(degrees, sign, chars);
    const int64_t marks = frame_marks_round(degrees * pow(10, decimals), 0, FRAME_ROUND_NEAREST);
    char *at = chars;
    if (marks < 0) *at++ = '-';
    at = frame_put_decimal(at, (uint64_t)(marks < 0 ? -marks : marks), decimals, 1);
    return finish(frame_put_text(at, sign), chars);
}
