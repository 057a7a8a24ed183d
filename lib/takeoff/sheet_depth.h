/* How deep two parts overlap, from polygons made once for each pair of shapes. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_DEPTH_H
#define FRAME_LIB_TAKEOFF_SHEET_DEPTH_H

#include "takeoff/sheet_fit.h"

typedef struct frame_sheet_side_line {
    double nx, ny, d; /* outside where n . t >= d */
} frame_sheet_side_line;

/* One convex polygon: t inside it is an overlap of two pieces. */
typedef struct frame_sheet_clash {
    frame_sheet_box box;
    const frame_sheet_side_line *sides;
    int count, spare;
} frame_sheet_clash;

/* All of them for two shapes; t is where the second lies from the first. */
typedef struct frame_sheet_clashes {
    frame_sheet_box box;
    frame_sheet_clash *clashes;
    const frame_sheet_point *corners; /* of all of them: places where the two just touch */
    int count, corner_count;
} frame_sheet_clashes;

typedef struct frame_sheet_depths {
    const frame_sheet_job *job;
    frame_sheet_clashes **pairs;   /* of shapes; made when first asked for */
    frame_sheet_clashes **outside; /* of each stock's outside and each shape */
    frame_arena arena;
    size_t bytes;
    int failed, spare; /* too many shapes, or no memory */
} frame_sheet_depths;

frame_status frame_sheet_depths_begin(frame_sheet_depths *depths, const frame_sheet_job *job);
void frame_sheet_depths_give(frame_sheet_depths *depths);
const frame_sheet_clashes *frame_sheet_clashes_of(frame_sheet_depths *depths, int one, int other);
const frame_sheet_clashes *frame_sheet_clashes_outside(frame_sheet_depths *depths, int stock, int shape);

/* The depths of all pieces that overlap, added up. */
static inline double frame_sheet_depth(const frame_sheet_clashes *c, double x, double y) {
    if (x <= c->box.x0 || x >= c->box.x1 || y <= c->box.y0 || y >= c->box.y1) return 0;
    double sum = 0;
    for (int i = 0; i < c->count; i++) {
        const frame_sheet_clash *m = &c->clashes[i];
        if (x <= m->box.x0 || x >= m->box.x1 || y <= m->box.y0 || y >= m->box.y1) continue;
        double depth = 1e300;
        for (int k = 0; k < m->count && depth > 0; k++) {
            const double in = m->sides[k].d - m->sides[k].nx * x - m->sides[k].ny * y;
            if (in < depth) depth = in;
        }
        if (depth > 0) sum += depth;
    }
    return sum;
}

#endif
