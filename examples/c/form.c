/* A form for any calculation, made from the facts about its fields.     form section     (an empty answer leaves a
 * field out) */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

/* Writes what was typed into the field, whatever its kind. */
static frame_status fill(const frame_field *field, char *place, const char *typed) {
    double number;
    int32_t word;
    if (field->kind == FRAME_FIELD_TEXT) return *(const char **)(void *)place = strdup(typed), FRAME_OK;
    if (field->kind == FRAME_FIELD_WORD) {
        const frame_status status = frame_word_find(field->words, typed, &word);
        return status ? status : (memcpy(place, &word, sizeof word), FRAME_OK);
    }
    const int is_slope = strstr(field->name, "slope") != NULL;
    const frame_status status = is_slope ? frame_slope_parse(typed, &number) : frame_tape_parse(typed, &number);
    if (status) return status;
    word = (int32_t)number;
    if (field->kind == FRAME_FIELD_NUMBER)
        memcpy(place, &number, sizeof number);
    else
        memcpy(place, &word, sizeof word);
    return FRAME_OK;
}

static void ask(const frame_field *field, char *in) {
    char typed[200];
    if (field->kind > FRAME_FIELD_TEXT) return; /* lists and handles need more than a line */
    do {
        printf("%s%s [%s%s%s]: ", field->meaning, field->need == FRAME_FIELD_REQUIRED ? " *" : "", field->valid,
               *field->fallback_text ? "; else " : "", field->fallback_text);
        if (!fgets(typed, sizeof typed, stdin)) return;
        typed[strcspn(typed, "\n")] = 0;
    } while (*typed && fill(field, in + field->offset, typed) && printf("  %s\n", frame_error_text()));
}

int main(int count, char **words) {
    const frame_calculation *calculation = frame_calculation_find(count > 1 ? words[1] : "section");
    if (!calculation) return fprintf(stderr, "form: no calculation \"%s\"\n", words[1]), 1;
    const frame_struct *asked = frame_calculation_in(calculation), *told = frame_calculation_out(calculation);
    char *in = calloc(1, frame_struct_size(asked)), *out = calloc(1, frame_struct_size(told));
    frame_batch_column columns[100]; /* a batch of one row, straight into the result */
    size_t used = 0;
    frame_status status;
    frame_text *text;
    if (!in || !out || frame_text_new(&text) || frame_struct_init(asked, in, frame_struct_size(asked))) return 1;
    for (size_t i = 0; i < frame_field_count(asked); i++) ask(frame_field_at(asked, i), in);
    for (size_t i = 0; i < frame_field_count(told) && used < 100; i++) {
        const frame_field *field = frame_field_at(told, i);
        if (field->kind < FRAME_FIELD_TEXT || field->kind == FRAME_FIELD_BITS)
            columns[used++] = (frame_batch_column){field->name, out + field->offset, 0};
    }
    memcpy(out, (uint32_t[]){(uint32_t)frame_struct_size(told), frame_struct_id(told)}, 2 * sizeof(uint32_t));
    if (frame_batch(calculation, in, NULL, 0, columns, used, 1, &status) || status || frame_result_text(out, text))
        return printf("\n%s\n", frame_error_text()), 1;
    return printf("\n%s", frame_text_chars(text)), 0;
}
