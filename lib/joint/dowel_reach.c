/* Whether a fastener reaches wood: the layers it passes, how deep it is in the last, and the shortest length that does.
 */
#include "joint/dowel_reach.h"

#include <string.h>

#include "joint/lengths.h"
#include "joint/thread.h"
#include "joint_facts.h"
#include "working/calculation.h"

enum { LAYERS = 0, CHOICES = 1 };

/* What the steps hand on to one another. */
typedef struct job {
    frame_layers layers;
    frame_fastener fastener;
    frame_drive drive;
    frame_reached reached;
    frame_usual_length usual[FRAME_MOST_LENGTHS];
    size_t usual_count, chosen; /* chosen == usual_count: none */
} job;

static double tip_of(const frame_dowel_reach_in *in, const frame_fastener *fastener, double nominal) {
    if (in->kind == FRAME_DOWEL_BOLT) return 0;
    if (in->tip_in != FRAME_NOT_GIVEN) return in->tip_in;
    return fastener->tip_in != FRAME_NOT_GIVEN ? fastener->tip_in : 2 * nominal;
}

static frame_drive drive_of(const frame_dowel_reach_in *in, const frame_fastener *fastener, double nominal,
                            double length, frame_working *w) {
    const double thread = frame_thread_length(in->kind, in->thread_in, fastener, length, w);
    return (frame_drive){.kind = in->kind,
                         .nominal = nominal,
                         .length = length,
                         .tip = tip_of(in, fastener, nominal),
                         .thread = thread == FRAME_NOT_GIVEN ? thread : fmin(thread, length),
                         .countersink = in->countersink_in,
                         .angle_deg = in->angle_deg};
}

static int enough(const job *j, frame_reach_wanted wanted, const frame_reached *reached) {
    if (!frame_reach_counts(reached->verdict)) return 0;
    if (wanted == FRAME_REACH_LEAST || reached->verdict == FRAME_REACH_HOLDS) return 1;
    /* In a thin member no length reaches the full depth: through it is all there is. */
    return reached->out > 0 && reached->full > j->layers.items[j->layers.holding].thickness_in;
}

/* Each usual length: a line of the answer, and the first that reaches is the one chosen. */
static frame_status choose(const frame_dowel_reach_in *in, job *j, frame_answer *answer) {
    j->usual_count = frame_usual_lengths(in, &j->fastener, j->usual);
    j->chosen = j->usual_count;
    for (size_t i = 0; i < j->usual_count; i++) {
        const frame_usual_length *usual = &j->usual[i];
        const frame_drive drive = drive_of(in, &j->fastener, usual->nominal_in, usual->length_in, NULL);
        frame_reached reached;
        frame_reach_layers(&j->layers, &drive, &reached, NULL);
        if (j->chosen == j->usual_count && enough(j, in->wanted, &reached)) j->chosen = i;
        frame_dowel_reach_choice *choice = answer ? frame_answer_add(answer, CHOICES) : NULL;
        if (answer && !choice) return FRAME_NO_MEMORY;
        if (!choice) continue;
        choice->verdict = reached.verdict;
        choice->counts = frame_reach_counts(reached.verdict);
        choice->length_in = usual->length_in;
        choice->diameter_in = usual->nominal_in;
        choice->penetration_in = reached.penetration;
        choice->point_out_in = reached.out;
        choice->size = usual->size;
    }
    return FRAME_OK;
}

static frame_status length_of(const frame_dowel_reach_in *in, const job *j, double *length) {
    *length = in->length_in != FRAME_NOT_GIVEN ? in->length_in : j->fastener.length_in;
    if (*length != FRAME_NOT_GIVEN) return FRAME_OK;
    if (j->chosen == j->usual_count)
        return frame_fail(FRAME_REQUIRED, "length_in", "", "a length in inches, or lengths_in",
                          "length_in: not given, and no usual length of this fastener reaches as deep as wanted");
    *length = j->usual[j->chosen].length_in;
    return FRAME_OK;
}

static frame_status find(const frame_dowel_reach_in *in, job *j, frame_answer *answer, frame_working *w) {
    double length = 0;
    if (in->kind == FRAME_DOWEL_DRIFT_PIN)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "kind", "drift pin", "a nail, screw or bolt",
                          "kind: a drift pin has no head and no least depth; give its depth to dowel_lateral");
    frame_status status = frame_layers_read(in, &j->layers);
    if (!status) status = frame_fastener_find(in->kind, in->size, in->diameter_in, &j->fastener);
    if (!status) status = choose(in, j, answer);
    if (!status) status = length_of(in, j, &length);
    if (status) return status;
    FRAME_HEADING(w, "Fastener and layers");
    FRAME_GIVEN(w, L, length, "in", "length under the head");
    j->drive = drive_of(in, &j->fastener, j->fastener.nominal_in, L, w);
    if (j->drive.tip > length)
        return frame_fail_number(FRAME_IMPOSSIBLE, "tip_in", j->drive.tip, "at most the length of the fastener");
    frame_reach_layers(&j->layers, &j->drive, &j->reached, w);
    return FRAME_OK;
}

frame_status frame_dowel_reach_find(const frame_dowel_reach_in *in, frame_layers *layers, frame_drive *drive,
                                    frame_reached *reached) {
    job j;
    const frame_status status = find(in, &j, NULL, NULL);
    if (status) return status;
    *layers = j.layers;
    *drive = j.drive;
    *reached = j.reached;
    return FRAME_OK;
}

static frame_status list_layers(const job *j, frame_answer *answer) {
    const double begins = j->drive.thread == FRAME_NOT_GIVEN ? j->drive.length : j->drive.length - j->drive.thread;
    for (int i = 0; i < j->layers.count; i++) {
        frame_dowel_reach_layer *line = frame_answer_add(answer, LAYERS);
        if (!line) return FRAME_NO_MEMORY;
        line->material = j->layers.items[i].material;
        line->holds = i == j->layers.holding;
        line->from_in = j->layers.from[i];
        line->to_in = j->layers.to[i];
        line->occupied_in = frame_part_in_layer(&j->layers, &j->drive, i, 0, j->drive.length);
        if (j->drive.thread != FRAME_NOT_GIVEN)
            line->thread_in = frame_part_in_layer(&j->layers, &j->drive, i, begins, j->drive.length);
        line->name = frame_answer_text(answer, j->layers.items[i].name);
    }
    return FRAME_OK;
}

/* More than a quarter of the bearing length threaded: the root diameter counts (12.3.7.2). */
static int root_bears(const job *j) {
    if (!frame_dowel_is_threaded(j->drive.kind) || j->layers.holding == FRAME_NO_LAYER) return 0;
    if (j->drive.thread == FRAME_NOT_GIVEN) return 1;
    const double end = j->drive.length,
                 threads = frame_part_in_layer(&j->layers, &j->drive, j->layers.holding, end - j->drive.thread, end);
    return threads > 0.25 * j->reached.held;
}

static void lengths_for(const job *j, frame_dowel_reach_out *out) {
    if (j->layers.holding == FRAME_NO_LAYER || j->drive.kind == FRAME_DOWEL_BOLT) return;
    const double thick = j->layers.items[j->layers.holding].thickness_in;
    if (j->reached.least <= thick) out->least_length_in = frame_length_for(&j->layers, &j->drive, j->reached.least);
    if (j->reached.full <= thick) out->full_length_in = frame_length_for(&j->layers, &j->drive, j->reached.full);
}

static void choice_made(const frame_dowel_reach_in *in, const job *j, frame_dowel_reach_out *out) {
    if (j->chosen == j->usual_count) return;
    const frame_usual_length *usual = &j->usual[j->chosen];
    const frame_drive drive = drive_of(in, &j->fastener, usual->nominal_in, usual->length_in, NULL);
    frame_reached reached;
    frame_reach_layers(&j->layers, &drive, &reached, NULL);
    out->chosen_length_in = usual->length_in;
    out->chosen_point_out_in = reached.out;
    out->chosen_size = usual->size;
}

static void members(const job *j, frame_dowel_reach_out *out) {
    if (j->layers.holding == FRAME_NO_LAYER) return;
    out->holding_layer = j->layers.holding;
    if (j->layers.side == FRAME_NO_LAYER) return;
    const double sunk = j->layers.side == 0 ? j->drive.countersink : 0;
    out->side_thickness_in = j->layers.items[j->layers.side].thickness_in - sunk;
    out->gap_in = j->layers.from[j->layers.holding] - j->layers.to[j->layers.side];
}

static void place_of_point(const job *j, frame_dowel_reach_out *out) {
    for (int i = 0; i < j->layers.count; i++)
        if (j->reached.point > j->layers.from[i] && j->reached.point <= j->layers.to[i]) out->point_layer = i;
}

static void give(const frame_dowel_reach_in *in, const job *j, frame_dowel_reach_out *out) {
    const frame_reached *r = &j->reached;
    const int counts = frame_reach_counts(r->verdict);
    out->verdict = r->verdict;
    out->counts = counts;
    out->root_bears = root_bears(j);
    out->penetration_in = r->penetration;
    out->held_length_in = r->held;
    out->held_thread_in = r->held_thread;
    out->least_penetration_in = r->least;
    out->full_penetration_in = r->full;
    out->penetration_factor = !counts ? 0 : r->full == FRAME_NOT_GIVEN ? 1 : fmin(1, r->penetration / r->full);
    out->point_out_in = r->out;
    out->stands_out_in = r->stands_out;
    out->length_in = j->drive.length;
    out->diameter_in = j->drive.nominal;
    out->tip_in = j->drive.tip;
    out->thread_in = j->drive.thread;
    members(j, out);
    place_of_point(j, out);
    lengths_for(j, out);
    choice_made(in, j, out);
}

static void also(frame_dowel_reach_out *out, int bit, int holds) {
    if (holds) out->cautions |= FRAME_BIT(bit);
}

static int any_masonry(const frame_layers *layers) {
    for (int i = 0; i < layers->count; i++)
        if (layers->items[i].material == FRAME_LAYER_MASONRY) return 1;
    return 0;
}

static void remarks(const frame_dowel_reach_in *in, const job *j, frame_dowel_reach_out *out) {
    const int nail = frame_dowel_is_nail(in->kind), bolt = in->kind == FRAME_DOWEL_BOLT;
    const int no_length = in->length_in == FRAME_NOT_GIVEN && j->fastener.length_in == FRAME_NOT_GIVEN;
    out->known = frame_known_worse(j->fastener.known, FRAME_KNOWN_SECONDARY);
    out->cautions = FRAME_BIT(FRAME_DOWEL_REACH_CAUTION_LAYERS);
    out->not_checked = FRAME_BIT(FRAME_DOWEL_REACH_UNCHECKED_SOUND + 1) - 1;
    also(out, FRAME_DOWEL_REACH_CAUTION_NOTHING, !out->counts);
    also(out, FRAME_DOWEL_REACH_CAUTION_SHORT, out->verdict == FRAME_REACH_SHORT);
    also(out, FRAME_DOWEL_REACH_CAUTION_POINT_OUT, out->point_out_in > 0 && !bolt);
    also(out, FRAME_DOWEL_REACH_CAUTION_STANDS_OUT, out->stands_out_in > 0 && !bolt);
    also(out, FRAME_DOWEL_REACH_CAUTION_GAP, out->gap_in != FRAME_NOT_GIVEN && out->gap_in > 1e-9);
    also(out, FRAME_DOWEL_REACH_CAUTION_MASONRY, any_masonry(&j->layers));
    also(out, FRAME_DOWEL_REACH_CAUTION_ROOT, out->root_bears && out->counts);
    also(out, FRAME_DOWEL_REACH_CAUTION_THREAD, !nail && in->thread_in == FRAME_NOT_GIVEN);
    also(out, FRAME_DOWEL_REACH_CAUTION_CHOSEN, no_length);
    also(out, FRAME_DOWEL_REACH_CAUTION_NONE, j->chosen == j->usual_count);
    also(out, FRAME_DOWEL_REACH_CAUTION_COUNTERSUNK, in->countersink_in > 0);
    also(out, FRAME_DOWEL_REACH_CAUTION_LENGTHS, !nail && in->kind != FRAME_DOWEL_LAG_SCREW && !in->length_count);
    also(out, FRAME_DOWEL_REACH_CAUTION_BOLT, bolt);
    if (nail && in->kind != FRAME_DOWEL_RING_SHANK_NAIL)
        out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_DOWEL_REACH_IN_THREAD_IN);
    if (bolt) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_DOWEL_REACH_IN_TIP_IN);
}

static frame_status solve(const frame_dowel_reach_in *in, frame_answer *answer, frame_dowel_reach_out *out,
                          frame_working *w) {
    job j;
    frame_status status = find(in, &j, answer, w);
    if (!status) status = list_layers(&j, answer);
    if (status) return status;
    give(in, &j, out);
    remarks(in, &j, out);
    out->says = frame_reach_in_words(&j.layers, &j.drive, &j.reached, answer);
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(dowel_reach, solve);
