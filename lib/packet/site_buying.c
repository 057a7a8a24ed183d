/* The shopping list, and each board with the marks to cut it by. */
#include <stdio.h>
#include <string.h>

#include "packet/framing.h"

static void purchases(frame_site_page *page) {
    frame_text *into = page->into;
    frame_text_add(into,
                   "<table><caption>To buy</caption><thead><tr><th>Of</th><th class=\"n\">Count</th><th>Length</th>"
                   "<th class=\"n\">Board feet</th><th class=\"n\">Money</th></tr></thead>\n<tbody>\n");
    for (size_t i = 0; i < frame_framing_purchase_count(page->framing); i++) {
        frame_framing_purchase line;
        frame_framing_purchase_at(page->framing, i, &line);
        frame_text_addf(into, "<tr><td><label class=\"tick\"><input type=\"checkbox\" data-tick=\"buy-%zu\">", i);
        frame_text_add_xml(into, line.section);
        frame_text_addf(into, "</label></td><td class=\"n\">%d</td><td>", (int)line.count);
        if (line.length_in != FRAME_NOT_GIVEN) frame_packet_length(into, line.length_in);
        frame_text_add(into, "</td><td class=\"n\">");
        if (line.board_feet != FRAME_NOT_GIVEN) frame_text_add_fixed(into, line.board_feet, 1);
        frame_text_add(into, "</td><td class=\"n\">");
        if (line.total != FRAME_NOT_GIVEN) frame_text_add_fixed(into, line.total, 2);
        frame_text_add(into, "</td></tr>\n");
    }
    if (page->out.cost != FRAME_NOT_GIVEN) {
        frame_text_add(
            into,
            "<tr><td><strong>All boards</strong></td><td class=\"n\"></td><td></td><td></td><td class=\"n\"><strong>");
        frame_text_add_fixed(into, page->out.cost, 2);
        frame_text_add(into, "</strong></td></tr>\n");
    }
    frame_text_add(into, "</tbody></table>\n");
}

static int same_board(const frame_site_page *page, const frame_framing_board *one, const frame_framing_board *two) {
    if (strcmp(one->section, two->section) != 0 || one->length_in != two->length_in || one->cut_count != two->cut_count)
        return 0;
    for (uint32_t c = 0; c < one->cut_count; c++) {
        frame_framing_cut a, b;
        frame_framing_cut_at(page->framing, one->cut_first + c, &a);
        frame_framing_cut_at(page->framing, two->cut_first + c, &b);
        if (strcmp(a.name, b.name) != 0 || a.to_in != b.to_in) return 0;
    }
    return 1;
}

/* A board and those after it that are cut like it; gives the place of the next. */
static size_t add_board(frame_site_page *page, size_t i, size_t count) {
    frame_text *into = page->into;
    frame_framing_board board, next;
    size_t after = i + 1;
    frame_framing_board_at(page->framing, i, &board);
    while (after < count && !frame_framing_board_at(page->framing, after, &next) && same_board(page, &board, &next))
        after++;
    frame_text_addf(into,
                    "<tr class=\"find\"><td><label class=\"tick\"><input type=\"checkbox\" "
                    "data-tick=\"board-%zu\">%zu</label></td><td>",
                    i, after - i);
    frame_packet_length(into, board.length_in);
    frame_text_add(into, " ");
    frame_text_add_xml(into, board.section);
    frame_text_add(into, "</td><td>");
    for (uint32_t c = 0; c < board.cut_count; c++) {
        frame_framing_cut cut;
        frame_framing_cut_at(page->framing, board.cut_first + c, &cut);
        frame_text_add(into, c ? "; " : "");
        frame_text_add_xml(into, cut.name);
        frame_text_add(into, " to <b>");
        frame_packet_length(into, cut.to_in);
        frame_text_add(into, "</b>");
    }
    frame_text_add(into, "</td><td>");
    frame_packet_length(into, board.offcut_in);
    frame_text_add(into, "</td></tr>\n");
    return after;
}

frame_status frame_site_buying(frame_site_page *page) {
    const size_t boards = frame_framing_board_count(page->framing);
    frame_packet_heading(page->into, "boards", "Shopping list and cutting plan");
    if (frame_framing_purchase_count(page->framing)) purchases(page);
    if (!boards) {
        frame_text_add(page->into, "<p>No stock was given: no boards are planned to be bought.</p>\n</section>\n");
        return FRAME_OK;
    }
    frame_text_add(
        page->into,
        "<div class=\"wide-table\"><table><caption>Cutting plan: strike each mark from one hooked end, cut on its far "
        "side</caption><thead><tr><th>Boards</th><th>Of</th><th>Pieces, each to its mark</th><th>Left "
        "over</th></tr></thead>\n"
        "<tbody>\n");
    for (size_t i = 0; i < boards;) i = add_board(page, i, boards);
    frame_text_add(page->into, "</tbody></table></div>\n</section>\n");
    return FRAME_OK;
}
