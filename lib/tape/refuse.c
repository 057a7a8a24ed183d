/* How a text is refused: where the trouble stands, what it is, and what to write instead. */
#include <string.h>

#include "base/error.h"
#include "tape/scan.h"

/* Counts characters, not bytes, from 1: what a person would count. */
static int position_of(const char *text, const char *place) {
    int position = 1;
    while (text < place && *text) {
        size_t length;
        frame_scan_code_point(text, &length);
        text += length;
        position++;
    }
    return position;
}

/* The text fit for a message: one line, valid UTF-8, not endless. */
static void show(const char *text, char *shown, size_t size) {
    size_t used = 0;
    while (*text) {
        size_t length;
        const uint32_t code = frame_scan_code_point(text, &length);
        if (used + length + 4 > size) {
            memcpy(shown + used, "...", 3);
            used += 3;
            break;
        }
        if (code < 0x20 || code == 0x7F || code == 0xFFFD || (code >= 0x80 && code < 0xA0))
            memset(shown + used, '?', length);
        else
            memcpy(shown + used, text, length);
        used += length;
        text += length;
    }
    shown[used] = 0;
}

frame_status frame_scan_refuse(const frame_scan *scan, frame_status status, const char *place, const char *trouble,
                               const char *instead) {
    char shown[80];
    show(scan->text, shown, sizeof shown);
    const char *verdict = status == FRAME_AMBIGUOUS      ? "is ambiguous"
                          : status == FRAME_OUT_OF_RANGE ? "is out of range"
                                                         : "cannot be read";
    return frame_fail(status, "text", shown, instead, "text: %s %s at character %d: %s; write %s",
                      shown[0] ? shown : "an empty text", verdict, position_of(scan->text, place), trouble, instead);
}

frame_status frame_scan_unreadable(const frame_scan *scan, const char *trouble) {
    static const char *const usual[] = {"a length: 7' 10-3/4\", 94-3/4, 94.75 in or 2407 mm",
                                        "a slope: 8 in 12, 8/12, 33.69 deg or 0.667",
                                        "an angle: 30 deg, 22-1/2 deg or 0.5 rad"};
    return frame_scan_refuse(scan, FRAME_UNREADABLE, scan->begin, trouble, usual[scan->purpose]);
}

frame_status frame_scan_finish(const frame_scan *scan) {
    switch (scan->kind) {
        case SCAN_END:
            return FRAME_OK;
        case SCAN_FEET:
            return frame_scan_unreadable(scan, "feet do not belong here");
        case SCAN_IN:
        case SCAN_INCHES:
            return frame_scan_unreadable(scan, "inches do not belong here");
        case SCAN_SLASH:
            return frame_scan_unreadable(scan, "a second fraction");
        case SCAN_DASH:
            return frame_scan_unreadable(scan, "nothing belongs to this dash");
        case SCAN_WORD:
            return frame_scan_unreadable(scan, "this word is not known");
        case SCAN_NUMBER:
        case SCAN_FRACTION:
            return frame_scan_unreadable(scan, "a number too many");
        case SCAN_COMMA:
            if (*scan->at >= '0' && *scan->at <= '9')
                return frame_scan_refuse(scan, FRAME_AMBIGUOUS, scan->begin, "a comma may part thousands or decimals",
                                         "thousands without a comma and decimals with a point");
            return frame_scan_unreadable(scan, "a comma does not belong here");
        default:
            return frame_scan_unreadable(scan, "this does not belong here");
    }
}
