/* Hips and valleys as sticks in space: only where the planes lie is decided here. Of the handbook's formulas none is
 * used but the angle in plan; lengths, cuts, drop and marks are the kernel's, or follow from the roof planes. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof/hip.h"

/* Directions of one side in plan: into the building square to the eave, and along the eave away from the corner. */
typedef struct side {
    double angle, in[2], along[2], slope, overhang, offset, plate;
} side;

typedef struct shape {
    side sides[2];
    double slope, apex, tail, top; /* x of the apex and the tail; z of the top's centre line at x = 0 */
    frame_cut_list cuts;
} shape;

static void find_side(shape *of, const frame_hip_facts *in, int b, double angle) {
    side *s = &of->sides[b];
    /* On a hip side a's eave lies to the right; in a valley its roof does, and the eave's own line to the left. */
    const double hand = (b ? -1 : 1) * (in->valley ? -1 : 1);
    s->angle = angle / FRAME_DEG;
    s->in[0] = sin(angle), s->in[1] = hand * cos(angle);
    s->along[0] = cos(angle), s->along[1] = -hand * sin(angle);
    s->slope = b ? in->slope_b : in->slope_a;
    s->overhang = in->overhang_in;
    s->offset = s->plate = 0;
}

/* How far a point of the centre line must be from x = 0 for the plane of a side to be so high above its plate. */
static void place(const frame_hip_facts *in, shape *of) {
    const double corner = in->corner_deg * FRAME_DEG;
    const double alpha = atan2(in->slope_b * sin(corner), in->slope_a + in->slope_b * cos(corner));
    find_side(of, in, 0, alpha);
    find_side(of, in, 1, corner - alpha);
    side *b = &of->sides[1];
    if (in->eaves == FRAME_EAVES_OVERHANGS_EQUAL) {
        b->plate = in->overhang_in * (in->slope_b - in->slope_a);
        b->offset = -b->plate / in->slope_b;
    } else {
        b->overhang = in->overhang_in * in->slope_a / in->slope_b;
    }
    of->slope = in->slope_a * sin(alpha);
    of->apex = in->run_in / sin(alpha);
    of->tail = -in->overhang_in / sin(alpha);
}

/* The top lies so that nothing of it stands over the roof planes: its two top edges are looked at. */
static void find_top(const frame_hip_facts *in, shape *of) {
    of->top = in->height_above_plate_in == FRAME_NOT_GIVEN ? 0 : in->height_above_plate_in;
    double lowest = 0;
    for (int i = 0; i < 2 && in->lowered; i++) {
        const double edge = (i ? 1 : -1) * in->thickness_in / 2;
        lowest = fmin(lowest, of->sides[i].slope * of->sides[i].in[1] * edge);
    }
    of->top += lowest;
}

static void add_backing(const frame_hip_facts *in, shape *of) {
    const double point[3] = {0, 0, of->top};
    for (int i = 0; i < 2 && in->backed; i++) {
        const side *s = &of->sides[i];
        const double waste[3] = {-s->slope * s->in[0], -s->slope * s->in[1], 1};
        frame_cut_list_add(&of->cuts, FRAME_STICK_BACKING, point, waste, i ? "backing, side b" : "backing, side a");
    }
}

/* An upright plane square to a direction in plan, so far short of the apex. */
static void add_head(shape *of, const double direction[2], double half, frame_stick_role role, const char *label) {
    const double point[3] = {of->apex - half * direction[0], -half * direction[1], 0};
    const double waste[3] = {direction[0], direction[1], 0};
    frame_cut_list_add(&of->cuts, role, point, waste, label);
}

static void cut_head(const frame_hip_facts *in, shape *of) {
    static const double ahead[2] = {1, 0};
    static const char *const labels[2] = {"head cheek, side a", "head cheek, side b"};
    const double half = in->against_thickness_in / 2;
    if (in->head == FRAME_HIP_HEAD_PLUMB) add_head(of, ahead, half, FRAME_STICK_PLUMB_CUT, "head plumb cut");
    if (in->head == FRAME_HIP_HEAD_RIDGE) add_head(of, of->sides[0].in, half, FRAME_STICK_CHEEK_CUT, "ridge cheek");
    for (int i = 0; i < 2 && in->head == FRAME_HIP_HEAD_COMMONS; i++) {
        const side *s = &of->sides[i];
        if (in->valley) add_head(of, s->in, half, FRAME_STICK_CHEEK_CUT, labels[i]);
        if (!in->valley && frame_hip_has_common(s->angle))
            add_head(of, s->along, half, FRAME_STICK_CHEEK_CUT, labels[i]);
    }
}

/* The foot of a broken hip: against the face of the lower ridge, which runs along side b's eave, or square. */
static void cut_foot(const frame_hip_facts *in, shape *of) {
    const double *into = of->sides[1].in;
    const double along[3] = {-into[0], -into[1], 0}, back[3] = {-1, 0, 0};
    const double on_face[3] = {in->foot_half * into[0], in->foot_half * into[1], 0}, square[3] = {in->foot_half, 0, 0};
    if (in->foot_cut == FRAME_BROKEN_HIP_END_RIDGE)
        frame_cut_list_add(&of->cuts, FRAME_STICK_CHEEK_CUT, on_face, along, "foot cheek");
    else
        frame_cut_list_add(&of->cuts, FRAME_STICK_PLUMB_CUT, square, back, "foot plumb cut");
}

/* The outer face of each side's fascia. A hip keeps what lies inside of both; a valley what lies inside of either. */
static void cut_tail(const frame_hip_facts *in, shape *of) {
    static const char *const labels[2] = {"tail cheek, side a", "tail cheek, side b"};
    const double point[3] = {of->tail, 0, 0}, back[3] = {-1, 0, 0};
    double square = of->tail;
    for (int i = 0; i < 2 && in->tail == FRAME_HIP_TAIL_FASCIA; i++) {
        const side *s = &of->sides[i];
        const double waste[3] = {-s->in[0], -s->in[1], 0};
        frame_cut_list_add(&of->cuts, FRAME_STICK_CHEEK_CUT, point, waste, labels[i]);
        square = fmin(square, of->tail - in->thickness_in / 2 * fabs(s->in[1]) / s->in[0]);
    }
    if (in->tail == FRAME_HIP_TAIL_FASCIA && !in->valley) return;
    if (in->valley && in->tail == FRAME_HIP_TAIL_FASCIA) frame_cut_list_notch(&of->cuts, 2, 9, FRAME_STICK_NOTCH);
    const double outermost[3] = {square, 0, 0};
    frame_cut_list_add(&of->cuts, FRAME_STICK_PLUMB_CUT, outermost, back, "tail plumb cut");
}

/* What lies over a plate: under its top and inside the building line. */
static void add_over_plate(shape *of, int i, double level) {
    const side *s = &of->sides[i];
    const double inside[3] = {s->in[0], s->in[1], 0}, on_line[3] = {-s->offset * s->in[0], -s->offset * s->in[1], 0};
    const double top[3] = {0, 0, level}, down[3] = {0, 0, -1};
    frame_cut_list_add(&of->cuts, FRAME_STICK_SEAT, top, down, "seat");
    frame_cut_list_add(&of->cuts, FRAME_STICK_HEEL_CUT, on_line, inside, i ? "heel, side b" : "heel, side a");
}

/* The inner edge of a plate bounds the notch over the higher one. */
static void add_inner_edge(const frame_hip_facts *in, shape *of, int i) {
    const side *s = &of->sides[i];
    const double at = in->plate_width_in - s->offset;
    const double point[3] = {at * s->in[0], at * s->in[1], 0}, waste[3] = {-s->in[0], -s->in[1], 0};
    frame_cut_list_add(&of->cuts, FRAME_STICK_HEEL_CUT, point, waste, "inner edge of the plate");
}

static void cut_birdsmouth(const frame_hip_facts *in, shape *of) {
    if (in->height_above_plate_in == FRAME_NOT_GIVEN) return;
    const double plates[2] = {0, of->sides[1].plate};
    if (in->valley || plates[1] != 0) {
        for (int i = 0; i < 2; i++) {
            add_over_plate(of, i, plates[i]);
            const int higher = plates[i] > plates[1 - i];
            if (higher) add_inner_edge(in, of, i);
            frame_cut_list_notch(&of->cuts, higher ? 3 : 2, i + 1, FRAME_STICK_BIRDSMOUTH);
        }
        return;
    }
    add_over_plate(of, 0, 0);
    const side *b = &of->sides[1];
    const double corner[3] = {0, 0, 0}, inside[3] = {b->in[0], b->in[1], 0};
    frame_cut_list_add(&of->cuts, FRAME_STICK_HEEL_CUT, corner, inside, "heel, side b");
    frame_cut_list_notch(&of->cuts, 3, 1, FRAME_STICK_BIRDSMOUTH);
}

frame_status frame_hip_make_stick(const frame_hip_facts *in, frame_stick **stick) {
    shape of = {.cuts.count = 0};
    if (in->depth_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "depth_in", "", "depth_in or size",
                          "depth_in: not given; depth_in or size is required");
    place(in, &of);
    find_top(in, &of);
    cut_head(in, &of);
    if (in->foot)
        cut_foot(in, &of);
    else
        cut_tail(in, &of);
    add_backing(in, &of);
    cut_birdsmouth(in, &of);
    const double spare = in->depth_in * of.slope + 1; /* the axis reaches past every corner of the end cuts */
    frame_stick_in facts;
    frame_stick_in_init(&facts);
    facts.name = in->name ? in->name : in->valley ? "valley" : "hip";
    facts.section = in->size != FRAME_NOT_GIVEN_INT ? frame_size_name(in->size) : NULL;
    facts.thickness_in = in->thickness_in;
    facts.depth_in = in->depth_in;
    facts.start_x_in = of.tail - spare;
    facts.start_z_in = of.top + of.slope * facts.start_x_in;
    facts.end_x_in = of.apex + spare;
    facts.end_y_in = 0;
    facts.end_z_in = of.top + of.slope * facts.end_x_in;
    facts.axis_at = FRAME_STICK_AXIS_TOP;
    facts.planes = of.cuts.planes;
    facts.plane_count = of.cuts.count;
    return frame_stick_new(&facts, stick);
}
