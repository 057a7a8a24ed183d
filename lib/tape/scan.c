/* Numbers and single signs; words and the signs beyond ASCII stand in scan_word.c and scan_sign.c. */
#include "tape/scan.h"

#include <string.h>

#include "base/error.h"
#include "base/number.h"

const double frame_scan_tens[] = {1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

static int is_digit(char c) {
    return c >= '0' && c <= '9';
}
static int is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/* More digits than a double can be sure to hold: left to the library's own reader, which knows how to round them. */
static void read_long_number(frame_scan *scan) {
    char copy[FRAME_SCAN_LONGEST + 1];
    const size_t length = (size_t)(scan->at - scan->begin);
    memcpy(copy, scan->begin, length);
    copy[length] = 0;
    frame_number_scan(copy, &scan->value);
    scan->exact = 0;
}

static void read_number(frame_scan *scan) {
    const char *at = scan->at;
    uint64_t digits = 0;
    int significant = 0, decimals = 0;
    for (; is_digit(*at); at++)
        if ((significant += significant || *at != '0') <= FRAME_SCAN_DIGITS)
            digits = digits * 10 + (uint64_t)(*at - '0');
    scan->whole = *at != '.';
    if (*at == '.')
        for (at++; is_digit(*at); at++, decimals++)
            if ((significant += significant || *at != '0') <= FRAME_SCAN_DIGITS)
                digits = digits * 10 + (uint64_t)(*at - '0');
    scan->at = at;
    scan->digits = digits;
    scan->decimals = decimals;
    scan->kind = SCAN_NUMBER;
    scan->exact = significant <= FRAME_SCAN_DIGITS && decimals <= FRAME_SCAN_DIGITS;
    if (scan->exact)
        scan->value = decimals ? (double)digits / frame_scan_tens[decimals] : (double)digits;
    else
        read_long_number(scan);
    if (at[-1] == '.') { /* "7." and "." : a digit must follow the point */
        scan->kind = SCAN_STRANGE;
        scan->begin = at - 1;
    }
}

static void take(frame_scan *scan, frame_scan_kind kind, int length) {
    scan->kind = kind;
    scan->at += length;
}

void frame_scan_next(frame_scan *scan) {
    while (*scan->at == ' ' || (*scan->at >= '\t' && *scan->at <= '\r')) scan->at++;
    scan->begin = scan->at;
    const char c = *scan->at;
    if (is_digit(c) || (c == '.' && is_digit(scan->at[1]))) {
        read_number(scan);
        return;
    }
    if (is_letter(c)) {
        frame_scan_word(scan);
        return;
    }
    switch (c) {
        case 0:
            scan->kind = SCAN_END;
            break;
        case '-':
            take(scan, SCAN_DASH, 1);
            break;
        case '+':
            take(scan, SCAN_PLUS, 1);
            break;
        case '/':
            take(scan, SCAN_SLASH, 1);
            break;
        case ':':
            take(scan, SCAN_COLON, 1);
            break;
        case ',':
            take(scan, SCAN_COMMA, 1);
            break;
        case '%':
            take(scan, SCAN_PERCENT, 1);
            break;
        case '"':
            take(scan, SCAN_INCHES, 1);
            break;
        default:
            frame_scan_sign(scan);
    }
}

frame_status frame_scan_begin(frame_scan *scan, frame_scan_purpose purpose, const char *text) {
    if (!text) return frame_fail(FRAME_REQUIRED, "text", "NULL", "a text", "text: NULL is not a text");
    scan->text = scan->begin = scan->at = text;
    scan->purpose = purpose;
    size_t length = 0;
    while (length <= FRAME_SCAN_LONGEST && text[length]) length++;
    if (length > FRAME_SCAN_LONGEST)
        return frame_scan_refuse(scan, FRAME_UNREADABLE, text + FRAME_SCAN_LONGEST, "it goes on too long",
                                 "at most 100 bytes");
    frame_scan_next(scan);
    return FRAME_OK;
}
