/* The sheets of the page: sticks, checks, marks, boards, notes. */
#include <stdio.h>
#include <string.h>

#include <frame/drawing.h>

#include "base/error.h"
#include "packet/packet.h"

static const char *or_empty(const char *text) {
    return text ? text : "";
}

/* One picture cannot keep its letters at nine points both on paper and on a phone: there are two, and the page shows
 * the one that fits. */
static const struct {
    const char *shown;
    double width_in, height_in;
} widths[] = {{"wide", 6.9, 2.5}, {"narrow", 3.6, 4}};

static frame_status add_drawing(const frame_stick *stick, frame_text *into) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < sizeof widths / sizeof *widths && !status; i++) {
        frame_drawing *drawing;
        status = frame_stick_drawing(stick, &drawing);
        if (status) return status;
        frame_text_addf(into, "<figure class=\"%s\">\n", widths[i].shown);
        status = frame_drawing_paper(drawing, widths[i].width_in, widths[i].height_in);
        if (!status) status = frame_drawing_svg(drawing, into);
        frame_text_add(into, "\n</figure>\n");
        frame_drawing_free(drawing);
    }
    return status;
}

static void cell(frame_text *into, const char *label, const char *value) {
    frame_text_addf(into, "<div><dt>%s</dt><dd>", label);
    frame_text_add_xml(into, or_empty(value));
    frame_text_add(into, "</dd></div>\n");
}

frame_status frame_packet_members(const frame_packet *packet, frame_text *into) {
    frame_packet_heading(into, "members", "Sticks and their cuts");
    for (size_t i = 0; i < frame_building_member_count(packet->building); i++) {
        frame_building_member member;
        frame_building_member_at(packet->building, i, &member);
        frame_text_add(into, "<article class=\"stick\">\n<h3>");
        frame_text_addf(into, "%d &times; ", (int)member.count);
        frame_text_add_xml(into, or_empty(member.name));
        frame_text_add(into, "</h3>\n<dl>\n<div><dt>Length over all</dt><dd>");
        frame_packet_length(into, member.length_in);
        frame_text_add(into, "</dd></div>\n");
        cell(into, "Section", member.section);
        cell(into, "Grade", member.grade);
        cell(into, "For", member.of);
        cell(into, "Cuts", member.cuts);
        frame_text_add(into, "</dl>\n");
        const frame_stick *stick = frame_building_stick(packet->building, i);
        const frame_status status = stick ? add_drawing(stick, into) : FRAME_OK;
        if (status) return status;
        frame_text_add(into, "</article>\n");
    }
    frame_text_add(into, "</section>\n");
    return FRAME_OK;
}

static frame_status add_check(const frame_packet *packet, size_t i, frame_text *into) {
    frame_building_check check;
    frame_status status = frame_building_check_at(packet->building, i, &check);
    if (status) return status;
    frame_text_addf(into, "<article class=\"check %s\">\n<h3>", check.passes ? "pass" : "fail");
    frame_text_add_xml(into, or_empty(check.name));
    frame_text_addf(into, "</h3>\n<p><strong>%s</strong>: ", check.passes ? "passes" : "DOES NOT PASS");
    frame_text_add_fixed(into, 100 * check.ratio, 1);
    frame_text_add(into, " % of what it may; ");
    frame_text_add_xml(into, or_empty(check.governs));
    frame_text_addf(into, " governs. Weakest source: %s.</p>\n", frame_word_text("known", check.known));
    frame_text_add(into, "<details><summary>Result</summary><pre>");
    frame_text_add_xml(into, or_empty(check.block));
    frame_text_add(into, "</pre></details>\n<details><summary>Working, line by line</summary>\n");
    const frame_working *working = frame_building_working(packet->building, i);
    if (working) status = frame_working_render(working, FRAME_RENDER_HTML, into);
    frame_text_add(into, "</details>\n</article>\n");
    return status;
}

frame_status frame_packet_checks(const frame_packet *packet, frame_text *into) {
    frame_packet_heading(into, "checks", "Checks");
    for (size_t i = 0; i < frame_building_check_count(packet->building); i++) {
        const frame_status status = add_check(packet, i, into);
        if (status) return status;
    }
    frame_text_add(into, "</section>\n");
    return FRAME_OK;
}

frame_status frame_packet_marks(const frame_packet *packet, frame_text *into) {
    const char *before = NULL;
    frame_packet_heading(into, "marks", "Layout marks");
    frame_text_add(into,
                   "<p>Running distances from one hook of the tape to the near side of each member; "
                   "it lies on the far side of its mark.</p>\n");
    for (size_t i = 0; i < frame_building_mark_count(packet->building); i++) {
        frame_building_mark mark;
        frame_building_mark_at(packet->building, i, &mark);
        if (!before || strcmp(before, mark.of) != 0) {
            if (before) frame_text_add(into, "</ol></article>\n");
            frame_text_add(into, "<article><h3>");
            frame_text_add_xml(into, mark.of);
            frame_text_add(into, "</h3>\n<ol class=\"marks\">\n");
            before = mark.of;
        }
        frame_text_add(into, "<li>");
        frame_packet_length(into, mark.at_in);
        frame_text_add(into, "</li>\n");
    }
    if (before) frame_text_add(into, "</ol></article>\n");
    frame_text_add(into, "</section>\n");
    return FRAME_OK;
}

static void add_purchases(const frame_packet *packet, frame_text *into) {
    frame_text_add(into,
                   "<table><caption>To buy</caption><thead><tr><th>Boards</th><th>Section</th><th>Length</th>"
                   "<th class=\"n\">Board feet</th><th class=\"n\">Money</th></tr></thead>\n<tbody>\n");
    for (size_t i = 0; i < frame_building_purchase_count(packet->building); i++) {
        frame_building_purchase line;
        frame_building_purchase_at(packet->building, i, &line);
        frame_text_addf(into, "<tr><td>%d</td><td>", (int)line.count);
        frame_text_add_xml(into, or_empty(line.section));
        frame_text_add(into, "</td><td>");
        frame_packet_length(into, line.length_in);
        frame_text_add(into, "</td><td class=\"n\">");
        frame_text_add_fixed(into, line.board_feet, 1);
        frame_text_add(into, "</td><td class=\"n\">");
        frame_text_add_fixed(into, line.total, 2);
        frame_text_add(into, "</td></tr>\n");
    }
    frame_text_add(into, "</tbody></table>\n");
}

/* Two boards alike, cut alike. */
static int same_board(const frame_packet *packet, const frame_building_board *one, const frame_building_board *two) {
    if (strcmp(one->section, two->section) != 0 || one->length_in != two->length_in || one->cut_count != two->cut_count)
        return 0;
    for (uint32_t c = 0; c < one->cut_count; c++) {
        frame_building_cut a, b;
        frame_building_cut_at(packet->building, one->cut_first + c, &a);
        frame_building_cut_at(packet->building, two->cut_first + c, &b);
        if (strcmp(a.name, b.name) != 0 || a.to_in != b.to_in) return 0;
    }
    return 1;
}

/* Writes a board and how many of those that follow are cut like it; gives the place of the next. */
static size_t add_board(const frame_packet *packet, size_t i, size_t count, frame_text *into) {
    frame_building_board board, next;
    size_t after = i + 1;
    frame_building_board_at(packet->building, i, &board);
    while (after < count && !frame_building_board_at(packet->building, after, &next) &&
           same_board(packet, &board, &next))
        after++;
    frame_text_addf(into, "<tr><td>%zu</td><td>", after - i);
    frame_packet_length(into, board.length_in);
    frame_text_add(into, " ");
    frame_text_add_xml(into, or_empty(board.section));
    frame_text_add(into, "</td><td>");
    for (uint32_t c = 0; c < board.cut_count; c++) {
        frame_building_cut cut;
        frame_building_cut_at(packet->building, board.cut_first + c, &cut);
        frame_text_add(into, c ? "; " : "");
        frame_text_add_xml(into, or_empty(cut.name));
        frame_text_add(into, " to <b>");
        frame_packet_length(into, cut.to_in);
        frame_text_add(into, "</b>");
    }
    frame_text_add(into, "</td><td>");
    frame_packet_length(into, board.offcut_in);
    frame_text_add(into, "</td></tr>\n");
    return after;
}

frame_status frame_packet_buying(const frame_packet *packet, frame_text *into) {
    const size_t boards = frame_building_board_count(packet->building);
    frame_packet_heading(into, "boards", "Shopping list and cutting plan");
    if (!boards) frame_text_add(into, "<p>No stock was given: nothing is planned to be bought.</p>\n");
    if (boards) {
        add_purchases(packet, into);
        frame_text_add(
            into,
            "<table><caption>Cutting plan: strike each mark from one hooked end, cut on its far side</caption>"
            "<thead><tr><th>Boards</th><th>Of</th><th>Pieces, each to its mark</th><th>Left "
            "over</th></tr></thead>\n<tbody>\n");
        for (size_t i = 0; i < boards;) i = add_board(packet, i, boards, into);
        frame_text_add(into, "</tbody></table>\n");
    }
    frame_text_add(into, "</section>\n");
    return FRAME_OK;
}

/* Notes of one kind, gathered by what they are about; those about the whole job first. */
static void add_notes_about(const frame_packet *packet, frame_note_kind kind, const char *about, frame_text *into) {
    int begun = 0;
    for (size_t i = 0; i < frame_building_note_count(packet->building); i++) {
        frame_building_note note;
        frame_building_note_at(packet->building, i, &note);
        if (note.kind != kind || strcmp(note.about, about) != 0) continue;
        if (!begun++) {
            frame_text_add(into, "<h3>");
            frame_text_add_xml(into, about);
            frame_text_add(into, "</h3>\n<ul>\n");
        }
        frame_text_add(into, "<li>");
        frame_text_add_xml(into, or_empty(note.text));
        frame_text_add(into, "</li>\n");
    }
    if (begun) frame_text_add(into, "</ul>\n");
}

static int about_before(const frame_packet *packet, size_t i, const char *about) {
    for (size_t before = 0; before < i; before++) {
        frame_building_note note;
        frame_building_note_at(packet->building, before, &note);
        if (!strcmp(note.about, about)) return 1;
    }
    return 0;
}

frame_status frame_packet_notes(const frame_packet *packet, frame_note_kind kind, const char *id, const char *title,
                                frame_text *into) {
    frame_packet_heading(into, id, title);
    add_notes_about(packet, kind, packet->name, into);
    for (size_t i = 0; i < frame_building_note_count(packet->building); i++) {
        frame_building_note note;
        frame_building_note_at(packet->building, i, &note);
        if (strcmp(note.about, packet->name) != 0 && !about_before(packet, i, note.about))
            add_notes_about(packet, kind, note.about, into);
    }
    frame_text_add(into, "</section>\n");
    return FRAME_OK;
}
