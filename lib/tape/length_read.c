/* Reading a length: feet, inches, metric. */
#include <math.h>

#include <frame/tape.h>

#include "base/error.h"
#include "tape/scan.h"
#include "tape/tape.h"

static int begins_quantity(const frame_scan *scan) {
    return scan->kind == SCAN_NUMBER || scan->kind == SCAN_FRACTION;
}
static int is_inches(const frame_scan *scan) {
    return scan->kind == SCAN_INCHES || scan->kind == SCAN_IN;
}

/* The inches after feet; the current token follows the foot mark. */
static frame_status read_inches_after(frame_scan *scan, const frame_quantity *feet, double *inches) {
    frame_quantity rest;
    if (scan->kind == SCAN_DASH) {
        const char *dash = scan->begin;
        frame_scan_next(scan);
        if (!begins_quantity(scan))
            return frame_scan_refuse(scan, FRAME_UNREADABLE, dash, "nothing belongs to this dash",
                                     "the inches after it, as in 7'-10 3/4\"");
    }
    if (!begins_quantity(scan)) return FRAME_OK;
    if (!feet->whole) return frame_scan_unreadable(scan, "inches after feet that are not whole");
    frame_status status = frame_scan_quantity(scan, &rest);
    if (status) return status;
    if (is_inches(scan))
        frame_scan_next(scan);
    else if (scan->kind != SCAN_END && scan->kind != SCAN_STRENGTH)
        return frame_scan_finish(scan);
    if (rest.value >= 12)
        return frame_scan_refuse(scan, FRAME_OUT_OF_RANGE, rest.begin, "12 inches or more after feet",
                                 "inches under 12, or all of it in inches");
    *inches += rest.value;
    return FRAME_OK;
}

static frame_status read_metric(frame_scan *scan, const frame_quantity *quantity, double *inches) {
    const uint32_t tenths_of_mm = scan->kind == SCAN_MILLIMETRES ? 10 : scan->kind == SCAN_CENTIMETRES ? 100 : 10000;
    if (quantity->fraction)
        return frame_scan_refuse(scan, FRAME_UNREADABLE, quantity->begin, "a fraction of a metric unit",
                                 "metric lengths with decimals, as in 240.7 cm");
    *inches = frame_scan_scaled(quantity, tenths_of_mm, 254); /* 1 in = 25.4 mm: yard and pound agreement, 1959 */
    frame_scan_next(scan);
    return FRAME_OK;
}

/* The unit after the first quantity, and what may follow it. */
static frame_status read_unit(frame_scan *scan, const frame_quantity *quantity, double *inches) {
    *inches = quantity->value;
    switch (scan->kind) {
        case SCAN_FEET:
            *inches = frame_scan_scaled(quantity, 12, 1);
            frame_scan_next(scan);
            const frame_status status = read_inches_after(scan, quantity, inches);
            if (status) return status;
            break;
        case SCAN_MILLIMETRES:
        case SCAN_CENTIMETRES:
        case SCAN_METRES:
            return read_metric(scan, quantity, inches);
        case SCAN_INCHES:
        case SCAN_IN:
            frame_scan_next(scan);
            break;
        default:
            break;
    }
    if (scan->kind == SCAN_STRENGTH) frame_scan_next(scan);
    return FRAME_OK;
}

frame_status frame_tape_parse(const char *text, double *inches) {
    frame_scan scan;
    frame_quantity quantity;
    double size = 0;
    if (!inches)
        return frame_fail(FRAME_REQUIRED, "inches", "NULL", "a place", "inches: NULL is no place for the answer");
    frame_status status = frame_scan_begin(&scan, SCAN_LENGTH, text);
    if (status) return status;
    const double sign = frame_scan_leading_sign(&scan);
    status = frame_scan_quantity(&scan, &quantity);
    if (!status) status = read_unit(&scan, &quantity, &size);
    if (!status) status = frame_scan_finish(&scan);
    if (status) return status;
    if (!(size <= FRAME_TAPE_LONGEST))
        return frame_scan_refuse(&scan, FRAME_OUT_OF_RANGE, quantity.begin, "longer than a tape can mean",
                                 "a length of at most 1000000 in either way");
    *inches = sign * size + 0.0; /* no negative zero */
    return FRAME_OK;
}
