/* Roofs: rafters on their marks, cut by the kernel, checked; what they hand on to walls and ties. */
#include <string.h>

#include "base/error.h"
#include "building/job.h"
#include "building_facts.h"
#include "material/lumber.h"
#include "text/writer.h"

static void describe(const frame_building_roof *roof, frame_rafter_in *in) {
    frame_rafter_in_init(in);
    in->run_in = roof->run_in;
    in->slope = roof->slope;
    in->size = roof->size;
    in->seat_in = roof->seat_in;
    in->overhang_in = roof->overhang_in;
    in->ridge_thickness_in = roof->faces == 2 ? roof->ridge_thickness_in : 0;
    in->ledger_thickness_in = roof->faces == 1 ? roof->ridge_thickness_in : 0;
    in->tail = roof->tail;
    in->name = "rafter";
}

static const char *cuts_text(frame_job *job, const frame_building_roof *roof, const frame_rafter_out *rafter) {
    frame_text_clear(job->text);
    frame_text_add(job->text, "plumb cut ");
    frame_text_add_fixed(job->text, rafter->plumb_cut_deg, 1);
    frame_text_addf(job->text, " deg, birdsmouth, %s tail; the square on 12 and ",
                    frame_word_text("rafter_tail", roof->tail));
    frame_text_add_number(job->text, rafter->square_tongue_in, 5);
    return frame_answer_text(job->answer, frame_text_chars(job->text));
}

static frame_status add_rafters(frame_job *job, frame_job_roof *made, const frame_rafter_in *in, int32_t count) {
    const frame_building_roof *roof = &made->roof;
    frame_job_piece piece = {.name = "rafter",
                             .of = roof->name,
                             .size = roof->size,
                             .species = roof->species,
                             .grade = roof->grade,
                             .length_in = made->rafter.stock_length_in,
                             .count = count * roof->faces};
    piece.cuts = cuts_text(job, roof, &made->rafter);
    frame_status status = piece.cuts ? frame_rafter_stick(in, &piece.stick) : FRAME_NO_MEMORY;
    if (!status) status = frame_job_member(job, &piece);
    if (!status) status = frame_job_notes(job, roof->name, &made->rafter);
    return status;
}

static frame_status add_ridge(frame_job *job, const frame_building_roof *roof) {
    if (roof->ridge_size == FRAME_NOT_GIVEN_INT) return FRAME_OK;
    return frame_job_member(job, &(frame_job_piece){.name = "ridge",
                                                    .of = roof->name,
                                                    .cuts = "square both ends",
                                                    .size = roof->ridge_size,
                                                    .species = roof->species,
                                                    .grade = roof->grade,
                                                    .length_in = roof->length_in,
                                                    .count = 1});
}

static frame_status check(frame_job *job, const frame_job_roof *made) {
    const frame_building_roof *roof = &made->roof;
    frame_joist_check_in in;
    frame_joist_check_out out;
    frame_working *working;
    frame_joist_check_in_init(&in);
    in.use = FRAME_USE_RAFTER;
    in.size = roof->size;
    in.species = roof->species;
    in.grade = roof->grade;
    in.span_in = roof->run_in - made->rafter.deduction_in; /* on plan, to the plumb cut */
    in.spacing_in = roof->spacing_in;
    in.slope = roof->slope;
    in.dead_psf = roof->dead_psf;
    in.snow_psf = roof->snow_psf;
    in.live_psf = roof->roof_live_psf;
    in.bearing_in = made->rafter.seat_in;
    frame_status status = frame_working_new(&working);
    if (status) return status;
    status = frame_joist_check(&in, &out, working);
    if (status) {
        frame_working_free(working);
        return status;
    }
    return frame_job_check(job, &(frame_job_result){.name = roof->name,
                                                    .what = "joist_check",
                                                    .ratio = out.ratio,
                                                    .governs = frame_word_text("governing", out.governs),
                                                    .passes = out.passes,
                                                    .known = out.known,
                                                    .out = &out,
                                                    .working = working});
}

static frame_status one(frame_job *job, size_t i) {
    frame_job_roof *made = &job->roofs[i];
    frame_rafter_in in;
    uint64_t assumed = 0;
    int32_t count;
    double thickness, depth;
    frame_status status = FRAME_JOB_ITEM(job, roof, roofs, i, &made->roof, &assumed);
    if (status) return status;
    for (size_t other = 0; other < i; other++)
        if (!strcmp(job->roofs[other].roof.name, made->roof.name))
            return frame_fail(FRAME_CONFLICT, "name", made->roof.name, "a name of its own",
                              "name: two roofs are named \"%s\"", made->roof.name);
    describe(&made->roof, &in);
    status = frame_rafter(&in, &made->rafter, NULL);
    if (!status) status = frame_job_assumed(job, made->roof.name, &frame_building_roof_facts, assumed);
    if (!status) status = frame_size_dressed(made->roof.size, 0, &thickness, &depth);
    if (!status)
        status = frame_job_layout(job, made->roof.name, made->roof.length_in, made->roof.spacing_in, thickness, &count);
    if (!status) status = add_rafters(job, made, &in, count);
    if (!status) status = add_ridge(job, &made->roof);
    if (status) return status;
    frame_job_hand_on(made);
    return check(job, made);
}

frame_status frame_job_roofs(frame_job *job) {
    for (size_t i = 0; i < job->in->roof_count; i++)
        if (one(job, i)) return frame_fail_within("roofs[%zu].", i);
    return FRAME_OK;
}
