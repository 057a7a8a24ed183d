/* The openings of a wall: where each lies, what carries what is over it, and whether that fits under the plates. */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout/wall.h"
#include "layout_facts.h"

/* The lowest underside of the top plates over a header. */
static double lowest_top(const frame_wall_plan *plan, const frame_wall_hole *hole) {
    const double reach = hole->jacks * plan->t;
    return fmin(frame_wall_stud_top(plan, hole->from - reach), frame_wall_stud_top(plan, hole->to + reach));
}

static frame_status check_depth(const frame_wall_plan *plan, const frame_wall_hole *hole) {
    const double deep = hole->turned == FRAME_TURNED_FLAT ? hole->header.depth : hole->plies * hole->header.thickness;
    if (deep <= plan->d + 1e-9) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, hole->turned == FRAME_TURNED_FLAT ? "header_size" : "header_plies", deep,
                             "at most as deep as the wall");
}

static frame_status place_header(const frame_wall_plan *plan, frame_wall_hole *hole) {
    const int flat = hole->turned == FRAME_TURNED_FLAT;
    const int caps = hole->caps ? hole->at == FRAME_HEADER_AT_PLATES ? 1 : 2 : 0;
    const double height = flat ? hole->plies * hole->header.thickness : hole->header.depth + caps * plan->t;
    const double head = hole->bottom + hole->head, room = lowest_top(plan, hole);
    if (head + height > room + 1e-9)
        return frame_fail_number(FRAME_IMPOSSIBLE, "head_in", hole->head,
                                 "lower, or a shallower header: it does not fit under the plates");
    hole->header_low = hole->at == FRAME_HEADER_AT_PLATES ? room - height : head;
    hole->header_top = hole->header_low + height;
    if (hole->at == FRAME_HEADER_AT_PLATES && hole->header_low > head + 1e-9 &&
        hole->header_low < head + plan->t - 1e-9)
        return frame_fail_number(FRAME_IMPOSSIBLE, "head_in", hole->head,
                                 "right under the header, or lower by a head plate's thickness");
    return FRAME_OK;
}

static frame_status check_heights(const frame_wall_plan *plan, const frame_wall_hole *hole) {
    const double plates = frame_wall_plates(plan, plan->in->bottom_plates, plan->in->bottom_slope);
    const double under = hole->sills * plan->t + plates + fabs(plan->in->bottom_slope) * (hole->to - hole->from);
    if (hole->head <= hole->low || hole->head <= plates)
        return frame_fail_number(FRAME_IMPOSSIBLE, "head_in", hole->head, "above the sill and the bottom plate");
    if (!hole->door && hole->low < under - 1e-9)
        return frame_fail_number(FRAME_IMPOSSIBLE, "sill_in", hole->low,
                                 "0 for a door, or high enough for the sill above the bottom plate");
    return FRAME_OK;
}

static frame_status take_hole(frame_wall_plan *plan, const frame_wall_opening *opening, int number,
                              frame_answer *answer) {
    frame_wall_hole hole = {.name = frame_answer_text(answer, opening->name ? opening->name : ""),
                            .from = opening->at_in,
                            .to = opening->at_in + opening->width_in,
                            .low = opening->sill_in,
                            .head = opening->head_in,
                            .at = opening->header_at,
                            .door = opening->sill_in == 0,
                            .filler = opening->filler,
                            .filler_most = opening->filler_most_in,
                            .caps = opening->caps,
                            .sills = opening->sills,
                            .number = number,
                            .code_span = FRAME_NOT_GIVEN,
                            .source = ""};
    if (hole.to > plan->in->length_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "at_in", opening->at_in, "a place within the wall");
    hole.bottom = frame_wall_bottom(plan, hole.from, 1);
    frame_status status = frame_wall_size_header(plan, opening, &hole, answer);
    if (!status && hole.caps && hole.turned == FRAME_TURNED_FLAT)
        status = frame_fail(FRAME_CONFLICT, "caps", "yes", "no, or a header on edge",
                            "caps: a header that lies flat takes none; turn it on edge, or leave caps out");
    if (!status) status = check_depth(plan, &hole);
    if (!status) status = check_heights(plan, &hole);
    if (!status) status = place_header(plan, &hole);
    if (status) return status;
    return frame_array_push(&plan->holes, &hole) ? FRAME_OK : FRAME_NO_MEMORY;
}

static int by_place(const void *a, const void *b) {
    const frame_wall_hole *first = a, *second = b;
    return (first->from > second->from) - (first->from < second->from);
}

frame_status frame_wall_take_holes(frame_wall_plan *plan, frame_answer *answer) {
    plan->holes.item_size = sizeof(frame_wall_hole);
    for (size_t i = 0; i < plan->in->opening_count; i++) {
        frame_wall_opening opening;
        frame_wall_opening_item(plan->in->openings, i, &opening);
        if (take_hole(plan, &opening, (int)i + 1, answer)) return frame_fail_within("openings[%zu].", i);
    }
    if (plan->holes.count) qsort(plan->holes.items, plan->holes.count, sizeof(frame_wall_hole), by_place);
    return FRAME_OK;
}
