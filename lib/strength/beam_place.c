/* Puts each load of a beam onto the spans it lies on, as events: places where a spread load begins or ends, or where a
 * force or couple stands. */
#include "strength/beam_place.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "strength_facts.h"

/* A load on many spans becomes as many events. */
enum { EVENTS_MOST = 20000000 };
/* Nearer to a node than this share of the span, a load stands at it. */
#define AT_NODE 1e-12

static int is_given(double value) {
    return value != FRAME_NOT_GIVEN;
}

static frame_status refused(size_t i, frame_status status, const char *field, const char *value, const char *valid) {
    char path[64];
    snprintf(path, sizeof path, "loads[%zu].%s", i, field);
    return frame_fail(status, path, value, valid, "%s: %s; valid is %s", path, value, valid);
}

static frame_status place_refused(size_t i, const char *field, double value, double low, double high) {
    char given[32], from[32], to[32], valid[80];
    frame_number_print(value, 9, given, sizeof given);
    frame_number_print(low, 9, from, sizeof from);
    frame_number_print(high, 9, to, sizeof to);
    snprintf(valid, sizeof valid, "%s..%s in", from, to);
    return refused(i, FRAME_OUT_OF_RANGE, field, given, valid);
}

/* Which of the three it is: a bit each. */
static frame_status check_shape(size_t i, const frame_beam_load *load) {
    const int spread = is_given(load->plf), force = is_given(load->force_lb), couple = is_given(load->moment_lb_in);
    const char *one = "one of plf, force_lb and moment_lb_in";
    if (spread + force + couple == 0) return refused(i, FRAME_REQUIRED, "plf", "no load is given", one);
    if (spread + force + couple > 1)
        return refused(i, FRAME_CONFLICT, spread ? "plf" : "force_lb", "two loads are given as one", one);
    if (!spread && is_given(load->to_plf))
        return refused(i, FRAME_CONFLICT, "to_plf", "given without plf", "a spread load from plf to to_plf");
    if (!spread && is_given(load->to_in))
        return refused(i, FRAME_CONFLICT, "to_in", "given for a load at one place", "at_in alone");
    if (!spread && !is_given(load->at_in))
        return refused(i, FRAME_REQUIRED, "at_in", "not given", "where the load stands");
    return FRAME_OK;
}

/* The part of the beam that a load's distances are measured in. */
typedef struct range {
    double from, length;
    size_t first, last; /* spans */
} range;

static frame_status find_range(const frame_beam *beam, size_t i, const frame_beam_load *load, range *r) {
    const double end = beam->nodes[beam->node_count - 1].at;
    *r = (range){0, end, 0, beam->span_count - 1};
    if (load->span == FRAME_NOT_GIVEN_INT) return FRAME_OK;
    const size_t number = (size_t)load->span, lowest = beam->left ? 0 : 1, highest = beam->span_count + lowest - 1;
    if (number < lowest || number > highest) {
        char given[24], valid[64];
        snprintf(given, sizeof given, "%zu", number);
        snprintf(valid, sizeof valid, "%zu..%zu", lowest, highest);
        return refused(i, FRAME_OUT_OF_RANGE, "span", given, valid);
    }
    const size_t span = number - lowest;
    *r = (range){beam->spans[span].at, beam->spans[span].length, span, span};
    return FRAME_OK;
}

/* The last span of a range that begins at or before a place. */
static size_t span_at(const frame_beam *beam, const range *r, double x) {
    size_t low = r->first, high = r->last;
    while (low < high) {
        const size_t middle = low + (high - low + 1) / 2;
        if (beam->spans[middle].at <= x)
            low = middle;
        else
            high = middle - 1;
    }
    return low;
}

static double snapped(const frame_beam_span *span, double local) {
    if (local <= span->length * AT_NODE) return 0;
    return local >= span->length * (1 - AT_NODE) ? span->length : local;
}

static frame_status put(frame_array *events, const frame_beam_event *event) {
    return frame_array_push(events, event) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* A force or couple: at a node it belongs to the span on its right, but at the right end to the one on its left. */
static frame_status put_point(const frame_beam *beam, const frame_beam_load *load, const range *r, int kind,
                              frame_array *events) {
    const double x = r->from + load->at_in;
    size_t span = span_at(beam, r, x);
    double local = r->first == r->last ? load->at_in : x - beam->spans[span].at;
    local = snapped(&beam->spans[span], local);
    if (local == beam->spans[span].length && span < r->last) span++, local = 0;
    const frame_beam_event event = {.at = local,
                                    .span = span,
                                    .kind = kind,
                                    .force = is_given(load->force_lb) ? load->force_lb : 0,
                                    .couple = is_given(load->moment_lb_in) ? load->moment_lb_in : 0};
    return put(events, &event);
}

/* A spread load's part on one span, from a to b of its left end. */
static frame_status put_part(const frame_beam *beam, size_t span, double a, double b, double w, double slope, int kind,
                             frame_array *events) {
    const frame_beam_event begins = {.at = a, .span = span, .kind = kind, .w = w, .slope = slope, .opens = 1};
    const frame_beam_event ends = {
        .at = b, .span = span, .kind = kind, .w = -(w + slope * (b - a)), .slope = -slope, .opens = -1};
    const frame_status status = put(events, &begins);
    return status || b == beam->spans[span].length ? status : put(events, &ends);
}

static frame_status put_spread(const frame_beam *beam, const frame_beam_load *load, const range *r, int kind,
                               frame_array *events) {
    const double from = is_given(load->at_in) ? load->at_in : 0, to = is_given(load->to_in) ? load->to_in : r->length;
    const double begins = load->plf / 12, ends = (is_given(load->to_plf) ? load->to_plf : load->plf) / 12;
    const double slope = (ends - begins) / (to - from);
    for (size_t span = span_at(beam, r, r->from + from); span <= r->last; span++) {
        const frame_beam_span *s = &beam->spans[span];
        const double offset = s->at - r->from; /* of the span's left end from where distances begin */
        if (offset >= to) break;
        const double a = snapped(s, from - offset), b = snapped(s, to - offset);
        if (b <= a) continue;
        const double w = begins + slope * (a + offset - from);
        if (put_part(beam, span, a, b, w, slope, kind, events)) return FRAME_NO_MEMORY;
        if (events->count > EVENTS_MOST)
            return frame_fail(FRAME_TOO_LARGE, "loads", "", "20 million loads on spans in all",
                              "loads: too many; valid is 20 million loads on spans in all");
    }
    return FRAME_OK;
}

static frame_status check_places(size_t i, const frame_beam_load *load, const range *r) {
    const double most = r->length * (1 + AT_NODE);
    const double from = is_given(load->at_in) ? load->at_in : 0;
    if (from > most) return place_refused(i, "at_in", from, 0, r->length);
    if (!is_given(load->plf)) return FRAME_OK;
    const double to = is_given(load->to_in) ? load->to_in : r->length;
    if (to > most) return place_refused(i, "to_in", to, from, r->length);
    if (!(to > from)) return refused(i, FRAME_IMPOSSIBLE, "to_in", "not beyond at_in", "a place beyond at_in");
    return FRAME_OK;
}

static frame_status put_load(const frame_beam *beam, size_t i, const frame_beam_load *load, frame_array *events) {
    const int kind = beam->place_of[load->kind];
    range r;
    frame_status status = check_shape(i, load);
    if (!status) status = find_range(beam, i, load, &r);
    if (!status) status = check_places(i, load, &r);
    if (status) return status;
    return is_given(load->plf) ? put_spread(beam, load, &r, kind, events) : put_point(beam, load, &r, kind, events);
}

/* Which kinds there are; offsets come first where any support stands off the line. */
static void find_kinds(const frame_beam_solve_in *in, frame_beam *beam) {
    const double whole[FRAME_BEAM_KINDS] = {0,           in->dead_plf, in->live_plf, in->roof_live_plf, in->snow_plf,
                                            in->wind_plf};
    int there[FRAME_BEAM_KINDS] = {0};
    for (size_t i = 0; i < beam->node_count; i++) there[FRAME_BEAM_OFFSETS] |= beam->nodes[i].offset != 0;
    for (int kind = 1; kind < FRAME_BEAM_KINDS; kind++) there[kind] = whole[kind] != 0;
    for (size_t i = 0; i < in->load_count; i++) {
        frame_beam_load load;
        frame_beam_load_item(in->loads, i, &load);
        there[load.kind] = 1;
    }
    for (int kind = 0; kind < FRAME_BEAM_KINDS; kind++) {
        beam->place_of[kind] = there[kind] ? beam->kind_count : -1;
        if (!there[kind]) continue;
        beam->kind_of[beam->kind_count] = kind;
        beam->whole[beam->kind_count++] = whole[kind] / 12;
    }
}

/* No load at all: the answer is that of a dead load of nothing. */
static void need_one_kind(frame_beam *beam) {
    if (beam->kind_count) return;
    beam->kind_count = 1;
    beam->kind_of[0] = FRAME_LOAD_DEAD;
    beam->place_of[FRAME_LOAD_DEAD] = 0;
}

frame_status frame_beam_place_loads(const frame_beam_solve_in *in, frame_beam *beam) {
    frame_array events = {.item_size = sizeof(frame_beam_event)};
    frame_status status = FRAME_OK;
    find_kinds(in, beam);
    need_one_kind(beam);
    for (size_t i = 0; i < in->load_count && !status; i++) {
        frame_beam_load load;
        frame_beam_load_item(in->loads, i, &load);
        status = put_load(beam, i, &load, &events);
    }
    if (!status && events.count) {
        beam->events = frame_arena_take(&beam->arena, events.count * sizeof *beam->events);
        if (beam->events) memcpy(beam->events, events.items, events.count * sizeof *beam->events);
        if (!beam->events) status = FRAME_NO_MEMORY;
        beam->event_count = events.count;
    }
    frame_array_give(&events);
    return status;
}
