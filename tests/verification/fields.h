/* Filling an in-struct of any calculation from text, by the facts of its fields. */
#ifndef FRAME_TESTS_FIELDS_H
#define FRAME_TESTS_FIELDS_H

#include <frame/fields.h>

/* Sets a field from a cell: a number, a length in the tape's notation, a slope, a word, yes or no, a text, numbers or
 * words parted by ";", or items parted by ";" whose fields are parted by spaces. An empty cell leaves the field not given. FRAME_UNKNOWN_FIELD when there is no such field. */
frame_status field_set(const frame_struct *facts, void *in, const char *name, const char *text);
/* Gives back what field_set took for lists of numbers. */
void fields_free(const frame_struct *facts, void *in);

#endif
