/* JSON's tokens: texts, numbers, names, punctuation. */
#include "building/json.h"

#include <string.h>

#include "base/error.h"
#include "base/number.h"

frame_status frame_json_fail(const frame_json *json, const char *wanted) {
    int line = 1;
    char value[24];
    size_t length = 0;
    for (const char *c = json->begin; c < json->at; c++) line += *c == '\n';
    while (length < sizeof value - 1 && json->at[length] && json->at[length] != '\n')
        value[length] = json->at[length], length++;
    while (length && ((unsigned char)value[length - 1] & 0x80)) length--; /* no character cut in two */
    value[length] = 0;
    return frame_fail(FRAME_UNREADABLE, "", value, wanted, "line %d: expected %s, found %s%s%s", line, wanted,
                      length ? "\"" : "the end", value, length ? "\"" : "");
}

char frame_json_peek(frame_json *json) {
    while (*json->at == ' ' || *json->at == '\t' || *json->at == '\n' || *json->at == '\r') json->at++;
    return *json->at;
}

int frame_json_take(frame_json *json, char c) {
    if (frame_json_peek(json) != c) return 0;
    json->at++;
    return 1;
}

int frame_json_more(frame_json *json, char end, size_t count) {
    if (frame_json_take(json, end)) return 0;
    if (!count) return frame_json_peek(json) ? 1 : -1;
    return frame_json_take(json, ',') ? 1 : -1;
}

static int hex_digit(char c) {
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'a' && c <= 'f') return c - 'a' + 10;
    if (c >= 'A' && c <= 'F') return c - 'A' + 10;
    return -1;
}

/* Four hexadecimal digits; -1 where they are not. */
static long hex_four(const char *c) {
    long value = 0;
    for (int i = 0; i < 4; i++) {
        const int digit = hex_digit(c[i]);
        if (digit < 0) return -1;
        value = value * 16 + digit;
    }
    return value;
}

static char *put_utf8(char *to, long c) {
    if (c < 0x80) {
        *to++ = (char)c;
    } else if (c < 0x800) {
        *to++ = (char)(0xC0 | c >> 6);
        *to++ = (char)(0x80 | (c & 0x3F));
    } else if (c < 0x10000) {
        *to++ = (char)(0xE0 | c >> 12);
        *to++ = (char)(0x80 | (c >> 6 & 0x3F));
        *to++ = (char)(0x80 | (c & 0x3F));
    } else {
        *to++ = (char)(0xF0 | c >> 18);
        *to++ = (char)(0x80 | (c >> 12 & 0x3F));
        *to++ = (char)(0x80 | (c >> 6 & 0x3F));
        *to++ = (char)(0x80 | (c & 0x3F));
    }
    return to;
}

/* A character written with its number, of one or (past 0xFFFF) two parts. 0 and halves of pairs are refused. */
static int take_number(frame_json *json, char **to) {
    long c = hex_four(json->at);
    if (c <= 0 || (c >= 0xDC00 && c < 0xE000)) return 0;
    json->at += 4;
    if (c >= 0xD800 && c < 0xDC00) {
        if (json->at[0] != '\\' || json->at[1] != 'u') return 0;
        const long low = hex_four(json->at + 2);
        if (low < 0xDC00 || low >= 0xE000) return 0;
        json->at += 6;
        c = 0x10000 + ((c - 0xD800) << 10) + (low - 0xDC00);
    }
    *to = put_utf8(*to, c);
    return 1;
}

static int take_escape(frame_json *json, char **to) {
    static const char names[] = "\"\\/bfnrt", means[] = "\"\\/\b\f\n\r\t";
    const char c = *json->at;
    if (!c) return 0;
    json->at++;
    if (c == 'u') return take_number(json, to);
    const char *found = strchr(names, c);
    if (!found) return 0;
    *(*to)++ = means[found - names];
    return 1;
}

frame_status frame_json_text(frame_json *json, const char **text) {
    if (!frame_json_take(json, '"')) return frame_json_fail(json, "a text in quotes");
    size_t room = 1;
    for (const char *c = json->at; *c && *c != '"'; c++) room += 1, c += *c == '\\' && c[1];
    char *made = frame_arena_take(json->arena, room * 2), *to = made;
    if (!made) return FRAME_NO_MEMORY;
    while (*json->at && *json->at != '"') {
        if ((unsigned char)*json->at < 0x20) return frame_json_fail(json, "the text to go on without a line break");
        if (*json->at != '\\')
            *to++ = *json->at++;
        else if (json->at++, !take_escape(json, &to))
            return frame_json_fail(json, "a character after the backslash");
    }
    if (!frame_json_take(json, '"')) return frame_json_fail(json, "the text's closing quote");
    *to = 0;
    *text = made;
    return FRAME_OK;
}

/* RFC 8259's numbers alone: no plus, no leading zero, digits on both sides of the point. */
static int is_number(const char *c, const char *end) {
    const char *digits;
    c += *c == '-';
    digits = c;
    while (*c >= '0' && *c <= '9') c++;
    if (c == digits || (*digits == '0' && c > digits + 1)) return 0;
    if (*c == '.') {
        digits = ++c;
        while (*c >= '0' && *c <= '9') c++;
        if (c == digits) return 0;
    }
    if (*c == 'e' || *c == 'E') {
        c += 1 + (c[1] == '+' || c[1] == '-');
        digits = c;
        while (*c >= '0' && *c <= '9') c++;
        if (c == digits) return 0;
    }
    return c == end;
}

frame_status frame_json_number(frame_json *json, double *number) {
    double value;
    frame_json_peek(json);
    const char *end = frame_number_scan(json->at, &value);
    if (end == json->at || !is_number(json->at, end)) return frame_json_fail(json, "a number");
    json->at = end;
    *number = value;
    return FRAME_OK;
}

frame_status frame_json_name(frame_json *json, int *value) {
    static const struct {
        const char *name;
        int value;
    } names[] = {{"true", 1}, {"false", 0}, {"null", -1}};
    frame_json_peek(json);
    for (int i = 0; i < 3; i++) {
        const size_t length = strlen(names[i].name);
        if (strncmp(json->at, names[i].name, length) != 0) continue;
        json->at += length;
        *value = names[i].value;
        return FRAME_OK;
    }
    return frame_json_fail(json, "true, false or null");
}
