/* The sheets of the page: sticks, checks, marks. */
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
