/* A dormer. The front wall's outside is x = 0, the roof it stands on rises with x; heights are counted from the plates'
 * top, the main roof plane is z = -wall height + main slope x. A shed's rafters run along x; a gable's across. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

enum { LIST_PIECES };

static const char triangle[] = "right triangle";

/* What the sticks are made of, kept with the answer. */
typedef struct dormer_facts {
    frame_dormer_in in;
    double height_above_plate, reach;
} dormer_facts;

/* -- the rafter -- */

/* The dormer's rafter as a common rafter; a shed's runs on to well past the main roof, which cuts it off. */
static frame_rafter_in rafter_of(const frame_dormer_in *in, double run) {
    frame_rafter_in rafter;
    frame_rafter_in_init(&rafter);
    rafter.run_in = run;
    rafter.slope = in->slope;
    rafter.overhang_in = in->overhang_in;
    rafter.depth_in = in->rafter_depth_in;
    rafter.thickness_in = in->thickness_in;
    rafter.seat_in = in->rafter_seat_in;
    if (in->kind == FRAME_DORMER_GABLE) rafter.ridge_thickness_in = in->ridge_thickness_in;
    rafter.name = "dormer rafter";
    return rafter;
}

static double run_of(const frame_dormer_in *in, double reach) {
    return in->kind == FRAME_DORMER_GABLE ? in->width_in / 2 : reach + in->rafter_depth_in * (1 + in->slope_main) + 12;
}

static frame_status make_rafter(const dormer_facts *f, frame_stick **stick) {
    const frame_rafter_in rafter = rafter_of(&f->in, run_of(&f->in, f->reach));
    frame_status status = frame_rafter_stick(&rafter, stick);
    if (status || f->in.kind == FRAME_DORMER_GABLE) return status;
    const double on[3] = {0, 0, -f->in.wall_height_in}, under[3] = {f->in.slope_main, 0, -1};
    frame_cut_list cuts = {.count = 0};
    status = frame_stick_cut(*stick,
                             frame_cut_list_add(&cuts, FRAME_STICK_MITRE_CUT, on, under, "head, along the main roof"));
    if (status) {
        frame_stick_free(*stick);
        *stick = NULL;
    }
    return status;
}

static frame_status give_rafter(const dormer_facts *f, frame_answer *answer) {
    frame_stick *stick;
    frame_stick_lengths_out lengths;
    frame_status status = make_rafter(f, &stick);
    if (status) return status;
    status = frame_stick_lengths(stick, &lengths);
    frame_stick_free(stick);
    frame_dormer_piece *piece = status ? NULL : frame_answer_add(answer, LIST_PIECES);
    if (!piece) return status ? status : FRAME_NO_MEMORY;
    piece->name = "dormer rafter";
    piece->long_point_in = lengths.long_point_in;
    piece->short_point_in = lengths.bottom_edge_in;
    return FRAME_OK;
}

/* -- the cheeks' studs -- */

/* The middle of a stud's foot, below the plates' top. */
static double foot_at(const frame_dormer_in *in, double x) {
    return -in->wall_height_in + in->slope_main * x + in->sole_thickness_in * sqrt(1 + in->slope_main * in->slope_main);
}

static frame_status give_studs(const frame_dormer_in *in, frame_answer *answer) {
    const double half = in->thickness_in / 2;
    for (int i = 1;; i++) {
        const double x = i * in->spacing_in, middle = -in->plates_in - foot_at(in, x);
        if (middle - half * in->slope_main <= 0) return FRAME_OK;
        if (i > 1000)
            return frame_fail_number(FRAME_TOO_LARGE, "spacing_in", in->spacing_in,
                                     "such that there are at most 1000 studs");
        frame_dormer_piece *piece = frame_answer_add(answer, LIST_PIECES);
        if (!piece) return FRAME_NO_MEMORY;
        piece->name = "cheek stud";
        piece->distance_in = x;
        piece->long_point_in = middle + half * in->slope_main;
        piece->short_point_in = middle - half * in->slope_main;
    }
}

static frame_status make_stud(const dormer_facts *f, double x, frame_stick **stick) {
    const double foot[3] = {x, 0, foot_at(&f->in, x)}, under[3] = {f->in.slope_main, 0, -1};
    frame_cut_list cuts = {.count = 0};
    frame_cut_list_add(&cuts, FRAME_STICK_MITRE_CUT, foot, under, "foot, along the main roof");
    const frame_cut_list_body body = {.name = "cheek stud",
                                      .thickness = f->in.thickness_in,
                                      .depth = f->in.depth_in,
                                      .from = {x, 0, foot[2] - f->in.thickness_in * f->in.slope_main - 1},
                                      .to = {x, 0, -f->in.plates_in},
                                      .crown = {0, 1, 0}};
    return frame_cut_list_stick(&cuts, &body, stick);
}

/* -- the figures -- */

static void find_roof(const frame_dormer_in *in, const frame_rafter_out *rafter, frame_dormer_out *out,
                      frame_working *w) {
    const int gable = in->kind == FRAME_DORMER_GABLE;
    FRAME_HEADING(w, "Roof");
    FRAME_GIVEN(w, M, in->slope_main, "", "slope of the main roof");
    FRAME_GIVEN(w, m, in->slope, "", "slope of the dormer's roof");
    FRAME_GIVEN(w, wall, in->wall_height_in, "in", "plates above the main roof plane at the front");
    FRAME_GIVEN(w, h, rafter->height_above_plate_in, "in", "height above plate of its rafters");
    FRAME_GIVEN(w, half, gable ? in->width_in / 2 : 0, "in", "half the width of a gable, 0 for a shed");
    FRAME_GIVEN(w, along, gable ? 0 : m, "", "what its roof rises along the reach: the slope of a shed, 0 for a gable");
    FRAME_STEP(w, reach, (wall + h + half * m) / (M - along), "in", "how far its roof reaches over the main one",
               triangle);
    FRAME_STEP(w, rise, half * m + reach * along, "in", "rise of its roof plane", triangle);
    out->reach_in = reach;
    out->rise_in = rise;
    out->height_above_plate_in = h;
    out->rafter_plumb_cut_deg = rafter->plumb_cut_deg;
    if (gable) {
        FRAME_STEP(w, valley_up, half * m / M * sqrt(1 + pow(M, 2)), "in", "the valley up the main roof", triangle);
        FRAME_STEP(w, valley, sqrt(pow(half, 2) + pow(valley_up, 2)), "in", "length of the valley", triangle);
        FRAME_STEP(w, phi, atan(valley_up / half) / FRAME_DEG, "deg", "its angle to the main eave", triangle);
        FRAME_GIVEN(w, s, in->spacing_in, "in", "spacing");
        FRAME_STEP(w, jack, s * M / m * sqrt(1 + pow(m, 2)), "in", "difference of its valley jacks", triangle);
        out->valley_length_in = valley, out->valley_deg = phi, out->jack_difference_in = jack;
        out->rafter_length_in = rafter->length_in;
    } else {
        FRAME_STEP(w, secant, sqrt(1 + pow(m, 2)), "", "length along its slope for each inch of run", triangle);
        FRAME_STEP(w, length, (reach + in->overhang_in) * secant, "in", "its rafter along the top edge", triangle);
        FRAME_STEP(w, head, 90 - (atan(M) - atan(m)) / FRAME_DEG, "deg", "the head's cut, from square", triangle);
        out->rafter_length_in = length, out->head_cut_deg = head;
    }
}

static void find_cheeks(const frame_dormer_in *in, frame_dormer_out *out, frame_working *w) {
    FRAME_HEADING(w, "Cheeks");
    FRAME_GIVEN(w, M, in->slope_main, "", "slope of the main roof");
    FRAME_GIVEN(w, wall, in->wall_height_in, "in", "plates above the main roof plane at the front");
    FRAME_GIVEN(w, s, in->spacing_in, "in", "spacing of the studs");
    FRAME_STEP(w, plate, wall / M, "in", "a cheek's top plate, level", triangle);
    FRAME_STEP(w, sole, plate * sqrt(1 + pow(M, 2)), "in", "a cheek's foot along the main roof", triangle);
    FRAME_STEP(w, difference, s * M, "in", "common difference of the studs", triangle);
    FRAME_STEP(w, bevel, atan(M) / FRAME_DEG, "deg", "bevel of their feet", triangle);
    out->cheek_plate_in = plate, out->cheek_sole_in = sole;
    out->stud_difference_in = difference, out->stud_bevel_deg = bevel;
}

static void note(const frame_dormer_in *in, frame_answer *answer, frame_dormer_out *out) {
    out->studs = (int32_t)frame_answer_count(answer, LIST_PIECES) - 1;
    out->cautions = FRAME_BIT(FRAME_DORMER_CAUTION_OPENING) | FRAME_BIT(FRAME_DORMER_CAUTION_FLASHING);
    if (in->kind == FRAME_DORMER_SHED && out->head_cut_deg > 60)
        out->cautions |= FRAME_BIT(FRAME_DORMER_CAUTION_FLAT_CUT);
    if (in->slope_main > 1.5 || in->slope > 1.5) out->cautions |= FRAME_BIT(FRAME_DORMER_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_DORMER_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_DORMER_UNCHECKED_SNOW);
    out->known = FRAME_KNOWN_USER;
}

static frame_status refuse(const frame_dormer_in *in) {
    if (in->kind == FRAME_DORMER_SHED && in->slope_main - in->slope < 0.02)
        return frame_fail_number(FRAME_IMPOSSIBLE, "slope", in->slope,
                                 "flatter than the main roof, by 1/4 in 12 at least: its rafters never reach it");
    if (-in->plates_in - foot_at(in, 0) > 0) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "wall_height_in", in->wall_height_in,
                             "more than plates and sole: there is no wall between them");
}

static void release(void *object) {
    frame_give(object);
}

static frame_status solve(const frame_dormer_in *in, frame_answer *answer, frame_dormer_out *out, frame_working *w) {
    frame_rafter_out rafter;
    frame_status status = refuse(in);
    if (status) return status;
    dormer_facts *f = frame_take_zeroed(1, sizeof *f);
    if (!f || !frame_answer_own(answer, f, release)) return FRAME_NO_MEMORY;
    f->in = *in;
    const frame_rafter_in given = rafter_of(in, run_of(in, in->wall_height_in));
    status = frame_rafter(&given, &rafter, NULL);
    if (status) return frame_fail_within("rafter ");
    find_roof(in, &rafter, out, w);
    find_cheeks(in, out, w);
    if (!(out->reach_in <= 1100))
        return frame_fail_number(FRAME_IMPOSSIBLE, "slope", in->slope, "such that its roof reaches 90 ft at most");
    f->reach = out->reach_in;
    status = give_rafter(f, answer);
    if (!status) status = give_studs(in, answer);
    note(in, answer, out);
    return status;
}

FRAME_IMPLEMENT_ANSWER(dormer, solve);

frame_status frame_dormer_stick(const frame_dormer *dormer, size_t index, frame_stick **stick) {
    const frame_answer *answer = (const frame_answer *)dormer;
    frame_dormer_piece piece;
    if (!dormer || !stick)
        return frame_fail(FRAME_REQUIRED, "dormer", "NULL", "an answer, and where to put the stick",
                          "dormer: NULL is not an answer, or there is nowhere to put the stick");
    const frame_status status = frame_dormer_piece_at(dormer, index, &piece);
    if (status) return status;
    const dormer_facts *f = FRAME_ITEM(frame_owned, answer->owned, 0).object;
    return index ? make_stud(f, piece.distance_in, stick) : make_rafter(f, stick);
}
