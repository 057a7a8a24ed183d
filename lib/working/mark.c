/* Marking a student's answers: each against the working's value, then against what follows from the answers before. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "text/writer.h"
#include "working/marking.h"
#include "working/symbol.h"
#include "working_facts.h"

typedef struct marker {
    frame_student student;
    const frame_working_answer *answers;
    size_t answer_count;
    double *recorded; /* of each entry, the working's own value */
    frame_marking *marking;
    frame_text *text; /* for a sentence being made */
} marker;

static void answer_at(const marker *m, size_t index, frame_working_answer *answer) {
    frame_working_answer_item(m->answers, index, answer);
}

/* Within tolerance; for a zero, nothing to speak of. */
static int is_near(const marker *m, double given, double value) {
    return value == 0 ? fabs(given) < 1e-9 : fabs(given - value) <= m->student.tolerance * fabs(value);
}

/* Written with decimals, and the value rounded to as many. A whole number may be anything rounded. */
static int is_rounded(double given, double value) {
    const int decimals = frame_answer_decimals(given);
    return decimals > 0 && fabs(given - value) <= 0.5000001 * pow(10, -decimals);
}

/* The entry an answer is for: of several with its symbol the latest that it agrees with, else the latest. */
static size_t entry_for(const marker *m, const frame_working_answer *answer) {
    const frame_working *w = m->student.w;
    size_t latest = FRAME_NO_ROOT;
    for (size_t i = w->entries.count; i-- > 0;) {
        const frame_entry *entry = frame_entry_at(w, i);
        if (!frame_entry_has_value(entry) || m->student.answered[i] != FRAME_NO_ROOT) continue;
        if (!frame_symbol_means(answer->symbol, entry->name)) continue;
        if (is_near(m, answer->value, entry->value)) return i;
        if (latest == FRAME_NO_ROOT) latest = i;
    }
    return latest;
}

static void place_answers(marker *m) {
    for (size_t i = 0; i < m->answer_count; i++) {
        frame_working_answer answer;
        answer_at(m, i, &answer);
        const size_t entry = entry_for(m, &answer);
        if (entry != FRAME_NO_ROOT) m->student.answered[entry] = i;
    }
}

static frame_marking_verdict judge(const marker *m, size_t at, double given) {
    const double expected = frame_entry_at(m->student.w, at)->value, follows = m->student.values[at];
    if (is_near(m, given, expected)) return FRAME_MARKING_AGREES;
    if (m->student.roots[at] != FRAME_NO_ROOT && (is_near(m, given, follows) || is_rounded(given, follows)))
        return FRAME_MARKING_FOLLOWS;
    return is_rounded(given, expected) ? FRAME_MARKING_ROUNDED : FRAME_MARKING_DIFFERS;
}

static const char *keep_text(marker *m, int *failed) {
    if (frame_text_state(m->text)) *failed = 1;
    const char *kept = frame_arena_text(&m->marking->texts, frame_text_chars(m->text), failed);
    frame_text_clear(m->text);
    return kept;
}

/* Words the line and adds it to the marking. */
static frame_status add_line(marker *m, size_t at, frame_marking_line *line, const frame_cause *cause) {
    int failed = 0;
    frame_marking *marking = m->marking;
    if (at != FRAME_NO_ROOT) {
        const frame_entry *entry = frame_entry_at(m->student.w, at);
        frame_symbol_ascii(entry->name, strlen(entry->name), m->text);
        line->symbol = keep_text(m, &failed);
        line->unit = frame_arena_text(&marking->texts, entry->unit, &failed);
    }
    if (failed) return FRAME_NO_MEMORY;
    frame_cause_names(&m->student, cause, m->text);
    line->cause_symbol = keep_text(m, &failed);
    frame_marking_sentence(&m->student, at, line, cause, m->text);
    line->explanation = keep_text(m, &failed);
    const size_t place = marking->lines.count;
    if (failed || !frame_array_push(&marking->lines, line)) return FRAME_NO_MEMORY;
    if (line->verdict == FRAME_MARKING_DIFFERS && marking->first > place) marking->first = place;
    return FRAME_OK;
}

/* The slip is looked for in what the student's earlier answers lead to, then in the working's own numbers. */
static frame_status explain(marker *m, size_t at, double given, frame_cause *cause) {
    frame_status status = frame_student_explain(&m->student, at, given, m->student.values[at], cause);
    if (status || cause->cause != FRAME_MARKING_NONE || m->student.roots[at] == FRAME_NO_ROOT) return status;
    frame_student right = m->student;
    right.values = m->recorded;
    return frame_student_explain(&right, at, given, m->recorded[at], cause);
}

/* Marks the answer to an entry; from then on the student's value stands for it. */
static frame_status mark_entry(marker *m, size_t at) {
    const frame_entry *entry = frame_entry_at(m->student.w, at);
    frame_student *student = &m->student;
    frame_working_answer answer;
    answer_at(m, m->student.answered[at], &answer);
    frame_marking_line line = {.given = answer.value, .expected = entry->value, .follows = student->values[at]};
    line.step = (int32_t)entry->shown_before;
    line.ratio = entry->value != 0 ? answer.value / entry->value : FRAME_NOT_GIVEN;
    line.verdict = judge(m, at, answer.value);
    frame_cause cause = {
        .cause = FRAME_MARKING_NONE, .symbols = {FRAME_NO_ROOT, FRAME_NO_ROOT}, .factor = FRAME_NOT_GIVEN};
    if (line.verdict == FRAME_MARKING_DIFFERS && explain(m, at, answer.value, &cause)) return FRAME_NO_MEMORY;
    line.cause = cause.cause;
    line.factor = cause.factor;
    const frame_status status = add_line(m, at, &line, &cause);
    student->values[at] = answer.value;
    if (line.verdict == FRAME_MARKING_DIFFERS) student->roots[at] = at;
    if (line.verdict == FRAME_MARKING_AGREES || line.verdict == FRAME_MARKING_ROUNDED)
        student->roots[at] = FRAME_NO_ROOT;
    return status;
}

static frame_status mark_entries(marker *m) {
    const frame_working *w = m->student.w;
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < w->entries.count && !status; i++) {
        const frame_entry *entry = frame_entry_at(w, i);
        m->student.values[i] = m->recorded[i] = entry->value;
        m->student.roots[i] = FRAME_NO_ROOT;
        if (!frame_entry_has_value(entry)) continue;
        status = frame_student_follow(&m->student, i);
        if (!status && m->student.answered[i] != FRAME_NO_ROOT) status = mark_entry(m, i);
    }
    return status;
}

static int is_placed(const marker *m, size_t index) {
    for (size_t i = 0; i < m->student.w->entries.count; i++)
        if (m->student.answered[i] == index) return 1;
    return 0;
}

/* The answers whose symbols the working has not. */
static frame_status mark_strangers(marker *m) {
    for (size_t i = 0; i < m->answer_count; i++) {
        if (is_placed(m, i)) continue;
        int failed = 0;
        frame_working_answer answer;
        answer_at(m, i, &answer);
        const frame_cause none = {.cause = FRAME_MARKING_NONE, .symbols = {FRAME_NO_ROOT, FRAME_NO_ROOT}};
        frame_marking_line line = {
            .given = answer.value, .verdict = FRAME_MARKING_UNKNOWN, .cause = FRAME_MARKING_NONE};
        line.expected = line.follows = line.ratio = line.factor = FRAME_NOT_GIVEN;
        line.step = -1;
        line.unit = "";
        line.symbol = frame_arena_text(&m->marking->texts, answer.symbol, &failed);
        if (failed || add_line(m, FRAME_NO_ROOT, &line, &none)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status read_answers(const frame_working_answer *answers, size_t count) {
    if (count && !answers)
        return frame_fail(FRAME_REQUIRED, "answers", "NULL", "a list of answers",
                          "answers: NULL is not a list of answers");
    for (size_t i = 0; i < count; i++) {
        frame_working_answer answer;
        uint64_t assumed = 0;
        const void *place = (const char *)answers + i * answers->struct_size;
        if (frame_working_answer_read(place, &answer, &assumed)) return frame_fail_within("answers[%zu].", i);
    }
    return FRAME_OK;
}

static frame_status mark_all(marker *m, size_t entries) {
    const size_t room = entries ? entries : 1;
    m->student.values = frame_take_zeroed(room, sizeof *m->student.values);
    m->recorded = frame_take_zeroed(room, sizeof *m->recorded);
    m->student.roots = frame_take_zeroed(room, sizeof *m->student.roots);
    m->student.answered = frame_take_zeroed(room, sizeof *m->student.answered);
    frame_status status =
        m->student.values && m->recorded && m->student.roots && m->student.answered ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status) status = frame_text_new(&m->text);
    for (size_t i = 0; i < entries && !status; i++) m->student.answered[i] = FRAME_NO_ROOT;
    if (!status) place_answers(m);
    if (!status) status = mark_entries(m);
    if (!status) status = mark_strangers(m);
    frame_text_free(m->text);
    frame_give(m->student.answered);
    frame_give(m->student.roots);
    frame_give(m->recorded);
    frame_give(m->student.values);
    return status;
}

frame_status frame_working_mark(const frame_working *working, const frame_working_answer *answers, size_t answer_count,
                                double tolerance, frame_marking **marking) {
    if (!working || !marking)
        return frame_fail(FRAME_REQUIRED, working ? "marking" : "working", "NULL",
                          "a working and a place for the marking",
                          "working: a working and a place for the marking are needed");
    if (tolerance == FRAME_NOT_GIVEN) tolerance = 0.005;
    if (!(tolerance > 0 && tolerance <= 0.5))
        return frame_fail_number(FRAME_OUT_OF_RANGE, "tolerance", tolerance, ">0..0.5");
    frame_status status = read_answers(answers, answer_count);
    if (status) return status;
    frame_marking *made = frame_take_zeroed(1, sizeof *made);
    if (!made) return FRAME_NO_MEMORY;
    made->lines.item_size = sizeof(frame_marking_line);
    made->first = SIZE_MAX;
    marker m = {.student = {.w = working, .tolerance = tolerance},
                .answers = answers,
                .answer_count = answer_count,
                .marking = made};
    status = mark_all(&m, working->entries.count);
    if (status) {
        frame_marking_free(made);
        return frame_fail(status, "", "", "", "no memory");
    }
    if (made->first > made->lines.count) made->first = made->lines.count;
    *marking = made;
    return FRAME_OK;
}
