/* Enough of Check's interface to run the unit tests where Debian has no Check: under wine. Test after test in one process,
 * no time limits; a failure prints its place and ends the test, and the count is what the program returns. */
#ifndef FRAME_TESTS_CHECK_H
#define FRAME_TESTS_CHECK_H

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

typedef void check_function(int);
typedef struct TCase {
    const char *name;
    struct check_test {
        const char *name;
        check_function *run;
        int from, to;
    } tests[200];
    int count;
    void (*before)(void), (*after)(void);
} TCase;
typedef struct Suite {
    TCase *cases[20];
    int count;
} Suite;
typedef struct SRunner {
    Suite *suite;
    int failed;
} SRunner;
enum print_output { CK_SILENT, CK_MINIMAL, CK_NORMAL, CK_VERBOSE, CK_ENV };

static jmp_buf check_out;

__attribute__((noreturn, format(gnu_printf, 3, 4))) static inline void check_fail(const char *file, int line,
                                                                                const char *format, ...) {
    va_list list;
    va_start(list, format);
    printf("%s:%d: ", file, line);
    vprintf(format, list);
    printf("\n");
    va_end(list);
    longjmp(check_out, 1);
}

typedef struct check_named {
    const char *name;
    check_function *run;
} check_named;
#define START_TEST(NAME)                                      \
    static void NAME##_body(int);                             \
    static const check_named NAME##_test = {#NAME, NAME##_body}; \
    static const check_named *const NAME = &NAME##_test;      \
    static void NAME##_body(int _i) {                         \
        (void)_i;
#define END_TEST }

static inline Suite *suite_create(const char *name) {
    (void)name;
    return calloc(1, sizeof(Suite));
}
static inline TCase *tcase_create(const char *name) {
    TCase *made = calloc(1, sizeof *made);
    if (made) made->name = name;
    return made;
}
static inline void suite_add_tcase(Suite *suite, TCase *tcase) { suite->cases[suite->count++] = tcase; }
static inline void tcase_add_loop_test(TCase *tcase, const check_named *test, int from, int to) {
    tcase->tests[tcase->count++] = (struct check_test){test->name, test->run, from, to};
}
static inline void tcase_add_test(TCase *tcase, const check_named *test) { tcase_add_loop_test(tcase, test, 0, 1); }
static inline void tcase_set_timeout(TCase *tcase, double seconds) { (void)tcase, (void)seconds; }
static inline void tcase_add_checked_fixture(TCase *tcase, void (*before)(void), void (*after)(void)) {
    tcase->before = before, tcase->after = after;
}
static inline SRunner *srunner_create(Suite *suite) {
    SRunner *made = calloc(1, sizeof *made);
    if (made) made->suite = suite;
    return made;
}
static inline int check_run(const TCase *tcase, const struct check_test *test, int i) {
    if (setjmp(check_out)) return printf("failed: %s %s %d\n", tcase->name, test->name, i), 1;
    if (tcase->before) tcase->before();
    test->run(i);
    if (tcase->after) tcase->after();
    return 0;
}
static inline void srunner_run_all(SRunner *runner, enum print_output how) {
    int ran = 0;
    (void)how;
    for (int c = 0; c < runner->suite->count; c++)
        for (int t = 0; t < runner->suite->cases[c]->count; t++) {
            const struct check_test *test = &runner->suite->cases[c]->tests[t];
            for (int i = test->from; i < test->to; i++, ran++)
                runner->failed += check_run(runner->suite->cases[c], test, i);
        }
    printf("%d checks, %d failed\n", ran, runner->failed);
}
static inline int srunner_ntests_failed(SRunner *runner) { return runner->failed; }
static inline void srunner_free(SRunner *runner) { free(runner); }

#define check_if(TRUE, ...) ((TRUE) ? (void)0 : check_fail(__FILE__, __LINE__, __VA_ARGS__))
#define ck_assert(X) check_if(X, "%s", #X)
#define ck_assert_msg(X, ...) check_if(X, __VA_ARGS__)
#define ck_abort_msg(...) check_fail(__FILE__, __LINE__, __VA_ARGS__)
#define check_numbers(TYPE, SHOWN, A, OPERATOR, B)                                                            \
    do {                                                                                                      \
        const TYPE check_a = (A), check_b = (B);                                                              \
        check_if(check_a OPERATOR check_b, "%s %s %s: " SHOWN " and " SHOWN, #A, #OPERATOR, #B, check_a, check_b); \
    } while (0)
#define check_int(A, O, B) check_numbers(intmax_t, "%jd", A, O, B)
#define check_uint(A, O, B) check_numbers(uintmax_t, "%ju", A, O, B)
#define check_double(A, O, B) check_numbers(double, "%.17g", A, O, B)
#define ck_assert_int_eq(A, B) check_int(A, ==, B)
#define ck_assert_int_ne(A, B) check_int(A, !=, B)
#define ck_assert_int_lt(A, B) check_int(A, <, B)
#define ck_assert_int_le(A, B) check_int(A, <=, B)
#define ck_assert_int_gt(A, B) check_int(A, >, B)
#define ck_assert_int_ge(A, B) check_int(A, >=, B)
#define ck_assert_uint_eq(A, B) check_uint(A, ==, B)
#define ck_assert_uint_ne(A, B) check_uint(A, !=, B)
#define ck_assert_uint_lt(A, B) check_uint(A, <, B)
#define ck_assert_uint_le(A, B) check_uint(A, <=, B)
#define ck_assert_uint_gt(A, B) check_uint(A, >, B)
#define ck_assert_uint_ge(A, B) check_uint(A, >=, B)
#define ck_assert_double_eq(A, B) check_double(A, ==, B)
#define ck_assert_double_ne(A, B) check_double(A, !=, B)
#define ck_assert_double_lt(A, B) check_double(A, <, B)
#define ck_assert_double_le(A, B) check_double(A, <=, B)
#define ck_assert_double_gt(A, B) check_double(A, >, B)
#define ck_assert_double_ge(A, B) check_double(A, >=, B)
#define ck_assert_double_eq_tol(A, B, TOLERANCE)                                                             \
    do {                                                                                                     \
        const double check_a = (A), check_b = (B);                                                           \
        check_if(fabs(check_a - check_b) <= (TOLERANCE), "%s == %s: %.17g and %.17g", #A, #B, check_a, check_b); \
    } while (0)
#define check_texts(A, OPERATOR, B)                                                                       \
    do {                                                                                                  \
        const char *check_a = (A), *check_b = (B);                                                        \
        check_if(check_a && check_b && strcmp(check_a, check_b) OPERATOR 0, "%s and %s: \"%s\" and \"%s\"", #A, #B, \
                 check_a ? check_a : "(null)", check_b ? check_b : "(null)");                             \
    } while (0)
#define ck_assert_str_eq(A, B) check_texts(A, ==, B)
#define ck_assert_str_ne(A, B) check_texts(A, !=, B)
#define ck_assert_ptr_eq(A, B) check_if((const void *)(A) == (const void *)(B), "%s == %s", #A, #B)
#define ck_assert_ptr_ne(A, B) check_if((const void *)(A) != (const void *)(B), "%s != %s", #A, #B)
#define ck_assert_ptr_null(A) check_if((A) == NULL, "%s is not NULL", #A)
#define ck_assert_ptr_nonnull(A) check_if((A) != NULL, "%s is NULL", #A)
#define ck_assert_mem_eq(A, B, N) check_if(!memcmp(A, B, N), "%s == %s", #A, #B)

#endif
