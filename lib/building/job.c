/* What all items of a job share: adding members, checks, marks and notes to the answer. */
#include "building/job.h"

#include <string.h>

#include <frame/marks.h>

#include "base/error.h"
#include "building_facts.h"
#include "text/writer.h"

frame_status frame_job_find_roof(const frame_job *job, const char *field, const char *name,
                                 const frame_job_roof **roof) {
    frame_nearest nearest = {name, NULL, 0};
    for (size_t i = 0; i < job->in->roof_count; i++) {
        if (!strcmp(job->roofs[i].roof.name, name)) {
            *roof = &job->roofs[i];
            return FRAME_OK;
        }
        frame_nearest_try(&nearest, job->roofs[i].roof.name);
    }
    return frame_fail(FRAME_UNKNOWN_NAME, field, name, "the name of a roof of this building",
                      "%s: no roof is named \"%s\"%s%s%s", field, name, nearest.best ? "; did you mean \"" : "",
                      nearest.best ? nearest.best : "", nearest.best ? "\"?" : "");
}

static frame_status grade_text(frame_job *job, frame_species species, frame_grade grade, const char **text) {
    frame_text_clear(job->text);
    frame_text_addf(job->text, "%s %s", frame_species_name(species), frame_grade_name(grade));
    *text = frame_answer_text(job->answer, frame_text_chars(job->text));
    return *text ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status frame_job_member(frame_job *job, const frame_job_piece *piece) {
    frame_stick *stick = piece->stick;
    if (!frame_array_push(&job->inside->sticks, &stick)) {
        frame_stick_free(stick);
        return FRAME_NO_MEMORY;
    }
    frame_building_member *member = frame_answer_add(job->answer, FRAME_BUILDING_MEMBERS);
    if (!member) return FRAME_NO_MEMORY;
    member->length_in = piece->length_in;
    member->count = piece->count;
    member->size = piece->size;
    member->name = frame_answer_text(job->answer, piece->name);
    member->of = frame_answer_text(job->answer, piece->of);
    member->section = frame_answer_text(job->answer, frame_size_name(piece->size));
    member->cuts = frame_answer_text(job->answer, piece->cuts);
    job->out->member_total += piece->count;
    return grade_text(job, piece->species, piece->grade, &member->grade);
}

frame_status frame_job_check(frame_job *job, const frame_job_result *result) {
    frame_working *working = result->working;
    if (!frame_array_push(&job->inside->workings, &working)) {
        frame_working_free(working);
        return FRAME_NO_MEMORY;
    }
    frame_building_check *check = frame_answer_add(job->answer, FRAME_BUILDING_CHECKS);
    if (!check) return FRAME_NO_MEMORY;
    check->name = frame_answer_text(job->answer, result->name);
    check->what = result->what;
    check->governs = result->governs;
    check->ratio = result->ratio;
    check->passes = result->passes;
    check->known = result->known;
    frame_text_clear(job->text);
    const frame_status status = frame_result_text(result->out, job->text);
    if (status) return status;
    check->block = frame_answer_text(job->answer, frame_text_chars(job->text));
    if (result->known > job->known) job->known = result->known;
    if (result->ratio > job->out->worst_ratio) job->out->worst_ratio = result->ratio;
    if (!result->passes) job->out->passes = 0;
    return frame_job_notes(job, result->name, result->out);
}

static int noted(const frame_job *job, const char *about, const char *text) {
    const frame_array *notes = &job->answer->lists[FRAME_BUILDING_NOTES];
    for (size_t i = 0; i < notes->count; i++) {
        const frame_building_note *note = &FRAME_ITEM(frame_building_note, *notes, i);
        if (!strcmp(note->text, text) && (!strcmp(note->about, about) || note->kind != FRAME_NOTE_ASSUMED)) return 1;
    }
    return 0;
}

/* A caution that several results give is said once. */
static frame_status add_note(frame_job *job, frame_note_kind kind, const char *about, const char *text) {
    if (noted(job, about, text)) return FRAME_OK;
    frame_building_note *note = frame_answer_add(job->answer, FRAME_BUILDING_NOTES);
    if (!note) return FRAME_NO_MEMORY;
    note->kind = kind;
    note->about = note->text = "";
    const char *kept_about = frame_answer_text(job->answer, about), *kept_text = frame_answer_text(job->answer, text);
    if (!kept_about || !kept_text) return FRAME_NO_MEMORY;
    note->about = kept_about;
    note->text = kept_text;
    return FRAME_OK;
}

frame_status frame_job_assumed(frame_job *job, const char *about, const frame_struct *facts, uint64_t assumed) {
    for (size_t i = 0; i < facts->field_count; i++) {
        if (facts->fields[i].assumed_bit < 0 || !FRAME_HAS(assumed, facts->fields[i].assumed_bit)) continue;
        if (facts->fields[i].kind == FRAME_FIELD_LIST) continue; /* the items' own notes say more */
        frame_text_clear(job->text);
        frame_status status = frame_assumed_text(&facts->fields[i], job->text);
        if (!status) status = add_note(job, FRAME_NOTE_ASSUMED, about, frame_text_chars(job->text));
        if (status) return status;
    }
    return FRAME_OK;
}

static frame_status note_bits(frame_job *job, const char *about, const frame_field *field, uint64_t bits) {
    const frame_note_kind kind = strcmp(field->name, "cautions") ? FRAME_NOTE_NOT_CHECKED : FRAME_NOTE_CAUTION;
    for (size_t i = 0; i < frame_word_count(field->words); i++) {
        const int32_t bit = frame_word_at(field->words, i);
        if (!FRAME_HAS(bits, bit)) continue;
        const frame_status status = add_note(job, kind, about, frame_word_meaning(field->words, bit));
        if (status) return status;
    }
    return FRAME_OK;
}

frame_status frame_job_notes(frame_job *job, const char *about, const void *out) {
    const frame_struct *facts = frame_struct_by_id(((const uint32_t *)out)[1]);
    for (size_t i = 0; i < facts->field_count; i++) {
        const frame_field *field = &facts->fields[i];
        if (field->kind != FRAME_FIELD_BITS) continue;
        const uint64_t bits = *(const uint64_t *)(const void *)((const char *)out + field->offset);
        frame_status status = FRAME_OK;
        if (strcmp(field->words, "assumed")) {
            status = note_bits(job, about, field, bits);
        } else {
            char name[96];
            const size_t length = strlen(facts->name) - 4; /* without _out */
            memcpy(name, facts->name, length);
            memcpy(name + length, "_in", 4);
            status = frame_job_assumed(job, about, frame_struct_find(name), bits);
        }
        if (status) return status;
    }
    return FRAME_OK;
}

frame_status frame_job_layout(frame_job *job, const char *name, double length_in, double spacing_in,
                              double thickness_in, int32_t *count) {
    frame_layout_marks_in in;
    frame_layout_marks *marks;
    frame_layout_marks_in_init(&in);
    in.length_in = length_in;
    in.spacing_in = spacing_in;
    in.thickness_in = thickness_in;
    in.first = FRAME_FIRST_MARK_SET_BACK;
    in.end_member = 1;
    frame_status status = frame_layout_marks_solve(&in, &marks, NULL);
    if (status) return status;
    size_t found;
    const double *at = frame_layout_marks_marks_in(marks, &found);
    const char *of = frame_answer_text(job->answer, name);
    for (size_t i = 0; i < found && !status; i++) {
        frame_building_mark *mark = frame_answer_add(job->answer, FRAME_BUILDING_MARKS);
        if (!mark)
            status = FRAME_NO_MEMORY;
        else
            mark->of = of, mark->at_in = at[i];
    }
    *count = (int32_t)found;
    frame_layout_marks_out out;
    if (!status) status = frame_layout_marks_result(marks, &out);
    if (!status) status = frame_job_notes(job, name, &out);
    frame_layout_marks_free(marks);
    return status;
}
