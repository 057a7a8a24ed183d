/* Fasteners by size, from the tables of the standard's appendices I and L. */
#include "joint/fastener.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "joint_facts.h"
#include "table_bending_yield.h"
#include "table_fastener.h"

enum { SIZE_LENGTH = 32, VALID_LENGTH = 320 };

const char *frame_dowel_word(frame_dowel_kind kind) {
    return frame_dowel_kind_words.table[kind - 1].word;
}

static int ends_with(const char *chars, const char *end) {
    const size_t length = strlen(chars), tail = strlen(end);
    return length > tail && !strcmp(chars + length - tail, end);
}

static char lower(char c) {
    return (char)(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
}

/* What people write beside the size itself: "No. 10", "#10", "1/2 in", "16 penny". */
static void plain_size(const char *text, char *plain) {
    static const char *const before[] = {"no.", "no", "#"}, *const after[] = {"inches", "inch", "in.", "in", "\""};
    char chars[SIZE_LENGTH];
    size_t length = 0;
    for (; *text && length + 1 < sizeof chars; text++)
        if (*text != ' ' && *text != '\t') chars[length++] = lower(*text);
    chars[length] = 0;
    const char *start = chars;
    for (size_t i = 0; i < sizeof before / sizeof *before && start == chars; i++)
        if (!strncmp(chars, before[i], strlen(before[i]))) start += strlen(before[i]);
    for (size_t i = 0; i < sizeof after / sizeof *after; i++)
        if (ends_with(start, after[i])) {
            chars[length - strlen(after[i])] = 0;
            break;
        }
    if (ends_with(start, "penny")) {
        length = strlen(start) - strlen("penny") - (size_t)ends_with(start, "-penny");
        memmove(plain, start, length);
        memcpy(plain + length, "d", 2);
    } else {
        memmove(plain, start, strlen(start) + 1);
    }
}

static void take_row(const frame_fastener_row *row, frame_fastener *fastener) {
    *fastener = (frame_fastener){row->diameter_in, row->root_in, row->length_in, row->tip_in,
                                 row->thread_in,   row->known,   row->source};
}

/* The table's rows of a kind stand together; none of a kind that has no sizes. */
static const frame_fastener_row *first_of(frame_dowel_kind kind) {
    const size_t kinds = sizeof frame_fastener_at / sizeof *frame_fastener_at;
    const int place = (size_t)kind < kinds ? frame_fastener_at[kind] : 0;
    return frame_fastener_table + (place ? place - 1 : frame_fastener_rows);
}

static int is_of(const frame_fastener_row *row, frame_dowel_kind kind) {
    return row < frame_fastener_table + frame_fastener_rows && row->kind == kind;
}

static frame_status unknown_size(frame_dowel_kind kind, const char *size) {
    char valid[VALID_LENGTH] = "";
    size_t length = 0;
    for (const frame_fastener_row *row = first_of(kind); is_of(row, kind); row++) {
        const int more = snprintf(valid + length, sizeof valid - length, "%s%s%s", length ? ", " : "",
                                  kind == FRAME_DOWEL_WOOD_SCREW ? "No." : "", row->size);
        if (more < 0 || (size_t)more >= sizeof valid - length) break;
        length += (size_t)more;
    }
    return frame_fail(FRAME_UNKNOWN_NAME, "size", size, valid, "size: \"%.40s\" is not a size of %s; known are %s",
                      size, frame_dowel_word(kind), valid);
}

/* Names of two or three letters: quicker than a call of strcmp for each. */
static int same_name(const char *a, const char *b) {
    while (*a && *a == *b) a++, b++;
    return *a == *b;
}

static const frame_fastener_row *row_named(frame_dowel_kind kind, const char *name) {
    for (const frame_fastener_row *row = first_of(kind); is_of(row, kind); row++)
        if (same_name(row->size, name)) return row;
    return NULL;
}

static const frame_fastener_row *row_of_size(frame_dowel_kind kind, const char *size) {
    const frame_fastener_row *row = row_named(kind, size);
    if (row) return row;
    char plain[SIZE_LENGTH];
    plain_size(size, plain);
    return row_named(kind, plain);
}

int frame_fastener_find_quietly(frame_dowel_kind kind, const char *size, frame_fastener *fastener) {
    const frame_fastener_row *row = row_of_size(kind, size);
    if (row) take_row(row, fastener);
    return row != NULL;
}

static frame_status by_size(frame_dowel_kind kind, const char *size, frame_fastener *fastener) {
    if (kind == FRAME_DOWEL_OTHER_DRIVEN || kind == FRAME_DOWEL_DRIFT_PIN)
        return frame_fail(FRAME_CONFLICT, "size", size, "no size", "size: no sizes are known of %s; give diameter_in",
                          kind == FRAME_DOWEL_DRIFT_PIN ? "drift pins" : "a fastener of another make");
    return frame_fastener_find_quietly(kind, size, fastener) ? FRAME_OK : unknown_size(kind, size);
}

/* Screws and bolts have their root diameter by their nominal one; of a nail only the diameter is known then. */
static void by_diameter(frame_dowel_kind kind, double diameter_in, frame_fastener *fastener) {
    static const double near = 1e-6;
    *fastener = (frame_fastener){diameter_in,     FRAME_NOT_GIVEN,  FRAME_NOT_GIVEN, FRAME_NOT_GIVEN,
                                 FRAME_NOT_GIVEN, FRAME_KNOWN_USER, "given"};
    if (!frame_dowel_is_threaded(kind)) return;
    for (const frame_fastener_row *row = first_of(kind); is_of(row, kind); row++)
        if (fabs(row->diameter_in - diameter_in) <= near) take_row(row, fastener);
}

frame_status frame_fastener_find(frame_dowel_kind kind, const char *size, double diameter_in,
                                 frame_fastener *fastener) {
    const int has_diameter = diameter_in != FRAME_NOT_GIVEN;
    if (size && has_diameter)
        return frame_fail(FRAME_CONFLICT, "diameter_in", "", "size or diameter_in",
                          "diameter_in: size and diameter_in are both given; give one");
    if (!size && !has_diameter)
        return frame_fail(FRAME_REQUIRED, "size", "", "size or diameter_in",
                          "size: neither size nor diameter_in is given");
    if (size) return by_size(kind, size, fastener);
    by_diameter(kind, diameter_in, fastener);
    return FRAME_OK;
}

/* The families of the table, by their first letter: driven, lag, hardened, bolt. */
static int in_family(frame_dowel_kind kind, char family) {
    switch (kind) {
        case FRAME_DOWEL_BOLT:
        case FRAME_DOWEL_DRIFT_PIN:
            return family == 'b';
        case FRAME_DOWEL_RING_SHANK_NAIL:
            return family == 'h';
        case FRAME_DOWEL_LAG_SCREW:
            return family == 'd' || family == 'l';
        case FRAME_DOWEL_OTHER_DRIVEN:
            return 0;
        default:
            return family == 'd';
    }
}

static frame_status no_yield(frame_dowel_kind kind, double nominal_in) {
    char written[32];
    frame_number_print(nominal_in, 6, written, sizeof written);
    return frame_fail(FRAME_NO_VALUE, "bending_yield_psi", "", "a bending yield strength",
                      "bending_yield_psi: not given, and NDS table I1 has none for this fastener: %s, diameter %s in",
                      frame_dowel_word(kind), written);
}

int frame_fastener_yield_quietly(frame_dowel_kind kind, double nominal_in, double *yield_psi, frame_known *known,
                                 const char **source) {
    for (int i = 0; i < frame_bending_yield_rows; i++) {
        const frame_bending_yield_row *row = &frame_bending_yield_table[i];
        if (nominal_in > row->to_in || !in_family(kind, *row->family)) continue;
        if (nominal_in < row->least_in) break;
        *yield_psi = row->yield_psi;
        *known = row->known;
        *source = row->source;
        return 1;
    }
    return 0;
}

frame_status frame_fastener_yield(frame_dowel_kind kind, double nominal_in, double *yield_psi, frame_known *known,
                                  const char **source) {
    if (frame_fastener_yield_quietly(kind, nominal_in, yield_psi, known, source)) return FRAME_OK;
    return no_yield(kind, nominal_in);
}
