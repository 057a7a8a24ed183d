/* Floors: joists on their marks, cut to length, checked; rims. */
#include "base/error.h"
#include "building/job.h"
#include "building_facts.h"
#include "material/lumber.h"

/* A square-ended stick, for its drawing. */
static frame_status square_stick(const char *name, const frame_building_floor *floor, double length,
                                 frame_stick **stick) {
    frame_stick_in in;
    double thickness, depth;
    frame_status status = frame_size_dressed(floor->size, 0, &thickness, &depth);
    if (status) return status;
    frame_stick_in_init(&in);
    in.name = name;
    in.section = frame_size_name(floor->size);
    in.thickness_in = thickness;
    in.depth_in = depth;
    in.length_in = length;
    return frame_stick_new(&in, stick);
}

static frame_status add_member(frame_job *job, const frame_building_floor *floor, const char *name, double length,
                               int32_t count) {
    frame_job_piece piece = {.name = name,
                             .of = floor->name,
                             .cuts = "square both ends",
                             .size = floor->size,
                             .species = floor->species,
                             .grade = floor->grade,
                             .length_in = length,
                             .count = count};
    const frame_status status = square_stick(name, floor, length, &piece.stick);
    return status ? status : frame_job_member(job, &piece);
}

static frame_status check(frame_job *job, const frame_building_floor *floor) {
    frame_joist_check_in in;
    frame_joist_check_out out;
    frame_working *working;
    frame_joist_check_in_init(&in);
    in.use = FRAME_USE_FLOOR;
    in.size = floor->size;
    in.species = floor->species;
    in.grade = floor->grade;
    in.span_in = floor->span_in;
    in.spacing_in = floor->spacing_in;
    in.live_psf = floor->live_psf;
    in.dead_psf = floor->dead_psf;
    in.bearing_in = floor->bearing_in;
    frame_status status = frame_working_new(&working);
    if (status) return status;
    status = frame_joist_check(&in, &out, working);
    if (status) {
        frame_working_free(working);
        return status;
    }
    return frame_job_check(job, &(frame_job_result){.name = floor->name,
                                                    .what = "joist_check",
                                                    .ratio = out.ratio,
                                                    .governs = frame_word_text("governing", out.governs),
                                                    .passes = out.passes,
                                                    .known = out.known,
                                                    .out = &out,
                                                    .working = working});
}

static frame_status one(frame_job *job, size_t i) {
    frame_building_floor floor;
    uint64_t assumed = 0;
    double thickness, depth;
    int32_t count;
    frame_status status = FRAME_JOB_ITEM(job, floor, floors, i, &floor, &assumed);
    if (!status) status = frame_job_assumed(job, floor.name, &frame_building_floor_facts, assumed);
    if (!status) status = frame_size_dressed(floor.size, 0, &thickness, &depth);
    if (!status) status = frame_job_layout(job, floor.name, floor.length_in, floor.spacing_in, thickness, &count);
    if (status) return status;
    if (2 * floor.rim_thickness_in >= 2 * floor.bearing_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "rim_thickness_in", floor.rim_thickness_in,
                                 "less than bearing_in: the rim would leave the joist no bearing");
    const double length = floor.span_in + 2 * floor.bearing_in - 2 * floor.rim_thickness_in;
    status = add_member(job, &floor, "joist", length, count);
    if (!status && floor.rim_thickness_in > 0) status = add_member(job, &floor, "rim", floor.length_in, 2);
    return status ? status : check(job, &floor);
}

frame_status frame_job_floors(frame_job *job) {
    for (size_t i = 0; i < job->in->floor_count; i++)
        if (one(job, i)) return frame_fail_within("floors[%zu].", i);
    return FRAME_OK;
}
