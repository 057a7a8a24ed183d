/* The packet of a framed site: one page that needs no network, and beside it every list and drawing as a file. */
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "packet/framing.h"
#include "packet/page.h"

static int is_taken(const frame_array *files, const char *name) {
    for (size_t i = 0; i < files->count; i++)
        if (!strcmp(FRAME_ITEM(frame_packet_file, *files, i).name, name)) return 1;
    return 0;
}

/* Names that differ by capitals or accents alone have one slug: the second takes a number. */
static void name_file(const frame_array *files, const char *name, char own[96]) {
    const char *ending = strrchr(name, '.');
    const int stem = ending ? (int)(ending - name) : (int)strlen(name);
    snprintf(own, 96, "%s", name);
    for (int number = 2; is_taken(files, own); number++)
        snprintf(own, 96, "%.*s-%d%s", stem < 80 ? stem : 80, name, number, ending ? ending : "");
}

frame_text *frame_packet_file_new(frame_array *files, const char *name) {
    frame_packet_file file = {{0}, NULL};
    name_file(files, name, file.name);
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
    if (!length) strcpy(slug, "part"); /* a name of other letters alone */
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

static void cover(frame_site_page *page, const frame_page_lists *lists) {
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
    frame_page_cover(into, lists, out->boards_used, out->known);
    frame_text_add(into, "</header>\n");
}

static const frame_page_sheet sheets[] = {{"failures", "What does not pass"},
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
    frame_page_contents(into, sheets, sizeof sheets / sizeof *sheets);
    frame_text_add(into,
                   "<form class=\"search\" role=\"search\" onsubmit=\"return false\"><label "
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

FRAME_PAGE_LISTS(framing)

static frame_status write_page(frame_site_page *page) {
    const frame_page_lists lists = page_lists(page->framing, page->inside->name, page->out.cost);
    frame_text *into = page->into;
    frame_page_begin(into, page->inside->name);
    cover(page, &lists);
    contents(into);
    failures(page);
    frame_page_notes(into, &lists, FRAME_NOTE_CAUTION, "cautions", "Cautions");
    frame_page_notes(into, &lists, FRAME_NOTE_NOT_CHECKED, "unchecked", "Not checked");
    frame_page_notes(into, &lists, FRAME_NOTE_ASSUMED, "assumed", "Assumed");
    frame_status status = frame_site_drawings(page);
    if (!status) status = frame_site_sticks(page);
    if (!status) status = frame_site_checks(page);
    if (!status) status = frame_site_tables(page);
    frame_page_buying(into, &lists);
    frame_page_end(into);
    return status ? status : frame_text_state(into);
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
