/* Sources and notes by their ids, and the cautions that follow from how a figure is known. */
#include "code/book.h"

#include "table_code_notes.h"
#include "table_code_sources.h"

/* The ids of both tables count from 1 without gaps: a test holds them to it. */
const char *frame_code_source_text(int id) {
    return id > 0 && id <= frame_code_sources_rows ? frame_code_sources_table[id - 1].source : "";
}

const char *frame_code_note_text(int id) {
    return id > 0 && id <= frame_code_notes_rows ? frame_code_notes_table[id - 1].source : "";
}

void frame_code_record_known(frame_known known, const char *note, frame_working *w) {
    static const char look_up[] = "look it up in the printed code before relying on it";
    if (known == FRAME_KNOWN_SECONDARY)
        FRAME_CASE(w, "the figure rests on a second-hand copy of the code", look_up, "known: secondary");
    if (known == FRAME_KNOWN_MEMORY)
        FRAME_CASE(w, "the figure is recalled, the text was not seen", look_up, "known: memory");
    if (*note) FRAME_CASE(w, "there is a note on the figure as printed", note, "notes of the code book");
}

uint64_t frame_code_cautions(frame_known known) {
    uint64_t cautions = FRAME_BIT(FRAME_CODE_CAUTION_LOCAL) | FRAME_BIT(FRAME_CODE_CAUTION_SCOPE);
    if (known == FRAME_KNOWN_SECONDARY) cautions |= FRAME_BIT(FRAME_CODE_CAUTION_SECONDARY);
    if (known == FRAME_KNOWN_MEMORY) cautions |= FRAME_BIT(FRAME_CODE_CAUTION_MEMORY);
    return cautions;
}
