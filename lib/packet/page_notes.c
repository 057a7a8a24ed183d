/* Notes of one kind, gathered by what they are about. */
#include <string.h>

#include "packet/page.h"

/* All notes about one thing, from the first on; marks those that are written. */
static void about_one(frame_text *into, const frame_page_lists *lists, frame_note_kind kind, size_t first, char *done) {
    frame_page_note one, note;
    lists->note(lists->of, first, &one);
    frame_text_add(into, "<h3>");
    frame_text_add_xml(into, one.about);
    frame_text_add(into, "</h3>\n<ul>\n");
    for (size_t i = first; i < lists->note_count; i++) {
        lists->note(lists->of, i, &note);
        if (note.kind != kind || strcmp(note.about, one.about) != 0) continue;
        done[i] = 1;
        frame_text_add(into, "<li>");
        frame_text_add_xml(into, note.text ? note.text : "");
        frame_text_add(into, "</li>\n");
    }
    frame_text_add(into, "</ul>\n");
}

void frame_page_notes(frame_text *into, const frame_page_lists *lists, frame_note_kind kind, const char *id,
                      const char *title) {
    char *done = frame_take_zeroed(lists->note_count + 1, 1);
    int written = 0;
    frame_packet_heading(into, id, title);
    if (!done) frame_text_fail(into);
    for (int pass = 0; pass < 2 && done; pass++)
        for (size_t i = 0; i < lists->note_count; i++) {
            frame_page_note note;
            lists->note(lists->of, i, &note);
            if (note.kind != kind || done[i] || (!pass && strcmp(note.about, lists->name) != 0)) continue;
            written = 1;
            about_one(into, lists, kind, i, done);
        }
    if (done && !written) frame_text_add(into, "<p>None.</p>\n");
    frame_give(done);
    frame_text_add(into, "</section>\n");
}
