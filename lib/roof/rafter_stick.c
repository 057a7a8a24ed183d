/* The common rafter as a stick in space: only where the planes lie is decided here; all lengths, cuts and marks are
 * then the kernel's. The building line is x = 0, the plate's top z = 0, the roof plane z = height above plate + slope
 * x. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof/rafter.h"
#include "roof_facts.h"

typedef struct plane_list {
    frame_stick_plane planes[7];
    size_t count;
} plane_list;

static frame_stick_plane *add(plane_list *list, frame_stick_role role, double x, double z, double waste_x,
                              double waste_z, const char *label) {
    frame_stick_plane *plane = &list->planes[list->count++];
    frame_stick_plane_init(plane);
    plane->role = role;
    plane->axes = FRAME_STICK_AXES_WORLD;
    plane->point_x_in = x;
    plane->point_y_in = 0;
    plane->point_z_in = z;
    plane->waste_x = waste_x;
    plane->waste_y = 0;
    plane->waste_z = waste_z;
    plane->label = label;
    return plane;
}

static void add_tail(plane_list *list, const frame_rafter_in *in, double tail_z) {
    const double x = -in->overhang_in;
    if (in->tail == FRAME_RAFTER_TAIL_SQUARE) {
        const double secant = sqrt(1 + in->slope * in->slope);
        add(list, FRAME_STICK_SQUARE_END, x, tail_z, -1 / secant, -in->slope / secant, "tail square cut");
        return;
    }
    if (in->tail != FRAME_RAFTER_TAIL_LEVEL) add(list, FRAME_STICK_PLUMB_CUT, x, tail_z, -1, 0, "tail plumb cut");
    if (in->tail == FRAME_RAFTER_TAIL_LEVEL) add(list, FRAME_STICK_LEVEL_CUT, x, tail_z, 0, -1, "tail level cut");
    if (in->tail == FRAME_RAFTER_TAIL_PLUMB_AND_LEVEL)
        add(list, FRAME_STICK_LEVEL_CUT, x, tail_z - in->fascia_depth_in, 0, -1, "tail level cut");
}

static void add_birdsmouth(plane_list *list, int32_t number, double x, double z) {
    frame_stick_plane *seat = add(list, FRAME_STICK_SEAT, x, z, 0, -1, number > 1 ? "ridge seat" : "seat");
    frame_stick_plane *heel = add(list, FRAME_STICK_HEEL_CUT, x, z, 1, 0, number > 1 ? "ridge heel" : "heel");
    seat->notch = heel->notch = number;
    seat->notch_kind = heel->notch_kind = FRAME_STICK_BIRDSMOUTH;
}

frame_status frame_rafter_stick(const frame_rafter_in *given, frame_stick **stick) {
    frame_rafter_in in;
    frame_rafter_shape shape = {.known = FRAME_KNOWN_USER};
    uint64_t assumed = 0;
    frame_status status = frame_rafter_in_read(given, &in, &assumed);
    if (!status) status = frame_rafter_resolve(&in, &shape);
    if (status) return status;
    const double height = shape.height_above_plate, top = in.run_in - shape.deduction;
    const double spare = in.depth_in * in.slope + 1; /* the axis reaches past every corner of the end cuts */
    plane_list list = {.count = 0};
    add(&list, FRAME_STICK_PLUMB_CUT, top, 0, 1, 0,
        in.ledger_thickness_in > 0 ? "plumb cut at the ledger" : "ridge plumb cut");
    add_tail(&list, &in, height - in.slope * in.overhang_in);
    add_birdsmouth(&list, 1, 0, 0);
    if (in.ridge_seat_in != FRAME_NOT_GIVEN)
        add_birdsmouth(&list, 2, top - in.ridge_seat_in, height + in.slope * top - shape.plumb_depth);
    frame_stick_in facts;
    frame_stick_in_init(&facts);
    facts.name = in.name ? in.name : "rafter";
    facts.section = in.size != FRAME_NOT_GIVEN_INT ? frame_size_name(in.size) : NULL;
    facts.thickness_in = in.thickness_in;
    facts.depth_in = in.depth_in;
    facts.start_x_in = -in.overhang_in - spare;
    facts.start_z_in = height + in.slope * facts.start_x_in;
    facts.end_x_in = top + spare;
    facts.end_y_in = 0;
    facts.end_z_in = height + in.slope * facts.end_x_in;
    facts.axis_at = FRAME_STICK_AXIS_TOP;
    facts.planes = list.planes;
    facts.plane_count = list.count;
    return frame_stick_new(&facts, stick);
}

FRAME_DRAW_STICK(rafter);
