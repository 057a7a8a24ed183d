/* Beams under the joists: plies from stock lengths, joined over supports, no two neighbours over the same one where
 * that can be helped. */
#include <math.h>

#include "base/error.h"
#include "layout/platform.h"

/* The farthest support to join a ply over; every second ply keeps off the joints of the one beside it. */
static double find_joint(double from, double most, double to, const double *supports, size_t count,
                         const frame_array *beside) {
    double best = FRAME_NOT_GIVEN, any = FRAME_NOT_GIVEN;
    for (size_t i = 0; i < count; i++) {
        const double at = supports[i];
        if (at <= from + 1 || at > most + 1e-9 || at >= to - 1) continue;
        int taken = 0;
        for (size_t k = 0; k < beside->count; k++) taken |= fabs(FRAME_ITEM(double, *beside, k) - at) < 1e-6;
        if (at > any) any = at;
        if (!taken && at > best) best = at;
    }
    return best == FRAME_NOT_GIVEN ? any : best;
}

static frame_status add_ply(frame_platform *p, const frame_layout_section *ply, double x, double from, double to,
                            const double *supports, size_t count, frame_array *joints) {
    const double z = -ply->depth / 2;
    frame_array made = {.item_size = sizeof(double)};
    frame_status status = FRAME_OK;
    while (!status && from < to - 1e-9) {
        double end = to;
        if (to - from > p->stock + 1e-9) {
            end = find_joint(from, from + p->stock, to, supports, count, joints);
            if (end == FRAME_NOT_GIVEN)
                status = frame_fail_number(FRAME_IMPOSSIBLE, "stock_in", p->stock,
                                           "longer, or posts closer: no ply of a beam reaches from post to post");
            else if (!frame_array_push(&made, &end))
                status = FRAME_NO_MEMORY;
            if (status) break;
        }
        frame_platform_add(p, FRAME_STAGE_SUPPORTS, FRAME_PIECE_BEAM, -1, ply, (vec3){x, from, z}, (vec3){x, end, z},
                           (vec3){0, 0, 1});
        from = end;
    }
    frame_array_give(joints);
    *joints = made;
    return status;
}

frame_status frame_platform_add_beam(frame_platform *p, const frame_layout_section *ply, int plies, double x,
                                     double from, double to, const double *supports, size_t count) {
    frame_array joints = {.item_size = sizeof(double)};
    frame_status status = FRAME_OK;
    const double first = x - (plies - 1) * ply->thickness / 2;
    for (int i = 0; !status && i < plies; i++)
        status = add_ply(p, ply, first + i * ply->thickness, from, to, supports, count, &joints);
    frame_array_give(&joints);
    return status;
}

frame_status frame_platform_check_beams(const frame_platform *p, const double *half) {
    for (size_t i = 1; i < p->beams.count; i++) {
        const double apart = FRAME_PLATFORM_BEAM(p, i)->at - FRAME_PLATFORM_BEAM(p, i - 1)->at;
        if (apart >= half[i] + half[i - 1] - 1e-9) continue;
        frame_fail_number(FRAME_IMPOSSIBLE, "at_in", FRAME_PLATFORM_BEAM(p, i)->at,
                          "farther from the beam before: they, or their posts, would meet");
        return frame_fail_within("beams[%zu].", i);
    }
    return FRAME_OK;
}
