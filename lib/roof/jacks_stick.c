/* One jack as a stick in space: where the hip's and the valley's faces stand in its way, the kernel cuts it. */
#include <math.h>
#include <stdio.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof/jacks.h"
#include "roof_facts.h"
#include "working/record.h"

/* An upright plane whose normal makes the cheek's angle with the jack. end: 1 at the upper end, -1 at the lower. */
static void add_cheek(frame_cut_list *cuts, const frame_jacks_in *in, const frame_jacks_shape *shape, double x,
                      int end) {
    const double alpha = shape->alpha_deg * FRAME_DEG;
    const int upper = in->kind != FRAME_JACK_VALLEY; /* whose hand the piece has */
    const double hand = (in->hand == FRAME_HAND_LEFT ? 1 : -1) * (upper && end < 0 ? -1 : 1);
    const double point[3] = {x, 0, 0}, waste[3] = {end * cos(alpha), hand * sin(alpha), 0};
    frame_cut_list_add(cuts, FRAME_STICK_CHEEK_CUT, point, waste, end > 0 ? "hip cheek" : "valley cheek");
}

static void add_plumb(frame_cut_list *cuts, double x, int end, const char *label) {
    const double point[3] = {x, 0, 0}, waste[3] = {end, 0, 0};
    frame_cut_list_add(cuts, FRAME_STICK_PLUMB_CUT, point, waste, label);
}

static frame_status add_birdsmouth(frame_cut_list *cuts, const frame_jacks_in *in, const frame_jacks_shape *shape) {
    const double plumb_depth = shape->depth * sqrt(1 + in->slope * in->slope);
    const double corner[3] = {0, 0, 0}, down[3] = {0, 0, -1}, ahead[3] = {1, 0, 0};
    if (in->height_above_plate_in == FRAME_NOT_GIVEN) return FRAME_OK;
    if (in->height_above_plate_in >= plumb_depth)
        return frame_fail_number(FRAME_IMPOSSIBLE, "height_above_plate_in", in->height_above_plate_in,
                                 "less than the jack's plumb depth: there would be no seat");
    frame_cut_list_add(cuts, FRAME_STICK_SEAT, corner, down, "seat");
    frame_cut_list_add(cuts, FRAME_STICK_HEEL_CUT, corner, ahead, "heel");
    frame_cut_list_notch(cuts, 2, 1, FRAME_STICK_BIRDSMOUTH);
    return FRAME_OK;
}

static frame_status cut_ends(frame_cut_list *cuts, const frame_jacks_in *in, const frame_jacks_shape *shape,
                             double run) {
    if (in->kind == FRAME_JACK_VALLEY)
        add_plumb(cuts, run - shape->high_deduction, 1, "ridge plumb cut");
    else
        add_cheek(cuts, in, shape, run - shape->high_deduction, 1);
    if (in->kind != FRAME_JACK_HIP) {
        add_cheek(cuts, in, shape, shape->low_deduction, -1);
        return FRAME_OK;
    }
    add_plumb(cuts, -in->overhang_in, -1, "tail plumb cut");
    return add_birdsmouth(cuts, in, shape);
}

/* The run of the jack asked for. */
static frame_status find_run(const frame_jacks_in *in, const frame_jacks_shape *shape, double *run) {
    const int cripple = in->kind == FRAME_JACK_CRIPPLE;
    if (shape->depth == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "depth_in", "", "depth_in or size",
                          "depth_in: not given; depth_in or size is required");
    if (cripple && in->between_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "between_in", "", ">0..1200 in",
                          "between_in: not given; a cripple's length needs the distance between the corners");
    *run = frame_jacks_run(in, shape, in->piece);
    if (*run - shape->low_deduction - shape->high_deduction <= 0)
        return frame_fail_number(FRAME_IMPOSSIBLE, cripple ? "between_in" : "piece",
                                 cripple ? in->between_in : in->piece,
                                 "a jack of which the deductions leave something");
    if (!cripple && in->run_in != FRAME_NOT_GIVEN && *run >= in->run_in)
        return frame_fail_number(FRAME_OUT_OF_RANGE, "piece", in->piece, "a jack shorter than the common rafter");
    return FRAME_OK;
}

static frame_status make(const frame_jacks_in *in, const frame_jacks_shape *shape, double run, frame_stick **stick) {
    static const char *const kinds[3] = {"hip jack", "valley jack", "cripple jack"};
    char name[48];
    frame_cut_list cuts = {.count = 0};
    const frame_status status = cut_ends(&cuts, in, shape, run);
    if (status) return status;
    snprintf(name, sizeof name, "%s %d %s", kinds[in->kind - 1], (int)in->piece,
             in->hand == FRAME_HAND_LEFT ? "left" : "right");
    const double height =
        in->kind == FRAME_JACK_HIP && in->height_above_plate_in != FRAME_NOT_GIVEN ? in->height_above_plate_in : 0;
    const double spare = shape->depth * in->slope + shape->thickness * tan(shape->alpha_deg * FRAME_DEG) + 1;
    frame_stick_in facts;
    frame_stick_in_init(&facts);
    facts.name = name;
    facts.section = in->size != FRAME_NOT_GIVEN_INT ? frame_size_name(in->size) : NULL;
    facts.thickness_in = shape->thickness;
    facts.depth_in = shape->depth;
    facts.start_x_in = -in->overhang_in - spare;
    facts.start_z_in = height + in->slope * facts.start_x_in;
    facts.end_x_in = run + spare;
    facts.end_y_in = 0;
    facts.end_z_in = height + in->slope * facts.end_x_in;
    facts.axis_at = FRAME_STICK_AXIS_TOP;
    facts.planes = cuts.planes;
    facts.plane_count = cuts.count;
    return frame_stick_new(&facts, stick);
}

frame_status frame_jacks_stick(const frame_jacks_in *given, frame_stick **stick) {
    frame_jacks_in in;
    frame_jacks_shape shape;
    uint64_t assumed = 0;
    double run;
    frame_status status = frame_jacks_in_read(given, &in, &assumed);
    if (!status) status = frame_jacks_resolve(&in, &shape);
    if (!status) status = find_run(&in, &shape, &run);
    return status ? status : make(&in, &shape, run, stick);
}

FRAME_DRAW_STICK(jacks);
