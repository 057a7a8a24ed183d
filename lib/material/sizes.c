/* Nominal sizes of lumber: the menu, their names, and what they are dressed to (PS 20). */
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "material/size_row.h"
#include "material_facts.h"

static frame_size packed(double thickness_in, double width_in) {
    return FRAME_SIZE(thickness_in, width_in);
}

static frame_size size_of(const frame_lumber_sizes_row *row) {
    return packed(row->thickness_in, row->width_in);
}

int frame_size_valid(frame_size size) {
    return frame_size_row(size) != NULL;
}

const char *frame_size_name(frame_size size) {
    const frame_lumber_sizes_row *row = frame_size_row(size);
    return row ? row->name : NULL;
}

size_t frame_size_count(void) {
    return frame_lumber_sizes_rows;
}

frame_size frame_size_at(size_t index) {
    return index < frame_lumber_sizes_rows ? size_of(&frame_lumber_sizes_table[index]) : FRAME_NOT_GIVEN_INT;
}

static const char *skip(const char *text) {
    while (*text == ' ' || *text == '\t' || *text == '"') text++;
    return text;
}

/* A nominal measure: "2", "1.25", "5/4". NULL when there is none. */
static const char *scan_measure(const char *text, double *inches) {
    double below;
    const char *end = frame_number_scan(text, inches);
    if (end == text) return NULL;
    if (*end != '/') return skip(end);
    const char *after = frame_number_scan(end + 1, &below);
    if (after == end + 1 || below <= 0) return NULL;
    *inches /= below;
    return skip(after);
}

/* The mark between the two: x, X, the multiplication sign, or "by". NULL when there is none. */
static const char *scan_by(const char *text) {
    if (*text == 'x' || *text == 'X') return skip(text + 1);
    if (!strncmp(text, "\xc3\x97", 2) || !strncmp(text, "by", 2)) return skip(text + 2);
    return NULL;
}

static int scan_size(const char *text, double *thickness_in, double *width_in) {
    const char *next = scan_measure(skip(text), thickness_in);
    if (next) next = scan_by(next);
    if (next) next = scan_measure(next, width_in);
    return next && !*next && *thickness_in > 0 && *thickness_in < 2000 && *width_in > 0 && *width_in < 2000;
}

/* All sizes of a thickness; some of each where there is none of it. */
static void list_sizes(double thickness_in, char *list, size_t size) {
    size_t used = 0;
    for (size_t i = 0; i < frame_lumber_sizes_rows; i++) {
        const frame_lumber_sizes_row *row = &frame_lumber_sizes_table[i];
        if (row->thickness_in != thickness_in || used + strlen(row->name) + 3 > size) continue;
        used += (size_t)snprintf(list + used, size - used, "%s%s", used ? ", " : "", row->name);
    }
    if (!used) snprintf(list, size, "a nominal size such as 1x6, 5/4x6, 2x4 to 2x16, 4x4 to 4x16, 6x6 to 24x24");
}

static frame_status not_made(const char *text, double thickness_in, double width_in) {
    char valid[240];
    list_sizes(thickness_in, valid, sizeof valid);
    const frame_lumber_sizes_row *turned = frame_size_row(packed(width_in, thickness_in));
    return frame_fail(FRAME_UNKNOWN_NAME, "size", text, valid, "size: %s is not made%s%s%s; valid is %s", text,
                      turned ? "; did you mean \"" : "", turned ? turned->name : "", turned ? "\"?" : "", valid);
}

frame_status frame_size_find(const char *text, frame_size *size) {
    double thickness_in = 0, width_in = 0;
    if (!text) return frame_fail(FRAME_REQUIRED, "size", "NULL", "a nominal size", "size: NULL is not a nominal size");
    if (!size) return frame_fail(FRAME_REQUIRED, "size", "NULL", "a place for the size", "size: no place for the size");
    if (!scan_size(text, &thickness_in, &width_in))
        return frame_fail(FRAME_UNKNOWN_NAME, "size", text, "a nominal size such as 2x10",
                          "size: \"%s\" is not a nominal size such as 2x10", text);
    const frame_lumber_sizes_row *row = frame_size_row(packed(thickness_in, width_in));
    if (!row || row->thickness_in != thickness_in || row->width_in != width_in)
        return not_made(text, thickness_in, width_in);
    *size = size_of(row);
    return FRAME_OK;
}

static frame_status no_such_size(frame_size size) {
    char text[24];
    snprintf(text, sizeof text, "%ld", (long)size);
    return frame_fail(FRAME_UNKNOWN_NAME, "size", text, "FRAME_SIZE(thickness, width) of a size that is made",
                      "size: %s is no size that is made", text);
}

frame_status frame_size_dressed(frame_size size, int green, double *thickness_in, double *width_in) {
    const frame_lumber_sizes_row *row = frame_size_row(size);
    if (!row) return no_such_size(size);
    *thickness_in = green ? row->green_thickness_in : row->dry_thickness_in;
    *width_in = green ? row->green_width_in : row->dry_width_in;
    return FRAME_OK;
}

void frame_size_nominal(frame_size size, double *thickness_in, double *width_in) {
    const frame_lumber_sizes_row *row = frame_size_row(size);
    *thickness_in = row ? row->thickness_in : 0;
    *width_in = row ? row->width_in : 0;
}

frame_known frame_size_known(frame_size size) {
    const frame_lumber_sizes_row *row = frame_size_row(size);
    return row ? row->known : FRAME_KNOWN_MEMORY;
}

frame_size_class frame_size_class_of(frame_size size) {
    const frame_lumber_sizes_row *row = frame_size_row(size);
    return row ? (frame_size_class)row->size_class : FRAME_CLASS_BOARD;
}
