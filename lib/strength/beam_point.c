/* The envelope at one place of a beam: no roots, no room needed. */
#include "strength/beam_envelope.h"

/* The most and the least of the three quantities, and those of the drop without dead load. */
enum { SHEAR, MOMENT, DROP, TRANSIENT, QUANTITIES };

typedef struct reach {
    double most[QUANTITIES], least[QUANTITIES];
} reach;

static void split(const frame_beam_state *state, double values[QUANTITIES]) {
    values[SHEAR] = state->shear;
    values[MOMENT] = state->moment;
    values[DROP] = values[TRANSIENT] = state->drop;
}

/* What is always on. */
static void add_fixed(reach *r, const double factor[QUANTITIES], const frame_beam_state *state) {
    double values[QUANTITIES];
    split(state, values);
    for (int q = 0; q < QUANTITIES; q++) {
        r->most[q] += factor[q] * values[q];
        r->least[q] += factor[q] * values[q];
    }
}

/* What may be on or not: so much along the state, so much against it. */
static void add_varying(reach *r, const double factor[QUANTITIES], const frame_beam_state *state, double along,
                        double against) {
    double values[QUANTITIES];
    split(state, values);
    for (int q = 0; q < QUANTITIES; q++) {
        const double value = factor[q] * values[q];
        r->most[q] += value > 0 ? along * value : -against * value;
        r->least[q] += value > 0 ? -against * value : along * value;
    }
}

static void take_away(frame_beam_state *from, const frame_beam_state *state, double times) {
    from->shear -= times * state->shear;
    from->moment -= times * state->moment;
    from->drop -= times * state->drop;
}

static void add_patterned(const frame_beam *beam, size_t span, int kind, double local, frame_beam_state own,
                          const double factor[QUANTITIES], reach *r) {
    for (size_t g = beam->group_first[frame_beam_place_of(beam, span, kind)]; g;) {
        const frame_beam_group *group = &FRAME_ITEM(frame_beam_group, beam->groups, g - 1);
        const frame_beam_line line = {.state = group->state};
        const frame_beam_state state = frame_beam_march(beam, &beam->spans[span], &line, local);
        add_varying(r, factor, &state, group->along, group->against);
        take_away(&own, &state, group->along - group->against);
        g = group->next;
    }
    add_varying(r, factor, &own, 1, 0);
}

void frame_beam_point_envelope(const frame_beam *beam, size_t span, size_t segment, double t,
                               const frame_beam_factors *f, frame_beam_envelope *e) {
    reach r = {{0}, {0}};
    const double local = beam->segments[segment].at + t, at = beam->spans[span].at + local;
    for (int k = 0; k < beam->kind_count; k++) {
        const double factor[QUANTITIES] = {f->force[k], f->force[k], f->drop[k], f->transient[k]};
        const frame_beam_state state =
            frame_beam_march(beam, &beam->spans[span], frame_beam_line_at(beam, segment, k), t);
        if (frame_beam_is_patterned(beam, k))
            add_patterned(beam, span, k, local, state, factor, &r);
        else
            add_fixed(&r, factor, &state);
    }
    frame_beam_extreme *const extremes[QUANTITIES] = {&e->shear, &e->moment, &e->drop, &e->transient};
    for (int q = 0; q < QUANTITIES; q++) {
        frame_beam_extreme_take(extremes[q], r.most[q], at);
        frame_beam_extreme_take(extremes[q], r.least[q], at);
    }
}
