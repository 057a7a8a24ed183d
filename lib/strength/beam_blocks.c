/* The blocks of a beam's equations. */
#include "strength/beam_blocks.h"

static void hold_link(const frame_beam_node *node, const frame_beam_node *next, double B[2][2]) {
    if (node->held) B[0][0] = B[0][1] = 0;
    if (node->clamped) B[1][0] = B[1][1] = 0;
    if (next->held) B[0][0] = B[1][0] = 0;
    if (next->clamped) B[0][1] = B[1][1] = 0;
}

static void hold_block(const frame_beam_node *node, frame_beam_block *block) {
    if (node->held) block->a = 1, block->b = 0;
    if (node->clamped) block->d = 1, block->b = 0;
}

void frame_beam_fill_blocks(frame_beam *beam) {
    for (size_t i = 0; i < beam->node_count; i++)
        beam->blocks[i] = (frame_beam_block){beam->nodes[i].spring, 0, beam->nodes[i].turning};
    for (size_t i = 0; i < beam->span_count; i++) {
        frame_beam_block *left = &beam->blocks[i], *right = &beam->blocks[i + 1];
        double k[4][4];
        frame_beam_span_stiffness(beam, i, k);
        left->a += k[0][0], left->b += k[0][1], left->d += k[1][1];
        right->a += k[2][2], right->b += k[2][3], right->d += k[3][3];
        for (int r = 0; r < 2; r++)
            for (int c = 0; c < 2; c++) beam->links[i][r][c] = k[r][2 + c];
        hold_link(&beam->nodes[i], &beam->nodes[i + 1], beam->links[i]);
    }
    for (size_t i = 0; i < beam->node_count; i++) hold_block(&beam->nodes[i], &beam->blocks[i]);
}

void frame_beam_eliminate(frame_beam_block *block, double B[2][2], const frame_beam_block *I) {
    const double p = I->a * B[0][0] + I->b * B[1][0], q = I->b * B[0][0] + I->d * B[1][0];
    const double r = I->a * B[0][1] + I->b * B[1][1], s = I->b * B[0][1] + I->d * B[1][1];
    block->a -= B[0][0] * p + B[1][0] * q;
    block->b -= B[0][0] * r + B[1][0] * s;
    block->d -= B[0][1] * r + B[1][1] * s;
}

void frame_beam_eliminate_right(frame_beam_block *block, double B[2][2], const frame_beam_block *I) {
    double turned[2][2] = {{B[0][0], B[1][0]}, {B[0][1], B[1][1]}};
    frame_beam_eliminate(block, turned, I);
}

int frame_beam_invert(const frame_beam_block *left, const frame_beam_block *whole, frame_beam_block *inverse) {
    if (!(left->a > FRAME_NOTHING_LEFT * whole->a)) return 0;
    const double d = left->d - left->b / left->a * left->b;
    if (!(d > FRAME_NOTHING_LEFT * whole->d)) return 0;
    inverse->d = 1 / d;
    inverse->b = -left->b / left->a / d;
    inverse->a = (1 - left->b * inverse->b) / left->a;
    return 1;
}

void frame_beam_times(const frame_beam_block *I, const double v[2], double product[2]) {
    const double a = I->a * v[0] + I->b * v[1], b = I->b * v[0] + I->d * v[1];
    product[0] = a, product[1] = b;
}
