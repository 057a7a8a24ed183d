/* Extremes where live load may be left off spans: the envelope is made of pieces, parted where a part of the load turns
 * from helping to hurting. */
#include "strength/beam_envelope.h"

/* What a segment is looked at for, and the degree of its polynomial. */
enum { SHEAR, MOMENT, DROP };
static const int degrees[] = {2, 3, 5};

static frame_polynomial quantity(const frame_beam_place *p, int which, const frame_beam_line *line) {
    if (which == SHEAR) return frame_beam_shear(line);
    return which == MOMENT ? frame_beam_moment(line) : frame_beam_drop(p->beam, p->span, line);
}

/* Fills the room with what varies on a segment: the groups from both sides, and the span's own load, which is all of
 * its kind less the groups. Gives the count. */
static size_t find_parts(const frame_beam_place *p, frame_beam_part *parts) {
    const frame_beam *beam = p->beam;
    const double along = beam->segments[p->segment].at;
    size_t count = 0;
    for (int k = 0; k < beam->kind_count; k++) {
        if (!frame_beam_is_patterned(beam, k)) continue;
        frame_beam_line own = *frame_beam_line_at(beam, p->segment, k);
        for (size_t g = beam->group_first[frame_beam_place_of(beam, p->number, k)]; g;) {
            const frame_beam_group *group = &FRAME_ITEM(frame_beam_group, beam->groups, g - 1);
            frame_beam_part *part = &parts[count++];
            const double sum = group->along - group->against;
            part->line = (frame_beam_line){.state = group->state};
            if (along > 0) part->line.state = frame_beam_march(beam, p->span, &part->line, along);
            part->along = group->along, part->against = group->against, part->kind = k;
            own.state.shear -= sum * part->line.state.shear;
            own.state.moment -= sum * part->line.state.moment;
            own.state.turn -= sum * part->line.state.turn;
            own.state.drop -= sum * part->line.state.drop;
            g = group->next;
        }
        frame_beam_part *part = &parts[count++];
        part->line = own;
        part->along = 1, part->against = 0, part->kind = k;
    }
    return count;
}

/* Shell's sort. */
static void in_order(frame_beam_break *breaks, size_t count) {
    for (size_t gap = count / 2; gap > 0; gap = gap == 2 ? 1 : gap * 5 / 11)
        for (size_t i = gap; i < count; i++) {
            const frame_beam_break moved = breaks[i];
            size_t at = i;
            for (; at >= gap && breaks[at - gap].at > moved.at; at -= gap) breaks[at] = breaks[at - gap];
            breaks[at] = moved;
        }
}

/* A span without load of its own, held at both ends: its drop is zero there, and t (L - t) times a line between. */
static int changes_between_supports(const frame_beam_place *p, const frame_polynomial *f, double *roots) {
    const double L = p->length, begins = f->c[1], ends = f->c[1] + L * (2 * f->c[2] + 3 * L * f->c[3]);
    if (!((begins > 0 && ends > 0) || (begins < 0 && ends < 0))) return 0;
    roots[0] = L * begins / (begins + ends);
    return 1;
}

/* Where a part changes its sign: what has no load of its own has one root at most but in its drop. */
static int sign_changes(const frame_beam_place *p, int which, const frame_beam_part *part, double *roots) {
    const frame_polynomial *f = &part->p;
    const frame_beam_node *nodes = &p->beam->nodes[p->number];
    if (which == DROP && p->span->count == 1 && nodes[0].held && nodes[1].held && f->c[4] == 0 && f->c[5] == 0)
        return changes_between_supports(p, f, roots);
    if (which == DROP || f->c[2] != 0 || f->c[3] != 0) return frame_polynomial_roots(f, p->length, roots);
    if (f->c[1] == 0) return 0;
    roots[0] = -f->c[0] / f->c[1];
    return roots[0] > 0 && roots[0] < p->length;
}

/* The polynomials of all parts, and where any of them changes sign; the end of the segment is the last of the breaks.
 */
static size_t find_breaks(const frame_beam_place *p, int which, frame_beam_scratch *s, size_t parts) {
    size_t count = 0;
    for (size_t i = 0; i < parts; i++) {
        double roots[FRAME_POLYNOMIAL_DEGREE];
        s->parts[i].p = quantity(p, which, &s->parts[i].line);
        const int found = sign_changes(p, which, &s->parts[i], roots);
        s->parts[i].keeps_to = found ? roots[0] : p->length;
        for (int r = 0; r < found; r++)
            s->breaks[count++] = (frame_beam_break){roots[r], r + 1 < found ? roots[r + 1] : p->length, i};
    }
    in_order(s->breaks, count);
    s->breaks[count++] = (frame_beam_break){p->length, p->length, parts};
    return count;
}

/* The envelope about a place: all that helps is on for the most, all that hurts for the least. */
typedef struct sums {
    frame_polynomial most, least;
    int degree, spare;
} sums;

static void add(frame_polynomial *sum, double weight, const frame_polynomial *p, int degree) {
    for (int c = 0; c <= degree; c++) sum->c[c] += weight * p->c[c];
}

/* Each part is looked at half way between its own changes of sign, where it is surely not zero. */
static void put_part(sums *sum, frame_beam_part *part, const double *factor) {
    const double f = factor[part->kind];
    part->helps = frame_polynomial_at(&part->p, part->keeps_to / 2) > 0;
    add(&sum->most, f * (part->helps ? part->along : -part->against), &part->p, sum->degree);
    add(&sum->least, f * (part->helps ? -part->against : part->along), &part->p, sum->degree);
}

static void turn_part(sums *sum, frame_beam_part *part, const double *factor, const frame_beam_break *at) {
    const int before = part->helps;
    part->helps = frame_polynomial_at(&part->p, (at->at + at->keeps_to) / 2) > 0;
    if (part->helps == before) return;
    const double f = factor[part->kind] * (part->along + part->against) * (part->helps ? 1 : -1);
    add(&sum->most, f, &part->p, sum->degree);
    add(&sum->least, -f, &part->p, sum->degree);
}

static sums begin_sums(const frame_beam_place *p, int which, const double *factor, frame_beam_scratch *s,
                       size_t parts) {
    double rest[FRAME_BEAM_KINDS];
    for (int k = 0; k < p->beam->kind_count; k++) rest[k] = frame_beam_is_patterned(p->beam, k) ? 0 : factor[k];
    const frame_beam_line line = frame_beam_combined(p->beam, p->segment, rest);
    const frame_polynomial f = quantity(p, which, &line);
    sums sum = {f, f, degrees[which], 0};
    for (size_t i = 0; i < parts; i++) put_part(&sum, &s->parts[i], factor);
    return sum;
}

/* The roots of the slope between two places; most polynomials of shear and moment are of low degree. */
static int turns(const frame_polynomial *f, int degree, double from, double to, double *at) {
    while (degree > 0 && f->c[degree] == 0) degree--;
    if (degree < 2) return 0;
    if (degree == 2) {
        at[0] = -f->c[1] / (2 * f->c[2]);
        return at[0] > from && at[0] < to;
    }
    const frame_polynomial slope = frame_polynomial_slope(f);
    const int found = frame_polynomial_roots(&slope, to, at);
    int kept = 0;
    for (int i = 0; i < found; i++)
        if (at[i] > from) at[kept++] = at[i];
    return kept;
}

/* The most (side 1) or the least (side -1) of a polynomial between two places of a segment. */
static void extremes(const frame_beam_place *p, const frame_polynomial *f, int degree, double from, double to, int side,
                     frame_beam_extreme *extreme) {
    double at[FRAME_POLYNOMIAL_DEGREE + 2];
    int count = to > from ? turns(f, degree, from, to, at) : 0;
    at[count++] = from;
    if (to > from) at[count++] = to;
    for (int i = 0; i < count; i++) {
        const double value = frame_polynomial_at(f, at[i]);
        if (side > 0 && value > extreme->most) extreme->most = value, extreme->most_at = p->at + at[i];
        if (side < 0 && value < extreme->least) extreme->least = value, extreme->least_at = p->at + at[i];
    }
}

/* The moment at the ends of the span. */
static void ends(const frame_beam_place *p, const sums *sum, double t, frame_beam_envelope *e) {
    const size_t first = p->span->first, last = first + p->span->count - 1;
    frame_beam_extreme *end = t <= 0 && p->segment == first ? &e->left : NULL;
    if (t >= p->length && p->segment == last && t > 0) end = &e->right;
    if (!end) return;
    frame_beam_extreme_take(end, frame_polynomial_at(&sum->most, t), p->at + t);
    frame_beam_extreme_take(end, frame_polynomial_at(&sum->least, t), p->at + t);
}

static void under(const frame_beam_place *p, int which, const double *factor, frame_beam_scratch *s, size_t parts,
                  size_t breaks, frame_beam_extreme *extreme, frame_beam_envelope *e) {
    sums sum = begin_sums(p, which, factor, s, parts);
    double from = 0;
    size_t turned = 0;
    if (which == MOMENT) ends(p, &sum, 0, e);
    for (size_t i = 0; i < breaks; i++) {
        const double to = s->breaks[i].at;
        if (to <= from && p->length > 0) continue;
        for (; turned < i; turned++) turn_part(&sum, &s->parts[s->breaks[turned].part], factor, &s->breaks[turned]);
        extremes(p, &sum.most, sum.degree, from, to, 1, extreme);
        extremes(p, &sum.least, sum.degree, from, to, -1, extreme);
        from = to;
    }
    if (which == MOMENT) ends(p, &sum, p->length, e);
}

/* The places where the parts change sign are the same under all cases. */
void frame_beam_patterned(const frame_beam_place *p, const frame_beam_factors *f, frame_beam_scratch *s,
                          frame_beam_envelope *e) {
    const frame_beam *beam = p->beam;
    const size_t parts = find_parts(p, s->parts);
    for (int which = SHEAR; which <= (beam->elastic ? DROP : MOMENT); which++) {
        const size_t breaks = find_breaks(p, which, s, parts);
        for (int c = 0; c < beam->case_count; c++) {
            if (!f[c].varies) continue;
            if (which == SHEAR) under(p, which, f[c].force, s, parts, breaks, &e[c].shear, &e[c]);
            if (which == MOMENT) under(p, which, f[c].force, s, parts, breaks, &e[c].moment, &e[c]);
            if (which != DROP) continue;
            under(p, which, f[c].drop, s, parts, breaks, &e[c].drop, &e[c]);
            if (!f[c].all_transient) under(p, which, f[c].transient, s, parts, breaks, &e[c].transient, &e[c]);
        }
    }
}

/* The largest count of parts on any span. */
static size_t most_parts(const frame_beam *beam) {
    size_t most = 0;
    for (size_t i = 0; i < beam->span_count; i++) {
        size_t count = 0;
        for (int k = 0; k < beam->kind_count; k++) {
            if (!frame_beam_is_patterned(beam, k)) continue;
            size_t g = beam->group_first[frame_beam_place_of(beam, i, k)];
            for (count++; g; count++) g = FRAME_ITEM(frame_beam_group, beam->groups, g - 1).next;
        }
        most = count > most ? count : most;
    }
    return most;
}

frame_status frame_beam_scratch_make(frame_beam *beam, frame_beam_scratch *s) {
    int varies = 0;
    for (int k = 0; k < beam->kind_count; k++) varies |= frame_beam_is_patterned(beam, k);
    *s = (frame_beam_scratch){NULL, NULL};
    if (!varies) return FRAME_OK;
    const size_t most = most_parts(beam);
    s->parts = frame_arena_take(&beam->arena, most * sizeof *s->parts);
    s->breaks = frame_arena_take(&beam->arena, (most * FRAME_POLYNOMIAL_DEGREE + 1) * sizeof *s->breaks);
    return s->parts && s->breaks ? FRAME_OK : FRAME_NO_MEMORY;
}
