/* The words of a mark. */
#include <math.h>
#include <string.h>

#include "base/facts.h"
#include "base/number.h"
#include "text/writer.h"
#include "working/figure.h"
#include "working/lines.h"
#include "working/marking.h"
#include "working/symbol.h"

static void add_symbol(const frame_student *student, size_t at, frame_text *into) {
    const char *name = frame_entry_at(student->w, at)->name;
    frame_symbol_ascii(name, strlen(name), into);
}

void frame_cause_names(const frame_student *student, const frame_cause *cause, frame_text *into) {
    if (cause->cause == FRAME_MARKING_NONE || cause->cause == FRAME_MARKING_SIGN) return;
    if (cause->symbols[0] == FRAME_NO_ROOT) {
        frame_figure_display(cause->factor, into);
        return;
    }
    add_symbol(student, cause->symbols[0], into);
    if (cause->symbols[1] == FRAME_NO_ROOT) return;
    frame_text_add(into, cause->alternatives ? " or " : " and ");
    add_symbol(student, cause->symbols[1], into);
}

/* The names and, for a symbol, its value: "C_r (1.15)". */
static void add_named(const frame_student *student, const frame_cause *cause, frame_text *into) {
    frame_cause_names(student, cause, into);
    if (cause->symbols[0] == FRAME_NO_ROOT || cause->cause == FRAME_MARKING_UNIT) return;
    frame_text_add(into, cause->symbols[1] != FRAME_NO_ROOT && !cause->alternatives ? " (together " : " (");
    frame_figure_display(cause->factor, into);
    frame_text_add(into, ")");
}

static void add_unit_slip(const frame_student *student, const frame_cause *cause, frame_text *into) {
    if (cause->symbols[0] == FRAME_NO_ROOT) {
        frame_text_add(into, cause->inverse ? "as if divided by " : "as if multiplied by ");
        frame_figure_display(cause->factor, into);
        frame_text_add(into, ", a factor between units");
        return;
    }
    frame_text_add(into, "as if ");
    add_named(student, cause, into);
    frame_text_add(into, cause->inverse ? " had been taken in another unit, divided by "
                                        : " had been taken in another unit, times ");
    frame_figure_display(cause->factor, into);
}

static void add_cause(const frame_student *student, const frame_cause *cause, frame_text *into) {
    static const char *const words[][2] = {
        [FRAME_MARKING_LEFT_OUT] = {"as if ", " had been left out"},
        [FRAME_MARKING_TWICE] = {"as if ", " had been used twice"},
        [FRAME_MARKING_INVERTED] = {"as if ", " had been turned over"},
        [FRAME_MARKING_FACTOR] = {"as if multiplied once more by ", ""},
        [FRAME_MARKING_DIVISOR] = {"as if divided once more by ", ""},
        [FRAME_MARKING_SQUARE] = {"as if multiplied by the square of ", ""},
        [FRAME_MARKING_SIGN] = {"only the sign is wrong", ""},
        [FRAME_MARKING_MIXED_UP] = {"it is the value of ", ""},
    };
    if (cause->cause == FRAME_MARKING_UNIT) {
        add_unit_slip(student, cause, into);
        return;
    }
    const int over = cause->cause == FRAME_MARKING_SQUARE && cause->inverse;
    frame_text_add(into, over ? "as if divided by the square of " : words[cause->cause][0]);
    if (cause->cause != FRAME_MARKING_SIGN) add_named(student, cause, into);
    frame_text_add(into, words[cause->cause][1]);
}

/* By how much: "0.8696 of it", "1.15 times it", or the difference where a ratio says nothing. */
static void add_ratio(const frame_marking_line *line, frame_text *into) {
    if (line->ratio == FRAME_NOT_GIVEN || !(line->ratio > 0)) return;
    frame_text_add(into, ", ");
    frame_text_add_number(into, line->ratio, 4);
    frame_text_add(into, line->ratio < 1 ? " of it" : " times it");
}

static void add_expected(const frame_marking_line *line, frame_text *into) {
    frame_entry_value(line->expected, line->unit, into);
}

static void say_differs(const frame_student *student, size_t at, const frame_marking_line *line,
                        const frame_cause *cause, frame_text *into) {
    frame_text_add(into, "differs from ");
    add_expected(line, into);
    add_ratio(line, into);
    if (student->roots[at] != FRAME_NO_ROOT) {
        frame_text_add(into, "; with your ");
        add_symbol(student, student->roots[at], into);
        frame_text_add(into, " it would be ");
        frame_figure_display(line->follows, into);
    }
    if (cause->cause == FRAME_MARKING_NONE) return;
    frame_text_add(into, ": ");
    add_cause(student, cause, into);
}

/* Of one letter only the capitals may differ. The end of the text serves to write the symbols. */
static size_t nearest_symbol(const frame_student *student, const char *typed, frame_text *scratch) {
    size_t found = FRAME_NO_ROOT;
    int distance = 1000;
    const size_t before = frame_text_length(scratch);
    for (size_t i = 0; i < student->w->entries.count; i++) {
        if (!frame_entry_has_value(frame_entry_at(student->w, i))) continue;
        add_symbol(student, i, scratch);
        frame_nearest nearest = {.wanted = typed};
        frame_nearest_try(&nearest, frame_text_chars(scratch) + (frame_text_state(scratch) ? 0 : before));
        if (nearest.best && nearest.distance < distance && (nearest.distance == 0 || typed[1]))
            found = i, distance = nearest.distance;
        frame_text_cut(scratch, before);
    }
    return found;
}

static void say_unknown(const frame_student *student, const frame_marking_line *line, frame_text *into) {
    frame_text_add(into, "is no symbol of this working");
    const size_t nearest = nearest_symbol(student, line->symbol, into);
    if (nearest == FRAME_NO_ROOT) return;
    frame_text_add(into, "; the nearest is ");
    add_symbol(student, nearest, into);
}

void frame_marking_sentence(const frame_student *student, size_t at, const frame_marking_line *line,
                            const frame_cause *cause, frame_text *into) {
    switch (line->verdict) {
        case FRAME_MARKING_AGREES:
            frame_text_add(into, "agrees with ");
            add_expected(line, into);
            break;
        case FRAME_MARKING_ROUNDED:
            frame_text_add(into, "is ");
            add_expected(line, into);
            frame_text_add(into, " rounded; carry more digits");
            break;
        case FRAME_MARKING_FOLLOWS:
            frame_text_add(into, "differs from ");
            add_expected(line, into);
            frame_text_add(into, ", but follows rightly from your ");
            add_symbol(student, student->roots[at], into);
            break;
        case FRAME_MARKING_DIFFERS:
            say_differs(student, at, line, cause, into);
            break;
        default:
            say_unknown(student, line, into);
    }
}
