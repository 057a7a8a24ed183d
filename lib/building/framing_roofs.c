/* Roofs: solved over their plans; ridges, hips and valleys become bearers. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "building/framing.h"

static frame_status solve(frame_roof_shape *shape) {
    frame_roof_solve_in in;
    frame_roof_solve_in_init(&in);
    in.corners = shape->roof.corners, in.corner_count = shape->roof.corner_count;
    in.slopes = shape->roof.slopes, in.slope_count = shape->roof.slope_count;
    in.kinds = shape->roof.kinds, in.kind_count = shape->roof.kind_count;
    in.upper_slopes = shape->roof.upper_slopes, in.upper_slope_count = shape->roof.upper_slope_count;
    in.break_in = shape->roof.break_in;
    in.half_hip_in = shape->roof.half_hip_in;
    const frame_status status = frame_roof_solve_solve(&in, &shape->solved, NULL);
    if (status) return frame_fail_within("roof %.60s, ", shape->roof.name);
    if (shape->roof.break_in == FRAME_NOT_GIVEN) return FRAME_OK;
    if (shape->roof.ridge == FRAME_SITE_RIDGE_BOARD)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "ridge", "board", "beam, where a roof has a break",
                          "roof %.60s, ridge: the thrust of a ridge board over a break is not followed; use a beam",
                          shape->roof.name);
    /* A gambrel's breaks run from gable to gable; where hips cross them, what holds what is not followed. */
    frame_roof_solve_out solved;
    frame_roof_solve_result(shape->solved, &solved);
    if (solved.hip_length_in > 0 || solved.valley_length_in > 0)
        return frame_fail(
            FRAME_OUTSIDE_SCOPE, "break_in", "", "left out where a roof has hips or valleys",
            "roof %.60s, break_in: loads are followed down over breaks between gables alone, not where hips "
            "or valleys cross them",
            shape->roof.name);
    return FRAME_OK;
}

/* The slope of the first edge a roof rises from: its overhang is the one given, the others' follow from one fascia. */
static double first_slope(const frame_roof_shape *shape) {
    double slope = 0;
    for (size_t i = 0; i < frame_roof_solve_face_count(shape->solved) && !(slope > 0); i++) {
        frame_roof_solve_face face;
        frame_roof_solve_face_at(shape->solved, i, &face);
        if (face.kind == FRAME_FACE_ROOF && face.edge >= 0) slope = face.slope;
    }
    return slope;
}

static const char *line_name(frame_framing_job *job, const frame_roof_shape *shape, const char *word, int number) {
    return frame_framing_text(job, "%s, %s %d", shape->roof.name, word, number);
}

static int bearer_kind(frame_roof_line_kind kind, frame_bearer_kind *is, int32_t *tier) {
    static const struct {
        frame_roof_line_kind kind;
        frame_bearer_kind is;
        int32_t tier;
    } lines[] = {{FRAME_LINE_RIDGE, FRAME_BEARER_RIDGE, FRAME_TIER_RIDGE},
                 {FRAME_LINE_BREAK, FRAME_BEARER_BREAK, FRAME_TIER_RIDGE},
                 {FRAME_LINE_HIP, FRAME_BEARER_HIP, FRAME_TIER_HIP},
                 {FRAME_LINE_VALLEY, FRAME_BEARER_VALLEY, FRAME_TIER_HIP}};
    for (size_t i = 0; i < sizeof lines / sizeof *lines; i++)
        if (lines[i].kind == kind) {
            *is = lines[i].is;
            *tier = lines[i].tier;
            return 1;
        }
    return 0;
}

static frame_status add_lines(frame_framing_job *job, size_t r) {
    frame_roof_shape *shape = &job->roofs[r];
    const size_t count = frame_roof_solve_line_count(shape->solved);
    int numbers[FRAME_BEARER_BREAK + 1] = {0};
    shape->line_bearers = frame_arena_take(&job->arena, (count + 1) * sizeof(size_t));
    if (!shape->line_bearers) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < count; i++) {
        frame_roof_solve_line line;
        frame_roof_solve_point from, to;
        frame_bearer_kind kind;
        int32_t tier;
        frame_roof_solve_line_at(shape->solved, i, &line);
        shape->line_bearers[i] = FRAME_NOBODY;
        if (!bearer_kind(line.kind, &kind, &tier) || !(line.run_in > 1e-6)) continue;
        frame_roof_solve_point_at(shape->solved, (size_t)line.from_point, &from);
        frame_roof_solve_point_at(shape->solved, (size_t)line.to_point, &to);
        const char *name = line_name(job, shape, frame_word_text("bearer_kind", kind), ++numbers[kind]);
        if (!name) return FRAME_NO_MEMORY;
        const frame_status status = frame_bearer_add(
            job,
            &(frame_bearer){.kind = kind,
                            .tier = frame_framing_tier(job, shape->level, tier),
                            .name = name,
                            .part = r,
                            .line = i,
                            .x = {from.x_in, to.x_in},
                            .y = {from.y_in, to.y_in},
                            .reach = 1,
                            .foot = job->levels[shape->level].base_in + job->levels[shape->level].height_in,
                            .board = kind == FRAME_BEARER_RIDGE && shape->roof.ridge == FRAME_SITE_RIDGE_BOARD},
            &shape->line_bearers[i]);
        if (status) return status;
    }
    return FRAME_OK;
}

frame_status frame_framing_roofs(frame_framing_job *job) {
    for (size_t r = 0; r < job->roof_count; r++) {
        frame_status status = solve(&job->roofs[r]);
        if (status) return status;
        job->roofs[r].first_slope = first_slope(&job->roofs[r]);
        status = add_lines(job, r);
        if (status) return status;
        if (job->roofs[r].roof.wind_uplift_psf > 0) job->wind_given = 1;
    }
    const frame_status drifts = frame_framing_snow_steps(job);
    if (drifts) return drifts;
    for (size_t r = 0; r < job->roof_count; r++) {
        const frame_status status = frame_framing_roof_strips(job, r);
        if (status) return status;
    }
    return FRAME_OK;
}

void frame_framing_describe_snow(const frame_framing_job *job, const frame_roof_shape *shape, double slope, double run,
                                 frame_roof_snow_in *in) {
    frame_roof_solve_out solved;
    frame_roof_snow_in_init(in);
    frame_roof_solve_result(shape->solved, &solved);
    in->basis = job->conditions.snow_basis;
    in->roof = FRAME_SNOW_SHED;
    if (solved.ridge_length_in > 0 || solved.hip_length_in > 0)
        in->roof = solved.hip_length_in > 0 ? FRAME_SNOW_HIP : FRAME_SNOW_GABLE;
    in->ground_snow_psf = job->conditions.ground_snow_psf;
    in->winter_wind = job->conditions.winter_wind;
    in->slope = slope;
    in->run_in = run;
    in->exposure_factor = job->conditions.exposure_factor;
    /* Unheated is the heaviest of the usual ones: C_t 1.2, ASCE 7-16 table 7.3-2. */
    if (shape->roof.thermal == FRAME_NOT_GIVEN_INT || job->conditions.snow_basis == FRAME_SNOW_STRENGTH)
        in->thermal_factor = 1.2;
    else
        in->thermal = shape->roof.thermal;
    if (job->conditions.snow_basis == FRAME_SNOW_50_YEAR) in->importance_factor = job->conditions.importance_factor;
}

/* Snow on a face, as the combinations take it: balanced, and the most of its unbalanced case on rafters. */
frame_status frame_framing_roof_snow(frame_framing_job *job, const frame_roof_shape *shape, double slope, double run,
                                     double *balanced, double *unbalanced) {
    const frame_part_roof *roof = &shape->roof;
    frame_roof_snow_in in;
    frame_roof_snow_out out;
    *balanced = *unbalanced = 0;
    if (roof->snow_psf != FRAME_NOT_GIVEN) {
        *balanced = *unbalanced = roof->snow_psf;
        return FRAME_OK;
    }
    if (!(job->conditions.ground_snow_psf > 0)) return FRAME_OK;
    frame_framing_describe_snow(job, shape, slope, run, &in);
    frame_status status = frame_roof_snow(&in, &out, NULL);
    if (status) return frame_fail_within("roof %.60s, snow: ", roof->name);
    if (in.thermal_factor == 1.2)
        status = frame_framing_note_add(job, FRAME_NOTE_ASSUMED, roof->name,
                                        "Snow on it with a thermal factor of 1.2, as of an unheated building.");
    *balanced = out.snow_psf;
    *unbalanced = out.snow_psf;
    if (out.leeward_psf != FRAME_NOT_GIVEN) {
        const double surcharge = out.surcharge_psf == FRAME_NOT_GIVEN ? 0 : out.surcharge_psf;
        *unbalanced = fmax(*balanced, (out.leeward_psf + surcharge) * out.asd_factor);
    }
    if (out.known > job->known) job->known = out.known;
    return status ? status : frame_framing_notes(job, roof->name, &out);
}
