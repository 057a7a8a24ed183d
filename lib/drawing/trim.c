/* Lines and lettering: which lines a text would cover, and cutting light lines where texts stand. */
#include "drawing/sheet.h"

#include <math.h>

static int shape_hit(const drawing_sheet *sheet, const sheet_shape *shape, const plane_box *box) {
    const plane_vec *points = (const plane_vec *)sheet->points.items + shape->first;
    if (shape->kind == SHEET_BLANK) return 0;
    if (shape->radius > 0) {
        const plane_box grown = plane_grown(*box, shape->radius);
        return plane_box_hit(&grown, points[0], points[0]);
    }
    for (size_t k = 0; k + (shape->kind == SHEET_LINE) < shape->count; k++)
        if (plane_box_hit(box, points[k], points[(k + 1) % shape->count])) return 1;
    return shape->kind == SHEET_BLACK && plane_inside(box->centre, points, shape->count);
}

size_t sheet_strokes_hit(const drawing_sheet *sheet, size_t view, unsigned roles, const plane_box *box, size_t *hits) {
    plane_extent around = plane_nothing();
    size_t sum = 0;
    plane_include_box(&around, box);
    for (size_t i = 0; hits && i < SHEET_ROLES; i++) hits[i] = 0;
    for (size_t i = 0; i < sheet->shapes.count; i++) {
        const sheet_shape *shape = &FRAME_ITEM(sheet_shape, sheet->shapes, i);
        if (shape->view != view || !(roles >> shape->role & 1u) || !plane_extents_meet(&shape->extent, &around))
            continue;
        if (!shape_hit(sheet, shape, box)) continue;
        if (hits) hits[shape->role]++;
        sum++;
    }
    return sum;
}

/* The stretch of a segment that a box covers; nothing when from >= to. The box is convex, so it is one stretch. */
static void covered(const plane_box *box, plane_vec a, plane_vec b, double *from, double *to) {
    const plane_vec axes[] = {box->along, plane_left(box->along)};
    const double half[] = {box->half_length, box->half_height};
    *from = 0;
    *to = 1;
    for (int i = 0; i < 2; i++) {
        const double start = plane_dot(plane_minus(a, box->centre), axes[i]),
                     way = plane_dot(plane_minus(b, a), axes[i]);
        if (fabs(way) < 1e-12) {
            if (fabs(start) >= half[i]) *to = -1;
            continue;
        }
        const double one = (-half[i] - start) / way, two = (half[i] - start) / way;
        *from = fmax(*from, fmin(one, two));
        *to = fmin(*to, fmax(one, two));
    }
}

typedef struct stretch {
    double from, to;
} stretch;

/* The stretches of a segment under the view's texts, in order and joined. */
static void find_covered(drawing_sheet *sheet, size_t view, double gap, plane_vec a, plane_vec b, frame_array *found) {
    found->count = 0;
    for (size_t i = 0; i < sheet->blocks.count; i++) {
        const sheet_block *block = &FRAME_ITEM(sheet_block, sheet->blocks, i);
        const plane_box box = plane_grown(block->box, gap);
        stretch under;
        if (block->view != view || !plane_box_hit(&box, a, b)) continue;
        covered(&box, a, b, &under.from, &under.to);
        if (under.from >= under.to) continue;
        if (!frame_array_push(found, &under)) {
            sheet->status = FRAME_NO_MEMORY;
            return;
        }
        stretch *list = found->items;
        for (size_t k = found->count - 1; k && list[k - 1].from > list[k].from; k--) {
            const stretch other = list[k];
            list[k] = list[k - 1];
            list[k - 1] = other;
        }
    }
}

typedef struct trimming {
    drawing_sheet *sheet;
    sheet_shape shape;
    frame_array run, found; /* plane_vec, stretch */
} trimming;

static void end_run(trimming *work) {
    if (work->run.count > 1) sheet_shape_add(work->sheet, work->shape, work->run.items, work->run.count);
    work->run.count = 0;
}

static void step(trimming *work, plane_vec to) {
    if (!frame_array_push(&work->run, &to)) work->sheet->status = FRAME_NO_MEMORY;
}

/* Walks one segment, ending the run where a text begins and starting another where it ends. */
static void walk(trimming *work, plane_vec a, plane_vec b) {
    double done = 0;
    if (!work->run.count) step(work, a);
    for (size_t i = 0; i < work->found.count; i++) {
        const stretch under = FRAME_ITEM(stretch, work->found, i);
        if (under.to <= done) continue;
        if (under.from > done) step(work, plane_between(a, b, under.from));
        end_run(work);
        done = under.to;
        if (done < 1) step(work, plane_between(a, b, done));
    }
    if (done < 1) step(work, b);
}

static int gives_way(const sheet_shape *shape, size_t view) {
    return shape->view == view && shape->kind <= SHEET_LOOP && shape->role != SHEET_HEAVY && shape->role != SHEET_TICK;
}

static int under_text(trimming *work, size_t view, double gap) {
    const sheet_shape *shape = &work->shape;
    for (size_t k = 0; k + (shape->kind == SHEET_LINE) < shape->count; k++) {
        const plane_vec *points = (const plane_vec *)work->sheet->points.items + shape->first;
        find_covered(work->sheet, view, gap, points[k], points[(k + 1) % shape->count], &work->found);
        if (work->found.count) return 1;
    }
    return 0;
}

/* Adds the pieces of a shape that texts leave over. */
static void cut_up(trimming *work, size_t view, double gap) {
    const sheet_shape whole = work->shape;
    work->shape.kind = SHEET_LINE;
    for (size_t k = 0; k + (whole.kind == SHEET_LINE) < whole.count && !work->sheet->status; k++) {
        const plane_vec a = FRAME_ITEM(plane_vec, work->sheet->points, whole.first + k);
        const plane_vec b = FRAME_ITEM(plane_vec, work->sheet->points, whole.first + (k + 1) % whole.count);
        find_covered(work->sheet, view, gap, a, b, &work->found);
        walk(work, a, b);
    }
    end_run(work);
}

/* The list is made anew, so that the pieces stand where the shape stood: what hides what depends on the order. */
void sheet_trim(drawing_sheet *sheet, size_t view) {
    trimming work = {.sheet = sheet, .run = {.item_size = sizeof(plane_vec)}, .found = {.item_size = sizeof(stretch)}};
    frame_array before = sheet->shapes;
    sheet->shapes = (frame_array){.item_size = sizeof(sheet_shape)};
    for (size_t i = 0; i < before.count && !sheet->status; i++) {
        work.shape = FRAME_ITEM(sheet_shape, before, i);
        /* A stroke of a hatch beside a text would look like a dash that belongs to it. */
        const double gap = work.shape.role == SHEET_HATCH ? 3.5 : 1.5;
        if (gives_way(&work.shape, view) && under_text(&work, view, gap))
            cut_up(&work, view, gap);
        else if (!frame_array_push(&sheet->shapes, &work.shape))
            sheet->status = FRAME_NO_MEMORY;
    }
    frame_array_give(&before);
    frame_array_give(&work.run);
    frame_array_give(&work.found);
}
