/* Every stick where it stands. */
#include "building/place.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "material/lumber.h"
#include "timber/vector.h"

static vec3 turn(const frame_place *at, vec3 v) {
    return (vec3){at->cosine * v.x - at->sine * v.y, at->sine * v.x + at->cosine * v.y, v.z};
}

static void move(frame_stick *stick, const frame_place *at) {
    frame_placement *p = &stick->placement;
    p->x = turn(at, p->x);
    p->y = turn(at, p->y);
    p->z = turn(at, p->z);
    p->origin = vec_add(turn(at, p->origin), (vec3){at->x, at->y, at->z});
}

/* NDS Supplement 3.1.3 (from memory), with 12 % of water in it. */
double frame_wood_weight(double volume_in3, double gravity) {
    return volume_in3 / 1728 * 62.4 * (gravity / (1 + gravity * 0.009 * 12)) * 1.12;
}

static double weight_of(const frame_placed_stick *placed, double volume) {
    frame_lumber lumber;
    double gravity = frame_species_gravity(placed->species, NULL);
    if (placed->size != FRAME_NOT_GIVEN_INT &&
        !frame_lumber_find(placed->species, placed->grade, placed->size, &lumber))
        gravity = lumber.specific_gravity;
    return gravity == FRAME_NOT_GIVEN ? FRAME_NOT_GIVEN : frame_wood_weight(volume, gravity);
}

static double board_feet_of(frame_size size, double length) {
    double thickness, width;
    if (size == FRAME_NOT_GIVEN_INT) return 0;
    frame_size_nominal(size, &thickness, &width);
    return thickness * width / 12 * length / 12;
}

static void measure(const frame_stick *stick, frame_framing_stick *listed) {
    const vec3 start = frame_to_world(&stick->placement, (vec3){stick->low, 0, 0}),
               end = frame_to_world(&stick->placement, (vec3){stick->high, 0, 0});
    listed->length_in = stick->high - stick->low;
    listed->start_x_in = start.x, listed->start_y_in = start.y, listed->start_z_in = start.z;
    listed->end_x_in = end.x, listed->end_y_in = end.y, listed->end_z_in = end.z;
}

static frame_status list_stick(frame_framing_job *job, const frame_placed_stick *placed, double volume) {
    frame_framing_stick *listed = frame_answer_add(job->answer, FRAME_FRAMING_STICKS);
    if (!listed) return FRAME_NO_MEMORY;
    const char *species = frame_species_name(placed->species), *grade = frame_grade_name(placed->grade);
    listed->name = frame_answer_text(job->answer, placed->name ? placed->name : "");
    listed->of = frame_answer_text(job->answer, placed->of);
    listed->level = frame_answer_text(job->answer, placed->level ? placed->level : "");
    listed->section = frame_answer_text(job->answer, placed->section ? placed->section : "");
    listed->grade = frame_framing_text(job, "%s %s", species ? species : "", grade ? grade : "");
    if (!listed->name || !listed->of || !listed->level || !listed->section || !listed->grade) return FRAME_NO_MEMORY;
    listed->size = placed->size;
    listed->stage = placed->stage;
    measure(placed->stick, listed);
    listed->plies = placed->plies > 1 ? placed->plies : 1;
    listed->weight_lb = weight_of(placed, volume);
    frame_framing_out *out = job->out;
    if (listed->weight_lb != FRAME_NOT_GIVEN) out->wood_lb += listed->weight_lb;
    out->board_feet += listed->plies * board_feet_of(placed->size, listed->length_in);
    out->stick_total++;
    return FRAME_OK;
}

frame_status frame_place_stick(frame_framing_job *job, const frame_place *at, const frame_placed_stick *placed) {
    frame_stick *stick = placed->stick;
    frame_stick_solid_out solid;
    if (!frame_array_push(&job->inside->sticks, &stick)) {
        frame_stick_free(stick);
        return FRAME_NO_MEMORY;
    }
    move(stick, at);
    const frame_status status = frame_stick_solid(stick, &solid);
    return status ? status : list_stick(job, placed, solid.volume_in3);
}

/* -- the proof -- */

typedef struct box {
    double low[3], high[3];
    size_t index;
} box;

static void widen(box *b, vec3 at) {
    const double c[3] = {at.x, at.y, at.z};
    for (int a = 0; a < 3; a++) {
        b->low[a] = fmin(b->low[a], c[a]);
        b->high[a] = fmax(b->high[a], c[a]);
    }
}

static box box_of(const frame_stick *stick, size_t index) {
    box b = {{1e300, 1e300, 1e300}, {-1e300, -1e300, -1e300}, index};
    for (int corner = 0; corner < 8; corner++)
        widen(&b, frame_to_world(&stick->placement, (vec3){corner & 1 ? stick->low : stick->high,
                                                           stick->y[corner >> 1 & 1], stick->z[corner >> 2 & 1]}));
    return b;
}

static int by_low_x(const void *a, const void *b) {
    const box *one = a, *two = b;
    if (one->low[0] != two->low[0]) return one->low[0] < two->low[0] ? -1 : 1;
    return one->index < two->index ? -1 : 1;
}

static int apart(const box *a, const box *b) {
    for (int axis = 1; axis < 3; axis++)
        if (a->high[axis] < b->low[axis] + 1e-6 || b->high[axis] < a->low[axis] + 1e-6) return 1;
    return 0;
}

static const frame_framing_stick *listed(const frame_framing_job *job, size_t i) {
    return &FRAME_ITEM(frame_framing_stick, job->answer->lists[FRAME_FRAMING_STICKS], i);
}

/* The worst pairs are named; a dozen, so that a description with a wall twice does not drown its page. */
static frame_status tell(frame_framing_job *job, size_t a, size_t b, double volume) {
    char inches[32];
    frame_number_print(volume, 3, inches, sizeof inches);
    const frame_framing_stick *one = listed(job, a), *two = listed(job, b);
    const char *text = frame_framing_text(job, "%.60s of %.60s and %.60s of %.60s share %s cubic inches of wood.",
                                          one->name, one->of, two->name, two->of, inches);
    return text ? frame_framing_note_add(job, FRAME_NOTE_CAUTION, one->of, text) : FRAME_NO_MEMORY;
}

static frame_status try_pair(frame_framing_job *job, size_t a, size_t b, int *told) {
    frame_stick_fit_out fit;
    const frame_status status = frame_stick_fit(FRAME_ITEM(frame_stick *, job->inside->sticks, a),
                                                FRAME_ITEM(frame_stick *, job->inside->sticks, b), &fit);
    /* Less than a thousandth of a cubic inch is rounding where faces touch. */
    if (status || fit.overlap_in3 < 1e-3) return status;
    job->out->fits = 0;
    job->out->worst_overlap_in3 = fmax(job->out->worst_overlap_in3, fit.overlap_in3);
    return (*told)++ < 12 ? tell(job, a, b, fit.overlap_in3) : FRAME_OK;
}

frame_status frame_place_prove(frame_framing_job *job) {
    const size_t count = job->inside->sticks.count;
    box *boxes = frame_take(sizeof *boxes * (count + 1));
    size_t *open = frame_take(sizeof *open * (count + 1)), open_count = 0;
    frame_status status = boxes && open ? FRAME_OK : FRAME_NO_MEMORY;
    int told = 0;
    for (size_t i = 0; i < count && !status; i++)
        boxes[i] = box_of(FRAME_ITEM(frame_stick *, job->inside->sticks, i), i);
    if (!status && count) qsort(boxes, count, sizeof *boxes, by_low_x);
    job->out->fits = count ? 1 : FRAME_NOT_GIVEN_INT;
    job->out->worst_overlap_in3 = 0;
    for (size_t i = 0; i < count && !status; i++) {
        size_t kept = 0; /* those that begin before this one and end after its beginning */
        for (size_t k = 0; k < open_count; k++)
            if (boxes[open[k]].high[0] > boxes[i].low[0] + 1e-6) open[kept++] = open[k];
        open_count = kept;
        for (size_t k = 0; k < open_count && !status; k++)
            if (!apart(&boxes[open[k]], &boxes[i])) status = try_pair(job, boxes[open[k]].index, boxes[i].index, &told);
        open[open_count++] = i;
    }
    frame_give(open);
    frame_give(boxes);
    return status;
}

/* -- gangs -- */

typedef struct alike {
    const frame_framing_stick *stick;
    double volume;
    size_t index;
} alike;

static int by_cut(const void *a, const void *b) {
    const alike *one = a, *two = b;
    int order = strcmp(one->stick->section, two->stick->section);
    if (!order) order = strcmp(one->stick->grade, two->stick->grade);
    if (!order) order = strcmp(one->stick->name, two->stick->name);
    if (order) return order;
    const double lengths[2] = {round(one->stick->length_in * 64), round(two->stick->length_in * 64)};
    if (lengths[0] != lengths[1]) return lengths[0] < lengths[1] ? -1 : 1;
    const double volumes[2] = {round(one->volume * 16), round(two->volume * 16)};
    if (volumes[0] != volumes[1]) return volumes[0] < volumes[1] ? -1 : 1;
    return 0;
}

static int by_cut_and_place(const void *a, const void *b) {
    const int order = by_cut(a, b);
    return order ? order : ((const alike *)a)->index < ((const alike *)b)->index ? -1 : 1;
}

frame_status frame_place_gangs(frame_framing_job *job) {
    const size_t count = job->inside->sticks.count;
    alike *all = frame_take(sizeof *all * (count + 1));
    if (!all) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < count; i++) {
        frame_stick_solid_out solid = {0};
        frame_stick_solid(FRAME_ITEM(frame_stick *, job->inside->sticks, i), &solid);
        all[i] = (alike){listed(job, i), solid.volume_in3, i};
    }
    if (count) qsort(all, count, sizeof *all, by_cut_and_place);
    int32_t gang = 0;
    for (size_t i = 0; i < count; i++) {
        if (!i || by_cut(&all[i - 1], &all[i])) gang++;
        FRAME_ITEM(frame_framing_stick, job->answer->lists[FRAME_FRAMING_STICKS], all[i].index).gang = gang;
    }
    frame_give(all);
    return FRAME_OK;
}

/* What cannot be laid out is told, and the rest goes on; only memory ends it. */
frame_status frame_place_or_note(frame_framing_job *job, frame_status status, const char *part) {
    if (!status || status == FRAME_NO_MEMORY) return status;
    const char *text =
        frame_framing_text(job, "Not placed, not in the lists of sticks and boards: %.300s", frame_error_text());
    job->not_placed = 1;
    return text ? frame_framing_note_add(job, FRAME_NOTE_NOT_CHECKED, part, text) : FRAME_NO_MEMORY;
}

frame_status frame_framing_place(frame_framing_job *job) {
    job->out->wood_lb = job->out->board_feet = 0;
    frame_status status = frame_place_posts(job);
    if (!status) status = frame_place_beams(job);
    if (!status) status = frame_place_floors(job);
    if (!status) status = frame_place_walls(job);
    if (!status) status = frame_place_roofs(job);
    if (!status) status = frame_place_stairs(job);
    if (!status) status = frame_place_gangs(job);
    return status ? status : frame_place_prove(job);
}
