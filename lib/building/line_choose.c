/* Choosing a beam's size: all that may be had are tried; the cheapest that holds is taken, and each other is told why
 * not. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "building/framing.h"
#include "building_facts.h"
#include "material/lumber.h"
#include "strength_facts.h"

static const frame_size tried[] = {FRAME_SIZE(2, 4), FRAME_SIZE(2, 6), FRAME_SIZE(2, 8), FRAME_SIZE(2, 10),
                                   FRAME_SIZE(2, 12)};
enum { MOST_OPTIONS = 32 };

typedef struct option {
    frame_size size;
    int32_t plies;
    frame_line_result result;
    double cost;
    double share;         /* of what it may be, by calculation or by the code's table, whichever is more */
    int failed, too_deep; /* could not be checked */
    int code_fails;       /* the code's table allows less */
    int code_allows;      /* it has this size, and allows it */
    int code_fails_more;  /* it lacks this size, and allows too little of one no smaller in anything */
    int too_shallow, no_memory;
    char why[160];
} option;

static int open_size(frame_size size) {
    return size == FRAME_NOT_GIVEN_INT;
}

double frame_framing_cost(const frame_framing_job *job, frame_size size, int32_t plies, double length_in) {
    double thickness, width;
    const double price = frame_framing_price(job, size);
    if (price != FRAME_NOT_GIVEN) return plies * price * length_in / 12;
    frame_size_nominal(size, &thickness, &width);
    return plies * thickness * width / 12 * length_in / 12; /* board feet */
}

static double longest_span(const frame_line_beam *beam) {
    double most = 0;
    for (size_t i = 0; i + 1 < beam->support_count; i++)
        most = fmax(most, beam->supports[i + 1].s - beam->supports[i].s);
    return most;
}

/* What the wall over a header carries: a floor among it is taken to span from wall to wall, the heavier of the table's
 * columns. */
static frame_code_supports supports_of(const frame_line_beam *beam) {
    int roof = 0, floor = 0;
    for (size_t i = 0; i < beam->point_count; i++) {
        const double *k = beam->points[i].load.k;
        roof |= k[FRAME_LOAD_ROOF_LIVE] != 0 || k[FRAME_LOAD_SNOW] != 0;
        floor |= k[FRAME_LOAD_LIVE] != 0;
    }
    if (!floor) return FRAME_CODE_SUPPORTS_ROOF;
    return roof ? FRAME_CODE_SUPPORTS_ROOF_1_CLEAR : FRAME_CODE_SUPPORTS_ONE_FLOOR;
}

/* The code's table for headers and for beams of decks; the span that it is compared with. */
static double find_beside(frame_framing_job *job, const frame_line_beam *beam, frame_size size, int32_t plies,
                          frame_beside_code *beside) {
    *beside = (frame_beside_code){FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, "", FRAME_KNOWN_READ};
    if (beam->header && job->conditions.building_width_in != FRAME_NOT_GIVEN)
        frame_code_beside_header(job, supports_of(beam), size, plies, beside);
    else if (beam->deck)
        frame_code_beside_deck_beam(job, beam->deck - 1, size, plies, beam->species, beside);
    return beam->header ? beam->clear_span : longest_span(beam);
}

static void try_one(frame_framing_job *job, const frame_line_beam *beam, option *o) {
    frame_beside_code beside;
    double thickness, width;
    o->cost = frame_framing_cost(job, o->size, o->plies, beam->length);
    if (!frame_size_dressed(o->size, 0, &thickness, &width) && beam->most_depth > 0 && width > beam->most_depth) {
        o->too_deep = o->failed = 1;
        return;
    }
    if (beam->least_depth > 0 && !frame_size_dressed(o->size, 0, &thickness, &width) &&
        width < beam->least_depth - 1e-9) {
        o->too_shallow = o->failed = 1;
        return;
    }
    const frame_status status = frame_line_try(beam, o->size, o->plies, &o->result, NULL);
    if (status) {
        o->failed = 1;
        o->no_memory = status == FRAME_NO_MEMORY;
        snprintf(o->why, sizeof o->why, "%.150s", frame_error_text());
    }
    const double span = find_beside(job, beam, o->size, o->plies, &beside);
    const int has_code = beside.allowed != FRAME_NOT_GIVEN;
    o->code_fails = has_code && span > beside.allowed + 1e-9;
    o->code_allows = has_code && !o->code_fails;
    o->share = fmax(o->result.ratio, has_code ? span / beside.allowed : 0);
}

static int passes(const option *o) {
    return !o->failed && !o->code_fails && !o->code_fails_more && o->result.ratio <= 1 + 1e-9;
}

/* A size that the table lacks does not pass by calculation alone where the table refuses a size no smaller: else more
 * snow, which takes the larger ones out, could choose a smaller one. */
static void heed_larger(option *options, size_t count) {
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < count; k++)
            if (!options[i].code_allows && options[k].code_fails && options[k].size >= options[i].size &&
                options[k].plies >= options[i].plies) {
                options[i].code_fails_more = 1;
                options[i].share = fmax(options[i].share, options[k].share);
            }
}

/* What holds goes before what does not; then the cheaper, then the shallower. */
static int is_better(const option *one, const option *than) {
    if (!than) return 1;
    if (passes(one) != passes(than)) return passes(one);
    if (one->failed != than->failed) return !one->failed;
    if (!passes(one)) return one->share < than->share;
    /* What the table allows goes before what it does not have: else a size it lacks would pass where all it has fail.
     */
    if (one->code_allows != than->code_allows) return one->code_allows;
    if (fabs(one->cost - than->cost) > 1e-9) return one->cost < than->cost;
    return one->result.depth < than->result.depth;
}

static frame_status list_option(frame_framing_job *job, const char *name, const option *o, const option *best) {
    char reason[240];
    if (o == best)
        snprintf(reason, sizeof reason, "%s",
                 passes(o) ? "taken: the cheapest that holds" : "taken: none holds, and it is nearest to it");
    else if (o->too_shallow)
        snprintf(reason, sizeof reason, "shallower than the rafters' cut ends (IRC R802.3, from memory)");
    else if (o->too_deep)
        snprintf(reason, sizeof reason, "deeper than there is room for");
    else if (o->failed)
        snprintf(reason, sizeof reason, "cannot be checked: %s", o->why);
    else if (o->code_fails && o->result.ratio <= 1 + 1e-9)
        snprintf(reason, sizeof reason, "holds by calculation, but the code's table allows less");
    else if (o->code_fails_more && o->result.ratio <= 1 + 1e-9)
        snprintf(reason, sizeof reason, "holds by calculation, but the code's table refuses more than this");
    else if (!passes(o))
        snprintf(reason, sizeof reason, "does not hold: %s", frame_word_text("governing", o->result.governs));
    else if (best->code_allows && !o->code_allows)
        snprintf(reason, sizeof reason, "holds by calculation, but the code's table does not have it");
    else
        snprintf(reason, sizeof reason, "holds, but costs more");
    return frame_framing_option_add(job, name, o->size, o->plies, o->failed ? FRAME_NOT_GIVEN : o->result.ratio,
                                    o->cost, o == best, o->failed ? FRAME_NOT_GIVEN_INT : o->result.governs, reason);
}

static size_t gather(frame_framing_job *job, const frame_line_beam *beam, option *options) {
    size_t count = 0;
    const int32_t least = beam->plies != FRAME_NOT_GIVEN_INT ? beam->plies
                          : beam->least_plies > 1            ? beam->least_plies
                                                             : 1,
                  most = beam->plies == FRAME_NOT_GIVEN_INT ? beam->most_plies : beam->plies;
    for (size_t s = 0; s < (open_size(beam->size) ? sizeof tried / sizeof *tried : 1); s++)
        for (int32_t plies = least; plies <= most && count < MOST_OPTIONS; plies++) {
            const frame_size size = open_size(beam->size) ? tried[s] : beam->size;
            if (open_size(beam->size) && job->only_size && size != job->only_size) continue;
            options[count] = (option){.size = size, .plies = plies};
            try_one(job, beam, &options[count++]);
        }
    return count;
}

/* A beam_check's figures, for the block that people read. */
static void as_beam_check(const frame_line_beam *beam, const frame_line_result *r, frame_beam_check_out *out) {
    frame_struct_blank(&frame_beam_check_out_facts, out);
    out->cautions = FRAME_BIT(FRAME_BENDING_CAUTION_AS_ASSUMED) | FRAME_BIT(FRAME_BENDING_CAUTION_STAMP);
    if (r->plies > 1) out->cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_PLIES);
    out->not_checked = FRAME_BIT(FRAME_BENDING_UNCHECKED_CUTS) | FRAME_BIT(FRAME_BENDING_UNCHECKED_ROLLING) |
                       FRAME_BIT(FRAME_BENDING_UNCHECKED_SIDE_HUNG);
    out->known = r->known;
    out->passes = r->ratio <= 1 + 1e-9;
    out->governs = r->governs;
    out->ratio = r->ratio;
    out->bending_ratio = r->bending;
    out->shear_ratio = r->shear;
    out->bearing_ratio = r->bearing;
    out->deflection_ratio = r->deflection;
    out->moment_lb_in = r->moment;
    out->reaction_lb = r->reaction;
    (void)beam;
}

static frame_status list_check(frame_framing_job *job, const frame_line_beam *beam, frame_line_result *r) {
    frame_beam_check_out out;
    frame_working *working;
    frame_beside_code beside;
    char words[32];
    frame_status status = frame_working_new(&working);
    if (status) return status;
    status = frame_line_try(beam, r->size, r->plies, r, working);
    if (status) {
        frame_working_free(working);
        return status;
    }
    as_beam_check(beam, r, &out);
    const double span = find_beside(job, beam, r->size, r->plies, &beside);
    frame_framing_size_words(r->size, r->plies, words);
    const char *name = frame_framing_text(job, "%s, %s", beam->name, words);
    const int has_code = beside.allowed != FRAME_NOT_GIVEN;
    const frame_framing_made_check made = {
        .name = name ? name : "",
        .what = "beam_solve",
        .governs = frame_word_text("governing", r->governs),
        .code = beside.words,
        .ratio = r->ratio,
        .code_ratio = has_code ? span / beside.allowed : FRAME_NOT_GIVEN,
        .length = longest_span(beam),
        .passes = r->ratio <= 1 + 1e-9,
        .code_passes = has_code ? span <= beside.allowed + 1e-9 : FRAME_NOT_GIVEN_INT,
        .known = r->known,
        .kind = beam->kind,
        .out = &out,
        .working = working};
    return frame_framing_check_add(job, &made);
}

frame_status frame_line_choose(frame_framing_job *job, const frame_line_beam *beam, frame_line_result *result) {
    option options[MOST_OPTIONS];
    const option *best = NULL;
    const size_t count = gather(job, beam, options);
    heed_larger(options, count);
    for (size_t i = 0; i < count; i++) {
        if (options[i].no_memory) return FRAME_NO_MEMORY;
        if (is_better(&options[i], best)) best = &options[i];
    }
    if (!best || best->failed) { /* let the check itself say why */
        const frame_status status =
            frame_line_try(beam, best ? best->size : beam->size, best ? best->plies : 1, result, NULL);
        return status ? frame_fail_within("%.80s, ", beam->name)
                      : frame_fail(FRAME_IMPOSSIBLE, "size", "", "a size with room for it",
                                   "%.80s: no size fits where it lies", beam->name);
    }
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < count && !status && count > 1; i++) status = list_option(job, beam->name, &options[i], best);
    *result = best->result;
    if (open_size(beam->size) && best->size > job->largest_chosen) job->largest_chosen = best->size;
    return status ? status : list_check(job, beam, result);
}
