/* Each piece's own length between two lines that are not parallel. */
#include <math.h>

#include "base/error.h"
#include "marks/between.h"
#include "marks_facts.h"
#include "working/calculation.h"

static frame_status add_piece(const frame_own_lengths_in *in, size_t index, frame_answer *answer,
                              frame_own_lengths_out *out) {
    const frame_between read = frame_stations_read(in->stations, in->station_count, in->marks_in[index]);
    frame_own_lengths_piece *piece = frame_answer_add(answer, 0);
    if (!piece) return FRAME_NO_MEMORY;
    piece->mark_in = in->marks_in[index];
    piece->clear_in = read.reading;
    piece->length_in = read.reading - in->deduct_in;
    piece->taper_deg = atan(read.slope) / FRAME_DEG;
    piece->beyond = read.beyond;
    piece->number = (int32_t)index + 1;
    out->longest_in = index ? fmax(out->longest_in, piece->length_in) : piece->length_in;
    out->shortest_in = index ? fmin(out->shortest_in, piece->length_in) : piece->length_in;
    if (read.beyond) out->cautions |= FRAME_BIT(FRAME_LINE_CAUTION_BEYOND);
    if (piece->length_in > 0) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "deduct_in", in->deduct_in,
                             "less than the clear distance at every mark");
}

static void find_spread(const frame_own_lengths_in *in, frame_own_lengths_out *out, frame_working *w) {
    double least = INFINITY, most = -INFINITY;
    for (size_t i = 0; i < in->station_count; i++) {
        frame_station station;
        frame_station_item(in->stations, i, &station);
        least = fmin(least, station.reading_in);
        most = fmax(most, station.reading_in);
    }
    FRAME_GIVEN(w, widest, most, "in", "widest clear distance measured");
    FRAME_GIVEN(w, narrowest, least, "in", "narrowest");
    FRAME_STEP(w, out_of_parallel, widest - narrowest, "in", "out of parallel", "arithmetic");
    out->out_of_parallel_in = out_of_parallel;
}

static frame_status solve(const frame_own_lengths_in *in, frame_answer *answer, frame_own_lengths_out *out,
                          frame_working *w) {
    frame_status status = frame_stations_check(in->stations, in->station_count, "stations");
    if (status) return status;
    find_spread(in, out, w);
    out->cautions = FRAME_BIT(FRAME_LINE_CAUTION_MEASURE);
    for (size_t i = 0; !status && i < in->mark_count; i++) status = add_piece(in, i, answer, out);
    if (out->out_of_parallel_in > in->tolerance_in + 1e-9) out->cautions |= FRAME_BIT(FRAME_LINE_CAUTION_TOLERANCE);
    out->known = FRAME_KNOWN_USER;
    out->not_checked = FRAME_BIT(FRAME_LINE_UNCHECKED_SETTLING);
    return status;
}

FRAME_IMPLEMENT_ANSWER(own_lengths, solve);
