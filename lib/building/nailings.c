/* Nailed joints: one nail by the yield-limit equations, like nails added, against a demand or a roof's thrust. */
#include "base/error.h"
#include "building/job.h"
#include "building_facts.h"
#include "working/record.h"

static frame_status one_nail(const frame_building_nailing *nailing, frame_dowel_lateral_out *out, frame_working *w) {
    frame_dowel_lateral_in in;
    frame_dowel_lateral_in_init(&in);
    in.kind = nailing->kind;
    in.size = nailing->nail;
    in.side_species = in.main_species = nailing->species;
    in.side_thickness_in = nailing->side_thickness_in;
    in.main_thickness_in = nailing->main_thickness_in;
    in.load_duration_factor = nailing->load_duration_factor;
    return frame_dowel_lateral(&in, out, w);
}

static frame_status sum(const frame_building_nailing *nailing, const frame_dowel_lateral_out *one, double demand,
                        frame_fastener_sum_out *out, frame_working *w) {
    frame_fastener_group group;
    frame_fastener_sum_in in;
    frame_fastener_group_init(&group);
    group.kind = nailing->kind;
    group.size = nailing->nail;
    group.count = nailing->count;
    group.each_lb = one->adjusted_lb;
    group.mode = one->mode;
    frame_fastener_sum_in_init(&in);
    in.groups = &group;
    in.group_count = 1;
    in.demand_lb = demand;
    return frame_fastener_sum(&in, out, w);
}

/* The demand: given, or the thrust of the roof that the joint ties. */
static frame_status demand_of(const frame_job *job, const frame_building_nailing *nailing, double *demand,
                              frame_working *w) {
    if (!nailing->ties) {
        *demand = nailing->demand_lb;
        if (*demand != FRAME_NOT_GIVEN) return FRAME_OK;
        return frame_fail(FRAME_REQUIRED, "demand_lb", "", "demand_lb, or the roof it ties",
                          "demand_lb: not given; a nailing needs demand_lb, or the name of the roof it ties");
    }
    if (nailing->demand_lb != FRAME_NOT_GIVEN)
        return frame_fail_number(FRAME_CONFLICT, "demand_lb", nailing->demand_lb, "left out where ties names a roof");
    const frame_job_roof *roof;
    const frame_status status = frame_job_find_roof(job, "ties", nailing->ties, &roof);
    if (status) return status;
    if (roof->roof.faces != 2)
        return frame_fail(FRAME_CONFLICT, "ties", nailing->ties, "a roof of two faces",
                          "ties: \"%s\" has one face and leans on nothing; only a roof of two faces thrusts",
                          nailing->ties);
    *demand = frame_job_thrust(&roof->roof, w);
    return FRAME_OK;
}

static frame_status check_with(frame_job *job, const frame_building_nailing *nailing, frame_working *working,
                               frame_fastener_sum_out *total) {
    frame_dowel_lateral_out one;
    double demand;
    frame_status status = demand_of(job, nailing, &demand, working);
    if (!status) status = one_nail(nailing, &one, working);
    if (!status) status = sum(nailing, &one, demand, total, working);
    if (!status) status = frame_job_notes(job, nailing->name, &one);
    if (!status && one.known > total->known) total->known = one.known;
    return status;
}

static frame_status one(frame_job *job, size_t i) {
    frame_building_nailing nailing;
    frame_fastener_sum_out total;
    frame_working *working;
    uint64_t assumed = 0;
    frame_status status = FRAME_JOB_ITEM(job, nailing, nailings, i, &nailing, &assumed);
    if (!status) status = frame_job_assumed(job, nailing.name, &frame_building_nailing_facts, assumed);
    if (!status) status = frame_working_new(&working);
    if (status) return status;
    status = check_with(job, &nailing, working, &total);
    if (status) {
        frame_working_free(working);
        return status;
    }
    return frame_job_check(job, &(frame_job_result){.name = nailing.name,
                                                    .what = "fastener_sum",
                                                    .ratio = total.ratio,
                                                    .governs = "the nails' lateral value",
                                                    .passes = total.passes,
                                                    .known = total.known,
                                                    .out = &total,
                                                    .working = working});
}

frame_status frame_job_nailings(frame_job *job) {
    for (size_t i = 0; i < job->in->nailing_count; i++)
        if (one(job, i)) return frame_fail_within("nailings[%zu].", i);
    return FRAME_OK;
}
