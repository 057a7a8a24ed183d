/* Labels: texts with a leader, placed where they cover nothing. */
#include <math.h>

#include "drawing/layout.h"

/* One place a label could take. */
typedef struct candidate {
    plane_box box;
    plane_vec elbow, end; /* the leader goes from the target by the elbow to the end, beside the text */
    double cost;
} candidate;

#define SHOULDER 6.0
#define AIR 2.0
#define DIRECTIONS 22

/* Up and to a side is what readers expect; straight up or down where there is no room at the sides. */
static const double directions[DIRECTIONS] = {45,   135, -45, -135, 60,   120, -60, -120, 30,   150, -30,
                                              -150, 75,  105, -75,  -105, 15,  165, -15,  -165, 90,  -90};

/* A text beside its leader, or, straight above or below, centred on it as far as the paper allows. */
static candidate candidate_at(const drawing_layout *layout, plane_vec target, double degrees, double distance) {
    const metrics_block *block = &layout->block;
    const plane_vec out = plane_direction(degrees);
    candidate one = {.elbow = plane_add(target, plane_times(out, distance))};
    plane_vec centre;
    if (out.x == 0) {
        const double half = block->width / 2, low = layout->left + half, high = layout->right - half;
        centre.x = low > high ? (layout->left + layout->right) / 2 : fmin(fmax(target.x, low), high);
        centre.y = one.elbow.y + out.y * (AIR + block->height / 2);
        one.end = one.elbow;
    } else {
        const double side = out.x > 0 ? 1 : -1;
        one.end = plane_at(one.elbow.x + side * SHOULDER, one.elbow.y);
        centre = plane_at(one.end.x + side * (AIR + block->width / 2), one.elbow.y);
    }
    one.box = sheet_box(block, centre, plane_at(1, 0));
    return one;
}

static int leader_hits(const candidate *one, plane_vec target, const plane_box *box) {
    return plane_box_hit(box, target, one->elbow) || plane_box_hit(box, one->elbow, one->end);
}

/* How far a point lies from a segment. */
static double distance_from(plane_vec point, plane_vec a, plane_vec b) {
    const plane_vec ab = plane_minus(b, a), ap = plane_minus(point, a);
    const double square = plane_dot(ab, ab), t = square > 0 ? fmin(1, fmax(0, plane_dot(ap, ab) / square)) : 0;
    const plane_vec apart = plane_minus(ap, plane_times(ab, t));
    return sqrt(plane_dot(apart, apart));
}

/* Two leaders that run together for a while could not be told apart. */
static int runs_along(plane_vec target, plane_vec elbow, const plane_vec *other) {
    const plane_vec mine = plane_minus(elbow, target), its = plane_minus(other[1], other[0]);
    if (fabs(plane_cross(mine, its)) >= 0.12 * sqrt(plane_dot(mine, mine) * plane_dot(its, its))) return 0;
    return distance_from(plane_between(other[0], other[1], 0.5), target, elbow) < 3 ||
           distance_from(other[1], target, elbow) < 3 || distance_from(elbow, other[0], other[1]) < 3;
}

/* A leader that passes over the point of another label would seem to belong to it. */
static double points_passed_cost(const drawing_layout *layout, const candidate *one, plane_vec target) {
    const frame_drawing *drawing = layout->drawing;
    double cost = 0;
    for (size_t i = 0; i < drawing->items.count; i++) {
        const drawing_item *item = &FRAME_ITEM(drawing_item, drawing->items, i);
        if (item->view != layout->view || item->kind != DRAWING_LABEL) continue;
        const drawing_point *point = layout_points(layout, item);
        const plane_vec at = layout_map(layout, point->x, point->y), apart = plane_minus(at, target);
        if (plane_dot(apart, apart) > 1 && distance_from(at, target, one->elbow) < 3) cost += 60;
    }
    return cost;
}

/* What the leader crosses. */
static double crossings_cost(const drawing_layout *layout, const candidate *one, plane_vec target) {
    static const double costs[] = {0, 3, 1, 0, 10, 15, 90}; /* by sheet_role */
    const drawing_sheet *sheet = layout->sheet;
    const plane_vec start = plane_between(target, one->elbow, 0.04);
    plane_extent around = plane_nothing();
    double cost = 0;
    plane_include(&around, target);
    plane_include(&around, one->elbow);
    plane_include(&around, one->end);
    for (size_t i = 0; i < sheet->shapes.count; i++) {
        const sheet_shape *shape = &FRAME_ITEM(sheet_shape, sheet->shapes, i);
        const plane_vec *points = (const plane_vec *)sheet->points.items + shape->first;
        if (shape->view != layout->view || shape->kind > SHEET_LOOP || costs[shape->role] == 0) continue;
        if (!plane_extents_meet(&shape->extent, &around)) continue;
        if (shape->role == SHEET_LEADER && runs_along(target, one->elbow, points)) cost += costs[SHEET_LEADER];
        for (size_t k = 0; k + (shape->kind == SHEET_LINE) < shape->count; k++) {
            const plane_vec a = points[k], b = points[(k + 1) % shape->count];
            if (plane_segments_cross(start, one->elbow, a, b)) cost += costs[shape->role];
            if (plane_segments_cross(one->elbow, one->end, a, b)) cost += costs[shape->role];
        }
    }
    return cost;
}

/* What the text would stand on. */
static double lines_cost(const drawing_layout *layout, const candidate *one) {
    const drawing_sheet *sheet = layout->sheet;
    const plane_box box = plane_grown(one->box, AIR);
    size_t hits[SHEET_ROLES];
    sheet_strokes_hit(sheet, layout->view, SHEET_ALL_ROLES, &box, hits);
    return 900 * fmin(3, (double)(hits[SHEET_HEAVY] + hits[SHEET_TICK])) +
           1200 * fmin(3, (double)(hits[SHEET_MEASURE] + hits[SHEET_LEADER])) +
           400 * fmin(2, (double)hits[SHEET_LIGHT]) + (hits[SHEET_HATCH] ? 30 : 0);
}

/* Nonzero when the place is free of lettering and on the paper; its cost is then known. cheapest: no need to look
 * further into places that cost more. */
static int judge(const drawing_layout *layout, candidate *one, plane_vec target, double base, double cheapest) {
    const plane_box *box = &one->box, around = plane_grown(*box, 3);
    const int wide = layout->block.width > layout->right - layout->left;
    one->cost = base;
    if (base >= cheapest) return 0;
    if (!wide && (box->centre.x - box->half_length < layout->left - 0.01 ||
                  box->centre.x + box->half_length > layout->right + 0.01))
        return 0;
    if (plane_box_hit(&around, target, target) || sheet_covers_text(layout->sheet, layout->view, box, AIR)) return 0;
    for (size_t i = 0; i < layout->sheet->blocks.count; i++) {
        const sheet_block *block = &FRAME_ITEM(sheet_block, layout->sheet->blocks, i);
        if (block->view == layout->view && leader_hits(one, target, &block->box)) one->cost += 300;
    }
    if (one->cost < cheapest) one->cost += points_passed_cost(layout, one, target);
    if (one->cost < cheapest) one->cost += crossings_cost(layout, one, target);
    if (one->cost < cheapest) one->cost += lines_cost(layout, one);
    return one->cost < cheapest;
}

/* Rings of places around the target, until no further ring can be better. Beyond all lettering every place is free, so
 * the search ends. */
static candidate find_place(const drawing_layout *layout, plane_vec target) {
    candidate best = {.cost = HUGE_VAL};
    for (double distance = 13; distance * 0.5 < best.cost; distance += fmax(5, distance * 0.06))
        for (int i = 0; i < DIRECTIONS; i++) {
            candidate one = candidate_at(layout, target, directions[i], distance);
            if (judge(layout, &one, target, distance * 0.5 + i * 0.8, best.cost)) best = one;
        }
    return best;
}

void layout_callout(drawing_layout *layout, plane_vec target) {
    drawing_sheet *sheet = layout->sheet;
    if (layout->block.status) sheet->status = layout->block.status;
    if (sheet->status) return;
    const candidate place = find_place(layout, target);
    const plane_vec leader[] = {target, place.elbow, place.end};
    const int straight = place.elbow.x == target.x, left = place.end.x < place.elbow.x;
    const frame_anchor anchor = straight ? FRAME_ANCHOR_MIDDLE : left ? FRAME_ANCHOR_END : FRAME_ANCHOR_START;
    sheet_shape shape = {.kind = SHEET_LINE, .role = SHEET_LEADER, .pen = FRAME_PEN_DIMENSION, .view = layout->view};
    sheet_shape_add(sheet, shape, leader, straight ? 2 : 3);
    const plane_box point = {target, {1, 0}, 1.4, 1.4};
    shape = (sheet_shape){.kind = SHEET_DOT, .role = SHEET_LEADER, .view = layout->view, .radius = 1.4};
    if (!sheet_covers_text(sheet, layout->view, &point, 0)) sheet_shape_add(sheet, shape, &target, 1);
    sheet_write(sheet, layout->view, &layout->block, &place.box, anchor);
}

#define LABEL_WIDEST 0.45 /* of the paper's width; longer labels are broken at spaces */

void layout_labels(drawing_layout *layout) {
    const frame_drawing *drawing = layout->drawing;
    for (size_t i = 0; i < drawing->items.count && !layout->sheet->status; i++) {
        const drawing_item *item = &FRAME_ITEM(drawing_item, drawing->items, i);
        if (item->view != layout->view || item->kind != DRAWING_LABEL) continue;
        const drawing_point *point = layout_points(layout, item);
        metrics_set(&layout->block, item->text, layout->em, LABEL_WIDEST * drawing->width_in * 72);
        layout_callout(layout, layout_map(layout, point->x, point->y));
    }
}
