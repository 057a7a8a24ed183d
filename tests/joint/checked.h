/* A call with a working: the formulas recorded come to their values again, and the answer is the same without one. */
#ifndef FRAME_TESTS_JOINT_CHECKED_H
#define FRAME_TESTS_JOINT_CHECKED_H

#include <check.h>
#include <frame/joint.h>
#include <frame/working.h>
#include <math.h>
#include <string.h>

#include "text/writer.h"

#define CLOSE(a, b) ck_assert_double_eq_tol((a) / (b), 1, 1e-12)

#define CHECKED(X, in, out)                                                               \
    do {                                                                                  \
        frame_working *working;                                                           \
        frame_text *said;                                                                 \
        frame_##X##_out plain;                                                            \
        ck_assert(!frame_working_new(&working) && !frame_text_new(&said));                \
        ck_assert_msg(!frame_##X(&(in), &(out), working), "%s", frame_error_text());      \
        ck_assert_msg(!frame_working_check(working, said), "%s", frame_text_chars(said)); \
        ck_assert(!frame_##X(&(in), &plain, NULL));                                       \
        ck_assert_mem_eq(&plain, &(out), sizeof plain);                                   \
        frame_working_free(working);                                                      \
        frame_text_free(said);                                                            \
    } while (0)

/* A call that is refused: with which status, for which field. */
#define REFUSED(X, in, wanted, field)                            \
    do {                                                         \
        frame_##X##_out none;                                    \
        ck_assert_int_eq(frame_##X(&(in), &none, NULL), wanted); \
        ck_assert_str_eq(frame_error_field(), field);            \
    } while (0)

/* The fields of a 16d common nail between members of G 0.5. */
#define NAIL(in)                                             \
    ((in).kind = FRAME_DOWEL_COMMON_NAIL, (in).size = "16d", \
     (in).side_specific_gravity = (in).main_specific_gravity = 0.5)

#endif
