/* Which printf the compiler is to check formats against: on Windows mingw's own, whose %zu is C's. */
#ifndef FRAME_LIB_BASE_PRINTF_H
#define FRAME_LIB_BASE_PRINTF_H

#if defined(__MINGW32__)
#define FRAME_PRINTF gnu_printf
#else
#define FRAME_PRINTF printf
#endif

#endif
