/* From a number to whole marks and from marks to characters. */
#include "tape/marks.h"

#include <stdio.h>
#include <string.h>

#include "base/error.h"

int64_t frame_marks_round(double marks, double so_near, frame_rounding rounding) {
    const int64_t nearest = (int64_t)(marks < 0 ? marks - 0.5 : marks + 0.5);
    const double over = marks - (double)nearest;
    if (rounding == FRAME_ROUND_DOWN && over < -so_near) return nearest - 1;
    if (rounding == FRAME_ROUND_UP && over > so_near) return nearest + 1;
    return nearest;
}

char *frame_put_whole(char *at, uint64_t value) {
    char digits[24];
    size_t first = sizeof digits;
    do digits[--first] = (char)('0' + value % 10);
    while (value /= 10);
    memcpy(at, digits + first, sizeof digits - first);
    return at + (sizeof digits - first);
}

char *frame_put_text(char *at, const char *text) {
    while (*text) *at++ = *text++;
    return at;
}

char *frame_put_fraction(char *at, uint64_t marks, uint32_t denominator) {
    const uint64_t whole = marks / denominator;
    uint32_t numerator = (uint32_t)(marks % denominator);
    if (whole || !numerator) at = frame_put_whole(at, whole);
    if (!numerator) return at;
    if (whole) *at++ = '-';
    while (!(numerator & 1)) numerator /= 2, denominator /= 2;
    at = frame_put_whole(at, numerator);
    *at++ = '/';
    return frame_put_whole(at, denominator);
}

char *frame_put_decimal(char *at, uint64_t marks, int decimals, int trim) {
    while (trim && decimals && marks % 10 == 0) marks /= 10, decimals--;
    uint64_t whole = marks, scale = 1;
    for (int i = 0; i < decimals; i++) whole /= 10, scale *= 10;
    at = frame_put_whole(at, whole);
    if (!decimals) return at;
    *at++ = '.';
    marks -= whole * scale;
    for (int i = decimals; i-- > 0; marks /= 10) at[i] = (char)('0' + marks % 10);
    return at + decimals;
}

frame_status frame_tape_hand_over(const char *chars, size_t length, char *text, size_t size) {
    if (!text) return frame_fail(FRAME_REQUIRED, "text", "NULL", "a buffer", "text: NULL is not a buffer");
    if (length + 1 > size) {
        char given[24], wanted[32];
        snprintf(given, sizeof given, "%zu", size);
        snprintf(wanted, sizeof wanted, "at least %zu", length + 1);
        return frame_fail(FRAME_BUFFER_TOO_SMALL, "size", given, wanted,
                          "size: %s bytes cannot hold %.*s, which needs %s", given, (int)length, chars, wanted);
    }
    memcpy(text, chars, length);
    text[length] = 0;
    return FRAME_OK;
}
