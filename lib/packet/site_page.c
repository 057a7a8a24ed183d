/* The packet of a framed site: one page that needs no network, and beside it every list and drawing as a file. */
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "packet/framing.h"
#include "working/render.h"

frame_text *frame_packet_file_new(frame_array *files, const char *name) {
    frame_packet_file file = {{0}, NULL};
    snprintf(file.name, sizeof file.name, "%s", name);
    if (frame_text_new(&file.text)) return NULL;
    if (frame_array_push(files, &file)) return file.text;
    frame_text_free(file.text);
    return NULL;
}

void frame_packet_slug(const char *name, char slug[80]) {
    size_t length = 0;
    for (const char *c = name; *c && length < 79; c++) {
        const int letter = (*c >= 'a' && *c <= 'z') || (*c >= '0' && *c <= '9');
        const int capital = *c >= 'A' && *c <= 'Z';
        if (letter || capital)
            slug[length++] = (char)(capital ? *c + 32 : *c);
        else if (length && slug[length - 1] != '-')
            slug[length++] = '-';
    }
    while (length && slug[length - 1] == '-') length--;
    slug[length] = 0;
}

/* -- cover -- */

static void add_share(frame_text *into, const char *before, double ratio) {
    frame_text_add(into, before);
    frame_text_add_fixed(into, 100 * ratio, 0);
    frame_text_add(into, " %");
}

static void add_pounds(frame_text *into, const char *what, double put, double down) {
    if (put == 0) return;
    frame_text_addf(into, "<tr><td>%s</td><td class=\"n\">", what);
    frame_text_add_fixed(into, put, 0);
    frame_text_add(into, "</td><td class=\"n\">");
    frame_text_add_fixed(into, down, 0);
    frame_text_add(into, "</td></tr>\n");
}

static void add_balance(frame_site_page *page) {
    const frame_framing_out *out = &page->out;
    frame_text_add(
        page->into,
        "<table><caption>Loads put on, and what came down to the ground, in pounds</caption>"
        "<thead><tr><th>Kind</th><th class=\"n\">Put on</th><th class=\"n\">Down</th></tr></thead><tbody>\n");
    add_pounds(page->into, "dead", out->dead_lb, out->ground_dead_lb);
    add_pounds(page->into, "floor live", out->live_lb, out->ground_live_lb);
    add_pounds(page->into, "roof live", out->roof_live_lb, out->ground_roof_live_lb);
    add_pounds(page->into, "snow", out->snow_lb, out->ground_snow_lb);
    add_pounds(page->into, "wind", out->wind_lb, out->ground_wind_lb);
    frame_text_add(page->into, "</tbody></table>\n");
}

static void cover(frame_site_page *page) {
    const frame_framing_out *out = &page->out;
    frame_text *into = page->into;
    frame_text_add(into, "<header>\n<h1>");
    frame_text_add_xml(into, page->inside->name);
    frame_text_addf(into, "</h1>\n<p class=\"verdict\"><strong>%s</strong> %s</p>\n",
                    out->passes ? "Every check that was made passes." : "NOT EVERYTHING PASSES.",
                    out->passes ? "Read what was not checked." : "Read the failures before anything is cut.");
    frame_text_addf(into, "<p>%d checks, %d of them fail", (int)out->check_total, (int)out->failed_total);
    add_share(into, "; the hardest worked uses ", out->worst_ratio);
    frame_text_addf(into, " of what it may. %d sticks, ", (int)out->stick_total);
    frame_text_add(into, out->fits == 1   ? "proved to fit: no two share wood"
                         : out->fits == 0 ? "NOT ALL OF WHICH FIT"
                                          : "none of them placed");
    if (out->wood_lb != FRAME_NOT_GIVEN) {
        frame_text_add(into, "; ");
        frame_text_add_fixed(into, out->wood_lb, 0);
        frame_text_add(into, " lb of wood, ");
        frame_text_add_fixed(into, out->board_feet, 0);
        frame_text_add(into, " board feet");
    }
    if (out->cost != FRAME_NOT_GIVEN) {
        frame_text_addf(into, "; %d boards for ", (int)out->boards_used);
        frame_text_add_fixed(into, out->cost, 2);
    }
    frame_text_addf(into, ".</p>\n<p>Weakest source among the figures: %s. %s</p>\n",
                    frame_word_text("known", out->known), frame_word_meaning("known", out->known));
    frame_text_add(into, "</header>\n");
}

static const struct {
    const char *id, *title;
} sheets[] = {{"failures", "What does not pass"},
              {"cautions", "Cautions"},
              {"unchecked", "Not checked"},
              {"assumed", "Assumed"},
              {"drawings", "Drawings and layout marks"},
              {"sticks", "Sticks and their cuts"},
              {"checks", "Checks"},
              {"joints", "Joints and nailing"},
              {"footings", "Footings"},
              {"studs", "Studs and their loads"},
              {"options", "Sizes chosen"},
              {"path", "Loads, bearer by bearer"},
              {"stages", "Order of erection"},
              {"boards", "Shopping list and cutting plan"}};

static void contents(frame_text *into) {
    frame_text_add(into, "<nav aria-label=\"Sheets\">\n<ol>\n");
    for (size_t i = 0; i < sizeof sheets / sizeof *sheets; i++)
        frame_text_addf(into, "<li><a href=\"#%s\">%s</a></li>\n", sheets[i].id, sheets[i].title);
    frame_text_add(into,
                   "</ol>\n</nav>\n<form class=\"search\" role=\"search\" onsubmit=\"return false\"><label "
                   "for=\"find\">Find a stick, "
                   "wall, check or joint by name</label><input id=\"find\" type=\"search\" autocomplete=\"off\">"
                   "<output id=\"found\" for=\"find\" aria-live=\"polite\"></output></form>\n");
}

static void failures(frame_site_page *page) {
    int count = 0;
    frame_packet_heading(page->into, "failures", "What does not pass");
    frame_text_add(page->into, "<ul>\n");
    for (size_t i = 0; i < frame_framing_check_count(page->framing); i++) {
        frame_framing_check check;
        frame_framing_check_at(page->framing, i, &check);
        if (check.passes && check.code_passes != 0) continue;
        count++;
        frame_text_add(page->into, "<li>");
        frame_text_add_xml(page->into, check.name);
        add_share(page->into, ": ", check.ratio);
        frame_text_addf(page->into, ", %s. ", check.governs);
        frame_text_add_xml(page->into, check.verdict);
        frame_text_add(page->into, "</li>\n");
    }
    for (size_t i = 0; i < frame_framing_footing_count(page->framing); i++) {
        frame_framing_footing footing;
        frame_framing_footing_at(page->framing, i, &footing);
        if (footing.passes != 0) continue;
        count++;
        frame_text_add(page->into, "<li>The footing under ");
        frame_text_add_xml(page->into, footing.name);
        frame_text_add(page->into, " is too small.</li>\n");
    }
    for (size_t i = 0; i < frame_framing_load_count(page->framing); i++) {
        frame_framing_load load;
        frame_framing_load_at(page->framing, i, &load);
        if (load.on_kind != FRAME_BEARER_NOTHING || count > 60) continue;
        count++;
        frame_text_add(page->into, "<li>Nothing carries ");
        frame_text_add_xml(page->into, load.of);
        frame_text_add(page->into, " at x ");
        frame_packet_length(page->into, load.x_in);
        frame_text_add(page->into, ", y ");
        frame_packet_length(page->into, load.y_in);
        frame_text_add(page->into, ".</li>\n");
    }
    if (!count) frame_text_add(page->into, "<li>Nothing: every check that was made passes.</li>\n");
    frame_text_add(page->into, "</ul>\n");
    add_balance(page);
    frame_text_add(page->into, "</section>\n");
}

/* Notes of a kind: those about the whole first, then gathered by what they are about. */
void frame_site_notes(frame_site_page *page, frame_note_kind kind, const char *id, const char *title) {
    const frame_array *notes = &page->answer->lists[FRAME_FRAMING_NOTES];
    char *done = frame_take_zeroed(notes->count + 1, 1);
    frame_packet_heading(page->into, id, title);
    for (size_t i = 0; done && i < notes->count; i++) {
        const frame_framing_note *first = &FRAME_ITEM(frame_framing_note, *notes, i);
        if (first->kind != kind || done[i]) continue;
        frame_text_add(page->into, "<h3>");
        frame_text_add_xml(page->into, first->about);
        frame_text_add(page->into, "</h3>\n<ul>\n");
        for (size_t k = i; k < notes->count; k++) {
            const frame_framing_note *note = &FRAME_ITEM(frame_framing_note, *notes, k);
            if (note->kind != kind || strcmp(note->about, first->about) != 0) continue;
            done[k] = 1;
            frame_text_add(page->into, "<li>");
            frame_text_add_xml(page->into, note->text);
            frame_text_add(page->into, "</li>\n");
        }
        frame_text_add(page->into, "</ul>\n");
    }
    if (!done) frame_text_fail(page->into);
    frame_give(done);
    frame_text_add(page->into, "</section>\n");
}

static void begin(frame_site_page *page) {
    frame_text_add(page->into,
                   "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                   "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
    frame_text_add_xml(page->into, page->inside->name);
    frame_text_add(page->into, "</title>\n<style>\n");
    frame_text_add(page->into, frame_working_stylesheet());
    frame_text_add(page->into, frame_packet_style);
    frame_text_add(page->into, frame_site_style);
    frame_text_add(page->into, "</style>\n</head>\n<body>\n<main>\n");
}

static frame_status write_page(frame_site_page *page) {
    begin(page);
    cover(page);
    contents(page->into);
    failures(page);
    frame_site_notes(page, FRAME_NOTE_CAUTION, "cautions", "Cautions");
    frame_site_notes(page, FRAME_NOTE_NOT_CHECKED, "unchecked", "Not checked");
    frame_site_notes(page, FRAME_NOTE_ASSUMED, "assumed", "Assumed");
    frame_status status = frame_site_drawings(page);
    if (!status) status = frame_site_sticks(page);
    if (!status) status = frame_site_checks(page);
    if (!status) status = frame_site_tables(page);
    if (!status) status = frame_site_buying(page);
    frame_text_addf(
        page->into,
        "</main>\n<footer><p>Computed by libframe %s. Local code and the building official decide.</p></footer>\n"
        "<script>\n%s</script>\n</body>\n</html>\n",
        frame_version(), frame_site_script);
    return status ? status : frame_text_state(page->into);
}

static frame_status write_lists(frame_site_page *page) {
    frame_status status = FRAME_OK;
    for (size_t list = 0; list < page->answer->calculation->list_count && !status; list++) {
        char name[96];
        snprintf(name, sizeof name, "%s.csv", page->answer->calculation->lists[list].plural);
        frame_text *file = frame_packet_file_new(page->files, name);
        status = file ? frame_site_csv(page->answer, list, file) : FRAME_NO_MEMORY;
    }
    frame_text *all = status ? NULL : frame_packet_file_new(page->files, "all.json");
    if (status) return status;
    return all ? frame_site_all_json(page->answer, all) : FRAME_NO_MEMORY;
}

static frame_status fill(const frame_framing *framing, frame_packet *packet) {
    frame_site_page page = {.framing = framing,
                            .answer = (const frame_answer *)framing,
                            .inside = frame_framing_inside_of(framing),
                            .files = &packet->files};
    packet->files.item_size = sizeof(frame_packet_file);
    snprintf(packet->name, sizeof packet->name, "%s", page.inside->name);
    frame_status status = frame_framing_result(framing, &page.out);
    page.into = status ? NULL : frame_packet_file_new(&packet->files, "index.html");
    if (!status && !page.into) status = FRAME_NO_MEMORY;
    if (!status) status = frame_text_new(&page.scratch);
    if (!status) status = write_page(&page);
    frame_text_free(page.scratch);
    return status ? status : write_lists(&page);
}

frame_status frame_framing_packet(const frame_framing *framing, frame_packet **packet) {
    if (!framing) return frame_fail(FRAME_REQUIRED, "framing", "NULL", "a framing", "framing: NULL is no framing");
    if (!packet)
        return frame_fail(FRAME_REQUIRED, "packet", "NULL", "a place for the packet", "packet: NULL is no place");
    frame_packet *made = frame_take_zeroed(1, sizeof *made);
    if (!made) return FRAME_NO_MEMORY;
    const frame_status status = fill(framing, made);
    if (status)
        frame_packet_free(made);
    else
        *packet = made;
    return status;
}
