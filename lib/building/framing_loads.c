/* Loads of others: each comes down on whatever stands under it. */
#include "building/framing.h"

frame_status frame_framing_loads(frame_framing_job *job) {
    for (size_t i = 0; i < job->load_count; i++) {
        const frame_part_load *part = &job->loads[i];
        const frame_by_kind load = {
            {0, part->dead_lb, part->live_lb, part->roof_live_lb, part->snow_lb, part->wind_lb}};
        const size_t level = job->level_of_load[i];
        double at = 0;
        frame_by_kind_add(&job->put, &load, 1);
        if (part->wind_lb != 0) job->wind_given = 1;
        const frame_part_level *of = &job->levels[level];
        const frame_below below = {
            -1, frame_framing_tier(job, level, part->on_floor ? FRAME_TIER_JOISTS : FRAME_TIER_RAFTERS),
            part->on_floor ? of->base_in : of->base_in + of->height_in, FRAME_STOREY_GAP};
        const size_t on = frame_bearer_under(job, part->x_in, part->y_in, &below, &at);
        const size_t floor = frame_floor_over(job, level, part->x_in, part->y_in, 0);
        frame_status status;
        if (on == FRAME_NOBODY && part->on_floor && floor != FRAME_NOBODY) {
            const frame_on_floor one = {part->x_in, part->y_in, load};
            status = frame_floor_carry(job, floor, part->name, &one, 1);
        } else {
            status = frame_deliver(job, FRAME_BEARER_GIVEN, part->name, on, at, part->x_in, part->y_in, &load);
        }
        if (status) return status;
    }
    return FRAME_OK;
}
