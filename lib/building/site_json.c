/* A description as JSON: read and written by the facts of its fields, so that a field added to a header is in the file.
 */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "building/json.h"
#include "building/site.h"
#include "building_facts.h"
#include "text/writer.h"

/* -- reading -- */

static frame_status read_part(frame_json *json, frame_site *site, frame_site_part kind, size_t place) {
    union {
        frame_part_level level;
        frame_part_wall wall;
        frame_part_opening opening;
        frame_part_floor floor;
        frame_part_floor_opening floor_opening;
        frame_part_stair stair;
        frame_part_beam beam;
        frame_part_post post;
        frame_part_roof roof;
        frame_part_snow_step snow_step;
        frame_part_load load;
    } part;
    char path[64];
    frame_status status = frame_json_struct(json, frame_site_lists[kind].facts, &part);
    if (!status) status = frame_site_add(site, kind, &part);
    if (!status || status == FRAME_NO_MEMORY) return status;
    snprintf(path, sizeof path, "%s[%zu]", frame_site_lists[kind].plural, place);
    return frame_json_within(path);
}

static frame_status read_parts(frame_json *json, frame_site *site, frame_site_part kind) {
    int more;
    size_t count = 0;
    if (!frame_json_take(json, '[')) return frame_json_fail(json, "a list [");
    while ((more = frame_json_more(json, ']', count)) > 0) {
        const frame_status status = read_part(json, site, kind, count++);
        if (status) return status;
    }
    return more < 0 ? frame_json_fail(json, "a comma, or ] at the end of the list") : FRAME_OK;
}

static int part_named(const char *key) {
    for (int kind = 0; kind < FRAME_SITE_PARTS; kind++)
        if (!strcmp(frame_site_lists[kind].plural, key)) return kind;
    return -1;
}

/* What stands beside a key: a list of parts, or one of the site's conditions. */
static frame_status read_entry(frame_json *json, frame_site *site, uint64_t *seen, unsigned *lists) {
    const char *key;
    const frame_field *field;
    frame_status status = frame_json_text(json, &key);
    if (!status && !frame_json_take(json, ':')) status = frame_json_fail(json, "a colon after the field's name");
    if (status) return status;
    const int kind = part_named(key);
    if (kind < 0) {
        status = frame_json_key(&frame_site_conditions_facts, key, seen, &field);
        return status ? status : frame_json_field(json, &frame_site_conditions_facts, field, &site->conditions);
    }
    if (*lists >> kind & 1) return frame_fail(FRAME_CONFLICT, key, key, "given once", "%s: is given twice", key);
    *lists |= 1u << kind;
    status = read_parts(json, site, (frame_site_part)kind);
    return status && !*frame_error_field() ? frame_json_within(key) : status;
}

static frame_status read_site(frame_json *json, frame_site *site) {
    uint64_t seen = 0, assumed = 0;
    unsigned lists = 0;
    int more;
    frame_site_conditions read;
    if (!frame_json_take(json, '{')) return frame_json_fail(json, "an object {");
    for (size_t count = 0; (more = frame_json_more(json, '}', count)) > 0; count++) {
        const frame_status status = read_entry(json, site, &seen, &lists);
        if (status) return status;
    }
    if (more < 0) return frame_json_fail(json, "a comma, or } at the end of the object");
    if (frame_json_peek(json)) return frame_json_fail(json, "nothing after the description");
    const frame_status status = frame_site_conditions_read(&site->conditions, &read, &assumed);
    return status ? status : frame_site_check_texts(&frame_site_conditions_facts, &site->conditions);
}

frame_status frame_site_from_json(const char *json, frame_site **site) {
    if (!json) return frame_fail(FRAME_REQUIRED, "json", "NULL", "a description", "json: NULL is no description");
    if (!site) return frame_fail(FRAME_REQUIRED, "site", "NULL", "a place for the site", "site: NULL is no place");
    frame_site *made = frame_site_blank();
    if (!made) return FRAME_NO_MEMORY;
    frame_json from = {json, json, &made->arena};
    const frame_status status = read_site(&from, made);
    if (status)
        frame_site_free(made);
    else
        *site = made;
    return status;
}

/* -- writing -- */

static void write_struct(frame_text *into, const frame_struct *facts, const void *object);

static void write_word(frame_text *into, const char *words, int32_t value) {
    frame_text_add_json(into, frame_word_text(words, value));
}

static void write_list(frame_text *into, const frame_field *field, const void *object) {
    const char *items = *(const char *const *)(const void *)((const char *)object + field->offset);
    const size_t count = *(const size_t *)(const void *)((const char *)object + field->count_offset);
    frame_text_add(into, "[");
    for (size_t i = 0; i < count; i++) {
        if (i) frame_text_add(into, ", ");
        if (field->kind == FRAME_FIELD_NUMBERS)
            frame_text_add_number(into, ((const double *)(const void *)items)[i], 17);
        else if (field->kind == FRAME_FIELD_WORDS)
            write_word(into, field->words, ((const int32_t *)(const void *)items)[i]);
        else
            write_struct(into, field->element, items + i * field->element->size);
    }
    frame_text_add(into, "]");
}

/* Whether a field was given. */
static int is_given(const frame_field *field, const void *object) {
    const char *place = (const char *)object + field->offset;
    if (field->need == FRAME_FIELD_RESULT || field->kind == FRAME_FIELD_HANDLE) return 0;
    switch (field->kind) {
        case FRAME_FIELD_NUMBER:
            return frame_given_at((const double *)(const void *)place);
        case FRAME_FIELD_TEXT:
            return *(const char *const *)(const void *)place != NULL;
        case FRAME_FIELD_LIST:
        case FRAME_FIELD_NUMBERS:
        case FRAME_FIELD_WORDS:
            return *(const size_t *)(const void *)((const char *)object + field->count_offset) > 0;
        default:
            return *(const int32_t *)(const void *)place != FRAME_NOT_GIVEN_INT;
    }
}

static void write_field(frame_text *into, const frame_field *field, const void *object) {
    const void *place = (const char *)object + field->offset;
    frame_text_add_json(into, field->name);
    frame_text_add(into, ": ");
    switch (field->kind) {
        case FRAME_FIELD_NUMBER:
            frame_text_add_number(into, *(const double *)place, 17);
            break;
        case FRAME_FIELD_TEXT:
            frame_text_add_json(into, *(const char *const *)place);
            break;
        case FRAME_FIELD_WORD:
            write_word(into, field->words, *(const int32_t *)place);
            break;
        case FRAME_FIELD_BOOL:
            frame_text_add(into, *(const int32_t *)place ? "true" : "false");
            break;
        case FRAME_FIELD_INTEGER:
            frame_text_addf(into, "%d", (int)*(const int32_t *)place);
            break;
        default:
            write_list(into, field, object);
    }
}

static void write_fields(frame_text *into, const frame_struct *facts, const void *object, const char *between) {
    int written = 0;
    for (size_t i = 0; i < facts->field_count; i++) {
        if (!is_given(&facts->fields[i], object)) continue;
        if (written++) frame_text_add(into, between);
        write_field(into, &facts->fields[i], object);
    }
}

static void write_struct(frame_text *into, const frame_struct *facts, const void *object) {
    frame_text_add(into, "{");
    write_fields(into, facts, object, ", ");
    frame_text_add(into, "}");
}

frame_status frame_site_json(const frame_site *site, frame_text *into) {
    if (!site) return frame_fail(FRAME_REQUIRED, "site", "NULL", "a site", "site: NULL is no site");
    frame_text_add(into, "{\n ");
    write_fields(into, &frame_site_conditions_facts, &site->conditions, ",\n ");
    for (int kind = 0; kind < FRAME_SITE_PARTS; kind++) {
        const frame_array *parts = &site->parts[kind];
        if (!parts->count) continue;
        frame_text_addf(into, ",\n \"%s\": [\n", frame_site_lists[kind].plural);
        for (size_t i = 0; i < parts->count; i++) {
            frame_text_add(into, "  ");
            write_struct(into, frame_site_lists[kind].facts, (const char *)parts->items + i * parts->item_size);
            frame_text_add(into, i + 1 < parts->count ? ",\n" : "\n");
        }
        frame_text_add(into, " ]");
    }
    frame_text_add(into, "\n}\n");
    return frame_text_state(into);
}
