/* The plan of sheets: read, bound, search, and say how good it is. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/number.h"
#include "takeoff/sheet_answer.h"
#include "takeoff/sheet_bound.h"
#include "takeoff/stock_room_sheets.h"
#include "takeoff_facts.h"
#include "working/calculation.h"

/* What is tried when there is no time limit: about half a second of a desk machine's time for a hundred parts, for many
 * thousands a few seconds. */
static int64_t work_for(const frame_sheet_job *job) {
    const int64_t work = INT64_C(2000000) + INT64_C(1000000) * job->item_count;
    const int64_t most = INT64_C(40000000) + INT64_C(30000) * job->item_count;
    return work < most ? work : most;
}

/* Whether a part fits an empty sheet of some stock of which there is one. */
static int fits_somewhere(frame_sheet_search *s, const frame_sheet_kind *kind) {
    const frame_sheet_pull pull = {1, 1};
    for (int i = 0; i < s->job->stock_count; i++) {
        const frame_sheet_bin bin = {.stock = i};
        if (!s->job->stocks[i].available) continue;
        for (int k = 0; k < kind->shape_count; k++) {
            frame_sheet_point at;
            double key = 1e300;
            if (frame_sheet_fit(&s->fitter, &bin, kind->first_shape + k, pull, &at, &key)) return 1;
        }
    }
    return 0;
}

static void write_size(double width, double height, char *text, size_t size) {
    char one[32], other[32];
    frame_number_print(width, 8, one, sizeof one);
    frame_number_print(height, 8, other, sizeof other);
    snprintf(text, size, "%s by %s", one, other);
}

static frame_status refuse_part(const frame_sheet_job *job, int number) {
    const frame_sheet_kind *kind = &job->kinds[number];
    const frame_sheet_box box = frame_sheet_box_of(kind->corners, kind->corner_count);
    const frame_sheet_stock *largest = &job->stocks[0];
    char field[40], value[72], valid[140], most[72];
    for (int i = 1; i < job->stock_count; i++)
        if (job->stocks[i].area > largest->area && job->stocks[i].available) largest = &job->stocks[i];
    snprintf(field, sizeof field, "parts[%d]", number);
    write_size(box.x1 - box.x0, box.y1 - box.y0, value, sizeof value);
    write_size(largest->width, largest->height, most, sizeof most);
    snprintf(valid, sizeof valid, "a part that fits a sheet; the largest is %s in", most);
    return frame_fail(FRAME_IMPOSSIBLE, field, value, valid,
                      "%s: %s in (%s) fits no sheet in any turn allowed; valid is %s", field, value,
                      kind->name ? kind->name : "a part", valid);
}

static frame_status refuse_parts(frame_sheet_search *s) {
    for (int i = 0; i < s->job->kind_count; i++)
        if (!fits_somewhere(s, &s->job->kinds[i])) return s->fitter.failed ? FRAME_NO_MEMORY : refuse_part(s->job, i);
    return FRAME_OK;
}

static frame_status refuse_rest(const frame_sheet_search *s) {
    char value[48];
    snprintf(value, sizeof value, "%d of %d parts placed", s->job->item_count - (int)s->layout.left.count,
             s->job->item_count);
    return frame_fail(FRAME_IMPOSSIBLE, "sheets", value, "more sheets available",
                      "sheets: %s: no layout of all parts on the sheets available was found; valid is more of them",
                      value);
}

static void say_how_good(const frame_sheet_plan_in *in, const frame_sheet_search *s, const frame_sheet_bounds *bounds,
                         frame_sheet_plan_out *out) {
    const frame_sheet_job *job = s->job;
    out->bound = bounds->sheets < out->sheets_used ? bounds->sheets : out->sheets_used;
    out->cost_bound = fmin(bounds->cost, out->cost);
    out->optimal = out->cost <= out->cost_bound + 1e-9 && out->sheets_used <= out->bound;
    out->sheets_by_area = bounds->by_area;
    out->sheets_one_a_part = job->item_count;
    out->waste_share = 1 - out->part_area_in2 / out->sheet_area_in2;
    out->lost_share = 1 - (out->part_area_in2 + out->offcut_area_in2) / out->sheet_area_in2;
    out->known = FRAME_KNOWN_USER;
    out->cautions |= FRAME_BIT(FRAME_SHEET_CAUTION_TRUE_SHEET);
    if (!out->optimal) out->cautions |= FRAME_BIT(FRAME_SHEET_CAUTION_NOT_PROVEN);
    if (job->along_length) out->cautions |= FRAME_BIT(FRAME_SHEET_CAUTION_ALONG_LENGTH);
    out->ended = out->optimal ? FRAME_STOCK_END_PROVEN : s->ended ? s->ended : FRAME_STOCK_END_EFFORT;
    if (out->ended == FRAME_STOCK_END_TIME || out->ended == FRAME_STOCK_END_CANCELLED)
        out->cautions |= FRAME_BIT(FRAME_SHEET_CAUTION_STOPPED);
    if (s->shelves.sheets >= 0) out->sheets_on_shelves = s->shelves.sheets, out->shelves_cost = s->shelves.cost;
    out->not_checked = FRAME_BIT(FRAME_SHEET_UNCHECKED_EDGES);
    if (in->support_spacing_in == FRAME_NOT_GIVEN || in->least_strip_in == FRAME_NOT_GIVEN)
        out->not_checked |= FRAME_BIT(FRAME_SHEET_UNCHECKED_SUPPORTS);
}

static void record(const frame_sheet_plan_in *in, const frame_sheet_bounds *bounds, const frame_sheet_plan_out *out,
                   frame_working *w) {
    FRAME_HEADING(w, "Plan of sheets");
    FRAME_GIVEN(w, n, out->parts_cut, "", "parts");
    FRAME_GIVEN(w, kerf, in->kerf_in, "in", "kerf: parts lie at least so far apart");
    FRAME_GIVEN(w, A_parts, out->part_area_in2, "in2", "area of all parts");
    FRAME_GIVEN(w, A_sheets, out->sheet_area_in2, "in2", "area of the sheets and offcuts of this plan");
    FRAME_STEP(w, waste, 1 - A_parts / A_sheets, "", "share of the sheets not in a part", "arithmetic");
    FRAME_GIVEN(w, A_kept, out->offcut_area_in2, "in2", "area of the offcuts kept");
    FRAME_STEP(w, lost, 1 - (A_parts + A_kept) / A_sheets, "", "share of the sheets lost", "arithmetic");
    FRAME_GIVEN(w, n_area, bounds->by_area, "", "sheets by area, each part with its share of kerf");
    FRAME_GIVEN(w, n_halves, bounds->by_halves, "", "sheets by parts larger than half of one");
    FRAME_GIVEN(w, n_conflict, bounds->by_conflict, "", "sheets by parts that cannot lie on one together");
    FRAME_GIVEN(w, n_dual, bounds->by_dual, "",
                "sheets for rectangles, by dual feasible functions of width and height");
    FRAME_STEP(w, n_bound, fmax(fmax(n_area, n_halves), fmax(n_conflict, n_dual)), "", "no plan buys fewer sheets",
               "arithmetic");
    FRAME_GIVEN(w, n_sheets, out->sheets_used, "", "sheets this plan buys");
    FRAME_GIVEN(w, cost, out->cost, "", "price of this plan");
    FRAME_GIVEN(w, cost_bound, out->cost_bound, "", "no plan costs less");
    FRAME_STEP(w, gap, cost - cost_bound, "", "what a better plan could save at most", "arithmetic");
    (void)n, (void)kerf, (void)waste, (void)lost, (void)n_bound, (void)n_sheets, (void)gap;
}

static frame_status solve_search(const frame_sheet_plan_in *in, frame_sheet_search *s, frame_answer *answer,
                                 frame_sheet_plan_out *out, frame_working *w) {
    frame_sheet_bounds bounds;
    frame_status status = refuse_parts(s);
    if (!status) status = frame_sheet_bounds_of(s, &bounds);
    if (status) return status;
    s->limits = (frame_sheet_limits){.cost_bound = bounds.cost, .sheet_bound = bounds.sheets, .work = work_for(s->job)};
    if (in->time_limit_s != FRAME_NOT_GIVEN) s->limits.until = frame_sheet_clock() + in->time_limit_s;
    s->fitter.work = 0;
    s->watch = in->watch;
    if ((status = frame_sheet_search_run(s))) return status;
    if (s->layout.left.count) return refuse_rest(s);
    out->cautions = 0;
    if ((status = frame_sheet_answer_write(in, s->job, s, answer, out))) return status;
    say_how_good(in, s, &bounds, out);
    if (w) record(in, &bounds, out, w);
    return FRAME_OK;
}

static frame_status solve_job(const frame_sheet_plan_in *in, frame_answer *answer, frame_sheet_plan_out *out,
                              frame_working *w) {
    frame_sheet_job job;
    frame_sheet_search search;
    frame_status status = frame_sheet_job_read(in, &job);
    if (!status) {
        status = frame_sheet_search_begin(&search, &job);
        if (!status) status = solve_search(in, &search, answer, out, w);
        frame_sheet_search_give(&search);
    }
    frame_sheet_job_give(&job);
    return status;
}

static frame_status solve(const frame_sheet_plan_in *in, frame_answer *answer, frame_sheet_plan_out *out,
                          frame_working *w) {
    frame_arena arena = {0};
    frame_sheet_plan_in joined = *in;
    frame_status status = frame_room_join_sheets(&joined, &arena);
    if (!status) status = solve_job(&joined, answer, out, w);
    frame_arena_give(&arena);
    return status;
}

FRAME_IMPLEMENT_ANSWER(sheet_plan, solve);
