/* The JSON Schema of a description, made from the facts of its fields. */
#include "base/facts.h"
#include "building/site.h"
#include "building_facts.h"
#include "roof_facts.h"
#include "text/writer.h"

static void bound(frame_text *into, const char *name, const char *exclusive, double value, int open) {
    frame_text_addf(into, ", \"%s\": ", open ? exclusive : name);
    frame_text_add_number(into, value, 17);
}

static void plain_number(frame_text *into, const frame_field *field) {
    frame_text_addf(into, "{\"type\": \"%s\"", field->kind == FRAME_FIELD_INTEGER ? "integer" : "number");
    bound(into, "minimum", "exclusiveMinimum", field->low, field->low_open);
    bound(into, "maximum", "exclusiveMaximum", field->high, field->high_open);
    frame_text_add(into, "}");
}

/* A length, slope or angle may be a text in the trade's notation. */
static void number(frame_text *into, const frame_field *field) {
    if (field->kind == FRAME_FIELD_INTEGER || frame_field_notation(field) == FRAME_PLAIN) {
        plain_number(into, field);
        return;
    }
    frame_text_add(into, "{\"anyOf\": [");
    plain_number(into, field);
    frame_text_add(into, ", {\"type\": \"string\", \"minLength\": 1}]}");
}

static void add_others(frame_text *into, const char *others) {
    char word[200];
    while (others && *others) {
        size_t length = 0;
        while (*others && *others != '\n') {
            if (length < sizeof word - 1) word[length++] = *others;
            others++;
        }
        word[length] = 0;
        others += *others == '\n';
        frame_text_add(into, ", ");
        frame_text_add_json(into, word);
    }
}

/* Words of a table are listed; of a room that finds many spellings (species) any text is let through. */
static void word(frame_text *into, const frame_field *field) {
    const frame_words *words = frame_words_find(field->words);
    if (!words || !words->table_count) {
        frame_text_add(into, "{\"type\": \"string\", \"minLength\": 1}");
        return;
    }
    frame_text_add(into, "{\"enum\": [");
    for (size_t i = 0; i < words->table_count; i++) {
        if (i) frame_text_add(into, ", ");
        frame_text_add_json(into, words->table[i].word);
        add_others(into, words->table[i].others);
    }
    frame_text_add(into, "]}");
}

static void item(frame_text *into, const frame_field *field) {
    if (field->kind == FRAME_FIELD_NUMBERS)
        number(into, field);
    else if (field->kind == FRAME_FIELD_WORDS)
        word(into, field);
    else
        frame_text_addf(into, "{\"$ref\": \"#/$defs/%s\"}", frame_struct_name(field->element));
}

static void value(frame_text *into, const frame_field *field) {
    switch (field->kind) {
        case FRAME_FIELD_NUMBER:
        case FRAME_FIELD_INTEGER:
            number(into, field);
            break;
        case FRAME_FIELD_WORD:
            word(into, field);
            break;
        case FRAME_FIELD_BOOL:
            frame_text_add(into, "{\"type\": \"boolean\"}");
            break;
        case FRAME_FIELD_TEXT:
            frame_text_add(into, "{\"type\": \"string\"}");
            break;
        default:
            frame_text_add(into, "{\"type\": \"array\", \"items\": ");
            item(into, field);
            frame_text_add(into, "}");
    }
}

static void properties(frame_text *into, const frame_struct *facts) {
    int written = 0;
    for (size_t i = 0; i < facts->field_count; i++) {
        const frame_field *field = &facts->fields[i];
        frame_text_addf(into, "%s\n   ", written++ ? "," : "");
        frame_text_add_json(into, field->name);
        frame_text_add(into, ": {\"description\": ");
        frame_text_add_json(into, field->meaning);
        frame_text_add(into, ", \"allOf\": [");
        value(into, field);
        frame_text_add(into, "]}");
    }
}

static void required(frame_text *into, const frame_struct *facts) {
    int written = 0;
    frame_text_add(into, ",\n   \"required\": [");
    for (size_t i = 0; i < facts->field_count; i++) {
        if (facts->fields[i].need != FRAME_FIELD_REQUIRED) continue;
        if (written++) frame_text_add(into, ", ");
        frame_text_add_json(into, facts->fields[i].name);
    }
    frame_text_add(into, "]");
}

static void definition(frame_text *into, const frame_struct *facts) {
    frame_text_addf(into,
                    "  \"%s\": {\"type\": \"object\", \"additionalProperties\": false, \"description\": ", facts->name);
    frame_text_add_json(into, facts->meaning);
    frame_text_add(into, ",\n   \"properties\": {");
    properties(into, facts);
    frame_text_add(into, "}");
    required(into, facts);
    frame_text_add(into, "}");
}

frame_status frame_site_schema(frame_text *into) {
    const frame_struct *site = &frame_site_conditions_facts;
    frame_text_add(into,
                   "{\n \"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n"
                   " \"title\": \"Description of buildings for libframe\",\n \"$defs\": {\n");
    for (int kind = 0; kind < FRAME_SITE_PARTS; kind++) {
        definition(into, frame_site_lists[kind].facts);
        frame_text_add(into, ",\n");
    }
    definition(into, &frame_roof_corner_facts);
    frame_text_add(into, "\n },\n \"type\": \"object\", \"additionalProperties\": false,\n \"properties\": {");
    properties(into, site);
    for (int kind = 0; kind < FRAME_SITE_PARTS; kind++)
        frame_text_addf(into, ",\n   \"%s\": {\"type\": \"array\", \"items\": {\"$ref\": \"#/$defs/%s\"}}",
                        frame_site_lists[kind].plural, frame_site_lists[kind].facts->name);
    frame_text_add(into, "}");
    required(into, site);
    frame_text_add(into, "\n}\n");
    return frame_text_state(into);
}
