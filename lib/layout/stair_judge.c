/* What the code says of a stair as it came out. */
#include <math.h>

#include "layout/stair.h"
#include "layout_facts.h"

#define WARN_IF(condition, bit) \
    if (condition) out->cautions |= FRAME_BIT(FRAME_STAIRS_CAUTION_##bit)

/* What was given is kept, and said where it breaks a limit. */
static void judge_steps(const frame_stairs_in *in, const frame_stair *stair, frame_stairs_out *out) {
    const double *at = stair->limits.at, slack = 1e-9;
    WARN_IF(stair->riser > at[FRAME_STAIR_RISER] + slack, RISER);
    WARN_IF(out->treads > 0 && stair->tread < at[FRAME_STAIR_TREAD] - slack, TREAD);
    const int needs_nosing = stair->riser_thickness > 0 && stair->tread < at[FRAME_STAIR_NOSING_TREAD] - slack;
    WARN_IF(out->treads > 0 && (stair->nosing > at[FRAME_STAIR_NOSING_MOST] + slack ||
                                (needs_nosing && stair->nosing < at[FRAME_STAIR_NOSING_LEAST] - slack)),
            NOSING);
    WARN_IF(in->run_limit_in != FRAME_NOT_GIVEN && out->leg_run_in > in->run_limit_in + slack, RUN);
    for (int i = 0; i < stair->flights; i++)
        WARN_IF(stair->risers_of[i] * stair->riser > at[FRAME_STAIR_FLIGHT_RISE] + slack, FLIGHT);
    WARN_IF(stair->width < at[FRAME_STAIR_WIDTH] - slack, WIDTH);
    WARN_IF(stair->flights > 1 && stair->landing < fmax(at[FRAME_STAIR_LANDING], stair->width) - slack, LANDING);
    /* The sphere must not pass: a gap of its very size lets it. */
    WARN_IF(stair->riser_thickness == 0 && stair->rise > at[FRAME_STAIR_OPEN_RISER_RISE] + slack &&
                stair->riser - stair->tread_thickness > at[FRAME_STAIR_OPEN_RISER] - slack,
            OPEN);
}

static void judge_stringer(const frame_stair *stair, frame_stairs_out *out) {
    double low = 0, high = 0;
    for (int i = 0; i < stair->stringers; i++) {
        low = fmin(low, stair->floor_at[i]);
        high = fmax(high, stair->floor_at[i]);
    }
    WARN_IF(high - low > stair->limits.at[FRAME_STAIR_VARIATION] + 1e-9, UNEVEN);
    WARN_IF(out->treads > 0 && out->throat_in < 5 - 1e-9, THROAT);
    WARN_IF(out->treads > 0 && out->throat_in < 3.5 - 1e-9, THIN);
}

void frame_stair_judge(const frame_stairs_in *in, const frame_stair *stair, frame_stairs_out *out) {
    judge_steps(in, stair, out);
    judge_stringer(stair, out);
    const uint64_t broken = FRAME_BIT(FRAME_STAIRS_CAUTION_RISER) | FRAME_BIT(FRAME_STAIRS_CAUTION_TREAD) |
                            FRAME_BIT(FRAME_STAIRS_CAUTION_NOSING) | FRAME_BIT(FRAME_STAIRS_CAUTION_RUN) |
                            FRAME_BIT(FRAME_STAIRS_CAUTION_HEADROOM) | FRAME_BIT(FRAME_STAIRS_CAUTION_FLIGHT) |
                            FRAME_BIT(FRAME_STAIRS_CAUTION_LANDING) | FRAME_BIT(FRAME_STAIRS_CAUTION_WIDTH) |
                            FRAME_BIT(FRAME_STAIRS_CAUTION_OPEN) | FRAME_BIT(FRAME_STAIRS_CAUTION_UNEVEN);
    out->passes = (out->cautions & broken) == 0;
    WARN_IF(1, MEASURE);
    WARN_IF(1, LOCAL);
    WARN_IF(1, ALIKE);
    WARN_IF(out->known == FRAME_KNOWN_MEMORY, MEMORY);
    out->not_checked |= FRAME_BIT(FRAME_STAIRS_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_STAIRS_UNCHECKED_TOP) |
                        FRAME_BIT(FRAME_STAIRS_UNCHECKED_GUARD) | FRAME_BIT(FRAME_STAIRS_UNCHECKED_DOORS);
    if (stair->flights > 1) out->not_checked |= FRAME_BIT(FRAME_STAIRS_UNCHECKED_LANDING);
}
