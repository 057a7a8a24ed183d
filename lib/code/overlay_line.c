/* Lines of CSV: cells parted by commas, in quotes where they hold commas, quotes or line ends. */
#include <string.h>

#include "base/error.h"
#include "code/overlay.h"

static int at_end(char c) {
    return !c || c == '\n' || c == '\r';
}

/* The end of a cell: past its closing quote, or at the comma or line end after it. */
static const char *end_of(const char *from, int quoted) {
    if (!quoted) {
        while (*from != ',' && !at_end(*from)) from++;
        return from;
    }
    for (from++; *from && (*from != '"' || from[1] == '"'); from++)
        if (*from == '"') from++;
    return from + (*from == '"');
}

/* What stands between the quotes; counts the lines it runs over. */
static void copy_quoted(const char *from, const char *end, char *to, int *number) {
    for (from++; from < end && (*from != '"' || from[1] == '"'); from++) {
        if (*from == '"') from++;
        if (*from == '\n') ++*number;
        *to++ = *from;
    }
    *to = 0;
}

/* One cell, ended by a zero, without the blanks around it. *at moves past it; NULL without memory. *why: what is wrong
 * with its quotes. */
static const char *cell(const char **at, int *number, frame_arena *arena, const char **why) {
    const char *from = *at;
    while (*from == ' ' || *from == '\t') from++;
    const int quoted = *from == '"';
    const char *end = end_of(from, quoted);
    char *text = frame_arena_take(arena, (size_t)(end - from) + 1), *to = text;
    if (!text) return NULL;
    if (quoted) {
        if (end == from + 1 || end[-1] != '"') *why = "has no closing quote";
        copy_quoted(from, end, to, number);
        while (*end == ' ' || *end == '\t') end++;
        if (*end != ',' && !at_end(*end)) *why = "has text after its closing quote";
        while (*end != ',' && !at_end(*end)) end++;
    } else {
        while (from < end) *to++ = *from++;
        while (to > text && (to[-1] == ' ' || to[-1] == '\t')) to--;
        *to = 0;
    }
    *at = end;
    return text;
}

static void skip_line(const char **csv, int *number) {
    while (**csv && **csv != '\n') ++*csv;
    if (**csv == '\n') ++*csv, ++*number;
}

static int is_empty(const char *line) {
    while (*line == ' ' || *line == '\t' || *line == ',') line++;
    return at_end(*line) || *line == '#';
}

int frame_code_overlay_next_line(const char **csv, int *number, overlay_line *line, frame_arena *arena) {
    while (**csv && is_empty(*csv)) skip_line(csv, number);
    line->number = *number;
    line->count = 0;
    line->why = NULL;
    if (!**csv) return 0;
    const char *const start = *csv;
    for (;;) {
        const int column = (int)(*csv - start) + 1;
        const char *why = NULL, *text = cell(csv, number, arena, &why);
        if (!text) return 0;
        if (why && !line->why && line->count < 64) {
            line->why = why;
            line->wrong = line->count;
        }
        if (line->count < 64) {
            line->cells[line->count] = text;
            line->columns[line->count] = column;
        }
        line->count++;
        if (**csv != ',') break;
        ++*csv;
    }
    skip_line(csv, number);
    return 1;
}
