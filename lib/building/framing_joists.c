/* Joists and rafters: their size chosen or given, checked by joist_check, the code's table beside it. */
#include <math.h>
#include <stdio.h>

#include "base/error.h"
#include "building/framing.h"
#include "material/lumber.h"

static const frame_size tried[] = {FRAME_SIZE(2, 4), FRAME_SIZE(2, 6), FRAME_SIZE(2, 8), FRAME_SIZE(2, 10),
                                   FRAME_SIZE(2, 12)};

/* A member to check, and where it stands. */
typedef struct one_joist {
    const char *name;
    frame_joist_check_in in;
    frame_beside_code beside;
    frame_bearer_kind kind;
    int deck;
    double ground_snow;
    double notch; /* depth of the birdsmouth, square to the edge */
} one_joist;

static frame_status check_with(one_joist *joist, frame_size size, frame_joist_check_out *out, frame_working *w) {
    joist->in.size = size;
    return frame_joist_check(&joist->in, out, w);
}

static void beside(frame_framing_job *job, one_joist *joist) {
    const frame_joist_check_in *in = &joist->in;
    joist->beside = (frame_beside_code){FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, "", FRAME_KNOWN_READ};
    if (joist->deck)
        frame_code_beside_deck_joist(job, in->size, in->species, in->grade, in->spacing_in, in->live_psf,
                                     joist->ground_snow, &joist->beside);
    else
        frame_code_beside_joist(job, in->use == FRAME_USE_RAFTER ? FRAME_CODE_USE_RAFTER : FRAME_CODE_USE_FLOOR,
                                in->size, in->species, in->grade, in->spacing_in, in->live_psf, in->dead_psf,
                                joist->ground_snow, &joist->beside);
}

static frame_status list_check(frame_framing_job *job, one_joist *joist, frame_size size) {
    frame_joist_check_out out;
    frame_working *working;
    frame_status status = frame_working_new(&working);
    if (status) return status;
    status = check_with(joist, size, &out, working);
    if (status) {
        frame_working_free(working);
        return frame_fail_within("%.80s, ", joist->name);
    }
    beside(job, joist);
    const int has_code = joist->beside.allowed != FRAME_NOT_GIVEN;
    const char *name = frame_framing_text(job, "%s, %s", joist->name, frame_size_name(size));
    const frame_framing_made_check made = {
        .name = name ? name : "",
        .what = "joist_check",
        .governs = frame_word_text("governing", out.governs),
        .code = joist->beside.words,
        .ratio = out.ratio,
        .code_ratio = has_code ? joist->in.span_in / joist->beside.allowed : FRAME_NOT_GIVEN,
        .length = joist->in.span_in,
        .passes = out.passes,
        .code_passes = has_code ? joist->in.span_in <= joist->beside.allowed + 1e-9 : FRAME_NOT_GIVEN_INT,
        .known = out.known > joist->beside.known ? out.known : joist->beside.known,
        .kind = joist->kind,
        .out = &out,
        .working = working};
    return frame_framing_check_add(job, &made);
}

/* The worst of several members that share one size: by calculation, and by the code's table. */
static double worst_of(frame_framing_job *job, one_joist *joists, size_t count, frame_size size,
                       frame_governing *governs, int *failed) {
    double worst = -1;
    for (size_t i = 0; i < count && !*failed; i++) {
        frame_joist_check_out out;
        if (check_with(&joists[i], size, &out, NULL)) {
            *failed = 1;
            return worst;
        }
        if (out.ratio > worst) worst = out.ratio, *governs = out.governs;
        double thickness, depth; /* NDS 4.4.3: a notch at the end at most a quarter of the depth */
        if (!frame_size_dressed(size, 0, &thickness, &depth) && joists[i].notch > depth / 4)
            worst = fmax(worst, 4 * joists[i].notch / depth);
        beside(job, &joists[i]);
        const double allowed = joists[i].beside.allowed;
        if (allowed != FRAME_NOT_GIVEN && joists[i].in.span_in > allowed + 1e-9 && out.ratio <= 1)
            worst = fmax(worst, joists[i].in.span_in / allowed + 1e-9);
    }
    return worst;
}

static frame_status choose(frame_framing_job *job, const char *name, one_joist *joists, size_t count,
                           frame_size *size) {
    double ratios[5], costs[5];
    frame_governing governs[5] = {0};
    int failed[5] = {0}, best = -1;
    double length = 0;
    for (size_t i = 0; i < count; i++) length = fmax(length, joists[i].in.span_in);
    for (int s = 0; s < 5; s++) {
        if (job->only_size && tried[s] != job->only_size) continue;
        ratios[s] = worst_of(job, joists, count, tried[s], &governs[s], &failed[s]);
        costs[s] = frame_framing_cost(job, tried[s], 1, length);
        const int holds = !failed[s] && ratios[s] <= 1 + 1e-9;
        const int best_holds = best >= 0 && ratios[best] <= 1 + 1e-9;
        if (failed[s]) continue;
        if (best < 0 || (holds && !best_holds) || (holds && costs[s] < costs[best]) ||
            (!holds && !best_holds && ratios[s] < ratios[best]))
            best = s;
    }
    if (best < 0) return worst_of(job, joists, count, tried[4], governs, failed) < 0 ? frame_error_status() : FRAME_OK;
    *size = tried[best];
    if (*size > job->largest_chosen) job->largest_chosen = *size;
    frame_status status = FRAME_OK;
    for (int s = 0; s < 5 && !status; s++) {
        char reason[120];
        if (job->only_size && tried[s] != job->only_size) continue;
        const int holds = !failed[s] && ratios[s] <= 1 + 1e-9;
        if (s == best)
            snprintf(reason, sizeof reason, "%s", holds ? "taken: the cheapest that holds" : "taken: none holds");
        else if (failed[s])
            snprintf(reason, sizeof reason, "cannot be checked");
        else if (holds)
            snprintf(reason, sizeof reason, "holds, but costs more");
        else
            snprintf(reason, sizeof reason, "does not hold: %s, the birdsmouth's depth, or the code's table",
                     frame_word_text("governing", governs[s]));
        status = frame_framing_option_add(job, name, tried[s], 1, failed[s] ? FRAME_NOT_GIVEN : ratios[s], costs[s],
                                          s == best, failed[s] ? FRAME_NOT_GIVEN_INT : governs[s], reason);
    }
    return status;
}

frame_status frame_framing_rafters(frame_framing_job *job, size_t r, const frame_rafter_face *faces, size_t count) {
    frame_roof_shape *shape = &job->roofs[r];
    const frame_part_roof *roof = &shape->roof;
    one_joist *rafters = frame_arena_take(&job->arena, (count + 1) * sizeof *rafters);
    if (!rafters) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < count; i++) {
        rafters[i] = (one_joist){.kind = FRAME_BEARER_RAFTERS, .ground_snow = job->conditions.ground_snow_psf};
        rafters[i].name =
            frame_framing_text(job, faces[i].upper ? "%s, upper rafters over edge %d" : "%s, rafters from edge %d",
                               roof->name, (int)faces[i].edge);
        if (!rafters[i].name) return FRAME_NO_MEMORY;
        shape->widest_run = fmax(shape->widest_run, faces[i].run);
        frame_joist_check_in *in = &rafters[i].in;
        frame_joist_check_in_init(in);
        in->use = FRAME_USE_RAFTER;
        in->species = roof->species;
        in->grade = roof->grade;
        in->span_in = faces[i].run;
        in->spacing_in = roof->spacing_in;
        in->slope = faces[i].slope;
        in->dead_psf = roof->dead_psf;
        in->snow_psf = fmax(faces[i].unbalanced, faces[i].snow + faces[i].drift);
        in->live_psf = roof->roof_live_psf;
        in->bearing_in = roof->seat_in;
        rafters[i].notch = roof->seat_in * faces[i].slope / sqrt(1 + faces[i].slope * faces[i].slope);
    }
    shape->size = roof->size;
    frame_status status = FRAME_OK;
    if (roof->size == FRAME_NOT_GIVEN_INT)
        status = choose(job, frame_framing_text(job, "%s, rafters", roof->name), rafters, count, &shape->size);
    for (size_t i = 0; i < count && !status; i++) status = list_check(job, &rafters[i], shape->size);
    return status;
}

/* A cantilever up to the joists' depth is what the code's tables let pass; a longer one is told. */
static frame_status tell_cantilever(frame_framing_job *job, const frame_part_floor *floor, double span,
                                    double cantilever) {
    if (!(cantilever > 8)) return FRAME_OK;
    const char *text =
        frame_framing_text(job, "Its joists reach %d in past their last support; their back span is %d in. %s",
                           (int)ceil(cantilever), (int)span,
                           cantilever > span / 4 ? "More than a quarter of it: beyond common practice."
                                                 : "See that they are held down at their other end.");
    return text ? frame_framing_note_add(job, FRAME_NOTE_CAUTION, floor->name, text) : FRAME_NO_MEMORY;
}

frame_status frame_floor_joists(frame_framing_job *job, size_t i, double span, double cantilever) {
    const frame_part_floor *floor = &job->floors[i];
    one_joist joist = {.name = frame_framing_text(job, "%s, joists", floor->name),
                       .kind = FRAME_BEARER_JOISTS,
                       .deck = floor->deck,
                       .ground_snow = floor->snow_psf};
    if (!joist.name) return FRAME_NO_MEMORY;
    frame_joist_check_in_init(&joist.in);
    joist.in.use = floor->deck ? FRAME_USE_DECK : FRAME_USE_FLOOR;
    joist.in.species = floor->species;
    joist.in.grade = floor->grade;
    joist.in.span_in = span;
    joist.in.spacing_in = floor->spacing_in;
    joist.in.live_psf = floor->live_psf;
    joist.in.dead_psf = floor->dead_psf;
    joist.in.snow_psf = floor->snow_psf;
    frame_status status = FRAME_OK;
    job->floor_sizes[i] = floor->size;
    if (floor->size == FRAME_NOT_GIVEN_INT) status = choose(job, joist.name, &joist, 1, &job->floor_sizes[i]);
    if (!status) status = list_check(job, &joist, job->floor_sizes[i]);
    return status ? status : tell_cantilever(job, floor, span, cantilever);
}
