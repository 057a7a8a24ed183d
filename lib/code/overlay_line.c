/* Lines of CSV: cells parted by commas, in quotes where they hold commas, quotes or line ends. */
#include <string.h>

#include "base/error.h"
#include "code/overlay.h"

static int at_end(char c) {
    return !c || c == '\n' || c == '\r';
}

/* One cell, ended by a zero, without the blanks around it. *at moves past it; NULL without memory. */
static const char *cell(const char **at, int *number, frame_arena *arena) {
    const char *from = *at;
    while (*from == ' ' || *from == '\t') from++;
    const int quoted = *from == '"';
    size_t longest = 0;
    for (const char *c = from; *c && (quoted || (*c != ',' && !at_end(*c))); c++) longest++;
    char *text = frame_arena_take(arena, longest + 1), *to = text;
    if (!text) return NULL;
    if (quoted) {
        for (from++; *from && (*from != '"' || from[1] == '"'); from++) {
            if (*from == '"') from++;
            if (*from == '\n') ++*number;
            *to++ = *from;
        }
        if (*from == '"') from++;
        while (*from && *from != ',' && !at_end(*from)) from++;
    } else {
        while (*from != ',' && !at_end(*from)) *to++ = *from++;
        while (to > text && (to[-1] == ' ' || to[-1] == '\t')) to--;
    }
    *to = 0;
    *at = from;
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
    if (!**csv) return 0;
    const char *const start = *csv;
    for (;;) {
        const int column = (int)(*csv - start) + 1;
        const char *text = cell(csv, number, arena);
        if (!text) return 0;
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
