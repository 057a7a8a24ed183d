/* What stands fixed in a wall: its ends and corners, openings with jacks and kings, channels for partitions, and the
 * studs on either side of a step. Studs on centres keep out of these stretches. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout/wall.h"
#include "layout_facts.h"
#include "tape/tape.h"

int frame_wall_stand(frame_wall_plan *plan, const frame_wall_upright *upright) {
    return frame_array_push(&plan->uprights, upright) != NULL;
}

frame_wall_upright frame_wall_full(const frame_wall_plan *plan, frame_piece_kind kind, double from, int hole) {
    return (frame_wall_upright){from, plan->t, 0, plan->d, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, kind, hole, 0};
}

static int stand(frame_wall_plan *plan, frame_piece_kind kind, double from, int hole) {
    const frame_wall_upright upright = frame_wall_full(plan, kind, from, hole);
    return frame_wall_stand(plan, &upright);
}

/* A jack reaches up to the header's underside. */
static int stand_jack(frame_wall_plan *plan, double from, int hole) {
    frame_wall_upright jack = frame_wall_full(plan, FRAME_PIECE_JACK, from, hole);
    jack.high = FRAME_WALL_HOLE(plan, hole)->header_low;
    return frame_wall_stand(plan, &jack);
}

/* A stud turned flat against the inner face. */
static int stand_flat(frame_wall_plan *plan, double from) {
    const frame_wall_upright flat = {
        from, plan->d, plan->d - plan->t, plan->t, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, FRAME_PIECE_BACKING, -1, 1};
    return frame_wall_stand(plan, &flat);
}

static frame_status add_group(frame_wall_plan *plan, double from, double to, int hole, const char *what, int number) {
    const frame_wall_group group = {from, to, hole, what, number};
    return frame_array_push(&plan->groups, &group) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* An end; mirror: measured back from the far end. What meets the wall here wants an inch of backing beyond its face. */
static frame_status place_end(frame_wall_plan *plan, frame_wall_end end, double other, int mirror) {
    const double length = plan->in->length_in, t = plan->t, d = plan->d;
    double reach = t;
    int kept = stand(plan, FRAME_PIECE_STUD, mirror ? length - t : 0, -1);
    if (end == FRAME_WALL_END_CORNER) {
        const double from = fmax(t, other + 1 - d);
        reach = from + d;
        kept &= stand_flat(plan, mirror ? length - reach : from);
    } else if (end == FRAME_WALL_END_CORNER_THREE) {
        const double from = fmax(2 * t, other + 1 - t);
        reach = from + t;
        kept &= stand(plan, FRAME_PIECE_STUD, mirror ? length - reach : from, -1);
    }
    if (!kept) return FRAME_NO_MEMORY;
    return add_group(plan, mirror ? length - reach : 0, mirror ? length : reach, -1, NULL, 0);
}

static frame_status place_hole(frame_wall_plan *plan, size_t index) {
    const frame_wall_hole *hole = FRAME_WALL_HOLE(plan, index);
    const double t = plan->t;
    int kept = 1;
    for (int i = 0; i < hole->jacks; i++) {
        kept &= stand_jack(plan, hole->from - (i + 1) * t, (int)index);
        kept &= stand_jack(plan, hole->to + i * t, (int)index);
    }
    for (int i = hole->jacks; i < hole->jacks + hole->kings; i++) {
        kept &= stand(plan, FRAME_PIECE_KING, hole->from - (i + 1) * t, (int)index);
        kept &= stand(plan, FRAME_PIECE_KING, hole->to + i * t, (int)index);
    }
    const double beside = (hole->jacks + hole->kings) * t;
    if (!kept) return FRAME_NO_MEMORY;
    return add_group(plan, hole->from - beside, hole->to + beside, (int)index, "openings", hole->number - 1);
}

/* The studs of a channel stand where they give both sides of the partition at least 3/4 in to nail to. */
static frame_status place_crossing(frame_wall_plan *plan, const frame_wall_crossing *crossing, int number) {
    const double width = crossing->width_in == FRAME_NOT_GIVEN ? plan->d : crossing->width_in;
    const double centre = crossing->at_in + width / 2, half = fmax(plan->d / 2, width / 2 + 0.75 - plan->t);
    if (crossing->at_in + width > plan->in->length_in) {
        frame_fail_number(FRAME_IMPOSSIBLE, "at_in", crossing->at_in, "a place within the wall");
        return frame_fail_within("crossings[%d].", number);
    }
    if (crossing->backing == FRAME_WALL_BACKING_LADDER) return FRAME_OK;
    if (!stand_flat(plan, centre - plan->d / 2) || !stand(plan, FRAME_PIECE_STUD, centre - half - plan->t, -1) ||
        !stand(plan, FRAME_PIECE_STUD, centre + half, -1))
        return FRAME_NO_MEMORY;
    return add_group(plan, centre - half - plan->t, centre + half + plan->t, -1, "crossings", number);
}

static frame_status place_step(frame_wall_plan *plan, double at) {
    if (!stand(plan, FRAME_PIECE_STUD, at - plan->t, -1) || !stand(plan, FRAME_PIECE_STUD, at, -1))
        return FRAME_NO_MEMORY;
    return add_group(plan, at - plan->t, at + plan->t, -1, NULL, 0);
}

static int by_place(const void *a, const void *b) {
    const frame_wall_group *first = a, *second = b;
    if (first->from != second->from) return first->from < second->from ? -1 : 1;
    return (first->to > second->to) - (first->to < second->to);
}

/* Says of two stretches that run into each other which item to move, and by how much. */
static frame_status say_overlap(const frame_wall_group *first, const frame_wall_group *second) {
    const frame_wall_group *own = second->what ? second : first, *other = own == second ? first : second;
    char by[FRAME_TAPE_TEXT], valid[120];
    frame_inches_write(first->to - second->from, 16, by);
    if (!own->what)
        return frame_fail(FRAME_IMPOSSIBLE, "length_in", "", "longer by at least the overlap",
                          "length_in: the wall is too short: its ends, corners and steps run into each other by %s",
                          by);
    snprintf(valid, sizeof valid, "%s by at least %s", own == second ? "farther from the start" : "nearer to the start",
             by);
    char field[64];
    snprintf(field, sizeof field, "%s[%d].at_in", own->what, own->number);
    if (other->what)
        return frame_fail(FRAME_IMPOSSIBLE, field, "", valid,
                          "%s: there is no room for its studs beside %s[%d]: they overlap by %s; move it %s", field,
                          other->what, other->number, by, valid);
    return frame_fail(
        FRAME_IMPOSSIBLE, field, "", valid,
        "%s: there is no room for its studs beside the wall's end, corner or step: they overlap by %s; move it "
        "%s",
        field, by, valid);
}

static frame_status check_groups(frame_wall_plan *plan) {
    qsort(plan->groups.items, plan->groups.count, sizeof(frame_wall_group), by_place);
    for (size_t i = 1; i < plan->groups.count; i++) {
        const frame_wall_group *before = FRAME_WALL_GROUP(plan, i - 1), *here = FRAME_WALL_GROUP(plan, i);
        if (here->from < before->to - 1e-9) return say_overlap(before, here);
    }
    return FRAME_OK;
}

frame_status frame_wall_place_groups(frame_wall_plan *plan) {
    const frame_wall_in *in = plan->in;
    plan->groups.item_size = sizeof(frame_wall_group);
    plan->uprights.item_size = sizeof(frame_wall_upright);
    frame_status status = place_end(plan, in->start_end, plan->start_other, 0);
    if (!status) status = place_end(plan, in->end_end, plan->end_other, 1);
    for (size_t i = 0; !status && i < plan->holes.count; i++) status = place_hole(plan, i);
    for (size_t i = 0; !status && i < in->crossing_count; i++) {
        frame_wall_crossing crossing;
        frame_wall_crossing_item(in->crossings, i, &crossing);
        status = place_crossing(plan, &crossing, (int)i);
    }
    for (size_t i = 0; !status && i < plan->steps.count; i++)
        status = place_step(plan, FRAME_ITEM(frame_wall_step, plan->steps, i).at_in);
    return status ? status : check_groups(plan);
}
