/* What a publication prints in a cell, and whether a figure of ours is the same at that precision. */
#ifndef FRAME_TESTS_PRINTED_H
#define FRAME_TESTS_PRINTED_H

#include <frame/fields.h>

/* How the publication rounds. */
typedef enum rounding { ROUND_NEAREST, ROUND_DOWN, ROUND_UP } rounding;
/* ROUND_NEAREST for ""; 0 on success. */
int rounding_of(const char *word, rounding *way);

/* A printed cell: a number or length whose last place is unit ("12-6" is feet and inches, as in span tables), ">26-0"
 * or "<3" for a bound, else a word or a status. */
typedef struct printed {
    const char *text;
    double value, unit;
    int bound; /* '>', '<' or 0 */
    int is_number;
} printed;
/* Reads the cell; unit_text "" takes the last place printed ("13.88": 0.01, "25 5/16": 1/16). 0 on success. */
int printed_read(printed *cell, const char *text, const char *unit_text);

/* Compares; ours is written to text. status is how the calculation came out. */
int printed_agrees(const printed *cell, rounding way, double ours);
/* The figure of a field of an out-struct as a number; 0 when the field holds a word, a text or nothing. */
int figure_of(const frame_field *field, const void *out, double *value);
/* The same as text: a word of a list, a text. */
const char *word_of(const frame_field *field, const void *out);
/* Writes ours to two places beyond the printed one. */
void figure_text(const printed *cell, double ours, char *text, size_t size);

#endif
