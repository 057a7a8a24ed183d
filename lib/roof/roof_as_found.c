/* A roof over the corners as found beside the planned one. Both are framed whole; pieces of one kind on one face or
 * edge that start nearest to each other are the same piece. */
#include <math.h>

#include "base/error.h"
#include "roof_facts.h"
#include "working/calculation.h"

enum { LIST_PIECES };

static const double same_in = 1.0 / 64; /* the finest mark of a framer's tape is twice that */

typedef struct both {
    frame_roof_members *planned, *found;
    int32_t *taken; /* of each planned piece the found one; -1 */
    double reach;   /* how far a piece may have moved and still be the same */
} both;

static void give_both(both *b) {
    frame_roof_members_free(b->planned);
    frame_roof_members_free(b->found);
    frame_give(b->taken);
}

static frame_status frame_one(const frame_roof_as_found_in *in, int found, frame_roof_members **members) {
    frame_roof_members_in framed;
    frame_roof_members_in_init(&framed);
    framed.corners = found ? in->found : in->corners;
    framed.corner_count = found ? in->found_count : in->corner_count;
    framed.slopes = in->slopes, framed.slope_count = in->slope_count;
    framed.kinds = in->kinds, framed.kind_count = in->kind_count;
    framed.rafter_size = in->rafter_size;
    framed.spacing_in = in->spacing_in, framed.overhang_in = in->overhang_in, framed.seat_in = in->seat_in;
    framed.prove = found;
    return frame_roof_members_solve(&framed, members, NULL);
}

static double start_apart(const frame_roof_members_piece *a, const frame_roof_members_piece *b) {
    return hypot(hypot(a->start_x_in - b->start_x_in, a->start_y_in - b->start_y_in), a->start_z_in - b->start_z_in);
}

/* The planned piece that a found one stands for; -1 for none. */
static int32_t planned_for(const both *b, const frame_roof_members_piece *found) {
    double nearest = b->reach;
    int32_t best = -1;
    for (size_t i = 0; i < frame_roof_members_piece_count(b->planned); i++) {
        frame_roof_members_piece planned;
        if (b->taken[i] >= 0 || frame_roof_members_piece_at(b->planned, i, &planned)) continue;
        if (planned.kind != found->kind || planned.face != found->face || planned.edge != found->edge) continue;
        const double apart = start_apart(&planned, found);
        if (apart < nearest) nearest = apart, best = (int32_t)i;
    }
    return best;
}

static frame_status give_found(both *b, size_t index, frame_answer *answer, frame_roof_as_found_out *out) {
    frame_roof_members_piece found, planned;
    frame_roof_members_piece_at(b->found, index, &found);
    const int32_t of = planned_for(b, &found);
    frame_roof_as_found_piece *piece = frame_answer_add(answer, LIST_PIECES);
    if (!piece) return FRAME_NO_MEMORY;
    piece->kind = found.kind;
    piece->planned = of, piece->found = (int32_t)index;
    piece->found_length_in = found.length_in;
    piece->name = frame_answer_text(answer, found.name);
    piece->became = FRAME_AS_FOUND_NEW;
    if (of < 0) {
        out->added++;
        return FRAME_OK;
    }
    b->taken[of] = (int32_t)index;
    frame_roof_members_piece_at(b->planned, (size_t)of, &planned);
    piece->planned_length_in = planned.length_in;
    piece->difference_in = found.length_in - planned.length_in;
    return FRAME_OK;
}

/* Lengths may agree where the cuts do not: the kernel compares the sticks. */
static frame_status judge(const both *b, frame_roof_as_found_piece *piece, frame_roof_as_found_out *out) {
    frame_stick *planned = NULL, *found = NULL;
    frame_stick_likeness likeness = FRAME_STICK_DIFFERENT;
    frame_status status = frame_roof_members_stick(b->planned, (size_t)piece->planned, &planned);
    if (!status) status = frame_roof_members_stick(b->found, (size_t)piece->found, &found);
    if (!status) status = frame_stick_compare(planned, found, &likeness);
    frame_stick_free(planned);
    frame_stick_free(found);
    const int same = fabs(piece->difference_in) < same_in && likeness == FRAME_STICK_ALIKE;
    piece->became = same ? FRAME_AS_FOUND_SAME : FRAME_AS_FOUND_CHANGED;
    out->changed += !same;
    out->largest_in = fmax(out->largest_in, fabs(piece->difference_in));
    return status;
}

static frame_status give_gone(const both *b, frame_answer *answer, frame_roof_as_found_out *out) {
    for (size_t i = 0; i < frame_roof_members_piece_count(b->planned); i++) {
        frame_roof_members_piece planned;
        if (b->taken[i] >= 0 || frame_roof_members_piece_at(b->planned, i, &planned)) continue;
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

static frame_status compare(both *b, frame_answer *answer, frame_roof_as_found_out *out) {
    const size_t planned = frame_roof_members_piece_count(b->planned);
    frame_status status = FRAME_OK;
    b->taken = frame_take((planned + 1) * sizeof *b->taken);
    if (!b->taken) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < planned; i++) b->taken[i] = -1;
    for (size_t i = 0; i < frame_roof_members_piece_count(b->found) && !status; i++) {
        status = give_found(b, i, answer, out);
        frame_roof_as_found_piece *piece = &FRAME_ANSWER_ITEM(frame_roof_as_found_piece, answer, LIST_PIECES, i);
        if (!status && piece->planned >= 0) status = judge(b, piece, out);
    }
    return status ? status : give_gone(b, answer, out);
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

static void note(const both *b, frame_roof_as_found_out *out) {
    frame_roof_members_out planned, found;
    frame_roof_members_result(b->planned, &planned);
    frame_roof_members_result(b->found, &found);
    out->ridge_change_in = found.ridge_height_in - planned.ridge_height_in;
    out->known = found.known;
    out->cautions = FRAME_BIT(FRAME_ROOF_AS_FOUND_CAUTION_MEASURE);
    if (out->changed) out->cautions |= FRAME_BIT(FRAME_ROOF_AS_FOUND_CAUTION_CHANGED);
    if (out->added || out->gone) out->cautions |= FRAME_BIT(FRAME_ROOF_AS_FOUND_CAUTION_NUMBER);
    if (!found.fits) out->cautions |= FRAME_BIT(FRAME_ROOF_AS_FOUND_CAUTION_FAULTS);
    out->not_checked = FRAME_BIT(FRAME_ROOF_AS_FOUND_UNCHECKED_LEVEL);
}

static void record(const frame_roof_as_found_out *out, frame_working *w) {
    if (!w) return;
    FRAME_HEADING(w, "As found beside the plan");
    FRAME_TABLE(w, moved, out->moved_in, "in", "the farthest that a corner was found from its place", "distances");
    FRAME_TABLE(w, largest, out->largest_in, "in", "the largest difference of length", "both roofs framed");
    FRAME_TABLE(w, changed, out->changed, "", "pieces cut otherwise", "counted");
}

static frame_status solve(const frame_roof_as_found_in *in, frame_answer *answer, frame_roof_as_found_out *out,
                          frame_working *w) {
    both b = {.planned = NULL};
    if (in->found_count != in->corner_count)
        return frame_fail_number(FRAME_CONFLICT, "found", (double)in->found_count, "as many corners as planned");
    out->changed = out->added = out->gone = 0;
    out->largest_in = 0;
    out->moved_in = farthest_moved(in);
    b.reach = in->spacing_in / 2 + out->moved_in;
    frame_status status = frame_one(in, 0, &b.planned);
    if (!status) status = frame_one(in, 1, &b.found);
    if (!status) status = compare(&b, answer, out);
    if (!status) note(&b, out);
    if (!status) record(out, w);
    give_both(&b);
    return status;
}

FRAME_IMPLEMENT_ANSWER(roof_as_found, solve);
