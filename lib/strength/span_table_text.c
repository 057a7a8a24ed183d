/* A table of spans as CSV and as a page to print. */
#include <math.h>
#include <stdio.h>

#include "base/error.h"
#include "strength/span_table.h"
#include "strength_facts.h"
#include "text/writer.h"

static frame_status no_table(const void *answer) {
    return frame_fail(FRAME_REQUIRED, answer ? "into" : "answer", "NULL", "a table and a text",
                      "%s: NULL; valid is a table and a text", answer ? "into" : "answer");
}

static void csv_row(const frame_span_table *t, size_t s, size_t g, size_t c, frame_text *into) {
    const frame_span_table_plan *p = frame_span_table_plan_of(t);
    frame_text_add_csv(into, frame_species_name(p->species[s]));
    frame_text_add(into, ",");
    frame_text_add_csv(into, frame_grade_name(p->grades[g]));
    frame_text_add(into, ",");
    frame_text_add_number(into, p->spacings[c], 6);
    for (size_t w = 0; w < p->size_count; w++) {
        const frame_span_table_cell *cell = frame_span_table_cell_of(t, s, g, c, w);
        frame_text_add(into, ",");
        if (cell->span_in != FRAME_NOT_GIVEN)
            frame_text_add_number(into, frame_span_table_rounded(p, cell->span_in), 8);
    }
    frame_text_add(into, "\n");
}

frame_status frame_span_table_csv(const frame_span_table *answer, frame_text *into) {
    const frame_span_table_plan *p = frame_span_table_plan_of(answer);
    if (!p || !into) return no_table(answer);
    frame_text_add(into, "species,grade,spacing_in");
    for (size_t w = 0; w < p->size_count; w++) {
        frame_text_add(into, ",span_in ");
        frame_text_add(into, frame_size_name(p->sizes[w]));
    }
    frame_text_add(into, "\n");
    for (size_t s = 0; s < p->species_count; s++)
        for (size_t g = 0; g < p->grade_count; g++)
            for (size_t c = 0; c < p->spacing_count; c++) csv_row(answer, s, g, c, into);
    return frame_text_state(into);
}

static const char style[] =
    "body{font:10.5pt/1.35 Georgia,serif;margin:12mm;color:#000}h1{font-size:15pt;margin:0 0 2mm}"
    "h2{font-size:11.5pt;margin:6mm 0 1.5mm;border-top:1.2pt solid #000;padding-top:1.5mm}"
    "table{border-collapse:collapse;break-inside:avoid}th,td{padding:.6mm 3.2mm;text-align:right;border-bottom:.3pt "
    "solid #777}"
    "th:first-child,td:first-child,th:nth-child(2),td:nth-child(2){text-align:left}"
    "th,td{min-width:14mm}th:first-child,td:first-child{min-width:36mm}tr.first td{border-top:.8pt solid "
    "#000}"
    "sup{font-size:7.5pt;padding-left:.5mm}p,li{max-width:165mm}@media print{body{margin:0}}";

static void fact(frame_text *into, const char *words, double value, const char *unit) {
    if (value == FRAME_NOT_GIVEN) return;
    frame_text_add(into, words);
    frame_text_add(into, " ");
    frame_text_add_number(into, value, 5);
    frame_text_add(into, unit);
}

/* The default that joist_span goes by where nothing was given. */
static frame_joist_span_out sample_of(const frame_span_table *t) {
    const frame_span_table_plan *p = frame_span_table_plan_of(t);
    frame_joist_span_in in = p->base;
    frame_joist_span_out out = {.assumed = 0};
    in.species = p->species[0], in.grade = p->grades[0], in.size = p->sizes[0], in.spacing_in = p->spacings[0];
    frame_joist_span(&in, &out, NULL);
    return out;
}

/* What the joists stand in, and what was done to them: of a deck by default the worse. */
static void moisture(const frame_joist_span_in *b, frame_text *into) {
    const int deck = b->use == FRAME_USE_DECK, service = b->service, incised = b->incised;
    const int wet = service == FRAME_NOT_GIVEN_INT ? deck : service == FRAME_SERVICE_WET;
    frame_text_addf(into, ". %s in service%s", wet ? "Wet" : "Dry", service == FRAME_NOT_GIVEN_INT ? " (assumed)" : "");
    if (incised == FRAME_NOT_GIVEN_INT && deck)
        frame_text_add(into, ", incised but Southern Pine (assumed)");
    else if (incised == 1)
        frame_text_add(into, ", incised");
    frame_text_add(into, ".");
}

static void head(const frame_span_table *t, frame_text *into) {
    static const char *const titles[] = {"floor joists", "ceiling joists", "rafters", "deck joists"};
    const frame_joist_span_in *b = &frame_span_table_plan_of(t)->base;
    frame_text_addf(into,
                    "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>Longest spans</title>"
                    "<style>%s</style></head><body>\n<h1>Longest clear spans: %s</h1>\n<p>Loads on plan:",
                    style, titles[b->use - 1]);
    fact(into, b->use == FRAME_USE_RAFTER ? " roof live" : " live", b->live_psf, " psf;");
    fact(into, " snow", b->snow_psf, " psf;");
    if (b->dead_psf != FRAME_NOT_GIVEN)
        fact(into, " dead", b->dead_psf, " psf.");
    else
        frame_text_add(into, b->use == FRAME_USE_CEILING ? " dead 5 psf (assumed)." : " dead 10 psf (assumed).");
    fact(into, " Slope: rise over run", b->slope, ".");
    if (b->deflection_limit != FRAME_NOT_GIVEN)
        fact(into, " Sag under live load or snow at most span over", b->deflection_limit, "");
    else
        fact(into, " Sag under live load or snow at most span over",
             b->use == FRAME_USE_CEILING  ? 240
             : b->use == FRAME_USE_RAFTER ? 180
                                          : 360,
             " (assumed)");
    fact(into, ", in all at most span over", b->total_deflection_limit, "");
    moisture(b, into);
    frame_text_addf(into, " %s, %s.</p>\n", b->method == FRAME_METHOD_LRFD ? "LRFD" : "Allowable stress design",
                    b->load_edition == FRAME_LOADS_ASCE_7_22 ? "ASCE 7-22" : "ASCE 7-16");
}

static const char *letter_of(frame_governing governs) {
    return governs == FRAME_GOVERNS_BENDING ? "b" : governs == FRAME_GOVERNS_SHEAR ? "v" : "";
}

static void put_cell(const frame_span_table_plan *p, const frame_span_table_cell *cell, frame_text *into) {
    if (cell->span_in == FRAME_NOT_GIVEN) {
        frame_text_add(into, "<td>&ndash;</td>");
        return;
    }
    const int inches = (int)frame_span_table_rounded(p, cell->span_in);
    const char *letter = cell->cut_off ? "+" : letter_of(cell->governs);
    frame_text_addf(into, "<td>%d&prime; %d&Prime;", inches / 12, inches % 12);
    if (letter[0]) frame_text_addf(into, "<sup>%s</sup>", letter);
    frame_text_add(into, "</td>");
}

static void put_block(const frame_span_table *t, size_t c, frame_text *into) {
    const frame_span_table_plan *p = frame_span_table_plan_of(t);
    frame_text_add(into, "<h2>");
    frame_text_add_number(into, p->spacings[c], 6);
    frame_text_add(into, " in centre to centre</h2>\n<table><tr><th>Species</th><th>Grade</th>");
    for (size_t w = 0; w < p->size_count; w++) frame_text_addf(into, "<th>%s</th>", frame_size_name(p->sizes[w]));
    frame_text_add(into, "</tr>\n");
    for (size_t s = 0; s < p->species_count; s++)
        for (size_t g = 0; g < p->grade_count; g++) {
            frame_text_addf(into, "<tr%s><td>", g ? "" : " class=\"first\"");
            if (!g) frame_text_add_xml(into, frame_species_name(p->species[s]));
            frame_text_add(into, "</td><td>");
            frame_text_add_xml(into, frame_grade_name(p->grades[g]));
            frame_text_add(into, "</td>");
            for (size_t w = 0; w < p->size_count; w++) put_cell(p, frame_span_table_cell_of(t, s, g, c, w), into);
            frame_text_add(into, "</tr>\n");
        }
    frame_text_add(into, "</table>\n");
}

static void put_bits(const char *words, uint64_t bits, frame_text *into) {
    for (int32_t bit = 0; bit < 64; bit++) {
        if (!(bits >> bit & 1)) continue;
        frame_text_add(into, "<li>");
        frame_text_add_xml(into, frame_word_meaning(words, bit));
        frame_text_add(into, "</li>\n");
    }
}

static void foot(const frame_span_table *t, frame_text *into) {
    const frame_span_table_out *out = ((const frame_answer *)t)->out;
    const frame_joist_span_out sample = sample_of(t);
    frame_text_add(into,
                   "<p><sup>b</sup> bending governs, <sup>v</sup> shear; without a letter deflection does. "
                   "<sup>+</sup> would be longer. &ndash; no such lumber. Simple spans under even load, compression "
                   "edge held; the repetitive member factor where spacing is at most 24 in. By calculation, "
                   "NDS 2018; worst source of a value: ");
    frame_text_add_xml(into, frame_word_text("known", out->known));
    frame_text_add(into, ".</p>\n<h2>Before you use it</h2>\n<ul>\n");
    put_bits("span_table_caution", out->cautions, into);
    frame_text_add(into, "</ul>\n<h2>Not checked</h2>\n<ul>\n");
    put_bits("bending_not_checked", sample.not_checked, into);
    frame_text_add(into, "</ul>\n</body></html>\n");
}

frame_status frame_span_table_page(const frame_span_table *answer, frame_text *into) {
    const frame_span_table_plan *p = frame_span_table_plan_of(answer);
    if (!p || !into) return no_table(answer);
    head(answer, into);
    for (size_t c = 0; c < p->spacing_count; c++) put_block(answer, c, into);
    foot(answer, into);
    return frame_text_state(into);
}
