/* How a function fails: it records what was wrong for its thread and returns the status. */
#ifndef FRAME_LIB_BASE_ERROR_H
#define FRAME_LIB_BASE_ERROR_H

#include <frame/base.h>

#include "base/printf.h"

/* Records a failure and returns its status. field: the path of the field ("" if none); value: what was given, as text;
 * valid: what would have been valid; format (printf's, without %f, %e or %g: numbers come as text): the whole message
 * in one line. No argument may be NULL. */
#if defined(__GNUC__)
__attribute__((format(FRAME_PRINTF, 5, 6), cold))
#endif
frame_status
frame_fail(frame_status status, const char *field, const char *value, const char *valid, const char *format, ...);

/* As frame_fail for a number that was refused: "FIELD: 7 is not in VALID". */
#if defined(__GNUC__)
__attribute__((cold))
#endif
frame_status
frame_fail_number(frame_status status, const char *field, double value, const char *valid);

/* Puts a path before the field of the failure just recorded ("roofs[2]." before "slope") and returns its status. */
#if defined(__GNUC__)
__attribute__((format(FRAME_PRINTF, 1, 2), cold))
#endif
frame_status
frame_fail_within(const char *format, ...);

#endif
