/* UTF-8 as it may stand in whatever the library writes. */
#ifndef FRAME_LIB_BASE_UTF8_H
#define FRAME_LIB_BASE_UTF8_H

#include <stddef.h>

/* The bytes of the UTF-8 character at c (RFC 3629), 0 for what is none: halves of pairs, overlong forms, what lies past
 * U+10FFFF, and the two that XML 1.0 has not. Control characters are characters here. */
size_t frame_utf8_length(const char *c);
/* Whether all of a text is UTF-8 without control characters; else *at is the first byte that is not. */
int frame_utf8_is_plain(const char *text, size_t *at);
/* Takes off the first bytes of a character that a text was cut in. */
void frame_utf8_trim(char *text);

#endif
