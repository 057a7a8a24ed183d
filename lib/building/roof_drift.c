/* Snow beside a step: drifts against a higher wall or roof and what slides down from it, as fields over the lower roof,
 * the larger of the two at each place; and how much of it lies on a rafter's strip. */
#include <math.h>

#include "base/error.h"
#include "building/roof_face.h"

/* -- fields -- */

/* The roof's length square to an edge: how far it reaches into the plan. */
static double reach_in(const frame_roof_shape *shape, const frame_snow_field *field) {
    double most = 0;
    for (size_t i = 0; i < shape->roof.corner_count; i++) {
        const frame_roof_corner *c = &shape->roof.corners[i];
        most = fmax(most, (c->x_in - field->x) * field->in_x + (c->y_in - field->y) * field->in_y);
    }
    return most;
}

static frame_status find_edge(const frame_framing_job *job, size_t i, frame_snow_field *field) {
    const frame_part_snow_step *step = &job->snow_steps[i];
    const frame_roof_shape *shape = &job->roofs[job->roof_of_step[i]];
    const size_t count = shape->roof.corner_count;
    if ((size_t)step->edge >= count)
        return frame_fail_number(FRAME_OUT_OF_RANGE, "edge", step->edge, "the number of an edge of its roof, from 0");
    const frame_roof_corner *from = &shape->roof.corners[step->edge],
                            *to = &shape->roof.corners[((size_t)step->edge + 1) % count];
    frame_roof_solve_out solved;
    frame_roof_solve_result(shape->solved, &solved);
    const double turn = FRAME_HAS(solved.cautions, FRAME_ROOF_CAUTION_CLOCKWISE) ? -1 : 1;
    field->x = from->x_in, field->y = from->y_in;
    field->length = hypot(to->x_in - from->x_in, to->y_in - from->y_in);
    field->along_x = (to->x_in - from->x_in) / field->length;
    field->along_y = (to->y_in - from->y_in) / field->length;
    field->in_x = -turn * field->along_y, field->in_y = turn * field->along_x;
    return FRAME_OK;
}

/* A drift falls to nothing over its width; what slides lies evenly on its strip: at each place the larger, as the two
 * are not together (ASCE 7-16 7.9, from memory). */
static void envelope(double drift, double width, double slide, double strip, frame_snow_field *field) {
    frame_snow_band *bands = field->bands;
    const double meet =
        drift > slide && width > 0 ? width * (1 - slide / drift) : 0; /* where the drift has sunk to it */
    field->count = 0;
    if (slide <= 0 || strip <= meet) {
        if (drift > 0) bands[field->count++] = (frame_snow_band){0, width, drift, 0};
        return;
    }
    if (meet > 0) bands[field->count++] = (frame_snow_band){0, meet, drift, slide};
    bands[field->count++] = (frame_snow_band){meet, strip, slide, slide};
    if (drift > 0 && width > strip)
        bands[field->count++] = (frame_snow_band){strip, width, drift * (1 - strip / width), 0};
}

static frame_status find_field(frame_framing_job *job, size_t i) {
    const frame_part_snow_step *step = &job->snow_steps[i];
    const frame_roof_shape *shape = &job->roofs[job->roof_of_step[i]];
    frame_snow_field *field = &job->snow_fields[i];
    frame_roof_snow_in in;
    frame_roof_snow_out out;
    frame_status status = find_edge(job, i, field);
    if (status || !(job->conditions.ground_snow_psf > 0)) return status;
    const double reach = reach_in(shape, field);
    frame_framing_describe_snow(job, shape, shape->first_slope, reach, &in);
    in.step_height_in = step->height_in;
    in.upper_length_in = step->upper_length_in;
    in.lower_length_in = reach;
    if (step->upper_slope != FRAME_NOT_GIVEN) {
        in.upper_slope = step->upper_slope;
        in.upper_run_in = step->upper_run_in;
        in.upper_slippery = step->slippery;
        in.sliding_width_in = reach;
    }
    status = frame_roof_snow(&in, &out, NULL);
    if (status) return status;
    const double slides = out.sliding_psf == FRAME_NOT_GIVEN ? 0 : out.sliding_psf;
    envelope(out.drift_psf * out.asd_factor, out.drift_width_in, slides * out.asd_factor,
             slides > 0 ? out.sliding_strip_in : 0, field);
    if (out.known > job->known) job->known = out.known;
    return frame_framing_notes(job, step->name, &out);
}

/* A wall beside a roof, and nobody said how high it rises. */
static frame_status name_the_silent(frame_framing_job *job) {
    for (size_t r = 0; r < job->roof_count; r++)
        for (size_t e = 0; e < job->roofs[r].roof.kind_count; e++) {
            int told = job->roofs[r].roof.kinds[e] != FRAME_ROOF_WALL;
            for (size_t i = 0; i < job->snow_step_count && !told; i++)
                told = job->roof_of_step[i] == r && (size_t)job->snow_steps[i].edge == e;
            if (told) continue;
            job->step_untold = 1;
            const char *text = frame_framing_text(job,
                                                  "Edge %zu meets a wall: where that rises over the roof, snow drifts "
                                                  "against it. Describe it with a snow_step.",
                                                  e);
            const frame_status status =
                text ? frame_framing_note_add(job, FRAME_NOTE_NOT_CHECKED, job->roofs[r].roof.name, text)
                     : FRAME_NO_MEMORY;
            if (status) return status;
        }
    return FRAME_OK;
}

frame_status frame_framing_snow_steps(frame_framing_job *job) {
    job->snow_fields = frame_arena_take(&job->arena, (job->snow_step_count + 1) * sizeof *job->snow_fields);
    if (!job->snow_fields) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < job->snow_step_count; i++) {
        job->snow_fields[i] = (frame_snow_field){.count = 0};
        if (find_field(job, i)) return frame_fail_within("snow step %.60s, ", job->snow_steps[i].name);
    }
    return job->conditions.ground_snow_psf > 0 ? name_the_silent(job) : FRAME_OK;
}

/* -- on a strip -- */

/* Distances from the edge and along it, in the face's own axes. */
typedef struct in_face {
    double in_u, in_v, in_at, along_u, along_v, along_at;
} in_face;

static in_face turn_into(const frame_roof_face *f, const frame_snow_field *field) {
    return (in_face){
        field->in_x * f->ux + field->in_y * f->uy,       field->in_x * f->vx + field->in_y * f->vy,
        field->in_x * field->x + field->in_y * field->y, field->along_x * f->ux + field->along_y * f->uy,
        field->along_x * f->vx + field->along_y * f->vy, field->along_x * field->x + field->along_y * field->y};
}

static double at_place(const frame_snow_band *band, double away) {
    return band->near_psf + (band->far_psf - band->near_psf) * (away - band->near) / (band->far - band->near);
}

/* The load of a triangle and its moment about v = 0: quadratics, which the middles of its sides give exactly. */
static void triangle(const in_face *axes, const frame_snow_band *band, const frame_roof_at c[3], double *load,
                     double *moment) {
    const double area = fabs((c[1].u - c[0].u) * (c[2].v - c[0].v) - (c[2].u - c[0].u) * (c[1].v - c[0].v)) / 2 / 144;
    for (int i = 0; i < 3; i++) {
        const frame_roof_at m = {(c[i].u + c[(i + 1) % 3].u) / 2, (c[i].v + c[(i + 1) % 3].v) / 2};
        const double psf = at_place(band, axes->in_u * m.u + axes->in_v * m.v - axes->in_at);
        *load += psf * area / 3;
        *moment += psf * area / 3 * m.v;
    }
}

static void on_band(const in_face *axes, const frame_snow_field *field, const frame_snow_band *band,
                    const frame_roof_at *strip, size_t count, double *load, double *moment) {
    frame_roof_at one[2 * FRAME_ROOF_FACE_CORNERS], two[2 * FRAME_ROOF_FACE_CORNERS];
    count = frame_roof_clip(strip, count, axes->in_u, axes->in_v, axes->in_at + band->near, one);
    count = frame_roof_clip(one, count, -axes->in_u, -axes->in_v, -axes->in_at - band->far, two);
    count = frame_roof_clip(two, count, axes->along_u, axes->along_v, axes->along_at, one);
    count = frame_roof_clip(one, count, -axes->along_u, -axes->along_v, -axes->along_at - field->length, two);
    for (size_t i = 1; i + 1 < count; i++)
        triangle(axes, band, (const frame_roof_at[3]){two[0], two[i], two[i + 1]}, load, moment);
}

double frame_roof_surcharge(const frame_roof_face *f, const frame_roof_at *strip, size_t count, double *v_middle) {
    double load = 0, moment = 0;
    for (size_t i = 0; i < f->job->snow_step_count; i++) {
        const frame_snow_field *field = &f->job->snow_fields[i];
        if (f->job->roof_of_step[i] != f->roof) continue;
        const in_face axes = turn_into(f, field);
        for (int32_t b = 0; b < field->count; b++)
            on_band(&axes, field, &field->bands[b], strip, count, &load, &moment);
    }
    *v_middle = load > 0 ? moment / load : 0;
    return load;
}

static double psf_at(const frame_roof_face *f, frame_roof_at at) {
    double psf = 0;
    for (size_t i = 0; i < f->job->snow_step_count; i++) {
        const frame_snow_field *field = &f->job->snow_fields[i];
        if (f->job->roof_of_step[i] != f->roof) continue;
        const in_face a = turn_into(f, field);
        const double away = a.in_u * at.u + a.in_v * at.v - a.in_at,
                     along = a.along_u * at.u + a.along_v * at.v - a.along_at;
        for (int32_t b = 0; b < field->count && along >= -1e-6 && along <= field->length + 1e-6; b++)
            if (away >= field->bands[b].near - 1e-9 && away <= field->bands[b].far) {
                psf += at_place(&field->bands[b], away);
                break;
            }
    }
    return psf;
}

/* In slices: each lies evenly; the reactions at both ends and the moment at each slice's middle. */
double frame_roof_even_surcharge(const frame_roof_face *f, double u, double low, double high) {
    enum { SLICES = 48 };
    const double run = high - low, slice = run / SLICES;
    double w[SLICES], left = 0, right = 0, most = 0;
    for (int i = 0; i < SLICES; i++) {
        const double v = (i + 0.5) * slice;
        w[i] = psf_at(f, (frame_roof_at){u, low + v});
        left += w[i] * slice * (run - v) / run, right += w[i] * slice * v / run;
    }
    for (int k = 0; k < SLICES; k++) {
        const double x = (k + 0.5) * slice;
        double moment = left * x;
        for (int i = 0; i < k; i++) moment -= w[i] * slice * (x - (i + 0.5) * slice);
        moment -= w[k] * slice * slice / 8;
        most = fmax(most, moment);
    }
    return fmax(8 * most / (run * run), 2 * fmax(left, right) / run);
}
