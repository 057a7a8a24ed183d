/* Checks with both answers, joints, footings, studs, sizes chosen, the way of the loads, stages. */
#include <stdio.h>
#include <string.h>

#include "packet/framing.h"

static void number_cell(frame_text *into, double number, int decimals) {
    frame_text_add(into, "<td class=\"n\">");
    if (number != FRAME_NOT_GIVEN) frame_text_add_fixed(into, number, decimals);
    frame_text_add(into, "</td>");
}

static void text_cell(frame_text *into, const char *text) {
    frame_text_add(into, "<td>");
    frame_text_add_xml(into, text ? text : "");
    frame_text_add(into, "</td>");
}

static void length_cell(frame_text *into, double inches) {
    frame_text_add(into, "<td class=\"n\">");
    if (inches != FRAME_NOT_GIVEN) frame_packet_length(into, inches);
    frame_text_add(into, "</td>");
}

static void bar(frame_text *into, double ratio) {
    frame_text_add(into, "<span class=\"bar\" aria-hidden=\"true\"><i style=\"width:");
    frame_text_add_fixed(into, ratio < 0 ? 0 : ratio > 1 ? 100 : 100 * ratio, 0);
    frame_text_add(into, "%\"></i></span> ");
    frame_text_add_fixed(into, 100 * ratio, 0);
    frame_text_add(into, " %");
}

/* A block's figures alone: its cautions are on their own sheet. Columns of spaces are drawn together: the page is for a
 * phone too. */
static void add_packed(frame_text *into, const char *block) {
    static const char *const ends[] = {"\nassumed", "\ncautions", "\nnot checked"};
    const char *end = block + strlen(block);
    char line[400];
    size_t length = 0;
    for (int i = 0; i < 3; i++) {
        const char *found = strstr(block, ends[i]);
        if (found && found < end) end = found;
    }
    for (const char *c = block; c < end; c++) {
        if (c[0] == ' ' && c > block + 1 && c[-1] == ' ' && c[-2] == ' ') continue;
        line[length++] = *c;
        const int cut_here =
            c + 1 == end || *c == '\n' || (length > sizeof line - 8 && ((unsigned char)c[1] & 0xC0) != 0x80);
        if (!cut_here) continue;
        line[length] = 0;
        frame_text_add_xml(into, line);
        length = 0;
    }
}

static frame_status one_check(frame_site_page *page, size_t i) {
    frame_text *into = page->into;
    frame_framing_check check;
    frame_framing_check_at(page->framing, i, &check);
    const int fails = !check.passes || check.code_passes == 0;
    frame_text_addf(into, "<article class=\"check find%s\">\n<h3>", fails ? " fail" : "");
    frame_text_add_xml(into, check.name);
    frame_text_add(into, "</h3>\n<p>");
    bar(into, check.ratio);
    frame_text_addf(into, " of what it may, %s governs: <strong>%s</strong> by calculation (%s).", check.governs,
                    check.passes ? "passes" : "FAILS", check.what);
    if (*check.code) {
        frame_text_add(into, " Code: ");
        frame_text_add_xml(into, check.code);
        if (check.code_passes != FRAME_NOT_GIVEN_INT)
            frame_text_addf(into, ": <strong>%s</strong>", check.code_passes ? "allowed" : "NOT ALLOWED");
        frame_text_add(into, ".");
    }
    frame_text_add(into, " ");
    frame_text_add_xml(into, check.verdict);
    frame_text_add(into, "</p>\n<details><summary>Working</summary>\n");
    const frame_working *working = FRAME_ITEM(frame_working *, page->inside->workings, i);
    frame_text_clear(page->scratch);
    const frame_status status = working ? frame_working_render(working, FRAME_RENDER_TEXT, page->scratch) : FRAME_OK;
    frame_text_add(into, "<pre>"); /* as text: in MathML a page of eighty checks would weigh four times as much */
    add_packed(into, frame_text_chars(page->scratch));
    frame_text_add(into, "\n");
    add_packed(into, check.block);
    frame_text_add(into, "</pre>\n</details>\n</article>\n");
    return status;
}

frame_status frame_site_checks(frame_site_page *page) {
    frame_status status = FRAME_OK;
    frame_packet_heading(page->into, "checks", "Checks");
    frame_text_add(
        page->into,
        "<p>Each by calculation and, where the code has a table, by the table. A bar that is full is a member with "
        "nothing to spare.</p>\n");
    for (size_t i = 0; i < frame_framing_check_count(page->framing) && !status; i++) status = one_check(page, i);
    frame_text_add(page->into, "</section>\n");
    return status;
}

static void begin_table(frame_text *into, const char *caption, const char *heads) {
    frame_text_addf(into, "<div class=\"wide-table\"><table><caption>%s</caption><thead><tr>%s</tr></thead>\n<tbody>\n",
                    caption, heads);
}
static void end_table(frame_text *into) {
    frame_text_add(into, "</tbody></table></div>\n</section>\n");
}

static void joints(frame_site_page *page) {
    frame_text *into = page->into;
    frame_packet_heading(into, "joints", "Joints and nailing");
    begin_table(into, "Each joint with its demand and what holds it",
                "<th>Joint</th><th class=\"n\">Places</th><th class=\"n\">Demand, lb</th><th>Fastening</th>"
                "<th class=\"n\">Holds, lb</th><th>By the code's table</th>");
    for (size_t i = 0; i < frame_framing_joint_count(page->framing); i++) {
        frame_framing_joint joint;
        frame_framing_joint_at(page->framing, i, &joint);
        frame_text_add(into, "<tr class=\"find\">");
        text_cell(into, joint.name);
        frame_text_addf(into, "<td class=\"n\">%d</td>", (int)joint.places);
        number_cell(into, joint.demand_lb, 0);
        text_cell(into, joint.fastening);
        number_cell(into, joint.capacity_lb, 0);
        text_cell(into, joint.code);
        frame_text_add(into, "</tr>\n");
    }
    end_table(into);
}

static void footings(frame_site_page *page) {
    frame_text *into = page->into;
    frame_packet_heading(into, "footings", "Footings");
    begin_table(
        into, "At the soil's bearing that was given or assumed; area alone is found here",
        "<th class=\"n\">No.</th><th>Under</th><th class=\"n\">Load, lb</th><th class=\"n\">On the heaviest 4 ft, "
        "plf</th>"
        "<th class=\"n\">Least area, sq in</th><th class=\"n\">Least width, or side of a square</th><th>By the code's "
        "table</th><th>Given</th>");
    for (size_t i = 0; i < frame_framing_footing_count(page->framing); i++) {
        frame_framing_footing f;
        frame_framing_footing_at(page->framing, i, &f);
        frame_text_addf(into, "<tr class=\"find\"><td class=\"n\">%zu</td>", i + 1);
        text_cell(into, f.name);
        number_cell(into, f.service_lb, 0);
        number_cell(into, f.service_plf, 0);
        number_cell(into, f.needed_in2, 0);
        length_cell(into, f.needed_width_in);
        text_cell(into, f.code);
        text_cell(into, f.passes == FRAME_NOT_GIVEN_INT ? "" : f.passes ? "enough" : "TOO SMALL");
        frame_text_add(into, "</tr>\n");
    }
    end_table(into);
}

static void studs(frame_site_page *page) {
    frame_text *into = page->into;
    frame_packet_heading(into, "studs", "Studs and their loads");
    frame_text_add(
        into,
        "<p>Before a stud is cut or taken out: shore both sides first. What its neighbours would then carry is asked "
        "of the library (stud_removal), not read off here.</p>\n");
    begin_table(into, "Bearing walls, from the start of each; pounds",
                "<th>Wall</th><th>Piece</th><th class=\"n\">At</th><th class=\"n\">Dead</th><th class=\"n\">Live</th>"
                "<th class=\"n\">Roof live</th><th class=\"n\">Snow</th><th class=\"n\">Used</th>");
    for (size_t i = 0; i < frame_framing_stud_count(page->framing); i++) {
        frame_framing_stud stud;
        frame_framing_stud_at(page->framing, i, &stud);
        frame_text_add(into, "<tr class=\"find\">");
        text_cell(into, stud.wall);
        text_cell(into, stud.piece);
        length_cell(into, stud.at_in);
        number_cell(into, stud.dead_lb, 0);
        number_cell(into, stud.live_lb, 0);
        number_cell(into, stud.roof_live_lb, 0);
        number_cell(into, stud.snow_lb, 0);
        frame_text_add(into, "<td class=\"n\">");
        frame_text_add_fixed(into, 100 * stud.ratio, 0);
        frame_text_add(into, " %</td></tr>\n");
    }
    end_table(into);
}

static void options(frame_site_page *page) {
    frame_text *into = page->into;
    const char *last = "";
    frame_packet_heading(into, "options", "Sizes chosen");
    begin_table(into, "What was tried for each size left open, and why it lost",
                "<th>Member</th><th>Size</th><th class=\"n\">Used</th><th class=\"n\">Cost</th><th>Why</th>");
    for (size_t i = 0; i < frame_framing_option_count(page->framing); i++) {
        frame_framing_option option;
        frame_framing_option_at(page->framing, i, &option);
        frame_text_addf(into, "<tr class=\"find\"%s>", option.taken ? " style=\"font-weight:700\"" : "");
        text_cell(into, strcmp(last, option.name) ? option.name : "");
        last = option.name;
        text_cell(into, option.section);
        frame_text_add(into, "<td class=\"n\">");
        if (option.ratio != FRAME_NOT_GIVEN) {
            frame_text_add_fixed(into, 100 * option.ratio, 0);
            frame_text_add(into, " %");
        }
        frame_text_add(into, "</td>");
        number_cell(into, option.cost, 2);
        text_cell(into, option.reason);
        frame_text_add(into, "</tr>\n");
    }
    end_table(into);
}

/* From bearer to bearer, all places together. */
static void path(frame_site_page *page) {
    frame_text *into = page->into;
    const frame_array *loads = &page->answer->lists[FRAME_FRAMING_LOADS];
    char *done = frame_take_zeroed(loads->count + 1, 1);
    frame_packet_heading(into, "path", "Loads, bearer by bearer");
    begin_table(
        into, "What each sets on the next, all places together; pounds",
        "<th>From</th><th>On</th><th class=\"n\">Dead</th><th class=\"n\">Live</th><th class=\"n\">Roof live</th>"
        "<th class=\"n\">Snow</th><th class=\"n\">Wind</th>");
    for (size_t i = 0; done && i < loads->count; i++) {
        const frame_framing_load *first = &FRAME_ITEM(frame_framing_load, *loads, i);
        double sum[5] = {0};
        if (done[i]) continue;
        for (size_t k = i; k < loads->count; k++) {
            const frame_framing_load *load = &FRAME_ITEM(frame_framing_load, *loads, k);
            if (load->on_kind != first->on_kind || strcmp(load->of, first->of) != 0 || strcmp(load->on, first->on) != 0)
                continue;
            done[k] = 1;
            const double more[5] = {load->dead_lb, load->live_lb, load->roof_live_lb, load->snow_lb, load->wind_lb};
            for (int n = 0; n < 5; n++) sum[n] += more[n];
        }
        frame_text_add(into, "<tr class=\"find\">");
        text_cell(into, first->of);
        frame_text_add(into, "<td>");
        frame_text_add_xml(into, first->on);
        frame_text_addf(into, " (%s)</td>", frame_word_text("bearer_kind", first->on_kind));
        for (int n = 0; n < 5; n++) number_cell(into, sum[n], 0);
        frame_text_add(into, "</tr>\n");
    }
    if (!done) frame_text_fail(into);
    frame_give(done);
    end_table(into);
}

static void stages(frame_site_page *page) {
    frame_text *into = page->into;
    frame_packet_heading(into, "stages", "Order of erection");
    frame_text_add(into, "<ol>\n");
    for (size_t w = 0; w < frame_word_count("stage"); w++) {
        const int32_t stage = frame_word_at("stage", w);
        int32_t count = 0;
        double weight = 0;
        for (size_t i = 0; i < frame_framing_stick_count(page->framing); i++) {
            frame_framing_stick stick;
            frame_framing_stick_at(page->framing, i, &stick);
            if (stick.stage != stage) continue;
            count++;
            if (stick.weight_lb != FRAME_NOT_GIVEN) weight += stick.weight_lb;
        }
        frame_text_addf(
            into, "<li><label class=\"tick\"><input type=\"checkbox\" data-tick=\"stage-%d\">%s</label> %s %d sticks, ",
            (int)stage, frame_word_text("stage", stage), frame_word_meaning("stage", stage), (int)count);
        frame_text_add_fixed(into, weight, 0);
        frame_text_add(into, " lb.</li>\n");
    }
    frame_text_add(into, "</ol>\n</section>\n");
}

frame_status frame_site_tables(frame_site_page *page) {
    joints(page);
    footings(page);
    studs(page);
    options(page);
    path(page);
    stages(page);
    return frame_text_state(page->into);
}
