/* One published table on its way through the library. */
#ifndef FRAME_TESTS_RUN_H
#define FRAME_TESTS_RUN_H

#include "printed.h"
#include "report.h"
#include "sheet.h"

enum { RUN_OUTPUTS = 16 };

/* One field of the answer that the table prints; its columns, -1 for one that is not there. */
typedef struct output {
    const frame_field *field;
    int printed, differs, unit;
} output;

typedef struct run {
    sheet table;
    const frame_calculation *calculation;
    output outputs[RUN_OUTPUTS];
    size_t output_count;
    int *inputs; /* 1 for each column that is one */
    rounding way;
    double times;
    const char *unit;
    outcome *of;
    int failures; /* differences that are not listed, and listed ones that are none */
} run;

/* Reads the table that a line of the list names, and checks it. Ends the program when the line or the table is no good.
 */
void run_table(run *at, const sheet *list, size_t line, outcome *of);
void run_free(run *at);

#endif
