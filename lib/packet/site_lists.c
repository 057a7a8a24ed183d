/* Every list of a framed site as CSV, and all of them as one JSON: by the facts of their fields. */
#include <string.h>

#include "packet/framing.h"

typedef enum form { AS_CSV, AS_JSON } form;

static void add_text(frame_text *into, const char *text, form as) {
    if (as == AS_CSV)
        frame_packet_csv_text(into, text);
    else if (text)
        frame_text_add_json(into, text);
    else
        frame_text_add(into, "null");
}

static void add_number(frame_text *into, double number, form as) {
    if (number != FRAME_NOT_GIVEN)
        frame_text_add_number(into, number, 12);
    else if (as == AS_JSON)
        frame_text_add(into, "null");
}

static void add_integer(frame_text *into, const frame_field *field, int32_t value, form as) {
    if (value == FRAME_NOT_GIVEN_INT)
        frame_text_add(into, as == AS_JSON ? "null" : "");
    else if (field->kind == FRAME_FIELD_WORD)
        add_text(into, frame_word_text(field->words, value), as);
    else if (field->kind == FRAME_FIELD_BOOL)
        frame_text_add(into, value ? "true" : "false");
    else
        frame_text_addf(into, "%d", (int)value);
}

/* The sentences that a set of bits stands for. */
static void add_bits(frame_text *into, const frame_field *field, uint64_t bits) {
    int written = 0;
    frame_text_add(into, "[");
    for (size_t i = 0; i < frame_word_count(field->words); i++) {
        const int32_t bit = frame_word_at(field->words, i);
        if (!FRAME_HAS(bits, bit)) continue;
        frame_text_add(into, written++ ? ", " : "");
        frame_text_add_json(into, frame_word_meaning(field->words, bit));
    }
    frame_text_add(into, "]");
}

static void add_value(frame_text *into, const frame_field *field, const void *item, form as) {
    const void *place = (const char *)item + field->offset;
    switch (field->kind) {
        case FRAME_FIELD_NUMBER:
            add_number(into, *(const double *)place, as);
            break;
        case FRAME_FIELD_TEXT:
            add_text(into, *(const char *const *)place, as);
            break;
        case FRAME_FIELD_BITS:
            add_bits(into, field, *(const uint64_t *)place);
            break;
        case FRAME_FIELD_RANGE:
            frame_text_addf(into, "%u", (unsigned)*(const uint32_t *)place);
            break;
        default:
            add_integer(into, field, *(const int32_t *)place, as);
    }
}

frame_status frame_site_csv(const frame_answer *answer, size_t list, frame_text *into) {
    const frame_struct *facts = answer->calculation->lists[list].facts;
    const frame_array *items = &answer->lists[list];
    for (size_t f = 0; f < facts->field_count; f++) frame_text_addf(into, f ? ",%s" : "%s", facts->fields[f].name);
    frame_text_add(into, "\r\n");
    for (size_t i = 0; i < items->count; i++) {
        const void *item = (const char *)items->items + i * items->item_size;
        for (size_t f = 0; f < facts->field_count; f++) {
            if (f) frame_text_add(into, ",");
            add_value(into, &facts->fields[f], item, AS_CSV);
        }
        frame_text_add(into, "\r\n");
    }
    return frame_text_state(into);
}

static void add_object(frame_text *into, const frame_struct *facts, const void *item) {
    int written = 0;
    frame_text_add(into, "{");
    for (size_t f = 0; f < facts->field_count; f++) {
        if (facts->fields[f].kind == FRAME_FIELD_BITS && !strcmp(facts->fields[f].words, "assumed")) continue;
        frame_text_addf(into, "%s\"%s\": ", written++ ? ", " : "", facts->fields[f].name);
        add_value(into, &facts->fields[f], item, AS_JSON);
    }
    frame_text_add(into, "}");
}

frame_status frame_site_all_json(const frame_answer *answer, frame_text *into) {
    frame_text_addf(into, "{\n \"libframe\": \"%s\",\n \"figures\": ", frame_version());
    add_object(into, answer->calculation->out, answer->out);
    for (size_t list = 0; list < answer->calculation->list_count; list++) {
        const frame_answer_list *named = &answer->calculation->lists[list];
        const frame_array *items = &answer->lists[list];
        frame_text_addf(into, ",\n \"%s\": [", named->plural);
        for (size_t i = 0; i < items->count; i++) {
            frame_text_add(into, i ? ",\n  " : "\n  ");
            add_object(into, named->facts, (const char *)items->items + i * items->item_size);
        }
        frame_text_add(into, "\n ]");
    }
    frame_text_add(into, "\n}\n");
    return frame_text_state(into);
}
