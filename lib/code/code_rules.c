/* Rules found by their words: those read in the adoption texts, the limits of stairs, and those as read elsewhere. */
#include <string.h>

#include "base/answer.h"
#include "base/error.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_rules.h"
#include "table_code_rules_read.h"
#include "table_code_stair_limits.h"
#include "working/calculation.h"

enum {
    READ_ROWS = frame_code_rules_read_rows,
    STAIR_ROWS = frame_code_stair_limits_rows,
    ROWS = frame_code_rules_rows
};

/* A rule of any of the three tables. */
typedef struct rule {
    const char *item, *condition, *text, *unit, *clause, *words, *book, *source, *note;
    double value;
    unsigned editions;
    frame_known known;
} rule;

static const char *stair_unit(const frame_code_stair_limits_row *row) {
    static const char *const inches[] = {"in min", "in max", "in, less than"};
    if (!strcmp(row->unit, "in")) return inches[row->bound - 1];
    return !strcmp(row->unit, "percent") ? "percent max" : "risers max";
}

static rule rule_at(int i) {
    if (i < READ_ROWS) {
        const frame_code_rules_read_row *row = &frame_code_rules_read_table[i];
        return (rule){row->item, row->condition, row->text, row->unit,  row->clause,   row->words,
                      "IRC",     row->source,    "",        row->value, row->editions, row->known};
    }
    i -= READ_ROWS;
    if (i < STAIR_ROWS) {
        const frame_code_stair_limits_row *row = &frame_code_stair_limits_table[i];
        return (rule){row->item, "",          "", stair_unit(row), row->clause,   "stairs stairway guard handrail",
                      "IRC",     row->source, "", row->value,      row->editions, row->known};
    }
    const frame_code_rules_row *row = &frame_code_rules_table[i - STAIR_ROWS];
    return (rule){row->item,   row->condition, row->text,     row->unit,
                  row->clause, row->words,     row->book,     frame_code_source_text(row->source),
                  row->note,   row->value,     row->editions, row->known};
}

static int lower(char c) {
    return c >= 'A' && c <= 'Z' ? c + 32 : c;
}

static int in_word(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' || c == '(';
}

/* Whether some word of the text begins with the one asked for. */
static int begins(const char *text, const char *word, size_t length) {
    for (size_t at = 0; text[at]; at++) {
        size_t k = 0;
        if (at && in_word(text[at - 1])) continue;
        while (k < length && text[at + k] && lower(text[at + k]) == lower(word[k])) k++;
        if (k == length) return 1;
    }
    return 0;
}

/* Whether the rule has every word asked for, one way or another, plurals as their singulars. */
static int has_all(const rule *each, const char *words) {
    while (*words) {
        while (*words && !in_word(*words)) words++;
        size_t length = 0;
        while (in_word(words[length])) length++;
        if (!length) return 1;
        const char *const word = words;
        words += length;
        if (length > 3 && lower(word[length - 1]) == 's' && lower(word[length - 2]) != 's') length--;
        if (!begins(each->item, word, length) && !begins(each->condition, word, length) &&
            !begins(each->words, word, length) && !begins(each->clause, word, length) &&
            !begins(each->text, word, length))
            return 0;
    }
    return 1;
}

static frame_status add(const rule *each, int elsewhere, frame_answer *answer, frame_code_rules_out *out,
                        frame_working *w) {
    frame_code_rules_rule *found = frame_answer_add(answer, 0);
    if (!found) return FRAME_NO_MEMORY;
    found->item = each->item;
    found->condition = each->condition;
    found->text = each->text;
    found->unit = each->unit;
    found->clause = each->clause;
    found->book = each->book;
    found->source = each->source;
    found->note = each->note;
    found->value = each->value;
    found->known = each->known;
    found->elsewhere = elsewhere;
    if (each->known > out->known) out->known = each->known;
    out->cautions |= frame_code_cautions(each->known);
    if (elsewhere) FRAME_CODE_WARN(out, AMENDED);
    if (*each->note) FRAME_CODE_WARN(out, NOTE);
    FRAME_CASE(w, each->item, "a rule found", each->source);
    return FRAME_OK;
}

/* The amendments whose words fit, before all others. */
static frame_status gather_amendments(const frame_code_rules_in *in, frame_answer *answer, frame_code_rules_out *out,
                                      frame_working *w) {
    for (size_t i = 0; in->overlay && i < in->overlay->rows.count; i++) {
        const overlay_row *row = &FRAME_ITEM(const overlay_row, in->overlay->rows, i);
        if (!frame_code_overlay_matches(row, &frame_code_rules_calculation, in)) continue;
        rule each = {.words = "", .book = "local amendment", .value = FRAME_NOT_GIVEN, .known = FRAME_KNOWN_USER};
        each.item = frame_answer_text(answer, frame_code_overlay_text(row, "item"));
        each.condition = frame_answer_text(answer, frame_code_overlay_text(row, "condition"));
        each.text = frame_answer_text(answer, frame_code_overlay_text(row, "text"));
        each.unit = frame_answer_text(answer, frame_code_overlay_text(row, "unit"));
        each.clause = frame_answer_text(answer, frame_code_overlay_text(row, "clause"));
        each.source = frame_answer_text(answer, row->source);
        each.note = frame_answer_text(answer, row->note);
        for (size_t k = 0; k < row->count; k++)
            if (!strcmp(row->cells[k].field->name, "value")) each.value = row->cells[k].low;
        if (answer->failed) return FRAME_NO_MEMORY;
        if (!has_all(&each, in->words)) continue;
        if (add(&each, 0, answer, out, w)) return FRAME_NO_MEMORY;
        FRAME_CODE_WARN(out, OVERLAY);
    }
    return FRAME_OK;
}

/* The rules of one kind: of the edition and so well known, or of other books. */
static frame_status gather(const frame_code_rules_in *in, frame_known known, frame_answer *answer,
                           frame_code_rules_out *out, unsigned *others, frame_working *w) {
    for (int i = 0; i < READ_ROWS + STAIR_ROWS + ROWS; i++) {
        const rule each = rule_at(i);
        const int here = (each.editions & frame_code_bit(in->edition)) != 0;
        if (here ? each.known != known : known != FRAME_KNOWN_USER) continue;
        if (!has_all(&each, in->words)) continue;
        *others |= each.editions;
        if (!here && !in->elsewhere) continue;
        if (add(&each, !here, answer, out, w)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status nothing(const frame_code_rules_in *in, unsigned others) {
    char years[120];
    if (others & ~frame_code_bit(in->edition)) {
        frame_code_editions(others & ~frame_code_bit(in->edition), years, sizeof years);
        return frame_fail(FRAME_NO_VALUE, "edition", frame_word_text("code_edition", in->edition), years,
                          "edition: no rule of %s with all of \"%.60s\" is known here; there are such of %s",
                          frame_word_text("code_edition", in->edition), in->words, years);
    }
    return frame_fail(
        FRAME_NO_VALUE, "words", in->words,
        "bearing, blocking, bridging, lateral support, opening, header, trimmer, ridge, collar tie, rafter "
        "tie, purlin, top plate, stud, cripple wall, notch, hole, birdsmouth, deck, ledger, guard, "
        "handrail, stairs, subfloor, live load, deflection, a clause",
        "words: no rule here has all of \"%.80s\"; ask with fewer words, or set elsewhere for the rules of "
        "other places and years",
        in->words);
}

static frame_status solve(const frame_code_rules_in *in, frame_answer *answer, frame_code_rules_out *out,
                          frame_working *w) {
    /* Best known first; last those of other books, for which USER stands here. */
    static const frame_known order[] = {FRAME_KNOWN_READ, FRAME_KNOWN_COMPUTED, FRAME_KNOWN_SECONDARY,
                                        FRAME_KNOWN_MEMORY, FRAME_KNOWN_USER};
    unsigned others = 0;
    const char *first_word = in->words;
    while (*first_word && !in_word(*first_word)) first_word++;
    if (!*first_word)
        return frame_fail(FRAME_REQUIRED, "words", in->words, "\"joist bearing\", \"collar tie\", \"R602.7\", ...",
                          "words: there is no word to look for");
    out->known = FRAME_KNOWN_READ;
    FRAME_HEADING(w, "Rules by their words");
    if (gather_amendments(in, answer, out, w)) return FRAME_NO_MEMORY;
    for (int i = 0; i < (int)(sizeof order / sizeof *order); i++)
        if (gather(in, order[i], answer, out, &others, w)) return FRAME_NO_MEMORY;
    if (!answer->lists[0].count) return nothing(in, others);
    const frame_code_rules_rule *first = answer->lists[0].items;
    FRAME_CODE_SAY(out, in->edition, first->clause, first->source, first->note, out->known);
    frame_code_record_known(out->known, first->note, w);
    FRAME_CODE_UNCHECKED(out, CALCULATED);
    out->rule_count = (int32_t)answer->lists[0].count;
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(code_rules, solve);
