/* The studs of a gable: right triangles under the slope. The gable stands along x from the outside of the first wall;
 * the plane its studs reach is z = under + slope x up to the ridge, and falls alike beyond. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

enum { LIST_PIECES, MOST_STUDS = 1000 };

static const char triangle[] = "right triangle";

/* What the sticks are made of, kept with the answer. */
typedef struct stud_facts {
    double slope, under, half_span, along, through;
    int32_t turned;
} stud_facts;

static double height_at(const stud_facts *f, double x) {
    return f->under + f->slope * (f->half_span - fabs(x - f->half_span));
}

static frame_status give_piece(const stud_facts *f, frame_answer *answer, double x) {
    const double low = height_at(f, x - f->along / 2), high = height_at(f, x + f->along / 2);
    const int peak = fabs(x - f->half_span) < f->along / 2 - 1e-9;
    if (fmin(low, high) <= 0) return FRAME_OK;
    frame_gable_studs_piece *piece = frame_answer_add(answer, LIST_PIECES);
    if (!piece) return FRAME_NO_MEMORY;
    piece->distance_in = x;
    piece->long_point_in = peak ? height_at(f, f->half_span) : fmax(low, high);
    piece->short_point_in = fmin(low, high);
    piece->peak = peak;
    if (!peak) piece->hand = x < f->half_span ? FRAME_HAND_LEFT : FRAME_HAND_RIGHT;
    return FRAME_OK;
}

static frame_status give_pieces(const stud_facts *f, frame_answer *answer, double first, double spacing) {
    frame_status status = FRAME_OK;
    int count = 0;
    for (double x = first; x < 2 * f->half_span - f->along / 2 && !status; x = first + ++count * spacing) {
        if (count == MOST_STUDS)
            return frame_fail_number(FRAME_TOO_LARGE, "spacing_in", spacing, "such that there are at most 1000 studs");
        status = give_piece(f, answer, x);
    }
    return status;
}

static void record(const frame_gable_studs_in *in, double along, frame_gable_studs_out *out, frame_working *w) {
    const int flat = in->turned == FRAME_STUD_FLAT;
    FRAME_GIVEN(w, m, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, s, in->spacing_in, "in", "spacing on centres");
    FRAME_STEP(w, difference, s * m, "in", "common difference", triangle);
    FRAME_GIVEN(w, b, along, "in", "width of a stud along the wall");
    FRAME_STEP(w, point, b * m, "in", "its long point above its short point", triangle);
    FRAME_STEP(w, theta, atan(m) / FRAME_DEG, "deg", "angle of the tops: a mitre flat, a bevel on edge", triangle);
    out->difference_in = difference;
    out->point_in = point;
    out->mitre_deg = flat ? theta : 0;
    out->bevel_deg = flat ? 0 : theta;
}

static void release(void *object) {
    frame_give(object);
}

static frame_status solve(const frame_gable_studs_in *in, frame_answer *answer, frame_gable_studs_out *out,
                          frame_working *w) {
    const int flat = in->turned == FRAME_STUD_FLAT;
    stud_facts *f = frame_take_zeroed(1, sizeof *f);
    if (!f || !frame_answer_own(answer, f, release)) return FRAME_NO_MEMORY;
    f->slope = in->slope, f->under = in->under_in, f->half_span = in->span_in / 2, f->turned = in->turned;
    f->along = flat ? in->depth_in : in->thickness_in, f->through = flat ? in->thickness_in : in->depth_in;
    const double first = in->first_in == FRAME_NOT_GIVEN ? in->spacing_in : in->first_in;
    if (in->first_in != FRAME_NOT_GIVEN && first >= in->span_in - f->along / 2)
        return frame_fail_number(FRAME_IMPOSSIBLE, "first_in", first, "less: no stud stands within the gable");
    const frame_status status = give_pieces(f, answer, first, in->spacing_in);
    if (status) return status;
    record(in, f->along, out, w);
    out->count = (int32_t)frame_answer_count(answer, LIST_PIECES);
    out->cautions = FRAME_BIT(FRAME_GABLE_STUDS_CAUTION_TALL);
    if (in->slope > 1.5) out->cautions |= FRAME_BIT(FRAME_GABLE_STUDS_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_GABLE_STUDS_UNCHECKED_WIND);
    out->known = FRAME_KNOWN_USER;
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(gable_studs, solve);

frame_status frame_gable_studs_stick(const frame_gable_studs *studs, size_t index, frame_stick **stick) {
    const frame_answer *answer = (const frame_answer *)studs;
    frame_gable_studs_piece piece;
    if (!studs || !stick)
        return frame_fail(FRAME_REQUIRED, "studs", "NULL", "an answer, and where to put the stick",
                          "studs: NULL is not an answer, or there is nowhere to put the stick");
    const frame_status status = frame_gable_studs_piece_at(studs, index, &piece);
    if (status) return status;
    const stud_facts *f = FRAME_ITEM(frame_owned, answer->owned, 0).object;
    const double peak[3] = {f->half_span, 0, height_at(f, f->half_span)};
    const double rising[3] = {-f->slope, 0, 1}, falling[3] = {f->slope, 0, 1};
    frame_cut_list cuts = {.count = 0};
    if (piece.peak || piece.distance_in < f->half_span)
        frame_cut_list_add(&cuts, FRAME_STICK_MITRE_CUT, peak, rising, "top cut");
    if (piece.peak || piece.distance_in > f->half_span)
        frame_cut_list_add(&cuts, FRAME_STICK_MITRE_CUT, peak, falling, "top cut");
    frame_stick_in facts;
    frame_stick_in_init(&facts);
    facts.name = "gable stud";
    facts.thickness_in = fmin(f->along, f->through);
    facts.depth_in = fmax(f->along, f->through);
    facts.start_x_in = facts.end_x_in = piece.distance_in;
    facts.end_y_in = 0;
    facts.end_z_in = piece.long_point_in + 1;
    facts.crown_z = 0; /* the wide way: through the wall on edge, along it flat */
    facts.crown_x = f->along > f->through;
    facts.crown_y = !facts.crown_x;
    facts.planes = cuts.planes;
    facts.plane_count = cuts.count;
    return frame_stick_new(&facts, stick);
}
