/* Headers: what they carry, checked as beams. */
#include "base/error.h"
#include "building/job.h"
#include "building_facts.h"

static frame_status load_of(const frame_job *job, const frame_building_header *header, frame_beam_check_in *in) {
    const frame_job_roof *roof = NULL;
    if (header->carries) {
        const frame_status status = frame_job_find_roof(job, "carries", header->carries, &roof);
        if (status) return status;
    }
    in->dead_plf = header->dead_plf + (roof ? roof->eave_dead_plf : 0);
    in->live_plf = header->live_plf;
    in->snow_plf = header->snow_plf + (roof ? roof->eave_snow_plf : 0);
    in->roof_live_plf = roof ? roof->eave_roof_live_plf : 0;
    if (in->dead_plf + in->live_plf + in->snow_plf + in->roof_live_plf > 0) return FRAME_OK;
    return frame_fail(FRAME_REQUIRED, "dead_plf", "", "a load, or carries",
                      "dead_plf: the header has no load; give dead_plf, live_plf, snow_plf, or the roof it carries");
}

static frame_status check(frame_job *job, const frame_building_header *header) {
    frame_beam_check_in in;
    frame_beam_check_out out;
    frame_working *working;
    frame_beam_check_in_init(&in);
    in.size = header->size;
    in.plies = header->plies;
    in.species = header->species;
    in.grade = header->grade;
    in.span_in = header->opening_in + header->bearing_in; /* to the middle of the bearings */
    in.bearing_in = header->bearing_in;
    in.compression_edge = FRAME_EDGE_FREE; /* cripples do not brace a header */
    frame_status status = load_of(job, header, &in);
    if (!status) status = frame_working_new(&working);
    if (status) return status;
    status = frame_beam_check(&in, &out, working);
    if (status) {
        frame_working_free(working);
        return status;
    }
    return frame_job_check(job, &(frame_job_result){.name = header->name,
                                                    .what = "beam_check",
                                                    .ratio = out.ratio,
                                                    .governs = frame_word_text("governing", out.governs),
                                                    .passes = out.passes,
                                                    .known = out.known,
                                                    .out = &out,
                                                    .working = working});
}

static frame_status one(frame_job *job, size_t i) {
    frame_building_header header;
    uint64_t assumed = 0;
    frame_status status = FRAME_JOB_ITEM(job, header, headers, i, &header, &assumed);
    if (!status) status = frame_job_assumed(job, header.name, &frame_building_header_facts, assumed);
    if (!status)
        status = frame_job_member(job, &(frame_job_piece){.name = "header ply",
                                                          .of = header.name,
                                                          .cuts = "square both ends",
                                                          .size = header.size,
                                                          .species = header.species,
                                                          .grade = header.grade,
                                                          .length_in = header.opening_in + 2 * header.bearing_in,
                                                          .count = header.plies});
    return status ? status : check(job, &header);
}

frame_status frame_job_headers(frame_job *job) {
    for (size_t i = 0; i < job->in->header_count; i++)
        if (one(job, i)) return frame_fail_within("headers[%zu].", i);
    return FRAME_OK;
}
