/* Short ways to set up members in the tests of this room. */
#ifndef FRAME_TESTS_STRENGTH_LUMBER_NAMES_H
#define FRAME_TESTS_STRENGTH_LUMBER_NAMES_H

#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/strength.h>
#include <frame/text.h>
#include <frame/working.h>

static inline frame_species species(const char *name) {
    frame_species id = 0;
    ck_assert_msg(!frame_species_find(name, &id), "%s", frame_error_text());
    return id;
}

static inline frame_grade grade(const char *name) {
    frame_grade id = 0;
    ck_assert_msg(!frame_grade_find(name, &id), "%s", frame_error_text());
    return id;
}

/* Every formula of a working comes to its value. */
static inline void working_is_sound(const frame_working *working) {
    frame_text *text;
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    const frame_status status = frame_working_check(working, text);
    ck_assert_msg(!status, "%s", frame_text_chars(text));
    frame_text_free(text);
}

/* The value a working gives a symbol. */
static inline double value_of(const frame_working *working, const char *symbol) {
    frame_working_step step;
    for (size_t i = 0; i < frame_working_step_count(working); i++) {
        ck_assert_int_eq(frame_working_step_at(working, i, &step), FRAME_OK);
        if (!strcmp(step.symbol, symbol)) return step.value;
    }
    ck_abort_msg("the working has no symbol %s", symbol);
    return 0;
}

/* Within half of the last printed place. */
static inline void printed_as(double ours, double printed, double place, const char *what) {
    ck_assert_msg(fabs(ours - printed) <= place / 2 * (1 + 1e-9), "%s is %.6f, printed %g", what, ours, printed);
}
#define PRINTED(ours, printed, place) printed_as(ours, printed, place, #ours)

/* Equal but for rounding. */
static inline void same(double a, double b, const char *what) {
    ck_assert_msg(fabs(a - b) <= 1e-12 * (fabs(a) + fabs(b)), "%s is %.15g, not %.15g", what, a, b);
}
#define SAME(a, b) same(a, b, #a)

#endif
