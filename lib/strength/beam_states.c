/* The statics and elastic line of one span. */
#include "strength/beam_model.h"

frame_beam_state frame_beam_march(const frame_beam *beam, const frame_beam_span *span, const frame_beam_line *line,
                                  double x) {
    const double w = line->w, s = line->slope, V = line->state.shear, M = line->state.moment;
    const double bend = x / span->stiffness;
    frame_beam_state state;
    state.shear = V - x * (w + x * s / 2);
    state.moment = M + x * (V - x * (w / 2 + x * s / 6));
    state.turn = line->state.turn - bend * (M + x * (V / 2 - x * (w / 6 + x * s / 24)));
    state.drop = line->state.drop + x * line->state.turn -
                 bend * x * (M / 2 + x * (V / 6 - x * (w / 24 + x * s / 120))) +
                 beam->shear_flexibility * x * (V - x * (w / 2 + x * s / 6));
    return state;
}

/* Of a beam that bends and shears; with a hinge at its right end the right end's turn drops out. */
void frame_beam_span_stiffness(const frame_beam *beam, size_t span, double k[4][4]) {
    const frame_beam_span *s = &beam->spans[span];
    const double L = s->length, phi = s->shear_ratio, c = s->stiffness / (L * L * L * (1 + phi));
    const double shear = 12 * c, both = 6 * c * L, near = (4 + phi) * c * L * L, far = (2 - phi) * c * L * L;
    const double full[4][4] = {
        {shear, both, -shear, both}, {both, near, -both, far}, {-shear, -both, shear, -both}, {both, far, -both, near}};
    const int hinged = beam->nodes[span + 1].hinge;
    for (int i = 0; i < 4; i++)
        for (int j = 0; j < 4; j++)
            k[i][j] = !hinged ? full[i][j] : i == 3 || j == 3 ? 0 : full[i][j] - full[i][3] * full[3][j] / near;
}

frame_beam_state frame_beam_left_state(const double forces[4], const double moved[2]) {
    return (frame_beam_state){.shear = -forces[0], .moment = forces[1], .turn = moved[1], .drop = moved[0]};
}
