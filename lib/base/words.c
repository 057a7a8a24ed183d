/* Lists of words: from a word to its number and back, in any spelling a list knows. */
#include <ctype.h>
#include <string.h>

#include "base/error.h"
#include "base/facts.h"

const frame_words *frame_words_find(const char *name) {
    for (size_t i = 0; name && i < frame_all.words_count; i++)
        if (!strcmp(frame_all.words[i]->name, name)) return frame_all.words[i];
    return NULL;
}

static int lower(char c) {
    return c >= 'A' && c <= 'Z' ? c + 32 : c;
}
static int is_space(char c) {
    return c == ' ' || c == '-' || c == '_';
}

/* Alike but for capitals, and for spaces, hyphens and underscores, which stand for each other. */
static int same_word(const char *a, const char *b, size_t b_length) {
    const char *end = b + b_length;
    for (;; a++, b++) {
        if (!*a || b == end) return !*a && b == end;
        if (is_space(*a) && is_space(*b)) continue;
        if (lower(*a) != lower(*b)) return 0;
    }
}

static int in_others(const char *text, const char *others) {
    while (*others) {
        const char *end = strchr(others, '\n');
        const size_t length = end ? (size_t)(end - others) : strlen(others);
        if (same_word(text, others, length)) return 1;
        others += length + (end != NULL);
    }
    return 0;
}

/* Edit distance with neighbours swapped counted once, for words up to 40 long; longer ones are never near. */
static int distance_of(const char *a, const char *b) {
    const size_t rows = strlen(a), columns = strlen(b);
    int table[42][42];
    if (rows > 40 || columns > 40) return 1000;
    for (size_t i = 0; i <= rows; i++) table[i][0] = (int)i;
    for (size_t j = 0; j <= columns; j++) table[0][j] = (int)j;
    for (size_t i = 1; i <= rows; i++)
        for (size_t j = 1; j <= columns; j++) {
            const int same = lower(a[i - 1]) == lower(b[j - 1]);
            int best = table[i - 1][j - 1] + !same;
            if (table[i - 1][j] + 1 < best) best = table[i - 1][j] + 1;
            if (table[i][j - 1] + 1 < best) best = table[i][j - 1] + 1;
            if (i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) && lower(a[i - 2]) == lower(b[j - 1]) &&
                table[i - 2][j - 2] + 1 < best)
                best = table[i - 2][j - 2] + 1;
            table[i][j] = best;
        }
    return table[rows][columns];
}

void frame_nearest_try(frame_nearest *nearest, const char *candidate) {
    const int distance = distance_of(nearest->wanted, candidate);
    const int most = (int)strlen(nearest->wanted) / 3 + 1;
    if (distance <= most && (!nearest->best || distance < nearest->distance)) {
        nearest->best = candidate;
        nearest->distance = distance;
    }
}

static frame_status refuse(const frame_words *words, const char *text) {
    frame_nearest nearest = {text, NULL, 0};
    char valid[320];
    size_t used = 0;
    for (size_t i = 0; i < words->table_count; i++) {
        const char *word = words->table[i].word;
        frame_nearest_try(&nearest, word);
        if (used + strlen(word) + 6 < sizeof valid) {
            if (used) memcpy(valid + used, ", ", 2), used += 2;
            memcpy(valid + used, word, strlen(word)), used += strlen(word);
        }
    }
    valid[used] = 0;
    return frame_fail(FRAME_UNKNOWN_NAME, words->name, text, valid, "%s: \"%s\" is not known%s%s%s; valid is %s",
                      words->name, text, nearest.best ? "; did you mean \"" : "", nearest.best ? nearest.best : "",
                      nearest.best ? "\"?" : "", valid);
}

frame_status frame_word_find(const char *name, const char *text, int32_t *value) {
    const frame_words *words = frame_words_find(name);
    if (!words)
        return frame_fail(FRAME_UNKNOWN_NAME, "words", name ? name : "", "a word list", "words: no list \"%s\"",
                          name ? name : "");
    if (!text) return frame_fail(FRAME_REQUIRED, name, "NULL", "a word", "%s: NULL is not a word", name);
    if (words->find) return words->find(text, value);
    for (size_t i = 0; i < words->table_count; i++)
        if (same_word(text, words->table[i].word, strlen(words->table[i].word)) ||
            in_others(text, words->table[i].others)) {
            *value = words->table[i].value;
            return FRAME_OK;
        }
    return refuse(words, text);
}

static const frame_word *entry_of(const frame_words *words, int32_t value) {
    for (size_t i = 0; words && i < words->table_count; i++)
        if (words->table[i].value == value) return &words->table[i];
    return NULL;
}

const char *frame_word_text(const char *name, int32_t value) {
    const frame_words *words = frame_words_find(name);
    if (words && words->text) return words->text(value);
    const frame_word *entry = entry_of(words, value);
    return entry ? entry->word : NULL;
}

const char *frame_word_meaning(const char *name, int32_t value) {
    const frame_word *entry = entry_of(frame_words_find(name), value);
    return entry ? entry->meaning : "";
}

size_t frame_word_count(const char *name) {
    const frame_words *words = frame_words_find(name);
    return !words ? 0 : words->count ? words->count() : words->table_count;
}

int32_t frame_word_at(const char *name, size_t index) {
    const frame_words *words = frame_words_find(name);
    if (!words || index >= frame_word_count(name)) return FRAME_NOT_GIVEN_INT;
    return words->at ? words->at(index) : words->table[index].value;
}

const char *frame_status_name(frame_status status) {
    const char *name = frame_word_text("status", status);
    return name ? name : "unknown status";
}

const char *frame_status_text(frame_status status) {
    const char *text = frame_word_meaning("status", status);
    return *text ? text : "The call failed.";
}

size_t frame_status_count(void) {
    return frame_word_count("status");
}

frame_status frame_status_at(size_t index) {
    return index < frame_status_count() ? frame_word_at("status", index) : FRAME_INTERNAL;
}
