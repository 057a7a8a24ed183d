/* Results and help as text. */
#include <string.h>

#include "bound.h"
#include "tape/tape.h"
#include "text/writer.h"

/* -- lists: an item a line, its figures by name; the items a range names stand in its line, each by its first figure
 * and name -- */

static int is_length(const frame_field *field) {
    return field->kind == FRAME_FIELD_NUMBER && !strcmp(field->unit, "in");
}

static void write_number(const frame_field *field, double value, frame_text *into) {
    if (is_length(field) && value > -1e6 && value < 1e6)
        frame_tape_add(into, value, 16);
    else
        frame_text_add_number(into, value, 7);
}

static void write_bits(const bound_result *item, size_t field, frame_text *into) {
    char sentence[512];
    int bit = 0, some = 0;
    for (const char *name; bound_bit(item, field, &bit, &name, sentence, sizeof sentence); some = 1)
        frame_text_addf(into, "%s%s", some ? ", " : "", name);
}

static bound_result item_of(const bound_calculation *of, const frame_answer *answer, int list, size_t place) {
    return (bound_result){.of = of->lists[list],
                          .calculation = of,
                          .list = list,
                          .place = (int)place,
                          .out = (char *)answer->lists[list].items + place * of->lists[list]->facts->size};
}

static void write_brief(const bound_result *item, frame_text *into) {
    const frame_field *fields = item->of->facts->fields;
    const size_t count = item->of->facts->field_count;
    for (size_t i = 0, found = 0; i < count && !found; i++) {
        const bound_given given = bound_read(item->of, i, item->out);
        if ((found = given.worth == BOUND_WORTH_NUMBER)) write_number(&fields[i], given.number, into);
    }
    for (size_t i = 0; i < count; i++) {
        const bound_given given = bound_read(item->of, i, item->out);
        if (fields[i].kind == FRAME_FIELD_TEXT && given.text) frame_text_addf(into, " %s", given.text);
    }
}

static void write_range(const bound_result *item, const frame_answer *answer, size_t field, frame_text *into) {
    const bound_span span = bound_range(item, answer, field);
    for (size_t i = 0; span.list >= 0 && i < span.count; i++) {
        if (i) frame_text_add(into, ", ");
        if (!item->calculation->lists[span.list]) {
            frame_text_add_number(into, ((const double *)answer->lists[span.list].items)[span.first + i], 7);
            continue;
        }
        const bound_result one = item_of(item->calculation, answer, span.list, span.first + i);
        write_brief(&one, into);
    }
}

static void write_figure(const bound_result *item, const frame_answer *answer, size_t field, frame_text *into) {
    const frame_field *facts = &item->of->facts->fields[field];
    const bound_given given = bound_read(item->of, field, item->out);
    if (given.worth == BOUND_WORTH_NOTHING || given.worth == BOUND_WORTH_LIST ||
        (given.worth == BOUND_WORTH_BITS && !given.bits))
        return;
    if (given.worth == BOUND_WORTH_TEXT && strchr(given.text, '\n')) return; /* a block of its own, no part of a line */
    frame_text_addf(into, "  %s ", facts->kind == FRAME_FIELD_RANGE ? facts->words : facts->name);
    switch (given.worth) {
        case BOUND_WORTH_NUMBER:
            write_number(facts, given.number, into);
            break;
        case BOUND_WORTH_TEXT:
            frame_text_add(into, given.text);
            break;
        case BOUND_WORTH_INTEGER:
            frame_text_addf(into, "%d", (int)given.integer);
            break;
        case BOUND_WORTH_BOOL:
            frame_text_add(into, given.integer ? "yes" : "no");
            break;
        case BOUND_WORTH_RANGE:
            write_range(item, answer, field, into);
            break;
        default:
            write_bits(item, field, into);
    }
}

static void write_run(size_t first, size_t last, const frame_text *line, frame_text *into) {
    if (first == last)
        frame_text_addf(into, "  %9zu", first);
    else
        frame_text_addf(into, "  %4zu-%-4zu", first, last);
    frame_text_add(into, frame_text_chars(line));
    frame_text_add(into, "\n");
}

static void write_line(const bound_result *result, int list, size_t place, frame_text *line) {
    const bound_result item = item_of(result->calculation, result->answer, list, place);
    frame_text_clear(line);
    for (size_t f = 0; f < item.of->facts->field_count; f++) write_figure(&item, result->answer, f, line);
}

/* Items alike that follow each other stand in one line. */
static void write_items(const bound_result *result, int list, frame_text *into) {
    const size_t count = result->answer->lists[list].count;
    frame_text *line, *next = NULL;
    if (!count || frame_text_new(&line)) return;
    if (!frame_text_new(&next)) {
        size_t first = 0;
        write_line(result, list, 0, line);
        for (size_t i = 1; i <= count; i++) {
            if (i < count) write_line(result, list, i, next);
            if (i < count && !strcmp(frame_text_chars(line), frame_text_chars(next))) continue;
            write_run(first + 1, i, line, into);
            frame_text *const swapped = line;
            line = next;
            next = swapped;
            first = i;
        }
    }
    frame_text_free(line);
    frame_text_free(next);
}

/* Whether the items of another list show this one's within their lines. */
static int stands_elsewhere(const bound_calculation *of, size_t list) {
    for (size_t other = 0; other < of->calculation->list_count; other++) {
        const frame_struct *facts = of->calculation->lists[other].facts;
        for (size_t f = 0; facts && other != list && f < facts->field_count; f++)
            if (facts->fields[f].kind == FRAME_FIELD_RANGE &&
                !strcmp(facts->fields[f].words, of->calculation->lists[list].plural))
                return 1;
    }
    return 0;
}

static void write_numbers(const bound_result *result, int list, frame_text *into) {
    const frame_array *array = &result->answer->lists[list];
    for (size_t i = 0; i < array->count; i++) {
        frame_text_add(into, i % 8 ? "  " : i ? "\n    " : "    ");
        frame_text_add_number(into, ((const double *)array->items)[i], 10);
    }
    if (array->count) frame_text_add(into, "\n");
}

frame_status bound_result_text(const bound_result *result, frame_text *into) {
    const frame_status status = frame_result_text(result->out, into);
    if (status) return status;
    for (size_t list = 0; result->answer && list < result->calculation->calculation->list_count; list++) {
        if (stands_elsewhere(result->calculation, list)) continue;
        frame_text_addf(into, "%s (%zu)\n", result->calculation->calculation->lists[list].plural,
                        result->answer->lists[list].count);
        if (result->calculation->lists[list])
            write_items(result, (int)list, into);
        else
            write_numbers(result, (int)list, into);
    }
    return frame_text_state(into);
}

/* -- help -- */

/* A sentence of a header without C's spelling: FRAME_OUT_OF_RANGE reads "out of range", frame_beam_check beam_check. */
static void add_plain(frame_text *into, const char *text) {
    while (*text) {
        const int status = !strncmp(text, "FRAME_", 6), name = !strncmp(text, "frame_", 6);
        if (!status && !name) {
            frame_text_add_bytes(into, text++, 1);
            continue;
        }
        text += 6;
        if (status) frame_text_add(into, "\"");
        for (; (*text >= 'A' && *text <= 'Z') || *text == '_' ||
               (name && ((*text >= 'a' && *text <= 'z') || (*text >= '0' && *text <= '9')));
             text++) {
            const char c = status ? (*text == '_' ? ' ' : (char)(*text + ('a' - 'A'))) : *text;
            frame_text_add_bytes(into, &c, 1);
        }
        if (status) frame_text_add(into, "\"");
    }
}

static void help_field(const frame_field *field, frame_text *into) {
    frame_text_addf(into, "  %s", field->name);
    frame_text_pad(into, 26);
    if (field->need == FRAME_FIELD_REQUIRED) frame_text_add(into, "required. ");
    if (field->need == FRAME_FIELD_OPTIONAL) frame_text_add(into, "optional. ");
    if (field->need == FRAME_FIELD_DEFAULT) frame_text_addf(into, "else %s. ", field->fallback_text);
    add_plain(into, field->meaning);
    if (*field->valid && field->need != FRAME_FIELD_RESULT) frame_text_addf(into, " [%s]", field->valid);
    if (*field->unit && field->need == FRAME_FIELD_RESULT) frame_text_addf(into, " [%s]", field->unit);
    frame_text_add(into, "\n");
    for (size_t i = 0; field->element && field->need != FRAME_FIELD_RESULT && i < field->element->field_count; i++) {
        frame_text_add(into, "    .");
        help_field(&field->element->fields[i], into);
    }
}

static void help_struct(const frame_struct *facts, const char *title, frame_text *into) {
    frame_text_addf(into, "%s\n", title);
    for (size_t i = 0; i < facts->field_count; i++) help_field(&facts->fields[i], into);
}

static frame_status help_words(const char *words, frame_text *into) {
    for (size_t i = 0; i < frame_word_count(words); i++) {
        const int32_t value = frame_word_at(words, i);
        frame_text_addf(into, "  %s", frame_word_text(words, value));
        frame_text_pad(into, 26);
        frame_text_addf(into, "%s\n", frame_word_meaning(words, value));
    }
    return frame_text_state(into);
}

frame_status bound_help(const char *name, frame_text *into) {
    const bound_calculation *bound = bound_calculation_find(name);
    const frame_struct *facts = frame_struct_find(name);
    if (!bound && facts) {
        add_plain(into, facts->meaning);
        frame_text_add(into, "\n");
        help_struct(facts, "", into);
        return frame_text_state(into);
    }
    if (!bound && frame_word_count(name)) return help_words(name, into);
    if (!bound) {
        frame_nearest nearest = {name, NULL, 0};
        for (int i = 0; i < bound_calculation_count; i++)
            frame_nearest_try(&nearest, bound_calculations[i]->calculation->name);
        return frame_fail(FRAME_UNKNOWN_NAME, "name", name,
                          nearest.best ? nearest.best : "a calculation or a list of words",
                          "name: no help on \"%s\"%s%s", name, nearest.best ? "; the nearest is " : "",
                          nearest.best ? nearest.best : "");
    }
    const frame_calculation *calculation = bound->calculation;
    frame_text_addf(into, "%s\n\n", name);
    add_plain(into, calculation->meaning);
    frame_text_add(into, "\n\n");
    help_struct(calculation->in, "given", into);
    help_struct(calculation->out, "gives", into);
    for (size_t i = 0; i < calculation->list_count; i++)
        if (calculation->lists[i].facts)
            help_struct(calculation->lists[i].facts, calculation->lists[i].plural, into);
        else
            frame_text_addf(into, "%s\n  a list of numbers\n", calculation->lists[i].plural);
    return frame_text_state(into);
}
