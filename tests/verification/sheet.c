/* Reading a table as text. */
#include "sheet.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

void stop(const char *path, int line, const char *message, const char *about) {
    fprintf(stderr, "%s:%d: %s%s%s\n", path, line, message, *about ? ": " : "", about);
    exit(2);
}

void *must(void *memory) {
    if (!memory) stop("verify", 0, "no memory", "");
    return memory;
}

char *file_read(const char *path) {
    FILE *file = fopen(path, "rb");
    if (!file) return NULL;
    size_t size = 0, room = 1 << 16, got;
    char *text = must(malloc(room + 1));
    while ((got = fread(text + size, 1, room - size, file)) > 0) {
        size += got;
        if (size == room) text = must(realloc(text, (room *= 2) + 1));
    }
    fclose(file);
    text[size] = 0;
    return text;
}

static char *trimmed(char *text) {
    text += strspn(text, " ");
    for (size_t length = strlen(text); length && text[length - 1] == ' ';) text[--length] = 0;
    return text;
}

static void keep_set(sheet *table, char *text) {
    char *equals = strchr(text, '=');
    if (!equals || table->sets == SHEET_SETS) stop(table->path, 0, "no \"set: FIELD = VALUE\", or too many", text);
    *equals = 0;
    table->set_names[table->sets] = trimmed(text);
    table->set_values[table->sets++] = trimmed(equals + 1);
}

/* A remark "# word: rest" sets one of the table's texts. */
static void remark(sheet *table, char *line) {
    static const char *const words[] = {"source:", "known:", "note:"};
    char **const texts[] = {&table->source, &table->known, &table->note};
    line += strspn(line, "# ");
    if (!strncmp(line, "set:", 4)) keep_set(table, line + 4);
    for (size_t i = 0; i < 3; i++)
        if (!strncmp(line, words[i], strlen(words[i]))) *texts[i] = trimmed(line + strlen(words[i]));
}

/* Takes the cell at *next, without its quotes, ends it with 0 and moves on. Gives whether the row ends with it. */
static int take_cell(char **next, char **cell) {
    char *in = *next, *out = *next;
    int quoted = 0;
    *cell = out;
    for (; *in && (quoted || (*in != ',' && *in != '\n')); in++) {
        if (*in != '"')
            *out++ = *in;
        else if (quoted && in[1] == '"')
            *out++ = *in++;
        else
            quoted = !quoted;
    }
    const int last = *in != ',';
    *next = in + (*in != 0);
    *out = 0;
    return last;
}

static void keep_cell(sheet *table, size_t *used, size_t *room, char *cell) {
    if (*used == *room) table->cells = must(realloc(table->cells, (*room = *room * 2 + 256) * sizeof *table->cells));
    table->cells[(*used)++] = cell;
}

static void keep_line(sheet *table, int line) {
    table->lines = must(realloc(table->lines, (table->rows + 1) * sizeof *table->lines));
    table->lines[table->rows++] = line;
}

static void read_row(sheet *table, char **next, size_t *used, size_t *room, int line) {
    const size_t before = *used;
    char *cell;
    int last;
    do {
        last = take_cell(next, &cell);
        keep_cell(table, used, room, cell);
    } while (!last);
    if (!table->columns)
        table->columns = *used;
    else if (*used - before != table->columns)
        stop(table->path, line, "this row has another number of cells than the first", "");
    else
        keep_line(table, line);
}

void sheet_read(sheet *table, const char *path) {
    *table = (sheet){.source = "", .known = "", .note = ""};
    snprintf(table->path, sizeof table->path, "%s", path);
    if (!(table->text = file_read(path))) stop(path, 0, "cannot be read", "");
    size_t used = 0, room = 0;
    int line = 1;
    for (char *next = table->text; *next; line++) {
        if (*next != '#' && *next != '\n') {
            read_row(table, &next, &used, &room, line);
            continue;
        }
        char *end = strchr(next, '\n');
        if (end) *end = 0;
        if (*next == '#') remark(table, next);
        next = end ? end + 1 : next + strlen(next);
    }
}

void sheet_free(sheet *table) {
    free(table->text);
    free(table->cells);
    free(table->lines);
}

int sheet_column(const sheet *table, const char *name) {
    for (size_t i = 0; i < table->columns; i++)
        if (!strcmp(table->cells[i], name)) return (int)i;
    return -1;
}

const char *sheet_name(const sheet *table, size_t column) {
    return table->cells[column];
}

const char *sheet_cell(const sheet *table, size_t row, int column) {
    return column < 0 ? "" : table->cells[(row + 1) * table->columns + (size_t)column];
}
