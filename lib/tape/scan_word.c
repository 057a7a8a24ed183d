/* The words a length, a slope or an angle may hold. */
#include <string.h>

#include "tape/scan.h"

typedef struct known_word {
    const char *word;
    frame_scan_kind kind;
} known_word;

static const known_word known[] = {
    {"in", SCAN_IN},
    {"ft", SCAN_FEET},
    {"mm", SCAN_MILLIMETRES},
    {"cm", SCAN_CENTIMETRES},
    {"m", SCAN_METRES},
    {"deg", SCAN_DEGREES},
    {"on", SCAN_ON},
    {"over", SCAN_ON},
    {"foot", SCAN_FEET},
    {"feet", SCAN_FEET},
    {"inch", SCAN_INCHES},
    {"inches", SCAN_INCHES},
    {"strong", SCAN_STRENGTH},
    {"light", SCAN_STRENGTH},
    {"rad", SCAN_RADIANS},
    {"degree", SCAN_DEGREES},
    {"degrees", SCAN_DEGREES},
    {"radian", SCAN_RADIANS},
    {"radians", SCAN_RADIANS},
    {"percent", SCAN_PERCENT},
    {"flat", SCAN_FLAT},
    {"level", SCAN_FLAT},
    {"plumb", SCAN_VERTICAL},
    {"vertical", SCAN_VERTICAL},
    {"metre", SCAN_METRES},
    {"metres", SCAN_METRES},
    {"meter", SCAN_METRES},
    {"meters", SCAN_METRES},
    {"millimetre", SCAN_MILLIMETRES},
    {"millimetres", SCAN_MILLIMETRES},
    {"millimeter", SCAN_MILLIMETRES},
    {"millimeters", SCAN_MILLIMETRES},
    {"centimetre", SCAN_CENTIMETRES},
    {"centimetres", SCAN_CENTIMETRES},
    {"centimeter", SCAN_CENTIMETRES},
    {"centimeters", SCAN_CENTIMETRES},
};

/* A full stop may follow an abbreviation, but not run into a digit: "7 ft.5" would be half an inch to one reader and
 * five to the next. */
static void abbreviation(frame_scan *scan) {
    if (*scan->at != '.') return;
    if (scan->at[1] < '0' || scan->at[1] > '9') {
        scan->at++;
        return;
    }
    scan->kind = SCAN_STRANGE;
    scan->begin = scan->at;
}

void frame_scan_word(frame_scan *scan) {
    char word[16];
    size_t length = 0;
    const char *at = scan->at;
    for (; (*at >= 'a' && *at <= 'z') || (*at >= 'A' && *at <= 'Z'); at++)
        if (length < sizeof word) word[length++] = (char)(*at | 0x20); /* ASCII's small letter */
    scan->at = at;
    scan->kind = SCAN_WORD;
    if (length == sizeof word) return;
    word[length] = 0;
    for (size_t i = 0; i < sizeof known / sizeof *known; i++)
        if (word[0] == known[i].word[0] && !strcmp(word, known[i].word)) {
            scan->kind = known[i].kind;
            break;
        }
    if (length == 2 && (scan->kind == SCAN_FEET || scan->kind == SCAN_IN)) abbreviation(scan);
}
