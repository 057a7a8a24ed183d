/* What is given of a stair: its limits, its stringers, the floor under them. */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout/stair.h"
#include "layout_facts.h"

/* A limit of the caller's own takes the place of the code's. */
static void own_limit(frame_stair *stair, frame_stair_limit which, double own, frame_stairs_out *out) {
    if (own == FRAME_NOT_GIVEN) return;
    stair->limits.at[which] = own;
    stair->limits.known[which] = FRAME_KNOWN_USER;
    stair->limits.source[which] = "given";
    out->cautions |= FRAME_BIT(FRAME_STAIRS_CAUTION_LIMITS);
}

static frame_status take_limits(const frame_stairs_in *in, frame_stair *stair, frame_stairs_out *out) {
    const frame_status status = frame_stair_limits_find(in->edition, &stair->limits);
    if (status) return status;
    own_limit(stair, FRAME_STAIR_RISER, in->max_riser_in, out);
    own_limit(stair, FRAME_STAIR_TREAD, in->min_tread_in, out);
    own_limit(stair, FRAME_STAIR_HEADROOM, in->min_headroom_in, out);
    own_limit(stair, FRAME_STAIR_FLIGHT_RISE, in->max_flight_rise_in, out);
    own_limit(stair, FRAME_STAIR_WIDTH, in->min_width_in, out);
    out->known = FRAME_KNOWN_READ;
    for (int i = 1; i < FRAME_STAIR_LIMITS; i++)
        if (stair->limits.known[i] > out->known) out->known = stair->limits.known[i];
    return FRAME_OK;
}

static frame_status refuse_conflicts(const frame_stairs_in *in) {
    if (in->tread_in != FRAME_NOT_GIVEN && in->run_in != FRAME_NOT_GIVEN)
        return frame_fail_number(FRAME_CONFLICT, "run_in", in->run_in,
                                 "left out where tread_in is given: one follows "
                                 "from the other");
    if (in->well_length_in != FRAME_NOT_GIVEN && in->ceiling_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "ceiling_in", "", ">0..1200 in",
                          "ceiling_in: not given; with a well, headroom needs the height of its edge");
    return FRAME_OK;
}

static frame_status take_stringers(const frame_stairs_in *in, frame_stair *stair, frame_answer *answer) {
    static const frame_layout_section_fields fields = {"size", "stringer_thickness_in", "stringer_depth_in"};
    frame_layout_section *section = &stair->stringer;
    *section = (frame_layout_section){in->stringer_thickness_in, in->stringer_depth_in, in->size, NULL, 0};
    if (section->size == FRAME_NOT_GIVEN_INT && section->depth == FRAME_NOT_GIVEN) section->size = FRAME_SIZE(2, 12);
    if (section->size == FRAME_NOT_GIVEN_INT && section->thickness == FRAME_NOT_GIVEN) section->thickness = 1.5;
    stair->stringers = in->stringers;
    const frame_status status = frame_layout_take_section(answer, &fields, section);
    if (status) return status;
    if (stair->stringers == FRAME_NOT_GIVEN_INT) {
        const double needed = ceil((in->width_in - section->thickness) / in->stringer_spacing_in - 1e-9) + 1;
        if (needed > FRAME_STAIR_STRINGERS)
            return frame_fail_number(FRAME_TOO_LARGE, "stringer_spacing_in", in->stringer_spacing_in,
                                     "enough for at most 20 stringers");
        stair->stringers = (int)fmax(needed, 2);
    }
    if (stair->stringers * section->thickness > in->width_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "width_in", in->width_in, "at least the stringers side by side");
    return FRAME_OK;
}

static frame_status take_floor(const frame_stairs_in *in, frame_stair *stair) {
    for (int i = 0; i < FRAME_STAIR_STRINGERS; i++) stair->floor_at[i] = 0;
    if (in->floor_at_stringers_count && in->floor_at_stringers_count != (size_t)stair->stringers)
        return frame_fail_number(FRAME_CONFLICT, "floor_at_stringers_in", (double)in->floor_at_stringers_count,
                                 "one height for each stringer");
    for (size_t i = 0; i < in->floor_at_stringers_count; i++) stair->floor_at[i] = in->floor_at_stringers_in[i];
    return FRAME_OK;
}

frame_status frame_stair_take(const frame_stairs_in *in, frame_stair *stair, frame_answer *answer,
                              frame_stairs_out *out) {
    frame_status status = refuse_conflicts(in);
    if (!status) status = take_limits(in, stair, out);
    if (!status) status = take_stringers(in, stair, answer);
    if (!status) status = take_floor(in, stair);
    if (status) return status;
    stair->finish_below = in->finish_below_in;
    stair->finish_above = in->finish_above_in;
    stair->tread_thickness = in->tread_thickness_in;
    stair->riser_thickness = in->riser_thickness_in;
    stair->width = in->width_in;
    stair->well = in->well_length_in;
    stair->ceiling = in->ceiling_in;
    stair->top = in->top;
    stair->turn = in->turn;
    stair->landings_given = in->landings == FRAME_NOT_GIVEN_INT ? -1 : in->landings;
    stair->nosing_given = in->nosing_in;
    stair->landing = in->landing_length_in;
    if (stair->landing == FRAME_NOT_GIVEN) stair->landing = fmax(in->width_in, stair->limits.at[FRAME_STAIR_LANDING]);
    stair->rise = in->rise_in - in->finish_below_in + in->finish_above_in;
    if (stair->rise <= 0)
        return frame_fail_number(FRAME_IMPOSSIBLE, "rise_in", in->rise_in, "more than the difference of the finishes");
    return FRAME_OK;
}
