/* Every way a part may lie: its turns, and mirrored where the sheet may be cut with its face down. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "takeoff/sheet_cuts.h"
#include "working/record.h"

enum { MOST_TURNS = 64, MOST_SHAPES = 40000 };

typedef struct turning {
    double degrees[MOST_TURNS];
    int count, spare;
} turning;

frame_sheet_point frame_sheet_turned(frame_sheet_point p, double degrees, int mirrored) {
    const double x = mirrored ? -p.x : p.x;
    if (degrees == 0) return (frame_sheet_point){x, p.y};
    if (degrees == 90) return (frame_sheet_point){-p.y, x};
    if (degrees == 180) return (frame_sheet_point){-x, -p.y};
    if (degrees == 270) return (frame_sheet_point){p.y, -x};
    const double c = cos(degrees * FRAME_DEG), s = sin(degrees * FRAME_DEG);
    return (frame_sheet_point){c * x - s * p.y, s * x + c * p.y};
}

static void add_turn(turning *t, double degrees) {
    degrees -= 360 * floor(degrees / 360);
    const double right = 90 * floor(degrees / 90 + 0.5);
    if (fabs(degrees - right) < 1e-7) degrees = right >= 360 ? 0 : right;
    for (int i = 0; i < t->count; i++)
        if (fabs(t->degrees[i] - degrees) < 1e-7) return;
    if (t->count < MOST_TURNS) t->degrees[t->count++] = degrees;
}

/* Right angles first; then those that lay an edge along an axis. */
static turning turns_of(const frame_sheet_kind *kind, frame_sheet_turns allowed) {
    turning t = {.count = 0};
    add_turn(&t, 0);
    if (allowed != FRAME_SHEET_TURNS_NONE) add_turn(&t, 180);
    if (allowed < FRAME_SHEET_TURNS_QUARTER) return t;
    add_turn(&t, 90);
    add_turn(&t, 270);
    for (int i = 0; allowed == FRAME_SHEET_TURNS_ANY && i < kind->corner_count; i++) {
        const frame_sheet_point a = kind->corners[i], b = kind->corners[(i + 1) % kind->corner_count];
        const double along = atan2(b.y - a.y, b.x - a.x) / FRAME_DEG;
        for (int k = 0; k < 4; k++) add_turn(&t, 90 * k - along);
    }
    return t;
}

static frame_status turned_pieces(const frame_sheet_pieces *from, frame_sheet_shape *shape, frame_arena *arena,
                                  frame_sheet_pieces *to) {
    const size_t corners = (size_t)from->start[from->count];
    *to = *from;
    to->points = frame_arena_take(arena, corners * sizeof *to->points);
    to->real = frame_arena_take(arena, corners);
    if (!to->points || !to->real) return FRAME_NO_MEMORY;
    for (int i = 0; i < from->count; i++) {
        const int first = from->start[i], n = from->start[i + 1] - first;
        for (int k = 0; k < n; k++) { /* mirrored corners go round the other way */
            const int source = first + (shape->mirrored ? n - 1 - k : k);
            const int edge = first + (shape->mirrored ? (2 * n - 2 - k) % n : k);
            const frame_sheet_point p = frame_sheet_turned(from->points[source], shape->turn_deg, shape->mirrored);
            to->points[first + k] = (frame_sheet_point){p.x + shape->origin.x, p.y + shape->origin.y};
            to->real[first + k] = from->real[edge];
        }
    }
    return FRAME_OK;
}

static frame_status anti(const frame_sheet_pieces *from, frame_arena *arena, frame_sheet_pieces *to) {
    const size_t corners = (size_t)from->start[from->count];
    *to = *from;
    to->points = frame_arena_take(arena, corners * sizeof *to->points);
    if (!to->points) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < corners; i++) to->points[i] = (frame_sheet_point){-from->points[i].x, -from->points[i].y};
    return FRAME_OK;
}

static frame_status place_at_origin(const frame_sheet_kind *kind, frame_sheet_shape *shape) {
    frame_sheet_box box = {1e300, 1e300, -1e300, -1e300};
    for (int i = 0; i < kind->corner_count; i++) {
        const frame_sheet_point p = frame_sheet_turned(kind->corners[i], shape->turn_deg, shape->mirrored);
        box.x0 = fmin(box.x0, p.x), box.x1 = fmax(box.x1, p.x);
        box.y0 = fmin(box.y0, p.y), box.y1 = fmax(box.y1, p.y);
    }
    shape->origin = (frame_sheet_point){-box.x0, -box.y0};
    shape->width = box.x1 - box.x0;
    shape->height = box.y1 - box.y0;
    return FRAME_OK;
}

static frame_status fill_shape(frame_sheet_job *job, const frame_sheet_pieces *pieces, frame_sheet_shape *shape) {
    frame_arena *arena = &job->arena;
    frame_status status = turned_pieces(pieces, shape, arena, &shape->plain);
    if (!status) status = frame_sheet_grow(&shape->plain, job->kerf / 2, 0, arena, &shape->fat);
    if (!status) status = frame_sheet_grow(&shape->plain, job->kerf / 2, 1, arena, &shape->lean);
    if (!status) status = anti(&shape->plain, arena, &shape->anti_plain);
    if (!status) status = anti(&shape->fat, arena, &shape->anti_fat);
    if (!status) status = anti(&shape->lean, arena, &shape->anti_lean);
    if (status) return status;
    const int corners = shape->fat.start[shape->fat.count];
    shape->fat_box = frame_sheet_box_of(shape->fat.points, corners);
    shape->hull = frame_arena_take(arena, (size_t)(2 * corners + 2) * sizeof *shape->hull);
    if (!shape->hull) return FRAME_NO_MEMORY;
    shape->hull_count = frame_sheet_hull(shape->fat.points, corners, shape->hull);
    return FRAME_OK;
}

/* Whether two shapes of one kind cover the same ground: the same corners, wherever the list begins. */
static int same_shape(const frame_sheet_kind *kind, const frame_sheet_shape *a, const frame_sheet_shape *b,
                      double near) {
    if (fabs(a->width - b->width) > near || fabs(a->height - b->height) > near) return 0;
    for (int i = 0; i < kind->corner_count; i++) {
        const frame_sheet_point p = frame_sheet_turned(kind->corners[i], a->turn_deg, a->mirrored);
        int found = 0;
        for (int k = 0; k < kind->corner_count && !found; k++) {
            const frame_sheet_point q = frame_sheet_turned(kind->corners[k], b->turn_deg, b->mirrored);
            found = fabs(p.x + a->origin.x - q.x - b->origin.x) <= near &&
                    fabs(p.y + a->origin.y - q.y - b->origin.y) <= near;
        }
        if (!found) return 0;
    }
    return 1;
}

/* Whether a part so turned reaches over two spaces and is wide enough, where that was asked. */
static int spans(const frame_sheet_plan_in *in, const frame_sheet_shape *shape, int strength_along_x) {
    const double along = strength_along_x ? shape->width : shape->height;
    const double across = strength_along_x ? shape->height : shape->width;
    if (in->support_spacing_in != FRAME_NOT_GIVEN && along < 2 * in->support_spacing_in - 1e-6) return 0;
    return in->least_strip_in == FRAME_NOT_GIVEN || across >= in->least_strip_in - 1e-6;
}

static int strength_is_along_x(const frame_sheet_plan_in *in, const frame_sheet_job *job) {
    const frame_sheet_stock *stock = &job->stocks[job->stock_count - 1];
    for (int i = job->stock_count - 1; i >= 0 && job->stocks[i].sheet >= 0; i--) stock = &job->stocks[i];
    if (in->strength == FRAME_NOT_GIVEN_INT) return stock->width >= stock->height;
    return (in->strength == FRAME_SHEET_SIDE_LENGTH) == (job->along_length != 0);
}

static int is_new(const frame_sheet_job *job, const frame_sheet_kind *kind, const frame_sheet_shape *shape) {
    for (int i = kind->first_shape; i < job->shape_count; i++)
        if (same_shape(kind, &job->shapes[i], shape, job->tolerance)) return 0;
    return 1;
}

static frame_status refuse_narrow(const frame_sheet_plan_in *in, const frame_sheet_job *job, int kind) {
    char field[40], value[72];
    const frame_sheet_box box = frame_sheet_box_of(job->kinds[kind].corners, job->kinds[kind].corner_count);
    snprintf(field, sizeof field, "parts[%d]", kind);
    const size_t length = frame_number_print(box.x1 - box.x0, 8, value, sizeof value);
    snprintf(value + length, sizeof value - length, " by ");
    frame_number_print(box.y1 - box.y0, 8, value + length + 4, sizeof value - length - 4);
    const int spaces = in->support_spacing_in != FRAME_NOT_GIVEN;
    const char *valid = spaces ? "two spaces of supports along the strength axis, the least strip across it"
                               : "at least the least strip across the strength axis";
    return frame_fail(FRAME_IMPOSSIBLE, field, value, valid, "%s: %s in does not do in any turn allowed; valid is %s",
                      field, value, valid);
}

static frame_status shapes_of_kind(const frame_sheet_plan_in *in, frame_sheet_job *job, int number, int along_x) {
    frame_sheet_kind *kind = &job->kinds[number];
    frame_sheet_pieces pieces;
    const turning t = turns_of(kind, in->turns);
    kind->first_shape = job->shape_count;
    frame_status status = frame_sheet_pieces_of(kind->corners, kind->corner_count, &job->arena, &pieces);
    for (int i = 0; !status && i < t.count * (in->reversible == 1 ? 2 : 1); i++) {
        frame_sheet_shape shape = {.kind = number, .mirrored = i >= t.count, .turn_deg = t.degrees[i % t.count]};
        place_at_origin(kind, &shape);
        if (!spans(in, &shape, along_x) || !is_new(job, kind, &shape) || job->shape_count == MOST_SHAPES) continue;
        status = fill_shape(job, &pieces, &shape);
        job->shapes[job->shape_count++] = shape;
    }
    kind->shape_count = job->shape_count - kind->first_shape;
    if (!status && !kind->shape_count) return refuse_narrow(in, job, number);
    return status;
}

frame_status frame_sheet_shapes_make(const frame_sheet_plan_in *in, frame_sheet_job *job) {
    const int each = in->turns == FRAME_SHEET_TURNS_ANY ? MOST_TURNS : 4;
    const int most = job->kind_count * each * (in->reversible == 1 ? 2 : 1);
    const int along_x = strength_is_along_x(in, job);
    job->shape_count = 0;
    job->shapes =
        frame_arena_take(&job->arena, (size_t)(most < MOST_SHAPES ? most : MOST_SHAPES) * sizeof *job->shapes);
    if (!job->shapes) return FRAME_NO_MEMORY;
    frame_status status = FRAME_OK;
    for (int i = 0; !status && i < job->kind_count; i++) status = shapes_of_kind(in, job, i, along_x);
    return status;
}
