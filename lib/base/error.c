/* The error detail of each thread. */
#include "base/error.h"

#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "base/number.h"
#include "base/utf8.h"

typedef struct error_detail {
    frame_status status;
    char field[160], value[96], valid[320], text[640];
} error_detail;

static _Thread_local error_detail detail;

enum { MOST_SHOWN = 60 }; /* bytes of a value: a message that holds a whole file helps nobody */

/* Copies the characters that fit, in one line and in UTF-8 whatever was given. */
static void keep(char *into, size_t size, const char *from) {
    size_t at = 0;
    while (*from) {
        size_t length = frame_utf8_length(from);
        const int shown = length && (unsigned char)*from >= 0x20 && *from != 0x7F;
        if (!length) length = 1;
        if (at + length >= size) break;
        if (shown)
            memmove(into + at, from, length);
        else
            into[at] = *from == '\n' || *from == '\t' || *from == '\r' ? ' ' : '?';
        at += shown ? length : 1;
        from += length;
    }
    into[at] = 0;
}

/* Cuts a long value short where the text quotes it, so that what is valid still fits. */
static void quote_less(char *text, const char *value) {
    const size_t length = strlen(value);
    char *quoted = length > MOST_SHOWN + 3 ? strstr(text, value) : NULL;
    size_t shown = MOST_SHOWN;
    if (!quoted) return;
    while (shown && ((unsigned char)value[shown] & 0xC0u) == 0x80u) shown--;
    memcpy(quoted + shown, "...", 3);
    memmove(quoted + shown + 3, quoted + length, strlen(quoted + length) + 1);
}

frame_status frame_fail(frame_status status, const char *field, const char *value, const char *valid,
                        const char *format, ...) {
    char text[2048];
    va_list list;
    va_start(list, format);
    vsnprintf(text, sizeof text, format, list);
    va_end(list);
    quote_less(text, value);
    detail.status = status;
    keep(detail.field, sizeof detail.field, field);
    keep(detail.value, sizeof detail.value, value);
    keep(detail.valid, sizeof detail.valid, valid);
    keep(detail.text, sizeof detail.text, text);
    return status;
}

frame_status frame_fail_number(frame_status status, const char *field, double value, const char *valid) {
    char written[32];
    frame_number_print(value, 15, written, sizeof written);
    return frame_fail(status, field, written, valid, "%s: %s is not in %s", field, written, valid);
}

frame_status frame_fail_within(const char *format, ...) {
    char path[sizeof detail.field], joined[sizeof detail.field + sizeof detail.text];
    va_list list;
    va_start(list, format);
    vsnprintf(path, sizeof path, format, list);
    va_end(list);
    snprintf(joined, sizeof joined, "%s%s", path, detail.text);
    keep(detail.text, sizeof detail.text, joined);
    snprintf(joined, sizeof joined, "%s%s", path, detail.field);
    keep(detail.field, sizeof detail.field, joined);
    return detail.status;
}

frame_status frame_error_status(void) {
    return detail.status;
}
const char *frame_error_field(void) {
    return detail.field;
}
const char *frame_error_value(void) {
    return detail.value;
}
const char *frame_error_valid(void) {
    return detail.valid;
}
const char *frame_error_text(void) {
    return detail.text;
}

void frame_error_clear(void) {
    detail.status = FRAME_OK;
    detail.field[0] = detail.value[0] = detail.valid[0] = detail.text[0] = 0;
}
