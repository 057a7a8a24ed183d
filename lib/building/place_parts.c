/* Posts, beams, floors and walls in the world: each laid out by the room that knows how, then moved where it stands. */
#include <math.h>

#include "base/error.h"
#include "building/floor_plane.h"
#include "building/place.h"
#include "material/lumber.h"

enum { MOST_WALLS = 20 };

static const frame_place here = {0, 0, 0, 1, 0};

static frame_status plain_stick(frame_framing_job *job, const frame_stick_in *in, const frame_placed_stick *facts) {
    frame_placed_stick placed = *facts;
    const frame_status status = frame_stick_new(in, &placed.stick);
    return status ? status : frame_place_stick(job, &here, &placed);
}

/* All pieces of a layout of the room that knows how, each a stick. */
#define PIECES(layout_of, part_of, list, the_stage)                                                           \
    static frame_status layout_of##_pieces(frame_framing_job *job, size_t i, const frame_##layout_of *layout, \
                                           const frame_place *at) {                                           \
        const frame_placed_stick facts = {.of = job->list[i].name,                                            \
                                          .level = level_of_##part_of(job, i),                                \
                                          .species = job->list[i].species,                                    \
                                          .grade = job->list[i].grade,                                        \
                                          .stage = the_stage};                                                \
        frame_status status = FRAME_OK;                                                                       \
        for (size_t p = 0; p < frame_##layout_of##_piece_count(layout) && !status; p++) {                     \
            frame_##layout_of##_piece piece;                                                                  \
            frame_placed_stick placed = facts;                                                                \
            frame_##layout_of##_piece_at(layout, p, &piece);                                                  \
            placed.name = frame_word_text("piece_kind", piece.kind);                                          \
            placed.section = piece.section;                                                                   \
            placed.size = piece.size;                                                                         \
            status = frame_##layout_of##_stick(layout, p, &placed.stick);                                     \
            if (!status) status = frame_place_stick(job, at, &placed);                                        \
        }                                                                                                     \
        return status;                                                                                        \
    }

static const char *level_of_floor(const frame_framing_job *job, size_t i) {
    return job->floors[i].level;
}
static const char *level_of_wall(const frame_framing_job *job, size_t i) {
    return job->walls[i].level;
}
static const char *level_of_stair(const frame_framing_job *job, size_t i) {
    return job->floors[job->floor_of_opening[job->opening_of_stair[i]]].level;
}
PIECES(floor, floor, floors, FRAME_STAGE_FLOOR)
PIECES(wall, wall, walls, FRAME_STAGE_WALLS)
PIECES(stairs, stair, stairs, FRAME_STAGE_STAIRS)

/* -- posts -- */

static frame_status one_post(frame_framing_job *job, size_t i) {
    const frame_part_post *post = &job->posts[i];
    frame_stick_in in;
    if (job->post_tops[i] == FRAME_NOT_GIVEN) return FRAME_OK;
    frame_stick_in_init(&in);
    const frame_status status = frame_size_dressed(post->size, 0, &in.thickness_in, &in.depth_in);
    if (status) return status;
    in.name = "post";
    in.start_x_in = in.end_x_in = post->x_in;
    in.start_y_in = in.end_y_in = post->y_in;
    in.start_z_in = job->post_feet[i];
    in.end_z_in = job->post_tops[i];
    in.crown_x = 1, in.crown_y = 0, in.crown_z = 0;
    return plain_stick(job, &in,
                       &(frame_placed_stick){.name = "post",
                                             .of = post->name,
                                             .level = post->level,
                                             .section = frame_size_name(post->size),
                                             .size = post->size,
                                             .species = post->species,
                                             .grade = post->grade,
                                             .stage = post->to_roof ? FRAME_STAGE_ROOF_BEAMS : FRAME_STAGE_FOUNDATION});
}

frame_status frame_place_posts(frame_framing_job *job) {
    for (size_t i = 0; i < job->post_count; i++) {
        const frame_status status = frame_place_or_note(job, one_post(job, i), job->posts[i].name);
        if (status) return status;
    }
    return FRAME_OK;
}

/* -- beams -- */

static frame_status one_ply(frame_framing_job *job, size_t i, int32_t ply, double thickness, double depth) {
    const frame_part_beam *beam = &job->beams[i];
    const frame_chosen *chosen = &job->chosen_beams[i];
    const double dx = beam->to_x_in - beam->from_x_in, dy = beam->to_y_in - beam->from_y_in, length = hypot(dx, dy);
    const double aside = (ply - (chosen->plies - 1) / 2.0) * thickness;
    frame_stick_in in;
    frame_stick_in_init(&in);
    in.name = "beam";
    in.thickness_in = thickness;
    in.depth_in = depth;
    in.start_x_in = beam->from_x_in - dy / length * aside;
    in.start_y_in = beam->from_y_in + dx / length * aside;
    in.end_x_in = in.start_x_in + dx;
    in.end_y_in = in.start_y_in + dy;
    in.start_z_in = in.end_z_in = frame_beam_top(job, i);
    in.axis_at = FRAME_STICK_AXIS_TOP;
    return plain_stick(job, &in,
                       &(frame_placed_stick){.name = chosen->plies > 1 ? "beam ply" : "beam",
                                             .of = beam->name,
                                             .level = beam->level,
                                             .section = frame_size_name(chosen->size),
                                             .size = chosen->size,
                                             .species = beam->species,
                                             .grade = beam->grade,
                                             .stage = beam->at_top ? FRAME_STAGE_ROOF_BEAMS : FRAME_STAGE_FOUNDATION});
}

static frame_status one_beam(frame_framing_job *job, size_t i) {
    double thickness, depth;
    if (!job->chosen_beams[i].plies) return FRAME_OK; /* it falls: told already */
    frame_status status = frame_size_dressed(job->chosen_beams[i].size, 0, &thickness, &depth);
    for (int32_t ply = 0; ply < job->chosen_beams[i].plies && !status; ply++)
        status = one_ply(job, i, ply, thickness, depth);
    return status;
}

frame_status frame_place_beams(frame_framing_job *job) {
    for (size_t i = 0; i < job->beam_count; i++) {
        const frame_status status = frame_place_or_note(job, one_beam(job, i), job->beams[i].name);
        if (status) return status;
    }
    return FRAME_OK;
}

/* -- floors -- */

/* x of the layout along the joists, y to the left of it. */
static frame_place place_of_floor(const frame_framing_job *job, size_t i, double depth) {
    const frame_part_floor *part = &job->floors[i];
    const double x0 = fmin(part->from_x_in, part->to_x_in), x1 = fmax(part->from_x_in, part->to_x_in);
    const double y0 = fmin(part->from_y_in, part->to_y_in);
    const double z = job->levels[job->level_of_floor[i]].base_in - part->sheathing_in - depth;
    return part->along == FRAME_SITE_ALONG_X ? (frame_place){x0, y0, z, 1, 0} : (frame_place){x1, y0, z, 0, 1};
}

/* Walls that run with the joists: at the floor's edge more end joists, elsewhere joists side by side. */
static void double_joists(const frame_framing_job *job, size_t i, frame_floor_in *in,
                          frame_floor_wall walls[MOST_WALLS]) {
    for (size_t k = 0; k < job->doubled.count; k++) {
        const frame_doubled *doubled = &FRAME_ITEM(frame_doubled, job->doubled, k);
        if (doubled->floor != i) continue;
        const double y = job->floors[i].along == FRAME_SITE_ALONG_X ? doubled->across : in->width_in - doubled->across;
        const int32_t plies = doubled->plies < 4 ? doubled->plies : 4;
        if (y < 8 || y > in->width_in - 8) {
            if (in->end_plies == FRAME_NOT_GIVEN_INT || plies > in->end_plies) in->end_plies = plies;
        } else if (in->wall_count < MOST_WALLS) {
            frame_floor_wall_init(&walls[in->wall_count]);
            walls[in->wall_count].y_in = y;
            walls[in->wall_count++].plies = plies;
        }
    }
    in->walls = in->wall_count ? walls : NULL;
}

/* The openings in axes of the layout: x along the joists, y across them from its right. */
static frame_status open_floor(const frame_framing_job *job, size_t i, frame_floor_in *in, frame_floor_opening **made) {
    const frame_floor_plane p = frame_floor_plane_of(&job->floors[i]);
    *made = frame_take(sizeof **made * (job->floor_opening_count + 1));
    if (!*made) return FRAME_NO_MEMORY;
    for (size_t k = 0; k < job->floor_opening_count; k++) {
        const frame_floor_edges *e = &job->floor_edges[k];
        if (job->floor_of_opening[k] != i) continue;
        frame_floor_opening *opening = &(*made)[in->opening_count++];
        frame_floor_opening_init(opening);
        opening->name = job->floor_openings[k].name;
        opening->x_in = e->v[0] - p.v0;
        opening->y_in = p.along_x ? e->u[0] - p.u0 : p.u1 - e->u[1];
        opening->length_in = e->v[1] - e->v[0];
        opening->width_in = e->u[1] - e->u[0];
        opening->header_plies = e->header_plies;
        opening->trimmer_plies = e->trimmer_plies;
    }
    in->openings = in->opening_count ? *made : NULL;
    return FRAME_OK;
}

/* What the joists bear on between their ends is told to the layout, so that it can lap them there. */
static frame_status one_floor(frame_framing_job *job, size_t i) {
    const frame_part_floor *part = &job->floors[i];
    frame_floor_beam under[50];
    frame_floor_wall walls[MOST_WALLS];
    frame_floor_in in;
    frame_floor *layout;
    double thickness, depth;
    frame_array supports = {0};
    frame_status status = frame_floor_depth(job, i, &thickness, &depth);
    if (!status) status = frame_floor_supports(job, i, &supports);
    frame_floor_in_init(&in);
    const double dx = fabs(part->to_x_in - part->from_x_in), dy = fabs(part->to_y_in - part->from_y_in);
    in.name = part->name;
    in.span_in = part->along == FRAME_SITE_ALONG_X ? dx : dy;
    in.width_in = part->along == FRAME_SITE_ALONG_X ? dy : dx;
    in.spacing_in = part->spacing_in;
    in.size = job->floor_sizes[i];
    for (size_t k = 0; k < supports.count && !status; k++) {
        const frame_support *support = &FRAME_ITEM(frame_support, supports, k);
        const frame_bearer *bearer = FRAME_BEARER(job, support->bearer);
        const int beside = bearer->tier >= frame_framing_tier(job, job->level_of_floor[i], FRAME_TIER_JOISTS);
        if (support->s < 8) {
            in.near_end = beside ? FRAME_JOIST_END_LEDGER : FRAME_JOIST_END_RIM;
        } else if (support->s > in.span_in - 8) {
            in.far_end = beside ? FRAME_JOIST_END_LEDGER : FRAME_JOIST_END_RIM;
        } else if (in.beam_count < 50) {
            frame_floor_beam_init(&under[in.beam_count]);
            under[in.beam_count++].at_in = support->s;
        }
    }
    double_joists(job, i, &in, walls);
    if (in.near_end == FRAME_NOT_GIVEN_INT) in.near_end = FRAME_JOIST_END_FREE;
    if (in.far_end == FRAME_NOT_GIVEN_INT) in.far_end = FRAME_JOIST_END_FREE;
    in.beams = in.beam_count ? under : NULL;
    frame_array_give(&supports);
    frame_floor_opening *openings = NULL;
    if (!status) status = open_floor(job, i, &in, &openings);
    if (!status) status = frame_floor_solve(&in, &layout, NULL);
    frame_give(openings);
    if (status) return status;
    const frame_place at = place_of_floor(job, i, depth);
    status = floor_pieces(job, i, layout, &at);
    frame_floor_free(layout);
    return status;
}

frame_status frame_place_floors(frame_framing_job *job) {
    for (size_t i = 0; i < job->floor_count; i++) {
        const frame_status status = frame_place_or_note(job, one_floor(job, i), job->floors[i].name);
        if (status) return status;
    }
    return FRAME_OK;
}

/* -- walls -- */

/* The drawing is the view's from here on, also when it fails. */
static frame_status keep_view(frame_framing_job *job, const char *name, frame_drawing *drawing) {
    const frame_framing_view view = {drawing, name};
    if (view.name && frame_array_push(&job->inside->views, &view)) return FRAME_OK;
    frame_drawing_free(view.drawing);
    return FRAME_NO_MEMORY;
}

static frame_status one_wall(frame_framing_job *job, size_t w) {
    const frame_part_wall *part = &job->walls[w];
    frame_wall_in in;
    frame_wall *layout;
    frame_drawing *drawing;
    if (part->existing) return FRAME_OK;
    frame_wall_opening *openings = frame_take(sizeof *openings * (job->opening_count + 1));
    if (!openings) return FRAME_NO_MEMORY;
    frame_framing_wall_describe(job, w, openings, &in);
    frame_status status = frame_wall_solve(&in, &layout, NULL);
    frame_give(openings);
    if (status) return status;
    const frame_place at = {part->from_x_in, part->from_y_in, job->levels[job->level_of_wall[w]].base_in,
                            (part->to_x_in - part->from_x_in) / in.length_in,
                            (part->to_y_in - part->from_y_in) / in.length_in};
    status = wall_pieces(job, w, layout, &at);
    if (!status) status = frame_wall_drawing(layout, &drawing);
    if (!status) status = keep_view(job, frame_framing_text(job, "%s, from outside", part->name), drawing);
    frame_wall_free(layout);
    return status;
}

frame_status frame_place_walls(frame_framing_job *job) {
    for (size_t w = 0; w < job->wall_count; w++) {
        const frame_status status = frame_place_or_note(job, one_wall(job, w), job->walls[w].name);
        if (status) return status;
    }
    return FRAME_OK;
}

/* -- stairs -- */

static frame_status one_stair(frame_framing_job *job, size_t i) {
    frame_stairs *layout;
    frame_stairs_out out;
    frame_drawing *drawing;
    frame_status status = frame_stair_solve(job, i, &layout);
    if (status) return status;
    frame_stairs_result(layout, &out);
    const frame_place at = frame_stair_place(job, i, out.total_run_in);
    status = stairs_pieces(job, i, layout, &at);
    if (!status) status = frame_stairs_drawing(layout, &drawing);
    if (!status)
        status = keep_view(job, frame_framing_text(job, "%s, from its right side", job->stairs[i].name), drawing);
    frame_stairs_free(layout);
    return status;
}

frame_status frame_place_stairs(frame_framing_job *job) {
    for (size_t i = 0; i < job->stair_count; i++) {
        const frame_status status = frame_place_or_note(job, one_stair(job, i), job->stairs[i].name);
        if (status) return status;
    }
    return FRAME_OK;
}
