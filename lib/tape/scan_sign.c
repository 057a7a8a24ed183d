/* Quotes, primes, dashes, spaces and fraction characters, in ASCII and beyond (code points by the Unicode Standard). */
#include "tape/scan.h"

uint32_t frame_scan_code_point(const char *at, size_t *length) {
    const unsigned char *b = (const unsigned char *)at;
    *length = 1;
    if (b[0] < 0x80) return b[0];
    const size_t more = b[0] >= 0xC2 && b[0] < 0xE0   ? 1
                        : (b[0] & 0xF0) == 0xE0       ? 2
                        : b[0] >= 0xF0 && b[0] < 0xF5 ? 3
                                                      : 0;
    uint32_t code = b[0] & (0x3Fu >> more);
    for (size_t i = 1; i <= more; i++) {
        if ((b[i] & 0xC0u) != 0x80u) return 0xFFFD;
        code = code << 6 | (b[i] & 0x3Fu);
    }
    static const uint32_t least[] = {0, 0x80, 0x800, 0x10000};
    if (!more || code < least[more] || (code >= 0xD800 && code < 0xE000) || code > 0x10FFFF) return 0xFFFD;
    *length = more + 1;
    return code;
}

/* No-break, en, em, thin, hair, figure, narrow, mathematical and ideographic spaces; the zero-width ones and the byte
 * order mark, which nobody sees. */
int frame_scan_is_space(uint32_t code) {
    return code == 0xA0 || (code >= 0x2000 && code <= 0x200B) || code == 0x202F || code == 0x205F || code == 0x2060 ||
           code == 0x3000 || code == 0xFEFF;
}

static int is_single_mark(uint32_t code) {
    return code == '\'' || code == 0x2018 || code == 0x2019 || code == 0x2032 || code == 0x02B9 || code == 0x02BC ||
           code == 0xB4;
}

typedef struct fraction_character {
    uint16_t code;
    uint8_t numerator, denominator;
} fraction_character;

static const fraction_character fractions[] = {
    {0x00BC, 1, 4}, {0x00BD, 1, 2}, {0x00BE, 3, 4}, {0x2150, 1, 7}, {0x2151, 1, 9}, {0x2152, 1, 10},
    {0x2153, 1, 3}, {0x2154, 2, 3}, {0x2155, 1, 5}, {0x2156, 2, 5}, {0x2157, 3, 5}, {0x2158, 4, 5},
    {0x2159, 1, 6}, {0x215A, 5, 6}, {0x215B, 1, 8}, {0x215C, 3, 8}, {0x215D, 5, 8}, {0x215E, 7, 8},
};

static frame_scan_kind fraction(frame_scan *scan, uint32_t code) {
    for (size_t i = 0; i < sizeof fractions / sizeof *fractions; i++)
        if (fractions[i].code == code) {
            scan->value = (double)fractions[i].numerator / fractions[i].denominator;
            return SCAN_FRACTION;
        }
    return SCAN_STRANGE;
}

static frame_scan_kind kind_of(frame_scan *scan, uint32_t code) {
    switch (code) {
        case 0x2010: /* hyphen, no-break hyphen, figure dash, en dash, em dash, minus */
        case 0x2011:
        case 0x2012:
        case 0x2013:
        case 0x2014:
        case 0x2212:
            return SCAN_DASH;
        case 0x2044: /* fraction slash, division slash */
        case 0x2215:
            return SCAN_SLASH;
        case 0x201C: /* double quotes and primes */
        case 0x201D:
        case 0x2033:
        case 0x02BA:
            return SCAN_INCHES;
        case 0x2236:
            return SCAN_COLON; /* ratio */
        case 0xB0:             /* degree sign; the ordinal sign, which looks like it and is on more keyboards */
        case 0xBA:
            return SCAN_DEGREES;
        default:
            return fraction(scan, code);
    }
}

void frame_scan_sign(frame_scan *scan) {
    size_t length;
    const uint32_t code = frame_scan_code_point(scan->at, &length);
    if (frame_scan_is_space(code)) {
        scan->at += length;
        frame_scan_next(scan);
        return;
    }
    scan->at += length;
    if (!is_single_mark(code)) {
        scan->kind = kind_of(scan, code);
        return;
    }
    scan->kind = SCAN_FEET;
    if (is_single_mark(frame_scan_code_point(scan->at, &length))) { /* two single marks are a double one */
        scan->at += length;
        scan->kind = SCAN_INCHES;
    }
}
