/* Several readings of one length, and the one to cut by. Never their average: half of all pieces would be wrong the way
 * that cannot be mended. */
#include <math.h>

#include "base/error.h"
#include "marks_facts.h"
#include "working/calculation.h"

static const char trade[] = "common practice: infill takes the shorter, what must reach the longer";

static frame_status compute(const frame_readings_in *in, frame_readings_out *out, frame_working *w) {
    double least = in->readings_in[0], most = in->readings_in[0];
    for (size_t i = 1; i < in->reading_count; i++) {
        least = fmin(least, in->readings_in[i]);
        most = fmax(most, in->readings_in[i]);
    }
    FRAME_GIVEN(w, shortest, least, "in", "shortest reading");
    FRAME_GIVEN(w, longest, most, "in", "longest reading");
    FRAME_STEP(w, spread, longest - shortest, "in", "how far they differ", "arithmetic");
    const int infill = in->use == FRAME_READING_INFILL;
    if (in->use == FRAME_READING_REACH && spread > in->refuse_over_in + 1e-9)
        return frame_fail_number(FRAME_REFUSED, "readings_in", spread,
                                 "readings that differ by less: measure again; a piece too short cannot be mended");
    if (infill)
        FRAME_CASE(w, "it goes in between", "the shorter", trade);
    else
        FRAME_CASE(w, "it must reach, or may lap", "the longer", trade);
    FRAME_GIVEN(w, chosen, infill ? shortest : longest, "in", "length chosen");
    out->chosen_in = chosen;
    out->shortest_in = shortest;
    out->longest_in = longest;
    out->spread_in = spread;
    out->agree = spread <= in->agree_within_in + 1e-9;
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_READINGS_CAUTION_ENDS);
    if (!out->agree) out->cautions |= FRAME_BIT(FRAME_READINGS_CAUTION_DISAGREE);
    if (in->reading_count == 1) out->cautions |= FRAME_BIT(FRAME_READINGS_CAUTION_ONE);
    out->not_checked = FRAME_BIT(FRAME_READINGS_UNCHECKED_ALLOWANCE);
    return FRAME_OK;
}

FRAME_IMPLEMENT(readings, compute);
