/* Stairs: half of what lies on them hangs on the header joist at their head, half stands where their foot is. */
#include <math.h>

#include "base/error.h"
#include "building/floor_plane.h"
#include "building/place.h"

#define RISER_BOARD 0.75 /* common practice */

/* Which side of the opening, by x or y, and whether the greater one. */
static int is_along_x(frame_site_side head) {
    return head == FRAME_SITE_SIDE_LOW_X || head == FRAME_SITE_SIDE_HIGH_X;
}
static int is_high(frame_site_side head) {
    return head == FRAME_SITE_SIDE_HIGH_X || head == FRAME_SITE_SIDE_HIGH_Y;
}

/* Its well in plan. */
static void well_of(const frame_framing_job *job, size_t i, double x[2], double y[2]) {
    const frame_part_floor_opening *part = &job->floor_openings[job->opening_of_stair[i]];
    x[0] = fmin(part->from_x_in, part->to_x_in), x[1] = fmax(part->from_x_in, part->to_x_in);
    y[0] = fmin(part->from_y_in, part->to_y_in), y[1] = fmax(part->from_y_in, part->to_y_in);
}

static frame_status describe(const frame_framing_job *job, size_t i, frame_stairs_in *in) {
    const frame_part_stair *part = &job->stairs[i];
    const size_t floor = job->floor_of_opening[job->opening_of_stair[i]];
    double x[2], y[2];
    well_of(job, i, x, y);
    frame_stairs_in_init(in);
    in->name = part->name;
    in->rise_in = job->levels[job->level_of_floor[floor]].base_in - part->foot_in;
    in->width_in = part->width_in;
    in->size = part->size;
    in->edition = job->conditions.code_edition;
    in->landings = 0;
    in->riser_thickness_in = RISER_BOARD;
    if (!(in->rise_in > 0))
        return frame_fail(FRAME_IMPOSSIBLE, "foot_in", "", "a height below the floor it climbs to",
                          "foot_in: it stands above the floor it climbs to");
    if (part->width_in > (is_along_x(part->head) ? y[1] - y[0] : x[1] - x[0]) + 1e-9)
        return frame_fail_number(FRAME_IMPOSSIBLE, "width_in", part->width_in, "at most the width of its opening");
    return FRAME_OK;
}

/* Where its well is shorter than its run, one passes under the well's edge: the stair is chosen so that heads clear it.
 */
static frame_status clear_heads(const frame_framing_job *job, size_t i, frame_stairs_in *in, frame_stairs **made) {
    const size_t floor = job->floor_of_opening[job->opening_of_stair[i]];
    double x[2], y[2], thickness = 0, depth = 0;
    frame_stairs_out out;
    well_of(job, i, x, y);
    const double well = is_along_x(job->stairs[i].head) ? x[1] - x[0] : y[1] - y[0];
    frame_stairs_result(*made, &out);
    if (well >= out.total_run_in) return FRAME_OK;
    frame_stairs_free(*made);
    *made = NULL;
    const frame_status status = frame_floor_depth(job, floor, &thickness, &depth);
    in->well_length_in = well;
    in->ceiling_in = in->rise_in - job->floors[floor].sheathing_in - depth;
    return status ? status : frame_stairs_solve(in, made, NULL);
}

frame_status frame_stair_solve(const frame_framing_job *job, size_t i, frame_stairs **made) {
    frame_stairs_in in;
    *made = NULL;
    frame_status status = describe(job, i, &in);
    if (!status) status = frame_stairs_solve(&in, made, NULL);
    if (!status) status = clear_heads(job, i, &in, made);
    return status ? frame_fail_within("stair %.60s, ", job->stairs[i].name) : FRAME_OK;
}

frame_place frame_stair_place(const frame_framing_job *job, size_t i, double run) {
    const frame_part_stair *part = &job->stairs[i];
    const double sign = is_high(part->head) ? 1 : -1;
    double x[2], y[2];
    well_of(job, i, x, y);
    const int along_x = is_along_x(part->head), high = is_high(part->head);
    frame_place at = {along_x ? x[high] : (x[0] + x[1]) / 2, along_x ? (y[0] + y[1]) / 2 : y[high], part->foot_in,
                      along_x ? sign : 0, along_x ? 0 : sign};
    /* Back down its run and the thickness of the last riser's board, which lies on the header; half its width to the
     * right. */
    const double back = run + RISER_BOARD;
    at.x -= back * at.cosine - part->width_in / 2 * at.sine;
    at.y -= back * at.sine + part->width_in / 2 * at.cosine;
    return at;
}

/* The header joist at its head; where it comes up along the joists' side, the trimmer there. */
static size_t head_of(const frame_framing_job *job, size_t i) {
    const frame_part_stair *part = &job->stairs[i];
    const size_t opening = job->opening_of_stair[i];
    const frame_part_floor *floor = &job->floors[job->floor_of_opening[opening]];
    const int joists_along_x = floor->along == FRAME_SITE_ALONG_X;
    const frame_floor_edges *e = &job->floor_edges[opening];
    return (is_along_x(part->head) == joists_along_x ? e->headers : e->trimmers)[is_high(part->head)];
}

/* The floor of a level on which a foot stands. */
static size_t floor_under(const frame_framing_job *job, double x, double y, double foot) {
    for (size_t level = 0; level < job->level_count; level++) {
        if (fabs(job->levels[level].base_in - foot) > 3) continue;
        const size_t floor = frame_floor_over(job, level, x, y, 0);
        if (floor != FRAME_NOBODY) return floor;
    }
    return FRAME_NOBODY;
}

static frame_status stand(frame_framing_job *job, size_t i, double x, double y, const frame_by_kind *load) {
    const frame_part_stair *part = &job->stairs[i];
    const size_t floor = floor_under(job, x, y, part->foot_in);
    if (floor != FRAME_NOBODY) {
        const frame_on_floor one = {x, y, *load};
        return frame_floor_carry(job, floor, part->name, &one, 1);
    }
    const frame_status status =
        frame_deliver_down(job, FRAME_BEARER_STAIR, part->name, FRAME_BEARER_FOOTING, part->name, x, y, load);
    return status ? status : frame_framing_pad(job, part->name, x, y, FRAME_NOT_GIVEN, load, FRAME_NOBODY);
}

/* A stringer's share, as a simple beam on plan. */
static frame_status stringer(frame_framing_job *job, size_t i, const frame_place *at, double run, double aside,
                             const frame_by_kind *half) {
    const size_t head = head_of(job, i);
    const double low_x = at->x - aside * at->sine, low_y = at->y + aside * at->cosine;
    const double high_x = low_x + run * at->cosine, high_y = low_y + run * at->sine;
    const frame_bearer *on = FRAME_BEARER(job, head);
    const double s = fmin(fmax(hypot(high_x - on->x[0], high_y - on->y[0]), 0), on->length);
    const frame_status status =
        frame_deliver(job, FRAME_BEARER_STAIR, job->stairs[i].name, head, s, high_x, high_y, half);
    return status ? status : stand(job, i, low_x, low_y, half);
}

static frame_status one_stair(frame_framing_job *job, size_t i) {
    const frame_part_stair *part = &job->stairs[i];
    frame_stairs *made;
    frame_stairs_out out;
    frame_status status = frame_stair_solve(job, i, &made);
    if (status) return status;
    frame_stairs_result(made, &out);
    frame_stairs_free(made);
    const frame_place at = frame_stair_place(job, i, out.total_run_in);
    const double area = part->width_in * out.total_run_in / 144;
    frame_by_kind all = {{0}}, half = {{0}};
    all.k[FRAME_LOAD_DEAD] = part->dead_psf * area;
    all.k[FRAME_LOAD_LIVE] = part->live_psf * area;
    frame_by_kind_add(&job->put, &all, 1);
    frame_by_kind_add(&half, &all, 0.5 / out.stringers);
    for (int32_t k = 0; k < out.stringers && !status; k++)
        status =
            stringer(job, i, &at, out.total_run_in + RISER_BOARD, part->width_in * (k + 0.5) / out.stringers, &half);
    return status ? status : frame_framing_notes(job, part->name, &out);
}

frame_status frame_framing_stairs(frame_framing_job *job) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < job->stair_count && !status; i++) status = one_stair(job, i);
    return status;
}
