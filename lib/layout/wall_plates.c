/* The plates of a wall: cut at doors, steps, the peak and where another wall's plate laps in; and joined over studs,
 * the joints of top plates apart from one another. */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout/wall.h"
#include "layout_facts.h"

/* One layer of plates being laid. */
typedef struct layer {
    frame_piece_kind kind;
    const char *name;
    int top, index; /* of the top or the bottom; from below */
    int number;     /* pieces so far */
    double offset;  /* joints keep so far from those of the layers before */
} layer;

static int far_from_joints(const frame_wall_plan *plan, double x, double offset) {
    for (size_t i = 0; i < plan->joints.count; i++)
        if (fabs(FRAME_ITEM(double, plan->joints, i) - x) < offset - 1e-9) return 0;
    return 1;
}

/* The farthest upright over whose middle a joint may lie. Unless it cannot be helped, what is left after it is no stub.
 */
static double find_joint(const frame_wall_plan *plan, double from, double most, double to, double offset) {
    double best = FRAME_NOT_GIVEN, stub = FRAME_NOT_GIVEN;
    for (size_t i = 0; i < plan->uprights.count; i++) {
        const frame_wall_upright *upright = FRAME_WALL_UPRIGHT(plan, i);
        const double x = upright->from + upright->width / 2;
        if (upright->kind != FRAME_PIECE_STUD && upright->kind != FRAME_PIECE_KING) continue;
        if (x < from + 1 || x > most + 1e-9 || x > to - 1 || !far_from_joints(plan, x, offset)) continue;
        if (x > stub) stub = x;
        if (x > best && x <= to - 24) best = x;
    }
    return best == FRAME_NOT_GIVEN ? stub : best;
}

/* The z of a layer's middle at a place within a stretch that begins at from. */
static double middle(const frame_wall_plan *plan, const layer *l, double x, double from) {
    if (!l->top)
        return frame_wall_bottom(plan, x, 1) + frame_wall_plates(plan, 1, plan->in->bottom_slope) * (l->index + 0.5);
    const int over = plan->in->top_plates - l->index, beyond = from >= plan->peak - 1e-9;
    return (frame_wall_stretch(plan, x, over, beyond) + frame_wall_stretch(plan, x, over - 1, beyond)) / 2;
}

static double slope_of(const frame_wall_plan *plan, const layer *l, double x) {
    return l->top ? frame_wall_slope(plan, x, 1) : plan->in->bottom_slope;
}

static void add_plate(frame_wall_plan *plan, layer *l, double from, double to) {
    const double slope = slope_of(plan, l, from), secant = sqrt(1 + slope * slope),
                 margin = slope == 0 ? 0 : plan->t + 1;
    const double inner = (from + to) / 2, z = middle(plan, l, inner, from); /* clear of the steps at its ends */
    const vec3 start = {from - margin, plan->d / 2, z + (from - margin - inner) * slope};
    const vec3 end = {to + margin, plan->d / 2, z + (to + margin - inner) * slope};
    frame_layout_piece *piece =
        frame_layout_add(plan->set, l->kind, l->name, ++l->number, &plan->stud, start, end, (vec3){0, 1, 0});
    if (!piece || slope == 0) return;
    piece->length = (to - from) * secant + plan->t * fabs(slope);
    piece->short_point = (to - from) * secant - plan->t * fabs(slope);
    piece->start_deg = piece->end_deg = atan(fabs(slope)) / FRAME_DEG;
    frame_layout_add_cut(plan->set, FRAME_STICK_PLUMB_CUT, (vec3){from, 0, 0}, (vec3){-1, 0, 0}, "plumb cut");
    frame_layout_add_cut(plan->set, FRAME_STICK_PLUMB_CUT, (vec3){to, 0, 0}, (vec3){1, 0, 0}, "plumb cut");
}

/* A stretch of a layer without a break: as many pieces as the stock asks for. New joints are kept apart until the layer
 * is done, so that they do not keep each other away. */
static frame_status lay_stretch(frame_wall_plan *plan, layer *l, double from, double to, frame_array *joints) {
    const double slope = slope_of(plan, l, from);
    const double most = (plan->in->plate_stock_in - plan->t * fabs(slope)) / sqrt(1 + slope * slope);
    while (to - from > most + 1e-9) {
        const double joint = find_joint(plan, from, from + most, to, l->offset);
        if (joint == FRAME_NOT_GIVEN)
            return frame_fail_number(
                FRAME_IMPOSSIBLE, "plate_stock_in", plan->in->plate_stock_in,
                "longer, or a smaller joint_offset_in: no joint of a plate can be placed over a stud");
        add_plate(plan, l, from, joint);
        if (!frame_array_push(joints, &joint)) return FRAME_NO_MEMORY;
        from = joint;
    }
    add_plate(plan, l, from, to);
    return FRAME_OK;
}

/* The breaks of a layer: pairs of places between which there is none of it, in order. */
typedef struct gap {
    double from, to;
} gap;

static int by_place(const void *a, const void *b) {
    const gap *first = a, *second = b;
    return (first->from > second->from) - (first->from < second->from);
}

static int add_gap(frame_array *gaps, double from, double to) {
    const gap g = {from, to};
    return frame_array_push(gaps, &g) != NULL;
}

static int bottom_gaps(const frame_wall_plan *plan, frame_array *gaps) {
    int kept = 1;
    for (size_t i = 0; i < plan->holes.count; i++)
        if (FRAME_WALL_HOLE(plan, i)->door)
            kept &= add_gap(gaps, FRAME_WALL_HOLE(plan, i)->from, FRAME_WALL_HOLE(plan, i)->to);
    for (size_t i = 0; i < plan->steps.count; i++) {
        const double at = FRAME_ITEM(frame_wall_step, plan->steps, i).at_in;
        kept &= add_gap(gaps, at, at);
    }
    return kept;
}

/* Where the cap plate of a level wall lets another's lap in. */
static int lap_gaps(const frame_wall_plan *plan, frame_array *gaps) {
    int kept = 1;
    for (size_t i = 0; i < plan->in->crossing_count; i++) {
        frame_wall_crossing crossing;
        frame_wall_crossing_item(plan->in->crossings, i, &crossing);
        const double width = crossing.width_in == FRAME_NOT_GIVEN ? plan->d : crossing.width_in;
        if (crossing.lap) kept &= add_gap(gaps, crossing.at_in, crossing.at_in + width);
    }
    return kept;
}

static int laps(const frame_wall_plan *plan) {
    return plan->in->top_plates > 1 && plan->slope == 0 && isinf(plan->peak);
}

/* How far the cap plate goes past an end, or stays behind it, for the lap. */
static double lap_at(const frame_wall_plan *plan, frame_wall_end end, double other) {
    if (!laps(plan) || end == FRAME_WALL_END_PLAIN) return 0;
    return end == FRAME_WALL_END_BUTT ? other : -other;
}

static frame_status lay(frame_wall_plan *plan, layer *l, double from, double to, frame_array *gaps) {
    frame_array joints = {.item_size = sizeof(double)};
    frame_status status = FRAME_OK;
    if (gaps->count) qsort(gaps->items, gaps->count, sizeof(gap), by_place);
    for (size_t i = 0; !status && i <= gaps->count; i++) {
        const double end = i < gaps->count ? FRAME_ITEM(gap, *gaps, i).from : to;
        if (end - from > 1e-9) status = lay_stretch(plan, l, from, end, &joints);
        if (i < gaps->count) from = fmax(from, FRAME_ITEM(gap, *gaps, i).to);
    }
    for (size_t i = 0; !status && i < joints.count; i++)
        if (!frame_array_push(&plan->joints, &FRAME_ITEM(double, joints, i))) status = FRAME_NO_MEMORY;
    frame_array_give(&joints);
    return status;
}

static frame_status lay_bottom(frame_wall_plan *plan) {
    frame_array gaps = {.item_size = sizeof(gap)};
    layer l = {FRAME_PIECE_BOTTOM_PLATE, "bottom plate", 0, 0, 0, plan->in->joint_offset_in};
    frame_status status = bottom_gaps(plan, &gaps) ? FRAME_OK : FRAME_NO_MEMORY;
    for (; !status && l.index < plan->in->bottom_plates; l.index++)
        status = lay(plan, &l, 0, plan->in->length_in, &gaps);
    frame_array_give(&gaps);
    plan->joints.count = 0; /* the top plates' joints have nothing to do with them */
    return status;
}

/* Breaks of the cap plate are joints to keep away from, before the others are placed. */
static frame_status note_breaks(frame_wall_plan *plan, const frame_array *gaps, double from, double to) {
    int kept = 1;
    for (size_t i = 0; i < gaps->count; i++) {
        kept &= frame_array_push(&plan->joints, &FRAME_ITEM(gap, *gaps, i).from) != NULL;
        kept &= frame_array_push(&plan->joints, &FRAME_ITEM(gap, *gaps, i).to) != NULL;
    }
    if (from > 0) kept &= frame_array_push(&plan->joints, &from) != NULL;
    if (to < plan->in->length_in) kept &= frame_array_push(&plan->joints, &to) != NULL;
    return kept ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status lay_top(frame_wall_plan *plan) {
    const frame_wall_in *in = plan->in;
    frame_array none = {.item_size = sizeof(gap)}, gaps = {.item_size = sizeof(gap)};
    const double from = -lap_at(plan, in->start_end, plan->start_other);
    const double to = in->length_in + lap_at(plan, in->end_end, plan->end_other);
    layer l = {FRAME_PIECE_TOP_PLATE, "top plate", 1, 0, 0, in->joint_offset_in};
    int kept = !laps(plan) || lap_gaps(plan, &gaps);
    if (!isinf(plan->peak)) kept &= add_gap(&gaps, plan->peak, plan->peak) & add_gap(&none, plan->peak, plan->peak);
    frame_status status = kept ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status && in->top_plates > 1) status = note_breaks(plan, &gaps, from, to);
    for (; !status && l.index < in->top_plates; l.index++) {
        const int cap = l.index == in->top_plates - 1 && in->top_plates > 1;
        if (cap) l.kind = FRAME_PIECE_CAP_PLATE, l.name = "cap plate", l.number = 0;
        status = cap ? lay(plan, &l, from, to, &gaps) : lay(plan, &l, 0, in->length_in, &none);
    }
    frame_array_give(&none);
    frame_array_give(&gaps);
    return status;
}

frame_status frame_wall_add_plates(frame_wall_plan *plan) {
    plan->joints.item_size = sizeof(double);
    const frame_status status = lay_bottom(plan);
    return status ? status : lay_top(plan);
}
