/** @file text.h
 * A text that grows: every renderer of the library writes into one. Reuse it between calls; free it once.
 */
#ifndef FRAME_TEXT_H
#define FRAME_TEXT_H

#include <frame/base.h>

FRAME_BEGIN

/** Makes an empty text. Free it with frame_text_free. FRAME_NO_MEMORY when the allocator gives nothing. */
FRAME_API frame_status frame_text_new(frame_text **text);
/** Frees a text. NULL is allowed. */
FRAME_API void frame_text_free(frame_text *text);
/** Empties a text and keeps its memory for the next use. */
FRAME_API void frame_text_clear(frame_text *text);
/** Gives the characters, UTF-8, ended by a zero; valid until the text is next written or freed. Never NULL. */
FRAME_API const char *frame_text_chars(const frame_text *text);
/** Gives the number of bytes, without the ending zero. */
FRAME_API size_t frame_text_length(const frame_text *text);
/** Writes a text to a file, whole or not at all: a file that stood there before is replaced only by a complete one.
 * FRAME_NOT_WRITTEN names the path when that fails. */
FRAME_API frame_status frame_text_save(const frame_text *text, const char *path);

/** Reads a number in the notation of C and JSON ("-12.5e3"), whatever the process's locale. *end, unless NULL, is set to
 * the first character not read. FRAME_UNREADABLE when no number starts there; FRAME_OUT_OF_RANGE when it is too large. */
FRAME_API frame_status frame_number_read(const char *chars, const char **end, double *value);
/** Writes a number in the shortest form with at most so many significant digits (1..17; 17 reads back exactly), whatever
 * the locale, into a buffer of size bytes (32 always suffice). FRAME_BUFFER_TOO_SMALL leaves the buffer untouched. */
FRAME_API frame_status frame_number_write(double value, int32_t significant_digits, char *chars, size_t size);

FRAME_END

#endif
