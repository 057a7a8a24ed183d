/* A drawn layout of fasteners against the distances it needs. */
#include "joint/fastener_layout.h"

#include <math.h>
#include <stdio.h>

#include "base/number.h"
#include "joint_facts.h"
#include "working/calculation.h"

enum { FINDINGS = 0, KINDS = 6 };

static const double play = 1e-9, same_row = 1e-6;

/* The least of each kind of distance. */
typedef struct worst {
    frame_fastener_layout_finding kinds[KINDS];
} worst;

static double factor_of(double has, double least, double full, int advice) {
    if (advice) return 1;
    if (has < least - play) return 0;
    return has >= full - play ? 1 : has / full;
}

/* Keeps a distance where it is worse than the one of its kind kept so far. */
static void consider(worst *list, frame_layout_distance kind, double has, double least, double full, int advice,
                     size_t first, int32_t second) {
    frame_fastener_layout_finding *kept = &list->kinds[kind - 1];
    const double lacks = has / (full > 0 ? full : 1), before = kept->has_in / (kept->full_in > 0 ? kept->full_in : 1);
    if (kept->distance && lacks >= before) return;
    kept->distance = kind;
    kept->has_in = has;
    kept->least_in = least;
    kept->full_in = full;
    kept->factor = factor_of(has, least, full, advice);
    kept->met = has >= least - play;
    kept->first = (int32_t)first;
    kept->second = second;
}

static void ends_and_edges(const frame_fastener_layout_in *in, const frame_spots *spots, const frame_geometry *rules,
                           worst *list) {
    const int along = in->angle_deg == 0, upper = !along && in->loaded_edge != FRAME_EDGE_LOADED_LOWER,
              lower = !along && in->loaded_edge != FRAME_EDGE_LOADED_UPPER;
    const double up = upper ? rules->loaded_edge : rules->unloaded_edge,
                 low = lower ? rules->loaded_edge : rules->unloaded_edge;
    for (size_t i = 0; i < spots->count; i++) {
        const frame_spot *at = &spots->at[i];
        const int32_t none = FRAME_NOT_GIVEN_INT;
        consider(list, FRAME_DISTANCE_NEAR_END, at->x, rules->end_least, rules->end_full, rules->advice, i, none);
        if (in->length_in != FRAME_NOT_GIVEN)
            consider(list, FRAME_DISTANCE_FAR_END, in->length_in - at->x, rules->far_end_least, rules->far_end_full,
                     rules->advice, i, none);
        consider(list, FRAME_DISTANCE_LOWER_EDGE, at->y, low, low, rules->advice, i, none);
        consider(list, FRAME_DISTANCE_UPPER_EDGE, in->width_in - at->y, up, up, rules->advice, i, none);
    }
}

/* Two of one row must keep their spacing; two of different rows the rows' spacing, or stand so far apart along the
 * load that they are no neighbours. */
static void pair(const frame_spots *spots, const frame_geometry *rules, int across, size_t i, size_t k, worst *list) {
    const double x = fabs(spots->at[i].x - spots->at[k].x), y = fabs(spots->at[i].y - spots->at[k].y);
    const double along = across ? y : x, aside = across ? x : y;
    if (aside < same_row)
        consider(list, FRAME_DISTANCE_IN_ROW, along, rules->spacing_least, rules->spacing_full, rules->advice, i,
                 (int32_t)k);
    else if (along < rules->spacing_full - play)
        consider(list, FRAME_DISTANCE_BETWEEN_ROWS, aside, rules->row, rules->row, rules->advice, i, (int32_t)k);
}

static double smallest_row_spacing(const frame_spots *spots) {
    double least = HUGE_VAL;
    for (size_t i = 0; i < spots->count; i++)
        for (size_t k = 0; k < i; k++) {
            const double apart = fabs(spots->at[i].y - spots->at[k].y);
            if (apart >= same_row) least = fmin(least, apart);
        }
    return least < HUGE_VAL ? least : 0;
}

static frame_status one_direction(const frame_fastener_layout_in *in, const frame_spots *spots, int across, worst *list,
                                  frame_geometry *rules, frame_working *w) {
    const frame_geometry_ask ask = {.diameter_in = spots->diameter_in,
                                    .main_in = in->main_thickness_in,
                                    .side_in = in->side_thickness_in,
                                    .tension = in->pull == FRAME_PULL_TOWARD_END,
                                    .hardwood = in->hardwood,
                                    .prebored = in->prebored,
                                    .across = across,
                                    .pulled = in->withdrawal_only,
                                    .row_spacing_in = smallest_row_spacing(spots)};
    FRAME_HEADING(w, across ? "Distances for load across the grain" : "Distances for load along the grain");
    const frame_status status = frame_geometry_find(&ask, rules, w);
    if (status) return status;
    *list = (worst){0};
    ends_and_edges(in, spots, rules, list);
    for (size_t i = 0; i < spots->count; i++)
        for (size_t k = i + 1; k < spots->count; k++) pair(spots, rules, across, i, k, list);
    return FRAME_OK;
}

static frame_status refuse(const frame_fastener_layout_finding *finding) {
    char has[32], least[32], lacks[32], who[64];
    frame_number_print(finding->has_in, 6, has, sizeof has);
    frame_number_print(finding->least_in, 6, least, sizeof least);
    frame_number_print(finding->least_in - finding->has_in, 6, lacks, sizeof lacks);
    if (finding->second == FRAME_NOT_GIVEN_INT)
        snprintf(who, sizeof who, "fastener %d", (int)finding->first);
    else
        snprintf(who, sizeof who, "fasteners %d and %d", (int)finding->first, (int)finding->second);
    static const char *const fields[] = {"end_distance_in",  "length_in",  "edge_distance_in",
                                         "edge_distance_in", "spacing_in", "row_spacing_in"};
    const char *field = fields[finding->distance - 1];
    return frame_fail(FRAME_OUTSIDE_SCOPE, field, has, "distances of NDS 12.5.1, or under_least \"report\"",
                      "%s: %s of %s is %s in; at least %s in is needed, %s in more (NDS 12.5.1)", field,
                      frame_layout_distance_words.table[finding->distance - 1].word, who, has, least, lacks);
}

/* Adds the findings to the answer, and keeps the factor and what governs. */
static frame_status report(const worst *list, int across, frame_answer *answer, frame_fastener_layout_out *out,
                           const frame_fastener_layout_finding **failing) {
    for (int i = 0; i < KINDS; i++) {
        const frame_fastener_layout_finding *kept = &list->kinds[i];
        if (!kept->distance) continue;
        frame_fastener_layout_finding *line = frame_answer_add(answer, FINDINGS);
        if (!line) return FRAME_NO_MEMORY;
        const uint32_t size = line->struct_size, id = line->struct_id;
        *line = *kept;
        line->struct_size = size, line->struct_id = id;
        line->across_grain = across;
        line->spare = 0;
        if (kept->factor >= out->geometry_factor) continue;
        out->geometry_factor = kept->factor;
        out->governs = kept->distance;
        out->short_by_in = fmax(0, kept->least_in - kept->has_in);
        if (kept->factor == 0) *failing = kept;
    }
    return FRAME_OK;
}

static double span_across(const frame_spots *spots) {
    double low = HUGE_VAL, high = -HUGE_VAL;
    for (size_t i = 0; i < spots->count; i++) low = fmin(low, spots->at[i].y), high = fmax(high, spots->at[i].y);
    return high - low;
}

static void remarks(const frame_fastener_layout_in *in, const frame_spots *spots, const frame_geometry *rules,
                    frame_fastener_layout_out *out) {
    out->known = rules->advice ? FRAME_KNOWN_MEMORY : frame_known_worse(spots->known, FRAME_KNOWN_SECONDARY);
    if (rules->advice)
        out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_ADVICE) | FRAME_BIT(FRAME_FASTENING_CAUTION_MEMORY);
    if (!rules->advice && in->angle_deg < 90 && span_across(spots) > 5 + play)
        out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_SHRINKAGE);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPLITTING) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_MEMBER);
    if (in->place_count || in->edge_distance_in != FRAME_NOT_GIVEN)
        out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_FASTENER_LAYOUT_IN_EDGE_DISTANCE_IN);
}

static frame_status solve(const frame_fastener_layout_in *in, frame_answer *answer, frame_fastener_layout_out *out,
                          frame_working *w) {
    frame_spots spots;
    frame_geometry rules = {0};
    worst lists[2];
    const frame_fastener_layout_finding *failing = NULL;
    frame_status status = frame_spots_read(in, &spots);
    if (!status && in->withdrawal_only && in->kind != FRAME_DOWEL_LAG_SCREW)
        status = frame_fail(FRAME_CONFLICT, "withdrawal_only", "yes", "no",
                            "withdrawal_only: the distances of NDS table 12.5.1E are for lag screws");
    out->geometry_factor = 1;
    out->short_by_in = 0;
    for (int across = 0; across < 2 && !status; across++) {
        if (in->withdrawal_only ? across : in->angle_deg == (across ? 0 : 90)) continue;
        status = one_direction(in, &spots, across, &lists[across], &rules, w);
        if (!status) status = report(&lists[across], across, answer, out, &failing);
    }
    if (status) return status;
    if (failing && in->under_least == FRAME_UNDER_LEAST_REFUSE) return refuse(failing);
    out->count = (int32_t)spots.count;
    out->passes = !failing;
    FRAME_TABLE(w, C_Delta, out->geometry_factor, "", "geometry factor: the least over all distances",
                "NDS 2018 12.5.1");
    remarks(in, &spots, &rules, out);
    return C_Delta < 0 ? FRAME_INTERNAL : FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(fastener_layout, solve);

frame_status frame_fastener_layout_drawing(const frame_fastener_layout_in *given, frame_drawing **drawing) {
    frame_fastener_layout_in in;
    frame_spots spots;
    uint64_t assumed = 0;
    frame_status status = frame_fastener_layout_in_read(given, &in, &assumed);
    if (!status) status = frame_spots_read(&in, &spots);
    if (status) return status;
    const frame_face face = {in.width_in, in.length_in, spots.diameter_in};
    frame_drawing *made = NULL;
    status = frame_drawing_new(&made);
    if (!status) status = frame_face_draw(made, &face, spots.at, spots.count, "Layout of the fasteners");
    if (status)
        frame_drawing_free(made);
    else
        *drawing = made;
    return status;
}
