/* A place for a test's files: below TMPDIR, or where the system keeps such things, one for each process. */
#ifndef FRAME_TESTS_SCRATCH_H
#define FRAME_TESTS_SCRATCH_H

#include <stdio.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

static inline const char *scratch_path(char *into, size_t size, const char *name) {
    const char *folder = getenv("TMPDIR");
    snprintf(into, size, "%s/frame-%ld-%s", folder && *folder ? folder : P_tmpdir, (long)getpid(), name);
    return into;
}

/* A new folder there; NULL when it cannot be made. */
static inline const char *scratch_folder(char *into, size_t size, const char *name) {
    return mkdir(scratch_path(into, size, name), 0700) ? NULL : into;
}

#endif
