/* A student's answers, marked. */
#ifndef FRAME_LIB_WORKING_MARKING_H
#define FRAME_LIB_WORKING_MARKING_H

#include "working/entries.h"

struct frame_marking {
    frame_array lines; /* of frame_marking_line, their texts in texts */
    frame_arena texts;
    size_t first; /* that differs */
};

/* What the entries come to for the student: each answer stands for its step, and what is computed from it follows. */
typedef struct frame_student {
    const frame_working *w;
    double *values;   /* of each entry */
    size_t *roots;    /* of each entry, the earliest wrong answer it comes from; NO_ROOT for none */
    size_t *answered; /* of each entry, the answer to it; NO_ROOT for none */
    double tolerance;
} frame_student;
#define FRAME_NO_ROOT SIZE_MAX

/* What an answer was marked against, and what would explain it. Symbols are entries of the working. */
typedef struct frame_cause {
    frame_marking_cause cause;
    size_t symbols[2]; /* up to two; NO_ROOT for none */
    int alternatives;  /* 1: either of the two would do; 0: both together */
    int inverse;       /* of a factor between units, or of a square: divided by it */
    double factor;
    double error; /* how far from the answer, relative */
} frame_cause;

/* Works out an entry from the student's values of those before it, where one of them goes back to a wrong answer. Its
 * value must be the recorded one before. */
frame_status frame_student_follow(frame_student *student, size_t at);

/* Searches for what would explain an answer to an entry. expected: what the student's earlier answers lead to. */
frame_status frame_student_explain(const frame_student *student, size_t at, double given, double expected,
                                   frame_cause *cause);
/* How far an answer may be from what explains it, relative: by the digits it was written with. */
double frame_answer_spread(double given, double tolerance);
/* How many decimals a number is written with, as short as it reads back; 0 for whole ones. */
int frame_answer_decimals(double given);

/* The mark in a sentence. */
void frame_marking_sentence(const frame_student *student, size_t at, const frame_marking_line *line,
                            const frame_cause *cause, frame_text *into);
/* The names of what would explain it: "C_D", "C_D and C_r", "12". */
void frame_cause_names(const frame_student *student, const frame_cause *cause, frame_text *into);

#endif
