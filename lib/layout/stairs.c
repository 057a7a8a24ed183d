/* Stairs: risers and treads within the code's limits, the stringer laid out, and what the code says about the rest. */
#include <math.h>

#include "base/error.h"
#include "layout/stair.h"
#include "layout_facts.h"
#include "working/calculation.h"

enum { FLIGHTS, STEPS, PIECES, GANGS };

static const char trade[] = "common practice, stringer layout";
static const char triangle[] = "right triangle";

static void record_rise(const frame_stairs_in *in, frame_working *w) {
    FRAME_HEADING(w, "Risers and treads");
    FRAME_GIVEN(w, rise_measured, in->rise_in, "in", "rise as measured, floor to floor");
    FRAME_GIVEN(w, f_below, in->finish_below_in, "in", "floor still to be laid below");
    FRAME_GIVEN(w, f_above, in->finish_above_in, "in", "floor still to be laid above");
    FRAME_STEP(w, rise_finished, rise_measured - f_below + f_above, "in", "rise between the finished floors", trade);
    (void)rise_finished;
}

static void find_steps(const frame_stair *stair, frame_stairs_out *out, frame_working *w) {
    FRAME_GIVEN(w, rise, stair->rise, "in", "total rise between finished floors");
    FRAME_GIVEN(w, n, stair->risers, "", "risers taken");
    FRAME_STEP(w, r, rise / n, "in", "riser", trade);
    FRAME_GIVEN(w, t, stair->tread, "in", "tread taken");
    FRAME_GIVEN(w, flights, stair->flights, "", "flights");
    FRAME_GIVEN(w, flush, stair->top == FRAME_STAIR_TOP_TREAD, "", "last treads level with the floor above");
    FRAME_STEP(w, treads, n - flights + flush, "", "treads: one fewer than the risers of each flight, and those",
               "EN5156, stairs: treads one fewer than risers");
    FRAME_GIVEN(w, landing, stair->flights > 1 ? stair->landing : 0, "in", "length of a landing");
    FRAME_STEP(w, run, treads * t + (flights - 1) * landing, "in", "total run", trade);
    FRAME_STEP(w, rule, 2 * r + t, "in", "two risers and a tread; 24 in is the handbooks' rule",
               "Cyclopedia of Carpentry and Building, Laying Out Stairs");
    FRAME_STEP(w, theta, atan(r / t) / FRAME_DEG, "deg", "angle of the stair", triangle);
    FRAME_STEP(w, step, sqrt(pow(r, 2) + pow(t, 2)), "in", "from step mark to step mark", triangle);
    out->total_rise_in = rise;
    out->risers = stair->risers;
    out->riser_in = r;
    out->tread_in = t;
    out->treads = (int32_t)treads;
    out->flight_total = stair->flights;
    out->total_run_in = run;
    out->leg_run_in = frame_stair_leg(stair);
    out->two_risers_and_tread_in = rule;
    out->angle_deg = theta;
    out->step_length_in = step;
    out->nosing_in = stair->nosing;
    out->tread_board_in = stair->tread + stair->nosing;
    out->square_blade_in = t;
    out->square_tongue_in = r;
    if (stair->flights > 1) out->landing_length_in = stair->landing;
}

static int longest_flight(const frame_stair *stair) {
    int longest = 0;
    for (int i = 1; i < stair->flights; i++)
        if (frame_stair_treads_of(stair, i) > frame_stair_treads_of(stair, longest)) longest = i;
    return longest;
}

/* What nobody could climb is no stair, and has no stringers to lay out. */
static frame_status refuse_ladders(const frame_stair *stair) {
    if (stair->riser > 24)
        return frame_fail_number(FRAME_IMPOSSIBLE, "risers", stair->risers, "more: no step is higher than 24 in");
    if (frame_stair_treads(stair) == 0) return FRAME_OK;
    if (stair->tread < stair->riser / 4)
        return frame_fail_number(FRAME_IMPOSSIBLE, "tread_in", stair->tread, "at least a quarter of the riser");
    if (stair->tread > 60)
        return frame_fail_number(FRAME_IMPOSSIBLE, "run_in", stair->tread, "shorter: no tread is deeper than 60 in");
    if (stair->riser_thickness >= stair->tread)
        return frame_fail_number(FRAME_IMPOSSIBLE, "riser_thickness_in", stair->riser_thickness, "less than the tread");
    if (stair->tread_thickness >= stair->riser)
        return frame_fail_number(FRAME_IMPOSSIBLE, "tread_thickness_in", stair->tread_thickness, "less than the riser");
    return FRAME_OK;
}

static frame_status find_stringer(const frame_stair *stair, frame_stairs_out *out, frame_working *w) {
    const int longest = longest_flight(stair);
    FRAME_HEADING(w, "Stringer");
    FRAME_GIVEN(w, r, stair->riser, "in", "riser");
    FRAME_GIVEN(w, t, stair->tread, "in", "tread");
    FRAME_GIVEN(w, k, stair->risers_of[longest], "", "risers of the longest flight");
    FRAME_GIVEN(w, m, frame_stair_treads_of(stair, longest), "", "its treads");
    FRAME_STEP(w, L, sqrt(pow(k * r, 2) + pow(m * t, 2)), "in", "hypotenuse of its rise and run", triangle);
    FRAME_STEP(w, step, sqrt(pow(r, 2) + pow(t, 2)), "in", "from step mark to step mark", triangle);
    FRAME_STEP(w, L_steps, m * step, "in", "its steps along the slope", trade);
    FRAME_GIVEN(w, T, stair->tread_thickness, "in", "thickness of the treads");
    FRAME_GIVEN(w, f_below, stair->finish_below, "in", "floor still to be laid below");
    FRAME_STEP(w, drop, T - f_below, "in", "cut off the foot, so that the first riser equals the others",
               "H. Miller, The Carpenters' Guide: stairs");
    FRAME_STEP(w, r_first, r - drop, "in", "the stringer's first riser cut", trade);
    FRAME_GIVEN(w, f_above, stair->finish_above, "in", "floor still to be laid above");
    FRAME_GIVEN(w, down, stair->top == FRAME_STAIR_TOP_FLOOR, "", "risers from the last tread up to the floor above");
    FRAME_STEP(w, r_top, down * r + T - f_above, "in", "from the last tread cut up to the floor that is there", trade);
    FRAME_GIVEN(w, D, stair->stringer.depth, "in", "depth of the stringer");
    FRAME_STEP(w, notch, r * t / step, "in", "depth of the notches, square to the stringer", triangle);
    FRAME_STEP(w, throat, D - notch, "in", "throat left", trade);
    out->stringers = stair->stringers;
    out->stringer_length_in = L;
    out->stepped_length_in = L_steps;
    out->drop_in = drop;
    out->first_riser_cut_in = r_first;
    out->top_riser_in = r_top;
    out->notch_depth_in = notch;
    out->throat_in = throat;
    out->handrail_length_in = (k - 1) * step;
    if (m == 0) return FRAME_OK;
    if (throat <= 0 || r_first * cos(stair->angle) >= D)
        return frame_fail_number(FRAME_IMPOSSIBLE, "size", D, "a stringer deeper than its notches");
    for (int i = 0; i < stair->stringers; i++)
        if (frame_stair_first_cut(stair, 0, stair->floor_at[i]) <= 0)
            return frame_fail_number(FRAME_IMPOSSIBLE, "tread_thickness_in", T,
                                     "less than the riser and the floor: no first riser is left");
    return FRAME_OK;
}

static void find_headroom(const frame_stair *stair, frame_stairs_out *out, frame_working *w) {
    const double asked = stair->limits.at[FRAME_STAIR_HEADROOM];
    out->headroom_in = frame_stair_headroom(stair);
    out->well_needed_in = frame_stair_well_needed(stair);
    if (out->headroom_in == FRAME_NOT_GIVEN) {
        out->not_checked |= FRAME_BIT(FRAME_STAIRS_UNCHECKED_HEADROOM);
        return;
    }
    FRAME_HEADING(w, "Headroom");
    FRAME_GIVEN(w, C, stair->ceiling, "in", "height of the well's edge above the finished floor below");
    FRAME_GIVEN(w, z_line, frame_stair_line(stair, stair->well), "in", "height of the line of the nosings under it");
    FRAME_STEP(w, headroom, C - z_line, "in", "headroom", stair->limits.source[FRAME_STAIR_HEADROOM]);
    if (headroom < asked - 1e-9) out->cautions |= FRAME_BIT(FRAME_STAIRS_CAUTION_HEADROOM);
}

/* The first tread, from below, with more beside it than the drop that asks for a guard. */
static int32_t guard_from(const frame_stair *stair) {
    const double drop = stair->limits.at[FRAME_STAIR_GUARD_DROP];
    int32_t tread = 0, riser = 0;
    for (int f = 0; f < stair->flights; f++) {
        for (int i = 0; i < frame_stair_treads_of(stair, f); i++, tread++)
            if ((riser + i + 1) * stair->riser > drop + 1e-9) return tread + 1;
        riser += stair->risers_of[f];
    }
    return 0;
}

static void find_rails(const frame_stair *stair, frame_stairs_out *out) {
    const frame_stair_limits *limits = &stair->limits;
    out->handrail_low_in = limits->at[FRAME_STAIR_HANDRAIL_LOW];
    out->handrail_high_in = limits->at[FRAME_STAIR_HANDRAIL_HIGH];
    out->guard_stair_in = limits->at[FRAME_STAIR_GUARD_STAIR];
    out->guard_level_in = limits->at[FRAME_STAIR_GUARD_LEVEL];
    out->handrail_needed = stair->risers_of[0] >= limits->at[FRAME_STAIR_HANDRAIL_RISERS];
    out->guard_from_tread = guard_from(stair);
}

/* Defaults that were not called for. */
static void forget_unused(const frame_stairs_in *in, const frame_stair *stair, frame_stairs_out *out) {
    if (stair->flights == 1)
        out->assumed &=
            ~(FRAME_BIT(FRAME_ASSUMED_STAIRS_IN_LANDING_LENGTH_IN) | FRAME_BIT(FRAME_ASSUMED_STAIRS_IN_TURN));
    if (in->stringer_depth_in != FRAME_NOT_GIVEN) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_STAIRS_IN_SIZE);
    if (in->stringers != FRAME_NOT_GIVEN_INT) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_STAIRS_IN_STRINGER_SPACING_IN);
    if (in->risers != FRAME_NOT_GIVEN_INT) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_STAIRS_IN_USUAL_RISER_IN);
}

static void list_steps(const frame_stair *stair, frame_answer *answer, int flight, double foot) {
    const double before = frame_stair_first_cut(stair, flight, flight ? 0 : stair->floor_at[0]) * sin(stair->angle);
    for (int i = 0; i < frame_stair_treads_of(stair, flight); i++) {
        frame_stairs_step *step = frame_answer_add(answer, STEPS);
        if (!step) return;
        step->flight = flight + 1;
        step->number = i + 1;
        step->height_in = foot + (i + 1) * stair->riser;
        step->run_in = i * stair->tread;
        step->mark_in = i * stair->step;
        step->from_foot_in = before + i * stair->step;
    }
}

static void list_flights(const frame_stair *stair, frame_answer *answer, frame_stairs_out *out) {
    double foot = 0;
    out->stringer_stock_in = 0;
    for (int i = 0; i < stair->flights; i++) {
        frame_stairs_flight *flight = frame_answer_add(answer, FLIGHTS);
        if (!flight) {
            answer->failed = 1;
            return;
        }
        const int risers = stair->risers_of[i], treads = frame_stair_treads_of(stair, i);
        flight->risers = risers;
        flight->treads = treads;
        flight->rise_in = risers * stair->riser;
        flight->run_in = treads * stair->tread;
        flight->from_height_in = foot;
        flight->stringer_length_in = hypot(flight->rise_in, flight->run_in);
        flight->stepped_length_in = treads * stair->step;
        flight->stringer_stock_in = 0;
        for (int k = 0; treads && k < stair->stringers; k++)
            flight->stringer_stock_in =
                fmax(flight->stringer_stock_in, frame_stair_stock(stair, i, i ? 0 : stair->floor_at[k]));
        out->stringer_stock_in = fmax(out->stringer_stock_in, flight->stringer_stock_in);
        list_steps(stair, answer, i, foot);
        foot += flight->rise_in;
    }
}

static void list_pieces(const frame_layout_set *set, frame_answer *answer) {
    for (size_t i = 0; i < set->pieces.count; i++) {
        frame_stairs_piece *item = frame_answer_add(answer, PIECES);
        if (!item) {
            answer->failed = 1;
            return;
        }
        FRAME_LAYOUT_TELL(item, FRAME_LAYOUT_PIECE(set, i));
        item->start_deg = FRAME_LAYOUT_PIECE(set, i)->start_deg;
        item->end_deg = FRAME_LAYOUT_PIECE(set, i)->end_deg;
        item->gang = FRAME_LAYOUT_PIECE(set, i)->gang;
    }
}

static frame_status list_gangs(frame_layout_set *set, frame_answer *answer) {
    frame_array gangs = {0};
    const frame_status status = frame_layout_gather(set, &gangs);
    for (size_t i = 0; !status && i < gangs.count; i++) {
        const frame_layout_gang *gang = &FRAME_ITEM(frame_layout_gang, gangs, i);
        frame_stairs_gang *item = frame_answer_add(answer, GANGS);
        if (!item) {
            answer->failed = 1;
            break;
        }
        FRAME_LAYOUT_TELL_GANG(item, gang, FRAME_LAYOUT_PIECE(set, gang->first));
        item->name = frame_layout_kind_name(item->kind);
    }
    frame_array_give(&gangs);
    return status;
}

/* The set is the first thing the answer owns, the stair the second: the drawing finds them there. */
static frame_status keep(frame_stair **stair, frame_layout_set **set, frame_answer *answer) {
    *set = frame_layout_set_new(answer);
    if (!*set) return FRAME_NO_MEMORY;
    *stair = frame_take_zeroed(1, sizeof **stair);
    if (!*stair || !frame_answer_own(answer, *stair, frame_give)) return FRAME_NO_MEMORY;
    return FRAME_OK;
}

static frame_status solve(const frame_stairs_in *in, frame_answer *answer, frame_stairs_out *out, frame_working *w) {
    frame_layout_set *set = NULL;
    frame_stair *stair = NULL;
    frame_status status = keep(&stair, &set, answer);
    if (!status) status = frame_stair_take(in, stair, answer, out);
    if (status) return status;
    set->name = frame_answer_text(answer, in->name ? in->name : "stair");
    record_rise(in, w);
    status = frame_stair_choose(in, stair, w);
    if (!status) status = refuse_ladders(stair);
    if (status) return status;
    find_steps(stair, out, w);
    status = find_stringer(stair, out, w);
    if (status) return status;
    find_headroom(stair, out, w);
    find_rails(stair, out);
    list_flights(stair, answer, out);
    frame_stair_judge(in, stair, out);
    forget_unused(in, stair, out);
    frame_stair_add_pieces(stair, set);
    status = frame_layout_check(set, "rise_in");
    if (!status) status = list_gangs(set, answer);
    list_pieces(set, answer);
    return status;
}

FRAME_IMPLEMENT_ANSWER(stairs, solve);
