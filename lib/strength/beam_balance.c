/* The equations of a beam: drop and turn of every node under every kind of load, by elimination from left to right on
 * blocks of two; then the forces on the ends of the spans, the reactions, and the state at every segment. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "strength/beam_blocks.h"

/* The forces on the ends of a span that is clamped at both: what moves its left end as the load would move a
 * cantilever's right end back. */
void frame_beam_fixed_ends(const frame_beam *beam, size_t span, int kind, double forces[4]) {
    const frame_beam_span *s = &beam->spans[span];
    frame_beam_state state = {0};
    for (size_t i = s->first; i < s->first + s->count; i++) {
        frame_beam_line line = *frame_beam_line_at(beam, i, kind);
        line.state = state;
        line.state.shear -= line.force;
        line.state.moment += line.couple;
        state = frame_beam_march(beam, s, &line, beam->segments[i].length);
    }
    const double L = s->length, turn = state.turn * s->stiffness, drop = state.drop * s->stiffness;
    const double V = (turn * L / 2 - drop) * 12 / (L * L * L * (1 + s->shear_ratio)), M = turn / L - V * L / 2;
    const double end = M + V * L + state.moment;
    forces[0] = -V;
    forces[1] = M;
    forces[2] = V + state.shear;
    forces[3] = -end;
}

/* With a hinge at the right end no moment is held there. */
static void release_end(const frame_beam_span *s, double forces[4]) {
    const double L = s->length, phi = s->shear_ratio, released = forces[3] / (4 + phi);
    forces[0] -= 6 / L * released;
    forces[1] -= (2 - phi) * released;
    forces[2] += 6 / L * released;
    forces[3] = 0;
}

/* What the offsets of a span's ends would need if nothing turned. */
static void offset_ends(const frame_beam *beam, size_t span, double forces[4]) {
    const frame_beam_node *nodes = &beam->nodes[span];
    const double drops[2] = {nodes[0].held ? nodes[0].offset : 0, nodes[1].held ? nodes[1].offset : 0};
    double k[4][4];
    frame_beam_span_stiffness(beam, span, k);
    for (int i = 0; i < 4; i++) forces[i] = k[i][0] * drops[0] + k[i][2] * drops[1];
}

static void load_spans(frame_beam *beam) {
    for (size_t i = 0; i < beam->span_count; i++)
        for (int k = 0; k < beam->kind_count; k++) {
            double *forces = beam->fixed[frame_beam_place_of(beam, i, k)];
            if (beam->kind_of[k] == FRAME_BEAM_OFFSETS) {
                offset_ends(beam, i, forces);
                continue;
            }
            frame_beam_fixed_ends(beam, i, k, forces);
            if (beam->nodes[i + 1].hinge) release_end(&beam->spans[i], forces);
        }
}

/* Follows the free movement from the node where the elimination fails to the left, and names the place that moves most.
 */
static frame_status mechanism(const frame_beam *beam, size_t node, const frame_beam_block *left,
                              const frame_beam_block *whole) {
    double moved[2] = {0, 1}, most = -1;
    size_t place = node;
    if (left->a > FRAME_NOTHING_LEFT * whole->a)
        moved[0] = -left->b / left->a;
    else
        moved[0] = 1, moved[1] = 0;
    for (size_t i = node;; i--) {
        if (fabs(moved[0]) > most * (1 + 1e-9)) most = fabs(moved[0]), place = i;
        if (i == 0) break;
        double(*B)[2] = beam->links[i - 1];
        const frame_beam_block *I = &beam->left_inverse[i - 1];
        const double f = B[0][0] * moved[0] + B[0][1] * moved[1], g = B[1][0] * moved[0] + B[1][1] * moved[1];
        moved[0] = -(I->a * f + I->b * g);
        moved[1] = -(I->b * f + I->d * g);
    }
    char at[32];
    const char *valid = "supports and hinges that hold every part of the beam";
    frame_number_print(beam->nodes[place].at, 9, at, sizeof at);
    return frame_fail(FRAME_UNSTABLE, "supports", at, valid,
                      "supports: the beam is a mechanism, nothing holds it at %s in from its left end; valid is %s", at,
                      valid);
}

static frame_status eliminate(frame_beam *beam) {
    for (size_t i = 0; i < beam->node_count; i++) {
        frame_beam_block left = beam->blocks[i];
        if (i > 0) frame_beam_eliminate(&left, beam->links[i - 1], &beam->left_inverse[i - 1]);
        if (!frame_beam_invert(&left, &beam->blocks[i], &beam->left_inverse[i]))
            return mechanism(beam, i, &left, &beam->blocks[i]);
    }
    return FRAME_OK;
}

/* The loads on a node, less what has been eliminated. */
static void load_node(const frame_beam *beam, size_t i, int kind, double load[2]) {
    const frame_beam_node *node = &beam->nodes[i];
    load[0] = load[1] = 0;
    if (i > 0) {
        const double *f = beam->fixed[frame_beam_place_of(beam, i - 1, kind)];
        load[0] -= f[2], load[1] -= f[3];
    }
    if (i < beam->span_count) {
        const double *f = beam->fixed[frame_beam_place_of(beam, i, kind)];
        load[0] -= f[0], load[1] -= f[1];
    }
    if (beam->kind_of[kind] == FRAME_BEAM_OFFSETS) load[0] += node->spring * node->offset;
    if (node->held) load[0] = 0;
    if (node->clamped) load[1] = 0;
}

/* One way to the right, one way back; moved holds the loads on the way. */
static void solve(frame_beam *beam) {
    double v[2];
    for (size_t i = 0; i < beam->node_count; i++)
        for (int k = 0; k < beam->kind_count; k++) {
            double *load = beam->moved[frame_beam_place_of(beam, i, k)];
            load_node(beam, i, k, load);
            if (i == 0) continue;
            double(*B)[2] = beam->links[i - 1];
            frame_beam_times(&beam->left_inverse[i - 1], beam->moved[frame_beam_place_of(beam, i - 1, k)], v);
            load[0] -= B[0][0] * v[0] + B[1][0] * v[1];
            load[1] -= B[0][1] * v[0] + B[1][1] * v[1];
        }
    for (size_t i = beam->node_count; i-- > 0;)
        for (int k = 0; k < beam->kind_count; k++) {
            double *moved = beam->moved[frame_beam_place_of(beam, i, k)];
            if (i < beam->span_count) {
                double(*B)[2] = beam->links[i];
                const double *next = beam->moved[frame_beam_place_of(beam, i + 1, k)];
                moved[0] -= B[0][0] * next[0] + B[0][1] * next[1];
                moved[1] -= B[1][0] * next[0] + B[1][1] * next[1];
            }
            frame_beam_times(&beam->left_inverse[i], moved, moved);
        }
}

/* Whether nothing can take a force (0) or moment (1) at the left end of a span: there it is zero, not the rounding of
 * its terms. */
static int is_loose(const frame_beam *beam, size_t span, int which) {
    const frame_beam_node *node = &beam->nodes[span];
    if (which == 1) return (span == 0 || node->hinge) && !node->clamped && !(node->turning > 0);
    return span == 0 && !node->held && !(node->spring > 0);
}

/* What the nodes put on the ends of a span, and with it the reactions and the states along the span. */
static void give_span(frame_beam *beam, size_t span, int kind, const double k[4][4]) {
    const frame_beam_span *s = &beam->spans[span];
    const double *left = beam->moved[frame_beam_place_of(beam, span, kind)];
    const double *right = beam->moved[frame_beam_place_of(beam, span + 1, kind)];
    const double ends[4] = {left[0], left[1], right[0], right[1]};
    const double *fixed = beam->fixed[frame_beam_place_of(beam, span, kind)];
    double forces[4];
    for (int i = 0; i < 4; i++)
        forces[i] = fixed[i] + k[i][0] * ends[0] + k[i][1] * ends[1] + k[i][2] * ends[2] + k[i][3] * ends[3];
    double *here = beam->reactions[frame_beam_place_of(beam, span, kind)];
    double *there = beam->reactions[frame_beam_place_of(beam, span + 1, kind)];
    here[0] -= forces[0], here[1] += forces[1];
    there[0] -= forces[2], there[1] += forces[3];
    double moved[2] = {left[0], left[1]};
    if (beam->kind_of[kind] == FRAME_BEAM_OFFSETS && beam->nodes[span].held) moved[0] += beam->nodes[span].offset;
    if (is_loose(beam, span, 0)) forces[0] = 0;
    if (is_loose(beam, span, 1)) forces[1] = 0;
    frame_beam_state state = frame_beam_left_state(forces, moved);
    for (size_t i = s->first; i < s->first + s->count; i++) {
        frame_beam_line *line = frame_beam_line_at(beam, i, kind);
        line->state = state;
        line->state.shear -= line->force;
        line->state.moment += line->couple;
        state = frame_beam_march(beam, s, line, beam->segments[i].length);
    }
}

frame_status frame_beam_equations(frame_beam *beam) {
    frame_beam_fill_blocks(beam);
    const frame_status status = eliminate(beam);
    if (!status) solve(beam);
    return status;
}

frame_status frame_beam_balance(frame_beam *beam) {
    const size_t kinds = (size_t)beam->kind_count, nodes = beam->node_count;
    beam->left_inverse = frame_arena_take(&beam->arena, nodes * sizeof *beam->left_inverse);
    beam->fixed = frame_arena_take(&beam->arena, beam->span_count * kinds * sizeof *beam->fixed);
    beam->moved = frame_arena_take(&beam->arena, nodes * kinds * sizeof *beam->moved);
    beam->reactions = frame_arena_take(&beam->arena, nodes * kinds * sizeof *beam->reactions);
    beam->links = frame_arena_take(&beam->arena, beam->span_count * sizeof *beam->links);
    beam->blocks = frame_arena_take(&beam->arena, nodes * sizeof *beam->blocks);
    if (!beam->links || !beam->blocks || !beam->left_inverse || !beam->fixed || !beam->moved || !beam->reactions)
        return FRAME_NO_MEMORY;
    memset(beam->reactions, 0, nodes * kinds * sizeof *beam->reactions);
    load_spans(beam);
    const frame_status status = frame_beam_equations(beam);
    if (status) return status;
    for (size_t i = 0; i < beam->span_count; i++) {
        double stiffness[4][4];
        frame_beam_span_stiffness(beam, i, stiffness);
        for (int k = 0; k < beam->kind_count; k++) give_span(beam, i, k, (const double(*)[4])stiffness);
    }
    return FRAME_OK;
}
