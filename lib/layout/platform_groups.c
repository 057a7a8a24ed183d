/* What lies fixed among the joists, bay by bay: end joists, joists under walls, trimmers beside openings. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout/platform.h"
#include "tape/tape.h"

static int add_member(frame_platform *p, frame_piece_kind kind, double y, int bay, int hole) {
    const frame_platform_bay *of = FRAME_PLATFORM_BAY(p, bay);
    const frame_platform_member member = {y, of->from, of->to, kind, bay, hole};
    return frame_array_push(&p->members, &member) != NULL;
}

static int add_plies(frame_platform *p, frame_piece_kind kind, double y, int plies, int bay, int hole) {
    int kept = 1;
    for (int i = 0; i < plies; i++) kept &= add_member(p, kind, y + i * p->t, bay, hole);
    return kept;
}

static int add_group(frame_platform *p, double from, double to, int bay, int hole, const char *what, int index) {
    const frame_platform_group group = {from, to, bay, hole, what, index};
    return frame_array_push(&p->groups, &group) != NULL;
}

static int place_ends(frame_platform *p, int bay) {
    const double thick = p->end_plies * p->t;
    return add_plies(p, FRAME_PIECE_END_JOIST, 0, p->end_plies, bay, -1) &
           add_plies(p, FRAME_PIECE_END_JOIST, p->width - thick, p->end_plies, bay, -1) &
           add_group(p, 0, thick, bay, -1, NULL, 0) & add_group(p, p->width - thick, p->width, bay, -1, NULL, 0);
}

static int place_walls(frame_platform *p, int bay) {
    int kept = 1;
    for (size_t i = 0; i < p->walls.count; i++) {
        const frame_floor_wall *wall = &FRAME_ITEM(frame_floor_wall, p->walls, i);
        const double thick = wall->plies * p->t, from = wall->y_in - thick / 2;
        kept &= add_plies(p, FRAME_PIECE_DOUBLE, from, wall->plies, bay, -1);
        kept &= add_group(p, from, from + thick, bay, -1, "walls", (int)i);
    }
    return kept;
}

/* An opening belongs to the bay it lies in, with its headers. */
static frame_status bay_of(const frame_platform *p, const frame_platform_hole *hole, int *bay) {
    const double beside = hole->headers * p->t + p->gap;
    for (size_t i = 0; i < p->bays.count; i++) {
        const frame_platform_bay *of = FRAME_PLATFORM_BAY(p, i);
        const int near_end = hole->x <= of->from + 1e-9 && !of->joint_before;
        const int far_end = hole->x + hole->length >= of->to - 1e-9 && !of->joint_after;
        const double low = of->from + (of->joint_before ? p->lap / 2 : 0);
        const double high = of->to - (of->joint_after ? p->lap / 2 : 0);
        if ((near_end ? hole->x + 1e-9 >= of->from : hole->x - beside > low) &&
            (far_end ? hole->x + hole->length <= of->to + 1e-9 : hole->x + hole->length + beside < high)) {
            *bay = (int)i;
            return FRAME_OK;
        }
    }
    frame_fail_number(FRAME_IMPOSSIBLE, "x_in", hole->x,
                      "a place within the floor where the opening and its headers cross no joint of the joists");
    return frame_fail_within("%s[%d].", hole->what, hole->index);
}

static frame_status place_hole(frame_platform *p, size_t index) {
    const frame_platform_hole *hole = FRAME_PLATFORM_HOLE(p, index);
    const double beside = hole->trimmers * p->t;
    int bay = 0;
    const frame_status status = bay_of(p, hole, &bay);
    if (status) return status;
    const int kept =
        add_plies(p, FRAME_PIECE_TRIMMER, hole->y - beside, hole->trimmers, bay, (int)index) &
        add_plies(p, FRAME_PIECE_TRIMMER, hole->y + hole->width, hole->trimmers, bay, (int)index) &
        add_group(p, hole->y - beside, hole->y + hole->width + beside, bay, (int)index, hole->what, hole->index);
    return kept ? FRAME_OK : FRAME_NO_MEMORY;
}

static int by_bay(const void *a, const void *b) {
    const frame_platform_group *first = a, *second = b;
    if (first->bay != second->bay) return first->bay < second->bay ? -1 : 1;
    if (first->from != second->from) return first->from < second->from ? -1 : 1;
    return (first->to > second->to) - (first->to < second->to);
}

static frame_status say_overlap(const frame_platform_group *first, const frame_platform_group *second) {
    const frame_platform_group *own = second->what ? second : first;
    char by[FRAME_TAPE_TEXT], field[64], valid[96];
    frame_inches_write(first->to - second->from, 16, by);
    if (!own->what)
        return frame_fail(FRAME_IMPOSSIBLE, "width_in", "", "wider",
                          "width_in: the floor is too narrow for its end joists: they overlap by %s", by);
    snprintf(field, sizeof field, "%s[%d].y_in", own->what, own->index);
    snprintf(valid, sizeof valid, "%s by at least %s", own == second ? "more" : "less", by);
    return frame_fail(FRAME_IMPOSSIBLE, field, "", valid, "%s: its joists overlap those beside them by %s; move it: %s",
                      field, by, valid);
}

frame_status frame_platform_place_groups(frame_platform *p) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < p->bays.count; i++)
        if (!(place_ends(p, (int)i) & place_walls(p, (int)i))) return FRAME_NO_MEMORY;
    for (size_t i = 0; !status && i < p->holes.count; i++) status = place_hole(p, i);
    if (status) return status;
    qsort(p->groups.items, p->groups.count, sizeof(frame_platform_group), by_bay);
    for (size_t i = 1; i < p->groups.count; i++) {
        const frame_platform_group *before = FRAME_PLATFORM_GROUP(p, i - 1), *here = FRAME_PLATFORM_GROUP(p, i);
        if (before->bay == here->bay && here->from < before->to - 1e-9) return say_overlap(before, here);
    }
    return FRAME_OK;
}
