/* The report, in Markdown. */
#include "report.h"

#include <string.h>

#include <frame/text.h>

#include "sheet.h"
#include "text/writer.h"

static const char *const known_words[KNOWN_WAYS] = {"read", "secondary", "memory", "computed"};

int known_of(const char *word) {
    for (int i = 0; i < KNOWN_WAYS; i++)
        if (!strcmp(word, known_words[i])) return i;
    return -1;
}

void outcome_begin(outcome *of, const char *file, const char *calculation, const char *title) {
    *of = (outcome){.file = file, .calculation = calculation, .title = title, .note = ""};
    if (frame_text_new(&of->differing)) stop("verify", 0, "no memory", "");
}

void outcome_end(outcome *of) {
    frame_text_free(of->differing);
}

void outcome_source(outcome *of, const char *source) {
    for (size_t i = 0; i < of->source_count; i++)
        if (!strcmp(of->sources[i], source)) return;
    if (of->source_count == sizeof of->sources / sizeof *of->sources) stop(of->file, 0, "too many sources", source);
    of->sources[of->source_count++] = source;
}

/* A cell of a Markdown table: a bar would end it. */
static void add_cell(frame_text *into, const char *chars) {
    for (; *chars; chars++) frame_text_addf(into, *chars == '|' ? "\\|" : "%c", *chars);
}

void outcome_differs(outcome *of, const char *inputs, const char *printed, const char *ours, const char *why) {
    const char *const cells[] = {inputs, printed, ours, why};
    for (size_t i = 0; i < 4; i++) {
        frame_text_add(of->differing, i ? " | " : "| ");
        add_cell(of->differing, cells[i]);
    }
    frame_text_add(of->differing, " |\n");
}

static void add_counts(frame_text *into, tally counts) {
    frame_text_addf(into, "%zu | %zu | %zu |\n", counts.cells, counts.equal, counts.cells - counts.equal);
}

static void add_summary(frame_text *into, const outcome *outcomes, size_t count) {
    tally seen = {0, 0}, recalled = {0, 0};
    frame_text_add(into, "| table | known | cells checked | equal as printed | differ |\n|---|---|---:|---:|---:|\n");
    for (size_t i = 0; i < count; i++)
        for (int k = 0; k < KNOWN_WAYS; k++) {
            const tally *counts = &outcomes[i].known[k];
            tally *sum = k == KNOWN_READ || k == KNOWN_SECONDARY ? &seen : &recalled;
            if (!counts->cells) continue;
            sum->cells += counts->cells, sum->equal += counts->equal;
            frame_text_addf(into, "| %s | %s | ", outcomes[i].title, known_words[k]);
            add_counts(into, *counts);
        }
    frame_text_add(into, "| **all, read or secondary** | | ");
    add_counts(into, seen);
    frame_text_add(into, "| **all, from memory or computed by rule** | | ");
    add_counts(into, recalled);
}

static void add_table(frame_text *into, const outcome *of) {
    frame_text_addf(into, "\n## %s\n\n`tests/verification/%s.csv`: %s of `%s`.\n", of->title, of->file, of->outputs,
                    of->calculation);
    if (*of->note) frame_text_addf(into, "%s\n", of->note);
    frame_text_add(into, "\nSources:\n\n");
    for (size_t i = 0; i < of->source_count; i++) frame_text_addf(into, "- %s\n", of->sources[i]);
    if (!frame_text_length(of->differing)) {
        frame_text_add(into, "\nEvery cell is equal as printed.\n");
        return;
    }
    frame_text_add(into, "\nWhat differs:\n\n| row | printed | ours | why |\n|---|---|---|---|\n");
    frame_text_add(into, frame_text_chars(of->differing));
}

void report_write(frame_text *into, const outcome *outcomes, size_t count) {
    frame_text_add(into,
                   "# Verification: published values against ours\n\n"
                   "Written by `verify --write` from the tables in tests/verification; the test of the same name fails "
                   "when it is no\n"
                   "longer true. A cell is equal when our figure, rounded as the publication rounds, is the printed "
                   "one to its last\n"
                   "place. What differs is listed with the reason, and must go on differing: a listed difference that "
                   "comes to agree\n"
                   "fails the test too. `read`: the figures were seen in the publication or an official reprint; "
                   "`secondary`: in a\n"
                   "second-hand copy of it; `memory`: recalled, and proof of little by themselves.\n\n");
    add_summary(into, outcomes, count);
    for (size_t i = 0; i < count; i++) add_table(into, &outcomes[i]);
}
