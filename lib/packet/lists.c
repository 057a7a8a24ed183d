/* The cut list as CSV and JSON. */
#include <string.h>

#include <frame/fields.h>

#include "packet/packet.h"
#include "tape/tape.h"

static const char *or_empty(const char *text) {
    return text ? text : "";
}

void frame_packet_csv_text(frame_text *into, const char *text) {
    if (!text || !*text || !strchr("=+-@\t\r", *text)) {
        frame_text_add_csv(into, or_empty(text));
        return;
    }
    frame_text *guarded;
    if (frame_text_new(&guarded)) {
        frame_text_fail(into);
        return;
    }
    frame_text_add(guarded, "'");
    frame_text_add(guarded, text);
    frame_text_add_csv(into, frame_text_chars(guarded));
    if (frame_text_state(guarded)) frame_text_fail(into);
    frame_text_free(guarded);
}

static void add_tape(frame_text *into, double inches, void (*write)(frame_text *, const char *)) {
    frame_text *one;
    if (frame_text_new(&one)) return;
    frame_tape_add(one, inches, 16);
    write(into, frame_text_chars(one));
    frame_text_free(one);
}

frame_status frame_packet_cuts_csv(const frame_packet *packet, frame_text *into) {
    if (!packet->building) return frame_packet_copy(packet, "sticks.csv", into);
    frame_text_add(into, "piece,of,section,grade,count,length_in,length,cuts\r\n");
    for (size_t i = 0; i < frame_building_member_count(packet->building); i++) {
        frame_building_member member;
        frame_building_member_at(packet->building, i, &member);
        const char *const cells[] = {member.name, member.of, member.section, member.grade};
        for (size_t c = 0; c < 4; c++) {
            frame_packet_csv_text(into, cells[c]);
            frame_text_add(into, ",");
        }
        frame_text_addf(into, "%d,", (int)member.count);
        frame_text_add_number(into, member.length_in, 10);
        frame_text_add(into, ",");
        add_tape(into, member.length_in, frame_text_add_csv);
        frame_text_add(into, ",");
        frame_packet_csv_text(into, member.cuts);
        frame_text_add(into, "\r\n");
    }
    return frame_text_state(into);
}

static void text_pair(frame_text *into, const char *key, const char *value) {
    frame_text_addf(into, "\"%s\": ", key);
    if (value)
        frame_text_add_json(into, value);
    else
        frame_text_add(into, "null");
    frame_text_add(into, ", ");
}

static void number_pair(frame_text *into, const char *key, double value, const char *after) {
    frame_text_addf(into, "\"%s\": ", key);
    frame_text_add_json_number(into, value);
    frame_text_add(into, after);
}

static void json_members(const frame_packet *packet, frame_text *into) {
    const size_t count = frame_building_member_count(packet->building);
    frame_text_add(into, " \"members\": [\n");
    for (size_t i = 0; i < count; i++) {
        frame_building_member member;
        frame_building_member_at(packet->building, i, &member);
        frame_text_add(into, "  {");
        text_pair(into, "piece", member.name);
        text_pair(into, "of", member.of);
        text_pair(into, "section", member.section);
        text_pair(into, "grade", member.grade);
        text_pair(into, "cuts", member.cuts);
        number_pair(into, "count", member.count, ", ");
        number_pair(into, "length_in", member.length_in, ", ");
        frame_text_add(into, "\"length\": ");
        add_tape(into, member.length_in, frame_text_add_json);
        frame_text_addf(into, "}%s\n", i + 1 < count ? "," : "");
    }
    frame_text_add(into, " ],\n");
}

static void json_checks(const frame_packet *packet, frame_text *into) {
    const size_t count = frame_building_check_count(packet->building);
    frame_text_add(into, " \"checks\": [\n");
    for (size_t i = 0; i < count; i++) {
        frame_building_check check;
        frame_building_check_at(packet->building, i, &check);
        frame_text_add(into, "  {");
        text_pair(into, "name", check.name);
        text_pair(into, "what", check.what);
        text_pair(into, "governs", check.governs);
        text_pair(into, "known", frame_word_text("known", check.known));
        number_pair(into, "ratio", check.ratio, ", ");
        frame_text_addf(into, "\"passes\": %s}%s\n", check.passes ? "true" : "false", i + 1 < count ? "," : "");
    }
    frame_text_add(into, " ],\n");
}

static void json_boards(const frame_packet *packet, frame_text *into) {
    const size_t count = frame_building_board_count(packet->building);
    frame_text_add(into, " \"boards\": [\n");
    for (size_t i = 0; i < count; i++) {
        frame_building_board board;
        frame_building_board_at(packet->building, i, &board);
        frame_text_add(into, "  {");
        text_pair(into, "section", board.section);
        number_pair(into, "length_in", board.length_in, ", ");
        number_pair(into, "price", board.price, ", ");
        number_pair(into, "offcut_in", board.offcut_in, ", \"cuts\": [");
        for (uint32_t c = 0; c < board.cut_count; c++) {
            frame_building_cut cut;
            frame_building_cut_at(packet->building, board.cut_first + c, &cut);
            frame_text_add(into, c ? ", {" : "{");
            text_pair(into, "piece", cut.name);
            number_pair(into, "from_in", cut.from_in, ", ");
            number_pair(into, "to_in", cut.to_in, "}");
        }
        frame_text_addf(into, "]}%s\n", i + 1 < count ? "," : "");
    }
    frame_text_add(into, " ],\n");
}

static void json_notes(const frame_packet *packet, frame_text *into) {
    const size_t count = frame_building_note_count(packet->building);
    frame_text_add(into, " \"notes\": [\n");
    for (size_t i = 0; i < count; i++) {
        frame_building_note note;
        frame_building_note_at(packet->building, i, &note);
        frame_text_add(into, "  {");
        text_pair(into, "kind", frame_word_text("note_kind", note.kind));
        text_pair(into, "about", note.about);
        frame_text_add(into, "\"text\": ");
        frame_text_add_json(into, or_empty(note.text));
        frame_text_addf(into, "}%s\n", i + 1 < count ? "," : "");
    }
    frame_text_add(into, " ]\n");
}

frame_status frame_packet_cuts_json(const frame_packet *packet, frame_text *into) {
    if (!packet->building) return frame_packet_copy(packet, "all.json", into);
    frame_text_add(into, "{\n ");
    text_pair(into, "building", packet->name);
    text_pair(into, "libframe", frame_version());
    number_pair(into, "cost", packet->out.cost, ",\n");
    json_members(packet, into);
    json_checks(packet, into);
    json_boards(packet, into);
    json_notes(packet, into);
    frame_text_add(into, "}\n");
    return frame_text_state(into);
}
