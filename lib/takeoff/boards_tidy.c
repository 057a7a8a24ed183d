/* The last stage: other plans that cost the same, and of all of them the tidiest. */
#include "takeoff/boards.h"
#include "takeoff/tidy.h"

#include <math.h>

enum { MOST_PLANS = 24, MOST_IN_VAIN = 8 };
static const double LEAST_STEPS = 2e7, SHARE_OF_SEARCH = 0.25;

/* A plan as cheap as the best, of as few boards: by values and by rounding in turn. */
static frame_status try_another(frame_boards *boards, int which, frame_cut_plan **plan) {
    const int64_t below = boards->best.cost + 1;
    *plan = which % 2 ? &boards->rounding.plan : &boards->values.plan;
    return which % 2 ? frame_rounding_try(&boards->rounding, NULL, below, 0.3 * which)
                     : frame_values_try(&boards->values, below);
}

frame_status frame_boards_tidy(frame_boards *boards) {
    const double limit = boards->effort->spent + fmax(LEAST_STEPS, SHARE_OF_SEARCH * boards->effort->spent);
    frame_tidiness best, other;
    frame_status status = frame_tidy(boards->job, &boards->best, &best);
    for (int n = 0, vain = 0; !status && n < MOST_PLANS && vain < MOST_IN_VAIN && !boards->effort->over; n++, vain++) {
        frame_cut_plan *plan;
        if (boards->effort->spent > limit) break;
        status = try_another(boards, n, &plan);
        if (status || !plan->found || plan->boards > boards->best.boards) continue;
        status = frame_tidy(boards->job, plan, &other);
        if (status || !frame_tidier(&other, &best)) continue;
        status = frame_cut_plan_copy(&boards->best, plan);
        best = other, vain = -1;
    }
    return status;
}
