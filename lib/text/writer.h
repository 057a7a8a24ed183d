/* Writing into a frame_text. A failed allocation sticks: write on, and ask once at the end. */
#ifndef FRAME_LIB_TEXT_WRITER_H
#define FRAME_LIB_TEXT_WRITER_H

#include <frame/text.h>

#include "base/printf.h"

void frame_text_add(frame_text *text, const char *chars);
void frame_text_add_bytes(frame_text *text, const char *bytes, size_t length);
/* printf's format, without %f, %e, %g: those follow the locale. */
#if defined(__GNUC__)
__attribute__((format(FRAME_PRINTF, 2, 3)))
#endif
void frame_text_addf(frame_text *text, const char *format, ...);
/* A number with at most so many significant digits, or with fixed decimals. */
void frame_text_add_number(frame_text *text, double value, int digits);
void frame_text_add_fixed(frame_text *text, double value, int decimals);
/* Spaces up to a column, counted in characters from the last line break; at least one space. */
void frame_text_pad(frame_text *text, size_t column);
/* Text escaped for HTML, XML and SVG (also inside quotes). */
void frame_text_add_xml(frame_text *text, const char *chars);
/* Text as a JSON string, with its quotes; a JSON number (null for FRAME_NOT_GIVEN). */
void frame_text_add_json(frame_text *text, const char *chars);
void frame_text_add_json_number(frame_text *text, double value);
/* A CSV cell, quoted where it must be (RFC 4180); the comma between cells is the caller's. */
void frame_text_add_csv(frame_text *text, const char *chars);
/* Cuts back to a length it had before. */
void frame_text_cut(frame_text *text, size_t length);
/* Marks a text as failed: something that belongs into it could not be made. */
void frame_text_fail(frame_text *text);
/* FRAME_OK, or FRAME_NO_MEMORY when any write since the last clear failed. */
frame_status frame_text_state(const frame_text *text);

#endif
