/* A ridge board: what would hang on it goes down both slopes, and pushes the eaves apart. */
#include <math.h>

#include "building/roof_face.h"

/* Where the rafters below a point of a ridge come down on one side, and how far out. */
static int come_down(frame_roof_face *f, double x, double y, double *run, frame_roof_at *at, size_t *edge) {
    const frame_roof_at top = {x * f->ux + y * f->uy, x * f->vx + y * f->vy - 1e-6};
    const frame_roof_crossing c = frame_roof_face_cross(f, top);
    if (!(c.found & 1)) return 0;
    *run = top.v - c.low;
    *at = (frame_roof_at){top.u, c.low};
    *edge = c.low_edge;
    return 1;
}

/* All that comes to the ridge at one place: both rafters of a pair. */
static frame_by_kind at_place(const frame_bearer *board, double s) {
    frame_by_kind sum = {{0}};
    for (size_t i = 0; i < board->points.count; i++) {
        const frame_at_point *point = &FRAME_ITEM(frame_at_point, board->points, i);
        if (fabs(point->s - s) < 1) frame_by_kind_add(&sum, &point->load, 1);
    }
    return sum;
}

static frame_status lean(frame_framing_job *job, const frame_bearer *board, frame_roof_face sides[2],
                         const frame_at_point *point, double *thrust, double *duration) {
    double x, y, run[2];
    frame_roof_at at[2];
    size_t edge[2];
    frame_bearer_point(board, point->s, &x, &y);
    /* Just inside: at its very ends a ridge lies on the faces' edges. */
    const double inside = fmin(fmax(point->s, 1e-4), board->length - 1e-4);
    double xi, yi;
    frame_bearer_point(board, inside, &xi, &yi);
    if (!come_down(&sides[0], xi, yi, &run[0], &at[0], &edge[0]) ||
        !come_down(&sides[1], xi, yi, &run[1], &at[1], &edge[1]))
        return frame_deliver_down(job, FRAME_BEARER_RIDGE, board->name, FRAME_BEARER_NOTHING, "nothing", x, y,
                                  &point->load);
    const double a = run[0], b = run[1], rise = fmin(a * sides[0].facts.slope, b * sides[1].facts.slope);
    double C_D = 1;
    const frame_by_kind pair = at_place(board, point->s);
    const double R = frame_by_kind_most(&pair, NULL, &C_D), H = R * a * b / ((a + b) * rise);
    if (H > *thrust) *thrust = H, *duration = C_D;
    frame_by_kind one = {{0}}, two = {{0}};
    frame_by_kind_add(&one, &point->load, b / (a + b));
    frame_by_kind_add(&two, &point->load, a / (a + b));
    const frame_status status = frame_roof_face_hand(&sides[0], board->name, edge[0], at[0], &one);
    return status ? status : frame_roof_face_hand(&sides[1], board->name, edge[1], at[1], &two);
}

/* A ridge board holds nothing up: rafters lean on each other in pairs, each pair an arch from eave to eave. What both
 * would set on a ridge goes down to the eaves by the lever, and pushes them apart. */
frame_status frame_roof_board(frame_framing_job *job, size_t place) {
    const frame_bearer board = *FRAME_BEARER(job, place);
    const frame_roof_shape *shape = &job->roofs[board.part];
    frame_roof_solve_line line;
    frame_roof_face sides[2];
    double thrust = 0, duration = 1;
    frame_roof_solve_line_at(shape->solved, board.line, &line);
    for (int i = 0; i < 2; i++) {
        sides[i] = (frame_roof_face){.job = job, .shape = shape, .roof = board.part};
        frame_roof_solve_face_at(shape->solved, (size_t)(i ? line.left_face : line.right_face), &sides[i].facts);
        if (!frame_roof_face_read(&sides[i])) return FRAME_TOO_LARGE;
    }
    int32_t pairs = 0;
    for (size_t i = 0; i < board.points.count; i++) {
        const frame_status status =
            lean(job, &board, sides, &FRAME_ITEM(frame_at_point, board.points, i), &thrust, &duration);
        if (status) return status;
        pairs++;
    }
    return frame_framing_thrust(job, board.part, thrust, duration, (pairs + 1) / 2);
}
