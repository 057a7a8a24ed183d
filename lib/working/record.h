/* Recording a calculation. The formula stands once, as code; its text is what the reader sees:
 *
 *     FRAME_HEADING(w, "Buckling");
 *     FRAME_GIVEN(w, l_e, in->length_in, "in", "effective length");
 *     FRAME_TABLE(w, E_min, values.e_min_psi, "psi", "modulus for stability", "NDS Supplement 4A");
 *     FRAME_STEP(w, F_cE, 0.822 * E_min / pow(l_e / d, 2), "psi", "critical buckling value", "NDS 3.7.1");
 *     FRAME_CASE(w, "l_e / d <= 50", "within the limit of slenderness", "NDS 3.7.1.4");
 *
 * Each of the first three declares `const double NAME`. With w NULL nothing is called.
 *
 * Names become symbols: what follows the first underscore is the subscript (F_cE; further parts follow a comma:
 * M_max_x; perp and par are written as signs: F_c_perp), a trailing _prime or _star becomes the mark (F_b_prime: F_b'),
 * names of Greek letters become letters (Delta_LL, theta). Keep clear of what <math.h> owns: y0, y1, j0, j1, gamma.
 *
 * What may stand in the formula of a step, since the reader shows it and the check works it out anew: numbers, names
 * recorded before, + - * /, parentheses, comparisons, && || !, ?:, pow sqrt cbrt hypot fabs fmin fmax sin cos tan asin
 * acos atan atan2 exp log log10 floor ceil round, FRAME_PI and FRAME_DEG. Neither in->field nor an array's item: record
 * it as given first. 1 / 3 is zero in C: write 1.0 / 3.
 *
 * The condition of a case is a sentence or, better, a comparison in the same language: then it is shown with its
 * numbers and the check makes sure that it is true.
 *
 * Texts are copied where they may change (unit, meaning, source, title, condition), so they may be made at run time. */
#ifndef FRAME_LIB_WORKING_RECORD_H
#define FRAME_LIB_WORKING_RECORD_H

#include <math.h>

#include <frame/working.h>

#define FRAME_PI 3.14159265358979323846
/* Radians in a degree: sin(theta * FRAME_DEG), atan(rise / run) / FRAME_DEG. */
#define FRAME_DEG (FRAME_PI / 180)

#if defined(__GNUC__)
#define FRAME_RECORDING(w) __builtin_expect((w) != 0, 0)
/* Not "cold": gcc would then take all code beside a call, the calculation itself, for code that hardly ever runs. */
#define FRAME_RECORD_COLD __attribute__((noinline))
/* The instance of a whole calculation that always records: made for size. */
#define FRAME_RECORDED __attribute__((noinline, cold))
#else
#define FRAME_RECORDED
#define FRAME_RECORDING(w) ((w) != 0)
#define FRAME_RECORD_COLD
#endif

/* An input: declares name. */
#define FRAME_GIVEN(w, name, given_value, unit, meaning)                                              \
    const double name = (given_value);                                                                \
    do {                                                                                              \
        if (FRAME_RECORDING(w)) frame_record(w, FRAME_STEP_GIVEN, #name, 0, name, unit, meaning, ""); \
    } while (0)

/* A value of a table, or the result of another calculation: declares name. */
#define FRAME_TABLE(w, name, table_value, unit, meaning, source)                                          \
    const double name = (table_value);                                                                    \
    do {                                                                                                  \
        if (FRAME_RECORDING(w)) frame_record(w, FRAME_STEP_TABLE, #name, 0, name, unit, meaning, source); \
    } while (0)

/* A formula: declares name as its value. */
#define FRAME_STEP(w, name, expr, unit, meaning, source)                                                         \
    const double name = (expr);                                                                                  \
    do {                                                                                                         \
        if (FRAME_RECORDING(w)) frame_record(w, FRAME_STEP_COMPUTED, #name, #expr, name, unit, meaning, source); \
    } while (0)

/* A branch that was taken, and why. Declares nothing. */
#define FRAME_CASE(w, condition_text, taken_text, source)                                 \
    do {                                                                                  \
        if (FRAME_RECORDING(w)) frame_record_case(w, condition_text, taken_text, source); \
    } while (0)

/* The title of what follows. */
#define FRAME_HEADING(w, title)                                 \
    do {                                                        \
        if (FRAME_RECORDING(w)) frame_record_heading(w, title); \
    } while (0)

/* A calculation within a calculation: what is recorded between the two stands one level deeper, and its symbols do not
 * hide those of the outer one once it has ended. */
#define FRAME_ENTER(w)                                 \
    do {                                               \
        if (FRAME_RECORDING(w)) frame_record_enter(w); \
    } while (0)
#define FRAME_LEAVE(w)                                 \
    do {                                               \
        if (FRAME_RECORDING(w)) frame_record_leave(w); \
    } while (0)

/* name and expression must be literals; all other texts are copied. Nothing fails: without memory the working's state
 * says so. */
FRAME_RECORD_COLD void frame_record(frame_working *w, frame_step_kind kind, const char *name, const char *expression,
                                    double value, const char *unit, const char *meaning, const char *source);
FRAME_RECORD_COLD void frame_record_case(frame_working *w, const char *condition, const char *taken,
                                         const char *source);
FRAME_RECORD_COLD void frame_record_heading(frame_working *w, const char *title);
FRAME_RECORD_COLD void frame_record_enter(frame_working *w);
FRAME_RECORD_COLD void frame_record_leave(frame_working *w);

/* Where the record stands, and back to there: a calculation that fails leaves the working as it was. NULL is allowed.
 */
size_t frame_working_mark_position(const frame_working *w);
void frame_working_roll_back(frame_working *w, size_t position);

#endif
