/* The sticks, gang by gang: what is cut alike is one sheet, with a tick box for each part it goes to; a drawing where
 * there is more to cut than two square ends. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include <frame/drawing.h>

#include "packet/framing.h"

static const frame_framing_stick *stick_at(const frame_site_page *page, size_t i) {
    return &FRAME_ITEM(frame_framing_stick, page->answer->lists[FRAME_FRAMING_STICKS], i);
}

/* Two square cuts, and nothing else. */
static int is_square(const frame_stick *stick) {
    for (size_t i = 0; i < frame_stick_saw_count(stick); i++) {
        frame_stick_saw saw;
        frame_stick_saw_at(stick, i, &saw);
        if (saw.mitre_deg > 1e-6 || saw.bevel_deg > 1e-6 || saw.notch > 0) return 0;
    }
    return 1;
}

typedef struct gang {
    size_t first;
    int32_t count;
} gang;

static void parts_of(const frame_site_page *page, int32_t number, frame_text *into) {
    const size_t count = page->answer->lists[FRAME_FRAMING_STICKS].count;
    int32_t line = 0; /* parts whose names differ by capitals alone have one slug */
    frame_text_add(into, "<ul class=\"parts\">\n");
    for (size_t i = 0; i < count; i++) {
        const frame_framing_stick *stick = stick_at(page, i);
        int32_t here = 0, before = 0;
        if (stick->gang != number) continue;
        for (size_t k = 0; k < count; k++) {
            const frame_framing_stick *other = stick_at(page, k);
            if (other->gang != number || strcmp(other->of, stick->of) != 0) continue;
            here++;
            if (k < i) before = 1;
        }
        if (before) continue;
        char slug[80];
        frame_packet_slug(stick->of, slug);
        frame_text_addf(into, "<li><label class=\"tick\"><input type=\"checkbox\" data-tick=\"gang-%d-%s-%d\">%d for ",
                        (int)number, slug, (int)++line, (int)here);
        frame_text_add_xml(into, stick->of);
        frame_text_add(into, "</label></li>\n");
    }
    frame_text_add(into, "</ul>\n");
}

static frame_status sheet(frame_site_page *page, int32_t number, const gang *g) {
    frame_text *into = page->into;
    const frame_framing_stick *stick = stick_at(page, g->first);
    const frame_stick *solid = FRAME_ITEM(frame_stick *, page->inside->sticks, g->first);
    frame_text_addf(into, "<article class=\"stick find\" id=\"gang-%d\">\n<h3>%d &times; ", (int)number, (int)g->count);
    frame_text_add_xml(into, stick->name);
    frame_text_add(into, ", ");
    frame_text_add_xml(into, stick->section);
    frame_text_add(into, "</h3>\n<dl><div><dt>Long point to long point</dt><dd>");
    frame_packet_length(into, stick->length_in);
    frame_text_add(into, "</dd></div><div><dt>Grade</dt><dd>");
    frame_text_add_xml(into, stick->grade);
    frame_text_add(into, "</dd></div><div><dt>Each weighs</dt><dd>");
    frame_text_add_fixed(into, stick->weight_lb, 0);
    frame_text_add(into, " lb</dd></div></dl>\n");
    parts_of(page, number, into);
    frame_status status = FRAME_OK;
    if (is_square(solid)) {
        frame_text_add(into, "<p>Both ends square.</p>\n");
    } else {
        frame_drawing *drawing;
        char name[120];
        snprintf(name, sizeof name, "gang %d, %.60s", (int)number, stick->name);
        status = frame_stick_drawing(solid, &drawing);
        if (status) return status;
        status = frame_site_drawing(page, drawing, name, 2.6);
        frame_drawing_free(drawing);
    }
    frame_text_add(into, "</article>\n");
    return status;
}

frame_status frame_site_sticks(frame_site_page *page) {
    const size_t count = page->answer->lists[FRAME_FRAMING_STICKS].count;
    int32_t most = 0;
    frame_packet_heading(page->into, "sticks", "Sticks and their cuts");
    frame_text_add(page->into,
                   "<p>Pieces cut alike are one gang. Tick what is cut: the ticks stay on this device.</p>\n");
    for (size_t i = 0; i < count; i++)
        if (stick_at(page, i)->gang > most) most = stick_at(page, i)->gang;
    gang *gangs = frame_take_zeroed((size_t)most + 1, sizeof *gangs);
    frame_status status = gangs ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t i = 0; i < count && !status; i++) {
        gang *g = &gangs[stick_at(page, i)->gang];
        if (!g->count++) g->first = i;
    }
    for (int32_t number = 1; number <= most && !status; number++) status = sheet(page, number, &gangs[number]);
    frame_give(gangs);
    frame_text_add(page->into, "</section>\n");
    return status;
}
