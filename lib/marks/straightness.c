/* A line of framing against a string: how far it bows, and what that makes of each joist. */
#include <math.h>

#include "base/error.h"
#include "marks/between.h"
#include "marks_facts.h"
#include "working/calculation.h"

/* What a straight face would read at a place: the blocks, or the line between the readings at the ends. */
static double straight_at(const frame_straightness_in *in, double at) {
    frame_station first, last;
    if (in->block_in != FRAME_NOT_GIVEN) return in->block_in;
    frame_station_item(in->stations, 0, &first);
    frame_station_item(in->stations, in->station_count - 1, &last);
    return first.reading_in + (last.reading_in - first.reading_in) * (at - first.at_in) / (last.at_in - first.at_in);
}

static void find_bows(const frame_straightness_in *in, frame_straightness_out *out) {
    out->bow_away_in = out->bow_toward_in = 0;
    for (size_t i = 0; i < in->station_count; i++) {
        frame_station station;
        frame_station_item(in->stations, i, &station);
        const double bow = station.reading_in - straight_at(in, station.at_in);
        out->bow_away_in = fmax(out->bow_away_in, bow);
        out->bow_toward_in = fmax(out->bow_toward_in, -bow);
    }
}

static int add_joist(const frame_straightness_in *in, double at, frame_answer *answer, frame_straightness_out *out) {
    const frame_between read = frame_stations_read(in->stations, in->station_count, at);
    frame_straightness_joist *joist = frame_answer_add(answer, 0);
    if (!joist) return 0;
    joist->at_in = at;
    joist->bow_in = read.reading - straight_at(in, at);
    joist->gap_in = fmax(joist->bow_in, 0);
    joist->correction_in = joist->bow_in;
    joist->over = joist->gap_in > in->tolerance_in + 1e-9;
    joist->beyond = read.beyond;
    out->over += joist->over;
    if (read.beyond) out->cautions |= FRAME_BIT(FRAME_LINE_CAUTION_BEYOND);
    return 1;
}

static frame_status solve(const frame_straightness_in *in, frame_answer *answer, frame_straightness_out *out,
                          frame_working *w) {
    const frame_status status = frame_stations_check(in->stations, in->station_count, "stations");
    if (status) return status;
    find_bows(in, out);
    out->over = 0;
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_LINE_CAUTION_MEASURE);
    for (size_t i = 0; i < in->mark_count; i++)
        if (!add_joist(in, in->marks_in[i], answer, out)) return FRAME_NO_MEMORY;
    FRAME_GIVEN(w, away, out->bow_away_in, "in", "most the face lies away from the joists");
    FRAME_GIVEN(w, toward, out->bow_toward_in, "in", "most it lies toward them");
    FRAME_STEP(w, range, away + toward, "in", "between the two", "arithmetic");
    (void)range;
    const double worst = fmax(out->bow_away_in, out->bow_toward_in);
    if (out->over || worst > in->tolerance_in + 1e-9) out->cautions |= FRAME_BIT(FRAME_LINE_CAUTION_TOLERANCE);
    out->not_checked = FRAME_BIT(FRAME_LINE_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_LINE_UNCHECKED_SETTLING);
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(straightness, solve);
