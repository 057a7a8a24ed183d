/* Beams, ridges, hips and valleys: what stands on them, what stands under them, their size, and what they hand on. */
#include <math.h>

#include "building/framing.h"
#include "material/lumber.h"

/* -- what holds the ends of a line of a roof -- */

static int is_roof_line(const frame_bearer *bearer) {
    return bearer->kind == FRAME_BEARER_HIP || bearer->kind == FRAME_BEARER_VALLEY ||
           bearer->kind == FRAME_BEARER_RIDGE || bearer->kind == FRAME_BEARER_BREAK;
}

static int is_under_roof(const frame_bearer *bearer) {
    return (bearer->kind == FRAME_BEARER_RIDGE && !bearer->board) || bearer->tier % FRAME_TIERS == FRAME_TIER_ROOF_POST;
}

/* Height of a line's end over the plates. */
static double height_at(const frame_framing_job *job, const frame_bearer *line, int end) {
    frame_roof_solve_line facts;
    frame_roof_solve_point point;
    frame_roof_solve_line_at(job->roofs[line->part].solved, line->line, &facts);
    frame_roof_solve_point_at(job->roofs[line->part].solved, (size_t)(end ? facts.to_point : facts.from_point), &point);
    return point.z_in;
}

/* Whether a point lies over one of the roof's building lines. */
static int is_over_edge(const frame_part_roof *roof, double x, double y) {
    for (size_t i = 0; i < roof->corner_count; i++) {
        const frame_roof_corner *a = &roof->corners[i], *b = &roof->corners[(i + 1) % roof->corner_count];
        const double length = hypot(b->x_in - a->x_in, b->y_in - a->y_in);
        const double ux = (b->x_in - a->x_in) / length, uy = (b->y_in - a->y_in) / length;
        const double along = (x - a->x_in) * ux + (y - a->y_in) * uy, off = (x - a->x_in) * uy - (y - a->y_in) * ux;
        if (fabs(off) < 1e-6 && along > -1e-6 && along < length + 1e-6) return 1;
    }
    return 0;
}

/* A ridge's end on a gable or against a wall stands on that wall; a hip's or valley's foot on the walls of its corner.
 * Else it takes a post up to the roof, or another line that is carried. Interior walls do not reach it. */
static size_t under_end(const frame_framing_job *job, size_t place, int end, double *at) {
    const frame_bearer *line = FRAME_BEARER(job, place);
    const size_t level = job->roofs[line->part].level;
    const double x = line->x[end], y = line->y[end];
    const int32_t roof = frame_framing_tier(job, level, FRAME_TIER_ROOF_POST);
    const frame_below up = {roof, line->tier, line->foot, FRAME_STOREY_GAP};
    size_t found = frame_bearer_under(job, x, y, &up, at);
    if (found != FRAME_NOBODY && is_under_roof(FRAME_BEARER(job, found))) return found;
    /* The foot of a half hip's hip lies on the gable under it. */
    const int on_edge = height_at(job, line, end) < 1e-6 || line->kind == FRAME_BEARER_RIDGE ||
                        line->kind == FRAME_BEARER_BREAK || (!end && is_over_edge(&job->roofs[line->part].roof, x, y));
    if (!on_edge) return FRAME_NOBODY;
    const frame_below walls = {frame_framing_tier(job, level, FRAME_TIER_TOP_POST), roof, line->foot, FRAME_STOREY_GAP};
    found = frame_bearer_under(job, x, y, &walls, at);
    return found != FRAME_NOBODY ? found : frame_bearer_beside(job, x, y, at);
}

static frame_status roof_supports(const frame_framing_job *job, size_t place, frame_array *supports) {
    const frame_bearer *line = FRAME_BEARER(job, place);
    frame_array all = {.item_size = sizeof(frame_support)};
    frame_status status = frame_bearer_supports(job, line, &all);
    for (size_t i = 0; i < all.count && !status; i++) { /* posts up to the roof anywhere along it */
        const frame_support *support = &FRAME_ITEM(frame_support, all, i);
        if (FRAME_BEARER(job, support->bearer)->tier % FRAME_TIERS != FRAME_TIER_ROOF_POST) continue;
        if (!frame_array_push(supports, support)) status = FRAME_NO_MEMORY;
    }
    frame_array_give(&all);
    for (int end = 0; end < 2 && !status; end++) {
        frame_support support = {end ? line->length : 0, 0, 0};
        support.bearer = under_end(job, place, end, &support.at);
        if (support.bearer != FRAME_NOBODY && !frame_array_push(supports, &support)) status = FRAME_NO_MEMORY;
    }
    if (!status) frame_supports_merge(job, supports);
    return status;
}

/* -- its facts -- */

static void describe_beam(const frame_framing_job *job, const frame_bearer *bearer, frame_line_beam *beam) {
    const frame_part_beam *part = &job->beams[bearer->part];
    beam->size = part->size;
    beam->plies = part->plies;
    beam->species = part->species;
    beam->grade = part->grade;
    beam->bearing_in = part->bearing_in;
    beam->wet = part->wet;
    if (!part->at_top) beam->deck = frame_floor_deck_of(job, job->level_of_beam[bearer->part]) + 1; /* none: 0 */
    beam->unbraced_in = 0; /* joists or rafters on it hold its top */
    beam->live_limit = 360;
    beam->total_limit = 240;
    beam->most_plies = 3;
}

static void describe_roof_line(const frame_framing_job *job, const frame_bearer *bearer, frame_line_beam *beam) {
    const frame_part_roof *part = &job->roofs[bearer->part].roof;
    beam->size = part->beam_size;
    beam->plies = part->beam_plies;
    beam->species = part->species;
    beam->grade = part->grade;
    beam->bearing_in = 3;
    beam->unbraced_in = 0; /* jacks or rafters at every layout mark hold it */
    beam->live_limit = 240;
    beam->total_limit = 180;
    beam->most_plies = 3;
    double thickness, depth;
    const frame_roof_shape *shape = &job->roofs[bearer->part];
    if (!frame_size_dressed(shape->size, 0, &thickness, &depth))
        beam->least_depth = fmin(depth * sqrt(1 + shape->first_slope * shape->first_slope), 11.25);
}

/* -- what it hands on -- */

double frame_beam_top(const frame_framing_job *job, size_t i) {
    const size_t level = job->level_of_beam[i];
    const frame_part_level *at = &job->levels[level];
    if (job->beams[i].at_top) return at->base_in + at->height_in;
    double under = 0;
    for (size_t f = 0; f < job->floor_count; f++) {
        double thickness = 0, joist = 0;
        if (job->level_of_floor[f] != level || frame_floor_depth(job, f, &thickness, &joist)) continue;
        under = fmax(under, joist + job->floors[f].sheathing_in);
    }
    return at->base_in - under;
}

static double bottom_of(const frame_framing_job *job, const frame_bearer *bearer, double depth, double s) {
    if (bearer->kind == FRAME_BEARER_BEAM) return frame_beam_top(job, bearer->part) - depth;
    const size_t level = job->roofs[bearer->part].level;
    const double low = height_at(job, bearer, 0), high = height_at(job, bearer, 1);
    const double t = bearer->length > 0 ? s / bearer->length : 0;
    return job->levels[level].base_in + job->levels[level].height_in + low + t * (high - low) - depth;
}

static frame_status hand_on(frame_framing_job *job, const frame_bearer *bearer, const frame_line_beam *beam,
                            const frame_line_result *result) {
    frame_by_kind *reactions = frame_take(sizeof *reactions * beam->support_count);
    if (!reactions) return FRAME_NO_MEMORY;
    frame_status status = frame_line_reactions(beam, result->self_plf, reactions);
    for (size_t i = 0; i < beam->support_count && !status; i++) {
        double x, y;
        frame_bearer_point(bearer, beam->supports[i].s, &x, &y);
        frame_bearer_lower(job, beam->supports[i].bearer, bottom_of(job, bearer, result->depth, beam->supports[i].s));
        status = frame_deliver(job, bearer->kind, bearer->name, beam->supports[i].bearer, beam->supports[i].at, x, y,
                               &reactions[i]);
    }
    frame_give(reactions);
    return status;
}

/* With fewer than two supports it falls: all it carries is listed as carried by nothing. */
frame_status frame_line_fall(frame_framing_job *job, const frame_bearer *bearer) {
    const char *text = frame_framing_text(job,
                                          "%s has nothing to stand on at %s: give it a post, a wall or a beam there; "
                                          "where sheathing or members beside it "
                                          "seem to hold it, that is not checked here.",
                                          bearer->name, "one end or both");
    frame_status status = text ? frame_framing_note_add(job, FRAME_NOTE_CAUTION, bearer->name, text) : FRAME_NO_MEMORY;
    for (size_t i = 0; i < bearer->points.count && !status; i++) {
        const frame_at_point *point = &FRAME_ITEM(frame_at_point, bearer->points, i);
        double x, y;
        frame_bearer_point(bearer, point->s, &x, &y);
        status =
            frame_deliver_down(job, bearer->kind, bearer->name, FRAME_BEARER_NOTHING, "nothing", x, y, &point->load);
    }
    return status;
}

static frame_status carry(frame_framing_job *job, const frame_bearer *bearer, const frame_array *supports) {
    frame_line_result result;
    frame_line_beam beam = {.name = bearer->name,
                            .kind = bearer->kind,
                            .length = bearer->length,
                            .points = bearer->points.items,
                            .point_count = bearer->points.count,
                            .supports = supports->items,
                            .support_count = supports->count};
    if (is_roof_line(bearer))
        describe_roof_line(job, bearer, &beam);
    else
        describe_beam(job, bearer, &beam);
    frame_status status = frame_line_choose(job, &beam, &result);
    if (status) return status;
    job->put.k[FRAME_LOAD_DEAD] += result.self_plf * bearer->length / 12;
    status = frame_framing_chosen(job, bearer, result.size, result.plies);
    return status ? status : hand_on(job, bearer, &beam, &result);
}

frame_status frame_framing_line(frame_framing_job *job, size_t place) {
    const frame_bearer bearer = *FRAME_BEARER(job, place);
    frame_array supports = {.item_size = sizeof(frame_support)};
    if (!bearer.points.count && is_roof_line(&bearer)) return FRAME_OK;
    if (bearer.board) return frame_roof_board(job, place);
    if (bearer.kind == FRAME_BEARER_TRIMMER || bearer.kind == FRAME_BEARER_HEADER_JOIST)
        return frame_floor_edge(job, place);
    frame_status status =
        is_roof_line(&bearer) ? roof_supports(job, place, &supports) : frame_bearer_supports(job, &bearer, &supports);
    if (!status) status = supports.count < 2 ? frame_line_fall(job, &bearer) : carry(job, &bearer, &supports);
    frame_array_give(&supports);
    return status;
}
