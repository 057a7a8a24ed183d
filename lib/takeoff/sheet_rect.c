/* Rectangles on a rectangular sheet. What is free is kept as rectangles with a kerf's room added: side by side for
 * straight cuts, where each part takes a corner of one and two cuts from side to side part what is left; the largest
 * ones, which may lie over each other, for free cuts. */
#include <math.h>

#include "takeoff/sheet_fit.h"

#define HAIR 1e-7

typedef struct corner_place {
    double score;
    int shape;
    size_t space;
    double width, height;
} corner_place;

int frame_sheet_is_rectangular(const frame_sheet_job *job, int stock) {
    return job->all_rectangles && !job->stocks[stock].outside.count;
}

static int begin(frame_sheet_bin *bin, const frame_sheet_job *job) {
    const frame_sheet_stock *stock = &job->stocks[bin->stock];
    const frame_sheet_box whole = {0, 0, stock->width + job->kerf, stock->height + job->kerf};
    bin->spaces.item_size = sizeof whole;
    return bin->count || bin->spaces.count || frame_array_push(&bin->spaces, &whole) != NULL;
}

static double score(const frame_sheet_box *space, double width, double height, int way) {
    const double w = space->x1 - space->x0 - width, h = space->y1 - space->y0 - height;
    switch (way) {
        case 0:
            return fmin(w, h) + 1e-3 * fmax(w, h);
        case 1:
            return (space->x1 - space->x0) * (space->y1 - space->y0) - width * height;
        case 2:
            return fmax(w, h) + 1e-3 * fmin(w, h);
        case 3:
            return space->y0 + height + 1e-4 * space->x0;
        case 4:
            return space->x0 + width + 1e-4 * space->y0;
        default:
            return fmin(w, h) < HAIR ? fmin(w, h) - 1e6 + fmax(w, h) : space->y0 + space->x0;
    }
}

static int find(const frame_sheet_bin *bin, const frame_sheet_job *job, int kind, int way, corner_place *best) {
    const frame_sheet_kind *k = &job->kinds[kind];
    best->score = 1e300;
    for (int s = k->first_shape; s < k->first_shape + k->shape_count; s++) {
        const double width = job->shapes[s].width + job->kerf, height = job->shapes[s].height + job->kerf;
        for (size_t i = 0; i < bin->spaces.count; i++) {
            const frame_sheet_box *space = &FRAME_ITEM(frame_sheet_box, bin->spaces, i);
            if (width > space->x1 - space->x0 + HAIR || height > space->y1 - space->y0 + HAIR) continue;
            const double value = score(space, width, height, way);
            if (value < best->score) *best = (corner_place){value, s, i, width, height};
        }
    }
    return best->score < 1e300;
}

static int add_space(frame_sheet_bin *bin, double x0, double y0, double x1, double y1) {
    const frame_sheet_box space = {x0, y0, x1, y1};
    return x1 - x0 < HAIR || y1 - y0 < HAIR || frame_array_push(&bin->spaces, &space) != NULL;
}

/* Two straight cuts: which of them runs through is the way's choice. */
static int split(frame_sheet_bin *bin, const corner_place *place, int way) {
    const frame_sheet_box space = FRAME_ITEM(frame_sheet_box, bin->spaces, place->space);
    const double x = space.x0 + place->width, y = space.y0 + place->height;
    const double w = space.x1 - x, h = space.y1 - y;
    const int level = way == 0   ? w <= h
                      : way == 1 ? w > h
                      : way == 2 ? place->width * h > place->height * w
                      : way == 3 ? place->width * h <= place->height * w
                                 : way == 4;
    FRAME_ITEM(frame_sheet_box, bin->spaces, place->space) =
        FRAME_ITEM(frame_sheet_box, bin->spaces, bin->spaces.count - 1);
    bin->spaces.count--;
    if (level) return add_space(bin, x, space.y0, space.x1, y) && add_space(bin, space.x0, y, space.x1, space.y1);
    return add_space(bin, x, space.y0, space.x1, space.y1) && add_space(bin, space.x0, y, x, space.y1);
}

static int holds(const frame_sheet_box *a, const frame_sheet_box *b) {
    return a->x0 <= b->x0 + HAIR && a->y0 <= b->y0 + HAIR && a->x1 >= b->x1 - HAIR && a->y1 >= b->y1 - HAIR;
}

/* Drops spaces from a place on that lie within others. */
static void prune(frame_sheet_bin *bin, size_t from) {
    frame_sheet_box *s = bin->spaces.items;
    for (size_t i = from; i < bin->spaces.count; i++)
        for (size_t k = 0; k < bin->spaces.count; k++) {
            if (k == i || !holds(&s[k], &s[i])) continue;
            s[i--] = s[--bin->spaces.count];
            break;
        }
}

/* Every space a part cuts into leaves up to four, each as large as it can be. */
static int carve(frame_sheet_bin *bin, const frame_sheet_box *part) {
    frame_array old = bin->spaces;
    size_t whole = 0;
    bin->spaces = (frame_array){.item_size = sizeof *part};
    int good = frame_array_reserve(&bin->spaces, old.count + 4) == FRAME_OK;
    for (size_t i = 0; i < old.count && good; i++) {
        const frame_sheet_box s = FRAME_ITEM(frame_sheet_box, old, i);
        const int apart =
            part->x0 >= s.x1 - HAIR || part->x1 <= s.x0 + HAIR || part->y0 >= s.y1 - HAIR || part->y1 <= s.y0 + HAIR;
        if (apart) good = add_space(bin, s.x0, s.y0, s.x1, s.y1);
    }
    whole = bin->spaces.count;
    for (size_t i = 0; i < old.count && good; i++) {
        const frame_sheet_box s = FRAME_ITEM(frame_sheet_box, old, i);
        if (part->x0 >= s.x1 - HAIR || part->x1 <= s.x0 + HAIR || part->y0 >= s.y1 - HAIR || part->y1 <= s.y0 + HAIR)
            continue;
        good = add_space(bin, s.x0, s.y0, fmin(s.x1, part->x0), s.y1) &&
               add_space(bin, fmax(s.x0, part->x1), s.y0, s.x1, s.y1) &&
               add_space(bin, s.x0, s.y0, s.x1, fmin(s.y1, part->y0)) &&
               add_space(bin, s.x0, fmax(s.y0, part->y1), s.x1, s.y1);
    }
    frame_array_give(&old);
    prune(bin, whole);
    return good;
}

int frame_sheet_rect_place(frame_sheet_fitter *f, frame_sheet_bin *bin, int kind, int way) {
    const frame_sheet_job *job = f->job;
    corner_place place;
    if (!begin(bin, job)) {
        f->failed = 1;
        return 0;
    }
    f->work += 3 * (int64_t)bin->spaces.count + 5;
    if (!find(bin, job, kind, way % 6, &place)) return 0;
    const frame_sheet_box space = FRAME_ITEM(frame_sheet_box, bin->spaces, place.space);
    const frame_sheet_box part = {space.x0, space.y0, space.x0 + place.width, space.y0 + place.height};
    const int kept = job->straight ? split(bin, &place, way / 6 % 6) : carve(bin, &part);
    const frame_sheet_placed placed = {kind, place.shape, {part.x0, part.y0}};
    if (!kept || !frame_sheet_bin_add(bin, job, placed)) f->failed = 1;
    f->work += 3 * (int64_t)bin->spaces.count;
    return 1;
}
