/* The studs of a wall as columns: each by its own load, the worst of each kind with its working. */
#include <math.h>

#include <frame/tape.h>

#include "base/error.h"
#include "building/framing.h"
#include "material/lumber.h"
#include "strength/bending.h"

static void describe(const frame_part_wall *wall, int32_t plies, double length, frame_column_check_in *in) {
    frame_column_check_in_init(in);
    in->size = wall->size;
    in->species = wall->species;
    in->grade = wall->grade;
    in->plies = plies;
    if (plies > 1) in->fastening = FRAME_COLUMN_NAILED;
    in->length_in = length;
    in->weak_axis_held = 1; /* sheathed */
}

frame_status frame_upright_ratio(const frame_framing_job *job, size_t w, const frame_by_kind *load, int32_t plies,
                                 double length, int lateral, double *ratio, frame_column_check_in *worst) {
    const frame_part_wall *wall = &job->walls[w];
    const double wind = lateral && job->conditions.wind_wall_psf != FRAME_NOT_GIVEN ? job->conditions.wind_wall_psf : 0;
    describe(wall, plies, length, worst);
    return frame_column_worst(load, wind * wall->spacing_in / 12, worst, ratio);
}

static frame_status list_stud(frame_framing_job *job, size_t w, const frame_upright *upright, double ratio) {
    frame_framing_stud *stud = frame_answer_add(job->answer, FRAME_FRAMING_STUDS);
    if (!stud) return FRAME_NO_MEMORY;
    stud->wall = frame_answer_text(job->answer, job->walls[w].name);
    stud->piece = upright->is_jack ? "jack" : upright->king ? "king stud" : "stud";
    stud->at_in = upright->s;
    stud->dead_lb = upright->load.k[FRAME_LOAD_DEAD];
    stud->live_lb = upright->load.k[FRAME_LOAD_LIVE];
    stud->roof_live_lb = upright->load.k[FRAME_LOAD_ROOF_LIVE];
    stud->snow_lb = upright->load.k[FRAME_LOAD_SNOW];
    stud->wind_lb = upright->load.k[FRAME_LOAD_WIND];
    stud->ratio = ratio;
    stud->plies = upright->plies;
    stud->passes = ratio <= 1 + 1e-9;
    return FRAME_OK;
}

static double length_of(const frame_framing_job *job, size_t w, const frame_upright *upright) {
    if (!upright->is_jack) return job->levels[job->level_of_wall[w]].height_in - 4.5;
    int32_t number = upright->opening;
    for (size_t i = 0; i < job->opening_count; i++)
        if (job->wall_of_opening[i] == w && --number == 0) return job->openings[i].head_in - 1.5;
    return job->levels[job->level_of_wall[w]].height_in - 4.5;
}

/* The plate under a stud is crushed long before the stud buckles. */
static frame_status check_plate(frame_framing_job *job, size_t w, const frame_upright *upright) {
    const frame_part_wall *wall = &job->walls[w];
    frame_member member;
    frame_working *record;
    frame_status status = frame_member_of_lumber(wall->size, wall->species, wall->grade, 1, FRAME_TURNED_FLAT,
                                                 FRAME_SERVICE_DRY, 0, FRAME_TEMPERATURE_100F, &member);
    if (!status) status = frame_working_new(&record);
    if (status) return status;
    FRAME_HEADING(record, "Plate under the heaviest stud");
    FRAME_TABLE(record, P, frame_by_kind_most(&upright->load, NULL, NULL), "lb", "largest load of the combinations",
                "ASCE 7-16 2.4.1");
    FRAME_GIVEN(record, n, upright->plies, "", "studs side by side");
    FRAME_TABLE(record, t, member.depth, "in", "thickness of a stud", "PS 20");
    FRAME_TABLE(record, d, member.breadth, "in", "depth of a stud", "PS 20");
    const double F_c_perp_prime = frame_bending_crushing(&member, record);
    FRAME_STEP(record, ratio, P / (n * t * d) / F_c_perp_prime, "", "share of the bearing strength used",
               "NDS 2018 3.10.2");
    char at[32];
    if (frame_tape_format(upright->s, NULL, at, sizeof at)) at[0] = 0;
    const char *name =
        frame_framing_text(job, "%s, plate under the %s at %s", wall->name, upright->is_jack ? "jacks" : "stud", at);
    const frame_framing_made_check made = {
        .name = name ? name : "",
        .what = "bearing",
        .governs = frame_word_text("governing", FRAME_GOVERNS_BEARING),
        .block = "Compression across the grain of the plate, NDS 3.10.2; C_b taken as 1.",
        .ratio = ratio,
        .code_ratio = FRAME_NOT_GIVEN,
        .length = upright->s,
        .passes = ratio <= 1 + 1e-9,
        .code_passes = FRAME_NOT_GIVEN_INT,
        .known = member.known,
        .kind = FRAME_BEARER_WALL,
        .working = record};
    return frame_framing_check_add(job, &made);
}

static frame_code_on_studs on_studs(const frame_by_kind *load) {
    if (load->k[FRAME_LOAD_LIVE] == 0) return FRAME_CODE_ON_STUDS_ROOF;
    return load->k[FRAME_LOAD_SNOW] != 0 || load->k[FRAME_LOAD_ROOF_LIVE] != 0 ? FRAME_CODE_ON_STUDS_FLOOR_ROOF
                                                                               : FRAME_CODE_ON_STUDS_FLOOR;
}

static frame_status check_one(frame_framing_job *job, size_t w, const frame_upright *upright) {
    const frame_part_wall *wall = &job->walls[w];
    const double length = length_of(job, w, upright);
    frame_column_check_in worst;
    double ratio;
    char at[32];
    frame_beside_code beside = {FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, "", FRAME_KNOWN_READ};
    const frame_status status =
        frame_upright_ratio(job, w, &upright->load, upright->plies, length, !upright->is_jack, &ratio, &worst);
    if (status) return frame_fail_within("wall %.60s, ", wall->name);
    if (!upright->is_jack)
        frame_code_beside_stud(job, wall->size, on_studs(&upright->load), length, wall->grade, &beside);
    if (frame_tape_format(upright->s, NULL, at, sizeof at)) at[0] = 0;
    const char *name = frame_framing_text(job, "%s, %s at %s", wall->name, upright->is_jack ? "jacks" : "stud", at);
    return frame_column_list(job, name, &worst, FRAME_BEARER_WALL, wall->spacing_in, &beside);
}

frame_status frame_framing_uprights_check(frame_framing_job *job, size_t w, const frame_array *uprights) {
    const frame_upright *worst[2] = {NULL, NULL}, *heaviest = NULL;
    double most[2] = {-1, -1}, weight = -1e300;
    for (size_t i = 0; i < uprights->count; i++) {
        const frame_upright *upright = &FRAME_ITEM(frame_upright, *uprights, i);
        frame_column_check_in of;
        double ratio;
        frame_status status = frame_upright_ratio(job, w, &upright->load, upright->plies, length_of(job, w, upright),
                                                  !upright->is_jack, &ratio, &of);
        if (status) return frame_fail_within("wall %.60s, ", job->walls[w].name);
        status = list_stud(job, w, upright, ratio);
        if (status) return status;
        const int kind = upright->is_jack ? 1 : 0;
        if (ratio > most[kind]) most[kind] = ratio, worst[kind] = upright;
        const double here = frame_by_kind_most(&upright->load, NULL, NULL) / upright->plies;
        if (here > weight) weight = here, heaviest = upright;
    }
    frame_status status = FRAME_OK;
    for (int kind = 0; kind < 2 && !status; kind++)
        if (worst[kind]) status = check_one(job, w, worst[kind]);
    return status || !heaviest ? status : check_plate(job, w, heaviest);
}
