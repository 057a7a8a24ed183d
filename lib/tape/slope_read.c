/* Reading a slope: rise and run, an angle, a percentage, or the bare number. */
#include <math.h>

#include <frame/tape.h>

#include "base/error.h"
#include "tape/scan.h"
#include "tape/tape.h"

static int begins_quantity(const frame_scan *scan) {
    return scan->kind == SCAN_NUMBER || scan->kind == SCAN_FRACTION;
}

/* What stands between rise and run, with or without inch marks: 8 in 12, 8" in 12", 8 in on 12, 8/12. Says whether
 * anything did; the current token is then the run. The word "in" is an inch mark when another separator follows. */
static int take_separator(frame_scan *scan) {
    int parted = scan->kind == SCAN_IN;
    if (parted || scan->kind == SCAN_INCHES) frame_scan_next(scan);
    if (scan->kind != SCAN_IN && scan->kind != SCAN_ON && scan->kind != SCAN_COLON && scan->kind != SCAN_SLASH)
        return parted;
    frame_scan_next(scan);
    return 1;
}

static frame_status divide(frame_scan *scan, double rise, frame_quantity *run, double *slope) {
    const frame_status status = frame_scan_quantity(scan, run);
    if (status) return status;
    if (run->value == 0)
        return frame_scan_refuse(scan, FRAME_OUT_OF_RANGE, run->begin, "a run of zero",
                                 "a run above zero, as in 8 in 12");
    *slope = rise / run->value;
    return FRAME_OK;
}

/* The run; the current token is its first. After 3/4 with no marks yet a run may follow: 3/4 in 12. */
static frame_status read_run(frame_scan *scan, const frame_quantity *rise, int fraction, double *slope) {
    frame_quantity run;
    frame_status status = divide(scan, rise->value, &run, slope);
    if (status) return status;
    if (!(fraction && rise->whole && run.whole)) {
        if (scan->kind == SCAN_INCHES || scan->kind == SCAN_IN) frame_scan_next(scan);
        return FRAME_OK;
    }
    if (scan->kind == SCAN_SLASH || !take_separator(scan) || !begins_quantity(scan)) return FRAME_OK;
    status = divide(scan, *slope, &run, slope);
    if (!status && (scan->kind == SCAN_INCHES || scan->kind == SCAN_IN)) frame_scan_next(scan);
    return status;
}

static frame_status from_angle(const frame_scan *scan, const frame_quantity *angle, double degrees, double *slope) {
    if (degrees >= 90)
        return frame_scan_refuse(scan, FRAME_OUT_OF_RANGE, angle->begin, "90 degrees or more is no slope",
                                 "an angle under 90 deg from the level");
    *slope = degrees == 45 ? 1 : tan(degrees / FRAME_DEGREES_PER_RADIAN);
    return FRAME_OK;
}

/* The first quantity has been read; what follows says what it is. */
static frame_status read_kind(frame_scan *scan, const frame_quantity *first, double *slope) {
    const frame_scan_kind kind = scan->kind;
    *slope = first->value;
    if (kind == SCAN_END) {
        if (!first->mixed) return FRAME_OK;
        return frame_scan_refuse(scan, FRAME_AMBIGUOUS, first->begin, "a rise with a fraction and no run",
                                 "its run too, as in 8-1/2 in 12");
    }
    if (kind == SCAN_DEGREES || kind == SCAN_RADIANS || kind == SCAN_PERCENT) {
        frame_scan_next(scan);
        *slope = first->value / 100;
        if (kind == SCAN_PERCENT) return FRAME_OK;
        return from_angle(scan, first, first->value * (kind == SCAN_RADIANS ? FRAME_DEGREES_PER_RADIAN : 1), slope);
    }
    if (take_separator(scan)) return read_run(scan, first, kind == SCAN_SLASH, slope);
    if (scan->kind == SCAN_END) return frame_scan_unreadable(scan, "the run is missing");
    return frame_scan_finish(scan);
}

static frame_status read_slope(frame_scan *scan, double *slope) {
    frame_quantity first = {.begin = scan->begin};
    if (scan->kind == SCAN_VERTICAL)
        return frame_scan_refuse(scan, FRAME_OUT_OF_RANGE, scan->begin, "what stands upright has no slope",
                                 "a slope under 90 deg");
    if (scan->kind == SCAN_FLAT) {
        frame_scan_next(scan);
        *slope = 0;
        return frame_scan_finish(scan);
    }
    const double sign = frame_scan_leading_sign(scan);
    frame_status status = frame_scan_quantity(scan, &first);
    if (!status) status = read_kind(scan, &first, slope);
    if (!status) status = frame_scan_finish(scan);
    if (status) return status;
    if (!(*slope <= FRAME_SLOPE_STEEPEST))
        return frame_scan_refuse(scan, FRAME_OUT_OF_RANGE, first.begin, "steeper than a slope can mean",
                                 "a slope of at most 100, which is 89.4 deg");
    *slope = sign * *slope + 0.0; /* no negative zero */
    return FRAME_OK;
}

frame_status frame_slope_parse(const char *text, double *slope) {
    frame_scan scan;
    double found = 0;
    if (!slope) return frame_fail(FRAME_REQUIRED, "slope", "NULL", "a place", "slope: NULL is no place for the answer");
    frame_status status = frame_scan_begin(&scan, SCAN_SLOPE, text);
    if (!status) status = read_slope(&scan, &found);
    if (!status) *slope = found;
    return status;
}
