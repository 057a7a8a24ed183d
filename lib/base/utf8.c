/* UTF-8, character by character. */
#include "base/utf8.h"

#include <string.h>

size_t frame_utf8_length(const char *from) {
    const unsigned char *c = (const unsigned char *)from;
    if (c[0] < 0x80) return 1;
    const size_t length = c[0] >= 0xF0 ? 4 : c[0] >= 0xE0 ? 3 : 2;
    if (c[0] < 0xC2 || c[0] > 0xF4) return 0;
    for (size_t i = 1; i < length; i++)
        if ((c[i] & 0xC0u) != 0x80u) return 0;
    if ((c[0] == 0xE0 && c[1] < 0xA0) || (c[0] == 0xED && c[1] > 0x9F)) return 0;
    if ((c[0] == 0xF0 && c[1] < 0x90) || (c[0] == 0xF4 && c[1] > 0x8F)) return 0;
    if (c[0] == 0xEF && c[1] == 0xBF && c[2] >= 0xBE) return 0;
    return length;
}

int frame_utf8_is_plain(const char *text, size_t *at) {
    for (size_t i = 0; text[i];) {
        const size_t length = frame_utf8_length(text + i);
        if (!length || (unsigned char)text[i] < 0x20 || text[i] == 0x7F) {
            if (at) *at = i;
            return 0;
        }
        i += length;
    }
    return 1;
}

void frame_utf8_trim(char *text) {
    size_t last = strlen(text);
    while (last && ((unsigned char)text[last - 1] & 0xC0u) == 0x80u) last--;
    if (last && !frame_utf8_length(text + last - 1)) text[last - 1] = 0;
}
