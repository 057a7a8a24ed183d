/* Finding a species or a grade by its name or by a grade stamp's spelling of it. */
#include "material/names.h"

#include <string.h>

#include "base/error.h"
#include "base/facts.h"

static int is_filler(char c) {
    return c && strchr(" -_.,()#&/\t", c) != NULL;
}

static char plain(char c) {
    return c >= 'A' && c <= 'Z' ? (char)(c + 32) : c;
}

/* Whether text is the same name as the one that starts at name and ends at a | or with the text. */
static int same_name(const char *text, const char *name) {
    for (;; text++, name++) {
        while (is_filler(*text)) text++;
        while (is_filler(*name)) name++;
        const char c = *name == '|' ? '\0' : *name;
        if (plain(*text) != plain(c)) return 0;
        if (!c) return 1;
    }
}

static int is_empty(const char *text) {
    while (is_filler(*text)) text++;
    return !*text;
}

static int has_spelling(const char *text, const char *spellings) {
    for (const char *next = spellings; next && *next; next = strchr(next, '|')) {
        if (*next == '|') next++;
        if (same_name(text, next)) return 1;
    }
    return 0;
}

static frame_status refuse(const char *field, const char *text, frame_name_at *name_at, size_t count) {
    frame_nearest nearest = {text, NULL, 0};
    char valid[1400] = "";
    size_t used = 0;
    for (size_t i = 0; i < count; i++) {
        const frame_name entry = name_at(i);
        frame_nearest_try(&nearest, entry.name);
        if (*entry.short_name) frame_nearest_try(&nearest, entry.short_name);
        const size_t length = strlen(entry.name);
        if (used + length + 3 > sizeof valid) continue;
        if (used) memcpy(valid + used, ", ", 2), used += 2;
        memcpy(valid + used, entry.name, length + 1), used += length;
    }
    return frame_fail(FRAME_UNKNOWN_NAME, field, text, valid, "%s: \"%s\" is not known%s%s%s; valid is %s", field, text,
                      nearest.best ? "; did you mean \"" : "", nearest.best ? nearest.best : "",
                      nearest.best ? "\"?" : "", valid);
}

frame_status frame_name_find(const char *field, const char *text, frame_name_at *name_at, size_t count, size_t *place) {
    if (!text) return frame_fail(FRAME_REQUIRED, field, "NULL", "a name", "%s: NULL is not a name", field);
    for (size_t i = 0; i < count && !is_empty(text); i++) {
        const frame_name entry = name_at(i);
        if (same_name(text, entry.name) || (*entry.short_name && same_name(text, entry.short_name)) ||
            has_spelling(text, entry.spellings)) {
            *place = i;
            return FRAME_OK;
        }
    }
    return refuse(field, text, name_at, count);
}
