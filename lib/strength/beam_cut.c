/* Cuts each span of a beam into segments on which every kind of load changes evenly. */
#include <string.h>

#include "strength/beam_model.h"

/* Puts the events in the order of their spans: first[i] becomes the place of the first event of span i. */
static frame_status by_span(frame_beam *beam, size_t *first) {
    frame_beam_event *sorted = frame_arena_take(&beam->arena, (beam->event_count + 1) * sizeof *sorted);
    if (!sorted) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < beam->event_count; i++) first[beam->events[i].span + 2]++;
    for (size_t i = 2; i < beam->span_count + 2; i++) first[i] += first[i - 1];
    for (size_t i = 0; i < beam->event_count; i++) sorted[first[beam->events[i].span + 1]++] = beam->events[i];
    beam->events = sorted;
    return FRAME_OK;
}

/* Shell's sort, by place: events of a span are few, and no memory is taken. */
static void by_place(frame_beam_event *events, size_t count) {
    for (size_t gap = count / 2; gap > 0; gap = gap == 2 ? 1 : gap * 5 / 11)
        for (size_t i = gap; i < count; i++) {
            const frame_beam_event moved = events[i];
            size_t at = i;
            for (; at >= gap && events[at - gap].at > moved.at; at -= gap) events[at] = events[at - gap];
            events[at] = moved;
        }
}

/* How many segments the sorted events cut a span into; what stands at its right end has one of its own, of no length.
 */
static size_t count_segments(const frame_beam_event *events, size_t count) {
    size_t segments = 1;
    double last = 0;
    for (size_t i = 0; i < count; i++)
        if (events[i].at > last) segments++, last = events[i].at;
    return segments;
}

/* The load on a segment begins as that before it ends. */
static void begin_segment(frame_beam *beam, size_t segment, double at) {
    beam->segments[segment].at = at;
    const double step = at - beam->segments[segment - 1].at;
    beam->segments[segment - 1].length = step;
    for (int k = 0; k < beam->kind_count; k++) {
        const frame_beam_line *before = frame_beam_line_at(beam, segment - 1, k);
        frame_beam_line *line = frame_beam_line_at(beam, segment, k);
        line->w = before->w + before->slope * step;
        line->slope = before->slope;
    }
}

/* Where nothing is spread any more, nothing must be left of what the additions round off. */
static void clear_rounding(frame_beam *beam, size_t segment, const int *open) {
    for (int k = 0; k < beam->kind_count; k++) {
        frame_beam_line *line = frame_beam_line_at(beam, segment, k);
        if (!open[k]) line->w = beam->whole[k], line->slope = 0;
    }
}

static void add_event(frame_beam *beam, size_t segment, const frame_beam_event *event, int *open) {
    frame_beam_line *line = frame_beam_line_at(beam, segment, event->kind);
    line->w += event->w;
    line->slope += event->slope;
    line->force += event->force;
    line->couple += event->couple;
    open[event->kind] += event->opens;
}

static void cut_span(frame_beam *beam, size_t span, const frame_beam_event *events, size_t count) {
    frame_beam_span *s = &beam->spans[span];
    size_t segment = s->first;
    int open[FRAME_BEAM_KINDS] = {0};
    for (int k = 0; k < beam->kind_count; k++) frame_beam_line_at(beam, segment, k)->w = beam->whole[k];
    for (size_t i = 0; i < count; i++) {
        if (events[i].at > beam->segments[segment].at) {
            clear_rounding(beam, segment, open);
            begin_segment(beam, ++segment, events[i].at);
        }
        add_event(beam, segment, &events[i], open);
    }
    clear_rounding(beam, segment, open);
    beam->segments[segment].length = s->length - beam->segments[segment].at;
}

static void sum_loads(frame_beam *beam) {
    for (size_t i = 0; i < beam->segment_count; i++)
        for (int k = 0; k < beam->kind_count; k++) {
            const frame_beam_line *line = frame_beam_line_at(beam, i, k);
            const double length = beam->segments[i].length;
            beam->total[k] += line->force + length * (line->w + line->slope * length / 2);
        }
}

frame_status frame_beam_cut(frame_beam *beam) {
    size_t *first = frame_arena_take(&beam->arena, (beam->span_count + 3) * sizeof *first);
    if (!first) return FRAME_NO_MEMORY;
    memset(first, 0, (beam->span_count + 3) * sizeof *first);
    if (by_span(beam, first)) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < beam->span_count; i++) {
        by_place(&beam->events[first[i]], first[i + 1] - first[i]);
        beam->spans[i].first = beam->segment_count;
        beam->spans[i].count = count_segments(&beam->events[first[i]], first[i + 1] - first[i]);
        beam->segment_count += beam->spans[i].count;
    }
    const size_t lines = beam->segment_count * (size_t)beam->kind_count;
    beam->segments = frame_arena_take(&beam->arena, beam->segment_count * sizeof *beam->segments);
    beam->lines = frame_arena_take(&beam->arena, lines * sizeof *beam->lines);
    if (!beam->segments || !beam->lines) return FRAME_NO_MEMORY;
    memset(beam->segments, 0, beam->segment_count * sizeof *beam->segments);
    memset(beam->lines, 0, lines * sizeof *beam->lines);
    for (size_t i = 0; i < beam->span_count; i++) cut_span(beam, i, &beam->events[first[i]], first[i + 1] - first[i]);
    sum_loads(beam);
    return FRAME_OK;
}
