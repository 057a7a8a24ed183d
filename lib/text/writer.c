/* The text that grows, and the ways to write into it. */
#include "text/writer.h"

#include <errno.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/memory.h"
#include "base/number.h"

struct frame_text {
    char *chars;
    size_t length, capacity;
    frame_status state;
};

frame_status frame_text_new(frame_text **text) {
    frame_text *made = frame_take_zeroed(1, sizeof *made);
    if (!made) return FRAME_NO_MEMORY;
    *text = made;
    return FRAME_OK;
}

void frame_text_free(frame_text *text) {
    if (!text) return;
    frame_give(text->chars);
    frame_give(text);
}

void frame_text_clear(frame_text *text) {
    text->length = 0;
    text->state = FRAME_OK;
    if (text->chars) text->chars[0] = 0;
}

const char *frame_text_chars(const frame_text *text) {
    return text->chars ? text->chars : "";
}
size_t frame_text_length(const frame_text *text) {
    return text->length;
}
frame_status frame_text_state(const frame_text *text) {
    return text->state;
}
void frame_text_fail(frame_text *text) {
    text->state = FRAME_NO_MEMORY;
}

void frame_text_cut(frame_text *text, size_t length) {
    if (length >= text->length) return;
    text->length = length;
    text->chars[length] = 0;
}

static int make_room(frame_text *text, size_t more) {
    if (text->state) return 0;
    if (text->length + more + 1 <= text->capacity) return 1;
    size_t wanted = text->capacity ? text->capacity * 2 : 256;
    while (wanted < text->length + more + 1) wanted *= 2;
    char *chars = frame_retake(text->chars, wanted);
    if (!chars) {
        text->state = FRAME_NO_MEMORY;
        return 0;
    }
    text->chars = chars;
    text->capacity = wanted;
    return 1;
}

void frame_text_add_bytes(frame_text *text, const char *bytes, size_t length) {
    if (!make_room(text, length)) return;
    memcpy(text->chars + text->length, bytes, length);
    text->length += length;
    text->chars[text->length] = 0;
}

void frame_text_add(frame_text *text, const char *chars) {
    frame_text_add_bytes(text, chars, strlen(chars));
}

void frame_text_addf(frame_text *text, const char *format, ...) {
    char small[256];
    va_list list;
    va_start(list, format);
    int length = vsnprintf(small, sizeof small, format, list);
    va_end(list);
    if (length < 0) return;
    if ((size_t)length < sizeof small) {
        frame_text_add_bytes(text, small, (size_t)length);
        return;
    }
    if (!make_room(text, (size_t)length)) return;
    va_start(list, format);
    vsnprintf(text->chars + text->length, (size_t)length + 1, format, list);
    va_end(list);
    text->length += (size_t)length;
}

void frame_text_add_number(frame_text *text, double value, int digits) {
    char written[64];
    frame_number_print(value, digits, written, sizeof written);
    frame_text_add(text, written);
}

void frame_text_add_fixed(frame_text *text, double value, int decimals) {
    char written[64];
    frame_number_print_fixed(value, decimals, written, sizeof written);
    frame_text_add(text, written);
}

void frame_text_pad(frame_text *text, size_t column) {
    size_t at = text->length, width = 0;
    while (at && text->chars[at - 1] != '\n') {
        at--;
        if (((unsigned char)text->chars[at] & 0xC0u) != 0x80u) width++;
    }
    do frame_text_add_bytes(text, " ", 1);
    while (++width < column);
}

void frame_text_add_xml(frame_text *text, const char *chars) {
    for (const char *c = chars; *c; c++) switch (*c) {
            case '&':
                frame_text_add(text, "&amp;");
                break;
            case '<':
                frame_text_add(text, "&lt;");
                break;
            case '>':
                frame_text_add(text, "&gt;");
                break;
            case '"':
                frame_text_add(text, "&quot;");
                break;
            case '\'':
                frame_text_add(text, "&#39;");
                break;
            default:
                frame_text_add_bytes(text, c, 1);
        }
}

void frame_text_add_json(frame_text *text, const char *chars) {
    frame_text_add(text, "\"");
    for (const char *c = chars; *c; c++) {
        const unsigned char u = (unsigned char)*c;
        if (u == '"' || u == '\\')
            frame_text_addf(text, "\\%c", *c);
        else if (u == '\n')
            frame_text_add(text, "\\n");
        else if (u < 0x20)
            frame_text_addf(text, "\\u%04x", u);
        else
            frame_text_add_bytes(text, c, 1);
    }
    frame_text_add(text, "\"");
}

void frame_text_add_json_number(frame_text *text, double value) {
    if (value == FRAME_NOT_GIVEN)
        frame_text_add(text, "null");
    else
        frame_text_add_number(text, value, 15);
}

void frame_text_add_csv(frame_text *text, const char *chars) {
    if (!strpbrk(chars, ",\"\r\n")) {
        frame_text_add(text, chars);
        return;
    }
    frame_text_add(text, "\"");
    for (const char *c = chars; *c; c++) {
        if (*c == '"') frame_text_add(text, "\"");
        frame_text_add_bytes(text, c, 1);
    }
    frame_text_add(text, "\"");
}

/* Writes beside the file first and renames: a reader never meets half of it. */
frame_status frame_text_save(const frame_text *text, const char *path) {
    if (text->state) return frame_fail(FRAME_NO_MEMORY, "", "", "", "no memory");
    char beside[1024];
    if (snprintf(beside, sizeof beside, "%s.part", path) >= (int)sizeof beside)
        return frame_fail(FRAME_NOT_WRITTEN, "path", path, "a shorter path", "path: %s is too long", path);
    FILE *file = fopen(beside, "wb");
    int failed = !file || (text->length && fwrite(text->chars, 1, text->length, file) != text->length);
    if (file && fclose(file)) failed = 1;
    if (!failed && rename(beside, path)) failed = 1;
    if (failed) {
        const char *why = strerror(errno);
        if (file) remove(beside);
        return frame_fail(FRAME_NOT_WRITTEN, "path", path, "a place that can be written", "path: %s: %s", path, why);
    }
    return FRAME_OK;
}

frame_status frame_number_read(const char *chars, const char **end, double *value) {
    double found;
    const char *stop = chars ? frame_number_scan(chars, &found) : chars;
    if (stop == chars)
        return frame_fail(FRAME_UNREADABLE, "chars", chars ? chars : "", "a number", "no number starts at \"%s\"",
                          chars ? chars : "");
    if (!(found <= 1.7976931348623157e308 && found >= -1.7976931348623157e308))
        return frame_fail(FRAME_OUT_OF_RANGE, "chars", chars, "a finite number", "\"%s\" is too large for a number",
                          chars);
    if (end) *end = stop;
    *value = found;
    return FRAME_OK;
}

frame_status frame_number_write(double value, int32_t significant_digits, char *chars, size_t size) {
    char written[64];
    if (significant_digits < 1 || significant_digits > 17)
        return frame_fail_number(FRAME_OUT_OF_RANGE, "significant_digits", significant_digits, "1..17");
    size_t length = frame_number_print(value, significant_digits, written, sizeof written);
    if (length + 1 > size) return frame_fail_number(FRAME_BUFFER_TOO_SMALL, "size", (double)size, "at least 32");
    memcpy(chars, written, length + 1);
    return FRAME_OK;
}
