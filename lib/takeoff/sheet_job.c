/* Reading the job: corners, counts, sheets; and what can be refused before anything is laid out. */
#include "takeoff/sheet_job.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "takeoff_facts.h"
#include "working/record.h"

enum { MOST_PARTS = 20000 };

static frame_status refuse_crossing(const char *field, int one, int other) {
    char path[96], value[48];
    snprintf(path, sizeof path, "%s.corners", field);
    snprintf(value, sizeof value, "edges %d and %d", one, other);
    return frame_fail(FRAME_IMPOSSIBLE, path, value, "a polygon whose edges neither cross nor touch",
                      "%s: %s cross or touch (edge i runs from corner i to the next); valid is a polygon whose edges "
                      "neither cross nor touch",
                      path, value);
}

frame_status frame_sheet_corners_read(const frame_sheet_corner *corners, size_t count, const char *field,
                                      frame_arena *arena, frame_sheet_point **points) {
    int one, other;
    char path[48];
    snprintf(path, sizeof path, "%s.corners", field);
    if (count < 3) return frame_fail_number(FRAME_OUT_OF_RANGE, path, (double)count, "3 to 500 corners");
    *points = frame_arena_take(arena, count * sizeof **points);
    if (!*points) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < count; i++) {
        frame_sheet_corner corner;
        frame_sheet_corner_item(corners, i, &corner);
        (*points)[i] = (frame_sheet_point){corner.x_in, corner.y_in};
    }
    return frame_sheet_crossing(*points, (int)count, &one, &other) ? refuse_crossing(field, one, other) : FRAME_OK;
}

static int is_rectangle(const frame_sheet_kind *kind) {
    if (kind->corner_count != 4) return 0;
    const frame_sheet_box box = frame_sheet_box_of(kind->corners, 4);
    return kind->area >= (box.x1 - box.x0) * (box.y1 - box.y0) * (1 - 1e-12);
}

static double perimeter(const frame_sheet_point *points, int count) {
    double length = 0;
    for (int i = 0; i < count; i++)
        length += hypot(points[(i + 1) % count].x - points[i].x, points[(i + 1) % count].y - points[i].y);
    return length;
}

static int is_convex(const frame_sheet_kind *kind) {
    for (int i = 0; i < kind->corner_count; i++)
        if (frame_sheet_cross(kind->corners[i], kind->corners[(i + 1) % kind->corner_count],
                              kind->corners[(i + 2) % kind->corner_count]) < 0)
            return 0;
    return 1;
}

/* Corners without what is straight, counterclockwise. */
static frame_status read_outline(const frame_sheet_job *job, const frame_sheet_part *part, const char *field,
                                 frame_arena *arena, frame_sheet_kind *kind) {
    frame_status status = frame_sheet_corners_read(part->corners, part->corner_count, field, arena, &kind->outline);
    if (status) return status;
    const int n = kind->outline_count = (int)part->corner_count;
    kind->corners = frame_arena_take(arena, (size_t)n * sizeof *kind->corners);
    if (!kind->corners) return FRAME_NO_MEMORY;
    const int clockwise = frame_sheet_area(kind->outline, n) < 0;
    for (int i = 0; i < n; i++) kind->corners[i] = kind->outline[clockwise ? n - 1 - i : i];
    kind->corner_count = frame_sheet_clean(kind->corners, n, 1e-9);
    kind->area = frame_sheet_area(kind->corners, kind->corner_count);
    const double half = job->kerf / 2;
    const double grown = half * perimeter(kind->corners, kind->corner_count) + FRAME_PI * half * half;
    kind->fat_area = kind->area + (is_convex(kind) ? grown : 0);
    kind->rectangle = is_rectangle(kind);
    return FRAME_OK;
}

static frame_status read_kinds(const frame_sheet_plan_in *in, frame_sheet_job *job) {
    job->kind_count = (int)in->part_count;
    job->kinds = frame_arena_take(&job->arena, in->part_count * sizeof *job->kinds);
    if (!job->kinds) return FRAME_NO_MEMORY;
    int64_t total = 0;
    job->all_rectangles = 1;
    for (size_t i = 0; i < in->part_count; i++) {
        frame_sheet_part part;
        char field[40];
        frame_sheet_kind *kind = &job->kinds[i];
        memset(kind, 0, sizeof *kind);
        frame_sheet_part_item(in->parts, i, &part);
        snprintf(field, sizeof field, "parts[%zu]", i);
        const frame_status status = read_outline(job, &part, field, &job->arena, kind);
        if (status) return status;
        if (!(kind->area > 1e-6))
            return frame_fail(FRAME_IMPOSSIBLE, field, "", "a polygon with an area", "%s: its corners enclose no area",
                              field);
        kind->name = part.name;
        kind->copies = part.count;
        total += part.count;
        job->all_rectangles &= kind->rectangle;
    }
    job->item_count = (int)total;
    return total <= MOST_PARTS
               ? FRAME_OK
               : frame_fail_number(FRAME_TOO_LARGE, "parts", (double)total, "at most 20,000 parts in all");
}

static int larger_first(const void *a, const void *b) {
    const frame_sheet_kind *one = *(const frame_sheet_kind *const *)a, *two = *(const frame_sheet_kind *const *)b;
    if (one->area != two->area) return one->area > two->area ? -1 : 1;
    return (one > two) - (one < two);
}

static frame_status list_items(frame_sheet_job *job) {
    const frame_sheet_kind **order = frame_arena_take(&job->arena, (size_t)job->kind_count * sizeof *order);
    job->items = frame_arena_take(&job->arena, (size_t)job->item_count * sizeof *job->items);
    if (!order || !job->items) return FRAME_NO_MEMORY;
    for (int i = 0; i < job->kind_count; i++) order[i] = &job->kinds[i];
    qsort(order, (size_t)job->kind_count, sizeof *order, larger_first);
    int at = 0;
    for (int i = 0; i < job->kind_count; i++)
        for (int n = 0; n < order[i]->copies; n++) job->items[at++] = (int)(order[i] - job->kinds);
    return FRAME_OK;
}

static void read_sheet(const frame_sheet_plan_in *in, const frame_sheet_job *job, size_t place,
                       frame_sheet_stock *stock) {
    frame_sheet_size size;
    const double half = job->kerf / 2;
    frame_sheet_size_item(in->sheets, place, &size);
    stock->name = size.name;
    stock->width = job->along_length ? size.length_in : size.width_in;
    stock->height = job->along_length ? size.width_in : size.length_in;
    stock->area = stock->width * stock->height;
    stock->fat_area = stock->area + 2 * half * (stock->width + stock->height) + FRAME_PI * half * half;
    stock->price = size.price;
    stock->available = size.available == FRAME_NOT_GIVEN_INT ? INT64_MAX : size.available;
    stock->sheet = (int)place;
    stock->offcut = -1;
}

static frame_status read_stocks(const frame_sheet_plan_in *in, frame_sheet_job *job) {
    const size_t count = in->offcut_count + in->sheet_count;
    if (!count)
        return frame_fail(FRAME_REQUIRED, "sheets", "", "at least one sheet or offcut",
                          "sheets: not given, and no offcuts either; at least one of them is required");
    if (!job->stocks) job->stocks = frame_arena_take(&job->arena, count * sizeof *job->stocks);
    if (!job->stocks) return FRAME_NO_MEMORY;
    memset(job->stocks, 0, count * sizeof *job->stocks);
    job->stock_count = (int)count;
    double widest = 0;
    for (size_t i = 0; i < count; i++) {
        frame_sheet_stock *stock = &job->stocks[i];
        const frame_status status = i < in->offcut_count ? frame_sheet_on_hand(in, i, job, stock) : FRAME_OK;
        if (status) return status;
        if (i >= in->offcut_count) read_sheet(in, job, i - in->offcut_count, stock);
        widest = fmax(widest, fmax(stock->width, stock->height));
    }
    job->tolerance = 1e-10 * fmax(widest, 1);
    return FRAME_OK;
}

static frame_status check_holes(const frame_sheet_plan_in *in) {
    for (size_t i = 0; i < in->hole_count; i++) {
        frame_sheet_hole hole;
        char field[40];
        frame_sheet_hole_item(in->holes, i, &hole);
        snprintf(field, sizeof field, "holes[%zu].offcut", i);
        if ((size_t)hole.offcut >= in->offcut_count)
            return frame_fail_number(FRAME_OUT_OF_RANGE, field, hole.offcut, "the place of an offcut given");
    }
    return FRAME_OK;
}

/* Whether some way a kind may lie has a bounding box no larger than some sheet. */
static int fits_a_box(const frame_sheet_plan_in *in, const frame_sheet_job *job, const frame_sheet_kind *kind) {
    const frame_sheet_box box = frame_sheet_box_of(kind->corners, kind->corner_count);
    for (size_t i = in->offcut_count; i < (size_t)job->stock_count; i++) {
        const frame_sheet_stock *s = &job->stocks[i];
        if (box.x1 - box.x0 <= s->width + 1e-6 && box.y1 - box.y0 <= s->height + 1e-6) return 1;
    }
    return 0;
}

static int all_fit(const frame_sheet_plan_in *in, const frame_sheet_job *job) {
    for (int i = 0; i < job->kind_count; i++)
        if (!fits_a_box(in, job, &job->kinds[i])) return 0;
    return 1;
}

/* Which way x runs: along the width, unless parts that may not be turned fit only along the length. */
static frame_status choose_axis(const frame_sheet_plan_in *in, frame_sheet_job *job) {
    job->along_length = in->x_along == FRAME_SHEET_SIDE_LENGTH;
    frame_status status = read_stocks(in, job);
    if (status || in->x_along != FRAME_NOT_GIVEN_INT || in->turns > FRAME_SHEET_TURNS_HALF || all_fit(in, job))
        return status;
    job->along_length = 1;
    if ((status = read_stocks(in, job)) || all_fit(in, job)) return status;
    job->along_length = 0;
    return read_stocks(in, job);
}

frame_status frame_sheet_job_read(const frame_sheet_plan_in *in, frame_sheet_job *job) {
    memset(job, 0, sizeof *job);
    job->kerf = in->kerf_in;
    job->straight = in->cuts == FRAME_SHEET_CUTS_STRAIGHT;
    frame_status status = check_holes(in);
    if (!status) status = read_kinds(in, job);
    if (!status) status = choose_axis(in, job);
    if (!status) status = list_items(job);
    if (!status) status = frame_sheet_shapes_make(in, job);
    return status;
}

void frame_sheet_job_give(frame_sheet_job *job) {
    frame_arena_give(&job->arena);
}
