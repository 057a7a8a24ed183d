/* The laid-out picture: adding to it, measuring it. */
#include "drawing/sheet.h"

#include <math.h>
#include <string.h>

void sheet_begin(drawing_sheet *sheet) {
    memset(sheet, 0, sizeof *sheet);
    sheet->shapes.item_size = sizeof(sheet_shape);
    sheet->points.item_size = sizeof(plane_vec);
    sheet->texts.item_size = sizeof(sheet_text);
    sheet->blocks.item_size = sizeof(sheet_block);
}

void sheet_clear(drawing_sheet *sheet) {
    sheet->shapes.count = sheet->points.count = sheet->texts.count = sheet->blocks.count = 0;
}

void sheet_end(drawing_sheet *sheet) {
    frame_array_give(&sheet->shapes);
    frame_array_give(&sheet->points);
    frame_array_give(&sheet->texts);
    frame_array_give(&sheet->blocks);
}

void sheet_shape_add(drawing_sheet *sheet, sheet_shape shape, const plane_vec *points, size_t count) {
    shape.first = sheet->points.count;
    shape.count = count;
    if (sheet->status || !count) return;
    shape.extent = plane_nothing();
    for (size_t k = 0; k < count; k++) {
        plane_include(&shape.extent, plane_at(points[k].x - shape.radius, points[k].y - shape.radius));
        plane_include(&shape.extent, plane_at(points[k].x + shape.radius, points[k].y + shape.radius));
    }
    if (frame_array_reserve(&sheet->points, shape.first + count) || !frame_array_push(&sheet->shapes, &shape)) {
        sheet->status = FRAME_NO_MEMORY;
        return;
    }
    memcpy((plane_vec *)sheet->points.items + shape.first, points, count * sizeof *points);
    sheet->points.count += count;
}

void sheet_line(drawing_sheet *sheet, size_t view, sheet_role role, frame_pen pen, plane_vec a, plane_vec b) {
    const plane_vec ends[] = {a, b};
    sheet_shape_add(sheet, (sheet_shape){.kind = SHEET_LINE, .role = role, .pen = pen, .view = view}, ends, 2);
}

plane_box sheet_box(const metrics_block *block, plane_vec centre, plane_vec along) {
    return (plane_box){centre, along, block->width / 2, block->height / 2};
}

static double degrees_of(plane_vec along) {
    if (along.y == 0) return along.x < 0 ? 180 : 0;
    if (along.x == 0) return along.y < 0 ? -90 : 90;
    return atan2(along.y, along.x) * (180 / 3.14159265358979323846);
}

void sheet_write(drawing_sheet *sheet, size_t view, const metrics_block *block, const plane_box *box,
                 frame_anchor anchor) {
    const sheet_block kept = {*box, view};
    const plane_vec up = plane_left(box->along);
    const double x = anchor == FRAME_ANCHOR_START ? -block->width / 2
                     : anchor == FRAME_ANCHOR_END ? block->width / 2
                                                  : 0;
    if (block->status) sheet->status = block->status;
    if (sheet->status) return;
    if (!frame_array_push(&sheet->blocks, &kept)) sheet->status = FRAME_NO_MEMORY;
    for (size_t i = 0; i < block->lines.count && !sheet->status; i++) {
        const metrics_line *line = &FRAME_ITEM(metrics_line, block->lines, i);
        const double y = block->height / 2 - ((double)i * METRICS_LINE + METRICS_RISE) * block->points;
        const sheet_text text = {.at = plane_add(box->centre, plane_mix(box->along, x, up, y)),
                                 .along = box->along,
                                 .angle_deg = degrees_of(box->along),
                                 .points = block->points,
                                 .anchor = anchor,
                                 .chars = line->chars,
                                 .length = line->length,
                                 .view = view,
                                 .block = sheet->blocks.count - 1};
        if (line->length && !frame_array_push(&sheet->texts, &text)) sheet->status = FRAME_NO_MEMORY;
    }
}

plane_box sheet_text_box(const sheet_text *text) {
    const double width = metrics_width(text->chars, text->length, text->points);
    const double x = text->anchor == FRAME_ANCHOR_START ? width / 2 : text->anchor == FRAME_ANCHOR_END ? -width / 2 : 0;
    const double y = (METRICS_RISE - METRICS_FALL) / 2 * text->points;
    return (plane_box){plane_add(text->at, plane_mix(text->along, x, plane_left(text->along), y)), text->along,
                       width / 2, METRICS_LINE / 2 * text->points};
}

double sheet_pen_width(frame_pen pen) {
    /* cut, outline, thin, hidden, centre, dimension, hatch: steps that are told apart in print and on a telephone */
    static const double widths[] = {0, 1.7, 1.1, 0.6, 0.7, 0.5, 0.45, 0.3};
    return widths[pen];
}

plane_extent sheet_extent(const drawing_sheet *sheet, size_t view, unsigned roles, int with_texts) {
    plane_extent extent = plane_nothing();
    for (size_t i = 0; i < sheet->shapes.count; i++) {
        const sheet_shape *shape = &FRAME_ITEM(sheet_shape, sheet->shapes, i);
        if (shape->view != view || !(roles >> shape->role & 1u)) continue;
        const double pen = shape->pen ? sheet_pen_width(shape->pen) / 2 : 0;
        plane_include(&extent, plane_at(shape->extent.low.x - pen, shape->extent.low.y - pen));
        plane_include(&extent, plane_at(shape->extent.high.x + pen, shape->extent.high.y + pen));
    }
    for (size_t i = 0; with_texts && i < sheet->blocks.count; i++)
        if (FRAME_ITEM(sheet_block, sheet->blocks, i).view == view)
            plane_include_box(&extent, &FRAME_ITEM(sheet_block, sheet->blocks, i).box);
    return extent;
}

void sheet_move(drawing_sheet *sheet, size_t view, plane_vec by) {
    for (size_t i = 0; i < sheet->shapes.count; i++) {
        sheet_shape *shape = &FRAME_ITEM(sheet_shape, sheet->shapes, i);
        plane_vec *points = (plane_vec *)sheet->points.items + shape->first;
        if (shape->view != view) continue;
        for (size_t k = 0; k < shape->count; k++) points[k] = plane_add(points[k], by);
        shape->extent.low = plane_add(shape->extent.low, by);
        shape->extent.high = plane_add(shape->extent.high, by);
    }
    for (size_t i = 0; i < sheet->texts.count; i++) {
        sheet_text *text = &FRAME_ITEM(sheet_text, sheet->texts, i);
        if (text->view == view) text->at = plane_add(text->at, by);
    }
    for (size_t i = 0; i < sheet->blocks.count; i++) {
        sheet_block *block = &FRAME_ITEM(sheet_block, sheet->blocks, i);
        if (block->view == view) block->box.centre = plane_add(block->box.centre, by);
    }
}

int sheet_covers_text(const drawing_sheet *sheet, size_t view, const plane_box *box, double gap) {
    for (size_t i = 0; i < sheet->blocks.count; i++) {
        const sheet_block *block = &FRAME_ITEM(sheet_block, sheet->blocks, i);
        if (block->view == view && plane_boxes_meet(&block->box, box, gap)) return 1;
    }
    return 0;
}
