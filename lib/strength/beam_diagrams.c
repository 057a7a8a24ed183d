/* The diagrams of a beam: the envelopes of shear, moment and deflection over all combinations and patterns, with a
 * stroke from most to least at even distances, and every extreme written beside it. */
#include <math.h>

#include "base/number.h"
#include "strength/beam_drawing.h"
#include "text/writer.h"

enum { STROKES = 72, STEPS = 32 };

typedef enum diagram { SHEAR, MOMENT, DROP } diagram;

typedef struct sheet {
    const frame_beam_page *page;
    diagram what;
    int factor_count;
    frame_beam_factors factors[FRAME_LOAD_CASES];
    double scale; /* inches of the drawing for a unit; negative draws downward */
    double largest;
} sheet;

static const frame_beam_extreme *extreme_of(const sheet *s, const frame_beam_envelope *e) {
    return s->what == SHEAR ? &e->shear : s->what == MOMENT ? &e->moment : &e->drop;
}

static frame_beam_extreme at(const sheet *s, size_t span, size_t segment, double t) {
    frame_beam_envelope e;
    frame_beam_envelope_none(&e);
    for (int c = 0; c < s->factor_count; c++)
        frame_beam_point_envelope(s->page->beam, span, segment, t, &s->factors[c], &e);
    return *extreme_of(s, &e);
}

/* One line along the whole beam: the most, or the least. */
static frame_status curve(const sheet *s, int most) {
    const frame_beam *beam = s->page->beam;
    frame_status status = frame_drawing_point(s->page->drawing, 0, 0);
    for (size_t i = 0; !status && i < beam->span_count; i++)
        for (size_t g = beam->spans[i].first; g < beam->spans[i].first + beam->spans[i].count; g++)
            for (int k = 0; !status && k <= STEPS; k++) {
                const double t = beam->segments[g].length * k / STEPS;
                const frame_beam_extreme e = at(s, i, g, t);
                status = frame_drawing_point(s->page->drawing, beam->spans[i].at + beam->segments[g].at + t,
                                             s->scale * (most ? e.most : e.least));
            }
    if (!status) status = frame_drawing_point(s->page->drawing, s->page->length, 0);
    return status ? status : frame_drawing_polyline(s->page->drawing, FRAME_PEN_OUTLINE);
}

/* From the least to the most, or to the axis where that is farther. */
static frame_status stroke(const sheet *s, double x) {
    const frame_beam *beam = s->page->beam;
    size_t i = 0;
    while (i + 1 < beam->span_count && beam->spans[i + 1].at <= x) i++;
    size_t g = beam->spans[i].first;
    while (g + 1 < beam->spans[i].first + beam->spans[i].count && beam->spans[i].at + beam->segments[g + 1].at <= x)
        g++;
    const frame_beam_extreme e =
        at(s, i, g, fmin(x - beam->spans[i].at - beam->segments[g].at, beam->segments[g].length));
    const double low = s->scale * fmin(e.least, 0), high = s->scale * fmax(e.most, 0);
    if (fabs(high - low) < 1e-3 * s->page->height) return FRAME_OK;
    return frame_drawing_line(s->page->drawing, x, low, x, high, FRAME_PEN_DIMENSION);
}

static void value_words(const sheet *s, double value) {
    if (s->what == DROP) {
        char number[32];
        frame_number_print_fixed(fabs(value), 3, number, sizeof number);
        frame_text_clear(s->page->words);
        frame_text_add(s->page->words, number);
        frame_text_add(s->page->words, value < 0 ? " in up" : " in");
        return;
    }
    frame_beam_words(s->page, value, s->what == SHEAR ? " lb" : " lb-in");
}

static frame_status label(const sheet *s, double x, double value) {
    if (fabs(value) < 0.02 * s->largest) return FRAME_OK;
    value_words(s, value);
    return frame_drawing_label(s->page->drawing, x, s->scale * value, frame_text_chars(s->page->words));
}

/* The extremes of each span; those at a support that two spans share are written once. */
static frame_status labels(const sheet *s, const frame_beam_envelope *spans) {
    const frame_beam *beam = s->page->beam;
    frame_status status = FRAME_OK;
    double last_x = -1, last = 0;
    for (size_t i = 0; !status && i < beam->span_count; i++) {
        const frame_beam_extreme *e = extreme_of(s, &spans[i]);
        const double near = 1e-6 * s->page->length;
        const int again = fabs(e->least_at - last_x) < near && fabs(e->least - last) < 1e-6 * s->largest;
        if (e->most > 0) status = label(s, e->most_at, e->most);
        if (!status && e->least < 0 && !again) status = label(s, e->least_at, e->least);
        last_x = e->least_at, last = e->least;
    }
    return status;
}

static frame_status draw_diagram(sheet *s, const frame_beam_envelope *spans, const char *title) {
    const frame_beam_page *p = s->page;
    s->largest = 0;
    for (size_t i = 0; i < p->beam->span_count; i++) {
        const frame_beam_extreme *e = extreme_of(s, &spans[i]);
        s->largest = fmax(s->largest, fmax(fabs(e->most), fabs(e->least)));
    }
    s->scale = s->largest > 0 ? (s->what == DROP ? -0.7 : 1) * p->height / s->largest : 0;
    frame_status status = frame_drawing_view(p->drawing, title);
    if (!status) status = frame_drawing_line(p->drawing, 0, 0, p->length, 0, FRAME_PEN_THIN);
    for (int i = 1; !status && i < STROKES; i++) status = stroke(s, p->length * i / STROKES);
    if (!status && s->largest > 0) status = curve(s, 1);
    if (!status && s->largest > 0) status = curve(s, 0);
    return status ? status : labels(s, spans);
}

/* What the spans come to, over all cases. */
static frame_status span_envelopes(const frame_beam_page *p, const sheet *s, frame_array *spans) {
    frame_arena room = {0};
    frame_beam scratch_beam = *p->beam;
    scratch_beam.arena = room;
    frame_beam_scratch scratch;
    frame_status status = frame_beam_scratch_make(&scratch_beam, &scratch);
    for (size_t i = 0; !status && i < p->beam->span_count; i++) {
        frame_beam_envelope cases[FRAME_LOAD_CASES], all;
        frame_beam_envelope_none(&all);
        frame_beam_span_envelopes(p->beam, i, s->factors, &scratch, cases);
        for (int c = 0; c < s->factor_count; c++) {
            frame_beam_extreme_join(&all.shear, &cases[c].shear);
            frame_beam_extreme_join(&all.moment, &cases[c].moment);
            frame_beam_extreme_join(&all.drop, &cases[c].drop);
        }
        if (!frame_array_push(spans, &all)) status = FRAME_NO_MEMORY;
    }
    frame_arena_give(&scratch_beam.arena);
    return status;
}

frame_status frame_beam_draw_diagrams(const frame_beam_page *p) {
    static const char *const titles[] = {"Shear", "Moment, sagging upward", "Deflection"};
    sheet s = {.page = p, .factor_count = p->beam->case_count};
    frame_array spans = {.item_size = sizeof(frame_beam_envelope)};
    for (int c = 0; c < s.factor_count; c++) s.factors[c] = frame_beam_factors_of(p->beam, &p->beam->cases[c]);
    frame_status status = span_envelopes(p, &s, &spans);
    for (int what = SHEAR; !status && what <= (p->beam->gives_drops ? DROP : MOMENT); what++) {
        s.what = (diagram)what;
        status = draw_diagram(&s, spans.items, titles[what]);
    }
    frame_array_give(&spans);
    return status;
}
