/* Lists and tables of a language into structs of the library. */
#include <stdio.h>
#include <string.h>

#include "bound.h"

void bound_blank(const bound_struct *of, void *object) {
    if (of->facts->blank)
        memcpy(object, of->facts->blank, of->facts->size);
    else
        frame_struct_blank(of->facts, object);
}

typedef struct filling {
    const bound_host *host;
    const bound_struct *of;
    void *object;
    frame_arena *arena;
} filling;

frame_status bound_take_entry(const bound_host *host, const bound_struct *of, const bound_key *key,
                              const bound_value *value, void *object, frame_arena *arena) {
    const frame_field *fields = of->facts->fields;
    if (!key->name) {
        if (key->place >= (size_t)of->given_count)
            return frame_fail_number(FRAME_TOO_LARGE, of->facts->name, (double)(key->place + 1),
                                     "as many values as it has fields");
        return bound_take_field(host, of, (size_t)of->given[key->place], value, object, arena);
    }
    for (int i = 0; i < of->given_count; i++)
        if (!strcmp(fields[of->given[i]].name, key->name))
            return bound_take_field(host, of, (size_t)of->given[i], value, object, arena);
    return bound_unknown_field(of, key->name);
}

static frame_status put_entry(void *to, const bound_key *key, const bound_value *value) {
    const filling *f = to;
    return bound_take_entry(f->host, f->of, key, value, f->object, f->arena);
}

frame_status bound_take_struct(const bound_host *host, const bound_struct *of, const bound_value *value, void *object,
                               frame_arena *arena) {
    filling to = {host, of, object, arena};
    bound_blank(of, object);
    return host->walk(host, value, put_entry, &to);
}

frame_status bound_take_argument(const bound_host *host, const char *name, const bound_struct *of,
                                 const bound_value *value, void *object, frame_arena *arena) {
    if (value->kind == BOUND_NOTHING) {
        bound_blank(of, object);
        return FRAME_OK;
    }
    if (value->kind != BOUND_MANY)
        return frame_fail(FRAME_WRONG_TYPE, name, value->type, "its values in order, or by name",
                          "%s: %s is not one: give its values in order, or by name", name, value->type);
    return bound_take_struct(host, of, value, object, arena);
}

/* -- lists of structs -- */

typedef struct list_filling {
    const bound_host *host;
    const bound_struct *of;
    const char *name;
    char *items;
    size_t count, filled;
    frame_arena *arena;
} list_filling;

static frame_status not_an_item(const char *list, size_t place, const bound_value *value) {
    char name[128];
    snprintf(name, sizeof name, "%s[%zu]", list, place);
    return frame_fail(FRAME_WRONG_TYPE, name, value->type, "its values in order, or by name",
                      "%s: %s is not an item: give its values in "
                      "order, or by name",
                      name, value->type);
}

static frame_status put_item(void *to, const bound_key *key, const bound_value *value) {
    list_filling *f = to;
    if (key->name || key->place >= f->count) return FRAME_OK; /* refused when it was counted */
    void *item = f->items + key->place * f->of->facts->size;
    f->filled++;
    if (value->kind != BOUND_MANY) return not_an_item(f->name, key->place, value);
    if (bound_take_struct(f->host, f->of, value, item, f->arena))
        return frame_fail_within("%s[%zu].", f->name, key->place);
    return FRAME_OK;
}

/* An element of a name and a number may be given as one entry of a table: {S = 64.2}. */
static int is_pair(const bound_struct *of) {
    const frame_field *fields = of->facts->fields;
    return of->given_count == 2 && fields[of->given[0]].kind == FRAME_FIELD_TEXT &&
           fields[of->given[1]].kind == FRAME_FIELD_NUMBER;
}

static frame_status count_pair(void *to, const bound_key *key, const bound_value *value) {
    (void)value;
    *(size_t *)to += key->name != NULL;
    return FRAME_OK;
}

static frame_status put_pair(void *to, const bound_key *key, const bound_value *value) {
    list_filling *f = to;
    if (!key->name || f->filled >= f->count) return FRAME_OK;
    void *item = f->items + f->filled++ * f->of->facts->size;
    const bound_value name = {.kind = BOUND_TEXT, .text = key->name, .length = strlen(key->name), .type = "a text"};
    bound_blank(f->of, item);
    if (bound_take_field(f->host, f->of, (size_t)f->of->given[0], &name, item, f->arena) ||
        bound_take_field(f->host, f->of, (size_t)f->of->given[1], value, item, f->arena))
        return frame_fail_within("%s.%s.", f->name, key->name);
    return FRAME_OK;
}

static void *room_for(size_t count, size_t size, frame_arena *arena) {
    if (count > ((size_t)1 << 40) / size) {
        frame_fail(FRAME_NO_MEMORY, "", "", "", "no memory");
        return NULL;
    }
    return frame_arena_take(arena, count * size);
}

frame_status bound_take_structs(const bound_host *host, const char *name, const bound_struct *of,
                                const bound_value *value, void **items, size_t *count, frame_arena *arena) {
    int named = 0;
    if (value->kind != BOUND_MANY)
        return frame_fail(FRAME_WRONG_TYPE, name, value->type, "a list", "%s: %s is not a list", name, value->type);
    size_t places = host->count(host, value, &named);
    const int pairs = named && !places && is_pair(of);
    if (named && !pairs)
        return frame_fail(FRAME_WRONG_TYPE, name, value->type, "a list", "%s: a list has no names, only places", name);
    if (pairs) host->walk(host, value, count_pair, &places);
    *items = NULL;
    *count = places;
    if (!places) return FRAME_OK;
    list_filling to = {host, of, name, room_for(places, of->facts->size, arena), places, 0, arena};
    if (!to.items) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < places; i++) bound_blank(of, to.items + i * of->facts->size);
    *items = to.items;
    return host->walk(host, value, pairs ? put_pair : put_item, &to);
}

/* -- lists of numbers -- */

typedef struct number_filling {
    const char *name, *valid;
    bound_notation notation;
    double *numbers;
    size_t count;
} number_filling;

static frame_status put_number(void *to, const bound_key *key, const bound_value *value) {
    number_filling *f = to;
    char name[128];
    if (key->name || key->place >= f->count) return FRAME_OK;
    const int plain = value->kind == BOUND_NUMBER || value->kind == BOUND_INTEGER;
    if (plain && value->number != FRAME_NOT_GIVEN) {
        f->numbers[key->place] = value->number;
        return FRAME_OK;
    }
    snprintf(name, sizeof name, "%s[%zu]", f->name, key->place);
    return bound_take_number(name, f->notation, f->valid, value, &f->numbers[key->place]);
}

frame_status bound_take_numbers(const bound_host *host, const char *name, bound_notation notation, const char *valid,
                                const bound_value *value, const double **numbers, size_t *count, frame_arena *arena) {
    int named = 0;
    if (value->kind != BOUND_MANY)
        return frame_fail(FRAME_WRONG_TYPE, name, value->type, "a list of numbers",
                          "%s: %s is not a list of numbers%s%s", name, value->type, *valid ? "; valid is each " : "",
                          valid);
    const size_t places = host->count(host, value, &named);
    if (named)
        return frame_fail(FRAME_WRONG_TYPE, name, value->type, "a list of numbers",
                          "%s: a list has no names, only places", name);
    *numbers = NULL;
    *count = places;
    if (!places) return FRAME_OK;
    number_filling to = {name, valid, notation, room_for(places, sizeof(double), arena), places};
    if (!to.numbers) return FRAME_NO_MEMORY;
    /* A hole in a list reads as not a number, which the library refuses by its place. */
    for (size_t i = 0; i < places; i++) to.numbers[i] = FRAME_NOT_GIVEN;
    *numbers = to.numbers;
    return host->walk(host, value, put_number, &to);
}

/* -- lists of words -- */

typedef struct word_filling {
    const bound_host *host;
    const char *name;
    int words;
    int32_t *numbers;
    size_t count;
} word_filling;

static frame_status put_word(void *to, const bound_key *key, const bound_value *value) {
    word_filling *f = to;
    char name[128];
    if (key->name || key->place >= f->count) return FRAME_OK;
    snprintf(name, sizeof name, "%s[%zu]", f->name, key->place);
    return bound_take_word(f->host, name, f->words, value, &f->numbers[key->place]);
}

static frame_status take_words(const bound_host *host, const frame_field *facts, int words, const bound_value *value,
                               const int32_t **numbers, size_t *count, frame_arena *arena) {
    int named = 0;
    if (value->kind != BOUND_MANY)
        return frame_fail(FRAME_WRONG_TYPE, facts->name, value->type, "a list of words",
                          "%s: %s is not a list of words; valid is each %s", facts->name, value->type, facts->valid);
    const size_t places = host->count(host, value, &named);
    if (named)
        return frame_fail(FRAME_WRONG_TYPE, facts->name, value->type, "a list of words",
                          "%s: a list has no names, only places", facts->name);
    *numbers = NULL;
    *count = places;
    if (!places) return FRAME_OK;
    word_filling to = {host, facts->name, words, room_for(places, sizeof(int32_t), arena), places};
    if (!to.numbers) return FRAME_NO_MEMORY;
    /* A hole in a list reads as not given, which the library refuses by its place. */
    for (size_t i = 0; i < places; i++) to.numbers[i] = FRAME_NOT_GIVEN_INT;
    *numbers = to.numbers;
    return host->walk(host, value, put_word, &to);
}

/* -- one field -- */

static frame_status take_handle(const bound_host *host, const frame_field *field, const bound_value *value,
                                const void **into) {
    const bound_handle *kind = bound_handle_find(field->words);
    const void *pointer = kind ? host->handle(host, value, kind) : NULL;
    if (!pointer)
        return frame_fail(FRAME_WRONG_TYPE, field->name, value->type, field->valid, "%s: %s is not %s", field->name,
                          value->type, field->valid);
    *into = pointer;
    return FRAME_OK;
}

frame_status bound_take_field(const bound_host *host, const bound_struct *of, size_t field, const bound_value *value,
                              void *object, frame_arena *arena) {
    const frame_field *facts = &of->facts->fields[field];
    const bound_field *bound = &of->fields[field];
    void *place = (char *)object + facts->offset;
    if (value->kind == BOUND_NOTHING) return FRAME_OK;
    switch (facts->kind) {
        case FRAME_FIELD_NUMBER:
            return bound_take_number(facts->name, bound->notation, facts->valid, value, place);
        case FRAME_FIELD_INTEGER:
            return bound_take_integer(facts->name, facts->valid, value, place);
        case FRAME_FIELD_BOOL:
            return bound_take_bool(facts->name, value, place);
        case FRAME_FIELD_WORD:
            return bound_take_word(host, facts->name, bound->words, value, place);
        case FRAME_FIELD_TEXT:
            return bound_take_text(facts->name, value, place, arena);
        case FRAME_FIELD_LIST:
            return bound_take_structs(host, facts->name, bound->element, value, place,
                                      (size_t *)(void *)((char *)object + facts->count_offset), arena);
        case FRAME_FIELD_NUMBERS:
            return bound_take_numbers(host, facts->name, bound->notation, facts->valid, value, place,
                                      (size_t *)(void *)((char *)object + facts->count_offset), arena);
        case FRAME_FIELD_HANDLE:
            return take_handle(host, facts, value, place);
        case FRAME_FIELD_WORDS:
            return take_words(host, facts, bound->words, value, place,
                              (size_t *)(void *)((char *)object + facts->count_offset), arena);
        default:
            return frame_fail(FRAME_INTERNAL, facts->name, "", "", "%s: a field of this kind cannot be given",
                              facts->name);
    }
}
