/* A beam's functions piece by piece, and the places where its moment is zero. */
#include <math.h>

#include "strength/beam_results.h"

/* Beside the largest moment, this share of it is rounding. */
#define NO_MOMENT 1e-10

static frame_status give_piece(const frame_beam *beam, const frame_beam_span *span, size_t segment,
                               const frame_beam_line *force, const frame_beam_line *drop, frame_answer *answer) {
    frame_beam_solve_piece *piece = frame_answer_add(answer, FRAME_BEAM_PIECES);
    if (!piece) return FRAME_NO_MEMORY;
    const frame_polynomial V = frame_beam_shear(force), M = frame_beam_moment(force);
    piece->from_in = span->at + beam->segments[segment].at;
    piece->to_in = piece->from_in + beam->segments[segment].length;
    piece->shear_0 = V.c[0], piece->shear_1 = V.c[1], piece->shear_2 = V.c[2];
    piece->moment_0 = M.c[0], piece->moment_1 = M.c[1], piece->moment_2 = M.c[2], piece->moment_3 = M.c[3];
    if (!beam->gives_drops) return FRAME_OK;
    const frame_polynomial v = frame_beam_drop(beam, span, drop);
    piece->deflection_0 = v.c[0], piece->deflection_1 = v.c[1], piece->deflection_2 = v.c[2];
    piece->deflection_3 = v.c[3], piece->deflection_4 = v.c[4], piece->deflection_5 = v.c[5];
    return FRAME_OK;
}

/* Watches the sign of the moment along the beam. A joint of two segments where the moment is zero and on whose sides it
 * has different signs counts too: a hinge, a load where the moment turns. */
typedef struct watch {
    frame_answer *answer;
    double most; /* the largest moment, to tell rounding by */
    double sign; /* the last that was more than rounding; 0 before */
    int pending; /* a zero joint was passed since */
    int spare;
    double joint_at; /* where */
} watch;

static frame_status note(watch *w, double at) {
    return frame_answer_add_number(w->answer, FRAME_BEAM_INFLECTIONS, at) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status see(watch *w, double value) {
    if (fabs(value) <= NO_MOMENT * w->most) return FRAME_OK;
    const int turned = w->sign != 0 && (value > 0) != (w->sign > 0) && w->pending;
    const frame_status status = turned ? note(w, w->joint_at) : FRAME_OK;
    w->sign = value;
    w->pending = 0;
    return status;
}

static frame_status watch_segment(watch *w, const frame_polynomial *M, double at, double length) {
    double roots[FRAME_POLYNOMIAL_DEGREE];
    const int count = frame_polynomial_roots(M, length, roots);
    double from = 0;
    frame_status status = FRAME_OK;
    for (int i = 0; i <= count && !status; i++) {
        const double to = i < count ? roots[i] : length;
        status = see(w, frame_polynomial_at(M, (from + to) / 2));
        if (i < count) w->pending = 1, w->joint_at = at + to;
        from = to;
    }
    if (fabs(frame_polynomial_at(M, length)) <= NO_MOMENT * w->most && !w->pending)
        w->pending = 1, w->joint_at = at + length;
    return status;
}

static double largest_moment(const frame_beam *beam, const frame_beam_factors *f) {
    double most = 0;
    for (size_t i = 0; i < beam->segment_count; i++) {
        const frame_beam_line line = frame_beam_combined(beam, i, f->force);
        most = fmax(most, fabs(line.state.moment));
        const frame_polynomial M = frame_beam_moment(&line);
        most = fmax(most, fabs(frame_polynomial_at(&M, beam->segments[i].length / 2)));
    }
    return most;
}

frame_status frame_beam_give_pieces(const frame_beam *beam, frame_answer *answer) {
    const frame_beam_factors f = frame_beam_factors_of(beam, &beam->cases[beam->full]);
    watch w = {.answer = answer, .most = largest_moment(beam, &f)};
    for (size_t i = 0; i < beam->span_count; i++) {
        const frame_beam_span *span = &beam->spans[i];
        for (size_t s = span->first; s < span->first + span->count; s++) {
            if (!(beam->segments[s].length > 0)) continue;
            const frame_beam_line force = frame_beam_combined(beam, s, f.force);
            const frame_beam_line drop = frame_beam_combined(beam, s, f.drop);
            const frame_polynomial M = frame_beam_moment(&force);
            if (give_piece(beam, span, s, &force, &drop, answer) ||
                watch_segment(&w, &M, span->at + beam->segments[s].at, beam->segments[s].length))
                return FRAME_NO_MEMORY;
        }
    }
    return FRAME_OK;
}
