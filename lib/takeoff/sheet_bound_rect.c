/* A bound for rectangles on rectangular sheets: dual feasible functions of width and of height. Whatever fits beside
 * each other within a whole adds up to no more than one under such a function; so the products over width and height
 * add up to no more than one on a sheet. The functions are those of Fekete and Schepers and of Boschetti and Mingozzi
 * (from memory; each is tested for the property it rests on). */
#include <math.h>

#include "takeoff/sheet_bound.h"

enum { MOST_FUNCTIONS = 90, MOST_KINDS = 400 };

/* Sizes near a place where a function jumps take the lower value, so that rounding cannot raise the bound. */
#define NEAR 1e-9

double frame_sheet_dual(double x, frame_sheet_dual_kind kind, double of) {
    if (kind == FRAME_SHEET_DUAL_ROUND) { /* of: k */
        const double steps = (of + 1) * x;
        return fabs(steps - floor(steps + 0.5)) < NEAR ? fmin(x, floor(steps + 0.5) / (of + 1)) : floor(steps) / of;
    }
    if (kind == FRAME_SHEET_DUAL_DROP) /* of: what is less counts nothing, what leaves less takes all */
        return x > 1 - of + NEAR ? 1 : x < of - NEAR ? 0 : x;
    const double whole = floor(1 / of + NEAR); /* of: the unit that is counted */
    if (fabs(x - 0.5) < NEAR) return 0.5;
    return x < 0.5 ? floor(x / of + 1e-12) / whole : 1 - floor((1 - x) / of + NEAR) / whole;
}

/* The values of one function for the size of every shape. */
typedef struct family {
    double *values; /* function by shape */
    int functions, shapes;
} family;

static void add_function(family *f, const double *sizes, frame_sheet_dual_kind kind, double of) {
    if (f->functions == MOST_FUNCTIONS) return;
    double *to = f->values + (size_t)f->functions++ * (size_t)f->shapes;
    for (int i = 0; i < f->shapes; i++) to[i] = frame_sheet_dual(sizes[i], kind, of);
}

static void fill_family(family *f, const double *sizes) {
    f->functions = 0;
    add_function(f, sizes, FRAME_SHEET_DUAL_DROP, 0); /* the size itself */
    for (int k = 1; k <= 5; k++) add_function(f, sizes, FRAME_SHEET_DUAL_ROUND, k);
    for (int i = 0; i < f->shapes; i++) {
        int seen = sizes[i] > 0.5;
        for (int k = 0; k < i && !seen; k++) seen = fabs(sizes[k] - sizes[i]) < NEAR;
        if (seen) continue;
        add_function(f, sizes, FRAME_SHEET_DUAL_DROP, sizes[i]);
        add_function(f, sizes, FRAME_SHEET_DUAL_COUNT, sizes[i]);
    }
    add_function(f, sizes, FRAME_SHEET_DUAL_DROP, 0.5);
}

static double total(const frame_sheet_job *job, const double *of_width, const double *of_height) {
    double sum = 0;
    for (int k = 0; k < job->kind_count; k++) {
        const frame_sheet_kind *kind = &job->kinds[k];
        double least = 1;
        for (int s = kind->first_shape; s < kind->first_shape + kind->shape_count; s++)
            least = fmin(least, of_width[s] * of_height[s]);
        sum += kind->copies * least;
    }
    return sum;
}

static double best_total(const frame_sheet_job *job, const family *wide, const family *high) {
    double best = 0;
    for (int i = 0; i < wide->functions; i++)
        for (int k = 0; k < high->functions; k++)
            best = fmax(best, total(job, wide->values + (size_t)i * (size_t)wide->shapes,
                                    high->values + (size_t)k * (size_t)high->shapes));
    return best;
}

frame_status frame_sheet_bound_rectangles(const frame_sheet_job *job, double width, double height, int *sheets) {
    *sheets = 0;
    if (!job->all_rectangles || job->kind_count > MOST_KINDS) return FRAME_OK;
    const size_t shapes = (size_t)job->shape_count;
    family wide = {.shapes = job->shape_count}, high = {.shapes = job->shape_count};
    double *widths = frame_take_zeroed(2 * shapes, sizeof *widths), *heights = widths + shapes;
    wide.values = frame_take_zeroed(shapes * MOST_FUNCTIONS, sizeof(double));
    high.values = frame_take_zeroed(shapes * MOST_FUNCTIONS, sizeof(double));
    const int good = widths && wide.values && high.values;
    for (size_t i = 0; good && i < shapes; i++) {
        widths[i] = (job->shapes[i].width + job->kerf) / (width + job->kerf);
        heights[i] = (job->shapes[i].height + job->kerf) / (height + job->kerf);
    }
    if (good) {
        fill_family(&wide, widths), fill_family(&high, heights);
        *sheets = (int)fmin(ceil(best_total(job, &wide, &high) - 1e-6), 1e9);
    }
    frame_give(widths), frame_give(wide.values), frame_give(high.values);
    return good ? FRAME_OK : FRAME_NO_MEMORY;
}
