/* The packet: made from a job, written as a page and as lists. */
#include "packet/packet.h"

#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/memory.h"
#include "packet/framing.h"
#include "packet/page.h"

frame_status frame_building_packet(const frame_building_in *in, frame_packet **packet) {
    frame_building *building;
    if (!packet)
        return frame_fail(FRAME_REQUIRED, "packet", "NULL", "a place for the packet", "packet: NULL is no place");
    const frame_status status = frame_building_solve(in, &building, NULL);
    if (status) return status;
    frame_packet *made = frame_take_zeroed(1, sizeof *made);
    if (!made) {
        frame_building_free(building);
        return FRAME_NO_MEMORY;
    }
    made->building = building;
    snprintf(made->name, sizeof made->name, "%s", in->name);
    frame_building_result(building, &made->out);
    *packet = made;
    return FRAME_OK;
}

void frame_packet_free(frame_packet *packet) {
    if (!packet) return;
    frame_building_free(packet->building);
    for (size_t i = 0; i < packet->files.count; i++)
        frame_text_free(FRAME_ITEM(frame_packet_file, packet->files, i).text);
    frame_array_give(&packet->files);
    frame_give(packet);
}

FRAME_PAGE_LISTS(building)

static void write_cover(const frame_packet *packet, const frame_page_lists *lists, frame_text *into) {
    const frame_building_out *out = &packet->out;
    frame_text_add(into, "<header>\n<h1>");
    frame_text_add_xml(into, packet->name);
    frame_text_add(into, "</h1>\n");
    frame_text_addf(into, "<p class=\"verdict\"><strong>%s</strong> %s</p>\n",
                    out->passes ? "Every check passes." : "NOT EVERY CHECK PASSES.",
                    out->passes ? "" : "See the checks before anything is cut.");
    frame_text_addf(into, "<p>%d members to cut", (int)out->member_total);
    if (out->worst_ratio != FRAME_NOT_GIVEN) {
        frame_text_add(into, "; the hardest worked check uses ");
        frame_text_add_fixed(into, 100 * out->worst_ratio, 0);
        frame_text_add(into, " % of what it may");
    }
    frame_page_cover(into, lists, out->boards_used, out->known);
    frame_text_add(into, "</header>\n");
}

static const frame_page_sheet sheets[] = {{"cautions", "Cautions"},
                                          {"unchecked", "Not checked"},
                                          {"assumed", "Assumed"},
                                          {"members", "Sticks and their cuts"},
                                          {"checks", "Checks"},
                                          {"marks", "Layout marks"},
                                          {"boards", "Shopping list and cutting plan"}};

/* A file made with the packet of a framed site. */
frame_status frame_packet_copy(const frame_packet *packet, const char *name, frame_text *into) {
    for (size_t i = 0; i < packet->files.count; i++) {
        const frame_packet_file *file = &FRAME_ITEM(frame_packet_file, packet->files, i);
        if (strcmp(file->name, name) != 0) continue;
        frame_text_add_bytes(into, frame_text_chars(file->text), frame_text_length(file->text));
    }
    return frame_text_state(into);
}

frame_status frame_packet_html(const frame_packet *packet, frame_text *into) {
    if (!packet->building) return frame_packet_copy(packet, "index.html", into);
    const frame_page_lists lists = page_lists(packet->building, packet->name, packet->out.cost);
    frame_page_begin(into, packet->name);
    write_cover(packet, &lists, into);
    frame_page_contents(into, sheets, sizeof sheets / sizeof *sheets);
    frame_page_notes(into, &lists, FRAME_NOTE_CAUTION, "cautions", "Cautions");
    frame_page_notes(into, &lists, FRAME_NOTE_NOT_CHECKED, "unchecked", "Not checked");
    frame_page_notes(into, &lists, FRAME_NOTE_ASSUMED, "assumed", "Assumed");
    frame_status status = frame_packet_members(packet, into);
    if (!status) status = frame_packet_checks(packet, into);
    if (!status) status = frame_packet_marks(packet, into);
    frame_page_buying(into, &lists);
    frame_page_end(into);
    return status ? status : frame_text_state(into);
}

static frame_status save(const frame_packet *packet, const char *folder, const char *file,
                         frame_status (*write)(const frame_packet *, frame_text *), frame_text *text) {
    char path[1024];
    if (snprintf(path, sizeof path, "%s/%s", folder, file) >= (int)sizeof path)
        return frame_fail(FRAME_NOT_WRITTEN, "folder", folder, "a shorter path", "folder: the path is too long");
    frame_text_clear(text);
    const frame_status status = write(packet, text);
    return status ? status : frame_text_save(text, path);
}

static frame_status save_files(const frame_packet *packet, const char *folder) {
    char path[1024];
    for (size_t i = 0; i < packet->files.count; i++) {
        const frame_packet_file *file = &FRAME_ITEM(frame_packet_file, packet->files, i);
        if (snprintf(path, sizeof path, "%s/%s", folder, file->name) >= (int)sizeof path)
            return frame_fail(FRAME_NOT_WRITTEN, "folder", folder, "a shorter path", "folder: the path is too long");
        const frame_status status = frame_text_save(file->text, path);
        if (status) return status;
    }
    return FRAME_OK;
}

frame_status frame_packet_write(const frame_packet *packet, const char *folder) {
    frame_text *text;
    if (!folder) return frame_fail(FRAME_REQUIRED, "folder", "NULL", "a folder", "folder: NULL is not a folder");
    if (!packet->building) return save_files(packet, folder);
    frame_status status = frame_text_new(&text);
    if (status) return status;
    status = save(packet, folder, "index.html", frame_packet_html, text);
    if (!status) status = save(packet, folder, "cuts.csv", frame_packet_cuts_csv, text);
    if (!status) status = save(packet, folder, "cuts.json", frame_packet_cuts_json, text);
    frame_text_free(text);
    return status;
}
