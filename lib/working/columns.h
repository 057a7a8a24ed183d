/* Two columns of text side by side, each wrapped to its width. */
#ifndef FRAME_LIB_WORKING_COLUMNS_H
#define FRAME_LIB_WORKING_COLUMNS_H

#include <frame/base.h>

/* How many columns a text takes (UTF-8, one column a character). */
size_t frame_columns_width(const char *chars, size_t length);

/* Adds a formula to lines, broken where a formula may be: outside parentheses first, before + and - first. The first
 * line goes on where lines stands; later ones begin with so many spaces. width counts from the begin of a line. */
void frame_columns_formula(frame_text *lines, const char *formula, size_t indent, size_t width);
/* Adds words to lines, broken between words. */
void frame_columns_words(frame_text *lines, const char *words, size_t width);

/* Writes the lines of both side by side, the right ones from a column on. */
void frame_columns_join(const char *left, const char *right, size_t column, frame_text *into);

#endif
