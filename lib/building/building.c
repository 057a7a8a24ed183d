/* A job, described once, from geometry to buying. */
#include "building/building.h"

#include "base/error.h"
#include "building/job.h"
#include "building_facts.h"
#include "text/writer.h"
#include "working/calculation.h"

static void release_inside(void *object) {
    frame_building_inside *inside = object;
    for (size_t i = 0; i < inside->workings.count; i++)
        frame_working_free(FRAME_ITEM(frame_working *, inside->workings, i));
    for (size_t i = 0; i < inside->sticks.count; i++) frame_stick_free(FRAME_ITEM(frame_stick *, inside->sticks, i));
    frame_array_give(&inside->workings);
    frame_array_give(&inside->sticks);
    frame_give(inside);
}

static frame_building_inside *inside_of(const frame_building *building) {
    const frame_answer *answer = (const frame_answer *)building;
    return FRAME_ITEM(frame_owned, answer->owned, 0).object;
}

const frame_working *frame_building_working(const frame_building *building, size_t check) {
    const frame_building_inside *inside = inside_of(building);
    return check < inside->workings.count ? FRAME_ITEM(frame_working *, inside->workings, check) : NULL;
}

const frame_stick *frame_building_stick(const frame_building *building, size_t member) {
    const frame_building_inside *inside = inside_of(building);
    return member < inside->sticks.count ? FRAME_ITEM(frame_stick *, inside->sticks, member) : NULL;
}

static frame_status refuse_empty(const frame_building_in *in) {
    if (in->floor_count + in->roof_count + in->header_count + in->nailing_count) return FRAME_OK;
    return frame_fail(FRAME_REQUIRED, "floors", "", "at least one floor, roof, header or nailing",
                      "floors: nothing is described; give at least one floor, roof, header or nailing");
}

static frame_status run(frame_job *job) {
    frame_status status = frame_job_roofs(job); /* first: headers and nailings ask for them */
    if (!status) status = frame_job_floors(job);
    if (!status) status = frame_job_headers(job);
    if (!status) status = frame_job_nailings(job);
    if (!status) status = frame_job_buying(job);
    return status;
}

static frame_status sum_up(frame_job *job) {
    frame_building_out *out = job->out;
    out->known = job->known;
    out->cautions = FRAME_BIT(FRAME_BUILDING_CAUTION_LOCAL) | FRAME_BIT(FRAME_BUILDING_CAUTION_MEASURE);
    if (!out->passes) out->cautions |= FRAME_BIT(FRAME_BUILDING_CAUTION_FAILS);
    out->not_checked = FRAME_BIT(FRAME_BUILDING_UNCHECKED_LATERAL) | FRAME_BIT(FRAME_BUILDING_UNCHECKED_GROUND) |
                       FRAME_BIT(FRAME_BUILDING_UNCHECKED_SNOW) | FRAME_BIT(FRAME_BUILDING_UNCHECKED_CONNECTIONS);
    return frame_job_notes(job, job->in->name, out);
}

static frame_status solve(const frame_building_in *in, frame_answer *answer, frame_building_out *out,
                          frame_working *w) {
    (void)w; /* each check has a working of its own, in the packet */
    frame_job job = {.in = in, .answer = answer, .out = out, .known = FRAME_KNOWN_READ};
    frame_status status = refuse_empty(in);
    if (status) return status;
    job.inside = frame_take_zeroed(1, sizeof *job.inside);
    if (!job.inside) return FRAME_NO_MEMORY;
    job.inside->workings.item_size = job.inside->sticks.item_size = sizeof(void *);
    if (!frame_answer_own(answer, job.inside, release_inside)) return FRAME_NO_MEMORY;
    out->passes = 1;
    out->member_total = 0;
    status = frame_text_new(&job.text);
    if (!status && in->roof_count) {
        job.roofs = frame_take_zeroed(in->roof_count, sizeof *job.roofs);
        if (!job.roofs) status = FRAME_NO_MEMORY;
    }
    if (!status) status = run(&job);
    if (!status) status = sum_up(&job);
    frame_give(job.roofs);
    frame_text_free(job.text);
    return status;
}

FRAME_IMPLEMENT_ANSWER(building, solve);
