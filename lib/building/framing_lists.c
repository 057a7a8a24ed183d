/* What goes into the answer's lists: checks with their workings, notes said once, sizes tried. */
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include <frame/working.h>

#include "base/utf8.h"
#include "building/framing.h"
#include "building_facts.h"

const char *frame_framing_text(frame_framing_job *job, const char *format, ...) {
    char chars[600];
    va_list list;
    va_start(list, format);
    vsnprintf(chars, sizeof chars, format, list);
    va_end(list);
    frame_utf8_trim(chars);
    return frame_answer_text(job->answer, chars);
}

void frame_framing_size_words(frame_size size, int32_t plies, char words[32]) {
    const char *name = frame_size_name(size);
    if (plies > 1)
        snprintf(words, 32, "%d-%s", (int)plies, name ? name : "?");
    else
        snprintf(words, 32, "%s", name ? name : "?");
}

/* One note of a kind and text; an assumption is said for each thing it is about. */
static int noted(const frame_framing_job *job, frame_note_kind kind, const char *about, const char *text) {
    const frame_array *notes = &job->answer->lists[FRAME_FRAMING_NOTES];
    for (size_t i = 0; i < notes->count; i++) {
        const frame_framing_note *note = &FRAME_ITEM(frame_framing_note, *notes, i);
        if (note->kind == kind && !strcmp(note->text, text) &&
            (kind != FRAME_NOTE_ASSUMED || !strcmp(note->about, about)))
            return 1;
    }
    return 0;
}

frame_status frame_framing_note_add(frame_framing_job *job, frame_note_kind kind, const char *about, const char *text) {
    if (noted(job, kind, about, text)) return FRAME_OK;
    const char *kept_about = frame_answer_text(job->answer, about), *kept_text = frame_answer_text(job->answer, text);
    frame_framing_note *note = kept_about && kept_text ? frame_answer_add(job->answer, FRAME_FRAMING_NOTES) : NULL;
    if (!note) return FRAME_NO_MEMORY;
    note->kind = kind;
    note->about = kept_about;
    note->text = kept_text;
    return FRAME_OK;
}

frame_status frame_framing_assumed(frame_framing_job *job, const char *about, const frame_struct *facts,
                                   uint64_t assumed) {
    for (size_t i = 0; i < facts->field_count; i++) {
        const frame_field *field = &facts->fields[i];
        if (field->assumed_bit < 0 || !FRAME_HAS(assumed, field->assumed_bit)) continue;
        if (field->kind == FRAME_FIELD_LIST || !strcmp(field->fallback_text, "chosen")) continue;
        frame_text_clear(job->text);
        frame_status status = frame_assumed_text(field, job->text);
        if (!status) status = frame_framing_note_add(job, FRAME_NOTE_ASSUMED, about, frame_text_chars(job->text));
        if (status) return status;
    }
    return FRAME_OK;
}

/* What a calculation leaves to others and is done here: what a member stands on; drifts and slides, by the steps
 * described. */
static int is_checked_here(const char *words, int32_t bit) {
    return (!strcmp(words, "bending_not_checked") && bit == FRAME_BENDING_UNCHECKED_SUPPORTS) ||
           (!strcmp(words, "snow_not_checked") &&
            (bit == FRAME_SNOW_UNCHECKED_DRIFT || bit == FRAME_SNOW_UNCHECKED_SLIDING)) ||
           (!strcmp(words, "column_not_checked") &&
            (bit == FRAME_COLUMN_UNCHECKED_ENDS || bit == FRAME_COLUMN_UNCHECKED_COMBINATIONS));
}

static frame_status note_bits(frame_framing_job *job, const char *about, const frame_field *field, uint64_t bits) {
    const frame_note_kind kind = strcmp(field->name, "cautions") ? FRAME_NOTE_NOT_CHECKED : FRAME_NOTE_CAUTION;
    for (size_t i = 0; i < frame_word_count(field->words); i++) {
        const int32_t bit = frame_word_at(field->words, i);
        if (!FRAME_HAS(bits, bit) || is_checked_here(field->words, bit)) continue;
        const frame_status status = frame_framing_note_add(job, kind, about, frame_word_meaning(field->words, bit));
        if (status) return status;
    }
    return FRAME_OK;
}

/* Cautions and what was not checked, of any result; what it assumed is said with the part it belongs to. */
frame_status frame_framing_notes(frame_framing_job *job, const char *about, const void *out) {
    const frame_struct *facts = frame_struct_by_id(((const uint32_t *)out)[1]);
    for (size_t i = 0; i < facts->field_count; i++) {
        const frame_field *field = &facts->fields[i];
        if (field->kind != FRAME_FIELD_BITS || !strcmp(field->words, "assumed")) continue;
        const uint64_t bits = *(const uint64_t *)(const void *)((const char *)out + field->offset);
        const frame_status status = note_bits(job, about, field, bits);
        if (status) return status;
    }
    return FRAME_OK;
}

/* Which of the two answers governs. */
static const char *verdict_of(const frame_framing_made_check *check) {
    if (check->code_ratio == FRAME_NOT_GIVEN) return "The calculation alone: the code has no table for it.";
    if (check->passes && !check->code_passes)
        return "The code's table governs: it allows less than the calculation. Build to the table, or have it "
               "designed.";
    if (!check->passes && check->code_passes)
        return "The calculation governs: the loads or the edge's support here are not those the table was made for.";
    if (!check->passes) return "Neither allows it.";
    return check->ratio >= check->code_ratio ? "Both allow it; the calculation is nearer to its limit."
                                             : "Both allow it; the table is nearer to its limit.";
}

static frame_status block_of(frame_framing_job *job, const frame_framing_made_check *made, const char **block) {
    if (made->block) {
        *block = frame_answer_text(job->answer, made->block);
        return *block ? FRAME_OK : FRAME_NO_MEMORY;
    }
    frame_text_clear(job->text);
    const frame_status status = frame_result_text(made->out, job->text);
    if (status) return status;
    *block = frame_answer_text(job->answer, frame_text_chars(job->text));
    return *block ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status frame_framing_check_add(frame_framing_job *job, const frame_framing_made_check *made) {
    frame_working *working = made->working;
    const char *block;
    if (!frame_array_push(&job->inside->workings, &working)) {
        frame_working_free(working);
        return FRAME_NO_MEMORY;
    }
    frame_framing_check *check = frame_answer_add(job->answer, FRAME_FRAMING_CHECKS);
    if (!check) return FRAME_NO_MEMORY;
    *check = (frame_framing_check){.struct_size = check->struct_size,
                                   .struct_id = check->struct_id,
                                   .name = frame_answer_text(job->answer, made->name),
                                   .what = made->what,
                                   .governs = made->governs ? made->governs : "",
                                   .code = frame_answer_text(job->answer, made->code ? made->code : ""),
                                   .verdict = verdict_of(made),
                                   .block = "",
                                   .ratio = made->ratio,
                                   .code_ratio = made->code_ratio,
                                   .length_in = made->length,
                                   .passes = made->passes,
                                   .code_passes = made->code_passes,
                                   .known = made->known,
                                   .kind = made->kind};
    const frame_status status = block_of(job, made, &block);
    if (status) return status;
    check->block = block;
    if (made->known > job->known) job->known = made->known;
    if (made->ratio > job->out->worst_ratio) job->out->worst_ratio = made->ratio;
    job->out->check_total++;
    if (!made->passes || made->code_passes == 0) job->out->failed_total++;
    return made->out ? frame_framing_notes(job, made->name, made->out) : FRAME_OK;
}

frame_status frame_framing_option_add(frame_framing_job *job, const char *name, frame_size size, int32_t plies,
                                      double ratio, double cost, frame_bool taken, int32_t governs,
                                      const char *reason) {
    char words[32];
    frame_framing_size_words(size, plies, words);
    frame_framing_option *option = frame_answer_add(job->answer, FRAME_FRAMING_OPTIONS);
    if (!option) return FRAME_NO_MEMORY;
    option->name = frame_answer_text(job->answer, name);
    option->section = frame_answer_text(job->answer, words);
    option->reason = frame_answer_text(job->answer, reason);
    option->ratio = ratio;
    option->cost = cost;
    option->taken = taken;
    option->governs = governs;
    return FRAME_OK;
}

double frame_framing_price(const frame_framing_job *job, frame_size size) {
    double best = FRAME_NOT_GIVEN;
    for (size_t i = 0; i < job->in->stock_count; i++) {
        const frame_building_stock *stock =
            (const void *)((const char *)job->in->stock + i * job->in->stock->struct_size);
        const double price = 12 * stock->price / stock->length_in;
        if (stock->size == size && (best == FRAME_NOT_GIVEN || price < best)) best = price;
    }
    return best;
}
