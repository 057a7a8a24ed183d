/* A regular polygon: one size gives all others. */
#include <math.h>

#include "base/error.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char triangle[] = "right triangle";

/* The run from whichever size was given. */
static frame_status find_run(const frame_polygon_plan_in *in, double half_deg, double *run) {
    const double tangent = tan(half_deg * FRAME_DEG);
    int given = 0;
    if (in->run_in != FRAME_NOT_GIVEN) given++, *run = in->run_in;
    if (in->width_in != FRAME_NOT_GIVEN) given++, *run = in->width_in / 2;
    if (in->side_in != FRAME_NOT_GIVEN) given++, *run = in->side_in / 2 / tangent;
    if (in->corner_run_in != FRAME_NOT_GIVEN) given++, *run = in->corner_run_in * cos(half_deg * FRAME_DEG);
    if (given == 1) return FRAME_OK;
    return frame_fail(given ? FRAME_CONFLICT : FRAME_REQUIRED, "run_in", "",
                      "one of side_in, run_in, corner_run_in, width_in",
                      "run_in: give one of side_in, run_in, corner_run_in and width_in%s", given ? ", not more" : "");
}

static frame_status compute(const frame_polygon_plan_in *in, frame_polygon_plan_out *out, frame_working *w) {
    double inner = 0;
    FRAME_GIVEN(w, n, in->sides, "", "sides");
    FRAME_STEP(w, mitre, 180 / n, "deg", "half the turn at a corner: the mitre", triangle);
    const frame_status status = find_run(in, mitre, &inner);
    if (status) return status;
    FRAME_GIVEN(w, run, inner, "in", "from the centre square to a side");
    FRAME_STEP(w, corner, 180 - 2 * mitre, "deg", "angle of a corner", triangle);
    FRAME_STEP(w, tangent, 12 * tan(mitre * FRAME_DEG), "in", "mitre on a square, against 12 in", triangle);
    FRAME_STEP(w, side, 2 * run * tan(mitre * FRAME_DEG), "in", "length of a side", triangle);
    FRAME_STEP(w, corner_run, run / cos(mitre * FRAME_DEG), "in", "from the centre to a corner", triangle);
    FRAME_STEP(w, run_foot, 12 / cos(mitre * FRAME_DEG), "in", "the hip's run for each foot of the common run",
               triangle);
    FRAME_STEP(w, area, n * side * run / 2, "in2", "area", triangle);
    out->side_in = side;
    out->run_in = run;
    out->corner_run_in = corner_run;
    out->width_in = 2 * run;
    out->corner_width_in = 2 * corner_run;
    out->corner_deg = corner;
    out->mitre_deg = mitre;
    out->mitre_on_12_in = tangent;
    out->corner_run_per_foot_in = run_foot;
    out->half_side_per_width = side / (4 * run);
    out->area_in2 = area;
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_POLYGON_CAUTION_DIAGONALS);
    out->not_checked = FRAME_BIT(FRAME_POLYGON_UNCHECKED_AS_BUILT);
    return FRAME_OK;
}

FRAME_IMPLEMENT(polygon_plan, compute);
