/* Joints: ties of rafters that lean on a ridge board, by nails; and every place that wind lifts. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "building/framing.h"

static frame_status one_nail(const frame_framing_job *job, size_t r, double duration, double *each) {
    frame_dowel_lateral_in in;
    frame_dowel_lateral_out out;
    frame_dowel_lateral_in_init(&in);
    in.kind = FRAME_DOWEL_COMMON_NAIL;
    in.size = "16d";
    in.side_species = in.main_species = job->roofs[r].roof.species;
    in.side_thickness_in = 1.5;
    in.main_thickness_in = 1.5;
    in.load_duration_factor = duration;
    const frame_status status = frame_dowel_lateral(&in, &out, NULL);
    if (!status) *each = out.adjusted_lb;
    return status;
}

static const char *code_nails(frame_framing_job *job, size_t r) {
    frame_code_heel_nails_in in;
    frame_code_heel_nails_out out;
    const frame_part_roof *roof = &job->roofs[r].roof;
    frame_code_heel_nails_in_init(&in);
    in.slope = job->roofs[r].first_slope;
    in.spacing_in = roof->spacing_in;
    in.ground_snow_psf = job->conditions.ground_snow_psf;
    in.roof_span_in = 2 * job->roofs[r].widest_run;
    in.edition = job->conditions.code_edition;
    in.covering = 1;
    if (frame_code_heel_nails(&in, &out, NULL))
        return frame_framing_text(job, "no table for it: %.160s", frame_error_text());
    return frame_framing_text(job, "%s, table %s: %d 16d common nails (%s)",
                              frame_word_text("code_edition", job->conditions.code_edition), out.table ? out.table : "",
                              (int)out.nails, frame_word_text("known", out.known));
}

frame_status frame_framing_thrust(frame_framing_job *job, size_t r, double thrust, double duration, int32_t places) {
    double each = 0;
    frame_status status = one_nail(job, r, duration, &each);
    if (status) return status;
    const char *name = frame_framing_text(job, "rafter to tie at the plate, %s", job->roofs[r].roof.name);
    const char *code = code_nails(job, r);
    frame_framing_joint *joint = frame_answer_add(job->answer, FRAME_FRAMING_JOINTS);
    if (!joint || !name || !code) return FRAME_NO_MEMORY;
    const int32_t count = (int32_t)fmax(ceil(thrust / each - 1e-9), 3);
    joint->name = name;
    joint->fastening =
        frame_framing_text(job, "%d 16d common nails, face-nailed, each side of the tie's lap", (int)count);
    joint->code = code;
    joint->demand_lb = thrust;
    joint->capacity_lb = count * each;
    joint->ratio = thrust / joint->capacity_lb;
    joint->count = count;
    joint->places = 2 * places;
    joint->passes = joint->ratio <= 1 + 1e-9;
    char text[200];
    snprintf(
        text, sizeof text,
        "Its rafters lean on each other: the ties at the plate, one at each pair, stand before the ridge is loaded; "
        "ceiling joists that run the other way tie nothing.");
    return frame_framing_note_add(job, FRAME_NOTE_CAUTION, job->roofs[r].roof.name, text);
}

/* Every load passed on that wind turns upward is a tie's: of a maker's connector, whose value decides. */
frame_status frame_framing_uplift(frame_framing_job *job) {
    const frame_array *loads = &job->answer->lists[FRAME_FRAMING_LOADS];
    for (size_t i = 0; i < loads->count; i++) {
        const frame_framing_load *load = &FRAME_ITEM(frame_framing_load, *loads, i);
        const double up = -(0.6 * load->dead_lb + 0.6 * load->wind_lb);
        if (!(load->wind_lb < 0) || !(up > 0)) continue;
        job->uplift = 1;
        frame_framing_joint *joint = NULL;
        frame_array *joints = &job->answer->lists[FRAME_FRAMING_JOINTS];
        const char *name = frame_framing_text(job, "tie against uplift, %s to %s", load->of, load->on);
        if (!name) return FRAME_NO_MEMORY;
        for (size_t k = joints->count; k-- > 0 && !joint;) {
            frame_framing_joint *other = &FRAME_ITEM(frame_framing_joint, *joints, k);
            if (!strcmp(other->name, name)) joint = other;
        }
        if (!joint) {
            joint = frame_answer_add(job->answer, FRAME_FRAMING_JOINTS);
            if (!joint) return FRAME_NO_MEMORY;
            joint->name = name;
            joint->fastening = "a strap or tie of a maker's for this load; all its fasteners in";
            joint->code = "";
            joint->demand_lb = 0;
            joint->count = 1;
            joint->places = 0;
        }
        joint->demand_lb = fmax(joint->demand_lb, up);
        joint->places++;
    }
    return FRAME_OK;
}
