/* Joists sorted by crown. */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout_facts.h"
#include "working/calculation.h"

typedef struct crowned {
    double crown;
    int32_t piece, turn;
} crowned;

static int by_crown(const void *a, const void *b) {
    const crowned *first = a, *second = b;
    if (first->crown != second->crown) return first->crown < second->crown ? -1 : 1;
    return first->piece < second->piece ? -1 : 1;
}

/* Which of the sorted pieces goes to a place: in their order; or the straightest at both ends, every second one from
 * each side, so that neighbours differ by no more than two steps of the order. */
static int32_t pick(frame_crown_order order, int32_t place, int32_t count) {
    if (order == FRAME_CROWN_RISING) return place;
    return place < (count + 1) / 2 ? 2 * place : 2 * (count - 1 - place) + 1;
}

static frame_status place_all(const frame_crowns_in *in, const crowned *sorted, int32_t count, frame_answer *answer,
                              frame_crowns_out *out) {
    double last = 0;
    out->step_in = 0;
    for (int32_t i = 0; i < count; i++) {
        const crowned *piece = &sorted[pick(in->order, i, count)];
        frame_crowns_place *place = frame_answer_add(answer, 0);
        if (!place) return FRAME_NO_MEMORY;
        place->piece = piece->piece;
        place->number = i + 1;
        place->crown_in = piece->crown;
        place->turn = piece->turn;
        if (i) out->step_in = fmax(out->step_in, fabs(piece->crown - last));
        last = piece->crown;
    }
    return FRAME_OK;
}

static frame_status solve(const frame_crowns_in *in, frame_answer *answer, frame_crowns_out *out, frame_working *w) {
    crowned *sorted = frame_take(in->crown_count * sizeof *sorted);
    if (!sorted) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < in->crown_count; i++)
        sorted[i] = (crowned){fabs(in->crowns_in[i]), (int32_t)i + 1, in->crowns_in[i] < 0};
    qsort(sorted, in->crown_count, sizeof *sorted, by_crown);
    int32_t good = 0;
    while (good < (int32_t)in->crown_count && sorted[good].crown <= in->limit_in + 1e-9) good++;
    const int32_t places = in->places == FRAME_NOT_GIVEN_INT ? (int32_t)in->crown_count : in->places;
    const int32_t used = good < places ? good : places;
    FRAME_GIVEN(w, pieces, (double)in->crown_count, "", "pieces at hand");
    FRAME_GIVEN(w, straight, good, "", "of them straight enough");
    FRAME_STEP(w, rejected, pieces - straight, "", "rejected", "arithmetic");
    FRAME_GIVEN(w, taken, used, "", "used");
    FRAME_STEP(w, left, straight - taken, "", "straight enough and left over", "arithmetic");
    out->used = used;
    out->rejected = (int32_t)rejected;
    out->spare_pieces = (int32_t)left;
    out->most_in = used ? sorted[used - 1].crown : 0;
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_CROWNS_CAUTION_UP);
    if (used < places && in->places != FRAME_NOT_GIVEN_INT) out->cautions |= FRAME_BIT(FRAME_CROWNS_CAUTION_FEW);
    if (out->rejected) out->cautions |= FRAME_BIT(FRAME_CROWNS_CAUTION_REJECT);
    out->not_checked = FRAME_BIT(FRAME_CROWNS_UNCHECKED_TWIST);
    const frame_status status = place_all(in, sorted, used, answer, out);
    frame_give(sorted);
    return status;
}

FRAME_IMPLEMENT_ANSWER(crowns, solve);
