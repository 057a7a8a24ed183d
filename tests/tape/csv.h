/* Enough of a CSV reader for the tests of this room: quoted cells, one record a line. */
#ifndef FRAME_TESTS_TAPE_CSV_H
#define FRAME_TESTS_TAPE_CSV_H

#include <stdio.h>
#include <string.h>

enum { CSV_CELLS = 7, CSV_LINE = 1000 };

typedef struct csv_row {
    char line[CSV_LINE], *cells[CSV_CELLS];
    int number;
} csv_row;

/* Takes the cell that starts at at apart in place; gives the start of the next one, NULL after the last. */
static char *csv_cell(char *at) {
    char *to = at;
    const int quoted = *at == '"';
    if (quoted) at++;
    for (; *at; at++) {
        if (quoted && at[0] == '"' && at[1] == '"')
            at++;
        else if (quoted ? at[0] == '"' : at[0] == ',')
            break;
        *to++ = *at;
    }
    if (quoted && *at == '"') at++;
    char *next = *at == ',' ? at + 1 : NULL;
    *to = 0;
    return next;
}

/* Reads the next record; 0 at the end of the file, -1 for a line of some other number of cells. */
static int csv_next(FILE *file, csv_row *row) {
    if (!fgets(row->line, sizeof row->line, file)) return 0;
    row->line[strcspn(row->line, "\r\n")] = 0;
    row->number++;
    char *at = row->line;
    int count = 0;
    while (at && count < CSV_CELLS) {
        row->cells[count] = at;
        at = csv_cell(at);
        count++;
    }
    return !at && count == CSV_CELLS ? 1 : -1;
}

#endif
