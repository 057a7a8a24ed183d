/* Checks published tables against the library and writes docs/verification.md.
 *
 *     verify            checks; fails on a difference that is not listed, on a listed one that is none, and when the
 * report is not current verify --write    the same, and writes the report
 *
 * A new table is a CSV in this folder and a line in tables.csv: the table's name, the calculation, the field it is
 * compared with (columns "printed", and if need be "differs" and "unit"; without a field here, columns "printed.FIELD",
 * "differs.FIELD", "unit.FIELD"), the unit in the last place (empty: as printed), how the publication rounds, what our
 * figure is multiplied by, and the title. Every other column of the table is an input by the name of its field, but for
 * "source", "known", "note" and "row". */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <frame/text.h>

#include "run.h"

enum { TABLES = 200 };

/* Compares the report with the one that stands, or writes it. */
static int settle(const frame_text *report, int write) {
    const char *path = FRAME_TESTS_DIR "/../docs/verification.md";
    if (write) return frame_text_save(report, path) ? (puts(frame_error_text()), 1) : 0;
    char *standing = file_read(path);
    const int current = standing && !strcmp(standing, frame_text_chars(report));
    free(standing);
    if (!current)
        puts(
            "docs/verification.md is not current: run verify --write (in tests/verification of the build) and read "
            "what changed");
    return !current;
}

int main(int count, char **arguments) {
    static run runs[TABLES];
    static outcome outcomes[TABLES];
    const int write = count > 1 && !strcmp(arguments[1], "--write");
    const char *own = count > 1 && !write ? arguments[1] : NULL;
    sheet list;
    frame_text *report;
    int failures = 0;
    sheet_read(&list, own ? own : FRAME_TESTS_DIR "/verification/tables.csv");
    if (list.rows > TABLES || frame_text_new(&report)) stop(list.path, 0, "too many tables", "");
    for (size_t i = 0; i < list.rows; i++) {
        run_table(&runs[i], &list, i, &outcomes[i]);
        failures += runs[i].failures;
    }
    report_write(report, outcomes, list.rows);
    if (!own) failures += settle(report, write);
    for (size_t i = 0; i < list.rows; i++) {
        outcome_end(&outcomes[i]);
        run_free(&runs[i]);
    }
    sheet_free(&list);
    frame_text_free(report);
    return failures != 0;
}
