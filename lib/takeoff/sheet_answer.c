/* The plan written out: sheets, parts, their corners, and what is left and kept. */
#include "takeoff/sheet_answer.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "takeoff/sheet_cuts.h"
#include "takeoff/sheet_rest.h"
#include "takeoff_facts.h"

enum { SHEETS = 0, PLACEMENTS = 1, OFFCUTS = 2, CORNERS = 3, CUTS = 4 };

typedef struct writing {
    const frame_sheet_job *job;
    const frame_sheet_plan_in *in;
    frame_answer *answer;
    frame_sheet_plan_out *out;
    frame_sheet_pieces *taken; /* of each shape: grown by a whole kerf; made when first needed */
    frame_arena arena;
    frame_sheet_rest rest;
    frame_sheet_outlines outlines;
    frame_sheet_fitter *fitter;
    frame_array cuts; /* frame_sheet_cut */
} writing;

static frame_status write_corner(writing *w, double x, double y) {
    frame_sheet_plan_corner *corner = frame_answer_add(w->answer, CORNERS);
    if (!corner) return FRAME_NO_MEMORY;
    corner->x_in = x;
    corner->y_in = y;
    return FRAME_OK;
}

static frame_status write_placement(writing *w, const frame_sheet_bin *bin, const frame_sheet_placed *placed,
                                    int sheet) {
    const frame_sheet_shape *shape = &w->job->shapes[placed->shape];
    const frame_sheet_kind *kind = &w->job->kinds[placed->kind];
    const frame_sheet_point from = w->job->stocks[bin->stock].origin;
    frame_sheet_plan_placement *p = frame_answer_add(w->answer, PLACEMENTS);
    if (!p) return FRAME_NO_MEMORY;
    const double x = p->x_in = from.x + placed->at.x + shape->origin.x;
    const double y = p->y_in = from.y + placed->at.y + shape->origin.y;
    p->turn_deg = shape->turn_deg;
    p->mirrored = shape->mirrored;
    p->part = placed->kind;
    p->sheet = sheet;
    p->name = frame_answer_text(w->answer, kind->name);
    p->corner_first = (uint32_t)w->answer->lists[CORNERS].count;
    p->corner_count = (uint32_t)kind->outline_count;
    for (int i = 0; i < kind->outline_count; i++) {
        const frame_sheet_point c = frame_sheet_turned(kind->outline[i], shape->turn_deg, shape->mirrored);
        if (write_corner(w, x + c.x, y + c.y)) return FRAME_NO_MEMORY;
    }
    if (w->job->straight && shape->plain.count > 1) w->out->cautions |= FRAME_BIT(FRAME_SHEET_CAUTION_INNER_CORNER);
    if (shape->mirrored) w->out->cautions |= FRAME_BIT(FRAME_SHEET_CAUTION_MIRRORED);
    if (shape->turn_deg != 0 && shape->turn_deg != 180) w->out->cautions |= FRAME_BIT(FRAME_SHEET_CAUTION_AXIS_TURNED);
    return FRAME_OK;
}

/* -- what is left -- */

static frame_status take_part(writing *w, const frame_sheet_placed *placed) {
    frame_sheet_pieces *taken = &w->taken[placed->shape];
    frame_status status = FRAME_OK;
    if (!taken->points)
        status = frame_sheet_grow(&w->job->shapes[placed->shape].plain, w->job->kerf, 0, &w->arena, taken);
    return status ? status : frame_sheet_rest_take(&w->rest, taken, placed->at);
}

static int is_kept(const writing *w, const frame_sheet_loop *loop) {
    const frame_sheet_loop *of =
        loop->hole_of < 0 ? loop : &FRAME_ITEM(frame_sheet_loop, w->outlines.loops, loop->hole_of);
    return of->area > 0 && of->wide > 0 && of->wide >= w->in->least_offcut_in - 1e-6;
}

static frame_status write_offcut(writing *w, const frame_sheet_loop *loop, frame_sheet_point from, int sheet,
                                 int hole_of) {
    frame_sheet_plan_offcut *o = frame_answer_add(w->answer, OFFCUTS);
    if (!o) return FRAME_NO_MEMORY;
    o->area_in2 = fabs(loop->area);
    o->wide_in = loop->area > 0 ? loop->wide : FRAME_NOT_GIVEN;
    o->sheet = sheet;
    o->hole_of = hole_of;
    o->corner_first = (uint32_t)w->answer->lists[CORNERS].count;
    o->corner_count = (uint32_t)loop->count;
    w->out->offcut_area_in2 += loop->area;
    if (hole_of >= 0) FRAME_ANSWER_ITEM(frame_sheet_plan_offcut, w->answer, OFFCUTS, hole_of).area_in2 += loop->area;
    for (int i = 0; i < loop->count; i++) { /* a hole is listed counterclockwise too */
        const int at = loop->first + (loop->area > 0 ? i : loop->count - 1 - i);
        const frame_sheet_point p = FRAME_ITEM(frame_sheet_point, w->outlines.points, at);
        if (write_corner(w, from.x + p.x, from.y + p.y)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status write_outlines(writing *w, frame_sheet_point from, int sheet) {
    const frame_sheet_loop *loops = w->outlines.loops.items;
    for (size_t i = 0; i < w->outlines.loops.count; i++) {
        if (loops[i].area < 0 || !is_kept(w, &loops[i])) continue;
        const int place = (int)w->answer->lists[OFFCUTS].count;
        if (write_offcut(w, &loops[i], from, sheet, -1)) return FRAME_NO_MEMORY;
        for (size_t h = 0; h < w->outlines.loops.count; h++)
            if (loops[h].hole_of == (int)i && write_offcut(w, &loops[h], from, sheet, place)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status write_rest(writing *w, const frame_sheet_bin *bin, int sheet) {
    const frame_sheet_stock *stock = &w->job->stocks[bin->stock];
    frame_status status = frame_sheet_rest_rectangle(&w->rest, stock->width, stock->height);
    if (!status && stock->outside.count)
        status = frame_sheet_rest_take(&w->rest, &stock->outside, (frame_sheet_point){0, 0});
    for (int i = 0; !status && i < bin->count; i++) status = take_part(w, &bin->placed[i]);
    if (!status) status = frame_sheet_outlines_of(&w->rest, &w->outlines);
    return status ? status : write_outlines(w, stock->origin, sheet);
}

/* -- straight cuts -- */

static frame_status write_cuts(writing *w, const frame_sheet_bin *bin, frame_sheet_plan_sheet *sheet, int number) {
    const frame_sheet_point from = w->job->stocks[bin->stock].origin;
    sheet->cut_first = (uint32_t)w->answer->lists[CUTS].count;
    if (!w->job->straight) return FRAME_OK;
    const frame_status status = frame_sheet_cuts_of(w->fitter, bin, &w->cuts);
    if (status) return status;
    sheet->cut_count = (uint32_t)w->cuts.count;
    for (size_t i = 0; i < w->cuts.count; i++) {
        const frame_sheet_cut *made = &FRAME_ITEM(frame_sheet_cut, w->cuts, i);
        frame_sheet_plan_cut *cut = frame_answer_add(w->answer, CUTS);
        if (!cut) return FRAME_NO_MEMORY;
        cut->from_x_in = from.x + made->from.x, cut->from_y_in = from.y + made->from.y;
        cut->to_x_in = from.x + made->to.x, cut->to_y_in = from.y + made->to.y;
        cut->sheet = number;
        cut->trims = made->trims;
    }
    return FRAME_OK;
}

/* -- sheets -- */

static int place_order(const void *a, const void *b) {
    const frame_sheet_placed *one = a, *two = b;
    if (one->at.y != two->at.y) return one->at.y < two->at.y ? -1 : 1;
    if (one->at.x != two->at.x) return one->at.x < two->at.x ? -1 : 1;
    return (one->shape > two->shape) - (one->shape < two->shape);
}

/* Offcuts first, then by size; the fullest sheets first; alike ones together. */
static int bin_order(const void *a, const void *b) {
    const frame_sheet_bin *one = a, *two = b;
    if (one->stock != two->stock) return one->stock < two->stock ? -1 : 1;
    if (one->used != two->used) return one->used > two->used ? -1 : 1;
    if (one->count != two->count) return one->count < two->count ? -1 : 1;
    for (int i = 0; i < one->count; i++) {
        const int order = one->placed[i].kind != two->placed[i].kind ? one->placed[i].kind - two->placed[i].kind
                                                                     : place_order(&one->placed[i], &two->placed[i]);
        if (order) return order;
    }
    return 0;
}

static int alike(const frame_sheet_bin *a, const frame_sheet_bin *b) {
    return bin_order(a, b) == 0;
}

/* Of an offcut on hand: its outline as it was given, and how many holes it has. */
static frame_status write_on_hand(writing *w, int offcut, frame_sheet_plan_sheet *sheet) {
    frame_sheet_offcut of;
    frame_sheet_offcut_item(w->in->offcuts, (size_t)offcut, &of);
    sheet->outline_first = (uint32_t)w->answer->lists[CORNERS].count;
    sheet->outline_count = (uint32_t)of.corner_count;
    for (size_t i = 0; i < of.corner_count; i++) {
        frame_sheet_corner corner;
        frame_sheet_corner_item(of.corners, i, &corner);
        if (write_corner(w, corner.x_in, corner.y_in)) return FRAME_NO_MEMORY;
    }
    for (size_t h = 0; h < w->in->hole_count; h++) {
        frame_sheet_hole hole;
        frame_sheet_hole_item(w->in->holes, h, &hole);
        sheet->holes += hole.offcut == offcut;
    }
    return FRAME_OK;
}

static frame_status write_sheet(writing *w, const frame_sheet_bin *bins, int number) {
    const frame_sheet_bin *bin = &bins[number];
    const frame_sheet_stock *stock = &w->job->stocks[bin->stock];
    frame_sheet_plan_sheet *sheet = frame_answer_add(w->answer, SHEETS);
    if (!sheet) return FRAME_NO_MEMORY;
    sheet->x_in = stock->width;
    sheet->y_in = stock->height;
    sheet->price = stock->price;
    sheet->sheet = stock->sheet;
    sheet->holes = 0;
    sheet->offcut = stock->offcut;
    sheet->part_area_in2 = bin->used;
    sheet->waste_share = stock->area > 0 ? 1 - bin->used / stock->area : 0;
    sheet->same_as = number && alike(&bins[number - 1], bin)
                         ? FRAME_ANSWER_ITEM(frame_sheet_plan_sheet, w->answer, SHEETS, number - 1).same_as
                         : number;
    sheet->name = frame_answer_text(w->answer, stock->name);
    sheet->placement_first = (uint32_t)w->answer->lists[PLACEMENTS].count;
    sheet->placement_count = (uint32_t)bin->count;
    frame_status status = stock->offcut >= 0 ? write_on_hand(w, stock->offcut, sheet) : FRAME_OK;
    if (!status) status = write_cuts(w, bin, sheet, number);
    for (int i = 0; !status && i < bin->count; i++) status = write_placement(w, bin, &bin->placed[i], number);
    if (!status) status = write_rest(w, bin, number);
    w->out->cost += stock->price;
    w->out->sheet_area_in2 += stock->area;
    w->out->part_area_in2 += bin->used;
    w->out->parts_cut += bin->count;
    *(stock->sheet >= 0 ? &w->out->sheets_used : &w->out->offcuts_used) += 1;
    return status;
}

frame_status frame_sheet_answer_write(const frame_sheet_plan_in *in, const frame_sheet_job *job,
                                      frame_sheet_search *search, frame_answer *answer, frame_sheet_plan_out *out) {
    writing w = {.job = job, .in = in, .answer = answer, .out = out, .fitter = &search->fitter};
    frame_sheet_layout *layout = &search->layout;
    w.cuts.item_size = sizeof(frame_sheet_cut);
    frame_sheet_bin *bins = layout->bins.items;
    frame_sheet_rest_begin(&w.rest);
    out->cost = out->sheet_area_in2 = out->part_area_in2 = out->offcut_area_in2 = 0;
    out->parts_cut = out->sheets_used = out->offcuts_used = 0;
    w.taken = frame_take_zeroed((size_t)job->shape_count, sizeof *w.taken);
    frame_status status = w.taken ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t b = 0; b < layout->bins.count; b++)
        qsort(bins[b].placed, (size_t)bins[b].count, sizeof *bins[b].placed, place_order);
    if (layout->bins.count) qsort(bins, layout->bins.count, sizeof *bins, bin_order);
    for (size_t b = 0; !status && b < layout->bins.count; b++) status = write_sheet(&w, bins, (int)b);
    frame_give(w.taken);
    frame_array_give(&w.cuts);
    frame_sheet_rest_give(&w.rest);
    frame_sheet_outlines_give(&w.outlines);
    frame_arena_give(&w.arena);
    return status;
}
