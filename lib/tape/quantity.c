/* A number with or without a fraction: 7, 7.5, 3/8, 7-3/4, 7 3/4, and with the fraction characters. */
#include <stdio.h>

#include "tape/scan.h"

double frame_scan_leading_sign(frame_scan *scan) {
    const int negative = scan->kind == SCAN_DASH;
    if (negative || scan->kind == SCAN_PLUS) frame_scan_next(scan);
    return negative ? -1 : 1;
}

double frame_scan_scaled(const frame_quantity *quantity, uint32_t multiple, uint32_t divisor) {
    const uint64_t exact_up_to = UINT64_C(1) << 53;
    if (quantity->exact && quantity->digits <= exact_up_to / multiple)
        return (double)(quantity->digits * multiple) / (divisor * frame_scan_tens[quantity->decimals]);
    return quantity->value * multiple / divisor;
}

/* Two whole numbers side by side. What they may mean depends on what is read. */
static frame_status refuse_pair(const frame_scan *scan, const char *place, double first, double second) {
    char instead[160];
    const int small = first < 1e6 && second < 1e6; /* else the example is of small numbers, too */
    const unsigned a = small ? (unsigned)first : 7, b = small ? (unsigned)second : 10;
    if (scan->purpose == SCAN_LENGTH)
        snprintf(instead, sizeof instead, "%u' %u\" for feet and inches, %u-%u/16 for sixteenths", a, b, a, b);
    else if (scan->purpose == SCAN_SLOPE)
        snprintf(instead, sizeof instead, "%u in %u for a rise and its run", a, b);
    else
        snprintf(instead, sizeof instead, "%u.%u deg for decimals, %u-1/2 deg for a fraction", a, b, a);
    return frame_scan_refuse(scan, FRAME_AMBIGUOUS, place, "two whole numbers side by side", instead);
}

/* The current token is the slash after a numerator. */
static frame_status read_denominator(frame_scan *scan, double numerator, double *value) {
    frame_scan_next(scan);
    if (scan->kind != SCAN_NUMBER) return frame_scan_unreadable(scan, "a number must follow the slash");
    if (!scan->whole) return frame_scan_unreadable(scan, "a fraction is of whole numbers");
    if (scan->value == 0) return frame_scan_unreadable(scan, "nothing is divided by zero");
    *value = numerator / scan->value;
    frame_scan_next(scan);
    return FRAME_OK;
}

/* After a whole number, a space or a dash at dash (NULL for a space): the numerator is the current token. */
static frame_status read_fraction(frame_scan *scan, frame_quantity *quantity, const char *dash) {
    double fraction = scan->value;
    const char *begin = scan->begin;
    if (scan->kind == SCAN_FRACTION) {
        frame_scan_next(scan);
    } else {
        const int whole = scan->whole;
        frame_scan_next(scan);
        if (!whole || scan->kind != SCAN_SLASH)
            return whole ? refuse_pair(scan, dash ? dash : begin, quantity->value, fraction)
                         : frame_scan_refuse(scan, FRAME_UNREADABLE, begin, "a decimal after a whole number",
                                             "a fraction, or one number with decimals");
        const frame_status status = read_denominator(scan, fraction, &fraction);
        if (status) return status;
    }
    if (fraction >= 1)
        return frame_scan_refuse(scan, FRAME_UNREADABLE, begin, "a fraction of 1 or more after a whole number",
                                 "the fraction under 1, as in 8-1/3 for 7-4/3");
    quantity->value += fraction;
    quantity->whole = quantity->exact = 0;
    quantity->fraction = quantity->mixed = 1;
    return FRAME_OK;
}

/* The number at the beginning has been read; what follows may make it a fraction or add one. */
static frame_status read_rest(frame_scan *scan, frame_quantity *quantity) {
    const char *dash = NULL;
    if (scan->kind == SCAN_SLASH && scan->purpose != SCAN_SLOPE) {
        if (!quantity->whole) return frame_scan_unreadable(scan, "a fraction is of whole numbers");
        quantity->whole = quantity->exact = 0;
        quantity->fraction = 1;
        return read_denominator(scan, quantity->value, &quantity->value);
    }
    if (scan->kind == SCAN_DASH) {
        dash = scan->begin;
        frame_scan_next(scan);
        if (scan->kind != SCAN_NUMBER && scan->kind != SCAN_FRACTION)
            return frame_scan_refuse(scan, FRAME_UNREADABLE, dash, "nothing belongs to this dash",
                                     "the fraction after it, as in 7-3/4");
    }
    if (scan->kind != SCAN_NUMBER && scan->kind != SCAN_FRACTION) return FRAME_OK;
    if (!quantity->whole) return frame_scan_unreadable(scan, "a number too many");
    return read_fraction(scan, quantity, dash);
}

frame_status frame_scan_quantity(frame_scan *scan, frame_quantity *quantity) {
    *quantity = (frame_quantity){.value = scan->value, .begin = scan->begin};
    if (scan->kind == SCAN_FRACTION) {
        quantity->fraction = 1;
        frame_scan_next(scan);
        return FRAME_OK;
    }
    if (scan->kind != SCAN_NUMBER)
        return frame_scan_unreadable(scan, scan->kind == SCAN_END ? "a number is missing" : "a number is expected");
    quantity->digits = scan->digits;
    quantity->decimals = scan->decimals;
    quantity->exact = scan->exact;
    quantity->whole = scan->whole;
    frame_scan_next(scan);
    return read_rest(scan, quantity);
}
