/* Names of C as the symbols of a formula: F_b_prime is F with the subscript b and a prime. */
#ifndef FRAME_LIB_WORKING_SYMBOL_H
#define FRAME_LIB_WORKING_SYMBOL_H

#include <frame/base.h>

/* Plain ASCII, as a student types it: "F_b'", "Delta_LL". */
void frame_symbol_ascii(const char *name, size_t length, frame_text *into);
/* For reading, in UTF-8: Delta_LL becomes "Δ_LL", F_c_perp "F_c⊥"; a prime stays the plain one. */
void frame_symbol_display(const char *name, size_t length, frame_text *into);
/* MathML. */
void frame_symbol_mathml(const char *name, size_t length, frame_text *into);

/* Tells whether a symbol, however it is typed ("F_b'", "Fb′", "F_b_prime", "Δ_LL"), means a name. */
int frame_symbol_means(const char *typed, const char *name);

#endif
