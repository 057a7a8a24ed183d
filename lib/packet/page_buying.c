/* The shopping list, and each board with the marks to cut it by. */
#include <string.h>

#include "packet/page.h"

static void add_purchases(frame_text *into, const frame_page_lists *lists) {
    frame_text_add(into,
                   "<table><caption>To buy</caption><thead><tr><th>Of</th><th class=\"n\">Count</th><th>Length</th>"
                   "<th class=\"n\">Board feet</th><th class=\"n\">Money</th></tr></thead>\n<tbody>\n");
    for (size_t i = 0; i < lists->purchase_count; i++) {
        frame_page_purchase line;
        lists->purchase(lists->of, i, &line);
        frame_text_addf(into, "<tr><td><label class=\"tick\"><input type=\"checkbox\" data-tick=\"buy-%zu\">", i);
        frame_text_add_xml(into, line.section ? line.section : "");
        frame_text_addf(into, "</label></td><td class=\"n\">%d</td><td>", (int)line.count);
        if (line.length_in != FRAME_NOT_GIVEN) frame_packet_length(into, line.length_in);
        frame_text_add(into, "</td><td class=\"n\">");
        if (line.board_feet != FRAME_NOT_GIVEN) frame_text_add_fixed(into, line.board_feet, 1);
        frame_text_add(into, "</td><td class=\"n\">");
        if (line.total != FRAME_NOT_GIVEN) frame_text_add_fixed(into, line.total, 2);
        frame_text_add(into, "</td></tr>\n");
    }
    if (lists->cost != FRAME_NOT_GIVEN) {
        frame_text_add(
            into,
            "<tr><td><strong>All boards</strong></td><td class=\"n\"></td><td></td><td></td><td class=\"n\"><strong>");
        frame_text_add_fixed(into, lists->cost, 2);
        frame_text_add(into, "</strong></td></tr>\n");
    }
    frame_text_add(into, "</tbody></table>\n");
}

/* Two boards alike, cut alike. */
static int same_board(const frame_page_lists *lists, const frame_page_board *one, const frame_page_board *two) {
    if (strcmp(one->section, two->section) != 0 || one->length_in != two->length_in || one->cut_count != two->cut_count)
        return 0;
    for (uint32_t c = 0; c < one->cut_count; c++) {
        frame_page_cut a, b;
        lists->cut(lists->of, one->cut_first + c, &a);
        lists->cut(lists->of, two->cut_first + c, &b);
        if (strcmp(a.name, b.name) != 0 || a.to_in != b.to_in) return 0;
    }
    return 1;
}

/* The place of the next board that is cut in another way. */
static size_t next_board(const frame_page_lists *lists, size_t i) {
    frame_page_board board, next;
    size_t after = i + 1;
    lists->board(lists->of, i, &board);
    for (; after < lists->board_count; after++) {
        lists->board(lists->of, after, &next);
        if (!same_board(lists, &board, &next)) break;
    }
    return after;
}

static void add_board(frame_text *into, const frame_page_lists *lists, size_t i, size_t count) {
    frame_page_board board;
    lists->board(lists->of, i, &board);
    frame_text_addf(into,
                    "<tr class=\"find\"><td><label class=\"tick\"><input type=\"checkbox\" "
                    "data-tick=\"board-%zu\">%zu</label></td><td>",
                    i, count);
    frame_packet_length(into, board.length_in);
    frame_text_add(into, " ");
    frame_text_add_xml(into, board.section);
    frame_text_add(into, "</td><td>");
    for (uint32_t c = 0; c < board.cut_count; c++) {
        frame_page_cut cut;
        lists->cut(lists->of, board.cut_first + c, &cut);
        frame_text_add(into, c ? "; " : "");
        frame_text_add_xml(into, cut.name ? cut.name : "");
        frame_text_add(into, " to <b>");
        frame_packet_length(into, cut.to_in);
        frame_text_add(into, "</b>");
    }
    frame_text_add(into, "</td><td>");
    frame_packet_length(into, board.offcut_in);
    frame_text_add(into, "</td></tr>\n");
}

void frame_page_buying(frame_text *into, const frame_page_lists *lists) {
    frame_packet_heading(into, "boards", "Shopping list and cutting plan");
    if (lists->purchase_count) add_purchases(into, lists);
    if (!lists->board_count) {
        frame_text_add(into, "<p>No stock was given: no boards are planned to be bought.</p>\n</section>\n");
        return;
    }
    frame_text_add(
        into,
        "<div class=\"wide-table\"><table><caption>Cutting plan: strike each mark from one hooked end, cut on its far "
        "side</caption><thead><tr><th>Boards</th><th>Of</th><th>Pieces, each to its mark</th><th>Left "
        "over</th></tr></thead>\n<tbody>\n");
    for (size_t i = 0, next; i < lists->board_count; i = next) {
        next = next_board(lists, i);
        add_board(into, lists, i, next - i);
    }
    frame_text_add(into, "</tbody></table></div>\n</section>\n");
}
