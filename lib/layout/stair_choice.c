/* How many risers and how deep a tread: what is given is kept; the rest is chosen within the limits, and if nothing is
 * left to choose, the limit that leaves nothing is named. */
#include <math.h>
#include <stdio.h>

#include "base/error.h"
#include "layout/stair.h"
#include "tape/tape.h"

/* Two risers and a tread: Cyclopedia of Carpentry and Building, and a drawing textbook (read). */
#define TWO_RISERS_AND_TREAD 24.0
#define SLACK 1e-9 /* inches; a limit that is just met is met */

/* Inches up to a sixteenth, for a message. */
typedef struct told {
    char text[FRAME_TAPE_TEXT];
} told;

static told tell(double inches, frame_rounding rounding) {
    told t = {""};
    const frame_tape_style style = {.denominator = 16, .style = FRAME_TAPE_INCHES, .rounding = rounding};
    if (frame_tape_format(inches, &style, t.text, sizeof t.text)) frame_inches_write(inches, 16, t.text);
    return t;
}

static double least_tread(const frame_stairs_in *in, const frame_stair *stair) {
    if (in->tread_in != FRAME_NOT_GIVEN) return in->tread_in;
    return stair->limits.at[FRAME_STAIR_TREAD];
}

static int run_fits(const frame_stairs_in *in, const frame_stair *stair) {
    return in->run_limit_in == FRAME_NOT_GIVEN || frame_stair_leg(stair) <= in->run_limit_in + SLACK;
}

static int headroom_fits(const frame_stair *stair) {
    const double headroom = frame_stair_headroom(stair);
    return headroom == FRAME_NOT_GIVEN || headroom >= stair->limits.at[FRAME_STAIR_HEADROOM] - SLACK;
}

/* The deepest tread that the run there is leaves; the leg grows evenly with the tread. */
static double tread_by_run(const frame_stairs_in *in, const frame_stair *stair) {
    if (in->run_limit_in == FRAME_NOT_GIVEN || frame_stair_treads(stair) == 0) return INFINITY;
    double most = INFINITY;
    if (stair->turn == FRAME_STAIR_STRAIGHT)
        return (in->run_limit_in - (stair->flights - 1) * stair->landing) / frame_stair_treads(stair);
    for (int i = 0; i < stair->flights; i++) {
        const int treads = frame_stair_treads_of(stair, i);
        const double ends = (i > 0 ? stair->turn == FRAME_STAIR_QUARTER ? stair->width : stair->landing : 0) +
                            (i < stair->flights - 1 ? stair->landing : 0);
        if (treads) most = fmin(most, (in->run_limit_in - ends) / treads);
    }
    return most;
}

/* The deepest tread with the headroom wanted where the well's edge is over the top flight: the steeper, the lower the
 * line of the nosings there. */
static double tread_by_headroom(const frame_stair *stair, double nosing) {
    if (stair->well == FRAME_NOT_GIVEN || stair->ceiling == FRAME_NOT_GIVEN) return INFINITY;
    const double flush = stair->top == FRAME_STAIR_TOP_TREAD ? stair->riser : 0;
    const double fall = stair->rise + flush - (stair->ceiling - stair->limits.at[FRAME_STAIR_HEADROOM]);
    return fall > 0 ? (stair->well - nosing) * stair->riser / fall : INFINITY;
}

static int accept(const frame_stairs_in *in, frame_stair *stair, double tread, double least) {
    if (tread < least - SLACK) return 0;
    frame_stair_set_tread(stair, tread);
    return run_fits(in, stair) && headroom_fits(stair);
}

/* Picks the tread for a number of risers: as the rule wants it, shallower where run or headroom ask for it. */
static int pick_tread(const frame_stairs_in *in, frame_stair *stair) {
    const double least = least_tread(in, stair);
    if (in->tread_in != FRAME_NOT_GIVEN) return accept(in, stair, in->tread_in, least);
    const double by_run = tread_by_run(in, stair);
    const double wish = fmin(fmax(least, TWO_RISERS_AND_TREAD - 2 * stair->riser), by_run);
    if (accept(in, stair, wish, least)) return 1;
    frame_stair_set_tread(stair, fmax(wish, least));
    const double by_headroom = tread_by_headroom(stair, stair->nosing);
    if (by_headroom < wish && accept(in, stair, by_headroom, least)) return 1;
    return accept(in, stair, least, least);
}

static frame_status say_run(const frame_stairs_in *in, const frame_stair *stair) {
    const told run = tell(in->run_limit_in, FRAME_ROUND_NEAREST), need = tell(frame_stair_leg(stair), FRAME_ROUND_UP);
    const told riser = tell(stair->riser, FRAME_ROUND_NEAREST), tread = tell(stair->tread, FRAME_ROUND_NEAREST);
    const double fits = tread_by_run(in, stair);
    const told shallow = tell(fmax(fits, 0), FRAME_ROUND_DOWN);
    return frame_fail(
        FRAME_IMPOSSIBLE, "run_limit_in", run.text, need.text,
        "run_limit_in: %s is too little run: %d risers of %s and treads of %s, the shortest stair within the "
        "limits, take %s; in %s the treads would be %s%s",
        run.text, stair->risers, riser.text, tread.text, need.text, run.text, shallow.text,
        stair->turn == FRAME_STAIR_STRAIGHT ? "; a stair that turns on a landing takes less in one line" : "");
}

static frame_status say_headroom(const frame_stair *stair) {
    const double well = frame_stair_well_needed(stair), asked = stair->limits.at[FRAME_STAIR_HEADROOM];
    const told given = tell(stair->well, FRAME_ROUND_NEAREST), wanted = tell(asked, FRAME_ROUND_NEAREST);
    const told have = tell(frame_stair_headroom(stair), FRAME_ROUND_DOWN);
    const told higher = tell(frame_stair_line(stair, stair->well) + asked, FRAME_ROUND_UP);
    if (well == FRAME_NOT_GIVEN)
        return frame_fail(
            FRAME_IMPOSSIBLE, "ceiling_in", "", higher.text,
            "ceiling_in: leaves %s of headroom where %s are asked for; no well helps, a ceiling at %s does", have.text,
            wanted.text, higher.text);
    const told need = tell(well, FRAME_ROUND_UP);
    const told riser = tell(stair->riser, FRAME_ROUND_NEAREST), tread = tell(stair->tread, FRAME_ROUND_NEAREST);
    return frame_fail(
        FRAME_IMPOSSIBLE, "well_length_in", given.text, need.text,
        "well_length_in: a well of %s leaves %s of headroom, %s are asked for, even with %d risers of %s and "
        "treads of %s; a well of %s gives it, or its edge at %s above the floor",
        given.text, have.text, wanted.text, stair->risers, riser.text, tread.text, need.text, higher.text);
}

/* What to change when the steepest stair within the limits does not fit. */
static frame_status refuse(const frame_stairs_in *in, frame_stair *stair, int risers) {
    const frame_status status = frame_stair_deal(stair, risers);
    if (status) return status;
    frame_stair_set_tread(stair, least_tread(in, stair));
    if (run_fits(in, stair)) return say_headroom(stair);
    if (headroom_fits(stair)) return say_run(in, stair);
    say_headroom(stair);
    char headroom[200];
    snprintf(headroom, sizeof headroom, "%s", frame_error_valid());
    say_run(in, stair);
    char both[600];
    snprintf(both, sizeof both, "%s; and for the headroom a well of %s is needed", frame_error_text(), headroom);
    char run[64], valid[64];
    snprintf(run, sizeof run, "%s", frame_error_value());
    snprintf(valid, sizeof valid, "%s", frame_error_valid());
    return frame_fail(FRAME_IMPOSSIBLE, "run_limit_in", run, valid, "%s", both);
}

/* Everything given: nothing to choose, all to check. */
static frame_status take_given(const frame_stairs_in *in, frame_stair *stair) {
    const int treads = frame_stair_treads(stair);
    if (in->run_in == FRAME_NOT_GIVEN) {
        frame_stair_set_tread(stair, in->tread_in);
        return FRAME_OK;
    }
    const double run = in->run_in - (stair->flights - 1) * stair->landing;
    if (treads == 0 || run <= 0)
        return frame_fail_number(FRAME_IMPOSSIBLE, "run_in", in->run_in,
                                 "more than the landings, for at least one tread");
    frame_stair_set_tread(stair, run / treads);
    return FRAME_OK;
}

/* A total run given, the risers not: the most of them whose treads are deep enough. */
static frame_status share_run(const frame_stairs_in *in, frame_stair *stair, int most, int fewest) {
    for (int risers = most; risers >= fewest; risers--) {
        frame_status status = frame_stair_deal(stair, risers);
        if (!status) status = take_given(in, stair);
        if (status) return status;
        if (stair->tread >= stair->limits.at[FRAME_STAIR_TREAD] - SLACK && run_fits(in, stair) && headroom_fits(stair))
            return FRAME_OK;
    }
    if (stair->tread >= stair->limits.at[FRAME_STAIR_TREAD] - SLACK) return refuse(in, stair, fewest);
    const told run = tell(in->run_in, FRAME_ROUND_NEAREST), tread = tell(stair->tread, FRAME_ROUND_DOWN);
    frame_stair_set_tread(stair, stair->limits.at[FRAME_STAIR_TREAD]);
    const told need = tell(frame_stair_run(stair), FRAME_ROUND_UP);
    return frame_fail(FRAME_IMPOSSIBLE, "run_in", run.text, need.text,
                      "run_in: %s leaves treads of only %s with %d risers, the fewest allowed; they need %s", run.text,
                      tread.text, stair->risers, need.text);
}

static frame_status search(const frame_stairs_in *in, frame_stair *stair, int most, int fewest) {
    for (int risers = most; risers >= fewest; risers--) {
        const frame_status status = frame_stair_deal(stair, risers);
        if (status) return status;
        if (pick_tread(in, stair)) return FRAME_OK;
    }
    return refuse(in, stair, fewest);
}

frame_status frame_stair_choose(const frame_stairs_in *in, frame_stair *stair, frame_working *w) {
    const int tread_given = in->tread_in != FRAME_NOT_GIVEN || in->run_in != FRAME_NOT_GIVEN;
    FRAME_GIVEN(w, rise, stair->rise, "in", "total rise between finished floors");
    FRAME_TABLE(w, r_max, stair->limits.at[FRAME_STAIR_RISER], "in", "highest riser",
                stair->limits.source[FRAME_STAIR_RISER]);
    FRAME_GIVEN(w, r_usual, in->usual_riser_in, "in", "usual riser");
    FRAME_STEP(w, n_min, fmax(ceil(rise / r_max - 1e-9), 1), "", "fewest risers", "arithmetic");
    FRAME_STEP(w, n_usual, fmax(round(rise / r_usual), n_min), "", "risers that come nearest to the usual one",
               "NAVEDTRA 14044 ch. 6: 7 in is usual");
    if (n_usual > FRAME_STAIR_FLIGHTS * FRAME_STAIR_FLIGHT_RISERS)
        return frame_fail_number(FRAME_TOO_LARGE, "usual_riser_in", in->usual_riser_in, "a riser with fewer steps");
    if (in->risers == FRAME_NOT_GIVEN_INT)
        return in->run_in != FRAME_NOT_GIVEN ? share_run(in, stair, (int)n_usual, (int)n_min)
                                             : search(in, stair, (int)n_usual, (int)n_min);
    if (!tread_given) return search(in, stair, in->risers, in->risers);
    const frame_status status = frame_stair_deal(stair, in->risers);
    return status ? status : take_given(in, stair);
}
