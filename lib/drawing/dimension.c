/* Dimensions: each finds a lane beside the view, the shorter the nearer, and is drawn there. */
#include <math.h>
#include <stdlib.h>

#include "drawing/plan.h"

#define LANE_FIRST 13.0 /* points from the view to the first dimension line */
#define LANE_AIR 3.0    /* between lanes */

/* A stretch of paper beside the view that a dimension has taken. */
typedef struct taken {
    frame_dimension_side side;
    double a_low, a_high, v_low, v_high;
} taken;

/* Raises the lane past the dimensions of this side that it would run into. Nonzero when it had to. */
static int pass_others(dimension_plan *plan, const frame_array *others) {
    const plan_footprint covers = plan_covers(plan);
    for (size_t i = 0; i < others->count; i++) {
        const taken *other = &FRAME_ITEM(taken, *others, i);
        if (other->side != plan->item->side || other->a_low > covers.a_high || other->a_high < covers.a_low) continue;
        if (other->v_low >= plan->lane + covers.above + LANE_AIR - 1e-6) continue;
        const double needed = other->v_high + LANE_AIR + covers.below;
        if (plan->lane >= needed - 1e-6) continue;
        plan->lane = needed;
        return 1;
    }
    return 0;
}

/* Nonzero when a text of the dimension would cover other lettering, or lines of the roles given. */
static int covers_something(const dimension_plan *plan, unsigned roles) {
    const drawing_sheet *sheet = plan->layout->sheet;
    for (size_t i = 0; i < plan->marks.count; i++) {
        const plan_mark *mark = &FRAME_ITEM(plan_mark, plan->marks, i);
        if (!mark->text) continue;
        const plane_box box = plan_text_box(plan, mark);
        if (sheet_covers_text(sheet, plan->layout->view, &box, 1)) return 1;
        if (roles && sheet_strokes_hit(sheet, plan->layout->view, roles, &box, NULL)) return 1;
    }
    return 0;
}

#define LINES (1u << SHEET_HEAVY | 1u << SHEET_MEASURE | 1u << SHEET_TICK)
#define TRIES_CLEAR 60 /* steps outward in search of a place clear of lines too */
#define STEP 4.0

static void find_lane(dimension_plan *plan, const frame_array *others) {
    double start = -HUGE_VAL;
    const plane_extent thing = plan->layout->thing;
    for (size_t i = 0; i < plan->marks.count; i++) start = fmax(start, FRAME_ITEM(plan_mark, plan->marks, i).foot);
    if (plan->item->side != FRAME_DIMENSION_ALONG && !plane_is_empty(&thing))
        start = fmax(start, plane_dot(plan->v.x + plan->v.y > 0 ? thing.high : thing.low, plan->v));
    plan->lane = start + LANE_FIRST;
    while (pass_others(plan, others)) continue;
    const double nearest = plan->lane;
    for (int i = 0; i < TRIES_CLEAR; i++, plan->lane += STEP) {
        while (pass_others(plan, others)) continue;
        if (!covers_something(plan, LINES)) return;
    }
    /* Lettering ends somewhere, so this does too. */
    for (plan->lane = nearest; covers_something(plan, 0) || pass_others(plan, others);) plan->lane += STEP;
}

static plane_vec place(const dimension_plan *plan, double a, double v) {
    return plane_mix(plan->u, a, plan->v, v);
}

static void measure_line(const dimension_plan *plan, plane_vec a, plane_vec b) {
    sheet_line(plan->layout->sheet, plan->layout->view, SHEET_MEASURE, FRAME_PEN_DIMENSION, a, b);
}

/* An end of a distance: a short stroke leaning right, shorter and lighter where marks crowd. */
static void tick(const dimension_plan *plan, size_t i) {
    const plan_mark *marks = plan->marks.items;
    double nearest = HUGE_VAL;
    if (i) nearest = marks[i].a - marks[i - 1].a;
    if (i + 1 < plan->marks.count) nearest = fmin(nearest, marks[i + 1].a - marks[i].a);
    const double half = fmax(1.2, fmin(2.4, nearest / 2));
    const plane_vec u = plan_readable(plan->u), lean = plane_mix(u, half, plane_left(u), half);
    const plane_vec at = place(plan, marks[i].a, plan->lane);
    sheet_line(plan->layout->sheet, plan->layout->view, SHEET_TICK, half < 2.4 ? FRAME_PEN_THIN : FRAME_PEN_OUTLINE,
               plane_minus(at, lean), plane_add(at, lean));
}

/* The hook of the tape: a ring. */
static void ring(const dimension_plan *plan, double a) {
    const plane_vec at = place(plan, a, plan->lane);
    sheet_shape_add(plan->layout->sheet,
                    (sheet_shape){.kind = SHEET_RING,
                                  .role = SHEET_TICK,
                                  .pen = FRAME_PEN_OUTLINE,
                                  .view = plan->layout->view,
                                  .radius = 2.4},
                    &at, 1);
}

/* From the point measured past the dimension line and, in a chain, on to the text. */
static void extension(const dimension_plan *plan, const plan_mark *mark) {
    plane_vec points[4] = {place(plan, mark->a, mark->foot + PLAN_AIR), place(plan, mark->a, plan->lane + PLAN_STUB)};
    size_t count = 2;
    if (plan->item->kind == DRAWING_RUNNING && plan->bend > 0)
        points[count++] = place(plan, mark->text_a, plan->lane + PLAN_STUB + plan->bend);
    if (plan->item->kind == DRAWING_RUNNING && mark->row)
        points[count++] = place(plan, mark->text_a, plan->lane + PLAN_STUB + plan->bend + mark->row * plan->row_step);
    sheet_shape_add(
        plan->layout->sheet,
        (sheet_shape){
            .kind = SHEET_LINE, .role = SHEET_MEASURE, .pen = FRAME_PEN_DIMENSION, .view = plan->layout->view},
        points, count);
}

static void write_text(const dimension_plan *plan, const plan_mark *mark) {
    drawing_layout *layout = plan->layout;
    const plane_box box = plan_text_box(plan, mark);
    frame_anchor anchor = FRAME_ANCHOR_MIDDLE;
    if (plan->mode == PLAN_ACROSS) anchor = plane_dot(box.along, plan->v) > 0 ? FRAME_ANCHOR_START : FRAME_ANCHOR_END;
    metrics_set(&layout->block, mark->text, layout->em, HUGE_VAL);
    sheet_write(layout->sheet, layout->view, &layout->block, &box, anchor);
}

static void draw(const dimension_plan *plan) {
    const plan_mark *marks = plan->marks.items;
    const size_t last = plan->marks.count - 1;
    double from = marks[0].a, to = marks[last].a;
    for (size_t i = 0; i <= last; i++) {
        extension(plan, &marks[i]);
        if (plan->item->kind == DRAWING_RUNNING && marks[i].a == plan->hook)
            ring(plan, marks[i].a);
        else
            tick(plan, i);
        if (plan->mode == PLAN_BESIDE && marks[i].text) {
            from = fmin(from, marks[i].text_a);
            to = fmax(to, marks[i].text_a);
        }
        if (marks[i].text) write_text(plan, &marks[i]);
    }
    measure_line(plan, place(plan, from, plan->lane), place(plan, to, plan->lane));
}

typedef struct waiting {
    const drawing_item *item;
    double length;
    size_t order;
} waiting;

static int shorter_first(const void *a, const void *b) {
    const waiting *x = a, *y = b;
    const int x_runs = x->item->kind == DRAWING_RUNNING, y_runs = y->item->kind == DRAWING_RUNNING;
    if (x->length != y->length) return x->length > y->length ? 1 : -1;
    if (x_runs != y_runs) return y_runs - x_runs; /* a chain before the whole it divides */
    return x->order > y->order ? 1 : -1;
}

static void gather(drawing_layout *layout, unsigned sides, dimension_plan *plan, frame_array *list) {
    const frame_drawing *drawing = layout->drawing;
    for (size_t i = 0; i < drawing->items.count && !layout->sheet->status; i++) {
        const drawing_item *item = &FRAME_ITEM(drawing_item, drawing->items, i);
        if (item->view != layout->view || (item->kind != DRAWING_RUNNING && item->kind != DRAWING_DIMENSION)) continue;
        if (!(sides >> item->side & 1u)) continue;
        plan_dimension(plan, layout, item);
        if (layout->sheet->status) return;
        const plan_mark *marks = plan->marks.items;
        const waiting one = {item, marks[plan->marks.count - 1].a - marks[0].a, i};
        if (!frame_array_push(list, &one)) layout->sheet->status = FRAME_NO_MEMORY;
    }
    if (list->count) qsort(list->items, list->count, sizeof(waiting), shorter_first);
}

void layout_dimensions(drawing_layout *layout, unsigned sides) {
    dimension_plan plan = {.layout = layout};
    frame_array list = {.item_size = sizeof(waiting)}, others = {.item_size = sizeof(taken)};
    gather(layout, sides, &plan, &list);
    for (size_t i = 0; i < list.count && !layout->sheet->status; i++) {
        plan_dimension(&plan, layout, FRAME_ITEM(waiting, list, i).item);
        if (layout->sheet->status) break;
        find_lane(&plan, &others);
        draw(&plan);
        const plan_footprint covers = plan_covers(&plan);
        const taken mine = {plan.item->side, covers.a_low, covers.a_high, plan.lane - covers.below,
                            plan.lane + covers.above};
        /* Sloping dimensions do not share an axis; they keep clear of each other's texts and lines instead. */
        if (mine.side != FRAME_DIMENSION_ALONG && !frame_array_push(&others, &mine))
            layout->sheet->status = FRAME_NO_MEMORY;
    }
    frame_array_give(&plan.marks);
    frame_array_give(&list);
    frame_array_give(&others);
}
