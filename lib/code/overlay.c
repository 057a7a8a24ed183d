/* Local amendments over what the book says. */
#include "code/overlay.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "working/record.h"

static int condition_holds(const overlay_cell *cell, const void *in) {
    const char *place = (const char *)in + cell->field->offset;
    double value;
    int32_t whole;
    if (cell->field->kind == FRAME_FIELD_NUMBER) {
        memcpy(&value, place, sizeof value);
    } else {
        memcpy(&whole, place, sizeof whole);
        value = whole;
    }
    const double slack = 1e-6 * (fabs(cell->high) + 1e-3);
    return value >= cell->low - slack && value <= cell->high + slack;
}

int frame_code_overlay_matches(const overlay_row *row, const frame_calculation *of, const void *in) {
    if (row->of != of) return 0;
    for (size_t i = 0; i < row->count; i++)
        if (!row->cells[i].is_figure && !condition_holds(&row->cells[i], in)) return 0;
    return 1;
}

void frame_code_overlay_set(const overlay_cell *cell, void *object) {
    char *place = (char *)object + cell->field->offset;
    const int32_t whole = (int32_t)cell->low;
    if (cell->field->kind == FRAME_FIELD_NUMBER)
        memcpy(place, &cell->low, sizeof cell->low);
    else if (cell->field->kind == FRAME_FIELD_TEXT)
        memcpy(place, &cell->text, sizeof cell->text);
    else
        memcpy(place, &whole, sizeof whole);
}

const char *frame_code_overlay_text(const overlay_row *row, const char *field) {
    for (size_t i = 0; i < row->count; i++)
        if (row->cells[i].text && !strcmp(row->cells[i].field->name, field)) return row->cells[i].text;
    return "";
}

static void set_text(const frame_struct *facts, void *out, const char *name, const char *text) {
    const frame_field *field = frame_field_find(facts, name);
    if (field) memcpy((char *)out + field->offset, &text, sizeof text);
}

static void set_whole(const frame_struct *facts, void *out, const char *name, int32_t value) {
    const frame_field *field = frame_field_find(facts, name);
    if (field) memcpy((char *)out + field->offset, &value, sizeof value);
}

static uint64_t bits_of(const frame_struct *facts, const void *out, const char *name) {
    uint64_t bits;
    memcpy(&bits, (const char *)out + frame_field_find(facts, name)->offset, sizeof bits);
    return bits;
}

static void set_bits(const frame_struct *facts, void *out, const char *name, uint64_t bits) {
    memcpy((char *)out + frame_field_find(facts, name)->offset, &bits, sizeof bits);
}

/* What stands where the book refused: nothing but what every result says. */
static void without_book(const frame_calculation *of, const void *in, void *out) {
    const uint64_t assumed = bits_of(of->out, out, "assumed");
    int32_t edition;
    memcpy(&edition, (const char *)in + frame_field_find(of->in, "edition")->offset, sizeof edition);
    frame_struct_blank(of->out, out);
    set_bits(of->out, out, "assumed", assumed);
    set_bits(of->out, out, "cautions", frame_code_cautions(FRAME_KNOWN_USER));
    set_whole(of->out, out, "edition", edition);
    for (size_t i = 0; i < of->out->field_count; i++)
        if (of->out->fields[i].kind == FRAME_FIELD_TEXT) set_text(of->out, out, of->out->fields[i].name, "");
}

const overlay_row *frame_code_overlay_next(const frame_code_overlay *overlay, const frame_calculation *of,
                                           const void *in, size_t *i) {
    while (overlay && *i < overlay->rows.count) {
        const overlay_row *row = &FRAME_ITEM(const overlay_row, overlay->rows, (*i)++);
        if (frame_code_overlay_matches(row, of, in)) return row;
    }
    return NULL;
}

void frame_code_overlay_item(const overlay_row *row, frame_answer *answer, const frame_struct *facts, void *item) {
    for (size_t i = 0; i < facts->field_count; i++)
        if (facts->fields[i].kind == FRAME_FIELD_TEXT) set_text(facts, item, facts->fields[i].name, "");
    for (size_t i = 0; i < row->count; i++) {
        overlay_cell cell = row->cells[i];
        if (!cell.is_figure) continue;
        if (cell.text) cell.text = frame_answer_text(answer, cell.text);
        frame_code_overlay_set(&cell, item);
    }
    set_text(facts, item, "source", frame_answer_text(answer, row->source));
    set_text(facts, item, "note", frame_answer_text(answer, row->note));
    set_whole(facts, item, "known", FRAME_KNOWN_USER);
}

static void record(const overlay_row *row, frame_working *w) {
    char text[400];
    for (size_t i = 0; i < row->count; i++) {
        const overlay_cell *cell = &row->cells[i];
        if (!cell->is_figure) continue;
        const char *word =
            cell->field->kind == FRAME_FIELD_WORD ? frame_word_text(cell->field->words, (int32_t)cell->low) : NULL;
        snprintf(text, sizeof text, "a local amendment (%.200s) sets %s = %s", row->source, cell->field->name,
                 word ? word : frame_code_number(cell->low).text);
        FRAME_CASE(w, text, "it stands in place of the book", "local amendments");
    }
}

frame_status frame_code_overlaid(const frame_code_overlay *overlay, const frame_calculation *of, const void *in,
                                 void *out, frame_status status, frame_working *w) {
    const overlay_row *row = NULL;
    if (status == FRAME_NO_MEMORY) return status;
    for (size_t i = 0; i < overlay->rows.count && !row; i++)
        if (frame_code_overlay_matches(&FRAME_ITEM(const overlay_row, overlay->rows, i), of, in))
            row = &FRAME_ITEM(const overlay_row, overlay->rows, i);
    if (!row) return status;
    if (status) without_book(of, in, out);
    for (size_t i = 0; i < row->count; i++)
        if (row->cells[i].is_figure) frame_code_overlay_set(&row->cells[i], out);
    set_whole(of->out, out, "known", FRAME_KNOWN_USER);
    set_text(of->out, out, "source", row->source);
    if (*row->table) set_text(of->out, out, "table", row->table);
    set_text(of->out, out, "note", row->note);
    set_bits(of->out, out, "cautions", bits_of(of->out, out, "cautions") | FRAME_BIT(FRAME_CODE_CAUTION_OVERLAY));
    record(row, w);
    return FRAME_OK;
}
