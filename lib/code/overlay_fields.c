/* What a column of local amendments may name, and how its cells read as numbers. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include <frame/tape.h>
#include <frame/text.h>

#include "code/overlay.h"

/* The look-up a row is for: one of this room that takes an overlay. */
const frame_calculation *frame_code_overlay_look_up(const char *name) {
    char full[80];
    snprintf(full, sizeof full, "%s%.60s", strncmp(name, "code_", 5) ? "code_" : "", name);
    const frame_calculation *of = frame_calculation_find(full);
    return of && frame_field_find(frame_calculation_in(of), "overlay") ? of : NULL;
}

void frame_code_overlay_look_ups(char *text, size_t size) {
    size_t used = 0;
    for (size_t i = 0; i < frame_calculation_count(); i++) {
        const frame_calculation *of = frame_calculation_at(i);
        if (frame_code_overlay_look_up(frame_calculation_name(of)) != of || used + 40 > size) continue;
        used += (size_t)snprintf(text + used, size - used, "%s%s", used ? ", " : "", frame_calculation_name(of) + 5);
    }
}

static int is_value(int32_t kind) {
    return kind == FRAME_FIELD_NUMBER || kind == FRAME_FIELD_INTEGER || kind == FRAME_FIELD_WORD ||
           kind == FRAME_FIELD_BOOL;
}

/* The field of a column for this row's look-up: what is asked (a condition), or what is answered (a figure); of one
 * that answers with a list, the texts of its items are conditions and their numbers figures. */
const frame_field *frame_code_overlay_field(const frame_calculation *of, const char *name, int *is_figure) {
    const frame_field *field = frame_field_find(frame_calculation_in(of), name);
    *is_figure = 0;
    if (field) return field->need != FRAME_FIELD_RESULT && is_value(field->kind) ? field : NULL;
    *is_figure = 1;
    if (!of->list_count) {
        field = frame_field_find(frame_calculation_out(of), name);
        return field && is_value(field->kind) && strcmp(name, "known") ? field : NULL;
    }
    field = frame_field_find(of->lists[0].facts, name);
    return field && (field->kind == FRAME_FIELD_TEXT || field->kind == FRAME_FIELD_NUMBER ||
                     field->kind == FRAME_FIELD_INTEGER)
               ? field
               : NULL;
}

static int number_of(const frame_field *field, const char *text, double *value) {
    const char *end;
    if (!frame_number_read(text, &end, value) && !*end) return isfinite(*value);
    return !strcmp(field->unit, "in") && !frame_tape_parse(text, value);
}

/* A number, or two parted by "..". */
int frame_code_overlay_bounds(const frame_field *field, const char *text, overlay_cell *cell) {
    const char *dots = cell->is_figure ? NULL : strstr(text, "..");
    char first[64];
    if (!dots) {
        if (!number_of(field, text, &cell->low)) return 0;
        cell->high = cell->low;
        return 1;
    }
    snprintf(first, sizeof first, "%.*s", (int)(dots - text < 60 ? dots - text : 60), text);
    return number_of(field, first, &cell->low) && number_of(field, dots + 2, &cell->high) && cell->low <= cell->high;
}
