/* Numbers in and out, whatever the process's locale says about decimal points. */
#ifndef FRAME_LIB_BASE_NUMBER_H
#define FRAME_LIB_BASE_NUMBER_H

#include <frame/base.h>

/* Writes value with at most so many significant digits (1..17), shortest form, no exponent between 1e-5 and 1e15.
 * Gives the length; the text is cut to fit (32 bytes always suffice). */
size_t frame_number_print(double value, int digits, char *chars, size_t size);
/* Writes value with exactly so many decimals (0..12); for values of 1e15 and more falls back to the form above. */
size_t frame_number_print_fixed(double value, int decimals, char *chars, size_t size);
/* Reads the number that starts at chars; gives the first character not read, chars itself when there is none. */
const char *frame_number_scan(const char *chars, double *value);

#endif
