/* What loads on some spans only can do to a beam. A span's own load moves the nodes at its ends; from there the
 * movement goes on to the left and to the right, from node to node by one matrix each, whichever span it came from. So
 * what comes to a node from all spans on one side is kept as a few directions of movement with two sums each: of all
 * that moves it along the direction, and of all that moves it against it. Past a support that holds the beam there is
 * one direction alone, and the work is the same for every span. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "strength/beam_blocks.h"

enum { GROUPS_MOST = 4000000 };
/* Beside the largest that comes to a node, this is nothing. */
#define TOO_SMALL 1e-18

/* Movement of a node, and the weights along and against it. */
typedef struct movement {
    double moved[2];
    double along, against;
} movement;

typedef struct sweep {
    frame_beam *beam;
    int kind, right; /* right: from left to right */
    frame_array here, next;
} sweep;

static frame_status nearly_loose(void) {
    const char *valid = "stiffer supports";
    return frame_fail(FRAME_UNSTABLE, "supports", "", valid,
                      "supports: the beam is a mechanism or nearly one; valid is %s", valid);
}

static frame_status make_right_inverses(frame_beam *beam) {
    beam->right_inverse = frame_arena_take(&beam->arena, beam->node_count * sizeof *beam->right_inverse);
    if (!beam->right_inverse) return FRAME_NO_MEMORY;
    for (size_t i = beam->node_count; i-- > 0;) {
        frame_beam_block rest = beam->blocks[i];
        if (i < beam->span_count) frame_beam_eliminate_right(&rest, beam->links[i], &beam->right_inverse[i + 1]);
        if (!frame_beam_invert(&rest, &beam->blocks[i], &beam->right_inverse[i])) return nearly_loose();
    }
    return FRAME_OK;
}

/* The movement of the next node when the load is all behind. */
static void carry(const frame_beam *beam, size_t node, int right, const double moved[2], double next[2]) {
    double(*B)[2] = beam->links[right ? node : node - 1], load[2];
    if (right) {
        load[0] = -(B[0][0] * moved[0] + B[1][0] * moved[1]);
        load[1] = -(B[0][1] * moved[0] + B[1][1] * moved[1]);
        frame_beam_times(&beam->right_inverse[node + 1], load, next);
    } else {
        load[0] = -(B[0][0] * moved[0] + B[0][1] * moved[1]);
        load[1] = -(B[1][0] * moved[0] + B[1][1] * moved[1]);
        frame_beam_times(&beam->left_inverse[node - 1], load, next);
    }
}

/* The movement of both ends of a span under its own load alone. */
static frame_status move_own(const frame_beam *beam, size_t span, int kind, double left[2], double right[2]) {
    const double *f = beam->fixed[frame_beam_place_of(beam, span, kind)];
    const frame_beam_node *nodes = &beam->nodes[span];
    const double at_left[2] = {nodes[0].held ? 0 : -f[0], nodes[0].clamped ? 0 : -f[1]};
    const double at_right[2] = {nodes[1].held ? 0 : -f[2], nodes[1].clamped ? 0 : -f[3]};
    double(*B)[2] = beam->links[span], carried[2];
    frame_beam_block both = beam->blocks[span + 1], inverse;
    frame_beam_eliminate(&both, B, &beam->left_inverse[span]);
    if (span + 1 < beam->span_count)
        frame_beam_eliminate_right(&both, beam->links[span + 1], &beam->right_inverse[span + 2]);
    frame_beam_times(&beam->left_inverse[span], at_left, carried);
    const double rest[2] = {at_right[0] - B[0][0] * carried[0] - B[1][0] * carried[1],
                            at_right[1] - B[0][1] * carried[0] - B[1][1] * carried[1]};
    if (!frame_beam_invert(&both, &beam->blocks[span + 1], &inverse)) return nearly_loose();
    frame_beam_times(&inverse, rest, right);
    const double back[2] = {at_left[0] - B[0][0] * right[0] - B[0][1] * right[1],
                            at_left[1] - B[1][0] * right[0] - B[1][1] * right[1]};
    frame_beam_times(&beam->left_inverse[span], back, left);
    return FRAME_OK;
}

/* The forces on the ends of a span from the movement of its ends; fixed: those of its load, or NULL. */
static void end_forces(const frame_beam *beam, size_t span, const double left[2], const double right[2],
                       const double *fixed, double forces[4]) {
    double k[4][4];
    frame_beam_span_stiffness(beam, span, k);
    for (int i = 0; i < 4; i++)
        forces[i] =
            (fixed ? fixed[i] : 0) + k[i][0] * left[0] + k[i][1] * left[1] + k[i][2] * right[0] + k[i][3] * right[1];
}

static void swing(double sums[2], double value) {
    if (value > 0)
        sums[0] += value;
    else
        sums[1] += value;
}

/* What the support of a node does when it and its neighbours move so; weights along and against. */
static void add_reaction(frame_beam *beam, size_t node, int kind, const double left_forces[4],
                         const double right_forces[4], double along, double against) {
    const size_t place = frame_beam_place_of(beam, node, kind);
    const double force = -(left_forces[2] + right_forces[0]), couple = left_forces[3] + right_forces[1];
    swing(beam->swing[place], force * along);
    swing(beam->swing[place], -force * against);
    swing(beam->couples[place], couple * along);
    swing(beam->couples[place], -couple * against);
}

static const double none[4] = {0};

/* The reactions on both sides of a span under its own load. */
static void own_reactions(frame_beam *beam, size_t span, int kind, const double left[2], const double right[2]) {
    double own[4], beside[4], moved[2];
    end_forces(beam, span, left, right, beam->fixed[frame_beam_place_of(beam, span, kind)], own);
    if (span > 0) {
        carry(beam, span, 0, left, moved);
        end_forces(beam, span - 1, moved, left, NULL, beside);
    }
    add_reaction(beam, span, kind, span > 0 ? beside : none, own, 1, 0);
    if (span + 1 < beam->span_count) {
        carry(beam, span + 1, 1, right, moved);
        end_forces(beam, span + 1, right, moved, NULL, beside);
    }
    add_reaction(beam, span + 1, kind, own, span + 1 < beam->span_count ? beside : none, 1, 0);
}

static double size_of(const movement *m, double length) {
    return fmax(fabs(m->moved[0]), fabs(m->moved[1]) * length) * (m->along + m->against);
}

/* Adds a movement to those of a node: to one of the same direction if there is one. */
static frame_status gather(frame_array *movements, const movement *added, double length) {
    const double t = added->moved[1] * length, v = added->moved[0], size = fmax(fabs(t), fabs(v));
    if (!(size > 0)) return FRAME_OK;
    for (size_t i = 0; i < movements->count; i++) {
        movement *m = &FRAME_ITEM(movement, *movements, i);
        const double mt = m->moved[1] * length, mv = m->moved[0], most = fmax(fabs(mt), fabs(mv));
        if (fabs(mt * v - mv * t) > 1e-13 * most * size) continue;
        const double ratio = fabs(mt) > fabs(mv) ? t / mt : v / mv;
        m->along += ratio > 0 ? ratio * added->along : -ratio * added->against;
        m->against += ratio > 0 ? ratio * added->against : -ratio * added->along;
        return FRAME_OK;
    }
    return frame_array_push(movements, added) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status keep_group(sweep *s, size_t span, const movement *m, const double forces[4], const double left[2]) {
    frame_beam *beam = s->beam;
    size_t *first = &beam->group_first[frame_beam_place_of(beam, span, s->kind)];
    const frame_beam_group group = {frame_beam_left_state(forces, left), m->along, m->against, *first};
    if (beam->groups.count >= GROUPS_MOST)
        return frame_fail(FRAME_TOO_LARGE, "pattern", "yes", "no, or fewer or stiffer springs",
                          "pattern: too many ways to load a beam on so many springs; valid is no, or fewer or stiffer "
                          "springs");
    if (!frame_array_push(&beam->groups, &group)) return FRAME_NO_MEMORY;
    *first = beam->groups.count;
    return FRAME_OK;
}

/* Takes one movement of a node across the next span: what it does to the span and to the support behind it. */
static frame_status cross(sweep *s, size_t node, const movement *m) {
    frame_beam *beam = s->beam;
    const size_t span = s->right ? node : node - 1, next = s->right ? node + 1 : node - 1;
    const int goes_on = s->right ? next < beam->span_count : next > 0;
    movement carried = *m;
    double forces[4], beyond[4], far[2];
    carry(beam, node, s->right, m->moved, carried.moved);
    const double *left = s->right ? m->moved : carried.moved, *right = s->right ? carried.moved : m->moved;
    end_forces(beam, span, left, right, NULL, forces);
    frame_status status = keep_group(s, span, m, forces, left);
    if (status) return status;
    if (goes_on) {
        carry(beam, next, s->right, carried.moved, far);
        end_forces(beam, s->right ? next : next - 1, s->right ? carried.moved : far, s->right ? far : carried.moved,
                   NULL, beyond);
    }
    const double *other = goes_on ? beyond : none;
    add_reaction(beam, next, s->kind, s->right ? forces : other, s->right ? other : forces, m->along, m->against);
    return gather(&s->next, &carried, beam->spans[span].length);
}

/* Crosses the span after a node with all that comes from behind it, but for what is nothing beside the rest. */
static frame_status step(sweep *s, size_t node, const double own[2]) {
    frame_beam *beam = s->beam;
    const double length = beam->spans[s->right ? node : node - 1].length;
    double most = 0;
    for (size_t i = 0; i < s->here.count; i++) most = fmax(most, size_of(&FRAME_ITEM(movement, s->here, i), length));
    s->next.count = 0;
    for (size_t i = 0; i < s->here.count; i++) {
        const movement *m = &FRAME_ITEM(movement, s->here, i);
        if (size_of(m, length) <= most * TOO_SMALL) continue;
        const frame_status status = cross(s, node, m);
        if (status) return status;
    }
    const movement added = {{own[0], own[1]}, 1, 0};
    const frame_status status = gather(&s->next, &added, length);
    const frame_array swapped = s->here;
    s->here = s->next;
    s->next = swapped;
    return status;
}

/* Both ways over the beam, for one kind of load. own: the movements of both ends of every span under its own load. */
static frame_status sweep_kind(frame_beam *beam, int kind, double (*own)[2][2]) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < beam->span_count; i++) {
        if ((status = move_own(beam, i, kind, own[i][0], own[i][1]))) return status;
        own_reactions(beam, i, kind, own[i][0], own[i][1]);
    }
    for (int right = 0; right <= 1 && !status; right++) {
        sweep s = {beam, kind, right, {.item_size = sizeof(movement)}, {.item_size = sizeof(movement)}};
        for (size_t i = 0; i < beam->span_count && !status; i++) {
            const size_t span = right ? i : beam->span_count - 1 - i;
            status = step(&s, right ? span : span + 1, own[span][right]);
        }
        frame_array_give(&s.here);
        frame_array_give(&s.next);
    }
    return status;
}

frame_status frame_beam_pattern(frame_beam *beam) {
    const size_t kinds = (size_t)beam->kind_count, sums = beam->node_count * kinds;
    frame_status status = make_right_inverses(beam);
    if (status) return status;
    double(*own)[2][2] = frame_arena_take(&beam->arena, beam->span_count * sizeof *own);
    beam->swing = frame_arena_take(&beam->arena, sums * sizeof *beam->swing);
    beam->couples = frame_arena_take(&beam->arena, sums * sizeof *beam->couples);
    beam->group_first = frame_arena_take(&beam->arena, beam->span_count * kinds * sizeof *beam->group_first);
    if (!own || !beam->swing || !beam->couples || !beam->group_first) return FRAME_NO_MEMORY;
    memset(beam->swing, 0, sums * sizeof *beam->swing);
    memset(beam->couples, 0, sums * sizeof *beam->couples);
    memset(beam->group_first, 0, beam->span_count * kinds * sizeof *beam->group_first);
    beam->groups.item_size = sizeof(frame_beam_group);
    for (int k = 0; k < beam->kind_count && !status; k++)
        if (frame_beam_is_patterned(beam, k)) status = sweep_kind(beam, k, own);
    return status;
}
