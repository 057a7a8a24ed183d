/* A published table as text: CSV, the first row the column names. Lines that start with # are remarks; some of them
 * speak for the whole table: # set: use = floor                     an input that every row shares; as many such lines
 * as it takes # source: NDS Supplement 2018, table 1B # known: read                          as the column of that name
 *     # note: what a reader of the report should know
 */
#ifndef FRAME_TESTS_SHEET_H
#define FRAME_TESTS_SHEET_H

#include <stddef.h>

enum { SHEET_SETS = 32 };
typedef struct sheet {
    char path[512];
    char *text, *source, *known, *note;
    char *set_names[SHEET_SETS], *set_values[SHEET_SETS];
    size_t sets;
    char **cells;
    int *lines;
    size_t columns, rows;
} sheet;

/* Ends the program with a message when there is no such file or a row has too many or too few cells. */
void sheet_read(sheet *table, const char *path);
void sheet_free(sheet *table);
/* -1 when there is no such column. */
int sheet_column(const sheet *table, const char *name);
const char *sheet_name(const sheet *table, size_t column);
/* "" for column -1. */
const char *sheet_cell(const sheet *table, size_t row, int column);

/* The whole of a file; NULL when there is none. */
char *file_read(const char *path);
/* Ends the program: "path:line: message". */
void stop(const char *path, int line, const char *message, const char *about);
void *must(void *memory);

#endif
