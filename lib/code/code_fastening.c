/* The fastening schedule, by the two things that are joined. */
#include <stdio.h>
#include <string.h>

#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_fastenings.h"
#include "table_code_joints.h"
#include "working/calculation.h"

static int lower(char c) {
    return c >= 'A' && c <= 'Z' ? c + 32 : c == '-' || c == '_' ? ' ' : c;
}

/* The same word but for capitals, hyphens, blanks around it and a plural. */
static int same_word(const char *said, const char *word, size_t length) {
    while (*said == ' ') said++;
    for (; length; said++, word++, length--)
        if (lower(*said) != lower(*word)) return 0;
    if (lower(*said) == 'e' && lower(said[1]) == 's') said++; /* trusses */
    if (lower(*said) == 's') said++;
    while (*said == ' ') said++;
    return !*said;
}

static int is_one_of(const char *said, const char *words) {
    for (;;) {
        const char *end = strchr(words, '|');
        if (same_word(said, words, end ? (size_t)(end - words) : strlen(words))) return 1;
        if (!end) return 0;
        words = end + 1;
    }
}

static int joins(const frame_code_joints_row *joint, const char *first, const char *second) {
    return (is_one_of(first, joint->first) && is_one_of(second, joint->second)) ||
           (is_one_of(second, joint->first) && is_one_of(first, joint->second));
}

/* What a thing is joined to in the schedule, for a refusal. */
static void partners(const char *thing, char *text, size_t size) {
    size_t used = 0;
    *text = 0;
    for (int i = 0; i < frame_code_joints_rows; i++) {
        const frame_code_joints_row *joint = &frame_code_joints_table[i];
        const int as_first = is_one_of(thing, joint->first), as_second = is_one_of(thing, joint->second);
        const char *other = as_first ? joint->second : joint->first;
        const int length = (int)strcspn(other, "|");
        if ((!as_first && !as_second) || used + (size_t)length + 3 >= size) continue;
        used += (size_t)snprintf(text + used, size - used, "%s%.*s", used ? ", " : "", length, other);
    }
}

static frame_status nothing(const frame_code_fastening_in *in) {
    static const char some[] = "rafter, stud, joist, top plate, header, rim joist, blocking, ceiling joist, ...";
    char first[300], second[300];
    partners(in->first, first, sizeof first);
    partners(in->second, second, sizeof second);
    const char *const field = !*first ? "first" : "second", *const value = !*first ? in->first : in->second;
    const char *const valid = *first ? first : *second ? second : some;
    return frame_fail(FRAME_NO_VALUE, field, value, valid,
                      "%s: the fastening schedule has no joint of \"%.60s\" and \"%.60s\"; it joins %.60s to %s", field,
                      in->first, in->second,
                      *first    ? in->first
                      : *second ? in->second
                                : "these",
                      valid);
}

static frame_status add(frame_answer *answer, const frame_code_joints_row *joint,
                        const frame_code_fastenings_row *row) {
    frame_code_fastening_way *way = frame_answer_add(answer, 0);
    if (!way) return FRAME_NO_MEMORY;
    way->joint = joint->joint;
    way->fastener = row->fastener;
    way->location = row->location;
    way->note = frame_code_note_text(row->note);
    way->source = frame_code_source_text(row->source);
    way->length_in = row->length;
    way->diameter_in = row->diameter;
    way->spacing_in = row->spacing == FRAME_NO_CELL ? FRAME_NOT_GIVEN : row->spacing;
    way->count = row->count == FRAME_NO_CELL ? FRAME_NOT_GIVEN_INT : row->count;
    way->alternative = row->alternative;
    way->item = row->item;
    way->known = row->known;
    return FRAME_OK;
}

int frame_code_is_joint(const char *name) {
    for (int i = 0; i < frame_code_joints_rows; i++)
        if (!strcmp(frame_code_joints_table[i].joint, name)) return 1;
    return 0;
}

/* The ways that amendments give for a joint in place of the schedule's. */
static frame_status amend(const frame_code_fastening_in *in, const frame_code_joints_row *joint, frame_answer *answer,
                          frame_code_fastening_out *out, frame_working *w) {
    const overlay_row *row;
    size_t at = 0;
    while ((row = frame_code_overlay_next(in->overlay, &frame_code_fastening_calculation, in, &at))) {
        if (strcmp(frame_code_overlay_text(row, "joint"), joint->joint) != 0) continue;
        frame_code_fastening_way *way = frame_answer_add(answer, 0);
        if (!way) return FRAME_NO_MEMORY;
        frame_code_overlay_item(row, answer, answer->calculation->lists[0].facts, way);
        if (answer->failed) return FRAME_NO_MEMORY;
        FRAME_CODE_WARN(out, OVERLAY);
        FRAME_CASE(w, way->source, "a local amendment gives a way in place of the schedule's", "local amendments");
    }
    return FRAME_OK;
}

static frame_status solve(const frame_code_fastening_in *in, frame_answer *answer, frame_code_fastening_out *out,
                          frame_working *w) {
    unsigned known = 0;
    int source = 0;
    frame_known worst = FRAME_KNOWN_READ;
    out->joint_count = 0;
    for (int i = 0; i < frame_code_joints_rows; i++) {
        const frame_code_joints_row *joint = &frame_code_joints_table[i];
        const size_t before = answer->lists[0].count;
        if (!joins(joint, in->first, in->second)) continue;
        if (amend(in, joint, answer, out, w)) return FRAME_NO_MEMORY;
        const int amended = answer->lists[0].count > before;
        if (amended) {
            known |= frame_code_bit(in->edition);
            if (worst < FRAME_KNOWN_USER) worst = FRAME_KNOWN_USER;
        }
        for (int k = frame_code_fastenings_at[joint->id] - 1;
             !amended && k < frame_code_fastenings_rows && frame_code_fastenings_table[k].joint == joint->id; k++) {
            const frame_code_fastenings_row *row = &frame_code_fastenings_table[k];
            known |= row->editions;
            if (!(row->editions & frame_code_bit(in->edition))) continue;
            source = row->source;
            if (row->known > worst) worst = row->known;
            if (add(answer, joint, row)) return FRAME_NO_MEMORY;
        }
        if (answer->lists[0].count > before) {
            out->joint_count++;
            FRAME_CASE(w, joint->joint, "a joint of the fastening schedule", "IRC Table R602.3(1)");
        }
    }
    if (!known) return nothing(in);
    if (!out->joint_count) return frame_code_no_edition("R602.3(1)", in->edition, known);
    out->way_count = (int32_t)answer->lists[0].count;
    const frame_code_fastening_way *const first = answer->lists[0].items;
    FRAME_CODE_SAY(out, in->edition, "R602.3(1)", source ? frame_code_source_text(source) : first->source, "", worst);
    frame_code_record_known(worst, "", w);
    FRAME_CODE_UNCHECKED(out, UPLIFT);
    FRAME_CODE_UNCHECKED(out, SEISMIC);
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(code_fastening, solve);
