/* Breaking lines: formulas where their structure allows, words between words. */
#include "working/columns.h"

#include <string.h>

#include "text/writer.h"

static int is_begin(char c) {
    return ((unsigned char)c & 0xC0u) != 0x80u;
}

size_t frame_columns_width(const char *chars, size_t length) {
    size_t width = 0;
    for (size_t i = 0; i < length; i++) width += (size_t)is_begin(chars[i]);
    return width;
}

/* The width of what stands on the last line. */
static size_t width_now(const frame_text *lines) {
    const char *chars = frame_text_chars(lines), *line = strrchr(chars, '\n');
    line = line ? line + 1 : chars;
    return frame_columns_width(line, strlen(line));
}

static int is_sign(const char *at) {
    static const char *const beyond_ascii[] = {"≤", "≥", "≠"};
    for (int i = 0; i < 3; i++)
        if (strncmp(at, beyond_ascii[i], strlen(beyond_ascii[i])) == 0) return 1;
    return *at && strchr("+-<>=", *at) && at[1] == ' ';
}

/* How willingly a formula is broken before a place: 0 not at all, else more for looser signs. */
static int looseness(const char *at, const char *begin) {
    if (at == begin) return 0;
    if (at[0] == ' ' && (at[-1] == ',' || strncmp(at, " and ", 5) == 0 || strncmp(at, " or ", 4) == 0)) return 4;
    if (at[0] == ' ') return is_sign(at + 1) ? 3 : 2;
    if (strncmp(at, "·", strlen("·")) == 0) return 2;
    return *at == '/' ? 1 : 0;
}

/* Where to break a formula that is too wide: the best place within the width, the whole width if there is none. */
static size_t break_at(const char *formula, size_t width) {
    size_t best = 0, columns = 0, at = 0;
    int best_score = -1000, depth = 0;
    for (; formula[at] && columns <= width; at++) {
        if (!is_begin(formula[at])) continue;
        if (formula[at] == ')') depth--;
        const int loose = looseness(formula + at, formula);
        const int score = loose - 4 * depth - (columns * 5 < width * 2 ? 8 : 0);
        if (loose && score >= best_score) best = at, best_score = score;
        if (formula[at] == '(') depth++;
        columns++;
    }
    if (best) return best;
    while (at > 1 && (columns > width || !is_begin(formula[at]))) columns -= (size_t)is_begin(formula[--at]);
    return at;
}

static void add_spaces(frame_text *lines, size_t count) {
    while (count--) frame_text_add(lines, " ");
}

void frame_columns_formula(frame_text *lines, const char *formula, size_t indent, size_t width) {
    for (;;) {
        const size_t used = width_now(lines), room = width > used + 8 ? width - used : 8;
        if (frame_columns_width(formula, strlen(formula)) <= room || frame_text_state(lines)) break;
        const size_t length = break_at(formula, room);
        frame_text_add_bytes(lines, formula, length);
        frame_text_add(lines, "\n");
        add_spaces(lines, indent);
        formula += length;
        if (*formula == ' ') formula++;
    }
    frame_text_add(lines, formula);
}

void frame_columns_words(frame_text *lines, const char *words, size_t width) {
    while (*words) {
        const size_t length = strcspn(words, " \n"), used = width_now(lines);
        if (used && used + 1 + frame_columns_width(words, length) > width)
            frame_text_add(lines, "\n");
        else if (used)
            frame_text_add(lines, " ");
        frame_text_add_bytes(lines, words, length);
        words += length;
        words += strspn(words, " \n");
    }
}

void frame_columns_join(const char *left, const char *right, size_t column, frame_text *into) {
    while (*left || *right) {
        const size_t of_left = strcspn(left, "\n"), of_right = strcspn(right, "\n");
        frame_text_add_bytes(into, left, of_left);
        if (of_right) {
            frame_text_pad(into, column);
            frame_text_add_bytes(into, right, of_right);
        }
        frame_text_add(into, "\n");
        left += of_left + (left[of_left] == '\n');
        right += of_right + (right[of_right] == '\n');
    }
}
