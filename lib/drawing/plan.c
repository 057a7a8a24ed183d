/* How a dimension's texts are written: where they fit. */
#include "drawing/plan.h"

#include <math.h>
#include <stdlib.h>

static void axes(dimension_plan *plan) {
    static const plane_vec away[] = {{0, 0}, {0, 1}, {0, -1}, {-1, 0}, {1, 0}};
    const drawing_item *item = plan->item;
    if (item->side != FRAME_DIMENSION_ALONG) {
        plan->v = away[item->side];
        plan->u = plan->v.x == 0 ? plane_at(1, 0) : plane_at(0, 1);
        return;
    }
    const drawing_point *points = layout_points(plan->layout, item), first = points[0], last = points[item->count - 1];
    const plane_vec way =
        plane_minus(layout_map(plan->layout, last.x, last.y), layout_map(plan->layout, first.x, first.y));
    const double length = sqrt(plane_dot(way, way));
    plan->u = length > 0 ? plane_times(way, 1 / length) : plane_at(1, 0);
    plan->v = plane_left(plan->u);
}

static int by_place(const void *a, const void *b) {
    const plan_mark *x = a, *y = b;
    if (x->a != y->a) return x->a > y->a ? 1 : -1;
    return x->foot == y->foot ? 0 : x->foot > y->foot ? 1 : -1;
}

static void read_marks(dimension_plan *plan) {
    drawing_layout *layout = plan->layout;
    const drawing_point *points = layout_points(layout, plan->item);
    plan->marks.count = 0;
    for (size_t i = 0; i < plan->item->count; i++) {
        const plane_vec at = layout_map(layout, points[i].x, points[i].y);
        plan_mark mark = {.a = plane_dot(at, plan->u), .foot = plane_dot(at, plan->v), .text = points[i].text};
        mark.text_a = mark.a;
        if (!i) plan->hook = mark.a;
        if (mark.text) {
            metrics_set(&layout->block, mark.text, layout->em, HUGE_VAL);
            mark.width = layout->block.width;
            mark.height = layout->block.height;
        }
        if (!frame_array_push(&plan->marks, &mark)) layout->sheet->status = FRAME_NO_MEMORY;
    }
    if (plan->marks.count) qsort(plan->marks.items, plan->marks.count, sizeof(plan_mark), by_place);
}

/* One distance, one text: in the line where it fits, else outside an end, else over the line; beside a view, square to
 * the line. */
static void plan_single(dimension_plan *plan) {
    plan_mark *low = &FRAME_ITEM(plan_mark, plan->marks, 0), *high = &FRAME_ITEM(plan_mark, plan->marks, 1);
    plan_mark *named = low->text ? low : high;
    const double middle = (low->a + high->a) / 2, half = named->width / 2, outside = half + 2 * PLAN_STUB;
    const double left = plan->layout->left + half, right = plan->layout->right - half;
    named->text_a = middle;
    if (high->a - low->a >= named->width + 10) {
        plan->mode = PLAN_WITHIN;
    } else if (plan->u.y != 0) {
        plan->mode = PLAN_ACROSS;
    } else if (high->a + outside <= right || low->a - outside >= left) {
        plan->mode = PLAN_BESIDE;
        named->text_a = high->a + outside <= right ? high->a + outside : low->a - outside;
    } else {
        plan->mode = PLAN_OVER;
        named->text_a = fmax(left, fmin(right, middle));
    }
}

/* Spreads the texts of a chain; gives the furthest any of them moves, or a negative number when they do not fit. */
static double spread(dimension_plan *plan, int across, double pitch) {
    plan_mark *marks = plan->marks.items;
    const size_t count = plan->marks.count;
    const int bounded = plan->u.y == 0;
    double *work = frame_take(2 * count * sizeof *work), total = 0, furthest = 0;
    if (!work) {
        plan->layout->sheet->status = FRAME_NO_MEMORY;
        return 0;
    }
    const double first = (across ? pitch : marks[0].width) / 2, last = (across ? pitch : marks[count - 1].width) / 2;
    for (size_t i = 0; i < count; i++) {
        work[i] = marks[i].a;
        work[count + i] = across || i + 1 == count ? pitch : (marks[i].width + marks[i + 1].width) / 2 + 5;
        if (i + 1 < count) total += work[count + i];
    }
    const double low = bounded ? plan->layout->left + first : -1e9, high = bounded ? plan->layout->right - last : 1e9;
    if (layout_spread(work, work + count, count, low, high)) plan->layout->sheet->status = FRAME_NO_MEMORY;
    for (size_t i = 0; i < count; i++) {
        marks[i].text_a = work[i];
        furthest = fmax(furthest, fabs(work[i] - marks[i].a));
    }
    frame_give(work);
    return total > high - low ? -1 : furthest;
}

/* The extension lines slant over to spread texts; the further, the higher. */
static double bend_for(double furthest) {
    return furthest < 0.3 ? 0 : fmin(16, fmax(5, furthest * 0.4));
}

/* In two rows, outer texts' lines pass between the inner texts. */
static void two_rows(dimension_plan *plan, double pitch) {
    plan_mark *marks = plan->marks.items;
    plan->bend = bend_for(fabs(spread(plan, 1, pitch / 2 + 1.5)));
    for (size_t i = 0; i < plan->marks.count; i++) {
        marks[i].row = (int)(i % 2);
        if (!marks[i].row) plan->row_step = fmax(plan->row_step, marks[i].width + 2 * PLAN_STUB);
    }
}

#define FURTHEST_LEVEL 40.0 /* points a level text may be moved before texts are turned */

/* Many distances: level texts where they fit, else turned, else in two rows. */
static void plan_running(dimension_plan *plan) {
    double pitch = METRICS_LINE * plan->layout->em, furthest;
    plan->bend = plan->row_step = 0;
    for (size_t i = 0; i < plan->marks.count; i++) pitch = fmax(pitch, FRAME_ITEM(plan_mark, plan->marks, i).height);
    plan->mode = PLAN_OVER;
    if (plan->u.x != 0) {
        furthest = spread(plan, 0, pitch);
        plan->bend = bend_for(furthest);
        if (furthest >= 0 && furthest <= FURTHEST_LEVEL) return;
    }
    plan->mode = PLAN_ACROSS;
    furthest = spread(plan, 1, pitch + 0.5);
    plan->bend = bend_for(furthest);
    if (furthest < 0) two_rows(plan, pitch + 0.5);
}

void plan_dimension(dimension_plan *plan, drawing_layout *layout, const drawing_item *item) {
    plan->layout = layout;
    plan->item = item;
    plan->marks.item_size = sizeof(plan_mark);
    plan->bend = plan->row_step = 0;
    axes(plan);
    read_marks(plan);
    if (layout->sheet->status) return;
    if (item->kind == DRAWING_RUNNING)
        plan_running(plan);
    else
        plan_single(plan);
}

/* Lettering is read from below or from the right. */
plane_vec plan_readable(plane_vec way) {
    const int turned = way.x < -1e-9 || (fabs(way.x) <= 1e-9 && way.y < 0);
    return turned ? plane_times(way, -1) : way;
}

plane_box plan_text_box(const dimension_plan *plan, const plan_mark *mark) {
    const int across = plan->mode == PLAN_ACROSS;
    double v = plan->lane;
    if (plan->mode >= PLAN_OVER) {
        const double half = (across ? mark->width : mark->height) / 2;
        v += PLAN_STUB + plan->bend + mark->row * plan->row_step + half + (across ? PLAN_AIR : 0);
    }
    return (plane_box){plane_mix(plan->u, mark->text_a, plan->v, v), plan_readable(across ? plan->v : plan->u),
                       mark->width / 2, mark->height / 2};
}

plan_footprint plan_covers(const dimension_plan *plan) {
    const plan_mark *marks = plan->marks.items;
    plan_footprint covers = {marks[0].a - 2, marks[plan->marks.count - 1].a + 2, PLAN_STUB, PLAN_STUB};
    for (size_t i = 0; i < plan->marks.count; i++) {
        if (!marks[i].text) continue;
        const plane_box box = plan_text_box(plan, &marks[i]);
        const double a = plane_dot(box.centre, plan->u), half_a = plane_reach(&box, plan->u);
        const double v = plane_dot(box.centre, plan->v) - plan->lane, half_v = plane_reach(&box, plan->v);
        covers.a_low = fmin(covers.a_low, a - half_a);
        covers.a_high = fmax(covers.a_high, a + half_a);
        covers.below = fmax(covers.below, half_v - v);
        covers.above = fmax(covers.above, v + half_v);
    }
    return covers;
}
