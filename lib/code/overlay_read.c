/* Local amendments from CSV: every cell checked by the facts of its field; an error says line and column. */
#include <stdio.h>
#include <string.h>

#include <frame/text.h>

#include "base/error.h"
#include "code/overlay.h"

typedef struct reading {
    frame_code_overlay *made;
    const overlay_line *names, *line;
} reading;

static frame_status bad(frame_status status, const overlay_line *line, int i, const char *valid, const char *why) {
    char value[64];
    snprintf(value, sizeof value, "%.60s", i < line->count ? line->cells[i] : "");
    for (char *c = value; *c; c++)
        if ((unsigned char)*c < ' ') *c = ' '; /* a message is one line */
    return frame_fail(status, "csv", value, valid, "csv: line %d, column %d: \"%s\" %s; valid is %s", line->number,
                      i < line->count ? line->columns[i] : 1, value, why, valid);
}

static const char *cell_of(const reading *r, const char *name) {
    for (int i = 0; i < r->names->count && i < r->line->count; i++)
        if (!strcmp(r->names->cells[i], name)) return r->line->cells[i];
    return "";
}

static frame_status read_value(const reading *r, int i, overlay_cell *cell) {
    const frame_field *field = cell->field;
    const char *text = r->line->cells[i];
    int32_t word = 0;
    switch (field->kind) {
        case FRAME_FIELD_TEXT:
            cell->text = text;
            return FRAME_OK;
        case FRAME_FIELD_WORD:
            if (frame_word_find(field->words, text, &word))
                return bad(FRAME_UNKNOWN_NAME, r->line, i, field->valid, "is no word of its field");
            break;
        case FRAME_FIELD_BOOL:
            word = !strcmp(text, "yes");
            if (!word && strcmp(text, "no"))
                return bad(FRAME_UNREADABLE, r->line, i, "yes or no", "is neither yes nor no");
            break;
        default:
            if (!frame_code_overlay_bounds(field, text, cell))
                return bad(FRAME_UNREADABLE, r->line, i, cell->is_figure ? "a number" : "a number, or two as in 30..50",
                           "cannot be read");
            if (!cell->is_figure && (cell->high < field->low || cell->low > field->high))
                return bad(FRAME_OUT_OF_RANGE, r->line, i, field->valid, "can never be asked for");
            if (cell->low < 0 || cell->high > 1e6 ||
                (field->kind == FRAME_FIELD_INTEGER &&
                 (cell->low != floor(cell->low) || cell->high != floor(cell->high))))
                return bad(FRAME_OUT_OF_RANGE, r->line, i,
                           field->kind == FRAME_FIELD_INTEGER ? "a whole number from 0 up" : "0..1000000",
                           "is out of range");
            return FRAME_OK;
    }
    cell->low = cell->high = word;
    return FRAME_OK;
}

static int is_head(const char *name) {
    return !strcmp(name, "lookup") || !strcmp(name, "source") || !strcmp(name, "table") || !strcmp(name, "note");
}

static frame_status read_cell(const reading *r, int i, const frame_calculation *of, overlay_row *row) {
    const char *name = r->names->cells[i];
    char valid[120];
    overlay_cell *cell = &row->cells[row->count];
    if (is_head(name) || !*r->line->cells[i]) return FRAME_OK;
    *cell = (overlay_cell){0};
    cell->field = frame_code_overlay_field(of, name, &cell->is_figure);
    if (!cell->field) {
        snprintf(valid, sizeof valid, "an empty cell: %s knows no %.40s", frame_calculation_name(of), name);
        return bad(FRAME_UNKNOWN_FIELD, r->line, i, valid, "stands under a column that its look-up does not have");
    }
    row->count++;
    return read_value(r, i, cell);
}

static int has_figure(const overlay_row *row, const char *name) {
    for (size_t i = 0; i < row->count; i++)
        if (row->cells[i].is_figure && !strcmp(row->cells[i].field->name, name)) return 1;
    return 0;
}

static int cell_at(const reading *r, const char *name) {
    for (int i = 0; i < r->line->count; i++)
        if (!strcmp(r->names->cells[i], name)) return i;
    return r->line->count;
}

/* What a line of a look-up that answers with a list must name, and that it is there. */
static frame_status check_name(const reading *r, const overlay_row *row) {
    const int joint = !strcmp(row->of->name, "code_fastening"), sheet = !strcmp(row->of->name, "code_sheathing");
    const char *const item = frame_code_overlay_text(row, "item"), *const joins = frame_code_overlay_text(row, "joint");
    if (joint && !frame_code_is_joint(joins))
        return bad(*joins ? FRAME_UNKNOWN_NAME : FRAME_REQUIRED, r->line, cell_at(r, "joint"),
                   "a joint as code_fastening lists it", "is no joint of the fastening schedule");
    if ((joint || sheet) && !*frame_code_overlay_text(row, "fastener"))
        return bad(FRAME_REQUIRED, r->line, r->line->count, "a fastener", "has no fastener");
    if (!joint && !sheet && !*item) return bad(FRAME_REQUIRED, r->line, r->line->count, "an item", "has no item");
    if (!strcmp(row->of->name, "code_stairs") && !frame_code_is_stair_item(item))
        return bad(FRAME_UNKNOWN_NAME, r->line, cell_at(r, "item"), "an item as code_stairs lists it",
                   "is no limit of stairs");
    return FRAME_OK;
}

/* Whether it amends something, and something there is. */
static frame_status check_row(const reading *r, const overlay_row *row) {
    int figures = 0;
    for (size_t i = 0; i < row->count; i++)
        figures += row->cells[i].is_figure && strcmp(row->cells[i].field->name, "item") &&
                   strcmp(row->cells[i].field->name, "joint");
    if (row->of->list_count && check_name(r, row)) return frame_error_status();
    if (!figures)
        return bad(FRAME_REQUIRED, r->line, r->line->count, "a figure of its result, as span_in", "amends nothing");
    if (!strcmp(row->of->name, "code_hole") && !has_figure(row, "verdict"))
        return bad(FRAME_REQUIRED, r->line, r->line->count, "a verdict", "has no verdict");
    return FRAME_OK;
}

/* Quotes that are not closed, or closed too soon. */
static frame_status check_quotes(const overlay_line *line) {
    if (!line->why) return FRAME_OK;
    return bad(FRAME_UNREADABLE, line, line->wrong, "a cell in quotes from end to end, quotes in it doubled",
               line->why);
}

static frame_status read_row(const reading *r) {
    char list[500] = "";
    if (check_quotes(r->line)) return frame_error_status();
    overlay_row row = {.of = frame_code_overlay_look_up(cell_of(r, "lookup"))};
    if (!row.of) {
        frame_code_overlay_look_ups(list, sizeof list);
        return bad(FRAME_UNKNOWN_NAME, r->line, 0, list, "is no look-up that takes amendments");
    }
    if (r->line->count > r->names->count)
        return bad(FRAME_TOO_LARGE, r->line, r->names->count < 64 ? r->names->count : 63, "as many cells as columns",
                   "is one cell too many");
    row.source = cell_of(r, "source");
    row.table = cell_of(r, "table");
    row.note = cell_of(r, "note");
    if (!*row.source)
        return bad(FRAME_REQUIRED, r->line, r->line->count, "where the amendment is from", "has no source");
    row.cells = frame_arena_take(&r->made->arena, (size_t)r->names->count * sizeof *row.cells);
    if (!row.cells) return FRAME_NO_MEMORY;
    for (int i = 0; i < r->line->count; i++)
        if (read_cell(r, i, row.of, &row)) return frame_error_status();
    const frame_status status = check_row(r, &row);
    if (status) return status;
    return frame_array_push(&r->made->rows, &row) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* A column must be a field of some look-up, and stand once. */
static frame_status check_names(const overlay_line *names) {
    int lookup = 0, source = 0, figure;
    if (names->count > 64)
        return frame_fail(FRAME_TOO_LARGE, "csv", "", "64 columns",
                          "csv: line %d: more than 64 columns; valid is 64 columns", names->number);
    for (int i = 0; i < names->count; i++) {
        int known = is_head(names->cells[i]);
        lookup |= !strcmp(names->cells[i], "lookup");
        source |= !strcmp(names->cells[i], "source");
        for (size_t k = 0; !known && k < frame_calculation_count(); k++) {
            const frame_calculation *of = frame_code_overlay_look_up(frame_calculation_name(frame_calculation_at(k)));
            known = of && frame_code_overlay_field(of, names->cells[i], &figure);
        }
        if (!known)
            return bad(FRAME_UNKNOWN_FIELD, names, i, "lookup, source, table, note or a field of a look-up",
                       "is no column");
        for (int k = 0; k < i; k++)
            if (!strcmp(names->cells[k], names->cells[i]))
                return bad(FRAME_CONFLICT, names, i, "each column once", "stands twice");
    }
    if (!lookup || !source)
        return frame_fail(FRAME_REQUIRED, "csv", "", "lookup and source",
                          "csv: line %d: the first line names the columns, lookup and source among them; valid is "
                          "lookup and source",
                          names->number);
    return FRAME_OK;
}

static frame_status read_all(frame_code_overlay *made, const char *csv) {
    overlay_line names, line;
    const reading r = {made, &names, &line};
    int number = 1;
    if (!strncmp(csv, "\xef\xbb\xbf", 3)) csv += 3;
    if (!frame_code_overlay_next_line(&csv, &number, &names, &made->arena))
        return frame_fail(FRAME_REQUIRED, "csv", "", "lines of CSV",
                          "csv: it is empty; valid is lines of CSV, first "
                          "the names of its columns");
    frame_status status = check_quotes(&names);
    if (!status) status = check_names(&names);
    while (!status && frame_code_overlay_next_line(&csv, &number, &line, &made->arena)) status = read_row(&r);
    if (!status && *csv) return FRAME_NO_MEMORY;
    if (!status && !made->rows.count)
        return frame_fail(FRAME_REQUIRED, "csv", "", "a line for each amendment",
                          "csv: there is no amendment after the first line; valid is a line for each amendment");
    return status;
}

frame_status frame_code_overlay_new(const char *csv, frame_code_overlay **overlay) {
    if (!csv)
        return frame_fail(FRAME_REQUIRED, "csv", "", "lines of CSV", "csv: no text was given; valid is lines of CSV");
    if (!overlay) return frame_fail(FRAME_REQUIRED, "overlay", "", "a place for it", "overlay: no place for it");
    if (strlen(csv) > 4u << 20)
        return frame_fail(FRAME_TOO_LARGE, "csv", "", "up to 4 MiB", "csv: more than 4 MiB; valid is up to 4 MiB");
    frame_code_overlay *made = frame_take_zeroed(1, sizeof *made);
    if (!made) return FRAME_NO_MEMORY;
    made->rows.item_size = sizeof(overlay_row);
    const frame_status status = read_all(made, csv);
    if (status) {
        frame_code_overlay_free(made);
        return status;
    }
    *overlay = made;
    return FRAME_OK;
}

void frame_code_overlay_free(frame_code_overlay *overlay) {
    if (!overlay) return;
    frame_arena_give(&overlay->arena);
    frame_array_give(&overlay->rows);
    frame_give(overlay);
}

size_t frame_code_overlay_rows(const frame_code_overlay *overlay) {
    return overlay ? overlay->rows.count : 0;
}
