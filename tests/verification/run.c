/* Running a table: each row into the in-struct, through the calculation, against what is printed. */
#include "run.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <frame/text.h>

#include "base/answer.h"
#include "fields.h"

static void complain(run *at, size_t row, const char *message, const char *about) {
    at->failures++;
    printf("%s:%d: %s%s%s\n", at->table.path, at->table.lines[row], message, *about ? ": " : "", about);
}

static int part(const sheet *table, const char *what, const char *field) {
    char name[120];
    snprintf(name, sizeof name, field ? "%s.%s" : "%s", what, field);
    return sheet_column(table, name);
}

static void add_output(run *at, const char *name, const char *suffix) {
    output *new = &at->outputs[at->output_count++];
    const frame_struct *facts = frame_calculation_out(at->calculation);
    new->field = frame_field_find(facts, name);
    if (!new->field) stop(at->table.path, 1, "the answer has no field", name);
    new->printed = part(&at->table, "printed", suffix);
    new->differs = part(&at->table, "differs", suffix);
    new->unit = part(&at->table, "unit", suffix);
    if (new->printed < 0) stop(at->table.path, 1, "no column of printed figures for", name);
    snprintf(at->of->outputs + strlen(at->of->outputs), sizeof at->of->outputs - strlen(at->of->outputs), "%s`%s`",
             at->output_count > 1 ? ", " : "", name);
}

static void find_outputs(run *at, const char *field) {
    if (*field) {
        add_output(at, field, NULL);
        return;
    }
    for (size_t i = 0; i < at->table.columns; i++)
        if (!strncmp(sheet_name(&at->table, i), "printed.", 8)) {
            if (at->output_count == RUN_OUTPUTS) stop(at->table.path, 1, "too many outputs", "");
            add_output(at, sheet_name(&at->table, i) + 8, sheet_name(&at->table, i) + 8);
        }
}

/* Columns that are no inputs; of the last three also "printed.FIELD" and the like. */
static int is_other(const char *name) {
    static const char *const others[] = {"source", "known", "note", "row", "times", "printed", "differs", "unit"};
    for (size_t k = 0; k < sizeof others / sizeof *others; k++) {
        const size_t length = strlen(others[k]);
        if (!strncmp(name, others[k], length) && (!name[length] || (k > 4 && name[length] == '.'))) return 1;
    }
    return 0;
}

static void find_inputs(run *at) {
    at->inputs = must(calloc(at->table.columns, sizeof *at->inputs));
    for (size_t i = 0; i < at->table.columns; i++) {
        const char *name = sheet_name(&at->table, i);
        at->inputs[i] = !is_other(name);
        if (at->inputs[i] && !frame_field_find(frame_calculation_in(at->calculation), name))
            stop(at->table.path, 1, "no input and no column known", name);
    }
}

static frame_status fill(const run *at, size_t row, void *in) {
    const frame_struct *facts = frame_calculation_in(at->calculation);
    frame_status status = frame_struct_init(facts, in, frame_struct_size(facts));
    for (size_t i = 0; i < at->table.sets && !status; i++)
        status = field_set(facts, in, at->table.set_names[i], at->table.set_values[i]);
    for (size_t i = 0; i < at->table.columns && !status; i++)
        if (at->inputs[i])
            status = field_set(facts, in, sheet_name(&at->table, i), sheet_cell(&at->table, row, (int)i));
    return status;
}

/* Runs the calculation; the figures of an answer that varies in length are copied out of it. */
static frame_status compute(const frame_calculation *calculation, const void *in, void *out) {
    const size_t size = frame_struct_size(frame_calculation_out(calculation));
    if (calculation->run) return calculation->run(in, out, size, NULL);
    frame_answer *answer;
    frame_status status = calculation->solve(in, &answer, NULL);
    if (status) return status;
    status = frame_answer_result(answer, out, size);
    frame_answer_free(answer);
    return status;
}

/* The row, for the report: what the column "row" says, then the inputs: "species DFL, grade SS". */
static void describe(const run *at, size_t row, const output *of, char *text, size_t size) {
    size_t used = (size_t)snprintf(text, size, "%s", sheet_cell(&at->table, row, sheet_column(&at->table, "row")));
    for (size_t i = 0; i < at->table.columns && used < size; i++) {
        const char *cell = sheet_cell(&at->table, row, (int)i);
        if (!*cell || !at->inputs[i]) continue;
        used +=
            (size_t)snprintf(text + used, size - used, "%s%s %s", used ? ", " : "", sheet_name(&at->table, i), cell);
    }
    if (at->output_count > 1 && used < size) snprintf(text + used, size - used, ": %s", of->field->name);
}

/* What the row's own column multiplies our figure by. */
static double row_times(const run *at, size_t row) {
    const char *text = sheet_cell(&at->table, row, sheet_column(&at->table, "times"));
    double times = 1;
    if (*text && frame_number_read(text, NULL, &times))
        stop(at->table.path, at->table.lines[row], "not a number", text);
    return times;
}

/* Whether a cell agrees; ours is our figure or word as text. */
static int agrees(const run *at, size_t row, const printed *cell, const output *of, frame_status status,
                  const void *out, char *ours, size_t size) {
    const double times = at->times * row_times(at, row);
    double figure;
    if (status) {
        snprintf(ours, size, "%s", frame_status_name(status));
        return !strcmp(cell->text, ours);
    }
    if (!figure_of(of->field, out, &figure)) {
        snprintf(ours, size, "%s", word_of(of->field, out));
        return !strcmp(cell->text, ours);
    }
    figure_text(cell, figure * times, ours, size);
    return cell->is_number && printed_agrees(cell, at->way, figure * times);
}

static void judge(run *at, size_t row, const output *of, frame_status status, const void *out) {
    const sheet *table = &at->table;
    const char *text = sheet_cell(table, row, of->printed), *why = sheet_cell(table, row, of->differs);
    const char *unit = *sheet_cell(table, row, of->unit) ? sheet_cell(table, row, of->unit) : at->unit;
    const int column = sheet_column(table, "known"),
              known = known_of(column < 0 ? table->known : sheet_cell(table, row, column));
    char ours[160], inputs[600], line[900];
    printed cell;
    if (!*text) return;
    if (printed_read(&cell, text, unit)) stop(table->path, table->lines[row], "not a figure with its unit", text);
    if (known < 0) stop(table->path, table->lines[row], "not said how it is known", text);
    const int equal = agrees(at, row, &cell, of, status, out, ours, sizeof ours);
    at->of->known[known].cells++, at->of->known[known].equal += (size_t)equal;
    describe(at, row, of, inputs, sizeof inputs);
    snprintf(line, sizeof line, "%s: printed %s, ours %s%s%s", inputs, text, ours, status ? ": " : "",
             status ? frame_error_text() : "");
    if (!equal && !*why) complain(at, row, "differs", line);
    if (equal && *why) complain(at, row, "is listed as different and agrees", line);
    if (!equal && *why) outcome_differs(at->of, inputs, text, ours, why);
}

static void check_row(run *at, size_t row) {
    const frame_struct *in_facts = frame_calculation_in(at->calculation),
                       *out_facts = frame_calculation_out(at->calculation);
    void *in = must(calloc(1, frame_struct_size(in_facts))), *out = must(calloc(1, frame_struct_size(out_facts)));
    frame_status status = fill(at, row, in);
    if (status) stop(at->table.path, at->table.lines[row], "cannot be filled in", frame_error_text());
    status = compute(at->calculation, in, out);
    for (size_t i = 0; i < at->output_count; i++) judge(at, row, &at->outputs[i], status, out);
    const int column = sheet_column(&at->table, "source");
    const char *source = column < 0 ? at->table.source : sheet_cell(&at->table, row, column);
    if (!*source) stop(at->table.path, at->table.lines[row], "no source", "");
    outcome_source(at->of, source);
    fields_free(in_facts, in);
    free(in);
    free(out);
}

void run_table(run *at, const sheet *list, size_t line, outcome *of) {
    const char *cells[7];
    static const char *const columns[] = {"table", "calculation", "output", "unit", "rounding", "times", "title"};
    char path[600];
    for (size_t i = 0; i < 7; i++) cells[i] = sheet_cell(list, line, sheet_column(list, columns[i]));
    snprintf(path, sizeof path, "%.*s%s.csv", (int)(strrchr(list->path, '/') + 1 - list->path), list->path, cells[0]);
    *at = (run){.calculation = frame_calculation_find(cells[1]), .unit = cells[3], .times = 1, .of = of};
    if (!at->calculation) stop(list->path, list->lines[line], "no such calculation", cells[1]);
    if (rounding_of(cells[4], &at->way)) stop(list->path, list->lines[line], "no such rounding", cells[4]);
    if (*cells[5] && frame_number_read(cells[5], NULL, &at->times))
        stop(list->path, list->lines[line], "not a number", cells[5]);
    sheet_read(&at->table, path);
    outcome_begin(of, cells[0], cells[1], cells[6]);
    of->note = at->table.note;
    find_outputs(at, cells[2]);
    find_inputs(at);
    if (!at->table.rows || !at->output_count) stop(path, 1, "nothing to check", "");
    for (size_t row = 0; row < at->table.rows; row++) check_row(at, row);
}

void run_free(run *at) {
    free(at->inputs);
    sheet_free(&at->table);
}
