/* The common rafter by the handbook's right triangles. The same rafter as a stick of the geometry kernel is in
 * rafter_stick.c; a test holds the two together. */
#include <math.h>

#include "roof/rafter.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char trade[] = "common practice, conventions: rafter";

static frame_status take_depth(frame_rafter_in *in, frame_known *known) {
    if (in->size != FRAME_NOT_GIVEN_INT) {
        double thickness, depth;
        const frame_status status = frame_size_dressed(in->size, 0, &thickness, &depth);
        if (status) return status;
        if (in->depth_in != FRAME_NOT_GIVEN && fabs(in->depth_in - depth) > 1e-9)
            return frame_fail_number(FRAME_CONFLICT, "depth_in", in->depth_in,
                                     "the depth of the size, or size left out");
        in->depth_in = depth;
        if (in->thickness_in == FRAME_NOT_GIVEN) in->thickness_in = thickness;
        *known = FRAME_KNOWN_READ; /* PS 20 */
    } else if (in->depth_in == FRAME_NOT_GIVEN) {
        return frame_fail(FRAME_REQUIRED, "depth_in", "", "depth_in or size",
                          "depth_in: not given; depth_in or size is required");
    }
    if (in->thickness_in == FRAME_NOT_GIVEN) in->thickness_in = 1.5;
    return FRAME_OK;
}

static frame_status refuse_conflicts(const frame_rafter_in *in) {
    if (in->ridge_thickness_in > 0 && in->ledger_thickness_in > 0)
        return frame_fail_number(FRAME_CONFLICT, "ledger_thickness_in", in->ledger_thickness_in,
                                 "0 where there is a ridge: a rafter ends at a ridge or at a ledger");
    if (in->ridge_seat_in != FRAME_NOT_GIVEN && (in->ridge_thickness_in > 0 || in->ledger_thickness_in > 0))
        return frame_fail_number(
            FRAME_CONFLICT, "ridge_seat_in", in->ridge_seat_in,
            "left out where there is a ridge or a ledger: over a ridge beam rafters meet each other");
    if (in->seat_in != FRAME_NOT_GIVEN && in->height_above_plate_in != FRAME_NOT_GIVEN)
        return frame_fail_number(FRAME_CONFLICT, "height_above_plate_in", in->height_above_plate_in,
                                 "left out where seat_in is given: one follows from the other");
    if (in->tail == FRAME_RAFTER_TAIL_PLUMB_AND_LEVEL && in->fascia_depth_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "fascia_depth_in", "", ">0..24 in",
                          "fascia_depth_in: not given; a plumb and level tail needs the height of its plumb part");
    return FRAME_OK;
}

frame_status frame_rafter_resolve(frame_rafter_in *in, frame_rafter_shape *shape) {
    frame_status status = take_depth(in, &shape->known);
    if (!status) status = refuse_conflicts(in);
    if (status) return status;
    shape->deduction = in->ledger_thickness_in > 0 ? in->ledger_thickness_in : in->ridge_thickness_in / 2;
    if (shape->deduction >= in->run_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "run_in", in->run_in, "more than half the ridge, or the ledger");
    const double secant = sqrt(1 + in->slope * in->slope);
    shape->plumb_depth = in->depth_in * secant;
    if (in->height_above_plate_in != FRAME_NOT_GIVEN) {
        shape->height_above_plate = in->height_above_plate_in;
        shape->seat = (shape->plumb_depth - in->height_above_plate_in) / in->slope;
        if (shape->seat <= 0)
            return frame_fail_number(FRAME_IMPOSSIBLE, "height_above_plate_in", in->height_above_plate_in,
                                     "less than the rafter's plumb depth: there would be no seat");
    } else {
        shape->seat = in->seat_in == FRAME_NOT_GIVEN ? 3.5 : in->seat_in;
        shape->height_above_plate = shape->plumb_depth - shape->seat * in->slope;
        if (shape->height_above_plate <= 0)
            return frame_fail_number(FRAME_IMPOSSIBLE, "seat_in", shape->seat,
                                     "shorter: this birdsmouth would cut the rafter through");
    }
    if (shape->seat >= in->run_in - shape->deduction)
        return frame_fail_number(FRAME_IMPOSSIBLE, "seat_in", shape->seat, "shorter than the run to the plumb cut");
    if (in->ridge_seat_in != FRAME_NOT_GIVEN &&
        (shape->seat + in->ridge_seat_in >= in->run_in || in->ridge_seat_in * in->slope >= shape->plumb_depth))
        return frame_fail_number(FRAME_IMPOSSIBLE, "ridge_seat_in", in->ridge_seat_in,
                                 "shorter: this birdsmouth would cut the rafter through or reach the plate's");
    if (in->tail == FRAME_RAFTER_TAIL_PLUMB_AND_LEVEL && in->fascia_depth_in > shape->plumb_depth)
        return frame_fail_number(FRAME_IMPOSSIBLE, "fascia_depth_in", in->fascia_depth_in,
                                 "at most the rafter's plumb depth");
    return FRAME_OK;
}

/* How far the stock reaches below the top edge's tail point, along the slope. */
static double tail_reach(const frame_rafter_in *in) {
    if (in->tail == FRAME_RAFTER_TAIL_PLUMB) return in->depth_in * in->slope;
    if (in->tail == FRAME_RAFTER_TAIL_PLUMB_AND_LEVEL)
        return in->fascia_depth_in * in->slope / sqrt(1 + in->slope * in->slope);
    return 0;
}

static void note(const frame_rafter_in *in, frame_rafter_out *out) {
    out->cautions = FRAME_BIT(FRAME_RAFTER_CAUTION_BRACE) | FRAME_BIT(FRAME_RAFTER_CAUTION_TRY_ONE) |
                    FRAME_BIT(FRAME_RAFTER_CAUTION_MEASURE);
    const double deepest = in->ridge_seat_in == FRAME_NOT_GIVEN ? out->notch_depth_in
                                                                : fmax(out->notch_depth_in, out->ridge_notch_depth_in);
    if (deepest > out->notch_limit_in) out->cautions |= FRAME_BIT(FRAME_RAFTER_CAUTION_NOTCH);
    if (out->seat_in < 1.5) out->cautions |= FRAME_BIT(FRAME_RAFTER_CAUTION_BEARING);
    if (in->slope > 1.5) out->cautions |= FRAME_BIT(FRAME_RAFTER_CAUTION_SLOPE);
    if (in->slope < 0.25) out->cautions |= FRAME_BIT(FRAME_RAFTER_CAUTION_LOW);
    out->not_checked = FRAME_BIT(FRAME_RAFTER_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_RAFTER_UNCHECKED_THRUST);
    if (in->height_above_plate_in != FRAME_NOT_GIVEN) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_RAFTER_IN_SEAT_IN);
}

static void find_lengths(const frame_rafter_in *in, const frame_rafter_shape *shape, frame_rafter_out *out,
                         frame_working *w) {
    FRAME_HEADING(w, "Lengths");
    FRAME_GIVEN(w, run, in->run_in, "in", "run, level, building line to centre of ridge or face of wall");
    FRAME_GIVEN(w, slope, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, overhang, in->overhang_in, "in", "overhang, level");
    FRAME_GIVEN(w, deduction, shape->deduction, "in", "half the ridge or all of the ledger, level");
    FRAME_STEP(w, rise, run * slope, "in", "rise of the roof plane over the run", trade);
    FRAME_STEP(w, line_length, sqrt(pow(run, 2) + pow(rise, 2)), "in", "line length, unshortened", "right triangle");
    FRAME_STEP(w, theta, atan(slope) / FRAME_DEG, "deg", "angle of the roof: the plumb cut's mitre", "right triangle");
    FRAME_STEP(w, shortened_run, run - deduction, "in", "run to the plumb cut, level", trade);
    FRAME_STEP(w, deduction_along, deduction / cos(theta * FRAME_DEG), "in", "deduction along the slope", trade);
    FRAME_STEP(w, shortened, line_length - deduction_along, "in", "line length to the plumb cut", trade);
    FRAME_STEP(w, tail_length, overhang / cos(theta * FRAME_DEG), "in", "tail along the slope", "right triangle");
    FRAME_STEP(w, length, shortened + tail_length, "in", "along the top edge, tail to plumb cut", trade);
    FRAME_GIVEN(w, reach, tail_reach(in), "in",
                "what the tail's lower corner reaches beyond its upper one, along the slope");
    FRAME_STEP(w, stock_length, length + reach, "in", "length of stock, over all", "right triangle");
    out->rise_in = rise;
    out->line_length_in = line_length;
    out->deduction_in = deduction;
    out->shortened_run_in = shortened_run;
    out->deduction_along_in = deduction_along;
    out->shortened_length_in = shortened;
    out->tail_length_in = tail_length;
    out->length_in = length;
    out->stock_length_in = stock_length;
    out->plumb_cut_deg = theta;
    out->level_cut_deg = 90 - theta;
}

static void find_birdsmouth(const frame_rafter_in *in, const frame_rafter_shape *shape, frame_rafter_out *out,
                            frame_working *w) {
    FRAME_HEADING(w, "Birdsmouth");
    FRAME_GIVEN(w, slope, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, run, in->run_in, "in", "run");
    FRAME_GIVEN(w, d, in->depth_in, "in", "depth of the rafter");
    FRAME_STEP(w, plumb_depth, d * sqrt(1 + pow(slope, 2)), "in", "depth measured plumb", "right triangle");
    FRAME_GIVEN(w, seat, shape->seat, "in", "seat, level");
    FRAME_STEP(w, heel, seat * slope, "in", "heel cut, plumb", "right triangle");
    FRAME_STEP(w, h_plate, plumb_depth - heel, "in", "height above plate", trade);
    FRAME_STEP(w, notch_depth, seat * sin(atan(slope)), "in", "depth of the birdsmouth, square to the edge",
               "right triangle");
    FRAME_STEP(w, notch_limit, d / 4, "in", "depth allowed", "NDS 2018 4.4.3, IRC 2021 R802.7.1.1 (from memory)");
    if (notch_depth <= notch_limit)
        FRAME_CASE(w, "notch_depth <= notch_limit", "the birdsmouth is within its limit", "NDS 2018 4.4.3");
    else
        FRAME_CASE(w, "notch_depth > notch_limit", "the birdsmouth is too deep", "NDS 2018 4.4.3");
    FRAME_STEP(w, h_ridge, h_plate + run * slope, "in", "roof plane above the plate at the centre of the ridge", trade);
    out->depth_in = d;
    out->plumb_depth_in = plumb_depth;
    out->seat_in = seat;
    out->heel_in = heel;
    out->height_above_plate_in = h_plate;
    out->notch_depth_in = notch_depth;
    out->notch_limit_in = notch_limit;
    out->ridge_height_in = h_ridge;
}

/* Over a ridge beam: its seat ends at the lower corner of the plumb cut. */
static void find_ridge_seat(const frame_rafter_in *in, const frame_rafter_shape *shape, frame_rafter_out *out,
                            frame_working *w) {
    if (in->ridge_seat_in == FRAME_NOT_GIVEN) return;
    FRAME_HEADING(w, "Over the ridge beam");
    FRAME_GIVEN(w, slope, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, run, in->run_in, "in", "run");
    FRAME_GIVEN(w, seat_ridge, in->ridge_seat_in, "in", "seat on the ridge beam, level");
    FRAME_GIVEN(w, h_plate, shape->height_above_plate, "in", "height above plate");
    FRAME_GIVEN(w, plumb_depth, shape->plumb_depth, "in", "depth measured plumb");
    FRAME_STEP(w, beam_top, h_plate + run * slope - plumb_depth, "in", "the beam's top above the plate's", trade);
    FRAME_STEP(w, heel_ridge, seat_ridge * slope, "in", "heel cut at the beam, plumb", "right triangle");
    FRAME_STEP(w, notch_ridge, seat_ridge * sin(atan(slope)), "in", "depth of that birdsmouth", "right triangle");
    out->beam_top_in = beam_top;
    out->ridge_heel_in = heel_ridge;
    out->ridge_notch_depth_in = notch_ridge;
}

static void find_steps(const frame_rafter_in *in, const frame_rafter_shape *shape, frame_rafter_out *out,
                       frame_working *w) {
    FRAME_HEADING(w, "Stepping off with a square");
    FRAME_GIVEN(w, slope, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, run_short, in->run_in - shape->deduction, "in", "run to the plumb cut");
    FRAME_GIVEN(w, overhang, in->overhang_in, "in", "overhang");
    FRAME_TABLE(w, blade, 12, "in", "held on the blade, for the run", trade);
    FRAME_STEP(w, tongue, blade * slope, "in", "held on the tongue, for the rise", trade);
    FRAME_STEP(w, step, sqrt(pow(blade, 2) + pow(tongue, 2)), "in", "length of one step along the rafter",
               "right triangle");
    FRAME_STEP(w, full_steps, floor(run_short / blade + 1e-9), "", "whole steps to the plumb cut", trade);
    FRAME_STEP(w, odd_step, fmax(run_short - full_steps * blade, 0), "in", "odd step, on the blade", trade);
    FRAME_STEP(w, tail_steps, floor(overhang / blade + 1e-9), "", "whole steps of the tail", trade);
    FRAME_STEP(w, tail_odd, fmax(overhang - tail_steps * blade, 0), "in", "the tail's odd step", trade);
    out->square_blade_in = blade;
    out->square_tongue_in = tongue;
    out->step_length_in = step;
    out->full_steps = (int32_t)full_steps;
    out->odd_step_in = odd_step;
    out->tail_full_steps = (int32_t)tail_steps;
    out->tail_odd_step_in = tail_odd;
}

static frame_status compute(const frame_rafter_in *given, frame_rafter_out *out, frame_working *w) {
    frame_rafter_in in = *given;
    frame_rafter_shape shape = {.known = FRAME_KNOWN_USER};
    const frame_status status = frame_rafter_resolve(&in, &shape);
    if (status) return status;
    find_lengths(&in, &shape, out, w);
    find_birdsmouth(&in, &shape, out, w);
    find_ridge_seat(&in, &shape, out, w);
    find_steps(&in, &shape, out, w);
    out->known = shape.known;
    note(&in, out);
    return FRAME_OK;
}

FRAME_IMPLEMENT(rafter, compute);
