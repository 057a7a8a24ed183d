/* The shell of a packet's page, and what its cover counts. */
#include "packet/page.h"

#include <frame/working.h>

#include "tape/tape.h"
#include "working/render.h"

void frame_packet_length(frame_text *into, double inches) {
    frame_text *one;
    if (frame_text_new(&one)) {
        frame_text_fail(into);
        return;
    }
    frame_tape_add(one, inches, 16);
    frame_text_add_xml(into, frame_text_chars(one));
    frame_text_free(one);
}

void frame_packet_heading(frame_text *into, const char *id, const char *title) {
    frame_text_addf(into, "<section id=\"%s\">\n<h2>%s</h2>\n", id, title);
}

void frame_page_begin(frame_text *into, const char *name) {
    frame_text_add(into,
                   "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                   "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
    frame_text_add_xml(into, name);
    frame_text_add(into, "</title>\n<style>\n");
    frame_text_add(into, frame_working_stylesheet());
    frame_text_add(into, frame_packet_style);
    frame_text_add(into, "</style>\n</head>\n<body>\n<main>\n");
}

void frame_page_end(frame_text *into) {
    frame_text_addf(
        into,
        "</main>\n<footer><p>Computed by libframe %s. Local code and the building official decide.</p></footer>\n"
        "<script>\n%s</script>\n</body>\n</html>\n",
        frame_version(), frame_page_script);
}

void frame_page_contents(frame_text *into, const frame_page_sheet *sheets, size_t count) {
    frame_text_add(into, "<nav aria-label=\"Sheets\">\n<ol>\n");
    for (size_t i = 0; i < count; i++)
        frame_text_addf(into, "<li><a href=\"#%s\">%s</a></li>\n", sheets[i].id, sheets[i].title);
    frame_text_add(into, "</ol>\n</nav>\n");
}

/* -- cover -- */

static const struct {
    frame_note_kind kind;
    const char *id, *one, *many;
} counted[] = {{FRAME_NOTE_CAUTION, "cautions", "caution", "cautions"},
               {FRAME_NOTE_NOT_CHECKED, "unchecked", "thing that nobody has checked", "things that nobody has checked"},
               {FRAME_NOTE_ASSUMED, "assumed", "assumption", "assumptions"}};

static void add_counts(frame_text *into, const frame_page_lists *lists) {
    frame_text_add(into, "<ul class=\"mind\">\n");
    for (size_t k = 0; k < sizeof counted / sizeof *counted; k++) {
        size_t count = 0;
        for (size_t i = 0; i < lists->note_count; i++) {
            frame_page_note note;
            lists->note(lists->of, i, &note);
            count += note.kind == counted[k].kind;
        }
        frame_text_addf(into, "<li><a href=\"#%s\">%zu %s</a></li>\n", counted[k].id, count,
                        count == 1 ? counted[k].one : counted[k].many);
    }
    frame_text_add(into, "</ul>\n");
}

void frame_page_cover(frame_text *into, const frame_page_lists *lists, int32_t boards_used, frame_known known) {
    if (lists->cost != FRAME_NOT_GIVEN) {
        frame_text_addf(into, "; %d boards for ", (int)boards_used);
        frame_text_add_fixed(into, lists->cost, 2);
    }
    frame_text_addf(into, ".</p>\n<p>Weakest source among the figures: %s. %s</p>\n", frame_word_text("known", known),
                    frame_word_meaning("known", known));
    add_counts(into, lists);
}
