/* Reading an angle: degrees, degrees with minutes and seconds, radians. */
#include <frame/tape.h>

#include "base/error.h"
#include "tape/scan.h"
#include "tape/tape.h"

/* Minutes or seconds of arc, marked like feet and inches: a part of the degree before them. */
static frame_status read_part(frame_scan *scan, frame_scan_kind mark, double parts, double *degrees) {
    frame_quantity part;
    if (scan->kind != SCAN_NUMBER) return FRAME_OK;
    const frame_status status = frame_scan_quantity(scan, &part);
    if (status) return status;
    if (scan->kind != mark)
        return frame_scan_refuse(scan, FRAME_UNREADABLE, part.begin, "neither minutes nor seconds by its mark",
                                 "33 deg 41' 24\" or 33.69 deg");
    if (part.value >= 60)
        return frame_scan_refuse(scan, FRAME_OUT_OF_RANGE, part.begin, "60 or more minutes or seconds",
                                 "minutes and seconds under 60");
    *degrees += part.value / parts;
    frame_scan_next(scan);
    return FRAME_OK;
}

static frame_status read_unit(frame_scan *scan, const frame_quantity *first, double *degrees) {
    *degrees = first->value;
    if (scan->kind == SCAN_RADIANS) {
        *degrees *= FRAME_DEGREES_PER_RADIAN;
        frame_scan_next(scan);
        return FRAME_OK;
    }
    if (scan->kind == SCAN_DEGREES) {
        frame_scan_next(scan);
        if (!first->whole) return FRAME_OK;
        const frame_status status = read_part(scan, SCAN_FEET, 60, degrees);
        return status ? status : read_part(scan, SCAN_INCHES, 3600, degrees);
    }
    if (scan->kind == SCAN_END && first->fraction && !first->mixed)
        return frame_scan_refuse(scan, FRAME_AMBIGUOUS, first->begin, "a fraction of a degree, or a slope",
                                 "1/2 deg for the fraction; the angle of a slope in degrees");
    return FRAME_OK;
}

frame_status frame_angle_parse(const char *text, double *degrees) {
    frame_scan scan;
    frame_quantity first;
    double size = 0;
    if (!degrees)
        return frame_fail(FRAME_REQUIRED, "degrees", "NULL", "a place", "degrees: NULL is no place for the answer");
    frame_status status = frame_scan_begin(&scan, SCAN_ANGLE, text);
    if (status) return status;
    const double sign = frame_scan_leading_sign(&scan);
    status = frame_scan_quantity(&scan, &first);
    if (!status) status = read_unit(&scan, &first, &size);
    if (!status) status = frame_scan_finish(&scan);
    if (status) return status;
    if (!(size <= 360))
        return frame_scan_refuse(&scan, FRAME_OUT_OF_RANGE, first.begin, "more than a full turn", "at most 360 deg");
    *degrees = sign * size + 0.0; /* no negative zero */
    return FRAME_OK;
}
