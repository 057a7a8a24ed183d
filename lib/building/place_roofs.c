/* Roofs in the world: all members of each, cut and proved by the roof room; their plates are the walls' own. */
#include <math.h>

#include <frame/tape.h>

#include "base/error.h"
#include "building/place.h"
#include "material/lumber.h"

/* The size that was chosen for lines of a kind on this roof: the deepest of them. */
static frame_size size_of(const frame_framing_job *job, size_t r, frame_bearer_kind kind, int32_t *plies) {
    frame_size most = FRAME_NOT_GIVEN_INT;
    for (size_t i = 0; i < job->chosen_lines.count; i++) {
        const frame_chosen *line = &FRAME_ITEM(frame_chosen, job->chosen_lines, i);
        if (line->roof != r || line->is_ridge != (int32_t)kind) continue;
        if (most == FRAME_NOT_GIVEN_INT || line->size > most) most = line->size;
        if (line->plies > *plies) *plies = line->plies;
    }
    return most;
}

static double plate_width(const frame_framing_job *job, size_t level) {
    for (size_t w = 0; w < job->wall_count; w++) {
        double thickness, depth;
        if (job->level_of_wall[w] == level && !frame_size_dressed(job->walls[w].size, 0, &thickness, &depth))
            return depth;
    }
    return 3.5;
}

static void describe(const frame_framing_job *job, size_t r, frame_roof_members_in *in) {
    const frame_roof_shape *shape = &job->roofs[r];
    int32_t hips = 1, valleys = 1, ridges = 1;
    frame_roof_members_in_init(in);
    in->corners = shape->roof.corners, in->corner_count = shape->roof.corner_count;
    in->slopes = shape->roof.slopes, in->slope_count = shape->roof.slope_count;
    in->kinds = shape->roof.kinds, in->kind_count = shape->roof.kind_count;
    in->upper_slopes = shape->roof.upper_slopes, in->upper_slope_count = shape->roof.upper_slope_count;
    in->break_in = shape->roof.break_in;
    in->half_hip_in = shape->roof.half_hip_in;
    in->rafter_size = shape->size;
    in->spacing_in = shape->roof.spacing_in;
    in->overhang_in = shape->roof.overhang_in;
    in->seat_in = shape->roof.seat_in;
    in->plate_width_in = plate_width(job, shape->level);
    in->ridge_size = size_of(job, r, FRAME_BEARER_RIDGE, &ridges);
    in->hip_size = size_of(job, r, FRAME_BEARER_HIP, &hips);
    in->valley_size = size_of(job, r, FRAME_BEARER_VALLEY, &valleys);
    in->hip_plies = hips;
    in->valley_plies = valleys;
    in->prove = 0; /* with everything else, by the sweep over the site */
}

/* Plies of a line lie in one piece of their whole thickness: each is bought singly. */
static frame_status one_piece(frame_framing_job *job, size_t r, const frame_roof_members *members, size_t i,
                              const frame_place *at, int32_t ridge_plies) {
    const frame_part_roof *part = &job->roofs[r].roof;
    frame_roof_members_piece piece;
    frame_roof_members_piece_at(members, i, &piece);
    if (piece.kind == FRAME_MEMBER_PLATE) return FRAME_OK;
    frame_placed_stick placed = {.name = frame_word_text("roof_member", piece.kind),
                                 .of = part->name,
                                 .level = part->level,
                                 .section = piece.section,
                                 .size = piece.size,
                                 .species = part->species,
                                 .grade = part->grade,
                                 .stage = FRAME_STAGE_ROOF,
                                 .plies = piece.plies};
    if (piece.kind == FRAME_MEMBER_RIDGE && ridge_plies > 1) placed.plies = ridge_plies;
    const frame_status status = frame_roof_members_stick(members, i, &placed.stick);
    return status ? status : frame_place_stick(job, at, &placed);
}

/* The roof room lays a ridge of one ply: where it takes more, what is cut against it is so much shorter. */
static frame_status tell_ridge(frame_framing_job *job, size_t r, int32_t plies) {
    if (plies < 2) return FRAME_OK;
    char off[32];
    if (frame_tape_format(0.75 * (plies - 1), NULL, off, sizeof off)) off[0] = 0;
    const char *text = frame_framing_text(job,
                                          "Its ridge is of %d plies, all of them bought, but placed and drawn as one: "
                                          "take %s, level, off each rafter, hip and "
                                          "valley that is cut against its sides.",
                                          (int)plies, off);
    return text ? frame_framing_note_add(job, FRAME_NOTE_CAUTION, job->roofs[r].roof.name, text) : FRAME_NO_MEMORY;
}

static frame_status one_roof(frame_framing_job *job, size_t r) {
    frame_roof_members_in in;
    frame_roof_members *members;
    frame_roof_members_out out;
    int32_t ridges = 1;
    describe(job, r, &in);
    size_of(job, r, FRAME_BEARER_RIDGE, &ridges);
    frame_status status = frame_roof_members_solve(&in, &members, NULL);
    if (status) return status;
    const frame_part_level *level = &job->levels[job->roofs[r].level];
    const frame_place at = {0, 0, level->base_in + level->height_in, 1, 0};
    for (size_t i = 0; i < frame_roof_members_piece_count(members) && !status; i++)
        status = one_piece(job, r, members, i, &at, ridges);
    if (!status) status = tell_ridge(job, r, ridges);
    frame_roof_members_result(members, &out);
    if (!status) status = frame_framing_notes(job, job->roofs[r].roof.name, &out);
    frame_roof_members_free(members);
    return status;
}

frame_status frame_place_roofs(frame_framing_job *job) {
    for (size_t r = 0; r < job->roof_count; r++) {
        const frame_status status = frame_place_or_note(job, one_roof(job, r), job->roofs[r].roof.name);
        if (status) return status;
    }
    return FRAME_OK;
}
