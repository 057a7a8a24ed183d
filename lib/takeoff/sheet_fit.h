/* Where a part fits on a sheet beside those that lie there. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_FIT_H
#define FRAME_LIB_TAKEOFF_SHEET_FIT_H

#include "takeoff/sheet_job.h"

/* A part on a sheet: at is where its bounding box begins. */
typedef struct frame_sheet_placed {
    int kind, shape;
    frame_sheet_point at;
} frame_sheet_placed;

/* A sheet with what lies on it. */
typedef struct frame_sheet_bin {
    int stock, count, capacity, spare;
    frame_sheet_placed *placed;
    double used, fat_used; /* area of the parts, and that with their share of kerf */
    frame_array spaces;    /* frame_sheet_box; of rectangles only: what is free */
} frame_sheet_bin;

/* One way to tell better places from worse: the least of x and y, weighed, of the far corner of the bounding box. */
typedef struct frame_sheet_pull {
    double x, y;
} frame_sheet_pull;

/* Where the searching keeps its figures: the forbidden ground, one convex polygon for each pair of pieces. */
typedef struct frame_sheet_fitter {
    const frame_sheet_job *job;
    frame_array points;       /* frame_sheet_point */
    frame_array grounds;      /* frame_sheet_ground */
    frame_array parting_room; /* bytes; for straight cuts */
    int failed, spare;        /* without memory */
    int64_t work;             /* counts what was tried, the same on every machine */
} frame_sheet_fitter;

typedef struct frame_sheet_ground {
    int first, count;
    frame_sheet_box box;
} frame_sheet_ground;

void frame_sheet_fitter_begin(frame_sheet_fitter *fitter, const frame_sheet_job *job);
void frame_sheet_fitter_give(frame_sheet_fitter *fitter);

/* The best place for a shape on a sheet. Gives 0 when it fits nowhere. key: how good; only places better than *key are
 * looked for. */
int frame_sheet_fit(frame_sheet_fitter *fitter, const frame_sheet_bin *bin, int shape, frame_sheet_pull pull,
                    frame_sheet_point *at, double *key);
/* The sum of two convex polygons, the first moved by an offset; sum has room for the corners of both. Gives its count.
 */
int frame_sheet_sum(const frame_sheet_point *a, int a_count, frame_sheet_point offset, const frame_sheet_point *b,
                    int b_count, frame_sheet_point *sum);
/* Whether two shapes may lie on one sheet of a size, wherever they lie; exact but for the tolerance. */
int frame_sheet_pair_fits(frame_sheet_fitter *fitter, int stock, int one, int other);

/* Whether a stock takes the parts as rectangles on a rectangle. */
int frame_sheet_is_rectangular(const frame_sheet_job *job, int stock);
/* Places a rectangle on such a sheet, by one of 36 ways of choosing a space and of cutting it. Gives 0 when it fits
 * nowhere. */
int frame_sheet_rect_place(frame_sheet_fitter *fitter, frame_sheet_bin *bin, int kind, int way);

int frame_sheet_bin_add(frame_sheet_bin *bin, const frame_sheet_job *job, frame_sheet_placed placed);
void frame_sheet_bin_give(frame_sheet_bin *bin);

#endif
