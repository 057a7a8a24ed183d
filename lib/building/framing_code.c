/* What the code's tables say beside a calculation. A table that has no such case is silent, and says so in words. */
#include <stdio.h>

#include <frame/tape.h>

#include "building/framing.h"

static void say(frame_framing_job *job, frame_beside_code *beside, double allowed, frame_known known, const char *table,
                const char *edition) {
    char chars[40];
    frame_tape_style style = {.denominator = 16, .rounding = FRAME_ROUND_DOWN};
    beside->allowed = allowed;
    beside->known = known;
    if (frame_tape_format(allowed, &style, chars, sizeof chars)) chars[0] = 0;
    const char *words = frame_framing_text(job, "%s, table %s: up to %s (%s)", edition, table ? table : "", chars,
                                           frame_word_text("known", known));
    beside->words = words ? words : "";
}

static void be_silent(frame_framing_job *job, frame_beside_code *beside) {
    const char *words = frame_framing_text(job, "no figure from the table: %.300s", frame_error_text());
    beside->words = words ? words : "";
}

static const char *edition(const frame_framing_job *job) {
    return frame_word_text("code_edition", job->conditions.code_edition);
}

void frame_code_beside_joist(frame_framing_job *job, frame_code_use use, frame_size size, frame_species species,
                             frame_grade grade, double spacing, double live, double dead, double snow,
                             frame_beside_code *beside) {
    frame_code_joist_span_in in;
    frame_code_joist_span_out out;
    frame_code_joist_span_in_init(&in);
    in.use = use;
    in.size = size;
    in.species = species;
    in.grade = grade;
    in.spacing_in = spacing;
    in.dead_psf = dead;
    in.edition = job->conditions.code_edition;
    in.covering = 1;
    if (use == FRAME_CODE_USE_RAFTER && snow > 20)
        in.snow_psf = snow;
    else
        in.live_psf = live;
    if (frame_code_joist_span(&in, &out, NULL))
        be_silent(job, beside);
    else
        say(job, beside, out.span_in, out.known, out.table, edition(job));
}

void frame_code_beside_deck_joist(frame_framing_job *job, frame_size size, frame_species species, frame_grade grade,
                                  double spacing, double live, double snow, frame_beside_code *beside) {
    frame_code_deck_joist_span_in in;
    frame_code_deck_joist_span_out out;
    (void)grade;
    frame_code_deck_joist_span_in_init(&in);
    in.size = size;
    in.species = species;
    in.spacing_in = spacing;
    in.live_psf = live;
    in.ground_snow_psf = snow;
    in.edition = job->conditions.code_edition;
    in.covering = 1;
    if (frame_code_deck_joist_span(&in, &out, NULL))
        be_silent(job, beside);
    else
        say(job, beside, out.span_in, out.known, out.table, edition(job));
}

void frame_code_beside_header(frame_framing_job *job, frame_code_supports supports, frame_size size, int32_t plies,
                              frame_beside_code *beside) {
    frame_code_header_span_in in;
    frame_code_header_span_out out;
    frame_code_header_span_in_init(&in);
    in.supports = supports;
    in.size = size;
    in.plies = plies;
    in.ground_snow_psf = job->conditions.ground_snow_psf;
    in.building_width_in = job->conditions.building_width_in;
    in.edition = job->conditions.code_edition;
    in.covering = 1;
    in.top_braced = 0;
    if (frame_code_header_span(&in, &out, NULL)) {
        be_silent(job, beside);
        return;
    }
    say(job, beside, out.span_in, out.known, out.table, edition(job));
    beside->jacks = out.jack_studs;
}

void frame_code_beside_deck_beam(frame_framing_job *job, size_t floor, frame_size size, int32_t plies,
                                 frame_species species, frame_beside_code *beside) {
    frame_code_deck_beam_span_in in;
    frame_code_deck_beam_span_out out;
    frame_code_deck_beam_span_in_init(&in);
    in.size = size;
    in.plies = plies;
    in.species = species;
    in.joist_span_in = job->floor_spans[floor];
    in.joist_cantilever_in = job->floor_cantilevers[floor];
    in.live_psf = job->floors[floor].live_psf;
    in.ground_snow_psf = job->floors[floor].snow_psf;
    in.edition = job->conditions.code_edition;
    in.covering = 1;
    if (frame_code_deck_beam_span(&in, &out, NULL))
        be_silent(job, beside);
    else
        say(job, beside, out.span_in, out.known, out.table, edition(job));
}

/* The area a post carries follows from the live load on it. */
void frame_code_beside_deck_post(frame_framing_job *job, size_t floor, frame_size size, frame_species species,
                                 double live_lb, frame_beside_code *beside) {
    frame_code_deck_post_in in;
    frame_code_deck_post_out out;
    frame_code_deck_post_in_init(&in);
    in.size = size;
    in.species = species;
    in.tributary_ft2 = live_lb / job->floors[floor].live_psf;
    in.live_psf = job->floors[floor].live_psf;
    in.ground_snow_psf = job->floors[floor].snow_psf;
    in.edition = job->conditions.code_edition;
    in.covering = 1;
    if (frame_code_deck_post(&in, &out, NULL))
        be_silent(job, beside);
    else
        say(job, beside, out.height_in, out.known, out.table, edition(job));
}

/* Of a footing the table gives the least. */
void frame_code_beside_deck_footing(frame_framing_job *job, size_t floor, double live_lb, frame_beside_code *beside) {
    frame_code_deck_footing_in in;
    frame_code_deck_footing_out out;
    char side[40];
    frame_tape_style style = {.denominator = 16, .rounding = FRAME_ROUND_UP};
    frame_code_deck_footing_in_init(&in);
    in.tributary_ft2 = live_lb / job->floors[floor].live_psf;
    in.soil_psf = job->conditions.soil_psf;
    in.live_psf = job->floors[floor].live_psf;
    in.ground_snow_psf = job->floors[floor].snow_psf;
    in.edition = job->conditions.code_edition;
    in.covering = 1;
    if (frame_code_deck_footing(&in, &out, NULL)) {
        be_silent(job, beside);
        return;
    }
    if (frame_tape_format(out.square_side_in, &style, side, sizeof side)) side[0] = 0;
    const char *words = frame_framing_text(job, "%s, table %s: at least %s square (%s)", edition(job),
                                           out.table ? out.table : "", side, frame_word_text("known", out.known));
    beside->allowed = out.square_side_in;
    beside->known = out.known;
    beside->words = words ? words : "";
}

void frame_code_beside_stud(frame_framing_job *job, frame_size size, frame_code_on_studs supports, double height,
                            frame_grade grade, frame_beside_code *beside) {
    frame_code_stud_in in;
    frame_code_stud_out out;
    frame_code_stud_in_init(&in);
    in.size = size;
    in.supports = supports;
    in.height_in = height;
    in.grade = grade;
    in.edition = job->conditions.code_edition;
    in.ground_snow_psf = job->conditions.ground_snow_psf;
    if (frame_code_stud(&in, &out, NULL))
        be_silent(job, beside);
    else
        say(job, beside, out.spacing_in, out.known, out.table, edition(job));
}
