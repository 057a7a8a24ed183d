/* What the checks came to, gathered for the report. */
#ifndef FRAME_TESTS_REPORT_H
#define FRAME_TESTS_REPORT_H

#include <frame/base.h>

enum { KNOWN_READ, KNOWN_SECONDARY, KNOWN_MEMORY, KNOWN_COMPUTED, KNOWN_WAYS };
/* -1 for an unknown word. */
int known_of(const char *word);

typedef struct tally {
    size_t cells, equal;
} tally;

/* One table's outcome. */
typedef struct outcome {
    const char *file, *calculation, *title, *note;
    char outputs[200];
    tally known[KNOWN_WAYS];
    const char *sources[64];
    size_t source_count;
    frame_text *differing; /* rows of Markdown */
} outcome;

void outcome_begin(outcome *of, const char *file, const char *calculation, const char *title);
void outcome_end(outcome *of);
void outcome_source(outcome *of, const char *source);
/* A listed difference: which cell, what is printed, what comes out, why. */
void outcome_differs(outcome *of, const char *inputs, const char *printed, const char *ours, const char *why);

/* The whole report. */
void report_write(frame_text *into, const outcome *outcomes, size_t count);

#endif
