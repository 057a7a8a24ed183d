/* The lines a wall stands between: what it stands on, which may slope or step, and its top, which may be raked and turn
 * at a peak. The top never turns up again, so each line of it is the lower of two straight ones. */
#include <math.h>

#include "layout/wall.h"

double frame_wall_slope(const frame_wall_plan *plan, double x, int side) {
    const double past = x - plan->peak;
    return past > 1e-9 || (side > 0 && past > -1e-9) ? plan->far_slope : plan->slope;
}

double frame_wall_plates(const frame_wall_plan *plan, int count, double slope) {
    return count * plan->t * sqrt(1 + slope * slope);
}

double frame_wall_stretch(const frame_wall_plan *plan, double x, int plates, int beyond) {
    if (!beyond) return plan->height + x * plan->slope - frame_wall_plates(plan, plates, plan->slope);
    return plan->height + plan->peak * plan->slope + (x - plan->peak) * plan->far_slope -
           frame_wall_plates(plan, plates, plan->far_slope);
}

double frame_wall_under(const frame_wall_plan *plan, double x, int plates) {
    const double first = frame_wall_stretch(plan, x, plates, 0);
    return isinf(plan->peak) ? first : fmin(first, frame_wall_stretch(plan, x, plates, 1));
}

double frame_wall_stud_top(const frame_wall_plan *plan, double x) {
    return frame_wall_under(plan, x, plan->in->top_plates);
}

/* Where the undersides of the two stretches meet: at the peak, or beside it where their slopes differ. */
double frame_wall_ridge(const frame_wall_plan *plan) {
    if (isinf(plan->peak) || plan->slope == plan->far_slope) return INFINITY;
    const int plates = plan->in->top_plates;
    return plan->peak +
           (frame_wall_plates(plan, plates, plan->slope) - frame_wall_plates(plan, plates, plan->far_slope)) /
               (plan->slope - plan->far_slope);
}

double frame_wall_bottom(const frame_wall_plan *plan, double x, int side) {
    double z = x * plan->in->bottom_slope;
    for (size_t i = 0; i < plan->steps.count; i++) {
        const frame_wall_step *step = &FRAME_ITEM(frame_wall_step, plan->steps, i);
        const double past = x - step->at_in;
        if (past > 1e-9 || (side > 0 && past > -1e-9)) z += step->rise_in;
    }
    return z;
}

double frame_wall_stud_bottom(const frame_wall_plan *plan, double x, int side) {
    return frame_wall_bottom(plan, x, side) + frame_wall_plates(plan, plan->in->bottom_plates, plan->in->bottom_slope);
}
