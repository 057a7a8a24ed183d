/* A roof over the corners and plates as found beside the planned one. Both are framed whole; pieces of one kind over
 * one edge that start nearest to each other are the same piece. A second reading of the plates is a third roof: of each
 * piece the longer is cut. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "roof_facts.h"
#include "working/calculation.h"

enum { LIST_PIECES };

static const double same_in = 1.0 / 64; /* the finest mark of a framer's tape is twice that */

enum { PLANNED, FOUND, SECOND, ROOFS };

typedef struct roofs {
    frame_roof_members *of[ROOFS];
    int32_t *taken[ROOFS]; /* of each piece of the planned and the second roof the found one; -1 */
    double reach;          /* how far a piece may have moved and still be the same */
} roofs;

static void give_roofs(roofs *r) {
    for (int i = 0; i < ROOFS; i++) {
        frame_roof_members_free(r->of[i]);
        frame_give(r->taken[i]);
    }
}

/* -- the plates -- */

typedef struct heights {
    const double *in;
    size_t count;
} heights;

static heights heights_of(const frame_roof_as_found_in *in, int which) {
    const heights planned = {in->plates_in, in->plate_count}, found = {in->found_plates_in, in->found_plate_count};
    if (which == SECOND) return (heights){in->second_plates_in, in->second_plate_count};
    return which == FOUND && found.count ? found : planned;
}

static double height_at(heights of, size_t edge) {
    return of.count == 0 ? 0 : of.in[of.count == 1 ? 0 : edge];
}

static double most_apart(const frame_roof_as_found_in *in, heights a, heights b) {
    double most = 0;
    for (size_t i = 0; i < in->corner_count; i++) most = fmax(most, fabs(height_at(a, i) - height_at(b, i)));
    return most;
}

static frame_status check_counts(const frame_roof_as_found_in *in) {
    static const char *const fields[ROOFS] = {"plates_in", "found_plates_in", "second_plates_in"};
    for (int i = 0; i < ROOFS; i++) {
        const size_t count = i == FOUND ? in->found_plate_count : heights_of(in, i).count;
        if (count > 1 && count != in->corner_count)
            return frame_fail_number(FRAME_CONFLICT, fields[i], (double)count, "one height, or one for each edge");
    }
    return FRAME_OK;
}

/* A piece too short cannot be mended: readings that disagree by much are no ground to cut on. */
static frame_status check_readings(const frame_roof_as_found_in *in) {
    char field[40];
    const heights found = heights_of(in, FOUND), second = heights_of(in, SECOND);
    for (size_t i = 0; second.count && i < in->corner_count; i++) {
        if (fabs(height_at(found, i) - height_at(second, i)) <= in->refuse_over_in + 1e-9) continue;
        snprintf(field, sizeof field, "second_plates_in[%zu]", second.count == 1 ? 0 : i);
        return frame_fail_number(FRAME_REFUSED, field, height_at(second, i),
                                 "nearer to the first reading: measure again; a piece too short cannot be mended");
    }
    return FRAME_OK;
}

static frame_status frame_one(const frame_roof_as_found_in *in, int which, frame_roof_members **members) {
    const heights plates = heights_of(in, which);
    const int found = which != PLANNED;
    frame_roof_members_in framed;
    frame_roof_members_in_init(&framed);
    framed.corners = found ? in->found : in->corners;
    framed.corner_count = found ? in->found_count : in->corner_count;
    framed.slopes = in->slopes, framed.slope_count = in->slope_count;
    framed.kinds = in->kinds, framed.kind_count = in->kind_count;
    framed.plates_in = plates.in, framed.plate_count = plates.count, framed.half_hip_in = in->half_hip_in;
    framed.rafter_size = in->rafter_size;
    framed.spacing_in = in->spacing_in, framed.overhang_in = in->overhang_in, framed.seat_in = in->seat_in;
    framed.prove = which == FOUND;
    return frame_roof_members_solve(&framed, members, NULL);
}

/* -- pieces -- */

static double start_apart(const frame_roof_members_piece *a, const frame_roof_members_piece *b) {
    return hypot(hypot(a->start_x_in - b->start_x_in, a->start_y_in - b->start_y_in), a->start_z_in - b->start_z_in);
}

/* The piece of another roof that a found one stands for; -1 for none. */
static int32_t piece_for(const roofs *r, int which, const frame_roof_members_piece *found) {
    double nearest = r->reach;
    int32_t best = -1;
    for (size_t i = 0; i < frame_roof_members_piece_count(r->of[which]); i++) {
        frame_roof_members_piece other;
        if (r->taken[which][i] >= 0 || frame_roof_members_piece_at(r->of[which], i, &other)) continue;
        if (other.kind != found->kind || other.rises_from != found->rises_from || other.edge != found->edge) continue;
        const double apart = start_apart(&other, found);
        if (apart < nearest) nearest = apart, best = (int32_t)i;
    }
    return best;
}

static double length_of(const frame_roof_members *of, int32_t piece) {
    frame_roof_members_piece at;
    return piece < 0 || frame_roof_members_piece_at(of, (size_t)piece, &at) ? FRAME_NOT_GIVEN : at.length_in;
}

static frame_status give_found(roofs *r, size_t index, frame_answer *answer, frame_roof_as_found_out *out) {
    frame_roof_members_piece found;
    frame_roof_members_piece_at(r->of[FOUND], index, &found);
    const int32_t of = piece_for(r, PLANNED, &found), again = r->of[SECOND] ? piece_for(r, SECOND, &found) : -1;
    frame_roof_as_found_piece *piece = frame_answer_add(answer, LIST_PIECES);
    if (!piece) return FRAME_NO_MEMORY;
    piece->kind = found.kind;
    piece->planned = of, piece->found = (int32_t)index;
    piece->found_length_in = piece->cut_length_in = found.length_in;
    piece->name = frame_answer_text(answer, found.name);
    piece->became = FRAME_AS_FOUND_NEW;
    if (again >= 0) {
        r->taken[SECOND][again] = (int32_t)index;
        piece->second_length_in = length_of(r->of[SECOND], again);
        piece->cut_length_in = fmax(found.length_in, piece->second_length_in);
    }
    if (of < 0) {
        out->added++;
        return FRAME_OK;
    }
    r->taken[PLANNED][of] = (int32_t)index;
    piece->planned_length_in = length_of(r->of[PLANNED], of);
    piece->difference_in = piece->cut_length_in - piece->planned_length_in;
    return FRAME_OK;
}

/* Lengths may agree where the cuts do not: the kernel compares the sticks. */
static frame_status judge(const roofs *r, frame_roof_as_found_piece *piece, frame_roof_as_found_out *out) {
    frame_stick *planned = NULL, *found = NULL;
    frame_stick_likeness likeness = FRAME_STICK_DIFFERENT;
    frame_status status = frame_roof_members_stick(r->of[PLANNED], (size_t)piece->planned, &planned);
    if (!status) status = frame_roof_members_stick(r->of[FOUND], (size_t)piece->found, &found);
    if (!status) status = frame_stick_compare(planned, found, &likeness);
    frame_stick_free(planned);
    frame_stick_free(found);
    const int same = fabs(piece->difference_in) < same_in && likeness == FRAME_STICK_ALIKE;
    piece->became = same ? FRAME_AS_FOUND_SAME : FRAME_AS_FOUND_CHANGED;
    out->changed += !same;
    out->largest_in = fmax(out->largest_in, fabs(piece->difference_in));
    return status;
}

static frame_status give_gone(const roofs *r, frame_answer *answer, frame_roof_as_found_out *out) {
    for (size_t i = 0; i < frame_roof_members_piece_count(r->of[PLANNED]); i++) {
        frame_roof_members_piece planned;
        if (r->taken[PLANNED][i] >= 0 || frame_roof_members_piece_at(r->of[PLANNED], i, &planned)) continue;
        frame_roof_as_found_piece *piece = frame_answer_add(answer, LIST_PIECES);
        if (!piece) return FRAME_NO_MEMORY;
        piece->kind = planned.kind;
        piece->became = FRAME_AS_FOUND_GONE;
        piece->planned = (int32_t)i, piece->found = -1;
        piece->planned_length_in = planned.length_in;
        piece->name = frame_answer_text(answer, planned.name);
        out->gone++;
    }
    return FRAME_OK;
}

static frame_status take_none(roofs *r, int which) {
    const size_t count = frame_roof_members_piece_count(r->of[which]);
    r->taken[which] = frame_take((count + 1) * sizeof *r->taken[which]);
    for (size_t i = 0; r->taken[which] && i < count; i++) r->taken[which][i] = -1;
    return r->taken[which] ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status compare(roofs *r, frame_answer *answer, frame_roof_as_found_out *out) {
    frame_status status = take_none(r, PLANNED);
    if (!status) status = take_none(r, SECOND);
    for (size_t i = 0; i < frame_roof_members_piece_count(r->of[FOUND]) && !status; i++) {
        status = give_found(r, i, answer, out);
        frame_roof_as_found_piece *piece = &FRAME_ANSWER_ITEM(frame_roof_as_found_piece, answer, LIST_PIECES, i);
        if (!status && piece->planned >= 0) status = judge(r, piece, out);
    }
    return status ? status : give_gone(r, answer, out);
}

static double farthest_moved(const frame_roof_as_found_in *in) {
    double farthest = 0;
    for (size_t i = 0; i < in->corner_count; i++) {
        frame_roof_corner planned, found;
        frame_roof_corner_item(in->corners, i, &planned);
        frame_roof_corner_item(in->found, i, &found);
        farthest = fmax(farthest, hypot(found.x_in - planned.x_in, found.y_in - planned.y_in));
    }
    return farthest;
}

static void note(const roofs *r, frame_roof_as_found_out *out) {
    frame_roof_members_out planned, found;
    frame_roof_members_result(r->of[PLANNED], &planned);
    frame_roof_members_result(r->of[FOUND], &found);
    out->ridge_change_in = found.ridge_height_in - planned.ridge_height_in;
    out->known = found.known;
    out->cautions = FRAME_BIT(FRAME_ROOF_AS_FOUND_CAUTION_MEASURE);
    if (out->changed) out->cautions |= FRAME_BIT(FRAME_ROOF_AS_FOUND_CAUTION_CHANGED);
    if (out->added || out->gone) out->cautions |= FRAME_BIT(FRAME_ROOF_AS_FOUND_CAUTION_NUMBER);
    if (!found.fits) out->cautions |= FRAME_BIT(FRAME_ROOF_AS_FOUND_CAUTION_FAULTS);
    if (out->readings_in > same_in) out->cautions |= FRAME_BIT(FRAME_ROOF_AS_FOUND_CAUTION_READINGS);
    out->not_checked = FRAME_BIT(FRAME_ROOF_AS_FOUND_UNCHECKED_LEVEL);
}

static void record(const frame_roof_as_found_out *out, frame_working *w) {
    if (!w) return;
    FRAME_HEADING(w, "As found beside the plan");
    FRAME_TABLE(w, moved, out->moved_in, "in", "the farthest that a corner was found from its place", "distances");
    FRAME_TABLE(w, raised, out->plate_moved_in, "in",
                "the most that a plate was found above or below its planned height", "differences");
    if (out->readings_in > same_in)
        FRAME_CASE(w, "two readings of a plate disagree", "of each piece the longer",
                   "common practice: a piece too short cannot be mended");
    FRAME_TABLE(w, largest, out->largest_in, "in", "the largest difference of length", "both roofs framed");
    FRAME_TABLE(w, changed, out->changed, "", "pieces cut otherwise", "counted");
}

/* What a found plate takes of the roof is told by its own name. */
static frame_status name_plates(frame_status status, int which) {
    char field[64], value[40];
    if (!status || which == PLANNED || strncmp(frame_error_field(), "plates_in", 9) != 0) return status;
    snprintf(field, sizeof field, "%s_%s", which == FOUND ? "found" : "second", frame_error_field());
    snprintf(value, sizeof value, "%s", frame_error_value());
    return frame_fail(status, field, value, "more, or more overhang",
                      "%s: %s in: the roof would stop short of this wall at the fascia's height; give more overhang",
                      field, value);
}

static double flattest(const frame_roof_as_found_in *in) {
    double least = HUGE_VAL;
    for (size_t i = 0; i < in->slope_count; i++)
        if (in->slopes[i] > 0) least = fmin(least, in->slopes[i]);
    return least;
}

static frame_status frame_three(const frame_roof_as_found_in *in, roofs *r) {
    frame_status status = FRAME_OK;
    for (int i = 0; i < ROOFS && !status; i++)
        if (i != SECOND || in->second_plate_count) status = name_plates(frame_one(in, i, &r->of[i]), i);
    return status;
}

static frame_status solve(const frame_roof_as_found_in *in, frame_answer *answer, frame_roof_as_found_out *out,
                          frame_working *w) {
    roofs r = {.reach = 0};
    if (in->found_count != in->corner_count)
        return frame_fail_number(FRAME_CONFLICT, "found", (double)in->found_count, "as many corners as planned");
    frame_status status = check_counts(in);
    if (!status) status = check_readings(in);
    if (status) return status;
    out->changed = out->added = out->gone = 0;
    out->largest_in = 0;
    out->moved_in = farthest_moved(in);
    out->plate_moved_in = most_apart(in, heights_of(in, PLANNED), heights_of(in, FOUND));
    out->readings_in = in->second_plate_count ? most_apart(in, heights_of(in, FOUND), heights_of(in, SECOND)) : 0;
    /* A plate raised moves its tails out to the same fascia. */
    r.reach = in->spacing_in / 2 + out->moved_in + (out->plate_moved_in + out->readings_in) * (1 + 1 / flattest(in));
    status = frame_three(in, &r);
    if (!status) status = compare(&r, answer, out);
    if (!status) note(&r, out);
    if (!status) record(out, w);
    give_roofs(&r);
    return status;
}

FRAME_IMPLEMENT_ANSWER(roof_as_found, solve);
